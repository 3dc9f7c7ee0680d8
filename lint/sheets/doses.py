"""A group of sets in words for the athlete: sets, repetitions, load, effort, rest, tempo."""

from __future__ import annotations

from ..body.equipment import LOADED
from ..body.names import words as words_of
from ..counting.credits import is_in_complex
from ..counting.loading import BAR, loading, plates
from ..model.quantities import Range
from ..wording.words import counted_noun, plain, safe
from .sheet import Amounts, SheetDose

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from ..counting.loading import Loading
    from ..counting.set_group import SetGroup
    from ..model.quantities import Reps
    from ..model.sessions import Work

OTHER_BARS = frozenset(
    ("ez", "curl", "safety", "bent", "cambered", "swiss", "axle", "log", "landmine", "t-bar", "t", "preacher")
)
"""Words for bars, and ways to load them, of which a usual bar's plates say nothing."""

CHOOSE = "you choose the load"
"""Stands where nobody wrote a load, but how hard the sets are."""

OWN_CHOICE = "own choice"
"""The kind of a line that says how long, and leaves to the athlete what."""

ASK = "ask your coach for the load"
"""Stands where nobody wrote a load or how hard the sets are: no number is made up for an athlete."""

TO_WEIGH = ("mass", "percent", "rm", "share", "top set")
"""Kinds of load of which the athlete writes down a weight."""

MOST_WEIGHTS = 3
"""Different weights of a group of sets whose plates are listed."""


def dose(group: SetGroup, steps: Mapping[str, float], unit: str) -> SheetDose:
    """The dose of a group of sets.

    ``steps`` are what the team's implements go up by, in kg; ``unit`` is what the athlete weighs loads in.
    """
    work = group.work
    each, counted = _each(work)
    counted = "minutes" if group.prescription.kind == OWN_CHOICE else counted
    loaded = loading(group, steps)
    amounts = _amounts(group, loaded, unit)
    sets = work.sets
    return SheetDose(
        _sets(group),
        each,
        counted,
        _load(group, loaded),
        amounts,
        _effort(work),
        f"rest {spoken(work.rest)}" if work.rest is not None else "",
        tempo(work) if work.tempo is not None else "",
        tuple(_extra(group)),
        int(sets.low) if sets else 0,
        int(sets.high) if sets else 0,
    )


def spoken(seconds: Range) -> str:
    """``90 s``, ``3 min``, ``2-3 min``, ``90 s to 2 min``."""
    low, high = _time(seconds.low), _time(seconds.high)
    if seconds.low == seconds.high:
        return low
    number, _, unit = low.partition(" ")
    return f"{number}-{high}" if high.endswith(f" {unit}") else f"{low} to {high}"


def _time(seconds: float) -> str:
    """Seconds below two minutes, else minutes where they are whole or half ones."""
    return f"{plain(seconds)} s" if seconds < 120 or seconds % 30 else f"{plain(seconds / 60)} min"


def tempo(work: Work) -> str:
    """``3-1-X-0``."""
    return "-".join("X" if part is None else plain(part) for part in work.tempo or ())


def _sets(group: SetGroup) -> str:
    line = group.prescription
    if line.kind == OWN_CHOICE or (line.every is not None and line.lasts is not None):
        return ""
    sets = group.work.sets
    return "" if sets is None else counted_noun(str(sets), "set")


def _each(work: Work) -> tuple[tuple[str, ...], str]:
    """What a set holds, one entry or one a set, and in what it is counted."""
    side = {"each": " each side", "left": " on the left", "right": " on the right"}.get(work.side, "")
    length = work.hold or work.timed
    reps = _repetitions(work.reps) if work.reps is not None and not work.reps.timed else ()
    if length is not None:
        seconds = f"{spoken(length)}{' hold' if work.hold else ''}{side}"
        return (f"{', '.join(reps)} x {seconds}" if reps else seconds,), "seconds"
    if reps:
        if not side and work.reps is not None and work.reps.each_side:
            side = " each side"
        unit = "repetition" if set(reps) == {"1"} else "repetitions"
        return reps, f"{unit}{side}" if not _says_all(work.reps) else side.strip()
    if work.distance is not None:
        return (f"{work.distance} m{side}",), "metres"
    return (), ""


def _says_all(reps: Reps | None) -> bool:
    return reps is not None and not reps.sets


def _repetitions(reps: Reps) -> tuple[str, ...]:
    if not reps.sets:
        return ("as many repetitions as you can" if not reps.to_failure else "repetitions to failure",)
    if reps.parts:
        return ("+".join(map(str, reps.parts)),)
    return tuple(map(str, reps.sets))


# The load


def _load(group: SetGroup, loaded: Loading | None) -> str:
    load = group.work.load
    if load is None:
        return _to_choose(group)
    words = safe(load.words)
    if _is_the_same(group):
        return "the same load"
    if loaded is None:
        if load.kind == "percent":
            return f"{words} of your best lift (none on file: ask your coach for the weight)"
        if load.kind == "rm":
            return f"{words}: a load that you could lift so many times and no more"
        return words
    if load.kind == "bodyweight":
        return words
    weights = ", ".join(dict.fromkeys(_weights(loaded)))
    about = "about " if loaded.estimated else ""
    hands = {1: "", 2: " in each hand"}.get(loaded.pieces, f" each, {loaded.pieces} of them")
    said = f"{about}{weights} {loaded.unit}{hands}"
    if loaded.added:
        said = _on_the_body(loaded, about)
    if not loaded.rounded:
        return said
    below = ", or the next setting below" if loaded.step is None and not loaded.added else ""
    return f"{said}{below} ({words})"


def _is_the_same(group: SetGroup) -> bool:
    """Whether its load is that of the lift before it in a complex."""
    load = group.work.load
    return load is not None and load.kind == "lift" and is_in_complex(group)


def _on_the_body(loaded: Loading, about: str) -> str:
    """``bodyweight + 5 kg``; ``bodyweight with 10 kg of help`` where it is below zero."""
    ends = dict.fromkeys(tuple(dict.fromkeys(one.ends)) for one in loaded.values)
    return about + ", ".join(" to ".join(_added(end, loaded.unit) for end in one) for one in ends)


def _added(weight: float, unit: str) -> str:
    if weight < 0:
        return f"bodyweight with {plain(-weight)} {unit} of help"
    return f"bodyweight + {plain(weight)} {unit}" if weight else "bodyweight"


def _to_choose(group: SetGroup) -> str:
    """What to go by where nobody wrote a load for something that must be loaded."""
    work = group.work
    if group.implement not in LOADED or work.velocity is not None:
        return ""
    return CHOOSE if work.rir is not None or work.rpe is not None else ASK


def _weights(loaded: Loading) -> list[str]:
    return [str(one) for one in loaded.values]


def _plates(group: SetGroup, loaded: Loading) -> str:
    """``On each side of a 20 kg bar: 25 for 70 kg; 25 + 2.5 for 75 kg``; empty if it is on no usual bar."""
    if loaded.added or loaded.pieces > 1 or group.implement != "barbell" or _is_the_same(group):
        return ""
    if OTHER_BARS.intersection(word.lower() for word in words_of(group.name)):
        return ""
    weights = list(dict.fromkeys(end for one in loaded.values for end in one.ends))
    bar = f"a {plain(BAR[loaded.unit])} {loaded.unit} bar"
    if min(weights) < BAR[loaded.unit]:
        return f"Lighter than {bar}: take a lighter one."
    found = {weight: plates(weight, loaded.unit) for weight in weights}
    if len(weights) > MOST_WEIGHTS or None in found.values():
        return ""
    listed = {weight: " + ".join(map(plain, sides or ())) or "nothing" for weight, sides in found.items()}
    if len(listed) == 1:
        return f"On each side of {bar}: {listed[weights[0]]}."
    each = "; ".join(f"{sides} for {plain(weight)} {loaded.unit}" for weight, sides in listed.items())
    return f"On each side of {bar}: {each}."


def _amounts(group: SetGroup, loaded: Loading | None, unit: str) -> Amounts:
    load = group.work.load
    weighed = group.implement in LOADED if load is None else load.kind in TO_WEIGH
    if loaded is None or (loaded.added and not any(end for one in loaded.values for end in one.ends)):
        return Amounts(unit=unit, weighed=weighed)
    return Amounts(tuple(_weights(loaded)), loaded.unit, loaded.pieces, _plates(group, loaded), weighed=True)


# Effort, and all else


def _effort(work: Work) -> str:
    if work.rir is not None:
        return "to failure" if work.rir.high == 0 else f"{work.rir} in reserve"
    return f"RPE {work.rpe}" if work.rpe is not None else ""


def _extra(group: SetGroup) -> Iterable[str]:
    line, work = group.prescription, group.work
    if line.test:
        yield f"a test: {safe(line.test)}"
    if line.every is not None:
        lasts = f" for {spoken(line.lasts)}" if line.lasts is not None else ""
        yield f"a set every {spoken(line.every)}{lasts}"
    if line.rest_after is not None:
        yield f"then {spoken(line.rest_after)} before the next exercise"
    if line.cluster_rest is not None:
        yield f"{spoken(line.cluster_rest)} of rest within a set"
    if work.reps is not None and work.reps.sets and work.reps.open_last:
        yield "as many as you can in the last set"
    if line.method:
        yield safe(line.method)
    if work.velocity is not None:
        yield f"bar speed {work.velocity} m/s"
    if line.velocity_loss is not None:
        yield f"end the set when the bar is {line.velocity_loss} % slower"
    if work.rir is not None and work.rpe is not None:
        yield f"RPE {work.rpe}"
