"""Characters that do not print: the findings for them, and how to get them past the parser.

Sources: YAML 1.2.2, sections 5.1 (character set) and 5.4 (line breaks); Unicode 15 general categories.
"""

from __future__ import annotations

import re
import unicodedata

from ..findings.finding import Edit, Finding

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ..text.places import Text

SPACES = "\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000"
"""Blanks other than the ordinary one; YAML reads them as letters."""

_BREAKS = "\u0085\u2028\u2029"
_CONTROLS = "\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x84\x86-\x9f\ufffe\uffff"
_SURROGATES = "\ud800-\udfff"
_HIDDEN = "\u00ad\u061c\u200b\u200e\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff"
_UNPRINTABLE = re.compile(
    f"(?P<control>[{_CONTROLS}]+)|(?P<surrogate>[{_SURROGATES}]+)|(?P<line>[{_BREAKS}]+)|(?P<hidden>[{_HIDDEN}]+)"
)
_UNSAFE = re.compile(f"[{_CONTROLS}{_BREAKS}\ufeff]")
_FIRST_PRIVATE = 0xF0000  # Unicode keeps the characters from here on for private use


def placeholders(content: str) -> dict[int, int]:
    """{character: placeholder}, for characters that the parser refuses or reads as a line end.

    The placeholders are private characters that the text does not hold.
    """
    unsafe = sorted(set(_UNSAFE.findall(content)))
    free = (code for code in range(_FIRST_PRIVATE, 0x110000) if chr(code) not in content)
    return {ord(char): next(free) for char in unsafe}


def unprintable(content: str) -> Iterator[tuple[Callable[[Text, int, str], Finding], int, str]]:
    """Runs of characters that do not print, each as (function that makes its finding, offset, characters)."""
    for found in _UNPRINTABLE.finditer(content):
        yield _MESSAGES[str(found.lastgroup)], found.start(), found.group()


def odd_blank_edges(words: str) -> tuple[int, int]:
    """How many odd blanks stand before some words, and how many behind them."""
    before = len(words) - len(words.lstrip(SPACES))
    return before, len(words) - max(before, len(words.rstrip(SPACES)))


def odd_blanks(text: Text, start: int, end: int, *, stops: bool = False) -> Finding:
    """The finding for blanks around words that only look like ordinary blanks.

    Where they are what ``stops`` the reading, nothing behind them is known: an error.
    """
    place = text.place(start, end)
    further = ", so from here on the file cannot be read" if stops else ""
    return Finding(
        "odd-whitespace",
        "error" if stops else "warning",
        place,
        f"Here is {_named(place.excerpt)} where an ordinary blank is meant{further}.",
        wanted="Ordinary blanks; other programs take this one for a letter.",
        change="Replace it by an ordinary blank.",
        edits=(Edit(place, " " * (end - start), "replace by ordinary blanks"),),
    )


def _control(text: Text, at: int, chars: str) -> Finding:
    place = text.place(at, at + len(chars))
    return Finding(
        "control-character",
        "error",
        place,
        f"Here is {_named(chars)}: it cannot be seen, and YAML does not allow it.",
        wanted="Letters, digits, signs and blanks.",
        change="Delete it.",
        edits=(Edit(place, "", "delete the control character"),),
    )


def _surrogate(text: Text, at: int, chars: str) -> Finding:
    return Finding(
        "broken-character",
        "error",
        text.place(at, at + len(chars)),
        "Half a character stands here; the other half is lost.",
        wanted="Whole characters.",
        change="Type the character again.",
    )


def _line(text: Text, at: int, chars: str) -> Finding:
    place = text.place(at, at + len(chars))
    return Finding(
        "odd-whitespace",
        "warning",
        place,
        f"Here is {_named(chars)}: some programs begin a new line at it, others do not.",
        wanted="Ordinary blanks and line ends.",
        change="Replace it by a blank or an ordinary line end.",
        edits=(Edit(place, " ", "replace by a blank"),),
    )


def _hidden(text: Text, at: int, chars: str) -> Finding:
    place = text.place(at, at + len(chars))
    return Finding(
        "hidden-character",
        "warning",
        place,
        f"Here is {_named(chars)}: nobody can see it, and it can make words differ or change their order.",
        wanted="Words that are what they look like.",
        change="Delete it.",
        edits=(Edit(place, "", "delete the hidden character"),),
    )


_MESSAGES = {"control": _control, "surrogate": _surrogate, "line": _line, "hidden": _hidden}


def _named(chars: str) -> str:
    """The first character by its code, and by its name if it has one: ``U+00A0 (no-break space)``."""
    name = unicodedata.name(chars[0], "").lower()
    more = f" and {len(chars) - 1} more" if len(chars) > 1 else ""
    return f"U+{ord(chars[0]):04X}" + (f" ({name})" if name else "") + more
