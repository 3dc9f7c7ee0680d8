"""Numbers of a rotation are told as those of its whole turn, and without a rotation as those of a week."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]

TURN = " in the 2 weeks of a turn"


def laid_out(first: list[str], second: list[str], head: str, in_turn: bool) -> str:
    """Two sessions: each week both of them, or in turn one of them."""
    parts = [
        "programme: T",
        "weeks: 4",
        *([head] if head else []),
        *(["rotation: [monday]"] if in_turn else []),
    ]
    parts.append("sessions:")
    for name, day, lines in (("A", "monday", first), ("B", "thursday", second)):
        parts.append(f"  - session: {name}")
        if not in_turn:
            parts.append(f"    day: {day}")
        parts.append("    exercises:")
        parts += [f"      - {{exercise: {line}}}" for line in lines]
    return "\n".join(parts) + "\n"


SIZE = "goal: hypertrophy"
ROWS = [
    (
        "antagonist-imbalance",
        SIZE,
        ["leg extension, sets: 9, reps: 10"],
        ["seated leg curl, sets: 4, reps: 10", "leg extension, sets: 5, reps: 10"],
        "Quadriceps side 14 sets, hamstring side 4{}.",
        "",
    ),
    (
        "sides-uneven",
        "",
        ["leg extension, sets: 5, side: left, reps: 9"],
        ["leg press, sets: 5, reps: 9"],
        "{}",
        " a week",
    ),
    (
        "straight-knee-calf-missing",
        "",
        ["seated calf raise, sets: 3, reps: 12"],
        ["seated calf raise, sets: 2, reps: 12"],
        "5 sets of calf raises{}, none with the knee straight",
        "",
    ),
    (
        "pull-or-push-missing",
        SIZE,
        ["bench press, sets: 6, reps: 8"],
        ["bent-over row, sets: 7, reps: 8"],
        "13 sets of presses and pulls{}; no vertical pull",
        " a week",
    ),
    (
        "knee-flexion-missing",
        SIZE,
        ["back squat, sets: 6, reps: 8"],
        ["Romanian deadlift, sets: 7, reps: 8", "leg press, sets: 4, reps: 8"],
        "7 sets of hip hinges{}, no knee flexion",
        "",
    ),
    (
        "hip-hinge-missing",
        SIZE,
        ["back squat, sets: 6, reps: 8"],
        ["seated leg curl, sets: 4, reps: 8", "leg press, sets: 4, reps: 8"],
        "14 sets of leg work{}, no hip hinge",
        "",
    ),
    (
        "priority-not-ahead",
        f"{SIZE}\npriority: [hamstrings]",
        ["leg extension, sets: 8, reps: 10"],
        ["seated leg curl, sets: 5, reps: 10"],
        "5 sets{} for the hamstrings, a priority",
        " a week",
    ),
    (
        "weekly-sets-under-floor",
        f"{SIZE}\npriority: [biceps]",
        ["barbell curl, sets: 2, reps: 10"],
        ["barbell curl, sets: 1, reps: 10"],
        "3 sets{} for the biceps",
        " a week",
    ),
]


@pytest.mark.parametrize(
    ("rule", "head", "first", "second", "said", "plain"), ROWS, ids=[row[0] for row in ROWS]
)
def test_sets_are_those_of_a_turn_or_of_a_week(
    findings: Findings, rule: str, head: str, first: list[str], second: list[str], said: str, plain: str
) -> None:
    for in_turn, when in ((True, TURN), (False, plain)):
        found = findings(laid_out(first, second, head, in_turn), rule)
        assert [said.format(when) in one.counted for one in found] == [True], [one.counted for one in found]
        assert (TURN in found[0].counted) is in_turn
