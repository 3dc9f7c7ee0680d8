"""The tables of a tally as Markdown."""

from __future__ import annotations

from ..weighing.holdings import COLUMNS, in_words
from ..wording.words import week_list
from .changes_markdown import md
from .tally_text import TITLES, heading, in_joints

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from ..weighing.holdings import WeekHoldings
    from ..weighing.tally import Tallies


def report(result: Tallies) -> None:
    """Prints them."""
    print("\n".join(markdown(result)))


def markdown(result: Tallies) -> Iterator[str]:
    """A heading for each programme and athlete, and a table for each different week."""
    for one in result.tallied:
        yield f"## {md(heading(one))}\n"
        for part in one.weeks:
            for by in result.tables:
                yield f"### {TITLES[by]}, {week_list(part.numbers)}\n"
                yield from rows_of(part, by)
                yield ""
            if not result.by or result.by == "action":
                yield f"No set for {in_joints(part.untrained())}.\n"


def rows_of(part: WeekHoldings, by: str) -> Iterator[str]:
    """One table of a week."""
    rows = part.rows(by)
    columns = [name for name in COLUMNS[by] if any(in_words(row.values[name]) for row in rows)]
    marks = ["mark"] if any(row.mark for row in rows) else []
    cells = [
        [row.name, *(in_words(row.values[name]) for name in columns), *([row.mark] if marks else [])]
        for row in rows
    ]
    yield from table([by, *columns, *(["" for _ in marks])], cells)


def table(heads: Sequence[str], rows: Sequence[Sequence[str]]) -> Iterator[str]:
    """The lines of a table; cells are a coach's words, or ours."""
    yield f"| {' | '.join(heads)} |"
    yield f"|{'|'.join(' --- ' for _ in heads)}|"
    for row in rows:
        yield f"| {' | '.join(md(cell) for cell in row)} |"
