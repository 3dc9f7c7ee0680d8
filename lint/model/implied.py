"""Sets that nobody wrote as such: they follow from a clock, or from one number for each set.

Nothing here is needed for a line with sets, so that `read_line` imports it only where there are none.
"""

from __future__ import annotations

from .quantities import Range, Reps
from .sessions import Slice
from .values import place_of, text_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Protocol

    from ..text.places import Place
    from .values import LocatedNode

    class ClockReader(Protocol):
        """What is needed here of the reader of a line."""

        unread: set[str]

        def duration(self, at: LocatedNode | None) -> Range | None:
            """A time or a range of times, in seconds."""

        def length(self, at: LocatedNode | None) -> Range | None:
            """How long something goes on, in seconds."""

        def always(self, value: object, place: Place) -> tuple[Slice, ...]:
            """A value for all weeks in which the line takes place."""

        def report(self, rule: str, place: Place, counted: str, *, change: str) -> None:
            """Adds a finding."""


def implied_sets(
    reader: ClockReader, at: LocatedNode, own: dict[str, tuple[Slice, ...]]
) -> tuple[Slice, ...]:
    """Sets that follow from the rest of the line: one every so often, or one number for each set."""
    every, lasts = reader.duration(at.get("every")), reader.length(at.get("for"))
    if every is not None and lasts is not None and (every.low <= 0 or lasts.low < every.high):
        reader.report(
            "no-set-fits",
            place_of(at, "for"),
            f"A set every {text_of(at.get('every'))} does not go into {text_of(at.get('for'))}.",
            change="Correct one of the two.",
        )
    elif every is not None and lasts is not None:
        sets = Range(float(int(lasts.low / every.high)), float(int(lasts.high / every.low)))
        return reader.always(sets, place_of(at, "for"))
    listed = own.get("reps", ())
    if listed and all(isinstance(held.value, Reps) and held.value.each_set for held in listed):
        return tuple(
            Slice(held.first, held.last, Range(len(held.value.sets), len(held.value.sets)), held.place)
            for held in listed
            if isinstance(held.value, Reps)
        )
    reader.unread.update(() if "test" in at else ("sets",))
    return ()
