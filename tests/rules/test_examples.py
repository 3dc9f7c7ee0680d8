"""Every rule flags the example in its own page, at the marked line, and passes the one beside it."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.engine.registry import Rule, all_rules
from spotline.lint.engine.rule_page import MARK, Page
from spotline.lint.findings.finding import Finding

ABOUT_NAMES = ("exercise-unknown", "sets-not-read")
"""Rules whose business is a name that nobody knows."""

RULES = all_rules()
NAMED = pytest.mark.parametrize("rule", RULES, ids=[rule.name for rule in RULES])
BOTH = pytest.mark.parametrize("which", ["Flags", "Passes"])

IN_PROGRAMMES = [
    rule for rule in RULES if rule.scope != "athlete" and "rehabilitation:" not in Page(rule).flags
]
"""Rules that look at a programme, except those whose business is rehabilitation."""

REHABILITATION = "rehabilitation: {stage: return, advised by: physiotherapist, until: 2036-12-31}"

Findings = Callable[..., list[Finding]]


def example(rule: Rule, which: str) -> str:
    """The text under ``Flags:`` or ``Passes:`` of a rule's page."""
    page = Page(rule)
    return page.flags if which == "Flags" else page.passes


def said(rule: Rule, which: str, findings: Findings) -> list[Finding]:
    """All findings on one of the two programmes, with the files of the page beside it and the rule on."""
    settings = {"spotline.yaml": f"rules: {{{rule.name}: run}}\n"} if rule.off else {}
    return findings(example(rule, which), files={**Page(rule).beside, **settings})


def own(rule: Rule, which: str, findings: Findings) -> list[Finding]:
    """The rule's own findings on one of the two, also where another finding lists them."""
    every = [one for finding in said(rule, which, findings) for one in (finding, *finding.follows)]
    return [finding for finding in every if finding.rule == rule.name]


def marked(text: str) -> list[int]:
    return [number for number, line in enumerate(text.splitlines(), 1) if line.endswith(MARK)]


@NAMED
def test_one_line_is_marked_in_what_it_flags(rule: Rule) -> None:
    assert len(marked(example(rule, "Flags"))) == 1
    assert MARK not in example(rule, "Passes")


@NAMED
def test_it_flags_the_marked_line_and_no_other(rule: Rule, findings: Findings) -> None:
    assert [one.place.line for one in own(rule, "Flags", findings)] == marked(example(rule, "Flags"))


@NAMED
def test_it_passes_the_other(rule: Rule, findings: Findings) -> None:
    assert own(rule, "Passes", findings) == []


@NAMED
@BOTH
def test_both_are_sound_but_for_the_rule(rule: Rule, which: str, findings: Findings) -> None:
    names = {finding.rule for finding in said(rule, which, findings) if finding.rule != rule.name}
    about = () if rule.name in ABOUT_NAMES else ABOUT_NAMES
    assert names <= {one.name for one in RULES} - set(about)


@NAMED
def test_what_it_flags_is_said_with_all_that_it_takes(rule: Rule, findings: Findings) -> None:
    (finding,) = own(rule, "Flags", findings)
    assert finding.severity == rule.severity
    assert finding.counted.endswith(".")
    assert finding.change.endswith((".", "?"))
    assert finding.where
    assert finding.why == rule.why
    words = " ".join((finding.counted, finding.wanted, finding.change))
    for jargon in ("mapping", "node", "schema", "regex", "null", "string", "None", "inf", "nan", "!"):
        assert jargon not in words.split(), words


@NAMED
def test_the_two_examples_are_near_to_one_another(rule: Rule) -> None:
    flagged, passed = (example(rule, which).replace(MARK, "").split() for which in ("Flags", "Passes"))
    assert flagged != passed
    shared = sum(word in passed for word in flagged)
    assert shared >= 0.7 * len(flagged)


@pytest.mark.parametrize("rule", IN_PROGRAMMES, ids=[rule.name for rule in IN_PROGRAMMES])
def test_its_page_says_whether_it_stands_back_in_rehabilitation(rule: Rule, findings: Findings) -> None:
    first, rest = example(rule, "Flags").split("\n", 1)
    settings = {"spotline.yaml": f"rules: {{{rule.name}: run}}\n"} if rule.off else {}
    text = f"{first}\n{REHABILITATION}\n{rest}"
    said = findings(text, rule.name, {**Page(rule).beside, **settings})
    assert (said == []) == ("rehabilitation" in rule.stands_back)
