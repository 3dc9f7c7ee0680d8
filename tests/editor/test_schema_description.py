"""What the schema says of a key."""

from __future__ import annotations

import pytest

from spotline import schema as schemas
from spotline.lint.editor.caret.applicable_schema import KINDS
from spotline.lint.editor.caret.schema_description import description_of


@pytest.mark.parametrize("kind", KINDS)
def test_every_key_of_the_schema_is_description_of(kind: str) -> None:
    def undescribed(part: object, at: str) -> list[str]:
        if not isinstance(part, dict):
            return []
        found = [
            f"{at}.{key}"
            for key, below in part.get("properties", {}).items()
            if isinstance(below, dict)
            and "description" not in below
            and part.get("additionalProperties") is False
        ]
        for key, below in part.items():
            found += undescribed(below, f"{at}.{key}")
        return found

    assert undescribed(schemas.load(kind), kind) == []


def test_a_description_needs_a_kind_and_a_key() -> None:
    assert description_of("record", {}, ("goal",)) == ""
    assert description_of("programme", {}, ()) == ""
    assert description_of("programme", {}, ("nonsense", 3)) == ""
    assert description_of("programme", [], ("goal",)).startswith("What the programme is after")
