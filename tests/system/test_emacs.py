"""Emacs with eglot, both Debian's, with the settings that EDITORS.md shows: without a screen and in a terminal."""

from __future__ import annotations

import json
import subprocess
from pathlib import Path

import pytest

PROBE = Path(__file__).parent / "emacs_probe.el"
SEVERITIES = {"eglot-error": "error", "eglot-warning": "warning", "eglot-note": "note"}


@pytest.fixture
def settings(coach) -> str:
    """The file with the documented settings, in a home where Emacs keeps quiet about compiling its own code."""
    coach.configure("Emacs with eglot", ".emacs.d/init.el")
    quiet = "(setq native-comp-async-report-warnings-errors 'silent)\n"
    (coach.home / ".emacs.d" / "early-init.el").write_text(quiet, encoding="utf-8")
    return str(coach.home / ".emacs.d" / "init.el")


def test_the_editor_shows_what_the_command_finds_and_a_fix_mends_the_file(settings, coach):
    wanted = coach.findings()
    packages = "(progn (require 'package) (package-initialize))"
    ran = subprocess.run(
        ["emacs", "--batch", "--eval", packages, "--load", settings, str(coach.plan), "--load", str(PROBE)],
        cwd=coach.folder,
        env=coach.environment | {"SPOTLINE_FIX": "Write back squat"},
        capture_output=True,
        encoding="utf-8",
        timeout=60,
        check=False,
    )
    assert ran.returncode == 0, ran.stderr
    seen = json.loads(ran.stdout)

    keys = ("severity", "line", "column", "end line", "end column")
    shown = [(SEVERITIES[one["type"]], *one["start"], *one["finish"]) for one in seen["diagnostics"]]
    assert sorted(shown) == sorted(tuple(finding[key] for key in keys) for finding in wanted)
    words = " ".join(one["text"] for one in seen["diagnostics"])
    assert all(finding["counted"] in words and finding["rule"] in words for finding in wanted)

    assert "Write back squat" in seen["offered"]
    assert "exercise: back squat, sets" in coach.plan.read_text(encoding="utf-8")
    assert "exercise-unknown" not in coach.rules()


def test_the_screen_of_a_terminal(settings, coach, terminal):
    emacs = terminal(["emacs", "-nw", coach.plan.name], "emacs")
    emacs.until(r"Flymake\[1 1 1\]")
    emacs.keys("C-s", "rpe: 7", "Enter", "Left")
    emacs.until("Write RPE 9 or RIR 3")
    emacs.keep("finding")
    emacs.keys("C-c", "a")
    emacs.until("default Write RPE 9")
    emacs.keep("fixes")
    emacs.keys("Enter")
    emacs.until("rpe: 9")
    emacs.keys("C-x", "C-s")
    coach.saved("rir: 1, rpe: 9, rest")
    emacs.keep("mended")
    assert "rir-rpe-contradict" not in coach.rules()


def test_the_week_and_what_stands_at_the_caret_are_shown(settings, coach, terminal, raw):
    emacs = terminal(["emacs", "-nw", coach.plan.name], "emacs")
    emacs.until(r"Flymake\[1 1 1\]")
    emacs.keys("C-s", "leg curl", "Enter", "Left")
    emacs.until("trains hamstrings")
    assert not raw(emacs.keep("hover"))
    emacs.keys("M-x", "programme-week", "Enter", "1", "Enter")
    emacs.until(r"hamstrings +6 ")
    assert not raw(emacs.keep("week"))


def test_names_are_completed_while_typing(settings, coach, terminal):
    emacs = terminal(["emacs", "-nw", coach.plan.name], "emacs")
    emacs.until(r"Flymake\[1 1 1\]")
    emacs.keys("C-s", "RDL", "Enter", "BSpace", "BSpace", "BSpace", "Nord", "C-M-i")
    emacs.until("exercise: Nordic ")
    emacs.keys("C-M-i")
    emacs.until("(?s)Nordic curl hamstrings.*Nordic hold hamstrings")
    emacs.keep("completion")
