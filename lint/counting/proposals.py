"""Which line to change, and by how many sets, so that a count comes to what is wanted.

A proposal names lines and the sets that they are to hold; it is made only where that is enough. It is loaded
only when a finding needs it.
"""

from __future__ import annotations

from math import ceil

from ..wording.words import counted_noun, listed, plain, sets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

    from .counts import Count
    from .set_group import SetGroup

MOST_SETS = 100
"""Sets that a proposal moves at most: more are no training."""

MOST_NAMED = 3
"""Lines that the words of a proposal name before they only count the rest."""

TINY = 1e-6
"""Below this a difference of sets is one of rounding."""


class LineChange:
    """A group of sets and by how many it changes in each of its visits (negative: fewer)."""

    __slots__ = ("by", "entry")

    def __init__(self, entry: SetGroup, by: int) -> None:
        self.entry = entry
        self.by = by

    def session(self) -> str:
        """The name of its session."""
        return self.entry.prescription.session.name

    def line(self, among: Sequence[LineChange]) -> str:
        """``dumbbell fly``; with its session, ``dumbbell fly (Push)``, among changes in several."""
        sessions = {change.session() for change in among}
        return self.entry.name if len(sessions) == 1 else f"{self.entry.name} ({self.session()})"

    def sets(self) -> str:
        """The sets that the line holds then: ``7 sets``, ``3-4 sets``."""
        low, high = plain(self.entry.sets.low + self.by), plain(self.entry.sets.high + self.by)
        return sets_of(low if low == high else f"{low}-{high}")


class Proposal:
    """Changes that together are enough, the largest first."""

    __slots__ = ("changes",)

    def __init__(self, changes: list[LineChange]) -> None:
        self.changes = sorted(changes, key=lambda change: -abs(change.by))

    def words(self, verb: str, *, placed: bool = True) -> str:
        """``in Push, cut bench press and dumbbell fly to 7 sets``; of many lines the first ones.

        Without ``placed``, a session that is the only one is not named.
        """
        named, more = self.changes[:MOST_NAMED], len(self.changes) - MOST_NAMED
        lines: dict[str, list[str]] = {}
        for change in named:
            lines.setdefault(change.sets(), []).append(change.line(named))
        said = listed([f"{listed(names)} to {sets}" for sets, names in lines.items()])
        rest = f", and {verb} {counted_noun(more, 'more line')}" if more > 0 else ""
        place = f"in {named[0].session()}, " if placed and len({one.session() for one in named}) == 1 else ""
        return f"{place}{verb} {said}{rest}"


def fewer(count: Count, most: float) -> Proposal | None:
    """Sets that come off the fullest lines, one by one, until a count is ``most`` at most, on its high end.

    Every line keeps a set. None where that, or ``MOST_SETS`` sets, is not enough.
    """
    steps = _steps(count)
    off: dict[SetGroup, int] = {}
    over = count.high - most
    for _ in range(MOST_SETS):
        if over <= TINY:
            break
        entry = max(steps, key=lambda one: one.sets.high - off.get(one, 0))
        if entry.sets.low - off.get(entry, 0) < 2:
            return None
        off[entry] = off.get(entry, 0) + 1
        over -= steps[entry]
    if over > TINY or not off:
        return None
    return Proposal([LineChange(entry, -sets) for entry, sets in off.items()])


def further(count: Count, least: float, rivals: Sequence[Count] = ()) -> Proposal | None:
    """More sets of the line that gains most by them, until a count is ``least`` or more, on its low end.

    With ``rivals``, ``least`` rises with the mean of their counts. None where no line gains anything.
    """
    steps = _steps(count)
    gains = dict(steps)
    for rival in map(_steps, rivals):
        for entry in gains:
            gains[entry] -= rival.get(entry, 0.0) / len(rivals)
    entries = sorted(gains, key=lambda one: -gains[one])
    if not entries or gains[entries[0]] <= TINY:
        return None
    entry = entries[0]
    add = max(ceil((least - count.low) / gains[entry] - TINY), 1)
    return Proposal([LineChange(entry, add)])


class Move:
    """Sets that move from one line to another."""

    __slots__ = ("off", "on")

    def __init__(self, off: LineChange, on: LineChange) -> None:
        self.off = off
        self.on = on

    def words(self) -> str:
        """``in Lower, move 2 sets from leg extension to leg curl``; of two sessions each is named."""
        both = (self.off, self.on)
        place = f"in {self.on.session()}, " if self.on.session() == self.off.session() else ""
        return f"{place}move {sets_of(self.on.by)} from {self.off.line(both)} to {self.on.line(both)}"


def evened(more: Count, less: Count, most: float) -> Move | None:
    """Sets that move to the other side until one holds no more than ``most`` times as many, by the middles.

    They move between the fullest line of each side that does not serve the other, too. None where there are
    no such lines or the fuller one would lose its last set.
    """
    gives, takes = _steps(more), _steps(less)
    only_gives = [entry for entry in gives if entry not in takes and entry.sets.low > 1]
    only_takes = [entry for entry in takes if entry not in gives]
    if not only_gives or not only_takes:
        return None
    giver = max(only_gives, key=lambda one: gives[one] * one.sets.low)
    taker = max(only_takes, key=lambda one: takes[one] * one.sets.low)
    for sets in range(1, int(min(giver.sets.low, MOST_SETS))):
        left, gained = more.middle - sets * gives[giver], less.middle + sets * takes[taker]
        if left <= most * gained + TINY:
            return Move(LineChange(giver, -sets), LineChange(taker, sets))
    return None


def _steps(count: Count) -> dict[SetGroup, float]:
    """How much a count changes by one set of each group of sets: its weight, once for each of its visits."""
    steps: dict[SetGroup, float] = {}
    for part in count.parts:
        if part.sets.high:
            steps[part.entry] = steps.get(part.entry, 0.0) + part.sets.high / part.entry.sets.high
    return steps
