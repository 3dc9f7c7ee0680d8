"""What the schema of a file says of one of its keys."""

from __future__ import annotations

from .... import schema as schemas
from .applicable_schema import KINDS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from ...schemas.violation import Schema
    from .context import KeyPath


_TYPES: dict[str, type | tuple[type, ...]] = {
    "object": dict,
    "array": list,
    "string": str,
    "integer": int,
    "number": (int, float),
    "boolean": bool,
}


def description_of(kind: str, data: object, path: KeyPath) -> str:
    """The description of what stands at a path in a file of a kind; "" where there is none.

    ``data`` is the plain data of the whole file: where a group can have several forms, its keys decide.
    """
    if kind not in KINDS:
        return ""
    root = schemas.load(kind)
    parts = list(_applying(root, root, data))
    found = ""
    for step in path:
        below = [subschema for part in parts for subschema in _below(part, step)]
        data = _value_at(data, step)
        parts = [applying for part in below for applying in _applying(root, part, data)]
        found = next((part["description"] for part in parts if "description" in part), "")
    return found


def _applying(root: Schema, part: object, data: object) -> Iterator[Schema]:
    """A part of the schema and all parts that apply together with it to some data."""
    if not isinstance(part, dict):
        return
    yield part
    if "$ref" in part:
        yield from _applying(root, root["$defs"][part["$ref"].removeprefix("#/$defs/")], data)
    if "if" in part:
        yield from _applying(root, part.get("then" if _meets(part["if"], data) else "else"), data)


def _meets(condition: Schema, data: object) -> bool:
    """Whether data has a type and some keys, which is all that our schemas' conditions ask."""
    types = condition.get("type")
    if types is not None and not isinstance(data, _TYPES[types]):
        return False
    return not isinstance(data, dict) or all(key in data for key in condition.get("required", ()))


def _below(part: Schema, step: str | int) -> Iterator[Any]:
    if isinstance(step, int):
        yield part.get("items")
    elif step in part.get("properties", {}):
        yield part["properties"][step]
    elif isinstance(part.get("additionalProperties"), dict):
        yield part["additionalProperties"]


def _value_at(data: object, step: str | int) -> object:
    if isinstance(data, dict):
        return data.get(step)
    if isinstance(data, list) and isinstance(step, int) and step < len(data):
        return data[step]
    return None
