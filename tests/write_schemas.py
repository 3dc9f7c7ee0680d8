"""Writes what the schemas repeat: the patterns of all spellings that are read, and `schema/built.py`.

    python tests/write_schemas.py

The patterns come from `lint/schemas/spellings.py`. `schema/built.py` comes from the schemas of files. Run it after
a change to either.
"""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

from spotline import schema as schemas
from spotline.lint.schemas import spellings

SCHEMA = Path(__file__).parent.parent / "schema"
FILES = ("programme.json", "athlete.json")
BUILT = SCHEMA / "built.py"

FOR_PEOPLE = {"$schema", "$id", "title", "description", "examples"}
"""Keywords that data are not tested against."""
_BY_NAME = {"properties", "$defs", "dependentSchemas", "dependentRequired"}
"""Keywords that hold names of any kind, and no keywords."""

HEAD = '''\
"""Written by tests/write_schemas.py from the schemas of files: change those, not this."""

# ruff: noqa
# fmt: off

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any
'''


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


def bare(part: Any, *, names: bool = False) -> Any:
    """A part of a schema without its words for people; ``names`` says that its keys are no keywords."""
    if isinstance(part, list):
        return [bare(one) for one in part]
    if not isinstance(part, dict):
        return part
    kept = {key: value for key, value in part.items() if names or key not in FOR_PEOPLE}
    return {key: bare(value, names=not names and key in _BY_NAME) for key, value in kept.items()}


def render() -> str:
    """The text of `schema/built.py`: a function for each schema of a file, with one line a definition."""
    return HEAD + "".join(map(_function, ("programme", "athlete", "exercises", "team")))


def _function(name: str) -> str:
    schema = bare(schemas.load(name))
    definitions = "".join(
        f"            {key!r}: {part!r},\n" for key, part in schema.pop("$defs", {}).items()
    )
    others = "".join(f"        {key!r}: {part!r},\n" for key, part in schema.items())
    return (
        f"\n\ndef {name}() -> dict[str, Any]:\n    return {{\n"
        f"{others}        '$defs': {{\n{definitions}        }},\n    }}\n"
    )


def main() -> None:
    """Brings the schemas, and what is written from them, up to date."""
    for name in FILES:
        path = SCHEMA / name
        path.write_text(with_patterns(path.read_text(encoding="utf-8")), encoding="utf-8")
    schemas._loaded.clear()  # they may be others now
    BUILT.write_text(render(), encoding="utf-8")


if __name__ == "__main__":
    main()
