"""Files that are open and not on the disk yet, or no longer: they count as if they had been saved."""

from __future__ import annotations

import os
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.editor.documents.open_documents import OpenDocuments
from spotline.lint.project.review import review, review_on
from spotline.lint.project.workspace import Workspace

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


def rules(workspace: Workspace, plan: str) -> list[str]:
    (one,) = review_on(workspace, [plan]).files
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

    workspace = Workspace(today)
    for name in unsaved:
        os.unlink(tmp_path / name)
        workspace.overlay.open(str(tmp_path / name), FILES[name])
    assert rules(workspace, plan) == wanted


def test_a_missing_exercises_file_is_looked_for_again(tmp_path: Path, today: date) -> None:
    (tmp_path / ".git").mkdir()
    own = "club.exercises.yaml"
    for name in FILES.keys() - {own}:
        (tmp_path / name).write_text(FILES[name], encoding="utf-8")
    workspace = Workspace(today)
    review_on(workspace, [str(tmp_path / "plan.programme.yaml")])
    assert not workspace.stale()
    (tmp_path / own).write_text(FILES[own], encoding="utf-8")
    assert workspace.stale()


OTHER = FILES["plan.programme.yaml"].replace("Boathouse", "At home")


@pytest.mark.parametrize(
    ("name", "unsaved"),
    [
        ("spotline.yaml", "weekly limits: {chest: 4}\n"),
        ("club.exercises.yaml", "exercises: []\n"),
        ("ana.athlete.yaml", "name: [\n"),
        ("ana.athlete.yaml", "name: Ana\nprotect: [{movement: hip hinge, advised by: physician}]\n"),
        ("other.programme.yaml", "programme: [\n"),
        ("other.programme.yaml", OTHER.replace("ana", "bo")),
    ],
)
def test_what_was_not_saved_no_longer_counts_once_it_is_closed(
    tmp_path: Path, name: str, unsaved: str
) -> None:
    (tmp_path / ".git").mkdir()
    starts = "starts: 2026-01-05\n"
    earlier = "starts: 2026-01-01\n"
    saved = {**FILES, "other.programme.yaml": OTHER + earlier, "bo.athlete.yaml": "name: Bo\n"}
    saved["plan.programme.yaml"] += starts
    for one, text in saved.items():
        (tmp_path / one).write_text(text, encoding="utf-8")
    log: list[str] = []
    documents = OpenDocuments(log.append)

    def published() -> list[str]:
        """The rules of the findings that the client has last got."""
        while unpublished := documents.unpublished():
            documents.refresh(unpublished[0])
            unpublished[0].published = True
        snapshot = documents.by_uri[uri].snapshot
        assert snapshot is not None
        return [finding.rule for finding in snapshot.review.findings]

    uri = (tmp_path / "plan.programme.yaml").as_uri()
    documents.open(uri, 1, saved["plan.programme.yaml"])
    wanted = published()
    documents.open((tmp_path / name).as_uri(), 1, unsaved)
    assert published() != wanted
    documents.close((tmp_path / name).as_uri())
    assert published() == wanted
    assert log == []
