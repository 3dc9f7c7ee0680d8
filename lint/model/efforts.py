"""Efforts with an open end, or one for each set: "3+", "up to 8.5", "1/1/1/0".

They are rare, so that `quantities` imports this module only where one is written.
"""

from __future__ import annotations

from .amounts import Range, number_or_range


class WrittenRange(Range):
    """A range that is shown in the words in which it is written."""

    __slots__ = ("words",)

    def __init__(self, low: float, high: float, words: str) -> None:
        super().__init__(low, high)
        self.words = words

    def __str__(self) -> str:
        return self.words

    __repr__ = __str__


def effort(value: object, failure: float, lowest: float) -> Range | None:
    """``to failure`` as ``failure``; ``3+``, ``up to 8.5`` as a range from ``lowest`` to 10; ``1/1/1/0`` from
    its lowest to its highest.
    """
    if value == "to failure":
        return Range(failure, failure)
    if not isinstance(value, str):
        return None
    if value.endswith("+"):
        least = number_or_range(value[:-1])
        return None if least is None else WrittenRange(least.low, 10, f"{value[:-1].strip()}+")
    if value.startswith("up to "):
        most = number_or_range(value.removeprefix("up to "))
        return None if most is None else WrittenRange(lowest, most.high, value)
    known = [number_or_range(one) for one in value.split("/")] if "/" in value else []
    ends = [end for one in known if one is not None for end in one.ends]
    return WrittenRange(min(ends), max(ends), value) if known and len(ends) == 2 * len(known) else None
