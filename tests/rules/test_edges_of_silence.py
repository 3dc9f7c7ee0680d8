"""What silences a rule, each beside the nearest that does not: a word, a level, a set more or less."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

SIZE = "goal: hypertrophy"
PROTECT = "athlete: {{name: Ida, level: advanced, protect: [{{area: {}, advised by: physician}}]}}"
UPPER = ["bench press, sets: 5, reps: 8", "bent-over row, sets: 5, reps: 8"]
STRAIN = "athlete: {name: Ida, level: advanced, protect: [{movement: straining, advised by: physician}]}"
HOME = "athlete: {{name: Ida, level: advanced, equipment: [{}]}}"

CASES: list[tuple[str, str, list[str], int]] = [
    # both the hard sets and all sets must be uneven: 12 to 4, and 12 to 8, 7 or 5
    ("antagonist-imbalance", SIZE, ["bench press, sets: 12, reps: 8", "bent-over row, sets: 4, reps: 8", "bent-over row, sets: 3, rir: 8"], 0),
    ("antagonist-imbalance", SIZE, ["bench press, sets: 12, reps: 8", "bent-over row, sets: 4, reps: 8", "bent-over row, sets: 1, rir: 8"], 1),
    ("antagonist-imbalance", SIZE, ["bench press, sets: 12, reps: 8", "bent-over row, sets: 4, reps: 8", "bent-over row, sets: 2, rir: 8"], 0),
    # the thigh is judged more strictly: 9 to 4, and 9 to 6 or 5
    ("antagonist-imbalance", SIZE, ["leg extension, sets: 9", "seated leg curl, sets: 4", "seated leg curl, sets: 2, rir: 8"], 0),
    ("antagonist-imbalance", SIZE, ["leg extension, sets: 9", "seated leg curl, sets: 4", "seated leg curl, sets: 1, rir: 8"], 1),
    # who spares an arm leaves out what is left out
    ("pull-or-push-missing", f"{SIZE}\n{PROTECT.format('knee')}", UPPER, 1),
    ("pull-or-push-missing", f"{SIZE}\n{PROTECT.format('wrist')}", UPPER, 0),
    ("pull-or-push-missing", f"{SIZE}\nphase: return", UPPER, 0),
    # few repetitions throughout are for strength, where nothing says what the goal is: curls are not missed
    ("knee-flexion-missing", "", ["back squat, sets: 4, reps: 5", "leg press, sets: 3, reps: 5"], 0),
    ("knee-flexion-missing", "", ["back squat, sets: 4, reps: 5", "leg press, sets: 3, reps: 10"], 1),
    ("knee-flexion-missing", SIZE, ["back squat, sets: 4, reps: 5", "leg press, sets: 3, reps: 5"], 1),
    ("hip-hinge-missing", "", ["back squat, sets: 4, reps: 5", "leg press, sets: 3, reps: 5"], 1),
    # where there is a guided bar, a bar may mean that one
    ("equipment-missing", HOME.format("guided bar"), ["back squat, sets: 3, reps: 8, note: rack at hip height"], 0),
    ("equipment-missing", HOME.format("dumbbells, flat bench"), ["back squat, sets: 3, reps: 8, load: 100 kg, note: rack at hip height"], 1),
    ("equipment-missing", HOME.format("guided bar"), ["barbell back squat, sets: 3, reps: 8"], 1),
    # straining: to failure or one off it, or nearly a maximum, under a load; a hold of a minute
    ("protected-area-loaded", STRAIN, ["back squat, sets: 3, reps: 1, load: 85 %"], 1),
    ("protected-area-loaded", STRAIN, ["back squat, sets: 3, reps: 1, load: 84-90 %"], 0),
    ("protected-area-loaded", STRAIN, ["back squat, sets: 3, reps: 8, load: 40 kg, rir: 1"], 1),
    ("protected-area-loaded", STRAIN, ["back squat, sets: 3, reps: 8, load: 40 kg, rir: 1-2"], 0),
    ("protected-area-loaded", STRAIN, ["back squat, sets: 3, reps: 8, load: 40 kg, rir: 0"], 1),
    ("protected-area-loaded", STRAIN, ["push-up, sets: 3, reps: 8, rir: 0"], 0),
    ("protected-area-loaded", STRAIN, ["dip, sets: 3, reps: 8, rir: 0, load: bodyweight + 5 kg"], 1),
    ("protected-area-loaded", STRAIN, ["dip, sets: 3, reps: 8, rir: 0, load: bodyweight"], 0),
    ("protected-area-loaded", STRAIN, ["band row, sets: 3, reps: 8, rir: 0, load: red band"], 0),
    ("protected-area-loaded", STRAIN, ["plank, sets: 3, hold: 60 s"], 1),
    ("protected-area-loaded", STRAIN, ["plank, sets: 3, hold: 59-70 s"], 0),
    ("protected-area-loaded", STRAIN, ["moon walk, sets: 3, reps: 8, rir: 0, load: 40 kg"], 0),
    # sets of an exercise are many where repetitions and effort make them hard
    ("exercise-sets-high", SIZE, ["leg press, sets: 11, reps: 8, load: 100 kg"], 1),
    ("exercise-sets-high", SIZE, ["leg press, sets: 11, reps: amrap, load: 100 kg"], 0),
    ("exercise-sets-high", SIZE, ["push-up, sets: 11, reps: 8"], 0),
    ("exercise-sets-high", SIZE, ["push-up, sets: 11, reps: 8, rir: 2"], 1),
    ("exercise-sets-high", SIZE, ["kettlebell swing, sets: 11, reps: 8, load: 24 kg"], 0),
    # a note that curls or hinges are left out, or why one side does more, is the coach's word
    ("knee-flexion-missing", f"{SIZE}\nnote: no leg curls this block", ["back squat, sets: 4, reps: 10", "leg press, sets: 3, reps: 10"], 0),
    ("knee-flexion-missing", f"{SIZE}\nnote: leg day", ["back squat, sets: 4, reps: 10", "leg press, sets: 3, reps: 10"], 1),
    ("sides-uneven", "", ["leg extension, sets: 5, side: left, reps: 9", "leg press, sets: 1, reps: 9"], 1),
    ("sides-uneven", "", ["leg extension, sets: 5, side: left, reps: 9, note: weak side", "leg press, sets: 1, reps: 9"], 0),
    # without an athlete nothing can be on file
    ("best-lift-missing", "", ["bench press, sets: 3, reps: 5, load: 80 %"], 0),
]  # fmt: skip


@pytest.mark.parametrize(("rule", "head", "lines", "said"), CASES)
def test_said_or_silent(
    findings: Findings, week: Text, rule: str, head: str, lines: list[str], said: int
) -> None:
    found = findings(week({"Gym": lines}, head), rule)
    assert len(found) == said, [one.counted for one in found]


RUN = "  - {{activity: {}, day: tuesday, minutes: 30}}\n"
HEALTH = ["push-up, sets: 2, reps: 10", "seated cable row, sets: 2, reps: 10", "plank, sets: 2, hold: 20 s"]


@pytest.mark.parametrize(
    ("activity", "said"),
    [("", 1), (RUN.format("cycling"), 0), (RUN.format("chess"), 1)],
)
def test_what_is_done_beside_the_gym_trains_a_region(
    findings: Findings, week: Text, activity: str, said: int
) -> None:
    text = week({"monday": HEALTH}, "goal: general health") + activity
    assert len(findings(text, "region-untrained")) == said


OLD = "programme: T\nweeks: 3\nathlete: {{name: Ottilie, age: {age}}}\n{head}sessions:\n"
DAY = "  - {{session: {name}, day: {day}, {note}exercises: [{{exercise: leg press, sets: 2, reps: 8}}]}}\n"


@pytest.mark.parametrize(
    ("age", "head", "second", "note", "weeks"),
    [
        (70, "", "thursday", "", None),
        (70, "", "monday", "", (1, 2, 3)),
        (65, "", "monday", "", (1, 2, 3)),
        (64, "", "monday", "", None),
        (70, "", "{1+3: thursday, 2: off}", "", None),  # a week away
        (70, "", "{1: thursday, 2-3: off}", "", (2, 3)),
        (70, "", "{1-2: thursday, 3: off}", "", (3,)),  # at the end nobody knows,
        (70, "note: on holiday at the end\n", "{1-2: thursday, 3: off}", "", None),  # unless somebody says so
        (70, "", "{1-2: thursday, 3: off}", "note: closed in week 3, ", None),
        (70, "", "{1: off, 2-3: thursday}", "", (1,)),
        (70, "note: on holiday at first\n", "{1: off, 2-3: thursday}", "", None),
    ],
)
def test_one_day_a_week_of_an_older_athlete(
    findings: Findings, age: int, head: str, second: str, note: str, weeks: tuple[int, ...] | None
) -> None:
    text = OLD.format(age=age, head=head) + DAY.format(name="A", day="monday", note=note)
    text += DAY.format(name="B", day=second, note="")
    found = findings(text, "older-adult-days")
    assert [one.weeks for one in found] == ([] if weeks is None else [weeks])


@pytest.mark.parametrize(
    ("first", "second", "keys", "said"),
    [
        (13, 10, "", 1),  # 23 of 20, and a tenth more
        (12, 10, "", 0),
        (20, 5, "", 1),  # the first alone just fits
        (21, 5, "", 0),  # another rule tells of that
        (13, 10, "note: two hours between, ", 0),
        (13, 10, "note: two rests between, ", 1),
    ],
)
def test_two_sessions_of_a_day_in_the_minutes_that_the_athlete_has(
    findings: Findings, first: int, second: int, keys: str, said: int
) -> None:
    text = "programme: T\nathlete: {name: Ida, minutes: 20}\nsessions:\n" + "".join(
        DAY.format(name=name, day="monday", note=f"minutes: {minutes}, {more}")
        for name, minutes, more in (("A", first, keys), ("B", second, ""))
    )
    assert len(findings(text, "day-too-long")) == said


@pytest.mark.parametrize(
    ("lines", "wayout"),
    [
        (["bench press, sets: 3, reps: 8, rir: 0"], ", or leave 1 in reserve"),
        (["bench press, test: 1RM"], ""),
        (["bench press, test: 1RM", "back squat, sets: 3, reps: 8, rir: 0"], ", or leave 1 in reserve"),
        (["bench press, test: 1RM", "back squat, test: 1RM"], ""),
    ],
)
def test_a_test_leaves_nothing_in_reserve(
    findings: Findings, week: Text, lines: list[str], wayout: str
) -> None:
    (found,) = findings(week({"Gym": lines}), "failure-without-spotter")
    assert found.change == f"Note the spotters, pins or safety bars{wayout}."
