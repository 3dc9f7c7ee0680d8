"""Plain texts, read without the YAML library: the same tree, places and findings as the library gives."""

import random
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.syntax.event_builder import EventBuilder
from spotline.lint.syntax.plain_builder import PlainBuilder
from spotline.lint.syntax.tree import Mapping, Node, Reading, Scalar, Sequence
from spotline.lint.text.places import Text
from spotline.tests.benchmark_corpus import programme

ROOT = Path(__file__).parent.parent.parent
FILES = sorted((*ROOT.glob("examples/**/*.yaml"), *ROOT.glob("tests/**/*.yaml")))


def told(node: Node | None) -> object:
    """All that a node holds, and all below it."""
    if node is None:
        return None
    own = (type(node).__name__, node.start, node.end, repr(node.plain), node.size, node.defined)
    if isinstance(node, Scalar):
        return (*own, node.text, node.style)
    if isinstance(node, Sequence):
        return (*own, *map(told, node.items))
    assert isinstance(node, Mapping)
    return (
        *own,
        *((key, told(one.key), told(one.value), one.merged) for key, one in node.entries.items()),
    )


def found(reading: Reading) -> list[object]:
    return [
        (one.rule, one.place.start, one.place.end, one.counted, one.wanted, one.change)
        for one in reading.findings
    ]


def by_library(content: str) -> Reading:
    builder = EventBuilder(Text("x", content))
    builder.build(content)
    builder.findings.finish()
    return builder.reading


def is_plain(content: str) -> bool:
    """Whether a text is read as a plain one; if so, it is held to what the library gives."""
    printed = content.replace("\n", " ").replace("\t", " ").replace("\r", " ")
    builder = PlainBuilder(Text("x", content))
    if not printed.isprintable() or not builder.build():
        return False
    builder.findings.finish()
    other = by_library(content)
    assert told(builder.reading.root) == told(other.root), content
    assert found(builder.reading) == found(other), content
    return True


PLAIN = [
    "a: 1",
    "a : b c  # said\n\n# alone\nd: 1:30\n",
    "a: it's 5' \"high\" (x) [y] {z} & * ! | > ` @ %",
    "a:\n  b: -5\n  c: 3-5\n  1: ~\n",
    "a:\n- b\n- c: d\n  e: f\ng: h\n",
    "a:\n  -   b\n  - c:  # what follows\n      - d\n",
    "a: [b, 'c: d', \"e #f\", [1, {g: h, i: []}], {}, j k]  # end\n",
    "a: [b, c: d, {e: {f: 1:30}}, 'g': [-1]]\n",
    "a: {'b': c, d e: f }\n",
    "a: yes\nb: [on, 012, 1_000]\nc: 99999999999999999999\n",
    "a: 1\nb: 2\na: 3\n",
    "é: ü # ö\n漢字: [漢, 字]\n",
    "a: ''\nb: \"\"\n",
    "on: off\nnull: true\n",
    "a:\n  - b: {1: 3, 2: [4, 'x']}  # said\n    c: 1\n  - b: {1: 3, 2: [4, 'x']}  # said\n    c: 1\n",
    "a:\n  b: []\n  c: {}\nd:\n  c: {}\n  b: []\n",
    "a:\n  b: 1\n  b: 1\nc:\n  b: 1\n",
    "a:\n  b: {c: 1, c: 1}\nd:\n  b: {c: 1, c: 1}\n",
    "a: {b: yes}\nc:\n  a: {b: yes}\n",
    "".join(f"a{number}:\n  b: [yes, no]\n  c: on\n" for number in range(30)),
]
LEFT = [
    "",
    "# nothing\n",
    "a",
    "- a\n",
    " a: 1\n",
    "a:\n",
    "a:\nb: 1\n",
    "a: b\n  c\n",
    "a: 'b\n  c'\n",
    "a: [b,\n  c]\n",
    "a: [b,]\n",
    "a: [b\n",
    "a: 'it''s'\n",
    'a: "\\n"\n',
    "a: >\n  b\n",
    "a: &b c\nd: *b\n",
    "a: !!str 1\n",
    "<<: {a: b}\n",
    "a: {<<: {b: c}}\n",
    "? a\n: b\n",
    "a: b: c\n",
    "a: b:\n",
    "a:\n    - b\n  - c\n",
    "a:\n  b: 1\n   c: 2\n",
    "a:\n  - b\n  c: 1\n",
    "a: 1\n- b\n",
    "a:\n  - - b\n",
    "a:\n  -\n    b: c\n",
    "a: {{b}}\n",
    "a: [b]c\n",
    "a: 'b'#c\n",
    "a: {b:c}\n",
    "a: {b: , c: d}\n",
    "---\na: 1\n",
    "a: 1\n...\n",
    "%YAML 1.2\n---\na: 1\n",
    "a:\tb\n",
    "a: b\r\n",
    "a: -\n",
    "a: - b\n",
    "a: @b\n",
    "a: " + "[" * 31 + "]" * 31,
    "".join(f"{'  ' * depth}a:\n" for depth in range(31)) + "  " * 31 + "b: c\n",
    "a" * 201 + ": b\n",
    "a: [" + "b, " * 400 + "c]\n",
]


@pytest.mark.parametrize("content", PLAIN)
def test_plain_texts_are_read_here(content):
    assert is_plain(content)


@pytest.mark.parametrize("content", LEFT)
def test_what_is_not_surely_plain_is_left_to_the_library(content):
    assert not is_plain(content)


def test_files_give_the_same_tree():
    plain = [is_plain(path.read_text(encoding="utf-8")) for path in FILES]
    assert len(plain) > 200
    assert plain.count(True) > 0.65 * len(plain)
    assert all(is_plain(programme(lines, seed)) for lines in (60, 400) for seed in range(5))


PIECES = [*" \n:-#,[]{}'\"&*!|>%@`?\\<=.~01aé\t", ": ", "\n- ", "  - ", " #", "- - ", "---\n", "...\n", "? "]
PIECES += [
    "<<: ",
    "{{",
    "''",
    '""',
    ": |\n",
    " : ",
    "\n\n",
    "\n  ",
    ": [a, b]\n",
    ": {a: 1}\n",
    "yes",
    "1:30",
]


def mutants(many: int) -> list[str]:
    """Files, and cuttings of files, with a few letters that come, go or change; the same each time."""
    chance = random.Random(11)
    texts = [text for path in FILES if len(text := path.read_text(encoding="utf-8")) < 6000]
    made = []
    for _ in range(many):
        text = chance.choice(texts)
        lines = text.split("\n")
        first = chance.randrange(len(lines))
        cut = lines[first : first + chance.randrange(1, 15)]
        indent = min((len(line) - len(line.lstrip()) for line in cut if line.strip()), default=0)
        text = "\n".join(line[indent:] for line in cut)
        text = f"a:\n{text}" if text.startswith("- ") else text
        for _ in range(chance.choice((1, 1, 2, 3))):
            at = chance.randrange(len(text) + 1)
            text = text[:at] + chance.choice(["", *PIECES]) + text[at + chance.randrange(2) :]
        made.append(text)
    return made


def test_files_with_slips_give_the_same_tree():
    plain = [is_plain(content) for content in mutants(4000)]
    assert 600 < plain.count(True) < 3200


@given(st.lists(st.sampled_from([*PIECES, "a", "b c", "\n", "\n", "a: ", "\na: "]), max_size=14).map("".join))
def test_any_pieces_give_the_same_tree(content):
    is_plain(f"a: {content}")
    is_plain(content)
