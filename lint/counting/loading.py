"""What to put on the bar: a load in kg or lb that the implement can be set to, and the plates for it.

A load in % becomes kilograms by the athlete's best lift on file and is rounded down, so that a set is never
heavier than it was meant to be. A load that the coach wrote in kg or lb stays as written.
"""

from __future__ import annotations

from math import floor

from ..body.equipment import USUAL_STEPS, USUAL_STEPS_LB
from ..model.quantities import KG_PER_LB, Range
from .load_shares import of_other_lift

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping

    from ..model.quantities import Load
    from .set_group import SetGroup

BAR = {"kg": 20.0, "lb": 45.0}
"""A usual long bar (common practice, no source)."""

PLATES = {"kg": (25.0, 20.0, 15.0, 10.0, 5.0, 2.5, 1.25, 0.5, 0.25), "lb": (45.0, 35.0, 25.0, 10.0, 5.0, 2.5)}
"""Plates in use (common practice, no source)."""

OF_BEST = ("percent", "rm share")
"""Kinds of load that are a share of the lift's own best."""

SETTABLE = ("mass", "bodyweight", "share", "lift", *OF_BEST)
"""Kinds of load that come to a weight."""

IN_HANDS = ("dumbbell", "kettlebell")
"""Implements of which nobody can say how many share the kilograms of another lift."""


class Loading:
    """What the sets of a group are loaded with.

    ``values`` are in ``unit`` (kg or lb), one for each set or one for all; each is that of one of ``pieces``
    equal implements. ``added`` says that they come on top of the lifter's own body, below zero as help.
    ``rounded`` says that they were worked out and rounded down; ``step`` is what they were rounded to, None
    where nobody knows the implement's steps; ``estimated`` says that the best lift behind them was one of
    several repetitions.
    """

    __slots__ = ("added", "estimated", "pieces", "rounded", "step", "unit", "values")

    def __init__(
        self,
        values: tuple[Range, ...],
        unit: str,
        pieces: int,
        *,
        added: bool = False,
        rounded: bool = False,
        step: float | None = None,
        estimated: bool = False,
    ) -> None:
        self.values = values
        self.unit = unit
        self.pieces = pieces
        self.added = added
        self.rounded = rounded
        self.step = step
        self.estimated = estimated


def loading(group: SetGroup, steps: Mapping[str, float]) -> Loading | None:
    """The loading of a group of sets; None where its load is no weight, or the best lift is not known.

    ``steps`` are the team's own, in kg by implement.
    """
    load = group.work.load
    if load is None or load.kind not in SETTABLE:
        return None
    if load.kind in OF_BEST:
        return _from_best(group, steps)
    if load.kind == "lift":
        return _from_another(group, load, steps)
    if load.kind == "share":
        return _from_body_mass(group, load, steps)
    unit = load.unit or "kg"
    values = tuple(_in_unit(value, unit) for value in load.values)
    return Loading(values, unit, load.pieces, added=load.kind == "bodyweight")


def _from_best(group: SetGroup, steps: Mapping[str, float]) -> Loading | None:
    strongest, percents = group.strongest, group.percents
    if strongest is None or not percents:
        return None
    best = strongest[0]
    whole = [group.kilograms_at(percent) for percent in percents]
    unit, pieces = best.load.unit or "kg", best.load.pieces
    return _rounded(
        [_in_unit(one * (1 / pieces), unit) for one in whole if one is not None],
        unit,
        pieces,
        _step(group, unit, steps),
        added=best.load.kind == "bodyweight",
        estimated=best.reps > 1,
    )


def _from_another(group: SetGroup, load: Load, steps: Mapping[str, float]) -> Loading | None:
    """A share of another lift, ``77 % of squat``, if its best is on file."""
    other = of_other_lift(group.programme, load.whole)
    if other is None or group.implement in IN_HANDS:
        return None
    best = other[0]
    unit = best.load.unit or "kg"
    return _rounded(
        [_in_unit(one, unit) for one in group.kilograms],
        unit,
        1,
        _step(group, unit, steps),
        added=best.load.kind == "bodyweight",
        estimated=best.reps > 1,
    )


def _from_body_mass(group: SetGroup, load: Load, steps: Mapping[str, float]) -> Loading | None:
    mass = group.programme.body_mass
    if mass is None:
        return None
    return _rounded([value * (mass / 100) for value in load.values], "kg", 1, _step(group, "kg", steps))


def _rounded(
    exact: list[Range],
    unit: str,
    pieces: int,
    step: float | None,
    *,
    added: bool = False,
    estimated: bool = False,
) -> Loading:
    values = tuple(Range(*(rounded_down(end, step or 1.0) for end in one.ends)) for one in exact)
    if any(one.low == 0 < before.low for one, before in zip(values, exact, strict=True)):
        values = tuple(Range(round(one.low, 1), round(one.high, 1)) for one in exact)  # below the first step
        step = None
    return Loading(values, unit, pieces, added=added, rounded=True, step=step, estimated=estimated)


def rounded_down(weight: float, step: float) -> float:
    """The heaviest whole number of steps that is no more than a weight."""
    return round(floor(weight / step + 1e-6) * step, 6)


def _step(group: SetGroup, unit: str, steps: Mapping[str, float]) -> float | None:
    """What the implement goes up by; None where nobody has said, as of a stack or a pin."""
    usual = USUAL_STEPS_LB if unit == "lb" else {**USUAL_STEPS, **steps}
    return usual.get(group.implement)


def _in_unit(value: Range, unit: str) -> Range:
    """Kilograms in the unit that is shown."""
    if unit != "lb":
        return value
    return Range(*(round(end / KG_PER_LB, 6) for end in value.ends))


def plates(weight: float, unit: str) -> tuple[float, ...] | None:
    """The plates on each side of a usual bar, the heaviest first; None where no plates make the weight."""
    left = round((weight - BAR[unit]) / 2, 6)
    if left < 0:
        return None
    found: list[float] = []
    for plate in PLATES[unit]:
        while left >= plate - 1e-6:
            found.append(plate)
            left = round(left - plate, 6)
    return None if left > 1e-6 else tuple(found)
