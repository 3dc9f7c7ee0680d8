"""Steps that write other numbers of sets, take a line out, or pair two small lifts."""

from __future__ import annotations

import re

from ..body.catalogue import COMPOUND
from ..body.equipment import needs
from ..remedies.moves import dropped
from ..syntax.additions import in_braces
from ..syntax.enclosing import way_to
from ..syntax.tree import Sequence
from ..text.places import line_start, line_stop
from ..wording.words import plain, sets_of
from .steps import A_FAR_SET, A_SET, FAR, MAIN, NOTED, PRICE, EditStep, spans_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..counting.set_group import SetGroup
    from .judge import Spans
    from .lines import Line, Plan, WrittenSession

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
    return round((PRICE[kind] + A_SET * abs(sets) + far) * factor)


def other_muscles(line: Line, sets: float, group: str) -> int:
    """Half sets of other groups than the one that is meant, that change with a line's sets."""
    exercise = line.exercise
    weights = (
        {one: exercise.weight(one) for one in (*exercise.direct, *exercise.indirect)} if exercise else {}
    )
    return round(sum(2 * weight * abs(sets) for name, weight in weights.items() if name != group))


def fewer_sets(plan: Plan, line: Line, group: str) -> Iterator[EditStep]:
    """The line with one set less, two less ..."""
    for by in range(1, MOST + 1):
        yield from _sets(plan, line, -by, group)


def more_sets(plan: Plan, line: Line, group: str) -> Iterator[EditStep]:
    """The line with one set more, two more ..., where more work is right for everybody on the programme."""
    if not plan.obstacle(line.exercise):
        for by in range(1, MOST_MORE + 1):
            yield from _sets(plan, line, by, group)


def _sets(plan: Plan, line: Line, by: int, group: str) -> Iterator[EditStep]:
    """A step for each place in which the line says its sets, and one for all of them together."""
    spans = {}
    for entry in line.entries:
        found = _number(entry, by)
        if found is not None:
            spans[found[0]] = found
    choices: list[Spans] = [(one,) for one in spans.values()]
    if len(choices) > 1:
        choices.append(tuple(sorted(spans.values())))
    for several in choices:
        now = ", ".join(dict.fromkeys(words for _, _, words in several))
        label = f"{line.name} ({line.session.name}) {'cut' if by < 0 else 'raised'} to {sets_of(now)}"
        cost = (price("sets", line, by) + len(several) - 1, other_muscles(line, by, group), 0)
        yield EditStep("sets", several, label, [line.start], cost, line=line.start, by=by, adds_work=by > 0)


def _number(entry: SetGroup, by: int) -> tuple[int, int, str] | None:
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
    words = plain(low) if low == high else f"{plain(low)}-{plain(high)}"
    return place.start, place.end, words


def taken_out(plan: Plan, line: Line, held: WrittenSession) -> Iterator[EditStep]:
    """The line taken out of its session, where that keeps some."""
    if line.is_main or line.noted or not line.is_plain or len(held.lines) <= FEWEST_LINES:
        return
    for edit in dropped(line.line.place):
        cost = (price("drop", line, line.sets), other_muscles(line, line.sets, ""), 0)
        label = f"{line.name} ({line.session.name}) taken out"
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
            yield EditStep("pair", (spans,), label, [first.start, second.start], cost)


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
    """Two items of a list, set in by a level below ``superset:``; None where they are no neighbours."""
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
    block = content[begin:stop]
    if content[begin:dash].strip(" ") or "#" in block:
        return None
    indent = content[begin:dash]
    lines = [f"    {row}" if row.strip() else row for row in block.split(plan.line_end)]
    return begin, stop, plan.line_end.join([f"{indent}- superset:", *lines])
