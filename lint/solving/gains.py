"""What steps bring to the number of a finding at most: what cannot be enough is never reviewed."""

from __future__ import annotations

from .exercises import serves, serving, trains, would_serve

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from .judge import Seen
    from .lines import Line, Plan
    from .steps import EditStep

LINEAR = ("sets", "min")
"""Units of numbers that change in equal steps with the sets of a line."""

TINY = 1e-6

FEW = 8
"""Sets of both sides together from which on a share of them is surely judged."""


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

    def most(self, steps: Iterable[EditStep]) -> float:
        """What the best of some steps brings."""
        return max(map(self.of, steps), default=0.0)

    def enough(self, steps: Iterable[EditStep], apart: float) -> bool:
        """Whether steps may bring the number as far as it is apart from what is wanted."""
        return sum(map(self.of, steps)) >= apart - TINY

    def of(self, step: EditStep) -> float:
        """What a step brings at most."""
        if step.line < 0 and step.kind in ("swap", "drop"):
            return self.others
        held = [self.by_line.get(one, (0.0, 0.0)) for one in step.lines]
        a_set, whole = sum(one for one, _ in held), sum(one for _, one in held)
        if self.group and step.exercise is not None:
            brings = max(whole if step.kind == "swap" else 0.0, self.a_set * step.by)
            return brings if trains(step.exercise, self.group) else 0.0
        if step.kind == "sets":
            return -a_set * step.by if self.over else a_set * step.by
        if step.kind in ("drop", "swap"):
            return whole if self.over or step.kind == "swap" else 0.0
        if step.kind in ("add", "order"):
            return self.a_set * step.by
        return self.others


class GainsOfTwo:
    """The same where one side is held against another: less of the first helps, and more of the second.

    ``own`` and ``aside`` hold what all sets of a line bring to the two; ``factor`` is how many times a set of
    the second counts; ``often`` how often a line is done in a week at most.
    """

    __slots__ = ("_aside", "_few", "_own", "_plan", "factor", "often", "others")

    def __init__(self, plan: Plan, seen: Seen, factor: float) -> None:
        self._plan = plan
        self._own: dict[int, float] = {}
        self._aside: dict[int, float] = {}
        self.factor = factor
        self.others = seen.apart
        self.often = max((len(days) for held in plan.sessions for days in held.by_week.values()), default=1)
        self._few = sum(one.share for one in seen.levers if one.share is not None) < FEW
        for one in seen.levers:
            line = plan.line_at(one.offset)
            if one.share is not None and line is not None:
                side = self._aside if one.aside else self._own
                side[line.start] = side.get(line.start, 0.0) + one.share

    def most(self, steps: Iterable[EditStep]) -> float:
        """What the best of some steps brings."""
        return max(map(self.of, steps), default=0.0)

    def enough(self, steps: Iterable[EditStep], apart: float) -> bool:
        """Whether steps may bring the number as far as it is apart from what is wanted."""
        return sum(map(self.of, steps)) >= apart - TINY

    def of(self, step: EditStep) -> float:
        """What a step brings at most."""
        if self._few or step.kind not in ("sets", "drop", "swap", "add"):
            return self.others
        own = self._own.get(step.line, 0.0)
        new = step.by if step.by > 0 else 0.0
        if step.kind == "sets":
            helps = not {*step.lines}.isdisjoint(self._aside if new else self._own)
            return (self.factor * new or -step.by) * self.often if helps else 0.0
        if step.kind == "drop":
            return own if step.line >= 0 else self.others
        held = next((line.sets for line in self._plan.lines if line.start == step.line), 0.0)
        more = max(new, held if step.kind == "swap" else 0.0)
        return own + self.factor * self.often * more


class GainsOfParts:
    """The same where things are missing altogether: each of them must be trained by a step."""

    __slots__ = ("_parts",)

    def __init__(self, parts: list[str]) -> None:
        self._parts = parts

    def enough(self, steps: Iterable[EditStep], _apart: float) -> bool:
        """Whether each thing is trained by some step; one that is no such step may do anything."""
        steps = list(steps)
        if any(one.exercise is None and one.kind not in ("sets", "drop") for one in steps):
            return True
        news = [one.exercise for one in steps if one.exercise is not None]
        return all(any(trains(exercise, part) for exercise in news) for part in self._parts)

    def most(self, _steps: Iterable[EditStep]) -> float:
        """What any step brings at most: as much as is wanted."""
        return float("inf")


def is_missing(plan: Plan, seen: Seen) -> bool:
    """Whether a finding says that things are missing altogether, each of which some exercise trains."""
    if seen.over or seen.counted is None or (seen.counted and seen.unit == "sets"):
        return False
    here = [one for line in plan.lines for one in line.exercises_in(seen.finding.weeks)]
    return all(
        part and serving(plan, part) and not any(would_serve(one, part) for one in here)
        for part in seen.parts
    )


def gains(plan: Plan, seen: Seen, apart: float) -> Gains | GainsOfTwo | GainsOfParts | None:
    """What steps bring where a finding speaks of sets or minutes; None where that is not to be worked out.

    ``apart`` is how far its number is from what is wanted.
    """
    if is_missing(plan, seen):
        return GainsOfParts(seen.parts)
    if seen.unit not in LINEAR:
        return None
    aside = sum(one.share or 0.0 for one in seen.levers if one.aside)
    if any(one.aside for one in seen.levers):
        return GainsOfTwo(plan, seen, (seen.wanted or 0.0) / aside) if aside and seen.over else None
    if not seen.over:
        return _gains_below(plan, seen)
    if seen.unit == "min":
        return Gains(_minutes(plan), apart, over=True)  # others may do it all
    found: dict[int, tuple[float, float]] = {}
    for lever in seen.levers:
        line = plan.line_at(lever.offset)
        if lever.share is None:
            continue
        if line is None or not line.sets:
            return None
        a_set, whole = found.get(line.start, (0.0, 0.0))
        fewest = _fewest(line, seen.finding.weeks)
        found[line.start] = a_set + lever.share / fewest, whole + lever.share
    return Gains(found, seen.apart, over=True) if found else None


def _fewest(line: Line, weeks: Iterable[int]) -> float:
    """The fewest sets that a line holds in some weeks; in any, where none is named."""
    held = [one for week in weeks or line.held for one in line.held.get(week, ())] or line.entries
    return min((one.sets.high for one in held if one.sets.high), default=line.sets)


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
