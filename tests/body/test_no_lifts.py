"""Names of what is surely no lift, and names of lifts beside which its words stand."""

from __future__ import annotations

import pytest

from spotline.lint.body import built_names, catalogue
from spotline.lint.body.known import CATALOGUE
from spotline.lint.body.name_reading import MOST_LETTERS
from spotline.lint.body.name_suggestions import known_spellings
from spotline.lint.body.no_lift_words import PHRASES

NO_LIFTS = """
Calf stretch against wall
Kneeling hip flexor stretch
Reverse lunge stretch
Seated hamstring stretch, leg out straight
Static stretching, lower body
Hamstring PNF with partner
Shoulder CARs
Hip CARs, standing
Ulnar nerve glide
Sciatic nerve floss
Foam roll quads and ITB
Ice bath 10 min
Body scan meditation
Ankle mobility, half-kneeling
Banded ankle mobilisation
Adductor mobility
Box breathing 4-4-4-4
Downward dog to upward dog
Child's pose w/ side reach
Thread the needle
Quadruped T-spine rotation, hand behind head
Arm circles forward and back
Shoulder pass-throughs with stick
Pigeon, front leg on bench
Pool recovery, walk + stretch
MD+1 flush bike
Tempo intervals on grass, walk back
Hill strides
Falling start
Standing start, 10 m
Block start to 20 m
Reactive sprint on call, from belly
Ruck intervals: 400 m fast / 400 m walk
Brisk walk 30 min
Assault bike flush 10 min
Climber machine 1 min on 1 off
Rower 500 m TT
Swim 500 yd sidestroke
Sculling drill
B-skip
A-march, hands on hips
Penultimate drill over low box
Hurdle walkovers, trail leg only, lateral
Ladder - icky shuffle
5-10-5 pro agility
T-test
Beep test
Figure of eight walk round two cones
Warm-up game: stuck in the mud
Small-sided game 3v3
Free throws, 5 makes in a row
Serve practice, deuce side
Discus drill
Volleyball coordination
Pad work, 1-2-slip
Positional sparring from mount
Bouldering pyramid V2-V4
Linked problems, up-down-up
Deadpoint practice on steep wall
Wobble board, double leg, eyes open
SL stance on foam, ball toss
One leg stand, fingertips on chair back
Weight shifts side to side, feet apart
Six-minute walk
Hill reps, squad pace
"""

MAY_BE_LIFTS = """
quarry drill
quarry test
the usual
Step test
Crawl drill
Trunk raise test
Ring dip progression drill
Discus throw drill
Lengthened partial lateral raise (stretch)
Stretch-mediated fly
Preacher curl stretch position
Lat stretch bias
Loaded stretch fly
Pec stretch with dumbbells
Calf stretch, 20 kg
Cable stretch
Hamstring stretch curl
Calf stretch + jump squat combo
Foam roll leg curl
Foam roller pullover
Jefferson curl mobility
Cossack squat mobility
Squat hold mobility
Yoga push-up
Yoga block squeeze
Breathing squats, 20 rep
Deep squat breathing
Dead bug breathing drill
Recovery squat
Box recovery
Barbell warm-up
Sled run
Sprint-drag-carry
Shuttle press
Shuttle sprints w/ sandbag
Resisted sprint bound
Broad jump to sprint 5 m
Running man
Run the rack lateral raise
Pull start
Bike curl
Agility ladder push-up
Bear crawl relay
Medicine ball relay
Tyre flip race
Balance board squat
Balance board sqaut
Single-leg balance with row
Assisted pistol balance
Heaving balance
Single-leg lower, other leg on wall
Weight shift deadlift
Javelin 3-step throw, grass
Wall climb, 6 ft, partner assist
Fingerboard hang problem
"""


@pytest.mark.parametrize("name", NO_LIFTS.strip().splitlines())
def test_what_is_surely_no_lift(name: str) -> None:
    assert CATALOGUE.exercise(name) is None
    assert CATALOGUE.is_no_lift(name)


@pytest.mark.parametrize("name", MAY_BE_LIFTS.strip().splitlines())
def test_what_may_be_a_lift_is_none_of_these(name: str) -> None:
    assert CATALOGUE.exercise(name) is None
    assert not CATALOGUE.is_no_lift(name)


def test_a_text_that_is_no_name_says_nothing() -> None:
    assert CATALOGUE.is_no_lift("stretch" + " a" * 70)
    assert not CATALOGUE.is_no_lift("stretch " + "a" * MOST_LETTERS)


@pytest.mark.parametrize(
    "word", ["squat", "press", "row", "curl", "hang", "step", "walk", "superman", "bend"]
)
def test_heads_of_names_are_those_of_lifts(word: str) -> None:
    assert f"\n{word}\n" in built_names.HEADS


@pytest.mark.parametrize("word", ["run", "chair", "direction", "up", "side", "barbell", "standing"])
def test_places_and_directions_are_no_heads(word: str) -> None:
    assert f"\n{word}\n" not in built_names.HEADS


def test_names_of_dynamic_lifts_are_none_of_these() -> None:
    lifts = [one for one in catalogue.exercises() if one.kind == "dynamic"]
    assert [one.name for one in lifts if CATALOGUE.is_no_lift(one.name)] == ["heel-to-toe walk"]  # balance


def test_no_phrase_stands_twice() -> None:
    phrases = [one.strip() for text in PHRASES.values() for one in text.replace("\n", ",").split(",")]
    said = [one.lower() for one in phrases if one]
    assert sorted(said) == sorted(set(said))


@pytest.mark.parametrize("word", ["squad", "skate"])
def test_a_word_of_a_sport_is_no_slip(word: str) -> None:
    assert known_spellings(word) == ()


def test_a_slip_stays_one() -> None:
    assert known_spellings("sqat")[0] == "squat"


@pytest.mark.parametrize(
    ("name", "exercise"),
    [
        ("Skipping - two feet", "jump rope"),
        ("Rope skipping, 30 s", "jump rope"),
        ("A-skipping 20 m", "A-skip"),
        ("Skipping for height", "power skip"),
        ("Skipping for distance, 20 m", "power skip"),
        ("Back squat, squad A", "back squat"),
    ],
)
def test_skipping_and_squads(name: str, exercise: str) -> None:
    found = CATALOGUE.exercise(name)
    assert found is not None
    assert found.name == exercise
