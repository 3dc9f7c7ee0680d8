"""Weekly sets of the lifts that a programme is for."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.counting.counts import counted_lines
from ..lint.counting.effort import NO_LIFTS
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import line_name
from ..lint.wording.words import counted_noun, plain, week_list
from .offers import in_one_edit, writing
from .shared import unless

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.tally import Tally
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.text.places import Place
    from .offers import Offer


@rule(
    "lift-sets-under-floor",
    family="dose",
    severity="note",
    confidence="meta-analysis",
    why="One set of a lift, one to three times a week, raised the best lifts of trained men; with less than"
    " about one set a week trials can hardly measure a gain. That is a limit of what they can measure,"
    " none that the body sets.",
    sources=("androulakis-2020", "pelland-2026-min"),
    options=(
        Option("least", 1, "hard sets a week of a lift and its close variants", "pelland-2026-min"),
        Condition(
            "heavy",
            70,
            "% of the best lift from which any set counts",
            "the least load of the trials in Androulakis-Korakakis and others 2020; that fewer repetitions"
            " count, too, is common practice, no source",
        ),
    ),
    stands_back=("rehabilitation", "peak"),
)
def lift_sets_under_floor(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A lift that the programme is for gets less than one hard set a week.

    In programmes for strength it looks at lifts among the priorities, and at lifts with a best on file that
    are loaded in percent. Counts hard sets of the lift and its close variants (the same movement with the
    same implement, or the next easier or harder form) over all typical weeks, and their sets from 70 %
    of the best lift, be they hard or not; wants 1 a week on average, judged on the low end of a range. Silent
    where a set a week is written in % of the best lift, however light: that is meant. It never advises less.

    Flags:
        programme: Singles
        goal: strength
        priority: [deadlift]
        weeks: 3
        sessions:
          - session: Pull
            exercises:
              - {exercise: deadlift, sets: {1: 2, 2-3: 0}, reps: 3}  # <- here

    Passes:
        programme: Singles
        goal: strength
        priority: [deadlift]
        weeks: 3
        sessions:
          - session: Pull
            exercises:
              - {exercise: deadlift, sets: {1: 2, 2: 0, 3: 1}, reps: 3}
    """
    weeks = ledger.typical_weeks()
    if ledger.programme.goal != "strength" or not weeks:
        return
    typical, least = ledger.of_weeks(weeks), limits.number("least")
    for lift, (name, place) in main_lifts(ledger).items():
        sets = of_lift(typical, lift, limits)
        average = sets.low / len(weeks)
        if average >= least or typical.leaves_open(lift.actions):
            continue
        if is_light_on_purpose(typical, lift, len(weeks), limits):
            continue
        line = sets.lines()[0][0] if sets.parts else None
        yield found(
            line.place if line else place,
            f"{_hard_sets(sets)} of {name} or close variants in {counted_noun(len(weeks), 'week')},"
            f" {plain(average)} a week{unless(typical, lift.actions, does='adds to them')}.",
            wanted=limits.words("at least {} a week", "least"),
            change=f"Add a set in {week_list(_without(weeks, lift, limits))}.",
            where=line_name(line) if line else "priority",
            edits=_given_a_set(ledger, lift),
            group=name,
            amount=Amount(sets.low, least * len(weeks)),
            related=counted_lines(sets),
        )


def _given_a_set(ledger: Ledger, lift: Exercise) -> Offer:
    """A set in each week in which a line of the lift holds none."""
    empty = {
        place.key: place
        for week in ledger.typical_weeks()
        for _, entry in week.entries()
        if entry.exercise is lift and not entry.sets.high and (place := entry.work.places.get("sets"))
    }
    return in_one_edit("add a set in each week that has none", [writing(at, "1") for at in empty.values()])


def main_lifts(ledger: Ledger) -> dict[Exercise, tuple[str, Place]]:
    """Lifts that a programme for strength is about. Work done for speed is none of them: it is never hard."""
    return {lift: named for lift, named in lifts_in_sight(ledger).items() if lift.kind not in NO_LIFTS}


def lifts_in_sight(ledger: Ledger, *, by_others: bool = False) -> dict[Exercise, tuple[str, Place]]:
    """Lifts that a programme is about, as the coach wrote them: priorities, and those loaded in percent of a
    best lift on file; with ``by_others`` also those loaded in percent of another lift.
    """
    named = [
        (ledger.known.exercise(term.words), term.words, term.place)
        for term in ledger.programme.priority
        if not catalogue.is_group(term.words)
    ]
    named += [
        (entry.exercise, entry.name, entry.prescription.place)
        for _, entry in ledger.entries()
        if (load := entry.work.load) is not None
        and ((entry.best and load.kind == "percent") or (by_others and load.kind == "lift"))
    ]
    lifts: dict[Exercise, tuple[str, Place]] = {}
    for lift, words, place in named:
        if lift is not None:
            lifts.setdefault(lift, (words, place))
    return lifts


def of_lift(tally: Tally, lift: Exercise, limits: Limits) -> Count:
    """Hard sets of a lift and its close variants, and heavy ones."""
    least = limits.number("heavy")
    return tally.sets_where(
        lambda entry: (
            entry.exercise is not None
            and entry.exercise.is_close_to(lift)
            and (entry.hard or (entry.percent is not None and entry.percent.low >= least))
        )
    )


def is_light_on_purpose(tally: Tally, lift: Exercise, weeks: int, limits: Limits) -> bool:
    """Whether enough sets a week of a lift and its close variants have a known load, however light."""
    held = tally.sets_where(
        lambda entry: (
            entry.exercise is not None and entry.exercise.is_close_to(lift) and entry.percent is not None
        )
    )
    return held.low / weeks >= limits.number("least")


def _without(weeks: list[Week], lift: Exercise, limits: Limits) -> list[int]:
    """The weeks with fewest sets of a lift: those that have none, where there are any."""
    sets = {week.number: of_lift(week, lift, limits).low for week in weeks}
    return [number for number, count in sets.items() if count == min(sets.values())]


def _hard_sets(count: Count) -> str:
    return counted_noun(str(count), "hard or heavy set")
