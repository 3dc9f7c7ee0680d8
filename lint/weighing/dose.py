"""What changes in the dose: sets for muscle groups, under 8 and from 8 repetitions, joint actions."""

from __future__ import annotations

from ..body import catalogue
from ..counting.credits import DIRECT, FRACTIONAL
from ..wording.words import plain, sets_of, week_list
from .difference import Difference
from .holdings import slots
from .sessions import distinct

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from ..counting.counts import Count
    from ..counting.tally import Tally
    from .sessions import WeekPair

    Series = list[tuple[int, str, str, float]]
    """For each week in which a count differs: its number, the count before and after, and by how much."""

HELPING_AT_MOST = 30.0
"""How telling it is at most that a group helps more or less; from there on, that it is trained so."""

MOST_RUNS = 2
"""Values of a group that are said one by one, where they differ from week to week."""


def dose_changes(pairs: Sequence[WeekPair]) -> list[Difference]:
    """All changes of the dose, the largest first."""
    found = [*_groups(pairs), *_repetitions(pairs), *_actions(pairs)]
    return sorted(found, key=lambda one: -one.weight)


def _groups(pairs: Sequence[WeekPair]) -> Iterator[Difference]:
    """Muscle groups with other numbers of hard sets; of two that change alike and overlap, one."""
    told: dict[str, Series] = {}
    weeks = distinct(pairs)
    for group in _trained(pairs):
        series = _series(weeks, group)
        if series and not any(series == told[one] for one in told if nested(group, one)):
            told[group] = series
    for group, series in told.items():
        direct = _series(weeks, group, DIRECT)
        most = max(series, key=lambda one: abs(one[3]))
        beside = (
            "" if [one[1:3] for one in direct] == [one[1:3] for one in series] else _beside(direct, most[0])
        )
        yield Difference(
            "sets",
            f"{group} {_in_words(series)}{beside}",
            min(31 + 3 * abs(most[3]), 70) if direct else min(10 + 2 * abs(most[3]), HELPING_AT_MOST),
            weeks=[one[0] for one in series],
            subject=group,
            before=most[1],
            after=most[2],
        )


def _series(weeks: Iterable[tuple[WeekPair, list[int]]], group: str, counting: str = FRACTIONAL) -> Series:
    """The weeks in which a group's hard sets differ, in order."""
    found: Series = []
    for pair, numbers in weeks:
        was, now = pair.old.sets(group, counting), pair.new.sets(group, counting)
        before, after = str(was), str(now)
        if before != after:
            found += [(number, before, after, now.middle - was.middle) for number in numbers]
    return sorted(found)


def _beside(direct: Series, week: int) -> str:
    one = next((one for one in direct if one[0] == week), None)
    return f" (direct {one[1]} -> {one[2]})" if one else " (indirect sets only)"


def _in_words(series: Series) -> str:
    """``14 -> 7 sets a week``; where the weeks differ, the largest change first."""
    runs: dict[tuple[str, str], list[int]] = {}
    size: dict[tuple[str, str], float] = {}
    for week, was, now, change in series:
        runs.setdefault((was, now), []).append(week)
        size[was, now] = abs(change)
    order = sorted(runs, key=lambda one: (-size[one], runs[one]))
    if len(order) == 1:
        return f"{order[0][0]} -> {order[0][1]} sets a week"
    words = [f"{was} -> {now} in {week_list(runs[was, now])}" for was, now in order[:MOST_RUNS]]
    return "; ".join([*words, *(["smaller changes in others"] if len(order) > MOST_RUNS else [])])


def _repetitions(pairs: Sequence[WeekPair]) -> Iterator[Difference]:
    """Groups whose direct sets go from under 8 repetitions to 8 and more, or back."""
    weeks = distinct(pairs)
    for group in _trained(pairs):
        shifts: dict[str, list[int]] = {}
        sizes: dict[str, float] = {}
        for pair, numbers in weeks:
            was, now = (slots(one, group) for one in (pair.old, pair.new))
            heavier, lighter = now[0].middle - was[0].middle, now[1].middle - was[1].middle
            if heavier * lighter < 0:
                words = _shift(was, now)
                shifts.setdefault(words, []).extend(numbers)
                sizes[words] = min(abs(heavier), abs(lighter))
        if not shifts:
            continue
        most = max(shifts, key=lambda one: sizes[one])
        shifts[most].sort()
        others = sorted(week for words, weeks in shifts.items() if words != most for week in weeks)
        beside = f" in {week_list(shifts[most])}, likewise in {week_list(others)}" if others else ""
        before, _, after = most.partition(" -> ")
        yield Difference(
            "repetitions",
            f"{group}, direct sets: {most}{beside}",
            min(25 + 3 * sizes[most], 60),
            weeks=sorted([*shifts[most], *others]),
            subject=group,
            before=before,
            after=after,
            lead=group,
        )


def _shift(was: tuple[Count, Count], now: tuple[Count, Count]) -> str:
    """``24 under 8 repetitions -> 18 from 8``, or both numbers of both sides."""
    return f"{_slots(was)} -> {_slots(now)}"


def _slots(both: tuple[Count, Count]) -> str:
    parts = [f"{both[0]} under 8 repetitions" if both[0] else "", f"{both[1]} from 8" if both[1] else ""]
    return " and ".join(part for part in parts if part) or "none"


def _actions(pairs: Sequence[WeekPair]) -> Iterator[Difference]:
    """Joint actions that get nothing any more, or something again."""
    sides = _sides(pairs)
    for action in catalogue.actions():
        was, now = ([one.for_actions((action,)) for one in side] for side in sides)
        had, has = max(map(_high, was), default=0), max(map(_high, now), default=0)
        if had and not has:
            words = f"no {action} any more: {sets_of(plain(had))} a week before"
            yield Difference("action", words, 68, subject=action, before=plain(had), after="0")
        elif has and not had:
            words = f"{action} is trained now: {sets_of(plain(has))} a week"
            yield Difference("action", words, 28, subject=action, before="0", after=plain(has))


def _high(count: Count) -> float:
    return count.high


def _sides(pairs: Sequence[WeekPair]) -> tuple[list[Tally], list[Tally]]:
    weeks = distinct(pairs)
    return [one.old for one, _ in weeks], [one.new for one, _ in weeks]


def _trained(pairs: Iterable[WeekPair]) -> list[str]:
    """The groups that get anything in either version, in the order of the body."""
    got = {group for pair, _ in distinct(pairs) for week in (pair.old, pair.new) for group in week.groups()}
    return [group for group in catalogue.groups if group in got]


def nested(group: str, other: str) -> bool:
    """Whether one of two groups holds the other."""
    one, two = set(catalogue.groups[group]), set(catalogue.groups[other])
    return one <= two or two <= one
