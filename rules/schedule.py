"""Schedule: time between sessions."""

from __future__ import annotations

from ..lint.finding import found
from ..lint.ledger import DIRECT, Ledger
from ..lint.registry import Limits, Option, rule
from .words import counted_lines, day_name, listed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.finding import Finding
    from ..lint.ledger import Count, Entry, Tally

HOURS_A_DAY = 24


@rule(
    "sessions-too-close",
    family="schedule",
    severity="warning",
    confidence="guideline",
    why="A muscle that has done several hard sets is usually given 48 hours before the next; sets to failure"
    " slow recovery by a day or more. Well-trained lifters have done without; a team may decide otherwise.",
    sources=("fm21-20-48", "moran-2017", "house-4day"),
    options=(
        Option("hours", 48, "hours between two hard days for a muscle group", "fm21-20-48"),
        Option("hours after failure", 72, "hours, where the first day goes to failure", "moran-2017"),
        Option("hard day", 4, "direct sets that make a day hard", "common practice"),
        Option(
            "hard set", 3, "repetitions in reserve at most; sets without a stated effort count", "moran-2017"
        ),
        Option(
            "exempt",
            ("calves", "shins", "abdominals", "obliques", "lower back", "forearms", "neck muscles"),
            "muscle groups",
            "common practice",
        ),
    ),
    stands_back=True,
)
def sessions_too_close(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Two days with hard work for the same muscle group, too close to one another.

    Counts direct sets with at most 3 repetitions in reserve, day by day over the whole calendar; wants 48
    hours between two days that hold 4 or more for a group, 72 where those of the first go to failure. Days
    without a date or weekday are left alone.

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
    days = ledger.training_days()
    hard = {tally: _hard_groups(tally, limits) for tally in {tally for _, _, tally in days}}
    for index, (number, week, tally) in enumerate(days):
        for earlier, _, before in reversed(days[:index]):
            hours = (number - earlier) * HOURS_A_DAY
            if hours >= max(limits.number("hours"), limits.number("hours after failure")):
                break
            close = [
                part
                for part in hard[tally]
                if part in hard[before] and hours < _needed(hard[before][part], limits)
            ]
            if not close or week.rehabilitation:
                continue
            session = tally.visits[0].session
            first, second = (day_name(week.programme, one) for one in (earlier, number))
            groups = list(dict.fromkeys(group for group, _ in close))
            needed = max(_needed(hard[before][part], limits) for part in close)
            failing = any(hard[before][part].failing for part in close)
            yield found(
                session.place,
                f"{first} and {second} both work {listed(groups)} hard, {hours} h apart"
                f"{', and ' + first + ' goes to failure' if failing else ''}.",
                wanted=f"{needed:g} h between two such days",
                change=f"Move one of the two sessions, or bring one of the days below"
                f" {limits.number('hard day'):g} hard sets for the muscle.",
                where=session.name,
                subject=f"{first} {second}",
                related=counted_lines(*(hard[day][part].sets for part in close for day in (before, tally))),
                weeks=(week.number,),
                excess=len(groups),
            )


class _HardWork:
    """The hard sets of a group on a day that is hard for it, and whether enough of them go to failure."""

    def __init__(self, sets: Count, failing: bool) -> None:
        self.sets = sets
        self.failing = failing


def _hard_groups(day: Tally, limits: Limits) -> dict[tuple[str, str], _HardWork]:
    """Muscle groups, with the side, for which a day is hard: one leg rests while the other works."""
    least, most_left = limits.number("hard day"), limits.number("hard set")
    hard = {}
    for group in day.groups():
        if group in limits.names("exempt") or day.sets(group, DIRECT).middle < least:
            continue
        for side in ("left", "right"):
            sets = day.sets(group, DIRECT, side=side).where(lambda entry: _leaves(entry) <= most_left)
            if sets.middle >= least:
                failing = sets.where(lambda entry: entry.stated_effort and _leaves(entry) == 0)
                hard[group, side] = _HardWork(sets, failing.middle >= least)
    return hard


def _needed(work: _HardWork, limits: Limits) -> float:
    return limits.number("hours after failure" if work.failing else "hours")


def _leaves(entry: Entry) -> float:
    """Fewest repetitions in reserve that the line allows; none where no effort is stated."""
    if entry.work.rir is not None:
        return entry.work.rir.low
    return 10 - entry.work.rpe.high if entry.work.rpe is not None else 0.0
