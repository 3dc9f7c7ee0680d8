"""Days of training against the days that the athlete has."""

from __future__ import annotations

from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import day_name
from ..lint.wording.words import listed
from .offers import moving
from .shared import DAYS_A_WEEK, as_name, capital, free_day, joined, of_days

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.athlete import Athlete
    from ..lint.model.sessions import Session


@rule(
    "days-more-than-athlete",
    family="schedule",
    severity="warning",
    confidence="fact",
    why="The athlete has said when they can train; a session on another day is a session missed.",
    sources=(),
)
def days_more_than_athlete(week: Week, ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """More training days than the athlete has, or other ones.

    Counts the days of a week that hold a session, one without a day for a day; wants no more of them than the
    athlete's `days`, and none on a weekday that is not among those where weekdays are listed. Activities are
    left alone, and so is the day of an event. So is the weekday of sessions that stand only in weeks with an
    event or a day of tests, while other weeks have none, and a day to which a session is moved in a few of
    its weeks.

    Flags:
        programme: Four days
        athlete: {name: Mara, days: [monday, tuesday, thursday, friday]}
        sessions:
          - session: Upper
            day: [monday, thursday]
            exercises: [{exercise: bench press, sets: 3, reps: 8}]
          - session: Lower  # <- here
            day: [tuesday, saturday]
            exercises: [{exercise: leg press, sets: 3, reps: 8}]

    Passes:
        programme: Four days
        athlete: {name: Mara, days: [monday, tuesday, thursday, friday]}
        sessions:
          - session: Upper
            day: [monday, thursday]
            exercises: [{exercise: bench press, sets: 3, reps: 8}]
          - session: Lower
            day: [tuesday, friday]
            exercises: [{exercise: leg press, sets: 3, reps: 8}]
    """
    trained = days_trained(week, ledger)
    if trained is None:
        return
    most, outside, sessions, has = trained.most, trained.outside, trained.sessions, trained.has
    free = free_day(week)
    if outside:
        days, session = [day for day, _ in outside], outside[0][1]
        counted = f"Training on {listed(days)}, not among the athlete's days"
        change = (
            f"Move {as_name(session.name)} to {free}" if free else f"No day is free: {joined(session.name)}"
        )
    elif len(sessions) > most:
        session = sessions[most]
        counted = f"{of_days(len(sessions))} of training a week"
        change = capital(joined(session.name))
    else:
        return
    yield found(
        session.place,
        f"{counted}.",
        severity="note" if week.is_peak else "warning",
        wanted=has if outside else f"the athlete's {has}",
        change=f"{change}, or correct `days`.",
        edits=moving(session, outside[0][0], free) if outside and free else (),
        where=session.name,
        subject="days",
        amount=Amount(len(outside) or len(sessions), 0 if outside else most, "days"),
        related=(Related(trained.athlete.place, f"the athlete's days: {has}"),),
        excess=len(outside) or len(sessions),
    )


class DaysTrained:
    """The days of a week against those of its athlete: at ``most`` so many, ``has`` in words.

    ``sessions`` holds one for each day, ``outside`` those on weekdays that are not listed, with the weekday.
    """

    def __init__(self, athlete: Athlete, most: int, has: str) -> None:
        self.athlete = athlete
        self.most = most
        self.has = has
        self.sessions: list[Session] = []
        self.outside: list[tuple[str, Session]] = []


def days_trained(week: Week, ledger: Ledger) -> DaysTrained | None:
    """The days of a week against those of the athlete; None where nobody says on which they can train."""
    athlete = week.programme.athlete
    if athlete is None or athlete.days is None:
        return None
    of_events = {day for day, _ in ledger.events()}
    dated = [
        (day_name(week.programme.starts, day), tally.visits[0].session)
        for day, tally in week.days()
        if _day_number(week, day) not in of_events
    ]
    if isinstance(athlete.days, int):
        found = DaysTrained(athlete, athlete.days, of_days(athlete.days))
    else:
        has = listed([day.capitalize() for day in athlete.days])
        found = DaysTrained(athlete, len(set(athlete.days)), has)
        moved = _moved_for_an_event(ledger, of_events)
        for_once = _moved_for_once(week)
        found.outside = [
            (day, session)
            for day, session in dated
            if day.lower() not in athlete.days and session not in moved and day not in for_once
        ]
    found.sessions = [session for _, session in dated]
    found.sessions += [visit.session for visit in week.visits if not visit.day]
    return found


def _day_number(week: Week, day: int) -> int:
    """The number of a day of a week, from the start of the programme."""
    return DAYS_A_WEEK * (week.number - 1) + day


def _moved_for_once(week: Week) -> set[str]:
    """The days whose sessions are all moved there in this week and few others, or held in few alone."""
    return {
        day_name(week.programme.starts, day)
        for day, tally in week.days()
        if all(
            visit.session.is_moved(week.in_block, day) or _is_for_few_weeks(visit.session, week)
            for visit in tally.visits
        )
    }


def _is_for_few_weeks(session: Session, week: Week) -> bool:
    """Whether a session is written for less than half of the weeks of its block."""
    held = sum(last - first + 1 for first, last in session.in_weeks)
    return 0 < 2 * held < week.block.weeks


def _moved_for_an_event(ledger: Ledger, of_events: set[int]) -> set[Session]:
    """The sessions that stand in weeks with an event or a day of tests only, where other weeks have none."""
    held: dict[bool, set[Session]] = {True: set(), False: set()}
    for week in ledger.weeks:
        has_one = not of_events.isdisjoint(_day_number(week, day) for day in range(1, DAYS_A_WEEK + 1))
        has_one = has_one or any(visit.session.test for visit in week.visits)
        held[has_one].update(visit.session for visit in week.visits)
    return held[True] - held[False] if held[False] else set()
