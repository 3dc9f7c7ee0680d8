"""Steps in endurance work from week to week."""

from __future__ import annotations

from ..lint.body.names import fold
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import plain
from .shared import capital

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.header import ProgrammeHeader
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding

    Amounts = dict[SetGroup, float]

METRES, SECONDS = "metres", "seconds"
UNITS = {METRES: (1000, "km"), SECONDS: (60, "min")}
"""What is counted, with how much of it makes one of the unit in which it is told."""


@rule(
    "endurance-step-large",
    family="progression",
    severity="note",
    confidence="common practice",
    why="One rehabilitation plan lets running distance rise by 20 % a week at most. None of our sources sets"
    " a limit for others; twice as much at once is what coaches would look at again.",
    sources=("alfredson-step",),
    options=(
        Option("times", 2, "times the most of the weeks before", "common practice, no source"),
        Option("weeks back", 4, "weeks in which the most is looked for", "common practice"),
        Condition("metres more", 2000, "metres more from which a step is told", "common practice"),
        Condition("minutes more", 15, "minutes more from which a step is told", "common practice"),
    ),
)
def endurance_step_large(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Running, rowing or riding that comes to far more in a week than before.

    Adds up the distance, or the time, of the lines and intervals of each kind of endurance work in a week,
    and compares it with the most of the four weeks before that hold any. Wants no more than twice that,
    where it is 2 km or 15 minutes more. Distance is compared with distance, time with time. A week that
    holds an event is left alone, and so are activities.

    Flags:
        programme: Rowers
        weeks: 3
        sessions:
          - session: Row
            exercises:
              - intervals: rowing machine
                rounds: 5
                distance: {1-2: 500 m, 3: 2000 m}  # <- here

    Passes:
        programme: Rowers
        weeks: 3
        sessions:
          - session: Row
            exercises:
              - intervals: rowing machine
                rounds: 5
                distance: {1-2: 500 m, 3: 750 m}
    """
    events = {(day - 1) // 7 + 1 for day, _ in ledger.events()}
    weeks = [_amounts(week, ledger.header) for week in ledger.weeks]
    back = int(limits.number("weeks back"))
    for number, kinds in enumerate(weeks):
        for (what, unit), amounts in kinds.items():
            before = [one[what, unit] for one in weeks[max(number - back, 0) : number] if (what, unit) in one]
            most, now = max((sum(one.values()) for one in before), default=0.0), sum(amounts.values())
            least = limits.number("metres more") if unit == METRES else 60 * limits.number("minutes more")
            is_far = most > 0 and now > limits.number("times") * most and now - most >= least
            if is_far and number + 1 not in events:
                yield _grown(what, unit, amounts, most, ledger.weeks[number], limits)


def _amounts(week: Week, header: ProgrammeHeader) -> dict[tuple[str, str], Amounts]:
    """What the lines of a week bring of each kind of endurance work: its metres, or else its seconds.

    A kind of which one line says metres and another only a time is left out: it adds up to neither.
    """
    kinds: dict[str, dict[str, Amounts]] = {}
    for _, entry in week.entries():
        what, work = _kind_of(entry, header), entry.work
        if what and work.sets is not None and work.sets.high > 0:
            unit = METRES if work.distance else SECONDS if work.timed else ""
            each = work.distance or work.timed
            brought = kinds.setdefault(what, {}).setdefault(unit, {})
            brought[entry] = brought.get(entry, 0.0) + (work.sets.high * each.high if each else 0.0)
    return {
        (what, unit): amounts
        for what, units in kinds.items()
        for unit, amounts in units.items()
        if unit and len(units) == 1
    }


def _kind_of(entry: SetGroup, header: ProgrammeHeader) -> str:
    """The kind of endurance work that a line holds, in words; empty for lifts and own choices."""
    name, known = entry.name, header.known
    exercise = known.exercise(name)
    if entry.prescription.kind == "intervals":
        from ..lint.counting.endurance import endurance_named

        named = endurance_named(name, known)
        return named.name if named else "" if exercise else fold(name)
    return exercise.name if exercise is not None and exercise.kind == "endurance" else ""


def _grown(what: str, unit: str, amounts: Amounts, most: float, week: Week, limits: Limits) -> DraftFinding:
    makes, words = UNITS[unit]
    entry = max(amounts, key=lambda one: amounts[one])
    now, was = (f"{plain(number / makes)} {words}" for number in (sum(amounts.values()), most))
    key = next((key for key in ("distance", "timed", "sets") if key in entry.work.places), "exercise")
    return found(
        entry.work.places.get(key, entry.prescription.place),
        f"{capital(what)} comes to {now} in the week, {was} at most before.",
        wanted=limits.words("at most {} times as much as in the last {:week}", "times", "weeks back"),
        change="Build it up more slowly, or correct a slip.",
        where=line_name(entry.prescription),
        group=what,
        amount=Amount(sum(amounts.values()) / makes, limits.number("times") * most / makes, words),
        related=tuple(
            Related(
                one.prescription.place,
                f"{line_name(one.prescription)}: {plain(amount / makes)} {words}",
                share=(amount / makes, amount / makes),
            )
            for one, amount in amounts.items()
        ),
        weeks=(week.number,),
        excess=sum(amounts.values()) / most,
    )
