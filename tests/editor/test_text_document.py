"""Documents against a model that keeps a text as the list of its units, as the protocol describes it."""

from __future__ import annotations

from typing import Literal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spotline.lint.editor.protocol.text_document import TextDocument
from spotline.lint.text.places import Text

Encoding = Literal["utf-8", "utf-16", "utf-32"]
Position = tuple[int, int]

CODECS = {"utf-8": ("utf-8", 1), "utf-16": ("utf-16-le", 2), "utf-32": ("utf-32-le", 4)}

PIECES = ["a", "sets: 3", "\n", "\r\n", "\r", "é", "€", "😀", "\u2028", "\x0b", "\x85", "\ufeff", "  ", "\t"]

TEXTS = st.lists(st.sampled_from(PIECES), max_size=12).map("".join)
ENCODINGS = st.sampled_from(["utf-8", "utf-16", "utf-32"])
POSITIONS = st.tuples(st.integers(0, 8), st.integers(0, 12))


def lines_of(content: str) -> list[str]:
    """The lines with their ends, split a character at a time; the last one has no end."""
    lines, line = [], ""
    for index, char in enumerate(content):
        line += char
        if char == "\n" or (char == "\r" and content[index + 1 : index + 2] != "\n"):
            lines.append(line)
            line = ""
    return [*lines, line]


def width(char: str, encoding: str) -> int:
    """Units of one character."""
    codec, size = CODECS[encoding]
    return len(char.encode(codec)) // size


def index_of(content: str, position: Position, encoding: str) -> int:
    """Where a position lies, found by walking there."""
    lines = lines_of(content)
    if position[0] >= len(lines):
        return len(content)
    index = sum(len(line) for line in lines[: position[0]])
    left = position[1]
    for char in lines[position[0]].rstrip("\r\n"):
        left -= width(char, encoding)
        if left < 0:
            break
        index += 1
    return index


@given(TEXTS, ENCODINGS, POSITIONS)
def test_a_position_leads_where_walking_there_leads(
    text: str, encoding: Encoding, position: Position
) -> None:
    mark = text.startswith("\ufeff")
    expected = max(0, index_of(text, position, encoding) - mark)
    assert TextDocument("", 1, text, encoding).offset(*position) == expected


@given(TEXTS, ENCODINGS)
def test_every_offset_that_a_client_can_name_comes_back(text: str, encoding: Encoding) -> None:
    document = TextDocument("", 1, text, encoding)
    for offset in range(len(document.text) + 1):
        line, character = document.position(offset)
        inside = document.text[max(0, offset - 1) : offset + 1] == "\r\n"
        assert document.offset(line, character) == offset - inside


@given(TEXTS)
def test_lines_are_those_of_the_findings(text: str) -> None:
    document = TextDocument("", 1, text, "utf-32")
    known = Text("", document.text)
    mark = text.startswith("\ufeff")
    for offset in range(len(document.text) + 1):
        line, column = known.position(offset)
        first = mark and line == 1
        assert document.position(offset) == (line - 1, column - 1 + first)


@settings(max_examples=300)
@given(TEXTS, ENCODINGS, st.lists(st.tuples(POSITIONS, POSITIONS, TEXTS), max_size=6))
def test_changes_leave_what_they_leave_in_the_model(
    text: str, encoding: Encoding, changes: list[tuple[Position, Position, str]]
) -> None:
    document = TextDocument("", 1, text, encoding)
    document.change(2, [((start, end), words) for start, end, words in changes])
    for start, end, words in changes:
        first, last = sorted((index_of(text, start, encoding), index_of(text, end, encoding)))
        text = text[:first] + words + text[last:]
    assert (document.version, document.content) == (2, text)


def test_an_emoji_is_two_units_four_bytes_and_one_character() -> None:
    text = "note: 😀x\n"
    assert TextDocument("", 1, text, "utf-16").position(7) == (0, 8)
    assert TextDocument("", 1, text, "utf-8").position(7) == (0, 10)
    assert TextDocument("", 1, text, "utf-32").position(7) == (0, 7)


@pytest.mark.parametrize(("encoding", "character"), [("utf-16", 7), ("utf-8", 7), ("utf-8", 9)])
def test_a_position_within_a_character_is_its_beginning(encoding: Encoding, character: int) -> None:
    assert TextDocument("", 1, "note: 😀x\n", encoding).offset(0, character) == 6


def test_only_the_protocols_line_ends_end_a_line() -> None:
    document = TextDocument("", 1, "a\u2028b\x85c\x0bd\x0ce\nf")
    assert document.position(len(document.text)) == (1, 1)


def test_a_change_between_carriage_return_and_line_feed_goes_before_both() -> None:
    document = TextDocument("", 1, "a\r\nb")
    document.change(2, [(((0, 9), (0, 9)), "!")])
    assert document.content == "a!\r\nb"


def test_the_byte_order_mark_stays_but_is_no_text() -> None:
    document = TextDocument("", 1, "\ufeffprogramme: A")
    assert document.text == "programme: A"
    assert document.position(0) == (0, 1)
    assert document.offset(0, 0) == document.offset(0, 1) == 0
    document.change(2, [(((0, 1), (0, 1)), "# ")])
    assert document.content == "\ufeff# programme: A"
    document.change(3, [(((0, 0), (0, 1)), "")])
    assert document.content == "# programme: A"


def test_a_change_without_a_stretch_is_the_whole_text() -> None:
    document = TextDocument("", 1, "a\nb\nc")
    document.change(2, [(None, "x\r\ny"), (((1, 0), (1, 1)), "z")])
    assert document.content == "x\r\nz"


def test_a_stretch_named_backwards_is_the_same_stretch() -> None:
    document = TextDocument("", 1, "abcdef")
    document.change(2, [(((0, 4), (0, 1)), "-")])
    assert document.content == "a-ef"


def test_halves_of_a_character_stay_apart_until_they_meet() -> None:
    document = TextDocument("", 1, "a\ud83d b")
    assert document.position(2) == (0, 2)
    document.change(2, [(((0, 2), (0, 2)), "\ude00")])
    assert document.content == "a😀 b"
    assert document.position(2) == (0, 3)
