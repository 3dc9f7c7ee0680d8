"""Whether a load, its repetitions and the effort asked for go together."""

from __future__ import annotations

from ..lint.body import curves
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Severity
    from ..lint.model.quantities import Range

# Loads, repetitions and effort


@rule(
    "more-reps-than-load-allows",
    family="load",
    severity="error",
    confidence="meta-analysis",
    why="Tests on 7,289 people give the mean repetitions at 60 to 90 % of the best lift, and how far lifters"
    " differ; above that a straight line to one repetition is our own choice. Few manage two standard"
    " deviations above the mean; the limit of four is our choice as well.",
    sources=("nuzzo-2024", "zourdos-2021", "hackett-2017"),
    options=(
        Option(
            "few manage",
            2,
            "standard deviations above the mean: a warning past it",
            "mean and spread: Nuzzo and others 2024, read second-hand; that two count is our choice",
        ),
        Condition(
            "nobody manages",
            4,
            "standard deviations above the mean: an error past it",
            "mean and spread: Nuzzo and others 2024, read second-hand; that four count is our choice; 26"
            " repetitions at 70 %, the most on file, lie 3.4 above the mean: Zourdos and others 2021",
        ),
        Condition(
            "beyond the RM",
            1,
            "repetitions more than a repetition maximum says",
            "common practice, no source: a margin of one, as large as the error of guesses near failure"
            " (Hackett and others 2017)",
        ),
    ),
)
def more_reps_than_load_allows(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """More repetitions, those left in reserve included, than the load allows a fresh lifter.

    Takes the low end of repetitions and of RIR, and the light end of the load in % of the best lift, set by
    set where they are written so; holds them against the curve that fits the exercise (bench press, leg press
    or the main one). Above the last load that was counted (90 %; bench press 80 %) a straight line leads to
    one repetition at 100 %. Past the mean and two standard deviations is a warning, past four an error. Where
    the load comes from a best lift on file, which may have grown, and at RM loads it is never more than a
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
    if load is None or reps is None or not reps.sets or not entry.in_one_go:
        return
    least_left = entry.reserve.low if entry.reserve else 0.0
    if load.kind == "rm" and load.span:
        asked = max(one.low for one in reps.sets) + least_left
        if asked > load.span.high + limits.number("beyond the RM"):
            yield _too_many(
                entry,
                asked,
                load.span.high,
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
        most = "hardly anybody more than" if limits.is_default("few manage") else "no more than"
        yield _too_many(
            entry,
            asked,
            held.beyond(few),
            limits.worked_out(
                f"about {held.mean:.0f} at {light:.0f} %, and {most} {held.beyond(few):.0f}",
                ("{:standard deviation} above the mean", "few manage"),
            ),
            f"Take {_lighter(asked, entry.curve)} of the best lift,",
            severity="error" if certain else "warning",
            excess=beyond,
        )


def _deviations(one: tuple[float, float, float, curves.Repetitions]) -> float:
    return one[0]


def _lighter(repetitions: float, curve: str) -> str:
    percent = curves.percent_for(repetitions, curve)
    return f"less than {curves.LOWEST:g} %" if percent is None else f"about {percent:.0f} %"


def _too_many(
    entry: SetGroup,
    asked: float,
    most: float,
    allowed: str,
    advice: str,
    severity: Severity = "warning",
    excess: float = 0.0,
) -> DraftFinding:
    load, least_left = entry.work.load, entry.reserve.low if entry.reserve else 0.0
    words = load.words if load else ""
    left = f", {plain(least_left)} of them in reserve" if least_left else ""
    return found(
        entry.work.places["reps"],
        f"{plain(asked)} repetitions{left}, at {words}.",
        severity=severity,
        wanted=allowed,
        change=f"{advice} or ask for fewer repetitions.",
        where=line_name(entry.prescription),
        group=entry.name,
        amount=Amount(asked, most, "repetitions"),
        related=(Related(entry.work.places["load"], words), *_on_file(entry)),
        excess=excess,
    )


def _on_file(entry: SetGroup) -> tuple[Related, ...]:
    """The best lifts by which a load in kg was put into %."""
    load = entry.work.load
    if load is None or load.kind not in ("mass", "bodyweight"):
        return ()
    return tuple(Related(best.exercise.place, f"best lift on file: {best.load.words}") for best in entry.best)


def _sets(entry: SetGroup) -> list[tuple[Range, Range]]:
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
    confidence="meta-analysis",
    why="In tests to failure even lifters who manage few repetitions at this load had more left than the line"
    " says. Guesses near failure are about one repetition out, so effort and load can hardly both be"
    " meant.",
    sources=("nuzzo-2024", "zourdos-2021", "hackett-2017", "rep-time-lit"),
    options=(
        Condition(
            "fewest manage",
            3,
            "standard deviations below the mean",
            "mean and spread: Nuzzo and others 2024; that three count is our choice; 6 repetitions at"
            " 70 %, the fewest on file, lie 2.7 below the mean: Zourdos and others 2021",
        ),
        Condition("guess", 1, "repetitions by which a guess may be out", "hackett-2017"),
        Condition("most sets", 5, "sets, since many sets tire", "common practice"),
        Condition("shortest rest", 60, "seconds, since short rests tire", "common practice"),
        Condition("slowest", 6, "seconds a repetition, as slow as the trials went", "rep-time-lit"),
    ),
)
def effort_against_load(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
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
    if reserve is None or work.load is None or not entry.in_one_go or _tires(entry, limits):
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
        wanted=f"about {mean - reps.high:.0f} repetitions left there: lifters manage about {mean:.0f}"
        f" at {percent.high:.0f} %",
        change=f"Take the load to about {heavier:.0f} % of the best lift, ask for more repetitions, or write"
        " the effort that is meant.",
        where=line_name(entry.prescription),
        related=(Related(work.places["load"], work.load.words), *_on_file(entry)),
        excess=least,
    )


def _tires(entry: SetGroup, limits: Limits) -> bool:
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
