"""The days of a session or an activity where they differ by week: ``{1+3: sunday, 2+4: friday}``.

Nothing here is needed where they are the same each week, so that `read_programme` imports it only when not.
"""

from __future__ import annotations

from .read_line import LineReader
from .values import days_of, hours_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..findings.finding import Finding
    from .on_days import OnDays
    from .sessions import Weeks
    from .values import LocatedNode


def read_days_by_week(
    findings: list[Finding], of: OnDays, at: LocatedNode, weeks: tuple[int, Weeks], start_weekday: int
) -> None:
    """Gives a session or an activity its days, and the hours by day, of each week.

    ``weeks`` are how many its block has, and the runs of those in which it takes place; empty for all.
    """
    for first, last, part in LineReader(findings, weeks[0], (), weeks[1]).by_week(at):
        held = days_of(part, start_weekday), hours_of(part, start_weekday)
        of.by_week.update(dict.fromkeys(range(first, last + 1), held))
    of.days = tuple(sorted({day for days, _ in of.by_week.values() for day in days}))
