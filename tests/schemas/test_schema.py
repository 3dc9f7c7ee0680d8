"""The schema files: valid, with a description for every property, and strict about what it takes."""

from __future__ import annotations

import json
import os

import pytest
from jsonschema import Draft202012Validator
from referencing import Registry, Resource

from spotline import schema as schemas
from spotline.lint.model import quantities
from spotline.lint.model.two_readings import sets_of_reps
from spotline.lint.model.weeks import weeks
from spotline.lint.syntax.builder import parse

FOLDER = os.path.dirname(schemas.__file__)

PROGRAMME = """\
programme: Winter base, lower body first
athlete: ../athletes/mara.athlete.yaml
goal: hypertrophy
phase: build
focus: [legs, trunk]
priority: [hamstrings]
starts: 2026-01-05
weeks: 6
events: [{date: 2026-02-14, event: regatta}]
note: one line that every level may carry
sessions:
  - session: Lower A
    day: monday                               # a weekday, a list of weekdays, or a number 1-7
    preparation: [hip mobility, 5 min bike]   # never counted
    exercises:
      - exercise: stiff-leg deadlift
        sets: {1-3: 3, 4-5: 4, 6: 2}
        reps: 5-8
        load: 80-85 %
        rir: 2
        rest: 3 min
        tempo: 3-1-X-0
        warm-up sets: 2
        or: [good morning]
        progression: {add: 2.5 kg, when: top of range in all sets}
      - exercise: back squat
        work:
          - {sets: 1, reps: 3, rpe: 8}
          - {sets: 3, reps: 5, load: 90 % of top set}
      - superset:
          - {exercise: seated leg curl, sets: 3, reps: 10-15, rest: 90 s}
          - {exercise: standing calf raise, sets: 3, reps: 10-15}
      - circuit: {rounds: 3, rest: 2 min, exercises: [{exercise: push-up, reps: 12}, {exercise: side plank, hold: 30 s, side: each}]}
      - {exercise: kettlebell swing, every: 60 s, for: 10 min, reps: 10}
  - activity: water session
    day: wednesday
    minutes: 75
    effort: 7
    loads: {hamstrings: high, lower back: high}
"""

DATE = ("2026-01-05", "5.1.2026")
TEXT = ("some words", "")
LINE = {"exercise": "back squat", "sets": 3}
VISIT = {"session": "Lower A", "exercises": [LINE]}
POSITION = (14, 0)
PART = {"file": "a", "line": 1, "column": 1, "end line": 1, "end column": 1, "words": "3"}

OWN = {"name": "boathouse hinge", "implement": "sandbag", "actions": ["hip extension"]}

RULE = {
    "rule": "units-mixed",
    "family": "upkeep",
    "severity": "warning",
    "confidence": "fact",
    "looks at": "programme",
    "finds": "Units.",
    "counts": [],
    "why": "So.",
    "off": False,
    "rests in": [],
    "sources": [],
    "limits": [],
    "flags": "a",
    "passes": "b",
    "beside": {},
}

STEP = {"kind": "sets", "words": "w", "said": ""}
LINES = {"from": 1, "before": [], "after": ["a"]}
CLEARED = {"line": 1, "rule": "r", "severity": "note", "where": "", "group": "", "weeks": [], "counted": "c"}

PROPERTIES = {
    ("programme", ""): (
        {"programme": "Winter", "sessions": [VISIT]},
        {
            "programme": TEXT,
            "athlete": ("../athletes/mara.athlete.yaml", "mara"),
            "athletes": ([{"name": "Mara"}, "wren.athlete.yml"], "mara.athlete.yaml"),
            "goal": ("muscular endurance", "Strength"),
            "phase": ("in-season", "summer"),
            "focus": (["legs"], "legs"),
            "priority": (["hamstrings"], []),
            "not trained": (["legs"], "legs"),
            "maintain": (["chest", "back"], []),
            "starts": DATE,
            "weeks": (104, 105),
            "events": ([{"date": "2026-02-14", "event": "regatta"}], ["regatta"]),
            "note": TEXT,
            "working best": ("87.5 %", "5 %"),
            "our names": ({"toe push": "standing calf raise"}, {"toe push": 3}),
            "sessions": ([{"activity": "run"}], {"Lower A": []}),
            "rotation": (["monday", "friday"], ["monday", 3]),
            "deload": ([4, "7-8"], 4),
            "where": ({"mon": "boathouse", "other": "hotel"}, {"someday": "hotel"}),
            "everything": ({"4": {"sets": "half"}, "other": {"rpe": 8}}, {"again": {"sets": 2}}),
            "must hold": ([{"weekly sets of": "hamstrings", "at least": 4}], [{"days of": "hamstrings"}]),
            "waivers": ([{"rule": "units-mixed", "reason": "Old plates."}], [{"rule": "units-mixed"}]),
            "rehabilitation": (
                {"stage": "heel drops", "advised by": "physiotherapist", "until": "2026-04-01"},
                "yes",
            ),
        },
    ),
    ("programme", "adjustedAthlete"): (
        {"athlete": "mara.athlete.yaml"},
        {
            "athlete": ({"name": "Mara"}, "mara"),
            "adjust": ([{"exercise": "back squat", "leave out": True}], [{"exercise": "back squat"}]),
        },
    ),
    ("programme", "adjustment"): (
        {"exercise": "back squat", "note": "knee"},
        {
            "exercise": TEXT,
            "swap": TEXT,
            "leave out": (True, "yes"),
            "session": TEXT,
            "in weeks": ("1-3", "some"),
            "sets": ({"1": 2, "2": 0}, "3x5"),
            "reps": (-2, "many"),
            "load": ("x 0.9", "forty"),
            "rir": ({"1-3": 2}, "some"),
            "rpe": (7, "hard"),
            "rest": ("+30 s", "long"),
            "hold": ("20 s", "long"),
            "side": ("left", "both"),
            "note": TEXT,
        },
    ),
    ("programme", "everyLine"): (
        {},
        {
            "sets": (-1, "some"),
            "reps": ("half", "many"),
            "load": ("+2 points", "forty"),
            "rir": (4, "some"),
            "rpe": ("6-7", "hard"),
            "rest": ("2 min", "long"),
            "hold": ("x 0.5", "long"),
            "note": TEXT,
        },
    ),
    ("programme", "waiver"): (
        {"rule": "region-untrained", "reason": "They row."},
        {"rule": TEXT, "place": TEXT, "subject": TEXT, "reason": TEXT, "who": TEXT, "until": DATE},
    ),
    ("programme", "event"): (
        {"date": "2026-02-14", "event": "regatta"},
        {"date": DATE, "event": TEXT, "note": TEXT},
    ),
    ("programme", "rehabilitation"): (
        {"stage": "heel drops", "advised by": "physiotherapist", "until": "2026-04-01"},
        {"stage": TEXT, "advised by": TEXT, "until": DATE},
    ),
    ("programme", "block"): (
        {"name": "Base", "weeks": 4, "sessions": [VISIT]},
        {
            "name": TEXT,
            "weeks": (1, 0),
            "phase": ("taper", "rest"),
            "deload": (True, "yes"),
            "where": ({"1-2+4": "boathouse"}, {"0": "hotel"}),
            "everything": ({"2": {"load": "-10 points"}}, {"2": {}}),
            "focus": (["legs"], "legs"),
            "rotation": (["monday 18:00", "fri"], []),
            "sessions": ([VISIT, {"activity": "run"}], []),
            "note": TEXT,
        },
    ),
    ("programme", "session"): (
        VISIT,
        {
            "session": TEXT,
            "day": ({"1+3": "mon", "2": ["tue 18:00", 5]}, {"1": "moonday"}),
            "days": (["mon", "thursday"], []),
            "in weeks": (3, 0),
            "where": ("hotel", ["hotel"]),
            "instead of": TEXT,
            "kind": (["impact"], [""]),
            "test": ("1RM", 1),
            "preparation": ("5 min bike", [""]),
            "cool-down": (["5 min walk", "calves"], {}),
            "minutes": ({"1-3": "50-60", "4": 45}, {"again": 60}),
            "exercises": ([LINE], {"exercise": "back squat"}),
            "note": TEXT,
        },
    ),
    ("programme", "activity"): (
        {"activity": "water session", "rounds": 6},
        {
            "activity": TEXT,
            "kind": ("impact", 5),
            "day": ({"1-2": 7, "other": "sunday"}, 8),
            "days": ([7], 8),
            "in weeks": ("1-2+4", "late"),
            "minutes": ({"1-3": "60-75", "4": 90}, "75 min"),
            "effort": ({"1": 7.5, "other": "6-8"}, 11),
            "rounds": ("6 rounds", "six"),
            "on": ({"1-2": "60 s", "3": 90}, "long"),
            "off": ("60 s", 5),
            "loads": ({"lower back": "high"}, {"lower back": "heavy"}),
            "note": TEXT,
        },
    ),
    ("programme", "superset"): (
        {"superset": [LINE, LINE]},
        {
            "superset": ([LINE, LINE, LINE], [LINE]),
            "in weeks": ("3+5", "late"),
            "rest": ({"1-3": "90 s", "4": "1:00"}, {"1-3": 9}),
            "note": TEXT,
        },
    ),
    ("programme", "complex"): (
        {"complex": [{"exercise": "power clean", "reps": 1}, {"exercise": "jerk", "reps": 1}], "sets": 5},
        {
            "complex": (
                [{"exercise": "clean"}, {"exercise": "jerk", "reps": "1-2"}],
                [{"exercise": "clean"}],
            ),
            "sets": ({"1-2": 5, "3": 3}, "many"),
            "load": ("75 % of clean and jerk", 75),
            "rir": (2, "two"),
            "rpe": (8, 11),
            "rest": ("2 min", 2),
            "every": ("2 min", "2"),
            "for": ("10 min", 10),
            "warm-up sets": (2, 11),
            "in weeks": ("3+5", "late"),
            "note": TEXT,
        },
    ),
    ("programme", "demand"): (
        {"weekly sets of": "hamstrings", "at least": 4},
        {
            "weekly sets of": TEXT,
            "at least": (8, "eight"),
            "at most": (4.5, -1),
            "at least as many as": TEXT,
            "in weeks": ("1-3", "late"),
            "because": TEXT,
        },
    ),
    ("programme", "intervals"): (
        {"intervals": "bike", "rounds": 8, "on": "45 s"},
        {
            "intervals": TEXT,
            "rounds": ({"1-2": 6, "3-4": 8}, "six"),
            "on": ("45 s", "long"),
            "off": ("15 s", 5),
            "distance": ("250 m", "250"),
            "every": ("2 min", "2"),
            "for": ("10 min", 10),
            "rpe": (8, 11),
            "in weeks": ("3+5", "late"),
            "note": TEXT,
        },
    ),
    ("programme", "ownChoice"): (
        {"own choice": "mobility", "minutes": 10},
        {
            "own choice": TEXT,
            "minutes": ("10-15", "10 min"),
            "trains": (["hips"], "hips"),
            "in weeks": (3, 0),
            "note": TEXT,
        },
    ),
    ("programme", "circuit"): (
        {"circuit": {"rounds": 3, "exercises": [{"exercise": "push-up"}]}},
        {
            "circuit": ({"rounds": 2, "exercises": [{"exercise": "plank"}]}, [{"exercise": "push-up"}]),
            "in weeks": (3, 0),
        },
    ),
    ("programme", "rounds"): (
        {"rounds": 3, "exercises": [{"exercise": "push-up"}]},
        {
            "rounds": ({"1-2": 2, "3-4": "3-4"}, "three"),
            "every": ("3 min", "3"),
            "change every": ("60 s", "one minute"),
            "for": ({"1-3": "10 min", "4": "12 min"}, 12),
            "in weeks": ("1-2", "early"),
            "on": ("40 s", "long"),
            "off": ("20 s", 5),
            "for time": (True, "yes"),
            "time cap": ("20 min", 20),
            "rest": ("2 min", 2),
            "exercises": ([{"exercise": "push-up", "reps": 12}], []),
            "note": TEXT,
        },
    ),
    ("programme", "prescription"): (
        {"exercise": "back squat"},
        {
            "exercise": ({"1-3": "back squat", "4-6": "front squat"}, 21),
            "sets": ("3-4", "3x5"),
            "reps": ("12/10/8+", "8 or 10"),
            "load": ("bodyweight + 10 kg", 60),
            "rir": (1.5, 2.3),
            "rpe": ("7-8.5", 0),
            "rest": ("2-3 min", 3),
            "rest after": ("3 min", "long"),
            "tempo": ("3-1-X-0", "3-1-X"),
            "hold": ("30 s", 3),
            "distance": ("30-40 m", "20"),
            "side": ("each", "both"),
            "in weeks": ("3+5", "late"),
            "warm-up sets": (2, "two"),
            "working best": ("90 %", 90),
            "or": (["good morning"], 5),
            "progression": ("add when it moves well", {}),
            "work": ([{"sets": 1, "reps": 3}], [{"reps": 3}]),
            "every": ("60 s", 6),
            "for": ("10 min", "10"),
            "velocity": ("0.45-0.55 m/s", 0.5),
            "velocity loss": ("20 %", 20),
            "cluster rest": ("20 s", "short"),
            "method": ("rest-pause", "giant"),
            "test": ("longest hold", True),
            "kind": ("impact", {}),
            "cue": ({"1-2": "slow", "other": "fast"}, {"again": "slow"}),
            "stop when": TEXT,
            "note": TEXT,
        },
    ),
    ("programme", "group"): (
        {"sets": 3},
        {
            "sets": (5, 0),
            "reps": ("amrap", "many"),
            "load": ("90 % of top set", "plenty"),
            "rir": ("0-1", "-1"),
            "rpe": (9.5, 10.5),
            "rest": ("3min", "3"),
            "tempo": ("2-0-2-0", "203"),
            "hold": ("20-30 s", "long"),
            "distance": ("1.5 km", "far"),
            "side": ("l", "both"),
            "velocity": ("0.5 m/s", "0.5"),
            "note": TEXT,
        },
    ),
    ("programme", "progression"): (
        {"up to": "60 kg"},
        {
            "add": ("next pair", "some"),
            "when": TEXT,
            "every": ("2 weeks", 2),
            "up to": ("12 reps", "heavy"),
            "then": ("1 rep", "some"),
            "in weeks": ("3-8", "late"),
            "not in weeks": (5, "late"),
            "if missed": TEXT,
            "note": TEXT,
        },
    ),
    ("athlete", ""): (
        {"name": "Mara"},
        {
            "name": TEXT,
            "level": ("novice", "beginner"),
            "sport": TEXT,
            "age": (5, 4),
            "body mass": ("72.5 kg", 72),
            "best lifts": (
                {"back squat": "100 kg", "chin-up": {"load": "bodyweight + 20 kg"}},
                {"back squat": 100},
            ),
            "equipment": (["barbell", {"dumbbells": {"up to": "24 kg"}}], "barbell"),
            "places": ({"hotel": [{"kettlebells": [8, "12 kg"]}]}, {"hotel": "band"}),
            "days": (["monday", "thursday"], 8),
            "minutes": (60, "60 min"),
            "protect": ([{"area": "left shoulder", "advised by": "physiotherapist"}], ["left shoulder"]),
            "clearance on file": DATE,
            "screening on file": DATE,
            "supervision": TEXT,
            "note": TEXT,
        },
    ),
    ("athlete", "bestLift"): (
        {"load": "100 kg"},
        {"load": ("2 x 24 kg", "heavy"), "tested": DATE, "reps": (30, 31), "working best": ("90 %", "5 %")},
    ),
    ("athlete", "stock"): (
        {},
        {
            "from": ("2 kg", 2),
            "up to": ("24 kg", "24"),
            "step": ("2.5 kg", "small"),
            "pairs": (0, -1),
            "shared by": (4, 0),
        },
    ),
    ("athlete", "restriction"): (
        {"area": "left shoulder", "advised by": "physiotherapist"},
        {
            "area": TEXT,
            "advised by": TEXT,
            "in weeks": ("1-4", "first"),
            "from": DATE,
            "until": DATE,
            "agreed": (["leg press", "rows"], "leg press"),
            "review on": DATE,
            "note": TEXT,
        },
    ),
    ("exercises", ""): (
        {"exercises": [OWN]},
        {"exercises": ([OWN, OWN], [])},
    ),
    ("exercises", "exercise"): (
        OWN,
        {
            "name": TEXT,
            "also": (["pier hinge"], "pier hinge"),
            "implement": ("sandbag", "sack"),
            "kind": ("isometric", "slow"),
            "stance": ("split", "upright"),
            "grip": ("neutral", "loose"),
            "unilateral": (True, "yes"),
            "pattern": ("hip hinge", "hinge"),
            "actions": (["hip extension"], []),
            "assists": (["grip"], "grip"),
            "path": ({"hip": [90, 0], "knee": 15}, {"hip": "bent"}),
            "axial": ("moderate", "some"),
            "level": ("novice", "junior"),
            "rank": ("staple", "common"),
            "capacity": ("light", "medium"),
            "station": (["floor"], "floor"),
            "hands": (True, "both"),
            "easier": (["hip hinge"], []),
            "harder": (["good morning"], []),
            "credit": ({"gracilis": {"as": "none", "because": "no"}}, {"gracilis": "none"}),
            "note": TEXT,
            "because": TEXT,
        },
    ),
    ("exercises", "path"): (
        {"hip": 0},
        {joint: ([90, 45.5, 0], ["bent"]) for joint in ("hip", "knee", "ankle", "shoulder", "elbow")},
    ),
    ("exercises", "stated"): (
        {"as": "direct", "because": "so"},
        {"as": ("indirect", "half"), "because": TEXT},
    ),
    ("rules", ""): ({"rules": []}, {"rules": ([RULE], ["units-mixed"])}),
    ("rules", "rule"): (
        RULE,
        {
            "rule": ("units-mixed", "Units"),
            "family": TEXT,
            "severity": ("note", "fatal"),
            "confidence": ("fact", "sure"),
            "looks at": ("week", "year"),
            "finds": TEXT,
            "counts": (["It counts."], [""]),
            "why": TEXT,
            "off": (True, "yes"),
            "rests in": (["peak"], ["always"]),
            "sources": ([], ["cp-cap"]),
            "limits": ([], {}),
            "flags": TEXT,
            "passes": TEXT,
            "beside": ({"other.programme.yaml": "a"}, {"other.programme.yaml": ""}),
        },
    ),
    ("rules", "source"): (
        {"id": "cp-cap", "reference": "practice", "kind": "convention", "grade": "M"},
        {"id": TEXT, "reference": TEXT, "kind": ("growth trial", "trial"), "grade": ("V2", "A")},
    ),
    ("rules", "limit"): (
        {"name": "most", "default": 20, "unit": "sets", "ground": "cp-cap", "by": []},
        {
            "name": TEXT,
            "default": ({"chest": 3}, "many"),
            "unit": TEXT,
            "ground": TEXT,
            "by": ([{"where": {"goal": "strength"}, "default": 1}], [1]),
        },
    ),
    ("rules", "byValue"): (
        {"where": {"goal": "strength"}, "default": 1},
        {"where": ({"level": "novice"}, {}), "default": (["calves"], "few")},
    ),
    ("team", ""): (
        {},
        {
            "weekly limits": ({"hamstrings": 16.5}, {"hamstrings": "few"}),
            "block commit on": (["error"], ["fatal"]),
            "leave out": (["archive", "drafts/*.yaml"], ["../other", "/top"]),
            "preset": ("2026-11", "newest"),
            "counting": ("direct", "double"),
            "rules": (
                {"rep-range-narrow": "skip", "units-mixed": {"severity": "note"}},
                {"units-mixed": "loud"},
            ),
            "folders": ({"juniors": {"counting": "direct"}}, {"juniors": {"leave out": ["x"]}}),
            "exercises": (["boathouse.exercises.yaml"], ["boathouse.yaml"]),
            "team rules": (
                [
                    {
                        "rule": "team-curls",
                        "weekly sets of": "knee flexion",
                        "at least": 4,
                        "message": "Add a curl.",
                    }
                ],
                [{"rule": "curls", "weekly sets of": "knee flexion", "message": "Add a curl."}],
            ),
            "equipment": ({"home": ["dumbbell", {"rack": {"shared by": 2}}]}, {"home": "a band"}),
            "places": ({"hotel": ["band"]}, {"hotel": "a band"}),
            "stations": ({"rack": 2}, {"rack": 0}),
            "training together": (8, 0),
            "screening": ({"stated": "2026-09-01", "by": "head coach"}, {"by": "head coach"}),
            "our names": ({"toe push": "standing calf raise"}, {"toe push": ["standing calf raise"]}),
            "rule pages": ("https://pages.example/rules/", "https://pages.example/rules"),
        },
    ),
    ("team", "folder"): (
        {"counting": "direct"},
        {
            "weekly limits": ({"chest": 12}, {"chest": "few"}),
            "block commit on": (["error"], ["fatal"]),
            "counting": ("total", "double"),
            "rules": ({"units-mixed": "run"}, {"units-mixed": 3}),
        },
    ),
    ("team", "screening"): (
        {"stated": "2026-09-01", "by": "head coach"},
        {"stated": DATE, "by": TEXT, "note": TEXT},
    ),
    ("team", "teamRule"): (
        {"rule": "team-curls", "weekly sets of": "hamstrings", "at least": 3, "message": "Add a curl."},
        {
            "rule": ("team-leg-curls", "Curls"),
            "weekly sets of": TEXT,
            "in": TEXT,
            "at least": (4, "four"),
            "at most": (12.5, -1),
            "counting": ("fractional", "half"),
            "when": ({"goal": "strength", "level": "novice", "phase": "build"}, {}),
            "severity": ("note", "fatal"),
            "message": TEXT,
            "why": TEXT,
            "source": TEXT,
        },
    ),
    ("team", "situation"): (
        {"goal": "strength"},
        {
            "goal": ("power", "speed"),
            "level": ("novice", "junior"),
            "phase": ("taper", "peak"),
        },
    ),
    ("review", ""): (
        {
            "spotline": "0.1.0",
            "files": 0,
            "findings": [],
            "kept back": [],
            "summary": {"error": 0, "warning": 0, "note": 0, "blocked": False},
            "faults": [],
        },
        {
            "spotline": ("0.1.0", "new"),
            "files": (3, -1),
            "findings": ([], None),
            "kept back": ([], None),
            "summary": ({"error": 1, "warning": 0, "note": 2, "blocked": True}, {"error": 1}),
            "faults": ([{"file": "a", "rule": "", "fault": "gone"}], ["gone"]),
        },
    ),
    ("review", "finding"): (
        {
            "file": "a.programme.yaml",
            "line": 1,
            "column": 1,
            "end line": 1,
            "end column": 2,
            "rule": "key-unknown",
            "severity": "error",
            "confidence": "fact",
            "where": "",
            "weeks": [],
            "counted": "There it is.",
            "wanted": "",
            "change": "",
            "why": "",
            "sources": [],
            "related": [],
            "edits": [],
            "subject": "",
            "group": "",
            "told": [],
            "follows": [],
        },
        {
            "subject": ("chest", None),
            "group": ("chest", None),
            "told": ([1, 2], [0]),
            "amount": ({"counted": 24, "wanted": 20, "unit": "sets"}, {"counted": 24}),
            "follows": ([], ["x"]),
            "file": ("a.yaml", None),
            "line": POSITION,
            "column": POSITION,
            "end line": POSITION,
            "end column": POSITION,
            "rule": ("knee-flexion-missing", "K1 Missing"),
            "severity": ("note", "fatal"),
            "confidence": ("common practice", "sure"),
            "where": ("Lower A", 1),
            "weeks": ([1, 2], [0]),
            "counted": TEXT,
            "wanted": ("four", 4),
            "change": ("Add one.", None),
            "why": ("It helps.", None),
            "sources": ([{"id": "cp-both", "reference": "a book"}], ["cp-both"]),
            "related": ([], {}),
            "edits": ([], "mend"),
        },
    ),
    ("code-quality", "issue"): (
        {
            "description": "There it is.",
            "check_name": "key-unknown",
            "fingerprint": "6f5902ac237024bdd0c176cb93063dc4",
            "severity": "critical",
            "location": {"path": "a.programme.yaml", "lines": {"begin": 1, "end": 2}},
        },
        {
            "description": ("12 sets.", ""),
            "check_name": ("rir-rpe-contradict", "Key unknown"),
            "fingerprint": ("a", ""),
            "severity": ("info", "note"),
            "location": ({"path": "a.yaml", "lines": {"begin": 3, "end": 3}}, {"path": "a.yaml"}),
        },
    ),
    ("code-quality", "location"): (
        {"path": "a.programme.yaml", "lines": {"begin": 1, "end": 1}},
        {"path": ("plans/a.yaml", ""), "lines": ({"begin": 2, "end": 4}, {"begin": 0, "end": 1})},
    ),
    ("review", "kept"): (
        {
            "file": "a.programme.yaml",
            "line": 1,
            "column": 1,
            "end line": 1,
            "end column": 2,
            "rule": "key-unknown",
            "severity": "error",
            "where": "",
            "counted": "There it is.",
            "by": "waiver",
            "reason": "So.",
        },
        {
            "file": ("a.yaml", None),
            "line": POSITION,
            "column": POSITION,
            "end line": POSITION,
            "end column": POSITION,
            "rule": ("knee-flexion-missing", "K1 Missing"),
            "severity": ("note", "fatal"),
            "where": ("Lower A", 1),
            "counted": TEXT,
            "by": ("record", "luck"),
            "reason": ("", None),
        },
    ),
    ("review", "source"): (
        {"id": "cp-both", "reference": "a book"},
        {"id": TEXT, "reference": TEXT},
    ),
    ("review", "related"): (
        {"file": "a", "line": 1, "column": 1, "end line": 1, "end column": 1, "words": "here"},
        {
            "file": ("b", 1),
            "line": POSITION,
            "column": POSITION,
            "end line": POSITION,
            "end column": POSITION,
            "words": ("there", None),
            "share": ({"low": 3, "high": 4}, {"low": 3}),
            "of": ("left", None),
        },
    ),
    ("review", "share"): ({"low": 3, "high": 4}, {"low": (2.5, "2"), "high": (4, None)}),
    ("review", "amount"): (
        {"counted": 24, "wanted": 20, "unit": "sets"},
        {"counted": (2.5, "2"), "wanted": (0, None), "unit": ("min", "")},
    ),
    ("review", "following"): (
        {
            "file": "a",
            "line": 1,
            "column": 1,
            "end line": 1,
            "end column": 1,
            "rule": "exercise-sets-high",
            "severity": "note",
            "where": "",
            "subject": "",
            "group": "",
            "weeks": [],
            "counted": "12 sets.",
            "wanted": "",
        },
        {
            "file": ("b", 1),
            "line": POSITION,
            "column": POSITION,
            "end line": POSITION,
            "end column": POSITION,
            "rule": ("hip-hinge-missing", "K1 Missing"),
            "severity": ("warning", "fatal"),
            "where": ("A", None),
            "subject": ("chest", None),
            "group": ("chest", None),
            "weeks": ([1], [0]),
            "counted": ("There it is.", ""),
            "wanted": ("6", None),
            "amount": ({"counted": 24, "wanted": 20, "unit": "sets"}, {"counted": 24}),
        },
    ),
    ("review", "edit"): (
        {
            "label": "Write 3",
            "file": "a",
            "line": 1,
            "column": 1,
            "end line": 1,
            "end column": 1,
            "words": "3",
            "certain": True,
        },
        {
            "label": TEXT,
            "file": ("b", 1),
            "line": POSITION,
            "column": POSITION,
            "end line": POSITION,
            "end column": POSITION,
            "words": ("", 3),
            "certain": (False, "no"),
            "further": ([PART], []),
        },
    ),
    ("review", "part"): (
        PART,
        {
            "file": ("b", 1),
            "line": POSITION,
            "column": POSITION,
            "end line": POSITION,
            "end column": POSITION,
            "words": ("", 3),
        },
    ),
    ("review", "summary"): (
        {"error": 0, "warning": 0, "note": 0, "blocked": False},
        {"error": (1, -1), "warning": (1, "1"), "note": (1, -1), "blocked": (True, "no")},
    ),
    ("review", "fault"): (
        {"file": "a", "rule": "r", "fault": "broke"},
        {"file": ("b", 1), "rule": ("", None), "fault": TEXT},
    ),
    ("changes", ""): (
        {
            "spotline": "0.1.0",
            "files": 0,
            "changed": [],
            "new files": [],
            "files gone": [],
            "faults": [],
        },
        {
            "spotline": ("0.1.0", "new"),
            "files": (2, -1),
            "changed": ([], ["a"]),
            "new files": ([{"file": "a", "holds": "b"}], ["a"]),
            "files gone": ([{"file": "a", "held": "b"}], ["a"]),
            "faults": (["a"], [""]),
        },
    ),
    ("changes", "compared"): (
        {"file": "a", "programme": "", "athletes": "", "weeks": [], "first": [], "changes": []},
        {
            "file": ("b", None),
            "programme": ("P", 1),
            "athletes": ("Mara", 1),
            "weeks": ([1, 2], [0]),
            "first": (["a sentence"], [1]),
            "changes": ([], ["a"]),
        },
    ),
    ("changes", "new-file"): (
        {"file": "a", "holds": ""},
        {"file": ("b", 1), "holds": ("6 weeks", None)},
    ),
    ("changes", "gone-file"): ({"file": "a", "held": ""}, {"file": ("b", 1), "held": ("6 weeks", None)}),
    ("changes", "change"): (
        {
            "part": "dose",
            "kind": "sets",
            "subject": "",
            "session": "",
            "weeks": [],
            "before": "",
            "after": "",
            "words": "w",
            "weight": 0,
        },
        {
            "part": ("time", "space"),
            "kind": ("moved", "shaken"),
            "subject": ("calves", 1),
            "session": ("Lower A", 1),
            "weeks": ([1], ["1"]),
            "before": ("14", 14),
            "after": ("7", 7),
            "words": TEXT,
            "weight": (70, 101),
        },
    ),
    ("proposals", ""): (
        {
            "spotline": "0.1.0",
            "file": "a",
            "proposals": [],
            "stays": [],
            "at once": True,
            "to the end": True,
            "reviews": 0,
        },
        {
            "spotline": ("0.1.0", "new"),
            "file": ("b", ""),
            "proposals": ([], ["a"]),
            "stays": ([], ["a"]),
            "at once": (False, "no"),
            "to the end": (False, "no"),
            "reviews": (2, -1),
        },
    ),
    ("proposals", "proposal"): (
        {"words": "w", "steps": [STEP], "lines": [LINES], "costs": [], "clears": [CLEARED], "caution": ""},
        {
            "words": TEXT,
            "steps": ([STEP], []),
            "lines": ([LINES], []),
            "costs": (["no sets"], [""]),
            "clears": ([CLEARED], []),
            "caution": ("mind", None),
        },
    ),
    ("proposals", "step"): (STEP, {"kind": TEXT, "words": TEXT, "said": ("also reps", 1)}),
    ("proposals", "lines"): (LINES, {"from": (2, 0), "before": (["a"], [1]), "after": ([], "a")}),
    ("proposals", "finding"): (
        CLEARED,
        {
            "line": (3, 0),
            "rule": ("r", ""),
            "severity": ("error", "bad"),
            "where": ("", 1),
            "group": ("chest", 1),
            "weeks": ([1], [0]),
            "counted": TEXT,
        },
    ),
    ("proposals", "staying"): (
        {**CLEARED, "why": ["w"]},
        {
            "line": (3, 0),
            "rule": ("r", ""),
            "severity": ("error", "bad"),
            "where": ("", 1),
            "group": ("chest", 1),
            "weeks": ([1], [0]),
            "counted": TEXT,
            "why": (["w"], []),
        },
    ),
    ("tally", ""): (
        {"spotline": "0.1.0", "programmes": [], "faults": []},
        {"spotline": ("0.1.0", "new"), "programmes": ([], ["a"]), "faults": (["a"], [""])},
    ),
    ("tally", "span"): ({"low": 1, "high": 2}, {"low": (0, -1), "high": (3, "3")}),
    ("tally", "programme"): (
        {"file": "a", "programme": "", "athlete": "", "weeks": []},
        {"file": ("b", 1), "programme": ("P", None), "athlete": ("Mara", 1), "weeks": ([], [1])},
    ),
    ("tally", "held"): (
        {"weeks": [1], "days": 0, "minutes": {"low": 0, "high": 0}, "tables": [], "nothing for": []},
        {
            "weeks": ([1, 2], []),
            "days": (3, -1),
            "minutes": ({"low": 40, "high": 60}, 50),
            "tables": ([], ["muscle"]),
            "nothing for": (["grip"], [1]),
        },
    ),
    ("tally", "table"): ({"by": "muscle", "rows": []}, {"by": ("lift", "colour"), "rows": ([], ["a"])}),
    ("tally", "row"): (
        {"name": "", "mark": "", "values": {}, "words": {}},
        {
            "name": ("calves", None),
            "mark": ("over", "above"),
            "values": ({"sets": {"low": 3, "high": 4}}, {"sets": 3}),
            "words": ({"days": "Mon"}, {"days": ""}),
        },
    ),
    ("exercises-found", ""): (
        {
            "spotline": "0.1.0",
            "asked": "",
            "understood": [],
            "not understood": [],
            "count": 0,
            "exercises": [],
            "see also": [],
            "without": [],
            "length not known": [],
        },
        {
            "spotline": ("0.1.0", "new"),
            "asked": ("quads machine", None),
            "understood": ([], ["quads"]),
            "not understood": ([{"word": "flurb", "nearest": []}], ["flurb"]),
            "count": (938, -1),
            "exercises": ([], ["back squat"]),
            "see also": (["front squat"], [1]),
            "without": ([{"words": "long", "count": 3}], ["long"]),
            "length not known": (["lats"], "lats"),
        },
    ),
    ("exercises-found", "reading"): (
        {"words": "quads", "read as": "quads", "meanings": [{"kind": "area", "name": "quadriceps"}]},
        {"words": TEXT, "read as": TEXT, "meanings": ([{"kind": "length", "name": "long"}], [])},
    ),
    ("exercises-found", "meaning"): (
        {"kind": "area", "name": "quadriceps"},
        {"kind": ("joint action", "colour"), "name": TEXT},
    ),
    ("exercises-found", "unknown"): (
        {"word": "flurb", "nearest": []},
        {"word": TEXT, "nearest": (["front squat"], [""])},
    ),
    ("exercises-found", "without"): (
        {"words": "long", "count": 3},
        {"words": TEXT, "count": (0, 1.5)},
    ),
    ("exercises-found", "exercise"): (
        {
            "name": "bodyweight squat",
            "asked for by name": True,
            "role": "",
            "length asked for is sure": True,
            "telling muscles": [],
            "aliases": [],
            "implement": "bodyweight",
            "kind": "dynamic",
            "stance": "standing",
            "grip": "",
            "one side at a time": False,
            "level": "novice",
            "capacity": "light",
            "spine load": "none",
            "station": [],
            "patterns": [],
            "main actions": ["knee extension"],
            "assisting actions": [],
            "path": {},
            "muscles": [],
            "easier": [],
            "harder": [],
            "note": "",
            "sources": [],
        },
        {
            "name": TEXT,
            "asked for by name": (False, "yes"),
            "role": ("main", "minor"),
            "length asked for is sure": (False, None),
            "telling muscles": (["soleus"], [""]),
            "aliases": (["air squat"], "air squat"),
            "implement": TEXT,
            "kind": TEXT,
            "stance": TEXT,
            "grip": ("overhand", None),
            "one side at a time": (True, 1),
            "level": ("advanced", "beginner"),
            "capacity": ("heavy", "some"),
            "spine load": ("high", ""),
            "station": (["rack"], [1]),
            "patterns": (["squat"], "squat"),
            "main actions": (["hip extension"], []),
            "assisting actions": (["trunk extension"], [""]),
            "path": ({"hip": [90, 0]}, {"wrist": [0]}),
            "muscles": ([], ["soleus"]),
            "easier": (["box squat"], [None]),
            "harder": (["back squat"], [None]),
            "note": ("A first squat.", None),
            "sources": ([{"id": "kubo-2019", "reference": "a paper"}], ["kubo-2019"]),
        },
    ),
    ("exercises-found", "path"): (
        {},
        {joint: ([90, 0.5], [200]) for joint in ("hip", "knee", "ankle", "shoulder", "elbow")},
    ),
    ("exercises-found", "muscle"): (
        {
            "muscle": "soleus",
            "credit": "none",
            "reason": "It is not loaded.",
            "doubt": "",
            "set by hand": False,
            "by the path alone": "none",
            "length change": None,
            "place": None,
            "length": "",
            "length is sure": None,
        },
        {
            "muscle": TEXT,
            "credit": ("direct", "half"),
            "reason": TEXT,
            "doubt": ("models differ", False),
            "set by hand": (True, "no"),
            "by the path alone": ("indirect", ""),
            "length change": (-4.4, "-4.4 cm"),
            "place": (0.48, 3),
            "length": ("middle", "mid"),
            "length is sure": (True, "yes"),
        },
    ),
    ("exercises-found", "source"): (
        {"id": "kubo-2019", "reference": "a paper"},
        {"id": TEXT, "reference": TEXT},
    ),
}
"""For each group of keys: what it holds at least, and for each property one value that passes and one that does not."""

ELSEWHERE = {
    ("programme", "", "blocks"): "test_a_programme_has_sessions_or_blocks",
    ("programme", "", "shared"): "test_shared_holds_anything",
    ("programme", "superset", "rounds"): "test_rounds_are_the_sets",
    ("programme", "demand", "days of"): "test_a_demand_has_one_form_with_its_bounds",
    ("programme", "demand", "hours between"): "test_a_demand_has_one_form_with_its_bounds",
    ("programme", "demand", "never two days running"): "test_a_demand_has_one_form_with_its_bounds",
    ("athlete", "restriction", "movement"): "test_a_restriction_names_one_thing",
    ("programme", "block", "block"): "test_a_block_has_one_name",
    ("athlete", "stock", "weights"): "test_weights_are_listed_or_a_range",
}
"""Properties that cannot stand in the least group, and the test that tries them."""

QUANTITIES = {
    "sets": (
        [1, 3, "3", "3-4", 100, "3 sets", "3–4", "3 to 4"],
        [0, -1, "0", "3-", "", True, 2.5, "x3", "3 rounds", "three"],
    ),
    "setsOfReps": (["3x12", "3 sets of 5", "5x5", "3 x 8–12"], ["3x5", "12x3", "8x3", 312, "3x"]),
    "setsOfWeek": ([0, 3, "3-4", "0", -1], [-10, "none", 101]),
    "reps": (
        [
            5,
            "5-8",
            "12/10/8",
            "2+2+2",
            "amrap",
            "5+",
            "12/10/8+",
            "5/5/5-8",
            999,
            "8 to 10",
            "AMRAP",
            "8/side",
            "5-8+",
        ],
        [0, "5+5+", "+5", "12/10/", "5--8", 1000, "٣", "10 alternating", "5 @8", "20 m"],
    ),
    "load": (
        [
            "80 %",
            "80%",
            "80-85 %",
            "82.5 %",
            "70/75/80 %",
            "90 % of top set",
            "85-90 % of top set",
            "60 kg",
            "60kg",
            "132 lb",
            "60-65 kg",
            "60/65/70 kg",
            "2 x 24 kg",
            "2x24 kg",
            "bodyweight",
            "bodyweight + 10 kg",
            "bodyweight - 20 kg",
            "20 % bodyweight",
            "10RM",
            "8-10RM",
            "red band",
            "band red",
            "light green band",
            "pin 7",
            "62,5 kg",
            "80 % 1RM",
            "BW",
            "~70 %",
            "65 % of back squat",
            "90 % of 5RM",
            "80 % (160 kg)",
            "15RM (60 %)",
            "20 % bodyweight + 5 kg",
            "heavy",
            ">= 85 %",
            "-12 %",
            "+10 kg",
        ],
        [
            60,
            "60",
            "fifty",
            "1,250 kg",
            "80",
            "85+ %",
            "kg",
            "60 stone",
            "bodyweight + 10",
            "RM",
            "pin",
            "bandage",
            "x 24 kg",
        ],
    ),
    "rir": ([0, 2, 1.5, 10, "1-2", "0.5-1", "1–2", "3+", "1/1/0", "to failure"], [-1, 11, 2.25, "two", True]),
    "rpe": ([1, 8, 8.5, 10, "7-8", "7.5-8", "@8", "RPE 8", "up to 8.5"], [0, 10.5, "8/11", "@11"]),
    "rest": (
        [
            "90 s",
            "90s",
            "3 min",
            "2-3 min",
            "1.5 min",
            "0 s",
            90,
            "90",
            "1:30",
            "3 minutes",
            "2–3 min",
            "2'",
            10,
        ],
        [3, 9, "3", "1.30", 1.3, "20 m", "min", "1:75"],
    ),
    "time": (["30 s", "10 min", "20-30 s", 30], ["half a minute", 5]),
    "length": (["10 min", "600 s", "10:00"], [10, "10"]),
    "tempo": (["3-1-X-0", "2-0-2-0", "10-0-10-0", "3-1-x-0", "3010", 3010], ["3-1-X", "3-1-X-0-1", 311]),
    "distance": (["20 m", "1.5 km", "30-40 m", "20 yards", "60 ft"], [20, "20", "20 miles"]),
    "velocity": (["0.5 m/s", "0.45-0.55 m/s"], [0.5, "0.5", "fast"]),
    "percent": (["20 %", "10-20%"], [20, "20"]),
    "workingBest": (["90 %", "87,5 %", "100 %"], [90, "9 %", "110 %", "85-90 %"]),
    "sessionEffort": ([0, 7, 7.5, "6-8"], [11, "hard"]),
    "athletePath": (
        ["mara.athlete.yaml", "../athletes/mara.athlete.yml"],
        ["mara", "/mara.athlete.yaml", "C:\\mara.athlete.yaml", "~/mara.athlete.yaml", "mara.yaml"],
    ),
    "step": (["2.5 kg", "5 %", "1 rep", "2 reps", "1 set", "5 s", "1-2 reps"], ["2.5", 2.5, "a little"]),
    "turn": (["week", "2 weeks", "session", "3 sessions", "1 week"], [2, "fortnight", "2 week"]),
    "weekNumbers": (["1", "1-3", "104", "3+5", "week 1", "1–3"], ["0", "1,3", "1-", "5 %"]),
    "date": (["2026-01-05"], ["2026-1-5", "5.1.2026", "1026-01-05", 2026]),
    "mass": (["72 kg", "72.5kg", "158 lb"], [72, "72", "-72 kg"]),
    "liftedLoad": (["140 kg", "2 x 24 kg", "bodyweight + 20 kg", "bodyweight"], [140, "140", "80 %"]),
}

READERS = {
    "sets": quantities.sets,
    "setsOfWeek": quantities.sets,
    "setsOfReps": sets_of_reps,
    "reps": quantities.reps,
    "load": quantities.load,
    "rir": quantities.rir,
    "rpe": quantities.rpe,
    "rest": quantities.duration,
    "time": quantities.duration,
    "length": quantities.length,
    "tempo": quantities.tempo,
    "distance": quantities.distance,
    "velocity": quantities.velocity,
    "percent": quantities.percent,
    "workingBest": lambda value: quantities.spelt("workingBest", value, quantities.percent),
    "sessionEffort": lambda value: (
        quantities.number_or_range(value)
        or quantities.spelt("sessionEffort", value, quantities.number_or_range)
    ),
    "weekNumbers": weeks,
    "mass": quantities.mass,
    "liftedLoad": quantities.load,
}


def groups(name):
    """Every group of keys that a schema itself defines: definition name (the whole: ""), and the group."""
    schema = written(name)
    for key, part in [("", schema), *schema.get("$defs", {}).items()]:
        if "properties" in part and "additionalProperties" in part:
            yield key, part


def written(name):
    with open(os.path.join(FOLDER, f"{name}.json"), encoding="utf-8") as file:
        return json.load(file)


def judge(name, definition):
    schema = schemas.load(name)
    return Draft202012Validator(
        {"$ref": f"#/$defs/{definition}", "$defs": schema["$defs"]} if definition else schema
    )


def programme(**keys):
    return judge("programme", "").is_valid({"programme": "P", **keys})


@pytest.mark.parametrize("name", schemas.names())
def test_the_metaschema_holds(name):
    Draft202012Validator.check_schema(written(name))
    Draft202012Validator.check_schema(schemas.load(name))
    assert written(name)["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    assert written(name)["$id"] == f"urn:spotline:schema:{name}"


def test_a_schema_is_known_by_its_name_and_loads_once():
    assert schemas.load("team") is schemas.load("team")
    with pytest.raises(KeyError):
        schemas.load("recipe")


@pytest.mark.parametrize("name", schemas.names())
def test_what_is_loaded_stands_on_its_own(name):
    text = schemas.text(name)
    assert json.loads(text) == schemas.load(name)
    assert "urn:spotline:schema:" not in text.replace(f'"$id": "urn:spotline:schema:{name}"', "")


def test_no_definition_of_the_athlete_hides_one_of_the_programme():
    assert not {*written("programme")["$defs"]} & {*written("athlete")["$defs"], "athlete"}


@pytest.mark.parametrize(
    "athlete", [{"name": "Mara"}, {"name": "Mara", "age": 4}, {"nam": "Mara"}, "mara", 3]
)
def test_the_files_as_written_say_the_same_to_a_library_that_knows_both(athlete):
    resources = [Resource.from_contents(written(name)) for name in schemas.names()]
    registry = Registry().with_resources([(one.id(), one) for one in resources])
    apart = Draft202012Validator(written("programme"), registry=registry)
    data = {"programme": "P", "athlete": athlete, "sessions": [VISIT]}
    assert apart.is_valid(data) == judge("programme", "").is_valid(data)


@pytest.mark.parametrize("name", schemas.names())
def test_every_property_and_definition_is_described(name):
    for key, group in groups(name):
        assert group["title"], key
        assert group["additionalProperties"] is False, key
        for word, part in group["properties"].items():
            assert part["description"].endswith((".", "}.")), (key, word)
    for key, part in written(name).get("$defs", {}).items():
        if "pattern" in part or "minimum" in part or "enum" in part:
            assert part["title"], key
            assert part["description"], key


@pytest.mark.parametrize("name", schemas.names())
def test_every_quantity_gives_examples_and_they_are_valid(name):
    tried = 0
    for key, part in written(name).get("$defs", {}).items():
        assert "examples" in part or not ("pattern" in part or "minimum" in part), key
        for example in part.get("examples", ()):
            assert judge(name, key).is_valid(example), (key, example)
            tried += 1
    assert tried


def properties():
    for name in schemas.names():
        for key, group in groups(name):
            for word in group["properties"]:
                if (name, key, word) not in ELSEWHERE:
                    yield name, key, word


BESIDE = {"for": {"every": "60 s"}, "off": {"on": "60 s"}}
"""What must stand beside a key."""


@pytest.mark.parametrize(("name", "key", "word"), list(properties()))
def test_a_property_takes_what_it_should_and_nothing_else(name, key, word):
    least, examples = PROPERTIES[name, key]
    assert word in examples, f"give `{word}` in PROPERTIES a value that fits and one that does not"
    valid, invalid = examples[word]
    assert judge(name, key).is_valid(
        {**least, **(BESIDE.get(word, {}) if name == "programme" else {}), word: valid}
    )
    errors = list(judge(name, key).iter_errors({**least, word: invalid}))
    assert errors
    assert all(word in error.absolute_path or error.validator == "dependentRequired" for error in errors)


def test_the_table_of_examples_names_nothing_that_is_not_there():
    known = {(name, key): set(group["properties"]) for name in schemas.names() for key, group in groups(name)}
    assert {place: set(examples) for place, (_, examples) in PROPERTIES.items()}.keys() == known.keys()
    for (name, key), (_, examples) in PROPERTIES.items():
        elsewhere = {word for one, other, word in ELSEWHERE if (one, other) == (name, key)}
        assert set(examples) | elsewhere == known[name, key]
    assert all(test in globals() for test in ELSEWHERE.values())


@pytest.mark.parametrize(("name", "key"), list(PROPERTIES))
def test_every_group_is_strict_and_misses_what_is_required(name, key):
    least, _ = PROPERTIES[name, key]
    if least:
        assert judge(name, key).is_valid(least)
    assert not judge(name, key).is_valid({**least, "colour": "red"})
    for word in dict(groups(name))[key].get("required", ()):
        assert not judge(name, key).is_valid({one: value for one, value in least.items() if one != word}), (
            word
        )


def test_the_format_takes_its_own_sample():
    reading = parse("winter.programme.yaml", PROGRAMME)
    assert reading.findings == []
    assert list(judge("programme", "").iter_errors(reading.root.plain)) == []


def test_a_demand_has_one_form_with_its_bounds():
    fits = judge("programme", "demand").is_valid
    for demand in (
        {"days of": "hamstrings", "at most": 3},
        {"hours between": ["match", "legs"], "at least": 48},
        {"hours between": "match", "at least": 48},
        {"never two days running": "impact", "because": "shins"},
    ):
        assert fits(demand)
        assert not fits({**demand, "weekly sets of": "hamstrings"})
        assert not fits({**demand, "at least as many as": "chest"})
    assert not fits({"days of": "hamstrings"})
    assert not fits({"days of": 3, "at least": 1})
    assert not fits({"hours between": ["match"], "at most": 48})
    assert not fits({"never two days running": "impact", "at least": 1})
    assert not fits({"at least": 1})


def test_a_programme_has_sessions_or_blocks():
    block = {"name": "Base", "weeks": 4, "sessions": [VISIT]}
    assert programme(blocks=[block])
    assert not programme(blocks=[])
    assert not programme(blocks=[VISIT])
    assert not programme(blocks=[block], sessions=[VISIT])
    assert not programme()


def test_shared_holds_anything():
    for value in ({"any": [1, None]}, [1], "text", None):
        assert programme(sessions=[VISIT], shared=value)
    assert not programme(sessions=[VISIT], shade={})


def test_an_athlete_or_athletes():
    mara = "mara.athlete.yaml"
    assert programme(sessions=[VISIT], athlete=mara)
    assert not programme(sessions=[VISIT], athlete=mara, athletes=[mara])


def test_rounds_are_the_sets():
    line = {"exercise": "push-up"}
    superset = judge("programme", "superset")
    assert superset.is_valid({"superset": [line, line], "rounds": "3-4"})
    assert not superset.is_valid({"superset": [line, line]})
    assert not superset.is_valid({"superset": [line, LINE], "rounds": 3})
    assert not superset.is_valid({"superset": [line, line], "rounds": 0})
    assert not judge("programme", "rounds").is_valid({"rounds": 3, "exercises": [LINE]})


def test_an_exercise_says_its_sets_in_one_way():
    exercise = judge("programme", "exercise")
    work = [{"sets": 1}]
    assert exercise.is_valid({"exercise": "swing", "every": "60 s", "for": "10 min"})
    assert exercise.is_valid({"exercise": "swing", "every": "60 s", "sets": 10})
    assert exercise.is_valid({"exercise": "squat", "work": work, "rest": "3 min"})
    assert not exercise.is_valid({"exercise": "swing"})
    assert not exercise.is_valid({"exercise": "swing", "every": "60 s"})
    assert not exercise.is_valid({"exercise": "swing", "for": "10 min"})
    for key, value in (("sets", 3), ("reps", 5), ("load", "60 kg")):
        assert not exercise.is_valid({"exercise": "squat", "work": work, key: value})


def test_a_block_has_one_name():
    block, rest = judge("programme", "block"), {"weeks": 4, "sessions": [VISIT]}
    assert block.is_valid({"block": "Base", **rest})
    assert not block.is_valid({"block": "", **rest})
    assert not block.is_valid({"block": "Base", "name": "Base", **rest})
    assert not block.is_valid(rest)


def test_weights_are_listed_or_a_range():
    stock = judge("athlete", "stock")
    assert stock.is_valid({"weights": [8, "12 kg"], "pairs": 1})
    assert not stock.is_valid({"weights": ["heavy"]})
    assert not stock.is_valid({"weights": [8, "12 kg"], "up to": "24 kg"})


def test_a_restriction_names_one_thing():
    restriction = judge("athlete", "restriction")
    assert restriction.is_valid({"movement": "overhead press", "advised by": "physician"})
    assert not restriction.is_valid({"movement": "", "advised by": "physician"})
    assert not restriction.is_valid({"movement": "press", "area": "shoulder", "advised by": "physician"})


@pytest.mark.parametrize(
    ("key", "one"),
    [
        ("exercise", "back squat"), ("sets", 3), ("reps", "5-8"), ("load", "80 %"), ("rir", 2), ("rpe", 8),
        ("rest", "3 min"), ("tempo", "3-1-X-0"), ("hold", "30 s"), ("distance", "20 m"),
    ],
)  # fmt: skip
def test_values_by_week(key, one):
    for line, base in (("prescription", {"exercise": "back squat"}), ("group", {"sets": 3})):
        if line == "group" and key == "exercise":
            continue
        takes = judge("programme", line).is_valid
        assert takes({**base, key: one})
        assert takes({**base, key: {"1-3": one, "4": one}})
        assert not takes({**base, key: {}})
        assert takes({**base, key: {"Ada": one, "other": one}})
        assert not takes({**base, key: {"1st": one}})
        assert not takes({**base, key: {"1": {"2": one}}})
        assert not takes({**base, key: {"1": [one]}})


@pytest.mark.parametrize("key", QUANTITIES)
def test_quantities_are_tight_and_can_be_read(key):
    valid, invalid = QUANTITIES[key]
    takes = judge("programme", key)
    assert [value for value in valid if not takes.is_valid(value)] == []
    assert [value for value in invalid if takes.is_valid(value)] == []
    if key in READERS:
        assert [value for value in valid if READERS[key](value) is None] == []
