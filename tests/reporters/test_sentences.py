"""A finding in words, and the line that sums a review up."""

from __future__ import annotations

import json

import pytest

from spotline.lint.engine.run import Fault
from spotline.lint.project.results import FileReview, Review
from spotline.lint.reporters.review_json import review_json
from spotline.lint.reporters.sentences import (
    closing,
    counted,
    ground,
    sentence,
    sentence_by_the_line,
    statement,
)
from spotline.lint.wording.words import week_list
from spotline.tests.reporters.builders import finding, reviewed


@pytest.mark.parametrize(
    ("weeks", "words"),
    [
        ((3,), "Week 3"),
        ((1, 2, 3), "Weeks 1-3"),
        ((1, 2, 4, 6, 7), "Weeks 1-2, 4, 6-7"),
        ((1, 3), "Weeks 1, 3"),
    ],
)
def test_weeks(weeks: tuple[int, ...], words: str) -> None:
    assert week_list(weeks) == words.lower()
    assert counted(finding(weeks=weeks)) == f"{words}: 30 sets in one line."


def test_no_weeks() -> None:
    assert counted(finding()) == "30 sets in one line."


@pytest.mark.parametrize(
    ("athletes", "words"),
    [
        ((), "30 sets in one line."),
        (("Bo",), "For Bo: 30 sets in one line."),
        (("Bo", "Cas"), "For Bo and Cas: 30 sets in one line."),
        (("Bo", "Cas", "Dee"), "For Bo, Cas and Dee: 30 sets in one line."),
    ],
)
def test_athletes(athletes: tuple[str, ...], words: str) -> None:
    one = finding(athletes=athletes, weeks=(1, 2), wanted="", change="")
    assert statement(one) == words
    assert sentence(one) == counted(one) == f"Weeks 1-2: {words}"
    assert sentence_by_the_line(one) == f"{words} Weeks 1-2."
    assert json.loads(review_json(Review([reviewed(one)])))["findings"][0]["counted"] == words


@pytest.mark.parametrize(
    ("wanted", "change", "words"),
    [
        ("at most 12 sets", "Correct it.", "30 sets in one line. Wanted: at most 12 sets. Correct it."),
        ("At most 12 sets.", "Correct it.", "30 sets in one line. Wanted: At most 12 sets. Correct it."),
        ("", "Correct it.", "30 sets in one line. Correct it."),
        ("", "", "30 sets in one line."),
    ],
)
def test_a_sentence(wanted: str, change: str, words: str) -> None:
    assert sentence(finding(wanted=wanted, change=change)) == words


def test_a_reference_is_named_once_as_ground() -> None:
    sources = ("pelland-2026-min", "pelland-2026-frac", "kubo-2019")
    words = ground(finding(confidence="model", sources=sources))
    assert words.count("Pelland and others 2026") == 1
    assert "Kubo and others 2019" in words


@pytest.mark.parametrize(
    ("files", "words"),
    [
        ([], "Nothing to review: no programme or athlete file found."),
        ([reviewed()], "Reviewed 1 programme: nothing found. Nothing blocks."),
        ([reviewed(finding(severity="note"))], "Reviewed 1 programme: 1 note. Nothing blocks."),
        ([reviewed(finding(), finding())], "Reviewed 1 programme: 2 warnings. Blocked."),
        (
            [
                reviewed(finding(severity="error"), finding(), finding(severity="note")),
                reviewed(),
                reviewed(name="a.athlete.yaml"),
                reviewed(name="spotline.yaml"),
            ],
            "Reviewed 2 programmes, 1 athlete file, 1 settings file: 1 error, 1 warning, 1 note. Blocked.",
        ),
        ([reviewed(name="a.yaml")], "Reviewed 1 other file: nothing found. Nothing blocks."),
        (
            [reviewed(faults=(Fault("a-rule", "x"),))],
            "Reviewed 1 programme: nothing found. Nothing blocks. 1 rule failed; the rest was reviewed.",
        ),
        (
            [reviewed(finding(), faults=(Fault("a-rule", "x"), Fault("b-rule", "x")))],
            "Reviewed 1 programme: 1 warning. Blocked. 2 rules failed; the rest was reviewed.",
        ),
    ],
)
def test_it_sums_up(files: list[FileReview], words: str) -> None:
    assert closing(Review(files)) == words
