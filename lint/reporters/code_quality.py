"""The review as a code quality report, a list of issues in JSON (``spotline schema code-quality``).

A hosting service shows such a report beside the lines of a merge request.
"""

from __future__ import annotations

from .identities import RootPaths, fingerprints
from .json_text import Pieces, print_json, texts, written
from .sentences import sentence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection

    from ..project.results import FileReview, Review, Verdict

    Part = tuple[list[str], list[str]]
    """JSON texts: the findings, and the rules that failed."""

SEVERITIES = {"error": "critical", "warning": "major", "note": "info"}
"""What such a report calls each severity."""


def report(parts: Collection[Part], verdict: Verdict) -> None:
    """Prints it."""
    print_json(_whole(parts))


def code_quality(review: Review) -> str:
    """The whole review as one list."""
    return "".join(texts(_whole([part(one) for one in review.files])))


def _whole(parts: Collection[Part]) -> Pieces:
    return Pieces(text for number in (0, 1) for part in parts for text in part[number])


def part(one: FileReview, look: tuple[object, ...] = ()) -> Part:
    """Every finding of a file that is neither waived nor on record; every rule that failed, too."""
    prints, paths = fingerprints(one), RootPaths(one.file)
    issues = [
        _issue(
            sentence(finding),
            finding.rule,
            prints[finding],
            SEVERITIES[finding.severity],
            paths.of(finding.place.text.name),
            (finding.place.line, finding.place.finish[0]),
        )
        for finding in one.findings
    ]
    path = paths.of(one.name)
    failed = [
        _issue(
            f"{fault.rule} failed: {fault.words}",
            "rule-failed",
            f"{fault.rule} {path}",
            "blocker",
            path,
            (1, 1),
        )
        for fault in one.faults
    ]
    return [written(issue) for issue in issues], [written(issue) for issue in failed]


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
