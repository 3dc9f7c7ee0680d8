"""Weeks and weekdays as coaches write them: "1-3", "3+5", "Mon"; the sessions of a week."""

from __future__ import annotations

import re
from functools import lru_cache

from .amounts import in_order
from .quantities import spelt
from .sessions import WEEKDAYS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .sessions import Session


@lru_cache(maxsize=500)
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


@lru_cache(maxsize=500)
def covering(keys: tuple[str, ...], last: int) -> tuple[tuple[str, int, int], ...]:
    """Each key with its first and last week, where all together hold every week from 1 to ``last`` once.

    Empty where they do not, or where a key is no run of weeks or runs backwards: then that is to be told.
    """
    spans = tuple((key, first, end) for key in keys for first, end in weeks(key))
    if any(end > last for _, _, end in spans) or not all(weeks(key) and in_order(key) == key for key in keys):
        return ()
    held = sorted(week for _, first, end in spans for week in range(first, end + 1))
    return spans if held == list(range(1, last + 1)) else ()


def weekday(word: str) -> str | None:
    """A weekday as the schema spells it: ``monday`` for ``Mon`` or ``mondays``."""
    return word if word in WEEKDAYS else spelt("weekday", word, str)


_TIME = (
    r"(.+?) (?:at )?([0-9]{1,2})(?:[:.]([0-9]{2})(?: uhr)?|(?:[:.]([0-9]{2}))? ?([ap]m)| ?h(?:([0-9]{2}))?)"
)


def time_of_day(words: str) -> tuple[str, float | None]:
    """``tuesday 05:45`` as the weekday and the hour, 5.75; None where there is no time of day.

    Also ``18h30``, ``6 pm`` and ``18.00 Uhr``.
    """
    if not any(map(str.isdecimal, words)):
        return words, None
    found = re.fullmatch(_TIME, words.strip(), re.IGNORECASE)
    if found is None:
        return words, None
    day, hours, *minutes, half, last = found.groups()
    past = int(next((one for one in (*minutes, last) if one), 0))
    hour = int(hours)
    if half:
        fits, hour = 1 <= hour <= 12, hour % 12 + (12 if half.lower() == "pm" else 0)
    else:
        fits = hour < 24
    return day, hour + past / 60 if fits and past < 60 else None


def sessions_in(sessions: tuple[Session, ...], week: int) -> tuple[Session, ...]:
    """The sessions that take place in a week of their block; what replaces another stands in its place."""
    held = tuple(session for session in sessions if session.takes_place(week))
    replacing = {one.replaces: one for one in held if one.replaces is not None}
    if not replacing:
        return held
    left = (replacing.get(one, one) for one in held if one.replaces is None or one.replaces not in held)
    return tuple(dict.fromkeys(left))
