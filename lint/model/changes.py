"""Changes of values: a step from one turn to the next, a factor, points.

Nothing here is needed for plain values, so that other modules import it only when it is.
"""

from __future__ import annotations

import re
from copy import copy
from math import floor

from .bounds import MOST_METRES, MOST_SECONDS, beyond
from .quantities import KG_PER_LB, Load, Range, Reps
from .two_readings import MOST_POINTS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Literal

    Kind = Literal["same", "number", "mass", "points", "share", "factor"]

PERCENTS = ("percent", "top set", "share")
"""Kinds of load that are percentages."""

BOUNDS = {
    "sets": Range(1, 100),
    "rounds": Range(1, 100),
    "rir": Range(0, 10),
    "rpe": Range(1, 10),
    "rest": Range(0, MOST_SECONDS["rest"]),
    "hold": Range(0, MOST_SECONDS["rest"]),
    "distance": Range(0, MOST_METRES),
}
"""What values of some keys may come to."""

_CHANGE = re.compile(r"([+-]) ?([0-9]{1,3}(?:[.,][0-9]{1,2})?) ?([a-z%]*)")

_UNITS: dict[str, tuple[Kind, float, tuple[str, ...]]] = {
    "": ("number", 1, ("sets", "rounds", "reps", "rir", "rpe")),
    "set": ("number", 1, ("sets", "rounds")),
    "round": ("number", 1, ("sets", "rounds")),
    "rep": ("number", 1, ("reps",)),
    "s": ("number", 1, ("hold", "rest", "reps")),
    "min": ("number", 60, ("hold", "rest")),
    "m": ("number", 1, ("distance",)),
    "kg": ("mass", 1, ("load",)),
    "lb": ("mass", KG_PER_LB, ("load",)),
    "point": ("points", 1, ("load",)),
    "%": ("share", 1, ("load", "sets", "reps", "hold", "distance")),
}
"""What a unit changes, in which unit of ours, and of which keys."""


class ValueChange:
    """How a value changes.

    ``kind`` is: ``same``; ``number`` added, in the unit of the value (s, m); ``mass`` added, in kg;
    ``points`` of a percentage; ``share`` of the value added, in per cent; ``factor``.
    """

    __slots__ = ("by", "kind", "words")

    def __init__(self, kind: Kind, by: float, words: str) -> None:
        self.kind: Kind = kind
        self.by = by
        self.words = words


class TwoWaysError(Exception):
    """A change that has two readings: ``ways`` are the values that it may lead to."""

    def __init__(self, *ways: str) -> None:
        super().__init__(*ways)
        self.ways = ways


def change_of(key: str, value: object) -> ValueChange | None:
    """What a value changes by: ``same``, ``half``, ``x 0.9``, ``+5 kg``, ``-10 points``, ``+1``; or None."""
    words = str(value)
    if isinstance(value, int) and not isinstance(value, bool):
        words = f"{value:+d}"
    words = words.strip().lower().replace("\u2212", "-")
    if words == "same":
        return ValueChange("same", 0.0, words)
    factor = 0.5 if words == "half" else _factor(words)
    if factor is not None:
        is_amount = key in ("sets", "rounds", "reps", "load", "hold", "distance")
        return ValueChange("factor", factor, words) if is_amount else None
    found = _CHANGE.fullmatch(words)
    if found is None:
        return None
    unit = found[3].removesuffix("s") if len(found[3]) > 1 else found[3]
    kind, factor, keys = _UNITS.get(unit, ("same", 0, ()))
    if key not in keys:
        return None
    number = float(found[2].replace(",", ".")) * factor
    return ValueChange(kind, -number if found[1] == "-" else number, words)


def _factor(words: str) -> float | None:
    """``x 0.9``, ``x 2/3``: what a value is multiplied by."""
    part = re.fullmatch(r"(?:[x\u00d7] ?)?([1-9])/([1-9])", words)
    if part is not None:
        return int(part[1]) / int(part[2])
    found = re.fullmatch(r"[x\u00d7] ?([0-9]{0,2}(?:[.,][0-9]{1,3})?)", words)
    number = float(found[1].replace(",", ".") or 0) if found and found[1] else 0.0
    return number or None


def _times(change: ValueChange, times: int) -> float:
    """What a value is multiplied by after changes that are shares of it."""
    return (change.by if change.kind == "factor" else 1 + change.by / 100) ** times


def is_change(value: object) -> bool:
    """Whether a value is written as a change, of whatever key."""
    return any(change_of(key, value) is not None for key in ("load", "sets", "reps", "rest", "distance"))


def changed(key: str, value: object, change: ValueChange, times: int = 1) -> object:
    """A value after ``times`` changes; None where it cannot change so, or would leave what is possible.

    Raises TwoWaysError where a percentage is changed by more per cent than is surely meant in points.
    """
    if change.kind == "same":
        return value
    if isinstance(value, Load):
        return _changed_load(value, change, times)
    if isinstance(value, Reps):
        return _changed_reps(value, change, times)
    if isinstance(value, Range):
        return _changed_range(value, change, times, BOUNDS[key])
    return None


def _changed_range(value: Range, change: ValueChange, times: int, within: Range) -> Range | None:
    """A range after changes. Parts are rounded to whole sets or repetitions, halves up, never to 0."""
    if change.kind in ("factor", "share"):
        if value.high == 0:
            return value
        factor = _times(change, times)
        least = max(1.0, within.low)
        ends = [max(floor(one * factor + 0.5), least) for one in value.ends]
        return Range(*ends) if ends[1] <= within.high else None
    if change.kind != "number":
        return None
    by = change.by * times
    other = Range(value.low + by, value.high + by)
    return other if other.low >= max(within.low, 0.0) and other.high <= within.high else None


def _changed_reps(value: Reps, change: ValueChange, times: int) -> Reps | None:
    if value.parts or not (value.sets or value.timed):
        return None
    other = copy(value)
    if value.timed is not None:
        other.timed = _changed_range(value.timed, change, times, Range(1, 3600))
        return other if other.timed else None
    sets = [_changed_range(one, change, times, Range(1, 1000)) for one in value.sets]
    other.sets = tuple(one for one in sets if one is not None)
    return other if len(other.sets) == len(sets) else None


def _changed_load(load: Load, change: ValueChange, times: int) -> Load | None:
    """A load after changes, in words of the same form."""
    is_percent = load.kind in PERCENTS or ("%" in load.words and load.kind not in ("mass", "bodyweight"))
    by = change.by * times
    if not load.values:
        return None
    if change.kind == "mass" and load.kind in ("mass", "bodyweight"):
        return _with_values(load, tuple(Range(one.low + by, one.high + by) for one in load.values))
    if change.kind == "points" and is_percent:
        return _with_values(load, tuple(Range(one.low + by, one.high + by) for one in load.values))
    factor = _times(change, times)
    if change.kind == "factor" or (change.kind == "share" and load.kind == "mass"):
        return _with_values(load, tuple(one * factor for one in load.values))
    if change.kind == "share" and is_percent:
        points = _with_values(load, tuple(Range(one.low + by, one.high + by) for one in load.values))
        if abs(change.by) <= MOST_POINTS or points is None:
            return points
        share = _with_values(load, tuple(one * factor for one in load.values))
        raise TwoWaysError(f"{points.words} (points)", f"{share.words if share else ''} (a factor)")
    return None


_FIGURES = re.compile(r"((?:[0-9]+ ?[xX] ?)?)[0-9][0-9.,/ \u2010-\u2015-]*?( ?[a-z%].*)", re.IGNORECASE)


def _with_values(load: Load, values: tuple[Range, ...]) -> Load | None:
    """The load with other values; None where one of them is no load any more."""
    if load.kind != "bodyweight" and any(one.low <= 0 for one in values):
        return None
    other = copy(load)
    other.values = values
    shown = [one * (1 / KG_PER_LB) if load.unit == "lb" else one for one in values]
    numbers = "/".join(str(Range(round(one.low, 2), round(one.high, 2))) for one in shown)
    if load.kind == "bodyweight":
        sign = "-" if numbers.startswith("-") else "+"
        other.words = f"bodyweight {sign} {numbers.lstrip('-')} {load.unit or 'kg'}"
        other.unit = load.unit or "kg"
        return None if beyond("load", other) else other
    found = _FIGURES.search(load.words)
    other.words = (
        f"{load.words[: found.start()]}{found[1]}{numbers}{found[2]}" if found else f"{numbers} {load.unit}"
    )
    return None if beyond("load", other) else other
