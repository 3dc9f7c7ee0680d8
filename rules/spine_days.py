"""Days running on which lifts load the spine, or the body lands."""

from __future__ import annotations

from ..lint.counting.tally import counted_lines
from ..lint.engine.limits import Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import found
from ..lint.model.naming import day_name, line_name
from ..lint.wording.words import listed, says
from .shared import also, each_line, named_at, names_of, some_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Count
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


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
        count = tally.all_sets(hard=True).where(
            lambda entry: entry.exercise is not None and entry.exercise.axial in grades
        )
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
            f"{first} and {second} both load the spine heavily ({listed(names)}).",
            wanted="a day between two such days (a convention; no trial)",
            change="Move one of the two sessions, or take a lift that asks less of the back, such as a leg"
            " press or a hip thrust.",
            where=line_name(line),
            subject=f"{first} {second}",
            related=counted_lines(before, count),
            weeks=(week.number,),
            excess=count.high,
        )


@rule(
    "impact-days-consecutive",
    family="care",
    severity="note",
    confidence="common practice",
    why="After an injury or a break, coaches and therapists keep a day between days of running and jumping."
    " None of our sources sets a number of hours; the clinician's own plan comes first.",
    sources=(),
    options=(
        Option(
            "words",
            (
                "run",
                "running",
                "sprint",
                "sprints",
                "jump",
                "jumps",
                "jumping",
                "plyometrics",
                "skipping",
                "hops",
            ),
            "words in the name of an activity that make it one of impact",
            "common practice",
        ),
    ),
)
def impact_days_consecutive(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Running or jumping on two days running, in a stage of rehabilitation or a return.

    Looks at the days of weeks under a stated stage of rehabilitation or in the phase `return`; counts sets of
    jumps and hops, and activities that are called running, jumping or the like. Wants a day between two.

    Flags:
        programme: Back to jumping
        phase: return
        sessions:
          - session: Hops
            day: monday
            exercises: [{exercise: pogo jump, sets: 3, reps: 10}]
          - session: Jumps
            day: tuesday
            exercises: [{exercise: squat jump, sets: 3, reps: 5}]  # <- here

    Passes:
        programme: Back to jumping
        phase: return
        sessions:
          - session: Hops
            day: monday
            exercises: [{exercise: pogo jump, sets: 3, reps: 10}]
          - session: Jumps
            day: wednesday
            exercises: [{exercise: squat jump, sets: 3, reps: 5}]
    """
    activities = {
        number: activity.name
        for number, _, activity in ledger.activities()
        if says(limits.names("words"), activity.name)
    }
    jumps = {
        number: held
        for number, _, tally in ledger.training_days()
        if (held := each_line(entry for _, entry in tally.entries() if _is_impact(entry)))
    }
    for number in sorted({*activities, *jumps}):
        week = ledger.weeks[(number - 1) // 7]
        lines = [*jumps.get(number, ()), *jumps.get(number - 1, ())]
        both = number - 1 in activities or number - 1 in jumps
        if not both or not lines or not (week.rehabilitation or week.phase == "return"):
            continue
        first, second = (day_name(week.programme.starts, day) for day in (number - 1, number))
        names = [*names_of(lines), *(activities[day] for day in (number - 1, number) if day in activities)]
        yield found(
            named_at(lines[0]),
            f"{first} and {second} both hold impact ({some_of(list(dict.fromkeys(names)))}).",
            wanted="a day between two days of running or jumping (common practice)",
            change=f"Move {lines[0].prescription.session.name} a day on, or ask whoever leads the return.",
            where=line_name(lines[0].prescription),
            subject=f"{first} {second}",
            related=tuple(also(lines[1:], "impact too")),
            weeks=(week.number,),
        )


def _is_impact(entry: SetGroup) -> bool:
    return entry.exercise is not None and entry.exercise.kind == "plyometric" and entry.sets.high > 0
