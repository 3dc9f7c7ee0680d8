"""Vim with ALE, both Debian's, with the settings that EDITORS.md shows, in a terminal."""

from __future__ import annotations

import re


def test_findings_stand_beside_their_lines_and_a_fix_mends_the_file(coach, terminal):
    coach.configure("Vim with ALE", ".vimrc")
    wanted = coach.findings()
    vim = terminal(["vim.nox", coach.plan.name], "vim")

    vim.until(r">>.*seated leg curl.*RPE 7 le")
    lines = vim.keep("findings").split("\n")
    for finding in wanted:
        line = lines[finding["line"] - 1]
        assert line.startswith(">>" if finding["severity"] == "error" else "--")
        assert finding["counted"][:6] in line
    assert sum(bool(re.match("--|>>", line)) for line in lines) == len(wanted)

    vim.keys("/rpe: 7", "Enter", "5l", ":ALEDetail", "Enter")
    vim.until("one of them")
    vim.keep("whole finding")
    vim.keys(":pclose", "Enter", "gra")
    vim.until(r"1\) Write RPE 9")
    vim.keep("fixes")
    vim.keys("1", "Enter")
    vim.until("rpe: 9")
    vim.keys(":w", "Enter")
    coach.saved("rir: 1, rpe: 9, rest")
    vim.keep("mended")
    assert coach.rules() == sorted({finding["rule"] for finding in wanted} - {"rir-rpe-contradict"})
