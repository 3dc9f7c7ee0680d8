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
from ..remedies.moves import dropped
from ..remedies.new_lines import again_in, choice_of
from ..remedies.some_weeks import CHANGES, carried_on, kept_to, value_in, value_of, within_braces
from ..syntax.tree import Mapping
from ..wording.words import week_list
from .amounts import alone, in_weeks_of, is_large, price
from .rewriting import MANY, SAID_OF_THE_OLD, in_all_weeks, in_some_weeks, is_from_the_floor
from .steps import (
    A_RANK,
    A_SET,
    BACK,
    FOREIGN,
    KNOWN,
    NEW_EQUIPMENT,
    PRICE,
    TOO_LIGHT,
    EditStep,
    are_apart,
    spans_of,
    spans_of_all,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..body.catalogue import Exercise
    from ..findings.finding import Edit
    from .judge import Spans
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
        muscles = _beside(exercise, sets)
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


def put_back(plan: Plan, line: Line, what: str, weeks: Iterable[int]) -> Iterator[EditStep]:
    """A lift that fell out of some weeks, written again as the nearest others hold it: in the session that is
    called like its own, or else where some of the same is trained.
    """
    weeks = list(weeks)
    lifts = {
        week: exercise
        for week, groups in line.held.items()
        if len(groups) == 1 and (exercise := groups[0].exercise) and would_serve(exercise, what)
    }
    if not lifts or plan.is_kept(line.name):
        return
    homes = at_home(plan, next(iter(lifts.values())), weeks)
    named = [one for one in homes if one.session.name == line.session.name]
    for held in named or homes:
        if line in held.lines and not line.names_by_week:
            continue  # it goes on there
        meant = plan.meant(weeks, held.by_week)
        near = min(lifts, key=lambda week, at=meant[0]: (abs(week - at), week))  # type: ignore[misc]
        yield from _written_again(plan, line, held, near, meant)


def _written_again(
    plan: Plan, line: Line, held: WrittenSession, week: int, meant: list[int]
) -> Iterator[EditStep]:
    """What a line holds in a week, as a line of its own in a session in the weeks that are meant."""
    (entry,) = line.held[week]
    exercise, only = entry.exercise, len(meant) < len(held.by_week)
    if exercise is None or plan.obstacle(exercise) or not line.is_plain or plan.is_kept(held.session.name):
        return
    if any(one.does(exercise, meant) for one in held.lines):
        return
    first = held.session.block.first
    words = {"exercise": entry.name}
    if only:
        words["in weeks"] = runs([one - first + 1 for one in meant])
    for key in line.node.entries:
        if key not in ("exercise", "in weeks", *SAID_OF_THE_OLD):
            value = value_of(line.node, key, line.in_block([week]))
            if value is None or value.strip("'\"").startswith(CHANGES):
                return
            words[key] = within_braces(value)
    edit = again_in(held.session, plan.header.known, exercise.name, words)
    if edit is None:
        return
    sets = entry.sets.high
    within = f" in {week_list(meant)}" if only else ""
    label = f"{entry.name} put back into {held.session.name}{within}"
    price = (PRICE["add"] + A_SET * round(sets) - BACK, _beside(exercise, sets), 0)
    spans = spans_of(edit, plan.line_end)
    said = f"as in week {week}"
    yield EditStep(
        "add", spans, label, (), price, by=sets, adds_work=True, said=said, exercise=exercise, again=True
    )


def _beside(exercise: Exercise, sets: float) -> int:
    """Half sets of other muscles that some sets of an exercise bring beside the first one."""
    return round(2 * sets * (len(exercise.direct) - 1) + sets * len(exercise.indirect))


def going_on(
    plan: Plan, line: Line, held: WrittenSession, weeks: Iterable[int], *, fell_out: bool = False
) -> Iterator[EditStep]:
    """A line that the coach wrote for other weeks goes on in those that are meant; alone, or in place of one
    that takes its place there. It costs less where what it trains ``fell_out`` of them.
    """
    meant = [week for week in plan.meant(weeks, held.by_week) if week not in line.held]
    exercise = line.exercise
    if not meant or exercise is None or not line.is_plain or plan.obstacle(exercise):
        return
    if any(one.does(exercise, meant) for one in held.lines):
        return
    edits = carried_on(line.node, line.in_block(line.held), line.in_block(meant), line.in_block(held.by_week))
    if not edits:
        return
    on = spans_of_all(edits, plan.line_end)
    label = f"{line.name} ({line.session.name}) goes on in {week_list(meant)}"
    less = BACK if fell_out else KNOWN
    cost = (PRICE["add"] + A_SET * round(line.sets) - less, _beside(exercise, line.sets), 0)
    yield EditStep(
        "add",
        on,
        label,
        [line.start],
        cost,
        by=line.sets,
        adds_work=True,
        exercise=exercise,
        line=line.start,
        again=True,
    )
    for other in held.lines:
        gives_way = set(meant) & set(other.held)
        if (
            other is line
            or not gives_way
            or set(other.held) - set(meant)
            or other.is_main
            or other.noted
            or not other.is_plain
        ):
            continue
        if not plan.may_touch(other) or not is_of_one_size(exercise, other.exercise):
            continue
        out = _out_in(plan, other, gives_way)
        spans = tuple(sorted((*on, *out))) if out else ()
        if not spans or not are_apart(spans):
            continue
        less = BACK - KNOWN if fell_out else KNOWN
        swapped = (price("swap", other) - less, _differing(line.sets, exercise, other.exercise), 0)
        yield EditStep(
            "swap",
            spans,
            f"{label} in place of {other.name}",
            [line.start, other.start],
            swapped,
            line=other.start,
            adds_work=True,
            exercise=exercise,
            again=True,
        )


def as_in_other_weeks(plan: Plan, line: Line, weeks: Iterable[int]) -> Iterator[EditStep]:
    """A line whose exercise goes by week holds in the weeks that are meant what it holds in others."""
    meant, node = plan.meant(weeks, line.held, exactly=True), line.node
    if not meant or len(meant) == len(line.held) or not isinstance(node.entries["exercise"].value, Mapping):
        return
    done = line.in_block(line.held)
    others = sorted(set(line.held) - set(meant), key=lambda week: (abs(week - meant[0]), week))
    now = {entry.exercise for week in meant for entry in line.held[week]}
    near = next((week for week in others if line.held[week][0].exercise not in now), None)
    exercise = line.held[near][0].exercise if near is not None else None
    if near is None or exercise is None or line.noted or plan.ruled_out(exercise):
        return
    edits: list[Edit] = []
    for key, entry in node.entries.items():
        if isinstance(entry.value, Mapping):
            words = value_of(node, key, line.in_block([near]))
            own = value_in(node, key, line.in_block(meant), done, words) if words else None
            if own is None:
                return
            edits += own
    spans = spans_of_all(edits, plan.line_end)
    if spans and are_apart(spans):
        label = f"{exercise.name} in place of {line.held[meant[0]][0].name} ({line.session.name})"
        said = f"as in week {near}"
        cost = (price("swap", line) - KNOWN, 0, 0)
        label += in_weeks_of(line, meant)
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
            again=True,
        )


def _out_in(plan: Plan, line: Line, weeks: set[int]) -> Spans:
    """The spans that take a line out in some of its weeks, or out of the text where no week is left."""
    left = set(line.held) - weeks
    if left:
        return spans_of_all(kept_to(line.node, line.in_block(left)) or (), plan.line_end)
    return next((spans_of(edit, plan.line_end) for edit in dropped(line.line.place)), ())


def is_of_one_size(one: Exercise, other: Exercise | None) -> bool:
    """Whether two lifts are both large, or both small."""
    return other is not None and is_large(one) == is_large(other)


def is_of_one_movement(one: Exercise | None, other: Exercise) -> bool:
    """Whether two large lifts are for the same movement."""
    return one is not None and one.pattern == other.pattern in COMPOUND


def _differing(sets: float, one: Exercise, other: Exercise | None) -> int:
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
    own = exercise.implement == "bodyweight" and exercise.pattern in OF_ONES_OWN_WEIGHT
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
    unlike = number if not like else 0 if fast else _differing(line.sets, exercise, old)
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
