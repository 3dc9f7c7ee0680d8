"""What silences a rule, each beside the nearest that does not: a word, a level, a set more or less."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

SIZE = "goal: hypertrophy"
PROTECT = "athlete: {{name: Ida, level: advanced, protect: [{{area: {}, advised by: physician}}]}}"
UPPER = ["bench press, sets: 5, reps: 8", "bent-over row, sets: 5, reps: 8"]
HOME = "athlete: {{name: Ida, level: advanced, equipment: [{}]}}"

CASES: list[tuple[str, str, list[str], int]] = [
    # both the hard sets and all sets must be uneven: 12 to 4, and 12 to 8, 7 or 5
    ("antagonist-imbalance", SIZE, ["bench press, sets: 12, reps: 8", "bent-over row, sets: 4, reps: 8", "bent-over row, sets: 3, rir: 8"], 0),
    ("antagonist-imbalance", SIZE, ["bench press, sets: 12, reps: 8", "bent-over row, sets: 4, reps: 8", "bent-over row, sets: 1, rir: 8"], 1),
    ("antagonist-imbalance", SIZE, ["bench press, sets: 12, reps: 8", "bent-over row, sets: 4, reps: 8", "bent-over row, sets: 2, rir: 8"], 0),
    # the thigh is judged more strictly: 9 to 4, and 9 to 6 or 5
    ("antagonist-imbalance", SIZE, ["leg extension, sets: 9", "seated leg curl, sets: 4", "seated leg curl, sets: 2, rir: 8"], 0),
    ("antagonist-imbalance", SIZE, ["leg extension, sets: 9", "seated leg curl, sets: 4", "seated leg curl, sets: 1, rir: 8"], 1),
    # who spares an arm leaves out what is left out
    ("pull-or-push-missing", f"{SIZE}\n{PROTECT.format('knee')}", UPPER, 1),
    ("pull-or-push-missing", f"{SIZE}\n{PROTECT.format('wrist')}", UPPER, 0),
    ("pull-or-push-missing", f"{SIZE}\nphase: return", UPPER, 0),
    # few repetitions throughout are for strength, where nothing says what the goal is: curls are not missed
    ("knee-flexion-missing", "", ["back squat, sets: 4, reps: 5", "leg press, sets: 3, reps: 5"], 0),
    ("knee-flexion-missing", "", ["back squat, sets: 4, reps: 5", "leg press, sets: 3, reps: 10"], 1),
    ("knee-flexion-missing", SIZE, ["back squat, sets: 4, reps: 5", "leg press, sets: 3, reps: 5"], 1),
    ("hip-hinge-missing", "", ["back squat, sets: 4, reps: 5", "leg press, sets: 3, reps: 5"], 1),
    # where there is a guided bar, a bar may mean that one
    ("equipment-missing", HOME.format("guided bar"), ["back squat, sets: 3, reps: 8, note: rack at hip height"], 0),
    ("equipment-missing", HOME.format("dumbbells, flat bench"), ["back squat, sets: 3, reps: 8, load: 100 kg, note: rack at hip height"], 1),
    ("equipment-missing", HOME.format("guided bar"), ["barbell back squat, sets: 3, reps: 8"], 1),
]  # fmt: skip


@pytest.mark.parametrize(("rule", "head", "lines", "said"), CASES)
def test_said_or_silent(
    findings: Findings, week: Text, rule: str, head: str, lines: list[str], said: int
) -> None:
    found = findings(week({"Gym": lines}, head), rule)
    assert len(found) == said, [one.counted for one in found]
