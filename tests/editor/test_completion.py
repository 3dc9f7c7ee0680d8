"""What is offered while a coach types: never what the review would then call an error."""

from __future__ import annotations

import os
import re
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spotline.lint.body import catalogue, equipment
from spotline.lint.editor.caret.exercise_prefixes import matching_exercises
from spotline.lint.editor.documents.answers import Completion
from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.editor.features.completion import complete
from spotline.lint.project.results import FileReview
from spotline.lint.project.review import review_on
from spotline.lint.project.workspace import Workspace
from spotline.lint.text.places import Text
from spotline.tests.steps import growth, steps

from .test_context_finder import WRITTEN

PLAN = """\
programme: Winter
athlete: ida.athlete.yaml
weeks: 6
sessions:
  - session: A
    exercises:
      - exercise: goblet squat
        sets: 3
        reps: 8
"""
IDA = "name: Ida\nequipment: [dumbbells, bench, home]\n"
OWN = (
    "exercises:\n  - {name: boat pull, also: [skiff row], implement: cable, actions: [shoulder extension]}\n"
)
TEAM = "exercises: [own.exercises.yaml]\nequipment: {home: [band, pull-up bar]}\n"
BESIDE = {
    "ida.athlete.yaml": IDA,
    "zoe.athlete.yaml": "name: Zoe\n",
    "own.exercises.yaml": OWN,
    "spotline.yaml": TEAM,
}


class Room:
    """A repository in which texts are typed."""

    def __init__(self, folder: Path, today: object) -> None:
        (folder / ".git").mkdir()
        for name, content in {**BESIDE, "plan.programme.yaml": PLAN}.items():
            (folder / name).write_text(content, encoding="utf-8")
        self.folder = folder
        self.today = today
        self.workspace = Workspace(today)
        self.good: dict[str, FileReview] = {}
        self.snapshot(PLAN)

    def snapshot(self, text: str, name: str = "plan.programme.yaml") -> Snapshot:
        path = str(self.folder / name)
        self.workspace.overlay.open(path, text)
        if self.workspace.stale():
            self.workspace = Workspace(self.today, self.workspace.rules, self.workspace.overlay)
        real = os.path.realpath(path)
        one = next(
            one for one in review_on(self.workspace, [path]).files if os.path.realpath(one.name) == real
        )
        assert not one.faults, [fault.words for fault in one.faults]
        if one.ledgers:
            self.good[name] = one
        return Snapshot(
            one.reading.text if one.reading else Text(path, text),
            path,
            one,
            self.good.get(name),
            self.workspace,
        )

    def close(self, name: str) -> None:
        self.workspace.overlay.close(str(self.folder / name))

    def offers(self, text: str, name: str = "plan.programme.yaml") -> list[Completion]:
        """What is offered at the bar in a text."""
        before, after = text.split("|", 1)
        found = complete(self.snapshot(before + after, name), len(before))
        for one in found:
            assert one.start <= len(before) <= one.end <= len(before + after)
            assert "\n" not in (before + after)[one.start : one.end]
            assert "\n" not in one.insert
        assert [one.sort_text for one in found] == sorted(one.sort_text for one in found)
        return found

    def labels(self, text: str, name: str = "plan.programme.yaml") -> list[str]:
        return [one.label for one in self.offers(text, name)]

    def errors(self, text: str, name: str) -> set[tuple[str, str]]:
        found = self.snapshot(text, name).review.findings
        return {(one.rule, one.counted) for one in found if one.severity == "error"}


@pytest.fixture
def room(tmp_path: Path, today: object) -> Room:
    return Room(tmp_path, today)


def applied(text: str, offer: Completion) -> str:
    """A text with the bar, after a proposal was taken; the bar stands behind it."""
    whole = text.replace("|", "", 1)
    return f"{whole[: offer.start]}{offer.insert}|{whole[offer.end :]}"


# Keys and values that the schema knows


def test_keys_of_a_programme(room: Room) -> None:
    found = room.offers("|")
    assert [one.label for one in found[:4]] == ["programme", "sessions", "athlete", "athletes"]
    assert found[0].insert == "programme: "
    assert found[1].insert == "sessions:"
    assert found[0].detail == "must be there"
    assert found[0].documentation == "The name of the programme."
    assert {one.kind for one in found} == {"key"}


def test_alternatives_are_called_so(room: Room) -> None:
    def said(text: str) -> dict[str, str]:
        return {one.label: one.detail.rpartition(", ")[2] for one in room.offers(text)}

    top = said("programme: A\n|")
    assert (top["sessions"], top["blocks"]) == ("this or blocks", "this or sessions")
    items = said("programme: A\nsessions:\n  - session: S\n    exercises:\n      - |")
    assert items["exercise"] == "this or superset or circuit or complex or intervals or own choice"
    line = "programme: A\nsessions:\n  - session: S\n    exercises:\n      - {exercise: plank, "
    assert said(f"{line}|")["sets"] == "this or work or for or test"
    assert "this or" not in " ".join(said(f"{line}sets: 3, |").values())


def test_keys_that_are_there_are_not_offered_again(room: Room) -> None:
    labels = room.labels(PLAN + "        |")
    assert not {"exercise", "sets", "reps"} & set(labels)
    assert {"load", "rir", "rest", "or"} <= set(labels)
    assert "superset" not in labels


@pytest.mark.parametrize(
    ("text", "there", "not_there"),
    [
        (PLAN + "  - |", {"session", "activity", "exercises"}, {"effort", "loads"}),
        (PLAN + "  - activity: run\n    |", {"minutes", "effort", "loads", "day"}, {"exercises", "session"}),
        (PLAN + "  - session: B\n    |", {"exercises", "day"}, {"activity", "loads"}),
        (
            PLAN + "      - |",
            {"exercise", "superset", "circuit", "complex", "intervals", "own choice", "sets"},
            {"change every"},
        ),
        (
            PLAN + "      - complex:\n          - {exercise: clean, reps: 1}\n        |",
            {"sets", "load", "every", "rest"},
            {"reps", "circuit", "minutes"},
        ),
        (
            PLAN + "      - complex: [{exercise: clean, |}]\n        sets: 3",
            {"reps", "tempo"},
            {"load", "sets"},
        ),
        (PLAN + "      - intervals: bike\n        |", {"on", "off", "rounds"}, {"load", "exercises"}),
        (PLAN + "      - own choice: trunk\n        |", {"minutes", "trains"}, {"sets", "load"}),
        (PLAN + "      - circuit: {|}", {"change every", "on", "for", "time cap", "rounds"}, {"load"}),
        (
            PLAN + "      - superset:\n          - exercise: dip\n            |",
            {"sets", "reps"},
            {"superset"},
        ),
        (PLAN + "      - superset: [{exercise: dip, |}]\n        rounds: 3", {"reps"}, {"sets", "work"}),
        (
            PLAN + "      - exercise: dip\n        work:\n          - {|",
            {"sets", "reps", "load"},
            {"exercise"},
        ),
        (
            PLAN + "      - exercise: dip\n        work: [{sets: 3}]\n        |",
            {"rest"},
            {"sets", "reps", "load"},
        ),
        (PLAN + "      - exercise: dip\n        sets: 3\n        |", {"reps"}, {"work"}),
        (PLAN + "|", {"goal"}, {"blocks", "athletes", "sessions"}),
        ("programme: x\nblocks:\n  - name: a\n    |", {"weeks", "deload", "sessions"}, {"goal"}),
        ("programme: x\nathletes:\n  - |", {"athlete", "name"}, {"adjust"}),
        ("programme: x\nathletes:\n  - athlete: ida.athlete.yaml\n    |", {"adjust"}, {"name"}),
        ("shared:\n  heavy: &heavy\n    |", {"reps", "rest"}, {"programme"}),
    ],
)
def test_keys_fit_what_their_group_is(room: Room, text: str, there: set[str], not_there: set[str]) -> None:
    labels = set(room.labels(text))
    assert there <= labels
    assert not not_there & labels


def test_what_must_be_there_comes_first(room: Room) -> None:
    assert room.labels(PLAN + "  - |")[:3] == ["session", "exercises", "activity"]
    assert room.labels(PLAN + "      - {exercise: dip, |}")[0] == "sets"
    assert room.labels(PLAN + "      - {exercise: dip, for: 10 min, |}")[0] == "every"


@pytest.mark.parametrize(
    ("text", "insert"),
    [
        (PLAN + "      - ex|", "exercise: "),
        (PLAN + "      -|", " exercise: "),
        (PLAN + "      |", "- exercise: "),
        (PLAN + "      - {|", "exercise: "),
        (PLAN + "      - {ex|: dip}", "exercise"),
        (PLAN + "      - {'ex|': dip}", "exercise"),
    ],
)
def test_a_key_is_written_as_its_place_asks(room: Room, text: str, insert: str) -> None:
    assert room.offers(text)[0].insert == insert


VALUES = [
    ("goal: |", ["hypertrophy", "strength", "power", "muscular endurance", "general health"]),
    ("phase: |", ["build", "in-season", "taper", "test", "return"]),
    ("blocks: [{deload: |", ["true", "false"]),
    ("starts: |", ["2026-01-05"]),
    ("events: [{date: |", ["2026-01-05"]),
    ("rotation: [|", ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]),
    (
        "sessions: [{day: |",
        ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", "3"],
    ),
    ("sessions: [{exercises: [{side: |", ["left", "right", "each"]),
    (
        "sessions: [{exercises: [{reps: |",
        ["5", "5-8", "12/10/8", "2+2+2", "amrap", "5+", "8 each", "30 s", "to failure"],
    ),
    (
        "sessions: [{exercises: [{reps: {1-3: |",
        ["5", "5-8", "12/10/8", "2+2+2", "amrap", "5+", "8 each", "30 s", "to failure"],
    ),
    ("sessions: [{exercises: [{tempo: |", ["3-1-X-0", "2-0-2-0"]),
    ("sessions: [{exercises: [{note: |", []),
    ("sessions: [{exercises: [{progression: {when: |", ["top of range in all sets"]),
    ("rehabilitation: {advised by: |", ["physiotherapist", "physician"]),
    ("shared:\n  heavy:\n    rest: |", ["90 s", "3 min", "2-3 min"]),
]


@pytest.mark.parametrize(("text", "labels"), VALUES)
def test_values_of_the_schema(room: Room, text: str, labels: list[str]) -> None:
    assert room.labels(text) == labels


def test_weekdays_are_days(room: Room) -> None:
    assert {one.kind for one in room.offers("rotation: [|")} == {"day"}


def test_a_time_of_day_is_offered_once_a_day_is_typed(room: Room) -> None:
    assert "tuesday 05:45" in room.labels("sessions: [{day: tuesday |")
    assert "tuesday 05:45" not in room.labels("sessions: [{day: |")


def test_what_changes_for_all_lines_is_offered_week_by_week(room: Room) -> None:
    text = PLAN + "everything:\n  2-3: {sets: 2}\n  |"
    assert [one.insert for one in room.offers(text)] == ["1:", "4:", "5:", "6:"]


def test_a_session_takes_the_place_of_another(room: Room) -> None:
    assert room.labels(PLAN + "  - session: B\n    instead of: |\n") == ["A"]
    assert room.labels(PLAN + "    instead of: |\n") == []


def test_a_programme_starts_on_the_next_monday(room: Room) -> None:
    room.workspace.today = room.today.replace(day=7)
    assert room.labels("starts: |") == ["2026-01-12"]
    assert room.labels("events: [{date: |") == ["2026-01-07"]


@pytest.mark.parametrize(
    ("text", "insert"),
    [
        ("goal:|", " hypertrophy"),
        ("goal: hy|", "hypertrophy"),
        ("focus: |", "[hamstrings]"),
        ("focus:\n  |", "- hamstrings"),
        ("focus: [|", "hamstrings"),
        ("focus: [legs,|", " hamstrings"),
        ("focus:\n  - legs\n  |", "- hamstrings"),
        ("focus:\n- legs\n- |", "hamstrings"),
    ],
)
def test_a_value_is_written_as_its_place_asks(room: Room, text: str, insert: str) -> None:
    assert room.offers(text)[0].insert == insert


def test_words_that_yaml_would_take_for_more_are_quoted(room: Room) -> None:
    room.snapshot(PLAN.replace("session: A", "session: '10'").replace("goblet squat", "'dip: deep'"))
    insert = [one.insert for one in room.offers(PLAN + "waivers: [{place: |")]
    assert insert == ["'10'", "'10, dip: deep'"]
    assert room.offers(PLAN + "waivers: [{place: '|")[1].insert == "10, dip: deep"


@pytest.mark.parametrize(
    "text", ["note: >\n  |", "note: >\n  one\n  sets|", "programme: 'one\n  sets|", "x: 1 # |"]
)
def test_nothing_within_a_text(room: Room, text: str) -> None:
    assert [one for one in room.labels(text) if one != "spotline: waive"] == []


def test_nothing_in_a_file_that_is_none_of_ours(room: Room) -> None:
    snapshot = room.snapshot("|")
    snapshot.review.kind = ""
    assert complete(snapshot, 0) == []


# Exercises


def exercises(room: Room, typed: str, line: str = "      - {exercise: @|, sets: 3}\n") -> list[str]:
    return room.labels(PLAN + line.replace("@", typed))


def test_a_muscle_and_a_length_find_hinges(room: Room) -> None:
    found = exercises(room, "hamstring long")
    assert "dumbbell Romanian deadlift" in found
    for name in found:
        one = catalogue.exercise(name)
        # by what it trains, or by a word of its name or of an alias
        trained = {"biceps femoris long head", "semitendinosus", "semimembranosus"} & {
            *one.direct,
            *one.indirect,
        }
        assert trained or "hamstring" in " ".join((one.name, *one.aliases))


@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ("goblet", "goblet squat"),
        ("squ gob", "goblet squat"),
        ("RDL", "Romanian deadlift"),
        ("pushup", "push-up"),
        ("push-ups", "push-up"),
        ("hams", "dumbbell Romanian deadlift"),
        ("knee flex", "ball leg curl"),
        ("hinge", "dumbbell Romanian deadlift"),
        ("dumbbell row", "one-arm dumbbell row"),
        ("biceps dumbbell", "dumbbell curl"),
        ("skiff", "boat pull"),
        ("boat", "boat pull"),
        ("captain's", "supported knee raise"),
    ],
)
def test_an_exercise_is_found_by_any_word(room: Room, typed: str, name: str) -> None:
    assert name in exercises(room, typed)


def test_what_the_athlete_has_comes_first_then_what_fits_best(room: Room) -> None:
    found = exercises(room, "row")
    pieces = [*("dumbbells", "bench"), "band", "pull-up bar"]
    always = ("floor", "wall", "partner", "track", "hill", "stairs", "box")
    known = [one for name in found if (one := catalogue.exercise(name))]
    lacks = [bool(equipment.missing(one, pieces, always)) for one in known]
    assert lacks == sorted(lacks)
    assert {True, False} <= set(lacks)
    here = [one.name for one, lacking in zip(known, lacks, strict=True) if not lacking]
    matches = [
        match.exercise.name
        for match in matching_exercises("row", room.snapshot(PLAN).review.team.resources.known)
    ]
    assert here == [name for name in matches if name in here]


def test_the_exercise_typed_in_full_is_offered_though_the_equipment_lacks(room: Room) -> None:
    assert "leg press" in exercises(room, "leg press")
    assert len(exercises(room, "press")) == 60
    notes = {one.label: one.documentation for one in room.offers(PLAN + "      - {exercise: leg press|")}
    assert notes["leg press"] == "Takes leg press, not among the athlete's equipment."


def test_an_exercise_says_what_it_trains(room: Room) -> None:
    (found,) = [
        one for one in room.offers(PLAN + "      - {exercise: lat pull|") if one.label == "lat pulldown"
    ]
    assert found.kind == "exercise"
    assert found.detail.startswith("lats")
    assert found.filter_text == "lat pull lat pulldown"


def test_the_whole_value_is_replaced(room: Room) -> None:
    text = PLAN + "      - {exercise: goblet| squat, sets: 3}"
    (offer,) = [one for one in room.offers(text) if one.label == "goblet carry"]
    assert applied(text, offer).endswith("{exercise: goblet carry|, sets: 3}")


def test_without_a_word_what_the_programme_uses_comes_first(room: Room) -> None:
    assert exercises(room, "")[0] == "goblet squat"
    assert len(exercises(room, "")) == 60


def test_an_alternate_is_a_close_variant_first(room: Room) -> None:
    line = "      - {exercise: goblet squat, sets: 3, or: [@|]}\n"
    found = exercises(room, "", line)
    squat = catalogue.exercise("goblet squat")
    assert squat.is_close_to(catalogue.exercise(found[0]))
    assert "goblet squat" not in found


def test_what_is_adjusted_is_a_line_of_the_programme(room: Room) -> None:
    text = PLAN.replace(
        "athlete: ida.athlete.yaml",
        "athletes:\n  - athlete: ida.athlete.yaml\n    adjust:\n      - {exercise: |}",
    )
    assert room.labels(text) == ["goblet squat"]
    assert "step-up" in room.labels(text.replace("exercise: |", "exercise: goblet squat, swap: step|"))


@pytest.mark.parametrize(
    "line", ["exercise: {1-3: squ|}", "or: squ|", "or: [dip, squ|]", "exercise: 'squ|'", 'exercise: "squ|"']
)
def test_wherever_an_exercise_is_named(room: Room, line: str) -> None:
    assert "goblet squat" in room.labels(PLAN + f"      - {{{line}}}")


def test_best_lifts_are_exercises(room: Room) -> None:
    found = {
        one.label: one.insert for one in room.offers("name: Ida\nbest lifts:\n  back|", "ida.athlete.yaml")
    }
    assert found["back squat"] == "back squat: "
    assert "back squat" in room.labels("name: Ida\nbest lifts: {back|", "ida.athlete.yaml")
    assert "back squat" in room.labels("programme: x\nathlete:\n  name: Ida\n  best lifts:\n    back|")


# Files, rules, muscles, equipment


def test_athletes_files_by_their_paths(room: Room) -> None:
    (room.folder / "squad").mkdir()
    (room.folder / "squad" / "ann.athlete.yaml").write_text("name: Ann\n")
    files = ["ida.athlete.yaml", "zoe.athlete.yaml", "squad/ann.athlete.yaml"]
    assert room.labels("programme: x\nathlete: |") == files
    assert room.labels("programme: x\nathletes: [|") == files
    assert room.labels("programme: x\nathletes:\n  - athlete: z|") == files
    assert room.labels("athlete: |", "squad/new.programme.yaml")[:2] == [
        "ann.athlete.yaml",
        "../ida.athlete.yaml",
    ]


def test_rules_that_a_waiver_may_name(room: Room) -> None:
    found = room.offers(PLAN + "waivers:\n  - {rule: |}")
    names = {one.rule for one in room.snapshot(PLAN).review.findings}
    first = [one for one in found if one.detail == "found in this file"]
    assert {one.label for one in first} == names & {one.label for one in found}
    assert found[: len(first)] == first
    assert {one.kind for one in found} == {"rule"}
    assert room.labels(PLAN + "waivers:\n  - {rule: x, place: |}") == ["A", "A, goblet squat"]


def test_a_waiver_in_a_comment(room: Room) -> None:
    text = PLAN.replace("goblet squat", "goblet squat  # |")
    steps = []
    for _ in range(2):
        offer = room.offers(text)[0]
        steps.append(offer.label)
        text = applied(text, offer)
    assert steps[0] == "spotline: waive"
    assert f"  # spotline: waive {steps[1]} because |\n" in text
    text = text.replace("|", "of the boats")
    assert {one.finding.rule for one in room.snapshot(text).review.waived} <= {steps[1]}
    assert room.errors(text, "plan.programme.yaml") == room.errors(PLAN, "plan.programme.yaml")


@pytest.mark.parametrize(
    ("text", "labels"),
    [
        ("# |", ["spotline: waive"]),
        ("# spotl|", ["spotline: waive"]),
        ("# spotline: |", ["waive"]),
        ("# spotline: waive exercise-twice |", ["because", "until 2026-04-05 because"]),
        ("# spotline: waive exercise-twice because |", []),
        ("# lower body |", []),
    ],
)
def test_the_parts_of_a_waiver(room: Room, text: str, labels: list[str]) -> None:
    assert room.labels(PLAN + text) == labels


def test_a_rule_in_a_waiver_that_goes_on_is_replaced_alone(room: Room) -> None:
    text = PLAN + "# spotline: waive ex|erc because of it\n"
    (offer,) = [one for one in room.offers(text) if one.label == "exercise-twice"]
    assert applied(text, offer).endswith("# spotline: waive exercise-twice| because of it\n")


def test_settings_cannot_be_waived(room: Room) -> None:
    assert room.labels("# spotline: |", "spotline.yaml") == []


@pytest.mark.parametrize(
    ("text", "first"),
    [
        ("rules:\n  |", ("calf-work-missing", "calf-work-missing: ")),
        ("rules: {rest-day-missing: |", ("run", "run")),
        ("rules: {rest-day-missing: {|", ("least", "least: 1")),
        ("rules:\n  rest-day-missing:\n    |", ("least", "least: 1")),
        ("rules: {rest-day-missing: {least: |", ("1", "1")),
        ("rules: {rest-day-missing: {severity: |", ("error", "error")),
        ("rules: {weekly-sets-over-limit: {counting: |", ("[direct]", "[direct]")),
        ("rules: {weekly-sets-over-limit: {groups: {|", ("hamstrings", "hamstrings: ")),
        ("folders: {plans: {rules: {rest-day-missing: {|", ("least", "least: 1")),
        ("folders:\n  plans:\n    counting: |", ("fractional", "fractional")),
        ("weekly limits: {|", ("hamstrings", "hamstrings: ")),
        ("weekly limits:\n  hamstrings: 12\n  |", ("quadriceps", "quadriceps: ")),
        ("block commit on: |", ("error", "[error]")),
        ("exercises: [|", ("own.exercises.yaml", "own.exercises.yaml")),
        ("equipment: {home: [|", ("barbell", "barbell")),
        ("stations:\n  |", ("barbell", "barbell: ")),
        ("team rules: [{weekly sets of: |", ("hamstrings", "hamstrings")),
        ("team rules: [{in: |", ("hip extension", "hip extension")),
    ],
)
def test_settings(room: Room, text: str, first: tuple[str, str]) -> None:
    found = room.offers(text, "spotline.yaml")
    assert (found[0].label, found[0].insert) == first


def test_folders_below_the_settings(room: Room) -> None:
    (room.folder / "plans" / "old").mkdir(parents=True)
    (room.folder / ".hidden").mkdir()
    assert room.labels("folders:\n  |", "spotline.yaml") == ["plans", "plans/old"]
    assert room.labels("leave out: [|", "spotline.yaml") == ["plans", "plans/old"]


@pytest.mark.parametrize(
    ("text", "label"),
    [
        ("equipment: [|", "home"),
        ("equipment: [|", "barbell"),
        ("protect: [{area: |", "knee"),
        ("protect: [{area: |", "lower back"),
        ("protect: [{movement: |", "overhead press"),
        ("days: [|", "monday"),
        ("level: |", "novice"),
        ("body mass: |", "72 kg"),
        ("supervision: |", "coach present"),
    ],
)
def test_an_athletes_file(room: Room, text: str, label: str) -> None:
    assert label in room.labels("name: Ida\n" + text, "ida.athlete.yaml")
    inline = "programme: x\nathlete:\n  name: Ida\n  " + text
    assert label in room.labels(inline)


@pytest.mark.parametrize(
    ("text", "label"),
    [
        ("actions: [|", "hip extension"),
        ("station: [|", "cable"),
        ("easier: [|]", "boat pull"),
        ("harder: [squ|", "back squat"),
        ("implement: |", "barbell"),
        ("hands: |", "true"),
    ],
)
def test_a_teams_own_exercises(room: Room, text: str, label: str) -> None:
    assert label in room.labels(f"{OWN}  - name: x\n    {text}", "own.exercises.yaml")


@pytest.mark.parametrize(
    "line", ["focus: [|", "priority: [|", "blocks: [{focus: [|", "sessions: [{activity: run, loads: {|"]
)
def test_muscles(room: Room, line: str) -> None:
    found = room.offers("programme: x\n" + line)
    assert found[0].label == "hamstrings"
    assert found[0].kind == "muscle"
    assert {"legs", "soleus", "upper body"} <= {one.label for one in found}


def test_a_priority_may_be_a_lift(room: Room) -> None:
    assert "back squat" in room.labels("programme: x\npriority: [back s|")


# Weeks and anchors


@pytest.mark.parametrize(
    ("line", "labels"),
    [
        ("{1-3: 3, |}", ["4-6"]),
        ("{1-5: 3, |}", ["6"]),
        ("{4-6: 3, |}", ["1-3"]),
        ("{1: 3, 4-6: 2, |}", ["2-3"]),
        ("{1-6: 3, |}", []),
        ("{|}", []),
    ],
)
def test_weeks_that_are_left_out(room: Room, line: str, labels: list[str]) -> None:
    assert room.labels(PLAN + f"      - {{exercise: dip, sets: {line}}}\n") == labels


def test_weeks_of_a_block(room: Room) -> None:
    plan = "programme: x\nblocks:\n  - name: a\n    weeks: 4\n    sessions:\n      - session: A\n        exercises:\n          - {exercise: dip, sets: @}\n"
    room.snapshot(plan.replace("@", "3"))
    assert room.labels(plan.replace("@", "{1: 3, |}")) == ["2-4"]


ANCHORED = PLAN.replace(
    "sessions:",
    "shared:\n  heavy: &heavy {reps: 4, rest: 3 min}\n  days: &days [monday]\n  long: &long 3 min\nsessions:",
)


@pytest.mark.parametrize(
    ("text", "labels"),
    [
        (ANCHORED + "      - {exercise: dip, <<: *|", ["heavy"]),
        (ANCHORED + "      - exercise: dip\n        sets: 3\n        <<: *he|\n", ["heavy"]),
        (ANCHORED + "      - exercise: dip\n        rest: *|\n", ["long"]),
        (ANCHORED + "  - session: B\n    day: *|\n", ["days"]),
        (ANCHORED + "  - <<: *|\n", []),
        (
            ANCHORED + "      - {exercise: dip, rest: *brief, sets: 3}\n      - {exercise: dip, rest: &|",
            ["brief"],
        ),
        ("a: *|\nb: &b 1\n", []),
    ],
)
def test_anchors(room: Room, text: str, labels: list[str]) -> None:
    assert room.labels(text) == labels


def test_an_anchor_shows_what_it_stands_for(room: Room) -> None:
    assert room.offers(ANCHORED + "      - {<<: *|")[0].detail == "{reps: 4, rest: 3 min}"


# Nothing is offered that the review would call an error

GROUPS = [
    # the file, a text that is sound, and the line at which a key may be added
    ("plan.programme.yaml", PLAN + "|"),
    ("plan.programme.yaml", PLAN.replace("    exercises:", "    |\n    exercises:")),
    ("plan.programme.yaml", PLAN + "        |"),
    ("plan.programme.yaml", PLAN + "  - activity: run\n    |"),
    ("plan.programme.yaml", PLAN + "      - superset:\n          - {exercise: dip, sets: 3}\n          - exercise: plank\n            sets: 3\n            |"),
    ("plan.programme.yaml", PLAN + "      - superset:\n          - {exercise: dip, sets: 3}\n          - {exercise: plank, sets: 3}\n        |"),
    ("plan.programme.yaml", PLAN + "      - circuit:\n          rounds: 3\n          exercises:\n            - exercise: plank\n              |"),
    ("plan.programme.yaml", PLAN + "      - circuit:\n          rounds: 3\n          exercises: [{exercise: plank}]\n          |"),
    ("plan.programme.yaml", PLAN + "      - exercise: dip\n        work:\n          - sets: 3\n            |"),
    ("plan.programme.yaml", PLAN + "        progression:\n          add: 1 rep\n          |"),
    ("plan.programme.yaml", PLAN + "waivers:\n  - rule: exercise-twice\n    reason: so\n    |"),
    ("plan.programme.yaml", PLAN + "events:\n  - date: 2026-02-01\n    event: regatta\n    |"),
    ("plan.programme.yaml", "programme: x\nblocks:\n  - name: a\n    weeks: 6\n    |\n    sessions: [{session: A, exercises: [{exercise: dip, sets: 3}]}]\n"),
    ("plan.programme.yaml", PLAN.replace("athlete: ida.athlete.yaml", "athlete:\n  name: Ida\n  |")),
    ("plan.programme.yaml", PLAN.replace("athlete: ida.athlete.yaml", "athletes:\n  - athlete: ida.athlete.yaml\n    |")),
    ("plan.programme.yaml", PLAN.replace("athlete: ida.athlete.yaml", "athletes:\n  - athlete: ida.athlete.yaml\n    adjust:\n      - exercise: goblet squat\n        note: x\n        |")),
    ("ida.athlete.yaml", "name: Ida\n|"),
    ("ida.athlete.yaml", "name: Ida\nprotect:\n  - area: knee\n    advised by: physiotherapist\n    |"),
    ("ida.athlete.yaml", "name: Ida\nbest lifts:\n  back squat:\n    load: 100 kg\n    |"),
    ("ida.athlete.yaml", "name: Ida\nbest lifts:\n  back squat: 100 kg\n  |"),
    ("spotline.yaml", TEAM + "|"),
    ("spotline.yaml", "folders:\n  plans:\n    counting: direct\n    |"),
    ("spotline.yaml", "weekly limits:\n  hamstrings: 12\n  |"),
    ("spotline.yaml", "rules:\n  exercise-twice: skip\n  |"),
    ("spotline.yaml", "rules:\n  rest-day-missing:\n    severity: note\n    |"),
    ("spotline.yaml", "screening:\n  stated: 2026-01-05\n  by: head coach\n  |"),
    ("spotline.yaml", "team rules:\n  - rule: team-x\n    weekly sets of: hamstrings\n    at most: 12\n    message: Less.\n    |"),
    ("own.exercises.yaml", "exercises:\n  - name: boat pull\n    implement: cable\n    actions: [shoulder extension]\n    |"),
]  # fmt: skip


def grown(room: Room, name: str, text: str, depth: int = 0) -> str:
    """A text whose key at the bar was just taken, with what the first offers make of it."""
    before, after = text.split("|", 1)
    line = before.rpartition("\n")[2]
    if not line.endswith(":"):
        offers = room.offers(text, name) if line.endswith(": ") else []
        return (
            applied(text, offers[0])
            if offers
            else f"{before}{'' if not line.endswith(': ') else 'x'}|{after}"
        )
    indent = " " * (len(line) - len(line.lstrip(" -")) + 2)
    text = f"{before}\n{indent}|{after}"
    taken: set[str] = set()
    for _ in range(8):
        offers = [one for one in room.offers(text, name) if one.label not in taken]
        wanted = [
            one
            for one in offers
            if re.search("must be there|this or", one.detail)
            and one.label not in ("superset", "circuit", "complex", "intervals", "own choice")
        ]
        if taken and not wanted:
            break
        if not offers:
            return text.replace("|", "- x|")
        offer = (wanted or offers)[0]
        taken.add(offer.label)
        text = grown(room, name, applied(text, offer), depth + 1)
        dash = "  " if taken and offer.insert.startswith("- ") else ""
        before, after = text.split("|", 1)
        indent += dash
        text = f"{before}\n{indent}|{after}"
    before, after = text.split("|", 1)
    return f"{before.rstrip()}|{after}"


@pytest.mark.parametrize(("name", "text"), GROUPS)
def test_a_key_and_its_first_value_are_sound(room: Room, name: str, text: str) -> None:
    before = room.errors(text.replace("|", ""), name)
    offers = room.offers(text, name)
    assert offers
    for offer in offers[:40]:
        if offer.label in ("adjust", "folders", "credit", "our names", "places", "instead of", "test"):
            continue  # what comes next is for the coach to say
        whole = grown(room, name, applied(text, offer)).replace("|", "")
        assert room.errors(whole, name) <= before, whole


LISTS = [
    ("plan.programme.yaml", PLAN + "        load: |"),
    ("plan.programme.yaml", PLAN + "        or: [|]"),
    ("plan.programme.yaml", PLAN + "        rest: |"),
    ("plan.programme.yaml", PLAN + "        tempo: |"),
    ("plan.programme.yaml", PLAN + "        method: |"),
    ("plan.programme.yaml", PLAN + "        every: |"),
    ("plan.programme.yaml", PLAN.replace("goblet squat", "|")),
    ("plan.programme.yaml", PLAN.replace("sets: 3", "sets: |")),
    ("plan.programme.yaml", PLAN.replace("reps: 8", "reps: |")),
    ("plan.programme.yaml", PLAN.replace("    exercises:", "    day: |\n    exercises:")),
    ("plan.programme.yaml", PLAN + "focus: |"),
    ("plan.programme.yaml", PLAN + "priority: [|]"),
    ("plan.programme.yaml", PLAN + "goal: |"),
    ("plan.programme.yaml", PLAN.replace("ida.athlete.yaml", "|")),
    ("plan.programme.yaml", PLAN + "waivers: [{reason: so, rule: |}]"),
    ("plan.programme.yaml", PLAN + "waivers: [{reason: so, rule: exercise-twice, place: |}]"),
    ("ida.athlete.yaml", "name: Ida\nequipment: [|]"),
    ("ida.athlete.yaml", "name: Ida\nprotect: [{advised by: physiotherapist, area: |}]"),
    ("ida.athlete.yaml", "name: Ida\nprotect: [{advised by: physiotherapist, movement: |}]"),
    ("ida.athlete.yaml", "name: Ida\nbest lifts: {back squat: |}"),
    ("spotline.yaml", "rules: {weekly-sets-over-limit: {counting: |}}"),
    ("spotline.yaml", "team rules: [{rule: team-x, at most: 12, message: Less., weekly sets of: |}]"),
    ("spotline.yaml", "exercises: [|]"),
    ("own.exercises.yaml", "exercises: [{name: x, implement: cable, actions: [hip extension], kind: |}]"),
    ("own.exercises.yaml", "exercises: [{name: x, implement: cable, actions: [hip extension], station: [|]}]"),
    ("own.exercises.yaml", "exercises: [{name: x, implement: cable, actions: [|]}]"),
]  # fmt: skip


@pytest.mark.parametrize(("name", "text"), LISTS)
def test_every_value_offered_is_sound(room: Room, name: str, text: str) -> None:
    offers = room.offers(text, name)
    assert offers
    for offer in offers if len(offers) < 30 else offers[::7]:
        whole = applied(text, offer).replace("|", "")
        assert room.errors(whole, name) == set(), whole


def test_every_option_of_every_rule_is_sound_with_its_default(room: Room) -> None:
    for rule in room.workspace.rules:
        text = f"rules:\n  {rule.name}:\n    |"
        keys = [
            one for one in room.offers(text, "spotline.yaml") if one.kind == "key" and one.label != "severity"
        ]
        assert [one.label for one in keys] == [option.name for option in rule.options]
        whole = text.replace("|", "\n    ".join(one.insert for one in keys) or "severity: note")
        assert room.errors(whole, "spotline.yaml") == set()


def test_every_weekday_and_rule_of_a_waiver_is_taken(room: Room) -> None:
    for rule in room.labels(PLAN + "# spotline: waive |")[::9]:
        assert room.errors(f"{PLAN}# spotline: waive {rule} because of it\n", "plan.programme.yaml") == set()


# Any text, and quickly


SCRAPS = (
    "\n",
    " ",
    "\n      - ",
    ": ",
    "{",
    "}",
    "[",
    "]",
    ",",
    " # spotline: waive ",
    "&a ",
    "*a",
    "'",
    '"',
    "|\n",
    "\t",
    "é",
    "🏋",
    "\r\n",
    "\r",
)


@pytest.fixture(scope="module")
def any_room(tmp_path_factory: pytest.TempPathFactory, today: object) -> Room:
    return Room(tmp_path_factory.mktemp("any"), today)


TEXTS = {
    "plan.programme.yaml": [PLAN, ANCHORED, WRITTEN],
    "ida.athlete.yaml": [IDA],
    "spotline.yaml": [TEAM + "rules: {rest-day-missing: {least: 2}}\n"],
    "own.exercises.yaml": [OWN],
}


@settings(max_examples=150)
@given(data=st.data())
def test_no_text_makes_it_fail(any_room: Room, data: st.DataObject) -> None:
    name = data.draw(st.sampled_from(sorted(TEXTS)))
    text = data.draw(st.sampled_from(TEXTS[name]))
    for _ in range(data.draw(st.integers(0, 3))):
        start = data.draw(st.integers(0, len(text)))
        end = min(len(text), start + data.draw(st.integers(0, 30)))
        text = text[:start] + data.draw(st.sampled_from(SCRAPS)) + text[end:]
    snapshot = any_room.snapshot(text, name)
    any_room.close(name)
    content = snapshot.text.content
    for offset in {
        data.draw(st.integers(0, len(content))),
        *(found.end() for found in re.finditer(r"[:\-{,*]", content[:400])),
    }:
        for one in complete(snapshot, offset):
            assert 0 <= one.start <= offset <= one.end <= len(content)
            assert "\n" not in content[one.start : one.end]
            assert one.label
            assert "\n" not in one.insert


def longer(sessions: int) -> str:
    """The plan with some sessions more, of 12 lines each."""
    return PLAN + "".join(
        f"  - session: S{number}\n    exercises:\n"
        + "      - {exercise: dip, sets: 3, reps: 8, rir: 2, rest: 2 min}\n" * 10
        for number in range(sessions)
    )


ASKED = [
    # a line with the caret, and a third more steps than proposals take there
    ("      - {exercise: |, sets: 3}\n", 40_000),
    ("      - exercise: dip\n        |\n", 42_000),
    ("# spotline: waive |", 6_000),
    ("goal: |", 2_000),
    ("      - {exercise: hamstring long|, sets: 3}\n", 85_000),
    ("      - {exercise: b|, sets: 3}\n", 85_000),
    ("      - {exercise: dip, load: |}\n", 6_000),
    ("  - session: B\n    day: |", 3_300),
    ("focus: [|", 10_000),
]


@pytest.mark.parametrize(("line", "most"), ASKED)
def test_it_takes_few_steps(any_room: Room, line: str, most: int) -> None:
    before, after = (PLAN + line).split("|", 1)
    snapshot = any_room.snapshot(before + after)
    assert complete(snapshot, len(before))
    assert steps(lambda: complete(snapshot, len(before))) < most


@pytest.mark.parametrize("line", [line for line, _ in ASKED[:3]])
def test_its_steps_grow_with_the_text_and_no_faster(any_room: Room, line: str) -> None:
    def asking(sessions: int) -> Callable[[], object]:
        before, after = (longer(sessions) + line).split("|", 1)
        snapshot = any_room.snapshot(before + after)
        return lambda: complete(snapshot, len(before))

    assert growth(asking, 40) < 2.1


def test_a_number_typed_in_full_is_never_taken_for_a_longer_one(room: Room) -> None:
    """Clients match by parts of words: "3 min" would be made "2-3 min" by Enter."""
    head = "programme: A\nsessions:\n  - session: S\n    exercises:\n      - exercise: plank\n        rest: "
    everything = room.offers(f"{head}|")
    assert {"3 min", "2-3 min"} <= {one.label for one in everything}
    for one in everything:
        assert re.sub(r"[0-9A-Za-z]", "", one.filter_text) == ""
    for typed in ("3 min", "20", "3"):
        assert [one for one in room.offers(f"{head}{typed}|") if not one.label.startswith(typed)] == []
    assert [one.filter_text for one in room.offers(f"{head}2-|")] == ["2-3min"]


def test_nothing_is_proposed_in_a_line_that_nobody_types(opened: Callable[..., Snapshot]) -> None:
    short, long = (f"programme: Test\nfocus: [{'chest, ' * number}\n" for number in (10, 20_000))
    assert complete(opened(short), len(short) - 1)
    assert complete(opened(long), len(long) - 1) == []
