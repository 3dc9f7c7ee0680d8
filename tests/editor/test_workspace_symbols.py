"""Names found across the files of a folder."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from spotline.lint.editor.features.workspace_symbols import MOST_SYMBOLS, workspace_symbols
from spotline.lint.project.workspace import Workspace


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / ".git").mkdir()
    (tmp_path / "squad").mkdir()
    (tmp_path / "a.programme.yaml").write_text(
        "programme: Winter\nathlete: squad/ana.athlete.yaml\nblocks:\n  - name: Base\n    weeks: 2\n    sessions:\n"
        "      - session: Lower\n        exercises:\n          - {exercise: back squat, sets: 3, reps: 5}\n"
        "          - {exercise: back squat, sets: 2, reps: 8}\n",
        encoding="utf-8",
    )
    (tmp_path / "b.programme.yaml").write_text("programme: [\n", encoding="utf-8")
    (tmp_path / "squad" / "ana.athlete.yaml").write_text("name: Ana\n", encoding="utf-8")
    (tmp_path / "own.exercises.yaml").write_text(
        "exercises:\n  - {name: towline row, implement: cable, actions: [shoulder extension]}\n",
        encoding="utf-8",
    )
    (tmp_path / "other.yaml").write_text("session: Lower\n", encoding="utf-8")
    return tmp_path


def found(folder: Path, query: str, today: date) -> list[tuple[str, str, str]]:
    symbols = workspace_symbols(Workspace(today), str(folder), query)
    assert all(one.text.content[one.start : one.end] == one.name for one in symbols)
    return [(one.name, one.kind, one.container) for one in symbols]


def test_names_of_all_files(folder: Path, today: date) -> None:
    assert found(folder, "LOW", today) == [("Lower", "session", "a.programme.yaml")]
    assert found(folder, "squat back", today) == [("back squat", "prescription", "Lower, a.programme.yaml")]
    assert found(folder, "row", today) == [("towline row", "prescription", "own.exercises.yaml")]
    assert found(folder, "base", today) == [("Base", "block", "a.programme.yaml")]
    assert found(folder, "nothing", today) == []


def test_without_a_word_programmes_and_athletes(folder: Path, today: date) -> None:
    assert {name for name, _, _ in found(folder, "", today)} == {"Winter", "Ana"}


def test_no_more_than_can_be_read(folder: Path, today: date) -> None:
    lines = "".join(
        f"  - {{session: S{at}, exercises: [{{exercise: plank, sets: 3}}]}}\n" for at in range(300)
    )
    (folder / "c.programme.yaml").write_text(f"programme: Many\nsessions:\n{lines}", encoding="utf-8")
    assert len(found(folder, "s", today)) == MOST_SYMBOLS
