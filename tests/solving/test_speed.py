"""What proposals cost, as so many reviews of the same file: counted in steps, which no busy machine changes."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest

from spotline.lint.solving.judge import Judge
from spotline.lint.solving.solve import Ask, solve
from spotline.tests.conftest import TODAY
from spotline.tests.solving.faulty import FAULTS
from spotline.tests.solving.test_impossible import SAID
from spotline.tests.solving.test_impossible import path_of as impossible
from spotline.tests.solving.test_thirty import BY_FOLDER, PROPOSED
from spotline.tests.solving.test_thirty import path_of as one_of_thirty
from spotline.tests.steps import steps

EXAMPLES = Path(__file__).parent.parent.parent / "examples" / "faulty"

FOR_ONE, FOR_ALL, FOR_A_CONFLICT = 30, 150, 200
"""Reviews that one finding may cost, all that blocks, and each finding of which it is said why there is none."""


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
    assert ratio(impossible(name), Ask()) <= FOR_A_CONFLICT * len(SAID[name])
