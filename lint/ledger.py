"""Programme -> what each week really holds. The one place that counts; rules read numbers and judge.

A `Tally` holds visits (sessions on their days) and answers how many sets they bring to an area, a joint
action or a pattern. `Week`, `Visit` and the tallies of a day, a block or the programme are all tallies, so
the same questions can be put to each. Every answer is a `Count`, which knows the lines that it came from.
"""

from __future__ import annotations

from datetime import timedelta

from .body import catalogue, curves
from .body.names import fold
from .kept import Remembered
from .quantities import NOTHING, Range, plain
from .session_time import CHANGE_OVER, NO_TIME, SessionTime, session_time, set_time
from .surroundings import BARE

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator
    from datetime import date
    from typing import Any

    from .body.catalogue import Exercise
    from .body.known import Known
    from .programme import (
        Activity,
        Adjustment,
        Athlete,
        BestLift,
        Block,
        Event,
        Member,
        Prescription,
        Programme,
        Session,
        Work,
    )
    from .quantities import Load
    from .surroundings import Surroundings

DIRECT, FRACTIONAL, TOTAL = "direct", "fractional", "total"
INDIRECT_WEIGHT = {DIRECT: 0.0, FRACTIONAL: 0.5, TOTAL: 1.0}
"""What an indirect set counts in each kind of count (pelland-2026-frac)."""

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

LIFTING = 2
"""Where the lifting phase stands in a tempo."""


_CREDITS: dict[Exercise, dict[str, float]] = {}
_GROUPS_OF: dict[str, tuple[str, ...]] = {}


def credits_of(exercise: Exercise) -> dict[str, float]:
    """What one set brings each muscle and each group: 1 direct, 0.5 indirect.

    A group takes the best weight among its muscles, never the sum.
    """
    known = _CREDITS.get(exercise)
    if known is None:
        known = _CREDITS[exercise] = {}
        for muscles, weight in ((exercise.indirect, 0.5), (exercise.direct, 1.0)):
            for muscle in muscles:
                known[muscle] = weight
                known.update(dict.fromkeys(_groups_of(muscle), weight))
    return known


def _groups_of(muscle: str) -> tuple[str, ...]:
    if muscle not in _GROUPS_OF:
        _GROUPS_OF[muscle] = tuple(group for group, members in catalogue.groups.items() if muscle in members)
    return _GROUPS_OF[muscle]


def credit(exercise: Exercise, area: str) -> float:
    """What one set brings an area of any kind: the best weight among its muscles; 0 for an unknown area."""
    known = credits_of(exercise)
    if area in catalogue.credited:
        return known.get(area, 0.0)
    return max((known.get(muscle, 0.0) for muscle in catalogue.area(area) or ()), default=0.0)


class Entry:
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


class Part:
    """What one entry of one visit brings to a count: its sets, already weighted."""

    __slots__ = ("entry", "sets", "visit")

    def __init__(self, visit: Visit, entry: Entry, sets: Range) -> None:
        self.visit = visit
        self.entry = entry
        self.sets = sets


class Count:
    """A number of sets (a range where the coach wrote one) and the parts that it came from."""

    __slots__ = ("high", "low", "parts")

    def __init__(self, parts: list[Part]) -> None:
        self.parts = parts
        low = high = 0.0
        for part in parts:
            sets = part.sets
            low += sets.low
            high += sets.high
        self.low = low
        self.high = high

    @property
    def middle(self) -> float:
        """Half-way between the ends."""
        return (self.low + self.high) / 2

    def __str__(self) -> str:
        return plain(self.low) if self.low == self.high else f"{plain(self.low)}-{plain(self.high)}"

    @property
    def most(self) -> str:
        """The high end in words: ``12``, or ``up to 12`` where the count is a range."""
        return plain(self.high) if self.low == self.high else f"up to {plain(self.high)}"

    def __bool__(self) -> bool:
        return self.high > 0

    def lines(self) -> list[tuple[Prescription, Range]]:
        """The prescriptions that it came from, in the order of the file, each with its sets."""
        return sorted(self.by_line().items(), key=lambda pair: (pair[0].place.start, pair[0].order))

    def by_line(self) -> dict[Prescription, Range]:
        """The same in any order."""
        found: dict[Prescription, Range] = {}
        for part in self.parts:
            line = part.entry.prescription
            found[line] = found[line] + part.sets if line in found else part.sets
        return found

    def days(self) -> list[int]:
        """The days it falls on, each once."""
        return sorted({part.visit.day for part in self.parts if part.visit.day and part.sets.high})

    def occasions(self) -> int:
        """The days it falls on; sessions without a stated day count for a day each."""
        return len({part.visit.day or part.visit for part in self.parts if part.sets.high})

    def where(self, test: Callable[[Entry], bool]) -> Count:
        """The part of it that comes from entries which pass a test."""
        return Count([part for part in self.parts if test(part.entry)])

    def repetitions(self) -> Range:
        """Repetitions of all its sets, those left open counting none; indirect sets count in full."""
        return sum((part.entry.reps for part in self.parts if part.entry.reps), NOTHING)


NO_SETS = Count([])


class Tally:
    """Visits, and how many sets they bring to whatever a rule asks about; an answer is worked out once.

    What several visits bring is drawn together from what each of them brings.
    """

    __slots__ = ("_answers", "visits")

    def __init__(self, visits: tuple[Visit, ...]) -> None:
        self.visits = visits
        self._answers: dict[tuple[object, ...], Any] = {}

    def entries(self) -> Iterator[tuple[Visit, Entry]]:
        """Every entry with its visit."""
        for visit in self.visits:
            for entry in visit.own:
                yield visit, entry

    def _once(self, asked: tuple[object, ...], answer: Callable[..., Any]) -> Any:
        """What was answered when it was last asked, else what ``answer`` makes of the question."""
        known = self._answers.get(asked)
        if known is None:
            known = self._answers[asked] = answer(*asked[1:])
        return known

    def sets(self, area: str, count: str = FRACTIONAL, *, hard: bool = True, side: str = "") -> Count:
        """Work sets for a muscle, a group or any other area, by the kind of count.

        ``hard`` leaves easy and fast work out. Work of one side counts for that side: without ``side`` the
        side that has more is meant.
        """
        found: Count = self._once(("sets", area, count, hard, side), self._count_sets)
        return found

    def brings(self, area: str, count: str = TOTAL, test: Callable[[Entry], bool] | None = None) -> bool:
        """Whether there is any set for an area, hard or not; with a test, of an entry that passes it."""
        counts = (visit._of_area(area, count, False) for visit in self.visits)
        return any(one.high and (test is None or one.where(test)) for one in counts)

    def _count_sets(self, area: str, count: str, hard: bool, side: str) -> Count:
        counts = [visit._of_area(area, count, hard) for visit in self.visits]
        return _together(counts, side)

    @property
    def one_sided(self) -> bool:
        """Whether any of it is done by one side alone."""
        return any(visit.is_one_sided for visit in self.visits)

    def groups(self) -> list[str]:
        """Muscle groups that get anything, direct or indirect, in the order of the body."""
        got = {group for visit in self.visits for group in visit.credited()}
        return [group for group in catalogue.groups if group in got]

    def for_actions(self, actions: Iterable[str], *, hard: bool = False, side: str = "") -> Count:
        """Direct sets of joint actions or patterns; an exercise that serves several of them counts once."""
        found: Count = self._once(("actions", tuple(actions), hard, side), self._count_actions)
        return found

    def _count_actions(self, actions: tuple[str, ...], hard: bool, side: str) -> Count:
        return _together([visit._of_actions(actions, hard) for visit in self.visits], side)

    def all_sets(self, *, hard: bool = False) -> Count:
        """Every work set, whatever it trains."""
        found: Count = self._once(("all", hard), self._count_all)
        return found

    def _count_all(self, hard: bool) -> Count:
        return Count(
            [Part(visit, entry, entry.sets) for visit, entry in self.entries() if entry.hard or not hard]
        )

    def how_often(self, test: Callable[[Entry], bool]) -> int:
        """On how many visits there is at least one set of an entry that passes a test."""
        return sum(any(entry.sets.high and test(entry) for entry in visit.own) for visit in self.visits)

    def by_exercise(self, test: Callable[[Entry], bool]) -> list[Count]:
        """The sets of each known exercise, of entries that pass a test; the better side of one-sided work."""
        parts: dict[Exercise, list[Part]] = {}
        for visit, entry in self.entries():
            if entry.exercise is not None and test(entry):
                parts.setdefault(entry.exercise, []).append(Part(visit, entry, entry.sets))
        return [_on_side(of_one, "") for of_one in parts.values()]

    def lifts(self) -> dict[Exercise | str, list[Entry]]:
        """What is done of each exercise, unknown ones by name as it is compared; sets of 0 left out."""
        lifts: dict[Exercise | str, list[Entry]] = self._once(("lifts",), self._lifts)
        return lifts

    def _lifts(self) -> dict[Exercise | str, list[Entry]]:
        found: dict[Exercise | str, list[Entry]] = {}
        for _, entry in self.entries():
            if entry.sets.high:
                found.setdefault(entry.exercise or fold(entry.name), []).append(entry)
        return found

    def unsure(self) -> list[Entry]:
        """Entries that cannot be counted: the exercise or the sets are unknown."""
        return [entry for visit in self.visits for entry in visit.own_unsure]

    def could_hold(self, actions: Iterable[str] = (), areas: Iterable[str] = ()) -> bool:
        """Whether a line that cannot be counted may train one of these."""
        wanted, muscles = tuple(actions), tuple(areas)
        for entry in self.unsure():
            if entry.exercise is None or entry.trains(wanted):
                return True
            if any(credit(entry.exercise, area) for area in muscles):
                return True
        return False


def _together(counts: list[Count], side: str) -> Count:
    """The sum of what several visits bring, on the side that is asked for, else on the one that has more."""
    counts = [count for count in counts if count.parts]
    if not counts:
        return NO_SETS
    if not any(count.parts[0].visit.is_one_sided for count in counts):
        return counts[0] if len(counts) == 1 else Count([part for count in counts for part in count.parts])
    return _on_side([part for count in counts for part in count.parts], side)


def _on_side(parts: list[Part], side: str) -> Count:
    """The parts that a side does; without one the side that has more is meant."""
    if side:
        return Count([part for part in parts if part.entry.side in ("", side)])
    left = Count([part for part in parts if part.entry.side != "right"])
    right = Count([part for part in parts if part.entry.side != "left"])
    return left if left.high >= right.high else right


class Visit(Tally):
    """A session on one day of a week; ``day`` is 1 to 7 from the start day, 0 where none is stated.

    ``is_one_sided`` says whether any of it is done by one side alone.
    """

    __slots__ = ("_by_action", "_by_area", "day", "is_one_sided", "ledger", "own", "own_unsure", "session")

    def __init__(self, ledger: Ledger, session: Session, day: int, own: tuple[Entry, ...]) -> None:
        super().__init__((self,))
        self.ledger = ledger
        self.session = session
        self.day = day
        self.own = own
        self.own_unsure = [entry for entry in own if not entry.sure]
        self.is_one_sided = any(entry.side for entry in own)
        self._by_area: dict[str, list[tuple[Entry, float]]] | None = None
        self._by_action: dict[str, list[Entry]] | None = None

    def let_go(self) -> None:
        """Forgets what was counted, which points back at it: so it is all freed without being looked for."""
        self.visits = ()
        self._answers.clear()

    def credited(self) -> dict[str, list[tuple[Entry, float]]]:
        """What trains each muscle and group, with the weight of a set: 1 direct, 0.5 indirect."""
        if self._by_area is None:
            self._by_area = {}
            for entry in self.own:
                if entry.exercise is not None:
                    for name, weight in credits_of(entry.exercise).items():
                        self._by_area.setdefault(name, []).append((entry, weight))
        return self._by_area

    def _training(self, area: str) -> list[tuple[Entry, float]]:
        """What trains an area of any kind, with the weight of a set."""
        if area in catalogue.credited:
            return self.credited().get(area, [])
        return [
            (entry, weight)
            for entry in self.own
            if entry.exercise is not None and (weight := credit(entry.exercise, area))
        ]

    def _of_area(self, area: str, count: str, hard: bool) -> Count:
        """All sets that it brings to an area, whichever side does them."""
        if area in catalogue.credited and area not in self.credited():
            return NO_SETS
        found: Count = self._once(("area", area, count, hard), self._count_area)
        return found

    def _count_area(self, area: str, count: str, hard: bool) -> Count:
        indirect = INDIRECT_WEIGHT[count]
        return Count(
            [
                Part(self, entry, entry.sets if weight == 1.0 else entry.sets * indirect)
                for entry, weight in self._training(area)
                if (entry.hard or not hard) and (weight == 1.0 or indirect)
            ]
        )

    def _of_actions(self, actions: tuple[str, ...], hard: bool) -> Count:
        """All direct sets of joint actions or patterns, whichever side does them."""
        found: Count = self._once(("serving", actions, hard), self._count_serving)
        return found

    def _count_serving(self, actions: tuple[str, ...], hard: bool) -> Count:
        entries = [entry for entry in self._serving(actions) if entry.hard or not hard]
        return Count([Part(self, entry, entry.sets) for entry in entries])

    def _serving(self, actions: tuple[str, ...]) -> list[Entry]:
        """Entries whose exercise is for one of these joint actions or patterns, in order."""
        if self._by_action is None:
            self._by_action = {}
            for entry in self.own:
                if entry.exercise is not None:
                    for name in dict.fromkeys((*entry.exercise.actions, *entry.exercise.patterns)):
                        self._by_action.setdefault(name, []).append(entry)
        if len(actions) == 1:
            return self._by_action.get(actions[0], [])
        serving = {entry for action in actions for entry in self._by_action.get(action, ())}
        return [entry for entry in self.own if entry in serving] if serving else []

    def time(self, *, prepared: bool | None = None, change_over: Range = CHANGE_OVER) -> SessionTime:
        """How long it takes; ``prepared`` and ``change_over`` (s) stand in for what is otherwise assumed."""
        if prepared is None:
            prepared = bool(self.session.preparation)
        return session_time(self._timed(), prepared=prepared, change_over=change_over)

    def time_of(self, line: Prescription) -> SessionTime:
        """How long one of its lines takes; of a superset or circuit, all of it."""
        together = [
            timed
            for timed in self._timed()
            if timed[0] is line or (line.paired is not None and timed[0].paired is line.paired)
        ]
        return session_time(together, prepared=False)

    def _timed(self) -> list[tuple[Prescription, tuple[tuple[Work, str], ...]]]:
        lines: dict[Prescription, list[tuple[Work, str]]] = {}
        for entry in self.own:
            lines.setdefault(entry.prescription, []).append((entry.work, entry.slot))
        return [(line, tuple(works)) for line, works in lines.items()]


class Week(Tally):
    """A week of the programme: its number, its block and its visits in order."""

    __slots__ = ("block", "ledger", "number", "rehabilitation")
    block: Block
    number: int
    rehabilitation: bool

    def __init__(self, ledger: Ledger, visits: tuple[Visit, ...]) -> None:
        super().__init__(visits)
        self.ledger = ledger

    def set_in(self, block: Block, number: int) -> None:
        """Puts it where it stands in the programme as it is now."""
        self.block = block
        self.number = number
        self.rehabilitation = _in_rehabilitation(self.ledger, number)

    @property
    def programme(self) -> Programme:
        """The programme it belongs to."""
        return self.ledger.programme

    @property
    def phase(self) -> str:
        """The phase of its block, else of the programme."""
        return self.block.phase or self.programme.phase

    def is_typical(self) -> bool:
        """Whether its dose is what the block is about: no deload, taper or test, and no first week back."""
        return not self.block.deload and self.phase not in ("taper", "test") and not self.is_first_back()

    def is_first_back(self) -> bool:
        """Whether it is the week in which an athlete returns."""
        before = self.ledger.weeks[self.number - 2].phase if self.number > 1 else ""
        return self.phase == "return" and before != "return"

    def time(self) -> SessionTime:
        """How long its sessions take together."""
        return sum((visit.time() for visit in self.visits), NO_TIME)

    def means(self, area: str) -> bool:
        """Whether its block, or the programme, means to train an area; without a focus it means all."""
        terms = self.block.focus or self.programme.focus
        if not terms:
            return True
        wanted = set(catalogue.area(area) or ())
        return any(wanted.intersection(catalogue.area(term.words) or ()) for term in terms)

    def days(self) -> list[tuple[int, Tally]]:
        """Each training day with all its visits."""
        return [(day, self.ledger.together(visits)) for day, visits in self.by_day()]

    def by_day(self) -> list[tuple[int, tuple[Visit, ...]]]:
        """The visits of each training day, in order."""
        found: dict[int, tuple[Visit, ...]] = {}
        for visit in self.visits:
            if visit.day:
                found[visit.day] = (*found.get(visit.day, ()), visit)
        return sorted(found.items())


class Ledger(Tally):
    """A whole programme on its calendar, as one athlete is to train it.

    ``today`` stands in where it does not say when it starts; ``around`` is what the team brings to it;
    ``member`` is the athlete with what is adjusted for them, None where nobody is named.
    """

    __slots__ = ("_calendar", "_recalled", "_tallies", "around", "member", "programme", "today", "weeks")

    def __init__(
        self,
        programme: Programme,
        today: date,
        around: Surroundings = BARE,
        member: Member | None = None,
    ) -> None:
        self.today = today
        self.around = around
        self.member = member
        self._calendar = _Calendar(self)
        self._tallies = Remembered()
        self._recalled = Remembered()
        super().__init__(())
        self.lay_out(programme)

    def lay_out(self, programme: Programme) -> None:
        """Takes on a later state of the programme.

        Visits, weeks and what was counted of them stay the same objects as far as their sessions did.
        """
        self.programme = programme
        self.weeks: tuple[Week, ...] = tuple(self._calendar.weeks())
        visits = tuple(visit for week in self.weeks for visit in week.visits)
        if visits != self.visits:
            for gone in set(self.visits).difference(visits):
                gone.let_go()
            super().__init__(visits)
            self._tallies.turn()
            self._recalled.turn()

    def of_weeks(self, weeks: Iterable[Week]) -> Tally:
        """All visits of several weeks."""
        return self.together(tuple(visit for week in weeks for visit in week.visits))

    def recall(self, work: Callable[..., Any], *of: Any) -> Any:
        """What some work makes of parts of this ledger, and of limits: made again only once they change."""
        return self._recalled.get((work, *of), lambda: work(*of))

    def together(self, visits: tuple[Visit, ...]) -> Tally:
        """A tally of several visits; the same one whenever it is asked for."""
        if len(visits) == 1:
            return visits[0]
        tally: Tally = self._tallies.get(visits, lambda: Tally(visits))
        return tally

    @property
    def athlete(self) -> Athlete | None:
        """Who trains it, where that is written."""
        return self.member.athlete if self.member else None

    @property
    def level(self) -> str:
        """The athlete's level; empty where none is written."""
        return self.athlete.level if self.athlete else ""

    @property
    def known(self) -> Known:
        """The exercises that it may name."""
        return self.around.known

    def named(self, name: str) -> Exercise | str:
        """What a name stands for: the exercise, or the name as it is compared where nobody knows it."""
        return self.known.exercise(name) or fold(name)

    @property
    def equipment(self) -> frozenset[str] | None:
        """What the athlete has to train with, the team's sets by name spelled out; None where not written."""
        if self.athlete is None or not self.athlete.equipment:
            return None
        pieces = (self.around.equipment.get(term.words, (term.words,)) for term in self.athlete.equipment)
        return frozenset(piece.casefold() for several in pieces for piece in several)

    def of_block(self, block: Block) -> Tally:
        """All visits of a block."""
        return self.of_weeks(self.weeks_of(block))

    def weeks_of(self, block: Block) -> tuple[Week, ...]:
        """The weeks of a block."""
        return self.weeks[block.first - 1 : block.first - 1 + block.weeks]

    def typical_weeks(self) -> list[Week]:
        """Weeks whose dose is what a block is about, outside rehabilitation."""
        return [week for week in self.weeks if week.is_typical() and not week.rehabilitation]

    def like_weeks(self) -> list[tuple[Week, tuple[int, ...]]]:
        """One week for each different content, with the numbers of all weeks that hold the same."""
        alike: dict[tuple[object, ...], list[Week]] = {}
        for week in self.weeks:
            alike.setdefault((week.block, week.is_typical(), week.rehabilitation, week.visits), []).append(
                week
            )
        return [(weeks[0], tuple(week.number for week in weeks)) for weeks in alike.values()]

    @property
    def ends(self) -> date | None:
        """Its last day; None where no start is written."""
        starts = self.programme.starts
        return None if starts is None else starts + timedelta(days=7 * len(self.weeks) - 1)

    def day_number(self, day: date) -> int | None:
        """The number of a calendar day from the start (1: the first day); None where no start is written."""
        starts = self.programme.starts
        return None if starts is None else (day - starts).days + 1

    def activities(self) -> list[tuple[int, Week, Activity]]:
        """Every activity outside the gym on each of its days, by the day's number from the start."""
        return [
            ((week.number - 1) * 7 + day, week, activity)
            for week in self.weeks
            for activity in week.block.activities
            for day in activity.days
        ]

    def events(self) -> list[tuple[int, Event]]:
        """Dated events by their day's number from the start, in order."""
        dated = [
            (number, event)
            for event in self.programme.events
            if event.date is not None and (number := self.day_number(event.date)) is not None
        ]
        return sorted(dated, key=lambda pair: pair[0])

    def training_days(self) -> list[tuple[int, Week, Tally]]:
        """Every day with a session, as the day's number from the start (1: the first day), in order."""
        return [
            ((week.number - 1) * 7 + day, week, tally) for week in self.weeks for day, tally in week.days()
        ]


class Lifter:
    """An athlete with all their programmes that are known, those with a start day first and in order."""

    __slots__ = ("around", "athlete", "plans", "today")

    def __init__(
        self, athlete: Athlete, plans: Iterable[Ledger], today: date, around: Surroundings = BARE
    ) -> None:
        self.athlete = athlete
        self.plans = sorted(
            plans, key=lambda plan: (plan.programme.starts is None, plan.programme.starts or today)
        )
        self.today = today
        self.around = around


class _Calendar:
    """Lays a programme out: which sessions fall on which days of which weeks, and what they hold."""

    def __init__(self, ledger: Ledger) -> None:
        self.ledger = ledger
        self.best = _best_lifts(ledger)
        self.adjusted: dict[Exercise | str, list[Adjustment]] = {}
        for one in ledger.member.adjustments if ledger.member else ():
            self.adjusted.setdefault(ledger.named(one.exercise.words), []).append(one)
        self.lines = Remembered()
        self.own = Remembered()
        self.seen = Remembered()
        self.made: dict[tuple[Visit, ...], list[Week]] = {}

    def weeks(self) -> Iterator[Week]:
        for remembered in (self.lines, self.own, self.seen):
            remembered.turn()
        before, self.made = self.made, {}
        for block in self.ledger.programme.blocks:
            turn = 0
            for number in range(block.first, block.first + block.weeks):
                visits, turn = self.visits(block, number - block.first + 1, turn)
                alike = before.get(visits)
                week = alike.pop(0) if alike else Week(self.ledger, visits)
                week.set_in(block, number)
                self.made.setdefault(visits, []).append(week)
                yield week

    def visits(self, block: Block, week: int, turn: int) -> tuple[tuple[Visit, ...], int]:
        """The visits of a week of a block, and whose turn it is next in its rotation."""
        visits = []
        rotating = [session for session in block.sessions if not session.days] if block.rotation else []
        for session in block.sessions:
            days = session.days or ((0,) if session not in rotating else ())
            visits += [self.visit(session, day, week) for day in days]
        if rotating:
            for day in block.rotation:
                session = rotating[turn % len(rotating)]
                visits.append(self.visit(session, day, week))
                turn += 1
        visits.sort(key=lambda visit: visit.day or 8)
        return tuple(visits), turn

    def visit(self, session: Session, day: int, week: int) -> Visit:
        """A session on its day; one and the same object for all weeks in which it holds the same."""
        own = self.entries(session, week)
        key = (session, day, own)
        visit: Visit = self.seen.get(key, lambda: Visit(self.ledger, session, day, own))
        return visit

    def entries(self, session: Session, week: int) -> tuple[Entry, ...]:
        """The entries of a session in a week of its block."""
        number = session.block.first + week - 1
        turns = tuple(
            turn for several in self.adjusted.values() for one in several for turn in one.version(number)
        )
        entries: tuple[Entry, ...] = self.own.get(
            (session, week, turns),
            lambda: tuple(
                entry for line in session.prescriptions for entry in self.of_line(line, week, number, turns)
            ),
        )
        return entries

    def of_line(
        self, line: Prescription, week: int, number: int, turns: tuple[int, ...]
    ) -> tuple[Entry, ...]:
        """The entries of a line in a week; the same objects for all weeks in which it reads the same."""
        key = (line, line.version(week), turns)
        entries: tuple[Entry, ...] = self.lines.get(key, lambda: self.entries_of(line, week, number))
        return entries

    def entries_of(self, line: Prescription, week: int, number: int) -> tuple[Entry, ...]:
        """The entries of a line in a week of its block, and the number of that week in the programme."""
        entries = (self.entry(line, work, number) for work in line.in_week(week))
        return tuple(entry for entry in entries if entry is not None)

    def entry(self, line: Prescription, work: Work, week: int) -> Entry | None:
        """The entry of a group of sets as the athlete does it; None where it is left out for them."""
        adjusted = self.adjusted.get(self.ledger.named(work.exercise), ()) if self.adjusted else ()
        for adjustment in adjusted:
            if adjustment.leave_out:
                return None
            work = work.with_values(adjustment.in_week(week))
        exercise = self.ledger.known.exercise(work.exercise)
        return Entry(self.ledger, line, work, exercise, self.best.get(exercise, ()) if exercise else ())


def _best_lifts(ledger: Ledger) -> dict[Exercise, tuple[BestLift, ...]]:
    """The athlete's best lifts on file, by exercise."""
    best: dict[Exercise, tuple[BestLift, ...]] = {}
    for lift in ledger.athlete.best_lifts if ledger.athlete else ():
        exercise = ledger.known.exercise(lift.exercise.words)
        if exercise is not None:
            best[exercise] = (*best.get(exercise, ()), lift)
    return best


def _in_rehabilitation(ledger: Ledger, week: int) -> bool:
    """Whether stage, adviser and end date are written down and the week begins before that is past."""
    stage = ledger.programme.rehabilitation
    if stage is None or not (stage.stage and stage.adviser and stage.until):
        return False
    starts = ledger.programme.starts
    begins = ledger.today if starts is None else starts + timedelta(days=7 * (week - 1))
    return begins <= stage.until
