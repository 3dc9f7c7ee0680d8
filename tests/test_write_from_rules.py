"""What is made from the rules is as they make it, and the command that writes it overwrites nothing shipped."""

from __future__ import annotations

import json
import shutil
from pathlib import Path
from typing import Any

import pytest

from spotline.lint.engine.limits import Option
from spotline.lint.engine.registry import Rule, all_rules
from spotline.lint.team import presets
from spotline.lint.team.presets import PRESETS
from spotline.tests import write_from_rules
from spotline.tests.write_from_rules import ROOT, main

NEWEST = list(PRESETS)[-1]


@pytest.fixture
def copied(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The folder of a copy of what is written, which the command then looks at."""
    shutil.copy(ROOT / "README.md", tmp_path)
    shutil.copytree(ROOT / "tests" / "presets", tmp_path / "tests" / "presets")
    monkeypatch.setattr(write_from_rules, "ROOT", tmp_path)
    return tmp_path


def declared(monkeypatch: pytest.MonkeyPatch, *rules: Rule) -> None:
    """Lets the command see some more rules, or others in the place of those that are called the same.

    They come with the newest preset.
    """
    monkeypatch.setitem(
        presets.NEW_RULES, NEWEST, (*presets.NEW_RULES[NEWEST], *(rule.name for rule in rules))
    )
    named = {rule.name: rule for rule in (*all_rules(), *rules)}
    monkeypatch.setattr(write_from_rules, "all_rules", lambda: list(named.values()))


def tired(default: float, by: tuple[tuple[dict[str, str], float], ...] = ()) -> Rule:
    """A rule that no other knows of, with one limit."""

    def check(ledger: object, limits: object) -> None:
        """Weeks that leave the lifter tired.

        Counts nothing.
        """

    check.__annotations__["ledger"] = "Ledger"
    options = (Option("most", default, "sets", "common practice", by),)
    return Rule("tired", "care", "note", "common practice", "Rest helps.", (), options, (), check)  # type: ignore[arg-type]


def kept(folder: Path, preset: str = NEWEST) -> Any:
    return preset_file(folder, preset)["limits"]


def preset_file(folder: Path, preset: str = NEWEST) -> dict[str, Any]:
    held: dict[str, Any] = json.loads((folder / "tests" / "presets" / f"{preset}.json").read_text("utf-8"))
    return held


def test_all_is_as_the_rules_make_it() -> None:
    assert main(["--check"]) == 0


def test_a_new_rule_is_written_and_what_stood_there_stays(
    copied: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    before = kept(copied)
    declared(monkeypatch, tired(20, (({"goal": "strength"}, 12),)))
    assert main(["--check"]) == 1
    said = capsys.readouterr().out.splitlines()
    assert said == [
        "README.md is not as the rules make it",
        f"tests/presets/{NEWEST}.json is not as the rules make it",
    ]
    assert kept(copied) == before
    assert main([]) == 0
    assert kept(copied) == before | {"tired: most": {"default": 20, "by": [[{"goal": "strength"}, 12]]}}
    assert [name for name in PRESETS if "tired" in preset_file(copied, name)["rules"]] == [NEWEST]
    readme = (copied / "README.md").read_text("utf-8")
    assert "|\n| `tired` | note | Weeks that leave the lifter tired |\n\nContributing:" in readme
    assert readme.replace("| `tired` | note | Weeks that leave the lifter tired |\n", "") == (
        ROOT / "README.md"
    ).read_text("utf-8")
    assert main(["--check"]) == 0


def test_a_row_that_is_gone_or_worded_otherwise_is_put_right(copied: Path) -> None:
    readme = copied / "README.md"
    whole = readme.read_text("utf-8")
    first, second = (f"| `{rule.name}` |" for rule in all_rules()[:2])
    torn = whole.replace(first, "| `other` |").replace(second, "")
    readme.write_text(torn, "utf-8")
    assert main(["--check"]) == 1
    assert readme.read_text("utf-8") == torn
    assert main([]) == 0
    assert readme.read_text("utf-8") == whole


@pytest.mark.parametrize("words", [[], ["--check"]])
def test_a_shipped_default_that_moved_is_refused_and_nothing_is_written(
    words: list[str], copied: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    declared(monkeypatch, tired(20))
    main([])
    before = {file: file.read_bytes() for file in copied.rglob("*.*") if file.is_file()}
    declared(monkeypatch, tired(25))
    capsys.readouterr()
    assert main(words) == 2
    said = capsys.readouterr().err
    assert f'{NEWEST}.json has been shipped with {{"default": 20, "by": []}} for `tired: most`' in said
    assert 'the rules now say {"default": 25, "by": []}' in said
    assert "date a new preset" in said
    assert {file: file.read_bytes() for file in copied.rglob("*.*") if file.is_file()} == before


def test_a_shipped_limit_that_is_gone_is_refused(
    copied: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(write_from_rules, "all_rules", lambda: all_rules()[1:])
    assert main([]) == 2
    assert "the rules now say nothing" in capsys.readouterr().err


def test_a_default_moves_by_way_of_a_new_preset(copied: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    declared(monkeypatch, tired(20))
    main([])
    monkeypatch.setattr(
        write_from_rules, "PRESETS", {**PRESETS, NEWEST: {"tired": {"most": 20}}, "2099-01": {}}
    )
    declared(monkeypatch, tired(25))
    assert main([]) == 0
    assert kept(copied)["tired: most"] == {"default": 20, "by": []}
    assert kept(copied, "2099-01")["tired: most"] == {"default": 25, "by": []}


def test_a_new_rule_that_no_preset_names_is_refused(
    copied: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    named = dict(presets.NEW_RULES)
    declared(monkeypatch, tired(20))
    monkeypatch.setattr(presets, "NEW_RULES", named)
    assert main([]) == 2
    said = capsys.readouterr().err
    assert "tests/presets/2026-11.json has been shipped without tired." in said
    assert "name what is new in NEW_RULES" in said


def test_a_rule_that_a_shipped_preset_runs_goes_on_running(
    copied: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(presets, "NEW_RULES", {NEWEST: ("dates-at-odds",)})
    assert main([]) == 2
    assert (
        "2026-11.json has been shipped with dates-at-odds, which would not run now."
        in capsys.readouterr().err
    )
