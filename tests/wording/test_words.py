"""Words that all messages share: what is counted, and text that is safe to print."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spotline.lint.wording.words import counted_noun, safe


@pytest.mark.parametrize(("number", "words"), [(0, "0 notes"), (1, "1 note"), (2, "2 notes")])
def test_many(number: int, words: str) -> None:
    assert counted_noun(number, "note") == words


@pytest.mark.parametrize("words", ["", "12 sets", "größe", "深蹲", "3–4", "“quoted”", "a\\b", "½ m²", "💪"])
def test_ordinary_text_stays(words: str) -> None:
    assert safe(words) == words


@pytest.mark.parametrize(
    ("words", "spelled"),
    [
        ("a\nb", "a\\u000ab"),
        ("a\rb", "a\\u000db"),
        ("a\tb", "a\\u0009b"),
        ("a\0b", "a\\u0000b"),
        ("\x1b[31mred", "\\u001b[31mred"),
        ("\x9b31m", "\\u009b31m"),  # the one-letter start of an escape
        ("a\x7fb", "a\\u007fb"),
        ("a\u2028b", "a\\u2028b"),  # line separator
        ("a\u0085b", "a\\u0085b"),  # next line
        ("a\u202eb", "a\\u202eb"),  # right to left from here
        ("a\u2066b\u2069", "a\\u2066b\\u2069"),
        ("a\u200fb", "a\\u200fb"),
        ("a\u061cb", "a\\u061cb"),
        ("a\u200bb", "a\\u200bb"),  # no width
        ("\ufeffa", "\\ufeffa"),
        ("a\udcf6b", "a\\udcf6b"),  # a byte that is not UTF-8
    ],
)
def test_what_steers_a_terminal_or_forges_a_line_is_spelled_out(words: str, spelled: str) -> None:
    assert safe(words) == spelled


@settings(max_examples=200)
@given(st.text(st.characters(), max_size=20))
def test_one_line_comes_out_of_anything(words: str) -> None:
    out = safe(words)
    assert len(out.splitlines()) <= 1
    assert out.isprintable()
    assert safe(out) == out
