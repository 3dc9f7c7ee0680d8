"""Rules: how they are declared, found, limited and run.

A rule is one function with one parameter for what it looks at and one for its limits. What it looks at
is read off the parameter's type: a `Lifter` (an athlete with all their programmes), a `Ledger` (a whole
programme), a `Week`, a `Visit` (a session) or an `Entry` (a group of sets of one line). The registry feeds it
each different one once and notes the weeks.
"""

from __future__ import annotations

from importlib import import_module

from .finding import SEVERITIES
from .ledger import Entry, Ledger, Lifter, Visit, Week

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator, Mapping

    from .finding import Confidence, Finding, Severity

    Subject = Lifter | Ledger | Week | Visit | Entry
    Default = float | tuple[str, ...] | dict[str, float]
    Check = Callable[..., Iterator[Finding]]

PATIENCE = 2.0
"""Seconds that a rule of a team's own module may take for one thing that it looks at."""

SCOPES = {
    "Lifter": "athlete",
    "Ledger": "programme",
    "Week": "week",
    "Visit": "session",
    "Entry": "prescription",
}


class Situation:
    """What a limit may depend on: the programme's goal, the athletes' level and the phase of the week.

    Empty where nothing is written; ``level`` is the lowest among several athletes.
    """

    __slots__ = ("goal", "level", "phase")

    def __init__(self, goal: str = "", level: str = "", phase: str = "") -> None:
        self.goal = goal
        self.level = level
        self.phase = phase


class Option:
    """A limit of a rule: name, default, unit and the ground on which the default stands.

    ``by`` holds other defaults for some goals, levels or phases, ``({"goal": "strength"}, 1)``; the last one
    that fits counts.
    """

    __slots__ = ("by", "default", "ground", "name", "unit")

    def __init__(
        self,
        name: str,
        default: Default,
        unit: str,
        ground: str,
        by: tuple[tuple[dict[str, str], Default], ...] = (),
    ) -> None:
        self.name = name
        self.default = default
        self.unit = unit
        self.ground = ground
        self.by = by

    def value(self, situation: Situation) -> Default:
        """The default in a situation."""
        value = self.default
        for wanted, other in self.by:
            if all(getattr(situation, what) == word for what, word in wanted.items()):
                value = other
        return value


class Limits:
    """The limits a rule is run with: its defaults in the situation, moved where the team has set them."""

    __slots__ = ("_values",)

    def __init__(
        self, options: tuple[Option, ...], moved: Mapping[str, Default], situation: Situation | None = None
    ) -> None:
        situation = situation or Situation()
        self._values: dict[str, Default] = {
            option.name: moved[option.name] if option.name in moved else option.value(situation)
            for option in options
        }

    def number(self, name: str) -> float:
        """A limit that is one number."""
        value = self._values[name]
        assert isinstance(value, (int, float))
        return value

    def names(self, name: str) -> tuple[str, ...]:
        """A limit that lists names."""
        value = self._values[name]
        assert isinstance(value, tuple)
        return value

    def name(self, name: str) -> str:
        """A limit that is one name: the first of those it lists."""
        return self.names(name)[0]

    def table(self, name: str) -> dict[str, float]:
        """A limit that gives a number for each of several names."""
        value = self._values[name]
        assert isinstance(value, dict)
        return value


class Rule:
    """A rule as declared; see `rule`."""

    __slots__ = (
        "check",
        "confidence",
        "family",
        "foreign",
        "looks_beyond",
        "name",
        "off",
        "options",
        "scope",
        "severity",
        "sources",
        "stands_back",
        "why",
    )

    def __init__(
        self,
        name: str,
        family: str,
        severity: Severity,
        confidence: Confidence,
        why: str,
        sources: tuple[str, ...],
        options: tuple[Option, ...],
        stands_back: bool,
        check: Check,
        off: bool = False,
        looks_beyond: bool = False,
    ) -> None:
        self.name = name
        self.family = family
        self.severity: Severity = severity
        self.confidence: Confidence = confidence
        self.why = why
        self.sources = sources
        self.options = options
        self.stands_back = stands_back
        self.off = off
        self.looks_beyond = looks_beyond
        self.foreign = False
        self.check = check
        looks_at = next(iter(check.__annotations__.values()))
        self.scope = SCOPES[looks_at if isinstance(looks_at, str) else looks_at.__name__]

    @property
    def page(self) -> str:
        """What the rule counts, what it flags and what it passes: the text beside its code."""
        return self.check.__doc__ or ""


_RULES: dict[str, Rule] = {}


def rule(
    name: str,
    *,
    family: str,
    severity: Severity,
    confidence: Confidence,
    why: str,
    sources: tuple[str, ...],
    options: tuple[Option, ...] = (),
    stands_back: bool = False,
    off: bool = False,
    looks_beyond: bool = False,
) -> Callable[[Check], Check]:
    """Declares a rule.

    ``why`` is the reason in a sentence or two, ``sources`` the ids it rests on, ``confidence`` how sure that
    ground is. With ``stands_back`` the rule leaves weeks under a stated rehabilitation stage alone; with
    ``off`` it is not run until a team asks for it. A rule on an entry or a session may look at that session
    and at what stands outside sessions, one on a week at its block, too, and none at mere words such as
    comments; else it ``looks_beyond``.
    """

    def declare(check: Check) -> Check:
        if name in _RULES:
            raise ValueError(f"two rules are called {name}")
        _RULES[name] = Rule(
            name, family, severity, confidence, why, sources, options, stands_back, check, off, looks_beyond
        )
        return check

    return declare


def all_rules() -> list[Rule]:
    """Every rule, by family and name; those of a team's own modules last."""
    families = import_module("..rules", __package__).FAMILIES
    for family in families:
        import_module(f"..rules.{family}", __package__)
    return sorted(_RULES.values(), key=lambda rule: (rule.foreign, families.index(rule.family), rule.name))


def load_module(name: str) -> None:
    """Takes in the rules of a team's own Python module, which declares them with ``rule`` as ours are.

    ``name`` is an entry point of the group ``spotline.rules``, else a module. Only for what the person at the
    command names: no code runs from a checkout by itself. Raises whatever importing it raises.
    """
    from importlib.metadata import entry_points

    all_rules()
    before = set(_RULES)
    installed = tuple(entry_points(group="spotline.rules", name=name))
    import_module(installed[0].module if installed else name)
    for own in set(_RULES) - before:
        _RULES[own].foreign = True


class Fault:
    """A rule that raised: which, and what it said."""

    __slots__ = ("rule", "words")

    def __init__(self, rule: str, words: str) -> None:
        self.rule = rule
        self.words = words


class _Fed:
    """One thing that rules look at, its weeks, those of them outside rehabilitation, and the situation.

    ``key`` tells where it stands and what it says, with whatever else a rule that does not look beyond may
    see of it but for what stands outside sessions.
    """

    __slots__ = ("key", "outside", "situation", "unit", "weeks")

    def __init__(
        self,
        unit: Subject,
        weeks: tuple[int, ...],
        outside: tuple[int, ...],
        situation: Situation,
        key: tuple[object, ...],
    ) -> None:
        self.unit = unit
        self.weeks = weeks
        self.outside = outside
        self.situation = situation
        self.key = (*key, bool(outside))


class Silence:
    """What rules had nothing to say of when they were last run on a ledger.

    Of what is as it was they have nothing to say again. It holds for one set of rules and limits, and as long
    as all that stands outside sessions is the same.
    """

    __slots__ = ("_fresh", "_known", "_limits", "_spoke")

    def __init__(self) -> None:
        self._known: set[object] = set()
        self._fresh: dict[str, dict[object, _Fed]] = {}
        self._spoke: dict[str, set[object]] = {}
        self._limits: dict[tuple[str, str], Limits] = {}

    def turn(self, fed: Mapping[str, list[_Fed]]) -> None:
        """Begins a run on what is there now."""
        self._fresh = {
            scope: {one.key: one for one in units if one.key not in self._known}
            for scope, units in fed.items()
        }
        self._known = {one.key for units in fed.values() for one in units}

    def to_ask(self, rule: Rule, fed: list[_Fed]) -> Iterable[_Fed]:
        """What a rule has to look at, in order: what is new, and what it spoke of last time."""
        spoke, fresh = self._spoke.pop(rule.name, None), self._fresh[rule.scope]
        if rule.looks_beyond:
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
    silence: Silence | None = None,
) -> tuple[list[Finding], list[Fault]]:
    """Findings of the rules on a programme, or on an athlete with all of theirs; and rules that raised.

    Each finding comes once, with the weeks it holds for. ``moved`` holds, by rule and option, the limits that
    the team has set, ``severities`` those of rules that it has moved; ``silence`` what the last run on the
    same ledger left.
    """
    severities = severities or {}
    silence = Silence() if silence is None else silence
    merged: dict[tuple[object, ...], Finding] = {}
    faults: list[Fault] = []
    fed = _fed(subject)
    silence.turn(fed)
    for one in rules:
        severity = severities.get(one.name, one.severity)
        for it in silence.to_ask(one, fed[one.scope]):
            weeks = it.outside if one.stands_back else it.weeks
            if it.weeks and not weeks:
                continue
            try:
                for finding in _yielded(one, it.unit, silence.limits(one, moved, it.situation)):
                    silence.broken_by(one, it.key)
                    _merge(merged, _stamped(finding, one, severity, weeks, subject))
            except Exception as fault:
                faults.append(Fault(one.name, f"{type(fault).__name__}: {fault}"))
                break
    if faults:
        silence.forget()
    return list(merged.values()), faults


def _yielded(rule: Rule, unit: Subject, limits: Limits) -> Iterable[Finding]:
    """What a rule finds; a rule of a team's own module is stopped when it takes too long."""
    if not rule.foreign:
        return rule.check(unit, limits)
    from .deadline import within

    return within(PATIENCE, lambda: list(rule.check(unit, limits)))


def _fed(subject: Ledger | Lifter) -> dict[str, list[_Fed]]:
    """What rules of each scope look at: each different thing once."""
    fed: dict[str, list[_Fed]] = {scope: [] for scope in SCOPES.values()}
    if isinstance(subject, Lifter):
        fed["athlete"].append(_Fed(subject, (), (), Situation(level=subject.athlete.level), ()))
        return fed
    weeks: dict[str, dict[Subject, tuple[int, ...]]] = {scope: {} for scope in SCOPES.values()}
    keys: dict[Subject, tuple[object, ...]] = {}
    says = {block: tuple(one.meaning for one in block.sessions) for block in subject.programme.blocks}
    weeks["programme"][subject] = tuple(week.number for week in subject.weeks)
    keys[subject] = tuple(says.values())
    for week, numbers in subject.like_weeks():
        weeks["week"][week] = numbers
        keys[week] = (week.number, says[week.block])
        for visit in week.visits:
            weeks["session"][visit] = (*weeks["session"].get(visit, ()), *numbers)
            session = visit.session
            keys.setdefault(visit, (week.number, visit.day, session.number, session.meaning))
    for one, numbers in weeks["session"].items():
        assert isinstance(one, Visit)
        for index, entry in enumerate(one.own):
            weeks["prescription"][entry] = (*weeks["prescription"].get(entry, ()), *numbers)
            keys.setdefault(entry, (*keys[one], index))
    rehabilitation = {week.number for week in subject.weeks if week.rehabilitation}
    situations: dict[str, Situation] = {}
    for scope, units in weeks.items():
        for unit, numbers in units.items():
            numbers = tuple(sorted(set(numbers)))
            outside = numbers and tuple(number for number in numbers if number not in rehabilitation)
            phase = _phase(subject, scope, numbers)
            if phase not in situations:
                situations[phase] = Situation(subject.programme.goal, subject.level, phase)
            fed[scope].append(_Fed(unit, numbers, outside, situations[phase], keys[unit]))
    return fed


def _phase(ledger: Ledger, scope: str, weeks: tuple[int, ...]) -> str:
    return ledger.programme.phase if scope == "programme" else ledger.weeks[weeks[0] - 1].phase


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
    key = (finding.rule, finding.subject or finding.place)
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
