"""Offsets of an older text lead to the same characters of a newer one, and back."""

from __future__ import annotations

from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.editor.documents.offset_map import OffsetMap

TEXTS = st.text("ab\n", max_size=12)


def mapped(texts: list[str]) -> OffsetMap:
    """The map from the first text to the last, through all edits between."""
    offset_map = OffsetMap.of_unedited(texts[0])
    for before, after in pairwise(texts):
        offset_map = offset_map.edited(before, after)
    return offset_map


@given(st.lists(TEXTS, min_size=1, max_size=5))
def test_what_is_unchanged_is_the_same_and_in_order(texts: list[str]) -> None:
    offset_map, newest, last = mapped(texts), texts[-1], -1
    for start, end, shift in offset_map.unchanged:
        assert start < end
        for offset in range(start, end):
            assert offset + shift > last
            last = offset + shift
            assert texts[0][offset : offset + 1] == newest[last : last + 1]
    assert offset_map.unchanged == () or last <= len(newest)


@given(st.lists(TEXTS, min_size=1, max_size=5))
def test_an_offset_leads_there_and_back(texts: list[str]) -> None:
    offset_map = mapped(texts)
    for offset in range(len(texts[0]) + 1):
        newer = offset_map.to_newer(offset)
        assert newer is None or offset_map.to_older(newer) == offset
    for offset in range(len(texts[-1]) + 1):
        older = offset_map.to_older(offset)
        assert older is None or offset_map.to_newer(older) == offset


@given(st.lists(TEXTS, min_size=1, max_size=4), st.integers(0, 12), st.integers(0, 12))
def test_a_span_holds_the_same_text(texts: list[str], one: int, other: int) -> None:
    start, end = sorted((min(one, len(texts[0])), min(other, len(texts[0]))))
    offset_map = mapped(texts)
    span = offset_map.span_to_newer(start, end)
    assert span is None or texts[-1][slice(*span)] == texts[0][start:end]
    left = offset_map.remains_of(start, end)
    assert span is None or start == end or left == span


def test_what_is_left_of_a_rewritten_part() -> None:
    offset_map = OffsetMap.between("sets: {1: 3}, reps: 5", "sets: {1: 12}, reps: 5")
    assert offset_map.span_to_newer(0, 12) is None
    assert offset_map.remains_of(0, 12) == (0, 13)
    assert offset_map.remains_of(10, 11) is None
