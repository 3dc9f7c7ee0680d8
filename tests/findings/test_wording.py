"""A finding is a line that a coach reads at once: short, and in the trade's words.

Held over every finding of the examples, the published programmes, the coaches' programmes and every rule's page.
The lengths are ours (two lines of a terminal): common practice, no source.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable
from statistics import median

import pytest

from spotline.lint.engine.registry import all_rules
from spotline.lint.engine.rule_page import Page
from spotline.lint.project.results import Review
from spotline.lint.project.review import review
from spotline.lint.reporters.sentences import sentence, weeks_of

from .test_claims import FOLDERS, ROOT, TODAY, every, texts

LONGEST, MEDIAN = 170, 130
"""Letters of a line without its weeks: of the longest, and of the median over all rules that are measured."""

BANNED = (
    "(common practice",
    "as a helper only",
    "at the least",
    "helping",
    "is no goal",
    "is to be spared",
    "light (8 or more repetitions)",
    "no time of rest",
    "no trial",
    "nothing trains abdomen",
    "read alike",
    "the two near one another",
    "trials can measure",
    "trials found",
)
"""What no coach would say, and grounds, which the rule's page and the card say."""

PENDING: frozenset[str] = frozenset(
    (
        "deload-without-cut",
        "lift-beyond-level",
    )
)
"""Rules and checks that are not yet brought to the measure. The list only ever gets shorter."""


@pytest.fixture(scope="module")
def lines(reviewed: Callable[..., Review]) -> dict[str, list[str]]:
    """The lines of all findings without their weeks, each once, by the name of the rule."""
    said: dict[str, dict[str, None]] = defaultdict(dict)

    def note(whole: Review) -> None:
        for one in every(whole):
            said[one.rule][sentence(one).removeprefix(f"{weeks_of(one)}: ")] = None

    for folder in (*FOLDERS, "tests/coaches"):
        for path in sorted((ROOT / folder).rglob("*.programme.yaml")):
            note(review([str(path)], TODAY))
    for rule in all_rules():
        settings = {"spotline.yaml": f"rules: {{{rule.name}: run}}\n"} if rule.off else {}
        for text in texts(rule):
            note(reviewed(text, {**Page(rule).beside, **settings}))
    return {rule: list(one) for rule, one in said.items()}


def faults(line: str) -> list[str]:
    """What is wrong with a line: its length, phrases that are banned."""
    too_long = [f"{len(line)} letters"] if len(line) > LONGEST else []
    return too_long + [phrase for phrase in BANNED if phrase in line.casefold()]


def test_every_line_is_short_and_in_the_trades_words(lines: dict[str, list[str]]) -> None:
    measured = {rule: said for rule, said in lines.items() if rule not in PENDING}
    assert len(measured) >= 24
    assert [(rule, wrong, line) for rule in measured for line in lines[rule] if (wrong := faults(line))] == []


def test_half_of_the_lines_are_shorter_still(lines: dict[str, list[str]]) -> None:
    assert median(len(line) for rule, said in lines.items() if rule not in PENDING for line in said) <= MEDIAN


def test_what_is_brought_to_the_measure_leaves_the_list(lines: dict[str, list[str]]) -> None:
    done = [rule for rule in PENDING if not any(map(faults, lines.get(rule, ())))]
    assert sorted(done) == [], "take these out of PENDING"


@pytest.mark.parametrize(
    ("line", "wrong"),
    [
        ("20 sets for the chest. Wanted: at most 16 a week.", []),
        ("x" * LONGEST, []),
        ("x" * (LONGEST + 1), ["171 letters"]),
        ("Helping sets. Wanted: at most 20 (common practice; ours).", ["(common practice", "helping"]),
    ],
)
def test_what_is_a_fault(line: str, wrong: list[str]) -> None:
    assert faults(line) == wrong
