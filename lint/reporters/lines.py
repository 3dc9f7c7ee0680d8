"""One line a finding in the GNU form: ``file:line:column: severity: rule: message``."""

from __future__ import annotations

import re
import sys

from ..wording.words import safe
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
    return f"{_file(one.name)}:1:1: error: rule-failed: {safe(f'{fault.rule} failed: {fault.words}')}"


def place_of(finding: Finding) -> str:
    """``file:line:column`` of a finding."""
    place = finding.place
    return f"{_file(place.text.name)}:{place.line}:{place.column}"


def _file(name: str) -> str:
    """A file name that cannot pass for anything else at the head of a line, such as for a message.

    A colon before a digit is spelled out, as the line's first one with a line number ends the name.
    """
    name = f"./{safe(name)}" if name.startswith((":", "-")) else safe(name)
    return re.sub(r":(?=[0-9])", r"\\u003a", name) if ":" in name else name
