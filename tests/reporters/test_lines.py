"""Lines: their form, and that no text from a file can pass for one."""

from __future__ import annotations

import pytest

from spotline.lint.engine.run import Fault
from spotline.lint.project.results import Review
from spotline.lint.reporters.lines import lines
from spotline.tests.reporters.builders import finding, reviewed


def test_the_form() -> None:
    (line,) = lines(Review([reviewed(finding(weeks=(1, 2)))]))
    assert line == (
        "a.programme.yaml:4:46: warning: number-implausible: Weeks 1-2: 30 sets in one line."
        " Wanted: at most 12 sets. If it is a slip, correct it."
    )


def test_a_rule_that_failed() -> None:
    (line,) = lines(Review([reviewed(faults=(Fault("a-rule", "ValueError: bad\nworse"),))]))
    assert line == "a.programme.yaml:1:1: error: rule-failed: a-rule failed: ValueError: bad\\u000aworse"


def test_file_by_file() -> None:
    whole = Review(
        [
            reviewed(finding(), finding()),
            reviewed(finding(name="b.programme.yaml"), name="b.programme.yaml"),
            reviewed(),
        ]
    )
    assert [line.split(":")[0] for line in lines(whole)] == [
        "a.programme.yaml",
        "a.programme.yaml",
        "b.programme.yaml",
    ]


@pytest.mark.parametrize(
    ("name", "shown"),
    [
        ("-a.yaml", "./-a.yaml"),
        (":a.yaml", "./:a.yaml"),
        ("a\nb.yaml", "a\\u000ab.yaml"),
        ("a\x1b[2Jb.yaml", "a\\u001b[2Jb.yaml"),
        ("\u202ea.yaml", "\\u202ea.yaml"),
        ("c/-a.yaml", "c/-a.yaml"),
    ],
)
def test_names_of_files(name: str, shown: str) -> None:
    (line,) = lines(Review([reviewed(finding(name=name), name=name)]))
    assert line.startswith(f"{shown}:4:46: warning: ")


@pytest.mark.parametrize("nasty", ["a\nb.yaml:1:1: error: forged", "\x1b[31m", "\u202e", "\r", "\u2028"])
def test_words_of_a_file_cannot_forge_a_line(nasty: str) -> None:
    whole = Review([reviewed(finding(f"`{nasty}` is not known.", wanted=nasty, change=nasty))])
    (line,) = lines(whole)
    assert line.isprintable()
    assert len(line.splitlines()) == 1
