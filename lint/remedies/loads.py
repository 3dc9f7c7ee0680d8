"""Loads and repetitions written anew, in percent, kg, lb or as a number."""

from __future__ import annotations

import re

from ..findings.edits import in_one
from ..findings.finding import Edit
from ..syntax.numbers import NUMBER
from ..syntax.rewrites import one_of
from ..wording.words import plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..text.places import Place


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


def changed_unit(places: Iterable[Place], unit: str, factor: float, step: float = 0.5) -> Iterator[Edit]:
    """Writes loads in another unit: the same weight to the nearest step, or the same numbers."""
    places = [one for one in places if not one.through]

    def turned(words: str) -> str:
        return NUMBER.sub(lambda one: plain(round(float(one[0]) * factor / step) * step), words)

    for label, change in ((f"write it in {unit}", turned), (f"write {unit}, the number is right", str)):
        edits = [
            Edit(one, re.sub(r"\b(?:kgs?|lbs?)\b", unit, change(one.excerpt)), label, certain=False)
            for one in places
        ]
        whole = in_one(f"{label}: {edits[0].words}" if len(edits) == 1 else label, edits)
        if whole is not None:
            yield whole
