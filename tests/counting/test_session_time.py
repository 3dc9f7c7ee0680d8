"""How long a session takes: every part of the sum, worked out by hand."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.counting.ledger import Ledger
from spotline.lint.counting.session_time import SessionTime
from spotline.lint.model.quantities import Range

Build = Callable[..., Ledger]


@pytest.fixture
def timed(programme: Build, week: Callable[..., str]) -> Callable[..., SessionTime]:
    def run(*lines: str, items: str = "") -> SessionTime:
        text = week({"monday": list(lines)})
        return programme(text + items).weeks[0].visits[0].time()

    return run


@pytest.mark.parametrize(
    ("line", "seconds"),
    [
        ("back squat, sets: 3, reps: 5", Range(30, 60)),  # 15 repetitions of 2-4 s
        ("back squat, sets: 3-4, reps: 5-6", Range(30, 96)),
        ("back squat, sets: 3, reps: 12/10/8", Range(60, 120)),
        ("back squat, sets: 2, reps: 5, tempo: 3-1-X-0", Range(50, 50)),  # 3 + 1 + 1 + 0 s
        ("back squat, sets: 2, reps: 5, tempo: 4-0-2-1", Range(70, 70)),
        ("plank, sets: 3, hold: 40 s", Range(120, 120)),
        ("hip flexor hold, sets: 2, reps: 3, hold: 5-10 s", Range(30, 60)),
        ("side plank, sets: 2, hold: 40 s, side: each", Range(160, 160)),  # each side in turn
        ("side plank, sets: 2, hold: 40 s, side: left", Range(80, 80)),
        ("farmer's carry, sets: 2, distance: 30 m", Range(40, 75)),  # 0.8-1.5 m/s
        ("push-up, sets: 2, reps: amrap", Range(40, 90)),  # 20-45 s each
        ("push-up, sets: 3, reps: 2+2+2", Range(36, 72)),
        # what the name says, where the line says nothing
        ('"front squat, 3 s pause", sets: 2, reps: 5', Range(50, 70)),  # 1-2 down, 3, 1-2 up
        ('"front squat, 3 s pause", sets: 2, reps: 5, tempo: 4-0-2-1', Range(70, 70)),
        ('"chin-up, 5 s neg", sets: 2, reps: 5', Range(60, 70)),  # 5 down, 1-2 up
        ('"RDL 3-1-X-0", sets: 2, reps: 5', Range(50, 50)),
        ('"squat 5-2-0", sets: 1, reps: 4', Range(32, 36)),  # 5 down, 2, 1-2 up
        ('"side plank, 40 s", sets: 2, side: each', Range(160, 160)),
        ('"side plank, 40 s", sets: 2, hold: 20 s', Range(40, 40)),
        ('"back squat, paused", sets: 3, reps: 5', Range(30, 60)),  # no seconds: as any other
    ],
)
def test_time_under_load(timed: Callable[..., SessionTime], line: str, seconds: Range) -> None:
    time = timed(line)
    assert time.work.low == pytest.approx(seconds.low)
    assert time.work.high == pytest.approx(seconds.high)


@pytest.mark.parametrize(
    ("line", "seconds"),
    [
        ("back squat, sets: 4, reps: 5, rest: 3 min", Range(540, 540)),  # none after the last set
        ("back squat, sets: 1, reps: 5, rest: 3 min", Range(0, 0)),
        ("back squat, sets: 3-4, reps: 5, rest: 2-3 min", Range(240, 540)),
        ("back squat, sets: 3, reps: 5", Range(240, 600)),  # heavy, unstated: 2-5 min
        ("back squat, sets: 3, reps: 10", Range(60, 180)),  # light, unstated: 30-90 s
        ("plank, sets: 3, hold: 40 s", Range(60, 600)),  # neither: 30 s to 5 min
    ],
)
def test_rest_within_an_exercise(timed: Callable[..., SessionTime], line: str, seconds: Range) -> None:
    assert timed(line).rest == seconds


def test_groups_of_sets_rest_after_each_but_the_last(timed: Callable[..., SessionTime]) -> None:
    time = timed("back squat, rest: 2 min, work: [{sets: 1, reps: 3}, {sets: 3, reps: 5}]")
    assert time.work == Range(36, 72)
    assert time.rest == Range(360, 360)


@pytest.mark.parametrize(
    ("lines", "seconds"),
    [
        (["back squat, sets: 1, reps: 5"], Range(0, 0)),
        (["back squat, sets: 1, reps: 5", "plank, sets: 1, hold: 9 s"], Range(60, 180)),
        (["back squat, sets: 1, reps: 5, warm-up sets: 2"], Range(120, 300)),
        (["back squat, sets: 1, reps: 5"] * 4, Range(180, 540)),
    ],
)
def test_time_around_the_exercises(
    timed: Callable[..., SessionTime], lines: list[str], seconds: Range
) -> None:
    assert timed(*lines).around == seconds


def test_preparation_takes_its_time(programme: Build, week: Callable[..., str]) -> None:
    text = week({"monday": ["plank, sets: 1, hold: 9 s"]}).replace("day: monday", "preparation: [bike]")
    assert programme(text).weeks[0].visits[0].time().around == Range(300, 600)


def test_work_on_the_minute_takes_what_it_says(timed: Callable[..., SessionTime]) -> None:
    time = timed("kettlebell swing, every: 60 s, for: 10 min, reps: 10")
    assert (time.work, time.rest) == (Range(600, 600), Range(0, 0))


SUPERSET = """\
      - superset:
          - {exercise: seated leg curl, sets: 3, reps: 10, rest: 60 s}
          - {exercise: standing calf raise, sets: 3, reps: 10, rest: 90 s}
"""
ROUNDS = """\
      - superset:
          - {exercise: seated leg curl, reps: 10}
          - {exercise: standing calf raise, reps: 10}
        rounds: 3
        rest: 2 min
"""
CIRCUIT = """\
      - circuit:
          rounds: 3
          rest: 2 min
          exercises:
            - {exercise: push-up, reps: 10, rest: 10 s}
            - {exercise: goblet squat, reps: 10, rest: 10 s}
            - {exercise: inverted row, reps: 10, rest: 10 s}
"""


@pytest.mark.parametrize(
    ("items", "rest"),
    [
        (SUPERSET, Range(360, 360)),  # 60, 90, 60, 90, 60, and none after the last calf raise
        (ROUNDS, Range(2 * 120 + 5 * 5, 2 * 120 + 5 * 20)),
        (CIRCUIT, Range(2 * 120 + 8 * 10, 2 * 120 + 8 * 10)),
    ],
)
def test_pairs_and_circuits(programme: Build, items: str, rest: Range) -> None:
    text = f"programme: Test\nsessions:\n  - session: Gym\n    exercises:\n{items}"
    assert programme(text).weeks[0].visits[0].time().rest == rest


def test_a_line_by_itself_and_a_superset_as_a_whole(programme: Build) -> None:
    text = """programme: Test
sessions:
  - session: Gym
    exercises:
      - {exercise: back squat, sets: 3, reps: 5, tempo: 2-0-1-0, rest: 2 min, warm-up sets: 2}
      - superset:
          - {exercise: leg extension, sets: 2, reps: 10, tempo: 1-0-1-0, rest: 0 s}
          - {exercise: seated leg curl, sets: 2, reps: 10, tempo: 1-0-1-0, rest: 60 s}
"""
    (visit,) = programme(text).weeks[0].visits
    squat, extension, curl = visit.session.prescriptions
    alone = visit.time_of(squat)
    # 3 x 5 x 3 s; 2 rests of 120 s; 2 warm-up sets of 60-150 s
    assert (alone.work, alone.rest, alone.around) == (Range(45, 45), Range(240, 240), Range(120, 300))
    pair = visit.time_of(extension)
    # 2 x 2 x 10 x 2 s; one rest of 60 s between the two rounds
    assert (pair.work, pair.rest, pair.around) == (Range(80, 80), Range(60, 60), Range(0, 0))
    assert visit.time_of(curl).total == pair.total
