"""A coach's own demands, ``must hold``: each form kept and not kept, at its edges, and what names nothing."""

from __future__ import annotations

import pytest

from spotline.lint.weighing.person import programme_changes
from spotline.rules.own_demands import asked_of_weeks

RULE = "demand-not-held"

WEEK = """\
sessions:
  - activity: match
    day: sunday 15:00
    kind: impact
  - session: Lower
    day: wednesday 18:00
    kind: [heavy legs]
    exercises:
      - {exercise: back squat, sets: 4, reps: 5, rir: 2}
      - {exercise: leg curl, sets: {1: 3, 2: 5}, reps: 10, rir: 2}
  - session: Upper
    day: [monday 18:00, friday 18:00]
    exercises:
      - {exercise: bench press, sets: 3, reps: 5, rir: 2}
      - {exercise: bent-over row, sets: 2, reps: 8, rir: 2}
      - {exercise: box jump, sets: 2, reps: 5, kind: impact, in weeks: 2}
"""


def text(demand, head="", week=WEEK):
    return f"programme: P\nweeks: 2\n{head}must hold:\n  - {{{demand}}}\n{week}"


def said(found):
    return [(one.counted, one.wanted, one.weeks) for one in found]


@pytest.mark.parametrize(
    ("demand", "counted", "weeks"),
    [
        ("weekly sets of: hamstrings, at least: 4", "3 sets a week of hamstrings.", (1,)),
        ("weekly sets of: hamstrings, at least: 3", "", ()),
        ("weekly sets of: hamstrings, at most: 4", "5 sets a week of hamstrings.", (2,)),
        ("weekly sets of: leg curl, at most: 4", "5 sets a week of leg curl.", (2,)),
        ("weekly sets of: knee flexion, at least: 4, in weeks: 2", "", ()),
        ("weekly sets of: heavy legs, at most: 8", "9 sets a week of heavy legs.", (2,)),
        (
            "weekly sets of: horizontal pull, at least as many as: horizontal push",
            "4 sets a week of horizontal pull, 6 of horizontal push.",
            (1, 2),
        ),
        ("weekly sets of: horizontal push, at least as many as: horizontal pull", "", ()),
        ("days of: knee flexion, at least: 2", "1 day a week with knee flexion.", (1, 2)),
        ("days of: chest, at least: 2", "", ()),
        ("days of: chest, at most: 1", "2 days a week with chest.", (1, 2)),
        ("days of: match, at least: 1", "", ()),
        (
            "hours between: [match, heavy legs], at least: 76",
            "match on Sunday and Lower on Wednesday, 75 h apart.",
            (2,),
        ),
        ("hours between: [match, heavy legs], at least: 75", "", ()),
        (
            "hours between: [heavy legs, match], at least: 76",
            "match on Sunday and Lower on Wednesday, 75 h apart.",
            (2,),
        ),
        ("hours between: Upper, at least: 73", "Upper on Friday and Upper on Monday, 72 h apart.", (2,)),
        ("never two days running: impact", "match on Sunday and Upper on Monday.", (2,)),
        ("never two days running: chest", "", ()),
    ],
)
def test_a_demand_is_counted(demand, counted, weeks, findings):
    found = findings(text(demand), RULE)
    if not counted:
        assert not found
        return
    assert counted in [one.counted for one in found]
    assert {week for one in found for week in one.weeks} == set(weeks)


def test_friday_and_monday_of_two_weeks_are_three_days_apart(findings):
    (first, second) = sorted(
        findings(text("hours between: Upper, at least: 97"), RULE), key=lambda one: one.weeks
    )
    assert "96 h" in first.counted
    assert "72 h" in second.counted


@pytest.mark.parametrize(("least", "is_told"), [(12, False), (13, True)])
def test_hours_between_two_sessions_of_one_day_are_real(least, is_told, findings):
    week = WEEK.replace("day: wednesday 18:00", "day: monday 06:00")
    found = findings(text(f"hours between: [heavy legs, Upper], at least: {least}", week=week), RULE)
    assert bool(found) == is_told
    assert all("Lower on Monday and Upper on Monday, 12 h apart." in one.counted for one in found)


def test_the_coachs_reason_stands_in_the_finding(findings):
    (one,) = findings(
        text("weekly sets of: hamstrings, at least: 4, because: he slid back last spring"), RULE
    )
    assert one.change == "Add sets: he slid back last spring."


@pytest.mark.parametrize(
    "head",
    [
        "phase: test\n",
        "deload: [1, 2]\n",
        "starts: 2026-01-05\nrehabilitation: {stage: slow squats, advised by: physiotherapist, until: 2026-12-01}\n",
    ],
)
def test_nothing_silences_it(head, findings):
    assert findings(text("weekly sets of: hamstrings, at least: 6", head), RULE)


def test_a_line_that_counts_nowhere_holds_nothing(findings):
    week = WEEK.replace("exercise: leg curl", "exercise: lying leg thing")
    assert findings(text("weekly sets of: knee flexion, at least: 3", week=week), RULE)


@pytest.mark.parametrize(
    ("demand", "rule"),
    [
        ("weekly sets of: hamstrigns, at least: 4", "demand-unclear"),
        ("never two days running: impct", "demand-unclear"),
        ("hours between: [match, hevy legs], at least: 4", "demand-unclear"),
        ("weekly sets of: chest, at least as many as: chst", "demand-unclear"),
        ("weekly sets of: hamstrings", "key-missing"),
        ("days of: hamstrings", "key-missing"),
        ("hours between: [match, heavy legs]", "key-missing"),
        ("at least: 4", "key-missing"),
        ("weekly sets of: hamstrings, at least: 8, at most: 4", "keys-at-odds"),
        ("never two days running: impact, at least: 4", "keys-at-odds"),
        ("weekly sets of: hamstrings, days of: hamstrings, at least: 2", "keys-at-odds"),
        ("weekly sets of: hamstrings, at least: some", "value-unreadable"),
        ("weekly sets of: hamstrings, at least: 4, in weeks: 3", "weeks-beyond"),
    ],
)
def test_what_cannot_be_meant_is_one_finding(demand, rule, findings):
    found = [one for one in findings(text(demand)) if one.severity == "error"]
    assert [one.rule for one in found] == [rule]


def test_compare_tells_demands(programme):
    before, after = (programme(text(f"weekly sets of: hamstrings, at least: {least}")) for least in (4, 8))
    (found,) = programme_changes(before, after)
    assert found.words == (
        "must hold: no longer weekly sets of hamstrings: at least 4, now also weekly sets of hamstrings: at least 8"
    )


UNDATED = """\
sessions:
  - {session: One, exercises: [{exercise: bench press, sets: 3}]}
  - {session: Two, exercises: [{exercise: bench press, sets: {1: 0, 2: 3}}]}
"""

DATED = """\
sessions:
  - {session: One, day: monday 18:00, kind: [hills], exercises: [{exercise: plank, sets: 1}]}
  - {session: Two, day: tuesday, kind: [hills], exercises: [{exercise: bench press, sets: 3}]}
  - {session: Three, day: thursday 06:00, exercises: [{exercise: bench press, sets: 3}]}
"""


@pytest.mark.parametrize(
    ("demand", "week", "told"),
    [
        ("weekly sets of: hamstrings, at most: 5", WEEK, []),
        ("days of: chest, at most: 2", WEEK, []),
        ("weekly sets of: horizontal push, at least as many as: chest", WEEK, []),
        # a session without a day is a day of its own, where anything of it is done
        ("days of: chest, at least: 2", UNDATED, [("1 day a week with chest.", (1,))]),
        ("days of: chest, at most: 1", UNDATED, [("2 days a week with chest.", (2,))]),
        # hours count where both are written
        ("hours between: chest, at least: 49, in weeks: 1", DATED, [("Two on Tuesday and Three on Thursday, 48 h apart.", (1,))]),
        ("hours between: chest, at least: 48", DATED, []),
        ("hours between: [One, Three], at least: 61, in weeks: 1", DATED, [("One on Monday and Three on Thursday, 60 h apart.", (1,))]),
        ("hours between: [One, Three], at least: 60", DATED, []),
        ("hours between: [One, Two], at least: 25, in weeks: 2", DATED, [("One on Monday and Two on Tuesday, 24 h apart.", (2,))]),
        # a kind of session, whatever is done in it
        ("never two days running: hills", DATED, [("One on Monday and Two on Tuesday.", (1,)), ("One on Monday and Two on Tuesday.", (2,))]),
        ("never two days running: hills, in weeks: 2", DATED, [("One on Monday and Two on Tuesday.", (2,))]),
        ("days of: hills, at most: 1, in weeks: 1", DATED, [("2 days a week with hills.", (1,))]),
    ],
)  # fmt: skip
def test_a_demand_at_its_edges(demand, week, told, findings):
    found = findings(text(demand, week=week), RULE)
    flat = sorted((one.counted, (number,)) for one in found for number in one.weeks or (1, 2))
    assert flat == sorted((counted, (number,)) for counted, weeks in told for number in weeks)


def test_the_advice_follows_the_form(findings):
    changes = {
        "weekly sets of: hamstrings, at least: 6": "Add",
        "days of: knee flexion, at least: 2": "Add it on another day.",
        "days of: chest, at most: 1": "Take it off a day.",
        "never two days running: impact": "Move one of them.",
    }
    for demand, change in changes.items():
        assert all(one.change.startswith(change) for one in findings(text(demand), RULE)), demand
    (found,) = findings(text("never two days running: impact"), RULE)
    assert found.wanted == "never two days running (`must hold`)"


ROWING = """\
sessions:
  - activity: rowing
    day: [tuesday 18:00, thursday 07:00]
    minutes: 60
    loads: {back: moderate}
  - {session: Pulls, day: wednesday 06:00, exercises: [{exercise: bent-over row, sets: 3, rir: 2}]}
"""


def test_what_an_activity_loads_is_on_its_day_at_its_hour(findings):
    for demand, counted in {
        "days of: back, at least: 4": "3 days a week with back.",
        "days of: rowing, at least: 3": "2 days a week with rowing.",
        "days of: chest, at least: 1": "0 days a week with chest.",
        "hours between: back, at least: 13": "rowing on Tuesday and Pulls on Wednesday, 12 h apart.",
        "hours between: [Pulls, rowing], at least: 26, in weeks: 1": "Pulls on Wednesday and rowing on Thursday, 25 h apart.",
        "hours between: rowing, at least: 38": "rowing on Tuesday and rowing on Thursday, 37 h apart.",
    }.items():
        found = findings(text(demand, week=ROWING), RULE)
        assert counted in [one.counted for one in found], demand


def test_a_word_of_the_coachs_own_is_that_alone(findings):
    """``back`` as a kind of session is what is marked so, and not all that loads the back."""
    week = ROWING.replace("session: Pulls", "session: Pulls, kind: [back]")
    (found,) = findings(text("days of: back, at least: 2", week=week), RULE)
    assert found.counted == "1 day a week with back."


TWICE = """\
sessions:
  - {session: Late, day: monday, kind: [hills], exercises: [{exercise: bench press, sets: 3}]}
  - {session: Early, day: monday, kind: [flats], exercises: [{exercise: back squat, sets: 3}]}
"""


@pytest.mark.parametrize("pair", ["[hills, flats]", "[flats, hills]"])
def test_two_sessions_of_one_day_are_one_finding(pair, findings):
    (found,) = findings(text(f"hours between: {pair}, at least: 1, in weeks: 1", week=TWICE), RULE)
    assert found.counted.endswith("on Monday.")  # nobody knows how many hours apart
    assert found.wanted == "at least 1 h (`must hold`)"


def test_the_hours_of_a_day_are_gone_through_in_order(findings):
    week = TWICE.replace("day: monday, kind: [hills]", "day: monday 20:00, kind: [hills]").replace(
        "day: monday, kind: [flats]", "day: monday 06:00, kind: [hills]"
    )
    week += (
        "  - {session: Next, day: tuesday 05:00, kind: [hills], exercises: [{exercise: plank, sets: 3}]}\n"
    )
    found = findings(text("hours between: hills, at least: 15, in weeks: 1", week=week), RULE)
    assert [one.counted for one in found] == [
        "Early on Monday and Late on Monday, 14 h apart.",
        "Late on Monday and Next on Tuesday, 9 h apart.",
    ]


def test_an_easy_session_without_a_day_is_a_day_of_it(findings):
    week = "sessions:\n  - {session: One, exercises: [{exercise: bench press, sets: 3, rir: 6}]}\n"
    assert findings(text("days of: chest, at least: 1", week=week), RULE) == []


def test_sets_are_hard_ones_but_of_what_is_never_hard(findings):
    week = (
        "sessions:\n  - {session: One, exercises: [{exercise: bench press, sets: 3, rir: 6},"
        " {exercise: box jump, sets: 4}, {exercise: back squat, sets: 5, rir: 6, kind: mixed},"
        " {exercise: pogo jump, sets: 2, kind: mixed}]}\n"
    )
    for subject, sets in {"chest": 0, "bench press": 0, "box jump": 4, "mixed": 0}.items():
        (found,) = findings(text(f"weekly sets of: {subject}, at least: 20", week=week), RULE)
        assert found.counted == f"{sets} sets a week of {subject}."


def test_a_demand_that_is_unclear_is_not_judged(findings):
    """Nor is the half of it that is clear, whatever nobody knows stands in the file."""
    week = "sessions:\n  - {session: One, exercises: [{exercise: lying thing, sets: 9, rir: 1}]}\n"
    for demand in (
        "weekly sets of: chest, at least as many as: chst",
        "weekly sets of: chst, at least as many as: back",
    ):
        found = findings(text(demand, week=week))
        assert [one.rule for one in found if one.rule.startswith("demand")] == ["demand-unclear"]


GONE = """\
sessions:
  - {session: One, in weeks: 1, exercises: [{exercise: bench press, sets: 3}]}
"""


def test_where_a_demand_is_told(findings):
    """At the lines that count, else at the first session of the week, else at the demand itself."""
    demand = "weekly sets of: {}, at {}, in weeks: {}"
    (found,) = findings(
        text("weekly sets of: hamstrings, at least as many as: chest, in weeks: 1", week=GONE), RULE
    )
    assert [one.words for one in found.related] != ["asked here"]  # the lines of the chest
    assert found.where == "One"
    for what, bound, weeks, place, where in (
        ("chest", "least: 4", 1, "bench press", "One"),
        ("hamstrings", "least: 4", 1, "One", "One"),
        ("hamstrings", "least: 4", 2, "hamstrings, at least: 4", ""),
    ):
        (found,) = findings(text(demand.format(what, bound, weeks), week=GONE), RULE)
        line = found.place.text.content[found.place.start :].partition("\n")[0]
        assert place in line, (what, line)
        assert found.where == where


BY_WEEK = """\
sessions:
  - {session: One, day: monday, exercises: [{exercise: bench press, sets: {1: 3, 2: 4, 3: 2}}]}
  - {session: Two, day: wednesday, in weeks: [2, 3], exercises: [{exercise: bent-over row, sets: 3}]}
  - {session: Three, day: friday, in weeks: 2, exercises: [{exercise: bent-over row, sets: 3}]}
"""


@pytest.mark.parametrize(
    ("demand", "worst"),
    [
        ("weekly sets of: chest, at least: 5", "2 sets a week of chest."),
        ("weekly sets of: chest, at most: 1", "4 sets a week of chest."),
        ("weekly sets of: horizontal push, at least as many as: horizontal pull", "4 sets a week of horizontal push, 6 of horizontal pull."),
        ("days of: back, at least: 3", "0 days a week with back."),
        ("days of: back, at most: 0", "2 days a week with back."),
    ],
)  # fmt: skip
def test_of_several_weeks_the_worst_is_told(demand, worst, findings):
    week = BY_WEEK.replace("in weeks: [2, 3]", "in weeks: 2-3")
    (found,) = findings(text(demand, week=week).replace("weeks: 2", "weeks: 3", 1), RULE)
    assert found.counted == worst


def test_names_that_are_near_are_offered_at_most_two(findings):
    week = TWICE.replace("[flats]", "[hill, hillz]")
    for word, change, offered in (
        ("chst", "Did you mean chest?", 1),
        ("hils", "Did you mean hills or hips?", 2),
        ("xylophone", "Write one of these, or give lines or sessions this `kind`.", 0),
    ):
        (found,) = findings(text(f"weekly sets of: {word}, at least: 2", week=week), "demand-unclear")
        assert (found.change, len(found.edits)) == (change, offered)
        assert not any(edit.certain for edit in found.edits)


@pytest.mark.parametrize(
    ("demand", "where"),
    [
        ("weekly sets of: hamstrings, at least: 4, in weeks: 1", "Lower"),
        ("weekly sets of: horizontal pull, at least as many as: horizontal push, in weeks: 1", "Upper"),
        ("weekly sets of: calves, at least: 4, in weeks: 1", "Upper"),
        ("days of: knee flexion, at least: 3, in weeks: 1", "Lower"),
        ("days of: chest, at most: 1, in weeks: 1", "Upper"),
    ],
)
def test_in_which_session_it_is_not_held(demand, where, findings):
    (one,) = findings(text(demand), RULE)
    assert one.where == where


@pytest.mark.parametrize(
    ("about", "brings"),
    [
        ("heavy legs", (0, 0)),
        ("knee flexion", (1, 0)),
        ("hip hinge", (0, 1)),
        ("hamstrings", (1, 1)),
        ("gluteals", (0, 1)),
        ("leg curl", (1, 0)),
    ],
)
def test_what_a_set_of_an_exercise_brings_to_it(about, brings, programme):
    ledger = programme(text(f"weekly sets of: {about}, at least: 1"))
    ((_, _, (subject,), _),) = asked_of_weeks(ledger)
    exercises = [ledger.header.known.exercise(name) for name in ("leg curl", "Romanian deadlift")]
    assert tuple(map(subject.weight, exercises)) == brings


def test_a_kind_that_is_called_like_a_movement_is_given_to_lines_alone(programme):
    week = WEEK.replace("heavy legs", "knee flexion")
    ledger = programme(text("weekly sets of: knee flexion, at least: 1", week=week))
    ((_, _, (subject,), _),) = asked_of_weeks(ledger)
    assert subject.weight(ledger.header.known.exercise("leg curl")) == 0
