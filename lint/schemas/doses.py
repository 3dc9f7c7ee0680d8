"""Lines written as on paper: a lift with its sets, repetitions, load and effort behind it.

``back squat 4x6 @ 75 %`` is one name to YAML. What stands behind the lift is told apart here, or left alone
where any of it cannot be read.
"""

from __future__ import annotations

import re

from .readings import are_sets_and_reps, ways
from .slips import effort
from .spellings import plain_spelling, sets_of_reps

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    Keys = dict[str, str]
    """Keys of a line, each with its value as it is written."""

_BEGINS = re.compile(
    r"(?<=[^\W\d_]|\))[,;:]? +"
    r"(?=[1-9][0-9]?(?: ?- ?[1-9][0-9]?)? ?(?:[xX\u00d7*]|sets? of) ?[0-9A-Za-z])"
)
_BETWEEN = re.compile(r"^(?:[ ,;/]|@ ?(?=[0-9.,-]+ ?[%kl]|[Rr])|(?:at|with) )+")
_OVER_A_DISTANCE = re.compile(r"([1-9][0-9]?) ?[xX\u00d7*] ?(.+)")


def told_apart(name: str) -> tuple[str, list[Keys]]:
    """The lift, and the keys that the words behind it stand for, in each way in which they can be read.

    No way at all where no sets and repetitions stand behind it, or not all of them can be read.
    """
    for begins in _BEGINS.finditer(name):
        keys = keys_of(name[begins.end() :])
        if "sets" in keys:
            asked = () if sets_of_reps(keys["sets"]) else ways(keys["sets"], "sets")
            several = dict.fromkeys(one.words for one in asked) or [keys["sets"]]
            return name[: begins.start()], [{**keys, "sets": sets} for sets in several]
    return name, []


def keys_of(words: str) -> Keys:
    """The keys that words without any stand for: ``3x8 @ 75 %``. Empty where not all of them can be read."""
    keys: Keys = {}
    left = words
    while left := _BETWEEN.sub("", left).rstrip():
        found = next(_first_values(left), None)
        if found is None or found[0] in keys:
            return {}
        key, value, taken = found
        keys[key] = value
        left = left[taken:]
    over = _OVER_A_DISTANCE.fullmatch(keys.get("sets", ""))
    distance = plain_spelling("distance", over[2]) if over else None
    return keys if over is None or distance is None else {**keys, "sets": over[1], "distance": distance}


def _first_values(words: str) -> Iterator[tuple[str, str, int]]:
    """Keys and values that the first words may stand for, with the number of letters: the longest first."""
    ends = [len(words), *(found.start() for found in re.finditer("[ ,;@]", words))]
    for end in sorted(ends, reverse=True):
        said = words[:end].rstrip(" ,;")
        stated = effort(said)
        if stated is not None:
            yield (*stated, end)
        elif sets_of_reps(said) is not None or are_sets_and_reps(said) or _is_over_a_distance(said):
            yield "sets", said, end
        elif rest := re.fullmatch(r"(?i)rest:? (.+)|(.+) rest", said):
            time = plain_spelling("rest", rest[1] or rest[2])
            if time is not None and not time.isdecimal():
                yield "rest", time, end
        elif re.search("[%kl]", said) and (load := plain_spelling("load", said)) is not None:
            yield "load", load, end


def _is_over_a_distance(words: str) -> bool:
    """``4x20 m``."""
    over = _OVER_A_DISTANCE.fullmatch(words)
    return over is not None and plain_spelling("distance", over[2]) is not None
