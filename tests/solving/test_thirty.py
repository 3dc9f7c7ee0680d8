"""Thirty faulty programmes of twelve kinds, and what a head coach says of what is proposed for each.

They were written, with what the coach wants, before anything was proposed for them. A proposal that changes is
judged anew in verdicts.yaml.
"""

from __future__ import annotations

import re
from collections import Counter
from functools import cache
from pathlib import Path
from typing import Any

import pytest
import yaml

from spotline.lint.solving.judge import Judge, Seen, marks_of
from spotline.lint.solving.solve import Ask, NothingToSolveError, Solution, solve
from spotline.tests.conftest import TODAY

FOLDER = Path(__file__).parent / "thirty"
VERDICTS: list[dict[str, Any]] = yaml.safe_load((FOLDER / "verdicts.yaml").read_text(encoding="utf-8"))
BY_FOLDER = {one["folder"]: one for one in VERDICTS}
PROPOSED = [one["folder"] for one in VERDICTS if one["proposed"]]

MOST_FOR_ONE = 30
"""Reviews for one finding."""


def path_of(folder: str) -> str:
    return str(FOLDER / folder / f"{BY_FOLDER[folder]['file']}.programme.yaml")


@cache
def solved(folder: str) -> Solution | None:
    """What is proposed; None where nothing is found of what is asked about."""
    try:
        return solve(path_of(folder), TODAY, Ask(0, BY_FOLDER[folder].get("rule", "")))
    except NothingToSolveError:
        return None


@pytest.mark.parametrize("folder", list(BY_FOLDER))
def test_what_is_proposed_was_judged(folder: str) -> None:
    solution = solved(folder)
    cards = solution.cards if solution is not None else []
    assert [step.label for step in (cards[0].steps if cards else ())] == BY_FOLDER[folder]["proposed"]


def test_four_of_five_are_what_the_coach_would_do_first_or_second() -> None:
    verdicts = Counter(one["verdict"] for one in VERDICTS)
    assert sum(verdicts.values()) == len(VERDICTS) == 30
    assert len({one["kind"] for one in VERDICTS}) >= 12
    assert (verdicts["first"] + verdicts["second"]) * 100 >= 80 * len(VERDICTS)
    assert not {"unacceptable", "dangerous"} & verdicts.keys()


@pytest.mark.parametrize("folder", PROPOSED)
def test_each_clears_its_aim_and_brings_nothing_new(folder: str) -> None:
    solution = solved(folder)
    assert solution is not None
    judge = Judge(path_of(folder), TODAY, {})
    before = judge.look(solution.before)
    for card in solution.cards:
        after = judge.look(card.after)
        assert after.judged
        assert after.brought(before) == []
        assert after.left([mark for one in card.clears for mark in marks_of(Seen(one))]) == []


@pytest.mark.parametrize("folder", PROPOSED)
def test_no_load_rises_and_no_fact_changes(folder: str) -> None:
    """Loads in % and kg of the lines that stay; dates, best lifts and restrictions stand in other files."""
    solution = solved(folder)
    assert solution is not None
    for card in solution.cards:
        gone = [line for line in solution.before.splitlines() if line not in card.after.splitlines()]
        come = [line for line in card.after.splitlines() if line not in solution.before.splitlines()]
        loads = [
            [float(one) for one in re.findall(r"([0-9.]+) (?:%|kg)", " ".join(lines))]
            for lines in (gone, come)
        ]
        assert sum(loads[1]) <= sum(loads[0])
        head = solution.before.index("sessions:")
        for key in ("starts", "weeks", "events", "goal", "athlete"):
            written = re.findall(rf"^{key}s?:.*$", solution.before[:head], re.MULTILINE)
            assert all(one in card.after for one in written)


@pytest.mark.parametrize("folder", PROPOSED)
def test_few_reviews_are_made(folder: str) -> None:
    solution = solved(folder)
    assert solution is not None
    assert solution.reviews <= MOST_FOR_ONE
