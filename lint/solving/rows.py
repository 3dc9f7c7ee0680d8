"""What steps do to what rules ask: by how much each changes what is counted, as far as that is plain.

A set more on a line brings what a set of its exercise brings, as often as the line is done; a line taken out
takes all of it. Where a step does more than that, or less, nothing is foreseen of it.
"""

from __future__ import annotations

import re

from ..counting.session_time import CHANGE_OVER, ONE_WAY
from ..engine.demands import Minutes, SetSum

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..body.catalogue import Exercise
    from ..counting.counts import CountedSets
    from ..counting.set_group import SetGroup
    from ..counting.tally import Tally, Visit
    from ..engine.demands import Quantity
    from ..model.sessions import Prescription, Session
    from .lines import Line, Plan
    from .steps import EditStep

SECONDS = 60.0
"""Of a minute."""


class Rows:
    """By how much steps change what is counted of a plan."""

    __slots__ = ("_changes", "_lines", "_plain", "_plan")

    def __init__(self, plan: Plan) -> None:
        self._plan = plan
        self._lines: dict[Prescription, Line | None] = {}
        self._changes: dict[EditStep, dict[int, float | None]] = {}
        self._plain: dict[EditStep, bool] = {}

    def change(self, quantity: Quantity, steps: Iterable[EditStep]) -> float | None:
        """By how much steps change a quantity, all together; None where that is not known."""
        total = 0.0
        for step in steps:
            known, number = self._changes.setdefault(step, {}), id(quantity)
            if number not in known:
                known[number] = self._by_one(quantity, step)
            by = known[number]
            if by is None:
                return None
            total += by
        return total

    def is_plain(self, step: EditStep) -> bool:
        """Whether it is plain what a step does: to one line, in all of its weeks, by a number or whole."""
        if step not in self._plain:
            self._plain[step] = self._is_plain(step)
        return self._plain[step]

    def lines_of(self, quantity: Quantity) -> set[int]:
        """Where the lines stand that bring something to a quantity."""
        if isinstance(quantity, SetSum):
            return {self._starts(part.entry) for part in quantity.count.parts}
        if isinstance(quantity, Minutes):
            return {self._starts(entry) for _, entry in quantity.visit.entries()}
        return set()

    def session_of(self, step: EditStep) -> Session | None:
        """The session that a step changes a line of, or adds one to."""
        at = step.line if step.line >= 0 else step.spans[0][0]
        held = [one for one in self._plan.sessions if one.start <= at]
        return held[-1].session if held else None

    def _is_plain(self, step: EditStep) -> bool:
        if step.kind == "add":
            return step.line < 0 and len(step.spans) == 1 and " weeks:" not in step.spans[0][2]
        line = self._plan.line_at(step.line) if step.line >= 0 else None
        if line is None or len(step.touches) != 1 or not line.is_plain:
            return False
        starts = {start for start, _, _ in step.spans}
        if any("{" in words for _, _, words in step.spans):
            return False  # values by week
        if step.kind == "sets":
            if not all(re.fullmatch("[0-9]+(-[0-9]+)?", words) for _, _, words in step.spans):
                return False
            return starts <= {at for entry in self._entries(line) if (at := _at(entry, "sets")) is not None}
        if step.kind == "drop":
            return len(step.spans) == 1 and step.spans[0][1] >= line.end and not step.spans[0][2].strip()
        if step.kind == "swap":
            names = {_at(entry, "exercise") for entry in self._entries(line)}
            return len(names) == 1 and names <= starts
        return False

    def _entries(self, line: Line) -> list[SetGroup]:
        return [
            entry for ledger in self._plan.ledgers for _, entry in ledger.entries() if self._of(entry) is line
        ]

    def _of(self, entry: SetGroup) -> Line | None:
        """The line that a group of sets is of."""
        prescription = entry.prescription
        if prescription not in self._lines:
            self._lines[prescription] = self._plan.line_at(prescription.place.start)
        return self._lines[prescription]

    def _by_one(self, quantity: Quantity, step: EditStep) -> float | None:
        if not self.is_plain(step):
            return None
        if isinstance(quantity, SetSum):
            return None if quantity.tally.one_sided else self._of_sets(quantity, step)
        return self._of_minutes(quantity.visit, step) if isinstance(quantity, Minutes) else None

    def _of_sets(self, sets: SetSum, step: EditStep) -> float | None:
        if step.kind == "add":
            assert step.exercise is not None
            held = self.session_of(step)
            often = sum(visit.session is held for visit in sets.tally.visits)
            return _new(sets, step.exercise, step.by * often)
        own = [part for part in sets.count.parts if self._starts(part.entry) == step.line]
        if step.kind == "sets":
            starts = {start for start, _, _ in step.spans}
            return sum(step.by * _weight(sets, part) for part in own if _at(part.entry, "sets") in starts)
        gone = -sum(float(getattr(part.sets, sets.end)) for part in own)
        if step.kind == "drop":
            return gone
        assert step.exercise is not None
        entries = self._in(sets.tally, step)
        more = _new(sets, step.exercise, sum(float(getattr(one.sets, sets.end)) for one in entries))
        return None if more is None or (more and not all(one.hard for one in entries)) else gone + more

    def _starts(self, entry: SetGroup) -> int:
        line = self._of(entry)
        return -1 if line is None else line.start

    def _in(self, tally: Tally, step: EditStep) -> list[SetGroup]:
        """The groups of sets of a step's line in a tally."""
        return [entry for _, entry in tally.entries() if self._starts(entry) == step.line]

    def _of_minutes(self, visit: Visit, step: EditStep) -> float | None:
        """The minutes that a step adds to a visit; of a new line those that it takes at the very least."""
        if step.kind == "add":
            return _least_of_new(step) / SECONDS if self.session_of(step) is visit.session else 0.0
        entries = self._in(visit, step)
        if not entries:
            return 0.0
        (entry, *others) = entries
        line, sets = entry.prescription, entry.work.sets
        if others or sets is None or sets.low < 2 or line.every is not None:
            return None
        time = visit.time_of(line)
        if step.kind == "sets" and sets.low + step.by >= 1:
            starts = {start for start, _, _ in step.spans}
            each = time.work.low / sets.low + time.rest.low / (sets.low - 1)
            return step.by * each / SECONDS if _at(entry, "sets") in starts else 0.0
        return None


def _at(entry: SetGroup, key: str) -> int | None:
    """Where a value of a group of sets stands."""
    place = entry.work.places.get(key)
    return None if place is None else place.start


def _weight(sets: SetSum, part: CountedSets) -> float:
    """What one set of a group that is counted brings."""
    if part.entry.sets.high:
        return part.sets.high / part.entry.sets.high
    return sets.weight(part.entry.exercise) if part.entry.exercise is not None else 1.0


def _new(sets: SetSum, exercise: Exercise, number: float) -> float | None:
    """What sets of another exercise bring; None where nobody knows whether they count."""
    brings = number * sets.weight(exercise)
    return brings if sets.takes_any or not brings else None


def _least_of_new(step: EditStep) -> float:
    """The fewest seconds of a new line: quick repetitions, the rest that is written, changing over."""
    words = step.spans[0][2]
    reps, rest = re.search(r"\breps: ([0-9]+)", words), re.search(r"\brest: ([0-9.]+) ?(s|min)", words)
    each = int(reps[1]) * (ONE_WAY + ONE_WAY).low if reps else 0.0
    between = float(rest[1]) * (SECONDS if rest[2] == "min" else 1) if rest else 0.0
    return CHANGE_OVER.low + step.by * each + max(step.by - 1, 0) * between
