"""What the schema allows at a place of a text that is being typed, of which only the keys are known.

Where a condition of the schema asks for a key, the keys that stand there decide. Where it asks what type the
value has, the type of what is to be typed decides. Where neither is known, both branches are open.
"""

from __future__ import annotations

from .... import schema as schemas
from ...schemas.fast_check import compiled

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterable, Iterator, Sequence
    from typing import Any, Literal

    from ...schemas.violation import Schema
    from .context import KeyPath

    ValueType = Literal["object", "array", "scalar"]
    """What a value is: a group of keys, a list, or a single value."""

KINDS = ("programme", "athlete", "team", "exercises")
"""Kinds of files that have a schema."""

VALUE_TYPES: tuple[ValueType, ...] = ("object", "array", "scalar")


class AllowedKey:
    """A key that may be added, what the schema says of it, and the ``value_types`` that it takes.

    ``required`` says that it must be there. Where one of several must, the others stand in ``instead``.
    """

    __slots__ = ("description", "instead", "name", "required", "title", "value_types")

    def __init__(
        self,
        name: str,
        title: str,
        description: str,
        required: bool,
        value_types: frozenset[ValueType],
        instead: tuple[str, ...],
    ) -> None:
        self.name = name
        self.title = title
        self.description = description
        self.required = required
        self.instead = instead
        self.value_types = value_types


class AllowedValue:
    """A single value that may be written: its plain ``data``, and what the schema says of it."""

    __slots__ = ("data", "description", "title")

    def __init__(self, data: Any, title: str, description: str) -> None:
        self.data = data
        self.title = title
        self.description = description


class ApplicableSchema:
    """The parts of a file's schema that apply to the value at a path.

    ``sibling_keys`` are the keys beside each step of the path. Where no part applies, anything is allowed and
    nothing is proposed.
    """

    __slots__ = ("_parts", "_root")

    def __init__(self, kind: str, path: KeyPath, sibling_keys: Sequence[Collection[str]]) -> None:
        self._root: Schema = schemas.load(kind)
        parts: list[Any] = [self._root]
        for step, keys in zip(path, sibling_keys, strict=False):
            value_type: ValueType = "array" if isinstance(step, int) else "object"
            parts = [
                below for part in self._applying(parts, value_type, keys) for below in _below(part, step)
            ]
        self._parts = parts

    def of_item(self) -> ApplicableSchema:
        """The parts that apply to an item, where the value is a list."""
        item = ApplicableSchema.__new__(ApplicableSchema)
        item._root = self._root
        item._parts = [below for part in self._applying(self._parts, "array") for below in _below(part, 0)]
        return item

    def takes(self, value_type: ValueType) -> bool:
        """Whether the schema says that a value of a type may stand here."""
        parts = self._applying(self._parts, value_type)
        return bool(self._parts) and all(_takes(part, value_type) for part in parts)

    def keys(self, present: Collection[str], data: object = None) -> Iterator[AllowedKey]:
        """The keys that may be added to those present, in the order of the schema.

        A key that needs another key beside it is left out. So is a key that does not go with ``data``, which
        is what the group held when it could last be read.
        """
        if not self.takes("object"):
            return
        names = [name for part in self._any_branch(self._parts) for name in part.get("properties", ())]
        before = frozenset(names).intersection(present)  # no other key decides, and there may be thousands
        forbidden = self._forbidden(before)
        items = _keys_of_items(data)
        instead = self._instead(before)
        for name in dict.fromkeys(names):
            after = before | {name}
            if name in before or not self._forbidden(after) <= forbidden:
                continue
            applying = [
                part for part in self._applying(self._parts, "object", after) if isinstance(part, dict)
            ]
            if not _needed_beside(applying, name) <= before:
                continue
            if any(self._forbids_key(applying, key, several) for key, several in items.items()):
                continue
            parts = [part["properties"][name] for part in applying if name in part.get("properties", ())]
            yield AllowedKey(
                name,
                self._first_said(parts, "title"),
                self._first_said(parts, "description"),
                name in _required(applying, after),
                frozenset(one for one in VALUE_TYPES if _all_take(self._applying(parts, one), one)),
                instead.get(name, ()),
            )

    def may_add(self, names: Collection[str], present: Collection[str]) -> bool:
        """Whether a group of keys may take in some more."""
        before = frozenset(present)
        return self.takes("object") and self._forbidden(before.union(names)) <= self._forbidden(before)

    def fits(self, data: Any) -> bool:
        """Whether data surely may stand here."""
        return bool(self._parts) and all(_check_of(self._root, part)(data) for part in self._parts)

    def values(self) -> Iterator[AllowedValue]:
        """The single values that the schema names, as the only ones or as examples."""
        if not self.takes("scalar"):
            return
        seen: list[Any] = []
        applying = list(self._applying(self._parts, "scalar"))
        for keyword in ("enum", "type", "examples"):
            for part in applying:
                if keyword != "type":
                    named = part.get(keyword, ())
                else:
                    named = (True, False) if part.get("type") == "boolean" else ()
                for data in named:
                    if not any(data is one or (type(data) is type(one) and data == one) for one in seen):
                        seen.append(data)
                        yield AllowedValue(data, part.get("title", ""), part.get("description", ""))

    # Parts of the schema

    def _applying(
        self, parts: Iterable[Any], value_type: ValueType, keys: Collection[str] = ()
    ) -> Iterator[Any]:
        """Some parts, and all parts that apply with them to a value of a type with some keys.

        A part that is False cannot be met.
        """
        for part in parts:
            yield part
            if not isinstance(part, dict):
                continue
            if "$ref" in part:
                yield from self._applying([self._referenced(part)], value_type, keys)
            if "if" in part:
                met = _met(part["if"], value_type, keys)
                if met is not False and "then" in part:
                    yield from self._applying([part["then"]], value_type, keys)
                if met is not True and "else" in part:
                    yield from self._applying([part["else"]], value_type, keys)
            for key, dependent in part.get("dependentSchemas", {}).items():
                if key in keys:
                    yield from self._applying([dependent], value_type, keys)

    def _any_branch(self, parts: Iterable[Any]) -> Iterator[Schema]:
        """Some parts, and all parts that may ever apply with them, the usual before the special."""
        for part in parts:
            if isinstance(part, dict):
                yield part
                further = [part.get("else"), part.get("then"), *part.get("dependentSchemas", {}).values()]
                yield from self._any_branch([self._referenced(part), *further] if "$ref" in part else further)

    def _referenced(self, part: Schema) -> Any:
        return self._root["$defs"][part["$ref"].removeprefix("#/$defs/")]

    def _forbidden(self, keys: frozenset[str]) -> frozenset[str]:
        """Those of some keys that may not stand together with the others."""
        applying = list(self._applying(self._parts, "object", keys))
        return frozenset(
            key for key in keys if any(below is False for part in applying for below in _below(part, key))
        )

    def _forbids_key(self, applying: list[Schema], key: str, items: Iterable[tuple[str, ...]]) -> bool:
        """Whether an item with some keys, in the list at ``key``, has one that may not be there."""
        lists = [below for part in applying for below in _below(part, key)]
        parts = [below for part in self._applying(lists, "array") for below in _below(part, 0)]
        return any(
            below is False
            for item in items
            for part in self._applying(parts, "object", item)
            for one in item
            for below in _below(part, one)
        )

    def _instead(self, present: frozenset[str]) -> dict[str, tuple[str, ...]]:
        """For each key of which one of several must be there, the others; empty once one is there."""
        others: dict[str, tuple[str, ...]] = {}
        for part in self._applying(self._parts, "object", present):
            names = dict.fromkeys(self._conditions(part) if isinstance(part, dict) and "if" in part else ())
            if len(names) > 1 and present.isdisjoint(names):
                for name in names:
                    others.setdefault(name, tuple(one for one in names if one != name))
        return others

    def _conditions(self, part: Schema) -> Iterator[str]:
        """The keys that a part decides by, and asks for one of: if `blocks` is there, else `sessions`."""
        condition = part["if"]
        if condition == {"type": "object"}:
            yield from self._asked_for(part.get("then"))
            return
        if not condition.keys() - {"type", "required"}:
            yield from condition.get("required", ())[:1]
        yield from self._asked_for(part.get("else"))

    def _asked_for(self, part: Any) -> Iterator[str]:
        if not isinstance(part, dict):
            return
        if "required" in part:
            yield part["required"][0]
        elif "$ref" in part:
            yield from self._asked_for(self._referenced(part))
        elif "if" in part:
            yield from self._conditions(part)

    def _first_said(self, parts: list[Any], keyword: str) -> str:
        said = (part[keyword] for part in self._any_branch(parts) if keyword in part)
        return str(next(said, ""))


_checks: dict[int, Callable[[Any], bool]] = {}


def _check_of(root: Schema, part: Any) -> Callable[[Any], bool]:
    """The compiled check for a part of a schema; schemas are loaded once, so that `id` tells parts apart."""
    if id(part) not in _checks:
        whole = {"$defs": root.get("$defs", {}), **part} if isinstance(part, dict) else part
        _checks[id(part)] = compiled(whole) if isinstance(whole, dict) else (lambda data: whole is True)
    return _checks[id(part)]


def _keys_of_items(data: object) -> dict[str, dict[tuple[str, ...], None]]:
    """What keys the items have of each list in some data: a list may be long, its items are much alike."""
    lists = data.items() if isinstance(data, dict) else ()
    return {
        key: dict.fromkeys(tuple(item) for item in items if isinstance(item, dict))
        for key, items in lists
        if isinstance(items, list)
    }


def _below(part: Any, step: str | int) -> Iterator[Any]:
    """What a part says of the value at a key or in a list."""
    if not isinstance(part, dict):
        return
    if isinstance(step, int):
        if "items" in part:
            yield part["items"]
    elif step in part.get("properties", ()):
        yield part["properties"][step]
    elif "additionalProperties" in part:
        yield part["additionalProperties"]


def _met(condition: Schema, value_type: ValueType, keys: Collection[str]) -> bool | None:
    """Whether a value of a type with some keys meets a condition; None where the value itself decides."""
    named = condition.get("type", value_type)
    if value_type != "scalar" or named in ("object", "array"):
        if named != value_type:
            return False
    elif named != value_type:
        return None
    return value_type != "object" or set(condition.get("required", ())) <= set(keys)


def _takes(part: Any, value_type: ValueType) -> bool:
    if not isinstance(part, dict):
        return part is not False
    named = part.get("type")
    names = [named] if isinstance(named, str) else named
    if "enum" in part:
        return value_type == "scalar"
    if names is None:
        return True
    return any(
        name == value_type or (value_type == "scalar" and name not in ("object", "array")) for name in names
    )


def _all_take(parts: Iterable[Any], value_type: ValueType) -> bool:
    return all(_takes(part, value_type) for part in parts)


def _required(applying: Iterable[Schema], keys: Collection[str]) -> set[str]:
    """The keys that a group with some keys must have."""
    parts = list(applying)
    wanted = {name for part in parts for name in part.get("required", ())}
    return wanted.union(*(_needed_beside(parts, key) for key in keys))


def _needed_beside(applying: Iterable[Schema], key: str) -> set[str]:
    """The keys that must stand beside a key."""
    return {name for part in applying for name in part.get("dependentRequired", {}).get(key, ())}
