"""Whole lines, sessions, blocks and programmes with stops: filled in, they are sound."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from spotline.lint.editor.documents.answers import Completion
from spotline.lint.editor.documents.snapshot import Snapshot
from spotline.lint.editor.features.completion import complete
from spotline.tests.steps import growth, steps

Open = Callable[..., Snapshot]

SESSION = "programme: A\nweeks: 4\nsessions:\n  - session: L\n    day: monday\n    exercises:\n"
FLOW = "      - {exercise: back squat, sets: {1-2: 3, 3-4: 2}, reps: 5, load: 80 %, note: low bar, rest: 3 min}\n"
BLOCK = "      - exercise: back squat\n        sets: 4\n        reps: 5\n        load: 100 kg\n"


def offers(opened: Open, text: str) -> dict[str, Completion]:
    """What is offered at the bar, by label, templates before all else of the same name."""
    at = text.index("|")
    found = complete(opened(text.replace("|", "", 1)), at, templates=True)
    return {one.label: one for one in reversed(found)}


def filled(snippet: str) -> str:
    """A snippet with what stands at its stops at first, and a bar where the caret ends."""
    text = re.sub(r"\$\{\d+\|((?:\\.|[^,|\\])*)[^|]*\|\}", r"\1", snippet)
    text = re.sub(r"\$\{\d+:((?:\\.|[^}\\])*)\}", r"\1", text)
    return re.sub(r"\\([\\$}])", r"\1", text.replace("$0", "|"))


def taken(text: str, offer: Completion) -> str:
    """A text after a template was taken, its further lines indented as clients do; the bar stands at its end."""
    whole = text.replace("|", "", 1)
    line = whole[whole.rfind("\n", 0, offer.start) + 1 : offer.start]
    blanks = " " * (len(line) - len(line.lstrip(" ")))
    return whole[: offer.start] + filled(offer.snippet).replace("\n", f"\n{blanks}") + whole[offer.end :]


def errors(opened: Open, text: str) -> list[str]:
    return [one.counted for one in opened(text).review.findings if one.severity == "error"]


def test_a_programme_from_nothing(opened: Open) -> None:
    text = taken("pr|", offers(opened, "pr|")["new programme"])
    assert text == (
        "programme: Name\ngoal: hypertrophy\nweeks: 4\nsessions:\n  - session: Name\n    day: monday\n"
        "    exercises:\n      - |"
    )
    text = taken(text, offers(opened, text.replace("|", "rdl|"))["Romanian deadlift"])
    assert text.endswith("\n      - {exercise: Romanian deadlift, sets: 3, reps: 8, rir: 2, rest: 2 min}|")
    assert errors(opened, text.replace("|", "\n")) == []


@pytest.mark.parametrize(
    ("above", "line"),
    [
        # the load of another lift in kg is not this one's; a note is that of its own line
        (FLOW, "{exercise: front squat, sets: {1-2: 3, 3-4: 2}, reps: 5, load: 80 %, rest: 3 min}"),
        (BLOCK, "exercise: front squat\n        sets: 4\n        reps: 5"),
        ("      - {note: only words}\n", "{exercise: front squat, sets: 3, reps: 8, rir: 2, rest: 2 min}"),
        ("", "{exercise: front squat, sets: 3, reps: 8, rir: 2, rest: 2 min}"),
    ],
)
def test_a_line_is_like_the_one_above(opened: Open, above: str, line: str) -> None:
    text = f"{SESSION}{above}      - front sq|\n"
    assert taken(text, offers(opened, text)["front squat"]) == f"{SESSION}{above}      - {line}|\n"


@pytest.mark.parametrize("style", [FLOW, BLOCK])
@pytest.mark.parametrize(
    ("before", "label"),
    [
        (f"{SESSION}%      - pla|\n", "plank"),
        (f"{SESSION}%      - sup|\n", "new superset"),
        (f"{SESSION}%      - cir|\n", "new circuit"),
        (f"{SESSION}%      - ses|\n", "new session"),
        (f"{SESSION}%  - ses|\n", "new session"),
        (f"{SESSION}%  |\n", "new session"),
        (
            f"{SESSION}%      - superset:\n          - pla|\n          - {{exercise: dip, sets: 3, reps: 5}}\n",
            "plank",
        ),
        (
            f"{SESSION}%      - circuit:\n          rounds: 3\n          exercises:\n            - pla|\n",
            "plank",
        ),
        ("programme: A\nblocks:\n  - blo|\n", "new block"),
        ("programme: A\nsessions:\n  - |\n", "new session"),
        ("programme: A\nsessions:\n  |\n", "new session"),
        (f"{SESSION}      |\n", "barbell curl"),
    ],
)
def test_what_is_taken_is_sound(opened: Open, style: str, before: str, label: str) -> None:
    text = before.replace("%", style)
    if "|" in style or label not in offers(opened, text):
        pytest.fail(f"{label} is not offered in {text}")
    now = taken(text, offers(opened, text)[label])
    if now.partition("|")[0].endswith("- "):
        now = now.replace("|", "{exercise: plank, sets: 3, hold: 30 s}")
    now = (
        now.replace("exercise A", "leg press")
        .replace("exercise B", "dip")
        .replace("exercise: exercise", "exercise: dip")
    )
    assert errors(opened, now.replace("|", "")) == [], now


def test_a_session_takes_the_next_day_but_one(opened: Open) -> None:
    text = f"{SESSION}{FLOW}      - ses|\n"
    now = taken(text, offers(opened, text)["new session"])
    assert now == f"{SESSION}{FLOW}  - session: Name\n    day: wednesday\n    exercises:\n      - |\n"


def test_only_where_they_may_be_filled_in(opened: Open) -> None:
    for text in (
        f"{SESSION}      - {{|}}\n",
        f"{SESSION}      - exercise: |\n",
        "name: A\n|",
        f"{SESSION}    |\n",
    ):
        assert not [one for one in offers(opened, text).values() if one.snippet], text
    plain = complete(opened(""), 0)
    assert not [one for one in plain if one.snippet]


def test_words_that_snippets_read_otherwise(opened: Open) -> None:
    text = f"{SESSION}      - {{exercise: dip, sets: 3, reps: 5, rest: '$1 \\}}'}}\n      - pla|\n"
    assert "rest: '$1 \\}'" in taken(text, offers(opened, text)["plank"])


def long(opened: Open, lines: int) -> tuple[Snapshot, int]:
    """A programme of so many lines, the caret at the end of a new one in its middle."""
    line = "      - {exercise: back squat, sets: 3, reps: 5, rir: 2, rest: 2 min}\n"
    head = "  - session: S\n    exercises:\n"
    half = (head + line * 10) * (lines // 24)
    text = f"programme: A\nsessions:\n{half}      - leg "
    return opened(f"{text}\n{half}"), len(text)


def test_a_list_takes_few_steps_and_no_more_in_a_long_programme(opened: Open) -> None:
    """Measured on two cores of 2026: 81,000 steps in 13 ms."""

    def offering(lines: int) -> Callable[[], object]:
        snapshot, at = long(opened, lines)
        return lambda: complete(snapshot, at, templates=True)

    assert steps(offering(400)) < 112_000
    assert growth(offering, 200) < 1.5
