"""Days that differ by week, ``{1+3: sunday, 2+4: friday}``; minutes of a session; weekdays before a date.

Nothing here is needed where none of these is written, so that other modules import it only where one is.
"""

from __future__ import annotations

from datetime import timedelta

from ..findings.finding import Edit
from .by_parts import spans_of
from .read_line import LineReader
from .sessions import WEEKDAYS
from .values import Reader, calendar_day, days_of, hours_of
from .weeks import weekday

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date

    from ..findings.finding import Finding
    from .on_days import OnDays
    from .quantities import Range
    from .sessions import Weeks
    from .values import LocatedNode

OFF = "off"
"""Stands in place of a day in a week without the session."""


def read_days_by_week(
    findings: list[Finding], of: OnDays, at: LocatedNode, weeks: tuple[int, Weeks], start_weekday: int
) -> Weeks:
    """Gives a session or an activity its days, and the hours by day, of each week.

    ``weeks`` are how many its block has, and the runs of those in which it takes place; empty for all.
    Returns these runs without the weeks whose day is ``off``.
    """
    held: dict[int, bool] = {}
    for first, last, part in LineReader(findings, weeks[0], (), weeks[1]).by_week(at):
        days = days_of(part, start_weekday), hours_of(part, start_weekday)
        of.by_week.update(dict.fromkeys(range(first, last + 1), days))
        own = [
            week
            for week in range(first, last + 1)
            if not weeks[1] or any(low <= week <= high for low, high in weeks[1])
        ]
        held.update(dict.fromkeys(own, part.words.lower() != OFF))
    of.days = tuple(sorted({day for days, _ in of.by_week.values() for day in days}))
    if all(held.values()):
        return weeks[1]
    if not any(held.values()):
        Reader(findings).report(
            "session-never",
            at.place,
            "It is off in all of its weeks.",
            severity="warning",
            change="Give a week its day, or take it out.",
        )
    return spans_of(frozenset(week for week, is_on in held.items() if is_on))


def day_with_name(reader: Reader, at: LocatedNode, name: str, words: str) -> date | None:
    """The day that ``sat 2027-03-20`` names; reports one that is no such weekday."""
    day, said = calendar_day(words), weekday(name.rstrip(","))
    if day is None:
        reader.report(
            "date-impossible",
            at.place,
            f"{words} is not in the calendar.",
            change="Write the date as year-month-day, a day that the month has.",
        )
        return None
    on = WEEKDAYS[day.weekday()]
    if said is not None and said != on:
        away = (WEEKDAYS.index(said) - day.weekday() + 3) % 7 - 3
        near = day + timedelta(days=away)
        reader.report(
            "date-impossible",
            at.place,
            f"{words} is a {on.capitalize()}, and no {said.capitalize()}.",
            change=f"Write `{on} {words}`, or `{said} {near}`.",
            edits=tuple(
                Edit(at.place, one, f"write {one}", certain=False)
                for one in (f"{on} {words}", f"{said} {near}")
            ),
        )
    return day


def read_minutes(
    findings: list[Finding], at: LocatedNode, weeks: int, spans: Weeks
) -> tuple[tuple[int, int, Range], ...]:
    """The minutes of a whole session, for all its weeks or by week."""
    reader = LineReader(findings, weeks, (), spans)
    found = [(first, last, reader.minutes(part)) for first, last, part in reader.by_week(at)]
    return tuple((first, last, known) for first, last, known in found if known)
