"""Balance: opposing muscles against one another."""

from __future__ import annotations

from math import ceil

from ..lint.body import catalogue
from ..lint.finding import found
from ..lint.ledger import Week
from ..lint.registry import Limits, Option, rule
from .words import counted_lines, line_name, sets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Pair
    from ..lint.finding import Finding, Severity


@rule(
    "antagonist-imbalance",
    family="balance",
    severity="warning",
    confidence="common practice",
    why="Coaches keep the work of opposing muscles near one another, with room on both sides. No trial sets"
    " a ratio of sets; this is about coverage and forecasts no injury.",
    sources=("cp-balance",),
    options=(
        Option("fewest together", 6, "direct sets a week of both sides", "cp-balance"),
        Option("near", 1.5, "times as many sets on one side: a note past it", "cp-balance"),
        Option("far", 2, "times as many sets on one side: a warning past it, for the thigh", "cp-balance"),
    ),
    stands_back=True,
)
def antagonist_imbalance(week: Week, limits: Limits) -> Iterator[Finding]:
    """One side of an opposing pair gets far more direct sets than the other.

    Counts direct hard sets of each side of a pair (front and back of the thigh, pressing and pulling, elbow
    flexion and extension, outer and inner hip) in a typical week; compares the middles of ranges. The thigh
    is a note outside 2:3 to 3:2 and a warning outside 1:2 to 2:1; other pairs are a note outside 1:2 to 2:1.
    Silent where a side is empty for the thigh, since other rules say what is missing there.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg extension, sets: 9, reps: 10}  # <- here
              - {exercise: seated leg curl, sets: 2, reps: 10}
              - {exercise: Romanian deadlift, sets: 2, reps: 8}

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg extension, sets: 6, reps: 10}
              - {exercise: seated leg curl, sets: 2, reps: 10}
              - {exercise: Romanian deadlift, sets: 2, reps: 8}
    """
    if not week.is_typical():
        return
    for pair in catalogue.pairs:
        yield from _judged(week, pair, limits)


def _judged(week: Week, pair: Pair, limits: Limits) -> Iterator[Finding]:
    sides = sorted(
        ((week.for_actions(side.trained_by, hard=True), side) for side in pair.sides),
        key=lambda one: one[0].middle,
    )
    (less, weak), (more, strong) = sides
    if less.middle + more.middle < limits.number("fewest together"):
        return
    if not (week.means(weak.area) and week.means(strong.area)) or week.could_hold(weak.trained_by):
        return
    if pair.serious and not less:
        return
    ratio = more.middle / less.middle if less else float("inf")
    most = limits.number("near" if pair.serious else "far")
    if ratio <= most:
        return
    serious: Severity = "warning" if pair.serious and ratio > limits.number("far") else "note"
    line = more.lines()[0][0]
    bound = "between 2:3 and 3:2" if pair.serious else "no more than twice as many on one side"
    yield found(
        line.place,
        f"{sets_of(str(more))} for {strong.words} against {less} for {weak.words}.",
        severity=serious,
        wanted=f"the two near one another, {bound} (common practice)",
        change=f"Move about {sets_of(_to_move(more.middle, less.middle, most))} from the first to the second,"
        f" or add work for {weak.words}.",
        where=line_name(line),
        subject=pair.name,
        related=counted_lines(more, less),
        excess=ratio,
    )


def _to_move(more: float, less: float, most: float) -> int:
    """Whole sets to move for no more than ``most`` times as many on one side."""
    return ceil(round(more - (more + less) * most / (1 + most), 6))
