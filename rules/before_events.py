"""What stands in the last days before an event."""

from __future__ import annotations

from ..lint.counting.counts import counted_lines
from ..lint.counting.credits import credit
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import day_name, line_name
from ..lint.wording.words import says
from .spacing import HARD_ACTIVITY, loaded

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


@rule(
    "legs-heavy-before-event",
    family="schedule",
    severity="warning",
    confidence="common practice",
    why="Coaches keep heavy leg work out of the last two days before a match or race. In nine men jumps were"
    " still lower 48 hours after sets to failure, and back 6 hours after sets that stopped half way.",
    sources=("gonzalez-badillo-2016", "moran-2017"),
    options=(
        Option(
            "days",
            2,
            "days before the event",
            "common practice, no source; in nine men jumps were still lower 48 hours after sets to"
            " failure (Gonzalez-Badillo and others 2016)",
        ),
        Option("sets", 4, "heavy direct sets of the legs on a day", "common practice"),
        Condition(
            "many",
            4,
            "such sets on the day before: a warning from here, a note below it and two days before",
            "common practice, no source: what makes a day heavy",
        ),
        Option("areas", ("quadriceps", "hamstrings", "gluteals"), "muscle groups", "common practice"),
        Condition("left at few repetitions", 3, "repetitions in reserve at most, below 8", "common practice"),
        Condition(
            "left at many repetitions", 2, "repetitions in reserve at most, 8 and more", "common practice"
        ),
        Option(
            "matches",
            ("match", "game", "regatta", "race", "competition", "tournament", "meet", "final"),
            "words in the name of an activity that make it an event",
            "common practice",
        ),
        HARD_ACTIVITY,
    ),
    stands_back=("rehabilitation",),
)
def legs_heavy_before_event(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Heavy leg work in the last two days before an event or a match.

    Counts direct sets for quadriceps, hamstrings and gluteals that are heavy: below 8 repetitions with at
    most 3 in reserve, 8 or more with at most 2; sets whose effort is unknown count below 8 repetitions. Wants
    fewer than 4 of them on each of the two days before a dated event, or an activity that is called a match
    or race. A warning on the day before, if effort or load is written for half of them, else a note. The eve
    of an activity that loads the legs high is left to sessions-too-close.

    Flags:
        programme: Match week
        sessions:
          - session: Lower
            day: friday
            exercises: [{exercise: back squat, sets: 8, reps: 4, rir: 2}]  # <- here
          - {activity: match, day: saturday}

    Passes:
        programme: Match week
        sessions:
          - session: Lower
            day: wednesday
            exercises: [{exercise: back squat, sets: 4, reps: 5}]
          - {activity: match, day: saturday}
    """
    events = _events(ledger, limits)
    areas = limits.names("areas")
    close = {
        number
        for number, _, activity in ledger.activities()
        if any(group in areas for group in loaded(activity, limits))
    }
    for number, week, tally in ledger.training_days():
        ahead = [gap for gap in range(1, int(limits.number("days")) + 1) if number + gap in events]
        if not ahead or week.rehabilitation or (ahead[0] == 1 and number + 1 in close):
            continue
        heavy = tally.all_sets(hard=True).where(lambda entry: _is_heavy_leg_work(entry, limits))
        if heavy.middle < limits.number("sets"):
            continue
        line = heavy.lines()[0][0]
        is_many = ahead[0] == 1 and heavy.middle >= limits.number("many")
        is_sure = is_many and 2 * heavy.where(_says_how_heavy).middle >= heavy.middle
        away = "the day" if ahead[0] == 1 else f"{ahead[0]} days"
        yield found(
            line.place,
            f"{heavy.most} heavy leg sets on {day_name(week.programme.starts, number)}, {away} before"
            f" {events[number + ahead[0]]}.",
            severity="warning" if is_sure else "note",
            wanted=limits.words("fewer than {} on each of the last {:day}", "sets", "days"),
            change=f"Move {line.session.name} further away, or leave more in reserve.",
            where=line_name(line),
            related=counted_lines(heavy),
            amount=Amount(heavy.high, limits.number("sets") - 1),
            weeks=(week.number,),
            excess=heavy.high,
        )


def _events(ledger: Ledger, limits: Limits) -> dict[int, str]:
    """Names of dated events, and of activities that are one, by the number of their day."""
    named = {
        number: activity.name
        for number, _, activity in ledger.activities()
        if says(limits.names("matches"), activity.name)
    }
    return {**named, **{number: event.name for number, event in ledger.events()}}


def _says_how_heavy(entry: SetGroup) -> bool:
    return entry.reserve is not None or entry.work.load is not None


def _is_heavy_leg_work(entry: SetGroup, limits: Limits) -> bool:
    exercise = entry.exercise
    if exercise is None or not any(credit(exercise, area) == 1 for area in limits.names("areas")):
        return False
    few = entry.slot == "heavy"
    if entry.reserve is None:
        return few
    return entry.reserve.low <= limits.number(
        "left at few repetitions" if few else "left at many repetitions"
    )
