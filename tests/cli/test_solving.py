"""``mend --solve`` at the command: cards are shown, one is written on demand, and nothing else ever is."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.cli.main import main
from spotline.tests.solving.faulty import FAULTS, NO_CURLS, SOUND

NAME = "plan.programme.yaml"


@pytest.fixture(autouse=True)
def plan(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A programme without a curl in an empty repository, and a home of its own for the state."""
    (tmp_path / "here" / ".git").mkdir(parents=True)
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    monkeypatch.setenv("COLUMNS", "80")
    monkeypatch.chdir(tmp_path / "here")
    path = tmp_path / "here" / NAME
    path.write_text(NO_CURLS)
    return path


def test_a_card_shows_the_lines_the_costs_and_what_it_clears(
    plan: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["mend", NAME, "--solve", "--rule", "knee-flexion-missing"]) == 0
    said = capsys.readouterr().out
    assert "1  Romanian deadlift (Lower A) raised to 4 sets and seated leg curl in place of" in said
    assert "  then     12: - {exercise: seated leg curl, sets: 3, reps: 10-15, rir: 2, rest:" in said
    assert "  costs    4 sets more a week; Lower A 9 min longer" in said
    assert "  clears   line 11, knee-flexion-missing\n" in said
    assert "Nothing is written without --write 1" in said
    assert plan.read_text() == NO_CURLS


@pytest.mark.parametrize("fault", FAULTS)
def test_cards_fit_eighty_columns(fault: str, plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    text, rule = FAULTS[fault]
    plan.write_text(text)
    assert main(["mend", NAME, "--solve", "--rule", rule]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert max(map(len, lines)) <= 80
    assert not any(line.endswith(" ") for line in lines)


def test_one_is_written_on_demand_and_can_be_taken_back(
    plan: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    asked = ["mend", NAME, "--solve", "--rule", "knee-flexion-missing"]
    main(asked)
    assert main([*asked, "--write", "1"]) == 0
    assert "exercise: seated leg curl" in plan.read_text()
    assert main(["review", NAME, "--as", "lines"]) in (0, 1)
    assert "knee-flexion-missing" not in capsys.readouterr().out.rpartition("mend --undo")[2]
    assert main(["mend", "--undo"]) == 0
    assert plan.read_text() == NO_CURLS


def test_what_was_shown_for_another_text_is_not_written(
    plan: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    asked = ["mend", NAME, "--solve", "--rule", "knee-flexion-missing"]
    main(asked)
    changed = NO_CURLS.replace("back squat, sets: 3", "back squat, sets: 4")
    plan.write_text(changed)
    assert main([*asked, "--write", "1"]) == 2
    assert "has changed since proposals for it were shown" in capsys.readouterr().err
    assert plan.read_text() == changed
    main(asked)
    assert main([*asked, "--write", "1"]) == 0


def test_a_number_that_is_not_there_is_refused(plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["mend", NAME, "--solve", "--rule", "knee-flexion-missing", "--write", "9"]) == 2
    assert "there is no proposal 9" in capsys.readouterr().err
    assert plan.read_text() == NO_CURLS


def test_where_nothing_is_proposed_it_says_why(plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    plan.write_text(SOUND.replace("bench press, sets: 3", "bench press, sets: 33"))
    assert main(["mend", NAME, "--solve"]) == 1
    said = capsys.readouterr().out
    assert "Only you know what was meant." in said
    assert said.endswith("No proposal.\n")


def test_a_sound_programme_says_so(plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    plan.write_text(SOUND)
    assert main(["mend", NAME, "--solve"]) == 0
    assert capsys.readouterr().out == f"{NAME}\n\nNothing that blocks.\n"


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["--solve"], "--solve takes one programme"),
        ([NAME, NAME, "--solve"], "--solve takes one programme"),
        ([NAME, "--line", "3"], "--line goes with --solve only"),
        ([NAME, "--solve", "--show"], "--show and --solve exclude one another"),
        ([NAME, "--solve", "--line", "0"], "--line takes a number from 1"),
        ([NAME, "--solve", "--line", "x"], "--line takes a number from 1"),
        ([NAME, "--solve", "--write", "-1"], "--write takes a number from 1"),
        ([NAME, "--solve", "--rule", "knee-flexion-missin"], "did you mean knee-flexion-missing?"),
        ([NAME, "--solve", "--line", "2"], "nothing is found on line 2; there are some on lines"),
        (["nobody.athlete.yaml", "--solve"], "nobody.athlete.yaml"),
    ],
)
def test_words_that_cannot_be_followed_are_refused(
    words: list[str], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["mend", *words]) == 2
    assert said in capsys.readouterr().err


@pytest.mark.parametrize("fault", FAULTS)
def test_proposals_as_json_keep_their_schema(
    fault: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    text, rule = FAULTS[fault]
    (tmp_path / "plan.programme.yaml").write_text(text, encoding="utf-8")
    code = main(["mend", str(tmp_path / "plan.programme.yaml"), "--solve", "--rule", rule, "--as", "json"])
    whole = json.loads(capsys.readouterr().out)
    Draft202012Validator(schemas.load("proposals")).validate(whole)
    assert code == (0 if whole["proposals"] else 1)
    for one in whole["proposals"]:
        lines = text.splitlines()
        for changed in reversed(one["lines"]):
            start = changed["from"] - 1
            assert lines[start : start + len(changed["before"])] == changed["before"]
            lines[start : start + len(changed["before"])] = changed["after"]
        assert lines != text.splitlines()
        assert rule in {cleared["rule"] for cleared in one["clears"]}


def test_what_stays_is_in_the_json_with_its_reason(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    text = SOUND.replace("minutes: 70", "minutes: 5")
    (tmp_path / "plan.programme.yaml").write_text(text, encoding="utf-8")
    words = ["--solve", "--rule", "session-too-long", "--as", "json"]
    assert main(["mend", str(tmp_path / "plan.programme.yaml"), *words]) == 1
    whole = json.loads(capsys.readouterr().out)
    Draft202012Validator(schemas.load("proposals")).validate(whole)
    assert whole["proposals"] == []
    assert all(one["why"] for one in whole["stays"])


@pytest.mark.parametrize(
    "words", [["--solve", "--as", "xml"], ["--as", "json"], ["--solve", "--write", "1", "--as", "json"]]
)
def test_a_form_goes_with_proposals_that_are_shown(
    words: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "plan.programme.yaml"
    path.write_text(SOUND, encoding="utf-8")
    assert main(["mend", str(path), *words]) == 2
    assert path.read_text(encoding="utf-8") == SOUND
    assert capsys.readouterr().err
