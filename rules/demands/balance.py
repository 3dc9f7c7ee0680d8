"""Demands of the rules on balance, and on heavy beside light work."""

from __future__ import annotations

from ...lint.body import catalogue
from ...lint.counting.credits import DIRECT
from ...lint.engine.demands import (
    Quantity,
    at_least,
    at_most,
    demands_of,
    none_of,
    over,
    sets_for,
    sets_of_actions,
    sets_where,
    some,
    under,
)
from ..balance import has_days_off, limit_of, of_rota, trains_any
from ..beside import keeps_up_away
from ..leg_coverage import LEG_WORK
from ..one_leg import LOWER, is_for_one_leg, is_on_one_leg
from ..repetitions import blocks_for_both

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ...lint.body.catalogue import Exercise, Pair, Side
    from ...lint.counting.ledger import Ledger
    from ...lint.counting.set_group import SetGroup
    from ...lint.counting.tally import Tally
    from ...lint.counting.week import Week
    from ...lint.engine.demands import RuleDemand, SetSum
    from ...lint.engine.limits import Limits

    Terms = list[tuple[float, SetSum]]
    Where = Callable[[SetGroup], bool]


@demands_of("antagonist-imbalance")
def antagonist_imbalance(week: Week, ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Neither side of a pair with more than so many times the sets of the other."""
    if (
        not week.is_typical()
        or week.phase == "in-season"
        or keeps_up_away(ledger)
        or has_days_off(week, ledger)
    ):
        return
    for pair in catalogue.pairs:
        if all(week.means(side.area) for side in pair.sides):
            for more, less in (pair.sides, pair.sides[::-1]):
                yield from _outdone(week, ledger, pair, more, less, limits)


def _outdone(
    week: Week, ledger: Ledger, pair: Pair, more: Side, less: Side, limits: Limits
) -> Iterator[RuleDemand]:
    """One side with no more than so many times the sets of the other, hard or not, in a week or a rota.

    Silent where they are few, where the other side is empty, and where more of the one is meant.
    """
    turn = week.turn()
    limit = limit_of(week, ledger, pair, limits)
    if limit is None or turn.tally.could_hold(less.trained_by):
        return

    def within(most: float, tally: Tally, *, hard: bool, where: Where | None = None) -> Terms:
        sides = [
            sets_of_actions(tally, side.trained_by, hard=hard, end="middle", where=where)
            for side in (more, less)
        ]
        return [(1.0, sides[0]), (-most, sides[1])]

    both = within(-1, turn.tally, hard=True)
    near = limits.number("near" if pair.serious else "far")
    unless = [under(limits.number("fewest together") * len(turn.weeks), both), none_of(both[1][1])]
    unless.append(under(max(limits.number("fewest apart"), 0), within(1, turn.tally, hard=True)))
    unless += [at_most(0, within(near, one, hard=False)) for one in (turn.tally, of_rota(week, ledger))]
    for term in week.programme.priority:
        muscles = set(catalogue.area(term.words) or ())
        meant = within(1, turn.tally, hard=True, where=lambda entry, m=muscles: trains_any(entry, m))  # type: ignore[misc]
        unless.append(over(0, meant))
    yield at_most(0, within(limit, turn.tally, hard=True), pair.name, unless)


@demands_of("sides-uneven", exact=False)
def sides_uneven(week: Week, limits: Limits) -> Iterator[RuleDemand]:
    """Neither side of a muscle group with clearly more direct sets than the other."""
    turn = week.turn()
    if not turn.tally.one_sided or not week.is_typical():
        return
    share = 1 - limits.number("apart") / 100
    for group in turn.tally.groups():
        if not week.means(group) or turn.tally.could_hold(areas=(group,)):
            continue
        sides = [sets_for(turn.tally, group, DIRECT, side=side, end="middle") for side in ("left", "right")]
        for one, other in (sides, sides[::-1]):
            apart = [(1.0, one), (-1.0, other)]
            little = under(limits.number("fewest apart") * len(turn.weeks), apart)
            yield at_most(0, [(share, one), (-1.0, other)], group, [little])


@demands_of("two-legged-only")
def two_legged_only(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Some leg work on one leg in each block that trains the legs."""
    if not is_for_one_leg(ledger, limits):
        return
    for block in ledger.programme.blocks:
        whole = ledger.of_block(block)
        turns = [week.turn() for week in ledger.typical_weeks() if week.block is block and week.means("legs")]
        is_in_season = (block.phase or ledger.programme.phase) == "in-season"
        if not turns or is_in_season or whole.leaves_open(LEG_WORK):
            continue
        legs = [sets_of_actions(turn.tally, LEG_WORK, hard=True) for turn in turns]
        one_leg = sets_where(ledger, is_on_one_leg, _on_one_leg)
        yield some(one_leg, "one leg", [none_of(max(legs, key=lambda one: one.now))])


def _on_one_leg(exercise: Exercise) -> float:
    """Whether an exercise works one leg alone, as a number."""
    return float(exercise.unilateral and bool(LOWER.intersection(exercise.direct)))


@demands_of("rep-range-narrow")
def rep_range_narrow(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Some heavy and some light slot for each muscle group that has sets and days enough for both."""
    for block in blocks_for_both(ledger, limits):
        weeks = ledger.weeks_of(block)
        for group in catalogue.groups:
            counts = [week.sets(group, DIRECT) for week in weeks]
            slots = [part.entry.slot for count in counts for part in count.parts]
            by_slot = {one: Quantity(slots.count(one), "slots") for one in ("heavy", "light")}
            unread = Quantity(len(slots) - sum(slots.count(one) for one in by_slot), "slots")
            fullest = max(counts, key=lambda count: count.middle)
            few = [
                under(limits.number("least sets"), Quantity(fullest.middle, "sets")),
                under(limits.number("least days"), Quantity(len(fullest.days()), "days")),
                at_least(1, unread),
            ]
            for slot, other in (("heavy", "light"), ("light", "heavy")):
                yield some(by_slot[other], slot, [*few, none_of(by_slot[slot])])
