"""The page of a rule as Markdown, with the limits that a team's settings give it."""

from __future__ import annotations

from ...body import catalogue
from ...engine.limits import PRESET, TEAM
from ...engine.registry import all_rules
from ...engine.rule_page import Page
from ...reporters.rules_text import GRADES, LOOKS_AT, ground_of, resting
from ...team.read_settings import shown
from ...wording.words import listed, near_names
from .markdown import bullets, md, paragraphs

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...engine.limits import Option
    from ...engine.registry import Rule
    from ...team.settings import Team


def rule_markdown(name: str, team: Team) -> str:
    """The page of the rule of a name; where there is no such rule, the nearest names."""
    rules = rules_of(team)
    rule = rules.get(name)
    if rule is not None:
        return rule_page(rule, team)
    near = near_names(name, rules, 3)
    offered = f" Nearest: {listed(near)}." if near else ""
    return f"**{md(name)}** is no rule of spotline or the team; checks of reading have no page.{offered}"


def rules_of(team: Team) -> dict[str, Rule]:
    """All rules by name, the team's own included."""
    return {rule.name: rule for rule in (*all_rules(), *team.rules)}


def rule_page(rule: Rule, team: Team) -> str:
    """The whole page of a rule."""
    page = Page(rule)
    return paragraphs(
        f"**{md(rule.name)}** ({_severity(rule, team)})",
        page.finds,
        *page.counts,
        f"Looks at {LOOKS_AT[rule.scope]}.",
        f"**Why:** {md(rule.why)}",
        f"Ground: {rule.confidence}.",
        bullets(_citation(source) for source in rule.sources),
        bullets(limit(option, rule, team) for option in rule.options),
        f"Stands back in {resting(rule)}." if rule.stands_back else "",
        _example("Flags", page.flags),
        _example("Passes", page.passes),
        "_A finding is a caution on what is written; it clears nobody to train._",
    )


def rule_in_short(rule: Rule, team: Team) -> str:
    """The page without its examples."""
    page = Page(rule)
    return paragraphs(
        f"**{md(rule.name)}** ({_severity(rule, team)})",
        page.finds,
        *page.counts,
        f"**Why:** {md(rule.why)}",
        bullets([*map(_citation, rule.sources), *(limit(option, rule, team) for option in rule.options)]),
    )


def _severity(rule: Rule, team: Team) -> str:
    severity = team.choices.severities.get(rule.name, rule.severity)
    chosen = f", your team's choice; {rule.severity} otherwise" if severity != rule.severity else ""
    return f"{severity}{chosen}, {rule.family}{'' if team.runs(rule) else ', not run'}"


def _citation(source_id: str) -> str:
    source = catalogue.source(source_id)
    if source.kind == "common practice":
        return f"{md(source.reference)} ({source.id})"
    return f"{md(source.short)} ({source.id}; {source.kind}, {GRADES[source.grade]})"


def limit(option: Option, rule: Rule, team: Team) -> str:
    """A limit, its value under the team's settings, and what the value rests on."""
    default = md(shown(option.default))
    for owner, set_anew in ((TEAM, team.choices.moved), (PRESET, team.choices.preset)):
        own = set_anew.get(rule.name, {})
        if option.name in own:
            value = md(shown(own[option.name]))
            return f"{option.name}: **{value}** {option.unit} ({owner}; {default} otherwise)"
    otherwise = "".join(_special_values(option))
    return f"{option.name}: **{default}** {option.unit} ({md(ground_of(option))}){otherwise}"


def _special_values(option: Option) -> Iterator[str]:
    """``; 4 where level is novice``."""
    for situation, value in option.by:
        conditions = ", ".join(f"{what} is {word}" for what, word in situation.items())
        yield f"; {shown(value)} where {conditions}"


def _example(label: str, text: str) -> str:
    return f"{label}:\n\n```yaml\n{text}```" if text.strip() else ""
