"""Why there is none: demands that cannot be met at once, in a coach's words, and what to loosen."""

from __future__ import annotations

import random

import highspy
import pytest

from spotline.lint.engine.registry import all_rules
from spotline.lint.solving.at_once import AtOnce
from spotline.lint.solving.foresight import Foresight
from spotline.lint.solving.simplex import least
from spotline.lint.solving.solve import Solution
from spotline.tests.solving.test_solving import repository, search_for, solved

assert repository  # the fixture holds here, too

GROUPS = ("quadriceps", "hamstrings", "chest", "lats", "front shoulder", "elbow flexors", "triceps")

SEVEN = """\
programme: Seven groups
athlete: {{name: Bo, level: intermediate, minutes: {minutes}}}
goal: hypertrophy
must hold:
{asked}
sessions:
  - session: One
    day: monday
    exercises:
      - {{exercise: back squat, sets: 3, reps: 8-12, rir: 2, rest: 2 min, warm-up sets: 2}}
      - {{exercise: bench press, sets: 3, reps: 8-12, rir: 2, rest: 2 min, warm-up sets: 1}}
      - {{exercise: lat pulldown, sets: 3, reps: 8-12, rir: 2, rest: 2 min}}
      - {{exercise: seated leg curl, sets: 2, reps: 8-12, rir: 2, rest: 2 min}}
  - session: Two
    day: thursday
    exercises:
      - {{exercise: Romanian deadlift, sets: 3, reps: 8-12, rir: 2, rest: 2 min, warm-up sets: 1}}
      - {{exercise: overhead press, sets: 3, reps: 8-12, rir: 2, rest: 2 min, warm-up sets: 1}}
      - {{exercise: seated cable row, sets: 3, reps: 8-12, rir: 2, rest: 2 min}}
      - {{exercise: leg press, sets: 2, reps: 8-12, rir: 2, rest: 2 min}}
"""

AT_HOME = """\
programme: Home
athlete: {name: Ida, level: novice, equipment: [dumbbells, flat bench]}
goal: general health
must hold: [{weekly sets of: vertical pull, at least: 4}]
sessions:
  - session: Home
    day: [monday, thursday]
    exercises:
      - {exercise: goblet squat, sets: 3, reps: 10}
      - {exercise: dumbbell bench press, sets: 3, reps: 10}
      - {exercise: dumbbell row, sets: 3, reps: 10}
"""

CAPPED = """\
programme: One day
athlete: {name: Bo, level: intermediate}
goal: hypertrophy
must hold: [{weekly sets of: hamstrings, at least: 19}]
sessions:
  - session: One
    day: monday
    exercises:
      - {exercise: back squat, sets: 3, reps: 8-12, rir: 2}
      - {exercise: Romanian deadlift, sets: 3, reps: 8-12, rir: 2}
      - {exercise: seated leg curl, sets: 3, reps: 8-12, rir: 2}
"""


def seven(sets: int, minutes: int) -> str:
    asked = "\n".join(f"  - {{weekly sets of: {group}, at least: {sets}}}" for group in GROUPS)
    return SEVEN.format(minutes=minutes, asked=asked)


def why(solution: Solution) -> list[str]:
    return [" ".join(one.why) for one in solution.stays]


def test_minutes_that_do_not_hold_what_is_asked_are_named_with_the_way_out() -> None:
    said = [one for one in why(solved(seven(16, 45), "demand-not-held")) if "hold" in one]
    assert said == [
        "As sessions go, 2 x 45 min hold 9 sets a week for each of the 7 that are asked for; 16 take about"
        " 2 x 75 min, pairs of small lifts or a third day."
    ]  # of the others it is said that it is for the same reason


def test_what_nothing_at_hand_trains_is_said_with_what_would_do() -> None:
    (said,) = why(solved(AT_HOME, "demand-not-held"))
    assert said == (
        "With dumbbells and a flat bench nothing is a vertical pull; a band or a pull-up bar would do."
    )


def test_a_limit_that_stands_against_it_is_named_with_how_far_it_would_have_to_give() -> None:
    (said,) = why(solved(CAPPED, "demand-not-held"))
    assert said == (
        "19 sets a week for hamstrings cannot be had with at most 16 in One (session-sets-for-muscle-high)."
        " It takes 19 in One or a second day."
    )


BOTH = """\
programme: Two of a crew
athletes:
{members}
goal: hypertrophy
must hold:
  - {{weekly sets of: chest, at least: 10}}
  - {{weekly sets of: lats, at least: 10}}
sessions:
  - session: One
    day: monday
    exercises:
      - {{exercise: bench press, sets: 2, reps: 8-12, rir: 2, rest: 2 min}}
      - {{exercise: lat pulldown, sets: 2, reps: 8-12, rir: 2, rest: 2 min}}
  - session: Two
    day: thursday
    exercises:
      - {{exercise: overhead press, sets: 2, reps: 8-12, rir: 2, rest: 2 min}}
      - {{exercise: seated cable row, sets: 2, reps: 8-12, rir: 2, rest: 2 min}}
"""

ANN = (
    "  - {athlete: {name: Ann, level: intermediate, minutes: 75}, adjust: [{session: Two, leave out: true}]}"
)
BEA = "  - {name: Bea, level: intermediate, minutes: 22}"


def test_two_who_only_together_cannot_have_what_is_asked_are_both_named() -> None:
    """All that Ann needs has to stand in One, for which Bea has no minutes; alone each of them could have it."""
    together = why(solved(BOTH.format(members=f"{ANN}\n{BEA}"), "demand-not-held"))
    assert together[0].startswith("For Bea and Ann: as sessions go, 2 x 22 min hold 6 sets a week for each")
    for alone in (ANN, BEA):
        said = why(solved(BOTH.format(members=alone), "demand-not-held"))
        assert not any("min hold" in one or "cannot be had" in one for one in said)


def whole_of(text: str) -> AtOnce:
    search = search_for(text, "demand-not-held")
    foresight = Foresight(search.plan, [rule for rule in all_rules() if not rule.off], {}, {})
    (ledger,) = search.plan.ledgers
    return AtOnce(search.plan, [ledger.weeks[0]], foresight.demands)


def floors_and_others(whole: AtOnce) -> tuple[list, list]:  # type: ignore[type-arg]
    wanted = [one for one in whole.demands if one.rule == "demand-not-held"]
    return wanted, [one for one in whole.demands if one.is_held and one not in wanted]


def test_a_core_cannot_be_met_and_every_part_of_it_is_needed() -> None:
    whole = whole_of(seven(18, 45))
    core = whole.core(*floors_and_others(whole))
    assert {one.unit for one in core} >= {"sets", "min"}
    assert whole.core(core, []) == core
    for one in core:
        assert whole.core([other for other in core if other is not one], []) == []


def test_more_minutes_hold_no_less() -> None:
    most = []
    for minutes in (30, 45, 60, 75):
        whole = whole_of(seven(40, minutes))
        wanted, others = floors_and_others(whole)
        times = [one for one in others if one.unit == "min"]
        most.append(whole.most_for_each([*wanted, *times], wanted) or 0.0)
    assert most == sorted(most)
    assert most[0] < most[-1]


def test_what_is_said_to_fit_fits_and_no_more() -> None:
    whole = whole_of(seven(18, 45))
    wanted, others = floors_and_others(whole)
    core = whole.core(wanted, others)
    floors = [one for one in core if one.least is not None]
    most = whole.most_for_each(core, floors)
    assert most is not None
    for asked, fits in ((most - 0.01, True), (most + 0.01, False)):
        again = whole_of(seven(18, 45))
        for one in again.demands:
            if one.rule == "demand-not-held":
                one.least = asked
        changed = AtOnce(again._plan, again._weeks, again.demands)
        chosen = [
            one
            for one in changed.demands
            if (one.rule, one.group) in {(other.rule, other.group) for other in core}
        ]
        assert (changed.core(chosen, []) == []) == fits


@pytest.mark.parametrize("seed", range(40))
def test_the_simplex_method_agrees_with_a_solver_from_outside(seed: int) -> None:
    """HiGHS, by its package highspy."""
    draw = random.Random(seed)
    numbers, rows = draw.randint(1, 6), draw.randint(1, 8)
    matrix = [[float(draw.choice((0, 0, 1, 2, -1, 0.5))) for _ in range(numbers)] for _ in range(rows)]
    matrix.append([1.0] * numbers)  # so that every cost has an end
    bounds = [float(draw.randint(-4, 12)) for _ in range(rows)] + [50.0]
    cost = [float(draw.randint(-3, 3)) for _ in range(numbers)]
    highs = highspy.Highs()
    highs.setOptionValue("output_flag", False)
    own = [highs.addVariable(0, highspy.kHighsInf) for _ in range(numbers)]
    for row, bound in zip(matrix, bounds, strict=True):
        if any(row):
            highs.addConstr(
                sum(factor * one for factor, one in zip(row, own, strict=True) if factor) <= bound
            )
        elif bound < 0:
            highs.addConstr(own[0] <= -1)
    highs.minimize(sum(factor * one for factor, one in zip(cost, own, strict=True)))
    answer = least(cost, matrix, bounds)
    if highs.getModelStatus() == highspy.HighsModelStatus.kOptimal:
        assert answer.value == pytest.approx(highs.getObjectiveValue(), abs=1e-6)
    else:
        assert answer.value is None
        assert answer.is_known
        blame = answer.blame  # the blamed rows together ask for less than nothing (Farkas)
        assert all(one >= -1e-9 for one in blame)
        together = [sum(w * row[at] for w, row in zip(blame, matrix, strict=True)) for at in range(numbers)]
        assert all(one >= -1e-6 for one in together)
        assert sum(w * bound for w, bound in zip(blame, bounds, strict=True)) < 0
