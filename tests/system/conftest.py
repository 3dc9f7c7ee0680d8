"""What the tests that drive real editors share: a coach's home and folder, settings as documented, a terminal."""

from __future__ import annotations

import json
import os
import re
import shlex
import subprocess
import sysconfig
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

HERE = Path(__file__).parent
ROOT = HERE.parent.parent
SCRIPTS = Path(sysconfig.get_path("scripts"))

PLAN = """\
programme: Frühling
athlete: {name: Mara, level: intermediate, age: 16}
goal: hypertrophy
focus: [quadriceps, hamstrings]
starts: 2026-11-30
weeks: 4
sessions:
  - session: Lower A
    day: monday
    exercises:
      - {note: "früh 🏋️", exercise: back sqat, sets: 3, reps: 5-8, rir: 2, rest: 3 min}
      - {exercise: seated leg curl, sets: 3, reps: 10-15, rir: 1, rpe: 7, rest: 90 s}
      - {exercise: RDL, sets: 3, reps: 8-10, rest: 2 min}
"""
"""A programme with an error, a warning and a note; signs of two and four bytes stand before the warning."""


class Coach:
    """A home without settings but the documented ones, and a folder under git with a faulty programme.

    Editors started with ``environment`` find the command `spotline` that this Python has installed.
    """

    def __init__(self, base: Path) -> None:
        self.home = base / "home"
        self.folder = base / "team"
        self.plan = self.folder / "plan.programme.yaml"
        (self.folder / ".git").mkdir(parents=True)
        self.plan.write_text(PLAN, encoding="utf-8")
        runtime = self.home / "run"
        runtime.mkdir(parents=True, mode=0o700)
        kept = {name: os.environ[name] for name in ("PATH", "SPOTLINE_SYSTEM") if name in os.environ}
        self.environment = kept | {
            "PATH": f"{SCRIPTS}{os.pathsep}{os.environ['PATH']}",
            "HOME": str(self.home),
            "XDG_RUNTIME_DIR": str(runtime),
            "LANG": "C.UTF-8",
        }

    def configure(self, heading: str, file: str) -> None:
        """Lays the settings below a heading of EDITORS.md into the home, as they stand."""
        path = self.home / file
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(self.documented(heading), encoding="utf-8")

    @staticmethod
    def documented(heading: str, language: str = r"\w+") -> str:
        """The first fenced block, of a language if one is named, below a heading of EDITORS.md."""
        text = (ROOT / "lint" / "editor" / "EDITORS.md").read_text(encoding="utf-8")
        (section,) = re.findall(rf"^## {re.escape(heading)}$(.*?)(?=^## |\Z)", text, re.MULTILINE | re.DOTALL)
        block = re.search(rf"^```{language}\n(.*?)^```$", section, re.MULTILINE | re.DOTALL)
        assert block, f"EDITORS.md shows nothing of the kind below {heading}"
        return block[1]

    def findings(self) -> list[dict]:
        """What the command says of the programme on disk."""
        command = [str(SCRIPTS / "spotline"), "review", str(self.plan), "--as", "json"]
        printed = subprocess.run(command, stdout=subprocess.PIPE, check=False).stdout
        return json.loads(printed)["findings"]

    def saved(self, words: str) -> None:
        """Waits until these words stand in the programme on disk."""
        until(
            lambda: words in self.plan.read_text(encoding="utf-8"),
            lambda: self.plan.read_text(encoding="utf-8"),
        )

    def rules(self) -> list[str]:
        """The rules by which something is found in the programme on disk."""
        return sorted(finding["rule"] for finding in self.findings())


def until(condition: Callable[[], object], instead: Callable[[], str]) -> None:
    """Waits for something that an editor does in its own time; ``instead`` says how things are if it never does."""
    end = time.monotonic() + 20
    while not condition():
        assert time.monotonic() < end, instead()
        time.sleep(0.05)


@pytest.fixture(name="until", scope="session")
def until_fixture() -> Callable[[Callable[[], object], Callable[[], str]], None]:
    """The same for tests."""
    return until


class Terminal:
    """A terminal of 110 columns and 32 lines, in a tmux server of its own, that a program runs in."""

    def __init__(self, command: list[str], coach: Coach, screens: Path) -> None:
        self.screens = screens
        self.socket = str(coach.home / "tmux")
        self.environment = coach.environment | {"TERM": "xterm-256color"}
        start = "exec env TERM=screen-256color " + shlex.join(command)
        self.tmux("new-session", "-d", "-x", "110", "-y", "32", "-c", str(coach.folder), start)

    def tmux(self, *words: str) -> str:
        """Tells tmux something and returns what it prints."""
        command = ["tmux", "-S", self.socket, "-f", os.devnull, *words]
        return subprocess.run(
            command, env=self.environment, capture_output=True, check=True, encoding="utf-8"
        ).stdout

    def keys(self, *keys: str) -> None:
        """Presses keys, by tmux's names for them; other words are typed letter by letter."""
        self.tmux("send-keys", *keys)

    def text(self) -> str:
        """What stands on the screen."""
        return self.tmux("capture-pane", "-p")

    def until(self, pattern: str) -> None:
        """Waits until a pattern stands on the screen."""
        until(lambda: re.search(pattern, self.text()), lambda: f"{pattern} never came:\n{self.text()}")

    def keep(self, name: str) -> str:
        """Keeps the screen for people to look at, as text and with its colours; returns the text."""
        self.screens.mkdir(parents=True, exist_ok=True)
        (self.screens / f"{name}.ansi").write_text(self.tmux("capture-pane", "-pe"), encoding="utf-8")
        text = self.text()
        (self.screens / f"{name}.txt").write_text(text, encoding="utf-8")
        return text

    def close(self) -> None:
        """Ends the program and its terminal."""
        self.tmux("kill-server")


@pytest.fixture(name="raw", scope="session")
def raw_fixture() -> Callable[[str], list[str]]:
    """The signs of Markdown that stand on a screen, where they would be none of the programme's own."""

    def raw(screen: str) -> list[str]:
        return re.findall(r"\*\*|\\\S|\| *-{3,}|^ *\| \w|_Helping", screen, re.MULTILINE)

    return raw


@pytest.fixture(scope="session")
def installed() -> Path:
    """The folder that install.sh fills."""
    folder = Path(os.environ.get("SPOTLINE_SYSTEM") or HERE / ".installed")
    assert folder.is_dir(), f"{folder} is not there: run tests/system/install.sh first"
    return folder


@pytest.fixture(scope="session")
def screens() -> Path:
    """The folder for screens that people look at; git ignores it."""
    return Path(os.environ.get("SPOTLINE_BUILD") or ROOT / "build" / "editors")


@pytest.fixture
def coach(tmp_path: Path) -> Coach:
    """A coach with a faulty programme."""
    return Coach(tmp_path)


@pytest.fixture
def terminal(coach: Coach, screens: Path) -> Iterator[Callable[..., Terminal]]:
    """Starts a command in a terminal whose screens are kept under a name."""
    started: list[Terminal] = []

    def start(command: list[str], name: str) -> Terminal:
        started.append(Terminal(command, coach, screens / name))
        return started[-1]

    yield start
    for one in started:
        one.close()
