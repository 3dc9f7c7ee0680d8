"""Units mixed, lines twice, sessions left empty."""

from __future__ import annotations

import re

from ..lint.body.names import fold
from ..lint.engine.registry import rule
from ..lint.findings.finding import Related, found
from ..lint.model.naming import line_name
from ..lint.model.quantities import KG_PER_LB
from ..lint.wording.words import first_of, plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Visit
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Edit
    from ..lint.model.sessions import Prescription, Session
    from ..lint.text.places import Place
    from .offers import Offer


@rule(
    "units-mixed",
    family="upkeep",
    severity="warning",
    confidence="common practice",
    why="A load read in the wrong unit is off by more than half.",
    sources=(),
    needs=("load",),
)
def units_mixed(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Kilograms and pounds in one programme.

    Looks at every load in kg or lb; wants one unit throughout, and points at the lines with the rarer one.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 60 kg}
              - {exercise: overhead press, sets: 3, reps: 5, load: 40 kg}
              - {exercise: dip, sets: 3, reps: 5, load: bodyweight + 25 lb}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 60 kg}
              - {exercise: overhead press, sets: 3, reps: 5, load: 40 kg}
              - {exercise: dip, sets: 3, reps: 5, load: bodyweight + 10 kg}
    """
    used: dict[str, dict[object, tuple[Place, str, Prescription]]] = {"kg": {}, "lb": {}}
    for _, entry in ledger.entries():
        load = entry.work.load
        if load is not None and load.unit:
            place = entry.work.places["load"]
            used[load.unit].setdefault(place.key, (place, load.words, entry.prescription))
    rarer, other = sorted(used, key=lambda unit: len(used[unit]))
    if not used[rarer]:
        return
    places, loads, lines = zip(*sorted(used[rarer].values(), key=lambda one: one[0].start), strict=True)
    yield found(
        places[0],
        f"{first_of(loads)}, the other loads in {other}.",
        wanted="one unit throughout",
        change=f"Write it in {other} (1 lb is {plain(KG_PER_LB)} kg), or correct the unit.",
        where=line_name(lines[0]),
        edits=_in_other_unit(places, other),
        related=tuple(Related(one, f"in {rarer}") for one in places[1:]),
    )


def _in_other_unit(places: Sequence[Place], unit: str) -> Offer:
    def work_out() -> Iterable[Edit]:
        from ..lint.remedies.loads import changed_unit

        return changed_unit(places, unit, KG_PER_LB if unit == "kg" else 1 / KG_PER_LB)

    return work_out


def _on_one_line(first: SetGroup, others: list[SetGroup]) -> Offer:
    """All sets on the first line, where the others say the same in every week."""

    def work_out() -> Iterator[Edit]:
        from ..lint.findings.edits import in_one
        from ..lint.remedies import moves
        from ..lint.remedies.sets_changed import own_number
        from ..lint.remedies.values import one_of

        entries = [first, *others]
        changes = any(len(held) > 1 for one in entries for held in one.prescription.groups[0].values())
        reps = {str(one.work.reps.a_set()) if one.work.reps else "" for one in entries}
        if changes or len(reps) > 1 or not all(own_number(one.work) for one in others):
            return
        sets = sum((one.sets for one in others), first.sets)
        edits = [*one_of(own_number(first.work), [str(sets)])]
        edits += [edit for one in others for edit in moves.dropped(one.prescription.place)]
        whole = in_one(f"put all {sets} sets on one line", edits) if len(edits) == len(entries) else None
        if whole is not None:
            yield whole

    return work_out


# Sessions


@rule(
    "exercise-twice",
    family="upkeep",
    severity="note",
    confidence="common practice",
    why="The same line twice is often a slip of copying; where it is meant, one line with all its sets"
    " says it better.",
    sources=(),
)
def exercise_twice(visit: Visit, limits: Limits) -> Iterator[DraftFinding]:
    """The same exercise on two lines of one session, with the same load and effort.

    Compares lines outside supersets and circuits by exercise, side, heavy or light slot, load, effort, tempo,
    method and what they test; wants them to differ in one of these, or in the words beside the lift, as in
    `squat, light`. Lines with several groups of sets are left alone.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg press, sets: 3, reps: 10}
              - {exercise: leg curl, sets: 3, reps: 10}
              - {exercise: leg press, sets: 3, reps: 12}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg press, sets: 3, reps: 10}
              - {exercise: leg curl, sets: 3, reps: 10}
              - {exercise: leg press, sets: 3, reps: 6}
    """
    for first, *others in lines_alike(visit):
        if others:
            again = others[0]
            yield found(
                again.work.places["exercise"],
                f"{again.name} on {len(others) + 1} lines of this session with the same load and effort.",
                wanted="one line, or lines that differ",
                change="Put all sets on one line, or write what differs.",
                where=line_name(again.prescription),
                edits=_on_one_line(first, others),
                related=tuple(
                    Related(other.work.places["exercise"], line_name(other.prescription))
                    for other in (first, *others[1:])
                ),
            )


def lines_alike(visit: Visit) -> list[list[SetGroup]]:
    """The lines of a session, those together that say the same."""
    if len({entry.exercise for entry in visit.own}) == len(visit.own):
        return []  # nothing stands twice
    of_one: dict[Exercise | None, list[SetGroup]] = {}
    for entry in visit.own:
        line = entry.prescription
        if line.paired is None and len(line.groups) == 1 and entry.is_done:
            of_one.setdefault(entry.exercise, []).append(entry)
    lines: dict[tuple[object, ...], dict[Prescription, SetGroup]] = {}
    for entries in of_one.values():
        for entry in entries if len(entries) > 1 else ():
            lines.setdefault(_reading(entry), {}).setdefault(entry.prescription, entry)
    return [list(alike.values()) for alike in lines.values()]


def _reading(entry: SetGroup) -> tuple[object, ...]:
    """What two lines have in common that say the same."""
    line, work = entry.prescription, entry.work
    load = work.load.words if work.load else ""
    bare = entry.programme.known.listed(entry.name)
    # a name with more words says what differs
    what = bare.exercise if bare else tuple(re.findall(r"\w+", fold(entry.name)))
    return (
        what,
        line.test,
        work.side,
        entry.slot,
        load,
        entry.reserve,
        work.tempo,
        line.method,
        work.hold,
        work.distance,
    )


@rule(
    "session-empty",
    family="upkeep",
    severity="warning",
    confidence="common practice",
    why="A session without a set is nearly always something that was cut too far or left unfinished.",
    sources=(),
    asks=True,
)
def session_empty(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A session whose lines never hold a set, in no week and for nobody.

    Looks at the sets of every line as the programme writes them; wants one line with a set in any week. What
    is left out for an athlete, in some weeks or on days off, is the coach's own word; what cannot be read may
    hold some, and intervals, circuits by the clock, tests and own choices hold work without sets.

    Flags:
        programme: Legs
        weeks: 2
        sessions:
          - session: Lower  # <- here
            exercises: [{exercise: leg press, sets: {1-2: 0}, reps: 10}]
          - session: Upper
            exercises: [{exercise: bench press, sets: 3, reps: 10}]

    Passes:
        programme: Legs
        weeks: 2
        sessions:
          - session: Lower
            exercises: [{exercise: leg press, sets: {1: 3, 2: 0}, reps: 10}]
          - session: Upper
            exercises: [{exercise: bench press, sets: 3, reps: 10}]
    """
    for session, holds in sessions_with_work(ledger).items():
        if not holds:
            yield found(
                session.place,
                f"{session.name} has no work set in any week.",
                wanted="at least one work set",
                change="Add its work, or take the session out.",
                where=session.name,
            )


def sessions_with_work(ledger: Ledger) -> dict[Session, bool]:
    """The sessions of a programme, with whether they hold work in any week, or may by their words."""
    sessions = dict.fromkeys(visit.session for week in ledger.weeks for visit in week.visits)
    return {
        session: bool(session.note)
        or not session.prescriptions
        or any(map(_holds_work, session.prescriptions))
        for session in sessions
    }


def _holds_work(line: Prescription) -> bool:
    """Whether a line holds work in some week, for somebody: sets, or something that counts none."""
    if line.unread or line.note:
        return True
    held = [one.value for group in line.groups for one in group.get("sets", ())]
    return any(getattr(value, "high", value) != 0 for value in held)
