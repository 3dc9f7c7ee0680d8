"""Exercises of a team's own: written with less than the catalogue has, and derived by the same code."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spotline.lint.body import catalogue
from spotline.lint.body.exercise_fields import faults, fields

HINGE = {"name": "belt hinge", "path": {"hip": [85, 0], "knee": 15, "ankle": 0}}


def made(entry):
    assert list(faults(entry, catalogue.anatomy())) == []
    return catalogue.Exercise(fields(entry, catalogue.anatomy()))


def test_a_name_and_a_path_are_enough():
    hinge = made(HINGE)
    assert hinge.name == "belt hinge"
    assert hinge.actions == ("hip extension",)
    assert hinge.patterns == ("hip hinge",)
    assert hinge.weight("semitendinosus") == 1
    assert hinge.weight("biceps femoris short head") == 0
    assert hinge.lengths["semitendinosus"] == "long"
    assert (hinge.implement, hinge.kind, hinge.aliases, hinge.easier) == ("none", "dynamic", (), ())


def test_a_name_and_actions_are_enough():
    fly = made({"name": "belt fly", "actions": ["shoulder horizontal adduction"]})
    assert fly.direct == ("sternocostal chest",)
    assert fly.lengths == {}
    assert fly.path == {}


def test_written_actions_stand_above_those_of_the_path():
    pull = made({**HINGE, "actions": ["trunk extension"], "assists": ["hip extension"]})
    assert pull.actions == ("trunk extension",)
    assert pull.weight("erector spinae") == 1
    assert pull.weight("semitendinosus") == 0.5
    assert pull.patterns == ()


def test_assists_may_be_added_to_a_path():
    pull = made({**HINGE, "assists": ["grip", "hip extension"]})
    assert pull.assists == ("grip",)
    assert pull.weight("finger flexors") == 0.5


def test_a_coach_may_override_with_a_reason():
    own = made({**HINGE, "credit": {"semitendinosus": {"as": "indirect", "because": "the belt is light"}}})
    assert own.weight("semitendinosus") == 0.5
    assert own.weight("semimembranosus") == 1
    credit = own.profile().credits["semitendinosus"]
    assert (credit.derived, credit.because) == ("direct", "the belt is light")


@pytest.mark.parametrize(
    ("change", "words", "where"),
    [
        ({"actions": ["hip extending"]}, "hip extending is no joint action", ("actions", 0)),
        ({"assists": ["grip", "grab"]}, "grab is no joint action", ("assists", 1)),
        (
            {"actions": ["grip"], "assists": ["grip"]},
            "grip is both a main and an assisting action",
            ("assists",),
        ),
        ({"path": {"hip": [150, 0]}}, "hip at 150 degrees is out of range, -30 to 120", ("path",)),
        (
            {"path": {"hip": [85, 0, 0], "knee": [5, 0]}},
            "knee has 2 way-points where another joint has 3",
            ("path",),
        ),
        ({"path": {"hip": [2, 0]}}, "trains no muscle directly", ("path",)),
        (
            {"actions": ["hip extension"], "path": {"hip": [2, 0], "knee": 0}},
            "trains no muscle directly",
            ("actions",),
        ),
        (
            {"pattern": "hip hinge", "path": {"hip": [85, 0], "knee": 90}},
            "called a hip hinge, but its joint path is none",
            ("pattern",),
        ),
        (
            {"credit": {"soleus": {"as": "direct", "because": "x"}}},
            "soleus has none of the actions that this exercise loads",
            ("credit", "soleus"),
        ),
        (
            {"credit": {"hams": {"as": "none", "because": "x"}}},
            "hams is no muscle or group",
            ("credit", "hams"),
        ),
    ],
)
def test_faults_are_told_with_their_place(change, words, where):
    assert list(faults({**HINGE, **change}, catalogue.anatomy())) == [(words, where)]


ANGLES = st.one_of(st.integers(-70, 190), st.lists(st.floats(-60, 180), min_size=1, max_size=4))
ENTRIES = st.fixed_dictionaries(
    {"name": st.just("own lift")},
    optional={
        "path": st.dictionaries(
            st.sampled_from(["hip", "knee", "ankle", "shoulder", "elbow", "toe"]), ANGLES
        ),
        "actions": st.lists(st.sampled_from([*catalogue.actions(), "hip extending"]), min_size=1, max_size=3),
        "assists": st.lists(st.sampled_from([*catalogue.actions()]), max_size=3),
        "kind": st.sampled_from(["dynamic", "isometric", "plyometric", "ballistic", "carry"]),
        "pattern": st.sampled_from(["squat", "hip hinge"]),
        "credit": st.dictionaries(
            st.sampled_from([*catalogue.muscles(), *catalogue.groups, "solus"]),
            st.fixed_dictionaries(
                {"as": st.sampled_from(["direct", "indirect", "none"]), "because": st.just("a test")}
            ),
            max_size=2,
        ),
    },
)


@given(entry=ENTRIES)
def test_every_entry_of_sound_shape_has_faults_or_becomes_an_exercise(entry):
    if list(faults(entry, catalogue.anatomy())):
        return
    exercise = catalogue.Exercise(fields(entry, catalogue.anatomy()))
    assert exercise.direct
    loaded = {*exercise.actions, *exercise.assists}
    credits = exercise.profile().credits
    for muscle in (*exercise.direct, *exercise.indirect):
        assert loaded & set(catalogue.muscles()[muscle].acts)
        assert credits[muscle].because
        if muscle not in entry.get("credit", {}) and credits[muscle].net is not None:
            by_hand = {m for name in entry.get("credit", {}) for m in catalogue.groups.get(name, (name,))}
            assert credits[muscle].net <= -0.5 or muscle in by_hand
    assert set(exercise.positions) <= {*exercise.direct, *exercise.indirect}
    assert set(exercise.lengths.values()) <= {"long", "middle", "short"}
