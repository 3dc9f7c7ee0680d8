"""Demands of the rules on coverage: some set of what would else be left out."""

from __future__ import annotations

from ...lint.body import catalogue
from ...lint.counting.credits import DIRECT, TOTAL
from ...lint.counting.effort import FAST_KINDS
from ...lint.counting.week import BUILDING, muscles_of
from ...lint.engine.demands import (
    Quantity,
    SetSum,
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
from ...lint.model.quantities import Range
from ..beside import in_the_sport, keeps_up_away
from ..calves import are_calves_named, means_whole_legs
from ..directions import (
    PRESSES_AND_PULLS,
    can_be_had,
    goes_fast,
    is_vertical_asked,
    rows_on_a_machine,
    spares_an_arm,
)
from ..fast_work import calls_it_fast, is_fast, may_be_fast
from ..finer_points import FINER_POINTS, FinerPoint, is_wanted
from ..leg_coverage import (
    LEG_WORK,
    NO_CURL,
    NO_HINGE,
    asks_for_hamstrings,
    is_in_focus,
    is_ruled_out,
)
from ..nordics import are_prepared, is_one_of
from ..priorities import rest_of_half
from ..regions import days_of, parts_of
from ..shared import is_cut_short, serves, suggested

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterator

    from ...lint.body.catalogue import Exercise
    from ...lint.counting.ledger import Ledger
    from ...lint.counting.tally import Tally
    from ...lint.counting.week import Week
    from ...lint.engine.demands import RuleDemand
    from ...lint.engine.limits import Limits


def _some_action(
    week: Week, ledger: Ledger, action: str, goals: Collection[str], *off: RuleDemand
) -> Iterator[RuleDemand]:
    """Some set of an action in the block, unless the legs are not trained, or by one line nobody names."""
    block = ledger.judged_with(week)
    if not asks_for_hamstrings(week, goals) or block.leaves_open(actions=(action,)):
        return
    if suggested(week.programme, serves(action)).is_spared:
        return
    if keeps_up_away(ledger) and not week.names("hamstrings"):
        return
    legs = sets_of_actions(week.turn().tally, LEG_WORK, hard=True)
    unless = [none_of(legs), *off]
    if not is_in_focus(week):
        unless.append(at_most(1, _lines(block.for_actions(LEG_WORK, hard=True).by_line().values())))
    yield some(sets_of_actions(block, (action,)), action, unless)


def _lines(sets: Collection[Range]) -> Quantity:
    return Quantity(sum(one.high > 0 for one in sets), "lines")


@demands_of("knee-flexion-missing")
def knee_flexion_missing(week: Week, ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Some knee flexion in a block that trains the legs."""
    if not is_ruled_out(week, ledger, NO_CURL):
        lighter = sets_of_actions(week, LEG_WORK, hard=True, where=lambda entry: entry.slot != "heavy")
        off = () if week.programme.goal else (none_of(_lines_of(lighter)),)
        yield from _some_action(week, ledger, "knee flexion", BUILDING, *off)


@demands_of("hip-hinge-missing")
def hip_hinge_missing(week: Week, ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Some hinge in a block that trains the legs by more than curls."""
    if is_ruled_out(week, ledger, NO_HINGE):
        return
    others = sets_of_actions(
        week.turn().tally, LEG_WORK, hard=True, where=lambda entry: not entry.trains(("knee flexion",))
    )
    goals = (*BUILDING, "strength")
    yield from _some_action(week, ledger, "hip hinge", goals, at_most(0, _lines_of(others)))


def _lines_of(sets: SetSum) -> Quantity:
    """The lines that are counted, those that hold no set in these weeks among them."""
    return Quantity(len(sets.count.by_line()), "lines")


@demands_of("nordics-too-rare")
def nordics_too_rare(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """A session with Nordic curls in so many weeks, or none at all."""
    names = limits.names("exercises")
    if are_prepared(ledger, names) or ledger.could_hold(actions=("knee flexion",)):
        return
    sessions = Quantity(ledger.how_often(lambda entry: is_one_of(entry, names)), "sessions")
    least = len(ledger.weeks) / limits.number("weeks")
    yield at_least(least, sessions, "Nordic curl", [none_of(sessions)])


@demands_of("straight-knee-calf-missing")
def straight_knee_calf_missing(week: Week, ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Some work for the gastrocnemius in a block, or in any where nobody names it, if heels are raised."""
    block = ledger.judged_with(week)
    asked = week.is_typical() and week.builds("gastrocnemius")
    asked = asked and (are_calves_named(week) or not ledger.brings("gastrocnemius"))
    if asked and not block.leaves_open(areas=("gastrocnemius",)):
        raises = sets_of_actions(week.turn().tally, ("plantarflexion",), hard=True)
        straight = sets_for(block, "gastrocnemius", TOTAL, hard=False)
        yield some(straight, "gastrocnemius", [none_of(raises)])


@demands_of("calf-work-missing")
def calf_work_missing(week: Week, ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Some work for the calves in a block, unless the legs are not trained."""
    block = ledger.judged_with(week)
    asked = week.programme.goal in ("", *limits.names("goals")) and week.is_typical()
    if asked and means_whole_legs(week) and not block.could_hold(areas=("calves",)):
        legs = sets_of_actions(week, LEG_WORK, hard=True)
        yield some(sets_for(block, "calves", TOTAL, hard=False), "calves", [none_of(legs)])


@demands_of("days-per-region-few")
def days_per_region_few(week: Week, ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """So many days for each major region that the focus means and the programme trains."""
    if week.programme.goal != "general health" or not week.is_typical() or is_cut_short(week, ledger):
        return
    turn = week.turn()
    if not all(visit.day for visit in turn.tally.visits):
        return
    for region in catalogue.major_regions:
        if not ledger.brings(region) or not week.means(region) or turn.tally.leaves_open(areas=(region,)):
            continue
        days = turn.a_week(sum(len(days_of(one, region, limits)) for one in turn.weeks))
        yield at_least(limits.number("days"), Quantity(days, "days"), region)


@demands_of("fast-work-missing")
def fast_work_missing(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Some fast work where power is the goal."""
    power = Range(limits.number("lightest"), limits.number("heaviest"))
    if ledger.programme.goal != "power" or not ledger.typical_weeks():
        return
    if any(may_be_fast(entry, power) for entry in ledger.unsure()):
        return
    if calls_it_fast(ledger, limits.names("words")):
        return
    fast = sets_where(ledger, lambda entry: is_fast(entry, power), lambda one: float(one.kind in FAST_KINDS))
    yield some(fast, "", [none_of(Quantity(ledger.all_sets().high, "sets"))])


@demands_of("finer-points-missing")
def finer_points_missing(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Some set for each finer point of a muscle that gets sets enough."""
    typical = ledger.typical_weeks()
    for point in FINER_POINTS:
        if point.name not in limits.names("points") or not is_wanted(ledger, point):
            continue
        if point.may_be_reached(ledger):
            continue
        weeks = [week for week in typical if week.means(point.about)]
        parents = [sets_for(week, point.parent, limits.name("counting")) for week in weeks]
        fullest = max(parents, key=lambda one: one.now, default=None)
        if fullest is not None:
            unless = [under(max(limits.number("least"), 0.5), fullest)]
            yield some(_reaching(ledger, point), unless=unless)


def _reaching(ledger: Ledger, point: FinerPoint) -> SetSum:
    """The sets that reach a finer point."""
    if point.actions:
        return sets_of_actions(ledger, point.actions)
    where = point.is_at_length if point.length else None
    return sets_for(ledger, point.area, point.count, hard=False, where=where)


@demands_of("priority-not-ahead")
def priority_not_ahead(week: Week, limits: Limits) -> Iterator[RuleDemand]:
    """A priority ahead of the mean of the groups beside it that are trained now."""
    programme = week.programme
    if not week.is_typical() or programme.goal in ("strength", "power"):
        return
    counting, tally = limits.name("counting"), week.turn().tally
    first = muscles_of(programme.priority)
    for term in programme.priority:
        rest = rest_of_half(tally, term.words, first, limits.names("left out"))
        if not catalogue.is_group(term.words) or not rest or tally.leaves_open(areas=(term.words,)):
            continue
        own = sets_for(tally, term.words, counting, end="middle")
        others = [(-1 / len(rest), sets_for(tally, one, counting, end="middle")) for one in rest]
        lead = limits.number("lead") * len(week.turn().weeks)
        ahead = over(lead, [(1.0, own), *others], term.words)
        ahead.firm = False
        yield ahead


@demands_of("pull-or-push-missing")
def pull_or_push_missing(week: Week, ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Some of each direction in which the arms press and pull, where there is enough of them together."""
    turn, block = week.turn(), ledger.judged_with(week)
    goals = (*BUILDING, "general health")
    is_kept_up = week.phase == "in-season" and not is_in_focus(week)
    if not week.is_typical() or week.phase == "return" or is_kept_up or spares_an_arm(ledger):
        return
    upper = sets_of_actions(turn.tally, tuple(PRESSES_AND_PULLS), hard=True)
    unless = [under(limits.number("fewest together") * len(turn.weeks), upper)]
    if not is_in_focus(week):
        unless.append(at_most(1, _lines(block.for_actions(PRESSES_AND_PULLS, hard=True).by_line().values())))
    asked = [
        direction
        for direction, area in PRESSES_AND_PULLS.items()
        if week.builds(area, goals) and not block.leaves_open((direction,))
    ]
    in_sport = set() if is_in_focus(week) else in_the_sport(ledger)
    if "horizontal pull" in asked and rows_on_a_machine(block, ledger):
        asked.remove("horizontal pull")
    had = {one: one not in in_sport and can_be_had(one, week, ledger) for one in asked}
    for direction in asked:
        together: tuple[str, ...] = (direction,)
        if direction.startswith("vertical") and ledger.programme.goal == "general health":
            together = tuple(one for one in asked if one.startswith("vertical"))
            if not is_vertical_asked(together, ledger):
                continue
        if had[direction]:
            off = [some(_thrown(block, one)) for one in together]
            if direction == "vertical push":
                off.append(some(sets_for(block, "side shoulder", DIRECT, hard=False)))
            yield some(sets_of_actions(block, together), direction, [*unless, *off])


def _thrown(block: Tally, direction: str) -> SetSum:
    """The throws in a direction."""
    return sets_where(block, lambda entry: goes_fast(entry, direction), _throws)


def _throws(exercise: Exercise) -> float:
    return float(exercise.pattern == "throw")


@demands_of("region-untrained", exact=False)
def region_untrained(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """Some set for each region: those in a focus, else the major ones."""
    programme = ledger.programme
    meant: list[tuple[Tally, str]] = [(ledger, term.words) for term in programme.focus]
    meant += [(ledger.of_block(block), term.words) for block in programme.blocks for term in block.focus]
    for tally, words in meant:
        muscles = catalogue.area(words)
        for part in parts_of(muscles) if muscles else ():
            yield from _trained(tally, words if part == "it" else part, words)
    if programme.focus or all(block.focus for block in programme.blocks):
        return
    if programme.goal not in (*BUILDING, "general health") or not ledger.typical_weeks():
        return
    left_alone = muscles_of(programme.not_trained)
    for region in catalogue.major_regions:
        if not left_alone.issuperset(catalogue.regions[region]):
            yield from _trained(ledger, region, region)


def _trained(tally: Tally, region: str, name: str) -> Iterator[RuleDemand]:
    if not tally.leaves_open(areas=catalogue.area(region) or ()):
        yield some(sets_for(tally, region, TOTAL, hard=False), name)
