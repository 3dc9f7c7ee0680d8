"""An open document: its text exactly as the client holds it, its changes, and positions in it.

The protocol (Language Server Protocol 3.17, "Text Documents") ends lines at LF, CRLF and CR only and counts
a line's characters in the units of the encoding that was agreed on. Offsets, here as everywhere, count code
points of the text without its byte order mark; the client's positions count the mark.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from itertools import accumulate

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable
    from typing import Literal

    Encoding = Literal["utf-8", "utf-16", "utf-32"]

    Position = tuple[int, int]
    """Line and character, both from 0."""

    TextChange = tuple[tuple[Position, Position] | None, str]
    """A stretch and the words that take its place; None for the whole text."""

MARK = "\ufeff"
"""The byte order mark."""

_LINE_END = re.compile(r"\r\n|\r|\n")

_CODECS = {"utf-8": ("utf-8", 1), "utf-16": ("utf-16-le", 2)}
"""For each encoding that is not one unit a code point: the codec, and bytes in a unit."""


class Document:
    """One document; ``content`` is all of it, ``text`` leaves the byte order mark out."""

    __slots__ = ("_starts", "content", "encoding", "uri", "version")

    def __init__(self, uri: str, version: int, content: str, encoding: Encoding = "utf-16") -> None:
        self.uri = uri
        self.version = version
        self.content = _joined(content)
        self.encoding: Encoding = encoding
        self._starts: list[int] | None = None

    @property
    def text(self) -> str:
        """The text without a byte order mark."""
        return self.content.removeprefix(MARK)

    def change(self, version: int, changes: Iterable[TextChange]) -> None:
        """Applies changes one after the other, each to what the ones before it left."""
        for stretch, words in changes:
            if stretch is None:
                self.content = words
            else:
                start, end = sorted(self._index(*position) for position in stretch)
                self.content = self.content[:start] + words + self.content[end:]
            self.content = _joined(self.content)
            self._starts = None
        self.version = version

    def offset(self, line: int, character: int) -> int:
        """The offset of a position.

        A position past a line's end is its end, one past the last line the text's end, and one within a
        character that character's beginning.
        """
        return max(0, self._index(line, character) - self._mark)

    def position(self, offset: int) -> Position:
        """Line and character of an offset; one outside the text is its nearest end."""
        index = min(max(offset, 0) + self._mark, len(self.content))
        starts = self._line_starts()
        line = bisect_right(starts, index) - 1
        return line, self._units(self.content[starts[line] : index])

    @property
    def _mark(self) -> int:
        return 1 if self.content.startswith(MARK) else 0

    def _index(self, line: int, character: int) -> int:
        """Where in ``content`` a position lies."""
        starts = self._line_starts()
        if line >= len(starts):
            return len(self.content)
        start = starts[line]
        end = starts[line + 1] if line + 1 < len(starts) else len(self.content)
        written = self.content[start:end].rstrip("\r\n")
        return start + self._characters(written, character)

    def _line_starts(self) -> list[int]:
        if self._starts is None:
            if "\r" in self.content:
                self._starts = [0, *(found.end() for found in _LINE_END.finditer(self.content))]
            else:
                lengths = [len(line) + 1 for line in self.content.split("\n")]
                self._starts = [0, *accumulate(lengths[:-1])]
        return self._starts

    def _units(self, words: str) -> int:
        """How many units some words take."""
        if self.encoding == "utf-32" or words.isascii():
            return len(words)
        codec, size = _CODECS[self.encoding]
        return len(words.encode(codec, "surrogatepass")) // size

    def _characters(self, words: str, units: int) -> int:
        """How many whole characters of a line's words so many units hold."""
        if self.encoding == "utf-32" or words.isascii():
            return min(units, len(words))
        codec, size = _CODECS[self.encoding]
        data = words.encode(codec, "surrogatepass")
        end = min(units * size, len(data))
        while _is_within(data, end, size):
            end -= size
        return len(data[:end].decode(codec, "surrogatepass"))


def _is_within(data: bytes, at: int, size: int) -> bool:
    """Whether a place in UTF-8 (``size`` 1) or UTF-16 lies between two units of one character."""
    if at >= len(data):
        return False
    if size == 1:
        return data[at] & 0xC0 == 0x80
    return at > 0 and data[at + 1] & 0xFC == 0xDC and data[at - 1] & 0xFC == 0xD8


def _joined(content: str) -> str:
    """The text with two halves of a character that have come to stand side by side made one."""
    if content.isascii():
        return content
    try:
        content.encode()
    except UnicodeEncodeError:
        return content.encode("utf-16-le", "surrogatepass").decode("utf-16-le", "surrogatepass")
    return content
