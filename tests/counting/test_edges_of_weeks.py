"""Weeks at their edges: what they mean to build, what they lead up to, turns, days, and what is judged with them."""

from __future__ import annotations

from datetime import date

import pytest

from spotline.lint.counting.ledger import Ledger, Lifter
from spotline.lint.counting.week import muscles_of
from spotline.lint.model.quantities import Range

PLANK = "plank, sets: 2"


@pytest.fixture(scope="module")
def weeks(programme, week):
    """The weeks of a programme with the same session in each."""

    def run(head="", lines=(PLANK,)):
        return programme(week({"Gym": [*lines]}, head)).weeks

    return run


@pytest.fixture(scope="module")
def blocks(programme):
    """A programme of blocks: the weeks of each, further keys, and its lines."""

    def run(*rows, head=""):
        text = "".join(
            f"  - name: B{number}\n    weeks: {several}\n"
            + "".join(f"    {key}\n" for key in keys)
            + "    sessions:\n      - session: Gym\n        exercises:\n"
            + "".join(f"          - {{exercise: {line}}}\n" for line in lines or (PLANK,))
            for number, (several, keys, lines) in enumerate(rows)
        )
        return programme(f"programme: T\n{head}blocks:\n{text}")

    return run


# What a week is about


@pytest.mark.parametrize(
    ("head", "area", "means", "names", "builds"),
    [
        ("", "hamstrings", True, False, True),
        ("goal: hypertrophy", "hamstrings", True, False, True),
        ("goal: strength", "hamstrings", True, False, False),  # no part for its own sake
        ("goal: strength\nfocus: [legs]", "hamstrings", True, True, True),
        ("goal: strength\nfocus: [legs]", "chest", False, False, False),
        ("goal: strength\npriority: [hamstrings]", "hamstrings", True, True, True),
        (
            "goal: strength\npriority: [legs]",
            "hamstrings",
            True,
            False,
            False,
        ),  # a region comes first, no part
        ("goal: hypertrophy\npriority: [legs]", "hamstrings", True, False, True),
        ("goal: strength\npriority: [chest]", "hamstrings", True, False, False),
        ("focus: [chest]\npriority: [hamstrings]", "hamstrings", False, True, False),
        ("not trained: [legs]", "hamstrings", False, False, False),
        ("not trained: [legs]", "chest", True, False, True),
        ("not trained: [hamstrings]", "legs", True, False, True),  # only a part of them is left alone
        ("not trained: [legs]\nfocus: [hamstrings]", "hamstrings", False, True, False),
        ("not trained: [chest]\nfocus: [legs]", "hamstrings", True, True, True),
        ("not trained: [chest]\nfocus: [legs]", "triceps", False, False, False),
        ("maintain: [legs]", "hamstrings", True, False, False),
        ("maintain: [hamstrings]", "legs", True, False, True),
        ("maintain: [chest]", "hamstrings", True, False, True),
        # of what nobody knows no part is named or left alone
        ("", "no such area", True, False, True),
        ("not trained: [legs]", "no such area", True, False, True),
        ("focus: [legs]", "no such area", False, False, False),
        ("focus: [no such area, legs]", "hamstrings", True, True, True),
        # a sport says what for: a part must be named, or the goal written
        ("athlete: {name: A, sport: judo}", "hamstrings", True, False, False),
        ("athlete: {name: A, sport: judo}\npriority: [hamstrings]", "hamstrings", True, True, True),
        ("athlete: {name: A, sport: judo}\ngoal: hypertrophy", "hamstrings", True, False, True),
    ],
)
def test_what_is_meant_named_and_built(weeks, head, area, means, names, builds):
    (only,) = weeks(head)
    assert (only.means(area), only.names(area), only.builds(area)) == (means, names, builds)


def test_in_a_peak_only_what_is_in_focus_is_meant(blocks):
    rows = [(1, (), ()), (1, ("phase: taper",), ())]
    plain, peak = blocks(*rows).weeks
    assert (plain.means("hamstrings"), peak.means("hamstrings")) == (True, False)
    alone, left = blocks(*rows, head="not trained: [chest]\n").weeks
    assert (alone.means("hamstrings"), left.means("hamstrings")) == (True, False)
    assert all(one.means("hamstrings") for one in blocks(*rows, head="focus: [legs]\n").weeks)


def test_a_blocks_own_focus_is_named_too(blocks):
    first, second = blocks((1, ("focus: [chest]",), ()), (1, (), ()), head="focus: [legs]\n").weeks
    assert (first.names("chest"), first.names("hamstrings")) == (True, False)
    assert (second.names("chest"), second.names("hamstrings")) == (False, True)


def test_another_goal_may_build_too(weeks):
    (only,) = weeks("goal: strength")
    assert only.builds("hamstrings", ("strength",))
    assert not only.builds("hamstrings", ("hypertrophy",))


def test_the_muscles_of_some_areas(weeks):
    (only,) = weeks("focus: [hamstrings, no such thing]")
    assert "semitendinosus" in muscles_of(only.programme.focus)
    assert muscles_of(()) == set()


# What a week leads up to


@pytest.mark.parametrize(
    ("event", "peaks"),
    [
        ("2026-01-05", [1]),  # its Monday
        ("2026-01-11", [1]),
        ("2026-01-12", [1, 2]),
        ("2026-01-19", [1, 2, 3]),  # 14 days after the first Monday
        ("2026-01-20", [2, 3]),  # 15 days: week 1 begins earlier
        ("2026-02-01", [3, 4]),
        ("2026-02-15", [5]),
    ],
)
def test_weeks_that_begin_within_a_fortnight_lead_up_to_an_event(weeks, event, peaks):
    head = f"starts: 2026-01-05\nweeks: 5\nevents: [{{date: {event}, event: meet}}]"
    assert [one.number for one in weeks(head) if one.is_peak] == peaks


def test_without_a_start_or_a_date_nobody_knows(weeks):
    assert not any(one.is_peak for one in weeks("weeks: 3"))
    head = (
        "starts: 2026-01-05\nweeks: 3\nevents: [{date: 2026-01-12, event: a}, {date: 2026-03-30, event: b}]"
    )
    assert [one.is_peak for one in weeks(head)] == [True, True, False]


def test_to_an_event_whose_date_is_unread_nothing_leads_up(reviewed, week):
    head = "starts: 2026-01-05\nweeks: 2\nevents: [{date: soon, event: a}, {date: 2026-01-05, event: b}]"
    (one,) = reviewed(week({"Gym": [PLANK]}, head)).files
    assert [one.is_peak for one in one.ledger.weeks] == [True, False]


def test_tapers_and_tests_are_peaks_unless_nothing_else_is_left(blocks):
    rows = [(1, ("phase: build",), ()), (1, ("phase: taper",), ()), (1, ("phase: test",), ())]
    assert [one.is_peak for one in blocks(*rows).weeks] == [False, True, True]
    assert [one.is_peak for one in blocks(*rows[1:]).weeks] == [False, False]
    easy = [(1, ("deload: true",), ()), (1, ("phase: taper",), ())]
    assert [one.is_peak for one in blocks(*easy).weeks] == [False, False]
    back = [(2, ("phase: return",), ()), (1, ("phase: taper",), ())]
    ledger = blocks(*back)
    assert [one.is_peak for one in ledger.weeks] == [False, False, True]
    assert [one.first_back for one in ledger.weeks] == [True, False, False]


def test_the_only_week_is_no_first_week_back(blocks):
    assert [one.first_back for one in blocks((1, ("phase: return",), ())).weeks] == [False]
    rows = [(1, ("phase: return",), ()), (1, ("phase: taper",), ())]
    assert [(one.first_back, one.is_peak) for one in blocks(*rows).weeks] == [(True, False), (False, False)]


def test_where_a_week_stands_in_its_block(blocks):
    ledger = blocks((2, (), ()), (3, ("deload: [3]",), ()))
    assert [one.in_block for one in ledger.weeks] == [1, 2, 1, 2, 3]
    assert [one.is_deload for one in ledger.weeks] == [False] * 4 + [True]
    assert [one.number for one in ledger.typical_weeks()] == [1, 2, 3, 4]
    assert ledger.weeks[3].weeks_of_block() == ledger.weeks[2:]


def test_usual_weeks_leave_out_rehabilitation(weeks, programme, week):
    head = "starts: 2026-01-05\nweeks: 3\nrehabilitation: {stage: a, advised by: b, until: 2026-01-11}"
    ledger = programme(week({"Gym": [PLANK]}, head))
    assert [one.number for one in ledger.typical_weeks()] == [2, 3]


# Turns of a rotation


ROTATION = "programme: T\nweeks: {weeks}\nrotation: [{days}]\nsessions:\n"
SESSION = "  - {{session: {name}, exercises: [{{exercise: leg press, sets: {sets}}}]}}\n"


@pytest.mark.parametrize(
    ("several", "days", "weeks", "turns"),
    [
        (1, "monday, thursday", 3, [[1], [2], [3]]),
        (2, "monday, thursday", 3, [[1], [2], [3]]),  # each week holds both
        (3, "monday, thursday", 6, [[1, 2, 3]] * 3 + [[4, 5, 6]] * 3),
        (3, "monday, thursday", 5, [[1, 2, 3]] * 3 + [[3, 4, 5]] * 2),  # made full with the weeks before
        (3, "monday, thursday", 2, [[1, 2]] * 2),  # judged as a whole
        (4, "monday, thursday", 4, [[1, 2], [1, 2], [3, 4], [3, 4]]),
        (2, "monday", 3, [[1, 2], [1, 2], [2, 3]]),
    ],
)
def test_a_full_turn(programme, several, days, weeks, turns):
    sessions = "".join(SESSION.format(name="ABCD"[at], sets=at + 1) for at in range(several))
    ledger = programme(ROTATION.format(weeks=weeks, days=days) + sessions)
    assert [[one.number for one in week.turn().weeks] for week in ledger.weeks] == turns
    for week in ledger.weeks:
        turn = week.turn()
        assert turn.tally.all_sets().high == sum(one.all_sets().high for one in turn.weeks)
        assert turn.a_week(6) == 6 / len(turn.weeks)
        many = len(turn.weeks)
        assert turn.words == (f" in the {many} weeks of a turn" if many > 1 else "")


def test_a_turn_of_one_week_is_that_week(weeks):
    for one in weeks("weeks: 2"):
        assert one.turn().tally is one


def test_a_turn_counts_from_the_first_week_of_its_block(programme):
    sessions = "".join(
        SESSION.format(name="AB"[at], sets=at + 1).replace("  - ", "      - ") for at in range(2)
    )
    blocks = "".join(
        f"  - name: {name}\n    weeks: {weeks}\n    rotation: [monday]\n    sessions:\n{sessions}"
        for name, weeks in (("one", 3), ("two", 2))
    )
    ledger = programme(f"programme: T\nblocks:\n{blocks}")
    turns = [[one.number for one in week.turn().weeks] for week in ledger.weeks]
    assert turns == [[1, 2], [1, 2], [2, 3], [4, 5], [4, 5]]


# Days


def test_days_and_occasions(programme, week):
    days = {"Any": [PLANK], "friday": [PLANK], "monday Late": [PLANK], "monday Early": [PLANK]}
    (only,) = programme(week(days)).weeks
    assert [(visit.day, visit.session.name) for visit in only.visits] == [
        (1, "Late"),
        (1, "Early"),
        (5, "friday"),
        (0, "Any"),
    ]
    assert [day for day, _ in only.by_day()] == [1, 5]
    assert [len(tally.visits) for _, tally in only.days()] == [2, 1]
    assert [len(tally.visits) for tally in only.occasions()] == [2, 1, 1]
    sunday = programme(week({"Any": [PLANK], "sunday": [PLANK]})).weeks[0]
    assert [visit.day for visit in sunday.visits] == [7, 0]


def test_a_week_takes_as_long_as_its_sessions(programme, week):
    line = "plank, sets: 2, hold: 30 s, rest: 60 s"
    (only,) = programme(week({"monday": [line], "friday": [line]})).weeks
    assert (only.time().work.low, only.time().rest.low, only.time().around.low) == (120, 120, 0)


ACTIVITY = "  - {{activity: run, day: [monday, friday], {keys}minutes: 30}}\n"


@pytest.mark.parametrize(
    ("keys", "days"),
    [("", [1, 5, 8, 12, 15, 19]), ("in weeks: 2, ", [8, 12]), ("in weeks: 1+3, ", [1, 5, 15, 19])],
)
def test_activities_in_some_weeks(programme, week, keys, days):
    ledger = programme(week({"Gym": [PLANK]}, "weeks: 3") + ACTIVITY.format(keys=keys))
    assert [day for day, _, _ in ledger.activities()] == days
    held = sorted({(day - 1) // 7 + 1 for day in days})
    assert [one.number for one in ledger.weeks if one.activities] == held


def test_events_in_order_and_without_appointments(programme, week):
    events = "{date: 2026-01-20, event: match}, {date: 2026-01-06, event: meet}, {date: 2026-01-07, event: eye test}"
    head = f"starts: 2026-01-05\nweeks: 3\nevents: [{events}]"
    ledger = programme(week({"Gym": [PLANK]}, head))
    assert [(day, one.name) for day, one in ledger.events()] == [(2, "meet"), (16, "match")]
    undated = programme(week({"Gym": [PLANK]}, f"weeks: 3\nevents: [{events}]"))
    assert undated.events() == []  # nobody knows on which of its days they fall


# Weeks that are alike, and what is judged with one


def test_weeks_of_one_kind_stand_together(programme, week):
    head = "starts: 2026-01-05\nweeks: 4\nrehabilitation: {stage: a, advised by: b, until: 2026-01-11}"
    ledger = programme(week({"Gym": [PLANK]}, head))
    assert [numbers for _, numbers in ledger.like_weeks()] == [(1,), (2, 3, 4)]
    ran = programme(week({"Gym": [PLANK]}, "weeks: 3") + ACTIVITY.format(keys="in weeks: 2, "))
    assert [numbers for _, numbers in ran.like_weeks()] == [(1, 3), (2,)]
    meet = programme(
        week({"Gym": [PLANK]}, "starts: 2026-01-05\nweeks: 5\nevents: [{date: 2026-02-08, event: meet}]")
    )
    assert [numbers for _, numbers in meet.like_weeks()] == [(1, 2, 3), (4, 5)]


def test_of_a_rotation_the_other_weeks_of_the_turn_are_content_too(programme):
    sessions = "".join(
        f"  - {{session: {name}, exercises: [{{exercise: leg press, {sets}}}]}}\n"
        for name, sets in (("A", "sets: 1"), ("B", "sets: {1-3: 1, 4: 5}"))
    )
    ledger = programme(ROTATION.format(weeks=4, days="monday") + sessions)
    # weeks 1 and 3 hold A alone, but in week 4 the B that makes up their turn differs
    assert [numbers for _, numbers in ledger.like_weeks()] == [(1,), (2,), (3,), (4,)]


def test_a_peak_is_judged_with_all_before_it(blocks):
    ledger = blocks((2, (), ()), (1, ("phase: taper",), ()), (2, (), ()))
    judged = [[*ledger.judged_with(one).visits] for one in ledger.weeks]
    assert [len(visits) for visits in judged] == [2, 2, 3, 2, 2]


def test_a_part_of_a_long_block_is_judged_by_itself(blocks):
    lines = (PLANK, "dip, sets: 1, in weeks: 1-4", "leg press, sets: 1, in weeks: 5-9")
    ledger = blocks((9, (), lines))
    assert [len(ledger.judged_with(one).visits) for one in ledger.weeks] == [4] * 4 + [5] * 5
    # a part of three weeks is too short
    short = blocks((7, (), (PLANK, "dip, sets: 1, in weeks: 1-3", "leg press, sets: 1, in weeks: 4-7")))
    assert [len(short.with_same_exercises(one)) for one in short.weeks] == [0] * 3 + [4] * 4
    assert [len(short.judged_with(one).visits) for one in short.weeks] == [7] * 3 + [4] * 4
    # four weeks are no long block
    four = blocks((4, (), (PLANK, "dip, sets: 1, in weeks: 1-2")))
    assert {four.with_same_exercises(one) for one in four.weeks} == {()}


def test_a_part_in_the_middle_of_a_block(blocks):
    ledger = blocks((2, (), ()), (6, (), (PLANK, "dip, sets: 1, in weeks: 2-5")))
    found = [[one.number for one in ledger.with_same_exercises(week)] for week in ledger.weeks]
    assert found == [[], [], [], [4, 5, 6, 7], [4, 5, 6, 7], [4, 5, 6, 7], [4, 5, 6, 7], []]


def test_a_rota_at_either_end(blocks):
    ledger = blocks((1, (), ()), (1, (), ()), (2, (), ()), (1, (), ()))
    assert [len(ledger.of_rota(block).visits) for block in ledger.programme.blocks] == [2, 2, 2, 1]


def test_the_same_visits_give_the_same_tally(programme, week):
    ledger = programme(week({"monday": [PLANK], "friday": [PLANK]}, "weeks: 2"))
    assert ledger.of_weeks(ledger.weeks) is ledger.of_weeks(ledger.weeks)
    visit = ledger.weeks[0].visits[0]
    assert ledger.together((visit,)) is visit
    asked = []

    def work(limit):
        asked.append(limit)
        return limit + 1

    assert [ledger.recall(work, limit) for limit in (3, 3, 4)] == [4, 4, 5]
    assert asked == [3, 4]


def test_what_is_laid_out_anew_without_a_change_keeps_its_tallies(programme, week):
    ledger = programme(week({"monday": [PLANK], "friday": [PLANK]}, "weeks: 2"))
    whole, weeks = ledger.of_weeks(ledger.weeks), ledger.weeks
    ledger.lay_out(ledger.programme)
    assert ledger.weeks == weeks
    assert ledger.of_weeks(ledger.weeks) is whole


def test_programmes_of_an_athlete_stand_by_their_start(programme, week):
    heads = ("starts: 2026-03-02", "", "starts: 2026-01-05")
    plans = [programme(week({"Gym": [PLANK]}, f"athlete: {{name: Ida}}\n{head}".strip())) for head in heads]
    athlete = plans[0].athlete
    assert athlete is not None
    lifter = Lifter(athlete, plans, date(2026, 1, 5))
    assert lifter.plans == [plans[2], plans[0], plans[1]]  # without a start it comes last
    assert lifter.today == date(2026, 1, 5)


def test_what_is_ended_holds_nothing(programme, week):
    ledger: Ledger = programme(week({"Gym": [PLANK]}))
    visit = ledger.visits[0]
    ledger.end()
    assert (ledger.weeks, ledger.visits, visit.visits) == ((), (), ())


# The calendar


def test_a_repeated_week_is_the_same_object(programme, week):
    ledger = programme(week({"Gym": [PLANK]}, "weeks: 3"))
    assert len({visit for one in ledger.weeks for visit in one.visits}) == 1
    assert len({*ledger.weeks}) == 3


def test_hours_of_a_session_come_before_those_of_its_rotation(programme):
    head = "programme: T\nweeks: 2\nrotation: [monday 18:00, thursday 06:30]\nsessions:\n"
    sessions = "".join(SESSION.format(name=name, sets=1) for name in "ABC")
    fixed = "".join(
        f"  - {{session: {name}, day: {day}, exercises: [{{exercise: plank, sets: 1}}]}}\n"
        for name, day in (("D", "tuesday"), ("E", "monday"))
    )
    first, second = programme(head + sessions + fixed).weeks
    assert [(one.session.name, one.day, one.hour) for one in first.visits] == [
        ("E", 1, None),  # it takes no turn: the hour of that Monday is not its own
        ("A", 1, 18),
        ("D", 2, None),
        ("B", 4, 6.5),
    ]
    assert [one.session.name for one in second.visits] == ["E", "C", "D", "A"]  # it runs on


def test_a_visit_lasts_as_long_as_is_written_for_its_week(programme):
    head = "programme: T\nweeks: 2\nsessions:\n"
    lines = "exercises: [{exercise: plank, sets: 1}]"
    text = f"{head}  - {{session: A, minutes: {{1: 60, 2: 45-50}}, {lines}}}\n  - {{session: B, {lines}}}\n"
    held = [[visit.minutes for visit in week.visits] for week in programme(text).weeks]
    assert held == [[Range(60, 60), None], [Range(45, 50), None]]


def test_nothing_takes_turns_in_a_week_without_such_a_session(programme):
    head = "programme: T\nweeks: 2\nrotation: [monday]\nsessions:\n"
    first, second = (
        "  - {session: A, in weeks: 1, exercises: [{exercise: plank, sets: 1}]}\n",
        "  - {session: B, day: friday, exercises: [{exercise: plank, sets: 1}]}\n",
    )
    held = [[one.session.name for one in week.visits] for week in programme(head + first + second).weeks]
    assert held == [["A", "B"], ["B"]]


@pytest.mark.parametrize(
    ("change", "names"),
    [
        ("session: A, leave out: true", [["B"], ["B"], ["B"]]),
        ("session: a, in weeks: 2, leave out: true", [["A", "B"], ["B"], ["A", "B"]]),
        ("in weeks: 3, leave out: true", [["A", "B"], ["A", "B"], []]),
    ],
)
def test_an_athlete_leaves_out_sessions(programme, change, names):
    head = (
        f"programme: T\nweeks: 3\nathletes: [{{athlete: {{name: Ida}}, adjust: [{{{change}}}]}}]\nsessions:\n"
    )
    text = head + SESSION.format(name="A", sets=1) + SESSION.format(name="B", sets=1)
    assert [[one.session.name for one in week.visits] for week in programme(text).weeks] == names


def test_an_exercise_left_out_leaves_its_session(reviewed):
    head = "programme: T\nathletes: [{athlete: {name: Ida}, adjust: [{exercise: dip, load: x 0.9, leave out: true}]}]\n"
    (one,) = reviewed(head + "sessions:\n" + SESSION.format(name="A", sets=1)).files
    assert [visit.session.name for visit in one.ledger.weeks[0].visits] == ["A"]


@pytest.mark.parametrize(
    ("line", "known"),
    [
        ("row, sets: 3, reps: 8", True),
        ("row, sets: 1, hold: 10 min", False),
        ("bent-over row, sets: 3", True),
    ],
)
def test_a_row_without_repetitions_is_work_on_a_machine(programme, week, line, known):
    (group,) = programme(week({"Gym": [line]})).weeks[0].visits[0].own
    assert (group.exercise is not None) is known


def test_an_own_choice_is_no_lift_whatever_its_name(programme):
    line = "{own choice: back squat, minutes: 10}"
    (week,) = programme(f"programme: T\nsessions: [{{session: A, exercises: [{line}]}}]\n").weeks
    (group,) = week.visits[0].own
    assert (group.exercise, group.sets.high, group.reps) == (None, 0, None)


def test_where_nobody_looks_at_values_all_sets_count(programme, week):
    read = programme(week({"Gym": [PLANK]})).programme
    (group,) = Ledger(read, date(2026, 1, 5)).visits[0].own
    assert (group.meant, group.slips, group.sets.high) == (True, None, 2)


def test_a_value_that_cannot_be_meant_counts_nowhere(reviewed, week):
    (one,) = reviewed(week({"Gym": ["back squat, sets: 50, reps: 10", PLANK]})).files
    squat, plank = one.ledger.weeks[0].visits[0].own
    assert (squat.meant, squat.sets.high, squat.reps, squat.is_done) == (False, 0, None, True)
    assert (plank.meant, plank.sets.high, plank.is_done) == (True, 2, True)
    assert one.ledger.weeks[0].all_sets().high == 2
    assert squat in one.ledger.unsure()
