"""What changed since the last commit, beside the text: a page, and a lens on each session that changed."""

from __future__ import annotations

import subprocess
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.editor.features import changes
from spotline.lint.editor.features.changes import Past, change_lenses, changes_page
from spotline.lint.project.review import review_on
from spotline.lint.project.workspace import Workspace
from spotline.lint.text.places import Text

PLAN = """\
programme: Base
athlete: {name: Juno}
weeks: 4
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: 4, reps: 5}
      - {exercise: seated leg curl, sets: 3, reps: 10}
  - session: Upper
    day: thursday
    exercises:
      - {exercise: bench press, sets: 4, reps: 6}
"""

Type = Callable[[str], Snapshot]


def git(folder: Path, *words: str) -> None:
    who = ["-c", "user.name=A Coach", "-c", "user.email=coach@example.invalid", "-c", "commit.gpgsign=false"]
    subprocess.run(["git", *who, *words], cwd=folder, check=True, capture_output=True)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / "plan.programme.yaml").write_text(PLAN, encoding="utf-8")
    (tmp_path / "spotline.yaml").write_text("weekly limits: {chest: 16}\n", encoding="utf-8")
    git(tmp_path, "init", "-q")
    git(tmp_path, "add", "-A")
    git(tmp_path, "commit", "-qm", "as it is")
    return tmp_path


def snapshot(folder: Path, text: str, name: str = "plan.programme.yaml") -> Snapshot:
    """The file as the editor sees it with a text typed over it."""
    workspace = Workspace(date(2026, 1, 5))
    path = str(folder / name)
    workspace.overlay.open(path, text)
    one = next(one for one in review_on(workspace, [path]).files if one.name == path)
    content = one.reading.text if one.reading else Text(path, text)
    return Snapshot(content, path, one, one if one.ledgers else None, workspace)


def titles(seen: Snapshot, known: dict[str, Past]) -> list[tuple[str, str, int | None]]:
    text = seen.text.content
    return [(text[one.start : one.end], one.title, one.week) for one in change_lenses(seen, known)]


def test_a_lens_on_the_session_that_changed(folder: Path) -> None:
    known: dict[str, Past] = {}
    assert titles(snapshot(folder, PLAN), known) == []
    edited = PLAN.replace("sets: 4, reps: 5", "sets: 6, reps: 5")
    assert titles(snapshot(folder, edited), known) == [
        (
            "Lower",
            "since the last commit: Monday 8 min longer: 14-32 min -> 19-47 min; back squat: sets 4 -> 6",
            None,
        )
    ] or titles(snapshot(folder, edited), known)[0][1].endswith("back squat: sets 4 -> 6")
    moved = PLAN.replace("thursday", "friday")
    assert titles(snapshot(folder, moved), known) == [
        ("Upper", "since the last commit: moved from Thursday to Friday", None)
    ]


def test_the_page(folder: Path) -> None:
    known: dict[str, Past] = {}
    assert changes_page(snapshot(folder, PLAN + "# a comment\n"), known) == "Nothing changes in training."
    page = changes_page(snapshot(folder, PLAN.replace("thursday", "friday")), known)
    assert page.startswith("### What this changes in training")
    assert "Upper moved from Thursday to Friday" in page
    settings = snapshot(folder, "weekly limits: {chest: 10}\n", "spotline.yaml")
    assert "weekly limits, chest: 16 -&gt; 10" in changes_page(settings, known)


def test_git_is_asked_once_a_commit(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    known: dict[str, Past] = {}
    edited = PLAN.replace("thursday", "friday")
    assert titles(snapshot(folder, edited), known)
    asked = changes.Repository

    def never(at: str) -> None:
        raise AssertionError("git was asked again")

    monkeypatch.setattr(changes, "Repository", never)
    assert titles(snapshot(folder, edited), known)
    monkeypatch.setattr(changes, "Repository", asked)
    (folder / "plan.programme.yaml").write_text(edited, encoding="utf-8")
    git(folder, "commit", "-qam", "moved")
    assert titles(snapshot(folder, edited), known) == []


def test_where_there_is_nothing_to_compare_with(
    folder: Path, tmp_path_factory: pytest.TempPathFactory
) -> None:
    new = folder / "new.programme.yaml"
    new.write_text(PLAN, encoding="utf-8")
    assert titles(snapshot(folder, PLAN, "new.programme.yaml"), {}) == []
    assert "does not hold this file" in changes_page(snapshot(folder, PLAN, "new.programme.yaml"), {})
    bare = tmp_path_factory.mktemp("bare")
    (bare / ".git").mkdir()
    (bare / "plan.programme.yaml").write_text(PLAN, encoding="utf-8")
    assert titles(snapshot(bare, PLAN), {}) == []
    assert "no git repository" in changes_page(snapshot(bare, PLAN), {})
    assert titles(snapshot(folder, "programme: [\n"), {}) == []
    assert "cannot be compared" in changes_page(snapshot(folder, "programme: [\n"), {})
