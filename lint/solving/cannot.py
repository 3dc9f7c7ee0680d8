"""What cannot be had together, in a coach's words, and what to loosen: from the demands as data."""

from __future__ import annotations

from itertools import product
from math import ceil

from ..body import equipment
from ..body.catalogue import LEVELS, PATTERNS, RANKS
from ..counting.suggestions import suggest
from ..engine.demands import TINY, Minutes, SetSum
from ..wording.words import counted_noun, listed, plain, sets_of, with_article
from .at_once import AtOnce
from .days_lacking import days_lacking
from .exercises import would_serve

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from ..body.catalogue import Exercise
    from ..counting.ledger import Ledger
    from ..engine.demands import RuleDemand
    from ..model.sessions import Session
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

MOST_LISTED = 4
"""Groups that are named before they are only counted."""

ORDINALS = {2: "second", 3: "third", 4: "fourth", 5: "fifth", 6: "sixth", 7: "seventh"}


class Conflicts:
    """The demands on a plan that cannot be met together. What several findings need is worked out once."""

    __slots__ = ("_at_once", "_cores", "_foresight", "_plan", "_told")

    def __init__(self, plan: Plan, foresight: Foresight) -> None:
        self._plan = plan
        self._foresight = foresight
        self._at_once: dict[tuple[str, int, bool], AtOnce] = {}
        self._cores: dict[tuple[object, ...], _Conflict] = {}
        self._told: dict[_Conflict, list[str]] = {}

    def cannot(self, seen: Seen) -> list[str]:
        """Which demands cannot be met with the one of a finding, and what would do; nothing if they can.

        First with all that holds now, then with what its rule asks besides; first at the least minutes that
        sessions can take, then as they usually go. A squad does the same lines: all its demands are on them.
        """
        every = self._foresight.demands
        alike = [one for one in every if one.rule == seen.rule and not one.is_held]
        aims = [one for one in alike if one.weeks and _is_about(one, seen)]
        if not aims:
            return []
        number = min((*seen.finding.weeks, aims[0].weeks[0]))
        for ledger in self._plan.ledgers:
            own = [one for one in aims if one.athlete in ("", _name(ledger))]
            week = ledger.weeks[number - 1]
            on_days = days_lacking(self._plan, ledger, week, seen, own) if own else []
            if on_days:
                return _for_them([own[0].athlete], on_days)
        for usual in (False, True):
            for wanted, names in product((aims, alike), _whose(every)):
                conflict = self._conflict(number, wanted, names, usual=usual)
                if any(one in conflict.core for one in aims):
                    return self._said(conflict)
        return []

    def _conflict(
        self, number: int, wanted: list[RuleDemand], names: tuple[str, ...], *, usual: bool
    ) -> _Conflict:
        """What cannot be had of what is wanted for some athletes, with all that holds now."""
        rule, ours = wanted[0].rule, [one for one in wanted if one.athlete in names]
        key = number, rule, *map(id, ours), names, usual
        if key not in self._cores:
            whole = self._whole(number, rule, usual=usual)
            held = [one for one in self._foresight.demands if one.is_held and one.athlete in names]
            core = whole.core(ours, held)
            if any(one.unit == "min" for one in core):
                whole = self._whole(number, rule, usual=True)
            self._cores[key] = _Conflict(self._plan, core, whole)
        return self._cores[key]

    def _whole(self, number: int, rule: str, *, usual: bool) -> AtOnce:
        """A week with all demands that hold now, and all that a rule asks besides."""
        key = rule, number, usual
        if key not in self._at_once:
            weeks = [one.weeks[number - 1] for one in self._plan.ledgers if len(one.weeks) >= number]
            every = self._foresight.demands
            both = [one for one in every if one.is_held]
            both += [one for one in every if one.rule == rule and not one.is_held]
            surely = self._whole(number, rule, usual=False) if usual else None
            self._at_once[key] = AtOnce(self._plan, weeks, both, usual=usual, alike=surely)
        return self._at_once[key]

    def _said(self, conflict: _Conflict) -> list[str]:
        if conflict not in self._told:
            self._told[conflict] = _for_them(conflict.names, conflict.said())
        return self._told[conflict]


def _whose(demands: Sequence[RuleDemand]) -> list[tuple[str, ...]]:
    """The athletes of demands, each alone and then all: what one has to be told is told for that one."""
    names = tuple(dict.fromkeys(one.athlete for one in demands))
    return [*((one,) for one in names), *([names] if len(names) > 1 else [])]


def _name(ledger: Ledger) -> str:
    return "" if ledger.athlete is None else ledger.athlete.name


def _for_them(names: Iterable[str], said: list[str]) -> list[str]:
    """What is said, for those of a squad whom it is about."""
    named = listed([one for one in names if one])
    return [f"For {named}: {said[0][:1].lower()}{said[0][1:]}", *said[1:]] if named and said else said


def _is_about(demand: RuleDemand, seen: Seen) -> bool:
    """Whether a finding may speak of a demand: by what it names, or by the words of the demand itself."""
    for_them = not seen.finding.athletes or demand.athlete in ("", *seen.finding.athletes)
    return for_them and _is_on(demand, seen)


def _is_on(demand: RuleDemand, seen: Seen) -> bool:
    return seen.group in (demand.group, "") or seen.group.startswith(f"{demand.group}:")


class _Conflict:
    """Demands that cannot be met together: what is wanted, the minutes for it, and the limits on it."""

    def __init__(self, plan: Plan, core: list[RuleDemand], whole: AtOnce) -> None:
        self.names = list(dict.fromkeys(one.athlete for one in core if one.athlete))
        theirs = [one for one in plan.ledgers if not self.names or _name(one) in self.names]
        self.athlete = theirs[0].athlete
        self.whole = whole
        several = {id(one) for one in (*core, *_beside(core, whole.demands))}
        self.core = [one for one in whole.demands if id(one) in several]
        self.floors = [one for one in self.core if one.least is not None]
        self.times = _shortest([one for one in self.core if one.unit == "min"])
        self.caps = [one for one in self.core if one.most is not None and one.unit != "min"]

    def said(self) -> list[str]:
        """What fits and what would do, the way that costs least first."""
        if not self.floors or not (self.times or self.caps):
            return []
        asked = {one.least or 0.0 for one in self.floors}
        fits = self.whole.most_for_each(self.core, self.floors) if len(asked) == 1 else None
        held = [self._cap(one) for one in self.caps[:MOST_NAMED]]
        where = _by_minutes([_has(one) for one in self.times]) if self.times else ""
        needs = self._needs()
        fitting = int((fits or 0.0) + TINY)
        if not fitting or not where:
            within = [*([f"in {where}"] if where else []), *([f"with {listed(held)}"] if held else [])]
            said = f"{_floors(self.floors)} cannot be had {' '.join(within)}"
            is_told = not fitting or fitting in [one.most for one in self.caps]
            room = "" if is_told else f"; {sets_of(fitting)} would fit"
            return [f"{said[:1].upper()}{said[1:]}{room}.", *([f"It takes {needs}."] if needs else [])]
        beside = f", with {listed(held)}," if held else ""
        takes = "hold" if len(self.times) > 1 else "holds"
        said = f"As sessions go, {where}{beside} {takes} {sets_of(fitting)} a week"
        said = f"{said} for {_groups(self.floors)}"
        return [f"{said}; {plain(asked.pop())} take {needs}." if needs else f"{said}."]

    def _needs(self) -> str:
        """``2 x 60 min, pairs of small lifts or a third day``: the least change first."""
        whole, core, ways = self.whole, self.core, list[tuple[float, str]]()
        more = whole.more_for(core, self.times) if self.times else None
        if more is not None:
            has = max(map(_has, self.times))
            minutes = MINUTES_STEP * ceil(has * (1 + more / max(map(whole.bound, self.times))) / MINUTES_STEP)
            ways.append((more / has, f"about {_by_minutes([minutes] * len(self.times))}"))
            if whole.has_small(self.floors):
                ways.append((2.0, "pairs of small lifts"))
        for one in self.caps[:MOST_NAMED]:
            more, most = whole.more_for(core, [one]), one.most or 0.0
            if more is not None:
                let = f"{plain(ceil(2 * (most + more) - TINY) / 2)} {self._over(one)}{self._about(one)}"
                ways.append((more / max(most, 1.0), let))
        if self.times or any(self._over(one) != WEEKLY for one in self.caps):
            ways.append((3.0, self._further_day()))
        return listed([words for _, words in sorted(ways, key=lambda way: way[0])], "or")

    def _cap(self, demand: RuleDemand) -> str:
        most = f"at most {plain(demand.most or 0.0)} {self._over(demand)}{self._about(demand)}"
        return f"{most} ({demand.rule})"

    def _about(self, demand: RuleDemand) -> str:
        """What a limit is about, where that is not said already."""
        return "" if {one.group for one in self.floors} == {demand.group} else f" for {demand.group}"

    def _further_day(self) -> str:
        """``a third day``; with the athlete's days where these are taken."""
        days = self.athlete.days if self.athlete is not None else None
        there = days if isinstance(days, int) else len(set(days or ()))
        is_taken = days is not None and there <= self.whole.visits
        has = f" (the athlete has {counted_noun(there, 'day')})" if is_taken else ""
        return f"a {ORDINALS.get(self.whole.visits + 1, 'further')} day{has}"

    def _over(self, demand: RuleDemand) -> str:
        """``a week``, or ``in Lower`` where it is about one session or a day."""
        tallies = [one.tally for _, one in demand.terms if isinstance(one, SetSum)]
        names = dict.fromkeys(visit.session.name for tally in tallies for visit in tally.visits)
        is_of_week = self.whole.visits > 1 and any(len(one.visits) >= self.whole.visits for one in tallies)
        return WEEKLY if is_of_week else f"in {listed(list(names))}"


def _beside(core: list[RuleDemand], demands: Sequence[RuleDemand]) -> list[RuleDemand]:
    """Where minutes are too few: all that the same rules ask for, and the minutes of all sessions.

    What is told to a coach must be enough for all of it.
    """
    rules = {one.rule for one in core if one.least is not None}
    names = {one.athlete for one in core}
    theirs = [one for one in demands if one.athlete in names and one not in core]
    further = theirs if any(one.unit == "min" for one in core) else []
    return [one for one in further if one.unit == "min" or (one.least is not None and one.rule in rules)]


def _shortest(times: Iterable[RuleDemand]) -> list[RuleDemand]:
    """The minutes for each session, of those who have the fewest."""
    found: dict[Session, RuleDemand] = {}
    for demand in times:
        sessions = [one.visit.session for _, one in demand.terms if isinstance(one, Minutes)]
        known = found.setdefault(sessions[0], demand)
        if _has(demand) < _has(known):
            found[sessions[0]] = demand
    return list(found.values())


def _floors(floors: Sequence[RuleDemand]) -> str:
    """``10 sets a week for each of chest, lats and biceps``."""
    by_number: dict[float, list[RuleDemand]] = {}
    for one in floors:
        by_number.setdefault(one.least or 0.0, []).append(one)
    return listed([f"{_sets_a_week(number)} for {_groups(several)}" for number, several in by_number.items()])


def _sets_a_week(number: float) -> str:
    return "some work" if number < 1 else f"{sets_of(number)} a week"


def _groups(floors: Sequence[RuleDemand]) -> str:
    """``each of chest and lats``; ``each of the 7 that are asked for`` where they are many."""
    names = list(dict.fromkeys(one.group for one in floors))
    if len(names) > MOST_LISTED:
        return f"each of the {len(names)} that are asked for"
    return f"{'each of ' if len(names) > 1 else ''}{listed(names)}"


def _by_minutes(minutes: Sequence[float]) -> str:
    """``2 x 45 min``; ``45 and 60 min`` where they differ."""
    if len(set(minutes)) == 1:
        return f"{len(minutes)} x {plain(minutes[0])} min" if len(minutes) > 1 else f"{plain(minutes[0])} min"
    return f"{listed([plain(one) for one in minutes])} min"


def _has(demand: RuleDemand) -> float:
    """The minutes that there are for a session."""
    return max(one.has for _, one in demand.terms if isinstance(one, Minutes))


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
    at_hand = f"With {listed([_as_had(one) for one in sorted(has)])} " if has else "Without equipment "
    does = f"is {with_article(what)}" if what in PATTERNS else f"trains {what}"
    return f"{at_hand}nothing {does}; {listed(names, 'or')} would do."


def _as_had(piece: str) -> str:
    """``a flat bench``, ``dumbbells``."""
    return piece if piece.endswith("s") else with_article(piece)


def lacks_only_equipment(plan: Plan, exercise: Exercise) -> bool:
    """Whether nothing but equipment speaks against an exercise."""
    return plan.obstacle(exercise).startswith("needs a")
