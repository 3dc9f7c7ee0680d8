"""The gate that changes rules one place at a time: which rules differ from before, and when it shuts."""

from __future__ import annotations

from pathlib import Path
from textwrap import dedent
from typing import Any

import pytest

from spotline.lint.engine.registry import all_rules
from spotline.tests import mutants, mutation, mutation_scores, mutation_traces
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
from spotline.tests.mutation import take_codes, words_in
from spotline.tests.mutation_scores import (
    Score,
    interval,
    judged,
    record,
    recorded,
    sampled,
    spread,
    updated,
    wanted,
)
from spotline.tests.mutation_traces import Trace, Traces

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


class ATestClass:
    RULE = "units-mixed"

    def a_helper(self) -> None:
        """Called as something else in this module is."""

    def a_test(self) -> None:
        self.a_helper()


def test_a_method_is_not_what_the_module_calls_the_same() -> None:
    assert not set(words_in(ATestClass.a_test, [])) & {NAMED, "weekly-sets-over-limit"}


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
    monkeypatch.setattr(mutation_scores, "RECORD", tmp_path / "mutation.json")
    assert recorded() == {}
    record({"b": Score(20, 19), "a": Score(3, 3)})
    assert {owner: (score.killed, score.mutants) for owner, score in recorded().items()} == {
        "a": (3, 3),
        "b": (19, 20),
    }
    assert list(recorded()) == ["a", "b"]


def test_a_sample_holds_each_nth_change_of_each_rule_and_some_at_the_least() -> None:
    many = [mutant for part in modules() for mutant in part.mutants(taken_from(modules()))]
    assert sampled(many, 1) == many
    assert len({one.owner for one in sampled(many, 100)}) == len({one.owner for one in many})
    assert spread([*range(12)], 4) == [0, 3, 6, 9]
    assert spread([*range(7)], 3) == [0, 2, 4]
    assert spread([*range(12)], 4, 2) == [2, 5, 8, 11]
    assert spread([*range(7)], 3, 3) == [3, 5, 0]


def test_the_interval_of_a_proportion() -> None:
    """Wilson's interval at 95 %: 15 of 20 lie between 53.1 and 88.8 % (worked out by hand, where all are many)."""
    share, low, high = interval([Score(20, 15, 10**9)])
    assert (share, round(low, 1), round(high, 1)) == (75, 53.1, 88.8)
    assert interval([Score(20, 15)]) == (75, 75, 75)
    assert interval([Score(10, 10, 100), Score(10, 0, 300)])[0] == 25  # each stands for its whole
    assert interval([Score(20, 20, 40)])[1] > interval([Score(20, 20, 400)])[1] > 80


def test_a_sample_goes_on_record_as_such_and_is_no_bar() -> None:
    sample, whole = Score(10, 5, 100), Score(100, 80)
    assert sample.kept() == {"mutants": 10, "killed": 5, "of": 100}
    assert whole.kept() == {"mutants": 100, "killed": 80}
    assert updated({"a": whole, "b": sample}, {"a": sample, "b": whole, "c": sample}) == {
        "a": whole,
        "b": whole,
        "c": sample,
    }
    assert updated({"a": sample}, {"a": Score(20, 20, 100)})["a"].mutants == 20
    assert wanted("a", {"a": sample}) == 95
    assert wanted("a", {"a": whole}) == 80
    assert wanted("shared in ledger", {}) == 90
    assert wanted("shared in places", {}) == 95


def test_traces_are_kept_until_the_files_are_others(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(mutation_traces, "ROOT", tmp_path)
    monkeypatch.setattr(mutation_traces, "FOLDER", tmp_path / "cache")
    monkeypatch.setattr(mutation_traces, "KEPT", tmp_path / "cache" / "traces")
    for name in ("rules/rest.py", "tests/test_rest.py", "tests/test_load.py"):
        (tmp_path / name).parent.mkdir(exist_ok=True)
        (tmp_path / name).write_text("", encoding="utf-8")
    monkeypatch.setattr(
        mutation_traces, "files", lambda: ["rules/rest.py", "tests/test_rest.py", "tests/test_load.py"]
    )
    a, b, c = tests = ["tests/test_rest.py::a", "tests/test_load.py::b", "tests/test_rest.py::c"]
    traces = Traces()
    assert traces.missing(tests) == tests
    traces.add({a: Trace({("rest", 3), ("rest", 4)}, 0.5), b: Trace({("rest", 4)}, 0.1)})
    traces.add({c: Trace({("rest", 4)}, 0.2)})

    kept = Traces()
    assert kept.missing([*tests, "tests/test_rest.py::d"]) == ["tests/test_rest.py::d"]
    assert kept.seconds() == {a: 0.5, b: 0.1, c: 0.2}
    assert kept.lines(tests) == {("rest", 3): 0b001, ("rest", 4): 0b111}
    assert kept.lines([c, a]) == {("rest", 3): 0b10, ("rest", 4): 0b11}

    (tmp_path / "tests" / "test_rest.py").write_text("another", encoding="utf-8")
    assert Traces().missing(tests) == [a, c]
    (tmp_path / "rules" / "rest.py").write_text("another", encoding="utf-8")
    assert Traces().missing(tests) == tests


def test_changes_that_read_alike_are_told_apart() -> None:
    keys = [mutant.key for mutant in mutation.Book().mutants()]
    assert len(keys) == len({*keys})


def test_what_is_on_record_is_there() -> None:
    book = mutation.Book()
    assert set(recorded()) <= {one.owner for one in book.mutants()}
