"""What is different for one athlete of several, ``adjust``: of an exercise, a session, or all lines.

Nothing here is needed for a programme without it, so that `read_programme` imports it only when there is.
"""

from __future__ import annotations

from ..findings.finding import Edit
from ..syntax.tree import Mapping
from ..wording.words import did_you_mean, first_of, near_names
from .bounds import NONE
from .everything import for_one, no_sets
from .programme import Adjustment
from .read_line import LineReader
from .sessions import Slice
from .values import items_of, term_of, text_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .everything import EveryLine
    from .programme import Programme
    from .values import LocatedNode, Reader

ADJUSTED = ("sets", "reps", "load", "rir", "rpe", "rest", "hold", "side")
"""What may be different for one athlete."""


def read_adjustments(
    reader: Reader, at: LocatedNode, weeks: int
) -> tuple[tuple[Adjustment, ...], tuple[EveryLine, ...]]:
    """Those of an exercise with other values, and what changes for all lines, a session or an exercise."""
    adjusted: list[Adjustment] = []
    everything: list[EveryLine] = []
    for item in items_of(at.get("adjust")):
        if "exercise" in item and not _changes(item):
            adjusted.append(_adjustment(reader, item, weeks))
            if (sets := item.get("sets")) is not None and sets.plain == 0:
                no_sets(reader, sets)
        elif isinstance(item.node, Mapping):
            everything.append(for_one(reader, item, weeks, LineReader(reader.findings, weeks).one))
    return tuple(adjusted), tuple(everything)


def check_sessions(reader: Reader, programme: Programme) -> None:
    """Says of sessions in which something is to be different which ones are none of this programme."""
    known = {_folded(one.name): one.name for one in programme.sessions()}
    for member in programme.members:
        terms = [one.session for one in member.adjustments] + [one.session for one in member.everything]
        for term in terms:
            if term is None or not term.words or _folded(term.words) in known:
                continue
            near = near_names(term.words, known.values(), 2)
            names = first_of(list(known.values()))
            reader.report(
                "session-unknown",
                term.place,
                f"`{term.words}` is no session of this programme, so nothing is adjusted.",
                change=did_you_mean(near) or f"Write the name of a session: {names}.",
                edits=tuple(Edit(term.place, name, f"write {name}", certain=False) for name in near),
            )


def _folded(name: str) -> str:
    return " ".join(name.casefold().split())


def _adjustment(reader: Reader, at: LocatedNode, weeks: int) -> Adjustment:
    exercise, swap, leave_out, session = (at.get(key) for key in ("exercise", "swap", "leave out", "session"))
    in_weeks = reader.in_weeks(at.get("in weeks"), weeks)
    lines = LineReader(reader.findings, weeks, (), in_weeks)
    values = lines.values(at, ADJUSTED)
    for key in NONE:
        if (part := at.get(key)) is not None and part.plain == "none":
            values[key] = tuple(Slice(first, last, None, part.place) for first, last in lines.spans)
    return Adjustment(
        term_of(exercise or at),
        None if swap is None else term_of(swap),
        leave_out is not None and leave_out.plain is True,
        values,
        text_of(at.get("note")),
        None if session is None else term_of(session),
        in_weeks,
    )


def _changes(at: LocatedNode) -> bool:
    """Whether an adjustment changes a value, and does not only replace it."""
    words = [part.words for key in ADJUSTED if (part := at.get(key)) is not None]
    return any(
        one[:1] in ("x", "X", "\u00d7") or one == "half" or one.endswith(("points", "point")) for one in words
    ) or any(
        part.words[:1] in ("+", "-") and not part.words.endswith(("kg", "lb"))
        for key in ADJUSTED
        if (part := at.get(key)) is not None
    )
