"""Session times printed in trials, against the estimate.

- loadit-2020: Pilot Feasibility Stud 2020;6:99, doi 10.1186/s40814-020-00639-5, table 1.
- jphysiol-2015: J Physiol 2015;593:4285-4301, PMC4594298, table 2.
- beyer-2015: Am J Sports Med 2015;43:1704, read in a secondary copy.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.counting.ledger import Ledger
from spotline.lint.counting.tally import Visit
from spotline.lint.model.quantities import Range
from spotline.lint.project.review import review

PUBLISHED = Path(__file__).parent.parent / "published"


def first_visit(name: str) -> Visit:
    (one,) = review([str(PUBLISHED / f"{name}.programme.yaml")], date(2026, 1, 5)).files
    assert one.ledger is not None
    return one.ledger.weeks[0].visits[0]


def clock(seconds: Range) -> str:
    assert seconds.low == seconds.high
    return f"{int(seconds.low // 60)}:{int(seconds.low % 60):02d}"


@pytest.mark.parametrize(
    ("group", "contraction", "printed"),
    [(1, 288, "16:48"), (2, 96, "13:36"), (4, 288, "16:48")],
)
def test_three_groups_of_the_protocol_agree_to_the_second(group: int, contraction: int, printed: str) -> None:
    time = first_visit(f"loadit-2020-{group}").time()
    assert time.work == Range(contraction, contraction)
    assert clock(time.work + time.rest) == printed


def test_the_fourth_contradicts_its_own_figures() -> None:
    """Group 3 prints 864 s under load, 2 min rests and 19:12; 864 s + 6 x 120 s are 1584 s, 26:24."""
    time = first_visit("loadit-2020-3").time()
    assert time.work == Range(864, 864)
    assert clock(time.work + time.rest) == "26:24"


def test_a_session_of_about_45_minutes() -> None:
    """18 sets, 1 min between sets and 3 min between exercises: 25 min of rest, and about 45 min with warm-up."""
    visit = first_visit("jphysiol-2015")
    time = visit.time(prepared=True)
    assert time.rest == Range(25 * 60, 25 * 60)
    assert time.total.low / 60 <= 45 <= time.total.high / 60
    assert time.total.low / 60 >= 30
    assert time.total.high / 60 <= 55


def test_heavy_slow_calf_work(programme: Callable[..., Ledger], week: Callable[..., str]) -> None:
    """Weeks 4-5 of beyer-2015: 3 exercises, 4 sets of 10 at 6 s, 2-3 min between sets, 5 min between exercises.

    The trial prints no session time; 12 x 60 s + 9 x 150 s + 2 x 300 s = 2670 s is our own arithmetic.
    """
    line = "sets: 4, reps: 10, tempo: 3-0-3-0, rest: 2-3 min"
    lifts = ("seated calf raise", "leg press calf raise", "standing barbell calf raise")
    visit = programme(week({"monday": [f"{lift}, {line}" for lift in lifts]})).weeks[0].visits[0]
    time = visit.time(change_over=Range(300, 300))
    assert time.work == Range(720, 720)
    assert time.total.middle == 2670
    assert (time.total.low, time.total.high) == (2670 - 9 * 30, 2670 + 9 * 30)
