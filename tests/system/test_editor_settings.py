"""Kate, Debian's, with the settings that EDITORS.md shows, on a screen that only the test sees; and Helix's.

Debian 12 carries no Helix, so its settings are held against the keys that Helix documents for `languages.toml`
(version 25.07), and the server that they name is asked for.
"""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import tomllib
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

WIDTH, HEIGHT = 1000, 600
CHOSEN = bytes((0xC2, 0xE0, 0xF5))
"""The colour of the row in Kate's list of findings that goes with the caret."""

LANGUAGE = {
    "name",
    "language-id",
    "scope",
    "injection-regex",
    "file-types",
    "shebangs",
    "roots",
    "auto-format",
    "diagnostic-severity",
    "comment-tokens",
    "block-comment-tokens",
    "indent",
    "language-servers",
    "grammar",
    "formatter",
    "soft-wrap",
    "text-width",
    "rulers",
    "path-completion",
    "workspace-lsp-roots",
    "persistent-diagnostic-sources",
}
SERVER = {"command", "args", "config", "timeout", "environment", "required-root-patterns"}


class Desktop:
    """A screen without a person, with a window manager that lets windows have the keyboard."""

    def __init__(self, environment: dict[str, str], folder: Path, screens: Path) -> None:
        self.folder = folder
        self.screens = screens
        reader, writer = os.pipe()
        size = ["-screen", "0", f"{WIDTH}x{HEIGHT}x24"]
        screen = subprocess.Popen(
            ["Xvfb", "-displayfd", str(writer), *size], pass_fds=[writer], stderr=subprocess.DEVNULL
        )
        os.close(writer)
        with os.fdopen(reader) as told:
            display = told.readline().strip()
        self.environment = environment | {"DISPLAY": f":{display}"}
        self.started = [screen]
        self.start("openbox")

    def start(self, *command: str) -> None:
        """Starts a program on the screen."""
        self.started.append(
            subprocess.Popen(
                command,
                cwd=self.folder,
                env=self.environment,
                stdout=subprocess.DEVNULL,
                stderr=subprocess.DEVNULL,
            )
        )

    def does(self, *words: str) -> str:
        """Has keys pressed, the mouse moved or windows looked for; the words are xdotool's."""
        ran = subprocess.run(
            ["xdotool", *words], env=self.environment, capture_output=True, check=False, encoding="utf-8"
        )
        return ran.stdout

    def picture(self) -> list[bytes]:
        """The rows of the screen from above, three bytes a point."""
        shot = subprocess.run(
            ["import", "-window", "root", "-depth", "8", "rgb:-"],
            env=self.environment,
            capture_output=True,
            check=True,
        ).stdout
        assert len(shot) == WIDTH * HEIGHT * 3
        return [shot[at : at + 3 * WIDTH] for at in range(0, len(shot), 3 * WIDTH)]

    def keep(self, name: str) -> None:
        """Keeps a picture of the screen for people to look at."""
        self.screens.mkdir(parents=True, exist_ok=True)
        file = str(self.screens / f"{name}.png")
        subprocess.run(["import", "-window", "root", file], env=self.environment, check=True)

    def close(self) -> None:
        """Ends all that was started, the screen last."""
        for one in reversed(self.started):
            one.terminate()
            one.wait(timeout=10)


@pytest.fixture
def desktop(coach, screens) -> Iterator[Desktop]:
    desktop = Desktop(coach.environment, coach.folder, screens / "kate")
    yield desktop
    desktop.close()


def chosen(picture: list[bytes]) -> range:
    """The rows of the screen that the chosen finding fills."""
    filled = [number for number, row in enumerate(picture) if row.count(CHOSEN) > WIDTH // 4]
    return range(filled[0], filled[-1] + 1) if filled else range(0)


def test_kate_lists_the_findings_and_a_fix_mends_the_file(coach, desktop, until: Callable):
    coach.configure("Kate", ".config/kate/lspclient/settings.json")
    (finding,) = (one for one in coach.findings() if one["rule"] == "rir-rpe-contradict")
    place = ["--line", str(finding["line"]), "--column", str(finding["column"])]
    desktop.start("kate", "--new", "--block", *place, coach.plan.name)

    def seen(title: str) -> bool:
        return bool(desktop.does("search", "--onlyvisible", "--name", title).strip())

    until(lambda: seen("LSP server start requested"), lambda: "Kate did not ask whether to start the server")
    desktop.keep("asked")
    desktop.does("key", "Return")
    until(lambda: not seen("LSP server start requested"), lambda: "Kate's question stayed")
    desktop.does("getactivewindow", "windowmove", "0", "0", "windowsize", str(WIDTH - 10), str(HEIGHT - 40))

    def opened() -> bool:
        desktop.does("key", "ctrl+alt+i", "sleep", "0.4", "type", "diagnostics tab")
        desktop.does("sleep", "0.4", "key", "Return", "sleep", "0.6")
        return len(chosen(desktop.picture())) > 5

    until(opened, lambda: "Kate never listed the finding at the caret")
    desktop.keep("findings")
    row = chosen(desktop.picture())
    middle = (row.start + row.stop) // 2

    def twice(y: int) -> None:
        desktop.does(
            "mousemove", "300", str(y), "sleep", "0.2", "click", "--repeat", "2", "--delay", "80", "1"
        )

    before = desktop.picture()[row.stop :]
    twice(middle)
    until(lambda: desktop.picture()[row.stop :] != before, lambda: "Kate offered no fix")
    desktop.keep("fixes")
    # Below the finding stand the place that it speaks of and then its fixes.
    twice(middle + 2 * len(row))
    desktop.does("sleep", "0.5", "key", "ctrl+s")
    coach.saved("rir: 1, rpe: 9, rest")
    desktop.keep("mended")
    assert "rir-rpe-contradict" not in coach.rules()


def test_kates_settings_have_the_documented_form(coach):
    settings = json.loads(coach.documented("Kate"))
    assert set(settings) == {"servers"}
    (server,) = settings["servers"].values()
    assert set(server) <= {"command", "rootIndicationFileNames", "highlightingModeRegex"}
    assert shutil.which(server["command"][0], path=coach.environment["PATH"])


def test_helix_is_given_keys_that_it_documents(coach):
    settings = tomllib.loads(coach.documented("Helix"))
    assert set(settings) == {"language", "language-server"}
    (server,) = settings["language-server"].values()
    assert set(server) <= SERVER
    assert [server["command"], *server["args"]] == ["spotline", "editor"]
    (language,) = settings["language"]
    assert set(language) <= LANGUAGE
    assert language["name"] == "yaml"
    assert language["language-servers"][0] in settings["language-server"]
    assert shutil.which(server["command"], path=coach.environment["PATH"])
