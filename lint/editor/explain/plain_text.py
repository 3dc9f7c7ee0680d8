"""Markdown as plain text, for editors that would show its signs."""

from __future__ import annotations

import re

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

_TOKEN = re.compile(
    r"\\(?P<escaped>[^\w\s]|_)|\[(?P<link>(?:\\.|[^\]\\])*)\]\((?P<address>[^)]*)\)|\*\*|`|(?<![^\s(])_(?=\S)|(?<=\S)_(?![^\s).,;:])"
)
_CELL_END = re.compile(r"(?<!\\)\|")
_RULER = re.compile(r"\|(?:\s*:?-+:?\s*\|)+\s*")
_HEADING = re.compile(r"#{1,6}\s+")


def plain_text(markdown: str) -> str:
    """The words of a page without marks; tables become columns, headings are underlined."""
    return "\n".join(_lines(markdown.split("\n"))).rstrip()


def _lines(lines: list[str]) -> Iterator[str]:
    table: list[list[str]] = []
    for line in [*lines, ""]:
        if line.startswith("|"):
            if not _RULER.fullmatch(line):
                table.append([_words(cell.strip()) for cell in _CELL_END.split(line)[1:-1]])
            continue
        yield from _columns(table)
        table = []
        heading = _HEADING.match(line)
        words = _words(line[heading.end() :] if heading else line)
        yield words
        if heading:
            yield "=" * len(words)


def _columns(table: list[list[str]]) -> Iterator[str]:
    """The rows of a table, each column as wide as its widest cell."""
    widths = [max(map(len, column)) for column in zip(*table, strict=False)]
    for row in table:
        cells = [cell.ljust(width) for cell, width in zip(row, widths, strict=False)]
        yield "  ".join(cells).rstrip()


def _words(line: str) -> str:
    return _TOKEN.sub(_meant, line)


def _meant(found: re.Match[str]) -> str:
    if found["escaped"]:
        return found["escaped"]
    if found["link"] is not None:
        words, address = _words(found["link"]), found["address"]
        return words if words == address or address.startswith("command:") else f"{words} ({address})"
    return ""
