"""What a finding claims adds up: its number, its words, the lines it lists and the weeks it names.

Held over every finding of the examples, of the published programmes and of every rule's page.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.engine import run
from spotline.lint.engine.hits import Hit
from spotline.lint.engine.registry import Rule, all_rules
from spotline.lint.engine.rule_page import Page
from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import Review
from spotline.lint.project.review import review
from spotline.lint.wording.words import plain

ROOT = Path(__file__).parent.parent.parent
TODAY = date(2026, 1, 5)
FOLDERS = ("examples", "tests/published", "tests/guidelines")

Case = tuple[Finding, list[Hit]]


def every(whole: Review) -> Iterator[Finding]:
    for one in whole.files:
        for lead in one.findings:
            yield from (lead, *lead.follows)


@pytest.fixture(scope="module")
def cases(reviewed: Callable[..., Review]) -> list[Case]:
    """Every finding, with all that its rule has found on the same texts, week by week."""
    hits: list[Hit] = []
    made = run._hit

    def watched(*values: object) -> Hit:
        hit = made(*values)  # type: ignore[arg-type]
        hits.append(hit)
        return hit

    said: list[Case] = []

    def note(whole: Review) -> None:
        by_rule = defaultdict(list)
        for hit in hits:
            by_rule[hit.rule.name].append(hit)
        said.extend((one, by_rule[one.rule]) for one in every(whole))
        hits.clear()

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(run, "_hit", watched)
        for folder in FOLDERS:
            for path in sorted((ROOT / folder).rglob("*.programme.yaml")):
                note(review([str(path)], TODAY))
        for rule in all_rules():
            for text in texts(rule):
                settings = {"spotline.yaml": f"rules: {{{rule.name}: run}}\n"} if rule.off else {}
                note(reviewed(text, {**Page(rule).beside, **settings}))
    return said


def texts(rule: Rule) -> tuple[str, str]:
    page = Page(rule)
    return page.flags, page.passes


def shares(finding: Finding) -> dict[str, tuple[float, float]]:
    """The sums of what the listed lines bring, by the number that they are shares of."""
    sums: dict[str, tuple[float, float]] = {}
    for one in finding.related:
        if one.share is not None:
            low, high = sums.get(one.of, (0.0, 0.0))
            sums[one.of] = (low + one.share[0], high + one.share[1])
    return sums


def numbers(words: str) -> set[float]:
    return {float(number) for number in re.findall(r"\d+(?:\.\d+)?", words)}


def test_there_is_something_to_hold_it_against(cases: list[Case]) -> None:
    with_lines = [one for one, _ in cases if shares(one)]
    assert len({one.rule for one in with_lines}) >= 15
    assert len({one.rule for one, _ in cases if one.amount}) >= 40
    assert any(one.told for one, _ in cases)


def test_the_lines_listed_add_up_to_the_number(cases: list[Case]) -> None:
    held: set[str] = set()
    for finding, _ in cases:
        own = shares(finding).get("")
        if own is not None and finding.amount is not None:
            low, high = own
            assert finding.amount.counted in (low, high, (low + high) / 2), (finding.rule, finding.counted)
            held.add(finding.rule)
    assert len(held) >= 10, held


def test_the_lines_of_further_numbers_add_up_to_what_is_said(cases: list[Case]) -> None:
    for finding, _ in cases:
        for of, (low, high) in shares(finding).items():
            if of:
                assert {low, high} <= numbers(finding.counted) | numbers(of), (finding.rule, finding.counted)


def test_the_number_stands_in_the_words(cases: list[Case]) -> None:
    for finding, _ in cases:
        if finding.amount and finding.amount.unit == "sets" and shares(finding).get(""):
            own = shares(finding)[""]
            said = f"{plain(own[0])}-{plain(own[1])}"
            words = finding.counted
            assert plain(finding.amount.counted) in words or said in words, (finding.rule, words)


def test_the_words_hold_for_the_weeks_that_are_said(cases: list[Case]) -> None:
    for finding, hits in cases:
        alike = [hit for hit in hits if hit.draft.counted == finding.counted]
        held = {week for hit in alike for week in hit.weeks}
        if alike and finding.weeks:
            assert set(finding.told or finding.weeks) <= held, (finding.rule, finding.counted)
            about = [hit for hit in hits if hit.draft.subject == finding.subject]
            assert set(finding.weeks) <= {week for hit in about for week in hit.weeks}, finding.rule


def test_what_is_wanted_is_not_what_was_counted(cases: list[Case]) -> None:
    for finding, _ in cases:
        if finding.amount is not None:
            assert finding.amount.counted != finding.amount.wanted, (finding.rule, finding.counted)
            assert finding.amount.unit


def test_what_leads_is_as_serious_as_what_it_lists(cases: list[Case]) -> None:
    order = ("note", "warning", "error")
    for finding, _ in cases:
        for one in finding.follows:
            assert order.index(one.severity) <= order.index(finding.severity)
            assert any(one.counted in related.words for related in finding.related)
