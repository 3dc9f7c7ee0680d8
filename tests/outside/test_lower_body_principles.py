"""Two lower-body days written by the trade's principles: a plan that keeps them all is left alone, and a change that
breaks one of them raises the rule for it and no other.

Every principle here (cp-cap, cp-balance, cp-both, cp-twice, cp-spread, cp-cross, cp-heavy-hinge) is common practice,
no source, save the 48 hours between hard days, which fm21-20-48 gives as well. The plan and its athlete are invented.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable

import pytest
import yaml

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]

PLAN = """\
programme: Two lower-body days
athlete: {name: Corin, level: intermediate}
goal: hypertrophy
focus: [legs]
weeks: 8
sessions:
  - session: Heavy hinge
    day: monday
    exercises:
      - {exercise: Romanian deadlift, sets: 3, reps: 5-7, rir: 2, rest: 3 min}
      - {exercise: leg press, sets: 3, reps: 10-15, rir: 2, rest: 2 min}
      - {exercise: seated leg curl, sets: 3, reps: 10-15, rir: 2, rest: 2 min}
      - {exercise: leg extension, sets: 3, reps: 10-15, rir: 2, rest: 2 min}
      - {exercise: standing calf raise, sets: 3, reps: 5-7, rir: 2, rest: 2 min}
  - session: Heavy curl
    day: thursday
    exercises:
      - {exercise: back squat, sets: 3, reps: 5-7, rir: 2, rest: 3 min}
      - {exercise: dumbbell Romanian deadlift, sets: 3, reps: 10-15, rir: 2, rest: 2 min}
      - {exercise: lying leg curl, sets: 3, reps: 5-7, rir: 2, rest: 3 min}
      - {exercise: leg extension, sets: 3, reps: 10-15, rir: 2, rest: 2 min}
      - {exercise: standing calf raise, sets: 3, reps: 10-15, rir: 2, rest: 2 min}
"""

JOBS = {
    "Romanian deadlift": "hinge",
    "dumbbell Romanian deadlift": "hinge",
    "seated leg curl": "curl",
    "lying leg curl": "curl",
    "leg press": "quadriceps",
    "leg extension": "quadriceps",
    "back squat": "quadriceps",  # cp-squat: no hamstring work; common practice, no source
    "standing calf raise": "calves",
}
"""What a coach writes each lift down for: common practice, no source."""

HEAVY, LIGHT = "5-7", "10-15"
"""Inside the 4-8 and the 8-20 repetitions of cp-spread: common practice, no source."""

HEAVY_HINGE = f"Romanian deadlift, sets: 3, reps: {HEAVY}"
LIGHT_HINGE = f"dumbbell Romanian deadlift, sets: 3, reps: {LIGHT}"
HEAVY_CURL = f"lying leg curl, sets: 3, reps: {HEAVY}"
LIGHT_CURL = f"seated leg curl, sets: 3, reps: {LIGHT}"
HAMSTRINGS = (HEAVY_HINGE, LIGHT_HINGE, HEAVY_CURL, LIGHT_CURL)
QUADRICEPS = ("leg press, sets: 3", "leg extension, sets: 3", "back squat, sets: 3")


def one_set(lines: tuple[str, ...]) -> dict[str, str]:
    return {line: line.replace("sets: 3", "sets: 1") for line in lines}


def changed(swaps: dict[str, str]) -> str:
    """The plan with words changed for others, all at once and wherever they stand."""
    text = PLAN
    for number, words in enumerate(swaps):
        assert words in text, words
        text = text.replace(words, f"@{number}@")
    for number, words in enumerate(swaps.values()):
        text = text.replace(f"@{number}@", words)
    return text


def said(findings: list[Finding]) -> set[tuple[str, str]]:
    return {(finding.rule, finding.severity) for finding in findings}


def test_the_plan_keeps_the_principles() -> None:
    """Counted here from the text alone, so that silence on it means something."""
    first, second = yaml.safe_load(PLAN)["sessions"]
    assert (first["day"], second["day"]) == ("monday", "thursday")  # cp-twice: 72 h apart
    slots = [
        {(JOBS[line["exercise"]], line["reps"]) for line in session["exercises"]}
        for session in (first, second)
    ]
    assert slots[0] >= {("hinge", HEAVY), ("curl", LIGHT)}  # cp-both, cp-spread, cp-cross
    assert slots[1] >= {("hinge", LIGHT), ("curl", HEAVY)}
    assert {reps for day in slots for job, reps in day if job == "quadriceps"} == {HEAVY, LIGHT}
    sets: Counter[str] = Counter()
    for line in first["exercises"] + second["exercises"]:
        sets[JOBS[line["exercise"]]] += line["sets"]
    assert sets == {"hinge": 6, "curl": 6, "quadriceps": 12, "calves": 6}  # cp-balance 12 : 12, cp-cap 20


def test_nothing_is_said_of_the_plan(findings: Findings) -> None:
    assert findings(PLAN) == []


BROKEN = {
    # common practice, no source: cp-both, both jobs of the hamstrings; the sets stay, so the balance holds
    "hinges in place of the curls": (
        {
            HEAVY_CURL: f"good morning, sets: 3, reps: {HEAVY}",
            LIGHT_CURL: f"good morning, sets: 3, reps: {LIGHT}",
        },
        ("knee-flexion-missing", "warning"),
    ),
    "curls in place of the hinges": (
        {
            f"exercise: {HEAVY_HINGE}": f"exercise: lying leg curl, sets: 3, reps: {HEAVY}",
            LIGHT_HINGE: f"seated leg curl, sets: 3, reps: {LIGHT}",
        },
        ("hip-hinge-missing", "warning"),
    ),
    # common practice, no source: cp-spread, a heavy and a light slot
    "everything light": ({HEAVY: LIGHT}, ("rep-range-narrow", "note")),
    "everything heavy": ({LIGHT: HEAVY}, ("rep-range-narrow", "note")),
    "hamstrings all light": (
        {line: line.replace(HEAVY, LIGHT) for line in (HEAVY_HINGE, HEAVY_CURL)},
        ("rep-range-narrow", "note"),
    ),
    # common practice, no source: cp-cross, heavy and light change places over the week
    "curls change days, so that one day is all heavy": (
        {
            LIGHT_CURL: f"lying leg curl, sets: 3, reps: {HEAVY}",
            HEAVY_CURL: f"seated leg curl, sets: 3, reps: {LIGHT}",
        },
        ("heavy-light-not-crossed", "note"),
    ),
    # common practice, no source: cp-twice, 48 to 72 hours; the 48 stand in fm21-20-48 too
    "days next to each other": (
        {"day: thursday": "day: tuesday", "rir: 2": "rir: 1"},
        ("sessions-too-close", "warning"),
    ),
    # common practice, no source: cp-balance, front and back of the thigh near 1 : 1
    "three times as much for the quadriceps": (one_set(HAMSTRINGS), ("antagonist-imbalance", "note")),
    "three times as much for the hamstrings": (one_set(QUADRICEPS), ("antagonist-imbalance", "note")),
    # common practice, no source: cp-heavy-hinge, no heavier than the hamstrings can own
    "a hinge for two repetitions, one left": (
        {f"{HEAVY_HINGE}, rir: 2": "Romanian deadlift, sets: 3, reps: 2, rir: 1"},
        ("stiff-hinge-too-heavy", "note"),
    ),
    # common practice, no source: cp-cap, 20 hard sets a muscle group; 24 each here, so the balance holds
    "twice as many sets": ({"sets: 3": "sets: 6"}, ("weekly-sets-over-limit", "warning")),
}
"""A change to the plan, and the one rule that it raises."""


@pytest.mark.parametrize("change", BROKEN)
def test_a_broken_principle_raises_its_rule_alone(findings: Findings, change: str) -> None:
    swaps, rule = BROKEN[change]
    asked_for = {"spotline.yaml": "rules: {rep-range-narrow: run}\n"}  # off by default
    assert said(findings(changed(swaps), "", asked_for)) == {rule}


@pytest.mark.parametrize(
    "swaps",
    [
        {"day: thursday": "day: wednesday"},  # cp-twice, 48 h: common practice, no source
        {"sets: 3": "sets: 5"},  # cp-cap, 20 for either side of the thigh: common practice, no source
        one_set((HEAVY_CURL, LIGHT_CURL)),  # cp-balance, 12 : 8 is 3 : 2: common practice, no source
        {f"{HEAVY_HINGE}, rir: 2": "Romanian deadlift, sets: 3, reps: 4, rir: 0"},  # cp-heavy-hinge: the same
    ],
    ids=["48 hours", "twenty sets", "three to two", "a hinge for four"],
)
def test_the_edge_of_a_principle_is_still_inside(findings: Findings, swaps: dict[str, str]) -> None:
    assert findings(changed(swaps)) == []


@pytest.mark.parametrize(
    "swaps",
    [
        # cp-cross: both hinges heavy and both curls light is not crossed either, but no day is all heavy and
        # the muscle sees both slots; the rule speaks only of a heavy day beside a light one
        {
            LIGHT_HINGE: f"Romanian deadlift, sets: 3, reps: {HEAVY}",
            HEAVY_CURL: f"seated leg curl, sets: 3, reps: {LIGHT}",
        },
        {LIGHT_HINGE: f"Romanian deadlift, sets: 3, reps: {HEAVY}"},
        # cp-twice: at the same number of sets size hardly depends on the days (pelland-2026-freq), so that
        # rules ask for a second day where the goal is strength or health
        {"day: thursday": "day: monday"},
        # cp-twice: more than 72 h apart; no rule has an upper bound
        {"day: thursday": "day: friday"},
    ],
    ids=["hinges heavy, curls light", "hinge heavy on both days", "one day", "96 hours"],
)
def test_what_the_rules_leave_to_the_coach(findings: Findings, swaps: dict[str, str]) -> None:
    """Common practice, no source, and no rule: said here so that a change of mind shows."""
    assert findings(changed(swaps)) == []
