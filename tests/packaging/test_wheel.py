"""The package as it is shipped: what is in the wheel, and that the wheel works away from the checkout."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tarfile
import tomllib
import zipfile
from collections.abc import Callable
from pathlib import Path, PurePosixPath

import pytest

ROOT = Path(__file__).parent.parent.parent

UNBALANCED = """\
programme: Legs, one side of the knee only
athlete: {name: Orla}
goal: hypertrophy
focus: [legs]
starts: 2026-01-05
weeks: 4
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: 4, reps: 5-8}
      - {exercise: leg extension, sets: 4, reps: 10-15}
      - {exercise: stiff-leg deadlift, sets: 4, reps: 6-10}
"""

Run = Callable[..., subprocess.CompletedProcess[str]]


@pytest.fixture(scope="module")
def built(scratch: Path, environment: dict[str, str], tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder that holds the source archive, and the wheel that was built from it."""
    folder = tmp_path_factory.mktemp("built")
    words = [sys.executable, "-m", "build", "--outdir", str(folder), str(scratch)]
    done = subprocess.run(words, env=environment, capture_output=True, text=True)
    assert done.returncode == 0, done.stdout + done.stderr
    return folder


@pytest.fixture(scope="module")
def wheel(built: Path) -> Path:
    (found,) = built.glob("spotline-*-py3-none-any.whl")
    return found


@pytest.fixture(scope="module")
def installed(wheel: Path, environment: dict[str, str], tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Where the programs of a fresh environment lie that holds the wheel and what it asks for."""
    folder = tmp_path_factory.mktemp("fresh") / "venv"
    subprocess.run([sys.executable, "-m", "venv", str(folder)], env=environment, check=True)
    programs = folder / "bin"
    words = [str(programs / "python"), "-m", "pip", "install", "--quiet", str(wheel)]
    subprocess.run(words, env=environment, check=True)
    return programs


@pytest.fixture
def run(installed: Path, environment: dict[str, str], tmp_path: Path) -> Run:
    """Runs a program of the fresh environment in an empty folder, away from the checkout."""

    def run(program: str, *words: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [str(installed / program), *words], cwd=tmp_path, env=environment, capture_output=True, text=True
        )

    return run


def shipped(names: list[str]) -> set[str]:
    """Which files of the work tree belong into the wheel: all code and schemas but for tests and extensions."""
    apart = ("tests/", ".", "lint/editor/vscode/")
    inside = [PurePosixPath(name) for name in names if not name.startswith(apart)]
    return {
        str(path)
        for path in inside
        if path.suffix in (".py", ".json") or path.name in ("py.typed", "pages.md")
    }


def test_every_folder_of_code_is_on_the_list_of_packages(work_tree: list[str]) -> None:
    settings = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    folders = {PurePosixPath(name).parent for name in shipped(work_tree) if name.endswith(".py")}
    assert set(settings["tool"]["setuptools"]["packages"]) == {
        ".".join(("spotline", *folder.parts)) for folder in folders
    }


def test_the_wheel_holds_all_code_and_schemas_and_nothing_else(wheel: Path, work_tree: list[str]) -> None:
    with zipfile.ZipFile(wheel) as archive:
        files = {name for name in archive.namelist() if ".dist-info/" not in name}
    assert files == {f"spotline/{name}" for name in shipped(work_tree)}


def test_the_source_archive_holds_what_the_wheel_is_made_of(built: Path, work_tree: list[str]) -> None:
    (found,) = built.glob("spotline-*.tar.gz")
    with tarfile.open(found) as archive:
        files = {name.partition("/")[2] for name in archive.getnames()}
    assert shipped(work_tree) | {"pyproject.toml", "README.md", "LICENSE"} <= files


def test_the_wheel_reviews_without_the_data_that_the_catalogue_is_built_from(
    run: Run, installed: Path, tmp_path: Path
) -> None:
    (tmp_path / "legs.programme.yaml").write_text(UNBALANCED, encoding="utf-8")
    where = run("python", "-c", "import spotline; print(spotline.__path__[0])").stdout.strip()
    assert Path(where).is_relative_to(installed.parent)
    assert not os.path.exists(os.path.join(where, "lint", "body", "data"))
    done = run("spotline", "review", "--as", "lines", "legs.programme.yaml")
    assert done.returncode == 1, done.stderr
    assert "legs.programme.yaml:13:20: warning: knee-flexion-missing: " in done.stdout


def test_the_wheel_explains_what_its_schema_rejects(run: Run, tmp_path: Path) -> None:
    text = UNBALANCED.replace("focus:", "focsu:")
    (tmp_path / "legs.programme.yaml").write_text(text, encoding="utf-8")
    done = run("spotline", "review", "--as", "json")
    assert done.returncode == 1, done.stderr
    json.loads(done.stdout)
    assert "focsu" in done.stdout


def test_the_wheel_says_what_the_editor_needs_besides(run: Run) -> None:
    done = run("spotline", "editor", "--stdio")
    assert (done.returncode, done.stdout, done.stderr.count("\n")) == (2, "", 1)
    assert done.stderr.endswith('pip install "spotline[editor]"\n')


def test_the_wheel_prints_its_schemas(run: Run) -> None:
    for name in ("programme", "athlete", "team", "review"):
        schema = json.loads(run("spotline", "schema", name).stdout)
        assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"


def test_the_package_runs_as_a_module(run: Run) -> None:
    as_program, as_module = run("spotline", "--version"), run("python", "-m", "spotline", "--version")
    assert as_module.returncode == as_program.returncode == 0
    assert as_module.stdout == as_program.stdout != ""
