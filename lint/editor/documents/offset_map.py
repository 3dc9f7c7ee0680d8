"""Where the parts of an older text stand in a newer one."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    Span = tuple[int, int]
    """Start and end (not included) of a part of a text."""

    UnchangedSpan = tuple[int, int, int]
    """Start and end of a part of the older text, and how far it has moved in the newer one."""


class OffsetMap:
    """Leads from offsets of an older text to those of a newer text, and back.

    ``unchanged`` are the parts of the older text that still stand in the newer one, in order. What lies
    between them was rewritten and leads nowhere.
    """

    __slots__ = ("unchanged",)

    def __init__(self, unchanged: Iterable[UnchangedSpan]) -> None:
        self.unchanged = tuple(unchanged)

    @classmethod
    def of_unedited(cls, content: str) -> OffsetMap:
        """The map of a text that has not been edited; its very end counts as a part of it."""
        return cls([(0, len(content) + 1, 0)])

    @classmethod
    def between(cls, before: str, after: str) -> OffsetMap:
        """The map from one text to another: what both share at their start and at their end."""
        return cls.of_unedited(before).edited(before, after)

    def edited(self, before: str, after: str) -> OffsetMap:
        """The map to the text ``after``, once the newer text has turned from ``before`` into it."""
        if before == after:
            return self
        head = _shared_head(before, after)
        tail = _shared_tail(before, after, min(len(before), len(after)) - head)
        growth = len(after) - len(before)
        left: list[UnchangedSpan] = []
        for start, end, shift in self.unchanged:
            head_end = min(end + shift, head)
            if start + shift < head_end:
                left.append((start, head_end - shift, shift))
            tail_start = max(start + shift, len(before) - tail)
            if tail_start < end + shift:
                left.append((tail_start - shift, end, shift + growth))
        return OffsetMap(sorted(left))

    def to_newer(self, offset: int) -> int | None:
        """An offset of the older text in the newer text; None where that part was rewritten."""
        return next((offset + shift for start, end, shift in self.unchanged if start <= offset < end), None)

    def to_older(self, offset: int) -> int | None:
        """An offset of the newer text in the older text; None in a part that is new."""
        return next(
            (offset - shift for start, end, shift in self.unchanged if start <= offset - shift < end), None
        )

    def span_to_newer(self, start: int, end: int) -> Span | None:
        """A part of the older text in the newer text; None where any of it was rewritten."""
        first, last = self.to_newer(start), self.to_newer(max(start, end - 1))
        if first is None or last is None:
            return None
        stop = last + min(1, end - start)
        return (first, stop) if stop - first == end - start else None

    def remains_of(self, start: int, end: int) -> Span | None:
        """The part of the newer text from the first to the last that is left of an older part.

        None where all of it was rewritten.
        """
        left = [
            (max(start, first) + shift, min(end, last) + shift)
            for first, last, shift in self.unchanged
            if max(start, first) < min(end, last)
        ]
        return (left[0][0], left[-1][1]) if left else None


def _shared_head(one: str, other: str) -> int:
    """How many characters two texts share at their start."""
    low, high = 0, min(len(one), len(other))
    while low < high:
        middle = (low + high + 1) // 2
        if one[low:middle] == other[low:middle]:
            low = middle
        else:
            high = middle - 1
    return low


def _shared_tail(one: str, other: str, most: int) -> int:
    """How many characters, ``most`` at most, two texts share at their end."""
    low, high = 0, most
    while low < high:
        middle = (low + high + 1) // 2
        if one[len(one) - middle : len(one) - low] == other[len(other) - middle : len(other) - low]:
            low = middle
        else:
            high = middle - 1
    return low
