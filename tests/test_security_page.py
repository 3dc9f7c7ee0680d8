"""The page on security: each sentence of it stands beside a test that is there."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

HEADING = "## What a hostile repository can and cannot do"
FOR_PEOPLE = "It can still be wrong about a body"
"""What no test can hold, and the page says so."""

REFERENCE = re.compile(r"`([\w/.]+\.py)(?:::(\w+))?(?:::(\w+))?`")


def paragraphs() -> list[str]:
    page = (Path(__file__).parent.parent / "DEVELOPERS.md").read_text(encoding="utf-8")
    section = page.partition(HEADING)[2].partition("\n## ")[0]
    items = re.split(r"\n(?:- |\n)", section)
    said = [" ".join(one.split()) for one in items]
    return [one for one in said if one and not one.startswith("Each sentence is held by")]


def sentences(paragraph: str) -> list[str]:
    """What a paragraph says, each piece up to the tests named behind it."""
    pieces = re.split(r"(?<=\))\s+", paragraph)
    return [one for one in pieces if one]


@pytest.mark.parametrize("paragraph", paragraphs())
def test_each_paragraph_ends_with_its_tests(paragraph: str) -> None:
    if paragraph.startswith(FOR_PEOPLE):
        return
    for said in sentences(paragraph):
        assert re.search(r"\([^()]*`[^()]*\)\.?$", said), said


@pytest.mark.parametrize("paragraph", paragraphs())
def test_each_test_is_there(paragraph: str) -> None:
    for path, first, second in REFERENCE.findall(paragraph):
        if path.startswith(("text/files", "lint/")):
            continue  # a module of ours
        text = (Path(__file__).parent / path).read_text(encoding="utf-8")
        for name in filter(None, (first, second)):
            assert re.search(rf"(?m)^\s*(?:def|class) {name}\b", text), (path, name)


def test_the_page_is_found() -> None:
    assert len(paragraphs()) > 8
