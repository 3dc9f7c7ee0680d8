"""Each list of words stands in one place of the code, and the schemas hold just these words."""

from __future__ import annotations

import ast
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from spotline.lint.body import catalogue, derive, mechanics, name_bags, search_words
from spotline.lint.counting import credits, set_group
from spotline.lint.engine.registry import SCOPES, all_rules
from spotline.lint.findings.finding import SEVERITIES
from spotline.lint.model.sessions import WEEKDAYS
from spotline.lint.reporters.rules_text import GRADES, LOOKS_AT
from spotline.lint.team.presets import PRESETS
from spotline.lint.weighing import difference, tally

ROOT = Path(__file__).parent.parent
SCHEMAS = {
    path.stem: json.loads(path.read_text(encoding="utf-8")) for path in (ROOT / "schema").glob("*.json")
}
CODE = {
    path.relative_to(ROOT).as_posix(): ast.parse(path.read_text(encoding="utf-8"))
    for folder in ("lint", "rules")
    for path in (ROOT / folder).rglob("*.py")
    if path.name not in ("built.py", "built_names.py")
}

Words = tuple[str, ...]


def typed(file: str, name: str) -> Words:
    """The words of a ``Literal`` that a module declares, without the empty one."""
    (declared,) = (
        node.value
        for node in ast.walk(CODE[file])
        if isinstance(node, ast.Assign) and ast.unparse(node.targets[0]) == name
    )
    assert isinstance(declared, ast.Subscript)
    assert ast.unparse(declared.value) == "Literal"
    return tuple(word for word in ast.literal_eval(declared.slice) if word)


GOALS = typed("lint/model/programme.py", "Goal")
PHASES = typed("lint/model/sessions.py", "Phase")
CONFIDENCES = typed("lint/findings/finding.py", "Confidence")


def enums(part: Any, path: str) -> Iterator[tuple[str, Words]]:
    """Every list of words below a part of a schema, by the keys that lead to it."""
    if isinstance(part, dict):
        words = part.get("enum", ())
        if words and all(isinstance(word, str) for word in words):
            yield path, tuple(words)
        for key, inner in part.items():
            yield from enums(inner, f"{path} {key}")
    elif isinstance(part, list):
        for inner in part:
            yield from enums(inner, path)


LISTS = {path: words for name, schema in SCHEMAS.items() for path, words in enums(schema, name)}

ENTRY, OWN, FOUND = (
    "body-exercises items properties",
    "exercises $defs exercise properties",
    "exercises-found $defs",
)

HOMES: list[tuple[Words, Words]] = [
    (
        catalogue.LEVELS,
        (
            "athlete properties level",
            "team $defs situation properties level",
            f"{ENTRY} level",
            f"{OWN} level",
            f"{FOUND} exercise properties level",
        ),
    ),
    (
        catalogue.PATTERNS,
        (f"{ENTRY} pattern", f"{OWN} pattern", "body-muscles $defs part properties patterns items"),
    ),
    (catalogue.RANKS, (f"{ENTRY} rank", f"{OWN} rank")),
    (catalogue.KINDS, (f"{ENTRY} kind", f"{OWN} kind")),
    (catalogue.IMPLEMENTS, (f"{ENTRY} implement", f"{OWN} implement")),
    (catalogue.STANCES, (f"{ENTRY} stance", f"{OWN} stance")),
    (
        derive.CREDITS[::-1],
        (
            "body-exercises $defs stated properties as",
            "exercises $defs stated properties as",
            f"{FOUND} credit",
        ),
    ),
    ((*mechanics.LENGTHS, ""), (f"{FOUND} muscle properties length",)),
    (
        (derive.DIRECT, derive.INDIRECT, search_words.MAIN, search_words.ASSISTING, ""),
        (f"{FOUND} exercise properties role",),
    ),
    (WEEKDAYS, ("athlete $defs weekday else",)),
    (GOALS, ("programme properties goal", "team $defs situation properties goal")),
    (PHASES, ("programme $defs phase", "team $defs situation properties phase")),
    (
        SEVERITIES[::-1],
        (
            "proposals $defs finding properties severity",
            "proposals $defs staying properties severity",
            "review $defs finding properties severity",
            "review $defs following properties severity",
            "review $defs kept properties severity",
            "rules $defs rule properties severity",
            "team $defs severity",
        ),
    ),
    (("run", "skip", *SEVERITIES[::-1]), ("team $defs ruleSwitch",)),
    (
        CONFIDENCES,
        ("review $defs finding properties confidence", "rules $defs rule properties confidence"),
    ),
    (
        tuple(word for word in CONFIDENCES if word != "fact"),
        ("body-sources items properties kind", "rules $defs source properties kind"),
    ),
    (
        (credits.FRACTIONAL, credits.DIRECT, credits.TOTAL),
        ("team $defs counting",),
    ),
    (tuple(SCOPES.values()), ("rules $defs rule properties looks at",)),
    (tuple(GRADES), ("body-sources items properties grade", "rules $defs source properties grade")),
    (tuple(PRESETS), ("team $defs preset",)),
    (difference.PARTS, ("changes $defs change properties part",)),
    (tally.BY, ("tally $defs table properties by",)),
    (name_bags.KINDS, ("body-name-words items properties kind",)),
    (
        (
            search_words.AREA,
            search_words.ACTION,
            search_words.PATTERN,
            search_words.IMPLEMENT,
            search_words.KIND,
            search_words.STANCE,
            search_words.LEVEL,
            search_words.SIDES,
            search_words.LENGTH,
            search_words.NAME,
        ),
        (f"{FOUND} meaning properties kind",),
    ),
]
"""Words as the code has them, and where the schemas have the same ones in the same order."""

SHARED: list[Words] = [
    (f"{ENTRY} grip", f"{OWN} grip"),
    (f"{ENTRY} axial", f"{OWN} axial", f"{FOUND} exercise properties spine load"),
    (f"{ENTRY} capacity", f"{OWN} capacity", f"{FOUND} exercise properties capacity"),
    ("body-actions items properties joint", "body-muscles items properties crosses items"),
]
"""Words of which no code has a list: where they stand, the data's own schema first."""

SINGLE = {
    "body-muscles items properties region",
    "body-muscles $defs role",
    "body-muscles $defs part properties role",
    "programme $defs strain",
    "programme $defs method",
    "programme $defs side else",
    "review $defs kept properties by",
    "changes $defs change properties kind",
    "code-quality $defs issue properties severity",
    "rules $defs rule properties rests in items",
    "tally $defs row properties mark",
}
"""Lists that stand in one schema and nowhere else."""


@pytest.mark.parametrize(
    ("words", "place"), [(words, place) for words, places in HOMES for place in places], ids=str
)
def test_a_schema_holds_the_words_of_the_code(words: Words, place: str) -> None:
    assert LISTS[place] == words


@pytest.mark.parametrize(
    ("first", "other"), [(first, other) for first, *others in SHARED for other in others]
)
def test_schemas_agree_on_words_that_no_code_lists(first: str, other: str) -> None:
    assert LISTS[other] == LISTS[first]


def test_every_list_of_every_schema_is_looked_at() -> None:
    looked_at = {place for _, places in HOMES for place in places}
    looked_at |= {place for places in SHARED for place in places}
    assert looked_at.isdisjoint(SINGLE)
    assert set(LISTS) == looked_at | SINGLE


def test_a_list_that_stands_once_is_no_copy() -> None:
    for place in SINGLE:
        assert [other for other in LISTS if LISTS[other] == LISTS[place]] == [place]


def test_the_types_hold_the_words_that_the_code_lists() -> None:
    assert typed("lint/findings/finding.py", "Severity") == SEVERITIES[::-1]


def test_words_that_keys_of_a_table_repeat() -> None:
    assert tuple(LOOKS_AT) == tuple(SCOPES.values())
    assert set(credits.INDIRECT_WEIGHT) == {credits.FRACTIONAL, credits.DIRECT, credits.TOTAL}


@pytest.mark.parametrize(
    ("place", "joints"),
    [
        (SCHEMAS["body-exercises"]["items"]["properties"]["path"], mechanics.RANGES),
        (SCHEMAS["exercises"]["$defs"]["path"], mechanics.RANGES),
        (SCHEMAS["body-actions"]["items"]["properties"]["turns"], mechanics.RANGES),
    ],
)
def test_joints_of_a_path_are_those_that_have_a_range(place: Any, joints: dict[str, Any]) -> None:
    assert tuple(place["properties"]) == tuple(joints)


# No second list in the code


def listed(tree: ast.AST) -> Iterator[Words]:
    """Every list, tuple and set of plain words, with the words that stand in it."""
    for node in ast.walk(tree):
        if isinstance(node, (ast.Tuple, ast.List, ast.Set)):
            yield tuple(
                item.value
                for item in node.elts
                if isinstance(item, ast.Constant) and isinstance(item.value, str)
            )


LITERALS = [(file, set(words) - {""}) for file, tree in CODE.items() for words in listed(tree)]

IN_TURN = ("heavy", "light")
"""Two words that rules take in turn: no list of what there is."""

COPIED = {*(words for words, _ in HOMES), *(LISTS[first] for first, *_ in SHARED)} - {IN_TURN}

TWICE = {"lint/findings/finding.py": SEVERITIES[::-1]}
"""Where a list and a type stand side by side: the type checker wants the words themselves."""


@pytest.mark.parametrize("words", sorted(COPIED), ids=lambda words: words[0])
def test_the_code_lists_words_once(words: Words) -> None:
    found = [file for file, one in LITERALS if one == set(words) - {""}]
    assert len(found) <= 1 + (TWICE.get(found[0]) == words if found else 0)


def test_a_second_list_is_seen() -> None:
    assert list(listed(ast.parse("LEVELS = ('novice', 'intermediate', 'advanced')"))) == [catalogue.LEVELS]


# Words that the code compares with

FIELDS: dict[str, Words] = {
    "goal": GOALS,
    "phase": PHASES,
    "level": catalogue.LEVELS,
    "pattern": catalogue.PATTERNS,
    "patterns": catalogue.PATTERNS,
    "implement": catalogue.IMPLEMENTS,
    "stance": catalogue.STANCES,
    "capacity": LISTS[f"{ENTRY} capacity"],
    "axial": LISTS[f"{ENTRY} axial"],
    "severity": SEVERITIES,
    "confidence": CONFIDENCES,
}


def compared(tree: ast.AST) -> Iterator[tuple[str, str]]:
    """Each attribute that is compared with a plain word, and the word."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Compare):
            sides = [node.left, *node.comparators]
            names = [side.attr for side in sides if isinstance(side, ast.Attribute)]
            words = [
                inner.value
                for side in sides
                for inner in ([side] if isinstance(side, ast.Constant) else getattr(side, "elts", ()))
                if isinstance(inner, ast.Constant) and isinstance(inner.value, str)
            ]
            yield from ((name, word) for name in names for word in words)


def test_what_a_field_is_compared_with_is_a_word_of_it() -> None:
    found = [(file, *one) for file, tree in CODE.items() for one in compared(tree) if one[0] in FIELDS]
    assert {field for _, field, _ in found} >= {"goal", "phase", "level", "patterns", "implement", "stance"}
    assert [one for one in found if one[2] and one[2] not in FIELDS[one[1]]] == []


def test_a_word_that_no_field_has_is_seen() -> None:
    assert list(compared(ast.parse("one.goal == 'size' or 'jog' in one.patterns"))) == [
        ("goal", "size"),
        ("patterns", "jog"),
    ]


def test_words_for_a_part_of_a_list_belong_to_it() -> None:
    assert set(set_group.FAST_KINDS) < set(catalogue.KINDS)
    assert set(set_group.BROKEN_UP) < set(LISTS["programme $defs method"])
    assert set(catalogue.COMPOUND) < set(catalogue.PATTERNS)


def test_limits_that_depend_on_a_situation_name_one_that_there_is() -> None:
    situations = {"goal": GOALS, "level": catalogue.LEVELS, "phase": PHASES}
    named = [
        item for rule in all_rules() for option in rule.options for by, _ in option.by for item in by.items()
    ]
    assert named
    assert [(what, word) for what, word in named if word not in situations[what]] == []


@pytest.mark.parametrize(
    ("limit", "words"), [("goals", GOALS), ("phases", PHASES), ("levels", catalogue.LEVELS)]
)
def test_limits_that_list_words_list_those_that_there_are(limit: str, words: Words) -> None:
    defaults = [option.default for rule in all_rules() for option in rule.options if option.name == limit]
    assert defaults
    for default in defaults:
        assert isinstance(default, tuple)
        assert set(default) <= set(words)
