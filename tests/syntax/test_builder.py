"""The tree of a YAML text: its data, values by YAML 1.2, and exact places for every way of writing."""

import datetime
import json
import re
import subprocess
import sys

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st
from yaml.loader import BaseLoader

from spotline.lint.syntax import event_builder
from spotline.lint.syntax.builder import parse
from spotline.lint.syntax.plain_builder import PlainBuilder
from spotline.lint.syntax.scalars import OutOfRangeError, core_value, taken_elsewhere
from spotline.lint.syntax.tree import Mapping, Node, Scalar, Sequence
from spotline.tests.steps import growth


def tree(content: str) -> Node:
    reading = parse("plan.yaml", content)
    assert reading.findings == [], [(one.rule, one.place) for one in reading.findings]
    assert reading.root is not None
    return reading.root


def at(node: Node, *path: str | int) -> Node:
    for step in path:
        node = node.items[step] if isinstance(step, int) else node.entries[step].value
    return node


def at_path(node: Node) -> tuple[int, int, int, int]:
    return (node.place.line, node.place.column, *node.place.finish)


def scalars(root: Node) -> list[Scalar]:
    """Every key and value of a tree, aliases not followed."""
    found, waiting = [], [root]
    while waiting:
        node = waiting.pop()
        if isinstance(node, Scalar):
            found.append(node)
        elif node.defined is None and isinstance(node, Sequence):
            waiting += node.items
        elif node.defined is None:
            waiting += [part for one in node.entries.values() for part in (one.key, one.value)]
    return found


@pytest.fixture(params=["plain", "C", "Python"])
def parser(request, monkeypatch):
    """Plain texts read without PyYAML, and both parsers that PyYAML may come with."""
    if request.param != "plain":
        monkeypatch.setattr(PlainBuilder, "build", lambda self: False)
    if request.param == "Python":
        monkeypatch.setattr(event_builder, "Parser", BaseLoader)
    return request.param


PROGRAMME = """\
programme: Winter base   # the name
weeks: 6
sessions:
  - session: "Lower A"
    exercises:
      - exercise: stiff-leg deadlift
        sets: {1-3: 3, 6: 2}
        note: >
          slow
          down

      - exercise: row
        warm-up:
# end
"""


def test_plain_data_and_places(parser):
    root = tree(PROGRAMME)
    assert root.plain == {
        "programme": "Winter base",
        "weeks": 6,
        "sessions": [
            {
                "session": "Lower A",
                "exercises": [
                    {"exercise": "stiff-leg deadlift", "sets": {"1-3": 3, "6": 2}, "note": "slow down\n"},
                    {"exercise": "row", "warm-up": None},
                ],
            }
        ],
    }
    assert at_path(root) == (1, 1, 13, 17)
    assert at_path(at(root, "programme")) == (1, 12, 1, 23)
    assert at_path(root.entries["sessions"].key) == (3, 1, 3, 9)
    assert at_path(at(root, "sessions")) == (4, 3, 13, 17)
    session = at(root, "sessions", 0)
    assert at_path(session.entries["session"].value) == (4, 14, 4, 23)
    exercise = at(session, "exercises", 0)
    assert at_path(exercise) == (6, 9, 10, 15)
    assert at_path(at(exercise, "sets")) == (7, 15, 7, 29)
    assert at_path(at(exercise, "sets").entries["6"].key) == (7, 24, 7, 25)
    assert at_path(at(exercise, "note")) == (8, 15, 10, 15)
    assert at_path(at(session, "exercises", 1, "warm-up")) == (13, 17, 13, 17)


def test_styles_are_kept(parser):
    root = tree("a: x\nb: 'it''s'\nc: \"\\u00e9\"\nd: |\n  x\ne: >-\n  y\n")
    assert [(one.style, one.text) for one in (at(root, key) for key in "abcde")] == [
        ("", "x"),
        ("'", "it's"),
        ('"', "é"),
        ("|", "x\n"),
        (">", "y"),
    ]


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
def test_every_line_end_counts_as_one_line(parser, end):
    root = tree(f"a: 1{end}{end}b:{end}  - x{end}  - 'y'{end}")
    assert root.plain == {"a": 1, "b": ["x", "y"]}
    assert at_path(root.entries["b"].key) == (3, 1, 3, 2)
    assert at_path(at(root, "b", 1)) == (5, 5, 5, 8)


def test_columns_count_code_points(parser):
    root = tree("name: \U0001f3cb Ma\u0301ra  # x\n\u00e9: {k\u00fc: \U0001f3cb, b: 1}\n")
    assert at_path(at(root, "name")) == (1, 7, 1, 14)
    assert at_path(root.entries["é"].key) == (2, 1, 2, 2)
    assert at_path(at(root, "é").entries["b"].key) == (2, 12, 2, 13)


def test_byte_order_mark_takes_no_column(parser):
    root = tree("\ufeffa: 1\n")
    assert at_path(root.entries["a"].key) == (1, 1, 1, 2)
    assert root.place.text.content == "a: 1\n"


def test_alias_has_its_own_place_and_that_of_the_definition(parser):
    root = tree("shared: &slow !!map\n  tempo: 4-0-1-0\na: *slow\nb: &n !!str 5\nc: *n\nd: &l [x]\ne: *l\n")
    alias = at(root, "a")
    assert isinstance(alias, Mapping)
    assert (alias.place.excerpt, alias.place.line) == ("*slow", 3)
    assert (alias.defined.line, alias.defined.column) == (2, 3)
    assert alias.entries is at(root, "shared").entries
    assert at_path(at(alias, "tempo")) == (2, 10, 2, 17)
    assert at(root, "b").place.excerpt == "5"
    assert (at(root, "c").plain, at(root, "c").defined) == ("5", at(root, "b").place)
    assert at(root, "shared").defined is None
    assert at(root, "e").items is at(root, "d").items
    assert at(root, "e").place.excerpt == "*l"


def test_anchors_are_counted():
    reading = parse("x", "a: &one 1\nb: &two 2\nc: *one\nd: *one\ne: &one 3\nf: *one\n")
    assert [(one.name, one.place.line, one.place.excerpt, one.used) for one in reading.anchors] == [
        ("one", 1, "&one", 2),
        ("two", 2, "&two", 0),
        ("one", 5, "&one", 1),
    ]
    assert reading.root.plain["f"] == 3


def test_alias_as_a_key():
    root = tree("a: &k sets\n*k : 3\n")
    assert root.plain == {"a": "sets", "sets": 3}
    assert root.entries["sets"].key.place.excerpt == "*k"


def test_merged_keys_follow_own_ones_and_name_their_way(parser):
    root = tree(
        "base: &base {sets: 3, rest: 2 min}\n"
        "more: &more {<<: *base, rir: 2}\n"
        "own: {rest: 1 min, <<: [*more, {sets: 9, load: 5 kg}], reps: 5}\n"
    )
    own = at(root, "own")
    assert list(own.entries) == ["rest", "reps", "rir", "sets", "load"]
    assert own.plain == {"rest": "1 min", "reps": 5, "rir": 2, "sets": 3, "load": "5 kg"}
    ways = {key: [place.excerpt for place in entry.merged] for key, entry in own.entries.items()}
    assert ways == {
        "rest": [],
        "reps": [],
        "rir": ["*more"],
        "sets": ["*more", "*base"],
        "load": ["{sets: 9, load: 5 kg}"],
    }
    assert (own.entries["sets"].key.place.line, own.entries["sets"].merged[0].line) == (1, 3)


def test_two_merges_in_one_group_count_in_order():
    root = tree("a: &a {x: 1}\nb: &b {x: 2, z: 2}\nc:\n  <<: *a\n  <<: *b\n")
    assert at(root, "c").plain == {"x": 1, "z": 2}


def test_quoted_merge_sign_and_empty_key_are_keys():
    assert tree("'<<': 1\n\"\": 2\n").plain == {"<<": 1, "": 2}


def test_sizes_follow_aliases():
    root = tree("a: &a [x, z]\nb: [*a, *a]\n")
    assert at(root, "a").size == 3
    assert at(root, "b").size == 7
    assert root.size == 1 + 1 + 3 + 1 + 7


def test_keys_are_text():
    root = tree("6: a\n'7': b\ntrue: c\n0x8: d\n~: e\n1.5: f\n")
    assert list(root.plain) == ["6", "7", "true", "0x8", "~", "1.5"]
    assert [type(one.key.text) for one in root.entries.values()] == [str] * 6


@pytest.mark.parametrize(
    ("words", "value"),
    [
        # YAML 1.2.2, example 10.8 (core schema) and the table of section 10.3.2
        ("null", None),
        ("~", None),
        ("", None),
        ("true", True),
        ("False", False),
        ("0", 0),
        ("0o7", 7),
        ("0x3A", 58),
        ("-19", -19),
        ("0.", 0.0),
        ("-0.0", 0.0),
        (".5", 0.5),
        ("+12e03", 12000.0),
        ("-2E+05", -200000.0),
        # what YAML 1.1 would turn into something else
        ("no", "no"),
        ("on", "on"),
        ("y", "y"),
        ("1:30", "1:30"),
        ("12:30:45", "12:30:45"),
        ("1_000", "1_000"),
        ("0b101", "0b101"),
        ("010", 10),
        ("08", 8),
        ("2026-01-05", "2026-01-05"),
        ("=", "="),
        ("nUll", "nUll"),
        ("5-8", "5-8"),
        ("80 %", "80 %"),
        ("3-1-X-0", "3-1-X-0"),
        ("1e", "1e"),
        (".", "."),
        ("+", "+"),
        ("0o8", "0o8"),
        ("0x", "0x"),
        ("+0x1", "+0x1"),
        ("\u0661", "\u0661"),
        ("infinity", "infinity"),
        ("nan", "nan"),
        ("999999999999999999", 999999999999999999),
    ],
)
def test_values_by_the_core_schema(words, value):
    assert (core_value(words), type(core_value(words))) == (value, type(value))


@pytest.mark.parametrize(
    "words", [".inf", "-.INF", "+.Inf", ".nan", "1e400", "9" * 19, "0x" + "f" * 99, "1." + "0" * 999]
)
def test_numbers_out_of_range(words):
    with pytest.raises(OutOfRangeError):
        core_value(words)
    reading = parse("x", f"load: {words}\n")
    assert [(one.rule, one.place.excerpt) for one in reading.findings] == [("number-out-of-range", words)]
    assert reading.root.plain == {"load": words}
    json.dumps(reading.root.plain, allow_nan=False)


# PyYAML's SafeLoader reads YAML 1.1 (the older rules): the outside check on what "other programs" do.
LETTERS = st.text("0123456789._:+-eExob", min_size=1, max_size=7) | st.sampled_from(
    [
        "yes",
        "no",
        "on",
        "off",
        "y",
        "n",
        "Yes",
        "NO",
        "Off",
        "true",
        "null",
        "~",
        "=",
        "<<",
        "1:30",
        "010",
        "08",
        "1_000",
        "0b101",
        "0o10",
        "12:30:45.5",
    ]
)


def older(words: str) -> tuple[str, object]:
    loader = yaml.SafeLoader("")
    tag = loader.resolve(yaml.ScalarNode, words, (True, False)).rpartition(":")[2]
    if tag in ("value", "merge"):
        return tag, words
    try:
        return tag, loader.construct_object(yaml.ScalarNode("tag:yaml.org,2002:" + tag, words))
    except ValueError:
        return tag, 0


@given(LETTERS)
def test_a_note_stands_where_another_reader_differs(words):
    tag, value = older(words)
    try:
        here = core_value(words)
    except OutOfRangeError:
        assert taken_elsewhere(words) == ""
        return
    if tag == "timestamp":
        assert isinstance(value, datetime.date | int)
        assert taken_elsewhere(words) == ""
    elif words in ("y", "n"):  # true and false by YAML 1.1, though not to PyYAML
        assert taken_elsewhere(words) in ("true", "false")
    else:
        assert bool(taken_elsewhere(words)) == (here != value or tag in ("value", "merge"))
    if taken_elsewhere(words).startswith("the number "):
        assert float(taken_elsewhere(words).removeprefix("the number ")) == pytest.approx(float(value))


def test_the_note_quotes_the_words():
    reading = parse("x", "rest: 1:30\nwarm-up: no\n2026: 2026-01-05\n")
    assert [(one.rule, one.severity, one.counted, one.change) for one in reading.findings] == [
        ("quote-this", "note", "Other programs read 1:30 as the number 90.", "Write '1:30' in quotes."),
        ("quote-this", "note", "Other programs read no as false.", "Write 'no' in quotes."),
    ]
    edit = reading.findings[1].edits[0]
    assert (edit.place.line, edit.place.column, edit.place.excerpt, edit.words) == (2, 10, "no", "'no'")


def test_core_tags_are_honoured():
    root = tree(
        "a: !!str 5\nb: !!int 5\nc: !!float 5\nd: !!bool true\ne: !!null ''\nf: ! 5\ng: !!seq [x]\nh: !!int '7'\n"
    )
    assert root.plain == {"a": "5", "b": 5, "c": 5.0, "d": True, "e": None, "f": "5", "g": ["x"], "h": 7}
    assert type(root.plain["c"]) is float
    assert at(root, "a").place.excerpt == "5"


ONLY_12 = re.compile(r"[-+]?(\.\d+|\d+(\.\d*)?)[eE][-+]?\d+|0o[0-7]+")
"""Numbers in YAML 1.2 that the library which dumps them takes for text, and so leaves without quotes."""

WORDS = st.text(
    st.characters(min_codepoint=32, exclude_categories=("C", "Z")) | st.just(" "), max_size=12
).filter(lambda words: not ONLY_12.fullmatch(words.strip()))
DATA = st.recursive(
    WORDS | st.integers(-(10**17), 10**17) | st.booleans() | st.none(),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(WORDS, inner, max_size=4),
    max_leaves=15,
)


@given(st.dictionaries(WORDS, DATA, min_size=1, max_size=5), st.booleans())
def test_what_was_dumped_is_read_again(data, flow):
    class Plainly(yaml.SafeDumper):
        """Shares nothing, so keys can be compared."""

        def ignore_aliases(self, _data):
            return True

    content = yaml.dump(
        data, Dumper=Plainly, default_flow_style=flow, allow_unicode=True, sort_keys=False, width=1000
    )
    reading = parse("x", content)
    assert {one.rule for one in reading.findings} <= {"quote-this", "key-too-long"}
    assert reading.root.plain == data
    for scalar in scalars(reading.root):
        if scalar.style == "":
            assert scalar.place.excerpt == scalar.text


@given(st.text("ab:-[]{},&*!|>'\"%@#<?~\n\r\t 01\u00a0\u2028\x00\ud800", max_size=40))
def test_arbitrary_text_never_raises(content):
    reading = parse("x", content)
    # what cannot be read is an error, which no team and no record can let pass
    assert reading.root is not None or any(one.severity == "error" for one in reading.findings)
    for finding in reading.findings:
        assert 0 <= finding.place.start <= finding.place.end <= len(reading.text.content)
        assert finding.place.line >= 1
        for edit in finding.edits:
            assert edit.place.end <= len(reading.text.content)
    json.dumps(reading.root.plain if reading.root else None, allow_nan=False).encode()


def test_both_parsers_give_the_same_tree(monkeypatch):
    monkeypatch.setattr(PlainBuilder, "build", lambda self: False)
    first = parse("x", PROGRAMME)
    monkeypatch.setattr(event_builder, "Parser", BaseLoader)
    second = parse("x", PROGRAMME)
    assert first.root.plain == second.root.plain
    assert [(one.start, one.end, one.text) for one in scalars(first.root)] == [
        (one.start, one.end, one.text) for one in scalars(second.root)
    ]


def test_without_the_fast_parser_the_slower_one_steps_in():
    """As where PyYAML was built without libyaml."""
    code = (
        "import sys; sys.modules['yaml._yaml'] = None\n"
        "from spotline.lint.syntax.builder import parse\n"
        "from spotline.lint.syntax.event_builder import Parser\n"
        "print(Parser.__name__, parse('x', '? a\\n: [1, b]').root.plain)\n"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "BaseLoader {'a': [1, 'b']}"


def test_the_steps_grow_with_the_programme_and_no_faster():
    def reading(sessions):
        content = (
            PROGRAMME.split("sessions:")[0]
            + "sessions:\n"
            + "".join(
                f"  - session: S{n}\n    exercises:\n"
                + "      - {exercise: squat, sets: 3, reps: 5-8}\n      - exercise: row\n        rest: 3 min\n"
                * 20
                for n in range(sessions)
            )
        )
        return lambda: tree(content)

    assert growth(reading, 25) < 2.1
