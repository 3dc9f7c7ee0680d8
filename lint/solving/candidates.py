"""Steps that may help with a finding, by what it says as data: its lines, its group, its numbers."""

from __future__ import annotations

from .amounts import fewer_sets, more_sets, paired, taken_out
from .exercises import added, exchanged, serves, serving
from .offered import offered, other_days

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .judge import Seen
    from .lines import Held, Line, Plan
    from .steps import Step

LINEAR = ("sets", "min")
"""Units of numbers that change in equal steps with the sets of a line."""


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

    def enough(self, steps: Iterator[Step] | tuple[Step, ...]) -> bool:
        """Whether steps may bring the number of the finding to what is wanted."""
        if self._gains is None:
            return True
        return sum(map(self._gain, steps)) >= self._seen.apart - 1e-6

    def _gain(self, step: Step) -> float:
        assert self._gains is not None
        if step.kind in ("sets", "drop", "swap") and step.line >= 0:
            a_set, whole = self._gains.get(step.line, (0.0, 0.0))
            if step.kind == "sets":
                return -a_set * step.by
            return whole
        return 0.0 if step.kind in ("add", "order") else self._seen.apart


def _gains(plan: Plan, seen: Seen) -> dict[int, tuple[float, float]] | None:
    """How far one set less, and all of its sets less, of each line bring down what a finding counted.

    None where it speaks of no sets or minutes above a limit, or of two numbers at a time.
    """
    if not seen.over or seen.unit not in LINEAR or any(one.aside for one in seen.levers):
        return None
    shares = [one for one in seen.levers if one.share is not None]
    if seen.unit == "sets":
        gains: dict[int, tuple[float, float]] = {}
        for lever in shares:
            line = plan.line_at(lever.offset)
            if line is None or not line.sets:
                return None
            a_set, whole = gains.get(line.start, (0.0, 0.0))
            share = lever.share or 0.0
            fewest = min(one.sets.high for one in line.entries if one.sets.high)
            gains[line.start] = a_set + share / fewest, whole + share
        return gains or None
    return _minutes(plan)


def _minutes(plan: Plan) -> dict[int, tuple[float, float]]:
    """The most minutes that one set, and that all sets, of each line can take; with what lies around them."""
    gains = {}
    for ledger in plan.ledgers:
        for visit in ledger.visits:
            for line in plan.lines:
                if line.line.session is visit.session:
                    whole = visit.time_of(line.line).total.high / 60
                    a_set = whole / max(line.sets - 1, 1)
                    old = gains.get(line.start, (0.0, 0.0))
                    gains[line.start] = max(old[0], a_set), max(old[1], whole + AROUND)
    return gains


AROUND = 5
"""Minutes that a line may take beside its sets, at most: the change-over, and warming up for it."""


def _all(plan: Plan, seen: Seen, *, own: bool) -> Iterator[Step]:
    """Every step that may help; ``own`` says whether the finding is of the text before all edits."""
    if own:
        yield from offered(plan, seen)
    lines, sessions = _spoken_of(plan, seen)
    groups = [one for one in seen.parts if one]
    for line in lines:
        if plan.may_touch(line):
            yield from _of_line(plan, seen, line, groups)
    if seen.unit == "min":
        for held in sessions:
            yield from paired(plan, held)
    elif seen.unit != "sets" or not seen.over:
        for held in sessions if seen.unit in ("h", "days") else []:
            yield from other_days(plan, held)
    if not seen.over:
        yield from _in_place(plan, lines, groups)


def _spoken_of(plan: Plan, seen: Seen) -> tuple[list[Line], list[Held]]:
    """The lines that a finding counted or points at, and the sessions that hold them."""
    found: dict[int, Line] = {}
    sessions: dict[int, Held] = {}
    for lever in seen.levers:
        for line in plan.lines_at(lever.offset):
            found[line.start] = line
        held = plan.session_at(lever.offset)
        if held is not None:
            sessions[held.start] = held
    return [found[at] for at in sorted(found)], [sessions[at] for at in sorted(sessions)]


def _of_line(plan: Plan, seen: Seen, line: Line, groups: list[str]) -> Iterator[Step]:
    """Other numbers of sets of a line, and the line taken out, as far as the finding asks for it."""
    group = groups[0] if len(groups) == 1 else ""
    aside = any(one.aside for one in seen.levers)
    sided = seen.counted is not None and seen.unit == "sets" and len(groups) > 1
    if seen.over or aside or sided or seen.counted is None or seen.unit == "h":
        yield from fewer_sets(plan, line, group)
    if seen.unit not in ("min", "h") and (not seen.over or aside or sided):
        yield from more_sets(plan, line, group)
    if seen.over and seen.unit in LINEAR:
        held = plan.session_at(line.start)
        if held is not None:
            yield from taken_out(plan, line, held)


def _in_place(plan: Plan, lines: list[Line], groups: list[str]) -> Iterator[Step]:
    """What is missing, in a line of its own or in place of a line that trains near it."""
    for group in groups:
        exercises = serving(plan, group)
        for exercise in exercises:
            for held in plan.sessions:
                yield from added(plan, held, exercise)
            for line in lines or plan.lines:
                if not line.is_main and not serves(line, group) and plan.may_touch(line):
                    yield from exchanged(plan, line, exercise)
