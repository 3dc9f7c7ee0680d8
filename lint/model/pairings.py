"""What several lines have in common: a superset, a circuit, a complex, and the clock that it goes by."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Place
    from .quantities import Range


class Pairing:
    """A superset, circuit or complex that lines belong to: its ``kind``, rest in seconds, note, and clock.

    ``reps`` are the most repetitions of all lifts of a complex together; 0 for anything else. ``parts`` are
    the weeks in which its clock and rest stay, each with what it is in them; none where they stay in all.
    """

    __slots__ = ("clock", "kind", "note", "parts", "place", "reps", "rest")

    def __init__(self, kind: str, place: Place, rest: Range | None, note: str) -> None:
        self.kind = kind
        self.place = place
        self.rest = rest
        self.note = note
        self.clock: Clock | None = None
        self.reps = 0.0
        self.parts: tuple[tuple[frozenset[int], Pairing], ...] = ()


class Clock:
    """The clock that rounds go by; all times are in seconds, None where they are not written.

    ``every``: a round starts each time this has passed; ``turn``: so does the next exercise. ``on`` and
    ``off``: how long each exercise goes on, and rests. ``lasts``: how long the whole goes on. ``cap``: when
    it ends at the latest. ``counts_rounds``: as many rounds as possible, which nobody has written.
    """

    __slots__ = ("cap", "counts_rounds", "every", "lasts", "off", "on", "place", "turn")

    every: Range | None
    turn: Range | None
    on: Range | None
    off: Range | None
    lasts: Range | None
    cap: Range | None

    def __init__(self, place: Place) -> None:
        self.place = place
        self.counts_rounds = False

    @property
    def sets_pace(self) -> bool:
        """Whether it says when work starts, or how long it goes on."""
        return any((self.every, self.turn, self.on, self.lasts))
