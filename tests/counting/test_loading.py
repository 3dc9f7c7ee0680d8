"""What to put on the bar. No worked example with kilograms is among the sources; these are reckoned by hand.

Steps, bar and plates are common practice, no source; that a long bar weighs 20 kg is from memory.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.counting.ledger import Ledger
from spotline.lint.counting.loading import BAR, Loading, loading, plates, rounded_down

Counted = Callable[..., Ledger]


@pytest.fixture
def loaded(programme: Counted) -> Callable[..., Loading | None]:
    """The loading of one line, of an athlete with some best lifts."""

    def of(exercise: str, load: str, best: str = "", body_mass: str = "", **steps: float) -> Loading | None:
        lifts = f", best lifts: {{{best}}}" if best else ""
        mass = f", body mass: {body_mass}" if body_mass else ""
        line = f'{{exercise: {exercise}, sets: 3, reps: 5, load: "{load}"}}'
        text = (
            f"programme: A\nathlete: {{name: Bo{lifts}{mass}}}\n"
            f"sessions: [{{session: A, exercises: [{line}]}}]\n"
        )
        (group,) = programme(text).weeks[0].visits[0].own
        return loading(group, steps)

    return of


BY_HAND = [
    # exercise, load, best lift, what is loaded, of how many, in which unit
    ("back squat", "72.5 %", "back squat: 165 kg", ["117.5"], 1, "kg"),  # 119.625, by 2.5
    ("back squat", "75 %", "back squat: 100 kg", ["75"], 1, "kg"),  # to the point
    ("bench press", "70-75 %", "bench press: 62.5 kg", ["42.5-45"], 1, "kg"),  # 43.75 and 46.875
    ("front squat", "65/70/70 %", "front squat: 132.5 kg", ["85", "92.5", "92.5"], 1, "kg"),  # 86.1, 92.75
    ("deadlift", "80 %", "deadlift: 405 lb", ["320"], 1, "lb"),  # 324, by 5
    ("dumbbell bench press", "80 %", "dumbbell bench press: 2 x 32 kg", ["24"], 2, "kg"),  # 25.6 a hand, by 2
    ("goblet squat", "75 %", "goblet squat: 30 kg", ["22"], 1, "kg"),  # 22.5, a dumbbell by 2
    ("kettlebell swing", "60 %", "kettlebell swing: 32 kg", ["16"], 1, "kg"),  # 19.2, by 4
    ("leg press", "65 %", "leg press: 81 kg", ["52"], 1, "kg"),  # 52.65, a stack: to whole kilograms
    ("front squat", "77 % of back squat", "back squat: 142.5 kg", ["107.5"], 1, "kg"),  # 109.725
    ("clean pull", "100/105 % of clean", "clean: 97 kg", ["95", "100"], 1, "kg"),  # 97 and 101.85
    ("bench press", "90 % of 3RM", "bench press: {load: 100 kg, reps: 3}", ["90"], 1, "kg"),  # to the point
    ("back squat", "100 kg", "", ["100"], 1, "kg"),  # as written
    ("back squat", "61.3 kg", "", ["61.3"], 1, "kg"),  # as written, be it settable or not
    ("farmer's carry", "2 x 70 lb", "", ["70"], 2, "lb"),
    ("pause squat", "80 % of squat", "back squat: 405 lb", ["320"], 1, "lb"),  # 324, by 5
]


def test_a_working_best_is_what_the_share_is_of(programme: Counted) -> None:
    text = (
        "programme: A\nworking best: 90 %\nathlete: {name: Bo, best lifts: {back squat: 150 kg}}\n"
        "sessions: [{session: A, exercises: [{exercise: back squat, sets: 3, reps: 5, load: 80 %}]}]\n"
    )
    (group,) = programme(text).weeks[0].visits[0].own
    found = loading(group, {})
    assert found is not None
    assert [str(one) for one in found.values] == ["107.5"]  # 80 % of 135 is 108


@pytest.mark.parametrize("best", ["", "bench press: 100 kg"])
def test_a_share_of_a_lift_that_is_not_on_file_is_no_weight(
    loaded: Callable[..., Loading | None], best: str
) -> None:
    assert loaded("front squat", "77 % of back squat", best) is None


def test_a_share_of_another_lift_is_not_dealt_out_to_hands(loaded: Callable[..., Loading | None]) -> None:
    assert loaded("dumbbell bench press", "50 % of bench press", "bench press: 100 kg") is None


@pytest.mark.parametrize(("exercise", "load", "best", "values", "pieces", "unit"), BY_HAND)
def test_by_hand(
    loaded: Callable[..., Loading],
    exercise: str,
    load: str,
    best: str,
    values: list[str],
    pieces: int,
    unit: str,
) -> None:
    found = loaded(exercise, load, best)
    assert [str(one) for one in found.values] == values
    assert (found.pieces, found.unit) == (pieces, unit)
    assert found.rounded is bool(best)


def test_a_pull_up_takes_what_is_more_than_the_body(loaded: Callable[..., Loading]) -> None:
    # 80 kg of body and 20 kg added are 100 kg; 90 % of it are 90 kg, 10 kg more than the body.
    more = loaded("pull-up", "90 %", "pull-up: bodyweight + 20 kg", "80 kg")
    assert (str(more.values[0]), more.added) == ("10", True)
    # 70 % are 70 kg: 10 kg of help.
    less = loaded("pull-up", "70 %", "pull-up: bodyweight + 20 kg", "80 kg")
    assert str(less.values[0]) == "-10"


def test_a_share_of_body_mass(loaded: Callable[..., Loading]) -> None:
    # Walking lunges with 20 % of body mass, as a trial printed them: 71 kg give 14.2 kg, dumbbells by 2.
    found = loaded("dumbbell walking lunge", "20 % bodyweight", body_mass="71 kg")
    assert [str(one) for one in found.values] == ["14"]
    assert loaded("dumbbell walking lunge", "20 % bodyweight") is None


def test_a_best_lift_of_several_repetitions_is_an_estimate(loaded: Callable[..., Loading]) -> None:
    assert loaded("back squat", "75 %", "back squat: {load: 100 kg, reps: 5}").estimated
    assert not loaded("back squat", "75 %", "back squat: 100 kg").estimated


def test_the_teams_steps_come_first(loaded: Callable[..., Loading]) -> None:
    assert str(loaded("back squat", "72 %", "back squat: 100 kg", barbell=5).values[0]) == "70"
    assert str(loaded("leg press", "72 %", "leg press: 100 kg", machine=7).values[0]) == "70"


def test_below_the_first_step_the_weight_itself_is_told(loaded: Callable[..., Loading]) -> None:
    found = loaded("kettlebell swing", "30 %", "kettlebell swing: 12 kg")
    assert (str(found.values[0]), found.step) == ("3.6", None)


@pytest.mark.parametrize("load", ["75 %", "10RM", "green band", "90 % of top set"])
def test_what_is_no_weight(loaded: Callable[..., Loading | None], load: str) -> None:
    assert loaded("back squat", load) is None


@given(weight=st.integers(1, 40_000), step=st.sampled_from(["0.5", "1", "1.25", "2", "2.5", "4", "5"]))
def test_rounding_goes_down_and_by_less_than_a_step(weight: int, step: str) -> None:
    exact, by = Fraction(weight, 100), Fraction(step)
    found = Fraction(str(rounded_down(weight / 100, float(by))))
    assert found % by == 0
    assert 0 <= exact - found < by


@given(steps=st.integers(0, 800), unit=st.sampled_from(["kg", "lb"]))
def test_bar_and_plates_make_the_weight(steps: int, unit: str) -> None:
    step = {"kg": 0.5, "lb": 5.0}[unit]
    weight = BAR[unit] + steps * step
    found = plates(weight, unit)
    assert found is not None
    assert BAR[unit] + 2 * sum(found) == pytest.approx(weight)
    assert list(found) == sorted(found, reverse=True)


@pytest.mark.parametrize(
    ("weight", "sides"), [(19.9, None), (20, ()), (21.3, None), (117.5, (25, 20, 2.5, 1.25))]
)
def test_plates_by_hand(weight: float, sides: tuple[float, ...] | None) -> None:
    assert plates(weight, "kg") == sides


@pytest.mark.parametrize(
    ("exercise", "load", "added"),
    [
        ("back squat", "100 kg", False),
        ("dip", "bodyweight + 10 kg", True),
        ("dip", "bodyweight - 10 kg", True),
    ],
)
def test_what_comes_on_top_of_the_body_is_said_to(
    loaded: Callable[..., Loading | None], exercise: str, load: str, added: bool
) -> None:
    told = loaded(exercise, load)
    assert told is not None
    assert told.added is added
