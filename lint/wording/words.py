"""Wording that all messages share: numbers, plurals, lists, weeks; and text that is safe to print."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

_HIDDEN = {0x2028, 0x2029, 0xFEFF, 0x061C, 0x200E, 0x200F, *range(0x202A, 0x202F), *range(0x2066, 0x206A)}
"""Line separators, byte order mark and direction marks: characters that forge what a reader sees."""


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


def counted_noun(number: float | str, word: str) -> str:
    """A number, which may already be in words, with its noun: ``1 set``, ``up to 12 sets``."""
    words = number if isinstance(number, str) else plain(number)
    return f"{words} {word}" if words == "1" else f"{words} {word}s"


def sets_of(number: float | str) -> str:
    """A number of sets, which may already be in words: ``1 set``, ``12 sets``, ``up to 12 sets``."""
    return counted_noun(number, "set")


def near_names(name: str, known: Iterable[str], most: int) -> list[str]:
    """The known names that are spelt most like a name that is none, the nearest first."""
    from difflib import get_close_matches

    return get_close_matches(name, list(known), most) if len(name) <= LONGEST_SHOWN else []


LONGEST_SHOWN = 60
"""Letters of a coach's words that a message repeats, and up to which they are compared with others."""


def shortened(words: str, most: int = LONGEST_SHOWN) -> str:
    """A coach's words on one line, cut off with "..." if they are longer than ``most``."""
    line = " ".join(words.split())
    return line if len(line) <= most else f"{line[: most - 3]}..."


def did_you_mean(near: Sequence[str]) -> str:
    """``Did you mean a, b or c?``; empty where no name is near."""
    return f"Did you mean {listed(near, 'or')}?" if near else ""


UNITS = ("%", "h", "kg", "min", "s")
"""Units that are written alike for one and for many."""


def exact(number: float) -> str:
    """A number as somebody wrote it, with all its decimals."""
    return f"{number:.12g}"


def amount(number: float, unit: str) -> str:
    """``90 s``, ``1 day``, ``2.5 days``: a number with its unit."""
    words = exact(number)
    return f"{words} {unit}{'' if unit in UNITS or words == '1' else 's'}"


def duration(seconds: float) -> str:
    """``15 min``, ``1.5 min``, ``100 s``: whole and half minutes, else seconds."""
    return amount(seconds, "s") if seconds % 30 or seconds < 60 else amount(seconds / 60, "min")


PARTS = ("half", "third", "quarter", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")
"""What each of two parts of a thing is called, of three, and so on."""


def part(of: float) -> str:
    """``third``, the first of 3 parts; ``1/12``; ``40 %`` where it is no whole number of parts."""
    if of % 1:
        return f"{plain(100 / of)} %"
    return PARTS[int(of) - 2] if 2 <= of <= 10 else f"1/{exact(of)}"


def ratios(times: float) -> str:
    """``2:3 to 3:2``: how far two things may be apart, either way, where one is 1.5 times the other."""
    for less in range(1, 11):
        more = round(float(times * less), 6)
        if more.is_integer():
            return f"{less}:{more:g} to {more:g}:{less}"
    return f"1:{exact(times)} to {exact(times)}:1"


def times_as_many(number: float) -> str:
    """``twice as many``, ``2.5 times as many``."""
    return f"{'twice' if number == 2 else f'{exact(number)} times'} as many"


def more_sets(number: float) -> str:
    """``more``, or ``over 2 sets more`` where any more will not do."""
    return f"over {amount(number, 'set')} more" if number else "more"


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
    return not said.isspace() and any(f" {' '.join(_letters(word).split())} " in said for word in words)


def _letters(text: str) -> str:
    if text.replace(" ", "").isalnum():  # most words
        return text.casefold()
    return "".join(letter if letter.isalnum() else " " for letter in text.casefold())


def safe(words: str) -> str:
    """Text without what could steer a terminal, forge a line or turn its direction: those are spelled out."""
    if words.isascii() and words.isprintable():
        return words
    return "".join(
        char if char.isprintable() and ord(char) not in _HIDDEN else f"\\u{ord(char):04x}" for char in words
    )


def safe_name(name: str) -> str:
    """A file name that cannot pass for anything else at the head of a line, such as for a message.

    A colon before a digit is spelled out, as the line's first one with a line number ends the name.
    """
    name = f"./{safe(name)}" if name.startswith((":", "-")) else safe(name)
    if ":" not in name:
        return name
    first, *others = name.split(":")
    return first + "".join(f"\\u003a{one}" if one[:1].isdecimal() else f":{one}" for one in others)
