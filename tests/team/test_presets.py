"""Presets keep their word: the defaults and the rules of a dated preset never change once it is shipped.

tests/presets/DATE.json holds every default of the preset of that date and the rules that it runs. Where the
default of an option moves, the old value goes into the presets that there are (lint/team/presets.py), and a new
preset is dated and kept here; a new rule is named there with the preset that it comes with.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from spotline import schema as schemas
from spotline.lint.editor.explain.rules import limit
from spotline.lint.engine.registry import all_rules
from spotline.lint.project.results import Review
from spotline.lint.team.presets import NEW_RULES, PRESETS
from spotline.tests.write_from_rules import defaults

KEPT = Path(__file__).parent.parent / "presets"


def kept(preset: str) -> dict[str, Any]:
    """What the preset was shipped with: defaults by rule and option, and the rules that it runs."""
    held: dict[str, Any] = json.loads((KEPT / f"{preset}.json").read_text(encoding="utf-8"))
    return held


@pytest.mark.parametrize("preset", PRESETS)
def test_a_shipped_preset_does_not_change(preset: str) -> None:
    limits = kept(preset)["limits"]
    now = defaults(preset, all_rules())
    assert {name: now.get(name) for name in limits} == limits  # rules may come, defaults may not go


@pytest.mark.parametrize("preset", PRESETS)
def test_a_preset_runs_the_rules_that_it_was_shipped_with(
    reviewed: Callable[..., Review], preset: str
) -> None:
    """As a review sees it: the settings that name the preset and nothing else."""
    (file,) = reviewed("programme: T\nsessions: []\n", {"spotline.yaml": f"preset: {preset}\n"}).files
    assert [rule.name for rule in all_rules() if file.team.runs(rule)] == kept(preset)["rules"]


def test_the_last_preset_holds_every_option_of_today() -> None:
    last = list(PRESETS)[-1]
    assert set(kept(last)["limits"]) == set(defaults(last, all_rules()))


@pytest.mark.parametrize(
    ("settings", "runs"),
    [
        ("block commit on: [error]\n", True),
        ("preset: 2026-12\n", True),
        ("preset: 2026-11\n", False),
        ("preset: 2026-11\nrules: {number-implausible: run}\n", True),
        ("preset: 2026-11\nrules: {number-implausible: {most sets: 3}}\n", True),
        ("preset: 2026-11\nfolders: {'*': {rules: {number-implausible: note}}}\n", True),
        ("preset: 2026-11\nfolders: {'*': {weekly limits: {chest: 9}}}\n", False),
    ],
)
def test_a_rule_newer_than_the_preset_is_off_until_it_is_asked_for(
    reviewed: Callable[..., Review], monkeypatch: pytest.MonkeyPatch, settings: str, runs: bool
) -> None:
    monkeypatch.setitem(NEW_RULES, "2026-12", ("number-implausible",))
    text = "programme: T\nsessions: [{session: A, exercises: [{exercise: dip, sets: 40, reps: 5, rir: 2}]}]\n"
    (file,) = reviewed(text, {"spotline.yaml": settings}).files
    assert any(finding.rule == "number-implausible" for finding in file.findings) is runs


def test_new_rules_are_rules_and_come_with_a_preset_that_is() -> None:
    assert set(NEW_RULES) <= set(PRESETS)
    assert {name for names in NEW_RULES.values() for name in names} <= {rule.name for rule in all_rules()}


def test_a_team_may_name_each_of_them_and_no_other() -> None:
    assert schemas.load("team")["$defs"]["preset"]["enum"] == list(PRESETS)


def test_a_preset_holds_its_own_defaults_and_the_team_moves_them(
    reviewed: Callable[..., Review], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(PRESETS, "2026-11", {"number-implausible": {"most sets": 3.0}})
    text = (
        "programme: Test\nsessions:\n  - session: Gym\n    exercises:\n"
        "      - {exercise: bench press, sets: 4, reps: 5, rir: 2}\n"
    )

    def slips(settings: str) -> int:
        found = reviewed(text, {"spotline.yaml": settings}).files[0].findings
        return sum(finding.rule == "number-implausible" for finding in found)

    assert slips("block commit on: [error]\n") == 0
    assert slips("preset: 2026-11\n") == 1
    assert slips("preset: 2026-11\nrules: {number-implausible: {most sets: 4}}\n") == 0


@pytest.mark.parametrize(
    ("moved", "words"),
    [("", "your preset's limit"), ("rules: {number-implausible: {most sets: 3}}\n", "your team's limit")],
)
def test_a_limit_of_a_preset_is_not_called_the_teams(
    reviewed: Callable[..., Review], monkeypatch: pytest.MonkeyPatch, moved: str, words: str
) -> None:
    monkeypatch.setitem(PRESETS, "2026-11", {"number-implausible": {"most sets": 3.0}})
    text = "programme: T\nsessions: [{session: A, exercises: [{exercise: dip, sets: 4, reps: 5, rir: 2}]}]\n"
    (file,) = reviewed(text, {"spotline.yaml": f"preset: 2026-11\n{moved}"}).files
    wanted = [finding.wanted for finding in file.findings if finding.rule == "number-implausible"]
    assert wanted == [f"at most 3 sets ({words})"]
    (slip,) = (rule for rule in all_rules() if rule.name == "number-implausible")
    assert limit(slip.options[0], slip, file.team) == (
        f"most sets: **3** sets in one line ({words.removesuffix(' limit')}; 12 otherwise)"
    )
