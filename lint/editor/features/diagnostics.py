"""Findings as diagnostics."""

from __future__ import annotations

from lsprotocol import types

from ...reporters.sentences import ground, sentence_by_the_line
from ...wording.words import safe
from ..documents.view import widened

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...findings.finding import Finding, Severity
    from ...text.places import Place
    from ..documents.conversion import ProtocolConverter
    from ..documents.view import View
    from ..protocol.client import Client

SOURCE = "spotline"

SEVERITIES: dict[Severity, types.DiagnosticSeverity] = {
    "error": types.DiagnosticSeverity.Error,
    "warning": types.DiagnosticSeverity.Warning,
    "note": types.DiagnosticSeverity.Information,
}

NEEDLESS = frozenset({"anchor-unused", "waiver-unused"})
"""Rules whose findings point at what can go."""


def diagnostics(view: View, client: Client, wire: ProtocolConverter) -> list[types.Diagnostic]:
    """What is found in a document, in its order."""
    return [diagnostic(finding, view, client, wire) for finding in view.review.findings]


def diagnostic(finding: Finding, view: View, client: Client, wire: ProtocolConverter) -> types.Diagnostic:
    """One finding; what the client cannot show is left out."""
    pages = view.review.team.rule_pages
    return types.Diagnostic(
        range=wire.range(*widened(view.text.content, finding.place.start, finding.place.end)),
        message=message(finding),
        severity=SEVERITIES[finding.severity],
        code=finding.rule,
        code_description=types.CodeDescription(f"{pages}{finding.rule}") if pages and client.links else None,
        source=SOURCE,
        tags=[types.DiagnosticTag.Unnecessary] if client.tags and finding.rule in NEEDLESS else None,
        related_information=list(_related(finding, wire)) or None if client.related else None,
        data={"where": finding.where} if client.data and finding.where else None,
    )


def message(finding: Finding) -> str:
    """The finding in a line, with the ground that it stands on."""
    words = sentence_by_the_line(finding)
    return words if finding.confidence == "fact" else f"{words} {ground(finding)}"


def _related(finding: Finding, wire: ProtocolConverter) -> Iterator[types.DiagnosticRelatedInformation]:
    for place in finding.place.through:
        yield _information(place, f"used here by {place.excerpt}", wire)
    for related in finding.related:
        yield _information(related.place, related.words, wire)


def _information(place: Place, words: str, wire: ProtocolConverter) -> types.DiagnosticRelatedInformation:
    return types.DiagnosticRelatedInformation(wire.location(place.text, place.start, place.end), safe(words))
