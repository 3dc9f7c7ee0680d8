"""Proposals as JSON, to their own schema (``spotline schema proposals``)."""

from __future__ import annotations

import json
from difflib import SequenceMatcher

from ..version import VERSION
from .proposals import title
from .sentences import statement

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..findings.finding import Finding
    from ..solving.solve import Card, Solution


def report(solution: Solution) -> None:
    """Prints them."""
    print(proposals_json(solution))


def proposals_json(solution: Solution) -> str:
    """The proposals for a file, and what stays, as one JSON object."""
    whole = {
        "spotline": VERSION,
        "file": solution.review.name,
        "proposals": [_card(one, solution.before) for one in solution.cards],
        "stays": [{**_finding(one.finding), "why": list(one.why)} for one in solution.stays],
        "at once": solution.at_once,
        "to the end": solution.to_the_end,
        "reviews": solution.reviews,
    }
    return json.dumps(whole, indent=2, ensure_ascii=True, allow_nan=False)


def _card(card: Card, before: str) -> dict[str, object]:
    return {
        "words": title(card),
        "steps": [{"kind": one.kind, "words": one.label, "said": one.said} for one in card.steps],
        "lines": list(_lines(before, card.after)),
        "costs": list(card.costs),
        "clears": [_finding(one) for one in card.clears],
        "caution": card.caution,
    }


def _lines(before: str, after: str) -> Iterator[dict[str, object]]:
    """The lines that give way, by the number of the first, and those that stand there then."""
    old, new = before.splitlines(), after.splitlines()
    for what, first, last, start, end in SequenceMatcher(None, old, new, autojunk=False).get_opcodes():
        if what != "equal":
            yield {"from": first + 1, "before": old[first:last], "after": new[start:end]}


def _finding(finding: Finding) -> dict[str, object]:
    return {
        "line": finding.place.line,
        "rule": finding.rule,
        "severity": finding.severity,
        "where": finding.where,
        "group": finding.group or finding.subject,
        "weeks": list(finding.weeks),
        "counted": statement(finding),
    }
