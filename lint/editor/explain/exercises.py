"""An exercise in words: what it trains, at what muscle length, by which joint actions."""

from __future__ import annotations

from ...body.names import fold
from ...reporters.exercises_text import gathered
from ...wording.words import listed, shortened
from .markdown import bullets, md, paragraphs

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...body.catalogue import Exercise, NameReading
    from ...body.known import Known

LENGTHS = ("long", "middle to long", "middle", "short to middle", "short", "")
"""Muscle lengths in the order in which they are shown."""


def exercise_page(reading: NameReading, called: str) -> str:
    """The exercise under the name that the coach uses, and what of that name changes no credit."""
    exercise = reading.exercise
    name = f"**{md(called)}**"
    if fold(called) != fold(exercise.name):
        name += f" is {md(exercise.name)}"
    kind = "" if exercise.kind == "dynamic" else exercise.kind
    traits = [kind, "" if reading.implement == "none" else reading.implement, *exercise.patterns]
    fast = {
        "plyometric": "Jumps: their sets never count as hard ones.",
        "ballistic": "Work for speed: its sets count as hard ones only where an effort says so.",
    }.get(exercise.kind, "")
    return paragraphs(
        f"{name} ({', '.join(dict.fromkeys(part for part in traits if part))})" if any(traits) else name,
        _beside(reading.qualifiers),
        bullets(_training(exercise)),
        fast,
    )


def _beside(qualifiers: tuple[str, ...]) -> str:
    said = listed([f'"{md(shortened(words))}"' for words in qualifiers])
    return f"{said} {'changes' if len(qualifiers) == 1 else 'change'} no credit." if qualifiers else ""


def _training(exercise: Exercise) -> list[str]:
    assists = f"; assisting: {', '.join(exercise.assists)}" if exercise.assists else ""
    lines = [f"trains {_by_length(exercise, exercise.direct)}"]
    if exercise.indirect:
        lines.append(f"helping, half a set: {_by_length(exercise, exercise.indirect)}")
    return [*lines, f"joint actions: {', '.join(exercise.actions)}{assists}"]


def _by_length(exercise: Exercise, muscles: tuple[str, ...]) -> str:
    """``hamstrings at long length; adductor magnus at short to middle length``."""
    by_length: dict[str, list[str]] = {}
    for muscle in muscles:
        by_length.setdefault(_length(exercise, muscle), []).append(muscle)
    ordered = sorted(by_length, key=LENGTHS.index)
    return "; ".join(
        f"{gathered(by_length[length])}{f' at {length} length' if length else ''}" for length in ordered
    )


def _length(exercise: Exercise, muscle: str) -> str:
    """The length at which a muscle works on average: two classes where models differ, "" where unknown."""
    length = exercise.lengths.get(muscle, "")
    if not length or exercise.length_is_sure(muscle):
        return length
    return "middle to long" if exercise.positions[muscle] > 0.5 else "short to middle"


def unknown_exercise(name: str, known: Known) -> str:
    """What is said of a name that is no known exercise."""
    near = [md(one) for one in known.nearest(name)]
    offered = f" Nearest: {listed(near)}." if near else ""
    return f"**{md(name)}** is no exercise that is known, so its sets are not counted.{offered}"


def compared(exercise: Exercise, other: Exercise) -> str:
    """What an alternate trains directly that the line's exercise does not, and the other way round."""
    more = [muscle for muscle in exercise.direct if muscle not in other.direct]
    less = [muscle for muscle in other.direct if muscle not in exercise.direct]
    parts = [f"adds {gathered(more)}" if more else "", f"leaves out {gathered(less)}" if less else ""]
    difference = " and ".join(part for part in parts if part) or "trains the same muscles directly"
    return f"In place of {md(other.name)} it {difference}."
