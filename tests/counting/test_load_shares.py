"""Loads that are a share of another lift, of an RM, or of a best to work from; words, rough and open ends."""

from __future__ import annotations

import pytest

from spotline.lint.editor.explain.effort import effort_in_words
from spotline.lint.model.quantities import Range

BESTS = "back squat: 200 kg, bench press: 100 kg, clean and jerk: 120 kg, pull-up: bodyweight + 30 kg"


def text(*lines, bests=BESTS, head=""):
    athlete = f"{{name: Mara, body mass: 70 kg, best lifts: {{{bests}}}}}" if bests else "{name: Mara}"
    start = f"programme: P\nathlete: {athlete}\n{head}weeks: 2\nsessions:\n  - session: A\n    exercises:\n"
    return start + "".join(f"      - {{exercise: {line}}}\n" for line in lines)


@pytest.fixture
def group(programme):
    def run(line, **more):
        return programme(text(line, **more)).weeks[0].visits[0].own[0]

    return run


OTHER = [  # the line, kg, % of the lift's own best where that is on file
    ("pause squat, sets: 3, reps: 4, load: 65 % of squat", 130, None),
    ("pause squat, sets: 3, reps: 4, load: 65% of the Back squat", 130, None),
    ("close grip bench press, sets: 3, reps: 5, load: 70 % of bench", 70, None),
    ("front squat, sets: 3, reps: 5, load: about 75 % of clean & jerk", 90, None),
    ("bench press, sets: 3, reps: 5, load: 35 % of squat", 70, 70),
    ("lat pulldown, sets: 3, reps: 8, load: 80 % of pull-up", 10, None),
]


@pytest.mark.parametrize(("line", "kilograms", "percent"), OTHER)
def test_a_share_of_another_lift_is_worked_out_from_the_best_of_that_lift(group, line, kilograms, percent):
    entry = group(line)
    assert [one.middle for one in entry.kilograms] == [pytest.approx(kilograms)]
    assert (entry.percent.middle if entry.percent else None) == (percent and pytest.approx(percent))


def test_a_share_of_the_lift_itself_is_a_plain_percentage(group):
    for bests in (BESTS, ""):
        entry = group("back squat, sets: 3, reps: 5, load: 80 % of squat", bests=bests)
        assert entry.percent == Range(80, 80)


@pytest.mark.parametrize(
    ("line", "head", "bests", "percent"),
    [
        ("back squat, sets: 3, reps: 5, load: 80 %", "working best: 90 %\n", BESTS, 72),
        ("back squat, sets: 3, reps: 5, load: 80 % of 1RM", "working best: 90 %\n", BESTS, 80),
        ("back squat, sets: 3, reps: 5, load: 80 %, working best: 95 %", "working best: 90 %\n", BESTS, 76),
        ("back squat, sets: 3, reps: 5, load: 80 %", "working best: 90 %\n", "", 72),
        (
            "back squat, sets: 3, reps: 5, load: 80 %",
            "",
            "back squat: {load: 200 kg, working best: 85 %}",
            68,
        ),
        (
            "bench press, sets: 3, reps: 5, load: 80 %",
            "",
            "back squat: {load: 200 kg, working best: 85 %}",
            80,
        ),
        ("back squat, sets: 3, reps: 5, load: 90 % of 1RM", "", BESTS, 90),
    ],
)
def test_percentages_count_from_the_working_best(group, line, head, bests, percent):
    entry = group(line, head=head, bests=bests)
    assert entry.percent == Range(pytest.approx(percent), pytest.approx(percent))


def test_a_share_of_another_lift_counts_from_its_working_best(group):
    entry = group(
        "pause squat, sets: 3, reps: 4, load: 50 % of squat",
        bests="back squat: {load: 200 kg, working best: 90 %}",
    )
    assert entry.kilograms == [Range(90, 90)]


def test_a_share_of_an_rm_lies_below_the_rm(group):
    whole = group("back squat, sets: 3, reps: 5, load: 5RM").percent
    part = group("back squat, sets: 3, reps: 5, load: 90 % of 5RM").percent
    assert part.middle == pytest.approx(0.9 * whole.middle)
    assert group("leg curl, sets: 3, reps: 15, load: 15RM (60 %)").effort.ground == "rm"


def test_kilograms_win_over_a_percentage_beside_them(group):
    for load in ("80 % (75 kg)", "75 kg (80 %)"):
        assert group(f"bench press, sets: 3, reps: 5, load: {load}").percent == Range(75, 75)


@pytest.mark.parametrize(
    ("load", "asked"),
    [
        ("80 % (80 kg)", 0),
        ("80 % (82.5 kg)", 0),
        ("80 % (83 kg)", 1),
        ("70 kg (80 %)", 1),
        ("40 % of squat (80 kg)", 0),
        ("40 % of squat (90 kg)", 1),
    ],
)
def test_figures_more_than_a_plate_apart_are_asked_about(findings, load, asked):
    found = findings(text(f"bench press, sets: 3, reps: 5, load: {load}"))
    assert not [one for one in found if not one.why]
    found = [one for one in found if one.rule == "read-two-ways"]
    assert len(found) == asked
    if found:
        share = "40 % of squat" if "squat" in load else "80 %"
        assert "80 kg of the best on file" in found[0].counted
        assert {edit.words for edit in found[0].edits} == {share, load.replace(share, "").strip("() ")}


def test_a_load_with_no_upper_end_may_leave_nothing(group):
    assert group("bench press, sets: 3, reps: 3, load: from 60 %").reserve.low == 0
    assert group("bench press, sets: 3, reps: 3, load: 60 %").reserve.low > 5
    assert not group("bench press, sets: 3, reps: 3, load: 60 %").hard
    assert group("bench press, sets: 3, reps: 3, load: at least 60 %").hard


def test_a_load_with_no_lower_end_is_never_too_heavy(findings):
    heavy, open_ended = (f"bench press, sets: 3, reps: 12, load: {one}" for one in ("90 %", "up to 90 %"))
    assert findings(text(heavy), "more-reps-than-load-allows")
    assert not findings(text(open_ended), "more-reps-than-load-allows")


@pytest.mark.parametrize("word", ["heavy", "Light", "moderate to heavy", "empty bar", "very light"])
def test_nothing_is_worked_out_of_words(group, findings, word):
    line = f"bench press, sets: 3, reps: 8, load: {word}"
    entry = group(line)
    assert (entry.percent, entry.kilograms, entry.measured) == (None, [], {})
    assert not [
        one for one in findings(text(line)) if one.rule in ("load-and-effort-missing", "nothing-changes")
    ]


def test_a_share_of_body_mass_with_something_on_top(group, programme):
    line = "walking lunge, sets: 3, reps: 10, load: {1: 20 % bodyweight, 2: +5 kg}"
    weeks = [week.visits[0].own[0] for week in programme(text(line)).weeks]
    assert [entry.work.load.words for entry in weeks] == ["20 % bodyweight", "20 % bodyweight + 5 kg"]
    assert weeks[1].kilograms == [Range(19, 19)]


# Bad input: one clear finding each


def only(findings, content):
    return [one for one in findings(content) if one.rule in ("best-lift-missing", "lift-of-load-unknown")]


@pytest.mark.parametrize(("lift", "words"), [("deadlift", "70 % of deadlift"), ("row", "70 % of row")])
def test_a_share_of_a_lift_without_a_best_is_one_finding(findings, lift, words):
    (found,) = only(findings, text(f"front squat, sets: 3, reps: 5, load: 70 % of {lift}"))
    assert found.rule == "best-lift-missing"
    assert found.counted.startswith(f"{words}, but no best on file for Mara")
    assert found.place.excerpt == words


@pytest.mark.parametrize(("lift", "meant"), [("sqaut", "back squat"), ("back sqat", "back squat")])
def test_a_share_of_a_lift_that_nobody_knows_is_one_finding(findings, lift, meant):
    (found,) = only(findings, text(f"front squat, sets: 3, reps: 5, load: 70 % of {lift}", bests=""))
    assert found.rule == "lift-of-load-unknown"
    assert found.edits[0].words == f"70 % of {meant}"


@pytest.mark.parametrize("load", ["80 % (5)", "80 % (85 %)", "80 % of", "5RM (3RM)", "heavy 5"])
def test_what_is_no_load_is_one_finding(findings, load):
    found = [one for one in findings(text(f"front squat, sets: 3, reps: 5, load: {load}")) if not one.why]
    assert [one.rule for one in found] == ["value-unreadable"]


@pytest.mark.parametrize("share", ["5 %", "110 %", "90", "85-90 %"])
def test_a_working_best_is_a_share_from_10_to_100_percent(findings, share):
    found = [one for one in findings(text("squat, sets: 3", head=f"working best: {share}\n")) if not one.why]
    assert len(found) == 1
    assert found[0].place.excerpt == share


# Effort


@pytest.mark.parametrize(
    ("key", "low", "high"),
    [
        ("rir: 3+", 3, 10),
        ("rir: at least 2", 2, 10),
        ("rir: up to 2", 0, 2),
        ("rir: 1/1/0", 0, 1),
        ("rpe: up to 8.5", 1, 6),
        ("rpe: 7/8/9", 1, 3),
    ],
)
def test_an_effort_with_an_open_end_is_a_range(group, key, low, high):
    assert group(f"bench press, sets: 3, reps: 8, {key}").reserve == Range(low, high)


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("sets: 3, reps: 8, rir: 2/1/0", 0),
        ("sets: 4, reps: 8, rir: 2/1/0", 1),
        ("sets: 2, reps: 8, rpe: 7/8/9", 1),
    ],
)
def test_an_effort_for_each_set_is_for_as_many_sets_as_there_are(findings, line, told):
    found = [one for one in findings(text(f"bench press, {line}")) if not one.why]
    assert [one.rule for one in found] == ["keys-at-odds"] * told


def test_an_effort_is_shown_as_it_is_written(group):
    assert str(group("bench press, sets: 3, reps: 8, rir: 3 +").work.rir) == "3+"
    assert str(group("bench press, sets: 3, reps: 8, rpe: <= 8").work.rpe) == "up to 8"


# In the editor


@pytest.fixture(scope="module")
def steps():
    from spotline.lint.editor.explain.effort import LoadSteps

    made = LoadSteps.__new__(LoadSteps)
    made._steps = {}
    return made


@pytest.mark.parametrize(
    ("line", "head", "said"),
    [
        (
            "pause squat, sets: 3, reps: 4, load: 65 % of squat",
            "",
            "**130 kg** (best on file: back squat 200 kg)",
        ),
        ("bench press, sets: 3, reps: 5, load: 80 %", "working best: 90 %\n", "80 %, about 72 % = **72 kg**"),
        ("front squat, sets: 3, reps: 5, load: 70 % of deadlift", "", "no best deadlift on file"),
        ("walking lunge, sets: 3, reps: 10, load: 20 % bodyweight + 5 kg", "", "**19 kg** (body mass 70 kg)"),
    ],
)
def test_hovering_over_a_load_shows_kilograms(group, steps, line, head, said):
    assert said in effort_in_words(group(line, head=head), steps)


def test_of_nobody_no_share_is_known(programme):
    line = "      - {exercise: pause squat, sets: 3, reps: 4, load: 65 % of squat}\n"
    ledger = programme(f"programme: P\nsessions:\n  - session: A\n    exercises:\n{line}")
    assert ledger.weeks[0].visits[0].own[0].kilograms == []
