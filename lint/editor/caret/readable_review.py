"""The review that a feature works from while a text cannot be read: the last good one, with offsets moved."""

from __future__ import annotations

from functools import lru_cache

from ...syntax.builder import parse
from .node_path import node_path_at
from .programme_index import programme_index

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...project.results import FileReview
    from ...syntax.tree import Reading
    from ..documents.offset_map import Span
    from ..documents.snapshot import Snapshot
    from .node_path import NodePath
    from .programme_index import ProgrammeIndex


class ReadableReview:
    """The present review where the text can be read (a programme: counted), else the last good one.

    ``is_current`` says which of the two it is, and ``reading`` is the tree that belongs to it. In the second
    case this is the tree of an older text, and text that was rewritten since has no place in the document.

    """

    __slots__ = ("_snapshot", "is_current", "reading", "review")

    def __init__(self, snapshot: Snapshot) -> None:
        self._snapshot = snapshot
        reading = _reading_of(snapshot.review, snapshot)
        is_counted = snapshot.review.kind != "programme" or bool(snapshot.review.ledgers)
        good = snapshot.last_good
        self.is_current = good is None or (reading.root is not None and is_counted)
        self.review = snapshot.review if self.is_current or good is None else good
        self.reading = reading if self.is_current else _reading_of(self.review, snapshot)

    @property
    def index(self) -> ProgrammeIndex:
        """The index of its programme; empty where there is none."""
        return programme_index(self.review)

    def path_at(self, offset: int) -> NodePath | None:
        """What stands at an offset of the document; None in text that is new since it could be read."""
        read_offset = offset if self.is_current else self._snapshot.offset_map.to_older(offset)
        root = self.reading.root
        return None if read_offset is None or root is None else node_path_at(root, read_offset)

    def to_document(self, offset: int) -> int | None:
        """An offset of the text that was read, in the document; None in text that was rewritten since."""
        return offset if self.is_current else self._snapshot.offset_map.to_newer(offset)

    def span_in_document(self, start: int, end: int) -> Span | None:
        """A part of the text that was read, in the document; None where any of it was rewritten."""
        return (start, end) if self.is_current else self._snapshot.offset_map.span_to_newer(start, end)

    def remains_in_document(self, start: int, end: int) -> Span | None:
        """What is left in the document of a part of the text that was read; None where nothing is."""
        return (start, end) if self.is_current else self._snapshot.offset_map.remains_of(start, end)


@lru_cache(maxsize=4)
def _parsed(path: str, content: str) -> Reading:
    return parse(path, content)


def _reading_of(review: FileReview, snapshot: Snapshot) -> Reading:
    """The tree of a review; the review of settings has none, so their text is parsed here."""
    return review.reading or _parsed(snapshot.path, snapshot.text.content)
