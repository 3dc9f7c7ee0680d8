"""What leans on what: the review of what changed takes in all whose findings may be others now, and no more."""

from __future__ import annotations

import os
import subprocess
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.cli.main import main
from spotline.lint.project import git, listing
from spotline.lint.project.changed import review_changed
from spotline.lint.project.results import Review
from spotline.lint.project.workspace import Workspace
from spotline.lint.team.known_findings import NAME as RECORD
from spotline.lint.text import files as door
from spotline.lint.text import repository
from spotline.lint.text.state import state_file

DAY = date(2026, 1, 5)

PLAN = """\
programme: Winter
athlete: ../athletes/NAME.athlete.yaml
starts: 2026-01-05
weeks: 4
sessions:
  - session: Lower
    exercises:
      - {exercise: back squat, sets: 3, reps: 5}
      - {exercise: dock squat, sets: 3, reps: 5}
"""
OWN = "exercises:\n  - {name: dock squat, actions: [knee extension], implement: barbell, kind: dynamic}\n"

FILES = {
    "spotline.yaml": "exercises: [shared/own.exercises.yaml]\nleave out: [drafts]\n",
    "shared/own.exercises.yaml": OWN,
    "athletes/mara.athlete.yaml": "name: Mara\nlevel: intermediate\n",
    "athletes/kim.athlete.yaml": "name: Kim\nlevel: novice\n",
    "plans/mara-1.programme.yaml": PLAN.replace("NAME", "mara"),
    "plans/mara-2.programme.yaml": PLAN.replace("NAME", "mara").replace("2026-01-05", "2026-02-02"),
    "plans/kim.programme.yaml": PLAN.replace("NAME", "kim"),
    "juniors/spotline.yaml": "weekly limits: {quadriceps: 12}\n",
    "juniors/open.programme.yaml": PLAN.replace("athlete: ../athletes/NAME.athlete.yaml\n", ""),
    "drafts/mara.programme.yaml": PLAN.replace("NAME", "mara"),
    "notes.txt": "oats\n",
}
MARA = {"athletes/mara.athlete.yaml", "plans/mara-1.programme.yaml", "plans/mara-2.programme.yaml"}
KIM = {"athletes/kim.athlete.yaml", "plans/kim.programme.yaml"}
ABOVE = {*MARA, *KIM, "shared/own.exercises.yaml"}


class Team:
    """A repository of a team, and the working folder in it."""

    def __init__(self, root: Path) -> None:
        self.root = root
        self.git("init", "--quiet")
        for name, text in FILES.items():
            self.write(name, text)
        self.commit()

    def git(self, *words: str) -> str:
        settings = ("-c", "user.name=Scratch", "-c", "user.email=scratch@example.invalid")
        words = ("git", *settings, *words)
        return subprocess.run(words, cwd=self.root, check=True, capture_output=True, text=True).stdout

    def write(self, name: str, text: str) -> None:
        path = self.root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")

    def commit(self) -> None:
        self.git("add", "--all")
        self.git("commit", "--quiet", "--message", "A change")

    def changed(self, revision: str = "", *paths: str) -> set[str]:
        """The names of the files that are reviewed."""
        return {one.name.replace(os.sep, "/") for one in self.review(revision, *paths).files}

    def review(self, revision: str = "", *paths: str) -> Review:
        return review_changed(revision, list(paths), DAY)


@pytest.fixture
def team(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Team:
    for name in [name for name in os.environ if name.startswith(("GIT_", "PRE_COMMIT"))]:
        monkeypatch.delenv(name)
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    monkeypatch.setenv("LOCALAPPDATA", str(tmp_path / "state"))
    root = tmp_path / "team"
    root.mkdir()
    monkeypatch.chdir(root)
    return Team(root)


class TestWhatLeansOnWhat:
    def test_nothing_changed(self, team: Team) -> None:
        result = team.review()
        assert (result.files, result.exit_code) == ([], 0)

    def test_nothing_of_ours_changed(self, team: Team) -> None:
        team.write("notes.txt", "porridge\n")
        team.write("more.txt", "porridge\n")
        result = team.review()
        assert (result.files, result.exit_code) == ([], 0)

    @pytest.mark.parametrize("change", ["edited", "deleted", "renamed", "staged away"])
    def test_an_athlete_and_their_programmes(self, team: Team, change: str) -> None:
        athlete = "athletes/mara.athlete.yaml"
        if change == "edited":
            team.write(athlete, FILES[athlete] + "minutes: 60\n")
            assert team.changed() == MARA
            return
        new = athlete.replace("mara", "maren")
        words = {"deleted": ["rm", athlete], "renamed": ["mv", athlete, new], "staged away": ["rm", athlete]}
        team.git(*words[change])
        result = team.review()
        broken = {one.name: [found.rule for found in one.findings] for one in result.files}
        assert set(broken) == MARA - {athlete} | ({new} if change == "renamed" else set())
        assert all("athlete-missing" in rules for name, rules in broken.items() if name.startswith("plans"))
        assert result.exit_code == 1

    @pytest.mark.parametrize("named", ["''", ".", ".."])
    def test_a_folder_for_an_athlete_is_no_file_to_review(self, team: Team, named: str) -> None:
        name = "plans/mara-1.programme.yaml"
        team.write(name, FILES[name].replace("../athletes/mara.athlete.yaml", named))
        result = team.review()
        assert "plans" not in team.changed()
        assert all(one.kind in ("programme", "athlete") for one in result.files)
        assert result.exit_code == 1

    def test_a_programme_its_athlete_and_their_other_programmes(self, team: Team) -> None:
        team.write("plans/mara-1.programme.yaml", FILES["plans/mara-1.programme.yaml"] + "note: more\n")
        assert team.changed() == MARA

    def test_a_deleted_programme_leaves_those_that_were_counted_with_it(self, team: Team) -> None:
        (team.root / "plans/mara-1.programme.yaml").unlink()
        assert team.changed() == MARA - {"plans/mara-1.programme.yaml"}

    def test_a_programme_that_changes_hands(self, team: Team) -> None:
        team.write("plans/mara-1.programme.yaml", PLAN.replace("NAME", "kim"))
        assert team.changed() == MARA | KIM

    @pytest.mark.parametrize("deleted", [False, True])
    def test_exercises_and_all_under_the_settings_that_name_them(self, team: Team, deleted: bool) -> None:
        if deleted:
            (team.root / "shared/own.exercises.yaml").unlink()
        else:
            team.write("shared/own.exercises.yaml", OWN.replace("dock squat", "quay squat"))
        expected = ABOVE | {"spotline.yaml"}
        if deleted:  # settings that cannot be used leave nothing out
            expected = expected - {"shared/own.exercises.yaml"} | {"drafts/mara.programme.yaml"}
        assert team.changed() == expected

    def test_settings_and_all_below_that_has_no_nearer_ones(self, team: Team) -> None:
        team.write("spotline.yaml", FILES["spotline.yaml"] + "counting: direct\n")
        assert team.changed() == ABOVE | {"spotline.yaml"}

    @pytest.mark.parametrize("deleted", [False, True])
    def test_settings_of_a_folder(self, team: Team, deleted: bool) -> None:
        if deleted:
            (team.root / "juniors/spotline.yaml").unlink()
        else:
            team.write("juniors/spotline.yaml", "weekly limits: {quadriceps: 3}\n")
        here = {"juniors/open.programme.yaml"}
        assert team.changed() == here | (set() if deleted else {"juniors/spotline.yaml"})

    def test_new_settings_take_a_folder_over(self, team: Team) -> None:
        team.write("plans/spotline.yaml", "counting: direct\n")
        assert team.changed() == {name for name in ABOVE if name.startswith("plans")} | {
            "plans/spotline.yaml"
        }

    def test_the_record_and_the_files_of_which_it_says_something_else(self, team: Team) -> None:
        entry = '{"file": "plans/FILE", "rule": "r", "where": "", "subject": ""}'
        kim, mara = (entry.replace("FILE", f"{name}.programme.yaml") for name in ("kim", "mara-1"))
        team.write(RECORD, f'{{"form": 2, "known": [{kim}]}}\n')
        team.commit()
        team.write(RECORD, f'{{"form": 2, "known": [{kim},\n {mara}]}}\n')
        assert team.changed() == {"plans/mara-1.programme.yaml", RECORD}
        (team.root / RECORD).unlink()
        assert team.changed() == {"plans/kim.programme.yaml"}
        team.write(RECORD, "{")
        whole = team.review()
        assert len(whole.files) > len(ABOVE)
        assert whole.exit_code == 2

    def test_a_link_leans_on_what_it_leads_to(self, team: Team) -> None:
        (team.root / "plans/mara-3.programme.yaml").symlink_to("../text")
        (team.root / "athletes/captain.athlete.yaml").symlink_to("kim.athlete.yaml")
        team.write("text", PLAN.replace("NAME", "captain"))
        team.commit()
        team.write("athletes/kim.athlete.yaml", "name: Kim\nlevel: advanced\n")
        assert {"plans/kim.programme.yaml", "plans/mara-3.programme.yaml"} <= team.changed()
        team.git("checkout", "--", ".")
        team.write("text", PLAN.replace("NAME", "captain") + "note: new\n")
        assert "plans/mara-3.programme.yaml" in team.changed()

    def test_what_is_named_besides_is_reviewed_too(self, team: Team) -> None:
        assert team.changed("", "plans/kim.programme.yaml") == {"plans/kim.programme.yaml"}

    def test_what_git_was_never_told_of(self, team: Team, monkeypatch: pytest.MonkeyPatch) -> None:
        team.write("new/open.programme.yaml", FILES["juniors/open.programme.yaml"])
        assert team.changed() == {"new/open.programme.yaml"}
        monkeypatch.setenv("PRE_COMMIT", "1")
        assert team.changed() == set()

    def test_a_commit_may_not_lack_the_athlete_that_it_names(
        self, team: Team, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setenv("PRE_COMMIT", "1")
        team.git("rm", "--cached", "athletes/kim.athlete.yaml")
        (one,) = [one for one in team.review().files if one.name == "plans/kim.programme.yaml"]
        assert "athlete-not-in-git" in {found.rule for found in one.findings}
        team.write(".gitignore", "athletes/kim.athlete.yaml\n")  # a team may keep its athletes out of git
        (one,) = [
            one for one in team.review("HEAD", "plans/kim.programme.yaml").files if "plans/kim" in one.name
        ]
        assert "athlete-not-in-git" not in {found.rule for found in one.findings}

    def test_names_that_are_hard_to_list(self, team: Team) -> None:
        for name in ("two words", "ü \U0001f3cb", "line\nbreak", "-dash", 'quo"te', "tab\there"):
            team.write(f"odd/{name}.programme.yaml", FILES["juniors/open.programme.yaml"])
        assert len(team.changed()) == 6
        team.commit()
        for path in (team.root / "odd").iterdir():
            path.write_text(path.read_text() + "note: more\n")
        assert len(team.changed()) == 6

    def test_two_files_that_differ_in_case(self, team: Team) -> None:
        team.write("plans/Kim.programme.yaml", FILES["plans/kim.programme.yaml"])
        told = {one.name: [found.rule for found in one.findings] for one in team.review().files}
        assert "file-in-two-cases" in told["plans/Kim.programme.yaml"]
        assert "file-in-two-cases" in told["plans/kim.programme.yaml"]

    def test_from_a_folder_below(self, team: Team, monkeypatch: pytest.MonkeyPatch) -> None:
        team.write("athletes/kim.athlete.yaml", "name: Kim\nlevel: advanced\n")
        monkeypatch.chdir(team.root / "plans")
        assert team.changed() == {"kim.programme.yaml", "../athletes/kim.athlete.yaml"}


@pytest.mark.parametrize("form", ["lines", "short", "json"])
def test_the_same_bytes_from_one_process_and_from_several(
    team: Team, capfd: pytest.CaptureFixture[str], form: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """With a renamed athlete, one that git does not hold, and two files that differ in case alone."""
    monkeypatch.setenv("PRE_COMMIT", "1")
    for number in range(8):
        team.write(f"plans/more-{number}.programme.yaml", PLAN.replace("NAME", ("kim", "mara")[number % 2]))
    team.commit()
    team.git("mv", "athletes/kim.athlete.yaml", "athletes/kimberley.athlete.yaml")
    team.git("rm", "--quiet", "--cached", "athletes/mara.athlete.yaml")
    team.write("plans/Mara-1.programme.yaml", PLAN.replace("NAME", "mara"))
    team.git("add", "plans/Mara-1.programme.yaml")
    told = []
    for jobs in ("1", "3"):
        code = main(["review", "--changed", "--as", form, "--jobs", jobs])
        told.append((code, *capfd.readouterr()))
    assert told[0] == told[1]
    assert told[0][0] == 1
    if form == "lines":
        for rule in ("athlete-missing", "athlete-not-in-git", "file-in-two-cases"):
            assert rule in told[0][1]


class TestLineEndsOfWindows:
    """A checkout in which git writes the line ends of Windows, through all that reads and writes."""

    @pytest.fixture
    def windows(self, team: Team) -> Team:
        team.git("config", "core.autocrlf", "true")
        for name in FILES:
            (team.root / name).unlink()
        team.git("checkout", "--", ".")
        assert b"\r\n" in (team.root / "plans/kim.programme.yaml").read_bytes()
        return team

    def lines(self, capsys: pytest.CaptureFixture[str], *words: str) -> str:
        main(["review", "--as", "lines", *words])
        return capsys.readouterr().out

    def test_the_review_says_the_same(self, team: Team, capsys: pytest.CaptureFixture[str]) -> None:
        before = self.lines(capsys)
        team.git("config", "core.autocrlf", "true")
        for name in FILES:
            (team.root / name).unlink()
        team.git("checkout", "--", ".")
        assert self.lines(capsys) == before != ""

    def test_nothing_has_changed(self, windows: Team, capsys: pytest.CaptureFixture[str]) -> None:
        assert windows.changed() == set()
        assert main(["compare", "--since", "HEAD"]) == 0
        assert "->" not in capsys.readouterr().out
        path = windows.root / "athletes/kim.athlete.yaml"
        path.write_bytes(path.read_bytes() + b"minutes: 60\r\n")
        assert windows.changed() == KIM

    def test_an_edit_is_all_that_is_compared(self, windows: Team, capsys: pytest.CaptureFixture[str]) -> None:
        path = windows.root / "plans/kim.programme.yaml"
        path.write_bytes(path.read_bytes().replace(b"back squat, sets: 3", b"back squat, sets: 4"))
        assert main(["compare", "--since", "HEAD", "--as", "json"]) == 0
        told = capsys.readouterr().out
        assert '"before": "3"' in told
        assert "dock squat" not in told.replace("back squat", "")

    def test_a_record_of_either_kind_holds_for_the_other(
        self, team: Team, capsys: pytest.CaptureFixture[str]
    ) -> None:
        team.write("plans/kim.programme.yaml", PLAN.replace("NAME", "kim").replace("sets: 3", "sets: 30"))
        assert main(["review", "--record-known"]) == 0
        team.git("add", "--all")
        for name in ("plans/kim.programme.yaml", RECORD):
            path = team.root / name
            path.write_bytes(path.read_bytes().replace(b"\n", b"\r\n"))
        assert "number-implausible" not in self.lines(capsys, "plans/kim.programme.yaml")
        assert main(["review", "--record-known"]) == 0
        capsys.readouterr()
        assert "number-implausible" not in self.lines(capsys, "plans/kim.programme.yaml")

    def test_a_mend_keeps_the_line_ends(self, windows: Team) -> None:
        path = windows.root / "plans/kim.programme.yaml"
        sound = path.read_bytes()
        path.write_bytes(sound.replace(b"sets: 3", b"stes: 3"))
        main(["mend", "plans/kim.programme.yaml"])
        assert path.read_bytes() == sound
        assert windows.changed() == set()


class TestRevisions:
    def test_a_range(self, team: Team) -> None:
        team.write("plans/kim.programme.yaml", FILES["plans/kim.programme.yaml"] + "note: more\n")
        team.commit()
        assert team.changed() == set()
        assert team.changed("HEAD~1") == KIM

    def test_before_the_first_commit(self, team: Team) -> None:
        team.git("update-ref", "-d", "HEAD")
        assert team.changed() >= ABOVE

    def test_the_range_that_a_hook_is_given(self, team: Team, monkeypatch: pytest.MonkeyPatch) -> None:
        base = team.git("rev-parse", "HEAD").strip()
        team.git("checkout", "--quiet", "-b", "side")
        team.write("plans/kim.programme.yaml", FILES["plans/kim.programme.yaml"] + "note: more\n")
        team.commit()
        side = team.git("rev-parse", "HEAD").strip()
        monkeypatch.setenv("PRE_COMMIT", "1")
        monkeypatch.setenv("PRE_COMMIT_FROM_REF", base)
        monkeypatch.setenv("PRE_COMMIT_TO_REF", side)
        assert team.changed() == KIM

    @pytest.mark.parametrize("revision", ["nope", "--output=x", "HEAD:notes.txt", "a b", "", "\udcff"])
    def test_what_is_no_revision(
        self, team: Team, revision: str, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
    ) -> None:
        before = sorted(os.listdir(team.root))
        if not revision:  # no git at all
            monkeypatch.setenv("PATH", str(team.root))
        assert main(["review", f"--changed={revision}"]) == 2
        assert capsys.readouterr().err.count("\n") == 1
        assert sorted(os.listdir(team.root)) == before

    def test_no_repository(self, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.chdir(tmp_path)
        assert main(["review", "--changed"]) == 2


class TestNothingIsTouched:
    def test_neither_the_checkout_nor_what_git_keeps_of_it(self, team: Team) -> None:
        os.utime(team.root / "plans/kim.programme.yaml", (1, 1))  # git would note that it looked at this file
        before = {path: path.stat().st_mtime_ns for path in team.root.rglob("*")}
        team.write("athletes/mara.athlete.yaml", "name: Mara\n")
        before[team.root / "athletes/mara.athlete.yaml"] = 0
        team.changed()
        after = {path: path.stat().st_mtime_ns for path in team.root.rglob("*")}
        after[team.root / "athletes/mara.athlete.yaml"] = 0
        assert after == before

    def test_no_program_of_the_checkout_is_run(self, team: Team, monkeypatch: pytest.MonkeyPatch) -> None:
        trap = team.root / "git"
        trap.write_text(f"#!/bin/sh\ntouch {team.root}/trapped\n")
        trap.chmod(0o755)
        for name in ("core.fsmonitor", "diff.external", "core.pager", "core.editor"):
            team.git("config", name, str(trap))
        team.git("config", "diff.plans.textconv", str(trap))
        team.write(".gitattributes", "*.yaml diff=plans\n")
        team.write("athletes/mara.athlete.yaml", "name: Mara\n")
        monkeypatch.setenv("PATH", os.pathsep.join(["", ".", os.environ["PATH"]]))
        assert team.changed() == MARA
        assert not (team.root / "trapped").exists()


class TestTheShortcut:
    def test_files_that_lean_on_nothing_that_changed_are_not_even_looked_for(
        self, team: Team, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        for number in range(200):
            text = PLAN.replace("NAME", "mara").replace("Winter", f"Winter {number}")
            team.write(f"plans/other-{number}.programme.yaml", text)
        team.commit()
        team.write("athletes/kim.athlete.yaml", "name: Kim\nlevel: advanced\n")
        looked: list[str] = []
        real = repository.real
        monkeypatch.setattr(repository, "real", lambda path: looked.append(path) or real(path))
        for _ in range(2):
            looked.clear()
            assert main(["review", "--changed"]) in (0, 1)
        assert len(looked) < 40

    def test_a_second_run_reads_only_what_is_new(self, team: Team, monkeypatch: pytest.MonkeyPatch) -> None:
        team.write("athletes/kim.athlete.yaml", "name: Kim\nlevel: advanced\n")
        assert team.changed() == KIM
        read: list[str] = []
        data = door.data
        monkeypatch.setattr(door, "data", lambda path, *most: read.append(path) or data(path, *most))
        assert team.changed() == KIM
        assert {os.path.basename(path) for path in read if path.endswith(".programme.yaml")} == {
            "kim.programme.yaml"
        }

    def test_it_follows_the_files(self, team: Team) -> None:
        team.write("athletes/kim.athlete.yaml", "name: Kim\nlevel: advanced\n")
        team.changed()
        team.write("plans/mara-2.programme.yaml", PLAN.replace("NAME", "kim"))
        assert "plans/mara-2.programme.yaml" in team.changed()
        team.git("update-index", "--assume-unchanged", "juniors/open.programme.yaml")
        team.write("juniors/open.programme.yaml", PLAN.replace("NAME", "kim"))
        assert "juniors/open.programme.yaml" in team.changed()

    @pytest.mark.parametrize(
        "damage",
        ["", "{", "[]", "null", '{"form": 9}', '{"form": 1, "mentions": {"a": [1]}}', "[" * 9000, "\0"],
    )
    def test_a_damaged_one_changes_nothing(self, team: Team, damage: str) -> None:
        team.write("athletes/kim.athlete.yaml", "name: Kim\nlevel: advanced\n")
        team.changed()
        kept = Path(state_file(listing.WHAT, str(team.root)))
        assert kept.exists()
        assert not kept.is_relative_to(team.root)
        kept.write_text(damage)
        assert team.changed() == KIM

    def test_one_that_cannot_be_kept(self, team: Team, monkeypatch: pytest.MonkeyPatch) -> None:
        team.write("in the way", "")
        monkeypatch.setenv("XDG_STATE_HOME", str(team.root / "in the way"))
        monkeypatch.setenv("LOCALAPPDATA", str(team.root / "in the way"))
        team.write("athletes/kim.athlete.yaml", "name: Kim\nlevel: advanced\n")
        assert team.changed() == KIM

    @pytest.mark.parametrize(
        "written",
        [
            '"../athletes/k\\u0069m.athlete.yaml"',
            "'../athletes/Kim.athlete.yaml'",
            "{athlete: ../athletes/kim.athlete.yaml}",
        ],
    )
    def test_however_a_name_is_written(self, team: Team, written: str) -> None:
        text = PLAN.replace("athlete: ../athletes/NAME.athlete.yaml", f"athletes: [{written}]")
        team.write("plans/odd.programme.yaml", text)
        team.commit()
        team.write("athletes/kim.athlete.yaml", "name: Kim\nlevel: advanced\n")
        same = "Kim" not in written or os.path.exists("athletes/KIM.athlete.yaml")
        assert ("plans/odd.programme.yaml" in team.changed()) is same


def missing(team: Team, name: str) -> object:
    (one,) = [one for one in team.review().files if one.name.endswith(name)]
    (found,) = [found for found in one.findings if found.rule == "athlete-missing"]
    return [(edit.words, edit.certain) for edit in found.edits]


class TestPathsOfRenamedAthletes:
    def test_a_renamed_file_is_a_mend(self, team: Team) -> None:
        team.git("mv", "athletes/kim.athlete.yaml", "athletes/o'kim, jr.athlete.yaml")
        assert missing(team, "kim.programme.yaml") == [("'../athletes/o''kim, jr.athlete.yaml'", True)]
        main(["mend", "plans/kim.programme.yaml"])
        assert (
            "athlete: '../athletes/o''kim, jr.athlete.yaml'\n"
            in (team.root / "plans/kim.programme.yaml").read_text()
        )

    def test_another_persons_file_is_none(self, team: Team) -> None:
        team.git("mv", "athletes/kim.athlete.yaml", "athletes/lou.athlete.yaml")
        team.write("athletes/lou.athlete.yaml", "name: Lou\nlevel: novice\n")
        team.git("add", "--all")
        assert missing(team, "kim.programme.yaml") == []

    def test_a_file_of_that_name_elsewhere_may_be_anothers(self, team: Team) -> None:
        (team.root / "athletes/kim.athlete.yaml").unlink()
        team.write("squad/kim.athlete.yaml", "name: Kim\nage: 20\nminutes: 50\ndays: [monday]\n")
        assert missing(team, "kim.programme.yaml") == [("../squad/kim.athlete.yaml", False)]

    def test_another_case_is_a_mend(self, team: Team) -> None:
        text = FILES["plans/kim.programme.yaml"].replace("../athletes/kim", "../Athletes/KIM")
        team.write("plans/kim.programme.yaml", text)
        assert missing(team, "kim.programme.yaml") == [("../athletes/kim.athlete.yaml", True)]


def test_the_editor_asks_git_nothing(team: Team, monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(root: str) -> Callable[..., object]:
        raise AssertionError("git was asked")

    monkeypatch.setattr(git, "Repository", refuse)
    assert not Workspace(DAY, incremental=True).asks_git
