"""What the programme holds in other weeks or sessions comes before what it does not hold; rotations are mended."""

from __future__ import annotations

from pathlib import Path

import pytest

from spotline.lint.solving.solve import Ask, solve
from spotline.tests.conftest import TODAY

HEAD = """\
programme: Lower
athlete: {name: Bo, level: intermediate}
goal: hypertrophy
"""

HINGE = "- {exercise: barbell good morning, sets: 3, reps: 8-10, rir: 2, rest: 3 min}"
QUIET = "- {exercise: leg press, sets: 3, reps: 8-10, rir: 2, rest: 3 min}"

LINES = """\
{indent}- {{exercise: back squat, sets: 3, reps: 6-8, rir: 2, rest: 3 min}}
{indent}{second}
{indent}- {{exercise: lying leg curl, sets: 3, reps: 10-15, rir: 1, rest: 90 s}}
{indent}- {{exercise: standing calf raise, sets: 3, reps: 10-15, rir: 1, rest: 90 s}}
"""


def lines(second: str, indent: int = 6) -> str:
    return LINES.format(second=second, indent=" " * indent)


def in_weeks(second: str) -> str:
    return f"{HEAD}weeks: 8\nsessions:\n  - session: Lower\n    exercises:\n{lines(second)}"


def block(name: str, second: str) -> str:
    return f"""\
  - block: {name}
    weeks: 4
    sessions:
      - session: Lower
        exercises:
{lines(second, 10)}"""


FELL_OUT = {
    "a line for some weeks": (
        in_weeks(HINGE.replace(", sets", ", in weeks: 1-4, sets")),
        "barbell good morning (Lower) goes on in weeks 5-8",
        "- {exercise: barbell good morning, sets: 3,",
    ),
    "a block": (
        f"{HEAD}blocks:\n{block('One', HINGE)}{block('Two', QUIET)}",
        "barbell good morning put back into Lower",
        "          - {exercise: barbell good morning, sets: 3, reps: 8-10, rir: 2, rest: 3 min}",
    ),
    "exercises by week": (
        in_weeks(QUIET.replace("leg press", "{1-4: barbell good morning, 5-8: leg press}")),
        "barbell good morning put back into Lower in weeks 5-8",
        "- {exercise: barbell good morning, in weeks: 5-8, sets: 3, reps: 8-10, rir: 2, rest: 3 min}",
    ),
}


def solved(text: str, rule: str, folder: Path) -> list[tuple[list[str], str]]:
    (folder / ".git").mkdir(exist_ok=True)
    path = folder / "plan.programme.yaml"
    path.write_text(text, encoding="utf-8")
    cards = solve(str(path), TODAY, Ask(0, rule)).cards
    return [([step.label for step in card.steps], card.after) for card in cards]


@pytest.mark.parametrize("where", FELL_OUT)
def test_what_fell_out_is_put_back_before_anything_else(where: str, tmp_path: Path) -> None:
    text, label, line = FELL_OUT[where]
    (steps, after), *_ = solved(text, "hip-hinge-missing", tmp_path)
    assert steps[0] == label
    assert line in after
    assert "dumbbell" not in after


ROTATION = f"""\
{HEAD}starts: 2026-01-05
weeks: 6
rotation: [monday, wednesday, friday]
sessions:
  - session: A
    exercises:
      - {{exercise: back squat, sets: 3, reps: 6-8, rir: 2, rest: 3 min}}
      - {{exercise: bench press, sets: 3, reps: 6-8, rir: 2, rest: 3 min}}
      - {{exercise: seated calf raise, sets: 2, reps: 12-15, rir: 1, rest: 60 s}}
  - session: B
    exercises:
      - {{exercise: front squat, sets: 3, reps: 6-8, rir: 2, rest: 3 min}}
      - {{exercise: bent-over row, sets: 3, reps: 6-8, rir: 2, rest: 3 min}}
      - {{exercise: leg extension, sets: 3, reps: 12-15, rir: 1, rest: 90 s}}
"""


@pytest.mark.parametrize("rule", ["knee-flexion-missing", "straight-knee-calf-missing"])
def test_a_rotation_is_mended(rule: str, tmp_path: Path) -> None:
    (_, after), *_ = solved(ROTATION, rule, tmp_path)
    (tmp_path / "plan.programme.yaml").write_text(after, encoding="utf-8")
    review = solve(str(tmp_path / "plan.programme.yaml"), TODAY, Ask()).review
    assert rule not in {one.rule for one in review.findings}
    assert "rotation: [monday, wednesday, friday]" in after
    assert "day:" not in after
