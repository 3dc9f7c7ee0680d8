"""How a line is to progress: tree -> what is added, when, how often, in which weeks, and up to what."""

from __future__ import annotations

from ..syntax.tree import Mapping
from ..wording.words import week_list
from .bounds import beyond_step
from .values import text_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Place
    from .values import LocatedNode, Reader


class Progression:
    """How a line is to progress, in the coach's words.

    ``add`` is added each time, ``up_to`` the load or number at which that ends, ``then`` what is added from
    there on. ``weeks`` says in which weeks of its block it goes up, or does not.
    """

    __slots__ = ("add", "every", "if_missed", "note", "place", "then", "up_to", "weeks", "when")

    def __init__(self, place: Place, note: str = "") -> None:
        self.place = place
        self.note = note
        self.add = self.when = self.every = self.up_to = self.then = self.weeks = self.if_missed = ""

    @property
    def words(self) -> str:
        """``add 5 kg when all sets are clean, every week, up to 60 kg, then 2.5 kg``, without the note."""
        step = " ".join(f"{word} {part}" for word, part in (("add", self.add), ("when", self.when)) if part)
        every = self.every if self.every.startswith("every") else f"every {self.every}"
        parts = [
            step,
            every if self.every else "",
            f"up to {self.up_to}" if self.up_to else "",
            f"then {self.then}" if self.then else "",
            self.weeks,
            f"if missed: {self.if_missed}" if self.if_missed else "",
        ]
        return ", ".join(part for part in parts if part)


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
