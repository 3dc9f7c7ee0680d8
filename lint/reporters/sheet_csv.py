"""A sheet as CSV (RFC 4180), a row a set, for spreadsheets: with empty cells for what was done.

A spreadsheet takes a cell that begins with = + - @ for a formula; such words get an apostrophe in front,
which makes them words again. The file begins with a byte order mark, by which spreadsheets know UTF-8.
"""

from __future__ import annotations

import csv
from io import StringIO

from ..sheets.seal import OPEN, sealed
from ..sheets.sheet import PAIN

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..sheets.sheet import Sheet, SheetDay, SheetDose, SheetLine, SheetSession, SheetWeek

FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
"""What a cell that is taken for a formula begins with, in ordinary and in wide letters."""

PLANNED = (
    "athlete", "week", "date", "weekday", "session", "mark", "exercise", "set", "of sets",
    "repetitions or time", "weight", "unit", "implements", "load in words", "plates", "effort", "rest",
    "tempo", "more", "in turn", "remarks",
)  # fmt: skip
DONE = ("done: repetitions or time", "done: weight", "done: RIR or RPE")
HURT = tuple(f"pain {when} 0-10" for when in PAIN)


def report(sheet: Sheet) -> None:
    """Prints it."""
    print(text(sheet), end="")


def text(sheet: Sheet) -> str:
    """The whole file, with the seal as the name of its first, empty column."""
    file = StringIO()
    writer = csv.writer(file, lineterminator="\r\n")
    pain = HURT if any(session.pain for week in sheet.weeks for session in week.sessions) else ()
    writer.writerow([OPEN, *PLANNED, *DONE, *pain])
    for week in sheet.weeks:
        for session in week.sessions:
            for day in session.days:
                for row in _rows(sheet, week, session, day):
                    writer.writerow(["", *map(cell, row), *("" for _ in (*DONE, *pain))])
    return sealed("\ufeff" + file.getvalue())


def cell(words: str) -> str:
    """A cell that no spreadsheet takes for a formula."""
    return f"'{words}" if words.lstrip(" \u00a0").startswith(FORMULA) or words.startswith(FORMULA) else words


def _rows(sheet: Sheet, week: SheetWeek, session: SheetSession, day: SheetDay) -> Iterator[list[str]]:
    head = [
        sheet.athlete,
        str(week.number),
        day.date.isoformat() if day.date else "",
        day.weekday,
        session.name,
    ]
    for item in session.items:
        in_turn = " ".join(part for part in (item.pairing, item.note) if part)
        for line in item.lines:
            number = 0
            for dose in line.doses:
                for one in range(max(dose.most, 1)):
                    number += 1
                    yield [*head, *_set(line, dose, one, number), in_turn, " ".join(line.remarks)]


def _set(line: SheetLine, dose: SheetDose, one: int, number: int) -> list[str]:
    """The cells of one set: the values that are its own where the sets differ."""
    amounts = dose.amounts
    return [
        line.mark,
        line.exercise,
        f"{number} (if you do it)" if dose.most and one >= max(dose.fewest, 1) else str(number),
        dose.sets,
        _own(dose.each, one),
        _own(amounts.weights, one),
        amounts.unit if amounts.weights else "",
        str(amounts.pieces) if amounts.weights else "",
        dose.load,
        amounts.plates,
        dose.effort,
        dose.rest,
        dose.tempo,
        ", ".join(dose.extra),
    ]


def _own(values: tuple[str, ...], one: int) -> str:
    return values[min(one, len(values) - 1)] if values else ""
