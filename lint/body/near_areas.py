"""Finds the areas of the body that are most like an unknown word."""

from __future__ import annotations

from . import built
from .name_bags import SHORT, one_letter_off
from .names import fold, without_side
from .nearest import nearest


def nearest_areas(name: str, most: int = 3) -> list[str]:
    """Names of the areas nearest to an unknown name, nearest first."""
    first = {built.AREAS[fold(area)]: area for area in reversed(built.AREA_NAMES)}
    return nearest(name, ((word, first[muscles]) for word, muscles in built.AREAS.items()), most)


def is_slip(name: str) -> bool:
    """Whether an unknown name is a letter away from a known one. Of short ones, the first letter must fit."""
    said = fold(without_side(name) or name)
    near = (area for area in built.AREAS if len(area) >= SHORT - 1 and one_letter_off(said, area))
    return any(len(said) > SHORT or area[0] == said[0] for area in near)
