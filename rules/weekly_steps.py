"""Steps from week to week, and from one programme to the next."""

from __future__ import annotations

from ..lint.counting.tally import counted_lines
from ..lint.engine.limits import COUNTING, Condition, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import listed, plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Count
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits, Named
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.quantities import Load
    from ..lint.model.sessions import Work

STEPS = (
    Condition(
        "like repetitions", 1, "repetitions apart at most: sets that can be compared", "common practice"
    ),
    Option(
        "a repetition",
        4,
        "% more for each repetition fewer, done or left in reserve",
        "a trial's protocol: 2 % for half a point of RPE, which is half a repetition (Helms and others 2023)",
    ),
    Option(
        "smallest step",
        {
            "barbell": 5,
            "trap bar": 5,
            "guided bar": 5,
            "dumbbell": 2,
            "kettlebell": 4,
            "machine": 5,
            "cable": 5,
            "plate": 5,
            "sandbag": 5,
        },
        "kg by implement, for each one held",
        "common practice, no source: what gyms stock; a handbook's steps run from 1 to 7 kg (the"
        " larger from memory)",
    ),
    Option(
        "other step",
        2.5,
        "kg for any other implement",
        "between the handbook's steps of 1 to 2 kg and 2 to 4 kg (Essentials of Strength Training and"
        " Conditioning, read second-hand)",
    ),
)
"""What makes a step in load large, beside the percentage."""


class Step:
    """A step in load from one entry to a later one: ``up`` by so much %; ``wanted`` is empty where it is
    small enough.
    """

    def __init__(self, before: SetGroup, up: float, wanted: str) -> None:
        self.before = before
        self.up = up
        self.wanted = wanted


def step_between(entry: SetGroup, earlier: Iterable[SetGroup], limits: Limits) -> Step | None:
    """The step from the heaviest like set among earlier ones, where it is too large from each of them."""
    steps = []
    for before in earlier:
        if before.fast_tempo != entry.fast_tempo:
            continue
        was, now = _reps(before.work), _reps(entry.work)
        if was is None or now is None or abs(now - was) > limits.number("like repetitions"):
            continue
        unit = next((unit for unit in entry.measured if before.measured.get(unit)), "")
        if unit:
            steps.append(_stepped(before, entry, unit, max(was - now, 0.0), limits))
    if not steps or not all(step.wanted for step in steps):
        return None
    return min(steps, key=lambda step: step.up)


def _stepped(before: SetGroup, entry: SetGroup, unit: str, fewer: float, limits: Limits) -> Step:
    """The step to a set that is ``fewer`` repetitions shorter."""
    was, now = before.measured[unit], entry.measured[unit]
    harder = fewer + _nearer_to_failure(before, entry)
    share = limits.number("step") + limits.number("a repetition") * harder
    by_share = was * share / 100
    smallest, pieces = _smallest(entry, limits), load_in_words(entry.work).pieces
    kilograms = limits.number(smallest) * pieces if unit == "mass" else 0.0
    up = 100 * (now / was - 1)
    if round(now - was - max(by_share, kilograms), 6) <= 0:
        return Step(before, up, "")
    if by_share < kilograms:
        allowed = f"{plain(kilograms)} kg, the next step of the implement,"
        each = "{:kg}" if pieces == 1 else "{:kg} for each one held"
        return Step(before, up, _wanted(allowed, limits, (each, smallest)))
    of: list[tuple[str, Named]] = [("{:%}", "step")]
    if harder:
        of.append(("{:%} for each repetition fewer", "a repetition"))
    return Step(before, up, _wanted(f"{plain(share)} %", limits, *of))


def _wanted(allowed: str, limits: Limits, *of: tuple[str, Named]) -> str:
    return limits.worked_out(f"at most {allowed} more than at like repetitions in the weeks before", *of)


def _reps(work: Work) -> float | None:
    """The middle of the repetitions of a set."""
    reps = work.reps.a_set() if work.reps else None
    return reps.middle if reps else None


def _nearer_to_failure(before: SetGroup, entry: SetGroup) -> float:
    """By how many repetitions less are left in reserve, where both are written."""
    was, now = before.written_reserve, entry.written_reserve
    return max(was.middle - now.middle, 0.0) if was is not None and now is not None else 0.0


def _smallest(entry: SetGroup, limits: Limits) -> Named:
    """The limit for the smallest step, in kg, of each thing that is held."""
    implement = entry.implement
    return ("smallest step", implement) if implement in limits.table("smallest step") else "other step"


def load_in_words(work: Work) -> Load:
    """The load of a line that has one."""
    assert work.load is not None
    return work.load


@rule(
    "load-step-large",
    family="progression",
    severity="warning",
    confidence="guideline",
    why="Guidelines raise a load by 2 to 10 % once one or two more repetitions are possible. A larger step is"
    " often a slip of the pen, or more than the next session can bear.",
    sources=("acsm-2009", "nsca-2for2", "nsca-increments", "helms-2023-adj"),
    options=(
        Option("step", 10, "% from one week to the next", "acsm-2009"),
        *STEPS,
    ),
)
def load_step_large(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A load that rises by more than a tenth from one week to the next, like repetitions with like.

    Compares each load with the loads of the same exercise in earlier weeks of the block, at repetitions no
    more than one apart; sets lifted as fast as possible (X) only with others of their kind. Wants it no more
    than 10 % above the heaviest of them, and 4 % more for each repetition that it is shorter or nearer to
    failure; or no more than the next step of the implement, where that is larger. What follows the first week
    of a return is left alone, and so are repetition maxima, labels, and bodyweight loads without a body mass.

    Flags:
        programme: Squat
        weeks: 3
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: 3
                reps: 5
                load: {1: 100 kg, 2: 105 kg, 3: 120 kg}  # <- here

    Passes:
        programme: Squat
        weeks: 3
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: 3
                reps: 5
                load: {1: 100 kg, 2: 105 kg, 3: 115 kg}
    """
    for block in ledger.programme.blocks:
        weeks = tuple((week, week.first_back) for week in ledger.weeks_of(block))
        for step, entry, week in ledger.recall(_large_steps, weeks, limits):
            yield _too_large(step, entry, week)


def _large_steps(weeks: tuple[tuple[Week, bool], ...], limits: Limits) -> list[tuple[Step, SetGroup, Week]]:
    """Steps that are too large among some weeks, of which those that are a first week back are no measure."""
    earlier: dict[object, dict[SetGroup, None]] = {}
    large = []
    for week, is_first_back in weeks:
        lifts = week.lifts()
        for name, entries in lifts.items():
            for entry in entries:
                known = earlier.get(name, {})
                step = None if entry in known else step_between(entry, known, limits)
                if step is not None:
                    large.append((step, entry, week))
        if not is_first_back:
            for name, entries in lifts.items():
                earlier.setdefault(name, {}).update(dict.fromkeys(entries))
    return large


def _too_large(step: Step, entry: SetGroup, week: Week) -> DraftFinding:
    was, now = load_in_words(step.before.work).words, load_in_words(entry.work).words
    assert entry.work.reps is not None
    reps = entry.work.reps.a_set()
    return found(
        entry.work.places["load"],
        f"{entry.name} goes from {was} to {now} at {reps} repetitions, {step.up:.0f} % up.",
        wanted=step.wanted,
        change="Take it in two or more steps, or correct the number if it is a slip.",
        where=line_name(entry.prescription),
        related=(Related(step.before.work.places["load"], f"before: {was}"),),
        weeks=(week.number,),
        excess=step.up,
    )


@rule(
    "sets-step-large",
    family="progression",
    severity="warning",
    confidence="growth trial",
    why="In one trial trained men coped with 4 to 6 more weekly sets a fortnight, and another put beginners"
    " up by half in one week. None of our sources sets a limit to such a step.",
    sources=("enes-2024", "campos-2002", "pelland-2026-min", "pelland-2026-frac"),
    options=(
        Option("most", 6, "sets a week more for a muscle group: a note past it", "enes-2024"),
        Condition(
            "far",
            12,
            "sets a week more for a muscle group: a warning past it",
            "twice the step of Enes and others 2024, and the largest on file: 24 to 36 sets in one week"
            " (Campos and others 2002, beginners)",
        ),
        Condition("tiny", 4, "sets a week below which nothing is compared", "pelland-2026-min"),
        Option("weeks back", 4, "weeks in which the fullest is looked for", "common practice"),
        COUNTING,
    ),
    stands_back=("peak",),
)
def sets_step_large(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A muscle group's weekly sets that rise by more than six at once.

    Compares the hard sets of each typical week, helping ones as half, with the fullest of the typical weeks
    among the four before; wants no more than 6 above it. A note past that, a warning past 12. The first week
    of a programme or of a return, deloads, tapers and tests are neither judged nor compared with; nor are
    fewer than 4 sets. Silent where an exercise that cannot be counted may have trained the muscle before.

    Flags:
        programme: Chest
        weeks: 4
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 4, reps: 8}
              - exercise: dumbbell fly
                reps: 12
                sets: {1-2: 3, 3-4: 16}  # <- here

    Passes:
        programme: Chest
        weeks: 4
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 4, reps: 8}
              - exercise: dumbbell fly
                reps: 12
                sets: {1-2: 3, 3-4: 9}
    """
    typical = [week for week in ledger.typical_weeks(rehabilitation=True) if week.number > 1]
    for index, week in enumerate(typical):
        back = [
            other for other in typical[:index] if week.number - other.number <= limits.number("weeks back")
        ]
        grown: list[Growth] = ledger.recall(_grown, week, tuple(back), limits)
        if not grown:
            continue
        worst = max(grown, key=lambda one: one.by)
        entry = worst.cause()
        yield found(
            entry.work.places.get("sets", entry.prescription.place),
            f"Weekly sets rise at once: {rises(grown)}.",
            severity="warning" if worst.by > limits.number("far") else "note",
            wanted=limits.words(
                "at most {} more than in the fullest of the {:week} before", "most", "weeks back"
            ),
            change=f"Spread the rise over several weeks, first of all in {line_name(entry.prescription)}.",
            where=line_name(entry.prescription),
            related=counted_lines(*(one.count for one in grown)),
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
    """``chest from 8 to 16 and triceps from 6 to 13``."""
    return listed([f"{one.group} from {one.before} to {one.count}" for one in grown])


def _grown(week: Week, back: Sequence[Week], limits: Limits) -> list[Growth]:
    """Muscle groups that get far more in a week than in the fullest of some weeks before."""
    if not back or week.visits == back[-1].visits:
        return []  # a week like the one before it has grown by nothing
    found = []
    kind, most, tiny = limits.name("counting"), limits.number("most"), limits.number("tiny")
    for group in week.groups():
        count = week.sets(group, kind)
        if count.middle <= most:
            continue
        fullest = max((other.sets(group, kind) for other in back), key=lambda count: count.middle)
        growth = Growth(group, fullest, count)
        if fullest.middle < tiny or growth.by <= most:
            continue
        if not any(other.could_hold(areas=(group,)) for other in back):
            found.append(growth)
    return found
