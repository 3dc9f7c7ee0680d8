"""Rules of a team's own, declared in its settings in terms of what a week holds: data, never code."""

from __future__ import annotations

from ..body import catalogue
from ..body.catalogue import PATTERNS
from ..body.names import without_side
from ..counting.credits import FRACTIONAL
from ..engine.registry import Rule
from ..findings.finding import found
from ..wording.words import near_names, plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from ..counting.counts import Count
    from ..counting.week import Week
    from ..engine.limits import Limits
    from ..findings.finding import DraftFinding

FAMILY = "team"


def is_action(name: str) -> bool:
    """Whether a name is a joint action or a movement pattern."""
    return name in PATTERNS or name in catalogue.actions()


def is_known(name: str) -> bool:
    """Whether weekly sets can be counted for a name: an area of both sides, a joint action or a pattern."""
    return is_action(name) or (catalogue.area(name) is not None and not without_side(name))


def near(name: str) -> list[str]:
    """The nearest names for which sets can be counted."""
    return near_names(name, [*PATTERNS, *catalogue.actions(), *catalogue.area_names()], 2)


def team_rule(declared: dict[str, Any]) -> Rule:
    """The rule that an entry of ``team rules`` declares; the entry is sound and names what is known."""
    demand = _TeamDemand(declared)
    source = declared.get("source")
    why = " ".join(
        part
        for part in (
            declared.get("why", "Your team has agreed on it."),
            f"Source: {source}." if source else "",
        )
        if part
    )

    def check(week: Week, limits: Limits) -> Iterator[DraftFinding]:
        return demand.judged(week)

    check.__doc__ = demand.page()
    severity = declared.get("severity", "warning")
    return Rule(declared["rule"], FAMILY, severity, "convention", why, (), (), QUIET, check)


QUIET = ("rehabilitation", "peak")
"""Where a team's declared rules have nothing to say."""


class _TeamDemand:
    """What a declared rule demands of a week."""

    def __init__(self, declared: dict[str, Any]) -> None:
        self.name: str = declared["rule"]
        self.subject: str = declared["weekly sets of"]
        self.within: str = declared.get("in", "")
        self.least: float | None = declared.get("at least")
        self.most: float | None = declared.get("at most")
        self.counting: str = declared.get("counting", FRACTIONAL)
        self.when: dict[str, str] = declared.get("when", {})
        self.message: str = declared["message"]

    def page(self) -> str:
        """The rule in words, as other rules have it beside their code."""
        bounds = [
            f"{word} {plain(number)}"
            for word, number in (("at least", self.least), ("at most", self.most))
            if number is not None
        ]
        return f"Weekly sets of {self.words()}: {' and '.join(bounds)}."

    def words(self) -> str:
        return f"{self.subject} in {self.within}" if self.within else self.subject

    def judged(self, week: Week) -> Iterator[DraftFinding]:
        if not week.is_typical() or not self.fits(week):
            return
        count = self.count(week)
        few = self.least is not None and count.low < self.least and not self.unsure(week)
        many = self.most is not None and count.high > self.most
        if not few and not many:
            return
        bound = f"at least {plain(self.least or 0)}" if few else f"at most {plain(self.most or 0)}"
        lines = count.lines()
        visit = week.visits[0] if week.visits else None
        if not lines and visit is None:
            return
        place = lines[0][0].place if lines else visit.session.place if visit else week.programme.place
        yield found(
            place,
            f"{count} sets a week of {self.words()}.",
            wanted=f"{bound} a week (your team's rule)",
            change=self.message,
            where=lines[0][0].session.name if lines else week.visits[0].session.name,
            subject=self.name,
            excess=max((self.least or 0) - count.low, count.high - (self.most or count.high)),
        )

    def fits(self, week: Week) -> bool:
        """Whether goal, level and phase are those that the rule asks."""
        held = {"goal": week.programme.goal, "level": week.programme.level, "phase": week.phase}
        return all(held[what] == word for what, word in self.when.items())

    def count(self, week: Week) -> Count:
        if is_action(self.subject):
            return week.for_actions((self.subject,), hard=True)
        count = week.sets(self.subject, self.counting)
        return count.where(lambda entry: entry.trains((self.within,))) if self.within else count

    def unsure(self, week: Week) -> bool:
        """Whether a line that cannot be counted may supply what is missing."""
        actions = [name for name in (self.subject, self.within) if name and is_action(name)]
        areas = [] if is_action(self.subject) else [self.subject]
        return week.could_hold(actions, areas)
