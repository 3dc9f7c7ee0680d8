"""Runs rules on what they look at, and makes the findings of what they yield."""

from __future__ import annotations

from functools import lru_cache, partial

from ..counting.ledger import Ledger
from ..counting.set_group import SetGroup
from ..findings.finding import SEVERITIES
from .hits import Hit, merged
from .limits import Limits, Situation
from .registry import SCOPES
from .targets import targets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping
    from collections.abc import Set as AbstractSet

    from ..counting.ledger import Lifter
    from ..findings.finding import DraftFinding, Severity
    from ..text.places import Text
    from .limits import Default
    from .registry import Check, Rule, Subject
    from .targets import Target

    Moves = Mapping[str, Mapping[str, Default]]

PATIENCE = 2.0
"""Seconds that a rule of a team's own module may take for one target."""


class Fault:
    """A rule that raised: which, and what it said."""

    __slots__ = ("rule", "words")

    def __init__(self, rule: str, words: str) -> None:
        self.rule = rule
        self.words = words


class Choice:
    """Targets by scope, and those among them that a rule is asked of: chosen once for all rules alike."""

    __slots__ = ("_chosen", "_meant", "_targets")

    def __init__(self, targets: Mapping[str, list[Target]]) -> None:
        self._targets = targets
        self._chosen: dict[object, list[Target]] = {}
        self._meant: dict[bool, tuple[list[tuple[Target, AbstractSet[str]]], frozenset[str]]] = {}

    def of(self, rule: Rule) -> list[Target]:
        """The targets that hold what a rule needs.

        Of groups of sets those that are meant; for a rule that takes out what is not, those that may hold it.
        """
        there = self._targets[rule.scope]
        on_sets = rule.scope == SCOPES["SetGroup"]
        if not there or not (on_sets or rule.needs):
            return there
        asked = (rule.scope, rule.needs, rule.takes_out)
        chosen = self._chosen.get(asked)
        if chosen is None:
            chosen = self._of_sets(rule) if on_sets else [one for one in there if one.holds(rule.needs)]
            self._chosen[asked] = chosen
        return chosen

    def _of_sets(self, rule: Rule) -> list[Target]:
        if rule.takes_out not in self._meant:
            units = [(one, one.unit) for one in self._targets[rule.scope] if isinstance(one.unit, SetGroup)]
            held: list[tuple[Target, AbstractSet[str]]] = [
                (one, group.work.written.keys())
                for one, group in units
                if (group.slips is not False if rule.takes_out else group.meant)
            ]
            self._meant[rule.takes_out] = held, frozenset().union(*[keys for _, keys in held])
        sets, somewhere = self._meant[rule.takes_out]
        needs = rule.needs
        return [one for one, keys in sets if needs <= keys] if needs <= somewhere else []


class RunCache:
    """Which targets the rules found nothing on in the last run on a ledger: these are not run again.

    It holds for one set of rules and limits, and as long as all that stands outside sessions is the same.
    """

    __slots__ = ("_every", "_hits", "_limits", "_new", "_seen")

    def __init__(self) -> None:
        self._seen: list[object] = []
        self._every = Choice({})
        self._new: Choice | None = None
        self._hits: dict[str, list[object]] = {}
        self._limits: dict[tuple[str, str], Limits] = {}

    def start(self, targets: Mapping[str, list[Target]]) -> None:
        """Begins a run on the targets that there are now, by scope."""
        seen = set(self._seen)
        self._every = Choice(targets)
        self._new = None
        if seen:
            self._new = Choice(
                {
                    scope: list({one.key: one for one in several if one.key not in seen}.values())
                    for scope, several in targets.items()
                }
            )
        self._seen = [one.key for several in targets.values() for one in several]

    def to_run(self, rule: Rule) -> list[Target]:
        """The targets to run a rule on, in order: those that are new, and those with a hit last time.

        All of them where the rule looks beyond its target, and where it is of a team's own module: nobody
        knows what that looks at.
        """
        hits, every = self._hits.pop(rule.name, None), self._every.of(rule)
        if rule.beyond or rule.foreign or self._new is None:
            return every
        new = self._new.of(rule)
        if not hits:
            return new
        found = {*hits, *(one.key for one in new)}
        return [one for one in every if one.key in found]

    def add_hit(self, rule: Rule, target: Target) -> None:
        """Notes that a rule has found something on a target."""
        self._hits.setdefault(rule.name, []).append(target.key)

    def limits(self, rule: Rule, moved: Moves, situation: Situation, preset: Moves) -> Limits:
        """The limits of a rule in a situation; the same object each time, so that work is recalled by it."""
        own, dated = moved.get(rule.name, {}), preset.get(rule.name, {})
        if not own and not dated:
            return _usual(rule, situation.goal, situation.level, situation.phase)
        key = (rule.name, situation.phase)
        if key not in self._limits:
            self._limits[key] = Limits(rule.options, own, situation, dated)
        return self._limits[key]

    def clear(self) -> None:
        """Leaves nothing to the next run."""
        self._seen.clear()
        self._hits.clear()
        self._limits.clear()


@lru_cache(maxsize=5000)
def _usual(rule: Rule, goal: str, level: str, phase: str) -> Limits:
    """The limits of a rule of which nobody has moved any; the same for all programmes in a situation."""
    return Limits(rule.options, {}, Situation(goal, level, phase))


def run(
    rules: list[Rule],
    subject: Ledger | Lifter,
    moved: Moves,
    severities: Mapping[str, Severity] | None = None,
    cache: RunCache | None = None,
    preset: Moves | None = None,
) -> tuple[list[Hit], list[Fault]]:
    """What rules find on a programme, or on an athlete with all of theirs; and the rules that raised.

    Each thing found comes once, with the weeks it holds for. ``moved`` holds, by rule and option, the limits
    that the team has set, ``preset`` those of the preset that it names, ``severities`` those of rules that it
    has moved; ``cache`` what the last run on the same ledger left.
    """
    severities, preset = severities or {}, preset or {}
    cache = RunCache() if cache is None else cache
    hits: dict[tuple[object, ...], Hit] = {}
    faults: list[Fault] = []
    there = targets_of(subject)
    cache.start(there)
    for rule in rules:
        targets = cache.to_run(rule) if there[rule.scope] else ()
        if not targets:
            continue
        severity = severities.get(rule.name, rule.severity)
        situation: Situation | None = None
        further: tuple[object, ...] = ()
        check = partial(_in_time, rule.check) if rule.foreign else rule.check
        try:
            for target in targets:
                weeks = target.weeks
                if target.apart and weeks:
                    weeks = target.weeks_but(rule.stands_back)
                    if not weeks:
                        continue
                if target.situation is not situation:
                    situation = target.situation
                    beyond = [_further(kind, subject) for kind in rule.beyond]
                    further = (*beyond, cache.limits(rule, moved, situation, preset))
                for draft in check(target.unit, *further):
                    cache.add_hit(rule, target)
                    hit = _hit(rule, draft, severity, weeks, subject, target.unit)
                    key = (rule.name, draft.subject or draft.place.key)
                    known = hits.get(key)
                    hits[key] = hit if known is None else merged(known, hit)
        except Exception as fault:
            faults.append(Fault(rule.name, f"{type(fault).__name__}: {fault}"))
    if faults:
        cache.clear()
    return _said_once(hits.values()), faults


def _said_once(hits: Iterable[Hit]) -> list[Hit]:
    """The hits, those with the same words on groups of sets of one exercise drawn together.

    They are one thing to say, unless each has an edit of its own that is one right answer.
    """
    once: dict[object, Hit] = {}
    named: dict[object, set[object]] = {}
    for hit in hits:
        draft = hit.draft
        key: object = (hit.rule.name, hit.exercise, draft.counted, draft.wanted, draft.change)
        if not hit.exercise or draft.subject or (draft.edits and isinstance(draft.edits, tuple)):
            key = hit
        if key in once:
            if key not in named:
                named[key] = once[key].places()
            once[key] = merged(once[key], hit, named[key])
        else:
            once[key] = hit
    return list(once.values())


def _in_time(check: Check, *seen: object) -> list[DraftFinding]:
    """What a rule of a team's own module yields; it is stopped when it takes too long."""
    from .time_limit import within

    return within(PATIENCE, lambda: list(check(*seen)))


def _further(kind: str, subject: Ledger | Lifter) -> Ledger | Text:
    """What a rule sees beyond the thing that it looks at: the ledger, or the text of the file."""
    if not isinstance(subject, Ledger):
        raise TypeError("a rule that looks at an athlete is given nothing further")
    return subject if kind == "Ledger" else subject.programme.place.text


def _hit(
    rule: Rule,
    draft: DraftFinding,
    severity: Severity,
    weeks: tuple[int, ...],
    subject: Ledger | Lifter,
    unit: Subject,
) -> Hit:
    """A draft with its weeks, and never more serious than ``severity``."""
    if SEVERITIES.index(draft.severity) < SEVERITIES.index(severity):
        severity = draft.severity
    if draft.weeks or rule.scope == "programme":
        weeks = draft.weeks
    if isinstance(subject, Ledger) and len(subject.weeks) == 1:
        weeks = ()
    athlete = subject.athlete.name if subject.athlete else ""
    exercise = unit.name if isinstance(unit, SetGroup) else ""
    return Hit(rule, draft, severity, athlete, weeks, exercise, edits=(draft.edits,) if draft.edits else ())
