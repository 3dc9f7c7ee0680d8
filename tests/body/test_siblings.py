"""Siblings: one movement with a barbell, a dumbbell, a kettlebell or a cable loads the same joints of the limbs.

They are told by their names: what is left without the implement is the same, and they share a main joint action.
Trunk and shoulder blade are left out: a bench, a seat or one free side decides what those have to do. Anatomy.
"""

from __future__ import annotations

from itertools import combinations

import pytest

from spotline.lint.body import catalogue
from spotline.lint.body.catalogue import Exercise
from spotline.lint.body.names import fold, words
from spotline.lint.body.restrictions import MOVEMENTS, PARTS, loads, read

IMPLEMENTS = ("barbell", "dumbbell", "kettlebell", "cable")
SAID = {*IMPLEMENTS, "bb", "db", "kb"}
LIMBS = {"hip", "knee", "ankle", "shoulder", "elbow", "forearm"}

APART = {
    # the bell is swung with flat feet, the dumbbell pulled with a jump like a bar
    frozenset({"kettlebell clean", "dumbbell hang clean"}): {"ankle"},
    frozenset({"kettlebell clean", "clean"}): {"ankle"},
    frozenset({"kettlebell snatch", "dumbbell snatch"}): {"ankle"},
    frozenset({"kettlebell snatch", "snatch"}): {"ankle"},
    frozenset({"kettlebell high pull", "clean high pull"}): {"ankle"},
    # a cable deadlift is done as a Romanian one: the stack is on the floor before the knee has to bend
    frozenset({"cable Romanian deadlift", "deadlift"}): {"knee"},
    frozenset({"cable Romanian deadlift", "dumbbell deadlift"}): {"knee"},
    frozenset({"cable Romanian deadlift", "kettlebell deadlift"}): {"knee"},
}
"""Siblings by name that do load different joints, with the reason."""


def joints(exercise: Exercise) -> set[str]:
    actions = catalogue.actions()
    return {actions[one].joint for one in (*exercise.actions, *exercise.assists)} & LIMBS


def siblings() -> list[tuple[Exercise, Exercise]]:
    """Every two exercises of one name but for the implement, with a main action in common."""
    called: dict[str, dict[str, Exercise]] = {}
    for exercise in catalogue.exercises():
        if exercise.implement in IMPLEMENTS:
            for name in (exercise.name, *exercise.aliases):
                rest = " ".join(fold(word) for word in words(name) if word not in SAID)
                called.setdefault(rest, {})[exercise.name] = exercise
    pairs = {
        frozenset((one.name, other.name)): (one, other)
        for rest, group in called.items()
        if rest
        for one, other in combinations(group.values(), 2)
        if set(one.actions) & set(other.actions)
    }
    return list(pairs.values())


def test_siblings_load_the_same_joints() -> None:
    pairs = siblings()
    assert len(pairs) > 100
    apart = {
        frozenset((one.name, other.name)): joints(one) ^ joints(other)
        for one, other in pairs
        if joints(one) != joints(other)
    }
    assert apart == APART


@pytest.mark.parametrize(
    "spared", ["knee", "hip", "shoulder", "elbow", "ankle", "overhead pressing", "squats"]
)
def test_a_restriction_reads_siblings_alike(spared: str) -> None:
    traits = read(spared).traits
    assert traits in (*PARTS.values(), *MOVEMENTS.values())
    for one, other in siblings():
        if frozenset((one.name, other.name)) not in APART:
            assert loads(one, traits) == loads(other, traits), (one.name, other.name)


@pytest.mark.parametrize("name", ["push press", "dumbbell push press", "kettlebell push press"])
def test_every_push_press_drives_from_the_knee(name: str) -> None:
    exercise = catalogue.exercise(name)
    assert exercise is not None
    assert loads(exercise, read("knee").traits)
