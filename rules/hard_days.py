"""Days of the calendar, and what is hard on them."""

from __future__ import annotations

from functools import partial
from math import inf

from ..lint.body import catalogue
from ..lint.counting.credits import DIRECT
from ..lint.engine.limits import Option
from ..lint.wording.words import listed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Tally
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.model.on_days import Activity
    from ..lint.model.sessions import Session

HARD_ACTIVITY = Option(
    "hard activity",
    ("high",),
    "grades of load (low, moderate, high) that make a day hard for an area",
    "common practice",
)


class HardWork:
    """What makes a day hard for a group: its hard sets, those that fail where enough do; or an activity.

    ``sure`` are those of the sets that are hard and heavy whatever comes next to them, where enough are.
    """

    def __init__(
        self, sets: Count | None, failing: Count | None, activity: str = "", sure: Count | None = None
    ) -> None:
        self.sets = sets
        self.failing = failing
        self.activity = activity
        self.sure = sure


class Day:
    """A day of the calendar by its number, with what is hard on it by group and side.

    ``tells_hours`` says whether any of its sessions has a time of day.
    """

    def __init__(
        self, number: int, week: Week, hard: dict[tuple[str, str], HardWork], *, tells_hours: bool = False
    ) -> None:
        self.number = number
        self.week = week
        self.hard = hard
        self.tells_hours = tells_hours

    def starts(self) -> list[float]:
        """The hours at which the sessions begin that make it hard; none where one of them does not say."""
        visits = {
            part.visit for work in self.hard.values() for part in (work.sets.parts if work.sets else ())
        }
        known = [visit.hour for visit in visits]
        if any(work.activity for work in self.hard.values()):
            return []
        return [hour for hour in known if hour is not None] if None not in known else []

    def activities(self, parts: Iterable[tuple[str, str]]) -> list[str]:
        """The activities that make it hard for some of the groups."""
        return list(dict.fromkeys(name for part in parts if (name := self.hard[part].activity)))

    def session(self, parts: Iterable[tuple[str, str]]) -> Session | None:
        """The first session that makes it hard for one of the groups."""
        counts = [sets for part in parts if (sets := self.hard[part].sets)]
        return counts[0].parts[0].visit.session if counts else None

    def words(self, name: str, parts: Iterable[tuple[str, str]]) -> str:
        """``Saturday (match)``."""
        activities = self.activities(parts)
        return f"{name} ({listed(activities)})" if activities else name


def hard_days(ledger: Ledger, limits: Limits) -> list[Day]:
    """Every day with a session or an activity, in order, with what is hard on it."""
    days: dict[int, Day] = {}
    advanced = ledger.level == "advanced"
    most_left = limits.number("hard set of the advanced" if advanced else "hard set")
    for number, week, tally in ledger.training_days():
        hard = dict(ledger.recall(_hard_groups, tally, limits, most_left))
        days[number] = Day(number, week, hard, tells_hours=any(one.session.hours for one in tally.visits))
    for number, week, activity in ledger.activities():
        day = days.setdefault(number, Day(number, week, {}))
        if len(activity.days_in(week.in_block)) >= DAILY:
            continue  # a sport of most days leaves no day free of it
        for group in loaded(activity, limits):
            for side in ("left", "right"):
                day.hard.setdefault((group, side), HardWork(None, None, activity.name))
    return sorted(days.values(), key=lambda day: day.number)


DAILY = 3
"""Days a week from which an activity is the athlete's daily sport (common practice, no source)."""


def _hard_groups(day: Tally, limits: Limits, most_left: float) -> dict[tuple[str, str], HardWork]:
    """Muscle groups, with the side, for which a day is hard: one leg rests while the other works."""
    least = limits.number("hard day")
    hard = {}
    for group in day.groups():
        if group in limits.names("exempt") or day.sets(group, DIRECT).middle < least:
            continue
        for sides in (("left",), ("right",)) if day.one_sided else (("left", "right"),):
            sets = day.sets(group, DIRECT, side=sides[0]).where(lambda entry: _leaves(entry) <= most_left)
            if sets.middle >= least:
                failing = sets.where(lambda entry: entry.effort.failing)
                sure = sets.where(partial(_is_surely_hard, group=group, limits=limits))
                work = HardWork(
                    sets,
                    failing if failing.middle >= least else None,
                    sure=sure if sure.middle >= least else None,
                )
                hard.update({(group, side): work for side in sides})
    return hard


WEIGHTLESS = ("band", "bodyweight", "suspension", "sandbag", "sliders", "none", "ball", "")
"""What is lifted that makes no set heavy (common practice, no source)."""


def _is_surely_hard(entry: SetGroup, *, group: str, limits: Limits) -> bool:
    """Whether its sets are hard and heavy whatever else is planned."""
    left = limits.number("between sessions")
    if left >= limits.number("hard set"):
        return True  # no more is asked of two sessions than of one beside a match
    if entry.implement in WEIGHTLESS or (group == "adductors" and entry.compound):
        return False
    reserve, percent = entry.reserve, entry.percent
    if reserve is not None and reserve.low <= left and reserve.high <= left + 1:
        return True
    return percent is not None and percent.low >= limits.number("heavy")


def loaded(activity: Activity, limits: Limits) -> list[str]:
    """Muscle groups that an activity loads so much that its day is hard for them."""
    grades = limits.names("hard activity")
    muscles = {
        muscle
        for area, grade in activity.loads
        if grade in grades
        for muscle in catalogue.area(area.words) or ()
    }
    return [group for group, members in catalogue.groups.items() if muscles.intersection(members)]


def needed(work: HardWork) -> str:
    """The limit for the hours after it."""
    return "hours after failure" if work.failing else "hours"


def _leaves(entry: SetGroup) -> float:
    """Fewest repetitions in reserve, written or worked out; none where effort is not known.

    Many repetitions with a band, or with no more than a light exercise asks, are not hard unless somebody
    says so: nothing shows what such sets leave.
    """
    if entry.reserve:
        return entry.reserve.low
    return inf if _is_light_work(entry) else 0.0


def _is_light_work(entry: SetGroup) -> bool:
    """Whether many repetitions are done with a band, or with the body alone in a light exercise."""
    light = entry.exercise is not None and entry.exercise.capacity == "light"
    unloaded = entry.implement == "band" or (entry.implement == "bodyweight" and light)
    return unloaded and entry.slot == "light" and not entry.to_failure
