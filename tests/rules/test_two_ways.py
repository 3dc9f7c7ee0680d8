"""Values that can be read in two ways on the lift that they stand on."""

from __future__ import annotations

import pytest

from spotline.lint.engine.registry import all_rules

RULE = "read-two-ways"


@pytest.fixture
def told(findings, week):
    def run(line):
        return findings(week({"monday": [line]}), RULE)

    return run


def mended(content, edit):
    return content[: edit.place.start] + edit.words + content[edit.place.end :]


@pytest.mark.parametrize(
    ("line", "excerpt", "meant", "severity"),
    [
        ("split squat, sets: 2, reps: 8/8", "8/8", ["8 each", "8"], "warning"),
        ("single-arm dumbbell row, sets: 2, reps: 10-12/10-12", "10-12/10-12", ["10-12 each", "10-12"], "warning"),
        ("back squat, sets: 3, reps: 5, load: +10 kg", "+10 kg", ["note: 10 kg more than last time", "bodyweight + 10 kg"], "warning"),
        ("leg press, sets: 3, reps: 8, load: -5 kg", "-5 kg", ["note: 5 kg less than last time", "bodyweight - 5 kg"], "warning"),
        ("box jump, sets: 3, hold: 30 s", "30 s", ["reps: 30 s", "reps: 1, hold: 30 s"], "warning"),
        ("pogo jump, sets: 3, hold: 20 s", "20 s", ["reps: 20 s", "reps: 1, hold: 20 s"], "warning"),
        ("dumbbell bench press, sets: 3, reps: 8, load: 28 kg", "28 kg", ["2 x 28 kg", "2 x 14 kg"], "note"),
        ("dumbbell shoulder press, sets: 3, reps: 8, load: 17.5 kg", "17.5 kg", ["2 x 17.5 kg", "2 x 8.75 kg"], "note"),
    ],
)  # fmt: skip
def test_both_readings_are_named_and_offered(line, excerpt, meant, severity, told, findings, week):
    (found,) = told(line)
    assert (found.place.excerpt, [edit.words for edit in found.edits], found.severity) == (
        excerpt,
        meant,
        severity,
    )
    assert "two readings" in found.counted
    for edit in found.edits:
        content = mended(week({"monday": [line]}), edit)
        assert not [one for one in findings(content) if one.rule == RULE or not one.why], edit.words


@pytest.mark.parametrize(
    "line",
    [
        "back squat, sets: 2, reps: 8/8",
        "split squat, sets: 2, reps: 8/6",
        "split squat, sets: 2, reps: 8/8, side: each",
        "split squat, sets: 3, reps: 8/8/8",
        "split squat, sets: 2, reps: 8",
        "pull-up, sets: 3, reps: 5, load: +10 kg",
        "dip, sets: 3, reps: 5, load: -10 kg",
        "back squat, sets: 3, reps: 5, load: bodyweight + 10 kg",
        "quarry drill, sets: 3, reps: 5, load: +10 kg",
        "back squat, sets: 3, reps: 5, load: -12 %",  # after a top set
        "quarry drill, sets: 2, reps: 8/8",  # nobody knows whether it has sides
        "split squat, sets: 2-3, reps: 8/8",
        "split squat, sets: 2, for: 40 s",
        "box jump, sets: 3, reps: 3, hold: 3 s",
        "plank, sets: 3, hold: 30 s",
        "dumbbell bench press, sets: 3, reps: 8, load: 2 x 28 kg",
        "dumbbell bench press, sets: 3, reps: 8, load: 70 %",
        "goblet squat, sets: 3, reps: 8, load: 28 kg",
        "single-arm dumbbell row, sets: 3, reps: 8, load: 28 kg",
        "bench press, sets: 3, reps: 8, load: 60 kg",
        "dumbbell bench press, sets: 3, reps: 8",
        "dumbbell bench press, sets: 3, reps: 10/8/6, load: 20/22/24 kg",  # set by set, in halves or not, is said elsewhere
        "dumbbell bench press, sets: 3, reps: 8, side: left, load: 20 kg",  # one hand
        "single-arm dumbbell shoulder press, sets: 3, reps: 8, load: 20 kg",
        "dumbbell row, sets: 3, reps: 8, load: 20 kg",
        "dumbbell romanian deadlift, sets: 3, reps: 8, load: 20 kg",
    ],
)
def test_what_has_one_reading_is_left_alone(line, told):
    assert told(line) == []


def test_a_hold_in_lines_of_its_own_is_mended_in_lines(findings):
    content = (
        "programme: P\nsessions:\n  - session: A\n    exercises:\n"
        "      - exercise: box jump\n        sets: 3\n        hold: 30 s\n"
    )
    (found,) = findings(content, RULE)
    assert [edit.words for edit in found.edits] == ["reps: 30 s", "reps: 1\n        hold: 30 s"]
    for edit in found.edits:
        assert findings(mended(content, edit), RULE) == []


WIL = """\
athlete: Wil
best lifts: {bench press: 100 kg, back squat: {load: 200 kg, working best: 90 %}}
"""


@pytest.mark.parametrize(
    ("lift", "load", "meant"),
    [
        ("bench press", "80 % (77.5 kg)", ""),  # one plate off
        ("bench press", "80 % (82.5 kg)", ""),
        ("bench press", "80 % (77 kg)", "80 kg"),
        ("bench press", "80 % (83 kg)", "80 kg"),
        ("bench press", "80-85 % (77.5 kg)", ""),
        ("bench press", "80-85 % (87.5 kg)", ""),
        ("bench press", "80-85 % (90 kg)", "82.5 kg"),
        ("bench press", "78.5-80 % (70 kg)", "79.2 kg"),  # to a tenth of a kilogram
        ("leg press", "80 % (77 kg)", ""),  # no best on file
        ("bench press", "77 kg", ""),
        ("bench press", "80 %", ""),
        ("back squat", "80 % (144 kg)", ""),  # from the working best, 180 kg
        ("back squat", "80 % (160 kg)", "144 kg"),
        ("back squat", "80 % of 1RM (160 kg)", ""),
        ("back squat", "80 % of 1RM (144 kg)", "160 kg"),
        ("bench press", "40 % of squat (72 kg)", ""),
        ("bench press", "40 % of squat (90 kg)", "72 kg"),
    ],
)
def test_two_figures_for_one_load_are_at_most_a_plate_apart(lift, load, meant, findings, week):
    line = f"{lift}, sets: 3, reps: 3, load: {load}"
    found = findings(week({"monday": [line]}, "athlete: wil.athlete.yaml"), RULE, {"wil.athlete.yaml": WIL})
    assert [f"which is {meant} of the best on file" in one.counted for one in found] == [True] * bool(meant)


@pytest.mark.parametrize(
    ("load", "reading"),
    [
        ("+10 kg", "10 kg more than last time"),
        ("-5 kg", "5 kg less than last time"),
        ("'+10 kg'", "10 kg more than last time"),
        ('"-5 kg"', "5 kg less than last time"),
    ],
)
def test_plus_is_more_and_minus_is_less_than_last_time(load, reading, told):
    (found,) = told(f"leg press, sets: 3, reps: 8, load: {load}")
    assert reading in found.counted


def test_a_hold_far_to_the_right_is_mended_too(findings):
    content = (
        "programme: P\nsessions:\n  - session: A\n    exercises:\n"
        "      - {exercise: box jump, sets: 3, note: as soft as can be, hold:                                30 s}\n"
    )
    (found,) = findings(content, RULE)
    assert [edit.words for edit in found.edits] == ["reps: 30 s", "reps: 1, hold: 30 s"]


def test_a_hold_whose_key_stands_on_the_line_above_is_told_without_an_edit(findings):
    content = (
        "programme: P\nsessions:\n  - session: A\n    exercises:\n"
        "      - exercise: box jump\n        sets: 3\n        hold:\n          30 s\n"
    )
    (found,) = findings(content, RULE)
    assert (found.place.excerpt, found.edits) == ("30 s", ())


def test_which_is_meant_only_the_coach_knows():
    """What solves a programme by itself leaves such findings to the coach."""
    asking = {rule.name for rule in all_rules() if rule.asks}
    assert asking == {
        "week-pasted",  # what the week was to hold
        *(RULE, "exercise-unknown", "rir-rpe-contradict"),  # two things are said, or none that is known
        *("load-outside-zone", "nothing-changes"),  # a load upwards, or a step, is the coach's to write
        *("session-empty", "sets-not-read"),  # work that was left out, or goes by a name of one's own
        "lift-left-out",  # a lift that stands before and after
    }
