"""The review as SARIF 2.1.0, the OASIS standard for what a checker finds, as hosts show it by the code."""

from __future__ import annotations

import os
from urllib.parse import quote

from ..engine.registry import all_rules
from ..engine.rule_page import Page
from ..team.known_findings import NAME as RECORD
from ..version import VERSION
from ..wording.words import safe
from .identities import RootPaths, all_findings, fingerprints
from .json_text import Pieces, print_json, texts, written
from .sentences import ground, sentence, statement

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection

    from ..engine.registry import Rule
    from ..findings.finding import Edit, Finding
    from ..project.results import FileReview, Review, Verdict
    from ..team.waivers import Waiver
    from ..text.places import Place

    Part = tuple[list[str], dict[str, tuple[str, str]], list[tuple[str, str]], list[str], list[str]]
    """JSON texts: the artifact; each rule by name, with where its page is; the results, each with its rule's
    name; the rules that failed; why the file was not opened."""

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"

BASE = "ROOT"
"""What paths are relative to: the root of the repository, wherever it lies."""

FINGERPRINT = "spotline/v1"

UNNUMBERED = '"ruleIndex": 0'
"""Stands in each result until all rules are numbered. No words can hold it: their quotes are escaped."""


def report(parts: Collection[Part], verdict: Verdict) -> None:
    """Prints it."""
    print_json(_log(parts, verdict))


def sarif(review: Review) -> str:
    """The whole review as one SARIF log with one run."""
    return "".join(texts(_log([part(one) for one in review.files], review)))


def part(one: FileReview, look: tuple[object, ...] = ()) -> Part:
    """What is said of one file; see `Part`."""
    told = _Results(one)
    own = {rule.name: rule for rule in one.team.rules}
    pages = one.team.rule_pages
    rules = {
        finding.rule: (pages, written(_rule(finding.rule, own.get(finding.rule), pages)))
        for finding in all_findings(one)
    }
    failed = [f"The rule {fault.rule} failed: {fault.words}" for fault in one.faults]
    unopened = [] if one.opened else [finding.counted for finding in one.findings[:1]]
    return (
        [written({"location": told.artifact(one.name)})],
        rules,
        told.results(),
        [written(_notification(words, told.artifact(one.name))) for words in failed],
        [written(_notification(words, told.artifact(one.name))) for words in unopened],
    )


def _log(parts: Collection[Part], verdict: Verdict) -> dict[str, object]:
    """The log. The rules that found something are numbered in their order, and results name them so."""
    described: dict[str, tuple[str, str]] = {}
    for one in parts:
        described |= one[1]
    ours = {rule.name: rule for rule in all_rules()}
    rules = (
        written(_rule(name, ours[name], pages)) if name in ours else own
        for name, (pages, own) in described.items()
    )
    numbers = {name: number for number, name in enumerate(described)}
    results = (
        text.replace(UNNUMBERED, f'"ruleIndex": {numbers[rule]}', 1) for one in parts for rule, text in one[2]
    )
    failed, unopened = (one[3] for one in parts), (one[4] for one in parts)
    invocation = {
        "executionSuccessful": not verdict.failed,
        "exitCode": verdict.exit_code,
        "toolExecutionNotifications": Pieces(text for one in (*failed, *unopened) for text in one),
    }
    run = {
        "tool": {"driver": {"name": "spotline", "version": VERSION, "rules": Pieces(rules)}},
        "invocations": [invocation],
        "columnKind": "unicodeCodePoints",
        "originalUriBaseIds": {BASE: {"description": {"text": "The root of the repository."}}},
        "artifacts": Pieces(text for one in parts for text in one[0]),
        "results": Pieces(results),
    }
    return {"$schema": SCHEMA, "version": "2.1.0", "runs": [run]}


class _Results:
    """What is told of a file."""

    def __init__(self, one: FileReview) -> None:
        self.one = one
        self.paths = RootPaths(one.file)
        self.prints = fingerprints(one)

    def results(self) -> list[tuple[str, str]]:
        """The rule and the JSON of each finding, told or suppressed."""
        waived = {kept.finding: self._waiver(kept.waiver) for kept in self.one.waived}
        known = {finding: _on_record() for finding in self.one.known}
        suppressed = waived | known
        return [
            (
                finding.rule,
                written(
                    self._result(finding)
                    | ({"suppressions": [suppressed[finding]]} if finding in suppressed else {})
                ),
            )
            for finding in all_findings(self.one)
        ]

    def _result(self, finding: Finding) -> dict[str, object]:
        result: dict[str, object] = {
            "ruleId": finding.rule,
            "ruleIndex": 0,
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
        replacements = [
            {"deletedRegion": _region(part.place), "insertedContent": {"text": part.words}}
            for part in edit.parts
        ]
        return {
            "description": {"text": safe(edit.label)},
            "artifactChanges": [
                {"artifactLocation": self.artifact(edit.place.text.name), "replacements": replacements}
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

    def _physical(self, place: Place) -> dict[str, object]:
        return {"artifactLocation": self.artifact(place.text.name), "region": _region(place)}

    def artifact(self, name: str) -> dict[str, object]:
        """Where a file lies, by the name that it is shown by."""
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
