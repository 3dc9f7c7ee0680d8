"""Load: zones, what a load allows, what effort it leaves, and whether anybody can set it."""

from __future__ import annotations

from ..lint.body import curves
from ..lint.finding import Related, found
from ..lint.ledger import Entry, Ledger, Visit, credit
from ..lint.quantities import NOTHING, Range, plain
from ..lint.registry import Limits, Option, rule
from .words import LOADED, first_of, line_name

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.finding import Finding
    from ..lint.programme import BestLift, Prescription

BROKEN_UP = ("cluster", "drop set", "rest-pause")
"""Methods with rest or a lighter load inside a set, so that it is longer than one load allows."""

LOWERED = ("eccentric", "lowering", "negative")
"""Words in the names of exercises that only lower the load: a lifter lowers more than they can lift."""

THROWN = ("jump", "throw")
"""Patterns of loaded fast work to which the zone for power applies; Olympic lifts are done heavier."""


# Loads and the goal


@rule(
    "load-outside-zone",
    family="load",
    severity="note",
    confidence="guideline",
    why="Strength answers best to heavy loads, power to light ones moved fast, endurance to light ones moved"
    " often. For size the load does not decide, so nothing is said there.",
    sources=("acsm-2026-load", "nsca-zones", "peterson-2005", "fragala-2019"),
    options=(
        Option(
            "strength from",
            80,
            "percent of the best lift",
            "acsm-2026-load; for novices peterson-2005, from memory",
            by=(({"level": "novice"}, 60),),
        ),
        Option("strength from when older", 70, "percent of the best lift", "fragala-2019"),
        Option("older", 65, "years", "fragala-2019"),
        Option("power from", 30, "percent of the best lift", "acsm-2026-load"),
        Option("power to", 70, "percent of the best lift", "acsm-2026-load"),
        Option("endurance to", 67, "percent of the best lift", "nsca-zones"),
    ),
    stands_back=True,
)
def load_outside_zone(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
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
    if heaviest < least:
        loads, average, wanted = [lift.span.high for lift in lifts], heaviest, f"{least:g} % or more"
        end, change = "Heaviest", "Make some of the work heavier, if the lifter is ready for it"
    elif lightest > most:
        loads, average, wanted = [lift.span.low for lift in lifts], lightest, f"{most:g} % or less"
        end, change = "Lightest", "Make some of the work lighter"
    else:
        return
    named = [f"{lift.entry.name} {plain(round(load, 1))} %" for lift, load in zip(lifts, loads, strict=True)]
    on_average = f"; {plain(round(average, 1))} % on average" if len(lifts) > 1 else ""
    yield found(
        lifts[0].place,
        f"{end} loads of the main lifts: {first_of(named)}{on_average}.",
        wanted=f"{wanted} for {ledger.programme.goal}",
        change=f"{change}, or name the goal that these weeks serve.",
        where=line_name(lifts[0].entry.prescription),
        related=tuple(Related(lift.place, line_name(lift.entry.prescription)) for lift in lifts[1:]),
    )


def _zone(ledger: Ledger, limits: Limits) -> tuple[float, float]:
    """The loads, in % of the best lift, between which a goal's work lies."""
    goal, age = ledger.programme.goal, ledger.athlete.age if ledger.athlete else None
    if goal == "strength":
        least = limits.number("strength from")
        if age is not None and age >= limits.number("older"):
            least = min(least, limits.number("strength from when older"))
        return least, float("inf")
    if goal == "power":
        return limits.number("power from"), limits.number("power to")
    return 0.0, limits.number("endurance to") if goal == "muscular endurance" else float("inf")


class _Lift:
    """A main lift and its loads over the weeks, from the lightest to the heaviest, in % of the best lift."""

    def __init__(self, entry: Entry, span: Range) -> None:
        self.entry = entry
        self.place = entry.work.places["load"]
        self.span = span

    def also(self, span: Range) -> None:
        self.span = Range(min(self.span.low, span.low), max(self.span.high, span.high))


def _main_lifts(ledger: Ledger) -> list[_Lift]:
    """The lifts whose loads are held against the zone, in the order of the programme."""
    lifts: dict[Exercise, _Lift] = {}
    for week in ledger.weeks:
        if not week.is_typical() or week.phase == "return" or week.rehabilitation:
            continue
        for _, entry in week.entries():
            exercise, span = entry.exercise, entry.percent
            if exercise is not None and span is not None and _serves_goal(entry, exercise):
                lifts.setdefault(exercise, _Lift(entry, span)).also(span)
    named = [lift for exercise, lift in lifts.items() if _is_priority(ledger, exercise)]
    return named or list(lifts.values())


def _serves_goal(entry: Entry, exercise: Exercise) -> bool:
    """Whether an exercise is of the kind that the goal's zone is about."""
    if entry.ledger.programme.goal == "power":
        return exercise.pattern in THROWN
    return exercise.kind == "dynamic" and exercise.capacity == "heavy" and entry.compound


def _is_priority(ledger: Ledger, exercise: Exercise) -> bool:
    return any(
        ledger.known.exercise(term.words) is exercise or credit(exercise, term.words) == 1.0
        for term in ledger.programme.priority
    )


# Loads, repetitions and effort


@rule(
    "more-reps-than-load-allows",
    family="load",
    severity="error",
    confidence="trial",
    why="How many repetitions a load allows has been counted in thousands of lifters; past two standard"
    " deviations few manage it, past four nobody in practice.",
    sources=("nuzzo-2024", "hackett-2017"),
    options=(
        Option("few manage", 2, "standard deviations above the mean: a warning past it", "nuzzo-2024"),
        Option("nobody manages", 4, "standard deviations above the mean: an error past it", "nuzzo-2024"),
        Option("beyond the RM", 1, "repetitions more than a repetition maximum says", "hackett-2017"),
    ),
)
def more_reps_than_load_allows(entry: Entry, limits: Limits) -> Iterator[Finding]:
    """More repetitions, those left in reserve included, than the load allows a fresh lifter.

    Takes the low end of repetitions and of RIR, and the light end of the load in % of the best lift, set by
    set where they are written so; holds them against the curve that fits the exercise (bench press, leg press
    or the main one). Past the mean and two standard deviations is a warning, past four an error. Where the
    load comes from a best lift on file, which may have grown, and at RM loads it is never more than a
    warning. Silent below 60 % and above 100 %, for sets broken up (clusters, drop sets, rest-pause), open
    sets, exercises that only lower the load, and work for speed.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 20, rir: 2, load: 85 %}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 8, rir: 2, load: 85 %}
    """
    load, reps = entry.work.load, entry.work.reps
    if load is None or reps is None or not reps.sets or not _one_go(entry):
        return
    least_left = entry.reserve.low if entry.reserve else 0.0
    if load.kind == "rm" and load.span:
        asked = max(one.low for one in reps.sets) + least_left
        if asked > load.span.high + limits.number("beyond the RM"):
            yield _too_many(
                entry,
                asked,
                f"{plain(load.span.high)} at most: that is what {load.words} means",
                "Write a lighter load",
            )
        return
    far: list[tuple[float, float, float, curves.Repetitions]] = []
    for one, percent in _sets(entry):
        held, asked = curves.possible(percent.low, entry.curve), one.low + least_left
        if held is not None:
            far.append(((asked - held.mean) / held.spread, asked, percent.low, held))
    if not far:
        return
    beyond, asked, light, held = max(far, key=_deviations)
    few = limits.number("few manage")
    if beyond > few:
        certain = load.kind == "percent" and beyond > limits.number("nobody manages")
        finding = _too_many(
            entry,
            asked,
            f"about {held.mean:.0f} at {light:.0f} %, and hardly anybody more than {held.beyond(few):.0f}",
            f"Take {_lighter(asked, entry.curve)} of the best lift,",
        )
        finding.severity = "error" if certain else "warning"
        finding.excess = beyond
        yield finding


def _deviations(one: tuple[float, float, float, curves.Repetitions]) -> float:
    return one[0]


def _lighter(repetitions: float, curve: str) -> str:
    percent = curves.percent_for(repetitions, curve)
    return f"less than {curves.LOWEST:g} %" if percent is None else f"about {percent:.0f} %"


def _too_many(entry: Entry, asked: float, allowed: str, advice: str) -> Finding:
    load, least_left = entry.work.load, entry.reserve.low if entry.reserve else 0.0
    words = load.words if load else ""
    left = f", {plain(least_left)} of them in reserve" if least_left else ""
    return found(
        entry.work.places["reps"],
        f"{plain(asked)} repetitions{left}, at {words}.",
        severity="warning",
        wanted=allowed,
        change=f"{advice} or ask for fewer repetitions.",
        where=line_name(entry.prescription),
        related=(Related(entry.work.places["load"], words), *_on_file(entry)),
    )


def _on_file(entry: Entry) -> tuple[Related, ...]:
    """The best lifts by which a load in kg was put into %."""
    load = entry.work.load
    if load is None or load.kind not in ("mass", "bodyweight"):
        return ()
    return tuple(Related(best.exercise.place, f"best lift on file: {best.load.words}") for best in entry.best)


def _one_go(entry: Entry) -> bool:
    """Whether its sets are lifted in one go at one load, so that the curves of repetitions hold."""
    exercise = entry.exercise
    if exercise is None or exercise.kind != "dynamic" or any(word in exercise.name for word in LOWERED):
        return False
    return not is_broken_up(entry)


def is_broken_up(entry: Entry) -> bool:
    """Whether there is rest, or a lighter load, inside a set."""
    line, reps = entry.prescription, entry.work.reps
    return bool(reps and reps.parts) or line.cluster_rest is not None or line.method in BROKEN_UP


def _sets(entry: Entry) -> list[tuple[Range, Range]]:
    """Repetitions and load in % of each set; once where all are alike, none where either is not known."""
    reps = entry.work.reps.sets if entry.work.reps else ()
    percents = entry.percents
    if not reps or not percents:
        return []
    number = max(len(reps), len(percents))
    return [(reps[min(at, len(reps) - 1)], percents[min(at, len(percents) - 1)]) for at in range(number)]


@rule(
    "effort-against-load",
    family="load",
    severity="warning",
    confidence="trial",
    why="At a given load even the lifters with the fewest repetitions have many left after so short a set;"
    " effort and load cannot both be meant.",
    sources=("nuzzo-2024", "hackett-2017", "rep-time-lit"),
    options=(
        Option("fewest manage", 3, "standard deviations below the mean", "nuzzo-2024, zourdos-2021"),
        Option("guess", 1, "repetitions by which a guess may be out", "hackett-2017"),
        Option("most sets", 5, "sets, since many sets tire", "common practice"),
        Option("shortest rest", 60, "seconds, since short rests tire", "common practice"),
        Option("slowest", 6, "seconds a repetition, as slow as the trials went", "rep-time-lit"),
    ),
)
def effort_against_load(entry: Entry, limits: Limits) -> Iterator[Finding]:
    """Sets said to be far harder than their load and repetitions make them.

    Takes the most repetitions and the heaviest load of a line, and what lifters with few repetitions at that
    load (three standard deviations below the mean) still have left; wants the RIR, or 10 less the RPE, no
    more than a repetition below that. Silent where something else tires: many sets, short rests, supersets
    and circuits, sets on the clock, slow tempo; and for open sets, sets broken up and work for speed. That
    effort is said to be too easy for the load is another rule's matter.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 4, load: 60 %, rir: 0}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 4, load: 60 %, rir: 2}
    """
    reserve, work = entry.reserve, entry.work
    if reserve is None or work.load is None or not _one_go(entry) or _tires(entry, limits):
        return
    left: list[tuple[float, Range, Range, float]] = []
    for reps, percent in _sets(entry):
        held = curves.possible(percent.high, entry.curve)
        if held is None:
            return
        least = held.beyond(-limits.number("fewest manage")) - reps.high
        left.append((least, reps, percent, held.mean))
    if not left:
        return
    least, reps, percent, mean = min(left, key=lambda one: one[0])
    if least <= reserve.high + limits.number("guess"):
        return
    key, words = ("rir", f"RIR {work.rir}") if work.rir is not None else ("rpe", f"RPE {work.rpe}")
    heavier = curves.percent_for(reps.high + reserve.high, entry.curve)
    yield found(
        work.places[key],
        f"{words} after {reps} repetitions at {work.load.words}.",
        wanted=f"about {mean - reps.high:.0f} repetitions left there: most lifters manage {mean:.0f}"
        f" at {percent.high:.0f} %",
        change=f"Take the load to about {heavier:.0f} % of the best lift, ask for more repetitions, or write"
        " the effort that is meant.",
        where=line_name(entry.prescription),
        related=(Related(work.places["load"], work.load.words), *_on_file(entry)),
        excess=least,
    )


def _tires(entry: Entry, limits: Limits) -> bool:
    """Whether more than load and repetitions makes the sets hard, or their end is left open."""
    line, work = entry.prescription, entry.work
    if line.paired is not None or line.every is not None or (work.reps and work.reps.open_last):
        return True
    if entry.sets.high > limits.number("most sets"):
        return True
    if work.rest is not None and work.rest.low < limits.number("shortest rest"):
        return True
    seconds = sum(phase or 0.0 for phase in work.tempo) if work.tempo else 0.0
    return seconds > limits.number("slowest")


@rule(
    "load-and-effort-missing",
    family="load",
    severity="note",
    confidence="common practice",
    why="A lifter who is told neither load nor effort has to guess; nor can a review tell how hard it is.",
    sources=(),
)
def load_and_effort_missing(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Lines that say neither load nor effort.

    Looks at lifts with an implement whose load somebody has to choose; wants a load, an RM, a RIR, an RPE, a
    velocity, or sets that go on to what is possible. One note a programme, which counts the lines.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}  # <- here
              - {exercise: push-up, sets: 3, reps: 8}

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 8, rir: 2}
              - {exercise: push-up, sets: 3, reps: 8}
    """
    lines: dict[Prescription, Entry] = {}
    for _, entry in ledger.entries():
        if _says_nothing(entry):
            lines.setdefault(entry.prescription, entry)
    if not lines:
        return
    first, *others = sorted(lines, key=_in_file)
    number = "1 line says" if len(lines) == 1 else f"{len(lines)} lines say"
    yield found(
        first.place,
        f"{number} neither load nor effort: {first_of([lines[line].name for line in (first, *others)])}.",
        wanted="a load, an RM, a RIR or an RPE for each",
        change="Write one of them, such as `rir: 2`.",
        where=line_name(first),
        related=tuple(Related(line.place, line_name(line)) for line in others),
    )


def _in_file(line: Prescription) -> tuple[int, int]:
    return line.place.start, line.order


def _says_nothing(entry: Entry) -> bool:
    exercise, work = entry.exercise, entry.work
    if exercise is None or exercise.kind != "dynamic" or exercise.implement not in LOADED:
        return False
    if work.load is not None or entry.stated_effort or work.velocity is not None:
        return False
    open_ended = work.reps is not None and work.reps.open_last
    unread = entry.prescription.unread & {"load", "rir", "rpe"}
    return not (open_ended or unread or entry.prescription.velocity_loss) and entry.sets.high > 0


# Best lifts and top sets


@rule(
    "best-lift-missing",
    family="load",
    severity="note",
    confidence="common practice",
    why="A percentage says nothing to the lifter until it is known of what.",
    sources=(),
)
def best_lift_missing(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Loads in % of a best lift that is not on the athlete's file.

    Looks at athletes who have best lifts on file, or a file of their own; wants the lift there, or a near
    relative of it: the same movement pattern with the same implement. One note a programme.

    Flags:
        programme: Press
        athlete: {name: Mara, best lifts: {back squat: 100 kg}}
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 80 %}  # <- here

    Passes:
        programme: Press
        athlete: {name: Mara, best lifts: {bench press: 60 kg}}
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 80 %}
    """
    athlete = ledger.athlete
    if athlete is None:
        return
    if not athlete.best_lifts and athlete.place.text.name == ledger.programme.place.text.name:
        return
    on_file = [ledger.known.exercise(best.exercise.words) for best in athlete.best_lifts]
    if any(exercise is None for exercise in on_file):
        return
    lacking: dict[str, Entry] = {}
    for exercise, entry in _by_percentage(ledger):
        if not any(best is exercise or _near(best, exercise) for best in on_file if best):
            lacking.setdefault(exercise.name, entry)
    if not lacking:
        return
    first, *others = lacking.values()
    names = [entry.name for entry in (first, *others)]
    yield found(
        first.work.places["load"],
        f"{first.work.load.words if first.work.load else ''} of {first_of(names)}: no best lift on file for"
        f" {athlete.name}.",
        wanted="the best lift by which the percentage becomes a load",
        change=f"Add {'it' if len(names) == 1 else 'them'} to the athlete's `best lifts`, or write a load in"
        " kg or an effort.",
        where=line_name(first.prescription),
        related=tuple(Related(entry.work.places["load"], line_name(entry.prescription)) for entry in others),
    )


def _by_percentage(ledger: Ledger) -> Iterator[tuple[Exercise, Entry]]:
    """Entries of known exercises whose load is written in % of the best lift."""
    for _, entry in ledger.entries():
        load = entry.work.load
        if entry.exercise is not None and load is not None and load.kind == "percent" and entry.sets.high:
            yield entry.exercise, entry


def _near(one: Exercise, other: Exercise) -> bool:
    """Whether two exercises are variants of one lift."""
    return bool(one.pattern) and one.pattern == other.pattern and one.implement == other.implement


@rule(
    "best-lift-old",
    family="load",
    severity="note",
    confidence="common practice",
    why="A best lift moves; percentages of an old one are too light or too heavy by now.",
    sources=(),
    options=(Option("oldest", 12, "weeks between the test and the start", "common practice"),),
)
def best_lift_old(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Loads in % of a best lift that was tested long before the programme starts.

    Counts the weeks from the test to the first day of the programme (to today where no start is written);
    wants 12 at most. Silent where no day of the test is written. One note a programme.

    Flags:
        programme: Press
        athlete: {name: Mara, best lifts: {bench press: {load: 60 kg, tested: 2025-06-02}}}
        starts: 2026-01-05
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 80 %}  # <- here

    Passes:
        programme: Press
        athlete: {name: Mara, best lifts: {bench press: {load: 60 kg, tested: 2025-12-01}}}
        starts: 2026-01-05
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 80 %}
    """
    starts = ledger.programme.starts or ledger.today
    old: dict[Exercise, tuple[Entry, BestLift, float]] = {}
    for exercise, entry in _by_percentage(ledger):
        tested = [(best.tested, best) for best in entry.best if best.tested is not None]
        if not tested or len(tested) < len(entry.best):
            continue
        day, best = max(tested, key=lambda one: one[0])
        weeks = (starts - day).days / 7
        if weeks > limits.number("oldest"):
            old.setdefault(exercise, (entry, best, weeks))
    if not old:
        return
    (first, best, _), *others = old.values()
    said = [f"{entry.name} {weeks:.0f} weeks" for entry, _, weeks in old.values()]
    yield found(
        first.work.places["load"],
        f"Tested long before the start: {first_of(said)}.",
        wanted=f"a test no older than {limits.number('oldest'):g} weeks",
        change="Test again, estimate from a recent hard set, or steer by effort (RIR, RPE).",
        where=line_name(first.prescription),
        related=(
            Related(best.exercise.place, f"tested {best.tested}"),
            *(Related(lift.exercise.place, f"tested {lift.tested}") for _, lift, _ in others),
        ),
    )


@rule(
    "top-set-missing",
    family="load",
    severity="warning",
    confidence="fact",
    why="A share of the top set can only be worked out once there is one.",
    sources=(),
)
def top_set_missing(visit: Visit, limits: Limits) -> Iterator[Finding]:
    """A load in % of a top set, and no top set before it.

    Looks for earlier sets of the same exercise in the session, in the same line or one above; wants one whose
    load is no share of a top set itself.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                work:
                  - {sets: 3, reps: 5, load: 90 % of top set}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                work:
                  - {sets: 1, reps: 3, rpe: 8}
                  - {sets: 3, reps: 5, load: 90 % of top set}
    """
    lifted: set[Exercise | str] = set()
    for entry in visit.own:
        lift = entry.exercise or entry.name
        load = entry.work.load
        if load is None or load.kind != "top set":
            if entry.sets.high:
                lifted.add(lift)
        elif entry.sets.high and lift not in lifted:
            yield found(
                entry.work.places["load"],
                f"{load.words}, but no set of {entry.name} comes before.",
                wanted="a top set of which to take the share",
                change="Put the top set above, such as `{sets: 1, reps: 3, rpe: 8}` in `work`, or write the"
                " load itself.",
                where=line_name(entry.prescription),
            )


# What can be set, and with what


@rule(
    "load-not-settable",
    family="load",
    severity="note",
    confidence="common practice",
    why="A load that no plates or bells make is rounded on the spot, by everybody in their own way.",
    sources=(),
    options=(
        Option(
            "steps",
            {
                "barbell": 0.5,
                "trap bar": 0.5,
                "guided bar": 0.5,
                "dumbbell": 0.5,
                "kettlebell": 0.5,
                "plate": 0.25,
            },
            "kg from one load to the next, by implement",
            "common practice: the smallest plates in use weigh 0.25 kg; write your own steps",
        ),
    ),
)
def load_not_settable(entry: Entry, limits: Limits) -> Iterator[Finding]:
    """A load in kg that the implement cannot be set to.

    Takes each kg of a line, one bell of a pair at a time; wants a whole number of the implement's steps. By
    default only odd fractions such as 61.3 kg are spoken of; a team whose bars go up by 2.5 kg writes so.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 61.3 kg}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 61.5 kg}
    """
    load = entry.work.load
    step = limits.table("steps").get(entry.exercise.implement) if entry.exercise else None
    if load is None or not step or load.unit != "kg":
        return
    odd = [value for one in load.values for value in (one.low, one.high) if _between_steps(value, step)]
    if not odd:
        return
    below = abs(odd[0]) // step * step
    yield found(
        entry.work.places["load"],
        f"{entry.name} at {load.words}: no {_implement(entry)} comes to {plain(abs(odd[0]))} kg.",
        wanted=f"steps of {plain(step)} kg",
        change=f"Write {f'{plain(below)} or ' if below else ''}{plain(below + step)} kg.",
        where=line_name(entry.prescription),
    )


def _implement(entry: Entry) -> str:
    return entry.exercise.implement if entry.exercise else ""


def _between_steps(kilograms: float, step: float) -> bool:
    steps = abs(kilograms) / step
    return abs(steps - round(steps)) > 0.001


@rule(
    "light-implement-heavy",
    family="load",
    severity="note",
    confidence="common practice",
    why="Dumbbells, bells and bands serve the long sets of a hinge; heavy ones are easier to load and to hold"
    " with a bar.",
    sources=("cp-implement",),
    options=(
        Option("implements", ("dumbbell", "kettlebell", "band", "cable"), "light implements", "cp-implement"),
        Option("fewest", 6, "repetitions a set, the high end of a range", "cp-implement"),
    ),
    off=True,
)
def light_implement_heavy(entry: Entry, limits: Limits) -> Iterator[Finding]:
    """A heavy hinge with a light implement.

    Looks at hinges with dumbbells, bells, bands or cables; wants 6 repetitions or more. Off until a team asks
    for it.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: dumbbell Romanian deadlift, sets: 3, reps: 4-5}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: dumbbell Romanian deadlift, sets: 3, reps: 8-10}
    """
    reps = _lifted_repetitions(entry)
    if reps is None or not entry.hard or not entry.trains(("hip hinge",)):
        return
    if _implement(entry) not in limits.names("implements") or reps.high >= limits.number("fewest"):
        return
    yield found(
        entry.prescription.place,
        f"{entry.name}, {reps} repetitions with a {_implement(entry)}.",
        wanted=f"{limits.number('fewest'):g} repetitions or more with it (common practice)",
        change="Take a bar for the heavy sets, or a lighter load for more repetitions.",
        where=line_name(entry.prescription),
    )


def _lifted_repetitions(entry: Entry) -> Range | None:
    """Repetitions a set, those of an RM load where none are written."""
    if entry.work.reps is not None:
        return entry.work.reps.a_set()
    load = entry.work.load
    return load.span if load is not None and load.kind == "rm" else None


@rule(
    "stiff-hinge-too-heavy",
    family="load",
    severity="note",
    confidence="common practice",
    why="Past what the hamstrings can own, the back and the gluteals do a stiff-leg hinge; control and range"
    " come before load.",
    sources=("cp-heavy-hinge",),
    options=(
        Option("fewest", 4, "repetitions that the load must allow", "cp-heavy-hinge"),
        Option("straight", 30, "degrees of knee bend up to which a hinge is stiff-legged", "cp-heavy-hinge"),
    ),
    stands_back=True,
)
def stiff_hinge_too_heavy(entry: Entry, limits: Limits) -> Iterator[Finding]:
    """Stiff-leg hinges loaded for fewer than 4 repetitions.

    Looks at hinges whose knee stays nearly straight (stiff-leg and Romanian deadlifts, good mornings); takes
    the low end of the repetitions and what is left in reserve, or what the load allows where it is known in %
    of the best lift; wants 4 or more.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: stiff-leg deadlift, sets: 4, reps: 3, rir: 0}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: stiff-leg deadlift, sets: 4, reps: 4, rir: 0}
    """
    reps = _lifted_repetitions(entry)
    if reps is None or not entry.hard or is_broken_up(entry) or not _stiff(entry, limits.number("straight")):
        return
    allowed = reps.low + (entry.reserve or NOTHING).low
    load = entry.work.load
    if load is not None and load.kind == "rm" and load.span is not None:
        allowed = load.span.low
    elif entry.percent is not None:
        held = curves.possible(min(entry.percent.high, 100.0), entry.curve)
        allowed = held.mean if held else float("inf")
    fewest = limits.number("fewest")
    if allowed >= fewest:
        return
    left = f" with {entry.reserve} in reserve" if entry.reserve and entry.reserve.high else ""
    yield found(
        entry.prescription.place,
        f"{entry.name}, {reps} repetitions{left}{f' at {load.words}' if load else ''}.",
        wanted=f"a load that allows {fewest:g} repetitions or more on straight legs (common practice)",
        change="Take a lighter load through the whole range, or do the heavy sets as a deadlift.",
        where=line_name(entry.prescription),
    )


def _stiff(entry: Entry, straight: float) -> bool:
    """Whether it is a hinge, loaded from outside, with the knee nearly straight all the way."""
    exercise = entry.exercise
    if exercise is None or not entry.trains(("hip hinge",)) or exercise.implement not in LOADED:
        return False
    knee = exercise.path.get("knee", ())
    return bool(knee) and max(knee) <= straight
