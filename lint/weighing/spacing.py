"""What changes in the hours between hard days, and between them and matches and other events."""

from __future__ import annotations

from ..body import catalogue
from ..counting.credits import DIRECT
from ..wording.words import first_of
from .difference import Difference

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..counting.ledger import Ledger

HOURS_A_DAY = 24

NEAR = 96
"""Hours from which on it is of no weight how long ago something was trained (common practice, no source)."""

LOADS = ("moderate", "high")
"""What an activity asks of an area, from which the hours before it are told."""

FURTHEST = 10
"""Days between two trainings of a group beyond which no hours are told."""


def spacing_changes(old: Ledger, new: Ledger) -> list[Difference]:
    """Hours that have become fewer or more, the most telling first."""
    return sorted([*_before_events(old, new), *_between_days(old, new)], key=lambda one: -one.weight)


class _Days:
    """The days on which each group is trained directly by hard sets: all of them, and the heavy ones."""

    def __init__(self, ledger: Ledger) -> None:
        self.of: dict[tuple[str, bool], list[int]] = {}
        for number, _, tally in ledger.training_days():
            for group in tally.groups():
                hard = tally.sets(group, DIRECT)
                if hard:
                    self.of.setdefault((group, False), []).append(number)
                if hard.where(lambda one: one.slot == "heavy"):
                    self.of.setdefault((group, True), []).append(number)

    def last_before(self, group: str, heavy: bool, day: int) -> int | None:
        """Hours from the last training of a group to a day, None where it is long ago; a day's own counts."""
        days = [one for one in self.of.get((group, heavy), ()) if one <= day]
        return (day - days[-1]) * HOURS_A_DAY if days and day - days[-1] <= FURTHEST else None

    def next_after(self, group: str, heavy: bool, day: int) -> int | None:
        """Hours from a day to the next training of a group."""
        days = [one for one in self.of.get((group, heavy), ()) if one > day]
        return (days[0] - day) * HOURS_A_DAY if days and days[0] - day <= FURTHEST else None


class _Occasion:
    """What hard training keeps away from: its day, the groups it loads (None: all), whether much, and
    whether an event falls on that day."""

    __slots__ = ("day", "groups", "is_event", "is_high", "name")

    def __init__(self, name: str, day: int, groups: set[str] | None, is_high: bool, is_event: bool) -> None:
        self.is_event = is_event
        self.name = name
        self.day = day
        self.groups = groups
        self.is_high = is_high


def _occasions(ledger: Ledger) -> dict[tuple[str, int, int], _Occasion]:
    """Events and activities that load some muscles, by name, week and their number in that week."""
    found: dict[tuple[str, int, int], _Occasion] = {}

    def add(one: _Occasion) -> None:
        week = (one.day - 1) // 7 + 1
        found[one.name, week, sum(key[:2] == (one.name, week) for key in found)] = one

    events = {day: event.name for day, event in ledger.events()}
    for day, name in events.items():
        add(_Occasion(name, day, None, True, True))
    for day, _, activity in ledger.activities():
        groups = {
            name
            for term, load in activity.loads
            if load in LOADS
            for name, members in catalogue.groups.items()
            if set(members).intersection(catalogue.area(term.words) or ())
        }
        if groups:
            is_high = any(load == "high" for _, load in activity.loads)
            add(_Occasion(activity.name, day, groups, is_high, day in events))
    return found


def _before_events(old: Ledger, new: Ledger) -> Iterator[Difference]:
    """Hours from the last training of a group to an event or activity; those that change alike are one."""
    was, now = _Days(old), _Days(new)
    before, after = _occasions(old), _occasions(new)
    found: dict[tuple[bool, bool, int, int, tuple[str, ...]], list[tuple[str, int]]] = {}
    for key, one in after.items():
        if key not in before or (one.groups is not None and one.is_event and before[key].is_event):
            continue
        closer: dict[tuple[bool, int, int], list[str]] = {}
        for group in catalogue.groups if one.groups is None else sorted(one.groups, key=_place):
            for heavy in (True, False):
                hours, left = (
                    was.last_before(group, heavy, before[key].day),
                    now.last_before(group, heavy, one.day),
                )
                if hours is not None and left is not None and hours != left and min(hours, left) < NEAR:
                    closer.setdefault((heavy, hours, left), []).append(group)
        for (heavy, hours, left), groups in closer.items():
            if heavy or (True, hours, left) not in closer:
                found.setdefault((heavy, one.is_high, hours, left, tuple(groups)), []).append(key[:2])
    for (heavy, is_high, hours, left, trained), occasions in found.items():
        names = list(dict.fromkeys(name for name, _ in occasions))
        telling = (60.0 if left < 72 else 52.0) + 2 * heavy + 16 * is_high
        yield Difference(
            "hours",
            f"{'heavy ' if heavy else ''}{first_of(trained)} {hours} -> {left} h before {first_of(names, 2)}",
            telling if left < hours else 30,
            weeks=sorted({week for _, week in occasions}),
            subject=trained[0],
            before=f"{hours} h",
            after=f"{left} h",
        )


def _place(group: str) -> int:
    return list(catalogue.groups).index(group)


def _between_days(old: Ledger, new: Ledger) -> Iterator[Difference]:
    """The fewest hours from a training of a group to the next one, week by week."""
    was, now = _Days(old), _Days(new)
    found: dict[tuple[int, int], dict[str, list[int]]] = {}
    for group in catalogue.groups:
        for week in range(1, min(len(old.weeks), len(new.weeks)) + 1):
            hours = _fewest(was, group, week), _fewest(now, group, week)
            if None not in hours and hours[0] != hours[1]:
                pair = (int(hours[0] or 0), int(hours[1] or 0))
                found.setdefault(pair, {}).setdefault(group, []).append(week)
    for (hours_before, left), groups_in in found.items():
        names, weeks = _most(groups_in)
        closer = left < hours_before
        yield Difference(
            "hours",
            f"{first_of(names)} {hours_before} -> {left} h between days",
            (56 if left <= 48 else 48) if closer else 26,
            weeks=weeks,
            subject=names[0],
            before=f"{hours_before} h",
            after=f"{left} h",
        )


def _fewest(days: _Days, group: str, week: int) -> int | None:
    own = [one for one in days.of.get((group, False), ()) if (one - 1) // 7 + 1 == week]
    gaps = [gap for one in own if (gap := days.next_after(group, False, one)) is not None]
    return min(gaps, default=None)


def _most(groups_in: dict[str, list[int]]) -> tuple[list[str], list[int]]:
    """The groups, in the order of the body, and all their weeks."""
    names = [group for group in catalogue.groups if group in groups_in]
    return names, sorted({week for weeks in groups_in.values() for week in weeks})
