"""What an athlete's card rules out beside body parts: exercises that are not offered to them.

Only what is suggested asks here; what a coach has written is never judged by it.
"""

from __future__ import annotations

import re

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
    if exercise.implement == "machine" and _is_out_of_order(exercise, card):
        return "is out of order by a note"
    if exercise.kind == "isometric" and says(STRAINING, *card):
        return "is held, with a word on straining on file"
    is_older = athlete.age is not None and athlete.age >= OLDER
    if _goes_down(exercise) and (is_older or says(GETTING_DOWN, *card)):
        return "is done on the floor"
    return ""


OUT_OF_ORDER = ("out", "broken", "gone", "missing", "sold", "away", "repaired", "defect", "no")

_CLAUSE = r"[.;,!()\n]"


def _is_out_of_order(exercise: Exercise, card: tuple[str, ...]) -> bool:
    """Whether a note says that the machine of an exercise is not there: ``LEG CURL MACHINE is out``."""
    called = " ".join(exercise.name.split()[-2:])
    clauses = (clause for note in card for clause in re.split(_CLAUSE, note))
    return any(says((called,), clause) and says(OUT_OF_ORDER, clause) for clause in clauses)


def _goes_down(exercise: Exercise) -> bool:
    """Whether somebody has to go down to the floor for it."""
    is_on_floor = exercise.stance in ON_THE_FLOOR and "floor" in exercise.station
    return is_on_floor or exercise.stance == "kneeling"
