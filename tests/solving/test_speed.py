"""What proposals cost, as so many reviews of the same file: counted in steps, which no busy machine changes."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest

from spotline.lint.solving.judge import Judge
from spotline.lint.solving.solve import Ask, solve
from spotline.tests.conftest import TODAY
from spotline.tests.solving.faulty import FAULTS, faulty
from spotline.tests.solving.test_conflict import ANN, BEA, BOTH, seven
from spotline.tests.solving.test_impossible import SAID
from spotline.tests.solving.test_impossible import path_of as impossible
from spotline.tests.solving.test_thirty import BY_FOLDER, PROPOSED
from spotline.tests.solving.test_thirty import path_of as one_of_thirty
from spotline.tests.steps import steps

EXAMPLES = Path(__file__).parent.parent.parent / "examples" / "faulty"

FOR_ONE, FOR_ALL, FOR_A_CONFLICT = 30, 150, 200
"""Reviews that one finding may cost, all that blocks, and a call by which it is said why there is none."""

ASKED = {
    "two in little time": ("minutes: 30", "chest: 30", "lats: 30"),
    "three in little time": ("minutes: 30", "chest: 30", "lats: 30", "hamstrings: 30"),
    "two over what a session takes": ("minutes: 90", "chest: 40", "quadriceps: 40"),
    "three over what a session takes": ("minutes: 90", "chest: 40", "quadriceps: 40", "lats: 44"),
    "three of which one can be had": ("minutes: 30", "chest: 30", "calves: 7", "lats: 30"),
}
"""Demands on a sound programme that cannot be had together: the minutes, and what is to get how many sets."""

AT_HOME = """\
programme: Home
athlete: {name: Ida, level: novice, equipment: [dumbbells, flat bench]}
goal: general health
must hold:
  - {weekly sets of: vertical pull, at least: 4}
  - {days of: back squat, at least: 3}
  - {weekly sets of: elbow extension, at least: 6}
  - {weekly sets of: elbow extension, at most: 4}
sessions:
  - session: Home
    day: [monday, thursday]
    exercises:
      - {exercise: goblet squat, sets: 3, reps: 10}
      - {exercise: dumbbell bench press, sets: 3, reps: 10}
      - {exercise: dumbbell row, sets: 3, reps: 10}
"""

CREW = """\
programme: Three of a crew
athletes:
  - {name: Ann, level: intermediate, minutes: 75}
  - {name: Bea, level: novice, minutes: 20}
  - {name: Cleo, level: advanced, minutes: 40, equipment: [barbell, rack, bench, dumbbells, lat pulldown machine, cable machine]}
goal: hypertrophy
must hold:
  - {weekly sets of: chest, at least: 12}
  - {weekly sets of: lats, at least: 12}
  - {weekly sets of: quadriceps, at least: 12}
sessions:
  - session: One
    day: monday
    exercises:
      - {exercise: bench press, sets: 2, reps: 8-12, rir: 2, rest: 2 min}
      - {exercise: lat pulldown, sets: 2, reps: 8-12, rir: 2, rest: 2 min}
      - {exercise: back squat, sets: 2, reps: 8-12, rir: 2, rest: 2 min}
  - session: Two
    day: thursday
    exercises:
      - {exercise: overhead press, sets: 2, reps: 8-12, rir: 2, rest: 2 min}
      - {exercise: seated cable row, sets: 2, reps: 8-12, rir: 2, rest: 2 min}
"""


def asking(minutes: str, *floors: str) -> str:
    """The sound programme with further demands."""
    named = (one.split(": ") for one in floors)
    asked = "".join(f"  - {{weekly sets of: {group}, at least: {sets}}}\n" for group, sets in named)
    return faulty(
        ("minutes: 70", minutes), ("goal: hypertrophy\n", f"goal: hypertrophy\nmust hold:\n{asked}")
    )


CONFLICTS = {
    **{name: asking(*asked) for name, asked in ASKED.items()},
    **{"at home": AT_HOME, "a crew": CREW, "two who share a week": BOTH.format(members=f"{ANN}\n{BEA}")},
    **{"seven": seven(16, 45), "seven, some of which can be had": seven(10, 45)},
}


def ratio(path: str, ask: Ask) -> float:
    """How many times the steps of a whole review the proposals for a file take."""
    return steps(lambda: solve(path, TODAY, ask)) / review_of(path)


@cache
def review_of(path: str) -> int:
    content = Path(path).read_text(encoding="utf-8")
    return steps(lambda: Judge(path, TODAY, {}).look(content))


def faulty_file(name: str) -> str:
    return str(EXAMPLES / f"{name}.programme.yaml")


@pytest.mark.parametrize("folder", [one for one in PROPOSED if "rule" in BY_FOLDER[one]])
def test_one_finding(folder: str) -> None:
    assert ratio(one_of_thirty(folder), Ask(0, BY_FOLDER[folder]["rule"])) <= FOR_ONE


@pytest.mark.parametrize("fault", FAULTS)
def test_one_fault_in_a_sound_programme(fault: str, tmp_path: Path) -> None:
    text, rule = FAULTS[fault]
    (tmp_path / ".git").mkdir()
    path = tmp_path / "plan.programme.yaml"
    path.write_text(text, encoding="utf-8")
    found = {
        one.group or one.subject for one in solve(str(path), TODAY, Ask()).review.findings if one.rule == rule
    }
    assert ratio(str(path), Ask(0, rule)) <= FOR_ONE * len(found)


@pytest.mark.parametrize("rule", ["antagonist-imbalance", "hip-hinge-missing", "weekly-sets-over-limit"])
def test_one_finding_of_an_example(rule: str) -> None:
    assert ratio(faulty_file("unbalanced"), Ask(0, rule)) <= FOR_ONE


@pytest.mark.parametrize("name", ["slips", "unbalanced"])
def test_all_that_blocks_in_an_example(name: str) -> None:
    assert ratio(faulty_file(name), Ask()) <= FOR_ALL


@pytest.mark.parametrize("folder", [one for one in PROPOSED if "rule" not in BY_FOLDER[one]])
def test_all_that_blocks(folder: str) -> None:
    assert ratio(one_of_thirty(folder), Ask()) <= FOR_ALL


@pytest.mark.parametrize("name", SAID)
def test_a_conflict(name: str) -> None:
    assert ratio(impossible(name), Ask()) <= FOR_A_CONFLICT


@pytest.mark.parametrize("name", CONFLICTS)
def test_a_conflict_of_several_findings(name: str, tmp_path: Path) -> None:
    (tmp_path / ".git").mkdir()
    path = tmp_path / "plan.programme.yaml"
    path.write_text(CONFLICTS[name], encoding="utf-8")
    ask = Ask(0, "demand-not-held")
    assert len(solve(str(path), TODAY, ask).stays) >= 2
    assert ratio(str(path), ask) <= FOR_A_CONFLICT
