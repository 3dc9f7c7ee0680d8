"""Steps that lower a load in the weeks that are meant."""

from __future__ import annotations

import re

from ..remedies.some_weeks import own_map, value_in
from ..syntax.enclosing import way_to
from ..syntax.numbers import NUMBER
from ..syntax.tree import Mapping, Scalar
from ..wording.words import plain
from .amounts import price
from .offered import HEAVY_GOALS
from .steps import PRICE, EditStep

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..findings.finding import Edit
    from ..model.week_edits import WeekMap
    from ..text.places import Place
    from .judge import Seen
    from .lines import Line, Plan

STEPS = {"%": 0.5, "kg": 2.5, "lb": 5.0}
"""To what a lowered load is rounded down, by its unit (common practice, no source)."""

CLEARLY = 10
"""% by which a load is lowered where nothing beside it says how far (common practice, no source)."""


def lighter(plan: Plan, seen: Seen) -> Iterator[EditStep]:
    """A lower load at the place of a finding, in one week of a map: as other lines have it in that week, as
    the weeks around it say, or clearly less. Never a higher one.
    """
    place = seen.finding.place
    if place.through or seen.unit == "weeks":
        return  # weeks on end are not made easier by one load
    yield from _lower(plan, place)
    for edit in seen.finding.edits:
        if edit.place.key != place.key and not edit.further:
            yield from _lower(plan, edit.place, is_slip=True)


def _lower(plan: Plan, place: Place, *, is_slip: bool = False) -> Iterator[EditStep]:
    """A lower load at a place; with ``is_slip`` only one between those around it, if both are lower."""
    if not plan.holds(place):
        return
    ways = way_to(place)
    if not any(step.key == "load" for step in ways):
        return
    node, group = ways[-1].node, ways[-1].group
    if not isinstance(node, Scalar) or node.start != place.start:
        return
    words = plan.text.content[node.start : node.end]
    now = single(words)
    line = plan.line_at(place.start)
    if now is None or (line is not None and not plan.may_touch(line)):
        return
    held = own_map(group) if isinstance(group, Mapping) else None
    key = str(ways[-1].key)
    around = _between(plan, held, key, words)
    wanted = [*_like_others(plan, held, key, words), *around]
    wanted += [rounded(now * (100 - CLEARLY) / 100, words, beside(held))]
    if is_slip:
        wanted = around[:1] if len(around) > 2 and max(around) < now else []
    about = (
        f"{line.name} ({line.session.name})" if line is not None else f"load for {_whose(plan, place.start)}"
    )
    for number, less in enumerate(dict.fromkeys(one for one in wanted if 0 < one < now)):
        new = NUMBER.sub(plain(less), words, count=1) if not words.startswith("2 x") else _second(words, less)
        within = f" in week {_week(line, key)}" if held is not None and key.isdigit() else ""
        cost = (price("value", line) if line is not None else PRICE["value"]) + number
        if is_slip:  # for strength it comes before fewer repetitions, else after the load that is offered
            cost += -1 if plan.header.goal in HEAVY_GOALS else 1
        touches = [line.start if line is not None else node.start]
        yield EditStep(
            "value", ((node.start, node.end, new),), f"{about}: {new}{within}", touches, (cost, 0, 0)
        )


def _week(line: Line | None, key: str) -> int:
    return int(key) + (line.session.block.first - 1 if line is not None else 0)


def _whose(plan: Plan, offset: int) -> str:
    """The exercise of an adjustment that holds an offset, as it is written."""
    for step in reversed(way_to(plan.text.place(offset, offset))):
        if isinstance(step.group, Mapping) and "exercise" in step.group.entries:
            value = step.group.entries["exercise"].value
            return value.text if isinstance(value, Scalar) else "it"
    return "it"


def single(words: str) -> float | None:
    """The number of a load that holds one, beside how many dumbbells; None for any other."""
    plain_words = re.sub(r"^2 ?x ", "", words)
    found = NUMBER.findall(plain_words)
    return float(found[0]) if len(found) == 1 else None


def _second(words: str, less: float) -> str:
    head, _, rest = words.partition("x")
    return f"{head}x{NUMBER.sub(plain(less), rest, count=1)}"


def _unit(words: str) -> str:
    return " ".join(NUMBER.sub("", words).split())


def rounded(load: float, words: str, around: Iterable[float] = ()) -> float:
    """A load rounded down: to the largest step in which the loads ``around`` it are written, if any are."""
    usual = next((step for unit, step in STEPS.items() if unit in words), 0.5)
    around = list(around)
    step = next((one for one in (5.0, 2.5, 1.0) if around and not any(load % one for load in around)), usual)
    return load // step * step


def _like_others(plan: Plan, held: WeekMap | None, key: str, words: str) -> list[float]:
    """The loads of other lines in the same week, the nearest first, of lines that go up alike before."""
    if held is None:
        return []
    own = _by_week(held)
    weeks = held.weeks.get(key, [])
    found: list[tuple[int, float]] = []
    for line in plan.lines:
        entry = line.node.entries.get("load")
        other = own_map(entry.value) if entry is not None else None
        if other is None or other.group is held.group or not weeks:
            continue
        theirs = _by_week(other)
        load = theirs.get(weeks[0], "")
        number = single(load)
        if number is None or _unit(load) != _unit(words) or "%" not in words:
            continue
        alike = sum(own.get(week) == one for week, one in theirs.items())
        found.append((-alike, -number))
    return [-number for _, number in sorted(found)]


def _by_week(held: WeekMap) -> dict[int, str]:
    content = held.group.source.content
    return {
        week: content[held.group.entries[key].value.start : held.group.entries[key].value.end]
        for key, several in held.weeks.items()
        for week in several
    }


def beside(held: WeekMap | None) -> list[float]:
    """The numbers of all loads of a map."""
    found = [single(one) for one in _by_week(held).values()] if held is not None else []
    return [one for one in found if one is not None]


def _between(plan: Plan, held: WeekMap | None, key: str, words: str) -> list[float]:
    """The load between the weeks around, that before and that after; easy weeks are passed over."""
    weeks = held.weeks.get(key, []) if held is not None else []
    if held is None or not weeks:
        return []
    easy = {week.in_block for ledger in plan.ledgers for week in ledger.weeks if week.is_deload}
    known = {
        week: number
        for week, one in _by_week(held).items()
        if week not in weeks and week not in easy and _unit(one) == _unit(words)
        if (number := single(one)) is not None
    }
    before = [known[week] for week in sorted(known) if week < weeks[0]]
    after = [known[week] for week in sorted(known) if week > weeks[-1]]
    middle = rounded((before[-1] + after[0]) / 2, words, known.values()) if before and after else 0
    found = [middle] if middle else []
    return [*found, *before[-1:], *after[:1]]


def eased_load(plan: Plan, line: Line, weeks: list[int]) -> list[Edit]:
    """Edits that lower a line's load in some weeks to what the heaviest other lines have, or clearly."""
    entry = line.node.entries.get("load")
    held = own_map(entry.value) if entry is not None else None
    if held is None:
        return []
    by_week = _by_week(held)
    for number in line.in_block(weeks):
        words = by_week.get(number, "")
        now = single(words)
        key = next((key for key, several in held.weeks.items() if number in several), "")
        if now is None or not key:
            return []
        others = [one for one in _like_others(plan, held, key, words) if one < now * (100 - CLEARLY) / 100]
        less = max(others, default=rounded(now * (100 - 2 * CLEARLY) / 100, words, beside(held)))
        new = NUMBER.sub(plain(less), words, count=1)
        return value_in(line.node, "load", line.in_block(weeks), line.in_block(line.held), new) or []
    return []
