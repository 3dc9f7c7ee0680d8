"""A line rewritten for another exercise: repetitions, effort, rest, load and side, and what changed."""

from __future__ import annotations

import re

from ..body.catalogue import COMPOUND
from ..counting.effort import FAST_KINDS
from ..findings.finding import Edit
from ..model.week_edits import runs
from ..remedies.new_lines import HOLD, LARGE_REPS, RESERVE, SMALL_REPS
from ..remedies.some_weeks import kept_to, value_of, within_braces
from ..syntax.additions import items_added, key_added
from ..syntax.enclosing import way_to
from ..syntax.rewrites import key_out
from ..syntax.tree import Mapping, Scalar, Sequence
from .amounts import is_large
from .steps import spans_of_all

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..body.catalogue import Exercise
    from .judge import Spans
    from .lines import Line, Plan

    Words = dict[str, str]
    """The keys of a line with their words, in their order."""

OF_THE_OLD = ("load", "tempo", "progression", "velocity", "warm-up sets", "working best")
"""Keys that hold for one exercise only: they are taken out where another stands in its place."""

SAID_OF_THE_OLD = ("note", "cue", "stop when", "method", "kind", "velocity loss", "test")
"""Keys that say something of one exercise: a line of its own for another has none of them."""

HEAVY_ON_THE_SPINE = "high"
"""The load on the spine of lifts that coaches keep to few repetitions."""

MANY = 8
"""Repetitions from which lifts from the floor are not asked for (common practice, no source)."""

FROM_THE_FLOOR, FEW = ("deadlift", "sumo deadlift", "trap bar deadlift"), "5-6"
"""Lifts that coaches keep to few repetitions, and how many (common practice, no source)."""

MOST_ON_THE_SPINE = 10
"""Repetitions at most of other lifts that load the spine (common practice, no source)."""

LIGHTER_REPS = "8-12"
"""Repetitions of a lift that cannot be loaded as the one before it (common practice, no source)."""

QUICK, SWUNG = "5", "8"
"""Repetitions of a quick lift, and of a swing, in place of one with fewer (common practice, no source)."""


def for_new(plan: Plan, line: Line, exercise: Exercise, words: Words) -> tuple[Words, list[str]]:
    """The words of a line for another exercise, and what changed in words."""
    old = line.exercise
    assert old is not None
    new = {key: one for key, one in words.items() if key not in OF_THE_OLD}
    said = [f"{key} taken out: it was for {line.name}" for key in words if key in OF_THE_OLD]
    large = exercise.pattern in COMPOUND

    def write(key: str, value: str) -> None:
        if value and key in new and new[key] != value:
            said.append(f"{key} {new[key]} -> {value}")
            new[key] = value

    quick = exercise.kind in FAST_KINDS
    if quick:
        few = SWUNG if exercise.pattern == "hip hinge" else QUICK
        write("reps", few if _most(new.get("reps", "")) < int(few) - 1 else "")
    elif "reps" in new and is_from_the_floor(exercise) and _most(new["reps"]) >= MANY:
        write("reps", FEW)
    elif "reps" in new and old.capacity == "heavy" != exercise.capacity and _most(new["reps"]) <= MANY:
        write("reps", LIGHTER_REPS)
    elif "reps" in new and not fits_repetitions(exercise, old, new["reps"]):
        write("reps", LARGE_REPS if large else SMALL_REPS)
    if large != (old.pattern in COMPOUND) and not quick:
        write("rest", _rest_like(plan, line, large=large))
    if large and new.get("rir") == "0":
        write("rir", RESERVE)
    if exercise.kind == "isometric" and "hold" not in new and "reps" in new:
        del new["reps"]
        new["hold"] = HOLD
    if exercise.unilateral and "side" not in new and " each" not in new.get("reps", ""):
        new["side"] = "each"
        said.append("each side")
    elif not exercise.unilateral:
        if new.pop("side", None) is not None:
            said.append("side taken out")
        for key in ("reps", "hold", "distance"):
            write(key, re.sub(r" each\b", "", new.get(key, "")))
    new["exercise"] = exercise.name
    return new, said


def fits_repetitions(exercise: Exercise, old: Exercise, reps: str) -> bool:
    """Whether repetitions that one lift had suit another."""
    if (exercise.pattern in COMPOUND) != (old.pattern in COMPOUND):
        return False
    return (
        not is_large(exercise)
        or _most(reps) <= MOST_ON_THE_SPINE
        or exercise.axial != HEAVY_ON_THE_SPINE
        or old.axial == HEAVY_ON_THE_SPINE
    )


def is_from_the_floor(exercise: Exercise) -> bool:
    """Whether a lift is one that coaches keep to few repetitions."""
    return exercise.name in FROM_THE_FLOOR


def _most(reps: str) -> int:
    return max(map(int, re.findall(r"[0-9]+", reps)), default=0)


def in_all_weeks(plan: Plan, line: Line, exercise: Exercise) -> tuple[Spans, str]:
    """Spans that write another exercise in a line, with what belongs to it; none where it cannot be done."""
    node = line.node
    words = _words_of(node)
    if any(entry.merged for key, entry in node.entries.items() if key in (*OF_THE_OLD, "exercise")):
        return (), ""
    new, said = for_new(plan, line, exercise, words)
    edits: list[Edit] = []
    for key, was in words.items():
        value = node.entries[key].value
        if key not in new:
            taken = list(key_out(node, key))
            if not taken:
                return (), ""
            edits += taken
        elif new[key] != was:
            edits.append(Edit(value.place, new[key], "", certain=False))
    for key in new:
        if key not in words:
            after = next((one for one in ("reps", "sets", "exercise") if one in new and one in words), "")
            edit = key_added(node, after, f"{key}: {new[key]}", "") if after else None
            if edit is None:
                return (), ""
            edits.append(edit)
    return _merged(node.source.content, spans_of_all(edits, plan.line_end)), "; ".join(said)


def _merged(content: str, spans: Spans) -> Spans:
    """Spans of which those that take out neighbours are one; no comma is left before a closing brace."""
    found: list[tuple[int, int, str]] = []
    for start, end, words in spans:
        if found and not words and not found[-1][2] and start <= found[-1][1]:
            start, end = found[-1][0], max(end, found[-1][1])
            if content[end : end + 1] == "}":
                start = len(content[:start].rstrip(" ,"))
            found.pop()
        found.append((start, end, words))
    return tuple(found)


def in_some_weeks(plan: Plan, line: Line, exercise: Exercise, weeks: list[int]) -> tuple[Spans, str]:
    """Spans that keep a line to its other weeks, and write a line of another exercise for these behind it."""
    node, own = line.node, line.in_block(weeks)
    words: Words = {"exercise": line.name, "in weeks": ""}
    for key in node.entries:
        value = value_of(node, key, own) if key not in SAID_OF_THE_OLD else None
        if value is not None and key != "exercise":
            words[key] = value
        elif key not in SAID_OF_THE_OLD and key != "exercise":
            return (), ""
    new, said = for_new(plan, line, exercise, words)
    new["in weeks"] = runs(own)
    kept = kept_to(node, line.in_block(set(line.held) - set(weeks)))
    items = next(
        (step for step in reversed(way_to(line.line.place)) if isinstance(step.group, Sequence)), None
    )
    if kept is None or items is None or not isinstance(items.group, Sequence):
        return (), ""
    in_braces = node.source.content[node.start : node.start + 1] == "{"
    written = {key: within_braces(one) if in_braces else one for key, one in new.items()}
    added = items_added(items.group, int(items.key), [written], "", node)
    if added is None:
        return (), ""
    return spans_of_all([*kept, added], plan.line_end), "; ".join(said)


def _words_of(node: Mapping) -> Words:
    """The words of each value of a line that it holds itself, as they stand in the text."""
    content = node.source.content
    return {
        key: content[entry.value.start : entry.value.end]
        for key, entry in node.entries.items()
        if not entry.merged and entry.value.defined is None
    }


def _rest_like(plan: Plan, line: Line, *, large: bool) -> str:
    """The rest of the first other line with a lift as large or as small; empty where there is none."""
    for other in plan.lines:
        entry = other.node.entries.get("rest")
        alike = other.exercise is not None and (other.exercise.pattern in COMPOUND) == large
        if other is not line and alike and entry is not None and isinstance(entry.value, Scalar):
            return entry.value.text
    return ""
