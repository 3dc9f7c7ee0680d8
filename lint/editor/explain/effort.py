"""What load, repetitions and effort mean for an athlete: kg, % of the best lift, repetitions possible.

These are estimates from groups of lifters, never a clearance for the one who lifts.
"""

from __future__ import annotations

from math import ceil

from ...body import catalogue, curves
from ...counting.load_shares import of_other_lift
from ...model import quantities
from ...model.quantities import Range
from ...wording.words import counted_noun, plain, sets_of
from .markdown import md, paragraphs, rounded, time

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ...counting.set_group import SetGroup
    from ...counting.tally import Visit
    from ...model.athlete import BestLift
    from ...project.workspace import Workspace
    from ...team.settings import Team

STEPS_RULE, STEPS = "load-not-settable", "steps"
"""The rule, and its limit, by which a team says in what steps the load of an implement can be set."""

DEFAULT_STEP = 0.5
"""kg to which loads of all other implements are rounded (common practice, no source)."""

ESTIMATE = "_Estimated from groups of lifters, not a clearance for this one._"


IN_PERCENT = ("percent", "rm", "rm share", "lift")
"""Kinds of load that are worked out in kg from a best lift."""


def best_used(entry: SetGroup) -> tuple[BestLift, float] | None:
    """The best lift from which a load is worked out, and its 1RM in kg; that of another lift where it is of
    one.
    """
    load = entry.work.load
    if load is None or load.kind != "lift":
        return entry.strongest
    return of_other_lift(entry.programme, load.whole)


def _is_of_best(entry: SetGroup) -> bool:
    """Whether a load is a plain share of the best lift, so that its words say all there is to say."""
    load = entry.work.load
    return load is not None and load.kind == "percent" and (load.whole == "1RM" or entry.counted_from == 100)


class LoadSteps:
    """The steps, in kg, in which the load of each implement can be set, by the team's settings."""

    __slots__ = ("_steps",)

    def __init__(self, workspace: Workspace, team: Team) -> None:
        rule = next((one for one in workspace.rules if one.name == STEPS_RULE), None)
        self._steps = team.choices.limits(rule).table(STEPS) if rule else {}

    def kilograms(self, entry: SetGroup) -> str:
        """A load in % or as an RM in kg, set by set: ``72.5-75 kg``; "" if it is not known.

        It is rounded to the steps of the implement, half a step down.
        """
        load, strongest = entry.work.load, best_used(entry)
        if load is None or load.kind not in IN_PERCENT or strongest is None:
            return ""
        if load.kind == "lift":
            return self._in_words(entry.kilograms, entry, strongest[0])
        loads = [entry.kilograms_at(percent) for percent in entry.percents]
        return self._in_words([one for one in loads if one is not None], entry, strongest[0])

    def kilograms_at(self, entry: SetGroup, percent: Range) -> str:
        """The same for a percentage of the best lift."""
        load, strongest = entry.kilograms_at(percent), entry.strongest
        return self._in_words([load], entry, strongest[0]) if load and strongest else ""

    def _in_words(self, loads: list[Range], entry: SetGroup, best: BestLift) -> str:
        step = self._steps.get(entry.implement, 0.0) or DEFAULT_STEP
        pieces = best.load.pieces
        rounded_loads = [
            Range(*(ceil(end / pieces / step - 0.5) * step for end in (load.low, load.high)))
            for load in loads
        ]
        if not rounded_loads:
            return ""
        if best.load.kind == "bodyweight":
            return _added_to_bodyweight(rounded_loads)
        each = "/".join(map(str, rounded_loads))
        return f"{pieces} x {each} kg" if pieces > 1 else f"{each} kg"


def _added_to_bodyweight(loads: list[Range]) -> str:
    """``bodyweight + 10 kg``, ``bodyweight - 5 kg to + 5 kg``."""

    ends = [end for load in loads for end in dict.fromkeys((load.low, load.high))]
    parts = [f"{'+' if end > 0 else '-'} {plain(abs(end))} kg" if end else "" for end in ends]
    return f"bodyweight {' to '.join(dict.fromkeys(parts))}".rstrip()


def percent_of_best(entry: SetGroup) -> str:
    """A load in kg as a percentage of the best lift on file: ``60 %``; "" where that is not known."""
    load = entry.work.load
    if load is None or load.kind not in ("mass", "bodyweight") or not entry.percents:
        return ""
    return f"{'/'.join(rounded(percent) for percent in entry.percents)} %"


def effort_in_words(entry: SetGroup, steps: LoadSteps) -> str:
    """What load, repetitions and reserve of a group of sets mean together."""
    parts = [_load_in_words(entry, steps)]
    if entry.work.load is not None and entry.percents:
        parts += _repetitions_possible(entry)
    else:
        parts += _repetitions_to_failure(entry, steps)
    if entry.effort.ground == "rpe":
        parts.append(f"RPE {entry.work.rpe} means {_reserve(entry.reserve)}.")
    return paragraphs(*parts)


# The load


def _load_in_words(entry: SetGroup, steps: LoadSteps) -> str:
    load = entry.work.load
    if load is None:
        return ""
    words = md(load.words)
    if load.kind in IN_PERCENT:
        kilograms = steps.kilograms(entry)
        share = "" if _is_of_best(entry) or not entry.percent else f", about {rounded(entry.percent)} %"
        if kilograms:
            return f"{words}{share} = **{kilograms}** ({_best_on_file(entry)})"
        return f"{words}{share or ' of the best lift'}; kg not known: {_why_unknown(entry)}"
    if load.kind == "top set":
        return f"{words}: in kg once the top set is lifted."
    if load.kind == "share":
        mass = entry.programme.athlete.body_mass if entry.programme.athlete else None
        if mass is None or load.span is None:
            return f"{words}; kg not known: no body mass on file."
        carried = load.span * (mass / 100) + Range(load.added, load.added)
        return f"{words} = **{rounded(carried, 1)} kg** (body mass {plain(mass)} kg)"
    if load.kind == "label":
        return f"{words}: what it comes to in kg is not known."
    percent = percent_of_best(entry)
    if percent:
        return f"{words} = **{percent}** of the best lift ({_best_on_file(entry)})"
    return f"{words}; % of the best lift not known: {_why_unknown(entry)}"


def _best_on_file(entry: SetGroup) -> str:
    """The best lift from which a load is worked out."""
    strongest = best_used(entry)
    if strongest is None:
        return ""
    lift, maximum = strongest
    one = f", about {plain(round(maximum))} kg for one" if lift.reps > 1 else ""
    return f"best on file: {best_lift_in_words(lift)}{one}"


def best_lift_in_words(lift: BestLift) -> str:
    """``back squat 100 kg for 3, tested 2026-11-16``."""
    reps = f" for {lift.reps}" if lift.reps > 1 else ""
    tested = f", tested {lift.tested}" if lift.tested else ""
    return f"{md(lift.exercise.words)} {md(lift.load.words)}{reps}{tested}"


def _why_unknown(entry: SetGroup) -> str:
    """Why a load cannot be worked out, and what would help."""
    athlete, load = entry.programme.athlete, entry.work.load
    other = load.whole if load is not None and load.kind == "lift" else ""
    name = md(other or entry.name)
    if (entry.programme.known.exercise(other) if other else entry.exercise) is None:
        return f"{name} is no exercise that is known."
    if athlete is None:
        return "no athlete is named. Write `athlete:` with best lifts."
    if entry.best:
        return "no body mass on file."
    return f"no best {name} on file; it goes under `best lifts`."


# Repetitions


def _repetitions_possible(entry: SetGroup) -> list[str]:
    """The repetitions that the load allows, and how many the stated ones leave in reserve."""
    if not entry.in_one_go:
        return ["Sets of this kind are not held against how many repetitions a load allows."]
    light = min(percent.low for percent in entry.percents)
    heavy = max(percent.high for percent in entry.percents)
    most, least = curves.possible(light, entry.curve), curves.possible(heavy, entry.curve)
    if heavy > 100:
        return ["That is more than the best lift; how many repetitions it allows is not known."]
    reps = entry.work.reps.a_set() if entry.work.reps else None
    left = [_left_in_reserve(entry, reps)] if reps is not None else []
    if most is None or least is None:
        floor = curves.at_least(light, entry.curve)
        manage = f", where lifters manage about {floor.mean:.0f} repetitions" if floor else ""
        return [f"Trials end at {curves.LOWEST:g} %{manage}; a lighter load allows at least as many.", *left]
    means, wide = Range(least.mean, most.mean), Range(max(1.0, least.beyond(-1)), max(1.0, most.beyond(1)))
    parts = [
        f"Possible when fresh: about **{_reps(means)}**; {rounded(wide)} for two lifters in three"
        f" ({_curve(entry)}{_handbook(entry, light, heavy)})."
    ]
    return [*parts, *left, ESTIMATE]


def _left_in_reserve(entry: SetGroup, reps: Range) -> str:
    """What the load leaves two lifters in three, from the last set, tired, to the first."""
    stated = f"; {_stated_effort(entry)}" if entry.effort.written else "; no `rir` or `rpe` is written"
    worked_out = entry.worked_out
    if worked_out is None or worked_out.reserve is None or worked_out.reserve.high == 0:
        return f"{_reps(reps)} are more than most manage there{stated}."
    over = f" over {sets_of(str(entry.sets))}" if entry.sets.high > 1 else ""
    return f"{_reps(reps)} would leave about **{rounded(worked_out.reserve)}** in reserve{over}{stated}."


def _stated_effort(entry: SetGroup) -> str:
    return f"{entry.reserve} written" if entry.work.rir is not None else f"RPE {entry.work.rpe} written"


def _repetitions_to_failure(entry: SetGroup, steps: LoadSteps) -> list[str]:
    """What repetitions and reserve mean where the load is not known in %."""
    reps, load = entry.work.reps.a_set() if entry.work.reps else None, entry.work.load
    if reps is None or not entry.in_one_go:
        return []
    reserve = entry.written_reserve
    if reserve is None:
        return (
            ["How hard it is meant is not written: `rir`, `rpe` or a load says so."] if load is None else []
        )
    failure = reps + reserve
    words = f"{reps} with {_reserve(reserve)}: {_reps(failure)} to failure"
    ends = [curves.percent_for(end, entry.curve) for end in (failure.high, failure.low)]
    if ends[0] is None or ends[1] is None or (load is not None and load.kind == "label"):
        return [f"{words}."]
    percent = Range(ends[0], ends[1])
    kilograms = steps.kilograms_at(entry, percent)
    kilograms = f", **{kilograms}** ({_best_on_file(entry)})" if kilograms else ""
    return [f"{words}, about **{rounded(percent)} %** of a best lift{kilograms} ({_curve(entry)}).", ESTIMATE]


def _reps(span: Range) -> str:
    words = rounded(span)
    return counted_noun(words, "repetition")


def _reserve(reserve: Range | None) -> str:
    return f"{reserve} in reserve"


def _curve(entry: SetGroup) -> str:
    lift = f"curve of the {entry.curve}" if entry.curve else "curve of all lifts"
    return f"{lift}, {catalogue.source('nuzzo-2024').short.partition(',')[0]}"


def _handbook(entry: SetGroup, light: float, heavy: float) -> str:
    """What the handbook's table prints, with straight lines between its rows."""
    ends = [curves.handbook_repetitions(percent) for percent in (heavy, light)]
    if ends[0] is None or ends[1] is None:
        return ""
    return f"; handbook tables print {rounded(Range(ends[0], ends[1]))}"


def one_repetition_maximum(lift: str, reps: object, load: object) -> str:
    """What a best lift for several repetitions stands for; "" where that cannot be said.

    ``lift`` is the exercise's name in the catalogue; ``reps`` and ``load`` are the values as written.
    """
    weight = quantities.load(load)
    if not isinstance(reps, int) or reps < 2 or weight is None or weight.kind != "mass":
        return ""
    percent = curves.percent_for(reps, curves.curve_of(lift))
    if percent is None or weight.span is None:
        return ""
    one = plain(round(weight.span.middle * 100 / percent))
    return paragraphs(
        f"{md(weight.words)} for {reps} is about **{one} kg** for one"
        f" ({reps} repetitions lie at {plain(round(percent))} %).",
        ESTIMATE,
    )


# Time


def time_in_words(entry: SetGroup, visit: Visit) -> str:
    """How long a set and its whole line take."""
    line = entry.prescription
    of_line = visit.time_of(line)
    if line.every is not None and line.lasts is not None:
        return f"**{time(of_line.total)}** by the clock: {entry.sets} sets, one every {time(line.every)}."
    what = f"the whole {line.paired.kind}" if line.paired else "the line"
    if line.on_clock:
        pace = f" {line.paired.kind}" if line.paired else ""
        return f"**{time(of_line.total)}** by the clock for the whole{pace}."
    warm_up = f", {time(of_line.around)} warm-up sets" if of_line.around.high else ""
    one_set = entry.set_time
    tempo = f"; a set **{time(one_set)}** by its tempo" if one_set is not None else ""
    spent = f"{time(of_line.work)} under load, {time(of_line.rest)} rest{warm_up}"
    return f"**{time(of_line.total)}** for {what}: {spent}{tempo}."


TEMPO_PHASES = ("down", "at the bottom", "up", "at the top")


def tempo_in_words(phases: Iterable[float | None]) -> str:
    """``3 s down, 1 s at the bottom, up as fast as possible, no pause at the top``."""
    parts = []
    for seconds, phase in zip(phases, TEMPO_PHASES, strict=True):
        if seconds is None:
            parts.append(f"{phase} as fast as possible")
        elif seconds:
            parts.append(f"{plain(seconds)} s {phase}")
        else:
            parts.append(f"no pause {phase}" if phase.startswith("at") else f"{phase} not counted")
    return ", ".join(parts)
