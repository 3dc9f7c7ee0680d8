"""Programmes that ask for what cannot be had, and what a coach is told: what is in the way, and what would do.

The sentences were read as a tired coach would: each says a number or a thing that one can decide about.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from spotline.lint.solving.days_lacking import most_apart
from spotline.lint.solving.solve import Ask, solve
from spotline.tests.conftest import TODAY

FOLDER = Path(__file__).parent / "impossible"

SAID = {
    "arms": [
        "As sessions go, 20 min holds 4 sets a week for each of biceps, triceps and side shoulder; 10"
        " take about 45 min, pairs of small lifts or a second day.",
        "For the same reason as line 12, demand-not-held.",
        "For the same reason as line 12, demand-not-held.",
    ],
    "caps": [
        "Every edit tried that clears it goes against at most 4 (`must hold`) for elbow extension "
        "(demand-not-held). Nearest: triceps pushdown (Push) raised to 4 sets. That takes: 8 sets for"
        " elbow extension instead of 4 (demand-not-held).",
    ],
    "few-days": [
        "3 days a week of back squat cannot be had: the athlete has 2 days. It takes a further one "
        "under `days`.",
    ],
    "home": [
        "With dumbbells and a flat bench nothing is a vertical pull; a band or a pull-up bar would do.",
    ],
    "legs": [
        "3 days a week with at least 48 h apart cannot be had on Monday, Tuesday and Wednesday: 2 "
        "would fit. It takes a further day, such as Friday, or less rest between.",
        "For the same reason as line 8, demand-not-held.",
    ],
    "lunch": [
        "5 sets a week for each of back squat and bench press and 4 sets a week for deadlift cannot "
        "be had in 30 min. It takes about 60 min or a second day.",
    ],
    "one-day": [
        "19 sets a week for hamstrings cannot be had with at most 16 in Legs "
        "(session-sets-for-muscle-high). It takes 19 in Legs or a second day (the athlete has 1 day).",
    ],
    "running": [
        "3 days a week with no two days running cannot be had on Monday, Saturday and Sunday: 2 would"
        " fit. It takes a further day, such as Wednesday, or less rest between.",
        "For the same reason as line 8, demand-not-held.",
    ],
    "season": [
        "As sessions go, 20 min holds 7 sets a week for each of lower body and upper body; 12 take "
        "about 35 min, pairs of small lifts or a second day.",
        "For the same reason as line 12, demand-not-held.",
    ],
    "squad": [
        "For Bea: as sessions go, 2 x 14 min hold 6 sets a week for each of chest and lats; 10 take about"
        " 2 x 20 min, pairs of small lifts or a third day.",
        "For the same reason as line 13, demand-not-held.",
    ],
    "two-sessions": [
        "3 days a week of back squat need 3 days with a session; the week has 2.",
    ],
}


def path_of(name: str) -> str:
    return str(FOLDER / f"{name}.programme.yaml")


@pytest.mark.parametrize("name", SAID)
def test_it_says_what_cannot_be_had_and_what_would_do(name: str) -> None:
    solution = solve(path_of(name), TODAY, Ask())
    assert solution.cards == []
    assert [" ".join(one.why) for one in solution.stays] == SAID[name]


def test_every_programme_here_is_tried() -> None:
    names = sorted(path.name.removesuffix(".programme.yaml") for path in FOLDER.iterdir())
    assert names == sorted(SAID)
    assert len(names) >= 10


@pytest.mark.parametrize(
    ("days", "apart", "rounds", "most"),
    [
        ((1, 2, 3), 2, True, 2),
        ((1, 3, 5), 2, True, 3),
        ((1, 3, 5, 7), 2, True, 3),  # Sunday and Monday run on
        ((1, 3, 5, 7), 2, False, 4),
        ((1, 4), 4, True, 1),
        ((1, 4), 3, True, 2),
        ((), 2, True, 0),
    ],
)
def test_days_apart(days: tuple[int, ...], apart: int, rounds: bool, most: int) -> None:
    assert most_apart(days, apart, rounds=rounds) == most
