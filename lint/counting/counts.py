"""A number of sets that knows the lines it came from."""

from __future__ import annotations

from ..findings.finding import Related
from ..model.naming import line_name
from ..model.quantities import NOTHING
from ..wording.words import plain
from .credits import DIRECT, FRACTIONAL, TOTAL

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from ..model.quantities import Range
    from ..model.sessions import Prescription
    from .set_group import SetGroup
    from .tally import Visit


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

HELPING = {
    DIRECT: "not counting where it only helps",
    FRACTIONAL: "counting half where it helps",
    TOTAL: "counting in full where it helps",
}
"""What a set in which a muscle only helps counts, in words."""


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
