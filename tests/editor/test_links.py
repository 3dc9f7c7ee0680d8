"""Where a name leads and where it is used: athletes' files, a team's own exercises, anchors, lines."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spotline.lint.editor.documents.answers import Location
from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.editor.features.links import definition, references
from spotline.lint.project.workspace import Workspace

Open = Callable[..., Snapshot]
Example = Callable[..., Snapshot]

IDA = "# the first of us\nname: Ida\nbest lifts: {back squat: 100 kg}\n"
OWN = """\
exercises:
  - {name: boat pull, also: [skiff row], implement: cable, actions: [shoulder extension]}
  - {name: boat push, implement: cable, actions: [shoulder flexion], easier: [boat pull]}
"""
PLAN = """\
programme: Winter
athlete: ida.athlete.yaml
shared:
  heavy: &heavy {reps: 4, rest: 3 min}
  pulls: &pulls
    - {exercise: boat pull, sets: 3, reps: 8}
sessions:
  - session: A
    exercises:
      - {exercise: Back squats, sets: 3, <<: *heavy}
      - {exercise: {1: skiff row, 2: dip}, sets: 3, reps: 8, or: [boat-pull, squat]}
  - session: B
    exercises: *pulls
  - session: C
    exercises: [{exercise: deadlift, sets: 2, <<: *heavy}]
weeks: 2
"""
OTHER = """\
programme: Spring
athletes:
  - athlete: ida.athlete.yaml
    adjust: [{exercise: back squat, swap: boat pull}]
  - zoe.athlete.yaml
sessions: [{session: A, exercises: [{exercise: BACK SQUAT, sets: 3, reps: 5}]}]
"""
ZOES = "programme: Zoe's\nathlete: zoe.athlete.yaml\nsessions: [{session: A, exercises: [{exercise: back squat, sets: 3}]}]\n"
TEAM = "exercises: [own.exercises.yaml]\n"
BESIDE = {
    "ida.athlete.yaml": IDA,
    "zoe.athlete.yaml": "name: Zoe\n",
    "own.exercises.yaml": OWN,
    "other.programme.yaml": OTHER,
    "zoes.programme.yaml": ZOES,
    "spotline.yaml": TEAM,
}


@pytest.fixture(scope="module")
def snapshot(opened: Open) -> Snapshot:
    return opened(PLAN, BESIDE)


@pytest.fixture
def at(opened: Open) -> Callable[..., Snapshot]:
    """Opens one of the files, the others beside it."""

    def run(name: str, **more: str) -> Snapshot:
        files = {**BESIDE, "plan.programme.yaml": PLAN}
        return opened(files.pop(name), files, name=name, **more)

    return run


def told(found: list[Location]) -> list[tuple[str, int, str]]:
    """File, line and words of each place."""
    for one in found:
        assert Path(one.text.name).name == Path(one.path).name
    return [
        (Path(one.path).name, one.text.position(one.start)[0], one.text.content[one.start : one.end])
        for one in found
    ]


def leads(snapshot: Snapshot, needle: str, within: int = 1) -> list[tuple[str, int, str]]:
    return told(definition(snapshot, snapshot.text.content.index(needle) + within))


def used(
    snapshot: Snapshot, needle: str, within: int = 1, declaration: bool = False
) -> list[tuple[str, int, str]]:
    return told(references(snapshot, snapshot.text.content.index(needle) + within, declaration))


# Where it leads


def test_an_athletes_path_leads_to_the_name_in_the_file(snapshot: Snapshot) -> None:
    assert leads(snapshot, "ida.athlete") == [("ida.athlete.yaml", 2, "Ida")]


def test_so_do_the_paths_of_several_athletes(at: Callable[..., Snapshot]) -> None:
    other = at("other.programme.yaml")
    assert leads(other, "ida.athlete") == [("ida.athlete.yaml", 2, "Ida")]
    assert leads(other, "zoe.athlete") == [("zoe.athlete.yaml", 1, "Zoe")]


def test_an_exercise_of_the_teams_own_leads_to_its_entry(snapshot: Snapshot) -> None:
    entry = [("own.exercises.yaml", 2, "boat pull")]
    assert leads(snapshot, "boat pull") == entry
    assert leads(snapshot, "skiff row") == entry
    assert leads(snapshot, "boat-pull") == entry


def test_a_swap_and_an_easier_form_lead_there_too(at: Callable[..., Snapshot]) -> None:
    assert leads(at("other.programme.yaml"), "boat pull") == [("own.exercises.yaml", 2, "boat pull")]
    assert leads(at("own.exercises.yaml"), "easier: [boat", 10) == [("own.exercises.yaml", 2, "boat pull")]


@pytest.mark.parametrize(
    ("needle", "line", "words"), [("*heavy", 4, "&heavy"), ("*pulls", 5, "&pulls"), ("&heavy", 4, "&heavy")]
)
def test_an_alias_leads_to_its_anchor(snapshot: Snapshot, needle: str, line: int, words: str) -> None:
    for within in range(len(needle) + 1):
        assert leads(snapshot, needle, within) == [("plan.programme.yaml", line, words)]


def test_the_settings_lead_to_the_teams_exercises(at: Callable[..., Snapshot]) -> None:
    assert leads(at("spotline.yaml"), "own.exercises") == [("own.exercises.yaml", 1, "")]


@pytest.mark.parametrize("needle", ["Winter", "deadlift", "session: A", "3 min", "sets", "weeks"])
def test_other_words_lead_nowhere(snapshot: Snapshot, needle: str) -> None:
    assert leads(snapshot, needle) == []


@pytest.mark.parametrize(
    "path", ["../ida.athlete.yaml", "missing.athlete.yaml", "ida.yaml", "x\\0.athlete.yaml"]
)
def test_a_path_that_is_none_leads_nowhere(opened: Open, path: str) -> None:
    snapshot = opened(PLAN.replace("ida.athlete.yaml", f'"{path}"'), BESIDE)
    assert definition(snapshot, snapshot.text.content.index("athlete: ") + 12) == []


def test_a_rule_in_the_settings_leads_nowhere(opened: Open) -> None:
    snapshot = opened("rules: {exercise-twice: skip}\n", name="spotline.yaml")
    assert definition(snapshot, 12) == []
    assert references(snapshot, 12, True) == []


def test_an_anchor_is_the_last_of_its_name_above(opened: Open) -> None:
    text = "shared:\n  - &a 1\n  - *a\n  - &a 2\n  - *a # *a\n  - '*a'\n"
    snapshot = opened("programme: x\n" + text)
    assert leads(snapshot, "*a\n  - &a 2") == [("plan.programme.yaml", 3, "&a")]
    assert leads(snapshot, "*a # *a") == [("plan.programme.yaml", 5, "&a")]
    assert leads(snapshot, "*a # *a", 5) == []
    assert leads(snapshot, "'*a'", 2) == []


def test_an_alias_leads_on_while_the_text_cannot_be_read(at: Callable[..., Snapshot]) -> None:
    broken = PLAN.replace("deadlift, sets: 2, <<: *heavy}", "deadlift, sets: [2, <<: *heavy")
    snapshot = at("plan.programme.yaml", now=broken)
    assert snapshot.review.reading.root is None
    assert leads(snapshot, "*heavy") == [("plan.programme.yaml", 4, "&heavy")]
    assert leads(snapshot, "ida.athlete") == [("ida.athlete.yaml", 2, "Ida")]


# Where it is used


def test_the_uses_of_an_anchor(snapshot: Snapshot) -> None:
    uses = [("plan.programme.yaml", 10, "*heavy"), ("plan.programme.yaml", 15, "*heavy")]
    assert used(snapshot, "&heavy") == uses
    assert used(snapshot, "*heavy") == uses
    assert used(snapshot, "&heavy", declaration=True) == [("plan.programme.yaml", 4, "&heavy"), *uses]


def test_the_programmes_of_an_athlete(at: Callable[..., Snapshot]) -> None:
    uses = {("plan.programme.yaml", 2, "ida.athlete.yaml"), ("other.programme.yaml", 3, "ida.athlete.yaml")}
    ida = at("ida.athlete.yaml")
    assert set(used(ida, "Ida")) == uses
    assert set(used(ida, "Ida", declaration=True)) == uses | {("ida.athlete.yaml", 2, "Ida")}
    assert used(ida, "100 kg") == []
    assert set(used(at("plan.programme.yaml"), "ida.athlete")) == uses


def test_the_lines_of_a_teams_exercise_in_the_whole_repository(at: Callable[..., Snapshot]) -> None:
    uses = {
        ("plan.programme.yaml", 6, "boat pull"),
        ("plan.programme.yaml", 11, "skiff row"),
        ("plan.programme.yaml", 11, "boat-pull"),
        ("other.programme.yaml", 4, "boat pull"),
    }
    own = at("own.exercises.yaml")
    assert set(used(own, "boat pull")) == uses
    assert set(used(own, "skiff row")) == uses
    assert set(used(own, "boat pull", declaration=True)) == uses | {("own.exercises.yaml", 2, "boat pull")}
    assert set(used(at("plan.programme.yaml"), "boat pull")) == uses


def test_the_lines_of_an_exercise_in_the_athletes_programmes(snapshot: Snapshot) -> None:
    assert used(snapshot, "Back squats") == [
        ("plan.programme.yaml", 10, "Back squats"),
        ("plan.programme.yaml", 11, "squat"),
        ("other.programme.yaml", 4, "back squat"),
        ("other.programme.yaml", 6, "BACK SQUAT"),
    ]
    assert used(snapshot, "deadlift") == [("plan.programme.yaml", 15, "deadlift")]


def test_a_best_lift_is_found_in_no_programme_of_somebody_else(at: Callable[..., Snapshot]) -> None:
    assert used(at("ida.athlete.yaml"), "back squat") == []


def test_open_texts_come_before_the_disk(opened: Open, today: object) -> None:
    snapshot = opened(OWN, {**BESIDE, "plan.programme.yaml": PLAN}, name="own.exercises.yaml")
    folder = Path(snapshot.path).parent
    snapshot.workspace.overlay.open(str(folder / "plan.programme.yaml"), PLAN.replace("skiff row", "dip"))
    snapshot.workspace.overlay.open(
        str(folder / "new.programme.yaml"),
        "programme: x\nsessions: [{session: A, exercises: [{exercise: skiff row}]}]\n",
    )
    found = [one[:2] for one in used(snapshot, "boat pull")]
    assert ("new.programme.yaml", 2) in found
    assert found.count(("plan.programme.yaml", 11)) == 1
    assert found[0][0] in ("plan.programme.yaml", "new.programme.yaml")


def test_uses_in_a_text_that_cannot_be_read_are_those_that_still_stand(at: Callable[..., Snapshot]) -> None:
    snapshot = at("plan.programme.yaml", now=PLAN.replace("sets: 2, <<", "sets: [2, <<"))
    assert [one for one in used(snapshot, "Back squats") if one[0] == "plan.programme.yaml"] == [
        ("plan.programme.yaml", 10, "Back squats"),
        ("plan.programme.yaml", 11, "squat"),
    ]


def test_the_examples(example: Example) -> None:
    mara = example("mara-lower-body-first.programme.yaml")
    assert leads(mara, "../athletes") == [("mara.athlete.yaml", 1, "Mara")]
    assert used(mara, "leg extension") == [
        ("mara-lower-body-first.programme.yaml", line, "leg extension") for line in (32, 53)
    ]
    juno = example("juno-two-a-days.programme.yaml")
    assert leads(juno, "*easy") == [("juno-two-a-days.programme.yaml", 12, "&easy")]
    assert len(used(juno, "&easy")) == juno.text.content.count("*easy")


def test_a_text_without_a_file(today: object) -> None:
    from spotline.lint.project.review import review_on
    from spotline.lint.text.places import Text

    workspace = Workspace(today)
    workspace.overlay.open("untitled.programme.yaml", PLAN)
    one = review_on(workspace, ["untitled.programme.yaml"]).files[0]
    snapshot = Snapshot(
        one.reading.text if one.reading else Text("", ""), "untitled.programme.yaml", one, one, workspace
    )
    assert leads(snapshot, "*heavy")[0][1:] == (4, "&heavy")
    assert leads(snapshot, "ida.athlete") == []
    assert used(snapshot, "deadlift")[0][1:] == (15, "deadlift")


SCRAPS = (
    "\n",
    ": ",
    "{",
    "}",
    "[",
    "]",
    "&a ",
    "*a",
    "'",
    '"',
    "\t",
    "é",
    "\r\n",
    "<<: *heavy",
    "exercise: ",
    "a.athlete.yaml",
)


@settings(max_examples=80)
@given(data=st.data())
def test_no_text_makes_it_fail(opened: Open, data: st.DataObject) -> None:
    name, text = data.draw(
        st.sampled_from(
            [("plan.programme.yaml", PLAN), ("ida.athlete.yaml", IDA), ("own.exercises.yaml", OWN)]
        )
    )
    broken = text
    for _ in range(data.draw(st.integers(0, 3))):
        start = data.draw(st.integers(0, len(broken)))
        broken = (
            broken[:start]
            + data.draw(st.sampled_from(SCRAPS))
            + broken[start + data.draw(st.integers(0, 20)) :]
        )
    snapshot = opened(text, {key: held for key, held in BESIDE.items() if key != name}, name=name, now=broken)
    for _ in range(4):
        offset = data.draw(st.integers(0, len(snapshot.text.content)))
        for one in (*definition(snapshot, offset), *references(snapshot, offset, True)):
            assert 0 <= one.start <= one.end <= len(one.text.content)
