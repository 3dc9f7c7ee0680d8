"""What a line's load comes to in % of the best lift, how long a set lasts, what is a compound lift."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.counting.ledger import Ledger
from spotline.lint.counting.set_group import SetGroup
from spotline.lint.model.quantities import NOTHING, Range
from spotline.lint.project.results import Review

Build = Callable[..., Ledger]

LIFTS = "{back squat: 100 kg, bench press: {load: 80 kg, reps: 5}, pull-up: bodyweight + 20 kg, goblet squat: 2 x 20 kg}"


@pytest.fixture(scope="module")
def entry(programme: Build, week: Callable[..., str]) -> Callable[..., SetGroup]:
    """The only line of a programme whose athlete weighs 80 kg and has four best lifts on file."""

    def run(line: str, athlete: str = f"{{name: A, body mass: 80 kg, best lifts: {LIFTS}}}") -> SetGroup:
        return programme(week({"Gym": [line]}, f"athlete: {athlete}")).weeks[0].visits[0].own[0]

    return run


@pytest.mark.parametrize(
    ("line", "low", "high"),
    [
        ("back squat, sets: 3, load: 75-80 %", 75, 80),
        ("back squat, sets: 3, load: 70/75/80 %", 70, 80),
        ("back squat, sets: 3, load: 85 kg", 85, 85),
        ("back squat, sets: 3, load: 60/70 kg", 60, 70),
        ("goblet squat, sets: 3, load: 2 x 15 kg", 75, 75),  # 30 of 40 kg
        ("pull-up, sets: 3, load: bodyweight", 80, 80),  # 80 of 100 kg
        ("pull-up, sets: 3, load: bodyweight + 10 kg", 90, 90),
        ("back squat, sets: 3, load: 1RM", 100, 100),
    ],
)
def test_in_percent_of_the_best_lift(
    entry: Callable[..., SetGroup], line: str, low: float, high: float
) -> None:
    assert entry(line).percent == Range(low, high)


def test_a_best_lift_of_several_repetitions_stands_for_what_the_curve_gives(
    entry: Callable[..., SetGroup],
) -> None:
    # nuzzo-2024, bench press: 8.82 repetitions at 80 %, 1 at 100 %; 5 lie at 80 + 20 x 3.82 / 7.82 = 89.77 %
    percent = entry("bench press, sets: 3, load: 80 kg").percent
    assert percent is not None
    assert percent.low == pytest.approx(89.77, abs=0.01)


@pytest.mark.parametrize(
    "line",
    [
        "back squat, sets: 3",
        "back squat, sets: 3, load: red band",
        "pull-up, sets: 3, load: 50 % bodyweight",
        "back squat, sets: 3, load: 90 % of top set",
        "front squat, sets: 3, load: 60 kg",
        "back squat, sets: 3, load: 25RM",  # past the end of the curve
        "moon walk, sets: 3, load: 60 kg",
    ],
)
def test_not_known(entry: Callable[..., SetGroup], line: str) -> None:
    assert entry(line).percent is None
    assert entry(line).percents == ()


def test_without_a_body_mass_nothing_is_known_of_pull_ups(entry: Callable[..., SetGroup]) -> None:
    athlete = "{name: A, best lifts: {pull-up: bodyweight + 20 kg}}"
    assert entry("pull-up, sets: 3, load: bodyweight", athlete).percent is None


@pytest.mark.parametrize(
    ("line", "spans"),
    [
        ("back squat, sets: 3, load: 75-80 %", [(75, 80)]),
        ("back squat, sets: 3, load: 70/75/80 %", [(70, 70), (75, 75), (80, 80)]),
        ("back squat, sets: 2, load: 60/70 kg", [(60, 60), (70, 70)]),
        ("goblet squat, sets: 3, load: 2 x 15 kg", [(75, 75)]),
    ],
)
def test_set_by_set(entry: Callable[..., SetGroup], line: str, spans: list[tuple[float, float]]) -> None:
    assert entry(line).percents == tuple(Range(low, high) for low, high in spans)


@pytest.mark.parametrize(
    ("line", "seconds"),
    [
        ("back squat, sets: 3, reps: 5, tempo: 3-1-X-0", Range(25, 25)),  # X lasts a second
        ("back squat, sets: 3, reps: 5-8, tempo: 3-0-3-0", Range(30, 48)),
        ("back squat, reps: 12/10/8, sets: 3, tempo: 2-0-2-0", Range(32, 48)),
        ("back squat, sets: 3, reps: 5, side: each, tempo: 2-0-2-0", Range(20, 20)),
        ("back squat, sets: 3, reps: 5", None),
        ("back squat, sets: 3, reps: amrap, tempo: 2-0-2-0", None),
        ("back squat, sets: 3, tempo: 2-0-2-0", None),
    ],
)
def test_seconds_of_a_set(entry: Callable[..., SetGroup], line: str, seconds: Range | None) -> None:
    assert entry(line).set_time == seconds


@pytest.mark.parametrize(
    ("name", "compound"),
    [
        ("back squat", True),
        ("walking lunge", True),
        ("Romanian deadlift", True),
        ("hip thrust", True),
        ("bench press", True),
        ("overhead press", True),
        ("bent-over row", True),
        ("pull-up", True),
        ("power clean", True),  # extends hip and knee
        ("leg extension", False),
        ("barbell curl", False),
        ("cable woodchop", False),
        ("moon walk", False),
    ],
)
def test_compound_lifts(entry: Callable[..., SetGroup], name: str, compound: bool) -> None:
    assert entry(f"{name}, sets: 3").compound is compound


@pytest.mark.parametrize(
    ("line", "percent", "kilograms"),
    [
        ("back squat, sets: 3", Range(75, 82.5), Range(75, 82.5)),  # of 100 kg
        ("goblet squat, sets: 3", Range(80, 80), Range(32, 32)),  # of 40 kg, both bells
        ("pull-up, sets: 3", Range(90, 90), Range(10, 10)),  # 90 % of 80 + 20 kg, less the 80 kg of the body
    ],
)
def test_what_to_load_for_a_share_of_the_best_lift(
    entry: Callable[..., SetGroup], line: str, percent: Range, kilograms: Range
) -> None:
    assert entry(line).kilograms_at(percent) == kilograms


def test_what_to_load_is_not_known_without_a_best_lift(entry: Callable[..., SetGroup]) -> None:
    assert entry("front squat, sets: 3").kilograms_at(Range(75, 75)) is None
    assert entry("front squat, sets: 3").strongest is None


def test_the_best_lift_that_stands_for_most(entry: Callable[..., SetGroup]) -> None:
    # nuzzo-2024, bench press: 5 repetitions lie at 89.77 % (see above), so 80 kg for five stand for 89.1 kg
    strongest = entry("bench press, sets: 3").strongest
    assert strongest is not None
    assert (strongest[0].reps, strongest[1]) == (5, pytest.approx(89.12, abs=0.01))


@pytest.mark.parametrize(
    ("line", "asks"),
    [
        ("back squat, sets: 3, reps: 5", True),  # no load says that it is light
        ("back squat, sets: 3, reps: 8", False),
        ("back squat, sets: 3, reps: 5, rir: 6", False),  # not hard
        ("back squat, sets: 3, reps: 5, rir: 2, load: 70 %", True),
        ("back squat, sets: 3, reps: 5, rir: 2, load: 69.5 %", False),
        ("back squat, sets: 3, reps: 5, rir: 2, load: 60-70 %", True),  # by the high end
        ("back squat, sets: {1: 0-1}, reps: 5", True),
        ("back squat, sets: {1: 0}, reps: 5", False),
        ("leg extension, sets: 3, reps: 5", False),  # one joint
        ("barbell curl, sets: 3, reps: 5", False),
        ("push-up, sets: 3, reps: 5", False),  # nothing to put on
        ("moon walk, sets: 3, reps: 5", False),
    ],
)
def test_what_is_worked_up_to(entry: Callable[..., SetGroup], line: str, asks: bool) -> None:
    assert entry(line).asks_for_ramp_up is asks


@pytest.mark.parametrize(
    ("line", "carried", "hard"),
    [
        ("farmer's carry, sets: 3, distance: 30 m", True, False),
        ("farmer's carry, sets: 3, distance: 30 m, rir: 2", False, True),
        ("farmer's carry, sets: 3, distance: 30 m, rir: 6", False, False),
        ("farmer's carry, sets: 3, hold: 30 s", False, True),  # over no distance
        ("walking lunge, sets: 3, reps: 10, distance: 20 m", False, True),  # repetitions are counted
    ],
)
def test_what_is_carried_is_no_hard_set_unless_an_effort_says_so(
    entry: Callable[..., SetGroup], line: str, carried: bool, hard: bool
) -> None:
    group = entry(line)
    assert (group.is_carried, group.hard) == (carried, hard)


@pytest.mark.parametrize(
    ("line", "reps"),
    [
        ("back squat, sets: 3, reps: 6-8, load: 10RM", Range(6, 8)),  # what is written comes first
        ("back squat, sets: 3, load: 8-10RM", Range(8, 10)),
        ("back squat, sets: 3, load: 80 kg", None),
        ("back squat, sets: 3, reps: amrap, load: 80 kg", None),
        ("back squat, sets: 3, reps: amrap, load: 10RM", Range(10, 10)),
        ("back squat, sets: 3", None),
    ],
)
def test_repetitions_of_a_set(entry: Callable[..., SetGroup], line: str, reps: Range | None) -> None:
    assert entry(line).a_set == reps


@pytest.mark.parametrize(
    ("line", "broken_up", "in_one_go"),
    [
        ("back squat, sets: 3, reps: 4, cluster rest: 20 s", True, False),
        ("back squat, sets: 3, reps: 4, method: contrast", False, True),
    ],
)
def test_rest_within_a_set_breaks_it_up(
    entry: Callable[..., SetGroup], line: str, broken_up: bool, in_one_go: bool
) -> None:
    assert (entry(line).broken_up, entry(line).in_one_go) == (broken_up, in_one_go)


def test_one_set_below_the_curve_leaves_at_least_what_is_said(entry: Callable[..., SetGroup]) -> None:
    # nuzzo-2024 at 65 %: 17.11 - 3.80; the second set tires by a fifth: 13.31 - 5 x 1.2 = 7.31
    said = entry("back squat, sets: 2, reps: 5, load: 55/65 %").reserve_in_words
    assert said == "at least 7 in reserve, worked out from 55/65 % and 5 repetitions"


def test_a_name_that_says_seconds_is_kept_for_the_time_of_its_sets(entry: Callable[..., SetGroup]) -> None:
    held = entry("5-second pause squat, sets: 3, reps: 3")
    assert held.seconds_said is held.named
    assert held.named is not None
    assert entry("back squat, sets: 3, reps: 3").seconds_said is None
    assert entry("moon walk, sets: 3, reps: 3").seconds_said is None


def test_without_sets_there_are_none_and_nothing_is_sure(
    reviewed: Callable[..., Review], week: Callable[..., str]
) -> None:
    (one,) = reviewed(week({"Gym": ["back squat, reps: 5", "back squat, sets: 0, reps: 5"]})).files
    assert one.ledger is not None
    unsaid, none = one.ledger.weeks[0].visits[0].own
    assert (unsaid.sets, unsaid.reps, unsaid.is_done, unsaid.sure) == (NOTHING, NOTHING, False, False)
    assert (none.sets, none.is_done, none.sure) == (NOTHING, False, True)
