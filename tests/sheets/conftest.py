"""A team's folder, in which sheets are asked for as a coach would."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from spotline.lint.sheets.request import sheets
from spotline.lint.sheets.sheet import Sheet, SheetSession


class Folder:
    """A repository, and the command's way to a sheet in it."""

    def __init__(self, path: Path, sheet: Callable[..., list[Sheet]]) -> None:
        self.path = path
        self._sheets = sheet

    def write(self, text: str, name: str = "plan.programme.yaml") -> Path:
        """Writes a file."""
        file = self.path / name
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, encoding="utf-8")
        return file

    def sheet(self, text: str, **asked: object) -> Sheet:
        """The one sheet of a programme's text."""
        (one,) = self._sheets(str(self.write(text)), **asked)
        return one

    def session(self, text: str, **asked: object) -> SheetSession:
        """The first session of the first week."""
        return self.sheet(text, **asked).weeks[0].sessions[0]


@pytest.fixture
def folder(tmp_path: Path, today: object) -> Folder:
    """A repository without files."""
    (tmp_path / ".git").mkdir()
    return Folder(tmp_path, lambda path, **asked: sheets(path, today, **asked))  # type: ignore[arg-type]
