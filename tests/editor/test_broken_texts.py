"""No text, however broken, makes a feature fail or point outside the document."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spotline.lint.editor.documents.answers import Symbol
from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.editor.features.hints import hints
from spotline.lint.editor.features.hover import hover
from spotline.lint.editor.features.outline import lenses, symbols
from spotline.lint.editor.features.week_table import week_table

Open = Callable[..., Snapshot]

EXAMPLES = Path(__file__).parents[2] / "examples"
FILES = sorted(path.relative_to(EXAMPLES).as_posix() for path in EXAMPLES.rglob("*.yaml"))

SCRAPS = (
    "\n", " ", "  - ", ": ", "{", "}", "[", "]", ",", "#", "&a ", "*a", "<<: *heavy", "'", '"', "|\n", "1-3: 2", "load: ",
    "80 %", "exercise: ", "sets: {1: 2}", "superset:\n", "work: [{sets: 1}]", "or: [x]", "\t", "é", "🏋", "\r\n", "\u2028",
    "# spotline: waive x because y", "athletes: [{name: A}]", "null", "~", "-", "rounds: 2", "tempo: X-X-X-X", "weeks: 0",
)  # fmt: skip


@st.composite
def broken(draw: st.DrawFn) -> tuple[str, str]:
    """An example file's name, and its text with pieces cut out, put in, moved or doubled."""
    name = draw(st.sampled_from(FILES))
    text = (EXAMPLES / name).read_text(encoding="utf-8")
    for _ in range(draw(st.integers(1, 4))):
        start = draw(st.integers(0, len(text)))
        end = min(len(text), start + draw(st.integers(0, 60)))
        piece = draw(st.one_of(st.just(""), st.sampled_from(SCRAPS), st.just(text[start:end] * 2)))
        text = text[:start] + piece + text[end:]
    return name, text


def within(found: list[Symbol], length: int) -> None:
    for one in found:
        assert 0 <= one.start <= one.name_start <= one.name_end <= one.end <= length
        within(one.children, length)


def look(snapshot: Snapshot, offset: int) -> None:
    length = len(snapshot.text.content)
    found = hover(snapshot, offset)
    if found is not None:
        assert 0 <= found.start <= offset <= found.end <= length
        assert found.markdown
    for hint in hints(snapshot, 0, length, frozenset({"sets", "kg"})):
        assert 0 <= hint.offset <= length
        assert hint.label
    for lens in lenses(snapshot):
        assert 0 <= lens.start <= lens.end <= length
    within(symbols(snapshot), length)
    for ledger in snapshot.review.ledgers[:1]:
        assert week_table(ledger, len(ledger.weeks)).startswith("# Week")


@settings(max_examples=300)
@given(change=broken(), places=st.lists(st.integers(0, 10_000), min_size=8, max_size=8))
def test_broken_texts(example: Open, change: tuple[str, str], places: list[int]) -> None:
    name, text = change
    snapshot = example(name, text)
    for place in places:
        look(snapshot, place % (len(snapshot.text.content) + 1))


@pytest.mark.parametrize("name", FILES)
def test_a_file_typed_from_its_beginning(example: Open, name: str) -> None:
    text = (EXAMPLES / name).read_text(encoding="utf-8")
    for end in range(0, len(text), max(1, len(text) // 12)):
        look(example(name, text[:end]), end)
        look(example(name, text[:end]), max(0, end - 3))


def test_a_text_with_a_byte_order_mark_and_every_kind_of_line_end(opened: Open) -> None:
    text = "programme: A\r\nsessions:\r  - session: S\n    exercises: [{exercise: back squat, sets: 3, reps: 5}]\n"
    snapshot = opened(f"\ufeff{text}")
    for offset in range(len(snapshot.text.content) + 1):
        look(snapshot, offset)
