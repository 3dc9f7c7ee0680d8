"""What rules say of programmes on either side of their limits, word for word: the files of `told` beside this one.

A row holds a programme: `gym`, the lines of its one session, or `days`, those of several, with `head`, keys at its
top; or its whole `text`; and `files` beside it. `told` is what the rule says, silent where there is none. Where a row
says so, `listed` are the words on further places, and `edits` what is offered, as `label: words written`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
import yaml

from spotline.lint.findings.finding import Finding

Findings = Callable[..., list[Finding]]
Text = Callable[..., str]


def rows() -> Iterator[tuple[str, dict[str, Any]]]:
    """The rows of all files, each with its rule."""
    for path in sorted(Path(__file__).with_name("told").glob("*.yaml")):
        for rule, several in yaml.safe_load(path.read_text(encoding="utf-8")).items():
            for row in several:
                yield rule, row


def told(finding: Finding) -> str:
    """``note at 56 kg (3): what was counted, what is wanted, what to change``."""
    weeks = f" ({', '.join(map(str, finding.weeks))})" if finding.weeks else ""
    said = (finding.counted, finding.wanted and f"{finding.wanted}.", finding.change)
    return f"{finding.severity} at {finding.place.excerpt}{weeks}: {' '.join(filter(None, said))}"


@pytest.mark.parametrize(("rule", "row"), list(rows()))
def test_what_is_told(findings: Findings, week: Text, rule: str, row: dict[str, Any]) -> None:
    text = row.get("text") or week(row.get("days") or {"Gym": row["gym"]}, row.get("head", ""))
    found = findings(text, rule, row.get("files"))
    assert [told(one) for one in found] == row.get("told", [])
    if "listed" in row:
        assert [other.words for one in found for other in one.related] == row["listed"]
    if "edits" in row:
        edits = [f"{edit.label}: {' '.join(edit.words.split())}" for one in found for edit in one.edits]
        assert edits == row["edits"]
