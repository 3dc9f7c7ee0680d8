"""The English that all messages share: numbers, plurals, lists, weeks."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence


def listed(names: Sequence[str], last: str = "and") -> str:
    """``a``, ``a and b``, ``a, b and c``; ``last`` is the word before the last name."""
    return f" {last} ".join([", ".join(names[:-1]), names[-1]]) if len(names) > 1 else "".join(names)


def first_of(names: Sequence[str], most: int = 3) -> str:
    """``a, b, c and 2 more``: the first of many names."""
    more = len(names) - most
    return listed(names) if more <= 0 else f"{', '.join(names[:most])} and {more} more"


def plain(number: float) -> str:
    """A number as people write it: no trailing zeros, two decimals at most."""
    return f"{number:.2f}".rstrip("0").rstrip(".")


def counted_noun(number: float | str, word: str) -> str:
    """``1 set``, ``12 sets``; ``up to 12 sets`` where the number is in words already."""
    words = number if isinstance(number, str) else plain(number)
    return f"{words} {word}" if words == "1" else f"{words} {word}s"


def sets_of(number: float | str) -> str:
    """``1 set``, ``12 sets``, ``up to 12 sets``."""
    return counted_noun(number, "set")


def near_names(name: str, known: Iterable[str], most: int) -> list[str]:
    """The known names that are spelt most like a name that is none, the nearest first."""
    from difflib import get_close_matches

    return get_close_matches(name, list(known), most)


def did_you_mean(near: Sequence[str]) -> str:
    """``Did you mean a, b or c?``; empty where no name is near."""
    return f"Did you mean {listed(near, 'or')}?" if near else ""


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
