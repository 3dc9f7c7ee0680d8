"""Days that differ by week, ``{1+3: sunday, 2+4: friday}``, and the minutes of a session.

Nothing here is needed where none of these is written, so that other modules import it only where one is.
"""

from __future__ import annotations

from .by_parts import spans_of
from .read_line import LineReader
from .values import Reader, days_of, hours_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..findings.finding import Finding
    from .on_days import OnDays
    from .quantities import Range
    from .sessions import Weeks
    from .values import LocatedNode

OFF = ("off", "none")
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
        held.update(dict.fromkeys(own, part.words.lower() not in OFF))
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


def read_minutes(
    findings: list[Finding], at: LocatedNode, weeks: int, spans: Weeks
) -> tuple[tuple[int, int, Range], ...]:
    """The minutes of a whole session, for all its weeks or by week."""
    reader = LineReader(findings, weeks, (), spans)
    found = [(first, last, reader.minutes(part)) for first, last, part in reader.by_week(at)]
    return tuple((first, last, known) for first, last, known in found if known)
