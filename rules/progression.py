"""Progression: steps from week to week, easier weeks, and where a programme starts from."""

from __future__ import annotations

from math import ceil, floor

from ..lint.change import Change
from ..lint.finding import Related, found
from ..lint.ledger import Ledger, Lifter
from ..lint.quantities import plain, week_list
from ..lint.registry import Limits, Option, rule
from .words import COUNTING, counted_lines, exercise_name, first_of, line_name, listed, says, sets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from ..lint.finding import Finding
    from ..lint.ledger import Count, Entry, Tally, Week
    from ..lint.places import Place
    from ..lint.programme import Block, Prescription, Work
    from ..lint.quantities import Load

STEPS = (
    Option("like repetitions", 1, "repetitions apart at most: sets that can be compared", "common practice"),
    Option(
        "a repetition",
        4,
        "% more for each repetition fewer, done or left in reserve",
        "helms-2023-adj: 2 % for half a point of RPE",
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
        "nsca-increments; what gyms stock, common practice",
    ),
    Option("other step", 2.5, "kg for any other implement", "nsca-increments"),
)
"""What makes a step in load large, beside the percentage."""

CLEAR_CUT = (
    Option(
        "volume",
        20,
        "% fewer sets or repetitions in the week",
        "bell-2022: mainly volume; figure from memory",
    ),
    Option("load", 10, "% less load in the mean of the lifts", "common practice, from memory"),
    Option("effort", 2, "repetitions more in reserve in the mean", "common practice, from memory"),
)
"""What makes a week clearly easier than another; any one of them does."""

EASY_WORDS = Option(
    "easy words",
    ("half", "light", "lighter", "easy", "easier", "fewer", "less", "lower", "reduce", "reduced", "cut"),
    "words in a note that say that a week is easier",
    "common practice",
)


class _Step:
    """A step in load from one entry to a later one: ``up`` by so much %, with what was allowed in words."""

    def __init__(self, before: Entry, up: float, allowed: str) -> None:
        self.before = before
        self.up = up
        self.allowed = allowed


def _step(entry: Entry, earlier: Iterable[Entry], limits: Limits) -> _Step | None:
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
    if not steps or not all(step.allowed for step in steps):
        return None
    return min(steps, key=lambda step: step.up)


def _stepped(before: Entry, entry: Entry, unit: str, fewer: float, limits: Limits) -> _Step:
    """The step to a set that is ``fewer`` repetitions shorter; ``allowed`` is empty where it is small."""
    was, now = before.measured[unit], entry.measured[unit]
    harder = fewer + _nearer_to_failure(before, entry)
    share = limits.number("step") + limits.number("a repetition") * harder
    by_share = was * share / 100
    kilograms = _smallest(entry, limits) if unit == "mass" else 0.0
    if by_share >= kilograms:
        allowed = f"{plain(share)} %"
    else:
        allowed = f"{plain(kilograms)} kg, the next step of the implement,"
    small = round(now - was - max(by_share, kilograms), 6) <= 0
    return _Step(before, 100 * (now / was - 1), "" if small else allowed)


def _reps(work: Work) -> float | None:
    """The middle of the repetitions of a set."""
    reps = work.reps.a_set() if work.reps else None
    return reps.middle if reps else None


def _nearer_to_failure(before: Entry, entry: Entry) -> float:
    """By how many repetitions less are left in reserve, where both say."""
    if before.reserve is None or entry.reserve is None:
        return 0.0
    return max(before.reserve.middle - entry.reserve.middle, 0.0)


def _smallest(entry: Entry, limits: Limits) -> float:
    """The smallest step of what is held, in kg."""
    implement = entry.exercise.implement if entry.exercise else ""
    each = limits.table("smallest step").get(implement, limits.number("other step"))
    return each * _load(entry.work).pieces


def _load(work: Work) -> Load:
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
    sources=("acsm-2009", "nsca-increments", "helms-2023-adj"),
    options=(
        Option("step", 10, "% from one week to the next", "acsm-2009"),
        *STEPS,
    ),
    stands_back=True,
)
def load_step_large(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
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
        weeks = tuple(
            (week, week.is_first_back()) for week in ledger.weeks_of(block) if not week.rehabilitation
        )
        for step, entry, week in ledger.recall(_large_steps, weeks, limits):
            yield _too_large(step, entry, week)


def _large_steps(weeks: tuple[tuple[Week, bool], ...], limits: Limits) -> list[tuple[_Step, Entry, Week]]:
    """Steps that are too large among some weeks, of which those that are a first week back are no measure."""
    earlier: dict[object, dict[Entry, None]] = {}
    large = []
    for week, is_first_back in weeks:
        lifts = week.lifts()
        for name, entries in lifts.items():
            for entry in entries:
                known = earlier.get(name, {})
                step = None if entry in known else _step(entry, known, limits)
                if step is not None:
                    large.append((step, entry, week))
        if not is_first_back:
            for name, entries in lifts.items():
                earlier.setdefault(name, {}).update(dict.fromkeys(entries))
    return large


def _too_large(step: _Step, entry: Entry, week: Week) -> Finding:
    was, now = _load(step.before.work).words, _load(entry.work).words
    assert entry.work.reps is not None
    reps = entry.work.reps.a_set()
    return found(
        entry.work.places["load"],
        f"{entry.name} goes from {was} to {now} at {reps} repetitions, {step.up:.0f} % up.",
        wanted=f"at most {step.allowed} more than at like repetitions in the weeks before",
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
    confidence="trial",
    why="Trained lifters coped with 4 to 6 more weekly sets a fortnight in a trial, beginners with half as"
    " many again in another. Larger steps have hardly been tried.",
    sources=("enes-2024", "campos-2002", "pelland-2026-frac"),
    options=(
        Option("most", 6, "sets a week more for a muscle group: a note past it", "enes-2024"),
        Option("far", 12, "sets a week more for a muscle group: a warning past it", "twice enes-2024"),
        Option("tiny", 4, "sets a week below which nothing is compared", "pelland-2026-min"),
        Option("weeks back", 4, "weeks in which the fullest is looked for", "common practice"),
        COUNTING,
    ),
    stands_back=True,
)
def sets_step_large(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
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
    typical = [week for week in ledger.typical_weeks() if week.number > 1]
    for index, week in enumerate(typical):
        back = [
            other for other in typical[:index] if week.number - other.number <= limits.number("weeks back")
        ]
        grown: list[_Growth] = ledger.recall(_grown, week, tuple(back), limits)
        if not grown:
            continue
        worst = max(grown, key=lambda one: one.by)
        entry = worst.cause()
        yield found(
            entry.work.places.get("sets", entry.prescription.place),
            f"Weekly sets rise at once: {_rises(grown)}.",
            severity="warning" if worst.by > limits.number("far") else "note",
            wanted=f"at most {limits.number('most'):g} more than in the fullest of the"
            f" {limits.number('weeks back'):g} weeks before",
            change=f"Spread the rise over several weeks, first of all in {line_name(entry.prescription)}.",
            where=line_name(entry.prescription),
            related=counted_lines(*(one.count for one in grown)),
            weeks=(week.number,),
            excess=worst.by,
        )


class _Growth:
    """A muscle group whose sets grew, with the counts before and now."""

    def __init__(self, group: str, before: Count, count: Count) -> None:
        self.group = group
        self.before = before
        self.count = count
        self.by = count.middle - before.middle

    def cause(self) -> Entry:
        """What brings most sets more than the same exercise did in the same session before."""
        was: dict[tuple[str, str], float] = {}
        for part in self.before.parts:
            key = (part.visit.session.name, part.entry.name)
            was[key] = was.get(key, 0.0) + part.sets.middle
        return max(
            self.count.parts,
            key=lambda part: part.sets.middle - was.get((part.visit.session.name, part.entry.name), 0.0),
        ).entry


def _rises(grown: Sequence[_Growth]) -> str:
    """``chest from 8 to 16 and triceps from 6 to 13``."""
    return listed([f"{one.group} from {one.before} to {one.count}" for one in grown])


def _grown(week: Week, back: Sequence[Week], limits: Limits) -> list[_Growth]:
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
        growth = _Growth(group, fullest, count)
        if fullest.middle < tiny or growth.by <= most:
            continue
        if not any(other.could_hold(areas=(group,)) for other in back):
            found.append(growth)
    return found


@rule(
    "nothing-changes",
    family="progression",
    severity="note",
    confidence="common practice",
    why="Without a step now and then, in load, repetitions, sets or effort, a lift soon asks nothing new of"
    " the lifter. How large a step and how often is the coach's to say.",
    sources=("acsm-2009", "nsca-2for2"),
    options=(
        Option("weeks", 8, "weeks without a change at most", "common practice, from memory"),
        Option(
            "phases",
            ("in-season",),
            "phases in which keeping up is enough",
            "common practice",
        ),
        Option(
            "moves",
            (
                "add",
                "adds",
                "added",
                "increase",
                "progress",
                "progression",
                "heavier",
                "raise",
                "retest",
                "retested",
                "re-test",
                "re-tested",
                "tested anew",
            ),
            "words in a note that say how it moves on",
            "common practice",
        ),
    ),
    stands_back=True,
)
def nothing_changes(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Lifts that stay the same for more than eight weeks with no progression stated.

    Looks at exercises with a load on the line, follows all of their lines from week to week, deloads aside,
    and wants sets, repetitions, load or effort to change within 8 weeks. A range of repetitions or load, an
    open set, a repetition maximum, a stated progression or a note on one leaves room to move; so does a line
    without a load, which the lifter chooses. One note a programme. In season keeping up is enough.

    Flags:
        programme: Press
        weeks: 9
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 60 kg}  # <- here

    Passes:
        programme: Press
        weeks: 8
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 60 kg}
    """
    weeks = [week for week in ledger.typical_weeks() if week.phase not in limits.names("phases")]
    if says(limits.names("moves"), ledger.programme.note):
        return
    still = [run for run in _runs(weeks, limits.names("moves")) if len(run.weeks) > limits.number("weeks")]
    if not still:
        return
    first = min(still, key=lambda run: run.entry.prescription.place.start)
    names = first_of(list(dict.fromkeys(run.entry.name for run in still)))
    longest = max(len(run.weeks) for run in still)
    one = len({run.entry.name for run in still}) == 1
    yield found(
        first.entry.prescription.place,
        f"{names} {'stays' if one else 'stay'} the same in sets, repetitions, load and effort for {longest}"
        " weeks.",
        wanted=f"a change within {limits.number('weeks'):g} weeks, or a progression written down (common"
        " practice)",
        change="Write down how the load moves on, such as `progression: {add: 2.5 kg, when: all sets done}`,"
        " or change the numbers by week.",
        where=line_name(first.entry.prescription),
        related=tuple(Related(run.entry.prescription.place, week_list(run.weeks)) for run in still),
        weeks=tuple(sorted({number for run in still for number in run.weeks})),
    )


class _Run:
    """Weeks in a row in which all that is done of an exercise stays the same; the first entry of it."""

    def __init__(self, dose: object, entry: Entry) -> None:
        self.dose = dose
        self.entry = entry
        self.weeks: list[int] = []


def _runs(weeks: Sequence[Week], moves: tuple[str, ...]) -> list[_Run]:
    """For each exercise whose lines leave no room to move, the runs of weeks in which they read the same."""
    runs: list[_Run] = []
    for index, week in enumerate(weeks):
        lifts = week.lifts()
        open_runs = {run.dose: run for run in runs if run.weeks[-1] == weeks[index - 1].number}
        for name, entries in lifts.items():
            if not all(_is_fixed(entry, moves) for entry in entries):
                continue
            dose = (name, tuple(_dose(entry.work) for entry in entries))
            if dose not in open_runs:
                open_runs[dose] = _Run(dose, entries[0])
                runs.append(open_runs[dose])
            open_runs[dose].weeks.append(week.number)
    return runs


def _is_fixed(entry: Entry, moves: tuple[str, ...]) -> bool:
    """Whether a line states a load and leaves no room to move."""
    work, line = entry.work, entry.prescription
    load, reps = work.load, work.reps
    if load is None or load.kind in ("rm", "top set") or line.progression is not None:
        return False
    if any(value.low != value.high for value in load.values):
        return False
    if reps is not None and (reps.open_last or any(one.low != one.high for one in reps.sets)):
        return False
    return not says(moves, line.note, line.session.note, line.session.block.note)


def _dose(work: Work) -> tuple[object, ...]:
    reps = (work.reps.sets, work.reps.parts) if work.reps else None
    return (work.sets, reps, _load(work).words, work.rir, work.rpe, work.hold, work.distance)


def _is_easier(week: Tally, before: Tally, limits: Limits) -> bool:
    """Whether a week is clearly easier than one before: in sets, repetitions, load or effort."""
    change = Change(before, week)
    volume = 100 - limits.number("volume")
    return (
        any(share is not None and share <= volume for share in (change.sets, change.repetitions))
        or (change.load is not None and change.load <= 100 - limits.number("load"))
        or (change.reserve is not None and change.reserve >= limits.number("effort"))
    )


def _notes(week: Week) -> list[str]:
    """What the coach has written beside the numbers of a week."""
    sessions = [visit.session.note for visit in week.visits]
    return [week.block.note, *sessions, *(entry.prescription.note for _, entry in week.entries())]


@rule(
    "deload-missing",
    family="progression",
    severity="note",
    confidence="convention",
    why="Lifters who were asked take an easier week about every five or six, coaches mainly by cutting sets."
    " No trial says how often; the interval is from memory.",
    sources=("bell-2022", "bell-2023", "rogerson-2024"),
    options=(
        Option("weeks", 8, "weeks of rising load at most", "rogerson-2024, from memory"),
        Option("phases", ("in-season", "return"), "phases that are left alone", "common practice"),
        Option("levels", ("novice",), "levels that are left alone", "common practice"),
        *CLEAR_CUT,
    ),
    stands_back=True,
)
def deload_missing(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """More than eight weeks of rising load without an easier one.

    Follows typical weeks in a row, as long as none cuts sets or repetitions by 20 %, load by 10 %, or leaves
    2 more repetitions in reserve; any one of them makes an easier week, whatever it is called. Wants no more
    than 8 such weeks where the heaviest load of a lift rises from the first to the last, or is to rise by so
    much every week or session. Off for novices, in season, in a return, and where the lifter chooses the
    load.

    Flags:
        programme: Squat
        weeks: 9
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: 3
                reps: 5
                load: {1-3: 75 %, 4-6: 77.5 %, 7-9: 80 %}  # <- here

    Passes:
        programme: Squat
        weeks: 9
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: {1-4: 3, 5: 2, 6-9: 3}
                reps: 5
                load: {1-3: 75 %, 4-6: 77.5 %, 7-9: 80 %}
    """
    if ledger.level in limits.names("levels"):
        return
    for run in _unbroken(ledger, limits):
        risen = _risen(run[0], run[-1]) if len(run) > limits.number("weeks") else []
        if not risen:
            continue
        first, last, words = risen[0]
        at = run[int(limits.number("weeks")) - 1].number
        yield found(
            last.work.places["load"],
            f"{len(run)} weeks in a row without an easier one while the load rises: {last.name} {words}.",
            wanted=f"an easier week after {limits.number('weeks'):g} at most (common practice; no trial sets"
            " it)",
            change=f"Make week {at}, or one before it, easier: fewer sets, less load or more in reserve.",
            where=line_name(last.prescription),
            subject="deload",
            related=(Related(first.work.places["load"], f"week {run[0].number}: {_load(first.work).words}"),),
            weeks=tuple(week.number for week in run),
            excess=len(run),
        )


def _unbroken(ledger: Ledger, limits: Limits) -> Iterator[list[Week]]:
    """Typical weeks in a row of which none is clearly easier than the one before."""
    run: list[Week] = []
    for week in ledger.weeks:
        counts = week.is_typical() and not week.rehabilitation and week.phase not in limits.names("phases")
        if run and not (counts and not ledger.recall(_is_easier, week, run[-1], limits)):
            yield run
            run = []
        if counts:
            run.append(week)
    if run:
        yield run


def _risen(first: Week, last: Week) -> list[tuple[Entry, Entry, str]]:
    """Lifts whose heaviest load is higher in the last week than in the first, or is to rise, in words."""
    before, risen = first.lifts(), []
    for name, entries in last.lifts().items():
        pair = _heaviest(before.get(name, ()), entries)
        if pair is None:
            continue
        was, now, more = pair
        if more:
            risen.append((was, now, f"from {_load(was.work).words} to {_load(now.work).words}"))
        elif added := _added_by_turn(now.prescription):
            risen.append((was, now, added))
    return risen


def _heaviest(before: Iterable[Entry], after: Iterable[Entry]) -> tuple[Entry, Entry, bool] | None:
    """The heaviest sets of an exercise in two weeks, and whether the later is heavier; None if not known."""
    for unit in ("mass", "share", "percent"):
        was, now = ([entry for entry in entries if unit in entry.measured] for entries in (before, after))
        if was and now:
            most = [max(entries, key=lambda entry: entry.measured[unit]) for entries in (was, now)]
            return most[0], most[1], most[1].measured[unit] > most[0].measured[unit]
    return None


def _added_by_turn(line: Prescription) -> str:
    """``2.5 kg more every week``, where a line adds load by the calendar and on no condition."""
    stated = line.progression
    if stated is None or not stated.every or stated.when or not stated.add.endswith(("kg", "lb", "%")):
        return ""
    return f"{stated.add} more every {stated.every.removeprefix('1 ')}"


@rule(
    "deload-without-cut",
    family="progression",
    severity="note",
    confidence="trial",
    why="A deload is a time of less stress, coaches agree, and they make it mainly by fewer sets and"
    " repetitions. As it is written, this one asks about as much as the week before.",
    sources=("bell-2023", "bell-2022", "helms-taper"),
    options=(*CLEAR_CUT, EASY_WORDS),
    stands_back=True,
)
def deload_without_cut(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """A deload that cuts neither sets nor load nor effort.

    Compares each week of a block marked `deload: true`, or called a deload, with the last typical week before
    the block; wants 20 % fewer sets or repetitions, 10 % less load, or 2 more repetitions in reserve. Silent
    where a note says that the week is easier, and where sets could not be read.

    Flags:
        programme: Squat
        blocks:
          - name: Build
            weeks: 3
            sessions:
              - session: Lower
                exercises: [{exercise: back squat, sets: 5, reps: 5, load: 75 %}]
          - name: Recover  # <- here
            weeks: 1
            deload: true
            sessions:
              - session: Lower
                exercises: [{exercise: back squat, sets: 5, reps: 5, load: 72.5 %}]

    Passes:
        programme: Squat
        blocks:
          - name: Build
            weeks: 3
            sessions:
              - session: Lower
                exercises: [{exercise: back squat, sets: 5, reps: 5, load: 75 %}]
          - name: Recover
            weeks: 1
            deload: true
            sessions:
              - session: Lower
                exercises: [{exercise: back squat, sets: 4, reps: 5, load: 72.5 %}]
    """
    typical = ledger.typical_weeks()
    for week in ledger.weeks:
        block = week.block
        before = [other for other in typical if other.number < block.first]
        if not before or not _is_called_deload(block):
            continue
        if ledger.recall(_is_easier, week, before[-1], limits) or says(
            limits.names("easy words"), *_notes(week)
        ):
            continue
        if not all(entry.work.readable for one in (week, before[-1]) for _, entry in one.entries()):
            continue
        now, was = week.all_sets(), before[-1].all_sets()
        fewer = ceil(now.middle - floor(was.middle * (100 - limits.number("volume")) / 100))
        yield found(
            block.place,
            f"{block.name} is a deload with {sets_of(str(now))} after {was} in week {before[-1].number}"
            f"{_further(Change(before[-1], week))}.",
            wanted=f"a clear cut: {limits.number('volume'):g} % fewer sets or repetitions,"
            f" {limits.number('load'):g} % less load or {limits.number('effort'):g} more in reserve",
            change=f"Take {sets_of(fewer)} off, which is how most coaches do it, or lower load or effort.",
            where=block.name,
            weeks=(week.number,),
            excess=now.middle,
        )


def _is_called_deload(block: Block) -> bool:
    return block.deload or says(("deload",), block.name)


def _further(change: Change) -> str:
    """What is known of load and effort: ``, at 97 % of the load and with 1 more in reserve``."""
    parts = []
    if change.load is not None:
        share = f"{change.load:.0f} % of the" if round(change.load) != 100 else "the same"
        parts.append(f"at {share} load")
    if change.reserve is not None:
        more = "less" if change.reserve < 0 else "more"
        parts.append(
            f"with {plain(abs(change.reserve))} {more} in reserve"
            if change.reserve
            else "as far from failure"
        )
    return f", {listed(parts)}" if parts else ""


@rule(
    "return-week-not-lighter",
    family="progression",
    severity="note",
    confidence="guideline",
    why="After time away the first sessions are kept very light and built up from there. How light, and"
    " whether to start at all, is for the athlete, the coach and whoever treats them to say.",
    sources=("fm21-20-prep",),
    options=(
        Option("volume", 10, "% fewer sets or repetitions than later", "common practice"),
        Option("load", 5, "% less load than later", "common practice"),
        Option("effort", 1, "repetitions more in reserve than later", "common practice"),
        EASY_WORDS,
    ),
    stands_back=True,
)
def return_week_not_lighter(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """A return whose first week is no lighter than those that follow.

    Compares the first week of a phase `return` with the later ones of it, or with the week after where it is
    only one; wants it lighter than at least one of them: 10 % fewer sets or repetitions, 5 % less load, or
    one more repetition in reserve. Silent where a note says that it is easier.

    Flags:
        programme: Back after the summer
        phase: return
        weeks: 3
        sessions:
          - session: Lower
            exercises: [{exercise: back squat, sets: 3, reps: 8, rir: 3}]  # <- here

    Passes:
        programme: Back after the summer
        phase: return
        weeks: 3
        sessions:
          - session: Lower
            exercises: [{exercise: back squat, sets: {1: 2, 2-3: 3}, reps: 8, rir: 3}]
    """
    for week in ledger.weeks:
        if not week.is_first_back() or week.rehabilitation or not week.all_sets():
            continue
        later = _rest_of_return(ledger, week)
        if not later or any(ledger.recall(_is_easier, week, other, limits) for other in later):
            continue
        if says(limits.names("easy words"), ledger.programme.note, *_notes(week)):
            continue
        fullest = max(later, key=lambda other: other.all_sets().middle)
        count = week.all_sets()
        yield found(
            _sets_place(count),
            f"The first week back holds {sets_of(str(count))} against {fullest.all_sets()} in week"
            f" {fullest.number}{_further(Change(fullest, week))}.",
            wanted="a first week that is lighter than what follows",
            change="Take a set off most exercises in the first week, lower the load, or leave more in"
            " reserve; go by what the athlete and whoever advises them say.",
            where="first week back",
            related=counted_lines(count),
            weeks=(week.number,),
        )


def _rest_of_return(ledger: Ledger, first: Week) -> list[Week]:
    """The later weeks of a return, else the week after it."""
    after = list(ledger.weeks[first.number :])
    later = []
    for week in after:
        if week.phase != "return":
            break
        later.append(week)
    return later or after[:1]


def _sets_place(count: Count) -> Place:
    """Where the sets of the first line that brings any are written."""
    entry = next(part.entry for part in count.parts if part.sets.high)
    return entry.work.places.get("sets", entry.prescription.place)


@rule(
    "progression-never-reached",
    family="progression",
    severity="note",
    confidence="fact",
    why="As it is written this step never comes: there is nothing to add to, or the moment for it does not"
    " occur.",
    sources=("nsca-2for2",),
    options=(
        Option(
            "top of range",
            ("top of range", "top of the range", "top end", "upper end", "end of the range"),
            "words for the upper end of a range",
            "fact",
        ),
    ),
    stands_back=True,
)
def progression_never_reached(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """A stated progression that cannot lead to the next load.

    Looks at lines with a progression. Kilograms or pounds cannot be added to a band; a percentage needs a
    load that is a number, or a stated effort by which the lifter has found one; and the top of a range needs
    a range of repetitions, time or distance.

    Flags:
        programme: Squat
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: 3
                reps: 5
                load: 80 kg
                progression: {add: 2.5 kg, when: top of range in all sets}  # <- here

    Passes:
        programme: Squat
        sessions:
          - session: Lower
            exercises:
              - exercise: back squat
                sets: 3
                reps: 5-6
                load: 80 kg
                progression: {add: 2.5 kg, when: top of range in all sets}
    """
    lines: dict[Prescription, list[Entry]] = {}
    for _, entry in ledger.entries():
        lines.setdefault(entry.prescription, []).append(entry)
    for line, entries in lines.items():
        stated = line.progression
        if stated is None:
            continue
        fault = _never_added(stated.add, entries) or (
            says(limits.names("top of range"), stated.when) and _never_at_the_top(entries)
        )
        if not fault:
            continue
        counted, change = fault
        yield found(
            stated.place,
            f"{exercise_name(line)}: {counted}.",
            wanted="a step that the line can come to",
            change=change,
            where=line_name(line),
        )


def _never_added(add: str, entries: Sequence[Entry]) -> tuple[str, str] | None:
    """Why what is to be added cannot be, and what to do; None where it can."""
    if add.endswith(("kg", "lb")) and all(_is_band(entry) for entry in entries):
        return f"{add} cannot be added to a band", "Name the next band instead, or add repetitions."
    if add.endswith("%") and not any(_has_number(entry) for entry in entries):
        return (
            f"{add} more of a load that is no number",
            "State a load in kg or %, or add kilograms or repetitions.",
        )
    return None


def _is_band(entry: Entry) -> bool:
    load = entry.work.load
    if load is None:
        return entry.exercise is not None and entry.exercise.implement == "band"
    return says(("band",), load.words)


def _has_number(entry: Entry) -> bool:
    """Whether the load is a number, or is found by effort."""
    load = entry.work.load
    if load is None:
        return entry.stated_effort
    return any(value.high for value in load.values)


def _never_at_the_top(entries: Sequence[Entry]) -> tuple[str, str] | None:
    for entry in entries:
        reps = entry.work.reps
        if reps is not None and reps.open_last:
            return None
        spans = [*(reps.sets if reps else ()), entry.work.hold, entry.work.distance]
        if any(span is not None and span.low != span.high for span in spans):
            return None
    return (
        "the next step waits for the top of a range, but the line states no range",
        "Write the repetitions as a range, such as 5-8, or say what has to be done with the number there is.",
    )


@rule(
    "taper-missing",
    family="progression",
    severity="note",
    confidence="trial",
    why="Nearly all strength athletes who were asked lower the work for about a week before a competition, by"
    " fewer sets with the load kept.",
    sources=("taper-strength", "helms-taper", "taper-endurance"),
    options=(
        Option("days", 14, "days before the event within which a lighter week begins", "taper-strength"),
        Option(
            "events",
            (
                "test",
                "tests",
                "testing",
                "competition",
                "regatta",
                "meet",
                "race",
                "championship",
                "championships",
                "contest",
                "trials",
            ),
            "words in the name of an event to be ready for",
            "common practice",
        ),
        Option("weeks", 3, "typical weeks before it, from which a lighter week is wanted", "common practice"),
        Option("goals", ("strength", "power"), "goals", "taper-strength"),
        Option("levels", ("novice",), "levels that are left alone", "common practice"),
        Option("phases", ("in-season",), "phases that are left alone", "common practice"),
        Option(
            "on purpose",
            ("train through", "trained through", "no taper"),
            "words in the event's note",
            "common practice",
        ),
        *CLEAR_CUT,
    ),
    stands_back=True,
)
def taper_missing(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """A test or competition with no lighter week before it, where the goal is strength or power.

    Looks at dated events that are called a test, competition, regatta or the like, and at the first week of a
    phase `test`, after three typical weeks or more. Wants a week that begins in the last 14 days before it,
    or the test week itself, to be a deload, a taper, or clearly easier than the last typical week before
    them: 20 % fewer sets or repetitions, 10 % less load, 2 more repetitions in reserve. Off for novices, in
    season, and where the event's note says that it is trained through.

    Flags:
        programme: To the test
        goal: strength
        starts: 2026-01-05
        weeks: 5
        events:
          - {date: 2026-02-07, event: strength test}  # <- here
        sessions:
          - session: Lower
            exercises: [{exercise: back squat, sets: 5, reps: 4, rir: 2}]

    Passes:
        programme: To the test
        goal: strength
        starts: 2026-01-05
        weeks: 5
        events:
          - {date: 2026-02-07, event: strength test}
        sessions:
          - session: Lower
            exercises: [{exercise: back squat, sets: {1-4: 5, 5: 3}, reps: 4, rir: 2}]
    """
    if ledger.programme.goal not in limits.names("goals") or ledger.level in limits.names("levels"):
        return
    days = limits.number("days")
    for day, event in ledger.events():
        if not says(limits.names("events"), event.name) or says(limits.names("on purpose"), event.note):
            continue
        near = [week for week in ledger.weeks if 0 < day - _first_day(week) <= days]
        yield from _untapered(ledger, near, -1, event.place, event.name, limits)
    for eve, week in zip(ledger.weeks, ledger.weeks[1:], strict=False):
        if week.phase == "test" and eve.phase != "test":
            near = [one for one in ledger.weeks if 0 <= _first_day(week) - _first_day(one) <= days]
            yield from _untapered(ledger, near, -2, week.block.place, week.block.name, limits)


def _first_day(week: Week) -> int:
    return 7 * (week.number - 1) + 1


def _untapered(
    ledger: Ledger, near: Sequence[Week], eve: int, place: Place, name: str, limits: Limits
) -> Iterator[Finding]:
    """The finding where none of the weeks near an event is lighter than the last typical one before them.

    ``eve`` is the index of the one to make lighter.
    """
    if not near or near[-1].phase in limits.names("phases"):
        return
    before = [week for week in ledger.typical_weeks() if week.number < near[0].number]
    if len(before) < max(limits.number("weeks"), 1):
        return
    for week in near:
        if week.block.deload or week.phase == "taper" or ledger.recall(_is_easier, week, before[-1], limits):
            return
    last = near[eve]
    yield found(
        place,
        f"{name} comes after {last.number} weeks without a lighter one at the end: week {last.number} holds"
        f" {sets_of(str(last.all_sets()))} against {before[-1].all_sets()} in week {before[-1].number}.",
        wanted="a lighter last week; about half the sets with the load kept is usual",
        change=f"Take about half of the sets off in week {last.number} and keep the load.",
        where=name,
        subject=f"week {near[-1].number}",
        weeks=tuple(week.number for week in near),
    )


@rule(
    "start-does-not-follow",
    family="progression",
    severity="note",
    confidence="common practice",
    why="A programme usually starts near where the last one ended. A jump between two files is easy to miss,"
    " since each of them looks sound.",
    sources=("enes-2024", "acsm-2009"),
    options=(
        Option("gap", 4, "weeks between the two programmes at most", "common practice"),
        Option("most", 6, "sets a week more for a muscle group", "enes-2024"),
        Option("share", 50, "% more sets a week for a muscle group", "campos-2002"),
        Option("tiny", 4, "sets a week below which nothing is compared", "pelland-2026-min"),
        Option("step", 20, "% more load at like repetitions", "twice acsm-2009"),
        *STEPS,
        COUNTING,
    ),
)
def start_does_not_follow(lifter: Lifter, limits: Limits) -> Iterator[Finding]:
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


def _jump_in_sets(first: Week, last: Week, limits: Limits) -> Iterator[Finding]:
    kind = limits.name("counting")
    grown = []
    for group in first.groups():
        growth = _Growth(group, last.sets(group, kind), first.sets(group, kind))
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
        f"Weekly sets jump from the end of {name} to the first week: {_rises(grown)}.",
        wanted=f"no more than {limits.number('most'):g} sets and {limits.number('share'):g} % above the last"
        " programme",
        change=f"Start nearer to {name} and build up over the first weeks.",
        where=line_name(line),
        related=counted_lines(*(one.before for one in grown)),
        weeks=(first.number,),
        excess=worst.by,
    )


def _jump_in_load(first: Week, last: Week, limits: Limits) -> Iterator[Finding]:
    before = last.lifts()
    steps = [
        (step, entry)
        for name, entries in first.lifts().items()
        for entry in entries
        if (step := _step(entry, before.get(name, ()), limits)) is not None
    ]
    if not steps:
        return
    _, worst = max(steps, key=lambda one: one[0].up)
    said = [
        f"{entry.name} at {_load(entry.work).words} (before: {_load(step.before.work).words})"
        for step, entry in steps
    ]
    name = last.programme.name
    yield found(
        worst.work.places["load"],
        f"The first week starts far above the end of {name}: {first_of(list(dict.fromkeys(said)))}.",
        wanted=f"no more than {limits.number('step'):g} % above the last programme at like repetitions",
        change=f"Start nearer to {name}, or correct the number if it is a slip.",
        where=line_name(worst.prescription),
        related=tuple(
            Related(step.before.work.places["load"], f"{name}: {_load(step.before.work).words}")
            for step, _ in steps
        ),
        weeks=(first.number,),
    )
