"""What cannot be run here: the path code under the rules of Windows, and a list of every call that differs."""

from __future__ import annotations

import ast
import ntpath
import os
from datetime import date
from pathlib import Path
from types import SimpleNamespace

import pytest

from spotline.lint.cli.main import main
from spotline.lint.project import review
from spotline.lint.team import read_settings
from spotline.lint.text import repository, safe_writer
from spotline.lint.text.repository import is_inside
from spotline.lint.text.safe_writer import replace
from spotline.lint.weighing import revision

DAY = date(2026, 1, 5)

READING = {
    # the one door for reading, and what writes
    "lint/text/files.py": {"open", "os.open"},
    "lint/text/safe_writer.py": {"open", "os.open"},
    "lint/project/discovery.py": {"os.scandir"},
    "lint/text/letters.py": {"os.listdir"},
    "lint/weighing/revision.py": {"open"},
    "lint/cli/streams.py": {"os.open"},
    "lint/cli/worker.py": {"open", "os.open"},
    "lint/cli/compiled.py": {"open"},
    "lint/editor/server.py": {"open"},
    "lint/body/build.py": {"open", "read_text", "write_text"},
    "lint/body/build_data.py": {"open", "read_text", "os.listdir"},
    "lint/body/build_faults.py": {"open"},
    "lint/editor/caret/named_candidates.py": {"os.walk"},
    "schema/__init__.py": {"open", "read_text"},
    "lint/guide/show.py": {"read_text"},
}
"""Modules that open files or folders, and by which calls. All else goes through `files.data`.

`body.build` is run by who changes the catalogue, `schema` reads what was installed, the editor writes its own log,
`cli.compiled` keeps our own code beside what Python has compiled of it, `weighing.revision` writes what git holds of an earlier version into an empty folder of its own.
"""

DIFFERENT = {
    "lint/cli/worker.py": {"os.dup2"},  # on every system
    "lint/cli/compiled.py": {"os.replace"},  # where it is held open, it stays as it was
    "lint/text/files.py": {"os.O_NONBLOCK", "os.O_BINARY", "os.access"},
    "lint/text/safe_writer.py": {
        "os.O_BINARY",
        "os.O_NOFOLLOW",
        "os.access",
        "os.chmod",
        "os.replace",
        "os.name",
    },
    "lint/text/letters.py": {"os.name", "sys.platform"},
    "lint/text/state.py": {"os.name", "sys.platform"},
    "lint/project/git.py": {"os.name", "os.access"},
    "lint/weighing/revision.py": {"os.symlink"},
    "lint/cli/streams.py": {"os.dup2"},
    "lint/editor/protocol/streams.py": {"os.dup2", "os.O_BINARY", "sys.platform"},
}
"""Every call that differs between systems. Flags that a system lacks are asked for by `getattr`; a replaced file
that is held open is tried again on Windows; its folder is put on the disk only where folders can be opened;
where an account may make no links, an earlier version is compared without them."""

OPENING = {
    "open",
    "os.open",
    "os.scandir",
    "os.listdir",
    "os.walk",
    "io.open",
    "read_text",
    "read_bytes",
    "write_text",
    "write_bytes",
}
DIFFERING = {
    *(f"os.{name}" for name in (
        "fork", "kill", "killpg", "mkfifo", "getuid", "geteuid", "chown", "fchmod", "chmod", "access", "replace", "rename",
        "link", "symlink", "dup2", "setsid", "wait4", "nice", "uname", "name", "O_NONBLOCK", "O_NOFOLLOW", "O_BINARY", "sync",
    )),
    "sys.platform", "signal.SIGALRM", "signal.alarm", "signal.SIGKILL", "fcntl", "pwd", "grp", "resource", "select.poll",
}  # fmt: skip


def used(path: Path, wanted: set[str]) -> set[str]:
    """Which of these a module uses: ``os.open`` by its dotted name, others by their last part."""
    found = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Attribute):
            owner = node.value.id if isinstance(node.value, ast.Name) else ""
            found |= {f"{owner}.{node.attr}", node.attr if node.attr.startswith(("read_", "write_")) else ""}
        elif isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            found.add(node.func.id)
            if node.func.id == "getattr" and isinstance(node.args[1], ast.Constant):
                found.add(f"{ast.unparse(node.args[0])}.{node.args[1].value}")
        elif isinstance(node, (ast.Import, ast.ImportFrom)):
            found |= {alias.name for alias in node.names}
    return found & wanted


def by_module(root: Path, wanted: set[str]) -> dict[str, set[str]]:
    modules = [path for part in ("lint", "rules", "schema") for path in sorted((root / part).rglob("*.py"))]
    found = {path.relative_to(root).as_posix(): used(path, wanted) for path in modules}
    return {name: calls for name, calls in found.items() if calls}


def test_every_byte_comes_through_one_door(root: Path) -> None:
    found = by_module(root, OPENING)
    assert {
        name: calls - READING.get(name, set())
        for name, calls in found.items()
        if calls - READING.get(name, set())
    } == {}
    assert set(found) <= set(READING)


def test_every_call_that_differs_between_systems_is_on_the_list(root: Path) -> None:
    assert by_module(root, DIFFERING) == DIFFERENT


@pytest.fixture
def windows(monkeypatch: pytest.MonkeyPatch) -> None:
    """The path code under the rules of Windows."""
    rules = SimpleNamespace(path=ntpath, sep="\\", curdir=".", name="nt")
    monkeypatch.setattr(repository, "os", rules)


@pytest.mark.usefixtures("windows")
class TestWindows:
    @pytest.mark.parametrize(
        ("path", "inside"),
        [
            ("C:\\team\\a.programme.yaml", True),
            ("c:\\TEAM\\A.programme.yaml", True),
            ("C:/team/a.programme.yaml", True),
            ("C:\\team", True),
            ("C:\\teams\\a.programme.yaml", False),
            ("C:\\team-old\\a.programme.yaml", False),
            ("D:\\team\\a.programme.yaml", False),
            ("\\\\server\\share\\a.programme.yaml", False),
        ],
    )
    def test_inside(self, path: str, inside: bool) -> None:
        assert is_inside("C:\\team", path) is inside
        assert is_inside("C:\\", path) is path.casefold().startswith("c:")

    def test_folders_up_to_the_root(self) -> None:
        found = list(repository.folders_up("C:\\team\\a\\b", "C:\\team"))
        assert found == ["C:\\team\\a\\b", "C:\\team\\a", "C:\\team"]

    @pytest.mark.parametrize(
        "path", ["C:\\team\\x.programme.yaml", "C:/team/x.programme.yaml", "x.programme.yaml"]
    )
    def test_kinds(self, path: str) -> None:
        assert repository.kind_of(path) == "programme"
        assert repository.kind_of("C:\\team\\spotline.yaml") == "team"


def test_paths_of_an_earlier_version_stay_in_its_folder_on_windows(monkeypatch: pytest.MonkeyPatch) -> None:
    rules = SimpleNamespace(path=ntpath, sep="\\")
    monkeypatch.setattr(revision, "os", rules)
    assert revision._is_plain("plans/a.programme.yaml")
    for path in (
        "..\\..\\a.programme.yaml",
        "plans/..\\..\\a.yaml",
        "C:a.yaml",
        "plans/C:\\a.yaml",
        "\\\\host\\a.yaml",
    ):
        assert not revision._is_plain(path), path


PLAN = """\
programme: Winter
athlete: NAME
sessions:
  - session: A
    exercises: [{exercise: back squat, sets: 3, reps: 5, rir: 2, rest: 3 min}]
"""


class TestNamesThatDifferInCase:
    """A file that opens by other letters, too, as on Windows and macOS: here by a second name that no folder lists."""

    @pytest.fixture
    def team(self, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
        (tmp_path / ".git").mkdir()
        monkeypatch.chdir(tmp_path)
        (tmp_path / "Anna.athlete.yaml").write_text("name: Anna\n")
        return tmp_path

    def ignoring_case(self, team: Path, monkeypatch: pytest.MonkeyPatch, true: str, written: str) -> None:
        os.link(team / true, team / written)
        listed = os.listdir
        monkeypatch.setattr(
            os, "listdir", lambda folder: [name for name in listed(folder) if name != written]
        )
        for module in (review, read_settings):
            monkeypatch.setattr(module, "ignores_case", lambda: True)

    def found(self, *paths: str) -> list[tuple[str, str, int, int]]:
        return [
            (found.rule, found.severity, found.place.line, found.place.column)
            for one in review.review(list(paths), DAY).files
            for found in one.findings
            if found.rule.endswith(("letters", "cases", "missing"))
        ]

    def test_an_athlete_who_is_found_here_only(self, team: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        plan = team / "a.programme.yaml"
        plan.write_text(PLAN.replace("NAME", "anna.athlete.yaml"))
        self.ignoring_case(team, monkeypatch, "Anna.athlete.yaml", "anna.athlete.yaml")
        assert self.found(plan.name) == [("athlete-in-other-letters", "warning", 2, 10)]
        main(["mend", plan.name])
        assert plan.read_text() == PLAN.replace("NAME", "Anna.athlete.yaml")
        assert self.found(plan.name) == []

    def test_an_athlete_among_several(self, team: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        plan = team / "a.programme.yaml"
        plan.write_text(PLAN.replace("athlete: NAME", "athletes: [{name: Mara}, ./anna.athlete.yaml]"))
        self.ignoring_case(team, monkeypatch, "Anna.athlete.yaml", "anna.athlete.yaml")
        assert self.found(plan.name) == [("athlete-in-other-letters", "warning", 2, 26)]

    def test_the_same_name_on_a_system_that_tells_them_apart(self, team: Path) -> None:
        plan = team / "a.programme.yaml"
        plan.write_text(PLAN.replace("NAME", "anna.athlete.yaml"))
        assert self.found(plan.name) == [("athlete-missing", "error", 2, 10)]
        main(["mend", plan.name])
        assert plan.read_text() == PLAN.replace("NAME", "Anna.athlete.yaml")

    @pytest.mark.parametrize("ignored", [True, False])
    def test_exercises_of_the_team(self, team: Path, monkeypatch: pytest.MonkeyPatch, ignored: bool) -> None:
        (team / "Own.exercises.yaml").write_text(
            "exercises:\n  - {name: dock squat, actions: [knee extension], implement: barbell, kind: dynamic}\n"
        )
        (team / "spotline.yaml").write_text("exercises: [own.exercises.yaml]\n")
        (team / "a.programme.yaml").write_text(PLAN.replace("athlete: NAME\n", ""))
        if ignored:
            self.ignoring_case(team, monkeypatch, "Own.exercises.yaml", "own.exercises.yaml")
            expected = ("exercises-in-other-letters", "warning", 1, 13)
        else:
            expected = ("exercises-missing", "error", 1, 13)
        assert self.found("a.programme.yaml", "spotline.yaml") == [expected]

    def test_two_files_of_which_other_systems_keep_one(self, team: Path) -> None:
        (team / "anna.athlete.yaml").write_text("name: Anna\nage: 30\n")
        (team / "bea.athlete.yaml").write_text("name: Bea\n")
        two = ("file-in-two-cases", "warning", 1, 1)
        assert self.found(".") == [two, two]
        assert self.found("bea.athlete.yaml") == []

    def test_names_of_the_teams_own_in_two_cases(self, team: Path) -> None:
        (team / "spotline.yaml").write_text("our names: {Toe Push: standing calf raise, toe push: push-up}\n")
        told = {found.rule for one in review.review(["spotline.yaml"], DAY).files for found in one.findings}
        assert "our-name-unclear" in told


class TestAFileThatIsHeldOpen:
    def held(self, monkeypatch: pytest.MonkeyPatch, times: int) -> list[float]:
        """Windows, on which another program holds the file for some tries; the pauses that are made."""
        real, pauses, left = os.replace, [], [times]

        def put(old: str, new: str) -> None:
            left[0] -= 1
            if left[0] >= 0:
                raise PermissionError(13, "Access is denied")
            real(old, new)

        monkeypatch.setattr(os, "replace", put)
        monkeypatch.setattr(safe_writer, "sleep", pauses.append)
        monkeypatch.setattr(safe_writer, "PAUSES", (1, 2))
        return pauses

    def test_it_is_tried_again_on_windows(self, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        file = tmp_path / "a"
        file.write_bytes(b"old")
        pauses = self.held(monkeypatch, 2)
        monkeypatch.setattr(safe_writer.os, "name", "nt")
        try:
            replace(str(file), b"old", b"new", str(tmp_path))
        finally:
            monkeypatch.undo()
        assert (file.read_bytes(), pauses) == (b"new", [1, 2])
        assert os.listdir(tmp_path) == ["a"]
