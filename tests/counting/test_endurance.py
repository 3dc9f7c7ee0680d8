"""Endurance work by what coaches call it: a machine that a lift is called like, and words beside it."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.counting.endurance import endurance_named
from spotline.lint.counting.ledger import Ledger


@pytest.mark.parametrize(
    ("name", "read"),
    [
        ("row", "rowing ergometer"),
        ("Row, easy", "rowing ergometer"),
        ("row 500", "rowing ergometer"),
        ("long steady row", "rowing ergometer"),
        ("timed 2000 race row", "rowing ergometer"),
        ("rowing machine, intervals", "rowing ergometer"),
        ("erg rowing", "rowing ergometer"),
        ("dumbbell row", None),
        ("row with dumbbells", None),
        ("seal row, easy", None),
        ("back squat", None),
        ("moon walk", None),
        ("", None),
    ],
)
def test_what_intervals_are_of(
    programme: Callable[..., Ledger], week: Callable[..., str], name: str, read: str | None
) -> None:
    known = programme(week({"Gym": ["plank, sets: 1"]})).known
    found = endurance_named(name, known)
    assert (found.name if found else None) == read
