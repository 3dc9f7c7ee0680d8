"""One line a finding in the GNU form: ``file:line:column: severity: rule: message``."""

from __future__ import annotations

import sys

from ..wording.words import safe
from .sentences import closing, sentence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..project.results import Review


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
            place = finding.place
            where = f"{_file(place.text.name)}:{place.line}:{place.column}"
            yield f"{where}: {finding.severity}: {finding.rule}: {sentence(finding)}"
        for fault in one.faults:
            yield f"{_file(one.name)}:1:1: error: rule-failed: {safe(f'{fault.rule} failed: {fault.words}')}"


def _file(name: str) -> str:
    """A file name that cannot pass for anything else at the head of a line."""
    return f"./{safe(name)}" if name.startswith((":", "-")) else safe(name)
