"""What changes in some weeks for all lines, and what differs for one athlete."""

from __future__ import annotations

import pytest

HEAD = "programme: P\nweeks: 5\n"
LINES = """\
sessions:
  - session: A
    day: monday
    exercises:
      - {exercise: back squat, sets: 3, reps: 5, load: 80 %, rir: 2}
      - {exercise: bench press, sets: {4: 5, other: 4}, reps: 5, load: 60 kg}
      - {exercise: kettlebell swing, every: 60 s, for: 10 min, reps: 10}
  - session: B
    day: friday
    exercises: [{exercise: deadlift, sets: 1, reps: 5, load: 100 lb}]
"""


def text(everything="", head=HEAD, lines=LINES):
    return head + (f"everything: {everything}\n" if everything else "") + lines


def told(ledger, week):
    """What each line holds in a week: sets, repetitions, load, reserve."""
    return [
        " ".join(
            str(part.words if key == "load" else part.a_set() if key == "reps" else part)
            for key in ("sets", "reps", "load", "rir", "rpe")
            if (part := getattr(one.work, key)) is not None
        )
        for visit in ledger.weeks[week - 1].visits
        for one in visit.own
    ]


PLAIN = ["3 5 80 % 2", "4 5 60 kg", "10 10", "1 5 100 lb"]


@pytest.mark.parametrize(
    ("change", "lines"),
    [
        ("load: +2 points", ["3 5 82 % 2", "4 5 60 kg", "10 10", "1 5 100 lb"]),
        ("load: -10 points, sets: half", ["2 5 70 % 2", "2 5 60 kg", "10 10", "1 5 100 lb"]),
        ("load: x 0.9", ["3 5 72 % 2", "4 5 54 kg", "10 10", "1 5 90 lb"]),
        ("load: x 2/3", ["3 5 53.33 % 2", "4 5 40 kg", "10 10", "1 5 66.67 lb"]),
        ("load: 3/4", ["3 5 60 % 2", "4 5 45 kg", "10 10", "1 5 75 lb"]),
        ("sets: x 2/3", ["2 5 80 % 2", "3 5 60 kg", "10 10", "1 5 100 lb"]),
        ("load: half", ["3 5 40 % 2", "4 5 30 kg", "10 10", "1 5 50 lb"]),
        ("load: +5 kg", ["3 5 80 % 2", "4 5 65 kg", "10 10", "1 5 111.02 lb"]),
        ("sets: 2", ["2 5 80 % 2", "2 5 60 kg", "10 10", "2 5 100 lb"]),
        ("sets: -1", ["2 5 80 % 2", "3 5 60 kg", "10 10", "1 5 100 lb"]),
        ("reps: half", ["3 3 80 % 2", "4 3 60 kg", "10 5", "1 3 100 lb"]),
        ("rpe: 6", ["3 5 80 % 6", "4 5 60 kg 6", "10 10 6", "1 5 100 lb 6"]),
        ("rir: -1", ["3 5 80 % 1", "4 5 60 kg", "10 10", "1 5 100 lb"]),
    ],
)
def test_all_lines_change_in_the_week(change, lines, programme):
    ledger = programme(text(f"{{2: {{{change}}}}}"))
    assert told(ledger, 2) == lines
    assert told(ledger, 1) == told(ledger, 3) == PLAIN


def test_a_lines_own_value_for_the_week_stays(programme):
    ledger = programme(text("{4-5: {sets: half}}"))
    assert told(ledger, 4)[:2] == ["2 5 80 % 2", "5 5 60 kg"]
    assert told(ledger, 5)[:2] == ["2 5 80 % 2", "2 5 60 kg"]


def test_a_turn_of_values_that_repeat_changes_too(programme):
    lines = LINES.replace("load: 80 %", "load: {1: 70 %, 2: 80 %, again: +2 points}")
    ledger = programme(text("{4: {load: -10 points}, other: {rir: 3}}", lines=lines))
    assert told(ledger, 4)[0] == "3 5 72 % 2"
    assert told(ledger, 3)[0] == "3 5 72 % 3"


def test_weeks_of_a_block_are_its_own(programme):
    block = "  - name: {}\n    weeks: 2\n{}    sessions: [{{session: A, exercises: [{{exercise: back squat, sets: 4}}]}}]\n"
    blocks = block.format("one", "") + block.format("two", "    everything: {2: {sets: -1}}\n")
    ledger = programme("programme: P\neverything: {4: {sets: half}, 2: {sets: 3}}\nblocks:\n" + blocks)
    assert [told(ledger, week) for week in (1, 2, 3, 4)] == [["4"], ["3"], ["4"], ["1"]]


@pytest.mark.parametrize(
    ("everything", "rule", "place"),
    [
        ("{6: {sets: 2}}", "weeks-beyond", "6"),
        ("{1-3: {sets: 2}, 3: {rpe: 6}}", "weeks-overlap", "3"),
        ("{2: {load: -10 %}}", "two-readings", "-10 %"),
        ("{2: {load: 60 %}}", "two-readings", "60 %"),
        ("{2: {sets: 2/3}}", "two-readings", "2/3"),
        ("{2: {reps: 3/4}}", "two-readings", "3/4"),
        ("{2: {load: 3/2}}", "value-unreadable", "3/2"),
        ("{2: {hold: half}}", "nothing-changes", "half"),
        ("{2: {tempo: 3-0-1-0}}", "key-unknown", "tempo"),
        ("{2: {sets: some}}", "value-unreadable", "some"),
        ("{2: {sets: 0}}", "value-out-of-range", "0"),
        ("{2: 3}", "value-wrong-kind", "3"),
        ("{again: {sets: 2}}", "value-unreadable", "again"),
    ],
)
def test_edges_are_one_finding_each(everything, rule, place, findings):
    found = [one for one in findings(text(everything)) if not one.why]
    assert [(one.rule, one.place.excerpt) for one in found] == [(rule, place)]
    assert found[0].change


# One athlete


@pytest.mark.parametrize(
    ("adjust", "week", "lines"),
    [
        ("{in weeks: 1-3, sets: -1}", 3, ["2 5 80 % 2", "3 5 60 kg", "10 10", "1 5 100 lb"]),
        ("{in weeks: 1-3, sets: -1}", 4, ["3 5 80 % 2", "5 5 60 kg", "10 10", "1 5 100 lb"]),
        ("{sets: half}", 4, ["2 5 80 % 2", "3 5 60 kg", "10 10", "1 5 100 lb"]),
        ("{session: b, reps: 3, load: x 0.5}", 1, [*PLAIN[:3], "1 3 50 lb"]),
        ("{exercise: squat, load: -10 points, rir: 4}", 1, ["3 5 70 % 4", *PLAIN[1:]]),
        (
            "{exercise: bench press, session: A, in weeks: 2, reps: 8, rpe: 7}",
            2,
            [PLAIN[0], "4 8 60 kg 7", *PLAIN[2:]],
        ),
        ("{exercise: bench press, session: B, reps: 8}", 2, PLAIN),
        ("{exercise: back squat, load: 60 kg, rpe: 7}", 1, ["3 5 60 kg 7", *PLAIN[1:]]),
        ("{exercise: back squat, rpe: up to 8}", 1, ["3 5 80 % up to 8", *PLAIN[1:]]),
        ("{exercise: deadlift, reps: {1-2: 3, 3-5: 2}}", 3, [*PLAIN[:3], "1 2 100 lb"]),
    ],
)
def test_an_athlete_differs_in_all_lines_or_in_some(adjust, week, lines, programme):
    head = HEAD + f"athletes: [{{athlete: {{name: Ida}}, adjust: [{adjust}]}}]\n"
    assert told(programme(text(head=head)), week) == lines


def test_nothing_to_swap_where_no_exercise_is_named(findings):
    head = HEAD + "athletes: [{athlete: {name: Ida}, adjust: [{swap: leg press}]}]\n"
    assert [one.rule for one in findings(text(head=head)) if not one.why] == ["keys-at-odds"]


@pytest.mark.parametrize(
    ("adjust", "by_week"),
    [
        (
            "{exercise: squat, in weeks: 1-2, swap: leg press}",
            {1: "leg press", 2: "leg press", 3: "back squat"},
        ),
        ("{exercise: squat, in weeks: 2, leave out: true}", {1: "back squat", 2: None, 3: "back squat"}),
        (
            "{exercise: squat, in weeks: 1, swap: leg press, load: 40 kg}, {exercise: squat, in weeks: 2-5, load: 50 kg}",
            {1: "leg press", 2: "back squat", 5: "back squat"},
        ),
    ],
)
def test_an_athlete_has_another_exercise_or_none_in_some_weeks_only(adjust, by_week, programme):
    ledger = programme(text(head=HEAD + f"athletes: [{{athlete: {{name: Ida}}, adjust: [{adjust}]}}]\n"))
    for number, name in by_week.items():
        names = [group.name for _, group in ledger.weeks[number - 1].entries()]
        assert [one for one in names if one in ("back squat", "leg press")] == ([name] if name else [])
