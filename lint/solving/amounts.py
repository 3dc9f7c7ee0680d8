"""Steps that write other numbers of sets, take a line out, or pair two small lifts."""

from __future__ import annotations

import re

from ..body.catalogue import COMPOUND, groups
from ..body.equipment import needs
from ..remedies.moves import dropped
from ..remedies.some_weeks import kept_to, value_in
from ..syntax.additions import in_braces
from ..syntax.enclosing import way_to
from ..syntax.rewrites import key_out
from ..syntax.tree import Sequence
from ..text.places import line_start, line_stop
from ..wording.words import listed, plain, sets_of, week_list
from .judge import with_spans
from .steps import (
    A_FAR_SET,
    A_SET,
    ALONE,
    FAR,
    LARGE,
    MAIN,
    NOTED,
    PRICE,
    WIDER,
    EditStep,
    are_apart,
    spans_of,
    spans_of_all,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..body.catalogue import Exercise
    from ..counting.set_group import SetGroup
    from ..text.places import Place
    from .judge import Spans
    from .lines import Line, Plan, WrittenSession

    Written = tuple[Spans, str, set[int]]
    """Where a number is written anew, its words, and the weeks in which it then holds."""

FEWEST, MOST = 2, 8
"""Sets that a line keeps at least, and is given at most: a line of one set is another programme."""

MOST_MORE = 4
"""Sets that are added to a line at most."""

FEWEST_LINES = 3
"""Lines that a session keeps at least."""


def price(kind: str, line: Line, sets: float = 0) -> int:
    """What a step on a line costs by its kind, and by how many sets it changes."""
    far = A_FAR_SET * max(abs(sets) - FAR, 0)
    factor = (MAIN if line.is_main else 1) * (NOTED if line.noted else 1)
    heavy = line.exercise is not None and line.exercise.capacity == "heavy"
    large = LARGE if kind == "swap" and heavy and is_large(line.exercise) else 0
    return round((PRICE[kind] + A_SET * abs(sets) + far + large) * factor)


def is_large(exercise: Exercise | None) -> bool:
    """Whether an exercise is a large lift, in which several joints share the work."""
    return exercise is not None and exercise.pattern in COMPOUND


def alone(plan: Plan, line: Line, weeks: Iterable[int] = ()) -> int:
    """What it costs more that a line gives way which is the only one for its movement in some week, and once
    more where it is the only one for the muscle that it trains first, and its neighbours.
    """
    exercise = line.exercise
    if exercise is None or not is_large(exercise):
        return 0
    others = [(one, one.exercise) for one in plan.lines if one is not line and one.exercise is not None]
    moving = [one for one, other in others if other.pattern == exercise.pattern]
    first = _with_neighbours(exercise.direct[0]) if exercise.direct else set()
    training = [one for one, other in others if not first or first & set(other.direct)]
    weeks = list(weeks or line.held)
    return sum(
        ALONE
        for several in (moving, training)
        if not all(any(week in one.held for one in several) for week in weeks)
    )


def _with_neighbours(muscle: str) -> set[str]:
    """A muscle with those that coaches count with it, as the parts of the chest."""
    return {muscle, *(one for members in groups.values() if muscle in members for one in members)}


def other_muscles(line: Line, sets: float, group: str) -> int:
    """Half sets of other groups than the one that is meant, that change with a line's sets."""
    exercise = line.exercise
    weights = (
        {one: exercise.weight(one) for one in (*exercise.direct, *exercise.indirect)} if exercise else {}
    )
    return round(sum(2 * weight * abs(sets) for name, weight in weights.items() if name != group))


def fewer_sets(plan: Plan, line: Line, group: str, weeks: Iterable[int] = ()) -> Iterator[EditStep]:
    """The line with one set less, two less ..., in all weeks and in those that are meant alone."""
    for by in range(1, MOST + 1):
        yield from _sets(plan, line, -by, group, tuple(weeks))


def more_sets(plan: Plan, line: Line, group: str, weeks: Iterable[int] = ()) -> Iterator[EditStep]:
    """The line with one set more, two more ..., where more work is right for everybody on the programme."""
    if not plan.obstacle(line.exercise):
        for by in range(1, MOST_MORE + 1):
            yield from _sets(plan, line, by, group, tuple(weeks))


def _sets(plan: Plan, line: Line, by: int, group: str, weeks: tuple[int, ...]) -> Iterator[EditStep]:
    """A step for each place in which the line says its sets, and one for all of them together.

    Where a finding means some of its weeks, they are written for those; for all weeks it costs more.
    """
    partners = paired_with(plan, line)
    if any(one.start < line.start or not plan.may_touch(one) for one in partners):
        return  # the first of a pair speaks for all of it
    meant = plan.meant(weeks, line.held)
    found = list(_numbers(line, by, meant))
    choices: list[tuple[list[Written], int]] = [([one], 0) for one in found]
    choices += [(found, 0)] if len(found) > 1 else []
    if len(meant) < len(line.held):
        choices += [(list(_numbers(line, by, list(line.held))), WIDER)]
    for several, wider in choices:
        within = "" if wider else in_weeks_of(line, [week for _, _, own in several for week in own])
        others = [one for other in partners for one in _numbers(other, by, _weeks_of(several))]
        spans = tuple(sorted(span for spans, _, _ in (*several, *others) for span in spans))
        if not several or not are_apart(spans) or (partners and len(others) < len(partners)):
            continue
        now = ", ".join(dict.fromkeys(words for _, words, _ in several))
        names = listed([one.name for one in (line, *partners)])
        label = f"{names} ({line.session.name}) {'cut' if by < 0 else 'raised'} to {sets_of(now)}{within}"
        first = price("sets", line, by) + len(several) - 1 + wider + _under_three(line, by)
        cost = (first, other_muscles(line, by, group), 0)
        touches = [line.start, *(one.start for one in partners)]
        all_of_it = [line.start, *(one.start for one in partners)]
        yield EditStep(
            "sets", spans, label, touches, cost, line=line.start, by=by, adds_work=by > 0, lines=all_of_it
        )


def thinned(plan: Plan, lines: Iterable[Line], group: str, weeks: Iterable[int]) -> Iterator[EditStep]:
    """A set less, or two less, on each of several lines: a large one keeps three, a small one two."""
    several = [one for one in lines if plan.may_touch(one)]
    for by in (1, 2):
        spans: list[tuple[int, int, str]] = []
        cut: list[Line] = []
        off: dict[int, int] = {}
        for line in several:
            meant = plan.meant(weeks, line.held)
            less = min(by, *(_to_give(one) for one in (line, *paired_with(plan, line))))
            written = list(_numbers(line, -less, meant)) if less > 0 else []
            if written:
                spans += [span for one, _, _ in written for span in one]
                cut.append(line)
                off[line.start] = less
        apart = tuple(sorted(spans))
        if len(cut) < FEWEST_LINES or not are_apart(apart) or any(_is_halved(plan, one, cut) for one in cut):
            continue
        most = max(off.values())
        names = "each line" if len(cut) == len(several) else f"{len(cut)} lines"
        where = listed(list(dict.fromkeys(one.session.name for one in cut)))
        label = f"{'a set' if most == 1 else 'up to two sets'} fewer on {names} of {where}"
        other = sum(other_muscles(one, off[one.start], group) for one in cut)
        cost = (PRICE["sets"] + A_THIN_LINE * len(cut) + A_SET * sum(off.values()), other, 0)
        starts = [one.start for one in cut]
        yield EditStep("sets", apart, label, starts, cost, line=starts[0], by=-most, lines=starts)


def _to_give(line: Line) -> int:
    """The sets that a line can give: a large lift keeps three, unless it is done in turn with another."""
    large = is_large(line.exercise) and line.line.paired is None
    return int(line.sets) - (KEPT_LARGE if large else FEWEST)


def _is_halved(plan: Plan, line: Line, cut: list[Line]) -> bool:
    """Whether a pair would be cut on one side alone."""
    return any(one not in cut for one in paired_with(plan, line))


KEPT_LARGE = 3
"""Sets that a large lift keeps where each line gives some (common practice, no source)."""

A_THIN_LINE = 6
"""What each line costs that gives a set with others."""


def _under_three(line: Line, by: int) -> int:
    """What it costs more that a large lift keeps fewer than three sets."""
    return UNDER_THREE if is_large(line.exercise) and line.sets >= KEPT_LARGE > line.sets + by else 0


UNDER_THREE = 20


def paired_with(plan: Plan, line: Line) -> list[Line]:
    """The other lines of a superset or complex, done in turn: they have as many sets as it has."""
    together = line.line.paired
    return (
        []
        if together is None
        else [one for one in plan.lines if one is not line and one.line.paired is together]
    )


def _weeks_of(several: list[Written]) -> list[int]:
    return sorted(week for _, _, own in several for week in own)


def in_weeks_of(line: Line, weeks: Iterable[int]) -> str:
    """``in weeks 5-8`` where a step leaves other weeks of a line as they are; else nothing."""
    weeks = set(weeks)
    return f" in {week_list(sorted(weeks))}" if weeks and weeks < set(line.held) else ""


def _numbers(line: Line, by: int, weeks: list[int]) -> Iterator[Written]:
    """Each number of sets that a line holds itself in some weeks, changed; with its weeks."""
    places: dict[int, tuple[SetGroup, set[int]]] = {}
    for week, several in line.held.items():
        for entry in several:
            place = entry.work.places.get("sets")
            if place is not None and line.start <= place.start < line.end:
                known, own = places.setdefault(place.start, (entry, set()))
                own.add(week)
                if entry.sets.high > known.sets.high:
                    places[place.start] = entry, own
    for entry, own in places.values():
        changed = own & set(weeks)
        found = _number(entry, by)
        if found is None or not changed:
            continue
        place, words = found
        if changed == own:
            yield ((place.start, place.end, words),), words, changed
            continue
        held = line.node.entries.get("sets")
        if held is None or not held.value.start <= place.start < held.value.end:
            continue
        edits = value_in(line.node, "sets", line.in_block(changed), line.in_block(line.held), words)
        if edits:
            yield tuple((one.place.start, one.place.end, one.words) for one in edits), words, changed


def _number(entry: SetGroup, by: int) -> tuple[Place, str] | None:
    """The number of sets of a group, changed; None where the line does not hold it as a number of its own."""
    place, work = entry.work.places.get("sets"), entry.work
    if place is None or not re.fullmatch(r"[0-9]+(?:-[0-9]+)?", place.excerpt):
        return None
    each = work.reps is not None and work.reps.each_set
    if each or (work.load is not None and len(work.load.values) > 1):
        return None
    if not any(step.key == "sets" for step in way_to(place)):
        return None
    low, high = entry.sets.low + by, entry.sets.high + by
    if low < FEWEST or (by > 0 and high > MOST):
        return None
    return place, plain(low) if low == high else f"{plain(low)}-{plain(high)}"


def taken_out(
    plan: Plan, line: Line, held: WrittenSession, weeks: Iterable[int] = (), *, even_main: bool = False
) -> Iterator[EditStep]:
    """The line taken out of its session, or of it in the weeks that are meant, where that keeps some."""
    meant = plan.meant(weeks, line.held, exactly=even_main)
    if not meant or not line.is_plain or (line.is_main and not even_main):
        return
    left = min(sum(week in one.held for one in held.lines) for week in meant)
    label = f"{line.name} ({line.session.name}) taken out"
    cost = (price("drop", line, line.sets) + alone(plan, line, meant), other_muscles(line, line.sets, ""), 0)
    if len(meant) < len(line.held):
        edits = kept_to(line.node, line.in_block(set(line.held) - set(meant)))
        if left > FEWEST_LINES - 1 and edits:
            spans = spans_of_all(edits, plan.line_end)
            label += in_weeks_of(line, meant)
            part = (cost[0] - WIDER, cost[1], 0)
            yield EditStep("drop", spans, label, [line.start], part, line=line.start, by=-line.sets)
        return
    if line.noted or left <= FEWEST_LINES:
        return
    for edit in dropped(line.line.place):
        spans = spans_of(edit, plan.line_end)
        yield EditStep("drop", spans, label, [line.start], cost, line=line.start, by=-line.sets)


def paired(plan: Plan, held: WrittenSession) -> Iterator[EditStep]:
    """Two small lifts that follow one another and share nothing, as a superset."""
    for first, second in zip(held.lines, held.lines[1:], strict=False):
        if not (plan.may_touch(first) and plan.may_touch(second) and share_nothing(first, second)):
            continue
        spans = _pair(plan, first, second)
        if spans is not None:
            label = f"{first.name} and {second.name} ({held.session.name}) as a superset"
            cost = (price("pair", first) + 1, 0, 0)
            said = "rest after both" if "rest" in first.node.entries else ""
            yield EditStep("pair", (spans,), label, [first.start, second.start], cost, said=said)


def share_nothing(first: Line, second: Line) -> bool:
    """Whether two lines are small lifts of as many sets that train, hold and occupy nothing in common."""
    one, two = first.exercise, second.exercise
    if one is None or two is None or not (first.is_plain and second.is_plain):
        return False
    if first.is_main or second.is_main or first.noted or second.noted:
        return False
    small = not {one.pattern, two.pattern} & set(COMPOUND) and one.kind == two.kind == "dynamic"
    muscles = {*one.direct, *one.indirect} & {*two.direct, *two.indirect}
    pieces = set(needs(one)) & set(needs(two)) - {"dumbbell", "band"}
    alike = [entry.sets for entry in first.entries] == [entry.sets for entry in second.entries]
    return small and not muscles and not pieces and alike


def _pair(plan: Plan, first: Line, second: Line) -> tuple[int, int, str] | None:
    """Two items of a list, set in below ``superset:``, with rest after the second alone; None where
    they are no neighbours.
    """
    group = next(
        (step.group for step in reversed(way_to(first.line.place)) if isinstance(step.group, Sequence)), None
    )
    content = plan.text.content
    if group is None or in_braces(group):
        return None
    starts = [item.start for item in group.items]
    if first.start not in starts or second.start not in starts:
        return None
    if starts.index(second.start) != starts.index(first.start) + 1:
        return None
    dash = content.rfind("-", group.start, first.start)
    begin, stop = line_start(content, dash), line_stop(content, second.end)
    rest = spans_of_all(key_out(first.node, "rest") if "rest" in first.node.entries else (), plan.line_end)
    block = with_spans(content[:stop], rest)[begin:]
    if content[begin:dash].strip(" ") or "#" in block:
        return None
    indent = content[begin:dash]
    lines = [f"    {row}" if row.strip() else row for row in block.split(plan.line_end)]
    return begin, stop, plan.line_end.join([f"{indent}- superset:", *lines])
