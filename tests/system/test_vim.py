"""Vim with ALE, both Debian's, with the settings that EDITORS.md shows, in a terminal."""

from __future__ import annotations

import json
import re

import pytest

TYPES = {"error": "E", "warning": "W", "note": "W"}
"""ALE knows no notes of a language server."""


@pytest.fixture
def vim(coach, terminal):
    coach.configure("Vim with ALE", ".vimrc")
    vim = terminal(["vim.nox", coach.plan.name], "vim")
    vim.until(r">>.*seated leg curl.*RPE 7 le")
    return vim


def test_the_editor_shows_what_the_command_finds(coach, vim, until):
    wanted = coach.findings()
    shown = vim.keep("findings").split("\n")
    for finding in wanted:
        line = shown[finding["line"] - 1]
        assert line.startswith(">>" if finding["severity"] == "error" else "--")
        assert finding["counted"][:6] in line
    assert sum(bool(re.match("--|>>", line)) for line in shown) == len(wanted)

    vim.keys(":call writefile([json_encode(ale#engine#GetLoclist(bufnr()))], 'found.json')", "Enter")
    told = coach.folder / "found.json"
    until(lambda: told.exists() and told.stat().st_size, vim.text)
    lines = coach.plan.read_text(encoding="utf-8").split("\n")
    found = [
        (
            one["code"],
            one["type"],
            one["lnum"],
            *(
                len(lines[one["lnum"] - 1].encode()[:byte].decode()) + 1
                for byte in (one["col"] - 1, one["end_col"])
            ),
        )
        for one in json.loads(told.read_text(encoding="utf-8"))
    ]
    keys = ("line", "column", "end column")
    assert sorted(found) == sorted(
        (finding["rule"], TYPES[finding["severity"]], *(finding[key] for key in keys)) for finding in wanted
    )


def test_fixes_mend_the_file(coach, vim):
    wanted = coach.rules()
    vim.keys("/rpe: 7", "Enter", "5l", ":ALEDetail", "Enter")
    vim.until(r"(?s)only\s+one\s+of the two")
    vim.keep("whole finding")
    vim.keys(":pclose", "Enter", "gra")
    vim.until(r"1\) Write RPE 9")
    vim.keep("fixes")
    vim.keys("1", "Enter")
    vim.until("rpe: 9")

    # Signs of two and four bytes stand before this one.
    vim.keys("/sqat", "Enter", "gra")
    vim.until(r"1\) Write back squat")
    vim.keys("1", "Enter")
    vim.until("back squat, sets")
    vim.keys(":w", "Enter")
    coach.saved("exercise: back squat, sets")
    coach.saved("rir: 1, rpe: 9, rest")
    vim.keep("mended")
    assert set(wanted) - set(coach.rules()) == {"exercise-unknown", "rir-rpe-contradict"}


def test_what_stands_at_the_caret_is_explained(coach, vim, raw):
    vim.keys("/leg curl", "Enter")
    vim.until(" 12,27 ")
    vim.keys("K")
    vim.until("(?s)hamstrings.*plan.programme.yaml")
    assert not raw(vim.keep("hover"))


def test_names_are_completed_while_typing(coach, vim):
    vim.keys("/RDL", "Enter", "cw", "Nord", "C-x", "C-o")
    vim.until("Nordic hold")
    vim.keep("completion")
    vim.keys("C-y", "Escape", ":w", "Enter")
    coach.saved("{exercise: Nordic curl, sets: 3")
