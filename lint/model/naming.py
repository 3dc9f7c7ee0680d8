"""The names of lines, exercises and days in messages."""

from __future__ import annotations

from ..wording.words import week_list
from .sessions import WEEKDAYS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from datetime import date

    from .athlete import Restriction
    from .sessions import Prescription


def line_name(line: Prescription) -> str:
    """``Lower A, back squat``."""
    return ", ".join(part for part in (line.session.name, exercise_name(line)) if part)


def exercise_name(line: Prescription) -> str:
    """``back squat``, or ``back squat then front squat`` where the exercise changes by week."""
    names = [line.place.excerpt] if line.kind else [term.words for term in line.names()]
    return " then ".join(dict.fromkeys(names))


def day_name(starts: date | None, day: int) -> str:
    """The weekday of a day number, ``Monday``; day 1 is the day on which the programme starts."""
    first = starts.weekday() if starts else 0
    return WEEKDAYS[(first + day - 1) % 7].capitalize()


def when_spared(restriction: Restriction) -> str:
    """``in weeks 1-4``, ``from 2026-01-05 until 2026-02-01``: when a restriction holds; "" where always."""
    if restriction.in_weeks:
        runs = restriction.in_weeks
        return f"in {week_list([week for first, last in runs for week in range(first, last + 1)])}"
    bounds = (("from", restriction.begins), ("until", restriction.ends))
    return " ".join(f"{word} {day}" for word, day in bounds if day is not None)
