"""Blocks, sessions and their lines: an exercise with sets, repetitions, load, effort, rest and tempo."""

from __future__ import annotations

from bisect import bisect_right

from ..text.places import Term
from .on_days import OnDays

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Literal, Protocol

    from ..text.places import Place
    from .on_days import Activity
    from .pairings import Pairing
    from .progression import Progression
    from .quantities import Load, Range, Reps, Tempo
    from .where import Where

    Weeks = tuple[tuple[int, int], ...]
    """Runs of weeks, each as its first and its last."""

    class ChangeOfLines(Protocol):
        """What changes in some weeks for all lines, or for those of a session or exercise."""

        session: Term | None
        exercise: Term | None
        leaves_out: bool

        def holds_in(self, week: int) -> bool:
            """Whether it holds in a week."""

        def applied(
            self,
            line: Prescription,
            values: dict[str, Slice],
            group: dict[str, tuple[Slice, ...]],
            before: int,
        ) -> dict[str, Slice]:
            """The values of a group of sets with what changes."""

    Phase = Literal["build", "in-season", "taper", "test", "return", ""]
    """What some weeks are for, "" if it is not said. A test holds the schemas to the same words."""


class Slice:
    """A value that holds from week ``first`` to week ``last`` of its block, both included."""

    __slots__ = ("first", "last", "place", "value")
    by_visit = False

    def __init__(self, first: int, last: int, value: object, place: Place) -> None:
        self.first = first
        self.last = last
        self.value = value
        self.place = place

    def with_value(self, value: object) -> Slice:
        """The same with another value."""
        return type(self)(self.first, self.last, value, self.place)


class VisitSlice(Slice):
    """A value that holds from one visit to another: the first, second, third of its session in a block."""

    __slots__ = ()
    by_visit = True


class Work:
    """One group of like sets in one week: the values of a prescription that hold in that week.

    ``written`` are its values as they stand in the line, by key; not ``readable`` if what decides the sets
    could not be read.
    """

    __slots__ = (
        "distance",
        "exercise",
        "hold",
        "load",
        "readable",
        "reps",
        "rest",
        "rir",
        "rpe",
        "sets",
        "side",
        "tempo",
        "timed",
        "velocity",
        "written",
    )

    exercise: str
    side: str
    sets: Range | None
    reps: Reps | None
    load: Load | None
    rir: Range | None
    rpe: Range | None
    rest: Range | None
    tempo: Tempo | None
    hold: Range | None
    timed: Range | None
    distance: Range | None
    velocity: Range | None

    def __init__(self, values: dict[str, Slice], readable: bool) -> None:
        self.written = values
        self.readable = readable
        self.exercise = self.side = ""
        self.sets = self.reps = self.load = self.rir = self.rpe = self.rest = None
        self.tempo = self.hold = self.timed = self.distance = self.velocity = None
        for key, held in values.items():
            if key in HELD_KEYS:
                setattr(self, key, held.value)

    @property
    def places(self) -> dict[str, Place]:
        """The places of its values, by key."""
        return {key: held.place for key, held in self.written.items()}

    def with_values(self, values: dict[str, Slice]) -> Work:
        """A copy in which these values replace its own."""
        other = Work({}, self.readable)
        for key in HELD_KEYS:
            setattr(other, key, values[key].value if key in values else getattr(self, key))
        left_out = {key for key, held in values.items() if held.value is None}
        other.written = {key: held for key, held in {**self.written, **values}.items() if key not in left_out}
        return other


WORK_KEYS = (
    "exercise",
    "sets",
    "reps",
    "load",
    "rir",
    "rpe",
    "rest",
    "tempo",
    "hold",
    "distance",
    "velocity",
    "side",
)
"""Keys of a prescription whose values may differ by week, or by group of sets."""

HELD_KEYS = frozenset({*WORK_KEYS, "timed"})
"""The same, and ``timed``: seconds of a set that goes by the clock, written as its repetitions."""


class Prescription:
    """One line of a session.

    ``place`` is the place of the exercise's name. ``order`` is the position of the line in its session.
    ``groups`` are its groups of like sets, each with its values by week. ``paired`` is the superset, circuit
    or complex that the line stands in. ``kind`` is empty for an exercise, else ``intervals`` or ``own
    choice``; ``trains`` are the areas that an own choice trains. ``test`` is what it tests: 1RM.
    ``working_best`` is the share of the best lift, in %, from which its percentages count, where it says so
    itself. ``cue`` and ``stop_when`` are for the athlete: what to think of, and what ends the work.
    ``by_visit`` says that some values go by visit. ``only_in`` are the weeks of a part of a line whose clock
    or words change by week; None where there are no parts. ``unread`` are the keys that could not be read.
    """

    __slots__ = (
        "_breaks",
        "_names",
        "alternates",
        "by_athlete",
        "by_visit",
        "cluster_rest",
        "cue",
        "every",
        "groups",
        "kind",
        "kinds",
        "lasts",
        "method",
        "note",
        "only_in",
        "order",
        "paired",
        "place",
        "progression",
        "rest_after",
        "session",
        "stop_when",
        "test",
        "trains",
        "unread",
        "velocity_loss",
        "warm_up_sets",
        "working_best",
    )

    session: Session
    paired: Pairing | None

    def __init__(self, place: Place, order: int, groups: tuple[dict[str, tuple[Slice, ...]], ...]) -> None:
        self.place = place
        self.order = order
        self.groups = groups
        self.kind = self.test = self.method = self.note = self.cue = self.stop_when = ""
        self.every: Range | None = None
        self.lasts: Range | None = None
        self.warm_up_sets: Range | None = None
        self.cluster_rest: Range | None = None
        self.rest_after: Range | None = None
        self.velocity_loss: Range | None = None
        self.working_best: float | None = None
        self.alternates: tuple[Term, ...] = ()
        self.progression: Progression | None = None
        self.trains: tuple[Term, ...] = ()
        self.kinds: tuple[Term, ...] = ()
        self.unread: frozenset[str] = frozenset()
        self.by_visit = self.by_athlete = False
        self.only_in: frozenset[int] | None = None
        self._breaks: list[int] | None = None
        self._names: list[Term] | None = None

    def in_week(
        self,
        week: int,
        time: int = 0,
        changes: tuple[tuple[ChangeOfLines, int], ...] = (),
        groups: tuple[dict[str, tuple[Slice, ...]], ...] | None = None,
    ) -> tuple[Work, ...]:
        """Its groups of sets in a week of its block, counted from 1; empty in a week without the line.

        ``time`` counts the visits to its session in the block, from 1. ``changes`` are those of all lines in
        that week, each with the weeks before the block that it counts; ``groups`` are those of one athlete.
        """
        works: list[Work] = []
        is_done = self.only_in is None or week in self.only_in
        for group in (groups or self.groups) if is_done else ():
            values: dict[str, Slice] = {}
            for key, slices in group.items():
                for held in slices:
                    if held.first <= (time if held.by_visit else week) <= held.last:
                        values[key] = held
                        break
            for change, before in changes if "exercise" in values else ():
                values = change.applied(self, values, group, before)
            if "exercise" in values:
                works.append(Work(values, not self.unread & _COUNTED))
        return tuple(works)

    @property
    def on_clock(self) -> bool:
        """Whether its sets start by a clock."""
        clock = self.paired.clock if self.paired else None
        return self.every is not None or (clock is not None and clock.sets_pace)

    def names(self) -> list[Term]:
        """The exercises that the line names over the weeks, in order; none where it is no exercise."""
        if self.kind:
            return []
        if self._names is None:
            held = [slice_ for group in self.groups for slice_ in group.get("exercise", ())]
            self._names = list({one.place.key: Term(str(one.value), one.place) for one in held}.values())
        return self._names

    def version(self, week: int) -> int:
        """A number that is equal for weeks of its block in which the line has the same values."""
        if self._breaks is None:
            breaks: set[int] = set()
            for group in self.groups:
                for slices in group.values():
                    for one in slices:
                        breaks.add(one.first)
                        breaks.add(one.last + 1)
            for alone in self.only_in or ():
                breaks |= {alone, alone + 1}
            self._breaks = sorted(breaks)
        return bisect_right(self._breaks, week)


_COUNTED = frozenset({"exercise", "sets", "rounds", "every", "for", "work"})
"""Keys whose values decide the exercise and the number of sets."""

WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")


class Session(OnDays):
    """One visit to the gym: its name, days and lines.

    ``number`` is its position in its block. ``in_weeks`` are the runs of weeks of its block in which it
    takes place, each as first and last; empty where it does in all. ``held_at`` says where; ``by_visit`` and
    ``by_athlete`` what some values go by. ``cool_down`` comes after the work; ``minutes`` are how long the
    whole goes on, where that is written. ``counts_rounds`` says whether it holds as many rounds as possible
    of something, which nobody has written. ``fingerprint`` is equal for two versions of it that say the same;
    None where versions are not compared. ``replaces`` is the session, named under ``instead_of``, whose place
    it takes. ``test`` is what all its lines test that say nothing else.
    """

    __slots__ = (
        "block",
        "by_athlete",
        "by_visit",
        "cool_down",
        "counts_rounds",
        "fingerprint",
        "held_at",
        "in_weeks",
        "instead_of",
        "minutes",
        "name",
        "note",
        "number",
        "own_days",
        "place",
        "preparation",
        "prescriptions",
        "replaces",
        "test",
    )

    block: Block
    number: int

    def __init__(self, name: str, place: Place) -> None:
        super().__init__()
        self.name = name
        self.place = place
        self.own_days: tuple[int, ...] = ()
        self.instead_of: Term | None = None
        self.replaces: Session | None = None
        self.fingerprint: object = None
        self.by_visit = self.by_athlete = False
        self.in_weeks: Weeks = ()
        self.preparation: tuple[Term, ...] = ()
        self.cool_down: tuple[Term, ...] = ()
        self.minutes: tuple[tuple[int, int, Range], ...] = ()
        self.prescriptions: tuple[Prescription, ...] = ()
        self.note = self.test = ""
        self.counts_rounds = False
        self.held_at: Where | None = None

    def takes_place(self, week: int) -> bool:
        """Whether it takes place in a week of its block, counted from 1."""
        return not self.in_weeks or any(first <= week <= last for first, last in self.in_weeks)

    def lasts(self, week: int) -> Range | None:
        """The minutes that are written for the whole of it in a week of its block; None where none are."""
        return next((minutes for first, last, minutes in self.minutes if first <= week <= last), None)


class Block:
    """A run of like weeks; ``first`` is its first week in the programme, from 1.

    ``rotation`` are its days, ``hours`` their times of day. ``deload`` says that all of it is to recover,
    ``deload_weeks`` which weeks of it, from 1, are, each with the place that says so. ``given`` are its weeks
    for which `everything` gives a value, by key; ``one_lift`` are names with a plus that stand for one lift.
    Its sessions are asked of the programme: whoever holds a session sees its block, not its neighbours.
    """

    __slots__ = (
        "activities",
        "deload",
        "deload_weeks",
        "everything",
        "first",
        "focus",
        "given",
        "held_at",
        "hours",
        "name",
        "note",
        "one_lift",
        "phase",
        "place",
        "rotation",
        "weeks",
    )

    def __init__(self, name: str, place: Place, first: int, weeks: int) -> None:
        self.name = name
        self.place = place
        self.first = first
        self.weeks = weeks
        self.phase: Phase = ""
        self.deload = False
        self.deload_weeks: dict[int, Place] = {}
        self.rotation: tuple[int, ...] = ()
        self.hours: dict[int, float] = {}
        self.given: dict[str, frozenset[int]] = {}
        self.one_lift: frozenset[str] = frozenset()
        self.activities: tuple[Activity, ...] = ()
        self.focus: tuple[Term, ...] = ()
        self.note = ""
        self.held_at: Where | None = None
        self.everything: tuple[ChangeOfLines, ...] = ()

    def is_deload(self, week: int) -> bool:
        """Whether a week of it, from 1, is there to recover."""
        return self.deload or week in self.deload_weeks
