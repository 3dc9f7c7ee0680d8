"""Dates as people write them: which days of the calendar the words may name.

Day before month, or month before day, is custom, and differs between countries (common practice, no source):
where both make a day, both are told. A point between them puts the day first wherever it is used.
"""

from __future__ import annotations

import re
from datetime import date

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

_MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
_MONTH = (
    r"(?P<name>jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?"
    r"|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\.?"
)
_DAY = r"(?P<day>[0-3]?[0-9])(?:st|nd|rd|th)?\.?"
_YEAR = r"(?P<year>(?:20)?[0-9]{2})"
_FULL = r"(?P<year>20[0-9]{2})"
_FROM_MONDAY = r"(?P<on>mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,? "

_FORMS = tuple(
    re.compile(f"(?:{_FROM_MONDAY})?(?:{form})", re.IGNORECASE)
    for form in (
        rf"{_FULL}(?P<between>[-/.]?)(?P<month>[01]?[0-9])(?P=between)(?P<day>[0-3]?[0-9])",
        rf"(?P<day>[0-3]?[0-9])\. ?(?P<month>[01]?[0-9])\. ?{_YEAR}",
        rf"(?P<first>[0-3]?[0-9])(?P<between>[-/])(?P<second>[0-3]?[0-9])(?P=between){_YEAR}",
        rf"{_DAY}[ -]?(?:of )?{_MONTH},?[ -]?'?{_YEAR}",
        rf"{_MONTH} {_DAY},? '?{_YEAR}",
        rf"{_FULL}[ -]{_MONTH}[ -]{_DAY}",
    )
)


def days_named(words: str) -> list[str]:
    """The days that words may name, as ``2027-01-05``, the later first; none where they name no day.

    A weekday before them has to be that of the day.
    """
    for form in _FORMS:
        found = form.fullmatch(words.strip())
        if found is not None:
            weekday = (found["on"] or "").lower()
            days = {day for day in _days(found.groupdict()) if not weekday or f"{day:%a}".lower() == weekday}
            return sorted(map(str, days), reverse=True)
    return []


def _days(parts: dict[str, str | None]) -> Iterator[date]:
    first, second, name = parts.get("first"), parts.get("second"), parts.get("name")
    month = str(_MONTHS.index(name[:3].lower()) + 1) if name else parts.get("month")
    year = int(f"20{str(parts['year'])[-2:]}")
    for of_month, number in ((second, first), (first, second)) if first else ((month, parts.get("day")),):
        try:
            yield date(year, int(of_month or 0), int(number or 0))
        except ValueError:
            continue  # the calendar has no such day
