"""Rules as JSON, to their own schema (``spotline schema rules``)."""

from __future__ import annotations

import json

from ..body import catalogue
from ..engine.rule_page import Page
from .rules_text import ground_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..engine.registry import Rule


def report(rules: list[Rule], named: bool) -> None:
    """Prints them, in full whether they are ``named`` or not."""
    print(rules_json(rules))


def rules_json(rules: list[Rule]) -> str:
    """The rules as one JSON object."""
    return json.dumps({"rules": [_rule(rule) for rule in rules]}, indent=2, ensure_ascii=True)


def _rule(rule: Rule) -> dict[str, object]:
    page = Page(rule)
    return {
        "rule": rule.name,
        "family": rule.family,
        "severity": rule.severity,
        "confidence": rule.confidence,
        "looks at": rule.scope,
        "finds": page.finds,
        "counts": page.counts,
        "why": rule.why,
        "off": rule.off,
        "rests in": list(rule.stands_back),
        "sources": [
            {"id": id, "reference": source.reference, "kind": source.kind, "grade": source.grade}
            for id in rule.sources
            for source in (catalogue.source(id),)
        ],
        "limits": [
            {
                "name": option.name,
                "default": option.default,
                "unit": option.unit,
                "ground": ground_of(option),
                "by": [{"where": wanted, "default": value} for wanted, value in option.by],
            }
            for option in rule.options
        ],
        "flags": page.flags,
        "passes": page.passes,
        "beside": page.beside,
    }
