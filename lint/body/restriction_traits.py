"""Which exercises have a trait that a restriction looks for."""

from __future__ import annotations

from . import catalogue
from .names import fold, words
from .restriction_angles import goes_through
from .restriction_words import STRAIN

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .catalogue import Exercise
    from .restriction_angles import Arc
    from .restriction_words import Trait

NEARLY_STRAIGHT = 40
"""Degrees of the knee up to which a leg that is lifted is called straight."""
FLOOR = {"hip": 70, "knee": 40}
"""Degrees from which a joint is bent where something is taken from the floor: less is a hinge from above."""
PICKED_UP = ("barbell", "trap bar", "dumbbell", "kettlebell", "sandbag", "tire")
"""What is lifted from the floor."""


def loads(
    exercise: Exercise, traits: tuple[Trait, ...], said: Arc | None = None, within: float = 0.0
) -> bool:
    """Whether an exercise has any of these traits, and goes into its arc by more than ``within`` degrees.

    ``said`` are the degrees between which its line says that it moves.
    """
    return any(
        _has(exercise, trait[0], trait[1], said)
        and (len(trait) < 3 or goes_through(exercise, trait, said, within))
        for trait in traits
    )


def _has(exercise: Exercise, kind: str, name: str, said: Arc | None) -> bool:
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
    if kind == "from the floor":
        return _is_from_the_floor(exercise) and name in ("", *exercise.patterns)
    if kind == "called":
        return _called(exercise, name)
    if kind == "named":
        return name in exercise.name
    if kind == STRAIN:
        return False  # hard work is, whatever the exercise: see the line
    if kind == "trunk curled":
        return _curls_the_trunk(exercise) and name in ("", exercise.actions[0])
    if kind == "straight legs lifted":
        return "hip flexion" in exercise.actions and _furthest(exercise, "knee") <= NEARLY_STRAIGHT
    if kind == "knee bent past":
        furthest = max(said) if said else _furthest(exercise, "knee")
        return "knee extension" in exercise.actions and furthest >= float(name)
    if kind == "lunge":
        return kind in exercise.patterns and exercise.stance != "single leg"
    if kind == "pulled up":
        return "vertical pull" in exercise.patterns and exercise.stance == "hanging"
    if kind == "one leg at a time":
        lower = exercise.unilateral and any(
            _joint(action) in ("hip", "knee", "ankle") for action in exercise.actions
        )
        return lower or exercise.stance == "single leg"
    if kind == "gripped":
        grip, _, pattern = name.partition(" ")
        return exercise.grip == grip and pattern in exercise.patterns
    if kind == "on one leg":
        return name in exercise.patterns and exercise.stance == "single leg"
    if kind == "pushed past":
        raised = "shoulder" not in exercise.path or _furthest(exercise, "shoulder") >= float(name)
        return raised and "vertical push" in exercise.patterns
    if kind == "arm raised past":
        return _furthest(exercise, "shoulder") >= float(name)
    return bool(getattr(exercise, kind) == name)


def _is_from_the_floor(exercise: Exercise) -> bool:
    """Whether hands take the load from the floor by hip and knee; a squat or a lunge takes it from a rack."""
    lifts = "hip extension" in exercise.actions and exercise.patterns in ((), ("hip hinge",))
    held = exercise.implement in PICKED_UP and exercise.stance == "standing"
    bent = all(exercise.path.get(joint, (0.0,))[0] >= degrees for joint, degrees in FLOOR.items())
    return lifts and held and bent


def _curls_the_trunk(exercise: Exercise) -> bool:
    """Whether the trunk bends forward: in a hold, a rollout and on hands and feet it is kept straight."""
    on_hands = exercise.stance in ("prone", "quadruped") and "hip flexion" not in exercise.actions
    kept_straight = exercise.kind == "isometric" or "shoulder extension" in exercise.assists or on_hands
    return "trunk flexion" in exercise.actions and not kept_straight


def _called(exercise: Exercise, name: str) -> bool:
    """Whether an exercise is the one of this name, or of the same work with this name in one of its own: a
    weighted plank is a plank, a leg curl no curl.
    """
    meant = catalogue.exercise(name)
    if meant is None or exercise is meant:
        return meant is not None
    if set(meant.actions).isdisjoint(exercise.actions):
        return False
    wanted = f" {_folded(name)} "
    return any(wanted in f" {_folded(one)} " for one in (exercise.name, *exercise.aliases))


def _folded(name: str) -> str:
    return " ".join(map(fold, words(name)))


def _furthest(exercise: Exercise, joint: str) -> float:
    """The largest angle of a joint over the path, in degrees; 0 if its path is not known."""
    return max(exercise.path.get(joint, (0.0,)))


def _joint(action: str) -> str:
    return catalogue.actions()[action].joint
