"""Values and their places: single words, lists, numbers, durations."""

from __future__ import annotations

from datetime import date, timedelta
from functools import cache, partial

from ..findings.finding import Amount, Finding
from ..syntax.tree import Mapping, Scalar, Sequence
from ..text.places import Place, Term
from . import quantities
from .bounds import MOST_NUMBER, beyond
from .sessions import WEEKDAYS
from .weeks import time_of_day, weekday, weeks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from collections.abc import Set as AbstractSet
    from typing import Any

    from ..findings.finding import Edit, Edits, Severity
    from ..syntax.tree import Node
    from ..text.places import Passage, Text
    from .quantities import Range

MOST_WEEKS = 104
"""How many weeks a programme may last; the schema allows one block as many."""


@cache
def _known_keys() -> frozenset[str]:
    """The keys of all that a programme may hold."""
    from ...schema import tested

    schema = tested("programme")
    kinds = (schema, *schema["$defs"].values())
    return frozenset(key for kind in kinds for key in kind.get("properties", ()))


def misspelt(at: LocatedNode, several: tuple[str, ...]) -> set[str]:
    """Which of several keys a group may hold under a misspelt one."""
    known, node = _known_keys(), at.node
    if isinstance(node, Mapping) and known.issuperset(node.entries):
        return set()
    strange = at.keys() - known
    from ..schemas.slips import nearest

    return {meant for key in strange if (meant := nearest(key, several)) and meant not in at}


class LocatedNode:
    """A node of the tree, the text or passage it lies in, and the aliases and merge keys that led to it.

    Its places lie in ``within``: where that is a passage, they move with it when the text changes.
    """

    __slots__ = ("node", "through", "within")

    def __init__(self, node: Node, within: Text | Passage, through: tuple[Place, ...] = ()) -> None:
        self.node = node
        self.within = within
        self.through = through

    @property
    def place(self) -> Place:
        """Where the value is used; for an alias that is the place of ``*name``."""
        node, begins = self.node, self.within.start
        return Place(self.within, node.start - begins, node.end - begins, self.through)

    @property
    def written(self) -> Place:
        """Where the words are written; for an alias that is where they were defined."""
        return self.place if self.node.defined is None else self.node.defined.reached(self.inner())

    @property
    def plain(self) -> object:
        """The value as plain data."""
        return self.node.plain

    @property
    def words(self) -> str:
        """The text of a single value, as written; empty for anything else."""
        return self.node.text if isinstance(self.node, Scalar) else ""

    def __contains__(self, key: str) -> bool:
        return isinstance(self.node, Mapping) and key in self.node.entries

    def get(self, key: str) -> LocatedNode | None:
        """The value of a key; None where there is none."""
        node = self.node
        entry = node.entries.get(key) if isinstance(node, Mapping) else None
        if entry is None:
            return None
        through = self.through if node.defined is None else self.inner()
        return LocatedNode(entry.value, self.within, through + entry.merged)

    def among(self, keys: tuple[str, ...]) -> list[tuple[str, Node, tuple[Place, ...]]]:
        """Those of some keys that are there, each with the node of its value and what has led to it."""
        node = self.node
        if not isinstance(node, Mapping):
            return []
        entries, inner = node.entries, self.inner()
        return [
            (key, entry.value, inner + entry.merged)
            for key in keys
            if (entry := entries.get(key)) is not None
        ]

    def keys(self) -> AbstractSet[str]:
        """The keys of a mapping; none of anything else."""
        return self.node.entries.keys() if isinstance(self.node, Mapping) else frozenset()

    def pairs(self) -> Iterator[tuple[str, Place, LocatedNode]]:
        """Each key with its place and its value."""
        if isinstance(self.node, Mapping):
            inner = self.inner()
            for key, entry in self.node.entries.items():
                through = inner + entry.merged
                place = self.within.place(entry.key.start, entry.key.end).reached(through)
                yield key, place, LocatedNode(entry.value, self.within, through)

    def items(self) -> list[LocatedNode]:
        """The members of a list; a single value counts as a list of one."""
        if isinstance(self.node, Sequence):
            inner = self.inner()
            return [LocatedNode(item, self.within, inner) for item in self.node.items]
        return [self]

    def inner(self) -> tuple[Place, ...]:
        """The aliases and merge keys that lead to what it holds."""
        return self.through if self.node.defined is None else (*self.through, self.node.place)


def once(findings: list[Finding]) -> list[Finding]:
    """The findings without those that say the same of the same place again."""
    if len(findings) < 2:
        return findings
    return list({(one.rule, one.place.key, one.counted): one for one in reversed(findings)}.values())[::-1]


class Reader:
    """Base of the readers in this package; all readers of one file add their findings to one list."""

    def __init__(self, findings: list[Finding]) -> None:
        self.findings = findings

    def report(
        self,
        rule: str,
        place: Place,
        counted: str,
        *,
        change: str,
        severity: Severity = "error",
        where: str = "",
        edits: Edits = (),
        amount: Amount | None = None,
        line: Place | None = None,
    ) -> None:
        """Adds a finding; `once` leaves out what words that several lines share by an alias give again."""
        self.findings.append(
            Finding(
                rule,
                severity,
                place,
                counted,
                change=change,
                where=where,
                edits=edits,
                amount=amount,
                line=line,
            )
        )

    def within(self, kind: str, at: LocatedNode, value: object) -> bool:
        """Whether a value lies within what its kind takes (`bounds`); reports one that does not."""
        takes = beyond(kind, value)
        return not takes or self.beyond(at, takes)

    def beyond(self, at: LocatedNode, takes: str) -> bool:
        """Reports a value beyond what is taken there, which is said; always False."""
        self.report(
            "value-out-of-range",
            at.place,
            f"`{at.words}` can hardly be meant; this takes {takes}.",
            change="Correct the number or its unit.",
        )
        return False

    def duration(self, at: LocatedNode | None) -> Range | None:
        """A time or a range of times, in seconds; reports one beyond an hour."""
        known = None if at is None else quantities.duration(at.plain)
        return known if at is None or known is None or self.within("rest", at, known) else None

    def length(self, at: LocatedNode | None) -> Range | None:
        """How long something goes on, in seconds; reports one beyond five hours."""
        known = None if at is None else quantities.length(at.plain)
        return known if at is None or known is None or self.within("work", at, known) else None

    def minutes(self, at: LocatedNode | None) -> Range | None:
        """Minutes, or a range of them; reports those beyond fifteen hours."""
        known = range_of(at)
        return known if at is None or known is None or self.within("minutes", at, known) else None

    def in_weeks(self, at: LocatedNode | None, last: int) -> tuple[tuple[int, int], ...]:
        """The runs of weeks in which something takes place; reports those past the ``last`` week."""
        spans = () if at is None else weeks(str(at.plain))
        for one in spans:
            if at is not None and one[1] > last:
                self.report(
                    "weeks-beyond",
                    at.place,
                    f"{at.words} goes past week {last}, the last one here.",
                    change="Correct the weeks, or the length of the block or programme.",
                    edits=partial(within_weeks, at, last),
                    amount=Amount(one[1], last, "weeks"),
                    line=at.written,
                )
        return tuple((first, min(end, last)) for first, end in spans if first <= last)

    def day(self, at: LocatedNode | None) -> date | None:
        """A calendar date; reports one that the calendar does not have, or that is on another weekday."""
        if at is None or not at.words:
            return None
        name, _, words = at.words.rpartition(" ")
        if name:
            from .dated import check_weekday

            return check_weekday(self, at.place, name, words, calendar_day(words))
        parts = at.words.split("-")
        if [len(part) for part in parts] != [4, 2, 2] or not all(part.isdecimal() for part in parts):
            return None
        found = calendar_day(at.words)
        if found is None and FIRST_YEAR <= int(parts[0]) <= LAST_YEAR:  # the schema says the rest
            self.report(
                "date-impossible",
                at.place,
                f"{at.words} is not in the calendar.",
                change="Write the date as year-month-day, a day that the month has.",
                edits=partial(_days_near, at),
            )
        return found


def calendar_day(words: str) -> date | None:
    """The day that ``2026-01-05`` names; None where these years have none."""
    try:
        day = date.fromisoformat(words)
    except ValueError:
        return None
    return day if FIRST_YEAR <= day.year <= LAST_YEAR else None


FIRST_YEAR, LAST_YEAR = 1950, 2199
"""The years that a date can lie in."""


def _days_near(at: LocatedNode) -> Iterator[Edit]:
    """The days on both sides of one that the calendar does not have."""
    from ..syntax.rewrites import one_of

    return one_of(at.place, days_near(at.words))


def days_near(words: str) -> Iterator[str]:
    """The last day of a month and the first of the next, for a day past its end; else with day and month
    the other way round.
    """
    year, month, day = map(int, words.split("-"))
    if 1 <= month <= 12 and 28 < day <= 31 and year > 0:
        following = date(year + month // 12, month % 12 + 1, 1)
        yield str(following - timedelta(days=1))
        yield str(following)
    elif 12 < month <= 28 and 0 < day <= 12:
        yield f"{year:04}-{day:02}-{month:02}"


def within_weeks(at: LocatedNode, last: int) -> Iterator[Edit]:
    """The weeks without those past the last one; and the length that they need."""
    from ..syntax.rewrites import dropped, one_of
    from .week_edits import lengthened, runs

    spans = weeks(str(at.plain))
    kept = [week for first, end in spans for week in range(first, min(end, last) + 1)]
    if kept:
        yield from one_of(at.place, [runs(kept)])
    else:
        yield from dropped(at.place)
    yield from lengthened(at.place, max(end for _, end in spans))


def text_of(at: LocatedNode | None) -> str:
    """The words of a single value; empty for anything else."""
    return "" if at is None else at.words


def word_of(at: LocatedNode | None) -> Any:
    """The same for a word of a list in the schema, typed as what takes it: one of the words of that list."""
    return text_of(at)


def term_of(at: LocatedNode) -> Term:
    """The words of a single value with their place."""
    return Term(at.words, at.place)


def terms_of(at: LocatedNode | None) -> tuple[Term, ...]:
    """One word or a list of words, each with its place."""
    return () if at is None else tuple(term_of(item) for item in at.items() if item.words)


def equipment_of(at: LocatedNode | None) -> tuple[Term, ...]:
    """The pieces of a list of equipment; where it says that there is none, the word for that."""
    if at is None or at.node is None or (isinstance(at.node, Sequence) and at.node.items):
        return terms_of(at)
    return (Term("none", at.place),) if at.words or isinstance(at.node, Sequence) else ()


def place_of(at: LocatedNode, key: str) -> Place:
    """The place of the value of a key; where there is none, the place of the mapping."""
    found = at.get(key)
    return at.place if found is None else found.place


def places_of(at: LocatedNode, *keys: str) -> dict[str, Place]:
    """The places of the values of some keys, where they are there."""
    return {key: found.place for key in keys if (found := at.get(key)) is not None}


def later(choice: str, *asked: object) -> Iterator[Edit]:
    """What a function of `week_edits` offers, which is loaded when somebody asks."""
    from . import week_edits

    found: Iterator[Edit] = getattr(week_edits, choice)(*asked)
    return found


def range_of(at: LocatedNode | None) -> Range | None:
    """A number or a range; None where there is none, or where it is beyond what anybody means."""
    known = None if at is None else quantities.number_or_range(at.plain)
    return None if known is None or known.high > MOST_NUMBER else known


def share_of(at: LocatedNode | None) -> float | None:
    """A share in per cent; None where there is none, or it cannot be read."""
    known = None if at is None else quantities.spelt("workingBest", at.plain, quantities.percent)
    return None if known is None else known.middle


def items_of(at: LocatedNode | None) -> list[LocatedNode]:
    """The members of a list, or the single value in a list; none where there is no value."""
    return [] if at is None else at.items()


def whole_number(at: LocatedNode | None, default: int) -> int:
    """A whole number of weeks, rounds or sets within bounds; else the default."""
    value = None if at is None else at.plain
    sound = isinstance(value, int) and not isinstance(value, bool) and 1 <= value <= MOST_WEEKS
    return value if sound and isinstance(value, int) else default


def number_of(at: LocatedNode | None, span: Range) -> float | None:
    """A number within a span; None for one outside, which the schema reports."""
    value = None if at is None else at.plain
    number = float(value) if isinstance(value, (int, float)) and not isinstance(value, bool) else -1.0
    return number if span.low <= number <= span.high else None


def weekdays_of(at: LocatedNode | None) -> tuple[str, ...] | int | None:
    """Weekdays by name, or how many days; None where nothing can be read."""
    if at is None:
        return None
    if isinstance(at.plain, int):
        return at.plain
    return tuple(weekday(item.words) or item.words.lower() for item in at.items() if item.words)


def days_of(at: LocatedNode | None, start_weekday: int) -> tuple[int, ...]:
    """Day numbers, 1 for the weekday on which the programme starts; each once, in the order written."""
    days: list[int] = []
    for item in items_of(at):
        day = item.plain
        if isinstance(day, str) and (name := weekday(day) or weekday(time_of_day(day)[0])):
            day = (WEEKDAYS.index(name) - start_weekday) % 7 + 1
        if isinstance(day, int) and not isinstance(day, bool) and 1 <= day <= 7 and day not in days:
            days.append(day)
    return tuple(days)


def hours_of(at: LocatedNode | None, start_weekday: int) -> dict[int, float]:
    """The times of day, in hours, by the day that they stand beside."""
    hours: dict[int, float] = {}
    for item in items_of(at):
        if (hour := time_of_day(item.words)[1]) is not None:
            hours.update(dict.fromkeys(days_of(item, start_weekday), hour))
    return hours
