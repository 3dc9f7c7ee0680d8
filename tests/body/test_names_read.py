"""Names as coaches write them are read as what they are. Which words they use is common practice, no source.

data/names.tsv holds names and the exercise that each must be read as, "-" for those that must not be read.
data/coaches_names.tsv holds names that a coach wrote down without a look at the catalogue: the name, the plain
lift that is meant, what kind of name it is, what it is read as, and whether that is right.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spotline.lint.body import built_names, catalogue, equipment, name_suggestions
from spotline.lint.body.known import CATALOGUE, Known
from spotline.lint.body.name_bags import MOVEMENT, kind_of, meanings, names_of, one_letter_off
from spotline.lint.body.name_reading import MOST_LETTERS, read
from spotline.lint.body.name_tokens import tokens_of
from spotline.lint.body.rows import lines_with

from ..steps import steps

DATA = Path(__file__).parent / "data"


def rows(file: str) -> list[list[str]]:
    return [line.split("\t") for line in (DATA / file).read_text(encoding="utf-8").splitlines()]


def read_as(name: str) -> str:
    exercise = CATALOGUE.exercise(name)
    return exercise.name if exercise else "-"


@pytest.mark.parametrize(("name", "exercise"), rows("names.tsv"), ids=lambda words: words)
def test_a_name_is_read_as_it_must_be(name: str, exercise: str) -> None:
    assert exercise == "-" or catalogue.exercise(exercise) is not None
    assert read_as(name) == exercise


# A coach's list

COACHES = rows("coaches_names.tsv")


@pytest.mark.parametrize("row", COACHES, ids=lambda row: row[0])
def test_a_coachs_name_is_read_as_recorded(row: list[str]) -> None:
    name, _, _, exercise, verdict = row
    assert read_as(name) == exercise
    assert verdict in ("right", "wrong", "not read")
    assert (exercise == "-") == (verdict == "not read")


@pytest.mark.parametrize(("kind", "least"), [("bare", 97), ("qualified", 95)])
def test_so_many_are_read_and_so_few_wrongly(kind: str, least: float) -> None:
    verdicts = [row[4] for row in COACHES if row[2] == kind]
    assert len(verdicts) >= 60
    assert verdicts.count("right") * 100 >= least * len(verdicts)
    assert [row[4] for row in COACHES].count("wrong") * 100 <= len(COACHES)


@pytest.mark.parametrize("row", [row for row in COACHES if row[2] == "slip"], ids=lambda row: row[0])
def test_for_a_slip_the_right_exercise_is_offered_first(row: list[str]) -> None:
    name, lift, *_ = row
    meant = CATALOGUE.exercise(lift)
    assert meant is not None
    suggested = CATALOGUE.suggestions(name)
    assert CATALOGUE.exercise(name) is meant or (suggested.slip and suggested.names == (meant.name,))


# Cases of trials, each with one of its kind

TRIALS = [
    ("Smith machine squat", "guided-bar squat"),
    ("Smith machine split squat", "guided-bar split squat"),
    ("EZ bar curl", "bent-bar curl"),
    ("Reverse curls, EZ bar", "reverse curl"),
    ("Zercher squat", "elbow-crook squat"),
    ("Zercher carry", "front-loaded bar carry"),
    ("Pallof press", "anti-rotation press"),
    ("Pallof press, band", "band anti-rotation press"),
    ("Pendlay row", "dead-stop row"),
    ("Zottman curl", "rotating curl"),
    ("box squat with a safety bar", "safety bar box squat"),
    ("good morning with a safety bar", "safety bar good morning"),
    ("toe stand", "bodyweight calf raise"),
    ("tandem stand", "tandem stand"),
    ("heel-to-toe walk", "heel-to-toe walk"),
    ("tandem walk", "heel-to-toe walk"),
    ("kayak erg", "kayak ergometer"),
    ("paddle ergometer", "kayak ergometer"),
    ("squat to chair", "chair squat"),
    ("sit to stand, arms crossed", "chair squat"),
    ("low cable row", "seated cable row"),
    ("horizontal row", "machine row"),
    ("hip sled", "leg press"),
    ("sled leg press", "leg press"),
    ("jumping chin-up", "jumping chin-up"),
    ("jumping pull-ups", "jumping chin-up"),
    ("hamstring curl on a rower", "rowing-seat leg curl"),
    ("hanging leg curl", "hanging leg curl"),
    ("leg curl with toes in", "lying leg curl with feet turned in"),
    ("leg curl, toes turned out", "lying leg curl with feet turned out"),
    ("seated leg curl (feet turned in)", "seated leg curl with feet turned in"),
    ("seated leg curl, feet out", "seated leg curl with feet turned out"),
    ("Front squat, clean grip", "front squat"),
    ("Front squat - crossed arms", "front squat"),
    ("FS w/ straps", "front squat"),
    ("RDL w/ straps", "Romanian deadlift"),
    ('Pause squat 3"', "paused squat"),
    ("Box squat, wide", "box squat"),
    ("Bench press, wide", "wide-grip bench press"),
    ("BB back squat (high bar)", "back squat"),
    ("Back squat (low bar), belt", "low-bar back squat"),
    ("Goblet sq", "goblet squat"),
    ("Overhead sq", "overhead squat"),
    ("Split squat, guided bar, rear foot up", "rear-foot-elevated split squat"),
    ("Split squat, dumbbells, front foot up", "front-foot-elevated split squat"),
    ("leg curl (lying)", "lying leg curl"),
    ("calf raise (seated)", "seated calf raise"),
    ("dumbbell curl, reverse", "reverse dumbbell curl"),
    ("curl, hammer", "hammer curl"),
    ("dumbbell row, both arms", "bent-over dumbbell row"),
    ("KBS, heavy", "heavy kettlebell swing"),
    ("hip sled, slow", "leg press"),
    ("standing good morning, cambered bar", "good morning"),
    ("seated low pulley row", "seated cable row"),
    ("horizontal machine row", "machine row"),
    ("leg curl on a rowing machine seat", "rowing-seat leg curl"),
    ("kneel squat to a chair", "-"),
    ("tandem stand, eyes closed", "tandem stand"),
    ("toe stands, both feet", "bodyweight calf raise"),
]


@pytest.mark.parametrize(("name", "exercise"), TRIALS)
def test_what_trials_showed(name: str, exercise: str) -> None:
    assert read_as(name) == exercise


def test_bare_words_mean_exercises() -> None:
    for words, exercise in built_names.ALONE.items():
        assert catalogue.exercise(exercise) is not None, words
        assert words == " ".join(sorted(words.split(" ")))


# Kinds of names, each with a sibling

KINDS = [
    # what stands in for equipment, and where a hand or a foot is put
    ("Push-ups, feet on the bed", "decline push-up"),
    ("Push-ups, feet on the sofa", "decline push-up"),
    ("Push-up, hands on the table", "incline push-up"),
    ("Split squat, rear foot on the bed", "rear-foot-elevated split squat"),
    ("Single-leg hip thrust off the bed", "single-leg hip thrust"),
    ("Rucksack reverse lunge", "reverse lunge"),
    ("Backpack squat", "sandbag squat"),
    ("Rucksack row", "-"),
    # pauses by count, speed beside a pause, how the body is held
    ("Two-count paused bench", "paused bench press"),
    ("Three-count pause squat", "paused squat"),
    ("Speed paused bench", "paused bench press"),
    ("Tempo paused bench", "paused bench press"),
    ("Suspension row, body upright", "suspension row"),
    ("Inverted row, body horizontal", "inverted row"),
    ("Upright row", "upright row"),
    ("Tall plank shoulder taps", "plank shoulder tap"),
    ("Tall plank hold", "high plank"),
    ("Z press, bottoms-up kettlebell", "bottoms-up kettlebell press"),
    ("Z press, kettlebells", "seated floor overhead press"),
    ("March in place", "standing knee raise"),
    ("Wall ball toss", "-"),
    ("Wall ball lob", "-"),
    # abbreviations
    ("HBBS w/ 2s pause", "back squat"),
    ("LBBS, belt", "low-bar back squat"),
    ("BS to parallel box", "box squat"),
    ("BS 5x5 @ 80%", "back squat"),
    ("P.Snatch from blocks", "hang power snatch"),
    ("P. clean", "power clean"),
    ("Lat PD, 2s squeeze", "lat pulldown"),
    ("Rope PD", "rope pushdown"),
    ("Neutral grip PU wtd", "neutral-grip pull-up"),
    ("Diamond PU", "diamond push-up"),
    ("PU", "-"),  # pull-up or push-up
    ("Strict press, DBs", "standing dumbbell shoulder press"),
    # "w" and "w." for "with"
    ("Back squat w. chains", "back squat"),
    ("RDL w straps", "Romanian deadlift"),
    ("W raise", "W raise"),
    ("Prone W", "W raise"),
    # words that name a lift in the plural only
    ("Deficit deads 2in", "deficit deadlift"),
    ("Sumo deads", "sumo deadlift"),
    ("Dead bugs", "dead bug"),
    ("Ring chins", "ring pull-up"),
    ("Pull-up, chin over bar", "pull-up"),
    # lowering only
    ("Pullups (wide) ecc only 5s", "negative pull-up"),
    ("Dip, negatives only", "negative dip"),
    ("Leg extension, ecc only", "leg extension"),
    # an apparatus that the lift is done on
    ("GHD back extension hold, 40 sec", "back extension hold"),
    ("GHD hip extension", "horizontal back extension"),
    # where the load hangs
    ("Power clean from mid-thigh", "hang power clean"),
    ("Snatch from above knee", "hang snatch"),
    ("Power clean, pause at mid-thigh", "power clean"),
    ("Clean, from high blocks", "block clean"),
    ("Power clean off blocks", "block power clean"),
    # a pull with a shrug at its end is one lift, two lifts are two
    ("Clean pull + shrug", "clean pull"),
    ("Snatch pull w/ shrug", "snatch pull"),
    ("Deadlift + shrug", "-"),
    # a contrast is no other lift, another lift is one
    ("Power cl. - contrast w/ jump", "power clean"),
    ("Back squat (contrast: hurdle hops)", "back squat"),
    ("Back squat (contrast: bench press)", "-"),
    # what is worn
    ("Squat w/ chains + belt", "back squat"),
    ("Belt squat", "belt squat"),
    ("Hip thrust (mini band at knees)", "hip thrust"),
    ("Glute bridge w/ band above knees", "glute bridge"),
    ("Lateral walk, band at ankles", "lateral band walk"),
    ("Seated row, band round feet", "band row"),
    ("Standing hip abduction, band above knees", "standing band hip abduction"),
    # special bars, one side, stances
    ("Reverse lunges w SSB", "barbell reverse lunge"),
    ("SSB split squat", "barbell split squat"),
    ("SA landmine push press, split stance", "landmine push press"),
    ("Split stance DB press", "standing dumbbell shoulder press"),
    ("Preacher curl EZ bar 1 arm neg", "preacher curl"),
    ("Preacher curl 1 arm", "dumbbell preacher curl"),
    ("Split jerk, alt legs", "split jerk"),
    ("Jerk recovery from pins", "jerk recovery"),
    ("SA DB row (elbow out, dead stop)", "one-arm dumbbell row"),
    ("Chest-supported row, elbows out, DBs", "chest-supported rear-shoulder row"),
    # feet, hands, angles
    ("Feet elev. hamstring bridge", "long-lever bridge"),
    ("Low incline DB press, 3s ecc", "incline dumbbell press"),
    ("High incline DB press", "steep incline dumbbell press"),
    ("Incline CGBP", "close-grip incline bench press"),
    ("Paused bench, 1in off chest", "bench press stopped above the chest"),
    ("Split squat full ROM, front heel raised", "split squat"),
    ("Side raise DB seated 1 1/2s", "seated lateral raise"),
    ("Squat, 1½s", "back squat"),
    # a letter before a hyphen is no article
    ("A-skips 2x20 m", "A-skip"),
    ("Skips for height", "power skip"),
    # the opposite muscle
    ("Rear delts, pec deck", "machine reverse fly"),
    ("Cable row standing, SL", "-"),
    # bare names, as they stand on paper
    ("press", "overhead press"),
    ("Press 3x5 @ 80%", "overhead press"),
    ("row", "bent-over row"),
    ("Rows 3x10", "bent-over row"),
    ("Row 500 m", "rowing ergometer"),
    ("Row 2000 m", "rowing ergometer"),
    ("Row 12 cal", "-"),
    ("Row, easy", "-"),
    ("Row machine 10 min", "rowing ergometer"),
    ("Partner row", "-"),
    ("row + curl", "-"),
    ("rear delt", "dumbbell reverse fly"),
    ("Incline DB", "incline dumbbell press"),
    ("DB flat", "dumbbell bench press"),
    ("goblet", "goblet squat"),
    ("goblet hold", "-"),
    ("trap bar", "trap bar deadlift"),
    ("fly", "dumbbell fly"),
    ("butterfly", "machine fly"),
    ("adductor", "hip adduction machine"),
    ("shoulder adduction, cable", "-"),
    ("Half-kneeling press", "half-kneeling overhead press"),
    ("PC + J", "clean and jerk"),
    ("PC + front squat", "-"),
    # a part of the body without its movement, if only one goes with it
    ("Standing calf (Smith), balls of feet on block", "guided-bar calf raise"),
    ("Seated calves", "seated calf raise"),
    ("Calf stretch", "-"),
    ("Cable kickback", "-"),  # for the triceps or the glutes
    ("Cable kickback (glute)", "cable hip extension"),
    ("DB kickback", "triceps kickback"),
    # more words in short, and as others spell them
    ("SBJ x 3", "broad jump"),
    ("Lat step-down 15cm", "step-down"),
    ("Neck lat flex, band", "band neck side bend"),
    ("Ankle inv. (band)", "band ankle inversion"),
    ("Inv row", "inverted row"),
    ("BU KB press", "bottoms-up kettlebell press"),
    ("Split jerk BN", "split jerk"),
    ("Pull-ups OH grip", "pull-up"),
    ("OH press", "overhead press"),
    ("Latpull to chest", "lat pulldown"),
    ("Lat pull over", "-"),
    ("SZ-bar curl", "bent-bar curl"),
    ("Multi-press squat", "guided-bar squat"),
    ("Pron/sup, hammer", "forearm pronation and supination"),
    ("SA pulldown (straight arm)", "straight-arm pulldown"),
    ("Add squeeze, ball btwn knees, hook-lying", "ball squeeze"),
    # what is stood on, what lies on the back, who helps
    ("RDL stood on box", "deficit Romanian deadlift"),
    ("Deadlift standing on 5 cm plate", "deficit deadlift"),
    ("Push-up, 20 kg on back", "weighted push-up"),
    ("Leg raise on back", "lying leg raise"),
    ("Nordic (partner pushes down)", "Nordic curl"),
    ("Short foot in SL stance", "short foot"),
    ("Leg press, feet in", "leg press"),
    ("Snatch from knee", "hang snatch"),
    ("Push-up from knees", "knee push-up"),
    # lifts that go from high to low on one knee
    ("Chop high to low, tall kneel, cable", "half-kneeling chop"),
    ("Cable lift low-high, inside knee up", "half-kneeling lift"),
    # eponyms that the handbooks do not use
    ("Larsen bench w/ pause", "-"),
    # endurance among lifts: the machine, by whichever word
    ("Row erg", "rowing ergometer"),
    ("Rowing machine", "rowing ergometer"),
    ("Machine row", "machine row"),
    ("Bike erg", "stationary bike"),
    ("Arm erg", "arm ergometer"),
    ("Ski erg", "ski ergometer"),
    ("Bicycle crunch", "bicycle crunch"),
    ("Stair run", "stair run"),
    ("Assault course", "-"),
    # what the hands hold: a jacket is a towel
    ("Gi pull-ups", "towel pull-up"),
    ("Judo gi hang", "towel hang"),
    ("Gi row", "-"),  # a row of any kind
    # feet in the air on the bench
    ("Larsen press", "feet-up bench press"),
    ("Bench press, no leg drive", "feet-up bench press"),
    ("Legless bench", "feet-up bench press"),
    ("Leg raise on bench", "lying leg raise"),
    ("Straight leg bench press", "-"),
    # a band or a door to pull at
    ("Door-anchor row", "band row"),
    ("Door anchor face pull", "band face pull"),
    ("Door frame row", "doorway row"),
    ("Pole row", "doorway row"),
    ("Door-anchor press", "-"),  # to the front or overhead
    # over a box
    ("box step-over", "box step-over"),
    ("DB step-overs", "box step-over"),
    ("Step-up and over", "box step-over"),
    ("Hurdle step-over", "-"),
    # jumps with a bar that is named by its deadlift
    ("TBDL jumps", "trap bar jump"),
    ("HBDL jump", "trap bar jump"),
    ("TBDL + jump", "-"),  # two lifts
    # lowering only
    ("Nordic lower", "lowering-only Nordic curl"),
    ("Nordic negatives", "lowering-only Nordic curl"),
    ("Chin-up lowers", "negative chin-up"),
    ("Leg lower", "leg lowering"),
    ("Nordic curl", "Nordic curl"),
    # what a lift is done on makes another one
    ("tuck hold on bars", "tuck hold on bars"),
    ("tuck hold on wall", "-"),
    ("tuck hold, wall", "-"),
    ("hollow hold on the wall", "-"),
    ("bench press on floor", "-"),
    ("bench dip on floor", "-"),
    ("push-up on bars", "-"),
    ("dumbbell fly on floor", "dumbbell floor fly"),
    ("dead bug on bed", "dead bug"),
    ("split squat with hand on wall", "split squat"),
    ("glute bridge, feet on wall", "glute bridge"),
    # a time alone is no rowing
    ("1 min rest", "-"),
    ("5 min easy", "-"),
    ("Row 5 min easy", "rowing ergometer"),
    # and what says the contrary
    ("incline press, flat", "-"),
    ("sumo deadlift, conventional", "-"),
    ("close-grip bench press wide stance", "close-grip bench press"),
    # feet up on something, or in the air
    ("inverted row, feet up", "feet-elevated inverted row"),
    ("push-up with feet up and band", "decline push-up"),
    ("bench press feet up", "feet-up bench press"),
    # an abbreviation of two things: the one that makes a lift
    ("SB pike", "stability-ball pike"),
    ("SB to shoulder", "sandbag over shoulder"),
    ("SB clean, heavy", "sandbag over shoulder"),
    ("SB hip thrust", "-"),
    # a hyphen ties a "no" to one word only
    ("No-hook no-feet power snatch", "power snatch"),
    ("No-belt front squat", "front squat"),
    ("No belt front squat", "-"),
    # bands that take weight off a bar
    ("Reverse band bench", "bench press"),
    ("Back squat, reverse band", "back squat"),
    ("Reverse band fly", "band pull-apart"),
    # a ball with a weight, a thing rolled up, a thing held for balance
    ("Russian twist, feet up, 3 kg ball", "Russian twist"),
    ("Ball Russian twist", "stability-ball Russian twist"),
    ("SAQ over rolled towel", "short-arc leg extension"),
    ("Chair-assisted split squat", "split squat"),
    ("One-arm hang, pulley assist", "one-arm hang"),
    ("Cable one-arm hang", "-"),
    # what the chest lies on, what turns with the lift
    ("Rear delt fly, prone on incline", "chest-supported reverse fly"),
    ("Prone I-Y-T-W on bench", "I-Y-T raise"),
    ("Med ball slam with rotation", "rotational medicine ball slam"),
    ("Push-up w/ rotation", "push-up with rotation"),
    # thick handles fit any implement, a log is a bar
    ("Farmers hold for time, fat grips", "farmer's hold"),
    ("Fat grip deadlift", "deadlift"),
    ("Log press, strict", "overhead press"),
    ("Swiss bar press", "-"),
    ("Swiss bar incline", "incline bench press"),
    # stops, pushes against what gives not, thoughts
    ("Halting snatch DL", "snatch-grip deadlift"),
    ("Overcoming iso squat at pins", "isometric squat"),
    ("Squat, drive through heels", "back squat"),
    ("Squat, pull from the floor", "-"),
    ("Squat walkout hold, supramax", "squat walkout"),
    ("Isometric bench at pins", "isometric bench press"),
    ("Dead bench from pins", "pin bench press"),
    # who carries, who helps
    ("Stretcher carry, four-man", "stretcher carry"),
    ("Casualty drag, 70 kg dummy", "dummy drag"),
    ("Two-man tyre flip", "tire flip"),
    ("Partner leg throws", "partner leg throw"),
    ("Partner-resisted leg curl, prone", "manual leg curl"),
    ("Plate pinch carry", "pinch carry"),
    ("Offset farmer's carry (heavy one side)", "offset farmer's carry"),
    # throws by what is thrown, and how
    ("Overhead back shot throw", "backward overhead throw"),
    ("Between-the-legs forward toss", "forward scoop throw"),
    ("Standing shot, no glide", "-"),
    # lifts that are others than those they sound like
    ("Squat jerk, light technique", "squat jerk"),
    ("Staggered stance trap bar DL", "B-stance trap bar deadlift"),
    ("Iso belt squat hold", "belt squat hold"),
    ("Rotating plank, 10 s each side", "rolling plank"),
    ("Side-lying hip raise with leg lift", "side plank with leg raise"),
    ("Neck bridge front, on pad", "front neck bridge"),
    ("Ins and outs 20-20-20", "-"),  # sprints, or a sit-up
    ("Skipping", "-"),  # with a rope, or without
    ("Leg throw", "-"),
    ("Skipping, alternate feet", "jump rope"),
    ("Standing calf stretch on slant board", "-"),
]


@pytest.mark.parametrize(("name", "exercise"), KINDS)
def test_kinds_of_names(name: str, exercise: str) -> None:
    assert read_as(name) == exercise


# What is read beside the lift


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("back squat, barefoot", "back squat, barefoot"),
        ("Front squat (heels on a wedge), paused", "front squat, heels on a wedge, paused"),
        ("FS w/ straps", "front squat, w/ straps"),
        ("RDL, 3-1-X-0, belt + straps", "Romanian deadlift, 3-1-X-0, belt + straps"),
        ("Lunge, lateral, KB", "lateral lunge, kettlebell"),
        ("bench press", "bench press"),
        ("Barbell rows", "bent-over row"),
    ],
)
def test_qualifiers_are_shown_as_they_were_written(name: str, words: str) -> None:
    reading = CATALOGUE.reading(name)
    assert reading is not None
    assert reading.words == words


@pytest.mark.parametrize(
    ("name", "pause", "lowering", "hold", "tempo"),
    [
        ("front squat, 3 s pause", 3, 0, 0, ""),
        ("front squat (2ct pause)", 2, 0, 0, ""),
        ("deadlift, 2 s below the knee", 2, 0, 0, ""),
        ("chin-ups, 5s neg", 0, 5, 0, ""),
        ("calf raise, hold top 3 s", 3, 0, 0, ""),
        ("shrug, hold 2 counts at the top", 2, 0, 0, ""),
        ("split squat, hold 30 s", 0, 0, 30, ""),
        ("leg press, 4 sec down", 0, 4, 0, ""),
        ("RDL 3-1-X-0", 0, 0, 0, "3-1-x-0"),
        ("bench press 31X1", 0, 0, 0, "3-1-x-1"),
        ("squat 5-2-0", 2, 5, 0, ""),
        ("wall sit, 45 s", 0, 0, 45, ""),
        ("bench press, 100 kg, 5 reps", 0, 0, 0, ""),
    ],
)
def test_seconds_in_a_name(name: str, pause: float, lowering: float, hold: float, tempo: str) -> None:
    reading = CATALOGUE.reading(name)
    assert reading is not None
    assert (reading.pause, reading.lowering, reading.hold, reading.tempo) == (pause, lowering, hold, tempo)
    assert reading.says_seconds is bool(pause or lowering or hold or tempo)


# Words that name no lift


@pytest.mark.parametrize(
    ("with_words", "without"),
    [
        ("toes to bar, no swing", "toes to bar"),
        ("kettlebell swing, no squat", "kettlebell swing"),
        ("clean, without a jump", "clean"),
        ("front squat w/o belt", "front squat"),
        ("push-up (push floor away)", "push-up"),
        ("deadlift (pull the slack out)", "deadlift"),
        ("goblet squat, drive knees out", "goblet squat"),
        ("split squat, shins vertical", "split squat"),
        ("wall sit, arms overhead", "wall sit"),
    ],
)
def test_what_is_denied_or_only_thought_of_names_no_lift(with_words: str, without: str) -> None:
    reading = CATALOGUE.reading(with_words)
    assert reading is not None
    assert reading.exercise is CATALOGUE.exercise(without)
    assert reading.qualifiers


@pytest.mark.parametrize(
    "name",
    [
        "split squat, overhead",
        "pull-aparts, overhead",
        "hack squat machine, reverse",
        "bench press, floor",
        "bench shoulder press",
        "rotator cuff, bench",
        "wrist drill (bench)",
        "squat stretch",
        "squat-to-stand",
        "box jump → broad jump",
        "squat -> lunge",
    ],
)
def test_a_word_that_makes_another_lift_does_so_wherever_it_stands(name: str) -> None:
    assert CATALOGUE.reading(name) is None


@pytest.mark.parametrize("name", ["Umsetzen (hang)", "Reissen, Block (hang)", "Tirage (dead hang)"])
def test_a_lift_in_brackets_behind_words_that_nobody_knows_is_not_the_lift(name: str) -> None:
    assert CATALOGUE.reading(name) is None


@pytest.mark.parametrize(
    ("name", "meant"),
    [
        ("Day 1 (squat)", "back squat"),
        ("Day 1 (hang)", "dead hang"),
        ("Gainage (plank)", "plank"),
        ("Station 3 (push-up)", "push-up"),
        ("Heavy (bench press)", "bench press"),
        ("Chin +kg", "chin-up"),
        ("Dip (+ kg)", "dip"),
    ],
)
def test_a_place_in_the_session_and_a_bare_unit_say_nothing_of_the_lift(name: str, meant: str) -> None:
    reading = CATALOGUE.reading(name)
    assert reading is not None
    assert reading.exercise.name == meant


# Implements


def test_a_name_that_states_another_implement_carries_it() -> None:
    """Every name in the catalogue that holds an implement is for that one, or for the exercise's own."""
    carried = {}
    for exercise in catalogue.exercises():
        for name, words in zip((exercise.name, *exercise.aliases), names_of(exercise), strict=True):
            reading = CATALOGUE.reading(name)
            assert reading is not None
            stated = {one for word in words for one in meanings(word, "implement")}
            if reading.implement != exercise.implement:
                carried[name] = reading.implement
                assert stated == {reading.implement}, name
            elif stated and "machine" not in stated:
                own = {exercise.implement, *exercise.station}
                assert stated & own or exercise.implement in ("machine", "suspension"), name
    assert carried["dumbbell wrist curl"] == "dumbbell"
    assert carried["kettlebell Romanian deadlift"] == "kettlebell"
    assert "hip sled" not in carried
    assert len(carried) > 40


def test_what_a_name_states_is_all_that_its_exercise_takes_in_hand() -> None:
    """No name with dumbbells, kettlebells or a band needs a barbell: no "dumbbell wrist curl" does."""
    looked = 0
    for exercise in catalogue.exercises():
        for name, words in zip((exercise.name, *exercise.aliases), names_of(exercise), strict=True):
            stated = {one for word in words for one in meanings(word, "implement")}
            reading = CATALOGUE.reading(name)
            assert reading is not None
            if len(stated) == 1 and not stated & {"machine", "sled", "suspension", "bodyweight"}:
                (one,) = stated
                looked += 1
                needed = equipment.needs(exercise, reading.implement)
                assert one in (*needed, reading.implement, *exercise.station), name
                assert one == "barbell" or "barbell" not in needed or "barbell" in exercise.station, name
                assert reading.implement in (one, exercise.implement), name
    assert looked > 500


@pytest.mark.parametrize(
    ("name", "exercise", "implement"),
    [
        ("Bulgarian split squat, barbell", "barbell rear-foot-elevated split squat", "barbell"),
        ("Bulgarian split squat, kettlebells", "rear-foot-elevated split squat", "kettlebell"),
        ("hip thrust, Smith machine", "guided-bar hip thrust", "guided bar"),
        ("good morning, dumbbells", "good morning", "dumbbell"),
        ("standing calf raise, single leg, DB", "dumbbell single-leg calf raise", "dumbbell"),
        ("lunge, SSB", "barbell lunge", "barbell"),
        ("back squat with bands", "back squat", "barbell"),
        ("upright row, Smith machine", "upright row", "guided bar"),
        ("double kettlebell snatch", "kettlebell snatch", "kettlebell"),
        ("double kettlebell push press", "push press", "kettlebell"),
        ("leg press sled", "leg press", "machine"),
        ("pulldown behind the neck, cable", "behind-the-neck pulldown", "machine"),
        ("hip thrust, bottle on hips", "dumbbell hip thrust", "dumbbell"),
        ("front raise with a 10 kg plate", "plate front raise", "plate"),
        ("trap bar deadlift, standing on plates", "deficit trap bar deadlift", "trap bar"),
    ],
)
def test_the_exercise_with_the_implement_comes_first(name: str, exercise: str, implement: str) -> None:
    reading = CATALOGUE.reading(name)
    assert reading is not None
    assert (reading.exercise.name, reading.implement) == (exercise, implement)


@pytest.mark.parametrize(
    "name",
    ["leg press, dumbbells", "cable pull-up", "machine lunge", "sled curl", "lat pulldown, kettlebell"],
)
def test_an_implement_that_makes_no_sense_is_not_read(name: str) -> None:
    assert CATALOGUE.reading(name) is None


# Nothing is guessed


@pytest.mark.parametrize(
    "name",
    [
        "RDL to bent-over row",
        "clean + front squat + jerk",
        "squats and lunges",
        "bench press or dip",
        "chin-up/pull-up",
        "reverse lunge with curl and press",
        "bench press, inclin",
        "squat (frnt)",
        "kneebow squat",
        "standing press, one leg",
        "jalkakyykky",
        "приседания",
        "卧推",
        "heavy",
        "w/ straps",
        "3 x 10",
        "KB",
        "paused, belt, 3-1-X-0",
        "-",
        "",
        "()",
    ],
)
def test_what_may_be_another_lift_is_not_read(name: str) -> None:
    assert CATALOGUE.reading(name) is None


@pytest.mark.parametrize(
    "name", ["back squat " * 800, "x" * 8000, "squat, " * 2000, "3s " * 3000, "(" * 8000]
)
def test_a_text_that_is_no_name_is_told_at_once(name: str) -> None:
    assert CATALOGUE.reading(name) is None
    assert CATALOGUE.suggestions(name).names == ()
    assert len(name) > MOST_LETTERS
    assert steps(lambda: (Known().reading(name), Known().suggestions(name))) < 100


@settings(max_examples=150, deadline=None)
@given(st.text(max_size=60))
def test_any_text_is_read_or_not(name: str) -> None:
    reading = read(name)
    assert reading is None or catalogue.exercise(reading.exercise.name) is reading.exercise
    assert len(CATALOGUE.suggestions(name).names) <= 5


WORDS = (
    "back",
    "squat",
    "paused",
    "DB",
    "w/ straps",
    ", ",
    "(",
    ")",
    "3 s",
    "leg",
    "curl",
    "seated",
    "+",
    "or",
    "feet up",
)


@settings(max_examples=150, deadline=None)
@given(st.lists(st.sampled_from(WORDS), max_size=8))
def test_words_of_names_in_any_order_do_no_harm(words: list[str]) -> None:
    reading = read(" ".join(words))
    assert reading is None or set(reading.qualifiers).isdisjoint({""})


def test_a_name_turned_round_is_that_lift_or_none() -> None:
    """As coaches keep lists: the movement first, "curl, seated hamstring". Nothing else is ever read for it."""
    turned = [
        (exercise, f"{words[-1]}, {' '.join(words[:-1])}")
        for exercise in catalogue.exercises()
        for name in (exercise.name, *exercise.aliases)
        if len(words := name.split()) > 1 and kind_of(words[-1]) == MOVEMENT
    ]
    readings = [(exercise, name, read(name)) for exercise, name in turned if catalogue.exercise(name) is None]
    others = {
        name: reading.exercise.name
        for exercise, name, reading in readings
        if reading and set(exercise.direct).isdisjoint(reading.exercise.direct)
    }
    unread = [name for _, name, reading in readings if reading is None]
    same = [name for exercise, name, reading in readings if reading and reading.exercise is exercise]
    assert others == {}
    assert len(readings) > 3000
    assert len(unread) < 0.02 * len(readings)
    assert len(same) > 0.98 * len(readings)


@pytest.mark.parametrize(
    ("name", "exercise"),
    [
        ("Row, plate-loaded, 3 s", "machine row"),
        ("Press (squeeze)", "dumbbell squeeze press"),
        ("Row, dead stop", "dead-stop row"),
        ("row (straps)", "bent-over row"),
        ("row w/ straps", "bent-over row"),
        ("Curl, hamstring", "-"),
        ("Curl, band, hamstring", "-"),
        ("curl, biceps", "barbell curl"),
        ("High hang clean pull", "hang clean pull"),
    ],
)
def test_a_bare_word_with_what_names_another_lift_is_that_lift(name: str, exercise: str) -> None:
    assert words_read(name) == exercise


def words_read(name: str) -> str:
    reading = read(name)
    return reading.exercise.name if reading else "-"


FREE = ("paused", "w/ straps", "belt", "3-1-X-0", "slow", "(comp)", "3x5", "20 kg", "drop set", "AMRAP")


@settings(max_examples=100, deadline=None)
@given(st.sampled_from(catalogue.exercises()), st.sampled_from(FREE))
def test_a_free_qualifier_changes_no_exercise(exercise: catalogue.Exercise, words: str) -> None:
    said = f"{exercise.name}, {words}"
    reading = CATALOGUE.reading(said)
    assert reading is not None, said
    pattern = (reading.exercise.direct, reading.exercise.implement)
    assert reading.exercise is exercise or pattern[1] == exercise.implement


def test_a_name_that_is_read_takes_few_steps() -> None:
    """About a millisecond each: 5,000 steps."""
    names = [name for name, *_ in (*COACHES, *rows("names.tsv")) if catalogue.exercise(name) is None]
    assert len(names) > 400
    assert steps(lambda: [read(name) for name in names]) / len(names) < 5000


# The parts


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("BB RDLs (paused 2 s), w/ straps", "barbell romanian deadlift|paused 2s|with strap"),
        ("½ kneeling press – 1-arm", "half-kneeling press|one-arm"),
        ("Pull ups, wtd", "pull-up|weighted"),
        ("feet on 12in box", "foot-elevated 12in"),
        ("OHS; OH press", "overhead squat|overhead press"),
        ("45-degree, 90/90", "45deg|90/90"),
        ("L/R e/s", "l/r e/s"),
        ("İce squats", "ice squat"),
    ],
)
def test_a_name_is_cut_into_words(name: str, words: str) -> None:
    parts: dict[int, list[str]] = {}
    for token in tokens_of(name, built_names.SPELLINGS):
        parts.setdefault(token.part, []).append(token.word)
        assert 0 <= token.start < token.end <= len(name)
    assert "|".join(map(" ".join, parts.values())) == words


@pytest.mark.parametrize(
    ("word", "other", "near"),
    [
        ("sqat", "squat", True),
        ("sqaut", "squat", True),
        ("squatt", "squat", True),
        ("squit", "squat", True),
        ("qsuat", "squat", True),
        ("squish", "squat", False),
        ("taquss", "squat", False),
    ],
)
def test_words_that_differ_by_a_letter(word: str, other: str, near: bool) -> None:
    assert one_letter_off(word, other) is near
    assert one_letter_off(other, word) is near


@given(
    st.lists(st.tuples(st.sampled_from("abc"), st.text("xy", max_size=900)), max_size=30),
    st.sampled_from("abcd"),
)
def test_all_lines_with_a_key_are_found(pairs: list[tuple[str, str]], key: str) -> None:
    lines = sorted({"\t".join(pair) for pair in pairs})
    text = "\n" + "".join(f"{line}\n" for line in lines)
    assert lines_with(text, key) == [line for line in lines if line.startswith(f"{key}\t")]


def test_every_word_of_the_catalogue_has_a_kind() -> None:
    words = {word for exercise in catalogue.exercises() for name in names_of(exercise) for word in name}
    assert words
    assert not [word for word in words if not kind_of(word)]


# Suggestions


@pytest.mark.parametrize(
    ("name", "first"),
    [
        ("lat pull donw, wide", "wide-grip lat pulldown"),
        ("bench zigzag press, close grip", "close-grip bench press"),
        ("BB hip thrust zz top", "hip thrust"),
        ("zigzag row, seated cable", "seated cable row"),
        ("calf press zigzag", "leg press calf raise"),
    ],
)
def test_the_right_lift_is_offered_first(name: str, first: str) -> None:
    assert CATALOGUE.exercise(name) is None
    assert CATALOGUE.nearest(name)[0] == first


@pytest.mark.parametrize(
    ("name", "offered"),
    [
        ("GHD hold", "back extension hold"),
        ("4-way band neck", "band neck flexion"),
        ("bar row", "inverted row"),
        ("bar row", "bent-over row"),
        ("weight curl", "dumbbell curl"),
        ("wall hold", "wall sit"),
        ("tuck hold on wall", "tuck hold on bars"),
        ("bench press on floor", "floor press"),
    ],
)
def test_a_half_known_name_is_offered_what_it_may_be(name: str, offered: str) -> None:
    assert CATALOGUE.exercise(name) is None
    suggested = CATALOGUE.suggestions(name)
    assert offered in suggested.names
    assert not suggested.slip


def test_a_band_that_is_the_only_load_is_what_is_taken_in_hand() -> None:
    for name, implement in (("decline push-up with a band", "band"), ("bench press with bands", "barbell")):
        reading = CATALOGUE.reading(name)
        assert reading is not None
        assert reading.implement == implement


@pytest.mark.parametrize("name", ["triceps row zigzag", "calf fly zigzag", "hamstring press zigzag"])
def test_nothing_is_offered_for_a_part_of_the_body_that_it_does_not_train(name: str) -> None:
    assert CATALOGUE.suggestions(name).names == ()


UNKNOWN = (
    "BB hip thrust zz iso",
    "quarry drill",
    "jalkakyykky",
    "the usual",
    "front sqat wihz pause",
    "zigzag press",
)


@pytest.mark.parametrize("name", UNKNOWN)
def test_an_unknown_name_takes_few_steps(name: str) -> None:
    """No more than a fifth of one comparison of each word with every known word; once known, 5,000 steps."""

    def first() -> None:
        name_suggestions.known_spellings.cache_clear()
        Known().suggestions(name)

    assert steps(first) < 40_000
    assert steps(lambda: Known().suggestions(name)) < 5000
    assert steps(lambda: Known().may_mean(name)) < 10_000


@pytest.mark.parametrize(
    ("name", "names"),
    [
        ("RDL to bent row", ("Romanian deadlift", "bent-over row")),
        ("DB row + push-up + burpee", ("one-arm dumbbell row", "push-up", "burpee")),
        ("chin-up or pull-up", ("chin-up", "pull-up")),
    ],
)
def test_several_lifts_are_told(name: str, names: tuple[str, ...]) -> None:
    suggested = CATALOGUE.suggestions(name)
    assert suggested.lifts
    assert suggested.names == names


def test_what_stands_in_the_name_comes_before_what_is_like_it() -> None:
    assert CATALOGUE.nearest("step-up zigzag")[0] == "step-up"
    assert CATALOGUE.nearest("leg curl zigzag")[0] == "lying leg curl"


@pytest.mark.parametrize(
    ("name", "never"),
    [
        ("leg extension zigzag", "leg curl"),
        ("hip abduction zigzag", "adduction"),
        ("external rotation zigzag", "internal"),
        ("pulldown zigzag", "pushdown"),
        ("hamstring extension thing", "curl"),
    ],
)
def test_the_opposite_is_never_offered(name: str, never: str) -> None:
    assert not [one for one in CATALOGUE.nearest(name, 8) if never in one]


def test_nothing_above_the_athletes_level_is_offered() -> None:
    name = "pull-up zigzag"
    assert {level_of(one) for one in CATALOGUE.nearest(name, 8)} != {"novice"}
    assert {level_of(one) for one in CATALOGUE.nearest(name, 8, "novice")} <= {"novice"}


def level_of(name: str) -> str:
    exercise = catalogue.exercise(name)
    assert exercise is not None
    return exercise.level


@pytest.mark.parametrize(
    "name", ["The Thursday Gauntlet", "xyzzy", "jalkakyykky", "10 min swim easy", "foam roll"]
)
def test_nothing_is_offered_rather_than_something_wild(name: str) -> None:
    assert CATALOGUE.suggestions(name).names == ()


# Names of a team's own


def test_given_names_come_first_and_may_be_qualified() -> None:
    known = Known(
        names={"toe push": "standing calf raise", "RDL": "stiff-leg deadlift", "odd": "no such lift"}
    )
    assert [one.name if (one := known.exercise(name)) else "-" for name in ("Toe-Pushes", "RDL", "odd")] == [
        "standing calf raise",
        "stiff-leg deadlift",
        "-",
    ]
    reading = known.reading("toe push, 3 s pause")
    assert reading is not None
    assert (reading.exercise.name, reading.pause) == ("standing calf raise", 3)
    assert CATALOGUE.exercise("toe push") is None


def test_a_given_name_is_not_used_for_another() -> None:
    known = Known(names={"one": "two", "two": "one", "three": "four", "four": "back squat"})
    assert known.exercise("one") is known.exercise("two") is known.exercise("three") is None
    assert known.exercise("four") is catalogue.exercise("back squat")


@pytest.mark.parametrize("level", ["begginer", "", "Novice"])
def test_a_level_that_nobody_knows_leaves_nothing_out(level: str) -> None:
    assert CATALOGUE.suggestions("quarry leg curl", level=level).names


@pytest.mark.parametrize(
    ("name", "offered"),
    [
        ("Wall ball toss", ("wall ball squat", "medicine ball chest pass")),
        ("Wall ball lob", ("wall ball squat",)),
        ("Moon toss", ()),
    ],
)
def test_another_word_for_a_throw_is_offered_what_is_thrown(name: str, offered: tuple[str, ...]) -> None:
    assert CATALOGUE.suggestions(name).names == offered
