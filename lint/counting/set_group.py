"""A group of equal sets in one line: how many, of which exercise, how hard."""

from __future__ import annotations

from ..body import curves
from ..body.catalogue import COMPOUND
from ..body.equipment import LOADED
from ..model.quantities import NOTHING, Range
from ..wording.words import counted_noun
from .effort import FAST_KINDS, NEVER_HARD, at_load, at_rm, each_set, unknown, written
from .load_shares import counted_from, kilograms_of, percent_of_rm, strongest_of
from .session_time import set_time

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from ..body.catalogue import Exercise, NameReading
    from ..model.athlete import BestLift
    from ..model.quantities import Load
    from ..model.sessions import Prescription, Work
    from .effort import Effort
    from .header import ProgrammeHeader

    Slip = Callable[["SetGroup"], tuple[bool, bool]]
    """Says of a group of sets whether a value cannot be meant, and whether one of these is not waived."""

LIGHT_FROM = 8
"""Sets are light if the middle of their repetition range is this or more, else heavy (cp-spread)."""

BROKEN_UP = ("cluster", "drop set", "rest-pause")
"""Methods with rest or a lighter load within a set: it can have more repetitions than its load allows."""

RAMP_UP_FROM = 70
"""% of a best lift from which a lift is worked up to (common practice, no source)."""

LOWERED = ("eccentric", "lowering", "negative")
"""Words in names of exercises that only lower the load. A lifter can lower more than they can lift."""

_COMPARED = frozenset({"mass", "bodyweight", "share", "percent", "lift", "rm share"})
"""Kinds of load whose numbers can be compared."""
WITH_BODY = "mass with the body"
"""The unit of loads on top of the lifter's own mass: bodyweight, 4 kg and 6 kg is a plain rise."""

UNITS_OF_LOAD = ("mass", WITH_BODY, "share", "percent")
"""The units in which loads are compared, each with its own kind."""

LIFTING = 2
"""Index of the lifting phase in a tempo."""


class SetGroup:
    """A group of equal sets in one line: how many sets and repetitions, of which exercise, how hard.

    - ``sets``: the number of work sets in one visit.
    - ``reps``: the repetitions of all these sets together; None if left open.
    - ``name``: the exercise as the coach wrote it.
    - ``named``: what that name means with all that it says; None if the exercise is unknown.
    - ``exercise``: None if the exercise is unknown.
    - ``implement``: what is lifted: what the name states, else the exercise's own; "" if it is unknown.
    - ``seconds_said``: the reading of its name, if that says how long a repetition or a hold takes.
    - ``side``: ``left`` or ``right``; empty for both.
    - ``best``: the athlete's best lifts on file for the exercise.
    - ``meant``: False where one of its values cannot be meant; it then counts nowhere (see `take_out`).
    - ``slips``: whether there is such a value, be it waived; None where that has not been looked at.
    """

    __slots__ = (
        "_effort",
        "_hard",
        "_measured",
        "best",
        "exercise",
        "implement",
        "meant",
        "name",
        "named",
        "prescription",
        "programme",
        "reps",
        "seconds_said",
        "sets",
        "side",
        "slips",
        "work",
    )

    def __init__(
        self,
        programme: ProgrammeHeader,
        prescription: Prescription,
        work: Work,
        named: NameReading | None,
        exercise: Exercise | None,
        best: tuple[BestLift, ...],
    ) -> None:
        self.programme = programme
        self.best = best
        self.prescription = prescription
        self.work = work
        self.name = work.exercise
        self.named = named
        self.implement = named.implement if named else ""
        self.seconds_said = named if named and named.says_seconds else None
        self.exercise = exercise
        self.sets = work.sets or NOTHING
        self.side = work.side if work.side in ("left", "right") else ""
        self.reps = work.reps.total(self.sets) if work.reps else None
        self.meant = True
        self.slips: bool | None = None
        self._effort: Effort | None = None
        self._hard: bool | None = None
        self._measured: dict[str, float] | None = None

    def with_work(self, work: Work) -> SetGroup:
        """The same line with other values."""
        return SetGroup(self.programme, self.prescription, work, self.named, self.exercise, self.best)

    def count_nowhere(self) -> None:
        """Takes it out of every count, because it is no lift: it takes its time, and nothing is missing."""
        self.exercise, self.sets, self.reps = None, NOTHING, None

    def take_out(self) -> None:
        """Takes it out of every count, because one of its values cannot be meant."""
        self.meant, self.sets, self.reps = False, NOTHING, None

    @property
    def is_done(self) -> bool:
        """Whether any of its sets is to be done, counted or not; so one whose number cannot be meant is."""
        return not self.meant or (self.work.sets is not None and self.work.sets.high > 0)

    @property
    def a_set(self) -> Range | None:
        """The repetitions of a set, those of an RM load where none are stated; None if they are left open."""
        reps, load = self.work.reps.a_set() if self.work.reps else None, self.work.load
        if reps is None and load is not None and load.kind == "rm":
            return load.span
        return reps

    @property
    def slot(self) -> str:
        """``heavy`` or ``light``; empty if no repetitions are stated."""
        reps = self.a_set
        return "" if reps is None else "light" if reps.middle >= LIGHT_FROM else "heavy"

    @property
    def effort(self) -> Effort:
        """How hard the sets are, as written or worked out from load and repetitions."""
        if self._effort is None:
            self._effort = written(self.work) or self.worked_out or unknown(self.work)
        return self._effort

    @property
    def worked_out(self) -> Effort | None:
        """How hard the sets are by load and repetitions, whatever is written; None if these do not say."""
        if self.lowers_only or self.broken_up:
            return None
        by_curve = self.sets_apart if self.in_one_go else []
        alone = at_rm(self.work) or at_load(self.work, by_curve, self.curve)
        paired = self.prescription.paired
        return alone and alone.within(self.work, paired.reps) if paired and paired.reps else alone

    @property
    def reserve(self) -> Range | None:
        """Repetitions in reserve, written or worked out; None if unknown."""
        return self.effort.reserve

    @property
    def written_reserve(self) -> Range | None:
        """Repetitions in reserve by the RIR or RPE that the coach wrote; None if neither says."""
        effort = self.effort
        return effort.reserve if effort.written else None

    @property
    def reserve_in_words(self) -> str:
        """``2 in reserve``; ``about 2-7 in reserve, worked out from 80 % and 5 repetitions``; or empty."""
        reserve, worked_out = self.reserve, self.worked_out_in_words
        if reserve is None or not worked_out:
            return f"{reserve} in reserve" if reserve is not None else ""
        least, most = (f"{end:.0f}" for end in (reserve.low, reserve.high))
        beyond = any(percent.low < curves.LOWEST for percent in self.percents)
        left = f"at least {least}" if beyond else "about " + "-".join(dict.fromkeys((least, most)))
        return f"{left} in reserve, {worked_out}"

    @property
    def worked_out_in_words(self) -> str:
        """``worked out from 40 % and 5 repetitions``; empty if effort is written or unknown."""
        load, reps = self.work.load, self.work.reps
        if load is None or self.effort.ground not in ("rm", "load"):
            return ""
        done = reps.a_set() if reps else None
        return f"worked out from {load.words}" + (
            f" and {counted_noun(str(done), 'repetition')}" if done else ""
        )

    @property
    def stated_effort(self) -> bool:
        """Whether the coach wrote how hard the sets are meant to be."""
        return self.work.rir is not None or self.work.rpe is not None

    @property
    def hard(self) -> bool:
        """Whether they count as hard sets, as those of unknown effort do but for speed or over a distance."""
        if self._hard is None:
            kind = self.exercise.kind if self.exercise else ""
            fast = kind in NEVER_HARD or (kind in FAST_KINDS and self.reserve is None)
            self._hard = not fast and not self.is_carried and not self.effort.easy
        return self._hard

    @property
    def is_carried(self) -> bool:
        """Whether something is carried, pushed or dragged over a distance, and nobody says how hard."""
        return self.work.distance is not None and self.work.reps is None and self.reserve is None

    @property
    def to_failure(self) -> bool:
        """Whether the sets are asked to go to failure.

        They are if all that is asked leaves no repetition. Without a stated effort, they also are if the
        repetitions of all sets, or of the last, are open (AMRAP, ``5+``).
        """
        open_ended = self.work.reps is not None and self.work.reps.open_last
        return self.effort.failing or (open_ended and not self.stated_effort)

    @property
    def sets_apart(self) -> list[tuple[Range, Range]]:
        """Repetitions and load in % of each set; once where all are alike, none where either is not known."""
        return each_set(self.work, self.percents)

    @property
    def asks_for_ramp_up(self) -> bool:
        """Whether it is worked up to: hard, loaded, with several joints, under 8 repetitions, from 70 %."""
        heavy = self.hard and self.slot == "heavy" and self.sets.high > 0
        if not heavy or self.exercise is None or self.exercise.pattern not in COMPOUND:
            return False
        percent = self.percent
        return self.exercise.implement in LOADED and (percent is None or percent.high >= RAMP_UP_FROM)

    @property
    def fast_tempo(self) -> bool:
        """Whether the tempo says to lift as fast as possible."""
        return self.work.tempo is not None and self.work.tempo[LIFTING] is None

    @property
    def percent(self) -> Range | None:
        """The load in % of the one-repetition maximum (1RM); None if it is not known.

        It is stated, or follows from an RM load such as 10RM, or from a best lift on file. A best lift of
        several repetitions is turned into a 1RM by the curve of the lift (nuzzo-2024).
        """
        load = self.work.load
        return None if load is None or load.span is None else self._percent_of(load, load.span)

    @property
    def percents(self) -> tuple[Range, ...]:
        """The load in % of 1RM of each set, if each has a load of its own, else once; empty if not known."""
        load = self.work.load
        found = [self._percent_of(load, value * load.pieces) for value in load.values] if load else []
        return tuple(one for one in found if one is not None)

    def _percent_of(self, load: Load, value: Range) -> Range | None:
        """One value of a load, all pieces together, in % of 1RM; None if it is not known."""
        if load.kind == "percent" or self._is_of_itself(load):
            return (
                value
                if load.whole == "1RM" or self.counted_from == 100
                else value * (self.counted_from / 100)
            )
        if load.kind == "rm share":
            return percent_of_rm(load, value, self.curve)
        if load.kind == "rm":
            ends = [curves.percent_for(reps, self.curve) for reps in (value.high, value.low)]
            return None if ends[0] is None or ends[1] is None else Range(ends[0], ends[1])
        lifted = self._lifted(load, value)
        if lifted is None:
            return None
        strongest = self.strongest
        return None if strongest is None else lifted * (100 / strongest[1])

    def _is_of_itself(self, load: Load) -> bool:
        """Whether a load is a share of the very lift that it is for: ``80 % of squat`` on a back squat."""
        exercise = self.exercise
        return load.kind == "lift" and exercise is not None and self.programme.named(load.whole) is exercise

    @property
    def strongest(self) -> tuple[BestLift, float] | None:
        """The best lift on file with the highest 1RM, and that 1RM in kg; None if none is known.

        The 1RM includes the lifter's own mass if the best lift was given on top of it.
        """
        return strongest_of(self.best, self.curve, self.programme.body_mass)

    @property
    def counted_from(self) -> float:
        """The share of 1RM, in %, from which the line's percentages count: 100, or a working best."""
        return counted_from(self.programme, self.prescription, self.best)

    def kilograms_at(self, percent: Range) -> Range | None:
        """The load in kg, all pieces together, for a percentage of 1RM; None if no best lift is known.

        The lifter's own mass is subtracted if the best lift was given on top of it.
        """
        strongest = self.strongest
        if strongest is None:
            return None
        lift, maximum = strongest
        mass = self.programme.body_mass
        own = mass if mass is not None and lift.load.kind == "bodyweight" else 0.0
        return Range(percent.low * maximum / 100 - own, percent.high * maximum / 100 - own)

    @property
    def curve(self) -> str:
        """The lift whose repetition curve fits the exercise; empty for the main curve (see `curves`)."""
        return curves.curve_of(self.exercise.name) if self.exercise else ""

    def _lifted(self, load: Load, value: Range) -> Range | None:
        """A value of a load in kg, with the lifter's own mass if given on top of it; None if not known."""
        if load.kind == "mass":
            return value
        if load.kind == "lift":
            return kilograms_of(self.programme, self.prescription, load, value)
        mass = self.programme.body_mass
        if mass is not None and load.kind == "share" and (load.added or self.implement != "bodyweight"):
            return value * (mass / 100) + Range(load.added, load.added)
        return None if mass is None or load.kind != "bodyweight" else value + Range(mass, mass)

    @property
    def kilograms(self) -> list[Range]:
        """The load of each set in kg, all pieces together, where it is a mass or follows from one."""
        load = self.work.load
        found = [self._lifted(load, value * load.pieces) for value in load.values] if load else []
        return [one for one in found if one is not None]

    @property
    def measured(self) -> dict[str, float]:
        """The middle of the load in each unit in which it can be compared.

        ``mass`` is in kg, ``mass with the body`` in kg with the lifter's own, ``share`` in % of body mass,
        ``percent`` in % of 1RM. Empty for a label, an RM load or no load; also for a share of another lift
        that is not on file.
        """
        if self._measured is None:
            self._measured = self._measure()
        return self._measured

    def _measure(self) -> dict[str, float]:
        load = self.work.load
        if load is None or load.span is None or load.kind not in _COMPARED:
            return {}
        kilograms = self._lifted(load, load.span)
        spans = {
            WITH_BODY if load.kind == "bodyweight" else "mass": kilograms,
            "share": load.span if load.kind == "share" and not load.added else None,
            "percent": self.percent,
        }
        return {unit: span.middle for unit, span in spans.items() if span is not None}

    @property
    def set_time(self) -> Range | None:
        """Seconds of one set by its tempo; None if tempo or repetitions are left open."""
        return set_time(self.work, self.seconds_said)

    @property
    def compound(self) -> bool:
        """Whether it is a squat, lunge, hinge, hip thrust, press or pull, or works several joints."""
        exercise = self.exercise
        return exercise is not None and (exercise.pattern in COMPOUND or len(exercise.actions) > 1)

    @property
    def broken_up(self) -> bool:
        """Whether there is rest or a lighter load within a set."""
        line, reps = self.prescription, self.work.reps
        return bool(reps and reps.parts) or line.cluster_rest is not None or line.method in BROKEN_UP

    @property
    def lowers_only(self) -> bool:
        """Whether the exercise only lowers the load."""
        return self.exercise is not None and any(word in self.exercise.name for word in LOWERED)

    @property
    def in_one_go(self) -> bool:
        """Whether each set is lifted in one go at one load, so that the curves of repetitions hold."""
        dynamic = self.exercise is not None and self.exercise.kind == "dynamic"
        return dynamic and not self.lowers_only and not self.broken_up

    @property
    def sure(self) -> bool:
        """Whether both the number of sets and the exercise are known; or it is no lift: nothing to count."""
        if self.exercise is None:
            from .no_lifts import is_no_lift

            return is_no_lift(self.prescription, self.work, self.programme.known)
        return self.work.readable and self.work.sets is not None and self.meant

    def trains(self, actions: Iterable[str]) -> bool:
        """Whether the exercise is for one of these joint actions or patterns."""
        exercise = self.exercise
        return exercise is not None and not exercise.serves.isdisjoint(actions)
