"""The review as JSON, to its own schema (``spotline schema review``)."""

from __future__ import annotations

from ..body import catalogue
from ..findings.finding import SEVERITIES
from ..version import VERSION
from .json_text import Pieces, print_json, texts, written
from .sentences import statement

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection

    from ..findings.finding import Amount, Edit, Finding, Related
    from ..project.results import FileReview, Review, Verdict
    from ..text.places import Place

    Part = tuple[list[str], ...]
    """JSON texts: findings, those waived, those on record, rules that failed, why it was not opened."""


def report(parts: Collection[Part], verdict: Verdict) -> None:
    """Prints it."""
    print_json(_whole(parts, verdict))


def review_json(review: Review) -> str:
    """The whole review as one JSON object."""
    return "".join(texts(_whole([part(one) for one in review.files], review)))


def part(one: FileReview, look: tuple[object, ...] = ()) -> Part:
    """What is said of one file; see `Part`."""
    unopened = one.findings[:1] if not one.opened else []
    return (
        [written(_finding(finding)) for finding in one.findings],
        [written(_kept(waived.finding, "waiver", waived.waiver.reason)) for waived in one.waived],
        [written(_kept(finding, "record", "")) for finding in one.known],
        [written({"file": one.name, "rule": fault.rule, "fault": fault.words}) for fault in one.faults],
        [written({"file": one.name, "rule": "", "fault": finding.counted}) for finding in unopened],
    )


def _whole(parts: Collection[Part], verdict: Verdict) -> dict[str, object]:
    counts: dict[str, object] = {severity: verdict.count(severity) for severity in reversed(SEVERITIES)}
    return {
        "spotline": VERSION,
        "files": len(parts),
        "findings": _pieces(parts, 0),
        "kept back": _pieces(parts, 1, 2),
        "summary": {**counts, "blocked": verdict.blocked},
        "faults": _pieces(parts, 3, 4),
    }


def _pieces(parts: Collection[Part], *numbers: int) -> Pieces:
    """The texts of all files that stand under these numbers of a part, number by number."""
    return Pieces(text for number in numbers for part in parts for text in part[number])


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
