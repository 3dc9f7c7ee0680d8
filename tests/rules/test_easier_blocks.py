"""What is asked of a typical week is not asked of a deload or a taper."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Days = dict[str, list[str]]

CASES: list[tuple[str, str, Days, Days]] = [
    (
        "frequency-low",
        "goal: strength\npriority: [back squat]",
        {"monday": ["back squat, sets: 4"], "thursday": ["back squat, sets: 4"]},
        {"monday": ["back squat, sets: 2"], "thursday": ["bench press, sets: 2"]},
    ),
    (
        "older-adult-days",
        "athlete: {name: Ottilie, age: 70}",
        {"monday": ["leg press, sets: 2"], "thursday": ["leg press, sets: 2"]},
        {"monday": ["leg press, sets: 2"]},
    ),
    (
        "calf-work-missing",
        "focus: [legs]",
        {"monday": ["leg press, sets: 3", "standing calf raise, sets: 2"]},
        {"monday": ["leg press, sets: 3"]},
    ),
    (
        "days-per-region-few",
        "goal: general health",
        {day: ["leg press, sets: 2", "bench press, sets: 2"] for day in ("monday", "thursday")},
        {"monday": ["leg press, sets: 2"], "thursday": ["bench press, sets: 2"]},
    ),
]


def blocks(head: str, build: Days, last: Days, keys: str) -> str:
    """The text of two weeks of building up and a block of one week, which may be an easier one."""
    text = f"programme: T\n{head}\nblocks:\n"
    for name, weeks, days in (("Build", "weeks: 2", build), ("Last", f"weeks: 1\n    {keys}".rstrip(), last)):
        text += f"  - name: {name}\n    {weeks}\n    sessions:\n"
        for day, lines in days.items():
            exercises = ", ".join(f"{{exercise: {line}}}" for line in lines)
            text += f"      - {{session: {day}, day: {day}, exercises: [{exercises}]}}\n"
    return text


@pytest.mark.parametrize(
    ("keys", "weeks"),
    [("", [(3,)]), ("deload: true", []), ("phase: taper", [])],
    ids=["plain", "deload", "taper"],
)
@pytest.mark.parametrize(("rule", "head", "build", "last"), CASES, ids=[case[0] for case in CASES])
def test_only_typical_weeks_are_asked(
    findings: Findings,
    rule: str,
    head: str,
    build: Days,
    last: Days,
    keys: str,
    weeks: list[tuple[int, ...]],
) -> None:
    assert [one.weeks for one in findings(blocks(head, build, last, keys), rule)] == weeks
