from __future__ import annotations

import dis
import subprocess
import sys

import pytest

from spotline.lint.body import build, built, catalogue
from spotline.lint.body.known import CATALOGUE
from spotline.lint.body.names import fold
from spotline.lint.body.near_areas import nearest_areas
from spotline.lint.body.nearest import nearest
from spotline.tests.steps import steps


@pytest.mark.parametrize(
    ("written", "name"),
    [
        ("Romanian deadlift", "Romanian deadlift"),
        ("romanian deadlifts", "Romanian deadlift"),
        ("RDL", "Romanian deadlift"),
        ("Push-Ups", "push-up"),
        ("push ups", "push-up"),
        ("pushup", "push-up"),
        ("leg curls", "lying leg curl"),
        ("Bulgarian split squat", "rear-foot-elevated split squat"),
        ("overhead presses", "overhead press"),
        ("dead lift", "deadlift"),
    ],
)
def test_names_and_aliases_are_found_however_they_are_written(written, name):
    found = catalogue.exercise(written)
    assert found is not None
    assert found.name == name
    assert catalogue.exercise(written) is found


@pytest.mark.parametrize("written", ["", " ", "-", "leg", "deadliftx", "xrdl", "\n", "\t0", "deadlift 3"])
def test_what_is_no_name_is_not_found(written):
    assert catalogue.exercise(written) is None


@pytest.mark.parametrize(
    ("one", "other", "same"),
    [
        ("press", "presses", True),
        ("triceps", "tricep", True),
        ("fly", "flies", True),
        ("crunches", "crunch", True),
        ("Farmer's carry", "farmers carry", True),
        ("boxes", "box", True),
        ("press", "pres", False),
        ("abs", "ab", True),
        ("as", "a", False),
    ],
)
def test_folding(one, other, same):
    assert (fold(one) == fold(other)) is same


@pytest.mark.parametrize(
    ("written", "wanted"),
    [
        ("bulgarian split", "rear-foot-elevated split squat"),
        ("leg cuurl", "lying leg curl"),
        ("back sqat", "back squat"),
        ("hip trust", "hip thrust"),
        ("romainian deadlift", "Romanian deadlift"),
        ("latral raise", "lateral raise"),
        ("benchpres", "bench press"),
        ("seated calve raise", "seated calf raise"),
    ],
)
def test_nearest_names(written, wanted):
    assert catalogue.exercise(written) is None
    meant = CATALOGUE.exercise(written)
    nearest = [meant.name] if meant else CATALOGUE.nearest(written)
    assert wanted in nearest
    assert len(nearest) <= 3


@pytest.mark.parametrize("written", ["", "xyz", "foo bar baz", "qqqq wwww"])
def test_nothing_near(written):
    assert CATALOGUE.exercise(written) is None
    assert CATALOGUE.nearest(written) == []


def test_the_catalogue_is_broad_enough():
    """At least 320 exercises, over all sorts of work and implements."""
    exercises = catalogue.exercises()
    assert len(exercises) >= 320
    assert {e.kind for e in exercises} == set(catalogue.KINDS)
    wanted = {
        "barbell",
        "dumbbell",
        "kettlebell",
        "machine",
        "cable",
        "band",
        "bodyweight",
        "sled",
        "medicine ball",
    }
    for implement in wanted:
        assert sum(e.implement == implement for e in exercises) >= 5, implement
    for kind in ("isometric", "plyometric"):
        assert sum(e.kind == kind for e in exercises) >= 15, kind


def test_every_muscle_is_trained_directly_by_some_exercise_or_helps():
    direct = {muscle for e in catalogue.exercises() for muscle in e.direct}
    indirect = {muscle for e in catalogue.exercises() for muscle in e.indirect}
    assert set(catalogue.muscles()) == direct | indirect
    for group, members in catalogue.groups.items():
        assert direct & set(members), group


def test_fields_of_an_exercise():
    curl = catalogue.exercise("seated leg curl")
    assert curl is not None
    assert (curl.implement, curl.kind, curl.stance) == ("machine", "dynamic", "seated")
    assert curl.actions == ("knee flexion",)
    assert curl.path["knee"][0] < curl.path["knee"][-1]
    assert curl.weight("semitendinosus") == 1
    assert curl.weight("gracilis") == 0.5
    assert curl.weight("gracilis", indirect=0.25) == 0.25
    assert curl.weight("soleus") == 0
    assert curl.lengths["semitendinosus"] == "long"
    assert curl.length_is_sure("semitendinosus")
    assert repr(curl) == "<seated leg curl>"


def test_patterns_hold_what_the_path_shows():
    bridge = catalogue.exercise("long-lever bridge")
    assert bridge is not None
    assert bridge.pattern == "hip thrust"
    assert bridge.patterns == ("hip thrust", "hip hinge")
    squat = catalogue.exercise("back squat")
    assert squat is not None
    assert squat.patterns == ("squat",)


@pytest.mark.parametrize(
    ("written", "muscles"),
    [
        ("glutes", ("gluteus maximus", "gluteus medius", "gluteus minimus")),
        (
            "Hams",
            ("biceps femoris long head", "semitendinosus", "semimembranosus", "biceps femoris short head"),
        ),
        ("soleus", ("soleus",)),
        ("rear delts", ("posterior deltoid",)),
        ("pecs", ("clavicular chest", "sternocostal chest")),
        ("calf", ("gastrocnemius", "soleus")),
    ],
)
def test_areas(written, muscles):
    assert catalogue.area(written) == muscles


def test_wide_areas():
    assert catalogue.area("nonsense") is None
    whole = catalogue.area("whole body")
    lower, upper, trunk = (catalogue.area(name) for name in ("lower body", "upper body", "core"))
    assert whole == tuple(catalogue.muscles())
    assert lower is not None
    assert upper is not None
    assert trunk is not None
    assert not set(lower) & set(upper)
    assert "rectus abdominis" in trunk
    assert "erector spinae" in trunk
    for name in catalogue.area_names():
        assert catalogue.area(name), name
    assert nearest_areas("hamstrigns") == ["hamstrings"]
    assert nearest_areas("quadz") == ["quadriceps"]


def test_seven_regions_and_the_neck():
    """us-pag-2018 names seven regions."""
    assert catalogue.major_regions == (
        "legs",
        "hips",
        "back",
        "chest",
        "shoulders",
        "arms",
        "abdomen",
    ) or set(catalogue.major_regions) == {"legs", "hips", "back", "chest", "abdomen", "shoulders", "arms"}
    assert set(catalogue.regions) == {*catalogue.major_regions, "neck"}
    assert sum(map(len, catalogue.regions.values())) == len(catalogue.muscles())


def test_actions_oppose_each_other():
    actions = catalogue.actions()
    for action in actions.values():
        if action.opposes is not None:
            assert actions[action.opposes].opposes == action.name
            assert actions[action.opposes].joint == action.joint
    assert all(action in {a for m in catalogue.muscles().values() for a in m.acts} for action in actions)


def test_pairs_hold_known_actions_and_patterns():
    patterns = {pattern for e in catalogue.exercises() for pattern in e.patterns}
    for pair in catalogue.pairs:
        assert len(pair.sides) == 2
        for side in pair.sides:
            assert side.trained_by
            assert set(side.trained_by) <= set(catalogue.actions()) | patterns
            assert catalogue.area(side.area)
    thigh = catalogue.pairs[0]
    assert thigh.serious
    assert [pair.serious for pair in catalogue.pairs[1:]] == [False] * (len(catalogue.pairs) - 1)


def test_sources():
    kubo = catalogue.source("kubo-2019")
    assert (kubo.kind, kubo.grade) == ("growth trial", "V")
    assert "Eur J Appl Physiol" in kubo.reference
    with pytest.raises(KeyError):
        catalogue.source("nobody-1900")
    for id in catalogue.source_ids():
        source = catalogue.source(id)
        assert source.grade in ("V", "V2", "C", "M")
        assert source.grade != "M" or "memory" in source.read or "not found" in source.read
        assert source.kind != "common practice" or "no source" in source.short


def test_easier_and_harder_forms_exist():
    for exercise in catalogue.exercises():
        for name in (*exercise.easier, *exercise.harder):
            other = catalogue.exercise(name)
            assert other is not None
            assert other.name == name != exercise.name


def test_one_exercise_is_made_without_going_through_the_others():
    """Lines that are run in a fresh process; to make all 900 takes some hundred thousand."""
    code = (
        "import sys, spotline.lint\n"
        "ours = spotline.lint.__path__[0]\n"
        "count = 0\n"
        "def line(frame, event, argument):\n"
        "    global count\n"
        "    count += event == 'line' and frame.f_code.co_filename.startswith(ours)\n"
        "    return line\n"
        "sys.settrace(line)\n"
        "from spotline.lint.body import catalogue\n"
        "catalogue.exercise('deadlift')\n"
        "sys.settrace(None)\n"
        "print(count)\n"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, check=True)
    assert 100 < int(done.stdout) < 3_000


def test_the_built_form_is_data_alone():
    """Nothing is worked out when it is loaded: no call, no loop."""
    with open(build.BUILT, encoding="utf-8") as file:
        code = compile(file.read(), build.BUILT, "exec")
    done = {step.opname for step in dis.get_instructions(code)}
    assert not {name for name in done if name.startswith(("CALL", "FOR", "GET_ITER", "BINARY", "MAKE"))}


def test_one_profile_takes_few_steps():
    """Nine in ten of the catalogue."""
    catalogue.anatomy()
    counts = sorted(steps(exercise.profile) for exercise in catalogue.exercises()[::5])
    assert counts[len(counts) * 9 // 10] < 2_000


def test_loading_needs_no_heavy_module():
    code = (
        "import sys, spotline.lint\n"
        "before = set(sys.modules)\n"
        "from spotline.lint.body import catalogue\n"
        "catalogue.exercise('deadlift').weight('soleus')\n"
        "print(sorted(m for m in set(sys.modules) - before if not m.startswith('spotline.lint.body')))\n"
    )
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert ran.stdout.strip() == "[]"


def test_exercises_are_made_once_and_only_when_asked_for():
    assert isinstance(built.EXERCISES, str)
    assert catalogue.exercise("deadlift") is catalogue.exercise("deadlifts")


@pytest.mark.parametrize(
    ("name", "is_group"),
    [
        ("hamstrings", True),
        ("hams", True),
        ("biceps femoris short head", True),
        ("gastrocnemius", True),
        ("legs", False),
        ("lower leg", False),
        ("trunk", False),
        ("no such muscle", False),
    ],
)
def test_groups_and_their_parts(name, is_group):
    assert catalogue.is_group(name) is is_group


@pytest.mark.parametrize(
    ("one", "other", "close"),
    [
        ("back squat", "back squat", True),
        ("back squat", "front squat", True),  # same movement, same implement
        ("back squat", "goblet squat", True),  # the next easier form
        ("back squat", "leg press", False),
        ("back squat", "deadlift", False),
        ("bench press", "incline bench press", True),
        ("bench press", "push-up", False),
        ("bench press", "overhead press", False),
        ("deadlift", "trap bar deadlift", True),  # the next easier form
        ("deadlift", "dumbbell Romanian deadlift", False),
        ("pull-up", "weighted pull-up", True),  # the next harder form
        ("barbell curl", "preacher curl", True),  # no pattern: same actions, same implement
        ("barbell curl", "hammer curl", False),
        ("barbell curl", "wrist curl", False),
    ],
)
def test_close_variants(one, other, close):
    lifts = catalogue.exercise(one), catalogue.exercise(other)
    assert lifts[0].is_close_to(lifts[1]) is close
    assert lifts[1].is_close_to(lifts[0]) is close


def test_what_is_typed_is_not_kept_for_good() -> None:
    for number in range(6000):
        assert catalogue.exercise(f"no such lift {number}") is None
        assert catalogue.area(f"no such part {number}") is None
    for remembered in (catalogue.exercise, catalogue.area):
        assert remembered.cache_info().currsize < 6000
    assert CATALOGUE.nearest("back sqat") is not CATALOGUE.nearest("back sqat")


def test_a_name_without_a_word_is_near_to_none() -> None:
    assert nearest("plank", [("-", "-"), ("planck", "planck"), ("'", "'")], 3) == ["planck"]
    assert nearest("-", [("-", "-"), ("plank", "plank")], 3) == []
