"""The cheapest repair of what each rule finds on its own page, read as a coach would.

Where it is silly the rule has a hole, or the search has: that is mended, not written down here. What is not in
of_every_rule.yaml has no repair, since only the coach can know it, or it takes another programme.
"""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
import yaml

from spotline.lint.engine.registry import Rule, all_rules
from spotline.lint.engine.rule_page import Page
from spotline.lint.solving.solve import Ask, Card, NothingToSolveError, solve

FIRST: dict[str, list[str]] = yaml.safe_load(
    (Path(__file__).parent / "of_every_rule.yaml").read_text(encoding="utf-8")
)
RULES = [rule for rule in all_rules() if not rule.off]

ON_WHAT_IS_WRITTEN = ("repetitions", "load", "rest", "progression")
"""Families whose rules are about values of a lift: with another lift, or without it, nobody sees them."""


def cards_for(rule: Rule, folder: Path) -> list[Card]:
    """What is proposed for the programme on a rule's page, without the mark on its line."""
    page = Page(rule)
    (folder / ".git").mkdir()
    for name, text in {**page.beside, "plan.programme.yaml": page.flags}.items():
        (folder / name).write_text(text.replace("  # <- here", ""), encoding="utf-8")
    try:
        solution = solve(str(folder / "plan.programme.yaml"), date(2026, 1, 5), Ask(0, rule.name))
    except NothingToSolveError:
        return []
    assert solution.cards or all(one.why for one in solution.stays)
    return solution.cards


@pytest.mark.parametrize("rule", RULES, ids=[rule.name for rule in RULES])
def test_the_cheapest_repair_was_read(rule: Rule, tmp_path: Path) -> None:
    cards = cards_for(rule, tmp_path)
    assert [step.label for card in cards[:1] for step in card.steps] == FIRST.get(rule.name, [])
    if rule.family in ON_WHAT_IS_WRITTEN:
        assert not {"swap", "drop"} & {step.kind for card in cards for step in card.steps}


def test_each_rule_named_is_one() -> None:
    assert FIRST.keys() <= {rule.name for rule in RULES}
    assert all(FIRST.values())
