"""One state of a document with its review: what every feature of the editor works from."""

from __future__ import annotations

from .offset_map import OffsetMap

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...project.results import FileReview
    from ...project.workspace import Workspace
    from ...text.places import Text
    from .offset_map import Span


class Snapshot:
    """A document at one moment: its ``text``, its ``path`` ("" where it has no file) and its ``review``.

    ``last_good`` is the last review in which the file could be taken in, None where there was none yet. It
    may be the review of an older text. Then ``offset_map`` leads from that text to this one; left out, it is
    found by comparing the two.
    """

    __slots__ = ("_offset_map", "last_good", "path", "review", "text", "workspace")

    def __init__(
        self,
        text: Text,
        path: str,
        review: FileReview,
        last_good: FileReview | None,
        workspace: Workspace,
        offset_map: OffsetMap | None = None,
    ) -> None:
        self.text = text
        self.path = path
        self.review = review
        self.last_good = last_good
        self.workspace = workspace
        self._offset_map = offset_map

    @property
    def offset_map(self) -> OffsetMap:
        """Leads from the text of the last good review to this text."""
        if self._offset_map is None:
            good = self.last_good
            before = good.reading.text.content if good and good.reading else ""
            self._offset_map = OffsetMap.between(before, self.text.content)
        return self._offset_map


def underlined(content: str, start: int, end: int) -> Span:
    """The part of a text to underline for a finding: never empty where its line holds a character."""
    start = min(max(start, 0), len(content))
    end = min(max(end, start), len(content))
    if start < end:
        return start, end
    if content[end : end + 1] not in ("", "\r", "\n"):
        return start, end + 1
    if content[max(0, start - 1) : start] not in ("", "\r", "\n"):
        return start - 1, end
    return start, end
