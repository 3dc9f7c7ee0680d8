"""What data break in a schema: the same as the jsonschema library says."""

import copy
import random
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.schemas.walk import SchemaWalk
from spotline.lint.syntax.builder import parse

ROOT = Path(__file__).parent.parent.parent
KINDS = {"programme": "programme", "athlete": "athlete", "exercises": "exercises", "spotline.yaml": "team"}


SHORT = 2500
"""The library takes seconds for a long file."""


def files() -> list[tuple[str, Any]]:
    """The name of the schema and the data of the shorter examples and files that coaches' notes became."""
    found = []
    for path in sorted((*ROOT.glob("examples/**/*.yaml"), *ROOT.glob("tests/**/*.yaml"))):
        kind = KINDS.get(path.name) or KINDS.get(path.name.split(".")[-2])
        content = path.read_text(encoding="utf-8")
        reading = parse(path.name, content)
        if len(content) < SHORT and kind and reading.root is not None:
            found.append((kind, reading.root.plain))
    return found


def by_library(schema: Any, data: Any) -> list[tuple[object, ...]]:
    # The library takes the keys that a schema does not name in no fixed order.
    errors = [
        (
            tuple(error.absolute_path),
            tuple(error.absolute_schema_path),
            error.validator or "",
            error.validator_value,
            error.schema or {},
            error.instance,
        )
        for error in Draft202012Validator(schema).iter_errors(data)
    ]
    return sorted(errors, key=repr)


def by_us(schema: Any, data: Any) -> list[tuple[object, ...]]:
    found = [
        (one.path, one.steps, one.keyword, one.wants, one.part, one.value)
        for one in SchemaWalk(schema).broken(schema, data)
    ]
    return sorted(found, key=repr)


def places(data: Any, path: tuple[Any, ...] = ()) -> list[tuple[Any, ...]]:
    """The way to each value."""
    steps = data.items() if isinstance(data, dict) else enumerate(data) if isinstance(data, list) else ()
    return [path, *(place for step, value in steps for place in places(value, (*path, step)))]


WRONG = [None, True, "two", "3x5", "", "12 kg", -1, 0, 3, 3.0, 2.5, 10**7, [], [1], ["a", "a"], {}, {"a": 1}]
"""Values that fit few places."""


def spoilt(data: Any, chance: random.Random) -> Any:
    """A copy with a few values and keys wrong, gone or too many."""
    data = copy.deepcopy(data)
    for _ in range(chance.choice((1, 1, 2, 4))):
        place = chance.choice([one for one in places(data) if one] or [()])
        if not place:
            break
        holder = data
        for step in place[:-1]:
            holder = holder[step]
        match chance.randrange(5):
            case 0:
                del holder[place[-1]]
            case 1 if isinstance(holder, dict):
                holder[f"{place[-1]}x"] = holder.pop(place[-1])
            case 2 if isinstance(holder, dict):
                holder[chance.choice(("sets", "reps", "exercise", "rest", "name", "weeks", "rounds"))] = 3
            case _:
                holder[place[-1]] = chance.choice(WRONG)
    return data


def test_files_with_faults_break_the_same():
    chance, broken, loaded = random.Random(5), 0, files()
    assert len(loaded) > 60
    for kind, data in loaded:
        schema = schemas.load(kind)
        for one in (data, *(spoilt(data, chance) for _ in range(3))):
            found = by_us(schema, one)
            assert found == by_library(schema, one)
            broken += len(found)
    assert broken > 300


@pytest.mark.parametrize("kind", ["programme", "athlete", "exercises", "team"])
def test_each_part_of_a_schema_breaks_the_same(kind):
    schema = schemas.load(kind)
    walk = SchemaWalk(schema)
    values = [*WRONG, {"exercise": "row"}, {"sets": 3, "reps": "8"}, "monday", "2026-02-30", 100, 1.5]
    for part in schema["$defs"].values():
        library = Draft202012Validator({"$defs": schema["$defs"], **part})
        for value in values:
            ours = [(one.path, one.keyword, one.value) for one in walk.broken(part, value)]
            theirs = [
                (tuple(one.path), one.validator or "", one.instance) for one in library.iter_errors(value)
            ]
            assert sorted(ours, key=repr) == sorted(theirs, key=repr)
            assert walk.accepts(part, value) == library.is_valid(value)


KEYWORDS = [
    {"type": "integer"},
    {"type": ["string", "null"]},
    {"enum": ["a"]},
    {"pattern": "^a$|^b"},
    {"minimum": 2, "maximum": 3, "multipleOf": 0.5},
    {"minLength": 2, "minItems": 1, "minProperties": 1},
    {"required": ["a", "b"]},
    {"dependentRequired": {"a": ["b", "c"]}},
    {"dependentSchemas": {"a": {"required": ["b"]}, "b": False}},
    {"properties": {"a": False, "b": {"type": "string"}}},
    {"properties": {"a": True}, "additionalProperties": False},
    {"additionalProperties": {"type": "string"}},
    {"propertyNames": {"pattern": "^b", "minLength": 2}},
    {"items": {"type": "string"}},
    {"if": {"required": ["a"]}, "then": {"required": ["b"]}, "else": False},
    {"if": {"type": "object"}, "then": False},
    {
        "$ref": "#/$defs/a",
        "$defs": {"a": {"type": "object", "properties": {"a": {"$ref": "#/$defs/b"}}}, "b": False},
    },
]


@pytest.mark.parametrize("schema", KEYWORDS)
def test_each_keyword_breaks_the_same(schema):
    values = [*WRONG, "a", "b", "ab", {"b": "x"}, {"a": 1, "b": 2}, {"a": 1, "b": 2, "c": 3}, [1, "a", None]]
    for value in values:
        assert by_us(schema, value) == by_library(schema, value)


def test_which_key_is_missing_is_told():
    schema = {"required": ["a", "b"], "dependentRequired": {"c": ["d"]}}
    assert [one.missing for one in SchemaWalk(schema).broken(schema, {"b": 1, "c": 2})] == ["a", "d"]


def test_a_keyword_that_is_not_known_is_refused():
    with pytest.raises((ValueError, KeyError)):
        list(SchemaWalk({"not": {}}).broken({"not": {}}, 3))
