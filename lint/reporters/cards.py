"""A card for each finding, for people: the place, what was counted and wanted, why, what to change."""

from __future__ import annotations

from ..wording.words import safe_name
from .layout import bold, row, strong, terminal_width
from .sentences import closing, counted, ground

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..findings.finding import Finding, Related
    from ..project.results import FileReview, Review, Verdict

MOST_LINES = 12
"""Counted lines that a card lists before it only says how many more there are."""


def report(parts: Iterable[list[str]], verdict: Verdict) -> None:
    """Prints the cards and the closing line."""
    for part in parts:
        for line in part:
            print(line)
    print(closing(verdict))


def cards(review: Review, width: int, *, bold: bool) -> Iterator[str]:
    """The cards of all files, file by file, and the closing line; ``width`` in columns."""
    for one in review.files:
        yield from part(one, (width, bold))
    yield closing(review)


def look() -> tuple[int, bool]:
    """What the terminal has to do with the cards: its width in columns, and whether it shows bold words."""
    return terminal_width(), bold()


def part(one: FileReview, look: tuple[int, bool]) -> list[str]:
    """The cards of a file, line by line; see `look`."""
    width, bold = look
    if not (one.findings or one.faults):
        return []
    lines = [strong(safe_name(one.name), bold), ""]
    for finding in one.findings:
        lines += _card(finding, width, bold)
    return [*lines, *_faults(one, width)]


def _card(finding: Finding, width: int, bold: bool) -> Iterator[str]:
    yield strong(f"{finding.severity.capitalize()}: {finding.rule}", bold)
    place = f"line {finding.place.line}, column {finding.place.column}"
    yield from row("place", f"{place}: {finding.where}" if finding.where else place, width)
    for through in finding.place.through:
        yield from row("", f"used on line {through.line} by {through.excerpt}", width)
    yield from row("", f"« {_quoted(finding)} »", width)
    yield from row("counted" if finding.wanted else "found", counted(finding), width)
    for related in finding.related[:MOST_LINES]:
        yield from row("", f"· {_related(finding, related)}", width)
    if len(finding.related) > MOST_LINES:
        yield from row("", f"· and {len(finding.related) - MOST_LINES} more", width)
    if finding.wanted:
        yield from row("wanted", finding.wanted, width)
    if finding.why:
        yield from row("why", finding.why, width)
        yield from row("", ground(finding), width)
    if finding.change:
        yield from row("change", finding.change, width)
    yield ""


def _related(finding: Finding, related: Related) -> str:
    place = related.place
    file = "" if place.text.name == finding.place.text.name else f"{place.text.name}, "
    return f"{related.words} ({file}line {place.line})"


def _quoted(finding: Finding) -> str:
    """The line of the file at the finding's place, cut to a bearable length."""
    text = finding.place.text.whole_line(finding.place.line).strip()
    return text if len(text) <= 120 else text[:117] + "..."


def _faults(one: FileReview, width: int) -> Iterator[str]:
    for fault in one.faults:
        yield from row("failed", f"The rule {fault.rule} failed on {one.name}: {fault.words}", width)
        yield ""
