"""Files are found and named once: how often a review asks the system for the real path of a file or folder."""

from __future__ import annotations

import os
from collections import Counter
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.mending.record import record_known
from spotline.lint.project.review import review

DAY = date(2026, 1, 5)

PLAN = """\
programme: Test
athletes: [../athletes/mara.athlete.yaml, ../athletes/kim.athlete.yaml]
sessions:
  - session: A
    exercises: [{exercise: dock squat, sets: 30, reps: 5}, {exercise: plank, sets: 3}]
"""
EXERCISES = (
    "exercises:\n  - {name: dock squat, actions: [knee extension], implement: barbell, kind: strength}\n"
)
FILES = {
    "spotline.yaml": "exercises: [shared/own.exercises.yaml]\nleave out: [plans/drafts]\n",
    "shared/own.exercises.yaml": EXERCISES,
    "plans/a.programme.yaml": PLAN,
    "plans/b.programme.yaml": PLAN,
    "plans/deep/c.programme.yaml": PLAN.replace("../", "../../"),
    "plans/deep/spotline.yaml": "rules: {exercise-unknown: skip}\n",
    "plans/drafts/d.programme.yaml": PLAN.replace("../", "../../"),
    "athletes/mara.athlete.yaml": "name: Mara\n",
    "athletes/kim.athlete.yaml": "name: Kim\n",
}


@pytest.fixture
def team(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A repository with programmes, athletes, settings and known findings, and the working folder in it."""
    root = Path(os.path.realpath(tmp_path)) / "team"
    for name, text in FILES.items():
        (root / name).parent.mkdir(parents=True, exist_ok=True)
        (root / name).write_text(text, encoding="utf-8")
    (root / ".git").mkdir()
    (root / "plans" / "link.programme.yaml").symlink_to("deep/c.programme.yaml")
    monkeypatch.chdir(root)
    record_known(["plans/a.programme.yaml"], DAY)
    return root


@pytest.fixture
def resolved(team: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[[list[str]], Counter[str]]:
    """Reviews paths and counts how often each path was resolved, by what it really is."""
    real = os.path.realpath

    def run(paths: list[str]) -> Counter[str]:
        asked: Counter[str] = Counter()

        def realpath(path: str) -> str:
            found = real(path)
            asked[found] += 1
            return found

        monkeypatch.setattr(os.path, "realpath", realpath)
        result = review(paths, DAY)
        monkeypatch.setattr(os.path, "realpath", real)
        assert not any(one.faults for one in result.files)
        assert len(result.files) > 2
        return asked

    return run


Resolved = Callable[[list[str]], Counter[str]]


@pytest.mark.parametrize(
    "paths",
    [["."], ["plans"], ["plans/a.programme.yaml", "plans/b.programme.yaml", "athletes/mara.athlete.yaml"]],
)
def test_each_file_and_folder_is_resolved_once_at_most(resolved: Resolved, paths: list[str]) -> None:
    asked = resolved(paths)
    assert asked
    assert {path: times for path, times in asked.items() if times > 1} == {}


def test_what_a_search_finds_is_not_resolved_at_all_but_for_links(resolved: Resolved, team: Path) -> None:
    asked = resolved(["."])
    plans = [path for path in asked if path.endswith(".programme.yaml")]
    assert plans == [str(team / "plans" / "deep" / "c.programme.yaml")]


def test_without_a_mark_the_working_folder_is_resolved_once(resolved: Resolved, team: Path) -> None:
    (team / ".git").rmdir()
    for settings in team.rglob("spotline.yaml"):
        settings.unlink()
    asked = resolved(["."])
    assert asked[str(team)] == 1
    assert max(asked.values()) == 1
