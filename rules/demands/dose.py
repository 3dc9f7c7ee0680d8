"""Demands of the rules on dose: floors and limits of sets, and minutes."""

from __future__ import annotations

from ...lint.counting.session_time import ramp_up
from ...lint.engine.demands import (
    Minutes,
    Quantity,
    SetSum,
    at_least,
    at_most,
    demands_of,
    none_of,
    over,
    sets_for,
    sets_where,
)
from ...lint.engine.limits import floored, group_of, limited
from ..excess import is_held_against, is_no_station
from ..lift_sets import is_light_on_purpose, main_lifts, of_lift
from ..minutes import ROOM, SECONDS, minutes_for, slack_for
from ..session_dose import is_taxing
from ..shared import are_apart
from ..weekly_sets import named_terms

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ...lint.body.catalogue import Exercise
    from ...lint.counting.ledger import Ledger
    from ...lint.counting.set_group import SetGroup
    from ...lint.counting.tally import Tally, Visit
    from ...lint.counting.week import Week
    from ...lint.engine.demands import RuleDemand
    from ...lint.engine.limits import Limits


@demands_of("weekly-sets-over-limit")
def weekly_sets_over_limit(week: Week, limits: Limits) -> Iterator[RuleDemand]:
    """No more sets for a muscle group in a week than its limit."""
    counting = limits.name("counting")
    for group, limit in limited(week, limits).items():
        bound = at_most(limits.number(limit), _held_against(week, group, counting), group)
        bound.measured = False  # a limit that is not the team's is told of direct sets alone
        yield bound


def _held_against(
    tally: Tally, group: str, counting: str, held: Callable[[SetGroup], bool] = is_held_against
) -> SetSum:
    """The sets that are held against a limit; those of a plain line are."""
    sets = sets_for(tally, group, counting, where=held)
    sets.takes_any = True
    return sets


@demands_of("weekly-sets-under-floor")
def weekly_sets_under_floor(week: Week, limits: Limits) -> Iterator[RuleDemand]:
    """The floor of sets for a muscle group that is named, where it gets any."""
    counting, turn = limits.name("counting"), week.turn()
    for area in floored(week):
        if turn.tally.leaves_open(areas=(area,)):
            continue
        sets = sets_for(turn.tally, area, counting, end="low")
        yield at_least(limits.number("least") * len(turn.weeks), sets, area, [none_of(_high(sets))])


def _high(sets: SetSum) -> SetSum:
    """The same sets by the high end of their range."""
    return SetSum(sets.tally, sets.count, sets.weight)


@demands_of("weekly-hard-sets-high")
def weekly_hard_sets_high(week: Week, limits: Limits) -> Iterator[RuleDemand]:
    """No more hard sets in a week than the team allows."""
    if week.is_typical():
        sets = sets_where(week, lambda entry: True, lambda exercise: 1.0, hard=True)
        yield at_most(limits.number("most"), sets, "the week")


@demands_of("spread-too-thin")
def spread_too_thin(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Weeks and sets enough for what the programme names, where it gets any."""
    counting = limits.name("counting")
    for term, weeks in named_terms(ledger):
        together = ledger.of_weeks(weeks)
        if len(weeks) < limits.number("weeks") or together.leaves_open(areas=(term.words,)):
            continue
        sets = sets_for(together, term.words, counting, end="low")
        unless, group = [none_of(_high(sets))], group_of(term.words)
        trained = sum(week.sets(term.words, counting).low > 0 for week in weeks)
        yield at_least(len(weeks) / limits.number("apart"), Quantity(trained, "weeks"), group, unless)
        if ledger.programme.goal != "hypertrophy":
            yield at_least(limits.number("least") * len(weeks) / 4, sets, group, unless)


@demands_of("lift-sets-under-floor")
def lift_sets_under_floor(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """A set a week of each lift that a programme for strength is about, on average."""
    weeks = ledger.typical_weeks()
    if ledger.programme.goal != "strength" or not weeks:
        return
    typical = ledger.of_weeks(weeks)
    for lift, (name, _) in main_lifts(ledger).items():
        meant = is_light_on_purpose(typical, lift, len(weeks), limits)
        if not meant and not typical.leaves_open(lift.actions):
            sets = SetSum(typical, of_lift(typical, lift, limits), _closeness(lift), "low")
            yield at_least(limits.number("least") * len(weeks), sets, name)


def _closeness(lift: Exercise) -> Callable[[Exercise], float]:
    """Whether an exercise is a lift or a close variant of it, as a number."""
    return lambda exercise: float(exercise.is_close_to(lift))


@demands_of("session-sets-for-muscle-high")
def session_sets_for_muscle_high(week: Week, limits: Limits) -> Iterator[RuleDemand]:
    """No more sets for a muscle group in a session, or on a day, than are worth it."""
    if not week.is_typical():
        return
    counting = limits.name("counting")
    for day in week.occasions():
        for group in week.groups():
            if group not in limits.names("without limit"):
                sets = _held_against(day, group, counting, is_no_station)
                yield at_most(limits.number("most"), sets, group)


@demands_of("exercise-sets-high")
def exercise_sets_high(week: Week, limits: Limits) -> Iterator[RuleDemand]:
    """No more taxing sets of an exercise in a session, or on a day, than bring more."""
    if not week.is_typical():
        return
    for day in week.occasions():
        taxing = day.by_exercise(lambda entry: is_taxing(entry, limits))
        for count in (one for one in taxing if one.parts):
            entry = count.parts[0].entry
            yield at_most(limits.number("most"), SetSum(day, count, _sameness(entry.exercise)), entry.name)


def _sameness(exercise: Exercise | None) -> Callable[[Exercise], float]:
    """Whether another exercise is the same, as a number."""
    return lambda other: float(other is exercise)


@demands_of("session-too-long")
def session_too_long(visit: Visit, limits: Limits) -> Iterator[RuleDemand]:
    """A session within its minutes, or within those of the athlete."""
    allowed, _ = minutes_for(visit, limits)
    if allowed is None:
        return
    time, ramps = visit.time(), ramp_up(visit.own).low
    most, bound = allowed * limits.number("slack"), allowed * slack_for(visit, limits)
    least = Minutes(visit, (time.total.low + ramps) / SECONDS, allowed, most - bound)
    yield at_most(bound, least, visit.session.name)


@demands_of("day-too-long")
def day_too_long(week: Week, limits: Limits) -> Iterator[RuleDemand]:
    """The sessions of a day within the athlete's minutes, where each of them is."""
    athlete = week.programme.athlete
    if athlete is None or athlete.minutes is None:
        return
    for _, visits in week.by_day():
        if len(visits) > 1 and not are_apart(visits):
            takes = [_alone(visit) for visit in visits]
            unless = [over(athlete.minutes, one) for one in takes]
            together = at_most(ROOM * athlete.minutes, [(1.0, one) for one in takes], unless=unless)
            together.firm = False
            yield together


def _alone(visit: Visit) -> Quantity:
    """The least minutes of a session: those that are written for it, else what it takes."""
    if visit.minutes:
        return Quantity(visit.minutes.low, "min")
    return Minutes(visit, visit.time().total.low / SECONDS)
