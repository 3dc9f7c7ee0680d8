"""Hostile files through the command: located words, no traceback, no hang, bounded memory, right exit.

All of them through the review, a sample through every other command and the editor's server; all through all is
`hostile_commands.py`, run by itself.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from spotline.lint.cli.commands import COMMANDS as EVERY_COMMAND
from spotline.tests.hostile_commands import COMMANDS, Bench, faults, sample
from spotline.tests.hostile_files import Case, cases

CASES = cases()
SAMPLE = sample(10)

ROWS = {
    # each row of the list of hostile input: beginnings of the names of its cases, or the test that holds it
    1: "alias bomb",
    2: "binary alias bomb",
    3: "self alias",
    4: "self merge",
    5: "merge bomb",
    6: "flow levels",
    7: "open brackets",
    8: "nested maps, dashes, block levels, question marks, an alias ladder, circuits in circuits by aliases",
    9: "weeks: 9999",
    10: "2 million digits, hexadecimal",
    11: "huge power, infinity",
    12: "numbers of older YAML",
    13: "numbers of older YAML",
    14: "words of older YAML",
    15: "starts: 2025-02-30, starts: 2025-13-45, starts: 2025-01-01T99:99",
    16: "duplicate keys",
    17: "keys alike",
    18: "two merges",
    19: "null key",
    20: "list as key, map as key, template",
    21: "not a number twice",
    22: "empty, comments only, document start only, document end only",
    23: "two documents, 50 000 documents",
    24: "top is a word, top is a list, top is a number",
    25: "a mark at the start, a sound programme with a mark",
    26: "utf-16 le, utf-16 be",
    27: "utf-16 without mark, utf-32 without mark",
    28: "latin-1, cut utf-8, byte ff",
    29: "zero byte, bell, delete, c1, form feed",
    30: "encoded surrogate",
    31: "tests/syntax/test_hostile_input.py::test_strange_characters",
    32: "pair escapes",
    33: "escape too large",
    34: "fffe, mark inside",
    35: "a picture before the fault",
    36: "tests/reporters/test_cards.py::test_",
    37: "a sound programme with crlf, a sound programme with cr, every end of line",
    38: "every end of line",
    39: "tab as",
    40: "blanks that hold",
    41: "one long line, too large",
    42: "200 000 keys, 400 000 values",
    43: "key too long",
    44: "200 000 lines of words, half a million escapes",
    45: "tag as, tag directive",
    46: "yaml 9.9",
    47: "undefined alias, an anchor twice, an alias as a key",
    48: "open bracket, open quote",
    49: "merge conflict",
    50: "words of older YAML",
    51: "not an integer, not base 64, set as",
    52: "20 000 faults, 20 000 odd keys, 2000 slips",
    53: "a waiver inside words, a waiver that is part of a note",
    54: "turned direction, letters alike, letters put together",
    55: "escape sequences, a session that steers a terminal",
    56: "file name",
    57: "a folder, a pipe, a link to /dev/zero, a broken link, a link to itself, 1.5 GB",
    58: "rules: , exercises: , block commit on: , alias bomb as spotline.yaml",
    59: "a record of a later form, a record in two halves, alias bomb as spotline-known.json",
    60: "words that are patterns of endless work, patterns of folders of endless work",
    61: "tests/engine/test_registry.py::test_, tests/cli/test_process.py::test_a_fault_of_our_own_is_one_line",
    62: "tests/cli/test_process.py::test_a_full_disk_behind_the_output",
    63: "tests/editor/test_server_odd_input.py::test_, tests/editor/test_open_documents.py::test_",
    64: "tests/text/test_safe_writer.py::test_, tests/mending/test_mend.py::test_",
}

FOUND_BEFORE = {
    # what the first version met (trials, part J)
    "a record with an emoji": "tests/team/test_known_findings.py::test_",
    "a record through a planted link": "a link that leads out as spotline-known.json",
    "a file of the system linked as a programme": "a link to /etc/passwd as plan.programme.yaml",
    "one unreadable neighbour": "a folder as a neighbour of the athlete, a pipe as a neighbour of the athlete",
    "a neighbour of 1.5 GB": "1.5 GB as a neighbour of the athlete",
    "the last day of the calendar": "starts: 9999-12-31",
    "sets without end": "sets: 1e308",
    "a severity that is none": "rules: {tempo-too-long: {severity: fatal}}",
    "live Markdown in hovers, lens titles": "tests/editor/test_hover.py::test_, tests/editor/test_hints.py::test_",
    "closed and full output, a stop, a folder that has gone": "tests/cli/test_process.py::test_no_output_at_all",
    "2,000 impossible dates or waivers": "2000 impossible dates, 2000 waivers",
    "time for an unknown name": "2000 unknown names, 2000 long unknown names",
    "5,000 files": "tests/project/test_telling.py::test_",
    "20,000 findings": "20 000 faults",
    "file names that forge a line": "file name",
    "modules of the checkout": "tests/cli/test_process.py::test_nothing_of_the_checkout_is_run",
    "an untrusted folder beside": "tests/text/test_other_systems.py::test_every_byte",
}


@pytest.fixture(scope="module")
def bench(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    made = Bench(tmp_path_factory.mktemp("bench"), root)
    yield made
    made.close()


def named(case: Case) -> str:
    return re.sub(r"[^\w .:-]", "_", case.name)


def test_there_are_430_of_them_each_once() -> None:
    names = [case.name for case in CASES]
    assert len(names) == len(set(names)) >= 430


@pytest.mark.parametrize("several", [*ROWS.values(), *FOUND_BEFORE.values()])
def test_each_class_has_its_cases(several: str, root: Path) -> None:
    for one in several.split(", "):
        if one.startswith("tests/"):
            path, _, name = one.partition("::")
            assert f"def {name}" in (root / path).read_text(encoding="utf-8"), one
        else:
            assert any(case.name.startswith(one.strip()) for case in CASES), one


def test_no_row_is_left_out() -> None:
    assert set(ROWS) == set(range(1, 65))


def test_no_command_is_left_out() -> None:
    assert {command.split()[0] for command in COMMANDS} == set(EVERY_COMMAND)


@pytest.mark.parametrize("case", CASES, ids=named)
def test_a_hostile_file_is_reviewed(case: Case, bench: Bench) -> None:
    result = bench.result_of("review", case)
    told = f"{result['out'][-1500:]}\n{result['err'][-1500:]}"
    assert list(faults("review", case, result)) == [], told


@pytest.mark.parametrize("command", [command for command in COMMANDS if command != "review"])
def test_hostile_files_through_every_command(command: str, bench: Bench) -> None:
    wrong = {case.name: list(faults(command, case, bench.result_of(command, case))) for case in SAMPLE}
    assert {name: several for name, several in wrong.items() if several} == {}
