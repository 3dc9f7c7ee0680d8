"""Twelve more programmes of a coach who had not seen the rules, typed line by line, and what is found in them.

They stand as they were typed at first: names and spellings were not mended for the reader. verdicts.yaml holds
every finding with the judgement of that coach. A finding that comes or goes must be judged there anew.
"""

from __future__ import annotations

from collections import Counter
from pathlib import Path

import pytest
import yaml

from spotline.lint.project.results import Review
from spotline.lint.project.review import review
from spotline.tests.conftest import TODAY

FOLDER = Path(__file__).parent / "more_coaches"
VERDICTS = yaml.safe_load((FOLDER / "verdicts.yaml").read_text(encoding="utf-8"))


@pytest.fixture(scope="module")
def reviewed_programmes() -> Review:
    return review([str(FOLDER)], TODAY)


def test_all_twelve_are_read(reviewed_programmes: Review) -> None:
    assert sum(one.kind == "programme" for one in reviewed_programmes.files) == 12
    of_reading = {
        finding.rule for one in reviewed_programmes.files for finding in one.findings if not finding.why
    }
    assert of_reading == {"two-readings"}  # `3x5`, which is asked about


def test_every_finding_was_judged(reviewed_programmes: Review) -> None:
    found = Counter(
        (str(Path(one.name).relative_to(FOLDER)), finding.rule, finding.where)
        for one in reviewed_programmes.files
        for finding in one.findings
    )
    assert found == Counter((one["file"], one["rule"], one["where"]) for one in VERDICTS)


def test_most_is_useful_and_nothing_is_wrong() -> None:
    verdicts = Counter(one["verdict"] for one in VERDICTS)
    assert set(verdicts) == {"useful", "noise"}
    assert verdicts["useful"] * 100 >= 80 * len(VERDICTS)


def test_the_mistakes_that_were_hidden_are_found(reviewed_programmes: Review) -> None:
    """Each blocks, be it in a finding that lists it, but the pasted week, which is a note."""
    found = {
        (Path(one.name).parent.name[:2], each.rule, each.severity)
        for one in reviewed_programmes.files
        for finding in one.findings
        for each in (finding, *finding.follows)
    }
    assert {
        ("02", "load-step-large", "warning"),
        ("04", "hip-hinge-missing", "warning"),
        ("04", "knee-flexion-missing", "warning"),
        ("06", "legs-heavy-before-event", "warning"),
        ("09", "protected-area-loaded", "warning"),
        ("10", "week-pasted", "note"),
    } <= found
