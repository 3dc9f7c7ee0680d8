"""Names of exercises and anchors: given another name throughout a file, and marked where they stand."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.editor.features.rename import CannotRenameError, highlights, renamable, renamed

Open = Callable[..., Snapshot]

PLAN = """\
programme: Winter
shared: {row: &row {exercise: seated cable row, sets: 3, reps: 8}}
sessions:
  - session: A
    exercises:
      - {exercise: RDL, sets: 3, reps: 8}
      - {exercise: {1-2: Romanian deadlift, 3-4: leg press}, sets: 3, reps: 8}
      - {exercise: 'Romanian deadlift, paused', sets: 3, reps: 8}
      - *row
      - exercise: back squat
        sets: 3
        reps: 5
        or: [leg press]
"""


def after(snapshot: Snapshot, needle: str, new: str) -> str:
    """The text after a rename at some words."""
    content = snapshot.text.content
    edits = renamed(snapshot, content.index(needle) + 1, new)
    for edit in sorted(edits, key=lambda one: -one.place.start):
        content = content[: edit.place.start] + edit.words + content[edit.place.end :]
    return content


def sets_of(snapshot: Snapshot) -> list[tuple[str, str]]:
    week = snapshot.review.ledgers[0].weeks[0]
    return [(group, str(week.sets(group))) for group in week.groups()]


def test_a_known_name_is_written_wherever_it_is_called_so(opened: Open) -> None:
    now = after(opened(PLAN), "RDL", "stiff Romanian")
    assert now.count("stiff Romanian") == 3  # the two lines, and what it means
    # what says more than the name keeps saying it
    assert "'Romanian deadlift, paused'" in now


def test_a_name_that_nobody_knows_is_told_at_the_top_and_counts_as_before(opened: Open) -> None:
    before = opened(PLAN)
    now = after(before, "back squat", "the big one")
    assert "\nour names: {the big one: back squat}\nshared:" in now
    assert "- exercise: the big one\n" in now
    assert "our names" not in after(before, "back squat", "high-bar back squat")
    review = opened(now)
    assert sets_of(review) == sets_of(before)
    assert not [one for one in review.review.findings if one.rule == "exercise-unknown"]


@pytest.mark.parametrize(
    ("told", "wanted"),
    [
        (
            "our names: {toe push: standing calf raise}",
            "our names: {toe push: standing calf raise, heavy: back squat}",
        ),
        (
            "our names:\n    toe push: standing calf raise",
            "our names:\n    toe push: standing calf raise\n    heavy: back squat",
        ),
    ],
)
def test_it_joins_the_names_that_are_told_already(opened: Open, told: str, wanted: str) -> None:
    now = after(opened(PLAN.replace("shared:", f"{told}\nshared:")), "back squat", "heavy")
    assert f"{wanted}\nshared:" in now


def test_a_given_name_is_renamed_with_its_lines(opened: Open) -> None:
    text = PLAN.replace("shared:", "our names: {big one: back squat}\nshared:").replace(
        "exercise: back squat", "exercise: Big one"
    )
    for needle in ("big one: back", "Big one"):
        now = after(opened(text), needle, "main lift")
        assert "our names: {main lift: back squat}" in now
        assert "- exercise: main lift\n" in now
        assert now.lower().count("big one") == 0


def test_names_are_written_so_that_yaml_reads_them_back(opened: Open) -> None:
    now = after(opened(PLAN), "back squat", "heavy one: my, way")
    assert "exercise: 'heavy one: my, way'" in now
    assert "our names: {'heavy one: my, way': back squat}" in now
    assert sets_of(opened(now)) == sets_of(opened(PLAN))


def test_line_ends_stay(opened: Open) -> None:
    text = "programme: W\r\nsessions:\r\n  - {session: A, exercises: [{exercise: back squat, sets: 3, reps: 5}]}\r\n"
    assert "\r\nour names: {heavy: back squat}\r\nsessions" in after(
        opened("programme: W\n", now=text), "back squat", "heavy"
    )


def test_an_anchor_is_renamed_with_its_uses(opened: Open) -> None:
    now = after(opened(PLAN), "&row", "pull")
    assert "{row: &pull {" in now
    assert "- *pull\n" in now
    assert after(opened(PLAN), "*row", "pull") == now
    with pytest.raises(CannotRenameError, match="holds no blanks"):
        renamed(opened(PLAN), PLAN.index("&row") + 1, "two words")


def test_what_can_be_renamed(opened: Open) -> None:
    snapshot = opened(PLAN)
    start = PLAN.index("RDL")
    assert renamable(snapshot, start + 1) == (start, start + 3, "RDL")
    for needle in ("Winter", "sets:", "session: A", "3, reps"):
        assert renamable(snapshot, PLAN.index(needle) + 1) is None
    with pytest.raises(CannotRenameError, match="Put the caret"):
        renamed(snapshot, 0, "x")
    with pytest.raises(CannotRenameError, match="empty"):
        renamed(snapshot, start, " \n")
    flow = "{programme: A, sessions: [{session: S, exercises: [{exercise: plank, sets: 3}]}]}\n"
    with pytest.raises(CannotRenameError, match="our names"):
        renamed(opened(flow), flow.index("plank"), "stiff board")


def test_nothing_is_renamed_while_the_text_cannot_be_read(opened: Open) -> None:
    now = PLAN.replace("sets: 3, reps: 8}\n      - {exercise: {", "sets: [3, reps: 8}\n      - {exercise: {")
    snapshot = opened(PLAN, now=now)
    assert renamable(snapshot, now.index("RDL") + 1) is None
    assert highlights(snapshot, now.index("RDL") + 1) == []


def test_where_an_exercise_stands(opened: Open) -> None:
    def marked(needle: str) -> list[str]:
        return [PLAN[start:end] for start, end in highlights(opened(PLAN), PLAN.index(needle) + 1)]

    assert marked("RDL") == ["RDL", "Romanian deadlift", "'Romanian deadlift, paused'"]
    assert marked("leg press") == ["leg press", "leg press"]
    assert marked("&row") == ["row", "row"]
    assert marked("Winter") == []
