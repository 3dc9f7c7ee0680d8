"""A card for each finding, for people: the place, what was counted and wanted, why, what to change."""

from __future__ import annotations

from ..wording.words import safe_name
from .layout import bold, row, strong, terminal_width
from .sentences import closing, counted, ground

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..findings.finding import Finding, Related
    from ..project.results import FileReview, Review

MOST_LINES = 12
"""Counted lines that a card lists before it only says how many more there are."""


def report(review: Review) -> None:
    """Prints the cards and the closing line, as wide as the terminal."""
    print("\n".join(cards(review, terminal_width(), bold=bold())))


def cards(review: Review, width: int, *, bold: bool) -> Iterator[str]:
    """The cards of all files, file by file, and the closing line; ``width`` in columns."""
    for one in review.files:
        if one.findings or one.faults:
            yield strong(safe_name(one.name), bold)
            yield ""
            for finding in one.findings:
                yield from _card(finding, width, bold)
            yield from _faults(one, width)
    yield closing(review)


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
