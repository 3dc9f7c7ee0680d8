"""Complexes, timed sets, work by the clock, intervals, and work without a name."""

from __future__ import annotations

import pytest

from spotline.lint.counting.credits import TOTAL
from spotline.lint.model.quantities import Range

LIFTS = "{exercise: power clean, reps: 1}, {exercise: front squat, reps: 1}, {exercise: push jerk, reps: 2}"
BESTS = "best lifts: {power clean: 80 kg, front squat: 100 kg}"


def text(*items, weeks=2, head="", athlete=f"{{name: Mara, {BESTS}}}", then=""):
    start = f"programme: P\nathlete: {athlete}\n{head}weeks: {weeks}\nsessions:\n"
    return start + "  - session: A\n    exercises:\n" + "".join(f"      - {one}\n" for one in items) + then


@pytest.fixture
def visit(programme):
    def run(*items, week=1, **more):
        return programme(text(*items, **more)).weeks[week - 1].visits[0]

    return run


@pytest.fixture
def told(findings):
    """The findings of reading and schema."""

    def run(*items, **more):
        return [one for one in findings(text(*items, **more)) if not one.why]

    return run


def sets(visit):
    return [str(group.work.sets) for group in visit.own]


def minutes(visit):
    return tuple(round(end / 60, 1) for end in visit.time().total.ends)


# Complexes


def test_a_complex_has_one_load_and_one_number_of_sets(visit):
    found = visit(f"{{complex: [{LIFTS}], sets: {{1: 5, 2: 6}}, load: 75 %, rest: 2 min}}", week=2)
    assert sets(found) == ["6", "6", "6"]
    assert [[str(one) for one in group.kilograms] for group in found.own] == [[], ["60"], ["60"]]
    assert found.own[0].percent == Range(75, 75)
    assert found.own[1].percent == Range(60, 60)


@pytest.mark.parametrize("load", ["60 kg", "75 % of power clean", "60 % of front squat"])
def test_the_load_of_a_complex_may_be_said_in_any_way(visit, load):
    found = visit(f"{{complex: [{LIFTS}], sets: 5, load: {load}, rest: 2 min}}")
    assert [round(group.measured["mass"]) for group in found.own if "mass" in group.measured][-1] == 60


def test_a_set_of_a_complex_counts_once_for_a_muscle(visit):
    lifts = [("power clean", 1), ("front squat", 1), ("push jerk", 2)]
    apart = [f"{{exercise: {name}, sets: 5, reps: {reps}, load: 60 kg}}" for name, reps in lifts]
    whole, lines = visit(f"{{complex: [{LIFTS}], sets: 5, load: 60 kg}}"), visit(*apart)
    assert whole.sets("quadriceps", TOTAL, hard=False).high == 5
    assert lines.sets("quadriceps", TOTAL, hard=False).high > 5
    assert (whole.all_sets().high, lines.all_sets().high) == (5, 15)
    assert whole.for_actions(("knee extension", "hip extension")).high == 5
    assert whole.sets("front deltoid", TOTAL, hard=False).high == 5


def test_the_lines_of_a_complex_add_up(visit):
    count = visit(f"{{complex: [{LIFTS}], sets: 5, load: 60 kg}}").sets("quadriceps", TOTAL, hard=False)
    assert sum(share.high for _, share in count.lines()) == count.high == 5


def test_a_complex_takes_its_lifts_and_the_rest_after_each_set(visit):
    rest = visit(f"{{complex: [{LIFTS}], sets: 5, load: 60 kg, rest: 2 min}}").time().rest
    assert rest == Range(480, 480)
    longer = visit(f"{{complex: [{LIFTS}], sets: 5, load: 60 kg, rest: 3 min, warm-up sets: 2}}").time()
    assert (longer.rest, longer.around.low) == (Range(720, 720), 120)


def test_a_complex_may_start_by_the_clock(visit):
    found = visit(f"{{complex: [{LIFTS}], load: 60 kg, every: 2 min, for: 12 min}}")
    assert (sets(found), minutes(found)) == (["6", "6", "6"], (12, 12))


def test_the_other_lifts_of_a_complex_take_from_the_reserve(visit):
    alone = visit("{exercise: front squat, sets: 5, reps: 2, load: 60 kg}").own[0].reserve
    within = visit(
        "{complex: [{exercise: front squat, reps: 2}, {exercise: push press, reps: 6}], sets: 5, load: 60 kg}"
    ).own[0]
    assert within.reserve.low == pytest.approx(alone.low - 6)
    assert within.reserve.high == alone.high


@pytest.mark.parametrize(
    ("item", "rule"),
    [
        ("{complex: [{exercise: power clean, reps: 1}], sets: 5}", "value-out-of-range"),
        ("{complex: [{exercise: hang snatch, reps: 3}], sets: 3, load: 40 kg}", "value-out-of-range"),
        (f"{{complex: [{LIFTS}]}}", "key-missing"),
        (f"{{complex: [{LIFTS}], for: 10 min}}", "key-missing"),
        ("{complex: [{exercise: clean, reps: 1, load: 60 kg}, {exercise: push jerk, reps: 1}], sets: 3}", "keys-at-odds"),
        ("{complex: [{exercise: clean, reps: 1, sets: 3}, {exercise: push jerk, reps: 1}], sets: 3}", "keys-at-odds"),
        (f"{{complex: [{LIFTS}], every: 3 min, for: 2 min}}", "no-set-fits"),
        (f"{{complex: [{LIFTS}], sets: {{1: 5, 2-3: 5}}}}", "weeks-beyond"),
    ],
)  # fmt: skip
def test_a_complex_at_its_edges_is_one_finding(told, item, rule):
    found = told(item)
    assert [one.rule for one in found] == [rule], [one.counted for one in found]


@pytest.mark.parametrize(
    ("line", "names"),
    [
        ("clean + front squat + jerk, sets: 5, reps: 1+1+1", ["clean", "front squat", "jerk"]),
        ("Snatch pull + hang snatch + OHS, sets: 4, reps: 1 + 2 + 1", ["Snatch pull", "hang snatch", "OHS"]),
        ("Clean pull + Power Clean, sets: 4, reps: 2+1", ["Clean pull", "Power Clean"]),
        ("Power Clean + Push Jerk, sets: 4, reps: 2+1", ["Power Clean", "Push Jerk"]),
        ("front squat + jerk, sets: 4, reps: 1+1", ["front squat", "jerk"]),
    ],
)
def test_a_complex_may_stand_on_one_line(visit, line, names):
    found = visit(f"{{exercise: {line}, load: 60 kg, rest: 2 min}}")
    assert [group.name for group in found.own] == names
    assert all(group.sure for group in found.own)
    assert found.all_sets().high == found.own[0].sets.high
    assert {group.prescription.paired.kind for group in found.own} == {"complex"}


@pytest.mark.parametrize(
    "line",
    [
        "Power Clean + Jerk, sets: 5, reps: 1+1",
        "PC + J, sets: 5, reps: 1+1",
        "back squat, sets: 5, reps: 1+1+1",
    ],
)
def test_a_cluster_and_a_known_name_stay_one_line(visit, line):
    assert len(visit(f"{{exercise: {line}, load: 60 kg, rest: 2 min}}").own) == 1


def test_a_name_with_a_plus_that_is_given_to_one_lift_stays_one(visit):
    names = "our names: {power cl + up: clean and jerk}\n"
    line = "{exercise: power cl + up, sets: 4, reps: 1+1, load: 60 kg}"
    (group,) = visit(line, head=names).own
    assert (group.exercise.name, str(group.a_set)) == ("clean and jerk", "2")
    assert len(visit(line).own) == 2


def test_what_stands_on_one_lift_of_a_complex_belongs_to_the_whole(told):
    (found,) = told(
        "{complex: [{exercise: clean, reps: 1, load: 60 kg}, {exercise: jerk, reps: 1}], sets: 3}"
    )
    assert found.counted == "`load` stands on one lift of a complex, which has it for all of them."


# Timed sets


def test_a_set_by_the_clock_takes_its_time(visit):
    found = visit("{exercise: push-up, sets: 4, reps: 40 s, rest: 20 s}")
    assert found.time().total == Range(220, 220)
    assert found.own[0].reps is None


# Rounds by the clock

MEMBERS = ["push-up, reps: 10", "goblet squat, reps: 10, load: 16 kg", "bent-over row, reps: 8, load: 30 kg"]


def circuit(keys, members=MEMBERS):
    return f"{{circuit: {{{keys}, exercises: [{', '.join(f'{{exercise: {one}}}' for one in members)}]}}}}"


@pytest.mark.parametrize(
    ("keys", "wanted", "time"),
    [
        ("change every: 60 s, for: 12 min", ["4", "4", "4"], 12),
        ("change every: 60 s, for: 10 min", ["4", "3", "3"], 10),
        ("change every: 90 s, for: 9 min", ["2", "2", "2"], 9),
        ("change every: 60 s, rounds: 4", ["4", "4", "4"], 12),
        ("change every: 60 s, rounds: 4, rest: 60 s", ["4", "4", "4"], 15),
        ("change every: 60 s, for: 15 min, rest: 60 s", ["4", "4", "4"], 15),
        ("every: 3 min, for: 15 min", ["5", "5", "5"], 15),
        ("every: 3 min, rounds: 4", ["4", "4", "4"], 12),
        ("on: 40 s, off: 20 s, rounds: 3", ["3", "3", "3"], 8.7),
        ("on: 40 s, off: 20 s, rounds: 3, rest: 2 min", ["3", "3", "3"], 12.7),
        ("on: 40 s, off: 20 s, for: 12 min", ["4", "4", "4"], 12),
        ("on: 30 s, rounds: 2", ["2", "2", "2"], 3),
    ],
)
def test_rounds_follow_from_the_clock(visit, keys, wanted, time):
    found = visit(circuit(keys))
    assert (sets(found), minutes(found)) == (wanted, (time, time))


def test_rounds_may_change_by_week(visit):
    found = visit(circuit("rounds: {1: 3, 2: 4}, change every: 60 s"), week=2)
    assert (sets(found), minutes(found)) == (["4", "4", "4"], (12, 12))


def test_an_exercise_goes_on_as_long_as_the_clock_says(visit):
    found = visit(
        circuit("on: 40 s, off: 20 s, rounds: 3", ["push-up", "plank, hold: 20 s", "goblet squat, reps: 8"])
    )
    assert [str(group.work.timed) for group in found.own] == ["40", "None", "None"]


def test_as_many_rounds_as_possible_are_worked_out_from_the_time(visit):
    short, long = (visit(circuit(f"for: {time} min")) for time in (6, 12))
    for found, time in ((short, 6), (long, 12)):
        rounds = {str(group.sets): group.sets for group in found.own}
        (one,) = rounds.values()
        assert 1 <= one.low < one.high
        assert minutes(found) == (time, time)
    assert long.own[0].sets.high >= 2 * short.own[0].sets.high
    assert all(group.sure for group in short.own)


def test_rounds_that_the_coach_expects_win_over_those_worked_out(visit):
    found = visit(circuit("rounds: 4-5, for: 12 min"))
    assert (sets(found), minutes(found)) == (["4-5"] * 3, (12, 12))


def test_weeks_alike_share_what_was_worked_out(programme):
    ledger = programme(text(circuit("for: 10 min"), weeks=4))
    assert len(ledger.like_weeks()) == 1


def test_rounds_for_time_end_at_the_cap(visit):
    free, held = (
        visit(circuit("rounds: 5, for time: true")),
        visit(circuit("rounds: 5, for time: true, time cap: 8 min")),
    )
    assert free.time().total.high > 8 * 60
    assert held.time().total.high == pytest.approx(8 * 60)
    assert held.time().total.low <= held.time().total.high
    assert sets(held) == ["5"] * 3


@pytest.mark.parametrize(
    ("keys", "rule"),
    [
        ("rest: 60 s", "key-missing"),
        ("change every: 60 s", "key-missing"),
        ("rounds: 3, off: 20 s", "key-missing"),
        ("rounds: 3, on: 0 s, off: 20 s", "no-set-fits"),
        ("change every: 60 s, every: 3 min, rounds: 3", "keys-at-odds"),
        ("change every: 60 s, for: 30 s", "no-set-fits"),
        ("every: 3 min, for: 2 min", "no-set-fits"),
        ("rounds: 3, change every: 60 s, for: 12 min", "keys-at-odds"),
    ],
)
def test_a_clock_at_its_edges_is_one_finding(told, keys, rule):
    found = told(circuit(keys))
    assert [one.rule for one in found] == [rule], [one.counted for one in found]


@pytest.mark.parametrize(
    ("key", "written"),
    [
        ("emom: 12 min", "change every: 60 s, for: 12 min"),
        ("E2MOM: 12", "change every: 120 s, for: 12 min"),
        ("amrap: 10 min", "for: 10 min"),
        ("AMRAP: 10'", "for: 10 min"),
    ],
)
def test_the_short_names_of_clocks_are_one_finding_with_its_mend(told, key, written):
    (found,) = told(circuit(key))
    assert found.edits[0].words == written
    assert told(circuit(written)) == []


# Intervals


@pytest.mark.parametrize(
    ("keys", "rounds", "time"),
    [
        ("bike, rounds: 8, on: 45 s, off: 15 s", "8", 7.8),
        ("run, on: 60 s, off: 60 s, for: 10 min", "5", 9),
        ("rowing machine, rounds: 6, on: 2 min, off: 1 min", "6", 17),
        ("rowing machine easy, rounds: 6, on: 2 min, off: 1 min", "6", 17),
        ("row hard, rounds: 6, on: 2 min, off: 1 min", "6", 17),
        ("bike, every: 2 min, on: 60 s, for: 12 min", "6", 12),
        ("bike, rounds: {1: 6, 2: 8}, on: 60 s, off: 60 s", "6", 11),
    ],
)
def test_intervals_take_their_time_and_count_no_sets(visit, findings, keys, rounds, time):
    found = visit(f"{{intervals: {keys}, rpe: 8}}")
    assert (sets(found), minutes(found)) == ([rounds], (time, time))
    assert found.all_sets().high == 0
    assert not found.unsure()
    said = findings(text(f"{{intervals: {keys}}}", "{exercise: back squat, sets: 3, reps: 5, rir: 2}"))
    assert not [one for one in said if one.rule in ("exercise-unknown", "sets-not-read")]


@pytest.mark.parametrize("name", ["dumbbell row", "heavy kettlebell row", "bent-over row"])
def test_intervals_of_a_row_of_the_arms_are_sets(visit, name):
    (group,) = visit(f"{{intervals: {name}, rounds: 8, on: 20 s, off: 10 s}}").own
    assert (group.exercise.pattern, str(group.sets)) == ("horizontal pull", "8")


def test_intervals_of_a_lift_are_sets(visit):
    (group,) = visit("{intervals: kettlebell swing, rounds: 8, on: 20 s, off: 10 s}").own
    assert (group.exercise.name, str(group.sets), str(group.work.timed)) == ("kettlebell swing", "8", "20")


def test_an_activity_may_go_on_and_off(programme):
    then = "  - {activity: run, day: tuesday, rounds: 6, on: 2 min, off: 60 s}\n"
    (_, _, run), *_ = programme(text("{exercise: back squat, sets: 3}", then=then)).activities()
    assert run.minutes == Range(18, 18)


@pytest.mark.parametrize(
    ("keys", "rule"),
    [
        ("bike, rounds: 6", "key-missing"),
        ("bike, rounds: 6, off: 60 s", "key-missing"),
        ("bike, rounds: 6, on: 0 s, off: 60 s", "no-set-fits"),
        ("bike, on: 60 s, off: 60 s", "key-missing"),
        ("bike, on: 5 min, off: 5 min, for: 4 min", "no-set-fits"),
        ("bike, rounds: 6, on: 60 s, off: 60 s, load: 60 kg", "key-unknown"),
    ],
)
def test_intervals_at_their_edges_are_one_finding(told, keys, rule):
    found = told(f"{{intervals: {keys}}}")
    assert [one.rule for one in found] == [rule], [one.counted for one in found]


def test_nobody_is_told_to_put_on_in_quotes(told):
    assert told("{intervals: bike, rounds: 6, on: 60 s, off: 60 s}") == []
    assert [one.rule for one in told("{exercise: back squat, sets: 3, note: on}")] == ["quote-this"]


# Work without a name


def test_an_own_choice_takes_its_minutes_and_counts_no_sets(visit):
    found = visit("{own choice: mobility, minutes: 10-15}")
    assert minutes(found) == (10, 15)
    assert (found.all_sets().high, found.unsure()) == (0, [])


@pytest.mark.parametrize(
    ("choice", "missing"),
    [
        ("{own choice: mobility, minutes: 10}", True),
        ("{own choice: trunk, minutes: 10}", False),
        ("{own choice: what you like, minutes: 10, trains: [trunk]}", False),
        ("{own choice: trunk, minutes: 10, trains: [arms]}", True),
    ],
)
def test_what_an_own_choice_trains_is_not_called_missing(findings, choice, missing):
    lines = [
        f"{{exercise: {name}, sets: 3, reps: 8, rir: 2}}"
        for name in ("leg press", "leg curl", "lat pulldown")  # the abdominals are never said alone
    ]
    found = findings(text(*lines, choice), "region-untrained")
    assert any("abdominals" in one.counted for one in found) == missing


def test_a_word_that_no_list_knows_is_one_finding(findings):
    found = findings(
        text("{exercise: leg press, sets: 3, reps: 8}", "{own choice: a bit, minutes: 5, trains: [trnk]}")
    )
    (said,) = [one for one in found if one.rule == "area-unknown"]
    assert said.place.excerpt == "trnk"


@pytest.mark.parametrize("item", ["{own choice: mobility}", "{own choice: trunk, minutes: ten}"])
def test_an_own_choice_without_minutes_is_one_finding(told, item):
    assert len(told(item)) == 1


@pytest.mark.parametrize(
    "item",
    [
        "{own choice: mobility, minutes: 10, in weeks: 2}",
        "{intervals: bike, rounds: 6, on: 60 s, in weeks: 2}",
        f"{{complex: [{LIFTS}], sets: 3, in weeks: 2}}",
    ],
)
def test_it_may_be_done_in_some_weeks(visit, item):
    plain = "{exercise: back squat, sets: 3, reps: 5}"
    assert len(visit(plain, item, week=1).own) == 1
    assert len(visit(plain, item, week=2).own) > 1
