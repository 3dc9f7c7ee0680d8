"""A review as JSON: its characters and its places; that it fits its schema is tested with the command."""

from __future__ import annotations

from spotline.lint.project.results import Review
from spotline.lint.reporters.review_json import review_json
from spotline.tests.reporters.builders import finding, reviewed


def test_every_character_is_plain() -> None:
    text = review_json(Review([reviewed(finding("größe \u202e \x1b \udcf6"))]))
    assert text.isascii()
    assert "\x1b" not in text


def test_an_end_stands_just_past_the_last_character() -> None:
    text = review_json(Review([reviewed(finding())]))
    assert '"line": 4,\n      "column": 46,\n      "end line": 4,\n      "end column": 48,' in text
