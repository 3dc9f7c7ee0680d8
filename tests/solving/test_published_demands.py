"""Published prescriptions as demands: they can be met, and the repaired week holds them.

ACSM 2026 (Currier et al., position stand): about 10 sets a muscle group a week for size; each major group on 2
days a week, as WHO 2020 asks, too. Androulakis-Korakakis 2020: one set a lift, 1 to 3 times a week, is enough
for strength in trained men.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from spotline.lint.project.discovery import discovered
from spotline.lint.project.review import reviewed
from spotline.lint.project.workspace import Workspace
from spotline.lint.solving.solve import Ask, solve
from spotline.tests.conftest import TODAY
from spotline.tests.solving.faulty import SOUND, line_of

NAME = "plan.programme.yaml"

DEMANDS = {
    "acsm-2026: 10 sets for the chest": ("{weekly sets of: chest, at least: 10}", SOUND, "chest", 10, 0),
    "acsm-2026: hamstrings on 2 days": (
        "{days of: hamstrings, at least: 2}",
        SOUND.replace(line_of("lying leg curl"), ""),
        "hamstrings",
        0,
        2,
    ),
    "androulakis-2020: a set of the deadlift": (
        "{weekly sets of: hip hinge, at least: 1}",
        SOUND.replace(line_of("Romanian deadlift"), ""),
        "hamstrings",
        1,
        0,
    ),
}
"""What is asked, of which programme; the area, its sets a week and its days at least."""


@pytest.fixture(autouse=True)
def repository(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / ".git").mkdir()
    monkeypatch.chdir(tmp_path)


@pytest.mark.parametrize("asked", DEMANDS)
def test_what_is_published_can_be_met_and_holds_afterwards(asked: str) -> None:
    demand, text, area, sets, days = DEMANDS[asked]
    Path(NAME).write_text(text.replace("weeks: 4\n", f"weeks: 4\nmust hold: [{demand}]\n"), encoding="utf-8")
    solution = solve(NAME, TODAY, Ask(0, "demand-not-held"))
    assert solution.cards, solution.stays[0].why
    Path(NAME).write_text(solution.cards[0].after, encoding="utf-8")
    workspace = Workspace(TODAY)
    (after,) = reviewed(workspace, discovered(workspace, [NAME]))
    assert not [one for one in after.findings if one.rule == "demand-not-held"]
    for week in after.ledgers[0].weeks:
        assert week.sets(area).low >= sets
        assert len(week.sets(area).days()) >= days
