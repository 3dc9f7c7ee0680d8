"""What is foreseen of steps without a review: which demands they surely break, or break further.

Only rules that their demands say exactly are foreseen, and none that is named in the file, where it may be
waived: what is foreseen is what the review would find.
"""

from __future__ import annotations

from ..engine.demands import Minutes, SetSum, demands_on, is_exact
from .rows import Rows

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

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


class Foresight:
    """The demands on a plan, and what steps do to them.

    ``rules`` are those that judge it, ``moved`` and ``preset`` the limits that they are run with.
    """

    __slots__ = (
        *("_about", "_by_line", "_by_session", "_limits", "_plan", "_rules", "_short"),
        *("_touched", "rows"),
    )

    def __init__(self, plan: Plan, rules: Iterable[Rule], moved: Moves, preset: Moves) -> None:
        self._plan = plan
        self.rows = Rows(plan)
        self._limits = moved, preset
        self._rules = [rule for rule in rules if is_exact(rule) and rule.name not in plan.text.content]
        self._short: dict[Broken, float] | None = None
        self._about: dict[Broken, list[RuleDemand]] = {}
        self._by_line: dict[int, dict[int, RuleDemand]] = {}
        self._touched: dict[EditStep, dict[int, RuleDemand]] = {}
        self._by_session: dict[Session, dict[int, RuleDemand]] = {}

    def breaks(self, steps: Iterable[EditStep]) -> frozenset[Broken]:
        """What steps surely break, or break further; nothing where one of them is not plain."""
        steps = tuple(steps)
        if not steps or not all(map(self.rows.is_plain, steps)):
            return frozenset()
        if self._short is None:
            self._short = self._look()
        touched: dict[int, RuleDemand] = {}
        for step in steps:
            touched |= self._touched_by(step)
        found: set[Broken] = set()
        for one in touched.values():
            about = one.rule, one.group
            if self._short.get(about) and not one.measured:
                continue
            if about not in found and self._by(one, steps) > self._short.get(about, 0.0) + TINY:
                found.add(about)
        return frozenset(found)

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
        if self._short is None:
            self._short = self._look()
        return [one for several in self._about.values() for one in several]

    def _touched_by(self, step: EditStep) -> dict[int, RuleDemand]:
        """The demands that a step may break: those of which it changes something."""
        if step not in self._touched:
            found = dict(self._by_line.get(step.line, {}))
            if step.exercise is not None:
                held = self.rows.session_of(step)
                found |= self._by_session.get(held, {}) if held is not None else {}
            self._touched[step] = {
                number: one
                for number, one in found.items()
                if any(self._change(quantity, (step,)) != 0 for quantity in one.quantities())
            }
        return self._touched[step]

    def _by(self, demand: RuleDemand, steps: tuple[EditStep, ...]) -> float:
        """By how much steps surely break a demand; 0 where they may not."""
        return demand.short_after(lambda quantity: self._change(quantity, steps)) or 0.0

    def _change(self, quantity: Quantity, steps: tuple[EditStep, ...]) -> float | None:
        by = self.rows.change(quantity, steps)
        if by is not None and isinstance(quantity, Minutes) and any(step.kind == "add" for step in steps):
            return by - quantity.slack
        return by

    def _look(self) -> dict[Broken, float]:
        """By how much what is broken is so now; notes the lines and sessions that each demand counts."""
        short: dict[Broken, float] = {}
        for number, one in enumerate(self._all()):
            about = one.rule, one.group
            self._about.setdefault(about, []).append(one)
            short[about] = max(short.get(about, 0.0), one.short_after(lambda _: 0.0) or 0.0)
            for quantity in one.quantities():
                for line in self.rows.lines_of(quantity):
                    self._by_line.setdefault(line, {})[number] = one
                for session in _sessions_of(quantity):
                    self._by_session.setdefault(session, {})[number] = one
        return short

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
