"""Values at their places: single words, lists, numbers, durations."""

from __future__ import annotations

from datetime import date

from ..findings.finding import Finding
from ..syntax.tree import Mapping, Scalar, Sequence
from ..text.places import Term
from . import quantities

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from ..findings.finding import Edit, Severity
    from ..syntax.tree import Node
    from ..text.places import Passage, Place, Text
    from .quantities import Range

MOST_WEEKS = 104
"""Weeks that a programme may run: what its schema lets one block or programme say."""


class Located:
    """A node of the tree, the text or passage it lies in, and the aliases and merge keys that led to it."""

    __slots__ = ("node", "through", "within")

    def __init__(self, node: Node, within: Text | Passage, through: tuple[Place, ...] = ()) -> None:
        self.node = node
        self.within = within
        self.through = through

    @property
    def place(self) -> Place:
        """Where the value stands."""
        return self.within.place(self.node.start, self.node.end).reached(self.through)

    @property
    def written(self) -> Place:
        """Where the words stand, which for an alias is not where they are used."""
        return self.place if self.node.defined is None else self.node.defined.reached(self._inner())

    @property
    def plain(self) -> object:
        """The value as bare data."""
        return self.node.plain

    @property
    def words(self) -> str:
        """The text of a single value, as written; empty for anything else."""
        return self.node.text if isinstance(self.node, Scalar) else ""

    def __contains__(self, key: str) -> bool:
        return isinstance(self.node, Mapping) and key in self.node.entries

    def get(self, key: str) -> Located | None:
        """The value of a key; None where there is none."""
        if not isinstance(self.node, Mapping):
            return None
        entry = self.node.entries.get(key)
        return None if entry is None else Located(entry.value, self.within, self._inner() + entry.merged)

    def pairs(self) -> Iterator[tuple[str, Place, Located]]:
        """Each key with its place and its value."""
        if isinstance(self.node, Mapping):
            inner = self._inner()
            for key, entry in self.node.entries.items():
                through = inner + entry.merged
                place = self.within.place(entry.key.start, entry.key.end).reached(through)
                yield key, place, Located(entry.value, self.within, through)

    def items(self) -> list[Located]:
        """The members of a list; a single value counts as a list of one."""
        if isinstance(self.node, Sequence):
            inner = self._inner()
            return [Located(item, self.within, inner) for item in self.node.items]
        return [self]

    def _inner(self) -> tuple[Place, ...]:
        return self.through if self.node.defined is None else (*self.through, self.node.place)


class Reader:
    """Gathers findings while the model is built."""

    def __init__(self) -> None:
        self.findings: list[Finding] = []

    def say(
        self,
        rule: str,
        place: Place,
        counted: str,
        *,
        change: str,
        severity: Severity = "error",
        where: str = "",
        edits: tuple[Edit, ...] = (),
    ) -> None:
        """Notes a finding; words that several lines share by an alias are spoken of once."""
        if all((known.rule, known.place, known.counted) != (rule, place, counted) for known in self.findings):
            self.findings.append(
                Finding(rule, severity, place, counted, change=change, where=where, edits=edits)
            )

    def day(self, at: Located | None) -> date | None:
        """A calendar date; one that the calendar lacks is a finding."""
        if at is None or not at.words:
            return None
        parts = at.words.split("-")
        if [len(part) for part in parts] != [4, 2, 2] or not all(part.isdecimal() for part in parts):
            return None
        try:
            return date(*map(int, parts))
        except ValueError:
            self.say(
                "date-impossible",
                at.place,
                f"{at.words} is not in the calendar.",
                change="Write the date as year-month-day, a day that the month has.",
            )
            return None


def text_of(at: Located | None) -> str:
    """The words of a single value; empty where it is none."""
    return "" if at is None else at.words


def word_of(at: Located | None) -> Any:
    """The same for a word of a list in the schema, typed as what takes it: one of the words of that list."""
    return text_of(at)


def term_of(at: Located) -> Term:
    """The words of a single value with their place."""
    return Term(at.words, at.place)


def terms_of(at: Located | None) -> tuple[Term, ...]:
    """One word or a list of words, each with its place."""
    return () if at is None else tuple(term_of(item) for item in at.items() if item.words)


def range_of(at: Located | None) -> Range | None:
    """A number or a range."""
    return None if at is None else quantities.number_or_range(at.plain)


def duration_of(at: Located | None) -> Range | None:
    """A time or a range of times, in seconds."""
    return None if at is None else quantities.duration(at.plain)


def items_of(at: Located | None) -> list[Located]:
    """The items of a list; none where it is no list."""
    return [] if at is None else at.items()


def whole_number(at: Located | None, default: int) -> int:
    """A whole number of weeks, rounds or sets within bounds; else the default."""
    value = None if at is None else at.plain
    sound = isinstance(value, int) and not isinstance(value, bool) and 1 <= value <= MOST_WEEKS
    return value if sound and isinstance(value, int) else default


def number_of(at: Located | None, span: Range) -> float | None:
    """A number inside a span; one outside, which the schema reports, counts as not written."""
    value = None if at is None else at.plain
    number = float(value) if isinstance(value, (int, float)) and not isinstance(value, bool) else -1.0
    return number if span.low <= number <= span.high else None


def weekdays_of(at: Located | None) -> tuple[str, ...] | int | None:
    """Weekdays by name, or how many days; None where nothing can be read."""
    if at is None:
        return None
    if isinstance(at.plain, int):
        return at.plain
    return tuple(item.words.lower() for item in at.items() if item.words)
