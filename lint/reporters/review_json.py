"""The review as JSON, to its own schema (``spotline schema review``)."""

from __future__ import annotations

import json

from ..body import catalogue
from ..findings.finding import SEVERITIES
from ..version import VERSION
from .sentences import statement

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..findings.finding import Amount, Edit, Finding, Related
    from ..project.results import Review
    from ..text.places import Place


def report(review: Review) -> None:
    """Prints it."""
    print(review_json(review))


def review_json(review: Review) -> str:
    """The whole review as one JSON object."""
    found = [finding for one in review.files for finding in one.findings]
    counts: dict[str, object] = {severity: review.count(severity) for severity in reversed(SEVERITIES)}
    whole = {
        "spotline": VERSION,
        "files": len(review.files),
        "findings": [_finding(finding) for finding in found],
        "kept back": [
            _kept(one.finding, "waiver", one.waiver.reason) for file in review.files for one in file.waived
        ]
        + [_kept(finding, "record", "") for file in review.files for finding in file.known],
        "summary": {**counts, "blocked": review.blocked},
        "faults": [
            {"file": one.name, "rule": fault.rule, "fault": fault.words}
            for one in review.files
            for fault in one.faults
        ]
        + [
            {"file": one.name, "rule": "", "fault": finding.counted}
            for one in review.files
            if not one.opened
            for finding in one.findings[:1]
        ],
    }
    return json.dumps(whole, indent=2, ensure_ascii=True, allow_nan=False)


def _finding(finding: Finding) -> dict[str, object]:
    return {
        **_place(finding.place),
        "rule": finding.rule,
        "severity": finding.severity,
        "confidence": finding.confidence,
        "where": finding.where,
        "weeks": list(finding.weeks),
        "counted": statement(finding),
        "wanted": finding.wanted,
        "change": finding.change,
        "why": finding.why,
        "sources": [{"id": name, "reference": catalogue.source(name).reference} for name in finding.sources],
        "subject": finding.subject,
        "group": finding.group,
        "told": list(finding.told),
        **_amount(finding.amount),
        "follows": [_following(one) for one in finding.follows],
        "related": [_related(one) for one in finding.related],
        "edits": [_edit(one) for one in finding.edits],
    }


def _edit(edit: Edit) -> dict[str, object]:
    further = [{**_place(one.place), "words": one.words} for one in edit.further]
    return {
        "label": edit.label,
        **_place(edit.place),
        "words": edit.words,
        "certain": edit.certain,
        **({"further": further} if further else {}),
    }


def _amount(amount: Amount | None) -> dict[str, object]:
    if amount is None:
        return {}
    return {"amount": {"counted": amount.counted, "wanted": amount.wanted, "unit": amount.unit}}


def _following(finding: Finding) -> dict[str, object]:
    return {
        **_place(finding.place),
        "rule": finding.rule,
        "severity": finding.severity,
        "where": finding.where,
        "subject": finding.subject,
        "group": finding.group,
        "weeks": list(finding.weeks),
        "counted": statement(finding),
        "wanted": finding.wanted,
        **_amount(finding.amount),
    }


def _related(related: Related) -> dict[str, object]:
    found = {**_place(related.place), "words": related.words}
    if related.share is not None:
        found |= {"share": {"low": related.share[0], "high": related.share[1]}, "of": related.of}
    return found


def _kept(finding: Finding, by: str, reason: str) -> dict[str, object]:
    return {
        **_place(finding.place),
        "rule": finding.rule,
        "severity": finding.severity,
        "where": finding.where,
        "counted": statement(finding),
        "by": by,
        "reason": reason,
    }


def _place(place: Place) -> dict[str, object]:
    line, column = place.finish
    return {
        "file": place.text.name,
        "line": place.line,
        "column": place.column,
        "end line": line,
        "end column": column,
    }
