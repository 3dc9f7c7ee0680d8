"""Long trials, run by hand: kills at random moments, and every value of the examples made wrong in a dozen ways.

    python tests/long_trials.py kills [--times 250] [--seed 0]
    python tests/long_trials.py values [--every 1] [--server]

``kills`` stops `mend` and `review --record-known` so many times each, at any moment from start to end, and looks
whether each file is as before or as it shall be, and whether the same command then does its job. ``values`` puts
wrong values in the place of every value and group of every example, through the review or the editor's server, and
looks for rules that raise, findings outside their text and requests that fail. Fuzzing is `fuzzing/run.py`.
Exit code 1 if anything went wrong.
"""

from __future__ import annotations

import argparse
import asyncio
import logging
import os
import random
import signal
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from time import monotonic, process_time

if __name__ == "__main__":
    sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from spotline.lint.cli.main import main as spotline
from spotline.lint.engine import registry
from spotline.lint.project.overlay import Overlay
from spotline.lint.project.review import review_on
from spotline.lint.project.workspace import Workspace
from spotline.lint.syntax.builder import read
from spotline.lint.syntax.tree import Mapping, Node, Sequence
from spotline.lint.team.known_findings import NAME as KNOWN_FINDINGS
from spotline.tests.fuzzing.targets import TODAY, FuzzedServer, handle, told

EXAMPLES = Path(__file__).parent.parent / "examples"

FAULTY = """\
programme: Slips
goal: hypertrofy
weeks: 4
sessions:
  - session: One
    exercises:
      - {exercise: back squat, sets: 3 x 8, rir: 2}
      - {exercise: seated leg curl, sets: 3, reps: 8 to 12, rir: 2, rest: 2 mins}
"""

WRONG = (
    *("", "null", "true", "-1", "0", "1e308", "0.5", "wobble", "[]", "{}", "[1, 2]", "{1: 2}", "'a: b'"),
    *("*nowhere", "&here 1", "2026-13-45", "3x8 @ 80 % x 2", '"\\0"', "x" * 3000, "🌱", "[", "}"),
)
"""What may stand in the place of any value."""


# Kills


def kills(times: int, seed: int) -> int:
    """How often something was lost or hindered."""
    chance, lost = random.Random(seed), 0
    for words in (
        ["mend", "--", "plan.programme.yaml"],
        ["review", "--record-known", "--", "plan.programme.yaml"],
    ):
        whole = _seconds(words)
        stopped = 0
        for _ in range(times):
            with tempfile.TemporaryDirectory() as folder:
                allowed = _states(words)
                _lay_out(Path(folder))
                stopped += _stopped_after(folder, words, chance.uniform(0, whole * 1.1))
                now = _state(Path(folder))
                _run(folder, words)
                good = now in allowed and _state(Path(folder)) == allowed[-1]
                lost += not good
                if not good:
                    print(f"{words[0]}: {now!r}, then {_state(Path(folder))!r}")
        print(
            f"{' '.join(words[:2])}: {times} runs of {whole:.2f} s, {stopped} stopped before their end, {lost} lost"
        )
    return lost


def _lay_out(folder: Path) -> None:
    (folder / ".git").mkdir()
    (folder / "plan.programme.yaml").write_text(FAULTY, encoding="utf-8")


def _state(folder: Path) -> tuple[bytes, bytes]:
    record = folder / KNOWN_FINDINGS
    return (folder / "plan.programme.yaml").read_bytes(), record.read_bytes() if record.exists() else b""


def _states(words: list[str]) -> list[tuple[bytes, bytes]]:
    """Before and after."""
    with tempfile.TemporaryDirectory() as folder:
        _lay_out(Path(folder))
        before = _state(Path(folder))
        _run(folder, words)
        return [before, _state(Path(folder))]


def _child(folder: str, words: list[str]) -> int:
    number = os.fork()
    if not number:
        try:
            os.chdir(folder)
            os.environ["XDG_STATE_HOME"] = os.path.join(folder, ".git", "state")
            nothing = os.open(os.devnull, os.O_RDWR)
            for stream in range(3):
                os.dup2(nothing, stream)
            sys.argv[1:] = words
            spotline()
        finally:
            os._exit(0)
    return number


def _run(folder: str, words: list[str]) -> None:
    os.waitpid(_child(folder, words), 0)


def _seconds(words: list[str]) -> float:
    with tempfile.TemporaryDirectory() as folder:
        _lay_out(Path(folder))
        started = monotonic()
        _run(folder, words)
        return monotonic() - started


def _stopped_after(folder: str, words: list[str], seconds: float) -> bool:
    """Whether a command was stopped after some seconds, before its end."""
    number = _child(folder, words)
    signal.setitimer(signal.ITIMER_REAL, max(seconds, 0.0001))
    signal.sigwait({signal.SIGALRM})
    os.kill(number, signal.SIGKILL)
    return os.WIFSIGNALED(os.waitpid(number, 0)[1])


# Values


def _nodes(node: Node) -> Iterator[Node]:
    yield node
    inner: list[Node] = []
    if isinstance(node, Mapping):
        inner = [
            part for entry in node.entries.values() if not entry.merged for part in (entry.key, entry.value)
        ]
    elif isinstance(node, Sequence):
        inner = list(node.items)
    for one in inner:
        if one.defined is None:
            yield from _nodes(one)


def _wrong_texts(path: Path, every: int) -> Iterator[str]:
    """The text of a file with one value after another made wrong."""
    reading = read(str(path))
    assert reading.root is not None
    text = reading.text.content
    places = sorted({(node.start, node.end) for node in _nodes(reading.root)})
    for number, (start, end) in enumerate((place, wrong) for place in places for wrong in WRONG):
        if number % every == 0:
            yield text[: start[0]] + end + text[start[1] :]


def values(every: int, *, through_server: bool) -> int:
    """How many texts went wrong."""
    rules = registry.all_rules()
    wrong = 0
    for path in sorted(EXAMPLES.rglob("*.yaml")):
        started, tried = process_time(), 0
        texts = _wrong_texts(path, every)
        trial = asyncio.run(_served(path, texts)) if through_server else _reviewed(path, texts, rules)
        for text, fault in trial:
            tried += 1
            if fault is not None:
                wrong += 1
                print(f"{path.name}: {type(fault).__name__}: {fault}\n{text[:200]}")
        print(f"{path.name}: {tried} texts, {process_time() - started:.0f} s", flush=True)
    print(f"{wrong} texts went wrong")
    return wrong


def _reviewed(
    path: Path, texts: Iterator[str], rules: list[registry.Rule]
) -> Iterator[tuple[str, Exception | None]]:
    for text in texts:
        try:
            told(review_on(Workspace(TODAY, rules, Overlay({str(path): text})), [str(path)]))
            yield text, None
        except Exception as fault:
            yield text, fault


async def _served(path: Path, texts: Iterator[str]) -> list[tuple[str, Exception | None]]:
    server = FuzzedServer()
    uri = path.as_uri()
    document = {"textDocument": {"uri": uri}}
    handle(server, "initialize", {"processId": None, "rootUri": EXAMPLES.as_uri(), "capabilities": {}}, 1)
    opened = {"uri": uri, "languageId": "yaml", "version": 0, "text": path.read_text(encoding="utf-8")}
    handle(server, "textDocument/didOpen", {"textDocument": opened})
    tried: list[tuple[str, Exception | None]] = []
    for version, text in enumerate(texts, start=1):
        at = {"position": {"line": version % (text.count("\n") + 1), "character": 12}}
        whole = {"range": {"start": {"line": 0, "character": 0}, "end": {"line": 9999, "character": 0}}}
        handle(
            server,
            "textDocument/didChange",
            {"textDocument": {"uri": uri, "version": version}, "contentChanges": [{"text": text}]},
        )
        while server.work_while_idle():
            pass
        for what, more in (
            ("hover", at),
            ("completion", at),
            ("inlayHint", whole),
            ("codeAction", whole | {"context": {"diagnostics": []}}),
        ):
            handle(server, f"textDocument/{what}", document | more, version)
        failures, server.failures = server.failures, []
        tried.append((text if failures else "", RuntimeError("; ".join(failures)) if failures else None))
    return tried


def main() -> int:
    parser = argparse.ArgumentParser(description=(__doc__ or "").partition("\n")[0])
    parser.add_argument("trial", choices=("kills", "values"))
    parser.add_argument("--times", type=int, default=250)
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument("--every", type=int, default=1, help="each so many of the texts")
    parser.add_argument("--server", action="store_true", help="through the editor's server")
    asked = parser.parse_args()
    logging.disable()  # the library for messages logs what it refuses
    if asked.trial == "kills":
        signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGALRM})
        registry.all_rules()
        return 1 if kills(asked.times, asked.seed) else 0
    return 1 if values(asked.every, through_server=asked.server) else 0


if __name__ == "__main__":
    sys.exit(main())
