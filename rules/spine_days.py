"""Days running on which lifts load the spine, or the body lands from jumps."""

from __future__ import annotations

from ..lint.counting.counts import counted_lines
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import day_name, line_name
from ..lint.wording.words import first_of, listed, says, sets_of
from .offers import moving_apart
from .shared import as_name

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.counts import Count
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


IMPACT = ("run", "running", "sprint", "sprints", "jumping", "plyometrics", "skipping", "hops")


@rule(
    "spine-days-consecutive",
    family="schedule",
    severity="note",
    confidence="convention",
    why="Some coaches keep a day between sessions that load the spine heavily; no trial was found on it. In a"
    " survey of powerlifters 24 % of injuries were to the low back, after the shoulder with 36 %.",
    sources=("back-to-back-axial", "keogh-2006"),
    options=(
        Option("loads", ("high",), "grades of load on the spine (low, moderate, high)", "convention"),
        Condition("least sets", 1, "hard sets a day", "convention"),
    ),
    off=True,
)
def spine_days_consecutive(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Lifts that load the spine heavily on two days running.

    Counts hard sets of exercises that the catalogue marks as loading the spine high (squats and deadlifts
    with a bar and their kin), day by day; wants a day without them in between. Off until a team asks for it:
    it is a convention.

    Flags:
        programme: Strength
        sessions:
          - session: Squat
            day: monday
            exercises: [{exercise: back squat, sets: 4, reps: 5}]
          - session: Pull
            day: tuesday
            exercises: [{exercise: deadlift, sets: 3, reps: 4}]  # <- here

    Passes:
        programme: Strength
        sessions:
          - session: Squat
            day: monday
            exercises: [{exercise: back squat, sets: 4, reps: 5}]
          - session: Pull
            day: wednesday
            exercises: [{exercise: deadlift, sets: 3, reps: 4}]
    """
    grades, least = limits.names("loads"), limits.number("least sets")
    heavy: dict[int, Count] = {}
    for number, week, tally in ledger.training_days():
        count = tally.sets_where(lambda entry: loads_the_spine(entry, grades), hard=True)
        if not count or count.middle < least:
            continue
        heavy[number] = count
        if number - 1 not in heavy:
            continue
        first, second = (day_name(week.programme.starts, day) for day in (number - 1, number))
        before = heavy[number - 1]
        line = count.lines()[0][0]
        names = list(dict.fromkeys(part.entry.name for part in (*before.parts, *count.parts)))
        yield found(
            line.place,
            f"Heavy load on the spine on {first} and {second} ({first_of(names)}).",
            wanted="a day between",
            change="Move one, or swap in a leg press or hip thrust.",
            where=line_name(line),
            edits=moving_apart(week, line.session, number, [number - 1], 2),
            subject=f"{first} {second}",
            group="spine",
            amount=Amount(0, 1, "days between"),
            related=counted_lines(before, count),
            weeks=(week.number,),
            excess=count.high,
        )


def loads_the_spine(entry: SetGroup, grades: tuple[str, ...]) -> bool:
    """Whether a lift loads the spine by one of some grades."""
    return entry.exercise is not None and entry.exercise.axial in grades


@rule(
    "impact-days-consecutive",
    family="schedule",
    severity="note",
    confidence="common practice",
    why="Coaches leave a day between sessions of jumps and landings, and more so after an injury; an army"
    " manual leaves 48 hours between work of the same muscles. None of our sources tried it with jumps.",
    sources=("fm21-20-48",),
    options=(
        Condition("least sets", 3, "sets of jumps a day", "common practice"),
        Option("days running", 1, "days with jumps in a row at most", "common practice"),
        Option(
            "impact", IMPACT, "words in the name of an activity that lands on the feet", "common practice"
        ),
    ),
)
def impact_days_consecutive(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Jumps and landings on too many days running.

    Counts sets of plyometric exercises of the legs, day by day over the whole calendar; a day with 3 or more
    counts, and in a stage of rehabilitation or a return also one with a run or the like. Wants a day without
    them after each. No phase and no stage of rehabilitation hides it.

    Flags:
        programme: Jumps
        sessions:
          - session: First
            day: monday
            exercises: [{exercise: box jump, sets: 4, reps: 5}]
          - session: Second
            day: tuesday
            exercises: [{exercise: drop jump, sets: 3, reps: 5}]  # <- here

    Passes:
        programme: Jumps
        sessions:
          - session: First
            day: monday
            exercises: [{exercise: box jump, sets: 4, reps: 5}]
          - session: Second
            day: wednesday
            exercises: [{exercise: drop jump, sets: 3, reps: 5}]
    """
    landed = days_of_impact(ledger, limits)
    if not landed:
        return
    running = int(limits.number("days running"))
    for number, week, _ in ledger.training_days():
        if isinstance(landed.get(number), str):
            continue
        days = range(number - running, number + 2)
        behind, ahead = days[:-1], days[1:]
        held = behind if all(day in landed for day in behind) else ahead
        lines = [one for day in held if (one := landed.get(day)) is not None and not isinstance(one, str)]
        if not all(day in landed for day in held):
            continue
        if held is ahead and not isinstance(landed[number + 1], str):
            continue  # told when that day is looked at
        names = listed([day_name(week.programme.starts, day) for day in held])
        line = lines[-1].lines()[0][0]
        yield found(
            line.place,
            f"{_in_words([landed[day] for day in held], names)}.",
            wanted=limits.words("at most {:day} in a row", "days running"),
            change=f"Move {as_name(line.session.name)} a day away, or take its jumps out.",
            where=line_name(line),
            subject=names,
            related=counted_lines(*lines),
            weeks=(week.number,),
            excess=lines[-1].high,
        )


def days_of_impact(ledger: Ledger, limits: Limits) -> dict[int, Count | str]:
    """The days on which the body lands: sets of jumps, or what an activity is called where it heals."""
    days: dict[int, Count | str] = {
        number: activity.name
        for number, week, activity in ledger.activities()
        if (week.rehabilitation or week.phase == "return") and says(limits.names("impact"), activity.name)
    }
    if not any(_lands(entries[0]) for entries in ledger.lifts().values()):
        return days
    for number, _, tally in ledger.training_days():
        count = tally.sets_where(_lands)
        if count.middle >= limits.number("least sets"):
            days[number] = count
    return days


def _in_words(days: list[Count | str], names: str) -> str:
    """``Jumps on Monday and Tuesday: 3 and 4 sets``; ``Impact on ...: 3 sets of jumps and a run``."""
    if not any(isinstance(one, str) for one in days):
        return f"Jumps on {names}: {listed(list(map(str, days)))} sets"
    said = [one if isinstance(one, str) else f"{sets_of(str(one))} of jumps" for one in days]
    return f"Impact on {names}: {listed(said)}"


def _lands(entry: SetGroup) -> bool:
    """Whether the legs jump and land in it."""
    exercise = entry.exercise
    return exercise is not None and exercise.kind == "plyometric" and exercise.pattern == "jump"
