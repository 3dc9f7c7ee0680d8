"""Steps that add a line, or write another exercise in a line with all that belongs to it."""

from __future__ import annotations

import re
from itertools import islice

from ..body.catalogue import COMPOUND, RANKS, rarity
from ..body.equipment import ALWAYS_THERE, needs
from ..counting.credits import credit
from ..counting.effort import FAST_KINDS
from ..counting.suggestions import SLOW_KINDS
from ..model.week_edits import runs
from ..remedies.new_lines import choice_of
from ..wording.words import week_list
from .amounts import alone, in_weeks_of, is_large, price
from .rewriting import MANY, in_all_weeks, in_some_weeks, is_from_the_floor
from .steps import (
    A_RANK,
    A_SET,
    FOREIGN,
    KNOWN,
    NEW_EQUIPMENT,
    PRICE,
    TOO_LIGHT,
    EditStep,
    are_apart,
    spans_of,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..body.catalogue import Exercise
    from .lines import Line, Plan, WrittenSession

MOST_NAMES = 3
"""Exercises that are tried for one thing that is missing."""


def serving(plan: Plan, what: str) -> list[Exercise]:
    """Exercises that train something directly and suit everybody on the programme: first those that it holds
    already, then the most common ones.
    """
    if not what:
        return []
    own = [one for one in plan.exercises if would_serve(one, what) and not plan.obstacle(one)][:MOST_NAMES]
    fits = (one for one in plan.header.known.by_rank() if would_serve(one, what) and not plan.obstacle(one))
    found = list(islice(fits, MOST_NAMES))
    common = [one for one in found if one.rank != RANKS[-1]]
    return list(dict.fromkeys([*own, *common])) or found[:1]


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


def added(
    plan: Plan, held: WrittenSession, exercise: Exercise, number: int = 0, weeks: Iterable[int] = ()
) -> Iterator[EditStep]:
    """A line of an exercise in a session, in the style of its neighbours, in the weeks that are meant.

    ``number`` is its place among those that would do, the most common first.
    """
    meant = plan.meant(weeks, held.by_week)
    if not meant or plan.obstacle(exercise) or plan.is_kept(held.session.name):
        return
    if any(line.does(exercise, meant) for line in held.lines):
        return
    first = held.session.block.first
    only = runs([week - first + 1 for week in meant]) if len(meant) < len(held.by_week) else ""
    for edit in choice_of(held.session, plan.header.known, [exercise.name], only):
        spans = spans_of(edit, plan.line_end)
        found = re.search(r"\bsets: ([0-9]+)", edit.words)
        sets = int(found[1]) if found else 0
        others = [
            line.exercise for line in held.lines if line.exercise is not None and set(meant) & set(line.held)
        ]
        foreign = _is_foreign(held, exercise, meant)
        known = KNOWN if exercise in plan.exercises else 0
        cost = PRICE["add"] + A_SET * sets + FOREIGN * foreign - known
        within = f" in {week_list(meant)}" if only else ""
        label = f"{exercise.name} added to {held.session.name}{within}"
        muscles = beside(exercise, sets)
        reps = re.search(r"\breps: ([0-9-]+)", edit.words)
        common = _commonness(plan, exercise, number, others) + _to_be_set(exercise, reps[1] if reps else "")
        price = (cost, muscles, common)
        yield EditStep("add", spans, label, (), price, by=sets, adds_work=True, exercise=exercise)


def at_home(plan: Plan, exercise: Exercise, weeks: Iterable[int]) -> list[WrittenSession]:
    """The sessions that train some of the same in the weeks that are meant; all, where none does."""
    held = [one for one in plan.sessions if plan.meant(weeks, one.by_week)]
    near = [one for one in held if not _is_foreign(one, exercise, plan.meant(weeks, one.by_week))]
    return near or held


def _is_foreign(held: WrittenSession, exercise: Exercise, weeks: Iterable[int]) -> bool:
    """Whether nothing in a session trains directly what an exercise does, in some weeks."""
    others = [one.exercise for one in held.lines if one.exercise and set(weeks) & set(one.held)]
    return not any(set(one.direct) & {*exercise.direct, *exercise.indirect} for one in others)


def beside(exercise: Exercise, sets: float) -> int:
    """Half sets of other muscles that some sets of an exercise bring beside the first one."""
    return round(2 * sets * (len(exercise.direct) - 1) + sets * len(exercise.indirect))


def is_of_one_size(one: Exercise, other: Exercise | None) -> bool:
    """Whether two lifts are both large, or both small."""
    return other is not None and is_large(one) == is_large(other)


def is_of_one_movement(one: Exercise | None, other: Exercise) -> bool:
    """Whether two large lifts are for the same movement."""
    return one is not None and one.pattern == other.pattern in COMPOUND


def differing(sets: float, one: Exercise, other: Exercise | None) -> int:
    """Half sets of muscles that one of two lifts trains directly and the other does not."""
    return round(2 * sets * len({*one.direct} ^ {*(other.direct if other else ())}))


LIGHT_GOALS = ("general health", "muscular endurance")
"""Goals for which a lift need not be loaded further and further."""


def _commonness(plan: Plan, exercise: Exercise, number: int, others: Iterable[Exercise]) -> int:
    """How far from what is usual an exercise is beside the others of its session, then its place among those
    that would do. The lifter's own weight is no equipment.
    """
    light = exercise.capacity == "light" and plan.header.goal not in LIGHT_GOALS
    pieces = {*ALWAYS_THERE, *(piece for one in others for piece in needs(one))}
    new = not pieces.issuperset(needs(exercise))
    return A_RANK * rarity(exercise) + NEW_EQUIPMENT * new + TOO_LIGHT * light + number


OF_ONES_OWN_WEIGHT = ("vertical pull", "horizontal push", "vertical push")
"""Movements in which the lifter's own weight may be too much, or too little, for the repetitions asked."""


def _to_be_set(exercise: Exercise, reps: str) -> int:
    """What it costs more in the end where repetitions are asked for which a lift is not fit, or cannot be
    loaded: a deadlift from the floor, and pull-ups, for many.
    """
    many = max(map(int, re.findall(r"[0-9]+", reps)), default=0) >= MANY
    hard = exercise.pattern in OF_ONES_OWN_WEIGHT or exercise.capacity == "heavy"
    own = exercise.implement == "bodyweight" and hard
    return 2 * A_RANK if many and (own or is_from_the_floor(exercise)) else 0


def exchanged(
    plan: Plan,
    line: Line,
    exercise: Exercise,
    number: int = 0,
    *,
    any_size: bool = False,
    weeks: Iterable[int] = (),
    exactly: bool = False,
    like: bool = True,
) -> Iterator[EditStep]:
    """Another exercise in a line, in the weeks that are meant; what belongs to it is written for the new one.

    Without ``like`` the first of several is preferred to the one nearest to the old exercise. Unless
    ``any_size`` may do, a large lift gives way to a large one, a small one to a small one.
    """
    old = line.exercise
    meant = plan.meant(weeks, line.held, exactly=exactly)
    if old is exercise or old is None or line.noted or plan.obstacle(exercise) or not line.is_plain:
        return
    if line.names_by_week:
        return  # which of them goes on is for the coach to say
    fast = exercise.kind in FAST_KINDS and old.kind in FAST_KINDS
    if not meant or (exercise.kind != old.kind and not fast) or _is_there(plan, line, exercise, meant):
        return
    node = line.node
    if "or" in node.entries or node.entries["exercise"].merged:
        return
    if not is_of_one_size(exercise, old) and not (any_size and "reps" in node.entries):
        return
    only = len(meant) < len(line.held)
    spans, said = in_some_weeks(plan, line, exercise, meant) if only else in_all_weeks(plan, line, exercise)
    if not spans or not are_apart(spans):
        return
    keeps = exercise.pattern == old.pattern
    first = price("swap", line) + (0 if keeps else alone(plan, line, meant))
    first += TWIN if _has_twin(plan, line, exercise, meant) else 0
    reps = node.entries["reps"].value.plain if "reps" in node.entries else ""
    others = [one.exercise for one in plan.lines if one.session is line.session and one.exercise is not None]
    common = _commonness(plan, exercise, number, others) + _to_be_set(exercise, str(reps))
    first -= KNOWN if exercise in plan.exercises else 0
    unlike = number if not like else 0 if fast else differing(line.sets, exercise, old)
    cost = (first, unlike, common)
    within = in_weeks_of(line, meant)
    yield EditStep(
        "swap",
        spans,
        f"{exercise.name} in place of {line.name} ({line.session.name}){within}",
        [line.start],
        cost,
        line=line.start,
        adds_work=True,
        said=said,
        exercise=exercise,
    )


TWIN = 20
"""What it costs more that a session then holds two large lifts for the same (common practice, no source)."""


def _has_twin(plan: Plan, line: Line, exercise: Exercise, weeks: list[int]) -> bool:
    """Whether another line of its session is for the same movement and muscles in some weeks."""
    others = (one for one in plan.lines if one.session is line.session and one is not line)
    lifts = [entry.exercise for one in others for week in weeks for entry in one.held.get(week, ())]
    alike = [one for one in lifts if one is not None and one.pattern == exercise.pattern in COMPOUND]
    return any(one.direct == exercise.direct for one in alike)


def _is_there(plan: Plan, line: Line, exercise: Exercise, weeks: list[int]) -> bool:
    """Whether an exercise is done in some weeks already, on the same day or on any."""
    return any(one.does(exercise, weeks) for one in plan.lines if one is not line)
