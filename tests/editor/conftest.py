"""What tests of the editor's features share: a document as a feature sees it."""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable
from datetime import date
from itertools import count
from pathlib import Path

import pytest

from spotline.lint.desk import Desk
from spotline.lint.editor.view import View
from spotline.lint.places import Text
from spotline.lint.review import FileReview, review_on


def _reviewed(desk: Desk, path: str) -> FileReview:
    real = os.path.realpath(path)
    return next(one for one in review_on(desk, [path]).files if os.path.realpath(one.name) == real)


def view_on(desk: Desk, path: str, now: str | None = None) -> View:
    """A file as a feature sees it; with ``now``, after that text was typed over it."""
    first = _reviewed(desk, path)
    if now is None:
        text = first.reading.text if first.reading else Text(path, Path(path).read_text(encoding="utf-8"))
        return View(text, path, first, first if first.ledgers else None, desk)
    desk.shelf.open(path, now)
    second = _reviewed(desk, path)
    good = second if second.ledgers else first if first.ledgers else None
    return View(Text(path, now), path, second, good, desk)


@pytest.fixture(scope="session")
def opened(tmp_path_factory: pytest.TempPathFactory, today: date) -> Callable[..., View]:
    """Opens a text in a repository of its own, with files beside it; ``now`` is typed over it afterwards."""
    base = tmp_path_factory.mktemp("opened")
    numbers = count()

    def run(
        text: str,
        files: dict[str, str] | None = None,
        *,
        name: str = "plan.programme.yaml",
        now: str | None = None,
    ) -> View:
        folder = base / str(next(numbers))
        (folder / ".git").mkdir(parents=True)
        for path, content in {name: text, **(files or {})}.items():
            (folder / path).write_text(content, encoding="utf-8")
        return view_on(Desk(today), str(folder / name), now)

    return run


@pytest.fixture(scope="session")
def example(root: Path, today: date, tmp_path_factory: pytest.TempPathFactory) -> Callable[..., View]:
    """One of the example files, by the end of its path; ``now`` is typed over it."""
    folder = tmp_path_factory.mktemp("examples")
    shutil.copytree(root / "examples", folder, dirs_exist_ok=True)
    (folder / ".git").mkdir()
    files = sorted(folder.rglob("*.yaml"))

    def run(name: str, now: str | None = None) -> View:
        path = next(path for path in files if path.as_posix().endswith(name))
        return view_on(Desk(today), str(path), now)

    return run
