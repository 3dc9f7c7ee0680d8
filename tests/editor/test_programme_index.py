"""The parts of a programme are found by where they stand in the text."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.editor.caret.programme_index import ProgrammeIndex
from spotline.lint.editor.caret.readable_review import ReadableReview
from spotline.lint.editor.documents.snapshot import Snapshot

from .test_node_path import PLAN, path_to

Open = Callable[..., Snapshot]


@pytest.fixture(scope="module")
def index(opened: Open) -> ProgrammeIndex:
    return ReadableReview(opened(PLAN)).index


@pytest.mark.parametrize(
    ("needle", "lines"),
    [
        ("75 %", ["back squat"]),
        ("sets: {1", ["back squat"]),
        ("hack", ["back squat"]),
        ("seated", ["seated leg curl"]),
        ("*easy, sets: 4", ["seated leg curl"]),
        ("*easy, sets: 2", ["leg extension"]),
        ("*trunk", ["plank"]),
        ("plank", ["plank"]),  # where the anchor stands
        ("push-up", ["push-up"]),
        ("70 %", ["bench press"]),
        ("work:", ["bench press"]),
        ("superset", []),
        ("Mara", []),
        ("monday", []),
    ],
)
def test_the_line_it_belongs_to(index: ProgrammeIndex, needle: str, lines: list[str]) -> None:
    assert [line.names()[0].words for line in index.lines(path_to(needle))] == lines


@pytest.mark.parametrize(
    ("needle", "sessions"),
    [
        ("Lower A", ["Lower A"]),
        ("monday", ["Lower A"]),
        ("push-up", ["Lower A"]),
        ("70 %", ["Upper"]),
        ("Mara", []),
    ],
)
def test_the_session_it_belongs_to(index: ProgrammeIndex, needle: str, sessions: list[str]) -> None:
    assert [session.name for session in index.sessions(path_to(needle))] == sessions


@pytest.mark.parametrize(
    ("key", "needle", "done"),
    [
        ("load", "75 %", [("back squat", (1, 2, 3)), ("front squat", (4,))]),
        ("sets", "3, 4: 2", [("back squat", (1, 2, 3))]),
        ("reps", "10-12", [("seated leg curl", (1, 2, 3, 4)), ("leg extension", (1, 2, 3, 4))]),
        ("rounds", "3\n          exercises", [("push-up", (1, 2, 3, 4))]),
        ("load", "70 %", [("bench press", (1, 2, 3, 4))]),
        ("reps", "75 %", []),
    ],
)
def test_the_sets_that_a_value_sets_out(
    index: ProgrammeIndex, key: str, needle: str, done: list[tuple[str, tuple[int, ...]]]
) -> None:
    found = path_to(needle)
    entries = index.entries(key, found.start, found.end)
    assert [(entry.name, index.weeks[entry]) for entry in entries] == done


def test_blocks(opened: Open) -> None:
    text = """\
programme: Test
blocks:
  - {name: One, weeks: 2, sessions: [{session: A, exercises: [{exercise: back squat, sets: 3}]}]}
  - {name: Two, weeks: 1, sessions: [{session: B, exercises: [{exercise: bench press, sets: 3}]}]}
"""
    index = ReadableReview(opened(text)).index
    for needle, name in (("One", "One"), ("back squat", "One"), ("weeks: 1", "Two"), ("bench", "Two")):
        block = index.block(path_to(needle, text=text))
        assert block is not None
        assert block.name == name
    assert index.block(path_to("Test", text=text)) is None


def test_a_programme_without_blocks_is_one(index: ProgrammeIndex) -> None:
    block = index.block(path_to("Test"))
    assert block is not None
    assert block.weeks == 4


def test_sessions_shared_by_an_alias_stand_in_both_blocks(opened: Open) -> None:
    text = """\
programme: Test
shared:
  both: &both [{session: A, exercises: [{exercise: back squat, sets: 3}]}]
blocks:
  - {name: One, weeks: 2, sessions: *both}
  - {name: Two, weeks: 1, sessions: *both}
"""
    index = ReadableReview(opened(text)).index
    assert [one.block.name for one in index.sessions(path_to("A,", text=text))] == ["One", "Two"]
    assert len(index.lines(path_to("back squat", text=text))) == 2
