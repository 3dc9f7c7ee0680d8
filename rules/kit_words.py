"""Equipment in a coach's own words: in a line, and in notes on the room."""

from __future__ import annotations

import re

from ..lint.body import equipment
from ..lint.body.names import fold, words

TYPE_CHECKING = False
if TYPE_CHECKING:
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
    return equipment.spelled_out(piece) <= said or frozenset(map(fold, words(piece))) <= said


_CLAUSE = r"[.,;:()/]| - | (?:and|on|at|in|with|has|have) "


def not_noted(pieces: tuple[str, ...], ledger: Ledger, visit: Visit) -> tuple[str, ...]:
    """The pieces that no note of the athlete, the programme or the session names as there."""
    athlete = ledger.athlete
    notes = (athlete.note if athlete else "", ledger.programme.note, visit.session.note)
    parts = [part.strip() for note in notes for part in re.split(_CLAUSE, note) if part.strip()]
    if any(map(equipment.is_everything, parts)):
        return ()
    there = [part for part in parts if not re.search(_ABSENT, part)]
    return tuple(piece for piece in pieces if not any(equipment.is_said(piece, part) for part in there))


_ABSENT = r"(?i)\b(?:no|not|without|lacks?|missing|broken|gone|sold|away)\b"
