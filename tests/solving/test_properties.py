"""What holds of every proposal, whatever the file: no answer hangs on its order, nor on the machine."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

from spotline.lint.body.catalogue import exercises
from spotline.lint.body.restrictions import read
from spotline.lint.reporters.proposals import cards
from spotline.lint.reporters.proposals_json import proposals_json
from spotline.lint.solving import search as search_module
from spotline.lint.solving.days import other_days
from spotline.lint.solving.exercises import added
from spotline.lint.solving.judge import with_spans
from spotline.lint.solving.search import finished
from spotline.lint.solving.solve import Ask, Solution, solve
from spotline.lint.solving.steps import KINDS, together
from spotline.lint.syntax.builder import parse
from spotline.lint.syntax.tree import Mapping
from spotline.tests.conftest import TODAY
from spotline.tests.solving.faulty import FAULTS, NO_CURLS, SOUND, faulty, line_of
from spotline.tests.solving.test_solving import SMALL, labels, repository, search_for, solved, written
from spotline.tests.solving.test_thirty import PROPOSED
from spotline.tests.solving.test_thirty import solved as one_of_thirty
from spotline.tests.test_fresh_coaches import FOLDER as FRESH

assert repository  # the fixture holds here, too

ENOUGH = 2_000
"""Reviews that no search of a small file needs: it comes to its end."""


def least_cost(text: str, rule: str) -> tuple[int, ...] | None:
    """What the cheapest proposal costs, the search run to its end; None where there is none."""
    search = search_for(text, rule)
    found = finished(search.run(1, ENOUGH))
    assert search.is_cheapest
    assert found or search.ended
    return found[0].cost if found else None


def no_dearer(more: tuple[int, ...] | None, less: tuple[int, ...] | None) -> bool:
    return less is None or (more is not None and more <= less)


@pytest.mark.parametrize("minutes", [(45, 60), (60, 90), (24, 30)])
@pytest.mark.parametrize("number", range(len(SMALL)))
def test_more_minutes_never_cost_more(number: int, minutes: tuple[int, int]) -> None:
    text, rule = SMALL[number]
    fewer, more = (least_cost(text.replace("minutes: 60", f"minutes: {one}"), rule) for one in minutes)
    assert no_dearer(more, fewer)


@pytest.mark.parametrize("pieces", ["leg curl machine", "cable machine", "leg press", "dumbbells", "bench"])
@pytest.mark.parametrize("fault", ["no knee flexion", "calves only with bent knees", "much pressing"])
def test_more_equipment_never_costs_more(fault: str, pieces: str) -> None:
    text, rule = FAULTS[fault]
    head, sessions = text.split("sessions:")
    assert f"{pieces}, " in head
    fewer = f"{head.replace(f'{pieces}, ', '', 1)}sessions:{sessions}"
    assert no_dearer(least_cost(text, rule), least_cost(fewer, rule))


def turned(line: str) -> str:
    """A line in braces with its keys the other way round."""
    indent, keys = re.fullmatch(r"( *- )\{(.*)\}", line).groups()  # type: ignore[union-attr]
    return f"{indent}{{{', '.join(reversed(keys.split(', ')))}}}"


@pytest.mark.parametrize("fault", FAULTS)
def test_the_order_of_the_keys_of_lines_changes_no_answer(fault: str) -> None:
    text, rule = FAULTS[fault]
    rows = [
        turned(row) if row.startswith("      - {exercise") and "{1" not in row else row
        for row in text.splitlines()
    ]
    other = "\n".join(rows) + "\n"
    assert other != text
    assert labels(solved(other, rule)) == labels(solved(text, rule))


PRINTED = """\
import sys
from datetime import date
from spotline.lint.solving.solve import Ask, solve
for card in solve(sys.argv[1], date(2026, 1, 5), Ask(0, sys.argv[2])).cards:
    print([step.label for step in card.steps])
"""


def test_the_answer_is_the_same_in_every_process() -> None:
    """Sets and hashes come in another order in each: none decides a tie."""
    text, rule = FAULTS["no knee flexion"]
    path = written(text)
    answers = {
        subprocess.run(
            [sys.executable, "-c", PRINTED, path, rule],
            env={**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": os.pathsep.join(sys.path)},
            capture_output=True,
            text=True,
            check=True,
        ).stdout
        for seed in ("1", "2", "3")
    }
    assert len(answers) == 1
    assert answers != {""}


def test_every_kind_of_step_is_proposed() -> None:
    """A kind that no fault brings out would be an edit that nobody gets."""
    solutions = [solved(*FAULTS[fault]) for fault in FAULTS]
    solutions += [found for folder in PROPOSED if (found := one_of_thirty(folder)) is not None]
    solutions.append(solved(PAIRED, "session-too-long"))
    solutions.append(solved(LATE, "isolation-before-compound"))
    kinds = {step.kind for one in solutions for card in one.cards for step in card.steps}
    assert kinds == set(KINDS)


PAIRED = """\
programme: Arms last
athlete: {name: Bo, level: intermediate, minutes: 22}
goal: hypertrophy
sessions:
  - session: Arms
    day: monday
    exercises:
      - {exercise: bench press, sets: 3, reps: 8-10, rir: 2, rest: 2 min}
      - {exercise: lat pulldown, sets: 3, reps: 8-10, rir: 2, rest: 2 min}
      - {exercise: leg extension, sets: 3, reps: 12-15, rir: 1, rest: 2 min}
      - {exercise: dumbbell curl, sets: 3, reps: 12-15, rir: 1, rest: 2 min}
"""

LATE = """\
programme: Small first
athlete: {name: Bo, level: intermediate}
goal: strength
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: leg extension, sets: 3, reps: 12, rir: 2}
      - {exercise: back squat, sets: 4, reps: 5, rir: 2}
      - {exercise: Romanian deadlift, sets: 3, reps: 8, rir: 2}
      - {exercise: lying leg curl, sets: 3, reps: 8, rir: 2}
"""


def test_lines_in_another_order_are_proposed_as_the_finding_offers_them() -> None:
    assert labels(solved(LATE, "isolation-before-compound")) == [["put back squat first"]]


# Where it is written


@pytest.mark.parametrize("turned_round", [True, False])
def test_new_lines_stand_where_a_coach_has_them_done(turned_round: bool) -> None:
    """Large lifts before small ones, the more common first; what is done for time comes last."""
    before = NO_CURLS.replace("rack, bench, ", "rack, bench, rope, ")
    plan = search_for(before, "knee-flexion-missing").plan
    (held, *_) = plan.sessions
    names = ["Romanian deadlift", "hip thrust", "front raise", "alternating rope wave", "farmer's carry"]
    lifts = [plan.header.known.exercise(one) for one in ("seated leg curl", *names[1:])]
    steps = [step for one in lifts if one is not None for step in added(plan, held, one)]
    assert len(steps) == len(lifts)
    spans = together(reversed(steps) if turned_round else steps)
    assert spans is not None
    text = with_spans(before, spans)
    stood = re.findall(r"exercise: ([^,]+),", text[: text.index("session: Upper A")])
    assert stood == [
        *("back squat", "Romanian deadlift", "hip thrust", "seated leg curl", "front raise"),
        *("standing calf raise", "plank", "farmer's carry", "alternating rope wave"),
    ]


def test_no_two_sessions_are_moved_to_one_day() -> None:
    text, rule = FAULTS["legs two days running"]
    plan = search_for(re.sub(r"days: \[.*?\], ", "", text), rule).plan
    moves = [
        step for held in plan.sessions for step in other_days(plan, held) if "exchange" not in step.label
    ]
    by_day: dict[str, set[int]] = {}
    for step in moves:
        day = step.label.rpartition(" ")[2]
        by_day.setdefault(day, set()).update(one for one in step.touches if one < 0)
    assert len(by_day) > 1
    assert all(len(touched) == 1 for touched in by_day.values())  # so only one of them is taken
    assert len({*map(frozenset, by_day.values())}) == len(by_day)


# What is never proposed


def new_exercises(solution: Solution, before: str) -> list[str]:
    """The exercises of the lines that a proposal adds or swaps in."""
    return [
        name
        for card in solution.cards
        for name in re.findall(r"exercise: ([^,}]+)", card.after)
        if f"exercise: {name}," not in before
    ]


@pytest.mark.parametrize(
    ("words", "fault"),
    [
        ("movement: knee flexion against load", "calves only with bent knees"),
        ("movement: hip hinge", "no knee flexion"),
        ("movement: overhead pressing", "much pressing"),
    ],
)
def test_nothing_new_loads_what_is_spared(words: str, fault: str) -> None:
    text, rule = FAULTS[fault]
    spared = f"minutes: 70, protect: [{{{words}, advised by: physiotherapist}}]"
    solution = solved(text.replace("minutes: 70", spared), rule)
    (ledger,) = solution.review.ledgers
    known = ledger.header.known
    ban = read(ledger.header.spared()[0].subject.words, known)
    assert any(ban.forbids(one) for one in exercises())  # so the ban is read
    found = [exercise for name in new_exercises(solution, text) if (exercise := known.exercise(name))]
    assert [one.name for one in found if ban.forbids(one)] == []
    for card in solution.cards:
        for step in card.steps:
            if step.kind == "sets" and step.by > 0:
                names = re.findall(r"exercise: ([^,}]+)", text[step.line :])[:1]
                lifts = [known.exercise(one) for one in names]
                assert not any(ban.forbids(one) for one in lifts if one is not None)


SHARED = faulty(
    ("sessions:\n", "shared:\n  - &base {sets: 12, reps: 12-15, rir: 1, rest: 90 s}\nsessions:\n"),
    (
        line_of("dumbbell fly"),
        "      - {exercise: dumbbell fly, <<: *base}\n      - {exercise: cable fly, <<: *base, sets: 2}\n",
    ),
)


@pytest.mark.parametrize(
    "rule", ["exercise-sets-high", "weekly-sets-over-limit", "session-sets-for-muscle-high"]
)
def test_what_lines_share_is_never_edited(rule: str) -> None:
    """Another set count under ``shared`` would change lines that nobody looked at."""
    found = {one.rule for one in solve(written(SHARED), TODAY, Ask()).review.findings}
    if rule not in found:
        assert rule != "exercise-sets-high"
        return
    solution = solved(SHARED, rule)
    assert solution.cards or solution.stays[0].why
    for card in solution.cards:
        assert card.after[: card.after.index("sessions:")] == SHARED[: SHARED.index("sessions:")]
        root = parse("plan.programme.yaml", card.after).root
        assert isinstance(root, Mapping)


# Files of a team


def test_the_limits_of_a_team_and_the_coachs_demands_are_the_judge() -> None:
    text, rule = FAULTS["chest over its limit"]
    Path("spotline.yaml").write_text(
        "weekly limits: {chest: 12}\n",
        encoding="utf-8",
    )
    text = text.replace("weeks: 4\n", "weeks: 4\nmust hold: [{weekly sets of: dumbbell fly, at least: 4}]\n")
    for card in (solution := solved(text, rule)).cards:
        week = solve(written(card.after), TODAY, Ask()).review.ledgers[0].weeks[0]
        assert week.sets("chest").high <= 12
        assert "dumbbell fly, sets: 4" in card.after
    assert solution.cards, [one.why for one in solution.stays]


# A search that is cut short


def test_a_search_that_is_cut_short_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(search_module, "MOST_STATES", 1)
    solution = solved(*FAULTS["little time"])
    assert solution.cards == []
    assert any("ended before it had tried all" in why for why in solution.stays[0].why)


def test_what_is_found_by_a_search_cut_short_is_said_not_to_be_the_cheapest() -> None:
    (path,) = (FRESH / "n04").glob("*.programme.yaml")
    solution = solve(str(path), TODAY, Ask(0, "pull-or-push-missing"))
    assert solution.cards
    assert not solution.to_the_end
    assert " ".join(cards(solution, 80, bold=False)).endswith("was cut short: others may cost less.")
    assert json.loads(proposals_json(solution))["to the end"] is False
    assert solved(*FAULTS["no knee flexion"]).to_the_end


def test_a_sound_programme_of_a_file_without_line_end_stays_sound() -> None:
    """The last line may end the file: what is added stands on a line of its own."""
    text = NO_CURLS.rstrip("\n")
    for card in solved(text, "knee-flexion-missing").cards:
        assert solve(written(card.after), TODAY, Ask()).review.is_judged
    assert SOUND.endswith("\n")
