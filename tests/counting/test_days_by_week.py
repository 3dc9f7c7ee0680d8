"""Days that differ from week to week: of a session, of an activity, with and without the hour."""

from __future__ import annotations

import pytest

LINE = "exercises: [{exercise: leg press, sets: 5, reps: 6, rir: 2}]"


def text(day, weeks=4, more=""):
    return f"programme: P\nweeks: {weeks}\nsessions:\n  - {{session: A, day: {day}, {LINE}{more}}}\n"


def days(ledger):
    return [[visit.day for visit in week.visits] for week in ledger.weeks]


@pytest.mark.parametrize(
    ("day", "held"),
    [
        ("{1+3: sunday, 2+4: friday}", [[7], [5], [7], [5]]),
        ("{1-2: [mon, thu], other: tuesday}", [[1, 4], [1, 4], [2], [2]]),
        ("{1: 3, 2-4: 5}", [[3], [5], [5], [5]]),
        ("{1-4: monday}", [[1], [1], [1], [1]]),
    ],
)
def test_a_session_is_on_the_days_of_the_week(day, held, programme):
    assert days(programme(text(day))) == held


def test_only_weeks_in_which_it_takes_place_need_days(programme):
    ledger = programme(text("{2: friday, 4: sunday}", more=", in weeks: 2+4"))
    assert days(ledger) == [[], [5], [], [7]]


def test_what_replaces_a_session_takes_over_its_days(programme):
    words = text("{1+3: sunday, 2+4: friday}") + (
        f"  - {{session: B, instead of: A, in weeks: 3-4, {LINE}}}\n"
    )
    assert [
        [(visit.session.name, visit.day) for visit in week.visits] for week in programme(words).weeks
    ] == [
        [("A", 7)],
        [("A", 5)],
        [("B", 7)],
        [("B", 5)],
    ]


def test_days_by_week_count_the_visits(programme, findings):
    words = text("{1: [mon, thu], 2: fri}", weeks=2).replace(
        "reps: 6", "reps: {visit 1: 4, visit 2: 5, visit 3: 6}"
    )
    ledger = programme(words)
    assert [
        str(one.work.reps.a_set()) for week in ledger.weeks for visit in week.visits for one in visit.own
    ] == [
        "4",
        "5",
        "6",
    ]


def test_the_hours_are_those_of_the_week(programme):
    ledger = programme(text("{1-2: tuesday 06:00, 3-4: tuesday 18:30}"))
    assert [visit.hour for week in ledger.weeks for visit in week.visits] == [6.0, 6.0, 18.5, 18.5]


def test_an_activity_by_week_is_near_in_those_weeks_alone(findings):
    words = (
        text("[tuesday, friday]")
        + "  - {activity: match, day: {1+3: sunday, 2: thursday, 4: wednesday}, loads: {legs: high}}\n"
    )
    near = findings(words, "sessions-too-close")
    assert {week for one in near for week in one.weeks} == {2, 4}
    far = words.replace("[tuesday, friday]", "{1+3: friday, 2+4: friday}").replace(
        "2: thursday", "2: tuesday"
    )
    near = findings(far, "sessions-too-close")
    assert {week for one in near for week in one.weeks} == set()


@pytest.mark.parametrize(
    ("day", "rule"),
    [
        ("{1-3: monday}", "weeks-left-out"),
        ("{1-4: monday, 4: friday}", "weeks-overlap"),
        ("{1-5: monday}", "weeks-beyond"),
        ("{1-4: moonday}", "value-unknown"),
        ("{1-4: monday, soon: friday}", "value-unreadable"),
        ("{}", ""),
    ],
)
def test_what_cannot_be_meant_is_one_finding(day, rule, findings):
    (found,) = [one for one in findings(text(day)) if not one.why]
    assert not rule or found.rule == rule


def test_compare_tells_the_days_of_an_activity_by_week(programme):
    from spotline.lint.weighing.person import programme_changes

    words = text("monday") + "  - {activity: match, day: {1+3: sunday, 2+4: friday}}\n"
    (found,) = programme_changes(
        programme(words), programme(words.replace("1+3: sunday, 2+4: friday", "1-4: sunday"))
    )
    assert found.words == "match moved from Sunday in weeks 1, 3; Friday in weeks 2, 4 to Sunday in weeks 1-4"
