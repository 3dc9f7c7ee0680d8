"""What the editor's answers share: safe Markdown, times in words, what holds for several drawn together."""

from __future__ import annotations

import re

from ...wording.words import plain, safe, week_list

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from ...counting.header import ProgrammeHeader
    from ...counting.ledger import Ledger
    from ...model.quantities import Range

_MARKS = re.compile(r"[\\`*_\[\]<>|~&@#!]|:(?=//)|(?<=[Ww]{3})\.")
"""What Markdown would take for more than a letter: emphasis, links, pictures, tables, addresses, headings."""


MOST_TOLD = 4
"""Different weeks, athletes or lines that are told one by one."""


def md(words: str) -> str:
    """Words of a coach's as Markdown that shows just these words, on one line."""
    return _MARKS.sub(r"\\\g<0>", safe(" ".join(words.split())))


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
    """What is said of one athlete (by position among the ledgers) in some weeks, in full and ``short``.

    ``of`` names the line or session that it is about.
    """

    __slots__ = ("athlete", "of", "short", "weeks", "words")

    def __init__(
        self, words: str, athlete: int, weeks: Iterable[int], *, short: str = "", of: str = ""
    ) -> None:
        self.words = words
        self.short = short or words
        self.athlete = athlete
        self.weeks = tuple(weeks)
        self.of = of


def together(
    told: Iterable[Statement], ledgers: Sequence[Ledger], whole: int | None = None
) -> list[tuple[str, Statement]]:
    """What is said, like words once, each with what it holds for: ``("Tamsin, weeks 1-2", words)``.

    Lines are named where there are several, athletes where it does not hold for all, weeks where there are
    not as many as in the ``whole`` (else in the programme).
    """
    whole = len(ledgers[0].weeks) if whole is None and ledgers else whole
    weeks: dict[tuple[str, str, int], set[int]] = {}
    first: dict[tuple[str, str], Statement] = {}
    for one in told:
        weeks.setdefault((one.of, one.words, one.athlete), set()).update(one.weeks)
        first.setdefault((one.of, one.words), one)
    athletes: dict[tuple[str, str, tuple[int, ...]], list[int]] = {}
    for (of, words, athlete), held in weeks.items():
        athletes.setdefault((of, words, tuple(sorted(held))), []).append(athlete)
    several = len({of for of, _, _ in athletes}) > 1
    return [
        (
            _head(of if several else "", _names(who, ledgers), week_list(held) if len(held) != whole else ""),
            first[of, words],
        )
        for (of, words, held), who in athletes.items()
    ]


def several(told: Iterable[Statement], ledgers: Sequence[Ledger], whole: int | None = None) -> str:
    """What is said, drawn together: the first in full, a few more in short."""
    drawn = together(told, ledgers, whole)
    parts = [
        f"**{head}:** {one.short if number else one.words}" if head else one.words
        for number, (head, one) in enumerate(drawn[:MOST_TOLD])
    ]
    more = len(drawn) - MOST_TOLD
    return paragraphs(*parts, f"And {more} more that differ." if more > 0 else "")


def _head(*parts: str) -> str:
    head = ", ".join(part for part in parts if part)
    return f"{head[0].upper()}{head[1:]}" if head else ""


def _names(who: list[int], ledgers: Sequence[Ledger]) -> str:
    if len(who) == len(ledgers):
        return ""
    return " and ".join(name_of(ledgers[at].header) for at in who)


def name_of(programme: ProgrammeHeader) -> str:
    """The athlete's name as Markdown."""
    return (
        md(programme.athlete.name)
        if programme.athlete and programme.athlete.name
        else "athlete without a name"
    )


def paragraphs(*parts: str) -> str:
    """Parts of a page, those that say something."""
    return "\n\n".join(part for part in parts if part)


def bullets(lines: Iterable[str]) -> str:
    """A list."""
    return "\n".join(f"- {line}" for line in lines)


def table(heads: Sequence[str], rows: Iterable[Sequence[str]]) -> Iterator[str]:
    """The lines of a table; cells are Markdown."""
    yield f"| {' | '.join(heads)} |"
    yield f"|{'|'.join(' --- ' for _ in heads)}|"
    for row in rows:
        yield f"| {' | '.join(row)} |"
