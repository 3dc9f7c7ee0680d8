"""What weeks and sessions hold, in words; every number is the ledger's."""

from __future__ import annotations

from functools import cache

from ...body import catalogue
from ...counting.credits import DIRECT, credits_of
from ...model.naming import day_name
from ...wording.words import counted_noun, first_of, listed, sets_of
from .markdown import Statement, bullets, md, merged_text, minutes, paragraphs, table

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Sequence

    from ...body.catalogue import Exercise
    from ...counting.counts import Count
    from ...counting.ledger import Ledger
    from ...counting.tally import Tally, Visit
    from ...counting.week import Week
    from ...model.sessions import Prescription

MOST_GROUPS = 4
"""Groups that are named where only those with the most sets are."""

MOST_GROUPS_IN_WORDS = 10
"""Groups that are named where there is room."""

MOST_OTHER_LINES = 5
"""Other lines that are named beside one."""

HALF_NOTE = "Helping sets count half."


# Muscle groups


def areas_of(exercise: Exercise, weight: float) -> list[str]:
    """Groups for which a set of an exercise counts with a weight, and muscles outside groups.

    The weight is 1 for direct sets and 0.5 for helping ones.
    """
    credits = credits_of(exercise)
    groups = [group for group in catalogue.groups if credits.get(group) == weight]
    outside = [
        muscle
        for muscle in (exercise.direct if weight == 1.0 else exercise.indirect)
        if not any(muscle in members for members in catalogue.groups.values())
    ]
    return [*groups, *outside]


def main_groups(tally: Tally) -> list[tuple[str, Count]]:
    """Groups that are trained directly, each with its sets (helping ones by half), the most sets first.

    Of groups that lie inside one another and get the same sets, only the first is kept.
    """
    counted = [(group, tally.sets(group)) for group in tally.groups() if tally.sets(group, DIRECT).high]
    kept: list[tuple[str, Count]] = []
    for group, count in counted:
        nested = _nested_groups(group)
        if not any(name in nested and (one.low, one.high) == (count.low, count.high) for name, one in kept):
            kept.append((group, count))
    return sorted(kept, key=lambda pair: -pair[1].high)


@cache
def _nested_groups(group: str) -> frozenset[str]:
    """The groups inside a group, and those that it lies in."""
    own = set(catalogue.groups[group])
    return frozenset(
        name for name, members in catalogue.groups.items() if own <= set(members) or own >= set(members)
    )


def groups_in_short(tally: Tally) -> str:
    """``quadriceps 6, hamstrings 3, calves 3``; empty where nothing is trained directly."""
    groups = [f"{group} {count}" for group, count in main_groups(tally)]
    more = len(groups) - MOST_GROUPS
    return ", ".join([*groups[:MOST_GROUPS], *([f"{more} more"] if more > 0 else [])])


def groups_in_words(tally: Tally) -> str:
    """The same for more groups, with the number of those left out."""
    groups = [f"{group} {count}" for group, count in main_groups(tally)]
    return first_of(groups, MOST_GROUPS_IN_WORDS) if groups else "none for any group"


def groups_table(tally: Tally) -> str:
    """A table of the sets of every group: with helping ones by half, and direct ones alone."""
    rows = [
        (group, str(tally.sets(group)), str(tally.sets(group, DIRECT)))
        for group in sorted(tally.groups(), key=lambda group: -tally.sets(group).high)
    ]
    return "\n".join(table(("group", "sets", "direct"), rows)) if rows else "No sets that count."


# Sessions and weeks


def days_of(week: Ledger | Week, days: Iterable[int]) -> str:
    """``Monday and Thursday``: the names of days, given by number."""
    return listed([day_name(week.programme.starts, day) for day in days])


def session_in_full(visit: Visit) -> str:
    """A session: its minutes, how they are spent, and its sets."""
    time = visit.time()
    return paragraphs(
        f"at {md(visit.at)}" if visit.at else "",
        f"**{minutes(time.total)}**: {minutes(time.work)} under load, {minutes(time.rest)} rest,"
        f" {minutes(time.around)} warming up{', cooling down' * bool(visit.session.cool_down)}"
        " and changing over",
        f"written: {visit.minutes} min" if visit.minutes else "",
        f"**{sets_of(str(visit.all_sets()))}**: {groups_in_words(visit)}",
    )


def session_in_short(visit: Visit) -> str:
    """``54 min, 18 sets``."""
    return f"{minutes(visit.time().total)}, {sets_of(str(visit.all_sets()))}"


def week_in_words(week: Week) -> str:
    """A week: its sets, sessions and minutes."""
    sessions = counted_noun(len(week.visits), "session")
    return (
        f"**{sets_of(str(week.all_sets()))}** in {sessions}, {minutes(week.time().total)}:"
        f" {groups_in_words(week)}"
    )


# The sets of a line within its week


def sets_of_lines(
    ledgers: Sequence[Ledger],
    lines: Collection[Prescription],
    exercise: Exercise,
    only: Collection[Ledger] = (),
) -> str:
    """How the sets of some lines count in each week, and where the rest of each group comes from.

    With ``only``, for these of the ledgers.
    """
    statements = [
        Statement(
            _sets_by_area(week, lines, exercise),
            athlete,
            numbers,
            short=sets_and_totals(week, lines, (exercise,)),
        )
        for athlete, ledger in enumerate(ledgers)
        if not only or ledger in only
        for week, numbers in ledger.like_weeks()
        if any(entry.prescription in lines and entry.exercise is exercise for _, entry in week.entries())
    ]
    return merged_text(statements, ledgers)


def sets_of_exercises(
    ledgers: Sequence[Ledger], lines: Collection[Prescription], exercises: Collection[Exercise]
) -> str:
    """The sets of several exercises that share a value, and the totals of their groups in each week."""
    statements = [
        Statement(sets_and_totals(week, lines, exercises), athlete, numbers)
        for athlete, ledger in enumerate(ledgers)
        for week, numbers in ledger.like_weeks()
        if any(entry.prescription in lines for _, entry in week.entries())
    ]
    return merged_text(statements, ledgers)


def sets_and_totals(week: Week, lines: Collection[Prescription], exercises: Collection[Exercise]) -> str:
    """``3 sets a week here; in all hamstrings 12, gluteals 14-15.``"""
    words, any_hard = _own_sets(week, lines, exercises)
    areas = dict.fromkeys(area for exercise in exercises for area in areas_of(exercise, 1.0))
    totals = ", ".join(f"{area} {week.sets(area)}" for area in areas)
    return f"{words}; in all {totals}." if any_hard and totals else f"{words}."


def _sets_by_area(week: Week, lines: Collection[Prescription], exercise: Exercise) -> str:
    words, any_hard = _own_sets(week, lines, (exercise,))
    if not any_hard:
        return f"{words}."
    helped = [
        f"{area} {week.sets(area).where(lambda entry: entry.prescription in lines)} of {week.sets(area)}"
        for area in areas_of(exercise, 0.5)
    ]
    helping = [f"helping, at half: {', '.join(helped)}"] if helped else []
    direct = [_direct_area(week, area, lines) for area in areas_of(exercise, 1.0)]
    return paragraphs(f"{words}.", bullets([*direct, *helping]))


def _own_sets(
    week: Week, lines: Collection[Prescription], exercises: Collection[Exercise]
) -> tuple[str, bool]:
    """``3 sets a week here``, and whether any of them are hard enough to count."""
    own, hard = (
        week.all_sets(hard=only_hard).where(
            lambda entry: entry.prescription in lines and entry.exercise in exercises
        )
        for only_hard in (False, True)
    )
    words = f"{sets_of(str(own))} a week here"
    if str(hard) != str(own):
        words += f", {hard if hard else 'none'} of them hard enough to count"
    return words, bool(hard)


def _direct_area(week: Week, area: str, lines: Collection[Prescription]) -> str:
    """``hamstrings **12** a week: 3 here, leg curl 9``."""
    count = week.sets(area)
    here = count.where(lambda entry: entry.prescription in lines)
    own = {part.entry.name for part in here.parts}
    rest = sets_by_exercise(count.where(lambda entry: entry.prescription not in lines), own)
    others = f", {first_of(rest, MOST_OTHER_LINES)}" if rest else " and nowhere else"
    return f"{area} **{count}** a week: {here} here{others}"


def sets_by_exercise(count: Count, own: Collection[str] = ()) -> list[str]:
    """``leg press 4``: where a count comes from, exercise by exercise, in the order of the file.

    Exercises among ``own`` have been named already, so these are called other lines of them.
    """
    parts = sorted(count.parts, key=lambda part: part.entry.prescription.place.start)
    names = dict.fromkeys(part.entry.name for part in parts if part.sets.high)
    return [f"{'the other ' if name in own else ''}{md(name)} {_sets_named(count, name)}" for name in names]


def _sets_named(count: Count, name: str) -> Count:
    return count.where(lambda entry: entry.name == name)
