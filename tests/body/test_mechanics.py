from __future__ import annotations

import pytest

from spotline.lint.body import catalogue
from spotline.lint.body.mechanics import Curve, along, full_path, length_class, mean_angle

RDL = full_path({"hip": [90, 0], "knee": 15, "ankle": 0})


def curve(name: str) -> Curve:
    return catalogue.anatomy().curves[name]


def test_a_single_number_is_held_throughout():
    assert full_path({"hip": [90, 45, 0], "knee": 15}) == {"hip": (90, 45, 0), "knee": (15, 15, 15)}


@pytest.mark.parametrize(
    ("path", "words"),
    [
        ({"hip": [140, 0]}, "hip at 140 degrees is out of range, -30 to 120"),
        ({"knee": [-5, 0]}, "knee at -5 degrees is out of range, 0 to 150"),
        ({"ankle": [30, 0]}, "ankle at 30 degrees is out of range, -40 to 25"),
        ({"shoulder": 190}, "shoulder at 190 degrees is out of range, -60 to 180"),
        ({"elbow": -1}, "elbow at -1 degrees is out of range, 0 to 150"),
        ({"hip": [90, 45, 0], "knee": [10, 0]}, "knee has 2 way-points where another joint has 3"),
        ({"wrist": 10}, "wrist is no joint of a path; those are hip, knee, ankle, shoulder, elbow"),
    ],
)
def test_faults_of_a_path(path, words):
    with pytest.raises(ValueError, match=words):
        full_path(path)


@pytest.mark.parametrize(
    ("name", "path", "net", "excursion", "position"),
    [
        ("hamstrings_biarticular", RDL, -8.3, 8.3, 0.68),
        ("rectus_femoris", RDL, 7.2, 7.2, 0.35),
        ("biceps_femoris_short", RDL, 0, 0, 0.89),
        ("hamstrings_biarticular", full_path({"hip": [80, 65, 0], "knee": [60, 20, 0]}), -2.5, 4.8, 0.68),
        ("vasti", full_path({"knee": [120, 0]}), -6.7, 6.7, 0.54),
        ("gastrocnemius", full_path({"knee": 0, "ankle": [20, -40]}), -4.4, 4.4, 0.72),
        ("gluteus_maximus", full_path({"hip": [110, 60]}), -2.2, 2.2, 0.91),
    ],
)
def test_net_excursion_and_position(name, path, net, excursion, position):
    """Computed from the leg model of rajagopal-2016; cubic against model, so within 0.15 cm and 0.02."""
    assert curve(name).net(path) == pytest.approx(net, abs=0.15)
    assert curve(name).excursion(path) == pytest.approx(excursion, abs=0.15)
    assert curve(name).position(path) == pytest.approx(position, abs=0.025)


def test_a_knee_beyond_120_degrees_is_taken_as_120():
    vasti = curve("vasti")
    assert vasti.length({"knee": 140}) == vasti.length({"knee": 120}) != vasti.length({"knee": 110})


def test_a_curve_does_not_reach_a_path_that_leaves_a_joint_open():
    assert not curve("hamstrings_biarticular").reaches({"hip": (90, 0)})
    assert curve("hamstrings_biarticular").position({"hip": (90, 0)}) is None
    assert curve("gluteus_maximus").reaches({"hip": (90, 0)})


def test_a_moving_shoulder_is_trusted_only_below_90_degrees():
    triceps = curve("triceps_long")
    assert not triceps.reaches({"shoulder": (60, 165), "elbow": (120, 5)})
    assert triceps.reaches({"shoulder": (165, 165), "elbow": (120, 5)})
    assert triceps.reaches({"shoulder": (-30, 60), "elbow": (120, 5)})


def test_a_muscle_without_a_range_has_no_position():
    assert curve("biceps_short").position({"shoulder": (0, 0), "elbow": (5, 125)}) is None


@pytest.mark.parametrize(
    ("position", "expected"),
    [
        (0.68, ("long", True)),
        (0.60, ("long", False)),
        (0.55, ("middle", False)),
        (0.50, ("middle", True)),
        (0.40, ("short", False)),
        (0.30, ("short", True)),
        (-0.05, ("short", True)),
        (1.05, ("long", True)),
    ],
)
def test_length_classes(position, expected):
    assert length_class(position) == expected


@pytest.mark.parametrize(
    ("position", "band", "sure"),
    [(0.50, 0.07, True), (0.50, 0.12, False), (0.72, 0.12, True), (0.70, 0.12, False)],
)
def test_a_wider_band_makes_fewer_classes_sure(position, band, sure):
    assert length_class(position, band)[1] is sure


@pytest.mark.parametrize(
    ("path", "doubt"),
    [
        ({"hip": [110, 0], "knee": [120, 0]}, True),  # a squat: -0.4 cm
        ({"hip": [80, 0], "knee": [60, 0]}, True),  # a deadlift: -2.6 cm
        ({"hip": [110, 60], "knee": [100, 5]}, False),  # a leg press: stretched by 4.2 cm
        ({"hip": [85, 0], "knee": [30, 0]}, False),  # a swing: -5.7 cm, beyond what models differ by
        ({"hip": [85, 0], "knee": [15, 0]}, False),  # the knee hardly stretches it
        ({"hip": [20, 0], "knee": 15}, False),  # one joint alone
        ({"hip": 10, "knee": [0, 100]}, False),
    ],
)
def test_models_differ_where_hip_and_knee_pull_both_ways(path, doubt):
    assert curve("hamstrings_biarticular").in_doubt(full_path(path)) is doubt


def test_a_curve_without_doubt_is_never_in_doubt():
    assert not curve("rectus_femoris").in_doubt(full_path({"hip": [110, 0], "knee": [120, 0]}))


def test_way_points_count_by_their_lines():
    path = full_path({"hip": [80, 40, 0]})
    assert len(along(path)) == 41
    assert mean_angle((80, 40, 0)) == 40
    assert mean_angle((90, 0, 0)) == 22.5
    assert mean_angle((30,)) == 30


def test_a_held_posture_is_one_posture():
    assert along(full_path({"hip": [80, 80], "knee": 90})) == [{"hip": 80, "knee": 90}]
    assert along({}) == [{}]
