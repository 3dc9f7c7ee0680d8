"""What weeks and sessions hold, in words; every number is the ledger's."""

from __future__ import annotations

from functools import cache

from ...body import catalogue
from ...counting.credits import DIRECT, credits_of
from ...model.naming import day_name
from ...wording.words import counted_noun, first_of, listed, sets_of
from .markdown import Statement, bullets, md, minutes, paragraphs, several, table

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Sequence

    from ...body.catalogue import Exercise
    from ...counting.ledger import Ledger
    from ...counting.tally import Count, Tally, Visit
    from ...counting.week import Week
    from ...model.sessions import Prescription

MOST_GROUPS = 4
"""Groups that are named where only those that matter most are."""

MOST_IN_WORDS = 10
"""Groups that are named where there is room."""

MOST_OTHERS = 5
"""Other lines that are named beside one."""

HALF = "Helping sets count half."


def areas_of(exercise: Exercise, weight: float) -> list[str]:
    """Groups that a set of an exercise brings so much (1 direct, 0.5 helping), and muscles outside groups."""
    credits = credits_of(exercise)
    groups = [group for group in catalogue.groups if credits.get(group) == weight]
    loose = [
        muscle
        for muscle in (exercise.direct if weight == 1.0 else exercise.indirect)
        if not any(muscle in members for members in catalogue.groups.values())
    ]
    return [*groups, *loose]


def main_groups(tally: Tally) -> list[tuple[str, Count]]:
    """Groups that are trained directly, each with its sets (helping ones by half), the most sets first.

    Of groups that lie one in the other and get the same, only the usual one.
    """
    counted = [(group, tally.sets(group)) for group in tally.groups() if tally.sets(group, DIRECT).high]
    kept: list[tuple[str, Count]] = []
    for group, count in counted:
        near = _nested(group)
        if not any(name in near and (one.low, one.high) == (count.low, count.high) for name, one in kept):
            kept.append((group, count))
    return sorted(kept, key=lambda pair: -pair[1].high)


@cache
def _nested(group: str) -> frozenset[str]:
    """The groups that lie within one, or within which it lies."""
    own = set(catalogue.groups[group])
    return frozenset(
        name for name, members in catalogue.groups.items() if own <= set(members) or own >= set(members)
    )


def in_short(tally: Tally) -> str:
    """``quadriceps 6, hamstrings 3, calves 3``; empty where nothing is trained directly."""
    groups = [f"{group} {count}" for group, count in main_groups(tally)]
    more = len(groups) - MOST_GROUPS
    return ", ".join([*groups[:MOST_GROUPS], *([f"{more} more"] if more > 0 else [])])


def in_words(tally: Tally) -> str:
    """The same for more groups, with how many are left out."""
    groups = [f"{group} {count}" for group, count in main_groups(tally)]
    return first_of(groups, MOST_IN_WORDS) if groups else "none for any group"


def in_full(tally: Tally) -> str:
    """The sets of every group as a table: with helping ones by half, and direct ones alone."""
    rows = [
        (group, str(tally.sets(group)), str(tally.sets(group, DIRECT)))
        for group in sorted(tally.groups(), key=lambda group: -tally.sets(group).high)
    ]
    return "\n".join(table(("group", "sets", "direct"), rows)) if rows else "No sets that count."


def days_of(week: Ledger | Week, days: Iterable[int]) -> str:
    """``Monday and Thursday``: days by their numbers."""
    return listed([day_name(week.programme.starts, day) for day in days])


def of_session(visit: Visit) -> str:
    """A session: its minutes, what they are spent on, and its sets."""
    time = visit.time()
    return paragraphs(
        f"**{minutes(time.total)}**: {minutes(time.work)} under load, {minutes(time.rest)} rest,"
        f" {minutes(time.around)} warming up and changing over",
        f"**{sets_of(str(visit.all_sets()))}**: {in_words(visit)}",
    )


def session_in_short(visit: Visit) -> str:
    """``54 min, 18 sets``."""
    return f"{minutes(visit.time().total)}, {sets_of(str(visit.all_sets()))}"


def of_week(week: Week) -> str:
    """A week: sessions, minutes and sets."""
    sessions = counted_noun(len(week.visits), "session")
    return (
        f"**{sets_of(str(week.all_sets()))}** in {sessions}, {minutes(week.time().total)}: {in_words(week)}"
    )


# The sets of a line within its week


def of_lines(
    ledgers: Sequence[Ledger],
    lines: Collection[Prescription],
    exercise: Exercise,
    athletes: Collection[Ledger] = (),
) -> str:
    """How the sets of some lines count in each week, and where the rest of each group comes from.

    With ``athletes``, for these of the ledgers only.
    """
    told = [
        Statement(_within(week, lines, exercise), at, numbers, short=in_all(week, lines, (exercise,)))
        for at, ledger in enumerate(ledgers)
        if not athletes or ledger in athletes
        for week, numbers in ledger.like_weeks()
        if any(entry.prescription in lines and entry.exercise is exercise for _, entry in week.entries())
    ]
    return several(told, ledgers)


def of_several(
    ledgers: Sequence[Ledger], lines: Collection[Prescription], exercises: Collection[Exercise]
) -> str:
    """The sets of several exercises that share a value, and what their groups come to in each week."""
    told = [
        Statement(in_all(week, lines, exercises), at, numbers)
        for at, ledger in enumerate(ledgers)
        for week, numbers in ledger.like_weeks()
        if any(entry.prescription in lines for _, entry in week.entries())
    ]
    return several(told, ledgers)


def in_all(week: Week, lines: Collection[Prescription], exercises: Collection[Exercise]) -> str:
    """``3 sets a week here; in all hamstrings 12, gluteals 14-15.``"""
    words, any_hard = _own_sets(week, lines, exercises)
    areas = dict.fromkeys(area for exercise in exercises for area in areas_of(exercise, 1.0))
    counted = ", ".join(f"{area} {week.sets(area)}" for area in areas)
    return f"{words}; in all {counted}." if any_hard and counted else f"{words}."


def _within(week: Week, lines: Collection[Prescription], exercise: Exercise) -> str:
    words, any_hard = _own_sets(week, lines, (exercise,))
    if not any_hard:
        return f"{words}."
    helped = [
        f"{area} {week.sets(area).where(lambda entry: entry.prescription in lines)} of {week.sets(area)}"
        for area in areas_of(exercise, 0.5)
    ]
    helping = [f"helping, at half: {', '.join(helped)}"] if helped else []
    direct = [_area(week, area, lines) for area in areas_of(exercise, 1.0)]
    return paragraphs(f"{words}.", bullets([*direct, *helping]))


def _own_sets(
    week: Week, lines: Collection[Prescription], exercises: Collection[Exercise]
) -> tuple[str, bool]:
    """``3 sets a week here``, and whether any of them are hard enough to count."""
    own, hard = (
        week.all_sets(hard=asked).where(
            lambda entry: entry.prescription in lines and entry.exercise in exercises
        )
        for asked in (False, True)
    )
    words = f"{sets_of(str(own))} a week here"
    if str(hard) != str(own):
        words += f", {hard if hard else 'none'} of them hard enough to count"
    return words, bool(hard)


def _area(week: Week, area: str, lines: Collection[Prescription]) -> str:
    count = week.sets(area)
    here = count.where(lambda entry: entry.prescription in lines)
    own = {part.entry.name for part in here.parts}
    rest = by_name(count.where(lambda entry: entry.prescription not in lines), own)
    others = f", {first_of(rest, MOST_OTHERS)}" if rest else " and nowhere else"
    return f"{area} **{count}** a week: {here} here{others}"


def by_name(count: Count, own: Collection[str] = ()) -> list[str]:
    """``leg press 4``: what a count came from, exercise by exercise, in the order of the file.

    Exercises among ``own`` are spoken of already: these are other lines of them.
    """
    parts = sorted(count.parts, key=lambda part: part.entry.prescription.place.start)
    names = dict.fromkeys(part.entry.name for part in parts if part.sets.high)
    return [f"{'the other ' if name in own else ''}{md(name)} {_named(count, name)}" for name in names]


def _named(count: Count, name: str) -> Count:
    return count.where(lambda entry: entry.name == name)
