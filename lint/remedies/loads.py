"""Numbers written anew where they stand among other words: loads, repetitions, rests."""

from __future__ import annotations

import re

from ..findings.edits import in_one
from ..findings.finding import Edit
from ..wording.words import plain
from .values import one_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..text.places import Place

_NUMBER = re.compile(r"(?<![0-9.,])[0-9]+(?:\.[0-9]+)?(?![0-9.,])")
QUOTES = "'\""

MOST_SLIPS = 2
"""Numbers that one slip of the pen could have been, at most."""


def with_number(place: Place | None, was: float, numbers: Iterable[float]) -> Iterator[Edit]:
    """Writes one of some numbers in the place of another, which must stand there once."""
    if place is None or place.through:
        return
    found = [one for one in _NUMBER.finditer(place.excerpt) if float(one[0]) == was]
    if len(found) != 1:
        return
    start, end = found[0].span()
    for number in dict.fromkeys(map(plain, numbers)):
        words = place.excerpt[:start] + number + place.excerpt[end:]
        yield Edit(place, words, f"write {words.strip(QUOTES)}", certain=False)


def percent(place: Place | None, wanted: float) -> Iterator[Edit]:
    """Writes another percentage where one stands alone."""
    if place is not None and re.fullmatch(r"~? ?[0-9.]+(?:-[0-9.]+)? ?%", place.excerpt):
        yield from one_of(place, [f"{wanted:.0f} %"])


def in_kilograms(place: Place | None) -> Iterator[Edit]:
    """Writes kg in the place of %, where a percentage stands alone."""
    if place is not None and re.fullmatch(r"[0-9.]+ ?%", place.excerpt):
        yield from one_of(place, [place.excerpt.rstrip("% ") + " kg"])


def repetitions(place: Place | None, wanted: float) -> Iterator[Edit]:
    """Writes a number of repetitions in the place of a number or a range."""
    if place is not None and wanted >= 1 and re.fullmatch(r"[0-9]+(?:-[0-9]+)?", place.excerpt):
        yield from one_of(place, [plain(int(wanted))], " repetitions" if wanted >= 2 else " repetition")


def slips(place: Place | None, low: float, high: float) -> Iterator[Edit]:
    """Writes what a number out of bounds could have been with a digit less, or the nearest bound.

    Both are numbers as they stand at the place, in its unit.
    """
    if place is None or place.through:
        return
    found = _NUMBER.findall(place.excerpt)
    if len(found) != 1:
        return
    number = found[0]
    fewer = {float(one) for at in range(len(number)) if (one := number[:at] + number[at + 1 :]).strip(".")}
    fitting = sorted((one for one in fewer if low <= one <= high and one), reverse=True)[:MOST_SLIPS]
    was = float(number)
    yield from with_number(place, was, [*fitting, low if was < low else high])


def changed_unit(places: Iterable[Place], unit: str, factor: float, step: float = 0.5) -> Iterator[Edit]:
    """Writes loads in another unit: the same weight to the nearest step, or the same numbers."""
    places = [one for one in places if not one.through]

    def turned(words: str) -> str:
        return _NUMBER.sub(lambda one: plain(round(float(one[0]) * factor / step) * step), words)

    for label, change in ((f"write it in {unit}", turned), (f"write {unit}, the number is right", str)):
        edits = [
            Edit(one, re.sub(r"\b(?:kgs?|lbs?)\b", unit, change(one.excerpt)), label, certain=False)
            for one in places
        ]
        whole = in_one(f"{label}: {edits[0].words}" if len(edits) == 1 else label, edits)
        if whole is not None:
            yield whole
