"""Numbers written anew where they stand among other words."""

from __future__ import annotations

import re

from ..findings.finding import Edit
from ..wording.words import plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..text.places import Place

NUMBER = re.compile(r"(?<![0-9.,])[0-9]+(?:\.[0-9]+)?(?![0-9.,])")

QUOTES = "'\""

MOST_SLIPS = 2
"""Numbers that one slip of the pen could have been, at most."""


def with_number(place: Place | None, was: float, numbers: Iterable[float]) -> Iterator[Edit]:
    """Writes one of some numbers in the place of another, which must stand there once."""
    if place is None or place.through:
        return
    found = [one for one in NUMBER.finditer(place.excerpt) if float(one[0]) == was]
    if len(found) != 1:
        return
    start, end = found[0].span()
    for number in dict.fromkeys(map(plain, numbers)):
        words = place.excerpt[:start] + number + place.excerpt[end:]
        yield Edit(place, words, f"write {words.strip(QUOTES)}", certain=False)


def slips(place: Place | None, low: float, high: float, *, bound: bool = False) -> Iterator[Edit]:
    """Writes what a number out of bounds could have been with a digit less.

    Where it could have been none, or ``bound`` asks for it, also the nearest bound. All are numbers as they
    stand at the place, in its unit.
    """
    found = [] if place is None or place.through else NUMBER.findall(place.excerpt)
    if len(found) != 1:
        return
    number = found[0]
    fewer = {float(one) for at in range(len(number)) if (one := number[:at] + number[at + 1 :]).strip(".")}
    fitting = sorted((one for one in fewer if low <= one <= high and one), reverse=True)[:MOST_SLIPS]
    nearest = [low if float(number) < low else high] if bound or not fitting else []
    yield from with_number(place, float(number), [*fitting, *nearest])
