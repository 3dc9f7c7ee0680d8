"""The rows of a tally for machines and tables: one for each thing and each different week."""

from __future__ import annotations

from ..model.quantities import Range
from ..weighing.holdings import COLUMNS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from ..weighing.holdings import Row, Value, WeekHoldings
    from ..weighing.tally import Tallied, Tallies

NUMBERS = (
    "sets",
    "direct",
    "indirect",
    "under 8",
    "from 8",
    "hard sets",
    "minutes",
    "reps",
    "% of 1RM",
    "in reserve",
)
"""Columns that may hold a range; `floor`, `limit` and `lifts` hold one number."""


def rows(result: Tallies) -> Iterator[tuple[Tallied, WeekHoldings, str, Row]]:
    """Every row with what it belongs to."""
    for one in result.tallied:
        for part in one.weeks:
            for by in result.tables:
                for row in part.rows(by):
                    yield one, part, by, row


def columns(tables: Sequence[str]) -> list[str]:
    """The columns of some tables, each once."""
    return list(dict.fromkeys(name for by in tables for name in COLUMNS[by]))


def ends(value: Value) -> tuple[float, float] | None:
    """Both ends of a number or range, whole where they are; None for words and for nothing."""
    return (_whole(value.low), _whole(value.high)) if isinstance(value, Range) else None


def _whole(number: float) -> float:
    return int(number) if number == int(number) else round(number, 2)
