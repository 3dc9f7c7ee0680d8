"""Schedule: time between sessions."""

from __future__ import annotations

from ..lint.body import catalogue
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
            ("calves", "shins", "abdominals", "obliques", "lower back", "forearms", "neck"),
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
    reach = max(limits.number("hours"), limits.number("hours after failure"))
    groups = [group for group in catalogue.groups if group not in limits.names("exempt")]
    for index, (number, week, tally) in enumerate(days):
        for earlier, _, before in reversed(days[:index]):
            hours = (number - earlier) * HOURS_A_DAY
            if hours >= reach:
                break
            close = [
                (group, *pair)
                for group in groups
                if (pair := _both_hard(before, tally, group, hours, limits))
            ]
            if not close or week.rehabilitation:
                continue
            session = tally.visits[0].session
            first, second = (
                day_name(week.programme, (earlier - 1) % 7 + 1),
                day_name(week.programme, (number - 1) % 7 + 1),
            )
            failing = hours >= limits.number("hours")
            apart = limits.number("hours after failure") if failing else limits.number("hours")
            worked = listed([group for group, _, _ in close])
            yield found(
                session.place,
                f"{first} and {second} both work {worked} hard, {hours} h apart"
                f"{', and ' + first + ' goes to failure' if failing else ''}.",
                wanted=f"{apart:g} h between two such days",
                change=f"Move one of the two sessions, or bring one of the days below"
                f" {limits.number('hard day'):g} hard sets for the muscle.",
                where=session.name,
                subject=f"{first} {second}",
                related=counted_lines(*(count for _, *counts in close for count in counts)),
                weeks=(week.number,),
                excess=len(close),
            )


def _both_hard(
    before: Tally, after: Tally, group: str, hours: int, limits: Limits
) -> tuple[Count, Count] | None:
    """The hard sets of a group on two days where both are hard and too close, else None."""
    least = limits.number("hard day")
    first = before.sets(group, DIRECT).where(lambda entry: _leaves(entry) <= limits.number("hard set"))
    second = after.sets(group, DIRECT).where(lambda entry: _leaves(entry) <= limits.number("hard set"))
    if first.middle < least or second.middle < least:
        return None
    failing = first.where(lambda entry: entry.stated_effort and _leaves(entry) == 0).middle >= least
    needed = limits.number("hours after failure" if failing else "hours")
    return (first, second) if hours < needed else None


def _leaves(entry: Entry) -> float:
    """Fewest repetitions in reserve that the line allows; none where no effort is stated."""
    if entry.work.rir is not None:
        return entry.work.rir.low
    return 10 - entry.work.rpe.high if entry.work.rpe is not None else 0.0
