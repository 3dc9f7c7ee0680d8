"""What an edit changes in a week: sets, minutes of sessions, sets of muscle groups; read off the ledgers."""

from __future__ import annotations

from itertools import zip_longest

from ..body.catalogue import groups
from ..wording.words import counted_noun, plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..counting.ledger import Ledger
    from ..counting.week import Week

MOST_MUSCLES = 4
"""Muscle groups that are named; of more it is only said how many."""


def effects(before: list[Ledger], after: list[Ledger]) -> list[str]:
    """In words: ``3 sets more a week``, ``Lower 8 min longer, 52 min``, ``hamstrings 5 -> 8``.

    They are those of the week that changes most, for the first athlete for whom any does.
    """
    for was, now in zip(before, after, strict=False):
        weeks = list(zip_longest(was.weeks, now.weeks))
        pairs = [(one, other) for one, other in weeks if one is not None and other is not None]
        changed = max(pairs, key=lambda pair: _size(*pair), default=None)
        if changed is not None and _size(*changed):
            return [*_sets(*changed), *_minutes(*changed), *_muscles(*changed), *_days(*changed)]
    return ["no sets, no minutes"]


def _size(was: Week, now: Week) -> float:
    muscles = sum(abs(now.sets(one).high - was.sets(one).high) for one in groups)
    minutes = abs(now.time().total.high - was.time().total.high) / 600
    return muscles + minutes + (_by_day(was) != _by_day(now))


def _sets(was: Week, now: Week) -> Iterator[str]:
    more = now.all_sets().high - was.all_sets().high
    if more:
        yield f"{counted_noun(plain(abs(more)), 'set')} {'more' if more > 0 else 'fewer'} a week"


def _minutes(was: Week, now: Week) -> Iterator[str]:
    before = {one.session.name: one.time().total.middle / 60 for one in was.visits}
    for visit in now.visits:
        minutes = visit.time().total.middle / 60
        by = round(minutes) - round(before.pop(visit.session.name, minutes))
        if by:
            how = "longer" if by > 0 else "shorter"
            yield f"{visit.session.name} {abs(by)} min {how}, about {minutes:.0f} min"


def _muscles(was: Week, now: Week) -> Iterator[str]:
    changed = []
    for group in groups:
        one, other = was.sets(group).high, now.sets(group).high
        if one != other:
            changed.append((abs(other - one), f"{group} {plain(one)} -> {plain(other)}"))
    changed.sort(key=lambda one: -one[0])
    yield from (words for _, words in changed[:MOST_MUSCLES])
    if len(changed) > MOST_MUSCLES:
        yield f"{counted_noun(len(changed) - MOST_MUSCLES, 'more muscle group')} by less"


def _by_day(week: Week) -> list[tuple[int, str]]:
    return [(visit.day, visit.session.name) for visit in week.visits]


def _days(was: Week, now: Week) -> Iterator[str]:
    if _by_day(was) != _by_day(now):
        yield "another day in the diary"
