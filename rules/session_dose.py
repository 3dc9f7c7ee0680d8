"""The dose of one session: sets of a muscle, sets of an exercise."""

from __future__ import annotations

from math import ceil

from ..lint.counting.counts import counted_lines
from ..lint.engine.limits import COUNTING, Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import listed, sets_of
from .excess import WITHOUT_LIMIT, Excess, are_rounds_estimated, crossing
from .offers import cutting
from .shared import other_day, taken_off

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
    groups = week.groups_from(most, counting) if week.is_typical() else []
    days = week.occasions() if groups else []
    for group in groups:
        if group in without:
            continue
        full = [day for day in days if day.sets(group, counting).high > most]
        each = [(day, Excess(day, group, counting, most, stations=False)) for day in full]
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
