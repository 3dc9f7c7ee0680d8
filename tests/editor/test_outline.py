"""The programme in outline, and what stands above its blocks and sessions."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from spotline.lint.editor.documents.answers import Symbol
from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.editor.features.outline import lenses, symbols

Open = Callable[..., Snapshot]

PLAN = """\
programme: Winter
shared:
  trunk: &trunk {exercise: plank, sets: 3, hold: 40 s, rpe: 8}
blocks:
  - name: Build
    weeks: 3
    sessions:
      - session: Lower
        day: [monday, friday]
        exercises:
          - exercise: {1-2: back squat, 3: front squat}
            sets: {1-2: 3, 3: 4}
            reps: 5-8
            load: 75 %
            rir: 2
          - superset:
              - {exercise: leg press, sets: 2, reps: 10}
              - *trunk
          - circuit: {rounds: 2, exercises: [{exercise: push-up, reps: 12}]}
          - *trunk
      - {activity: match, day: saturday}
  - name: Ease
    weeks: 1
    sessions:
      - session: Whole
        exercises:
          - exercise: deadlift
            work: [{sets: 1, reps: 3, rpe: 8}, {sets: 3, reps: 5, load: 90 % of top set}]
          - {exercise: farmer's carry, sets: 3, distance: 30 m}
          - {exercise: kettlebell swing, every: 60 s, for: 10 min, reps: 10}
          - {complex: [{exercise: clean, reps: 1}, {exercise: jerk, reps: 2}], sets: 5}
          - {intervals: bike, rounds: 8, on: 45 s, off: 15 s}
          - {own choice: mobility, minutes: 10}
"""


def drawn(found: list[Symbol], depth: int = 0) -> Iterator[str]:
    for one in found:
        yield f"{'  ' * depth}{one.kind}: {one.name}{f' ({one.detail})' if one.detail else ''}"
        yield from drawn(one.children, depth + 1)


def everything(found: list[Symbol]) -> Iterator[Symbol]:
    for one in found:
        yield one
        yield from everything(one.children)


def test_a_programme(opened: Open) -> None:
    assert list(drawn(symbols(opened(PLAN)))) == [
        "programme: Winter",
        "  block: Build (3 weeks)",
        "    session: Lower (monday, friday)",
        "      prescription: back squat → front squat (3 → 4 x 5-8, 75 %, 2 RIR)",
        "      prescription: leg press (2 x 10)",
        "      prescription: plank (3 x 40 s, RPE 8)",
        "      prescription: push-up (12)",
        "      prescription: plank (3 x 40 s, RPE 8)",
        "    session: match (saturday)",
        "  block: Ease (1 week)",
        "    session: Whole",
        "      prescription: deadlift (1 x 3, RPE 8; 3 x 5, 90 % of top set)",
        "      prescription: farmer's carry (3 x 30 m)",
        "      prescription: kettlebell swing (10)",
        "      prescription: clean (1)",
        "      prescription: jerk (2)",
        "      prescription: bike (8 x 45 s)",
        "      prescription: mobility (10 min)",
    ]


def test_names_stand_where_they_are_written(opened: Open) -> None:
    (top,) = symbols(opened(PLAN))
    by_name = {one.name: one for one in everything([top])}
    assert PLAN[by_name["Build"].name_start : by_name["Build"].name_end] == "Build"
    assert PLAN[by_name["Lower"].start : by_name["Lower"].end].startswith("session: Lower")
    assert (
        PLAN[by_name["leg press"].start : by_name["leg press"].end]
        == "{exercise: leg press, sets: 2, reps: 10}"
    )
    assert PLAN[by_name["plank"].start : by_name["plank"].end] == "*trunk"
    assert PLAN[by_name["plank"].name_start : by_name["plank"].name_end] == "*trunk"


def within(found: list[Symbol], start: int, end: int) -> None:
    for one in found:
        assert start <= one.start <= one.name_start <= one.name_end <= one.end <= end
        assert one.name
        within(one.children, one.start, one.end)


def test_every_part_lies_within_its_whole(root: Path, example: Open) -> None:
    for path in sorted((root / "examples").rglob("*.programme.yaml")):
        snapshot = example(path.name)
        found = symbols(snapshot)
        assert len(found) == 1
        within(found, 0, len(snapshot.text.content))


@pytest.mark.parametrize(
    ("name", "text", "outline"),
    [
        (
            "a.athlete.yaml",
            "name: Mara\nbest lifts:\n  back squat: 100 kg\n  bench press: {load: 60 kg, reps: 3}\n",
            ["programme: Mara", "  prescription: back squat (100 kg)", "  prescription: bench press (60 kg)"],
        ),
        (
            "spotline.yaml",
            "preset: 2026-11\nweekly limits: {chest: 12}\nrules:\n  exercise-sets-high: note\n",
            [
                "programme: settings",
                "  block: preset (2026-11)",
                "  block: weekly limits",
                "    prescription: chest (12)",
                "  block: rules",
                "    prescription: exercise-sets-high (note)",
            ],
        ),
        (
            "a.exercises.yaml",
            "exercises:\n  - {name: towline row, implement: cable, actions: [shoulder extension]}\n",
            ["programme: exercises", "  prescription: towline row"],
        ),
        (
            "plan.programme.yaml",
            "programme:\nsessions:\n  - session:\n    exercises:\n      - exercise:\n      - 3\n",
            ["programme: (no name)", "  session: (no name)", "    prescription: (no name)"],
        ),
        ("plan.programme.yaml", "programme: [\n", []),
        ("plan.programme.yaml", "- 3\n", []),
    ],
)
def test_other_files(opened: Open, name: str, text: str, outline: list[str]) -> None:
    snapshot = opened(text, name=name)
    assert list(drawn(symbols(snapshot))) == outline
    within(symbols(snapshot), 0, len(text))


def test_the_outline_stays_while_the_text_cannot_be_read(opened: Open) -> None:
    now = PLAN.replace("{exercise: leg press, sets: 2, reps: 10}", "{exercise: leg press, sets: [2")
    snapshot = opened(PLAN, now=now)
    found = symbols(snapshot)
    within(found, 0, len(now))
    assert "      prescription: leg press (2 x 10)" in drawn(found)
    assert "  block: Ease (1 week)" in drawn(found)
    names = {one.name: one for one in everything(found)}
    assert now[names["Ease"].name_start : names["Ease"].name_end] == "Ease"


# Lenses


def shown(snapshot: Snapshot) -> list[tuple[str, str, int | None, int]]:
    text = snapshot.text.content
    return [(text[one.start : one.end], one.title, one.week, one.athlete) for one in lenses(snapshot)]


def test_weeks_and_sessions(opened: Open) -> None:
    found = shown(opened(PLAN))
    # squat 3, press 2, plank 3, push-up 2, plank 3: 13 twice a week, 14 with the fourth set of week 3
    titles = [(words, title, week) for words, title, week, _ in found if words in ("Build", "Ease")]
    assert titles[0][1].startswith("Weeks 1-2: 26 sets, ")
    assert titles[1][1].startswith("Week 3: 28 sets, ")
    assert titles[2][1].startswith("Week 4: 22 sets, ")  # 4 + 3 + 10 + 5
    assert [week for _, _, week in titles] == [1, 3, 4]
    lower = [
        (title.split(": ")[0], title.rpartition(", ")[2], week)
        for words, title, week, _ in found
        if words == "Lower"
    ]
    assert lower == [("Session, weeks 1-2", "13 sets", 1), ("Session, week 3", "14 sets", 3)]
    (whole,) = [(title, week) for words, title, week, _ in found if words == "Whole"]
    assert whole[0].endswith(" min, 22 sets")
    assert whole[0].startswith("Session: ")
    assert whole[1] == 4


def test_groups_are_those_that_get_anything(opened: Open) -> None:
    snapshot = opened(
        "programme: T\nsessions: [{session: S, exercises: [{exercise: leg extension, sets: 3}]}]\n"
    )
    assert shown(snapshot)[0] == ("T", "Week 1: 3 sets, 1 group", 1, 0)


def test_athletes_for_whom_it_differs(opened: Open) -> None:
    text = """\
programme: T
athletes: [{name: Ada}, {athlete: {name: Bo}, adjust: [{exercise: leg extension, sets: 2}]}]
sessions: [{session: S, exercises: [{exercise: leg extension, sets: 3}]}]
"""
    found = [one for one in shown(opened(text)) if one[0] == "T"]
    assert found == [("T", "Ada, week 1: 3 sets, 1 group", 1, 0), ("T", "Bo, week 1: 2 sets, 1 group", 1, 1)]


def test_no_more_than_a_few_on_one_name(opened: Open) -> None:
    sets = ", ".join(f"{week}: {week}" for week in range(1, 9))
    text = f"programme: T\nweeks: 8\nsessions: [{{session: S, exercises: [{{exercise: leg extension, sets: {{{sets}}}}}]}}]\n"
    assert [title for words, title, _, _ in shown(opened(text)) if words == "T"] == [
        "Week 1: 1 set, 1 group",
        "Week 2: 2 sets, 1 group",
        "Week 3: 3 sets, 1 group",
    ]


def test_a_session_shared_by_an_alias_has_its_lens_once(opened: Open) -> None:
    text = """\
programme: T
shared: {s: &s [{session: S, exercises: [{exercise: leg extension, sets: 3}]}]}
blocks: [{name: A, weeks: 1, sessions: *s}, {name: B, weeks: 1, sessions: *s}]
"""
    assert [words for words, *_ in shown(opened(text))] == ["S", "A", "B"]


def test_lenses_while_the_text_cannot_be_read(opened: Open) -> None:
    now = PLAN.replace("rpe: 8}, {sets: 3", "rpe: [8}, {sets: 3")
    assert [one[0] for one in shown(opened(PLAN, now=now))][:3] == ["Build", "Build", "Lower"]
    assert lenses(opened("programme: [\n")) == []
    assert lenses(opened("name: A\n", name="a.athlete.yaml")) == []


def test_weeks_without_a_set_have_no_lens(opened: Open) -> None:
    assert lenses(opened("programme: T\nsessions: []\n")) == []
    empty = opened("programme: T\nweeks: 1\nsessions: [{session: S, exercises: []}]\n")
    assert shown(empty) == []
