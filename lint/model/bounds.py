"""What quantities in words can come to: what lies beyond is a slip of the pen.

Common practice, no source: wide enough for every sport, so that nothing that a coach means is outside. Rules
speak of what is only unusual. Numbers without a unit have their bounds in the schema.
"""

from __future__ import annotations

from .amounts import KG_PER_LB, Load, Range

MOST_SECONDS = {"rest": 3600.0, "work": 18000.0}
"""Seconds by kind: rest, and intervals of a clock; work that goes on."""

MOST_NUMBER = 10_000.0
"""A number without a unit from which on it counts for nothing, whatever the schema says of it."""

MOST_TEMPO = 60.0
"""Seconds of one part of a repetition."""

MOST_METRES = 200_000.0
MOST_MINUTES = 900.0
MOST_KILOGRAMS = 1500.0
"""Of a load, all pieces together."""

MOST_IMPLEMENT = 500.0
"""Kilograms of one piece of equipment."""

MOST_PERCENT = {"percent": 200.0, "top set": 200.0, "rm share": 200.0, "share": 500.0, "lift": 500.0}
"""Percent by the kind of a load (`Load`)."""

MOST_RM = 100.0
FACTORS = Range(0.05, 10)
"""What a value can be multiplied by."""

MOST_ADDED = {"mass": 300.0, "points": 100.0, "share": 100.0, "number": 3600.0}
"""What can be added to a value, by the kind of the change (`ValueChange`), in its unit."""

MOST_STEP = {
    "kg": 100.0,
    "lb": 220.0,
    "%": 100.0,
    "rep": 50.0,
    "set": 10.0,
    "round": 10.0,
    "pin": 10.0,
    "s": 600.0,
    "min": 60.0,
    "m": 5000.0,
}
"""What a progression can add each time, by unit."""


MOST_SETS = 100.0
"""Of a line; the schema says the same, and this takes what lies beyond out of every count."""

NONE = frozenset({"load", "rir", "rpe", "rest", "tempo"})
"""Keys of lines that ``none`` leaves without a value, in some weeks or for an athlete."""

OPEN = frozenset({"note", "cue", "stop when", "method"})
"""Keys of lines that are said of some weeks alone: no others need a value, be it ``none``."""

BOUNDED = frozenset({"sets", "rounds", "reps", "load", "rest", "hold", "distance", "tempo"})
"""Keys of lines whose values have bounds."""


def beyond(kind: str, value: object) -> str:
    """What a value of a kind takes, in words, where it lies beyond that; else empty.

    ``kind`` is a key of a line, or rest, work, minutes, implement for a range in s, min and kg.
    """
    if isinstance(value, Range):
        return _most(value, *MOST[kind]) if kind in MOST else ""
    if isinstance(value, Load):
        return _load(value)
    if isinstance(value, tuple):
        longest = max((one for one in value if one is not None), default=0.0)
        return f"at most {MOST_TEMPO:g} s a part" if longest > MOST_TEMPO else ""
    timed = getattr(value, "timed", None)
    return beyond("work", timed) if timed is not None else ""


MOST = {
    "sets": (MOST_SETS, f"numbers up to {MOST_SETS:g}"),
    "rounds": (MOST_SETS, f"numbers up to {MOST_SETS:g}"),
    "rest": (MOST_SECONDS["rest"], "60 min"),
    "hold": (MOST_SECONDS["rest"], "60 min"),
    "work": (MOST_SECONDS["work"], "300 min"),
    "distance": (MOST_METRES, "200 km"),
    "rir": (10.0, "10"),
    "rpe": (10.0, "10"),
    "minutes": (MOST_MINUTES, "900 minutes"),
    "implement": (MOST_IMPLEMENT, "500 kg, or 1102 lb"),
}
"""The most that a range may come to by kind, and how that is said."""


def _most(value: Range, most: float, words: str) -> str:
    return f"at most {words}" if value.high > most else ""


def _load(load: Load) -> str:
    span = load.span
    if span is None:
        return ""
    if load.beside is not None and (words := _load(load.beside)):
        return words
    high = max(span.high, -span.low)
    if load.kind in ("mass", "bodyweight") or (load.kind == "change" and load.unit != "%"):
        pounds = round(MOST_KILOGRAMS / KG_PER_LB)
        return f"at most {MOST_KILOGRAMS:g} kg, or {pounds} lb" if high > MOST_KILOGRAMS else ""
    if load.kind == "rm":
        return f"at most {MOST_RM:g}RM" if high > MOST_RM else ""
    most = MOST_PERCENT.get(load.kind, MOST_PERCENT["percent"])
    return f"at most {most:g} %" if high > most else ""


def beyond_change(kind: str, by: float) -> str:
    """What a change of a kind (`ValueChange`) takes, in words, where ``by`` lies beyond that; else empty."""
    if kind == "factor":
        least, most = FACTORS.ends
        return "" if least <= by <= most else f"a factor from {least:g} to {most:g}"
    most = MOST_ADDED.get(kind, 0.0)
    unit = {"mass": " kg", "points": " points", "share": " %"}.get(kind, "")
    return f"at most {most:g}{unit}" if abs(by) > most else ""


def beyond_step(words: str) -> str:
    """What the step of a progression takes, in words, where ``2.5 kg`` lies beyond that; else empty."""
    from .amounts import number_or_range

    figures = words.strip().rstrip("abcdefghijklmnopqrstuvwxyz%").strip()
    unit = words.strip()[len(figures) :].strip()
    most = MOST_STEP.get(unit.removesuffix("s") if len(unit) > 1 else unit)
    step = number_or_range(figures)
    if most is None or step is None:
        return ""
    return _most(step, most, f"{most:g} {unit}")
