"""A rule sees no more than the thing that it looks at, unless its parameters ask for more."""

from __future__ import annotations

import ast
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from spotline.lint.api import Ledger, Limits, SetGroup, Visit, Week, found, rule
from spotline.lint.engine.registry import _RULES, Rule, all_rules
from spotline.lint.engine.run import run
from spotline.lint.findings.finding import Finding
from spotline.lint.model.on_days import Activity
from spotline.lint.model.sessions import Prescription, Session

ROOT = Path(__file__).parent.parent.parent

TEXT = """\
programme: Two blocks
athlete: {name: Orla, level: novice, body mass: 60 kg, best lifts: {back squat: 80 kg}}
goal: hypertrophy
starts: 2026-01-05
blocks:
  - name: One
    weeks: 2
    sessions:
      - session: A
        day: monday
        exercises: [{exercise: back squat, sets: {1: 3, 2: 4}, reps: 5}, {exercise: bench press, sets: 3, reps: 5}]
      - session: B
        day: thursday
        exercises: [{superset: [{exercise: leg curl, sets: 3, reps: 8}, {exercise: barbell curl, sets: 3, reps: 8}]}]
  - name: Two
    weeks: 1
    sessions:
      - session: C
        day: monday
        exercises: [{exercise: deadlift, sets: 3, reps: 5}]
      - {activity: match, day: saturday, minutes: 80}
"""

Programme = Callable[..., Ledger]


def public(thing: object) -> Iterator[object]:
    """What the public names of a thing of ours give without further words: attributes and properties."""
    for name in dir(thing):
        if not name.startswith("_") and not callable(getattr(type(thing), name, None)):
            yield getattr(thing, name)


def reached(start: object) -> list[object]:
    """All that can be reached from a thing by public names, through tuples, lists and tables."""
    seen: dict[int, object] = {}
    waiting = [start]
    while waiting:
        one = waiting.pop()
        if id(one) in seen:
            continue
        seen[id(one)] = one
        if isinstance(one, dict):
            waiting += [*one.keys(), *one.values()]
        elif isinstance(one, (list, tuple, set, frozenset)):
            waiting += one
        elif type(one).__module__.startswith(("spotline.lint.counting", "spotline.lint.model")):
            waiting += public(one)
    return list(seen.values())


def of_kind(things: list[object], *kinds: type) -> set[int]:
    return {id(one) for one in things if isinstance(one, kinds)}


def test_a_session_leads_to_no_other(programme: Programme) -> None:
    for visit in programme(TEXT).visits:
        things = reached(visit)
        assert of_kind(things, Session) == {id(visit.session)}
        assert of_kind(things, Visit) == {id(visit)}
        assert of_kind(things, Prescription) == {id(line) for line in visit.session.prescriptions}
        assert not of_kind(things, Week, Ledger)


def test_a_group_of_sets_leads_to_its_session_alone(programme: Programme) -> None:
    for visit, entry in programme(TEXT).entries():
        things = reached(entry)
        assert of_kind(things, Session) == {id(visit.session)}
        assert of_kind(things, SetGroup) == {id(entry)}
        assert not of_kind(things, Visit, Week, Ledger)


def test_a_week_leads_to_its_own_block_alone(programme: Programme) -> None:
    ledger = programme(TEXT)
    for week in ledger.weeks:
        things = [*reached(week), *week.weeks_of_block(), *week.turn().tally.visits]
        own = ledger.weeks_of(week.block)
        assert of_kind(things, Week) <= {id(one) for one in own}
        assert of_kind(things, Visit) <= {id(visit) for one in own for visit in one.visits}
        assert of_kind(things, Activity) <= {id(one) for one in week.block.activities}
        assert not of_kind(things, Ledger)


def test_the_walk_finds_what_there_is(programme: Programme) -> None:
    ledger = programme(TEXT)
    assert of_kind(reached(ledger), Visit) == {id(visit) for visit in ledger.visits}
    assert len(of_kind(reached(ledger), Session)) == 3


def private_names(code: str) -> list[str]:
    """Attributes that are private and not asked of ``self``."""
    return [
        node.attr
        for node in ast.walk(ast.parse(code))
        if isinstance(node, ast.Attribute)
        and node.attr.startswith("_")
        and not (isinstance(node.value, ast.Name) and node.value.id == "self")
    ]


@pytest.mark.parametrize("path", sorted((ROOT / "rules").glob("*.py")), ids=lambda path: path.stem)
def test_rules_use_no_private_names(path: Path) -> None:
    assert private_names(path.read_text(encoding="utf-8")) == []


def test_a_private_name_is_found() -> None:
    assert private_names("def check(week): week._together(())") == ["_together"]


def whole_texts(code: str) -> set[str]:
    """Functions that read the content of a text beyond the words at a place."""
    functions = [node for node in ast.walk(ast.parse(code)) if isinstance(node, ast.FunctionDef)]
    return {
        one.name
        for one in functions
        for node in ast.walk(one)
        if isinstance(node, ast.Attribute) and node.attr == "content"
    }


def test_rules_that_read_the_whole_text_ask_for_it() -> None:
    found_in = {
        path.stem: names
        for path in (ROOT / "rules").glob("*.py")
        if (names := whole_texts(path.read_text(encoding="utf-8")))
    }
    # Edits of a held jump look at the line in front of their own place, which moves with its session.
    assert found_in == {
        "privacy": {"diagnosis_in_programme", "_private", "_sentence"},
        "two_ways": {"_as_a_note", "_held_jump_edits"},
    }
    readers = {rule.name for rule in all_rules() if "Text" in rule.beyond}
    assert readers == {"diagnosis-in-programme"}
    # The other reader of texts looks at an athlete, and is asked anew at every review.
    assert {rule.scope for rule in all_rules() if rule.name == "diagnosis-in-athlete-file"} == {"athlete"}


@pytest.fixture
def declared() -> Iterator[Callable[[Callable[..., Iterator[Finding]]], Rule]]:
    """Declares a rule for one test."""
    before = dict(_RULES)

    def declare(check: Callable[..., Iterator[Finding]]) -> Rule:
        rule("own", family="dose", severity="note", confidence="fact", why="So.", sources=())(check)
        return _RULES["own"]

    yield declare
    _RULES.clear()
    _RULES.update(before)


def test_a_rule_that_looks_further_than_it_says_fails(programme: Programme, declared: Any) -> None:
    def check(visit: Visit, limits: Limits) -> Iterator[Finding]:
        if visit.ledger.weeks:  # type: ignore[attr-defined]
            yield found(visit.session.place, "Here.")

    found_now, faults = run([declared(check)], programme(TEXT), {})
    assert found_now == []
    assert [fault.words for fault in faults] == ["AttributeError: 'Visit' object has no attribute 'ledger'"]


def test_a_rule_that_says_so_is_given_more(programme: Programme, declared: Any) -> None:
    def check(visit: Visit, ledger: Ledger, limits: Limits) -> Iterator[Finding]:
        yield found(visit.session.place, f"One of {len(ledger.weeks)} weeks.")

    found_now, faults = run([declared(check)], programme(TEXT), {})
    assert faults == []
    assert {one.draft.counted for one in found_now} == {"One of 3 weeks."}


def test_a_rule_may_ask_for_nothing_else(declared: Any) -> None:
    def check(visit: Visit, week: Week, limits: Limits) -> Iterator[Finding]:
        yield found(visit.session.place, "Here.")

    with pytest.raises(TypeError, match="own may ask for Ledger and Text beyond what it looks at"):
        declared(check)
