"""Where sessions take place, by week or by weekday."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Term


class Where:
    """Where sessions take place, by week or by weekday.

    ``parts`` are, in order: first week, last week, day (1 to 7 from the start day, 0 for all) and the place.
    """

    __slots__ = ("parts",)

    def __init__(self, parts: tuple[tuple[int, int, int, Term], ...]) -> None:
        self.parts = parts

    def throughout(self, weeks: int) -> str:
        """The place of all days of so many weeks; empty where there is none."""
        only = [term.words for first, last, day, term in self.parts if not day and last - first + 1 >= weeks]
        return only[0] if len(self.parts) == len(only) == 1 else ""

    def on(self, week: int, day: int) -> str:
        """The place on a day of a week; empty where none is written."""
        for first, last, on, term in self.parts:
            if first <= week <= last and on in (0, day):
                return term.words
        return ""
