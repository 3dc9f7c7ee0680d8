"""What a week holds against an earlier one, and loads as they can be compared; sums stand beside each."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.counting.change import Change, is_a_digit_too_high, slip_in, typed_for, visits_of_lines
from spotline.lint.counting.ledger import Ledger

Build = Callable[..., Ledger]
Text = Callable[..., str]

MARA = "athlete: {name: Mara, body mass: 60 kg, best lifts: {back squat: 100 kg}}"


@pytest.fixture(scope="session")
def changed(programme: Build, week: Text) -> Callable[..., Change]:
    """The second week of a programme against its first."""

    def build(*lines: str, head: str = "") -> Change:
        ledger = programme(week({"Gym": list(lines)}, f"{head}\nweeks: 2"))
        return Change(ledger.weeks[0], ledger.weeks[1])

    return build


@pytest.mark.parametrize(
    ("load", "measured"),
    [
        ("80 %", {"percent": 80}),
        ("75-80 %", {"percent": 77.5}),
        ("80 kg", {"mass": 80, "percent": 80}),  # of 100 kg on file
        ("2 x 24 kg", {"mass": 48, "percent": 48}),
        ("bodyweight + 10 kg", {"mass with the body": 70, "percent": 70}),
        ("20 % bodyweight", {"share": 20, "mass": 12, "percent": 12}),
        ("8RM", {}),
        ("90 % of top set", {}),
        ("red band", {}),
    ],
)
def test_loads_as_they_can_be_compared(
    programme: Build, week: Text, load: str, measured: dict[str, float]
) -> None:
    ledger = programme(week({"Gym": [f"back squat, sets: 3, reps: 5, load: {load}"]}, MARA))
    ((_, entry),) = ledger.entries()
    assert entry.measured == pytest.approx(measured)


def test_no_load_is_not_compared(programme: Build, week: Text) -> None:
    ledger = programme(week({"Gym": ["back squat, sets: 3", "back squat, sets: 3, load: bodyweight + 5 kg"]}))
    assert [entry.measured for _, entry in ledger.entries()] == [{}, {}]  # body mass is not on file


def test_sets_and_repetitions(changed: Callable[..., Change]) -> None:
    change = changed("back squat, sets: {1: 6, 2: 5}, reps: 6", "plank, sets: {1: 4, 2: 3}, hold: 30 s")
    assert change.sets == 80  # 8 of 10
    assert change.repetitions == pytest.approx(83.333333)  # 30 of 36
    change = changed("back squat, sets: 4, reps: {1: 10, 2: 5}")
    assert (change.sets, change.repetitions) == (100, 50)


def test_repetitions_of_few_sets_tell_nothing(changed: Callable[..., Change]) -> None:
    change = changed("back squat, sets: {1: 5, 2: 3}, reps: 6", "plank, sets: 5, hold: 30 s")
    assert (change.sets, change.repetitions) == (80, None)
    half = changed("back squat, sets: 3, reps: {1: 6, 2: 3}", "plank, sets: 3, hold: 30 s")
    assert half.repetitions is None  # half of the sets is not most of them
    most = changed("back squat, sets: 4, reps: {1: 6, 2: 3}", "plank, sets: 3, hold: 30 s")
    assert most.repetitions == 50


@pytest.mark.parametrize("sets", ["{1: 6, 2: 2}", "{1: 2, 2: 6}"])
def test_repetitions_must_be_told_in_both_weeks(changed: Callable[..., Change], sets: str) -> None:
    assert changed(f"back squat, sets: {sets}, reps: 6", "plank, sets: 3, hold: 30 s").repetitions is None


def test_percentages_are_rounded_to_a_millionth(changed: Callable[..., Change]) -> None:
    change = changed("back squat, sets: {1: 6, 2: 4}, reps: 6")
    assert (change.sets, change.repetitions) == (66.666667, 66.666667)


def test_all_sets_are_held_and_only_hard_ones_are_hard(changed: Callable[..., Change]) -> None:
    change = changed(
        "back squat, sets: {1: 4-5, 2: 2}, reps: 6, rir: 2", "back squat, sets: 2, reps: 6, rir: 6"
    )
    (squat,) = change.parts
    assert (squat.held, squat.hard) == (6.5, 4.5)


def test_what_is_not_stated_is_not_known(changed: Callable[..., Change]) -> None:
    change = changed("back squat, sets: 3")
    assert (change.sets, change.repetitions, change.load, change.reserve) == (100, None, None, None)
    assert changed("back squat, sets: {1: 0, 2: 3}, reps: 5").sets is None


def test_load_is_the_mean_of_exercises_in_both(changed: Callable[..., Change]) -> None:
    change = changed(
        "back squat, sets: 3, load: {1: 100 kg, 2: 90 kg}",  # 90 %
        "bench press, sets: 3, load: {1: 80 %, 2: 56 %}",  # 70 %
        "deadlift, sets: {1: 3, 2: 0}, load: {1: 100 kg, 2: 10 kg}",  # not in both
        "plank, sets: 3",
    )
    assert change.load == 80


def test_loads_of_several_lines_of_an_exercise_are_taken_together(changed: Callable[..., Change]) -> None:
    change = changed("back squat, sets: 1, load: {1: 100 kg, 2: 90 kg}", "back squat, sets: 3, load: 80 kg")
    assert change.load == pytest.approx(100 * 85 / 90)


def test_loads_in_different_measures(changed: Callable[..., Change]) -> None:
    line = "back squat, sets: 3, load: {1: 80 kg, 2: 60 %}"
    assert changed(line).load is None
    assert changed(line, head=MARA).load == 75  # 60 % after 80 % of 100 kg
    assert changed("back squat, sets: 3, load: {1: 20 % bodyweight, 2: 15 % bodyweight}").load == 75


def test_reserve(changed: Callable[..., Change]) -> None:
    change = changed(
        "back squat, sets: 3, rir: {1: 1, 2: 3}",  # 2 more
        "bench press, sets: 3, rpe: {1: 8-9, 2: 7-8}",  # 1 more
        "plank, sets: 3",
    )
    assert change.reserve == 1.5


@pytest.mark.parametrize("rpe", ["{1: 3, 2: 8}", "{1: 8, 2: 3}"])
def test_reserve_must_be_told_in_both_weeks(changed: Callable[..., Change], rpe: str) -> None:
    assert changed(f"back squat, sets: 3, rpe: {rpe}").reserve is None  # the scale counts none at RPE 3


def test_lifts_by_exercise(programme: Build, week: Text) -> None:
    lines = ["back squat, sets: 3", "Back squats, sets: 1", "moon walk, sets: 2", "plank, sets: {1: 0}"]
    lifts = programme(week({"Gym": lines})).lifts()
    assert [(str(name), [entry.name for entry in entries]) for name, entries in lifts.items()] == [
        ("<back squat>", ["back squat", "Back squats"]),
        ("moonwalk", ["moon walk"]),
    ]


def test_occasions(programme: Build, week: Text) -> None:
    days = {
        "monday Early": ["back squat, sets: 2"],
        "monday Late": ["back squat, sets: 2"],
        "tuesday": ["back squat, sets: {1: 0-1}"],
        "wednesday": ["back squat, sets: {1: 0}"],
        "Some day": ["back squat, sets: 1"],
        "Another": ["back squat, sets: 1"],
    }
    assert programme(week(days)).sets("quadriceps").occasions() == 4  # Monday, Tuesday, two without a day


def test_a_lift_that_stays_is_no_change(changed: Callable[..., Change]) -> None:
    """The very same sets, beside those that are fewer, and those that only come to as many."""
    change = changed(
        "back squat, sets: 5, reps: 6",
        "bench press, sets: {1: 5, 2: 4}, reps: 6",
        "deadlift, sets: {1: 2, 2: 2}, reps: 5",
    )
    assert [part.is_none for part in change.parts] == [True, False, False]


@pytest.mark.parametrize(
    ("before", "value", "after", "meant"),
    [
        (62.5, 56, 67.5, 65),  # two digits that changed places
        (67.5, 56, 62.5, 65),
        (65, 56, 70, 65),
        (60, 56, 65, 65),
        (66, 56, 70, None),
        (60, 56, 64, None),
        (100, 10, 105, 100),  # a nought too few
        (95, 10, 100, 100),
        (101, 10, 105, None),
        (120, 102, 120, 120),
        (60, 62, 70, None),  # it lies between
        (26, 26, 70, None),
        (50, 1.5, 70, None),  # a point is no digit
        (10, 1, 100, 10),
        (205, 120, 215, 210),  # of three digits
        (60, 26.5, 65, 62.5),
        (200, 102, 215, None),  # 120 or 12 is too few
    ],
)
def test_what_a_number_may_be_a_slip_for(
    before: float, value: float, after: float, meant: float | None
) -> None:
    assert typed_for(before, value, after) == meant


@pytest.mark.parametrize(
    ("loads", "slip"),
    [
        ("{1: 62.5 %, 2: 56 %, 3: 67.5 %}", (65, 67.5)),
        ("{1: 62.5 kg, 2: 56 kg, 3: 67.5 kg}", (65, 67.5)),
        ("{1: 135 lb, 2: 104 lb, 3: 145 lb}", (140, 145)),
        ("{1: 2 x 30 kg, 2: 2 x 23 kg, 3: 2 x 34 kg}", (32, 34)),
        ("{1: 62.5 kg, 2: 56 %, 3: 67.5 kg}", None),
        ("{1: 62.5 kg, 2: 56-57 kg, 3: 67.5 kg}", None),
        ("{1: 62.5 kg, 2: heavy, 3: 67.5 kg}", None),
        ("{1: 30 kg, 2: 2 x 23 kg, 3: 34 kg}", None),
        ("{1: 50 %, 2: 5RM, 3: 55 %}", None),  # no percentage with a nought too few
    ],
)
def test_slips_are_read_in_the_coachs_unit(
    programme: Build, week: Text, loads: str, slip: tuple[float, float] | None
) -> None:
    ledger = programme(week({"Gym": [f"bench press, sets: 3, reps: 5, load: {loads}"]}, "weeks: 3"))
    assert slip_in(*(one.visits[0].own[0] for one in ledger.weeks)) == slip


def test_without_a_load_nothing_is_a_slip(programme: Build, week: Text) -> None:
    lines = ["bench press, sets: 3, load: 60 kg", "bench press, sets: 3", "bench press, sets: 3, load: 70 kg"]
    assert slip_in(*programme(week({"Gym": lines})).weeks[0].visits[0].own) is None


@pytest.mark.parametrize(
    ("loads", "too_high"),
    [
        ((60, 75, 66), True),  # 65 lies between 60 and 66
        ((60, 75, 65), True),
        ((65, 75, 66), True),
        ((60, 75, 64), False),  # neither 65 nor 74
        ((66, 75, 70), False),
        ((60, 70, 60), True),
        ((60, 70, 70), False),  # it is no higher than the next
        ((70, 85, 65), False),  # the loads fall
        ((60, 72, 66), True),  # 62
        ((90, 110, 100), True),  # 100, or 10 by the first digit
        ((95, 105, 104), True),  # 104
        ((95, 105, 103), False),  # a nought cannot be one less
        ((60, 62.5, 61.5), True),
    ],
)
def test_a_digit_too_high(
    programme: Build, week: Text, loads: tuple[float, float, float], too_high: bool
) -> None:
    written = ", ".join(f"{number}: {load} kg" for number, load in enumerate(loads, 1))
    ledger = programme(week({"Gym": [f"leg press, sets: 3, reps: 5, load: {{{written}}}"]}, "weeks: 3"))
    assert is_a_digit_too_high(*(one.visits[0].own[0] for one in ledger.weeks)) is too_high


def test_no_digit_is_too_high_where_loads_are_written_in_different_ways(programme: Build, week: Text) -> None:
    loads = "{1: 60 kg, 2: 75 kg, 3: 66 %}"
    ledger = programme(week({"Gym": [f"leg press, sets: 3, reps: 5, load: {loads}"]}, "weeks: 3"))
    assert is_a_digit_too_high(*(one.visits[0].own[0] for one in ledger.weeks)) is False


def test_a_line_from_visit_to_visit(programme: Build, week: Text) -> None:
    """All visits of sessions of a name; those that hold the very same sets are one in a week."""
    days = {
        "monday Push": ["dip, sets: {1: 3, 2: 0}", "moon walk, sets: 2", "dip, sets: 1"],
        "thursday Push": ["dip, sets: 9"],
    }
    lines = visits_of_lines(programme(week(days, "weeks: 2")).weeks)
    held = [[(one.number, group.sets.high) for one, group in line] for line in lines]
    assert held == [[(1, 3), (1, 9), (2, 9)], [(1, 2), (2, 2)], [(1, 1), (2, 1)]]
    text = "programme: T\nweeks: 2\nsessions: [{session: A, day: [monday, friday], exercises: [{exercise: dip, sets: 3}]}]\n"
    (twice,) = visits_of_lines(programme(text).weeks)
    assert [one.number for one, _ in twice] == [1, 2]


def test_a_line_is_known_by_its_exercise_or_else_by_its_name(programme: Build) -> None:
    lines = (("dip", "Moon Walk", "plank"), ("sun dance", "Dips", "moon walk"))
    blocks = "".join(
        f"  - {{name: B{number}, weeks: 1, sessions: [{{session: A, exercises: ["
        + ", ".join(f"{{exercise: {name}, sets: {number}}}" for name in names)
        + "]}]}\n"
        for number, names in enumerate(lines, 1)
    )
    held = visits_of_lines(programme(f"programme: P\nblocks:\n{blocks}").weeks)
    assert [[group.name for _, group in line] for line in held] == [
        ["dip", "Dips"],
        ["Moon Walk", "moon walk"],
        ["plank"],
        ["sun dance"],
    ]
