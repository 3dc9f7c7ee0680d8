"""Reads what an athlete is to spare, in a coach's words, and tells which exercises load it.

Case, plural and the ending -ing make no difference. The longest phrase is read first, so "deep knee bending"
is not read as "knee". What the words mean is common practice, no source. Which joints an exercise moves, and
how far, comes from the catalogue.

A trait is (kind, value), such as ("joint", "knee"): what `loads` looks for in an exercise.
"""

from __future__ import annotations

from functools import cache

from . import catalogue
from .names import fold, words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .catalogue import Exercise

    Trait = tuple[str, str]

LONGEST_PHRASE = 4
"""Words that a phrase may have."""

_LOWER_BACK: tuple[Trait, ...] = (
    ("axial", "moderate"),
    ("axial", "high"),
    ("trains", "lower back"),
    ("bends", "trunk"),
)
_WRIST: tuple[Trait, ...] = (("joint", "wrist"), ("hands", ""))
_ANKLE: tuple[Trait, ...] = (("joint", "ankle"), ("pattern", "jump"))
_JUMP: tuple[Trait, ...] = (("pattern", "jump"), ("kind", "plyometric"))
_RUN: tuple[Trait, ...] = (("station", "track"), ("station", "hill"), ("station", "treadmill"))
_DEEP: tuple[Trait, ...] = (("knee bent past", "100"),)

PARTS: dict[str, tuple[Trait, ...]] = {
    "knee": (("joint", "knee"), ("pattern", "jump")),
    "kneecap": (("joint", "knee"), ("pattern", "jump")),
    "shoulder": (("joint", "shoulder"),),
    "elbow": (("joint", "elbow"), ("joint", "forearm")),
    "wrist": _WRIST,
    "hand": _WRIST,
    "finger": _WRIST,
    "thumb": _WRIST,
    "hip": (("joint", "hip"),),
    "ankle": _ANKLE,
    "heel": _ANKLE,
    "foot": _ANKLE,
    "toe": _ANKLE,
    "achilles": _ANKLE,
    "lower back": _LOWER_BACK,
    "low back": _LOWER_BACK,
    "lumbar": _LOWER_BACK,
    "spine": _LOWER_BACK,
    "back": (*_LOWER_BACK, ("trains", "back")),
    "neck": (("joint", "neck"),),
    "rib": (("bends", "trunk"),),
    "trunk": (("bends", "trunk"),),
    "pelvic floor": (("axial", "high"), *_JUMP),
}
"""Parts of the body that are no muscle. Muscles are looked up in the catalogue."""

MOVEMENTS: dict[str, tuple[Trait, ...]] = {
    "overhead press": (("pattern", "vertical push"),),
    "press overhead": (("pattern", "vertical push"),),
    "overhead": (("pattern", "vertical push"), ("arm raised past", "150"), ("stance", "hanging")),
    "press": (("pattern", "vertical push"), ("pattern", "horizontal push")),
    "push": (("pattern", "vertical push"), ("pattern", "horizontal push")),
    "bench press": (("pattern", "horizontal push"),),
    "pull": (("pattern", "vertical pull"), ("pattern", "horizontal pull")),
    "row": (("pattern", "horizontal pull"),),
    "pull up": (("pattern", "vertical pull"),),
    "push up": (("pattern", "horizontal push"),),
    "hang": (("stance", "hanging"),),
    "squat": (("pattern", "squat"),),
    "deep squat": _DEEP,
    "full squat": _DEEP,
    "knee bend": (("action", "knee extension"),),
    "deep knee bend": _DEEP,
    "deep knee flexion": _DEEP,
    "lunge": (("pattern", "lunge"),),
    "hinge": (("pattern", "hip hinge"),),
    "deadlift": (("pattern", "hip hinge"),),
    "bend forward": (("pattern", "hip hinge"), ("action", "trunk flexion")),
    "forward bend": (("pattern", "hip hinge"), ("action", "trunk flexion")),
    "jump": _JUMP,
    "hop": _JUMP,
    "land": _JUMP,
    "plyometric": _JUMP,
    "impact": (*_JUMP, *_RUN),
    "run": _RUN,
    "sprint": _RUN,
    "twist": (("action", "trunk rotation"), ("pattern", "rotation")),
    "rotation": (("action", "trunk rotation"), ("pattern", "rotation")),
    "crunch": (("action", "trunk flexion"),),
    "sit up": (("action", "trunk flexion"),),
    "spinal flexion": (("action", "trunk flexion"),),
    "spinal extension": (("action", "trunk extension"),),
    "spinal load": (("axial", "moderate"), ("axial", "high")),
    "axial load": (("axial", "moderate"), ("axial", "high")),
    "carry": (("pattern", "carry"),),
    "throw": (("pattern", "throw"),),
    "kneel": (("stance", "kneeling"), ("stance", "quadruped")),
    "lie on the back": (("stance", "lying"),),
    "supine": (("stance", "lying"),),
    "lie on the front": (("stance", "prone"),),
    "prone": (("stance", "prone"),),
    "grip": _WRIST,
    "calf raise": (("action", "plantarflexion"),),
    "leg curl": (("action", "knee flexion"),),
    "leg extension": (("action", "knee extension"),),
}
"""Movements in a coach's words. Joint actions are looked up in the catalogue."""


@cache
def _meanings() -> dict[str, tuple[Trait, ...]]:
    named = {action: (("action", action),) for action in catalogue.actions()}
    return {_stemmed(phrase): traits for phrase, traits in {**named, **MOVEMENTS, **PARTS}.items()}


def _stemmed(phrase: str) -> str:
    """The form of a phrase that is compared: the same for "Deep knee bending" and "deep knee bends"."""
    return " ".join(_stem(fold(word)) for word in words(phrase))


def _stem(word: str) -> str:
    if word.endswith("ying") and len(word) == 5:
        return word[:1] + "i"
    if word.endswith("ing") and len(word) > 5:
        word = word[:-3]
        if len(word) > 2 and word[-1] == word[-2] and word[-1] in "bgmnpt":
            word = word[:-1]
    return word.rstrip("e")


def read(spared: str) -> tuple[Trait, ...]:
    """The traits that words such as "left shoulder" or "deep knee bend under load" mean.

    Empty if no word is understood.
    """
    return tuple(dict.fromkeys(trait for traits in _phrases(spared) for trait in traits))


def _phrases(spared: str) -> Iterator[tuple[Trait, ...]]:
    typed = _typed(spared)
    at = 0
    while at < len(typed):
        for length in range(min(LONGEST_PHRASE, len(typed) - at), 0, -1):
            phrase = " ".join(typed[at : at + length])
            traits = _meanings().get(_stemmed(phrase)) or _named(phrase)
            if traits:
                yield traits
                at += length
                break
        else:
            at += 1


def _typed(spared: str) -> list[str]:
    return [word.strip(".,;:()") for word in words(spared.replace("/", " "))]


def _named(phrase: str) -> tuple[Trait, ...]:
    if catalogue.area(phrase):
        return (("trains", phrase),)
    exercise = catalogue.exercise(phrase)
    return (("name", exercise.name),) if exercise else ()


def side_of(spared: str) -> str:
    """``left`` or ``right`` if only one of them is named, else ""."""
    named = {"left", "right"}.intersection(_typed(spared))
    return named.pop() if len(named) == 1 else ""


def loads(exercise: Exercise, traits: tuple[Trait, ...]) -> bool:
    """Whether an exercise has one of some traits."""
    return any(_has(exercise, kind, name) for kind, name in traits)


def _has(exercise: Exercise, kind: str, name: str) -> bool:
    if kind == "pattern":
        return name in exercise.patterns
    if kind == "action":
        return name in exercise.actions
    if kind == "joint":
        return any(_joint(action) == name for action in (*exercise.actions, *exercise.assists))
    if kind == "bends":
        return exercise.kind != "isometric" and any(_joint(action) == name for action in exercise.actions)
    if kind == "trains":
        return not set(exercise.direct).isdisjoint(catalogue.area(name) or ())
    if kind == "hands":
        return exercise.hands
    if kind == "station":
        return name in exercise.station
    if kind == "knee bent past":
        return "knee extension" in exercise.actions and _furthest(exercise, "knee") >= float(name)
    if kind == "arm raised past":
        return _furthest(exercise, "shoulder") >= float(name)
    return bool(getattr(exercise, kind) == name)


def _furthest(exercise: Exercise, joint: str) -> float:
    """The largest angle of a joint in the path, in degrees; 0 if the path does not name the joint."""
    return max(exercise.path.get(joint, (0.0,)))


def _joint(action: str) -> str:
    return catalogue.actions()[action].joint
