"""The tables of a tally as text: 80 columns, weeks side by side where they differ."""

from __future__ import annotations

from textwrap import wrap

from ..body import catalogue
from ..weighing.holdings import COLUMNS, in_words
from ..wording.words import counted_noun, listed, safe, sets_of, week_list
from .layout import bold, strong

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from ..weighing.holdings import Row, WeekHoldings
    from ..weighing.tally import Tallied, Tallies

WIDTH = 80
"""Columns."""

MOST_LIFTS = 8
"""Lifts that an overview names; a table by lift names all."""

LONGEST = 32
"""Letters of a name in a table."""

SPARE = ("days", "indirect", "lifts", "hard sets")
"""Columns that are left out, in turn, where a table would be wider."""

TITLES = {
    "muscle": "Hard sets by muscle group",
    "action": "Sets by joint action",
    "day": "Days",
    "session": "Sessions",
    "lift": "Lifts, the hardest first",
}

IN_SHORT = {
    "muscle": "sets (direct)",
    "action": "sets",
    "day": "sets and time",
    "session": "sets and time",
    "lift": "sets x repetitions",
}


def report(result: Tallies) -> None:
    """Prints them."""
    print("\n".join(text(result, bold=bold())))


def text(result: Tallies, *, bold: bool = False) -> Iterator[str]:
    """The lines of the tables, none wider than 80 columns."""
    for number, one in enumerate(result.tallied):
        if number:
            yield ""
        yield from _wrapped(heading(one), bold=bold)
        for by in result.tables:
            most = MOST_LIFTS if by == "lift" and not result.by else None
            yield ""
            yield from _table(one.weeks, by, most, bold)
            if (by == "muscle" and not result.by) or by == "action":
                yield from _nothing(one.weeks)


def heading(one: Tallied) -> str:
    """``Winter base (plan.programme.yaml), Mara, weeks 1-6``"""
    numbers = sorted(number for part in one.weeks for number in part.numbers)
    name = f"{one.programme} ({one.file})" if one.programme else one.file
    return ", ".join(part for part in (name, one.athlete, week_list(numbers)) if part)


def _wrapped(words: str, *, bold: bool = False) -> Iterator[str]:
    for line in wrap(safe(words), WIDTH, break_on_hyphens=False):
        yield strong(line, bold)


def _table(weeks: Sequence[WeekHoldings], by: str, most: int | None, bold: bool) -> Iterator[str]:
    if len(weeks) == 1:
        yield strong(TITLES[by], bold)
        yield from _of_one(weeks[0].rows(by)[:most], by)
        if by in ("session", "day"):
            yield _sum(weeks[0])
        return
    yield strong(f"{TITLES[by]}: {IN_SHORT[by]}", bold)
    yield from _side_by_side(weeks, by, most)


def _of_one(rows: list[Row], by: str) -> Iterator[str]:
    if not rows:
        yield "  none"
        return
    marks = any(row.mark for row in rows)
    columns = [name for name in COLUMNS[by] if any(in_words(row.values[name]) for row in rows)]
    while True:
        cells = [
            [
                _cut(row.name),
                *(in_words(row.values[name]) for name in columns),
                *([row.mark] if marks else []),
            ]
            for row in rows
        ]
        heads = [by, *columns, *([""] if marks else [])]
        lines = list(aligned([heads, *cells]))
        spare = next((name for name in SPARE if name in columns), None)
        if max(map(len, lines)) <= WIDTH or spare is None:
            break
        columns.remove(spare)
    for line in lines:
        yield line[:WIDTH].rstrip()


def _side_by_side(weeks: Sequence[WeekHoldings], by: str, most: int | None) -> Iterator[str]:
    """A column for each different week; columns that do not fit stand in further tables below."""
    tables = [{row.name: row for row in part.rows(by)[:most]} for part in weeks]
    names = list(dict.fromkeys(name for table in tables for name in table))
    lines = [*names, *(["together"] if by in ("session", "day") else [])]
    label = max(map(len, map(_cut, [*lines, by])))
    bounds = _bounds(tables, names) if by == "muscle" else []
    room = WIDTH - label - sum(map(_wide, bounds))
    columns = _columns(weeks, tables, names, by)
    while columns:
        taken = [columns.pop(0)]
        while columns and sum(map(_wide, taken)) + _wide(columns[0]) <= room:
            taken.append(columns.pop(0))
        shown = [*taken, *bounds]
        table = [
            [_cut(name), *(column[at] for column in shown)]
            for at, name in enumerate([by, *lines])
            if not at or any(column[at] for column in taken)
        ]
        for line in aligned(table):
            yield line[:WIDTH].rstrip()
        if columns:
            yield ""


def _columns(
    weeks: Sequence[WeekHoldings], tables: Sequence[dict[str, Row]], names: Sequence[str], by: str
) -> list[list[str]]:
    """A column for each different week of this table, its weeks at the head."""
    alike: dict[tuple[str, ...], list[int]] = {}
    for part, table in zip(weeks, tables, strict=True):
        cells = [_cell(table.get(name)) for name in names]
        if by in ("session", "day"):
            cells.append(f"{part.week.all_sets()} in {part.minutes} min")
        alike.setdefault(tuple(cells), []).extend(part.numbers)
    return [[week_list(sorted(numbers)), *cells] for cells, numbers in alike.items()]


def _bounds(tables: Sequence[dict[str, Row]], names: Sequence[str]) -> list[list[str]]:
    """The columns of floors and limits, where there are any."""
    columns = []
    for bound in ("floor", "limit"):
        cells = [
            next((in_words(table[name].values[bound]) for table in tables if name in table), "")
            for name in names
        ]
        if any(cells):
            columns.append([bound, *cells])
    return columns


def _cell(row: Row | None) -> str:
    return "" if row is None else " ".join(part for part in (row.short, row.mark) if part)


def _wide(column: Sequence[str]) -> int:
    return max(map(len, column)) + 2


def aligned(rows: Sequence[Sequence[str]]) -> Iterator[str]:
    """Lines of cells under one another: words to the left, numbers to the right."""
    widths = [max(len(safe(row[at])) for row in rows) for at in range(len(rows[0]))]
    right = [
        at > 0 and all(not row[at] or row[at][0].isdigit() for row in rows[1:]) for at in range(len(widths))
    ]
    for row in rows:
        cells = [
            safe(cell).rjust(width) if is_right else safe(cell).ljust(width)
            for cell, width, is_right in zip(row, widths, right, strict=True)
        ]
        yield "  ".join(cells)


def _cut(name: str) -> str:
    line = " ".join(name.split()) or "(no name)"
    return line if len(line) <= LONGEST else f"{line[: LONGEST - 3]}..."


def _sum(part: WeekHoldings) -> str:
    week = part.week
    days = counted_noun(len(week.occasions()), "day")
    return f"Together: {days}, {sets_of(str(week.all_sets()))}, {part.minutes} min."


def _nothing(weeks: Sequence[WeekHoldings]) -> Iterator[str]:
    """The joint actions that get nothing, with the weeks where these differ."""
    every = [part.untrained() for part in weeks]
    always = [action for action in every[0] if all(action in one for one in every)] if every else []
    yield ""
    if always:
        yield from _wrapped(f"No direct set for {in_joints(always)}.")
    by_names: dict[tuple[str, ...], list[int]] = {}
    for part, untrained in zip(weeks, every, strict=True):
        further = tuple(action for action in untrained if action not in always)
        if further:
            by_names.setdefault(further, []).extend(part.numbers)
    for names, numbers in by_names.items():
        yield from _wrapped(f"In {week_list(sorted(numbers))} none for {listed(names)}, either.")


def in_joints(actions: Sequence[str]) -> str:
    """Joint actions in words, a joint of which none is left out by its own name."""
    joints: dict[str, list[str]] = {}
    for name, action in catalogue.actions().items():
        joints.setdefault(action.joint, []).append(name)
    whole = [joint for joint, names in joints.items() if len(names) > 1 and set(names) <= set(actions)]
    rest = [one for one in actions if catalogue.actions()[one].joint not in whole]
    parts = [listed(rest, "or"), f"nothing at the {listed(whole, 'or')}" if whole else ""]
    return "; ".join(part for part in parts if part)
