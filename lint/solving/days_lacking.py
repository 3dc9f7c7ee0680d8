"""Days that there are too few of: for as many days of something, or for times that far apart."""

from __future__ import annotations

from itertools import combinations, pairwise
from math import ceil

from ..engine.demands import DAYS_WITH
from ..model.naming import day_name
from ..wording.words import counted_noun, listed, plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Sequence

    from ..counting.ledger import Ledger
    from ..counting.week import Week
    from ..engine.demands import RuleDemand
    from ..model.sessions import Session
    from .judge import Seen
    from .lines import Plan

DAYS_A_WEEK = 7
HOURS_A_DAY = 24


def days_lacking(plan: Plan, ledger: Ledger, week: Week, seen: Seen, aims: Sequence[RuleDemand]) -> list[str]:
    """That the athlete's days do not hold what a finding asks for, and which would do; nothing if they do."""
    asked = max(aims, key=lambda one: one.least or 0.0)
    if asked.unit == DAYS_WITH and asked.least is not None:
        return _too_few(plan, ledger, week, seen, asked)
    apart = 2 if asked.unit == "days running" else ceil((asked.least or 0.0) / HOURS_A_DAY)
    if asked.unit in ("h", "days running") and apart > 1:
        return _too_near(plan, ledger, week, seen, apart, asked)
    return []


def _too_few(plan: Plan, ledger: Ledger, week: Week, seen: Seen, asked: RuleDemand) -> list[str]:
    """More days of something than there are."""
    athlete, least = ledger.athlete, int(asked.least or 0)
    days = athlete.days if athlete is not None else None
    about = f"{counted_noun(least, 'day')} a week of {asked.group}"
    if days is not None:
        there = days if isinstance(days, int) else len(set(days))
        if there < least:
            has = counted_noun(there, "day")
            return [f"{about} cannot be had: the athlete has {has}. It takes a further one under `days`."]
    sessions = len({visit.day or visit for visit in week.visits})
    if sessions < least:
        return [f"{about} need {least} days with a session; the week has {sessions}."]
    holding = _sessions(plan, seen)
    others = list(dict.fromkeys(visit.session.name for visit in week.visits if visit.session not in holding))
    if others:
        return [f"{about} are to be had: move some of its sets to {listed(others, 'or')}; which, you decide."]
    return []


def _sessions(plan: Plan, seen: Seen) -> set[Session]:
    """The sessions that a finding speaks of."""
    held = [plan.session_at(lever.offset) for lever in seen.levers]
    return {one.session for one in held if one is not None}


def _too_near(plan: Plan, ledger: Ledger, week: Week, seen: Seen, apart: int, asked: RuleDemand) -> list[str]:
    """Times that do not find room so far apart on the athlete's weekdays."""
    athlete = ledger.athlete
    days = athlete.days if athlete is not None else None
    several = _sessions(plan, seen)
    times = len({visit.day for visit in week.visits if visit.day and visit.session in several})
    if days is None or isinstance(days, int) or times < 2:
        return []
    starts, rounds = week.programme.starts, len(ledger.weeks) > 1
    weekdays = {day_name(starts, one): one for one in range(1, DAYS_A_WEEK + 1)}
    has = [number for name, number in weekdays.items() if name.casefold() in days]
    fits = most_apart(has, apart, rounds=rounds)
    if not has or fits >= times:
        return []
    named = listed([name for name, number in weekdays.items() if number in has])
    gap = (
        "no two days running"
        if asked.unit == "days running"
        else f"at least {plain(asked.least or 0)} h apart"
    )
    would_do = [
        name
        for name, number in weekdays.items()
        if number not in has and most_apart([*has, number], apart, rounds=rounds) >= times
    ]
    way = f", such as {would_do[0]}" if would_do else "s"
    return [
        f"{counted_noun(times, 'day')} a week with {gap} cannot be had on {named}: {fits} would fit."
        f" It takes a further day{way}, or less rest between."
    ]


def most_apart(days: Collection[int], apart: int, *, rounds: bool) -> int:
    """The most of some weekdays that lie so many days apart; with ``rounds`` the week begins anew."""
    for number in range(len(set(days)), 0, -1):
        for chosen in combinations(sorted(set(days)), number):
            gaps = [later - one for one, later in pairwise(chosen)]
            gaps += [chosen[0] + DAYS_A_WEEK - chosen[-1]] if rounds and number > 1 else []
            if all(gap >= apart for gap in gaps):
                return number
    return 0
