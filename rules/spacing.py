"""Time between hard days."""

from __future__ import annotations

from math import ceil, inf

from ..lint.body import catalogue
from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import DIRECT
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import day_name
from ..lint.wording.words import first_of, listed, plain, says
from .offers import moving_apart, offering
from .shared import LIFTS_OF_PARTS, as_name, capital

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Tally
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Severity
    from ..lint.model.on_days import Activity
    from ..lint.model.sessions import Session
    from .offers import Offer

HOURS_A_DAY = 24

HARD_ACTIVITY = Option(
    "hard activity",
    ("high",),
    "grades of load (low, moderate, high) that make a day hard for an area",
    "common practice",
)


@rule(
    "sessions-too-close",
    family="schedule",
    severity="warning",
    confidence="guideline",
    why="An army manual leaves at least 48 hours between work of the same muscles, and in ten men sets to"
    " failure slowed recovery by one to two days. Thirteen highly trained men kept up two sets an exercise"
    " on four days in a row but felt less recovered, so a team may decide otherwise.",
    sources=("fm21-20-48", "acsm-old-48", "moran-2017", "house-4day"),
    options=(
        Option("hours", 48, "hours between two hard days for a muscle group", "fm21-20-48"),
        Option(
            "hours after failure",
            72,
            "hours, where the first day goes to failure",
            "48 hours and the day by which sets to failure slowed recovery (24 to 48 hours in ten men:"
            " Moran-Navarro and others 2017)",
        ),
        Option("hard day", 4, "direct sets that make a day hard", "common practice"),
        Condition(
            "hard set",
            3,
            "repetitions in reserve at most; sets whose effort is not known count, but for light ones",
            "common practice, no source: 3 left is our choice",
        ),
        Condition(
            "hard set of the advanced",
            1,
            "the same where the level is advanced",
            "common practice; thirteen highly trained men kept their repetitions on four hard days in a row"
            " (House and others, the journal not verified)",
        ),
        HARD_ACTIVITY,
        Option(
            "exempt",
            ("calves", "shins", "abdominals", "obliques", "lower back", "forearms", "neck muscles"),
            "muscle groups",
            "common practice",
        ),
        Condition(
            "daily sports",
            ("weightlifting", "weight lifting", "Olympic lifting", "weightlifter"),
            "words in the name of a sport whose lifts are done day after day",
            "common practice",
        ),
        Condition(
            "daily from",
            3,
            "days a week with a snatch, clean or jerk that make it such a sport unsaid",
            "common practice",
        ),
    ),
    stands_back=("rehabilitation",),
)
def sessions_too_close(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Two days with hard work for the same muscle group, too close to one another.

    Counts direct sets with at most 3 repetitions in reserve, of the advanced with 1, day by day over the
    whole calendar; wants 48 hours between two days that hold 4 or more for a group, 72 where those of the
    first go to failure. An activity that loads an area high makes its day hard for the muscle groups there,
    unless it takes place on three days a week and more;
    two activities are left to whoever plans them. Days without a date or weekday are left alone. Where both
    say the time of day, the hours between are counted from one beginning to the other. A weightlifter
    snatches, cleans, pulls and squats day after day: there only sets to failure are spoken of, in a note. One
    is known by the athlete's `sport`, or by a snatch, clean or jerk on 3 days of the week.

    Flags:
        programme: Legs
        sessions:
          - session: Heavy
            day: monday
            exercises: [{exercise: leg press, sets: 4, reps: 6}]
          - session: Light  # <- here
            day: tuesday
            exercises: [{exercise: leg extension, sets: 4, reps: 12}]

    Passes:
        programme: Legs
        sessions:
          - session: Heavy
            day: monday
            exercises: [{exercise: leg press, sets: 4, reps: 6}]
          - session: Light
            day: wednesday
            exercises: [{exercise: leg extension, sets: 4, reps: 12}]
    """
    days = _days(ledger, limits)
    near = ceil(max(limits.number("hours"), limits.number("hours after failure")) / HOURS_A_DAY)
    for index, later in enumerate(days):
        for before in reversed(days[max(index - near, 0) : index]):
            hours = _hours_between(before, later)
            close = [
                part
                for part, work in later.hard.items()
                if part in before.hard
                and hours < limits.number(_needed(before.hard[part]))
                and (work.sets or before.hard[part].sets)
            ]
            if not close or later.week.rehabilitation:
                continue
            is_daily = _is_daily(ledger, later.week, limits)
            if is_daily:
                close = [part for part in close if before.hard[part].failing]
            if close:
                yield _too_close(before, later, close, days, hours, limits, "note" if is_daily else "warning")


def _is_daily(ledger: Ledger, week: Week, limits: Limits) -> bool:
    """Whether the sport itself is to lift day after day, by its name or by what the week holds."""
    sport = ledger.athlete.sport if ledger.athlete else ""
    if says(limits.names("daily sports"), sport):
        return True
    lifting = [
        day
        for day, tally in week.days()
        if any(entry.exercise and says(LIFTS_OF_PARTS, entry.exercise.name) for _, entry in tally.entries())
    ]
    return len(lifting) >= limits.number("daily from")


def _too_close(
    before: _Day,
    later: _Day,
    close: list[tuple[str, str]],
    days: list[_Day],
    hours: float,
    limits: Limits,
    severity: Severity,
) -> DraftFinding:
    programme = later.week.programme
    first, second = (day_name(programme.starts, day.number) for day in (before, later))
    groups = list(dict.fromkeys(group for group, _ in close))
    needed = max((_needed(before.hard[part]) for part in close), key=limits.number)
    failing = [sets for part in close if (sets := before.hard[part].failing)]
    words = failing[0].parts[0].entry.worked_out_in_words if failing else ""
    to_failure = f" (to failure{f', {words}' if words else ''})" if failing else ""
    activities = [*before.activities(close), *later.activities(close)]
    movable = later if later.session(close) else before
    session = movable.session(close)
    assert session is not None
    least = limits.words("under {:hard set}", "hard day")
    return found(
        session.place,
        f"{capital(first_of(_worst_first(groups, before, later)))} hard on {before.words(first, close)}"
        f"{to_failure} and {later.words(second, close)}, {plain(round(hours, 1))} h apart.",
        severity=severity,
        wanted=limits.words("{:h}", needed),
        change=f"Move {as_name(session.name)} further from {listed(activities)}, or keep it {least}."
        if activities
        else f"Move one day, or keep it {least}.",
        where=session.name,
        edits=_apart(before, later, close, days, ceil(limits.number(needed) / HOURS_A_DAY)),
        subject=f"{first} {second}",
        related=counted_lines(
            *(sets for part in close for day in (before, later) if (sets := day.hard[part].sets))
        ),
        weeks=(movable.week.number,),
        group=listed(groups),
        amount=Amount(hours, limits.number(needed), "h"),
        excess=len(groups),
    )


def _apart(before: _Day, later: _Day, close: list[tuple[str, str]], days: list[_Day], apart: int) -> Offer:
    """Either session on a day that is far enough from all others that are hard for the same groups."""
    return offering(
        *(
            moving_apart(one.week, session, one.number, _as_hard(one, days), apart)
            for one in (later, before)
            if (session := one.session(close)) is not None
        )
    )


def _as_hard(day: _Day, days: list[_Day]) -> list[int]:
    """The other days of its week that are hard for one of its groups."""
    return [
        one.number
        for one in days
        if one.week is day.week and one is not day and not one.hard.keys().isdisjoint(day.hard)
    ]


def _hours_between(before: _Day, later: _Day) -> float:
    """The hours between two days: from the last start to the first, where all of these are written."""
    hours = (later.number - before.number) * HOURS_A_DAY
    if not later.tells_hours:
        return float(hours)
    starts, ends = before.starts(), later.starts()
    return hours + min(ends) - max(starts) if starts and ends else float(hours)


def _worst_first(groups: list[str], *days: _Day) -> list[str]:
    """The groups by the hard sets of the days, the most first."""
    work = [(group, hard.sets.middle) for day in days for (group, _), hard in day.hard.items() if hard.sets]
    return sorted(groups, key=lambda group: -sum(sets for one, sets in work if one == group))


class _HardWork:
    """What makes a day hard for a group: its hard sets, those that fail where enough do; or an activity."""

    def __init__(self, sets: Count | None, failing: Count | None, activity: str = "") -> None:
        self.sets = sets
        self.failing = failing
        self.activity = activity


class _Day:
    """A day of the calendar by its number, with what is hard on it by group and side.

    ``tells_hours`` says whether any of its sessions has a time of day.
    """

    def __init__(
        self, number: int, week: Week, hard: dict[tuple[str, str], _HardWork], *, tells_hours: bool = False
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


def _days(ledger: Ledger, limits: Limits) -> list[_Day]:
    """Every day with a session or an activity, in order, with what is hard on it."""
    days: dict[int, _Day] = {}
    advanced = ledger.level == "advanced"
    most_left = limits.number("hard set of the advanced" if advanced else "hard set")
    for number, week, tally in ledger.training_days():
        hard = dict(ledger.recall(_hard_groups, tally, limits, most_left))
        days[number] = _Day(number, week, hard, tells_hours=any(one.session.hours for one in tally.visits))
    for number, week, activity in ledger.activities():
        day = days.setdefault(number, _Day(number, week, {}))
        if len(activity.days_in(week.in_block)) >= DAILY:
            continue  # a sport of most days leaves no day free of it
        for group in loaded(activity, limits):
            for side in ("left", "right"):
                day.hard.setdefault((group, side), _HardWork(None, None, activity.name))
    return sorted(days.values(), key=lambda day: day.number)


DAILY = 3
"""Days a week from which an activity is the athlete's daily sport (common practice, no source)."""


def _hard_groups(day: Tally, limits: Limits, most_left: float) -> dict[tuple[str, str], _HardWork]:
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
                work = _HardWork(sets, failing if failing.middle >= least else None)
                hard.update({(group, side): work for side in sides})
    return hard


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


def _needed(work: _HardWork) -> str:
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
