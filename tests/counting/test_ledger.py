"""The ledger against sums done by hand; the arithmetic stands beside each.

How an indirect set counts (0.5) is pelland-2026-frac, Sports Med 2026;56(2):481-505. What an exercise trains
is the catalogue's; where a count rests on it the muscles are named beside it.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spotline.lint.body import catalogue
from spotline.lint.counting.counts import Count
from spotline.lint.counting.credits import DIRECT, FRACTIONAL, TOTAL
from spotline.lint.counting.ledger import Ledger
from spotline.lint.counting.set_group import SetGroup
from spotline.lint.counting.tally import Tally
from spotline.lint.model.quantities import Range

Build = Callable[..., Ledger]
Text = Callable[..., str]


def span(count: Count) -> tuple[float, float]:
    return count.low, count.high


@pytest.fixture(scope="session")
def gym(programme: Build, week: Text) -> Callable[..., Ledger]:
    """A programme of one session without a day: its lines."""

    def build(*lines: str, head: str = "") -> Ledger:
        return programme(week({"Gym": list(lines)}, head))

    return build


# Direct, fractional, total


@pytest.mark.parametrize(
    ("area", "direct", "fractional", "total"),
    [
        # bench press 4: chest direct, triceps helps; pushdown 3: triceps direct; fly 2: chest direct
        ("chest", 6, 6, 6),  # 4 + 2
        ("triceps", 3, 5, 7),  # 3; 4 x 0.5 + 3; 4 + 3
        ("front shoulder", 0, 3, 6),  # helps in press and fly: (4 + 2) x 0.5; 4 + 2
        ("upper chest", 0, 3, 6),  # the clavicular part helps in both
        ("quadriceps", 0, 0, 0),
    ],
)
def test_the_three_counts(gym: Build, area: str, direct: float, fractional: float, total: float) -> None:
    (week,) = gym("bench press, sets: 4", "cable pushdown, sets: 3", "dumbbell fly, sets: 2").weeks
    assert span(week.sets(area, DIRECT)) == (direct, direct)
    assert span(week.sets(area)) == span(week.sets(area, FRACTIONAL)) == (fractional, fractional)
    assert span(week.sets(area, TOTAL)) == (total, total)


def test_a_group_takes_its_best_member_never_the_sum(gym: Build) -> None:
    # trap bar deadlift: three hamstrings help, 4 x 0.5; Romanian deadlift: the same three direct, 3 x 1
    (week,) = gym("trap bar deadlift, sets: 4", "Romanian deadlift, sets: 3").weeks
    assert week.sets("hamstrings").high == 5
    assert week.sets("semitendinosus").high == 5
    assert week.sets("biceps femoris short head").high == 0  # crosses the knee only
    # the gluteals' best member is the gluteus maximus, direct in both; gluteus medius has no part
    assert week.sets("gluteals").high == 7
    assert week.sets("gluteus medius").high == 0


def test_a_group_mixes_direct_and_helping_members_by_line(gym: Build) -> None:
    # row: middle trapezius direct, lower trapezius helps -> the group upper back gets 3 x 1, not 3 x 1.5
    (week,) = gym("bent-over row, sets: 3", "lat pulldown, sets: 4").weeks
    assert week.sets("lower trapezius").high == 3.5  # 3 x 0.5 + 4 x 0.5
    assert week.sets("upper back").high == 5  # 3 x 1 + 4 x 0.5
    assert week.sets("upper back", DIRECT).high == 3


def test_a_region_and_a_coachs_other_word_are_counted_alike(gym: Build) -> None:
    (week,) = gym("leg extension, sets: 3", "seated leg curl, sets: 2", "bench press, sets: 4").weeks
    assert week.sets("quads").high == week.sets("quadriceps").high == 3
    assert week.sets("legs").high == 5  # 3 + 2
    assert week.sets("no such muscle").high == 0


def test_an_unknown_exercise_brings_nothing_to_any_muscle(gym: Build) -> None:
    (week,) = gym("moon walk, sets: 5", "bench press, sets: 2").weeks
    assert week.all_sets().high == 7
    assert all(week.sets(group, TOTAL).high in (0, 2) for group in catalogue.groups)


def test_preparation_and_warm_up_sets_never_count(programme: Build) -> None:
    ledger = programme(
        "programme: Test\nsessions:\n  - session: Gym\n    preparation: [3 sets of squats]\n"
        "    exercises: [{exercise: back squat, sets: 3, warm-up sets: 4}]\n"
    )
    assert ledger.weeks[0].all_sets().high == 3


# Joint actions and patterns


def test_sets_by_joint_action(gym: Build) -> None:
    # squat: knee and hip extension; deadlift: hip extension, hinge; curl: knee flexion
    (week,) = gym("back squat, sets: 4", "Romanian deadlift, sets: 3", "seated leg curl, sets: 2").weeks
    assert week.for_actions(["knee extension"]).high == 4
    assert week.for_actions(["hip extension"]).high == 7
    assert week.for_actions(["knee flexion"]).high == 2
    assert week.for_actions(["hip hinge"]).high == 3
    assert week.for_actions(["knee flexion", "hip hinge"]).high == 5


def test_a_line_that_serves_several_actions_counts_once(gym: Build) -> None:
    (week,) = gym("back squat, sets: 4").weeks
    assert week.for_actions(["knee extension", "hip extension", "squat"]).high == 4
    assert week.for_actions([]).high == 0


# Ranges


def test_ranges_stay_ranges(gym: Build) -> None:
    (week,) = gym("bench press, sets: 3-4", "cable pushdown, sets: 2-3").weeks
    triceps = week.sets("triceps")
    assert span(triceps) == (3.5, 5)  # 3 x 0.5 + 2; 4 x 0.5 + 3
    assert triceps.middle == 4.25
    assert (str(triceps), triceps.most) == ("3.5-5", "up to 5")
    chest = week.sets("chest")
    assert (str(chest), chest.most) == ("3-4", "up to 4")


def test_one_number_is_said_plainly(gym: Build) -> None:
    (week,) = gym("bench press, sets: 3").weeks
    assert (str(week.sets("chest")), week.sets("chest").most) == ("3", "3")
    assert (str(week.sets("triceps")), bool(week.sets("triceps"))) == ("1.5", True)
    assert not week.sets("calves")
    assert str(week.sets("calves")) == "0"


# Sides


def test_each_side_counts_once(gym: Build) -> None:
    (week,) = gym("step-up, sets: 3, reps: 8, side: each").weeks
    assert week.sets("quadriceps").high == 3
    assert week.sets("quadriceps", side="left").high == week.sets("quadriceps", side="right").high == 3
    assert week.sets("quadriceps").repetitions() == Range(24, 24)  # 3 x 8, of each leg


def test_a_stated_side_counts_on_that_side(gym: Build) -> None:
    (week,) = gym(
        "leg extension, sets: 2", "leg extension, sets: 3, side: left", "leg extension, sets: 1, side: right"
    ).weeks
    assert week.sets("quadriceps", side="left").high == 5  # 2 + 3
    assert week.sets("quadriceps", side="right").high == 3  # 2 + 1
    assert week.sets("quadriceps").high == 5  # the side that has more
    assert week.for_actions(["knee extension"]).high == 5
    assert week.for_actions(["knee extension"], side="right").high == 3
    assert week.all_sets().high == 6  # sets that are done, whatever the side


def test_right_alone(gym: Build) -> None:
    (week,) = gym("leg extension, sets: 3, side: right").weeks
    assert week.sets("quadriceps").high == 3
    assert week.sets("quadriceps", side="left").high == 0


# Hard sets


@pytest.mark.parametrize(
    ("effort", "hard"),
    [
        ("", True),  # nothing stated: taken as meant
        ("rir: 0", True),
        ("rir: 5", True),
        ("rir: 5-7", True),  # may be as hard as 5 in reserve
        ("rir: 5.5", False),
        ("rir: 6", False),
        ("rpe: 10", True),
        ("rpe: 5", True),  # 10 - 5 = 5 in reserve
        ("rpe: 4-5", True),
        ("rpe: 4.5", False),  # 5.5 in reserve
        ("rpe: 3", False),
    ],
)
def test_easy_sets_are_not_hard(gym: Build, effort: str, hard: bool) -> None:
    (week,) = gym(f"leg extension, sets: 3, reps: 10{', ' + effort if effort else ''}").weeks
    assert week.sets("quadriceps").high == (3 if hard else 0)
    assert week.sets("quadriceps", hard=False).high == 3
    assert week.all_sets(hard=True).high == (3 if hard else 0)
    assert week.all_sets().high == 3
    assert week.for_actions(["knee extension"], hard=True).high == (3 if hard else 0)
    assert week.for_actions(["knee extension"]).high == 3


@pytest.mark.parametrize(
    "line",
    [
        "box jump, sets: 4, reps: 3, rir: 0",  # jumps never are
        "kettlebell swing, sets: 4, reps: 3, load: 24 kg",
        "power clean, sets: 4, reps: 3, load: 80 %",  # no curve of repetitions is known for it
        "power clean, sets: 4, reps: 3, rir: 6",
    ],
)
def test_fast_work_is_counted_but_not_as_hard_sets(gym: Build, line: str) -> None:
    (week,) = gym(line).weeks
    assert week.all_sets().high == 4
    assert week.all_sets(hard=True).high == 0
    assert week.sets("gluteals", hard=False).high == 4
    assert week.sets("gluteals").high == 0


@pytest.mark.parametrize("words", ["rir: 0", "rpe: 8-9", "load: 5RM"])
def test_fast_lifts_are_hard_where_an_effort_says_so(gym: Build, words: str) -> None:
    (week,) = gym(f"power clean, sets: 4, reps: 3, {words}").weeks
    assert week.all_sets(hard=True).high == 4


# Heavy and light slots: common practice, no source (4-8 and 8-20 repetitions)


@pytest.mark.parametrize(
    ("words", "slot"),
    [
        ("reps: 7", "heavy"),
        ("reps: 8", "light"),
        ("reps: 6-9", "heavy"),  # middle 7.5
        ("reps: 7-9", "light"),  # middle 8
        ("reps: 12/8/6", "light"),  # 6 to 12, middle 9
        ("reps: 2+2+2", "heavy"),  # 6 a set
        ("reps: 3+3+3", "light"),  # 9 a set
        ("load: 5RM", "heavy"),
        ("load: 8-10RM", "light"),
        ("reps: 5, load: 12RM", "heavy"),  # repetitions as written come first
        ("reps: amrap", ""),
        ("hold: 30 s", ""),
        ("load: 80 %", ""),
    ],
)
def test_slots(gym: Build, words: str, slot: str) -> None:
    ((_, entry),) = gym(f"leg press, sets: 3, {words}").entries()
    assert entry.slot == slot


# Repetitions, circuits, sets against the clock


@pytest.mark.parametrize(
    ("words", "sets", "low", "high"),
    [
        ("sets: 3, reps: 5", 3, 15, 15),
        ("sets: 3, reps: 8-10", 3, 24, 30),
        ("sets: 3, reps: 12/10/8", 3, 30, 30),  # 12 + 10 + 8
        ("sets: 4, reps: 2+2+2", 4, 24, 24),  # 4 x 6
        ("sets: 3, reps: 5+", 3, 15, 15),  # what the open set adds is not known
        ("sets: 3, reps: amrap", 3, 0, 0),
        ("sets: 3, hold: 30 s", 3, 0, 0),
        ("every: 60 s, for: 10 min, reps: 3", 10, 30, 30),  # 600 s / 60 s
        ("every: 2 min, for: 9 min, reps: 3", 4, 12, 12),  # whole sets only: 540 s / 120 s
        ("every: 90 s, for: 3 min, reps: 8", 2, 16, 16),
    ],
)
def test_repetitions(gym: Build, words: str, sets: float, low: float, high: float) -> None:
    (week,) = gym(f"leg press, {words}").weeks
    assert span(week.all_sets()) == (sets, sets)
    assert week.all_sets().repetitions() == Range(low, high)


def test_sets_against_a_clock_that_leaves_room(gym: Build) -> None:
    # one every 60 to 90 s for 6 min: 360 / 90 = 4 to 360 / 60 = 6 sets
    (week,) = gym("leg press, every: 60-90 s, for: 6 min, reps: 5").weeks
    assert span(week.all_sets()) == (4, 6)
    assert week.all_sets().repetitions() == Range(20, 30)


def test_ranges_of_sets_and_repetitions_multiply(gym: Build) -> None:
    (week,) = gym("leg press, sets: 3-4, reps: 8-10").weeks
    assert week.all_sets().repetitions() == Range(24, 40)  # 3 x 8 to 4 x 10


def test_rounds_are_the_sets_of_a_circuit(programme: Build) -> None:
    ledger = programme(
        "programme: Test\nweeks: 2\nsessions:\n  - session: Gym\n    exercises:\n"
        "      - circuit: {rounds: {1: 2, 2: 3-4}, exercises: [{exercise: push-up, reps: 12}, {exercise: plank, hold: 30 s}]}\n"
        "      - {superset: [{exercise: leg extension, reps: 10}, {exercise: seated leg curl, reps: 10}], rounds: 3}\n"
    )
    first, second = ledger.weeks
    assert span(first.all_sets()) == (10, 10)  # 2 x 2 + 2 x 3
    assert span(second.all_sets()) == (12, 14)  # 2 x 3 + 2 x 3 to 2 x 4 + 2 x 3
    assert first.sets("chest").repetitions() == Range(24, 24)  # 2 x 12
    assert first.sets("quadriceps").high == 3


def test_groups_of_sets_add_up(programme: Build) -> None:
    ledger = programme(
        "programme: Test\nsessions:\n  - session: Gym\n    exercises:\n"
        "      - {exercise: leg press, work: [{sets: 1, reps: 3, rpe: 8}, {sets: 3, reps: 5, load: 90 % of top set}, {sets: 1, reps: 20, rpe: 4}]}\n"
    )
    assert ledger.all_sets().high == 5
    assert ledger.all_sets().repetitions() == Range(38, 38)  # 3 + 15 + 20
    assert ledger.sets("quadriceps").high == 4  # the last group leaves 6 in reserve
    assert len(ledger.sets("quadriceps").lines()) == 1


def test_indirect_sets_count_all_their_repetitions(gym: Build) -> None:
    (week,) = gym("bench press, sets: 3, reps: 10").weeks
    assert week.sets("triceps").high == 1.5
    assert week.sets("triceps").repetitions() == Range(30, 30)


# The calendar


ROTATION = """\
programme: Test
{head}rotation: [monday, wednesday, friday]
sessions:
  - {{session: A, exercises: [{{exercise: leg extension, sets: 3}}]}}
  - {{session: B, exercises: [{{exercise: seated leg curl, sets: 2}}]}}
"""


def names(tally: Tally) -> str:
    return " ".join(visit.session.name for visit in tally.visits)


def test_a_rotation_runs_on_from_week_to_week(programme: Build) -> None:
    ledger = programme(ROTATION.format(head="weeks: 3\n"))
    assert [names(week) for week in ledger.weeks] == ["A B A", "B A B", "A B A"]
    assert [[visit.day for visit in week.visits] for week in ledger.weeks] == [[1, 3, 5]] * 3
    assert [week.sets("quadriceps").high for week in ledger.weeks] == [6, 3, 6]  # A twice, once, twice
    assert [week.sets("hamstrings").high for week in ledger.weeks] == [2, 4, 2]


def test_a_rotation_starts_afresh_with_each_block(programme: Build) -> None:
    sessions = (
        "rotation: [monday, wednesday, friday], sessions: ["
        "{session: A, exercises: [{exercise: leg extension, sets: 3}]},"
        " {session: B, exercises: [{exercise: seated leg curl, sets: 2}]}]"
    )
    ledger = programme(
        f"programme: Test\nblocks:\n  - {{name: One, weeks: 1, {sessions}}}\n  - {{name: Two, weeks: 2, {sessions}}}\n"
    )
    assert [names(week) for week in ledger.weeks] == ["A B A", "A B A", "B A B"]


def test_a_session_with_a_day_stays_out_of_the_rotation(programme: Build) -> None:
    text = (
        ROTATION.format(head="") + "  - {session: C, day: tuesday, exercises: [{exercise: plank, sets: 1}]}\n"
    )
    (week,) = programme(text).weeks
    assert [(visit.session.name, visit.day) for visit in week.visits] == [
        ("A", 1),
        ("C", 2),
        ("B", 3),
        ("A", 5),
    ]


def test_a_repeated_day_is_a_visit_each(programme: Build, week: Text) -> None:
    text = "programme: Test\nsessions:\n  - {session: Gym, day: [thursday, monday], exercises: [{exercise: leg press, sets: 3-4, reps: 10}]}\n"
    (counted,) = programme(text).weeks
    assert [visit.day for visit in counted.visits] == [1, 4]
    assert span(counted.sets("quadriceps")) == (6, 8)
    assert counted.sets("quadriceps").days() == [1, 4]
    assert counted.all_sets().repetitions() == Range(60, 80)


def test_a_session_without_a_day_counts_in_the_week_and_on_no_day(programme: Build, week: Text) -> None:
    ledger = programme(week({"Gym": ["leg press, sets: 3"], "monday": ["leg press, sets: 2"]}))
    (counted,) = ledger.weeks
    assert counted.sets("quadriceps").high == 5
    assert counted.sets("quadriceps").days() == [1]
    assert [(day, tally.sets("quadriceps").high) for day, tally in counted.days()] == [(1, 2)]
    assert [visit.day for visit in counted.visits] == [1, 0]


def test_two_visits_on_one_day(programme: Build, week: Text) -> None:
    ledger = programme(
        week({"monday Morning": ["leg press, sets: 3"], "monday Evening": ["leg press, sets: 2"]})
    )
    ((day, tally),) = ledger.weeks[0].days()
    assert (day, tally.sets("quadriceps").high, names(tally)) == (1, 5, "Morning Evening")


def test_values_by_week(gym: Build) -> None:
    ledger = gym("leg press, sets: {1-3: 3, 4-5: 4, 6: 2}, reps: {1-5: 10, 6: 5}", head="weeks: 6")
    assert [week.sets("quadriceps").high for week in ledger.weeks] == [3, 3, 3, 4, 4, 2]
    assert ledger.sets("quadriceps").high == 19  # 3 x 3 + 2 x 4 + 2
    assert ledger.all_sets().repetitions() == Range(180, 180)  # 17 x 10 + 2 x 5


def test_an_exercise_that_changes_by_week(gym: Build) -> None:
    ledger = gym("{1: leg extension, 2: seated leg curl}, sets: 3", head="weeks: 2")
    assert [(week.sets("quadriceps").high, week.sets("hamstrings").high) for week in ledger.weeks] == [
        (3, 0),
        (0, 3),
    ]


def test_the_tally_of_a_block(programme: Build) -> None:
    ledger = programme(
        "programme: Test\nblocks:\n"
        "  - {name: One, weeks: 3, sessions: [{session: Gym, exercises: [{exercise: leg press, sets: 4}]}]}\n"
        "  - {name: Two, weeks: 1, sessions: [{session: Gym, exercises: [{exercise: leg press, sets: 2}]}]}\n"
    )
    one, two = ledger.programme.blocks
    assert [week.number for week in ledger.weeks] == [1, 2, 3, 4]
    assert ledger.of_block(one).sets("quadriceps").high == 12  # 3 x 4
    assert ledger.of_block(two).sets("quadriceps").high == 2


def test_training_days_run_on_over_the_end_of_a_week(programme: Build, week: Text) -> None:
    ledger = programme(week({"monday": ["leg press, sets: 3"], "sunday": ["leg press, sets: 2"]}, "weeks: 2"))
    days = [
        (number, counted.number, tally.all_sets().high) for number, counted, tally in ledger.training_days()
    ]
    assert days == [(1, 1, 3), (7, 1, 2), (8, 2, 3), (14, 2, 2)]


def test_days_count_from_the_start_day(programme: Build, week: Text) -> None:
    # 1 January 2026 is a Thursday: Monday is day 5 and Thursday day 1
    ledger = programme(
        week({"monday": ["leg press, sets: 3"], "thursday": ["leg press, sets: 2"]}, "starts: 2026-01-01")
    )
    assert [(number, tally.all_sets().high) for number, _, tally in ledger.training_days()] == [
        (1, 2),
        (5, 3),
    ]


def test_activities_are_no_sets(programme: Build) -> None:
    ledger = programme(
        "programme: Test\nsessions:\n  - {activity: run, day: monday, minutes: 40}\n  - {session: Gym, exercises: [{exercise: plank, sets: 2}]}\n"
    )
    assert ledger.all_sets().high == 2
    assert ledger.training_days() == []


# Weeks that are alike


def test_like_weeks_stand_together(gym: Build) -> None:
    ledger = gym("leg press, sets: {1-2: 3, 3: 4, 4: 2}", "plank, sets: 2", head="weeks: 4")
    alike = [(week.number, numbers) for week, numbers in ledger.like_weeks()]
    assert sorted(number for _, numbers in alike for number in numbers) == [1, 2, 3, 4]
    for week, numbers in ledger.like_weeks():
        assert {span(ledger.weeks[number - 1].all_sets()) for number in numbers} == {span(week.all_sets())}


def test_weeks_in_which_nothing_changes_are_one(gym: Build) -> None:
    ledger = gym("leg press, sets: 3", head="weeks: 6")
    assert [numbers for _, numbers in ledger.like_weeks()] == [(1, 2, 3, 4, 5, 6)]


def test_the_two_weeks_of_a_rotation_alternate(programme: Build) -> None:
    ledger = programme(ROTATION.format(head="weeks: 5\n"))
    assert [numbers for _, numbers in ledger.like_weeks()] == [(1, 3, 5), (2, 4)]


def test_weeks_of_two_blocks_are_never_one(programme: Build) -> None:
    session = "sessions: [{session: Gym, exercises: [{exercise: leg press, sets: 3}]}]"
    ledger = programme(
        f"programme: Test\nblocks: [{{name: a, weeks: 1, {session}}}, {{name: b, weeks: 1, {session}}}]\n"
    )
    assert [numbers for _, numbers in ledger.like_weeks()] == [(1,), (2,)]


# Where a count comes from


def test_the_lines_of_a_count(programme: Build, week: Text) -> None:
    text = week(
        {"friday": ["bench press, sets: 4", "plank, sets: 1"], "monday": ["cable pushdown, sets: 3-4"]},
        "weeks: 2",
    )
    ledger = programme(text)
    counted = [
        (line.session.name, line.place.excerpt, sets)
        for line, sets in ledger.weeks[0].sets("triceps").lines()
    ]
    assert counted == [
        ("friday", "bench press", Range(2, 2)),
        ("monday", "cable pushdown", Range(3, 4)),
    ]  # as in the file
    twice = [sets for _, sets in ledger.sets("triceps").lines()]
    assert twice == [Range(4, 4), Range(6, 8)]  # both weeks together


def test_the_lines_of_a_repeated_day_are_summed(programme: Build) -> None:
    text = "programme: Test\nsessions:\n  - {session: Gym, day: [monday, thursday], exercises: [{exercise: leg press, sets: 3}]}\n"
    ((line, sets),) = programme(text).weeks[0].sets("quadriceps").lines()
    assert (line.place.excerpt, sets) == ("leg press", Range(6, 6))


def test_a_part_of_a_count(gym: Build) -> None:
    (week,) = gym("leg press, sets: 3, reps: 5", "leg press, sets: 2, reps: 12").weeks
    assert week.sets("quadriceps").where(lambda entry: entry.slot == "heavy").high == 3


# What may hide behind a line that cannot be counted


@pytest.mark.parametrize(
    ("line", "actions", "areas", "could"),
    [
        ("the usual, sets: 3", ["knee flexion"], [], True),  # words that say nothing may mean anything
        ("moon walk, sets: 3", ["knee flexion"], [], False),
        ("moon walk, sets: 3", [], ["calves"], True),
        ("seated leg curl, sets: 3", ["knee flexion"], [], False),  # counted, so nothing hides there
    ],
)
def test_could_hold(gym: Build, line: str, actions: list[str], areas: list[str], could: bool) -> None:
    (week,) = gym(line, "leg press, sets: 3").weeks
    assert week.could_hold(actions=actions, areas=areas) is could


@pytest.mark.parametrize(
    ("line", "actions", "areas", "could"),
    [
        ("seated leg curl, sets: many", ["knee flexion"], [], True),
        ("seated leg curl, sets: many", ["hip hinge"], [], False),
        ("seated leg curl, sets: many", [], ["hamstrings"], True),
        ("seated leg curl, sets: many", [], ["calves"], False),
        ("trap bar deadlift, sets: many", [], ["hamstrings"], True),  # as a helper
        ("leg press, sets: 3, reps: many", ["knee extension"], ["quadriceps"], False),  # its sets are known
    ],
)
def test_could_hold_where_the_sets_cannot_be_read(
    reviewed: Build, week: Text, line: str, actions: list[str], areas: list[str], could: bool
) -> None:
    (one,) = reviewed(week({"Gym": [line]})).files  # type: ignore[attr-defined]
    assert one.ledger.could_hold(actions=actions, areas=areas) is could


# Rehabilitation


STAGE = "rehabilitation: {{stage: heel drops, advised by: physiotherapist, until: {until}}}"


@pytest.mark.parametrize(
    ("starts", "until", "weeks"),
    [
        # weeks begin on 5, 12 and 19 January
        ("starts: 2026-01-05\n", "2026-01-04", []),
        ("starts: 2026-01-05\n", "2026-01-05", [1]),
        ("starts: 2026-01-05\n", "2026-01-11", [1]),
        ("starts: 2026-01-05\n", "2026-01-12", [1, 2]),
        ("starts: 2026-01-05\n", "2026-03-01", [1, 2, 3]),
        # without a start every week is judged by the day of the review, 5 January
        ("", "2026-01-04", []),
        ("", "2026-01-05", [1, 2, 3]),
    ],
)
def test_rehabilitation_lasts_until_its_day(gym: Build, starts: str, until: str, weeks: list[int]) -> None:
    ledger = gym("heel drop, sets: 3", head=f"{starts}weeks: 3\n{STAGE.format(until=until)}")
    assert [week.number for week in ledger.weeks if week.rehabilitation] == weeks


def test_no_week_is_under_rehabilitation_by_itself(gym: Build) -> None:
    assert not any(week.rehabilitation for week in gym("leg press, sets: 3", head="weeks: 2").weeks)


@pytest.mark.parametrize(
    "missing",
    [
        "stage: a, advised by: b",
        "stage: a, until: 2026-12-31",
        "advised by: b, until: 2026-12-31",
        "stage: a, advised by: b, until: 2026-02-30",
    ],
)
def test_a_stage_that_is_not_written_in_full_does_not_hold(reviewed: Build, week: Text, missing: str) -> None:
    (one,) = reviewed(week({"Gym": ["leg press, sets: 3"]}, f"rehabilitation: {{{missing}}}")).files  # type: ignore[attr-defined]
    assert one.findings
    assert not one.ledger.weeks[0].rehabilitation


def test_the_day_of_the_review_stands_in_for_the_start(programme: Build, week: Text) -> None:
    text = week({"Gym": ["leg press, sets: 3"]}, STAGE.format(until="2026-06-01"))
    assert programme(text, on=date(2026, 6, 1)).weeks[0].rehabilitation
    assert not programme(text, on=date(2026, 6, 2)).weeks[0].rehabilitation


# What a week is about


@pytest.mark.parametrize(
    ("head", "block", "typical", "phase"),
    [
        ("", "", True, ""),
        ("phase: build\n", "", True, "build"),
        ("phase: taper\n", "", True, "taper"),  # no phase hides a whole programme
        ("phase: test\n", "", True, "test"),
        ("phase: in-season\n", "", True, "in-season"),
        ("phase: taper\n", "phase: build, ", True, "build"),
        ("phase: build\n", "phase: taper, ", True, "taper"),
        ("", "deload: true, ", False, ""),
        ("", "deload: false, ", True, ""),
    ],
)
def test_typical_weeks(programme: Build, head: str, block: str, typical: bool, phase: str) -> None:
    text = f"programme: Test\n{head}blocks: [{{name: One, weeks: 1, {block}sessions: [{{session: Gym, exercises: [{{exercise: plank, sets: 1}}]}}]}}]\n"
    ledger = programme(text)
    (week,) = ledger.weeks
    assert (ledger.typical_weeks() == [week], week.phase) == (typical, phase)


def test_the_first_week_back_is_not_typical(programme: Build) -> None:
    head = "programme: Test\nweeks: 3\nphase: return\n"
    text = head + "sessions: [{session: Gym, exercises: [{exercise: plank, sets: 1}]}]\n"
    ledger = programme(text)
    assert [week.is_typical() for week in ledger.weeks] == [False, True, True]
    assert [weeks for _, weeks in ledger.like_weeks()] == [(1,), (2, 3)]  # alike, but for that


def test_a_return_has_one_first_week_however_many_its_blocks(programme: Build) -> None:
    block = "{{name: Block {}, weeks: 2, phase: {}, sessions: [{{session: Gym, exercises: [{{exercise: plank, sets: 1}}]}}]}}"
    phases = ("build", "return", "return", "build", "return")
    rows = ", ".join(block.format(number, phase) for number, phase in enumerate(phases))
    ledger = programme(f"programme: Test\nblocks: [{rows}]\n")
    assert [week.number for week in ledger.weeks if week.first_back] == [3, 9]
    assert [week.number for week in ledger.weeks if not week.is_typical()] == [3, 9]


def test_how_often(programme: Build, week: Text) -> None:
    days = {
        "monday": ["plank, sets: {1: 0, 2: 0-1, 3: 2}", "plank, sets: 2, rir: 8"],
        "tuesday": ["plank, sets: 1"],
    }
    ledger = programme(week(days, "weeks: 3"))
    assert ledger.how_often(lambda entry: entry.name == "plank") == 6
    assert (
        ledger.how_often(lambda entry: entry.name == "plank" and entry.hard) == 5
    )  # not on the first Monday
    assert ledger.how_often(lambda entry: entry.name == "dead bug") == 0


def test_sets_by_exercise(gym: Build) -> None:
    ledger = gym(
        "leg press, sets: 3-4",
        "leg extension, sets: 2, side: left",
        "leg press, sets: 2",
        "leg extension, sets: 3, side: right",
        "leg press, sets: 5, rir: 8",
        "moon walk, sets: 9",
    )
    sets = [
        (count.parts[0].entry.name, span(count)) for count in ledger.by_exercise(lambda entry: entry.hard)
    ]
    assert sets == [("leg press", (5, 6)), ("leg extension", (3, 3))]  # the better side


@pytest.mark.parametrize(
    ("focus", "area", "means"),
    [
        ("", "hamstrings", True),
        ("[legs]", "hamstrings", True),
        ("[hams]", "hamstrings", True),
        ("[biceps femoris short head]", "hamstrings", True),
        ("[chest, arms]", "hamstrings", False),
        ("[chest, arms]", "triceps", True),
        ("[trunk]", "lower back", True),
        ("[nothing known]", "hamstrings", False),
    ],
)
def test_what_a_focus_means(gym: Build, focus: str, area: str, means: bool) -> None:
    (week,) = gym("plank, sets: 1", head=f"focus: {focus}" if focus else "").weeks
    assert week.means(area) is means


def test_a_blocks_own_focus_comes_first(programme: Build) -> None:
    text = "programme: Test\nfocus: [legs]\nblocks: [{name: One, weeks: 1, focus: [chest], sessions: [{session: Gym, exercises: [{exercise: plank, sets: 1}]}]}]\n"
    (week,) = programme(text).weeks
    assert (week.means("chest"), week.means("hamstrings")) == (True, False)


# How hard and how heavy a set is


def entry_of(ledger: Ledger) -> SetGroup:
    ((_, entry),) = ledger.entries()
    return entry


@pytest.mark.parametrize(
    ("words", "reserve", "failure"),
    [
        ("rir: 2", Range(2, 2), False),
        ("rir: 0-2", Range(0, 2), False),  # two in reserve will do
        ("rir: 0", Range(0, 0), True),
        ("rpe: 8", Range(2, 2), False),  # 10 - 8: zourdos-2016, J Strength Cond Res 2016;30:267-275
        ("rpe: 7.5-9", Range(1, 3), False),
        ("rpe: 8-10", Range(0, 2), False),  # so will an 8
        ("rpe: 9.5", Range(0, 0), False),  # none left, but a little more load would have gone
        ("rpe: 10", Range(0, 0), True),
        ("rir: 1, rpe: 10", Range(1, 1), False),
        ("reps: amrap", None, True),
        ("reps: amrap, rir: 2", Range(2, 2), False),
        ("reps: 5+", None, True),
        ("reps: 5", None, False),
        ("hold: 30 s", None, False),
    ],
)
def test_repetitions_in_reserve(gym: Build, words: str, reserve: Range | None, failure: bool) -> None:
    entry = entry_of(gym(f"leg press, sets: 3, {words}"))
    assert (entry.reserve, entry.to_failure, entry.stated_effort) == (reserve, failure, reserve is not None)


@pytest.mark.parametrize(
    ("best", "words", "percent"),
    [
        ("", "load: 80-85 %", Range(80, 85)),
        ("back squat: 200 kg", "load: 150 kg", Range(75, 75)),  # 150 / 200
        ("back squat: 200 kg", "load: 140-150 kg", Range(70, 75)),
        ("Back-Squats: 200 kg", "load: 150 kg", Range(75, 75)),
        ("leg press: 200 kg", "load: 150 kg", None),
        ("", "load: 150 kg", None),
        ("back squat: 200 kg", "load: red band", None),
        ("back squat: 200 kg", "load: 90 % of top set", None),
        ("back squat: 200 kg", "load: bodyweight", None),  # body mass not written
        ("back squat: 200 kg", "reps: 5", None),
    ],
)
def test_percent_of_the_best_lift(gym: Build, best: str, words: str, percent: Range | None) -> None:
    ledger = gym(
        f"back squat, sets: 3, {words}", head=f"athlete: {{name: A, best lifts: {{{best}}}}}" if best else ""
    )
    assert entry_of(ledger).percent == percent
    assert entry_of(ledger).percents == ((percent,) if percent else ())


def test_the_body_counts_where_it_is_lifted(gym: Build) -> None:
    athlete = "athlete: {name: A, body mass: 80 kg, best lifts: {pull-up: bodyweight + 20 kg}}"
    assert entry_of(gym("pull-up, sets: 3, load: bodyweight", head=athlete)).percent == Range(
        80, 80
    )  # 80 / (80 + 20)
    assert entry_of(gym("pull-up, sets: 3, load: bodyweight + 10 kg", head=athlete)).percent == Range(90, 90)
    assert entry_of(gym("pull-up, sets: 3, load: bodyweight - 20 kg", head=athlete)).percent == Range(60, 60)


def test_percent_set_by_set(gym: Build) -> None:
    athlete = "athlete: {name: A, best lifts: {back squat: 200 kg}}"
    assert entry_of(gym("back squat, sets: 3, load: 70/75/80 %")).percents == (
        Range(70, 70),
        Range(75, 75),
        Range(80, 80),
    )
    assert entry_of(gym("back squat, sets: 2, load: 140/150 kg", head=athlete)).percents == (
        Range(70, 70),
        Range(75, 75),
    )


def test_a_repetition_maximum_in_percent(gym: Build) -> None:
    # nuzzo-2024: 14.8 repetitions at 70 % in the main curve
    span = entry_of(gym("back squat, sets: 3, load: 15RM")).percent
    assert span is not None
    assert span.low == span.high == pytest.approx(70, abs=1)
    wide = entry_of(gym("back squat, sets: 3, load: 5-15RM")).percent
    assert wide is not None
    assert wide.low == span.low < wide.high < 100


def test_a_best_lift_for_several_repetitions_stands_for_more(gym: Build) -> None:
    # 15 repetitions with 140 kg are about 70 % (nuzzo-2024), so the maximum is about 200 kg
    athlete = "athlete: {name: A, best lifts: {back squat: {load: 140 kg, reps: 15}}}"
    span = entry_of(gym("back squat, sets: 3, load: 100 kg", head=athlete)).percent
    assert span is not None
    assert span.high == pytest.approx(50, abs=1)


def test_on_how_many_visits(programme: Build, week: Text) -> None:
    days = {
        "monday": ["leg press, sets: 3", "leg press, sets: 2"],
        "thursday": ["leg press, sets: 1"],
        "friday": ["plank, sets: 1"],
    }
    (counted,) = programme(week(days)).weeks
    assert counted.how_often(lambda entry: entry.name == "leg press") == 2
    assert counted.how_often(lambda entry: True) == 3
    idle = programme(week({"monday": ["leg press, sets: {1: 0, 2: 1}"]}, "weeks: 2"))
    assert [one.how_often(lambda entry: True) for one in idle.weeks] == [0, 1]


@pytest.mark.parametrize(
    ("phases", "typical"),
    [
        (["return", "return", "build"], [False, True, True]),
        (["build", "return"], [True, False]),
        (["return"], [True]),  # no phase hides a whole programme
    ],
)
def test_only_the_first_week_back_is_not_typical(
    programme: Build, phases: list[str], typical: list[bool]
) -> None:
    rows = "".join(
        f"  - {{name: a, weeks: 1, phase: {phase}, sessions: [{{session: Gym, exercises: [{{exercise: plank, sets: 1}}]}}]}}\n"
        for phase in phases
    )
    assert [week.is_typical() for week in programme(f"programme: Test\nblocks:\n{rows}").weeks] == typical


@pytest.mark.parametrize(
    ("athlete", "pieces"),
    [
        ("", None),
        ("athlete: {name: A}", None),
        ("athlete: {name: A, equipment: [Barbell, rack]}", {"barbell", "rack"}),
    ],
)
def test_equipment(gym: Build, athlete: str, pieces: set[str] | None) -> None:
    assert gym("plank, sets: 1", head=athlete).equipment == pieces


# Laws that hold whatever the programme


EXERCISES = (
    "bench press",
    "back squat",
    "Romanian deadlift",
    "seated leg curl",
    "bent-over row",
    "hip thrust",
    "box jump",
    "side plank",
    "overhead press",
    "moon walk",
)
AREAS = (*catalogue.groups, "legs", "biceps femoris short head")
DAYS = ("monday", "tuesday", "thursday", "saturday")

line = st.tuples(
    st.sampled_from(EXERCISES),
    st.integers(1, 6),
    st.integers(0, 2),
    st.sampled_from(["", ", rir: 2", ", rir: 7", ", side: each"]),
)
plan = st.lists(
    st.tuples(st.sampled_from(DAYS), st.lists(line, min_size=1, max_size=4)), min_size=1, max_size=4
)
Plan = list[tuple[str, list[tuple[str, int, int, str]]]]


def written(sessions: Plan, times: int = 1) -> str:
    parts = ["programme: Test", "sessions:"]
    for index, (day, lines) in enumerate(sessions):
        parts.append(f"  - session: S{index}\n    day: {day}\n    exercises:")
        for exercise, low, more, effort in lines:
            low, high = low * times, (low + more) * times
            parts.append(
                f"      - {{exercise: {exercise}, sets: {low if more == 0 else f'{low}-{high}'}, reps: 5{effort}}}"
            )
    return "\n".join(parts) + "\n"


def counts(tally: Tally) -> dict[tuple[str, str, bool], tuple[float, float]]:
    return {
        (area, kind, hard): span(tally.sets(area, kind, hard=hard))
        for area in AREAS
        for kind in (DIRECT, FRACTIONAL, TOTAL)
        for hard in (True, False)
    }


@settings(max_examples=25, deadline=None)
@given(sessions=plan)
def test_the_days_of_a_week_add_up_to_it(programme: Build, sessions: Plan) -> None:
    (week,) = programme(written(sessions)).weeks
    by_day = [counts(tally) for _, tally in week.days()]
    for key, (low, high) in counts(week).items():
        assert sum(day[key][0] for day in by_day) == low
        assert sum(day[key][1] for day in by_day) == high


@settings(max_examples=25, deadline=None)
@given(sessions=plan)
def test_twice_the_sets_are_twice_every_count(programme: Build, sessions: Plan) -> None:
    as_written = {"spotline.yaml": "rules: {number-implausible: skip}\n"}
    once, twice = (programme(written(sessions, times), as_written) for times in (1, 2))
    doubled = {key: (2 * low, 2 * high) for key, (low, high) in counts(once).items()}
    assert counts(twice) == doubled
    assert twice.all_sets().repetitions() == once.all_sets().repetitions() * 2


@settings(max_examples=25, deadline=None)
@given(sessions=plan, order=st.randoms(use_true_random=False))
def test_the_order_of_sessions_does_not_matter(programme: Build, sessions: Plan, order: object) -> None:
    shuffled = list(sessions)
    order.shuffle(shuffled)  # type: ignore[attr-defined]
    assert counts(programme(written(shuffled)).weeks[0]) == counts(programme(written(sessions)).weeks[0])


@settings(max_examples=25, deadline=None)
@given(sessions=plan)
def test_direct_fractional_and_total_are_in_order(programme: Build, sessions: Plan) -> None:
    ledger = programme(written(sessions))
    for area in AREAS:
        direct, fractional, total = (ledger.sets(area, kind) for kind in (DIRECT, FRACTIONAL, TOTAL))
        assert direct.high <= fractional.high <= total.high
        assert fractional.high == (direct.high + total.high) / 2  # a helping set is half of a direct one
        assert fractional.low <= fractional.middle <= fractional.high


@settings(max_examples=25, deadline=None)
@given(sessions=plan)
def test_the_lines_of_a_count_add_up_to_it(programme: Build, sessions: Plan) -> None:
    ledger = programme(written(sessions))
    for area in AREAS:
        count = ledger.sets(area)
        assert sum(sets.low for _, sets in count.lines()) == count.low
        assert sum(sets.high for _, sets in count.lines()) == count.high


@pytest.mark.parametrize("level", ["", "novice", "intermediate", "advanced"])
def test_a_best_lift_may_grow_with_every_week_after_the_first(
    programme: Build, week: Text, level: str
) -> None:
    athlete = f"athlete: {{name: Ida{f', level: {level}' if level else ''}}}"
    one, five, nine = (
        programme(week({"Gym": ["plank, sets: 1"]}, f"{athlete}\nweeks: {weeks}")).header.growth
        for weeks in (1, 5, 9)
    )
    assert one == 1
    assert five > 1
    assert nine - 1 == pytest.approx(2 * (five - 1))


@pytest.mark.parametrize(
    ("line", "sets"),
    [
        ("{intervals: rowing machine, rounds: 4, distance: 500 m}", 0),  # no lift, whatever it moves
        ("{intervals: bike, rounds: 5, on: 60 s, off: 60 s}", 0),
        ("{intervals: kettlebell swing, rounds: 6, on: 30 s, off: 30 s}", 6),
        ("{intervals: back squat, rounds: 4, on: 30 s, off: 90 s}", 4),
        ("{intervals: moon walk, rounds: 4, on: 30 s, off: 90 s}", 0),
    ],
)
def test_intervals_of_a_lift_are_sets_and_those_of_a_machine_are_none(
    programme: Build, line: str, sets: int
) -> None:
    ledger = programme(f"programme: P\nsessions:\n  - {{session: A, exercises: [{line}]}}\n")
    assert span(ledger.weeks[0].all_sets(hard=False)) == (sets, sets)


def test_blocks_of_one_week_that_follow_one_another_are_looked_at_together(programme: Build) -> None:
    """Of the other blocks each stands for itself."""
    weeks = (2, 1, 1, 1, 3, 1)
    blocks = "".join(
        f"  - {{name: B{number}, weeks: {one}, sessions: [{{session: A, exercises: [{{exercise: plank, sets: 1}}]}}]}}\n"
        for number, one in enumerate(weeks)
    )
    ledger = programme(f"programme: P\nblocks:\n{blocks}")
    assert [len(ledger.of_rota(block).visits) for block in ledger.programme.blocks] == [2, 3, 3, 3, 3, 1]
    assert [len(ledger.of_block(block).visits) for block in ledger.programme.blocks] == [*weeks]


def test_the_last_day_is_a_sunday(programme: Build, week: Text) -> None:
    ledger = programme(week({"Gym": ["plank, sets: 1"]}, "starts: 2026-01-05\nweeks: 3"))
    assert ledger.ends == date(2026, 1, 25)
    assert ledger.day_number(date(2026, 1, 25)) == 21
    undated = programme(week({"Gym": ["plank, sets: 1"]}, "weeks: 3"))
    assert (undated.ends, undated.day_number(date(2026, 1, 25))) == (None, None)


def test_many_weeks_with_other_exercises_are_looked_at_by_themselves(programme: Build, week: Text) -> None:
    lines = ["plank, sets: 1", "dip, sets: 1, in weeks: 1-4", "leg press, sets: 1, in weeks: 5-12"]
    ledger = programme(week({"Gym": lines}, "weeks: 12"))
    alike = [[one.number for one in ledger.with_same_exercises(week)] for week in ledger.weeks]
    assert alike == [[1, 2, 3, 4]] * 4 + [[*range(5, 13)]] * 8
    alone = programme(week({"Gym": lines[:1]}, "weeks: 12"))
    assert {alone.with_same_exercises(week) for week in alone.weeks} == {()}  # that is the block
