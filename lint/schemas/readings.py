"""Values that can be read in two ways: what each reading means, and how to write it.

Nothing here guesses. A value of one meaning is read (`spellings`); one of two is asked about.
"""

from __future__ import annotations

import re

from ..wording.words import sets_of
from .dates import days_named

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

RULE = "two-readings"
"""The name of every finding on what can be read in two ways."""


class Way:
    """One way to read a value: what it means, and what to write for it.

    ``words`` stand in place of the value. ``keys``, such as ``rpe: 8``, stand in place of key and value, or
    beside the value where there are ``words``, too.
    """

    __slots__ = ("keys", "meaning", "words")

    def __init__(self, meaning: str, words: str = "", keys: str = "") -> None:
        self.meaning = meaning
        self.words = words
        self.keys = keys

    @property
    def written(self) -> str:
        """What to write, in a sentence."""
        return " and ".join(f"`{one}`" for one in (self.words, self.keys) if one)


def ways(words: str, key: str) -> list[Way]:
    """The ways to read the words of a key; none where they cannot be read at all."""
    for keys, written, read in _ASKED:
        found = re.fullmatch(written, words) if key in keys else None
        if found is not None:
            several = read(key, *found.groups(default=""))
            return list({(one.words, one.keys): one for one in several}.values())
    return []


def deload_ways(words: str, weeks: int) -> list[Way]:
    """The ways to read ``deload: 4`` in a run of weeks: that week, or every so many weeks."""
    if not re.fullmatch("[1-9][0-9]?", words):
        return []
    every = ", ".join(str(week) for week in range(int(words), weeks + 1, int(words))) or words
    one = Way(f"week {words}", f"[{words}]")
    return [one, Way(f"every {words} weeks", f"[{every}]")] if every != words else [one]


def are_sets_and_reps(words: str) -> bool:
    """Whether words are two numbers of which either may be the sets: ``3x5``."""
    return len(ways(words, "reps")) > 1 and re.fullmatch(_SETS_TIMES_REPS, words) is not None


def in_words(words: str, several: list[Way]) -> str:
    """The sentence that names both readings."""
    return f"`{words}` has two readings: {', or '.join(way.meaning for way in several)}."


_TIMES = ("rest", "hold", "every", "for", "cluster rest")
_LOADS = ("load", "body mass")
_IN_A_HAND = "(?:each|(?:(?:per|in|in each|each|pro|a) )(?:hand|Hand))"
_ONE_MASS = "[0-9]{1,3}(?:[.,][0-9]{1,2})? ?(?:kg|lb)"
_KIT = (
    "(?:[a-zA-Z]+ )?"
    "(?:vest|belt|plate|disc|sandbag|bag|rucksack|backpack|ball|chain|dumbbell|kettlebell|DB|KB)"
)
_SETS_TIMES_REPS = "([1-9][0-9]?) ?[xX\u00d7*] ?([1-9][0-9]?)"
_DATES = ("date", "starts", "from", "until", "tested", "review on", "clearance on file", "screening on file")


def _without_unit(key: str, words: str) -> list[Way]:
    return [Way(f"{words} {unit}", f"{words} {unit}") for unit in ("s", "min")]


def _pointed(key: str, minutes: str, seconds: str) -> list[Way]:
    if int(seconds) > 59:
        return _without_unit(key, f"{minutes}.{seconds}")
    together = int(minutes) * 60 + int(seconds)
    decimal = f"{float(f'{minutes}.{seconds}'):g} min"
    return [Way(f"{minutes} min {int(seconds)} s", f"{together} s"), Way(decimal, decimal)]


def _metres(key: str, number: str) -> list[Way]:
    metres = Way("metres", keys=f"distance: {number} m")
    if key == "rest":
        metres = Way("metres walked between sets", keys=f"note: rest is a walk of {number} m")
    return [Way("minutes", f"{number} min"), metres]


def _times(key: str, first: str, second: str) -> list[Way]:
    either = (f"{sets_of(first)} of {second}", f"{sets_of(second)} of {first}")
    return [Way(words, words) for words in either]


def _alternating(key: str, number: str) -> list[Way]:
    in_all = [Way(f"{number} in all", f"{int(number) // 2} each" if int(number) % 2 == 0 else number)]
    return [Way(f"{number} each side", f"{number} each"), *in_all]


def _at(key: str, before: str, number: str) -> list[Way]:
    """``@8`` or ``5 @8``: an effort or a load."""
    load = Way(f"a load of {number} kg", f"{number} kg") if key == "load" else None
    load = load or Way(f"a load of {number} kg", before, f"load: {number} kg")
    if float(number) > 10:
        share = Way(f"{number} % of the best lift", before, f"load: {number} %")
        return [Way(share.meaning, f"{number} %") if key == "load" else share, load]
    return [Way(f"RPE {number}", before, f"rpe: {number}"), load]


def _three_phases(key: str, first: str, second: str, third: str) -> list[Way]:
    return [
        Way("lowering, bottom, lifting", f"{first}-{second}-{third}-0".upper()),
        Way("lifting, top, lowering", f"{third}-0-{first}-{second}".upper()),
    ]


def _open_ended(key: str, number: str) -> list[Way]:
    return [
        Way(f"{number} % and more", f"from {number} %"),
        Way(f"{number} % with the last set open, which is said behind the repetitions", f"{number} %"),
    ]


def _thousands(key: str, thousands: str, rest: str, unit: str) -> list[Way]:
    whole, decimal = f"{thousands}{rest} {unit}", f"{float(f'{thousands}.{rest}'):g} {unit}"
    return [Way(whole, whole), Way(decimal, decimal)]


def _in_a_hand(key: str, number: str, unit: str) -> list[Way]:
    one = f"{number} {unit}"
    return [Way("one in each hand", f"2 x {one}"), Way("one in one hand", one)]


def _with_kit(key: str, load: str, kit: str, kit_before: str, load_after: str) -> list[Way]:
    load, kit = load or load_after, kit or kit_before
    return [Way(f"{load}, a {kit}", load, f"note: {kit}")]


def _days(key: str, words: str) -> list[Way]:
    return [Way(day, day) for day in days_named(words)]


_ASKED: tuple[tuple[tuple[str, ...], str, Callable[..., list[Way]]], ...] = (
    (_TIMES, r"([0-9]{1,2})\.([0-9]{2})", _pointed),
    (_TIMES, r"([0-9]+(?:[.,][0-9]+)?(?: ?- ?[0-9]+(?:[.,][0-9]+)?)?)", _without_unit),
    ((*_TIMES, "reps"), "([0-9]+(?:-[0-9]+)?) ?m", _metres),
    (("sets", "reps"), _SETS_TIMES_REPS, _times),
    (("reps",), r"([1-9][0-9]?) ?(?:alt|alternating|alternate|alternately)\.?", _alternating),
    (("reps", "load", "sets"), r"(?:([1-9][0-9]?(?:-[0-9]+)?) )?@ ?([0-9]{1,3}(?:\.5)?)", _at),
    (("tempo",), r"([0-9]|[xX])[-/. ]?([0-9]|[xX])[-/. ]?([0-9]|[xX])", _three_phases),
    (
        ("load",),
        r"([0-9]{1,3}(?:\.[0-9])?) ?\+ ?%|([0-9]{1,3}) ?% ?\+",
        lambda key, *one: _open_ended(key, "".join(one)),
    ),
    (("load",), f"([0-9]{{1,3}}(?:[.,][0-9]{{1,2}})?) ?(kg|lb) {_IN_A_HAND}", _in_a_hand),
    (("load",), f"({_ONE_MASS}) (?:in (?:a |the )?)?({_KIT})|({_KIT}),? ?({_ONE_MASS})", _with_kit),
    (_LOADS, "([0-9]{1,2})[.,]([0-9]{3}) ?(kg|lb)", _thousands),
    (_DATES, "(.*[0-9].*)", _days),
)
"""The keys, the pattern of the words, and what gives the ways to read them."""
