"""Ten further faulty programmes, and what a head coach says of what comes first for each."""

from __future__ import annotations

from collections import Counter
from pathlib import Path
from typing import Any

import pytest
import yaml

from spotline.lint.solving.solve import Ask, solve
from spotline.tests.conftest import TODAY

FOLDER = Path(__file__).parent / "ten"
VERDICTS: list[dict[str, Any]] = yaml.safe_load((FOLDER / "verdicts.yaml").read_text(encoding="utf-8"))


@pytest.mark.parametrize("one", VERDICTS, ids=[f"{one['file']} {one.get('rule', '')}" for one in VERDICTS])
def test_what_comes_first_was_judged(one: dict[str, Any]) -> None:
    path = str(FOLDER / f"{one['file']}.programme.yaml")
    if "rule" not in one:
        assert solve(path, TODAY, Ask()).cards == []
        return
    (card, *_) = solve(path, TODAY, Ask(0, one["rule"])).cards
    assert [step.label for step in card.steps] == one["proposed"]


def test_four_of_five_are_what_the_coach_wants_or_nearly() -> None:
    verdicts = Counter(one["verdict"] for one in VERDICTS)
    assert len({one["kind"] for one in VERDICTS}) == len(VERDICTS) >= 10
    assert (verdicts["first"] + verdicts["second"]) * 100 >= 80 * len(VERDICTS)
    assert set(verdicts) <= {"first", "second", "change", "none"}
