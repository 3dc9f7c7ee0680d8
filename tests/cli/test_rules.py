"""``spotline rules``: the list, the pages, the JSON, and what is said of a name that is none."""

from __future__ import annotations

import json

import pytest
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.cli.main import main
from spotline.lint.engine.limits import Option
from spotline.lint.engine.registry import all_rules
from spotline.lint.engine.rule_page import Page
from spotline.lint.reporters.rules_text import ground_of

RULES = all_rules()


@pytest.fixture
def said(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch):  # type: ignore[no-untyped-def]
    monkeypatch.setenv("COLUMNS", "96")

    def run(*words: str) -> tuple[int, str, str]:
        code = main(["rules", *words])
        out = capsys.readouterr()
        return code, out.out, out.err

    return run


def test_the_list_names_every_rule_under_its_family(said) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = said()
    assert code == 0
    for rule in RULES:
        assert f"\n  {rule.name} ({rule.severity}" in out
        assert f"{rule.family.capitalize()}\n" in out
    assert out.rstrip().endswith(f"{len(RULES)} rules. `spotline rules NAME` shows the page of one.")


@pytest.mark.parametrize("rule", RULES, ids=[rule.name for rule in RULES])
def test_a_page_holds_all_there_is(said, rule) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = said(rule.name)
    assert code == 0
    words = " ".join(out.split())
    page = Page(rule)
    for part in (page.finds, *page.counts, rule.why):
        assert " ".join(part.split()) in words
    for id in rule.sources:
        assert id in words
    for option in rule.options:
        assert f"{option.name}: " in words
        assert ground_of(option) in words
    assert page.flags.splitlines()[0] in out
    for name, text in page.beside.items():
        assert f"# {name}\n" in out
        assert text.splitlines()[0] in out
    assert f"# spotline: waive {rule.name} until 2027-03-01 because" in words
    assert ("off until a team asks for it" in words) is rule.off


@pytest.mark.parametrize(
    ("ground", "words"),
    [
        ("pelland-2026-min", "Pelland and others 2026, Sports Med 56(2):481-505; meta-analysis"),
        ("cp-cap", "common practice, no source"),
        ("common practice", "common practice, no source"),
        ("convention", "convention, no source"),
        ("common practice: compounds feed them all", "common practice: compounds feed them all"),
    ],
)
def test_the_ground_of_a_limit_is_spelled_out(ground: str, words: str) -> None:
    assert ground_of(Option("most", 3, "sets", ground)) == words


def test_several_pages_at_once(said) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = said("units-mixed", "exercise-unknown")
    assert code == 0
    assert out.index("units-mixed (warning") < out.index("exercise-unknown (warning")


def test_json_holds_every_rule_and_fits_its_schema(said) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = said("--as", "json")
    whole = json.loads(out)
    assert code == 0
    assert list(Draft202012Validator(schemas.load("rules")).iter_errors(whole)) == []
    assert [one["rule"] for one in whole["rules"]] == [rule.name for rule in RULES]
    limit = {one["rule"]: one for one in whole["rules"]}["weekly-sets-over-limit"]["limits"][0]
    assert limit == {
        "name": "most",
        "default": 20,
        "unit": "sets a week for a muscle group",
        "ground": "common practice, no source",
        "by": [],
    }


@pytest.mark.parametrize(
    ("words", "reason"),
    [
        (
            ["weekly-set-over-limit"],
            "there is no rule 'weekly-set-over-limit'; did you mean weekly-sets-over-limit?",
        ),
        (["zzz"], "there is no rule 'zzz'"),
        (["--as", "page"], "--as takes one of text, json"),
    ],
)
def test_a_wrong_word_is_refused(said, words: list[str], reason: str) -> None:  # type: ignore[no-untyped-def]
    code, out, err = said(*words)
    assert (code, out) == (2, "")
    assert err.splitlines()[0] == f"spotline: {reason}"
