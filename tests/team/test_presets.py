"""Presets keep their word: the defaults of a dated preset never change once it is shipped.

tests/presets/DATE.json holds every default of the preset of that date. Where the default of an option moves,
the old value goes into the presets that there are (lint/presets.py), and a new preset is dated and kept here.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from spotline import schema as schemas
from spotline.lint.editor.explain.rules import limit
from spotline.lint.engine.registry import all_rules
from spotline.lint.project.results import Review
from spotline.lint.team.presets import PRESETS

KEPT = Path(__file__).parent.parent / "presets"


def defaults(preset: str) -> dict[str, object]:
    """Every default that a team has which names a preset, by rule and option."""
    held = PRESETS[preset]
    return {
        f"{rule.name}: {option.name}": {
            "default": held.get(rule.name, {}).get(option.name, option.default),
            "by": [] if option.name in held.get(rule.name, {}) else [list(one) for one in option.by],
        }
        for rule in all_rules()
        for option in rule.options
    }


@pytest.mark.parametrize("preset", PRESETS)
def test_a_shipped_preset_does_not_change(preset: str) -> None:
    kept = json.loads((KEPT / f"{preset}.json").read_text(encoding="utf-8"))
    now = json.loads(json.dumps(defaults(preset)))
    assert {name: now.get(name) for name in kept} == kept  # rules may come, defaults may not go


def test_the_last_preset_holds_every_option_of_today() -> None:
    last = list(PRESETS)[-1]
    kept = json.loads((KEPT / f"{last}.json").read_text(encoding="utf-8"))
    assert set(kept) == set(defaults(last))


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
