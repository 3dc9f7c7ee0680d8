"""Each slip of the pen gives one finding, at its place, in a coach's words."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.mending.edits import with_edits
from spotline.lint.schemas.explain import explain
from spotline.lint.schemas.slips import nearest, repairs
from spotline.lint.syntax.builder import parse
from spotline.lint.syntax.tree import Mapping

EXAMPLES = Path(__file__).parents[2] / "examples"


def told(content, kind="programme"):
    return explain(parse("p.yaml", content).root, kind)


def in_session(item):
    return f"programme: P\nsessions:\n  - session: Lower A\n    exercises:\n      - {item}\n"


def line(words):
    return in_session(f"{{{words}}}")


def one(findings):
    assert [(finding.place.excerpt, finding.rule, finding.counted) for finding in findings][1:] == []
    return findings[0]


def mended(content, finding):
    edit = finding.edits[0]
    return content[: edit.place.start] + edit.words + content[edit.place.end :]


# What is written in an exercise: the place of the finding, its name, what was counted, the change.
IN_A_LINE = [
    ("exercise: squat, setts: 3", "setts", "key-unknown", "An exercise has no `setts`.", "Write `sets`."),
    ("exercise: squat, set: 3", "set", "key-unknown", "An exercise has no `set`.", "Write `sets`."),
    ("exersise: squat, sets: 3", "exersise", "key-unknown", "An exercise has no `exersise`.", "Write `exercise`."),
    ("exercise: squat, sets: 3, weight: 60 kg", "weight", "key-unknown", "An exercise has no `weight`.", "Write `load`."),
    ("exercise: squat, sets: 3, rets: 90 s", "rets", "key-unknown", "An exercise has no `rets`.", "Write `rest`."),
    ("exercise: squat, sets: 3, warm_up_sets: 2", "warm_up_sets", "key-unknown", "An exercise has no `warm_up_sets`.", "Write `warm-up sets`."),
    ("exercise: squat, sets: 3, day: monday", "day", "key-unknown", "An exercise has no `day`.", "Move it there, or take it out."),
    ("exercise: squat, sets: 3, colour: red", "colour", "key-unknown", "An exercise has no `colour`.", "Take it out, or say it in a `note`."),
    ("exercise: squat, sets: 3, set: 4", "set", "key-unknown", "An exercise has no `set`.", "Take one of the two out."),
    ("exercise: squat", "exercise: squat", "key-missing", "This exercise has neither `sets` nor `work` nor `for` nor `test`.", "Add `sets`, like `sets: 3`."),
    ("sets: 3, reps: 5", "sets: 3, reps: 5", "key-missing", "This exercise has no `exercise`.", "Add `exercise`."),
    ("exercise: swing, for: 10 min", "for", "key-missing", "`for` needs `every` beside it.", "Add `every`, like `every: 30 s`."),
    ("exercise: squat, sets: 3, work: [{sets: 1}]", "sets", "keys-at-odds", "`sets` stands beside `work`.", "Take one of them out."),
    ("exercise: squat, load: 5 kg, reps: 5, work: [{sets: 1}]", "load", "keys-at-odds", "`load` and `reps` stand beside `work`.", "Take one of them out."),
    ("exercise: squat, sets: 3, load: fifty", "fifty", "value-unreadable", "`fifty` is not a load.", "Write it like `80 %`, `60 kg`, `8-10RM` or `red band`, or say it in a `note`."),
    ("exercise: squat, sets: 3, load: 60", "60", "value-unreadable", "`60` is not a load.", "Say the unit: `60 %`, `60 kg` or `60 lb`."),
    ("exercise: squat, sets: 3, load: RPE 8", "RPE 8", "value-unreadable", "`RPE 8` is not a load.", "Effort stands on its own: write `rpe: 8`."),
    ("exercise: squat, sets: 8 reps", "8 reps", "value-unreadable", "`8 reps` is not a number of sets.", "Write it like `3` or `3-4`."),
    ("exercise: squat, sets: 3, tempo: 2-0-1-0-1", "2-0-1-0-1", "value-unreadable", "`2-0-1-0-1` is not a tempo.", "Write it like `3-1-X-0` or `2-0-2-0`, or say it in a `note`."),
    ("exercise: squat, sets: 3, velocity: 0.5", "0.5", "value-unreadable", "`0.5` is not a velocity.", "Write `0.5 m/s`."),
    ("exercise: squat, sets: 3, rir: RPE 8", "RPE 8", "value-unreadable", "`RPE 8` is not a number of repetitions in reserve.", "Effort stands on its own: write `rpe: 8`."),
    ("exercise: squat, sets: 3, rir: 11", "11", "value-out-of-range", "`rir` is 11.", "Write a whole or half number from 0 to 10."),
    ("exercise: squat, sets: 3, rir: 2.3", "2.3", "value-out-of-range", "`rir` is 2.3.", "Write a whole or half number from 0 to 10."),
    ("exercise: squat, sets: 0", "0", "value-out-of-range", "`sets` is 0.", "Write a number from 1 to 100."),
    ("exercise: squat, sets: [3, 4]", "[3, 4]", "value-wrong-kind", "`sets` is a list; it takes one value.", "Write it like `3` or `3-4`."),
    ("exercise: squat, sets: ", "", "value-missing", "`sets` is empty.", "Write it, like `sets: 3`, or take it out."),
    ("exercise: squat, sets: {1: three}", "three", "value-unreadable", "`three` is not a number of sets.", "Write it like `3`, `3-4`, `0` or `half`."),
    ("exercise: 21, sets: 3", "21", "value-wrong-kind", "`exercise` is a number, 21; it takes text.", "Write '21', in quotes."),
    ("exercise: squat, sets: 3, side: {1: left, other: right}", "{1: left, other: right}", "value-wrong-kind", "`side` goes by week here; it takes one word.", "Write the line once for each `side`, with `in weeks` on each."),
    ("exercise: squat, sets: 3, or: {exercise: leg press, sets: 2}", "{exercise: leg press, sets: 2}", "value-wrong-kind", "`or` is a group of lines with names; it takes text.", "Write the name alone, `leg press`; the note of the line takes the rest."),
    ("exercise: squat, sets: 3, side: both", "both", "value-unknown", "`both` is not a side.", "Write `each`."),
    ("supersett: [{exercise: a, sets: 3}, {exercise: b, sets: 3}], rest: 90 s", "supersett", "key-unknown", "A superset has no `supersett`.", "Write `superset`."),
    ("superset: [{exercise: a, sets: 3}]", "[{exercise: a, sets: 3}]", "value-out-of-range", "`superset` holds 1; it takes at least 2.", "Add what is missing, or write what is there as a line of its own."),
    ("circuit: {exercises: [{exercise: a}]}", "exercises", "key-missing", "This circuit has neither `rounds` nor `for`.", "Add `rounds`, like `rounds: 3`."),
    ("circuit: {rounds: 3, exercises: [{exercise: a, sets: 3}]}", "sets", "keys-at-odds", "`sets` stands on an exercise whose rounds give its sets.", "Take one of them out."),
]  # fmt: skip

A_PROGRAMME = "sessions: [{activity: run}]\n"
IN_A_FILE = [
    ("programme", "programme: P\n", "programme", "key-missing", "This programme has neither `sessions` nor `blocks`.", "Add `sessions`."),
    ("programme", "programme: P\nsessions: []\n", "[]", "value-missing", "`sessions` is empty.", "Write it, or take it out."),
    ("programme", "programme: P\nsessions: Lower A\n", "Lower A", "value-wrong-kind", "`sessions` is the text `Lower A`; it takes a list.", "Write a list: start each line below it with a dash."),
    ("programme", "programme: P\nsession: [{activity: run}]\n", "session", "key-unknown", "A programme has no `session`.", "Write `sessions`."),
    ("programme", "programme: P\nsessions: [{sesion: A, exercises: [{exercise: a, sets: 3}]}]\n", "sesion", "key-unknown", "A session has no `sesion`.", "Write `session`."),
    ("programme", "programme: P\nsessions: [{session: A, load: 5 kg, exercises: [{exercise: a, sets: 3}]}]\n", "load", "key-unknown", "A session has no `load`.", "Move it there, or take it out."),
    ("programme", "programme: P\nsessions: [{session: A, day: wensday, exercises: [{exercise: a, sets: 3}]}]\n", "wensday", "value-unknown", "`wensday` is not a weekday.", "Write `wednesday`."),
    ("programme", "title: P\n" + A_PROGRAMME, "title", "key-unknown", "A programme has no `title`.", "Write `programme`."),
    ("programme", "programme: P\ngoal: Strength\n" + A_PROGRAMME, "Strength", "value-unknown", "`Strength` is not a goal.", "Write `strength`."),
    ("programme", "programme: P\ngoal: hypertrofy\n" + A_PROGRAMME, "hypertrofy", "value-unknown", "`hypertrofy` is not a goal.", "Write `hypertrophy`."),
    ("programme", "programme: P\nfocus: legs\n" + A_PROGRAMME, "legs", "value-wrong-kind", "`focus` is the text `legs`; it takes a list.", "Write `[legs]`."),
    ("programme", "programme: P\nathlete: mara\n" + A_PROGRAMME, "mara", "value-unreadable", "`mara` is not a path of an athlete file.", "Write it like `../athletes/mara.athlete.yaml`."),
    ("programme", "programme: P\nstarts: 5.1.2026\n" + A_PROGRAMME, "5.1.2026", "value-unreadable", "`5.1.2026` is not a date.", "Write `2026-01-05`."),
    ("programme", "programme: P\nweeks: 6 weeks\n" + A_PROGRAMME, "6 weeks", "value-unreadable", "`6 weeks` is not a number of weeks.", "Write `6`."),
    ("programme", "programme: P\nage: 30\n" + A_PROGRAMME, "age", "key-unknown", "A programme has no `age`.", "Move it there, or take it out."),
    ("programme", "programme: P\nblocks: [{name: a, weeks: 4, sessions: [{activity: run}]}]\n" + A_PROGRAMME, "sessions", "keys-at-odds", "`sessions` stands beside `blocks`.", "Take one of them out."),
    ("programme", "programme: P\nblocks: [{name: a, weeks: 4, deload: 'yes', sessions: [{activity: run}]}]\n", "'yes'", "value-wrong-kind", "`deload` is the text `yes`; it takes true or false.", "Write `true`."),
    ("programme", "programme: P\nsessions: [{activity: run, minutes: 75 min}]\n", "75 min", "value-unreadable", "`75 min` is not a number of minutes.", "Write `75`."),
    ("programme", "programme: P\nsessions: [{activity: run, loads: {calves: medium}}]\n", "medium", "value-unknown", "`medium` is not a grade of load.", "Write `moderate`."),
    ("programme", "programme: P\nsessions: [{activity: run, loads: {'': high}}]\n", "''", "key-empty", "The name before the colon is empty.", "Write it."),
    ("programme", "programme: P\nathlete: {name: Mara, level: begginer}\n" + A_PROGRAMME, "begginer", "value-unknown", "`begginer` is not a level.", "Write `novice`."),
    ("athlete", "level: novice\n", "level", "key-missing", "This athlete has no `name`.", "Add `name`."),
    ("athlete", "name: M\nbody mass: 72\n", "72", "value-unreadable", "`72` is not a mass.", "Say the unit: `72 kg` or `72 lb`."),
    ("athlete", "name: M\nbest lifts: {chin-up: 4 reps}\n", "4 reps", "value-unreadable", "`4 reps` is not a load.", "Write it with its load: `{load: bodyweight, reps: 4}`."),
    ("athlete", "name: M\ntraining max: {back squat: 90 kg}\n", "training max", "key-unknown", "An athlete has no `training max`.", "Write `working best` there, or take it out."),
    ("athlete", "name: M\nprotect: none\n", "none", "value-wrong-kind", "`protect` is the text `none`; it takes a list.", "Where there is nothing to say, take `protect` out."),
    ("athlete", "name: M\nclearance on file: 2026-10\n", "2026-10", "value-unreadable", "`2026-10` is not a date.", "Write its day, too: `2026-10-01`."),
    ("athlete", "name: M\nequipment: [box: {up to: 60 cm}]\n", "60 cm", "value-unreadable", "`60 cm` is not a mass.", "Write a weight, like `16 kg`; sizes, colours and grades stand in a `note`."),
    ("programme", "programme: P\nphase: {1-2: build, 3: taper}\n" + A_PROGRAMME, "{1-2: build, 3: taper}", "value-wrong-kind", "`phase` goes by week here; it takes one word.", "Write `blocks`, each with its `weeks` and its `phase`."),
    ("programme", "programme: P\nevents: [regatta]\n" + A_PROGRAMME, "regatta", "value-wrong-kind", "Item 1 under `events` is the text `regatta`; it takes lines with names.", "Write `event: regatta`, with `date` beside it."),
    ("programme", "programme: P\ngoal: [strength]\n" + A_PROGRAMME, "[strength]", "value-wrong-kind", "`goal` is a list; it takes one word.", "Write `strength`."),
    ("athlete", "name: M\nbodymass: 72 kg\n", "bodymass", "key-unknown", "An athlete has no `bodymass`.", "Write `body mass`."),
    ("athlete", "name: M\nprotect: [{advised by: physio}]\n", "advised by", "key-missing", "This restriction has neither `movement` nor `area`.", "Add `movement`."),
    ("athlete", "name: M\nprotect: [{area: knee, movement: jumps, advised by: physio}]\n", "movement", "keys-at-odds", "`movement` stands beside `area`.", "Take one of them out."),
    ("athlete", "name: M\nbest lifts: {back squat: 140}\n", "140", "value-unreadable", "`140` is not a load.", "Say the unit: `140 kg` or `140 lb`."),
    ("athlete", "name: M\nage: 230\n", "230", "value-out-of-range", "`age` is 230.", "Write a number from 5 to 110."),
    ("team", "block commit on: error\n", "error", "value-wrong-kind", "`block commit on` is the text `error`; it takes a list.", "Write `[error]`."),
    ("team", "leave out: [/archive]\n", "/archive", "value-unreadable", "`/archive` is not a path below this file.", "Write it like `archive` or `drafts/*.programme.yaml`."),
    ("team", "motto: hello\n", "motto", "key-unknown", "A settings file has no `motto`.", "Take it out."),
]  # fmt: skip
SLIPS = [("programme", line(words), *rest) for words, *rest in IN_A_LINE] + IN_A_FILE


@pytest.mark.parametrize(("kind", "content", "excerpt", "rule", "counted", "change"), SLIPS)
def test_one_slip_is_one_finding_at_its_place(kind, content, excerpt, rule, counted, change):
    finding = one(told(content, kind))
    assert (finding.place.excerpt, finding.rule, finding.counted, finding.change) == (
        excerpt,
        rule,
        counted,
        change,
    )
    assert finding.severity == "error"


@pytest.mark.parametrize(("kind", "content", "change"), [(slip[0], slip[1], slip[5]) for slip in SLIPS])
def test_an_edit_mends_what_it_is_offered_for(kind, content, change):
    finding = one(told(content, kind))
    offered = re.fullmatch(r"Write [`']([^`]*?)[`'](?:, in quotes)?\.", change)
    assert (finding.surely is not None) == bool(offered)
    if offered:
        assert finding.edits[0].words.strip("'") == offered[1]
    for edit in finding.edits:
        assert (edit.label, told(with_edits(content, [edit]), kind)) == (edit.label, [])


NAMES_NO_WORDS = (
    "Write it.",
    "Start each line below it with a dash.",
    "Add what is missing, or write what is there as a line of its own.",
    *(f"Add `{name}`." for name in ("exercise", "sessions", "name", "movement")),
)
"""Changes that leave the words to the coach: nobody else knows what was meant."""

THE_ONLY_ONE = ("programme: P\nsessions: []\n", "motto: hello\n")
"""What cannot be taken out: without it nothing would be left, or something would be missing."""


@pytest.mark.parametrize(("kind", "content", "change"), [(slip[0], slip[1], slip[5]) for slip in SLIPS])
def test_what_names_its_remedy_carries_it(kind, content, change):
    shows_a_form = change.startswith(
        (
            "Write it like",
            "Write a list",
            "Write it with its load",
            "Write its day",
            "Write a weight",
            "Write `blocks`",
        )
    ) or change.endswith("beside it.")
    shows_a_form = shows_a_form or change.startswith(("Write the line once", "Write the name alone"))
    names_some = change not in NAMES_NO_WORDS and not shows_a_form and content not in THE_ONLY_ONE
    assert bool(one(told(content, kind)).edits) == names_some


PROGRAMMING = re.compile(
    r"\b(mapping|node|schema|regex|null|string|boolean|integer|array|object|property|key)s?\b|!"
)


@pytest.mark.parametrize(("kind", "content"), [(slip[0], slip[1]) for slip in SLIPS])
def test_the_words_are_a_coachs(kind, content):
    finding = one(told(content, kind))
    for words in (finding.counted, finding.wanted, finding.change, *(edit.label for edit in finding.edits)):
        assert not PROGRAMMING.search(words), words


@pytest.mark.parametrize(
    ("content", "wanted"),
    [
        (line("exercise: squat, sets: 3, day: monday"), "`day` belongs to a session or an activity."),
        (
            line("exercise: squat, sets: 3, rounds: 3"),
            "`rounds` belongs to a superset or a set of intervals.",
        ),
        (line("exercise: squat, setts: 3"), "The nearest that it has is `sets`."),
        (line("exercise: squat, sets: 3, set: 4"), "`sets` stands here already."),
    ],
)
def test_what_was_wanted(content, wanted):
    assert one(told(content)).wanted == wanted


@pytest.mark.parametrize(
    ("content", "where"),
    [
        (line("exercise: squat, sets: 3, reps: many"), "Lower A, squat, reps"),
        (line("exercise: squat, sets: {1-3: many}"), "Lower A, squat, sets, week 1-3"),
        (line("exercise: {1-3: squat, 4: lunge}, sets: many"), "Lower A, squat, sets"),
        (line("exercise: squat, work: [{sets: 1}, {sets: many}]"), "Lower A, squat, work 2, sets"),
        (line("superset: [{exercise: a, sets: 3}, {exercise: b, sets: many}]"), "Lower A, b, sets"),
        (line("exercise: squat, setts: 3"), "Lower A, squat"),
        (in_session("back squat"), "Lower A, exercises 1"),
        ("programme: P\ngoal: big\n" + A_PROGRAMME, "goal"),
        ("programme: P\nblocks: [{name: Base, weeks: 0, sessions: [{activity: run}]}]\n", "Base, weeks"),
        ("programme: P\nathlete: {name: Mara, age: 2}\n" + A_PROGRAMME, "Mara, age"),
    ],
)
def test_the_place_in_words(content, where):
    assert one(told(content)).where == where


def test_the_value_of_a_misspelt_key_is_judged_as_what_was_meant():
    first, second = told(line("exercise: squat, setts: many"))
    assert (first.rule, first.place.excerpt) == ("key-unknown", "setts")
    assert (second.rule, second.place.excerpt) == ("value-unreadable", "many")


def test_a_misspelt_group_is_read_as_what_was_meant():
    findings = told(line("supersett: [{exercise: a, sets: 3}, {exercise: b, setz: 3}]"))
    assert [finding.place.excerpt for finding in findings] == ["supersett", "setz"]


def test_findings_come_in_the_order_of_their_places():
    findings = told("goal: big\nweeks: 0\nprogramm: P\nphase: x\nsessions: [{activity: run, minutes: 0}]\n")
    assert [finding.place.line for finding in findings] == [1, 2, 3, 4, 5]


def test_what_fits_has_no_findings():
    assert told("programme: P\n" + A_PROGRAMME) == []


@pytest.mark.parametrize("content", ["- a\n- b\n", "words\n", "3\n"])
def test_a_file_without_keys_has_been_told_of_already(content):
    assert told(content) == []


def test_numbers_that_no_program_keeps_and_lost_aliases_have_been_told_of_already():
    reading = parse("p", line("exercise: squat, sets: 99999999999999999999, reps: *lost"))
    assert len(reading.findings) == 2
    assert explain(reading.root, "programme") == []


ANCHORED = """\
programme: P
shared:
  heavy: &heavy {sets: 3, lod: 80 %, rest: 90 steps}
  pause: &pause two minutes
sessions:
  - session: Lower A
    exercises:
      - {<<: *heavy, exercise: squat}
      - {<<: *heavy, exercise: lunge}
      - {exercise: row, sets: 3, rest: *pause}
"""


def test_a_slip_that_is_used_again_is_told_once_where_it_stands():
    findings = told(ANCHORED)
    assert [(one.place.line, one.place.excerpt, one.where) for one in findings] == [
        (3, "lod", "Lower A, squat"),
        (3, "90 steps", "Lower A, squat, rest"),
        (4, "two minutes", "Lower A, row, rest"),
    ]
    assert [[(by.line, by.excerpt) for by in one.place.through] for one in findings] == [
        [(8, "*heavy")],
        [(8, "*heavy")],
        [(10, "*pause")],
    ]


def test_a_whole_line_used_again_through_an_alias():
    content = in_session("&a {exercise: squat, sets: many}") + "      - *a\n"
    finding = one(told(content))
    assert (finding.place.line, finding.place.excerpt, finding.place.through) == (5, "many", ())


def test_many_slips_are_all_told_in_bearable_time():
    lines = "".join(f"      - {{exercise: e{n}, setts: 3, reps: many}}\n" for n in range(300))
    findings = told("programme: P\nsessions:\n  - session: A\n    exercises:\n" + lines)
    assert len(findings) == 600


@pytest.mark.parametrize("file", ["slips.programme.yaml", "wil.athlete.yaml"])
def test_the_faulty_examples_have_no_two_findings_at_one_place(file):
    content = (EXAMPLES / "faulty" / file).read_text(encoding="utf-8")
    findings = told(content, file.split(".")[1])
    places = [finding.place.key for finding in findings]
    assert len(findings) >= 5
    assert len(set(places)) == len(places)


@pytest.mark.parametrize("folder", ["programmes", "athletes"])
def test_the_examples_have_none(folder):
    files = list((EXAMPLES / folder).iterdir())
    assert files
    for file in files:
        assert told(file.read_text(encoding="utf-8"), folder.removesuffix("s")) == [], file


def test_words_that_no_known_word_is_near():
    assert nearest("zzz", ["sets", "reps"]) is None
    assert nearest("", ["sets"]) is None
    assert nearest("sets", []) is None


def test_a_repair_never_makes_up_a_unit_or_drops_one_that_says_something_else():
    assert all(re.search("min|MIN", words) for words in repairs("8 min", "sets"))
    assert all("kg" not in words for words in repairs("60", "load"))


WHOLE = (
    "programme: P\nathlete: {name: Mara, days: [monday], protect: [{area: knee, advised by: physio}]}\nweeks: 4\n"
    "shared: {easy: &easy {sets: 3, rest: 90 s}}\nevents: [{date: 2026-02-14, event: regatta}]\nsessions:\n"
    "  - {activity: run, minutes: 60-75, loads: {calves: high}}\n  - session: Lower A\n    day: [monday, 4]\n"
    "    exercises:\n      - {<<: *easy, exercise: squat, reps: {1-3: 5, 4: 12/10/8}, progression: {add: 1 rep}}\n"
    "      - {exercise: press, work: [{sets: 1, load: 80 %}], or: [dip]}\n"
    "      - {superset: [{exercise: row, reps: 5}, {exercise: dip, hold: 5 s}], rounds: 3}\n"
    "      - circuit: {rounds: 3, exercises: [{exercise: plank}]}\n      - {exercise: swing, every: 60 s, for: 10 min}\n"
)


@settings(max_examples=400, deadline=None)
@given(st.data())
def test_whatever_is_cut_or_put_in_the_library_and_the_findings_agree(data):
    content = WHOLE
    for _ in range(data.draw(st.integers(1, 3))):
        start = data.draw(st.integers(0, len(content)))
        end = start + data.draw(st.sampled_from([0, 0, 1, 1, 2, 5, 12]))
        put = data.draw(
            st.sampled_from(
                ["", "s", "x", "3", " ", "*easy", "[", "]", "{}", "null", ": ", ", ", "\n", "-", "{1: "]
            )
        )
        content = content[:start] + put + content[end:]
    reading = parse("p", content)
    if isinstance(reading.root, Mapping) and not reading.findings:
        findings = explain(reading.root, "programme")
        assert bool(findings) != Draft202012Validator(schemas.load("programme")).is_valid(reading.root.plain)
        for finding in findings:
            assert 0 <= finding.place.start <= finding.place.end <= len(content)
            assert finding.change
