"""What stands at an offset of a text, and which keys lead there."""

from __future__ import annotations

from pathlib import Path

import pytest

from spotline.lint.editor.caret.node_path import NodePath, node_path_at
from spotline.lint.syntax.builder import parse
from spotline.lint.syntax.tree import Mapping, Scalar, Sequence

PLAN = """\
programme: Test
athlete: {name: Mara, best lifts: {back squat: 100 kg}}
weeks: 4
shared:
  easy: &easy {reps: 10-12, rir: 3}
  trunk: &trunk {exercise: plank, sets: 3, hold: 40 s}
sessions:
  - session: "Lower A"  # heavy
    day: monday
    exercises:
      - exercise: {1-3: back squat, 4: front squat}
        sets: {1-3: 3, 4: 2}
        load: 75 %
        or: [leg press, hack squat]
      - {exercise: seated leg curl, <<: *easy, sets: 4}
      - superset:
          - {exercise: leg extension, <<: *easy, sets: 2}
          - *trunk
      - circuit:
          rounds: 3
          exercises:
            - {exercise: push-up, reps: 8}
  - session: Upper
    exercises:
      - exercise: bench press
        work:
          - {sets: 1, reps: 3, rpe: 8}
          - {sets: 3, reps: 5, load: 70 %}
"""


def path_to(needle: str, within: int = 0, text: str = PLAN) -> NodePath:
    """What stands at some words of a text."""
    root = parse("plan.programme.yaml", text).root
    assert root is not None
    return node_path_at(root, text.index(needle) + within)


@pytest.mark.parametrize(
    ("needle", "within", "part", "key_path", "written"),
    [
        ("programme: T", 0, "key", ("programme",), "programme"),
        ("programme: T", 9, "key", ("programme",), "programme"),  # just behind the key
        ("Test", 0, "value", ("programme",), "Test"),
        ("Test", 4, "value", ("programme",), "Test"),  # just behind the value
        ("Mara", 1, "value", ("athlete", "name"), "Mara"),
        ("back squat: 100", 2, "key", ("athlete", "best lifts", "back squat"), "back squat"),
        ('"Lower A"', 3, "value", ("sessions", 0, "session"), '"Lower A"'),
        ("1-3: back", 1, "key", ("sessions", 0, "exercises", 0, "exercise", "1-3"), "1-3"),
        ("front squat", 1, "value", ("sessions", 0, "exercises", 0, "exercise", "4"), "front squat"),
        ("hack", 1, "value", ("sessions", 0, "exercises", 0, "or", 1), "hack squat"),
        ("*easy, sets: 4", 1, "merged", ("sessions", 0, "exercises", 1), "*easy"),
        ("*trunk", 1, "value", ("sessions", 0, "exercises", 2, "superset", 1), "*trunk"),
        (
            "push-up",
            1,
            "value",
            ("sessions", 0, "exercises", 3, "circuit", "exercises", 0, "exercise"),
            "push-up",
        ),
        ("70 %", 1, "value", ("sessions", 1, "exercises", 0, "work", 1, "load"), "70 %"),
        ("# heavy", 3, "", ("sessions", 0), ""),
    ],
)
def test_what_stands_there(
    needle: str, within: int, part: str, key_path: tuple[str | int, ...], written: str
) -> None:
    found = path_to(needle, within)
    assert (found.part, found.key_path) == (part, key_path)
    assert PLAN[found.start : found.end] == written


@pytest.mark.parametrize(
    ("needle", "key", "parent_key", "weeks"),
    [
        ("front squat", "exercise", "exercises", ((4, 4),)),
        ("1-3: 3", "sets", "exercises", ((1, 3),)),
        ("hack", "or", "exercises", ()),
        ("back squat: 100", "back squat", "best lifts", ()),
        ("70 %", "load", "work", ()),
        ("Test", "programme", "", ()),
    ],
)
def test_the_key_it_stands_under(
    needle: str, key: str, parent_key: str, weeks: tuple[tuple[int, int], ...]
) -> None:
    found = path_to(needle)
    assert (found.key, found.parent_key, found.weeks) == (key, parent_key, weeks)


@pytest.mark.parametrize(
    "text", ["a", "[]", "{}", "a:\n", "a: *nowhere\n", "? [a]\n: b\n", "a: |\n  x\n  y\n", "{a}"]
)
def test_odd_texts_have_a_path_everywhere(text: str) -> None:
    root = parse("x", text).root
    for offset in range(len(text) + 1):
        assert root is None or node_path_at(root, offset).node is not None


def test_keys_lead_to_the_node_at_every_place_of_the_examples(root: Path) -> None:
    for path in sorted((root / "examples").rglob("*.yaml")):
        text = path.read_text(encoding="utf-8")
        tree = parse(str(path), text).root
        assert tree is not None
        parts = set()
        for offset in range(0, len(text) + 1, 3):
            found = node_path_at(tree, offset)
            assert found.start <= offset <= found.end
            node = tree
            for step, there in zip(found.key_path, found.nodes[1:], strict=True):
                if isinstance(node, Mapping):
                    node = node.entries[str(step)].value
                elif isinstance(node, Sequence):
                    node = node.items[int(step)]
                assert node is there
            if found.part == "value" and isinstance(node, Scalar) and not node.style and node.defined is None:
                assert text[found.start : found.end].split() == node.text.split()
            parts.add(found.part)
        assert {"key", "value", ""} <= parts
