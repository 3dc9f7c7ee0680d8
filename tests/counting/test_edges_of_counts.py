"""Counts at their edges: no sets, sides, complexes, words, lines, and what is asked of a tally by several days."""

from __future__ import annotations

import pytest

from spotline.lint.body import catalogue
from spotline.lint.counting import credits
from spotline.lint.counting.counts import Count, counted_lines
from spotline.lint.counting.credits import (
    DIRECT,
    FRACTIONAL,
    TOTAL,
    as_counted,
    credit,
    credits_of,
    group_credits_of,
    once_each,
    trains,
)
from spotline.lint.counting.session_time import ramp_up
from spotline.lint.model.quantities import Range


def span(count):
    return count.low, count.high


def named(count):
    return [(line.place.excerpt, str(sets)) for line, sets in count.lines()]


NO_LIMIT = {"spotline.yaml": "rules: {number-implausible: skip}\n"}


@pytest.fixture(scope="module")
def one_week(programme, week):
    def run(days, head=""):
        days = days if isinstance(days, dict) else {"Gym": days}
        return programme(week(days, head), NO_LIMIT).weeks[0]

    return run


# Words of counts


@pytest.mark.parametrize(
    ("sets", "counted", "said"),
    [
        (Range(3, 3), Range(3, 3), "3 sets"),
        (Range(1, 1), Range(1, 1), "1 set"),
        (Range(3, 4), Range(3, 4), "3-4 sets"),
        (Range(6, 6), Range(3, 3), "6 indirect sets, counted as 3"),
        (Range(1, 1), Range(0.5, 0.5), "1 indirect set, counted as 0.5"),
        (Range(3, 4), Range(1.5, 2), "3-4 indirect sets, counted as 1.5-2"),
        (Range(6, 6), Range(4, 4), "6 sets, counted as 4"),  # some direct, some indirect
    ],
)
def test_how_sets_are_counted(sets, counted, said):
    assert as_counted(sets, counted) == said


@pytest.mark.parametrize(
    ("sets", "low", "high", "said", "most", "middle", "any_"),
    [
        ("3", 3, 3, "3", "3", 3, True),
        ("3-4", 3, 4, "3-4", "up to 4", 3.5, True),
        ("0-1", 0, 1, "0-1", "up to 1", 0.5, True),
    ],
)
def test_a_number_in_words(one_week, sets, low, high, said, most, middle, any_):
    count = one_week([f"dumbbell fly, sets: {{1: {sets}}}"]).sets("chest")
    assert (span(count), str(count), count.most, count.middle, bool(count)) == (
        (low, high),
        said,
        most,
        middle,
        any_,
    )


def test_lines_without_sets_are_named_only_where_no_other_is(programme, week):
    lines = ["dumbbell fly, sets: {1: 0, 2: 2}", "cable fly, sets: {1: 3, 2: 0}", "plank, sets: {1: 1, 2: 0}"]
    first, second = programme(week({"Gym": lines}, "weeks: 2")).weeks
    assert named(first.sets("chest")) == [("cable fly", "3")]
    assert named(second.sets("chest")) == [("dumbbell fly", "2")]
    none = second.sets_where(lambda group: group.name == "cable fly")
    assert named(none) == [("cable fly", "0")]
    assert (bool(none), none.from_one_line(), none.days(), none.occasions()) == (False, True, [], 0)
    assert first.sets("chest").from_one_line()  # the other brings none


def test_lines_stand_in_the_order_of_the_file(one_week):
    week = one_week({"thursday": ["cable fly, sets: 1"], "monday": ["dumbbell fly, sets: 2", "dip, sets: 3"]})
    assert [name for name, _ in named(week.sets("chest"))] == ["cable fly", "dumbbell fly", "dip"]
    assert [line.place.excerpt for line in week.sets("chest").by_line()] == [
        "dumbbell fly",
        "dip",
        "cable fly",
    ]
    assert not week.sets("chest").from_one_line()
    two = one_week(["cable fly, sets: 1", "dip, sets: 1"]).sets("chest")
    assert not two.from_one_line()


def test_days_and_occasions_of_a_count(one_week):
    days = {
        "monday Early": ["cable fly, sets: 1"],
        "monday Late": ["cable fly, sets: 1"],
        "thursday": ["cable fly, sets: {1: 0}"],
        "friday": ["plank, sets: 2"],
        "Any": ["cable fly, sets: 2"],
        "Other": ["cable fly, sets: 2"],
        "Third": ["cable fly, sets: 2"],
    }
    count = one_week(days).sets("chest")
    assert (count.days(), count.occasions()) == ([1], 4)  # Monday once; three without a day


def test_a_part_of_a_count_is_the_count_where_all_of_it_passes(one_week):
    count = one_week(["cable fly, sets: 2, reps: 5", "dip, sets: 3, reps: 12"]).sets("chest")
    assert count.where(lambda group: True) is count
    assert span(count.where(lambda group: group.slot == "light")) == (3, 3)
    assert span(count.where(lambda group: False)) == (0, 0)
    assert count.repetitions() == Range(46, 46)  # 2 x 5 + 3 x 12


def test_what_each_line_brings_is_told(one_week):
    days = {
        "monday Push": ["bench press, sets: 2", "cable pushdown, sets: 3"],
        "thursday Pull": ["dip, sets: {1: 0}"],
    }
    count = one_week(days).sets("triceps")
    assert list(count.shares().values()) == [
        "Push, bench press, Monday: 2 indirect sets, counted as 1",
        "Push, cable pushdown, Monday: 3 sets",
    ]
    told = counted_lines(count)
    assert [one.words for one in told] == list(count.shares().values())
    assert [one.share for one in told] == [(1, 1), (3, 3)]


def test_lines_of_several_counts_are_told_once_and_without_their_numbers(one_week):
    week = one_week(["bench press, sets: 2", "cable pushdown, sets: 3", "leg press, sets: {1: 0}"])
    both = counted_lines(week.sets("chest"), week.sets("triceps"), of="arms")
    assert [(one.place.excerpt, one.share) for one in both] == [
        ("bench press", None),
        ("cable pushdown", None),
    ]
    assert both[0].words == "Gym, bench press: 2 sets"  # as the first count has it
    assert counted_lines(week.sets("triceps"), week.sets("chest"))[0].words.endswith("counted as 1")
    assert counted_lines(week.sets("quadriceps")) == ()


def test_of_a_line_on_two_days_both_are_named(programme):
    text = "programme: T\nsessions: [{session: A, day: [monday, thursday], exercises: [{exercise: cable fly, sets: 3}]}]\n"
    (said,) = programme(text).weeks[0].sets("chest").shares().values()
    assert said == "A, cable fly, Monday and Thursday: 6 sets"


def test_a_number_that_is_known_puts_its_parts_together_once():
    asked = []

    def parts():
        asked.append(1)
        return []

    count = Count.of(2, 3, parts)
    assert (count.low, count.high, asked) == (2, 3, [])
    assert count.parts is count.parts
    assert asked == [1]


# What a set counts


def lift(name):
    return catalogue.exercise(name)


@pytest.mark.parametrize(
    ("name", "area", "weight"),
    [
        ("bench press", "chest", 1.0),
        ("bench press", "triceps", 0.5),
        ("bench press", "calves", 0.0),
        ("bench press", "arms", 0.5),  # a region: the most of its muscles
        ("barbell curl", "arms", 1.0),
        ("bench press", "legs", 0.0),
        ("bench press", "no such area", 0.0),
    ],
)
def test_what_one_set_counts(name, area, weight):
    assert credit(lift(name), area) == weight


def test_the_groups_of_a_muscle_are_laid_out_once(monkeypatch):
    for table in ("_CREDITS", "_GROUP_CREDITS", "_GROUPS_OF"):
        monkeypatch.setattr(credits, table, {})
    assert credit(lift("bench press"), "chest") == 1.0
    laid_out = {muscle: [*groups] for muscle, groups in credits._GROUPS_OF.items()}
    assert credit(lift("barbell curl"), "biceps") == 1.0
    assert laid_out == credits._GROUPS_OF


@pytest.mark.parametrize(
    ("actions", "areas", "said"),
    [
        (("knee flexion",), (), True),
        (("hip hinge",), (), False),
        ((), ("hamstrings",), True),
        ((), ("calves", "hamstrings"), True),
        ((), ("chest",), False),
        ((), (), False),
        (("hip hinge",), ("chest",), False),
        (("hip hinge",), ("hamstrings",), True),
    ],
)
def test_what_an_exercise_is_for(actions, areas, said):
    assert trains(lift("seated leg curl"), actions, areas) is said


COMPLEX = "{complex: [{exercise: %s, reps: 3}, {exercise: %s, reps: 3}], sets: 4, load: 40 kg}"


@pytest.fixture(scope="module")
def complexes(programme):
    def run(*items):
        lines = "".join(f"      - {one}\n" for one in items)
        return programme(f"programme: T\nsessions:\n  - session: A\n    exercises:\n{lines}").weeks[0]

    return run


def test_of_a_complex_a_set_counts_once(complexes):
    week = complexes(
        COMPLEX % ("Romanian deadlift", "bent-over row"), "{exercise: leg press, sets: 2, reps: 9}"
    )
    assert span(week.all_sets()) == (6, 6)
    assert span(week.sets("hamstrings")) == (4, 4)
    twice = complexes(COMPLEX % ("front squat", "back squat"))
    assert span(twice.sets("quadriceps")) == span(twice.sets("quadriceps", DIRECT)) == (4, 4)
    assert span(twice.for_actions(["knee extension"])) == (4, 4)
    assert twice.has_complexes
    assert not complexes("{exercise: leg press, sets: 2, reps: 9}").has_complexes


@pytest.mark.parametrize("lifts", [("bench press", "cable pushdown"), ("cable pushdown", "bench press")])
def test_of_a_complex_the_lift_counts_that_trains_an_area_most(complexes, lifts):
    week = complexes(COMPLEX % lifts)
    assert span(week.sets("triceps")) == (4, 4)  # direct in the pushdown, by half in the press
    assert [line.place.excerpt for line, _ in week.sets("triceps").lines()] == ["cable pushdown"]
    assert span(week.sets("chest")) == (4, 4)


def test_two_complexes_count_each(complexes):
    week = complexes(COMPLEX % ("front squat", "back squat"), COMPLEX % ("leg press", "back squat"))
    assert span(week.sets("quadriceps")) == span(week.all_sets()) == (8, 8)
    groups = week.visits[0].own
    assert [group.name for group in once_each(groups)] == ["front squat", "leg press"]
    assert week.how_often(lambda group: True) == 1


def test_totals_with_a_complex_on_one_day_are_those_of_all_days(programme):
    days = "".join(
        f"  - {{session: {day}, day: {day}, exercises: [{lines}]}}\n"
        for day, lines in (
            ("monday", COMPLEX % ("bent-over row", "barbell curl")),
            ("thursday", "{exercise: lat pulldown, sets: 2-5}, {exercise: dip, sets: 1-3}"),
            ("friday", "{exercise: barbell curl, sets: 1-2}, {exercise: leg press, sets: 3, rir: 8}"),
        )
    )
    (week,) = programme(f"programme: T\nsessions:\n{days}").weeks
    totals = week.totals(True)
    # direct 4 in the complex, once a set, and 1-2 in the curl; indirect 2-5 in the pulldown
    assert totals["biceps"] == [5, 6, 2, 5]
    assert totals["chest"] == [1, 3, 0, 0]  # of the second day alone
    assert totals["lats"] == [6, 9, 0, 0]  # 4 in the row, 2-5 in the pulldown
    assert totals["lower back"] == [0, 0, 4, 4]  # of the first day alone: it helps in the row
    assert "quadriceps" not in totals  # the leg press is easy
    assert week.totals(False)["quadriceps"] == [3, 3, 0, 0]


def test_of_easy_work_beside_a_complex_no_set_is_hard(complexes):
    week = complexes(
        COMPLEX % ("front squat", "back squat"), "{exercise: leg press, sets: 2, reps: 9, rir: 8}"
    )
    assert span(week.sets("quadriceps")) == (4, 4)
    assert span(week.sets("quadriceps", hard=False)) == (6, 6)
    assert week.totals(True)["quadriceps"] == [4, 4, 0, 0]


def test_where_nothing_is_a_complex_all_groups_stay(one_week):
    groups = one_week(["plank, sets: 1", "dip, sets: 1"]).visits[0].own
    assert once_each(groups) is groups


# What is asked of a tally


@pytest.mark.parametrize(
    ("line", "area", "count", "brings"),
    [
        ("bench press, sets: 1", "chest", TOTAL, True),
        ("bench press, sets: 1", "triceps", TOTAL, True),
        ("bench press, sets: 1", "triceps", FRACTIONAL, True),
        ("bench press, sets: 1", "triceps", DIRECT, False),
        ("bench press, sets: 1", "chest", DIRECT, True),
        ("bench press, sets: {1: 0}", "chest", TOTAL, False),
        ("bench press, sets: {1: 0-1}", "chest", TOTAL, True),
        ("bench press, sets: 1, rir: 9", "chest", TOTAL, True),  # hard or not
        ("bench press, sets: 1", "calves", TOTAL, False),
    ],
)
def test_whether_any_set_counts_for_an_area(one_week, line, area, count, brings):
    assert one_week([line]).brings(area, count) is brings


def test_a_test_may_narrow_what_brings_sets(one_week):
    week = one_week(["bench press, sets: 1, reps: 5", "plank, sets: 1"])
    assert week.brings("chest", test=lambda group: group.slot == "heavy")
    assert not week.brings("chest", test=lambda group: group.slot == "light")
    assert week.brings("triceps", test=lambda group: True)  # it helps in the press
    assert not week.brings("triceps", DIRECT, lambda group: True)


def test_an_unknown_exercise_brings_nothing(one_week):
    week = one_week(["moon walk, sets: 3", "bench press, sets: 1"])
    assert week.brings("chest")
    assert not week.brings("calves")


def test_of_two_sides_neither_adds_to_the_other(one_week):
    week = one_week([f"leg extension, sets: 3, side: {side}" for side in ("left", "right")])
    assert week.groups_from(3) == ["quadriceps"]
    assert week.groups_from(3.5) == []


@pytest.mark.parametrize("side", ["", ", side: left"])
@pytest.mark.parametrize(
    ("least", "count", "groups"),
    [
        (4, FRACTIONAL, ["chest"]),
        (4.5, FRACTIONAL, []),
        (2, DIRECT, ["chest"]),
        (4, TOTAL, ["chest", "front shoulder", "triceps", "upper chest"]),
        (2, FRACTIONAL, ["chest", "front shoulder", "triceps", "upper chest"]),
        (2.5, FRACTIONAL, ["chest"]),
    ],
)
def test_the_groups_with_as_many_sets(one_week, side, least, count, groups):
    week = one_week(
        [f"dumbbell bench press, sets: 3-4{side}", "leg press, sets: 9, rir: 8", "calf raise, sets: {1: 0}"]
    )
    assert sorted(week.groups_from(least, count)) == groups
    if not side:
        assert {"quadriceps", "chest", "calves"} <= {*week.groups()}


def test_easy_sets_are_no_hard_ones_on_any_day(one_week):
    days = {"monday": ["cable fly, sets: 2"], "thursday": ["cable fly, sets: 3, rir: 8"]}
    week = one_week(days)
    assert span(week.sets("chest")) == (2, 2)
    assert span(week.sets("chest", hard=False)) == (5, 5)
    assert week.totals(True)["chest"] == [2, 2, 0, 0]
    assert week.totals(False)["chest"] == [5, 5, 0, 0]
    assert span(week.all_sets(hard=True)) == (2, 2)
    assert span(week.sets_where(lambda group: True)) == (5, 5)
    assert span(week.sets_where(lambda group: True, hard=True)) == (2, 2)


def test_what_was_counted_once_is_kept(one_week):
    week = one_week({"monday": ["cable fly, sets: 2"], "thursday": ["cable fly, sets: 3, rir: 8"]})
    for hard in (True, False):
        assert week.totals(hard) is week.totals(hard)
        assert week.sets("chest", hard=hard) is week.sets("chest", hard=hard)
        assert week.all_sets(hard=hard) is week.all_sets(hard=hard)
        assert week.for_actions(["hip hinge", "squat"], hard=hard) is week.for_actions(
            ["hip hinge", "squat"], hard=hard
        )
    assert week.groups() is week.groups()
    assert week.entries() is week.entries()
    assert week.lifts() is week.lifts()
    assert week.by_day() is week.by_day()
    assert credits_of(lift("cable fly")) is credits_of(lift("cable fly"))
    assert group_credits_of(lift("cable fly")) is group_credits_of(lift("cable fly"))


def test_totals_keep_direct_and_indirect_sets_apart(one_week):
    days = {
        "monday": ["bench press, sets: 2-3", "cable pushdown, sets: 1-4"],
        "thursday": ["barbell curl, sets: 2", "bench press, sets: 1-5"],
    }
    assert one_week(days).totals(True)["triceps"] == [1, 4, 3, 8]
    assert one_week(days).totals(True)["chest"] == [3, 8, 0, 0]
    assert "calves" not in one_week(days).totals(True)


@pytest.mark.parametrize(
    ("left", "right", "most", "lines"),
    [
        (3, 2, 3, ["left"]),
        (2, 3, 3, ["right"]),
        (2, 2, 2, ["left"]),  # the left, where both have as many
    ],
)
def test_without_a_side_the_one_with_more_sets_is_counted(one_week, left, right, most, lines):
    week = one_week(
        [f"leg extension, sets: {left}, side: left", f"leg extension, sets: {right}, side: right"]
    )
    for count in (week.sets("quadriceps"), week.for_actions(["knee extension"])):
        assert count.high == most
        assert [part.entry.side for part in count.parts] == lines
    assert week.sets("quadriceps", side="right").high == right
    assert week.sets("quadriceps", side="left").high == left


def test_one_sided_work_on_one_day_makes_the_week_so(one_week):
    days = {"monday": ["leg extension, sets: 3, side: left"], "thursday": ["leg extension, sets: 2"]}
    week = one_week(days)
    assert [visit.one_sided for visit in week.visits] == [True, False]
    assert week.one_sided
    assert week.sets("quadriceps", side="right").high == 2
    assert week.sets("quadriceps").high == 5


@pytest.mark.parametrize(
    ("lines", "actions", "areas", "could", "open_", "named"),
    [
        (["the usual, sets: 3"], ("knee flexion",), (), True, False, ["the usual"]),
        (
            ["seated leg crul, sets: 3"],
            ("knee flexion",),
            (),
            True,
            True,
            [],
        ),  # a slip: it is known what it means
        (["seated leg crul, sets: 3"], ("hip hinge",), (), False, False, []),
        (["seated leg curl, sets: 3"], ("knee flexion",), (), False, False, []),
    ],
)
def test_what_a_line_that_cannot_be_counted_leaves_open(
    reviewed, week, lines, actions, areas, could, open_, named
):
    (one,) = reviewed(week({"Gym": lines})).files
    tally = one.ledger
    assert tally.could_hold(actions, areas) is could
    assert tally.leaves_open(actions, areas) is open_
    assert tally.may_train(actions, areas) == named


@pytest.mark.parametrize(
    ("item", "actions", "areas", "open_"),
    [
        ("{own choice: trunk, minutes: 10}", (), ("abdominals",), True),
        ("{own choice: trunk, minutes: 10}", (), ("calves",), False),
        ("{own choice: arms, minutes: 10}", (), ("biceps", "calves"), True),
        ("{exercise: plank, sets: 3}", (), ("abdominals",), False),
        ("{own choice: what you like, minutes: 10, trains: [biceps]}", (), ("arms",), True),
        ("{own choice: trunk, minutes: 10, trains: [biceps]}", (), ("abdominals",), False),  # by what it says
        ("{own choice: hip hinge, minutes: 10}", ("squat", "hip hinge"), (), True),
        ("{own choice: hip hinge, minutes: 10}", ("squat",), (), False),
        ("{intervals: squat, rounds: 4, on: 60 s, off: 60 s}", ("squat",), (), False),
        ("{own choice: x, minutes: 10, trains: [hip hinge, biceps]}", ("hip hinge",), (), True),
        ("{own choice: trunk, minutes: 10}", (), ("no such area",), False),
    ],
)
def test_an_own_choice_leaves_open_what_it_is_for(complexes, item, actions, areas, open_):
    week = complexes(item, "{exercise: leg press, sets: 2, reps: 9}")
    assert week.leaves_open(actions, areas) is open_
    assert week.could_hold(actions, areas) is open_


def test_repetitions_count_once_a_set_of_a_complex(complexes):
    week = complexes(COMPLEX % ("front squat", "back squat"))
    assert week.all_sets().repetitions() == Range(12, 12)


# Warm-up sets that nobody wrote


HEAVY = "back squat, sets: 5, reps: 3, rest: 3 min"


@pytest.mark.parametrize(
    ("lines", "low", "high"),
    [
        ([HEAVY], 3, 5),
        ([HEAVY, "bench press, sets: 3, reps: 5"], 4, 7),  # another movement: 1-2 more
        ([HEAVY, "bench press, sets: 3, reps: 5", "bent-over row, sets: 3, reps: 5"], 5, 9),
        ([HEAVY, "front squat, sets: 3, reps: 5"], 3, 5),  # the same one
        ([f"{HEAVY}, warm-up sets: 2"], 0, 0),
        ([f"{HEAVY}, warm-up sets: 0"], 0, 0),
        ([f"{HEAVY}, warm-up sets: 2", "bench press, sets: 3, reps: 5"], 3, 5),
        (["back squat, sets: 5, reps: 7"], 3, 5),
        (["back squat, sets: 5, reps: 8"], 0, 0),
        (["back squat, sets: 5, reps: 7, load: 69 %"], 0, 0),
        (["back squat, sets: 5, reps: 7, load: 70 %"], 3, 5),
        (["back squat, sets: 5, reps: 7, load: 60-70 %"], 3, 5),
        (["back squat, sets: {1: 0}, reps: 3"], 0, 0),
        (["back squat, sets: 5, reps: 3, rir: 8"], 0, 0),
        (["moon walk, sets: 5, reps: 3"], 0, 0),
        (["leg extension, sets: 5, reps: 5"], 0, 0),
        (["pull-up, sets: 5, reps: 5"], 0, 0),
        (["back squat, work: [{sets: 1, reps: 3}, {sets: 3, reps: 12}]"], 3, 5),  # by the first sets
        (["back squat, work: [{sets: 3, reps: 12}, {sets: 1, reps: 3}]"], 0, 0),
    ],
)
def test_warm_up_sets_that_are_assumed(one_week, lines, low, high):
    seconds = ramp_up(one_week(lines).visits[0].own)
    assert (seconds.low, seconds.high) == (low * 60, high * 150)
