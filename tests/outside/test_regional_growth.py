"""Trials of regional growth as checks of direction: where a trial saw a part grow more, our credit or our length must
point the same way.
"""

from __future__ import annotations

from spotline.lint.body import catalogue
from spotline.lint.body.mechanics import length_class


def lift(name: str) -> catalogue.Exercise:
    exercise = catalogue.exercise(name)
    assert exercise is not None, name
    return exercise


TWO_JOINT = ("biceps femoris long head", "semitendinosus", "semimembranosus")


def test_standing_over_seated_calf_raise_for_the_gastrocnemius():
    """kinoshita-2023: gastrocnemius 9-12 % standing, 1-2 % seated; soleus alike."""
    standing, seated = lift("standing calf raise"), lift("seated calf raise")
    assert standing.weight("gastrocnemius") == 1
    assert seated.weight("gastrocnemius") == 0
    assert standing.weight("soleus") == seated.weight("soleus") == 1


def test_overhead_over_neutral_for_the_long_head_of_triceps():
    """maeo-2023: long head 28.5 % overhead, 19.6 % at the side; both heads of one joint less apart."""
    overhead, neutral = lift("overhead cable triceps extension"), lift("cable pushdown")
    assert overhead.weight("triceps long head") == neutral.weight("triceps long head") == 1
    assert overhead.lengths["triceps long head"] == "long"
    assert neutral.lengths["triceps long head"] != "long"
    assert overhead.lengths["triceps lateral head"] == neutral.lengths["triceps lateral head"]


def test_seated_over_lying_curl_for_the_two_joint_hamstrings_but_not_the_short_head():
    """maeo-2021: two-joint heads +8..24 % seated, +4..19 % lying; short head 10 and 9 %."""
    seated, lying = lift("seated leg curl"), lift("lying leg curl")
    for muscle in TWO_JOINT:
        assert seated.lengths[muscle] == "long"
        assert lying.lengths[muscle] == "short"
    assert seated.positions["biceps femoris short head"] == lying.positions["biceps femoris short head"]


def test_squats_give_nothing_to_hamstrings_and_rectus_femoris():
    """kubo-2019: no growth of either in ten weeks of squats; quadriceps, gluteals and adductors grew. Contrary:
    kojic-2022 saw all four heads of the quadriceps grow in a parallel squat, so rules on it stay below an error.
    """
    for name in ("back squat", "half squat", "front squat", "goblet squat"):
        squat = lift(name)
        for muscle in (*TWO_JOINT, "biceps femoris short head", "rectus femoris"):
            assert squat.weight(muscle) == 0, (name, muscle)
        for muscle in ("vastus lateralis", "gluteus maximus", "adductor magnus"):
            assert squat.weight(muscle) == 1, (name, muscle)


def test_squats_and_hip_thrusts_give_nothing_to_the_hamstrings_and_squats_more_to_the_adductors():
    """plotkin-2023, nine weeks of squats against hip thrusts, sets equal: gluteus maximus alike; hamstrings little to no
    growth in either; adductors more by squats (+2.5 cm2).
    """
    for exercise in catalogue.exercises():
        bent = "knee" in exercise.path and min(exercise.path["knee"]) >= 65
        if exercise.pattern == "squat" or (exercise.pattern == "hip thrust" and bent):
            assert not any(map(exercise.weight, TWO_JOINT)), exercise.name
        if exercise.pattern == "hip thrust":
            assert exercise.weight("adductor magnus") == 0.5, exercise.name
    squat, thrust = lift("back squat"), lift("hip thrust")
    assert squat.weight("gluteus maximus") == thrust.weight("gluteus maximus") == 1
    assert squat.weight("adductor magnus") > thrust.weight("adductor magnus")
    assert squat.weight("vastus lateralis") > thrust.weight("vastus lateralis")


def test_split_squats_lunges_and_step_ups_count_as_squats_for_the_hamstrings():
    """By likeness to the squats of kubo-2019 and plotkin-2023: no trial of their own."""
    lunges = [exercise for exercise in catalogue.exercises() if exercise.pattern == "lunge"]
    assert len(lunges) > 30
    for exercise in lunges:
        assert not any(map(exercise.weight, TWO_JOINT)), exercise.name


def test_leg_extension_reaches_the_rectus_femoris():
    """le-vs-squat-2025, zabaleta-2021: leg extensions grew it, squats hardly."""
    assert lift("leg extension").weight("rectus femoris") == 1


def test_hip_extension_leaves_the_short_head_out_and_the_nordic_does_not():
    """bourne-2017: long head and semimembranosus grew by hip extension; the Nordic works the knee. maeo-2024: the
    Nordic grew the knee-only flexors more, at short lengths of the two-joint heads.
    """
    hinge, nordic = lift("back extension"), lift("Nordic curl")
    assert hinge.weight("biceps femoris short head") == 0
    assert nordic.weight("biceps femoris short head") == 1
    assert all(hinge.lengths[muscle] == "long" for muscle in TWO_JOINT)
    assert all(nordic.lengths[muscle] == "short" for muscle in TWO_JOINT)


def test_deltoid_heads():
    """campos-2020 (activity at 60 %): anterior most in the press, half in the bench press; middle most in the lateral
    raise, next the press, hardly the bench press; botton-2013: reverse flies and rows feed the rear.
    """
    press, bench, raise_ = lift("overhead press"), lift("bench press"), lift("lateral raise")
    assert (press.weight("anterior deltoid"), bench.weight("anterior deltoid")) == (1, 0.5)
    assert (
        raise_.weight("middle deltoid"),
        press.weight("middle deltoid"),
        bench.weight("middle deltoid"),
    ) == (1, 1, 0)
    assert bench.weight("posterior deltoid") == 0
    assert lift("bent-over row").weight("posterior deltoid") == 0.5
    assert lift("dumbbell reverse fly").weight("posterior deltoid") == 1


def test_bench_angle_and_the_parts_of_the_chest():
    """ridao-2020: upper part most at 30 degrees, middle and lower at 0; trebs-2010: upper higher at 44 and 56 than 0."""
    flat, incline = lift("bench press"), lift("incline bench press")
    assert incline.weight("clavicular chest") > flat.weight("clavicular chest")
    assert flat.weight("sternocostal chest") > incline.weight("sternocostal chest")


# Mean place of the two-joint hamstrings in their range, computed from the leg model of rajagopal-2016.
CLASSES = {
    "long": ("Romanian deadlift", "good morning", "back extension", "seated leg curl", "leg press"),
    "middle": ("back squat", "forward lunge", "glute-ham raise"),
    "short": ("lying leg curl", "Nordic curl", "slider leg curl", "hip thrust"),
}


def test_length_classes_of_the_two_joint_hamstrings():
    curve = catalogue.anatomy().curves["hamstrings_biarticular"]
    found: dict[str, list[str]] = {}
    for name in (name for names in CLASSES.values() for name in names):
        position = curve.position(lift(name).path)
        assert position is not None, name
        found.setdefault(length_class(position)[0], []).append(name)
    assert {kind: tuple(names) for kind, names in found.items()} == CLASSES


def test_a_deadlift_stands_too_near_the_limit_to_be_sure():
    """Its hamstrings work at about 0.60 of their range; the two skeletons differ by up to 0.12."""
    assert not lift("deadlift").length_is_sure("semitendinosus")
    assert lift("Romanian deadlift").length_is_sure("semitendinosus")


def test_only_hinges_and_hip_flexed_curls_train_the_hamstrings_surely_long():
    """Both skeletons reach 115 % of standing length only there; squats, hip thrusts and lying curls do not."""
    surely = [
        exercise
        for exercise in catalogue.exercises()
        if exercise.weight("semitendinosus")
        and exercise.lengths.get("semitendinosus") == "long"
        and exercise.length_is_sure("semitendinosus")
    ]
    assert len(surely) > 20
    for exercise in surely:
        assert not {"squat", "hip thrust", "lunge"} & set(exercise.patterns), exercise.name
        bent = exercise.path["hip"]
        assert max(bent) >= 60, exercise.name
        if "knee flexion" in exercise.actions:
            assert min(bent) >= 60, exercise.name
