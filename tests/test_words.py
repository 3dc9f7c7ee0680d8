"""Numbers in words."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.wording.words import amount, duration, exact, more_sets, part, ratios, times_as_many


@pytest.mark.parametrize(
    ("form", "number", "words"),
    [
        (exact, 3, "3"),
        (exact, 3.0, "3"),
        (exact, 0.125, "0.125"),
        (exact, 1_000_000.0, "1000000"),
        (duration, 10, "10 s"),
        (duration, 30, "30 s"),
        (duration, 60, "1 min"),
        (duration, 100, "100 s"),
        (duration, 150, "2.5 min"),
        (duration, 900, "15 min"),
        (part, 2, "half"),
        (part, 3.0, "third"),
        (part, 10, "tenth"),
        (part, 12, "1/12"),
        (part, 1, "1/1"),
        (part, 2.5, "40 %"),
        (ratios, 1, "1:1 to 1:1"),
        (ratios, 1.5, "2:3 to 3:2"),
        (ratios, 1.1, "10:11 to 11:10"),
        (ratios, 2, "1:2 to 2:1"),
        (ratios, 1.33, "1:1.33 to 1.33:1"),  # 3:4 would let more pass
        (times_as_many, 2, "twice as many"),
        (times_as_many, 2.5, "2.5 times as many"),
        (more_sets, 0, "more"),
        (more_sets, 1, "over 1 set more"),
        (more_sets, 1.5, "over 1.5 sets more"),
    ],
)
def test_a_number_in_words(form: Callable[[float], str], number: float, words: str) -> None:
    assert form(number) == words


@pytest.mark.parametrize(
    ("number", "unit", "words"),
    [
        (90, "s", "90 s"),
        (1, "day", "1 day"),
        (1.0, "%", "1 %"),
        (1.5, "day", "1.5 days"),
        (0, "set", "0 sets"),
    ],
)
def test_a_number_with_its_unit(number: float, unit: str, words: str) -> None:
    assert amount(number, unit) == words
