"""A sound programme of four days, and faults put into it one at a time; for the tests of what is proposed."""

from __future__ import annotations

import re

KIT = "barbell, rack, bench, dumbbells, cable machine, leg curl machine, leg extension machine, leg press, calf raise machine, hip abduction machine"

SOUND = f"""\
programme: Quarry upper and lower
athlete: {{name: Bo, level: intermediate, days: [monday, tuesday, thursday, friday, saturday], minutes: 70, equipment: [{KIT}]}}
goal: hypertrophy
starts: 2026-01-05
weeks: 4
sessions:
  - session: Lower A
    day: monday
    exercises:
      - {{exercise: back squat, sets: 3, reps: 6-8, rir: 2, rest: 3 min}}
      - {{exercise: Romanian deadlift, sets: 3, reps: 8-10, rir: 2, rest: 2 min}}
      - {{exercise: seated leg curl, sets: 3, reps: 10-15, rir: 1, rest: 90 s}}
      - {{exercise: standing calf raise, sets: 3, reps: 10-15, rir: 1, rest: 90 s}}
      - {{exercise: plank, sets: 3, hold: 40 s, rest: 60 s}}
  - session: Upper A
    day: tuesday
    exercises:
      - {{exercise: bench press, sets: 3, reps: 6-8, rir: 2, rest: 3 min}}
      - {{exercise: seated cable row, sets: 3, reps: 8-10, rir: 2, rest: 2 min}}
      - {{exercise: overhead press, sets: 2, reps: 8-10, rir: 2, rest: 2 min}}
      - {{exercise: lat pulldown, sets: 3, reps: 10-12, rir: 1, rest: 90 s}}
      - {{exercise: lateral raise, sets: 3, reps: 12-15, rir: 1, rest: 60 s}}
      - {{exercise: cable overhead triceps extension, sets: 2, reps: 10-15, rir: 1, rest: 60 s}}
      - {{exercise: cable curl, sets: 2, reps: 10-15, rir: 1, rest: 60 s}}
  - session: Lower B
    day: thursday
    exercises:
      - {{exercise: leg press, sets: 3, reps: 10-12, rir: 2, rest: 2 min}}
      - {{exercise: split squat, sets: 2, reps: 8-12, side: each, rir: 2, rest: 2 min}}
      - {{exercise: lying leg curl, sets: 3, reps: 6-8, rir: 1, rest: 2 min}}
      - {{exercise: leg extension, sets: 2, reps: 12-15, rir: 1, rest: 90 s}}
      - {{exercise: hip abduction machine, sets: 2, reps: 12-15, rir: 1, rest: 60 s}}
      - {{exercise: seated calf raise, sets: 3, reps: 12-15, rir: 1, rest: 60 s}}
  - session: Upper B
    day: friday
    exercises:
      - {{exercise: incline dumbbell press, sets: 3, reps: 10-12, rir: 2, rest: 2 min}}
      - {{exercise: bent-over row, sets: 3, reps: 6-8, rir: 2, rest: 2 min}}
      - {{exercise: dumbbell fly, sets: 2, reps: 12-15, rir: 1, rest: 90 s}}
      - {{exercise: dumbbell reverse fly, sets: 2, reps: 12-15, rir: 1, rest: 60 s}}
      - {{exercise: dumbbell curl, sets: 2, reps: 6-8, rir: 1, rest: 90 s}}
"""


def line_of(exercise: str) -> str:
    """The line of an exercise in the sound programme."""
    found = re.search(rf"      - {{exercise: {exercise},.*\n", SOUND)
    assert found is not None, exercise
    return found[0]


def faulty(*changes: tuple[str, str]) -> str:
    """The sound programme with words put in the place of others, each of which it must hold."""
    text = SOUND
    for was, now in changes:
        assert was in text, was
        text = text.replace(was, now)
    return text


NO_CURLS = faulty((line_of("seated leg curl"), ""), (line_of("lying leg curl"), ""))

FAULTS = {
    "no knee flexion": (NO_CURLS, "knee-flexion-missing"),
    "chest over its limit": (
        faulty(
            ("bench press, sets: 3", "bench press, sets: 6"),
            ("dumbbell fly, sets: 2", "dumbbell fly, sets: 7"),
            ("dumbbell press, sets: 3", "dumbbell press, sets: 8"),
        ),
        "weekly-sets-over-limit",
    ),
    "much pressing": (
        faulty(
            ("row, sets: 3", "row, sets: 2"),
            ("lat pulldown, sets: 3", "lat pulldown, sets: 2"),
            ("bench press, sets: 3", "bench press, sets: 5"),
            ("overhead press, sets: 2", "overhead press, sets: 4"),
            ("dumbbell press, sets: 3", "dumbbell press, sets: 4"),
        ),
        "antagonist-imbalance",
    ),
    "little time": (faulty(("minutes: 70", "minutes: 24")), "session-too-long"),
    "legs two days running": (
        faulty(
            ("day: thursday", "day: next"),
            ("day: tuesday", "day: thursday"),
            ("day: next", "day: tuesday"),
            ("back squat, sets: 3, reps: 6-8, rir: 2", "back squat, sets: 4, reps: 6-8, rir: 1"),
            ("leg press, sets: 3, reps: 10-12, rir: 2", "leg press, sets: 4, reps: 10-12, rir: 1"),
        ),
        "sessions-too-close",
    ),
    "calves only with bent knees": (
        faulty((line_of("standing calf raise"), "")),
        "straight-knee-calf-missing",
    ),
    "too many repetitions for the load": (
        faulty(("back squat, sets: 3, reps: 6-8, rir: 2,", "back squat, sets: 3, reps: 10-12, load: 90 %,")),
        "more-reps-than-load-allows",
    ),
    "no leg press": (faulty(("leg press, calf", "calf")), "equipment-missing"),
    "overhead spared": (
        faulty(
            (
                "minutes: 70",
                "minutes: 70, protect: [{movement: overhead pressing, advised by: physiotherapist}]",
            )
        ),
        "protected-area-loaded",
    ),
    "little rest": (
        faulty(
            (
                "squat, sets: 3, reps: 6-8, rir: 2, rest: 3 min",
                "squat, sets: 3, reps: 3-4, load: 87 %, rest: 60 s",
            )
        ),
        "rest-too-short-heavy",
    ),
    "one heavy week": (
        faulty(("bench press, sets: 3", "bench press, sets: {1-2: 9, 3: 12, 4: 9}")),
        "exercise-sets-high",
    ),
    "above the level": (
        faulty(
            ("level: intermediate", "level: novice"),
            ("seated leg curl, sets: 3, reps: 10-15", "Nordic curl, sets: 3, reps: 5-8"),
        ),
        "lift-beyond-level",
    ),
}
"""A fault in words: the programme that holds it, and the rule that finds it."""
