"""What a hook shows: a line for each finding that blocks, and the notes in few words."""

from __future__ import annotations

import os
import sys

from ..wording.words import counted_noun, safe, shortened
from .lines import fault_line, line, place_of
from .sentences import closing, counted

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..project.results import FileReview, Verdict

    Part = tuple[list[str], list[str], int]

COMMITTING = "GIT_INDEX_FILE"
"""What git sets in the environment of the hooks of a commit or a merge, and of no other."""

MOST_NOTES = 10
"""Findings that block nothing which are shown one by one."""

MOST_LETTERS = 120
"""Letters of a note that are shown."""


def report(parts: Iterable[Part], verdict: Verdict) -> None:
    """Prints the lines, then the first notes, and the closing line where it is not taken for one of them."""
    notes: list[str] = []
    many = 0
    for lines, first, number in parts:
        for words in lines:
            print(words)
        notes += first[: MOST_NOTES - len(notes)]
        many += number
    for words in notes:
        print(words)
    if many > MOST_NOTES:
        print(f"and {counted_noun(many - MOST_NOTES, 'note')} more: spotline review --changed")
    sys.stdout.flush()
    if verdict.outcomes or not verdict.may_be_empty:
        stopped = " Nothing was committed." if verdict.exit_code and COMMITTING in os.environ else ""
        print(f"{closing(verdict)}{stopped}", file=sys.stderr)


def part(one: FileReview, look: tuple[object, ...] = ()) -> Part:
    """What blocks and which rules raised, a whole line each; the first notes; how many notes there are."""
    lines = [line(finding) for finding in one.findings if finding.severity in one.team.blocking]
    lines += [fault_line(one, fault) for fault in one.faults]
    notes = [finding for finding in one.findings if finding.severity not in one.team.blocking]
    told = []
    for finding in notes[:MOST_NOTES]:
        words = shortened(counted(finding), MOST_LETTERS)
        told.append(safe(f"{place_of(finding)}: {finding.severity}: {finding.rule}: {words}"))
    return lines, told, len(notes)
