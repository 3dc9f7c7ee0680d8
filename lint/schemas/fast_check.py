"""A fast check that says "surely valid", or leaves the question to the jsonschema library.

Each part of a schema is compiled into a table: the type of a value -> the test that a value of that type
must pass. What stands below a key or in a list is compiled when a value first holds one, because a programme
uses few of the keys that there are. This works because every keyword is about values of one type. A type that
is not in the table is not surely valid.
"""

from __future__ import annotations

import re
from functools import cache

from ... import schema as schemas

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    Test = Callable[[Any], bool]

    Table = dict[type, Test]

_TYPES: dict[str, tuple[type, ...]] = {
    "object": (dict,),
    "array": (list,),
    "string": (str,),
    "integer": (int,),  # the library also accepts 3.0; it is asked then
    "number": (int, float),
    "boolean": (bool,),
    "null": (type(None),),
}
_EVERY_TYPE = (dict, list, str, int, float, bool, type(None))
_NOT_TESTED = frozenset({"$schema", "$id", "$defs", "title", "description", "examples"})
_MOST_REMEMBERED = 1000
"""Words and numbers that a pattern, or a group of keys, remembers as passed: programmes repeat a few."""

_tests: dict[str, Test] = {}


def fits(schema_name: str) -> Test:
    """The test for plain data against the schema of that name.

    True means that the data are valid. False means only that the jsonschema library has to be asked.
    """
    if schema_name not in _tests:
        _tests[schema_name] = compiled(schemas.tested(schema_name))
    return _tests[schema_name]


def fits_part(schema: dict[str, Any]) -> Callable[[str, Any], bool]:
    """The test for a value against what a reference within a schema names (``#/$defs/session``).

    Again True means that it is valid, and False only that the library has to be asked.
    """
    compiler = _Compiler(schema)
    return lambda reference, value: _passes(compiler.reference(reference, schema), value)


def compiled(schema: dict[str, Any]) -> Test:
    """The test for a self-contained schema.

    ValueError where a keyword is not supported here, at the latest when a value is tested that it is about.
    """
    table = _Compiler(schema).table(schema)
    return lambda value: _passes(table, value)


def _passes(table: Table, value: Any) -> bool:
    test = table.get(type(value))
    return test is not None and test(value)


def _yes(value: Any) -> bool:
    return True


def _both(first: Test, second: Test) -> Test:
    if first is _yes:
        return second
    if second is _yes:
        return first
    return _Each((*_parts(first), *_parts(second))).test


class _Each:
    """The test that all of several tests are passed, in their order."""

    __slots__ = ("parts",)

    def __init__(self, parts: tuple[Test, ...]) -> None:
        self.parts = parts

    def test(self, value: Any) -> bool:
        for passes in self.parts:  # noqa: SIM110 - a generator would cost more than the tests
            if not passes(value):
                return False
        return True


def _parts(test: Test) -> tuple[Test, ...]:
    """The tests that a test is made of."""
    own = getattr(test, "__self__", None)
    return own.parts if isinstance(own, _Each) else (test,)


def _all_of(first: Table, second: Table) -> Table:
    return {kind: _both(first[kind], second[kind]) for kind in first if kind in second}


_ANYTHING: Table = dict.fromkeys(_EVERY_TYPE, _yes)


class _Compiler:
    """Compiles the parts of one schema into tables; each named definition is compiled once."""

    def __init__(self, root: dict[str, Any]) -> None:
        self.definitions: dict[str, Any] = root.get("$defs", {})
        self.known: dict[str, Table] = {}

    def table(self, schema: Any) -> Table:
        """The table for a schema or a part of one."""
        if isinstance(schema, bool):
            return _ANYTHING if schema else {}
        table: Table = dict.fromkeys(_kinds(schema), _yes)
        for keyword, value in schema.items():
            if keyword in _NOT_TESTED or keyword in _READ_WITH_OTHERS:
                continue
            if keyword in _ON_ONE_TYPE:
                kinds, make = _ON_ONE_TYPE[keyword]
                _narrow(table, kinds, make(value))
            elif keyword in _ON_PARTS:
                table = _all_of(table, _ON_PARTS[keyword](self, value, schema))
            else:
                raise ValueError(f"the fast check does not support the keyword {keyword}")
        return table

    def reference(self, target: str, _: dict[str, Any]) -> Table:
        name = target.removeprefix("#/$defs/")
        if name not in self.known:
            self.known[name] = self.table(self.definitions[name])
        return self.known[name]

    def choice(self, condition: dict[str, Any], schema: dict[str, Any]) -> Table:
        """``if``, ``then`` and ``else``. The condition must be exact, because its No is used, too."""
        if not self.is_exact(condition):
            raise ValueError("the fast check supports only conditions on type, keys and patterns of text")
        when = self.table(condition)
        then, otherwise = self.table(schema.get("then", True)), self.table(schema.get("else", True))
        return {
            kind: test
            for kind in _EVERY_TYPE
            if (test := _choose(when.get(kind), then.get(kind), otherwise.get(kind))) is not None
        }

    def is_exact(self, condition: Any) -> bool:
        """Whether a No to the condition is as sure as a Yes: so it is without numbers."""
        if not isinstance(condition, dict) or condition == _A_GROUP:
            return True
        named = condition.get("type", ())
        numeric = bool({"integer", "number"} & {*([named] if isinstance(named, str) else named)})
        parts = [*condition.get("properties", {}).values()]
        parts += [condition[keyword] for keyword in _WITH_CONDITIONS if keyword in condition]
        if "$ref" in condition:
            parts.append(self.definitions[condition["$ref"].removeprefix("#/$defs/")])
        return not numeric and condition.keys() <= _EXACT and all(map(self.is_exact, parts))

    def keys(self, properties: dict[str, Any], schema: dict[str, Any]) -> Table:
        others = self.table(schema.get("additionalProperties", True))
        return {**_ANYTHING, dict: _keys_test(_LaterTables(self, properties, others))}

    def other_keys(self, others: Any, schema: dict[str, Any]) -> Table:
        """``additionalProperties``; beside ``properties`` it is compiled with them."""
        return _ANYTHING if "properties" in schema else self.keys({}, schema)

    def key_names(self, names: Any, _: dict[str, Any]) -> Table:
        test = self.table(names).get(str)
        if test is None:
            return {**_ANYTHING, dict: lambda value: not value}
        return {**_ANYTHING, dict: lambda value: all(map(test, value))}

    def one_of(self, values: list[Any], _: dict[str, Any]) -> Table:
        """Text only, because a set cannot tell 1, 1.0 and true apart."""
        if not all(isinstance(value, str) for value in values):
            raise ValueError("the fast check supports only enums of text")
        return {str: frozenset(values).__contains__}

    def items(self, part: Any, _: dict[str, Any]) -> Table:
        return {**_ANYTHING, list: _items_test(_LaterTables(self, {"": part}, {}))}

    def dependent_schemas(self, parts: dict[str, Any], _: dict[str, Any]) -> Table:
        tests = [(key, self.table(part).get(dict)) for key, part in parts.items()]

        def test(value: dict[str, Any]) -> bool:
            for key, part in tests:  # noqa: SIM110 - a generator would cost more than the tests
                if key in value and not (part is not None and part(value)):
                    return False
            return True

        return {**_ANYTHING, dict: test}


class _LaterTables(dict[str, "Table"]):
    """The table of each part of a schema, compiled when it is first asked for, and that of all others."""

    def __init__(self, compiler: _Compiler, parts: dict[str, Any], others: Table) -> None:
        self.compiler = compiler
        self.parts = parts
        self.others = others

    def __missing__(self, key: str) -> Table:
        if key not in self.parts:
            return self.others  # any number of such keys may come, so they are not kept
        table = self[key] = self.compiler.table(self.parts[key])
        return table


_ON_PARTS: dict[str, Callable[[_Compiler, Any, dict[str, Any]], Table]] = {
    "$ref": _Compiler.reference,
    "enum": _Compiler.one_of,
    "if": _Compiler.choice,
    "properties": _Compiler.keys,
    "additionalProperties": _Compiler.other_keys,
    "propertyNames": _Compiler.key_names,
    "items": _Compiler.items,
    "dependentSchemas": _Compiler.dependent_schemas,
}
"""Keywords that hold further parts of the schema, and what compiles them."""
_READ_WITH_OTHERS = frozenset({"type", "then", "else"})
_A_GROUP = {"type": "object"}
"""The condition that nearly all conditions are."""

_WITH_CONDITIONS = ("if", "then", "else", "additionalProperties", "propertyNames")
_EXACT = frozenset(
    {"$ref", "type", "required", "pattern", "properties", "minProperties", *_WITH_CONDITIONS}
) | (_NOT_TESTED)
"""Keywords that a condition may have."""


def _kinds(schema: dict[str, Any]) -> tuple[type, ...]:
    named = schema.get("type")
    if named is None:
        return _EVERY_TYPE
    names = [named] if isinstance(named, str) else named
    return tuple(kind for name in names for kind in _TYPES[name])


def _narrow(table: Table, kinds: tuple[type, ...], test: Test) -> None:
    for kind in kinds:
        if kind in table:
            table[kind] = _both(table[kind], test)


def _choose(when: Test | None, then: Test | None, otherwise: Test | None) -> Test | None:
    if when is None:
        return otherwise
    if when is _yes:
        return then
    if then is _yes and otherwise is not None:
        either = otherwise  # the usual value is in the list of words; what is spelt otherwise takes a pattern
        return lambda value: either(value) or when(value)
    sure, other = then or _no, otherwise or _no
    return lambda value: sure(value) if when(value) else other(value)


def _no(value: Any) -> bool:
    return False


def _keys_test(tables: dict[str, Table]) -> Test:
    passed: set[tuple[str, str | int]] = set()

    def test(value: dict[str, Any]) -> bool:
        for key, held in value.items():
            kind = type(held)
            simple = kind is str or kind is int  # no other kind equals these
            if simple and (key, held) in passed:
                continue
            part = tables[key].get(kind)
            if part is None or not (part is _yes or part(held)):
                return False
            if simple and len(passed) < _MOST_REMEMBERED:
                passed.add((key, held))
        return True

    return test


def _items_test(tables: dict[str, Table]) -> Test:
    def test(value: list[Any]) -> bool:
        table = tables[""] if value else {}
        for held in value:
            part = table.get(type(held))
            if part is None or not part(held):
                return False
        return True

    return test


@cache
def pattern_test(words: str) -> Test:
    """Whether a text holds what a pattern describes.

    Compiles the pattern when it is first needed, and remembers words that have passed.

    Alternatives that stand by themselves, parted by ``$|^``, are compiled one after another, each only when
    those before it have not matched: the plain spellings come first, and most files hold nothing else.
    """
    passed: set[str] = set()
    waiting = _alternatives(words)
    searches: list[Callable[[str], object]] = []

    def matches(value: str) -> bool:
        for search in searches:
            if search(value):
                return True
        while waiting:
            searches.append(re.compile(waiting.pop(0)).search)
            if searches[-1](value):
                return True
        return False

    def test(value: str) -> bool:
        if value in passed:
            return True
        if not matches(value):
            return False
        if len(passed) < _MOST_REMEMBERED:
            passed.add(value)
        return True

    return test


def _alternatives(words: str) -> list[str]:
    """The alternatives of a pattern that stand by themselves; the whole where a part holds ``$|^``."""
    parts = words.split("$|^")
    if len(parts) == 1 or any(part.count("(") != part.count(")") for part in parts):
        return [words]
    return [parts[0] + "$", *(f"^{part}$" for part in parts[1:-1]), "^" + parts[-1]]


def _required(names: list[str]) -> Test:
    if len(names) == 1:
        only = names[0]
        return lambda value: only in value
    wanted = frozenset(names)
    return lambda value: value.keys() >= wanted


def _dependent_required(needs: dict[str, list[str]]) -> Test:
    pairs = [(key, _required(wanted)) for key, wanted in needs.items()]

    def test(value: dict[str, Any]) -> bool:
        for key, others in pairs:  # noqa: SIM110 - as above
            if key in value and not others(value):
                return False
        return True

    return test


def _at_least(low: float) -> Test:
    return lambda value: value >= low


def _at_most(high: float) -> Test:
    return lambda value: value <= high


def _multiple_of(step: float) -> Test:
    if step not in (0.5, 1):
        raise ValueError("the fast check supports only multiples of 0.5 and 1, which are exact")
    return lambda value: bool(value % step == 0)


def _holds(least: int) -> Test:
    return lambda value: len(value) >= least


_NUMBERS = (int, float)
_ON_ONE_TYPE: dict[str, tuple[tuple[type, ...], Callable[[Any], Test]]] = {
    "minimum": (_NUMBERS, _at_least),
    "maximum": (_NUMBERS, _at_most),
    "multipleOf": (_NUMBERS, _multiple_of),
    "pattern": ((str,), pattern_test),
    "minLength": ((str,), _holds),
    "minItems": ((list,), _holds),
    "minProperties": ((dict,), _holds),
    "required": ((dict,), _required),
    "dependentRequired": ((dict,), _dependent_required),
}
"""Keywords without parts of their own: the types of value each is about, and what makes its test."""
