"""Texts and the places in them. Every finding points to such a place."""

from __future__ import annotations

from bisect import bisect_right

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator


class Term:
    """A term that the coach wrote (a muscle, area, exercise or piece of equipment) and its place."""

    __slots__ = ("place", "words")

    def __init__(self, words: str, place: Place) -> None:
        self.words = words
        self.place = place


class Text:
    """One file's text.

    ``name`` is the path as the user wrote it; ``content`` is the decoded text without a byte order mark.
    Lines end at LF, CRLF or CR only, as in editors and in YAML 1.2.
    """

    __slots__ = ("_starts", "content", "name")
    start = 0

    def __init__(self, name: str, content: str) -> None:
        self.name = name
        self.content = content
        self._starts: list[int] | None = None

    @property
    def text(self) -> Text:
        """The text itself. A `Passage` has this property too, so a place can lie in either."""
        return self

    def position(self, offset: int) -> tuple[int, int]:
        """The line and column of an offset. Both start at 1; offsets and columns count code points."""
        if self._starts is None:
            self._starts = list(_line_starts(self.content))
        row = bisect_right(self._starts, offset) - 1
        return row + 1, offset - self._starts[row] + 1

    def place(self, start: int, end: int) -> Place:
        """The place from offset ``start`` up to but not including ``end``."""
        return Place(self, start, end)

    def whole_line(self, line: int) -> str:
        """The text of a line, without its line ending. Line numbers start at 1."""
        self.position(0)
        assert self._starts is not None
        end = self._starts[line] if line < len(self._starts) else len(self.content)
        return self.content[self._starts[line - 1] : end].rstrip("\r\n")


def line_end_of(content: str) -> str:
    """How the lines of a text end: as its first one does."""
    at = min((found for end in "\r\n" if (found := content.find(end)) >= 0), default=-1)
    return "\n" if at < 0 or content[at] == "\n" else "\r\n" if content[at : at + 2] == "\r\n" else "\r"


def line_start(content: str, offset: int) -> int:
    """Where the line of an offset begins."""
    return max(content.rfind("\n", 0, offset), content.rfind("\r", 0, offset)) + 1


def line_stop(content: str, offset: int) -> int:
    """Where the line of an offset ends, before its line end."""
    ends = [at for end in "\r\n" if (at := content.find(end, offset)) >= 0]
    return min(ends, default=len(content))


def _line_starts(content: str) -> Iterator[int]:
    yield 0
    at = content.find("\n")
    if "\r" not in content:
        while at >= 0:
            yield at + 1
            at = content.find("\n", at + 1)
        return
    for index, char in enumerate(content):
        if char == "\n" or (char == "\r" and content[index + 1 : index + 2] != "\n"):
            yield index + 1


class Passage:
    """A part of a text that later readings of the same file reuse unchanged. Its places move with it.

    ``text`` is the text that holds it now; ``start`` is the offset at which it begins there.
    """

    __slots__ = ("start", "text")

    def __init__(self, text: Text, start: int) -> None:
        self.text = text
        self.start = start

    def place(self, start: int, end: int) -> Place:
        """The place from ``start`` up to but not including ``end``, both offsets in the current text."""
        return Place(self, start - self.start, end - self.start)


class Place:
    """A part of a text, from code-point offset ``start`` up to but not including ``end``.

    The place is where the words are written. YAML may use them elsewhere, by an alias or a merge key:
    ``through`` holds the places of these, outermost first.
    """

    __slots__ = ("_first", "_last", "_within", "through")

    def __init__(
        self, within: Text | Passage, first: int, last: int, through: tuple[Place, ...] = ()
    ) -> None:
        self._within = within
        self._first = first
        self._last = last
        self.through = through

    @property
    def text(self) -> Text:
        """The text that holds the words."""
        return self._within.text

    @property
    def start(self) -> int:
        """Offset of the first character."""
        return self._within.start + self._first

    @property
    def end(self) -> int:
        """Offset just past the last character."""
        return self._within.start + self._last

    @property
    def line(self) -> int:
        """Line of the first character, from 1."""
        return self.text.position(self.start)[0]

    @property
    def column(self) -> int:
        """Column of the first character, from 1, in code points."""
        return self.text.position(self.start)[1]

    @property
    def finish(self) -> tuple[int, int]:
        """Line and column just past the last character."""
        return self.text.position(self.end)

    @property
    def excerpt(self) -> str:
        """The words at this place."""
        return self.text.content[self.start : self.end]

    def from_before(self, characters: int) -> Place:
        """The same place and some characters before it."""
        return Place(self._within, self._first - characters, self._last, self.through)

    def up_to(self, other: Place) -> Place:
        """From the start of this place to the end of another one behind it in the same text."""
        return Place(self._within, self._first, other.end - self._within.start, self.through)

    def reached(self, through: tuple[Place, ...]) -> Place:
        """The same place, reached through these aliases or merge keys."""
        return Place(self._within, self._first, self._last, through) if through else self

    @property
    def key(self) -> tuple[str, int, int]:
        """Name of the text, start and end as they are now: what places are looked up by.

        A place itself cannot be hashed, because it moves with its passage.
        """
        return self.text.name, self.start, self.end

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Place) and self.key == other.key

    def __repr__(self) -> str:
        return f"{self.text.name}:{self.line}:{self.column}"
