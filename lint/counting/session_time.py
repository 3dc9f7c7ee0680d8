"""How long a session takes: work, rest, changing over, warm-up sets and preparation.

The core is the sum printed in one protocol: sets x repetitions x tempo, plus (sets - 1) x rest (loadit).
Added to it is the time to change over to the next exercise, for warm-up sets and for preparation. Every time
is a range, because lifters differ and coaches leave things open.
"""

from __future__ import annotations

import re

from ..model.quantities import NOTHING, Range
from ..model.quantities import tempo as tempo_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from typing import Protocol

    from ..body.catalogue import Exercise, NameReading
    from ..model.pairings import Clock, Pairing
    from ..model.sessions import Prescription, Work
    from ..text.places import Term

    class WorkedUpTo(Protocol):
        """What is needed here of a group of sets."""

        exercise: Exercise | None
        prescription: Prescription

        @property
        def asks_for_ramp_up(self) -> bool:
            """Whether it is worked up to."""


ONE_WAY = Range(1, 2)
"""Seconds of lifting, and of lowering, in one repetition without a stated tempo (acsm-2009)."""

AS_FAST_AS_POSSIBLE = 1.0
"""Seconds of a tempo phase that is written X (common practice, no source)."""

WALKING = Range(0.8, 1.5)
"""Walking speed under load, in metres per second (common practice, no source)."""

RUNNING = Range(1.5, 8)
"""Speed on foot, on a rowing machine or on wheels, in metres per second (common practice, no source)."""

FAR = 200
"""Metres from which a distance is run, rowed or ridden, not carried (common practice, no source)."""

OPEN_SET = Range(20, 45)
"""Seconds of a set if its length is not stated (common practice, no source)."""

REST = {"heavy": Range(120, 300), "light": Range(30, 90)}
"""Seconds of rest if none is stated: 2-5 min for strength, 30-90 s for lighter work (us-pag-2018)."""

REST_OPEN = Range(30, 300)
"""Seconds of rest if neither rest nor repetitions are stated: both ranges above together."""

CHANGE_OVER = Range(60, 180)
"""Seconds from one exercise to the next: loading, walking, setting up (common practice, no source)."""

NEXT_STATION = Range(5, 20)
"""Seconds between exercises of a superset or circuit without stated rest (common practice, no source)."""

WARM_UP_SET = Range(60, 150)
"""Seconds of a warm-up set with its rest (common practice, no source)."""

RAMP_UP = (Range(3, 5), Range(1, 2))
"""Warm-up sets that are assumed where none are written: before the first heavy lift of a session, and before
each further one of another movement (common practice, no source)."""

PREPARATION = Range(300, 600)
"""Seconds of general preparation, and of a cool-down, if a session lists any without saying how long: 5-10
min (handbook convention, from memory)."""


class SessionTime:
    """The time of a session in seconds, each part a range.

    ``work`` is time under load and ``rest`` is rest between sets. ``around`` is changing over, warm-up sets
    and preparation. ``assumed_rest`` is the part of ``rest`` that nobody wrote.
    """

    __slots__ = ("around", "assumed_rest", "rest", "work")

    def __init__(self, work: Range, rest: Range, around: Range, assumed_rest: Range = NOTHING) -> None:
        self.work = work
        self.rest = rest
        self.around = around
        self.assumed_rest = assumed_rest

    @property
    def total(self) -> Range:
        """Seconds of the whole session."""
        return self.work + self.rest + self.around

    def __add__(self, other: SessionTime) -> SessionTime:
        return SessionTime(
            self.work + other.work,
            self.rest + other.rest,
            self.around + other.around,
            self.assumed_rest + other.assumed_rest,
        )


NO_TIME = SessionTime(NOTHING, NOTHING, NOTHING)

Group = tuple["Work", str, "NameReading | None"]
"""A group of sets, its slot (heavy, light or empty), and the reading of its name if that states seconds."""

Line = tuple["Prescription", tuple[Group, ...]]
"""A prescription and its groups of sets in a week."""


def session_time(
    lines: Iterable[Line], *, around: Range = NOTHING, change_over: Range = CHANGE_OVER
) -> SessionTime:
    """The time of a session from its lines, given in order.

    ``around`` is the time of its preparation and its cool-down, ``change_over`` that between exercises, both
    in seconds.
    """
    time = SessionTime(NOTHING, NOTHING, around)
    items = _items(lines)
    for item in items:
        paired = item[0][0].paired
        if paired is None or paired.clock is None:
            time += _item_time(item)
        else:
            time += _clock_time(item, paired.clock, paired.rest) or _capped(_item_time(item), paired.clock)
    return time + _between(items[:-1], change_over)


def seconds_around(parts: Sequence[Term]) -> Range:
    """Seconds of preparation, or of a cool-down: those that its words say, ``5 min bike``.

    Parts that say none may take what is left of the usual time; where no part says any, that is assumed.
    """
    said = _seconds_said(parts)
    if not said:
        return PREPARATION
    known = sum(said, NOTHING)
    is_all = len(parts) <= len(said)
    return known if is_all else Range(known.low, max(known.high, PREPARATION.high))


def seconds_written(parts: Sequence[Term]) -> float:
    """The least seconds that the words of a preparation or of a cool-down say; 0 where they say none."""
    return sum(_seconds_said(parts), NOTHING).low


def _seconds_said(parts: Sequence[Term]) -> list[Range]:
    minutes = [found for one in parts for found in re.findall(_MINUTES, one.words)]
    return [Range(float(low), float(high or low)) * 60 for low, high in minutes]


_MINUTES = (
    r"\b([0-9]{1,3})(?: ?[-\u2013] ?([0-9]{1,3}))? ?(?:min(?:ute)?s?\b|['\u2032\u2019](?!['\u2032\u2019]))"
)


def _between(items: list[list[Line]], change_over: Range) -> SessionTime:
    """The time from each item to the next: the rest that is written after it, else what is assumed."""
    stated = [rest for item in items if (rest := item[-1][0].rest_after) is not None]
    rest = sum(stated, NOTHING)
    return SessionTime(NOTHING, rest, change_over * (len(items) - len(stated)))


def _items(lines: Iterable[Line]) -> list[list[Line]]:
    """Lines joined into items: a superset or circuit is one item, every other line is an item of its own."""
    items: list[list[Line]] = []
    open_pairing: Pairing | None = None
    for line in lines:
        paired = line[0].paired
        if paired is not None and paired is open_pairing:
            items[-1].append(line)
        else:
            items.append([line])
        open_pairing = paired
    return items


def _clock_time(item: list[Line], clock: Clock, rest: Range | None) -> SessionTime | None:
    """The time of a circuit or complex whose clock says how long it takes; None where it does not.

    ``rest`` is that after each round.
    """
    warm_up = sum(((line.warm_up_sets or NOTHING).by(WARM_UP_SET) for line, _ in item), NOTHING)
    if clock.lasts is not None:
        return SessionTime(clock.lasts, NOTHING, warm_up)
    sets = [works[0][0].sets or NOTHING for _, works in item]
    rounds = max(sets, key=lambda one: one.high)
    if clock.every is not None:
        return SessionTime(rounds.by(clock.every), NOTHING, warm_up)
    each = clock.turn or clock.on
    if each is None:
        return None
    stations = sum(sets, NOTHING)
    off = _less(stations, 1).by(clock.off or NOTHING)
    return SessionTime(stations.by(each), off + _less(rounds, 1).by(rest or NOTHING), warm_up)


def _capped(time: SessionTime, clock: Clock) -> SessionTime:
    """The same time, no longer than its cap; where that cuts in, all before it is work."""
    spent = time.work + time.rest
    if clock.cap is None or spent.high <= clock.cap.high:
        return time
    return SessionTime(Range(min(spent.low, clock.cap.high), clock.cap.high), NOTHING, time.around)


def _less(number: Range, by: float) -> Range:
    return Range(max(number.low - by, 0.0), max(number.high - by, 0.0))


def _item_time(item: list[Line]) -> SessionTime:
    time = NO_TIME
    for line, works in item:
        warm_up = (line.warm_up_sets or NOTHING).by(WARM_UP_SET)
        if line.every is not None and line.lasts is not None:
            time += SessionTime(line.lasts, NOTHING, warm_up)
            continue
        work = sum((work_time(work, said) for work, _, said in works), NOTHING)
        rest = _rest_of(line, works)
        assumed = rest if any(work.rest is None for work, _, _ in works) else NOTHING
        time += SessionTime(work, rest, warm_up, assumed)
    return time + SessionTime(NOTHING, _rest_of_rounds(item), NOTHING)


def work_time(work: Work, said: NameReading | None) -> Range:
    """Seconds under load of a group of sets. Work on each side in turn takes twice as long."""
    sets = work.sets or NOTHING
    reps = work.reps.total(sets) if work.reps else None
    hold = (
        work.hold or work.timed or (Range(said.hold, said.hold) if said is not None and said.hold else None)
    )
    if hold is not None:
        seconds = (reps or sets).by(hold)
    elif reps is not None:
        seconds = reps.by(_repetition(work, said))
    elif work.distance is not None:
        speed = RUNNING if work.distance.low >= FAR else WALKING
        seconds = sets.by(Range(work.distance.low / speed.high, work.distance.high / speed.low))
    else:
        seconds = sets.by(OPEN_SET)
    return seconds * 2 if work.side == "each" else seconds


def until_next(paired: Pairing, members: Sequence[Group], own: Group) -> Range:
    """Seconds from a set of one member of a superset to its next: a set of each other, and all rest."""
    rests = (NEXT_STATION if work.rest is None else work.rest for work, _, _ in members)
    others = [(work, said) for work, _, said in members if work is not own[0]]
    between = sum(rests, paired.rest or NOTHING)
    for work, said in others:
        seconds, sets = work_time(work, said), work.sets or NOTHING
        between += Range(seconds.low / max(sets.low, 1.0), seconds.high / max(sets.high, 1.0))
    return between


def set_time(work: Work, said: NameReading | None = None) -> Range | None:
    """Seconds of one set by its tempo, for one side; None if tempo or repetitions are not stated."""
    if not work.reps or (work.tempo is None and (said is None or not said.tempo)):
        return None
    reps = work.reps.a_set()
    return None if reps is None else reps.by(_repetition(work, said))


def _repetition(work: Work, said: NameReading | None) -> Range:
    """Seconds of one repetition: by the line's tempo, else by what the name says, else assumed."""
    tempo = work.tempo
    if tempo is None and said is not None:
        tempo = tempo_of(said.tempo)
    if tempo is not None:
        seconds = sum(AS_FAST_AS_POSSIBLE if phase is None else phase for phase in tempo)
        return Range(seconds, seconds)
    if said is None:
        return ONE_WAY + ONE_WAY
    lowering = Range(said.lowering, said.lowering) if said.lowering else ONE_WAY
    return ONE_WAY + lowering + Range(said.pause, said.pause)


def _rest_of(line: Prescription, works: tuple[Group, ...]) -> Range:
    """The rest after every set of a line except its last."""
    rests = [((work.sets or NOTHING), _rest_after(line, work, slot)) for work, slot, _ in works]
    rest = sum((sets.by(one) for sets, one in rests), NOTHING)
    last = rests[-1][1]
    return Range(max(rest.low - last.low, 0.0), max(rest.high - last.high, 0.0))


def _rest_after(line: Prescription, work: Work, slot: str) -> Range:
    if work.rest is not None:
        return work.rest
    if line.paired is not None and line.paired.kind == "complex":
        return NOTHING  # it goes on with the next lift at once
    return NEXT_STATION if line.paired is not None else REST.get(slot, REST_OPEN)


def _rest_of_rounds(item: list[Line]) -> Range:
    """The rest in a superset or circuit that `_rest_of` does not count.

    `_rest_of` leaves out the rest after the last set of a line. Within a round, though, every member but the
    last is followed by another, so each of them has one rest more. If the superset or circuit states a rest
    of its own, it comes after every round except the last.
    """
    paired = item[0][0].paired
    if paired is None:
        return NOTHING
    between = sum((_rest_after(line, *works[-1][:2]) for line, works in item[:-1]), NOTHING)
    rounds = max(((works[0][0].sets or NOTHING) for _, works in item), key=lambda sets: sets.high)
    rest = paired.rest
    if rest is None and paired.kind == "complex":
        rest = REST.get(item[0][1][0][1], REST_OPEN)
    if rest is None:
        return between
    return between + Range(max(rounds.low - 1, 0.0) * rest.low, max(rounds.high - 1, 0.0) * rest.high)


def ramp_up(groups: Iterable[WorkedUpTo]) -> Range:
    """Seconds of warm-up sets that nobody wrote, but that heavy lifts with several joints ask for.

    They are assumed, and no part of `session_time`: no finding may block by them alone.
    """
    first = {group.prescription: group for group in reversed(list(groups))}
    heavy = [one for line, one in first.items() if line.warm_up_sets is None and one.asks_for_ramp_up]
    patterns = {one.exercise.pattern for one in heavy if one.exercise}
    seconds = NOTHING
    for turn in range(len(patterns)):
        seconds += RAMP_UP[min(turn, 1)].by(WARM_UP_SET)
    return seconds
