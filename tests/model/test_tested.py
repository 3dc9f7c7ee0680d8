"""Lines and sessions in which something is tested: what that implies, and what cannot be meant."""

from __future__ import annotations

from datetime import date

import pytest

from spotline.lint.counting.ledger import Ledger
from spotline.lint.findings.finding import Finding
from spotline.lint.model.check import checked
from spotline.lint.model.read_programme import read_programme
from spotline.lint.syntax.builder import parse

TODAY = date(2026, 1, 5)


def text(*lines: str, session: str = "") -> str:
    listed = "".join(f"      - {{{line}}}\n" for line in lines)
    return (
        "programme: Tests\n"
        "athlete: {name: Mara, level: intermediate, best lifts: {back squat: 100 kg}}\n"
        "sessions:\n"
        f"  - session: Tests\n{session}    exercises:\n{listed}"
    )


def read(words: str) -> tuple[Ledger, list[Finding]]:
    reading = parse("t.programme.yaml", words)
    assert reading.root is not None
    programme, findings = read_programme(reading.root, lambda term: pytest.fail(str(term)))
    assert programme is not None
    return Ledger(programme, TODAY), checked(reading, "programme") + findings


def work(line: str, session: str = "") -> tuple[str, str, str, str]:
    """What is tested, attempts, repetitions and load of the only line, in words."""
    ledger, said = read(text(line, session=session))
    assert not said, [one.counted for one in said]
    ((_, group),) = ledger.weeks[0].visits[0].entries()
    reps = group.work.reps
    return (
        group.prescription.test,
        str(group.work.sets),
        "" if reps is None else "amrap" if not reps.sets else str(reps.a_set()),
        group.work.load.words if group.work.load else "",
    )


@pytest.mark.parametrize(
    ("line", "implied"),
    [
        ("exercise: back squat, test: 1RM", ("1RM", "1", "1", "1RM")),
        ("exercise: bench press, test: 5 RM", ("5 RM", "1", "5", "5RM")),
        ("exercise: back squat, test: 3RM squat, sets: 2", ("3RM squat", "2", "3", "3RM")),
        (
            "exercise: back squat, test: 1RM, sets: 3, load: 92/97/102 %",
            ("1RM", "3", "1", "92/97/102 %"),
        ),
        ("exercise: back squat, test: 1RM, rpe: 9", ("1RM", "1", "1", "")),
        ("exercise: push-up, test: most repetitions", ("most repetitions", "1", "amrap", "")),
        ("exercise: chin-up, test: max reps", ("max reps", "1", "amrap", "")),
        ("exercise: side plank, test: longest hold, side: each", ("longest hold", "1", "", "")),
        ("exercise: sled push, test: best time, distance: 20 m", ("best time", "1", "", "")),
    ],
)
def test_what_a_test_implies(line: str, implied: tuple[str, str, str, str]) -> None:
    assert work(line) == implied


def test_a_session_of_tests_tests_with_each_line_that_says_nothing_else() -> None:
    assert work("exercise: back squat, sets: 3", "    test: 1RM\n") == ("1RM", "3", "1", "1RM")
    assert work("exercise: plank, test: longest hold", "    test: 1RM\n") == ("longest hold", "1", "", "")


def test_other_work_in_a_session_of_tests_is_no_test() -> None:
    session = "    test: 1RM\n"
    assert work("exercise: back squat, sets: 3, reps: 8", session) == ("", "3", "8", "")
    assert work("exercise: plank, sets: 2, hold: 30 s", session) == ("", "2", "", "")


def test_attempts_may_be_groups_of_sets() -> None:
    ledger, said = read(
        text("exercise: back squat, test: 1RM, work: [{sets: 1, load: 92 %}, {sets: 2, load: 100 %}]")
    )
    assert not said
    groups = [group for _, group in ledger.weeks[0].visits[0].entries()]
    assert [(str(one.sets), str(one.reps)) for one in groups] == [("1", "1"), ("2", "2")]


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("exercise: back squat, test: 1RM, reps: 5", "5 repetitions are no test of 1RM."),
        ("exercise: back squat, test: 5RM, reps: 8-10", "8-10 repetitions are no test of 5RM."),
        ("exercise: plank, test: 1RM, hold: 60 s", "`1RM` tests repetitions; a hold has none."),
    ],
)
def test_what_is_no_test_is_one_finding(line: str, said: str) -> None:
    _, found = read(text(line))
    assert [one.counted for one in found] == [said]
    assert found[0].rule == "keys-at-odds"


@pytest.mark.parametrize("value", ["true", "3", "[1RM]", '""'])
def test_what_is_tested_is_words(value: str) -> None:
    _, found = read(text(f"exercise: back squat, test: {value}"))
    assert len(found) == 1
    assert "test" in found[0].counted or "text" in found[0].counted + found[0].wanted


def test_attempts_above_the_best_are_what_a_test_is_for(findings) -> None:
    line = "exercise: back squat, sets: 3, reps: 1, load: 92/97/102 %, rest: 4 min"
    assert findings(text(line), "more-reps-than-load-allows")
    assert not findings(text(line.replace("sets", "test: 1RM, sets")), "more-reps-than-load-allows")


def test_a_test_is_no_step_of_training(findings) -> None:
    lines = (
        "exercise: back squat, sets: 3, reps: 2, load: 70 kg, in weeks: 1-2",
        "exercise: back squat, sets: 2, reps: 1, load: 93 kg, in weeks: 3",
    )
    words = text(*lines).replace("sessions:", "weeks: 3\nsessions:")
    assert findings(words, "load-step-large")
    assert not findings(words.replace("sets: 2", "test: 1RM, sets: 2"), "load-step-large")
