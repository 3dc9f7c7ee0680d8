"""Which lines each test comes by: traced once, and kept until the project's files, or the test's own, are others."""

from __future__ import annotations

import hashlib
import pickle
from collections import defaultdict
from collections.abc import Iterable
from pathlib import Path

from spotline.tests.mutants import ROOT, git

FOLDER = ROOT / ".mutation_cache"
KEPT = FOLDER / "traces"

ROWS = {"tests/rules/test_told.py": "tests/rules/told/"}
"""By file of tests the folder with what its tests are made of: no other leans on it."""

Place = tuple[str, int]
"""A module, and a line in it."""


class Trace:
    """What one test comes by, and the seconds of processor time that it takes under the trace."""

    def __init__(self, places: set[Place], seconds: float) -> None:
        self.places = places
        self.seconds = seconds


class FileTraces:
    """Traces of tests in one file as it was: the tests by place, one bit each, in the order of ``seconds``."""

    def __init__(self, was: str) -> None:
        self.was = was
        self.seconds: dict[str, float] = {}
        self.tests_at: dict[Place, int] = {}

    def add(self, test: str, trace: Trace) -> None:
        """Takes in what a test, by its name without the file, comes by."""
        bit = 1 << len(self.seconds)
        self.seconds[test] = trace.seconds
        for place in trace.places:
            self.tests_at[place] = self.tests_at.get(place, 0) | bit


class Traces:
    """The traces on hand, by file of tests; those of other versions of the project are let go."""

    def __init__(self) -> None:
        self.project = state_of(path for path in files() if not is_test(path))
        self.files: dict[str, FileTraces] = {}
        if KEPT.exists():
            project, kept = pickle.loads(KEPT.read_bytes())
            if project == self.project:
                self.files = {name: file for name, file in kept.items() if file.was == state_of(parts(name))}

    def missing(self, tests: Iterable[str]) -> list[str]:
        """Those of the tests, by name, that have no trace."""
        known = {f"{name}::{test}" for name, file in self.files.items() for test in file.seconds}
        return [test for test in tests if test not in known]

    def add(self, found: dict[str, Trace]) -> None:
        """Takes in new traces, and keeps all for the next run."""
        for name, trace in found.items():
            path, _, test = name.partition("::")
            self.files.setdefault(path, FileTraces(state_of(parts(path)))).add(test, trace)
        FOLDER.mkdir(exist_ok=True)
        KEPT.write_bytes(pickle.dumps((self.project, self.files)))

    def seconds(self) -> dict[str, float]:
        """How long each test takes."""
        return {
            f"{name}::{test}": seconds
            for name, file in self.files.items()
            for test, seconds in file.seconds.items()
        }

    def lines(self, tests: list[str]) -> dict[Place, int]:
        """For each line those of the tests that come by, one bit each, in the order given."""
        at = {test: index for index, test in enumerate(tests)}
        lines: dict[Place, int] = defaultdict(int)
        for name, file in self.files.items():
            bits = [at.get(f"{name}::{test}", -1) for test in file.seconds]
            for place, those in file.tests_at.items():
                lines[place] |= sum(
                    1 << bit for index, bit in enumerate(bits) if those >> index & 1 and bit >= 0
                )
        return lines


def files() -> list[str]:
    """All files that a test may lean on, by their paths from the root of the project."""
    folders = ("lint", "rules", "schema", "examples", "tests")
    return git("ls-files", "--cached", "--others", "--exclude-standard", "--", *folders).splitlines()


def is_test(path: str) -> bool:
    """Whether a file holds tests or their rows, or tries mutants: what other tests do not lean on."""
    is_code = path.startswith("tests/") and Path(path).name.startswith(("test_", "mutation"))
    return is_code or path.startswith(tuple(ROWS.values()))


def parts(test: str) -> list[str]:
    """A file of tests, and the files that its tests are made of."""
    return [test, *(path for path in files() if test in ROWS and path.startswith(ROWS[test]))]


def state_of(paths: Iterable[str]) -> str:
    """A number for what files hold."""
    state = hashlib.sha256()
    for path in sorted(paths):
        held = (ROOT / path).read_bytes() if (ROOT / path).is_file() else b""
        state.update(f"{path} {len(held)} ".encode() + held)
    return state.hexdigest()
