"""The kinds of edits that lose something without any rule's word: each stands in the first five lines."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from spotline.lint.weighing.comparison import Comparison

from .conftest import Files, edited

Compare = Callable[..., Comparison]

IDRIS, MARA = ("idris-upper-lower", "idris"), ("mara-lower-body-first", "mara")
SASKIA, BRAM, KESTER = (
    ("saskia-in-season", "saskia"),
    ("bram-winter-strength", "bram"),
    ("kester-calf-loading", "kester"),
)

SILENT = {
    "half of a deload forgotten": (
        BRAM,
        0,
        [("- {exercise: back squat, <<: *easy, sets: 3, reps: 3, load: 75 %}", "- {exercise: back squat, <<: *easy, sets: 5, reps: 5, load: 85 %}"),
         ("- {exercise: bench press, <<: *easy, sets: 2, reps: 3, load: 75 %}", "- {exercise: bench press, <<: *easy, sets: 5, reps: 5, load: 85 %}")],
        "deload week 6 no longer eases back squat and bench press",
    ),
    "an easier week that only half the lines take up": (
        IDRIS,
        0,
        [("sets: {1-2: 3, 3-5: 4, 6: 3}\n        reps: 5-8\n        tempo", "sets: {1-2: 3, 3-5: 4, 6: 4}\n        reps: 5-8\n        tempo"),
         ("sets: {1-2: 3, 3-5: 4, 6: 3}\n        reps: 10-15\n      - {", "sets: {1-2: 3, 3-5: 4, 6: 4}\n        reps: 10-15\n      - {")],
        "week 6 no longer eases back squat and seated leg curl",
    ),
    "seven leg sets gone": (
        IDRIS,
        0,
        [("      - {exercise: leg extension, <<: *small, sets: 2, reps: 12-15}\n", ""),
         ("        sets: {1-2: 3, 3-5: 4, 6: 3}\n        reps: 10-15\n        rest: 3 min\n", "        sets: 1\n        reps: 10-15\n        rest: 3 min\n"),
         ("      - {exercise: leg extension, <<: *small, sets: 2, reps: 12-15}\n", "")],
        "quadriceps",
    ),
    "heavy legs two days before a match": (
        SASKIA,
        0,
        [("    day: wednesday\n", "    day: thursday\n")],
        "moved from Wednesday to Thursday: heavy hamstrings, quadriceps, gluteals and 3 more 72 -> 48 h before home match",
    ),
    "a doubled line": (
        MARA,
        0,
        [("      - {exercise: leg extension, sets: 2, reps: 12-15, rir: 1-2, rest: 90 s}\n",
          "      - {exercise: leg extension, sets: 2, reps: 12-15, rir: 1-2, rest: 90 s}\n" * 2)],
        "Lower A: leg extension stands twice, 2 sets each time",
    ),
    "a lost side": (
        SASKIA,
        0,
        [("rear-foot-elevated split squat, sets: 2, reps: 6, side: each,", "rear-foot-elevated split squat, sets: 2, reps: 6, side: left,")],
        "rear-foot-elevated split squat: `side: each` is now left only",
    ),
    "a week missed": (
        BRAM,
        0,
        [("            <<: *volume\n            load: {1: 72.5 %, 2: 75 %, 3: 77.5 %}", "            <<: *volume\n            load: {1: 70 %, 2: 75 %, 3: 75 %}")],
        "back squat: week 2 keeps load 75 %",
    ),
    "a restriction dropped": (
        KESTER,
        1,
        [],
        "no longer protects",
    ),
    "what is agreed on for a restriction": (
        KESTER,
        1,
        [("    note: Loading", "    agreed: [calf raise]\n    note: Loading")],
        "protects left calf and heel: agreed none -> calf raise",
    ),
    "a best lift mistyped": (
        BRAM,
        1,
        [("back squat: {load: 165 kg", "back squat: {load: 156 kg")],
        "best lift back squat 165 kg -> 156 kg, -5 %: so do loads in % of it",
    ),
    "a swap made in one of two sessions": (
        IDRIS,
        0,
        [("      - {exercise: leg extension, <<: *small, sets: 2, reps: 12-15}\n", "      - {exercise: sissy squat, <<: *small, sets: 2, reps: 12-15}\n")],
        "leg extension -> sissy squat in Lower A; Lower B keeps leg extension",
    ),
    "one week's value typed wrong": (
        MARA,
        0,
        [("4-5: 77.5 %, 6: 70 %", "4: 77.5 %, 5: 57.5 %, 6: 70 %")],
        "stiff-leg deadlift, week 5 alone: load 77.5 % -> 57.5 %",
    ),
    "a load lost": (
        SASKIA,
        0,
        [("bench press, sets: 3, reps: 5, load: 80 %, rir: 3", "bench press, sets: 3, reps: 5, rir: 3")],
        "bench press: load 80 % -> none",
    ),
    "an effort lost": (
        MARA,
        0,
        [("      - {exercise: leg extension, sets: 2, reps: 12-15, rir: 1-2, rest: 90 s}\n",
          "      - {exercise: leg extension, sets: 2, reps: 12-15, rest: 90 s}\n")],
        "leg extension: effort RIR 1-2 -> none",
    ),
    "a deload declared that eases next to nothing": (
        IDRIS,
        0,
        [("weeks: 6\n", "weeks: 6\ndeload: [6]\n")],
        "week 6 is now a deload: 4 of 27 lifts eased, 82 sets before and after",
    ),
    "a deload no longer called one": (
        BRAM,
        0,
        [("    deload: true\n", ""), ("sets: 3, reps: 3, load: 75 %}", "sets: 4, reps: 3, load: 75 %}")],
        "week 6 is no longer a deload: 19 -> 20 sets",
    ),
    "a demand of their own dropped": (
        SASKIA,
        0,
        [("  - {days of: knee flexion, at least: 1}\n", "")],
        "must hold: no longer days of knee flexion: at least 1",
    ),
    "a session said twice": (
        MARA,
        0,
        [("    day: monday\n", "    day: [monday, saturday]\n")],
        "Lower A on Saturday, once more: the session stands twice in the week",
    ),
    "the other side lost": (
        MARA,
        0,
        [("hold: 40 s, side: each", "hold: 40 s, side: right")],
        "side plank: `side: each` is now right only",
    ),
    "equipment gone": (
        ("boathouse-circuit", "tamsin"),
        1,
        [("kettlebell, band", "band")],
        "equipment: no longer kettlebell",
    ),
    "a session gone": (
        ("wren-rotation", "wren"),
        0,
        [("rotation: [monday, wednesday, friday]", "rotation: [monday, friday]")],
        "A (Friday) is gone: 14 sets",
    ),
    "a waiver written": (
        MARA,
        0,
        [("weeks: 6\n", "weeks: 6\nwaivers:\n  - {rule: legs-heavy-before-event, reason: agreed with her}\n")],
        "waives legs-heavy-before-event now",
    ),
}  # fmt: skip


@pytest.mark.parametrize("kind", SILENT)
def test_it_stands_in_the_first_five_lines(
    kind: str, compared: Compare, files: Callable[..., Files], first_lines: Callable[[Comparison], list[str]]
) -> None:
    names, which, replaced, said = SILENT[kind]
    old = files(*names)
    name = list(old)[which]
    text = edited(old[name], *replaced) if replaced else without_restriction(old[name])
    lines = first_lines(compared(old, {**old, name: text}))
    assert any(said in line for line in lines), "\n".join(lines)


def without_restriction(text: str) -> str:
    """An athlete's file without the first thing that it protects."""
    lines = text.splitlines(keepends=True)
    at = next(number for number, line in enumerate(lines) if line.startswith("protect"))
    end = next(
        (number for number in range(at + 1, len(lines)) if lines[number][:1] not in (" ", "#")), len(lines)
    )
    return "".join([*lines[:at], *lines[end:]])


FLAT = """\
programme: Base
athlete: {name: Mara, level: intermediate}
weeks: 6
sessions:
  - session: Lower
    day: monday
    exercises:
      - {exercise: back squat, sets: 3, reps: 5, load: 80 %, rest: 3 min}
      - {exercise: seated leg curl, sets: 3, reps: 8-12, rir: 2, rest: 2 min}
  - session: Upper
    day: thursday
    exercises:
      - {exercise: bench press, sets: 3, reps: 5, load: 80 %, rest: 3 min}
      - {exercise: seated cable row, sets: 3, reps: 8-12, rir: 2, rest: 2 min}
"""
EASIER = "week 4 is now an easier week: 4 of 4 lifts eased"


@pytest.mark.parametrize(
    ("head", "sets", "load", "said"),
    [
        ("weeks: 6\ndeload: [4]", "{1-3: 4, 4: 3, 5-6: 4}", "80 %", EASIER),
        ("weeks: 6\ndeload: [4]\neverything: {4: {sets: half}}", "3", "80 %", EASIER),
        ("weeks: 6", "{1-3: 4, 4: 2, 5-6: 4}", "80 %", EASIER),
        ("weeks: 6", "{1-3: 4, 4: 3, 5-6: 5}", "80 %", EASIER),
        ("weeks: 6", "{1-3: 3, 4: 2, 5-6: 3}", "{1-3: 80 %, 4: 65 %, 5-6: 82.5 %}", EASIER),
        (
            "weeks: 6\ndeload: [4]",
            "3",
            "80 %",
            "week 4 is now a deload: 0 of 4 lifts eased, 12 sets before and after",
        ),
    ],
)
def test_an_easier_week_comes_first(
    head: str,
    sets: str,
    load: str,
    said: str,
    compared: Compare,
    first_lines: Callable[[Comparison], list[str]],
) -> None:
    """Whether it is declared or not, the week is told as one thing, and no line as forgotten."""
    new = FLAT.replace("weeks: 6", head).replace("sets: 3", f"sets: {sets}").replace("80 %", load)
    _, first, *rest = first_lines(compared(FLAT, new))
    assert said in first
    assert not [line for line in rest if " keeps " in line or "is now an easier week" in line]


def test_a_week_missed_in_one_line_is_told_as_such(
    compared: Compare, first_lines: Callable[[Comparison], list[str]]
) -> None:
    new = FLAT.replace("back squat, sets: 3", "back squat, sets: {1-3: 4, 4: 3, 5-6: 5}")
    assert "back squat: week 4 keeps sets 3" in first_lines(compared(FLAT, new))[1]
