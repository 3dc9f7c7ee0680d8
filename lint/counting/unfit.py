"""What an athlete's card rules out beside body parts: exercises that are not offered to them.

Only what is suggested asks here; what a coach has written is never judged by it.
"""

from __future__ import annotations

from ..wording.words import says

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..body.catalogue import Exercise
    from .header import ProgrammeHeader

OLDER = 65
"""Years from which nothing on the floor is offered unasked (common practice, no source)."""

STRAINING = (
    "breath holding", "hold breath", "hold the breath", "hold his breath", "hold her breath",
    "holding breath", "holding the breath", "holding his breath", "holding her breath",
    "straining", "strain", "valsalva", "blood pressure", "pregnant", "pregnancy", "eye operation",
)  # fmt: skip
"""Words on a card for somebody who may not strain: for them nothing is held."""

GETTING_DOWN = (
    "kneel", "kneeling", "lying", "lie down", "lie flat", "floor", "on the ground", "dizzy", "dizziness",
    "getting up", "get up", "up again",
)  # fmt: skip
"""Words on a card for somebody who had better not go down to the floor."""

ON_THE_FLOOR = ("lying", "prone", "quadruped", "side-lying")
"""Stances for which one goes down, where no bench or machine holds the body."""


def unfit(header: ProgrammeHeader, exercise: Exercise) -> str:
    """What a card says against an exercise, in words that follow its name; empty where nothing does."""
    athlete = header.athlete
    if athlete is None:
        return ""
    card = (
        athlete.note,
        header.note,
        *(words for one in athlete.protect for words in (one.subject.words, one.note)),
    )
    if exercise.kind == "isometric" and says(STRAINING, *card):
        return "is held, with a word on straining on file"
    is_older = athlete.age is not None and athlete.age >= OLDER
    if _goes_down(exercise) and (is_older or says(GETTING_DOWN, *card)):
        return "is done on the floor"
    return ""


def _goes_down(exercise: Exercise) -> bool:
    """Whether somebody has to go down to the floor for it."""
    is_on_floor = exercise.stance in ON_THE_FLOOR and "floor" in exercise.station
    return is_on_floor or exercise.stance == "kneeling"
