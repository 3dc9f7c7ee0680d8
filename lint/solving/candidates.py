"""Steps that may help with a finding, by what it says as data: its lines, its group, its numbers."""

from __future__ import annotations

from functools import cache

from ..engine.registry import all_rules
from .amounts import fewer_sets, more_sets, paired, taken_out
from .days import left_out, other_days
from .exercises import added, as_in_other_weeks, exchanged, going_on, serves, serving
from .for_one import for_one
from .gains import LINEAR, TINY, gains
from .lighter import eased, lighter
from .offered import offered, swapping

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from .judge import Seen
    from .lines import Line, Plan, WrittenSession
    from .steps import EditStep


class Candidates:
    """The steps for one finding, the cheapest first, ties in the order of the file.

    ``enough`` says whether some of them could be enough together; where it cannot be worked out, they could.
    """

    __slots__ = ("_gains", "_seen", "steps")

    def __init__(self, plan: Plan, seen: Seen, *, own: bool) -> None:
        self._seen = seen
        found = {step.key: step for step in _all(plan, seen, own=own) if step.spans}
        self.steps = sorted(found.values(), key=lambda one: (one.cost, one.key))
        self._gains = gains(plan, seen)

    def enough(self, steps: Iterable[EditStep]) -> bool:
        """Whether steps may bring the number of the finding to what is wanted."""
        bring = self._gains
        if bring is None:
            return True
        return sum(bring.of(step) for step in steps) >= self._seen.apart - TINY


def _all(plan: Plan, seen: Seen, *, own: bool) -> Iterator[EditStep]:
    """Every step that may help; ``own`` says whether the finding is of the text before all edits."""
    weeks = seen.finding.weeks
    lines, sessions = _spoken_of(plan, seen)
    if own:
        yield from offered(plan, seen)
        yield from lighter(plan, seen)
        yield from eased(plan, seen)
        yield from for_one(plan, seen)
    for line in lines:
        if plan.may_touch(line):
            if seen.unit in LINEAR:
                yield from _of_line(plan, seen, line)
            if own and ((seen.unit == "sets" and seen.over and not seen.wanted) or _is_unsuited(plan, line)):
                yield from as_in_other_weeks(plan, line, weeks)
                yield from swapping(plan, line, (), weeks)
                held = plan.session_at(line.start)
                yield from taken_out(plan, line, held, weeks) if held is not None else ()
    for held in sessions:
        if seen.unit == "min":
            yield from paired(plan, held)
        if seen.unit in ("h", "days") or _family(seen.rule) == "schedule":
            yield from other_days(plan, held, weeks)
            yield from left_out(plan, held, weeks)
    if not seen.over and seen.unit != "min":
        yield from _in_place(plan, seen)


@cache
def _families() -> dict[str, str]:
    return {rule.name: rule.family for rule in all_rules()}


def _family(rule: str) -> str:
    """What a rule is about; empty for one of a team's own."""
    return _families().get(rule, "")


def _is_unsuited(plan: Plan, line: Line) -> bool:
    """Whether an exercise of a line does not suit somebody on the programme."""
    return any(plan.obstacle(one.exercise) for one in line.entries) and not plan.in_rehabilitation


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
    groups, weeks = seen.parts, seen.finding.weeks
    group = groups[0] if len(groups) == 1 else ""
    aside = any(one.aside for one in seen.levers)
    if seen.over or aside:
        yield from fewer_sets(plan, line, group, weeks)
    if seen.unit == "sets" and (aside or (not seen.over and serves(line, group))):
        yield from more_sets(plan, line, group, weeks)
    held = plan.session_at(line.start)
    if seen.over and held is not None:
        yield from taken_out(plan, line, held, weeks)


def _in_place(plan: Plan, seen: Seen) -> Iterator[EditStep]:
    """What is missing, in a line of its own or in place of a line that was counted beside it."""
    weeks = seen.finding.weeks
    counted = {
        line.start: line for one in seen.levers if one.share is not None for line in plan.lines_at(one.offset)
    }
    for group in seen.parts:
        for held in plan.sessions:
            for line in held.lines:
                if serves(line, group) and plan.may_touch(line):
                    yield from going_on(plan, line, held, weeks)
        for number, exercise in enumerate(serving(plan, group)):
            for held in plan.sessions:
                yield from added(plan, held, exercise, number, weeks)
            for line in counted.values():
                if not line.is_main and not serves(line, group) and plan.may_touch(line):
                    yield from exchanged(plan, line, exercise, number, weeks=weeks)
