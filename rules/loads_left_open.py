"""Main lifts that say neither load nor effort."""

from __future__ import annotations

from ..lint.engine.limits import Condition
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of, says
from .offers import adding_key, in_one_edit
from .shared import names_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.sessions import Prescription


BARS = ("barbell", "trap bar", "guided bar")
"""What is loaded with plates."""


@rule(
    "load-and-effort-missing",
    family="load",
    severity="note",
    confidence="common practice",
    why="A lifter who is told neither load nor effort has to guess; nor can a review tell how hard it is.",
    sources=(),
    options=(Condition("share", 33, "% of the lines with a bar that may be left open", "common practice"),),
)
def load_and_effort_missing(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Lines that say neither load nor effort.

    Looks at squats, hinges and presses with a bar among the first two lines of a session, outside peak weeks:
    what comes later, is small, or held in the hands, is chosen by feel everywhere. Wants a load, an RM, a
    RIR, an RPE, a velocity, sets that go on to what is possible, or a load or an effort elsewhere on the same
    lift. Silent where it is a third of such lines at most: whoever loads the others has left these open on
    purpose; of one line that does not lead its session; and where a note speaks of effort. One note a
    programme, which counts the lines.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 8}  # <- here
              - {exercise: push-up, sets: 3, reps: 8}

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 8, rir: 2}
              - {exercise: push-up, sets: 3, reps: 8}
    """
    told = {entry.exercise for _, entry in ledger.entries() if entry.work.load or entry.stated_effort}
    bare: dict[Prescription, SetGroup] = {}
    for week in ledger.weeks:
        for _, entry in week.entries() if not week.is_peak else ():
            if entry.exercise not in told and _says_nothing(entry):
                bare.setdefault(entry.prescription, entry)
    main = _main_lines(ledger) if bare else set()
    lines = {line: entry for line, entry in bare.items() if line in main}
    if not lines or 100 * len(lines) // len(main) <= limits.number("share") or _speaks_of_effort(ledger):
        return
    first, *others = sorted(lines, key=_in_file)
    if not others and not _leads(first):
        return
    number = "1 line says" if len(lines) == 1 else f"{len(lines)} lines say"
    yield found(
        first.place,
        f"{number} neither load nor effort: {first_of(names_of(lines[line] for line in (first, *others)))}.",
        wanted="a load, RM, RIR or RPE for each",
        change="Write one, such as `rir: 2`.",
        where=line_name(first),
        edits=in_one_edit("add rir: 2", [adding_key(line.place, "rir: 2") for line in (first, *others)]),
        amount=Amount(len(lines), 0, "lines"),
        related=tuple(Related(line.place, line_name(line)) for line in others),
    )


def _leads(line: Prescription) -> bool:
    """Whether no lift stands before a line in its session."""
    return line.order == 0


MAIN = ("squat", "hip hinge", "horizontal push", "vertical push")
"""Patterns of the lifts that a session is built around."""
FIRST_LINES = 2
"""Lines of a session among which its main lifts stand (common practice, no source)."""


def _main_lines(ledger: Ledger) -> set[Prescription]:
    """Lines of main lifts with a bar: those among the first lifts of their session."""
    main: set[Prescription] = set()
    for visit in dict.fromkeys(visit for week in ledger.weeks for visit in week.visits):
        lifts = [(entry, one) for entry in visit.own if (one := entry.exercise) and one.kind == "dynamic"]
        first = list(dict.fromkeys(one for _, one in lifts))[:FIRST_LINES]
        main.update(
            entry.prescription
            for entry, one in lifts
            if one in first and one.pattern in MAIN and entry.implement in BARS
        )
    return main


OF_EFFORT = (
    "RPE", "RIR", "effort", "in the tank", "in reserve", "to failure", "left in", "reps left", "by feel",
    "heavy", "light", "moderate", "easy", "hard", "no misses", "no grinding", "grind", "add", "each time",
    "last time", "last week", "same weight", "same weights", "top of", "log", "logbook", "card", "1RM", "max",
)  # fmt: skip
"""Words in a note by which a lifter knows how hard it is, or what to take (common practice, no source)."""


def _speaks_of_effort(ledger: Ledger) -> bool:
    """Whether a note on the programme, a block or a session says how hard it is."""
    programme = ledger.programme
    notes = [programme.note, *(block.note for block in programme.blocks)]
    notes += [session.note for session in programme.sessions()]
    return says(OF_EFFORT, *notes)


def _in_file(line: Prescription) -> tuple[int, int]:
    return line.place.start, line.order


def _says_nothing(entry: SetGroup) -> bool:
    """Whether a line of a lift without load and effort says nothing else of how hard it is."""
    work, line = entry.work, entry.prescription
    open_ended = work.reps is not None and work.reps.open_last
    unread = line.unread & {"load", "rir", "rpe"}
    return entry.sets.high > 0 and not (work.velocity or open_ended or unread or line.velocity_loss)
