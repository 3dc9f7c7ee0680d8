"""Steps in endurance work from week to week."""

from __future__ import annotations

from math import inf

from ..lint.body.names import fold, words
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.model.quantities import NOTHING
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
            most, now = max((sum(one.values()) for one in before), default=inf), sum(amounts.values())
            least = limits.number("metres more") if unit == METRES else 60 * limits.number("minutes more")
            is_far = now > limits.number("times") * most and now - most >= least
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
            each = work.distance or work.timed or NOTHING
            brought = kinds.setdefault(what, {}).setdefault(unit, {})
            brought[entry] = brought.get(entry, 0.0) + work.sets.high * each.high
    return {
        (what, unit): amounts
        for what, units in kinds.items()
        for unit, amounts in units.items()
        if len(units) == 1
    }


def _kind_of(entry: SetGroup, header: ProgrammeHeader) -> str:
    """The kind of endurance work that a line holds, in words; empty for lifts and own choices."""
    name, known = entry.name, header.known
    exercise = known.exercise(name)
    if entry.prescription.kind == "intervals":
        from ..lint.counting.endurance import endurance_named

        named = endurance_named(name, known)
        return named.name if named else "" if exercise else " ".join(words(name))
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


@rule(
    "circuit-step-large",
    family="progression",
    severity="note",
    confidence="common practice",
    why="More rounds, longer work and shorter rest each make a circuit harder; all at once come to several"
    " times the work. None of our sources sets a limit.",
    sources=(),
    options=(
        Option("times", 1.75, "times the work of the fullest week before", "common practice, no source"),
        Condition("weeks back", 4, "weeks in which the fullest is looked for", "common practice"),
        Condition("weeks", 2, "weeks with the circuit that go before", "common practice"),
        Condition("minutes more", 3, "minutes of work more from which a step is told", "common practice"),
    ),
    stands_back=("rehabilitation",),
)
def circuit_step_large(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A circuit or intervals of so many seconds that grow far while the rest gets shorter.

    Multiplies rounds and seconds of work of all stations, in each session by itself, and compares them with
    the most of the four weeks before in which the session holds these stations, if it has been held in two.
    Speaks where it is more than 1.75 times as much, and 3 minutes more, while the rest between stations is
    shorter than in any of them.

    Flags:
        programme: Fit
        weeks: 3
        sessions:
          - session: Circuit
            exercises:
              - circuit:
                  rounds: {1-2: 3, 3: 6}  # <- here
                  on: {1-2: 30 s, 3: 45 s}
                  off: {1-2: 30 s, 3: 15 s}
                  exercises: [{exercise: step-up}, {exercise: push-up}]

    Passes:
        programme: Fit
        weeks: 3
        sessions:
          - session: Circuit
            exercises:
              - circuit:
                  rounds: {1-2: 3, 3: 4}
                  on: {1-2: 30 s, 3: 35 s}
                  off: {1-2: 30 s, 3: 25 s}
                  exercises: [{exercise: step-up}, {exercise: push-up}]
    """
    back = int(limits.number("weeks back"))
    weeks = [_rounds_of(week) for week in ledger.weeks]
    for number, circuits in enumerate(weeks):
        grown = []
        for name, now in circuits.items():
            before = [one[name] for one in weeks[max(number - back, 0) : number] if name in one]
            if len(before) < limits.number("weeks"):
                continue
            fullest = max(before, key=lambda one: one.work)
            is_far = now.work > limits.number("times") * fullest.work
            is_more = now.work - fullest.work >= 60 * limits.number("minutes more")
            if is_far and is_more and now.rest < min(one.rest for one in before):
                grown.append((now, fullest))
        if grown:
            yield _jumped(max(grown, key=lambda one: one[0].work / one[1].work), ledger.weeks[number], limits)


class _Ring:
    """The stations of a circuit, or the intervals, of a session: seconds of work in all, and of rest each."""

    def __init__(self, entries: list[SetGroup], rest: float) -> None:
        self.entries = entries
        self.rest = rest
        self.shares = {one: _seconds(one) for one in entries}
        self.work = sum(self.shares.values())

    @property
    def words(self) -> str:
        """``6 x 45 s with 15 s off``."""
        one = self.entries[0]
        assert one.work.timed is not None
        assert one.work.sets is not None
        return f"{plain(one.work.sets.high)} x {plain(one.work.timed.high)} s with {plain(self.rest)} s off"


def _rounds_of(week: Week) -> dict[tuple[str, ...], _Ring]:
    """The circuits and intervals of a week by session and stations, where rest is written."""
    found_in: dict[tuple[str, ...], list[SetGroup]] = {}
    for visit in {visit.session: visit for visit in reversed(week.visits)}.values():
        stations: dict[object, list[SetGroup]] = {}
        for entry in visit.own:
            paired = entry.prescription.paired
            if _seconds(entry):
                stations.setdefault(paired or entry.prescription, []).append(entry)
        for entries in stations.values():
            found_in[(visit.session.name, *(fold(one.name) for one in entries))] = entries
    return {
        name: _Ring(entries, rest)
        for name, entries in found_in.items()
        if (rest := _rest_between(entries[0])) is not None
    }


def _seconds(entry: SetGroup) -> float:
    """Seconds of work of a station or of intervals; 0 where no rounds or no seconds are written."""
    rounds, each = entry.work.sets or NOTHING, entry.work.timed or NOTHING
    return rounds.high * each.high


def _rest_between(entry: SetGroup) -> float | None:
    """Seconds of rest after each station or interval; None where none is written."""
    paired = entry.prescription.paired
    clock = paired.clock if paired else None
    rest = clock.off if clock else entry.work.rest
    return rest.high if rest is not None else None


def _jumped(grown: tuple[_Ring, _Ring], week: Week, limits: Limits) -> DraftFinding:
    now, most = grown
    line = now.entries[0].prescription
    return found(
        now.entries[0].work.places.get("sets", line.place),
        f"{line.session.name}: {now.words}, {plain(round(now.work / most.work, 1))} times the work"
        f" of {most.words}.",
        wanted=limits.words("at most {} times as much", "times"),
        change="Raise one at a time: rounds, work or rest.",
        where=line_name(line),
        subject="circuit",
        amount=Amount(now.work / 60, limits.number("times") * most.work / 60, "min"),
        related=tuple(
            Related(
                one.prescription.place,
                f"{line_name(one.prescription)}: {plain(minutes)} min",
                share=(minutes, minutes),
            )
            for one, minutes in ((one, seconds / 60) for one, seconds in now.shares.items())
        ),
        weeks=(week.number,),
        excess=now.work / most.work,
    )
