"""Edits that are made together: of two in each other's way the first stands."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.findings.edits import in_one
from spotline.lint.findings.finding import Edit
from spotline.lint.text.places import Text


@given(st.lists(st.tuples(st.integers(0, 30), st.integers(0, 5)), max_size=12))
def test_edits_made_together_keep_those_that_nothing_before_is_in_the_way_of(
    stretches: list[tuple[int, int]],
) -> None:
    """Each against all that were kept before it, where the code looks at its neighbours alone."""
    text = Text("a", "-" * 40)
    edits = [Edit(text.place(start, start + length), "x", "x") for start, length in stretches]
    kept: list[tuple[int, int]] = []
    for start, end in ((start, start + length) for start, length in stretches):
        meets = [
            (low, high)
            for low, high in kept
            if (start < high and low < end)
            or ((start == end or low == high) and start <= high and low <= end)
        ]
        if not meets:
            kept.append((start, end))
    whole = in_one("all", edits)
    parts = [] if whole is None else [(one.place.start, one.place.end) for one in whole.parts]
    assert parts == sorted(kept)
