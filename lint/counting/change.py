"""How a week, or any other tally, differs from an earlier one."""

from __future__ import annotations

from ..model.quantities import KG_PER_LB
from .set_group import UNITS_OF_LOAD

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from .counts import Count
    from .set_group import SetGroup
    from .tally import Tally, Visit
    from .week import Week


NEARLY = 0.95
"""Share of a limit that lacks it by a hair only (common practice, no source)."""


class Change:
    """How a week, or any other tally, differs from an earlier one.

    ``sets``, ``repetitions`` and ``load`` are in % of the earlier value. ``load`` is the mean over the
    exercises in both tallies whose loads can be compared. ``reserve`` is the change in written repetitions
    in reserve, the mean over the exercises in both: above 0 it has become easier. Each is None if it cannot
    be known. ``parts`` are the changes of each exercise; those that stand in one tally alone are one part.
    """

    __slots__ = ("_parts", "after", "before", "repetitions", "sets")

    def __init__(self, before: Tally, after: Tally) -> None:
        self.before = before
        self.after = after
        was, now = before.all_sets(), after.all_sets()
        self.sets = _in_percent(now.middle, was.middle)
        told = all(map(_tells_repetitions, (was, now)))
        self.repetitions = _in_percent(now.repetitions().middle, was.repetitions().middle) if told else None
        self._parts: list[PartChange] | None = None

    @property
    def load(self) -> float | None:
        """The mean change of load, in %."""
        return _mean(part.load for part in self.parts)

    @property
    def reserve(self) -> float | None:
        """The mean change of written repetitions in reserve."""
        return _mean(part.reserve for part in self.parts)

    def comes_to(self, volume: float, load: float, reserve: float) -> bool:
        """Whether falls in volume, and in load or effort, come together to what one alone should, or nearly.

        ``volume`` and ``load`` are in % less, ``reserve`` in repetitions more.
        """
        volumes = [100 - one for one in (self.sets, self.repetitions) if one is not None]
        lighter = (100 - self.load) / load if self.load is not None else 0.0
        easier = self.reserve / reserve if self.reserve is not None else 0.0
        fewer = max([one / volume for one in volumes] + [0.0])
        return round(fewer + max(lighter, easier, 0.0), 6) >= NEARLY

    @property
    def parts(self) -> list[PartChange]:
        """The change of each exercise in both; those in one alone are the last one together."""
        if self._parts is None:
            earlier, later = self.before.lifts(), self.after.lifts()
            both = [name for name in later if name in earlier]
            self._parts = [PartChange(earlier[name], later[name]) for name in both]
            gone, new = (
                [group for name, groups in lifts.items() if name not in both for group in groups]
                for lifts in (earlier, later)
            )
            if gone:
                self._parts.append(PartChange(gone, new, alike=False))
        return self._parts


class PartChange:
    """How some groups of sets differ from earlier ones of the same exercise, or of others (not ``alike``).

    ``hard`` is the number of hard sets before, ``held`` that of all; the other values are those of a
    `Change`.
    """

    __slots__ = ("after", "alike", "before")

    def __init__(self, before: list[SetGroup], after: list[SetGroup], *, alike: bool = True) -> None:
        self.before = before
        self.after = after
        self.alike = alike

    @property
    def hard(self) -> float:
        """The hard sets before."""
        return sum(group.sets.middle for group in self.before if group.hard)

    @property
    def held(self) -> float:
        """The sets before."""
        return sum(group.sets.middle for group in self.before)

    @property
    def is_none(self) -> bool:
        """Whether both hold the very same groups of sets."""
        return self.before == self.after

    @property
    def sets(self) -> float | None:
        """The sets, in % of those before."""
        was, now = (sum(group.sets.middle for group in groups) for groups in (self.before, self.after))
        return _in_percent(now, was)

    @property
    def repetitions(self) -> float | None:
        """The repetitions, in % of those before."""
        was, now = (
            sum(group.reps.middle for group in groups if group.reps) for groups in (self.before, self.after)
        )
        return _in_percent(now, was)

    @property
    def load(self) -> float | None:
        """The load, in % of that before."""
        return _load_change(self.before, self.after) if self.alike else None

    @property
    def reserve(self) -> float | None:
        """The change of written repetitions in reserve."""
        return _reserve_change(self.before, self.after) if self.alike else None


def weeks_of_lines(weeks: Iterable[Week]) -> list[list[tuple[Week, SetGroup]]]:
    """What each line holds from week to week, in order: the weeks that have it, with its group of sets.

    Lines of two blocks are one line where session and exercise are called alike.
    """
    return _lines((week, _first_of_each_session(week)) for week in weeks)


def visits_of_lines(weeks: Iterable[Week]) -> list[list[tuple[Week, SetGroup]]]:
    """The same from visit to visit: a week has several groups of a line whose visits hold different ones."""
    return _lines((week, week.visits) for week in weeks)


def _first_of_each_session(week: Week) -> Iterable[Visit]:
    """The first visit of a week to each session, in order."""
    first: dict[str, Visit] = {}
    for visit in week.visits:
        first.setdefault(visit.session.name, visit)
    return first.values()


def _lines(weeks: Iterable[tuple[Week, Iterable[Visit]]]) -> list[list[tuple[Week, SetGroup]]]:
    """What each line holds in some visits of each week."""
    lines: dict[tuple[object, ...], list[tuple[Week, SetGroup]]] = {}
    for week, visits in weeks:
        for visit in visits:
            seen: dict[object, int] = {}
            for group in visit.own:
                name = group.exercise or group.name.casefold()
                seen[name] = seen.get(name, 0) + 1
                if group.sets.high:
                    line = lines.setdefault((visit.session.name, name, seen[name]), [])
                    if (week, group) not in line[-1:]:
                        line.append((week, group))
    return list(lines.values())


def slip_in(before: SetGroup, entry: SetGroup, after: SetGroup) -> tuple[float, float] | None:
    """The number that the load of an entry may be a slip for, and that after it; None where there is none.

    Both are in the unit in which the coach wrote the three loads.
    """
    numbers = _numbers(before, entry, after)
    meant = typed_for(*numbers) if numbers else None
    return None if meant is None else (meant, numbers[2])


def is_a_digit_too_high(before: SetGroup, entry: SetGroup, after: SetGroup) -> bool:
    """Whether a load is above that after it, and one digit less would put it between the two around it."""
    numbers = _numbers(before, entry, after)
    if not numbers or not numbers[0] <= numbers[2] < numbers[1]:
        return False
    was, now, then = numbers
    digits = f"{now:g}"
    less = (
        float(f"{digits[:at]}{int(digit) - 1}{digits[at + 1 :]}")
        for at, digit in enumerate(digits)
        if digit in "123456789"
    )
    return any(was <= number <= then for number in less)


def _numbers(*entries: SetGroup) -> list[float]:
    """The numbers of loads as they are written; none where they are not all written alike."""
    written = [one for one in map(_as_written, entries) if one]
    if len(written) < len(entries) or len({one[1:] for one in written}) > 1:
        return []
    return [one[0] for one in written]


def _as_written(entry: SetGroup) -> tuple[float, str, str, int, str] | None:
    """The number of a load, its kind, unit, pieces, and what it is of; None where it is no single number."""
    load = entry.work.load
    if load is None or len(load.values) != 1 or load.values[0].low != load.values[0].high:
        return None
    number = load.values[0].low / (KG_PER_LB if load.unit == "lb" else 1)
    return round(number, 2), load.kind, load.unit, load.pieces, load.whole


def typed_for(before: float, value: float, after: float) -> float | None:
    """The number that a value between two others may be a slip for; None where there is none.

    Two digits changed places, or a nought too few: what comes out lies between the numbers around it.
    """
    low, high = sorted((before, after))
    if low <= value:
        return None
    digits = f"{value:g}"
    swapped = [
        digits[:at] + digits[at + 1] + digits[at] + digits[at + 2 :]
        for at in range(len(digits) - 1)
        if digits[at : at + 2].isdigit()
    ]
    meant = [number for number in (*map(float, swapped), value * 10) if low <= number <= high]
    return min(meant, default=None)


def _tells_repetitions(count: Count) -> bool:
    """Whether repetitions are written for most of the sets."""
    told = sum(part.sets.middle for part in count.parts if part.entry.reps is not None)
    return 2 * told > count.middle


def _in_percent(now: float, was: float) -> float | None:
    return round(100 * now / was, 6) if was else None


def _mean(numbers: Iterable[float | None]) -> float | None:
    known = [number for number in numbers if number is not None]
    return sum(known) / len(known) if known else None


def _load_change(before: list[SetGroup], after: list[SetGroup]) -> float | None:
    held = {unit for group in before for unit in group.measured}
    for unit in UNITS_OF_LOAD:
        if unit not in held:
            continue
        was, now = (_mean([group.measured.get(unit) for group in groups]) for groups in (before, after))
        if was and now is not None:
            return _in_percent(now, was)
    return None


def _reserve_change(before: list[SetGroup], after: list[SetGroup]) -> float | None:
    written = [[group.written_reserve for group in groups] for groups in (before, after)]
    was, now = (_mean([one.middle if one else None for one in several]) for several in written)
    return None if was is None or now is None else now - was
