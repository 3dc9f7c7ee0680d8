"""Hostile, damaged and careless files, made for `hostile_commands.py`: each with what must come of it.

A text that harms as a programme may harm as an athlete file, as settings or as a record just as well, so each is
tried as all of them.
"""

from __future__ import annotations

import json
import os
from collections.abc import Callable, Iterator
from pathlib import Path

PLAN = """\
programme: Test
athlete: {name: Mara, level: intermediate}
starts: 2026-01-05
weeks: 4
sessions:
  - session: A
    day: monday
    exercises:
      - {exercise: back squat, sets: 3, reps: 5, rir: 2, rest: 3 min}
"""

LINE = "      - {exercise: back squat, sets: 3, reps: 5, rir: 2, rest: 3 min}\n"

Files = dict[str, bytes | Callable[[Path], None]]
"""The files of a case by name: their bytes, or what makes them."""


class Case:
    """One hostile file with what stands beside it.

    ``codes`` are the exit codes that are right; ``located`` says whether a place must be named in the output, and
    ``words`` what the review is called with.
    """

    def __init__(
        self, name: str, files: Files, codes: set[int], *, located: bool = True, words: str = "."
    ) -> None:
        self.name = name
        self.files = files
        self.codes = codes
        self.located = located
        self.words = words.split()

    @property
    def hostile(self) -> str:
        """The name of the hostile file: the last that is made."""
        return list(self.files)[-1]


def times(step: str, count: int) -> str:
    return "".join(step.replace("N", str(n)).replace("M", str(n - 1)) for n in range(1, count))


NINE = ",".join(["*aM"] * 9)
DIGITS = "9" * 5000

BROKEN: dict[str, str | bytes] = {
    # rows 1 to 24 and so on of the list of hostile input; none of these can be read as it is meant
    "alias bomb": "a0: &a0 [x,x,x,x,x,x,x,x,x]\n" + times(f"aN: &aN [{NINE}]\n", 10),
    "binary alias bomb": "a0: &a0 [x]\n" + times("aN: &aN [*aM, *aM]\n", 31),
    "self alias": "a: &a [*a]\n",
    "self merge": "a: &a\n  <<: *a\n  b: 1\n",
    "merge bomb": "a0: &a0 {k: 1}\n" + times(f"aN: &aN {{<<: [{NINE}], kN: 1}}\n", 2000),
    "flow levels": "a: " + "[" * 900 + "]" * 900,
    "open brackets": "[" * 300_000,
    "nested maps": "{a: " * 20_000,
    "dashes": "- " * 3000,
    "block levels": "".join(" " * n + "a:\n" for n in range(1500)),
    "question marks": "? " * 2000,
    "duplicate keys": "programme: a\nprogramme: b\n",
    "keys alike": "1: a\n'1': b\n",
    "null key": ": v\n",
    "list as key": "[a, b]: 1\n",
    "map as key": "? {a: 1}\n: 1\n",
    "template": "programme: {{ name }}\n",
    "not a number twice": "{.nan: 1, .nan: 2}\n",
    "empty": "",
    "comments only": "# nothing\n",
    "document start only": "---\n",
    "document end only": "...\n",
    "two documents": "programme: a\n---\nprogramme: b\n",
    "50 000 documents": "---\na: 1\n" * 50_000,
    "top is a word": "words\n",
    "top is a list": "- a\n- b\n",
    "top is a number": "12\n",
    "utf-16 le": b"\xff\xfe" + "programme: a\n".encode("utf-16-le"),
    "utf-16 be": b"\xfe\xff" + "programme: a\n".encode("utf-16-be"),
    "utf-16 without mark": "programme: a\n".encode("utf-16-le"),
    "utf-32": "programme: a\n".encode("utf-32"),
    "utf-32 without mark": "programme: a\n".encode("utf-32-be"),
    "latin-1": "programme: caf\xe9\n".encode("latin-1"),
    "cut utf-8": b"programme: \xc3",
    "byte ff": b"programme: \xff\n",
    "encoded surrogate": b"programme: \xed\xa0\x80\n",
    "zero byte": "programme: a\x00b\n",
    "bell": "programme: \x07\n",
    "form feed": "programme: \x0c\n",
    "delete": "programme: \x7f\n",
    "c1": "programme: \x9b31m\n",
    "pair escapes": 'programme: "\\ud83d\\ude00"\n',
    "escape too large": 'programme: "\\U00110000"\n',
    "unknown escape": 'programme: "\\q"\n',
    "fffe": "programme: a\ufffeb\n",
    "mark inside": "programme: a\ufeffb\n",
    "turned direction": "programme: a\u202eb\n",
    "tab": "programme: a\nsessions:\n\t- session: A\n",
    "key too long": "k" * 1100 + ": 1\n",
    "too large": b"a" * 4_000_001,
    "one long line": "programme: [" + "x, " * 300_000,
    "tag": "programme: !!python/object/apply:os.system [ls]\n",
    "tag directive": "%TAG !e! tag:x,2000:\n---\nprogramme: !e!x 1\n",
    "yaml 9.9": "%YAML 9.9\n---\nprogramme: a\n",
    "undefined alias": "programme: *gone\n",
    "open bracket": "programme: [a\nb: 1\n",
    "open quote": "programme: 'a\nb: 1\n",
    "merge conflict": "<<<<<<< ours\nprogramme: a\n=======\nprogramme: b\n>>>>>>> theirs\n",
    "not an integer": "programme: !!int abc\n",
    "not base 64": "programme: !!binary '@@'\n",
    "set": "programme: !!set {a, b}\n",
    "2 million digits": "weeks: " + "9" * 2_000_000 + "\n",
    "hexadecimal": "weeks: 0x" + "f" * 100_000 + "\n",
    "huge power": "weeks: 1e999999\n",
    "infinity": "weeks: .inf\n",
    "200 000 keys": "".join(f"k{n}: {n}\n" for n in range(200_000)),
    "20 000 odd keys": "".join(f"sesions{n}: 1\n" for n in range(20_000)),
    "20 000 faults": "sessions:\n" + "  - {sets: 1e9}\n" * 20_000,
    "half a million escapes": 'programme: "' + "\\n" * 500_000,
    "bare carriage returns": "programme: a\rb\rc: [\r",
    "escape sequences": "programme: \x1b[2J\x1b[31m\n",
    "a note cut by a comma": "{programme: a, note: eccentric only, left first}\n",
}

BROKEN |= {
    "400 000 values": "a: [" + ",".join(map(str, range(400_000))) + "]\n",
    "200 000 lines of words": "a: b\n" + "  c d\n" * 200_000,
    "an alias ladder": "a0: &a0 [x]\n" + times("aN: &aN [*aM]\n", 600),
    "two merges": "a: &a {x: 1}\nb: {<<: *a, <<: *a}\n",
    "an anchor twice": "a: &a 1\nb: &a 2\nc: *a\n",
    "an alias as a key": "a: &a x\n*a : 1\n",
    "letters alike": "pr\u043egramme: a\n",
    "letters put together": "programme: cafe\u0301\nse\u0301ssions: []\n",
    "every end of line": "programme: a\r\nb: 1\rc: 2\nd: 3\u2028e: 4\x85f: 5\r\n",
    "blanks that hold": "programme:\u00a0a\n\u00a0sessions: []\n\u3000x: 1\u00a0",
    "a picture before the fault": "\U0001f3cb\U0001f3cb\u0301: @\n",
    "a mark at the start": b"\xef\xbb\xbfprogramme: a\r\nsesions: []",
    "a pair cut in two": b"programme: \xed\xa0\xbd\n",
    "a waiver inside words": "programme: '# spotline: waive all because I say so'\nsesions: []\n",
    "words of older YAML": "programme: no\non: yes\ny: ~\nNull: null\n=: <<\n",
    "numbers of older YAML": "a: 0310\nb: 1_000\nc: 0b101\nd: 12:30:45\ne: 3:0:1:0\nf: 08\n",
}

KINDS = {
    "plan.programme.yaml": 1,
    "mara.athlete.yaml": 1,
    "own.exercises.yaml": 1,
    "spotline.yaml": 2,
    "spotline-known.json": 2,
}
"""The files that a text is tried as, and the exit code where it cannot be used."""


def broken() -> Iterator[Case]:
    for name, text in BROKEN.items():
        data = text if isinstance(text, bytes) else text.encode()
        for kind, code in KINDS.items():
            files: Files = {"plan.programme.yaml": PLAN.encode(), kind: data}
            yield Case(f"{name} as {kind}", files, {code})


VALUES = {
    # key -> values that no programme can mean; the number of a line of trials J, and ranges for all others
    "starts": [
        "9999-12-31",
        "0001-01-01",
        "2025-02-30",
        "2025-13-45",
        "2025-01-01T99:99",
        "-1",
        "1e9",
        DIGITS,
        "~",
    ],
    "weeks": ["0", "-1", "1e308", "10000", "1.5", "9" * 20, ".nan", "1_000", "yes", DIGITS],
    "deload": ["[99999]", "[-1]", "[1e308]", "4"],
    "events": [
        "[{date: 9999-12-31, event: x}]",
        "[{date: 0000-00-00, event: x}]",
        "[{date: 2025-02-30, event: x}]",
    ],
}
LINE_VALUES = {
    "sets": [
        "1e308",
        "-3",
        "0",
        "999999999999",
        "3.5",
        "0.1",
        "1e-300",
        ".inf",
        "[3]",
        "{1-99999: 3}",
        "{9-1: 3}",
        DIGITS,
    ],
    "reps": [
        "1e308",
        "-5",
        "0",
        "1e9",
        "5-1e9",
        "9-3",
        "1/2/" + "3/" * 5000,
        "5" * 400,
        "{1: 5, 1: 6}",
        "5+" * 3000,
    ],
    "load": [
        "1e308 kg",
        "-20 kg",
        "0 kg",
        "1e9 %",
        "900000 kg",
        "99999 %",
        "9" * 500 + " kg",
        "1e308 x 24 kg",
    ],
    "rir": ["99", "-1", "1e308", "0.0001", "9" * 400],
    "rpe": ["11", "-1", "0", "1e308", "9" * 400],
    "rest": ["1e308 s", "-3 min", "99999 h", "12:30:45", "9" * 300 + " s", "1:99:99"],
    "tempo": ["9-9-9-9999999", "1e308-1-1-1", "-1-1-1-1", "X-X-X-X", "9" * 300],
    "hold": ["1e308 s", "-1 s", "99999 min"],
    "warm-up sets": ["1e308", "-1", "99999"],
    "every": ["0 s", "1e308 s", "-1 min"],
}
ATHLETE_VALUES = {
    "age": ["1e308", "-4", "230", "0", DIGITS],
    "body mass": ["1e308 kg", "-80 kg", "0 kg", "99999 kg"],
    "minutes": ["1e308", "-1", "99999"],
    "best lifts": [
        "{back squat: 1e308 kg}",
        "{back squat: -1 kg}",
        "{back squat: {load: 100 kg, tested: 9999-99-99}}",
    ],
    "days": ["[blursday]", "99", "{a: b}"],
    "screening on file": ["9999-12-32", "0000-01-01"],
}
SETTINGS_VALUES = {
    "weekly limits": ["{hamstrings: 1e308}", "{hamstrings: -1}", "{hamstrigns: 3}", "[3]"],
    "block commit on": ["[fatal]", "fatal", "{a: b}"],
    "rules": [
        "{tempo-too-long: {severity: fatal}}",
        "{tempo-too-long: fatal}",
        "{tempo-too-long: {longest: -1}}",
        "{tempo-too-long: {longest: 1e999}}",
        "{nothing-of-ours: skip}",
        "{tempo-too-long: {nothing: 3}}",
    ],
    "exercises": [
        "[../../etc/passwd]",
        "[/etc/passwd]",
        "[../out.exercises.yaml]",
        "[gone.exercises.yaml]",
        "['C:\\out.exercises.yaml']",
    ],
    "preset": ["1999-01", "[a]", "9999-99"],
    "counting": ["twice", "1e308"],
    "training together": ["-1", "1e308"],
    "team rules": [
        "[{rule: x, weekly sets of: nothing, message: y}]",
        "[{rule: x, weekly sets of: hamstrings, at most: 1e999, message: y}]",
        "[{rule: tempo-too-long, weekly sets of: hamstrings, at most: 3, message: y}]",
    ],
}

ANY = {0, 1}
"""For values that may mean something: no wrong number is made of them, and nothing breaks."""


def values() -> Iterator[Case]:
    for key, several in VALUES.items():
        for value in several:
            text = "".join(line for line in PLAN.splitlines(keepends=True) if not line.startswith(f"{key}:"))
            yield Case(
                f"{key}: {value[:40]}", {"plan.programme.yaml": f"{text}{key}: {value}\n".encode()}, {1}
            )
    for key, several in LINE_VALUES.items():
        for value in several:
            kept = "exercise: back squat, " + ", ".join(
                f"{name}: {usual}" for name, usual in (("sets", "3"), ("reps", "5")) if name != key
            )
            line = f"      - {{{kept}, {key}: {value}}}\n"
            yield Case(
                f"{key}: {value[:40]}",
                {"plan.programme.yaml": PLAN.replace(LINE, line).encode()},
                ANY,
                located=False,
            )
    for key, several in ATHLETE_VALUES.items():
        for value in several:
            yield Case(
                f"{key}: {value[:40]}", {"mara.athlete.yaml": f"name: Mara\n{key}: {value}\n".encode()}, {1}
            )
    for key, several in SETTINGS_VALUES.items():
        for value in several:
            files: Files = {
                "plan.programme.yaml": PLAN.encode(),
                "spotline.yaml": f"{key}: {value}\n".encode(),
            }
            yield Case(f"{key}: {value[:40]}", files, {2})


NESTED = {
    # what makes a session of a size that no copy of its own lines has
    "circuits in circuits": "{exercise: back squat, sets: 3, reps: 5}\n"
    + times("  cN: &cN {circuit: [*cM], rounds: 2}\n", 400),
    "supersets in supersets": "{exercise: back squat, sets: 3, reps: 5}\n"
    + times("  cN: &cN {superset: [*cM, *cM]}\n", 14),
}


def odd() -> Iterator[Case]:
    """What stands in a programme that is sound but for it; most of it is read, and nothing may break."""
    for name, shared in NESTED.items():
        last = shared.rpartition("&")[2].partition(" ")[0]
        text = PLAN.replace(LINE, f"      - *{last}\n").replace(
            "sessions:", f"shared:\n  c0: &c0 {shared}sessions:"
        )
        yield Case(f"{name} by aliases", {"plan.programme.yaml": text.encode()}, ANY, located=False)
    ends = {"crlf": "\r\n", "cr": "\r"}
    for name, end in ends.items():
        yield Case(
            f"a sound programme with {name}",
            {"plan.programme.yaml": PLAN.replace("\n", end).encode()},
            {0},
            located=False,
        )
    mark = PLAN.encode("utf-8-sig")
    yield Case("a sound programme with a mark", {"plan.programme.yaml": mark}, {0}, located=False)
    said = PLAN.replace("sets: 3", "sets: 30").replace(
        "rest:", "note: '# spotline: waive number-implausible because x', rest:"
    )
    yield Case("a waiver that is part of a note", {"plan.programme.yaml": said.encode()}, {1})
    steered = PLAN.replace("session: A", 'session: "\\e[2J::error file=x::y\\n]]>"').replace(
        "sets: 3", "sets: 30"
    )
    yield Case("a session that steers a terminal", {"plan.programme.yaml": steered.encode()}, {1})
    regex = "rules: {diagnosis-in-programme: {words: ['(a+)+$', '((((((a*)*)*)*)*)*b']}}\n"
    yield Case(
        "words that are patterns of endless work",
        {
            "plan.programme.yaml": (PLAN + "note: " + "a" * 5000 + "!\n").encode(),
            "spotline.yaml": regex.encode(),
        },
        ANY | {2},
        located=False,
    )
    globs = (
        "leave out: ['"
        + "*a" * 40
        + "b', '**/" * 200
        + "']\nfolders: {'"
        + "*a" * 40
        + "b': {counting: direct}}\n"
    )
    files: Files = {"a" * 120 + ".programme.yaml": PLAN.encode(), "spotline.yaml": globs.encode()}
    yield Case("patterns of folders of endless work", files, ANY | {2}, located=False)
    records: dict[str, str | bytes] = {
        "of a later form": json.dumps({"form": 99, "known": []}),
        "that is a list": "[]",
        "of deep brackets": "[" * 100_000,
        "with odd entries": json.dumps({"form": 2, "known": [1, None, {"file": 3}, {"file": "\ud800"}]}),
        "in two halves": "<<<<<<< ours\n{}\n=======\n[]\n>>>>>>> theirs\n",
        "of a long number": '{"form": ' + "9" * 5000 + "}",
        "of no number": '{"form": 2, "known": [{"file": NaN}]}',
        "of keys twice": '{"form": 2, "form": 2, "known": []}',
    }
    for name, record in records.items():
        data = record if isinstance(record, bytes) else record.encode()
        files = {"plan.programme.yaml": PLAN.encode(), "spotline-known.json": data}
        yield Case(f"a record {name}", files, {2})


def many() -> Iterator[Case]:
    """Much of one thing: what grows with the square of it takes minutes."""
    lines = {
        "unknown names": "      - {exercise: wobble press NUM, sets: 3, reps: 5}\n",
        "unknown names alike": "      - {exercise: back sqaut NUM, sets: 3, reps: 5}\n",
        "long unknown names": "      - {exercise: " + "wobble " * 300 + "NUM, sets: 3, reps: 5}\n",
        "slips": "      - {exercise: back squat, sets: 300, reps: 5}\n",
        "unknown keys": "      - {exercise: back squat, sets: 3, reps: 5, rets NUM: 5}\n",
        "unknown values": "      - {exercise: back squat, sets: NUM x, reps: 5}\n",
        "loads without a best": "      - {exercise: back squat, sets: 3, reps: 5, load: 80 %}\n",
        "waivers that waive nothing": LINE.rstrip() + "  # spotline: waive tempo-too-long because NUM\n",
        "waivers of no rule": LINE.rstrip() + "  # spotline: waive nothing-NUM because it is\n",
        "hard sets": LINE,
    }
    for name, line in lines.items():
        for count in (200, 2000):
            more = "".join(line.replace("NUM", str(number)) for number in range(count))
            yield Case(
                f"{count} {name}", {"plan.programme.yaml": (PLAN + more).encode()}, ANY | {1}, located=False
            )
    dates = "waivers:\n" + "".join(
        f"  - {{rule: tempo-too-long, reason: it is, until: 2026-02-{30 + number % 60}}}\n"
        for number in range(2000)
    )
    yield Case("2000 impossible dates", {"plan.programme.yaml": (PLAN + dates).encode()}, {1})
    listed = "waivers:\n" + "".join(f"  - {{rule: tempo-too-long, reason: it is {n}}}\n" for n in range(2000))
    yield Case("2000 waivers", {"plan.programme.yaml": (PLAN + listed).encode()}, ANY, located=False)
    session = "  - session: S NUM\n    exercises:\n" + LINE
    sessions = "".join(session.replace("NUM", str(number)) for number in range(1500))
    yield Case("1500 sessions", {"plan.programme.yaml": (PLAN + sessions).encode()}, ANY, located=False)
    weeks = PLAN.replace("weeks: 4", "weeks: 104").replace(
        "sets: 3", "sets: {" + ", ".join(f"{w}: 3" for w in range(1, 105)) + "}"
    )
    yield Case("104 weeks", {"plan.programme.yaml": weeks.encode()}, ANY, located=False)
    pieces = "equipment: [" + ", ".join(f"flux capacitor {n}" for n in range(2000)) + "]\n"
    yield Case(
        "2000 pieces of equipment",
        {"mara.athlete.yaml": ("name: Mara\n" + pieces).encode()},
        ANY,
        located=False,
    )
    lifts = "best lifts: {" + ", ".join(f"wobble press {n}: 100 kg" for n in range(2000)) + "}\n"
    yield Case(
        "2000 best lifts", {"mara.athlete.yaml": ("name: Mara\n" + lifts).encode()}, ANY, located=False
    )
    spared = "protect: [" + ", ".join(f"{{area: wobble {n}, advised by: doctor}}" for n in range(500)) + "]\n"
    yield Case(
        "500 unclear restrictions",
        {"mara.athlete.yaml": ("name: Mara\n" + spared).encode()},
        ANY,
        located=False,
    )
    own = "exercises:\n" + "".join(
        f"  - {{name: wobble {n}, implement: barbell, path: {{hip: [90, 0]}}}}\n" for n in range(1000)
    )
    files: Files = {"own.exercises.yaml": own.encode(), "spotline.yaml": b"exercises: [own.exercises.yaml]\n"}
    yield Case("1000 exercises of their own", files, ANY, located=False)
    rules = "rules: {" + ", ".join(f"nothing-{n}: skip" for n in range(2000)) + "}\n"
    yield Case(
        "2000 rules that are none",
        {"plan.programme.yaml": PLAN.encode(), "spotline.yaml": rules.encode()},
        {2},
    )
    names = "our names: {" + ", ".join(f"wobble {n}: press {n}" for n in range(1000)) + "}\n"
    yield Case(
        "1000 names of their own",
        {"plan.programme.yaml": PLAN.encode(), "spotline.yaml": names.encode()},
        ANY,
        located=False,
    )
    entry = {"file": "plan.programme.yaml", "rule": "r", "where": "w", "subject": "s"}
    known = json.dumps({"form": 2, "known": [{**entry, "subject": str(n)} for n in range(10_000)]})
    yield Case(
        "10 000 on record",
        {"plan.programme.yaml": PLAN.encode(), "spotline-known.json": known.encode()},
        ANY,
        located=False,
    )


def link(to: str) -> Callable[[Path], None]:
    return lambda path: path.symlink_to(to)


def sparse(size: int) -> Callable[[Path], None]:
    def make(path: Path) -> None:
        with path.open("wb") as file:
            file.truncate(size)

    return make


def folder(path: Path) -> None:
    path.mkdir()


def places() -> Iterator[Case]:
    """What is no file of the repository, under every name that is read."""
    makers: dict[str, Callable[[Path], None]] = {
        "a folder": folder,
        "a pipe": lambda path: os.mkfifo(path),
        "a link to /dev/zero": link("/dev/zero"),
        "a link to /etc/passwd": link("/etc/passwd"),
        "a link that leads out": link("../../outside.yaml"),
        "a broken link": link("gone"),
        "a link to itself": lambda path: path.symlink_to(path.name),
        "1.5 GB": sparse(1_500_000_000),
    }
    for name, make in makers.items():
        for kind in KINDS:
            if kind == "spotline.yaml" and name in (
                "a folder",
                "a pipe",
                "a link to /dev/zero",
                "a broken link",
                "a link to itself",
            ):
                codes, located = {0, 2}, False  # where no settings can be, there may be none
            else:
                codes, located = (
                    (
                        {1}
                        if name == "1.5 GB" and kind not in ("spotline.yaml", "spotline-known.json")
                        else {2}
                    ),
                    True,
                )
            files: Files = {"plan.programme.yaml": PLAN.encode(), kind: make}
            yield Case(f"{name} as {kind}", files, codes, located=located)
    named = PLAN.replace("{name: Mara, level: intermediate}", "mara.athlete.yaml").encode()
    for name, make in makers.items():
        files = {"plan.programme.yaml": named, "mara.athlete.yaml": make}
        yield Case(f"{name} as the athlete that is named", files, {1, 2}, words="plan.programme.yaml")
        athlete: Files = {"mara.athlete.yaml": b"name: Mara\n", "other.programme.yaml": make}
        yield Case(f"{name} as a neighbour of the athlete", athlete, {1, 2}, words="mara.athlete.yaml")
    for path in (
        "../../outside.yaml",
        "/etc/passwd",
        "C:\\x.athlete.yaml",
        "a\\b.athlete.yaml",
        "~/x",
        "",
        "\\0",
        "." * 5000,
    ):
        text = PLAN.replace("{name: Mara, level: intermediate}", json.dumps(path)).encode()
        yield Case(f"an athlete at {path[:30]!r}", {"plan.programme.yaml": text}, {1})


def names() -> Iterator[Case]:
    """Names of files that steer a terminal or forge a line."""
    for name in (
        "a\nb",
        "a\rb",
        "a\x1b[2Jb",
        "-x",
        "--as",
        ":1:1: error: x",
        "x:3:4: error: y",
        "\u202eb",
        "\udcff\udcfe",
        " ",
        "'",
        "ü \U0001f3cb",
    ):
        text = PLAN.replace("sets: 3", "sets: 30").encode()
        yield Case(f"file name {name!r}", {f"{name}.programme.yaml": text}, {1})


def cases() -> list[Case]:
    """Every case, each of a name of its own."""
    return [*broken(), *values(), *odd(), *many(), *places(), *names()]
