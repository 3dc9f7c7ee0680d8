"""How long sessions and days take."""

from __future__ import annotations

from math import ceil

from ..lint.counting.session_time import ramp_up, seconds_written
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import day_name
from ..lint.wording.words import listed, plain
from .shared import are_apart

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.counting.tally import Visit
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding

SECONDS, ROOM = 60.0, 1.1
"""Of a minute; the share of the athlete's time up to which several sessions still fit (common practice)."""


@rule(
    "session-too-long",
    family="dose",
    severity="warning",
    confidence="common practice",
    why="Work and rest are added up as a published protocol prints them; changing over, warm-up sets and"
    " preparation are common practice. The estimate is a range, and only its low end is held against the"
    " time.",
    sources=("loadit", "rep-time", "us-pag-rest", "warm-up", "60min"),
    options=(
        Condition("far", 1.25, "times the athlete's minutes: a warning past it", "common practice"),
        Condition(
            "slack", 1.15, "times the minutes, where rest or warm-up sets are assumed", "common practice"
        ),
        Option("for health", 60, "minutes, where health is the goal and the athlete has named none", "60min"),
    ),
)
def session_too_long(visit: Visit, limits: Limits) -> Iterator[DraftFinding]:
    """A session that takes longer than the athlete has, or than is written for it.

    Adds up work by repetitions and tempo, rest, warm-up sets, preparation, cool-down and changing over; the
    least that comes out must fit into the minutes of the session, or else the athlete's. Longer is a note; a
    warning where work and written rest alone, without anything assumed, take more than 1.25 times as long.
    Where heavy lifts have no warm-up sets written, some are assumed; with these or rest assumed, 1.15 times
    the minutes are let pass. Where health is the goal and nobody names minutes, over 60 min is a note.

    Flags:
        programme: Lunch break
        athlete: {name: A, minutes: 30}
        sessions:
          - session: Lower  # <- here
            exercises:
              - {exercise: back squat, sets: 6, reps: 5, rest: 4 min}
              - {exercise: leg press, sets: 6, reps: 10, rest: 3 min}

    Passes:
        programme: Lunch break
        athlete: {name: A, minutes: 30}
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 4, reps: 5, rest: 3 min}
              - {exercise: leg press, sets: 4, reps: 10, rest: 2 min}
    """
    allowed, whose = minutes_for(visit, limits)
    if allowed is None:
        return
    time, session = visit.time(), visit.session
    least = (time.total.low + ramp_up(visit.own).low) / SECONDS
    if least <= allowed * slack_for(visit, limits):
        return
    parts = _unwritten(visit)
    assumed = sum(seconds for seconds, _ in parts)
    rest = time.rest.low - time.assumed_rest.low
    around = seconds_written((*session.preparation, *session.cool_down))
    shares = ((time.work.low, "work"), (rest, "rest"), (around, "warming up and down"), (assumed, UNWRITTEN))
    written = (time.work.low + rest) / SECONDS
    yield found(
        session.place,
        f"{session.name} takes at least {round(least)} min: {_minutes(shares)}.",
        severity="warning" if whose and written > limits.number("far") * allowed else "note",
        wanted=whose or limits.words("at most {:min}", "for health"),
        change=f"Save {ceil(least - allowed)} min: superset lifts that share no muscle, or move one.",
        where=session.name,
        subject=session.name,
        amount=Amount(least, allowed, "min"),
        related=(Related(session.place, f"assumed: {_minutes(parts, ' min')}"),) if assumed else (),
        excess=least,
    )


def slack_for(visit: Visit, limits: Limits) -> float:
    """How many times its minutes a session may come out at: more where rest or warm-up sets are assumed."""
    assumed = visit.time().assumed_rest.low or ramp_up(visit.own).low
    return limits.number("slack") if assumed else 1.0


def _unwritten(visit: Visit) -> list[tuple[float, str]]:
    """The least seconds of a session that nobody wrote, by what they are for."""
    time, session = visit.time(), visit.session
    cooling = ", cool-down" if session.cool_down else ""
    around = time.around.low - seconds_written((*session.preparation, *session.cool_down))
    return [
        (time.assumed_rest.low, "rest (none is written)"),
        (ramp_up(visit.own).low, "warm-up sets"),
        (around, f"preparation{cooling} and changing over"),
    ]


def minutes_for(visit: Visit, limits: Limits) -> tuple[float | None, str]:
    """The minutes that a session may take, None where nobody says, and whose they are ("": the limit)."""
    athlete = visit.programme.athlete
    if visit.minutes is not None:
        return visit.minutes.high, f"the {visit.minutes} min that are written for it"
    if athlete is not None and athlete.minutes is not None:
        return athlete.minutes, f"the athlete's {plain(athlete.minutes)} min"
    return (limits.number("for health") if visit.programme.goal == "general health" else None), ""


UNWRITTEN = "assumed, not written"


def _minutes(parts: Iterable[tuple[float, str]], unit: str = "") -> str:
    """``6 work and 38 rest``: minutes of parts in seconds; those of no length are left out."""
    return listed([f"{round(seconds / SECONDS)}{unit} {what}" for seconds, what in parts if seconds])


@rule(
    "day-too-long",
    family="dose",
    severity="note",
    confidence="common practice",
    why="Two sessions that fit one by one may not fit into one day. Where hours lie between them it may well"
    " be meant.",
    sources=("loadit",),
)
def day_too_long(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """Several sessions on one day that together take longer than the athlete has.

    Adds up the least that the sessions of a day take; looks at days with two or more, none of which is too
    long by itself, and wants their sum to fit into the athlete's minutes, or a tenth more. Silent where the
    hours of all are written, or a note speaks of hours.

    Flags:
        programme: Twice on Monday
        athlete: {name: A, minutes: 20}
        sessions:
          - session: Noon
            day: monday
            exercises: [{exercise: back squat, sets: 4, reps: 5, rest: 3 min}]
          - session: Evening  # <- here
            day: monday
            exercises: [{exercise: leg press, sets: 5, reps: 10, rest: 3 min}]

    Passes:
        programme: Monday and Thursday
        athlete: {name: A, minutes: 20}
        sessions:
          - session: Noon
            day: monday
            exercises: [{exercise: back squat, sets: 4, reps: 5, rest: 3 min}]
          - session: Evening
            day: thursday
            exercises: [{exercise: leg press, sets: 5, reps: 10, rest: 3 min}]
    """
    athlete = week.programme.athlete
    has = athlete.minutes if athlete else None
    if has is None:
        return
    for day, visits in week.by_day():
        takes = [visit.minutes.low if visit.minutes else visit.time().total.low / SECONDS for visit in visits]
        if sum(takes) <= ROOM * has or max(takes) > has or are_apart(visits):
            continue
        last = visits[-1].session
        each = [str(round(time)) for time in takes]
        name = day_name(week.programme.starts, day)
        yield found(
            last.place,
            f"{name}'s {len(visits)} sessions take at least {round(sum(takes))} min: {listed(each)}.",
            wanted=f"the athlete's {plain(has)} min",
            change="Move the last to another day, or write the hours between in a `note`.",
            where=last.name,
            subject=name,
            excess=sum(takes),
        )
