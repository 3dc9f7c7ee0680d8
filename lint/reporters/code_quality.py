"""The review as a code quality report, a list of issues in JSON (``spotline schema code-quality``).

A hosting service shows such a report beside the lines of a merge request.
"""

from __future__ import annotations

import json

from .identities import RootPaths, fingerprints
from .sentences import sentence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..project.results import Review

SEVERITIES = {"error": "critical", "warning": "major", "note": "info"}
"""What such a report calls each severity."""


def report(review: Review) -> None:
    """Prints it."""
    print(code_quality(review))


def code_quality(review: Review) -> str:
    """Every finding that is neither waived nor on record, as an issue; every rule that failed, too."""
    prints, paths = fingerprints(review), RootPaths()
    issues = [
        _issue(
            sentence(finding),
            finding.rule,
            prints[finding],
            SEVERITIES[finding.severity],
            paths.of(finding.place.text.name),
            (finding.place.line, finding.place.finish[0]),
        )
        for one in review.files
        for finding in one.findings
    ]
    issues += [
        _issue(
            f"{fault.rule} failed: {fault.words}",
            "rule-failed",
            f"{fault.rule} {paths.of(one.name)}",
            "blocker",
            paths.of(one.name),
            (1, 1),
        )
        for one in review.files
        for fault in one.faults
    ]
    return json.dumps(issues, indent=2, ensure_ascii=True, allow_nan=False)


def _issue(
    description: str, rule: str, fingerprint: str, severity: str, path: str, lines: tuple[int, int]
) -> dict[str, object]:
    return {
        "description": description,
        "check_name": rule,
        "fingerprint": fingerprint,
        "severity": severity,
        "location": {"path": path, "lines": {"begin": lines[0], "end": lines[1]}},
    }
