"""The record of known findings: what it holds, what it keeps back, and records that cannot be used."""

from __future__ import annotations

import json
import os
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.cli.main import main
from spotline.lint.findings.finding import Amount, Finding
from spotline.lint.mending.record import record_known
from spotline.lint.project.overlay import Overlay
from spotline.lint.project.results import FileReview, Review
from spotline.lint.project.review import review
from spotline.lint.syntax import builder
from spotline.lint.syntax.builder import parse
from spotline.lint.team.known_findings import (
    KEYS,
    NAME,
    Entry,
    Record,
    entry_of,
    files_on_record,
    path_of,
    read_record,
    record_of,
    record_text,
    written_path,
)
from spotline.lint.text.places import Text
from spotline.lint.text.repository import FileResolver
from spotline.lint.text.safe_writer import NotWrittenError

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
        assert record_known(["."], DAY).written == [NAME]
        held = json.loads((root / NAME).read_text(encoding="utf-8"))
        assert held["form"] == 3
        assert list(held) == ["form", "known"]
        assert all(tuple(entry)[:4] == KEYS for entry in held["known"])
        mine = [tuple(entry.values())[:4] for entry in held["known"] if entry["rule"] == SLIP]
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

    def test_recording_some_paths_keeps_the_others(self, team: TeamOf) -> None:
        root = team(a=PLAN, b=PLAN, c=PLAN)
        record_known(["."], DAY)
        whole = json.loads((root / NAME).read_text(encoding="utf-8"))
        team(b=PLAN.replace("sets: 20", "sets: 30"))
        (root / "c.programme.yaml").unlink()
        record_known(["b.programme.yaml"], DAY)
        held = json.loads((root / NAME).read_text(encoding="utf-8"))
        mine, others = (
            [one for one in held["known"] if (one["file"][0] == "b") is is_b] for is_b in (True, False)
        )
        assert [one["counted"] for one in mine if one["rule"] == SLIP] == [30, 200]
        assert others == [one for one in whole["known"] if one["file"][0] == "a"]

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
        assert record_known(["one", "two"], DAY).written == [f"one/{NAME}", f"two/{NAME}"]

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
        (file,) = now().files  # the same place, but worse
        assert (slips(file), known(file)) == (["25"], ["200"])
        (worse,) = [one for one in file.findings if one.rule == SLIP]
        assert worse.related[-1].words == "on record with 20 sets: worse now"
        assert worse.related[-1].place.text.name == NAME

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
        values = dict(zip(KEYS, ("a", "b", "", ""), strict=True))
        (finding,) = Record([Entry(values, place)]).stale(["a"], "/", ["b"])
        assert finding.counted == "b in a is on record, but no longer found."

    def test_what_is_found_is_not_gone(self) -> None:
        place = Text("x", "x").place(0, 1)
        finding = Finding("b", "note", place, "c", why="d")
        record = Record([Entry(entry_of(finding, "/", 0), place)])
        record.split([finding], "/", 0)
        assert list(record.stale(["/"], "/", ["b"])) == []


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
            '{"form": 4, "known": []}',
            '{"form": true, "known": []}',
            WHOLE.replace('"s"', '"s", "severity": "fatal"'),
            WHOLE.replace('"s"', '"s", "severity": "note", "weeks": 1'),
            WHOLE.replace('"s"', '"s", "severity": "note", "weeks": "x", "said": "x"'),
            WHOLE.replace('"s"', '"s", "severity": "note", "weeks": 1, "counted": 1, "wanted": "2"'),
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
        (root / NAME).write_text('{"form": 4, "known": []}')
        (finding,) = now().files[1].findings
        assert finding.counted.endswith("It is no record of known findings of form 3.")
        assert finding.place.line == 1

    def test_bytes_that_are_no_text(self, team: TeamOf) -> None:
        root = team(a=PLAN)
        (root / NAME).write_bytes(b"\xff\xfe\x00")
        assert [finding.rule for finding in now().files[1].findings] == ["known-findings-unreadable"]

    def test_recording_anew_mends_it(self, team: TeamOf) -> None:
        root = team(a=PLAN)
        (root / NAME).write_text("{")
        assert record_known(["."], DAY).written == [NAME]
        assert now().exit_code == 0

    def test_a_sound_one(self, tmp_path: Path) -> None:
        (tmp_path / NAME).write_text(WHOLE)
        record = record_in(tmp_path)
        assert record.broken == ()
        assert [one.counted for one in record.stale(["a.programme.yaml"], str(tmp_path), ["r"])] == [
            "r in a.programme.yaml (w) is on record, but no longer found."
        ]

    def test_none(self, tmp_path: Path) -> None:
        record = record_in(tmp_path)
        assert record.broken == ()
        assert list(record.stale(["a"], str(tmp_path), ["r"])) == []

    def test_an_empty_one(self, tmp_path: Path) -> None:
        (tmp_path / NAME).write_text(record_text([]))
        assert record_in(tmp_path).broken == ()

    def test_a_write_that_fails_leaves_the_old_one(
        self, team: TeamOf, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        root = team(a=PLAN)
        (root / NAME).write_text(record_text([]))
        before = (root / NAME).read_text()

        def refuse(old: str, new: str) -> None:
            raise OSError(28, "No space left on device")

        monkeypatch.setattr(os, "replace", refuse)
        with pytest.raises(NotWrittenError, match="no space left"):
            record_known(["."], DAY)
        assert (root / NAME).read_text() == before
        assert sorted(os.listdir(root)) == [".git", "a.programme.yaml", NAME, "spotline.yaml"]


def test_a_record_that_cannot_be_written_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / ".git").mkdir()
    (tmp_path / NAME).mkdir()  # a folder stands where the record is to go
    (tmp_path / "a.programme.yaml").write_text("programme: A\nsessions: []\n", encoding="utf-8")
    assert main(["review", "--record-known", str(tmp_path)]) == 2
    assert capsys.readouterr().err.startswith("spotline: nothing was recorded: ")
    assert sorted(path.name for path in tmp_path.iterdir()) == [".git", "a.programme.yaml", NAME]


TAB = "programme: Test\nsessions:\n\t- session: A\n"


class TestWhatIsNeverOnRecord:
    def test_what_cannot_be_read_or_meant(self, team: TeamOf, capsys: pytest.CaptureFixture[str]) -> None:
        root = team(
            a=PLAN.replace("focus:", "focsu:"), b=PLAN.replace("focus:", "athlete: gone.athlete.yaml\nfocus:")
        )
        assert main(["review", "--record-known"]) == 1
        assert "2 findings of reading cannot be on record" in capsys.readouterr().err
        rules = {one["rule"] for one in json.loads((root / NAME).read_text(encoding="utf-8"))["known"]}
        assert SLIP in rules  # a team can start with the rest
        assert not rules & {"key-unknown", "athlete-missing"}
        assert {one.rule for file in now().files for one in file.findings} == {
            "key-unknown",
            "athlete-missing",
        }

    def test_an_entry_for_such_a_finding_holds_nothing_back(self, team: TeamOf) -> None:
        root = team(a=TAB)
        (found,) = now().files[0].findings
        keys = ("a.programme.yaml", found.rule, found.where, found.subject)
        entry = json.dumps(dict(zip(KEYS, keys, strict=True)))
        for form in (1, 2):
            (root / NAME).write_text(f'{{"form": {form}, "known": [{entry}]}}')
            assert now().exit_code == 1
            assert [one.rule for one in now().files[0].findings] == [found.rule]

    @pytest.mark.parametrize(
        "breaks", ["tab", "settings", "folder", "unreadable", "too large", "a link that leads out"]
    )
    def test_what_was_on_record_stays_where_the_job_could_not_be_done(
        self, team: TeamOf, breaks: str, capsys: pytest.CaptureFixture[str], tmp_path: Path
    ) -> None:
        root = team(a=PLAN, b=PLAN)
        record_known(["."], DAY)
        before = (root / NAME).read_text(encoding="utf-8")
        file = root / "a.programme.yaml"
        if breaks == "settings":
            (root / "spotline.yaml").write_text("preset: [")
        elif breaks == "tab":
            file.write_text(TAB)
        else:
            file.unlink()
        if breaks == "folder":
            file.mkdir()
        if breaks == "unreadable":
            os.mkfifo(file)
        if breaks == "too large":
            with file.open("wb") as sparse:
                sparse.truncate(1 << 30)
        if breaks == "a link that leads out":
            (tmp_path / "out.yaml").write_text(PLAN)
            file.symlink_to(tmp_path / "out.yaml")
        gone = [one for file in now().files for one in file.findings if one.rule == "known-finding-gone"]
        assert gone == []  # nothing is gone in a file that could not be read
        assert main(["review", "--record-known"]) == 2
        assert "could not be read" in capsys.readouterr().err
        assert (root / NAME).read_text(encoding="utf-8") == before


class TestOnlyWhatIsWorse:
    @pytest.mark.parametrize(
        ("change", "blocks"),
        [
            (("sets: 20", "sets: 19"), False),
            (("sets: 20", "sets: 20.0"), False),
            (("sets: 20", "sets: 21"), True),
            (("reps: 200", "reps: 201"), True),
            (("focus: [chest]", "focus: [chest]\nweeks: 9"), False),
        ],
    )
    def test_sizes(self, team: TeamOf, change: tuple[str, str], blocks: bool) -> None:
        team(a=PLAN)
        record_known(["."], DAY)
        team(a=PLAN.replace(*change))
        assert bool(slips(now().files[0])) is blocks

    def test_more_weeks(self, team: TeamOf) -> None:
        text = PLAN.replace("focus:", "weeks: 6\nfocus:").replace("sets: 20", "sets: {WEEKS: 20, other: 3}")
        team(a=text.replace("WEEKS", "2-3"))
        record_known(["."], DAY)
        team(a=text.replace("WEEKS", "3-4"))
        assert slips(now().files[0]) == []
        team(a=text.replace("WEEKS", "2-4"))
        assert slips(now().files[0]) == ["20"]

    def test_a_lowered_limit(self, team: TeamOf) -> None:
        root = team(a=PLAN.replace("sets: 20", "sets: 10"))
        limit = "weekly limits: {chest: LIMIT}\n"
        (root / "spotline.yaml").write_text(limit.replace("LIMIT", "9"))
        record_known(["."], DAY)
        assert now().exit_code == 0
        (root / "spotline.yaml").write_text(limit.replace("LIMIT", "6"))
        assert "weekly-sets-over-limit" in {one.rule for one in now().files[0].findings}

    def test_the_smallest_entry_that_holds_it_is_used_up_first(self) -> None:
        place = Text("x", "x").place(0, 1)

        def found(counted: float) -> Finding:
            return Finding("r", "note", place, "c", why="y", amount=Amount(counted, 10))

        record = Record([Entry(entry_of(found(sets), "f", 0), place) for sets in (30, 20)])
        new, known = record.split([found(19), found(29), found(11)], "f", 0)
        assert [one.amount.counted for one in known if one.amount] == [19, 29]
        assert [one.amount.counted for one in new if one.amount] == [11]

    @pytest.mark.parametrize(
        ("was", "is_now", "covered"),
        [
            ({"severity": "warning"}, {"severity": "error"}, False),
            ({"severity": "error"}, {"severity": "warning"}, True),
            ({"athletes": ("Bo",)}, {"athletes": ("Bo", "Cas")}, False),
            ({"athletes": ("Bo", "Cas")}, {"athletes": ("Cas",)}, True),
            ({"athletes": ("Bo",)}, {}, False),
            ({}, {"athletes": ("Bo",)}, True),
            ({"counted": "a"}, {"counted": "b"}, False),
            ({"counted": "a"}, {"counted": "a"}, True),
            ({"weeks": (1, 2)}, {"weeks": (1, 2, 3, 4)}, False),
            ({"weeks": (1, 2, 3, 4)}, {"weeks": (1,)}, True),
            ({"amount": Amount(20, 12)}, {}, False),
            ({"amount": Amount(4, 10)}, {"amount": Amount(3, 10)}, False),
            ({"amount": Amount(4, 10)}, {"amount": Amount(5, 10)}, True),
        ],
    )
    def test_every_measure(self, was: dict[str, object], is_now: dict[str, object], covered: bool) -> None:
        place = Text("x", "x").place(0, 1)
        one, other = (
            Finding("r", **{"severity": "note", "place": place, "counted": "c", "why": "y", **values})  # type: ignore[arg-type]
            for values in (was, is_now)
        )
        assert Entry(entry_of(one, "f", 4), place).covers(entry_of(other, "f", 4)) is covered


class TestNames:
    @given(words=st.text(st.characters(exclude_categories=("Cs",)), min_size=1, max_size=12))
    def test_any_name_survives_the_round_trip(self, words: str) -> None:
        place = Text("x", "x").place(0, 1)
        finding = Finding("r", "note", place, words, where=words, subject=words, why="y")
        text = record_text([entry_of(finding, words, 0)])
        record = record_of(parse(NAME, text))
        assert record.broken == ()
        assert record.split([finding], words, 0) == ([], [finding])
        assert list(files_on_record(text.encode()) or {}) == [words]

    @given(name=st.binary(min_size=1, max_size=12))
    def test_any_file_name_survives_it(self, name: bytes) -> None:
        path = os.fsdecode(name)
        assert path_of(written_path(path)) == path
        assert written_path(path).isascii() or "\ufffd" not in written_path(path)
        written_path(path).encode()  # it can be written

    @pytest.mark.parametrize(
        "session", ["\U0001f3cb\ufe0f Heavy", "深蹲", "\\x41 \\u0041", "a: b # c", "\u00ad\u200b", "'\"`"]
    )
    def test_any_name_of_a_session(self, team: TeamOf, session: str) -> None:
        team(a=PLAN.replace("session: A", f"session: {json.dumps(session, ensure_ascii=False)}"))
        before = len(now().files[0].findings)
        record_known(["."], DAY)
        (file,) = now().files
        assert len(file.known) + len(file.findings) == before
        assert known(file) == ["20", "200"]

    def test_a_file_name_that_is_no_text(self, team: TeamOf) -> None:
        root = team(a=PLAN)
        os.rename(root / "a.programme.yaml", os.fsencode(root) + b"/\xff\\x41.programme.yaml")
        record_known(["."], DAY)
        (file,) = now().files
        assert known(file) == ["20", "200"]


class TestWhereItIsWritten:
    def test_never_through_a_link_out_of_the_repository(
        self, team: TeamOf, tmp_path: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        root = team(a=PLAN)
        victim = tmp_path / "victim"
        victim.write_text("kept")
        (root / NAME).symlink_to(victim)
        assert main(["review", "--record-known"]) == 2
        assert "a link that leads out of the repository" in capsys.readouterr().err
        assert victim.read_text() == "kept"
        assert main(["review"]) == 2  # nor is it read

    def test_a_broken_record_gives_way_only_to_a_whole_one(
        self, team: TeamOf, capsys: pytest.CaptureFixture[str]
    ) -> None:
        root = team(a=PLAN)
        (root / NAME).write_text("<<<<<<< ours\n")
        assert main(["review", "--record-known", "a.programme.yaml"]) == 2
        assert "would be lost" in capsys.readouterr().err
        assert (root / NAME).read_text() == "<<<<<<< ours\n"
        assert main(["review", "--record-known", "."]) == 0

    def test_a_record_that_would_be_too_large_is_not_written(
        self, team: TeamOf, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        root = team(a=PLAN)
        monkeypatch.setattr(builder, "LONGEST_FILE", 300)
        with pytest.raises(NotWrittenError, match="could not be read back"):
            record_known(["."], DAY)
        assert not (root / NAME).exists()

    def test_a_record_without_sizes_says_so(self, team: TeamOf) -> None:
        root = team(a=PLAN)
        record_known(["."], DAY)
        held = json.loads((root / NAME).read_text())
        old = [{key: one[key] for key in KEYS} for one in held["known"]]
        (root / NAME).write_text(json.dumps({"form": 2, "known": old}))
        file, record = now().files
        assert (slips(file), known(file)) == ([], ["20", "200"])
        assert [one.rule for one in record.findings] == ["known-findings-without-sizes"]
        assert now().exit_code == 0
