"""Steps by which the coach's own line or lift comes in further weeks, as other weeks hold it."""

from __future__ import annotations

from ..model.week_edits import runs
from ..remedies.moves import dropped
from ..remedies.new_lines import again_in
from ..remedies.some_weeks import CHANGES, carried_on, kept_to, value_in, value_of, within_braces
from ..syntax.tree import Mapping
from ..wording.words import week_list
from .amounts import in_weeks_of, price
from .exercises import at_home, beside, differing, is_of_one_size, would_serve
from .rewriting import SAID_OF_THE_OLD
from .steps import A_SET, BACK, KNOWN, PRICE, EditStep, are_apart, spans_of, spans_of_all

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..findings.finding import Edit
    from .judge import Spans
    from .lines import Line, Plan, WrittenSession


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
    price = (PRICE["add"] + A_SET * round(sets) - BACK, beside(exercise, sets), 0)
    spans = spans_of(edit, plan.line_end)
    said = f"as in week {week}"
    yield EditStep(
        "add", spans, label, (), price, by=sets, adds_work=True, said=said, exercise=exercise, again=True
    )


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
    cost = (PRICE["add"] + A_SET * round(line.sets) - less, beside(exercise, line.sets), 0)
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
        swapped = (price("swap", other) - less, differing(line.sets, exercise, other.exercise), 0)
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
