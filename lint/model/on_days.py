"""Days of the week on which something takes place, the same each week or not."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Term


class OnDays:
    """What takes place on days: 1 to 7, 1 being the weekday on which the programme starts.

    ``days`` are all that are written, none where no day is; ``hours`` the times of day at which it begins, by
    day. ``by_week`` holds both for each week of its block where they differ from week to week. ``kinds`` are
    the coach's own words for what kind of work it is.
    """

    __slots__ = ("by_week", "days", "hours", "kinds")

    def __init__(self) -> None:
        self.days: tuple[int, ...] = ()
        self.kinds: tuple[Term, ...] = ()
        self.hours: dict[int, float] = {}
        self.by_week: dict[int, tuple[tuple[int, ...], dict[int, float]]] = {}

    def days_in(self, week: int) -> tuple[int, ...]:
        """Its days in a week of its block, counted from 1."""
        return self.by_week.get(week, ((), {}))[0] if self.by_week else self.days

    def hour(self, week: int, day: int) -> float | None:
        """The hour at which it begins on a day of a week of its block; None where none is written."""
        return (self.by_week.get(week, ((), self.hours))[1] if self.by_week else self.hours).get(day)
