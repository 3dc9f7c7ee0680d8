"""What the schema says of a key, found along the keys that lead to it."""

from __future__ import annotations

from .... import schema as schemas

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence
    from typing import Any

    from .tree_path import Key

    Schema = dict[str, Any]

KINDS = ("programme", "athlete", "team", "exercises")
_TYPES: dict[str, type | tuple[type, ...]] = {
    "object": dict,
    "array": list,
    "string": str,
    "integer": int,
    "number": (int, float),
    "boolean": bool,
}


def described(kind: str, plain: object, keys: Sequence[Key]) -> str:
    """The description of what stands at some keys in a file of a kind; "" where there is none.

    ``plain`` is the bare data of the whole file: which of several forms a group has, its own keys decide.
    """
    if kind not in KINDS:
        return ""
    root = schemas.load(kind)
    parts = list(_forms(root, root, plain))
    found = ""
    for key in keys:
        below = [part for form in parts for part in _below(form, key)]
        plain = _inside(plain, key)
        parts = [form for part in below for form in _forms(root, part, plain)]
        found = next((part["description"] for part in parts if "description" in part), "")
    return found


def _forms(root: Schema, part: object, plain: object) -> Iterator[Schema]:
    """A part of the schema and all that holds with it for some data."""
    if not isinstance(part, dict):
        return
    yield part
    if "$ref" in part:
        yield from _forms(root, root["$defs"][part["$ref"].removeprefix("#/$defs/")], plain)
    if "if" in part:
        yield from _forms(root, part.get("then" if _fits(part["if"], plain) else "else"), plain)


def _fits(asked: Schema, plain: object) -> bool:
    """Whether data is of a type and has some keys: all that our schemas ask before they branch."""
    types = asked.get("type")
    if types is not None and not isinstance(plain, _TYPES[types]):
        return False
    return not isinstance(plain, dict) or all(key in plain for key in asked.get("required", ()))


def _below(part: Schema, key: Key) -> Iterator[Any]:
    if isinstance(key, int):
        yield part.get("items")
    elif key in part.get("properties", {}):
        yield part["properties"][key]
    elif isinstance(part.get("additionalProperties"), dict):
        yield part["additionalProperties"]


def _inside(plain: object, key: Key) -> object:
    if isinstance(plain, dict):
        return plain.get(key)
    if isinstance(plain, list) and isinstance(key, int) and key < len(plain):
        return plain[key]
    return None
