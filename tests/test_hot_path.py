"""What a review of sound files imports: Python, the YAML reader and our own modules, nothing that costs time."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
import yaml

from spotline.tests.benchmark_corpus import faulty, programme

ROOT = Path(__file__).parent.parent
SOUND = ROOT / "examples" / "programmes" / "nell-full-body.programme.yaml"
FAULTY = ROOT / "examples" / "faulty" / "slips.programme.yaml"

COSTLY = (
    "argparse",
    "asyncio",
    "dataclasses",
    "difflib",
    "importlib.metadata",
    "inspect",
    "jsonschema",
    "logging",
    "lsprotocol",
    "multiprocessing",
    "pathlib",
    "pygls",
    "ruamel",
    "subprocess",
    "tempfile",
    "textwrap",
    "typing",
    "urllib",
)
"""Modules that a review of sound files has no use for; each costs from one millisecond to three hundred."""

PROBE = """\
import sys
sys.path[:0] = sys.argv.pop(1).splitlines()
from spotline.lint.cli.main import main
code, found = main(), sorted(sys.modules)
import json
print(json.dumps([code, found]), file=sys.stderr)
"""

BASELINE = """\
import sys
sys.path[:0] = sys.argv.pop(1).splitlines()
import json, yaml
print(json.dumps([0, sorted(sys.modules)]), file=sys.stderr)
"""


@pytest.fixture(scope="module")
def homes(tmp_path_factory: pytest.TempPathFactory) -> list[str]:
    """Where the package and its libraries are found without help of an installer's finder.

    An editable install brings a finder along that imports pathlib and more in every Python, so the probes run
    without site-packages and are told of these folders instead.
    """
    link = tmp_path_factory.mktemp("home") / "spotline"
    link.symlink_to(ROOT, target_is_directory=True)
    return [str(link.parent), os.path.dirname(os.path.dirname(yaml.__file__))]


def modules(program: str, homes: list[str], *words: str) -> tuple[int, set[str]]:
    """The exit code of a probe and the modules that it ended with."""
    done = subprocess.run(
        [sys.executable, "-I", "-S", "-c", program, "\n".join(homes), *words], capture_output=True, text=True
    )
    assert done.returncode == 0, done.stderr
    code, names = json.loads(done.stderr.splitlines()[-1])
    return code, set(names)


def costly(names: set[str]) -> list[str]:
    """Which costly modules, or parts of them, are among some modules."""
    return sorted(name for name in names if any(f"{name}.".startswith(f"{one}.") for one in COSTLY))


@pytest.fixture(scope="module")
def reviewed(homes: list[str]) -> set[str]:
    """The modules that a review of a sound file with an athlete's file brings, beyond Python's and PyYAML's."""
    _, given = modules(BASELINE, homes)
    code, names = modules(PROBE, homes, "review", "--as", "lines", "--", str(SOUND))
    assert code == 0
    return names - given


def test_a_sound_file_costs_no_library(reviewed: set[str]) -> None:
    assert costly(reviewed) == []


def test_a_sound_file_calls_no_module_of_ours_that_only_explains_faults(reviewed: set[str]) -> None:
    ours = {name.removeprefix("spotline.") for name in reviewed if name.startswith("spotline.")}
    assert {
        "lint.project.review",
        "lint.counting.ledger",
        "lint.schemas.fast_check",
        "lint.reporters.lines",
        "rules.leg_coverage",
    } <= ours
    idle = {
        "lint.schemas.explain",
        "lint.schemas.explain_keys",
        "lint.schemas.explain_values",
        "lint.schemas.slips",
        "lint.syntax.characters",
        "lint.syntax.layout_errors",
        "lint.syntax.parser_errors",
        "lint.syntax.sign_errors",
        "lint.body.build",
        "lint.body.nearest",
        "lint.body.built_names",
        "lint.body.name_reading",
        "lint.body.name_suggestions",
        "lint.body.given_names",
        "lint.findings.edits",
        "lint.model.week_edits",
        "lint.remedies",
        "lint.solving",
        "lint.syntax.additions",
        "lint.syntax.enclosing",
        "lint.syntax.numbers",
        "lint.syntax.removals",
        "lint.syntax.rewrites",
    }
    assert not ours & idle
    assert not ours & {"lint.reporters.cards", "lint.reporters.review_json", "lint.cli.usage"}


@pytest.fixture(scope="module")
def plain(homes: list[str], tmp_path_factory: pytest.TempPathFactory) -> set[str]:
    """All modules that the review of one plain file of 60 lines ends with, where nothing stands beside it."""
    file = tmp_path_factory.mktemp("plain") / "made.programme.yaml"
    file.write_text(programme(60), encoding="utf-8")
    code, names = modules(PROBE, homes, "review", "--as", "lines", "--", str(file))
    assert code == 0
    return names


def test_a_plain_file_needs_no_library_at_all(plain: set[str]) -> None:
    libraries = {"yaml", "json", "jsonschema", "contextlib", "subprocess", "typing", "dataclasses"}
    assert not libraries & {name.partition(".")[0] for name in plain}
    assert len([name for name in plain if not name.startswith("spotline")]) <= 75


def test_a_plain_file_calls_for_no_more_modules_of_ours_than_it_did(plain: set[str]) -> None:
    ours = {name.removeprefix("spotline.") for name in plain if name.startswith("spotline.")}
    idle = {
        "lint.body.restriction_angles",
        "lint.body.restriction_words",
        "lint.body.restrictions",
        "lint.project.git",
        "lint.project.listing",
        "lint.syntax.bounds",
        "lint.syntax.event_builder",
        "lint.team.presets",
        "lint.team.read_settings",
        "lint.text.safe_writer",
        "lint.text.state",
    }
    assert not ours & idle
    assert len([name for name in ours if name.startswith("lint")]) <= 102


COMPILING = """\
import re._compiler, sys
compiled, compile_one = [], re._compiler.compile
def counted(pattern, flags=0):
    compiled.append(pattern)
    return compile_one(pattern, flags)
re._compiler.compile = counted
""" + PROBE.replace("sorted(sys.modules)", "[*map(str, compiled)]")


def test_a_plain_file_compiles_few_patterns(homes: list[str], tmp_path: Path) -> None:
    file = tmp_path / "made.programme.yaml"
    file.write_text(programme(60), encoding="utf-8")
    _, few = modules(COMPILING, homes, "review", "--as", "lines", "--", str(file))
    assert len(few) <= 13, few
    _, more = modules(COMPILING, homes, "review", "--as", "lines", "--", str(FAULTY))
    assert len(more) > len(few)


def test_a_fault_of_the_schema_needs_no_library(homes: list[str], tmp_path: Path) -> None:
    file = tmp_path / "made.programme.yaml"
    file.write_text(faulty(programme(60)), encoding="utf-8")
    code, names = modules(PROBE, homes, "review", "--as", "lines", "--", str(file))
    assert code == 1
    assert not {"yaml", "jsonschema", "referencing", "attr", "urllib"} & {
        name.partition(".")[0] for name in names
    }


def test_the_probe_sees_what_a_faulty_file_calls_for(homes: list[str]) -> None:
    code, names = modules(PROBE, homes, "review", "--as", "lines", "--", str(FAULTY))
    assert code == 1
    assert {"difflib", "spotline.lint.schemas.explain"} <= names
    assert "difflib" in costly(names)
    assert "jsonschema" not in names


def test_the_version_and_the_help_read_no_file_format(homes: list[str]) -> None:
    for words in (["--version"], ["--help"], ["mend", "--help"]):
        _, names = modules(PROBE, homes, *words)
        assert not names & {"argparse", "yaml", "spotline.lint.project.review", "spotline.lint.body.built"}
