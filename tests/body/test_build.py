from __future__ import annotations

import os
import re
import shutil

import pytest

from spotline.lint.body import build, build_data, build_faults

ENTRY = """\
- name: hinge on a step
  also: [step hinge]
  implement: barbell
  kind: dynamic
  stance: standing
  unilateral: false
  pattern: hip hinge
  actions: [hip extension]
  assists: [trunk extension]
  path: {hip: [90, 0], knee: 15, ankle: 0}
  axial: moderate
  level: novice
  capacity: heavy
  station: [barbell]
  hands: true
  easier: []
  harder: []
  rank: usual
"""

ELSEWHERE = """\
- language: German
  names:
    hinge on a step: [Überbeuge]
"""


@pytest.fixture
def folder(tmp_path):
    """A copy of the tables, with one exercise."""
    for table in build_data.TABLES:
        shutil.copy(os.path.join(build_data.DATA, f"{table}.yaml"), tmp_path)
    (tmp_path / "names-elsewhere.yaml").write_text(ELSEWHERE, encoding="utf-8")
    (tmp_path / "exercises").mkdir()
    (tmp_path / "exercises" / "own.yaml").write_text(ENTRY, encoding="utf-8")
    return tmp_path


def faults(folder, entry=ENTRY, **tables):
    (folder / "exercises" / "own.yaml").write_text(entry, encoding="utf-8")
    for table, (old, new) in tables.items():
        path = folder / f"{table}.yaml"
        text = path.read_text(encoding="utf-8")
        assert old in text
        path.write_text(text.replace(old, new, 1), encoding="utf-8")
    return build_faults.faults(build_data.read(str(folder)))


def test_the_data_has_no_faults_and_the_built_form_is_fresh():
    said = []
    assert build.main(["--check"], said.append) == 0
    assert said == ["built.py and built_names.py are up to date"]


def test_a_sound_entry_has_no_faults(folder):
    assert faults(folder) == []


def test_a_name_of_another_language_has_one_exercise_and_one_place(folder):
    other = ENTRY.replace("hinge on a step", "bow on a step").replace("step hinge", "stepped bow")
    wrong = ", über-beuge, Stéphinge]\n    bow on a step: [Ueberbeuge, Uberbeuge, Bogen]\n    bow: [Bug]"
    assert faults(folder, ENTRY + other, **{"names-elsewhere": ("]", wrong)}) == [
        "names-elsewhere.yaml:3: über-beuge is the same name again",
        "names-elsewhere.yaml:3: Stéphinge is a name of hinge on a step already",
        "names-elsewhere.yaml:4: Ueberbeuge also means hinge on a step",
        "names-elsewhere.yaml:4: Uberbeuge also means hinge on a step",
        "names-elsewhere.yaml:5: bow is no exercise of the catalogue",
    ]


def changed(old, new):
    assert old in ENTRY
    return ENTRY.replace(old, new)


@pytest.mark.parametrize(
    ("entry", "fault"),
    [
        (
            changed("[hip extension]", "[hip extending]"),
            "own.yaml:8: hinge on a step: hip extending is no joint action",
        ),
        (
            changed("[trunk extension]", "[trunk extending]"),
            "own.yaml:9: hinge on a step: trunk extending is no joint action",
        ),
        (
            changed("[trunk extension]", "[hip extension]"),
            "own.yaml:9: hinge on a step: hip extension is both a main and an assisting",
        ),
        (
            changed("hip: [90, 0]", "hip: [150, 0]"),
            "own.yaml:10: hinge on a step: hip at 150 degrees is out of range, -30 to 120",
        ),
        (
            changed("knee: 15", "knee: [15, 10, 5]"),
            "own.yaml:10: hinge on a step: hip has 2 way-points where another joint has 3",
        ),
        (
            changed("knee: 15", "knee: 90"),
            "own.yaml:7: hinge on a step: called a hip hinge, but its joint path is none",
        ),
        (changed("hip: [90, 0]", "hip: [2, 0]"), "own.yaml:8: hinge on a step: trains no muscle directly"),
        (
            changed("easier: []", "easier: [no such lift]"),
            "own.yaml:16: hinge on a step: no such lift is no other exercise",
        ),
        (
            changed("harder: []", "harder: [hinge on a step]"),
            "own.yaml:17: hinge on a step: hinge on a step is no other exercise",
        ),
        (
            changed("harder: []", "harder: []\n  sources: [kubo-2091]"),
            "own.yaml:18: there is no source kubo-2091",
        ),
        (
            changed("harder: []", "harder: []\n  credit:\n    soleus: {as: direct, because: a test}"),
            "own.yaml:19: hinge on a step: soleus has none of the actions that this exercise loads",
        ),
        (
            changed("harder: []", "harder: []\n  credit:\n    solus: {as: none, because: a test}"),
            "own.yaml:19: hinge on a step: solus is no muscle or group",
        ),
        (
            changed(
                "harder: []", "harder: []\n  credit:\n    gluteus maximus: {as: direct, because: a test}"
            ),
            "own.yaml:19: hinge on a step: credit for gluteus maximus is what derivation gives anyway",
        ),
        (
            changed("[step hinge]", "[Step-Hinges, step hinge]"),
            "own.yaml:2: hinge on a step: Step-Hinges is the same name again",
        ),
        (
            ENTRY + ENTRY.replace("hinge on a step", "another hinge"),
            "own.yaml:20: another hinge: step hinge also means hinge on a step (exercises/own.yaml:1)",
        ),
        (changed("kind: dynamic", "kind: slow"), "own.yaml:4: hinge on a step: kind: 'slow' is not one of"),
        (changed("  level: novice\n", ""), "own.yaml:1: hinge on a step: level is missing: add it"),
        (changed("  rank: usual\n", ""), "own.yaml:1: hinge on a step: rank is missing: add it"),
        (
            changed("rank: usual", "rank: common"),
            "own.yaml:18: hinge on a step: rank: 'common' is not one of ['staple', 'usual', 'special']",
        ),
        (changed("level:", "levle:"), "own.yaml:12: hinge on a step: levle is no key here: write level"),
        (
            changed("level:", "reps: 5\n  level:"),
            "own.yaml:12: hinge on a step: reps is no key here: take it out",
        ),
        (
            changed("  level:", "  axial: low\n  level:"),
            "own.yaml:12: hinge on a step: axial stands here a second time: take it out",
        ),
        (changed("actions: [hip extension]", "actions: []"), "own.yaml:8: hinge on a step: actions: []"),
        (
            changed("hands: true", "hands: yes please"),
            "own.yaml:15: hinge on a step: hands: 'yes please' is not of type 'boolean'",
        ),
    ],
)
def test_faults_of_an_entry_are_told_by_file_and_line(folder, entry, fault):
    found = faults(folder, entry)
    assert len(found) >= 1
    assert any(f"exercises/{fault}" in one for one in found), found


def test_all_keys_at_fault_are_told_at_once(folder):
    entry = """\
- name: hinge on a step
  also: step hinge
  implement: barbells
  kind: dynamic
  stnace: standing
  unilateral: false
  unilateral: true
  asists: [trunk extension]
  path: {hip: [90, 0], knees: 15, ankel: 0}
  axial: moderate
  sets: 3
  easier: []
  harder: []
  credit: {soleus: {as: some, becuase: a test}, gastrocnemius: none}
"""
    heads = [one.partition(": hinge on a step: ") for one in faults(folder, entry)]
    assert [(head.rpartition(":")[2], words) for head, _, words in heads] == [
        ("1", "actions is missing: add it"),
        ("1", "capacity is missing: add it"),
        ("1", "hands is missing: add it"),
        ("1", "level is missing: add it"),
        ("1", "rank is missing: add it"),
        ("1", "station is missing: add it"),
        ("2", "also: 'step hinge' is not of type 'array'"),
        ("3", heads[7][2]),
        ("5", "stnace is no key here: write stance"),
        ("7", "unilateral stands here a second time: take it out"),
        ("8", "asists is no key here: write assists"),
        ("9", "ankel is no key here: write ankle"),
        ("9", "knees is no key here: write knee"),
        ("11", "sets is no key here: take it out"),
        ("14", "as: 'some' is not one of ['direct', 'indirect', 'none']"),
        ("14", "becuase is no key here: write because"),
        ("14", "gastrocnemius: 'none' is not of type 'object'"),
    ]
    assert heads[7][2].startswith("implement: 'barbells' is not one of ['barbell', 'trap bar', ")
    assert {head.rpartition(":")[0] for head, _, _ in heads} == {"exercises/own.yaml"}


@pytest.mark.parametrize(
    ("table", "old", "new", "fault"),
    [
        ("muscles", "mechanics: soleus", "mechanics: soles", "soles is no length curve"),
        (
            "muscles",
            "acts: {plantarflexion: prime}",
            "acts: {plantar flexion: prime}",
            "plantar flexion is no joint action",
        ),
        (
            "muscles",
            "acts: {plantarflexion: prime}",
            "acts: {knee flexion: prime}",
            "soleus does not cross the joint of knee flexion",
        ),
        (
            "muscles",
            "- name: soleus",
            "- name: gastrocnemius",
            "gastrocnemius stands already at muscles.yaml",
        ),
        (
            "muscles",
            "sources: [anatomy-crossing, rajagopal-2016, le-vs-squat-2025]",
            "sources: [le-vs-squat-2052]",
            "there is no source le-vs-squat-2052",
        ),
        (
            "muscles",
            "sources: [kubo-2019, plotkin-2023]",
            "sources: [kubo-2019, plotkin-2032]",
            "there is no source plotkin-2032",
        ),
        ("muscles", "patterns: [squat]", "patterns: [squats]", "patterns: 'squats' is not one of"),
        ("muscles", "patterns: [squat]", "pattern: [squat]", "pattern is no key here: write patterns"),
        ("mechanics", "doubt: 2.5", "doubt: much", "doubt: 'much' is not of type 'number'"),
        ("actions", "opposes: hip flexion", "opposes: hip flexing", "hip flexing is no joint action"),
        ("mechanics", "source: arm26", "source: arm62", "there is no source arm62"),
        ("areas", "also: [hams", "also: [quads, hams", "quads already means"),
        (
            "areas",
            "of: [hamstrings, gluteals",
            "of: [hamstring, gluteals",
            "hamstring is no muscle, group, region or area",
        ),
        ("areas", "- {name: shins", "- {name: shin bones", "shin bones is no muscle, group or region"),
        (
            "pairs",
            "actions: [knee extension]",
            "actions: [knee extending]",
            "knee extending is no joint action",
        ),
        ("sources", "- id: kubo-2019", "- id: maeo-2021", "maeo-2021 stands already at sources.yaml"),
        ("sources", "grade: V2", "grade: V3", "grade: 'V3' is not one of"),
        (
            "muscles",
            "role: minor, because:",
            "role: minor, becuase:",
            "becuase is no key here: write because",
        ),
        (
            "areas",
            "{name: shins, also: [shin, dorsiflexors]}",
            "{name: shins}",
            "shins: also or of is missing: add one",
        ),
        ("mechanics", "least:", "laest:", "laest is no key here: write least"),
    ],
)
def test_faults_of_the_tables_are_told_by_file_and_line(folder, table, old, new, fault):
    found = faults(folder, **{table: (old, new)})
    assert any(re.match(rf"{table}\.yaml:\d+: ", one) and fault in one for one in found), found


def test_an_alias_that_two_exercises_share_names_both_places(folder):
    other = ENTRY.replace("hinge on a step", "hinge on a box")
    (folder / "exercises" / "second.yaml").write_text(other, encoding="utf-8")
    found = build_faults.faults(build_data.read(str(folder)))
    assert found == [
        "exercises/second.yaml:2: hinge on a box: step hinge also means hinge on a step (exercises/own.yaml:1)"
    ]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("name: bench\n", "own.yaml:1: a list of entries is wanted"),
        ("- bench\n", "own.yaml:1: an entry with keys is wanted"),
    ],
)
def test_files_of_the_wrong_shape(folder, text, words):
    (folder / "exercises" / "own.yaml").write_text(text, encoding="utf-8")
    with pytest.raises(ValueError, match=re.escape(words)):
        build_data.read(str(folder))


def test_rendering_is_the_same_every_time(folder):
    data = build_data.read(str(folder))
    assert build.render(data) == build.render(build_data.read(str(folder)))


def test_a_stale_built_form_is_told(monkeypatch):
    said = []
    monkeypatch.setattr(build, "current", lambda path: "something else")
    assert build.main(["--check"], said.append) == 1
    assert [line.split(":")[0] for line in said] == ["built.py is stale", "built_names.py is stale"]


def set_apart(monkeypatch, folder):
    """Lets the build write to a folder instead of the package."""
    paths = folder / "built.py", folder / "built_names.py"
    for name, path in zip(("BUILT", "BUILT_NAMES"), paths, strict=True):
        monkeypatch.setattr(build, name, str(path))
    return paths


def test_faults_stop_the_build(monkeypatch, folder):
    said = []
    (folder / "exercises" / "own.yaml").write_text(
        changed("axial: moderate", "axial: much"), encoding="utf-8"
    )
    monkeypatch.setattr(build_data, "DATA", str(folder))
    data = build_data.read(str(folder))
    monkeypatch.setattr(build, "read", lambda: data)
    built = set_apart(monkeypatch, folder)
    assert build.main([], said.append) == 1
    assert not any(path.exists() for path in built)
    assert "exercises/own.yaml:11: " in said[0]


def test_the_build_writes_the_built_form(monkeypatch, folder):
    said = []
    data = build_data.read(str(folder))
    monkeypatch.setattr(build, "read", lambda: data)
    built, names = set_apart(monkeypatch, folder)
    assert build.current(str(built)) == build.current(str(names)) == ""
    assert build.main([], said.append) == 0
    assert said == [f"1 exercises, {len(data['muscles'])} muscles, {len(data['sources'])} sources"]
    assert build.current(str(built)) == build.render(data)
    assert build.current(str(names)) == build.render_names(data)


@pytest.mark.parametrize("mark", ["\t", "\n", "|", "~"])
def test_marks_that_the_built_form_needs_cannot_stand_in_a_text(mark):
    from spotline.lint.body.build_rows import encode
    from spotline.lint.body.rows import FIELDS, WrittenFields

    fields = {name: getattr(WrittenFields({}, "\t" * (len(FIELDS) - 1)), name) for name in FIELDS}
    again = WrittenFields({}, encode(fields))
    assert {name: getattr(again, name) for name in FIELDS} == fields
    with pytest.raises(ValueError, match="fields"):
        WrittenFields({}, "a\tb")
    with pytest.raises(AttributeError):
        getattr(WrittenFields({}), next(iter(FIELDS)))
    with pytest.raises(ValueError, match="mark"):
        encode({**fields, "because": f"one{mark}two"})
