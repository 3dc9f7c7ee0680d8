"""Several processes: the same bytes as one, and what happens when one of them is lost or nobody waits."""

from __future__ import annotations

import os
import random
import subprocess
import sys
from collections.abc import Iterable
from pathlib import Path
from typing import Any

import pytest

from spotline.lint.cli import reviewing, workers
from spotline.lint.cli.main import main
from spotline.lint.reporters import REVIEW
from spotline.lint.text.repository import SourceFile

PLAN = """\
programme: Made to be many
athlete: ATHLETE
starts: 2026-01-05
weeks: 4
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: SETS, reps: 5}
      - {exercise: FIRST, sets: 3, reps: REPS}
  - session: Upper
    day: thursday
    exercises:
      - {exercise: bench press, sets: 4, reps: 8-12}
"""


@pytest.fixture
def team(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Many files: sound, wrong, unreadable, on record, under broken settings."""
    chance = random.Random(15)
    (tmp_path / ".git").mkdir()
    for folder in ("people", "plans", "broken"):
        (tmp_path / folder).mkdir()
    (tmp_path / "spotline.yaml").write_text("weekly limits: {quadriceps: 20}\n")
    (tmp_path / "broken/spotline.yaml").write_text("weekly limits: [\n")
    for number in range(30):
        (tmp_path / f"people/p{number}.athlete.yaml").write_text("name: Orla\nlevel: novice\n")
    for number in range(120):
        text = PLAN.replace("ATHLETE", f"../people/p{chance.randrange(30)}.athlete.yaml")
        text = text.replace("SETS", str(chance.choice((3, 3, 5, 40))))
        text = text.replace("FIRST", chance.choice(("leg curl", "stiff-leg deadlift", "leg curll")))
        text = text.replace("REPS", chance.choice(("5-8", "12-8", "'10'")))
        folder = "broken" if number % 40 == 0 else "plans"
        (tmp_path / f"{folder}/w{number:03}.programme.yaml").write_text(text if number % 30 else text[:90])
    monkeypatch.chdir(tmp_path)
    return tmp_path


def told(capfd: pytest.CaptureFixture[str], *words: str) -> tuple[int, str, str]:
    code = main(["review", *words])
    return code, *capfd.readouterr()


@pytest.mark.parametrize("form", REVIEW)
def test_the_same_bytes_from_one_process_and_from_several(
    team: Path, capfd: pytest.CaptureFixture[str], form: str
) -> None:
    alone = told(capfd, "--as", form, "--jobs", "1")
    assert alone[0] == 2
    assert told(capfd, "--as", form, "--jobs", "3") == alone


def test_the_same_with_a_record(team: Path, capfd: pytest.CaptureFixture[str]) -> None:
    (team / "broken/spotline.yaml").unlink()
    main(["review", "--record-known", "plans"])
    (team / "plans/w001.programme.yaml").write_text("programme: Empty\nsessions: []\n")
    capfd.readouterr()
    alone = told(capfd, "--as", "json", "--jobs", "1")
    assert "known-finding-gone" in alone[1]
    assert told(capfd, "--as", "json", "--jobs", "2") == alone


def lost(monkeypatch: pytest.MonkeyPatch, name: str, deed: str) -> None:
    """Lets each worker do a deed when it meets a file."""
    hook = (
        "import os, signal; from spotline.lint.project import review as r; before = r._review_file\n"
        f"def meets(workspace, file):\n    if {name!r} in file.name: {deed}\n    return before(workspace, file)\n"
        "r._review_file = meets"
    )
    program = workers.PROGRAM.replace("import serve; serve()", f"import serve; exec({hook!r}); serve()")
    monkeypatch.setattr(workers, "PROGRAM", program.replace("{workspace", "{{workspace"))


@pytest.mark.parametrize(
    ("deed", "how"),
    [
        ("os.kill(os.getpid(), signal.SIGKILL)", "signal 9"),
        ("os._exit(3)", "exit code 3"),
        ("raise MemoryError", "MemoryError"),
    ],
)
def test_the_files_of_a_lost_worker_are_named_and_the_others_reviewed(
    team: Path, capfd: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, deed: str, how: str
) -> None:
    (team / "plans/alone.programme.yaml").write_text(PLAN.replace("athlete: ATHLETE\n", ""))
    alone = told(capfd, "--as", "lines", "--jobs", "1", "plans")
    lost(monkeypatch, "alone", deed)
    code, out, _ = told(capfd, "--as", "lines", "--jobs", "2", "plans")
    assert code == 2
    named = [line for line in out.splitlines() if "rule-failed" in line]
    assert [line.partition(":")[0] for line in named] == ["plans/alone.programme.yaml"]
    assert how in named[0] or how == "MemoryError"
    rest = [line for line in alone[1].splitlines() if "alone" not in line]
    assert [line for line in out.splitlines() if "alone" not in line] == rest


def test_where_no_process_can_be_started_one_does_it_all(
    team: Path, capfd: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    alone = told(capfd, "--as", "lines", "--jobs", "1")
    monkeypatch.setattr(sys, "executable", str(team / "no such python"))
    assert told(capfd, "--as", "lines", "--jobs", "2") == alone


def test_few_files_start_no_process(team: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    asked: list[int] = []
    monkeypatch.setattr(workers, "review_by_workers", lambda run, groups, number: asked.append(number))
    monkeypatch.setattr(os, "cpu_count", lambda: 2)
    main(["review", "--as", "lines", "plans/w001.programme.yaml"])
    assert asked == []
    monkeypatch.setattr(reviewing, "WORTH_WORKERS", 10)
    main(["review", "--as", "lines", "plans"])
    assert asked == [2]


@pytest.mark.parametrize("words", ["0", "-1", "two", "1000", ""])
def test_a_number_that_is_none(capfd: pytest.CaptureFixture[str], words: str) -> None:
    assert main(["review", f"--jobs={words}"]) == 2
    assert "--jobs takes a n" in capfd.readouterr().err


def test_ctrl_c_ends_all_workers(
    team: Path, capfd: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    started: list[subprocess.Popen[bytes]] = []
    take = reviewing.Run.take

    def stopped(run: reviewing.Run, files: list[SourceFile], told: Iterable[Any]) -> None:
        take(run, files, told)
        raise KeyboardInterrupt

    class Seen(subprocess.Popen[bytes]):
        def __init__(self, *words: Any, **options: Any) -> None:
            super().__init__(*words, **options)
            started.append(self)

    monkeypatch.setattr(reviewing.Run, "take", stopped)
    monkeypatch.setattr(workers.subprocess, "Popen", Seen)
    assert told(capfd, "--jobs", "2") == (130, "", "spotline: stopped\n")
    assert started
    assert all(one.wait(60) is not None for one in started)
