"""What an athlete spares, in a coach's words. Which words mean what: common practice, no source.

Which joints an exercise moves and which muscles it trains is checked elsewhere, against anatomy.
"""

from __future__ import annotations

import pytest

from spotline.lint.body import catalogue
from spotline.lint.body.restrictions import MOVEMENTS, PARTS, loads, read, side_of


def loaded(words: str, exercise: str) -> bool:
    found = catalogue.exercise(exercise)
    assert found is not None, exercise
    return loads(found, read(words))


@pytest.mark.parametrize(
    ("words", "loading", "sparing"),
    [
        (
            "knee",
            ["back squat", "leg extension", "seated leg curl", "box jump", "step-up"],
            ["hip thrust", "bench press", "standing calf raise"],
        ),
        ("shoulder", ["bench press", "lateral raise", "pull-up", "dip"], ["barbell curl", "leg press"]),
        ("elbow", ["barbell curl", "bench press", "seated cable row"], ["lateral raise", "back squat"]),
        ("wrist", ["wrist curl", "deadlift", "farmer's carry"], ["leg press", "machine chest press"]),
        ("hip", ["back squat", "hip thrust", "Romanian deadlift"], ["leg extension", "bench press"]),
        ("ankle", ["standing calf raise", "tibialis raise", "broad jump"], ["leg extension", "bench press"]),
        ("heel", ["heel drop", "box jump"], ["leg extension"]),
        (
            "lower back",
            ["deadlift", "back squat", "Romanian deadlift", "sit-up", "Russian twist", "farmer's carry"],
            ["bench press", "leg press", "plank", "lat pulldown", "seated leg curl"],
        ),
        ("back", ["deadlift", "lat pulldown", "seated cable row"], ["bench press", "leg extension"]),
        ("neck", ["neck flexion", "isometric neck extension"], ["barbell curl", "bench press"]),
        ("ribs", ["sit-up", "Russian twist"], ["plank", "bench press"]),
        ("pelvic floor", ["back squat", "box jump"], ["farmer's carry", "leg press"]),
        ("hamstrings", ["seated leg curl", "Romanian deadlift"], ["leg extension", "back squat"]),
        ("groin", ["hip adduction machine", "Copenhagen side plank"], ["leg extension", "seated leg curl"]),
        ("left calf and heel", ["heel drop", "standing calf raise"], ["leg extension"]),
        (
            "overhead pressing",
            ["overhead press", "push press", "pike push-up"],
            ["bench press", "incline bench press", "pull-up", "lateral raise"],
        ),
        ("overhead", ["overhead press", "pull-up", "dumbbell pullover"], ["bench press", "lateral raise"]),
        ("pressing", ["overhead press", "bench press", "push-up"], ["lateral raise", "pull-up"]),
        ("bench pressing", ["bench press", "push-up"], ["overhead press"]),
        ("push-ups", ["push-up", "bench press"], ["overhead press"]),
        ("pulling", ["pull-up", "bent-over row"], ["bench press", "deadlift"]),
        ("rows", ["bent-over row", "seated cable row"], ["pull-up"]),
        ("pull-ups", ["pull-up", "lat pulldown"], ["bent-over row"]),
        ("hanging", ["hanging knee raise", "pull-up"], ["lat pulldown", "plank"]),
        ("squats", ["back squat", "leg press", "goblet squat"], ["walking lunge", "Romanian deadlift"]),
        (
            "deep knee bend under load",
            ["back squat", "goblet squat", "leg press", "leg extension"],
            ["half squat", "box squat", "seated leg curl", "Romanian deadlift"],
        ),
        ("knee bends", ["half squat", "back squat", "leg extension"], ["seated leg curl"]),
        ("lunging", ["walking lunge", "reverse lunge", "step-up"], ["back squat"]),
        ("hinging", ["Romanian deadlift", "deadlift", "kettlebell swing"], ["back squat", "hip thrust"]),
        ("deadlifts", ["Romanian deadlift", "deadlift"], ["back squat"]),
        ("bending forward", ["Romanian deadlift", "sit-up"], ["back squat", "bench press"]),
        ("jumping and landing", ["box jump", "depth jump", "pogo jump"], ["back squat", "kettlebell swing"]),
        ("hopping", ["single-leg hop"], ["back squat"]),
        ("running", ["sprint", "hill sprint", "bounding"], ["box jump", "back squat"]),
        ("impact", ["sprint", "box jump"], ["back squat", "kettlebell swing"]),
        ("twisting", ["Russian twist", "cable woodchop"], ["sit-up", "plank"]),
        ("spinal flexion", ["sit-up", "crunch"], ["Russian twist", "back squat"]),
        ("spinal loading", ["back squat", "farmer's carry"], ["leg press", "goblet squat"]),
        ("carrying", ["farmer's carry"], ["deadlift"]),
        ("throwing", ["medicine ball chest pass"], ["bench press"]),
        ("kneeling", ["Nordic curl", "bird dog"], ["seated leg curl"]),
        ("lying on the back", ["bench press", "glute bridge"], ["push-up", "overhead press"]),
        ("lying on the front", ["lying leg curl", "push-up"], ["bench press"]),
        ("gripping", ["deadlift", "farmer's carry"], ["leg press"]),
        ("shoulder abduction", ["lateral raise"], ["bench press", "pull-up"]),
        ("front squats", ["front squat"], ["back squat", "goblet squat"]),
    ],
)
def test_what_words_mean(words: str, loading: list[str], sparing: list[str]) -> None:
    for spelled in (words, words.upper(), f"no {words}, please"):
        assert [name for name in loading if not loaded(spelled, name)] == []
        assert [name for name in sparing if loaded(spelled, name)] == []


@pytest.mark.parametrize(
    "words", ["", "the usual", "frobnication", "heavy things", "anything hard", "left", "7"]
)
def test_words_that_mean_nothing_known(words: str) -> None:
    assert read(words) == ()
    assert not loaded(words, "back squat")


def test_the_longest_phrase_is_read_first() -> None:
    assert read("overhead pressing") == read("overhead press") != read("overhead")
    assert read("lower back") != read("back")
    assert read("deep knee bend") != read("knee bend") != read("knee")


def test_each_meaning_once() -> None:
    assert read("knee, knees and knee") == read("knee")
    assert read("knee/shoulder") == read("knee") + read("shoulder")


@pytest.mark.parametrize("words", [*PARTS, *MOVEMENTS])
def test_every_word_of_the_tables_is_read_as_it_stands_and_loads_something(words: str) -> None:
    assert read(words) == {**MOVEMENTS, **PARTS}[words]
    for trait in read(words):
        assert any(loads(one, (trait,)) for one in catalogue.exercises()), trait
    assert not all(loads(one, read(words)) for one in catalogue.exercises())


@pytest.mark.parametrize(
    ("words", "side"),
    [
        ("left shoulder", "left"),
        ("Right knee", "right"),
        ("knee (left)", "left"),
        ("shoulder", ""),
        ("left and right knee", ""),
        ("leftover", ""),
    ],
)
def test_the_side(words: str, side: str) -> None:
    assert side_of(words) == side
