"""A sheet in its forms: what they hold alike, and words that mean something to each form."""

from __future__ import annotations

import csv
import re
from datetime import date
from html import escape
from html.parser import HTMLParser
from io import StringIO
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.body import catalogue
from spotline.lint.reporters import SHEET, sheet_csv, sheet_html, sheet_markdown, text_as
from spotline.lint.sheets.request import sheets
from spotline.lint.sheets.seal import is_untouched
from spotline.lint.sheets.sheet import CAUTION, Sheet

TODAY = date(2026, 1, 5)

HOSTILE = """\
programme: "<script>alert(1)</script> *A* [x](y)"
athlete: {name: "=HYPERLINK('x')"}
sessions:
  - session: "+A </section> | b"
    note: "@here & \\u202e \\x07"
    exercises:
      - {exercise: "-squat <img src=x onerror=y>", sets: 2, reps: 5, note: "__all__ `x`"}
      - {exercise: "=1+1 curl", sets: 2}
      - {exercise: back squat, sets: 2, reps: 5, note: "\\"' style=x"}
"""


def sheet_of(path: Path, text: str) -> Sheet:
    (path / ".git").mkdir(exist_ok=True)
    (path / "a.programme.yaml").write_text(text, encoding="utf-8")
    return sheets(str(path / "a.programme.yaml"), TODAY)[0]


@pytest.fixture
def hostile(tmp_path: Path) -> Sheet:
    return sheet_of(tmp_path, HOSTILE)


@pytest.fixture(scope="module")
def examples() -> list[Sheet]:
    folder = Path(__file__).parent.parent.parent / "examples" / "programmes"
    return [one for path in sorted(folder.iterdir()) for one in sheets(str(path), TODAY)]


def coachs_words(sheet: Sheet) -> set[str]:
    """What the coach has called things, and the caution, which may name a part of the body."""
    sessions = [session for week in sheet.weeks for session in week.sessions]
    lines = [line for session in sessions for line in session.lines]
    notes = {one.note for one in (*sessions, *lines, *(item for one in sessions for item in one.items))}
    names = {sheet.title, CAUTION, *filter(None, notes), *(session.name for session in sessions)}
    return (
        names
        | set(filter(None, [sheet.stop]))
        | {line.exercise for line in lines}
        | {line.instead for line in lines if line.instead}
    )


class Parsed(HTMLParser):
    """The elements, their attributes and the words of a page."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.attributes: list[tuple[str, str | None]] = []
        self.words = ""
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes += attrs

    def handle_data(self, data: str) -> None:
        self.words += data


def rows(text: str) -> list[dict[str, str]]:
    return list(csv.DictReader(StringIO(text.removeprefix("\ufeff"), newline="")))


@pytest.mark.parametrize("form", SHEET)
def test_every_form_is_sealed_and_printed_as_it_is_written(
    form: str, hostile: Sheet, capsys: pytest.CaptureFixture[str]
) -> None:
    text = text_as(form, SHEET, hostile)
    assert is_untouched(text)
    assert not is_untouched(text + " ")
    {"html": sheet_html, "markdown": sheet_markdown, "csv": sheet_csv}[form].report(hostile)
    assert capsys.readouterr().out == text.replace("\r\n", "\n") or form == "csv"


@pytest.mark.parametrize("form", SHEET)
def test_every_form_holds_each_session_and_line(form: str, examples: list[Sheet]) -> None:
    for sheet in examples:
        text = text_as(form, SHEET, sheet)
        for week in sheet.weeks:
            for session in week.sessions:
                assert session.name in text
                assert all(line.exercise.split("'")[0] in text for line in session.lines)


@pytest.mark.parametrize("form", ["html", "markdown"])
def test_the_caution_stands_on_every_page(form: str, examples: list[Sheet]) -> None:
    for sheet in examples:
        text = text_as(form, SHEET, sheet)
        pages = 1 + sum(len(week.sessions) for week in sheet.weeks) if form == "html" else 1
        assert text.count(CAUTION) == pages


@pytest.mark.parametrize("form", SHEET)
def test_no_muscle_and_no_finding_is_on_it(form: str, examples: list[Sheet]) -> None:
    """But where a coach's own words, the names of exercises and sessions, say one."""
    muscles = {name for name in (*catalogue.groups, *catalogue.credited) if len(name) > 4}
    for sheet in examples:
        text = text_as(form, SHEET, sheet)
        for words in sorted(coachs_words(sheet), key=len, reverse=True):
            text = text.replace(words, "").replace(escape(words), "")
        text = text.casefold()
        assert not {name for name in muscles if re.search(rf"\b{re.escape(name)}\b", text)}
        assert not re.search(r"\b(warning|error|finding|wanted|counted as)\b", text)


class TestHtml:
    def test_words_stay_words(self, hostile: Sheet) -> None:
        page = Parsed(sheet_html.text(hostile))
        assert not {"script", "img"} & set(page.tags)
        assert not [name for name, _ in page.attributes if name.startswith("on") or name in ("src",)]
        assert "-squat <img src=x onerror=y>" in page.words
        assert "@here & \\u202e \\u0007" in page.words
        assert page.tags.count("section") == 2

    def test_it_asks_for_nothing(self, examples: list[Sheet]) -> None:
        for sheet in examples:
            page = Parsed(sheet_html.text(sheet))
            links = [value for name, value in page.attributes if name in ("href", "src", "action", "data")]
            assert all(value and value.startswith("#") for value in links)
            assert not re.search(r"url\(|@import|http:|https:", sheet_html.text(sheet))
            names = {value for name, value in page.attributes if name == "id"}
            assert {value[1:] for value in links if value} == names

    def test_every_session_leads_back_to_the_weeks(self, examples: list[Sheet]) -> None:
        for sheet in examples:
            page = sheet_html.text(sheet)
            assert page.count('<a href="#weeks">') == sum(len(week.sessions) for week in sheet.weeks)
            assert page.count('id="weeks"') == 1

    def test_no_line_begins_with_a_dot_or_a_unit(self, examples: list[Sheet]) -> None:
        for sheet in examples:
            doses = re.findall('<p class="dose">(.*?)</p>', sheet_html.text(sheet))
            assert doses
            assert [dose for dose in doses if " ·" in dose or re.search(r"\d (kg|lb|%|s|min)\b", dose)] == []

    def test_a_box_for_every_set_and_dashed_ones_for_those_that_may_be(self, tmp_path: Path) -> None:
        line = "{exercise: push-up, sets: 3-4, reps: 8}"
        text = f"programme: A\nsessions: [{{session: A, exercises: [{line}]}}]\n"
        page = sheet_html.text(sheet_of(tmp_path, text))
        assert page.count('<li class="set">') == 3
        assert page.count('<li class="set spare">') == 1

    def test_many_sets_get_one_row(self, tmp_path: Path) -> None:
        text = "programme: A\nsessions: [{session: A, exercises: [{exercise: push-up, sets: 10, reps: 3}]}]\n"
        assert sheet_html.text(sheet_of(tmp_path, text)).count('<li class="set">') == 1


class TestMarkdown:
    def test_words_make_no_mark(self, hostile: Sheet) -> None:
        text = sheet_markdown.text(hostile)
        assert "\\<script\\>alert(1)\\</script\\> \\*A\\* \\[x\\](y)" in text
        assert "### \\+A \\</section\\> \\| b" in text
        assert "\\_\\_all\\_\\_ \\`x\\`" in text
        assert "\x07" not in text

    @given(words=st.text(st.characters(codec="utf-8", exclude_categories=["Cc", "Cs"]), max_size=30))
    def test_no_mark_stands_bare(self, words: str) -> None:
        plain = sheet_markdown.plain(words)
        assert not re.search(r"(?<!\\)(?:\\\\)*[*_`<>|\[\]#]", plain)
        assert re.sub(r"\\([\\`*_{}\[\]<>#|~&.)+=-])", r"\1", plain) == words

    @pytest.mark.parametrize(
        ("words", "shown"),
        [("3. set", "3\\. set"), ("- a", "\\- a"), ("3-4 sets", "3-4 sets"), ("+5 kg", "\\+5 kg")],
    )
    def test_no_list_begins(self, words: str, shown: str) -> None:
        assert sheet_markdown.plain(words) == shown


class TestCsv:
    def test_a_row_a_set_and_a_day(self, tmp_path: Path) -> None:
        text = (
            "programme: A\nstarts: 2026-01-05\nathlete: {name: Bo, best lifts: {back squat: 100 kg}}\n"
            "sessions: [{session: A, day: [monday, friday], exercises: [\n"
            "  {exercise: back squat, sets: 2-3, reps: 8/6/4, load: 60/70/77 %}]}]\n"
        )
        found = rows(sheet_csv.text(sheet_of(tmp_path, text)))
        assert [row["date"] for row in found] == ["2026-01-05"] * 3 + ["2026-01-09"] * 3
        assert [row["repetitions or time"] for row in found[:3]] == ["8", "6", "4"]
        assert [row["weight"] for row in found[:3]] == ["60", "70", "75"]
        assert [row["set"] for row in found[:3]] == ["1", "2", "3 (if you do it)"]
        assert {row["done: RIR or RPE"] for row in found} == {""}

    def test_no_cell_is_a_formula(self, hostile: Sheet) -> None:
        cells = [
            cell
            for row in csv.reader(StringIO(sheet_csv.text(hostile).removeprefix("\ufeff")))
            for cell in row
        ]
        assert not [cell for cell in cells if cell[:1] in tuple("=+-@\t\r")]
        assert {"'=HYPERLINK('x')", "'+A </section> | b", "'=1+1 curl"} <= set(cells)
        assert "'-squat <img src=x onerror=y>" in cells

    @given(words=st.text(max_size=20))
    def test_no_words_are(self, words: str) -> None:
        found = sheet_csv.cell(words)
        assert found.lstrip()[:1] not in tuple("=+-@＝＋－＠")
        assert found.removeprefix("'") == words.removeprefix("'")

    def test_pain_has_columns_in_rehabilitation_only(self, examples: list[Sheet]) -> None:
        with_pain = [one.athlete for one in examples if "pain during 0-10" in sheet_csv.text(one)]
        assert with_pain == ["Kester"]
