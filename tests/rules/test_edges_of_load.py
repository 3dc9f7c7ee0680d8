"""Loads and effort at their edges: what the edits write."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]


class TestMoreRepsThanLoadAllows:
    """Repetitions at 70, 80 and 85 %: nuzzo-2024 (table secondary)."""

    RULE = "more-reps-than-load-allows"

    @pytest.mark.parametrize(
        ("reps", "load", "edits"),
        [
            (30, "70 %", ["21"]),  # no load from 60 % allows so many
            (20, "80 %", ["14"]),
            (12, "85 %", ["76 %", "11"]),
        ],
    )
    def test_a_lighter_load_or_fewer_repetitions(
        self, findings: Findings, week: Text, reps: int, load: str, edits: list[str]
    ) -> None:
        text = week({"A": [f"back squat, sets: 1, reps: {reps}, load: {load}"]})
        (finding,) = findings(text, self.RULE)
        assert [one.words for one in finding.edits] == edits


class TestEffortAgainstLoad:
    RULE = "effort-against-load"

    @pytest.mark.parametrize(
        ("line", "place", "edits"),
        [
            ("reps: 5, load: 60 %, rir: 0", "0", ["90 %"]),  # nobody judges 15 in reserve
            ("reps: 5, load: 60 %, rpe: 10", "10", ["90 %"]),
            ("reps: 8, load: 70 %, rir: 0", "", []),
        ],
    )
    def test_a_load_for_the_effort(
        self, findings: Findings, week: Text, line: str, place: str, edits: list[str]
    ) -> None:
        found = findings(week({"A": [f"back squat, sets: 3, {line}"]}), self.RULE)
        assert [one.place.excerpt for one in found] == ([place] if place else [])
        assert [edit.words for one in found for edit in one.edits] == edits
