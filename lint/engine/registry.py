"""Rules: how they are declared, found, limited and run.

A rule is one function with one parameter for what it looks at and one for its limits. What it looks at
is read off the parameter's type: a `Lifter` (an athlete with all their programmes), a `Ledger` (a whole
programme), a `Week`, a `Visit` (a session) or an `Entry` (a group of sets of one line). The registry feeds it
each different one once and notes the weeks.
"""

from __future__ import annotations

from importlib import import_module

from ..counting.calendar import Week
from ..counting.ledger import Ledger, Lifter
from ..counting.set_group import SetGroup
from ..counting.tally import Visit

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ..findings.finding import Confidence, DraftFinding, Severity
    from .limits import Option

    Subject = Lifter | Ledger | Week | Visit | SetGroup

    Check = Callable[..., Iterator[DraftFinding]]

SCOPES = {
    "Lifter": "athlete",
    "Ledger": "programme",
    "Week": "week",
    "Visit": "session",
    "SetGroup": "prescription",
}


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
    rules = import_module("...rules", __package__)
    for module in rules.MODULES:
        import_module(f"...rules.{module}", __package__)
    return sorted(
        _RULES.values(), key=lambda rule: (rule.foreign, rules.FAMILIES.index(rule.family), rule.name)
    )


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
