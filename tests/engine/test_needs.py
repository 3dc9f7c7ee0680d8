"""Rules that name the keys they need: where one is written nowhere, they have nothing to say."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.counting.ledger import Ledger
from spotline.lint.engine.registry import Rule, all_rules
from spotline.lint.engine.rule_page import Page
from spotline.lint.engine.run import run
from spotline.lint.findings.finding import Finding
from spotline.lint.model.sessions import WORK_KEYS
from spotline.lint.project.review import counted
from spotline.lint.project.workspace import Workspace

ROOT = Path(__file__).parent.parent.parent
TODAY = date(2026, 1, 5)

RULES = [rule for rule in all_rules() if rule.needs]
NAMED = pytest.mark.parametrize("rule", RULES, ids=[rule.name for rule in RULES])

FOLDERS = ("examples", "tests/coaches", "tests/more_coaches", "tests/fresh_coaches", "tests/published")


@pytest.fixture(scope="module")
def ledgers() -> list[Ledger]:
    """The ledgers of all programmes that are kept here."""
    files = counted(Workspace(TODAY), [str(ROOT / folder) for folder in FOLDERS])
    return [ledger for one in files for ledger in one.ledgers]


def without_needs(rule: Rule) -> Rule:
    """The same rule, which is asked everywhere."""
    return Rule(
        rule.name,
        rule.family,
        rule.severity,
        rule.confidence,
        rule.why,
        rule.sources,
        rule.options,
        rule.stands_back,
        rule.check,
        takes_out=rule.takes_out,
    )


def said(rule: Rule, ledger: Ledger) -> list[tuple[object, ...]]:
    hits, faults = run([rule], ledger, {})
    return [(hit.draft.place.key, hit.draft.counted, hit.weeks) for hit in hits] + [
        (fault.words,) for fault in faults
    ]


@NAMED
def test_they_are_keys_of_lines(rule: Rule) -> None:
    assert rule.needs <= set(WORK_KEYS)
    assert rule.scope != "athlete"


@NAMED
def test_it_says_the_same_where_it_is_asked_everywhere(rule: Rule, ledgers: list[Ledger]) -> None:
    asked_everywhere = without_needs(rule)
    assert not asked_everywhere.needs
    assert [said(rule, one) for one in ledgers] == [said(asked_everywhere, one) for one in ledgers]


@NAMED
def test_its_example_lacks_nothing_that_it_needs(rule: Rule, findings: Callable[..., list[Finding]]) -> None:
    page = Page(rule)
    assert findings(page.flags, rule.name, page.beside)


def test_many_programmes_are_asked(ledgers: list[Ledger]) -> None:
    assert len(ledgers) > 100
    lacking = [rule.name for rule in RULES if not any(said(rule, one) for one in ledgers)]
    assert len(lacking) < len(RULES)
