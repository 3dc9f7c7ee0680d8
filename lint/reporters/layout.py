"""The look of text for people: a label in a narrow column on the left, wrapped words beside it."""

from __future__ import annotations

import os
import sys
from textwrap import wrap

from ..wording.words import safe

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

LABEL = 9
"""Columns that the labels of a card take."""


def row(label: str, words: str, width: int, column: int = LABEL) -> Iterator[str]:
    """The lines of one row: ``width`` in columns, ``column`` those that labels take."""
    indent = " " * (column + 2)
    lines = wrap(safe(words), max(width - column - 2, 30), break_on_hyphens=False) or [""]
    yield f"  {label:<{column}}{lines[0]}".rstrip()
    for line in lines[1:]:
        yield f"{indent}{line}"


def paragraph(words: str, width: int) -> Iterator[str]:
    """The lines of words over the whole width."""
    yield from wrap(safe(words), max(width, 30), break_on_hyphens=False)


def terminal_width() -> int:
    """Columns to write in."""
    import shutil

    return min(shutil.get_terminal_size((96, 24)).columns, 110)


def bold() -> bool:
    """Whether the terminal shows bold words."""
    return sys.stdout.isatty() and not os.environ.get("NO_COLOR")


def strong(words: str, bold: bool) -> str:
    """Words in bold, where the terminal can."""
    return f"\x1b[1m{words}\x1b[0m" if bold else words
