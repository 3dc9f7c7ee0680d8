"""Rules for people: a list by family, or the full page of one."""

from __future__ import annotations

from ..body import catalogue
from ..engine.rule_page import Page
from ..team.read_settings import shown
from ..wording.words import listed
from .layout import bold, paragraph, row, strong, terminal_width

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..body.catalogue import Source
    from ..engine.limits import Option
    from ..engine.registry import Rule

GRADES = {
    "V": "figures read in the work itself",
    "V2": "figures read in a secondary copy",
    "C": "figures computed",
    "M": "figures from memory",
}
"""How sure the figures of a source are, by its grade."""

HABITS = ("common practice", "convention")
"""Grounds of limits that are a whole ground by themselves, without a source."""

RESTS_IN = {
    "rehabilitation": "weeks under a stated stage of rehabilitation",
    "peak": "peak weeks (taper, test, the two weeks before an event)",
    "careful return": "a return to training of somebody with something to spare",
}
"""The states of a week in which a rule may have nothing to say, in words."""

LOOKS_AT = {
    "athlete": "an athlete with all of their programmes",
    "programme": "a whole programme",
    "week": "each week",
    "session": "each session",
    "prescription": "each line of a session",
}


def report(rules: list[Rule], named: bool) -> None:
    """Prints the pages of rules that are ``named``, else the list of all, as wide as the terminal."""
    width = terminal_width()
    if named:
        print("\n".join(line for rule in rules for line in rule_text(rule, width, bold=bold())))
    else:
        print("\n".join(rules_list(rules, width, bold=bold())))


def rules_list(rules: list[Rule], width: int, *, bold: bool) -> Iterator[str]:
    """All rules, family by family: name, severity, and what each finds."""
    family = ""
    for rule in rules:
        if rule.family != family:
            family = rule.family
            yield strong(family.capitalize(), bold)
        off = ", off until a team asks for it" if rule.off else ""
        yield f"  {rule.name} ({rule.severity}{off})"
        yield from row("", Page(rule).finds, width, 2)
    yield ""
    yield f"{len(rules)} rules. `spotline rules NAME` shows the page of one."


def rule_text(rule: Rule, width: int, *, bold: bool) -> Iterator[str]:
    """The full page of a rule."""
    page = Page(rule)
    yield strong(f"{rule.name} ({rule.severity}, {rule.family})", bold)
    yield from row("finds", page.finds, width)
    for part in page.counts:
        yield from row("", part, width)
    yield from row("looks at", LOOKS_AT[rule.scope], width)
    yield from row("why", rule.why, width)
    yield from row("", f"Ground: {rule.confidence}.", width)
    for id in rule.sources:
        yield from row("", f"· {_cited(catalogue.source(id))}", width)
    for number, option in enumerate(rule.options):
        yield from row("" if number else "limits", _limit(option), width)
    if rule.stands_back:
        yield from row("rests", f"in {resting(rule)}", width)
    if rule.off:
        yield from row("off", f"until a team asks for it: `rules: {{{rule.name}: run}}`", width)
    beside = [("beside", f"# {name}\n{text}") for name, text in page.beside.items()]
    for label, text in (("flags", page.flags), ("passes", page.passes), *beside):
        for number, line in enumerate(text.splitlines()):
            yield f"  {'' if number else label:<9}{line}"
    yield from row("move", _moved(rule), width)
    waiver = f"# spotline: waive {rule.name} until 2027-03-01 because REASON"
    yield from row("waive", f"at the place: {waiver}", width)
    yield ""
    yield from paragraph("A finding is a caution on what is written; it clears nobody to train.", width)


def resting(rule: Rule) -> str:
    """The weeks in which a rule has nothing to say, in words."""
    return listed([RESTS_IN[state] for state in rule.stands_back])


def _cited(source: Source) -> str:
    if source.kind == "common practice":
        return f"{source.reference} ({source.id})"
    return f"{source.reference} ({source.id}; {source.kind}, {GRADES[source.grade]})"


def ground_of(option: Option) -> str:
    """What the default of a limit rests on: for a source its short reference and kind, never its bare id."""
    if option.ground in HABITS:
        return f"{option.ground}, no source"
    if option.ground not in catalogue.source_ids():
        return option.ground
    source = catalogue.source(option.ground)
    return source.short if source.kind == "common practice" else f"{source.short}; {source.kind}"


def _limit(option: Option) -> str:
    by = "; ".join(
        f"{shown(value)} where {', '.join(f'{what} is {word}' for what, word in wanted.items())}"
        for wanted, value in option.by
    )
    default = f"{option.name}: {shown(option.default)} {option.unit} ({ground_of(option)})"
    return f"{default}; {by}" if by else default


def _moved(rule: Rule) -> str:
    """How a settings file moves it."""
    option = f", {rule.options[0].name}: {shown(rule.options[0].default)}" if rule.options else ""
    return f"in spotline.yaml: rules: {{{rule.name}: {{severity: note{option}}}}} (or run, skip)"
