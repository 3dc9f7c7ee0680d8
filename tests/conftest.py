"""Builders that the tests share: a text reviewed or counted by the very code that the command runs."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from itertools import count
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

from spotline.lint.counting.ledger import Ledger
from spotline.lint.findings.finding import Finding
from spotline.lint.project.results import Review
from spotline.lint.project.review import review
from spotline.lint.team.presets import rules_before

settings.register_profile(
    "at random",
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.function_scoped_fixture],
)
settings.register_profile(
    "same each time", settings.get_profile("at random"), derandomize=True, database=None
)
settings.load_profile("same each time")  # a commit passes or fails, whenever it is asked

TODAY = date(2026, 1, 5)
"""A Monday."""


@pytest.fixture(scope="session")
def today() -> date:
    """The day on which programmes are reviewed that do not say when they start: a Monday."""
    return TODAY


@pytest.fixture(scope="session")
def reviewed(tmp_path_factory: pytest.TempPathFactory) -> Callable[..., Review]:
    """Reviews a programme's text in a repository of its own, with further files beside it by name.

    ``every`` reviews those files as well.
    """
    base = tmp_path_factory.mktemp("reviewed")
    numbers = count()

    def run(
        text: str, files: dict[str, str] | None = None, *, on: date = TODAY, every: bool = False
    ) -> Review:
        folder = base / str(next(numbers))
        (folder / ".git").mkdir(parents=True)
        for name, content in {"plan.programme.yaml": text, **(files or {})}.items():
            path = folder / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(content, encoding="utf-8")
        return review([str(folder if every else folder / "plan.programme.yaml")], on)

    return run


@pytest.fixture(scope="session")
def findings(reviewed: Callable[..., Review]) -> Callable[..., list[Finding]]:
    """The findings on a programme's text; with ``rule``, those of one rule, also where another lists them.

    One of the rules that only an earlier preset runs is asked for.
    """

    def run(text: str, rule: str = "", files: dict[str, str] | None = None) -> list[Finding]:
        own = (files or {}).get("spotline.yaml", "")
        if rule in rules_before("2026-11") and rule not in own:
            files = {**(files or {}), "spotline.yaml": _with_rule(own, f"{rule}: run")}
        return said_by(reviewed(text, files), rule)

    return run


def _with_rule(settings: str, said: str) -> str:
    """Settings that say one thing more of a rule."""
    for written, more in (("rules: {", f"rules: {{{said}, "), ("rules:\n", f"rules:\n  {said}\n")):
        if written in settings:
            return settings.replace(written, more, 1)
    return f"{settings}\nrules: {{{said}}}\n"


@pytest.fixture(scope="session")
def implausible(reviewed: Callable[..., Review]) -> Callable[..., list[Finding]]:
    """The same where no number is called implausible: for tests that need more sets than a coach writes."""
    settings, silent = "spotline.yaml", "number-implausible: skip"

    def run(text: str, rule: str = "", files: dict[str, str] | None = None) -> list[Finding]:
        own = _with_rule((files or {}).get(settings, ""), silent)
        return said_by(reviewed(text, {**(files or {}), settings: own}), rule)

    return run


def said_by(review: Review, rule: str) -> list[Finding]:
    """The findings on the one file of a review; with ``rule``, those of one rule, listed ones as well."""
    (one,) = review.files
    assert not one.faults, [fault.words for fault in one.faults]
    if not rule:
        return one.findings
    every = [said for finding in one.findings for said in (finding, *finding.follows)]
    return [finding for finding in every if finding.rule == rule]


@pytest.fixture(scope="session")
def programme(reviewed: Callable[..., Review]) -> Callable[..., Ledger]:
    """The ledger of a programme's text, which must be read without a finding of reading or schema."""

    def run(text: str, files: dict[str, str] | None = None, *, on: date = TODAY) -> Ledger:
        (one,) = reviewed(text, files, on=on).files
        assert one.ledger is not None
        unread = [finding.counted for finding in one.findings if not finding.why]
        assert not unread, unread
        return one.ledger

    return run


@pytest.fixture(scope="session")
def week() -> Callable[..., str]:
    """The text of a programme: lines of exercises by day, ``head`` being further keys at its top.

    A line is what follows ``exercise:`` in braces: ``week({"monday": ["back squat, sets: 3"]})``. A weekday
    may be followed by the session's name, ``monday Heavy``; a name alone is a session without a day.
    """

    def text(days: dict[str, list[str]], head: str = "") -> str:
        parts = ["programme: Test", *([head] if head else []), "sessions:"]
        for at, lines in days.items():
            day, _, name = at.partition(" ")
            if day[:1].isupper():
                day, name = "", at
            parts.append(f"  - session: {name or day}")
            if day:
                parts.append(f"    day: {day}")
            parts.append("    exercises:")
            parts += [f"      - {{exercise: {line}}}" for line in lines]
        return "\n".join(parts) + "\n"

    return text


@pytest.fixture(scope="session")
def root() -> Path:
    """The root of the project."""
    return Path(__file__).parent.parent
