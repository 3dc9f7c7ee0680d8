"""The long sittings: 2,000 edits each, in every encoding, with and without a client that watches the disk."""

from __future__ import annotations

import pytest

from spotline.tests.editor.pipe_client import Encoding
from spotline.tests.editor.random_session import verdict


@pytest.mark.parametrize("watches", [True, False])
@pytest.mark.parametrize("encoding", ["utf-8", "utf-16", "utf-32"])
def test_what_is_published_is_what_a_review_says(encoding: Encoding, watches: bool) -> None:
    wrong = verdict(f"{encoding}, {watches}", 2000, encoding, watches=watches)
    assert not wrong, wrong
