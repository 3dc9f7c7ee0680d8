"""What is said of some weeks, some athletes, or of nothing at all: method, words, days, sessions, equipment."""

from __future__ import annotations

import pytest

SQUAD = "athletes: [{{name: Sanne}}, {{athlete: {{name: Tobi}}, adjust: [{adjust}]}}]\n"
TWO = """\
  - {{session: A, day: monday, exercises: [{{exercise: back squat, sets: 3, reps: 5, {line}}}]}}
  - {{session: B, day: thursday, exercises: [{{exercise: bench press, sets: 3, reps: 5, load: 60 kg}}]}}
"""


def text(line="load: 80 %", head="athlete: {name: Sanne}\n", weeks=4):
    return f"programme: P\n{head}weeks: {weeks}\nsessions:\n" + TWO.format(line=line)


@pytest.fixture
def ledgers(reviewed):
    """The ledger of each athlete, of a text in which everything is read."""

    def run(content):
        (one,) = reviewed(content).files
        assert [each.counted for each in one.findings if not each.why] == []
        return one.ledgers

    return run


@pytest.fixture
def told(findings):
    return lambda content: [one for one in findings(content) if not one.why]


def of_squat(ledger, key):
    """A value of the squat in each week, as it is written; None in a week without it."""
    found = []
    for week in ledger.weeks:
        for visit in week.visits:
            for group in visit.own:
                if group.name == "back squat":
                    part = getattr(group.work, key)
                    found.append(None if part is None else getattr(part, "words", None) or str(part))
    return found


def of_line(ledger, key):
    return [
        getattr(group.prescription, key)
        for week in ledger.weeks
        for visit in week.visits
        for group in visit.own
        if group.name == "back squat"
    ]


@pytest.mark.parametrize(
    ("line", "key", "values"),
    [
        ("method: {4: drop set}", "method", ["", "", "", "drop set"]),
        ("method: {2-3: rest-pause, other: none}", "method", ["", "rest-pause", "rest-pause", ""]),
        ("method: {1: cluster, 2-4: contrast}", "method", ["cluster", "contrast", "contrast", "contrast"]),
        ("note: {4: to the bench}", "note", ["", "", "", "to the bench"]),
        ("cue: {1: slow, other: none}", "cue", ["slow", "", "", ""]),
        ("stop when: {2+4: the bar slows}", "stop_when", ["", "the bar slows", "", "the bar slows"]),
    ],
)
def test_words_and_method_are_said_of_some_weeks_alone(line, key, values, ledgers):
    (ledger,) = ledgers(text(f"load: 80 %, {line}"))
    assert of_line(ledger, key) == values


@pytest.mark.parametrize("line", ["rest: {4: 3 min}", "rir: {1-2: 3}", "warm-up sets: {2: 1}"])
def test_what_is_counted_needs_a_value_in_every_week(line, told):
    (one,) = told(text(line))
    assert one.rule == "weeks-left-out"
    assert ("other: none" in one.change) == ("warm-up" not in line)


@pytest.mark.parametrize(
    ("sets", "values"),
    [
        ("{4: half, other: 4}", ["4", "4", "4", "2"]),
        ("{2: half, 4: 1, other: 3}", ["3", "2", "3", "1"]),
        ("{other: 6, 3: x 0.5}", ["6", "6", "3", "6"]),
        ("{4: -1, other: 3}", ["3", "3", "3", "2"]),
        ("{2: +1, other: 3}", ["3", "4", "3", "3"]),
        ("{2: -2 sets, other: 3}", ["3", "1", "3", "3"]),
        ("{3: half, 4: half, other: 4}", ["4", "4", "2", "2"]),  # each of what the coach stated last
        ("{2: half, 3: 6, 4: half, other: 4}", ["4", "2", "6", "3"]),
        ("{3-4: -1, 2: half, other: 4}", ["4", "2", "3", "3"]),
    ],
)
def test_a_part_of_the_sets_is_one_of_those_before_it_wherever_they_stand(sets, values, ledgers):
    content = text().replace("sets: 3", f"sets: {sets}", 1)
    (ledger,) = ledgers(content)
    assert of_squat(ledger, "sets") == values


@pytest.mark.parametrize(
    ("sets", "said"),
    [
        ("{1: half, other: 4}", "`sets: half` has no weeks before it to be a part of."),
        ("{1: -1, other: 4}", "`sets: -1` has no weeks before it to be a part of."),
        ("{2: -4, other: 4}", "`sets: -4` comes to none."),
        ("+3", "`sets: +3` has no weeks before it to be a part of."),
    ],
)
def test_a_part_of_nothing_is_told(sets, said, told):
    (one,) = told(text().replace("sets: 3", f"sets: {sets}", 1))
    assert (one.rule, one.counted, one.change) == ("value-unreadable", said, "Write the number of sets.")


def test_a_number_with_a_plus_is_added_to_what_stood_before(ledgers):
    (ledger,) = ledgers(text().replace("reps: 5", "reps: {3: +2, other: 5}", 1))
    slices = sorted(of_line(ledger, "groups")[0][0]["reps"], key=lambda one: one.first)
    assert [str(one.value.a_set()) for one in slices] == ["5", "5", "7", "5"]


@pytest.mark.parametrize(("key", "value"), [("load", "80 %"), ("rir", "2"), ("rest", "2 min")])
def test_none_for_an_athlete_is_no_value_for_them(key, value, ledgers):
    head = "athletes: [{name: Sanne}, {name: Tobi}]\n"
    sanne, tobi = ledgers(text(f"{key}: {{Sanne: {value}, Tobi: none}}", head))
    assert set(of_squat(tobi, key)) == {None}
    assert None not in of_squat(sanne, key)


@pytest.mark.parametrize(
    "adjust",
    [
        "{exercise: back squat, load: none, rpe: 6}",
        "{exercise: back squat, load: none}",
        "{session: A, load: none}",
        "{load: none}",
    ],
)
def test_none_in_an_adjustment_takes_the_load_out(adjust, ledgers):
    sanne, tobi = ledgers(text(head=SQUAD.format(adjust=adjust)))
    assert of_squat(sanne, "load") == ["80 %"] * 4
    assert of_squat(tobi, "load") == [None] * 4


def test_none_for_all_lines_takes_the_load_out_in_that_week(ledgers):
    (ledger,) = ledgers(text(head="athlete: {name: Sanne}\neverything: {3: {load: none, rpe: 6}}\n"))
    assert of_squat(ledger, "load") == ["80 %", "80 %", None, "80 %"]
    assert of_squat(ledger, "rpe")[2] == "6"


@pytest.mark.parametrize(
    ("adjust", "weeks"),
    [
        ("{session: A, in weeks: 2, leave out: true}", {1, 3, 4}),
        ("{in weeks: 2-3, leave out: true}", {1, 4}),
        ("{session: A, leave out: true}", set()),
        ("{session: B, in weeks: 2, leave out: true}", {1, 2, 3, 4}),
    ],
)
def test_an_athlete_leaves_a_session_out(adjust, weeks, ledgers):
    sanne, tobi = ledgers(text(head=SQUAD.format(adjust=adjust)))
    assert len(of_squat(sanne, "sets")) == 4
    held = {
        week.number
        for week in tobi.weeks
        for visit in week.visits
        for group in visit.own
        if group.name == "back squat"
    }
    assert held == weeks


def test_a_session_left_out_is_no_empty_one(findings):
    head = SQUAD.format(adjust="{session: A, in weeks: 2, leave out: true}")
    assert [one.rule for one in findings(text(head=head)) if "empty" in one.rule] == []


@pytest.mark.parametrize(
    "more", ["leave out: true, in weeks: 2", "sets: 2", "exercise: back squat, load: 40 %"]
)
def test_a_session_that_is_not_there_is_told(more, told):
    (one,) = told(text(head=SQUAD.format(adjust=f"{{session: Lower A, {more}}}")))
    assert one.counted == "`Lower A` is no session of this programme, so nothing is adjusted."
    assert one.change.endswith(("A?", "A and B."))
    assert told(text(head=SQUAD.format(adjust=f"{{session: a, {more}}}"))) == []


@pytest.mark.parametrize(
    ("adjust", "counted"),
    [
        ("{leave out: true}", "`leave out` stands without `exercise`, `session` or `in weeks`."),
        ("{swap: leg press}", "`swap` stands without `exercise`."),
        ("{session: A, swap: leg press}", "`swap` stands without `exercise`."),
    ],
)
def test_what_an_adjustment_is_about_must_be_said(adjust, counted, told):
    (one,) = told(text(head=SQUAD.format(adjust=adjust)))
    assert one.counted == counted
    assert one.change.endswith("beside it, or take it out.")


@pytest.mark.parametrize("written", ["none", "nothing", "No equipment", "bodyweight only", "[]", "[none]"])
def test_nothing_there_is_known(written, reviewed):
    head = f"athlete: {{name: Sanne, equipment: {written}, places: {{hut: {written}}}}}\n"
    (one,) = reviewed(text(head=head)).files
    athlete = one.ledgers[0].athlete
    assert [term.words for term in (*athlete.equipment, *athlete.kits[0].terms)] == ["none", "none"]
    assert "equipment-missing" in {each.rule for each in one.findings}


def test_no_line_on_equipment_is_not_known(reviewed):
    (one,) = reviewed(text()).files
    assert one.ledgers[0].athlete.equipment == ()


@pytest.mark.parametrize("word", ["off", "none"])
def test_a_week_without_the_session(word, ledgers):
    (ledger,) = ledgers(text().replace("day: monday", f"day: {{2: {word}, other: monday}}"))
    assert len(of_squat(ledger, "sets")) == 3


def test_a_session_has_its_minutes_in_some_weeks(ledgers):
    content = text().replace("day: monday", "day: monday, minutes: {4: 15, other: none}")
    (ledger,) = ledgers(content)
    session = ledger.weeks[0].visits[0].session
    assert [str(session.lasts(week)) for week in range(1, 5)] == ["None", "None", "None", "15"]


def test_a_name_that_begins_with_a_sign_is_a_name(findings):
    for name in ("-squat", "+squat of ours"):
        content = f'programme: T\nsessions: [{{session: A, exercises: [{{exercise: "{name}", sets: 3}}]}}]\n'
        assert name in "".join(one.counted for one in findings(content))
