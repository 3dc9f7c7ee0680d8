"""The fast check never accepts what the library rejects, and rarely has to leave the question to it."""

from __future__ import annotations

import copy
import json
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.body.search import search
from spotline.lint.engine.registry import all_rules
from spotline.lint.reporters.exercises_json import exercises_json
from spotline.lint.reporters.rules_json import rules_json
from spotline.lint.schemas.fast_check import _Compiler, compiled, fits
from spotline.lint.schemas.lookup import SchemaLookup
from spotline.lint.syntax.builder import parse

EXAMPLES = Path(__file__).parents[2] / "examples"

EVERYTHING = """\
programme: Everything that the format knows
athletes:
  - ../athletes/mara.athlete.yaml
  - athlete: ../athletes/wren.athlete.yaml
    adjust:
      - {exercise: back squat, swap: leg press, leave out: false, sets: 2, load: 60 kg, note: n}
      - {session: Lower A, in weeks: 1-3, reps: -2, rir: 3, hold: half, rest: +30 s}
  - name: Mara
    level: intermediate
    sport: rowing
    age: 34
    body mass: 72 kg
    best lifts: {back squat: 100 kg, bench press: {load: 60 kg, tested: 2026-01-05, reps: 3, working best: 85 %}}
    equipment: [barbell, dumbbells: {from: 2 kg, up to: 24 kg, step: 2 kg, pairs: 1, shared by: 3}]
    places: {hotel: [band, {kettlebells: [8, 12, 16 kg]}], shed: [barbell: {weights: [60 kg, 80 kg]}]}
    days: [monday, thursday]
    minutes: 60
    protect:
      - {area: left shoulder, advised by: physiotherapist, agreed: [rows], review on: 2026-03-01, note: n}
      - {area: left knee, in weeks: 1-2+4, advised by: physiotherapist}
      - {movement: jumping, from: 2026-03-01, until: 2026-04-01, advised by: physiotherapist}
    clearance on file: 2026-01-02
    screening on file: 2026-01-02
    supervision: coach present
    note: n
goal: strength
deload: [4, 7-8]
everything: {2: {load: +2 points, sets: -1, reps: half}, other: {rpe: 8, rir: 1-2, rest: 2 min, hold: x 0.5}}
where: {1-2+4: boathouse, 5: hotel, other: shed}
phase: in-season
focus: [legs]
priority: [hamstrings]
not trained: [neck]
maintain: [chest]
our names: {toe stand: standing calf raise}
starts: 2026-01-05
events: [{date: 2026-02-14, event: regatta, note: n}]
note: n
working best: 90 %
rotation: [monday, friday]
must hold:
  - {weekly sets of: hamstrings, at least: 8, at most: 12, in weeks: 1-3, because: b}
  - {weekly sets of: pulling, at least as many as: pushing}
  - {days of: knee flexion, at most: 3}
  - {hours between: [match, legs], at least: 48}
  - {never two days running: impact}
waivers: [{rule: units-mixed, place: Lower A, reason: old plates, who: head coach, until: 2026-03-01}]
rehabilitation: {stage: heel drops, advised by: physiotherapist, until: 2026-04-01}
shared: {any: [1, null, {thing: true}]}
blocks:
  - name: Base
    weeks: 4
    phase: build
    deload: false
    focus: [legs]
    where: boathouse
    rotation: [monday]
    note: n
    sessions:
      - session: Lower A
        day: [monday, 4, friday 05:45]
        in weeks: 1-2+3-4
        where: {monday: hotel, thu: shed}
        instead of: Lower B
        test: 1RM
        kind: [impact]
        preparation: 5 min bike
        cool-down: [5 min walk]
        minutes: {1-3: 60, 4: 45}
        note: n
        exercises:
          - exercise: {1-2: back squat, 3-4: front squat}
            sets: {1-3: 3-4, 4: 0}
            reps: {1-3: 12/10/8+, 4: 5}
            load: {1-3: 70/75/80 %, 4: bodyweight + 10 kg}
            rir: {1-3: 1.5, 4: 1-2}
            rest: 2-3 min
            tempo: 3-1-X-0
            warm-up sets: 2
            in weeks: 1-4
            or: [leg press]
            progression:
              {add: 2.5 kg, when: it moves well, every: 2 weeks, up to: 60 kg, then: 1 kg, in weeks: 1-3, if missed: m, note: n}
            velocity: 0.5 m/s
            velocity loss: 20 %
            cluster rest: 20 s
            method: cluster
            working best: 95 %
            side: each
            test: 1RM
            kind: impact
            cue: {1-2: slow, 3-4: fast}
            stop when: the bar slows
            note: n
          - exercise: back squat
            work:
              - {sets: 1, reps: 3, rpe: 8.5, tempo: 3-1-X-0, velocity: 0.5 m/s, note: n, side: left}
              - {sets: 3, hold: 20 s, distance: 20 m, load: 90 % of top set, rest: 90 s, rir: 2}
          - {superset: [{exercise: push-up, reps: amrap}, {exercise: row, hold: 5 s}], rounds: 3, rest: 60 s, note: n, in weeks: 1-2}
          - {superset: [{exercise: push-up, sets: 3}, {exercise: row, sets: 3, or: lat pulldown}]}
          - {circuit: {rounds: 3, rest: 2 min, note: n, exercises: [{exercise: plank, hold: 30 s}]}}
          - {exercise: swing, every: 60 s, for: 10 min, progression: {add: next pair, not in weeks: 2}}
          - {circuit: {change every: 60 s, for: 12 min, exercises: [{exercise: push-up, reps: 8}, {exercise: squat}]}}
          - {circuit: {rounds: 5, for time: true, time cap: 20 min, every: 3 min, exercises: [{exercise: push-up}]}}
          - {circuit: {rounds: 5, on: 40 s, off: 20 s, exercises: [{exercise: push-up}, {exercise: row}]}}
          - {complex: [{exercise: clean, reps: 1}, {exercise: jerk, reps: 2}], sets: 5, load: 70 %, rest: 2 min,
             rir: 2, rpe: 8, warm-up sets: 2, in weeks: 1-2, note: n}
          - {complex: [{exercise: clean, reps: 1}, {exercise: jerk, reps: 2}], every: 2 min, for: 10 min}
          - {intervals: bike, rounds: 8, on: 45 s, off: 15 s, every: 1 min, for: 8 min, rpe: 8, in weeks: 1-2, note: n}
          - {intervals: rowing machine, rounds: {1-2: 6, 3-4: 8}, distance: 250 m}
          - {own choice: mobility, minutes: 10-15, trains: [hips], in weeks: 1-2, note: n}
          - {exercise: row, sets: {1: 3, again: 1}, reps: {1: 5, again: same}, load: {visits 1-3: 3 kg, again: +5 kg}}
      - {activity: bike, day: tuesday, rounds: 6, on: 60 s, off: 60 s}
      - {activity: match, day: {1+3: sunday, other: [friday 19:00, 6]}, kind: impact}
      - {activity: run, day: tuesday, minutes: 60-75, effort: 6-8, loads: {calves: high}, note: n}
  - block: More
    weeks: 1
    sessions: [{session: S, exercises: [{exercise: plank, sets: 3, hold: 20 s, rest after: 2-3 min}]}]
"""

EVERYTHING_ELSE = {
    "athlete": {"name": "Mara", "days": 3, "protect": [{"movement": "press", "advised by": "physician"}]},
    "exercises": {
        "exercises": [
            {
                "name": "boathouse hinge",
                "also": ["pier hinge"],
                "implement": "sandbag",
                "path": {"hip": [90, 0], "knee": 15},
                "credit": {"gracilis": {"as": "none", "because": "it stays slack"}},
            }
        ]
    },
    "team": {
        "weekly limits": {"chest": 12.5},
        "our names": {"toe stand": "calf raise"},
        "block commit on": ["error"],
        "leave out": ["archive"],
    },
    "review": {
        "spotline": "0.1.0",
        "files": 1,
        "findings": [
            {
                "file": "a",
                "line": 1,
                "column": 1,
                "end line": 1,
                "end column": 2,
                "rule": "key-unknown",
                "severity": "error",
                "confidence": "fact",
                "where": "",
                "weeks": [1],
                "counted": "c",
                "wanted": "",
                "change": "",
                "why": "",
                "sources": [{"id": "s", "reference": "r"}],
                "related": [
                    {
                        "file": "a",
                        "line": 1,
                        "column": 1,
                        "end line": 1,
                        "end column": 1,
                        "words": "w",
                        "share": {"low": 3, "high": 4},
                        "of": "",
                    }
                ],
                "subject": "s",
                "group": "g",
                "told": [1],
                "amount": {"counted": 2, "wanted": 1, "unit": "sets"},
                "follows": [
                    {
                        "file": "a",
                        "line": 1,
                        "column": 1,
                        "end line": 1,
                        "end column": 1,
                        "rule": "r",
                        "severity": "note",
                        "where": "",
                        "subject": "",
                        "group": "",
                        "weeks": [1],
                        "counted": "c",
                        "wanted": "",
                        "amount": {"counted": 2, "wanted": 1, "unit": "sets"},
                    }
                ],
                "edits": [
                    {
                        "label": "l",
                        "file": "a",
                        "line": 1,
                        "column": 1,
                        "end line": 1,
                        "end column": 1,
                        "words": "w",
                        "certain": False,
                        "further": [
                            {
                                "file": "a",
                                "line": 1,
                                "column": 1,
                                "end line": 1,
                                "end column": 2,
                                "words": "",
                            }
                        ],
                    }
                ],
            }
        ],
        "kept back": [
            {
                "file": "a",
                "line": 1,
                "column": 1,
                "end line": 1,
                "end column": 2,
                "rule": "key-unknown",
                "severity": "error",
                "where": "",
                "counted": "c",
                "by": "record",
                "reason": "",
            }
        ],
        "summary": {"error": 1, "warning": 0, "note": 0, "blocked": True},
        "faults": [{"file": "a", "rule": "r", "fault": "f"}],
    },
}
CHANGE = {
    "part": "dose",
    "kind": "sets",
    "subject": "quadriceps",
    "session": "",
    "weeks": [1, 2],
    "before": "14",
    "after": "7",
    "words": "quadriceps 14 -> 7 sets a week",
    "weight": 51.0,
}
COMPARED = {"file": "a", "programme": "A", "athletes": "B", "weeks": [1], "first": ["c"], "changes": [CHANGE]}
SPAN = {"low": 4, "high": 5}
TABLE = {
    "by": "muscle",
    "rows": [{"name": "triceps", "mark": "over", "values": {"sets": SPAN}, "words": {"days": "Mon"}}],
}
CLEARED = {
    "line": 1,
    "rule": "r",
    "severity": "note",
    "where": "A",
    "group": "g",
    "weeks": [1],
    "counted": "c",
}
PRINTED = {
    "changes": {
        "spotline": "0.1.0",
        "files": 1,
        "changed": [COMPARED],
        "new files": [{"file": "n", "holds": "h"}],
        "files gone": [{"file": "g", "held": "h"}],
        "faults": ["f"],
    },
    "code-quality": [
        {
            "description": "Ten sets.",
            "check_name": "weekly-sets-over-limit",
            "fingerprint": "f",
            "severity": "major",
            "location": {"path": "a", "lines": {"begin": 1, "end": 2}},
        }
    ],
    "proposals": {
        "spotline": "0.1.0",
        "file": "a",
        "proposals": [
            {
                "words": "w",
                "steps": [{"kind": "sets", "words": "w", "said": "also reps"}],
                "lines": [{"from": 1, "before": ["a"], "after": ["b"]}],
                "costs": ["no sets"],
                "clears": [CLEARED],
                "caution": "mind",
            }
        ],
        "stays": [{**CLEARED, "why": ["w"]}],
        "at once": True,
        "to the end": True,
        "reviews": 3,
    },
    "tally": {
        "spotline": "0.1.0",
        "programmes": [
            {
                "file": "a",
                "programme": "A",
                "athlete": "B",
                "weeks": [
                    {"weeks": [1], "days": 2, "minutes": SPAN, "tables": [TABLE], "nothing for": ["grip"]}
                ],
            }
        ],
        "faults": ["f"],
    },
}
DOCUMENTS = {
    **PRINTED,
    "programme": parse("p", EVERYTHING).root.plain,
    **EVERYTHING_ELSE,
    "rules": json.loads(rules_json(all_rules())),
    "exercises-found": json.loads(exercises_json(search("seated band leg curl flurb"))),
}
LIBRARY = {name: Draft202012Validator(schemas.load(name)) for name in schemas.names()}


def examples():
    for folder in ("athletes", "programmes"):
        for file in sorted((EXAMPLES / folder).iterdir()):
            yield folder.removesuffix("s"), file
    yield "team", EXAMPLES / "spotline.yaml"


def paths(data, path=()):
    """The paths of all groups, lists and values in a document."""
    yield path
    if isinstance(data, dict):
        for key, value in data.items():
            yield from paths(value, (*path, key))
    elif isinstance(data, list):
        for index, value in enumerate(data):
            yield from paths(value, (*path, index))


def texts(data):
    if isinstance(data, dict):
        return {*data, *(text for value in data.values() for text in texts(value))}
    if isinstance(data, list):
        return {text for value in data for text in texts(value)}
    return {data} if isinstance(data, str) else set()


WORDS = sorted({word for document in DOCUMENTS.values() for word in texts(document)})
VALUES = st.one_of(
    st.sampled_from(WORDS),
    st.sampled_from(WORDS).flatmap(lambda word: st.sampled_from([word + "\n", word + " ", word[:-1], " " + word, word + word])),
    st.sampled_from([None, True, False, 0, 1, 3, 3.0, 1.0, 0.5, 2.25, -1, 8, 10**30, float("nan"), float("inf"), "", [], {}]),
    st.integers(-2, 200),
    st.floats(-1, 12),
    st.text(max_size=6),
    st.lists(st.sampled_from(WORDS), max_size=2),
    st.dictionaries(st.sampled_from(WORDS), st.sampled_from([*WORDS, 3, None]), max_size=2),
    st.sampled_from(list(DOCUMENTS.values())).flatmap(
        lambda whole: st.sampled_from(list(paths(whole))).map(lambda path: at(whole, path))
    ),
)  # fmt: skip


def at(data, path):
    for step in path:
        data = data[step]
    return data


@st.composite
def changed(draw):
    """A schema's name and its document with one to three changes."""
    name = draw(
        st.sampled_from(
            ["programme", "programme", "programme", "athlete", "team", "review", "exercises-found"]
        )
    )
    document = copy.deepcopy(DOCUMENTS[name])
    for _ in range(draw(st.integers(1, 3))):
        path = draw(st.sampled_from(list(paths(document))))
        value = copy.deepcopy(draw(VALUES))
        if not path:
            continue
        group, step = at(document, path[:-1]), path[-1]
        change = draw(st.sampled_from(["replace", "replace", "remove", "rename", "add", "wrap"]))
        if change == "replace":
            group[step] = value
        elif change == "remove":
            del group[step]
        elif change == "wrap":
            group[step] = [group[step]]
        elif isinstance(group, list):
            group.append(value)
        elif change == "rename":
            group[draw(st.sampled_from(WORDS))] = group.pop(step)
        else:
            group[draw(st.sampled_from(WORDS))] = value
    return name, document


@settings(max_examples=600, deadline=None)
@given(changed())
def test_it_never_passes_what_the_library_rejects(case):
    name, document = case
    if fits(name)(document):
        assert LIBRARY[name].is_valid(document)


@settings(max_examples=300, deadline=None)
@given(changed())
def test_what_the_library_says_is_the_same_where_sound_parts_are_passed_over(case):
    """A file's faults are looked for in what does not surely fit; the library walks through all."""
    name, data = case
    if not isinstance(data, dict):
        return
    walked = [
        (tuple(error.absolute_path), tuple(error.absolute_schema_path), error.validator or "", error.instance)
        for error in LIBRARY[name].iter_errors(data)
    ]
    found = SchemaLookup(schemas.load(name)).violations(data, len(walked) + 1)
    told = [(one.path, one.steps, one.keyword, one.value) for one in found]
    assert sorted(told, key=repr) == sorted(walked, key=repr)


@settings(max_examples=300, deadline=None)
@given(changed())
def test_what_it_leaves_to_the_library_is_nearly_always_wrong(case):
    """Only whole numbers written as decimals and numbers beyond the usual are valid and yet left."""
    name, document = case
    if not fits(name)(document) and LIBRARY[name].is_valid(document):
        assert any(isinstance(at(document, path), float) for path in paths(document))


@pytest.mark.parametrize("name", schemas.names())
def test_a_document_with_every_key_passes(name):
    assert list(LIBRARY[name].iter_errors(DOCUMENTS[name])) == []
    assert fits(name)(DOCUMENTS[name])


def test_the_document_with_every_key_has_every_key():
    schema = schemas.load("programme")
    known = {key for part in [schema, *schema["$defs"].values()] for key in part.get("properties", ())}
    apart = {"athlete", "weeks", "sessions"}  # where `athletes` and `blocks` stand instead
    assert known - set(texts(DOCUMENTS["programme"])) <= apart | {"movement", "subject"}


@pytest.mark.parametrize(("name", "path"), [pytest.param(*one, id=one[1].name) for one in examples()])
def test_the_examples_pass(name, path):
    root = parse(str(path), path.read_text(encoding="utf-8")).root
    assert list(LIBRARY[name].iter_errors(root.plain)) == []
    assert fits(name)(root.plain)


@pytest.mark.parametrize(
    ("schema", "valid", "invalid"),
    [
        (True, [1, "a", None, [], {}, 1.5, True], []),
        (False, [], [1, "a", None, [], {}, 1.5, True]),
        ({"type": "integer"}, [1], [True, "1", 1.5, None]),
        ({"type": "boolean"}, [True], [1, 0, "true"]),
        ({"type": ["number", "null"], "minimum": 1}, [1, 1.5, None], [0, "1", float("nan")]),
        ({"multipleOf": 0.5}, [0.5, 1, "text"], [0.3]),
        ({"enum": ["a"]}, ["a"], [1, None, ["a"], "b"]),
        ({"pattern": "^a$"}, ["a", 3, None], ["b", "ab"]),
        ({"items": {"type": "string"}, "minItems": 1}, [["a"], "a"], [[], [1]]),
        ({"properties": {"a": False}}, [{}, {"b": 1}, "a"], [{"a": 1}]),
        ({"additionalProperties": {"type": "string"}}, [{"a": "b"}, {}], [{"a": 1}]),
        ({"properties": {"a": True}, "additionalProperties": False}, [{"a": 1}], [{"b": 1}]),
        ({"propertyNames": {"pattern": "^a"}}, [{"ab": 1}, {}], [{"b": 1}]),
        ({"propertyNames": False}, [{}], [{"b": 1}]),
        ({"minProperties": 1, "required": ["a"]}, [{"a": 1}, 3], [{}, {"b": 1}]),
        ({"required": ["a", "b"]}, [{"a": 1, "b": 1}], [{"a": 1}]),
        ({"dependentRequired": {"a": ["b"]}}, [{}, {"b": 1}, {"a": 1, "b": 1}], [{"a": 1}]),
        ({"dependentSchemas": {"a": {"properties": {"b": False}}}}, [{"a": 1}, {"b": 1}], [{"a": 1, "b": 1}]),
        ({"dependentSchemas": {"a": False}}, [{"b": 1}], [{"a": 1}]),
        ({"if": {"type": "object"}, "then": {"required": ["a"]}, "else": {"type": "string"}}, [{"a": 1}, "b"], [{}, 1]),
        ({"if": {"required": ["a"]}, "then": {"required": ["b"]}}, [{}, {"a": 1, "b": 1}, 1], [{"a": 1}]),
        ({"if": {"required": ["a"]}, "then": False, "else": True}, [{}], [{"a": 1}]),
        ({"$ref": "#/$defs/a", "required": ["b"], "$defs": {"a": {"required": ["a"]}}}, [{"a": 1, "b": 1}], [{"a": 1}, {"b": 1}]),
    ],
)  # fmt: skip
def test_each_keyword_means_what_it_means_to_the_library(schema, valid, invalid):
    test = compiled(schema) if isinstance(schema, dict) else compiled({"if": {}, "then": schema})
    library = Draft202012Validator(schema)
    assert [value for value in valid if not (test(value) and library.is_valid(value))] == []
    assert [value for value in invalid if test(value)] == []


@pytest.mark.parametrize(
    "schema",
    [
        {"const": 3},
        {"not": {}},
        {"properties": {"a": {"anyOf": []}}},
        {"$ref": "urn:else:where"},
        {"$defs": {"a": {"oneOf": []}}, "items": {"$ref": "#/$defs/a"}},
        {"enum": ["a", 1]},
        {"multipleOf": 0.1},
        {"if": {"minimum": 3}},
        {"if": {"type": "integer"}},
    ],
)
def test_a_keyword_that_is_not_known_is_refused_when_it_is_asked(schema):
    with pytest.raises((ValueError, KeyError)):
        list(map(compiled(schema), ({"a": 1}, [1], 1)))


@pytest.mark.parametrize("name", ["programme", "athlete", "exercises", "team"])
def test_every_part_of_our_schemas_can_be_compiled(name):
    schema = schemas.load(name)
    compiler, waiting, parts = _Compiler(schema), [schema], 0
    while waiting:
        part = waiting.pop()
        if isinstance(part, dict):
            compiler.table(part)
            parts += 1
            waiting += [part[keyword] for keyword in ("items", "additionalProperties") if keyword in part]
            waiting += [one for keyword in ("$defs", "properties") for one in part.get(keyword, {}).values()]
    assert parts > 20
