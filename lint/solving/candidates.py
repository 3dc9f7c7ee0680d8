"""Steps that may help with a finding, by what it says as data: its lines, its group, its numbers."""

from __future__ import annotations

from .amounts import fewer_sets, more_sets, paired, taken_out
from .exercises import added, exchanged, serves, serving, trains
from .offered import offered, other_days

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from .judge import Seen
    from .lines import Line, Plan, WrittenSession
    from .steps import EditStep

LINEAR = ("sets", "min")
"""Units of numbers that change in equal steps with the sets of a line."""

TINY = 1e-6


class Candidates:
    """The steps for one finding, the cheapest first, ties in the order of the file.

    ``enough`` says whether some of them could be enough together; where it cannot be worked out, they could.
    """

    __slots__ = ("_gains", "_seen", "steps")

    def __init__(self, plan: Plan, seen: Seen, *, own: bool) -> None:
        self._seen = seen
        found = {step.key: step for step in _all(plan, seen, own=own) if step.spans}
        self.steps = sorted(found.values(), key=lambda one: (one.cost, one.key))
        self._gains = _gains(plan, seen)

    def enough(self, steps: Iterable[EditStep]) -> bool:
        """Whether steps may bring the number of the finding to what is wanted."""
        gains = self._gains
        if gains is None:
            return True
        return sum(gains.of(step) for step in steps) >= self._seen.apart - TINY


class Gains:
    """By how much steps bring a number nearer to what is wanted, at most.

    ``group`` is what is to be trained, "" where not one thing is. ``by_line`` holds, for a line, what one set
    and what all of its sets bring; ``a_set`` is what a set of a new line brings. ``over`` says that
    less is wanted. ``others`` is what any other step may bring.
    """

    __slots__ = ("a_set", "by_line", "group", "others", "over")

    def __init__(
        self,
        by_line: dict[int, tuple[float, float]],
        others: float,
        *,
        over: bool,
        a_set: float = 0,
        group: str = "",
    ) -> None:
        self.group = group
        self.by_line = by_line
        self.others = others
        self.over = over
        self.a_set = a_set

    def of(self, step: EditStep) -> float:
        """What a step brings at most."""
        a_set, whole = self.by_line.get(step.line, (0.0, 0.0))
        if self.group and step.exercise is not None:
            serves = trains(step.exercise, self.group)
            return (whole if step.kind == "swap" else self.a_set * step.by) if serves else 0.0
        if step.kind == "sets":
            return -a_set * step.by if self.over else a_set * step.by
        if step.kind in ("drop", "swap"):
            return whole if self.over or step.kind == "swap" else 0.0
        if step.kind in ("add", "order"):
            return self.a_set * step.by
        return self.others


def _gains(plan: Plan, seen: Seen) -> Gains | None:
    """What steps bring where a finding speaks of sets or minutes; None where that is not to be worked out."""
    if seen.unit not in LINEAR or any(one.aside for one in seen.levers):
        return None
    if not seen.over:
        return _gains_below(plan, seen)
    if seen.unit == "min":
        return Gains(_minutes(plan), seen.apart, over=True)
    found: dict[int, tuple[float, float]] = {}
    for lever in seen.levers:
        line = plan.line_at(lever.offset)
        if lever.share is None:
            continue
        if line is None or not line.sets:
            return None
        a_set, whole = found.get(line.start, (0.0, 0.0))
        fewest = min(one.sets.high for one in line.entries if one.sets.high)
        found[line.start] = a_set + lever.share / fewest, whole + lever.share
    return Gains(found, seen.apart, over=True) if found else None


def _gains_below(plan: Plan, seen: Seen) -> Gains | None:
    """A set of a line counts once a visit at most, and a line is visited on its days at most."""
    group = seen.parts[0]
    known = any(serves(line, group) for line in plan.lines) or serving(plan, group)
    if seen.unit != "sets" or len(seen.parts) > 1 or not known:
        return None
    often = {line.start: float(max(len(held.days), 1)) for held in plan.sessions for line in held.lines}
    by_line = {
        line.start: (often[line.start] if serves(line, group) else 0.0, often[line.start] * line.sets)
        for line in plan.lines
    }
    return Gains(by_line, seen.apart, over=False, a_set=max(often.values(), default=1.0), group=group)


def _minutes(plan: Plan) -> dict[int, tuple[float, float]]:
    """The most minutes that one set, and that all sets, of each line can take; with what lies around them."""
    gains: dict[int, tuple[float, float]] = {}
    for ledger in plan.ledgers:
        for visit in ledger.visits:
            for line in plan.lines:
                if line.line.session is visit.session:
                    whole = visit.time_of(line.line).total.high / 60
                    a_set = whole / max(line.sets - 1, 1)
                    old = gains.get(line.start, (0.0, 0.0))
                    gains[line.start] = max(old[0], a_set), max(old[1], whole + AROUND)
    return gains


AROUND = 5.0
"""Minutes that a line may take beside its sets, at most: the change-over, and warming up for it."""


def _all(plan: Plan, seen: Seen, *, own: bool) -> Iterator[EditStep]:
    """Every step that may help; ``own`` says whether the finding is of the text before all edits."""
    if own:
        yield from offered(plan, seen)
    lines, sessions = _spoken_of(plan, seen)
    if seen.unit in LINEAR:
        for line in lines:
            if plan.may_touch(line):
                yield from _of_line(plan, seen, line)
    for held in sessions:
        if seen.unit == "min":
            yield from paired(plan, held)
        if seen.unit in ("h", "days"):  # rest between sessions is a matter of days; sets stay as they are
            yield from other_days(plan, held)
    if not seen.over and seen.unit != "min":
        yield from _in_place(plan, seen)


def _spoken_of(plan: Plan, seen: Seen) -> tuple[list[Line], list[WrittenSession]]:
    """The lines that a finding counted or points at, and the sessions that hold them."""
    found: dict[int, Line] = {}
    sessions: dict[int, WrittenSession] = {}
    for lever in seen.levers:
        for line in plan.lines_at(lever.offset):
            found[line.start] = line
        held = plan.session_at(lever.offset)
        if held is not None:
            sessions[held.start] = held
    return [found[at] for at in sorted(found)], [sessions[at] for at in sorted(sessions)]


def _of_line(plan: Plan, seen: Seen, line: Line) -> Iterator[EditStep]:
    """Other numbers of sets of a line, and the line taken out, as far as the finding asks for it."""
    groups = seen.parts
    group = groups[0] if len(groups) == 1 else ""
    aside = any(one.aside for one in seen.levers)
    if seen.over or aside:
        yield from fewer_sets(plan, line, group)
    if seen.unit == "sets" and (aside or (not seen.over and serves(line, group))):
        yield from more_sets(plan, line, group)
    held = plan.session_at(line.start)
    if seen.over and held is not None:
        yield from taken_out(plan, line, held)


def _in_place(plan: Plan, seen: Seen) -> Iterator[EditStep]:
    """What is missing, in a line of its own or in place of a line that was counted beside it."""
    counted = {
        line.start: line for one in seen.levers if one.share is not None for line in plan.lines_at(one.offset)
    }
    for group in seen.parts:
        for number, exercise in enumerate(serving(plan, group)):
            for held in plan.sessions:
                yield from added(plan, held, exercise, number)
            for line in counted.values():
                if not line.is_main and not serves(line, group) and plan.may_touch(line):
                    yield from exchanged(plan, line, exercise, number)
