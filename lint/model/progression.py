"""How a line is to progress: what is added, when, how often, in which weeks, and up to what."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Place


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
