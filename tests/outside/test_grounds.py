"""Each `why` beside the sentence of the evidence that carries it.

grounds.yaml holds, for each rule, the `why` as it was judged and the words of the evidence, copied with their
source and section; they were read beside each other by hand. The tests hold the rules to that judgement.
"""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import pytest
import yaml

from spotline.lint.body import catalogue
from spotline.lint.engine.registry import Rule, all_rules

RULES = all_rules()
ENTRIES: list[dict[str, Any]] = yaml.safe_load(
    (Path(__file__).parent / "grounds.yaml").read_text(encoding="utf-8")
)
JUDGED = {entry["rule"]: entry for entry in ENTRIES}
NAMED = pytest.mark.parametrize("rule", RULES, ids=[rule.name for rule in RULES])

SUMMARY = "-"
"""Stands for the evidence's own summary, which is no source."""


def numbers(text: str) -> set[float]:
    """The numbers of a text, ``7,289`` and ``7 289`` as one; the stars of bold type are left out."""
    whole = re.sub(r"(?<=\d)[ ,](?=\d{3}\b)", "", text.replace("*", ""))
    return {float(number) for number in re.findall(r"(?<![\w.])\d+(?:\.\d+)?", whole)}


def test_every_rule_stands_in_the_table_once() -> None:
    assert [entry["rule"] for entry in ENTRIES] == [rule.name for rule in RULES]


@NAMED
def test_a_why_is_as_it_was_judged(rule: Rule) -> None:
    assert rule.why == JUDGED[rule.name]["why"], "judge it beside the evidence anew, then change the table"


@NAMED
def test_every_source_has_its_words(rule: Rule) -> None:
    """Whatever a rule cites says something for it, or against it; nothing else speaks for it."""
    words = JUDGED[rule.name]["words"]
    said = {one["from"] for one in words} - {SUMMARY}
    against = {one["from"] for one in words if one.get("against")}
    assert set(rule.sources) <= said
    assert said - against <= set(rule.sources)
    assert said <= set(catalogue.source_ids())
    assert all(one["says"] and one["in"] for one in words)


@NAMED
def test_a_rule_that_nothing_carries_claims_no_source(rule: Rule) -> None:
    if not JUDGED[rule.name]["words"]:
        assert rule.confidence in ("fact", "convention", "common practice")


@NAMED
def test_every_number_of_a_why_is_one_of_the_evidence(rule: Rule) -> None:
    """To the whole number, unless the table says that it is the rule's own."""
    entry = JUDGED[rule.name]
    held = {number for one in entry["words"] for number in numbers(one["says"])}
    held |= {round(number) for number in held}
    assert numbers(rule.why) - held == set(entry.get("own numbers", ()))
