from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.body import catalogue, curves

LIFTS = ["", *curves.LIFTS]
heavy = st.floats(60, 100)


@pytest.mark.parametrize("lift", LIFTS)
@given(one=heavy, other=heavy)
def test_a_heavier_load_never_allows_more_repetitions(lift, one, other):
    light, hard = (curves.possible(percent, lift) for percent in sorted((one, other)))
    assert light is not None
    assert hard is not None
    assert light.mean >= hard.mean
    assert light.spread >= hard.spread
    assert hard.mean >= 1


@pytest.mark.parametrize("percent", [59.9, 0, -5, 100.1, 140])
def test_outside_the_table_nothing_is_said(percent):
    assert curves.possible(percent) is None
    assert curves.possible(percent, "leg press") is None


def test_ends_of_the_curves():
    for lift in LIFTS:
        held = curves.possible(100, lift)
        assert held is not None
        assert (held.mean, held.spread) == (1, 0.5)
    below = curves.possible(65, "leg press")
    assert below is not None
    assert below.mean == pytest.approx(17.11 + 19.0 - 14.80)


def test_what_few_lifters_manage():
    held = curves.possible(80)
    assert held is not None
    assert held.beyond(2) == pytest.approx(9.75 + 2 * 2.51)
    assert held.beyond(0) == held.mean


@given(repetitions=st.floats(1, 19.5))
def test_rm_loads_turn_the_curve_round(repetitions):
    percent = curves.percent_for(repetitions)
    assert percent is not None
    held = curves.possible(percent)
    assert held is not None
    assert held.mean == pytest.approx(repetitions, abs=0.001)


def test_rm_loads():
    assert curves.percent_for(1) == pytest.approx(100)
    assert curves.percent_for(10) == pytest.approx(79.5, abs=0.1)
    assert curves.percent_for(10, "bench press") == pytest.approx(77.8, abs=0.1)
    assert curves.percent_for(0.5) is None
    assert curves.percent_for(25) is None
    assert curves.percent_for(20, "leg press") is not None


@pytest.mark.parametrize(
    ("name", "lift"),
    [
        ("bench press", "bench press"),
        ("incline bench press", "bench press"),
        ("single-leg leg press", "leg press"),
        ("bench press with bands", "bench press"),
        ("leg press calf raise", ""),
        ("leg press jump", ""),
        ("bench press throw", ""),
        ("back squat", ""),
        ("overhead press", ""),
    ],
)
def test_which_curve_fits(name, lift):
    assert catalogue.exercise(name) is not None
    assert curves.curve_of(name) == lift


@pytest.mark.parametrize("percent", [64.9, 100.1])
def test_outside_the_handbook_nothing_is_said(percent):
    assert curves.handbook_repetitions(percent) is None


def test_between_handbook_rows():
    assert curves.handbook_repetitions(97.5) == 1.5


@pytest.mark.parametrize("name", curves.EQUATIONS)
@given(load=st.floats(1, 500), repetitions=st.floats(1.0, 15))
def test_estimates_grow_with_the_load_and_never_fall_below_it(name, load, repetitions):
    equation = curves.EQUATIONS[name]
    estimate = equation(load, repetitions)
    assert estimate >= load * 0.999
    assert equation(load * 1.1, repetitions) > estimate


@pytest.mark.parametrize("name", curves.EQUATIONS)
@pytest.mark.parametrize(
    ("load", "repetitions", "words"),
    [(0, 5, "load"), (-10, 5, "load"), (100, 0, "repetitions"), (100, 0.5, "repetitions")],
)
def test_what_no_equation_takes(name, load, repetitions, words):
    with pytest.raises(ValueError, match=words):
        curves.EQUATIONS[name](load, repetitions)


@pytest.mark.parametrize(
    ("rpe", "reserve"),
    [
        (9.75, (0, 0)),
        (9.25, (0, 1)),
        (8.75, (1, 2)),
        (6.5, (3, 6)),
        (6.99, (3, 6)),
        (5.5, (4, 6)),
        (5, (4, 6)),
    ],
)
def test_between_two_points_of_the_scale_both_hold(rpe, reserve):
    assert curves.reserve_of(rpe) == reserve


@pytest.mark.parametrize("rpe", [4.99, 4.5, 1, 0, -3, 10.5])
def test_rpe_that_counts_no_repetitions(rpe):
    with pytest.raises(ValueError, match="counts no repetitions"):
        curves.reserve_of(rpe)


@pytest.mark.parametrize("lift", LIFTS)
@pytest.mark.parametrize("percent", [0, 7, 40, 59.9, 60])
def test_a_lighter_load_than_the_lowest_allows_no_fewer(percent, lift):
    held, lowest = curves.at_least(percent, lift), curves.possible(60, lift)
    assert held is not None
    assert lowest is not None
    assert (held.mean, held.spread) == (lowest.mean, lowest.spread)
    assert curves.at_least(100.1, lift) is None


def test_what_is_surely_possible_is_the_fewer_of_two_curves():
    for lift, percent, mean in (("leg press", 70, 14.80), ("bench press", 70, 14.1), ("", 70, 14.80)):
        held = curves.fewest(percent, lift)
        assert held is not None
        assert held.mean == mean
    assert curves.fewest(101, "leg press") is None


def test_every_further_set_costs_more_until_it_levels_off():
    costs = [curves.tired(number) for number in range(1, 9)]
    assert costs[0] == 1
    assert costs[:5] == sorted(set(costs[:5]))
    assert set(costs[4:]) == {1.4}
