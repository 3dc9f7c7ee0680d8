"""Candidates from the rules: their names, the names of their limits, and the values of these."""

from __future__ import annotations

from ...body import catalogue
from ...counting.credits import INDIRECT_WEIGHT
from ...findings.finding import SEVERITIES
from ...reporters.rules_text import ground_of
from ...team.read_settings import COUNT_OPTION, shown
from ...wording.words import plain
from ..explain.markdown import md
from .candidates import Candidate
from .catalogue_candidates import areas

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...engine.limits import Option
    from ...engine.registry import Rule
    from .candidates import CandidateScope


def waivable_rules(scope: CandidateScope) -> Iterator[Candidate]:
    """Rules whose findings can be waived, those with findings nearest to the caret first."""
    rules = [*scope.workspace.rules, *scope.team.rules]
    distances: dict[str, int] = {}
    for finding in scope.snapshot.review.findings:
        distance = abs(finding.place.start - scope.context.start)
        distances[finding.rule] = min(distance, distances.get(finding.rule, distance))
    found = [rule for rule in rules if rule.name in distances]
    for rule in sorted(found, key=lambda rule: distances[rule.name]):
        yield _rule(rule, "found in this file")
    yield from (_rule(rule, rule.severity) for rule in rules if rule.name not in distances)


def rules(scope: CandidateScope) -> Iterator[Candidate]:
    """Rules for which settings may set limits."""
    yield from (_rule(rule, rule.severity) for rule in scope.workspace.rules)


def limit_names(scope: CandidateScope) -> Iterator[Candidate]:
    """Names of the limits of the rule that the path names, each with its default."""
    rule = scope.rule(str(scope.key_path[-1]))
    if rule is None:
        return
    for option in rule.options:
        yield Candidate(option.name, "key", option.unit, _ground(option), value=shown(option.default))
    yield Candidate("severity", "key", rule.severity, "How serious its findings are.")


def limit_values(scope: CandidateScope) -> Iterator[Candidate]:
    """Values of a limit: its defaults, or the words that it takes."""
    rule_name, name = scope.key_path[-2:]
    if name == "severity":
        yield from (Candidate(severity, "value") for severity in reversed(SEVERITIES))
        return
    option = _option(scope, str(rule_name), str(name))
    if option is None:
        return
    if option.name == COUNT_OPTION:
        for kind in INDIRECT_WEIGHT:
            yield Candidate(f"[{kind}]", "value", option.unit, written=f"[{kind}]")
        return
    values = [option.default, *(value for _, value in option.by)]
    for written in dict.fromkeys(map(shown, values)):
        yield Candidate(written, "value", option.unit, _ground(option), written=written)


def names_within_limit(scope: CandidateScope) -> Iterator[Candidate]:
    """Names within a limit that gives a number to each name."""
    rule_name, name = scope.key_path[-2:]
    option = _option(scope, str(rule_name), str(name))
    if option is None or not isinstance(option.default, dict):
        return
    for inner, number in option.default.items():
        yield Candidate(inner, "key", option.unit, value=plain(number))
    if all(catalogue.area(inner) for inner in option.default):
        yield from (area for area in areas(scope) if area.name not in option.default)


def _option(scope: CandidateScope, rule_name: str, name: str) -> Option | None:
    rule = scope.rule(rule_name)
    return next((one for one in rule.options if one.name == name), None) if rule else None


def _rule(rule: Rule, detail: str) -> Candidate:
    return Candidate(rule.name, "rule", detail, md(rule.why))


def _ground(option: Option) -> str:
    return f"Default: {shown(option.default)} ({ground_of(option)})."
