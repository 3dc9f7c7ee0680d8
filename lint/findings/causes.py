"""One cause, one finding: what follows from a finding is listed in it."""

from __future__ import annotations

from .finding import SEVERITIES, Related

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from .finding import Finding


def by_cause(findings: Iterable[Finding]) -> list[Finding]:
    """The findings, those of one cause drawn together: the most telling one lists the others.

    Which rules' findings may follow from which stands beside each rule (`Finding.causes`). Two findings have
    one cause where they also speak of the same lines, weeks and athletes. The one that leads is the most
    serious; of those, one that causes others; of those, the one that asks for the largest change, since
    whoever makes it has made the others. What is waived or on record must be taken out before.
    """
    findings = list(findings)
    followed = {cause for one in findings for cause in one.causes}
    leads: list[tuple[Finding, list[Finding]]] = []
    alone: set[int] = set()
    for one in sorted(findings, key=lambda one: _telling(one, followed), reverse=True):
        lead = next((follows for lead, follows in leads if _have_one_cause(lead, one)), None)
        if lead is None:
            leads.append((one, []))
            alone.add(id(one))
        else:
            lead.append(one)
    listing = {id(lead): _listing(lead, follows) for lead, follows in leads if follows}
    return [listing.get(id(one), one) for one in findings if id(one) in alone]


def _telling(finding: Finding, followed: set[str]) -> tuple[int, bool, bool, float]:
    amount = finding.amount
    follows_only = bool(finding.causes) and finding.rule not in finding.causes
    return (
        SEVERITIES.index(finding.severity),
        finding.rule in followed,
        not follows_only,
        amount.apart if amount else 0.0,
    )


def _have_one_cause(lead: Finding, other: Finding) -> bool:
    if lead.rule not in other.causes and other.rule not in lead.causes:
        return False
    if lead.athletes != other.athletes:
        return False
    if lead.weeks and other.weeks and not set(lead.weeks).intersection(other.weeks):
        return False
    return lead.line.key in _lines(other) or other.line.key in _lines(lead)


def _lines(finding: Finding) -> set[tuple[str, int, int]]:
    """The lines that a finding speaks of: the one to blame, and those that were counted."""
    counted = (related.place.key for related in finding.related if related.share is not None)
    return {finding.line.key, *counted}


def _listing(lead: Finding, follows: list[Finding]) -> Finding:
    """A finding with those that follow from it, which it names as further places."""
    also = (Related(one.place, f"{one.rule}, too: {one.counted}", of=one.rule) for one in follows)
    return lead.but(follows=tuple(follows), related=(*also, *lead.related))
