"""Demands of the rules of upkeep: what a coach asks under `must hold`, work in each session, equipment."""

from __future__ import annotations

from ...lint.engine.demands import (
    DAYS_WITH,
    Quantity,
    SetSum,
    at_least,
    at_most,
    demands_of,
    none_of,
    some,
)
from ...lint.model.demands import DAYS, HOURS, SETS
from ..equipment import lacking_at
from ..own_demands import asked_of_weeks, days_with, near_times
from ..plausibility import lines_alike, sessions_with_work

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...lint.counting.ledger import Ledger
    from ...lint.counting.tally import Visit
    from ...lint.counting.week import Week
    from ...lint.engine.demands import RuleDemand
    from ...lint.engine.limits import Limits
    from ...lint.model.demands import Demand as Wanted
    from ..own_demands import Subject


@demands_of("demand-not-held")
def demand_not_held(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """What the coach asks of a programme."""
    for wanted, weeks, subjects, other in asked_of_weeks(ledger):
        for week in weeks if wanted.form in (SETS, DAYS) else ():
            bounded = _sets(week, subjects[0]) if wanted.form == SETS else _days(week, subjects[0])
            yield from _bounds(bounded, wanted)
            if other is not None and wanted.form == SETS:
                yield _as_many(week, wanted, subjects[0], other)
        if wanted.form not in (SETS, DAYS):
            for before, after in near_times(subjects):
                if wanted.holds_in(after.week.number):
                    yield _apart(wanted, before.hours_to(after), after.day - before.day)


def _bounds(ends: tuple[list[tuple[float, Quantity]], ...], wanted: Wanted) -> Iterator[RuleDemand]:
    """The bounds of a demand, on the low and on the high end of what is counted."""
    low, high = ends
    if wanted.least is not None:
        yield at_least(wanted.least, low, _group(wanted))
    if wanted.most is not None:
        yield at_most(wanted.most, high, _group(wanted))


def _sets(week: Week, subject: Subject) -> tuple[list[tuple[float, Quantity]], ...]:
    """Weekly sets of a subject, by both ends of a range."""
    turn = week.turn()
    share, count = 1 / len(turn.weeks), subject.counted(turn.tally)
    return tuple([(share, SetSum(turn.tally, count, subject.weight, end))] for end in ("low", "high"))


def _days(week: Week, subject: Subject) -> tuple[list[tuple[float, Quantity]], ...]:
    days = Quantity(days_with(week, subject), DAYS_WITH)
    return [(1.0, days)], [(1.0, days)]


def _as_many(week: Week, wanted: Wanted, subject: Subject, other: Subject) -> RuleDemand:
    tally = week.turn().tally
    own = SetSum(tally, subject.counted(tally), subject.weight, "middle")
    against = SetSum(tally, other.sets(tally, hard=True), other.weight, "middle")
    return at_least(0, [(1.0, own), (-1.0, against)], _group(wanted))


def _group(wanted: Wanted) -> str:
    """What a finding on a demand speaks of."""
    return wanted.subjects[0].words if len(wanted.subjects) == 1 else wanted.words


def _apart(wanted: Wanted, hours: float, days: int) -> RuleDemand:
    if wanted.form == HOURS:
        return at_least(wanted.least or 0, Quantity(hours, "h"), wanted.words)
    return none_of(Quantity(float(days == 1), "days running"), wanted.words)


@demands_of("session-empty")
def session_empty(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Some work in each session, in any week."""
    for session, holds in sessions_with_work(ledger).items():
        yield some(Quantity(float(holds), "sessions with work"), session.name)


@demands_of("exercise-twice")
def exercise_twice(visit: Visit, limits: Limits) -> Iterator[RuleDemand]:
    """One line of an exercise in a session, or lines that differ."""
    for alike in lines_alike(visit):
        yield at_most(1, Quantity(len(alike), "lines"))


@demands_of("equipment-missing")
def equipment_missing(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """No lift that takes what is not there, at each place."""
    for _, lacking in lacking_at(ledger, limits):
        yield none_of(Quantity(len(lacking), "lines"))
