"""What has one meaning is read however it is spelt, and every validator takes what the reader takes."""

from __future__ import annotations

import random
import re
from collections.abc import Iterator
from itertools import product
from pathlib import Path

import pytest
import yaml
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.model import quantities
from spotline.lint.model.quantities import OTHERWISE, Load, Range, Reps
from spotline.lint.model.read_programme import read_programme
from spotline.lint.model.sessions import WEEKDAYS
from spotline.lint.model.two_readings import sets_of_reps
from spotline.lint.model.weeks import weekday, weeks
from spotline.lint.schemas.explain import explain
from spotline.lint.schemas.fast_check import fits
from spotline.lint.schemas.plain_spellings import plain_spellings
from spotline.lint.schemas.spellings import KINDS, PLAIN, pattern, plain_spelling
from spotline.lint.syntax.builder import parse
from spotline.tests.write_schemas import BUILT, FILES, SCHEMA, bare, render, with_patterns

ROOT = Path(__file__).parents[2]

READ = {
    "weekday": {
        "mon": "monday", "Mon": "monday", "mondays": "monday", "MONDAY": "monday", "Tues": "tuesday", "weds": "wednesday",
        "Thurs.": "thursday", "fr": "friday", "Saturdays": "saturday", "SUN": "sunday",
    },
    "reps": {
        "AMRAP": "amrap", "Amrap": "amrap", "as many as possible": "amrap", "max reps": "amrap", "8/side": "8 each",
        "8 each": "8 each", "8 per leg": "8 each", "8-10/arm": "8-10 each", "6 a side": "6 each", "12 ea.": "12 each",
        "12/10/8 each": "12/10/8 each", "AMRAP/side": "amrap each", "8 – 12": "8-12", "8 to 10": "8-10", "8—10 reps": "8-10",
        "30 s": "30 s", "45 sec": "45 s", "1 min": "1 min", "30s/side": "30 s each", "to failure": "to failure",
        "Failure": "to failure", "3x12": "3 sets of 12", "4 × 8–10": "4 sets of 8-10", "5x5": "5 sets of 5",
        "3 sets of 5": "3 sets of 5", "3x30s": "3 sets of 30 s", "3xAMRAP": "3 sets of amrap", "12-10-8": "12/10/8",
        "12, 10, 8": "12/10/8", "12 / 10 / 8": "12/10/8", "2 + 2 + 2": "2+2+2", "15 reps": "15",
        "8/s": "8 each", "10-12 / S": "10-12 each", "6 p/s": "6 each",
    },
    "sets": {"3 sets": "3", "3 – 4": "3-4", "3 to 4": "3-4", "3x": "3", "3x12": "3 sets of 12", "2 x 15-20": "2 sets of 15-20"},
    "load": {
        "72,5 kg": "72.5 kg", "62,5kg": "62.5 kg", "BW": "bodyweight", "Bodyweight": "bodyweight", "bw+10kg": "bodyweight + 10 kg",
        "body weight – 20 kilos": "bodyweight - 20 kg", "~70 %": "about 70 %", "ca. 60 kg": "about 60 kg", ">= 85 %": "from 85 %",
        "at least 85 percent": "from 85 %", "<= 60 %": "up to 60 %", "-12 %": "-12 %", "+10 kg": "+10 kg", "– 5 kg": "-5 kg",
        "160 lbs": "160 lb", "10rm": "10RM", "8 to 10 RM": "8-10RM", "80 % of 1RM": "80 % of 1RM", "75 % max": "75 % of 1RM",
        "65% of the squat": "65 % of squat", "~70 % of Bench press": "about 70 % of Bench press", "90% of 5 rm": "90 % of 5RM",
        "80–85 % of 3RM": "80-85 % of 3RM", "80 percent (160kg)": "80 % (160 kg)", "72,5 kg (80%)": "72.5 kg (80 %)",
        "15 rm (60 percent)": "15RM (60 %)", "20 % of BW + 5kg": "20 % bodyweight + 5 kg", "Heavy": "heavy", "moderate to Heavy": "moderate to heavy",
        "Empty bar": "empty bar", "70 / 75 % of clean": "70/75 % of clean",
        "92/97/101–103 %": "92/97/101-103 %", "67,5/70/73-75 kg": "67.5/70/73-75 kg", "80 to 85 / 90 %": "80-85/90 %",
        "to 92 %": "up to 92 %", "work up to 100 kg": "up to 100 kg", "Building to 92,5%": "up to 92.5 %",
        "Assisted": "assisted", "band-assisted": "assisted", "with help": "assisted",
        "20 kg assisted": "bodyweight - 20 kg", "assisted 15-20kg": "bodyweight - 15-20 kg", "30 lbs of help": "bodyweight - 30 lb",
        "2×24 kg": "2 x 24 kg", "70 / 75 / 80 %": "70/75/80 %", "20 % of bodyweight": "20 % bodyweight",
        "90 % of the top set": "90 % of top set", "60 – 62,5 kg": "60-62.5 kg",
    },
    "rest": {
        "1:30": "90 s", "10:00": "10 min", "90s": "90s", "2'": "2 min", "1'30\"": "90 s", "45\"": "45 s", "1 min 30": "90 s",
        "2–3 min": "2-3 min", "60 to 90 sec": "60-90 s", "1:30-2:00": "90-120 s", "90 s - 2 min": "90-120 s", "1,5 min": "1.5 min",
        "3 minutes": "3 min", "60-90": "60-90 s",
    },
    "tempo": {"30X1": "3-0-X-1", "31x0": "3-1-X-0", "3/1/X/0": "3-1-X-0", "3 1 1 0": "3-1-1-0", "2–0–2–0": "2-0-2-0", "3-0-3": "3-0-3-0", "202": "2-0-2-0", "X/0/X": "X-0-X-0"},
    "hold": {
        "30 s/side": "30 s each", "30s/s": "30 s each", "1:30 per leg": "90 s each", "20-30 sec each": "20-30 s each", "30/side": "30 s each",
        "45\"": "45 s",
    },
    "distance": {"30 m/side": "30 m each", "20–30 metres per arm": "20-30 m each", "60 ft": "60 ft", "60 feet": "60 ft", "20 metres": "20 m", "25 yards": "25 yd", "12,5 m": "12.5 m", "20 to 30m": "20-30 m"},
    "weekNumbers": {"3+5": "3+5", "1-2 + 5": "1-2+5", "1–3": "1-3", "weeks 1 to 3": "1-3", "wk 4": "4", "3 and 5": "3+5"},
    "workingBest": {"87,5 percent": "87.5 %"},
    "rir": {"3+": "3+", "at least 3": "3+", "3 + RIR": "3+", "1 / 1 / 0": "1/1/0", "up to 2": "up to 2", "to failure": "to failure", "2 RIR": "2", "1 – 2": "1-2", "1,5": "1.5"},
    "rpe": {"max. 8,5": "up to 8.5", "<=8": "up to 8", "RPE 7/8/9": "7/8/9", "8+": "8+", "RPE 8": "8", "@8": "8", "8 to 9": "8-9", "8,5": "8.5", "Failure": "to failure"},
    "side": {"Left": "left", "R": "right", "per leg": "each", "each side": "each"},
    "velocity": {"0,5 m/s": "0.5 m/s", "0.4 – 0.5 m/s": "0.4-0.5 m/s"},
    "percent": {"20 percent": "20 %", "10 to 20%": "10-20 %"},
    "mass": {"72,5 kg": "72.5 kg", "160 pounds": "160 lb"},
    "liftedLoad": {"BW + 20 kg": "bodyweight + 20 kg", "102,5kg": "102.5 kg"},
    "sessionEffort": {"6 – 8": "6-8", "7,5": "7.5"},
    "roundCount": {"3 rounds": "3", "3 to 4": "3-4"},
}  # fmt: skip
"""Spellings by quantity, each with its plain spelling."""

NOT_READ = {
    "weekday": ["mo day", "m", "monda", "lundi"],
    "reps": [
        "3x5",
        "8x3",
        "10x3",
        "12x3",
        "10 alternating",
        "5 @8",
        "20 m",
        "8/sides/leg",
        "8 or 10",
        "10,8",
        "-8",
        "each",
    ],
    "sets": ["3x5", "three", "x3", "3 reps"],
    "load": [
        "1,250 kg",
        "1.250 kg",
        "85+ %",
        "28",
        "-12",
        "@8",
        "~",
        "BW + 10",
        "72,5",
        "10-8-6 kg",
        "-12 % of top set",
        "plenty",
        "80 % of",
        "80 % (5)",
        "80 % (85 %)",
        "to failure",
        "assisted a bit",
    ],
    "rest": ["3", "9", "1.30", "20 m", "1:75", "1:3", "'", "90 kg", "2-3", "100000"],
    "length": ["10", "60"],
    "tempo": ["3-1-1", "311", "3-1-3", "2-0-3", "3-1-X-0-1", "30x", "3-1-1-0 s"],
    "hold": ["3 each", "30 s each way", "each"],
    "distance": ["30 m/s", "20", "20 s", "60'", "20 miles"],
    "weekNumbers": ["5 %", "1,3", "0", "1+", "+3", "week", "all"],
    "rir": ["fail", "RPE 8", "two", "11 left"],
    "side": ["both", "alternating", "lr"],
}
"""What has two readings, or none."""


def each_side(kind):
    """Reads a time or a distance with the side that it may name."""

    def read(value):
        words = plain_spelling(kind, value) or ""
        known = quantities.duration if kind == "hold" else quantities.distance
        held = known(words.removesuffix(" each"))
        return (held, words.endswith(" each")) if held else None

    return read


READERS = {
    "weekday": weekday,
    "reps": lambda value: quantities.reps(value) or sets_of_reps(value),
    "sets": lambda value: quantities.sets(value) or sets_of_reps(value),
    "load": quantities.load,
    "rest": quantities.duration,
    "tempo": quantities.tempo,
    "hold": each_side("hold"),
    "distance": each_side("distance"),
    "weekNumbers": weeks,
    "rir": quantities.rir,
    "rpe": quantities.rpe,
    "side": lambda value: quantities.spelt("side", value, str) or value,
    "velocity": quantities.velocity,
    "percent": quantities.percent,
    "workingBest": lambda value: quantities.spelt("workingBest", value, quantities.percent),
    "mass": quantities.mass,
    "liftedLoad": quantities.load,
    "sessionEffort": lambda value: (
        quantities.number_or_range(value)
        or quantities.spelt("sessionEffort", value, quantities.number_or_range)
    ),
    "roundCount": lambda value: quantities.number_or_range(value) or OTHERWISE["rounds"](value),
}


def as_data(value):
    """What two readings of the same meaning share."""
    if isinstance(value, (Reps, Load)):
        return [(name, as_data(getattr(value, name))) for name in value.__slots__]
    if isinstance(value, tuple):
        return [as_data(one) for one in value]
    if isinstance(value, Range):
        return round(value.low, 6), round(value.high, 6)
    return value


def takes(kind):
    """Whether the printed schemas take some words for a quantity."""
    schema = schemas.load("athlete" if kind in ("weekday", "mass", "liftedLoad") else "programme")
    return Draft202012Validator({"$ref": f"#/$defs/{kind}", "$defs": schema["$defs"]}).is_valid


@pytest.mark.parametrize(
    ("kind", "written", "plain"), [(kind, *pair) for kind, held in READ.items() for pair in held.items()]
)
def test_what_has_one_meaning_is_read_as_its_plain_spelling(kind, written, plain):
    assert plain_spelling(kind, written) == plain
    assert takes(kind)(written)
    read = READERS[kind]
    assert read(written)
    if written.lower() != plain:
        assert as_data(read(written)) == as_data(read(plain))


@pytest.mark.parametrize(
    ("kind", "written"), [(kind, one) for kind, held in NOT_READ.items() for one in held]
)
def test_what_has_two_readings_or_none_is_not_read(kind, written):
    assert plain_spelling(kind, written) is None
    assert not takes(kind)(written)
    if kind in READERS and kind not in ("load", "side"):
        assert not READERS[kind](written)


def test_a_bare_number_of_seconds_is_read_from_ten_up():
    assert plain_spelling("rest", 90) == "90 s"
    assert quantities.duration(90) == quantities.duration("90") == Range(90, 90)
    for kind in ("rest", "time"):
        assert [number for number in (3, 9, 10, 90, 9999, 10000, True, 12.5) if takes(kind)(number)] == [
            10,
            90,
            9999,
        ]
    assert [number for number in (3, 9, 12.5, True) if quantities.duration(number)] == []
    assert not takes("length")(90)


def test_a_tempo_in_four_digits_is_no_number():
    assert quantities.tempo(3010) == (3, 0, 1, 0)
    assert takes("tempo")(3010)
    assert not takes("tempo")(310)
    assert quantities.tempo(310) is None


def test_rough_loads_keep_their_word_and_are_counted_as_their_number():
    for written, words in (("~70 %", "about 70 %"), (">= 85 %", "from 85 %"), ("≤60 kg", "up to 60 kg")):
        load = quantities.load(written)
        assert load is not None
        assert load.words == words
        assert load.values == (
            Range(float(re.findall("[0-9]+", written)[0]), float(re.findall("[0-9]+", written)[0])),
        )


# Thousands of spellings


def spellings() -> Iterator[tuple[str, str, str]]:
    """Quantity, spelling and plain spelling of every mixture of parts."""
    dashes = ["-", " - ", "–", " – ", "—", " to ", " To ", "−"]
    for dash, (low, high), unit in product(dashes, [("8", "12"), ("6", "8")], ["", " reps", " Reps", "reps"]):
        yield "reps", f"{low}{dash}{high}{unit}", f"{low}-{high}"
        for each in (
            "/side",
            " / leg",
            " per arm",
            " each",
            "each",
            " PER SIDE",
            " a side",
            " ea.",
            " each leg",
        ):
            yield "reps", f"{low}{dash}{high}{unit}{each}", f"{low}-{high} each"
    units = {
        "kg": ["kg", "KG", "Kg", "kgs", "kilos"],
        "lb": ["lb", "lbs", "LB", "pounds"],
        "%": ["%", "percent", "pct"],
    }
    for comma, (unit, spelt), blank in product(".,", units.items(), ["", " "]):
        for one in spelt:
            yield "load", f"72{comma}5{blank}{one}", f"72.5 {unit}"
            for dash in dashes:
                yield "load", f"70{dash}72{comma}5{blank}{one}", f"70-72.5 {unit}"
            for rough, word in (
                ("~", "about"),
                ("about ", "about"),
                (">= ", "from"),
                (">=", "from"),
                ("max. ", "up to"),
            ):
                yield "load", f"{rough}72{comma}5{blank}{one}", f"{word} 72.5 {unit}"
            if unit != "%":
                for body, sign in product(["BW", "bw", "bodyweight", "Body weight"], ["+", " + "]):
                    yield "load", f"{body}{sign}12{comma}5{blank}{one}", f"bodyweight + 12.5 {unit}"
                for times in ("x", " x ", "X", "×"):
                    yield "load", f"2{times}22{comma}5{blank}{one}", f"2 x 22.5 {unit}"
    seconds, minutes = (
        ["s", " s", "sec", " secs", " seconds", '"', " S"],
        ["min", " min", "'", " mins", " minutes", " MIN"],
    )
    for number, one in product(["30", "45", "90"], seconds):
        yield "rest", f"{number}{one}", f"{number} s"
        for dash in dashes:
            yield "rest", f"20{dash}{number}{one}", f"20-{number} s"
    for number, one in product(["2", "3", "10"], minutes):
        yield "rest", f"{number}{one}", f"{number} min"
        for dash in dashes:
            yield "rest", f"1{dash}{number}{one}", f"1-{number} min"
    for number in range(1, 10):
        for rest in range(1, 60):
            yield "rest", f"{number}:{rest:02}", f"{number * 60 + rest} s"
            yield "rest", f"{number}'{rest:02}\"", f"{number * 60 + rest} s"
            yield "rest", f"{number} min {rest} s", f"{number * 60 + rest} s"
    for sets, reps, times in product(
        range(1, 6), range(8, 21), ["x", " x ", "×", "X", " sets of ", " sets x "]
    ):
        yield "reps", f"{sets}{times}{reps}", f"{sets} sets of {reps}"
        yield "sets", f"{sets}{times}{reps}", f"{sets} sets of {reps}"
    for day, name in enumerate(WEEKDAYS):
        for short in {name[:2], name[:3], name, f"{name}s"}:
            for spelt in (short, short.capitalize(), short.upper()):
                yield "weekday", spelt, WEEKDAYS[day]
    for first, last, more, dash, plus in product("12", "34", "56", dashes, ["+", " + ", " and ", " & "]):
        yield "weekNumbers", f"{first}{dash}{last}{plus}{more}", f"{first}-{last}+{more}"


ALL = list(dict.fromkeys(spellings()))


def test_thousands_of_spellings_mean_what_their_plain_spelling_means():
    assert len(ALL) > 3000
    checks = {kind: takes(kind) for kind in {kind for kind, _, _ in ALL}}
    for kind, written, plain in ALL:
        found = plain_spelling(kind, written)
        assert str(found).replace(" ", "") == plain.replace(" ", ""), (kind, written, found)
        assert checks[kind](written), (kind, written)
        if plain not in WEEKDAYS:
            assert as_data(READERS[kind](written))[:1] == as_data(READERS[kind](plain))[:1], (kind, written)


@pytest.mark.parametrize("kind", KINDS)
def test_a_plain_spelling_is_its_own_plain_spelling(kind):
    for written, plain in READ.get(kind, {}).items():
        assert plain_spelling(kind, plain) == plain, written


# The schemas


@pytest.mark.parametrize("name", FILES)
def test_the_schemas_hold_the_patterns_of_the_spellings(name):
    text = (SCHEMA / name).read_text(encoding="utf-8")
    assert with_patterns(text) == text, "run tests/write_schemas.py"


def test_what_files_are_tested_against_is_what_the_schemas_say():
    assert BUILT.read_text(encoding="utf-8") == render(), "run tests/write_schemas.py"
    for name in ("programme", "athlete", "exercises", "team"):
        assert schemas.tested(name) == bare(schemas.load(name))
        assert schemas.tested(name) != schemas.load(name)
    assert schemas.tested("review") is schemas.load("review"), "what is printed is tested against nothing"


def test_every_pattern_keeps_to_what_other_languages_can_run():
    for kind in KINDS:
        found = pattern(kind)
        assert found.isascii() or "\\u" not in found
        assert not re.search(r"\(\?(?!:)", found), kind
        assert not re.search(r"\\[^./+\\u]", found), kind
        for part in found.split("$|^"):
            re.compile(part.strip("^$"))


SPELT = sorted(
    {written for held in READ.values() for written in held}
    | {one for held in NOT_READ.values() for one in held}
)
OTHER = [None, 3, 9, 90, 0, 3010, 12.5, True, "", "x", [], {}, {"1-2": 3}, {"1+2": "3x12"}, ["mon", "Wed"]]


def places(data, path=()):
    if isinstance(data, dict):
        for key, value in data.items():
            yield from places(value, (*path, key))
    elif isinstance(data, list):
        for at, value in enumerate(data):
            yield from places(value, (*path, at))
    else:
        yield path


def test_a_thousand_mutations_of_the_examples_get_one_verdict():
    """The library on the printed schema, the fast check, the findings and the reader agree on every one."""
    chance = random.Random(8)
    library = Draft202012Validator(schemas.load("programme"))
    files = sorted((ROOT / "examples" / "programmes").glob("*.yaml"), key=lambda one: one.stat().st_size)[:5]
    texts = [file.read_text(encoding="utf-8") for file in files]
    verdicts = {True: 0, False: 0}
    for _ in range(1000):
        data = parse("p", chance.choice(texts)).root.plain
        data = yaml.safe_load(yaml.safe_dump(data))
        keys = (
            "sets",
            "reps",
            "load",
            "rir",
            "rpe",
            "rest",
            "tempo",
            "hold",
            "distance",
            "day",
            "every",
            "for",
            "side",
        )
        own = [path for path in places(data) if set(path) & set(keys)]
        path = chance.choice(own)
        group = data
        for step in path[:-1]:
            group = group[step]
        group[path[-1]] = chance.choice(OTHER) if chance.random() < 0.2 else chance.choice(SPELT)
        root = parse("p", yaml.safe_dump(data, allow_unicode=True)).root
        valid = library.is_valid(root.plain)
        verdicts[valid] += 1
        assert valid or not fits("programme")(root.plain), path
        assert (explain(root, "programme") == []) == valid, (path, group)
        if valid:
            programme, told = read_programme(root, lambda term: None)
            asked = [
                one
                for one in told
                if one.rule
                in ("two-readings", "weeks-beyond", "weeks-left-out", "keys-at-odds", "no-set-fits")
                or one.counted.endswith(("comes to none.", "to be a part of."))
            ]
            unread = {key for line in programme.prescriptions() for key in line.unread}
            assert not unread or asked, (path, group[path[-1]], unread)
    assert min(verdicts.values()) > 150


# In the file


PLAIN_FILE = """\
programme: P
weeks: 2
sessions:
  - session: A
    day: mon
    exercises:
      - {exercise: squat, sets: 3, reps: 8 – 12, load: '72,5 kg', rest: 90}
      - exercise: leg curl
        reps: 3x12
        load: {1+2: BW}
      - {exercise: plank, sets: 3, hold: 30 s, note: 3x12}
"""


def test_the_plain_spelling_of_a_file_is_offered_where_it_differs():
    root = parse("p", PLAIN_FILE).root
    edits = list(plain_spellings(root, "programme"))
    assert [(edit.place.excerpt, edit.words) for edit in edits] == [
        ("mon", "monday"),
        ("8 – 12", "8-12"),
        ("'72,5 kg'", "72.5 kg"),
        ("90", "90 s"),
        ("reps: 3x12", "sets: 3\n        reps: 12"),
        ("BW", "bodyweight"),
    ]
    text = PLAIN_FILE
    for edit in reversed(edits):
        text = text[: edit.place.start] + edit.words + text[edit.place.end :]
    mended = parse("p", text).root
    assert fits("programme")(mended.plain)
    assert list(plain_spellings(mended, "programme")) == []


def test_a_file_in_plain_spelling_has_nothing_to_offer():
    for file in sorted((ROOT / "examples" / "programmes").glob("*.yaml")):
        root = parse("p", file.read_text(encoding="utf-8")).root
        assert list(plain_spellings(root, "programme")) == [], file.name


def test_what_an_alias_repeats_is_offered_once_where_it_stands():
    text = PLAIN_FILE.replace("rest: 90}", "rest: &pause 90}").replace(
        "reps: 3x12\n", "reps: 3x12\n        rest: *pause\n"
    )
    edits = [edit for edit in plain_spellings(parse("p", text).root, "programme") if edit.words == "90 s"]
    assert [edit.place.line for edit in edits] == [7]


def test_plain_patterns_come_first_and_stand_by_themselves():
    for kind, plain in PLAIN.items():
        assert pattern(kind).startswith(f"^{plain}$|^")
