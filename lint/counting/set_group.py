"""A group of like sets of one line: how many, of what, how hard."""

from __future__ import annotations

from ..body import curves
from ..model.quantities import NOTHING, Range
from .session_time import set_time

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..body.catalogue import Exercise
    from ..model.athlete import BestLift
    from ..model.quantities import Load
    from ..model.sessions import Prescription, Work
    from .ledger import Ledger

LIGHT_FROM = 8
"""Middle of the repetition range from which a slot is light (cp-spread)."""

EASY_ABOVE = 5
"""Repetitions in reserve above which a set is no hard set."""

COMPOUND = (
    "squat",
    "lunge",
    "hip hinge",
    "hip thrust",
    "horizontal push",
    "vertical push",
    "horizontal pull",
    "vertical pull",
)
"""Movement patterns in which several joints share the work."""

FAST_KINDS = ("plyometric", "ballistic")
"""Work done for speed: its sets are counted, but never as hard sets."""

BROKEN_UP = ("cluster", "drop set", "rest-pause")
"""Methods with rest or a lighter load inside a set, so that it is longer than one load allows."""

LOWERED = ("eccentric", "lowering", "negative")
"""Words in the names of exercises that only lower the load: a lifter lowers more than they can lift."""

LIFTING = 2
"""Where the lifting phase stands in a tempo."""


class SetGroup:
    """One group of like sets of one line: how many sets and repetitions, of what, how hard.

    ``sets`` are work sets of one visit; ``reps`` repetitions of all of them together, None where left open;
    ``slot`` is ``heavy``, ``light`` or empty where no repetitions are stated; ``exercise`` is None where the
    catalogue does not know it; ``side`` is ``left``, ``right`` or empty for both; ``best`` are the athlete's
    best lifts on file for the exercise.
    """

    __slots__ = ("best", "exercise", "hard", "ledger", "prescription", "reps", "sets", "side", "slot", "work")

    def __init__(
        self,
        ledger: Ledger,
        prescription: Prescription,
        work: Work,
        exercise: Exercise | None,
        best: tuple[BestLift, ...],
    ) -> None:
        self.ledger = ledger
        self.best = best
        self.prescription = prescription
        self.work = work
        self.exercise = exercise
        self.sets = work.sets or NOTHING
        self.side = work.side if work.side in ("left", "right") else ""
        self.reps = work.reps.total(self.sets) if work.reps else None
        self.hard = _is_hard(self.reserve, exercise)
        self.slot = _slot(work)

    @property
    def name(self) -> str:
        """The exercise as the coach wrote it."""
        return self.work.exercise

    @property
    def stated_effort(self) -> bool:
        """Whether the coach wrote how hard it is meant to be."""
        return self.reserve is not None

    @property
    def reserve(self) -> Range | None:
        """Repetitions in reserve, as stated or by the RPE (10 less it, zourdos-2016); None if not stated."""
        if self.work.rir is not None:
            return self.work.rir
        rpe = self.work.rpe
        return None if rpe is None else Range(10 - rpe.high, 10 - rpe.low)

    @property
    def to_failure(self) -> bool:
        """Whether the coach wrote that sets go on to failure, none left in reserve."""
        open_ended = self.work.reps is not None and not self.work.reps.sets
        return open_ended if self.reserve is None else self.reserve.low == 0

    @property
    def fast_tempo(self) -> bool:
        """Whether the coach wrote that it goes up as fast as possible."""
        return self.work.tempo is not None and self.work.tempo[LIFTING] is None

    @property
    def percent(self) -> Range | None:
        """The load in % of the one-repetition maximum: as stated, by a best lift on file, or by an RM load.

        None where neither is known. A best lift for several repetitions stands for the maximum that the curve
        of the lift gives (nuzzo-2024).
        """
        load = self.work.load
        return None if load is None or load.span is None else self._percent_of(load, load.span)

    @property
    def percents(self) -> tuple[Range, ...]:
        """The same set by set where the coach wrote a load for each, else once; empty where not known."""
        load = self.work.load
        found = [self._percent_of(load, value * load.pieces) for value in load.values] if load else []
        return tuple(one for one in found if one is not None)

    def _percent_of(self, load: Load, value: Range) -> Range | None:
        """One of the values of a load, pieces together, in % of the one-repetition maximum."""
        if load.kind == "percent":
            return value
        if load.kind == "rm":
            ends = [curves.percent_for(reps, self.curve) for reps in (value.high, value.low)]
            return None if ends[0] is None or ends[1] is None else Range(ends[0], ends[1])
        lifted = self._lifted(load, value)
        if lifted is None:
            return None
        strongest = self.strongest
        return None if strongest is None else lifted * (100 / strongest[1])

    @property
    def strongest(self) -> tuple[BestLift, float] | None:
        """The best lift on file that stands for most, and its one-repetition maximum in kg.

        The lifter's own mass is in it where it is lifted. None where nothing is known.
        """
        known = [(lift, one) for lift in self.best if (one := self._maximum(lift)) is not None and one > 0]
        return max(known, key=lambda pair: pair[1], default=None)

    def kilograms_at(self, percent: Range) -> Range | None:
        """What to load, in kg, for a share of the one-repetition maximum in %, by the best lift on file.

        All pieces together; the lifter's own mass is taken off where the best lift was given on top of it.
        None where no best lift is known.
        """
        strongest = self.strongest
        if strongest is None:
            return None
        lift, maximum = strongest
        mass = self.ledger.athlete.body_mass if self.ledger.athlete else None
        own = mass if mass is not None and lift.load.kind == "bodyweight" else 0.0
        return Range(percent.low * maximum / 100 - own, percent.high * maximum / 100 - own)

    @property
    def curve(self) -> str:
        """The lift whose curve of repetitions fits it; empty for the main one (see curves)."""
        return curves.curve_of(self.exercise.name) if self.exercise else ""

    def _lifted(self, load: Load, value: Range) -> Range | None:
        """A value in kg; the lifter's own mass included where the load is given on top of it."""
        if load.kind == "mass":
            return value
        mass = self.ledger.athlete.body_mass if self.ledger.athlete else None
        return None if mass is None or load.kind != "bodyweight" else value + Range(mass, mass)

    @property
    def measured(self) -> dict[str, float]:
        """The middle of its load by what it can be compared in: ``mass`` in kg, ``share`` in % of body mass,
        ``percent`` of the maximum. Empty for a label, a repetition maximum, or where nothing is stated.
        """
        load = self.work.load
        if load is None or load.span is None or load.kind not in ("mass", "bodyweight", "share", "percent"):
            return {}
        kilograms = self._lifted(load, load.span)
        spans = {
            "mass": kilograms,
            "share": load.span if load.kind == "share" else None,
            "percent": self.percent,
        }
        return {unit: span.middle for unit, span in spans.items() if span is not None}

    def _maximum(self, best: BestLift) -> float | None:
        """The one-repetition maximum that a best lift stands for, in kg."""
        percent = curves.percent_for(best.reps, self.curve)
        lifted = self._lifted(best.load, best.load.span) if best.load.span else None
        return None if lifted is None or percent is None else lifted.middle * 100 / percent

    @property
    def set_time(self) -> Range | None:
        """Seconds of one set by its tempo; None where tempo or repetitions are left open."""
        return set_time(self.work)

    @property
    def compound(self) -> bool:
        """Whether it is a squat, lunge, hinge, hip thrust, press or pull, or works several joints."""
        exercise = self.exercise
        return exercise is not None and (exercise.pattern in COMPOUND or len(exercise.actions) > 1)

    @property
    def broken_up(self) -> bool:
        """Whether there is rest, or a lighter load, inside a set."""
        line, reps = self.prescription, self.work.reps
        return bool(reps and reps.parts) or line.cluster_rest is not None or line.method in BROKEN_UP

    @property
    def lowers_only(self) -> bool:
        """Whether the exercise only lowers the load."""
        return self.exercise is not None and any(word in self.exercise.name for word in LOWERED)

    @property
    def in_one_go(self) -> bool:
        """Whether each set is lifted in one go at one load, so that the curves of repetitions hold."""
        exercise = self.exercise
        if exercise is None or exercise.kind != "dynamic" or self.lowers_only:
            return False
        return not self.broken_up

    @property
    def sure(self) -> bool:
        """Whether its sets and its muscles are both known."""
        return self.exercise is not None and self.work.readable

    def trains(self, actions: Iterable[str]) -> bool:
        """Whether one of these joint actions or patterns is what the exercise is for."""
        exercise = self.exercise
        return exercise is not None and any(
            action in exercise.actions or action in exercise.patterns for action in actions
        )


def _is_hard(reserve: Range | None, exercise: Exercise | None) -> bool:
    if exercise is not None and exercise.kind in FAST_KINDS:
        return False
    return reserve is None or reserve.low <= EASY_ABOVE


def _slot(work: Work) -> str:
    reps = work.reps.a_set() if work.reps else None
    if reps is None and work.load is not None and work.load.kind == "rm":
        reps = work.load.span
    if reps is None:
        return ""
    return "light" if reps.middle >= LIGHT_FROM else "heavy"
