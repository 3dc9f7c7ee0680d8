"""A card for each finding, for people: the place, what was counted and wanted, why, what to change."""

from __future__ import annotations

from textwrap import wrap

from ..body import catalogue
from .wording import closing, counted, safe

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..finding import Finding, Related
    from ..review import FileReview, Review

LABEL = 9
"""Columns that the labels of a card take."""

MOST_LINES = 12
"""Counted lines that a card lists before it only says how many more there are."""


def cards(review: Review, width: int, *, bold: bool) -> Iterator[str]:
    """The cards of all files, file by file, and the closing line; ``width`` in columns."""
    for one in review.files:
        if one.findings or one.faults:
            yield _strong(safe(one.name), bold)
            yield ""
            for finding in one.findings:
                yield from _card(finding, width, bold)
            yield from _faults(one, width)
    yield closing(review)


def _card(finding: Finding, width: int, bold: bool) -> Iterator[str]:
    yield _strong(f"{finding.severity.capitalize()}: {finding.rule}", bold)
    place = f"line {finding.place.line}, column {finding.place.column}"
    yield from _row("place", f"{place}: {finding.where}" if finding.where else place, width)
    for through in finding.place.through:
        yield from _row("", f"used on line {through.line} by {through.excerpt}", width)
    yield from _row("", f"« {_quoted(finding)} »", width)
    yield from _row("counted" if finding.wanted else "found", counted(finding), width)
    for related in finding.related[:MOST_LINES]:
        yield from _row("", f"· {_related(finding, related)}", width)
    if len(finding.related) > MOST_LINES:
        yield from _row("", f"· and {len(finding.related) - MOST_LINES} more", width)
    if finding.wanted:
        yield from _row("wanted", finding.wanted, width)
    if finding.why:
        yield from _row("why", finding.why, width)
        yield from _row("", _ground(finding), width)
    if finding.change:
        yield from _row("change", finding.change, width)
    yield ""


def _related(finding: Finding, related: Related) -> str:
    place = related.place
    file = "" if place.text.name == finding.place.text.name else f"{place.text.name}, "
    return f"{related.words} ({file}line {place.line})"


def _ground(finding: Finding) -> str:
    """How sure the ground is, and the published work it rests on."""
    sources = [catalogue.source(name) for name in finding.sources]
    published = [source.short for source in sources if source.kind != "common practice"]
    return f"Ground: {finding.confidence} ({'; '.join(published) or 'no source'})."


def _quoted(finding: Finding) -> str:
    """The line of the file at the finding's place, cut to a bearable length."""
    text = finding.place.text.whole_line(finding.place.line).strip()
    return text if len(text) <= 120 else text[:117] + "..."


def _faults(one: FileReview, width: int) -> Iterator[str]:
    for fault in one.faults:
        yield from _row("failed", f"The rule {fault.rule} failed on {one.name}: {fault.words}", width)
        yield ""


def _row(label: str, words: str, width: int) -> Iterator[str]:
    indent = " " * (LABEL + 2)
    lines = wrap(safe(words), max(width - LABEL - 2, 30), break_on_hyphens=False) or [""]
    yield f"  {label:<{LABEL}}{lines[0]}".rstrip()
    for line in lines[1:]:
        yield f"{indent}{line}"


def _strong(words: str, bold: bool) -> str:
    return f"\x1b[1m{words}\x1b[0m" if bold else words
