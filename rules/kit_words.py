"""Equipment in a coach's own words: in a line, and in notes on the room."""

from __future__ import annotations

import re

from ..lint.body import equipment
from ..lint.body.names import fold, words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Visit

_OWN_WORDS = {
    "machine pulldown": ("pulldown", "pull-down"),
    "machine cable row": ("cable",),
    "machine rower": ("rower", "rowing machine", "rowing ergometer"),
    "machine bike": ("bike", "bicycle ergometer"),
}
"""The words of a piece that tell it, where fewer do."""


def is_written(piece: str, entry: SetGroup) -> bool:
    """Whether the own word of a piece stands in a line: in its name, its load, or what is noted beside it."""
    load = entry.work.load
    texts = (entry.name, load.words if load else "", entry.prescription.note)
    meant = _OWN_WORDS.get(piece, (equipment.in_words(piece),))
    return any(_says(text, word) for text in texts for word in meant)


def _says(text: str, piece: str) -> bool:
    said = equipment.spelled_out(text) | frozenset(map(fold, words(text)))
    return equipment.spelled_out(piece) <= said


_CLAUSE = r"[.,;:()/]| - | (?:and|on|at|in|with|has|have) "


def not_noted(pieces: tuple[str, ...], ledger: Ledger, visit: Visit) -> tuple[str, ...]:
    """The pieces that no note of the athlete, the programme or the session names as there."""
    notes = _notes(ledger, visit)
    parts = [part.strip() for note in notes for part in re.split(_CLAUSE, note)]
    there = [part for part in parts if not re.search(_ABSENT, part)]
    if any(map(_says_everything, there)) or any(re.search(_HAS_ALL, note) for note in notes):
        return ()
    return tuple(piece for piece in pieces if not any(equipment.is_said(piece, part) for part in there))


def said_absent(pieces: tuple[str, ...], ledger: Ledger, visit: Visit) -> tuple[str, ...]:
    """The pieces of which a note says that there is none: "no rack", "nothing to hang off"."""
    texts = _notes(ledger, visit)
    absent = [found[1].strip() for text in texts for found in re.finditer(_NONE, text)]
    hangs = any(re.search(_NO_HANGING, text) for text in texts)
    return tuple(
        piece
        for piece in pieces
        if (hangs and piece == "pull-up bar")
        or any(fold(one) == fold(equipment.in_words(piece)) for one in absent)
    )


_NONE = r"(?i)\b(?:no|without an?) ([a-z][a-z -]*?)(?= (?:here|there|at|on|in|this)\b|[.,;:()/]|$)"
_NO_HANGING = r"(?i)\b(?:nothing|nowhere) to hang\b"


def _notes(ledger: Ledger, visit: Visit) -> tuple[str, ...]:
    """What is noted of the athlete, the programme and the session."""
    athlete = ledger.athlete
    return (athlete.note if athlete else "", ledger.programme.note, visit.session.note)


_HAS_ALL = r"(?i)\b(?:has|have|got|with) (?:got )?(?:nearly )?(?:everything|it all)\b"


def _says_everything(part: str) -> bool:
    """Whether a part of a note speaks of a whole gym; "leave 2 on everything" says nothing of rooms."""
    return equipment.is_everything(part) and part.lower() != "everything"


SMALL = ("band", "bench", "box", "plate", "medicine ball", "exercise ball", "ab wheel", "sliders")
ROOM = ("rack", "platform")
"""Pieces that lists of a weight room leave out, and what tells that it is one (common practice)."""


def not_small(pieces: tuple[str, ...], items: Collection[str]) -> tuple[str, ...]:
    """The pieces without those that a list leaves out where it names a rack: a bench, a band."""
    if not any(equipment.is_said(large, item) for large in ROOM for item in items):
        return pieces
    return tuple(piece for piece in pieces if piece not in SMALL)


_ABSENT = r"(?i)\b(?:no|not|without|lacks?|missing|broken|gone|sold|away)\b"
