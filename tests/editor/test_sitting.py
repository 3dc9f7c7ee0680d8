"""A sitting: what is reviewed, when it is reviewed again, and what is remembered of a text that was sound."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.editor.documents.open_documents import OpenDocument, OpenDocuments
from spotline.lint.editor.documents.view import View, carried, whole
from spotline.lint.editor.features.fixes import fixes
from spotline.lint.editor.protocol.uris import name_in, path_of, uri_of

PLAN = """\
programme: Legs
athlete: orla.athlete.yaml
goal: hypertrophy
focus: [legs]
starts: 2026-01-05
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: 3, reps: 8, load: 150 kg}
"""

ATHLETE = "name: Orla\nlevel: intermediate\nbest lifts: {back squat: 100 kg}\n"


class Table:
    """A folder with a sitting at it, and the days and words that the sitting sees."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.day = date(2026, 1, 5)
        self.log: list[str] = []
        self.documents = OpenDocuments(self.log.append, lambda: self.day)
        self.documents.home = str(folder)

    def uri(self, name: str) -> str:
        return (self.folder / name).as_uri()

    def write(self, name: str, text: str) -> str:
        (self.folder / name).write_text(text, encoding="utf-8")
        return self.uri(name)

    def open(self, name: str, text: str) -> View:
        self.documents.open(self.uri(name), 1, text)
        return self.view(name)

    def become(self, name: str, text: str) -> View:
        self.documents.change(self.uri(name), 2, [(None, text)])
        return self.view(name)

    def view(self, name: str) -> View:
        view = self.documents.view(self.uri(name))
        assert view is not None
        return view

    def told(self) -> list[str]:
        """Reviews all that waits, as the client would be told of it."""
        names = []
        while waiting := self.documents.waiting():
            opened: OpenDocument = waiting[0]
            self.documents.reviewed(opened)
            opened.told = True
            names.append(opened.document.uri.rpartition("/")[2])
        return names


@pytest.fixture
def table(tmp_path: Path) -> Iterator[Table]:
    (tmp_path / ".git").mkdir()
    table = Table(tmp_path)
    yield table
    assert table.log == []


def rules(view: View) -> list[str]:
    return [finding.rule for finding in view.review.findings]


# What is ours


@pytest.mark.parametrize("name", ["a.programme.yaml", "a.athlete.yml", "a.exercises.yaml", "spotline.yaml"])
def test_files_of_ours_are_reviewed(table: Table, name: str) -> None:
    view = table.open(name, "xyzzy: 1\n")
    assert "key-unknown" in rules(view)
    assert view.path == str(table.folder / name)


def test_other_files_are_not(table: Table) -> None:
    table.documents.open(table.uri("notes.yaml"), 1, PLAN)
    assert table.documents.view(table.uri("notes.yaml")) is None
    assert table.documents.waiting() == []
    assert not table.documents.close(table.uri("notes.yaml"))


@pytest.mark.parametrize(
    ("uri", "text", "ours"),
    [
        ("untitled:Untitled-1", "programme: A\n", True),
        ("untitled:Untitled-1", "# mine\r\nprogramme:\r\n", True),
        ("untitled:Untitled-1", "a:\n  programme: A\n", False),
        ("untitled:Untitled-1", "programmes: A\n", False),
        ("untitled:/plans/plan.programme.yaml", "", True),
        ("memory://localhost/plan.athlete.yaml", "", True),
        ("xyzzy", "programme: A\n", True),
    ],
)
def test_texts_without_a_file(table: Table, uri: str, text: str, ours: bool) -> None:
    table.documents.open(uri, 1, text)
    view = table.documents.view(uri)
    assert (view is not None) == ours
    if view is not None:
        assert view.path == ""
        assert view.text.content == text


def test_a_text_becomes_ours_and_ceases_to_be(table: Table) -> None:
    uri = "untitled:1"
    table.documents.open(uri, 1, "")
    assert table.told() == []
    table.documents.change(uri, 2, [(None, "programme: A\nxyzzy: 1\n")])
    view = table.documents.view(uri)
    assert view is not None
    assert "key-unknown" in rules(view)
    table.documents.change(uri, 3, [(None, "shopping: list\n")])
    assert [opened.document.uri for opened in table.documents.waiting()] == [uri]
    assert table.told() == [uri]
    assert table.documents.view(uri) is None
    table.documents.change(uri, 4, [(None, "shopping: lists\n")])
    assert table.told() == []


def test_two_texts_without_a_file_are_two(table: Table) -> None:
    table.write("untitled-1.programme.yaml", "on: disk\n")
    for uri in ("untitled:untitled-1", "other:untitled-1"):
        table.documents.open(uri, 1, f"programme: {uri[0]}\n")
    names = {opened.name for opened in table.documents.documents.values()}
    assert len(names) == 2
    assert str(table.folder / "untitled-1.programme.yaml") not in names


def test_the_settings_of_the_folder_hold_for_a_text_without_a_file(table: Table) -> None:
    table.write("spotline.yaml", "rules: {athlete-missing-from-programme: run}\npreset: xyzzy\n")
    table.documents.open("untitled:1", 1, PLAN)
    view = table.documents.view("untitled:1")
    assert view is not None
    assert view.review.team.broken


# What leans on what


def test_a_change_of_the_athlete_changes_the_programme(table: Table) -> None:
    table.write("orla.athlete.yaml", ATHLETE)
    before = rules(table.open("a.programme.yaml", PLAN))
    table.open("orla.athlete.yaml", ATHLETE)
    table.told()
    table.become("orla.athlete.yaml", ATHLETE.replace("100 kg", "300 kg"))
    assert table.told() == ["orla.athlete.yaml", "a.programme.yaml"]
    assert rules(table.view("a.programme.yaml")) != before
    table.documents.close(table.uri("orla.athlete.yaml"))
    assert rules(table.view("a.programme.yaml")) == before


def test_the_review_of_the_athlete_leaves_that_of_the_programme_alone(table: Table) -> None:
    table.write("plan.programme.yaml", PLAN)
    table.write("orla.athlete.yaml", ATHLETE)
    table.open("orla.athlete.yaml", ATHLETE)
    table.open("plan.programme.yaml", PLAN)
    plan = table.become("plan.programme.yaml", f"{PLAN}# more\n")
    before = [(one.rule, one.place.text.name, one.place.start) for one in plan.review.findings]
    table.view("orla.athlete.yaml")  # which reviews the programmes that name her
    assert [(one.rule, one.place.text.name, one.place.start) for one in plan.review.findings] == before
    assert {name for _, name, _ in before} == {plan.text.name}
    titles = [fix.title for fix in fixes(plan, 0, len(PLAN))]
    assert "Waive number-implausible here, with a reason" in titles


def test_a_change_on_the_disk_is_noticed_by_itself(table: Table) -> None:
    table.open("a.programme.yaml", PLAN)
    assert "athlete-missing" in rules(table.view("a.programme.yaml"))
    table.write("orla.athlete.yaml", ATHLETE)
    table.documents.look()
    assert "athlete-missing" not in rules(table.view("a.programme.yaml"))
    (table.folder / "orla.athlete.yaml").unlink()
    table.documents.look()
    assert "athlete-missing" in rules(table.view("a.programme.yaml"))


def test_another_programme_of_the_athlete_is_reviewed_again(table: Table) -> None:
    table.write("orla.athlete.yaml", ATHLETE)
    for name in ("a.programme.yaml", "b.programme.yaml"):
        table.open(name, PLAN)
    table.open("c.programme.yaml", PLAN.replace("athlete: orla.athlete.yaml\n", ""))
    table.told()
    table.documents.change(table.uri("a.programme.yaml"), 2, [(None, PLAN.replace("monday", "tuesday"))])
    assert table.told() == ["a.programme.yaml", "b.programme.yaml"]
    table.documents.change(table.uri("c.programme.yaml"), 2, [(None, PLAN)])
    assert set(table.told()) == {"c.programme.yaml", "a.programme.yaml", "b.programme.yaml"}


def test_settings_typed_hold_at_once(table: Table) -> None:
    view = table.open("a.programme.yaml", PLAN.replace("back squat", "xyzzy"))
    assert "exercise-unknown" in rules(view)
    table.write("spotline.yaml", "rules: {exercise-unknown: warning}\n")
    table.open("spotline.yaml", "rules: {exercise-unknown: skip}\n")
    assert "exercise-unknown" not in rules(table.view("a.programme.yaml"))
    table.documents.close(table.uri("spotline.yaml"))
    assert "exercise-unknown" in rules(table.view("a.programme.yaml"))


def test_a_new_day_is_a_new_review(table: Table) -> None:
    plan = PLAN.replace("athlete: orla.athlete.yaml\n", "").replace("exercises:", "exercises:  # W")
    plan = plan.replace("# W", "# spotline: waive exercise-unknown until 2026-01-05 because new")
    plan = plan.replace("back squat", "xyzzy")
    before = rules(table.open("a.programme.yaml", plan))
    table.told()
    table.day += timedelta(days=1)
    after = rules(table.view("a.programme.yaml"))
    assert "waiver-expired" not in before
    assert "waiver-expired" in after


# What the client does wrong


def test_a_change_to_a_document_that_is_not_open(table: Table) -> None:
    table.documents.change("file:///x.programme.yaml", 2, [(None, PLAN)])
    assert table.log == ["a change to a document that is not open: file:///x.programme.yaml"]
    table.log.clear()
    assert table.documents.view("file:///x.programme.yaml") is None


def test_a_document_opened_twice_is_the_later_one(table: Table) -> None:
    table.open("a.programme.yaml", PLAN)
    view = table.open("a.programme.yaml", "programme: B\nxyzzy: 1\n")
    assert "key-unknown" in rules(view)
    assert len(table.documents.documents) == 1


def test_a_file_open_under_two_addresses_is_open_until_both_are_closed(table: Table) -> None:
    table.write("a.programme.yaml", PLAN)
    (table.folder / "b.programme.yaml").symlink_to("a.programme.yaml")
    for name in ("a.programme.yaml", "b.programme.yaml"):
        table.open(name, PLAN.replace("goal", "goaal"))
    table.documents.close(table.uri("a.programme.yaml"))
    assert "key-unknown" in rules(table.view("b.programme.yaml"))


def test_a_failure_of_ours_is_told_to_the_log(table: Table, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(*_: object) -> None:
        raise RuntimeError("no\nluck")

    monkeypatch.setattr("spotline.lint.editor.documents.open_documents.review_on", fail)
    view = table.open("a.programme.yaml", PLAN)
    assert view.review.findings == []
    assert "RuntimeError" in table.log[0]
    table.log.clear()


# What is remembered


def test_the_last_good_review_outlives_a_broken_text(table: Table) -> None:
    good = table.open("c.programme.yaml", PLAN).review
    assert table.view("c.programme.yaml").good is good
    broken = PLAN.replace("day: monday", "day: [monday")
    view = table.become("c.programme.yaml", broken)
    assert view.review is not good
    assert view.good is good
    assert view.review.ledgers == []
    assert len(view.review.findings) == 1
    again = table.become("c.programme.yaml", PLAN)
    assert again.good is again.review


def test_there_is_no_good_review_before_the_first(table: Table) -> None:
    assert table.open("a.programme.yaml", "programme: [\n").good is None
    assert table.view("a.programme.yaml").moved(0) is None


def test_offsets_move_through_several_edits(table: Table) -> None:
    table.open("a.programme.yaml", PLAN)
    first = PLAN.replace("programme: Legs", "programme: [Legs")
    table.become("a.programme.yaml", first)
    second = first.replace("reps: 8", "reps: 88")
    view = table.become("a.programme.yaml", second)
    for words in ("Legs", "monday", "back squat", "150 kg"):
        moved = view.moved(PLAN.index(words))
        assert moved == second.index(words)
    assert view.moved(len(PLAN)) == len(second)


TEXTS = st.text("ab\n", max_size=12)


@given(st.lists(TEXTS, min_size=1, max_size=5))
def test_what_still_stands_is_the_same_and_in_order(texts: list[str]) -> None:
    kept = whole(texts[0])
    for before, after in pairwise(texts):
        kept = carried(kept, before, after)
    now, last = texts[-1], -1
    for start, end, by in kept:
        assert start < end
        for offset in range(start, end):
            assert offset + by > last
            last = offset + by
            assert texts[0][offset : offset + 1] == now[last : last + 1]
    assert kept == [] or last <= len(now)


# Addresses


@pytest.mark.parametrize(
    ("uri", "path"),
    [
        ("file:///a/b%20c.yaml", "/a/b c.yaml"),
        ("FILE:///a/b.yaml", "/a/b.yaml"),
        ("file://localhost/a", "/a"),
        ("file:///a/../b", "/b"),
        ("file:///%C3%A4", "/ä"),
        ("untitled:Untitled-1", ""),
        ("file://", ""),
        ("file:///a%00b", ""),
        ("file://" + "[x", ""),
        ("", ""),
    ],
)
def test_the_path_of_an_address(uri: str, path: str) -> None:
    assert path_of(uri) == path


def test_a_windows_drive_is_a_folder_of_no_consequence_elsewhere(table: Table) -> None:
    for uri in ("file:///c%3A/plans/a.programme.yaml", "file:///C:/plans/a.programme.yaml"):
        table.documents.open(uri, 1, PLAN)
        view = table.documents.view(uri)
        assert view is not None
        assert "athlete-missing" in rules(view)


@given(st.text(st.characters(exclude_characters="/\0", exclude_categories=["Cs"]), min_size=1))
def test_an_address_leads_back(name: str) -> None:
    path = f"/a/{name}"
    assert path_of(uri_of(path)) == path_of(uri_of(path_of(uri_of(path))))
    if name not in (".", ".."):
        assert path_of(uri_of(path)) == path


def test_the_name_in_an_address() -> None:
    assert name_in("untitled:Untitled-1") == "Untitled-1"
    assert name_in("file:///a/my%20plan.yaml") == "my plan.yaml"
