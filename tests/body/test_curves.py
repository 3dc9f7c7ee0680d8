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


@pytest.mark.parametrize(("rpe", "reserve"), [(10, 0), (9, 1), (8.5, 1.5), (8, 2), (7, 3), (5, 5)])
def test_rpe_and_repetitions_in_reserve(rpe, reserve):
    """zourdos-2016: 10 is none, 9 is one; the rest from memory."""
    assert curves.reserve_of(rpe) == reserve
    assert curves.rpe_of(reserve) == rpe


@pytest.mark.parametrize("rpe", [4.5, 1, 10.5])
def test_rpe_that_counts_no_repetitions(rpe):
    assert curves.reserve_of(rpe) is None


@pytest.mark.parametrize("reserve", [-1, 5.5, 8])
def test_reserve_beyond_the_scale(reserve):
    assert curves.rpe_of(reserve) is None
