"""The values of a line in one week, in words that are alike for what means the same."""

from __future__ import annotations

from ..body.names import fold
from ..model.quantities import KG_PER_LB, Range
from ..wording.words import duration, listed, plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..counting.set_group import SetGroup
    from ..counting.tally import Visit
    from ..model.quantities import Load, Reps, Tempo
    from ..model.sessions import Prescription

IN_SECONDS = ("rest", "hold")
UNITS = {"distance": "m", "velocity": "m/s"}
"""Values of a line that are ranges in seconds, and in other units."""


class LineState:
    """A line as it is done on one visit.

    ``lift`` is what is lifted, one word for all names of an exercise, ``name`` what the coach calls it.
    ``values`` are words by key, ``sets`` those of all its groups of sets, ``trains`` the muscles that the
    exercise trains, directly and not.
    """

    __slots__ = ("groups", "lift", "line", "name", "sets", "trains", "values")

    def __init__(self, line: Prescription, groups: list[SetGroup]) -> None:
        first = groups[0]
        self.line = line
        self.groups = groups
        self.name = first.name
        self.lift = first.exercise.name if first.exercise else fold(first.name)
        self.sets = sum((one.sets for one in groups), Range(0, 0))
        self.values = _values(line, groups)
        self.trains = (first.exercise.direct, first.exercise.indirect) if first.exercise else ((), ())

    @property
    def one_sided(self) -> str:
        """``left`` or ``right`` where it is done with one side only; else empty."""
        return self.groups[0].side


def lines_of(visit: Visit) -> list[LineState]:
    """The lines of a visit that are done, in order."""
    found: dict[Prescription, list[SetGroup]] = {}
    for group in visit.own:
        if group.is_done:
            found.setdefault(group.prescription, []).append(group)
    return [LineState(line, groups) for line, groups in found.items()]


def _values(line: Prescription, groups: list[SetGroup]) -> dict[str, str]:
    """Words by key, of what is written; groups of sets that differ are joined by plus signs."""
    found: dict[str, str] = {}
    for key, several in _by_key(map(_of_group, groups)).items():
        words = list(dict.fromkeys(several))
        found[key] = words[0] if len(words) == 1 else " + ".join(word or "none" for word in several)
    for key, value in _of_line(line).items():
        if value:
            found[key] = value
    return found


def _by_key(groups: Iterable[dict[str, str]]) -> dict[str, list[str]]:
    every = list(groups)
    keys = dict.fromkeys(key for one in every for key in one)
    return {key: [one.get(key, "") for one in every] for key in keys}


def _of_group(group: SetGroup) -> dict[str, str]:
    work = group.work
    found = {"sets": str(work.sets) if work.sets else ""}
    if work.reps is not None:
        found["reps"] = reps_in_words(work.reps)
    if work.load is not None:
        found["load"] = load_in_words(work.load)
    if effort := _effort_of(group):
        found["effort"] = effort
    for key in IN_SECONDS:
        if (span := getattr(work, key)) is not None:
            found[key] = seconds_in_words(span)
    for key, unit in UNITS.items():
        if (span := getattr(work, key)) is not None:
            found[key] = f"{span} {unit}"
    if work.tempo is not None:
        found["tempo"] = _tempo_in_words(work.tempo)
    if work.side:
        found["side"] = work.side
    return {key: words for key, words in found.items() if words}


def _effort_of(group: SetGroup) -> str:
    """How hard the sets are, by what the coach wrote; RIR and RPE of one meaning read alike."""
    work, reserve = group.work, group.written_reserve
    if work.rir is None and work.rpe is None:
        return ""
    if reserve is not None:
        return f"RIR {reserve}"
    return f"RIR {work.rir}" if work.rir is not None else f"RPE {work.rpe}"


def _of_line(line: Prescription) -> dict[str, str]:
    paired = line.paired
    progression = line.progression
    return {
        "warm-up sets": str(line.warm_up_sets) if line.warm_up_sets is not None else "",
        "test": line.test,
        "method": line.method or "",
        "cluster rest": _seconds(line.cluster_rest),
        "rest after": _seconds(line.rest_after),
        "stop when": line.stop_when,
        "velocity loss": f"{line.velocity_loss} %" if line.velocity_loss is not None else "",
        "every": _seconds(line.every),
        "for": _seconds(line.lasts),
        "or": listed([one.words for one in line.alternates], "or"),
        "progression": ", ".join(words for words in (progression.words, progression.note) if words)
        if progression is not None
        else "",
        "paired in": (paired.kind + (f", rest {seconds_in_words(paired.rest)}" if paired.rest else ""))
        if paired is not None
        else "",
    }


def _seconds(span: Range | None) -> str:
    return "" if span is None else seconds_in_words(span)


def seconds_in_words(span: Range) -> str:
    """``90 s``, ``2-3 min``: minutes where both ends are whole or half minutes."""
    if span.low == span.high:
        return duration(span.low)
    if span.low % 30 or span.high % 30 or span.low < 60:
        return f"{span} s"
    return f"{span * (1 / 60)} min"


def reps_in_words(reps: Reps) -> str:
    """``5-8``, ``12/10/8``, ``2+2+2``, ``5+``, ``amrap``, ``30 s``."""
    if reps.timed is not None:
        words = seconds_in_words(reps.timed)
    elif reps.parts:
        words = "+".join(str(part) for part in reps.parts)
    elif reps.sets:
        words = "/".join(str(one) for one in reps.sets) + ("+" if reps.open_last else "")
    else:
        words = "to failure" if reps.to_failure else "amrap"
    return f"{words} each side" if reps.each_side else words


def load_in_words(load: Load) -> str:
    """``72.5-75 %``, ``2 x 24 kg``, ``bodyweight + 10 kg``, ``10RM``; a label as it stands."""
    if not load.values:
        return " ".join(load.words.split()).casefold()
    factor = KG_PER_LB if load.unit == "lb" else 1.0
    figures = "/".join(str(_rounded(one * (1 / factor))) for one in load.values)
    unit = load.unit or "kg"
    if load.kind == "mass":
        return f"{load.pieces} x {figures} {unit}" if load.pieces > 1 else f"{figures} {unit}"
    if load.kind == "bodyweight":
        if all(one.low == one.high == 0 for one in load.values):
            return "bodyweight"
        sign = "-" if load.values[0].high < 0 else "+"
        return f"bodyweight {sign} {figures.replace('-', '', 1) if sign == '-' else figures} {unit}"
    forms = {"percent": "{} %", "share": "{} % of bodyweight", "rm": "{}RM", "top set": "{} % of top set"}
    return forms[load.kind].format(figures) if load.kind in forms else " ".join(load.words.split())


def _rounded(span: Range) -> Range:
    return Range(round(span.low, 2), round(span.high, 2))


def _tempo_in_words(tempo: Tempo) -> str:
    return "-".join("X" if phase is None else plain(phase) for phase in tempo)
