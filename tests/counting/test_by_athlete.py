"""Values by athlete; values that `everything` gives in weeks that a line leaves out; weeks with none."""

from __future__ import annotations

import pytest

SQUAD = "athletes: [{name: Sanne}, {name: Tobi}, {name: Åse}]\n"


def text(line, head=SQUAD, weeks=4):
    return (
        f"programme: P\n{head}weeks: {weeks}\nsessions:\n  - session: A\n    exercises:\n      - {{{line}}}\n"
    )


def held(ledger, key="load"):
    """A value in each week."""
    found = []
    for week in ledger.weeks:
        group = week.visits[0].own[0]
        part = getattr(group.work, key)
        found.append(None if part is None else getattr(part, "words", None) or str(part))
    return found


@pytest.fixture
def ledgers(reviewed):
    """The ledger of each athlete."""

    def run(content):
        (one,) = reviewed(content).files
        return one.ledgers

    return run


@pytest.fixture
def told(findings):
    def run(content):
        return [one for one in findings(content) if not one.why]

    return run


@pytest.mark.parametrize(
    ("line", "key", "values"),
    [
        ("exercise: goblet squat, sets: 3, reps: 8, load: {Sanne: 16 kg, Tobi: 24 kg, Åse: 12 kg}", "load", ["16 kg", "24 kg", "12 kg"]),
        ("exercise: goblet squat, sets: 3, reps: 8, load: {sanne: 16 kg, other: 24 kg}", "load", ["16 kg", "24 kg", "24 kg"]),
        ("exercise: back squat, sets: {Tobi: 4, other: 3}, reps: 8", "sets", ["3", "4", "3"]),
        ("exercise: {Åse: leg press, other: back squat}, sets: 3, reps: 8", "exercise", ["back squat", "back squat", "leg press"]),
        ("exercise: split squat, sets: 3, reps: {Sanne: 8/side, Tobi: 10, Åse: 12}", "side", ["each", None, None]),
    ],
)  # fmt: skip
def test_each_athlete_has_their_own_value(line, key, values, ledgers, told):
    assert [held(ledger, key)[0] or None for ledger in ledgers(text(line))] == values
    assert told(text(line)) == []


@pytest.mark.parametrize(
    ("load", "rule", "excerpt"),
    [
        ("{Sanne: 16 kg, Tobi: 24 kg}", "athletes-left-out", "{Sanne: 16 kg, Tobi: 24 kg}"),
        ("{Sane: 16 kg, other: 24 kg}", "athlete-unknown", "Sane"),
        ("{Sanne: 16 kg, 1-4: 24 kg}", "keys-at-odds", "1-4"),
        ("{Sanne: a lot, other: 24 kg}", "value-unreadable", "a lot"),
        ("{Sanne: {1-2: 16 kg, 3-4: 20 kg}, other: 24 kg}", "value-wrong-kind", "{1-2: 16 kg, 3-4: 20 kg}"),
    ],
)
def test_edges_are_one_finding_each(load, rule, excerpt, told):
    (found,) = told(text(f"exercise: goblet squat, sets: 3, reps: 8, load: {load}"))
    assert (found.rule, found.place.excerpt) == (rule, excerpt)
    assert found.change


# What everything gives


@pytest.mark.parametrize(
    ("line", "everything", "key", "values"),
    [
        ("rir: {3: 1-2}", "{1-2+4: {rir: 3}}", "rir", ["3", "3", "1-2", "3"]),
        ("rir: {3: 1-2}", "{other: {rir: 3}}", "rir", ["3", "3", "1-2", "3"]),
        ("rpe: {1: 6, 4: 7}", "{2-3: {rpe: 8}}", "rpe", ["6", "8", "8", "7"]),
        ("rest: {4: 2 min}", "{1-4: {rest: 60 s}}", "rest", ["60", "60", "60", "120"]),
        ("rir: {3-4: 1}", "{1-2: {rir: 3}}", "rir", ["3", "3", "1", "1"]),
    ],
)
def test_a_week_may_be_left_to_what_holds_for_all_lines(line, everything, key, values, programme, told):
    content = text(f"exercise: back squat, sets: 3, reps: 5, {line}", f"everything: {everything}\n")
    assert held(programme(content), key) == values
    assert told(content) == []


def test_sets_may_be_left_to_it_as_well(programme, told):
    content = text("exercise: back squat, sets: {3: 5}, reps: 5", "everything: {other: {sets: 3}}\n")
    assert held(programme(content), "sets") == ["3", "3", "5", "3"]
    assert told(content) == []


def test_in_a_block_its_own_weeks_and_those_of_the_programme_count(programme, told):
    block = "  - block: {}\n    weeks: 2\n{}    sessions: [{{session: A, exercises: [{{exercise: back squat, sets: 3, rir: {{2: 1}}}}]}}]\n"
    content = "programme: P\neverything: {1: {rir: 4}}\nblocks:\n" + block.format("one", "") + block.format("two", "    everything: {1: {rir: 3}}\n")  # fmt: skip
    assert held(programme(content), "rir") == ["4", "1", "3", "1"]
    assert told(content) == []


@pytest.mark.parametrize("everything", ["{1: {rir: 3}}", "{1-2+4: {rir: +1}}", "{1-2+4: {rpe: 8}}"])
def test_what_is_not_given_is_left_out(everything, told):
    content = text("exercise: back squat, sets: 3, reps: 5, rir: {3: 1-2}", f"everything: {everything}\n")
    assert "weeks-left-out" in [one.rule for one in told(content)]


# None in a week, and a part of what was


@pytest.mark.parametrize(
    ("line", "key", "values"),
    [
        ("tempo: {4: 3-0-1-0, other: none}", "tempo", [None, None, None, "(3.0, 0.0, 1.0, 0.0)"]),
        ("load: {1-3: none, 4: 60 kg}", "load", [None, None, None, "60 kg"]),
        ("sets: {1-3: 4, 4: half}", "sets", ["4", "4", "4", "2"]),
        ("sets: {1-3: 3, 4: x 2/3}", "sets", ["3", "3", "3", "2"]),
    ],
)
def test_a_week_may_have_none_or_a_part(line, key, values, programme, told):
    sets = "" if line.startswith("sets") else "sets: 3, "
    content = text(f"exercise: back squat, {sets}reps: 5, {line}", "")
    assert held(programme(content), key) == values
    assert told(content) == []


@pytest.mark.parametrize(
    ("line", "rule", "excerpt"),
    [
        ("sets: {1: half, 2-4: 3}, reps: 5", "value-unreadable", "half"),
        ("sets: {1-3: none, 4: 3}, reps: 5", "value-unreadable", "none"),
        ("sets: 3, tempo: {4: 3-0-1-0}", "weeks-left-out", "{4: 3-0-1-0}"),
    ],
)
def test_where_there_can_be_none(line, rule, excerpt, told):
    (found,) = told(text(f"exercise: back squat, {line}", ""))
    assert (found.rule, found.place.excerpt) == (rule, excerpt)


def test_weeks_left_out_of_what_may_be_none_say_so(told):
    (found,) = told(text("exercise: back squat, sets: 3, rir: {4: 2}", ""))
    assert found.change == "Add the missing weeks, or `other: none` for them."


@pytest.mark.parametrize("sign", ["-10 %", "-12 %"])
def test_a_back_off_in_some_weeks_is_from_the_top_set_of_each(sign, programme, told):
    work = f"work: [{{sets: 1, reps: 3, rpe: 8}}, {{sets: 3, reps: 4, load: {{1-2: {sign}, 4: -8 %}}}}]"
    content = text(f"exercise: back squat, in weeks: 1-2+4, {work}", "")
    shares = [
        week.visits[0].own[1].work.load.words for week in programme(content).weeks if week.visits[0].own
    ]
    whole = 100 + int(sign.split()[0])
    assert shares == [f"{whole} % of top set"] * 2 + ["92 % of top set"]
    assert told(content) == []


# Dates


@pytest.mark.parametrize("day", ["sat 2027-03-20", "Saturday, 2027-03-20", "Sat. 2027-03-20"])
def test_a_weekday_may_stand_before_a_date(day, programme, told):
    content = text(
        "exercise: back squat, sets: 3", f"starts: 2027-03-01\nevents: [{{date: '{day}', event: meet}}]\n"
    )
    assert str(programme(content).programme.events[0].date) == "2027-03-20"
    assert told(content) == []


@pytest.mark.parametrize(
    ("day", "edits"),
    [
        ("sun 2027-03-20", ["saturday 2027-03-20", "sunday 2027-03-21"]),
        ("friday 2027-03-20", ["saturday 2027-03-20", "friday 2027-03-19"]),
        ("sat 2027-02-31", []),
    ],
)
def test_another_weekday_is_one_finding(day, edits, told):
    (found,) = told(text("exercise: back squat, sets: 3", f"events: [{{date: {day}, event: meet}}]\n"))
    assert (found.rule, found.place.excerpt) == ("date-impossible", day)
    assert [edit.words for edit in found.edits] == edits
