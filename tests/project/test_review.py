"""The review: which files are found, what belongs to them, what blocks."""

from __future__ import annotations

import os
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import FileReview, Review
from spotline.lint.project.review import review

TODAY = date(2026, 1, 5)

CLEAN = (
    "programme: Clean\nfocus: [chest]\nsessions: [{session: A, exercises: [{exercise: push-up, sets: 3}]}]\n"
)
"""Nothing at all is said of it."""
NOTED = CLEAN.replace("focus", "goal: hypertrophy\nfocus")
"""One note: few sets for the chest."""
WARNED = CLEAN.replace("sets: 3", "sets: 3, reps: 200")
"""One warning: repetitions that nobody means."""
WRONG = CLEAN.replace("sets: 3", "sets: 3, rir: 2, rpe: 10")
"""One error: RIR against RPE."""


@pytest.fixture
def repository(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty repository in which the review runs."""
    root = tmp_path / "repository"
    (root / ".git").mkdir(parents=True)
    monkeypatch.chdir(root)
    return root


@pytest.fixture
def write(repository: Path) -> Callable[[str, str], Path]:
    def put(name: str, text: str) -> Path:
        path = repository / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
        return path

    return put


Write = Callable[[str, str], Path]


def names(*paths: str) -> list[str]:
    return [one.name for one in review(list(paths), TODAY).files]


def only(*paths: str) -> FileReview:
    (one,) = review(list(paths), TODAY).files
    return one


def rules(*paths: str) -> list[str]:
    return [finding.rule for one in review(list(paths), TODAY).files for finding in one.findings]


@pytest.mark.parametrize(
    ("text", "said"),
    [
        (CLEAN, []),
        (NOTED, ["weekly-sets-under-floor"]),
        (WARNED, ["number-implausible"]),
        (WRONG, ["rir-rpe-contradict"]),
    ],
)
def test_what_the_texts_of_these_tests_say(write: Write, text: str, said: list[str]) -> None:
    write("a.programme.yaml", text)
    assert rules("a.programme.yaml") == said


class TestFolders:
    def test_programmes_and_athletes_in_the_order_of_their_names(self, write: Write) -> None:
        for name in (
            "b.programme.yml",
            "a.programme.yaml",
            "c/d.programme.yaml",
            "c/b.athlete.yml",
            "notes.yaml",
            "c/readme.md",
        ):
            write(name, CLEAN if "programme" in name else "name: A\n")
        assert names(".") == ["a.programme.yaml", "b.programme.yml", "c/b.athlete.yml", "c/d.programme.yaml"]

    def test_a_folder_keeps_the_name_it_was_asked_by(self, write: Write, repository: Path) -> None:
        write("c/d.programme.yaml", CLEAN)
        assert names("c") == ["c/d.programme.yaml"]
        assert names(str(repository / "c")) == [str(repository / "c" / "d.programme.yaml")]

    def test_hidden_folders_are_passed_over(self, write: Write) -> None:
        write(".drafts/a.programme.yaml", CLEAN)
        write("a/.old/b.programme.yaml", CLEAN)
        write("a/c.programme.yaml", CLEAN)
        assert names(".") == ["a/c.programme.yaml"]
        assert names(".drafts") == [".drafts/a.programme.yaml"]  # but not if asked for

    def test_folders_of_packages_are_passed_over(self, write: Write) -> None:
        write("venv/pyvenv.cfg", "home = here\n")
        for folder in ("venv/lib", "tools/node_modules/x", "tools/__pycache__", "tools"):
            write(f"{folder}/a.programme.yaml", CLEAN)
        assert names(".") == ["tools/a.programme.yaml"]
        assert names("venv/lib") == ["venv/lib/a.programme.yaml"]  # but not if asked for
        assert names("venv") == ["venv/lib/a.programme.yaml"]

    def test_settings_further_down_are_heeded(self, write: Write) -> None:
        write("spotline.yaml", "leave out: [old]\n")
        write("a/spotline.yaml", "leave out: [drafts]\n")
        for folder in ("old", "drafts", "a/old", "a/drafts", "a/b/drafts"):
            write(f"{folder}/c.programme.yaml", CLEAN)
        assert names(".") == [
            "a/b/drafts/c.programme.yaml",
            "a/old/c.programme.yaml",
            "drafts/c.programme.yaml",
        ]

    def test_linked_folders_are_not_followed(self, write: Write, repository: Path) -> None:
        write("a/b.programme.yaml", CLEAN)
        os.symlink(repository, repository / "a" / "round")
        assert names(".") == ["a/b.programme.yaml"]

    def test_each_file_once(self, write: Write, repository: Path) -> None:
        write("a/b.programme.yaml", CLEAN)
        os.symlink(repository / "a" / "b.programme.yaml", repository / "a" / "c.programme.yaml")
        assert names("a/b.programme.yaml", ".", "a", "./a/b.programme.yaml") == ["a/b.programme.yaml"]

    def test_the_order_asked_for(self, write: Write) -> None:
        for name in ("a/x.programme.yaml", "b/x.programme.yaml"):
            write(name, CLEAN)
        assert names("b", "a") == ["b/x.programme.yaml", "a/x.programme.yaml"]

    def test_any_file_that_is_named_is_a_programme(self, write: Write) -> None:
        write("plan.yaml", WRONG)
        assert rules("plan.yaml") == ["rir-rpe-contradict"]

    def test_nothing_found(self, repository: Path) -> None:
        whole = review(["."], TODAY)
        assert whole.files == []
        assert whole.exit_code == 2


class TestFilesThatCannotBeOpened:
    @pytest.mark.parametrize("name", ["nobody.programme.yaml", "no/such/folder"])
    def test_what_is_not_there(self, repository: Path, name: str) -> None:
        one = only(name)
        assert [finding.rule for finding in one.findings] == ["file-not-opened"]
        assert (one.opened, one.ledger) == (False, None)
        assert review([name], TODAY).exit_code == 2

    def test_a_folder_with_the_name_of_a_programme(self, write: Write, repository: Path) -> None:
        (repository / "x.programme.yaml").mkdir()
        write("y.programme.yaml", WRONG)
        assert rules(".") == ["file-not-opened", "rir-rpe-contradict"]
        assert review(["."], TODAY).exit_code == 2

    def test_a_pipe_is_not_waited_for(self, repository: Path) -> None:
        os.mkfifo(repository / "x.programme.yaml")
        (finding,) = only(".").findings
        assert finding.counted == "The file could not be opened: it is a pipe or a device, not a file."

    def test_a_link_that_leads_nowhere(self, repository: Path) -> None:
        os.symlink("nowhere", repository / "x.programme.yaml")
        (finding,) = only(".").findings
        assert finding.counted == "The file could not be opened: it is a link to a file that is not there."

    def test_the_others_are_reviewed_all_the_same(self, write: Write, repository: Path) -> None:
        write("a.programme.yaml", "[")
        write("b.programme.yaml", WRONG)
        said = rules(".", "gone.programme.yaml")
        assert said[-2:] == ["rir-rpe-contradict", "file-not-opened"]


class TestAthletes:
    ATHLETE = "name: Mara\n"

    def with_athlete(self, path: str) -> str:
        return CLEAN.replace("focus", f"athlete: {path}\nfocus", 1)

    def test_found_from_the_folder_of_the_programme(self, write: Write) -> None:
        write("athletes/mara.athlete.yaml", self.ATHLETE)
        write("plans/a.programme.yaml", self.with_athlete("../athletes/mara.athlete.yaml"))
        one = only("plans/a.programme.yaml")
        assert one.findings == []
        assert one.ledger is not None
        assert [athlete.name for athlete in one.ledger.programme.athletes] == ["Mara"]

    def test_missing(self, write: Write) -> None:
        write("a.programme.yaml", self.with_athlete("mara.athlete.yaml"))
        (finding,) = only(".").findings
        assert (finding.rule, finding.severity) == ("athlete-missing", "error")
        assert (finding.place.line, finding.place.excerpt, finding.where) == (
            2,
            "mara.athlete.yaml",
            "athlete",
        )
        assert (
            finding.counted == "There is no file mara.athlete.yaml (paths start at the folder of this file)."
        )

    @pytest.mark.parametrize(
        "path", ["../out.athlete.yaml", "plans/../../out.athlete.yaml", "../../../../../etc/out.athlete.yaml"]
    )
    def test_outside(self, write: Write, repository: Path, path: str) -> None:
        (repository.parent / "out.athlete.yaml").write_text(self.ATHLETE)
        write("a.programme.yaml", self.with_athlete(path))
        one = only(".")
        assert [(finding.rule, finding.place.excerpt) for finding in one.findings] == [
            ("athlete-outside", path)
        ]
        assert one.ledger is not None
        assert one.ledger.programme.athletes == ()

    @pytest.mark.parametrize("link", ["file", "folder"])
    def test_a_link_that_leads_out_of_the_repository(self, write: Write, repository: Path, link: str) -> None:
        (repository.parent / "out.athlete.yaml").write_text(self.ATHLETE)
        if link == "file":
            os.symlink("../out.athlete.yaml", repository / "in.athlete.yaml")
            path = "in.athlete.yaml"
        else:
            os.symlink("..", repository / "up")
            path = "up/out.athlete.yaml"
        write("a.programme.yaml", self.with_athlete(path))
        assert rules("a.programme.yaml") == ["athlete-outside"]

    def test_a_link_inside_the_repository(self, write: Write, repository: Path) -> None:
        write("athletes/mara.athlete.yaml", self.ATHLETE)
        os.symlink("athletes/mara.athlete.yaml", repository / "mara.athlete.yaml")
        write("a.programme.yaml", self.with_athlete("mara.athlete.yaml"))
        assert rules("a.programme.yaml") == []

    @pytest.mark.parametrize(
        ("text", "because"), [("- a list\n", "top-not-a-list-of-keys"), ("", "file-empty"), ("name: [", None)]
    )
    def test_unreadable(self, write: Write, text: str, because: str | None) -> None:
        write("mara.athlete.yaml", text)
        write("a.programme.yaml", self.with_athlete("mara.athlete.yaml"))
        (finding,) = only("a.programme.yaml").findings
        assert (finding.rule, finding.place.excerpt) == ("athlete-unreadable", "mara.athlete.yaml")
        assert [related.place.text.name for related in finding.related] == ["mara.athlete.yaml"]
        if because:
            assert rules("mara.athlete.yaml")[0] == because

    def test_a_folder_in_its_place(self, write: Write, repository: Path) -> None:
        (repository / "mara.athlete.yaml").mkdir()
        write("a.programme.yaml", self.with_athlete("mara.athlete.yaml"))
        assert rules("a.programme.yaml") == ["athlete-unreadable"]

    def test_what_is_wrong_in_the_athletes_file_is_said_there(self, write: Write) -> None:
        write("mara.athlete.yaml", "name: Mara\nlevel: begginer\n")
        write("a.programme.yaml", self.with_athlete("mara.athlete.yaml"))
        assert rules("a.programme.yaml") == []
        assert [
            (one.name, [finding.rule for finding in one.findings])
            for one in review(["mara.athlete.yaml"], TODAY).files
        ] == [
            ("mara.athlete.yaml", ["value-unknown"]),
            ("a.programme.yaml", []),
        ]

    def test_an_athletes_file_brings_the_programmes_that_name_it(self, write: Write) -> None:
        write("athletes/mara.athlete.yaml", self.ATHLETE)
        write("athletes/sam.athlete.yaml", "name: Sam\n")
        write("plans/one.programme.yaml", self.with_athlete("../athletes/mara.athlete.yaml"))
        write(
            "plans/deep/two.programme.yml",
            CLEAN.replace(
                "focus",
                "athletes: [../../athletes/sam.athlete.yaml, ../../plans/../athletes/mara.athlete.yaml]\nfocus",
            ),
        )
        write("plans/other.programme.yaml", self.with_athlete("../athletes/sam.athlete.yaml"))
        write("plans/inline.programme.yaml", CLEAN + "note: mara.athlete.yaml\n")
        write("plans/broken.programme.yaml", "mara.athlete.yaml: [")
        assert names("athletes/mara.athlete.yaml") == [
            "athletes/mara.athlete.yaml",
            "plans/broken.programme.yaml",  # it may name her: who knows
            "plans/deep/two.programme.yml",
            "plans/one.programme.yaml",
        ]

    def test_also_from_below(self, write: Write, repository: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        write("athletes/mara.athlete.yaml", self.ATHLETE)
        write("one.programme.yaml", self.with_athlete("athletes/mara.athlete.yaml"))
        monkeypatch.chdir(repository / "athletes")
        assert names("mara.athlete.yaml") == ["mara.athlete.yaml", "../one.programme.yaml"]

    def test_a_programme_left_out_is_not_brought(self, write: Write) -> None:
        write("spotline.yaml", "leave out: [old]\n")
        write("mara.athlete.yaml", self.ATHLETE)
        write("old/one.programme.yaml", self.with_athlete("../mara.athlete.yaml"))
        assert names("mara.athlete.yaml") == ["mara.athlete.yaml"]

    def test_an_athlete_is_read_once_for_several_programmes(self, write: Write) -> None:
        write("mara.athlete.yaml", self.ATHLETE)
        for name in "ab":
            write(f"{name}.programme.yaml", self.with_athlete("mara.athlete.yaml"))
        first, second = (one.ledger for one in review(["."], TODAY).files if one.ledger)
        assert first.programme.athletes[0] is second.programme.athletes[0]


class TestSettings:
    def test_what_is_left_out(self, write: Write) -> None:
        write("spotline.yaml", "leave out: [archive, drafts/*.programme.yaml, plans/old]\n")
        for name in ("archive/a", "archive/deep/b", "drafts/c", "plans/old/d", "plans/e", "archived/f"):
            write(f"{name}.programme.yaml", CLEAN)
        assert names(".") == ["archived/f.programme.yaml", "plans/e.programme.yaml"]

    def test_what_is_asked_for_by_name_is_reviewed_all_the_same(self, write: Write) -> None:
        write("spotline.yaml", "leave out: [archive]\n")
        write("archive/deep/a.programme.yaml", CLEAN)
        assert (
            names("archive/deep/a.programme.yaml")
            == names("archive")
            == names("archive/deep")
            == ["archive/deep/a.programme.yaml"]
        )

    @pytest.mark.parametrize(
        ("text", "settings", "exit_code"),
        [
            (CLEAN, "", 0),
            (NOTED, "", 0),
            (WARNED, "", 1),
            (WRONG, "", 1),
            (WARNED, "block commit on: [error]\n", 0),
            (WRONG, "block commit on: [error]\n", 1),
            (NOTED, "block commit on: [note]\n", 1),
            (WRONG, "block commit on: [note]\n", 0),
            (WRONG, "block commit on: []\n", 0),
            (NOTED, "block commit on: [error, warning, note]\n", 1),
        ],
    )
    def test_what_blocks(self, write: Write, text: str, settings: str, exit_code: int) -> None:
        if settings:
            write("spotline.yaml", settings)
        write("a.programme.yaml", text)
        whole = review(["."], TODAY)
        assert (whole.exit_code, whole.blocked) == (exit_code, exit_code == 1)

    def test_the_nearest_settings_hold(self, write: Write) -> None:
        write("spotline.yaml", "block commit on: [error]\n")
        write("strict/spotline.yaml", "block commit on: [warning]\n")
        write("strict/deep/a.programme.yaml", WARNED)
        write("b.programme.yaml", WARNED)
        assert [one.blocked for one in review(["b.programme.yaml", "strict"], TODAY).files] == [False, True]

    def test_settings_above_the_repository_do_not_hold(self, write: Write, repository: Path) -> None:
        (repository.parent / "spotline.yaml").write_text("block commit on: []\n")
        write("a.programme.yaml", WARNED)
        assert review(["."], TODAY).exit_code == 1

    @pytest.mark.parametrize(
        ("settings", "rule"),
        [
            ("block commit on: [eror]\n", "value-unknown"),
            ("weekly limit: {chest: 10}\n", "key-unknown"),
            ("weekly limits: {chest: many}\n", None),
            ("weekly limits: {wings: 10}\n", "area-unknown"),
            ("- a list\n", "top-not-a-list-of-keys"),
            ("weekly limits: {chest: 10\n", None),
        ],
    )
    def test_broken_settings_are_shown_and_the_job_is_not_done(
        self, write: Write, settings: str, rule: str | None
    ) -> None:
        write("spotline.yaml", settings)
        write("a.programme.yaml", CLEAN)
        whole = review(["a.programme.yaml"], TODAY)
        assert whole.exit_code == 2
        assert [one.name for one in whole.files] == ["a.programme.yaml", "spotline.yaml"]
        assert whole.files[0].findings == []
        assert rule in (None, *(finding.rule for finding in whole.files[1].findings))
        assert whole.count("error") >= 1

    def test_nothing_of_broken_settings_is_applied(self, write: Write) -> None:
        write("spotline.yaml", "block commit on: []\nweekly limits: {wings: 1}\n")
        write("a.programme.yaml", WARNED)
        assert [one.blocked for one in review(["."], TODAY).files] == [True, True]

    def test_sound_settings_are_not_listed_unless_asked_for(self, write: Write) -> None:
        write("spotline.yaml", "weekly limits: {chest: 10}\n")
        write("a.programme.yaml", CLEAN)
        assert names(".") == ["a.programme.yaml"]
        assert names("spotline.yaml") == ["spotline.yaml"]
        assert review(["spotline.yaml"], TODAY).exit_code == 0

    def test_an_unknown_muscle_group_is_said_with_the_nearest(self, write: Write) -> None:
        write("spotline.yaml", "weekly limits:\n  hamstrigns: 10\n")
        (finding,) = only("spotline.yaml").findings
        assert (finding.place.line, finding.place.column, finding.place.excerpt) == (2, 3, "hamstrigns")
        assert "hamstrings" in finding.change
        assert finding.edits[0].words == "hamstrings"


class TestOrder:
    def findings(self, write: Write) -> list[Finding]:
        write(
            "a.programme.yaml",
            "programme: Test\nstarts: 2026-02-30\nfocus: [xyzzy]\nsessions:\n  - session: A\n    exercises:\n"
            "      - {exercise: moon walk, sets: 3, rir: 2, rpe: 10, rets: 9}\n      - {exercise: leg press, sets: 30}\n",
        )
        return only(".").findings

    def test_findings_stand_in_the_order_of_the_file(self, write: Write) -> None:
        found = self.findings(write)
        assert len(found) >= 6
        assert [finding.place.start for finding in found] == sorted(finding.place.start for finding in found)

    def test_two_reviews_say_the_same(self, write: Write) -> None:
        def words(found: list[Finding]) -> list[tuple[object, ...]]:
            return [
                (one.rule, one.place, one.severity, one.counted, one.wanted, one.change, one.weeks)
                for one in found
            ]

        assert words(self.findings(write)) == words(self.findings(write))


@pytest.mark.parametrize(("on", "said"), [(date(2026, 3, 1), 0), (date(2026, 3, 2), 1)])
def test_the_day_of_the_review_ends_a_stage_of_rehabilitation(write: Write, on: date, said: int) -> None:
    head = "rehabilitation: {stage: heel drops, advised by: physiotherapist, until: 2026-03-01}\nfocus"
    write("spotline.yaml", "rules: {number-implausible: skip}\n")
    write("a.programme.yaml", CLEAN.replace("focus", head).replace("sets: 3", "sets: 30, reps: 5"))
    leading = review(["."], on).files[0].findings
    found = [finding.rule for lead in leading for finding in (lead, *lead.follows)]
    assert found.count("weekly-sets-over-limit") == said


@pytest.mark.parametrize("marker", [".git", "spotline.yaml", None])
def test_the_root_of_the_repository(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, marker: str | None
) -> None:
    plans = tmp_path / "team" / "plans"
    plans.mkdir(parents=True)
    if marker == ".git":
        (tmp_path / "team" / ".git").write_text("gitdir: elsewhere\n")  # as in a work tree
    elif marker:
        (tmp_path / "team" / marker).write_text("weekly limits: {chest: 10}\n")
    (tmp_path / "team" / "in.athlete.yaml").write_text("name: A\n")
    (tmp_path / "out.athlete.yaml").write_text("name: B\n")
    monkeypatch.chdir(tmp_path / "team" if marker is None else tmp_path)
    text = CLEAN.replace("focus", "athletes: [../in.athlete.yaml, ../../out.athlete.yaml]\nfocus")
    (plans / "a.programme.yaml").write_text(text)
    one = only(str(plans / "a.programme.yaml"))
    assert [(finding.rule, finding.place.excerpt) for finding in one.findings] == [
        ("athlete-outside", "../../out.athlete.yaml")
    ]


def test_a_rule_that_fails_fails_the_review(write: Write) -> None:
    from spotline.lint.engine.run import Fault

    write("a.programme.yaml", CLEAN)
    one = only(".")
    one.faults.append(Fault("a-rule", "ZeroDivisionError: division by zero"))
    assert Review([one]).exit_code == 2
