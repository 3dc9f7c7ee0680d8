"""What data break in a schema, each thing with the way that leads to it.

It reads the keywords that our schemas use, and says the same as the jsonschema library; tests hold it to the
library with examples and hundreds of faults. The library's import takes longer than a whole review.
"""

from __future__ import annotations

from .fast_check import fits_part, pattern_test
from .violation import Violation

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import Any

    from .violation import DataPath, Schema

    Steps = tuple[str, ...]


def _is_number(value: Any) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


_TYPES: dict[str, Callable[[Any], bool]] = {
    "object": lambda value: isinstance(value, dict),
    "array": lambda value: isinstance(value, list),
    "string": lambda value: isinstance(value, str),
    "integer": lambda value: _is_number(value) and float(value).is_integer(),
    "number": _is_number,
    "boolean": lambda value: isinstance(value, bool),
    "null": lambda value: value is None,
}


class SchemaWalk:
    """Walks through data along one schema; ValueError where that holds a keyword that is not known here."""

    __slots__ = ("definitions", "surely")

    def __init__(self, root: Schema) -> None:
        self.definitions: dict[str, Schema] = root.get("$defs", {})
        self.surely = fits_part(root)

    def accepts(self, part: Any, value: Any) -> bool:
        """Whether a value is valid for a part of the schema."""
        return next(self.broken(part, value), None) is None

    def broken(self, part: Any, value: Any, path: DataPath = (), steps: Steps = ()) -> Iterator[Violation]:
        """What a value breaks in a part of the schema; ``path`` and ``steps`` lead to the two."""
        if part is False:
            yield Violation(path, steps, "", None, {}, value)
        elif part is not True:
            for keyword, wants in part.items():
                if keyword in _BELOW:
                    yield from _BELOW[keyword](self, part, wants, value, path, steps)
                elif keyword in _OF_THE_VALUE:
                    kind, holds = _OF_THE_VALUE[keyword]
                    if kind(value) and not holds(wants, value):
                        yield Violation(path, (*steps, keyword), keyword, wants, part, value)
                elif keyword not in _SAYS_NOTHING:
                    raise ValueError(f"the keyword {keyword} is not known here")

    def below(
        self, part: Any, value: Any, path: DataPath, steps: Steps, key: str | int, *step: str
    ) -> Iterator[Violation]:
        """What the value at a key breaks; a key that must not stand there is a fault of what holds it."""
        if part is False:
            return self.broken(part, value, path, steps)
        return self.broken(part, value, (*path, key), (*steps, *step))

    # Keywords that hold further parts of the schema

    def _reference(
        self, part: Schema, target: str, value: Any, path: DataPath, steps: Steps
    ) -> Iterator[Violation]:
        if not self.surely(target, value):
            yield from self.broken(self.definitions[target.removeprefix("#/$defs/")], value, path, steps)

    def _choice(
        self, part: Schema, condition: Any, value: Any, path: DataPath, steps: Steps
    ) -> Iterator[Violation]:
        branch = "then" if self.accepts(condition, value) else "else"
        if branch in part:
            further = steps if part[branch] is False else (*steps, branch)
            yield from self.broken(part[branch], value, path, further)

    def _keys(
        self, part: Schema, properties: Schema, value: Any, path: DataPath, steps: Steps
    ) -> Iterator[Violation]:
        if isinstance(value, dict):
            for key, wanted in properties.items():
                if key in value:
                    yield from self.below(wanted, value[key], path, (*steps, "properties"), key, key)

    def _other_keys(
        self, part: Schema, wanted: Any, value: Any, path: DataPath, steps: Steps
    ) -> Iterator[Violation]:
        if not isinstance(value, dict):
            return
        known, here = part.get("properties", ()), (*steps, "additionalProperties")
        others = [key for key in value if key not in known]
        if isinstance(wanted, dict):
            for key in others:
                yield from self.below(wanted, value[key], path, here, key)
        elif not wanted and others:
            yield Violation(path, here, "additionalProperties", wanted, part, value)

    def _key_names(
        self, part: Schema, wanted: Any, value: Any, path: DataPath, steps: Steps
    ) -> Iterator[Violation]:
        for key in value if isinstance(value, dict) else ():
            yield from self.broken(wanted, key, path, (*steps, "propertyNames"))

    def _items(
        self, part: Schema, wanted: Any, value: Any, path: DataPath, steps: Steps
    ) -> Iterator[Violation]:
        for index, item in enumerate(value if isinstance(value, list) else ()):
            yield from self.below(wanted, item, path, (*steps, "items"), index)

    def _with_a_key(
        self, part: Schema, parts: Schema, value: Any, path: DataPath, steps: Steps
    ) -> Iterator[Violation]:
        for key, wanted in parts.items() if isinstance(value, dict) else ():
            if key in value:
                here = (*steps, "dependentSchemas")
                yield from self.broken(wanted, value, path, here if wanted is False else (*here, key))

    def _required(
        self, part: Schema, keys: list[str], value: Any, path: DataPath, steps: Steps
    ) -> Iterator[Violation]:
        for key in keys if isinstance(value, dict) else ():
            if key not in value:
                yield Violation(path, (*steps, "required"), "required", keys, part, value, key)

    def _required_with(
        self, part: Schema, needs: dict[str, list[str]], value: Any, path: DataPath, steps: Steps
    ) -> Iterator[Violation]:
        keyword = "dependentRequired"
        for key, others in needs.items() if isinstance(value, dict) else ():
            for other in others if key in value else ():
                if other not in value:
                    yield Violation(path, (*steps, keyword), keyword, needs, part, value, other)


_BELOW: dict[str, Callable[..., Iterator[Violation]]] = {
    "$ref": SchemaWalk._reference,
    "if": SchemaWalk._choice,
    "properties": SchemaWalk._keys,
    "additionalProperties": SchemaWalk._other_keys,
    "propertyNames": SchemaWalk._key_names,
    "items": SchemaWalk._items,
    "dependentSchemas": SchemaWalk._with_a_key,
    "required": SchemaWalk._required,
    "dependentRequired": SchemaWalk._required_with,
}
"""Keywords that lead further, or break in several ways at once."""

_OF_THE_VALUE: dict[str, tuple[Callable[[Any], bool], Callable[[Any, Any], bool]]] = {
    "type": (lambda _: True, lambda names, value: any(_TYPES[name](value) for name in _listed(names))),
    "enum": (lambda _: True, lambda words, value: isinstance(value, str) and value in words),
    "pattern": (_TYPES["string"], lambda words, value: pattern_test(words)(value)),
    "minimum": (_is_number, lambda low, value: value >= low),
    "maximum": (_is_number, lambda high, value: value <= high),
    "multipleOf": (_is_number, lambda step, value: not value % step),
    "minLength": (_TYPES["string"], lambda least, value: len(value) >= least),
    "minItems": (_TYPES["array"], lambda least, value: len(value) >= least),
    "minProperties": (_TYPES["object"], lambda least, value: len(value) >= least),
}
"""Keywords on a value by itself: the values that each is about, and whether one holds to what it wants."""

_SAYS_NOTHING = frozenset({"$schema", "$id", "$defs", "title", "description", "examples", "then", "else"})


def _listed(names: str | list[str]) -> list[str]:
    return [names] if isinstance(names, str) else names
