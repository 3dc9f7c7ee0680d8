"""Demands of the rules on days: how many, which, and how far apart."""

from __future__ import annotations

from ...lint.counting.counts import NO_SETS
from ...lint.counting.credits import credit
from ...lint.engine.demands import (
    DAYS_WITH,
    Quantity,
    SetSum,
    at_least,
    at_most,
    demands_of,
    none_of,
    under,
)
from ..athlete_days import days_trained
from ..before_events import events_on, heaviest, near_maximal, taken_by_an_activity
from ..hard_days import hard_days
from ..shared import DAYS_A_WEEK
from ..spacing import farthest, hours_between, is_daily_sport, is_free_order
from ..spine_days import days_of_impact, loads_the_spine
from ..training_days import (
    days_off,
    is_once_a_week,
    may_hide,
    needs_days,
    needs_two_days,
    own_days,
    training,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ...lint.body.catalogue import Exercise
    from ...lint.counting.counts import Count
    from ...lint.counting.ledger import Ledger
    from ...lint.counting.tally import Tally
    from ...lint.counting.week import Week
    from ...lint.engine.demands import RuleDemand
    from ...lint.engine.limits import Limits
    from ..hard_days import Day


@demands_of("frequency-low")
def frequency_low(week: Week, limits: Limits) -> Iterator[RuleDemand]:
    """Days enough for a priority in some week of the block, where the week trains it."""
    for term in week.programme.priority if needs_days(week) else ():
        if not may_hide(week, term) and not is_once_a_week(week, term, limits):
            days = max(training(other, term).occasions() for other in week.weeks_of_block())
            own = Quantity(training(week, term).high, "sets")
            yield at_least(limits.number("least days"), Quantity(days, DAYS_WITH), term.words, [none_of(own)])


@demands_of("days-more-than-athlete")
def days_more_than_athlete(week: Week, ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """No more days than the athlete has, and no other ones."""
    trained = days_trained(week, ledger)
    if trained is not None:
        yield none_of(Quantity(len(trained.outside), "days"), "days")
        yield at_most(trained.most, Quantity(len(trained.sessions), "days"), "days")


@demands_of("rest-day-missing")
def rest_day_missing(week: Week, limits: Limits) -> Iterator[RuleDemand]:
    """A day of the week without training, where there is any."""
    lifting, free = days_off(week, limits)
    if lifting:
        yield at_least(limits.number("least"), Quantity(free, "days"), "rest day")


@demands_of("older-adult-days")
def older_adult_days(week: Week, ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Days enough a week from a certain age on, where there is any."""
    if needs_two_days(week, ledger, limits):
        days = Quantity(own_days(week), "days")
        yield at_least(limits.number("least days"), days, "days", [none_of(days)])


@demands_of("impact-days-consecutive")
def impact_days_consecutive(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """No more days with jumps in a row than may be: of each run of one more, one without."""
    landed, running = days_of_impact(ledger, limits), int(limits.number("days running"))
    for last in range(1, DAYS_A_WEEK * len(ledger.weeks) + running + 1):
        days = range(last - running, last + 1)
        if any(not isinstance(landed.get(day, ""), str) for day in days[-2:]):
            yield at_most(running, Quantity(sum(day in landed for day in days), "days"))


@demands_of("spine-days-consecutive")
def spine_days_consecutive(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Of two days running, one without lifts that load the spine."""
    grades, least = limits.names("loads"), limits.number("least sets")
    heavy = {}
    for number, _, tally in ledger.training_days():
        count = tally.all_sets(hard=True).where(lambda entry: loads_the_spine(entry, grades))
        heavy[number] = SetSum(tally, count, lambda one: float(one.axial in grades), "middle")
        before = heavy.get(number - 1)
        if before is not None:
            apart = under(max(least, 0.5), heavy[number], "spine", [under(max(least, 0.5), before)])
            apart.measured = False
            yield apart


@demands_of("sessions-too-close")
def sessions_too_close(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Hours enough between two days, unless one of them is not hard for the muscle group."""
    days = hard_days(ledger, limits)
    tallies = {number: tally for number, _, tally in ledger.training_days()}
    for index, later in enumerate(days):
        for before in reversed(days[max(index - farthest(limits), 0) : index]):
            if not later.week.rehabilitation:
                daily = is_daily_sport(ledger, later.week, limits)
                yield from _apart(before, later, tallies, limits, daily=daily)


def _apart(
    before: Day, later: Day, tallies: dict[int, Tally], limits: Limits, *, daily: bool
) -> Iterator[RuleDemand]:
    free = is_free_order(before, later, limits)
    hours, least = Quantity(hours_between(before, later), "h"), limits.number("hard day")
    for part, work in later.hard.items():
        first = before.hard.get(part)
        if first is None or not (work.sets or first.sets):
            continue
        beside_activity = bool(first.activity or work.activity)
        if not beside_activity and (free or not (first.sure and work.sure)):
            continue
        works = [(first, tallies.get(before.number)), (work, tallies.get(later.number))]
        off = [
            under(least, _hard(one.sets if beside_activity else one.sure, part[0], tally))
            for one, tally in works
            if one.sets and tally
        ]
        if not daily and not first.failing:
            yield at_least(limits.number("hours"), hours, part[0], off)
        if first.failing and (tally := tallies.get(before.number)):
            failing = SetSum(tally, first.failing, _direct(part[0]), "middle")
            yield at_least(
                limits.number("hours after failure"), hours, part[0], [*off, under(least, failing)]
            )


def _hard(sets: Count | None, group: str, tally: Tally) -> SetSum:
    """The hard direct sets of a day for a group."""
    return SetSum(tally, sets or NO_SETS, _direct(group), "middle")


def _direct(group: str) -> Callable[[Exercise], float]:
    """What a set of an exercise brings a group directly."""
    return lambda exercise: credit(exercise, group) // 1


@demands_of("legs-heavy-before-event")
def legs_heavy_before_event(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Few heavy sets for the legs in the last days before an event."""
    events, close = events_on(ledger, limits), taken_by_an_activity(ledger, limits)
    areas = limits.names("areas")

    def weight(exercise: Exercise) -> float:
        return float(any(credit(exercise, area) == 1 for area in areas))

    for number, week, tally in ledger.training_days():
        ahead = [gap for gap in range(1, int(limits.number("days")) + 1) if number + gap in events]
        if not ahead or week.rehabilitation or (ahead[0] == 1 and number + 1 in close):
            continue
        heavy = tally.sets_where(heaviest(ahead[0], limits), hard=True)
        yield under(limits.number("sets"), SetSum(tally, heavy, weight, "middle"))


@demands_of("near-maximal-before-event", days_stay=True)
def near_maximal_before_event(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """No all but maximal set of a lift in the last days before it is tried: after that, nobody needs it."""
    for _, week, _, _, close in near_maximal(ledger, limits):
        if not week.rehabilitation:
            yield none_of(Quantity(len(close), "lines"))
