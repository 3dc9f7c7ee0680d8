"""Sessions that take the place of another in some weeks."""

from __future__ import annotations

import pytest

HEAD = "programme: P\nweeks: 4\n{}sessions:\n"


def session(name, head=""):
    return f"  - {{session: {name}, {head}exercises: [{{exercise: back squat, sets: 3}}]}}\n"


def text(*sessions, head=""):
    return HEAD.format(head) + "".join(sessions)


A, B = session("A", "day: monday, "), session("B", "day: [tuesday, friday], ")


def names(ledger):
    return [" ".join(f"{visit.session.name}{visit.day}" for visit in week.visits) for week in ledger.weeks]


def test_it_takes_the_days_of_the_one_it_replaces(programme):
    ledger = programme(text(A, B, session("Hotel", "in weeks: 2+4, instead of: b, ")))
    assert names(ledger) == ["A1 B2 B5", "A1 Hotel2 Hotel5"] * 2


def test_it_may_have_a_day_of_its_own(programme):
    ledger = programme(text(A, B, session("Hotel", "in weeks: 3, instead of: B, day: sunday, ")))
    assert names(ledger)[1:3] == ["A1 B2 B5", "A1 Hotel7"]


def test_it_takes_its_turn_in_a_rotation(programme):
    turning = [session("A"), session("B"), session("Easy", "in weeks: 2, instead of: A, ")]
    ledger = programme(text(*turning, head="rotation: [monday, thursday]\n"))
    assert names(ledger) == ["A1 B4", "Easy1 B4", "A1 B4", "A1 B4"]


@pytest.mark.parametrize(
    ("head", "rule", "place"),
    [
        ("in weeks: 2, instead of: C, ", "session-unknown", "C"),
        ("in weeks: 2, instead of: Hotel, ", "session-unknown", "Hotel"),
        ("instead of: A, ", "session-never", "A"),
        ("in weeks: 5, instead of: A, ", "weeks-beyond", "5"),
    ],
)
def test_edges_are_one_finding_each(head, rule, place, findings):
    found = [one for one in findings(text(A, B, session("Hotel", head))) if not one.why]
    assert [(one.rule, one.place.excerpt) for one in found][:1] == [(rule, place)]
    assert len(found) == 1 or rule == "weeks-beyond"
