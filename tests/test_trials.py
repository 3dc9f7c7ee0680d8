"""What coaches wrote in trials, kind by kind: each case with a second of its kind that was not among them.

`READ` has one meaning and no finding; `ASKED` has two, both of them in one finding with an edit for each; `ONCE` is one
fault and one finding; `SAYABLE` could not be said in the first version. What each counts is tested where it is counted:
tests/schemas/test_spellings.py, tests/model/test_two_readings.py, tests/model/test_other_work.py and tests/counting/.
"""

from __future__ import annotations

import re

import pytest
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.mending.edits import with_edits
from spotline.lint.syntax.builder import parse

HEAD = "programme: Trial\nathlete: {name: Mara, body mass: 70 kg, best lifts: {back squat: 100 kg, bench press: 60 kg}}\n"
SQUAT = "exercise: back squat, sets: 3, reps: 5"
SESSION = "  - session: A\n    exercises:\n      - {exercise: back squat, sets: 3, reps: 5, load: 70 %}\n"


def line(*words: str) -> str:
    """A programme with these lines, each in braces."""
    return f"{HEAD}weeks: 4\nsessions:\n  - session: A\n    exercises:\n" + "".join(
        f"      - {{{one}}}\n" for one in words
    )


def head(*words: str) -> str:
    """A programme with these keys at its top."""
    return HEAD + "".join(f"{one}\n" for one in ("weeks: 4", *words)) + "sessions:\n" + SESSION


def session(*words: str) -> str:
    """A programme whose session has these keys."""
    return head().replace("    exercises:", "".join(f"    {one}\n" for one in words) + "    exercises:")


def item(words: str) -> str:
    """A programme with a further session or activity."""
    return head() + f"  - {{{words}}}\n"


def squad(load: str) -> str:
    """A programme of two athletes with a load by athlete."""
    return line(f"exercise: goblet squat, sets: 3, reps: 8, load: {load}").replace(
        HEAD, "programme: Trial\nathletes: [{name: Sanne}, {name: Tobi}]\n"
    )


READ = {
    "mon": [session("day: mon"), session("day: [tues, Thurs.]")],
    "Mon, mondays": [session("day: Mon"), session("day: mondays"), session("day: FRIDAYS")],
    "AMRAP": [line("exercise: push-up, sets: 3, reps: AMRAP"), line("exercise: push-up, sets: 3, reps: as many as possible")],
    "8/side": [line("exercise: split squat, sets: 3, reps: 8/side"), line("exercise: split squat, sets: 3, reps: 10/s")],
    "8 each, 8 per leg": [
        line("exercise: split squat, sets: 3, reps: 8 each"), line("exercise: split squat, sets: 3, reps: 8 per leg"),
        line("exercise: side plank, sets: 3, hold: 30 s/side"), line("exercise: suitcase carry, sets: 3, distance: 20 m per arm"),
    ],
    "1:30": [line(f"{SQUAT}, rest: 1:30"), line(f"{SQUAT}, rest: 2:15")],
    "90s, 2'": [line(f"{SQUAT}, rest: 90s"), line(f"{SQUAT}, rest: 2'"), line(f"{SQUAT}, rest: 1'30\"")],
    "a bare rest of 90": [line(f"{SQUAT}, rest: 90"), line("exercise: plank, sets: 3, hold: 45")],
    "72,5 kg": [line(f"{SQUAT}, load: '72,5 kg'"), line(f"{SQUAT}, load: '62,5kg'")],
    "8 – 12, 8 to 10": [
        line("exercise: leg curl, sets: 3, reps: 8 – 12"), line("exercise: leg curl, sets: 3, reps: 8 to 10"),
        line("exercise: leg curl, sets: 3, reps: 6—8"),
    ],
    "-12 % after a top set": [
        line("exercise: back squat, work: [{sets: 1, reps: 3, load: 80 %}, {sets: 3, reps: 5, load: -12 %}]"),
        line("exercise: back squat, in weeks: 1+3, work: [{sets: 1, reps: 3, rpe: 8}, {sets: 2, reps: 5, load: {1: -8 %, 3: -10 %}}]"),
    ],
    "65 % of squat": [line("exercise: front squat, sets: 3, reps: 5, load: 65 % of squat"), line("exercise: hip thrust, sets: 3, reps: 5, load: 80% of the back squat")],
    "3x12 under sets or reps": [line("exercise: leg curl, reps: 3x12"), line("exercise: leg curl, sets: 3x12"), line("exercise: leg curl, reps: 4 × 8–10")],
    "~70 %, >= 85 %": [line(f"{SQUAT}, load: ~70 %"), line("exercise: back squat, sets: 3, reps: 2, load: '>= 85 %'"), line("exercise: back squat, sets: 1, reps: 1, load: to 92 %")],
    "reps: 30 s": [line("exercise: mountain climber, sets: 3, reps: 30 s"), line("exercise: push-up, sets: 3, reps: 45 sec")],
    "to failure": [line("exercise: push-up, sets: 3, reps: to failure"), line("exercise: leg curl, sets: 3, reps: 12, rir: Failure")],
    "what the printed schema refused": [
        line(f"{SQUAT}, load: '62,5 kg'"), session("day: Monday"), line("exercise: pull-up, sets: 3, reps: 5, load: BW"),
        line("exercise: leg curl, reps: 2x14"), line(f"{SQUAT}, rest: 2'"), line("exercise: sled push, sets: 3, distance: 60 ft"),
        line("exercise: back squat, sets: {1: 3, 3+4: 2, 2: 3}, reps: 5"), session("day: {Week 1: sun, other: fri}"),
    ],
}  # fmt: skip
"""G, first part: by what was written, the case and its siblings."""

ASKED = {
    "3x5": [line("exercise: back squat, reps: 3x5"), line("exercise: back squat, sets: 8x3")],
    "8/8 in two sets of a lift for one side": [line("exercise: split squat, sets: 2, reps: 8/8, rir: 2"), line("exercise: single-leg leg press, sets: 2, reps: 12/12, rir: 2")],
    "+5 % or -10 % on a percentage": [
        line("exercise: back squat, sets: 3, reps: 5, load: {1-2: 70 %, 3-4: +5 %}"), line("exercise: back squat, sets: 3, reps: 5, load: {1-3: 70 %, 4: -10 %}"),
        head("everything: {4: {load: -15 %}}"),
    ],
    "-12 % without a top set": [line(f"{SQUAT}, load: -12 %"), line("exercise: bench press, sets: 3, reps: 5, load: -8 %")],
    "+10 kg on what is not lifted with the body": [line(f"{SQUAT}, load: +10 kg"), line("exercise: leg press, sets: 3, reps: 10, load: +20 kg")],
    "1.30": [line(f"{SQUAT}, rest: 1.30"), line("exercise: plank, sets: 3, hold: 0.45")],
    "20 m": [line("exercise: plank, sets: 3, hold: 20 m"), line(f"{SQUAT}, rest: 5 m")],
    "1,250 kg": [line("exercise: leg press, sets: 3, reps: 5, load: '1,250 kg'"), line(f"{SQUAT}, load: 1.100 lb")],
    "10-8 in two sets": [line("exercise: back squat, sets: 2, reps: 10-8"), line("exercise: leg curl, sets: 2, reps: 15-12")],
    "10 alternating": [line("exercise: walking lunge, sets: 3, reps: 10 alternating"), line("exercise: dead bug, sets: 3, reps: 12 alt.")],
    "a pair of dumbbells at 28 kg": [line("exercise: dumbbell bench press, sets: 3, reps: 8, load: 28 kg"), line("exercise: dumbbell shoulder press, sets: 3, reps: 8, load: 40 lb")],
    "@8": [line("exercise: back squat, sets: 3, reps: '@8'"), line("exercise: back squat, sets: 3, reps: '5 @7'")],
    "a tempo of three numbers, or with X first": [line(f"{SQUAT}, tempo: 3-1-1"), line(f"{SQUAT}, tempo: 311"), line(f"{SQUAT}, tempo: X-1-3-0")],
    "5/7/27": [head("starts: 5/7/27"), head("events: [{date: 3/4/2027, event: meet}]")],
    "deload: 4": [head("deload: 2"), head("deload: 1")],
    "85+ %": [line("exercise: back squat, sets: 3, reps: 3, load: 85+ %"), line("exercise: back squat, sets: 3, reps: 2, load: 90 %+")],
    "12+10+8 in three sets": [line("exercise: leg curl, sets: 3, reps: 12+10+8"), line("exercise: leg curl, sets: 2, reps: 15+12")],
    "hold: 30 s on a jump": [line("exercise: box jump, sets: 3, hold: 30 s"), line("exercise: medicine ball slam, sets: 3, hold: 20 s")],
    "2/3 of the sets, for all lines": [head("everything: {4: {sets: 2/3}}"), head("everything: {4: {sets: 1/2}}")],
}  # fmt: skip
"""G, second part, and what was silently wrong: two readings, each with an edit."""

CUT = "exercise: leg curl, sets: 3, reps: 8, note: eccentric only, left first"

ONCE = {
    "100 % and more on pulls (of what?)": [
        (line("exercise: clean pull, sets: 3, reps: 3, load: 105 %"), "more-reps-than-load-allows"), (line("exercise: rack pull, sets: 3, reps: 3, load: 110 %"), "more-reps-than-load-allows"),
    ],
    "a note cut by a comma": [(line(CUT), "comma-cuts-value"), (line("exercise: leg curl, sets: 3, reps: 8, cue: slow, hips down"), "comma-cuts-value")],
    "sets: 40": [(line("exercise: back squat, sets: 40, reps: 5, load: 70 %"), "number-implausible"), (line("exercise: leg curl, sets: 30, reps: 12, rir: 2"), "number-implausible")],
    "weeks: 4 changed to 5, or to 3": [
        (line("exercise: back squat, sets: {1-2: 3, 3-4: 4}, reps: {1-2: 5, 3-4: 3}").replace("weeks: 4", f"weeks: {weeks}"), "weeks-disagree") for weeks in (5, 3)
    ],
    "days: [mon, wed, fri] misspelt": [(session("days: [mon, wensday]"), "value-unknown"), (session("day: [mon, 9]"), "value-out-of-range")],
    "emom:": [
        (line("circuit: {emom: 12 min, exercises: [{exercise: push-up, reps: 5}]}"), "key-unknown"), (line("exercise: kettlebell swing, E2MOM: 12 min, reps: 10"), "key-unknown"),
    ],
    "5: 72,5 % in braces": [
        (line("exercise: back squat, sets: 3, reps: 5, load: {1-3: 70 %, 4: 72,5 %}"), "comma-cuts-value"), (line("exercise: leg press, sets: 3, reps: 5, load: {1-3: 100 kg, 4: 102,5 kg}"), "comma-cuts-value"),
    ],
    "sessions outdented": [
        ("programme: P\nblocks:\n  - block: one\n    weeks: 2\nsessions:\n" + SESSION, None), ("programme: P\nblocks:\n  - block: one\n    weeks: 2\n    sessions:\n" + SESSION.replace("\n", "\n") + "  - block: two\n    weeks: 1\n  sessions:\n" + SESSION, None),
    ],
    "sessions under shared": [("programme: P\nweeks: 4\nshared:\n  sessions:\n" + SESSION, None), ("programme: P\nweeks: 4\nathlete:\n  name: A\n  sessions:\n" + SESSION, None)],
}  # fmt: skip
"""D and the rest of G: one fault, one finding; with its rule where that is told apart."""

TWO = "{exercise: push-up, reps: 10}, {exercise: plank, hold: 30 s}"
LIFTS = "{exercise: power clean, reps: 1}, {exercise: front squat, reps: 2}"

SAYABLE = {
    "in weeks of a session or line": [
        line(f"{SQUAT}, load: 70 %, in weeks: 3-4"), session("in weeks: 1+3"), item("activity: run, day: tue, minutes: 30, in weeks: 2"),
        line(f"circuit: {{rounds: 3, exercises: [{TWO}]}}, in weeks: 1-2"), line("superset: [{exercise: push-up, sets: 3, reps: 8}, {exercise: row, sets: 3, reps: 8}], in weeks: 4"),
    ],
    "instead of a session": [
        item("session: Hotel, in weeks: 3, instead of: A, exercises: [{exercise: push-up, sets: 3, reps: 12}]"), item("session: Camp, in weeks: 1+4, instead of: A, day: sun, exercises: [{exercise: air squat, reps: 3x20}]"),
    ],
    "week keys 1-2+4 and other": [line("exercise: back squat, sets: {1-2+4: 3, 3: 2}, reps: 5, load: 70 %"), line("exercise: back squat, sets: {4: 2, other: 3}, reps: 5, load: 70 %")],
    "everything": [
        head("everything: {2: {load: +2 points}, 4: {sets: half, load: -10 points}}"), head("everything: {other: {rir: 3}, 4: {rest: 3 min, sets: x 2/3}}"),
        line("exercise: back squat, sets: 3, reps: 5, rir: {3: 1-2}").replace("weeks: 4", "weeks: 4\neverything: {other: {rir: 3}}"),
    ],
    "deload weeks": [head("deload: [4]"), head("deload: [2, 4]")],
    "again, with a step": [
        line("exercise: back squat, sets: 3, reps: 5, load: {1-2: 60 kg, again: +5 kg}"), line("exercise: leg curl, sets: 3, reps: {1: 8, 2: 10, again: same}, load: {1: 30 kg, 2: 28 kg, again: +2 kg}"),
    ],
    "working best": [head("working best: 90 %"), line(f"{SQUAT}, load: 80 %, working best: 85 %"), line(f"{SQUAT}, load: 85 % of 1RM")],
    "% of another lift, of bodyweight": [line("exercise: front squat, sets: 3, reps: 5, load: 65 % of back squat"), line("exercise: walking lunge, sets: 3, reps: 12, load: 20 % of bodyweight")],
    "a load in two figures": [line(f"{SQUAT}, load: 80 % (80 kg)"), line("exercise: leg press, sets: 3, reps: 12, load: 15RM (60 %)")],
    "rough loads": [line(f"{SQUAT}, load: about 70 %"), line("exercise: back squat, sets: 3, reps: 2, load: from 85 %"), line("exercise: back squat, sets: 1, reps: 1, load: up to 92 %")],
    "words for load": [line(f"{SQUAT}, load: light"), line("exercise: leg press, sets: 3, reps: 8, load: moderate to heavy"), line("exercise: chin-up, sets: 3, reps: 5, load: assisted")],
    "effort with an open end, or by set": [line("exercise: leg curl, sets: 4, reps: 8, rir: 1/1/1/0"), line(f"{SQUAT}, rpe: up to 8.5"), line("exercise: leg curl, sets: 3, reps: 8, rir: 3+"), line("exercise: leg curl, sets: 3, reps: 8, rir: to failure")],
    "rest before the next exercise": [line(f"{SQUAT}, load: 70 %, rest after: 3 min", "exercise: leg curl, sets: 3, reps: 8"), line(f"{SQUAT}, load: 70 %, rest after: {{1-2: 2 min, 3-4: 3 min}}")],
    "complexes": [
        line(f"complex: [{LIFTS}], sets: 5, load: 60 kg, rest: 2 min"), line(f"complex: [{LIFTS}], every: 2 min, for: 12 min, load: 60 kg"),
        line("exercise: clean + front squat + jerk, sets: 5, reps: 1+1+1, load: 50 kg"), line("superset: [{exercise: back squat, sets: 3, reps: 3, load: 80 %, method: contrast}, {exercise: squat jump, sets: 3, reps: 4}]"),
    ],
    "work by the clock": [
        line("exercise: kettlebell swing, every: 60 s, for: 10 min, reps: 10"), line(f"circuit: {{change every: 60 s, for: 12 min, exercises: [{TWO}]}}"), line(f"circuit: {{every: 3 min, for: 15 min, exercises: [{TWO}]}}"),
        line(f"circuit: {{for: {{1-2: 10 min, 3-4: 12 min}}, exercises: [{TWO}]}}"),
    ],
    "on and off": [
        line("intervals: bike, rounds: 8, on: 45 s, off: 15 s"), line(f"circuit: {{rounds: 3, on: 40 s, off: 20 s, exercises: [{TWO}]}}"), item("activity: bike, day: tue, rounds: 6, on: 60 s, off: 60 s"),
        line("intervals: run, rounds: 4, on: 3 min, off: {1-2: 2 min, 3-4: 90 s}"),
    ],
    "own choice": [line("own choice: trunk, minutes: 10, trains: [abdominals]"), line("own choice: mobility, minutes: {1-2: 10, 3-4: 15}")],
    "tests": [line("exercise: back squat, test: 1RM, sets: 3"), line("exercise: side plank, test: longest hold, side: each"), item("session: Test day, test: 1RM, exercises: [{exercise: bench press}]")],
    "minutes, preparation, cool-down": [session("minutes: 60"), session("preparation: [5 min bike]", "cool-down: 5 min walk", "minutes: {1-3: 60, 4: 45}")],
    "days with an hour, by week": [
        session("day: tuesday 05:45"), session("day: {1+4: sunday, 2+3: friday}"), session("day: {3: off, other: mon 18:00}"), head("rotation: [monday 18:00, friday 18:00]"),
        line(f"circuit: {{rounds: {{1-2: 3, 3-4: 4}}, exercises: [{TWO}]}}"), head("events: [{date: sat 2027-03-20, event: meet}]"),
    ],
    "places and equipment": [
        head("where: {1-3: shed, 4: hotel}").replace("{name: Mara,", "{name: Mara, places: {hotel: [band], shed: [barbell, rack]},"),
        head("where: {monday: club}").replace("{name: Mara,", "{name: Mara, places: {club: [barbell, rack, {dumbbells: {up to: 24 kg, step: 2 kg, pairs: 1, shared by: 3}}]},"),
        head().replace("{name: Mara,", "{name: Mara, equipment: [barbell, rack, {kettlebells: [8, 12, 16 kg]}],"),
    ],
    "must hold": [
        head("must hold: [{weekly sets of: quadriceps, at least: 2}]"), head("must hold: [{days of: back squat, at most: 2}]"), head("must hold: [{weekly sets of: pushing, at least as many as: pulling}]"),
        head("must hold: [{hours between: back squat, at least: 48}]"), item("activity: match, kind: [impact], day: sat").replace("weeks: 4", "weeks: 4\nmust hold: [{never two days running: impact}]"),
    ],
    "not trained, maintain": [head("not trained: [arms]"), head("maintain: [chest, back]", "focus: [legs]")],
    "values by athlete": [squad("{Sanne: 16 kg, Tobi: 24 kg}"), squad("{Tobi: 24 kg, other: 16 kg}")],
    "adjust": [
        head().replace(HEAD, "programme: T\nathletes: [{athlete: {name: A}, adjust: [{in weeks: 1-3, reps: -2}]}]\n"), head().replace(HEAD, "programme: T\nathletes: [{athlete: {name: A}, adjust: [{session: A, sets: half}, {exercise: back squat, side: left}]}]\n"),
    ],
    "advised by: coach": [
        head().replace("{name: Mara,", "{name: Mara, protect: [{movement: jumping, advised by: coach, review on: 2027-03-01}],"), head().replace("{name: Mara,", "{name: Mara, protect: [{area: neck, advised by: coach, in weeks: 1-2, review on: 2027-03-01}],"),
    ],
    "cue, stop when": [line(f"{SQUAT}, load: 70 %, cue: knees out"), line(f"{SQUAT}, load: 70 %, stop when: {{1-2: bar slows, 3-4: form breaks}}")],
    "our names": [line("exercise: toe push, sets: 3, reps: 12").replace("weeks: 4", "weeks: 4\nour names: {toe push: standing calf raise}"), line("exercise: bench row, sets: 3, reps: 8").replace("weeks: 4", "weeks: 4\nour names: {bench row: seal row}")],
}  # fmt: skip
"""The format's reach, by what could not be said in the first version."""


def cases(table):
    return [
        pytest.param(one, id=f"{case} {number}")
        for case, several in table.items()
        for number, one in enumerate(several)
    ]


@pytest.fixture(scope="module")
def told(findings):
    """What reading, the schema and the questions of two readings say of a text."""

    def run(text):
        return [one for one in findings(text) if not one.why or one.rule == "read-two-ways"]

    return run


@pytest.mark.parametrize("text", cases(READ | SAYABLE))
def test_what_has_one_meaning_is_read(text, told):
    assert [(one.rule, one.counted) for one in told(text)] == []
    assert Draft202012Validator(schemas.load("programme")).is_valid(parse("p", text).root.plain)


@pytest.mark.parametrize("text", cases(ASKED))
def test_what_has_two_readings_is_one_finding_that_offers_both(text, told):
    (found,) = told(text)
    assert found.rule in ("two-readings", "read-two-ways"), found.rule
    edits = tuple(found.edits)
    assert len(edits) == 2, [edit.words for edit in edits]
    for edit in edits:
        mended = with_edits(text, [edit])
        again = [one for one in told(mended) if one.rule == found.rule and one.place.line == found.place.line]
        assert again == [], (edit.words, again[0].counted)


@pytest.mark.parametrize("text", cases(ONCE))
def test_one_fault_is_one_finding(text, findings):
    content, rule = text
    found = [one for one in findings(content) if one.severity != "note" or one.rule == rule]
    assert len(found) == 1, [(one.rule, one.counted) for one in found]
    assert rule is None or found[0].rule == rule


def test_every_case_has_a_sibling():
    for table in (READ, ASKED, ONCE, SAYABLE):
        for case, several in table.items():
            assert len(several) > 1, case
            assert len({re.sub(r"\s", "", str(one)) for one in several}) == len(several), case
