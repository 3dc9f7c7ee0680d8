"""Rules of a team's own: declared in its settings, or in a Python module that the command is told of."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from spotline.lint import api
from spotline.lint.engine.time_limit import TookTooLongError, within
from spotline.lint.project.results import FileReview, Review
from spotline.lint.text.places import Text

PLAN = """\
programme: Own
goal: {goal}
focus: [hamstrings, quadriceps, calves]
athlete: {{name: Mara, level: novice}}
weeks: 2
sessions:
  - session: One
    day: monday
    exercises:
      - {{exercise: Romanian deadlift, sets: {hinges}, reps: 8}}
      - {{exercise: lying leg curl, sets: {curls}, reps: 10}}
"""


@pytest.fixture
def judged(reviewed: Callable[..., Review]) -> Callable[..., FileReview]:
    def run(
        rule: str, *, goal: str = "strength", hinges: str = "3", curls: str = "3", plan: str = PLAN
    ) -> FileReview:
        text = plan.format(goal=goal, hinges=hinges, curls=curls)
        return reviewed(
            text, {"spotline.yaml": f"team rules:\n  - {{rule: team-own, {rule}, message: Do it.}}\n"}
        ).files[0]

    return run


def said(one: FileReview) -> list[tuple[str, int]]:
    return [(finding.counted, finding.place.line) for finding in one.findings if finding.rule == "team-own"]


@pytest.mark.parametrize(
    ("rule", "plan", "words", "line"),
    [
        ("weekly sets of: knee flexion, at least: 4", {}, "3 sets a week of knee flexion.", 11),
        ("weekly sets of: knee flexion, at least: 3", {}, "", 0),
        (
            "weekly sets of: knee flexion, at least: 3",
            {"curls": "2-4"},
            "2-4 sets a week of knee flexion.",
            11,
        ),
        (
            "weekly sets of: knee flexion, at most: 3",
            {"curls": "2-4"},
            "2-4 sets a week of knee flexion.",
            11,
        ),
        ("weekly sets of: knee flexion, at most: 4", {"curls": "2-4"}, "", 0),
        ("weekly sets of: hip hinge, at most: 2", {}, "3 sets a week of hip hinge.", 10),
        ("weekly sets of: hamstrings, at least: 7", {}, "6 sets a week of hamstrings.", 10),
        (
            "weekly sets of: hams, in: knee flexion, at least: 4",
            {},
            "3 sets a week of hams in knee flexion.",
            11,
        ),
        ("weekly sets of: gluteals, at least: 4, counting: direct", {}, "3 sets a week of gluteals.", 10),
        ("weekly sets of: lower back, at least: 2", {}, "1.5 sets a week of lower back.", 10),
        ("weekly sets of: lower back, at least: 2, counting: total", {}, "", 0),
        ("weekly sets of: lower back, at least: 1, counting: direct", {}, "0 sets a week of lower back.", 7),
        ("weekly sets of: calves, at least: 1", {}, "0 sets a week of calves.", 7),
    ],
)
def test_what_a_declared_rule_counts(
    judged: Callable[..., FileReview], rule: str, plan: dict[str, str], words: str, line: int
) -> None:
    assert said(judged(rule, **plan)) == ([(words, line)] if words else [])


@pytest.mark.parametrize(
    ("when", "asked"),
    [
        ("{goal: strength}", True),
        ("{goal: power}", False),
        ("{level: novice}", True),
        ("{level: advanced}", False),
        ("{goal: strength, level: advanced}", False),
        ("{phase: build}", False),
    ],
)
def test_when_a_declared_rule_asks(judged: Callable[..., FileReview], when: str, asked: bool) -> None:
    assert bool(said(judged(f"weekly sets of: knee flexion, at least: 9, when: {when}"))) is asked


def test_a_declared_rule_speaks_for_itself(judged: Callable[..., FileReview]) -> None:
    rule = (
        "weekly sets of: knee flexion, at least: 4, severity: note, why: We sprint., source: our log of 2025"
    )
    (finding,) = [one for one in judged(rule).findings if one.rule == "team-own"]
    assert (finding.severity, finding.confidence, finding.weeks) == ("note", "convention", (1, 2))
    assert finding.wanted == "at least 4 a week (your team's rule)"
    assert finding.change == "Do it."
    assert finding.why == "We sprint. Source: our log of 2025."
    assert finding.where == "One"


def test_it_is_silent_where_an_unknown_exercise_may_supply(judged: Callable[..., FileReview]) -> None:
    plan = PLAN.replace("lying leg curl", "lying leg crrl")
    assert said(judged("weekly sets of: knee flexion, at least: 4", plan=plan)) == []
    assert said(judged("weekly sets of: hip hinge, at most: 2", plan=plan)) != []


def test_it_can_be_waived_and_switched_off(reviewed: Callable[..., Review]) -> None:
    settings = (
        "team rules:\n  - {rule: team-own, weekly sets of: knee flexion, at least: 9, message: Do it.}\n"
    )
    text = PLAN.format(goal="strength", hinges="3", curls="3")
    waived = text.replace("reps: 10}", "reps: 10}  # spotline: waive team-own because it rains")
    (one,) = reviewed(waived, {"spotline.yaml": settings}).files
    assert [kept.finding.rule for kept in one.waived] == ["team-own"]
    assert said(one) == []


@pytest.mark.parametrize(
    ("rule", "name", "excerpt"),
    [
        ("weekly sets of: hamstrigns, at least: 3", "area-unknown", "hamstrigns"),
        ("weekly sets of: hamstrings, in: leg curls, at least: 3", "area-unknown", "leg curls"),
        ("weekly sets of: hamstrings", "key-missing", "rule"),
        ("weekly sets of: hamstrings, at least: few", "value-unreadable", "few"),
    ],
)
def test_a_rule_that_cannot_be_is_a_finding_in_the_settings(
    reviewed: Callable[..., Review], rule: str, name: str, excerpt: str
) -> None:
    settings = f"team rules:\n  - {{rule: team-own, {rule}, message: Do it.}}\n"
    result = reviewed(PLAN.format(goal="power", hinges="1", curls="1"), {"spotline.yaml": settings})
    assert result.exit_code == 2
    found = result.files[-1].findings
    assert [(one.rule, one.place.excerpt) for one in found] == [(name, excerpt)]


def test_two_of_one_name_are_refused(reviewed: Callable[..., Review]) -> None:
    one = "  - {rule: team-own, weekly sets of: chest, at least: 1, message: Do it.}\n"
    result = reviewed(
        PLAN.format(goal="power", hinges="1", curls="1"), {"spotline.yaml": f"team rules:\n{one}{one}"}
    )
    assert [finding.rule for finding in result.files[-1].findings] == ["rule-twice"]


MODULE = """\
from spotline.lint.api import Week, found, rule


@rule("own-count", family="dose", severity="warning", confidence="convention", why="So.", sources=())
def counts(week: Week, limits):
    yield found(week.programme.place, f"{week.all_sets()} sets.", change="Fine.")


@rule("own-raise", family="dose", severity="warning", confidence="convention", why="So.", sources=())
def raises(week: Week, limits):
    yield from ()
    raise KeyError("nothing there")


@rule("own-spin", family="dose", severity="warning", confidence="convention", why="So.", sources=())
def spins(week: Week, limits):
    yield from ()
    while True:
        pass
"""


def run(folder: Path, *words: str) -> subprocess.CompletedProcess[str]:
    (folder / "ours.py").write_text(MODULE, encoding="utf-8")
    (folder / "plan.programme.yaml").write_text(
        PLAN.format(goal="power", hinges="1", curls="1"), encoding="utf-8"
    )
    path = os.pathsep.join([str(folder), *filter(None, [os.environ.get("PYTHONPATH", "")])])
    command = [sys.executable, "-m", "spotline", "review", *words, "plan.programme.yaml"]
    return subprocess.run(
        command,
        cwd=folder,
        env={**os.environ, "PYTHONPATH": path},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )


def test_a_module_named_at_the_command_adds_its_rules(tmp_path: Path) -> None:
    done = run(tmp_path, "--rules-from", "ours")
    assert done.returncode == 2, done.stderr
    assert "plan.programme.yaml:1:12: warning: own-count: Weeks 1-2: 2 sets. Fine." in done.stdout
    assert "rule-failed: own-raise failed: KeyError: 'nothing there'" in done.stdout
    assert (
        "rule-failed: own-spin failed: TookTooLongError: it took longer than 2 s and was stopped"
        in done.stdout
    )


def test_what_a_rule_yields_is_what_its_interface_calls_a_finding() -> None:
    assert isinstance(api.found(Text("a", "x").place(0, 1), "x"), api.Finding)


def test_no_module_is_loaded_by_itself(tmp_path: Path) -> None:
    assert "own-count" not in run(tmp_path).stdout


@pytest.mark.parametrize(
    ("words", "reason"),
    [
        (["--rules-from", "nowhere"], "the rules of 'nowhere' cannot be used (ModuleNotFoundError"),
        (["--rules-from="], "--rules-from takes a name"),
    ],
)
def test_a_module_that_is_not_there(tmp_path: Path, words: list[str], reason: str) -> None:
    done = run(tmp_path, *words)
    assert done.returncode == 2
    assert done.stdout == ""
    assert reason in done.stderr


def test_work_that_ends_in_time_gives_what_it_gives() -> None:
    assert within(5, lambda: sum(range(10))) == 45


def test_work_that_does_not_end_is_stopped() -> None:
    def spin() -> None:
        while True:
            pass

    with pytest.raises(TookTooLongError, match="it took longer than"):
        within(0.05, spin)
    assert sys.gettrace() is None or "coverage" in sys.modules
