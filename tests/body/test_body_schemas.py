"""The schemas of the body's data files: well made, described throughout, and strict."""

from __future__ import annotations

import json
import os

import pytest
from jsonschema import Draft202012Validator

from spotline.lint.body import build_data

NAMES = (*build_data.TABLES, "exercises")


def load(name):
    with open(os.path.join(build_data.SCHEMAS, f"body-{name}.json"), encoding="utf-8") as file:
        return json.load(file)


def objects(schema):
    """Every object shape of a schema that lists its properties."""
    if isinstance(schema, dict):
        if "properties" in schema and schema.get("type") == "object":
            yield schema
        for value in schema.values():
            yield from objects(value)
    elif isinstance(schema, list):
        for value in schema:
            yield from objects(value)


@pytest.mark.parametrize("name", NAMES)
def test_is_a_schema_of_2020_12(name):
    schema = load(name)
    Draft202012Validator.check_schema(schema)
    assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    assert schema["$id"] == f"urn:spotline:schema:body-{name}"


@pytest.mark.parametrize("name", NAMES)
def test_every_property_is_described_and_no_other_is_let_in(name):
    shapes = list(objects(load(name)))
    assert shapes
    for shape in shapes:
        assert shape["additionalProperties"] is False
        for key, value in shape["properties"].items():
            assert value.get("description"), (name, key)


@pytest.mark.parametrize("name", NAMES)
def test_the_data_is_valid_as_a_whole_file(name):
    data = [dict(entry) for entry in build_data.read()[name]]
    Draft202012Validator(load(name)).validate(data)


@pytest.mark.parametrize("name", NAMES)
def test_every_property_is_used_by_the_data(name):
    """A key that no entry has is a key that nothing tries."""
    used = set()

    def collect(value):
        if isinstance(value, dict):
            for key, inner in value.items():
                used.add(key)
                collect(inner)
        elif isinstance(value, list):
            for inner in value:
                collect(inner)

    collect([dict(entry) for entry in build_data.read()[name]])
    wanted = {key for shape in objects(load(name)) for key in shape["properties"]}
    assert wanted - used == set()
