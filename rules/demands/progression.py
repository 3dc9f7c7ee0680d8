"""Demands of the rules on steps from week to week, and on easier weeks."""

from __future__ import annotations

from ...lint.engine.demands import SetSum, at_most, demands_of, sets_for, sets_where, under
from ..easier_weeks import returns
from ..set_steps import is_light, weeks_before
from ..tapers import before_events

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Iterator

    from ...lint.body.catalogue import Exercise
    from ...lint.counting.ledger import Ledger
    from ...lint.counting.set_group import SetGroup
    from ...lint.counting.tally import Tally
    from ...lint.engine.demands import RuleDemand
    from ...lint.engine.limits import Limits


@demands_of("sets-step-large")
def sets_step_large(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """No more sets for a muscle group in a week than so many above the fullest week before it."""
    kind, most = limits.name("counting"), limits.number("most")
    for week in ledger.weeks:
        back = weeks_before(ledger, week, limits)
        told, told_before = _not_light(week), max(map(_not_light, back or (week,)), key=_now)
        for group in week.groups() if back else ():
            if any(other.could_hold(areas=(group,)) for other in back):
                continue
            now = sets_for(week, group, kind, end="middle", where=lambda entry: not is_light(entry))
            fullest = _fullest(back, group, kind, hard=True)
            easy = sets_for(week, group, kind, hard=False, end="middle")
            before = _fullest(back, group, kind, hard=False)
            by_these = _fullest(
                back, group, kind, hard=False, lifts={one.entry.exercise for one in now.count.parts}
            )
            share = 1 + limits.number("share") / 100
            unless = [
                at_most(most, now),
                under(limits.number("tiny"), fullest),
                under(0, [(1.0, now), (-share, fullest)]),
                at_most(most, [(1.0, easy), (-1.0, before)]),
                at_most(most, [(1.0, now), (-1.0, by_these)]),
                at_most(most, [(1.0, told), (-1.0, told_before)]),
            ]
            step = at_most(most, [(1.0, now), (-1.0, fullest)], group, unless)
            step.firm = False
            yield step


def _fullest(
    weeks: Iterable[Tally],
    group: str,
    kind: str,
    *,
    hard: bool,
    lifts: Collection[Exercise | None] | None = None,
) -> SetSum:
    """The most sets of a group in one of some weeks, of some lifts alone where they are given."""

    def counts(entry: SetGroup) -> bool:
        return lifts is None or entry.exercise in lifts

    several = [sets_for(week, group, kind, hard=hard, end="middle", where=counts) for week in weeks]
    return max(several, key=_now)


def _not_light(week: Tally) -> SetSum:
    """The hard sets of a week, light ones aside, all muscles together."""
    return sets_where(week, lambda entry: not is_light(entry), lambda exercise: 1.0, hard=True, end="middle")


def _now(sets: SetSum) -> float:
    return sets.now


@demands_of("return-week-not-lighter", exact=False)
def return_week_not_lighter(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Clearly fewer sets in the first week back than in one of those that follow."""
    for week, later in returns(ledger):
        first, *others = [_fewer(week, other, limits) for other in later]
        first.unless = tuple(others)
        yield first


@demands_of("taper-missing", exact=False)
def taper_missing(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Clearly fewer sets in one of the weeks before an event than in the last typical week before them."""
    for near, before, *_ in before_events(ledger, limits):
        if not any(week.is_deload or week.phase == "taper" for week in near):
            first, *others = [_fewer(week, before, limits) for week in near]
            first.unless = tuple(others)
            yield first


def _fewer(week: Tally, before: Tally, limits: Limits) -> RuleDemand:
    """Fewer sets in a week than a share of those of another."""
    now, was = (
        sets_where(one, lambda entry: True, lambda exercise: 1.0, end="middle") for one in (week, before)
    )
    return under(0, [(1.0, now), ((limits.number("volume") - 100) / 100, was)])
