"""Weeks and weekdays as coaches write them: "1-3", "3+5", "Mon"."""

from __future__ import annotations

from .quantities import spelt
from .sessions import WEEKDAYS


def weeks(key: str) -> tuple[tuple[int, int], ...]:
    """The runs of weeks of a key, as first and last: ``3``, ``1-3``, ``1-2+5``; empty for other keys."""
    known = _plain_weeks(key)
    return spelt("weekNumbers", key, _plain_weeks) or () if known is None else known


def _plain_weeks(key: str) -> tuple[tuple[int, int], ...] | None:
    spans = []
    for part in key.split("+"):
        first, dash, last = part.partition("-")
        if not first.isdecimal() or (dash and not last.isdecimal()) or len(part) > 9:
            return None
        one, other = int(first), int(last) if dash else int(first)
        if not one or not other:
            return None
        spans.append((min(one, other), max(one, other)))
    return tuple(spans)


def weekday(word: str) -> str | None:
    """A weekday as the schema spells it: ``monday`` for ``Mon`` or ``mondays``."""
    return word if word in WEEKDAYS else spelt("weekday", word, str)


def time_of_day(words: str) -> tuple[str, float | None]:
    """``tuesday 05:45`` as the weekday and the hour, 5.75; None where there is no time of day."""
    day, _, time = words.strip().rpartition(" ")
    hours, _, minutes = time.replace(".", ":").partition(":")
    if not (day and hours.isdecimal() and minutes.isdecimal() and len(minutes) == 2):
        return words, None
    hour = int(hours) + int(minutes) / 60
    return day.removesuffix(" at").strip(), hour if hour < 24 and int(minutes) < 60 else None
