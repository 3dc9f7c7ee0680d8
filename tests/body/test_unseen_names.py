"""Names of lifts that a coach wrote down without a look at the catalogue, and that took no part in its making.

data/unseen_names.tsv: the name, the plain lift that is meant, the kind of row, what it is read as ("-" where it
is not read), and whether that is right. What is not known is never guessed; common practice, no source.
"""

from __future__ import annotations

from pathlib import Path

from spotline.lint.body.known import CATALOGUE

ROWS = [
    line.split("\t")
    for line in (Path(__file__).parent / "data" / "unseen_names.tsv").read_text(encoding="utf-8").splitlines()
]


def test_each_is_read_as_it_was_judged() -> None:
    apart = []
    for name, _, _, read, _ in ROWS:
        exercise = CATALOGUE.exercise(name)
        if (exercise.name if exercise else "-") != read:
            apart.append((name, exercise.name if exercise else "-", read))
    assert apart == []


def test_at_least_95_of_100_are_known_and_at_most_one_is_wrong() -> None:
    judged = [verdict for _, _, kind, _, verdict in ROWS if kind in ("bare", "qualified")]
    assert len(judged) == 280
    assert sum(verdict != "unknown" for verdict in judged) / len(judged) >= 0.95
    assert sum(verdict == "wrong" for verdict in judged) / len(judged) <= 0.01


def test_a_slip_is_never_read_as_another_lift() -> None:
    slips = [(name, plain) for name, plain, kind, _, _ in ROWS if kind == "slip"]
    assert len(slips) == 20
    assert [name for name, _ in slips if CATALOGUE.exercise(name) is not None] == []
