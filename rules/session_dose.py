"""The dose of one session: sets of a muscle, sets of an exercise, minutes."""

from __future__ import annotations

from math import ceil

from ..lint.counting.counts import counted_lines
from ..lint.counting.session_time import ramp_up
from ..lint.engine.limits import COUNTING, Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import day_name, line_name
from ..lint.wording.words import listed, plain, sets_of
from .excess import WITHOUT_LIMIT, Excess, are_rounds_estimated, crossing
from .offers import cutting
from .shared import are_apart, other_day, taken_off

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.counts import Count
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Tally, Visit
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding

SECONDS, ROOM = 60.0, 1.1
"""Of a minute; the share of the athlete's time up to which several sessions still fit (common practice)."""


@rule(
    "session-sets-for-muscle-high",
    family="dose",
    severity="note",
    confidence="common practice",
    why="A weekly limit of 20 sets over two days leaves 10 a session, and six more give room: common"
    " practice. In one trial trained men went up to 52 sets a week for the legs in two sessions, so this"
    " is only worth a look.",
    sources=("cp-cap", "cp-twice", "enes-2024", "pelland-2026-frac"),
    options=(
        Option(
            "most",
            16,
            "sets for a muscle group in a session",
            "common practice, no source: 20 sets a week over two days make 10, and half as many for room",
        ),
        WITHOUT_LIMIT,
        COUNTING,
    ),
    stands_back=("rehabilitation", "peak"),
    follows=("session-sets-for-muscle-high", "weekly-sets-over-limit", "exercise-sets-high"),
)
def session_sets_for_muscle_high(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """More hard sets for one muscle group in one session than are usually worth it.

    Counts hard sets of each session of a typical week, two sessions on one day as one, those in which the
    muscle only helps as half, those on the clock where it is known how hard they are; circuits, and what is
    pushed or carried some way, are left out. Wants no more than 16, judged on the high end of a range. It
    points at the line that crosses the limit.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg press, sets: 8, reps: 8}
              - {exercise: leg extension, sets: 9, reps: 12}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg press, sets: 8, reps: 8}
              - {exercise: leg extension, sets: 8, reps: 12}
    """
    most, counting, without = limits.number("most"), limits.name("counting"), limits.names("without limit")
    days = week.occasions() if week.is_typical() else []
    for group in week.groups_from(most, counting):
        if group in without:
            continue
        each = [(day, Excess(day, group, counting, most, stations=False)) for day in days]
        over = [(day, one) for day, one in each if one.sets > 0]
        if not over:
            continue
        day, worst = max(over, key=lambda one: one[1].sets)
        line = worst.line()
        yield found(
            line.place,
            f"{worst.words()} {_at_once(day)}.",
            wanted=limits.words(f"at most {{}} a {'session' if len(day.visits) == 1 else 'day'}", "most"),
            change=_less(week, day.visits[0], worst.count, most),
            where=line_name(line),
            edits=cutting(worst.count, most),
            subject=group,
            group=group,
            amount=worst.amount(),
            related=(
                *counted_lines(worst.count),
                *_also_in(one.count for _, one in over if one is not worst),
            ),
            excess=worst.sets,
        )


def _also_in(counts: Iterable[Count]) -> Iterator[Related]:
    """The lines of further sessions that hold too much."""
    for count in counts:
        yield from counted_lines(count, of=f"{count.parts[0].visit.session.name}, {count} sets")


@rule(
    "exercise-sets-high",
    family="dose",
    severity="warning",
    confidence="growth trial",
    why="Two meta-analyses, read second-hand, find that gains grow up to four to six sets of an exercise and"
    " no further. In a trial of 12 men ten sets of ten did no better than five.",
    sources=("krieger-2010", "hackett-2018", "amirthalingam-2017"),
    options=(
        Option(
            "most",
            10,
            "hard sets of one exercise in a session: a note past it",
            "ten sets of ten are a known plan, though they did no better than five (Amirthalingam and others"
            " 2017)",
        ),
        Condition(
            "far",
            15,
            "hard sets of one exercise in a session: a warning from there on",
            "common practice, no source: half as much again",
        ),
        Condition(
            "repetitions",
            5,
            "repetitions a set from which it counts",
            "common practice: heavier work is left alone",
        ),
        Condition(
            "hard set",
            3,
            "repetitions in reserve at most; sets whose effort is not known count",
            "common practice, no source: 3 left is our choice",
        ),
    ),
    stands_back=("rehabilitation", "peak"),
)
def exercise_sets_high(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """Many hard sets of one exercise in one session.

    Counts sets of 5 or more repetitions with at most 3 in reserve, written or worked out, or of unknown
    effort, of each exercise in each session of a typical week, two sessions on one day as one; more than 10
    are a note, 15 or more a warning, judged on the high end of a range. Sets on the clock (``every``) count
    only where their effort is known, and so do swings and the like, what has no load, and sets of as many as
    possible.

    Flags:
        programme: Tens
        sessions:
          - session: Squat
            exercises:
              - {exercise: back squat, sets: 8, reps: 5, load: 75 %}
              - {exercise: back squat, sets: 8, reps: 10, load: 60 %}  # <- here

    Passes:
        programme: Tens
        sessions:
          - session: Squat
            exercises:
              - {exercise: back squat, sets: 4, reps: 5, load: 75 %}
              - {exercise: back squat, sets: 6, reps: 10, load: 60 %}
    """
    most, far = limits.number("most"), limits.number("far")
    over: dict[Exercise | None, list[tuple[Tally, Count]]] = {}
    for day in week.occasions() if week.is_typical() and _is_full(week, most) else []:
        for count in day.by_exercise(lambda entry: is_taxing(entry, limits)):
            if count.high > most:
                over.setdefault(count.parts[0].entry.exercise, []).append((day, count))
    for counts in over.values():
        (day, worst), *others = sorted(counts, key=lambda one: -one[1].high)
        line, first = crossing(worst, most), worst.parts[0].entry
        name, left = first.name, first.reserve_in_words if first.worked_out_in_words else ""
        yield found(
            line.place,
            f"{worst.most} hard sets of {name} {_at_once(day)}.",
            severity="warning" if worst.high >= far else "note",
            wanted=limits.words("at most {}", "most"),
            change=f"{taken_off(worst, most, placed=False)}, or use a second exercise.",
            where=line_name(line),
            edits=cutting(worst, most),
            subject=name,
            group=name,
            amount=Amount(worst.high, most),
            related=(
                *counted_lines(worst),
                *_also_in(count for _, count in others),
                *((Related(line.place, left),) if left else ()),
            ),
            excess=worst.high,
        )


def _is_full(tally: Tally, most: float) -> bool:
    """Whether any exercise comes to more sets than these."""
    return any(sum([one.sets.high for one in groups]) > most for groups in tally.lifts().values())


def _less(week: Week, visit: Visit, count: Count, most: float) -> str:
    """What to do with sets too many: take them off, or move them to a day that there is."""
    day, sets = other_day(week, visit.day), sets_of(ceil(count.high - most))
    return f"{taken_off(count, most, placed=False)}{f', or move {sets} to {day}' if day else ''}."


def _sessions(day: Tally) -> str:
    """The names of the sessions of a day, each once."""
    return listed(list(dict.fromkeys(visit.session.name for visit in day.visits)))


def _at_once(day: Tally) -> str:
    """``in Lower``, or ``on one day (Morning and Evening)``."""
    return f"in {_sessions(day)}" if len(day.visits) == 1 else f"on one day ({_sessions(day)})"


def is_taxing(entry: SetGroup, limits: Limits) -> bool:
    """Whether its sets have repetitions enough and are near enough to failure."""
    reps = entry.work.reps
    if reps is None or not entry.hard or are_rounds_estimated(entry):
        return False
    each = reps.a_set()
    if each is None or each.low < limits.number("repetitions"):
        return False
    if entry.reserve is None:  # then as many as possible, or no load, are not known to be hard
        is_open = reps.open_last or entry.implement in ("bodyweight", "band", "")
        return not (entry.prescription.on_clock or is_open)
    return entry.reserve.low <= limits.number("hard set")


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
        Condition("slack", 1.15, "times the minutes, where anything is assumed", "common practice"),
        Option("for health", 60, "minutes, where health is the goal and the athlete has named none", "60min"),
    ),
)
def session_too_long(visit: Visit, limits: Limits) -> Iterator[DraftFinding]:
    """A session that takes longer than the athlete has, or than is written for it.

    Adds up work by repetitions and tempo, rest, warm-up sets, preparation, cool-down and changing over; the
    least that comes out must fit into the minutes of the session, or else the athlete's. Longer is a note; a
    warning where work and written rest alone, without anything assumed, take more than 1.25 times as long.
    Where heavy lifts have no warm-up sets written, some are assumed; with anything assumed, 1.15 times the
    minutes are let pass. Where health is the goal and nobody names minutes, over 60 min is a note.

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
    time = visit.time()
    ramps, assumed = ramp_up(visit.own).low, time.assumed_rest.low
    least = (time.total.low + ramps) / SECONDS
    if least <= allowed * (limits.number("slack") if ramps or assumed else 1):
        return
    written = (time.total.low - assumed - time.around.low) / SECONDS
    written_parts = ((time.work.low, "work"), (time.rest.low - assumed, "rest"))
    assumed_parts = (
        (assumed, "rest (none is written)"),
        (ramps, "warm-up sets"),
        (
            time.around.low,
            "preparation, cool-down and changing over"
            if visit.session.cool_down
            else "preparation and changing over",
        ),
    )
    shares = _minutes((*written_parts, (sum(seconds for seconds, _ in assumed_parts), UNWRITTEN)))
    related = Related(visit.session.place, f"assumed: {_minutes(assumed_parts, ' min')}")
    yield found(
        visit.session.place,
        f"{visit.session.name} takes at least {round(least)} min: {shares}.",
        severity="warning" if whose and written > limits.number("far") * allowed else "note",
        wanted=whose or limits.words("at most {:min}", "for health"),
        change=f"Save {ceil(least - allowed)} min: superset lifts that share no muscle, or move one.",
        where=visit.session.name,
        subject=visit.session.name,
        amount=Amount(least, allowed, "min"),
        related=(related,) if any(seconds for seconds, _ in assumed_parts) else (),
        excess=least,
    )


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
