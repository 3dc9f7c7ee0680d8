"""Where sessions take place, and the equipment that is there."""

from __future__ import annotations

import pytest

HEAD = """\
programme: P
weeks: 4
athlete:
  name: Ida
  equipment: [barbell, rack, flat bench]
  places:
    hotel: [dumbbells]
    gym: [everything]
"""
SESSIONS = """\
sessions:
  - session: A
    day: monday
    exercises: [{exercise: barbell back squat, sets: 3, reps: 8, rir: 2}]
  - session: B
    day: friday
    exercises: [{exercise: dumbbell goblet squat, sets: 3, reps: 8, rir: 2}]
"""


def text(where="", sessions=SESSIONS, head=HEAD):
    return head + (f"where: {where}\n" if where else "") + sessions


def at(ledger):
    """The place of each session, week by week."""
    return [" ".join(visit.at or "-" for visit in week.visits) for week in ledger.weeks]


@pytest.fixture(scope="module")
def missing(findings):
    """What equipment-missing says: its words and weeks."""

    def run(content, files=None):
        return [
            (one.counted, one.weeks)
            for one in findings(content, files=files)
            if one.rule == "equipment-missing"
        ]

    return run


@pytest.mark.parametrize(
    ("where", "places"),
    [
        ("hotel", ["hotel hotel"] * 4),
        ("{2: hotel}", ["- -", "hotel hotel", "- -", "- -"]),
        ("{2+4: hotel, other: gym}", ["gym gym", "hotel hotel"] * 2),
        ("{mon: gym, fridays: hotel}", ["gym hotel"] * 4),
        ("{friday: hotel, other: gym}", ["gym hotel"] * 4),
    ],
)
def test_by_week_and_by_weekday(where, places, programme):
    assert at(programme(text(where))) == places


def test_a_weekday_counts_from_the_start_day(programme):
    assert at(programme(text("starts", SESSIONS).replace("where: starts", "starts: 2026-01-07\nwhere: {mon: gym}")))[0] == "- gym"  # fmt: skip


def test_a_session_comes_before_its_block_and_that_before_the_programme(programme):
    blocks = "blocks:\n" + "".join(
        f"  - name: {name}\n    weeks: 2\n{head}    sessions:\n"
        "      - {session: A, exercises: [{exercise: back squat, sets: 3}]}\n"
        f"      - {{session: B, {own}exercises: [{{exercise: back squat, sets: 3}}]}}\n"
        for name, head, own in (("one", "    where: {2: gym}\n", ""), ("two", "", "where: {1: gym}, "))
    )
    ledger = programme(text("hotel", blocks))
    assert at(ledger) == ["hotel hotel", "gym gym", "hotel gym", "hotel hotel"]


def test_the_list_of_the_place_counts(missing):
    assert missing(text()) == [("No dumbbell for goblet squat.", ())]
    assert missing(text("{2-3: hotel, other: gym}")) == [("At hotel: no barbell for back squat.", (2, 3))]


def test_places_of_the_settings_and_sets_of_equipment(missing):
    own = HEAD.replace("    hotel: [dumbbells]\n", "")
    settings = {
        "spotline.yaml": "places: {hotel: [bag]}\nequipment: {bag: [dumbbells, mat], shed: [barbell]}\n"
    }
    (said,) = missing(text("hotel", head=own), settings)
    assert said == ("At hotel: no barbell for back squat.", (1, 2, 3, 4))
    (said,) = missing(text("shed", head=own), settings)
    assert said[0].startswith("At shed: no ")


def test_what_is_offered_is_there(findings):
    (found,) = [one for one in findings(text("{2: hotel, other: gym}")) if one.rule == "equipment-missing"]
    assert "Swap back squat for" in found.change
    assert "barbell" not in found.change.split(", or write")[0]
    assert found.change.endswith("under `hotel`.")


@pytest.mark.parametrize(
    ("where", "severity", "said"),
    [
        ("{2: hostel}", "warning", "Did you mean hotel?"),
        ("{2: the moon}", "note", "Write `places: {the moon:"),
    ],
)
def test_a_place_that_no_list_knows(where, severity, said, findings):
    found = [one for one in findings(text(where)) if one.rule == "place-unknown"]
    assert [(one.severity, said in one.change) for one in found] == [(severity, True)]
    assert not any(edit.certain for one in found for edit in one.edits)


def test_a_gym_has_everything(findings):
    assert "place-unknown" not in {one.rule for one in findings(text("{2: club gym}"))}


def test_it_is_a_note_where_no_place_is_listed(findings):
    head = HEAD.replace("  places:\n    hotel: [dumbbells]\n    gym: [everything]\n", "")
    assert [one.severity for one in findings(text("club", head=head)) if one.rule == "place-unknown"] == [
        "note"
    ]


@pytest.mark.parametrize(
    ("where", "rule", "place"),
    [
        ("{5: hotel}", "weeks-beyond", "5"),
        ("{1-3: gym, 3: hotel}", "weeks-overlap", "3"),
        ("{mon: gym, monday: hotel}", "weeks-overlap", "monday"),
        ("{1: gym, monday: hotel}", "weeks-overlap", "monday"),
        ("{0: gym}", "value-unreadable", "0"),
        ("{someday: gym}", "value-unreadable", "someday"),
        ("[gym]", "value-wrong-kind", "[gym]"),
    ],
)
def test_edges_are_one_finding_each(where, rule, place, findings):
    found = [one for one in findings(text(where)) if not one.why]
    assert [(one.rule, one.place.excerpt) for one in found] == [(rule, place)]


def test_an_unknown_piece_of_a_place(findings):
    content = text("hotel").replace("[dumbbells]", "[dumbbells, kettelbells]")
    (found,) = [one for one in findings(content) if one.rule == "equipment-unknown"]
    assert (found.place.excerpt, found.where) == ("kettelbells", "Ida, hotel")


# What there is of a piece

ONE = """\
programme: P
athlete: {name: Ida, equipment: [%s]}
sessions:
  - session: A
    exercises: [{exercise: %s, sets: 3, reps: 8, load: %s}]
"""


@pytest.mark.parametrize(
    ("held", "line", "load", "change"),
    [
        ("dumbbells: {up to: 24 kg, step: 2 kg}", "goblet squat", "24 kg", None),
        (
            "dumbbells: {up to: 24 kg, step: 2 kg}",
            "goblet squat",
            "26 kg",
            "Write 24 kg, or correct the list under `equipment`.",
        ),
        (
            "dumbbells: {up to: 24 kg, step: 2 kg}",
            "goblet squat",
            "21 kg",
            "Write 20 kg or 22 kg, or correct the step under `equipment`.",
        ),
        ("dumbbells: {from: 1 kg, up to: 10 kg, step: 2 kg}", "goblet squat", "9 kg", None),
        (
            "dumbbells: {from: 4 kg}",
            "dumbbell curl",
            "2 x 3 kg",
            "Write 4 kg, or correct the list under `equipment`.",
        ),
        ("kettlebells: [8, 12, 16 kg]", "kettlebell swing", "16 kg", None),
        ("kettlebells: [8, 12, 16 kg]", "kettlebell swing", "35 lb", None),
        (
            "kettlebells: [8, 12, 16 kg]",
            "kettlebell swing",
            "14 kg",
            "Write 12 kg or 16 kg, or correct the list under `equipment`.",
        ),
        (
            "kettlebells: {weights: [18, 35 lb]}",
            "kettlebell swing",
            "26 lb",
            "Write 18 lb or 35 lb, or correct the list under `equipment`.",
        ),
        (
            "barbell: {from: 20 kg, step: 2.5 kg}, rack",
            "back squat",
            "61 kg",
            "Write 60 kg or 62.5 kg, or correct the step under `equipment`.",
        ),
        ("dumbbells: {pairs: 0}", "dumbbell curl", "2 x 8 kg", "Write a lift that holds one of them."),
        ("dumbbells: {pairs: 1}", "dumbbell curl", "2 x 8 kg", None),
        ("dumbbells: {up to: 20 kg, step: 2 kg}, kettlebells", "kettlebell deadlift", "24 kg", None),
        (
            "dumbbells: {up to: 20 kg, step: 2 kg}, kettlebells",
            "dumbbell deadlift",
            "24 kg",
            "Write 20 kg, or correct the list under `equipment`.",
        ),
        ("dumbbells, kettlebells: [8, 12 kg]", "dumbbell deadlift", "24 kg", None),
    ],
)
def test_a_weight_that_is_not_there(held, line, load, change, findings):
    found = [one for one in findings(ONE % (held, line, load)) if one.rule == "weight-not-there"]
    assert [one.change for one in found] == ([] if change is None else [change])
    assert all(one.place.excerpt == load for one in found)


@pytest.mark.parametrize(
    ("held", "line", "load", "severity"),
    [
        ("dumbbells: {up to: 24 kg, step: 2 kg}", "dumbbell shoulder press", "2 x 5 kg", None),
        ("dumbbells: {up to: 24 kg, step: 2 kg}", "dumbbell row", "15 kg", "note"),
        ("dumbbells: {up to: 24 kg, step: 2 kg}", "dumbbell row", "28 kg", "note"),  # 2 x 14?
        ("dumbbells: {up to: 24 kg, step: 2 kg}", "dumbbell row", "2 x 26 kg", "warning"),
        ("dumbbells: [4, 6, 8 kg]", "dumbbell row", "5 kg", "warning"),
        ("sandbag: [15, 20 kg], weight vest: [10 kg]", "loaded stair climb", "10 kg", None),
        ("sandbag: [15, 20 kg], weight vest", "loaded stair climb", "10 kg", None),
        ("sandbag: [15, 20 kg], rucksack", "loaded stair climb", "12 kg", None),
        ("sandbag: [15, 20 kg]", "loaded stair climb", "10 kg", "warning"),
        ("sandbag: [15, 20 kg], weight vest: [10 kg]", "sandbag carry", "10 kg", "warning"),
        ("dumbbells: {up to: 20 kg}, kettlebells: [24 kg]", "goblet squat", "24 kg", None),
        ("dumbbells: {up to: 10 kg}, kettlebells: [16 kg]", "goblet squat", "25 kg", "warning"),
        ("dumbbells: {up to: 24 kg}, barbell", "reverse lunge", "40 kg", None),
        ("barbell: [15, 20 kg], rack", "back squat", "62.5 kg", None),
        ("fixed barbell: [15, 20 kg], rack", "back squat", "62.5 kg", "warning"),
        ("trap bar: [25 kg]", "trap bar deadlift", "70 kg", None),
        ("plates: [1.25, 2.5, 5, 10 kg], pull-up bar", "weighted pull-up", "7.5 kg", None),
    ],
)
def test_only_what_is_surely_not_there(held, line, load, severity, findings):
    found = [one for one in findings(ONE % (held, line, load)) if one.rule == "weight-not-there"]
    assert [one.severity for one in found] == ([severity] if severity else [])


@pytest.mark.parametrize(
    ("held", "rule", "place"),
    [
        ("kettlebells: [8, 12]", "two-readings", "12"),
        ("dumbbells: {from: 10 kg, up to: 2 kg}", "range-backwards", "2 kg"),
        ("dumbbells: {up to: 24}", "value-unreadable", "24"),
        ("dumbbells: {until: 24 kg}", "key-unknown", "until"),
    ],
)
def test_what_there_is_at_its_edges(held, rule, place, findings):
    found = [one for one in findings(ONE % (held, "goblet squat", "10 kg")) if not one.why]
    assert [(one.rule, one.place.excerpt) for one in found] == [(rule, place)]


def test_many_people_who_share_a_piece(findings):
    content = ONE % ("rack: {shared by: 8}, barbell", "back squat", "60 kg")
    (found,) = [one for one in findings(content) if one.rule == "room-too-small"]
    assert "8 at a time need the rack" in found.counted
    assert not [
        one for one in findings(content.replace("8}", "8, pairs: 3}")) if one.rule == "room-too-small"
    ]


def test_the_next_weight_there_is_is_no_large_step(findings):
    content = (ONE % ("kettlebells: [16, 24, 32 kg]", "kettlebell swing", "{1: 16 kg, 2: 24 kg}")).replace("sessions:", "weeks: 2\nsessions:")  # fmt: skip
    assert "load-step-large" not in {one.rule for one in findings(content)}
    assert "load-step-large" in {one.rule for one in findings(content.replace("16, 24", "16, 20, 24"))}
