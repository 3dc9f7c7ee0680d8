"""What tests of the editor's features share: a document as a feature sees it."""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable
from datetime import date
from itertools import count
from pathlib import Path

import pytest

from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.engine.registry import all_rules
from spotline.lint.project.results import FileReview
from spotline.lint.project.review import review_on
from spotline.lint.project.workspace import Workspace
from spotline.lint.text.places import Text

LOOKED_UP = ("load-not-settable", "weekly-sets-over-limit", "weekly-sets-under-floor")


def _reviewed(workspace: Workspace, path: str) -> FileReview:
    real = os.path.realpath(path)
    return next(one for one in review_on(workspace, [path]).files if os.path.realpath(one.name) == real)


def _snapshot(workspace: Workspace, path: str, now: str | None, first: FileReview | None = None) -> Snapshot:
    """A file as a feature sees it; with ``now``, after that text was typed over it."""
    first = first or _reviewed(workspace, path)
    if now is None:
        text = first.reading.text if first.reading else Text(path, Path(path).read_text(encoding="utf-8"))
        return Snapshot(text, path, first, first if first.ledgers else None, workspace)
    workspace.overlay.open(path, now)
    workspace = Workspace(workspace.today, workspace.rules, workspace.overlay)
    second = _reviewed(workspace, path)
    good = second if second.ledgers else first if first.ledgers else None
    text = second.reading.text if second.reading else Text(path, now)
    return Snapshot(text, path, second, good, workspace)


@pytest.fixture(scope="session")
def opened(tmp_path_factory: pytest.TempPathFactory, today: date) -> Callable[..., Snapshot]:
    """Opens a text in a repository of its own, with files beside it; ``now`` is typed over it afterwards."""
    base = tmp_path_factory.mktemp("opened")
    numbers = count()

    def run(
        text: str,
        files: dict[str, str] | None = None,
        *,
        name: str = "plan.programme.yaml",
        now: str | None = None,
    ) -> Snapshot:
        folder = base / str(next(numbers))
        (folder / ".git").mkdir(parents=True)
        for path, content in {name: text, **(files or {})}.items():
            (folder / path).write_text(content, encoding="utf-8")
        return _snapshot(Workspace(today), str(folder / name), now)

    return run


@pytest.fixture(scope="session")
def example(root: Path, today: date, tmp_path_factory: pytest.TempPathFactory) -> Callable[..., Snapshot]:
    """One of the example files, by the end of its path; ``now`` is typed over it.

    Only rules whose limits the features look up are run, so that many texts can be tried.
    """
    folder = tmp_path_factory.mktemp("examples")
    shutil.copytree(root / "examples", folder, dirs_exist_ok=True)
    (folder / ".git").mkdir()
    files = sorted(folder.rglob("*.yaml"))

    rules = [rule for rule in all_rules() if rule.name in LOOKED_UP]
    read: dict[Path, FileReview] = {}

    def run(name: str, now: str | None = None) -> Snapshot:
        path = next(path for path in files if path.as_posix().endswith(name))
        workspace = Workspace(today, rules)
        if path not in read:
            read[path] = _reviewed(workspace, str(path))
        return _snapshot(workspace, str(path), now, read[path])

    return run
