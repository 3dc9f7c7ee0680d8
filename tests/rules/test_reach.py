"""How far rules reach: each sentence has a programme that is spoken of, and its nearest one that is not.

Where the reach ends is common practice, no source, unless the rule's page says otherwise.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]

LEGS = ("back squat, sets: 3, reps: 5", "leg press, sets: 3")
HINGES = ("back squat, sets: 3, reps: 5", "Romanian deadlift, sets: 3, reps: 8")
MOST_OF_THE_BODY = ("leg press, sets: 3", "bench press, sets: 3", "barbell curl, sets: 3", "plank, sets: 1")
PRESSES = ("bench press, sets: 3", "dip, sets: 3")
CALVES = ("seated calf raise, sets: 6, reps: 15",)
TRICEPS = ("cable pushdown, sets: 4",)
LIGHT = ("leg extension, sets: 4, reps: 10",)
STILL = "paused bench press, sets: 3, reps: 5, load: 60 kg"


def gym(*lines: str) -> str:
    """A programme's one session, on two days a week."""
    text = "sessions:\n  - session: Gym\n    day: [monday, thursday]\n    exercises:\n"
    return text + "".join(f"      - {{exercise: {line}}}\n" for line in lines)


def plan(*lines: str, head: str = "") -> str:
    """A programme without blocks; ``head`` holds further keys at its top."""
    return f"programme: Test\n{head}{chr(10) if head else ''}{gym(*lines)}"


def blocks(*parts: tuple[str, tuple[str, ...]], head: str = "") -> str:
    """A programme of blocks: the keys and the lines of each."""
    text = f"programme: Test\n{head}{chr(10) if head else ''}blocks:\n"
    for number, (keys, lines) in enumerate(parts, 1):
        inner = gym(*lines).replace("\n", "\n    ").rstrip()
        text += f"  - name: Part {number}\n    {keys.replace('; ', f'{chr(10)}    ')}\n    {inner}\n"
    return text


REACH: list[tuple[str, str, str, str]] = [
    (
        "Knee flexion is asked for where size is the goal, not where strength is",
        "knee-flexion-missing",
        plan(*HINGES, head="goal: hypertrophy"),
        plan(*HINGES, head="goal: strength"),
    ),
    (
        "For strength knee flexion is asked for where the hamstrings are a priority, not where others are",
        "knee-flexion-missing",
        plan(*HINGES, head="goal: strength\npriority: [hamstrings]"),
        plan(*HINGES, head="goal: strength\npriority: [quadriceps]"),
    ),
    (
        "A hip hinge is asked for where strength is the goal, not where power is",
        "hip-hinge-missing",
        plan(*LEGS, head="goal: strength"),
        plan(*LEGS, head="goal: power"),
    ),
    (
        "For power a hip hinge is asked for where the focus names the hamstrings, not where it names none",
        "hip-hinge-missing",
        plan(*LEGS, head="goal: power\nfocus: [legs]"),
        plan(*LEGS, head="goal: power"),
    ),
    (
        "A straight-knee calf raise is asked for where size is the goal, not where endurance is",
        "straight-knee-calf-missing",
        plan(*CALVES, head="goal: hypertrophy"),
        plan(*CALVES, head="goal: muscular endurance"),
    ),
    (
        "Pulls are asked for where health is the goal, not where strength is",
        "pull-or-push-missing",
        plan(*PRESSES, head="goal: general health"),
        plan(*PRESSES, head="goal: strength"),
    ),
    (
        "Every region is asked for where health is the goal, not where strength is",
        "region-untrained",
        plan(*PRESSES, head="goal: general health"),
        plan(*PRESSES, head="goal: strength"),
    ),
    (
        "A focus is held to whatever the goal, and no focus asks for none",
        "region-untrained",
        plan(*PRESSES, head="goal: strength\nfocus: [chest, legs]"),
        plan(*PRESSES, head="goal: strength"),
    ),
    (
        "A region is missed where most of the body is trained, not where one lift is",
        "region-untrained",
        plan(*MOST_OF_THE_BODY),
        plan("bench press, sets: 3"),
    ),
    (
        "A hinge is asked for beside squats, not beside curls alone",
        "hip-hinge-missing",
        plan("leg press, sets: 3", "leg extension, sets: 3"),
        plan("Nordic curl, sets: 3", "seated leg curl, sets: 3"),
    ),
    (
        "Every region is asked for in weeks of the usual training, not in a plan for a deload alone",
        "region-untrained",
        blocks(("weeks: 1", MOST_OF_THE_BODY)),
        blocks(("weeks: 1; deload: true", MOST_OF_THE_BODY)),
    ),
    (
        "Parts of a muscle are asked for where size is the goal, not where strength is, a priority or not",
        "finer-points-missing",
        plan(*TRICEPS, head="goal: hypertrophy\npriority: [triceps]"),
        plan(*TRICEPS, head="goal: strength\npriority: [triceps]"),
    ),
    (
        "Where size has priorities, the parts of the other muscles are not asked for",
        "finer-points-missing",
        plan(*TRICEPS, head="goal: hypertrophy\nfocus: [arms]"),
        plan(*TRICEPS, head="goal: hypertrophy\nfocus: [arms]\npriority: [back]"),
    ),
    (
        "Uneven thighs are told where size is the goal, not where strength is",
        "antagonist-imbalance",
        plan("leg extension, sets: 5", "seated leg curl, sets: 2", head="goal: hypertrophy"),
        plan("leg extension, sets: 5", "seated leg curl, sets: 2", head="goal: strength"),
    ),
    (
        "Where strength is the goal more than three times as many sets are told, three times as many are not",
        "antagonist-imbalance",
        plan("bench press, sets: 7", "bent-over row, sets: 2", head="goal: strength"),
        plan("bench press, sets: 6", "bent-over row, sets: 2", head="goal: strength"),
    ),
    (
        "Sides are uneven where the hard sets and all sets say so, not where the hard sets alone do",
        "antagonist-imbalance",
        plan("leg extension, sets: 5", "seated leg curl, sets: 2"),
        plan("leg extension, sets: 5", "seated leg curl, sets: 2", "seated leg curl, sets: 3, rir: 8"),
    ),
    (
        "Blocks of one week even one another out, longer ones do not",
        "antagonist-imbalance",
        blocks(
            ("weeks: 2", ("leg extension, sets: 5", "seated leg curl, sets: 2")),
            ("weeks: 2", ("leg extension, sets: 2", "seated leg curl, sets: 5")),
        ),
        blocks(
            ("weeks: 1", ("leg extension, sets: 5", "seated leg curl, sets: 2")),
            ("weeks: 1", ("leg extension, sets: 2", "seated leg curl, sets: 5")),
        ),
    ),
    (
        "Both zones of repetitions are asked for in eight weeks, not in seven",
        "rep-range-narrow",
        plan(*LIGHT, head="goal: hypertrophy\nweeks: 8"),
        plan(*LIGHT, head="goal: hypertrophy\nweeks: 7"),
    ),
    (
        "A block of eight weeks is asked to hold both zones, two of four weeks are not",
        "rep-range-narrow",
        blocks(("weeks: 8", LIGHT), head="goal: hypertrophy"),
        blocks(("weeks: 4", LIGHT), ("weeks: 4", LIGHT), head="goal: hypertrophy"),
    ),
    (
        "A screening is asked for where somebody starts, not where somebody has trained for long",
        "screening-missing",
        plan(*LEGS, head="athlete: {name: Ida, age: 45, level: novice}"),
        plan(*LEGS, head="athlete: {name: Ida, age: 45, level: advanced}"),
    ),
    (
        "A screening is asked for where somebody comes back, not where the training goes on",
        "screening-missing",
        blocks(("weeks: 2; phase: return", LEGS), head="athlete: {name: Ida, age: 30, level: advanced}"),
        blocks(("weeks: 2; phase: build", LEGS), head="athlete: {name: Ida, age: 30, level: advanced}"),
    ),
    (
        "A load is asked for on a bar, not on dumbbells",
        "load-and-effort-missing",
        plan("bench press, sets: 3, reps: 8"),
        plan("dumbbell bench press, sets: 3, reps: 8"),
    ),
    (
        "A load is asked for over several joints, not over one",
        "load-and-effort-missing",
        plan("bench press, sets: 3, reps: 8"),
        plan("barbell curl, sets: 3, reps: 8"),
    ),
    (
        "A lift whose effort another line tells needs no word, another lift does",
        "load-and-effort-missing",
        plan("bench press, sets: 3, reps: 5", "back squat, sets: 3, reps: 5, rir: 2"),
        plan("bench press, sets: 3, reps: 5", "bench press, sets: 3, reps: 5, rir: 2"),
    ),
    (
        "A load is asked for in weeks that build, not in a peak week",
        "load-and-effort-missing",
        blocks(
            ("weeks: 2; phase: build", ("leg press, sets: 3",)),
            ("weeks: 1; phase: build", ("bench press, sets: 1, reps: 1",)),
        ),
        blocks(
            ("weeks: 2; phase: build", ("leg press, sets: 3",)),
            ("weeks: 1; phase: test", ("bench press, sets: 1, reps: 1",)),
        ),
    ),
    (
        "A percentage of a clean pull needs a best clean on file, or else its own",
        "best-lift-missing",
        plan("clean pull, sets: 3, reps: 3, load: 90 %", head="athlete: {name: A, best lifts: {bench press: 80 kg}}"),
        plan("clean pull, sets: 3, reps: 3, load: 90 %", head="athlete: {name: A, best lifts: {clean: 80 kg}}"),
    ),
    (
        "A lift that stays the same is told where nothing of its pattern moves, not beside one that does",
        "nothing-changes",
        plan(STILL, "bench press, sets: 3, reps: 5, load: 80 kg", head="weeks: 9"),
        plan(STILL, "bench press, sets: 3, reps: 5, load: {1-4: 80 kg, 5-9: 85 kg}", head="weeks: 9"),
    ),
    (
        "A lift that moves excuses no lift of another pattern",
        "nothing-changes",
        plan(STILL, "back squat, sets: 3, reps: 5, load: {1-4: 80 kg, 5-9: 85 kg}", head="weeks: 9"),
        plan(STILL, "bench press, sets: 3, reps: 5, load: {1-4: 80 kg, 5-9: 85 kg}", head="weeks: 9"),
    ),
    (
        "A load above the best on file is a slip in one week, and may be grown into over twelve",
        "number-implausible",
        plan("bench press, sets: 1, reps: 1, load: 120 kg", head="athlete: {name: A, best lifts: {bench press: 100 kg}}"),
        plan("bench press, sets: 1, reps: 1, load: 120 kg", head="weeks: 12\nathlete: {name: A, best lifts: {bench press: 100 kg}}"),
    ),
    (
        "A novice may grow by more in the same weeks than an advanced lifter",
        "number-implausible",
        plan("bench press, sets: 1, reps: 1, load: 130 kg", head="weeks: 5\nathlete: {name: A, level: advanced, best lifts: {bench press: 100 kg}}"),
        plan("bench press, sets: 1, reps: 1, load: 130 kg", head="weeks: 5\nathlete: {name: A, level: novice, best lifts: {bench press: 100 kg}}"),
    ),
    (
        "Repetitions that a best on file does not allow now may be within reach after twelve weeks",
        "more-reps-than-load-allows",
        plan("back squat, sets: 1, reps: 8, load: 92 kg", head="athlete: {name: A, best lifts: {back squat: 100 kg}}"),
        plan("back squat, sets: 1, reps: 8, load: 92 kg", head="weeks: 12\nathlete: {name: A, best lifts: {back squat: 100 kg}}"),
    ),
    (
        "A pull above 100 % is asked of what, not where a note says it",
        "more-reps-than-load-allows",
        plan("clean pull, sets: 3, reps: 3, load: 105 %, note: no straps"),
        plan("clean pull, sets: 3, reps: 3, load: 105 %, note: percent of the clean"),
    ),
    (
        "A pull above 100 % is asked of what, not where the best of its lift is on file",
        "more-reps-than-load-allows",
        plan("clean pull, sets: 3, reps: 3, load: 105 %", head="athlete: {name: A, best lifts: {snatch: 80 kg}}"),
        plan("clean pull, sets: 3, reps: 3, load: 105 %", head="athlete: {name: A, best lifts: {clean: 100 kg}}"),
    ),
    (
        "A load that jumps is told, not where the same week leads up to it",
        "load-step-large",
        plan("back squat, sets: 1, reps: 5, load: {1: 60 kg, 2: 72 kg}", head="weeks: 2"),
        plan("back squat, sets: {1: 0, 2: 1}, reps: 5, load: 66 kg", "back squat, sets: 1, reps: 5, load: {1: 60 kg, 2: 72 kg}", head="weeks: 2"),
    ),
    (
        "A load is held against the weeks before it, not against a deload",
        "load-step-large",
        blocks(
            ("weeks: 1", ("back squat, sets: 3, reps: 5, load: 60 kg",)),
            ("weeks: 1", ("back squat, sets: 3, reps: 5, load: 80 kg",)),
        ),
        blocks(
            ("weeks: 1; deload: true", ("back squat, sets: 3, reps: 5, load: 60 kg",)),
            ("weeks: 1", ("back squat, sets: 3, reps: 5, load: 80 kg",)),
        ),
    ),
    (
        "Sets that are added are told, not sets that were there before and only grow harder",
        "sets-step-large",
        plan("leg extension, sets: {1-2: 3, 3-4: 8}, rir: 2", head="weeks: 4"),
        plan("leg extension, sets: 3, rir: 2", "leg extension, sets: 5, rir: {1-2: 8, 3-4: 2}", head="weeks: 4"),
    ),
]  # fmt: skip
"""A sentence, the rule, a programme it speaks of, and the nearest one where it keeps silent."""


@pytest.mark.parametrize(
    ("rule", "spoken", "silent"), [row[1:] for row in REACH], ids=[sentence for sentence, *_ in REACH]
)
def test_how_far_a_rule_reaches(findings: Findings, rule: str, spoken: str, silent: str) -> None:
    assert len(findings(spoken, rule)) == 1
    assert findings(silent, rule) == []


@pytest.mark.parametrize(
    ("goal", "severity"),
    [("hypertrophy", ["warning"]), ("strength\nfocus: [legs]", ["warning"]), ("strength", [])],
)
def test_uneven_thighs_are_told_only_where_they_are_built(
    findings: Findings, goal: str, severity: list[str]
) -> None:
    text = plan("leg extension, sets: 8", "seated leg curl, sets: 2", head=f"goal: {goal}")
    assert [one.severity for one in findings(text, "antagonist-imbalance")] == severity


@pytest.mark.parametrize(
    ("head", "said"),
    [
        ("", 1),
        ("starts: 2026-01-05\nweeks: 8\nevents: [{date: 2026-02-28, event: meet}]", 0),
        ("starts: 2026-01-05\nweeks: 8\nevents: [{date: 2026-02-28, event: club championships}]", 0),
        ("starts: 2026-01-05\nweeks: 8\nevents: [{date: 2026-02-28, event: match}]", 1),
        ("athlete: {name: A, sport: powerlifting}", 0),
        ("athlete: {name: A, sport: bench press and deadlift}", 0),
        (
            "athlete: {name: A, sport: swimming}\n"
            "starts: 2026-01-05\nweeks: 8\nevents: [{date: 2026-02-28, event: meet}]",
            1,
        ),
    ],
)
def test_uneven_presses_and_pulls_are_meant_where_certain_lifts_decide(
    findings: Findings, head: str, said: int
) -> None:
    lines = ("bench press, sets: 10, reps: 5", "bent-over row, sets: 3, reps: 5")
    for goal, told in (("strength", said), ("hypertrophy", 1)):
        text = plan(*lines, head=f"goal: {goal}\n{head}".strip()).replace("[monday, thursday]", "monday")
        assert len(findings(text, "antagonist-imbalance")) == told


@pytest.mark.parametrize(("phase", "severity"), [("build", "warning"), ("test", "note")])
def test_a_day_too_many_is_a_note_in_a_peak_week(findings: Findings, phase: str, severity: str) -> None:
    usual = ("weeks: 2; phase: build", ("leg press, sets: 0",))
    text = blocks(usual, (f"weeks: 1; phase: {phase}", LEGS), head="athlete: {name: A, days: [monday]}")
    text = text.replace("day: [monday, thursday]", "day: [monday]", 1)
    assert [one.severity for one in findings(text, "days-more-than-athlete")] == [severity]


@pytest.mark.parametrize("number", [1, 3])
def test_of_what_a_percentage_is_is_asked_once_a_programme(findings: Findings, number: int) -> None:
    lines = ("clean pull, sets: 3, reps: 3, load: 105 %", "snatch pull, sets: 3, reps: 3, load: 105 %", "rack pull, sets: 3, reps: 3, load: 105 %")  # fmt: skip
    (finding,) = findings(plan(*lines[:number]), "more-reps-than-load-allows")
    assert finding.counted.endswith(": of which lift?")


@pytest.mark.parametrize(
    ("athlete", "asked"),
    [
        ("age: 45", ["screening-missing"]),
        ("age: 45, protect: [{area: heart, advised by: physician}]", ["clearance-missing"]),
    ],
)
def test_whoever_is_asked_for_a_clearance_is_asked_for_no_screening(
    findings: Findings, athlete: str, asked: list[str]
) -> None:
    text = plan(*LEGS, head=f"athlete: {{name: Ida, level: novice, {athlete}}}")
    rules = ("screening-missing", "clearance-missing")
    assert [one.rule for one in findings(text) if one.rule in rules] == asked


# Areas that are left alone, or kept

ROWERS = """\
programme: Upper body of rowers
goal: hypertrophy
KEYS
weeks: 4
sessions:
  - session: Upper
    exercises:
      - {exercise: bench press, sets: 4, reps: 8, rir: 2}
      - {exercise: seated cable row, sets: 4, reps: 8, rir: 2}
      - {exercise: lat pulldown, sets: 3, reps: 8, rir: 2}
      - {exercise: overhead press, sets: 3, reps: 8, rir: 2}
      - {exercise: crunch, sets: 3, reps: 12, rir: 2}
      LEGS
"""
HINGE = "- {exercise: Romanian deadlift, sets: 4, reps: 8, rir: 2}\n      - {exercise: leg press, sets: 4, reps: 8, rir: 2}"


@pytest.mark.parametrize(
    ("keys", "named"), [("note: x", True), ("not trained: [legs]", False), ("not trained: [calves]", True)]
)
def test_what_is_not_trained_on_purpose_is_not_called_missing(keys, named, findings):
    found = findings(ROWERS.replace("KEYS", keys).replace("      LEGS\n", ""), "region-untrained")
    assert any("legs" in one.counted for one in found) == named


@pytest.mark.parametrize(
    ("keys", "missing"),
    [
        ("note: x", True),
        ("maintain: [legs]", False),
        ("maintain: [hamstrings]", False),
        ("maintain: [arms]", True),
    ],
)
def test_of_what_is_maintained_no_growth_is_asked(keys, missing, findings):
    found = findings(ROWERS.replace("KEYS", keys).replace("LEGS", HINGE), "knee-flexion-missing")
    assert bool(found) == missing


@pytest.mark.parametrize("key", ["not trained", "maintain"])
def test_an_area_that_nobody_knows_is_one_finding(key, findings):
    text = ROWERS.replace("KEYS", f"{key}: [lgs]").replace("LEGS", HINGE)
    (found,) = [one for one in findings(text, "area-unknown") if one.place.excerpt == "lgs"]
    assert "legs" in found.change


@pytest.mark.parametrize("key", ["focus", "priority", "maintain"])
def test_an_area_that_is_left_alone_and_trained_is_one_finding(key, findings):
    text = ROWERS.replace("KEYS", f"not trained: [Legs, neck]\n{key}: [legs, chest]").replace(
        "      LEGS\n", ""
    )
    (found,) = [one for one in findings(text) if not one.why]
    assert (found.rule, found.place.excerpt) == ("keys-at-odds", "Legs")
    assert key in found.counted
