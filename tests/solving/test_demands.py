"""Rules and their demands say the same: exactly, or no less; and every rule says which it is."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from hypothesis import Phase, given, settings

from spotline.lint.counting.ledger import Ledger, Lifter
from spotline.lint.engine.demands import all_asked, asked_of, demands_at, is_exact
from spotline.lint.engine.registry import Rule, all_rules
from spotline.lint.engine.rule_page import Page
from spotline.lint.project.discovery import discovered
from spotline.lint.project.results import FileReview, Review
from spotline.lint.project.review import reviewed as reviewed_on
from spotline.lint.project.workspace import Workspace
from spotline.rules.demands.without import WHY_NOT, WITHOUT
from spotline.tests.conftest import TODAY
from spotline.tests.solving.random_programmes import programmes

if TYPE_CHECKING:
    from spotline.lint.engine.run import Moves

ROOT = Path(__file__).parent.parent.parent
RULES = all_rules()
AS_DATA = [rule for rule in RULES if rule.name in all_asked()]
FOLDERS = (
    "examples",
    "tests/coaches",
    "tests/more_coaches",
    "tests/fresh_coaches",
    "tests/published",
    "tests/guidelines",
)


def test_every_rule_has_demands_or_a_reason_why_it_has_none() -> None:
    without = [name for names in WITHOUT.values() for name in names]
    assert sorted([*all_asked(), *without]) == sorted(rule.name for rule in RULES)
    assert WITHOUT.keys() == WHY_NOT.keys()


def differences(ledger: Ledger | Lifter, moved: Moves, preset: Moves) -> Iterator[str]:
    """Where a rule and its demands do not say the same of a thing that it looks at."""
    for rule, target, limits, weeks in asked_of(AS_DATA, ledger, moved, preset):
        broken = [one for one in demands_at(rule, target, ledger, limits) if not one.is_held]
        speaks = list(rule.check(target.unit, *(ledger for _ in rule.beyond), limits))
        where = f"{rule.name} in weeks {weeks[:1]}..{weeks[-1:]}"
        if speaks and not broken:
            yield f"{where} says {speaks[0].counted} and no demand is broken"
        elif broken and not speaks and is_exact(rule):
            demand = broken[0]
            yield f"{where} is silent at {demand.group} {demand.now} {demand.least} {demand.most}"


def of_review(one: FileReview) -> list[str]:
    choices = one.team.choices
    return [
        f"{one.name}: {said}"
        for ledger in one.ledgers
        for said in differences(ledger, choices.moved, choices.preset)
    ]


@pytest.mark.parametrize("folder", FOLDERS)
def test_rule_and_demand_say_the_same_of_every_programme_here(folder: str) -> None:
    workspace = Workspace(TODAY)
    paths = [str(path) for path in sorted((ROOT / folder).rglob("*.yaml"))]
    found = reviewed_on(workspace, discovered(workspace, paths))
    assert sum(len(one.ledgers) for one in found) > 5
    assert [said for one in found for said in of_review(one)] == []


@pytest.mark.parametrize("which", ["flags", "passes"])
@pytest.mark.parametrize("rule", AS_DATA, ids=[rule.name for rule in AS_DATA])
def test_rule_and_demand_say_the_same_of_the_examples_on_its_page(
    rule: Rule, which: str, reviewed: Callable[..., Review]
) -> None:
    page = Page(rule)
    files = {**page.beside, **({"spotline.yaml": f"rules: {{{rule.name}: run}}\n"} if rule.off else {})}
    (one,) = reviewed(getattr(page, which), files).files
    assert one.ledgers
    assert of_review(one) == []


def moved_by(factor: float) -> Moves:
    """Every limit that is one number, so many times as high."""
    return {
        rule.name: {
            option.name: option.default * factor
            for option in rule.options
            if isinstance(option.default, int | float)
        }
        for rule in AS_DATA
    }


def test_rule_and_demand_say_the_same_of_random_programmes(reviewed: Callable[..., Review]) -> None:
    spoke: Counter[str] = Counter()
    silent: Counter[str] = Counter()

    @settings(max_examples=80, phases=(Phase.explicit, Phase.generate))  # a small one says no more
    @given(programmes())
    def agree(text: str) -> None:
        (one,) = reviewed(text).files
        assert one.ledgers, [finding.counted for finding in one.findings]
        assert of_review(one) == []
        for ledger in one.ledgers:
            for factor in (0.5, 2):
                assert list(differences(ledger, moved_by(factor), {})) == []
            for rule, target, limits, _ in asked_of(AS_DATA, ledger, {}, {}):
                held = [demand.is_held for demand in demands_at(rule, target, ledger, limits)]
                spoke[rule.name] += not all(held)
                silent[rule.name] += bool(held) and all(held)

    agree()
    # It says something of a rule only where both happen; the programme on its page shows both of every rule.
    assert sum(spoke[name] > 0 and silent[name] > 0 for name in all_asked()) >= MOST_SEEN


MOST_SEEN = 15
"""Rules of which random programmes show both sides, at least."""
