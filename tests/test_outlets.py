"""Lines and cards: what they say, how it fits, and that no text from a file can pass for anything else."""

from __future__ import annotations

import json
import re
from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spotline.lint.engine.run import Fault
from spotline.lint.findings.finding import Finding, Related
from spotline.lint.project.results import FileReview, Review
from spotline.lint.reporters.cards import MOST_LINES, cards
from spotline.lint.reporters.lines import lines
from spotline.lint.reporters.review_json import review_json
from spotline.lint.reporters.sentences import (
    closing,
    counted,
    ground,
    sentence,
    sentence_by_the_line,
    statement,
)
from spotline.lint.team.settings import Team
from spotline.lint.text.places import Place, Text
from spotline.lint.text.repository import FileResolver
from spotline.lint.wording.printable import safe
from spotline.lint.wording.words import counted_noun, week_list

if TYPE_CHECKING:
    from spotline.lint.findings.finding import Confidence, Severity

CONTENT = (
    "programme: Test\nsessions:\n  - session: Lower\n    exercises: [{exercise: back squat, sets: 30}]\n"
)
LONG = " ".join(["twelve sets for the hamstrings and nothing bends the knee"] * 8)


def place(name: str = "a.programme.yaml", words: str = "30") -> Place:
    start = CONTENT.index(words)
    return Text(name, CONTENT).place(start, start + len(words))


def finding(
    counted: str = "30 sets in one line.",
    *,
    severity: Severity = "warning",
    name: str = "a.programme.yaml",
    wanted: str = "at most 12 sets",
    change: str = "If it is a slip, correct it.",
    where: str = "Lower, back squat",
    related: tuple[Related, ...] = (),
    weeks: tuple[int, ...] = (),
    at: Place | None = None,
    why: str = "Numbers like these are nearly always slips of the pen.",
    sources: tuple[str, ...] = (),
    confidence: Confidence = "common practice",
    athletes: tuple[str, ...] = (),
) -> Finding:
    return Finding(
        "number-implausible",
        severity,
        at or place(name),
        counted,
        wanted=wanted,
        change=change,
        where=where,
        related=related,
        weeks=weeks,
        why=why,
        sources=sources,
        confidence=confidence,
        athletes=athletes,
    )


def reviewed(
    *findings: Finding,
    name: str = "a.programme.yaml",
    faults: tuple[Fault, ...] = (),
) -> FileReview:
    one = FileReview(FileResolver().file(name), Team())
    one.findings = list(findings)
    one.faults = list(faults)
    return one


class TestSafe:
    @pytest.mark.parametrize(
        "words", ["", "12 sets", "größe", "深蹲", "3–4", "“quoted”", "a\\b", "½ m²", "💪"]
    )
    def test_ordinary_text_stays(self, words: str) -> None:
        assert safe(words) == words

    @pytest.mark.parametrize(
        ("words", "spelled"),
        [
            ("a\nb", "a\\u000ab"),
            ("a\rb", "a\\u000db"),
            ("a\tb", "a\\u0009b"),
            ("a\0b", "a\\u0000b"),
            ("\x1b[31mred", "\\u001b[31mred"),
            ("\x9b31m", "\\u009b31m"),  # the one-letter start of an escape
            ("a\x7fb", "a\\u007fb"),
            ("a\u2028b", "a\\u2028b"),  # line separator
            ("a\u0085b", "a\\u0085b"),  # next line
            ("a\u202eb", "a\\u202eb"),  # right to left from here
            ("a\u2066b\u2069", "a\\u2066b\\u2069"),
            ("a\u200fb", "a\\u200fb"),
            ("a\u061cb", "a\\u061cb"),
            ("a\u200bb", "a\\u200bb"),  # no width
            ("\ufeffa", "\\ufeffa"),
            ("a\udcf6b", "a\\udcf6b"),  # a byte that is not UTF-8
        ],
    )
    def test_what_steers_a_terminal_or_forges_a_line_is_spelled_out(self, words: str, spelled: str) -> None:
        assert safe(words) == spelled

    @settings(max_examples=200)
    @given(st.text(st.characters(), max_size=20))
    def test_one_line_comes_out_of_anything(self, words: str) -> None:
        out = safe(words)
        assert len(out.splitlines()) <= 1
        assert out.isprintable()
        assert safe(out) == out


class TestWording:
    @pytest.mark.parametrize(
        ("weeks", "words"),
        [
            ((3,), "Week 3"),
            ((1, 2, 3), "Weeks 1-3"),
            ((1, 2, 4, 6, 7), "Weeks 1-2, 4, 6-7"),
            ((1, 3), "Weeks 1, 3"),
        ],
    )
    def test_weeks(self, weeks: tuple[int, ...], words: str) -> None:
        assert week_list(weeks) == words.lower()
        assert counted(finding(weeks=weeks)) == f"{words}: 30 sets in one line."

    def test_no_weeks(self) -> None:
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
    def test_athletes(self, athletes: tuple[str, ...], words: str) -> None:
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
    def test_a_sentence(self, wanted: str, change: str, words: str) -> None:
        assert sentence(finding(wanted=wanted, change=change)) == words

    @pytest.mark.parametrize(("number", "words"), [(0, "0 notes"), (1, "1 note"), (2, "2 notes")])
    def test_many(self, number: int, words: str) -> None:
        assert counted_noun(number, "note") == words

    def test_a_reference_is_named_once_as_ground(self) -> None:
        sources = ("pelland-2026-min", "pelland-2026-frac", "kubo-2019")
        words = ground(finding(confidence="trial", sources=sources))
        assert words.count("Pelland and others 2026") == 1
        assert "Kubo and others 2019" in words


class TestClosing:
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
    def test_it_sums_up(self, files: list[FileReview], words: str) -> None:
        assert closing(Review(files)) == words


class TestLines:
    def test_the_form(self) -> None:
        (line,) = lines(Review([reviewed(finding(weeks=(1, 2)))]))
        assert line == (
            "a.programme.yaml:4:46: warning: number-implausible: Weeks 1-2: 30 sets in one line."
            " Wanted: at most 12 sets. If it is a slip, correct it."
        )

    def test_a_rule_that_failed(self) -> None:
        (line,) = lines(Review([reviewed(faults=(Fault("a-rule", "ValueError: bad\nworse"),))]))
        assert line == "a.programme.yaml:1:1: error: rule-failed: a-rule failed: ValueError: bad\\u000aworse"

    def test_file_by_file(self) -> None:
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
    def test_names_of_files(self, name: str, shown: str) -> None:
        (line,) = lines(Review([reviewed(finding(name=name), name=name)]))
        assert line.startswith(f"{shown}:4:46: warning: ")

    @pytest.mark.parametrize("nasty", ["a\nb.yaml:1:1: error: forged", "\x1b[31m", "\u202e", "\r", "\u2028"])
    def test_words_of_a_file_cannot_forge_a_line(self, nasty: str) -> None:
        whole = Review([reviewed(finding(f"`{nasty}` is not known.", wanted=nasty, change=nasty))])
        (line,) = lines(whole)
        assert line.isprintable()
        assert len(line.splitlines()) == 1


class TestCards:
    def shown(
        self, *findings: Finding, width: int = 80, bold: bool = False, faults: tuple[Fault, ...] = ()
    ) -> list[str]:
        return list(cards(Review([reviewed(*findings, faults=faults)]), width, bold=bold))

    def test_the_whole_card(self) -> None:
        related = (
            Related(place(words="back squat"), "Lower, back squat: 30 sets"),
            Related(place("mara.athlete.yaml", "Test"), "best lift on file"),
        )
        assert self.shown(finding(weeks=(1, 2), related=related)) == [
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

    def test_sources_are_named_and_common_practice_is_none(self) -> None:
        one = finding(sources=("zourdos-2016", "cp-cap"), confidence="trial")
        (ground,) = [line for line in self.shown(one, width=110) if "Ground" in line]
        assert ground.strip().startswith("Ground: trial (Zourdos and others 2016")
        assert "common practice" not in ground

    def test_without_a_wish_or_a_reason(self) -> None:
        shown = self.shown(finding(wanted="", where="", why=""))
        assert "  found    30 sets in one line." in shown
        assert "  place    line 4, column 46" in shown
        assert not any(line.startswith(("  wanted", "  why")) for line in shown)

    def test_where_an_alias_uses_it(self) -> None:
        one = finding(at=place().reached((place(words="Lower"),)))
        assert "           used on line 3 by Lower" in self.shown(one)

    def test_a_file_of_which_nothing_is_said_has_no_card(self) -> None:
        assert self.shown() == ["Reviewed 1 programme: nothing found. Nothing blocks."]

    @pytest.mark.parametrize("width", [41, 60, 72, 80, 96, 110])
    def test_they_fit_the_width(self, width: int) -> None:
        related = tuple(Related(place(), LONG) for _ in range(3))
        one = finding(
            LONG,
            wanted=LONG,
            change=LONG,
            where=LONG,
            related=related,
            weeks=tuple(range(1, 40, 2)),
            why=LONG,
        )
        shown = self.shown(one, width=width, faults=(Fault("a-rule", LONG),))
        assert all(len(line) <= width for line in shown[:-1])
        assert all(line == line.rstrip() for line in shown)
        assert " ".join(LONG.split()[:6]) in re.sub(r"\s+", " ", " ".join(shown))

    def test_a_word_without_end_is_broken(self) -> None:
        assert all(len(line) <= 60 for line in self.shown(finding("x" * 500), width=60))

    def test_nothing_is_lost_in_wrapping(self) -> None:
        words = " ".join(str(number) for number in range(300))
        joined = " ".join(line.strip() for line in self.shown(finding(words), width=60))
        assert words in joined

    @pytest.mark.parametrize(
        ("count", "listed", "more"),
        [(1, 1, None), (12, 12, None), (13, 12, "and 1 more"), (40, 12, "and 28 more")],
    )
    def test_at_most_twelve_lines_are_listed(self, count: int, listed: int, more: str | None) -> None:
        assert MOST_LINES == 12
        shown = self.shown(
            finding(related=tuple(Related(place(), f"line number {number}") for number in range(count)))
        )
        assert sum("line number" in line for line in shown) == listed
        assert [line.strip() for line in shown if "more" in line] == ([f"· {more}"] if more else [])

    @pytest.mark.parametrize("bold", [True, False])
    def test_bold_only_where_asked_for(self, bold: bool) -> None:
        shown = self.shown(finding(), bold=bold)
        assert [line for line in shown if "\x1b" in line] == (
            ["\x1b[1ma.programme.yaml\x1b[0m", "\x1b[1mWarning: number-implausible\x1b[0m"] if bold else []
        )

    @pytest.mark.parametrize("nasty", ["a\nb", "\x1b[31m", "\u202e", "\r", "\u2028", "\x9b"])
    def test_words_of_a_file_cannot_steer_the_terminal(self, nasty: str) -> None:
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

    def test_a_long_line_of_the_file_is_cut(self) -> None:
        text = Text("a.programme.yaml", "note: " + "x" * 1000)
        one = finding(at=text.place(0, 4))
        quoted = "".join(line.strip() for line in self.shown(one, width=110) if "xxx" in line)
        assert quoted.endswith("... »")
        assert len(quoted) < 130

    def test_a_rule_that_failed(self) -> None:
        shown = self.shown(faults=(Fault("a-rule", "ValueError: bad"),))
        assert "  failed   The rule a-rule failed on a.programme.yaml: ValueError: bad" in shown


class TestJson:
    def test_every_character_is_plain(self) -> None:
        text = review_json(Review([reviewed(finding("größe \u202e \x1b \udcf6"))]))
        assert text.isascii()
        assert "\x1b" not in text

    def test_an_end_stands_just_past_the_last_character(self) -> None:
        text = review_json(Review([reviewed(finding())]))
        assert '"line": 4,\n      "column": 46,\n      "end line": 4,\n      "end column": 48,' in text
