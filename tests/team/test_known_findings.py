"""The record of known findings: what it holds, what it keeps back, and records that cannot be used."""

from __future__ import annotations

import json
import os
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.cli.main import main
from spotline.lint.findings.finding import Finding
from spotline.lint.project.overlay import Overlay
from spotline.lint.project.results import FileReview, Review
from spotline.lint.project.review import record_known, review
from spotline.lint.team import known_findings
from spotline.lint.team.known_findings import KEYS, NAME, Record, read_record, write_record
from spotline.lint.text.places import Text
from spotline.lint.text.repository import FileResolver

DAY = date(2026, 1, 5)

PLAN = """\
programme: Test
focus: [chest]
sessions:
  - session: A
    exercises:
      - {exercise: bench press, sets: 20, reps: 5, rir: 2}
  - session: B
    exercises:
      - {exercise: bench press, sets: 3, reps: 200, rir: 2}
"""
"""Two slips, in A and in B."""

SLIP = "number-implausible"


@pytest.fixture
def team(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[..., Path]:
    """Writes files into a repository, in which the review runs."""
    root = tmp_path / "team"
    (root / ".git").mkdir(parents=True)
    monkeypatch.chdir(root)

    def put(**files: str) -> Path:
        for name, text in files.items():
            path = root / f"{name.replace('__', '/')}.programme.yaml"
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text, encoding="utf-8")
        (root / "spotline.yaml").write_text("rules: {weekly-sets-over-limit: skip}\n")
        return root

    return put


TeamOf = Callable[..., Path]


def record_in(root: Path) -> Record:
    return read_record(FileResolver().file(str(root / NAME)), Overlay().read)


def now(*paths: str) -> Review:
    return review(list(paths) or ["."], DAY)


def slips(file: FileReview) -> list[str]:
    return [finding.place.excerpt for finding in file.findings if finding.rule == SLIP]


def known(file: FileReview) -> list[str]:
    return [finding.place.excerpt for finding in file.known if finding.rule == SLIP]


class TestRecording:
    def test_what_stands_in_the_file(self, team: TeamOf) -> None:
        root = team(b__late=PLAN, a=PLAN)
        assert record_known(["."], DAY) == [NAME]
        held = json.loads((root / NAME).read_text(encoding="utf-8"))
        assert held["form"] == 2
        assert list(held) == ["form", "known"]
        assert all(tuple(entry) == KEYS for entry in held["known"])
        mine = [tuple(entry.values()) for entry in held["known"] if entry["rule"] == SLIP]
        assert mine == [
            ("a.programme.yaml", SLIP, "A, bench press, sets", ""),
            ("a.programme.yaml", SLIP, "B, bench press, reps", ""),
            ("b/late.programme.yaml", SLIP, "A, bench press, sets", ""),
            ("b/late.programme.yaml", SLIP, "B, bench press, reps", ""),
        ]
        assert [entry["file"] for entry in held["known"]] == sorted(e["file"] for e in held["known"])
        assert "line" not in (root / NAME).read_text(encoding="utf-8")

    def test_nothing_is_left_halfway(self, team: TeamOf) -> None:
        root = team(a=PLAN)
        record_known(["."], DAY)
        assert sorted(os.listdir(root)) == [".git", "a.programme.yaml", NAME, "spotline.yaml"]
        assert (root / NAME).read_text(encoding="utf-8").endswith("}\n")

    def test_it_replaces_the_record_whole(self, team: TeamOf) -> None:
        root = team(a=PLAN, b=PLAN)
        record_known(["."], DAY)
        record_known(["b.programme.yaml"], DAY)
        held = json.loads((root / NAME).read_text(encoding="utf-8"))
        assert {entry["file"] for entry in held["known"]} == {"b.programme.yaml"}

    def test_recording_twice_records_the_same(self, team: TeamOf) -> None:
        root = team(a=PLAN)
        record_known(["."], DAY)
        first = (root / NAME).read_text(encoding="utf-8")
        record_known(["."], DAY)  # what is known already is recorded again
        assert (root / NAME).read_text(encoding="utf-8") == first

    def test_each_repository_its_own(self, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        for name in ("one", "two"):
            (tmp_path / name / ".git").mkdir(parents=True)
            (tmp_path / name / "a.programme.yaml").write_text(PLAN)
        monkeypatch.chdir(tmp_path)
        assert record_known(["one", "two"], DAY) == [f"one/{NAME}", f"two/{NAME}"]

    def test_what_is_waived_is_not_recorded(self, team: TeamOf) -> None:
        root = team(a=PLAN.replace("rir: 2}\n  -", f"rir: 2}}  # spotline: waive {SLIP} because x\n  -"))
        record_known(["."], DAY)
        held = json.loads((root / NAME).read_text(encoding="utf-8"))
        assert [entry["where"] for entry in held["known"] if entry["rule"] == SLIP] == [
            "B, bench press, reps"
        ]


class TestKeepingBack:
    def test_only_what_is_new_blocks(self, team: TeamOf) -> None:
        team(a=PLAN)
        assert now().exit_code == 1
        record_known(["."], DAY)
        whole = now()
        assert whole.exit_code == 0
        (file,) = whole.files
        assert (slips(file), known(file)) == ([], ["20", "200"])
        assert whole.suppressed()[1] == len(file.known)
        team(a=PLAN.replace("sets: 3", "sets: 30"))
        whole = now()
        assert whole.exit_code == 1
        assert (slips(whole.files[0]), known(whole.files[0])) == (["30"], ["20", "200"])

    def test_edits_elsewhere_do_not_matter(self, team: TeamOf) -> None:
        team(a=PLAN)
        record_known(["."], DAY)
        team(a=PLAN.replace("sessions:\n", "# a comment\nnote: new\nsessions:\n").replace("20,", "25,"))
        (file,) = now().files
        assert (slips(file), known(file)) == ([], ["25", "200"])  # the same place, still too many

    def test_another_session_name_is_another_place(self, team: TeamOf) -> None:
        team(a=PLAN)
        record_known(["."], DAY)
        team(a=PLAN.replace("session: A", "session: C"))
        file, record = now().files
        assert (slips(file), known(file)) == (["20"], ["200"])
        assert [finding.rule for finding in record.findings].count("known-finding-gone") >= 1

    def test_another_file_is_another_place(self, team: TeamOf) -> None:
        team(a=PLAN)
        record_known(["."], DAY)
        team(b=PLAN)
        assert [slips(one) for one in now("a.programme.yaml", "b.programme.yaml").files] == [
            [],
            ["20", "200"],
        ]

    def test_each_entry_stands_for_one_finding(self, team: TeamOf) -> None:
        double = (
            PLAN.replace("session: B", "session: A")
            .replace("reps: 200", "reps: 5")
            .replace("sets: 3", "sets: 25")
        )
        team(a=PLAN.replace("reps: 200", "reps: 5"))
        record_known(["."], DAY)
        team(a=double)
        (file,) = now().files
        assert (slips(file), known(file)) == (["25"], ["20"])

    @pytest.mark.parametrize("asked", [".", "deep", "deep/a.programme.yaml"])
    def test_from_wherever_it_is_asked(self, team: TeamOf, asked: str) -> None:
        team(deep__a=PLAN)
        record_known(["."], DAY)
        assert [known(one) for one in now(asked).files] == [["20", "200"]]

    def test_from_below(self, team: TeamOf, monkeypatch: pytest.MonkeyPatch) -> None:
        root = team(deep__a=PLAN)
        record_known(["."], DAY)
        monkeypatch.chdir(root / "deep")
        assert [known(one) for one in now(".").files] == [["20", "200"]]


class TestGone:
    def test_the_words(self, team: TeamOf) -> None:
        team(a=PLAN)
        record_known(["."], DAY)
        team(a=PLAN.replace("reps: 200", "reps: 5"))
        _, record = now().files
        assert (record.name, record.kind, record.opened) == (NAME, "record", True)
        (finding,) = [one for one in record.findings if SLIP in one.counted]
        assert (finding.rule, finding.severity) == ("known-finding-gone", "note")
        assert finding.counted == (
            f"{SLIP} in a.programme.yaml (B, bench press, reps) is on record, but no longer found."
        )
        assert finding.change == "Good. Record anew with `spotline review --record-known`."
        assert finding.place.text.name == NAME
        assert json.loads(finding.place.excerpt)["where"] == "B, bench press, reps"
        assert now().exit_code == 0

    def test_only_of_files_that_were_looked_at(self, team: TeamOf) -> None:
        team(a=PLAN, b=PLAN)
        record_known(["."], DAY)
        team(a=PLAN.replace("sets: 20", "sets: 2"))
        assert [one.name for one in now("b.programme.yaml").files] == ["b.programme.yaml"]
        assert [one.name for one in now("a.programme.yaml").files] == ["a.programme.yaml", NAME]

    def test_of_a_file_that_is_no_longer_there(self, team: TeamOf) -> None:
        root = team(a=PLAN, b=PLAN)
        record_known(["."], DAY)
        (root / "a.programme.yaml").unlink()
        _, record = now("b.programme.yaml").files
        assert {one.counted.split(" in ")[1][:16] for one in record.findings} == {"a.programme.yaml"}

    def test_without_a_place(self) -> None:
        place = Text("x", "x").place(0, 1)
        (finding,) = Record([(("a", "b", "", ""), place)]).stale(["a"], "/")
        assert finding.counted == "b in a is on record, but no longer found."

    def test_what_is_found_is_not_gone(self) -> None:
        place = Text("x", "x").place(0, 1)
        record = Record([(("/", "b", "", ""), place)])
        record.split([Finding("b", "note", place, "c")], "/")
        assert list(record.stale(["/"], "/")) == []


WHOLE = '{"form": 1, "known": [{"file": "a.programme.yaml", "rule": "r", "where": "w", "subject": "s"}]}'


class TestBroken:
    @pytest.mark.parametrize(
        "text",
        [
            "",
            "{",
            "[]",
            "words",
            "null",
            '{"form": 1}',
            '{"form": 1, "known": {}}',
            '{"form": 1, "known": null}',
            '{"form": 3, "known": []}',
            '{"form": "1", "known": []}',
            '{"known": []}',
            '{"form": 1, "known": ["a"]}',
            '{"form": 1, "known": [[]]}',
            '{"form": 1, "known": [{}]}',
            WHOLE.replace('"w"', "[]"),
            WHOLE.replace(', "subject": "s"', ""),
            WHOLE.replace('"form": 1, ', '"form": 1, "form": 1, '),
            WHOLE[:-1],
            "\x00",
        ],
    )
    def test_a_record_that_cannot_be_used(self, team: TeamOf, text: str) -> None:
        root = team(a=PLAN)
        (root / NAME).write_text(text, encoding="utf-8")
        whole = now()
        assert whole.exit_code == 2
        file, record = whole.files
        assert (slips(file), known(file)) == (["20", "200"], [])  # nothing of it is used
        (finding,) = record.findings
        assert (finding.rule, finding.severity) == ("known-findings-unreadable", "error")
        assert (record.name, record.opened) == (NAME, False)
        assert finding.counted.startswith("The record of known findings cannot be used. ")
        assert finding.change == "Mend it, or record anew with `spotline review --record-known`."

    def test_the_words_on_another_form(self, team: TeamOf) -> None:
        root = team(a=PLAN)
        (root / NAME).write_text('{"form": 3, "known": []}')
        (finding,) = now().files[1].findings
        assert finding.counted.endswith("It is no record of known findings of form 2.")
        assert finding.place.line == 1

    def test_bytes_that_are_no_text(self, team: TeamOf) -> None:
        root = team(a=PLAN)
        (root / NAME).write_bytes(b"\xff\xfe\x00")
        assert [finding.rule for finding in now().files[1].findings] == ["known-findings-unreadable"]

    def test_recording_anew_mends_it(self, team: TeamOf) -> None:
        root = team(a=PLAN)
        (root / NAME).write_text("{")
        assert record_known(["."], DAY) == [NAME]
        assert now().exit_code == 0

    def test_a_sound_one(self, tmp_path: Path) -> None:
        (tmp_path / NAME).write_text(WHOLE)
        record = record_in(tmp_path)
        assert record.broken == ()
        assert [one.counted for one in record.stale(["a.programme.yaml"], str(tmp_path))] == [
            "r in a.programme.yaml (w) is on record, but no longer found."
        ]

    def test_none(self, tmp_path: Path) -> None:
        record = record_in(tmp_path)
        assert record.broken == ()
        assert list(record.stale(["a"], str(tmp_path))) == []

    def test_an_empty_one(self, tmp_path: Path) -> None:
        assert write_record(str(tmp_path), []) == str(tmp_path / NAME)
        assert record_in(tmp_path).broken == ()

    def test_a_write_that_fails_leaves_the_old_one(
        self, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        write_record(str(tmp_path), [])
        before = (tmp_path / NAME).read_text()

        def refuse(old: str, new: str) -> None:
            raise OSError("no space left")

        monkeypatch.setattr(known_findings.os, "replace", refuse)
        finding = Finding("r", "note", Text("x", "x").place(0, 1), "c")
        with pytest.raises(OSError, match="no space left"):
            write_record(str(tmp_path), [(finding, "a")])
        assert (tmp_path / NAME).read_text() == before


def test_a_record_that_cannot_be_written_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / ".git").mkdir()
    (tmp_path / NAME).mkdir()  # a folder stands where the record is to go
    (tmp_path / "a.programme.yaml").write_text("programme: A\nsessions: []\n", encoding="utf-8")
    assert main(["review", "--record-known", str(tmp_path)]) == 2
    assert capsys.readouterr().err.startswith("spotline: nothing was recorded (")
    assert sorted(path.name for path in tmp_path.iterdir()) == [".git", "a.programme.yaml", NAME]
