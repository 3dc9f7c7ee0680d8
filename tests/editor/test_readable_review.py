"""While a text cannot be read, features work from the last good review, at places of the present text."""

from __future__ import annotations

from collections.abc import Callable

from spotline.lint.editor.caret.readable_review import ReadableReview
from spotline.lint.editor.documents.snapshot import Snapshot

from .test_node_path import PLAN

Open = Callable[..., Snapshot]


def test_the_last_readable_text_is_used(opened: Open) -> None:
    now = PLAN.replace("weeks: 4", "weeks: 4\nfocus: [legs")
    snapshot = opened(PLAN, now=now)
    readable = ReadableReview(snapshot)
    assert not readable.is_current
    at = now.index("75 %")
    found = readable.path_at(at)
    assert found is not None
    assert found.text == "75 %"
    assert readable.span_in_document(found.start, found.end) == (at, at + 4)
    assert readable.path_at(now.index("focus") + 2) is None  # new since
    for offset in range(len(now)):
        older = snapshot.offset_map.to_older(offset)
        assert older is None or readable.to_document(older) == offset


def test_a_readable_text_needs_no_other(opened: Open) -> None:
    now = PLAN.replace("75 %", "77.5 %")
    readable = ReadableReview(opened(PLAN, now=now))
    assert readable.is_current
    found = readable.path_at(now.index("77.5 %"))
    assert found is not None
    assert found.text == "77.5 %"


def test_what_is_left_of_a_rewritten_part(opened: Open) -> None:
    now = PLAN.replace("sets: {1-3: 3, 4: 2}", "sets: {1-3: 3, 4")
    readable = ReadableReview(opened(PLAN, now=now))
    assert not readable.is_current
    start, end = PLAN.index("exercise: {1"), PLAN.index("      - {exercise: seated")
    assert readable.remains_in_document(start, end) == (start, end - 4)
    assert readable.span_in_document(start, end) is None


def test_settings_are_read_for_the_editor(opened: Open) -> None:
    text = "weekly limits: {chest: 12}\n"
    readable = ReadableReview(opened(text, name="spotline.yaml"))
    found = readable.path_at(text.index("chest"))
    assert found is not None
    assert found.keys == ("weekly limits", "chest")
    assert readable.index.ledgers == ()


def test_a_text_that_was_never_readable_has_no_path(opened: Open) -> None:
    assert ReadableReview(opened("sessions: [\n")).path_at(3) is None
