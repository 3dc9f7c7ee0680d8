"""Steps that a finding offers itself, but no facts, no intent and no heavier load."""

from __future__ import annotations

import re

from ..body.catalogue import RANKS, rarity
from ..body.equipment import unlike
from ..counting.effort import FAST_KINDS
from ..counting.suggestions import substitutes
from ..model.quantities import duration
from ..syntax.enclosing import way_to
from ..syntax.numbers import NUMBER
from ..wording.words import listed
from .amounts import price
from .exercises import added, exchanged, serving
from .judge import with_spans
from .steps import PRICE, EditStep, are_apart, spans_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..body.catalogue import Exercise
    from ..findings.finding import Edit
    from .judge import Seen, Spans
    from .lines import Line, Plan

VALUES = ("reps", "rir", "rpe", "rest", "rest after", "tempo", "hold", "load", "sets", "side")
"""Keys of a line whose values may be written anew: none holds a fact of the athlete, a date or a ban."""

MOST_SUBSTITUTES = 4
"""Exercises that are tried in place of one that does not suit, beside the one that is offered."""

HEAVY_GOALS = ("strength", "power")
"""Goals that keep the load and give up repetitions; the others keep their repetitions."""

OUT_OF_ZONE = 6
"""What a value costs more that leaves the zone of the goal (common practice, no source)."""

HARDER_DOWN, HARDER_UP = ("rir", "rest"), ("reps", "rpe", "hold", "sets")
"""Keys whose lower, or higher, numbers mean more or harder work."""


def offered(plan: Plan, seen: Seen) -> Iterator[EditStep]:
    """What a finding offers: lines added, exercises swapped, values, other days, another order."""
    orders: list[Spans] = []
    for edit in seen.finding.edits:
        if any(not plan.holds(part.place) for part in edit.parts):
            continue
        spans = spans_of(edit, plan.line_end)
        new = [(part, name) for part in edit.parts for name in _new_lines(part)]
        if _is_permuted(plan, spans):
            orders.append(spans)
            yield from _ordering(plan, spans, edit.label)
        elif new:
            for part, name in new:
                yield from _adding(plan, part, name, seen)
        else:
            yield from _writing(plan, seen, edit, spans)
    yield from _all_first(plan, orders)


def _all_first(plan: Plan, orders: list[Spans]) -> Iterator[EditStep]:
    """The lines of several orders that are offered, each of which puts one first, put there together."""
    put = [span for spans in orders for span in spans if span[0] == span[1]]
    out = [span for spans in orders for span in spans if span[0] != span[1]]
    if not len(orders) == len(put) == len(out) > 1 or len({start for start, _, _ in put}) > 1:
        return
    at = put[0][0]
    spans = tuple(sorted([(at, at, "".join(words for _, _, words in put)), *out]))
    lines = [line for start, end, _ in out for line in plan.lines if start <= line.start < end]
    if lines and are_apart(spans) and _is_permuted(plan, spans):
        names = listed([line.name for line in lines])
        yield from _ordering(plan, spans, f"put {names} first in {lines[0].session.name}")


def offers_another(seen: Seen) -> bool:
    """Whether a finding offers another exercise in the place of one."""
    parts = (part for edit in seen.finding.edits for part in edit.parts)
    return any(part.words and _key_of(part)[0] == "exercise" for part in parts)


def _new_lines(part: Edit) -> list[str]:
    """The exercises of the lines that a part of an edit adds."""
    return re.findall(r"\bexercise: ([^,}\r\n]+)", part.words) if part.place.start == part.place.end else []


def _adding(plan: Plan, edit: Edit, name: str, seen: Seen) -> Iterator[EditStep]:
    """A line that is offered; among others that would do it has the place that it has in other sessions."""
    exercise = plan.header.known.exercise(name)
    held = next((one for one in reversed(plan.sessions) if one.start <= edit.place.start), None)
    if exercise is not None and held is not None:
        several = (serving(plan, one) for one in seen.parts)
        alike = next((found for found in several if exercise in found), [exercise])
        yield from added(plan, held, exercise, alike.index(exercise), seen.finding.weeks)


def _is_permuted(plan: Plan, spans: Spans) -> bool:
    """Whether an edit only puts lines in another order."""
    content = plan.text.content
    if len(spans) < 2 or not any("\n" in words or words.startswith("{") for _, _, words in spans):
        return False
    before, after = content.splitlines(), with_spans(content, spans).splitlines()
    return before != after and sorted(before) == sorted(after)


def _ordering(plan: Plan, spans: Spans, label: str) -> Iterator[EditStep]:
    lines = [
        line for start, end, _ in spans for line in plan.lines if start <= line.start < max(end, start + 1)
    ]
    if all(plan.may_touch(line) for line in lines):
        yield EditStep("order", spans, label, [line.start for line in lines], (PRICE["order"], 0, 0))


def _writing(plan: Plan, seen: Seen, edit: Edit, spans: Spans) -> Iterator[EditStep]:
    """Values of one or more lines; a swap is made anew, with all that belongs to the exercise."""
    keys: list[str] = []
    touched: list[Line] = []
    harder = False
    for part in edit.parts:
        line = plan.line_at(part.place.start) or plan.line_at(part.place.start - 1)
        key, is_new = _key_of(part)
        if line is None or not plan.may_touch(line) or (not part.words and key not in ("rir", "rpe")):
            return
        if key == "load" and not _is_lighter(part):
            return
        harder = harder or (not is_new and _is_harder(key, part))
        keys.append(key)
        touched.append(line)
    if keys == ["exercise"]:
        yield from swapping(plan, touched[0], [edit.words], seen.finding.weeks, others=not seen.unit)
        return
    if "exercise" in keys or not set(keys) <= set(VALUES) or (seen.unit == "sets" and "sets" in keys):
        return  # sets that a limit asks for are counted out, not taken from one suggestion
    if harder and any(plan.obstacle(line.exercise) for line in touched):
        return
    cost = sum(price("value", line) for line in {line.start: line for line in touched}.values())
    usual = _usual_rest(plan, touched[0], edit) if keys == ["rest"] and not edit.further else ""
    if usual:
        (start, end, _) = spans[0]
        label = f"{touched[0].name} ({touched[0].session.name}): rest {usual}, as other heavy lifts"
        rest = ((start, end, usual),)
        yield EditStep("value", rest, label, [touched[0].start], (cost, 0, 0), adds_work=harder)
        cost += 2
    cost += OUT_OF_ZONE * (_leaves_the_zone(plan, keys))
    touches = {line.start for line in touched}
    label = f"{touched[0].name} ({touched[0].session.name}): {edit.label}"
    yield EditStep("value", spans, label, touches, (cost, 0, 0), adds_work=harder)


def swapping(
    plan: Plan, line: Line, names: Iterable[str], weeks: Iterable[int], *, others: bool = True
) -> Iterator[EditStep]:
    """Exercises in place of another: those that are offered, and with ``others`` such as do the same."""
    old, known = line.exercise, plan.header.known
    if old is not None and old.kind not in FAST_KINDS and plan.is_spared(line):
        for number, exercise in enumerate(gentler(plan, old)):
            yield from exchanged(
                plan, line, exercise, number, any_size=True, weeks=weeks, exactly=True, like=False
            )
        return
    further = substitutes(plan.header, old, MOST_SUBSTITUTES) if old is not None and others else []
    if old is not None and old.kind in FAST_KINDS and others:
        further += [one.name for one in _fast_like(plan, old)]
    for number, one in enumerate(dict.fromkeys([*names, *further])):
        other = known.exercise(one)
        if other is not None:
            yield from exchanged(plan, line, other, number, any_size=True, weeks=weeks, exactly=True)


def gentler(plan: Plan, old: Exercise) -> list[Exercise]:
    """Exercises for muscles of one that is to be spared, which load the spine little; common ones first."""
    fits = [
        one
        for one in plan.header.known.by_rank()
        if one.kind == old.kind and one.rank != RANKS[-1] and one.axial in GENTLE
        if not set(one.direct).isdisjoint(old.direct) and not plan.obstacle(one)
    ]
    fits.sort(key=lambda one: (rarity(one), one.unilateral and not old.unilateral, unlike(old, one)))
    return fits[:MOST_SUBSTITUTES]


GENTLE = ("none", "low")
"""How much the spine is loaded by what is put in the place of a lift that is to be spared."""


def _fast_like(plan: Plan, old: Exercise) -> list[Exercise]:
    """Light fast lifts, throws or jumps that suit everybody and share a joint action with one; else any."""
    fits = [
        one
        for one in plan.header.known.by_rank()
        if one.kind in FAST_KINDS and one.capacity == "light" and one is not old
        if one.rank != RANKS[-1] and not plan.obstacle(one)
    ]
    near = [one for one in fits if not set(one.actions).isdisjoint(old.actions)]
    return sorted(near or fits, key=rarity)[:MOST_SUBSTITUTES]


def _usual_rest(plan: Plan, line: Line, edit: Edit) -> str:
    """The rest that stands most often on other heavy lines, if it is longer than what is offered; else ""."""
    least = duration(edit.words)
    found = [
        work.places["rest"].excerpt
        for other in plan.lines
        if other is not line and (entry := other.entries[0]).slot == "heavy"
        if (work := entry.work).rest is not None and least is not None and work.rest.low > least.low
    ]
    return max(found, key=found.count, default="")


def _leaves_the_zone(plan: Plan, keys: list[str]) -> bool:
    """Whether repetitions are given up where the goal is trained by them, or load where it is by that."""
    return keys == (["load"] if plan.header.goal in HEAVY_GOALS else ["reps"])


def _key_of(part: Edit) -> tuple[str, bool]:
    """The key of a line that a part of an edit writes, "" if none; and whether it is new there."""
    is_new = part.place.start == part.place.end
    new = re.match(r"[\s,]*([a-z ]+): ", part.words) if is_new else None
    if new:
        return new[1], True
    keys = [str(step.key) for step in way_to(part.place) if step.key in (*VALUES, "exercise")]
    return (keys[-1] if keys else ""), False


def _numbers(words: str) -> tuple[list[float], str]:
    """The numbers of some words, and the words without them."""
    return [float(one) for one in NUMBER.findall(words)], " ".join(NUMBER.sub("", words).split())


def _amounts(words: str) -> list[float]:
    """The numbers of some words; of a time its ends in seconds, whatever its unit."""
    time = duration(words)
    return _numbers(words)[0] if time is None else [time.low, time.high]


def _is_lighter(part: Edit) -> bool:
    """Whether a load is written that is surely lighter: in the same words, with no larger number."""
    (was, words), (now, others) = _numbers(part.place.excerpt), _numbers(part.words)
    same = words.replace(" ", "") == others.replace(" ", "")
    return bool(now) and same and max(now) < max(was, default=0) and min(now) <= min(was, default=0)


def _is_harder(key: str, part: Edit) -> bool:
    was, now = _amounts(part.place.excerpt), _amounts(part.words)
    if not was or not now:
        return True
    return min(now) < min(was) if key in HARDER_DOWN else max(now) > max(was) if key in HARDER_UP else False
