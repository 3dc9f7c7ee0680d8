"""Effort that load and repetitions do not bear out."""

from __future__ import annotations

from ..lint.body import curves
from ..lint.engine.limits import Condition
from ..lint.engine.registry import rule
from ..lint.findings.finding import Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import counted_noun
from .offers import agreeing
from .shared import bests_on_file

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.quantities import Range


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
    needs=("load",),
)
def effort_against_load(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """Sets said to be far harder than their load and repetitions make them.

    Takes the most repetitions and the heaviest load of a line, and what lifters with few repetitions at that
    load (three standard deviations below the mean; below 60 % what they manage there) still have left; wants
    the RIR, or what the RPE leaves, no more than a repetition below that. Silent where something else tires:
    many sets, short rests, supersets and circuits, sets on the clock, slow tempo; and for open sets, sets
    broken up and work for speed. That effort is said to be too easy for the load is another rule's matter.

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
    reserve, work = entry.written_reserve, entry.work
    if reserve is None or not entry.in_one_go or _tires(entry, limits):
        return
    left: list[tuple[float, Range, Range, float]] = []
    for reps, percent in entry.sets_apart:
        held = curves.at_least(percent.high, entry.curve)
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
    about = "about" if percent.high >= curves.LOWEST else "at least"
    heavier = curves.percent_for(reps.high + reserve.high, entry.curve)
    if heavier is None or work.load is None:
        return
    yield found(
        work.places[key],
        f"{words} after {counted_noun(str(reps), 'repetition')} at {work.load.words}.",
        wanted=f"{about} {mean - reps.high:.0f} left, of {about} {mean:.0f} at {percent.high:.0f} %",
        change=f"Take about {heavier:.0f} %, or more repetitions, or correct the {key.upper()}.",
        where=line_name(entry.prescription),
        edits=agreeing(entry, key, heavier, mean - reps.high),
        related=(Related(work.places["load"], work.load.words), *bests_on_file(entry)),
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
