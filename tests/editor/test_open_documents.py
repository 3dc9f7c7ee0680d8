"""Open documents: which are reviewed, when they are reviewed again, and which good review is remembered."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest

from spotline.lint.editor.documents.open_documents import OpenDocument, OpenDocuments
from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.editor.features.fixes import fixes

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


class Team:
    """A folder with open documents, the day on which they are reviewed, and their log."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.day = date(2026, 1, 5)
        self.log: list[str] = []
        self.documents = OpenDocuments(self.log.append, lambda: self.day)
        self.documents.folder = str(folder)

    def uri(self, name: str) -> str:
        return (self.folder / name).as_uri()

    def write(self, name: str, text: str) -> str:
        (self.folder / name).write_text(text, encoding="utf-8")
        return self.uri(name)

    def open(self, name: str, text: str) -> Snapshot:
        self.documents.open(self.uri(name), 1, text)
        return self.snapshot(name)

    def change(self, name: str, text: str) -> Snapshot:
        self.documents.change(self.uri(name), 2, [(None, text)])
        return self.snapshot(name)

    def snapshot(self, name: str) -> Snapshot:
        snapshot = self.documents.snapshot(self.uri(name))
        assert snapshot is not None
        return snapshot

    def publish(self) -> list[str]:
        """Reviews every stale document, as for the client; the names of the documents, in order."""
        names = []
        while unpublished := self.documents.unpublished():
            document: OpenDocument = unpublished[0]
            self.documents.refresh(document)
            document.published = True
            names.append(document.text_document.uri.rpartition("/")[2])
        return names


@pytest.fixture
def team(tmp_path: Path) -> Iterator[Team]:
    (tmp_path / ".git").mkdir()
    team = Team(tmp_path)
    yield team
    assert team.log == []


def rules(snapshot: Snapshot) -> list[str]:
    return [finding.rule for finding in snapshot.review.findings]


# What is ours


@pytest.mark.parametrize("name", ["a.programme.yaml", "a.athlete.yml", "a.exercises.yaml", "spotline.yaml"])
def test_files_of_ours_are_reviewed(team: Team, name: str) -> None:
    snapshot = team.open(name, "xyzzy: 1\n")
    assert "key-unknown" in rules(snapshot)
    assert snapshot.path == str(team.folder / name)


def test_other_files_are_not(team: Team) -> None:
    team.documents.open(team.uri("notes.yaml"), 1, PLAN)
    assert team.documents.snapshot(team.uri("notes.yaml")) is None
    assert team.documents.unpublished() == []
    assert not team.documents.close(team.uri("notes.yaml"))


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
def test_texts_without_a_file(team: Team, uri: str, text: str, ours: bool) -> None:
    team.documents.open(uri, 1, text)
    snapshot = team.documents.snapshot(uri)
    assert (snapshot is not None) == ours
    if snapshot is not None:
        assert snapshot.path == ""
        assert snapshot.text.content == text


def test_a_text_becomes_ours_and_ceases_to_be(team: Team) -> None:
    uri = "untitled:1"
    team.documents.open(uri, 1, "")
    assert team.publish() == []
    team.documents.change(uri, 2, [(None, "programme: A\nxyzzy: 1\n")])
    snapshot = team.documents.snapshot(uri)
    assert snapshot is not None
    assert "key-unknown" in rules(snapshot)
    team.documents.change(uri, 3, [(None, "shopping: list\n")])
    assert [document.text_document.uri for document in team.documents.unpublished()] == [uri]
    assert team.publish() == [uri]
    assert team.documents.snapshot(uri) is None
    team.documents.change(uri, 4, [(None, "shopping: lists\n")])
    assert team.publish() == []


def test_two_texts_without_a_file_are_two(team: Team) -> None:
    team.write("untitled-1.programme.yaml", "on: disk\n")
    for uri in ("untitled:untitled-1", "other:untitled-1"):
        team.documents.open(uri, 1, f"programme: {uri[0]}\n")
    names = {document.reviewed_as for document in team.documents.by_uri.values()}
    assert len(names) == 2
    assert str(team.folder / "untitled-1.programme.yaml") not in names


def test_the_settings_of_the_folder_hold_for_a_text_without_a_file(team: Team) -> None:
    team.write("spotline.yaml", "rules: {athlete-missing-from-programme: run}\npreset: xyzzy\n")
    team.documents.open("untitled:1", 1, PLAN)
    snapshot = team.documents.snapshot("untitled:1")
    assert snapshot is not None
    assert snapshot.review.team.broken


# What leans on what


def test_a_change_of_the_athlete_changes_the_programme(team: Team) -> None:
    team.write("orla.athlete.yaml", ATHLETE)
    before = rules(team.open("a.programme.yaml", PLAN))
    team.open("orla.athlete.yaml", ATHLETE)
    team.publish()
    team.change("orla.athlete.yaml", ATHLETE.replace("100 kg", "300 kg"))
    assert team.publish() == ["orla.athlete.yaml", "a.programme.yaml"]
    assert rules(team.snapshot("a.programme.yaml")) != before
    team.documents.close(team.uri("orla.athlete.yaml"))
    assert rules(team.snapshot("a.programme.yaml")) == before


def test_the_review_of_the_athlete_leaves_that_of_the_programme_alone(team: Team) -> None:
    team.write("plan.programme.yaml", PLAN)
    team.write("orla.athlete.yaml", ATHLETE)
    team.open("orla.athlete.yaml", ATHLETE)
    team.open("plan.programme.yaml", PLAN)
    plan = team.change("plan.programme.yaml", f"{PLAN}# more\n")
    before = [(one.rule, one.place.text.name, one.place.start) for one in plan.review.findings]
    team.snapshot("orla.athlete.yaml")  # which reviews the programmes that name her
    assert [(one.rule, one.place.text.name, one.place.start) for one in plan.review.findings] == before
    assert {name for _, name, _ in before} == {plan.text.name}
    titles = [fix.title for fix in fixes(plan, 0, len(PLAN))]
    assert "Waive number-implausible here, with a reason" in titles


def test_a_change_on_the_disk_is_noticed_by_itself(team: Team) -> None:
    team.open("a.programme.yaml", PLAN)
    assert "athlete-missing" in rules(team.snapshot("a.programme.yaml"))
    team.write("orla.athlete.yaml", ATHLETE)
    team.documents.check_disk()
    assert "athlete-missing" not in rules(team.snapshot("a.programme.yaml"))
    (team.folder / "orla.athlete.yaml").unlink()
    team.documents.check_disk()
    assert "athlete-missing" in rules(team.snapshot("a.programme.yaml"))


def test_another_programme_of_the_athlete_is_reviewed_again(team: Team) -> None:
    team.write("orla.athlete.yaml", ATHLETE)
    for name in ("a.programme.yaml", "b.programme.yaml"):
        team.open(name, PLAN)
    team.open("c.programme.yaml", PLAN.replace("athlete: orla.athlete.yaml\n", ""))
    team.publish()
    team.documents.change(team.uri("a.programme.yaml"), 2, [(None, PLAN.replace("monday", "tuesday"))])
    assert team.publish() == ["a.programme.yaml", "b.programme.yaml"]
    team.documents.change(team.uri("c.programme.yaml"), 2, [(None, PLAN)])
    assert set(team.publish()) == {"c.programme.yaml", "a.programme.yaml", "b.programme.yaml"}


def test_settings_typed_hold_at_once(team: Team) -> None:
    snapshot = team.open("a.programme.yaml", PLAN.replace("back squat", "xyzzy"))
    assert "sets-not-read" in rules(snapshot)
    team.write("spotline.yaml", "rules: {sets-not-read: warning}\n")
    team.open("spotline.yaml", "rules: {sets-not-read: skip}\n")
    assert "sets-not-read" not in rules(team.snapshot("a.programme.yaml"))
    team.documents.close(team.uri("spotline.yaml"))
    assert "sets-not-read" in rules(team.snapshot("a.programme.yaml"))


def test_a_new_day_is_a_new_review(team: Team) -> None:
    plan = PLAN.replace("athlete: orla.athlete.yaml\n", "").replace("exercises:", "exercises:  # W")
    plan = plan.replace("# W", "# spotline: waive exercise-unknown until 2026-01-05 because new")
    plan = plan.replace("back squat", "xyzzy")
    before = rules(team.open("a.programme.yaml", plan))
    team.publish()
    team.day += timedelta(days=1)
    after = rules(team.snapshot("a.programme.yaml"))
    assert "waiver-expired" not in before
    assert "waiver-expired" in after


# What the client does wrong


def test_a_change_to_a_document_that_is_not_open(team: Team) -> None:
    team.documents.change("file:///x.programme.yaml", 2, [(None, PLAN)])
    assert team.log == ["a change to a document that is not open: file:///x.programme.yaml"]
    team.log.clear()
    assert team.documents.snapshot("file:///x.programme.yaml") is None


def test_a_document_opened_twice_is_the_later_one(team: Team) -> None:
    team.open("a.programme.yaml", PLAN)
    snapshot = team.open("a.programme.yaml", "programme: B\nxyzzy: 1\n")
    assert "key-unknown" in rules(snapshot)
    assert len(team.documents.by_uri) == 1


def test_a_file_open_under_two_uris_is_open_until_both_are_closed(team: Team) -> None:
    team.write("a.programme.yaml", PLAN)
    (team.folder / "b.programme.yaml").symlink_to("a.programme.yaml")
    for name in ("a.programme.yaml", "b.programme.yaml"):
        team.open(name, PLAN.replace("goal", "goaal"))
    team.documents.close(team.uri("a.programme.yaml"))
    assert "key-unknown" in rules(team.snapshot("b.programme.yaml"))


def test_a_failure_of_ours_is_logged(team: Team, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(*_: object) -> None:
        raise RuntimeError("no\nluck")

    monkeypatch.setattr("spotline.lint.editor.documents.open_documents.review_on", fail)
    snapshot = team.open("a.programme.yaml", PLAN)
    assert snapshot.review.findings == []
    assert "RuntimeError" in team.log[0]
    team.log.clear()


# What is remembered


def test_the_last_good_review_outlives_a_broken_text(team: Team) -> None:
    good = team.open("c.programme.yaml", PLAN).review
    assert team.snapshot("c.programme.yaml").last_good is good
    broken = PLAN.replace("day: monday", "day: [monday")
    snapshot = team.change("c.programme.yaml", broken)
    assert snapshot.review is not good
    assert snapshot.last_good is good
    assert snapshot.review.ledgers == []
    assert len(snapshot.review.findings) == 1
    again = team.change("c.programme.yaml", PLAN)
    assert again.last_good is again.review


def test_there_is_no_good_review_before_the_first(team: Team) -> None:
    assert team.open("a.programme.yaml", "programme: [\n").last_good is None
    assert team.snapshot("a.programme.yaml").offset_map.to_newer(0) is None


def test_offsets_move_through_several_edits(team: Team) -> None:
    team.open("a.programme.yaml", PLAN)
    first = PLAN.replace("programme: Legs", "programme: [Legs")
    team.change("a.programme.yaml", first)
    second = first.replace("reps: 8", "reps: 88")
    snapshot = team.change("a.programme.yaml", second)
    for words in ("Legs", "monday", "back squat", "150 kg"):
        moved = snapshot.offset_map.to_newer(PLAN.index(words))
        assert moved == second.index(words)
    assert snapshot.offset_map.to_newer(len(PLAN)) == len(second)


def test_a_windows_drive_is_a_folder_of_no_consequence_elsewhere(team: Team) -> None:
    for uri in ("file:///c%3A/plans/a.programme.yaml", "file:///C:/plans/a.programme.yaml"):
        team.documents.open(uri, 1, PLAN)
        snapshot = team.documents.snapshot(uri)
        assert snapshot is not None
        assert "athlete-missing" in rules(snapshot)


def _advice(snapshot: Snapshot, rule: str) -> str:
    return next(one.change for one in snapshot.review.findings if one.rule == rule)


@pytest.mark.parametrize(
    ("moved_to", "advice"),
    [
        ("squad/orla.athlete.yaml", "Did you mean squad/orla.athlete.yaml?"),
        ("Orla.athlete.yaml", "Write Orla"),
    ],
)
@pytest.mark.parametrize("is_open", [True, False])
def test_where_a_missing_athlete_may_be_follows_the_files(
    team: Team, moved_to: str, advice: str, is_open: bool
) -> None:
    (team.folder / "squad").mkdir()
    assert "Correct the path" in _advice(team.open("plan.programme.yaml", PLAN), "athlete-missing")
    if is_open:
        team.open(moved_to, ATHLETE)
    else:
        team.write(moved_to, ATHLETE)
        team.documents.check_disk()
    assert advice in _advice(team.snapshot("plan.programme.yaml"), "athlete-missing")
    if is_open:
        team.documents.close(team.uri(moved_to))
    else:
        (team.folder / moved_to).unlink()
        team.documents.check_disk()
    assert "Correct the path" in _advice(team.snapshot("plan.programme.yaml"), "athlete-missing")
