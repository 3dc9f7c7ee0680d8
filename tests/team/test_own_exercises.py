"""Exercises of a team's own: derived like the catalogue's, and wrong in its own file where they are wrong."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from spotline import schema as schemas
from spotline.lint.project.results import Review
from spotline.lint.syntax.builder import read
from spotline.lint.team.own_exercises import ExercisesFile
from spotline.lint.text.repository import FileResolver

PLAN = """\
programme: Boathouse
focus: [hamstrings]
sessions:
  - session: One
    exercises:
      - {exercise: Boathouse hinges, sets: 3, reps: 8, rir: 2}
      - {exercise: pier curl, sets: 2, reps: 8, rir: 2}
"""
OWN = """\
exercises:
  - name: boathouse hinge
    implement: sandbag
    path: {hip: [90, 0], knee: 15, ankle: 0}
  - name: plank-seat curl
    also: [pier curl]
    implement: sliders
    path: {hip: 60, knee: [10, 100]}
"""
SETTINGS = "exercises: [own.exercises.yaml]\n"


@pytest.fixture
def own(reviewed: Callable[..., Review]) -> Callable[[str], Review]:
    def run(exercises: str, settings: str = SETTINGS) -> Review:
        return reviewed(PLAN, {"own.exercises.yaml": exercises, "spotline.yaml": settings})

    return run


def test_they_count_like_the_catalogues(own: Callable[[str], Review]) -> None:
    result = own(OWN)
    (one,) = result.files
    assert [finding.rule for finding in one.findings] == []
    week = one.ledger.weeks[0]  # type: ignore[union-attr]
    # Two-joint hamstrings get both lines directly; the short head, which crosses the knee only, the curl.
    assert str(week.sets("semitendinosus")) == "5"
    assert str(week.sets("biceps femoris short head")) == "2"
    assert str(week.for_actions(("hip hinge",))) == "3"
    assert str(week.for_actions(("knee flexion",))) == "2"


@pytest.mark.parametrize(
    ("exercises", "rule", "line", "words"),
    [
        (
            "exercises:\n  - name: RDL\n    implement: barbell\n    path: {hip: [90, 0], knee: 15}\n",
            "name-taken",
            2,
            "`RDL` is Romanian deadlift of the catalogue already.",
        ),
        (
            OWN.replace("pier curl", "boathouse hinge"),
            "name-twice",
            6,
            "`boathouse hinge` stands in this file already.",
        ),
        (
            OWN.replace("knee: 15", "knee: [15, 20, 30]"),
            "exercise-impossible",
            4,
            "Hip has 2 way-points where another joint has 3.",
        ),
        (
            OWN.replace("hip: 60", "hip: 160"),
            "exercise-impossible",
            8,
            "Hip at 160 degrees is out of range, -30 to 120.",
        ),
        (
            OWN.replace("path: {hip: 60, knee: [10, 100]}", "actions: [knee bending]"),
            "exercise-impossible",
            8,
            "Knee bending is no joint action.",
        ),
        (
            OWN + "    credit: {vastus lateralis: {as: direct, because: I feel it}}\n",
            "exercise-impossible",
            9,
            "Vastus lateralis has none of the actions that this exercise loads.",
        ),
        (OWN.replace("sandbag", "sandbags"), "value-unknown", 3, "`sandbags` is not an implement."),
        ("exercises: [\n", "bracket-not-closed", 2, ""),
    ],
)
def test_what_is_wrong_is_said_in_their_file(
    own: Callable[[str], Review], exercises: str, rule: str, line: int, words: str
) -> None:
    result = own(exercises)
    found = {Path(one.name).name: one for one in result.files}["own.exercises.yaml"].findings
    assert [(finding.rule, finding.place.line) for finding in found] == [(rule, line)]
    assert words in found[0].counted


def test_a_sound_exercise_beside_a_wrong_one_is_known(own: Callable[[str], Review]) -> None:
    result = own(OWN.replace("sliders", "slider"))
    plan = result.files[0]
    every = [said for finding in plan.findings for said in (finding, *finding.follows)]
    (unknown,) = (finding for finding in every if finding.rule == "exercise-unknown")
    assert "pier curl" in unknown.counted


@pytest.mark.parametrize(
    ("settings", "rule"),
    [
        ("exercises: [gone.exercises.yaml]\n", "exercises-missing"),
        ("exercises: [../../own.exercises.yaml]\n", "exercises-outside"),
        ("exercises: [own.yaml]\n", "value-unreadable"),
    ],
)
def test_settings_that_name_no_file_of_exercises_are_broken(
    own: Callable[..., Review], settings: str, rule: str
) -> None:
    result = own(OWN, settings)
    assert result.exit_code == 2
    assert [finding.rule for finding in result.files[-1].findings] == [rule]


def test_a_file_is_reviewed_by_itself_too(tmp_path: Path) -> None:
    path = tmp_path / "own.exercises.yaml"
    path.write_text(OWN, encoding="utf-8")
    file = ExercisesFile(FileResolver().file(str(path)), read(str(path)))
    assert not file.findings
    assert [one.name for one in file.exercises] == ["boathouse hinge", "plank-seat curl"]


def test_the_team_may_say_of_an_exercise_what_the_catalogue_says() -> None:
    folder = Path(schemas.__file__).parent
    entry = json.loads((folder / "body-exercises.json").read_text(encoding="utf-8"))["items"]["properties"]
    theirs = schemas.load("exercises")["$defs"]["exercise"]["properties"]
    assert set(theirs) == set(entry) - {"sources"}
    for key, held in entry.items():
        if "enum" in held:
            assert theirs[key]["enum"] == held["enum"]
