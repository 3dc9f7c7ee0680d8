"""Steps that add a line, or write another exercise in a line with all that belongs to it."""

from __future__ import annotations

import re
from itertools import islice

from ..body.catalogue import COMPOUND, RANKS, rarity
from ..counting.credits import credit
from ..counting.suggestions import SLOW_KINDS
from ..findings.finding import Edit
from ..remedies.new_lines import LARGE_REPS, RESERVE, SMALL_REPS, choice_of
from ..syntax.additions import key_added
from ..syntax.rewrites import key_out
from ..syntax.tree import Mapping, Scalar
from .amounts import price
from .steps import A_SET, FOREIGN, NEW_EQUIPMENT, PRICE, EditStep, are_apart, spans_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..body.catalogue import Exercise
    from .lines import Line, Plan, WrittenSession

MOST_NAMES = 3
"""Exercises that are tried for one thing that is missing."""

OF_THE_OLD = ("load", "tempo", "progression", "velocity", "warm-up sets", "working best")
"""Keys that hold for one exercise only: they are taken out where another stands in its place."""


def serving(plan: Plan, what: str) -> list[Exercise]:
    """The most common exercises that train something directly and suit everybody on the programme."""
    if not what:
        return []
    fits = (one for one in plan.header.known.by_rank() if would_serve(one, what) and not plan.obstacle(one))
    found = list(islice(fits, MOST_NAMES))
    common = [one for one in found if one.rank != RANKS[-1]]
    return common or found[:1]


def would_serve(exercise: Exercise, what: str) -> bool:
    """Whether an exercise trains something directly, and is none for speed."""
    if exercise.kind not in SLOW_KINDS:
        return False
    return what in exercise.actions or what in exercise.patterns or credit(exercise, what) == 1.0


def serves(line: Line, what: str) -> bool:
    """Whether a line trains something directly or indirectly."""
    return line.exercise is not None and trains(line.exercise, what)


def trains(exercise: Exercise, what: str) -> bool:
    """Whether an exercise trains something directly or indirectly."""
    return what in exercise.actions or what in exercise.patterns or credit(exercise, what) > 0


def added(plan: Plan, held: WrittenSession, exercise: Exercise, number: int = 0) -> Iterator[EditStep]:
    """A line of an exercise in a session, in the style of its neighbours.

    ``number`` is its place among those that would do, the most common first.
    """
    if plan.obstacle(exercise) or plan.is_kept(held.session.name):
        return
    if any(line.exercise is exercise for line in held.lines):
        return
    for edit in choice_of(held.session, plan.header.known, [exercise.name]):
        spans = spans_of(edit, plan.line_end)
        found = re.search(r"\bsets: ([0-9]+)", edit.words)
        sets = int(found[1]) if found else 0
        others = [line.exercise for line in held.lines if line.exercise is not None]
        foreign = not any(set(one.direct) & {*exercise.direct, *exercise.indirect} for one in others)
        new = exercise.implement not in {one.implement for one in others}
        cost = PRICE["add"] + A_SET * sets + FOREIGN * foreign + NEW_EQUIPMENT * new
        label = f"{exercise.name} added to {held.session.name}"
        muscles = 2 * sets * (len(exercise.direct) - 1) + sets * len(exercise.indirect)
        price = (cost, muscles, _commonness(exercise, number))
        yield EditStep("add", spans, label, [spans[0][0]], price, by=sets, adds_work=True, exercise=exercise)


def _commonness(exercise: Exercise, number: int) -> int:
    return MOST_NAMES * rarity(exercise) + number


def exchanged(
    plan: Plan, line: Line, exercise: Exercise, number: int = 0, *, any_size: bool = False
) -> Iterator[EditStep]:
    """Another exercise in a line; repetitions, effort, rest, load and side are written for the new one.

    Unless ``any_size`` may do, a large lift gives way to a large one, a small one to a small one.
    """
    old = line.exercise
    if old is exercise or old is None or line.noted or plan.obstacle(exercise) or not line.is_plain:
        return
    if exercise.kind != old.kind or any(exercise is one.exercise for one in plan.lines):
        return
    node = line.node
    written = node.entries.get("exercise")
    if written is None or written.merged or not isinstance(written.value, Scalar) or "or" in node.entries:
        return
    of_other_size = (exercise.pattern in COMPOUND) != (old.pattern in COMPOUND)
    reps = node.entries.get("reps")
    if of_other_size and not (any_size and reps is not None and isinstance(reps.value, Scalar)):
        return
    edits, said = _rewritten(plan, line, exercise)
    name = written.value
    edits.append(Edit(plan.text.place(name.start, name.end), exercise.name, "", certain=False))
    spans = tuple(sorted(span for edit in edits for span in spans_of(edit, plan.line_end)))
    if len(spans) < len(edits) or not are_apart(spans):
        return
    muscles = {*old.direct} ^ {*exercise.direct}
    cost = (price("swap", line), round(2 * line.sets * len(muscles)), _commonness(exercise, number))
    label = f"{exercise.name} in place of {line.name} ({line.session.name})"
    yield EditStep(
        "swap",
        spans,
        label,
        [line.start],
        cost,
        line=line.start,
        adds_work=True,
        said=said,
        exercise=exercise,
    )


def _rewritten(plan: Plan, line: Line, exercise: Exercise) -> tuple[list[Edit], str]:
    """The edits of a line's other keys, and what they do in words."""
    node = line.node
    edits: list[Edit] = []
    said: list[str] = []
    old = line.exercise
    assert old is not None
    for key in OF_THE_OLD:
        entry = node.entries.get(key)
        if entry is not None:
            edits += key_out(node, key)
            said.append(f"{key} taken out: it was for {line.name}")
    large = exercise.pattern in COMPOUND
    if large != (old.pattern in COMPOUND):
        edits += _plainly(plan, node, "reps", LARGE_REPS if large else SMALL_REPS, said)
        edits += _plainly(plan, node, "rest", _rest_like(plan, line, large=large), said)
    if large and _is_zero(node):
        edits += _plainly(plan, node, "rir", RESERVE, said)
    if exercise.unilateral and "side" not in node.entries:
        keys = [key for key in ("sets", "reps") if key in node.entries]
        edit = key_added(node, keys[0], "side: each", "") if keys else None
        if edit is not None:
            edits.append(edit)
            said.append("each side")
    elif not exercise.unilateral and "side" in node.entries:
        edits += key_out(node, "side")
        said.append("side taken out")
    return edits, "; ".join(said)


def _plainly(plan: Plan, node: Mapping, key: str, words: str, said: list[str]) -> Iterable[Edit]:
    """Other words for a plain value of a line; nothing where they stand there already."""
    entry = node.entries.get(key)
    if (
        entry is None
        or entry.merged
        or not isinstance(entry.value, Scalar)
        or entry.value.text == words
        or not words
    ):
        return
    said.append(f"{key} {entry.value.text} -> {words}")
    yield Edit(plan.text.place(entry.value.start, entry.value.end), words, "", certain=False)


def _is_zero(node: Mapping) -> bool:
    entry = node.entries.get("rir")
    return entry is not None and isinstance(entry.value, Scalar) and entry.value.text == "0"


def _rest_like(plan: Plan, line: Line, *, large: bool) -> str:
    """The rest of the first other line with a lift as large or as small; empty where there is none."""
    for other in plan.lines:
        entry = other.node.entries.get("rest")
        alike = other.exercise is not None and (other.exercise.pattern in COMPOUND) == large
        if other is not line and alike and entry is not None and isinstance(entry.value, Scalar):
            return entry.value.text
    return ""
