"""The review as SARIF 2.1.0, the OASIS standard for what a checker finds, as hosts show it by the code."""

from __future__ import annotations

import json
import os
from urllib.parse import quote

from ..engine.registry import all_rules
from ..engine.rule_page import Page
from ..team.known_findings import NAME as RECORD
from ..version import VERSION
from ..wording.words import safe
from .identities import RootPaths, all_findings, fingerprints
from .sentences import ground, sentence, statement

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..engine.registry import Rule
    from ..findings.finding import Edit, Finding
    from ..project.results import FileReview, Review
    from ..team.waivers import Waiver
    from ..text.places import Place

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"

BASE = "ROOT"
"""What paths are relative to: the root of the repository, wherever it lies."""

FINGERPRINT = "spotline/v1"


def report(review: Review) -> None:
    """Prints it."""
    print(sarif(review))


def sarif(review: Review) -> str:
    """The whole review as one SARIF log with one run."""
    run = _Run(review)
    log = {"$schema": SCHEMA, "version": "2.1.0", "runs": [run.plain()]}
    return json.dumps(log, indent=2, ensure_ascii=True, allow_nan=False)


class _Run:
    """One run: the rules that found something are numbered in their order, and results name them so."""

    def __init__(self, review: Review) -> None:
        self.review = review
        self.paths = RootPaths()
        self.prints = fingerprints(review)
        self.pages = {
            finding.rule: one.team.rule_pages for one in review.files for finding in all_findings(one)
        }
        self.numbers = {name: number for number, name in enumerate(self.pages)}

    def plain(self) -> dict[str, object]:
        """The run as plain data."""
        known = {rule.name: rule for one in self.review.files for rule in one.team.rules}
        known |= {rule.name: rule for rule in all_rules()}
        return {
            "tool": {
                "driver": {
                    "name": "spotline",
                    "version": VERSION,
                    "rules": [_rule(name, known.get(name), page) for name, page in self.pages.items()],
                }
            },
            "invocations": [self._invocation()],
            "columnKind": "unicodeCodePoints",
            "originalUriBaseIds": {BASE: {"description": {"text": "The root of the repository."}}},
            "artifacts": [{"location": self._artifact(one.name)} for one in self.review.files],
            "results": [result for one in self.review.files for result in self._results(one)],
        }

    def _results(self, one: FileReview) -> list[dict[str, object]]:
        waived = {kept.finding: self._waiver(kept.waiver) for kept in one.waived}
        known = {finding: _on_record() for finding in one.known}
        suppressed = waived | known
        return [
            self._result(finding) | ({"suppressions": [suppressed[finding]]} if finding in suppressed else {})
            for finding in all_findings(one)
        ]

    def _result(self, finding: Finding) -> dict[str, object]:
        result: dict[str, object] = {
            "ruleId": finding.rule,
            "ruleIndex": self.numbers[finding.rule],
            "level": finding.severity,
            "message": {"text": sentence(finding)},
            "locations": [self._location(finding)],
            "partialFingerprints": {FINGERPRINT: self.prints[finding]},
            "properties": _properties(finding),
        }
        if related := self._related(finding):
            result["relatedLocations"] = related
        if finding.edits:
            result["fixes"] = [self._fix(edit) for edit in finding.edits]
        return result

    def _location(self, finding: Finding) -> dict[str, object]:
        named = {"logicalLocations": [{"fullyQualifiedName": safe(finding.where)}]} if finding.where else {}
        return {"physicalLocation": self._physical(finding.place), **named}

    def _related(self, finding: Finding) -> list[dict[str, object]]:
        """Every further place: aliases that lead there, lines that were counted, findings that follow."""
        places = [(place, f"used here by {place.excerpt}") for place in finding.place.through]
        places += [(related.place, related.words) for related in finding.related]
        places += [(other.place, f"{other.rule}: {statement(other)}") for other in finding.follows]
        return [
            {"id": number, "message": {"text": safe(words)}, "physicalLocation": self._physical(place)}
            for number, (place, words) in enumerate(places)
        ]

    def _fix(self, edit: Edit) -> dict[str, object]:
        replacement = {"deletedRegion": _region(edit.place), "insertedContent": {"text": edit.words}}
        return {
            "description": {"text": safe(edit.label)},
            "artifactChanges": [
                {"artifactLocation": self._artifact(edit.place.text.name), "replacements": [replacement]}
            ],
        }

    def _waiver(self, waiver: Waiver) -> dict[str, object]:
        who = f" ({waiver.who})" if waiver.who else ""
        until = f", until {waiver.until}" if waiver.until else ""
        return {
            "kind": "inSource",
            "status": "accepted",
            "justification": safe(f"{waiver.reason}{who}{until}"),
            "location": {"physicalLocation": self._physical(waiver.place)},
        }

    def _invocation(self) -> dict[str, object]:
        """Whether the job could be done, and what stood in its way."""
        failed = [
            _notification(f"The rule {fault.rule} failed: {fault.words}", self._artifact(one.name))
            for one in self.review.files
            for fault in one.faults
        ]
        failed += [
            _notification(finding.counted, self._artifact(one.name))
            for one in self.review.files
            if not one.opened
            for finding in one.findings[:1]
        ]
        return {
            "executionSuccessful": not self.review.failed,
            "exitCode": self.review.exit_code,
            "toolExecutionNotifications": failed,
        }

    def _physical(self, place: Place) -> dict[str, object]:
        return {"artifactLocation": self._artifact(place.text.name), "region": _region(place)}

    def _artifact(self, name: str) -> dict[str, object]:
        return {"uri": quote(os.fsencode(self.paths.of(name))), "uriBaseId": BASE}


def _rule(name: str, rule: Rule | None, pages: str) -> dict[str, object]:
    """What is said of a rule; the reading's own checks have only their name."""
    title = name.replace("-", " ").capitalize()
    described: dict[str, object] = {"id": name, "shortDescription": {"text": title}}
    if rule is not None:
        page = Page(rule)
        described["shortDescription"] = {"text": page.finds or title}
        described["fullDescription"] = {"text": rule.why or page.finds or title}
        described["help"] = {"text": "\n\n".join([*page.counts, rule.why, f"spotline rules {name}"])}
        described["defaultConfiguration"] = {"level": rule.severity}
        described["properties"] = {"tags": [rule.family], "confidence": rule.confidence}
        if pages:
            described["helpUri"] = pages + name
    return described


def _properties(finding: Finding) -> dict[str, object]:
    """What SARIF has no word of its own for."""
    properties: dict[str, object] = {
        "confidence": finding.confidence,
        "ground": ground(finding),
        "weeks": list(finding.weeks),
        "counted": safe(statement(finding)),
        "wanted": safe(finding.wanted),
        "change": safe(finding.change),
        "why": safe(finding.why),
    }
    return {key: value for key, value in properties.items() if value}


def _on_record() -> dict[str, object]:
    return {"kind": "external", "status": "accepted", "justification": f"On record in {RECORD}."}


def _notification(words: str, artifact: dict[str, object]) -> dict[str, object]:
    return {
        "level": "error",
        "message": {"text": safe(words)},
        "locations": [{"physicalLocation": {"artifactLocation": artifact}}],
    }


def _region(place: Place) -> dict[str, int]:
    """Lines and columns from 1, columns in code points; the end stands just past the last character."""
    line, column = place.finish
    return {"startLine": place.line, "startColumn": place.column, "endLine": line, "endColumn": column}
