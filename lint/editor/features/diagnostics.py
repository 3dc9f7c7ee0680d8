"""Findings as the protocol's diagnostics."""

from __future__ import annotations

from lsprotocol import types

from ...reporters.sentences import sentence_by_the_line
from ...wording.words import safe
from ..documents.snapshot import underlined

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...findings.finding import Finding, Severity
    from ...text.places import Place
    from ..documents.conversion import ProtocolConverter
    from ..documents.snapshot import Snapshot
    from ..protocol.client import Client

SOURCE = "spotline"

SEVERITIES: dict[Severity, types.DiagnosticSeverity] = {
    "error": types.DiagnosticSeverity.Error,
    "warning": types.DiagnosticSeverity.Warning,
    "note": types.DiagnosticSeverity.Information,
}

UNNECESSARY_RULES = frozenset({"anchor-unused", "waiver-unused"})
"""Rules whose findings point at text that can be removed."""


def diagnostics(snapshot: Snapshot, client: Client, converter: ProtocolConverter) -> list[types.Diagnostic]:
    """All findings of a document, in the order of the text."""
    return [diagnostic(finding, snapshot, client, converter) for finding in snapshot.review.findings]


def diagnostic(
    finding: Finding, snapshot: Snapshot, client: Client, converter: ProtocolConverter
) -> types.Diagnostic:
    """One finding; what the client cannot show is left out."""
    pages = snapshot.review.team.rule_pages
    page = types.CodeDescription(f"{pages}{finding.rule}") if pages and client.code_descriptions else None
    is_unnecessary = client.unnecessary_tag and finding.rule in UNNECESSARY_RULES
    return types.Diagnostic(
        range=converter.range(*underlined(snapshot.text.content, finding.place.start, finding.place.end)),
        message=sentence_by_the_line(finding),
        severity=SEVERITIES[finding.severity],
        code=finding.rule,
        code_description=page,
        source=SOURCE,
        tags=[types.DiagnosticTag.Unnecessary] if is_unnecessary else None,
        related_information=list(_related(finding, converter)) or None
        if client.related_information
        else None,
        data={"where": finding.where} if client.diagnostic_data and finding.where else None,
    )


def _related(finding: Finding, converter: ProtocolConverter) -> Iterator[types.DiagnosticRelatedInformation]:
    for place in finding.place.through:
        yield _information(place, f"used here by {place.excerpt}", converter)
    for related in finding.related:
        yield _information(related.place, related.words, converter)


def _information(
    place: Place, words: str, converter: ProtocolConverter
) -> types.DiagnosticRelatedInformation:
    location = converter.location_in(place.text, place.start, place.end)
    return types.DiagnosticRelatedInformation(location, safe(words))
