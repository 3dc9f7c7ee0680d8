"""``compare`` and ``tally`` as commands, ``--since`` with git, and the report of a commit that passes."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

PLAN = """\
programme: Base
athlete: ../people/juno.athlete.yaml
starts: 2026-01-05
weeks: 4
focus: [legs]
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: 4, reps: 5, rir: 2, rest: 3 min, warm-up sets: 3}
      - {exercise: Romanian deadlift, sets: 3, reps: 8, rir: 2, rest: 2 min}
      - {exercise: seated leg curl, sets: 3, reps: 10, rir: 2, rest: 2 min}
      - {exercise: standing calf raise, sets: 3, reps: 10, rir: 2, rest: 2 min}
"""
JUNO = "name: Juno\nlevel: intermediate\nprotect: [{movement: jumping, advised by: physiotherapist, review on: 2099-01-01}]\n"
OTHER = PLAN.replace("Base", "Other").replace("juno", "piran")

Done = subprocess.CompletedProcess[str]
Run = Callable[..., Done]


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A repository with a commit."""
    root = tmp_path / "team"
    for name, text in {
        "plans/base.programme.yaml": PLAN,
        "plans/other.programme.yaml": OTHER,
        "people/juno.athlete.yaml": JUNO,
        "people/piran.athlete.yaml": "name: Piran\n",
    }.items():
        path = root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
    git(root, "init", "-q")
    commit(root)
    return root


def git(root: Path, *words: str) -> str:
    who = ["-c", "user.name=A Coach", "-c", "user.email=coach@example.invalid", "-c", "commit.gpgsign=false"]
    done = subprocess.run(["git", *who, *words], cwd=root, capture_output=True, text=True, check=True)
    return done.stdout


def commit(root: Path) -> None:
    git(root, "add", "-A")
    git(root, "commit", "-qm", "as it is")


@pytest.fixture
def run(folder: Path, root: Path) -> Run:
    link = folder.parent / "spotline"
    if not link.exists():
        link.symlink_to(root, target_is_directory=True)

    def command(*words: str, at: str = ".", **settings: str) -> Done:
        environment = {**os.environ, "PYTHONPATH": str(folder.parent), "COLUMNS": "200", **settings}
        return subprocess.run(
            [sys.executable, "-m", "spotline", *words],
            cwd=folder / at,
            env=environment,
            capture_output=True,
            text=True,
        )

    return command


@pytest.fixture(scope="module")
def root() -> Path:
    return Path(__file__).parent.parent.parent


def change(folder: Path, name: str, before: str, after: str) -> None:
    path = folder / name
    text = path.read_text(encoding="utf-8")
    assert before in text
    path.write_text(text.replace(before, after, 1), encoding="utf-8")


def test_since_the_last_commit(folder: Path, run: Run) -> None:
    assert run("compare", "--since", "HEAD").stdout == "Nothing changes in training.\n"
    change(folder, "plans/base.programme.yaml", "monday", "friday")
    before = git(folder, "status", "--porcelain")
    done = run("compare", "--since=HEAD")
    assert done.returncode == 0, done.stderr
    assert "Lower moved from Monday to Friday" in done.stdout
    assert "Juno, weeks 1-4" in done.stdout
    assert "Piran" not in done.stdout
    assert str(folder) not in done.stdout
    assert git(folder, "status", "--porcelain") == before
    assert "Lower moved" in run("compare", "--since", "HEAD", at="people").stdout
    assert run("compare", "--since", "HEAD", "people").stdout == "Nothing changes in training.\n"
    commit(folder)
    assert run("compare", "--since", "HEAD").stdout == "Nothing changes in training.\n"
    assert "Lower moved from Monday to Friday" in run("compare", "--since", "HEAD~1", "--", "plans").stdout


def test_a_renamed_file_is_followed(folder: Path, run: Run) -> None:
    (folder / "plans" / "base.programme.yaml").rename(folder / "plans" / "winter.programme.yaml")
    assert run("compare", "--since", "HEAD").stdout == "Nothing changes in training.\n"
    change(folder, "plans/winter.programme.yaml", "sets: 4", "sets: 6")
    done = run("compare", "--since", "HEAD")
    assert "back squat: sets 4 -> 6" in done.stdout
    assert "new file" not in done.stdout
    assert "winter.programme.yaml" in done.stdout


def test_an_athlete_file_tells_of_the_person(folder: Path, run: Run) -> None:
    change(folder, "people/juno.athlete.yaml", JUNO[JUNO.index("protect") :], "")
    done = run("compare", "--since", "HEAD")
    assert done.stdout.count("no longer protects jumping (advised by physiotherapist)") >= 1
    assert done.returncode == 0


def test_new_and_gone_files(folder: Path, run: Run) -> None:
    (folder / "plans" / "other.programme.yaml").unlink()
    (folder / "plans" / "third.programme.yaml").write_text(
        "programme: Third\nsessions: []\n", encoding="utf-8"
    )
    out = run("compare", "--since", "HEAD").stdout
    assert "file gone" in out
    assert "Other, 4 weeks, for Piran" in out
    assert "new file" in out
    assert "third.programme.yaml: Third, 1 week" in out


def test_what_cannot_be_done(folder: Path, run: Run, tmp_path: Path) -> None:
    for words, said in {
        ("--since", "nothing-of-this-name"): "there is no revision 'nothing-of-this-name'",
        ("--since", "--output=x"): "there is no revision '--output=x'",
        ("--since", "HEAD", "none"): "none",
        ("--since", "HEAD", "plans", str(tmp_path)): "outside",
        ("plans", "none"): "none: it is not there",
        ("plans",): "compare takes two files",
        ("plans", "plans/base.programme.yaml"): "two files or two folders",
    }.items():
        done = run("compare", *words)
        assert done.returncode == 2, (words, done.stdout, done.stderr)
        assert said in done.stderr
        assert "Traceback" not in done.stderr
    change(folder, "plans/base.programme.yaml", "sessions:", "sessions: [")
    done = run("compare", "--since", "HEAD")
    assert done.returncode == 2
    assert "base.programme.yaml (the new side): line" in done.stdout


def test_outside_a_repository(tmp_path: Path, run: Run, folder: Path) -> None:
    outside = tmp_path / "elsewhere"
    outside.mkdir()
    done = run("compare", "--since", "HEAD", at="../elsewhere")
    assert done.returncode == 2
    assert "nothing was compared" in done.stderr


def test_a_link_out_of_the_tree_is_not_followed(folder: Path, run: Run, tmp_path: Path) -> None:
    secret = tmp_path / "secret.yaml"
    secret.write_text("programme: Secret\nsessions: []\n", encoding="utf-8")
    (folder / "plans" / "leak.programme.yaml").symlink_to(secret)
    commit(folder)
    change(folder, "plans/base.programme.yaml", "monday", "friday")
    (folder / "plans" / "leak.programme.yaml").unlink()
    done = run("compare", "--since", "HEAD")
    assert "Secret" not in done.stdout
    assert "Lower moved" in done.stdout


def test_the_repositorys_own_settings_run_nothing(folder: Path, run: Run) -> None:
    mark = folder.parent / "ran"
    script = folder.parent / "script"
    script.write_text(f"#!/bin/sh\ntouch {mark}\n", encoding="utf-8")
    script.chmod(0o755)
    for name in ("core.fsmonitor", "diff.external", "core.pager"):
        git(folder, "config", name, str(script))
    mark.unlink(missing_ok=True)
    change(folder, "plans/base.programme.yaml", "monday", "friday")
    assert "Lower moved" in run("compare", "--since", "HEAD").stdout
    assert not mark.exists()


def test_forms(folder: Path, run: Run) -> None:
    change(folder, "plans/base.programme.yaml", "monday", "friday")
    document = json.loads(run("compare", "--since", "HEAD", "--as", "json").stdout)
    assert document["changed"][0]["athletes"] == "Juno"
    assert run("compare", "--since", "HEAD", "--as", "markdown").stdout.startswith("### What this changes")
    assert run("compare", "--since", "HEAD", "--as", "lines").returncode == 2


def test_a_commit_that_passes_reports_what_it_changes(folder: Path, run: Run) -> None:
    path = "plans/base.programme.yaml"
    change(folder, path, "monday", "friday")
    done = run("review", "--as", "lines", "--report", "--", path)
    assert done.returncode == 0, done.stdout
    said = done.stdout.splitlines()
    assert 1 < len(said) <= 6
    assert "Lower moved from Monday to Friday" in done.stdout
    assert len(run("review", "--as", "lines", "--report").stdout.splitlines()) <= 6
    change(folder, path, "reps: 5", "reps: 200")
    done = run("review", "--as", "lines", "--report", "--", path)
    assert done.returncode == 1
    assert "moved" not in done.stdout


def test_a_report_before_the_first_commit(tmp_path: Path, run: Run, folder: Path) -> None:
    other = folder.parent / "first"
    other.mkdir()
    git(other, "init", "-q")
    (other / "plan.programme.yaml").write_text(
        "programme: First\nfocus: [chest]\nsessions: [{session: A, exercises: [{exercise: box push-up, sets: 3}]}]\n",
        encoding="utf-8",
    )
    done = run("review", "--report", at="../first")
    assert done.returncode == 0
    assert done.stdout == "new file plan.programme.yaml: First, 1 week\n"


def test_tally(folder: Path, run: Run) -> None:
    done = run("tally", "plans/base.programme.yaml")
    assert done.returncode == 0
    assert "Hard sets by muscle group" in done.stdout
    assert "\x1b" not in done.stdout
    assert run("tally", "--by", "lift", "--as=csv", "plans").stdout.startswith("file,programme,athlete,weeks")
    for words in (["--week", "0"], ["--week", "x"], ["--by", "colour"], ["--as", "lines"]):
        done = run("tally", *words)
        assert done.returncode == 2
        assert "usage" in done.stderr
    done = run("tally", "--week", "9", "plans")
    assert done.returncode == 2
    assert "there is no week 9" in done.stderr
    assert run("tally", "people/juno.athlete.yaml").returncode == 0
    assert run("tally", "none").returncode == 2
