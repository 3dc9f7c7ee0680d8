"""Programmes made for measuring: as many lines and files as are asked for, the same for a seed each time."""

from __future__ import annotations

import random
from collections.abc import Iterator
from pathlib import Path

HEAD = """\
programme: Made for measuring, number {seed}, {lines} lines
athlete: {{name: Orla, level: intermediate, best lifts: {{back squat: 100 kg, bench press: 70 kg}}}}
goal: hypertrophy
starts: 2026-01-05
blocks:
"""

SESSIONS = {
    "monday": ("back squat", "bench press", "seated cable row", "seated leg curl", "standing calf raise"),
    "thursday": ("stiff-leg deadlift", "overhead press", "lat pulldown", "leg extension", "barbell curl"),
    "saturday": ("leg press", "dumbbell fly", "face pull", "lying leg curl", "cable pushdown"),
}

LIKE = {
    "seated cable row": ("chest-supported dumbbell row", "one-arm dumbbell row"),
    "standing calf raise": ("seated calf raise",),
    "overhead press": ("seated dumbbell shoulder press",),
    "barbell curl": ("dumbbell curl", "hammer curl"),
    "cable pushdown": ("overhead cable triceps extension",),
}
"""Lifts that stand for others, so that no two files are the same text."""

LINE = """\
          - exercise: {exercise}
            sets: {{1: 3, 2: 4}}
            reps: {reps}
            rir: 2
            rest: {rest}
"""

REPS = ("5-8", "8-12")
RESTS = ("2 min", "120 s", "2-3 min")

FAULT = ("            rir: 2\n", "            rir: two\n")
"""A value that the schema does not take, put in the middle of a file."""


def programme(lines: int, seed: int = 0) -> str:
    """A sound programme of blocks of two weeks, cut after the last whole exercise within a number of lines.

    Without a seed it is the plain one; another seed takes other lifts of the same kind and other rests.
    """
    chance = random.Random(seed)
    text = HEAD.format(lines=lines, seed=seed)
    for head, number, exercise in _exercises(chance, varied=seed > 0):
        rest = chance.choice(RESTS) if seed else RESTS[0]
        added = head + LINE.format(exercise=exercise, reps=REPS[number % 2], rest=rest)
        if (text + added).count("\n") > lines:
            return text
        text += added
    raise AssertionError("there is no end of exercises")


def _exercises(chance: random.Random, *, varied: bool) -> Iterator[tuple[str, int, str]]:
    """Exercise after exercise, with the lines that stand before it, and its number in the session."""
    block = 0
    while True:
        block += 1
        head = f"  - name: Block {block}\n    weeks: 2\n    sessions:\n"
        for day, exercises in SESSIONS.items():
            head += f"      - session: {day.title()}\n        day: {day}\n        exercises:\n"
            for number, exercise in enumerate(exercises):
                yield head, number, chance.choice((exercise, *LIKE.get(exercise, ()))) if varied else exercise
                head = ""


def faulty(text: str) -> str:
    """The same programme with one value that the schema does not take."""
    middle = text.index(FAULT[0], len(text) // 2)
    return text[:middle] + text[middle:].replace(*FAULT, 1)


def write(folder: Path, files: int, lines: int) -> list[Path]:
    """So many programmes in a folder, each with a seed of its own; a hundred in each folder below it."""
    paths = []
    for number in range(files):
        path = folder / f"{number // 100:03}" / f"plan-{number:05}.programme.yaml"
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(programme(lines, number), encoding="utf-8")
        paths.append(path)
    return paths
