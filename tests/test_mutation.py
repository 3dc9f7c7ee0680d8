"""The gate that changes rules one place at a time: which rules differ from before, and when it shuts."""

from __future__ import annotations

from pathlib import Path
from textwrap import dedent
from typing import Any

import pytest

from spotline.lint.engine.registry import all_rules
from spotline.tests import mutants, mutation
from spotline.tests.mutants import (
    Module,
    changed_since,
    differing,
    made_of,
    modules_at,
    modules_now,
    rules_using,
    taken_from,
)
from spotline.tests.mutation import Score, judged, record, recorded, take_codes, words_in

SHARED = """\
    MOST = 3

    def named(line):
        return line.name[:MOST]

    def unused(line):
        return line
"""

REST = """\
    from .shared import named

    @rule("rest-short")
    def rest_short(week, limits):
        yield named(_first(week) + 1)

    @rule("rest-long")
    def rest_long(week, limits):
        yield _first(week)

    def _first(week):
        return week[0]
"""

TEMPO = """\
    from .shared import unused

    @rule("tempo-long")
    def tempo_long(week, limits):
        if week:  # a comment
            yield week
"""


def modules(**texts: str) -> list[Module]:
    whole = {"shared": SHARED, "rest": REST, "tempo": TEMPO} | texts
    return [Module(name, dedent(text)) for name, text in whole.items()]


@pytest.mark.parametrize(
    ("texts", "owners"),
    [
        pytest.param({"tempo": TEMPO.replace("if week", "if not week")}, {"tempo-long"}, id="a rule"),
        pytest.param({"tempo": TEMPO.replace("  # a comment", "\n")}, set(), id="a comment and a blank line"),
        pytest.param(
            {"rest": REST.replace("week[0]", "week[1]")},
            {"rest-long", "rest-short", "shared in rest"},
            id="a helper of two rules",
        ),
        pytest.param(
            {"shared": SHARED.replace("3", "4")},
            {"rest-short", "shared in shared"},
            id="what a helper in another module uses",
        ),
        pytest.param(
            {"shared": SHARED.replace("return line\n", "return None\n")},
            {"shared in shared"},
            id="a helper that no rule uses",
        ),
        pytest.param(
            {"rest": REST + TEMPO.partition("\n")[2], "tempo": ""}, set(), id="a rule that has moved"
        ),
        pytest.param({"tempo": TEMPO + TEMPO.replace("long", "short")}, {"tempo-short"}, id="a new rule"),
    ],
)
def test_a_rule_has_changed_with_all_that_it_uses(texts: dict[str, str], owners: set[str]) -> None:
    assert differing(made_of(modules(**texts)), made_of(modules())) == owners


def test_the_rules_of_a_revision_are_read_from_git(monkeypatch: pytest.MonkeyPatch) -> None:
    assert {module.name for module in modules_at("HEAD")} >= {"shared", "rest", "weekly_sets"}
    monkeypatch.setattr(mutants, "modules_at", lambda revision: modules_now())
    assert changed_since("then") == set()
    monkeypatch.setattr(mutants, "modules_at", lambda revision: [])
    assert changed_since("nothing") >= {rule.name for rule in all_rules()}


def test_what_a_change_belongs_to() -> None:
    parts = modules()
    owned = {
        (one.module.name, one.line): one.owner for part in parts for one in part.mutants(taken_from(parts))
    }
    assert owned == {
        ("shared", 1): "shared in shared",
        ("rest", 5): "rest-short",
        ("rest", 12): "shared in rest",
        ("tempo", 5): "tempo-long",
    }


def test_which_rules_come_by_a_definition() -> None:
    users = rules_using(modules())
    assert users["shared", "named"] == users["shared", "MOST"] == {"rest-short"}
    assert users["rest", "_first"] == {"rest-short", "rest-long"}
    assert users["tempo", "tempo_long"] == {"tempo-long"}
    assert users["shared", "unused"] == set()


NAMED = "rest-too-short-heavy"
BY_NAME = {"tempo-too-long": [1], "why": ("units-mixed",)}


def a_helper() -> object:
    return NAMED, [BY_NAME for _ in "weekly-sets-over-limit"]


def a_test() -> None:
    assert a_helper()


def test_a_test_names_what_stands_in_the_code_that_it_runs() -> None:
    said = set(words_in(a_test, []))
    assert said >= {NAMED, "tempo-too-long", "units-mixed", "weekly-sets-over-limit"}
    assert set(words_in([("a", {"b": "c"}), 3], [])) == {"a", "b", "c"}


LIVE = """\
class Day:
    @property
    def hours(self):
        return {0}

    def sets(self):
        return {0}

def counted(day):
    return sum({0} for _ in day)
"""


def test_live_functions_take_the_code_of_a_changed_module() -> None:
    live: dict[str, Any] = {}
    exec(LIVE.format(1), live)
    day, counted = live["Day"](), live["counted"]
    take_codes(live, compile(LIVE.format(2), "day.py", "exec"))
    assert (day.hours, day.sets(), counted([day, day])) == (2, 2, 4)


@pytest.mark.parametrize(
    ("before", "now", "code"),
    [
        (None, 95, 0),
        (None, 94, 1),
        (100, 100, 0),
        (100, 99, 1),
        (90, 90, 0),
        (90, 89, 1),
    ],
)
def test_the_gate_shuts_below_95_percent_and_below_what_is_on_record(
    before: int | None, now: int, code: int, capsys: pytest.CaptureFixture[str]
) -> None:
    kept = {} if before is None else {"rest-short": Score(100, before)}
    assert judged({"rest-short": Score(100, now), "rest-long": Score(20, 19)}, kept) == code
    said = capsys.readouterr().out
    assert ("rest-short" in said) is bool(code)
    assert "rest-long" not in said


def test_scores_are_kept_in_order(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(mutation, "RECORD", tmp_path / "mutation.json")
    assert recorded() == {}
    record({"b": Score(20, 19), "a": Score(3, 3)})
    assert {owner: (score.killed, score.mutants) for owner, score in recorded().items()} == {
        "a": (3, 3),
        "b": (19, 20),
    }
    assert list(recorded()) == ["a", "b"]


def test_what_is_on_record_is_there() -> None:
    book = mutation.Book()
    assert set(recorded()) <= {one.owner for one in book.mutants()}
