"""What stands on a sheet, and what never does."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

import pytest

from spotline.lint.sheets.sheet import SheetLine
from spotline.tests.sheets.conftest import Folder

Text = Callable[..., str]
BO = "athlete: {name: Bo, best lifts: {back squat: 100 kg}}"


@pytest.fixture
def line(folder: Folder, week: Text) -> Callable[..., SheetLine]:
    """The first line of a session with one line."""

    def of(words: str, head: str = BO) -> SheetLine:
        return folder.session(week({"Gym": [words]}, head)).lines[0]

    return of


DOSES = [
    (
        "push-up, sets: 3, reps: 5-8, rir: 2, rest: 3 min",
        "3 sets of 5-8 repetitions",
        ["2 in reserve", "rest 3 min"],
    ),
    ("push-up, sets: 3-4, reps: 12/10/8, rest: 90 s", "3-4 sets of 12, 10, 8 repetitions", ["rest 90 s"]),
    ("push-up, sets: 1, reps: 8, side: each, rir: 0", "1 set of 8 repetitions each side", ["to failure"]),
    ("push-up, sets: 2, reps: 8 each", "2 sets of 8 repetitions each side", []),
    ("heel drop, sets: 3, reps: 15, side: left", "3 sets of 15 repetitions on the left", []),
    ("plank, sets: 3, hold: 45 s, rpe: 8", "3 sets of 45 s hold", ["RPE 8"]),
    ("side plank, sets: 2, hold: 40 s, side: each", "2 sets of 40 s hold each side", []),
    ("plank, sets: 2, reps: 30 s", "2 sets of 30 s", []),
    ("push-up, sets: 3, reps: amrap", "3 sets of as many repetitions as you can", []),
    ("push-up, sets: 3, reps: 5+", "3 sets of 5 repetitions", ["as many as you can in the last set"]),
    ("push-up, sets: 3, reps: 5, tempo: 3-1-X-0", "3 sets of 5 repetitions", ["tempo 3-1-X-0"]),
    ("push-up, every: 60 s, for: 6 min, reps: 10", "10 repetitions", ["a set every 60 s for 6 min"]),
    (
        "back squat, sets: 3, reps: 2+2, method: cluster, cluster rest: 20 s, load: 80 %",
        "3 sets of 2+2 repetitions",
        ["80 kg (80 %)", "20 s of rest within a set", "cluster"],
    ),
    ("back squat, sets: 3, reps: 5, load: 72.5-77 %", "3 sets of 5 repetitions", ["72.5-75 kg (72.5-77 %)"]),
    ("back squat, sets: 3, reps: 5, load: 60 kg", "3 sets of 5 repetitions", ["60 kg"]),
    (
        "leg press, sets: 3, reps: 5, rir: 2",
        "3 sets of 5 repetitions",
        ["you choose the load", "2 in reserve"],
    ),
    (
        "front squat, sets: 3, reps: 5, load: 70 %",
        "3 sets of 5 repetitions",
        ["70 % of your best lift (none on file: ask your coach for the weight)"],
    ),
    (
        "leg press, sets: 3, reps: 10, load: 10RM",
        "3 sets of 10 repetitions",
        ["10RM: a load that you could lift so many times and no more"],
    ),
    ("farmer's carry, sets: 3, distance: 30 m, load: 2 x 32 kg", "3 sets of 30 m", ["32 kg in each hand"]),
    ("pull-up, sets: 3, reps: 5, load: bodyweight + 5 kg", "3 sets of 5 repetitions", ["bodyweight + 5 kg"]),
    ("band curl, sets: 3, reps: 12, load: green band", "3 sets of 12 repetitions", ["green band"]),
    (
        "bench press, sets: 3, reps: 5, rest: 2-3 min",
        "3 sets of 5 repetitions",
        ["ask your coach for the load", "rest 2-3 min"],
    ),
    (
        "bench press, sets: 3, reps: 5, rest: 90-150 s",
        "3 sets of 5 repetitions",
        ["ask your coach for the load", "rest 90 s to 2.5 min"],
    ),
    (
        "leg press, sets: 2, reps: to failure",
        "2 sets of repetitions to failure",
        ["you choose the load", "to failure"],
    ),
    ("bench press, sets: 3, reps: 3, velocity: 0.5 m/s", "3 sets of 3 repetitions", ["bar speed 0.5 m/s"]),
    ("band row, sets: 3, reps: 12", "3 sets of 12 repetitions", []),
]


@pytest.mark.parametrize(("words", "headline", "parts"), DOSES)
def test_a_dose_in_words(line: Callable[..., SheetLine], words: str, headline: str, parts: list[str]) -> None:
    (dose,) = line(words).doses
    assert (dose.headline, dose.parts) == (headline, parts)


BARS = [
    ("back squat, load: 75 %", "On each side of a 20 kg bar: 25 + 2.5."),
    ("back squat, load: 70-75 %", "On each side of a 20 kg bar: 25 for 70 kg; 25 + 2.5 for 75 kg."),
    ("back squat, load: 20 kg", "On each side of a 20 kg bar: nothing."),
    ("back squat, load: 15 %", "Lighter than a 20 kg bar: take a lighter one."),
    ("back squat, load: 225 lb", "On each side of a 45 lb bar: 45 + 45."),
    ("back squat, load: 61.3 kg", ""),
    ("EZ bar curl, load: 30 kg", ""),
    ("trap bar deadlift, load: 100 kg", ""),
    ("goblet squat, load: 24 kg", ""),
]


@pytest.mark.parametrize(("words", "plates"), BARS)
def test_plates_are_told_of_a_usual_bar_only(line: Callable[..., SheetLine], words: str, plates: str) -> None:
    (dose,) = line(words.replace(",", ", sets: 3, reps: 5,", 1)).doses
    assert dose.amounts.plates == plates


@pytest.mark.parametrize(
    ("words", "blanks"),
    [
        ("back squat, sets: 3, reps: 5, load: 60 kg", ["reps", "kg", "RIR"]),
        ("back squat, sets: 3, reps: 5, load: 60 lb", ["reps", "lb", "RIR"]),
        ("leg press, sets: 3, reps: 5, rir: 2", ["reps", "kg", "RIR"]),
        ("push-up, sets: 3, reps: 5, load: bodyweight", ["reps", "RIR"]),
        ("push-up, sets: 3, reps: 5, rpe: 7", ["reps", "RPE"]),
        ("back squat, sets: 3, reps: 5, load: 60 kg, rpe: up to 8", ["reps", "kg", "RPE"]),
        ("back squat, sets: 3, reps: 5, load: 60 kg, rpe: 8, rir: 2", ["reps", "kg", "RIR"]),
        ("plank, sets: 3, hold: 30 s", ["s", "RPE"]),
        ("farmer's carry, sets: 3, distance: 30 m, load: 2 x 32 kg", ["m", "kg", "RPE"]),
    ],
)
def test_what_is_to_be_written_down(line: Callable[..., SheetLine], words: str, blanks: list[str]) -> None:
    assert line(words).doses[0].blanks == blanks


def test_everything_else_of_a_line(line: Callable[..., SheetLine]) -> None:
    found = line(
        "back squat, sets: 3, reps: 5, load: 80 %, warm-up sets: 2, or: [leg press, front squat], note: Chest up.,"
        " progression: {add: 2.5 kg, when: all sets are clean, every: week}"
    )
    assert found.remarks == [
        "Warm-up: 2 lighter sets first, working up to 80 kg.",
        "If you cannot do it here: leg press or front squat.",
        "Going on: add 2.5 kg when all sets are clean, every week.",
        "Chest up.",
    ]


def test_what_is_left_to_the_athlete_is_no_set(folder: Folder, week: Text) -> None:
    own = week({"Gym": ["push-up, sets: 1, reps: 5", "x"]}).replace(
        "exercise: x", "own choice: trunk, minutes: 8"
    )
    found = folder.session(own).lines[1]
    (dose,) = found.doses
    assert (found.exercise, dose.headline, dose.blanks) == ("trunk, your own choice", "8 min", ["min", "RPE"])


def test_a_complex_is_loaded_once(folder: Folder, week: Text) -> None:
    lifts = (
        "{complex: [{exercise: power clean, reps: 1}, {exercise: front squat, reps: 2}], sets: 3, load: 65 %}"
    )
    head = "athlete: {name: Bo, best lifts: {power clean: 70 kg}}"
    text = week({"Gym": ["x"]}, head).replace("{exercise: x}", lifts)
    first, second = (line.doses[0] for line in folder.session(text).lines)
    assert (first.load, first.amounts.plates) == ("45 kg (65 %)", "On each side of a 20 kg bar: 10 + 2.5.")
    assert (second.load, second.amounts.plates) == ("the same load", "")


def test_groups_of_sets_of_a_line_stand_together(folder: Folder, week: Text) -> None:
    work = "back squat, work: [{sets: 1, reps: 3, rpe: 8}, {sets: 3, reps: 5, load: 90 % of top set}]"
    (found,) = folder.session(week({"Gym": [work]}, BO)).lines
    assert [dose.headline for dose in found.doses] == ["1 set of 3 repetitions", "3 sets of 5 repetitions"]
    assert found.doses[1].load == "90 % of top set"


PAIRED = """\
programme: Pairs
sessions:
  - session: A
    exercises:
      - {exercise: back squat, sets: 3, reps: 5}
      - superset: [{exercise: push-up, reps: 8}, {exercise: pull-up, reps: 5}]
        rounds: 3
        rest: 2 min
        note: No hurry.
      - circuit: {rounds: 2, exercises: [{exercise: plank, hold: 30 s}, {exercise: dead bug, reps: 8}]}
"""


def test_pairs_and_the_rest_after_them(folder: Folder) -> None:
    alone, pair, circuit = folder.session(PAIRED).items
    assert [line.mark for item in (alone, pair, circuit) for line in item.lines] == [
        "1",
        "2a",
        "2b",
        "3a",
        "3b",
    ]
    assert alone.pairing == ""
    assert pair.pairing == "In turn: a set of 2a, then of 2b. Rest 2 min after each round."
    assert pair.note == "No hurry."
    assert circuit.pairing == "In turn: a set of 3a, then of 3b."


DATED = """\
programme: Dated
starts: 2026-11-30
blocks:
  - name: Build
    weeks: 2
    sessions:
      - session: A
        day: [monday, friday]
        exercises: [{exercise: push-up, sets: {1: 3, 2: 4}, reps: 8}]
      - {activity: match, day: saturday, minutes: 90}
  - name: Rest
    deload: true
    weeks: 1
    sessions:
      - {session: B, day: tuesday, exercises: [{exercise: push-up, sets: 1, reps: 8}]}
events: [{date: 2026-12-13, event: regatta, note: the reason}]
"""


def test_weeks_and_days(folder: Folder) -> None:
    sheet = folder.sheet(DATED)
    first, second, third = sheet.weeks
    assert sheet.words == "3 weeks, 30 November 2026 to 20 December 2026"
    assert first.words == "Week 1 of 3 · 30 Nov to 6 Dec 2026 · Build"
    assert third.words.endswith("Rest · an easier week")
    assert first.days == (
        ("Mon 30 Nov", (("A", 1),)),
        ("Fri 4 Dec", (("A", 1),)),
        ("Sat 5 Dec", (("match, 90 min", 0),)),
    )
    assert second.days[-1] == ("Sun 13 Dec", (("regatta", 0),))
    assert [dose.sets for week in sheet.weeks for dose in week.sessions[0].lines[0].doses] == [
        "3 sets",
        "4 sets",
        "1 set",
    ]


def test_a_session_of_several_days_is_one_page(folder: Folder) -> None:
    (session,) = folder.sheet(DATED).weeks[0].sessions
    assert [day.words for day in session.days] == ["Monday 30 November 2026", "Friday 4 December 2026"]
    assert [day.date for day in session.days] == [date(2026, 11, 30), date(2026, 12, 4)]


def test_hour_place_and_rest_before_the_next_exercise(folder: Folder) -> None:
    sheet = folder.sheet(
        "programme: P\nstarts: 2026-11-30\nweeks: 2\nwhere: {2: hotel}\nathlete: {name: Bo}\n"
        "sessions:\n  - session: A\n    days: [monday 05:45, friday]\n    exercises:\n"
        "      - {exercise: plank, sets: 3, hold: 20 s, rest after: 3 min}\n"
    )
    days = [day.words for week in sheet.weeks for session in week.sessions for day in session.days]
    assert days == [
        "Monday 30 November 2026, 5:45",
        "Friday 4 December 2026",
        "Monday 7 December 2026, 5:45, at hotel",
        "Friday 11 December 2026, at hotel",
    ]
    (dose,) = sheet.weeks[0].sessions[0].lines[0].doses
    assert "then 3 min before the next exercise" in dose.extra


def test_one_week_alone(folder: Folder) -> None:
    (week,) = folder.sheet(DATED, week=2).weeks
    assert week.words.startswith("Week 2 of 3")


def test_without_a_date_there_are_weekdays_and_without_a_day_any(folder: Folder, week: Text) -> None:
    sheet = folder.sheet(
        week({"tuesday": ["push-up, sets: 3, reps: 8"], "Gym": ["push-up, sets: 3, reps: 8"]})
    )
    assert [day.words for one in sheet.weeks[0].sessions for day in one.days] == ["Tuesday", "any day"]
    assert sheet.words == "1 week"


def test_lines_without_sets_in_a_week_are_left_out(folder: Folder, week: Text) -> None:
    text = week({"Gym": ["push-up, sets: {1: 3, 2: 0}", "plank, sets: 2, hold: 30 s"]}, "weeks: 2")
    first, second = folder.sheet(text).weeks
    assert [line.exercise for line in first.sessions[0].lines] == ["push-up", "plank"]
    assert [line.exercise for line in second.sessions[0].lines] == ["plank"]
    assert second.sessions[0].lines[0].mark == "1"


# What is left out


SPARED = """\
programme: Spared
athletes:
  - athlete:
      name: Ida
      note: a private word
      protect:
        - {movement: overhead pressing, advised by: physiotherapist, review on: 2026-03-01, note: since the fall}
        - {area: left shoulder, advised by: physiotherapist, note: since the fall}
    adjust: [{exercise: box jump, leave out: true, note: a private word}]
note: a private word
sessions:
  - session: A
    exercises: [{exercise: leg press, sets: 3, reps: 8}, {exercise: box jump, sets: 3, reps: 3}]
"""


def test_movements_to_leave_out_have_a_date_and_no_reason(folder: Folder) -> None:
    sheet = folder.sheet(SPARED)
    assert sheet.leave_out == ("overhead pressing (to be looked at again on 1 March 2026)", "box jump")
    assert [line.exercise for line in sheet.weeks[0].sessions[0].lines] == ["leg press"]


def test_what_was_agreed_is_told(folder: Folder) -> None:
    agreed = SPARED.replace(
        "advised by: physiotherapist, review", "agreed: [landmine press], advised by: physiotherapist, review"
    )
    assert folder.sheet(agreed).leave_out[0].startswith("overhead pressing, but for landmine press (to be")


@pytest.mark.parametrize("apart", [False, True])
def test_a_reason_within_the_movement_is_not_told(folder: Folder, week: Text, apart: bool) -> None:
    spared = "protect: [{movement: pressing after the rotator cuff repaired shoulder surgery, advised by: physiotherapist}]"
    days = {"Gym": ["leg press, sets: 3, reps: 8"]}
    if apart:
        folder.write(f"name: Bo\n{spared}\n", "bo.athlete.yaml")
        sheet = folder.sheet(week(days, "athlete: bo.athlete.yaml"))
    else:
        sheet = folder.sheet(week(days, f"athlete: {{name: Bo, {spared}}}"))
    assert sheet.leave_out == ("a movement that your coach will name",)


def test_in_rehabilitation_pain_is_asked_for(folder: Folder, week: Text) -> None:
    stage = "{stage: second, advised by: physiotherapist, until: 2026-01-10}"
    head = f"starts: 2026-01-05\nweeks: 2\nrehabilitation: {stage}"
    first, second = folder.sheet(week({"monday": ["heel drop, sets: 3, reps: 15"]}, head)).weeks
    assert first.sessions[0].pain
    assert not second.sessions[0].pain, "the stage has ended"


def test_elsewhere_it_is_not(folder: Folder, week: Text) -> None:
    assert not folder.session(week({"monday": ["heel drop, sets: 3, reps: 15"]})).pain


def test_a_note_with_a_diagnosis_is_not_told(folder: Folder, week: Text) -> None:
    lines = [
        "push-up, sets: 3, reps: 8, note: gently with the meniscus",
        "plank, sets: 2, hold: 30 s, note: Breathe.",
    ]
    assert [line.note for line in folder.session(week({"Gym": lines})).lines] == ["", "Breathe."]


def test_words_that_need_telling_are_told_if_they_stand_there(folder: Folder, week: Text) -> None:
    plain = folder.sheet(week({"Gym": ["plank, sets: 3, hold: 30 s, rpe: 8"]}))
    assert [term for term, _ in plain.terms] == ["RPE"]
    more = folder.sheet(
        week({"Gym": ["leg press, sets: 3, reps: 5, rir: 2, tempo: 3-1-X-0, warm-up sets: 1"]})
    )
    assert [term for term, _ in more.terms] == ["you choose the load", "in reserve", "tempo", "warm-up"]


def test_notes_of_the_whole_are_the_coachs_unless_they_say_when_to_stop(folder: Folder, week: Text) -> None:
    days = {"Gym": ["push-up, sets: 3, reps: 8"]}
    assert folder.sheet(week(days, "note: He does too much.")).stop == ""
    assert folder.sheet(week(days, "note: Stop for any pain.")).stop == "Stop for any pain."


@pytest.mark.parametrize(
    ("load", "shown"),
    [
        ("90 %", "bodyweight + 10 kg (90 %)"),
        ("70/80/90 %", "bodyweight with 10 kg of help, bodyweight, bodyweight + 10 kg (70/80/90 %)"),
        ("75-85 %", "bodyweight with 5 kg of help to bodyweight + 5 kg (75-85 %)"),
    ],
)
def test_a_load_on_the_body(line: Callable[..., SheetLine], load: str, shown: str) -> None:
    # 80 kg of body and 20 kg: 100 kg.
    head = "athlete: {name: Bo, body mass: 80 kg, best lifts: {pull-up: bodyweight + 20 kg}}"
    assert line(f"pull-up, sets: 3, reps: 4, load: {load}", head).doses[0].load == shown


def test_the_rooms_own_steps(folder: Folder, week: Text) -> None:
    folder.write("rules: {load-not-settable: {steps: {machine: 7, barbell: 5}}}\n", "spotline.yaml")
    head = "athlete: {name: Bo, best lifts: {leg press: 100 kg, back squat: 103 kg}}"
    lines = [f"{lift}, sets: 3, reps: 5, load: 72 %" for lift in ("leg press", "back squat")]
    loads = [line.doses[0].load for line in folder.session(week({"Gym": lines}, head)).lines]
    assert loads == ["70 kg (72 %)", "70 kg (72 %)"]
