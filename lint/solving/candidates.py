"""Steps that may help with a finding, by what it says as data: its lines, its group, its numbers."""

from __future__ import annotations

from functools import cache

from ..body import catalogue
from ..counting.effort import FAST_KINDS
from ..engine.demands import days_stay
from ..engine.registry import all_rules
from .amounts import fewer_sets, more_sets, paired, taken_out, thinned
from .days import also_on, halved, is_near_maximal, left_out, no_longer_on, other_days
from .easier import eased
from .exercises import added, at_home, exchanged, is_of_one_movement, serves, serving
from .for_one import for_one
from .gains import LINEAR, GainsOfParts, gains, is_missing
from .lighter import lighter
from .minutes import ROOM, usual_minutes
from .offered import offered, offers_another, swapping
from .other_weeks import as_in_other_weeks, going_on, put_back

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..body.catalogue import Exercise
    from ..engine.registry import Rule
    from .judge import Seen
    from .lines import Line, Plan, WrittenSession
    from .steps import EditStep


NO_WORK = ("min", "s", "h", "days between", "%", "kg", "lb")
"""Units of numbers that no further exercise brings up to what is wanted: times between, and loads."""


class Candidates:
    """The steps for one finding, the cheapest first, ties in the order of the file.

    ``enough`` says whether some of them could be enough together; where it cannot be worked out, they could.
    """

    __slots__ = ("_apart", "_gains", "_most", "steps")

    def __init__(self, plan: Plan, seen: Seen, *, own: bool) -> None:
        found: dict[object, EditStep] = {}
        for step in _all(plan, seen, own=own):
            known = found.get(step.key)
            if step.spans and (known is None or step.cost < known.cost):
                found[step.key] = step
        self.steps = sorted(found.values(), key=lambda one: (one.cost, one.key))
        too_long = usual_minutes(plan, seen) - (seen.wanted or 0.0) * ROOM if seen.unit == "min" else 0.0
        self._apart = max(seen.apart, too_long)
        self._gains = gains(plan, seen, self._apart)
        self._most: float | None = None

    def enough(self, steps: Iterable[EditStep]) -> bool:
        """Whether steps may bring the number of the finding to what is wanted."""
        return self._gains is None or self._gains.enough(steps, self._apart)

    def within_reach(self, steps: Iterable[EditStep], further: int, of: Iterable[EditStep]) -> bool:
        """Whether some steps may be enough with as many ``further`` ones ``of`` others."""
        if self._gains is None or isinstance(self._gains, GainsOfParts):
            return True
        if self._most is None:
            self._most = self._gains.most(of)
        return self._gains.enough(steps, self._apart - further * self._most)


def _all(plan: Plan, seen: Seen, *, own: bool) -> Iterator[EditStep]:
    """Every step that may help; ``own`` says whether the finding is of the text before all edits."""
    rule = _rules().get(seen.rule)
    if rule is not None and rule.asks:
        return
    weeks = seen.finding.weeks
    lines, sessions = _spoken_of(plan, seen)
    if own:
        yield from offered(plan, seen)
        yield from lighter(plan, seen)
        yield from eased(plan, seen, _family(seen.rule))
        yield from for_one(plan, seen)
    missing = is_missing(plan, seen)
    another = own and offers_another(seen)  # else one would only hide what is written or counted of it
    for line in lines:
        if plan.may_touch(line):
            eased_only = _family(seen.rule) == "schedule" and is_near_maximal(line, weeks)
            if seen.unit in LINEAR and not missing and not eased_only:
                yield from _of_line(plan, seen, line)
            unsuited = not seen.unit and _is_unsuited(plan, line) and (another or plan.is_spared(line))
            if own and (unsuited or _is_not_to_be(seen) or _is_too_often(seen, line)):
                yield from _given_way(plan, seen, line)
    group = seen.parts[0] if len(seen.parts) == 1 else ""
    if seen.over and seen.unit in LINEAR and not any(one.aside for one in seen.levers):
        yield from thinned(plan, lines, group, weeks)
    for held in sessions:
        if seen.unit == "min":
            yield from paired(plan, held)
        if seen.unit in ("h", "days") or _family(seen.rule) == "schedule":
            yield from other_days(plan, held, weeks) if not days_stay(seen.rule) else ()
            at = [plan.line_at(one.offset) for one in seen.levers]
            named = [line for line in held.lines if line in at]
            yield from halved(plan, held, named or held.lines, weeks)
            yield from left_out(plan, held, weeks)
            yield from no_longer_on(plan, held) if own else ()
        if own and seen.unit == "days" and not seen.over:
            yield from also_on(plan, held)
    if not seen.over and seen.unit not in NO_WORK and (seen.unit or _family(seen.rule) != "schedule"):
        yield from _in_place(plan, seen, seen.parts)
    elif seen.unit == "sets" and any(one.aside for one in seen.levers):
        yield from _in_place(plan, seen, _weak_side(plan, seen))


def _given_way(plan: Plan, seen: Seen, line: Line) -> Iterator[EditStep]:
    """Another exercise for one that does not suit; the line taken out where that is what is asked for, or
    nothing suits.
    """
    weeks = seen.finding.weeks
    swaps = [*as_in_other_weeks(plan, line, weeks), *swapping(plan, line, (), weeks)]
    yield from swaps
    if line.names_by_week:
        return
    held = plan.session_at(line.start)
    if held is not None and (not swaps or seen.over or plan.is_spared(line)):
        yield from taken_out(plan, line, held, weeks, even_main=True)


@cache
def _rules() -> dict[str, Rule]:
    return {rule.name: rule for rule in all_rules()}


def _family(rule: str) -> str:
    """What a rule is about; empty for one of a team's own."""
    known = _rules().get(rule)
    return "" if known is None else known.family


def _is_not_to_be(seen: Seen) -> bool:
    """Whether a finding wants no set at all of what it counts."""
    return seen.unit == "sets" and seen.over and not seen.wanted


def _is_too_often(seen: Seen, line: Line) -> bool:
    """Whether a finding on days, without a number, points at jumps or throws: they need not be on each."""
    fast = line.exercise is not None and line.exercise.kind in FAST_KINDS
    return fast and not seen.unit and _family(seen.rule) == "schedule"


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
    if seen.over and held is not None and not aside:
        yield from taken_out(plan, line, held, weeks)


def _elsewhere(plan: Plan, what: str) -> list[WrittenSession]:
    """The sessions that train something not at all: where a further day is wanted."""
    return [held for held in plan.sessions if not any(serves(line, what) for line in held.lines)]


def _homes(plan: Plan, seen: Seen, what: str, exercise: Exercise) -> list[WrittenSession]:
    """The sessions that a new line may come to; on other days too, where no number of sets is asked for."""
    if seen.unit == "days":
        return _elsewhere(plan, what)
    homes = at_home(plan, exercise, seen.finding.weeks)
    further = _elsewhere(plan, what) if not seen.unit else []
    return [*homes, *(held for held in further if held not in homes)]


def _weak_side(plan: Plan, seen: Seen) -> tuple[str, ...]:
    """What trains the weaker side of an opposing pair that a finding compares; nothing for other findings."""
    aside = [line for one in seen.levers if one.aside and (line := plan.line_at(one.offset)) is not None]
    for pair in catalogue.pairs:
        if pair.name == seen.group and aside:
            return max(
                (side.trained_by for side in pair.sides),
                key=lambda several: sum(serves(line, what) for line in aside for what in several),
            )
    return ()


def _in_place(plan: Plan, seen: Seen, wanted: Iterable[str]) -> Iterator[EditStep]:
    """What is missing, in a line of its own or in place of a line that was counted beside it."""
    weeks, fell_out = seen.finding.weeks, is_missing(plan, seen)
    is_compared = any(one.aside for one in seen.levers)  # there its like would only be counted otherwise
    counted = {
        line.start: line
        for one in seen.levers
        if one.share is not None and not (seen.over and one.aside)
        for line in plan.lines_at(one.offset)
    }
    for group in wanted:
        for held in plan.sessions:
            for line in held.lines:
                if serves(line, group) and plan.may_touch(line):
                    yield from going_on(plan, line, held, weeks, fell_out=fell_out)
                    yield from put_back(plan, line, group, weeks) if fell_out else ()
        for number, exercise in enumerate(serving(plan, group)):
            for held in _homes(plan, seen, group, exercise):
                yield from added(plan, held, exercise, number, weeks)
            for line in counted.values():
                if line.is_main or serves(line, group) or not plan.may_touch(line):
                    continue
                if not (is_compared and is_of_one_movement(line.exercise, exercise)):
                    yield from exchanged(plan, line, exercise, number, weeks=weeks)
