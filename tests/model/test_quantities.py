"""Every form of a quantity that the schema allows is read; nonsense is not."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spotline import schema as schemas
from spotline.lint.model import quantities
from spotline.lint.model.amounts import in_order
from spotline.lint.model.changes import change_of, is_change
from spotline.lint.model.quantities import OTHERWISE, Range
from spotline.lint.model.two_readings import sets_of_reps
from spotline.lint.model.weeks import time_of_day, weeks

DEFS: dict[str, Any] = schemas.load("programme")["$defs"]


@pytest.mark.parametrize(
    ("written", "low", "high"),
    [
        (3, 3, 3),
        (7.5, 7.5, 7.5),
        ("3", 3, 3),
        ("3-4", 3, 4),
        ("7.5-8", 7.5, 8),
        ("3 - 4", 3, 4),
        ("0", 0, 0),
        ("8-5", 5, 8),  # backwards: read as if turned round
        ("5-5", 5, 5),
    ],
)
def test_numbers_and_ranges(written: object, low: float, high: float) -> None:
    assert quantities.number_or_range(written) == Range(low, high)


@pytest.mark.parametrize(
    "written",
    [
        "",
        "-",
        "3-",
        "-3",
        "3-4-5",
        "three",
        "3,5",
        "1e3",
        "٣",
        "²",
        "3..4",
        ".",
        "nan",
        "inf",
        None,
        True,
        [3],
    ],
)
def test_what_is_no_number(written: object) -> None:
    assert quantities.number_or_range(written) is None


def test_a_number_of_more_than_twelve_digits_is_not_read() -> None:
    assert quantities.number_or_range("9" * 12) == Range(999_999_999_999, 999_999_999_999)
    assert quantities.number_or_range("9" * 13) is None


@pytest.mark.parametrize(
    ("words", "right"),
    [
        ("8-5", "5-8"),
        ("5-8", "5-8"),
        ("12/10-8", "12/8-10"),
        ("90-60 s", "60-90 s"),
        ("0.5-0.45 m/s", "0.45-0.5 m/s"),
        ("10-9.5", "9.5-10"),
        ("3", "3"),
    ],
)
def test_backwards_ranges_are_turned_round(words: str, right: str) -> None:
    assert in_order(words) == right


class TestRange:
    def test_middle_sum_and_products(self) -> None:
        assert Range(3, 4).middle == 3.5
        assert Range(3, 4) + Range(1, 2) == Range(4, 6)
        assert Range(3, 4) * 0.5 == Range(1.5, 2)
        assert Range(3, 4).by(Range(5, 8)) == Range(15, 32)

    @pytest.mark.parametrize(
        ("other", "meets"),
        [
            (Range(4, 6), True),
            (Range(1, 2), True),
            (Range(0, 9), True),
            (Range(2.5, 3), True),
            (Range(4.5, 6), False),
            (Range(0, 1.5), False),
        ],
    )
    def test_meets_at_its_very_ends(self, other: Range, meets: bool) -> None:
        assert Range(2, 4).meets(other) is meets
        assert other.meets(Range(2, 4)) is meets

    def test_equal_ranges_are_one_key(self) -> None:
        assert len({Range(1, 2), Range(1.0, 2.0), Range(1, 3)}) == 2
        assert Range(1, 2) != "1-2"

    @pytest.mark.parametrize(
        ("span", "words"),
        [
            (Range(3, 3), "3"),
            (Range(3, 4), "3-4"),
            (Range(2.5, 2.5), "2.5"),
            (Range(0, 0), "0"),
            (Range(10, 20), "10-20"),
            (Range(1 / 3, 1 / 3), "0.33"),
        ],
    )
    def test_words(self, span: Range, words: str) -> None:
        assert str(span) == words


class TestReps:
    @pytest.mark.parametrize(
        ("written", "a_set", "of_three", "open_last"),
        [
            (5, Range(5, 5), Range(15, 15), False),
            ("5", Range(5, 5), Range(15, 15), False),
            ("5-8", Range(5, 8), Range(15, 24), False),
            ("12/10/8", Range(8, 12), Range(30, 30), False),  # 12 + 10 + 8
            ("12-15/8", Range(8, 15), Range(20, 23), False),
            ("2+2+2", Range(6, 6), Range(18, 18), False),  # three sets of 2 + 2 + 2
            ("5+", Range(5, 5), Range(15, 15), True),
            ("5/5/5+", Range(5, 5), Range(15, 15), True),
            ("AMRAP", None, None, True),
            ("amrap", None, None, True),
        ],
    )
    def test_forms(
        self, written: object, a_set: Range | None, of_three: Range | None, open_last: bool
    ) -> None:
        reps = quantities.reps(written)
        assert reps is not None
        assert reps.a_set() == a_set
        assert reps.total(Range(3, 3)) == of_three
        assert reps.open_last is open_last

    def test_the_parts_of_a_cluster_are_kept(self) -> None:
        reps = quantities.reps("2+2+1")
        assert reps is not None
        assert reps.parts == (2, 2, 1)
        assert not reps.each_set

    def test_one_number_a_set(self) -> None:
        reps = quantities.reps("12/10/8")
        assert reps is not None
        assert reps.each_set
        assert reps.sets == (Range(12, 12), Range(10, 10), Range(8, 8))

    def test_a_range_of_sets_times_a_range_of_repetitions(self) -> None:
        reps = quantities.reps("8-10")
        assert reps is not None
        assert reps.total(Range(3, 4)) == Range(24, 40)  # 3 x 8 to 4 x 10

    @pytest.mark.parametrize("written", ["", "to fail", "5x5", "2+2+", "+", "12//8", "/", None, [5], "5-"])
    def test_nonsense(self, written: object) -> None:
        assert quantities.reps(written) is None


class TestLoad:
    @pytest.mark.parametrize(
        ("written", "kind", "span"),
        [
            ("80 %", "percent", Range(80, 80)),
            ("80-85%", "percent", Range(80, 85)),
            ("70/75/80 %", "percent", Range(70, 80)),
            ("60 kg", "mass", Range(60, 60)),
            ("60-62.5 kg", "mass", Range(60, 62.5)),
            ("2 x 24 kg", "mass", Range(48, 48)),
            ("2x24kg", "mass", Range(48, 48)),
            ("bodyweight", "bodyweight", Range(0, 0)),
            ("bodyweight + 10 kg", "bodyweight", Range(10, 10)),
            ("bodyweight - 20 kg", "bodyweight", Range(-20, -20)),
            ("bodyweight - 10-20 kg", "bodyweight", Range(-20, -10)),
            ("20 % bodyweight", "share", Range(20, 20)),
            ("10RM", "rm", Range(10, 10)),
            ("8-10 RM", "rm", Range(8, 10)),
            ("90 % of top set", "top set", Range(90, 90)),
            ("red band", "label", None),
            ("light green band", "label", None),
            ("band 80 lb", "label", None),
            ("band kg", "label", None),
            ("bodyweight band", "label", None),
            ("pin 7", "label", None),
        ],
    )
    def test_forms(self, written: str, kind: str, span: Range | None) -> None:
        load = quantities.load(written)
        assert load is not None
        assert load.kind == kind
        assert load.span == span
        assert load.words == written

    def test_pounds_are_exactly_0_45359237_kg(self) -> None:
        # International yard and pound agreement of 1959, exact by definition (from memory).
        load = quantities.load("100 lb")
        assert load is not None
        assert load.unit == "lb"
        assert load.values[0].low == pytest.approx(45.359237, abs=1e-12)

    def test_each_implement_is_a_value_and_their_number_is_kept(self) -> None:
        load = quantities.load("2 x 24 kg")
        assert load is not None
        assert load.pieces == 2
        assert load.values == (Range(24, 24),)

    def test_one_value_a_set(self) -> None:
        load = quantities.load("70/75/80 %")
        assert load is not None
        assert load.values == (Range(70, 70), Range(75, 75), Range(80, 80))

    @pytest.mark.parametrize(
        "written",
        [
            60,
            None,
            "% kg",
            "kg",
            "x 24 kg",
            "two x 24 kg",
            "bodyweight 10 kg",
            "bodyweight + 10",
            "heavy %",
            "of top set",
            "+",
            "- kg",
            "80 of top set",
            "xRM",
        ],
    )
    def test_nonsense(self, written: object) -> None:
        assert quantities.load(written) is None

    @pytest.mark.parametrize(
        ("written", "kg"), [("72 kg", 72), ("70-74 kg", 72), ("72", None), ("bodyweight", None), (72, None)]
    )
    def test_mass(self, written: object, kg: float | None) -> None:
        assert quantities.mass(written) == kg


@pytest.mark.parametrize(
    ("read", "written", "span"),
    [
        (quantities.duration, "90 s", Range(90, 90)),
        (quantities.duration, "90s", Range(90, 90)),
        (quantities.duration, "3 min", Range(180, 180)),
        (quantities.duration, "2-3 min", Range(120, 180)),
        (quantities.duration, "1.5 min", Range(90, 90)),
        (quantities.duration, "1 h", Range(3600, 3600)),
        (quantities.duration, "0 s", Range(0, 0)),
        (quantities.distance, "20 m", Range(20, 20)),
        (quantities.distance, "30-40 m", Range(30, 40)),
        (quantities.distance, "1.5 km", Range(1500, 1500)),
        (quantities.velocity, "0.45-0.55 m/s", Range(0.45, 0.55)),
        (quantities.percent, "20 %", Range(20, 20)),
        (quantities.percent, "10-20%", Range(10, 20)),
    ],
)
def test_quantities_with_a_unit(read: Callable[[object], Range | None], written: str, span: Range) -> None:
    assert read(written) == span


@pytest.mark.parametrize(
    "read", [quantities.duration, quantities.distance, quantities.velocity, quantities.percent]
)
@pytest.mark.parametrize(
    "written", [9, "9", "", "s", "min", "km", "90 stones", "x s", None, "3 minute stones"]
)
def test_units_are_never_guessed(read: Callable[[object], Range | None], written: object) -> None:
    assert read(written) is None


@pytest.mark.parametrize(
    ("written", "tempo"),
    [
        ("3-1-X-0", (3, 1, None, 0)),
        ("3-1-x-0", (3, 1, None, 0)),
        ("2-0-2-0", (2, 0, 2, 0)),
        ("X-X-X-X", (None, None, None, None)),
        ("10-0-10-0", (10, 0, 10, 0)),
        ("3-1-X", None),
        ("3-1-X-0-1", None),
        ("3-1--0", None),
        ("slow", None),
        ("31X0", (3, 1, None, 0)),
        (3010, (3, 0, 1, 0)),
        (310, None),
        (None, None),
    ],
)
def test_tempo(written: object, tempo: object) -> None:
    assert quantities.tempo(written) == tempo


@pytest.mark.parametrize(
    ("key", "spans"),
    [
        ("3", ((3, 3),)),
        ("1-3", ((1, 3),)),
        ("3-1", ((1, 3),)),
        ("12-104", ((12, 104),)),
        ("1000-2000", ((1000, 2000),)),
        ("3+5", ((3, 3), (5, 5))),
        ("1-2+5", ((1, 2), (5, 5))),
        ("week 1", ((1, 1),)),
        ("1 to 3 and 6", ((1, 3), (6, 6))),
        ("0", ()),
        ("0-3", ()),
        ("1-", ()),
        ("-1", ()),
        ("1+", ()),
        ("1,2", ()),
        ("1234567890", ()),
        ("", ()),
    ],
)
def test_weeks(key: str, spans: tuple[tuple[int, int], ...]) -> None:
    assert weeks(key) == spans


# Schema and parser agree


def _of_each_side(kind: str, value: Any) -> str:
    """A time or a distance without the words that say each side, as a line reads it."""
    return (quantities.spelt(kind, value, str) or "").removesuffix(" each")


PARSERS: dict[str, Callable[[Any], object]] = {
    "sets": lambda value: quantities.sets(value) or sets_of_reps(value),
    "setsOfWeek": lambda value: (
        quantities.sets(value) or sets_of_reps(value) or change_of("sets", value.replace("X", "x"))
    ),
    "roundCount": lambda value: quantities.number_or_range(value) or OTHERWISE["rounds"](value),
    "reps": lambda value: quantities.reps(value) or sets_of_reps(value),
    "setsOfReps": sets_of_reps,
    "load": quantities.load,
    "rir": quantities.rir,
    "rpe": quantities.rpe,
    "rest": quantities.duration,
    "time": quantities.duration,
    "length": quantities.length,
    "tempo": quantities.tempo,
    "workingBest": lambda value: quantities.spelt("workingBest", value, quantities.percent),
    "hold": lambda value: quantities.duration(_of_each_side("hold", value)),
    "distance": lambda value: quantities.distance(_of_each_side("distance", value)),
    "velocity": quantities.velocity,
    "percent": quantities.percent,
    "sessionEffort": lambda value: (
        quantities.number_or_range(value)
        or quantities.spelt("sessionEffort", value, quantities.number_or_range)
    ),
    "mass": quantities.mass,
    "liftedLoad": quantities.load,
    "weekNumbers": weeks,
    "dayAndTime": lambda value: time_of_day(value)[1],
    "again": lambda value: is_change(value) or None,
}
"""The parser of each quantity that the schemas of programme and athlete describe."""

NO_QUANTITY = {"athletePath", "date", "minutes", "minutesOfWork", "step", "turn"}
"""Patterned, but kept as written (or read by the calendar)."""


def test_every_quantity_of_the_schemas_has_a_parser() -> None:
    patterned = {name for name, part in DEFS.items() if "pattern" in part}
    assert patterned == set(PARSERS) | NO_QUANTITY


@pytest.mark.parametrize("name", PARSERS)
def test_every_example_of_the_schema_is_read(name: str) -> None:
    examples = DEFS[name]["examples"]
    assert examples
    for example in examples:
        assert PARSERS[name](example) is not None, example


@pytest.mark.parametrize("name", PARSERS)
def test_everything_that_the_schema_lets_through_is_read(name: str) -> None:
    pattern = re.compile(DEFS[name]["pattern"], re.ASCII)

    @settings(max_examples=60, deadline=None)
    @given(st.from_regex(pattern).filter(lambda words: not words.endswith("\n")))
    def read(words: str) -> None:
        assert PARSERS[name](words) is not None

    read()


@pytest.mark.parametrize("name", ["sets", "setsOfWeek", "roundCount", "reps", "rir", "rpe", "sessionEffort"])
def test_every_number_that_the_schema_lets_through_is_read(name: str) -> None:
    part = DEFS[name]
    step = part.get("multipleOf", 1)
    for index in range(int((part["maximum"] - part["minimum"]) / step) + 1):
        number = part["minimum"] + index * step
        assert PARSERS[name](number) is not None, number


@pytest.mark.parametrize(
    "label",
    [
        "band kg",
        "band 5 kg",
        "band RM",
        "bodyweight band",
        "band bodyweight",
        "band x of top",
        "x bodyweight band",
        "RM band",
        "pin 10",
    ],
)
def test_labels_that_look_like_loads_are_labels(label: str) -> None:
    assert re.search(DEFS["load"]["pattern"], label)
    load = quantities.load(label)
    assert load is not None
    assert load.kind == "label"
