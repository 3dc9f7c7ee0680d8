"""What a load comes to that is a share of something else: another lift, an RM, or a best to work from."""

from __future__ import annotations

from ..body import curves
from ..model.quantities import Range

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..body.catalogue import Exercise
    from ..model.athlete import BestLift
    from ..model.quantities import Load
    from ..model.sessions import Prescription
    from .header import ProgrammeHeader

    Strongest = tuple[BestLift, float]
    """A best lift and the 1RM in kg that follows from it, with the lifter's own mass where that is lifted."""


def strongest_of(lifts: Iterable[BestLift], lift: str, body_mass: float | None) -> Strongest | None:
    """The best lift with the highest 1RM; None if none is known. ``lift`` is the name of the curve to use."""
    known = [(one, most) for one in lifts if (most := _maximum(one, lift, body_mass))]
    return max(known, key=lambda pair: pair[1], default=None)


def _maximum(best: BestLift, lift: str, body_mass: float | None) -> float | None:
    """The 1RM in kg that follows from a best lift; None if it is not known."""
    percent = curves.percent_for(best.reps, lift)
    span = best.load.span
    if span is None or percent is None:
        return None
    own = body_mass if best.load.kind == "bodyweight" else 0.0
    return None if own is None else (span.middle + own) * 100 / percent


def of_other_lift(header: ProgrammeHeader, name: str) -> Strongest | None:
    """The best on file for a lift that a load is a share of; None if it is not known."""
    exercise = header.known.exercise(name)
    lifts = header.athlete.best_lifts if header.athlete and exercise else ()
    own = [one for one in lifts if header.known.exercise(one.exercise.words) is exercise]
    return strongest_of(own, _curve(exercise), header.body_mass)


def kilograms_of(header: ProgrammeHeader, line: Prescription, load: Load, value: Range) -> Range | None:
    """A share of another lift in kg; None if its best is not known."""
    other = of_other_lift(header, load.whole)
    if other is None:
        return None
    best, most = other
    own = (header.body_mass or 0.0) if best.load.kind == "bodyweight" else 0.0
    part = value * (counted_from(header, line, (best,)) / 100)
    return Range(part.low * most / 100 - own, part.high * most / 100 - own)


def percent_of_rm(load: Load, value: Range, lift: str) -> Range | None:
    """A share of a repetition maximum in % of 1RM, ``90 % of 5RM``; None where the curve does not say."""
    from ..model.loads import repetitions_of

    reps = repetitions_of(load)
    if reps is None:
        return None
    ends = [curves.percent_for(one, lift) for one in (reps.high, reps.low)]
    return None if ends[0] is None or ends[1] is None else value.by(Range(ends[0] / 100, ends[1] / 100))


def counted_from(header: ProgrammeHeader, line: Prescription, best: tuple[BestLift, ...]) -> float:
    """The share of the 1RM, in %, from which percentages count: the line's own, the best lift's, or the
    programme's working best; 100 where none is written.
    """
    of_best = next((one.working for one in best if one.working), None)
    return line.working_best or of_best or header.working_best or 100.0


def _curve(exercise: Exercise | None) -> str:
    return curves.curve_of(exercise.name) if exercise else ""
