"""Sessions and lines that take place in some weeks, and values for all other weeks."""

from __future__ import annotations

import pytest

HEAD = "programme: P\nweeks: 6\nsessions:\n"


def session(name, *lines, head=""):
    items = "".join(f"      - {{exercise: {line}}}\n" for line in lines)
    return f"  - session: {name}\n    day: monday\n{head}    exercises:\n{items}"


def lines(ledger):
    """The exercises of each week, with their sets."""
    return [
        [f"{group.name} {group.sets}" for visit in week.visits for group in visit.own]
        for week in ledger.weeks
    ]


@pytest.fixture(scope="module")
def asked(findings):
    def run(content):
        return [one for one in findings(content) if not one.why]

    return run


@pytest.mark.parametrize(
    ("written", "weeks"), [("3", [3]), ("3-6", [3, 4, 5, 6]), ("3+5", [3, 5]), ("1–2 + 6", [1, 2, 6])]
)
def test_a_line_is_done_in_its_weeks_only(written, weeks, programme):
    ledger = programme(
        HEAD + session("A", "back squat, sets: 3", f"front squat, sets: 2, in weeks: {written}")
    )
    assert [week for week, held in enumerate(lines(ledger), 1) if "front squat 2" in held] == weeks
    assert all("back squat 3" in held for held in lines(ledger))


def test_its_values_by_week_cover_its_own_weeks(programme, asked):
    content = HEAD + session("A", "back squat, sets: {3-4: 3, 5: 2}, in weeks: 3-5")
    assert [len(held) for held in lines(programme(content))] == [0, 0, 1, 1, 1, 0]
    (found,) = asked(content.replace("{3-4: 3, 5: 2}", "{3: 3, 5: 2}"))
    assert (found.rule, "must cover weeks 3-5" in found.counted) == ("weeks-left-out", True)


@pytest.mark.parametrize(("written", "weeks"), [("2", [2]), ("1-2+5", [1, 2, 5])])
def test_a_session_takes_place_in_its_weeks_only(written, weeks, programme):
    hotel = session("Hotel", "push-up, sets: 3", head=f"    in weeks: {written}\n")
    ledger = programme(HEAD + session("A", "back squat, sets: 3") + hotel)
    names = [[visit.session.name for visit in week.visits] for week in ledger.weeks]
    assert [week for week, held in enumerate(names, 1) if "Hotel" in held] == weeks
    assert all("A" in held for held in names)


def test_a_rotation_runs_through_the_sessions_of_the_week(programme):
    content = (HEAD.replace("sessions:", "rotation: [monday, thursday]\nsessions:") + session("A", "back squat, sets: 3") + session("B", "leg press, sets: 3", head="    in weeks: 4-6\n")).replace("    day: monday\n", "")  # fmt: skip
    names = [[visit.session.name for visit in week.visits] for week in programme(content).weeks]
    assert names == [["A", "A"]] * 3 + [["A", "B"]] * 3


def test_weeks_that_are_not_there(asked):
    (found,) = asked(HEAD + session("A", "back squat, sets: 3", "leg press, sets: 3, in weeks: 5-8"))
    assert (found.rule, found.place.excerpt) == ("weeks-beyond", "5-8")
    (found,) = asked(HEAD + session("A", "leg press, sets: 3, in weeks: 5", head="    in weeks: 1-3\n") + session("B", "back squat, sets: 3"))  # fmt: skip
    assert (found.rule, found.place.excerpt) == ("weeks-beyond", "5")


@pytest.mark.parametrize(
    ("written", "rule", "meant"),
    [
        ("weeks: 6", "two-readings", ["in weeks: 6", "in weeks: 1-6"]),
        ("weeks: 2", "two-readings", ["in weeks: 2", "in weeks: 1-2"]),
        ("weeks: 3-6", "key-unknown", ["in weeks: 3-6"]),
        ("weeks: 3+5", "key-unknown", ["in weeks: 3+5"]),
    ],
)
def test_bare_weeks_are_asked_about(written, rule, meant, asked):
    line = HEAD + session("A", "leg press, sets: 3", f"back squat, sets: 3, {written}")
    whole = (
        HEAD
        + session("A", "back squat, sets: 3")
        + session("B", "leg press, sets: 3", head=f"    {written}\n")
    )
    for content in (line, whole):
        (found,) = asked(content)
        assert (found.rule, [edit.words for edit in found.edits]) == (rule, meant)
        for edit in found.edits:
            assert asked(content[: edit.place.start] + edit.words + content[edit.place.end :]) == []


def test_other_weeks_take_what_no_key_names(programme, asked):
    ledger = programme(HEAD + session("A", "back squat, sets: {4: 2, other: 5}"))
    assert [held[0] for held in lines(ledger)] == ["back squat 5"] * 3 + ["back squat 2"] + [
        "back squat 5"
    ] * 2
    (found,) = asked(HEAD + session("A", "back squat, sets: {1-6: 2, other: 5}"))
    assert (found.rule, found.place.excerpt) == ("weeks-overlap", "5")
    assert asked(HEAD + session("A", "back squat, sets: {other: 5}")) == []
    (found,) = asked(HEAD + session("A", "back squat, sets: 3, in weeks: other"))
    assert found.rule == "value-unreadable"
