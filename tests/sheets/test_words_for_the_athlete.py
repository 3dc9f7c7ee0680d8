"""What a sheet tells the athlete of a line and a session: what to think of, when to stop, what comes after."""

from __future__ import annotations

import pytest

TEXT = """\
programme: P
athlete: {name: Mara}
weeks: 2
sessions:
  - session: A
    preparation: 5 min bike
    cool-down: [5 min walk, calves]
    minutes: {1: 60, 2: 45}
    exercises:
      - {exercise: back squat, sets: 3, reps: 5, cue: {1: knees out, 2: chest up.}, stop when: the bar slows}
      - {exercise: leg curl, sets: 3, reps: 8, note: slowly}
      - {exercise: side plank, sets: 2, hold: 30 s/side}
      - {exercise: chin-up, sets: 2, reps: 5, load: assisted}
      - {circuit: {for: {1: 10 min, 2: 12 min}, exercises: [{exercise: push-up, reps: 10}]}}
"""


def test_a_cue_and_a_stop_are_sentences_of_their_line(folder):
    first, second = (week.sessions[0].lines for week in folder.sheet(TEXT).weeks)
    assert first[0].remarks == ["Think of: knees out.", "Stop when: the bar slows."]
    assert second[0].remarks == ["Think of: chest up.", "Stop when: the bar slows."]
    assert first[1].remarks == ["slowly"]


def test_a_session_says_what_comes_after_and_how_long_it_goes_on(folder):
    first, second = (week.sessions[0] for week in folder.sheet(TEXT).weeks)
    assert (first.preparation, first.cool_down) == ("5 min bike", "5 min walk, calves")
    assert (first.lasts, second.lasts) == ("60 min in all", "45 min in all")
    plain = folder.session(
        TEXT.replace("    minutes: {1: 60, 2: 45}\n", "").replace("    cool-down: [5 min walk, calves]\n", "")
    )
    assert (plain.cool_down, plain.lasts) == ("", "")


def test_loads_sides_and_rounds_read_as_they_are_meant(folder):
    first, second = (week.sessions[0] for week in folder.sheet(TEXT).weeks)
    assert first.lines[2].doses[0].headline == "2 sets of 30 s hold each side"
    assert first.lines[3].doses[0].load == "assisted"
    assert [one.items[-1].pairing for one in (first, second)] == [
        "As many rounds as you can in 10 min.",
        "As many rounds as you can in 12 min.",
    ]


@pytest.mark.parametrize("form", ["markdown", "html"])
def test_every_form_prints_them(folder, form):
    from spotline.lint.reporters import sheet_html, sheet_markdown

    module = {"markdown": sheet_markdown, "html": sheet_html}[form]
    text = module.text(folder.sheet(TEXT))
    for words in (
        "Think of: knees out.",
        "Stop when: the bar slows.",
        "After: 5 min walk, calves",
        "60 min in all",
    ):
        assert words in text
