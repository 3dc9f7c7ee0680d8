"""What is foreseen of steps is what the review finds; it saves reviews and changes no answer for the worse."""

from __future__ import annotations

from itertools import combinations

import pytest

from spotline.lint.engine.registry import all_rules
from spotline.lint.solving.amounts import fewer_sets, more_sets, taken_out
from spotline.lint.solving.candidates import Candidates
from spotline.lint.solving.foresight import Foresight
from spotline.lint.solving.search import Search, finished
from spotline.lint.solving.solve import Ask, solve
from spotline.lint.solving.steps import EditStep, together
from spotline.tests.conftest import TODAY
from spotline.tests.solving.faulty import FAULTS
from spotline.tests.solving.test_solving import SMALL, repository, search_for
from spotline.tests.solving.test_thirty import path_of

assert repository  # the fixture holds here, too

CASES = {
    **{f"small {number}": case for number, case in enumerate(SMALL)},
    **{name: FAULTS[name] for name in ("no knee flexion", "little time", "chest over its limit")},
}


def foresight_on(search: Search) -> Foresight:
    return Foresight(search.plan, [rule for rule in all_rules() if not rule.off], {}, {})


def steps_of(search: Search) -> list[EditStep]:
    plan = search.plan
    every = {
        step.key: step
        for seen in search.before.left(search.aims)
        for step in Candidates(plan, seen, own=True).steps
    }
    for held in plan.sessions:
        for line in held.lines:
            for step in (
                *fewer_sets(plan, line, ""),
                *more_sets(plan, line, ""),
                *taken_out(plan, line, held),
            ):
                every.setdefault(step.key, step)
    return [every[key] for key in sorted(every)]


@pytest.mark.parametrize(
    "case", [case for case in CASES if case != "small 2"]
)  # no step of it breaks anything
def test_what_is_foreseen_is_what_the_review_finds(case: str) -> None:
    text, rule = CASES[case]
    search = search_for(text, rule)
    foresight = foresight_on(search)
    steps = steps_of(search)
    singles = [(step,) for step in steps]
    pairs = list(combinations(steps, 2))
    tried = 0
    for several in [*singles[:: max(len(singles) // 12, 1)], *pairs[:: max(len(pairs) // 12, 1)]]:
        spans = together(several)
        broken = foresight.breaks(several)
        if spans is None or not broken or (several[0].touches & several[-1].touches and len(several) > 1):
            continue
        tried += 1
        brought = search.judge.look(text, spans).brought(search.before)
        found = {(one.rule, part) for one in brought for part in (*one.parts, one.group)}
        assert broken <= found, [step.label for step in several]
    assert tried


@pytest.mark.parametrize("case", CASES)
def test_it_changes_no_answer_for_the_worse(case: str) -> None:
    text, rule = CASES[case]
    blind, seeing = search_for(text, rule), search_for(text, rule)
    seeing.foresight = foresight_on(seeing)
    before, after = finished(blind.run(1)), finished(seeing.run(1))
    assert seeing.judge.reviews <= blind.judge.reviews
    assert bool(after) >= bool(before)
    if before:
        assert after[0].cost == before[0].cost


def test_it_saves_reviews(monkeypatch: pytest.MonkeyPatch) -> None:
    path = path_of("01-too-little")
    seeing = solve(path, TODAY, Ask(0, "hip-hinge-missing"))
    monkeypatch.setattr(Foresight, "breaks", lambda *_: frozenset())
    blind = solve(path, TODAY, Ask(0, "hip-hinge-missing"))
    assert [card.after for card in seeing.cards] == [card.after for card in blind.cards]
    assert 2 * seeing.reviews < blind.reviews


def test_a_rule_that_the_file_names_is_not_foreseen() -> None:
    text, rule = SMALL[3]
    waived = f"# spotline waives pull-or-push-missing: no room\n{text}"
    search = search_for(waived, rule)
    foresight = foresight_on(search)
    assert "pull-or-push-missing" not in {one.rule for one in foresight.demands}


def test_what_is_not_plain_is_left_to_the_review() -> None:
    search = search_for(*FAULTS["legs two days running"])
    foresight = foresight_on(search)
    moves = [step for step in steps_of(search) if step.kind == "move"]
    assert moves
    assert not any(foresight.breaks([step]) for step in moves)
