"""Lines that test something: the attempts, repetitions and load that a test implies.

Nothing here is needed for training, so that `read_items` imports it only where something is tested.
"""

from __future__ import annotations

import re

from ..findings.finding import Edit
from . import quantities
from .quantities import Load, Range, Reps
from .values import items_of, place_of, text_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .read_line import LineReader
    from .sessions import Prescription
    from .values import LocatedNode

_MAXIMUM = re.compile(r"([1-9][0-9]?)[ -]?rm\b", re.IGNORECASE)
_MOST = re.compile(r"(?:most|max(?:imum)?\.?|as many) rep(?:etition)?s?\b|amrap\b", re.IGNORECASE)

SAYS_EFFORT = frozenset({"load", "rir", "rpe"})
"""Keys by which the coach says how hard an attempt is meant to be."""


def tested_maximum(words: str) -> int:
    """The repetitions of a test such as 1RM, 5RM, 3RM squat; 0 where something else is tested."""
    found = _MAXIMUM.match(words.strip())
    return int(found[1]) if found else 0


def set_test(reader: LineReader, at: LocatedNode, line: Prescription, of_session: str) -> None:
    """Says of a line what it tests, and gives it what that implies where nothing is written.

    One attempt; the repetitions of an RM, and that RM as the load; as many repetitions as possible.
    ``of_session`` is what its session tests.
    """
    own_test = text_of(at.get("test"))
    line.test = own_test or of_session
    maximum = tested_maximum(line.test)
    reps = quantities.reps(maximum or ("amrap" if _MOST.match(line.test) else None))
    place = place_of(at, "test") if own_test else line.place
    parts = items_of(at.get("work")) if "work" in at else [at]
    for part, own in zip(parts, line.groups, strict=True):
        said = own.keys() | reader.unread
        if "sets" not in said:
            own["sets"] = reader.always(Range(1, 1), place)
        if maximum and (odds := _at_odds(part, maximum)) is not None:
            if own_test:
                _report(reader, odds, line.test, maximum)
            else:
                line.test = ""  # other work within a session of tests
            continue
        if reps is not None and not said & {"reps", "hold", "distance", "timed"}:
            own["reps"] = reader.always(reps, place)
        if maximum and not said & SAYS_EFFORT:
            own["load"] = reader.always(Load("rm", (Range(maximum, maximum),), f"{maximum}RM"), place)


def _at_odds(at: LocatedNode, maximum: int) -> LocatedNode | None:
    """A hold, or repetitions, that are no test of so many repetitions; None where all is well."""
    if (hold := at.get("hold")) is not None:
        return hold
    written = at.get("reps")
    if written is None or written.keys():
        return None
    reps = quantities.reps(written.plain)
    each = reps.a_set() if isinstance(reps, Reps) else None
    return None if each is None or each.low <= maximum <= each.high else written


def _report(reader: LineReader, at: LocatedNode, test: str, maximum: int) -> None:
    if quantities.reps(at.plain) is None or str(at.plain).endswith(("s", "min")):
        reader.report(
            "keys-at-odds",
            at.place,
            f"`{test}` tests repetitions; a hold has none.",
            change="Write `test: longest hold`, or take the hold out.",
        )
        return
    reader.report(
        "keys-at-odds",
        at.place,
        f"{at.words} repetitions are no test of {maximum}RM.",
        change="Correct one of the two, or leave the repetitions out: the test says them.",
        edits=(Edit(at.place, str(maximum), f"write {maximum}", certain=False),),
    )
