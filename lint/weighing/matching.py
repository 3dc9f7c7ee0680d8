"""Which session, and which line of it, is which: old and new are matched by what they hold."""

from __future__ import annotations

from collections import Counter

from ..body.names import fold
from ..model.naming import day_name
from .values import lines_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable
    from typing import TypeVar

    from ..counting.tally import Visit
    from .values import LineState

    One = TypeVar("One")

SAME_NAME, SAME_DAY = 0.6, 0.5
"""What a name and a day add to how much two sessions hold in common, which is 2 for all lines and values."""

ALIKE = 0.5
"""The share of lifts in common from which two sessions are one, whatever they are called."""


class Held:
    """A visit with its lines."""

    __slots__ = ("lifts", "lines", "visit")

    def __init__(self, visit: Visit) -> None:
        self.visit = visit
        self.lines = lines_of(visit)
        self.lifts = Counter(line.lift for line in self.lines)

    @property
    def name(self) -> str:
        """The session's name; its day where it has none."""
        return self.visit.session.name or self.day or "session without a name"

    @property
    def day(self) -> str:
        """The weekday; empty where none is written."""
        return day_name(self.visit.programme.starts, self.visit.day) if self.visit.day else ""


class LinePairs:
    """The lines of two versions of a session: those in both, swapped ones, those gone and those new.

    ``reordered`` are the names of lines in both that stand in another order.
    """

    __slots__ = ("both", "gone", "new", "reordered", "swapped")

    def __init__(self, old: Held, new: Held) -> None:
        self.both: list[tuple[LineState, LineState]] = []
        gone, added = _matched(old.lines, new.lines, self.both, lambda line: (line.lift, line.values))
        gone, added = _matched(gone, added, self.both, lambda line: (line.lift, line.one_sided))
        self.gone, self.new = _matched(gone, added, self.both, lambda line: line.lift)
        self.swapped = _swaps(old, new, self)
        for before, after in self.swapped:
            self.gone.remove(before)
            self.new.remove(after)
        order = [(old.lines.index(before), new.lines.index(after)) for before, after in self.both]
        inner = [place for _, place in sorted(order)]
        kept = set(_rising(inner))
        self.reordered = [new.lines[place].name for place in sorted(inner) if place not in kept]

    @property
    def are_same(self) -> bool:
        """Whether all lines say the same, in the same order, and train the same."""
        if self.gone or self.new or self.swapped or self.reordered:
            return False
        return all(old.values == new.values and old.trains == new.trains for old, new in self.both)


class VisitPairs:
    """The visits of two versions of a week: those in both with their lines, those gone and those new."""

    __slots__ = ("are_same", "both", "gone", "new")

    def __init__(self, old: Iterable[Visit], new: Iterable[Visit]) -> None:
        before, after = [Held(one) for one in old], [Held(one) for one in new]
        scored = sorted(
            (
                (_likeness(one, other), -i, -j)
                for i, one in enumerate(before)
                for j, other in enumerate(after)
                if _may_match(one, other)
            ),
            reverse=True,
        )
        taken_old: dict[int, int] = {}
        for _, i, j in scored:
            if -i not in taken_old and -j not in taken_old.values():
                taken_old[-i] = -j
        self.both = [(before[i], after[j], LinePairs(before[i], after[j])) for i, j in taken_old.items()]
        self.gone = [one for i, one in enumerate(before) if i not in taken_old]
        self.new = [one for j, one in enumerate(after) if j not in taken_old.values()]
        self.are_same = not (self.gone or self.new) and all(
            one.day == other.day and lines.are_same for one, other, lines in self.both
        )


def _may_match(old: Held, new: Held) -> bool:
    common = _common(old, new)
    named_alike = fold(old.name) == fold(new.name) and bool(old.visit.session.name)
    return common >= ALIKE or named_alike or (old.day == new.day and common > 0)


def _common(old: Held, new: Held) -> float:
    """The share of lifts that two sessions have in common, from 0 to 1."""
    several = len(old.lines) + len(new.lines)
    return 2 * (old.lifts & new.lifts).total() / several if several else 1.0


def _likeness(old: Held, new: Held) -> float:
    same = sum(
        any(one.lift == two.lift and one.values == two.values for two in new.lines) for one in old.lines
    )
    named = SAME_NAME * (fold(old.name) == fold(new.name))
    on_day = SAME_DAY * (old.day == new.day)
    return _common(old, new) + same / max(len(old.lines), 1) + named + on_day


def _matched(
    old: list[LineState],
    new: list[LineState],
    pairs: list[tuple[LineState, LineState]],
    alike: Callable[[LineState], object],
) -> tuple[list[LineState], list[LineState]]:
    """Adds the pairs that are alike, in order; returns what is left of both."""
    left, rest = list(new), []
    for one in old:
        found = next((other for other in left if alike(other) == alike(one)), None)
        if found is None:
            rest.append(one)
        else:
            left.remove(found)
            pairs.append((one, found))
    return rest, left


def _swaps(old: Held, new: Held, pairs: LinePairs) -> list[tuple[LineState, LineState]]:
    """Lines gone and lines new that are one line with another exercise: of one place, or of one purpose."""
    found = []
    free = list(pairs.new)
    place_of = {id(after): old.lines.index(before) for before, after in pairs.both}
    for one in pairs.gone:
        at = old.lines.index(one)
        same_place = [
            other
            for other in free
            if _purpose(one, other) or (_place_in_old(new, other, place_of) == at and one.sets == other.sets)
        ]
        if same_place:
            best = max(same_place, key=lambda other: (_purpose(one, other), one.values == other.values))
            free.remove(best)
            found.append((one, best))
    return found


def _place_in_old(new: Held, line: LineState, place_of: dict[int, int]) -> int:
    """The place that a new line would have had: behind the line that stands before it."""
    at = new.lines.index(line)
    return place_of.get(id(new.lines[at - 1]), -2) + 1 if at else 0


def _purpose(old: LineState, new: LineState) -> int:
    """How many joint actions and patterns two lines share; 0 where either is unknown."""
    one, other = old.groups[0].exercise, new.groups[0].exercise
    if one is None or other is None:
        return 0
    return len({*one.actions, *one.patterns}.intersection((*other.actions, *other.patterns)))


def _rising(places: list[int]) -> list[int]:
    """The longest run of places that rise, so that as few as can be are called moved."""
    best: list[list[int]] = []
    for place in places:
        before = max((run for run in best if run[-1] < place), key=len, default=[])
        best.append([*before, place])
    return max(best, key=len, default=[])
