"""Lines whose clock, rest or words change by week: one part for each run of weeks in which they stay.

Nothing here is needed where they stay all the time, so that other modules import it only when they change.
"""

from __future__ import annotations

from copy import copy

from ..syntax.tree import KeyValue, Mapping
from .bounds import OPEN
from .values import LocatedNode

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from typing import Protocol

    from .sessions import Prescription, Slice, Weeks

    Values = dict[str, tuple[Slice, ...]]

    class WeekReader(Protocol):
        """What is needed here of the reader of a line."""

        spans: Weeks

        def by_week(self, at: LocatedNode, key: str = "") -> list[tuple[int, int, LocatedNode]]:
            """First week, last week and value."""

    class PartReader(WeekReader, Protocol):
        """The reader of a line, of which parts are made."""

        unread: set[str]

        def state(self, line: Prescription, at: LocatedNode) -> None:
            """Gives a line what it says once for all its weeks."""

        def implied_sets(self, at: LocatedNode, own: Values) -> tuple[Slice, ...]:
            """Sets that follow from the rest of the line."""


def parts_of(
    reader: WeekReader, at: LocatedNode, keys: Iterable[str]
) -> list[tuple[frozenset[int], LocatedNode]]:
    """The weeks in which the values of some keys stay as they are, each with the mapping as it is in them.

    A week that has no value for a key is told by ``reader``, and its mapping lacks that key.
    """
    held: dict[int, dict[str, LocatedNode | None]] = {
        week: {} for first, last in reader.spans for week in range(first, last + 1)
    }
    changing = [
        (key, found) for key in keys if (found := at.get(key)) is not None and isinstance(found.node, Mapping)
    ]
    if held and not changing:
        return [(frozenset(held), at)]
    for key, found in changing:
        by_week = [one for one in reader.by_week(found, key) if key not in OPEN or one[2].plain != "none"]
        for week, values in held.items():
            values[key] = next((part for first, last, part in by_week if first <= week <= last), None)
    alike: dict[tuple[tuple[str, int], ...], list[int]] = {}
    for week, values in held.items():
        alike.setdefault(tuple((key, id(one and one.node)) for key, one in values.items()), []).append(week)
    return [(frozenset(weeks), _with(at, held[weeks[0]])) for weeks in alike.values()]


def spans_of(weeks: frozenset[int]) -> Weeks:
    """Weeks as runs, each with its first and its last."""
    runs: list[tuple[int, int]] = []
    for week in sorted(weeks):
        if runs and runs[-1][1] == week - 1:
            runs[-1] = (runs[-1][0], week)
        else:
            runs.append((week, week))
    return tuple(runs)


def _with(at: LocatedNode, values: dict[str, LocatedNode | None]) -> LocatedNode:
    """A mapping in which some keys have other values, or none."""
    node = at.node
    if not values or not isinstance(node, Mapping):
        return at
    entries = dict(node.entries)
    led_by = len(at.inner())
    for key, one in values.items():
        entry = entries.pop(key)
        if one is not None:
            entries[key] = KeyValue(entry.key, one.node, one.through[led_by:])
    made = Mapping(node.source, node.start, node.end, entries, node.plain, node.size, node.defined)
    return LocatedNode(made, at.within, at.through)


def merged(parts: Iterable[Values]) -> Values:
    """The values of parts, one part after the other."""
    found: Values = {}
    for values in parts:
        for key, slices in values.items():
            found[key] = (*found.get(key, ()), *slices)
    return found


def line_in_parts(
    reader: PartReader, line: Prescription, parts: list[tuple[frozenset[int], LocatedNode]]
) -> Iterator[Prescription]:
    """A line once for each of its parts; it has been read as its first part says."""
    for number, (weeks, at) in enumerate(parts):
        part = _only_in(line, weeks)
        if number:
            reader.state(part, at)
            if "every" in at and "sets" not in at:
                reader.unread.discard("sets")
                implied = reader.implied_sets(at, dict(part.groups[0]))
                part.groups = tuple({**group, "sets": implied} for group in part.groups)
                part.unread = frozenset(reader.unread)
        yield part


def paired_in_parts(line: Prescription) -> Iterator[Prescription]:
    """A line of a circuit, a superset or a complex once for each part of that."""
    whole = line.paired
    for weeks, paired in whole.parts if whole is not None else ():
        held = weeks if line.only_in is None else weeks & line.only_in
        if held:
            part = _only_in(line, held)
            part.paired = paired
            yield part


def _only_in(line: Prescription, weeks: frozenset[int]) -> Prescription:
    part = copy(line)
    part.only_in = weeks
    return part
