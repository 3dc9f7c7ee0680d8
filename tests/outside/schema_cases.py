"""Data for other validators, each with the reader's verdict: every spelling, and mutations of the examples."""

from __future__ import annotations

import copy
import json
import random
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

from spotline import schema as schemas
from spotline.lint.model.check import checked
from spotline.lint.syntax.builder import parse
from spotline.tests import test_trials
from spotline.tests.schemas.test_spellings import NOT_READ, READ

ROOT = Path(__file__).resolve().parents[2]
MUTATIONS = 1000
LINES = 3
"""Lines of a session that a mutated programme keeps: what is not mutated need not be there."""

Case = tuple[str, str, Any, bool]
"""The schema, a kind of it or "" for the whole, the data, and whether the reader takes them."""


def spellings() -> list[Case]:
    """Every spelling of a quantity that is read, and those that are not."""
    cases = []
    for held, verdict in ((READ, True), (NOT_READ, False)):
        for kind, words in held.items():
            name = next(one for one in ("programme", "athlete") if kind in schemas.load(one)["$defs"])
            cases += [(name, kind, one, verdict) for one in words]
    return cases


def trials() -> list[Case]:
    """Every case of the trials, whole files of each form that there is; what has one meaning is taken."""
    plain = [
        one for table in (test_trials.READ, test_trials.SAYABLE) for held in table.values() for one in held
    ]
    asked = [one for held in test_trials.ASKED.values() for one in held]
    once = [one for held in test_trials.ONCE.values() for one, _ in held]
    cases = []
    for text, verdict in [*((one, True) for one in plain), *((one, None) for one in (*asked, *once))]:
        root = parse("trial", text).root
        if root is None:
            continue  # a fault of the YAML, which no schema sees
        data = json.loads(json.dumps(root.plain))
        cases.append(("programme", "", data, takes("programme", data) if verdict is None else verdict))
    return cases


@cache
def examples() -> list[tuple[str, dict[str, Any]]]:
    """The data of the examples; of programmes with one session, of few lines, each."""
    found = []
    for path in sorted((ROOT / "examples").rglob("*.yaml")):
        kind = "team" if path.name == "spotline.yaml" else path.name.split(".")[-2]
        root = parse(path.name, path.read_text(encoding="utf-8")).root
        assert root is not None
        data = root.plain
        if kind != "programme":
            found.append((kind, data))
            continue
        head = {key: value for key, value in data.items() if key not in ("blocks", "sessions", "shared")}
        for block in data.get("blocks", [data]):
            for session in block["sessions"]:
                if "exercises" in session:
                    several = session["exercises"]
                    for start in range(0, len(several), LINES):
                        part = {**session, "exercises": several[start : start + LINES]}
                        found.append((kind, {**head, "sessions": [part]}))
                else:
                    found.append((kind, {**head, "sessions": [session]}))
    return found


WORDS = [
    "",
    "x",
    "3x5",
    "80 %",
    "-12 %",
    "1:30",
    "mon",
    "amrap",
    "8 each",
    "1-3",
    "2'",
    "\u00b2",
    "each",
    "1RM",
]
VALUES = [None, True, False, 0, 1, -1, 3.5, 1000, [], {}, ["x"], {"1-3": 5, "4": 2}, {"1": "x"}, *WORDS]


def _places(data: Any, way: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    """The ways to all that the data hold."""
    if way:
        yield way
    parts = data.items() if isinstance(data, dict) else enumerate(data) if isinstance(data, list) else ()
    for key, part in parts:
        yield from _places(part, (*way, key))


def _mutated(data: Any, draw: random.Random) -> Any:
    """The data with one change: a value, a key that is gone, new or called otherwise, an item twice."""
    other = copy.deepcopy(data)
    *way, last = draw.choice(list(_places(other)))
    holder = other
    for step in way:
        holder = holder[step]
    kind = draw.randrange(6)
    if kind == 0:
        del holder[last]
    elif kind == 1 and isinstance(holder, dict):
        holder[draw.choice(["colour", "sets", "load", "for", "every", "test", "day", "name", "5"])] = (
            holder.pop(last)
        )
    elif kind == 2 and isinstance(holder, dict):
        holder[draw.choice(["sets", "work", "reps", "on", "rounds", "kind", "days", "note"])] = draw.choice(
            VALUES
        )
    elif kind == 3 and isinstance(holder[last], str):
        words = holder[last]
        at = draw.randrange(len(words) + 1)
        holder[last] = (
            words[:at] + draw.choice(["", " ", "-", "5", "x", ",", "%"]) + words[at + draw.randrange(2) :]
        )
    elif kind == 4 and isinstance(holder, list):
        holder.append(copy.deepcopy(holder[last]))
    else:
        holder[last] = draw.choice(VALUES)
    return other


def takes(name: str, data: Any) -> bool:
    """Whether the reader finds nothing to say of the form of a file."""
    reading = parse("data", json.dumps(data))
    return not checked(reading, name)


@cache
def mutations() -> list[Case]:
    """A thousand changes of the examples, the same each time."""
    draw = random.Random(12)
    cases = []
    for _ in range(MUTATIONS):
        name, data = draw.choice(examples())
        other = _mutated(data, draw)
        if isinstance(other, dict):
            cases.append((name, "", other, takes(name, other)))
    return cases
