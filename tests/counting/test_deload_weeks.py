"""Weeks that are there to recover, named by their numbers."""

from __future__ import annotations

import pytest

LINE = "      - {exercise: back squat, sets: {1-3: 5, 4: 2}, reps: 5, load: 75 %}\n"
PLAIN = "programme: P\nweeks: 4\nsessions:\n  - session: A\n    exercises:\n" + LINE
BLOCK = """\
  - name: {0}
    weeks: 4
    sessions:
      - session: A
        exercises:
          - {{exercise: back squat, sets: 5, reps: 5, load: 75 %}}
"""


def deloads(ledger):
    return [week.number for week in ledger.weeks if week.is_deload]


@pytest.mark.parametrize(
    ("written", "found"),
    [("[4]", [4]), ("[2, 4]", [2, 4]), ("[2-3]", [2, 3]), ("[1+3]", [1, 3]), ("[week 4]", [4])],
)
def test_weeks_of_a_programme(written, found, programme):
    ledger = programme(PLAIN.replace("weeks: 4", f"weeks: 4\ndeload: {written}"))
    assert deloads(ledger) == found
    assert [week.number for week in ledger.weeks if not week.is_typical()] == found


def test_weeks_count_through_the_blocks_of_a_programme_or_in_their_own_block(programme):
    blocks = BLOCK.format("One") + BLOCK.format("Two")
    assert deloads(programme(f"programme: P\ndeload: [4, 8]\nblocks:\n{blocks}")) == [4, 8]
    own = blocks.replace("name: Two\n    weeks: 4", "name: Two\n    weeks: 4\n    deload: [3]")
    assert deloads(programme(f"programme: P\nblocks:\n{own}")) == [7]
    whole = blocks.replace("name: Two\n    weeks: 4", "name: Two\n    weeks: 4\n    deload: true")
    assert deloads(programme(f"programme: P\nblocks:\n{whole}")) == [5, 6, 7, 8]
    assert deloads(programme(f"programme: P\nblocks:\n{blocks}")) == []


def test_a_week_that_is_not_there(findings):
    found = [one for one in findings(PLAIN.replace("weeks: 4", "weeks: 4\ndeload: [4, 6]")) if not one.why]
    assert [(one.rule, one.place.excerpt) for one in found] == [("weeks-beyond", "6")]


@pytest.mark.parametrize(("weeks", "meant"), [(8, ["[4]", "[4, 8]"]), (12, ["[4]", "[4, 8, 12]"])])
def test_one_number_has_two_readings(weeks, meant, findings):
    content = PLAIN.replace("weeks: 4", f"weeks: {weeks}\ndeload: 4").replace("{1-3: 5, 4: 2}", "5")
    (found,) = [one for one in findings(content) if not one.why]
    assert (found.rule, [edit.words for edit in found.edits]) == ("two-readings", meant)
    for edit in found.edits:
        text = content[: edit.place.start] + edit.words + content[edit.place.end :]
        assert not [one for one in findings(text) if not one.why]


def test_one_number_on_a_block(findings):
    content = "programme: P\nblocks:\n" + BLOCK.format("One").replace("weeks: 4", "weeks: 6\n    deload: 3")
    (found,) = [one for one in findings(content) if not one.why]
    assert [edit.words for edit in found.edits] == ["[3]", "[3, 6]"]


def test_a_deload_week_without_a_cut_is_told_at_the_week(findings):
    content = PLAIN.replace("weeks: 4", "weeks: 4\ndeload: [4]")
    assert findings(content, "deload-without-cut") == []
    (found,) = findings(content.replace("{1-3: 5, 4: 2}", "5"), "deload-without-cut")
    assert (found.place.excerpt, found.weeks) == ("4", (4,))
    assert found.counted.startswith("Hardly easier than week 3: 5 sets against 5")
