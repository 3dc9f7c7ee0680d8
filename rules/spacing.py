"""Time between hard days."""

from __future__ import annotations

from math import ceil

from ..lint.counting.counts import counted_lines
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import day_name
from ..lint.wording.words import first_of, listed, plain, says
from .hard_days import HARD_ACTIVITY, hard_days, needed
from .offers import moving_apart, offering
from .shared import LIFTS_OF_PARTS, as_name, capital

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Severity
    from .hard_days import Day, HardWork
    from .offers import Offer

HOURS_A_DAY = 24


@rule(
    "sessions-too-close",
    family="schedule",
    severity="warning",
    confidence="guideline",
    why="An army manual leaves at least 48 hours between work of the same muscles, and in ten men sets to"
    " failure slowed recovery by one to two days. Thirteen highly trained men kept up two sets an exercise"
    " on four days in a row but felt less recovered, so a team may decide otherwise.",
    sources=("fm21-20-48", "acsm-old-48", "moran-2017", "house-4day"),
    options=(
        Option("hours", 48, "hours between two hard days for a muscle group", "fm21-20-48"),
        Option(
            "hours after failure",
            72,
            "hours, where the first day goes to failure",
            "48 hours and the day by which sets to failure slowed recovery (24 to 48 hours in ten men:"
            " Moran-Navarro and others 2017)",
        ),
        Option("hard day", 4, "direct sets that make a day hard", "common practice"),
        Condition(
            "hard set",
            3,
            "repetitions in reserve at most; sets whose effort is not known count, but for light ones",
            "common practice, no source: 3 left is our choice",
        ),
        Condition(
            "hard set of the advanced",
            1,
            "the same where the level is advanced",
            "common practice; thirteen highly trained men kept their repetitions on four hard days in a row"
            " (House and others, the journal not verified)",
        ),
        Condition(
            "between sessions",
            1,
            "repetitions in reserve at most, written or worked out, where both days are sessions",
            "common practice, no source: what leaves more is done on days in a row, and meant",
        ),
        Condition(
            "heavy",
            80,
            "% of the best lift from which a hard set counts between sessions, but for the advanced",
            "common practice, no source",
        ),
        Condition(
            "any order",
            ("any order", "in a row", "back to back", "consecutive", "on purpose", "that is meant"),
            "words in a note by which the days are the coach's choice: only a match is spoken of then",
            "common practice",
        ),
        Condition(
            "not for",
            ("general health",),
            "goals of programmes in which only a match is spoken of",
            "common practice",
        ),
        HARD_ACTIVITY,
        Option(
            "exempt",
            ("calves", "shins", "abdominals", "obliques", "lower back", "forearms", "neck muscles"),
            "muscle groups",
            "common practice",
        ),
        Condition(
            "daily sports",
            ("weightlifting", "weight lifting", "Olympic lifting", "weightlifter"),
            "words in the name of a sport whose lifts are done day after day",
            "common practice",
        ),
        Condition(
            "daily from",
            3,
            "days a week with a snatch, clean or jerk that make it such a sport unsaid",
            "common practice",
        ),
    ),
    stands_back=("rehabilitation",),
    follows=("legs-heavy-before-event",),
)
def sessions_too_close(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Two days with hard work for the same muscle group, too close to one another.

    Counts direct sets with at most 3 repetitions in reserve, of the advanced with 1, day by day over the
    whole calendar; wants 48 hours between two days that hold 4 or more for a group, 72 where those of the
    first go to failure. Of two days with sessions, only sets count that are surely hard and heavy: with at
    most 1 in reserve, or from 80 % of the best lift, with a bar, a machine or other weights, and of the
    adductors none but their own exercises. So it says nothing of two sessions where health is the goal, or
    a note says that the days stand in any order or in a row. An activity that loads an area high makes its
    day hard for the muscle groups there, unless it takes place on three days a week and more;
    two activities are left to whoever plans them, and lifting after one is a note: how hard it will be, and
    on which day it is, the coach knows. Days without a date or weekday are left alone. Where both
    say the time of day, the hours between are counted from one beginning to the other. A weightlifter
    snatches, cleans, pulls and squats day after day: there only sets to failure are spoken of, in a note. One
    is known by the athlete's `sport`, or by a snatch, clean or jerk on 3 days of the week.

    Flags:
        programme: Legs
        sessions:
          - session: Heavy
            day: monday
            exercises: [{exercise: leg press, sets: 4, reps: 6, rir: 1}]
          - session: Light  # <- here
            day: tuesday
            exercises: [{exercise: leg extension, sets: 4, reps: 12, rir: 1}]

    Passes:
        programme: Legs
        sessions:
          - session: Heavy
            day: monday
            exercises: [{exercise: leg press, sets: 4, reps: 6, rir: 1}]
          - session: Light
            day: wednesday
            exercises: [{exercise: leg extension, sets: 4, reps: 12, rir: 1}]
    """
    days = hard_days(ledger, limits)
    near = farthest(limits)
    for index, later in enumerate(days):
        if later.week.rehabilitation:
            continue
        for before in reversed(days[max(index - near, 0) : index]):
            if not before.may_clash(later):
                continue
            hours = hours_between(before, later)
            close = [
                part
                for part, work in later.hard.items()
                if (first := before.hard.get(part))
                and hours < limits.number(needed(first))
                and _clash(work, first)
                and (work.activity or first.activity or not is_free_order(before, later, limits))
                and (first.failing or not is_daily_sport(ledger, later.week, limits))
            ]
            if close:
                planned = before.activities(close) or is_daily_sport(ledger, later.week, limits)
                severity: Severity = "note" if planned else "warning"
                yield _too_close(before, later, close, days, hours, limits, severity)


def _clash(one: HardWork, other: HardWork) -> bool:
    """Whether a session meets an activity, or another session where both are surely hard for it."""
    if one.activity or other.activity:
        return one.sets is not None or other.sets is not None
    return one.sure is not None and other.sure is not None


def farthest(limits: Limits) -> int:
    """How many days back another one may be too close."""
    return ceil(max(limits.number("hours"), limits.number("hours after failure")) / HOURS_A_DAY)


def is_free_order(before: Day, later: Day, limits: Limits) -> bool:
    """Whether two sessions may stand close: nothing is at stake, or the coach says that they may."""
    programme = later.week.programme
    notes = [visit.session.note for day in (before, later) for visit in day.week.visits]
    return programme.goal in limits.names("not for") or says(
        limits.names("any order"), programme.note, later.week.block.note, *notes
    )


def is_daily_sport(ledger: Ledger, week: Week, limits: Limits) -> bool:
    """Whether the sport itself is to lift day after day, by its name or by what the week holds."""
    sport = ledger.athlete.sport if ledger.athlete else ""
    if says(limits.names("daily sports"), sport):
        return True
    lifting = [
        day
        for day, tally in week.days()
        if any(entry.exercise and says(LIFTS_OF_PARTS, entry.exercise.name) for _, entry in tally.entries())
    ]
    return len(lifting) >= limits.number("daily from")


def _too_close(
    before: Day,
    later: Day,
    close: list[tuple[str, str]],
    days: list[Day],
    hours: float,
    limits: Limits,
    severity: Severity,
) -> DraftFinding:
    programme = later.week.programme
    first, second = (day_name(programme.starts, day.number) for day in (before, later))
    groups = list(dict.fromkeys(group for group, _ in close))
    hours_needed = max((needed(before.hard[part]) for part in close), key=limits.number)
    failing = [sets for part in close if (sets := before.hard[part].failing)]
    words = failing[0].parts[0].entry.worked_out_in_words if failing else ""
    to_failure = f" (to failure{f', {words}' if words else ''})" if failing else ""
    activities = [*before.activities(close), *later.activities(close)]
    movable = later if later.session(close) else before
    session = movable.session(close)
    assert session is not None
    least = limits.words("under {:hard set}", "hard day")
    return found(
        session.place,
        f"{capital(first_of(_worst_first(groups, before, later)))} hard on {before.words(first, close)}"
        f"{to_failure} and {later.words(second, close)}, {plain(round(hours, 1))} h apart.",
        severity=severity,
        wanted=limits.words("{:h}", hours_needed),
        change=f"Move {as_name(session.name)} further from {listed(activities)}, or keep it {least}."
        if activities
        else f"Move one day, or keep it {least}.",
        where=session.name,
        edits=_apart(before, later, close, days, ceil(limits.number(hours_needed) / HOURS_A_DAY)),
        subject=f"{first} {second}",
        line=next((part.entry.prescription.place for part in movable.parts_of(close)), None),
        related=counted_lines(
            *(sets for part in close for day in (before, later) if (sets := day.hard[part].sets))
        ),
        weeks=(movable.week.number,),
        group=listed(groups),
        amount=Amount(hours, limits.number(hours_needed), "h"),
        excess=len(groups),
        once=True,
    )


def _apart(before: Day, later: Day, close: list[tuple[str, str]], days: list[Day], apart: int) -> Offer:
    """Either session on a day that is far enough from all others that are hard for the same groups."""
    return offering(
        *(
            moving_apart(one.week, session, one.number, _as_hard(one, days), apart)
            for one in (later, before)
            if (session := one.session(close)) is not None
        )
    )


def _as_hard(day: Day, days: list[Day]) -> list[int]:
    """The other days of its week that are hard for one of its groups."""
    return [
        one.number
        for one in days
        if one.week is day.week and one is not day and not one.hard.keys().isdisjoint(day.hard)
    ]


def hours_between(before: Day, later: Day) -> float:
    """The hours between two days: from the last start to the first, where all of these are written."""
    hours = float((later.number - before.number) * HOURS_A_DAY)
    starts, ends = before.starts(), later.starts()
    return hours + min(ends) - max(starts) if starts and ends else hours


def _worst_first(groups: list[str], *days: Day) -> list[str]:
    """The groups by the hard sets of the days, the most first."""
    work = [(group, hard.sets.middle) for day in days for (group, _), hard in day.hard.items() if hard.sets]
    return sorted(groups, key=lambda group: -sum(sets for one, sets in work if one == group))
