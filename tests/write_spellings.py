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
            before, after = text[: start.end()], text[start.end() :]
            pattern = json.dumps(spellings.pattern(kind), ensure_ascii=True)
            text = before + re.sub(
                r'"pattern": "(?:[^"\\]|\\.)*"', lambda _: f'"pattern": {pattern}', after, count=1
            )
    return text


def main() -> None:
    """Brings the schemas up to date."""
    for name in FILES:
        path = SCHEMA / name
        path.write_text(with_patterns(path.read_text(encoding="utf-8")), encoding="utf-8")


if __name__ == "__main__":
    main()
