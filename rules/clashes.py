"""What begins while something else goes on."""

from __future__ import annotations

from itertools import combinations

from ..lint.engine.registry import rule
from ..lint.findings.finding import Related, found
from ..lint.model.naming import day_name

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.on_days import Activity
    from ..lint.model.sessions import Prescription, Session


@rule(
    "times-clash",
    family="schedule",
    severity="warning",
    confidence="fact",
    why="Nobody is in two places at once. Two sessions with the same hour may be meant one after the other:"
    " then the hour of the second says so.",
    sources=(),
)
def times_clash(week: Week, limits: Limits) -> Iterator[DraftFinding]:
    """A session that begins at the hour of another one, or while an activity goes on.

    Looks at what has an hour: sessions, and activities with their minutes. Wants one thing at a time. A note
    where both are sessions, which may be meant one after the other. Silent where one of two sessions holds
    nothing but tests and what the athlete chooses: they are a part of the other.

    Flags:
        programme: Rowers
        starts: 2026-01-05
        sessions:
          - session: Strength  # <- here
            day: thursday 18:30
            exercises: [{exercise: deadlift, sets: 3, reps: 5}]
          - {activity: water session, day: thursday 18:00, minutes: 90, effort: 6}

    Passes:
        programme: Rowers
        starts: 2026-01-05
        sessions:
          - session: Strength
            day: thursday 19:30
            exercises: [{exercise: deadlift, sets: 3, reps: 5}]
          - {activity: water session, day: thursday 18:00, minutes: 90, effort: 6}
    """
    for first, second in combinations(sorted(_hours(week), key=lambda one: one.key), 2):
        if first.day != second.day or not second.begins_within(first):
            continue
        both = first.minutes is None and second.minutes is None
        if both and (first.is_measuring or second.is_measuring):
            continue
        later = first if first.minutes is None and second.minutes is not None else second
        other = first if later is second else second
        yield found(
            later.what.place,
            f"{later.what.name} ({later.clock}) and {other.what.name} ({other.clock}) clash on"
            f" {day_name(week.programme.starts, later.day)}.",
            severity="note" if both else "warning",
            wanted="one thing at a time",
            change="Move one of them, or correct its hour.",
            where=later.what.name,
            subject=f"{first.what.name} and {second.what.name}",
            related=(Related(other.what.place, f"{other.what.name}, {other.clock}"),),
        )


class _Hour:
    """A session or an activity on a day of the week, with its hour.

    ``minutes`` are those of an activity, 0 where they are not known; of a session they are None. ``lines``
    are what a session holds.
    """

    def __init__(
        self,
        day: int,
        hour: float,
        what: Session | Activity,
        minutes: float | None = None,
        lines: Sequence[Prescription] = (),
    ) -> None:
        self.day = day
        self.hour = hour
        self.what = what
        self.minutes = minutes
        self.lines = lines
        self.key = (day, hour)

    @property
    def is_measuring(self) -> bool:
        """Whether a session holds nothing but tests and the athlete's own choice."""
        return all(line.test or line.kind == "own choice" for line in self.lines)

    @property
    def clock(self) -> str:
        """``18:30``, with the minutes where they are known."""
        begins = f"{int(self.hour)}:{round(self.hour % 1 * 60):02d}"
        return f"{begins}, {self.minutes:g} min" if self.minutes else begins

    def begins_within(self, earlier: _Hour) -> bool:
        """Whether it begins before an earlier one ends; of a session nothing but its beginning is known."""
        return self.hour < earlier.hour + (earlier.minutes or 0.0) / 60 or self.hour == earlier.hour


def _hours(week: Week) -> Iterator[_Hour]:
    for visit in week.visits:
        if visit.hour is not None and any(entry.is_done for entry in visit.own):
            lines = [entry.prescription for entry in visit.own]
            yield _Hour(visit.day, visit.hour, visit.session, None, lines)
    for activity in week.block.activities:
        for day in activity.days_in(week.in_block):
            hour = activity.hour(week.in_block, day)
            if hour is not None:
                yield _Hour(day, hour, activity, activity.minutes.low if activity.minutes else 0.0)
