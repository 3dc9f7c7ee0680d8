"""Rest from one exercise to the next."""

from __future__ import annotations

import pytest

from spotline.lint.counting.session_time import CHANGE_OVER


def text(after="", last=""):
    return (
        "programme: P\nsessions:\n  - session: A\n    exercises:\n"
        f"      - {{exercise: back squat, sets: 2, reps: 5, rest: 2 min{after}}}\n"
        f"      - {{exercise: leg press, sets: 2, reps: 5, rest: 2 min{last}}}\n"
    )


def test_it_stands_for_the_time_to_change_over(programme):
    plain, rested = (
        programme(one).weeks[0].visits[0].time() for one in (text(), text(", rest after: 3-4 min"))
    )
    assert (plain.around.ends, plain.rest.ends) == (CHANGE_OVER.ends, (240, 240))
    assert (rested.around.ends, rested.rest.ends) == ((0, 0), (420, 480))
    assert rested.assumed_rest.ends == plain.assumed_rest.ends


def test_after_the_last_exercise_nothing_follows(programme):
    plain, rested = (
        programme(one).weeks[0].visits[0].time() for one in (text(), text("", ", rest after: 3 min"))
    )
    assert rested.total.ends == plain.total.ends


@pytest.mark.parametrize(("rest", "rule"), [("3", "value-out-of-range"), ("long", "value-unreadable")])
def test_what_cannot_be_meant_is_one_finding(rest, rule, findings):
    (found,) = [one for one in findings(text(f", rest after: {rest}")) if not one.why]
    assert (found.rule, found.place.excerpt) == (rule, rest)
