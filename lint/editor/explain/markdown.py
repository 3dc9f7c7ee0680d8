"""What the editor's answers share: safe Markdown, times in words, and statements that are alike merged."""

from __future__ import annotations

import re
from functools import lru_cache

from ...wording.words import plain, safe, week_list

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from ...counting.header import ProgrammeHeader
    from ...counting.ledger import Ledger
    from ...model.quantities import Range

_MARKUP = re.compile(r"[\\`*_\[\]<>|~&@#!]|:(?=//)|(?<=[Ww]{3})\.")
"""What Markdown would read as markup: emphasis, links, pictures, tables, addresses, headings."""

MOST_STATEMENTS = 4
"""Statements on different weeks, athletes or lines that are written out one by one."""


@lru_cache(maxsize=1024)
def md(words: str) -> str:
    """A coach's words as Markdown that shows exactly these words, on one line."""
    return _MARKUP.sub(r"\\\g<0>", safe(" ".join(words.split())))


def unmarked(words: str) -> str:
    """The words that `md` has made safe, for where they are shown as they stand: titles, plain text."""
    return re.sub(r"\\([\\`*_\[\]<>|~&@#!:.])", r"\1", words)


def minutes(seconds: Range) -> str:
    """``54 min``, ``50-70 min``: whole minutes."""
    low, high = round(seconds.low / 60), round(seconds.high / 60)
    return f"{low} min" if low == high else f"{low}-{high} min"


def time(seconds: Range) -> str:
    """``45 s``, ``24-32 s``, ``3 min``, ``6-9.5 min``: seconds up to two minutes."""
    if seconds.high <= 120:
        low, high, unit = round(seconds.low), round(seconds.high), "s"
        return f"{low} {unit}" if low == high else f"{low}-{high} {unit}"
    ends = [plain(round(end / 30) / 2) for end in (seconds.low, seconds.high)]
    return f"{ends[0]} min" if ends[0] == ends[1] else f"{ends[0]}-{ends[1]} min"


def rounded(span: Range, digits: int = 0) -> str:
    """A range in round numbers: ``10``, ``10-12``."""
    low, high = plain(round(span.low, digits)), plain(round(span.high, digits))
    return low if low == high else f"{low}-{high}"


class Statement:
    """What holds for one athlete (by index among the ledgers) in some weeks, in full and ``short``.

    ``about`` names the line or session.
    """

    __slots__ = ("about", "athlete", "short", "weeks", "words")

    def __init__(
        self, words: str, athlete: int, weeks: Iterable[int], *, short: str = "", about: str = ""
    ) -> None:
        self.words = words
        self.short = short or words
        self.athlete = athlete
        self.weeks = tuple(weeks)
        self.about = about


def merged(
    statements: Iterable[Statement], ledgers: Sequence[Ledger], all_weeks: int | None = None
) -> list[tuple[str, Statement]]:
    """The statements, like ones once, each with what it holds for: ``("Tamsin, weeks 1-2", statement)``.

    Lines are named if there are several, athletes if it does not hold for all of them. Weeks are named if it
    does not hold for as many as ``all_weeks``, which are those of the programme if left out.
    """
    all_weeks = len(ledgers[0].weeks) if all_weeks is None and ledgers else all_weeks
    weeks_by_athlete: dict[tuple[str, str, int], set[int]] = {}
    first: dict[tuple[str, str], Statement] = {}
    for one in statements:
        weeks_by_athlete.setdefault((one.about, one.words, one.athlete), set()).update(one.weeks)
        first.setdefault((one.about, one.words), one)
    athletes: dict[tuple[str, str, tuple[int, ...]], list[int]] = {}
    for (about, words, athlete), weeks in weeks_by_athlete.items():
        athletes.setdefault((about, words, tuple(sorted(weeks))), []).append(athlete)
    are_several = len({about for about, _, _ in athletes}) > 1
    return [
        (
            _head(
                about if are_several else "",
                _names(who, ledgers),
                week_list(weeks) if len(weeks) != all_weeks else "",
            ),
            first[about, words],
        )
        for (about, words, weeks), who in athletes.items()
    ]


def merged_text(
    statements: Iterable[Statement], ledgers: Sequence[Ledger], all_weeks: int | None = None
) -> str:
    """The merged statements as text: the first in full, a few more in short."""
    parts_with_heads = merged(statements, ledgers, all_weeks)
    parts = [
        f"**{head}:** {one.short if number else one.words}" if head else one.words
        for number, (head, one) in enumerate(parts_with_heads[:MOST_STATEMENTS])
    ]
    more = len(parts_with_heads) - MOST_STATEMENTS
    return paragraphs(*parts, f"And {more} more that differ." if more > 0 else "")


def _head(*parts: str) -> str:
    head = ", ".join(part for part in parts if part)
    return f"{head[0].upper()}{head[1:]}" if head else ""


def _names(athletes: list[int], ledgers: Sequence[Ledger]) -> str:
    if len(athletes) == len(ledgers):
        return ""
    return " and ".join(name_of(ledgers[at].header) for at in athletes)


def name_of(programme: ProgrammeHeader) -> str:
    """The athlete's name as Markdown."""
    name = programme.athlete.name if programme.athlete else ""
    return md(name) if name else "athlete without a name"


def uncapitalised(head: str) -> str:
    """A head inside a label: ``weeks 1-3``; names keep their capital."""
    return f"w{head[1:]}" if head.startswith("Week") else head


def total_of(what: str, head: str) -> str:
    """What a total is of: ``session``, ``session, weeks 1-3``; the head stands in for ``a week``."""
    return ", ".join(part for part in ("" if head and what == "a week" else what, head) if part)


def paragraphs(*parts: str) -> str:
    """Paragraphs, empty ones left out."""
    return "\n\n".join(part for part in parts if part)


def bullets(lines: Iterable[str]) -> str:
    """A list of bullet points."""
    return "\n".join(f"- {line}" for line in lines)


def table(heads: Sequence[str], rows: Iterable[Sequence[str]]) -> Iterator[str]:
    """The lines of a table; the cells are Markdown."""
    yield f"| {' | '.join(heads)} |"
    yield f"|{'|'.join(' --- ' for _ in heads)}|"
    for row in rows:
        yield f"| {' | '.join(row)} |"
