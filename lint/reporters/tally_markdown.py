"""The tables of a tally as Markdown."""

from __future__ import annotations

from ..weighing.holdings import COLUMNS, in_words
from ..wording.words import listed, week_list
from .changes_markdown import md
from .tally_text import TITLES, by_joint, together

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
    for head, lines in together(result, lambda one: _tables(one.weeks, result)):
        yield f"## {md(head)}\n"
        yield from lines


def _tables(weeks: Sequence[WeekHoldings], result: Tallies) -> Iterator[str]:
    for part in weeks:
        for by in result.tables:
            yield f"### {TITLES[by]}, {week_list(part.numbers)}\n"
            yield from rows_of(part, by)
            yield ""
        if not result.by or result.by == "action":
            yield from _nothing(part)


def _nothing(part: WeekHoldings) -> Iterator[str]:
    """The joint actions that get nothing, joint by joint."""
    parts, whole = by_joint(part.untrained())
    if parts:
        yield "No direct set at the\n"
        yield from (f"- {joint}: {listed(actions)}" for joint, actions in parts.items())
        yield ""
    if whole:
        yield f"Nothing at the {listed(whole, 'or')}.\n"


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
