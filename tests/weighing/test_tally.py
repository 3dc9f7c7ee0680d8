"""The tally: sums done by hand beside it, and every number the ledger's own."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.cli.commands import BY as COMMAND_BY
from spotline.lint.engine.registry import all_rules
from spotline.lint.project.review import review
from spotline.lint.reporters.tally_csv import csv_rows
from spotline.lint.reporters.tally_json import tally_json
from spotline.lint.reporters.tally_markdown import markdown
from spotline.lint.reporters.tally_text import text
from spotline.lint.weighing.holdings import COLUMNS
from spotline.lint.weighing.tally import BY, Tallies, tally
from spotline.tests.steps import steps

PLAN = """\
programme: Two by hand
athlete: {name: Juno, level: intermediate, best lifts: {bench press: 60 kg}}
goal: hypertrophy
priority: [biceps]
starts: 2026-01-05
weeks: 4
sessions:
  - session: Push
    day: monday
    exercises:
      - {exercise: bench press, sets: {1-3: 4, 4: 2}, reps: 5, load: 80 %, rir: 2, rest: 2 min, tempo: 2-0-1-0}
      - {exercise: cable pushdown, sets: 2-3, reps: 10, rest: 1 min, tempo: 2-0-1-0}
  - session: Curl
    day: thursday
    exercises:
      - {exercise: barbell curl, sets: 3, reps: 10, rest: 1 min, tempo: 2-0-1-0}
"""

SETTINGS = "weekly limits: {triceps: 4}\n"


@pytest.fixture(scope="module")
def tallied(tmp_path_factory: pytest.TempPathFactory, today: date) -> Callable[..., Tallies]:
    def run(by: str = "", week: int = 0, plan: str = PLAN, settings: str = SETTINGS) -> Tallies:
        folder = tmp_path_factory.mktemp("tallied")
        (folder / ".git").mkdir()
        (folder / "plan.programme.yaml").write_text(plan, encoding="utf-8")
        (folder / "spotline.yaml").write_text(settings, encoding="utf-8")
        return tally([str(folder)], today, by, week)

    return run


def row(result: Tallies, by: str, name: str, week: int = 1) -> dict[str, str]:
    (one,) = result.tallied
    (part,) = (part for part in one.weeks if week in part.numbers)
    (found,) = (row for row in part.rows(by) if row.name == name)
    return {**{key: str(value) for key, value in found.values.items() if value}, "mark": found.mark}


def test_muscles_against_floor_and_limit(tallied: Callable[..., Tallies]) -> None:
    result = tallied()
    # 2-3 sets of pushdowns are direct, 4 of presses help: 4 x 0.5 + 2-3 = 4-5, over the team's 4
    assert row(result, "muscle", "triceps") == {
        "sets": "4-5", "direct": "2-3", "indirect": "4", "under 8": "0", "from 8": "2-3", "limit": "4",
        "days": "Mon", "mark": "over",
    }  # fmt: skip
    # a priority of a programme for size: the floor is 4, three sets of curls fall short
    curls = row(result, "muscle", "biceps")
    assert (curls["sets"], curls["floor"], curls["limit"], curls["mark"]) == ("3", "4", "20", "under")
    chest = row(result, "muscle", "chest")
    assert (chest["sets"], chest["under 8"], chest["from 8"], chest["mark"]) == ("4", "4", "0", "")
    assert row(result, "muscle", "triceps", week=4)["sets"] == "3-4"


def test_sessions_days_and_lifts(tallied: Callable[..., Tallies]) -> None:
    result = tallied()
    # curls: 3 x 10 x 3 s of work, 2 x 60 s of rest: 210 s
    assert row(result, "session", "Curl") == {
        "day": "Thursday", "minutes": "4", "sets": "3", "hard sets": "3", "lifts": "1", "mark": "",
    }  # fmt: skip
    assert row(result, "day", "Monday")["sessions"] == "Push"
    bench = row(result, "lift", "bench press")
    assert (bench["sets"], bench["reps"], bench["% of 1RM"], bench["in reserve"]) == ("4", "5", "80", "2")
    assert next(row.name for row in result.tallied[0].weeks[0].rows("lift")) == "bench press"


def test_actions_that_get_nothing(tallied: Callable[..., Tallies]) -> None:
    (one,) = tallied("action").tallied
    untrained = one.weeks[0].untrained()
    assert "knee flexion" in untrained
    assert "elbow flexion" not in untrained
    assert [row.name for row in one.weeks[0].rows("action")] == [
        action for action in ("shoulder horizontal adduction", "elbow flexion", "elbow extension")
        if action not in untrained
    ]  # fmt: skip


def test_weeks_that_hold_the_same_are_one(tallied: Callable[..., Tallies]) -> None:
    (one,) = tallied().tallied
    assert [part.numbers for part in one.weeks] == [(1, 2, 3), (4,)]
    (one,) = tallied(week=4).tallied
    assert [part.numbers for part in one.weeks] == [(4,)]


def test_text_shows_them_side_by_side(tallied: Callable[..., Tallies]) -> None:
    lines = list(text(tallied("muscle")))
    assert ["muscle", "weeks", "1-3", "week", "4", "floor", "limit"] in [line.split() for line in lines]
    assert any(
        line.startswith("triceps") and "4-5 (2-3) over" in line and "3-4 (2-3)" in line for line in lines
    )
    assert any(line.startswith("biceps") and "3 (3) under" in line for line in lines)
    whole = "\n".join(text(tallied()))
    assert "\x1b" not in whole
    assert "No direct set at the\n" in whole
    assert "  elbow " not in whole
    assert "Nothing at the hip" in whole.replace("\n", " ")


HEAD = "programme: Many\nathletes: [{name: Bo}, {name: Ida}]\nweeks: 2\nsessions:\n"
LIFTS = ("back squat", "bench press", "deadlift", "front squat", "hip thrust", "lat pulldown", "leg press",
         "overhead press", "seated leg curl", "goblet squat")  # fmt: skip


def many(reps: str) -> str:
    """A session of ten lifts on two days, for two athletes."""
    lines = "".join(
        f"      - {{exercise: {lift}, sets: {{1: 2, 2: 3}}, reps: {reps}, rir: {at % 4}}}\n"
        for at, lift in enumerate(LIFTS)
    )
    return f"{HEAD}  - session: A\n    day: [monday, friday]\n    exercises:\n{lines}"


@pytest.mark.parametrize("reps", ["5", "8-12"])
def test_a_lift_that_is_shown_has_its_cell_in_every_week(reps: str, tallied: Callable[..., Tallies]) -> None:
    """Which lifts are shown is decided for all weeks: a blank says that a week has none of it."""
    lines = list(text(tallied(plan=many(reps))))
    shown = lines[lines.index("Lifts, the hardest first: sets x repetitions") + 2 :]
    assert [line for line in shown[:8] if f"4 x {reps}" not in line or f"6 x {reps}" not in line] == []
    assert shown[8] == "and 2 more lifts: `spotline tally --by lift`"
    assert shown[0].startswith("back squat")
    assert not any("more lift" in line for line in text(tallied("lift", plan=many(reps))))


def test_sessions_on_several_days_add_up_and_athletes_share_a_table(tallied: Callable[..., Tallies]) -> None:
    lines = list(text(tallied(plan=many("5"))))
    assert "Bo and Ida, weeks 1-2" in " ".join(lines)
    assert sum(line.startswith("Sessions") for line in lines) == 1
    (session,) = (line for line in lines if line.startswith("A "))
    (whole,) = (line for line in lines if line.startswith("together"))
    assert ("2 x 20 in" in session, "2 x 30 in" in session) == (True, True)
    assert ("40 in" in whole, "60 in" in whole) == (True, True)


def test_a_session_that_differs_by_day_has_a_line_for_each(tallied: Callable[..., Tallies]) -> None:
    sunday = "sessions:\n  - {session: A, day: sunday, exercises: [{exercise: plank, hold: 30 s, sets: 1}]}"
    plan = many("5").replace("sessions:", sunday)
    starts = [line.split("  ")[0] for line in text(tallied("session", plan=plan))]
    assert {"Monday, A", "Friday, A", "Sunday, A"} <= set(starts)


def test_every_example_in_every_form(root: Path, today: date) -> None:
    folder = str(root / "examples" / "programmes")
    validator = Draft202012Validator(schemas.load("tally"))
    for by in ("", *BY):
        result = tally([folder], today, by)
        assert len(result.tallied) >= 10
        assert not result.faults
        assert max(map(len, text(result))) <= 80
        assert all(line.count("|") > 2 for line in markdown(result) if line.startswith("|"))
        validator.validate(json.loads(tally_json(result)))
        width = {len(cells) for cells in csv_rows(result)}
        assert len(width) == 1


def test_every_number_is_the_ledgers_and_every_limit_the_rules(root: Path, today: date) -> None:
    """What is marked is what the rules say of the same weeks, and the other way round."""
    folder = str(root / "examples")
    result = tally([folder], today)
    said: dict[tuple[str, int, str, str], str] = {}
    for one in review([folder], today).files:
        for listed in one.findings:
            for finding in (listed, *listed.follows):
                mark = {"weekly-sets-over-limit": "over", "weekly-sets-under-floor": "under"}.get(
                    finding.rule
                )
                if mark:
                    said |= {(one.name, week, finding.group, mark): mark for week in finding.weeks}
    marked = set()
    for one in result.tallied:
        for part in one.weeks:
            for row in part.rows("muscle"):
                assert str(part.week.sets(row.name)) == str(row.values["sets"])
                if row.mark:
                    marked |= {(one.file, number, row.name, row.mark) for number in part.numbers}
    assert set(said) <= marked
    assert {key[:1] + key[2:] for key in marked} == {key[:1] + key[2:] for key in said}


HOSTILE = ["=1+1", "+cmd", "-2", "@sum", "  =x", "a|b", "<b>", "\u202eabc"]


@pytest.mark.parametrize("name", HOSTILE)
def test_cells_that_no_spreadsheet_runs(name: str, tallied: Callable[..., Tallies]) -> None:
    plan = PLAN.replace("session: Push", f"session: {json.dumps(name)}").replace(
        "programme: Two by hand", f"programme: {json.dumps(name)}"
    )
    result = tallied("session", plan=plan)
    out = io.StringIO()
    csv.writer(out).writerows(csv_rows(result))
    for cells in csv.reader(io.StringIO(out.getvalue())):
        assert not any(cell.lstrip()[:1] in tuple("=+-@") and cell for cell in cells), cells
    assert "\u202e" not in "\n".join([*text(result), *markdown(result), out.getvalue()])


def test_the_command_knows_the_tables() -> None:
    assert tuple(COLUMNS) == BY == COMMAND_BY


def test_a_programme_without_sessions_and_one_that_cannot_be_read(tallied: Callable[..., Tallies]) -> None:
    assert list(text(tallied(plan="programme: Empty\nsessions: []\n")))
    result = tallied(plan="programme: [\n")
    assert not result.tallied
    assert result.faults
    assert "there is no week 9, it runs 4 weeks" in tallied(week=9).faults[0]


def test_a_limit_that_is_off_is_not_shown(tallied: Callable[..., Tallies]) -> None:
    settings = "rules: {weekly-sets-over-limit: skip, weekly-sets-under-floor: skip}\n"
    result = tallied(settings=settings)
    assert "limit" not in row(result, "muscle", "triceps")
    assert "floor" not in row(result, "muscle", "biceps")


def test_it_costs_little_more_than_a_review(root: Path, today: date) -> None:
    path = str(root / "examples" / "programmes" / "bram-winter-strength.programme.yaml")
    all_rules()
    reviewing = steps(lambda: review([path], today))
    assert steps(lambda: list(text(tally([path], today)))) <= 1.2 * reviewing
