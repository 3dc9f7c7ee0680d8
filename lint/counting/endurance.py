"""Endurance work by its name: a machine, running, and what is said beside it."""

from __future__ import annotations

import re

from ..body.names import fold

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..body.catalogue import Exercise
    from ..body.known import Known

MACHINES = frozenset(map(fold, ("row", "rowing", "rower", "rowing machine")))
"""Names that in intervals mean work on a machine, though a lift is called alike."""
ROWED = "rowing machine"
PACES = frozenset((
    "continuous", "cool-down", "easy", "even", "fast", "hard", "long", "moderate", "pieces", "race", "short",
    "sprint", "sprints", "steady", "strokes", "technique", "test", "threshold", "timed", "warm-up",
))  # fmt: skip
"""Words beside "row" that no lift is called by; of one with any other, as "dumbbell row", it is a lift."""


def endurance_named(name: str, known: Known) -> Exercise | None:
    """The endurance work that the name of intervals begins or ends with: ``rowing machine`` in ``rowing
    machine, easy``. None where there is none.
    """
    words = re.findall(r"[\w'-]+", name.lower())
    for length in range(len(words), 0, -1):
        for part, rest in ((words[:length], words[length:]), (words[-length:], words[:-length])):
            said = " ".join(part)
            is_rowed = fold(said) in MACHINES and (said != "row" or all(_is_pace(word) for word in rest))
            exercise = known.exercise(ROWED if is_rowed else said)
            if exercise is not None and exercise.kind == "endurance":
                return exercise
    return None


def _is_pace(word: str) -> bool:
    return word in PACES or word.isdigit()
