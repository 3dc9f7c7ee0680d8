"""Loads and effort of a line at their edges, what goes on the bar, and what a header says of kit, growth and dates."""

from __future__ import annotations

from datetime import date

import pytest

from spotline.lint.body import catalogue
from spotline.lint.body.restrictions import Spared
from spotline.lint.counting.change import Change, slip_in, typed_for, weeks_of_lines
from spotline.lint.counting.loading import PLATES, Loading, loading, plates
from spotline.lint.counting.not_loaded import NotLoaded
from spotline.lint.counting.team_resources import TeamResources
from spotline.lint.counting.unknown import is_unknown, meant_by, slip_of
from spotline.lint.model.quantities import Range

LIFTS = (
    "back squat: 200 kg, front squat: 150 kg, deadlift: {load: 160 kg, reps: 5},"
    " pull-up: bodyweight + 20 kg, dumbbell bench press: 2 x 40 kg, clean: 220 lb, box jump: 100 kg"
)


@pytest.fixture(scope="module")
def line(programme, week):
    """One line of an athlete of 80 kg with best lifts on file."""

    def run(words, mass="80 kg", lifts=LIFTS, head=""):
        about = [f"body mass: {mass}"] * bool(mass) + [f"best lifts: {{{lifts}}}"] * bool(lifts)
        who = f"athlete: {{{', '.join(['name: Bo', *about])}}}\n{head}".rstrip()
        return programme(week({"Gym": [words]}, who)).weeks[0].visits[0].own[0]

    return run


# What a line is


@pytest.mark.parametrize(
    ("words", "slot"),
    [
        ("back squat, sets: 3, reps: 7", "heavy"),
        ("back squat, sets: 3, reps: 8", "light"),
        ("back squat, sets: 3, reps: 7-8", "heavy"),
        ("back squat, sets: 3, reps: 7-9", "light"),
        ("back squat, sets: 3, load: 7RM", "heavy"),
        ("back squat, sets: 3, load: 8RM", "light"),
        ("back squat, sets: 3, reps: 3, load: 12RM", "heavy"),
        ("back squat, sets: 3, load: 80 kg", ""),
        ("back squat, sets: 3", ""),
    ],
)
def test_heavy_and_light(line, words, slot):
    assert line(words).slot == slot


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("back squat, sets: 3, reps: 5, tempo: 3-0-X-0", True),
        ("back squat, sets: 3, reps: 5, tempo: 3-X-1-X", False),
        ("back squat, sets: 3, reps: 5, tempo: 3-0-1-0", False),
        ("back squat, sets: 3, reps: 5", False),
    ],
)
def test_fast_is_a_lifting_phase_as_fast_as_possible(line, words, said):
    assert line(words).fast_tempo is said


@pytest.mark.parametrize(
    ("words", "side"),
    [("left", "left"), ("right", "right"), ("each", "")],
)
def test_a_side_is_one_of_the_two(line, words, side):
    assert line(f"step-up, sets: 3, reps: 5, side: {words}").side == side


@pytest.mark.parametrize(
    ("words", "implement"),
    [
        ("back squat, sets: 3", "barbell"),
        ("dumbbell row, sets: 3", "dumbbell"),
        ("moon walk, sets: 3", ""),
    ],
)
def test_what_is_lifted(line, words, implement):
    assert line(words).implement == implement


@pytest.mark.parametrize(
    ("words", "broken", "lowers", "one_go"),
    [
        ("back squat, sets: 3, reps: 5", False, False, True),
        ("back squat, sets: 3, reps: 2+2", True, False, False),
        ("back squat, sets: 3, reps: 5, method: cluster", True, False, False),
        ("back squat, sets: 3, reps: 5, method: drop set", True, False, False),
        ("back squat, sets: 3, reps: 5, method: rest-pause", True, False, False),
        ("back squat, sets: 3", False, False, True),
        ("lowering-only Nordic curl, sets: 3, reps: 5", False, True, False),
        ("eccentric lying leg curl, sets: 3, reps: 5", False, True, False),
        ("negative pull-up, sets: 3, reps: 5", False, True, False),
        ("box jump, sets: 3, reps: 5", False, False, False),
        ("plank, sets: 3", False, False, False),
        ("moon walk, sets: 3, reps: 5", False, False, False),
    ],
)
def test_whether_a_set_is_lifted_in_one_go(line, words, broken, lowers, one_go):
    group = line(words)
    assert (group.broken_up, group.lowers_only, group.in_one_go) == (broken, lowers, one_go)


@pytest.mark.parametrize(
    ("words", "compound"),
    [
        ("back squat, sets: 3", True),
        ("lunge, sets: 3", True),
        ("leg extension, sets: 3", False),
        ("barbell curl, sets: 3", False),
        ("moon walk, sets: 3", False),
    ],
)
def test_several_joints(line, words, compound):
    assert line(words).compound is compound


@pytest.mark.parametrize(
    ("words", "failing"),
    [
        ("sets: 3, reps: amrap", True),
        ("sets: 3, reps: 5+", True),
        ("sets: 3, reps: 5+, rir: 1", False),
        ("sets: 3, reps: 5+, rpe: 9", False),
        ("sets: 3, reps: 5, rir: 0", True),
        ("sets: 3, reps: 5", False),
        ("sets: 3", False),
    ],
)
def test_what_goes_to_failure(line, words, failing):
    assert line(f"back squat, {words}", lifts="").to_failure is failing


@pytest.mark.parametrize(
    ("words", "hard"),
    [
        ("rowing machine, sets: 3, reps: 5, rir: 0", None),
        ("box jump, sets: 3, reps: 3, rir: 0", False),
        ("power clean, sets: 3, reps: 3", False),
        ("power clean, sets: 3, reps: 3, rir: 5", True),
        ("power clean, sets: 3, reps: 3, rir: 6", False),
        ("back squat, sets: 3, reps: 3, rir: 6", False),
        ("back squat, sets: 3, reps: 3, rir: 5", True),
        ("moon walk, sets: 3, reps: 3", True),
    ],
)
def test_hard_sets(line, words, hard):
    if hard is not None:
        assert line(words, lifts="").hard is hard


@pytest.mark.parametrize(
    ("words", "stated", "written"),
    [
        ("rir: 2", True, Range(2, 2)),
        ("rpe: 8", True, Range(2, 2)),
        ("rpe: 3", True, None),
        ("load: 8RM", False, None),
        ("load: 80 %", False, None),
    ],
)
def test_effort_that_the_coach_wrote(line, words, stated, written):
    group = line(f"back squat, sets: 3, reps: 5, {words}", lifts="")
    assert (group.stated_effort, group.written_reserve) == (stated, written)


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("sets: 1, reps: 5, load: 80 %", "worked out from 80 % and 5 repetitions"),
        ("sets: 1, reps: 1, load: 90 %", "worked out from 90 % and 1 repetition"),
        ("sets: 1, load: 8RM", "worked out from 8RM"),
        ("sets: 1, reps: 5, load: 80 %, rir: 2", ""),
        ("sets: 1, reps: 5, load: red band", ""),
        ("sets: 1, reps: 5", ""),
    ],
)
def test_where_effort_was_worked_out(line, words, said):
    assert line(f"back squat, {words}", lifts="").worked_out_in_words == said


def test_within_a_complex_other_lifts_leave_less(programme):
    text = (
        "programme: T\nsessions:\n  - session: A\n    exercises:\n"
        "      - {complex: [{exercise: front squat, reps: 3}, {exercise: overhead press, reps: 2}], sets: 1, load: %s}\n"
    )
    squat, press = programme(text % "10RM").weeks[0].visits[0].own
    # 5 together: the squat leaves 7 of 10 by itself, and 5 after the presses
    assert (squat.reserve, press.reserve) == (Range(5, 7), None)
    loose = programme(text % "40 kg").weeks[0].visits[0].own[0]
    assert loose.worked_out is None


@pytest.mark.parametrize(
    ("words", "sure", "done"),
    [
        ("back squat, sets: 3, reps: 5", True, True),
        ("back squat, sets: {1: 0}, reps: 5", True, False),
        ("back squat, sets: {1: 0-1}, reps: 5", True, True),
        ("moon walk, sets: 3, reps: 5", False, True),
    ],
)
def test_whether_a_line_is_sure_and_done(line, words, sure, done):
    group = line(words)
    assert (group.sure, group.is_done) == (sure, done)


def test_a_line_that_is_no_lift_is_sure(programme):
    text = "programme: T\nsessions:\n  - session: A\n    exercises: [{own choice: trunk, minutes: 10}]\n"
    (group,) = programme(text).weeks[0].visits[0].own
    assert (group.sure, group.sets.high, group.reps, group.exercise) == (True, 0, None, None)


def test_what_a_line_trains(line):
    curl = line("seated leg curl, sets: 3")
    assert curl.trains(["knee flexion"])
    assert curl.trains(["hip hinge", "knee flexion"])
    assert not curl.trains(["hip hinge"])
    assert not line("moon walk, sets: 3").trains(["knee flexion"])


# Loads in kg and in %


@pytest.mark.parametrize(
    ("words", "kilograms", "percent"),
    [
        ("back squat, sets: 3, load: 150 kg", [(150, 150)], (75, 75)),
        ("back squat, sets: 2, load: 140/150 kg", [(140, 140), (150, 150)], (70, 75)),
        ("back squat, sets: 3, load: 80 %", [], (80, 80)),
        ("back squat, sets: 3, load: 75 % of squat", [(150, 150)], (75, 75)),
        ("front squat, sets: 3, load: 60 % of squat", [(120, 120)], (80, 80)),
        ("pause squat, sets: 3, load: 60 % of squat", [(120, 120)], None),
        ("pause squat, sets: 3, load: 60 % of leg press", [], None),
        ("pull-up, sets: 3, load: bodyweight", [(80, 80)], (80, 80)),
        ("pull-up, sets: 3, load: bodyweight + 10 kg", [(90, 90)], (90, 90)),
        ("back squat, sets: 3, load: 50 % bodyweight", [(40, 40)], (20, 20)),
        ("back squat, sets: 3, load: 50 % bodyweight + 10 kg", [(50, 50)], (25, 25)),
        ("pull-up, sets: 3, load: 50 % bodyweight", [], None),  # of what, nobody can say
        ("dumbbell bench press, sets: 3, load: 2 x 30 kg", [(60, 60)], (75, 75)),
        ("leg press, sets: 3, load: 100 kg", [(100, 100)], None),
        ("back squat, sets: 3, load: red band", [], None),
        ("back squat, sets: 3", [], None),
    ],
)
def test_a_load_in_kilograms_and_in_percent(line, words, kilograms, percent):
    group = line(words)
    assert [one.ends for one in group.kilograms] == [pytest.approx(ends) for ends in kilograms]
    assert (None if group.percent is None else group.percent.ends) == (percent and pytest.approx(percent))


@pytest.mark.parametrize("words", ["bodyweight", "bodyweight + 10 kg", "50 % bodyweight"])
def test_without_a_body_mass_a_share_of_it_is_no_number(line, words):
    group = line(f"back squat, sets: 3, load: {words}", mass="")
    assert (group.kilograms, group.percent) == ([], None)
    assert group.measured == ({"share": 50} if "%" in words else {})


def test_the_strongest_of_two_best_lifts(line):
    two = "back squat: 150 kg, Squats: {load: 140 kg, reps: 8}"
    strongest = line("back squat, sets: 3", lifts=two).strongest
    assert strongest is not None
    assert (strongest[0].reps, strongest[1] > 150) == (8, True)


@pytest.mark.parametrize(
    ("words", "measured"),
    [
        ("back squat, sets: 3, load: 150 kg", {"mass": 150, "percent": 75}),
        ("pull-up, sets: 3, load: bodyweight + 10 kg", {"mass with the body": 90, "percent": 90}),
        ("leg press, sets: 3, load: 20 % bodyweight", {"mass": 16, "share": 20}),
        ("leg press, sets: 3, load: 20 % bodyweight + 4 kg", {"mass": 20}),
        ("pause squat, sets: 3, load: 60 % of squat", {"mass": 120}),
        ("pause squat, sets: 3, load: 60 % of leg press", {}),
        ("back squat, sets: 3, load: 8RM", {}),
    ],
)
def test_the_units_in_which_a_load_is_compared(line, words, measured):
    assert line(words).measured == pytest.approx(measured)


@pytest.mark.parametrize(
    ("best", "known"),
    [("{load: 100 kg, reps: 1}", True), ("{load: 100 kg, reps: 25}", False), ("bodyweight + 20 kg", False)],
)
def test_a_best_lift_that_the_curve_or_the_body_mass_leaves_open_is_none(line, best, known):
    group = line("back squat, sets: 3, load: 50 kg", mass="", lifts=f"back squat: {best}")
    assert (group.strongest is not None, group.percent is not None) == (known, known)


# What goes on the bar


def test_who_lifts_the_body_alone_takes_help_in_kilograms(line):
    found = loading(line("pull-up, sets: 3, load: 90 %", lifts="pull-up: bodyweight"), {})
    assert found is not None
    assert ([str(one) for one in found.values], found.unit, found.added) == (["-8"], "kg", True)


@pytest.mark.parametrize(
    ("words", "values", "unit", "pieces", "step", "rounded", "estimated", "added"),
    [
        ("back squat, sets: 3, load: 61 %", ["120"], "kg", 1, 2.5, True, False, False),
        ("back squat, sets: 3, load: 61.25 %", ["122.5"], "kg", 1, 2.5, True, False, False),
        ("deadlift, sets: 3, load: 50 %", ["87.5"], "kg", 1, 2.5, True, True, False),
        ("clean, sets: 3, load: 80 %", ["175"], "lb", 1, 5, True, False, False),
        ("dumbbell bench press, sets: 3, load: 80 %", ["32"], "kg", 2, 2, True, False, False),
        ("pull-up, sets: 3, load: 95 %", ["15"], "kg", 1, None, True, False, True),
        ("front squat, sets: 3, load: 61 % of squat", ["120"], "kg", 1, 2.5, True, False, False),
        ("front squat, sets: 3, load: 50 % of deadlift", ["87.5"], "kg", 1, 2.5, True, True, False),
        ("back squat, sets: 3, load: 26 % bodyweight", ["20"], "kg", 1, 2.5, True, False, False),
        ("back squat, sets: 3, load: 25 % bodyweight", ["20"], "kg", 1, 2.5, True, False, False),  # to the point
        ("back squat, sets: 3, load: 61 kg", ["61"], "kg", 1, None, False, False, False),
        ("back squat, sets: 3, load: 135 lb", ["135"], "lb", 1, None, False, False, False),
        ("pull-up, sets: 3, load: bodyweight + 7 kg", ["7"], "kg", 1, None, False, False, True),
        ("back squat, sets: 3, load: 1 %", ["2"], "kg", 1, None, True, False, False),  # below the first step
        ("back squat, sets: 3, load: 1-2 %", ["2-4"], "kg", 1, None, True, False, False),
        ("back squat, sets: 2, load: 1/61.3 %", ["2", "122.6"], "kg", 1, None, True, False, False),  # one set is
        ("back squat, sets: 3, load: 0.63-0.88 %", ["1.3-1.8"], "kg", 1, None, True, False, False),  # 1.26, 1.76
        ("pull-up, sets: 3, load: bodyweight", ["0"], "kg", 1, None, False, False, True),
        ("pull-up, sets: 3, load: 80-85.5 %", ["0-5"], "kg", 1, None, True, False, True),  # 80 to 85.5 of 100 kg
    ],
)  # fmt: skip
def test_what_is_loaded(line, words, values, unit, pieces, step, rounded, estimated, added):
    found = loading(line(words), {})
    assert found is not None
    assert [str(one) for one in found.values] == values
    assert (found.unit, found.pieces, found.step) == (unit, pieces, step)
    assert (found.rounded, found.estimated, found.added) == (rounded, estimated, added)


@pytest.mark.parametrize(
    "words",
    [
        "back squat, sets: 3",
        "back squat, sets: 3, load: 8RM",
        "back squat, sets: 3, load: heavy",
        "back squat, sets: 3, load: 90 % of 25RM",  # further than the curve goes
        "leg press, sets: 3, load: 80 %",
        "dumbbell row, sets: 3, load: 20 % of squat",  # nobody can say how hands share it
        "kettlebell swing, sets: 3, load: 20 % of squat",
        "front squat, sets: 3, load: 60 % of leg press",
    ],
)
def test_what_comes_to_no_weight(line, words):
    assert loading(line(words), {}) is None


def test_a_share_of_a_lift_of_the_body_alone_is_help_in_kilograms(line):
    found = loading(line("chin-up, sets: 3, load: 90 % of pull-up", lifts="pull-up: bodyweight"), {})
    assert found is not None
    assert ([str(one) for one in found.values], found.unit, found.added) == (["-8"], "kg", True)


@pytest.mark.parametrize(
    "words", ["deadlift, sets: 3, load: 50 %", "front squat, sets: 3, load: 50 % of deadlift"]
)
@pytest.mark.parametrize(("reps", "estimated"), [(1, False), (2, True)])
def test_a_best_of_more_than_one_repetition_is_an_estimate(line, words, reps, estimated):
    found = loading(line(words, lifts=f"deadlift: {{load: 160 kg, reps: {reps}}}"), {})
    assert found is not None
    assert found.estimated is estimated


def test_a_loading_is_what_is_said_of_it_alone():
    one = Loading((Range(60, 60),), "kg", 1)
    assert (one.added, one.rounded, one.step, one.estimated) == (False, False, None, False)


@pytest.mark.parametrize(
    ("unit", "weight", "sides"),
    [
        ("kg", 20, ()),
        ("kg", 19.5, None),
        ("kg", 20.5, (0.25,)),
        ("kg", 20.4, None),
        ("kg", 70, (25,)),
        ("kg", 69.5, (20, 2.5, 1.25, 0.5, 0.5)),
        ("kg", 170, (25, 25, 25)),
        ("kg", 60, (20,)),
        ("kg", 50, (15,)),
        ("kg", 40, (10,)),
        ("kg", 30, (5,)),
        ("kg", 25, (2.5,)),
        ("kg", 22.5, (1.25,)),
        ("kg", 21, (0.5,)),
        ("lb", 45, ()),
        ("lb", 135, (45,)),
        ("lb", 115, (35,)),
        ("lb", 95, (25,)),
        ("lb", 65, (10,)),
        ("lb", 55, (5,)),
        ("lb", 50, (2.5,)),
        ("lb", 47, None),
    ],
)
def test_plates_on_each_side(unit, weight, sides):
    assert plates(weight, unit) == sides
    assert all(plate in PLATES[unit] for plate in sides or ())


# How a week differs from another


@pytest.fixture(scope="module")
def changed(programme, week):
    def run(*lines):
        first, second = programme(week({"Gym": list(lines)}, "weeks: 2")).weeks
        return Change(first, second)

    return run


LIMITS = {"volume": 40, "load": 10, "reserve": 2}


@pytest.mark.parametrize(
    ("words", "comes"),
    [
        ("sets: {1: 10, 2: 6}, reps: 5, load: 100 kg", True),  # 40 % fewer
        ("sets: 3, reps: {1: 50, 2: 31}, load: 20 kg", True),  # 38 %: a hair less
        ("sets: 3, reps: {1: 50, 2: 32}, load: 20 kg", False),
        ("sets: 5, reps: {1: 10, 2: 6}, load: 100 kg", True),
        ("sets: 5, reps: 5, load: {1: 100 kg, 2: 90 kg}", True),
        ("sets: 5, reps: 5, load: {1: 100 kg, 2: 91 kg}", False),
        ("sets: 5, reps: 5, load: {1: 200 kg, 2: 181 kg}", True),  # 9.5 %
        ("sets: 5, reps: 5, rir: {1: 1, 2: 3}", True),
        ("sets: 5, reps: 5, rir: {1: 1, 2: 2}", False),
        ("sets: {1: 10, 2: 8}, reps: 5, load: {1: 100 kg, 2: 95 kg}", True),  # half of each
        ("sets: {1: 10, 2: 8}, reps: 5, load: {1: 100 kg, 2: 98 kg}", False),
        ("sets: {1: 10, 2: 8}, reps: 5, rir: {1: 1, 2: 2}", True),
        ("sets: {1: 10, 2: 12}, reps: 5, load: {1: 100 kg, 2: 90 kg}", True),  # more sets take nothing off
        ("sets: {1: 10, 2: 6}, reps: 5, load: {1: 100 kg, 2: 120 kg}", True),
        ("sets: 2, reps: {1: 50/50, 2: 32/31}, load: 20 kg", False),  # 37 %
        ("sets: {1: 10, 2: 6}, load: 100 kg", True),  # repetitions are left open
        ("sets: {1: 10, 2: 8}, reps: 5", False),  # half of it, and nothing is known of load and effort
        ("sets: {1: 0, 2: 8}, reps: 5", False),
        ("sets: 5, reps: 5", False),
    ],
)
def test_falls_that_come_together_to_what_one_alone_should(changed, words, comes):
    assert changed(f"leg press, {words}").comes_to(**LIMITS) is comes


def test_parts_of_a_change(changed):
    change = changed(
        "back squat, sets: {1: 4, 2: 2}, reps: 5, load: {1: 100 kg, 2: 80 kg}, rir: {1: 1, 2: 3}",
        "leg press, sets: {1: 3, 2: 0}, reps: 8, rir: 8",
        "dip, sets: {1: 0, 2: 6}, reps: 4",
    )
    squat, others = change.parts
    assert change.parts is change.parts  # they are put together once
    assert (squat.hard, squat.sets, squat.repetitions, squat.load, squat.reserve) == (4, 50, 50, 80, 2)
    assert (others.hard, others.sets, others.repetitions) == (0, 200, 100)
    assert (others.load, others.reserve, others.alike, squat.alike) == (None, None, False, True)
    assert (squat.is_none, change.load, change.reserve) == (False, 80, 2)


def test_of_lifts_that_stand_in_one_week_alone_neither_load_nor_reserve_is_compared(changed):
    change = changed(
        "leg press, sets: {1: 3, 2: 0}, reps: 8, rir: 3, load: 100 kg",
        "dip, sets: {1: 0, 2: 6}, reps: 4, rir: 1, load: 10 kg",
    )
    (others,) = change.parts
    assert (others.load, others.reserve, change.load, change.reserve) == (None, None, None, None)


def test_what_is_new_alone_is_no_part(changed):
    change = changed("back squat, sets: 4", "dip, sets: {1: 0, 2: 6}, reps: 4")
    assert [part.alike for part in change.parts] == [True]


@pytest.mark.parametrize(
    ("before", "value", "after", "meant"),
    [
        (60, 59, 70, None),  # 95 is too much
        (60, 56, 65, 65),
        (65, 56, 70, 65),
        (60, 60, 70, None),
        (60, 61, 70, None),
        (100, 10, 110, 100),
        (100, 11, 110, 110),
        (40, 14, 140, 41),
    ],
)
def test_what_a_number_may_be_a_slip_for(before, value, after, meant):
    assert typed_for(before, value, after) == meant


@pytest.mark.parametrize(
    ("loads", "slip"),
    [
        ("{1: 60 kg, 2: 56 kg, 3: 70 kg}", (65, 70)),
        ("{1: 135 lb, 2: 104 lb, 3: 145 lb}", (140, 145)),
        ("{1: 60 kg, 2: 56 lb, 3: 70 kg}", None),
        ("{1: 60 kg, 2: 55-56 kg, 3: 70 kg}", None),
        ("{1: 2 x 60 kg, 2: 56 kg, 3: 70 kg}", None),
        ("{1: 60 %, 2: 56 %, 3: 70 %}", (65, 70)),
        ("{1: 60 kg, 2: 61 kg, 3: 70 kg}", None),
    ],
)
def test_a_load_that_may_be_a_slip(programme, week, loads, slip):
    ledger = programme(week({"Gym": [f"leg press, sets: 3, reps: 5, load: {loads}"]}, "weeks: 3"))
    assert slip_in(*(one.visits[0].own[0] for one in ledger.weeks)) == slip


def test_a_line_from_week_to_week(programme, week):
    days = {
        "monday Push": ["dip, sets: {1: 3, 2: 0}", "moon walk, sets: 2", "dip, sets: 1"],
        "thursday Push": ["dip, sets: 9"],
        "friday Pull": ["Dips, sets: 2"],
    }
    ledger = programme(week(days, "weeks: 2"))
    lines = [[(one.number, group.sets.high) for one, group in held] for held in weeks_of_lines(ledger.weeks)]
    assert lines == [[(1, 3)], [(1, 2), (2, 2)], [(1, 1), (2, 1)], [(1, 2), (2, 2)]]


def test_names_that_nobody_knows_and_slips_of_those_that_are(reviewed, week):
    (one,) = reviewed(week({"Gym": ["moon walk, sets: 2", "seated leg crul, sets: 2", "dip, sets: 2"]})).files
    walk, slip, dip = one.ledger.weeks[0].visits[0].own
    known = {}
    assert [is_unknown(group, known) for group in (walk, slip, dip)] == [True, False, False]
    assert slip_of(slip, known) is catalogue.exercise("seated leg curl")
    assert [exercise.name for exercise in meant_by([walk, slip, dip])] == ["seated leg curl", "dip"]


# What the header says


@pytest.mark.parametrize(
    ("level", "weeks", "growth"),
    [
        ("", 1, 1.0),
        ("", 11, 1.3),
        ("level: novice", 11, 1.8),
        ("level: intermediate", 11, 1.3),
        ("level: advanced", 11, 1.2),
        ("level: advanced", 2, 1.02),
    ],
)
def test_by_how_much_a_best_lift_may_grow(programme, week, level, weeks, growth):
    who = f"athlete: {{name: Bo{', ' + level if level else ''}}}\nweeks: {weeks}"
    assert programme(week({"Gym": ["plank, sets: 1"]}, who)).header.growth == pytest.approx(growth)


@pytest.mark.parametrize(
    ("when", "starts", "days"),
    [
        # weeks begin on 5, 12 and 19 January; day 3 is a Wednesday
        ("", "", [(1, 0, True), (3, 7, True)]),
        ("in weeks: 2, ", "2026-01-05", [(1, 0, False), (2, 0, True), (2, 7, True), (3, 0, False)]),
        ("in weeks: 1+3, ", "2026-01-05", [(1, 0, True), (2, 0, False), (3, 0, True)]),
        ("from: 2026-01-14, ", "2026-01-05", [(1, 0, False), (2, 0, True), (2, 2, False), (2, 3, True), (3, 1, True)]),
        ("until: 2026-01-14, ", "2026-01-05", [(1, 0, True), (2, 0, True), (2, 3, True), (2, 4, False), (3, 0, False)]),
        ("from: 2026-01-18, ", "2026-01-05", [(2, 0, True), (2, 6, False), (2, 7, True)]),
        ("until: 2026-01-12, ", "2026-01-05", [(2, 0, True), (2, 1, True), (2, 2, False)]),
        ("from: 2026-01-25, ", "2026-01-05", [(2, 0, False), (3, 0, True), (3, 6, False)]),  # the last day
        ("from: 2026-01-26, ", "2026-01-05", [(3, 0, False)]),
        ("until: 2026-01-05, ", "2026-01-05", [(1, 0, True), (1, 1, True), (1, 2, False), (2, 0, False)]),
        ("until: 2026-01-04, ", "2026-01-05", [(1, 0, False), (1, 1, False)]),
        ("until: 2026-01-05, ", "", [(1, 0, True), (3, 0, True)]),  # not over today
        ("until: 2026-01-04, ", "", [(1, 0, False)]),
        ("from: 2026-03-01, ", "", [(1, 0, True)]),
    ],
)  # fmt: skip
def test_when_a_restriction_holds(programme, week, when, starts, days):
    protect = f"{{area: knee, {when}advised by: physician}}"
    head = f"athlete: {{name: Bo, protect: [{protect}]}}\nweeks: 3" + (
        f"\nstarts: {starts}" if starts else ""
    )
    header = programme(week({"Gym": ["plank, sets: 1"]}, head)).header
    (one,) = header.athlete.protect
    assert [header.is_spared(one, number, day) for number, day, _ in days] == [holds for *_, holds in days]
    assert header.spared() == ([one] if any(holds for *_, holds in days) else [])


@pytest.mark.parametrize(
    ("head", "serves"),
    [
        ("", False),
        ("athlete: {name: Bo}", False),
        ("athlete: {name: Bo, age: 17}", True),
        ("athlete: {name: Bo, age: 18}", False),
        ("athlete: {name: Bo, sport: rowing}", True),
        ("athlete: {name: Bo, age: 30, sport: rowing}", True),
        ("events: [{event: regatta, date: 2026-02-01}]", True),
        ("phase: in-season", True),
        ("phase: return", True),
        ("phase: build", False),
    ],
)
def test_a_sport_an_event_a_return_or_a_youth_says_what_for(programme, week, head, serves):
    assert programme(week({"Gym": ["plank, sets: 1"]}, head)).header.serves_else is serves


def test_a_team_that_has_stated_nothing_trains_at_no_time_and_is_not_screened():
    team = TeamResources()
    assert (team.together, team.screened) == (0, False)


def test_what_is_spared_is_asked_once_of_each_exercise(programme, week, monkeypatch):
    who = "athlete: {name: Bo, protect: [{movement: jumping, %s}, {area: knee, %s}]}" % (
        ("advised by: physician",) * 2
    )
    header = programme(week({"Gym": ["plank, sets: 1"]}, who)).header
    spared = NotLoaded(header.spared(), header.known)
    lifts = [catalogue.exercise(name) for name in ("back squat", "box jump", "barbell curl")]
    told = [spared.loaded_by(lift) for lift in lifts]
    assert told == ["knee", "jumping", ""]
    monkeypatch.setattr(Spared, "suits", None)
    assert [spared.loaded_by(lift) for lift in lifts] == told


def test_without_an_athlete_nothing_is_on_file(programme, week):
    header = programme(week({"Gym": ["plank, sets: 1"]})).header
    assert (header.level, header.body_mass, header.spared(), header.equipment) == ("", None, [], None)
    assert (header.kit("gym"), header.listed(), header.listed("gym"), header.stocks()) == (None, (), (), ())
    assert header.stock("dumbbell") is None


def test_the_kit_of_a_place_is_the_athletes_own_or_else_the_teams(programme, week):
    who = "athlete: {name: Bo, equipment: [Barbell], places: {Hotel: [dumbbells], gym: [rack, bag]}}"
    settings = {"spotline.yaml": "places: {gym: [sled], hut: [Box]}\nequipment: {bag: [band, mat]}\n"}
    header = programme(week({"Gym": ["plank, sets: 1"]}, who), settings).header
    assert header.pieces() == header.equipment == {"barbell"}
    assert header.pieces("hotel") == {"dumbbells"}
    assert header.pieces("GYM") == {"rack", "band", "mat"}
    assert header.pieces("hut") == {"box"}
    assert header.pieces("moon") is None
    assert [one.words for one in header.listed("hut")] == ["Box"]
    assert header.listed("moon") == ()


def test_what_there_is_of_a_piece_in_the_teams_sets(programme, week):
    settings = {
        "spotline.yaml": "equipment: {bag: [{dumbbells: {up to: 10 kg}}, mat]}\nplaces: {hut: [bag, box]}\n"
    }
    header = programme(
        week({"Gym": ["plank, sets: 1"]}, "athlete: {name: Bo, equipment: [bag]}"), settings
    ).header
    assert [[one.most for one in header.stocks(place)] for place in ("", "hut", "moon")] == [[10], [10], []]
    alone = programme(
        week({"Gym": ["plank, sets: 1"]}, "athlete: {name: Bo, equipment: [mat]}"), settings
    ).header
    assert alone.stock("dumbbell") is None


@pytest.mark.parametrize(
    ("where", "place", "pieces"),
    [
        ("", "", {"barbell"}),
        ("where: hotel", "hotel", {"dumbbells"}),
        ("where: {1-2: hotel}", "hotel", {"dumbbells"}),
        ("where: {2: hotel}", "", {"barbell"}),
    ],
)
def test_where_it_takes_place_throughout_says_what_there_is(programme, week, where, place, pieces):
    head = f"athlete: {{name: Bo, equipment: [barbell], places: {{hotel: [dumbbells]}}}}\nweeks: 2\n{where}"
    header = programme(week({"Gym": ["plank, sets: 1"]}, head)).header
    assert (header.usual_place, header.equipment) == (place, pieces)


def test_what_there_is_of_a_piece(programme, week):
    who = "athlete: {name: Bo, equipment: [{dumbbells: {from: 4 kg, up to: 20 kg}}, band], places: {hotel: [{kettlebells: {up to: 12 kg}}]}}"
    header = programme(week({"Gym": ["plank, sets: 1"]}, who)).header
    dumbbells = header.stock("dumbbell")
    assert dumbbells is not None
    assert (dumbbells.least, dumbbells.most) == (4, 20)
    assert header.stock("barbell") is None
    assert header.stock("dumbbell", "moon") is None
    bells = header.stock("kettlebell", "hotel")
    assert bells is not None
    assert (bells.least, bells.most) == (None, 12)


def test_a_name_that_nobody_knows_is_folded(programme, week):
    ledger = programme(week({"Gym": ["plank, sets: 1"]}))
    assert ledger.named("Back-Squats") is catalogue.exercise("back squat")
    assert ledger.named("Moon Walk") == "moonwalk"
    assert ledger.today == date(2026, 1, 5)
