"""Writes the patterns of all spellings that are read into the schemas, from `lint/schemas/spellings.py`."""

from __future__ import annotations

import json
import re
from pathlib import Path

from spotline.lint.schemas import spellings

SCHEMA = Path(__file__).parent.parent / "schema"
FILES = ("programme.json", "athlete.json")


def with_patterns(text: str) -> str:
    """A schema's text with the pattern of each quantity as the spellings have it."""
    for kind in spellings.KINDS:
        start = re.search(rf'^    "{kind}": {{', text, re.MULTILINE)
        if start is not None:
            old = re.compile(r'"pattern": "(?:[^"\\]|\\.)*"').search(text, start.end())
            assert old is not None, kind
            pattern = json.dumps(spellings.pattern(kind))
            text = f'{text[: old.start()]}"pattern": {pattern}{text[old.end() :]}'
    return text


def main() -> None:
    """Brings the schemas up to date."""
    for name in FILES:
        path = SCHEMA / name
        path.write_text(with_patterns(path.read_text(encoding="utf-8")), encoding="utf-8")


if __name__ == "__main__":
    main()
