"""What was plain before is read by the plain readers alone, and so as it always was."""

from __future__ import annotations

from pathlib import Path

import pytest

from spotline.lint.model import quantities, read_line, two_readings, weeks
from spotline.lint.model.read_programme import read_programme
from spotline.lint.model.sessions import HELD_KEYS
from spotline.lint.schemas.plain_spellings import plain_spellings
from spotline.lint.syntax.builder import parse

ROOT = Path(__file__).parents[2]
NEW = ("odile-away-weeks", "sela-complexes-and-clocks", "jphysiol-2015")
"""Examples and published programmes with what could not be written before."""

FILES = [
    path
    for folder in ("examples/programmes", "tests/published", "tests/guidelines")
    for path in sorted((ROOT / folder).glob("*.programme.yaml"))
    if not path.name.startswith(NEW)
]


def as_data(value):
    slots = getattr(type(value), "__slots__", None)
    return (
        [as_data(getattr(value, name)) for name in slots] if slots and not isinstance(value, str) else value
    )


def reading(text):
    """Every value of every line in every week, and what was said of them."""
    programme, told = read_programme(parse("p", text).root, lambda term: None)
    works = [
        [as_data(getattr(work, key)) for key in HELD_KEYS]
        for block in programme.blocks
        for session in programme.sessions_of(block)
        for line in session.prescriptions
        for week in range(1, block.weeks + 1)
        for work in line.in_week(week)
    ]
    days = [session.days for session in programme.sessions()]
    return works, days, [(one.rule, one.place.key, one.counted) for one in told]


def test_there_are_files_to_compare():
    assert len(FILES) > 20


@pytest.mark.parametrize("file", FILES, ids=[file.name for file in FILES])
def test_no_spelling_is_needed_for_what_was_plain_before(file, monkeypatch):
    text = file.read_text(encoding="utf-8")
    now = reading(text)
    assert now[0]
    assert list(plain_spellings(parse("p", text).root, "programme")) == []

    def no_other(*_):
        raise AssertionError("only the plain spelling was read before")

    monkeypatch.setattr(quantities, "spelt", no_other)
    monkeypatch.setattr(weeks, "spelt", no_other)
    monkeypatch.setattr(two_readings, "read_apart", lambda *_: None)
    assert reading(text) == now
    assert read_line.quantities is quantities
