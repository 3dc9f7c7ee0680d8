"""Six programmes of six notations: first on paper, as such a coach writes them, then typed as literally as the format allows.

The coaches are invented. Each paper stands beside its file; changes.yaml says line by line what had to be changed.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest
import yaml

from spotline.lint.project.results import FileReview
from spotline.lint.project.review import review
from spotline.tests.conftest import TODAY

FOLDER = Path(__file__).parent / "notations"
CHANGES = yaml.safe_load((FOLDER / "changes.yaml").read_text(encoding="utf-8"))
NAMES = sorted(CHANGES)
MOST_CHANGED = 6
"""Changes of a paper's about a dozen lines: the rest is typed as it stands."""


def text(name: str, kind: str) -> str:
    return (FOLDER / f"{name}.{kind}").read_text(encoding="utf-8")


@pytest.fixture(scope="module", params=NAMES)
def typed(request: pytest.FixtureRequest) -> FileReview:
    (one,) = review([str(FOLDER / f"{request.param}.programme.yaml")], TODAY).files
    return one


def test_each_paper_is_typed() -> None:
    assert len(NAMES) == 6
    for kind in ("paper.txt", "programme.yaml"):
        assert sorted(path.name.removesuffix(f".{kind}") for path in FOLDER.glob(f"*.{kind}")) == NAMES


def test_what_is_typed_is_read_and_counted_in_full(typed: FileReview) -> None:
    assert [one.counted for one in typed.findings if not one.why] == []
    assert typed.ledger is not None
    assert all(entry.sure for _, entry in typed.ledger.entries())


def test_nothing_that_is_said_of_it_blocks(typed: FileReview) -> None:
    assert [one.counted for one in typed.findings if one.severity != "note"] == []


@pytest.mark.parametrize("name", NAMES)
def test_each_change_stands_on_paper_and_in_the_file(name: str) -> None:
    assert len(CHANGES[name]) <= MOST_CHANGED
    for change in CHANGES[name]:
        assert change["paper"] in text(name, "paper.txt")
        assert change["typed"] in text(name, "programme.yaml")
        assert change["why"]


@pytest.mark.parametrize("name", NAMES)
def test_all_numbers_of_the_paper_are_typed(name: str) -> None:
    """But the share of a share, which was worked out."""
    worked_out = {"3-percentages-by-week": {"80"}}
    numbers = set(re.findall(r"[0-9]+(?:[.,][0-9]+)?", text(name, "paper.txt").partition("\n")[2]))
    held = set(re.findall(r"[0-9]+(?:[.,][0-9]+)?", text(name, "programme.yaml")))
    assert numbers - held == worked_out.get(name, set())
