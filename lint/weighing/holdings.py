"""What a week holds, in tables by muscle, joint action, day, session or lift; numbers are the ledger's."""

from __future__ import annotations

from ..body import catalogue
from ..counting.credits import DIRECT, TOTAL
from ..engine.limits import Situation, floored, limited
from ..model.naming import day_name
from ..model.quantities import NOTHING, Range

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from ..counting.counts import Count
    from ..counting.ledger import Ledger
    from ..counting.set_group import SetGroup
    from ..counting.tally import Tally
    from ..counting.week import Week
    from ..engine.limits import Limits
    from ..engine.registry import Rule
    from ..team.settings import Team

    Value = Range | str | None
    """A cell: a number or a range of numbers, words, or nothing."""

LIMIT_RULE, FLOOR_RULE = "weekly-sets-over-limit", "weekly-sets-under-floor"
"""The rules whose limit and floor the table by muscle shows, for the weeks that they look at."""

COLUMNS = {
    "muscle": ("sets", "direct", "indirect", "under 8", "from 8", "floor", "limit", "days"),
    "action": ("sets", "hard sets", "days"),
    "day": ("sessions", "minutes", "sets", "hard sets"),
    "session": ("day", "minutes", "sets", "hard sets", "lifts"),
    "lift": ("sets", "reps", "% of 1RM", "in reserve", "load", "days"),
}
"""What the tables say of each thing, in order."""

OVER, UNDER = "over", "under"

NEVER = 999.0
"""Sorts lifts of which nobody can say how hard they are behind all others."""


class Row:
    """One thing that a week holds: its ``name`` and ``values`` by column.

    ``mark`` says ``over`` or ``under`` where it passes its limit or falls short of its floor. ``short`` is
    what stands in a table of several weeks.
    """

    __slots__ = ("mark", "name", "short", "values")

    def __init__(self, name: str, values: dict[str, Value], short: str, mark: str = "") -> None:
        self.name = name
        self.values = values
        self.short = short
        self.mark = mark


class Bounds:
    """The limits and floors of weekly sets that hold for a programme, as the rules judge them.

    ``rules`` are those that there are, ``team`` the settings that hold for the programme.
    """

    __slots__ = ("_rules", "_team")

    def __init__(self, rules: Iterable[Rule], team: Team) -> None:
        self._team = team
        self._rules = {
            rule.name: rule for rule in rules if rule.name in (LIMIT_RULE, FLOOR_RULE) and team.runs(rule)
        }

    def _limits(self, week: Week, name: str) -> Limits | None:
        """The limits of a rule in a week; None where it does not look at that week."""
        rule = self._rules.get(name)
        states = {"rehabilitation": week.rehabilitation, "peak": week.is_peak}
        if rule is None or any(states.get(state) for state in rule.stands_back):
            return None
        return self._team.choices.limits(
            rule, Situation(week.programme.goal, week.programme.level, week.phase)
        )

    def counting(self, week: Week) -> str:
        """The kind of count by which the team judges weekly sets."""
        rule = self._rules.get(LIMIT_RULE) or self._rules.get(FLOOR_RULE)
        if rule is None:
            return "fractional"
        return self._team.choices.limits(rule, Situation(week.programme.goal)).name("counting")

    def limits(self, week: Week) -> dict[str, float]:
        """The most sets by group, where there is a limit."""
        limits = self._limits(week, LIMIT_RULE)
        return {} if limits is None else {g: limits.number(n) for g, n in limited(week, limits).items()}

    def floors(self, week: Week) -> dict[str, float]:
        """The fewest sets by group, where there is a floor."""
        limits = self._limits(week, FLOOR_RULE)
        return {} if limits is None else dict.fromkeys(floored(week), limits.number("least"))


class WeekHoldings:
    """The tables of a week; ``numbers`` are all weeks that hold the same."""

    __slots__ = ("_bounds", "numbers", "week")

    def __init__(self, week: Week, numbers: Sequence[int], bounds: Bounds) -> None:
        self.week = week
        self.numbers = tuple(numbers)
        self._bounds = bounds

    def rows(self, by: str) -> list[Row]:
        """The rows of one table."""
        return list(getattr(self, f"_by_{by}")())

    def untrained(self) -> list[str]:
        """The joint actions that get nothing, in the order of the body."""
        return [action for action in catalogue.actions() if not self.week.for_actions((action,))]

    @property
    def minutes(self) -> Range:
        """Minutes of all sessions together."""
        return in_minutes(self.week.time().total)

    def _by_muscle(self) -> Iterator[Row]:
        week, counting = self.week, self._bounds.counting(self.week)
        limits, floors = self._bounds.limits(week), self._bounds.floors(week)
        turn = week.turn()
        groups = [group for group in catalogue.groups if group in week.groups() or group in floors]
        for group in sorted(groups, key=lambda one: -week.sets(one, counting).high):
            sets, direct = week.sets(group, counting), week.sets(group, DIRECT)
            indirect = _less(week.sets(group, TOTAL), direct)
            if not sets and not indirect.high and group not in floors:
                continue
            mark = OVER if group in limits and sets.high > limits[group] else ""
            if group in floors and turn.a_week(turn.tally.sets(group, counting).low) < floors[group]:
                mark = UNDER
            heavy, light = slots(week, group)
            values: dict[str, Value] = {
                "sets": as_range(sets),
                "direct": as_range(direct),
                "indirect": indirect,
                "under 8": as_range(heavy),
                "from 8": as_range(light),
                "floor": _number(floors.get(group)),
                "limit": _number(limits.get(group)),
                "days": _days(week, sets),
            }
            yield Row(group, values, f"{sets} ({direct})", mark)

    def _by_action(self) -> Iterator[Row]:
        for action in catalogue.actions():
            sets = self.week.for_actions((action,))
            if sets:
                hard = self.week.for_actions((action,), hard=True)
                values: dict[str, Value] = {
                    "sets": as_range(sets),
                    "hard sets": as_range(hard),
                    "days": _days(self.week, sets),
                }
                yield Row(action, values, str(sets))

    def _by_session(self) -> Iterator[Row]:
        for visit in self.week.visits:
            values = {**_work(visit, visit.time().total), "day": _day(self.week, visit.day)}
            values["lifts"] = _number(len(visit.lifts()))
            yield Row(visit.session.name, values, _in_short(values))

    def _by_day(self) -> Iterator[Row]:
        for occasion in self.week.occasions():
            seconds = sum((visit.time().total for visit in occasion.visits), NOTHING)
            names = [visit.session.name for visit in occasion.visits if visit.session.name]
            values: dict[str, Value] = {**_work(occasion, seconds), "sessions": ", ".join(names)}
            yield Row(_day(self.week, occasion.visits[0].day), values, _in_short(values))

    def _by_lift(self) -> Iterator[Row]:
        """The lifts, the hardest first."""
        lifts = self.week.lifts()
        for groups in sorted(lifts.values(), key=_hardness):
            name = groups[0].name
            sets = _of(self.week, groups)
            percent, reserve = _span(one.percent for one in groups), _span(one.reserve for one in groups)
            values: dict[str, Value] = {
                "sets": as_range(sets),
                "reps": _span(one.work.reps.a_set() if one.work.reps else None for one in groups),
                "% of 1RM": _rounded(percent),
                "in reserve": _rounded(reserve),
                "load": ", ".join(dict.fromkeys(one.work.load.words for one in groups if one.work.load)),
                "days": _days(self.week, sets),
            }
            reps = f" x {values['reps']}" if values["reps"] else ""
            yield Row(name, values, f"{sets}{reps}{f' at {_rounded(percent)} %' if percent else ''}")


def holdings(ledger: Ledger, bounds: Bounds) -> list[WeekHoldings]:
    """The weeks of a programme; those that hold the same, and are judged alike, as one."""
    alike: dict[tuple[object, ...], list[Week]] = {}
    for week in ledger.weeks:
        key = (week.visits, tuple(bounds.limits(week).items()), tuple(bounds.floors(week).items()))
        alike.setdefault(key, []).append(week)
    return [WeekHoldings(weeks[0], [week.number for week in weeks], bounds) for weeks in alike.values()]


def hardest_first(weeks: Iterable[WeekHoldings]) -> list[str]:
    """The names of the lifts of some weeks, the hardest first: by their hardest week."""
    lifts: dict[str, list[SetGroup]] = {}
    for part in weeks:
        for groups in part.week.lifts().values():
            lifts.setdefault(groups[0].name, []).extend(groups)
    return sorted(lifts, key=lambda name: _hardness(lifts[name]))


def as_range(count: Count) -> Range:
    """A count as a range of sets."""
    return Range(count.low, count.high)


def in_minutes(seconds: Range) -> Range:
    """Seconds as whole minutes."""
    return Range(round(seconds.low / 60), round(seconds.high / 60))


def _less(total: Count, direct: Count) -> Range:
    return Range(total.low - direct.low, total.high - direct.high)


def _number(value: float | None) -> Range | None:
    return None if value is None else Range(value, value)


def _day(week: Week, day: int) -> str:
    return day_name(week.programme.starts, day) if day else "any day"


def _days(week: Week, count: Count) -> str:
    return " ".join(day_name(week.programme.starts, day)[:3] for day in count.days())


def _work(tally: Tally, seconds: Range) -> dict[str, Value]:
    """Minutes, sets and hard sets."""
    return {
        "minutes": in_minutes(seconds),
        "sets": as_range(tally.all_sets()),
        "hard sets": as_range(tally.all_sets(hard=True)),
    }


def _in_short(values: dict[str, Value]) -> str:
    return f"{values['sets']} in {values['minutes']} min"


def slots(tally: Tally, group: str) -> tuple[Count, Count]:
    """A group's direct hard sets under 8 repetitions, and those from 8."""
    direct = tally.sets(group, DIRECT)
    return direct.where(lambda one: one.slot == "heavy"), direct.where(lambda one: one.slot == "light")


def _of(week: Week, groups: Sequence[SetGroup]) -> Count:
    """The sets of some groups of sets."""
    return week.all_sets().where(lambda one: one in groups)


def _span(ranges: Iterable[Range | None]) -> Range | None:
    """From the lowest to the highest of some ranges; None where there is none."""
    known = [one for one in ranges if one is not None]
    return Range(min(one.low for one in known), max(one.high for one in known)) if known else None


def _rounded(span: Range | None) -> Range | None:
    return None if span is None else Range(round(span.low, 1), round(span.high, 1))


def _hardness(groups: Sequence[SetGroup]) -> tuple[float, float]:
    """Sorts the hardest first: by the share of 1RM, then by how many repetitions the load would allow."""
    percent = _span(one.percent for one in groups)
    allowed = [
        reps.low + one.reserve.low
        for one in groups
        if one.work.reps is not None
        and (reps := one.work.reps.a_set()) is not None
        and one.reserve is not None
    ]
    return -(percent.high if percent else 0.0), min(allowed, default=NEVER)


def in_words(value: Value) -> str:
    """A cell in words; empty where there is nothing."""
    return "" if value is None else str(value)
