"""Lines that share a table of loads, but for one week."""

from __future__ import annotations

from ..lint.counting.change import weeks_of_lines
from ..lint.engine.limits import Condition
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of, plain
from .offers import writing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


@rule(
    "table-cell-differs",
    family="progression",
    severity="warning",
    confidence="common practice",
    why="Lifts that share a table week for week are typed by copying it. One number that differs is often a"
    " slip of the pen.",
    sources=(),
    options=(
        Condition("weeks", 5, "weeks that the lines share", "common practice"),
        Condition("others", 2, "other lines with the same table", "common practice"),
        Condition("apart", 5, "% of the best lift between the numbers", "common practice"),
    ),
    needs=("load",),
)
def table_cell_differs(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A load in % that differs in one week from those of lifts with the same table.

    Compares the loads in % of the lines, week by week, over five weeks or more. Points at a number where two
    other lines of the same weeks hold the same loads as the line in all other weeks, agree on that week with
    one another, and are 5 % or more apart from it.

    Flags:
        programme: Waves
        weeks: 5
        sessions:
          - session: Gym
            exercises:
              - {exercise: back squat, sets: 4, reps: 5, load: {1: 70 %, 2: 75 %, 3: 80 %, 4: 72 %, 5: 77 %}}
              - exercise: bench press
                sets: 4
                reps: 5
                load: {1: 70 %, 2: 75 %, 3: 80 %, 4: 82 %, 5: 77 %}  # <- here
              - {exercise: deadlift, sets: 4, reps: 5, load: {1: 70 %, 2: 75 %, 3: 80 %, 4: 72 %, 5: 77 %}}

    Passes:
        programme: Waves
        weeks: 5
        sessions:
          - session: Gym
            exercises:
              - {exercise: back squat, sets: 4, reps: 5, load: {1: 70 %, 2: 75 %, 3: 80 %, 4: 72 %, 5: 77 %}}
              - exercise: bench press
                sets: 4
                reps: 5
                load: {1: 70 %, 2: 75 %, 3: 80 %, 4: 74 %, 5: 77 %}
              - {exercise: deadlift, sets: 4, reps: 5, load: {1: 70 %, 2: 75 %, 3: 80 %, 4: 72 %, 5: 77 %}}
    """
    tables = [_Table(line) for line in ledger.recall(weeks_of_lines, ledger.weeks)]
    tables = [one for one in tables if len(one.loads) >= limits.number("weeks")]
    for table in tables:
        for number, load in table.loads.items():
            like = [one for one in tables if one is not table and one.is_like(table, number)]
            loads = {one.loads[number] for one in like}
            if len(like) < limits.number("others") or len(loads) != 1:
                continue
            (other,) = loads
            if abs(load - other) >= limits.number("apart"):
                yield _differs(
                    table.entries[number], number, load, other, [one.entries[number] for one in like]
                )


class _Table:
    """The loads in % of a line, by week, where each week has one."""

    def __init__(self, line: list[tuple[Week, SetGroup]]) -> None:
        self.entries = {week.number: entry for week, entry in line}
        loads = {number: _percent(entry) for number, entry in self.entries.items()}
        known = {number: load for number, load in loads.items() if load is not None}
        self.loads = known if len(known) == len(loads) and len(set(known.values())) > 1 else {}

    def is_like(self, other: _Table, number: int) -> bool:
        """Whether it holds the same loads in the same weeks, but for one."""
        return self.loads.keys() == other.loads.keys() and all(
            load == other.loads[week] for week, load in self.loads.items() if week != number
        )


def _percent(entry: SetGroup) -> float | None:
    """The load as it is written, where that is one number of percent."""
    load = entry.work.load
    if load is None or load.kind != "percent" or len(load.values) != 1:
        return None
    return load.values[0].low if load.values[0].low == load.values[0].high else None


def _differs(entry: SetGroup, number: int, load: float, other: float, like: list[SetGroup]) -> DraftFinding:
    names = first_of(list(dict.fromkeys(one.name for one in like)))
    return found(
        entry.work.places["load"],
        f"{entry.name} at {plain(load)} %; {names}, alike in all other weeks, hold {plain(other)} %.",
        wanted="the same number",
        change=f"If it is a slip, write {plain(other)} %.",
        where=line_name(entry.prescription),
        edits=writing(entry.work.places["load"], f"{plain(other)} %"),
        weeks=(number,),
        amount=Amount(load, other, "%"),
        line=entry.prescription.place,
        related=tuple(Related(one.work.places["load"], line_name(one.prescription)) for one in like),
    )
