"""A hostile, damaged or careless file gives located findings in bounded time, never an exception."""

import os
import re
import subprocess
import sys
import tracemalloc
from functools import partial

import pytest
from yaml.loader import BaseLoader

from spotline.lint.syntax import event_builder, tree_builder
from spotline.lint.syntax.builder import parse, read
from spotline.lint.syntax.tree import Reading
from spotline.lint.text.files import LONGEST_FILE
from spotline.tests.steps import growth


def told(reading: Reading) -> list[tuple[str, int, int]]:
    return [(one.rule, one.place.line, one.place.column) for one in reading.findings]


def only(content: str):
    """The single finding of a text."""
    reading = parse("x", content)
    assert len(reading.findings) == 1, told(reading)
    return reading.findings[0]


SYNTAX = [
    # content, rule, line, column
    ("a: b: c\n", "colon-needs-quotes", 1, 5),
    ("note: heavy: go\n", "colon-needs-quotes", 1, 12),
    ("a: [1, 2\nreps: 3\n", "bracket-not-closed", 2, 5),
    ("a: [", "bracket-not-closed", 1, 5),
    ("a: {b: 1\n", "bracket-not-closed", 2, 1),
    ("a: [1}\n", "bracket-not-fitting", 1, 6),
    ("a: {b: 1 c: 2}\n", "bracket-not-fitting", 1, 11),
    ("a: [1]]\n", "bracket-not-opened", 1, 7),
    ("a: 'x\nb: 2\n", "quote-not-closed", 3, 1),
    ('a: "x', "quote-not-closed", 1, 6),
    ("a: 'x' z\n", "words-after-quote", 1, 8),
    ("a: [1] z\n", "words-after-bracket", 1, 8),
    ("\ta: 1\n", "tab-in-indentation", 1, 1),
    ("a:\n  b: 1\n \tc: 2\n", "tab-in-indentation", 3, 1),
    ("- x\n-\t- y\n", "tab-in-indentation", 2, 2),
    (": v\n", "key-missing", 1, 1),
    ("{: v}\n", "key-missing", 1, 2),
    ("? \n", "key-missing", 1, 2),
    ("a: @x\n", "sign-needs-quotes", 1, 4),
    ("a: `x`\n", "sign-needs-quotes", 1, 4),
    ("a: **x**\n", "sign-needs-quotes", 1, 4),
    ("a: % x\n", "sign-needs-quotes", 1, 4),
    ("a: ? x\n", "sign-needs-quotes", 1, 4),
    ("a: - b\n", "dash-out-of-place", 1, 4),
    ("a: | x\n  z\n", "words-after-bar", 1, 4),
    ("a: 1\n  b: 2\n", "indentation-uneven", 2, 3),
    ("a:\n   b: 1\n  c: 2\n", "indentation-uneven", 3, 3),
    ("- a\nb: 1\n", "list-and-keys-mixed", 2, 1),
    ("a: 1\n- b\n", "list-and-keys-mixed", 2, 1),
    ("sets 3\nreps: 5\n", "colon-missing", 1, 1),
    ("a: 1\nsets 3\nreps: 5\n", "colon-missing", 2, 1),
    ("sets:3\nreps: 5\n", "blank-missing", 1, 5),
    ("a: 1\nsets:3\nreps: 5\n", "blank-missing", 2, 5),
    ("-a\n-b: 1\n", "blank-missing", 1, 1),
    ("%YAML 9.9\n---\na: 1\n", "directive-unsupported", 1, 1),
    ("%FOO\n---\na: 1\n", "directive-unsupported", 1, 1),
    ("a: !e!x 1\n", "tag-unsupported", 1, 4),
    ('a: "\\q"\n', "escape-unknown", 1, 5),
    ('a: "\\U00110000"\n', "escape-unknown", 1, 5),
    ("k" * 1100 + ": 1\n", "key-too-long", 1, 1101),
    ("a: {{ x }} kg\n", "template-not-filled", 1, 4),
]


@pytest.mark.parametrize(("content", "rule", "line", "column"), SYNTAX)
def test_what_stops_the_parser_is_one_finding(content, rule, line, column):
    found = only(content)
    assert (found.rule, found.place.line, found.place.column) == (rule, line, column)
    assert found.severity == "error"
    assert found.counted
    assert found.wanted
    assert found.change
    assert parse("x", content).root is None or rule == "key-missing"


@pytest.mark.parametrize(("content", "rule", "line", "column"), SYNTAX)
def test_the_slower_parser_finds_a_fault_there_too(content, rule, line, column, monkeypatch):
    monkeypatch.setattr(event_builder, "Parser", BaseLoader)
    reading = parse("x", content)
    if reading.findings:
        assert all(one.place.line <= content.count("\n") + 1 for one in reading.findings)
    else:  # the two differ in a few details of YAML
        assert rule in ("tab-in-indentation", "directive-unsupported", "words-after-bar")


def test_what_was_opened_is_shown():
    assert [(one.place.line, one.place.excerpt) for one in only("a: 1\nb: [x,\n  z: {\n").related] == [
        (3, "{")
    ]
    assert [(one.place.line, one.place.excerpt) for one in only("a: 1\nb: 'x\n").related] == [(2, "'")]


def test_edits_mend_what_they_can():
    for content in (
        "note: heavy: go\n",
        "a: @x\n",
        "a:\n\tb: 1\n",
        "a: [1]]\n",
        "sets:3\nreps: 5\n",
        'a: "\\ud83d\\ude00"',
        "sets: {1-3: 3, 4: 2  # more\nreps: 5\n",
        "a: [1, 2",
    ):
        edit = only(content).edits[0]
        mended = content[: edit.place.start] + edit.words + content[edit.place.end :]
        assert parse("x", mended).findings == [], mended


@pytest.mark.parametrize(
    ("content", "told_of", "plain"),
    [
        ("a: 1\nb: 2\na: 3\n", [("duplicate-key", 3, 1)], {"a": 1, "b": 2}),
        ("'1': x\n1: z\n", [("duplicate-key", 2, 1)], {"1": "x"}),
        ("a: *gone\n", [("alias-unknown", 1, 4)], {"a": None}),
        ("a: &a [*a]\n", [("alias-loop", 1, 8)], {"a": [None]}),
        ("a: &a\n  <<: *a\n  b: 1\n", [("alias-loop", 2, 7)], {"a": {"b": 1}}),
        ("<<: 1\na: 2\n", [("merge-of-no-keys", 1, 5)], {"a": 2}),
        ("<<: [{b: 1}, 3]\n", [("merge-of-no-keys", 1, 14)], {"b": 1}),
        ("a: {{ x }}\n", [("template-not-filled", 1, 4)], {"a": None}),
        ("[a]: 1\nb: 2\n", [("key-not-text", 1, 1)], {"b": 2}),
        ("? {a: 1}\n: 1\n", [("key-not-text", 1, 3)], {}),
        ("a: !z 1\n", [("tag-unsupported", 1, 4)], {"a": 1}),
        ("a: &n !!python/object/apply:os.system [ls]\n", [("tag-unsupported", 1, 7)], {"a": ["ls"]}),
        (
            "a: !!int abc\nb: !!set {c}\n",
            [("tag-unsupported", 1, 4), ("tag-unsupported", 2, 4)],
            {"a": "abc", "b": {"c": None}},
        ),
        ("a: !!binary '@@'\n", [("tag-unsupported", 1, 4)], {"a": "@@"}),
        ("a: 1\n---\nb: 2\n", [("second-document", 2, 1)], {"a": 1}),
        ("- a\n", [("top-not-a-list-of-keys", 1, 1)], ["a"]),
        ("words\n", [("top-not-a-list-of-keys", 1, 1)], "words"),
        (".nan: 1\n", [("number-out-of-range", 1, 1)], {".nan": 1}),
        ("%YAML 1.2\n---\na: =x\n", [], {"a": "=x"}),
        ("a:\t1\n", [], {"a": 1}),
        ("a: 1\n...\n", [], {"a": 1}),
        ("a: 1", [], {"a": 1}),
        ("a: '# spotline: off'\n", [], {"a": "# spotline: off"}),
        ("a: 2025-02-30\nb: 2025-13-45\n", [], {"a": "2025-02-30", "b": "2025-13-45"}),
    ],
)
def test_faults_that_leave_a_tree(content, told_of, plain):
    reading = parse("x", content)
    assert told(reading) == told_of
    assert reading.root.plain == plain


def test_duplicate_keys_name_the_first_place():
    found = only("sessions: 1\nweeks: 2\nsessions: 3\n")
    assert [(one.place.line, one.place.column) for one in found.related] == [(1, 1)]
    assert "line 1" in found.counted


def test_an_alias_that_leads_nowhere_is_marked():
    node = parse("x", "a: *gone\n").root.entries["a"].value
    assert (node.style, node.text, node.plain, node.place.excerpt) == ("*", "", None, "*gone")


@pytest.mark.parametrize(
    "content", ["", "\n\n", "# words\n", "---\n", "...\n", "--- # x\n", "\ufeff", "--- &a\n"]
)
def test_nothing_in_the_file(content):
    reading = parse("x", content)
    assert reading.root is None or content == "--- &a\n"
    assert told(reading) == [("file-empty", 1, 1)]


CONFLICT = "a: 1\n<<<<<<< HEAD\nb: 1\n=======\nb: 2\n>>>>>>> winter plan\n"


def test_merge_conflict_names_both_sides():
    found = only(CONFLICT)
    assert (found.rule, found.place.line) == ("merge-conflict", 2)
    assert "HEAD and winter plan" in found.counted
    assert found.related[0].place.line == 6
    assert told(parse("x", CONFLICT * 2)) == [("merge-conflict", 2, 1), ("merge-conflict", 8, 1)]
    assert told(parse("x", "a: 1\n>>>>>>> b\n")) == [("merge-conflict", 2, 1)]
    assert parse("x", "a: |\n  <<<<<<< x\n").findings == []


@pytest.mark.parametrize(
    ("content", "rule", "line", "column", "excerpt", "plain"),
    [
        ("a: x\x00z\n", "control-character", 1, 5, "\x00", {"a": "x\x00z"}),
        ("a: 1\nb: \x07\n", "control-character", 2, 4, "\x07", {"a": 1, "b": "\x07"}),
        ("a: \x7f\n", "control-character", 1, 4, "\x7f", {"a": "\x7f"}),
        ("\U0001f3cb: x\x85z\n", "odd-whitespace", 1, 5, "\x85", {"\U0001f3cb": "x\x85z"}),
        ("a: x\u2028z\n", "odd-whitespace", 1, 5, "\u2028", {"a": "x\u2028z"}),
        ("a: x\ufffez\n", "control-character", 1, 5, "\ufffe", {"a": "x\ufffez"}),
        ("a: x\ufeffz\n", "hidden-character", 1, 5, "\ufeff", {"a": "x\ufeffz"}),
        ("a: x\u202ez\n", "hidden-character", 1, 5, "\u202e", {"a": "x\u202ez"}),
        ("a: 1 # \u2066\n", "hidden-character", 1, 8, "\u2066", {"a": 1}),
        ("a: x\ud83dz\n", "broken-character", 1, 5, "\ufffd", {"a": "x\ufffdz"}),
        ("a: 80\u00a0\n", "odd-whitespace", 1, 6, "\u00a0", {"a": 80}),
        ("a\u00a0: 1\n", "odd-whitespace", 1, 2, "\u00a0", {"a": 1}),
        ("a:\n  b: 1\n\u3000c: 1\n", "odd-whitespace", 3, 1, "\u3000", {"a": {"b": 1}, "c": 1}),
    ],
)
def test_strange_characters(content, rule, line, column, excerpt, plain):
    reading = parse("x", content)
    assert told(reading) == [(rule, line, column)]
    assert reading.findings[0].place.excerpt == excerpt
    assert reading.root.plain == plain


def test_lines_stay_right_behind_unusual_line_ends():
    reading = parse("x", "a: x\u2028y\u0085z\nb: 1\nc: @\n")
    assert told(reading)[-1] == ("sign-needs-quotes", 3, 4)


@pytest.mark.parametrize("line_end", ["\n", "\r", "\r\n"])
def test_a_key_that_ends_its_list_is_told_whatever_the_line_end(line_end):
    content = "a:\n  - b: 1\n    w: 2\nc:\n      - d: 1\n  - b: 3\n"
    assert told(parse("x", content.replace("\n", line_end))) == told(parse("x", content))
    assert told(parse("x", content))[0] == ("indentation-uneven", 4, 1)


def test_a_dash_below_no_line_of_words_is_one_finding():
    assert [rule for rule, *_ in told(parse("x", "\r| \n-| \n"))] == ["list-and-keys-mixed"]


def test_blanks_inside_words_and_in_quotes_are_let_be():
    reading = parse("x", "a: 80\u00a0kg\nb: '\u00a0x'\n")
    assert reading.findings == []
    assert reading.root.plain == {"a": "80\u00a0kg", "b": "\u00a0x"}


def test_odd_blank_where_the_parser_stops():
    found = only("a: 'x'\u00a0\nb: 1\n")
    assert (found.rule, found.severity, found.place.column) == ("odd-whitespace", "error", 7)
    assert only("programme:\u00a0a\n\u00a0sessions: []\n").severity == "error"
    assert told(parse("x", "a:\n  b: 1\n\u00a0 c: @\n"))[0] == ("odd-whitespace", 3, 1)


def test_joined_emoji_and_private_letters_are_let_be():
    content = "\U0001f3cb\ufe0f\u200d\u2640\ufe0f: \U000f0000\ue000\n"
    reading = parse("x", content)
    assert reading.findings == []
    assert reading.root.plain == {"\U0001f3cb\ufe0f\u200d\u2640\ufe0f": "\U000f0000\ue000"}
    assert parse("x", "a: \U000f0000\x00\u2028\n").root.plain == {"a": "\U000f0000\x00\u2028"}


def test_emoji_before_the_fault():
    assert told(parse("x", "\U0001f3cb\U0001f3cb: @\n")) == [("sign-needs-quotes", 1, 5)]


def times(step: str, count: int) -> str:
    return "".join(step.replace("N", str(n)).replace("M", str(n - 1)) for n in range(1, count))


NINE = ",".join(["*aM"] * 9)

BOMBS = {
    # what makes one of a size, and a size
    "lists of lists": (lambda size: "a0: &a0 [x,x,x]\n" + times(f"aN: &aN [{NINE}]\n", size), 10),
    "doubling": (lambda size: "a0: &a0 [x]\n" + times("aN: &aN [*aM, *aM]\n", size), 40),
    "merges": (lambda size: "a0: &a0 {k: 1}\n" + times(f"aN: &aN {{<<: [{NINE}], kN: 1}}\n", size), 3000),
    "a chain of merges": (lambda size: "a0: &a0 {k: 1}\n" + times("aN: &aN {<<: *aM, kN: 1}\n", size), 3000),
    "aliases": (lambda size: "a: &a 1\nb: [" + "*a," * size + "]\n", 500_000),
}


@pytest.mark.parametrize("name", BOMBS)
def test_repetition_is_bounded(name):
    bomb, size = BOMBS[name]
    reading = parse("x", bomb(size))
    assert [one.rule for one in reading.findings] == ["too-much-repetition"]
    assert reading.findings[0].place.excerpt.startswith(("*", "["))
    assert reading.root is None


@pytest.mark.parametrize("name", BOMBS)
def test_past_the_limit_more_repetition_takes_no_more_steps(name, monkeypatch):
    monkeypatch.setattr(event_builder, "MOST_REPEATED", 1_000)
    bomb, size = BOMBS[name]
    assert growth(lambda size: partial(parse, "x", bomb(size)), min(size, 2_000)) < 1.2


def test_repetition_below_the_limit_is_read():
    content = "a0: &a0 [x,x]\n" + times("aN: &aN [*aM, *aM]\n", 14)
    assert parse("x", content).findings == []
    assert parse("x", content).root.size > 50_000


DEEP = {
    # what makes one of a depth, a depth, and the place that is told
    "brackets": (lambda depth: "[" * depth, 300_000, None),
    "brackets that fit": (lambda depth: "[" * depth + "]" * depth, 900, (1, 65)),
    "braces": (lambda depth: "{a: " * depth, 20_000, (1, 257)),
    "dashes": (lambda depth: "- " * depth, 3_000, (1, 129)),
    "question marks": (lambda depth: "? " * depth, 2_000, (1, 129)),
    "keys": (lambda depth: "".join(" " * n + "a:\n" for n in range(depth)), 1_500, (65, 65)),
}


@pytest.mark.parametrize("name", DEEP)
def test_nesting_is_bounded(name):
    nest, depth, at_path = DEEP[name]
    found = only(nest(depth))
    assert found.rule == "too-much-nesting"
    assert at_path is None or (found.place.line, found.place.column) == at_path
    assert growth(lambda depth: partial(parse, "x", nest(depth)), 300) < 1.2


@pytest.mark.parametrize("one", ["k: 1\n", "- a\n", "- {}\n"])
def test_the_number_of_values_is_bounded(one, monkeypatch):
    text = "".join(one.replace("k", f"k{number}") for number in range(201))
    assert parse("x", text).root is not None
    monkeypatch.setattr(tree_builder, "MOST_VALUES", 200)
    found = only(text)
    assert found.rule == "too-many-values"
    assert 98 < found.place.line < 201
    assert parse("x", text[:200]).root is not None
    assert growth(lambda more: partial(parse, "x", text * more), 10) < 1.2


def test_nesting_below_the_limit_is_read():
    assert parse("x", "a: " + "[" * 63 + "]" * 63).findings == []


LONG = {
    # what makes one of a size, and the size at which it is as long as a file may be, or long enough
    "digits": (lambda size: "a: " + "9" * size, 2_000_000),
    "hexadecimal digits": (lambda size: "a: 0x" + "f" * size, 100_000),
    "one line": (lambda size: "a: " + "x" * size, 3_900_000),
    "a value of many lines": (lambda size: "a: b\n" + "  c d\n" * size, 200_000),
    "escapes": (lambda size: 'a: "' + "\\n" * size + '"', 500_000),
    "keys": (lambda size: "".join(f"k{n}: {n}\n" for n in range(size)), 200_000),
    "documents": (lambda size: "---\na: 1\n" * size, 50_000),
    "control characters": (lambda size: "a: " + "\x00x" * size, 500_000),
    "sixties": (lambda size: "a: " + "1:" * size + "1", 1_900_000),
    "blank lines": (lambda size: "\n" * size + "a b\nc: d", 3_900_000),
    "tabs": (lambda size: "a:\n" + "\t- b\n" * size, 300_000),
    "conflicts": (lambda size: CONFLICT * size, 50_000),
    "colons": (lambda size: "a: " + "b: " * size, 1_000_000),
    "an open quote": (lambda size: 'a: "' + "x\n" * size, 1_500_000),
    "an open bracket": (lambda size: "a: [" + "b " * size, 1_500_000),
}

READ = """\
import sys
from spotline.lint.syntax.builder import parse
print(len(parse("x", sys.stdin.buffer.read().decode()).findings))
"""


@pytest.mark.parametrize("name", LONG)
def test_the_steps_of_a_long_text_grow_with_it_and_no_faster(name):
    make, _ = LONG[name]
    assert growth(lambda size: partial(parse, "x", make(size)), 1_000) < 2.1


@pytest.mark.parametrize("name", LONG)
def test_no_long_text_hangs_within_a_library(name):
    """In a process of its own, as what the libraries do with a text cannot be counted."""
    make, size = LONG[name]
    read_it = subprocess.run(
        [sys.executable, "-c", READ], input=make(size).encode(), capture_output=True, check=True, timeout=60
    )
    assert int(read_it.stdout) <= 51


def test_many_findings_of_a_kind_are_counted():
    reading = parse("x", "a:\n" * 300)
    assert len(reading.findings) == 51
    assert reading.findings[-1].counted == "And 249 more of this kind in this file."
    assert {one.rule for one in reading.findings} == {"duplicate-key"}
    assert len(parse("x", "a:\n" * 51).findings) == 50
    assert parse("x", "a:\n\n\n" + "\t- b\n" * 60).findings[-1].counted.startswith("And 10 more")


def test_too_long_a_text():
    assert told(parse("x", "a" * (LONGEST_FILE + 1))) == [("file-too-large", 1, 1)]


@pytest.mark.parametrize(
    ("data", "line", "column", "words"),
    [
        (b"a: 1\nb\xc3\xa9: caf\xe9\n", 2, 8, "E9"),
        (b"a: \xc3", 1, 4, "C3"),
        (b"\xef\xbb\xbfa: \xff\n", 1, 4, "FF"),
        (b"a: \xed\xa0\x80\n", 1, 4, "ED"),
        ("a: 1".encode("utf-16"), 1, 1, "UTF-16"),
        ("a: 1".encode("utf-16-be"), 1, 1, "UTF-16"),
        ("a: 1".encode("utf-32"), 1, 1, "UTF-32"),
        ("a: 1".encode("utf-32-le"), 1, 1, "UTF-32"),
    ],
)
def test_files_in_another_encoding(tmp_path, data, line, column, words):
    file = tmp_path / "x.yaml"
    file.write_bytes(data)
    reading = read(str(file))
    assert told(reading) == [("not-utf-8", line, column)]
    assert words in reading.findings[0].counted
    assert ("Windows-1252" in reading.findings[0].counted) == (words in ("E9", "FF", "ED"))
    assert (reading.opened, reading.root) == (True, None)


def test_a_file_is_read(tmp_path):
    file = tmp_path / "ü \U0001f3cb.yaml"
    file.write_bytes(b"\xef\xbb\xbfa: 1\r\n")
    reading = read(str(file))
    assert (reading.root.plain, reading.opened, reading.findings) == ({"a": 1}, True, [])
    assert reading.text.name == str(file)


def test_a_large_file_is_not_read(tmp_path):
    file = tmp_path / "x.yaml"
    with file.open("wb") as sparse:
        sparse.truncate(1 << 30)
    tracemalloc.start()
    assert told(read(str(file))) == [("file-too-large", 1, 1)]
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert most < 3 * LONGEST_FILE


def unopened(path) -> str:
    reading = read(str(path))
    assert (told(reading), reading.opened, reading.root) == ([("file-not-opened", 1, 1)], False, None)
    return re.sub(r"^The file could not be opened: |\.$", "", reading.findings[0].counted)


def test_what_is_no_file(tmp_path):
    assert unopened(tmp_path) == "it is a folder"
    assert unopened(tmp_path / "gone.yaml") == "it is not there"
    assert unopened("a\x00b") == "no file can have this name"


def test_pipes_devices_and_links(tmp_path):
    os.mkfifo(tmp_path / "pipe.yaml")
    assert unopened(tmp_path / "pipe.yaml") == "it is a pipe or a device, not a file"
    assert unopened("/dev/zero") == "it is a pipe or a device, not a file"
    (tmp_path / "broken.yaml").symlink_to(tmp_path / "gone")
    assert unopened(tmp_path / "broken.yaml") == "it is a link to a file that is not there"
    (tmp_path / "loop.yaml").symlink_to(tmp_path / "loop.yaml")
    assert "link" in unopened(tmp_path / "loop.yaml")


def test_a_file_that_may_not_be_read(tmp_path, monkeypatch):
    def refuse(*_):
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(os, "open", refuse)
    assert unopened(tmp_path / "x.yaml") == "this account may not read it"


JARGON = re.compile(
    r"\b(mapping|node|schema|regex|null|string|scalar|sequence|parser|boolean|dict)\b|!(?![ ,%])", re.I
)


def test_messages_speak_plainly():
    contents = (
        [one[0] for one in SYNTAX]
        + [bomb(size) for bomb, size in list(BOMBS.values())[:2]]
        + [CONFLICT, "", "- a", "a: *b", "a: &a [*a]", "a: .inf", "a: \x00"]
    )
    for content in contents:
        for found in parse("x", content).findings:
            for words in (found.counted, found.wanted, found.change):
                assert not JARGON.search(words.replace(found.place.excerpt, "")), words
                assert len(words) < 220
