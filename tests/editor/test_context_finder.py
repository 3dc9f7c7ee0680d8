"""Where the caret stands: as the tree has it where a text can be read, and by indentation where it cannot."""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
import yaml
from hypothesis import example, given, settings
from hypothesis import strategies as st

from spotline.lint.editor.caret.context import CaretContext
from spotline.lint.editor.caret.context_finder import context_at
from spotline.lint.syntax.builder import parse
from spotline.lint.syntax.tree import Mapping, Node, Scalar, Sequence
from spotline.tests.steps import growth

ROOT = Path(__file__).parents[2]
FILES = sorted([*ROOT.glob("examples/**/*.yaml"), *ROOT.glob("tests/published/*.yaml")])
SHORT = [file for file in FILES if file.stat().st_size < 1800]


def at(text: str) -> tuple[CaretContext, str]:
    """The context at the bar in a text, and the text without it."""
    before, after = text.split("|", 1)
    return context_at(before + after, len(before)), before + after


def nothing(found: CaretContext) -> bool:
    """Whether neither a key nor a value nor an item may stand there."""
    return (found.takes_key, found.takes_value, found.item_path) == (False, False, None)


def scalars(
    node: Node, chain: tuple[str | int, ...] = ()
) -> Iterator[tuple[tuple[str | int, ...], bool, Scalar]]:
    """Every key and value where it is written: the chain to it, whether it is a key, and itself."""
    if node.defined is not None:
        return
    if isinstance(node, Scalar):
        if node.style != "*":
            yield chain, False, node
    elif isinstance(node, Sequence):
        for index, item in enumerate(node.items):
            yield from scalars(item, (*chain, index))
    elif isinstance(node, Mapping):
        for key, entry in node.entries.items():
            if not entry.merged:
                yield chain, True, entry.key
                yield from scalars(entry.value, (*chain, key))


def keys_at(root: Node | None, chain: tuple[str | int, ...]) -> set[str]:
    """The keys written in the group at a chain."""
    node = root
    for step in chain:
        node = node.items[step] if isinstance(step, int) else node.entries[step].value
    return {key for key, entry in node.entries.items() if not entry.merged}


def check_against_tree(content: str) -> int:
    """Compares start, middle and end of every scalar with the tree; how many places those were."""
    root = parse("x", content).root
    assert root is not None
    places = 0
    for chain, is_key, scalar in scalars(root):
        written = content[scalar.start : scalar.end]
        for offset in {scalar.start, (scalar.start + scalar.end) // 2, scalar.end}:
            line = content[:offset].replace("\r", "\n").rpartition("\n")[2]
            if offset != scalar.start and not line.strip():
                continue  # within a text of several lines, before a line's first word
            found = context_at(content, offset)
            here = content[max(0, offset - 30) : offset] + "|" + content[offset : offset + 10]
            assert found.key_path == chain, here
            assert len(found.sibling_keys) == len(chain) + 1, here
            places += 1
            lines = re.split(r"\r\n|\r|\n", content[scalar.start : offset])
            if scalar.style in ("|", ">") or len(lines) > 1:
                assert nothing(found), here
            elif written.splitlines() == [written]:
                assert found.takes_value != is_key, here
                assert found.takes_key or not is_key, here
                assert content[found.start : found.end].strip("'\"") == written.strip("'\""), here
            if is_key:
                assert found.sibling_keys[-1] - {"<<", scalar.text} == keys_at(root, chain) - {scalar.text}, (
                    here
                )
    return places


def sound(file: Path) -> str:
    """Its text without the comma that cuts a value in two, which the tree puts together again."""
    return file.read_text(encoding="utf-8").replace("load: 37,5 kg", "load: 37.5 kg")


@pytest.mark.parametrize("ends", ["\n", "\r\n", "\r"], ids=["LF", "CRLF", "CR"])
def test_it_agrees_with_the_tree_on_every_example(ends: str) -> None:
    places = sum(
        check_against_tree(sound(file).replace("\n", ends))
        for file in FILES
        if parse("x", file.read_text(encoding="utf-8")).root is not None
    )
    assert places > 8000


class Indented(yaml.SafeDumper):
    """Sets lists in behind their key, which PyYAML does not by itself."""

    def increase_indent(self, flow: bool = False, indentless: bool = False) -> None:
        super().increase_indent(flow, False)


WAYS = {
    "lists at their key's column": {"default_flow_style": False},
    "lists set in, four columns": {"default_flow_style": False, "Dumper": Indented, "indent": 4},
    "narrow lines": {"default_flow_style": False, "width": 30},
    "all in brackets, over many lines": {"default_flow_style": True, "width": 40},
    "leaves in brackets": {"default_flow_style": None, "width": 50},
    "single quotes": {"default_style": "'", "default_flow_style": False, "width": 60},
    "double quotes": {"default_style": '"', "width": 1000},
}


@pytest.mark.parametrize("way", WAYS)
def test_it_agrees_with_the_tree_however_the_same_is_written(way: str) -> None:
    options = {"Dumper": yaml.SafeDumper, "allow_unicode": True, "sort_keys": False, **WAYS[way]}
    for file in SHORT[::6]:
        root = parse("x", file.read_text(encoding="utf-8")).root
        plain = json.loads(json.dumps(root.plain)) if root else {}
        assert check_against_tree(yaml.dump(plain, **options))


@pytest.mark.parametrize(
    "options", [{"indent": 2}, {}, {"separators": (",", ":")}], ids=["set in", "one line", "tight"]
)
def test_it_agrees_with_the_tree_on_json(options: dict[str, object]) -> None:
    for file in SHORT[1::6]:
        root = parse("x", file.read_text(encoding="utf-8")).root
        assert check_against_tree(json.dumps(root.plain if root else {}, **options))


WRITTEN = """\
"programme": Odd # a comment: here
athlete: {name: 'Ida', # who
  level: novice}
shared:
  heavy: &heavy {reps: 4, "rest": 3 min}
  list: &list
  - a
  - - b
    - c: d
note: >-
  One line: and
  - another
sessions: # all of them

  - &first
    session: "Lower: A"
    exercises:
    - exercise: back squat
      <<: *heavy
      sets: {1-3: 3, 4: 2}
      # said here
      note: on two
        lines
    -   exercise: plank
        <<: [*heavy]
        sets: !!int 3
  - *first
"""


@pytest.mark.parametrize("ends", ["\n", "\r\n"])
def test_it_agrees_with_the_tree_on_every_way_of_writing(ends: str) -> None:
    assert check_against_tree(WRITTEN.replace("\n", ends)) > 80


# Half typed

LINES = (
    "programme: x\nsessions:\n  - session: A\n    exercises:\n      - exercise: back squat\n        sets: 3\n"
)
LINE = ("sessions", 0, "exercises", 0)
NEXT = ("sessions", 0, "exercises", 1)

KEYS = [
    # text with the caret, the chain, the word so far, the keys beside
    ("|", (), "", set()),
    ("prog|", (), "prog", set()),
    ("goal: power\nprog|", (), "prog", {"goal"}),
    ("---\nprogramme: x\n|", (), "", {"programme"}),
    ("prog|\ngoal: power\n", (), "prog", {"goal"}),
    (LINES + "        |", LINE, "", {"exercise", "sets"}),
    (LINES + "        re|", LINE, "re", {"exercise", "sets"}),
    (LINES + "        re|\n        rest: 3 min\n  - session: B\n", LINE, "re", {"exercise", "sets", "rest"}),
    (LINES + "        re|\n\n# said\n        rest: 3 min\n", LINE, "re", {"exercise", "sets", "rest"}),
    (LINES + "    |", ("sessions", 0), "", {"session", "exercises"}),
    (LINES + "|", (), "", {"programme", "sessions"}),
    (LINES + "      - |\n        reps: 3\n", NEXT, "", {"reps"}),
    (LINES + "      - {|", NEXT, "", set()),
    (LINES + "      - {exercise: plank, se|", NEXT, "se", {"exercise"}),
    (LINES + "      - {exercise: plank, |}\n  - session: B\n", NEXT, "", {"exercise"}),
    (LINES + "      - {exercise: plank, |, rest: 3 min}\n", NEXT, "", {"exercise", "rest"}),
    (LINES + "      - {exercise: plank, se|\n      - {exercise: dip, reps: 3}\n", NEXT, "se", {"exercise"}),
    ("athlete: {\n  name: x,\n  |\n}\ngoal: power\n", ("athlete",), "", {"name"}),
    ("athlete: {\n|\n}\n", ("athlete",), "", set()),
    ("sets: {1-3: 3, |}", ("sets",), "", {"1-3"}),
    ("sets:\n  1-3: 3\n  |", ("sets",), "", {"1-3"}),
    ("'prog|ramme': x", (), "prog", set()),
    ("athlete: {'na|me': 1}", ("athlete",), "na", set()),
    ("a:\n  |\n  b: 1\n", ("a",), "", {"b"}),
    ("sessions:\n- session: A\n  |", ("sessions", 0), "", {"session"}),
    ("sessions:\r\n- session: A\r\n  da|\r\n", ("sessions", 0), "da", {"session"}),
]


@pytest.mark.parametrize(("text", "chain", "word", "beside"), KEYS)
def test_a_key_is_typed(text: str, chain: tuple[str | int, ...], word: str, beside: set[str]) -> None:
    found, whole = at(text)
    assert found.takes_key
    assert found.key_path == chain
    assert whole[found.start : text.index("|")] == word
    assert found.sibling_keys[-1] == beside


VALUES = [
    # text with the caret, the chain, the word
    ("goal: |", ("goal",), ""),
    ("goal: hyp|", ("goal",), "hyp"),
    ("goal: hyp|  # what for\nphase: build", ("goal",), "hyp"),
    ("goal: 'hyp|", ("goal",), "hyp"),
    ('goal: "hyp|ertrophy"', ("goal",), "hypertrophy"),
    ("goal: back squ|at", ("goal",), "back squat"),
    ("goal:\n  hyp|", ("goal",), "hyp"),
    (LINES + "      - {exercise: squ|, sets: 3}\n", (*NEXT, "exercise"), "squ"),
    (LINES + "      - {exercise: squ|", (*NEXT, "exercise"), "squ"),
    ("focus: [|]", ("focus", 0), ""),
    ("focus: [legs, |", ("focus", 1), ""),
    ("focus: [le|gs, trunk]", ("focus", 0), "legs"),
    ("focus: [legs, # both\n  tr|unk]", ("focus", 1), "trunk"),
    ("or:\n  - dip\n  - pu|", ("or", 1), "pu"),
    ("or:\n- - |", ("or", 0, 0), ""),
    ("sets: {1-3: |", ("sets", "1-3"), ""),
    ("goal: &one |", ("goal",), ""),
]


@pytest.mark.parametrize(("text", "chain", "word"), VALUES)
def test_a_value_is_typed(text: str, chain: tuple[str | int, ...], word: str) -> None:
    found, whole = at(text)
    assert found.takes_value
    assert found.key_path == chain
    assert whole[found.start : found.end] == word


NOTHING = [
    "note: |>\n",
    "note: >\n  a\n  b|\n",
    "note: >\n  a: 1\n\n  |\n",
    "note: one\n  two|",
    'note: "one\n  two|"',
    "a: {b: 1}|",
    "a: {b: 1} |",
    "a: [{b: 1}|]",
    "a: {b: [1] |}",
    "a:\n    b: 1\n  |",
    "a:\n    b: 1\n  c|",
    "a:\n  |\n    b: 1\n",
    " | a: 1",
    "a |: 1",
    "a:| 1",
    "a: {b:| 1}",
    "a: !!in|t 1",
    "-   | b",
    "%YAML| 1.2",
    "a: *b\n  c|",
]


@pytest.mark.parametrize("text", NOTHING)
def test_nothing_may_stand_here(text: str) -> None:
    text = text.replace("|>", ">|", 1)
    found, _ = at(text)
    assert nothing(found)
    assert not found.anchor_sign


@pytest.mark.parametrize(
    ("text", "item"),
    [
        (LINES + "      |", NEXT),
        (LINES + "  |", ("sessions", 1)),
        ("sessions:\n- session: A\n|", ("sessions", 1)),
        ("sessions:\n  |\n  - session: A\n", ("sessions", 0)),
        ("a:\n- - b\n  |", ("a", 0, 1)),
    ],
)
def test_an_item_may_begin(text: str, item: tuple[str | int, ...]) -> None:
    assert at(text)[0].item_path == item


def test_where_a_list_hangs_on_its_keys_column_a_key_may_follow_too() -> None:
    found, _ = at("sessions:\n- session: A\n|\ngoal: power\n")
    assert found.takes_key
    assert (found.key_path, found.sibling_keys[-1]) == ((), {"sessions", "goal"})


@pytest.mark.parametrize("text", ["goal:|", "a: {b:|}", "- a\n-|", "focus: [legs,|]"])
def test_a_blank_has_to_come_first(text: str) -> None:
    found, _ = at(text)
    assert found.takes_value
    assert found.needs_space


@pytest.mark.parametrize(
    ("text", "sign", "word"),
    [
        ("a: *|", "*", ""),
        ("a: *he|avy", "*", "heavy"),
        ("a: {<<: *he|, b: 1}", "*", "he"),
        ("a: [*he|", "*", "he"),
        ("a: &he| 1", "&", "he"),
        ("a: {b: &|}", "&", ""),
        ("- &he|", "&", "he"),
    ],
)
def test_the_name_of_an_anchor_is_typed(text: str, sign: str, word: str) -> None:
    found, whole = at(text)
    assert found.anchor_sign == sign
    assert whole[found.start : found.end] == word
    assert nothing(found)


@pytest.mark.parametrize(
    "text",
    [
        "# spot|",
        "a: 1  # spot|",
        "a: {b: 1} # spot|",
        "a: {b: 1, # spot|\n c: 2}",
        "'a': 'b' # spot|",
        "a: *b # spot|",
        "a: > # spot|",
    ],
)
def test_a_comment_is_typed(text: str) -> None:
    found, whole = at(text)
    assert whole[found.comment_start :].startswith("# spot")
    assert nothing(found)


@pytest.mark.parametrize("text", ["a: b#c|", "a: '# c|'", "a: {b: c#d|}"])
def test_no_comment_is_typed(text: str) -> None:
    found, _ = at(text)
    assert found.comment_start == -1
    assert found.takes_value


def test_the_keys_beside_every_step_are_known() -> None:
    found, _ = at(
        "programme: x\nsessions:\n  - session: A\n    exercises:\n      - superset: [{sets: |}]\n        rest: 1 min\n    day: monday\ngoal: power\n"
    )
    assert found.key_path == ("sessions", 0, "exercises", 0, "superset", 0, "sets")
    assert found.sibling_keys == (
        {"programme", "sessions", "goal"},
        frozenset(),
        {"session", "exercises", "day"},
        frozenset(),
        {"superset", "rest"},
        frozenset(),
        {"sets"},
        frozenset(),
    )


MUTATED = [file.read_text(encoding="utf-8") for file in SHORT[:8]] + [WRITTEN]


@settings(max_examples=400, deadline=None)
@given(
    st.sampled_from(MUTATED),
    st.lists(
        st.tuples(
            st.floats(0, 1), st.integers(0, 40), st.text("{}[]:,-#&*!|>'\"?\n\r\t é😀ab1\ufeff", max_size=6)
        ),
        max_size=5,
    ),
    st.floats(0, 1),
)
@example("", [], 0.0)
def test_no_text_makes_it_fail(text: str, edits: list[tuple[float, int, str]], caret: float) -> None:
    for where, gone, put in edits:
        start = int(where * len(text))
        text = text[:start] + put + text[start + gone :]
    offset = int(caret * len(text))
    found = context_at(text, offset)
    assert len(found.sibling_keys) == len(found.key_path) + 1
    assert 0 <= found.start <= offset <= found.end <= len(text) or found.comment_start >= 0
    assert "\n" not in text[found.start : found.end]


def test_brackets_deeper_than_are_read_take_no_steps() -> None:
    def work(depth: int) -> Callable[[], object]:
        text = "sessions: " + "[" * depth
        return lambda: context_at(text, len(text))

    assert growth(work, 500) < 1.2
