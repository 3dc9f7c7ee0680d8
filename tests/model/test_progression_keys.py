"""A progression that ends, takes smaller steps, or stands still for a week; what follows a miss."""

from __future__ import annotations

import pytest


def text(progression):
    return (
        "programme: P\nathlete: {name: Mara}\nweeks: 8\nsessions:\n  - session: A\n    exercises:\n"
        f"      - {{exercise: back squat, sets: 3, reps: 5, load: 40 kg, progression: {progression}}}\n"
    )


@pytest.mark.parametrize(
    ("written", "words"),
    [
        ("{add: 5 kg, up to: 60 kg, then: 2.5 kg}", "add 5 kg, up to 60 kg, then 2.5 kg"),
        ("{add: 1 rep, up to: 12 reps}", "add 1 rep, up to 12 reps"),
        ("{add: 2.5 kg, every: session, not in weeks: 5}", "add 2.5 kg, every session, not in week 5"),
        ("{add: 2.5 kg, every: week, in weeks: 3-8}", "add 2.5 kg, every week, in weeks 3-8"),
        ("{add: 2.5 kg, not in weeks: 4+8}", "add 2.5 kg, not in weeks 4, 8"),
        ("{add: next pair, when: all sets are clean}", "add next pair when all sets are clean"),
        ("{add: 1 pair}", "add 1 pair"),
        ("{add: next band}", "add next band"),
        ("{add: 1 hole, every: 2 weeks}", "add 1 hole, every 2 weeks"),
        (
            "{add: 2.5 kg, if missed: twice running and 10 % off}",
            "add 2.5 kg, if missed: twice running and 10 % off",
        ),
    ],
)
def test_it_is_read_and_said(written, words, programme):
    ledger = programme(text(written))
    (line,) = ledger.programme.prescriptions()
    assert line.progression.words == words


@pytest.mark.parametrize(
    ("written", "rule", "change"),
    [
        ("{add: 2.5 kg, then: 1 kg}", "key-missing", "Add `up to`, like `up to: 2.5 kg`."),
        ("{add: 2.5 kg, in weeks: 1-4, not in weeks: 5}", "keys-at-odds", "Take one of them out."),
        (
            "{add: 2.5 kg, not in weeks: 9}",
            "weeks-beyond",
            "Correct the weeks, or the length of the block or programme.",
        ),
        (
            "{add: 2.5 kg, up to: a lot}",
            "value-unreadable",
            "Write it like `2.5 kg`, `1 rep`, `1 pin` or `next weight`, or say it in a `note`.",
        ),
    ],
)
def test_what_cannot_be_meant_is_told(written, rule, change, findings):
    (one,) = [each for each in findings(text(written)) if not each.why]
    assert (one.rule, one.change) == (rule, change)
