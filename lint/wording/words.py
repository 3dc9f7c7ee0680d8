"""The English that all messages share: numbers, plurals, lists, weeks; and text that is safe to print."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

_HIDDEN = {0x2028, 0x2029, 0xFEFF, 0x061C, 0x200E, 0x200F, *range(0x202A, 0x202F), *range(0x2066, 0x206A)}
"""Line separators, byte order mark and direction marks: characters that forge what a reader sees."""


def listed(names: Sequence[str]) -> str:
    """``a``, ``a and b``, ``a, b and c``."""
    return " and ".join([", ".join(names[:-1]), names[-1]]) if len(names) > 1 else "".join(names)


def first_of(names: Sequence[str], most: int = 3) -> str:
    """``a, b, c and 2 more``: the first of many names."""
    more = len(names) - most
    return listed(names) if more <= 0 else f"{', '.join(names[:most])} and {more} more"


def plain(number: float) -> str:
    """A number as people write it: no trailing zeros, two decimals at most."""
    return f"{number:.2f}".rstrip("0").rstrip(".")


def counted_noun(number: int, word: str) -> str:
    """ "1 set", "3 sets"."""
    return f"{number} {word}{'' if number == 1 else 's'}"


def sets_of(number: float | str) -> str:
    """``1 set``, ``12 sets``, ``up to 12 sets``."""
    words = number if isinstance(number, str) else plain(number)
    return f"{words} set" if words == "1" else f"{words} sets"


def week_list(weeks: Sequence[int]) -> str:
    """``week 3``, ``weeks 1-4, 6``: week numbers in words, runs drawn together."""
    runs: list[list[int]] = []
    for week in weeks:
        if runs and week == runs[-1][1] + 1:
            runs[-1][1] = week
        else:
            runs.append([week, week])
    words = ", ".join(str(a) if a == b else f"{a}-{b}" for a, b in runs)
    return f"week{'' if len(weeks) == 1 else 's'} {words}"


def says(words: Sequence[str], *texts: str) -> bool:
    """Whether one of some words, or groups of words, stands in a text of the coach's; hyphens aside."""
    said = f" {' '.join(_letters(' '.join(texts)).split())} "
    return any(f" {' '.join(_letters(word).split())} " in said for word in words)


def _letters(text: str) -> str:
    return "".join(letter if letter.isalnum() else " " for letter in text.casefold())


def safe(words: str) -> str:
    """Text without what could steer a terminal, forge a line or turn its direction: those are spelled out."""
    if words.isascii() and words.isprintable():
        return words
    return "".join(
        char if char.isprintable() and ord(char) not in _HIDDEN else f"\\u{ord(char):04x}" for char in words
    )
