"""Values that can be read in two ways on the lift that they stand on."""

from __future__ import annotations

import pytest

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
        ("back squat, sets: 3, reps: 5, load: +10 kg", "+10 kg", ["10 kg", "bodyweight + 10 kg"], "warning"),
        ("leg press, sets: 3, reps: 8, load: -5 kg", "-5 kg", ["5 kg", "bodyweight - 5 kg"], "warning"),
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
        "box jump, sets: 3, reps: 3, hold: 3 s",
        "plank, sets: 3, hold: 30 s",
        "dumbbell bench press, sets: 3, reps: 8, load: 2 x 28 kg",
        "dumbbell bench press, sets: 3, reps: 8, load: 70 %",
        "goblet squat, sets: 3, reps: 8, load: 28 kg",
        "single-arm dumbbell row, sets: 3, reps: 8, load: 28 kg",
        "bench press, sets: 3, reps: 8, load: 60 kg",
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
