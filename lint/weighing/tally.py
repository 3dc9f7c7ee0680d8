"""What the weeks of programmes hold: the tables that are asked for, athlete by athlete."""

from __future__ import annotations

from ..project.review import counted
from ..project.workspace import Workspace
from ..wording.words import counted_noun
from .holdings import COLUMNS, Bounds, holdings

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from ..counting.ledger import Ledger
    from .holdings import WeekHoldings

BY = tuple(COLUMNS)
"""What a table may be by."""

NO_WEEK = 0
"""Stands for all weeks."""


class Tallied:
    """What one programme holds for one athlete: its weeks, those that hold the same as one."""

    __slots__ = ("athlete", "file", "programme", "weeks")

    def __init__(self, file: str, ledger: Ledger, weeks: Sequence[WeekHoldings]) -> None:
        self.file = file
        self.programme = ledger.programme.name
        self.athlete = ledger.athlete.name if ledger.athlete else ""
        self.weeks = tuple(weeks)


class Tallies:
    """What was asked for: tables ``by`` something, of all weeks or one (``week``), and the ``faults``."""

    __slots__ = ("by", "faults", "tallied", "week")

    def __init__(self, by: str, week: int) -> None:
        self.by = by
        self.week = week
        self.tallied: list[Tallied] = []
        self.faults: list[str] = []

    @property
    def tables(self) -> tuple[str, ...]:
        """The tables to show: the one asked for, or those of an overview."""
        return (self.by,) if self.by else ("muscle", "session", "lift")


def tally(paths: list[str], today: date, by: str = "", week: int = NO_WEEK) -> Tallies:
    """The tables of the programmes among files and in folders."""
    workspace = Workspace(today)
    result = Tallies(by, week)
    for one in counted(workspace, paths):
        if not one.ledgers:
            first = next((finding for finding in one.findings if finding.severity == "error"), None)
            why = f"line {first.place.line}: {first.counted}" if first else "it holds no programme"
            result.faults.append(f"{one.name}: {why}")
        bounds = Bounds(workspace.rules, one.team)
        for ledger in one.ledgers:
            weeks = holdings(ledger, bounds)
            if week:
                weeks = [part for part in weeks if week in part.numbers]
                if not weeks:
                    runs = counted_noun(len(ledger.weeks), "week")
                    result.faults.append(f"{one.name}: there is no week {week}, it runs {runs}")
                    break
            result.tallied.append(Tallied(one.name, ledger, weeks))
    if not result.tallied and not result.faults:
        result.faults.append("there is no programme here")
    return result
