"""What several rules share: wordings for places in the week and counted lines, and how sets are counted."""

from __future__ import annotations

from ..lint.finding import Related
from ..lint.ledger import DIRECT, FRACTIONAL, TOTAL
from ..lint.programme import WEEKDAYS
from ..lint.quantities import plain
from ..lint.registry import Option

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

    from ..lint.ledger import Count
    from ..lint.programme import Prescription, Programme
    from ..lint.quantities import Range

COUNTING = Option(
    "counting", (FRACTIONAL,), "kind of count: direct, fractional or total", "pelland-2026-frac"
)
"""The option of rules that hold weekly sets against a limit or floor; a team's `counting` moves them all."""

LOADED = (
    "barbell",
    "trap bar",
    "guided bar",
    "dumbbell",
    "kettlebell",
    "plate",
    "sandbag",
    "machine",
    "cable",
)
"""Implements whose load somebody has to choose; the body, bands and straps bring their own."""

HELPING = {
    DIRECT: "not counting where it only helps",
    FRACTIONAL: "counting half where it helps",
    TOTAL: "counting in full where it helps",
}
"""What a set in which a muscle only helps counts, in words."""


def line_name(line: Prescription) -> str:
    """``Lower A, back squat``."""
    return ", ".join(part for part in (line.session.name, exercise_name(line)) if part)


def exercise_name(line: Prescription) -> str:
    """``back squat``, or ``back squat then front squat`` where it changes by week."""
    return " then ".join(dict.fromkeys(term.words for term in line.names()))


def counted_lines(*counts: Count) -> tuple[Related, ...]:
    """The lines that counts came from, each with its sets, in the order of the file and once each."""
    seen: dict[Prescription, Range] = {}
    for count in counts:
        for line, sets in count.by_line().items():
            if sets.high:
                seen.setdefault(line, sets)
    return tuple(
        Related(line.place, f"{line_name(line)}: {sets} {'set' if str(sets) == '1' else 'sets'}")
        for line, sets in sorted(seen.items(), key=lambda pair: (pair[0].place.start, pair[0].order))
    )


def day_name(programme: Programme, day: int) -> str:
    """The weekday of a day, ``Monday``, counted from 1, the day on which the programme starts."""
    first = programme.starts.weekday() if programme.starts else 0
    return WEEKDAYS[(first + day - 1) % 7].capitalize()


def listed(names: Sequence[str]) -> str:
    """``a``, ``a and b``, ``a, b and c``."""
    return " and ".join([", ".join(names[:-1]), names[-1]]) if len(names) > 1 else "".join(names)


def first_of(names: Sequence[str], most: int = 3) -> str:
    """``a, b, c and 2 more``: the first of many names."""
    more = len(names) - most
    return listed(names) if more <= 0 else f"{', '.join(names[:most])} and {more} more"


def sets_of(number: float | str) -> str:
    """``1 set``, ``12 sets``, ``up to 12 sets``."""
    words = number if isinstance(number, str) else plain(number)
    return f"{words} set" if words == "1" else f"{words} sets"


def says(words: Sequence[str], *texts: str) -> bool:
    """Whether one of some words, or groups of words, stands in a text of the coach's; hyphens aside."""
    said = f" {' '.join(_letters(' '.join(texts)).split())} "
    return any(f" {' '.join(_letters(word).split())} " in said for word in words)


def _letters(text: str) -> str:
    return "".join(letter if letter.isalnum() else " " for letter in text.casefold())
