"""JSON Schemas (2020-12) of every file that spotline reads or writes.

The schemas of programmes and settings refer to the athlete's; what leaves here is one self-contained
document, so that neither a validator nor an editor has to look for a second one.

What a file is tested against stands in built.py once more, as Python has it and without the words for people:
there it is loaded in a third of the time. `tests/write_schemas.py` writes it.
"""

from __future__ import annotations

import os
from functools import cache

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_USES = {
    "programme": ("athlete",),
    "athlete": (),
    "exercises": (),
    "team": ("athlete",),
    "review": (),
    "code-quality": (),
    "exercises-found": (),
    "rules": (),
    "changes": (),
    "tally": (),
    "proposals": (),
}
_loaded: dict[str, dict[str, Any]] = {}


def names() -> tuple[str, ...]:
    """The schemas there are: the files (programme, athlete, team), and what is printed as JSON (the rest)."""
    return tuple(_USES)


def load(name: str) -> dict[str, Any]:
    """A schema by its name, every reference within it; shared by all callers, so not to be changed.

    Raises KeyError for a name that is not among `names()`.
    """
    if name not in _loaded:
        _loaded[name] = _joined(name)
    return _loaded[name]


@cache
def tested(name: str) -> dict[str, Any]:
    """The same schema without its words for people, for what only tests data against it."""
    from . import built

    found = getattr(built, name, None)
    schema: dict[str, Any] = load(name) if found is None else found()
    return schema


def text(name: str) -> str:
    """The same schema as JSON text, for an editor's settings."""
    import json

    return json.dumps(load(name), indent=2, ensure_ascii=False) + "\n"


def _joined(name: str) -> dict[str, Any]:
    import json

    used = _USES[name]
    written = _written(name)
    for other in used:
        address = f'"urn:spotline:schema:{other}'
        written = written.replace(f"{address}#/", '"#/').replace(f'{address}"', f'"#/$defs/{other}"')
    schema: dict[str, Any] = json.loads(written)
    for other in used:
        body = dict(load(other))
        for key in ("$schema", "$id"):
            del body[key]
        schema["$defs"].update(body.pop("$defs"))
        schema["$defs"][other] = body
    return schema


def _written(name: str) -> str:
    path = os.path.join(os.path.dirname(__file__), f"{name}.json")
    with open(path, encoding="utf-8") as file:
        return file.read()
