"""Pairs of published arms and weeks, compared: what differs is what the papers' tables print, and nothing else.

Campos and others, Eur J Appl Physiol 2002;88:50-60 (three arms: repetitions, sets, rest). Weiss and others, J Strength
Cond Res 1999;13:236-241 (one exercise, three zones of repetitions). The protocol of four arms with seated and standing
calf raises, Pilot Feasibility Stud 2020;6:99 (load and tempo). Nordic curls as tabled in Sports Med 2020;50:83-99
(PMC6942028, table 2), where one programme is another and two weeks more.
"""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from spotline.lint.weighing.comparison import Comparison
from spotline.lint.weighing.sides import compare_paths

PUBLISHED = Path(__file__).parent.parent / "published"


def compared(old: str, new: str) -> Comparison:
    paths = [str(PUBLISHED / f"{name}.programme.yaml") for name in (old, new)]
    return compare_paths(paths[0], paths[1], date(2026, 1, 5))


def of_kind(result: Comparison, kind: str) -> list[str]:
    return [change.words for one in result.compared for change in one.changes if change.kind == kind]


ARMS = {
    # sets an exercise, repetitions, rest, and sets for the quadriceps in weeks 1-4 and 5-8: three exercises of so
    # many sets on two days, then on three
    "low": ("4", "3-5", "3 min", "24", "36"),
    "intermediate": ("3", "9-11", "2 min", "18", "27"),
    "high": ("2", "20-28", "1 min", "12", "18"),
}


@pytest.mark.parametrize(("old", "new"), [("low", "intermediate"), ("intermediate", "high"), ("low", "high")])
def test_arms_of_campos_2002_differ_by_sets_repetitions_and_rest(old: str, new: str) -> None:
    result = compared(f"campos-2002-{old}", f"campos-2002-{new}")
    was, now = ARMS[old], ARMS[new]
    values = (
        f"sets {was[0]} -> {now[0]}, reps {was[1]} -> {now[1]}, load {was[1]}RM -> {now[1]}RM,"
        f" rest {was[2]} -> {now[2]}, rest after {was[2]} -> {now[2]}"
    )
    assert set(of_kind(result, "line")) == {
        f"{session}, {lift}: {values}"
        for session in ("First", "Second", "Third")
        for lift in ("leg press", "back squat", "leg extension")
    }
    assert f"quadriceps {was[4]} -> {now[4]} in weeks 5-8; {was[3]} -> {now[3]} in weeks 1-4" in of_kind(
        result, "sets"
    )
    for kind in (
        "session",
        "moved",
        "doubled",
        "week missed",
        "one week",
        "by half",
        "action",
        "hours",
        "order",
    ):
        assert not of_kind(result, kind), kind
    assert bool(of_kind(result, "repetitions")) == (old == "low")


def test_arms_of_weiss_1999_differ_by_repetitions_alone() -> None:
    result = compared("weiss-1999-3-5", "weiss-1999-13-15")
    assert {words.partition(": ")[2] for words in of_kind(result, "line")} == {
        "reps 3-5 -> 13-15, load 3-5RM -> 13-15RM"
    }
    assert not of_kind(result, "sets")
    assert "quadriceps, direct sets: 12 under 8 repetitions -> 12 from 8" in of_kind(result, "repetitions")
    result = compared("weiss-1999-13-15", "weiss-1999-23-25")
    assert not of_kind(result, "sets")
    assert not of_kind(result, "repetitions")
    assert of_kind(result, "line")


@pytest.mark.parametrize(
    ("other", "said"),
    [
        (2, "tempo 3-0-3-0 -> 1-0-1-0"),
        (3, "reps 6 -> 18, load 6RM -> 18RM"),
        (4, "reps 6 -> 18, load 6RM -> 18RM, tempo 3-0-3-0 -> 1-0-1-0"),
    ],
)
def test_four_arms_differ_by_load_and_tempo(other: int, said: str) -> None:
    result = compared("loadit-2020-1", f"loadit-2020-{other}")
    lines = of_kind(result, "line")
    assert {words.partition(": ")[2] for words in lines} == {said}
    assert {words.partition(", ")[2].partition(":")[0] for words in lines} == {
        "seated calf raise",
        "standing calf raise",
    }
    assert not of_kind(result, "sets")


def test_a_programme_that_is_another_and_two_weeks_more() -> None:
    (one,) = compared("clark", "delahunt").changed
    assert [change.words for change in one.changes] == ["weeks 4 -> 6"]
    assert one.weeks == (1, 2, 3, 4)
