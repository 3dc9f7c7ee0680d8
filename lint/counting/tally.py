"""How many sets visits bring to an area, a joint action or a pattern.

A `Tally` holds visits and answers questions. Every answer is a `Count`, which knows the lines it came from.
"""

from __future__ import annotations

from ..body import catalogue
from ..body.names import fold
from ..findings.finding import Related
from ..model.naming import line_name
from ..model.quantities import NOTHING
from ..wording.words import plain
from .credits import FRACTIONAL, INDIRECT_WEIGHT, TOTAL, credit, credits_of
from .session_time import CHANGE_OVER, session_time

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator
    from typing import Any

    from ..body.catalogue import Exercise
    from ..model.quantities import Range
    from ..model.sessions import Prescription, Session, Work
    from .header import ProgrammeHeader
    from .session_time import SessionTime
    from .set_group import SetGroup


class CountedSets:
    """What one entry of one visit brings to a count: its sets, already weighted."""

    __slots__ = ("entry", "sets", "visit")

    def __init__(self, visit: Visit, entry: SetGroup, sets: Range) -> None:
        self.visit = visit
        self.entry = entry
        self.sets = sets


class Count:
    """A number of sets (a range where the coach wrote one) and the parts that it came from."""

    __slots__ = ("high", "low", "parts")

    def __init__(self, parts: list[CountedSets]) -> None:
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

    def where(self, test: Callable[[SetGroup], bool]) -> Count:
        """The part of it that comes from entries which pass a test."""
        return Count([part for part in self.parts if test(part.entry)])

    def repetitions(self) -> Range:
        """Repetitions of all its sets, those left open counting none; indirect sets count in full."""
        return sum((part.entry.reps for part in self.parts if part.entry.reps), NOTHING)


NO_SETS = Count([])


def counted_lines(*counts: Count) -> tuple[Related, ...]:
    """The lines that counts came from, each with its sets, in the order of the file and once each."""
    seen: dict[Prescription, Range] = {}
    for count in counts:
        for line, sets in count.by_line().items():
            if sets.high:
                seen.setdefault(line, sets)
    return tuple(
        Related(line.place, f"{line_name(line)}: {sets} {'set' if str(sets) == '1' else 'sets'}")
        for line, sets in sorted(seen.items(), key=lambda pair: (pair[0].place.start, pair[0].order))
    )


class Tally:
    """Visits, and how many sets they bring to whatever a rule asks about; an answer is worked out once.

    What several visits bring is drawn together from what each of them brings.
    """

    __slots__ = ("_answers", "visits")

    def __init__(self, visits: tuple[Visit, ...]) -> None:
        self.visits = visits
        self._answers: dict[tuple[object, ...], Any] = {}

    def entries(self) -> Iterator[tuple[Visit, SetGroup]]:
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

    def brings(self, area: str, count: str = TOTAL, test: Callable[[SetGroup], bool] | None = None) -> bool:
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
            [
                CountedSets(visit, entry, entry.sets)
                for visit, entry in self.entries()
                if entry.hard or not hard
            ]
        )

    def how_often(self, test: Callable[[SetGroup], bool]) -> int:
        """On how many visits there is at least one set of an entry that passes a test."""
        return sum(any(entry.sets.high and test(entry) for entry in visit.own) for visit in self.visits)

    def by_exercise(self, test: Callable[[SetGroup], bool]) -> list[Count]:
        """The sets of each known exercise, of entries that pass a test; the better side of one-sided work."""
        parts: dict[Exercise, list[CountedSets]] = {}
        for visit, entry in self.entries():
            if entry.exercise is not None and test(entry):
                parts.setdefault(entry.exercise, []).append(CountedSets(visit, entry, entry.sets))
        return [_on_side(of_one, "") for of_one in parts.values()]

    def lifts(self) -> dict[Exercise | str, list[SetGroup]]:
        """What is done of each exercise, unknown ones by name as it is compared; sets of 0 left out."""
        lifts: dict[Exercise | str, list[SetGroup]] = self._once(("lifts",), self._lifts)
        return lifts

    def _lifts(self) -> dict[Exercise | str, list[SetGroup]]:
        found: dict[Exercise | str, list[SetGroup]] = {}
        for _, entry in self.entries():
            if entry.sets.high:
                found.setdefault(entry.exercise or fold(entry.name), []).append(entry)
        return found

    def unsure(self) -> list[SetGroup]:
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


def _on_side(parts: list[CountedSets], side: str) -> Count:
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

    __slots__ = ("_by_action", "_by_area", "day", "is_one_sided", "own", "own_unsure", "programme", "session")

    def __init__(
        self, programme: ProgrammeHeader, session: Session, day: int, own: tuple[SetGroup, ...]
    ) -> None:
        super().__init__((self,))
        self.programme = programme
        self.session = session
        self.day = day
        self.own = own
        self.own_unsure = [entry for entry in own if not entry.sure]
        self.is_one_sided = any(entry.side for entry in own)
        self._by_area: dict[str, list[tuple[SetGroup, float]]] | None = None
        self._by_action: dict[str, list[SetGroup]] | None = None

    def let_go(self) -> None:
        """Forgets what was counted, which points back at it: so it is all freed without being looked for."""
        self.visits = ()
        self._answers.clear()

    def credited(self) -> dict[str, list[tuple[SetGroup, float]]]:
        """What trains each muscle and group, with the weight of a set: 1 direct, 0.5 indirect."""
        if self._by_area is None:
            self._by_area = {}
            for entry in self.own:
                if entry.exercise is not None:
                    for name, weight in credits_of(entry.exercise).items():
                        self._by_area.setdefault(name, []).append((entry, weight))
        return self._by_area

    def _training(self, area: str) -> list[tuple[SetGroup, float]]:
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
                CountedSets(self, entry, entry.sets if weight == 1.0 else entry.sets * indirect)
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
        return Count([CountedSets(self, entry, entry.sets) for entry in entries])

    def _serving(self, actions: tuple[str, ...]) -> list[SetGroup]:
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
