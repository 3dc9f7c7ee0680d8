"""The page of a week; sums done by hand stand beside the numbers."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.counting.ledger import Ledger
from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.editor.features.week_table import week_table
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


@pytest.fixture(scope="module")
def ledger(programme: Build) -> Ledger:
    return programme(PLAN)


def test_sessions_and_groups(ledger: Ledger) -> None:
    page = week_table(ledger, 1)
    assert page.startswith(
        "# Week 1 of 4: Two \\| three (Mara)\n\n| day | session | time | sets |\n| --- | --- | --- | --- |\n"
    )
    # bench 3 x 8 x 3 s + 2 x 120 s; pushdown 2-3 x 10 x 3 s + 1-2 x 60 s; one change-over of 60-180 s:
    # 72 + 240 + 60 + 60 + 60 = 492 s and 72 + 240 + 90 + 120 + 180 = 702 s
    assert "| Monday | Press | 8-12 min | 5-6 |" in page
    assert "| **week** |  | " in page
    assert "| **8-9** |" in page
    # triceps: 3 x 0.5 + 2-3; chest 3
    assert "| triceps | 3.5-4.5 | 2-3 |  | Mon |" in page
    assert "| chest | 3 | 3 |  | Mon |" in page
    assert "| quadriceps | 3 | 3 |  | Thu |" in page
    assert "- triceps: bench press 1.5, cable pushdown 2-3\n" in page
    assert "- quadriceps: leg extension 3" in page
    assert "Against" not in page


def test_against_the_week_before(ledger: Ledger) -> None:
    second = (
        week_table(ledger, 2)
        .partition("**Against week 1** (what it was in brackets):\n\n")[2]
        .partition("\n\n**Where")[0]
    )
    assert "- 9-10 sets, 8-9 before\n" in second
    assert "triceps 4-5 (3.5-4.5)" in second
    assert "chest 4 (3)" in second
    assert "quadriceps" not in second
    assert second.endswith("- bench press: sets 4 (3)")
    third = week_table(ledger, 3).partition("\n\n**Where")[0]
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
    assert "\n\n**Against week 1:** the same.\n\n" in page
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
        "# Week 1 of 2, Away: A\n\nNo session this week.\n\nNo set that counts"
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


def test_what_gets_nothing_is_shown(ledger: Ledger) -> None:
    (nothing,) = [line for line in week_table(ledger, 1).splitlines() if line.startswith("**Nothing")]
    assert "hamstrings" in nothing
    assert "chest" not in nothing
    assert "quadriceps" not in nothing


LIMITED = """\
programme: Chest
goal: hypertrophy
focus: [hamstrings]
weeks: 2
sessions:
  - session: Push
    day: monday
    exercises:
      - {exercise: bench press, sets: {1: 12, 2: 8}, reps: 8, rir: 1}
      - {exercise: dumbbell fly, sets: {1: 10, 2: 8}, reps: 12, rir: 1}
      - {exercise: seated leg curl, sets: 2, reps: 12, rir: 1}
"""


def test_limits_and_floors_are_marked_as_the_review_judges_them(opened: Callable[..., Snapshot]) -> None:
    snapshot = opened(LIMITED)
    review = snapshot.review
    (ledger,) = review.ledgers

    def page(week: int) -> str:
        return week_table(ledger, week, Bounds(snapshot.workspace.rules, review.team))

    # 12 + 10 = 22 against the default 20; 2 against the floor of 4, which holds for what is in the focus
    assert "| chest | 22 **over** | 22 | at most 20 | Mon |" in page(1)
    assert "| chest | 16 | 16 | at most 20 | Mon |" in page(2)
    assert "| hamstrings | 2 **under** | 2 | 4 to 20 | Mon |" in page(1)
    # helping sets take it past the limit: 12 x 0.5 + 10 x 0.5 = 11 do not
    assert "| upper chest | 11 | 0 | at most 20 | Mon |" in page(1)


def test_the_page_fits_beside_the_text(ledger: Ledger) -> None:
    """No row of a table is wider than half a window of 1440 pixels shows: about 70 characters."""
    rows = [line for week in range(1, 5) for line in week_table(ledger, week).splitlines() if line[:1] == "|"]
    assert max(map(len, rows)) <= 70
