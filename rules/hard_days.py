"""Days of the calendar, and what is hard on them."""

from __future__ import annotations

from functools import cached_property, partial
from math import inf

from ..lint.body import catalogue
from ..lint.counting.credits import DIRECT
from ..lint.counting.week import muscles_of
from ..lint.engine.limits import Option
from ..lint.wording.words import listed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from ..lint.counting.counts import Count, CountedSets
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

    ``sure`` are those of the sets that are hard and heavy whatever comes next to them, where enough are;
    ``hour`` is when the activity begins, None where nobody wrote it.
    """

    def __init__(
        self,
        sets: Count | None,
        failing: Count | None,
        activity: str = "",
        sure: Count | None = None,
        hour: float | None = None,
    ) -> None:
        self.sets = sets
        self.failing = failing
        self.activity = activity
        self.sure = sure
        self.hour = hour


Hard = dict[tuple[str, str], "HardWork"]
"""What is hard, by group and side."""


class Day:
    """A day of the calendar by its number, with what is hard on it by group and side.

    ``trained`` works out what its sessions make hard, ``played`` is what its activities do. ``surely`` says
    whether any set is hard and heavy whatever comes next to it.
    """

    def __init__(
        self, number: int, week: Week, trained: Callable[[], Hard] = dict, *, surely: bool = False
    ) -> None:
        self.number = number
        self.week = week
        self.played: Hard = {}
        self.surely = surely
        self.trained = trained

    @cached_property
    def hard(self) -> Hard:
        """What is hard on it; an activity where no session is."""
        return {**self.played, **self.trained()}

    def may_clash(self, other: Day) -> bool:
        """Whether two days may be too close at all: one has an activity, or both have sure sets."""
        return bool(self.played or other.played) or (self.surely and other.surely)

    def starts(self) -> list[float]:
        """The hours at which what makes it hard begins; none where one session or activity does not say."""
        works = self.hard.values()
        hours = {part.visit.hour for work in works if work.sets for part in work.sets.parts}
        hours.update(work.hour for work in works if work.activity)
        known = [hour for hour in hours if hour is not None]
        return known if len(known) == len(hours) else []

    def activities(self, parts: Iterable[tuple[str, str]]) -> list[str]:
        """The activities that make it hard for some of the groups."""
        return list(dict.fromkeys(name for part in parts if (name := self.hard[part].activity)))

    def session(self, parts: Iterable[tuple[str, str]]) -> Session | None:
        """The first session that makes it hard for one of the groups."""
        counted = self.parts_of(parts)
        return counted[0].visit.session if counted else None

    def parts_of(self, parts: Iterable[tuple[str, str]]) -> list[CountedSets]:
        """The sets that make it hard for some of the groups."""
        return [one for part in parts if (sets := self.hard[part].sets) for one in sets.parts]

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
        days[number] = Day(
            number,
            week,
            partial(ledger.recall, _hard_groups, tally, limits, most_left),
            surely=ledger.recall(_any_surely, tally, limits),
        )
    for number, week, activity in ledger.activities():
        day = days.setdefault(number, Day(number, week))
        if len(activity.days_in(week.in_block)) >= DAILY:
            continue  # a sport of most days leaves no day free of it
        begins = activity.hour(week.in_block, number - 7 * (week.number - 1))
        for group in loaded(activity, limits):
            for side in ("left", "right"):
                day.played.setdefault((group, side), HardWork(None, None, activity.name, hour=begins))
    return sorted(days.values(), key=lambda day: day.number)


DAILY = 3
"""Days a week from which an activity is the athlete's daily sport (common practice, no source)."""


def _hard_groups(day: Tally, limits: Limits, most_left: float) -> Hard:
    """Muscle groups, with the side, for which a day is hard: one leg rests while the other works."""
    least = limits.number("hard day")
    hard: Hard = {}
    hard_sets = _passing(day, lambda entry: _leaves(entry) <= most_left)
    to_failure = _passing(day, lambda entry: entry.effort.failing)
    sure = _passing(day, partial(_is_surely_hard, limits=limits))
    for group in day.groups_from(least, DIRECT):
        if group in limits.names("exempt"):
            continue
        for side in ("left", "right"):
            sets = day.sets(group, DIRECT, side=side).where(hard_sets)
            if sets.middle >= least:
                failing, surely = sets.where(to_failure), sets.where(sure)
                if group == "adductors":
                    surely = _their_own(surely, limits)
                hard[group, side] = HardWork(
                    sets,
                    failing if failing.middle >= least else None,
                    sure=surely if surely.middle >= least else None,
                )
    return hard


def _any_surely(day: Tally, limits: Limits) -> bool:
    """Whether any set of a day is hard and heavy whatever else is planned."""
    entries = day.entries()
    hard = _asks_no_more(limits) or any(_is_hard_and_heavy(entry, limits) for _, entry in entries)
    return bool(entries) and hard


def _passing(day: Tally, test: Callable[[SetGroup], bool]) -> Callable[[SetGroup], bool]:
    """A test of the groups of sets of a day, which each is put to once."""
    passing = {entry for _, entry in day.entries() if test(entry)}
    return lambda entry: entry in passing


WEIGHTLESS = ("band", "bodyweight", "suspension", "sandbag", "sliders", "none", "ball", "")
"""What is lifted that makes no set heavy (common practice, no source)."""


def _is_surely_hard(entry: SetGroup, limits: Limits) -> bool:
    """Whether its sets are hard and heavy whatever else is planned."""
    return _asks_no_more(limits) or _is_hard_and_heavy(entry, limits)


def _is_hard_and_heavy(entry: SetGroup, limits: Limits) -> bool:
    """Whether little is left in reserve, or the load is heavy, of something that has weight."""
    if entry.implement in WEIGHTLESS:
        return False
    left = limits.number("between sessions")
    reserve = entry.reserve
    if reserve is not None and reserve.low <= left and reserve.high <= left + 1:
        return True
    percent = entry.percent
    return percent is not None and percent.low >= limits.number("heavy")


def _asks_no_more(limits: Limits) -> bool:
    """Whether no more is asked of two sessions than of one beside a match."""
    return limits.number("between sessions") >= limits.number("hard set")


def _their_own(sure: Count, limits: Limits) -> Count:
    """Of the sets for the adductors those of their own exercises."""
    return sure if _asks_no_more(limits) else sure.where(lambda entry: not entry.compound)


def loaded(activity: Activity, limits: Limits) -> list[str]:
    """Muscle groups that an activity loads so much that its day is hard for them."""
    grades = limits.names("hard activity")
    muscles = muscles_of([area for area, grade in activity.loads if grade in grades])
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
