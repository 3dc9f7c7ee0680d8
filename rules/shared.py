"""Wordings and places that several rules share."""

from __future__ import annotations

import re

from ..lint.findings.finding import Related
from ..lint.model.naming import line_name
from ..lint.wording.words import listed, shortened

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Count, Tally
    from ..lint.model.sessions import Prescription
    from ..lint.text.places import Place


def where_to_add(count: Count) -> Place:
    """The first line that was counted: what is missing could stand beside it."""
    return count.lines()[0][0].place


def where_named(count: Count) -> str:
    """The name of that line."""
    return line_name(count.lines()[0][0])


def sessions_named(count: Count) -> str:
    """The sessions that a count falls on, ``Lower A or Lower B``."""
    names = list(dict.fromkeys(line.session.name for line, _ in count.lines()))
    return " or ".join(names[:2])


MOST_NAMED = 4
"""How many names a message gives before it only counts the rest."""


def each_line(entries: Iterable[SetGroup]) -> list[SetGroup]:
    """One entry for each line and exercise, in the order of the file."""
    each = {(entry.prescription, entry.name): entry for entry in reversed(list(entries))}
    return sorted(each.values(), key=lambda entry: (entry.prescription.place.start, entry.prescription.order))


def unless(
    tally: Tally, actions: Iterable[str] = (), areas: Iterable[str] = (), does: str = "does it"
) -> str:
    """``, unless `toe push` does it``: the unknown exercises whose words may mean what is missing."""
    return unless_one(tally.may_train(actions, areas), does)


def unless_one(names: list[str], does: str) -> str:
    """The same for some names; empty where there are none."""
    shown = [f"`{shortened(name)}`" for name in names]
    if len(shown) > MOST_NAMED:
        shown = [*shown[: MOST_NAMED - 1], f"one of {len(shown) - MOST_NAMED + 1} more"]
    return f", unless {listed(shown, 'or')} {does}" if shown else ""


def with_the(adviser: str) -> str:
    """``the physiotherapist``, or ``whoever advised it`` where no role is written."""
    return f"the {adviser}" if adviser else "whoever advised it"


def named_at(entry: SetGroup) -> Place:
    """Where the exercise is named, which for one that is swapped is the swap."""
    return entry.work.places["exercise"]


def also(entries: Iterable[SetGroup], words: str) -> Iterator[Related]:
    """Further lines of the same kind, as related places."""
    return (Related(named_at(entry), f"{line_name(entry.prescription)}: {words}") for entry in entries)


def names_of(entries: Iterable[SetGroup]) -> list[str]:
    """The names of the exercises, each once."""
    return list(dict.fromkeys(entry.name for entry in entries))


def some_of(names: list[str]) -> str:
    """``a, b and c``; of many the first ones, ``a, b, c, d and 3 more``."""
    if len(names) > MOST_NAMED + 1:
        names = [*names[:MOST_NAMED], f"{len(names) - MOST_NAMED} more"]
    return listed(names)


def capital(words: str) -> str:
    """The words with a capital first letter."""
    return words[:1].upper() + words[1:]


def notes_on(line: Prescription) -> Iterator[str]:
    """The notes on a line, what it is paired with, and its session."""
    yield line.note
    yield line.paired.note if line.paired else ""
    yield line.session.note
    yield line.session.block.note


def beginning(words: Iterable[str]) -> Callable[[Iterable[str]], bool]:
    """A test whether one of several texts holds a word that begins so, whatever the case."""
    pattern = re.compile("|".join(rf"\b{re.escape(word)}" for word in words) or r"(?!)", re.IGNORECASE)
    return lambda texts: any(pattern.search(text) for text in texts)
