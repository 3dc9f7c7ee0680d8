"""What the benchmarks measure is the same each time, and what it is called."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from spotline.lint.project.review import review
from spotline.lint.schemas.fast_check import fits
from spotline.lint.syntax.builder import parse
from spotline.tests.benchmark_corpus import faulty, programme, write
from spotline.tests.benchmark_tools import PACKAGES, outside
from spotline.tests.same_bytes import corpus, told

LINES = (60, 400, 3000)


@pytest.mark.parametrize("lines", LINES)
@pytest.mark.parametrize("seed", [0, 1, 7])
def test_a_programme_is_sound_and_as_long_as_asked_for(lines: int, seed: int) -> None:
    text = programme(lines, seed)
    assert text == programme(lines, seed)
    assert lines - 12 <= text.count("\n") <= lines
    root = parse("made", text).root
    assert root is not None
    assert fits("programme")(root.plain)


def test_seeds_make_different_texts() -> None:
    assert len({programme(60, seed).partition("\n")[2] for seed in range(40)}) > 30


def test_a_fault_is_one_finding_of_the_schema(tmp_path: Path) -> None:
    (tmp_path / ".git").mkdir()
    path = tmp_path / "wrong.programme.yaml"
    path.write_text(faulty(programme(60)), encoding="utf-8")
    (one,) = review([str(path)], date(2026, 1, 5)).files
    assert [finding.rule for finding in one.findings if finding.severity == "error"] == ["value-unreadable"]


def test_many_files_are_written(tmp_path: Path) -> None:
    assert len({path.read_text(encoding="utf-8") for path in write(tmp_path, 120, 60)}) == 120


def test_it_says_which_tools_it_lacks(tmp_path: Path) -> None:
    """Where no environment can be made, because a file stands in the way."""
    in_the_way = tmp_path / "tools"
    in_the_way.write_text("")
    programs, lacking = outside(in_the_way)
    assert programs == {}
    assert [sentence.partition(":")[0] for sentence in lacking] == list(PACKAGES)


def test_all_examples_and_published_programmes_give_the_same_bytes(tmp_path: Path) -> None:
    folder = tmp_path / "team"
    assert corpus(folder, 20) > 60
    alone = told(folder, "lines", 1)
    assert alone[1]
    assert told(folder, "lines", 2) == alone
