"""The text of an open document exactly as the client holds it, its changes, and positions in it.

The Language Server Protocol 3.17 ("Text Documents") ends lines at LF, CRLF and CR only. It counts the
characters of a line in the units of the agreed encoding. Offsets, here as everywhere, count code points of
the text without its byte order mark. The client's positions do count the mark.
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
    """A range and the text that replaces it; a range of None stands for the whole text."""

BYTE_ORDER_MARK = "\ufeff"

_LINE_END = re.compile(r"\r\n|\r|\n")

_CODECS = {"utf-8": ("utf-8", 1), "utf-16": ("utf-16-le", 2)}
"""For each encoding in which a code point may take several units: the codec, and the bytes in a unit."""


class TextDocument:
    """One document; ``content`` is all of it, ``text`` leaves the byte order mark out."""

    __slots__ = ("_line_starts", "content", "encoding", "uri", "version")

    def __init__(self, uri: str, version: int, content: str, encoding: Encoding = "utf-16") -> None:
        self.uri = uri
        self.version = version
        self.content = _with_joined_surrogates(content)
        self.encoding: Encoding = encoding
        self._line_starts: list[int] | None = None

    @property
    def text(self) -> str:
        """The text without a byte order mark."""
        return self.content.removeprefix(BYTE_ORDER_MARK)

    def change(self, version: int, changes: Iterable[TextChange]) -> None:
        """Applies changes one after the other, each to the text that the one before it left."""
        for span, new_text in changes:
            if span is None:
                self.content = new_text
            else:
                start, end = sorted(self._index(*position) for position in span)
                self.content = self.content[:start] + new_text + self.content[end:]
            self.content = _with_joined_surrogates(self.content)
            self._line_starts = None
        self.version = version

    def offset(self, line: int, character: int) -> int:
        """The offset of a position.

        A position past the end of a line means the line's end. One past the last line means the text's end.
        One inside a character means that character's start.
        """
        return max(0, self._index(line, character) - self._mark_length)

    def position(self, offset: int) -> Position:
        """Line and character of an offset; an offset outside the text means its nearest end."""
        index = min(max(offset, 0) + self._mark_length, len(self.content))
        starts = self._starts()
        line = bisect_right(starts, index) - 1
        return line, self._length_in_units(self.content[starts[line] : index])

    @property
    def _mark_length(self) -> int:
        return 1 if self.content.startswith(BYTE_ORDER_MARK) else 0

    def _index(self, line: int, character: int) -> int:
        """The index of a position in ``content``."""
        starts = self._starts()
        if line >= len(starts):
            return len(self.content)
        start = starts[line]
        end = starts[line + 1] if line + 1 < len(starts) else len(self.content)
        line_text = self.content[start:end].rstrip("\r\n")
        return start + self._length_in_characters(line_text, character)

    def _starts(self) -> list[int]:
        """The index at which each line starts."""
        if self._line_starts is None:
            if "\r" in self.content:
                self._line_starts = [0, *(found.end() for found in _LINE_END.finditer(self.content))]
            else:
                lengths = [len(line) + 1 for line in self.content.split("\n")]
                self._line_starts = [0, *accumulate(lengths[:-1])]
        return self._line_starts

    def _length_in_units(self, text: str) -> int:
        if self.encoding == "utf-32" or text.isascii():
            return len(text)
        codec, size = _CODECS[self.encoding]
        return len(text.encode(codec, "surrogatepass")) // size

    def _length_in_characters(self, line_text: str, units: int) -> int:
        """How many whole characters at the start of a line fit into a number of units."""
        if self.encoding == "utf-32" or line_text.isascii():
            return min(units, len(line_text))
        codec, size = _CODECS[self.encoding]
        data = line_text.encode(codec, "surrogatepass")
        end = min(units * size, len(data))
        while _is_inside_character(data, end, size):
            end -= size
        return len(data[:end].decode(codec, "surrogatepass"))


def _is_inside_character(data: bytes, at: int, size: int) -> bool:
    """Whether an index of UTF-8 (``size`` 1) or UTF-16 (2) lies between two units of one character."""
    if at >= len(data):
        return False
    if size == 1:
        return data[at] & 0xC0 == 0x80
    return at > 0 and data[at + 1] & 0xFC == 0xDC and data[at - 1] & 0xFC == 0xD8


def _with_joined_surrogates(content: str) -> str:
    """The text in which two halves of a character that now stand side by side are one character."""
    if content.isascii():
        return content
    try:
        content.encode()
    except UnicodeEncodeError:
        return content.encode("utf-16-le", "surrogatepass").decode("utf-16-le", "surrogatepass")
    return content
