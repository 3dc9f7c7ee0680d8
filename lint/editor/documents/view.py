"""What a feature of the editor looks at: a document's current text with its reviews."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ...project.results import FileReview
    from ...project.workspace import Workspace
    from ...text.places import Text

    Unchanged = tuple[int, int, int]
    """``start`` and ``end`` (not included) of a stretch that still stands, and by how much it has moved."""


class View:
    """A document as it stands: its ``text``, its ``path`` ("" for an untitled buffer) and its ``review``.

    ``good`` is the last review whose programme could be counted, None where there was none yet; it may be of
    an older text, whose offsets ``moved`` takes over. ``kept`` are the stretches of that text that still
    stand; left out, they are found by comparing the two.
    """

    __slots__ = ("_kept", "good", "path", "review", "text", "workspace")

    def __init__(
        self,
        text: Text,
        path: str,
        review: FileReview,
        good: FileReview | None,
        workspace: Workspace,
        kept: list[Unchanged] | None = None,
    ) -> None:
        self.text = text
        self.path = path
        self.review = review
        self.good = good
        self.workspace = workspace
        self._kept = kept

    @property
    def kept(self) -> list[Unchanged]:
        """The stretches of the good review's text that still stand, in order."""
        if self._kept is None:
            old = self.good.reading.text.content if self.good and self.good.reading else ""
            self._kept = carried(whole(old), old, self.text.content)
        return self._kept

    def moved(self, offset: int) -> int | None:
        """An offset of the good review's text in the current text; None where that stretch was rewritten."""
        return next((offset + by for start, end, by in self.kept if start <= offset < end), None)


def widened(content: str, start: int, end: int) -> tuple[int, int]:
    """A stretch inside the text that holds something to underline, where its line does."""
    start = min(max(start, 0), len(content))
    end = min(max(end, start), len(content))
    if start < end:
        return start, end
    if content[end : end + 1] not in ("", "\r", "\n"):
        return start, end + 1
    if content[max(0, start - 1) : start] not in ("", "\r", "\n"):
        return start - 1, end
    return start, end


def whole(content: str) -> list[Unchanged]:
    """A text of which all still stands, its very end included."""
    return [(0, len(content) + 1, 0)]


def carried(kept: Iterable[Unchanged], before: str, after: str) -> list[Unchanged]:
    """The stretches that still stand once ``before`` has become ``after``: what both ends share."""
    if before == after:
        return list(kept)
    head = _shared_head(before, after)
    tail = _shared_tail(before, after, min(len(before), len(after)) - head)
    by = len(after) - len(before)
    left: list[Unchanged] = []
    for start, end, moved in kept:
        stop = min(end + moved, head)
        if start + moved < stop:
            left.append((start, stop - moved, moved))
        begin = max(start + moved, len(before) - tail)
        if begin < end + moved:
            left.append((begin - moved, end, moved + by))
    return sorted(left)


def _shared_head(one: str, other: str) -> int:
    """How many characters two texts share at their beginning."""
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
