"""Whether there is a sheet at all, whose, and where it goes: nothing is lost to one."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from spotline.lint.sheets.request import NoSheetError, paths, sheets, write
from spotline.lint.sheets.seal import OPEN, is_untouched, sealed
from spotline.lint.text.safe_writer import NotWrittenError
from spotline.tests.sheets.conftest import Folder

PLAN = """\
programme: Plan
athlete: bo.athlete.yaml
sessions: [{session: A, exercises: [{exercise: push-up, sets: 3, reps: 8}]}]
"""
SQUAD = """\
programme: Squad
athletes: [{name: Bo}, {name: Ann-Kristin Ö}, {name: bo}]
sessions: [{session: A, exercises: [{exercise: push-up, sets: 3, reps: 8}]}]
"""


def refused(folder: Folder, text: str, **asked: object) -> NoSheetError:
    with pytest.raises(NoSheetError) as caught:
        folder.sheet(text, **asked)
    return caught.value


class TestErrors:
    @pytest.mark.parametrize(
        ("plan", "athlete", "rule", "file"),
        [
            (
                PLAN.replace("reps: 8", "reps: 8, rir: 2, rpe: 10"),
                "name: Bo\n",
                "rir-rpe-contradict",
                "plan.programme",
            ),
            (PLAN.replace("sets: 3", "sets: [3"), "name: Bo\n", "", "plan.programme"),
            (PLAN, "name: Bo\nbest lifts: {back squat: heavy}\n", "", "bo.athlete"),
            (PLAN, "name: Bo\nlevel: begginer\n", "value-unknown", "bo.athlete"),
            (PLAN.replace("bo.", "gone."), "name: Bo\n", "athlete-missing", "plan.programme"),
        ],
    )
    def test_a_programme_with_errors_gets_no_sheet(
        self, folder: Folder, plan: str, athlete: str, rule: str, file: str
    ) -> None:
        folder.write(athlete, "bo.athlete.yaml")
        fault = refused(folder, plan)
        assert "mend the errors first" in str(fault)
        assert fault.review is not None
        found = [finding for one in fault.review.files for finding in one.findings]
        assert found
        assert {one.severity for one in found} == {"error"}
        assert all(file in one.place.text.name for one in found)
        assert not rule or rule in {one.rule for one in found}

    def test_warnings_and_notes_do_not_stand_in_the_way(self, folder: Folder) -> None:
        folder.write("name: Bo\n", "bo.athlete.yaml")
        sheet = folder.sheet(PLAN.replace("push-up", "moon walk").replace("sets: 3", "sets: 40"))
        assert sheet.weeks[0].sessions[0].lines[0].exercise == "moon walk"

    def test_an_error_on_record_still_does(self, folder: Folder, monkeypatch: pytest.MonkeyPatch) -> None:
        from datetime import date

        from spotline.lint.mending.record import record_known

        monkeypatch.chdir(folder.path)
        folder.write("name: Bo\n", "bo.athlete.yaml")
        text = PLAN.replace("reps: 8", "reps: 8, rir: 2, rpe: 10")
        record_known([str(folder.write(text))], date(2026, 1, 5))
        assert refused(folder, text).review is not None

    def test_errors_in_another_programme_of_the_athlete_do_not(self, folder: Folder) -> None:
        folder.write("name: Bo\n", "bo.athlete.yaml")
        folder.write(PLAN.replace("reps: 8", "reps: 8, rir: 2, rpe: 10"), "other.programme.yaml")
        assert folder.sheet(PLAN).athlete == "Bo"

    def test_broken_settings(self, folder: Folder) -> None:
        folder.write("colour: red\n", "spotline.yaml")
        folder.write("name: Bo\n", "bo.athlete.yaml")
        refused(folder, PLAN)

    @pytest.mark.parametrize("name", ["gone.programme.yaml", "bo.athlete.yaml", "."])
    def test_what_is_no_programme(self, folder: Folder, name: str, monkeypatch: pytest.MonkeyPatch) -> None:
        from datetime import date

        monkeypatch.chdir(folder.path)
        folder.write("name: Bo\n", "bo.athlete.yaml")
        with pytest.raises(NoSheetError):
            sheets(name, date(2026, 1, 5))

    def test_a_week_that_is_not_there(self, folder: Folder) -> None:
        folder.write("name: Bo\n", "bo.athlete.yaml")
        assert str(refused(folder, PLAN, week=2)) == "there is no week 2: the programme has weeks 1 to 1"


class TestAthletes:
    def test_each_has_a_sheet_and_a_file_of_their_own(self, folder: Folder, today: object) -> None:
        built = sheets(str(folder.write(SQUAD)), today)  # type: ignore[arg-type]
        assert [one.athlete for one in built] == ["Bo", "Ann-Kristin Ö", "bo"]
        assert paths("a/plan.programme.yml", built, "md", 3) == [
            "a/plan-bo-week-3.sheet.md",
            "a/plan-ann-kristin-ö-week-3.sheet.md",
            "a/plan-bo-2-week-3.sheet.md",
        ]

    def test_one_of_them_by_name(self, folder: Folder) -> None:
        assert folder.sheet(SQUAD, athlete="ANN-KRISTIN Ö").athlete == "Ann-Kristin Ö"

    def test_a_name_that_nobody_has(self, folder: Folder) -> None:
        said = str(refused(folder, SQUAD, athlete="Ann-Kristin"))
        assert said == "nobody on the programme is called 'Ann-Kristin'. Did you mean Ann-Kristin Ö?"

    def test_an_adjusted_load_is_on_their_sheet_alone(self, folder: Folder, today: object) -> None:
        text = SQUAD.replace("{name: Bo}", "{athlete: {name: Bo}, adjust: [{exercise: push-up, sets: 5}]}")
        first, second, _ = sheets(str(folder.write(text)), today)  # type: ignore[arg-type]
        counts = [one.weeks[0].sessions[0].lines[0].doses[0].sets for one in (first, second)]
        assert counts == ["5 sets", "3 sets"]


class TestSeal:
    TEXT = f"<!-- {OPEN} -->\nwords, and {OPEN}\n"

    def test_what_was_written_is_known_again(self) -> None:
        assert is_untouched(sealed(self.TEXT))

    @pytest.mark.parametrize(
        "text", ["", "words", f"{OPEN}", sealed(TEXT) + "\n", sealed(TEXT).replace("words", "Words", 1)]
    )
    def test_all_else_is_not(self, text: str) -> None:
        assert not is_untouched(text)


class TestWriting:
    OURS, OTHER = sealed(f"{OPEN} one\n"), sealed(f"{OPEN} two\n")

    def test_a_new_file_and_an_earlier_sheet(self, tmp_path: Path) -> None:
        path = tmp_path / "a.html"
        write(str(path), self.OURS)
        write(str(path), self.OTHER)
        assert path.read_text(encoding="utf-8") == self.OTHER

    @pytest.mark.parametrize("there", ["", "the coach's own", OURS + "3 x 8 done\n", "\udcff"])
    def test_nothing_else_is_written_over(self, tmp_path: Path, there: str) -> None:
        path = tmp_path / "a.html"
        before = there.encode(errors="surrogateescape")
        path.write_bytes(before)
        with pytest.raises(NotWrittenError, match="--overwrite"):
            write(str(path), self.OTHER)
        assert path.read_bytes() == before
        write(str(path), self.OTHER, overwrite=True)
        assert path.read_text(encoding="utf-8") == self.OTHER

    def test_a_folder_a_pipe_and_a_link_are_left_alone(self, tmp_path: Path) -> None:
        (tmp_path / "folder").mkdir()
        os.symlink("nowhere", tmp_path / "link")
        (tmp_path / "elsewhere").mkdir()
        (tmp_path / "elsewhere" / "a").write_text(self.OURS)
        os.symlink(tmp_path / "elsewhere" / "a", tmp_path / "folder" / "out")
        for name in ("folder", "link", "folder/out", "gone/a.html"):
            with pytest.raises(NotWrittenError):
                write(str(tmp_path / name), self.OTHER, overwrite=True)
        assert (tmp_path / "elsewhere" / "a").read_text() == self.OURS
