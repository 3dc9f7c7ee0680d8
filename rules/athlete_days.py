"""The days of a week against those on which its athlete can train."""

from __future__ import annotations

from ..lint.model.naming import day_name
from ..lint.wording.words import counted_noun, listed
from .shared import DAYS_A_WEEK

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.week import Week
    from ..lint.model.athlete import Athlete
    from ..lint.model.sessions import Session


def of_days(number: float) -> str:
    """``2 days``."""
    return counted_noun(number, "day")


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
        found.outside = [
            (day, session)
            for day, session in dated
            if day.lower() not in athlete.days and session not in moved
        ]
    found.sessions = [session for _, session in dated]
    found.sessions += [visit.session for visit in week.visits if not visit.day]
    return found


def _day_number(week: Week, day: int) -> int:
    """The number of a day of a week, from the start of the programme."""
    return DAYS_A_WEEK * (week.number - 1) + day


def _moved_for_an_event(ledger: Ledger, of_events: set[int]) -> set[Session]:
    """The sessions that stand in weeks with an event only, where other weeks have none."""
    held: dict[bool, set[Session]] = {True: set(), False: set()}
    for week in ledger.weeks:
        days = (_day_number(week, day) for day in range(1, DAYS_A_WEEK + 1))
        has_one = not of_events.isdisjoint(days)
        held[has_one].update(visit.session for visit in week.visits)
    return held[True] - held[False] if held[False] else set()
