"""The command that makes sheets: exit codes, what it says, and where files go."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from spotline.lint.cli.main import main

PLAN = """\
programme: Plan
athlete: {name: Bo}
weeks: 2
sessions: [{session: A, exercises: [{exercise: push-up, sets: 3, reps: 8}]}]
"""
SQUAD = PLAN.replace("athlete: {name: Bo}", "athletes: [{name: Bo}, {name: Cas}]")


@pytest.fixture
def plan(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    (tmp_path / ".git").mkdir()
    monkeypatch.chdir(tmp_path)
    path = tmp_path / "plan.programme.yaml"
    path.write_text(PLAN, encoding="utf-8")
    return path


def files() -> set[str]:
    return {name for name in os.listdir() if ".sheet." in name}


@pytest.mark.parametrize(
    ("words", "ending"), [([], "html"), (["--as", "markdown"], "md"), (["--as=csv"], "csv")]
)
def test_a_sheet_lies_beside_its_programme(
    plan: Path, words: list[str], ending: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["sheet", *words, plan.name]) == 0
    assert files() == {f"plan.sheet.{ending}"}
    assert capsys.readouterr() == (f"Written: plan.sheet.{ending} (Bo: 2 sessions)\n", "")
    assert main(["sheet", *words, plan.name]) == 0, "its own earlier sheet is written over"


def test_a_week_and_a_place_of_ones_own(plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sheet", "--week", "2", plan.name]) == 0
    assert files() == {"plan-week-2.sheet.html"}
    assert main(["sheet", "--week=1", "--to", "-", "--as", "markdown", plan.name]) == 0
    assert "## Week 1 of 2" in capsys.readouterr().out
    assert main(["sheet", "--to", "mine.html", plan.name]) == 0
    assert Path("mine.html").is_file()


def test_each_athlete_gets_a_file(plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    plan.write_text(SQUAD, encoding="utf-8")
    assert main(["sheet", plan.name]) == 0
    assert files() == {"plan-bo.sheet.html", "plan-cas.sheet.html"}
    assert main(["sheet", "--to", "one.html", plan.name]) == 2
    assert "name one of Bo and Cas with --athlete" in capsys.readouterr().err
    assert not Path("one.html").exists()
    assert main(["sheet", "--to", "one.html", "--athlete", "cas", plan.name]) == 0


def test_nothing_is_lost(plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    Path("plan.sheet.html").write_text("my own", encoding="utf-8")
    assert main(["sheet", plan.name]) == 2
    assert "plan.sheet.html was not written: there is a file already" in capsys.readouterr().err
    assert Path("plan.sheet.html").read_text(encoding="utf-8") == "my own"
    assert main(["sheet", "--overwrite", plan.name]) == 0
    assert "my own" not in Path("plan.sheet.html").read_text(encoding="utf-8")


def test_one_that_stands_in_the_way_leaves_the_others(plan: Path) -> None:
    plan.write_text(SQUAD, encoding="utf-8")
    Path("plan-bo.sheet.html").write_text("my own", encoding="utf-8")
    assert main(["sheet", plan.name]) == 2
    assert files() == {"plan-bo.sheet.html", "plan-cas.sheet.html"}
    assert Path("plan-bo.sheet.html").read_text(encoding="utf-8") == "my own"


def test_errors_are_told_and_nothing_is_written(plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    plan.write_text(PLAN.replace("reps: 8", "reps: 8, rir: 2, rpe: 10, tempo: X"), encoding="utf-8")
    assert main(["sheet", plan.name]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert "plan.programme.yaml:4:" in err
    assert "rir-rpe-contradict" in err
    assert err.splitlines()[-1] == "spotline: no sheet was made: mend the errors first"
    assert files() == set()


@pytest.mark.parametrize(
    ("words", "reason"),
    [
        ([], "sheet takes one programme: name its file"),
        (["a", "b"], "sheet takes one programme: name its file"),
        (["--week", "x", "a"], "--week takes the number of a week"),
        (["--week", "0", "a"], "--week takes the number of a week"),
        (["--as", "poem", "a"], "--as takes one of html, markdown, csv"),
        (["--athlete", "", "a"], "--athlete takes a name"),
    ],
)
def test_words_that_cannot_be_followed(
    plan: Path, words: list[str], reason: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["sheet", *words]) == 2
    assert capsys.readouterr().err.splitlines()[0] == f"spotline: {reason}"


def test_a_week_or_athlete_that_is_not_there(plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["sheet", "--week", "9", plan.name]) == 2
    assert main(["sheet", "--athlete", "Bob", plan.name]) == 2
    assert main(["sheet", "gone.programme.yaml"]) == 2
    err = capsys.readouterr().err
    assert "there is no week 9: the programme has weeks 1 to 2" in err
    assert "nobody on the programme is called 'Bob'. Did you mean Bo?" in err
    assert "gone.programme.yaml" in err
