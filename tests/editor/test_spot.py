"""What stands at a place of a text, and the part of the programme it belongs to."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from spotline.lint.editor.caret.tree_path import MappedReading, ProgrammeIndex, TreePath, path_at
from spotline.lint.editor.documents.view import View
from spotline.lint.syntax.builder import parse
from spotline.lint.syntax.tree import Mapping, Scalar, Sequence

Open = Callable[..., View]

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


def at_path(needle: str, within: int = 0, text: str = PLAN) -> TreePath:
    root = parse("plan.programme.yaml", text).root
    assert root is not None
    return path_at(root, text.index(needle) + within)


# In the tree


@pytest.mark.parametrize(
    ("needle", "within", "part", "keys", "words"),
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
    needle: str, within: int, part: str, keys: tuple[str | int, ...], words: str
) -> None:
    found = at_path(needle, within)
    assert (found.part, found.keys) == (part, keys)
    assert PLAN[found.start : found.end] == words


@pytest.mark.parametrize(
    ("needle", "name", "owner", "by_week"),
    [
        ("front squat", "exercise", "exercises", (4, 4)),
        ("1-3: 3", "sets", "exercises", (1, 3)),
        ("hack", "or", "exercises", None),
        ("back squat: 100", "back squat", "best lifts", None),
        ("70 %", "load", "work", None),
        ("Test", "programme", "", None),
    ],
)
def test_the_key_it_stands_under(needle: str, name: str, owner: str, by_week: tuple[int, int] | None) -> None:
    found = at_path(needle)
    assert (found.name, found.owner, found.by_week) == (name, owner, by_week)


@pytest.mark.parametrize(
    "text", ["a", "[]", "{}", "a:\n", "a: *nowhere\n", "? [a]\n: b\n", "a: |\n  x\n  y\n", "{a}"]
)
def test_odd_texts_have_a_spot_everywhere(text: str) -> None:
    root = parse("x", text).root
    for offset in range(len(text) + 1):
        assert root is None or path_at(root, offset).node is not None


def test_keys_lead_to_the_node_at_every_place_of_the_examples(root: Path) -> None:
    for path in sorted((root / "examples").rglob("*.yaml")):
        text = path.read_text(encoding="utf-8")
        tree = parse(str(path), text).root
        assert tree is not None
        parts = set()
        for offset in range(0, len(text) + 1, 3):
            found = path_at(tree, offset)
            assert found.start <= offset <= found.end
            node = tree
            for key, there in zip(found.keys, found.nodes[1:], strict=True):
                if isinstance(node, Mapping):
                    node = node.entries[str(key)].value
                elif isinstance(node, Sequence):
                    node = node.items[int(key)]
                assert node is there
            if found.part == "value" and isinstance(node, Scalar) and not node.style and node.defined is None:
                assert text[found.start : found.end].split() == node.text.split()
            parts.add(found.part)
        assert {"key", "value", ""} <= parts


# In the programme


@pytest.fixture(scope="module")
def standing(opened: Open) -> ProgrammeIndex:
    return MappedReading(opened(PLAN)).standing


@pytest.mark.parametrize(
    ("needle", "lines"),
    [
        ("75 %", ["back squat"]),
        ("sets: {1", ["back squat"]),
        ("hack", ["back squat"]),
        ("seated", ["seated leg curl"]),
        ("*easy, sets: 4", ["seated leg curl"]),
        ("*easy, sets: 2", ["leg extension"]),
        ("*trunk", ["plank"]),
        ("plank", ["plank"]),  # where the anchor stands
        ("push-up", ["push-up"]),
        ("70 %", ["bench press"]),
        ("work:", ["bench press"]),
        ("superset", []),
        ("Mara", []),
        ("monday", []),
    ],
)
def test_the_line_it_belongs_to(standing: ProgrammeIndex, needle: str, lines: list[str]) -> None:
    assert [line.names()[0].words for line in standing.lines(at_path(needle))] == lines


@pytest.mark.parametrize(
    ("needle", "sessions"),
    [
        ("Lower A", ["Lower A"]),
        ("monday", ["Lower A"]),
        ("push-up", ["Lower A"]),
        ("70 %", ["Upper"]),
        ("Mara", []),
    ],
)
def test_the_session_it_belongs_to(standing: ProgrammeIndex, needle: str, sessions: list[str]) -> None:
    assert [session.name for session in standing.sessions(at_path(needle))] == sessions


@pytest.mark.parametrize(
    ("key", "needle", "done"),
    [
        ("load", "75 %", [("back squat", (1, 2, 3)), ("front squat", (4,))]),
        ("sets", "3, 4: 2", [("back squat", (1, 2, 3))]),
        ("reps", "10-12", [("seated leg curl", (1, 2, 3, 4)), ("leg extension", (1, 2, 3, 4))]),
        ("rounds", "3\n          exercises", [("push-up", (1, 2, 3, 4))]),
        ("load", "70 %", [("bench press", (1, 2, 3, 4))]),
        ("reps", "75 %", []),
    ],
)
def test_what_is_done_by_a_value(
    standing: ProgrammeIndex, key: str, needle: str, done: list[tuple[str, tuple[int, ...]]]
) -> None:
    found = at_path(needle)
    entries = standing.entries(key, found.start, found.end)
    assert [(entry.name, standing.weeks[entry]) for entry in entries] == done


def test_blocks(opened: Open) -> None:
    text = """\
programme: Test
blocks:
  - {name: One, weeks: 2, sessions: [{session: A, exercises: [{exercise: back squat, sets: 3}]}]}
  - {name: Two, weeks: 1, sessions: [{session: B, exercises: [{exercise: bench press, sets: 3}]}]}
"""
    held = MappedReading(opened(text)).standing
    for needle, name in (("One", "One"), ("back squat", "One"), ("weeks: 1", "Two"), ("bench", "Two")):
        block = held.block(at_path(needle, text=text))
        assert block is not None
        assert block.name == name
    assert held.block(at_path("Test", text=text)) is None


def test_a_programme_without_blocks_is_one(standing: ProgrammeIndex) -> None:
    block = standing.block(at_path("Test"))
    assert block is not None
    assert block.weeks == 4


def test_sessions_shared_by_an_alias_stand_in_both_blocks(opened: Open) -> None:
    text = """\
programme: Test
shared:
  both: &both [{session: A, exercises: [{exercise: back squat, sets: 3}]}]
blocks:
  - {name: One, weeks: 2, sessions: *both}
  - {name: Two, weeks: 1, sessions: *both}
"""
    held = MappedReading(opened(text)).standing
    assert [one.block.name for one in held.sessions(at_path("A,", text=text))] == ["One", "Two"]
    assert len(held.lines(at_path("back squat", text=text))) == 2


# While the text cannot be read


def test_the_last_readable_text_is_gone_by(opened: Open) -> None:
    now = PLAN.replace("weeks: 4", "weeks: 4\nfocus: [legs")
    view = opened(PLAN, now=now)
    mapped = MappedReading(view)
    assert not mapped.current
    at = now.index("75 %")
    found = mapped.at(at)
    assert found is not None
    assert found.words == "75 %"
    assert mapped.stretch(found.start, found.end) == (at, at + 4)
    assert mapped.at(now.index("focus") + 2) is None  # new since
    for offset in range(len(now)):
        held = mapped.back(offset)
        assert held is None or mapped.there(held) == offset


def test_a_readable_text_needs_no_other(opened: Open) -> None:
    now = PLAN.replace("75 %", "77.5 %")
    mapped = MappedReading(opened(PLAN, now=now))
    assert mapped.current
    found = mapped.at(now.index("77.5 %"))
    assert found is not None
    assert found.words == "77.5 %"


def test_what_is_left_of_a_rewritten_stretch(opened: Open) -> None:
    now = PLAN.replace("sets: {1-3: 3, 4: 2}", "sets: {1-3: 3, 4")
    mapped = MappedReading(opened(PLAN, now=now))
    assert not mapped.current
    start, end = PLAN.index("exercise: {1"), PLAN.index("      - {exercise: seated")
    assert mapped.around(start, end) == (start, end - 4)
    assert mapped.stretch(start, end) is None


def test_settings_are_read_for_the_editor(opened: Open) -> None:
    text = "weekly limits: {chest: 12}\n"
    mapped = MappedReading(opened(text, name="spotline.yaml"))
    found = mapped.at(text.index("chest"))
    assert found is not None
    assert found.path == ("weekly limits", "chest")
    assert mapped.standing.ledgers == ()


def test_a_text_that_was_never_readable_has_no_spot(opened: Open) -> None:
    assert MappedReading(opened("sessions: [\n")).at(3) is None
