"""Activities beside the sessions: tree -> what loads the body but is no lifting.

Nothing here is needed for a programme of sessions alone, so that `read_programme` imports it only where there
is one.
"""

from __future__ import annotations

from ..text.places import Term
from .by_parts import parts_of, spans_of
from .on_days import Activity
from .quantities import NOTHING, number_or_range, spelt
from .read_line import LineReader
from .values import range_of, terms_of, text_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ..findings.finding import Finding
    from .on_days import OnDays
    from .quantities import Range
    from .sessions import Weeks
    from .values import LocatedNode

    SetDays = Callable[[OnDays, LocatedNode, int, Weeks], Weeks]
    """Gives what takes place its days, and the weeks in which it does; see `read_programme`."""

CHANGING = ("activity", "minutes", "effort", "rounds", "on", "off", "note")
"""Keys of an activity that may change by week."""


def read_activities(
    at: LocatedNode, weeks: int, findings: list[Finding], set_days: SetDays
) -> Iterator[Activity]:
    """An activity, once for each run of weeks in which all that is said of it stays."""
    reader = LineReader(findings, weeks)
    reader.begin(at)
    is_limited = "in weeks" in at
    on_days = Activity("", at.place, minutes=None, effort=None, loads=(), note="")
    spans = set_days(on_days, at, weeks, reader.spans if is_limited else ())
    is_limited = is_limited or bool(spans)
    reader.spans = spans or reader.spans
    parts = parts_of(reader, at, CHANGING)
    for held, part in parts:
        one = _activity(part, reader)
        one.days, one.hours, one.by_week = on_days.days, on_days.hours, on_days.by_week
        one.in_weeks = spans_of(held) if is_limited or len(parts) > 1 else ()
        yield one


def _activity(at: LocatedNode, reader: LineReader) -> Activity:
    name = at.get("activity")
    activity = Activity(
        text_of(name),
        name.place if name else at.place,
        minutes=reader.minutes(at.get("minutes")) or _minutes_on_and_off(at, reader),
        effort=_effort(at.get("effort")),
        loads=tuple(_pairs(at.get("loads"))),
        note=text_of(at.get("note")),
    )
    activity.kinds = terms_of(at.get("kind"))
    return activity


def _pairs(loads: LocatedNode | None) -> Iterator[tuple[Term, str]]:
    """The areas that are loaded, with how much."""
    for area, place, how in () if loads is None else loads.pairs():
        yield Term(area, place), how.words


def _minutes_on_and_off(at: LocatedNode, reader: LineReader) -> Range | None:
    """The minutes of an activity that goes on and off; None where it does not."""
    on, off = reader.duration(at.get("on")), reader.duration(at.get("off"))
    rounds = range_of(at.get("rounds"))
    return None if on is None or rounds is None else rounds.by(on + (off or NOTHING)) * (1 / 60)


def _effort(at: LocatedNode | None) -> Range | None:
    return None if at is None else range_of(at) or spelt("sessionEffort", at.plain, number_or_range)
