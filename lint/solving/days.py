"""Steps that put a session on another day, exchange the days of two, halve one or leave it out."""

from __future__ import annotations

from ..findings.finding import Edit
from ..model.naming import day_name
from ..model.week_edits import runs
from ..remedies.some_weeks import kept_to, own_map, value_in
from ..syntax.additions import words_added
from ..syntax.rewrites import dropped
from ..syntax.tree import Scalar, Sequence
from ..wording.words import listed, plain, week_list
from .lighter import eased_load
from .steps import A_SET, HALVED, LEFT_OUT, PRICE, EditStep, are_apart, spans_of_all

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..counting.ledger import Ledger
    from ..counting.week import Week
    from ..syntax.tree import KeyValue
    from .judge import Spans
    from .lines import Line, Plan, WrittenSession

DAYS_A_WEEK = 7

MOST_FURTHER = 2
"""Days that are tried for a session to be held on, too."""

FEWEST_SESSIONS = 2
"""Sessions that a week holds at least for one of them to be left out."""


def other_days(plan: Plan, held: WrittenSession, weeks: Iterable[int] = ()) -> Iterator[EditStep]:
    """The session on another day, in the weeks that are meant or in all: one that is free, or that of another
    session, which takes its day in turn. Everybody must train on it.
    """
    weeks, every = plan.meant(weeks, held.by_week, exactly=True), tuple(sorted(held.by_week))
    if 2 * len(weeks) >= len(every):
        weeks = list(every) if weeks else []
    elif any(is_near_maximal(line, weeks) for line in held.lines):
        return  # in the last days before an event it would only be done on another of them
    for several in dict.fromkeys((tuple(weeks), every)):
        day = _only_day(held, several)
        if not several or not day or plan.is_kept(held.session.name):
            continue
        wider = len(several) > len(weeks)
        yield from _to_free(plan, held, day, several, wider=wider)
        yield from _in_turn(plan, held, day, several, wider=wider)


NEAR_MAXIMAL = 85
"""% of the best lift from which sets are not moved about before an event, but eased (common practice, no
source)."""


def is_near_maximal(line: Line, weeks: Iterable[int]) -> bool:
    """Whether a line is done at nearly its best in one of some weeks."""
    percents = [one.percent for week in weeks for one in line.held.get(week, ())]
    return any(percent is not None and percent.high >= NEAR_MAXIMAL for percent in percents)


def _to_free(
    plan: Plan, held: WrittenSession, day: int, weeks: tuple[int, ...], *, wider: bool
) -> Iterator[EditStep]:
    taken = _taken(plan, weeks)
    for number in sorted(set(range(1, 8)) - taken, key=lambda one: (abs(one - day), one)):
        if not _is_trained_on(plan, number):
            continue
        spans = _written(plan, held, number, weeks)
        name, within = day_name(plan.header.starts, number), _within(held, weeks)
        if spans:
            label = f"{held.session.name} moved to {name}{within}"
            cost = PRICE["move"] + abs(number - day) + wider * FURTHER
            yield EditStep("move", spans, label, [held.start, -number], (cost, 0, 0))


def _taken(plan: Plan, weeks: Iterable[int]) -> set[int]:
    """The days of some weeks on which there is something already: a session, an activity, an event."""
    weeks = set(weeks)
    taken = {one for other in plan.sessions for week in weeks for one in other.by_week.get(week, ())}
    taken |= {
        one
        for ledger in plan.ledgers
        for week in ledger.weeks
        if week.number in weeks
        for one in _days_busy(week)
    }
    return taken | {day for ledger in plan.ledgers for week, day in _event_days(ledger) if week in weeks}


def _in_turn(
    plan: Plan, held: WrittenSession, day: int, weeks: tuple[int, ...], *, wider: bool
) -> Iterator[EditStep]:
    for other in plan.sessions:
        number = _only_day(other, weeks)
        if other is held or not number or number == day or plan.is_kept(other.session.name):
            continue
        if other.session.block is not held.session.block:
            continue
        spans = tuple(sorted((*_written(plan, held, number, weeks), *_written(plan, other, day, weeks))))
        if len(spans) < 2 or not are_apart(spans):
            continue
        label = f"{held.session.name} and {other.session.name} exchange their days{_within(held, weeks)}"
        cost = PRICE["move"] + EXCHANGED + wider * FURTHER
        yield EditStep("move", spans, label, [held.start, other.start], (cost, 0, 0))


EXCHANGED = 10
"""What it costs more that a second session is moved, too."""

FURTHER = 12
"""What a session costs more that is moved in weeks, too, of which a finding says nothing."""


def also_on(plan: Plan, held: WrittenSession) -> Iterator[EditStep]:
    """The session on a further day of the week, too, as far from its others as may be: in all its weeks."""
    entry, days = _own_days(plan, held)
    if entry is None or len(days) != len(held.days):
        return
    busy = set(days) | _taken(plan, held.by_week)
    free = [one for one in range(1, DAYS_A_WEEK + 1) if one not in busy and _is_trained_on(plan, one)]
    free.sort(key=lambda one: (-min(_apart(one, day) for day in days), one))
    sets = round(sum(line.sets for line in held.lines))
    for number, day in enumerate(free[:MOST_FURTHER]):
        name = day_name(plan.header.starts, day)
        value = entry.value
        if isinstance(value, Sequence):
            edits = list(words_added(value, len(days) - 1, [name.lower()], ""))
        else:
            words = plan.text.content[value.start : value.end]
            edits = [Edit(value.place, f"[{words}, {name.lower()}]", "", certain=False)]
        spans = spans_of_all(edits, plan.line_end)
        cost = (PRICE["move"] + A_SET * sets + number, 0, 0)
        label = f"{held.session.name} on {name}, too"
        yield EditStep("move", spans, label, [held.start, -day], cost, adds_work=True)


def no_longer_on(plan: Plan, held: WrittenSession) -> Iterator[EditStep]:
    """The session on one of its days of the week less: in all its weeks."""
    entry, days = _own_days(plan, held)
    if entry is None or not isinstance(entry.value, Sequence) or len(days) < 2:
        return
    for number, (day, item) in enumerate(zip(days, entry.value.items, strict=True)):
        spans = spans_of_all(dropped(item.place), plan.line_end)
        cost = (LEFT_OUT + len(days) - 1 - number, 0, 0)  # the last of them was added last
        label = f"{held.session.name} no longer on {day_name(plan.header.starts, day)}"
        yield EditStep("drop", spans, label, [held.start], cost)


def _own_days(plan: Plan, held: WrittenSession) -> tuple[KeyValue | None, list[int]]:
    """Where a session's weekdays are written, alike for all weeks, and which they are; None where not so."""
    entry = held.node.entries.get("day") or held.node.entries.get("days")
    if entry is None or entry.merged or entry.value.defined is not None or held.node.defined is not None:
        return None, []
    value = entry.value
    several = value.items if isinstance(value, Sequence) else [value]
    known = {day_name(plan.header.starts, one).lower(): one for one in range(1, DAYS_A_WEEK + 1)}
    days = [known.get(one.text.split()[0].lower()) for one in several if isinstance(one, Scalar) and one.text]
    found = [one for one in days if one is not None]
    whole = len(found) == len(several) and not plan.is_kept(held.session.name)
    return (entry, found) if whole and set(found) == held.days else (None, [])


def _apart(one: int, other: int) -> int:
    """Days between two days of a week that comes again and again."""
    return min((one - other) % DAYS_A_WEEK, (other - one) % DAYS_A_WEEK)


def left_out(plan: Plan, held: WrittenSession, weeks: Iterable[int]) -> Iterator[EditStep]:
    """The session left out in the few weeks that are meant, where others are held in them."""
    meant = plan.meant(weeks, held.by_week, exactly=True)
    if not meant or len(meant) > len(held.by_week) // 2 or plan.is_kept(held.session.name):
        return
    if min(sum(week in one.by_week for one in plan.sessions) for week in meant) < FEWEST_SESSIONS:
        return
    block = held.session.block
    left = [week - block.first + 1 for week in held.by_week if week not in meant]
    edits = kept_to(held.node, left, "session")
    if edits:
        label = f"{held.session.name} left out in {week_list(meant)}"
        spans = spans_of_all(edits, plan.line_end)
        yield EditStep("drop", spans, label, [held.start], (LEFT_OUT * len(meant), 0, 0))


def halved(
    plan: Plan, held: WrittenSession, lines: Iterable[Line], weeks: Iterable[int]
) -> Iterator[EditStep]:
    """A session with half the sets of some lines, rounded down, in the few weeks that are meant."""
    meant = plan.meant(weeks, held.by_week, exactly=True)
    if not meant or len(meant) > len(held.by_week) // 2 or plan.is_kept(held.session.name):
        return
    edits: list[Edit] = []
    touches = []
    for line in lines:
        several = {week: line.held[week][0].sets.high for week in meant if week in line.held}
        if not several or not plan.may_touch(line):
            continue
        words = plain(max(min(several.values()) // 2, 1))
        found = value_in(line.node, "sets", line.in_block(several), line.in_block(line.held), words)
        if found and max(several.values()) > 1:
            edits += found
            touches.append(line.start)
            if is_near_maximal(line, meant):
                edits += eased_load(plan, line, meant)
    spans = spans_of_all(edits, plan.line_end)
    if spans and are_apart(spans):
        named = [line.name for line in held.lines if line.start in touches]
        whole = len(touches) == len(held.lines)
        what = held.session.name if whole else f"{listed(named)} ({held.session.name})"
        and_lighter = " and lighter" if any(is_near_maximal(line, meant) for line in lines) else ""
        label = f"{what} with half the sets{and_lighter} in {week_list(meant)}"
        yield EditStep("ease", spans, label, touches, (HALVED, 0, 0))


def _only_day(held: WrittenSession, weeks: Iterable[int]) -> int:
    """The one day of a session in some weeks; 0 where there is none, or more than one."""
    days = {day for week in weeks for day in held.by_week.get(week, (0,))}
    return next(iter(days)) if len(days) == 1 else 0


def _is_trained_on(plan: Plan, number: int) -> bool:
    name = day_name(plan.header.starts, number).lower()
    return all(
        name in one.athlete.days
        for one in plan.ledgers
        if one.athlete and isinstance(one.athlete.days, tuple) and one.athlete.days
    )


def _within(held: WrittenSession, weeks: Iterable[int]) -> str:
    weeks = sorted(weeks)
    return f" in {week_list(weeks)}" if len(weeks) < len(held.by_week) else ""


def _written(plan: Plan, held: WrittenSession, number: int, weeks: Iterable[int]) -> Spans:
    """The spans that write a day of a session in some weeks; none where its day is not written alone."""
    node = held.node
    key = "day" if "day" in node.entries else "days"
    entry = node.entries.get(key)
    if entry is None:
        return ()
    first = held.session.block.first
    own = [week - first + 1 for week in weeks]
    done = [week - first + 1 for week in held.by_week]
    is_map = own_map(entry.value) is not None
    if not is_map and not isinstance(entry.value, Scalar):
        return ()
    name = day_name(plan.header.starts, number).lower()
    old = entry.value
    if isinstance(old, Scalar) and not entry.merged and old.defined is None and " " in old.text.strip():
        name = f"{name} {old.text.strip().partition(' ')[2]}"  # the hour stays
    if isinstance(old, Scalar) and len(own) < len(done):
        if entry.merged or old.defined is not None or node.defined is not None:
            return ()
        others = runs(set(done) - set(own))
        words = f"{{{runs(own)}: {name}, {others}: {old.text}}}"
        edits: list[Edit] | None = [Edit(old.place, words, "", certain=False)]
    else:
        edits = value_in(node, key, own, done, name)
    return spans_of_all(edits, plan.line_end) if edits else ()


def _event_days(ledger: Ledger) -> list[tuple[int, int]]:
    """The week and the day of it of each dated event: nothing is moved onto a meet."""
    return [((number - 1) // 7 + 1, (number - 1) % 7 + 1) for number, _ in ledger.events()]


def _days_busy(week: Week) -> list[int]:
    """The days on which something else than training stands in the diary."""
    return [day for activity in week.activities for day in activity.days_in(week.in_block)]
