"""What is in the way of an exercise for one athlete, what is suggested, and what stands in for one."""

from __future__ import annotations

import pytest

from spotline.lint.body import catalogue
from spotline.lint.counting.suggestions import Suggestion, Suits, _akin, substitutes, suggest
from spotline.lint.counting.unfit import unfit


@pytest.fixture(scope="module")
def header(programme, week):
    """The header of a programme for one athlete."""

    def run(athlete="", files=None, head=""):
        who = f"athlete: {{name: Ida{', ' if athlete else ''}{athlete}}}"
        return programme(week({"A": ["plank, sets: 2, hold: 20 s"]}, f"{who}\n{head}".rstrip()), files).header

    return run


def lift(name):
    found = catalogue.exercise(name)
    assert found is not None, name
    return found


KNEE = "protect: [{area: knee, advised by: physician}]"
ROOM = {"spotline.yaml": "stations: {rack: 2}\ntraining together: %d\n"}


@pytest.mark.parametrize(
    ("athlete", "name", "said"),
    [
        ("", "leg press", ""),
        (KNEE, "back squat", "loads a protected area (`knee`)"),
        (KNEE, "bench press", ""),
        ("level: novice", "overhead press", "is for intermediate lifters"),
        ("", "overhead press", "is for intermediate lifters"),  # no level suits everybody
        ("level: intermediate", "overhead press", ""),
        ("level: intermediate", "power clean", "is for advanced lifters"),
        ("level: advanced", "power clean", ""),
        ("level: advanced, equipment: [mat]", "back squat", "needs a barbell"),
        ("level: advanced, equipment: [barbell, rack]", "back squat", ""),
        ("equipment: [barbell]", "leg press", "needs a leg press"),
        ("level: advanced", "sled push", "needs a sled"),  # few rooms have one
        ("level: advanced, equipment: [sled]", "sled push", ""),
        ("level: advanced, equipment: [everything]", "sled push", ""),
        (f"equipment: [barbell], {KNEE}", "back squat", "loads a protected area (`knee`)"),  # said first
        ("equipment: [band], level: novice", "power clean", "is for advanced lifters"),
        ("note: must not strain", "plank", "is held, with a word on straining on file"),
    ],
)
def test_what_is_in_the_way(header, athlete, name, said):
    assert Suits(header(athlete)).obstacle(lift(name)) == said


def test_a_level_more_may_be_asked_for(header):
    suits = Suits(header("level: novice"), steps=1)
    assert suits.obstacle(lift("overhead press")) == ""
    assert suits.obstacle(lift("power clean")) == "is for advanced lifters"


def test_the_equipment_of_a_place(header):
    ida = header("level: advanced, equipment: [barbell, rack], places: {hotel: [dumbbells]}")
    assert Suits(ida).obstacle(lift("back squat")) == ""
    assert Suits(ida, at="hotel").obstacle(lift("back squat")) != ""
    assert Suits(ida, at="hotel").obstacle(lift("goblet squat")) == ""
    away = header(
        "level: advanced, equipment: [barbell, rack], places: {hotel: [dumbbells]}", head="where: hotel"
    )
    assert Suits(away).obstacle(lift("back squat")) != ""  # he trains there throughout
    assert Suits(away).obstacle(lift("goblet squat")) == ""


def test_pieces_that_nobody_needs_to_list(header):
    ida = header("equipment: [barbell]")
    assert Suits(ida).obstacle(lift("bodyweight step-up")) == ""  # a box is always there
    assert Suits(ida, always=()).obstacle(lift("bodyweight step-up")) == "needs a box"


@pytest.mark.parametrize(
    ("together", "said"),
    [(6, ""), (7, "needs a rack: too few for 7 at a time")],  # 3 to a station
)
def test_a_room_is_too_small_from_the_fourth_to_a_station(header, together, said):
    room = {"spotline.yaml": ROOM["spotline.yaml"] % together}
    assert Suits(header("level: advanced", room)).obstacle(lift("back squat")) == said
    assert Suits(header("level: advanced", room)).obstacle(lift("leg press")) == ""


# What is suggested


def flexes(one):
    return "knee flexion" in one.actions


def test_no_more_than_two_and_the_common_ones_first(header):
    found = suggest(header(), flexes)
    assert len(found.names) == 2
    assert [lift(name).rank for name in found.names] == ["staple", "staple"]
    assert not found.is_spared


def test_a_rare_exercise_is_named_only_where_nothing_more_common_suits(header):
    ida = header()
    names = {"seated leg curl", "kneeling leg curl"}
    assert suggest(ida, lambda one: one.name in names).names == ("seated leg curl",)
    assert suggest(ida, lambda one: one.name == "kneeling leg curl").names == ("kneeling leg curl",)


def test_a_usual_exercise_is_named_beside_a_common_one(header):
    names = ("leg press", "single-leg leg press")  # a staple, and one that is usual
    assert suggest(header(), lambda one: one.name in names).names == names


def test_what_is_spared_is_worked_out_once(header):
    ida = header(KNEE)
    assert Suits(ida).protected is Suits(ida).protected


def test_nothing_fast_is_suggested_unless_it_is_asked_for(header):
    ida = header("level: advanced")
    assert suggest(ida, lambda one: one.name == "box jump").names == ()
    assert suggest(ida, lambda one: one.name == "box jump", ("plyometric",)).names == ("box jump",)
    assert suggest(ida, lambda one: one.name == "plank").names == ("plank",)


def test_of_what_does_not_suit_two_reasons_are_told_once_each(header):
    ida = header("level: novice, equipment: [barbell]")
    found = suggest(ida, lambda one: one.name in ("pistol squat", "leg press", "leg extension"))
    assert found.names == ()
    assert len(found.obstacles) == 2
    again = suggest(ida, lambda one: one.name in ("pistol squat", "glute-ham raise"))
    assert len(again.obstacles) == 1
    assert again.obstacles[0].endswith(" is for advanced lifters")


@pytest.mark.parametrize(
    ("athlete", "names", "spared"),
    [
        (KNEE, ("leg press", "leg extension"), True),
        (f"{KNEE}, level: novice", ("leg press", "Nordic curl"), True),  # it loads the knee as well
        (f"{KNEE}, level: novice", ("leg press", "overhead press"), True),  # the other is only too hard
        (KNEE, ("leg press", "lat pulldown"), True),  # the other suits
        (KNEE, ("lat pulldown", "bench press"), False),
        ("level: novice", ("overhead press",), False),
        (KNEE, (), False),
    ],
)
def test_whether_any_that_comes_first_loads_what_is_spared(header, athlete, names, spared):
    assert suggest(header(athlete), lambda one: one.name in names).is_spared is spared


@pytest.mark.parametrize(
    ("names", "first", "then"),
    [
        (("leg press", "leg extension"), "step-up", ("step-up", "leg press")),  # two, no more
        (("leg press", "leg extension"), "leg extension", ("leg extension", "leg press")),
        (("leg press", "leg extension"), "leg press", ("leg press", "leg extension")),
        ((), "step-up", ("step-up",)),
    ],
)
def test_a_certain_exercise_may_be_put_first(names, first, then):
    found = Suggestion(names, ("dip needs a dip bar",), is_spared=True).with_first(first)
    assert (found.names, found.obstacles, found.is_spared) == (then, ("dip needs a dip bar",), True)
    assert not Suggestion(names, ()).with_first(first).is_spared


def test_what_was_suggested_once_is_kept_for_each_kind(header):
    ida = header("level: advanced")
    assert suggest(ida, flexes) is suggest(ida, flexes)
    assert suggest(ida, flexes) is not suggest(ida, flexes, ("plyometric",))


# What stands in for an exercise


def test_what_does_the_same_work_comes_first(header):
    ida = header("level: advanced, equipment: [dumbbells, flat bench]")
    names = substitutes(ida, lift("bench press"))
    assert names
    assert len(names) <= 2
    assert all("horizontal push" in lift(name).patterns for name in names)
    assert len(substitutes(ida, lift("bench press"), 1)) == 1


def test_what_shares_a_joint_action_stands_in_where_nothing_does_the_same(header):
    ida = header("level: advanced, equipment: [band]")
    names = substitutes(ida, lift("leg press"), 3)
    assert names
    actions = set(lift("leg press").actions)
    assert all(actions.intersection(lift(name).actions) for name in names)
    assert all(lift(name).kind == "dynamic" for name in names)


@pytest.mark.parametrize(
    ("exercise", "others", "names"),
    [
        # a joint action and a muscle of it
        ("bench press", ("overhead press", "cable pushdown", "dumbbell fly"), ["dumbbell fly"]),
        ("seated leg curl", ("Romanian deadlift", "lying leg curl"), ["lying leg curl"]),
        # one of the two: the hamstrings, and hip extension
        ("seated leg curl", ("calf raise", "Romanian deadlift"), ["Romanian deadlift"]),
        ("back squat", ("glute-ham raise", "calf raise"), ["glute-ham raise"]),
        # what it helps to train: the triceps and the front shoulder, the staple before the usual one
        ("bench press", ("front raise", "cable pushdown"), ["cable pushdown", "front raise"]),
        # nothing: thrown, the same, for other muscles, held
        ("bench press", ("medicine ball chest pass", "bench press", "calf raise", "plank"), []),
    ],
)
def test_the_nearest_of_what_is_left_stands_in(exercise, others, names):
    others = [lift(name) for name in others]
    assert _akin(lift(exercise), others, lambda other: True, 2) == names
    assert _akin(lift(exercise), others, lambda other: True, 1) == names[:1]
    assert _akin(lift(exercise), others, lambda other: False, 2) == []


def test_what_is_akin_stands_in_only_where_nothing_does_the_same_work(header, monkeypatch):
    ida = header("level: advanced")
    same = substitutes(ida, lift("bench press"))
    monkeypatch.setattr("spotline.lint.body.equipment.alternatives", lambda *_: [])
    akin = substitutes(ida, lift("bench press"))
    assert akin
    assert akin != same
    assert akin == _akin(
        lift("bench press"), ida.known.by_rank(), lambda one: not Suits(ida).obstacle(one), 2
    )


def test_the_place_and_what_is_always_there_decide(header):
    ida = header("level: advanced, equipment: [barbell, rack], places: {hotel: [dumbbells]}")
    at_home, away = substitutes(ida, lift("leg press"), 5), substitutes(ida, lift("leg press"), 5, at="hotel")
    assert at_home != away
    assert not any(lift(name).implement == "barbell" for name in away)
    bare = substitutes(header("equipment: [mat]"), lift("step-up"), 20, ())
    assert "box" not in {piece for name in bare for piece in (*lift(name).station,)}


# What a card says


@pytest.mark.parametrize(
    ("athlete", "head", "name", "said"),
    [
        ("", "", "plank", ""),
        ("age: 64", "", "glute bridge", ""),
        ("age: 65", "", "glute bridge", "is done on the floor"),
        ("age: 65", "", "bench press", ""),  # he lies on a bench
        ("age: 65", "", "half-kneeling landmine press", "is done on the floor"),
        ("age: 65", "", "back squat", ""),
        ("note: no kneeling", "", "half-kneeling landmine press", "is done on the floor"),
        ("note: gets dizzy", "", "glute bridge", "is done on the floor"),
        ("note: gets dizzy", "", "back squat", ""),
        ("note: no straining", "", "plank", "is held, with a word on straining on file"),
        ("note: no straining", "", "back squat", ""),
        ("", "note: takes tablets for blood pressure", "plank", "is held, with a word on straining on file"),
        ("note: the leg press is broken", "", "leg press", "is out of order by a note"),
        ("note: the leg press is new. The rack is broken", "", "leg press", ""),
        ("note: the leg press is here", "", "leg press", ""),
        ("note: the back squat is out", "", "back squat", ""),  # no machine
        ("protect: [{area: knee, advised by: physician, note: no kneeling}]", "", "glute bridge", "is done on the floor"),
    ],
)  # fmt: skip
def test_what_a_card_says_against_an_exercise(header, athlete, head, name, said):
    assert unfit(header(athlete, head=head), lift(name)) == said


def test_without_an_athlete_nothing_is_said(programme, week):
    assert unfit(programme(week({"A": ["plank, sets: 2"]}, "note: no straining")).header, lift("plank")) == ""
