"""Tree -> how a line is to progress. Nothing here is needed for a line that says nothing of it."""

from __future__ import annotations

from ..syntax.tree import Mapping
from ..wording.words import week_list
from .bounds import beyond_step
from .progression import Progression
from .values import text_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .values import LocatedNode, Reader


def progression_of(at: LocatedNode, reader: Reader, weeks: int) -> Progression:
    """How a line in a run of so many weeks is to progress: in words, or by keys."""
    if not isinstance(at.node, Mapping):
        return Progression(at.place, at.words)
    found = Progression(at.place, text_of(at.get("note")))
    found.when, found.every, found.up_to, found.if_missed = (
        text_of(at.get(key)) for key in ("when", "every", "up to", "if missed")
    )
    found.add, found.then = (_step(at.get(key), reader) for key in ("add", "then"))
    for key in ("in weeks", "not in weeks"):
        if (stated := at.get(key)) is not None:
            spans = reader.in_weeks(stated, weeks)
            named = [week for first, last in spans for week in range(first, last + 1)]
            found.weeks = f"{key.removesuffix('weeks')}{week_list(named)}" if named else ""
    return found


def _step(at: LocatedNode | None, reader: Reader) -> str:
    """What is added at a time; empty for what nobody means, which is reported."""
    words = text_of(at)
    if at is not None and (takes := beyond_step(words)):
        reader.beyond(at, takes)
        return ""
    return words
