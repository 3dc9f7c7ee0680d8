"""Weekly sets between what trials can measure and what can be recovered from."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.counting.credits import HELPING
from ..lint.counting.tally import counted_lines
from ..lint.engine.limits import COUNTING, Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import found
from ..lint.model.naming import line_name
from ..lint.wording.words import counted_noun, listed, plain, sets_of
from .excess import WITHOUT_LIMIT, Excess, group_of
from .shared import put_on, taken_off, unless

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.week import FullTurn, Week
    from ..lint.engine.limits import Limits, Named
    from ..lint.findings.finding import DraftFinding, Severity
    from ..lint.model.sessions import Prescription
    from ..lint.text.places import Term

_NO_CEILING = " (common practice; no trial sets a ceiling)"
_MEASURED = ", the least that trials can measure (no biological minimum)"
"""Grounds of limits, as findings give them."""


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
    ),
    stands_back=("rehabilitation", "peak"),
)
def weekly_sets_over_limit(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """More hard sets for a muscle group in a week than its limit.

    Counts hard sets, those in which the muscle only helps as half; wants no more than the limit, which is
    judged on the high end of a range. It points at the line that crosses it. Where sessions rotate it also
    gives the mean of a full turn: a week over the limit in a turn that keeps to it is a note.

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
    own: dict[str, Named] = {group_of(name): ("groups", name) for name in limits.table("groups")}
    turn = week.turn()
    crossed: dict[Prescription, list[Excess]] = {}
    for group in dict.fromkeys([*week.groups(), *own]):
        if group not in own and group in limits.names("without limit"):
            continue
        count = week.sets(group, limits.name("counting"))
        limit = own.get(group, "most")
        if count.high > limits.number(limit):
            bound = limits.words("{} a week", limit, ground=_NO_CEILING)
            mean = turn.a_week(turn.tally.sets(group, limits.name("counting")).high)
            excess = Excess(week, group, count, limits.number(limit), bound, mean)
            crossed.setdefault(excess.line(), []).append(excess)
    for line, over in crossed.items():
        worst = max(over, key=lambda one: one.sets)
        yield found(
            line.place,
            f"{listed([one.words() for one in over])}{_in_the_mean(over, turn)}.",
            severity="warning" if any(one.mean > one.limit for one in over) else "note",
            wanted=f"at most {listed(list(dict.fromkeys(one.bound for one in over)))}",
            change=f"{taken_off(worst.count, worst.limit)}; or move the limit in spotline.yaml.",
            where=line_name(line),
            subject=listed([one.group for one in over]),
            related=counted_lines(*(one.count for one in over)),
            excess=worst.sets,
        )


def _in_the_mean(over: list[Excess], turn: FullTurn) -> str:
    """What a week of the turn holds in the mean, where sessions rotate."""
    if not turn.words:
        return ""
    means = listed(list(dict.fromkeys(plain(one.mean) for one in over)))
    return f" in one week of a turn, {means} a week in the mean of its {len(turn.weeks)} weeks"


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
    programme = week.programme
    if programme.goal != "hypertrophy" or not week.is_typical():
        return
    named: dict[str, tuple[Term, Severity]] = {}
    for term in week.block.focus or programme.focus:
        named[group_of(term.words)] = (term, "note")
    for term in programme.priority:
        named[group_of(term.words)] = (term, "warning")
    least, counting, turn = limits.number("least"), limits.name("counting"), week.turn()
    for area, (term, serious) in named.items():
        count = turn.tally.sets(area, counting)
        mean = turn.a_week(count.low)
        if not catalogue.is_group(area) or not count or mean >= least:
            continue
        if turn.tally.leaves_open(areas=(area,)):
            continue
        line = count.lines()[0][0]
        yield found(
            line.place,
            f"{sets_of(count.low)}{turn.words or ' a week'} for the {term.words}, {HELPING[counting]}"
            f"{unless(turn.tally, areas=(area,), does='adds to them')}.",
            severity=serious,
            wanted=limits.words("at least {}", "least", ground=_MEASURED),
            change=f"{put_on(count, least)}; or take {term.words} out of the"
            f" {'priorities' if serious == 'warning' else 'focus'}."
            if not turn.words
            else f"Add {sets_of(least - mean)} a week, or take {term.words} out of the"
            f" {'priorities' if serious == 'warning' else 'focus'}.",
            where=line_name(line),
            subject=area,
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
        wanted=limits.words("at most {:hard set} a week", "most", ground=" (your team's limit)"),
        change=f"{taken_off(sets, most)}; or move the limit in spotline.yaml.",
        where=fullest.session.name,
        subject="the week",
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
    for term, weeks in _named(ledger):
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
            f"{sets_of(str(sets))} for the {term.words} in {counted_noun(len(weeks), 'week')},"
            f" on {trained} of them,"
            f" {HELPING[counting]}{unless(together, areas=(term.words,), does='adds to them')}.",
            wanted=limits.words(
                "work for it in one week of {}, and at least {:set} in four", "apart", "least"
            ),
            change=f"Give it a set or two every week, or take {term.words} out of focus and priorities.",
            where=line_name(line),
            subject=group_of(term.words),
            related=counted_lines(sets),
        )


def _named(ledger: Ledger) -> list[tuple[Term, list[Week]]]:
    """What stands in a focus or among the priorities, each with the typical weeks for which it is meant."""
    weeks = ledger.typical_weeks()
    own_focus = [week for week in weeks if not week.block.focus]
    named = [(term, weeks) for term in ledger.programme.priority]
    named += [(term, own_focus) for term in ledger.programme.focus]
    for block in ledger.programme.blocks:
        named += [(term, [week for week in weeks if week.block is block]) for term in block.focus]
    return named
