"""The tables of a tally as CSV (RFC 4180). A range takes two columns: no spreadsheet makes it a date."""

from __future__ import annotations

import csv
import sys

from ..wording.words import safe, week_list
from .tally_rows import NUMBERS, columns, ends, rows

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..weighing.tally import Tallies

FORMULA = ("=", "+", "-", "@", "\t", "\r")
"""Signs at the start of a cell by which a spreadsheet takes it for a formula."""


def report(result: Tallies) -> None:
    """Prints it."""
    csv.writer(sys.stdout, lineterminator="\n").writerows(csv_rows(result))


def csv_rows(result: Tallies) -> Iterator[list[str]]:
    """The head and every row, as cells that no spreadsheet runs."""
    names = columns(result.tables)
    yield ["file", "programme", "athlete", "weeks", "by", "name", *_heads(names), "mark"]
    for one, part, by, row in rows(result):
        cells = [one.file, one.programme, one.athlete, week_list(part.numbers), by, row.name]
        for name in names:
            value = row.values.get(name)
            both = ends(value)
            if name in NUMBERS:
                cells += ["", ""] if both is None else [f"{end:g}" for end in both]
            else:
                cells.append(f"{both[0]:g}" if both else str(value or ""))
        yield [cell_of(words) for words in (*cells, row.mark)]


def _heads(names: list[str]) -> Iterator[str]:
    for name in names:
        yield from [f"{name} from", f"{name} to"] if name in NUMBERS else [name]


def cell_of(words: str) -> str:
    """A cell that no spreadsheet runs: what begins like a formula stands behind an apostrophe."""
    line = safe(" ".join(words.split(" ")))
    return f"'{line}" if line.lstrip().startswith(FORMULA) else line
