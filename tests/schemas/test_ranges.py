"""No number and no date is taken beyond what can be meant, in any kind of file: the schemas are walked.

A number that is new in a schema needs both bounds there; words that hold a number need an absurd example here, which
must be a finding at its place.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from spotline.lint.engine.registry import all_rules
from spotline.lint.project.results import Review
from spotline.lint.project.review import review
from spotline.lint.team.read_settings import MOST_LIMIT

SCHEMAS = ("programme", "athlete", "team", "exercises")

PLAN = """\
programme: Test
starts: 2026-01-05
weeks: 4
PLAN
sessions:
  - session: A
    day: DAY
    exercises:
      - {exercise: back squat, sets: 3, reps: 5, rir: 2}
      - {LINE}
"""


def line(words: str) -> dict[str, str]:
    return {"plan.programme.yaml": PLAN.replace("LINE", words).replace("PLAN\n", "").replace("DAY", "monday")}


def plan(words: str) -> dict[str, str]:
    text = PLAN.replace("      - {LINE}\n", "").replace("PLAN", words).replace("DAY", "monday")
    return {"plan.programme.yaml": text.replace("weeks: 4\n", "") if words.startswith("weeks") else text}


def day(words: str) -> dict[str, str]:
    text = PLAN.replace("      - {LINE}\n", "").replace("PLAN\n", "").replace("DAY", words)
    return {"plan.programme.yaml": text}


def visit(words: str) -> dict[str, str]:
    return {"plan.programme.yaml": plan("note: x")["plan.programme.yaml"] + f"  - {{{words}}}\n"}


def athlete(words: str) -> dict[str, str]:
    return {"mara.athlete.yaml": f"name: Mara\n{words}\n"}


def settings(words: str) -> dict[str, str]:
    return {**plan("note: x"), "spotline.yaml": f"{words}\n"}


SQUAT = "exercise: front squat, sets: 3, reps: 5"

ABSURD: dict[str, list[tuple[str, dict[str, str]]]] = {
    "programme/$defs/day/then/if": [("day 9", day("day 9"))],
    "programme/$defs/rotation/items/if": [("monday 29:30", plan("rotation: [monday 29:30]"))],
    "programme/$defs/dayAndTime": [("monday 29:30", day("monday 29:30"))],
    "programme/$defs/minutes": [
        (one, visit(f"activity: run, day: tuesday, minutes: {one}")) for one in ("901-999", "100000", "0-5")
    ],
    "programme/$defs/sessionEffort": [
        ("11", visit("activity: run, day: tuesday, minutes: 30, effort: 11")),
        ("8-99", visit("activity: run, day: tuesday, minutes: 30, effort: 8-99")),
    ],
    "programme/$defs/minutesOfWork": [
        ("9999", line("own choice: trunk, minutes: 9999")),
        ("950-999", line("own choice: trunk, minutes: 950-999")),
    ],
    "programme/$defs/weekKey/if": [("visit 999", line("exercise: front squat, sets: {visit 999: 3}, reps: 5"))],
    "programme/$defs/whereKey/if": [("900", plan("where: {1-4: hotel, 900: home}"))],
    "programme/$defs/again": [
        (one, line(f"exercise: front squat, sets: 3, reps: 5, load: {{1: 50 kg, again: {one}}}"))
        for one in ("+999 kg", "+999 points", "-101", "x 99999")
    ],
    **{
        f"programme/$defs/{key}Changed/then/if": [
            (one, plan(f"everything: {{2: {{{key}: {one}}}}}")) for one in several
        ]
        for key, several in {
            "sets": ("x 99", "x 0.001", "1000"),
            "reps": ("x 99", "5000"),
            "load": ("x 99", "+999 kg", "-999 points", "9999 kg"),
            "rir": ("99", "+99"),
            "rpe": ("99", "-99"),
            "rest": ("9999 min",),
            "hold": ("x 99", "9999 min"),
        }.items()
    },
    "programme/$defs/sets": [(one, line(f"exercise: front squat, reps: 5, sets: {one}")) for one in ("99", "1-99", "1000")],
    "programme/$defs/setsOfWeek": [("99", line("exercise: front squat, reps: 5, sets: {1-3: 3, 4: 99}"))],
    "programme/$defs/roundCount": [
        ("99", line("circuit: {rounds: 99, exercises: [{exercise: push-up, reps: 10}]}")),
        ("1000", line("circuit: {rounds: 1000, exercises: [{exercise: push-up, reps: 10}]}")),
    ],
    "programme/$defs/reps": [
        (one, line(f"exercise: front squat, sets: 3, reps: {one}")) for one in ("999", "5-999", "9999", "9999 min")
    ],
    "programme/$defs/setsOfReps": [("99x500", line("exercise: front squat, sets: 99x500"))],
    "programme/$defs/load": [
        (one, line(f"{SQUAT}, load: {one}"))
        for one in (
            "9999 kg", "9999 lb", "9999 %", "0.5 %", "2 x 900 kg", "bodyweight + 9999 kg", "500RM",
            "999 % of bodyweight", "900 % of back squat", "900 % of top set", "-1 kg", "60-9999 kg",
        )
    ],
    "programme/$defs/rir": [(one, line(f"{SQUAT}, rir: {one}")) for one in ("11", "99", "2-99")],
    "programme/$defs/rpe": [(one, line(f"{SQUAT}, rpe: {one}")) for one in ("0", "11", "8-99")],
    "programme/$defs/rest": [(one, line(f"{SQUAT}, rest: {one}")) for one in ("9999 min", "0 s", "1-999 min", "9999")],
    "programme/$defs/hold": [
        (one, line(f"exercise: side plank, sets: 3, hold: {one}")) for one in ("9999 min", "9999 min each")
    ],
    "programme/$defs/time": [
        ("999 min", line("exercise: kettlebell swing, reps: 10, every: 999 min, for: 10 min")),
    ],
    "programme/$defs/length": [("9999 min", line("exercise: kettlebell swing, reps: 10, every: 60 s, for: 9999 min"))],
    "programme/$defs/tempo": [("99-99-99-99", line(f"{SQUAT}, tempo: 99-99-99-99"))],
    "programme/$defs/distance": [
        (one, line(f"exercise: farmer's walk, sets: 3, distance: {one}")) for one in ("9999 km", "1-999 km")
    ],
    "programme/$defs/velocity": [("99 m/s", line(f"{SQUAT}, velocity: 99 m/s"))],
    "programme/$defs/percent": [("100 %", line(f"{SQUAT}, velocity loss: 100 %"))],
    "programme/$defs/step": [
        (one, line(f"{SQUAT}, progression: {{add: {one}}}")) for one in ("999 kg", "999 %", "999 reps", "99 sets", "999 min")
    ],
    "programme/$defs/turn": [("999 weeks", line(f"{SQUAT}, progression: {{add: 2.5 kg, every: 999 weeks}}"))],
    "athlete/$defs/date": [
        (one, files)
        for one in ("9999-01-01", "0001-01-01", "1899-12-31", "2026-02-30", "20260-01-01")
        for files in (
            athlete(f"screening on file: {one}"),
            athlete(f"protect: [{{area: knee, advised by: physiotherapist, review on: {one}}}]"),
            athlete(f"best lifts: {{back squat: {{load: 100 kg, tested: {one}}}}}"),
            {"plan.programme.yaml": plan("note: x")["plan.programme.yaml"].replace("2026-01-05", one)},
            plan(f"events: [{{event: regatta, date: {one}}}]"),
            plan(f"rehabilitation: {{stage: strength, advised by: physiotherapist, until: {one}}}"),
            plan(f"waivers: [{{rule: tempo-too-long, reason: it is, until: {one}}}]"),
        )
    ],
    "athlete/$defs/weekNumbers": [
        ("900", athlete("protect: [{area: knee, advised by: coach, in weeks: 900}]")),
    ],
    "athlete/$defs/mass": [
        (one, athlete(f"body mass: {one}")) for one in ("3 kg", "9 kg", "501 kg", "9999 kg", "9999 lb", "0 kg")
    ]
    + [
        (one, athlete(f"equipment: [{{dumbbells: {{{key}: {one}}}}}]"))
        for key, one in (("up to", "9999 kg"), ("step", "0 kg"), ("from", "9999 lb"))
    ],
    "athlete/$defs/liftedLoad": [
        (one, athlete(f"best lifts: {{back squat: {one}}}"))
        for one in ("9999 kg", "0 kg", "9999 lb", "bodyweight + 9999 kg", "9 x 900 kg")
    ],
    "athlete/$defs/workingBest": [
        (one, athlete(f"best lifts: {{back squat: {{load: 100 kg, working best: {one}}}}}")) for one in ("101 %", "5 %")
    ],
    "team/$defs/screening/properties/stated": [
        (one, settings(f"screening: {{stated: {one}, by: head coach}}")) for one in ("9999-01-01", "0001-01-01")
    ],
}  # fmt: skip
"""By place of a pattern with a number: what can hardly be meant, and the files in which it stands."""

NO_NUMBERS = {
    # names, paths, addresses, and words that only say which kind of value follows
    "programme/$defs/side/if",
    "athlete/$defs/weekday/if",
    "team/$defs/address",
    "team/$defs/path",
    "team/$defs/exercisesPath",
    "team/$defs/teamRule/properties/rule",
    "programme/$defs/athletePath",
    "programme/$defs/whereKey/else/if",
    "programme/$defs/plainWeekKey/if",
    "programme/$defs/daysOrOff/if",
    "programme/$defs/minutesByWeek/then/additionalProperties/if",
    "programme/$defs/prescription/properties/method/then/additionalProperties/if",
    "athlete/$defs/equipmentList/if",
    "programme/$defs/weekKey/else/if",
    *(
        f"programme/$defs/{key}ByWeek/then/additionalProperties/if"
        for key in ("load", "rir", "rpe", "rest", "tempo")
    ),
}

BY_RULES = {"team/$defs/limit"}
"""Numbers whose bounds stand elsewhere: a rule's limits, in `read_settings`."""


@pytest.fixture(scope="module")
def reviewed_files(
    tmp_path_factory: pytest.TempPathFactory, today: date
) -> Callable[[dict[str, str]], Review]:
    """Reviews a folder of files."""

    def run(files: dict[str, str]) -> Review:
        folder = tmp_path_factory.mktemp("team")
        (folder / ".git").mkdir()
        for name, text in files.items():
            (folder / name).write_text(text, encoding="utf-8")
        return review([str(folder)], today)

    return run


def nodes(node: Any, path: str) -> Iterator[tuple[str, dict[str, Any]]]:
    if isinstance(node, dict):
        yield path, node
        for key, value in node.items():
            yield from nodes(value, f"{path}/{key}")
    elif isinstance(node, list):
        for number, value in enumerate(node):
            yield from nodes(value, f"{path}/{number}")


@pytest.fixture(scope="module")
def parts(root: Path) -> list[tuple[str, dict[str, Any]]]:
    """Every part of the schemas of files."""
    found: list[tuple[str, dict[str, Any]]] = []
    for name in SCHEMAS:
        found += nodes(json.loads((root / "schema" / f"{name}.json").read_text(encoding="utf-8")), name)
    return found


def test_every_number_has_both_bounds(parts: list[tuple[str, dict[str, Any]]]) -> None:
    bare = set()
    for path, node in parts:
        kinds = node.get("type")
        kinds = {kinds} if isinstance(kinds, str) else set(kinds) if isinstance(kinds, list) else set()
        if kinds & {"integer", "number"} and not {"minimum", "maximum"} <= node.keys():
            bare.add(path)
    assert bare == BY_RULES


def test_all_words_that_hold_a_number_are_tried(parts: list[tuple[str, dict[str, Any]]]) -> None:
    patterns = {path for path, node in parts if isinstance(node.get("pattern"), str)}
    assert patterns == ABSURD.keys() | NO_NUMBERS


@pytest.mark.parametrize(
    ("value", "files"),
    [case for several in ABSURD.values() for case in several],
    ids=[
        f"{path.split('/$defs/')[-1]} {value} {number}"
        for path, several in ABSURD.items()
        for number, (value, _) in enumerate(several)
    ],
)
def test_what_can_hardly_be_meant_is_said(
    value: str, files: dict[str, str], reviewed_files: Callable[[dict[str, str]], Review]
) -> None:
    found = [one for file in reviewed_files(files).files for one in file.findings]
    at = [one for one in found if one.severity != "note" and said_at(value, one.place.excerpt)]
    assert at, [(one.rule, one.place.excerpt, one.counted) for one in found]
    errors = [one.place.start for one in at if one.severity == "error"]
    assert len(errors) == len(set(errors)), [(one.rule, one.place.excerpt, one.counted) for one in at]


def said_at(value: str, excerpt: str) -> bool:
    """Whether a place is the value, or the key or the word within which it stands."""
    bare = re.sub(r"[{}'\"]", "", excerpt)
    return bool(bare) and (value.startswith(bare) or value in bare)


@pytest.mark.parametrize("value", [MOST_LIMIT + 1, 1e30, -1])
def test_no_limit_of_a_rule_is_beyond_reason(
    value: float, reviewed_files: Callable[[dict[str, str]], Review]
) -> None:
    options = [
        (rule.name, option.name)
        for rule in all_rules()
        for option in rule.options
        if isinstance(option.default, (int, float))
    ]
    assert len(options) > 50
    lines = {}
    for rule, option in options:
        lines.setdefault(rule, []).append(f"{option}: {value:f}")
    text = "rules:\n" + "".join(f"  {rule}: {{{', '.join(several)}}}\n" for rule, several in lines.items())
    found = [one for file in reviewed_files(settings(text)).files for one in file.findings]
    assert len([one for one in found if one.rule == "limit-unreadable"]) >= min(len(options), 50)
