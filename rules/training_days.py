"""Days of the week: how many, which, and how often."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.body.equipment import LOADED
from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import TOTAL
from ..lint.counting.week import muscles_of
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import day_name, line_name
from ..lint.wording.words import listed, says
from .shared import DAYS_A_WEEK, free_day, is_cut_short, of_days

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.text.places import Term


@rule(
    "frequency-low",
    family="schedule",
    severity="note",
    confidence="meta-analysis",
    why="In trials taken together strength rose more with two days a week than with one at the same number of"
    " sets; two other reviews found no clear difference. Muscle size hardly depends on it.",
    sources=("pelland-2026-freq", "acsm-2026-freq", "ralston-2018", "cuthbert-2021"),
    options=(
        Option(
            "least days",
            2,
            "days a week for a priority",
            "two days: Pelland and others 2026, read second-hand, where strength rose by 17 % with two"
            " days a week and by 13 % with one; one day in season: common practice, no source",
            by=(({"phase": "in-season"}, 1),),
        ),
        Condition(
            "once a week", ("deadlift",), "words in names of lifts trained once a week", "common practice"
        ),
    ),
    stands_back=("rehabilitation", "peak"),
)
def frequency_low(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """A priority that is trained on fewer than two days a week where the goal is strength.

    Counts the days of typical weeks on which hard sets train a muscle among the priorities, helping sets
    included, or a lift among them or a close variant of it; sessions without a day count for a day each.
    Wants two in some week of the block, one in season. A priority that is not trained at all is for
    other rules to say. Silent for deadlifts, once a week by custom, for lifts beside activities on 3 days or
    more, and for muscles that an activity loads.

    Flags:
        programme: Strength
        goal: strength
        priority: [back squat]
        sessions:
          - session: Squat
            day: monday
            exercises: [{exercise: back squat, sets: 6, reps: 4}]  # <- here
          - session: Press
            day: thursday
            exercises: [{exercise: overhead press, sets: 4, reps: 5}]

    Passes:
        programme: Strength
        goal: strength
        priority: [back squat]
        sessions:
          - session: Squat
            day: monday
            exercises: [{exercise: back squat, sets: 3, reps: 4}]
          - session: Press
            day: thursday
            exercises:
              - {exercise: overhead press, sets: 4, reps: 5}
              - {exercise: back squat, sets: 3, reps: 4}
    """
    if not needs_days(week):
        return
    least = limits.number("least days")
    block = week.weeks_of_block()
    for term in week.programme.priority:
        count = training(week, term)
        if not count or may_hide(week, term) or is_once_a_week(week, term, limits):
            continue
        if max(training(other, term).occasions() for other in block) >= least:
            continue
        line = count.lines()[0][0]
        days = listed([day_name(week.programme.starts, day) for day in count.days()])
        on_days = f" ({days})" if days else ""
        yield found(
            line.place,
            f"{term.words}, a priority, on {of_days(count.occasions())} a week{on_days}.",
            wanted=limits.words("at least {:day}", "least days"),
            change=_shared_out(week, line.session.name),
            where=line_name(line),
            subject=term.words,
            group=term.words,
            amount=Amount(count.occasions(), least, "days"),
            related=counted_lines(count, of=f"{count} sets"),
            excess=-count.occasions(),
        )


def needs_days(week: Week) -> bool:
    """Whether a week is one in which a priority is to come on several days."""
    return week.programme.goal == "strength" and week.is_typical()


def is_once_a_week(week: Week, term: Term, limits: Limits) -> bool:
    """Whether a priority is trained once a week by custom, or on further days by an activity."""
    lift = week.programme.known.exercise(term.words)
    if lift is not None and (says(limits.names("once a week"), lift.name) or _is_beside_a_sport(week)):
        return True
    loaded = [area for activity in week.activities for area, grade in activity.loads if grade != "low"]
    return not muscles_of([term]).isdisjoint(muscles_of(loaded))


DAYS_OF_SPORT = 3
"""Days of activities a week beside which a lift may be trained once (common practice, no source)."""


def _is_beside_a_sport(week: Week) -> bool:
    days = {day for activity in week.activities for day in activity.days_in(week.in_block)}
    return len(days) >= DAYS_OF_SPORT


ANOTHER_DAY = "Agree on another day with the athlete and write it under `days`, or waive this."
"""What to do where every day of the athlete's is taken."""


def _shared_out(week: Week, session: str) -> str:
    """How a lift comes to a second day: by a further session of the week, else on a day that is free."""
    if len(week.visits) > 1:
        return f"Move some of its sets from {session} to another session."
    if free := free_day(week):
        return f"Move some of its sets from {session} to {free}."
    return ANOTHER_DAY


def training(week: Week, term: Term) -> Count:
    """Hard sets that train a priority: a muscle or other area, else a lift and its close variants."""
    if catalogue.area(term.words) is not None:
        return week.sets(term.words, TOTAL)
    lift = week.programme.known.exercise(term.words)
    return week.sets_where(
        lambda entry: lift is not None and entry.exercise is not None and entry.exercise.is_close_to(lift),
        hard=True,
    )


def may_hide(week: Week, term: Term) -> bool:
    """Whether a line that cannot be counted may train a priority."""
    if catalogue.area(term.words) is not None:
        return week.could_hold(areas=(term.words,))
    lift = week.programme.known.exercise(term.words)
    assert lift is not None
    unread = (entry.exercise for entry in week.unsure() if entry.exercise is not None)
    return any(exercise.is_close_to(lift) for exercise in unread) or bool(week.may_train(lift.actions))


@rule(
    "rest-day-missing",
    family="schedule",
    severity="note",
    confidence="common practice",
    why="Many coaches leave a day of the week free, for recovery and as room for a session that was missed."
    " None of our sources sets a number.",
    sources=(),
    options=(
        Option("least", 1, "days of the week without training", "common practice"),
        Condition(
            "easy activity", 3, "session rating up to which an activity is no training", "common practice"
        ),
    ),
    stands_back=("rehabilitation",),
)
def rest_day_missing(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """A week without a day off.

    Counts the days that hold hard sets, and those of activities rated harder than 3 of 10; wants at least one
    day of the week without either. Activities without a stated effort are taken as easy; left alone are
    sessions without a day, and work with the body alone where health is the goal.

    Flags:
        programme: Every day
        sessions:
          - session: Upper
            day: [monday, wednesday, friday, sunday]
            exercises: [{exercise: bench press, sets: 3, reps: 8}]
          - session: Lower  # <- here
            day: [tuesday, thursday, saturday]
            exercises: [{exercise: leg press, sets: 2, reps: 8}]

    Passes:
        programme: Every day but one
        sessions:
          - session: Upper
            day: [monday, wednesday, friday]
            exercises: [{exercise: bench press, sets: 3, reps: 8}]
          - session: Lower
            day: [tuesday, thursday, saturday]
            exercises: [{exercise: leg press, sets: 2, reps: 8}]
    """
    if not week.activities and DAYS_A_WEEK - len(week.by_day()) >= limits.number("least"):
        return
    lifting, free = days_off(week, limits)
    if free >= limits.number("least") or not lifting:
        return
    lightest = min(lifting, key=lambda day: (lifting[day].middle, day))
    session = lifting[lightest].parts[0].visit.session
    day = day_name(week.programme.starts, lightest)
    other = DAYS_A_WEEK - free - len(lifting)
    also = f" and other training on {other}" if other else ""
    yield found(
        session.place,
        f"Lifting on {of_days(len(lifting))}{also}; {of_days(free) if free else 'no day'} off.",
        wanted=limits.words("at least {:day} off", "least"),
        change=f"Take {day} off, the day with the fewest sets, and spread its work.",
        where=session.name,
        subject="rest day",
        amount=Amount(free, limits.number("least"), "days"),
    )


def days_off(week: Week, limits: Limits) -> tuple[dict[int, Count], int]:
    """The days with hard sets, none where health asks for a body alone; and how many are left without these
    and without hard activities.
    """
    lifting = {day: sets for day, tally in week.days() if (sets := tally.all_sets(hard=True))}
    loaded = any(one.implement in LOADED for _, one in week.entries())
    if not loaded and week.programme.goal == "general health":
        return {}, DAYS_A_WEEK
    easy = limits.number("easy activity")
    other = {
        day
        for activity in week.activities
        if activity.effort is not None and activity.effort.middle > easy
        for day in activity.days_in(week.in_block)
        if day not in lifting
    }
    return lifting, DAYS_A_WEEK - len(lifting) - len(other)


@rule(
    "older-adult-days",
    family="schedule",
    severity="note",
    confidence="guideline",
    why="For people of 65 and over strength training on two or three days a week is advised. How much of it"
    " suits one athlete is for them, their coach and their clinician to say.",
    sources=("fragala-2019", "uk-cmo-2019"),
    options=(
        Option(
            "age",
            65,
            "years",
            "common practice, no source: the age from which health guidelines speak of older adults",
        ),
        Option("least days", 2, "days a week", "fragala-2019"),
    ),
    stands_back=("rehabilitation", "peak"),
)
def older_adult_days(week: Week, ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Fewer than two training days a week for an athlete of 65 or over.

    Counts the days of typical weeks that hold a session, one without a day for a day; wants two. Leaves alone
    a week with fewer sessions than those around it, a holiday, and one with an activity, be it a class.

    Flags:
        programme: Strong at seventy
        athlete: {name: Ottilie, age: 70}
        sessions:
          - session: Whole body  # <- here
            day: monday
            exercises: [{exercise: leg press, sets: 2, reps: 8}]

    Passes:
        programme: Strong at seventy
        athlete: {name: Ottilie, age: 70}
        sessions:
          - session: Whole body
            day: [monday, thursday]
            exercises: [{exercise: leg press, sets: 2, reps: 8}]
    """
    if not needs_two_days(week, ledger, limits):
        return
    days = own_days(week)
    if not days or days >= limits.number("least days"):
        return
    session = next(visit.session for visit in week.visits if visit.own)
    yield found(
        session.place,
        f"{of_days(days)} a week for an athlete of {_age(week):g}.",
        wanted=limits.words("{:day} a week or more at {} and over", "least days", "age"),
        change=f"Spread {session.name} over {free} too." if (free := free_day(week)) else ANOTHER_DAY,
        where=session.name,
        subject="days",
        amount=Amount(days, limits.number("least days"), "days"),
    )


def needs_two_days(week: Week, ledger: Ledger, limits: Limits) -> bool:
    """Whether a week is one of an athlete old enough, without activities, and not cut short."""
    age = _age(week)
    if age is None or age < limits.number("age"):
        return False
    return week.is_typical() and not week.activities and not is_cut_short(week, ledger)


def _age(week: Week) -> float | None:
    return week.programme.athlete.age if week.programme.athlete else None


def own_days(week: Week) -> int:
    """The days of a week with a session of the programme, one without a day for a day."""
    return len({visit.day or visit for visit in week.visits if visit.own})
