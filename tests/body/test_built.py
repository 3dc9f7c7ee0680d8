"""The built form: every name leads to its exercise, and one exercise more is a small difference."""

from __future__ import annotations

import subprocess

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from spotline.lint.body import build, build_data, build_faults, built, catalogue
from spotline.lint.body.names import fold
from spotline.lint.body.rows import SHORT, line_of, lines_of

ENTRY = """\
- name: {name}
  also: [{also}]
  implement: dumbbell
  kind: dynamic
  stance: standing
  unilateral: false
  actions: [elbow flexion]
  assists: []
  path: {{shoulder: 0, elbow: [5, 125]}}
  axial: none
  level: novice
  rank: special
  capacity: light
  station: [dumbbell]
  hands: true
  easier: []
  harder: []
"""
ONE = ENTRY.format(name="quarry curl", also="stone curl, curl with a rock")
OTHER = ENTRY.format(name="harbour curl", also="rope-end curl, mooring curl, DB harbour curl")


@pytest.fixture(scope="module")
def data():
    return build_data.read()


@pytest.fixture(scope="module")
def added(data, tmp_path_factory):
    """The data with further entries, each put before an index of the catalogue."""

    def add(*entries):
        exercises = list(data["exercises"])
        for index, text in sorted(entries, reverse=True):
            path = tmp_path_factory.mktemp("entry") / "added.yaml"
            path.write_text(text, encoding="utf-8")
            exercises[index:index] = build_data.entries(str(path), "added.yaml")
        return {**data, "exercises": exercises}

    return add


@pytest.fixture(scope="module")
def rendered(added, tmp_path_factory):
    """The file of the built form, with further entries."""
    made = {}

    def render(*entries):
        if entries not in made:
            made[entries] = tmp_path_factory.mktemp("built") / "built.py"
            made[entries].write_text(build.render(added(*entries)), encoding="utf-8")
        return made[entries]

    return render


def test_the_added_entries_are_sound(added):
    assert build_faults.faults(added((0, ONE), (400, OTHER))) == []


def differing(old, new):
    """Lines that are only in the new file, and lines that are only in the old one."""
    told = subprocess.run(
        ["git", "diff", "--no-index", "--numstat", str(old), str(new)], capture_output=True, text=True
    )
    return tuple(map(int, told.stdout.split()[:2]))


def merged(ours, base, theirs):
    """The exit code, which is the number of conflicts, and the text of a merge of three files."""
    files = [str(ours), str(base), str(theirs)]
    done = subprocess.run(["git", "merge-file", "-p", *files], capture_output=True, text=True)
    return done.returncode, done.stdout


@pytest.mark.parametrize(
    ("index", "text", "names"), [(0, ONE, 3), (400, ONE, 3), (938, ONE, 3), (400, OTHER, 4)]
)
def test_one_exercise_more_adds_its_row_its_names_and_its_place_in_the_order(rendered, index, text, names):
    assert differing(rendered(), rendered((index, text))) == (1 + names + 1, 0)


@pytest.mark.parametrize(("ours", "theirs"), [(0, 938), (938, 0), (400, 402), (402, 400)])
def test_two_branches_that_add_one_each_merge_without_a_conflict(rendered, ours, theirs):
    one, other = (ours, ONE), (theirs, OTHER)
    conflicts, text = merged(rendered(one), rendered(), rendered(other))
    assert conflicts == 0
    assert text == rendered(one, other).read_text(encoding="utf-8")


def test_a_merge_that_cannot_be_clean_is_told(rendered, tmp_path):
    """The same exercise, added in two ways: the tests above can fail."""
    changed = tmp_path / "changed.py"
    changed.write_text(
        rendered((0, ONE)).read_text(encoding="utf-8").replace("novice\\tlight", "novice\\theavy")
    )
    conflicts, text = merged(rendered((0, ONE)), rendered(), changed)
    assert conflicts > 0
    assert "<<<<<<<" in text


def test_every_name_of_the_data_leads_to_its_exercise(data):
    for entry in data["exercises"]:
        for name in (entry["name"], *entry.get("also", ())):
            found = catalogue.exercise(name)
            assert found is not None, name
            assert found.name == entry["name"]
            assert found.aliases == tuple(entry.get("also", ()))


def test_exercises_come_in_the_order_of_the_data(data):
    wanted = [entry["name"] for entry in data["exercises"]]
    assert [exercise.name for exercise in catalogue.exercises()] == wanted
    assert list(lines_of(built.ORDER)) == wanted


def test_an_exercise_is_the_same_object_by_whichever_way_it_is_reached():
    for exercise in catalogue.exercises():
        assert catalogue.exercise(exercise.name) is exercise


def test_names_that_no_exercise_has_are_not_found():
    names = {line.partition("\t")[0] for line in lines_of(built.NAMES)}
    for name in names:
        for other in (name[:-1], f"{name}q", name[1:], f"a{name}"):
            assert (line_of(built.NAMES, other) != "") is (other in names)


def text_of(keys, length):
    """Lines of some length for keys, sorted, as the built form holds them."""
    return "\n" + "".join(sorted(f"{key}\t{fold(key) * length}\n" for key in keys))


KEYS = st.text(st.sampled_from("ab ~é"), min_size=1, max_size=6)


@given(st.sets(KEYS, max_size=40), KEYS, st.integers(0, SHORT))
@example({"a", "aaaaaa"}, "a", 570)
@example(set(), "a", 0)
def test_a_line_is_found_by_its_key_alone(keys, key, length):
    text = text_of(keys, length)
    assert line_of(text, key) == (f"{key}\t{fold(key) * length}" if key in keys else "")


@given(st.sets(KEYS, max_size=20))
def test_lines_come_one_after_the_other(keys):
    text = text_of(keys, 1)
    assert list(lines_of(text)) == text.split("\n")[1:-1]
