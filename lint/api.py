"""What a team's own rules in Python import. This module never moves, and its names keep their meaning.

    from spotline.lint.api import Week, found, rule

    @rule("no-friday", family="ours", severity="note", confidence="common practice", why="...", sources=())
    def no_friday(week: Week, limits: Limits) -> Iterator[Finding]:
        ...

A rule takes one of `Lifter`, `Ledger`, `Week`, `Visit` and `SetGroup`, and its limits. `Finding` is what
`found` gives, a draft that the engine completes. `spotline review --rules-from MODULE` takes in the rules of
a module.
"""

from __future__ import annotations

from .counting.counts import Count, counted_lines
from .counting.credits import DIRECT, FRACTIONAL, TOTAL
from .counting.ledger import Ledger, Lifter
from .counting.set_group import SetGroup
from .counting.tally import Tally, Visit
from .counting.week import Week
from .engine.limits import Condition, Limits, Option
from .engine.registry import rule
from .findings.finding import Amount, Edit, Related, found
from .findings.finding import DraftFinding as Finding
from .model.naming import day_name, exercise_name, line_name
from .model.quantities import Range
from .wording.words import listed, plain, sets_of

__all__ = [
    "DIRECT",
    "FRACTIONAL",
    "TOTAL",
    "Amount",
    "Condition",
    "Count",
    "Edit",
    "Finding",
    "Ledger",
    "Lifter",
    "Limits",
    "Option",
    "Range",
    "Related",
    "SetGroup",
    "Tally",
    "Visit",
    "Week",
    "counted_lines",
    "day_name",
    "exercise_name",
    "found",
    "line_name",
    "listed",
    "plain",
    "rule",
    "sets_of",
]
