"""What rules say of programmes on either side of their limits, word for word: `told_at_edges.yaml` beside this file."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
import yaml

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]

ROWS = [
    (rule, row)
    for rule, rows in yaml.safe_load(
        Path(__file__).with_name("told_at_edges.yaml").read_text(encoding="utf-8")
    ).items()
    for row in rows
]


def told(finding: Finding) -> str:
    """``note at 56 kg (3): what was counted, what is wanted, what to change``."""
    weeks = f" ({', '.join(map(str, finding.weeks))})" if finding.weeks else ""
    said = (finding.counted, finding.wanted and f"{finding.wanted}.", finding.change)
    return f"{finding.severity} at {finding.place.excerpt}{weeks}: {' '.join(filter(None, said))}"


@pytest.mark.parametrize(("rule", "row"), ROWS)
def test_what_is_told(findings: Findings, week: Text, rule: str, row: dict[str, object]) -> None:
    text = row.get("text") or week(row.get("days") or {"Gym": row["gym"]}, row.get("head", ""))
    assert [told(one) for one in findings(text, rule)] == row.get("told", [])
