"""A first programme: one lift for each of the large movements, by what there is to train with.

It is a beginning to write on, two or three days for the whole body (common practice, no source); what it says
is judged by the review like any other programme.
"""

from __future__ import annotations

import re

from ..body import catalogue, equipment
from ..model.sessions import WEEKDAYS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..body.catalogue import Exercise
    from .answers import Answers

ALWAYS_THERE = ("floor", "wall", "box", "stairs")
"""What nobody needs to list."""

SQUAT = ("back squat", "goblet squat", "kettlebell goblet squat", "split squat")
LUNGE = ("split squat",)
HINGE = (
    "Romanian deadlift",
    "dumbbell Romanian deadlift",
    "kettlebell deadlift",
    "band good morning",
    "hip hinge drill",
)
CURL = ("seated leg curl", "lying leg curl", "ball leg curl", "band leg curl", "hamstring walkout")
PRESS = ("bench press", "dumbbell bench press", "push-up")
OVERHEAD = (
    "standing dumbbell shoulder press",
    "overhead press",
    "band overhead press",
    "pike push-up",
    "push-up",
)
ROW = (
    "seated cable row",
    "one-arm dumbbell row",
    "one-arm kettlebell row",
    "band row",
    "suspension row",
    "inverted row",
    "prone cobra hold",
)
PULL = ("lat pulldown", "band pulldown", "pull-up", "chin-up", "prone cobra hold")
CALF = ("standing calf raise", "single-leg calf raise")
TRUNK = ("dead bug",)
SIDE = ("side plank",)

SESSIONS = (
    (SQUAT, PRESS, ROW, CURL, CALF, TRUNK),
    (HINGE, OVERHEAD, PULL, LUNGE, CURL, SIDE),
)
"""The movements of the two sessions, the largest first; they take turns."""

ONLY = (SQUAT, HINGE, PRESS, (*PULL[:-1], *ROW), CURL, TRUNK)
"""Those of a week with one session."""

FAST = "exercise: countermovement jump, sets: 3, reps: 3, rest: 90 s"
"""What opens a session where power is the goal; it needs nothing but a floor."""

MOST_DAYS = 3
"""Days that a first programme takes of the week: whole-body sessions need a day between them."""

ONE_DAY = "one day a week is what there is"
"""Why a single day is let pass, though health guidelines ask for two."""

MAIN = 3
"""How many lifts of a session are its main ones."""


class Dose:
    """Repetitions, repetitions in reserve and rest of the main lifts, and of the others."""

    def __init__(self, reps: str, rest: str, small_reps: str, small_rest: str, reserve: int = 2) -> None:
        self.main = f"reps: {reps}, rir: {reserve}, rest: {rest}"
        self.small = f"reps: {small_reps}, rir: {reserve}, rest: {small_rest}"


DOSES = {
    "strength": Dose("4-6", "3 min", "8-10", "2 min"),
    "power": Dose("4-6", "3 min", "8-10", "2 min"),
    "hypertrophy": Dose("6-10", "2 min", "10-15", "2 min"),
    "muscular endurance": Dose("15-20", "90 s", "15-20", "90 s"),
    "general health": Dose("8-12", "2 min", "10-15", "90 s", 3),
}
"""By goal (common practice)."""


def programme(answers: Answers, athlete: str, starts: str, lifts: int) -> str:
    """The text of a programme for the athlete file at the path ``athlete``: ``lifts`` lines a session."""
    lines = [
        f"programme: {quoted(f'First block for {answers.name}')}",
        f"athlete: {athlete}",
        f"goal: {answers.goal}",
        f"starts: {starts}",
        "weeks: 6",
        "sessions:",
    ]
    days = apart(answers.days)
    movements = (ONLY,) if len(days) == 1 else SESSIONS
    for number, day in enumerate(days):
        lines += [f"  - session: {day.capitalize()}", f"    day: {day}", "    exercises:"]
        lines += [
            f"      - {{{line}}}" for line in _lines(answers, movements[number % len(movements)][:lifts])
        ]
    if len(days) == 1 and answers.goal == "general health":
        lines += ["waivers:", f"  - {{rule: days-per-region-few, reason: {ONE_DAY}}}"]
    return "\n".join(lines) + "\n"


def quoted(words: str) -> str:
    """Words as a YAML value that is these words, whatever they hold."""
    is_plain = re.fullmatch(r"[^\W\d_][\w ]*", words) and words.lower() not in ("null", "true", "false")
    return words if is_plain else "'" + words.replace("'", "''") + "'"


def apart(days: tuple[str, ...]) -> tuple[str, ...]:
    """The days to train on, with one between each two of them where there is a choice; three at most."""
    chosen: list[str] = []
    for day in days:
        if not chosen or WEEKDAYS.index(day) - WEEKDAYS.index(chosen[-1]) > 1:
            chosen.append(day)
    if len(chosen) > 2 and WEEKDAYS.index(chosen[-1]) - WEEKDAYS.index(chosen[0]) == len(WEEKDAYS) - 1:
        chosen.pop()
    return tuple(chosen[:MOST_DAYS])


def _lines(answers: Answers, movements: tuple[tuple[str, ...], ...]) -> Iterator[str]:
    dose = DOSES[answers.goal]
    if answers.goal == "power":
        yield FAST
    for number, names in enumerate(movements):
        exercise = next((one for one in map(catalogue.exercise, names) if one and _fits(one, answers)), None)
        if exercise is None:
            continue
        side = ", side: each" if exercise.unilateral else ""
        if exercise.kind == "isometric":
            yield f"exercise: {exercise.name}, sets: 2, hold: 20-30 s{side}, rest: 60 s"
        elif number < MAIN:
            yield f"exercise: {exercise.name}, sets: 3, {dose.main}{side}"
        else:
            yield f"exercise: {exercise.name}, sets: 2, {dose.small}{side}"


def _fits(exercise: Exercise, answers: Answers) -> bool:
    """Whether the athlete may do a lift with what there is; a whole gym has it all."""
    levels = catalogue.LEVELS
    if levels.index(exercise.level) > levels.index(answers.level):
        return False
    return not answers.equipment or not equipment.missing(exercise, answers.equipment, ALWAYS_THERE)
