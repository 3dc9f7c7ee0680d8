"""Clocks, rests and words that change by week; supersets, circuits and activities in some weeks."""

from __future__ import annotations

import pytest

HEAD = "programme: P\nathlete: {name: Mara}\nweeks: 6\nsessions:\n"
LIFTS = "{exercise: power clean, reps: 1}, {exercise: push jerk, reps: 1}"
PAIR = "{exercise: push-up, sets: 3, reps: 10}, {exercise: band row, sets: 3, reps: 10}"


def text(*items, then=""):
    return HEAD + "  - session: A\n    exercises:\n" + "".join(f"      - {one}\n" for one in items) + then


@pytest.fixture
def weeks(programme):
    """The sets of each line and the least minutes, in weeks 1 and 5."""

    def run(item):
        visits = [programme(text(item)).weeks[number].visits[0] for number in (0, 4)]
        return [
            ([str(group.work.sets) for group in visit.own], round(visit.time().total.low / 60, 1))
            for visit in visits
        ]

    return run


@pytest.fixture
def told(findings):
    def run(*items, then=""):
        return [one for one in findings(text(*items, then=then)) if not one.why]

    return run


@pytest.mark.parametrize(
    ("item", "first", "fifth"),
    [
        (
            "{circuit: {change every: 60 s, for: {1-4: 10 min, 5-6: 12 min}, exercises: [{exercise: push-up}, {exercise: plank}]}}",
            (["5", "5"], 10),
            (["6", "6"], 12),
        ),
        (
            "{circuit: {every: {1-4: 2 min, other: 90 s}, for: 12 min, exercises: [{exercise: push-up, reps: 5}]}}",
            (["6"], 12),
            (["8"], 12),
        ),
        (
            "{circuit: {rounds: 3, on: {1-4: 30 s, 5-6: 45 s}, off: 30 s, exercises: [{exercise: push-up}, {exercise: plank}]}}",
            (["3", "3"], 5.5),
            (["3", "3"], 7),
        ),
        (
            "{circuit: {rounds: 4, for time: true, time cap: {1-4: 25 min, 5-6: 20 min}, exercises: [{exercise: push-up, reps: 5}]}}",
            (["4"], 0.9),
            (["4"], 0.9),
        ),
        (
            f"{{complex: [{LIFTS}], every: 2 min, for: {{1-4: 10 min, 5-6: 8 min}}, load: 50 kg}}",
            (["5", "5"], 10),
            (["4", "4"], 8),
        ),
        (
            "{intervals: bike, rounds: 5, on: 60 s, off: {1-4: 2 min, 5-6: 90 s}}",
            (["5"], 13),
            (["5"], 11),
        ),
        (
            "{intervals: run, on: 60 s, off: 60 s, for: {1-4: 10 min, 5-6: 16 min}}",
            (["5"], 9),
            (["8"], 15),
        ),
        ("{own choice: trunk, minutes: {1-4: 10, 5-6: 15-20}}", (["1"], 10), (["1"], 15)),
        (
            "{exercise: kettlebell swing, every: 60 s, for: {1-4: 10 min, 5-6: 12 min}, reps: 10}",
            (["10"], 10),
            (["12"], 12),
        ),
        (
            "{exercise: kettlebell swing, every: {1-4: 60 s, 5-6: 30 s}, for: 10 min, reps: 10}",
            (["10"], 10),
            (["20"], 10),
        ),
        (
            "{exercise: back squat, sets: 3, reps: 5, tempo: 3-0-1-0, rest: 60 s, warm-up sets: {1-4: 2, 5-6: 4}}",
            (["3"], 5),
            (["3"], 7),
        ),
    ],
)
def test_a_clock_may_change_by_week(item, first, fifth, weeks):
    assert weeks(item) == [first, fifth]


def test_as_many_rounds_as_possible_by_week(programme):
    ledger = programme(
        text("{circuit: {for: {1-4: 10 min, 5-6: 20 min}, exercises: [{exercise: push-up, reps: 10}]}}")
    )
    short, long = (ledger.weeks[number].visits[0] for number in (0, 4))
    assert (short.time().total.low, long.time().total.low) == (600, 1200)
    assert long.own[0].sets.low >= 2 * short.own[0].sets.low


@pytest.mark.parametrize(
    ("item", "first", "fifth"),
    [
        (f"{{superset: [{PAIR}], rest: {{1-4: 60 s, 5-6: 2 min}}}}", 120, 240),
        ("{circuit: {rounds: 3, rest: {1-4: 60 s, 5-6: 2 min}, exercises: [{exercise: push-up, reps: 10}]}}", 120, 240),
        (f"{{complex: [{LIFTS}], sets: 3, load: 50 kg, rest: {{1-4: 60 s, 5-6: 2 min}}}}", 120, 240),
    ],
)  # fmt: skip
def test_the_rest_of_a_whole_may_change_by_week(item, first, fifth, programme):
    rests = [programme(text(item)).weeks[number].visits[0].time().rest.low for number in (0, 4)]
    assert rests[1] - rests[0] == fifth - first


def test_the_rest_after_a_line_may_change_by_week(programme):
    lines = (
        "{exercise: back squat, sets: 3, reps: 5, rest: 60 s, rest after: {1-4: 2 min, 5-6: 5 min}}",
        "{exercise: leg press, sets: 3, reps: 5, rest: 60 s}",
    )
    rests = [programme(text(*lines)).weeks[number].visits[0].time().rest.low for number in (0, 4)]
    assert rests[1] - rests[0] == 180


@pytest.mark.parametrize("key", ["note", "cue", "stop when"])
def test_words_may_change_by_week(key, programme):
    line = f"{{exercise: back squat, sets: {{1-2: 3, 3-6: 4}}, reps: 5, {key}: {{1-4: to the knee, 5-6: to the shin}}}}"
    ledger = programme(text(line))
    held = [week.visits[0].own[0] for week in ledger.weeks]
    attribute = {"stop when": "stop_when"}.get(key, key)
    words = [getattr(group.prescription, attribute) for group in held]
    assert words == ["to the knee"] * 4 + ["to the shin"] * 2
    assert [str(group.sets) for group in held] == ["3", "3", "4", "4", "4", "4"]


def test_weeks_of_a_part_are_still_one_line(programme):
    """A line whose clock changes is the same line before and after: what compares weeks sees it go on."""
    from spotline.lint.counting.change import weeks_of_lines

    line = "{exercise: kettlebell swing, every: 60 s, for: {1-4: 10 min, 5-6: 12 min}, reps: 10, load: 24 kg}"
    (one,) = weeks_of_lines(programme(text(line)).weeks)
    assert [str(group.sets) for _, group in one] == ["10"] * 4 + ["12"] * 2


@pytest.mark.parametrize(
    ("item", "rule", "excerpt"),
    [
        ("{circuit: {for: {1-4: 10 min, 6: 12 min}, exercises: [{exercise: push-up, reps: 5}]}}", "weeks-left-out", "{1-4: 10 min, 6: 12 min}"),
        ("{circuit: {for: {1-4: 10 min, 5-9: 12 min}, exercises: [{exercise: push-up, reps: 5}]}}", "weeks-beyond", "5-9"),
        ("{exercise: kettlebell swing, every: 2 min, for: {1-4: 10 min, 5-6: 90 s}, reps: 10}", "no-set-fits", "90 s"),
        ("{circuit: {every: 2 min, for: {1-4: 10 min, 5-6: 90 s}, exercises: [{exercise: push-up, reps: 5}]}}", "no-set-fits", "90 s"),
        ("{intervals: bike, rounds: 5, on: {1-4: 60 s, 5-6: 0 s}}", "no-set-fits", "0 s"),
        ("{exercise: back squat, sets: 3, reps: 5, rest after: {1-4: 2 min}}", "weeks-left-out", "{1-4: 2 min}"),
        ("{exercise: back squat, sets: 3, reps: 5, note: {1-4: a, again: same}}", "value-unreadable", "again"),
        ("{exercise: back squat, sets: 3, reps: 5, cue: {1-4: a, 4-6: b}}", "weeks-overlap", "4-6"),
        (f"{{superset: [{PAIR}], in weeks: 7}}", "weeks-beyond", "7"),
        ("{circuit: {rounds: 3, exercises: [{exercise: push-up, reps: 5}]}, in weeks: 5-8}", "weeks-beyond", "5-8"),
    ],
)  # fmt: skip
def test_edges_are_one_finding_each(item, rule, excerpt, told):
    assert [(one.rule, one.place.excerpt) for one in told(item)] == [(rule, excerpt)]


# In some weeks


@pytest.mark.parametrize(
    "item",
    [
        f"{{superset: [{PAIR}], in weeks: 3-4}}",
        f"{{superset: [{PAIR}], rest: {{3: 60 s, 4: 90 s}}, in weeks: 3-4}}",
        "{circuit: {rounds: 3, exercises: [{exercise: push-up, reps: 5}]}, in weeks: 3-4}",
        "{circuit: {rounds: 3, in weeks: 3-4, exercises: [{exercise: push-up, reps: 5}]}}",
        "{circuit: {for: 10 min, exercises: [{exercise: push-up, reps: 5}]}, in weeks: 3+4}",
    ],
)
def test_a_whole_is_done_in_its_weeks_only(item, programme, told):
    ledger = programme(text("{exercise: back squat, sets: 3, reps: 5}", item))
    assert [len(week.visits[0].own) > 1 for week in ledger.weeks] == [False, False, True, True, False, False]
    assert told("{exercise: back squat, sets: 3, reps: 5}", item) == []


def test_its_values_by_week_cover_its_own_weeks(told):
    item = "{superset: [{exercise: push-up, sets: {3: 3, 4: 2}, reps: 5}, {exercise: band row, sets: 3}], in weeks: 3-4}"
    assert told(item) == []
    (found,) = told(item.replace("{3: 3, 4: 2}", "{3: 3}"))
    assert (found.rule, "must cover weeks 3-4" in found.counted) == ("weeks-left-out", True)


@pytest.mark.parametrize(
    ("keys", "days"),
    [
        ("day: tuesday, in weeks: 1-2", [2, 9]),
        ("day: {1: tuesday, 2: off, 3-6: friday}, in weeks: 1-3", [2, 19]),
        ("day: [mon, tue], in weeks: 6", [36, 37]),
    ],
)
def test_an_activity_takes_place_in_its_weeks_only(keys, days, programme):
    then = f"  - {{activity: run, {keys}, minutes: 30}}\n"
    ledger = programme(text("{exercise: back squat, sets: 3}", then=then))
    assert [day for day, _, _ in ledger.activities()] == days


def test_an_activity_may_change_by_week(programme, told):
    then = "  - {activity: {1-2: walk, 3-6: run}, day: monday, minutes: {1-4: 30, 5-6: 40}, effort: {1-2: 3, other: 6}}\n"
    ledger = programme(text("{exercise: back squat, sets: 3}", then=then))
    held = [(one.name, str(one.minutes), str(one.effort)) for _, _, one in ledger.activities()]
    assert held == [("walk", "30", "3")] * 2 + [("run", "30", "6")] * 2 + [("run", "40", "6")] * 2
    assert told("{exercise: back squat, sets: 3}", then=then) == []
    (found,) = told("{exercise: back squat, sets: 3}", then=then.replace("5-6: 40", "5: 40"))
    assert (found.rule, found.place.excerpt) == ("weeks-left-out", "{1-4: 30, 5: 40}")


def test_intervals_of_an_activity_may_change_by_week(programme):
    then = "  - {activity: run, rounds: {1-2: 6, 3-6: 8}, on: 60 s, off: {1-4: 2 min, 5-6: 60 s}}\n"
    activities = programme(text("{exercise: back squat, sets: 3}", then=then)).programme.blocks[0].activities
    assert [str(one.minutes) for one in activities] == ["18", "24", "16"]
