"""Proposals that would only hide what is wrong, or make a meet a day of training, are not made."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from spotline.lint.engine.registry import all_rules
from spotline.lint.engine.rule_page import Page
from spotline.lint.solving.solve import Ask, Solution, solve

PAGES = {rule.name: Page(rule) for rule in all_rules()}


def solved(folder: Path, rule: str) -> Solution:
    page = PAGES[rule]
    (folder / ".git").mkdir()
    for name, text in {**page.beside, "plan.programme.yaml": page.flags}.items():
        (folder / name).write_text(text, encoding="utf-8")
    return solve(str(folder / "plan.programme.yaml"), date(2026, 1, 5), Ask(0, rule))


@pytest.mark.parametrize("rule", [rule.name for rule in all_rules() if rule.asks or rule.takes_out])
def test_what_asks_what_was_meant_is_for_the_coach(tmp_path: Path, rule: str) -> None:
    solution = solved(tmp_path, rule)
    assert solution.cards == []
    assert "Only you know" in solution.stays[0].why[0]


def test_no_session_is_moved_onto_the_day_of_a_meet(tmp_path: Path) -> None:
    labels = [
        step.label for card in solved(tmp_path, "near-maximal-before-event").cards for step in card.steps
    ]
    assert labels == ["deadlift (Last): 85.5 %"]  # the meet is on Saturday
