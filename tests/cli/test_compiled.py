"""The code of our modules in one file: the same answers with it, without it, and whatever is wrong with it."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
import yaml

from spotline.tests.benchmark_corpus import programme

ROOT = Path(__file__).parents[2]

PROBE = """\
import json, os, sys
sys.path[:0] = json.loads(sys.argv.pop(1))
def told(code, leave=os._exit):
    ours = {name: type(one.__spec__.loader).__name__ for name, one in sys.modules.items() if name[:9] == "spotline."}
    print(json.dumps([code, ours]), file=sys.stderr, flush=True)
    leave(0)
os._exit = told
from spotline.lint.cli.main import command
command()
"""
FROM_THE_FILE, BY_PYTHON = "_Loader", "SourceFileLoader"
BEFORE = {"lint", "lint.cli", "lint.cli.main", "lint.cli.compiled"}
"""Modules that are there before the file is asked."""


class Copy:
    """An installed copy of the package, with compiled code of its own."""

    def __init__(self, home: Path) -> None:
        self.package, self.compiled = home / "spotline", home / "compiled"
        for part in ("lint", "rules", "schema"):
            kept = shutil.ignore_patterns("__pycache__", "data")
            shutil.copytree(ROOT / part, self.package / part, ignore=kept)
        shutil.copy(ROOT / "__init__.py", self.package)
        self.plan = home / "made.programme.yaml"
        self.plan.write_text(programme(60), encoding="utf-8")
        self.places = json.dumps([str(home), os.path.dirname(os.path.dirname(yaml.__file__))])

    def run(self, *options: str, **environment: str) -> tuple[int, str, dict[str, str]]:
        """The exit code of a review, what it printed, and what loaded each of our modules."""
        words = ["review", "--as", "json", *options, "--", str(self.plan)]
        kept = {name: value for name, value in os.environ.items() if not name.startswith("PYTHON")}
        done = subprocess.run(
            [sys.executable, "-S", "-c", PROBE, self.places, *words],
            capture_output=True,
            text=True,
            env={**kept, "PYTHONPYCACHEPREFIX": str(self.compiled), **environment},
        )
        code, ours = json.loads(done.stderr.splitlines()[-1])
        return code, done.stdout, {name.removeprefix("spotline."): by for name, by in ours.items()}

    @property
    def file(self) -> Path:
        return next(self.compiled.rglob("*.all"))


@pytest.fixture(scope="module")
def copy(tmp_path_factory: pytest.TempPathFactory) -> Copy:
    made = Copy(tmp_path_factory.mktemp("copy"))
    first = made.run(PYTHONDONTWRITEBYTECODE="1")
    assert not list(made.compiled.rglob("*.all")), "Python was told to write no compiled code"
    assert made.run() == first, "which writes the file"
    return made


def loaded_by(ours: dict[str, str], loader: str) -> set[str]:
    return {name for name, by in ours.items() if by == loader}


def test_all_modules_come_from_the_file_and_say_the_same(copy: Copy) -> None:
    code, printed, ours = copy.run()
    assert (code, printed) == copy.run(PYTHONDONTWRITEBYTECODE="1")[:2]
    assert json.loads(printed)["summary"]
    assert loaded_by(ours, BY_PYTHON) == BEFORE
    assert len(loaded_by(ours, FROM_THE_FILE)) > 140


def test_a_source_that_has_changed_is_read_anew(copy: Copy) -> None:
    source = copy.package / "lint/reporters/json_text.py"
    text = source.read_text(encoding="utf-8")
    source.write_text(text + "\nprint('changed')\n", encoding="utf-8")
    code, printed, ours = copy.run()
    assert printed.startswith("changed\n")
    assert loaded_by(ours, BY_PYTHON) == {*BEFORE, "lint.reporters.json_text"}
    assert copy.run()[:2] == (code, printed)
    assert loaded_by(copy.run()[2], BY_PYTHON) == BEFORE
    source.write_text(text, encoding="utf-8")
    assert "changed" not in copy.run()[1]


@pytest.mark.parametrize(
    "damage",
    [
        lambda data: b"",
        lambda data: b"\xff" * 64,
        lambda data: data[: len(data) // 2],
        lambda data: data[:-100],
        lambda data: data.replace(sys.version.encode(), b"9" * len(sys.version)),
        lambda data: data[: len(data) // 3] + bytes(len(data) - len(data) // 3),
    ],
    ids=["empty", "no index", "half", "the end is gone", "of another Python", "zeros"],
)
def test_a_damaged_file_changes_no_answer_and_is_written_anew(copy: Copy, damage) -> None:
    said = copy.run()[:2]
    copy.file.write_bytes(damage(copy.file.read_bytes()))
    assert copy.run()[:2] == said
    assert copy.run()[:2] == said
    code, printed, ours = copy.run()
    assert (code, printed) == said
    assert loaded_by(ours, BY_PYTHON) == BEFORE


def test_several_processes_say_the_same(copy: Copy) -> None:
    one = copy.run("--jobs", "1")
    assert copy.run("--jobs", "2")[:2] == one[:2]


def test_nothing_is_left_where_it_cannot_be_written(copy: Copy) -> None:
    said = copy.run()[:2]
    file = copy.file
    file.unlink()
    file.mkdir()  # no file can take its place
    assert copy.run()[:2] == said
    assert [one for one in file.parent.iterdir() if ".all" in one.name] == [file]
    file.rmdir()
    assert copy.run()[:2] == said
