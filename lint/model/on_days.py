"""Days on which something takes place, the same each week or not; and what does beside the sessions."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Place, Term
    from .quantities import Range


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

    def is_moved(self, week: int, day: int) -> bool:
        """Whether a day of a week of its block is one that it has in less than half of its weeks."""
        held = [days for days, _ in self.by_week.values() if days]
        return bool(self.days_in(week)) and 2 * sum(day in days for days in held) < len(held)

    def hour(self, week: int, day: int) -> float | None:
        """The hour at which it begins on a day of a week of its block; None where none is written."""
        return (self.by_week.get(week, ((), self.hours))[1] if self.by_week else self.hours).get(day)


class Activity(OnDays):
    """Something that loads the body but is no lifting: a field session, a match, a shift at work.

    ``in_weeks`` are the runs of weeks of its block in which it takes place; empty where it does in all.
    """

    __slots__ = ("effort", "in_weeks", "loads", "minutes", "name", "note", "place")

    def __init__(
        self,
        name: str,
        place: Place,
        *,
        minutes: Range | None,
        effort: Range | None,
        loads: tuple[tuple[Term, str], ...],
        note: str,
    ) -> None:
        super().__init__()
        self.name = name
        self.place = place
        self.minutes = minutes
        self.effort = effort
        self.loads = loads
        self.note = note
        self.in_weeks: tuple[tuple[int, int], ...] = ()

    def takes_place(self, week: int) -> bool:
        """Whether it takes place in a week of its block, counted from 1."""
        return not self.in_weeks or any(first <= week <= last for first, last in self.in_weeks)

    def days_in(self, week: int) -> tuple[int, ...]:
        """Its days in a week of its block, counted from 1; none in a week without it."""
        return super().days_in(week) if self.takes_place(week) else ()
