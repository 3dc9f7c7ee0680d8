"""Twelve programmes as coaches write them, typed as literally as the format allows, and what is found in them.

They were written on paper by a coach who had not seen the rules, with a verdict on what a good reviewer would
say. verdicts.yaml holds every finding with the judgement of a coach: useful, noise or wrong. A finding that
comes or goes must be judged there anew.
"""

from __future__ import annotations

from collections import Counter
from pathlib import Path

import pytest
import yaml

from spotline.lint.project.results import Review
from spotline.lint.project.review import review
from spotline.tests.conftest import TODAY

FOLDER = Path(__file__).parent / "coaches"
VERDICTS = yaml.safe_load((FOLDER / "verdicts.yaml").read_text(encoding="utf-8"))


@pytest.fixture(scope="module")
def reviewed_programmes() -> Review:
    return review([str(FOLDER)], TODAY)


def test_all_twelve_are_read_in_full(reviewed_programmes: Review) -> None:
    assert sum(one.kind == "programme" for one in reviewed_programmes.files) == 12
    of_reading = [
        finding.counted for one in reviewed_programmes.files for finding in one.findings if not finding.why
    ]
    assert of_reading == []


def test_every_finding_was_judged(reviewed_programmes: Review) -> None:
    found = Counter(
        (Path(one.name).name, finding.rule, finding.where)
        for one in reviewed_programmes.files
        for finding in one.findings
    )
    assert found == Counter((one["file"], one["rule"], one["where"]) for one in VERDICTS)


def test_nothing_wrong_is_said_and_nothing_wrong_blocks() -> None:
    assert [one for one in VERDICTS if one["verdict"] == "wrong"] == []
    assert {one["verdict"] for one in VERDICTS} == {"useful", "noise"}


def test_the_mistakes_that_were_hidden_are_found(reviewed_programmes: Review) -> None:
    """A misprinted load, a leg curl forgotten where the goal asks for it, two heavy leg days in a row."""
    found = {
        (Path(one.name).name[:2], finding.rule)
        for one in reviewed_programmes.files
        for finding in one.findings
    }
    assert {("01", "load-step-large"), ("04", "knee-flexion-missing"), ("10", "sessions-too-close")} <= found
