"""What stands in the last days before an event."""

from __future__ import annotations

import re
from functools import partial

from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import credit
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import day_name, line_name
from ..lint.wording.words import counted_noun, first_of, says
from .hard_days import HARD_ACTIVITY, loaded
from .shared import LIFTS_OF_PARTS, also, as_name, capital, is_test, named_at, names_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Tally
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.programme import Event


MEETS = ("meet", "competition", "contest", "championship", "championships")
LIFTED_AT = (*MEETS, "test", "tests", "testing", "1RM")
"""Words in the name of an event at which lifts are tried."""


@rule(
    "legs-heavy-before-event",
    family="schedule",
    severity="warning",
    confidence="common practice",
    why="Coaches keep heavy leg work out of the last two days before a match or race. In nine men jumps were"
    " still lower 48 hours after sets to failure, and back 6 hours after sets that stopped half way.",
    sources=("gonzalez-badillo-2016", "moran-2017"),
    options=(
        Option(
            "days",
            2,
            "days before the event",
            "common practice, no source; in nine men jumps were still lower 48 hours after sets to"
            " failure (Gonzalez-Badillo and others 2016)",
        ),
        Option("sets", 4, "heavy direct sets of the legs on a day", "common practice"),
        Condition(
            "many",
            4,
            "such sets on the day before: a warning from here, a note below it and two days before",
            "common practice, no source: what makes a day heavy",
        ),
        Option("areas", ("quadriceps", "hamstrings", "gluteals"), "muscle groups", "common practice"),
        Condition("left at few repetitions", 3, "repetitions in reserve at most, below 8", "common practice"),
        Condition(
            "left at many repetitions", 2, "repetitions in reserve at most, 8 and more", "common practice"
        ),
        Option(
            "matches",
            ("match", "game", "regatta", "race", "competition", "tournament", "meet", "final"),
            "words in the name of an activity that make it an event",
            "common practice",
        ),
        HARD_ACTIVITY,
    ),
    stands_back=("rehabilitation",),
)
def legs_heavy_before_event(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Heavy leg work in the last two days before an event or a match.

    Counts direct sets for quadriceps, hamstrings and gluteals that are heavy: below 8 repetitions with at
    most 3 in reserve, 8 or more with at most 2; sets whose effort is unknown count below 8 repetitions. Wants
    fewer than 4 of them on each of the two days before a dated event, or an activity that is called a match
    or race; two days before, sets below 80 % of the best lift or with 3 in reserve are none. A warning on the
    day before, if effort or load is written for half of them, else a note. The eve of an activity that loads
    the legs high is left to sessions-too-close.

    Flags:
        programme: Match week
        sessions:
          - session: Lower
            day: friday
            exercises: [{exercise: back squat, sets: 8, reps: 4, rir: 2}]  # <- here
          - {activity: match, day: saturday}

    Passes:
        programme: Match week
        sessions:
          - session: Lower
            day: wednesday
            exercises: [{exercise: back squat, sets: 4, reps: 5}]
          - {activity: match, day: saturday}
    """
    events = events_on(ledger, limits)
    if not events:
        return
    close = taken_by_an_activity(ledger, limits)
    for number, week, tally in ledger.training_days():
        ahead = [gap for gap in range(1, int(limits.number("days")) + 1) if number + gap in events]
        if not ahead or week.rehabilitation or (ahead[0] == 1 and number + 1 in close):
            continue
        heavy = tally.sets_where(heaviest(ahead[0], limits), hard=True)
        if heavy.middle < limits.number("sets"):
            continue
        line = heavy.lines()[0][0]
        is_many = ahead[0] == 1 and heavy.middle >= limits.number("many")
        is_sure = is_many and 2 * heavy.where(_says_how_heavy).middle >= heavy.middle
        away = "the day" if ahead[0] == 1 else f"{ahead[0]} days"
        yield found(
            line.place,
            f"{heavy.most} heavy leg sets on {day_name(week.programme.starts, number)}, {away} before"
            f" {events[number + ahead[0]]}.",
            severity="warning" if is_sure else "note",
            wanted=limits.words("fewer than {} on each of the last {:day}", "sets", "days"),
            change=f"Move {as_name(line.session.name)} further away, or leave more in reserve.",
            where=line_name(line),
            related=counted_lines(heavy),
            amount=Amount(heavy.high, limits.number("sets") - 1),
            weeks=(week.number,),
            excess=heavy.high,
        )


def taken_by_an_activity(ledger: Ledger, limits: Limits) -> set[int]:
    """The days with an activity that loads the legs high."""
    areas = limits.names("areas")
    return {
        number
        for number, _, activity in ledger.activities()
        if any(group in areas for group in loaded(activity, limits))
    }


@rule(
    "near-maximal-before-event",
    family="schedule",
    severity="note",
    confidence="common practice",
    why="Before a meet strength athletes lower the work for about a week and keep the load. How near to it"
    " the last all but maximal set may stand, none of our sources says; most coaches leave some days, and"
    " more for deadlifts.",
    sources=("taper-strength", "helms-taper"),
    options=(
        Option("days", 3, "days before a meet or test of the lift", "common practice, no source"),
        Option("days for hinges", 6, "the same for deadlifts", "common practice, no source"),
        Option("percent", 90, "% of the best lift from which a set is all but maximal", "common practice"),
        Condition("left", 1, "repetitions in reserve at most, where no % is known", "common practice"),
        Condition("few", 3, "repetitions at most of such a set", "common practice"),
        Option(
            "events",
            LIFTED_AT,
            "words in the name of an event at which lifts are tried",
            "common practice",
        ),
        Option("lifts", LIFTS_OF_PARTS, "lifts that are left alone: they stay heavy", "common practice"),
    ),
    stands_back=("rehabilitation",),
)
def near_maximal_before_event(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """An all but maximal set of a lift in the last days before a meet or a test of it.

    Looks at dated events that are called a meet, test or the like. Which lifts they are about is what that
    day's session holds, else what the event's name says, else any. Counts their sets of at most 3 repetitions
    from 90 % of the best lift, or with at most 1 in reserve where no % is known. Wants none in the 3 days
    before, for deadlifts in the 6 days before. Snatch, clean and jerk are left alone, and so is what is
    itself a test, where the event names no lift.

    Flags:
        programme: To the meet
        starts: 2026-01-05
        events: [{date: 2026-01-10, event: meet}]
        sessions:
          - session: Last
            day: thursday
            exercises: [{exercise: deadlift, sets: 2, reps: 1, load: 95 %}]  # <- here

    Passes:
        programme: To the meet
        starts: 2026-01-05
        events: [{date: 2026-01-10, event: meet}]
        sessions:
          - session: Last
            day: thursday
            exercises: [{exercise: deadlift, sets: 2, reps: 1, load: 70 %}]
    """
    for number, week, on, event, close in near_maximal(ledger, limits):
        if close and not week.rehabilitation:
            yield _too_heavy(close, week, number, on, event.name, limits)


def near_maximal(ledger: Ledger, limits: Limits) -> Iterator[tuple[int, Week, int, Event, list[SetGroup]]]:
    """Each training day before each event at which lifts are tried, with the day of the event, and with the
    all but maximal sets of these lifts.
    """
    days = ledger.training_days()
    for on, event in ledger.events():
        if not says(limits.names("events"), event.name):
            continue
        tried = _lifts_of(ledger, event, next((tally for number, _, tally in days if number == on), None))
        for number, week, tally in days:
            close = [
                entry
                for _, entry in tally.entries()
                if 0 < on - number <= limits.number(_how_long_before(entry))
                and _is_near_maximal(entry, limits)
                and (any(_is_of(entry, lift) for lift in tried) or (not tried and not is_test(entry)))
            ]
            yield number, week, on, event, close


def _how_long_before(entry: SetGroup) -> str:
    return "days for hinges" if entry.exercise and entry.exercise.pattern == "hip hinge" else "days"


def _is_of(entry: SetGroup, lift: Exercise) -> bool:
    return entry.exercise is not None and entry.exercise.is_close_to(lift)


def _lifts_of(ledger: Ledger, event: Event, day: Tally | None) -> list[Exercise]:
    """The lifts that an event is about: those of its day, else those in its name; none where neither says."""
    held = [entry.exercise for _, entry in day.entries() if entry.exercise and entry.is_done] if day else []
    names = re.split(r"\W+(?:and|or|,)?\W*", event.name)
    return held or [lift for name in names if (lift := ledger.known.exercise(name)) is not None]


def _is_near_maximal(entry: SetGroup, limits: Limits) -> bool:
    """Whether some of its sets are all but maximal: by their share of the best lift, else by what is left."""
    reps = entry.work.reps.a_set() if entry.work.reps else None
    if not entry.is_done or reps is None or reps.low > limits.number("few"):
        return False
    if entry.exercise is None or says(limits.names("lifts"), entry.exercise.name):
        return False
    if entry.percents:
        return max(percent.high for percent in entry.percents) >= limits.number("percent")
    left = entry.written_reserve
    return left is not None and left.high <= limits.number("left")


def _too_heavy(
    close: list[SetGroup], week: Week, number: int, on: int, event: str, limits: Limits
) -> DraftFinding:
    first = close[0]
    load = first.work.load
    at = f" at {load.words}" if load else ""
    away = counted_noun(on - number, "day")
    day = day_name(week.programme.starts, number)
    return found(
        first.work.places.get("load", named_at(first)),
        f"{capital(first_of(names_of(close)))}{at} on {day}, {away} before {event}.",
        wanted=limits.words("nothing from {:%} in the last {:day}", "percent", _how_long_before(first)),
        change="Make it clearly lighter, or move it further away.",
        where=line_name(first.prescription),
        subject=event,
        related=tuple(also(close[1:], "this too")),
        amount=Amount(on - number, limits.number(_how_long_before(first)), "days"),
        weeks=(week.number,),
        excess=number - on,
    )


def events_on(ledger: Ledger, limits: Limits) -> dict[int, str]:
    """Names of dated events, and of activities that are one, by the number of their day."""
    named = {
        number: activity.name
        for number, _, activity in ledger.activities()
        if says(limits.names("matches"), activity.name)
    }
    dated = {number: event.name for number, event in ledger.events()}
    return {number: name for number, name in {**named, **dated}.items() if not says(IN_PASSING, name)}


IN_PASSING = (
    "low key", "train through", "trained through", "training through", "for fun", "friendly",
    "training match", "practice match", "no taper",
)  # fmt: skip
"""Words in the name of an event that nobody rests for (common practice, no source)."""


def _says_how_heavy(entry: SetGroup) -> bool:
    return entry.reserve is not None or entry.work.load is not None


HEAVY_FROM, LEFT = 80, 2
"""% of the best lift from which, and repetitions left up to which, a set tires for days (common practice)."""


def heaviest(days: int, limits: Limits) -> Callable[[SetGroup], bool]:
    """What leg work is too heavy so many days before an event."""
    return partial(_is_heavy_leg_work if days == 1 else _is_surely_heavy, limits=limits)


def _is_surely_heavy(entry: SetGroup, limits: Limits) -> bool:
    """Whether leg work still tires two days later: not where load or effort say that it is lighter."""
    percent, left = entry.percent, entry.written_reserve
    if percent is not None:
        return _is_heavy_leg_work(entry, limits) and percent.high >= HEAVY_FROM
    return _is_heavy_leg_work(entry, limits) and (left is None or left.low <= LEFT)


def _is_heavy_leg_work(entry: SetGroup, limits: Limits) -> bool:
    exercise = entry.exercise
    if exercise is None or not any(credit(exercise, area) == 1 for area in limits.names("areas")):
        return False
    few = entry.slot == "heavy"
    if entry.reserve is None:
        return few
    return entry.reserve.low <= limits.number(
        "left at few repetitions" if few else "left at many repetitions"
    )
