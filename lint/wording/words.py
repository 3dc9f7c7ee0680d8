"""Wording that all messages share: numbers, plurals, lists, weeks."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence


def listed(names: Sequence[str], last: str = "and") -> str:
    """``a``, ``a and b``, ``a, b and c``; ``last`` is the word before the last name."""
    return f" {last} ".join([", ".join(names[:-1]), names[-1]]) if len(names) > 1 else "".join(names)


def with_article(noun: str) -> str:
    """``a session``, ``an exercise``."""
    return f"{'an' if noun[:1] in 'aeiou' else 'a'} {noun}"


def first_of(names: Sequence[str], most: int = 3) -> str:
    """The first ``most`` names, and how many more there are: ``a, b, c and 2 more``."""
    more = len(names) - most
    return listed(names) if more <= 0 else f"{', '.join(names[:most])} and {more} more"


def plain(number: float) -> str:
    """A number as people write it: two decimals at most, no trailing zeros."""
    return f"{number:.2f}".rstrip("0").rstrip(".")


def counted_noun(number: int, word: str) -> str:
    """A number with its noun: ``1 set``, ``3 sets``."""
    return f"{number} {word}{'' if number == 1 else 's'}"


def sets_of(number: float | str) -> str:
    """A number of sets, which may already be in words: ``1 set``, ``12 sets``, ``up to 12 sets``."""
    words = number if isinstance(number, str) else plain(number)
    return f"{words} set" if words == "1" else f"{words} sets"


def week_list(weeks: Sequence[int]) -> str:
    """Week numbers in words, with runs joined: ``week 3``, ``weeks 1-4, 6``."""
    runs: list[list[int]] = []
    for week in weeks:
        if runs and week == runs[-1][1] + 1:
            runs[-1][1] = week
        else:
            runs.append([week, week])
    words = ", ".join(str(a) if a == b else f"{a}-{b}" for a, b in runs)
    return f"week{'' if len(weeks) == 1 else 's'} {words}"


def says(words: Sequence[str], *texts: str) -> bool:
    """Whether one of these words or phrases occurs in the coach's texts.

    Compares whole words. Ignores case, hyphens and other punctuation.
    """
    said = f" {' '.join(_letters(' '.join(texts)).split())} "
    return any(f" {' '.join(_letters(word).split())} " in said for word in words)


def _letters(text: str) -> str:
    return "".join(letter if letter.isalnum() else " " for letter in text.casefold())
