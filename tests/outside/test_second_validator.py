"""The printed schemas in a validator that is not ours: jsonschema-rs (PyPI), which is written in another language.

It must give the reader's verdict on every spelling, and on a thousand mutations of the examples.
"""

from __future__ import annotations

import json

import jsonschema_rs
import pytest

from spotline import schema as schemas
from spotline.tests.outside.schema_cases import MUTATIONS, Case, mutations, spellings, trials


def verdict(case: Case) -> bool:
    name, kind, data, _ = case
    printed = json.loads(schemas.text(name))
    asked = {"$ref": f"#/$defs/{kind}", "$defs": printed["$defs"]} if kind else printed
    return bool(jsonschema_rs.Draft202012Validator(asked).is_valid(data))


@pytest.mark.parametrize("name", schemas.names())
def test_a_printed_schema_fits_the_standard_of_schemas(name: str) -> None:
    assert jsonschema_rs.meta.is_valid(json.loads(schemas.text(name)))


def test_it_takes_the_spellings_that_the_reader_takes() -> None:
    assert [case[:3] for case in spellings() if verdict(case) != case[3]] == []


def test_it_takes_the_forms_that_the_reader_takes() -> None:
    cases = trials()
    assert len({case[3] for case in cases}) == 2
    assert [case[:3] for case in cases if verdict(case) != case[3]] == []


def test_it_says_what_the_reader_says_of_a_thousand_mutations() -> None:
    cases = mutations()
    assert len(cases) == MUTATIONS
    taken = sum(case[3] for case in cases)
    assert 100 < taken < MUTATIONS - 100, "mutations of both kinds"
    printed = {
        name: jsonschema_rs.Draft202012Validator(json.loads(schemas.text(name))) for name in schemas.names()
    }
    assert [data for name, _, data, verdict in cases if printed[name].is_valid(data) != verdict] == []
