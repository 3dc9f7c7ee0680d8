"""Equipment: the pieces that an exercise needs, and whether a coach's list of equipment has them.

Which word means which piece is common practice, no source. A word that can mean a piece is taken to mean it,
so a piece is called missing only if it surely is.
"""

from __future__ import annotations

from . import catalogue
from .names import fold, words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterable

    from .catalogue import Exercise

NO_PIECE = ("none", "bodyweight", "machine")
"""Implements that are no piece to list. A machine is listed by its station."""

EVERYTHING = ("gym", "full gym", "everything", "weight room", "whole gym")
"""Words that mean all equipment there is."""

MACHINE = "machine "

OTHER_WORDS: dict[str, tuple[str, ...]] = {
    "dumbbell": ("kettlebell", "DB", "free weights"),
    "kettlebell": ("dumbbell", "KB", "free weights"),
    "barbell": ("bar", "bar and plates", "free weights"),
    "plate": ("barbell", "weight vest", "weighted vest", "dumbbell", "kettlebell", "free weights"),
    "rack": ("squat stand", "cage", "rig"),
    "guided bar": ("guided barbell",),
    "cable": ("pulley", "functional trainer"),
    "machine pulldown": ("cable", "lat machine"),
    "machine cable row": ("cable", "seated row", "low row"),
    "machine fly": ("pec deck",),
    "pull-up bar": ("chin-up bar", "rig", "power rack", "rings"),
    "dip bars": ("parallel bars", "dip station", "rings"),
    "suspension": ("rings", "straps"),
    "sliders": ("sliding discs", "towels"),
    "band": ("tube",),
    "box": ("step", "chair", "bench", "stairs"),
    "exercise ball": ("stability ball", "gym ball", "fitness ball"),
    "medicine ball": ("med ball", "slam ball", "wall ball"),
    "trap bar": ("hex bar",),
    "45-degree bench": ("back extension", "hyperextension", "glute-ham bench"),
    "glute-ham bench": ("GHD", "glute-ham developer"),
    "preacher bench": ("preacher",),
    "knee raise stand": ("captain's chair",),
    "harness": ("belt", "vest"),
    "sandbag": ("sack", "ruck"),
}


def needs(exercise: Exercise) -> tuple[str, ...]:
    """The pieces that an exercise needs: its stations, and its implement if that is a piece."""
    own = () if exercise.implement in NO_PIECE else (exercise.implement,)
    return tuple(dict.fromkeys((*exercise.station, *own)))


def missing(exercise: Exercise, equipment: Iterable[str], always: Collection[str]) -> tuple[str, ...]:
    """The pieces that an exercise needs and a list lacks. Pieces in ``always`` are never missing."""
    listed = [_words(item) for item in equipment]
    return tuple(piece for piece in needs(exercise) if piece not in always and not _holds(listed, piece))


def in_words(piece: str) -> str:
    """A piece as a coach calls it: ``leg press``, not ``machine leg press``."""
    return piece.removeprefix(MACHINE)


def station_named(name: str, stations: Iterable[str]) -> str:
    """The one of a team's stations that means a piece of the catalogue, in the team's words, or ""."""
    return next((own for own in stations if _holds([_words(own)], name)), "")


def _words(item: str) -> frozenset[str]:
    return frozenset(map(fold, words(item)))


def _holds(listed: Iterable[frozenset[str]], piece: str) -> bool:
    """Whether some item of the list holds all words of the piece, or of another name for it."""
    names = [piece.removeprefix(MACHINE), *OTHER_WORDS.get(piece, ()), *EVERYTHING]
    if piece.startswith(MACHINE):
        names.append("machine")
    meant = [_words(name) for name in names]
    return any(
        wanted == item or (wanted <= item and wanted not in _WHOLE) for item in listed for wanted in meant
    )


_WHOLE = frozenset(map(_words, ("machine", "bar", "gym", "belt", "vest")))
"""Words that mean a piece only if they stand alone: a "leg press machine" is not every machine."""


def alternatives(
    exercise: Exercise, equipment: Collection[str], always: Collection[str], most: int
) -> list[str]:
    """Up to ``most`` exercises that do the same work with the equipment of a list, the nearest first.

    They have the same patterns, kind and main joint actions, and ask for no higher level. The easier and
    harder forms of the exercise come first, then those that train the most of the same muscles.
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
        and not missing(other, equipment, always)
    ]
    forms = (*exercise.easier, *exercise.harder)
    fitting.sort(
        key=lambda other: (
            other.name not in forms,
            _unlike(exercise, other),
            other.capacity != exercise.capacity,
            len(other.name),
            other.name,
        )
    )
    return [other.name for other in fitting[:most]]


def _unlike(exercise: Exercise, other: Exercise) -> float:
    """How much two exercises differ in the muscles that they train directly: 0 not at all, 1 in all."""
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
"""Implements whose load is chosen. Bodyweight, bands and straps have no load to choose."""
