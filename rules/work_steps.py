"""Weeks in which most lifts do several times the work."""

from __future__ import annotations

from ..lint.counting.change import PartChange, weeks_of_lines
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of, plain, sets_of
from .load_steps import load_in_words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


@rule(
    "work-step-large",
    family="progression",
    severity="note",
    confidence="common practice",
    why="Who adds sets adds no load in the same week, as a rule, and the other way round: both at once come"
    " to several times the work. None of our sources sets a limit.",
    sources=(),
    options=(
        Option("times", 2.5, "times the work of a lift's fullest week before", "common practice, no source"),
        Condition("weeks back", 4, "weeks in which the fullest is looked for", "common practice"),
        Condition("weeks", 2, "weeks with the lift that go before", "common practice"),
        Condition("lifts", 2, "lifts at least that grow so far, and half of those loaded", "common practice"),
    ),
    stands_back=("rehabilitation",),
    needs=("load",),
)
def work_step_large(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A week in which half of the loaded lifts grow in sets and load to several times the work.

    Multiplies the sets, repetitions and load of each line, and compares it with each of the four weeks
    before that hold it, if two do. Speaks where it holds more sets at a higher load than in any of them, and
    2.5 times the work of the fullest, on two lifts and on half of those with a load. Silent in a phase of
    tests.

    Flags:
        programme: Start
        weeks: 3
        sessions:
          - session: Gym
            exercises:
              - exercise: leg press
                reps: 10
                load: {1-2: 40 kg, 3: 60 kg}
                sets: {1-2: 2, 3: 4}  # <- here
              - {exercise: machine row, reps: 10, load: {1-2: 20 kg, 3: 30 kg}, sets: {1-2: 2, 3: 4}}

    Passes:
        programme: Start
        weeks: 3
        sessions:
          - session: Gym
            exercises:
              - exercise: leg press
                reps: 10
                load: {1-2: 40 kg, 3: 45 kg}
                sets: {1-2: 2, 3: 4}
              - {exercise: machine row, reps: 10, load: {1-2: 20 kg, 3: 22.5 kg}, sets: {1-2: 2, 3: 4}}
    """
    lines = weeks_of_lines(ledger.weeks)
    back = int(limits.number("weeks back"))
    for week in ledger.weeks:
        if week.phase == "test":
            continue
        grown, loaded = [], 0
        for line in lines:
            earlier = [one for at, one in line if week.number - back <= at.number < week.number]
            now = next((one for at, one in line if at is week), None)
            if now is None or not now.measured or not now.work.load or len(earlier) < limits.number("weeks"):
                continue
            loaded += 1
            least = _least_growth(earlier, now)
            if least is not None and least[0] > limits.number("times"):
                grown.append((*least, now))
        if len(grown) >= limits.number("lifts") and 2 * len(grown) >= loaded:
            yield _jumped(grown, week, limits)


def _least_growth(earlier: list[SetGroup], now: SetGroup) -> tuple[float, SetGroup] | None:
    """How many times the work of its fullest week a line comes to, and its sets of that week.

    None where it cannot be known, or it holds no more sets or no more load than in one of the weeks.
    """
    times = []
    for before in earlier:
        part = PartChange([before], [now])
        sets, load, repetitions = part.sets, part.load, part.repetitions
        if sets is None or load is None or repetitions is None or sets <= 100 or load <= 100:
            return None
        times.append((load * repetitions / 10_000, before))
    return min(times, key=lambda one: one[0])


def _jumped(grown: list[tuple[float, SetGroup, SetGroup]], week: Week, limits: Limits) -> DraftFinding:
    times, before, now = max(grown, key=lambda one: one[0])
    return found(
        now.work.places.get("sets", now.prescription.place),
        f"More sets and more load at once: {first_of([one.name for _, _, one in grown])}; {now.name}"
        f" {_dose(now)}, after {_dose(before)}.",
        wanted=limits.words("at most {} times the work", "times"),
        change="Add the sets first and the load in later weeks, or the other way round.",
        where=line_name(now.prescription),
        weeks=(week.number,),
        amount=Amount(round(times, 2), limits.number("times")),
        line=now.prescription.place,
        related=tuple(
            Related(one.work.places.get("sets", one.prescription.place), f"{one.name}: {_dose(one)}")
            for _, _, one in grown
            if one is not now
        ),
        excess=times,
    )


def _dose(entry: SetGroup) -> str:
    """``4 sets at 60 kg``."""
    return f"{sets_of(plain(entry.sets.middle))} at {load_in_words(entry.work).words}"
