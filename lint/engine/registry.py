"""Rules: how they are declared and found.

A rule is one function. Its first parameter's type says what it looks at: a `Lifter` (an athlete with all
their programmes), a `Ledger` (a whole programme), a `Week`, a `Visit` (a session) or a `SetGroup` (a group of
sets of one line). Its last parameter takes its limits. The engine calls it once for each different thing and
notes the weeks.

A week, a session or a group of sets holds no way to the rest of the programme. A rule that needs more asks
for it by further parameters between the two: the `Ledger` it stands in, or the `Text` of the file. Such a
rule is asked again at each review; any other only about what has changed.
"""

from __future__ import annotations

from functools import cache
from importlib import import_module

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ..counting.ledger import Ledger, Lifter
    from ..counting.set_group import SetGroup
    from ..counting.tally import Visit
    from ..counting.week import Week
    from ..findings.finding import Confidence, DraftFinding, Severity
    from .limits import Option

    Subject = Lifter | Ledger | Week | Visit | SetGroup

    Check = Callable[..., Iterator[DraftFinding]]

BEYOND = ("Ledger", "Text")
"""Types of further parameters, by which a rule sees more than the thing that it looks at."""

STATES = ("rehabilitation", "peak", "careful return")
"""States of a week in which a rule may have nothing to say: a stated stage of rehabilitation, the weeks that
lead up to an event or test, and a return to training of somebody with something to spare."""

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
        "asks",
        "beyond",
        "check",
        "confidence",
        "family",
        "follows",
        "foreign",
        "name",
        "needs",
        "off",
        "options",
        "scope",
        "severity",
        "sources",
        "stands_back",
        "takes_out",
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
        stands_back: tuple[str, ...],
        check: Check,
        off: bool = False,
        follows: tuple[str, ...] = (),
        takes_out: bool = False,
        asks: bool = False,
        needs: tuple[str, ...] = (),
    ) -> None:
        self.name = name
        self.needs = frozenset(needs)
        self.family = family
        self.severity: Severity = severity
        self.confidence: Confidence = confidence
        self.why = why
        self.sources = sources
        self.options = options
        self.stands_back = stands_back
        if not set(stands_back) <= set(STATES):
            raise ValueError(f"{name} may stand back in {' and '.join(STATES)} only")
        if takes_out and any(option.by for option in options):
            raise ValueError(f"{name} takes out what it finds, so its limits hold in every situation")
        self.off = off
        self.follows = follows
        self.takes_out = takes_out
        self.asks = asks
        self.foreign = False
        self.check = check
        looks_at, *further = _parameter_types(check)
        self.scope = SCOPES[looks_at]
        self.beyond: tuple[str, ...] = tuple(further[:-1])
        if not set(self.beyond) <= set(BEYOND):
            raise TypeError(f"{name} may ask for {' and '.join(BEYOND)} beyond what it looks at")

    @property
    def page(self) -> str:
        """What the rule counts, what it flags and what it passes: the text beside its code."""
        return self.check.__doc__ or ""


def _parameter_types(check: Check) -> list[str]:
    """The names of the types of its parameters, in order; what it returns left out."""
    types = {name: kind for name, kind in check.__annotations__.items() if name != "return"}
    named = [kind if isinstance(kind, str) else kind.__name__ for kind in types.values()]
    code = check.__code__
    # A function may leave the type of its limits out, never that of anything else.
    return named + ["Limits"] * (code.co_argcount - len(named))


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
    stands_back: tuple[str, ...] | bool = (),
    off: bool = False,
    follows: tuple[str, ...] = (),
    takes_out: bool = False,
    asks: bool = False,
    needs: tuple[str, ...] = (),
) -> Callable[[Check], Check]:
    """Declares a rule.

    ``why`` is the reason in a sentence or two, ``sources`` the ids it rests on, ``confidence`` how sure that
    ground is. In the ``STATES`` that ``stands_back`` lists the rule leaves weeks alone (True stands for a
    stage of rehabilitation); with ``off`` it is not run until a team asks for it. ``follows`` names the
    rules whose findings may be the cause of this one's: where two such findings speak of the same lines and
    weeks, the more telling one lists the other. With ``takes_out`` the rule judges groups of sets by values
    that cannot be meant: while it runs, what it finds counts nowhere, and no other rule looks at such a
    group by itself. With ``asks`` it asks what was meant, which only the coach knows: it is never solved, as
    what would clear its findings only hides them.
    ``needs`` names keys of lines (``load``, ``rir``): the rule has nothing to say, and is not asked, where
    one of them is written nowhere in what it looks at.
    """

    def declare(check: Check) -> Check:
        if name in _RULES:
            raise ValueError(f"two rules are called {name}")
        quiet = STATES[:1] if stands_back is True else stands_back or ()
        _RULES[name] = Rule(
            name,
            family,
            severity,
            confidence,
            why,
            sources,
            options,
            quiet,
            check,
            off,
            follows,
            takes_out,
            asks,
            needs,
        )
        return check

    return declare


def all_rules() -> list[Rule]:
    """Every rule, by family and name; those of a team's own modules last, of whatever family."""
    order = _our_families()
    return sorted(
        _RULES.values(),
        key=lambda rule: (rule.foreign, order.get(rule.family, len(order)), rule.family, rule.name),
    )


@cache
def _our_families() -> dict[str, int]:
    """The order of our families, once their rules are loaded."""
    rules = import_module("...rules", __package__)
    for module in rules.MODULES:
        import_module(f"...rules.{module}", __package__)
    return {family: number for number, family in enumerate(rules.FAMILIES)}


def has_foreign_rules() -> bool:
    """Whether a team's own Python module has been taken in."""
    return any(rule.foreign for rule in _RULES.values())


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
