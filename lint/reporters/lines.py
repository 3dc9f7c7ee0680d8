"""One line a finding in the GNU form: ``file:line:column: severity: rule: message``."""

from __future__ import annotations

import sys

from ..wording.words import safe, safe_name
from .sentences import closing, sentence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..engine.run import Fault
    from ..findings.finding import Finding
    from ..project.results import FileReview, Review, Verdict


def report(parts: Iterable[list[str]], verdict: Verdict) -> None:
    """Prints the lines, and the closing line where it is not taken for one of them."""
    for part in parts:
        for words in part:
            print(words)
    sys.stdout.flush()
    print(closing(verdict), file=sys.stderr)


def part(one: FileReview, look: tuple[object, ...] = ()) -> list[str]:
    """Every finding of a file, then every rule that raised, a line each."""
    found = [line(finding) for finding in one.findings]
    return found + [fault_line(one, fault) for fault in one.faults]


def lines(review: Review) -> Iterator[str]:
    """The lines of all files."""
    for one in review.files:
        yield from part(one)


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
