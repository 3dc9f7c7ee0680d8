"""Prints how long the editor waits: from a change to its findings, from a question to its answer, from the start on.

    python tests/benchmark_editor.py [--rounds 60] [--starts 15]

Times are those of a client at the other end of the pipe. What they are compared with is measured in the same run,
turn by turn, so that a busy machine slows both: PyYAML's CSafeLoader on the same text, in a Python that collects
no garbage, and a server of the protocol library that does nothing but answer ``initialize``.
"""

from __future__ import annotations

import argparse
import gc
import os
import re
import sys
import sysconfig
import tempfile
from collections.abc import Callable, Iterator
from functools import partial
from itertools import cycle
from pathlib import Path
from statistics import median, quantiles
from time import perf_counter

import yaml

from spotline.tests.benchmark_corpus import programme
from spotline.tests.editor.edits import change
from spotline.tests.editor.pipe_client import PipeClient

LINES = (400, 3000)
LIMIT = 3.0
"""How many times the load of the text a change may take."""

START_LIMIT = 1.3
"""How many times the bare server's answer the first findings may take."""

KEYSTROKE = 0.03
"""Seconds between an answer and the next change."""

SCRIPT = os.path.join(sysconfig.get_path("scripts"), "spotline")

BARE = "from pygls.lsp.server import LanguageServer; LanguageServer('bare', '1').start_io()"

WORDS = "  # knees out, elbows in: she knows. "

Times = dict[str, list[float]]
"""Milliseconds of each round by what was done."""


def timed(work: Callable[[], object]) -> float:
    """Milliseconds that some work takes."""
    start = perf_counter()
    work()
    return (perf_counter() - start) * 1000


def numbers(text: str) -> Iterator[str]:
    """The text again and again, another number in it each time, in one place after the other."""
    places = [found.start(1) for found in re.finditer(r"(?:: |-)(\d)\b", text) if found.start() > 300]
    # Far from each other, so that no two changes in a row fall into one session.
    step = next(step for step in range(len(places) // 7, len(places)) if len(places) % step)
    at = 0
    while True:
        at = (at + step) % len(places)
        place = places[at]
        text = text[:place] + str(int(text[place]) % 4 + 2) + text[place + 1 :]
        yield text


def comments(text: str) -> Iterator[str]:
    """The text again and again, with a letter more of a comment behind one of its lines."""
    ends = [found.start() for found in re.finditer(r"\n(?= {10})", text)]
    while True:
        for end in ends[len(ends) // 3 :: 97]:
            for length in range(1, len(WORDS) + 1):
                yield text[:end] + WORDS[:length] + text[end:]


def names(text: str) -> Iterator[str]:
    """The text again and again, with another exercise in one place."""
    places = [found.span(1) for found in re.finditer(r"exercise: (.*)", text)]
    for (start, end), name in cycle(
        zip(places[len(places) // 3 :: 5], cycle(("front squat", "push-up", "leg press")))
    ):
        yield text[:start] + name + text[end:]


KINDS = {"a number": numbers, "a comment": comments, "a name": names}
"""What is typed; the demand is on numbers."""


def changes(lines: int, kind: str, rounds: int) -> Times:
    """Milliseconds from a change to its findings, beside a load of the same text."""
    text = programme(lines)
    times: Times = {"findings": [], "load": []}
    with tempfile.TemporaryDirectory() as folder:
        (Path(folder) / ".git").mkdir()
        with PipeClient(Path(folder)) as client:
            client.initialize()
            uri = client.uri("plan.programme.yaml")
            client.open(uri, text)
            client.findings(uri, 1)
            texts = KINDS[kind](text)
            for version in range(2, rounds + 12):
                new = next(texts)
                one = change(text, new, "utf-16")
                text = new
                client.read_until_quiet(KEYSTROKE)
                start = perf_counter()
                client.change(uri, version, one)
                client.findings(uri, version)
                times["findings"].append((perf_counter() - start) * 1000)
                start = perf_counter()
                yaml.load(text, yaml.CSafeLoader)
                times["load"].append((perf_counter() - start) * 1000)
            assert client.shut_down() == 0, client.log()
    return {name: taken[10:] for name, taken in times.items()}


ASKED = {
    "an exercise": "          - exercise: |\n",
    "a key": "          - exercise: dip\n            |\n",
    "a waiver": "# spotline: waive |\n",
}
"""What is written below the text where proposals are asked for, at the bar."""


def answers(lines: int, rounds: int) -> Times:
    """Milliseconds from a question to its answer: proposals in several places, and the hints of the whole text."""
    text = programme(lines)
    times: Times = {}
    with tempfile.TemporaryDirectory() as folder:
        (Path(folder) / ".git").mkdir()
        with PipeClient(Path(folder)) as client:
            client.initialize()
            for number, (name, line) in enumerate(ASKED.items()):
                uri = client.uri(f"{number}.programme.yaml")
                client.open(uri, text + line.replace("|", ""))
                client.findings(uri, 1)
                above, _, before = (text + line).partition("|")[0].rpartition("\n")
                caret = {"line": above.count("\n") + 1, "character": len(before)}
                asked = {"textDocument": {"uri": uri}, "position": caret}
                ask = partial(client.result_of, "textDocument/completion", asked)
                times[name] = [timed(ask) for _ in range(rounds + 1)]
            whole = {"start": {"line": 0, "character": 0}, "end": {"line": lines, "character": 0}}
            ask = partial(
                client.result_of, "textDocument/inlayHint", {"textDocument": {"uri": uri}, "range": whole}
            )
            times["hints"] = [timed(ask) for _ in range(rounds + 1)]
            times["fixes"] = list(fixes(client, text, rounds))
            assert client.shut_down() == 0, client.log()
    return {name: taken[1:] for name, taken in times.items()}


def fixes(client: PipeClient, text: str, rounds: int) -> Iterator[float]:
    """Milliseconds of the quick fixes for one finding after the other, each of a text that has just changed."""
    uri = client.uri("fixes.programme.yaml")
    client.open(uri, text)
    places = [one["range"] for one in client.findings(uri, 1)]
    for number in range(rounds + 1):
        now = f"{text}# {number}\n"
        client.change(
            uri, number + 2, change(text if not number else f"{text}# {number - 1}\n", now, "utf-16")
        )
        client.findings(uri, number + 2)
        asked = {
            "textDocument": {"uri": uri},
            "range": places[number % len(places)],
            "context": {"diagnostics": []},
        }
        yield timed(partial(client.result_of, "textDocument/codeAction", asked))


def first_findings(folder: Path, text: str) -> float:
    """Milliseconds from the start of the server to the first findings of a text that is opened at once."""
    start = perf_counter()
    with PipeClient(folder, command=(SCRIPT, "editor")) as client:
        number = client.request_initialize()
        uri = client.uri("plan.programme.yaml")
        client.open(uri, text)
        client.response(number)
        client.findings(uri, 1)
        return (perf_counter() - start) * 1000


def bare_answer(folder: Path) -> float:
    """Milliseconds from the start of a server that does nothing to its answer to ``initialize``."""
    start = perf_counter()
    with PipeClient(folder, command=(sys.executable, "-c", BARE)) as client:
        client.response(client.request_initialize())
        return (perf_counter() - start) * 1000


def starts(rounds: int) -> Times:
    """Milliseconds of the first findings, beside those of the bare server's answer."""
    text = programme(60)
    times: Times = {"findings": [], "bare": []}
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        (folder / ".git").mkdir()
        (folder / "plan.programme.yaml").write_text(text, encoding="utf-8")
        for _ in range(rounds + 1):
            times["findings"].append(first_findings(folder, text))
            times["bare"].append(bare_answer(folder))
    return {name: taken[1:] for name, taken in times.items()}


def ratio(times: Times) -> float:
    """The first median by the second."""
    first, second = map(median, times.values())
    return first / second


def p95(taken: list[float]) -> float:
    """What 95 of a hundred stay below."""
    return quantiles(taken, n=20)[-1]


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--rounds", type=int, default=60)
    parser.add_argument("--starts", type=int, default=15)
    chosen = parser.parse_args()
    gc.disable()
    print(f"From a change to its findings, {chosen.rounds} rounds, ms (load: CSafeLoader on the same text)")
    print("  lines  typed        median     p95    load     p95   ratio   wanted")
    for lines in LINES:
        for kind in KINDS:
            times = changes(lines, kind, chosen.rounds)
            figures = [figure for taken in times.values() for figure in (median(taken), p95(taken))]
            shown = "".join(f"{figure:8.2f}" for figure in (*figures, ratio(times)))
            print(
                f"  {lines:>5}  {kind:<9}{shown}   {f'<= {LIMIT:g}' if kind == 'a number' else ''}".rstrip()
            )
            gc.collect()
    print(f"From a question to its answer, {chosen.rounds} rounds, ms")
    print("  lines  asked for    median     p95")
    for lines in LINES:
        for name, taken in answers(lines, chosen.rounds).items():
            print(f"  {lines:>5}  {name:<11}{median(taken):8.2f}{p95(taken):8.2f}")
    times = starts(chosen.starts)
    print(
        f"From the start to the first findings, 60 lines, {chosen.starts} rounds, ms (bare: answer to initialize)"
    )
    print("                      median     p95    bare     p95   ratio   wanted")
    figures = [figure for taken in times.values() for figure in (median(taken), p95(taken))]
    print(
        " " * 18 + "".join(f"{figure:8.1f}" for figure in figures) + f"{ratio(times):8.2f}   <= {START_LIMIT}"
    )
    print(f"Load of the machine: {', '.join(f'{one:.1f}' for one in os.getloadavg())}")


if __name__ == "__main__":
    main()
