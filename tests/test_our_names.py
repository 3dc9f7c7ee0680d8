"""Names that a team or a programme gives to exercises: what they mean, and what is said where they are unclear."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline import schema as schemas
from spotline.lint.body.given_names import name_faults
from spotline.lint.body.known import Known
from spotline.lint.counting.ledger import Ledger
from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import Review

from .steps import growth

Text = Callable[..., str]
Findings = Callable[..., list[Finding]]

RULE = "our-name-unclear"
LINE = {"Gym": ["toe push, sets: 3"]}


def in_both(names: str) -> list[tuple[str, dict[str, str]]]:
    """The same names at the top of a programme, and in the team's settings."""
    return [(f"our names: {names}", {}), ("", {"spotline.yaml": f"our names: {names}\n"})]


@pytest.mark.parametrize(("head", "files"), in_both("{toe push: standing calf raise}"))
def test_a_name_means_what_it_is_said_to_mean(
    programme: Callable[..., Ledger], findings: Findings, week: Text, head: str, files: dict[str, str]
) -> None:
    text = week({"Gym": ["toe push, sets: 3", '"Toe-pushes (slow)", sets: 2']}, head)
    assert programme(text, files).weeks[0].sets("calves").high == 5
    assert findings(text, "exercise-unknown", files) == findings(text, RULE, files) == []


def test_a_programmes_name_comes_before_the_teams(programme: Callable[..., Ledger], week: Text) -> None:
    settings = {"spotline.yaml": "our names: {toe push: standing calf raise, shin pull: tibialis raise}\n"}
    ledger = programme(week({"Gym": ["toe push, sets: 3", "shin pull, sets: 2"]}), settings)
    assert [entry.exercise.name for _, entry in ledger.entries() if entry.exercise] == [
        "standing calf raise",
        "tibialis raise",
    ]
    text = week({"Gym": ["toe push, sets: 3", "shin pull, sets: 2"]}, "our names: {toe push: leg press}")
    assert [entry.exercise.name for _, entry in programme(text, settings).entries() if entry.exercise] == [
        "leg press",
        "tibialis raise",
    ]


def test_a_name_may_stand_for_an_exercise_of_the_teams_own(
    programme: Callable[..., Ledger], week: Text
) -> None:
    files = {
        "own.exercises.yaml": "exercises: [{name: pier curl, implement: cable, actions: [knee flexion]}]\n",
        "spotline.yaml": "exercises: [own.exercises.yaml]\nour names: {the pier: pier curl}\n",
    }
    (entry,) = (entry for _, entry in programme(week({"Gym": ["the pier, sets: 3"]}), files).entries())
    assert entry.exercise is not None
    assert entry.exercise.name == "pier curl"


UNCLEAR = [
    (
        "{toe push: standing calve riase}",
        "`toe push` means `standing calve riase`, which is no exercise that is known.",
        "Did you mean standing calf raise?",
        "standing calve riase",
    ),
    (
        "{toe push: the usual}",
        "`toe push` means `the usual`, which is no exercise that is known.",
        "Write an exercise of the catalogue or of your own.",
        "the usual",
    ),
    (
        "{Romanian deadlifts: stiff-leg deadlift}",
        "`Romanian deadlifts` means stiff-leg deadlift here, but it is the name of another exercise.",
        "Choose another name, or take it out.",
        "Romanian deadlifts",
    ),
    (
        "{toe push: leg press, toe-pushes: leg curl}",
        "`toe-pushes` stands here already.",
        "Give each name one meaning.",
        "toe-pushes",
    ),
]


@pytest.mark.parametrize(("names", "counted", "change", "excerpt"), UNCLEAR)
@pytest.mark.parametrize("where", [0, 1], ids=["programme", "settings"])
def test_what_is_unclear_is_said_once(
    reviewed: Callable[..., Review],
    week: Text,
    names: str,
    counted: str,
    change: str,
    excerpt: str,
    where: int,
) -> None:
    head, files = in_both(names)[where]
    result = reviewed(week({"Gym": ["leg press, sets: 3"]}, head), files)
    if where:
        said = [one for one in result.files[0].team.findings if one.rule == RULE]
    else:
        said = [one for one in result.files[0].findings if one.rule == RULE]
    (finding,) = said
    assert (finding.rule, finding.severity, finding.counted, finding.change, finding.place.excerpt) == (
        RULE,
        "warning",
        counted,
        change,
        excerpt,
    )


@pytest.mark.parametrize(
    ("name", "meant"),
    [("squat", "bodyweight squat"), ("RDL", "stiff-leg deadlift"), ("press", "dumbbell bench press")],
)
@pytest.mark.parametrize("where", [0, 1], ids=["programme", "settings"])
def test_a_short_word_is_the_teams_to_use(
    reviewed: Callable[..., Review], week: Text, name: str, meant: str, where: int
) -> None:
    head, files = in_both(f"{{{name}: {meant}}}")[where]
    (file, *_) = reviewed(week({"Gym": [f"{name}, sets: 3"]}, head), files).files
    assert file.ledger is not None
    assert [one.exercise.name for _, one in file.ledger.entries() if one.exercise] == [meant]
    assert RULE not in {one.rule for one in (*file.findings, *(file.team.findings if where else ()))}


@pytest.mark.parametrize(("head", "files"), in_both("{one: two, two: three, three: one}"))
def test_names_in_a_circle_mean_nothing(
    reviewed: Callable[..., Review], week: Text, head: str, files: dict[str, str]
) -> None:
    (file, *_) = reviewed(week({"Gym": ["one, sets: 3"]}, head), files).files
    assert file.ledger is not None
    assert [entry.exercise for _, entry in file.ledger.entries()] == [None]
    circle = [one.counted for one in file.findings if one.rule == RULE]
    assert circle == (
        [] if files else [f"`{a}` means `{b}`, which is a name of yours itself." for a, b in CIRCLE]
    )


CIRCLE = (("one", "two"), ("two", "three"), ("three", "one"))


def test_steps_grow_with_the_number_of_names() -> None:
    def named(count: int) -> Callable[[], object]:
        pairs = [(f"drill {number}", "leg press" if number % 2 else "x" * 500) for number in range(count)]
        return lambda: list(name_faults(pairs, Known()))

    assert growth(named, 100) < 2.3


def test_both_kinds_of_file_take_names_in_one_form() -> None:
    programme, team = schemas.load("programme")["$defs"], schemas.load("team")["$defs"]
    for key in ("ourNames", "exerciseName"):
        assert programme[key] == team[key]
