"""Whether a lift can be done with what is there, in another form of it that its name allows.

A name seldom says all that a lift takes: a lunge may be done with dumbbells, a band or the body alone, a
dumbbell press without a bench. Which forms go by one name is the catalogue's; that a coach means the one that
is there is common practice, no source.
"""

from __future__ import annotations

from functools import lru_cache

from . import catalogue, equipment
from .alike import do_the_same_work
from .names import fold

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection

    from .catalogue import Exercise

HELD = ("dumbbell", "kettlebell", "plate", "sandbag", "medicine ball")
"""What is held in the hands: its load is one of a few."""

HEAVIEST_HELD = 40.0
"""kg of one piece above which a load is that of a bar or a machine (common practice, no source)."""

SET_UP = ("barbell", "trap bar", "guided bar", "machine", "cable", "sled")
"""What takes any load."""

LOADS = (*HELD, *SET_UP)

ANY = (*LOADS, "band", "suspension", "sliders", "exercise ball", "bodyweight", "none")


def carriers(kilograms: float, pieces: int) -> tuple[str, ...]:
    """The implements that a load in kg may be had with, one of ``pieces`` of it."""
    if pieces > 1:
        return HELD[:3]
    return SET_UP if kilograms > HEAVIEST_HELD else LOADS


def is_done_otherwise(
    exercise: Exercise,
    name: str,
    lacking: Collection[str],
    items: Collection[str],
    always: Collection[str],
    with_what: Collection[str],
) -> bool:
    """Whether a form of an exercise that goes by the same words takes only what is there.

    ``name`` is what the coach calls it, ``lacking`` the pieces that are not there, ``with_what`` the
    implements that the load may be had with. A piece that stands in the name is meant.
    """
    said = _said(name, exercise)
    if any(_stands_in(piece, name) for piece in lacking):
        return False
    own = _words(exercise.implement)
    held = () if exercise.implement in lacking or own.isdisjoint(said) else (exercise.implement,)
    return any(
        other.implement in (held or with_what)
        and _is_called(other, said)
        and not _missing(other, items, always)
        for other in _alike(exercise)
    )


def is_noted(
    exercise: Exercise, name: str, note: str, items: Collection[str], always: Collection[str]
) -> bool:
    """Whether a note says what is used instead, which is there: ``leg curl``, ``on the straps``."""
    said = _said(name, exercise)
    return any(
        other.implement not in ("bodyweight", "none")
        and _is_called(other, said)
        and equipment.is_said(other.implement, note)
        and not _missing(other, items, always)
        for other in (_alike(exercise) if note else ())
    )


def _missing(exercise: Exercise, items: Collection[str], always: Collection[str]) -> bool:
    """Whether a piece is missing, but a seat for the shoulders, which is nearly everywhere."""
    from .improvised import is_a_seat

    lacking = equipment.missing(exercise, items, always)
    on_any_seat = "hip thrust" in exercise.patterns
    return any(not (on_any_seat and is_a_seat(piece)) for piece in lacking)


def with_ankle_weights(exercise: Exercise, kilograms: float, items: Collection[str]) -> bool:
    """Whether a leg may be loaded with an ankle weight that is there instead of a machine or a cable."""
    joints = {catalogue.actions()[action].joint for action in exercise.actions}
    return (
        exercise.implement in ("machine", "cable")
        and joints <= {"hip", "knee"}
        and not exercise.patterns
        and kilograms <= HEAVIEST_ON_AN_ANKLE
        and any(_words("ankle weight") <= _words(item) or "ankle-weight" in _words(item) for item in items)
    )


HEAVIEST_ON_AN_ANKLE = 10.0
"""kg that is tied to an ankle at most (common practice, no source)."""


def implements_of(exercise: Exercise, name: str) -> frozenset[str]:
    """The implements of the forms of an exercise that go by the same words as a coach's name."""
    said = _said(name, exercise)
    return frozenset(other.implement for other in _alike(exercise) if _is_called(other, said))


def is_worn(item: str) -> bool:
    """Whether an item of a list is a weight that is worn, and so goes with every lift."""
    from .improvised import is_a_weight

    said = _words(item)
    return is_a_weight(item) or not said.isdisjoint(("vest", "weighted")) or "ruck" in said


def _stands_in(piece: str, name: str) -> bool:
    """Whether a name says a piece; a machine's lift bears its name, so there the word must stand."""
    if piece.startswith(equipment.MACHINE):
        return equipment.MACHINE.strip() in _words(name)
    return equipment.is_said(piece, name)


@lru_cache(maxsize=200)
def _alike(exercise: Exercise) -> tuple[Exercise, ...]:
    """The other exercises of the same work."""
    return tuple(
        other
        for other in catalogue.exercises()
        if other is not exercise
        and do_the_same_work(other, exercise)
        and "landmine" not in other.station  # nobody means that one who does not say it
    )


def _said(name: str, exercise: Exercise) -> frozenset[str]:
    """The words of a coach's name that tell the lift; those of the exercise where its name tells none."""
    known = frozenset().union(*map(_words, (exercise.name, *exercise.aliases)))
    said = _words(name) & known
    return said or _words(exercise.name) - _words(exercise.implement)


def _is_called(other: Exercise, said: frozenset[str]) -> bool:
    return any(said <= _words(one) for one in (other.name, *other.aliases))


@lru_cache(maxsize=5000)
def _words(text: str) -> frozenset[str]:
    return frozenset(map(fold, equipment.spelled_out(text)))
