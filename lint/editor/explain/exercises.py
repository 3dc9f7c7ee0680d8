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

LENGTHS = ("long", "middle to long", "middle", "short to middle", "short")
"""Muscle lengths in the order in which they are shown."""


def exercise_in_short(reading: NameReading, called: str) -> str:
    """What an exercise trains, under the coach's name, and what of that name changes no credit."""
    exercise = reading.exercise
    name = f"**{md(called)}**"
    if fold(called) != fold(exercise.name):
        name += f" is {md(exercise.name)}. It"
    helping = f"; helping, half a set: {gathered(exercise.indirect)}" if exercise.indirect else ""
    fast = {
        "plyometric": "Jumps: their sets never count as hard ones.",
        "endurance": "Endurance work: its sets never count as hard ones.",
        "ballistic": "Work for speed: its sets count as hard ones only where an effort says so.",
    }.get(exercise.kind, "")
    return paragraphs(
        f"{name} trains {gathered(exercise.direct)}{helping}.", fast, _beside(reading.qualifiers)
    )


def _beside(qualifiers: tuple[str, ...]) -> str:
    said = listed([f'"{md(shortened(words))}"' for words in qualifiers])
    return f"{said} {'changes' if len(qualifiers) == 1 else 'change'} no credit." if qualifiers else ""


def exercise_in_detail(reading: NameReading) -> str:
    """What kind of exercise it is, at which muscle lengths it trains, and by which joint actions."""
    exercise = reading.exercise
    kind = "" if exercise.kind == "dynamic" else exercise.kind
    traits = [kind, "" if reading.implement == "none" else reading.implement, *exercise.patterns]
    assists = f"; assisting: {', '.join(exercise.assists)}" if exercise.assists else ""
    lengths = _by_length(exercise, (*exercise.direct, *exercise.indirect))
    lines = [
        ", ".join(dict.fromkeys(part for part in traits if part)),
        f"muscle length: {lengths}" if lengths else "",
        f"joint actions: {', '.join(exercise.actions)}{assists}",
    ]
    return bullets(line for line in lines if line)


def _by_length(exercise: Exercise, muscles: tuple[str, ...]) -> str:
    """``long for the hamstrings; short to middle for the adductor magnus``; "" where nothing is known."""
    by_length: dict[str, list[str]] = {}
    for muscle in muscles:
        by_length.setdefault(_length(exercise, muscle), []).append(muscle)
    ordered = sorted((length for length in by_length if length), key=LENGTHS.index)
    return "; ".join(f"{length} for {gathered(by_length[length])}" for length in ordered)


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
