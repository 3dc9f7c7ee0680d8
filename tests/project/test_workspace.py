"""A workspace: open texts count, it knows when it is stale, and what it searches and reads it does once."""

from __future__ import annotations

import os
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.project.results import FileReview
from spotline.lint.project.review import review, review_on
from spotline.lint.project.workspace import Workspace
from spotline.lint.team.known_findings import NAME as RECORD

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


def on(workspace: Workspace, name: str = "plan.programme.yaml") -> FileReview:
    return next(one for one in review_on(workspace, [name]).files if one.name == name)


class TestOpenTexts:
    def test_a_text_stands_in_front_of_its_file(self, team: Path) -> None:
        workspace = Workspace(DAY)
        assert "number-implausible" not in names(on(workspace))
        workspace.overlay.open("plan.programme.yaml", PLAN.replace("sets: 3", "sets: 99"))
        assert "number-implausible" in names(on(workspace))
        workspace.overlay.close("plan.programme.yaml")
        assert "number-implausible" not in names(on(workspace))

    def test_the_athlete_of_an_open_text_counts(self, team: Path) -> None:
        workspace = Workspace(DAY)
        workspace.overlay.open("mara.athlete.yaml", ATHLETE.replace("100 kg", "75 kg"))
        assert "more-reps-than-load-allows" in names(on(workspace))

    def test_settings_and_exercises_of_open_texts_count(self, team: Path) -> None:
        (team / "spotline.yaml").write_text("exercises: [own.exercises.yaml]\n", encoding="utf-8")
        (team / "own.exercises.yaml").write_text("exercises: []\n", encoding="utf-8")
        workspace = Workspace(DAY)
        workspace.overlay.open(
            "spotline.yaml", "rules: {load-outside-zone: error}\nexercises: [own.exercises.yaml]\n"
        )
        own = "exercises:\n  - {name: dock squat, actions: [knee extension], implement: barbell, kind: strength}\n"
        workspace.overlay.open("own.exercises.yaml", own)
        around = workspace.team_of(workspace.files.file("plan.programme.yaml"))
        assert around.choices.severities == {"load-outside-zone": "error"}
        assert [one.reading.text.content for one in around.exercises.values()] == [own]


CHANGES: dict[str, Callable[[Path], object]] = {
    "athlete changed": lambda root: (root / "mara.athlete.yaml").write_text(f"{ATHLETE}note: x\n"),
    "athlete gone": lambda root: (root / "mara.athlete.yaml").unlink(),
    "settings there": lambda root: (root / "spotline.yaml").write_text("rules: {}\n"),
    "record there": lambda root: (root / RECORD).write_text('{"form": 1, "known": []}'),
}


class TestStale:
    def test_as_long_as_nothing_changes_it_is_not(self, team: Path) -> None:
        workspace = Workspace(DAY)
        assert not workspace.stale()
        on(workspace)
        on(workspace)
        assert not workspace.stale()

    @pytest.mark.parametrize("what", CHANGES)
    def test_once_something_that_it_depends_on_changes_it_is(self, team: Path, what: str) -> None:
        workspace = Workspace(DAY)
        on(workspace)
        CHANGES[what](team)
        assert workspace.stale()

    def test_an_athlete_who_was_not_there_comes(self, team: Path) -> None:
        (team / "mara.athlete.yaml").unlink()
        workspace = Workspace(DAY)
        assert "athlete-missing" in names(on(workspace))
        (team / "mara.athlete.yaml").write_text(ATHLETE, encoding="utf-8")
        assert workspace.stale()
        assert "athlete-missing" not in names(on(Workspace(DAY, overlay=workspace.overlay)))

    def test_an_open_athlete_is_typed_on(self, team: Path) -> None:
        workspace = Workspace(DAY)
        workspace.overlay.open("mara.athlete.yaml", ATHLETE)
        on(workspace)
        assert not workspace.stale()
        workspace.overlay.open("mara.athlete.yaml", f"{ATHLETE}# more\n")
        assert workspace.stale()

    def test_the_programme_itself_does_not_make_it_so(self, team: Path) -> None:
        workspace = Workspace(DAY)
        on(workspace)
        (team / "plan.programme.yaml").write_text(f"{PLAN}# more\n", encoding="utf-8")
        assert not workspace.stale()


class TestOtherProgrammes:
    """Programmes of the same athlete count along, be they files or open texts."""

    OTHER = PLAN.replace("Winter", "Autumn").replace("2026-01-05", "2025-12-29")

    @pytest.fixture
    def overlapping(self, team: Path) -> Path:
        (team / "more.programme.yaml").write_text(self.OTHER, encoding="utf-8")
        return team

    def test_on_the_disk(self, overlapping: Path) -> None:
        assert "programmes-overlap" in names(on(Workspace(DAY)))

    def test_an_open_one_counts_as_it_is_typed(self, overlapping: Path) -> None:
        workspace = Workspace(DAY)
        assert "programmes-overlap" in names(on(workspace))
        workspace.overlay.open("more.programme.yaml", self.OTHER.replace("2025-12-29", "2025-11-03"))
        assert "programmes-overlap" not in names(on(workspace))
        workspace.overlay.open("more.programme.yaml", self.OTHER)
        assert "programmes-overlap" in names(on(workspace))
        workspace.overlay.open("more.programme.yaml", self.OTHER.replace("mara.", "kim."))
        assert "programmes-overlap" not in names(on(workspace))

    def test_an_open_one_that_has_no_file_yet(self, team: Path) -> None:
        workspace = Workspace(DAY)
        assert "programmes-overlap" not in names(on(workspace))
        workspace.overlay.open("new.programme.yaml", self.OTHER)
        assert "programmes-overlap" in names(on(workspace))

    def test_the_disk_is_searched_once(self, overlapping: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        searches: list[str] = []
        real = os.scandir
        monkeypatch.setattr(os, "scandir", lambda path: searches.append(path) or real(path))
        workspace = Workspace(DAY)
        for _ in range(3):
            on(workspace)
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
        workspace = Workspace(DAY)
        for _ in range(2):
            assert (on(workspace).findings, len(on(workspace).known)) == ([], len(found))
