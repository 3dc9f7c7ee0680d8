"""Every message names what to write: no list that is not there, nothing twice, no word that nobody wrote.

Held over every finding of the examples, the published and the coaches' programmes, every rule's page, and over
values of the wrong shape and form under every key of every file.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterator
from typing import Any

import pytest

from spotline import schema as schemas
from spotline.lint.engine.registry import all_rules
from spotline.lint.engine.rule_page import Page
from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import Review
from spotline.lint.project.review import review
from spotline.lint.schemas.explain import explain
from spotline.lint.syntax.builder import parse

from .test_claims import FOLDERS, ROOT, TODAY, every, texts

EMPTY = (
    "Correct it.",
    "Correct the number.",
    "Write one of these.",
    "Write a single value.",
    "Write it.",
    "",
)
"""Remedies that name nothing. ``Write it.`` is one where no more is known."""

MAY_BE_EMPTY = frozenset({"key-empty"})
"""A name that is missing is the coach's own."""


def faults(one: Finding) -> Iterator[str]:
    """What is wrong with the words of a finding."""
    if one.change in EMPTY and one.rule not in MAY_BE_EMPTY and not one.why:
        yield "no remedy"
    named = re.findall("`([^`]+)`", one.change)
    if len(set(named)) < len(named):
        yield "names one thing twice"
    if (
        re.search(r"\bthese\b", f"{one.wanted} {one.change}")
        and not named
        and "these weeks" not in one.change
    ):
        yield "says these, and lists none"
    if "`this`" in f"{one.counted} {one.wanted} {one.change}":
        yield "quotes this"
    if "``" in one.counted + one.change:
        yield "quotes nothing"


def told(found: list[Finding]) -> list[str]:
    return [
        f"{fault}: {one.rule}: {one.counted} {one.wanted} {one.change}"
        for one in found
        for fault in faults(one)
    ]


def test_every_finding_of_files_and_pages_names_what_to_write(reviewed: Callable[..., Review]) -> None:
    said: list[Finding] = []
    for folder in (*FOLDERS, "tests/coaches"):
        for path in sorted((ROOT / folder).rglob("*.programme.yaml")):
            said += every(review([str(path)], TODAY))
    for rule in all_rules():
        settings = {"spotline.yaml": f"rules: {{{rule.name}: run}}\n"} if rule.off else {}
        for text in texts(rule):
            said += every(reviewed(text, {**Page(rule).beside, **settings}))
    assert len(said) > 300
    assert told(said) == []


# Values that no key takes, under every key of every kind

ODD: tuple[Any, ...] = (
    "gargle",
    "12 cm",
    "5 kg vest",
    "2026-10",
    "none",
    "",
    -3,
    99999,
    2.37,
    True,
    [],
    ["gargle", "other"],
    {"1-2": "gargle", "other": "none"},
    {"gargle": 3},
    [{"gargle": 3}],
)


def homes() -> Iterator[tuple[str, dict[str, Any], Callable[[Any], dict[str, Any]]]]:
    """Each kind of mapping: the file's kind, a sound one, and the whole file around it."""
    line = {"exercise": "back squat", "sets": 3}
    session = {"session": "A", "exercises": [line]}

    def of_line(one: Any) -> dict[str, Any]:
        return {"programme": "P", "sessions": [{"session": "A", "exercises": [one]}]}

    def of_session(one: Any) -> dict[str, Any]:
        return {"programme": "P", "sessions": [one]}

    def of_head(one: Any) -> dict[str, Any]:
        return one

    def under(key: str, rest: dict[str, Any]) -> Callable[[Any], dict[str, Any]]:
        return lambda one: {**rest, key: one}

    head = {"programme": "P", "sessions": [session]}
    athlete = {"name": "Ada"}
    yield "prescription", line, of_line
    yield "group", {"sets": 1}, lambda one: of_line({"exercise": "back squat", "work": [one]})
    yield "progression", {"add": "5 kg"}, lambda one: of_line({**line, "progression": one})
    yield "superset", {"superset": [line, line]}, of_line
    yield (
        "rounds",
        {"rounds": 3, "exercises": [{"exercise": "push-up"}]},
        lambda one: of_line({"circuit": one}),
    )
    yield "complex", {"complex": [{"exercise": "a"}, {"exercise": "b"}], "sets": 3}, of_line
    yield "intervals", {"intervals": "bike", "rounds": 3, "on": "30 s"}, of_line
    yield "ownChoice", {"own choice": "trunk", "minutes": 10}, of_line
    yield "session", session, of_session
    yield "activity", {"activity": "run"}, of_session
    yield "", head, of_head
    yield "event", {"date": "2027-01-05", "event": "meet"}, lambda one: {**head, "events": [one]}
    yield "rehabilitation", {}, under("rehabilitation", head)
    yield "adjustment", {"sets": 2}, lambda one: {**head, "athletes": [{"athlete": athlete, "adjust": [one]}]}
    yield "everyLine", {"sets": 2}, lambda one: {**head, "everything": {"1": one}}
    yield (
        "block",
        {"block": "B", "weeks": 4, "sessions": [session]},
        lambda one: {"programme": "P", "blocks": [one]},
    )
    yield "athlete", athlete, of_head
    yield "restriction", {"area": "knee", "advised by": "coach"}, lambda one: {**athlete, "protect": [one]}
    yield "bestLift", {"load": "100 kg"}, lambda one: {**athlete, "best lifts": {"back squat": one}}
    yield "stock", {"up to": "24 kg"}, lambda one: {**athlete, "equipment": [{"dumbbells": one}]}


def keys_of(kind: str) -> list[str]:
    whole = schemas.load("athlete" if kind == "athlete" else "programme")
    if kind in ("", "athlete"):
        return list(whole["properties"])
    parts = {name.rpartition("/")[2]: part for name, part in whole["$defs"].items()}
    return list(parts[kind]["properties"])


@pytest.mark.parametrize(
    ("kind", "sound", "around"), list(homes()), ids=lambda one: one if isinstance(one, str) else ""
)
def test_odd_values_under_every_key_are_told_with_what_to_write(
    kind: str, sound: dict[str, Any], around: Callable[[Any], dict[str, Any]]
) -> None:
    file = "athlete" if kind in ("athlete", "restriction", "bestLift", "stock") else "programme"
    said: list[Finding] = []
    for value in ODD:
        text = json.dumps(around({**sound, **dict.fromkeys(keys_of(kind), value)}))
        root = parse("p.yaml", text).root
        assert root is not None
        said += explain(root, file)
    assert len({one.place.excerpt for one in said}) > len(ODD) // 2
    assert told(said) == []
