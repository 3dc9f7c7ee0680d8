"""A sheet as Markdown: to be read as it stands, or turned into pages."""

from __future__ import annotations

import re

from ..sheets.seal import OPEN, sealed
from ..sheets.sheet import CAUTION, PAIN

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..sheets.sheet import Sheet, SheetLine, SheetSession, SheetWeek

MOST_ROWS = 6
"""Sets that get a row of boxes each; more get one row for all."""


def report(sheet: Sheet) -> None:
    """Prints it."""
    print(text(sheet), end="")


def text(sheet: Sheet) -> str:
    """The whole file."""
    return sealed("\n".join(_document(sheet)) + "\n")


def _document(sheet: Sheet) -> Iterator[str]:
    yield f"<!-- {OPEN} -->"
    yield ""
    yield f"# {plain(sheet.title)}"
    yield ""
    yield plain(" · ".join(part for part in (sheet.athlete, sheet.words) if part))
    if sheet.leave_out:
        yield from ("", "**Leave out**", "")
        yield from (f"- {plain(one)}" for one in sheet.leave_out)
    yield from _paragraph(sheet.stop)
    if sheet.terms:
        yield ""
        yield from (f"- **{plain(term)}**: {plain(told)}" for term, told in sheet.terms)
    yield from _paragraph(CAUTION)
    for week in sheet.weeks:
        yield from _week(week)


def _week(week: SheetWeek) -> Iterator[str]:
    yield from ("", f"## {plain(week.words)}")
    yield ""
    for day, entries in week.days:
        yield f"- {plain(day)}: {plain(', '.join(words for words, _ in entries))}"
    for session in week.sessions:
        yield from _session(session)


def _session(session: SheetSession) -> Iterator[str]:
    yield from ("", f"### {plain(session.name)}")
    yield from _paragraph(", ".join(day.words for day in session.days))
    yield from _paragraph(f"Before: {session.preparation}" if session.preparation else "")
    yield from _paragraph(f"After: {session.cool_down}" if session.cool_down else "")
    yield from _paragraph(session.lasts)
    yield from _paragraph(session.note)
    for item in session.items:
        yield from _paragraph(item.pairing)
        yield from _paragraph(item.note)
        for line in item.lines:
            yield from _line(line)
            for day in session.days:
                yield from _boxes(line, day.words if len(session.days) > 1 else "")
    if session.pain:
        yield from ("", _row(["pain 0-10", *PAIN]), _row(["---"] * (len(PAIN) + 1)))
        yield from (_row([day.words, *("" for _ in PAIN)]) for day in session.days)


def _line(line: SheetLine) -> Iterator[str]:
    yield from ("", f"**{line.mark}  {plain(line.exercise)}**")
    for dose in line.doses:
        yield from ("", plain(" · ".join(filter(None, (dose.headline, *dose.parts)))))
        yield from _paragraph(dose.amounts.plates)
    yield from _paragraph(" ".join(line.remarks))


def _boxes(line: SheetLine, day: str) -> Iterator[str]:
    """A table with a row a set; its columns are those of the first dose."""
    blanks = line.doses[0].blanks
    yield from ("", _row([day or "set", *blanks]), _row(["---"] * (len(blanks) + 1)))
    number = 0
    for dose in line.doses:
        for one in range(dose.most if dose.most <= MOST_ROWS else 0):
            number += 1
            spare = " if you do it" if one >= max(dose.fewest, 1) else ""
            yield _row([f"{number}{spare}", *("" for _ in blanks)])
        if not 0 < dose.most <= MOST_ROWS:
            yield _row(["all sets", *("" for _ in blanks)])


def _row(cells: list[str]) -> str:
    return f"| {' | '.join(cell if cell == '---' else plain(cell) for cell in cells)} |"


def _paragraph(words: str) -> Iterator[str]:
    if words:
        yield from ("", plain(words))


def plain(words: str) -> str:
    """Words of which Markdown makes nothing but words."""
    escaped = re.sub(r"([\\`*_{}\[\]<>#|~&])", r"\\\1", words)
    return re.sub(r"^(\d+(?=[.)])|(?=[-+=]))", r"\1\\", escaped)
