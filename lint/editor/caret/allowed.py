"""What the schema allows at a place of a text that is being typed, of which only keys are known.

A part of the schema is walked along the chain of keys. Where a condition turns on a key, the keys that stand
there decide; where it turns on what a value is, what is to be typed does; where neither is known, either way
is open.
"""

from __future__ import annotations

from .... import schema as schemas
from ...schemas.fast_check import compiled

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterable, Iterator, Sequence
    from typing import Any, Literal

    from .context import Chain

    Schema = dict[str, Any]

    Form = Literal["object", "array", "scalar"]
    """What a value is: keys, a list, or a single value."""

KINDS = ("programme", "athlete", "team", "exercises")
"""Kinds of files that have a schema."""


class Key:
    """A key that may be added: what the schema says of it, and the ``forms`` that its value may have."""

    __slots__ = ("description", "forms", "name", "required", "title")

    def __init__(
        self, name: str, title: str, description: str, required: bool, forms: frozenset[Form]
    ) -> None:
        self.name = name
        self.title = title
        self.description = description
        self.required = required
        self.forms = forms


class Value:
    """A single value that may stand: the bare data, and what the schema says of it."""

    __slots__ = ("description", "plain", "title")

    def __init__(self, plain: Any, title: str, description: str) -> None:
        self.plain = plain
        self.title = title
        self.description = description


class AllowedHere:
    """What a file's schema says of the value at the end of a chain.

    ``groups`` are the keys beside each step of the chain. Where nothing is said, anything is allowed and
    nothing is offered.
    """

    __slots__ = ("_parts", "_root")

    def __init__(self, kind: str, chain: Chain, groups: Sequence[Collection[str]]) -> None:
        self._root: Schema = schemas.load(kind)
        parts: list[Any] = [self._root]
        for step, keys in zip(chain, groups, strict=False):
            form: Form = "array" if isinstance(step, int) else "object"
            parts = [below for part in self._flat(parts, form, keys) for below in _below(part, step)]
        self._parts = parts

    def item(self) -> AllowedHere:
        """The place of an item, where the value is a list."""
        other = AllowedHere.__new__(AllowedHere)
        other._root = self._root
        other._parts = [below for part in self._flat(self._parts, "array") for below in _below(part, 0)]
        return other

    def takes(self, form: Form) -> bool:
        """Whether a value of a form may stand here, and the schema says so."""
        return bool(self._parts) and all(_takes(part, form) for part in self._flat(self._parts, form))

    def keys(self, present: Collection[str], data: object = None) -> Iterator[Key]:
        """The keys that may be added to those present, in the order of the schema.

        ``data`` is what the group held when it could last be read: a key that would not go with that is not
        offered, nor is one that needs another beside it.
        """
        if not self.takes("object"):
            return
        before = frozenset(present)
        wrong = self._forbidden(before)
        held = data if isinstance(data, dict) else {}
        names = [name for part in self._every(self._parts) for name in part.get("properties", ())]
        for name in dict.fromkeys(names):
            after = before | {name}
            if name in before or not self._forbidden(after) <= wrong:
                continue
            flat = [part for part in self._flat(self._parts, "object", after) if isinstance(part, dict)]
            if not _companions(flat, name) <= before or (held and self._forbidden_below(flat, held)):
                continue
            parts = [part["properties"][name] for part in flat if name in part.get("properties", ())]
            yield Key(
                name,
                self._said(parts, "title"),
                self._said(parts, "description"),
                name in _required(flat, after),
                frozenset(form for form in _FORMS if _all_take(self._flat(parts, form), form)),
            )

    def may_add(self, names: Collection[str], present: Collection[str]) -> bool:
        """Whether a group of keys may take in some more."""
        before = frozenset(present)
        return self.takes("object") and self._forbidden(before.union(names)) <= self._forbidden(before)

    def fits(self, plain: Any) -> bool:
        """Whether data surely may stand here."""
        return bool(self._parts) and all(_test(self._root, part)(plain) for part in self._parts)

    def values(self) -> Iterator[Value]:
        """The single values that the schema names, as the only ones or as examples."""
        if not self.takes("scalar"):
            return
        seen: list[Any] = []
        flat = list(self._flat(self._parts, "scalar"))
        for keyword in ("enum", "type", "examples"):
            for part in flat:
                if keyword != "type":
                    named = part.get(keyword, ())
                else:
                    named = (True, False) if part.get("type") == "boolean" else ()
                for plain in named:
                    if not any(plain is one or (type(plain) is type(one) and plain == one) for one in seen):
                        seen.append(plain)
                        yield Value(plain, part.get("title", ""), part.get("description", ""))

    # Parts

    def _flat(self, parts: Iterable[Any], form: Form, keys: Collection[str] = ()) -> Iterator[Any]:
        """Parts and all that holds with them for a value of a form with some keys; False cannot be."""
        for part in parts:
            yield part
            if not isinstance(part, dict):
                continue
            if "$ref" in part:
                yield from self._flat([self._followed(part)], form, keys)
            if "if" in part:
                met = _met(part["if"], form, keys)
                if met is not False and "then" in part:
                    yield from self._flat([part["then"]], form, keys)
                if met is not True and "else" in part:
                    yield from self._flat([part["else"]], form, keys)
            for key, further in part.get("dependentSchemas", {}).items():
                if key in keys:
                    yield from self._flat([further], form, keys)

    def _every(self, parts: Iterable[Any]) -> Iterator[Schema]:
        """Parts and all that may ever hold with them, the usual before the special."""
        for part in parts:
            if isinstance(part, dict):
                yield part
                further = [part.get("else"), part.get("then"), *part.get("dependentSchemas", {}).values()]
                yield from self._every([self._followed(part), *further] if "$ref" in part else further)

    def _followed(self, part: Schema) -> Any:
        return self._root["$defs"][part["$ref"].removeprefix("#/$defs/")]

    def _forbidden(self, keys: frozenset[str]) -> frozenset[str]:
        """Those of some keys that may not stand together with the others."""
        flat = list(self._flat(self._parts, "object", keys))
        return frozenset(
            key for key in keys if any(below is False for part in flat for below in _below(part, key))
        )

    def _forbidden_below(self, flat: list[Schema], data: dict[str, Any]) -> bool:
        """Whether a list in some data has an item with a key that may not be there."""
        for key, items in data.items():
            for item in items if isinstance(items, list) else ():
                if isinstance(item, dict):
                    lists = [below for part in flat for below in _below(part, key)]
                    parts = [below for part in self._flat(lists, "array") for below in _below(part, 0)]
                    whole = list(self._flat(parts, "object", item))
                    if any(below is False for part in whole for one in item for below in _below(part, one)):
                        return True
        return False

    def _said(self, parts: list[Any], keyword: str) -> str:
        said = (part[keyword] for part in self._every(parts) if keyword in part)
        return str(next(said, ""))


_tests: dict[int, Callable[[Any], bool]] = {}


def _test(root: Schema, part: Any) -> Callable[[Any], bool]:
    """The test for a part of a schema; schemas are loaded once, so that a part is known by its identity."""
    if id(part) not in _tests:
        whole = {"$defs": root.get("$defs", {}), **part} if isinstance(part, dict) else part
        _tests[id(part)] = compiled(whole) if isinstance(whole, dict) else (lambda plain: whole is True)
    return _tests[id(part)]


_FORMS: tuple[Form, ...] = ("object", "array", "scalar")


def _below(part: Any, step: str | int) -> Iterator[Any]:
    """What a part says of what stands at a key or in a list."""
    if not isinstance(part, dict):
        return
    if isinstance(step, int):
        if "items" in part:
            yield part["items"]
    elif step in part.get("properties", ()):
        yield part["properties"][step]
    elif "additionalProperties" in part:
        yield part["additionalProperties"]


def _met(condition: Schema, form: Form, keys: Collection[str]) -> bool | None:
    """Whether a condition holds for a value of a form with some keys; None where the value decides."""
    named = condition.get("type", form)
    if form != "scalar" or named in ("object", "array"):
        if named != form:
            return False
    elif named != form:
        return None
    return form != "object" or set(condition.get("required", ())) <= set(keys)


def _takes(part: Any, form: Form) -> bool:
    if not isinstance(part, dict):
        return part is not False
    named = part.get("type")
    names = [named] if isinstance(named, str) else named
    if "enum" in part:
        return form == "scalar"
    if names is None:
        return True
    return any(name == form or (form == "scalar" and name not in ("object", "array")) for name in names)


def _all_take(parts: Iterable[Any], form: Form) -> bool:
    return all(_takes(part, form) for part in parts)


def _required(flat: Iterable[Schema], keys: Collection[str]) -> set[str]:
    """The keys that a group with some keys must have."""
    parts = list(flat)
    wanted = {name for part in parts for name in part.get("required", ())}
    return wanted.union(*(_companions(parts, key) for key in keys))


def _companions(flat: Iterable[Schema], key: str) -> set[str]:
    """The keys that must stand beside a key."""
    return {name for part in flat for name in part.get("dependentRequired", {}).get(key, ())}
