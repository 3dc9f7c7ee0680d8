"""Texts in an editor lie over files, and a desk knows when what it has read is no longer so."""

from __future__ import annotations

import os
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.desk import Desk
from spotline.lint.known_findings import NAME as RECORD
from spotline.lint.review import FileReview, review, review_on
from spotline.lint.shelf import Shelf

DAY = date(2026, 1, 5)

PLAN = """\
programme: Winter
athlete: mara.athlete.yaml
starts: 2026-01-05
weeks: 4
sessions:
  - session: Lower
    exercises: [{exercise: back squat, sets: 3, reps: 5, load: 80 kg}]
"""
ATHLETE = "name: Mara\nlevel: intermediate\nbest lifts: {back squat: 100 kg}\n"


@pytest.fixture
def team(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A repository with a programme and its athlete, and the working folder in it."""
    (tmp_path / ".git").mkdir()
    (tmp_path / "plan.programme.yaml").write_text(PLAN, encoding="utf-8")
    (tmp_path / "mara.athlete.yaml").write_text(ATHLETE, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    return tmp_path


def names(one: FileReview) -> set[str]:
    return {finding.rule for finding in one.findings}


def on(desk: Desk, name: str = "plan.programme.yaml") -> FileReview:
    return next(one for one in review_on(desk, [name]).files if one.name == name)


class TestShelf:
    def test_a_text_lies_over_its_file(self, team: Path) -> None:
        desk = Desk(DAY)
        assert "number-implausible" not in names(on(desk))
        desk.shelf.open("plan.programme.yaml", PLAN.replace("sets: 3", "sets: 99"))
        assert "number-implausible" in names(on(desk))
        desk.shelf.close("plan.programme.yaml")
        assert "number-implausible" not in names(on(desk))

    def test_whatever_way_leads_to_the_file(self, team: Path) -> None:
        os.symlink("plan.programme.yaml", "also.programme.yaml")
        shelf = Shelf()
        shelf.open(str(team / "also.programme.yaml"), "a: 1\n")
        assert shelf.read("plan.programme.yaml").text.content == "a: 1\n"
        assert shelf.read("./also.programme.yaml").text.name == "./also.programme.yaml"
        assert list(shelf.opened()) == [os.path.realpath("plan.programme.yaml")]

    def test_a_text_without_a_file_is_there(self, team: Path) -> None:
        shelf = Shelf()
        assert not shelf.exists("new.athlete.yaml")
        shelf.open("new.athlete.yaml", ATHLETE)
        assert shelf.exists("new.athlete.yaml")
        assert shelf.exists("plan.programme.yaml")

    def test_the_athlete_of_an_open_text_counts(self, team: Path) -> None:
        desk = Desk(DAY)
        desk.shelf.open("mara.athlete.yaml", ATHLETE.replace("100 kg", "82 kg"))
        assert "more-reps-than-load-allows" in names(on(desk))

    def test_settings_and_exercises_of_open_texts_count(self, team: Path) -> None:
        (team / "spotline.yaml").write_text("exercises: [own.exercises.yaml]\n", encoding="utf-8")
        (team / "own.exercises.yaml").write_text("exercises: []\n", encoding="utf-8")
        desk = Desk(DAY)
        desk.shelf.open(
            "spotline.yaml", "rules: {load-outside-zone: error}\nexercises: [own.exercises.yaml]\n"
        )
        own = "exercises:\n  - {name: dock squat, actions: [knee extension], implement: barbell, kind: strength}\n"
        desk.shelf.open("own.exercises.yaml", own)
        around = desk.team_of("plan.programme.yaml")
        assert around.choices.severities == {"load-outside-zone": "error"}
        assert [one.reading.text.content for one in around.exercises.values()] == [own]

    @pytest.mark.parametrize("change", ["text", "file", "none"])
    def test_a_mark_changes_with_the_text_or_the_file(self, team: Path, change: str) -> None:
        shelf = Shelf()
        path = os.path.realpath("plan.programme.yaml")
        before = shelf.mark(path)
        if change == "text":
            shelf.open(path, PLAN)
        elif change == "file":
            Path(path).write_text(f"{PLAN}# more\n", encoding="utf-8")
        assert (shelf.mark(path) == before) == (change == "none")

    def test_no_file_and_no_text_have_no_mark(self, team: Path) -> None:
        assert Shelf().mark("nowhere.yaml") == Shelf().mark("a\0b") == ()


LEANT_ON: dict[str, Callable[[Path], object]] = {
    "athlete changed": lambda root: (root / "mara.athlete.yaml").write_text(f"{ATHLETE}note: x\n"),
    "athlete gone": lambda root: (root / "mara.athlete.yaml").unlink(),
    "settings there": lambda root: (root / "spotline.yaml").write_text("rules: {}\n"),
    "record there": lambda root: (root / RECORD).write_text('{"form": 1, "known": []}'),
}


class TestStaleDesk:
    def test_as_long_as_nothing_changes_it_is_not(self, team: Path) -> None:
        desk = Desk(DAY)
        assert not desk.stale()
        on(desk)
        on(desk)
        assert not desk.stale()

    @pytest.mark.parametrize("what", LEANT_ON)
    def test_once_something_it_leant_on_changes_it_is(self, team: Path, what: str) -> None:
        desk = Desk(DAY)
        on(desk)
        LEANT_ON[what](team)
        assert desk.stale()

    def test_an_athlete_who_was_not_there_comes(self, team: Path) -> None:
        (team / "mara.athlete.yaml").unlink()
        desk = Desk(DAY)
        assert "athlete-missing" in names(on(desk))
        (team / "mara.athlete.yaml").write_text(ATHLETE, encoding="utf-8")
        assert desk.stale()
        assert "athlete-missing" not in names(on(Desk(DAY, shelf=desk.shelf)))

    def test_an_open_athlete_is_typed_on(self, team: Path) -> None:
        desk = Desk(DAY)
        desk.shelf.open("mara.athlete.yaml", ATHLETE)
        on(desk)
        assert not desk.stale()
        desk.shelf.open("mara.athlete.yaml", f"{ATHLETE}# more\n")
        assert desk.stale()

    def test_the_programme_itself_does_not_make_it_so(self, team: Path) -> None:
        desk = Desk(DAY)
        on(desk)
        (team / "plan.programme.yaml").write_text(f"{PLAN}# more\n", encoding="utf-8")
        assert not desk.stale()


class TestOtherProgrammes:
    """Programmes of the same athlete count along, be they files or open texts."""

    OTHER = PLAN.replace("Winter", "Autumn").replace("2026-01-05", "2025-12-29")

    @pytest.fixture
    def overlapping(self, team: Path) -> Path:
        (team / "more.programme.yaml").write_text(self.OTHER, encoding="utf-8")
        return team

    def test_on_the_disk(self, overlapping: Path) -> None:
        assert "programmes-overlap" in names(on(Desk(DAY)))

    def test_an_open_one_counts_as_it_is_typed(self, overlapping: Path) -> None:
        desk = Desk(DAY)
        assert "programmes-overlap" in names(on(desk))
        desk.shelf.open("more.programme.yaml", self.OTHER.replace("2025-12-29", "2025-11-03"))
        assert "programmes-overlap" not in names(on(desk))
        desk.shelf.open("more.programme.yaml", self.OTHER)
        assert "programmes-overlap" in names(on(desk))
        desk.shelf.open("more.programme.yaml", self.OTHER.replace("mara.", "kim."))
        assert "programmes-overlap" not in names(on(desk))

    def test_an_open_one_that_has_no_file_yet(self, team: Path) -> None:
        desk = Desk(DAY)
        assert "programmes-overlap" not in names(on(desk))
        desk.shelf.open("new.programme.yaml", self.OTHER)
        assert "programmes-overlap" in names(on(desk))

    def test_the_disk_is_searched_once(self, overlapping: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        searches: list[str] = []
        real = os.scandir
        monkeypatch.setattr(os, "scandir", lambda path: searches.append(path) or real(path))
        desk = Desk(DAY)
        for _ in range(3):
            on(desk)
        assert len(searches) == 1

    def test_entries_on_record_are_used_up_once_a_review(self, overlapping: Path) -> None:
        found = review(["plan.programme.yaml"], DAY).files[0].findings
        assert found
        keys = [
            {"file": "plan.programme.yaml", "rule": one.rule, "where": one.where, "subject": one.subject}
            for one in found
        ]
        (overlapping / RECORD).write_text(
            repr({"form": 1, "known": keys}).replace("'", '"'), encoding="utf-8"
        )
        desk = Desk(DAY)
        for _ in range(2):
            assert (on(desk).findings, len(on(desk).known)) == ([], len(found))
