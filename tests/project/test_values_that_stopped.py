"""Wrong values that once stopped a review or a rule: each is a finding, or nothing, and the rest is judged."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from spotline.lint.project.review import review

HEAD = "programme: Test\nstarts: 2026-01-05\n"

PROGRAMMES = {
    "two changes of all lines in one week": HEAD
    + """\
weeks: 4
everything: {2+4: {rir: 3}, 2+3: {rir: 2}}
sessions:
  - session: A
    exercises:
      - {exercise: back squat, sets: 3, reps: 5}
""",
    "values by week past the end, and a timed set": HEAD
    + """\
weeks: 2
sessions:
  - session: A
    exercises:
      - {exercise: back squat, sets: {1-2: 3, 3-4: 4}, reps: 5}
      - {exercise: bench press, sets: {1-2: 3, 3-4: 4}, reps: 5}
      - {exercise: plank, sets: 3, reps: 40 sec}
""",
    "no repetitions to failure": HEAD
    + """\
sessions:
  - session: A
    exercises:
      - {exercise: seated calf raise, sets: 4, reps: 0, load: 18RM, rir: to failure}
""",
}


@pytest.mark.parametrize("text", PROGRAMMES.values(), ids=PROGRAMMES)
def test_nothing_stops(text: str, tmp_path: Path) -> None:
    path = tmp_path / "a.programme.yaml"
    path.write_text(text, encoding="utf-8")
    (one,) = review([str(path)], date(2026, 1, 5)).files
    assert [(fault.rule, fault.words) for fault in one.faults] == []
    assert one.ledgers
