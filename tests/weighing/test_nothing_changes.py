"""What changes no training says so: order of keys, comments, names of sessions, spellings, order of sessions."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from spotline.lint.reporters.changes_markdown import markdown
from spotline.lint.reporters.changes_text import NOTHING, text
from spotline.lint.weighing.comparison import Comparison

from .conftest import edited

Compare = Callable[..., Comparison]

PLAN = """\
programme: Base
athlete: {name: Juno, level: intermediate, best lifts: {back squat: 100 kg}}
goal: strength
starts: 2026-01-05
weeks: 4
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: {1-3: 4, 4: 2}, reps: 5, load: 80 %, rir: 2, rest: 3 min}
      - {exercise: seated leg curl, sets: 3, reps: 8-10, rpe: 8, rest: 90 s}
      - {exercise: side plank, sets: 2, hold: 30 s, side: each}
  - session: Upper
    day: thursday
    exercises:
      - {exercise: bench press, sets: 4, reps: 6-8, load: 72.5 %, rir: 2, rest: 2 min}
      - {exercise: lat pulldown, sets: 3, reps: 8-12, rir: 2, rest: 90 s}
"""

LOWER = PLAN[PLAN.index("  - session: Lower") : PLAN.index("  - session: Upper")]
UPPER = PLAN[PLAN.index("  - session: Upper") :]

SAME = {
    "order of keys": [("goal: strength\nstarts: 2026-01-05\n", "starts: 2026-01-05\ngoal: strength\n")],
    "order of a line's keys": [("sets: 3, reps: 8-10, rpe: 8", "rpe: 8, reps: 8-10, sets: 3")],
    "a comment": [("weeks: 4\n", "weeks: 4  # to the test\n# and no further\n")],
    "a note": [("weeks: 4\n", "weeks: 4\nnote: Film the last set.\n")],
    "the name of a session": [("session: Lower", "session: Day one")],
    "names of two sessions that change places": [
        ("session: Lower", "session: X"),
        ("session: Upper", "session: Lower"),
        ("session: X", "session: Upper"),
    ],
    "a day in short": [("day: monday", "day: mon")],
    "a spelling of time": [("rest: 3 min", "rest: 3:00")],
    "a spelling of repetitions": [("reps: 8-10", "reps: 8 to 10")],
    "a spelling of load": [("load: 72.5 %", "load: '72,5%'")],
    "a spelling of a name": [("exercise: back squat", "exercise: Back Squat")],
    "another name of an exercise": [("exercise: lat pulldown", "exercise: lat pull-down")],
    "RIR for RPE": [("rpe: 8", "rir: 2")],
    "weeks written out": [("{1-3: 4, 4: 2}", "{1: 4, 2: 4, 3: 4, 4: 2}")],
    "order of sessions on different days": [(LOWER, ""), (UPPER, UPPER + LOWER)],
    "block style": [
        (
            "      - {exercise: lat pulldown, sets: 3, reps: 8-12, rir: 2, rest: 90 s}\n",
            "      - exercise: lat pulldown\n        sets: 3\n        reps: 8-12\n        rir: 2\n        rest: 90 s\n",
        )
    ],
    "an anchor": [
        ("weeks: 4\n", "weeks: 4\nshared: {curl: &curl {exercise: seated leg curl, sets: 3, reps: 8-10, rpe: 8, rest: 90 s}}\n"),
        ("      - {exercise: seated leg curl, sets: 3, reps: 8-10, rpe: 8, rest: 90 s}\n", "      - *curl\n"),
    ],
}  # fmt: skip


@pytest.mark.parametrize("kind", SAME)
def test_nothing_changes_in_training(kind: str, compared: Compare) -> None:
    result = compared(PLAN, edited(PLAN, *SAME[kind]))
    assert [change.words for one in result.compared for change in one.changes] == []
    assert result.is_nothing
    assert list(text(result, 80)) == [NOTHING] == [markdown(result)] == ["Nothing changes in training."]


CHANGED = {
    "order of exercises": (
        [("      - {exercise: bench press, sets: 4, reps: 6-8, load: 72.5 %, rir: 2, rest: 2 min}\n", ""),
         ("rir: 2, rest: 90 s}\n", "rir: 2, rest: 90 s}\n      - {exercise: bench press, sets: 4, reps: 6-8, load: 72.5 %, rir: 2, rest: 2 min}\n")],
        "Upper: lat pulldown in another place of the order",
    ),
    "sets": ([("sets: 4, reps: 6-8", "sets: 5, reps: 6-8")], "Upper, bench press: sets 4 -> 5"),
    "a load": ([("load: 72.5 %", "load: 75 %")], "Upper, bench press: load 72.5 % -> 75 %"),
    "rest": ([("rest: 2 min", "rest: 1 min")], "Upper, bench press: rest 2 min -> 1 min"),
    "a day": ([("day: thursday", "day: friday")], "Upper moved from Thursday to Friday"),
    "a session": ([(UPPER, "")], "Upper (Thursday) is gone: 7 sets"),
    "the length": ([("weeks: 4", "weeks: 6"), ("{1-3: 4, 4: 2}", "{1-3: 4, 4-6: 2}")], "weeks 4 -> 6"),
    "the start": ([("starts: 2026-01-05", "starts: 2026-01-12")], "starts 2026-01-05 -> 2026-01-12"),
    "another athlete": ([("name: Juno", "name: Piran")], "another athlete: Juno -> Piran"),
    "a lift gone to the other session": (
        [("      - {exercise: seated leg curl, sets: 3, reps: 8-10, rpe: 8, rest: 90 s}\n", ""),
         ("rir: 2, rest: 90 s}\n", "rir: 2, rest: 90 s}\n      - {exercise: seated leg curl, sets: 3, reps: 8-10, rpe: 8, rest: 90 s}\n")],
        "seated leg curl moved from Lower (Monday) to Upper (Thursday)",
    ),
    "repetitions across 8": (
        [("sets: {1-3: 4, 4: 2}, reps: 5, load: 80 %", "sets: {1-3: 4, 4: 2}, reps: 10, load: 70 %")],
        "Lower, back squat: reps 5 -> 10, load 80 % -> 70 %",
    ),
    "a joint action left out": (
        [("      - {exercise: seated leg curl, sets: 3, reps: 8-10, rpe: 8, rest: 90 s}\n", "")],
        "no knee flexion any more: 3 sets a week before",
    ),
}  # fmt: skip


@pytest.mark.parametrize("kind", CHANGED)
def test_training_changes(kind: str, compared: Compare) -> None:
    replaced, said = CHANGED[kind]
    result = compared(PLAN, edited(PLAN, *replaced))
    assert said in [change.words for one in result.compared for change in one.changes], "\n".join(
        text(result, 200)
    )


def test_all_examples_against_themselves(compared: Compare, root: Path) -> None:
    everything = {
        str(path.relative_to(root / "examples")): path.read_text(encoding="utf-8")
        for path in sorted((root / "examples").rglob("*.yaml"))
        if "faulty" not in path.parts
    }
    result = compared(everything, everything)
    assert result.looked_at == len(everything)
    assert result.is_nothing
