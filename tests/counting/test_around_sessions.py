"""What stands around the work of a session: preparation, cool-down, its minutes, days off, hours in turn."""

from __future__ import annotations

import pytest

LINE = "    exercises: [{exercise: back squat, sets: 3, reps: 5, rest: 60 s}]\n"


def text(head="", *keys, sessions=("A",)):
    body = "".join(
        f"  - session: {name}\n" + "".join(f"    {key}\n" for key in keys) + LINE for name in sessions
    )
    return f"programme: P\nathlete: {{name: Mara, minutes: 60}}\nweeks: 4\n{head}sessions:\n{body}"


def around(ledger):
    return tuple(end / 60 for end in ledger.weeks[0].visits[0].time().around.ends)


@pytest.mark.parametrize(
    ("keys", "minutes"),
    [
        ((), (0, 0)),
        (("preparation: hips",), (5, 10)),
        (("cool-down: calves",), (5, 10)),
        (("preparation: [hips, ankles]", "cool-down: calves"), (10, 20)),
        (("preparation: 12 min bike",), (12, 12)),
        (("cool-down: [5 min walk, 3-4 minutes of stretching]",), (8, 9)),
        (("preparation: [3 min row, hips]",), (3, 10)),
        (("preparation: [15' bike, hips]",), (15, 15)),
        (("cool-down: 30 s hang",), (5, 10)),
        (("preparation: 10 min", "cool-down: 4 min easy bike"), (14, 14)),
    ],
)
def test_what_comes_before_and_after_takes_the_time_that_it_says(keys, minutes, programme):
    assert around(programme(text("", *keys))) == minutes


def test_a_cool_down_counts_no_sets(programme):
    (visit,) = programme(text("", "cool-down: [back squat 3 x 5, 5 min walk]")).weeks[0].visits
    assert visit.all_sets().high == 3


# Minutes


@pytest.mark.parametrize(
    ("written", "found"),
    [("4", 1), ("15-20", 0), ("60", 0), ("{1-2: 60, 3-4: 4}", 1), ("{1-3: 20, other: 30}", 0)],
)
def test_the_work_must_fit_into_the_minutes_that_are_written(written, found, findings):
    said = findings(text("", f"minutes: {written}").replace("rest: 60 s", "rest: 120 s"), "session-too-long")
    assert len(said) == found
    if said:
        assert "the 4 min that are written for it" in said[0].wanted


def test_the_minutes_of_a_session_win_over_the_athletes(findings):
    long = text("", "minutes: 90").replace("minutes: 60}", "minutes: 15}").replace("60 s", "10 min")
    assert findings(long, "session-too-long") == []
    assert findings(long.replace("    minutes: 90\n", ""), "session-too-long")


@pytest.mark.parametrize("value", ["an hour", "0", "{1-3: 60}", "999-1000"])
def test_minutes_that_cannot_be_meant_are_one_finding(value, findings):
    assert len([one for one in findings(text("", f"minutes: {value}")) if not one.why]) == 1


# Days off


@pytest.mark.parametrize(
    ("day", "weeks"),
    [
        ("{1-2+4: monday, 3: off}", [1, 2, 4]),
        ("{2: Off, other: [mon, thu]}", [1, 3, 4]),
        ("{1: off, 2: OFF, 3-4: tuesday 18:00}", [3, 4]),
    ],
)
def test_a_session_is_off_in_a_week(day, weeks, programme, findings):
    content = text("", f"day: {day}")
    assert [week.number for week in programme(content).weeks if week.visits] == weeks
    assert [one for one in findings(content) if not one.why] == []


def test_values_need_not_cover_a_week_off(findings):
    content = text("", "day: {1-3: monday, 4: off}").replace("sets: 3", "sets: {1-2: 3, 3: 4}")
    assert [one for one in findings(content) if not one.why] == []


def test_always_off_is_one_finding(findings):
    (found,) = [one for one in findings(text("", "day: {1-4: off}")) if not one.why]
    assert found.rule == "session-never"
    (found,) = [one for one in findings(text("", "day: off")) if one.severity == "error"]
    assert found.rule == "value-unknown"


# Hours in a rotation


@pytest.mark.parametrize(
    ("rotation", "hours"),
    [
        ("[monday 18:00, thursday 06:30]", [18, 6.5]),
        ("[mon 6 pm, thu]", [18, None]),
    ],
)
def test_a_rotation_takes_hours(rotation, hours, programme, findings):
    content = text(f"rotation: {rotation}\n", sessions=("A", "B"))
    visits = programme(content).weeks[0].visits
    assert [(visit.session.name, visit.day, visit.hour) for visit in visits] == [
        ("A", 1, hours[0]),
        ("B", 4, hours[1]),
    ]
    assert [one for one in findings(content) if not one.why] == []


def test_an_hour_that_is_none_is_one_finding(findings):
    found = [one for one in findings(text("rotation: [monday 25:00]\n")) if not one.why]
    assert [one.place.excerpt for one in found] == ["monday 25:00"]
