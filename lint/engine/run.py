"""Runs rules on what they look at, and merges what they find."""

from __future__ import annotations

from ..counting.ledger import Ledger
from ..findings.finding import SEVERITIES
from .limits import Limits
from .targets import targets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from ..counting.ledger import Lifter
    from ..findings.finding import Finding, Severity
    from .limits import Default, Situation
    from .registry import Rule, Subject
    from .targets import Target

PATIENCE = 2.0
"""Seconds that a rule of a team's own module may take for one thing that it looks at."""


class Fault:
    """A rule that raised: which, and what it said."""

    __slots__ = ("rule", "words")

    def __init__(self, rule: str, words: str) -> None:
        self.rule = rule
        self.words = words


class RunCache:
    """What rules had nothing to say of when they were last run on a ledger.

    Of what is as it was they have nothing to say again. It holds for one set of rules and limits, and as long
    as all that stands outside sessions is the same.
    """

    __slots__ = ("_fresh", "_known", "_limits", "_spoke")

    def __init__(self) -> None:
        self._known: set[object] = set()
        self._fresh: dict[str, dict[object, Target]] = {}
        self._spoke: dict[str, set[object]] = {}
        self._limits: dict[tuple[str, str], Limits] = {}

    def turn(self, fed: Mapping[str, list[Target]]) -> None:
        """Begins a run on what is there now."""
        self._fresh = {
            scope: {one.key: one for one in units if one.key not in self._known}
            for scope, units in fed.items()
        }
        self._known = {one.key for units in fed.values() for one in units}

    def to_ask(self, rule: Rule, fed: list[Target]) -> Iterable[Target]:
        """What a rule has to look at, in order: what is new, and what it spoke of last time.

        All of it where the rule looks beyond its target, and where it is of a team's own module: nobody knows
        what that looks at.
        """
        spoke, fresh = self._spoke.pop(rule.name, None), self._fresh[rule.scope]
        if rule.looks_beyond or rule.foreign:
            return fed
        return [one for one in fed if one.key in spoke or one.key in fresh] if spoke else fresh.values()

    def broken_by(self, rule: Rule, key: object) -> None:
        """Notes that a rule has spoken of something."""
        self._spoke.setdefault(rule.name, set()).add(key)

    def limits(self, rule: Rule, moved: Mapping[str, Mapping[str, Default]], situation: Situation) -> Limits:
        """The limits of a rule in a situation: each time the same, so that work may be recalled by them."""
        key = (rule.name, situation.phase)
        if key not in self._limits:
            self._limits[key] = Limits(rule.options, moved.get(rule.name, {}), situation)
        return self._limits[key]

    def forget(self) -> None:
        """Leaves nothing to the next run."""
        for held in (self._known, self._spoke, self._limits):
            held.clear()


def run(
    rules: list[Rule],
    subject: Ledger | Lifter,
    moved: Mapping[str, Mapping[str, Default]],
    severities: Mapping[str, Severity] | None = None,
    cache: RunCache | None = None,
) -> tuple[list[Finding], list[Fault]]:
    """Findings of the rules on a programme, or on an athlete with all of theirs; and rules that raised.

    Each finding comes once, with the weeks it holds for. ``moved`` holds, by rule and option, the limits that
    the team has set, ``severities`` those of rules that it has moved; ``silence`` what the last run on the
    same ledger left.
    """
    severities = severities or {}
    cache = RunCache() if cache is None else cache
    merged: dict[tuple[object, ...], Finding] = {}
    faults: list[Fault] = []
    fed = targets_of(subject)
    cache.turn(fed)
    for one in rules:
        severity = severities.get(one.name, one.severity)
        for it in cache.to_ask(one, fed[one.scope]):
            weeks = it.outside if one.stands_back else it.weeks
            if it.weeks and not weeks:
                continue
            try:
                for finding in _yielded(one, it.unit, cache.limits(one, moved, it.situation)):
                    cache.broken_by(one, it.key)
                    _merge(merged, _stamped(finding, one, severity, weeks, subject))
            except Exception as fault:
                faults.append(Fault(one.name, f"{type(fault).__name__}: {fault}"))
                break
    if faults:
        cache.forget()
    return list(merged.values()), faults


def _yielded(rule: Rule, unit: Subject, limits: Limits) -> Iterable[Finding]:
    """What a rule finds; a rule of a team's own module is stopped when it takes too long."""
    if not rule.foreign:
        return rule.check(unit, limits)
    from .time_limit import within

    return within(PATIENCE, lambda: list(rule.check(unit, limits)))


def _stamped(
    finding: Finding, rule: Rule, severity: Severity, weeks: tuple[int, ...], subject: Ledger | Lifter
) -> Finding:
    """The finding with what is the rule's own; it is never graver than ``severity``."""
    finding.rule = rule.name
    if SEVERITIES.index(finding.severity) > SEVERITIES.index(severity):
        finding.severity = severity
    finding.why = finding.why or rule.why
    finding.sources = rule.sources
    finding.confidence = rule.confidence
    if not finding.weeks and rule.scope != "programme":
        finding.weeks = weeks
    if isinstance(subject, Ledger) and len(subject.weeks) == 1:
        finding.weeks = ()
    return finding


def _merge(merged: dict[tuple[object, ...], Finding], finding: Finding) -> None:
    """Draws findings on one subject, else at one place, together: all their weeks, the words of the worst.

    A muscle that lacks work in each of three blocks is one thing to say, not three.
    """
    key = (finding.rule, finding.subject or finding.place.key)
    known = merged.get(key)
    if known is None:
        merged[key] = finding
        return
    worse = max(known, finding, key=lambda one: (SEVERITIES.index(one.severity), one.excess))
    alike = (known, finding) if known.counted == finding.counted else (worse,)
    holds = {week for one in alike for week in one.worst or one.weeks}
    weeks = {*known.weeks, *finding.weeks}
    worse.worst = () if holds == weeks else tuple(sorted(holds))
    worse.weeks = tuple(sorted(weeks))
    merged[key] = worse
