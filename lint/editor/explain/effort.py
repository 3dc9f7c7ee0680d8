"""What a load, repetitions and effort mean for an athlete: kg, % of the best lift, repetitions possible.

Estimates from groups of lifters, never a clearance for the one who lifts.
"""

from __future__ import annotations

from math import ceil

from ...body import catalogue, curves
from ...model.quantities import Range
from ...wording.words import counted_noun, plain
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
"""The rule that knows what an implement can be set to, and its limit."""

ANY_STEP = 0.5
"""kg to which loads of other implements are rounded (common practice, no source)."""

ESTIMATE = "_Estimated from groups of lifters, not a clearance for this one._"


class Settable:
    """To how many kg each implement can be set, as the team has it."""

    __slots__ = ("_steps",)

    def __init__(self, workspace: Workspace, team: Team) -> None:
        rule = next((one for one in workspace.rules if one.name == STEPS_RULE), None)
        self._steps = team.choices.limits(rule).table(STEPS) if rule else {}

    def kilograms(self, entry: SetGroup) -> str:
        """What a load in % or as an RM comes to, set by set: ``72.5-75 kg``; "" if not known.

        Rounded to what the implement can be set to, half a step down.
        """
        load, strongest = entry.work.load, entry.strongest
        if load is None or load.kind not in ("percent", "rm") or strongest is None:
            return ""
        found = [entry.kilograms_at(percent) for percent in entry.percents]
        return self._words([one for one in found if one is not None], entry, strongest[0])

    def kilograms_at(self, entry: SetGroup, percent: Range) -> str:
        """The same for a share of the best lift."""
        found, strongest = entry.kilograms_at(percent), entry.strongest
        return self._words([found], entry, strongest[0]) if found and strongest else ""

    def _words(self, spans: list[Range], entry: SetGroup, best: BestLift) -> str:
        step = self._steps.get(entry.exercise.implement if entry.exercise else "", 0.0) or ANY_STEP
        pieces = best.load.pieces
        set_to = [
            Range(*(ceil(end / pieces / step - 0.5) * step for end in (span.low, span.high)))
            for span in spans
        ]
        if not set_to:
            return ""
        if best.load.kind == "bodyweight":
            return _on_the_body(set_to)
        each = "/".join(map(str, set_to))
        return f"{pieces} x {each} kg" if pieces > 1 else f"{each} kg"


def _on_the_body(spans: list[Range]) -> str:
    """``bodyweight + 10 kg``; ranges that cross nothing added are told from end to end."""
    ends = [end for span in spans for end in dict.fromkeys((span.low, span.high))]
    said = [f"{'+' if end > 0 else '-'} {plain(abs(end))} kg" if end else "" for end in ends]
    return f"bodyweight {' to '.join(dict.fromkeys(said))}".rstrip()


def percent_of_best(entry: SetGroup) -> str:
    """What a load in kg is in % of the best lift on file: ``60 %``; "" where that is not known."""
    load = entry.work.load
    if load is None or load.kind not in ("mass", "bodyweight") or not entry.percents:
        return ""
    return f"{'/'.join(rounded(percent) for percent in entry.percents)} %"


def effort(entry: SetGroup, settable: Settable) -> str:
    """Load, repetitions and reserve of a line taken together."""
    parts = [_load(entry, settable)]
    if entry.work.load is not None and entry.percents:
        parts += _possible(entry)
    else:
        parts += _by_effort(entry, settable)
    rpe = entry.work.rpe
    if rpe is not None and entry.work.rir is None and curves.reserve_of(rpe.low) is not None:
        parts.append(f"RPE {rpe} means {_reserve(entry.reserve)}.")
    return paragraphs(*parts)


# The load


def _load(entry: SetGroup, settable: Settable) -> str:
    load = entry.work.load
    if load is None:
        return ""
    words = md(load.words)
    if load.kind in ("percent", "rm"):
        kilograms = settable.kilograms(entry)
        share = "" if load.kind == "percent" or not entry.percent else f", about {rounded(entry.percent)} %"
        if kilograms:
            return f"{words}{share} = **{kilograms}** ({_best(entry)})"
        return f"{words}{share or ' of the best lift'}; kg not known: {_missing(entry)}"
    if load.kind == "top set":
        return f"{words}: in kg once the top set is lifted."
    if load.kind == "share":
        mass = entry.programme.athlete.body_mass if entry.programme.athlete else None
        if mass is None or load.span is None:
            return f"{words}; kg not known: no body mass on file."
        return f"{words} = **{rounded(load.span * (mass / 100), 1)} kg** (body mass {plain(mass)} kg)"
    if load.kind == "label":
        return f"{words}: what it comes to in kg is not known."
    percent = percent_of_best(entry)
    if percent:
        return f"{words} = **{percent}** of the best lift ({_best(entry)})"
    return f"{words}; % of the best lift not known: {_missing(entry)}"


def _best(entry: SetGroup) -> str:
    """The best lift that it is reckoned from."""
    strongest = entry.strongest
    if strongest is None:
        return ""
    lift, maximum = strongest
    one = f", about {plain(round(maximum))} kg for one" if lift.reps > 1 else ""
    return f"best on file: {on_file(lift)}{one}"


def on_file(lift: BestLift) -> str:
    """``back squat 100 kg for 3, tested 2026-11-16``."""
    reps = f" for {lift.reps}" if lift.reps > 1 else ""
    tested = f", tested {lift.tested}" if lift.tested else ""
    return f"{md(lift.exercise.words)} {md(lift.load.words)}{reps}{tested}"


def _missing(entry: SetGroup) -> str:
    """What keeps a load from being reckoned, and what would help."""
    athlete = entry.programme.athlete
    name = md(entry.name)
    if entry.exercise is None:
        return f"{name} is no exercise that is known."
    if athlete is None:
        return "no athlete is named. Write `athlete:` with best lifts."
    if entry.best:
        return "no body mass on file."
    return f"no best {name} on file; it goes under `best lifts`."


# Repetitions


def _possible(entry: SetGroup) -> list[str]:
    """Repetitions that the load allows and what is left of them."""
    if not in_one_go(entry):
        return ["Sets of this kind are not held against how many repetitions a load allows."]
    light = min(percent.low for percent in entry.percents)
    heavy = max(percent.high for percent in entry.percents)
    most, least = curves.possible(light, entry.curve), curves.possible(heavy, entry.curve)
    if heavy > 100:
        return ["That is more than the best lift; how many repetitions it allows is not known."]
    if most is None or least is None:
        return [f"Below {curves.LOWEST:g} % trials do not say how many repetitions a load allows."]
    means, wide = Range(least.mean, most.mean), Range(max(1.0, least.beyond(-1)), max(1.0, most.beyond(1)))
    parts = [
        f"Possible when fresh: about **{_reps(means)}**; {rounded(wide)} for two lifters in three"
        f" ({_curve(entry)}{_handbook(entry, light, heavy)})."
    ]
    reps = entry.work.reps.a_set() if entry.work.reps else None
    if reps is not None:
        parts.append(_left(entry, reps, least.mean - reps.high, most.mean - reps.low))
    return [*parts, ESTIMATE]


def _left(entry: SetGroup, reps: Range, low: float, high: float) -> str:
    stated = f"; {_stated(entry)}" if entry.reserve is not None else "; no `rir` or `rpe` is written"
    if round(high) < 0:
        return f"{_reps(reps)} are more than most manage there{stated}."
    left = rounded(Range(max(0.0, low), max(0.0, high)))
    return f"{_reps(reps)} would leave about **{left}** in reserve{stated}."


def _stated(entry: SetGroup) -> str:
    return f"{entry.reserve} written" if entry.work.rir is not None else f"RPE {entry.work.rpe} written"


def _by_effort(entry: SetGroup, settable: Settable) -> list[str]:
    """What repetitions and reserve say where no load in % is known."""
    reps, load = entry.work.reps.a_set() if entry.work.reps else None, entry.work.load
    if reps is None or not in_one_go(entry):
        return []
    if entry.reserve is None:
        return (
            ["How hard it is meant is not written: `rir`, `rpe` or a load says so."] if load is None else []
        )
    failure = reps + entry.reserve
    words = f"{reps} with {_reserve(entry.reserve)}: {_reps(failure)} to failure"
    ends = [curves.percent_for(end, entry.curve) for end in (failure.high, failure.low)]
    if ends[0] is None or ends[1] is None or (load is not None and load.kind == "label"):
        return [f"{words}."]
    percent = Range(ends[0], ends[1])
    kilograms = settable.kilograms_at(entry, percent)
    kilograms = f", **{kilograms}** ({_best(entry)})" if kilograms else ""
    return [f"{words}, about **{rounded(percent)} %** of a best lift{kilograms} ({_curve(entry)}).", ESTIMATE]


def in_one_go(entry: SetGroup) -> bool:
    """Whether its sets are lifted in one go at one load, so that the curves of repetitions hold."""
    exercise = entry.exercise
    if exercise is None or exercise.kind != "dynamic" or entry.broken_up:
        return False
    return not entry.lowers_only


def _reps(span: Range) -> str:
    return counted_noun(rounded(span), "repetition")


def _reserve(reserve: Range | None) -> str:
    return f"{reserve} in reserve"


def _curve(entry: SetGroup) -> str:
    lift = f"curve of the {entry.curve}" if entry.curve else "curve of all lifts"
    return f"{lift}, {catalogue.source('nuzzo-2024').short.partition(',')[0]}"


def _handbook(entry: SetGroup, light: float, heavy: float) -> str:
    """What the handbook's table prints, straight lines between its rows."""
    ends = [curves.handbook_repetitions(percent) for percent in (heavy, light)]
    if ends[0] is None or ends[1] is None:
        return ""
    return f"; handbook tables print {rounded(Range(ends[0], ends[1]))}"


# Time


def timing(entry: SetGroup, visit: Visit) -> str:
    """How long a set and the whole line take."""
    line = entry.prescription
    took = visit.time_of(line)
    if line.every is not None and line.lasts is not None:
        return f"**{time(took.total)}** by the clock: {entry.sets} sets, one every {time(line.every)}."
    what = f"the whole {line.paired.kind}" if line.paired else "the line"
    around = f", {time(took.around)} warm-up sets" if took.around.high else ""
    one = entry.set_time
    tempo = f"; a set **{time(one)}** by its tempo" if one is not None else ""
    spent = f"{time(took.work)} under load, {time(took.rest)} rest{around}"
    return f"**{time(took.total)}** for {what}: {spent}{tempo}."


TEMPO = ("down", "at the bottom", "up", "at the top")


def tempo(phases: Iterable[float | None]) -> str:
    """``3 s down, 1 s at the bottom, up as fast as possible, no pause at the top``."""
    said = []
    for seconds, where in zip(phases, TEMPO, strict=True):
        if seconds is None:
            said.append(f"{where} as fast as possible")
        elif seconds:
            said.append(f"{plain(seconds)} s {where}")
        else:
            said.append(f"no pause {where}" if where.startswith("at") else f"{where} not counted")
    return ", ".join(said)
