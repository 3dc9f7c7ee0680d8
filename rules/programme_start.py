"""Where a programme starts from."""

from __future__ import annotations

from ..lint.counting.counts import counted_lines
from ..lint.engine.limits import COUNTING, Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of
from .load_steps import STEPS, load_in_words, step_between
from .set_steps import Growth, rises

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.counting.ledger import Ledger, Lifter
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


@rule(
    "start-does-not-follow",
    family="progression",
    severity="note",
    confidence="common practice",
    why="A programme usually starts near where the last one ended. A jump between two files is easy to miss,"
    " since each of them looks sound.",
    sources=(
        "enes-2024",
        "campos-2002",
        "acsm-2009",
        "helms-2023-adj",
        "nsca-increments",
        "pelland-2026-min",
        "pelland-2026-frac",
    ),
    options=(
        Condition("gap", 4, "weeks between the two programmes at most", "common practice"),
        Option("most", 6, "sets a week more for a muscle group", "enes-2024"),
        Option("share", 50, "% more sets a week for a muscle group", "campos-2002"),
        Condition("tiny", 4, "sets a week below which nothing is compared", "pelland-2026-min"),
        Option(
            "step",
            20,
            "% more load at like repetitions",
            "common practice, no source: twice the 10 % that ACSM 2009 gives for one step, since weeks"
            " may lie between",
        ),
        *map(Condition.like, STEPS),
        COUNTING,
    ),
)
def start_does_not_follow(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """A first week far above where the athlete's last programme ended.

    Compares the first week of each programme with the last typical week of the one that ended last, within
    four weeks before it starts. Wants no muscle group to get more than 6 hard sets and more than half as much
    again, helping sets as half, and no load to rise by more than 20 % at like repetitions. Fewer than 4 sets
    before are not compared. Leaves rehabilitation alone, and muscles that an exercise nobody knows may have
    trained.

    Flags:
        programme: Spring
        athlete: mara.athlete.yaml
        starts: 2026-03-02
        weeks: 4
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg press, sets: 12, reps: 10}  # <- here

    Passes:
        programme: Spring
        athlete: mara.athlete.yaml
        starts: 2026-03-02
        weeks: 4
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg press, sets: 10, reps: 10}

    Beside mara.athlete.yaml:
        name: Mara

    Beside winter.programme.yaml:
        programme: Winter
        athlete: mara.athlete.yaml
        starts: 2026-02-02
        weeks: 4
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg press, sets: 5, reps: 10}
    """
    for plan in lifter.plans:
        last = _before(plan, lifter.plans, limits.number("gap"))
        typical = last.typical_weeks() if last else []
        if typical and not plan.weeks[0].rehabilitation:
            yield from _jump_in_sets(plan.weeks[0], typical[-1], limits)
            yield from _jump_in_load(plan.weeks[0], typical[-1], limits)


def _before(plan: Ledger, plans: Iterable[Ledger], gap: float) -> Ledger | None:
    """The programme that ended last before another one starts, so many weeks before at most."""
    starts = plan.programme.starts
    if starts is None:
        return None
    ended = [
        (days, other)
        for other in plans
        if (days := other.day_number(starts)) is not None and 0 < days - 7 * len(other.weeks) <= 7 * gap + 1
    ]
    return min(ended, key=lambda one: one[0] - 7 * len(one[1].weeks))[1] if ended else None


def _jump_in_sets(first: Week, last: Week, limits: Limits) -> Iterator[DraftFinding]:
    kind = limits.name("counting")
    grown = []
    for group in first.groups():
        growth = Growth(group, last.sets(group, kind), first.sets(group, kind))
        most = growth.before.middle * (1 + limits.number("share") / 100)
        if growth.by <= limits.number("most") or growth.count.middle <= most:
            continue
        if growth.before.middle >= limits.number("tiny") and not last.could_hold(areas=(group,)):
            grown.append(growth)
    if not grown:
        return
    worst = max(grown, key=lambda one: one.by)
    line = worst.cause().prescription
    name = last.programme.name
    yield found(
        line.place,
        f"Weekly sets jump after {name}: {rises(grown)}.",
        wanted=limits.words("at most {:set} or {:%} more", "most", "share"),
        change="Start with fewer sets and build up.",
        where=line_name(line),
        group=worst.group,
        amount=Amount(worst.count.middle, worst.before.middle + limits.number("most")),
        related=counted_lines(worst.before, of=f"{worst.before} sets"),
        weeks=(first.number,),
        excess=worst.by,
    )


def _jump_in_load(first: Week, last: Week, limits: Limits) -> Iterator[DraftFinding]:
    before = last.lifts()
    steps = [
        (step, entry)
        for name, entries in first.lifts().items()
        for entry in entries
        if (step := step_between(entry, [(one, 1) for one in before.get(name, ())], limits)) is not None
    ]
    if not steps:
        return
    steps.sort(key=lambda one: -one[0].up)
    largest, worst = steps[0]
    said = [
        f"{entry.name} {load_in_words(step.before.work).words} to {load_in_words(entry.work).words}"
        for step, entry in steps
    ]
    name = last.programme.name
    yield found(
        worst.work.places["load"],
        f"Loads jump after {name}: {first_of(list(dict.fromkeys(said)))}.",
        wanted=limits.words("at most {:%} more for similar repetitions", "step"),
        change="Start lighter and build up, or correct the number.",
        where=line_name(worst.prescription),
        related=tuple(
            Related(step.before.work.places["load"], f"{name}: {load_in_words(step.before.work).words}")
            for step, _ in steps
        ),
        group=worst.name,
        amount=Amount(largest.up, largest.most, "% more"),
        weeks=(first.number,),
    )
