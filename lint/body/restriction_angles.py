"""Degrees in words: what a restriction leaves out of a movement, and how far a line says that it goes.

An arc is two numbers of degrees; 0 is a straight joint, or an arm that hangs down. The path of an exercise is
its usual one. Which words mean what, and how far lifters differ, is common practice, no source.
"""

from __future__ import annotations

import re

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .catalogue import Exercise
    from .restriction_words import Trait

    Arc = tuple[float, float]

DIFFER = 15.0
"""Degrees by which lifters and machines differ: beyond a limit by less, an exercise only may go past it."""
WHOLE_CIRCLE = 360.0
OVERHEAD = frozenset(("vertical push", "vertical pull"))
RAISED = (0.0, 165.0)
"""Degrees of the shoulder in pushes and pulls overhead whose path is not known."""
LEAST, MOST = 30, 150
"""Degrees that a bare number in the name of a line may mean: "box squat to 90"."""

JOINTS = {"knee": "knee", "hip": "hip", "shoulder": "shoulder", "elbow": "elbow", "ankle": "ankle"}
LIMBS = {"leg": "knee", "arm": "shoulder"}
"""The joint whose degrees are meant, by a word beside them; a joint that is named comes before a limb."""
OF_MOVEMENTS = {"squat": "knee", "lunge": "knee", "hip hinge": "hip"}
"""The same by the movement, where the words name neither."""
PART = ("joint", "trains", "stance")
"""Kinds of traits that a part of the body stands for."""

_DEGREES = r"\s*(?:°|deg(?:rees?)?\b)"
_NO_UNIT = r"(?!\s*(?:%|[a-z]))"
_PAST = r"(?:past|beyond|above|over|exceeding|(?:deep|furth|farth|high|great)er than|more than)"
_BEYOND = rf"\b{_PAST} (\d{{1,3}})(?!\d)(?:{_DEGREES}|(?!\s*%))(?: of)?"
_BETWEEN = rf"\b(?:from|between) (\d{{1,3}}){_DEGREES}?\s*(?:to|and|-|–)\s*(\d{{1,3}})(?!\d)(?:{_DEGREES})?"
_TO = r"(?:(?P<low>\d{1,3})(?:°| deg(?:rees?)?)?\s*(?:-|–|to)\s*|\bto )(?P<high>\d{1,3})(?!\d)"
_SAID = _TO + _DEGREES
_IN_A_NAME = _TO + _NO_UNIT


def taken_out(words: str) -> tuple[str, Arc | None, list[str]]:
    """The words of a restriction without its degrees, ``past 90``, and these as an arc and as written."""
    for pattern in (_BETWEEN, _BEYOND):
        found = re.search(pattern, words)
        if found:
            first, last = float(found[1]), float(found[2]) if pattern is _BETWEEN else WHOLE_CIRCLE
            rest = f"{words[: found.start()]} {words[found.end() :]}"
            return rest, (min(first, last), max(first, last)), [found[0].strip()]
    return words, None, []


def with_arc(words: list[str], traits: list[Trait], arc: Arc) -> list[Trait]:
    """The traits of a clause within an arc of the joint that it names; none where it names none."""
    named = [table[word] for table in (JOINTS, LIMBS) for word in words if word in table]
    moved = [OF_MOVEMENTS[word] for trait in traits for word in trait[:2] if word in OF_MOVEMENTS]
    joint = next(iter((*named, *moved)), "") if traits else ""
    if not joint:
        return []
    degrees = (joint, *(f"{degree:g}" for degree in arc))
    if any(kind in PART or name == f"{joint} flexion" for kind, name, *_ in traits):
        return [("joint", joint, *degrees)]
    return [(kind, name, *degrees) for kind, name, *_ in traits]


def said_of(name: str, note: str) -> Arc | None:
    """Between which degrees a line says that it moves: ``box squat to 90``, or a note with ``degrees``."""
    lower = name.lower()
    found = re.search(_SAID, lower) or re.search(_SAID, note.lower()) or re.search(_IN_A_NAME, lower)
    if found is None:
        return None
    low, high = sorted((float(found["low"] or 0), float(found["high"])))
    return (low, high) if LEAST <= high <= MOST else None


def goes_through(exercise: Exercise, trait: Trait, said: Arc | None, within: float) -> bool:
    """Whether an exercise moves through the arc of a trait, by more than ``within`` degrees."""
    _, _, joint, low, high = trait
    path = exercise.path.get(joint) or (RAISED if joint == "shoulder" and _is_overhead(exercise) else None)
    if said is not None:
        path, within = said, 0.0
    return path is not None and max(path) > float(low) + within and min(path) < float(high)


def _is_overhead(exercise: Exercise) -> bool:
    return exercise.stance == "hanging" or not OVERHEAD.isdisjoint(exercise.patterns)
