"""Two versions compared: sessions matched by what they hold, findings by their data, forms, speed."""

from __future__ import annotations

import json
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from spotline import schema as schemas
from spotline.lint.project.review import review
from spotline.lint.reporters.changes_json import changes_json
from spotline.lint.reporters.changes_markdown import LARGEST, markdown
from spotline.lint.reporters.changes_text import in_few_lines, summary, text
from spotline.lint.weighing.comparison import MOST_LINES, Comparison, shared_out
from spotline.lint.weighing.difference import PART_OF, PARTS
from spotline.lint.weighing.sides import NothingToCompareError, compare_paths
from spotline.tests.steps import steps

from .conftest import edited

Compare = Callable[..., Comparison]

HEAD = (
    "programme: Base\nathlete: {name: Juno, level: intermediate}\nstarts: 2026-01-05\nweeks: 4\nsessions:\n"
)
MONDAY = """\
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: 4, reps: 5, load: 80 %}
      - {exercise: seated leg curl, sets: 3, reps: 10}
      - {exercise: standing calf raise, sets: 3, reps: 10}
"""
THURSDAY = """\
  - session: Upper
    day: thursday
    exercises:
      - {exercise: bench press, sets: 4, reps: 6}
      - {exercise: lat pulldown, sets: 3, reps: 10}
"""


def words(result: Comparison, kind: str = "") -> list[str]:
    return [
        change.words for one in result.compared for change in one.changes if not kind or change.kind == kind
    ]


def test_a_session_that_is_renamed_and_moved_is_one_that_is_moved(compared: Compare) -> None:
    new = edited(HEAD + MONDAY + THURSDAY, ("session: Lower", "session: Legs"), ("monday", "tuesday"))
    result = compared(HEAD + MONDAY + THURSDAY, new)
    assert words(result, "moved") == ["Legs moved from Monday to Tuesday"]
    assert not words(result, "session")
    assert not words(result, "line")


def test_two_sessions_that_swap_days(compared: Compare) -> None:
    new = HEAD + MONDAY.replace("monday", "thursday") + THURSDAY.replace("day: thursday", "day: monday")
    result = compared(HEAD + MONDAY + THURSDAY, new)
    assert sorted(words(result, "moved")) == [
        "Lower moved from Monday to Thursday",
        "Upper moved from Thursday to Monday",
    ]


def test_findings_are_compared_by_their_data(compared: Compare) -> None:
    old = HEAD + MONDAY.replace("seated leg curl, sets: 3", "seated leg curl, sets: 25") + THURSDAY
    more = old.replace("sets: 25", "sets: 27")
    renamed = old.replace("session: Lower", "session: Something else")
    assert not words(compared(old, renamed))
    result = compared(old, more)
    assert any(
        one.startswith("worsens ") and "25 sets" in one and "27 sets" in one for one in words(result)
    ), words(result)
    cleared = compared(old, old.replace("sets: 25", "sets: 3"))
    assert any(one.startswith("clears ") for one in words(cleared, "finding cleared"))
    brought = compared(old.replace("sets: 25", "sets: 3"), old)
    assert len(words(brought, "finding brought")) == len(words(cleared, "finding cleared"))


def test_a_lowered_limit_of_the_team_is_told_with_what_it_brings(compared: Compare) -> None:
    plan = {"plan.programme.yaml": HEAD + MONDAY + THURSDAY}
    old = {**plan, "spotline.yaml": "weekly limits: {quadriceps: 18}\n"}
    new = {**plan, "spotline.yaml": "weekly limits: {quadriceps: 3}\n"}
    result = compared(old, new)
    assert "weekly limits, quadriceps: 18 -> 3" in words(result, "setting")
    assert any("weekly-sets-over-limit, quadriceps" in one for one in words(result, "finding brought"))


def test_an_easy_week_is_said_once(compared: Compare) -> None:
    """Its lines are not out of line, and that it is called so is not said again."""
    plan = HEAD + MONDAY + THURSDAY
    easy = plan.replace("weeks: 4\n", "weeks: 4\ndeload: [3]\neverything: {3: {sets: half}}\n")
    (one,) = compared(plan, easy.replace("monday", "tuesday")).changed
    said = [sentence for _, sentence in one.first()]
    assert said[0] == "week 3 is now an easier week: 5 of 5 lifts eased"
    assert [change.kind for change in one.changes if "week 3" in change.words] == ["easier week"]
    assert not [change for change in one.changes if change.part == "out of line"]


def test_lines_go_to_what_is_most_telling_in_any_file(compared: Compare) -> None:
    """Each file has a line, and those that are left over are given by weight, not in turn."""
    old, new = {}, {}
    for at in range(10):
        name, text = f"plan-{at}.programme.yaml", (HEAD + MONDAY + THURSDAY).replace("Juno", f"Juno {at}")
        old[name] = text
        new[name] = edited(text, ("reps: 6", "reps: 5"))
    last = "plan-9.programme.yaml"
    new[last] = edited(new[last], ("monday", "sunday"), ("bench press, sets: 4", "bench press, sets: 9"))
    result = compared(old, new)
    told = shared_out(result.changed, 12)
    assert result.changed[0].file.endswith(last)
    assert [len(lines) for lines in told] == [3] + [1] * 9
    said = markdown(result).partition("<details>")[0]
    assert sum(line.startswith("- ") for line in said.splitlines()) == 12


def test_a_line_that_is_gone_is_said_before_what_only_helps_less(compared: Compare) -> None:
    raises = "      - {exercise: lateral raise, sets: 2, reps: 12}\n"
    (one,) = compared(HEAD + MONDAY + THURSDAY + raises, HEAD + MONDAY + THURSDAY).changed
    said = [sentence for _, sentence in one.first()]
    assert "Upper: lateral raise is gone, 2 x 12" in said
    assert not any("indirect sets only" in sentence for sentence in said)
    assert any("indirect sets only" in change.words for change in one.changes)


def test_a_squad_is_told_together_and_apart(compared: Compare) -> None:
    old = HEAD.replace(
        "athlete: {name: Juno, level: intermediate}",
        "athletes: [{name: Ann}, {name: Bo}, {athlete: {name: Cy}, adjust: [{exercise: back squat, sets: 2}]}]",
    )
    result = compared(old + MONDAY + THURSDAY, old + MONDAY.replace("sets: 4", "sets: 6") + THURSDAY)
    assert [one.who for one in result.changed] == ["Ann, Bo"]
    result = compared(old + MONDAY, old.replace("{name: Bo}, ", "") + MONDAY)
    assert "Bo is no longer on it" in words(result, "athlete")


def test_twelve_lines_before_details(compared: Compare, root: Path) -> None:
    files = {
        str(path.relative_to(root / "examples")): path.read_text(encoding="utf-8")
        for path in (root / "examples").rglob("*.yaml")
        if "faulty" not in path.parts
    }
    other = {
        name: content.replace("monday", "tuesday").replace("reps: 8", "reps: 6").replace("rir: 2", "rir: 1")
        for name, content in files.items()
    }
    result = compared(files, other)
    said = list(summary(result, 500))
    assert (
        sum(line.startswith(("  first", "  p", "  o", "  d", "  f", "  l", "   ")) for line in said)
        <= MOST_LINES
    )
    weights = [one.weight for one in result.changed]
    assert weights == sorted(weights, reverse=True)
    assert len(weights) > 5
    assert len(in_few_lines(result)) == 5
    assert len(markdown(result)) <= LARGEST
    assert len(markdown(result, 3000)) <= 3000
    assert "too long for here" in markdown(result, 6000)
    assert all(
        len(line) <= 80 for line in text(result, 80) if not line.endswith(".yaml") and " weeks " not in line
    )
    document = json.loads(changes_json(result))
    Draft202012Validator(schemas.load("changes")).validate(document)
    assert markdown(result).count("<details>") == markdown(result).count("</details>")


def test_kinds_and_parts_are_those_of_the_schema() -> None:
    change = schemas.load("changes")["$defs"]["change"]["properties"]
    assert set(PART_OF) == set(change["kind"]["enum"])
    assert set(PARTS) == set(change["part"]["enum"]) == set(PART_OF.values())


def test_new_and_gone_files_and_a_renamed_one(compared: Compare) -> None:
    one, two = HEAD + MONDAY, HEAD.replace("Base", "Other").replace("Juno", "Piran") + THURSDAY
    result = compared({"a.programme.yaml": one}, {"a.programme.yaml": one, "b.programme.yaml": two})
    assert result.new[0][1] == "Other, 4 weeks, for Piran"
    assert not result.gone
    result = compared({"a.programme.yaml": one, "b.programme.yaml": two}, {"a.programme.yaml": one})
    assert result.gone == [("b.programme.yaml", "Other, 4 weeks, for Piran")]
    result = compared(
        {"a.programme.yaml": one}, {"moved/c.programme.yaml": one.replace("sets: 4", "sets: 5")}
    )
    assert not result.new
    assert not result.gone
    assert "Lower, back squat: sets 4 -> 5" in words(result)


def test_a_side_that_cannot_be_read(compared: Compare) -> None:
    result = compared(HEAD + MONDAY, "programme: [\n")
    assert not result.compared
    assert len(result.faults) == 1
    assert "(the new side): line " in result.faults[0]
    result = compared("programme: [\n", HEAD + MONDAY)
    assert "(the old side): line " in result.faults[0]


@pytest.mark.parametrize(
    ("old", "new"), [("none", "."), (".", "none"), ("a.programme.yaml", "."), ("empty", ".")]
)
def test_what_cannot_be_compared(old: str, new: str, tmp_path: Path, today: date) -> None:
    (tmp_path / "a.programme.yaml").write_text(HEAD + MONDAY, encoding="utf-8")
    (tmp_path / "empty").mkdir()
    with pytest.raises(NothingToCompareError):
        compare_paths(str(tmp_path / old), str(tmp_path / new), today)


HOSTILE = "=1\u202e|<script>`x`@all #1 www.x.example"


def test_a_coachs_words_stay_words(compared: Compare) -> None:
    name = json.dumps(HOSTILE)
    new = HEAD + MONDAY.replace("session: Lower", f"session: {name}").replace("monday", "friday")
    result = compared(HEAD + MONDAY, new)
    said = markdown(result)
    assert "<script>" not in said
    assert "\u202e" not in said
    assert "@all" not in said
    assert "\u202e" not in "\n".join([*text(result, 80), *in_few_lines(result)])


def test_it_costs_little_more_than_the_reviews_of_both(root: Path, today: date, tmp_path: Path) -> None:
    paths = []
    text = (root / "examples" / "programmes" / "idris-upper-lower.programme.yaml").read_text(encoding="utf-8")
    athlete = (root / "examples" / "athletes" / "idris.athlete.yaml").read_text(encoding="utf-8")
    for side, content in (
        ("old", text),
        ("new", text.replace("monday", "sunday").replace("reps: 5-8", "reps: 8-10")),
    ):
        folder = tmp_path / side
        (folder / "athletes").mkdir(parents=True)
        (folder / "programmes").mkdir()
        (folder / ".git").mkdir()
        (folder / "athletes" / "idris.athlete.yaml").write_text(athlete, encoding="utf-8")
        path = folder / "programmes" / "plan.programme.yaml"
        path.write_text(content, encoding="utf-8")
        paths.append(str(path))
    both = steps(lambda: [review([path], today) for path in paths])
    assert steps(lambda: list(summary(compare_paths(paths[0], paths[1], today), 80))) <= 2.1 * both


def test_what_a_squad_shares_stands_once_with_its_athletes(compared: Callable[..., Comparison]) -> None:
    """One athlete's own change does not say the shared one again."""
    squad = (
        "programme: Squad\nathletes:\n  - {name: Ann}\n  - {name: Bea}\n"
        "  - {name: Cleo, best lifts: {back squat: 100 kg}}\nweeks: 2\nsessions:\n  - session: Lower\n"
        "    day: monday\n    exercises:\n      - {exercise: back squat, sets: 3, reps: 5, rir: 2}\n"
    )
    found = compared(squad, squad.replace("sets: 3", "sets: 6").replace("100 kg", "120 kg")).changed
    assert sorted(one.who for one in found) == ["Ann, Bea, Cleo", "Cleo"]
    words = [change.words for one in found for change in one.changes]
    assert len(words) == len(set(words))
    (own,) = (one.changes for one in found if one.who == "Cleo")
    assert [change.kind for change in own] == ["best lift"]
