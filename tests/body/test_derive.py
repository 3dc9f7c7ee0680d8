from __future__ import annotations

import pytest

from spotline.lint.body import catalogue
from spotline.lint.body.derive import actions_of, derive, is_hinge
from spotline.lint.body.mechanics import full_path, length_class

TWO_JOINT = ["biceps femoris long head", "semitendinosus", "semimembranosus"]
VASTI = ["vastus lateralis", "vastus medialis", "vastus intermedius"]
TRICEPS = ["triceps long head", "triceps lateral head", "triceps medial head"]


def weights(name: str) -> dict[str, float]:
    exercise = catalogue.exercise(name)
    assert exercise is not None, name
    return {muscle: exercise.weight(muscle) for muscle in catalogue.muscles() if exercise.weight(muscle)}


# What a coach accepts: (exercise, direct among others, indirect among others, none).
ACCEPTED = [
    (
        "back squat",
        [*VASTI, "gluteus maximus", "adductor magnus"],
        ["erector spinae", "multifidus"],
        [*TWO_JOINT, "rectus femoris", "soleus"],
    ),
    ("goblet squat", [*VASTI, "gluteus maximus"], [], [*TWO_JOINT, "erector spinae"]),
    ("hack squat", [*VASTI, "gluteus maximus"], [], [*TWO_JOINT, "erector spinae"]),
    (
        "deadlift",
        [*TWO_JOINT, "gluteus maximus", "adductor magnus"],
        [*VASTI, "erector spinae"],
        ["biceps femoris short head", "rectus femoris"],
    ),
    ("trap bar deadlift", [*VASTI, "gluteus maximus"], TWO_JOINT, ["rectus femoris"]),
    (
        "Romanian deadlift",
        [*TWO_JOINT, "gluteus maximus"],
        ["erector spinae"],
        ["biceps femoris short head", *VASTI],
    ),
    (
        "lying leg curl",
        [*TWO_JOINT, "biceps femoris short head"],
        ["gracilis", "sartorius"],
        ["gastrocnemius", "soleus", "gluteus maximus"],
    ),
    ("seated leg curl", [*TWO_JOINT, "biceps femoris short head"], [], ["gastrocnemius"]),
    ("Nordic curl", [*TWO_JOINT, "biceps femoris short head"], [], ["gastrocnemius"]),
    (
        "hip thrust",
        ["gluteus maximus"],
        ["adductor magnus"],
        [*TWO_JOINT, "biceps femoris short head", *VASTI],
    ),
    ("glute bridge hold", ["gluteus maximus"], ["adductor magnus"], TWO_JOINT),
    ("long-lever bridge", [*TWO_JOINT, "gluteus maximus"], ["adductor magnus"], []),
    ("leg extension", [*VASTI, "rectus femoris"], [], TWO_JOINT),
    ("leg press", [*VASTI, "gluteus maximus"], ["rectus femoris"], TWO_JOINT),
    ("forward lunge", [*VASTI, "gluteus maximus"], [], TWO_JOINT),
    ("standing calf raise", ["gastrocnemius", "soleus"], [], []),
    ("seated calf raise", ["soleus"], [], ["gastrocnemius"]),
    ("hip adduction machine", ["adductor longus", "adductor magnus"], [], ["gluteus medius"]),
    ("hip abduction machine", ["gluteus medius"], ["tensor fasciae latae"], ["adductor longus"]),
    ("hanging leg raise", ["iliacus", "rectus abdominis"], ["rectus femoris"], ["adductor longus"]),
    (
        "bench press",
        ["sternocostal chest"],
        ["clavicular chest", "anterior deltoid", *TRICEPS],
        ["latissimus dorsi", "middle deltoid"],
    ),
    (
        "incline bench press",
        ["clavicular chest"],
        ["sternocostal chest", "anterior deltoid"],
        ["middle deltoid"],
    ),
    (
        "overhead press",
        ["anterior deltoid", "middle deltoid"],
        TRICEPS,
        ["posterior deltoid", "latissimus dorsi"],
    ),
    ("lateral raise", ["middle deltoid"], ["anterior deltoid"], ["sternocostal chest"]),
    (
        "bent-over row",
        ["latissimus dorsi", "middle trapezius", "rhomboids"],
        ["posterior deltoid", "biceps long head"],
        TRICEPS,
    ),
    ("pull-up", ["latissimus dorsi"], ["biceps long head", "brachialis"], [*TRICEPS, "sternocostal chest"]),
    (
        "muscle-up",
        ["latissimus dorsi", *TRICEPS],
        ["biceps long head", "brachialis", "rhomboids", "middle trapezius", "lower trapezius"],
        ["posterior deltoid"],
    ),
    ("barbell shrug", ["upper trapezius"], ["levator scapulae"], ["serratus anterior"]),
    ("overhead shrug", ["upper trapezius", "serratus anterior"], [], []),
    (
        "kettlebell push press",
        ["anterior deltoid", "middle deltoid"],
        TRICEPS,
        [*VASTI, "rectus femoris"],
    ),
    ("lat pulldown", ["latissimus dorsi"], ["biceps long head"], TRICEPS),
    (
        "straight-arm pulldown",
        ["latissimus dorsi"],
        ["triceps long head"],
        ["triceps lateral head", "biceps long head"],
    ),
    ("barbell curl", ["biceps long head", "biceps short head", "brachialis"], [], ["anterior deltoid"]),
    ("cable pushdown", TRICEPS, [], ["latissimus dorsi"]),
    ("plank", ["rectus abdominis"], ["external oblique"], ["gluteus maximus"]),
    ("side plank", ["external oblique", "internal oblique"], [], []),
]


@pytest.mark.parametrize(("name", "direct", "indirect", "none"), ACCEPTED, ids=[row[0] for row in ACCEPTED])
def test_credits_a_coach_accepts(name, direct, indirect, none):
    """Common practice (cp-squat, cp-deadlift, cp-curl), kubo-2019, plotkin-2023, campos-2020, kinoshita-2023;
    lower back, muscle-up, shrug and push press: anatomy.
    """
    found = weights(name)
    assert {muscle: found.get(muscle, 0) for muscle in (*direct, *indirect, *none)} == {
        **dict.fromkeys(direct, 1.0),
        **dict.fromkeys(indirect, 0.5),
        **dict.fromkeys(none, 0),
    }


def test_every_credit_goes_to_a_muscle_that_has_one_of_the_loaded_actions():
    for exercise in catalogue.exercises():
        loaded = {*exercise.actions, *exercise.assists}
        for muscle in (*exercise.direct, *exercise.indirect):
            assert loaded & set(catalogue.muscles()[muscle].acts), (exercise.name, muscle)


def test_no_muscle_is_both_direct_and_indirect():
    for exercise in catalogue.exercises():
        assert not set(exercise.direct) & set(exercise.indirect), exercise.name


def test_built_credits_are_those_of_the_derivation():
    for exercise in catalogue.exercises():
        profile = exercise.profile()
        assert exercise.direct == profile.muscles("direct"), exercise.name
        assert exercise.indirect == profile.muscles("indirect"), exercise.name
        assert exercise.positions == profile.positions, exercise.name


def test_every_credit_has_a_reason():
    for exercise in catalogue.exercises():
        for credit in exercise.profile().credits.values():
            assert len(credit.because) > 10, (exercise.name, credit.muscle)


def test_a_credited_muscle_is_never_stretched_by_the_lift_unless_stated():
    """Where its length curve reaches; a bent-knee hold or a stated credit stands apart."""
    for exercise in catalogue.exercises():
        for credit in exercise.profile().credits.values():
            if credit.credit != "none" and credit.net is not None and credit.muscle not in _stated(exercise):
                assert credit.net <= -0.5, (exercise.name, credit.muscle, credit.net)


def _stated(exercise: catalogue.Exercise) -> set[str]:
    return {muscle for name in exercise.stated for muscle in catalogue.groups.get(name, (name,))}


def profile(actions=(), assists=(), path=None, **more):
    return derive(catalogue.anatomy(), actions, assists, full_path(path or {}), **more)


def test_shortening_decides():
    """The same action, three travels: 1.5 cm and more, near 1 cm, and hardly any."""
    for hip, credit in ((30, "direct"), (8, "indirect"), (3, "none")):
        found = profile(["hip extension"], path={"hip": [hip, 0], "knee": 0})
        assert found.credits["gluteus maximus"].credit == credit


def test_near_the_limit_a_muscle_stretched_at_its_other_end_gets_none():
    lunge = profile(["hip extension", "knee extension"], path={"hip": [95, 10], "knee": [90, 10]})
    hamstring = lunge.credits["semitendinosus"]
    assert hamstring.net == pytest.approx(-1.0, abs=0.1)
    assert hamstring.credit == "none"
    assert "other end is stretched" in hamstring.because


def test_what_a_muscle_is_may_depend_on_the_kind_of_lift():
    """The same path, as a squat and as a lift of no pattern."""
    path = {"hip": [100, 0], "knee": [80, 0]}
    actions = ["hip extension", "knee extension"]
    alone = profile(actions, path=path).credits["semitendinosus"]
    squat = profile(actions, path=path, pattern="squat").credits["semitendinosus"]
    assert (alone.credit, alone.sources) == ("direct", ())
    assert (squat.credit, squat.sources) == ("none", ("kubo-2019", "plotkin-2023"))
    assert "models differ" in squat.because


def test_a_muscle_that_the_lift_stretches_is_told_so_whatever_its_kind():
    press = profile(
        ["knee extension", "hip extension"], path={"hip": [110, 60], "knee": [100, 5]}, pattern="squat"
    ).credits["semitendinosus"]
    assert "stretches it by 4" in press.because
    assert (press.credit, press.doubt, press.sources) == ("none", "", ())


def test_doubt_is_told_and_stays_beside_what_is_stated():
    path = {"hip": [80, 0], "knee": [60, 0]}
    deadlift = profile(["hip extension"], ["knee extension"], path=path).credits["semitendinosus"]
    assert deadlift.credit == "direct"
    assert deadlift.doubt == "hip and knee pull at it both ways, and models differ by 2.5 cm"
    stated = profile(["hip extension"], path=path, stated={"semitendinosus": ("indirect", "a test")}).credits[
        "semitendinosus"
    ]
    assert (stated.because, stated.doubt) == ("a test", deadlift.doubt)
    hinge = profile(["hip extension"], path={"hip": [90, 0], "knee": 15}).credits["semitendinosus"]
    assert hinge.doubt == ""


def doubtful(exercise: catalogue.Exercise) -> bool:
    given = exercise.profile().credits.get("semitendinosus")
    return given is not None and bool(given.doubt)


def test_deadlifts_and_jumps_are_doubtful_and_stiff_hinges_and_curls_are_not():
    """Where the knee straightens with the hip, models differ by more than any limit; a leg press jump stretches
    the hamstrings in every model, and a bound with straight legs shortens them.
    """
    clear = ("leg press jump", "straight-leg bound")
    for exercise in catalogue.exercises():
        if exercise.pattern == "jump" and "hip extension" in exercise.actions:
            assert doubtful(exercise) is (exercise.name not in clear), exercise.name
        if "deadlift" in exercise.name and exercise.pattern != "squat" and exercise.path["knee"][0] >= 45:
            assert doubtful(exercise), exercise.name
        if {"semitendinosus"} <= set(exercise.direct) and len(set(exercise.path["knee"])) == 1:
            assert not doubtful(exercise), exercise.name


def test_squats_lunges_and_hip_thrusts_say_why_the_hamstrings_get_nothing():
    told = 0
    for exercise in catalogue.exercises():
        given = exercise.profile().credits.get("semitendinosus")
        if given and given.sources and exercise.pattern in ("squat", "lunge", "hip thrust"):
            told += 1
            assert given.credit == "none", exercise.name
            likeness = "without a trial of their own" in given.because
            assert likeness is (exercise.pattern == "lunge"), exercise.name
            assert "plotkin-2023" in given.sources
    assert told > 80


def test_squats_that_load_the_spine_work_the_lower_back_by_half():
    """Anatomy: the trunk has to be held upright under the load. Where a pad holds it, it has not."""
    held = 0
    for exercise in catalogue.exercises():
        if exercise.pattern == "squat" and exercise.stance != "supported":
            axial = exercise.axial in ("moderate", "high")
            assert exercise.weight("erector spinae") == (0.5 if axial else 0), exercise.name
            held += axial
    assert held >= 19


def test_isometric_work_credits_the_prime_movers():
    held = profile(["knee extension"], path={"hip": 80, "knee": 90}, kind="isometric")
    assert held.credits["vastus lateralis"].credit == "direct"
    assert "held" in held.credits["vastus lateralis"].because


def test_without_a_path_the_action_table_speaks():
    assert profile(["hip extension"], ["knee extension"]).credits["rectus femoris"].credit == "indirect"


def test_stated_credit_stands_and_the_derived_one_is_kept():
    found = profile(
        ["knee flexion"], path={"hip": 0, "knee": [0, 90]}, stated={"hamstrings": ("indirect", "a test")}
    )
    assert found.credits["semitendinosus"].credit == "indirect"
    assert found.credits["semitendinosus"].derived == "direct"
    assert found.credits["semitendinosus"].because == "a test"


@pytest.mark.parametrize(
    ("stated", "words"),
    [
        ({"hamstring": ("direct", "x")}, "hamstring is no muscle or group"),
        ({"soleus": ("direct", "x")}, "soleus has none of the actions that this exercise loads"),
        ({"hamstrings": ("direct", "x")}, "biceps femoris short head has none of the actions"),
    ],
)
def test_faults_of_stated_credit(stated, words):
    with pytest.raises(ValueError, match=words):
        profile(["hip extension"], stated=stated)


def test_unknown_action():
    with pytest.raises(KeyError):
        profile(["hip extending"])


@pytest.mark.parametrize(
    ("path", "hinge"),
    [
        ({"hip": [90, 0], "knee": 15}, True),
        ({"hip": [80, 0], "knee": [60, 0]}, True),
        ({"hip": [80, 0], "knee": [82, 0]}, False),
        ({"hip": [80, 0], "knee": 90}, False),
        ({"hip": [35, 0], "knee": 10}, False),
        ({"hip": [0, 90], "knee": 0}, False),
        ({"hip": [110, 0], "knee": [120, 0]}, False),
        ({"hip": [75, -10], "knee": 5}, True),
        ({"hip": [50, -15], "knee": 15}, False),
        ({"knee": [90, 0]}, False),
    ],
)
def test_what_a_hinge_is(path, hinge):
    assert is_hinge(full_path(path)) is hinge


def test_stated_hinges_hinge_and_leg_raises_do_not():
    for exercise in catalogue.exercises():
        if exercise.pattern == "hip hinge" and exercise.kind != "isometric":
            assert is_hinge(exercise.path), exercise.name
        if "hip hinge" in exercise.patterns:
            assert "hip extension" in exercise.actions, exercise.name


# Lifts of a team's own, given by their joint path alone; none is in the catalogue under its name.
OWN = {
    "belt hinge off blocks": (
        {"hip": [85, 0], "knee": 15},
        TWO_JOINT,
        ["biceps femoris short head", "rectus femoris"],
        {"semitendinosus": "long"},
    ),
    "cambered half squat": (
        {"hip": [80, 0], "knee": [90, 0], "ankle": [20, 0]},
        [*VASTI, "gluteus maximus"],
        [*TWO_JOINT, "rectus femoris", "soleus"],
        {"gluteus maximus": "long"},
    ),
    "cable curl lying back": (
        {"hip": 10, "knee": [0, 100]},
        [*TWO_JOINT, "biceps femoris short head"],
        ["gastrocnemius"],
        {"semitendinosus": "short"},
    ),
    "leaning curl": (
        {"hip": 90, "knee": [0, 100]},
        [*TWO_JOINT, "biceps femoris short head"],
        ["gastrocnemius"],
        {"semitendinosus": "long"},
    ),
    "reclined kick-out": (
        {"hip": 40, "knee": [100, 0]},
        [*VASTI, "rectus femoris"],
        TWO_JOINT,
        {"rectus femoris": "middle"},
    ),
    "upright kick-out": (
        {"hip": 90, "knee": [100, 0]},
        [*VASTI, "rectus femoris"],
        TWO_JOINT,
        {"rectus femoris": "short"},
    ),
    "straight-leg press of the foot": (
        {"hip": 90, "knee": 5, "ankle": [20, -35]},
        ["gastrocnemius", "soleus"],
        ["tibialis anterior"],
        {"gastrocnemius": "long"},
    ),
    "bench-knee heel lift": (
        {"hip": 90, "knee": 90, "ankle": [20, -35]},
        ["soleus"],
        ["gastrocnemius"],
        {"soleus": "middle"},
    ),
    "toe pull": ({"knee": 0, "ankle": [-35, 15]}, ["tibialis anterior"], ["soleus"], {}),
    "knee drive against a belt": (
        {"hip": [0, 110], "knee": [0, 110]},
        ["iliacus", "psoas major"],
        [*TWO_JOINT, *VASTI],
        {},
    ),
    "bridge on a box": (
        {"hip": [70, 0], "knee": 90},
        ["gluteus maximus"],
        [*VASTI, "biceps femoris short head"],
        {"gluteus maximus": "middle"},
    ),
    "arms-back curl": (
        {"shoulder": -40, "elbow": [5, 125]},
        ["biceps long head", "brachialis"],
        TRICEPS,
        {"biceps long head": "long"},
    ),
    "arms-up straightening": (
        {"shoulder": 160, "elbow": [120, 5]},
        TRICEPS,
        ["biceps long head"],
        {"triceps long head": "long"},
    ),
    "low pull to the belt": (
        {"shoulder": [70, 0], "elbow": [10, 90]},
        ["latissimus dorsi", "teres major"],
        TRICEPS,
        {},
    ),
    "standing push over the head": (
        {"shoulder": [50, 170], "elbow": [120, 5]},
        ["anterior deltoid"],
        ["biceps long head"],
        {},
    ),
}


@pytest.mark.parametrize(("path", "direct", "none", "lengths"), OWN.values(), ids=OWN)
def test_lifts_given_by_their_path_alone(path, direct, none, lengths, request):
    assert catalogue.exercise(request.node.callspec.id) is None
    full = full_path(path)
    main, assists = actions_of(full)
    found = derive(catalogue.anatomy(), main, assists, full)
    assert set(direct) <= set(found.muscles("direct"))
    assert not set(none) & {*found.muscles("direct"), *found.muscles("indirect")}
    assert {muscle: length_class(found.positions[muscle])[0] for muscle in lengths} == lengths


@pytest.mark.parametrize(
    ("path", "main", "assists"),
    [
        ({"hip": [80, 0], "knee": [60, 0]}, ("hip extension",), ("knee extension",)),
        ({"hip": [90, 0], "knee": [100, 0], "ankle": [20, 0]}, ("hip extension", "knee extension"), ()),
        (
            {"hip": [60, 0], "knee": [70, 0], "ankle": [20, -30]},
            ("hip extension", "knee extension"),
            ("plantarflexion",),
        ),
        ({"hip": [85, 0, 0], "knee": [0, 0, 90]}, ("hip extension", "knee flexion"), ()),
        ({"shoulder": [80, 0], "elbow": [10, 100]}, ("shoulder extension",), ("elbow flexion",)),
        ({"shoulder": [30, 90], "elbow": [5, 100]}, ("shoulder flexion", "elbow flexion"), ()),
        ({"hip": [10, 0]}, (), ()),
    ],
)
def test_actions_read_off_a_path(path, main, assists):
    assert actions_of(full_path(path)) == (main, assists)
