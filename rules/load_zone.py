"""Loads of the main lifts against the zone of the goal."""

from __future__ import annotations

from ..lint.counting.credits import credit
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Related, found
from ..lint.model.naming import line_name
from ..lint.model.quantities import Range
from ..lint.wording.words import first_of, plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding

THROWN = ("jump", "throw")
"""Patterns of loaded fast work to which the zone for power applies; Olympic lifts are done heavier."""


# Loads and the goal


@rule(
    "load-outside-zone",
    family="load",
    severity="note",
    confidence="guideline",
    why="Strength answers best to heavy loads, power to light and middling ones moved fast, endurance to"
    " light ones moved often. For size the load does not decide, so nothing is said there.",
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
    ),
    stands_back=("rehabilitation",),
)
def load_outside_zone(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Loads of the main lifts that never come into the zone of the goal.

    Takes each main lift's heaviest and lightest load in % of the best lift over the typical weeks (as
    written, from a best lift on file, or from an RM) and averages them over the lifts: the priorities where
    they name any, else the big ones; for power, loaded jumps and throws. Wants the heaviest to average 80 %
    or more for strength (60 % for novices, 70 % at 65 and over), fast loads within 30-70 %, and the lightest
    at most 67 % for endurance. Silent for size and general health, and where no load is known.

    Flags:
        programme: Press
        goal: strength
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 5, reps: 5, load: 70 %}  # <- here
              - {exercise: overhead press, sets: 3, reps: 5, load: 75 %}

    Passes:
        programme: Press
        goal: strength
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 5, reps: 5, load: 85 %}
              - {exercise: overhead press, sets: 3, reps: 5, load: 75 %}
    """
    lifts = _main_lifts(ledger)
    if not lifts:
        return
    least, most = _zone(ledger, limits)
    heaviest = sum(lift.span.high for lift in lifts) / len(lifts)
    lightest = sum(lift.span.low for lift in lifts) / len(lifts)
    if least and heaviest < limits.number(least):
        loads, average = [lift.span.high for lift in lifts], heaviest
        limit, wanted = least, "{:%} or more"
        end, change = "Heaviest", "Make some of the work heavier, if the lifter is ready for it"
    elif most and lightest > limits.number(most):
        loads, average = [lift.span.low for lift in lifts], lightest
        limit, wanted = most, "{:%} or less"
        end, change = "Lightest", "Make some of the work lighter"
    else:
        return
    named = [f"{lift.entry.name} {plain(round(load, 1))} %" for lift, load in zip(lifts, loads, strict=True)]
    on_average = f"; {plain(round(average, 1))} % on average" if len(lifts) > 1 else ""
    yield found(
        lifts[0].place,
        f"{end} loads of the main lifts: {first_of(named)}{on_average}.",
        wanted=limits.words(f"{wanted} for {ledger.programme.goal}", limit),
        change=f"{change}, or name the goal that these weeks serve.",
        where=line_name(lifts[0].entry.prescription),
        related=tuple(Related(lift.place, line_name(lift.entry.prescription)) for lift in lifts[1:]),
    )


def _zone(ledger: Ledger, limits: Limits) -> tuple[str, str]:
    """The limits between which a goal's work lies, by name; empty where there is none."""
    goal, age = ledger.programme.goal, ledger.athlete.age if ledger.athlete else None
    if goal == "strength":
        older = age is not None and age >= limits.number("older")
        either = ("strength from", "strength from when older") if older else ("strength from",)
        return min(either, key=limits.number), ""
    if goal == "power":
        return "power from", "power to"
    return "", "endurance to" if goal == "muscular endurance" else ""


class _MainLift:
    """A main lift and its loads over the weeks, from the lightest to the heaviest, in % of the best lift."""

    def __init__(self, entry: SetGroup, span: Range) -> None:
        self.entry = entry
        self.place = entry.work.places["load"]
        self.span = span

    def also(self, span: Range) -> None:
        self.span = Range(min(self.span.low, span.low), max(self.span.high, span.high))


def _main_lifts(ledger: Ledger) -> list[_MainLift]:
    """The lifts whose loads are held against the zone, in the order of the programme."""
    lifts: dict[Exercise, _MainLift] = {}
    for week in ledger.typical_weeks():
        if week.phase == "return":
            continue
        for _, entry in week.entries():
            exercise, span = entry.exercise, entry.percent
            if exercise is not None and span is not None and _serves_goal(entry, exercise):
                lifts.setdefault(exercise, _MainLift(entry, span)).also(span)
    named = [lift for exercise, lift in lifts.items() if _is_priority(ledger, exercise)]
    return named or list(lifts.values())


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
