"""Cards: what they say, how they fit, and that no text from a file can steer the terminal."""

from __future__ import annotations

import re

import pytest

from spotline.lint.engine.run import Fault
from spotline.lint.findings.finding import Finding, Related
from spotline.lint.project.results import Review
from spotline.lint.reporters.cards import MOST_LINES, cards
from spotline.lint.text.places import Text
from spotline.tests.reporters.builders import finding, place, reviewed

LONG = " ".join(["twelve sets for the hamstrings and nothing bends the knee"] * 8)


def card_lines(
    *findings: Finding, width: int = 80, bold: bool = False, faults: tuple[Fault, ...] = ()
) -> list[str]:
    return list(cards(Review([reviewed(*findings, faults=faults)]), width, bold=bold))


def test_the_whole_card() -> None:
    related = (
        Related(place(words="back squat"), "Lower, back squat: 30 sets"),
        Related(place("mara.athlete.yaml", "Test"), "best lift on file"),
    )
    assert card_lines(finding(weeks=(1, 2), related=related)) == [
        "a.programme.yaml",
        "",
        "Warning: number-implausible",
        "  place    line 4, column 46: Lower, back squat",
        "           « exercises: [{exercise: back squat, sets: 30}] »",
        "  counted  Weeks 1-2: 30 sets in one line.",
        "           · Lower, back squat: 30 sets (line 4)",
        "           · best lift on file (mara.athlete.yaml, line 1)",
        "  wanted   at most 12 sets",
        "  why      Numbers like these are nearly always slips of the pen.",
        "           Ground: common practice (no source).",
        "  change   If it is a slip, correct it.",
        "",
        "Reviewed 1 programme: 1 warning. Blocked.",
    ]


def test_sources_are_named_and_common_practice_is_none() -> None:
    one = finding(sources=("zourdos-2016", "cp-cap"), confidence="model")
    (ground,) = [line for line in card_lines(one, width=110) if "Ground" in line]
    assert ground.strip().startswith("Ground: model (Zourdos and others 2016")
    assert "common practice" not in ground


def test_without_a_wish_or_a_reason() -> None:
    shown = card_lines(finding(wanted="", where="", why=""))
    assert "  found    30 sets in one line." in shown
    assert "  place    line 4, column 46" in shown
    assert not any(line.startswith(("  wanted", "  why")) for line in shown)


def test_where_an_alias_uses_it() -> None:
    one = finding(at=place().reached((place(words="Lower"),)))
    assert "           used on line 3 by Lower" in card_lines(one)


def test_a_file_of_which_nothing_is_said_has_no_card() -> None:
    assert card_lines() == ["Reviewed 1 programme: nothing found. Nothing blocks."]


@pytest.mark.parametrize("width", [41, 60, 72, 80, 96, 110])
def test_they_fit_the_width(width: int) -> None:
    related = tuple(Related(place(), LONG) for _ in range(3))
    weeks = tuple(range(1, 40, 2))
    one = finding(LONG, wanted=LONG, change=LONG, where=LONG, related=related, weeks=weeks, why=LONG)
    shown = card_lines(one, width=width, faults=(Fault("a-rule", LONG),))
    assert all(len(line) <= width for line in shown[:-1])
    assert all(line == line.rstrip() for line in shown)
    assert " ".join(LONG.split()[:6]) in re.sub(r"\s+", " ", " ".join(shown))


def test_a_word_without_end_is_broken() -> None:
    assert all(len(line) <= 60 for line in card_lines(finding("x" * 500), width=60))


def test_nothing_is_lost_in_wrapping() -> None:
    words = " ".join(str(number) for number in range(300))
    joined = " ".join(line.strip() for line in card_lines(finding(words), width=60))
    assert words in joined


@pytest.mark.parametrize(
    ("count", "listed", "more"),
    [(1, 1, None), (12, 12, None), (13, 12, "and 1 more"), (40, 12, "and 28 more")],
)
def test_at_most_twelve_lines_are_listed(count: int, listed: int, more: str | None) -> None:
    assert MOST_LINES == 12
    shown = card_lines(
        finding(related=tuple(Related(place(), f"line number {number}") for number in range(count)))
    )
    assert sum("line number" in line for line in shown) == listed
    assert [line.strip() for line in shown if "more" in line] == ([f"· {more}"] if more else [])


@pytest.mark.parametrize("bold", [True, False])
def test_bold_only_where_asked_for(bold: bool) -> None:
    shown = card_lines(finding(), bold=bold)
    assert [line for line in shown if "\x1b" in line] == (
        ["\x1b[1ma.programme.yaml\x1b[0m", "\x1b[1mWarning: number-implausible\x1b[0m"] if bold else []
    )


@pytest.mark.parametrize("nasty", ["a\nb", "\x1b[31m", "\u202e", "\r", "\u2028", "\x9b"])
def test_words_of_a_file_cannot_steer_the_terminal(nasty: str) -> None:
    one = finding(
        f"`{nasty}`",
        wanted=nasty,
        change=nasty,
        where=nasty,
        related=(Related(place(f"{nasty}.yaml"), nasty),),
        name=f"{nasty}.yaml",
    )
    whole = Review([reviewed(one, name=f"{nasty}.yaml", faults=(Fault("a-rule", nasty),))])
    for line in cards(whole, 80, bold=False):
        assert line.isprintable(), line


def test_a_long_line_of_the_file_is_cut() -> None:
    text = Text("a.programme.yaml", "note: " + "x" * 1000)
    one = finding(at=text.place(0, 4))
    quoted = "".join(line.strip() for line in card_lines(one, width=110) if "xxx" in line)
    assert quoted.endswith("... »")
    assert len(quoted) < 130


def test_a_rule_that_failed() -> None:
    shown = card_lines(faults=(Fault("a-rule", "ValueError: bad"),))
    assert "  failed   The rule a-rule failed on a.programme.yaml: ValueError: bad" in shown
