"""Programmes in which nothing changes, or in which the next load is never reached."""

from __future__ import annotations

from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import exercise_name, line_name
from ..lint.wording.words import first_of, plain, says, week_list
from .load_steps import load_in_words
from .offers import adding_key, in_one_edit, writing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.quantities import Load
    from ..lint.model.sessions import Prescription, Work
    from .offers import Offer


@rule(
    "nothing-changes",
    family="progression",
    severity="note",
    confidence="common practice",
    why="Without a step now and then, in load, repetitions, sets or effort, a lift soon asks nothing new of"
    " the lifter. How large a step and how often is the coach's to say.",
    sources=("acsm-2009", "nsca-2for2"),
    options=(
        Option("weeks", 8, "weeks without a change at most", "common practice"),
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
    stands_back=("rehabilitation",),
    asks=True,
    needs=("load",),
)
def nothing_changes(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Lifts that stay the same for more than eight weeks with no progression stated.

    Looks at exercises with a load on the line that is more than the body, follows all of their lines from
    week to week, deloads aside, and wants sets, repetitions, load or effort to change within 8 weeks. A range
    of repetitions or load, an open set, a repetition maximum, a stated progression or a note on one leaves
    room to move; so does a line without a load, which the lifter chooses; and where another lift of the same
    pattern moves on, or most of the loaded lifts do, this one is taken for its practice. One note a
    programme. In season keeping up is enough.

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
    if says((*limits.names("moves"), *ELSEWHERE), ledger.programme.note):
        return
    runs = _runs(weeks, limits.names("moves"))
    still = [
        run for run in runs if len(run.weeks) > limits.number("weeks") and not _moves_elsewhere(run, weeks)
    ]
    if not still or 2 * len({run.entry.name for run in still}) < _loaded(weeks):
        return
    first = min(still, key=lambda run: run.entry.prescription.place.start)
    names = first_of(list(dict.fromkeys(run.entry.name for run in still)))
    longest = max(len(run.weeks) for run in still)
    yield found(
        first.entry.prescription.place,
        f"{longest} weeks without a change: {names}.",
        wanted=limits.words("a change within {:week}", "weeks"),
        change="Change the numbers by week, or write `progression: {add: 2.5 kg}`.",
        where=line_name(first.entry.prescription),
        edits=_progressing([run.entry for run in still]),
        group=names,
        amount=Amount(longest, limits.number("weeks"), "weeks"),
        related=tuple(Related(run.entry.prescription.place, week_list(run.weeks)) for run in still),
        weeks=tuple(sorted({number for run in still for number in run.weeks})),
    )


def _loaded(weeks: Sequence[Week]) -> int:
    """How many lifts have a load that is more than the body."""
    entries = (entry for week in weeks for _, entry in week.entries())
    return len({one.name for one in entries if one.work.load and _is_more_than_the_body(one.work.load)})


def _moves_elsewhere(run: _Unchanged, weeks: Sequence[Week]) -> bool:
    """Whether another lift of its pattern changes in these weeks: this one is then its light practice."""
    pattern = run.entry.exercise.pattern if run.entry.exercise else ""
    doses: dict[object, set[object]] = {}
    for week in weeks:
        for name, entries in week.lifts().items() if pattern and week.number in run.weeks else ():
            exercise = entries[0].exercise
            if exercise is not None and exercise.pattern == pattern:
                doses.setdefault(name, set()).add(tuple(_dose(entry.work) for entry in entries))
    return any(len(different) > 1 for different in doses.values())


class _Unchanged:
    """Weeks in a row in which all that is done of an exercise stays the same; the first entry of it."""

    def __init__(self, dose: object, entry: SetGroup) -> None:
        self.dose = dose
        self.entry = entry
        self.weeks: list[int] = []


def _runs(weeks: Sequence[Week], moves: tuple[str, ...]) -> list[_Unchanged]:
    """For each exercise whose lines leave no room to move, the runs of weeks in which they read the same."""
    runs: list[_Unchanged] = []
    for index, week in enumerate(weeks):
        lifts = week.lifts()
        open_runs = {run.dose: run for run in runs if run.weeks[-1] == weeks[index - 1].number}
        for name, entries in lifts.items():
            if not all(_is_fixed(entry, moves) for entry in entries):
                continue
            dose = (name, tuple(_dose(entry.work) for entry in entries))
            if dose not in open_runs:
                open_runs[dose] = _Unchanged(dose, entries[0])
                runs.append(open_runs[dose])
            open_runs[dose].weeks.append(week.number)
    return runs


def _is_fixed(entry: SetGroup, moves: tuple[str, ...]) -> bool:
    """Whether a line states a load and leaves no room to move."""
    work, line = entry.work, entry.prescription
    load, reps = work.load, work.reps
    if load is None or _is_open(load) or line.progression is not None:
        return False
    if not _is_more_than_the_body(load) or any(value.low != value.high for value in load.values):
        return False
    if reps is not None and (reps.open_last or any(one.low != one.high for one in reps.sets)):
        return False
    return not says((*moves, *ELSEWHERE), line.note, line.session.note, line.session.block.note)


ELSEWHERE = (
    "steigern", "steigerung", "erhöhen", "mehr", "schwerer", "augmenter", "augmente", "ajouter", "plus lourd",
    "subir", "sube", "aumentar", "más peso", "up a pin", "go up", "goes up", "move up", "moves up",
    "when easy", "feels easy", "too easy", "each time", "every time", "log", "logbook", "build",
)  # fmt: skip
"""The same in other words and languages (common practice, no source)."""


def _is_more_than_the_body(load: Load) -> bool:
    """Whether a load is more than the lifter's own mass, or a share of it."""
    if load.kind == "bodyweight":
        return any(one.high > 0 for one in load.values)
    return load.kind != "share" or load.added > 0


def _is_open(load: Load) -> bool:
    """Whether a load leaves the lifter room to lift more: an RM, a top set, a word such as heavy."""
    return load.kind in ("rm", "rm share", "top set") or load.is_word


def _dose(work: Work) -> tuple[object, ...]:
    reps = (work.reps.sets, work.reps.parts) if work.reps else None
    load = load_in_words(work).words if work.load else ""
    return (work.sets, reps, load, work.rir, work.rpe, work.hold, work.distance)


def _progressing(entries: list[SetGroup]) -> Offer:
    words = "progression: {add: 2.5 kg}"
    places = {one.prescription.place.key: one.prescription.place for one in entries}
    return in_one_edit(f"add {words}", [adding_key(at, words) for at in places.values()])


@rule(
    "progression-never-reached",
    family="progression",
    severity="note",
    confidence="fact",
    why="As it is written this step never comes: there is nothing to add to, or the moment for it does not"
    " occur.",
    sources=(),
    options=(
        Option(
            "top of range",
            ("top of range", "top of the range", "top end", "upper end", "end of the range"),
            "words for the upper end of a range",
            "common practice, no source: usual words",
        ),
    ),
    stands_back=("rehabilitation",),
)
def progression_never_reached(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
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
    lines: dict[Prescription, list[SetGroup]] = {}
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
            wanted="a step within reach",
            change=change,
            edits=_ranged(entries) if "5-8" in change else (),
            where=line_name(line),
        )


def _ranged(entries: Sequence[SetGroup]) -> Offer:
    """A range from what stands there to three repetitions more."""
    places = {one.work.places["reps"].key: one for one in entries if "reps" in one.work.places}
    spans = [(one.work.places["reps"], one.work.reps.a_set()) for one in places.values() if one.work.reps]
    return in_one_edit(
        "write a range of repetitions",
        [writing(place, f"{plain(span.low)}-{plain(span.low + WIDTH)}") for place, span in spans if span],
    )


WIDTH = 3
"""Repetitions from the low to the high end of a range that is proposed (common practice, no source)."""


def _never_added(add: str, entries: Sequence[SetGroup]) -> tuple[str, str] | None:
    """Why what is to be added cannot be, and what to do; None where it can."""
    if add.endswith(("kg", "lb")) and all(_is_band(entry) for entry in entries):
        return f"{add} cannot be added to a band", "Name the next band instead, or add repetitions."
    if add.endswith("%") and not any(_has_number(entry) for entry in entries):
        return (
            f"{add} more of a load without a number",
            "State a load in kg or %, or add kilograms or repetitions.",
        )
    return None


def _is_band(entry: SetGroup) -> bool:
    load = entry.work.load
    if load is None:
        return entry.implement == "band"
    return says(("band",), load.words)


def _has_number(entry: SetGroup) -> bool:
    """Whether the load is a number, or is found by effort."""
    load = entry.work.load
    if load is None:
        return entry.stated_effort
    return any(value.high for value in load.values)


def _never_at_the_top(entries: Sequence[SetGroup]) -> tuple[str, str] | None:
    for entry in entries:
        reps = entry.work.reps
        if reps is not None and reps.open_last:
            return None
        spans = [*(reps.sets if reps else ()), entry.work.hold, entry.work.distance]
        if any(span is not None and span.low != span.high for span in spans):
            return None
    return (
        "the next step waits for the top of a range, and there is none",
        "Write a range, such as `reps: 5-8`, or another `when`.",
    )
