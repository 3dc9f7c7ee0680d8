"""Which line to change, and by how many sets, so that a count comes to what is wanted.

A proposal names lines and numbers, and what the count holds then; it is made only where that is enough. It is
loaded only when a finding needs it.
"""

from __future__ import annotations

from math import ceil

from ..model.naming import line_name
from ..wording.words import listed, plain, sets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

    from .set_group import SetGroup
    from .tally import Count

MOST_SETS = 100
"""Sets that a proposal moves at most: more are no training."""

TINY = 1e-6
"""Below this a difference of sets is one of rounding."""


class LineChange:
    """A group of sets and by how many it changes in each of its visits (negative: fewer)."""

    __slots__ = ("by", "entry")

    def __init__(self, entry: SetGroup, by: int) -> None:
        self.entry = entry
        self.by = by

    def words(self) -> str:
        """``2 sets off Push, dumbbell fly (9 to 7)``, or ``1 set to ...``."""
        return f"{sets_of(abs(self.by))} {'to' if self.by > 0 else 'off'} {self.line()}"

    def line(self) -> str:
        """``Push, dumbbell fly (9 to 7)``."""
        before = self.entry.sets
        low, high = plain(before.low + self.by), plain(before.high + self.by)
        return f"{line_name(self.entry.prescription)} ({before} to {low if low == high else f'{low}-{high}'})"


class Proposal:
    """Changes that are enough, and what the count ``then`` holds."""

    __slots__ = ("changes", "then")

    def __init__(self, changes: list[LineChange], then: float) -> None:
        self.changes = changes
        self.then = then

    def words(self) -> str:
        """``2 sets off A (9 to 7) and 1 set off B (3 to 2)``."""
        return listed([change.words() for change in self.changes])


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
    return Proposal([LineChange(entry, -sets) for entry, sets in off.items()], most + over)


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
    return Proposal([LineChange(entry, add)], count.low + add * steps[entry])


class Move:
    """Sets that move from one line to another, and what both sides hold then, by the middles."""

    __slots__ = ("less", "more", "off", "on")

    def __init__(self, off: LineChange, on: LineChange, more: float, less: float) -> None:
        self.off = off
        self.on = on
        self.more = more
        self.less = less

    def words(self) -> str:
        """``2 sets from A (9 to 7) to B (2 to 4): 7 against 6 then``."""
        return (
            f"{sets_of(self.on.by)} from {self.off.line()} to {self.on.line()}: {plain(self.more)} against"
            f" {plain(self.less)} then"
        )


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
            return Move(LineChange(giver, -sets), LineChange(taker, sets), left, gained)
    return None


def _steps(count: Count) -> dict[SetGroup, float]:
    """How much a count changes by one set of each group of sets: its weight, once for each of its visits."""
    steps: dict[SetGroup, float] = {}
    for part in count.parts:
        if part.sets.high and part.entry.sets.high:
            steps[part.entry] = steps.get(part.entry, 0.0) + part.sets.high / part.entry.sets.high
    return steps
