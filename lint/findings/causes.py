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
    leads = _Leads()
    for one in sorted(findings, key=lambda one: _telling(one, followed), reverse=True):
        leads.take(one)
    listing = {id(lead): _listing(lead, follows) if follows else lead for lead, follows in leads.found}
    return [listing[id(one)] for one in findings if id(one) in listing]


class _Leads:
    """The findings that lead, each with those that follow from it, found by the lines that they speak of.

    ``by_line`` names those to blame a line for each rule, ``by_counted`` those that counted it, in the
    order in which they came: only those of a finding's own lines are compared with it.
    """

    __slots__ = ("by_counted", "by_line", "found")

    def __init__(self) -> None:
        self.found: list[tuple[Finding, list[Finding]]] = []
        self.by_line: dict[object, list[int]] = {}
        self.by_counted: dict[object, list[int]] = {}

    def take(self, one: Finding) -> None:
        """Puts a finding under the first that it has one cause with; else it leads itself."""
        lines = _lines(one)
        near = self.by_counted.get((one.athletes, one.line.key), ())
        about = {at for key in lines for at in self.by_line.get((one.athletes, key), ())}
        for at in sorted(about.union(near)):
            if _have_one_cause(self.found[at][0], one):
                self.found[at][1].append(one)
                return
        at = len(self.found)
        self.found.append((one, []))
        self.by_line.setdefault((one.athletes, one.line.key), []).append(at)
        for key in lines:
            self.by_counted.setdefault((one.athletes, key), []).append(at)


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
    """Whether two findings that speak of the same line, and of the same athletes, have one cause."""
    if lead.rule not in other.causes and other.rule not in lead.causes:
        return False
    return not lead.weeks or not other.weeks or not set(lead.weeks).isdisjoint(other.weeks)


def _lines(finding: Finding) -> set[tuple[str, int, int]]:
    """The lines that a finding speaks of: the one to blame, and those that were counted."""
    counted = (related.place.key for related in finding.related if related.share is not None)
    return {finding.line.key, *counted}


def _listing(lead: Finding, follows: list[Finding]) -> Finding:
    """A finding with those that follow from it, which it names as further places."""
    also = (Related(one.place, f"{one.rule}, too: {one.counted}", of=one.rule) for one in follows)
    return lead.but(follows=tuple(follows), related=(*also, *lead.related))
