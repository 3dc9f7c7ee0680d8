"""The page of a week; sums done by hand stand beside the numbers."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.counting.ledger import Ledger
from spotline.lint.editor.features import week_table as page
from spotline.lint.engine.registry import all_rules
from spotline.lint.team.settings import Team
from spotline.lint.weighing.holdings import Bounds

Build = Callable[..., Ledger]

PLAN = """\
programme: Two | three
athlete: {name: Mara, body mass: 70 kg}
starts: 2026-01-05
weeks: 4
sessions:
  - session: Press
    day: monday
    exercises:
      - {exercise: bench press, sets: {1: 3, 2-4: 4}, reps: 8, load: {1-2: 70 %, 3-4: 75 %}, tempo: 2-0-1-0, rest: 2 min}
      - {exercise: cable pushdown, sets: 2-3, reps: 10, rest: 1 min, tempo: 2-0-1-0}
  - session: Legs
    day: thursday
    exercises:
      - {exercise: {1-3: leg extension, 4: leg press}, sets: 3, reps: 10, rest: 1 min, tempo: 2-0-1-0}
      - {exercise: box jump, sets: {1-2: 0, 3-4: 2}, reps: 3, rest: 1 min, tempo: 0-0-X-0}
"""


def week_table(ledger: Ledger, week: int) -> str:
    """The page of a week, with the limits of a team that has set none."""
    return page.week_table(ledger, week, Bounds(all_rules(), Team()))


@pytest.fixture(scope="module")
def ledger(programme: Build) -> Ledger:
    return programme(PLAN)


def test_sessions_and_groups(ledger: Ledger) -> None:
    page = week_table(ledger, 1)
    assert page.startswith(
        "### Week 1 of 4: Two \\| three (Mara)\n\n| day | session | time | sets |\n| --- | --- | --- | --- |\n"
    )
    # bench 3 x 8 x 3 s + 2 x 120 s; pushdown 2-3 x 10 x 3 s + 1-2 x 60 s; one change-over of 60-180 s:
    # 72 + 240 + 60 + 60 + 60 = 492 s and 72 + 240 + 90 + 120 + 180 = 702 s
    assert "| Monday | Press | 8-12 min | 5-6 |" in page
    assert "| **week** |  | " in page
    assert "| **8-9** |" in page
    # triceps: 3 x 0.5 + 2-3; chest 3
    assert "| triceps | 3.5-4.5 | 2-3 | 0 | 2-3 | 20 | Mon | bench press 1.5, cable pushdown 2-3 |" in page
    assert "| chest | 3 | 3 | 0 | 3 | 20 | Mon | bench press 3 |" in page
    assert "| quadriceps | 3 | 3 | 0 | 3 | 20 | Thu | leg extension 3 |" in page
    assert "Against" not in page


def test_against_the_week_before(ledger: Ledger) -> None:
    second = week_table(ledger, 2).partition("**Against week 1** (what it was in brackets):\n\n")[2]
    assert "- 9-10 sets, 8-9 before\n" in second
    assert "triceps 4-5 (3.5-4.5)" in second
    assert "chest 4 (3)" in second
    assert "quadriceps" not in second
    assert second.endswith("- bench press: sets 4 (3)")
    third = week_table(ledger, 3)
    assert "- bench press: load 75 % (70 %)\n" in third
    assert "- new: box jump, 2 sets" in third
    assert "- quadriceps" not in third  # the jumps are work for speed
    fourth = week_table(ledger, 4)
    assert "- new: leg press, 3 sets" in fourth
    assert "- gone: leg extension, 3 sets" in fourth


def test_a_week_like_the_one_before(programme: Build) -> None:
    ledger = programme(
        "programme: A\nweeks: 2\nsessions: [{session: S, exercises: [{exercise: squat, sets: 3, reps: 5}]}]\n"
    )
    page = week_table(ledger, 2)
    assert page.endswith("**Against week 1:** the same.")
    assert "| any day | S | " in page
    assert "Mara" not in page


@pytest.mark.parametrize("week", [0, -1, 5, 900])
def test_a_week_that_there_is_not(ledger: Ledger, week: int) -> None:
    assert week_table(ledger, week) == f"There is no week {week}: the programme runs 4."


def test_blocks_are_named_and_empty_weeks_say_so(programme: Build) -> None:
    ledger = programme(
        "programme: A\nblocks:\n"
        "  - {name: Away, weeks: 1, sessions: [{activity: trip, day: monday}]}\n"
        "  - {name: Home, weeks: 1, sessions: [{session: S, exercises: [{exercise: box jump, sets: 3, reps: 2}]}]}\n"
    )
    assert week_table(ledger, 1).startswith(
        "### Week 1 of 2, Away: A\n\nNo session this week.\n\nNo set that counts"
    )
    assert "No set that counts for a muscle group." in week_table(ledger, 2)


def test_numbers_are_the_ledgers(example: Callable[..., object], programme: Build) -> None:
    """Every group of every week of an example stands in its table with the ledger's own count."""
    snapshot = example("bram-winter-strength.programme.yaml")
    (ledger,) = snapshot.review.ledgers  # type: ignore[attr-defined]
    for week in ledger.weeks:
        page = week_table(ledger, week.number)
        for group in week.groups():
            if week.sets(group):
                assert f"| {group} | {week.sets(group)} | {week.sets(group, 'direct')} |" in page
