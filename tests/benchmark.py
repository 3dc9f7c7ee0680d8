"""Prints how long a review takes: cold beside bare Python, many files in one run, stage by stage; and the catalogue.

    python tests/benchmark.py

The programmes are made here. Times are medians; the cold ones alternate, so that a busy machine slows both.
"""

from __future__ import annotations

import gc
import os
import subprocess
import sys
import sysconfig
import tempfile
from collections.abc import Callable
from datetime import date
from functools import partial
from itertools import pairwise
from statistics import median, quantiles
from time import perf_counter

from spotline.lint.body import catalogue
from spotline.lint.counting.ledger import Ledger
from spotline.lint.engine import registry
from spotline.lint.engine.registry import Rule
from spotline.lint.engine.run import run
from spotline.lint.findings.finding import Finding
from spotline.lint.model.read_programme import read_programme
from spotline.lint.schemas.fast_check import fits
from spotline.lint.syntax.builder import read

COLD_RUNS = 15
MANY_FILES = 500
MANY_RUNS = 5
ROUNDS = 15

HEAD = """\
programme: Made for measuring, {lines} lines
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

ONE_EXERCISE = "from spotline.lint.body import catalogue; catalogue.exercise('deadlift')"

LINE = """\
          - exercise: {exercise}
            sets: {{1: 3, 2: 4}}
            reps: {reps}
            rir: 2
            rest: 2 min
"""


def programme(lines: int) -> str:
    """A programme of blocks of two weeks, cut after the last whole exercise within a number of lines."""
    text = HEAD.format(lines=lines)
    block = 0
    while True:
        block += 1
        head = f"  - name: Block {block}\n    weeks: 2\n    sessions:\n"
        for day, exercises in SESSIONS.items():
            head += f"      - session: {day.title()}\n        day: {day}\n        exercises:\n"
            for number, exercise in enumerate(exercises):
                added = head + LINE.format(exercise=exercise, reps=("5-8", "8-12")[number % 2])
                if (text + added).count("\n") > lines:
                    return text
                text, head = text + added, ""


def timed(work: Callable[[], object]) -> float:
    """Milliseconds that some work takes."""
    start = perf_counter()
    work()
    return (perf_counter() - start) * 1000


def process(folder: str, *words: str) -> Callable[[], object]:
    """A whole run of a program, which must find nothing wrong.

    As after an ordinary installation, all code is there in its compiled form: below the folder, after one run.
    """
    kept = {name: value for name, value in os.environ.items() if not name.startswith("PYTHON")}
    environment = {**kept, "PYTHONPYCACHEPREFIX": os.path.join(folder, "compiled")}
    return partial(
        subprocess.run,
        words,
        env=environment,
        check=True,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )


def alternating(works: dict[str, Callable[[], object]], rounds: int) -> dict[str, float]:
    """The median of each of several kinds of work, one after another in every round, after a round to warm up."""
    times: dict[str, list[float]] = {name: [] for name in works}
    for _ in range(rounds + 1):
        for name, work in works.items():
            times[name].append(timed(work))
    return {name: median(taken[1:]) for name, taken in times.items()}


def write(folder: str, name: str, lines: int) -> str:
    path = os.path.join(folder, f"{name}.programme.yaml")
    with open(path, "w", encoding="utf-8") as file:
        file.write(programme(lines))
    return path


def cold(folder: str, command: str) -> None:
    one = write(folder, "one", 60)
    times = alternating(
        {
            "bare Python": process(folder, sys.executable, "-c", "pass"),
            "Python and the YAML library": process(folder, sys.executable, "-c", "import yaml"),
            "Python and one exercise": process(folder, sys.executable, "-c", ONE_EXERCISE),
            "review of one file of 60 lines": process(folder, command, "review", "--as", "lines", "--", one),
        },
        COLD_RUNS,
    )
    print(f"Cold, whole process, median of {COLD_RUNS}")
    for name, taken in times.items():
        print(f"  {name:<32}{taken:8.1f} ms")


def many(folder: str, command: str) -> None:
    below = os.path.join(folder, "many")
    os.mkdir(below)
    for number in range(MANY_FILES):
        write(below, f"programme-{number:03}", 60)
    run = process(folder, command, "review", "--as", "lines", "--", below)
    taken = median(timed(run) for _ in range(MANY_RUNS))
    print(f"{MANY_FILES} files of 60 lines in one run, median of {MANY_RUNS}")
    print(f"  the whole run{taken:27.0f} ms")
    print(f"  one file     {taken / MANY_FILES:27.2f} ms")


def profiles() -> None:
    catalogue.anatomy()
    taken = [timed(exercise.profile) * 1000 for exercise in catalogue.exercises()]
    print(f"What one exercise trains, worked out anew, of {len(taken)}")
    print(f"  median {median(taken):33.0f} µs")
    print(f"  nine in ten take no more than {quantiles(taken, n=10)[-1]:10.0f} µs")


def no_athlete(term: object) -> Finding:
    raise AssertionError(f"{term} is not written in the programme itself")


def one_by_one(path: str, rules: list[Rule]) -> list[float]:
    """Milliseconds of each stage of the review of a file."""
    gc.collect()
    start = perf_counter()
    reading = read(path)
    after_reading = perf_counter()
    assert reading.root is not None
    assert fits("programme")(reading.root.plain)
    after_schema = perf_counter()
    made, findings = read_programme(reading.root, no_athlete)
    assert made is not None
    ledger = Ledger(made, date(2026, 1, 5), member=made.members[0])
    after_ledger = perf_counter()
    _, faults = run(rules, ledger, {})
    end = perf_counter()
    assert not reading.findings + findings
    assert not faults
    marks = (start, after_reading, after_schema, after_ledger, end)
    return [(later - earlier) * 1000 for earlier, later in pairwise(marks)]


def stages(folder: str) -> None:
    rules = [rule for rule in registry.all_rules() if not rule.off]
    names = ("read", "schema", "programme and ledger", f"{len(rules)} rules", "together")
    print(f"Stages in one process, warm, median of {ROUNDS}, ms")
    print("  lines" + "".join(f"{name:>22}" for name in names))
    for lines in (60, 400, 3000):
        path = write(folder, f"lines-{lines}", lines)
        rounds = [one_by_one(path, rules) for _ in range(ROUNDS + 1)][1:]
        middle = [median(stage) for stage in zip(*rounds, strict=True)]
        print(f"  {lines:>5}" + "".join(f"{value:22.2f}" for value in (*middle, sum(middle))))


def main() -> None:
    gc.disable()  # as in the command
    command = os.path.join(sysconfig.get_path("scripts"), "spotline")
    with tempfile.TemporaryDirectory() as folder:
        cold(folder, command)
        many(folder, command)
        profiles()
        stages(folder)


if __name__ == "__main__":
    main()
