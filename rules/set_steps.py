"""Steps in weekly sets from week to week."""

from __future__ import annotations

from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import once_each
from ..lint.engine.limits import COUNTING, Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


MOST = Option("most", 6, "sets a week more for a muscle group: a note past it", "enes-2024")
TINY = Condition("tiny", 4, "sets a week below which nothing is compared", "pelland-2026-min")
SHARE = Condition("share", 50, "% more sets a week for a muscle group", "campos-2002")
BACK = Option("weeks back", 4, "weeks in which the fullest is looked for", "common practice")


@rule(
    "sets-step-large",
    family="progression",
    severity="warning",
    confidence="growth trial",
    why="In one trial trained men coped with 4 to 6 more weekly sets a fortnight, and another put beginners"
    " up by half in one week. None of our sources sets a limit to such a step.",
    sources=("enes-2024", "campos-2002", "pelland-2026-min", "pelland-2026-frac"),
    options=(
        MOST,
        Condition(
            "far",
            12,
            "sets a week more for a muscle group: a warning past it",
            "twice the step of Enes and others 2024, and the largest on file: 24 to 36 sets in one week"
            " (Campos and others 2002, beginners)",
        ),
        SHARE,
        TINY,
        BACK,
        COUNTING,
    ),
)
def sets_step_large(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A muscle group's weekly sets that rise by more than six at once.

    Compares the hard sets of each week, helping ones as half, with the fullest of the four weeks before;
    wants no more than 6 above it. A note past that, a warning past 12. No phase and no rehabilitation hides a
    step; fewer than 4 sets are not compared with, and sets with 4 or more in reserve (RPE 6) bring no step.
    Silent where it is less than half as much again, and where the hard sets of the whole week grow by 6 at
    most: then work was moved from one muscle to another.
    Silent where an exercise that cannot be counted may have trained the muscle before.

    Flags:
        programme: Chest
        weeks: 4
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: {1-2: 3, 3-4: 9}, reps: 8}
              - exercise: dumbbell fly
                reps: 12
                sets: {1-2: 3, 3-4: 11}  # <- here

    Passes:
        programme: Chest
        weeks: 4
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: {1-2: 3, 3-4: 5}, reps: 8}
              - exercise: dumbbell fly
                reps: 12
                sets: {1-2: 3, 3-4: 7}
    """
    for week in ledger.weeks:
        grown = grown_in(ledger, week, limits)
        if not grown:
            continue
        worst = max(grown, key=lambda one: one.by)
        entry = worst.cause()
        yield found(
            entry.work.places.get("sets", entry.prescription.place),
            f"Weekly sets jump: {rises(grown)}.",
            severity="warning" if worst.by > limits.number("far") else "note",
            wanted=limits.words("at most {} more than in the last {:week}", "most", "weeks back"),
            change=f"Raise {entry.name} in {entry.prescription.session.name} more slowly.",
            where=line_name(entry.prescription),
            group=worst.group,
            amount=Amount(worst.count.middle, worst.before.middle + limits.number("most")),
            line=entry.prescription.place,
            related=counted_lines(worst.count),
            weeks=(week.number,),
            excess=worst.by,
        )


class Growth:
    """A muscle group whose sets grew, with the counts before and now."""

    def __init__(self, group: str, before: Count, count: Count) -> None:
        self.group = group
        self.before = before
        self.count = count
        self.by = count.middle - before.middle

    def cause(self) -> SetGroup:
        """What brings most sets more than the same exercise did in the same session before."""
        was: dict[tuple[str, str], float] = {}
        for part in self.before.parts:
            key = (part.visit.session.name, part.entry.name)
            was[key] = was.get(key, 0.0) + part.sets.middle
        return max(
            self.count.parts,
            key=lambda part: part.sets.middle - was.get((part.visit.session.name, part.entry.name), 0.0),
        ).entry


def rises(grown: Sequence[Growth]) -> str:
    """``chest 8 to 16 and triceps 6 to 13``: the largest first."""
    worst_first = sorted(grown, key=lambda one: -one.by)
    return first_of([f"{one.group} {one.before} to {one.count}" for one in worst_first])


def grown_in(ledger: Ledger, week: Week, limits: Limits) -> list[Growth]:
    """Muscle groups that get far more in a week than in the fullest of the weeks before it."""
    back = weeks_before(ledger, week, limits)
    if not back or week.visits == back[-1].visits:
        return []  # a week like the one before it has grown by nothing
    now, before = ledger.recall(_all_told, week), [ledger.recall(_all_told, other) for other in back]
    if now - max(before) <= limits.number("most"):
        return []  # one lift took another's place
    grown: list[Growth] = ledger.recall(_grown, week, back, limits)
    return grown


def weeks_before(ledger: Ledger, week: Week, limits: Limits) -> tuple[Week, ...]:
    """The weeks before a week in which the fullest is looked for."""
    index = week.number - 1
    return ledger.weeks[max(index - int(limits.number("weeks back")), 0) : index]


LIGHT_FROM = 4
"""Repetitions in reserve, as written, from which a set is light (RPE 6): what learners grow by."""


def is_light(entry: SetGroup) -> bool:
    """Whether its sets are easy: much is left, or they go by the clock and nothing says how hard they are."""
    reserve = entry.written_reserve
    return entry.prescription.on_clock if reserve is None else reserve.low >= LIGHT_FROM


def _most_of_all(weeks: Sequence[Week], group: str, kind: str) -> float:
    """The most sets of a group in one of some weeks, easy ones among them."""
    return max(week.sets(group, kind, hard=False).middle for week in weeks)


def _most_by_these(weeks: Sequence[Week], growth: Growth, kind: str) -> float:
    """The most sets, easy ones among them, that the exercises of a growth brought in one of some weeks."""
    lifts = {part.entry.exercise for part in growth.count.parts}
    return max(
        week.sets(growth.group, kind, hard=False).where(lambda entry: entry.exercise in lifts).middle
        for week in weeks
    )


def _all_told(week: Week) -> float:
    """The hard sets of a week, light ones aside, all muscles together: nobody asks for their lines."""
    sets = [
        one.sets for visit in week.visits for one in once_each(visit.own) if one.hard and not is_light(one)
    ]
    return sum([one.middle for one in sets])


def _grown(week: Week, back: Sequence[Week], limits: Limits) -> list[Growth]:
    found: list[Growth] = []
    kind, most, tiny = limits.name("counting"), limits.number("most"), limits.number("tiny")
    for group in week.groups_from(most, kind):
        fullest = max([other.sets(group, kind) for other in back], key=lambda count: count.middle)
        count = week.sets(group, kind)
        if fullest.middle < tiny or count.middle - fullest.middle <= most:
            continue
        growth = Growth(group, fullest, count.where(lambda entry: not is_light(entry)))
        if growth.by <= most:
            continue
        if growth.by < fullest.middle * limits.number("share") / 100:
            continue
        if week.sets(group, kind, hard=False).middle - _most_of_all(back, group, kind) <= most:
            continue  # the sets were there before, only easier
        if growth.count.middle - _most_by_these(back, growth, kind) <= most:
            continue  # so were those of the lifts that count now
        if not any(other.could_hold(areas=(group,)) for other in back):
            found.append(growth)
    return found
