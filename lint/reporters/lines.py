"""One line a finding in the GNU form: ``file:line:column: severity: rule: message``."""

from __future__ import annotations

import sys

from ..wording.words import safe, safe_name
from .sentences import closing, sentence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..engine.run import Fault
    from ..findings.finding import Finding
    from ..project.results import FileReview, Review


def report(review: Review) -> None:
    """Prints the lines, and the closing line where it is not taken for one of them."""
    for line in lines(review):
        print(line)
    sys.stdout.flush()
    print(closing(review), file=sys.stderr)


def lines(review: Review) -> Iterator[str]:
    """Every finding, then every rule that raised, a line each."""
    for one in review.files:
        for finding in one.findings:
            yield line(finding)
        for fault in one.faults:
            yield fault_line(one, fault)


def line(finding: Finding) -> str:
    """A finding in a line."""
    return f"{place_of(finding)}: {finding.severity}: {finding.rule}: {sentence(finding)}"


def fault_line(one: FileReview, fault: Fault) -> str:
    """A rule that raised, in a line."""
    return f"{safe_name(one.name)}:1:1: error: rule-failed: {safe(f'{fault.rule} failed: {fault.words}')}"


def place_of(finding: Finding) -> str:
    """``file:line:column`` of a finding."""
    place = finding.place
    return f"{safe_name(place.text.name)}:{place.line}:{place.column}"
