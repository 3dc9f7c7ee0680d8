"""What a client is set to."""

from __future__ import annotations

import pytest
from lsprotocol import types

from spotline.lint.editor.protocol.client import Client


def test_settings_are_taken_over_one_by_one() -> None:
    client = Client(types.ClientCapabilities())
    assert (client.hint_kinds, client.lenses, client.shows_markdown) == (
        frozenset({"sets", "kg"}),
        True,
        False,
    )
    client.apply_settings({"hints": {"sets": False}, "lenses": False, "showsMarkdown": True})
    assert (client.hint_kinds, client.lenses, client.shows_markdown) == (frozenset({"kg"}), False, True)
    client.apply_settings({"hints": {"sets": True, "kilograms": False}})
    assert (client.hint_kinds, client.lenses, client.shows_markdown) == (frozenset({"sets"}), False, True)


def test_text_without_marks_is_asked_for_by_a_setting_or_by_what_is_announced() -> None:
    client = Client(types.ClientCapabilities())
    assert not client.shows_text
    client.apply_settings({"plainText": True})
    assert client.shows_text
    formats = types.HoverClientCapabilities(content_format=[types.MarkupKind.PlainText])
    announced = types.ClientCapabilities(text_document=types.TextDocumentClientCapabilities(hover=formats))
    assert Client(announced).hover_kind is types.MarkupKind.PlainText


@pytest.mark.parametrize(
    "settings",
    [None, [], "x", 5, {}, {"hints": 5, "lenses": "no", "showsMarkdown": 1}, {"hints": {"sets": 0}}],
)
def test_what_is_no_setting_changes_nothing(settings: object) -> None:
    client = Client(types.ClientCapabilities())
    client.apply_settings(settings)
    assert (client.hint_kinds, client.lenses, client.shows_markdown) == (
        frozenset({"sets", "kg"}),
        True,
        False,
    )
