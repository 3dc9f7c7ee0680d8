"""How many changes to a rule a test noticed: scores, samples of changes and how sure they make, the record, the gate."""

from __future__ import annotations

import json
from collections.abc import Iterable
from itertools import groupby
from math import sqrt
from typing import TypeVar

from spotline.tests.mutants import COUNTED, ROOT, Mutant

RECORD = ROOT / "tests" / "mutation.json"
LEAST = 95.0
"""Percent of the changes to a rule that a test must notice."""
LEAST_COUNTED = 90.0
"""Percent of the changes to a module of the counting."""
FEWEST = 6
"""Changes to each rule that a sample holds at the least, if there are as many."""
Z = 1.96
"""Standard deviations on each side of the mean that hold 95 percent of a normal distribution."""

T = TypeVar("T")


class Score:
    """How many changes were made to a rule, or to what rules share, and how many of them a test noticed.

    ``of`` is how many there are, where only a sample of them was made.
    """

    def __init__(self, mutants: int, killed: int, of: int = 0) -> None:
        self.mutants = mutants
        self.killed = killed
        self.of = of or mutants

    @property
    def percent(self) -> float:
        return 100 * self.killed / self.mutants

    @property
    def is_sample(self) -> bool:
        return self.mutants < self.of

    def kept(self) -> dict[str, int]:
        """The numbers as they go on record: a sample says what it is a sample of."""
        numbers = {"mutants": self.mutants, "killed": self.killed}
        return {**numbers, "of": self.of} if self.is_sample else numbers


def sampled(mutants: list[Mutant], every: int, first: int = 0) -> list[Mutant]:
    """Each ``every``-th change to each rule in the order in which they stand, closer where that were too few.

    ``first`` is how many are left out at the beginning: another number makes another sample.
    """
    if every == 1:
        return mutants
    chosen: list[Mutant] = []
    for _, group in groupby(sorted(mutants, key=whose), whose):
        those = list(group)
        chosen += spread(those, max(len(those) // every, min(FEWEST, len(those))), first)
    return chosen


def whose(mutant: Mutant) -> tuple[str, str]:
    return mutant.module.name, mutant.owner


def spread(members: list[T], number: int, first: int = 0) -> list[T]:
    """So many members, as far apart as can be, from the one after the ``first`` ones on, and round."""
    return [members[(first + index * len(members) // number) % len(members)] for index in range(number)]


def interval(scores: Iterable[Score]) -> tuple[float, float, float]:
    """The share that all changes together would have had noticed, in percent, and the ends of its 95 % interval.

    Each change in a sample stands for as many as it was taken from. The interval is Wilson's for a proportion
    (E. B. Wilson, Journal of the American Statistical Association 22, 1927, from memory), at as many changes as carry
    equal weight (Kish's effective size of a sample, from memory), more where they are a large part of all.
    """
    scores = list(scores)
    whole = sum(score.of for score in scores)
    share = sum(score.of * score.killed / score.mutants for score in scores) / whole
    tried = sum(score.mutants for score in scores)
    if tried == whole:
        return 100 * share, 100 * share, 100 * share
    size = whole**2 / sum(score.of**2 / score.mutants for score in scores)
    size *= (whole - 1) / (whole - tried)
    middle = (share + Z**2 / (2 * size)) / (1 + Z**2 / size)
    half = Z * sqrt(share * (1 - share) / size + (Z / (2 * size)) ** 2) / (1 + Z**2 / size)
    return 100 * share, 100 * max(0.0, middle - half), 100 * min(1.0, middle + half)


# On record


def recorded() -> dict[str, Score]:
    """The scores on record."""
    kept = json.loads(RECORD.read_text(encoding="utf-8")) if RECORD.exists() else {}
    return {owner: Score(**numbers) for owner, numbers in kept.items()}


def record(scores: dict[str, Score]) -> None:
    """Puts scores on record, in order."""
    whole = {owner: score.kept() for owner, score in sorted(scores.items())}
    RECORD.write_text(json.dumps(whole, indent=1) + "\n", encoding="utf-8")


def updated(before: dict[str, Score], now: dict[str, Score]) -> dict[str, Score]:
    """The record with new scores: a sample takes no place of what was measured of all changes."""
    measured = {owner: score for owner, score in before.items() if not score.is_sample}
    whole = {owner: score for owner, score in now.items() if not score.is_sample}
    return before | now | measured | whole


def wanted(owner: str, before: dict[str, Score]) -> float:
    """The percentage that is enough: no less than is on record of all changes, else what is asked of all."""
    if owner in before and not before[owner].is_sample:
        return before[owner].percent
    return LEAST_COUNTED if owner.removeprefix("shared in ") in COUNTED else LEAST


def report(mutants: list[Mutant], killed: set[Mutant], of: dict[tuple[str, str], int]) -> dict[str, Score]:
    """Prints the table, by module and owner; the scores of the owners. ``of`` counts all changes to each."""
    rows: dict[tuple[str, str], Score] = {}
    for mutant in mutants:
        score = rows.setdefault(whose(mutant), Score(0, 0, of[whose(mutant)]))
        score.mutants += 1
        score.killed += mutant in killed
    print(f"\n{'':40}{'of':>7}{'tried':>7}{'killed':>8}{'survived':>10}{'score':>9}  95 % interval")
    for module, group in groupby(sorted(rows.items()), lambda row: row[0][0]):
        owners = list(group)
        print_row(module, [score for _, score in owners])
        for (_, owner), score in owners:
            print_row(f"  {owner}", [score])
    print_row("all", list(rows.values()))
    return {owner: score for (_, owner), score in rows.items()}


def print_row(name: str, scores: list[Score]) -> None:
    of, tried, killed = (
        sum(getattr(score, number) for score in scores) for number in ("of", "mutants", "killed")
    )
    share, low, high = interval(scores)
    sure = f"  {low:.0f}-{high:.0f} %" if tried < of else ""
    print(f"{name:40}{of:7}{tried:7}{killed:8}{tried - killed:10}{share:8.1f}%{sure}")


def judged(scores: dict[str, Score], before: dict[str, Score]) -> int:
    """Says of which rules too few changes were noticed; the exit code."""
    short = [owner for owner, score in sorted(scores.items()) if score.percent < wanted(owner, before)]
    for owner in short:
        least = wanted(owner, before)
        print(
            f"{owner}: {scores[owner].percent:.1f} % are too few, {least:.1f} % are wanted: test what survived."
        )
    return 1 if short else 0
