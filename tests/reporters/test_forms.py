"""The tables of forms: each names a module that prints, and a new one needs no more than its line."""

from __future__ import annotations

import inspect
import sys
from importlib import import_module
from types import ModuleType

import pytest

from spotline.lint import reporters
from spotline.lint.cli.main import main

TABLES = {"review": reporters.REVIEW, "exercises": reporters.EXERCISES, "rules": reporters.RULES}


@pytest.mark.parametrize("command", TABLES)
def test_every_form_has_a_module_that_prints_what_the_others_print(command: str) -> None:
    modules = [import_module(f"{reporters.__name__}.{name}") for name in TABLES[command].values()]
    (taken,) = {tuple(inspect.signature(module.report).parameters) for module in modules}
    assert taken


@pytest.mark.parametrize("command", TABLES)
def test_the_usage_and_a_refusal_name_every_form(command: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main([command, "--as", "poem"]) == 2
    reason, *usage = capsys.readouterr().err.splitlines()
    assert reason == f"spotline: --as takes one of {', '.join(TABLES[command])}"
    assert any(f"spotline {command} [--as {'|'.join(TABLES[command])}] " in line for line in usage)


def test_a_line_in_the_table_is_all_that_a_new_form_needs(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    poem = ModuleType("poem")
    poem.__dict__["report"] = lambda rules, named: print(len(rules), "rules, so many", named)
    monkeypatch.setitem(sys.modules, f"{reporters.__name__}.poem", poem)
    monkeypatch.setitem(reporters.RULES, "verse", "poem")
    assert main(["rules", "--as", "verse", "units-mixed"]) == 0
    assert capsys.readouterr().out == "1 rules, so many True\n"
