"""Steps: single edits as a coach counts them, each with what it writes, what it costs and what it touches.

Costs are whole numbers. They order edits as coaches do (common practice, no source): a number before a swap,
a swap before a new line, a new line before another day, another day before a line that is taken out.
"""

from __future__ import annotations

import re
from functools import cache
from itertools import pairwise

from ..body.catalogue import rarity
from ..remedies.new_lines import place_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..body.catalogue import Exercise
    from ..findings.finding import Edit
    from .judge import Spans

    Cost = tuple[int, int, int]
    """The price of the kinds of edit, half sets of other muscles that change, how far from what is usual the
    exercises are.
    """

KINDS = ("sets", "value", "order", "ease", "pair", "swap", "add", "move", "drop")
"""The kinds of step, the cheapest first."""

PRICE = {
    **{"sets": 20, "value": 20, "order": 24, "ease": 30, "pair": 36},
    **{"swap": 40, "add": 60, "move": 80, "drop": 100},
}
"""What a step costs by its kind."""

A_SET = 4
"""What each set costs that is added or taken off."""

FAR = 2
"""Sets by which a line may change before each further one costs ``A_FAR_SET`` more: two lines by two sets
rather than one by four."""

A_FAR_SET = 12

MAIN, NOTED = 3, 2
"""How many times as much a step costs on a main lift, and on a line with a note of the coach's own."""

LARGE = 12
"""What it costs more to swap a large lift: a coach builds more on it than on a small one."""

HALVED = 60
"""What it costs to halve a session in a few weeks."""

LEFT_OUT = 110
"""What it costs to leave a session out in a week."""

KNOWN, BACK = 4, 40
"""What a step costs less by which an exercise comes that the programme holds elsewhere already; and where it
is missing altogether in some weeks, and so most likely fell out of them.
"""

A_RANK, NEW_EQUIPMENT, TOO_LIGHT = 20, 8, 10
"""What each rank costs that an exercise is less common, that its session has no such equipment, and that it
cannot be loaded far where the goal asks for load: this weighs less than what kind of edit it is, and what it
does to other muscles.
"""

WIDER = 6
"""What a step costs more that changes weeks, too, of which a finding says nothing."""

ALONE = 30
"""What it costs more to swap or drop the only line for a movement in a week, or for its first muscle."""

FOREIGN = 15
"""What a new line costs more where its session has nothing that trains the same."""


class EditStep:
    """One edit of the text before, as spans of offsets and words.

    ``touches`` are the offsets of the lines and sessions that it changes, and less than 0 the day that it
    fills: of two steps that touch the same one only one is taken. ``label`` says it in a coach's words.
    ``by`` is the change of sets of the line at ``line``, or of all ``lines``; ``adds_work`` whether the
    athlete has more or harder work by it. ``exercise`` is the new one, ``said`` what else is written for it.
    ``again`` says that it only lets hold in some weeks what the coach wrote for others.
    ``key`` is its place in the order of the file, by which ties are broken.
    """

    __slots__ = (
        *("adds_work", "again", "by", "cost", "exercise", "key", "kind", "label"),
        *("line", "lines", "said", "spans", "touches"),
    )

    def __init__(
        self,
        kind: str,
        spans: Spans,
        label: str,
        touches: Iterable[int],
        cost: Cost,
        *,
        line: int = -1,
        by: float = 0,
        adds_work: bool = False,
        said: str = "",
        exercise: Exercise | None = None,
        lines: Iterable[int] = (),
        again: bool = False,
    ) -> None:
        self.kind = kind
        self.spans = spans
        self.label = label
        self.touches = frozenset(touches)
        self.cost = cost
        self.line = line
        self.lines = tuple(lines) or (line,)
        self.by = by
        self.adds_work = adds_work
        self.said = said
        self.exercise = exercise
        self.again = again
        self.key = (spans[0][0] if spans else -1, KINDS.index(kind), spans)

    @property
    def effect(self) -> tuple[object, ...]:
        """What the counts can tell of it: steps of one effect differ in nothing but the exercise's name."""
        if self.exercise is None:
            return self.key
        places = tuple((start, end) for start, end, _ in self.spans)
        return (self.kind, self.by, places, _as_counted(self.exercise))


@cache
def _as_counted(exercise: Exercise) -> tuple[object, ...]:
    """What is counted of an exercise: two that are alike in it are one to the rules on weeks."""
    lengths = tuple(sorted(exercise.lengths.items()))
    return (
        *(exercise.direct, exercise.indirect, exercise.actions, exercise.patterns, exercise.unilateral),
        *(exercise.axial, exercise.kind, exercise.level, lengths),
    )


def spans_of(edit: Edit, line_end: str) -> Spans:
    """The spans of an edit, in order. New lines end as those of the text do."""
    parts = sorted((part.place.start, part.place.end, part.words) for part in edit.parts)
    return tuple((start, end, re.sub("\r\n|\r|\n", lambda _: line_end, words)) for start, end, words in parts)


def spans_of_all(edits: Iterable[Edit], line_end: str) -> Spans:
    """The spans of several edits, in order."""
    return tuple(sorted(span for edit in edits for span in spans_of(edit, line_end)))


def are_apart(spans: Spans) -> bool:
    """Whether spans, in order, leave each other alone."""
    return all(
        one[1] < other[0] or (one[1] == other[0] and one[0] < one[1] and other[0] < other[1])
        for one, other in pairwise(spans)
    )


def _order(step: EditStep) -> tuple[int, int]:
    """The place of a new line among others: large lifts before small ones, of two alike the more common."""
    new = step.exercise if step.kind == "add" else None
    return (0, 0) if new is None else (place_of(new), rarity(new))


def together(steps: Iterable[EditStep]) -> Spans | None:
    """The spans of several steps; None where they are in each other's way. New lines may come together, in
    the order in which a coach has them done.
    """
    several = tuple(steps)
    placed = sorted((start, end, _order(step), words) for step in several for start, end, words in step.spans)
    spans = tuple((start, end, words) for start, end, _, words in placed)
    new = {step.spans[0][0]: step.spans[0] for step in several if step.kind == "add" and len(step.spans) == 1}
    once = [one for one in spans if one[0] != one[1] or new.get(one[0], one) == one]
    return spans if are_apart(tuple(once)) else None
