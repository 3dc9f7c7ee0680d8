"""Ten and twelve further faulty programmes, and what a head coach says of what comes first for each."""

from __future__ import annotations

from collections import Counter
from pathlib import Path
from typing import Any

import pytest
import yaml

from spotline.lint.solving.solve import Ask, solve
from spotline.tests.conftest import TODAY

HERE = Path(__file__).parent


def verdicts_in(folder: str) -> list[dict[str, Any]]:
    read: list[dict[str, Any]] = yaml.safe_load((HERE / folder / "verdicts.yaml").read_text(encoding="utf-8"))
    return [{**one, "file": f"{folder}/{one['file']}"} for one in read]


FOLDERS = ("ten", "dozen")
VERDICTS = [one for folder in FOLDERS for one in verdicts_in(folder)]


@pytest.mark.parametrize("one", VERDICTS, ids=[f"{one['file']} {one.get('rule', '')}" for one in VERDICTS])
def test_what_comes_first_was_judged(one: dict[str, Any]) -> None:
    path = str(HERE / f"{one['file']}.programme.yaml")
    if "rule" not in one:
        assert solve(path, TODAY, Ask()).cards == []
        return
    (card, *_) = solve(path, TODAY, Ask(0, one["rule"])).cards
    assert [step.label for step in card.steps] == one["proposed"]


@pytest.mark.parametrize("folder", FOLDERS)
def test_four_of_five_are_what_the_coach_wants_or_nearly(folder: str) -> None:
    judged = verdicts_in(folder)
    verdicts = Counter(one["verdict"] for one in judged)
    files = {path.name.removesuffix(".programme.yaml") for path in (HERE / folder).glob("*.programme.yaml")}
    assert {one["file"].removeprefix(f"{folder}/") for one in judged} == files
    assert len({one["kind"] for one in judged}) == len(judged) >= 10
    assert (verdicts["first"] + verdicts["second"]) * 100 >= 80 * len(judged)
    assert set(verdicts) <= {"first", "second", "change", "none"}
