"""Weekly sets between what trials can measure and what can be recovered from."""

from __future__ import annotations

from math import ceil

from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import DIRECT, KINDS
from ..lint.engine.limits import COUNTING, Condition, Option, floored, group_of, limited
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import line_name
from ..lint.wording.words import counted_noun, plain, sets_of
from .excess import WITHOUT_LIMIT, Excess, standing_out
from .offers import cutting, dropping, offering, raising
from .shared import indirect_sets, put_on, taken_off, unless

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.week import FullTurn, Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Severity
    from ..lint.text.places import Term


@rule(
    "weekly-sets-over-limit",
    family="dose",
    severity="warning",
    confidence="common practice",
    why="More sets bring less and less and must be recovered from. No trial sets a ceiling; this is the limit"
    " that your team, or common practice, has chosen.",
    sources=("cp-cap", "bazvalle-2022", "pelland-2026-frac", "pelland-2026-hyp"),
    options=(
        Option("most", 20, "sets a week for a muscle group", "cp-cap"),
        WITHOUT_LIMIT,
        Option("groups", {}, "sets a week, by muscle group", "none by default; write your own"),
        COUNTING,
        Condition(
            "blocks on",
            (DIRECT,),
            "kind of count: a limit that is not the team's gives a warning by it",
            "common practice: what indirect sets add is worth a note",
        ),
    ),
    stands_back=("rehabilitation", "peak"),
    follows=("weekly-sets-over-limit", "exercise-sets-high"),
)
def weekly_sets_over_limit(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """More hard sets for a muscle group in a week than its limit.

    Counts hard sets, those on the clock where it is known how hard they are; wants no more than the limit,
    which is judged on the high end of a range. The default
    limit gives a warning for direct sets alone, and a note where only the indirect ones, counted half, go
    past it. A limit of the team's own gives a warning by the team's way of counting. It points at the value
    that makes the week stand out from its neighbours, else at the line that crosses the limit. Where
    sessions rotate it also gives the mean of a full turn: a week over the limit in a turn that keeps to it
    is a note.

    Flags:
        programme: Chest
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 12, reps: 8}
              - {exercise: dumbbell fly, sets: 9, reps: 12}  # <- here

    Passes:
        programme: Chest
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 12, reps: 8}
              - {exercise: dumbbell fly, sets: 8, reps: 12}
    """
    counting = limits.name("counting")
    firm = min(counting, limits.name("blocks on"), key=KINDS.index)
    full = week.groups_from(limits.number("most"), counting)
    for group, limit in limited(week, limits).items():
        if limit == "most" and group not in full:
            continue
        most = limits.number(limit)
        blocking = counting if limit != "most" or limits.is_the_teams("most") else firm
        bound = limits.words("at most {} a week", limit)
        firmly, all_told = (Excess(week, group, kind, most) for kind in (blocking, counting))
        if firmly.sets > 0:
            yield _over(week, firmly, bound)
        elif all_told.sets > 0:
            yield _over(week, all_told, bound, "note")


def _over(week: Week, over: Excess, bound: str, severity: Severity = "warning") -> DraftFinding:
    """A group over its limit; of a week that stands out, the value that makes it."""
    turn = week.turn()
    mean = turn.a_week(turn.tally.sets(over.group, over.kind).high)
    value = standing_out(week, lambda one: one.sets(over.group, over.kind), over.limit)
    line = value.prescription if value else over.line()
    return found(
        value.work.places.get("sets", line.place) if value else line.place,
        f"{over.words()}{_in_the_mean(mean, turn)}.",
        severity=severity if mean > over.limit else "note",
        wanted=bound,
        change=f"{taken_off(over.count, over.limit)}.",
        where=line_name(line),
        subject=over.group,
        group=over.group,
        amount=over.amount(),
        line=line.place,
        edits=cutting(over.count, over.limit),
        related=counted_lines(over.count),
        excess=over.sets,
    )


def _in_the_mean(mean: float, turn: FullTurn) -> str:
    """What a week of the turn holds in the mean, where sessions rotate."""
    if not turn.words:
        return ""
    return f" in one week of the rotation, {plain(mean)} on average over its {len(turn.weeks)}"


@rule(
    "weekly-sets-under-floor",
    family="dose",
    severity="warning",
    confidence="meta-analysis",
    why="Below about four sets a week trials can hardly tell growth from none. That is a limit of what they"
    " can measure, not a minimum that the body sets.",
    sources=("pelland-2026-min", "pelland-2026-frac"),
    options=(Option("least", 4, "sets a week for a muscle", "pelland-2026-min"), COUNTING),
    stands_back=("rehabilitation", "peak"),
    follows=("knee-flexion-missing",),
)
def weekly_sets_under_floor(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """Fewer hard sets in a typical week than trials can measure, for a muscle that the programme names.

    Looks at muscles and muscle groups in the focus or among the priorities of a programme for size, where
    they get something. Counts hard sets, helping ones as half, over a full turn where sessions rotate; wants
    the floor, judged on the low end of a range. A warning for a priority, else a note.

    Flags:
        programme: Arms
        goal: hypertrophy
        priority: [biceps]
        sessions:
          - session: Arms
            exercises:
              - {exercise: barbell curl, sets: 3, reps: 10}  # <- here

    Passes:
        programme: Arms
        goal: hypertrophy
        priority: [biceps]
        sessions:
          - session: Arms
            exercises:
              - {exercise: barbell curl, sets: 4, reps: 10}
    """
    least, counting, turn = limits.number("least"), limits.name("counting"), week.turn()
    for area, (term, is_priority) in floored(week).items():
        count = turn.tally.sets(area, counting)
        mean = turn.a_week(count.low)
        if not count or mean >= least:
            continue
        if turn.tally.leaves_open(areas=(area,)):
            continue
        line = count.lines()[0][0]
        yield found(
            line.place,
            f"{sets_of(count.low)}{turn.words or ' a week'} for the {term.words}"
            f"{indirect_sets(turn.tally, (area,), counting)}"
            f"{unless(turn.tally, areas=(area,), does='adds to them')}.",
            severity="warning" if is_priority else "note",
            wanted=limits.words("at least {} a week" if turn.words else "at least {}", "least"),
            change=f"{f'Add {sets_of(least - mean)} a week' if turn.words else put_on(count, least)},"
            f" or drop {term.words} from `{'priority' if is_priority else 'focus'}`.",
            where=line_name(line),
            edits=offering(*([] if turn.words else [raising(count, least)]), dropping(term.place)),
            subject=area,
            group=area,
            amount=Amount(mean, least),
            related=counted_lines(count),
            excess=least - mean,
        )


@rule(
    "weekly-hard-sets-high",
    family="dose",
    severity="warning",
    confidence="common practice",
    why="All hard sets of a week draw on one athlete. None of our sources sets a limit for them together; a"
    " team that knows its athletes can set its own.",
    sources=(),
    options=(
        Option(
            "most",
            100,
            "hard sets a week, all muscles together",
            "no source: a round number to start from; write your own",
        ),
    ),
    stands_back=("rehabilitation", "peak"),
    off=True,
)
def weekly_hard_sets_high(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """More hard sets in a week, all muscles together, than the team allows.

    Counts every hard set of a typical week once, whatever it trains; wants no more than the team's limit,
    judged on the high end of a range. Off until a team asks for it.

    Flags:
        programme: Camp
        sessions:
          - session: Gym  # <- here
            day: [monday, tuesday, thursday, friday, saturday]
            exercises:
              - {exercise: back squat, sets: 8, reps: 3}
              - {exercise: bench press, sets: 7, reps: 3}
              - {exercise: lat pulldown, sets: 6, reps: 8}

    Passes:
        programme: Camp
        sessions:
          - session: Gym
            day: [monday, tuesday, thursday, friday, saturday]
            exercises:
              - {exercise: back squat, sets: 8, reps: 3}
              - {exercise: bench press, sets: 7, reps: 3}
              - {exercise: lat pulldown, sets: 5, reps: 8}
    """
    sets, most = week.all_sets(hard=True), limits.number("most")
    if not week.is_typical() or sets.high <= most:
        return
    fullest = max(week.visits, key=lambda visit: visit.all_sets(hard=True).high)
    yield found(
        fullest.session.place,
        f"{sets.most} hard sets in the week; {fullest.session.name} holds the most,"
        f" {fullest.all_sets(hard=True).most}.",
        wanted=limits.words("at most {} a week", "most"),
        change=f"{taken_off(sets, most)}.",
        where=fullest.session.name,
        edits=cutting(sets, most),
        subject="the week",
        amount=Amount(sets.high, most),
        related=counted_lines(sets),
        excess=sets.high,
    )


@rule(
    "spread-too-thin",
    family="dose",
    severity="note",
    confidence="common practice",
    why="Trials taken together can measure growth from about four sets a week on; what work now and then"
    " brings is not known. That is a limit of what they can measure, not a minimum that the body sets.",
    sources=("pelland-2026-min", "pelland-2026-frac"),
    options=(
        Condition("weeks", 4, "typical weeks from which a programme is looked at", "common practice"),
        Option("apart", 2, "weeks in which it is trained at least once, on average", "common practice"),
        Option(
            "least",
            4,
            "sets in four weeks",
            "common practice, no source: one set a week, a quarter of the 4 from which trials can measure"
            " growth (Pelland and others 2026)",
        ),
        COUNTING,
    ),
    stands_back=("rehabilitation", "peak"),
)
def spread_too_thin(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Little training, spread over the weeks, for a muscle that the programme names.

    Looks at what stands in the focus or among the priorities, over typical weeks where there are 4 or more.
    Wants hard sets for it in every second week or oftener, and, helping sets counted half, 4 sets or more in
    four weeks; the latter not where size is the goal, since the weekly floor speaks there.

    Flags:
        programme: Rows
        focus: [back]
        weeks: 6
        sessions:
          - session: Gym
            exercises:
              - {exercise: bent-over row, sets: {1: 4, 2-3: 0, 4: 4, 5-6: 0}, reps: 8}  # <- here

    Passes:
        programme: Rows
        focus: [back]
        weeks: 6
        sessions:
          - session: Gym
            exercises:
              - {exercise: bent-over row, sets: {1: 4, 2-3: 0, 4: 4, 5: 0, 6: 4}, reps: 8}
    """
    counting, every, least = limits.name("counting"), limits.number("apart"), limits.number("least")
    for term, weeks in named_terms(ledger):
        together = ledger.of_weeks(weeks)
        sets = together.sets(term.words, counting)
        if len(weeks) < limits.number("weeks") or not sets or together.leaves_open(areas=(term.words,)):
            continue
        trained = sum(week.sets(term.words, counting).low > 0 for week in weeks)
        in_four = sets.low * 4 / len(weeks)
        is_rare = trained * every < len(weeks)
        is_little = in_four < least and ledger.programme.goal != "hypertrophy"
        if not is_rare and not is_little:
            continue
        line = sets.lines()[0][0]
        yield found(
            line.place,
            f"{sets_of(str(sets))} for the {term.words} in {f'{trained} of ' if trained < len(weeks) else ''}"
            f"{counted_noun(len(weeks), 'week')}"
            f"{indirect_sets(together, (term.words,), counting)}"
            f"{unless(together, areas=(term.words,), does='adds to them')}.",
            wanted=limits.words("sets every {:week}, at least {} in 4 weeks", "apart", "least"),
            change=f"Add a set or two every week, or drop {term.words} from `focus` and `priority`.",
            where=line_name(line),
            subject=group_of(term.words),
            group=group_of(term.words),
            amount=Amount(sets.low, least * len(weeks) / 4)
            if is_little
            else Amount(trained, ceil(len(weeks) / every), "weeks"),
            edits=dropping(term.place),
            related=counted_lines(sets, of="" if is_little else f"{sets} sets"),
        )


def named_terms(ledger: Ledger) -> list[tuple[Term, list[Week]]]:
    """What stands in a focus or among the priorities, each with the typical weeks for which it is meant."""
    weeks = ledger.typical_weeks()
    own_focus = [week for week in weeks if not week.block.focus]
    named = [(term, weeks) for term in ledger.programme.priority]
    named += [(term, own_focus) for term in ledger.programme.focus]
    for block in ledger.programme.blocks:
        named += [(term, [week for week in weeks if week.block is block]) for term in block.focus]
    return named
