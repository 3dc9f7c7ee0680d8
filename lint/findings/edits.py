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
    for part in (part for edit in edits for part in edit.parts):
        is_here = not kept or part.place.text is kept[0].place.text
        if is_here and not any(_touch(part, one) for one in kept):
            kept.append(part)
    if not kept:
        return None
    first = kept[0]
    further = tuple(Edit(one.place, one.words, one.label, certain=one.certain) for one in kept[1:])
    return Edit(first.place, first.words, label, certain=certain, further=further)


def _touch(one: Edit, other: Edit) -> bool:
    if one.place.start < other.place.end and other.place.start < one.place.end:
        return True
    adds = not (one.place.end > one.place.start and other.place.end > other.place.start)
    return adds and one.place.start <= other.place.end and other.place.start <= one.place.end
