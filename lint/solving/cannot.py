"""What cannot be had together, in a coach's words, and what to loosen: from the demands as data."""

from __future__ import annotations

from math import ceil, floor

from ..body import equipment
from ..body.catalogue import LEVELS, RANKS
from ..counting.suggestions import suggest
from ..engine.demands import Minutes, SetSum
from ..wording.words import listed, plain, sets_of, with_article
from .at_once import AtOnce
from .exercises import would_serve

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

    from ..body.catalogue import Exercise
    from ..engine.demands import RuleDemand
    from .foresight import Foresight
    from .judge import Seen
    from .lines import Plan

WEEKLY = "a week"

MINUTES_STEP = 5
"""Minutes to which a longer session is rounded up."""

SMALL = ("band", "pull-up bar", "suspension", "exercise ball", "sliders", "kettlebell", "dumbbell", "barbell")
"""Pieces that are soon had, the cheapest first: named before machines (common practice, no source)."""

MOST_NAMED = 3
"""Demands that are named before they are only counted."""


def cannot(plan: Plan, foresight: Foresight | None, seen: Seen) -> list[str]:
    """Which demands cannot be met together with the one of a finding, and what would do; nothing if they can.

    First with all that holds now, then with what its rule asks besides.
    """
    if foresight is None or len(plan.ledgers) != 1:
        return []
    every = foresight.demands
    about = [one for one in every if one.rule == seen.rule and seen.group in (one.group, "")]
    aims = [one for one in about if not one.is_held and one.weeks]
    if not aims:
        return []
    (ledger,) = plan.ledgers
    week = ledger.weeks[min((*seen.finding.weeks, aims[0].weeks[0])) - 1]
    held = [one for one in every if one.is_held]
    alike = [one for one in every if one.rule == seen.rule and not one.is_held]
    whole = AtOnce(plan, ledger, week, [*held, *alike])
    for wanted in (aims, alike):
        core = whole.core(wanted, held)
        if core and any(one in core for one in aims):
            return _said(whole, core)
    return []


def _said(whole: AtOnce, core: list[RuleDemand]) -> list[str]:
    """What stands against what, and the loosenings, the one that costs least first."""
    times = [one for one in core if one.unit == "min"]
    floors = [one for one in core if one.least is not None]
    caps = [one for one in core if one.most is not None and one.unit != "min"]
    if not floors or not (times or caps):
        return []
    bounds = [_cap(whole, one) for one in caps[:MOST_NAMED]]
    within = f" in {_by_minutes([_has(one) for one in times])}" if times else ""
    held = f" with {listed(bounds)}" if bounds else ""
    ways = [one for one in (_most(whole, core, floors), _loosened(whole, core, times, caps)) if one]
    return [f"{_floors(floors)} cannot be had{within}{held}.", *ways]


def _most(whole: AtOnce, core: list[RuleDemand], floors: list[RuleDemand]) -> str:
    """``No more than 8 sets each are to be had so.``"""
    fits = whole.most_for_each(core, floors)
    number = 0.0 if fits is None else floor(2 * fits + 1e-6) / 2
    if number <= 0:
        return ""
    return f"No more than {sets_of(number)}{' each' if len(floors) > 1 else ''} would fit."


def _loosened(whole: AtOnce, core: list[RuleDemand], times: list[RuleDemand], caps: list[RuleDemand]) -> str:
    """``What is asked takes at least 2 x 60 min, pairs of small lifts, or a further day.``"""
    ways: list[tuple[float, str]] = []
    more = whole.more_for(core, times) if times else None
    if more is not None:
        has = max(map(_has, times))
        wider = has * (1 + more / max(map(_bound, times)))
        minutes = MINUTES_STEP * ceil(wider / MINUTES_STEP)
        ways.append((more / has, f"at least {_by_minutes([minutes] * len(times))}"))
        ways.append((2.0, "pairs of small lifts"))
    for one in caps[:MOST_NAMED]:
        more, most = whole.more_for(core, [one]), one.most or 0.0
        if more is not None:
            let = f"{plain(ceil(2 * (most + more) - 1e-6) / 2)} {_over(whole, one)} for {one.group}"
            ways.append((more / max(most, 1.0), let))
    if times or any(_over(whole, one) != WEEKLY for one in caps):
        ways.append((3.0, "a further day"))
    needs = [words for _, words in sorted(ways, key=lambda way: way[0])]
    return f"What is asked takes {listed(needs, 'or')}." if needs else ""


def _floors(floors: Sequence[RuleDemand]) -> str:
    """``10 sets a week for each of chest, lats and biceps``."""
    by_number: dict[float, list[str]] = {}
    for one in floors:
        by_number.setdefault(one.least or 0.0, []).append(one.group)
    return listed([_of_one_number(*one) for one in by_number.items()])


def _of_one_number(number: float, groups: list[str]) -> str:
    sets = "some work" if number < 1 else f"{sets_of(number)} a week"
    groups = list(dict.fromkeys(groups))
    return f"{sets} for {'each of ' if len(groups) > 1 else ''}{listed(groups)}"


def _by_minutes(minutes: Sequence[float]) -> str:
    """``2 x 45 min``; ``45 and 60 min`` where they differ."""
    if len(set(minutes)) == 1:
        return f"{len(minutes)} x {plain(minutes[0])} min" if len(minutes) > 1 else f"{plain(minutes[0])} min"
    return f"{listed([plain(one) for one in minutes])} min"


def _has(demand: RuleDemand) -> float:
    """The minutes that there are for a session."""
    return max(one.has for _, one in demand.terms if isinstance(one, Minutes))


def _bound(demand: RuleDemand) -> float:
    """The minutes up to which nothing is said of a session."""
    return (demand.most or 0.0) + sum(one.slack for _, one in demand.terms if isinstance(one, Minutes))


def _cap(whole: AtOnce, demand: RuleDemand) -> str:
    return f"at most {plain(demand.most or 0.0)} {_over(whole, demand)} for {demand.group} ({demand.rule})"


def _over(whole: AtOnce, demand: RuleDemand) -> str:
    """``a week``, or ``in Lower`` where it is about one session or a day."""
    tallies = [one.tally for _, one in demand.terms if isinstance(one, SetSum)]
    names = dict.fromkeys(visit.session.name for tally in tallies for visit in tally.visits)
    is_of_week = whole.visits > 1 and any(len(tally.visits) >= whole.visits for tally in tallies)
    return WEEKLY if is_of_week else f"in {listed(list(names))}"


def would_do(plan: Plan, what: str) -> str:
    """``With dumbbells and a flat bench nothing is a vertical pull; a band or a pull-up bar would do``.

    Empty where something at hand would do, or nothing anywhere.
    """
    header = plan.header
    suggestion = suggest(header, lambda one: would_serve(one, what))
    if suggestion.names or not suggestion.obstacles:
        return ""
    has = header.equipment
    level = LEVELS.index(header.level) if header.level in LEVELS else 0
    pieces: dict[tuple[str, ...], None] = {}
    for exercise in header.known.by_rank() if has is not None else ():
        fits = would_serve(exercise, what) and LEVELS.index(exercise.level) <= level
        if fits and exercise.rank != RANKS[-1] and lacks_only_equipment(plan, exercise):
            lacking = equipment.missing(exercise, has or (), equipment.ALWAYS_THERE)
            if len(lacking) == 1:
                pieces.setdefault(lacking, None)
    if not pieces:
        return f"Nothing at hand does it: {listed(suggestion.obstacles)}."
    small = [piece for piece in SMALL if (piece,) in pieces]
    bought = small or [piece for (piece,) in pieces]
    names = [with_article(equipment.as_thing(piece)) for piece in bought[:MOST_NAMED]]
    at_hand = f"With {listed(sorted(has))} " if has else "Without equipment "
    return f"{at_hand}nothing at hand trains {what}; {listed(names, 'or')} would do."


def lacks_only_equipment(plan: Plan, exercise: Exercise) -> bool:
    """Whether nothing but equipment speaks against an exercise."""
    return plan.obstacle(exercise).startswith("needs a")
