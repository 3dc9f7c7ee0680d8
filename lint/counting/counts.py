"""Numbers of sets that know the lines they came from."""

from __future__ import annotations

from ..findings.finding import Related
from ..model.naming import day_name, line_name
from ..model.quantities import NOTHING
from ..wording.words import listed, plain
from .credits import as_counted

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable
    from typing import Protocol

    from ..model.quantities import Range
    from ..model.sessions import Prescription, Session
    from .header import ProgrammeHeader
    from .set_group import SetGroup

    class CountedVisit(Protocol):
        """What is needed here of a session on its day."""

        @property
        def day(self) -> int:
            """1 to 7, 0 without a day."""

        @property
        def hour(self) -> float | None:
            """The time of day at which it begins, None where that is not written."""

        @property
        def session(self) -> Session:
            """The session."""

        @property
        def one_sided(self) -> bool:
            """Whether any of it is done with one side only."""

        @property
        def programme(self) -> ProgrammeHeader:
            """The programme that it is a part of."""


class CountedSets:
    """What one group of sets (``entry``) of one visit brings to a count: its ``sets``, already weighted."""

    __slots__ = ("entry", "sets", "visit")

    def __init__(self, visit: CountedVisit, entry: SetGroup, sets: Range) -> None:
        self.visit = visit
        self.entry = entry
        self.sets = sets


class Count:
    """A number of sets (a range if the coach wrote one) and the parts it came from."""

    __slots__ = ("_parts", "high", "low")

    def __init__(self, parts: list[CountedSets]) -> None:
        self._parts: list[CountedSets] | Callable[[], list[CountedSets]] = parts
        self.low = sum([part.sets.low for part in parts])
        self.high = sum([part.sets.high for part in parts])

    @classmethod
    def of(cls, low: float, high: float, parts: Callable[[], list[CountedSets]]) -> Count:
        """A number that is known already; its parts are put together when they are asked for."""
        count = cls.__new__(cls)
        count.low, count.high, count._parts = low, high, parts
        return count

    @property
    def parts(self) -> list[CountedSets]:
        """The parts that it came from."""
        if not isinstance(self._parts, list):
            self._parts = self._parts()
        return self._parts

    @property
    def middle(self) -> float:
        """Half-way between the ends."""
        return (self.low + self.high) / 2

    def __str__(self) -> str:
        return plain(self.low) if self.low == self.high else f"{plain(self.low)}-{plain(self.high)}"

    @property
    def most(self) -> str:
        """The high end in words: ``12``, or ``up to 12`` if the count is a range."""
        return plain(self.high) if self.low == self.high else f"up to {plain(self.high)}"

    def __bool__(self) -> bool:
        return self.high > 0

    def lines(self) -> list[tuple[Prescription, Range]]:
        """The prescriptions it came from, in the order of the file, each with its sets."""
        given = [pair for pair in self.by_line().items() if pair[1].high] or list(self.by_line().items())
        return sorted(given, key=lambda pair: (pair[0].place.start, pair[0].order))

    def by_line(self) -> dict[Prescription, Range]:
        """The prescriptions it came from, in the order of ``parts``, each with its sets."""
        found: dict[Prescription, Range] = {}
        for part in self.parts:
            line = part.entry.prescription
            found[line] = found[line] + part.sets if line in found else part.sets
        return found

    def from_one_line(self) -> bool:
        """Whether no more than one prescription brings sets."""
        return len({part.entry.prescription for part in self.parts if part.sets.high}) < 2

    def days(self) -> list[int]:
        """The numbers of the days it falls on, in order and once each."""
        return sorted({part.visit.day for part in self.parts if part.visit.day and part.sets.high})

    def occasions(self) -> int:
        """On how many days it falls. A session without a stated day counts as a day of its own."""
        return len({part.visit.day or part.visit for part in self.parts if part.sets.high})

    def where(self, test: Callable[[SetGroup], bool]) -> Count:
        """The part of it that comes from groups of sets which pass a test."""
        parts = [part for part in self.parts if test(part.entry)]
        return self if len(parts) == len(self.parts) else Count(parts)

    def shares(self) -> dict[Prescription, str]:
        """``Push, bench press, Monday: 6 indirect sets, counted as 3``: what each line brings, if it does."""
        brought: dict[Prescription, list[CountedSets]] = {}
        for part in self.parts:
            if part.sets.high:
                brought.setdefault(part.entry.prescription, []).append(part)
        counted = self.by_line()
        return {line: self._share(line, parts, counted[line]) for line, parts in brought.items()}

    @staticmethod
    def _share(line: Prescription, parts: list[CountedSets], counted: Range) -> str:
        days = sorted({part.visit.day for part in parts if part.visit.day})
        on_days = listed([day_name(parts[0].visit.programme.starts, day) for day in days])
        sets = sum((part.entry.sets for part in parts), NOTHING)
        return f"{', '.join(filter(None, (line_name(line), on_days)))}: {as_counted(sets, counted)}"

    def repetitions(self) -> Range:
        """The repetitions of all its sets. Open repetitions count 0; indirect sets count in full."""
        return sum((part.entry.reps for part in self.parts if part.entry.reps), NOTHING)


NO_SETS = Count([])


def in_full(groups: Iterable[tuple[CountedVisit, SetGroup]]) -> list[CountedSets]:
    """The sets of some groups with their visits, none of them by half."""
    return [CountedSets(visit, group, group.sets) for visit, group in groups]


def on_side(parts: list[CountedSets], side: str) -> Count:
    """The sum of the parts that a side does. Without ``side``, the side with more sets is counted."""
    if side:
        return Count([part for part in parts if part.entry.side in ("", side)])
    left = Count([part for part in parts if part.entry.side != "right"])
    right = Count([part for part in parts if part.entry.side != "left"])
    return left if left.high >= right.high else right


def counted_lines(*counts: Count, of: str = "") -> tuple[Related, ...]:
    """The lines of counts, each once, in the order of the file. The shares of one count add up to it."""
    lines = {line: (sets, one) for one in reversed(counts) for line, sets in one.by_line().items()}
    shares = {one: one.shares() for one in counts}
    return tuple(
        Related(line.place, shares[count][line], sets.ends if len(counts) == 1 else None, of)
        for line, (sets, count) in sorted(lines.items(), key=lambda one: (one[0].place.start, one[0].order))
        if sets.high
    )
