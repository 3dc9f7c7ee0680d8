"""Weeks in which most lifts do several times the work."""

from __future__ import annotations

from ..lint.counting.change import PartChange, weeks_of_lines
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import counted_noun, plain, sets_of
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
        Option(
            "times",
            2.5,
            "times the work of the fullest week before, on average",
            "common practice, no source",
        ),
        Condition("weeks back", 4, "weeks in which the fullest is looked for", "common practice"),
        Condition("weeks", 2, "weeks with the lift that go before", "common practice"),
        Condition("lifts", 2, "lifts at least that grow in sets and load", "common practice"),
        Condition("rounds", 2, "times the sets of a line that is no dose of a muscle", "common practice"),
        Condition("rounds more", 4, "sets more of such a line from which a leap is told", "common practice"),
    ),
    stands_back=("rehabilitation",),
)
def work_step_large(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A week in which the loaded lifts grow in sets and load to several times the work.

    Multiplies the sets, repetitions and load of each line, and compares it with the fullest of the four weeks
    before that hold it, if two do. Speaks where the lines come to more than 2.5 times the work on average,
    two of them by more sets at a higher load than in any of the weeks; or where a climb, a carry or the like
    holds more than twice the sets, and 4 more. Silent in a phase of tests.

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
    lines = ledger.recall(weeks_of_lines, ledger.weeks)
    back = int(limits.number("weeks back"))
    by_week = [{week.number: one for week, one in line} for line in lines]
    for week in ledger.weeks:
        if week.phase == "test":
            continue
        known, leaps = [], []
        before = range(week.number - back, week.number)
        for held in by_week:
            now = held.get(week.number)
            if now is None or (now.work.load is None and _is_a_dose(now)):
                continue
            earlier = [held[number] for number in before if number in held]
            if len(earlier) < limits.number("weeks"):
                continue
            known += _growth(earlier, now)
            leaps += [(now, earlier)] if _leaps(earlier, now, limits) else []
        for now, earlier in leaps:
            yield _leapt(now, earlier, week, limits)
        grown = [one for one in known if one.in_both]
        most = limits.number("times")
        if len(grown) >= limits.number("lifts") and sum(one.times for one in known) > most * len(known):
            yield _jumped(grown, week, limits)


def _is_a_dose(entry: SetGroup) -> bool:
    """Whether its sets are a dose of a muscle, which is counted by the muscle."""
    return entry.hard and entry.work.timed is None and entry.work.distance is None


def _leaps(earlier: list[SetGroup], now: SetGroup, limits: Limits) -> bool:
    """Whether a line that is no dose of a muscle holds far more sets than in any week before."""
    if _is_a_dose(now):
        return False
    most = max(one.sets.high for one in earlier)
    return now.sets.low > limits.number("rounds") * most and now.sets.low - most >= limits.number(
        "rounds more"
    )


def _leapt(now: SetGroup, earlier: list[SetGroup], week: Week, limits: Limits) -> DraftFinding:
    most = max(one.sets.high for one in earlier)
    return found(
        now.work.places.get("sets", now.prescription.place),
        f"{now.name} leaps to {plain(now.sets.middle)} sets, at most {plain(most)} in the weeks before.",
        wanted=limits.words("at most {} times as many", "rounds"),
        change="Add fewer at a time, or correct a slip.",
        where=line_name(now.prescription),
        subject=f"sets leap: {line_name(now.prescription)}",
        weeks=(week.number,),
        amount=Amount(now.sets.middle, most * limits.number("rounds")),
        line=now.prescription.place,
        excess=now.sets.middle / most,
    )


class _Fuller:
    """How many times the work of its fullest week before a line holds; ``in_both``: by more sets and load."""

    def __init__(self, times: float, before: SetGroup, now: SetGroup, *, in_both: bool) -> None:
        self.times = times
        self.before = before
        self.now = now
        self.in_both = in_both


def _growth(earlier: list[SetGroup], now: SetGroup) -> list[_Fuller]:
    """The growth of a line over the fullest of some weeks; none where it cannot be known."""
    grown = []
    for before in earlier:
        part = PartChange([before], [now])
        load, repetitions = part.load, part.repetitions
        if load is None or repetitions is None:
            return []
        both = now.sets.middle > before.sets.middle and load > 100
        grown.append(_Fuller(load / 100 * repetitions / 100, before, now, in_both=both))
    least = min(grown, key=lambda one: one.times)
    return [_Fuller(least.times, least.before, now, in_both=all(one.in_both for one in grown))]


def _jumped(grown: list[_Fuller], week: Week, limits: Limits) -> DraftFinding:
    worst = max(grown, key=lambda one: one.times)
    now = worst.now
    return found(
        now.work.places.get("sets", now.prescription.place),
        f"More sets and load at once: {now.name} {_dose(now)} after {_dose(worst.before)}{_like(grown)}.",
        wanted=limits.words("at most {} times the work", "times"),
        change="Add the sets first, the load in later weeks.",
        where=line_name(now.prescription),
        weeks=(week.number,),
        amount=Amount(round(worst.times, 2), limits.number("times")),
        line=now.prescription.place,
        related=tuple(
            Related(
                one.now.work.places.get("sets", one.now.prescription.place),
                f"{one.now.name}: {_dose(one.now)}",
            )
            for one in grown
            if one is not worst
        ),
        excess=worst.times,
    )


def _like(grown: list[_Fuller]) -> str:
    """``; 2 lifts more``."""
    return f"; {counted_noun(len(grown) - 1, 'lift')} more" if len(grown) > 1 else ""


def _dose(entry: SetGroup) -> str:
    """``4 sets at 60 kg``."""
    return f"{sets_of(plain(entry.sets.middle))} at {load_in_words(entry.work).words}"
