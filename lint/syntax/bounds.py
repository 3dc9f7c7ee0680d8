"""The findings for a text that holds more than is read of one: in levels, in values, in what is repeated."""

from __future__ import annotations

from ..findings.finding import Finding

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Place

DEEPEST = 64
"""How many lists and groups of keys may stand inside one another."""


def too_much_repetition(place: Place, limit: int) -> Finding:
    """The aliases of the file repeat more values than are read."""
    return Finding(
        "too-much-repetition",
        "error",
        place,
        f"With this one the repeated parts of the file come to more than {limit} values; reading stopped.",
        wanted=f"At most {limit} values by repeated parts.",
        change="Repeat smaller parts, or parts that do not repeat others in turn.",
    )


def too_many_values(place: Place, limit: int) -> Finding:
    """The file holds more keys and values than are read of one."""
    return Finding(
        "too-many-values",
        "error",
        place,
        f"With this one the file comes to more than {limit} keys and values; reading stopped.",
        wanted=f"At most {limit}; a year of training for one athlete needs about 20000.",
        change="Write a file for each part of the training.",
    )


def too_much_nesting(place: Place) -> Finding:
    """More levels stand inside one another than are read."""
    return Finding(
        "too-much-nesting",
        "error",
        place,
        f"More than {DEEPEST} levels stand inside one another here; reading stopped.",
        wanted=f"At most {DEEPEST} levels; a programme needs about ten.",
        change="Check for brackets or dashes that are there by mistake.",
    )
