"""Equipment: what an exercise needs, and whether a list in a coach's words holds it.

Which words stand for which piece is common practice, no source. A word that may mean a piece is taken to mean
it, so that nothing is called missing unless it surely is.
"""

from __future__ import annotations

from functools import lru_cache

from . import built, catalogue
from .names import fold, words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterable

    from .catalogue import Exercise

NO_PIECE = ("none", "bodyweight", "machine")
"""Implements that are not a piece of their own. A machine is known by its station."""

EVERYTHING = ("gym", "full gym", "everything", "weight room", "whole gym")
"""Words that stand for all equipment."""

ALWAYS_THERE = ("floor", "wall", "partner", "track", "hill", "stairs", "box")
"""Pieces that nobody needs to list (common practice, no source)."""

MACHINE = "machine "

OTHER_WORDS: dict[str, tuple[str, ...]] = {
    "dumbbell": ("kettlebell", "DB", "free weights"),
    "kettlebell": ("dumbbell", "KB", "free weights"),
    "barbell": ("bar", "bar and plates", "free weights"),
    "plate": ("barbell", "weight vest", "weighted vest", "dumbbell", "kettlebell", "free weights"),
    "rack": ("squat stand", "cage", "rig"),
    "guided bar": ("guided barbell", "Smith machine", "Smith"),
    "cable": ("pulley", "functional trainer"),
    "machine pulldown": ("cable", "lat machine"),
    "machine cable row": ("cable", "seated row", "low row"),
    "machine fly": ("pec deck",),
    "pull-up bar": ("chin-up bar", "rig", "power rack", "rings"),
    "dip bars": ("parallel bars", "dip station", "rings"),
    "suspension": ("rings", "straps", "sling trainer", "TRX"),
    "sliders": ("sliding discs", "towels"),
    "band": ("tube",),
    "box": ("step", "chair", "bench", "stairs"),
    "exercise ball": ("stability ball", "Swiss ball", "gym ball", "fitness ball"),
    "medicine ball": ("med ball", "slam ball", "wall ball"),
    "trap bar": ("hex bar",),
    "ab wheel": ("ab roller", "wheel"),
    "sled": ("prowler",),
    "tire": ("tyre",),
    "rope": ("battle ropes", "skipping rope"),
    "machine rower": ("rowing machine", "rowing ergometer"),
    "45-degree bench": ("back extension", "hyperextension", "hyper bench", "Roman chair", "glute-ham bench"),
    "glute-ham bench": ("GHD", "GHR", "Roman chair", "glute-ham developer"),
    "preacher bench": ("preacher",),
    "knee raise stand": ("captain's chair",),
    "harness": ("belt", "vest"),
    "sandbag": ("sack", "ruck"),
}


BESIDE = (
    "safety bar", "EZ bar", "curl bar", "bent bar", "cambered bar", "multi-grip bar", "Swiss bar", "axle",
    "log", "ankle weight", "backpack", "weights", "machines", "cardio", "bike", "cross trainer", "ergometer",
    "mat", "foam roller", "ball", "blocks", "chains", "collars", "belt", "straps", "chalk", "wedge",
    "slant board", "parallettes", "towel", "broomstick", "stick", "cones", "ladder", "stopwatch", "mirror",
    "pool", "pad", "bodyweight", "none", "no equipment",
)  # fmt: skip
"""Words for equipment on which no exercise of the catalogue counts by itself."""


@lru_cache(maxsize=500)
def is_known(item: str) -> bool:
    """Whether an item of a coach's list may be a piece that an exercise needs, or is known without."""
    plain = item.lower().removesuffix("s")
    if plain in built.PIECES or item in built.PIECES or MACHINE + plain in built.PIECES:  # most are
        return True
    listed = [_words(item)]
    if _means(listed, (*BESIDE, *EVERYTHING)):
        return True
    return any(_holds(listed, piece) for piece in built.PIECES if piece not in NO_PIECE)


def like(item: str, most: int = 3) -> list[str]:
    """Up to ``most`` pieces that an unknown item may mean, the likeliest first."""
    from .nearest import nearest

    named = [(in_words(piece), in_words(piece)) for piece in built.PIECES if piece not in NO_PIECE]
    named += [(other, in_words(piece)) for piece, others in OTHER_WORDS.items() for other in others]
    return nearest(item, named, most)


def unknown(item: str) -> str:
    """What is wrong with an item that nobody knows."""
    return f"`{item}` is no equipment that is known, so no exercise counts on it."


REMEDY = "Write its usual name, or take it out."
"""What to do about such an item if nothing is like it."""


def needs(exercise: Exercise, implement: str = "") -> tuple[str, ...]:
    """The pieces that an exercise needs: its stations, and its implement if that is a piece.

    With another ``implement`` it needs that one, and nothing that only holds its own.
    """
    lifted = implement or exercise.implement
    stations = exercise.station
    if lifted != exercise.implement:
        stations = tuple(piece for piece in stations if not _holds_up(piece, exercise.implement))
    return tuple(dict.fromkeys((*stations, *(() if lifted in NO_PIECE else (lifted,)))))


def _holds_up(piece: str, implement: str) -> bool:
    """Whether a station is an implement itself or only there for it."""
    if implement == MACHINE.strip():
        return piece.startswith(MACHINE)
    return piece == implement or (piece == "rack" and implement == "barbell")


def missing(
    exercise: Exercise, equipment: Iterable[str], always: Collection[str], implement: str = ""
) -> tuple[str, ...]:
    """The pieces that an exercise needs and a list lacks. Pieces in ``always`` are never missing.

    ``implement`` is what is lifted if it is not the exercise's own.
    """
    listed = [_words(item) for item in equipment]
    needed = needs(exercise, implement)
    return tuple(piece for piece in needed if piece not in always and not _holds(listed, piece))


def in_words(piece: str) -> str:
    """A piece as a coach calls it: ``leg press`` for the machine of that name."""
    return piece.removeprefix(MACHINE)


def station_named(name: str, stations: Iterable[str]) -> str:
    """The one of a team's ``stations`` that is the piece ``name`` of the catalogue; empty if none is."""
    return next((own for own in stations if _holds([_words(own)], name)), "")


def _words(item: str) -> frozenset[str]:
    return frozenset(map(fold, words(item)))


def _holds(listed: Iterable[frozenset[str]], piece: str) -> bool:
    """Whether an item of the list has all the words of the piece, or of another word for it.

    A machine may be called by a part of its words: a "calf raise machine" is one for standing or for sitting.
    """
    names = [piece.removeprefix(MACHINE), *OTHER_WORDS.get(piece, ()), *EVERYTHING]
    if piece.startswith(MACHINE):
        names.append("machine")
        whole = _words(names[0])
        if any(item > _MACHINE and item - _MACHINE <= whole for item in listed):
            return True
    return _means(listed, names)


def _means(listed: Iterable[frozenset[str]], names: Iterable[str]) -> bool:
    """Whether an item of the list has all the words of one of the names."""
    meant = [_words(name) for name in names]
    return any(
        wanted == item or (wanted <= item and wanted not in _WHOLE) for item in listed for wanted in meant
    )


_MACHINE = _words(MACHINE)


_WHOLE = frozenset(map(_words, ("machine", "bar", "gym", "belt", "vest")))
"""Words that mean a piece only if they stand alone: a "leg press machine" is not every machine."""


def alternatives(exercise: Exercise, fits: Callable[[Exercise], bool], most: int) -> list[str]:
    """Names of exercises for the same work that fit the athlete, nearest first.

    They come from the catalogue, have the same patterns, kind, sides and main joint actions, and are no
    harder. First come the easier and harder forms of the exercise, then those that train most of the same
    muscles, then the more common.
    """
    rank = catalogue.LEVELS.index(exercise.level)
    fitting = [
        other
        for other in catalogue.exercises()
        if other is not exercise
        and other.kind == exercise.kind
        and other.unilateral == exercise.unilateral
        and other.patterns == exercise.patterns
        and set(other.actions) == set(exercise.actions)
        and catalogue.LEVELS.index(other.level) <= rank
        and fits(other)
    ]
    forms = (*exercise.easier, *exercise.harder)
    fitting.sort(
        key=lambda other: (
            other.name not in forms,
            unlike(exercise, other),
            other.capacity != exercise.capacity,
            catalogue.rarity(other),
            len(other.name),
            other.name,
        )
    )
    return [other.name for other in fitting[:most]]


def unlike(exercise: Exercise, other: Exercise) -> float:
    """How much two exercises differ in the muscles they train directly: 0 not at all, 1 completely."""
    both, either = set(exercise.direct) & set(other.direct), set(exercise.direct) | set(other.direct)
    return 1 - len(both) / len(either)


LOADED = (
    "barbell",
    "trap bar",
    "guided bar",
    "dumbbell",
    "kettlebell",
    "plate",
    "sandbag",
    "machine",
    "cable",
)
"""Implements whose load somebody has to choose. The body, bands and straps come with their own load."""
