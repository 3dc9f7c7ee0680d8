"""Compares two versions of texts, each in a folder of its own."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from itertools import count
from pathlib import Path

import pytest

from spotline.lint.reporters.changes_text import summary
from spotline.lint.weighing.comparison import Comparison
from spotline.lint.weighing.sides import compare_paths

Files = dict[str, str]


@pytest.fixture(scope="session")
def compared(tmp_path_factory: pytest.TempPathFactory, today: date) -> Callable[..., Comparison]:
    """Compares two programmes, or two sets of files by name."""
    base = tmp_path_factory.mktemp("compared")
    numbers = count()

    def run(old: str | Files, new: str | Files) -> Comparison:
        folder = base / str(next(numbers))
        sides = []
        for name, files in (("old", old), ("new", new)):
            texts = {"plan.programme.yaml": files} if isinstance(files, str) else files
            (folder / name / ".git").mkdir(parents=True)
            for path, text in texts.items():
                to = folder / name / path
                to.parent.mkdir(parents=True, exist_ok=True)
                to.write_text(text, encoding="utf-8")
            sides.append(str(folder / name))
        return compare_paths(sides[0], sides[1], today)

    return run


@pytest.fixture(scope="session")
def first_lines() -> Callable[[Comparison], list[str]]:
    """The first five lines that a comparison says, wherever they are wrapped."""

    def lines(result: Comparison) -> list[str]:
        return list(summary(result, 400, most=4))[:5]

    return lines


def edited(text: str, *replaced: tuple[str, str]) -> str:
    """A text with one edit after the other; each must find its words."""
    for before, after in replaced:
        assert before in text, before
        text = text.replace(before, after, 1)
    return text


@pytest.fixture(scope="session")
def files(root: Path) -> Callable[..., Files]:
    """A programme of the examples with its athlete, by their names."""

    def of(programme: str, athlete: str) -> Files:
        return {
            name: (root / "examples" / name).read_text(encoding="utf-8")
            for name in (f"programmes/{programme}.programme.yaml", f"athletes/{athlete}.athlete.yaml")
        }

    return of


@pytest.fixture(scope="session")
def root() -> Path:
    """The folder of the repository."""
    return Path(__file__).parent.parent.parent
