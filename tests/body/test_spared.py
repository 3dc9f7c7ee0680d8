"""What an athlete spares, in a coach's words. Which words mean what: common practice, no source.

Which joints an exercise moves and which muscles it trains is checked elsewhere, against anatomy.
"""

from __future__ import annotations

import pytest

from spotline.lint.body import catalogue
from spotline.lint.body.exercise_fields import fields
from spotline.lint.body.known import CATALOGUE, Known
from spotline.lint.body.restriction_angles import said_of
from spotline.lint.body.restriction_traits import loads
from spotline.lint.body.restriction_words import MOVEMENTS, PARTS
from spotline.lint.body.restrictions import MOST_WORDS, read
from spotline.tests.steps import steps


def loaded(words: str, exercise: str) -> bool:
    found = catalogue.exercise(exercise)
    assert found is not None, exercise
    return loads(found, read(words).traits)


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
        (
            "overhead pulling",
            ["pull-up", "lat pulldown"],
            ["chest-supported row", "seated cable row", "overhead press"],
        ),
        ("pulling from above", ["lat pulldown", "chin-up"], ["bent-over row"]),
        ("pushing overhead", ["overhead press"], ["bench press", "push-up", "lat pulldown"]),
        ("vertical pulling", ["pull-up"], ["bent-over row"]),
        ("horizontal pressing", ["bench press"], ["overhead press"]),
        (
            "behind-the-neck pressing and pulling",
            ["behind-the-neck press", "behind-the-neck pulldown"],
            ["chin-up", "chest-supported row", "bench press", "lat pulldown"],
        ),
        (
            "pressing or pulling behind the neck",
            ["behind-the-neck press", "behind-the-neck pulldown"],
            ["chin-up", "bench press"],
        ),
        ("overhead pressing and pulling", ["overhead press", "pull-up"], ["bench press", "bent-over row"]),
        ("heavy pressing and rowing", ["bench press", "overhead press", "bent-over row"], ["pull-up"]),
        ("deep squats and lunges", ["back squat", "walking lunge"], ["leg curl"]),
        (
            "sit-ups",
            ["sit-up", "crunch", "cable crunch", "curl-up", "V-up"],
            ["dead bug", "plank", "ab wheel rollout", "bear crawl", "hanging leg raise", "hollow hold"],
        ),
        ("curling the spine", ["sit-up", "curl-up", "hanging leg raise"], ["dead bug", "barbell curl"]),
        (
            "spinal flexion",
            ["crunch", "reverse crunch", "stability-ball pike", "Turkish get-up"],
            ["plank", "plank up-down", "suspension fallout", "bird dog"],
        ),
        ("bench pressing", ["bench press", "push-up"], ["overhead press"]),
        ("push-ups", ["push-up", "bench press"], ["overhead press"]),
        ("pulling", ["pull-up", "bent-over row"], ["bench press", "deadlift"]),
        ("rows", ["bent-over row", "seated cable row"], ["pull-up"]),
        (
            "pull-ups",
            ["pull-up", "chin-up", "assisted pull-up"],
            ["lat pulldown", "bent-over row", "hanging leg raise"],
        ),
        ("hanging", ["hanging knee raise", "pull-up"], ["lat pulldown", "plank"]),
        ("squats", ["back squat", "leg press", "goblet squat"], ["walking lunge", "Romanian deadlift"]),
        (
            "deep knee bend under load",
            ["back squat", "goblet squat", "leg press", "leg extension"],
            ["half squat", "box squat", "seated leg curl", "Romanian deadlift"],
        ),
        ("knee bends", ["half squat", "back squat", "leg extension"], ["seated leg curl"]),
        (
            "lunging",
            ["walking lunge", "reverse lunge", "split squat"],
            ["back squat", "step-up", "step-down"],
        ),
        ("deep lunges", ["forward lunge", "lateral lunge"], ["bodyweight step-up", "lateral step-up"]),
        ("leg extensions", ["leg extension", "cable leg extension"], ["back squat", "leg press", "step-up"]),
        (
            "open-chain leg extension from 45 to 0",
            ["leg extension", "short-arc leg extension"],
            ["back squat", "leg press", "single-leg hop", "terminal knee extension"],
        ),
        (
            "open-chain knee extension between 90 and 45 degrees",
            ["leg extension"],
            ["short-arc leg extension"],
        ),
        # degrees: only what moves past them, or through them
        (
            "knee bend under load deeper than 90 degrees",
            ["back squat", "front squat", "leg press"],
            ["box squat", "half squat", "step-up", "forward lunge", "hip thrust"],
        ),
        ("squats past 100", ["back squat"], ["leg press", "half squat", "leg extension"]),
        ("knee flexion past 90 degrees", ["back squat", "seated leg curl"], ["half squat", "deadlift"]),
        ("hip beyond 90°", ["leg press", "back squat"], ["deadlift", "Romanian deadlift", "leg extension"]),
        ("shoulder above 90", ["overhead press", "pull-up"], ["front raise", "bench press", "plank"]),
        ("arm higher than 140 degrees", ["overhead press"], ["landmine press", "seated cable row"]),
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
        ("front squats", ["front squat", "kettlebell front squat"], ["back squat", "goblet squat"]),
        # a part of the body beside a movement says how it is done, and is not looked for
        ("front plank on the toes", ["plank"], ["standing calf raise", "jump rope", "side plank"]),
        ("push-ups on the hands", ["push-up", "bench press"], ["deadlift", "barbell curl"]),
        ("kneeling on the left knee", ["Nordic curl"], ["back squat", "leg extension"]),
        ("overhead pressing with the left shoulder", ["overhead press"], ["lateral raise", "bench press"]),
        # movements of the legs, whatever the words stand in
        (
            "both-legs lowering",
            ["lying leg raise", "leg lowering", "hanging leg raise", "V-up", "toes to bar"],
            ["back squat", "leg extension", "sit-up", "dead bug"],
        ),
        ("lowering of the legs", ["lying leg raise", "leg lowering"], ["leg press", "sit-up"]),
        ("double-leg lowering", ["lying leg raise", "leg lowering"], ["leg press", "sit-up"]),
        ("straight-leg raises", ["supine straight-leg raise", "lying leg raise"], ["leg curl", "crunch"]),
        ("knee raises", ["hanging knee raise", "standing knee raise"], ["leg extension", "back squat"]),
        ("bending of the knees", ["half squat", "leg extension"], ["seated leg curl"]),
        ("rising on the toes", ["standing calf raise"], ["leg extension", "plank"]),
        ("arching the lower back", ["machine back extension"], ["back squat", "sit-up"]),
        ("bending at the hips", ["Romanian deadlift", "hanging leg raise"], ["hip thrust", "leg press"]),
        ("turning the head", ["isometric neck rotation"], ["barbell curl"]),
        ("loaded carries", ["farmer's carry", "suitcase carry"], ["deadlift"]),
        ("stepping up on the left leg", ["step-up", "barbell step-up"], ["back squat", "walking lunge"]),
        # from the floor: not from a rack, from the hang or by bending over alone
        (
            "deadlifting from the floor",
            ["deadlift", "trap bar deadlift", "sandbag deadlift"],
            ["Romanian deadlift", "single-leg Romanian deadlift", "rack pull", "clean", "kettlebell swing"],
        ),
        ("dead-lifts off the floor", ["sumo deadlift", "trap bar deadlift"], ["stiff-leg deadlift"]),
        (
            "pulling from the floor",
            ["deadlift", "clean", "power snatch"],
            ["seal row", "seated cable row", "hang clean"],
        ),
        (
            "picking things up from the floor",
            ["deadlift", "sandbag over shoulder"],
            ["good morning", "back squat"],
        ),
        # behind the neck: only that
        (
            "behind the neck pressing",
            ["behind-the-neck press", "behind-the-neck push press"],
            ["overhead press", "bench press", "behind-the-neck pulldown"],
        ),
        ("anything behind the neck", ["behind-the-neck press", "behind-the-neck pulldown"], ["lat pulldown"]),
        # one word or two
        ("dead-lifting", ["deadlift", "Romanian deadlift", "trap bar deadlift"], ["back squat"]),
        ("pushups", ["push-up", "bench press"], ["overhead press"]),
        ("leg-curling", ["seated leg curl"], ["leg extension"]),
        # names of exercises: those of the same work that are called so, no others
        ("curls", ["barbell curl", "cable curl", "preacher curl"], ["seated leg curl", "wrist curl"]),
        ("planks", ["plank", "weighted plank"], ["side plank", "plank row"]),
        ("clean and jerk", ["clean and jerk"], ["power clean", "split jerk"]),
        # which side of a part is no part
        ("back of the knee", ["leg extension"], ["barbell hold", "bench press", "lat pulldown"]),
        ("back of the thigh", ["seated leg curl"], ["leg extension", "lat pulldown"]),
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
    assert read(words).traits == ()
    assert not loaded(words, "back squat")


@pytest.mark.parametrize(
    ("words", "unknown"),
    [
        ("left shoulder", ()),
        ("deep knee bend under load", ()),
        ("no overhead work, please", ()),
        ("heavy barbell squats below parallel", ()),
        ("standing on one leg, or kneeling on the floor", ()),
        ("frobnication of the knee", ("frobnication",)),
        ("left shoulder (old injury)", ("old", "injury")),
        ("knee flexion past 90 degrees", ()),
        ("knee flexion below 90 degrees", ("90", "degrees")),
        ("not deeper than 60 degrees", ("deeper than 60 degrees",)),
        ("heavy things past 90", ("things", "past 90")),
        ("knee bend past 80 %", ("80", "%")),
        ("heavy things", ("things",)),
        ("jumping, wobbling, wobbling", ("wobbling",)),
        ("the usual", ("usual",)),
    ],
)
def test_words_that_mean_nothing_are_told(words: str, unknown: tuple[str, ...]) -> None:
    assert read(words).unknown == unknown
    assert set(read("knee").traits) <= set(read(f"{words}, knee").traits)


def test_what_stands_in_the_tables_is_understood_whole() -> None:
    for words in (*PARTS, *MOVEMENTS, *catalogue.area_names(), *catalogue.actions()):
        assert read(words).traits, words
        assert read(f"left {words} under load").unknown == (), words


def test_every_exercise_can_be_named_by_any_of_its_names() -> None:
    for exercise in catalogue.exercises()[::7]:
        for name in (exercise.name, *exercise.aliases):
            assert read(name).traits, name
            assert read(name).unknown == (), name


def test_a_team_may_name_its_own_exercises() -> None:
    entry = {"name": "quarry hinge", "also": ["stone hinge"], "path": {"hip": [85, 0], "knee": 15}}
    own = catalogue.Exercise(fields(entry, catalogue.anatomy()))
    spared = read("stone hinge", Known([own]))
    assert (spared.traits, spared.unknown) == ((("name", "quarry hinge"),), ())
    assert loads(own, spared.traits)
    deadlift = catalogue.exercise("deadlift")
    assert deadlift is not None
    assert not loads(deadlift, spared.traits)
    assert read("stone hinge").unknown == ("stone",)


def test_the_longest_phrase_is_read_first() -> None:
    assert read("overhead pressing").traits == read("overhead press").traits != read("overhead").traits
    assert read("lower back").traits != read("back").traits
    assert read("deep knee bend").traits != read("knee bend").traits != read("knee").traits


def test_words_of_a_phrase_stand_in_any_order() -> None:
    wanted = read("deep knee bend").traits
    for words in ("deep bending of the knee", "bending the knee deep", "knee bend, deep"):
        assert (read(words).traits == wanted) is ("," not in words)
    assert read("legs lowered").unknown == ("lowered",)


def test_each_meaning_once() -> None:
    assert read("knee, knees and knee").traits == read("knee").traits
    assert read("knee/shoulder").traits == read("knee").traits + read("shoulder").traits


@pytest.mark.parametrize("words", [*PARTS, *MOVEMENTS])
def test_every_word_of_the_tables_is_read_as_it_stands_and_loads_something(words: str) -> None:
    traits = read(words).traits
    assert traits == {**MOVEMENTS, **PARTS}[words]
    for trait in traits:
        assert any(loads(one, (trait,)) for one in catalogue.exercises()), trait
    assert not all(loads(one, traits) for one in catalogue.exercises())


@pytest.mark.parametrize(
    "words", ["knee " * 2000, "frobni cation " * 600, "x" * 8000, "左膝" * 2000, "()" * 4000, "and " * 2000]
)
def test_no_words_take_long(words: str) -> None:
    """100 words are read, the rest is told as unknown."""
    spared = read(words)
    assert steps(lambda: read(words)) < 500_000
    assert bool(spared.unknown) or len(words.split()) <= MOST_WORDS


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
    assert read(words).side == side


@pytest.mark.parametrize(
    ("name", "note", "said"),
    [
        ("box squat to 90", "", (0, 90)),
        ("leg press 0-90", "", (0, 90)),
        ("leg extension (90° to 45°)", "", (45, 90)),
        ("split squat", "short, to 70 degrees", (0, 70)),
        ("leg extension 90-45", "from 80 to 60 degrees", (60, 80)),
        ("squat to 90 kg", "", None),
        ("box jump 30 cm", "", None),
        ("leg press 8-12", "", None),
        ("front squat", "build to 90", None),
        ("leg press", "rest 60-90 s", None),
        ("bench press 70-80 %", "", None),
        ("", "", None),
    ],
)
def test_how_far_a_line_says_that_it_goes(name: str, note: str, said: tuple[float, float] | None) -> None:
    assert said_of(name, note) == said


def test_what_a_line_says_comes_before_the_usual_path() -> None:
    squat, half = catalogue.exercise("back squat"), catalogue.exercise("half squat")
    assert squat is not None
    assert half is not None
    for words in ("knee bend past 90", "deep squats"):
        spared = read(words)
        assert spared.forbids(squat)
        assert not spared.forbids(squat, (0, 90))
        assert spared.forbids(half, (0, 110))


@pytest.mark.parametrize(
    ("name", "surely"), [("back squat", True), ("leg press", False), ("split squat", False)]
)
def test_what_lifters_and_machines_differ_by_is_not_sure(name: str, surely: bool) -> None:
    exercise = catalogue.exercise(name)
    assert exercise is not None
    spared = read("knee bend past 90")
    assert spared.forbids(exercise)
    assert spared.surely_forbids(exercise) is surely
    assert spared.surely_forbids(exercise, (0, 95))
    assert not spared.surely_forbids(exercise, (0, 80))
    assert read("deep knee bend").surely_forbids(exercise)


@pytest.mark.parametrize(
    ("spared", "loading", "clear"),
    [
        ("single leg squat", "pistol squat", "back squat"),
        ("one-legged squats", "shrimp squat", "split squat"),
        ("unilateral squats", "skater squat", "leg press"),
        ("single leg deadlifts", "single-leg Romanian deadlift", "Romanian deadlift"),
        ("single-leg landings", "single-leg hop", "box jump"),
        ("single-leg work", "step-up", "leg press"),
        ("one-legged exercises", "single-leg calf raise", "standing calf raise"),
        ("close-grip pressing", "close-grip bench press", "bench press"),
        ("narrow grip", "diamond push-up", "push-up"),
        ("wide grip benching", "wide-grip bench press", "bench press"),
        ("wide-grip pulling", "wide-grip lat pulldown", "power snatch"),
        ("supinated grip rows", "underhand bent-over row", "underhand curl"),
    ],
)
def test_one_leg_and_a_grip_are_spared_only_with_what_is_said_of_them(
    spared: str, loading: str, clear: str
) -> None:
    one, other = CATALOGUE.exercise(loading), CATALOGUE.exercise(clear)
    assert one is not None
    assert other is not None
    meant = read(spared)
    assert meant.is_understood
    assert meant.forbids(one)
    assert not meant.forbids(other)
