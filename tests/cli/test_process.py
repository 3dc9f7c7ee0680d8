"""The edges of the process: streams closed or full, a stop, a folder that vanished, what lies in the checkout.

Each is told on one line, never by a traceback, and the exit code is never 1 for a job that was not done.
"""

from __future__ import annotations

import os
import re
import signal
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from spotline.lint.cli.main import main

PLAN = (
    "programme: Test\nsessions:\n  - session: A\n    exercises: [{exercise: back squat, sets: 3, reps: 5}]\n"
)
WRONG = PLAN.replace("sets: 3", "sets: 30")

COMMANDS = [
    ["review", "--as", "lines"],
    ["review", "--as", "cards"],
    ["review", "--as", "short"],
    ["review", "--as", "json"],
    ["rules"],
    ["exercises", "hamstrings"],
    ["schema", "programme"],
    ["--help"],
    ["--version"],
]


class Desk:
    """A folder with a programme, and a way to run the command in it from this very checkout."""

    def __init__(self, folder: Path, home: Path) -> None:
        self.folder = folder
        self.environment = {
            name: value for name, value in os.environ.items() if not name.startswith(("PYTHON", "PRE_COMMIT"))
        } | {"PYTHONPATH": str(home)}
        (folder / ".git").mkdir(parents=True)
        (folder / "a.programme.yaml").write_text(WRONG)

    def shell(self, words: str) -> tuple[int, str, str]:
        """Exit code, output and error output of a line of the shell, in which $S is the command."""
        environment = {**self.environment, "S": f"{sys.executable} -m spotline"}
        done = subprocess.run(
            ["sh", "-c", words], cwd=self.folder, env=environment, capture_output=True, text=True, timeout=60
        )
        return done.returncode, done.stdout, done.stderr


@pytest.fixture
def desk(tmp_path: Path, root: Path) -> Desk:
    home = tmp_path / "home"
    home.mkdir()
    (home / "spotline").symlink_to(root, target_is_directory=True)
    return Desk(tmp_path / "desk", home)


def is_one_line(said: str) -> bool:
    return said.startswith("spotline: ") and said.count("\n") == 1 and "Traceback" not in said


@pytest.mark.parametrize("words", COMMANDS, ids=" ".join)
def test_a_full_disk_behind_the_output(desk: Desk, words: list[str]) -> None:
    code, _, said = desk.shell(f"$S {' '.join(words)} > /dev/full")
    assert code == 2
    last = said.splitlines()[-1]
    assert last == "spotline: the job was not done: no space left on device"
    assert "Traceback" not in said
    assert "Exception" not in said


@pytest.mark.parametrize("words", COMMANDS, ids=" ".join)
def test_no_output_at_all(desk: Desk, words: list[str]) -> None:
    code, _, said = desk.shell(f"$S {' '.join(words)} >&-")
    assert (code, said) == (2, "spotline: there is no output to print to\n")


@pytest.mark.parametrize("words", COMMANDS, ids=" ".join)
def test_a_reader_who_has_gone(desk: Desk, words: list[str]) -> None:
    (desk.folder / "a.programme.yaml").write_text(WRONG + "more: [" + "x, " * 9000 + "]\n")
    code, out, said = desk.shell(f"{{ $S {' '.join(words)}; echo $? >&2; }} | true")
    assert (code, out) == (0, "")
    assert "Traceback" not in said
    assert "Exception" not in said
    assert said.splitlines()[-1] != ""


def test_no_error_output(desk: Desk) -> None:
    code, out, _ = desk.shell("$S review --as json 2>&-")
    assert code == 1
    assert out.startswith("{")  # nothing that belongs beside it has slipped in
    assert out.rstrip().endswith("}")
    assert desk.shell("$S review nothing.programme.yaml 2>&-")[0] == 2
    assert desk.shell("$S nonsense 2>/dev/full")[0] == 2


def test_no_input(desk: Desk) -> None:
    assert desk.shell("$S mend --ask <&-")[0] in (0, 1)
    code, _, said = desk.shell("$S set-up new <&-")
    assert (code, said) == (0, "")


@pytest.mark.parametrize(
    "words",
    ["review", "review --changed", "review --record-known", "mend", "exercises squat", "set-up", "set-up x"],
)
def test_a_working_folder_that_is_no_longer_there(desk: Desk, words: str) -> None:
    code, out, said = desk.shell(f'mkdir gone; cd gone; rmdir "$PWD"; $S {words}')
    assert (code, out) == (2, "")
    assert said.endswith("spotline: the job was not done: the working folder is no longer there\n"), said
    assert "Traceback" not in said


WAITING = '''\
"""A rule of a team's own that says when it is asked, and then waits for an input that nobody gives."""

import os
import sys

from spotline.lint.api import Ledger, Limits, rule


@rule("waits", family="ours", severity="note", confidence="fact", why="It waits.", sources=())
def waits(ledger: Ledger, limits: Limits):
    """Waits."""
    os.write(1, b"here\\n")
    sys.stdin.read()
    return ()
'''


def _heeds_the_keyboard() -> None:
    """As in a terminal: what a shell starts in the background hears no stop."""
    signal.signal(signal.SIGINT, signal.SIG_DFL)


class TestStopFromTheKeyboard:
    """Neither needs a clock: the command itself cannot go on before the stop has reached it."""

    def stopped(self, desk: Desk, *words: str) -> tuple[str, int, str]:
        """The first line of a review that is stopped once it has come, the exit code and the error output."""
        with subprocess.Popen(
            [sys.executable, "-m", "spotline", "review", *words],
            cwd=desk.folder,
            env=desk.environment,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
            preexec_fn=_heeds_the_keyboard,
        ) as process:
            assert process.stdout is not None
            first = process.stdout.readline()
            process.send_signal(signal.SIGINT)
            _, said = process.communicate(timeout=60)
            return first, process.returncode, said

    def test_while_it_reviews(self, desk: Desk, tmp_path: Path) -> None:
        (tmp_path / "home" / "ours.py").write_text(WAITING)
        assert self.stopped(desk, "--rules-from", "ours") == ("here\n", 130, "spotline: stopped\n")

    def test_while_it_prints(self, desk: Desk) -> None:
        for number in range(450):  # more than a pipe and the buffers at its ends hold, which is 80 KiB
            (desk.folder / f"p{number}.programme.yaml").write_text(WRONG)
        first, *end = self.stopped(desk, "--as", "cards")
        assert first == "a.programme.yaml\n"
        assert end == [130, "spotline: stopped\n"]


def test_nothing_of_the_checkout_is_run(desk: Desk) -> None:
    trap = "open('trapped', 'w').close()\nraise SystemExit(0)\n"
    names = (
        "yaml",
        "jsonschema",
        "difflib",
        "datetime",
        "re",
        "json",
        "os",
        "sitecustomize",
        "lint",
        "rules",
    )
    for name in names:
        (desk.folder / f"{name}.py").write_text(trap)
    (desk.folder / "spotline.yaml").write_text("weekly limits: {chest: 12}\n")
    code, out, said = desk.shell("$S review --as lines")
    assert code == 1, said
    assert "number-implausible" in out
    assert not (desk.folder / "trapped").exists()


def test_a_fault_of_our_own_is_one_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    from spotline.lint.cli import commands

    def fail(words: list[str]) -> int:
        raise {"recursion": RecursionError, "memory": MemoryError, "type": TypeError}[words[0]]("deep\ndown")

    monkeypatch.setitem(commands.COMMANDS, "review", fail)
    for kind in ("recursion", "memory", "type"):
        assert main(["review", kind]) == 2
        assert is_one_line(capsys.readouterr().err)
    monkeypatch.setenv("SPOTLINE_TRACEBACK", "1")
    with pytest.raises(TypeError):
        main(["review", "type"])


class TestWithoutPermission:
    def test_a_file_and_the_others_go_on(
        self, desk: Desk, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
    ) -> None:
        (desk.folder / "b.programme.yaml").write_text(WRONG)
        monkeypatch.chdir(desk.folder)
        refuse(monkeypatch, "open", "a.programme.yaml")
        assert main(["review", "--as", "lines"]) == 2
        out = capsys.readouterr().out
        assert "a.programme.yaml:1:1: error: file-not-opened: " in out
        assert "this account may not read it" in out
        assert "b.programme.yaml:4:46: warning: number-implausible: " in out

    def test_a_folder(
        self, desk: Desk, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
    ) -> None:
        (desk.folder / "deep").mkdir()
        monkeypatch.chdir(desk.folder)
        refuse(monkeypatch, "scandir", "deep")
        assert main(["review", "--as", "lines"]) == 2
        assert "deep:1:1: error: file-not-opened: " in capsys.readouterr().out

    def test_a_neighbour_of_the_athlete(
        self, desk: Desk, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
    ) -> None:
        (desk.folder / "mara.athlete.yaml").write_text("name: Mara\n")
        (desk.folder / "b.programme.yaml").write_text(
            PLAN.replace("sessions:", "athlete: mara.athlete.yaml\nsessions:")
        )
        monkeypatch.chdir(desk.folder)
        refuse(monkeypatch, "open", "a.programme.yaml")
        assert main(["review", "--as", "lines", "b.programme.yaml"]) == 0
        assert main(["review", "--as", "lines", "mara.athlete.yaml"]) == 2  # it may name her: who knows
        assert "a.programme.yaml:1:1: error: file-not-opened: " in capsys.readouterr().out


def refuse(monkeypatch: pytest.MonkeyPatch, call: str, name: str) -> None:
    """Makes the system refuse a call on one name; whoever runs the tests may be allowed everything."""
    real: Callable[..., object] = getattr(os, call)

    def refusing(path: object, *more: object, **others: object) -> object:
        if isinstance(path, (str, os.PathLike)) and os.path.basename(os.fspath(path)) == name:
            raise PermissionError(13, "Permission denied", os.fspath(path))
        return real(path, *more, **others)

    monkeypatch.setattr(os, call, refusing)


FORGED = [
    "a\nx.yaml:1:1: error: forged: b.programme.yaml",
    "a\rb.programme.yaml",
    "a\x1b[31mb.programme.yaml",
    "a\u2028b.programme.yaml",
    "a\u202eb.programme.yaml",
    ":1:1: error: x.programme.yaml",
    "b.yaml:1:1: error: forged: it.programme.yaml",
    "-x.programme.yaml",
    "::error file=x::y.programme.yaml",
    "\udcff\udc8a.programme.yaml",
]


@pytest.mark.parametrize("name", FORGED)
@pytest.mark.parametrize("form", ["lines", "short", "cards", "json"])
def test_file_names_cannot_forge_a_line(desk: Desk, name: str, form: str) -> None:
    (desk.folder / "a.programme.yaml").rename(desk.folder / name)
    _, out, said = desk.shell(f"$S review --as {form}; $S review --record-known; $S mend --show")
    assert "Traceback" not in said
    both = out + said
    assert not re.search(r"(?m)^(x|b)\.yaml:1:1: error: forged", both)
    assert "\x1b" not in both
    assert not any(char in both for char in "\r\u2028\u202e")
    assert not re.search(r"(?m)^::error", both)
    if form == "lines":
        first = out.splitlines()[0]
        assert re.match(r"(?P<name>.*?):4:46: warning: number-implausible: ", first)


@pytest.mark.parametrize(
    ("text", "variables", "last"),
    [
        (WRONG, "GIT_INDEX_FILE=.git/index", "Blocked. Nothing was committed."),
        (WRONG, "", "Blocked."),
        (PLAN, "GIT_INDEX_FILE=.git/index", "Nothing blocks."),
    ],
)
def test_the_form_for_hooks_says_that_nothing_was_committed_where_git_commits(
    desk: Desk, text: str, variables: str, last: str
) -> None:
    (desk.folder / "a.programme.yaml").write_text(text)
    _, _, said = desk.shell(f"{variables} $S review --as short")
    assert said.endswith(f" {last}\n")
    assert "committed" not in desk.shell(f"{variables} $S review --as lines")[2]
