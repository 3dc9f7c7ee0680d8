"""Coverage-guided fuzzing of all that reads: looks for bytes that end in a traceback, a hang or an untold finding.

    python tests/fuzzing/run.py TARGET --seconds 600 [--scratch FOLDER] [--keep 30]

It needs `atheris`, in an environment of its own beside this project's packages. What goes wrong is written to
crashes/ in the scratch folder, one input for each place in the code, and the run goes on; exit code 1 if there was
any. With --keep the inputs that together reach most of the code, the shortest first, are kept in
tests/fuzzing/corpus/TARGET, which tests/test_fuzzing.py replays; so is each input that has gone wrong once.
"""

from __future__ import annotations

import argparse
import hashlib
import logging
import os
import random
import re
import signal
import sys
import tempfile
import traceback
from collections.abc import Iterator
from pathlib import Path
from time import monotonic
from types import FrameType

import atheris

with atheris.instrument_imports(include=["spotline"]):
    from spotline.tests.fuzzing import targets

HERE = Path(__file__).parent
ROOT = HERE.parent.parent
CORPUS = HERE / "corpus"

SECONDS_FOR_ONE = 20
"""After which one input is a hang; what is traced takes some five times as long as what is not."""

LONGEST = 4_000
"""Letters of an input."""

MOST_LOOKED_AT = 150
"""Inputs, the shortest of the queue, among which those to be kept are chosen: each is traced line by line."""

OURS = ("spotline.lint", "spotline.rules")
"""Beginnings of the names of the modules whose lines count as reached."""

LINES = re.compile(rb"(?<=\n)")
PIECES = re.compile(rb"[A-Za-z][A-Za-z ]*|[0-9.]+|\s+|.", re.S)


def seeds(name: str) -> Iterator[bytes]:
    """The sound text of a target, what the examples hold of its kind, and the corpus."""
    kept = CORPUS / name
    yield from (path.read_bytes() for path in sorted(kept.glob("*")))
    yield targets.sound_input(name)
    if name in ("programme", "athlete", "mend"):
        kind = "athlete" if name == "athlete" else "programme"
        yield from (path.read_bytes()[:LONGEST] for path in sorted(ROOT.glob(f"examples/**/*.{kind}.yaml")))


class Mutator:
    """Changes inputs by lines and by words, which what changes bytes alone seldom comes to."""

    def __init__(self, name: str) -> None:
        lines = {line for seed in seeds(name) for line in LINES.split(seed)}
        self.lines = sorted(lines)
        self.words = sorted(
            {word for line in lines for word in PIECES.findall(line)}
            | {b"1e999", b"-1", b"\xff", b"&a", b"*a", b"<<"}
        )

    def __call__(self, data: bytes, most: int, seed: int) -> bytes:
        chance = random.Random(seed)
        if chance.random() < 0.3:
            return bytes(atheris.Mutate(data, most))
        for _ in range(chance.randint(1, 4)):
            data = self._by_lines(data, chance) if chance.random() < 0.4 else self._by_words(data, chance)
        return data[:most]

    def _by_lines(self, data: bytes, chance: random.Random) -> bytes:
        lines = LINES.split(data)
        at = chance.randrange(len(lines))
        change = chance.randrange(4)
        if change == 0:
            del lines[at]
        elif change == 1:
            lines.insert(at, chance.choice(self.lines))
        elif change == 2:
            lines.insert(at, chance.choice(lines))
        else:
            lines[at] = b" " * chance.randint(0, 6) + lines[at].lstrip(b" ")
        return b"".join(lines)

    def _by_words(self, data: bytes, chance: random.Random) -> bytes:
        pieces = PIECES.findall(data)
        if not pieces:
            return chance.choice(self.words)
        at = chance.randrange(len(pieces))
        change = chance.randrange(3)
        if change == 0:
            pieces[at] = chance.choice(self.words)
        elif change == 1:
            pieces.insert(at, chance.choice(self.words))
        else:
            del pieces[at]
        return b"".join(pieces)


class Trial:
    """Tries inputs, and writes down what goes wrong: one input for each place in the code."""

    def __init__(self, name: str, scratch: Path) -> None:
        self.run = targets.TARGETS[name]
        self.folder = targets.Folder(scratch / "folder")
        self.crashes = scratch / "crashes"
        self.crashes.mkdir(parents=True, exist_ok=True)
        self.tried = 0
        self.found: set[str] = set()
        signal.signal(signal.SIGALRM, _hangs)

    def __call__(self, data: bytes) -> None:
        self.tried += 1
        signal.alarm(SECONDS_FOR_ONE)
        try:
            self.run(self.folder, data)
        except Exception as fault:
            self._note(data, fault)
        finally:
            signal.alarm(0)

    def _note(self, data: bytes, fault: Exception) -> None:
        last = traceback.extract_tb(fault.__traceback__)[-1]
        place = f"{type(fault).__name__}-{Path(last.filename).stem}-{last.lineno}"
        if place not in self.found:
            self.found.add(place)
            (self.crashes / place).write_bytes(data)
            (self.crashes / f"{place}.txt").write_text(
                "".join(traceback.format_exception(fault)), encoding="utf-8"
            )
            print(f"found: {place}", flush=True)


def _hangs(number: int, frame: FrameType | None) -> None:
    raise TimeoutError(f"more than {SECONDS_FOR_ONE} s")


def _at_the_end(trial: Trial, name: str, started: float) -> None:
    seconds = monotonic() - started
    print(f"{name}: {trial.tried} inputs in {seconds:.0f} s, {len(trial.found)} places where it goes wrong")


def fuzz(name: str, seconds: int, scratch: Path) -> None:
    """Fuzzes a target; never returns, as the library ends the process."""
    queue = scratch / "queue"
    queue.mkdir(parents=True, exist_ok=True)
    for seed in seeds(name):
        (queue / hashlib.sha256(seed).hexdigest()[:16]).write_bytes(seed)
    trial, started = Trial(name, scratch), monotonic()
    mutator = Mutator(name)
    words = [
        sys.argv[0],
        str(queue),
        f"-max_total_time={seconds}",
        f"-max_len={LONGEST}",
        "-rss_limit_mb=3000",
    ]
    words += ["-timeout=60", "-print_final_stats=0", "-verbosity=0", f"-artifact_prefix={scratch}/"]

    def one(data: bytes) -> None:
        trial(data)
        if monotonic() - started > seconds:
            _at_the_end(trial, name, started)
            sys.stdout.flush()
            os._exit(1 if trial.found else 0)

    atheris.Setup(words, one, custom_mutator=mutator)
    atheris.Fuzz()


def keep(name: str, most: int, scratch: Path) -> None:
    """Keeps the inputs that together reach all lines that the queue reaches, the shortest first; at most so many."""
    trial = Trial(name, scratch)
    reached: set[tuple[str, int]] = set()
    folder = CORPUS / name
    folder.mkdir(parents=True, exist_ok=True)
    kept = []
    for path in sorted((scratch / "queue").glob("*"), key=lambda path: (path.stat().st_size, path.name))[
        :MOST_LOOKED_AT
    ]:
        lines: set[tuple[str, int]] = set()

        def trace(
            frame: FrameType, event: str, argument: object, lines: set[tuple[str, int]] = lines
        ) -> object:
            if not frame.f_globals.get("__name__", "").startswith(OURS):
                return None
            if event == "line":
                lines.add((frame.f_code.co_filename, frame.f_lineno))
            return trace

        data = path.read_bytes()
        sys.settrace(trace)  # type: ignore[arg-type]
        trial(data)
        sys.settrace(None)
        if new := lines - reached:
            kept.append((len(new), data))
            reached |= lines
    kept.sort(key=lambda one: -one[0])
    for _, data in kept[:most]:
        (folder / hashlib.sha256(data).hexdigest()[:12]).write_bytes(data)
    print(f"{name}: {min(most, len(kept))} inputs kept, {len(reached)} lines reached by all")


def main() -> None:
    parser = argparse.ArgumentParser(description=(__doc__ or "").partition("\n")[0])
    parser.add_argument("target", choices=targets.TARGETS)
    parser.add_argument("--seconds", type=int, default=600)
    parser.add_argument("--scratch", type=Path, default=Path(tempfile.gettempdir()) / "spotline-fuzzing")
    parser.add_argument("--keep", type=int, default=0)
    asked = parser.parse_args()
    logging.disable()  # the library for messages logs what it refuses
    scratch = asked.scratch / asked.target
    if asked.keep:
        keep(asked.target, asked.keep, scratch)
    else:
        fuzz(asked.target, asked.seconds, scratch)


if __name__ == "__main__":
    main()
