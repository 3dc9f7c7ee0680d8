"""Steps that lower a load in the weeks that are meant, and that ease a week as the other easy weeks are."""

from __future__ import annotations

import re
from itertools import pairwise

from ..remedies.some_weeks import own_map, value_in
from ..syntax.enclosing import way_to
from ..syntax.numbers import NUMBER
from ..syntax.tree import Mapping, Scalar
from ..wording.words import plain
from .amounts import price
from .steps import PRICE, EditStep, are_apart, spans_of_all

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..counting.set_group import SetGroup
    from ..counting.week import Week
    from ..findings.finding import Edit
    from ..model.week_edits import WeekMap
    from .judge import Seen
    from .lines import Line, Plan

STEPS = {"%": 0.5, "kg": 2.5, "lb": 5.0}
"""To what a lowered load is rounded down, by its unit (common practice, no source)."""

CLEARLY = 10
"""% by which a load is lowered where nothing beside it says how far (common practice, no source)."""

FEWER, LEFT = 0.5, 2
"""The share of the sets that stays in an easy week, and the repetitions more in reserve, where the programme
has no other easy week (common practice, no source)."""


def lighter(plan: Plan, seen: Seen) -> Iterator[EditStep]:
    """A lower load at the place of a finding, in one week of a map: as other lines have it in that week, as
    the weeks around it say, or clearly less. Never a higher one.
    """
    place = seen.finding.place
    if place.text is not plan.text or place.through:
        return
    ways = way_to(place)
    if not any(step.key == "load" for step in ways):
        return
    node, group = ways[-1].node, ways[-1].group
    if not isinstance(node, Scalar) or node.start != place.start:
        return
    words = plan.text.content[node.start : node.end]
    now = _single(words)
    line = plan.line_at(place.start)
    if now is None or (line is not None and not plan.may_touch(line)):
        return
    held = own_map(group) if isinstance(group, Mapping) else None
    key = str(ways[-1].key)
    wanted = [*_like_others(plan, held, key, words), *_between(plan, held, key, words)]
    wanted += [_rounded(now * (100 - CLEARLY) / 100, words, _beside(held))]
    about = (
        f"{line.name} ({line.session.name})" if line is not None else f"load for {_whose(plan, place.start)}"
    )
    for number, less in enumerate(dict.fromkeys(one for one in wanted if 0 < one < now)):
        new = NUMBER.sub(plain(less), words, count=1) if not words.startswith("2 x") else _second(words, less)
        within = f" in week {_week(line, key)}" if held is not None and key.isdigit() else ""
        cost = (price("value", line) if line is not None else PRICE["value"]) + number
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


def _single(words: str) -> float | None:
    """The number of a load that holds one, beside how many dumbbells; None for any other."""
    plain_words = re.sub(r"^2 ?x ", "", words)
    found = NUMBER.findall(plain_words)
    return float(found[0]) if len(found) == 1 else None


def _second(words: str, less: float) -> str:
    head, _, rest = words.partition("x")
    return f"{head}x{NUMBER.sub(plain(less), rest, count=1)}"


def _unit(words: str) -> str:
    return " ".join(NUMBER.sub("", words).split())


def _rounded(load: float, words: str, beside: Iterable[float] = ()) -> float:
    """A load rounded down: to the largest step in which the loads ``beside`` it are written, if any are."""
    usual = next((step for unit, step in STEPS.items() if unit in words), 0.5)
    beside = list(beside)
    step = next((one for one in (5.0, 2.5, 1.0) if beside and not any(load % one for load in beside)), usual)
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
        number = _single(load)
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


def _beside(held: WeekMap | None) -> list[float]:
    """The numbers of all loads of a map."""
    found = [_single(one) for one in _by_week(held).values()] if held is not None else []
    return [one for one in found if one is not None]


def _between(plan: Plan, held: WeekMap | None, key: str, words: str) -> list[float]:
    """The load between the weeks around, and that of the week before; easy weeks are passed over."""
    weeks = held.weeks.get(key, []) if held is not None else []
    if held is None or not weeks:
        return []
    easy = {week.in_block for ledger in plan.ledgers for week in ledger.weeks if week.is_deload}
    known = {
        week: number
        for week, one in _by_week(held).items()
        if week not in weeks and week not in easy and _unit(one) == _unit(words)
        if (number := _single(one)) is not None
    }
    before = [known[week] for week in sorted(known) if week < weeks[0]]
    after = [known[week] for week in sorted(known) if week > weeks[-1]]
    middle = _rounded((before[-1] + after[0]) / 2, words, known.values()) if before and after else 0
    found = [middle] if middle else []
    return [*found, *before[-1:]]


# Easy weeks


def eased(plan: Plan, seen: Seen) -> Iterator[EditStep]:
    """The easy weeks that a finding means, cut as the programme's others are; else by half the sets.

    All lines change in one step: with sets, loads and effort, and with sets alone.
    """
    meant = set(seen.finding.weeks)
    weeks = [week for week in plan.ledgers[0].weeks if week.number in meant]
    if not weeks or not all(week.is_deload for week in weeks):
        return
    for number in sorted(meant):
        pattern = _pattern(plan, number, meant)
        for keys in (("sets", "load", "rir", "rpe"), ("sets",)):
            yield from _eased(plan, number, pattern, keys)


def _pattern(plan: Plan, number: int, meant: set[int]) -> tuple[Week, Week] | None:
    """Another easy week, and the typical one before it: the nearest before the week, else after."""
    weeks = plan.ledgers[0].weeks
    pairs = [
        (easy, before)
        for before, easy in pairwise(weeks)
        if easy.is_deload and easy.number not in meant and not before.is_deload
    ]
    return min(pairs, key=lambda pair: (abs(pair[0].number - number), pair[0].number), default=None)


def _eased(
    plan: Plan, number: int, pattern: tuple[Week, Week] | None, keys: tuple[str, ...]
) -> Iterator[EditStep]:
    edits: list[Edit] = []
    touches: list[int] = []
    for line in plan.lines:
        if number not in line.held or not plan.may_touch(line):
            continue
        own = _of_line(line, number, pattern, keys)
        if own:
            edits += own
            touches.append(line.start)
    spans = spans_of_all(edits, plan.line_end)
    if not spans or not are_apart(spans):
        return
    how = f"as week {pattern[0].number} is" if pattern is not None else "with about half the sets"
    what = "" if len(keys) > 1 else ": sets alone"
    label = f"week {number} made easier {how}{what}"
    yield EditStep("ease", spans, label, touches, (PRICE["ease"] + (0 if len(keys) > 1 else 4), 0, 0))


def _of_line(line: Line, number: int, pattern: tuple[Week, Week] | None, keys: tuple[str, ...]) -> list[Edit]:
    easy = line.held.get(pattern[0].number) if pattern is not None else None
    before = line.held.get(pattern[1].number) if pattern is not None else None
    now = line.held[number]
    edits: list[Edit] = []
    if len(now) != 1:
        return edits
    shares = _shares(easy[0], before[0]) if easy and before else {"sets": FEWER} if pattern is None else {}
    for key in keys:
        entry = line.node.entries.get(key)
        words = _cut(now[0], key, shares, _beside(own_map(entry.value)) if entry is not None else [])
        if words is None or key not in line.node.entries:
            continue
        found = value_in(line.node, key, line.in_block([number]), line.in_block(line.held), words)
        edits += found or []
    return edits


def _shares(easy: SetGroup, before: SetGroup) -> dict[str, float]:
    """What an easy week keeps of sets and load, and how much more is left in reserve."""
    found: dict[str, float] = {}
    if before.sets.high:
        found["sets"] = easy.sets.high / before.sets.high
    for unit, was in before.measured.items():
        if was and unit in easy.measured:
            found["load"] = easy.measured[unit] / was
            break
    for key in ("rir", "rpe"):
        one, other = getattr(easy.work, key), getattr(before.work, key)
        if one is not None and other is not None:
            found[key] = one.high - other.high
    return found


def _cut(now: SetGroup, key: str, shares: dict[str, float], beside: list[float]) -> str | None:
    """The words of a value in an easy week; None where it stays, or is no plain number."""
    share, place = shares.get(key), now.work.places.get(key)
    if share is None or place is None:
        return None
    if key == "sets":
        least = max(round(now.sets.high * share), 1)
        return plain(least) if least < now.sets.high and place.excerpt.isdigit() else None
    if key == "load":
        was = _single(place.excerpt)
        less = None if was is None or share >= 1 else _rounded(was * share, place.excerpt, beside)
        if was is None or not less or less >= was or place.excerpt.startswith("2"):
            return None
        return NUMBER.sub(plain(less), place.excerpt, count=1)
    if not re.fullmatch(r"[0-9]+(?:\.5)?", place.excerpt):
        return None
    number = float(place.excerpt) + share
    easier = share > 0 if key == "rir" else share < 0
    return plain(number) if easier and 1 <= number <= 10 else None
