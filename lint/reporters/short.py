"""What a hook shows: a line for each finding that blocks, and the notes in few words."""

from __future__ import annotations

import sys

from ..wording.words import counted_noun, safe, shortened
from .lines import fault_line, line, place_of
from .sentences import closing, counted

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..project.results import Review

MOST_NOTES = 10
"""Findings that block nothing which are shown one by one."""


def report(review: Review) -> None:
    """Prints the lines, and the closing line where it is not taken for one of them."""
    for words in short(review):
        print(words)
    sys.stdout.flush()
    if review.files or not review.may_be_empty:
        print(closing(review), file=sys.stderr)


def short(review: Review) -> Iterator[str]:
    """What blocks and which rules raised, a whole line each; then the first notes."""
    notes: list[str] = []
    for one in review.files:
        for finding in one.findings:
            if finding.severity in one.team.blocking:
                yield line(finding)
            else:
                words = shortened(counted(finding), MOST_LETTERS)
                notes.append(safe(f"{place_of(finding)}: {finding.severity}: {finding.rule}: {words}"))
        for fault in one.faults:
            yield fault_line(one, fault)
    yield from notes[:MOST_NOTES]
    if len(notes) > MOST_NOTES:
        yield f"and {counted_noun(len(notes) - MOST_NOTES, 'note')} more: spotline review --changed"


MOST_LETTERS = 120
"""Letters of a note that are shown."""
