"""A date with its weekday before it: ``sat 2027-03-20``.

Nothing here is needed for a plain date, so that `values` imports it only where a weekday is written.
"""

from __future__ import annotations

from datetime import timedelta

from ..findings.finding import Edit
from .sessions import WEEKDAYS
from .weeks import weekday

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date
    from typing import Protocol

    from ..text.places import Place

    class DateReader(Protocol):
        """What is needed here of a reader."""

        def report(
            self, rule: str, place: Place, counted: str, *, change: str, edits: tuple[Edit, ...] = ...
        ) -> None:
            """Adds a finding."""


def check_weekday(reader: DateReader, place: Place, name: str, words: str, day: date | None) -> date | None:
    """The day; reports one that the calendar does not have, or that is on another weekday than ``name``."""
    said = weekday(name.rstrip(","))
    if day is None:
        reader.report(
            "date-impossible",
            place,
            f"{words} is not in the calendar.",
            change="Write the date as year-month-day, a day that the month has.",
        )
    elif said is not None and said != (on := WEEKDAYS[day.weekday()]):
        near = day + timedelta(days=(WEEKDAYS.index(said) - day.weekday() + 3) % 7 - 3)
        meant = (f"{on} {words}", f"{said} {near}")
        reader.report(
            "date-impossible",
            place,
            f"{words} is a {on.capitalize()}, and no {said.capitalize()}.",
            change=f"Write `{meant[0]}`, or `{meant[1]}`.",
            edits=tuple(Edit(place, one, f"write {one}", certain=False) for one in meant),
        )
    return day
