"""Findings on the wire: where they point, what they say, and what is left out for clients that cannot show it."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from lsprotocol import converters, types
from lsprotocol.types import DiagnosticSeverity

from spotline.lint.editor.documents.conversion import ProtocolConverter
from spotline.lint.editor.documents.open_documents import OpenDocuments
from spotline.lint.editor.documents.snapshot import underlined
from spotline.lint.editor.features.diagnostics import diagnostics
from spotline.lint.editor.protocol.client import Client
from spotline.lint.reporters.sentences import sentence_by_the_line

Said = Callable[..., list[types.Diagnostic]]

CONVERTER = converters.get_converter()


def client(**said: object) -> Client:
    """A client that has announced this of its diagnostics."""
    announced = {"textDocument": {"publishDiagnostics": said}}
    return Client(CONVERTER.structure(announced, types.ClientCapabilities))


EVERYTHING = {
    "relatedInformation": True,
    "tagSupport": {"valueSet": [1, 2]},
    "codeDescriptionSupport": True,
    "versionSupport": True,
    "dataSupport": True,
}


@pytest.fixture
def said(tmp_path: Path) -> Said:
    """What a client is told of a programme's text, with further files beside it."""
    (tmp_path / ".git").mkdir()

    def run(
        text: str, files: dict[str, str] | None = None, able: Client | None = None, encoding: str = "utf-16"
    ) -> list[types.Diagnostic]:
        for name, content in (files or {}).items():
            (tmp_path / name).write_text(content, encoding="utf-8")
        documents = OpenDocuments(print)
        documents.encoding = encoding  # type: ignore[assignment]
        uri = (tmp_path / "plan.programme.yaml").as_uri()
        documents.open(uri, 1, text)
        snapshot = documents.snapshot(uri)
        assert snapshot is not None
        able = able or client(**EVERYTHING)
        found = diagnostics(snapshot, able, ProtocolConverter(documents, documents.by_uri[uri], able))
        assert [one.code for one in found] == [one.rule for one in snapshot.review.findings]
        assert all(
            one.message.startswith(sentence_by_the_line(of))
            for one, of in zip(found, snapshot.review.findings, strict=True)
        )
        return found

    return run


def only(found: list[types.Diagnostic], rule: str) -> types.Diagnostic:
    (one,) = [one for one in found if one.code == rule]
    return one


def span(one: types.Diagnostic) -> tuple[int, int, int, int]:
    return one.range.start.line, one.range.start.character, one.range.end.line, one.range.end.character


PLAN = """\
programme: Test
focus: [legs]
sessions:
  - session: One
    exercises:
      - {note: 😀, exercise: back sqat, sets: 3, reps: 5}
      - {exercise: back squat, sets: 8, reps: 5}
      - {exercise: back squat, sets: 9, reps: 5}
"""


@pytest.mark.parametrize(("encoding", "start"), [("utf-8", 31), ("utf-16", 29), ("utf-32", 28)])
def test_the_range_counts_in_the_units_agreed_on(said: Said, encoding: str, start: int) -> None:
    assert span(only(said(PLAN, encoding=encoding), "exercise-unknown")) == (5, start, 5, start + 9)


def test_the_byte_order_mark_is_a_character_of_the_first_line(said: Said) -> None:
    assert span(only(said("\ufeffprogramm: A\nsessions: []\n"), "key-unknown"))[:2] == (0, 1)


def test_severities_and_source(said: Said) -> None:
    found = said(PLAN + "xyzzy: 1\n")
    assert only(found, "key-unknown").severity == DiagnosticSeverity.Error
    assert only(found, "exercise-unknown").severity == DiagnosticSeverity.Warning
    noted = said("programme: A\nshared: {a: &a 1}\nsessions: [{session: B, exercises: []}]\n")
    assert only(noted, "anchor-unused").severity == DiagnosticSeverity.Information
    assert {one.source for one in found} == {"spotline"}


def test_what_was_counted_stands_beside(said: Said) -> None:
    one = only(said(PLAN), "exercise-sets-high")
    assert one.related_information is not None
    lines = [info.location.range.start.line for info in one.related_information]
    assert lines == [7, 6, 7]  # what follows from it comes first
    assert one.related_information[0].message.startswith("session-sets-for-muscle-high, too: ")
    assert one.related_information[1].message == "One, back squat: 8 sets"
    assert one.related_information[0].location.uri.endswith("/plan.programme.yaml")


def test_places_in_other_files_have_their_own_address(said: Said, tmp_path: Path) -> None:
    text = PLAN.replace("focus:", "athlete: ann.athlete.yaml\nfocus:")
    one = only(said(text, {"ann.athlete.yaml": "name: Ann\nxyzzy: [\n"}), "athlete-unreadable")
    assert one.related_information is not None
    (info,) = one.related_information
    assert info.location.uri == (tmp_path / "ann.athlete.yaml").as_uri()
    assert info.location.range.start.line == 2


def test_words_reached_by_an_alias_are_underlined_where_they_stand(said: Said) -> None:
    text = "programme: A\nshared: {x: &x {exercise: xyzzy, sets: 3}}\nsessions:\n  - session: B\n    exercises: [*x, {exercise: plank, sets: 10}]\n"
    one = only(said(text), "exercise-unknown")
    assert span(one) == (1, 26, 1, 31)
    assert one.related_information is not None
    info = one.related_information[0]
    assert (info.message, info.location.range.start.line) == ("used here by *x", 4)


def test_a_finding_is_short_its_ground_stands_on_the_rules_page(said: Said) -> None:
    for one in said(PLAN):
        assert "Ground: " not in one.message
        assert "\n" not in one.message


def test_what_can_go_is_faded(said: Said) -> None:
    text = "programme: A\nshared: {a: &a 1}\nsessions: [{session: B, exercises: []}]\n"
    assert only(said(text), "anchor-unused").tags == [types.DiagnosticTag.Unnecessary]
    assert only(said(PLAN), "exercise-unknown").tags is None


def test_the_rule_is_linked_only_where_the_team_keeps_pages(said: Said) -> None:
    assert only(said(PLAN), "exercise-unknown").code_description is None
    found = said(PLAN, {"spotline.yaml": "rule pages: https://pages.example/rules/\n"})
    link = only(found, "exercise-unknown").code_description
    assert link is not None
    assert link.href == "https://pages.example/rules/exercise-unknown"


def test_a_client_that_announces_nothing_is_sent_nothing_more(said: Said) -> None:
    found = said(
        PLAN + "shared: {a: &a 1}\n", {"spotline.yaml": "rule pages: https://pages.example/\n"}, client()
    )
    assert len(found) > 2
    for one in found:
        assert one.related_information is None
        assert one.tags is None
        assert one.code_description is None
        assert one.data is None


def test_the_place_in_words_comes_along(said: Said) -> None:
    assert only(said(PLAN), "exercise-unknown").data == {"where": "One"}


@pytest.mark.parametrize(
    ("content", "start", "end", "expected"),
    [
        ("abc", 1, 2, (1, 2)),
        ("abc", 1, 1, (1, 2)),
        ("abc\n", 3, 3, (2, 3)),
        ("abc\r\n", 3, 3, (2, 3)),
        ("\n\nabc", 1, 1, (1, 1)),
        ("", 0, 0, (0, 0)),
        ("abc", 7, 9, (2, 3)),
        ("abc", -2, 1, (0, 1)),
        ("abc", 2, 1, (2, 3)),
    ],
)
def test_something_is_underlined_where_it_can_be(
    content: str, start: int, end: int, expected: tuple[int, int]
) -> None:
    assert underlined(content, start, end) == expected
