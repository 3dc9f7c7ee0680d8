"""Edits of several drafts that are one finding: made together, choice by choice."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from .finding import Edit, Edits


def together(several: Sequence[Edits]) -> Edits:
    """The edits of one finding that stands for several drafts, the worst first; worked out when asked for."""
    return lambda: _joined([_of(one) for one in several])


def _of(edits: Edits) -> tuple[Edit, ...]:
    return edits if isinstance(edits, tuple) else tuple(edits())


def _joined(several: list[tuple[Edit, ...]]) -> Iterator[Edit]:
    """The choices of the first, each with what the others add to the same choice."""
    given = [edits for edits in several if edits]
    for number, edit in enumerate(given[0] if given else ()):
        others = [edits[number] for edits in given[1:] if len(edits) == len(given[0])]
        joined = in_one(edit.label, [edit, *others], certain=edit.certain)
        assert joined is not None
        yield joined


def in_one(label: str, edits: Iterable[Edit], *, certain: bool = False) -> Edit | None:
    """One edit that makes several; of two in each other's way the first stands. None where there are none.

    They must lie in one text: what lies in another is left out.
    """
    from .finding import Edit

    kept: list[Edit] = []
    taken = _Taken()
    for part in (part for edit in edits for part in edit.parts):
        is_here = not kept or part.place.text is kept[0].place.text
        if is_here and taken.take(part.place.start, part.place.end):
            kept.append(part)
    if not kept:
        return None
    first = kept[0]
    further = tuple(Edit(one.place, one.words, one.label, certain=one.certain) for one in kept[1:])
    return Edit(first.place, first.words, label, certain=certain, further=further)


class _Taken:
    """Stretches of a text that keep apart, in order: its neighbours alone can be in the way of one more."""

    __slots__ = ("_ends", "_starts")

    def __init__(self) -> None:
        self._starts: list[int] = []
        self._ends: list[int] = []

    def take(self, start: int, end: int) -> bool:
        """Takes a stretch, unless it is in the way of another."""
        from bisect import bisect_right

        at = bisect_right(self._starts, start)
        near = range(max(at - 1, 0), min(at + 1, len(self._starts)))
        if any(_touch(start, end, self._starts[one], self._ends[one]) for one in near):
            return False
        self._starts.insert(at, start)
        self._ends.insert(at, end)
        return True


def _touch(start: int, end: int, other: int, other_end: int) -> bool:
    """Whether two stretches overlap, or meet where one of them adds words: their order would matter."""
    if start < other_end and other < end:
        return True
    adds = not (end > start and other_end > other)
    return adds and start <= other_end and other <= end
