"""URIs and paths lead to one another."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.editor.protocol.uris import file_name_of, path_of, uri_of


@pytest.mark.parametrize(
    ("uri", "path"),
    [
        ("file:///a/b%20c.yaml", "/a/b c.yaml"),
        ("FILE:///a/b.yaml", "/a/b.yaml"),
        ("file://localhost/a", "/a"),
        ("file:///a/../b", "/b"),
        ("file:///%C3%A4", "/ä"),
        ("untitled:Untitled-1", ""),
        ("file://", ""),
        ("file:///a%00b", ""),
        ("file://" + "[x", ""),
        ("", ""),
    ],
)
def test_the_path_of_a_uri(uri: str, path: str) -> None:
    assert path_of(uri) == path


@given(st.text(st.characters(exclude_characters="/\0", exclude_categories=["Cs"]), min_size=1))
def test_a_uri_leads_back_to_its_path(name: str) -> None:
    path = f"/a/{name}"
    assert path_of(uri_of(path)) == path_of(uri_of(path_of(uri_of(path))))
    if name not in (".", ".."):
        assert path_of(uri_of(path)) == path


def test_the_file_name_of_a_uri() -> None:
    assert file_name_of("untitled:Untitled-1") == "Untitled-1"
    assert file_name_of("file:///a/my%20plan.yaml") == "my plan.yaml"


def test_bytes_of_a_name_that_are_no_text_stay() -> None:
    path = "/team/\udcff\udcfe.programme.yaml"
    assert uri_of(path) == "file:///team/%FF%FE.programme.yaml"
    assert path_of(uri_of(path)) == path
