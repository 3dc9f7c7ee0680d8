"""The page of a rule in Markdown."""

from __future__ import annotations

import pytest

from spotline.lint.editor.explain.rules import rule_markdown
from spotline.lint.engine.registry import all_rules
from spotline.lint.team.settings import Team


@pytest.mark.parametrize("rule", all_rules(), ids=lambda rule: rule.name)
def test_the_page_of_every_rule(rule: object) -> None:
    name = getattr(rule, "name", "")
    page = rule_markdown(name, Team())
    assert page.startswith(f"**{name}** (")
    assert "**Why:** " in page
    assert "Flags:\n\n```yaml\n" in page
    assert page.count("```") == 4
    assert "](" not in page.replace("\\]", "")  # no link
    assert "://" not in page
    for option in getattr(rule, "options", ()):
        assert f"- {option.name}: **" in page


def test_no_such_rule() -> None:
    assert "Nearest: exercise-sets-high" in rule_markdown("exercise-sets-hig", Team())
    assert "no rule" in rule_markdown("[x](https://doi.org/x)", Team())
