"""Values that repeat to the end of a block, with a step; values by visit."""

from __future__ import annotations

import pytest

HEAD = "programme: P\nweeks: 6\nsessions:\n  - session: A\n    day: [thursday, monday]\n    exercises:\n"
TURNS = "programme: P\nweeks: 2\nrotation: [monday, wednesday, friday]\nsessions:\n"


def text(line, head=HEAD):
    return f"{head}      - {{exercise: back squat, sets: 3, {line}}}\n"


@pytest.fixture(scope="module")
def values(programme):
    """The value of a key in each week, at the last visit of the week."""

    def run(content, key):
        ledger = programme(content)
        held = [getattr(visit.own[0].work, key) for week in ledger.weeks for visit in week.visits[-1:]]
        return [one.words if key == "load" else str(one.a_set() if key == "reps" else one) for one in held]

    return run


@pytest.mark.parametrize(
    ("load", "weeks"),
    [
        ("{1-3: 100 kg, again: +5 kg}", ["100 kg"] * 3 + ["105 kg"] * 3),
        ("{1: 70 %, 2: 75 %, again: +2.5 points}", ["70 %", "75 %", "72.5 %", "77.5 %", "75 %", "80 %"]),
        ("{1: 70 %, 2-3: 75 %, again: +2 %}", ["70 %", "75 %", "75 %", "72 %", "77 %", "77 %"]),
        ("{1: 60 kg, 2-5: 80 kg, again: +10 %}", ["60 kg"] + ["80 kg"] * 4 + ["66 kg"]),
        ("{1: 2 x 20 kg, again: +2 kg}", [f"2 x {number} kg" for number in (20, 22, 24, 26, 28, 30)]),
        (
            "{1: 100 lb, 2: 110 lb, again: +5 lb}",
            [f"{number} lb" for number in (100, 110, 105, 115, 110, 120)],
        ),
        (
            "{1: bodyweight - 10 kg, again: +5 kg}",
            [f"bodyweight {one} kg" for one in ("- 10", "- 5", "+ 0", "+ 5", "+ 10", "+ 15")],
        ),
        (
            "{1-2: 60/70/80 kg, 3: 50 kg, again: '-2,5 kg'}",
            ["60/70/80 kg"] * 2 + ["50 kg"] + ["57.5/67.5/77.5 kg"] * 2 + ["47.5 kg"],
        ),
        ("{1: 70-75 %, again: same}", ["70-75 %"] * 6),
        ("{1: red band, 2: blue band, again: same}", ["red band", "blue band"] * 3),
    ],
)
def test_loads_repeat_with_a_step(load, weeks, values):
    assert values(text(f"reps: 5, load: {load}"), "load") == weeks


@pytest.mark.parametrize(
    ("key", "written", "weeks"),
    [
        ("reps", "{1: 8, 2: 10, again: +1}", ["8", "10", "9", "11", "10", "12"]),
        ("reps", "{1: 12/10/8, again: same}", ["8-12"] * 6),
        ("rir", "{1: 3, 2: 2, 3: 1, again: same}", ["3", "2", "1"] * 2),
        ("rpe", "{1-5: 6-7, again: +1}", ["6-7"] * 5 + ["7-8"]),
        ("rest", "{1-3: 2 min, again: -15 s}", ["120"] * 3 + ["105"] * 3),
        ("hold", "{1: 20 s, again: +5 s}", ["20", "25", "30", "35", "40", "45"]),
        ("sets", "{1: 3, 2: 4, again: +1}", ["3", "4", "4", "5", "5", "6"]),
    ],
)
def test_other_values_repeat_too(key, written, weeks, values):
    line = f"{key}: {written}"
    content = text(line).replace("sets: 3, ", "") if key == "sets" else text(line)
    assert values(content, key) == weeks


def test_sets_of_repetitions_repeat_as_a_pair(programme):
    ledger = programme(text("").replace("sets: 3, ", "sets: {1: 4x12, 2: 5x9, again: same}"))
    held = [
        (str(one.sets), str(one.work.reps.a_set())) for week in ledger.weeks for one in week.visits[0].own
    ]
    assert held == [("4", "12"), ("5", "9")] * 3


def test_a_line_in_some_weeks_counts_its_own(programme):
    ledger = programme(text("reps: 5, load: {2: 60 kg, 3: 65 kg, again: +2.5 kg}, in weeks: 2-5"))
    held = [[one.work.load.words for one in week.visits[0].own] for week in ledger.weeks]
    assert held == [[], ["60 kg"], ["65 kg"], ["62.5 kg"], ["67.5 kg"], []]


def test_without_again_a_week_left_out_is_a_finding(findings):
    found = [one.rule for one in findings(text("reps: 5, load: {1-3: 60 kg}")) if not one.why]
    assert found == ["weeks-left-out"]


@pytest.mark.parametrize(
    ("line", "rule", "place"),
    [
        ("load: {1-6: 60 kg, again: +5 kg}", "nothing-repeats", "+5 kg"),
        ("load: {1-8: 60 kg, again: +5 kg}", "weeks-beyond", "1-8"),
        ("load: {1: 60 kg, 3: 65 kg, again: +5 kg}", "weeks-left-out", "{1: 60 kg, 3: 65 kg, again: +5 kg}"),
        ("load: {1: 60 kg, other: 65 kg, again: +5 kg}", "weeks-overlap", "+5 kg"),
        ("load: {1: 70 %, again: +5 %}", "two-readings", "+5 %"),
        ("load: {1: red band, again: +5 kg}", "step-runs-out", "+5 kg"),
        ("load: {1: 20 kg, again: -5 kg}", "step-runs-out", "-5 kg"),
        ("rir: {1: 2, again: -1}", "step-runs-out", "-1"),
        ("rir: {1: 2, again: +5 kg}", "value-unreadable", "+5 kg"),
        ("tempo: {1: 3-0-1-0, again: +1}", "value-unreadable", "+1"),
        ("load: {1: 60 kg, again: more}", "value-unreadable", "more"),
        ("load: {visit 1: 60 kg, again: +1 kg, 4: 80 kg}", "weeks-overlap", "4"),
        ("load: {visit 1-3: 60 kg, visit 3-12: 80 kg}", "weeks-overlap", "visit 3-12"),
        (
            "load: {visit 1-3: 60 kg, visit 5-12: 80 kg}",
            "weeks-left-out",
            "{visit 1-3: 60 kg, visit 5-12: 80 kg}",
        ),
        ("load: {visit 1-3: 60 kg}", "weeks-left-out", "60 kg"),
        ("load: {visits 1-14: 60 kg}", "weeks-beyond", "60 kg"),
        ("load: {1: 60 kg, again: +5 kg, again: +5 kg}", "duplicate-key", "again"),
    ],
)
def test_edges_are_one_finding_each(line, rule, place, findings):
    found = [one for one in findings(text(line)) if not one.why]
    assert [(one.rule, one.place.excerpt) for one in found] == [(rule, place)]
    assert found[0].change


# Visits


def test_values_by_visit_count_the_times_of_a_session(programme):
    ledger = programme(text("reps: 5, load: {visit 1: 40 kg, visits 2-3: 45 kg, again: +5 kg}"))
    held = [visit.own[0].work.load.words for week in ledger.weeks for visit in week.visits]
    assert held == ["40 kg", "45 kg", "45 kg", "45 kg", "50 kg", "50 kg", "50 kg", "55 kg", "55 kg", "55 kg", "60 kg", "60 kg"]  # fmt: skip


def test_sessions_in_turn_each_count_their_own_visits(programme):
    sessions = "".join(
        f"  - session: {name}\n    exercises:\n"
        f"      - {{exercise: {lift}, sets: 3, reps: 5, load: {{visit 1: {load}, again: +2.5 kg}}}}\n"
        "      - {exercise: plank, sets: 2, hold: {1: 20 s, 2: 30 s}}\n"
        for name, lift, load in (("A", "back squat", "40 kg"), ("B", "deadlift", "60 kg"))
    )
    ledger = programme(TURNS + sessions)
    held = [f"{visit.session.name} {visit.own[0].work.load.words} {visit.own[1].work.hold}" for week in ledger.weeks for visit in week.visits]  # fmt: skip
    assert held == ["A 40 kg 20", "B 60 kg 20", "A 42.5 kg 20", "B 62.5 kg 30", "A 45 kg 30", "B 65 kg 30"]


def test_visits_start_afresh_with_each_block(programme):
    block = "  - name: {}\n    weeks: 2\n    sessions:\n      - session: A\n        exercises: [{{exercise: back squat, sets: 3, load: {{visit 1: 40 kg, again: +5 kg}}}}]\n"
    ledger = programme("programme: P\nblocks:\n" + block.format("one") + block.format("two"))
    assert [week.visits[0].own[0].work.load.words for week in ledger.weeks] == ["40 kg", "45 kg"] * 2


def test_what_differs_for_an_athlete_goes_by_week(findings):
    content = text("load: 60 kg", HEAD.replace("weeks: 6", "weeks: 6\nathletes: [{athlete: {name: I}, adjust: [{exercise: back squat, load: {visit 1: 50 kg}}]}]"))  # fmt: skip
    assert [one.rule for one in findings(content) if not one.why] == ["keys-at-odds"]


@pytest.mark.parametrize("values", ["{1: 3, 2: 4, again: same}", "{1-3: 3, again: +1}"])
def test_values_that_end_before_the_line_begins_are_one_finding(values, findings):
    line = f"{{exercise: back squat, in weeks: 4-6, sets: {values}, reps: 5}}"
    text = f"programme: P\nweeks: 6\nsessions: [{{session: A, exercises: [{line}]}}]\n"
    (found,) = [one for one in findings(text) if not one.why]
    assert (found.rule, found.place.excerpt) == ("weeks-left-out", values)
    assert "No value for weeks 4-6" in found.counted
