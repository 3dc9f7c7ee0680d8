"""Loads of the main lifts against the zone of the goal."""

from __future__ import annotations

from ..lint.counting.credits import credit
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.model.quantities import Range
from ..lint.wording.words import first_of, plain, says
from .fast_work import FAST_WORDS
from .shared import is_of_another

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding

BIG = ("squat", "hip hinge", "horizontal push", "vertical push")
"""Patterns of the main lifts where no priority names them; rows, pulls and lunges go with them."""

THROWN = ("jump", "throw")
"""Patterns of loaded fast work to which the zone for power applies; Olympic lifts are done heavier."""


# Loads and the goal


@rule(
    "load-outside-zone",
    family="load",
    severity="note",
    confidence="guideline",
    why="Strength answers best to heavy loads, power to light and middling ones moved fast, endurance to"
    " light ones moved often. For size the load hardly decides; a handbook stops at 85 %, since beyond it few"
    " repetitions are left.",
    sources=("acsm-2026-load", "nsca-zones", "peterson-2005", "fragala-2019"),
    options=(
        Option(
            "strength from",
            80,
            "percent of the best lift",
            "80 % and more: ACSM 2026, read second-hand; 60 % for novices: Peterson and others 2005, from"
            " memory",
            by=(({"level": "novice"}, 60),),
        ),
        Condition("grown up", 18, "years, below which no load is too light", "common practice"),
        Option("strength from when older", 70, "percent of the best lift", "fragala-2019"),
        Condition(
            "older",
            65,
            "years",
            "common practice, no source: the age from which health guidelines speak of older adults",
        ),
        Option("power from", 30, "percent of the best lift", "acsm-2026-load"),
        Option("power to", 70, "percent of the best lift", "acsm-2026-load"),
        Option("endurance to", 67, "percent of the best lift", "nsca-zones"),
        Option("size to", 85, "percent of the best lift", "nsca-zones"),
    ),
    stands_back=("rehabilitation",),
    asks=True,
    needs=("load",),
)
def load_outside_zone(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Main lifts whose loads never come into the zone of the goal.

    Takes the heaviest and lightest load of each main lift in % of the best lift over the typical weeks (as
    written, from a best lift on file, or from an RM; the weeks before an event count for the heaviest): of
    the priorities where they name any, else of squats, hinges and presses; for power, of loaded jumps and
    throws. For strength wants 80 % or more (60 % for novices, 70 % at 65 and over) from one of them: the
    others may be there for volume, speed or variety. Wants fast loads within 30-70 %, and a lightest load of
    at most 67 % for endurance and 85 % for size. Names three lifts at most. Silent for general health, in
    season, where no load is known, for a lift some of whose hard work goes by feel or that took another's
    place with its percentage, on what is too light for under-18s, where an effort stands beside the load,
    which then goes by that, and on lifts that are only trained fast.

    Flags:
        programme: Press
        goal: strength
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 5, reps: 5, load: 70 %}  # <- here
              - {exercise: overhead press, sets: 3, reps: 5, load: 65 %}
              - {exercise: bent-over row, sets: 3, reps: 8, load: 60 %}

    Passes:
        programme: Press
        goal: strength
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 5, reps: 5, load: 80 %}
              - {exercise: overhead press, sets: 3, reps: 5, load: 65 %}
              - {exercise: bent-over row, sets: 3, reps: 8, load: 60 %}
    """
    lifts, goal = _main_lifts(ledger), ledger.programme.goal
    least, most = _zone(ledger, limits)
    number = len(ledger.weeks)
    low = _below(lifts, goal, limits.number(least)) if least else []
    high = [lift for lift in lifts if most and lift.known and lift.span.low > limits.number(most)]
    if low:
        yield _outside(low, goal, "below", least, limits, number)
    if high:
        yield _outside(high, goal, "above", most, limits, number)


def _below(lifts: list[_MainLift], goal: str, least: float) -> list[_MainLift]:
    """The lifts that are too light, the heaviest first.

    For power each by itself; for strength all, where none is heavy enough, or may be.
    """
    low = [lift for lift in lifts if lift.known and lift.span.high < least]
    if goal != "power" and len(low) < len(lifts):
        return []
    return sorted(low, key=lambda lift: -lift.span.high)


def _outside(
    lifts: list[_MainLift], goal: str, side: str, limit: str, limits: Limits, number: int
) -> DraftFinding:
    """The finding on lifts that stay below or above the zone, with its weeks if these are not all."""
    weeks = tuple(sorted({week for lift in lifts for week in lift.weeks}))
    if side == "below":
        ends = [f"{lift.entry.name} up to {plain(round(lift.span.high, 1))} %" for lift in lifts]
        end = lifts[0].span.high
        off, wanted = "light", "{:%} or more"
        change = "Go heavier when the lifter is ready"
    else:
        ends = [f"{lift.entry.name} from {plain(round(lift.span.low, 1))} %" for lift in lifts]
        end = lifts[0].span.low
        off, wanted = "heavy", "{:%} or less"
        change = "Go lighter in some sets"
    return found(
        lifts[0].place,
        f"Too {off} for {goal}: {first_of(ends)}.",
        wanted=limits.words(wanted, limit),
        change=f"{change}, or correct the goal.",
        where=line_name(lifts[0].entry.prescription),
        amount=Amount(end, limits.number(limit), "%"),
        weeks=weeks if len(weeks) < number else (),
        related=tuple(Related(lift.place, line_name(lift.entry.prescription)) for lift in lifts[1:]),
    )


def _zone(ledger: Ledger, limits: Limits) -> tuple[str, str]:
    """The limits between which a goal's work lies, by name; empty where there is none."""
    goal, age = ledger.programme.goal, ledger.athlete.age if ledger.athlete else None
    if goal == "strength":
        if age is not None and age < limits.number("grown up"):
            return "", ""
        older = age is not None and age >= limits.number("older")
        either = ("strength from", "strength from when older") if older else ("strength from",)
        return min(either, key=limits.number), ""
    if goal == "power":
        return "power from", "power to"
    return "", {"muscular endurance": "endurance to", "hypertrophy": "size to"}.get(goal, "")


class _MainLift:
    """A main lift and its loads over the weeks, from the lightest to the heaviest, in % of the best lift.

    ``known`` says whether all of its hard work has a load that is known; else it may be lighter or heavier.
    """

    def __init__(self, entry: SetGroup, span: Range) -> None:
        self.entry = entry
        self.known = True
        self.place = entry.work.places["load"]
        self.span = span
        self.weeks: list[int] = []

    def also(self, span: Range, week: int) -> None:
        self.weeks.append(week)
        self.span = Range(min(self.span.low, span.low), max(self.span.high, span.high))


def _main_lifts(ledger: Ledger) -> list[_MainLift]:
    """The lifts whose loads are held against the zone, in the order of the programme.

    Weeks before an event, and tests, are as heavy as it gets: they count for the heaviest load alone.
    """
    lifts: dict[Exercise, _MainLift] = {}
    by_feel: set[Exercise] = set()
    slow: set[Exercise] = set()
    for week in sorted(ledger.weeks, key=lambda week: week.is_peak):
        if not week.is_typical() or week.phase in ("return", "in-season") or week.rehabilitation:
            continue
        for _, entry in week.entries():
            exercise, span = entry.exercise, entry.percent
            if exercise is None or not _serves_goal(entry, exercise):
                continue
            if week.is_peak and (exercise not in lifts or span is None):
                continue
            if span is not None and not is_of_another(entry):
                lift = lifts.setdefault(exercise, _MainLift(entry, span))
                lift.also(
                    Range(max(span.low, lift.span.low), span.high) if week.is_peak else span, week.number
                )
            elif entry.hard and entry.sets.high:
                by_feel.add(exercise)
            if entry.stated_effort:
                by_feel.add(exercise)
            if entry.sets.high and not _is_for_speed(entry):
                slow.add(exercise)
    lifts = {exercise: lift for exercise, lift in lifts.items() if exercise in slow}
    if ledger.programme.goal == "strength" and any(
        exercise.pattern in BIG and exercise not in lifts for exercise in by_feel
    ):
        return []  # that one may be heavy
    for exercise in by_feel.intersection(lifts):
        lifts[exercise].known = False
    named = [lift for exercise, lift in lifts.items() if _is_priority(ledger, exercise)]
    big = [lift for exercise, lift in lifts.items() if exercise.pattern in BIG]
    return named or big or list(lifts.values())


def _is_for_speed(entry: SetGroup) -> bool:
    """Whether its session, or a word beside the line, says that it is done fast."""
    line = entry.prescription
    return says(FAST_WORDS, line.session.name, line.note, line.cue)


def _serves_goal(entry: SetGroup, exercise: Exercise) -> bool:
    """Whether an exercise is of the kind that the goal's zone is about."""
    if entry.programme.goal == "power":
        return exercise.pattern in THROWN
    return exercise.kind == "dynamic" and exercise.capacity == "heavy" and entry.compound


def _is_priority(ledger: Ledger, exercise: Exercise) -> bool:
    return any(
        ledger.known.exercise(term.words) is exercise or credit(exercise, term.words) == 1.0
        for term in ledger.programme.priority
    )
