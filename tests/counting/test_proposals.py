"""Which line is to hold how many sets, so that a count comes to what is wanted; the sums stand beside each."""

from __future__ import annotations

import pytest

from spotline.lint.counting.counts import NO_SETS
from spotline.lint.counting.proposals import evened, fewer, further

NO_LIMIT = {"spotline.yaml": "rules: {number-implausible: skip}\n"}

FLY, CABLE, PRESS = "dumbbell fly, sets: {}", "cable fly, sets: {}", "bench press, sets: {}"


@pytest.fixture(scope="module")
def chest(programme, week):
    """The sets for the chest in a week of some sessions."""

    def run(days, area="chest"):
        return programme(week(days), NO_LIMIT).weeks[0].sets(area)

    return run


def words(proposal, verb="cut", **more):
    return None if proposal is None else proposal.words(verb, **more)


@pytest.mark.parametrize(
    ("lines", "most", "said"),
    [
        ([FLY.format(5)], 5, None),  # it is no more than the limit
        ([FLY.format(5)], 4, "in A, cut dumbbell fly to 4 sets"),
        ([FLY.format(5)], 1, "in A, cut dumbbell fly to 1 set"),
        ([FLY.format(5)], 0, None),  # a line keeps a set
        ([FLY.format(2), CABLE.format(2)], 2, "in A, cut dumbbell fly and cable fly to 1 set"),
        ([FLY.format(2), CABLE.format(2)], 1, None),
        ([FLY.format("3-4")], 3, "in A, cut dumbbell fly to 2-3 sets"),  # by the high end
        ([FLY.format("1-4")], 3, None),  # its low end would fall to nothing
        ([FLY.format("2-4")], 3, "in A, cut dumbbell fly to 1-3 sets"),
        ([FLY.format(9), CABLE.format(5)], 12, "in A, cut dumbbell fly to 7 sets"),  # the fullest first
        ([CABLE.format(5), FLY.format(9)], 8, "in A, cut dumbbell fly and cable fly to 4 sets"),
        ([FLY.format(5), CABLE.format(9)], 8, "in A, cut cable fly and dumbbell fly to 4 sets"),
        ([FLY.format(6), CABLE.format(9)], 9, "in A, cut cable fly to 5 sets and dumbbell fly to 4 sets"),
        ([FLY.format(70), CABLE.format(70)], 40, "in A, cut dumbbell fly and cable fly to 20 sets"),
        ([FLY.format(70), CABLE.format(70)], 39, None),  # 100 sets are moved, no more
    ],
)
def test_sets_come_off_the_fullest_lines(chest, lines, most, said):
    assert words(fewer(chest({"A": lines}), most)) == said


@pytest.mark.parametrize(
    ("most", "said"),
    [
        (3.5, None),
        (3, "in A, cut bench press to 6 sets"),  # each takes half a set off the triceps
        (2.75, "in A, cut bench press to 5 sets"),
        (2.5, "in A, cut bench press to 5 sets"),
    ],
)
def test_an_indirect_set_counts_half_in_what_comes_off(chest, most, said):
    assert words(fewer(chest({"A": [PRESS.format(7)]}, "triceps"), most)) == said


@pytest.mark.parametrize(
    ("lifts", "said"),
    [
        (2, "in A, cut dumbbell fly and cable fly to 4 sets"),
        (3, "in A, cut dumbbell fly, cable fly and bench press to 4 sets"),
        (4, "in A, cut dumbbell fly, cable fly and bench press to 4 sets, and cut 1 more line"),
        (5, "in A, cut dumbbell fly, cable fly and bench press to 4 sets, and cut 2 more lines"),
    ],
)
def test_three_lines_are_named_and_the_others_counted(chest, lifts, said):
    names = ["dumbbell fly", "cable fly", "bench press", "push-up", "dip"][:lifts]
    assert words(fewer(chest({"A": [f"{name}, sets: 5" for name in names]}), 4 * lifts)) == said


def test_the_session_is_named_where_it_is_the_only_one_or_lines_are_told_apart_by_it(chest):
    one = fewer(chest({"A": [FLY.format(5)]}), 4)
    assert words(one, placed=False) == "cut dumbbell fly to 4 sets"
    two = fewer(chest({"A": [FLY.format(5)], "B": [FLY.format(5)]}), 8)
    assert words(two) == words(two, placed=False) == "cut dumbbell fly (A) and dumbbell fly (B) to 4 sets"


@pytest.mark.parametrize(
    ("lines", "least", "said"),
    [
        ([FLY.format(3)], 5, "in A, raise dumbbell fly to 5 sets"),
        ([FLY.format(3)], 3, "in A, raise dumbbell fly to 4 sets"),  # one at the least
        ([FLY.format(3)], 4.5, "in A, raise dumbbell fly to 5 sets"),
        ([FLY.format("2-4")], 4, "in A, raise dumbbell fly to 4-6 sets"),  # by the low end
        ([FLY.format(3), CABLE.format(5)], 10, "in A, raise dumbbell fly to 5 sets"),
    ],
)
def test_further_sets_go_to_the_line_that_gains_most(chest, lines, least, said):
    assert words(further(chest({"A": lines}), least), "raise") == said


def test_a_direct_line_gains_more_than_one_that_only_helps(chest):
    count = chest({"A": [PRESS.format(4), "cable pushdown, sets: 2"]}, "triceps")  # 4 x 0.5 + 2
    assert words(further(count, 6), "raise") == "in A, raise cable pushdown to 4 sets"
    alone = chest({"A": [PRESS.format(4)]}, "triceps")
    assert words(further(alone, 3), "raise") == "in A, raise bench press to 6 sets"  # 2 sets for one


def test_a_line_on_two_days_gains_twice(programme):
    text = "programme: T\nsessions: [{session: A, day: [monday, thursday], exercises: [{exercise: cable fly, sets: 3}]}]\n"
    count = programme(text).weeks[0].sets("chest")
    assert words(further(count, 9), "raise") == "in A, raise cable fly to 5 sets"  # 3 more are 2 lines of 2
    assert words(fewer(count, 4)) == "in A, cut cable fly to 2 sets"


def test_what_rivals_gain_by_a_line_is_no_gain(chest):
    days = {"A": [PRESS.format(4), "cable pushdown, sets: 2"]}
    triceps, chests = chest(days, "triceps"), chest(days)
    # a press brings half a set to the triceps and a whole one to the chest
    assert words(further(triceps, 5, [chests]), "raise") == "in A, raise cable pushdown to 3 sets"
    # a set on the press gains 1 for the chest, less the mean of 0.5 and 0: three of them gain 2.25
    assert words(further(chests, 6.25, [triceps, NO_SETS]), "raise") == "in A, raise bench press to 7 sets"
    assert further(triceps, 5, [triceps]) is None  # as much for the rival
    assert further(NO_SETS, 2) is None


EXTENSION, CURL = "leg extension, sets: {}", "seated leg curl, sets: {}"


@pytest.mark.parametrize(
    ("more", "less", "most", "said"),
    [
        (9, 4, 2, "in A, move 1 set from leg extension to seated leg curl"),  # 8 to 5
        (9, 3, 2, "in A, move 1 set from leg extension to seated leg curl"),  # 8 is twice 4, which is enough
        (10, 3, 2, "in A, move 2 sets from leg extension to seated leg curl"),  # 9 to 4 is not
        (10, 3, 1, "in A, move 4 sets from leg extension to seated leg curl"),  # 6 to 7
        (2, 1, 1, "in A, move 1 set from leg extension to seated leg curl"),  # 1 is left
        (3, 1, 0.25, None),  # 1 to 3: the last set would have to go
        ("2-10", 3, 1, None),  # a set may go, no more; 5 to 4 is not even
        (1, 1, 0.5, None),
    ],
)
def test_sets_move_to_the_other_side(programme, week, more, less, most, said):
    tally = programme(week({"A": [EXTENSION.format(more), CURL.format(less)]})).weeks[0]
    move = evened(tally.for_actions(["knee extension"]), tally.for_actions(["knee flexion"]), most)
    assert (move and move.words()) == said


def test_sets_move_between_the_fullest_lines_of_each_side(programme, week):
    days = {
        "A": [EXTENSION.format(3), "single-leg leg press, sets: 7"],
        "B": [CURL.format(1), "lying leg curl, sets: 2"],
    }
    tally = programme(week(days)).weeks[0]
    move = evened(tally.for_actions(["knee extension"]), tally.for_actions(["knee flexion"]), 2)
    assert move is not None
    assert move.words() == "move 2 sets from single-leg leg press (A) to lying leg curl (B)"


def test_a_line_that_serves_both_sides_gives_and_takes_nothing(programme, week):
    tally = programme(week({"A": ["back squat, sets: 9", CURL.format(2), EXTENSION.format(2)]})).weeks[0]
    knee, hip = tally.for_actions(["knee extension"]), tally.for_actions(["hip extension"])
    assert evened(knee, hip, 0.5) is None  # only the leg extension could give, and nothing could take
    assert evened(hip, knee, 0.5) is None
    assert evened(knee, NO_SETS, 2) is None
    assert evened(NO_SETS, knee, 2) is None


def test_a_line_of_one_set_gives_nothing_on_however_many_days(programme):
    text = (
        "programme: T\nsessions:\n"
        "  - {session: A, day: [monday, wednesday, friday], exercises: [{exercise: leg extension, sets: 1}]}\n"
        "  - {session: B, exercises: [{exercise: leg press, sets: 2}, {exercise: seated leg curl, sets: 1}]}\n"
    )
    tally = programme(text).weeks[0]
    move = evened(tally.for_actions(["knee extension"]), tally.for_actions(["knee flexion"]), 2)
    assert move is not None  # 3 + 2 to 1, then 4 to 2
    assert move.words() == "in B, move 1 set from leg press to seated leg curl"


def test_sets_move_to_a_line_that_serves_the_other_side_alone(programme, week):
    lines = [EXTENSION.format(9), "back squat, sets: 5", "Romanian deadlift, sets: 2"]
    tally = programme(week({"A": lines})).weeks[0]
    move = evened(tally.for_actions(["knee extension"]), tally.for_actions(["hip extension"]), 1.5)
    assert move is not None  # 14 to 7, then 12 to 9; the squat serves both
    assert move.words() == "in A, move 2 sets from leg extension to Romanian deadlift"


def test_a_line_without_sets_in_the_week_is_no_line_to_change(chest):
    count = chest({"A": [FLY.format(5), "cable fly, sets: {1: 0}"]})
    assert words(fewer(count, 4)) == "in A, cut dumbbell fly to 4 sets"
    assert words(further(count, 6), "raise") == "in A, raise dumbbell fly to 6 sets"
