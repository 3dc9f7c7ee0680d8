"""Whatever is edited: what is published is what a review of the same files on the disk says."""

from __future__ import annotations

from pathlib import Path
from random import Random

import pytest

from .edits import EDITS, change, lines_in_units, position
from .pipe_client import Encoding
from .random_session import FILES, PLAN, DifferenceError, RandomSession, pasted, shrunk, verdict


@pytest.mark.parametrize(
    ("seed", "encoding", "watches"), [(1, "utf-16", True), (2, "utf-8", False), (3, "utf-32", True)]
)
def test_what_is_published_is_what_a_review_says(seed: int, encoding: Encoding, watches: bool) -> None:
    wrong = verdict(seed, 100, encoding, watches=watches)
    assert not wrong, wrong


# Whether the comparison is one


def test_a_difference_is_noticed(tmp_path: Path) -> None:
    first = FILES[PLAN]
    with RandomSession(tmp_path, "utf-16") as session:
        session.check()
        document, uri = session.documents[PLAN], session.client.uri(PLAN)
        _, found = session.client.published[uri]
        assert len(found) > 5
        session.settled = 0.1

        for version, wrong, words in (
            (2, found, "version 2 instead of 1"),
            (1, found[1:], "lacks"),
            (1, [*found, found[-1]], "another order or number"),
            (1, found[::-1], "another order or number"),
            (1, [{**one, "severity": 4} for one in found], "says"),
            (1, [{**found[0], "range": _at(0, len(first))}], "outside"),
            (1, [{**found[0], "range": _at(first.count("\n") + 1, 0)}], "outside"),
        ):
            session.client.published[uri] = version, wrong
            with pytest.raises(DifferenceError, match=words):
                session.check()
        session.client.published[uri] = 1, found

        for text, words in (
            (first.replace("hypertrophy", "hypertrofy"), "lacks .*hypertrofy"),
            (first.replace("# spotline: waive", "# waive"), "says .*waiver-unused"),
            (f"# Eine Zeile mehr\n{first}", "says"),
        ):
            document.text = text
            with pytest.raises(DifferenceError, match=words):
                session.check()
        document.text = first
        session.check()


def _at(line: int, character: int) -> dict[str, dict[str, int]]:
    return {end: {"line": line, "character": character} for end in ("start", "end")}


def test_what_fails_is_made_short() -> None:
    assert shrunk(list(range(100)), lambda some: 7 in some and 70 in some, 5) == [7, 70]


# What is typed, and how it is told


@pytest.mark.parametrize("edit", [edit for _, edit in EDITS])
def test_edits_change_texts_of_any_kind(edit: object) -> None:
    assert callable(edit)
    texts = ["", "\ufeff", "\n", "a: b", FILES[PLAN], *pasted()[:4]]
    changed = [edit(text, Random(seed), ["before"]) != text for text in texts for seed in range(20)]
    assert sum(changed) > 20


@pytest.mark.parametrize(
    ("old", "new", "start", "end", "words"),
    [
        ("a\r\nb", "a\rx\nb", (0, 1), (1, 0), "\rx\n"),
        ("a\r\nb", "a\nb", (0, 1), (1, 0), "\n"),
        ("😀x", "😀y", (0, 2), (0, 3), "y"),
        ("", "a", (0, 0), (0, 0), "a"),
        ("a\nb", "", (0, 0), (1, 1), ""),
    ],
)
def test_a_change_is_told_in_positions_that_there_are(
    old: str, new: str, start: tuple[int, int], end: tuple[int, int], words: str
) -> None:
    told = change(old, new, "utf-16")
    assert told["text"] == words
    assert told["range"] == {
        "start": {"line": start[0], "character": start[1]},
        "end": {"line": end[0], "character": end[1]},
    }


def test_positions_are_counted_in_units() -> None:
    text = "é😀\u2028a\rb\r\n"
    assert lines_in_units(text, "utf-8") == [10, 1, 0]
    assert lines_in_units(text, "utf-16") == [5, 1, 0]
    assert lines_in_units(text, "utf-32") == [4, 1, 0]
    assert position(text, 4, "utf-16") == {"line": 0, "character": 5}
    assert position(text, 6, "utf-16") == {"line": 1, "character": 1}
