"""The lines of a YAML text that may be half typed, each taken apart by itself."""

from __future__ import annotations

import re

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Literal

    ValueStyle = Literal["", "flow", "quoted", "block", "alias", "plain"]

DOCUMENT_MARKS = ("---", "...", "%")
"""How a line starts that separates documents."""

NO_CONTENT = ("", "#", "\t")
"""What follows the indentation of a line that holds nothing."""

QUOTES = ('"', "'")

_PROPERTIES = r"(?:[&!][^ \t\n,\[\]{}]*(?:[ \t]+|$))*"
_QUOTED = r'"(?:[^"\\]|\\.)*"|\'(?:[^\']|\'\')*\''
_KEY = re.compile(
    rf"{_PROPERTIES}(?P<key>{_QUOTED}"
    r"|(?![\[\]{}\"'#|>@`%,*&!]|[-?:](?:[ \t]|$))(?:(?!:(?:[ \t]|$)|[ \t]\#).)+?)"
    r"[ \t]*(?P<colon>:)(?=[ \t]|$)"
)

PROPERTY = re.compile(r"(?P<sign>[&!])(?P<name>[^ \t\n,\[\]{}]*)")
"""An anchor or a tag."""

QUOTED = re.compile(_QUOTED, re.DOTALL)
ALIAS = re.compile(r"\*[^ \t\n,\[\]{}]*")
COMMENT = re.compile(r"(?:^|[ \t])(?P<mark>\#)")


class TextLine:
    """A line taken apart; columns count from its start.

    ``dashes`` are the columns of the dashes at its start, and ``column`` is where the rest begins. ``key`` is
    the key there, None where there is none; it stands from ``key_start`` to ``key_end``, its colon at
    ``colon``. ``value`` is the column of what remains, behind anchors and tags.

    ``style`` says what that is: "" nothing, "flow" brackets, "quoted" or "plain" text, "block" text on the
    lines below, or an "alias".
    """

    __slots__ = (
        "colon",
        "column",
        "dashes",
        "indent",
        "key",
        "key_end",
        "key_start",
        "style",
        "text",
        "value",
    )

    def __init__(self, text: str, indent: int) -> None:
        self.text = text
        self.indent = indent
        self.dashes: list[int] = []
        at = indent
        while text.startswith("-", at) and text[at + 1 : at + 2] in ("", " ", "\t"):
            self.dashes.append(at)
            at = past_blanks(text, at + 1)
        self.column = at
        self.key: str | None = None
        self.key_start = self.key_end = self.colon = -1
        found = _KEY.match(text, at)
        if found is not None:
            self.key = unquoted(found["key"])
            self.key_start, self.key_end = found.span("key")
            self.colon = found.start("colon")
            at = past_blanks(text, found.end())
        while (found_property := PROPERTY.match(text, at)) is not None:
            at = past_blanks(text, found_property.end())
        self.value = at
        self.style = _style_of(text, at)

    @property
    def parent_column(self) -> int:
        """The column of what holds the value: lines that are indented deeper belong to the value."""
        if self.key is not None:
            return self.column
        return self.dashes[-1] if self.dashes else self.indent - 1


def _style_of(text: str, at: int) -> ValueStyle:
    first = text[at : at + 1]
    if first == "#" and (at == 0 or text[at - 1] in " \t"):
        return ""
    styles: dict[str, ValueStyle] = {
        "": "",
        "{": "flow",
        "[": "flow",
        "*": "alias",
        "|": "block",
        ">": "block",
        '"': "quoted",
        "'": "quoted",
    }
    return styles.get(first, "plain")


class TextLines:
    """All lines of a text; ``text`` has LF as its only line end, and the offsets of the original."""

    __slots__ = ("rows", "text")

    def __init__(self, content: str) -> None:
        # A CRLF becomes a space and an LF, so that offsets stay the same.
        self.text = content.replace("\r\n", " \n").replace("\r", "\n") if "\r" in content else content
        self.rows = self.text.split("\n")

    def offset_of(self, row: int) -> int:
        """The offset at which a row starts."""
        return sum(map(len, self.rows[:row])) + row

    def line(self, row: int) -> TextLine | None:
        """The line at a row; None where it is blank, holds only a comment, or separates documents."""
        text = self.rows[row]
        indent = len(text) - len(text.lstrip(" "))
        if text[indent : indent + 1] in NO_CONTENT or text.startswith(DOCUMENT_MARKS):
            return None
        return TextLine(text, indent)

    def above(self, row: int, deepest: int) -> Iterator[tuple[int, TextLine | None]]:
        """The rows above one that hold something, nearest first, up to the start of the document.

        A line that is indented deeper than ``deepest`` comes as None: it only matters that it is there.
        """
        for one in range(row - 1, -1, -1):
            text = self.rows[one]
            if text.startswith(DOCUMENT_MARKS):
                return
            indent = len(text) - len(text.lstrip(" "))
            if indent > deepest:
                if text[indent : indent + 1] not in NO_CONTENT:
                    yield one, None
            elif (line := self.line(one)) is not None:
                yield one, line

    def next_below(self, row: int) -> TextLine | None:
        """The next line below a row that holds something."""
        for one in range(row + 1, len(self.rows)):
            if (line := self.line(one)) is not None:
                return line
        return None


def past_blanks(text: str, at: int) -> int:
    """The next column that holds neither a space nor a tab."""
    while text[at : at + 1] in (" ", "\t"):
        at += 1
    return at


def unquoted(word: str) -> str:
    """A key as it is read, without its quotes."""
    if word.startswith("'"):
        return word[1:].removesuffix("'").replace("''", "'")
    if word.startswith('"'):
        return re.sub(r"\\(.)", r"\1", word[1:].removesuffix('"'))
    return word


def within_quotes(text: str, start: int, end: int, offset: int) -> tuple[int, int, str]:
    """Start and end of a word inside its quotes, and the quote.

    Where the caret is not inside the quotes, they are part of the word and the quote is "". A quote that is
    not closed yet may hold anything, so there the word ends at the caret.
    """
    quote = text[start : start + 1]
    if quote not in QUOTES or offset <= start:
        return start, end, ""
    closed = end - start > 1 and text[end - 1] == quote
    if not closed:
        return start + 1, offset, quote
    return (start, end, "") if offset >= end else (start + 1, end - 1, quote)
