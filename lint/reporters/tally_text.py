"""The tables of a tally as text: 80 columns, weeks side by side where they differ."""

from __future__ import annotations

from textwrap import wrap

from ..body import catalogue
from ..weighing.holdings import COLUMNS, hardest_first, in_words
from ..wording.words import counted_noun, listed, safe, sets_of, week_list
from .layout import bold, strong

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

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
    for number, (head, lines) in enumerate(together(result, lambda one: _tables(one.weeks, result, bold))):
        if number:
            yield ""
        yield from _wrapped(head, bold=bold)
        yield from lines


def together(
    result: Tallies, tables: Callable[[Tallied], Iterator[str]]
) -> Iterator[tuple[str, tuple[str, ...]]]:
    """A heading and the lines of the tables below it; athletes who are asked the same share both."""
    alike: dict[tuple[str, tuple[str, ...]], list[Tallied]] = {}
    for one in result.tallied:
        alike.setdefault((one.file, tuple(tables(one))), []).append(one)
    for (_, lines), ones in alike.items():
        yield heading(ones[0], listed([one.athlete for one in ones])), lines


def heading(one: Tallied, athletes: str) -> str:
    """``Winter base (plan.programme.yaml), Mara, weeks 1-6``"""
    numbers = sorted(number for part in one.weeks for number in part.numbers)
    name = f"{one.programme} ({one.file})" if one.programme else one.file
    return ", ".join(part for part in (name, athletes, week_list(numbers)) if part)


def _tables(weeks: Sequence[WeekHoldings], result: Tallies, bold: bool) -> Iterator[str]:
    for by in result.tables:
        yield ""
        yield from _table(weeks, by, MOST_LIFTS if by == "lift" and not result.by else None, bold)
        if (by == "muscle" and not result.by) or by == "action":
            yield from _nothing(weeks)


def _wrapped(words: str, *, bold: bool = False) -> Iterator[str]:
    for line in wrap(safe(words), WIDTH, break_on_hyphens=False):
        yield strong(line, bold)


def _table(weeks: Sequence[WeekHoldings], by: str, most: int | None, bold: bool) -> Iterator[str]:
    names = hardest_first(weeks) if by == "lift" else []
    more = len(names[most:]) if most else 0
    if len(weeks) == 1:
        yield strong(TITLES[by], bold)
        yield from _of_one(weeks[0].rows(by)[:most], by)
        if by in ("session", "day"):
            yield _sum(weeks[0])
    else:
        yield strong(f"{TITLES[by]}: {IN_SHORT[by]}", bold)
        yield from _side_by_side(weeks, by, names[:most])
    if by == "muscle" and len(weeks) > 1:
        yield f"Under 8 and from 8 repetitions, and days: `spotline tally --week {weeks[0].numbers[0]}`"
    if more:
        yield f"and {counted_noun(more, 'more lift')}: `spotline tally --by lift`"


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


def _side_by_side(weeks: Sequence[WeekHoldings], by: str, names: Sequence[str]) -> Iterator[str]:
    """A column for each different week; columns that do not fit stand in further tables below.

    ``names`` are the lines to show, in order; where there are none, all that any week holds.
    """
    tables = [_by_name(part.rows(by)) for part in weeks]
    names = list(names or dict.fromkeys(name for table in tables for name in table))
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
    weeks: Sequence[WeekHoldings], tables: Sequence[dict[str, list[Row]]], names: Sequence[str], by: str
) -> list[list[str]]:
    """A column for each different week of this table, its weeks at the head."""
    alike: dict[tuple[str, ...], list[int]] = {}
    for part, table in zip(weeks, tables, strict=True):
        cells = [_cell(table.get(name, ())) for name in names]
        if by in ("session", "day"):
            cells.append(f"{part.week.all_sets()} in {part.minutes} min")
        alike.setdefault(tuple(cells), []).extend(part.numbers)
    return [[week_list(sorted(numbers)), *cells] for cells, numbers in alike.items()]


def _by_name(rows: Sequence[Row]) -> dict[str, list[Row]]:
    """Rows by their name; with its day where a session holds not the same on each of its days."""
    found: dict[str, list[Row]] = {}
    for row in rows:
        found.setdefault(row.name, []).append(row)
    for name, alike in [*found.items()]:
        if len({_short(row) for row in alike}) > 1:
            del found[name]
            found.update({f"{row.values['day']}, {name}": [row] for row in alike})
    return found


def _bounds(tables: Sequence[dict[str, list[Row]]], names: Sequence[str]) -> list[list[str]]:
    """The columns of floors and limits, where there are any."""
    columns = []
    for bound in ("floor", "limit"):
        cells = [
            next((in_words(table[name][0].values[bound]) for table in tables if name in table), "")
            for name in names
        ]
        if any(cells):
            columns.append([bound, *cells])
    return columns


def _cell(rows: Sequence[Row]) -> str:
    """What a week holds of one thing, in short; how often, where it holds that several times."""
    often = f"{len(rows)} x " if len(rows) > 1 else ""
    return f"{often}{_short(rows[0])}" if rows else ""


def _short(row: Row) -> str:
    return " ".join(part for part in (row.short, row.mark) if part)


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
    """The joint actions that get nothing, joint by joint, with the weeks where these differ."""
    every = [part.untrained() for part in weeks]
    always = [action for action in every[0] if all(action in one for one in every)] if every else []
    parts, whole = by_joint(always)
    label = max(map(len, parts), default=0)
    if always:
        yield ""
    if parts:
        yield "No direct set at the"
    for joint, actions in parts.items():
        lines = wrap(listed(actions), WIDTH - label - 4, break_on_hyphens=False)
        for number, line in enumerate(lines):
            yield f"  {'' if number else joint:<{label}}  {line}"
    if whole:
        yield from _wrapped(f"Nothing at the {listed(whole, 'or')}.")
    by_names: dict[tuple[str, ...], list[int]] = {}
    for part, untrained in zip(weeks, every, strict=True):
        further = tuple(action for action in untrained if action not in always)
        if further:
            by_names.setdefault(further, []).extend(part.numbers)
    for names, numbers in by_names.items():
        also = ", either" if always else ""
        yield from _wrapped(f"In {week_list(sorted(numbers))} no direct set for {listed(names, 'or')}{also}.")


def by_joint(actions: Sequence[str]) -> tuple[dict[str, list[str]], list[str]]:
    """Joint actions under the names of their joints, ``{"hip": ["flexion", "abduction"]}``; joints all of
    whose actions are among them.
    """
    joints: dict[str, list[str]] = {}
    for name, action in catalogue.actions().items():
        joints.setdefault(action.joint, []).append(name)
    whole = [joint for joint, names in joints.items() if set(names) <= set(actions)]
    parts = {
        joint: [_without_joint(name, joint, names) for name in names if name in actions]
        for joint, names in joints.items()
        if joint not in whole and not set(names).isdisjoint(actions)
    }
    return parts, whole


def _without_joint(name: str, joint: str, all_of_it: Sequence[str]) -> str:
    """An action's name without the word that says the joint: ``flexion``, ``elevation``."""
    first, _, rest = name.partition(" ")
    said = first == joint or (len(all_of_it) > 1 and all(one.startswith(f"{first} ") for one in all_of_it))
    return rest if rest and said else name
