"""What is foreseen of steps without a review: which demands they surely break, or break further.

Only rules that their demands say exactly are foreseen, and none that is named in the file, where it may be
waived: what is foreseen is what the review would find.
"""

from __future__ import annotations

from itertools import compress
from math import inf, nan
from operator import gt, lt

from ..engine.demands import Minutes, SetSum, demands_on, is_exact
from .rows import Rows

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping

    from ..engine.demands import Quantity, RuleDemand
    from ..engine.registry import Rule
    from ..engine.run import Moves
    from ..model.sessions import Session
    from .lines import Plan
    from .steps import EditStep

    Broken = tuple[str, str]
    """A rule, and what it speaks of."""

TINY = 1e-3
"""By how much a broken demand is broken further, at least."""


class _Reach:
    """How far the sum of each demand may go down and up until it is broken, or broken further than now.

    ``lowest`` and ``highest`` hold it for steps that add no line, and for such as do: with those something is
    assumed that now is written.
    """

    __slots__ = ("every", "highest", "lowest")

    def __init__(self, every: list[RuleDemand], short: Mapping[Broken, float]) -> None:
        self.every = every
        self.lowest: tuple[list[float], list[float]] = ([], [])
        self.highest: tuple[list[float], list[float]] = ([], [])
        for one in every:
            now = one.now
            more = short[one.rule, one.group] + TINY
            told = one.measured or not short[one.rule, one.group]
            slack = sum(factor * what.slack for factor, what in one.terms if isinstance(what, Minutes))
            least = -inf if one.least is None or not told else one.least - more - now
            most = inf if one.most is None or not told else one.most + more - now
            for adds, wider in ((False, 0.0), (True, slack)):
                self.lowest[adds].append(least + wider)
                self.highest[adds].append(most + wider)


class Foresight:
    """The demands on a plan, and what steps do to them.

    ``rules`` are those that judge it, ``moved`` and ``preset`` the limits that they are run with.
    """

    __slots__ = (
        *("_about", "_bounds", "_by_line", "_by_session", "_limits", "_plan", "_rows", "_rules"),
        *("_short", "rows"),
    )

    def __init__(self, plan: Plan, rules: Iterable[Rule], moved: Moves, preset: Moves) -> None:
        self._plan = plan
        self.rows = Rows(plan)
        self._limits = moved, preset
        self._rules = [rule for rule in rules if is_exact(rule) and rule.name not in plan.text.content]
        self._bounds: _Reach | None = None
        self._short: dict[Broken, float] = {}
        self._about: dict[Broken, list[RuleDemand]] = {}
        self._by_line: dict[int, set[int]] = {}
        self._by_session: dict[Session | None, set[int]] = {}
        self._rows: dict[EditStep, list[float]] = {}

    def breaks(self, steps: Iterable[EditStep]) -> frozenset[Broken]:
        """What steps surely break, or break further; nothing where one of them is not plain."""
        steps = tuple(steps)
        if not steps or not all(map(self.rows.is_plain, steps)):
            return frozenset()
        bounds = self._bounds or self._look()
        adds = any(step.kind == "add" for step in steps)
        totals = list(map(sum, zip(*map(self._changes_by, steps), strict=True)))
        above = compress(bounds.every, map(gt, totals, bounds.highest[adds]))
        below = compress(bounds.every, map(lt, totals, bounds.lowest[adds]))
        broken = {(one.rule, one.group): one for one in (*above, *below) if self._is_broken(one, steps)}
        return frozenset(broken)

    def clears(self, steps: Iterable[EditStep], aims: set[Broken]) -> bool:
        """Whether steps surely clear all that is broken of some aims; they are plain."""
        steps = tuple(steps)
        return aims <= self._about.keys() and all(
            demand.short_after(lambda quantity: self._change(quantity, steps)) == 0
            for about in aims
            for demand in self._about[about]
        )

    @property
    def demands(self) -> list[RuleDemand]:
        """All demands of its rules on the plan, broken or not."""
        if self._bounds is None:
            self._look()
        return [one for several in self._about.values() for one in several]

    def _changes_by(self, step: EditStep) -> list[float]:
        """What a step does to the sum of each demand; not a number where that is not known."""
        if step not in self._rows:
            bounds = self._bounds or self._look()
            row = self._rows[step] = [0.0] * len(bounds.every)
            touched = set(self._by_line.get(step.line, ()))
            if step.exercise is not None:
                touched |= self._by_session.get(self.rows.session_of(step), set())
            for number in touched:
                changes = [
                    (factor, self.rows.change(one, (step,))) for factor, one in bounds.every[number].terms
                ]
                row[number] = sum(factor * (nan if by is None else by) for factor, by in changes)
        return self._rows[step]

    def _is_broken(self, demand: RuleDemand, steps: tuple[EditStep, ...]) -> bool:
        """Whether a demand whose sum is out of its bounds is surely not let off."""
        if not demand.unless:
            return True
        short = demand.short_after(lambda quantity: self._change(quantity, steps)) or 0.0
        return short > self._short[demand.rule, demand.group] + TINY

    def _change(self, quantity: Quantity, steps: tuple[EditStep, ...]) -> float | None:
        by = self.rows.change(quantity, steps)
        if by is not None and isinstance(quantity, Minutes) and any(step.kind == "add" for step in steps):
            return by - quantity.slack
        return by

    def _look(self) -> _Reach:
        """By how much what is broken is so now; notes the lines and sessions that each demand counts."""
        every = list(self._all())
        for number, one in enumerate(every):
            about = one.rule, one.group
            self._about.setdefault(about, []).append(one)
            short = one.short_after(lambda _: 0.0) or 0.0
            self._short[about] = max(self._short.get(about, 0.0), short)
            for quantity in one.quantities():
                for line in self.rows.lines_of(quantity):
                    self._by_line.setdefault(line, set()).add(number)
                for session in _sessions_of(quantity):
                    self._by_session.setdefault(session, set()).add(number)
        self._bounds = _Reach(every, self._short)
        return self._bounds

    def _all(self) -> Iterator[RuleDemand]:
        is_squad = len(self._plan.ledgers) > 1
        for ledger in self._plan.ledgers:
            for one in demands_on(self._rules, ledger, *self._limits):
                one.athlete = ledger.athlete.name if is_squad and ledger.athlete is not None else ""
                if one.firm:
                    yield one


def _sessions_of(quantity: Quantity) -> Iterator[Session]:
    if isinstance(quantity, SetSum):
        yield from {visit.session for visit in quantity.tally.visits}
    elif isinstance(quantity, Minutes):
        yield quantity.visit.session
