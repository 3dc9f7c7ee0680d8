"""Files that are open and not on the disk yet, or no longer: they count as if they had been saved."""

from __future__ import annotations

import os
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.desk import Desk
from spotline.lint.review import review, review_on

FILES = {
    "plan.programme.yaml": """\
programme: Boathouse
athlete: ana.athlete.yaml
focus: [hamstrings]
sessions:
  - session: One
    exercises:
      - {exercise: boathouse hinge, sets: 9, reps: 8, rir: 2}
""",
    "ana.athlete.yaml": "name: Ana\n",
    "spotline.yaml": "exercises: [club.exercises.yaml]\nweekly limits: {hamstrings: 4}\n",
    "club.exercises.yaml": """\
exercises:
  - name: boathouse hinge
    implement: sandbag
    path: {hip: [90, 0], knee: 15, ankle: 0}
""",
}


def rules(desk: Desk, plan: str) -> list[str]:
    (one,) = review_on(desk, [plan]).files
    return [finding.rule for finding in one.findings]


@pytest.mark.parametrize("unsaved", [*([name] for name in FILES), list(FILES)])
def test_a_file_that_is_only_open_counts(tmp_path: Path, today: date, unsaved: list[str]) -> None:
    (tmp_path / ".git").mkdir()
    plan = str(tmp_path / "plan.programme.yaml")
    for name, text in FILES.items():
        (tmp_path / name).write_text(text, encoding="utf-8")
    (saved,) = review([plan], today).files
    wanted = [finding.rule for finding in saved.findings]
    assert "weekly-sets-over-limit" in wanted
    assert "exercise-unknown" not in wanted

    desk = Desk(today)
    for name in unsaved:
        os.unlink(tmp_path / name)
        desk.shelf.open(str(tmp_path / name), FILES[name])
    assert rules(desk, plan) == wanted


def test_a_missing_exercises_file_is_looked_for_again(tmp_path: Path, today: date) -> None:
    (tmp_path / ".git").mkdir()
    own = "club.exercises.yaml"
    for name in FILES.keys() - {own}:
        (tmp_path / name).write_text(FILES[name], encoding="utf-8")
    desk = Desk(today)
    review_on(desk, [str(tmp_path / "plan.programme.yaml")])
    assert not desk.stale()
    (tmp_path / own).write_text(FILES[own], encoding="utf-8")
    assert desk.stale()
