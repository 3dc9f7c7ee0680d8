"""Days with the hour at which a session begins."""

from __future__ import annotations

import pytest

from spotline.lint.model.weeks import time_of_day


@pytest.mark.parametrize(
    ("words", "read"),
    [
        ("tuesday 05:45", ("tuesday", 5.75)),
        ("Mon 18.30", ("Mon", 18.5)),
        ("mon at 7:00", ("mon", 7.0)),
        ("Friday 18h30", ("Friday", 18.5)),
        ("fri 18 h", ("fri", 18.0)),
        ("mon 6pm", ("mon", 18.0)),
        ("mon 12:15 am", ("mon", 0.25)),
        ("mon 12 pm", ("mon", 12.0)),
        ("Monday 18.00 Uhr", ("Monday", 18.0)),
        ("mon 13 pm", ("mon", None)),
        ("monday", ("monday", None)),
        ("monday 25:00", ("monday", None)),
        ("monday 7:60", ("monday", None)),
    ],
)
def test_the_hour_is_read(words, read):
    assert time_of_day(words) == read


def text(first, second):
    line = "exercises: [{exercise: leg press, sets: 5, reps: 6, rir: 1}]"
    return f"programme: P\nsessions:\n  - {{session: A, day: {first}, {line}}}\n  - {{session: B, day: {second}, {line}}}\n"


def test_the_days_are_those_of_the_weekdays(programme):
    ledger = programme(text("[tue 05:45, friday]", "thursday 18:00"))
    assert [(visit.session.name, visit.day) for visit in ledger.weeks[0].visits] == [
        ("A", 2),
        ("B", 4),
        ("A", 5),
    ]
    assert ledger.programme.sessions_by_block[ledger.programme.blocks[0]][0].hours == {2: 5.75}


@pytest.mark.parametrize(
    ("first", "second", "apart"),
    [
        ("monday", "wednesday", ""),
        ("monday 18:00", "wednesday", ""),
        ("monday 18:00", "wednesday 18:00", ""),
        ("monday 06:00", "wednesday 18:00", ""),
        ("monday 18:00", "wednesday 06:00", "36 h apart"),
        ("monday 18:30", "wednesday 18:00", "47.5 h apart"),
        ("monday 06:00", "tuesday 20:00", "38 h apart"),
        ("monday", "tuesday 20:00", "24 h apart"),
    ],
)
def test_the_hours_between_are_real(first, second, apart, findings):
    found = [one.counted for one in findings(text(first, second)) if one.rule == "sessions-too-close"]
    assert [apart in one for one in found] == ([True] if apart else [])


@pytest.mark.parametrize(
    "day", ["monday 25:00", "moonday 18:00", "monday 18", "18:00", "monday 13 pm", "monday 24h"]
)
def test_what_is_no_time_is_one_finding(day, findings):
    (found,) = [one for one in findings(text(day, "friday")) if not one.why]
    assert (found.rule, found.place.excerpt) == ("value-unreadable", day)
