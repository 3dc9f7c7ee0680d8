"""Measures reviews beside bare Python, the YAML library and two outside tools, in one run: a table, and JSON.

    python tests/benchmark.py [--json FILE] [--tools FOLDER] [--rounds 9] [--files 20000] [--stages]

Programmes are made here from seeds. What is compared takes turns, so that a busy machine slows all of it; a ratio is
the median of the ratios of each turn. Work is what the processor did, which other programs disturb least; the speed of
two processes is by the clock. The outside tools are installed into an environment of their own, by default below the
folder for temporary files; one that cannot be had is named, and its rows are left out.
"""

from __future__ import annotations

import argparse
import gc
import json
import os
import platform
import subprocess
import tempfile
from collections.abc import Callable, Iterator
from datetime import date
from itertools import pairwise
from pathlib import Path
from statistics import median
from time import perf_counter, process_time

import yaml

from spotline.lint.counting.ledger import Ledger
from spotline.lint.engine import registry
from spotline.lint.engine.run import run as run_rules
from spotline.lint.findings.finding import Finding
from spotline.lint.model.read_programme import read_programme
from spotline.lint.project.review import review
from spotline.lint.schemas.fast_check import fits
from spotline.lint.syntax.builder import read
from spotline.tests.benchmark_corpus import faulty, programme, write
from spotline.tests.benchmark_tools import LOAD, PACKAGES, Run, installed, outside, run

LINES = (60, 400, 3000)
MANY = ((100, 60), (300, 400), (2000, 60))
"""Files, and lines of each."""

MOST_FOR_CHECKER = 100
"""Files up to which the checker against any schema is run: it takes seconds for a hundred."""

TODAY = date(2026, 1, 5)

OURS, FAULTY, LOADED = "review", "review, a fault of the schema", "the YAML library loads it"
BARE, TWO = "bare Python", "review, two processes"
LINTER, CHECKER = PACKAGES

WANTED = (
    ("60 lines, cold: of the style linter", ("one file", 60, OURS, LINTER), 0.55),
    ("60 lines, cold: a fault of the schema, of a sound file", ("one file", 60, FAULTY, OURS), 2.0),
    ("400 lines, in process: of the YAML library's load", ("in process", 400, OURS, LOADED), 3.0),
    ("400 lines, in process: a fault of the schema, of a sound file", ("in process", 400, FAULTY, OURS), 2.0),
    ("300 files of 400 lines: of the style linter", ("many files", "300 x 400", OURS, LINTER), 0.18),
)
"""What is wanted of ratios of work: of the first thing named to the second."""

Times = dict[str, list[Run]]


def turns(works: dict[str, Callable[[], Run]], rounds: int, *, warm_up: int = 1) -> Times:
    """Runs several kinds of work, one after another in every round, after a round to warm up."""
    times: Times = {name: [] for name in works}
    for _ in range(rounds + warm_up):
        for name, work in works.items():
            times[name].append(work())
    return {name: taken[warm_up:] for name, taken in times.items()}


def told(times: Times) -> dict[str, dict[str, float]]:
    """Medians in milliseconds and MB, for people and JSON."""
    return {
        name: {
            "work ms": round(median(one.cpu for one in taken) * 1000, 2),
            "clock ms": round(median(one.wall for one in taken) * 1000, 2),
            "peak MB": round(max(one.peak for one in taken), 1),
        }
        for name, taken in times.items()
    }


def ratio(times: Times, one: str, other: str, *, clock: bool = False) -> float | None:
    """The median of the ratios of each turn; None where one of the two was not measured."""
    if one not in times or other not in times:
        return None
    pairs = zip(times[one], times[other], strict=True)
    return median((a.wall / b.wall) if clock else (a.cpu / b.cpu) for a, b in pairs)


# What is measured


def python_of(command: str) -> str:
    """The Python that a command runs in."""
    return str(Path(command).with_name("python"))


def one_file(folder: Path, lines: int, ours: str, tools: dict[str, str], rounds: int) -> Times:
    """A whole process for one file."""
    sound, wrong = folder / f"sound-{lines}.programme.yaml", folder / f"wrong-{lines}.programme.yaml"
    sound.write_text(programme(lines), encoding="utf-8")
    wrong.write_text(faulty(programme(lines)), encoding="utf-8")
    commands = {
        BARE: [python_of(ours), "-c", "pass"],
        LOADED: [python_of(ours), "-c", LOAD, str(sound)],
        OURS: [ours, "review", "--as", "lines", "--", str(sound)],
        FAULTY: [ours, "review", "--as", "lines", "--", str(wrong)],
        **_outside(folder, [str(sound)], tools),
    }
    return turns(_works(folder, commands), rounds)


def many_files(folder: Path, files: int, lines: int, ours: str, tools: dict[str, str], rounds: int) -> Times:
    """A whole process for many files."""
    below = folder / f"many-{files}-{lines}"
    paths = [str(path) for path in write(below, files, lines)]
    review_all = [ours, "review", "--as", "lines"]
    named = _outside(folder, paths, tools)
    if files > MOST_FOR_CHECKER:
        named.pop(CHECKER, None)
    commands = {
        LOADED: [python_of(ours), "-c", LOAD, *paths],
        OURS: [*review_all, "--jobs", "1", "--", str(below)],
        TWO: [*review_all, "--jobs", "2", "--", str(below)],
        **named,
    }
    return turns(_works(folder, commands), rounds, warm_up=0)


def _outside(folder: Path, paths: list[str], tools: dict[str, str]) -> dict[str, list[str]]:
    """The commands of the outside tools, as far as they are there."""
    options = {LINTER: ["-f", "parsable"], CHECKER: ["--schemafile", str(folder / "programme.json")]}
    return {name: [program, *options[name], *paths] for name, program in tools.items()}


def _works(folder: Path, commands: dict[str, list[str]]) -> dict[str, Callable[[], Run]]:
    compiled = str(folder / "compiled")
    return {name: lambda words=words: run(words, compiled) for name, words in commands.items()}  # type: ignore[misc]


def in_process(folder: Path, lines: int, rounds: int) -> Times:
    """The work of a process that has all code loaded, its garbage left as in the command."""
    paths = {OURS: folder / "in-process.programme.yaml", FAULTY: folder / "in-process-wrong.programme.yaml"}
    paths[OURS].write_text(programme(lines), encoding="utf-8")
    paths[FAULTY].write_text(faulty(programme(lines)), encoding="utf-8")
    data = paths[OURS].read_bytes()

    def timed(work: Callable[[], object]) -> Callable[[], Run]:
        def once() -> Run:
            gc.collect()
            wall, cpu = perf_counter(), process_time()
            work()
            return Run(perf_counter() - wall, process_time() - cpu, 0.0)

        return once

    works = {
        LOADED: timed(lambda: yaml.load(data, yaml.CSafeLoader)),
        OURS: timed(lambda: review([str(paths[OURS])], TODAY)),
        FAULTY: timed(lambda: review([str(paths[FAULTY])], TODAY)),
    }
    return turns(works, rounds)


def memory(folder: Path, most: int, ours: str) -> dict[str, dict[str, float]]:
    """The largest process and the work for a file, for more and more files of 60 lines."""
    found = {}
    for files in (most // 10, most // 4, most // 2, most):
        below = folder / f"memory-{files}"
        write(below, files, 60)
        for jobs in ("1", "2"):
            words = [ours, "review", "--as", "lines", "--jobs", jobs, "--", str(below)]
            once = run(words, str(folder / "compiled"))
            found[f"{files} files, {jobs} process{'es' if jobs == '2' else ''}"] = {
                "peak MB": round(once.peak, 1),
                "work ms a file": round(once.cpu * 1000 / files, 3),
            }
    return found


# Stage by stage


def _no_athlete(term: object) -> Finding:
    raise AssertionError(f"{term} is not written in the programme itself")


def stages(folder: Path, rounds: int) -> dict[str, dict[str, float]]:
    """Milliseconds of work of each stage of the review of a file, warm."""
    rules = [rule for rule in registry.all_rules() if not rule.off]
    found = {}
    for lines in LINES:
        path = folder / "stages.programme.yaml"
        path.write_text(programme(lines), encoding="utf-8")
        taken = [list(_stages(str(path), rules)) for _ in range(rounds + 1)][1:]
        names = ("read", "schema", "programme and ledger", f"{len(rules)} rules")
        middle = [round(median(stage) * 1000, 2) for stage in zip(*taken, strict=True)]
        found[f"{lines} lines"] = dict(zip(names, middle, strict=True))
    return found


def _stages(path: str, rules: list[registry.Rule]) -> Iterator[float]:
    gc.collect()
    marks = [process_time()]
    reading = read(path)
    marks.append(process_time())
    assert reading.root is not None
    assert fits("programme")(reading.root.plain)
    marks.append(process_time())
    made, findings = read_programme(reading.root, _no_athlete)
    assert made is not None
    ledger = Ledger(made, TODAY, member=made.members[0])
    marks.append(process_time())
    _, faults = run_rules(rules, ledger, {})
    marks.append(process_time())
    assert not [*reading.findings, *findings, *faults]
    yield from (later - earlier for earlier, later in pairwise(marks))


# The table


def table(title: str, times: Times, base: str) -> Iterator[str]:
    """Rows of what was measured, each as a ratio to one of them."""
    yield f"\n{title:<44}{'work ms':>10}{'clock ms':>10}{'peak MB':>9}{'ratio':>8}"
    for name, values in told(times).items():
        of = ratio(times, name, base)
        yield (
            f"  {name:<42}{values['work ms']:>10.1f}{values['clock ms']:>10.1f}{values['peak MB']:>9.0f}{of:>8.2f}"
        )


def judged(
    measured: dict[tuple[str, object], Times], curve: dict[str, dict[str, float]]
) -> Iterator[tuple[str, float, float | None]]:
    """Each ratio that is wanted, with what was measured; of the memory if it was."""
    for words, (kind, size, one, other), most in WANTED:
        times = measured.get((kind, size), {})
        yield words, most, ratio(times, one, other)
    times = measured.get(("many files", "300 x 400"), {})
    faster = ratio(times, OURS, TWO, clock=True)
    yield "300 files of 400 lines: two processes, times as fast (at least)", 1.7, faster
    if curve:
        alone = [values for row, values in curve.items() if row.endswith("1 process")]
        yield "the most files: MB of the largest process", 150, max(one["peak MB"] for one in curve.values())
        few, most = alone[0]["work ms a file"], alone[-1]["work ms a file"]
        yield "the most files: work for a file, of that for a tenth of them", 1.1, most / few


def main() -> None:
    parser = argparse.ArgumentParser(description=(__doc__ or "").partition("\n")[0])
    parser.add_argument("--json", type=Path, help="a file for all figures")
    parser.add_argument(
        "--tools", type=Path, default=Path(tempfile.gettempdir()) / "spotline-benchmark-tools"
    )
    parser.add_argument("--rounds", type=int, default=9)
    parser.add_argument("--files", type=int, default=0, help="the memory of so many files, too: 20000")
    parser.add_argument("--stages", action="store_true", help="what each stage of a review takes, too")
    asked = parser.parse_args()
    gc.disable()  # as in the command
    tools, lacking = outside(asked.tools)
    measured: dict[tuple[str, object], Times] = {}
    print(f"Python {platform.python_version()}, {os.cpu_count()} cores, load {os.getloadavg()[0]:.1f}")
    for sentence in lacking:
        print(f"left out, {sentence}")
    further: dict[str, object] = {}
    curve: dict[str, dict[str, float]] = {}
    ours = installed(asked.tools)
    print(f"The command: {ours}", flush=True)
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        schema = subprocess.run(
            [ours, "schema", "programme"], capture_output=True, check=True, text=True
        ).stdout
        (folder / "programme.json").write_text(schema, encoding="utf-8")
        for lines in LINES:
            measured["one file", lines] = one_file(folder, lines, ours, tools, asked.rounds)
            shown = table(f"One file of {lines} lines, cold", measured["one file", lines], OURS)
            print("\n".join(shown), flush=True)
        for lines in LINES:
            measured["in process", lines] = in_process(folder, lines, asked.rounds)
            print(
                "\n".join(table(f"{lines} lines, in process", measured["in process", lines], LOADED)),
                flush=True,
            )
        for files, lines in MANY:
            size = f"{files} x {lines}"
            measured["many files", size] = many_files(
                folder, files, lines, ours, tools, max(asked.rounds // 4, 1)
            )
            print(
                "\n".join(table(f"{files} files of {lines} lines", measured["many files", size], OURS)),
                flush=True,
            )
        if asked.stages:
            further["stages"] = stages(folder, asked.rounds)
        if asked.files:
            further["memory"] = curve = memory(folder, asked.files, ours)
    for title, rows in further.items():
        print(f"\n{title}")
        for row, values in rows.items():  # type: ignore[attr-defined]
            print(f"  {row:<26}" + "  ".join(f"{value:>9.2f} {unit}" for unit, value in values.items()))
    print(f"\n{'Wanted at most':<66}{'wanted':>8}{'measured':>10}")
    for words, most, found in judged(measured, curve):
        print(f"  {words:<64}{most:>8.2f}{'-' if found is None else f'{found:.2f}':>10}")
    if asked.json:
        whole = {
            "python": platform.python_version(),
            "cores": os.cpu_count(),
            "left out": lacking,
            **{f"{kind}: {size}": told(times) for (kind, size), times in measured.items()},
            **further,
            "wanted": [
                {"what": words, "wanted": most, "measured": None if found is None else round(found, 3)}
                for words, most, found in judged(measured, curve)
            ],
        }
        asked.json.write_text(json.dumps(whole, indent=2) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
