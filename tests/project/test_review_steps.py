"""What a review takes, in steps: a rule or a reader that grows costly is seen here, on every machine alike."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from spotline.lint.project.review import review
from spotline.tests.benchmark_corpus import programme
from spotline.tests.steps import steps

DAY = date(2026, 1, 5)


def taken(tmp_path: Path, lines: int, seed: int) -> int:
    """The steps of the review of a programme of so many lines, once all code is loaded."""
    path = tmp_path / f"made-{lines}-{seed}.programme.yaml"
    path.write_text(programme(lines, seed), encoding="utf-8")
    return steps(lambda: review([str(path)], DAY))


@pytest.mark.parametrize(("lines", "seed", "most"), [(60, 0, 670), (400, 0, 500), (400, 3, 515)])
def test_a_line_takes_few_steps(lines: int, seed: int, most: int, tmp_path: Path) -> None:
    assert taken(tmp_path, lines, seed) / lines < most


def test_long_programmes_take_no_more_a_line(tmp_path: Path) -> None:
    assert taken(tmp_path, 1600, 0) < 4 * taken(tmp_path, 400, 0)
