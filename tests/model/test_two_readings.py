"""What coaches write: read where it has one meaning, asked about where it has two."""

from __future__ import annotations

import pytest

from spotline.lint.mending.edits import with_edits

HEAD = "programme: Test\nweeks: 4\nsessions:\n  - session: A\n    day: monday\n    exercises:\n"


def text(*lines):
    return HEAD + "".join(f"      - {line}\n" for line in lines)


def line(words):
    return text(f"{{exercise: {words}}}")


def works(programme, *lines):
    ledger = programme(text(*lines))
    (visit,) = ledger.weeks[0].visits
    return [group.work for group in visit.own]


@pytest.fixture(scope="module")
def asked(findings):
    """The findings of reading and schema on a programme's text: their names, the places, the edits."""

    def run(content):
        return [one for one in findings(content) if not one.why]

    return run


# One meaning: no finding, and the same as the plain spelling

ALIKE = [
    ("back squat, sets: 3, reps: 8 – 12, load: '72,5 kg', rest: 90", "back squat, sets: 3, reps: 8-12, load: 72.5 kg, rest: 90 s"),
    ("back squat, sets: 3, reps: 8 to 10, rest: 1:30", "back squat, sets: 3, reps: 8-10, rest: 90 s"),
    ("back squat, sets: 3, reps: 5, rest: 2'", "back squat, sets: 3, reps: 5, rest: 2 min"),
    ("split squat, sets: 3, reps: 8/side", "split squat, sets: 3, reps: 8, side: each"),
    ("split squat, sets: 3, reps: 8 each", "split squat, sets: 3, reps: 8, side: each"),
    ("split squat, sets: 3, reps: 8 per leg", "split squat, sets: 3, reps: 8, side: each"),
    ("split squat, sets: 2, reps: 10-12 a side", "split squat, sets: 2, reps: 10-12, side: each"),
    ("split squat, sets: 2, reps: '10/arm', side: each", "split squat, sets: 2, reps: 10, side: each"),
    ("split squat, sets: 3, reps: 8/s", "split squat, sets: 3, reps: 8, side: each"),
    ("side plank, sets: 3, hold: 30 s/side", "side plank, sets: 3, hold: 30 s, side: each"),
    ("side plank, sets: 3, hold: {1-2: 20 s each, 3-4: 30 s/s}", "side plank, sets: 3, hold: {1-2: 20 s, 3-4: 30 s}, side: each"),
    ("suitcase carry, sets: 3, distance: 30 m/side", "suitcase carry, sets: 3, distance: 30 m, side: each"),
    ("suitcase carry, sets: 3, distance: 60 ft per arm, side: each", "suitcase carry, sets: 3, distance: 60 ft, side: each"),
    ("pull-up, sets: 3, reps: 5, load: 20 kg assisted", "pull-up, sets: 3, reps: 5, load: bodyweight - 20 kg"),
    ("back squat, sets: 1, reps: 1, load: to 92 %", "back squat, sets: 1, reps: 1, load: up to 92 %"),
    ("back squat, reps: 3x12", "back squat, sets: 3, reps: 12"),
    ("back squat, sets: 3x12", "back squat, sets: 3, reps: 12"),
    ("back squat, reps: 4 sets of 5", "back squat, sets: 4, reps: 5"),
    ("back squat, reps: 2 x 8–10, sets: 2", "back squat, sets: 2, reps: 8-10"),
    ("push-up, sets: 3, reps: AMRAP", "push-up, sets: 3, reps: amrap"),
    ("push-up, sets: 3, reps: to failure", "push-up, sets: 3, reps: amrap, rir: 0"),
    ("push-up, sets: 3, reps: 12, rir: to failure", "push-up, sets: 3, reps: 12, rir: 0"),
    ("push-up, sets: 3, reps: 12, rpe: Failure", "push-up, sets: 3, reps: 12, rpe: 10"),
    ("pull-up, sets: 3, reps: 5, load: +10 kg", "pull-up, sets: 3, reps: 5, load: bodyweight + 10 kg"),
    ("pull-up, sets: 3, reps: 5, load: BW", "pull-up, sets: 3, reps: 5, load: bodyweight"),
    ("sled push, sets: 3, distance: 60 ft", "sled push, sets: 3, distance: 60 feet"),
    ("back squat, sets: {1+3: 3, 2+4: 2}, reps: 5", "back squat, sets: {1: 3, 2: 2, 3: 3, 4: 2}, reps: 5"),
    ("back squat, sets: {1–3: 3, week 4: 2}, reps: 5", "back squat, sets: {1-3: 3, 4: 2}, reps: 5"),
    ("back squat, sets: 3, reps: 5, load: {1: 70 %, 2: +2 %, 3: +2 %, 4: 60 %}", "back squat, sets: 3, reps: 5, load: {1: 70 %, 2: 72 %, 3: 74 %, 4: 60 %}"),
    ("back squat, sets: 3, reps: 5, load: {1: 60 kg, 2-4: +2.5 kg}", "back squat, sets: 3, reps: 5, load: {1: 60 kg, 2-4: 62.5 kg}"),
    ("back squat, sets: 3, reps: 5, load: {1-2: 100 kg, 3-4: -10 %}", "back squat, sets: 3, reps: 5, load: {1-2: 100 kg, 3-4: 90 kg}"),
    ("back squat, sets: 3, reps: 12-10-8", "back squat, sets: 3, reps: 12/10/8"),
    ("back squat, sets: 3, reps: 5, tempo: 31X0", "back squat, sets: 3, reps: 5, tempo: 3-1-X-0"),
    ("back squat, work: [{sets: 1, reps: 3, load: 80 %}, {sets: 3, reps: 5, load: -12 %}]", "back squat, work: [{sets: 1, reps: 3, load: 80 %}, {sets: 3, reps: 5, load: 88 % of top set}]"),
    ("'plank', sets: 3, hold: 45", "plank, sets: 3, hold: 45 s"),
]  # fmt: skip


def as_data(value):
    if hasattr(type(value), "__slots__") and type(value).__name__ in ("Reps", "Load"):
        keep = {"sets", "parts", "open_last", "kind", "values", "words", "unit", "pieces"}
        return [(name, as_data(getattr(value, name))) for name in value.__slots__ if name in keep]
    return repr(value) if not isinstance(value, tuple) else [as_data(one) for one in value]


def all_works(ledger):
    keys = ("sets", "reps", "load", "rir", "rpe", "rest", "tempo", "hold", "timed", "distance", "side")
    return [
        [as_data(getattr(group.work, key)) for key in keys]
        for week in ledger.weeks
        for visit in week.visits
        for group in visit.own
    ]


def test_an_effort_behind_a_sign_under_its_own_key_has_one_reading(findings):
    for key in ("rpe", "rir"):
        text = line(f"back squat, sets: 3, {key}: @8")
        (found,) = [one for one in findings(text) if not one.why]
        assert (found.rule, found.change) == ("sign-needs-quotes", f"Write `{key}: 8`.")
        (edit,) = found.edits
        assert not [one for one in findings(mended(text, edit)) if not one.why]


@pytest.mark.parametrize(("written", "plain"), ALIKE)
def test_what_has_one_meaning_counts_as_its_plain_spelling(written, plain, programme):
    assert all_works(programme(line(written))) == all_works(programme(line(plain)))


@pytest.mark.parametrize("day", ["mon", "Mon", "mondays", "MONDAY", "Mo"])
def test_days_are_read_however_they_are_spelt(day, programme):
    ledger = programme(HEAD.replace("monday", day) + "      - {exercise: back squat, sets: 3}\n")
    assert ledger.weeks[0].visits[0].day == 1


@pytest.mark.parametrize("key", ["day", "days"])
def test_days_of_a_session_may_be_called_either(key, programme, asked):
    content = (
        HEAD.replace("day: monday", f"{key}: [mon, Wed, fri]") + "      - {exercise: back squat, sets: 3}\n"
    )
    assert [visit.day for visit in programme(content).weeks[0].visits] == [1, 3, 5]
    both = content.replace(f"    {key}:", "    day: mon\n    days:")
    assert [one.rule for one in asked(both)] == (["keys-at-odds"])


def test_days_of_an_athlete_are_read(findings):
    content = "programme: P\nathlete: {name: Mara, days: [mon, wed, fri]}\n" + HEAD.partition("weeks: 4\n")[2]
    found = findings(content + "      - {exercise: back squat, sets: 3}\n")
    assert not [one for one in found if one.rule in ("days-more-than-athlete", "value-unknown")]
    other = findings(
        content.replace("day: monday", "day: tues") + "      - {exercise: back squat, sets: 3}\n"
    )
    assert [one.rule for one in other if one.rule == "days-more-than-athlete"]


def test_a_timed_set_takes_its_time_and_has_no_repetitions(programme):
    (work,) = works(programme, "{exercise: mountain climber, sets: 3, reps: 30 s, rest: 60 s}")
    assert (work.reps, str(work.timed), work.hold) == (None, "30", None)
    ledger = programme(line("mountain climber, sets: 3, reps: 30 s, rest: 60 s"))
    longer = programme(line("mountain climber, sets: 3, reps: 60 s, rest: 60 s"))
    minutes = [one.weeks[0].visits[0].time().total.low for one in (ledger, longer)]
    assert minutes[1] - minutes[0] == 90


def test_a_back_off_may_follow_on_a_line_of_its_own(programme):
    first, second = works(
        programme,
        "{exercise: back squat, sets: 1, reps: 3, rpe: 8}",
        "{exercise: back squat, sets: 3, reps: 5, load: -8 %}",
    )
    assert (second.load.kind, second.load.words) == ("top set", "92 % of top set")
    assert first.load is None


def test_a_clock_time_is_no_matter_for_quotes(findings):
    assert not [one for one in findings(line("back squat, sets: 3, rest: 1:30")) if one.rule == "quote-this"]
    assert [one for one in findings(line("back squat, sets: 3, note: no")) if one.rule == "quote-this"]


# Two readings: one finding that names both, with an edit for each

ASKED = [
    ("back squat, sets: 3, rest: 3", "3", ["3 s", "3 min"]),
    ("back squat, sets: 3, rest: 2-3", "2-3", ["2-3 s", "2-3 min"]),
    ("plank, sets: 3, hold: 5", "5", ["5 s", "5 min"]),
    ("swing, every: 60 s, for: 10", "10", ["10 s", "10 min"]),
    ("back squat, sets: 3, rest: 1.30", "1.30", ["90 s", "1.3 min"]),
    ("back squat, sets: 3, rest: 2.45", "2.45", ["165 s", "2.45 min"]),
    ("back squat, sets: 3, rest: 1.5", "1.5", ["1.5 s", "1.5 min"]),
    ("plank, sets: 3, hold: 20 m", "20 m", ["20 min", "distance: 20 m"]),
    ("back squat, sets: 3, rest: 20 m", "20 m", ["20 min", "note: rest is a walk of 20 m"]),
    ("back squat, reps: 3x5", "3x5", ["3 sets of 5", "5 sets of 3"]),
    ("back squat, sets: 8x3", "8x3", ["8 sets of 3", "3 sets of 8"]),
    ("back squat, reps: {1-2: 3x4, 3-4: 3x12}", "3x4", ["3 sets of 4", "4 sets of 3"]),
    ("lunge, sets: 3, reps: 10 alternating", "10 alternating", ["10 each", "5 each"]),
    ("lunge, sets: 3, reps: 9 alt", "9 alt", ["9 each", "9"]),
    ("back squat, sets: 3, load: '@8'", "'@8'", ["rpe: 8", "8 kg"]),
    ("back squat, sets: 3, reps: 5 @8", "5 @8", ["5, rpe: 8", "5, load: 8 kg"]),
    ("back squat, sets: 3, reps: 5 @70", "5 @70", ["5, load: 70 %", "5, load: 70 kg"]),
    ("back squat, sets: 3, tempo: 3-1-1", "3-1-1", ["3-1-1-0", "1-0-3-1"]),
    ("back squat, sets: 3, tempo: 3-1-3", "3-1-3", ["3-1-3-0", "3-0-3-1"]),
    ("goblet squat, sets: 3, reps: 8, load: 10 kg each", "10 kg each", ["2 x 10 kg", "10 kg"]),
    ("split squat, sets: 3, reps: 8, load: 12.5 kg per hand", "12.5 kg per hand", ["2 x 12.5 kg", "12.5 kg"]),
    ("back squat, sets: 3, tempo: 201", "201", ["2-0-1-0", "1-0-2-0"]),
    ("back squat, sets: 3, tempo: X-1-3-0", "X-1-3-0", ["3-0-X-1", "0-1-3-0"]),
    ("back squat, sets: 3, load: '1,250 kg'", "'1,250 kg'", ["1250 kg", "1.25 kg"]),
    ("back squat, sets: 3, load: 2.125 lb", "2.125 lb", ["2125 lb", "2.125 lb"]),
    ("back squat, sets: 3, load: 85+ %", "85+ %", ["from 85 %", "85 %"]),
    ("back squat, sets: 3, load: 80 %+", "80 %+", ["from 80 %", "80 %"]),
    ("back squat, sets: 3, load: -12 %", "-12 %", ["88 % of top set", "88 %"]),
    ("back squat, sets: 3, load: {1-3: 70 %, 4: +5 %}", "+5 %", ["75 %", "73.5 %"]),
    ("back squat, sets: 3, load: {1-3: 80 %, 4: -10 %}", "-10 %", ["70 %", "72 %"]),
    ("back squat, sets: 2, reps: 10-8", "10-8", ["8-10", "10/8"]),
    ("back squat, sets: 2, reps: 6-4", "6-4", ["4-6", "6/4"]),
    ("back squat, sets: 3, reps: 12+10+8", "12+10+8", ["12/10/8", "12+10+8, method: cluster"]),
    ("back squat, sets: 2, reps: 10+6", "10+6", ["10/6", "10+6, method: cluster"]),
]  # fmt: skip


def mended(content, edit):
    return with_edits(content, [edit])


@pytest.mark.parametrize(("written", "excerpt", "meant"), ASKED)
def test_two_readings_are_asked_about_once_with_an_edit_for_each(written, excerpt, meant, asked):
    content = line(written)
    found = asked(content)
    assert [(one.rule, one.place.excerpt) for one in found] == [("two-readings", excerpt)]
    assert [edit.words for edit in found[0].edits] == meant
    assert "two readings" in found[0].counted
    for edit in found[0].edits:
        if edit.words != "2.125 lb":
            assert not [one for one in asked(mended(content, edit)) if one.rule == "two-readings"], edit.words
            left = [one.rule for one in asked(mended(content, edit)) if one.severity == "error"]
            assert left == (["no-set-fits"] if edit.words == "10 s" else []), edit.words


def test_an_unquoted_sign_does_not_hide_the_question(asked):
    (found,) = asked(line("back squat, sets: 3, load: @8"))
    assert (found.rule, [edit.words for edit in found.edits]) == ("two-readings", ["rpe: 8", "load: 8 kg"])
    for edit in found.edits:
        assert not asked(mended(line("back squat, sets: 3, load: @8"), edit))
    (found,) = asked(line("back squat, sets: 3, note: @home"))
    assert found.rule == "sign-needs-quotes"


@pytest.mark.parametrize(
    ("written", "dates"),
    [("5/7/27", ["2027-07-05", "2027-05-07"]), ("3/12/2026", ["2026-12-03", "2026-03-12"])],
)
def test_a_date_of_two_readings(written, dates, asked):
    content = (
        HEAD.replace("weeks: 4", f"weeks: 4\nstarts: {written}") + "      - {exercise: back squat, sets: 3}\n"
    )
    (found,) = asked(content)
    assert (found.rule, [edit.words for edit in found.edits]) == ("two-readings", dates)


@pytest.mark.parametrize("written", ["25/7/27", "5/5/27", "5/13/27"])
def test_a_date_of_one_reading_is_not_said_to_have_two(written, asked):
    content = (
        HEAD.replace("weeks: 4", f"weeks: 4\nstarts: {written}") + "      - {exercise: back squat, sets: 3}\n"
    )
    assert [one.rule for one in asked(content)] == ["value-unreadable"]


@pytest.mark.parametrize(
    "written",
    [
        "back squat, sets: 3, reps: 2+2+2",
        "back squat, sets: 4, reps: 12+10+8",
        "back squat, sets: 3, reps: 12+10+8, method: cluster",
        "back squat, sets: 3, reps: 12+10+8, cluster rest: 20 s",
        "back squat, sets: 3, reps: 5, tempo: 3-1-X-0",
        "back squat, sets: 3, reps: 5, tempo: X-0-X-0",
        "back squat, sets: 2, reps: 8-10",
        "back squat, sets: 3, reps: 5, load: {1-3: 70 %, 4: +2 %}",
    ],
)
def test_what_is_plain_is_not_asked_about(written, asked):
    assert asked(line(written)) == []


def test_what_cannot_be_meant_is_told_once(asked):
    (found,) = asked(line("back squat, sets: 3x12, reps: 10"))
    assert found.rule == "keys-at-odds"
    (found,) = asked(line("split squat, sets: 3, reps: 8/side, side: left"))
    assert found.rule == "keys-at-odds"
    (found,) = asked(text("circuit: {rounds: 3, exercises: [{exercise: push-up, reps: 2x12}]}"))
    assert found.rule == "keys-at-odds"
    assert asked(text("circuit: {rounds: 3 rounds, exercises: [{exercise: push-up, reps: 3x12}]}")) == []
    (found,) = asked(line("back squat, sets: 3, load: {1: 10RM, 2-4: +5 %}"))
    assert (found.rule, found.edits) == ("two-readings", ())


# One cause, one finding


def test_a_value_that_a_comma_cuts_inside_braces(asked):
    content = line("leg curl, sets: 3, reps: 5, note: eccentric only, left first, slowly")
    (found,) = asked(content)
    assert (found.rule, found.place.excerpt) == ("comma-cuts-value", "eccentric only, left first, slowly")
    assert found.edits[0].words == "'eccentric only, left first, slowly'"
    assert asked(mended(content, found.edits[0])) == []
    content = line("back squat, sets: 3, load: {1-3: 70 %, 4: 72,5 %}")
    (found,) = asked(content)
    assert (found.rule, found.place.excerpt, found.edits[0].words) == ("comma-cuts-value", "72,5 %", "72.5 %")
    assert "comma" in found.counted
    assert asked(mended(content, found.edits[0])) == []
    content = line("back squat, sets: 3, rest: 2,5 min, rir: 2")
    (found,) = asked(content)
    assert found.edits[0].words == "2.5 min"


def test_a_key_without_a_value_is_no_piece_of_one(asked):
    assert [one.rule for one in asked(line("back squat, sets: 3, note: slow, rest"))] == ["value-missing"]
    assert [one.rule for one in asked(line("back squat, sets: 3, colour: red"))] == ["key-unknown"]


@pytest.mark.parametrize(
    ("written", "words"),
    [
        ("kettlebell swing, emom: 10 min, reps: 10", "every: 60 s, for: 10 min"),
        ("kettlebell swing, EMOM: 12, reps: 10", "every: 60 s, for: 12 min"),
        ("kettlebell swing, e2mom: 16', reps: 10", "every: 120 s, for: 16 min"),
    ],
)
def test_every_minute_work_is_one_finding(written, words, asked):
    content = line(written)
    (found,) = asked(content)
    assert (found.rule, [edit.words for edit in found.edits]) == ("key-unknown", [words])
    assert asked(mended(content, found.edits[0])) == []


def test_every_minute_work_of_several_exercises_is_one_finding(asked):
    (found,) = asked(text("emom: 10 min", "{exercise: back squat, sets: 3}").replace("      - emom: 10 min\n", "      - emom: 10 min\n        exercises: [{exercise: push-up, reps: 5}]\n"))  # fmt: skip
    assert (found.rule, found.place.excerpt) == ("key-unknown", "emom")


BLOCKS = """\
programme: P
blocks:
  - name: Base
    weeks: 4
    sessions:
      - session: A
        exercises:
          - {exercise: back squat, sets: 3}
  - name: Next
    weeks: 4
"""
SESSIONS = """\
{0}sessions:
{0}  - session: B
{0}    exercises:
{0}      - exercise: back squat
{0}        sets: 3
"""


def test_sessions_outside_their_block_are_told_at_their_own_line(asked):
    (found,) = asked(BLOCKS + SESSIONS.format(""))
    assert (found.rule, found.place.line, found.place.excerpt) == ("key-misplaced", 11, "sessions")
    assert asked(mended(BLOCKS + SESSIONS.format(""), found.edits[0])) == []
    assert asked(BLOCKS + SESSIONS.format("    ")) == []
    (found,) = asked(BLOCKS + SESSIONS.format("  "))
    assert (found.severity, found.place.line) == ("error", 11)


def test_a_key_that_ends_the_list_above_it_is_told_where_it_stands(asked):
    more = "  - name: Last\n    weeks: 2\n" + SESSIONS.format("    ")
    content = BLOCKS + SESSIONS.format("").replace("\n  ", "\n      ") + more
    (found,) = asked(content)
    assert (found.rule, found.place.line, found.place.excerpt) == ("indentation-uneven", 11, "sessions")
    assert asked(mended(content, found.edits[0])) == []


@pytest.mark.parametrize("owner", ["shared:\n  warm: [bike]", "athlete:\n  name: Mara"])
def test_sessions_under_another_key_are_told_at_their_own_line(owner, asked):
    content = f"programme: P\n{owner}\n" + SESSIONS.format("  ")
    (found,) = asked(content)
    assert (found.rule, found.place.line, found.place.excerpt) == ("key-misplaced", 4, "sessions")
    assert asked(mended(content, found.edits[0])) == []


def test_days_of_a_programme_are_one_finding(asked):
    content = text("{exercise: back squat, sets: 3}").replace(
        "weeks: 4\n", "weeks: 4\ndays: [mon, wed, fri]\n"
    )
    (found,) = asked(content)
    assert (found.rule, found.edits[0].words) == ("key-unknown", "rotation")


# Lines written as on paper: all that was said of the lift in one value

PAPER = [
    ("one-arm DB row 3x10/side", ["exercise: one-arm DB row, sets: 3x10/side"]),
    ("leg curl 3x8-10 RIR 2, rest 2 min", ["exercise: leg curl, sets: 3x8-10, rir: 2, rest: 2 min"]),
    ("side plank 2x30 s each side", ["exercise: side plank, sets: 2x30 s each side"]),
    ("sled push 4x20 m", ["exercise: sled push, sets: 4, distance: 20 m"]),
    ("back squat (paused) 5x5 @ 100kg", ["exercise: back squat (paused), sets: 5x5, load: 100kg"]),
    (
        "back squat 4x6@75 %",
        [
            "exercise: back squat, sets: 4 sets of 6, load: 75 %",
            "exercise: back squat, sets: 6 sets of 4, load: 75 %",
        ],
    ),
    (
        "bench press 3x5 RPE 7-8",
        [
            "exercise: bench press, sets: 3 sets of 5, rpe: 7-8",
            "exercise: bench press, sets: 5 sets of 3, rpe: 7-8",
        ],
    ),
]


@pytest.mark.parametrize(("words", "meant"), PAPER)
def test_a_line_as_on_paper_is_told_apart(asked, words, meant):
    content = text(words)
    (found,) = asked(content)
    assert [edit.words for edit in found.edits] == ["{" + one + "}" for one in meant]
    assert [asked(mended(content, edit)) for edit in found.edits] == [[]] * len(meant)


@pytest.mark.parametrize(("words", "meant"), [(words, meant) for words, meant in PAPER if "," not in words])
@pytest.mark.parametrize("block", [True, False])
def test_what_stands_in_a_name_is_told_apart(asked, words, meant, block):
    content = text(f"exercise: {words}  # as she likes it" if block else f"{{exercise: {words}}}")
    (found,) = asked(content)
    assert found.rule == "dose-in-name"
    assert len(found.edits) == len(meant)
    for edit, keys in zip(found.edits, meant, strict=True):
        plain = mended(content, edit)
        assert asked(plain) == []
        first, *others = keys.split(", ")
        written = f"{first}  # as she likes it\n        " + "\n        ".join(others) if block else keys
        assert written in plain


def test_a_name_is_let_be_where_not_all_behind_it_can_be_read(asked):
    for name in (
        "KB swing 2 x 24 kg",
        "1 1/4 squat",
        "back squat 4x6 as she likes it",
        "plank (2x10 s holds)",
    ):
        assert asked(line(f"{name}, sets: 3, reps: 8")) == []


def test_sets_in_a_name_beside_sets(asked):
    (found,) = asked(line("back squat 4x6, sets: 3, reps: 8"))
    assert (found.rule, found.edits) == ("dose-in-name", ())


def test_values_without_their_keys_behind_a_name(asked):
    content = line("leg curl, 3x12, RIR 2")
    (found,) = asked(content)
    assert found.edits[0].words == "leg curl, sets: 3x12, rir: 2"
    assert asked(mended(content, found.edits[0])) == []
    (found,) = asked(line("leg curl, slowly, sets: 3, reps: 8"))
    assert found.edits[0].words == "'leg curl, slowly'"


@pytest.mark.parametrize(
    ("weeks", "words", "edits"), [(6, "4", ["[4]"]), (8, "4", ["[4]", "[4, 8]"]), (5, "3", ["[3]"])]
)
def test_weeks_of_a_deload_are_asked_about_only_where_it_makes_a_difference(asked, weeks, words, edits):
    content = line("back squat, sets: 3, reps: 8, rir: 2").replace(
        "weeks: 4", f"weeks: {weeks}\ndeload: {words}"
    )
    (found,) = asked(content)
    assert [edit.words for edit in found.edits] == edits
    assert asked(mended(content, found.edits[-1])) == []


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("5 kg vest", ("5 kg", "note: vest")),
        ("weighted vest 7.5 kg", ("7.5 kg", "note: weighted vest")),
        ("10 kg in a rucksack", ("10 kg", "note: rucksack")),
        ("20 kg sandbag", ("20 kg", "note: sandbag")),
    ],
)
def test_a_load_with_its_kit_is_a_load_and_a_note(said, meant, asked):
    (found,) = asked(line(f"step-up, sets: 3, reps: 8, rir: 2, load: {said}"))
    assert found.change == f"Write `{meant[0]}` and `{meant[1]}`."
    assert found.edits[0].words == f"{meant[0]}, {meant[1]}"


@pytest.mark.parametrize("said", ["60 kg less", "not 60 kg", "10 kg dumbbells"])
def test_a_load_that_means_something_else_is_not_taken_apart(said, asked):
    (found,) = asked(line(f"step-up, sets: 3, reps: 8, rir: 2, load: {said}"))
    assert found.change.startswith("Write it like")
    assert not found.edits


def test_one_known_word_among_others_is_offered(asked):
    for said, meant in (("Tue evening", "tuesday"), ("late on fridays", "friday")):
        content = line("back squat, sets: 3, reps: 8, rir: 2").replace("day: monday", f"day: {said}")
        (found,) = asked(content)
        assert [edit.words for edit in found.edits] == [meant]
        assert found.change == f"Write `{meant}`."
    (found,) = asked(line("back squat, sets: 3").replace("day: monday", "day: sunday or monday"))
    assert [edit.words for edit in found.edits] == ["sunday", "monday"]
    (found,) = asked(line("back squat, sets: 3").replace("day: monday", "day: any"))
    assert len(found.edits) == 7
