"""Which findings a client means that asks for quick fixes."""

from __future__ import annotations

import pytest

from spotline.lint.editor.features.fixes import fixes

PLAN = """\
programme: Test
focus: [legs]
sessions:
  - session: One
    exercises:
      - {note: früh, exercise: back sqat, sets: 3, reps: 5, rir: 2}
      - {exercise: leg curl, sets: 3, reps: 10, rir: 1, rpe: 7}
"""


@pytest.fixture
def view(opened):
    view = opened(PLAN)
    assert {one.rule for one in view.review.findings} >= {"exercise-unknown", "rir-rpe-contradict"}
    return view


def titles(view, start, end, named=None):
    return [fix.title for fix in fixes(view, start, end, named) if not fix.title.startswith("Waive")]


def test_the_one_under_the_caret(view):
    at = PLAN.index("sqat")
    assert titles(view, at, at)[0] == "Write back squat"
    assert "Write RPE 9" not in titles(view, at, at)


@pytest.mark.parametrize("words", ["      - {note", "rir: 2", "2}\n"])
def test_those_of_its_line_where_the_caret_stands_beside_them(view, words):
    at = PLAN.index(words)
    assert titles(view, at, at)[0] == "Write back squat"
    assert "Write RPE 9" not in titles(view, at, at)


def test_none_on_another_line(view):
    at = PLAN.index("exercises:")
    assert fixes(view, at, at) == []


def test_the_one_that_is_named_where_the_whole_text_is_asked_about(view):
    at = PLAN.index("rpe: 7") + 5
    assert titles(view, 0, len(PLAN), [(at, at + 1)]) == ["Write RPE 9", "Write RIR 3"]
    assert {"Write RPE 9", "Write back squat"} <= set(titles(view, 0, len(PLAN)))


def test_names_of_what_is_found_no_longer_are_left_alone(view):
    assert {"Write RPE 9", "Write back squat"} <= set(titles(view, 0, len(PLAN), [(0, 3)]))
