"""What rules ask, as data: at most or at least so much of something, unless something else holds.

A demand is made of the same limits and the same counts as its rule, for the same things looked at. The search
for edits and the explanation of why there are none read it. A review never loads this module.
"""

from __future__ import annotations

from importlib import import_module

from ..counting.credits import FRACTIONAL, INDIRECT_WEIGHT, credit
from .limits import Limits
from .targets import targets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterable, Iterator

    from ..body.catalogue import Exercise
    from ..counting.counts import Count
    from ..counting.ledger import Ledger, Lifter
    from ..counting.set_group import SetGroup
    from ..counting.tally import Tally, Visit
    from .registry import Rule
    from .run import Moves
    from .targets import Target

    Asks = Callable[..., Iterator["RuleDemand"]]

TINY = 1e-6
"""How much a number may be off a bound: counts are whole numbers of half sets, minutes are worked out."""


DAYS_WITH = "days with it"
"""The unit of days of a week on which something comes."""


class Quantity:
    """Something that is counted: how much there is of it ``now``, and its ``unit``."""

    __slots__ = ("now", "unit")

    def __init__(self, now: float, unit: str) -> None:
        self.now = now
        self.unit = unit


class SetSum(Quantity):
    """Sets that the visits of a tally bring to something.

    ``count`` are those that there are, by line; ``weight`` says how much a set of an exercise brings. ``end``
    is the end of a range that is judged: ``low``, ``middle`` or ``high``. ``takes_any`` says whether plain
    hard sets of an exercise surely count; of those that must pass a test nobody knows before.
    """

    __slots__ = ("count", "end", "takes_any", "tally", "weight")

    def __init__(
        self,
        tally: Tally,
        count: Count,
        weight: Callable[[Exercise], float],
        end: str = "high",
        *,
        takes_any: bool = False,
    ) -> None:
        super().__init__(getattr(count, end), "sets")
        self.takes_any = takes_any
        self.tally = tally
        self.count = count
        self.weight = weight
        self.end = end


class Minutes(Quantity):
    """The least minutes that a session takes.

    ``has`` are the minutes that there are for it; ``slack`` those by which the bound on it is wider once
    something is assumed that now is written.
    """

    __slots__ = ("has", "slack", "visit")

    def __init__(self, visit: Visit, now: float, has: float = 0.0, slack: float = 0.0) -> None:
        super().__init__(now, "min")
        self.visit = visit
        self.has = has
        self.slack = slack


def sets_for(
    tally: Tally,
    area: str,
    kind: str = FRACTIONAL,
    *,
    hard: bool = True,
    side: str = "",
    end: str = "high",
    where: Callable[[SetGroup], bool] | None = None,
) -> SetSum:
    """The sets for an area, by a kind of count; with ``where`` those from groups of sets that pass a test."""
    count = tally.sets(area, kind, hard=hard, side=side)
    indirect = INDIRECT_WEIGHT[kind]

    def weight(exercise: Exercise) -> float:
        share = credit(exercise, area)
        return share if share == 1 or not share else indirect

    passing = count if where is None else count.where(where)
    return SetSum(tally, passing, weight, end, takes_any=where is None)


def sets_of_actions(
    tally: Tally,
    actions: Collection[str],
    *,
    hard: bool = False,
    end: str = "high",
    where: Callable[[SetGroup], bool] | None = None,
) -> SetSum:
    """The direct sets of joint actions or patterns."""
    count = tally.for_actions(actions, hard=hard)
    return SetSum(
        tally,
        count if where is None else count.where(where),
        lambda exercise: 1.0 if any(one in actions for one in served_by(exercise)) else 0.0,
        end,
        takes_any=where is None,
    )


def sets_where(
    tally: Tally,
    where: Callable[[SetGroup], bool],
    weight: Callable[[Exercise], float],
    *,
    hard: bool = False,
    end: str = "high",
) -> SetSum:
    """The sets from groups of sets that pass a test; ``weight`` says what a set of an exercise brings."""
    return SetSum(tally, tally.all_sets(hard=hard).where(where), weight, end)


def served_by(exercise: Exercise) -> tuple[str, ...]:
    """The joint actions and patterns that an exercise is for."""
    return (*exercise.actions, *exercise.patterns)


class RuleDemand:
    """At least ``least`` and at most ``most`` of a sum, unless one of the demands under ``unless`` holds.

    ``terms`` are factors and what is counted. ``group`` is what the rule would speak of: a muscle, a
    movement, a session, "" where there is but one. ``rule`` says whose it is, ``weeks`` when, ``athlete`` for
    whom ("" for the only one). It is ``firm``
    unless what it is about is chosen by what is trained now: the rest that a priority is held against. It is
    ``measured`` where the rule's finding states this sum, so that it is worse where that is.
    """

    __slots__ = ("athlete", "firm", "group", "least", "measured", "most", "rule", "terms", "unless", "weeks")

    def __init__(
        self,
        terms: Iterable[tuple[float, Quantity]],
        *,
        least: float | None = None,
        most: float | None = None,
        group: str = "",
        unless: Iterable[RuleDemand] = (),
    ) -> None:
        self.terms = tuple(terms)
        self.least = least
        self.most = most
        self.group = group
        self.unless = tuple(unless)
        self.rule = ""
        self.athlete = ""
        self.firm = True
        self.measured = True
        self.weeks: tuple[int, ...] = ()

    @property
    def now(self) -> float:
        """How much there is of its sum."""
        return sum(factor * one.now for factor, one in self.terms)

    @property
    def unit(self) -> str:
        """The unit of its sum."""
        return self.terms[0][1].unit

    def allows(self, value: float) -> bool:
        """Whether a value of its sum is within its bounds."""
        return (self.least is None or value >= self.least - TINY) and (
            self.most is None or value <= self.most + TINY
        )

    def short_by(self, value: float) -> float:
        """By how much a value of its sum is out of its bounds; 0 within them."""
        below = 0.0 if self.least is None else self.least - value
        above = 0.0 if self.most is None else value - self.most
        return 0.0 if self.allows(value) else max(below, above)

    @property
    def is_held(self) -> bool:
        """Whether it holds: within its bounds, or let off."""
        return self.short_after(lambda _: 0.0) == 0

    def short_after(self, change: Callable[[Quantity], float | None]) -> float | None:
        """By how much it is broken once what is counted has changed; 0 where it holds or is let off.

        None where a change is not known.
        """
        value: float | None = 0.0
        for factor, one in self.terms:
            by = change(one)
            value = None if by is None or value is None else value + factor * (one.now + by)
        short = None if value is None else self.short_by(value)
        if short == 0:
            return 0.0
        off = [one.short_after(change) for one in self.unless]
        if 0 in off:
            return 0.0
        return None if None in off else short

    def quantities(self) -> Iterator[Quantity]:
        """All that is counted for it, and for what lets it off."""
        for _, one in self.terms:
            yield one
        for other in self.unless:
            yield from other.quantities()


def _terms(what: Quantity | Iterable[tuple[float, Quantity]]) -> Iterable[tuple[float, Quantity]]:
    return [(1.0, what)] if isinstance(what, Quantity) else what


def at_least(
    number: float,
    of: Quantity | Iterable[tuple[float, Quantity]],
    group: str = "",
    unless: Iterable[RuleDemand] = (),
) -> RuleDemand:
    """A demand for at least so much."""
    return RuleDemand(_terms(of), least=number, group=group, unless=unless)


def at_most(
    number: float,
    of: Quantity | Iterable[tuple[float, Quantity]],
    group: str = "",
    unless: Iterable[RuleDemand] = (),
) -> RuleDemand:
    """A demand for at most so much."""
    return RuleDemand(_terms(of), most=number, group=group, unless=unless)


def under(
    number: float,
    of: Quantity | Iterable[tuple[float, Quantity]],
    group: str = "",
    unless: Iterable[RuleDemand] = (),
) -> RuleDemand:
    """A demand for less than so much."""
    return RuleDemand(_terms(of), most=number - 2 * TINY, group=group, unless=unless)


def over(
    number: float,
    of: Quantity | Iterable[tuple[float, Quantity]],
    group: str = "",
    unless: Iterable[RuleDemand] = (),
) -> RuleDemand:
    """A demand for more than so much."""
    return RuleDemand(_terms(of), least=number + 2 * TINY, group=group, unless=unless)


def some(of: Quantity, group: str = "", unless: Iterable[RuleDemand] = ()) -> RuleDemand:
    """A demand for at least one: sets are whole, and half of one where a muscle only helps."""
    return RuleDemand([(1.0, of)], least=0.5, group=group, unless=unless)


def none_of(of: Quantity, group: str = "") -> RuleDemand:
    """A demand for nothing of it."""
    return RuleDemand([(1.0, of)], most=0.0, group=group)


_ASKED: dict[str, Asks] = {}
_EXACT: set[str] = set()
_DAYS_STAY: set[str] = set()


def demands_of(name: str, *, exact: bool = True, days_stay: bool = False) -> Callable[[Asks], Asks]:
    """Declares the demands of the rule of a name: a function of what the rule itself is called with.

    An exact rule speaks if, and only if, one of its demands is broken; another is silent where all hold. With
    ``days_stay`` no session is put on another day for it: there, what it is about would have lost its use.
    """

    def declare(asks: Asks) -> Asks:
        if name in _ASKED:
            raise ValueError(f"the demands of {name} are declared twice")
        _ASKED[name] = asks
        if exact:
            _EXACT.add(name)
        if days_stay:
            _DAYS_STAY.add(name)
        return asks

    return declare


def all_asked() -> dict[str, Asks]:
    """The functions that make the demands of rules, by the rule's name."""
    package = import_module("...rules.demands", __package__)
    for module in package.MODULES:
        import_module(f"...rules.demands.{module}", __package__)
    return _ASKED


def is_exact(rule: Rule) -> bool:
    """Whether the demands of a rule say exactly what it says."""
    return rule.name in all_asked() and rule.name in _EXACT


def days_stay(name: str) -> bool:
    """Whether no session is put on another day for what the rule of a name finds."""
    return name in all_asked() and name in _DAYS_STAY


def demands_on(
    rules: Iterable[Rule], subject: Ledger | Lifter, moved: Moves, preset: Moves | None = None
) -> Iterator[RuleDemand]:
    """What rules ask of a programme, broken or not, by the limits that they are run with.

    ``moved`` and ``preset`` are those of `run`.
    """
    for rule, target, limits, weeks in asked_of(rules, subject, moved, preset or {}):
        for demand in demands_at(rule, target, subject, limits):
            demand.rule, demand.weeks = rule.name, weeks
            yield demand


def demands_at(rule: Rule, target: Target, subject: Ledger | Lifter, limits: Limits) -> Iterator[RuleDemand]:
    """What a rule asks of one thing that it looks at."""
    further = [subject for _ in rule.beyond]
    yield from all_asked()[rule.name](target.unit, *further, limits)


def asked_of(
    rules: Iterable[Rule], subject: Ledger | Lifter, moved: Moves, preset: Moves
) -> Iterator[tuple[Rule, Target, Limits, tuple[int, ...]]]:
    """Each rule that has demands, with each thing that it looks at, its limits there, and the weeks."""
    targets, asked = targets_of(subject), all_asked()
    known: dict[tuple[str, str], Limits] = {}
    for rule in rules:
        for target in targets[rule.scope] if rule.name in asked else ():
            weeks = target.weeks_but(rule.stands_back) if target.apart else target.weeks
            if target.weeks and not weeks:
                continue
            key = (rule.name, target.situation.phase)
            if key not in known:
                own, dated = moved.get(rule.name, {}), preset.get(rule.name, {})
                known[key] = Limits(rule.options, own, target.situation, dated)
            yield rule, target, known[key], weeks
