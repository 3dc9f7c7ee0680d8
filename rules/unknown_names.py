"""Names that nobody knows, or that go by another word."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.body.names import fold
from ..lint.engine.registry import rule
from ..lint.findings.finding import Edit, found
from ..lint.wording.words import did_you_mean, listed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.counting.ledger import Ledger, Lifter
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.text.places import Term


@rule(
    "exercise-unknown",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="What nobody knows cannot be counted: until the name is known, rules about missing work keep silent.",
    sources=(),
)
def exercise_unknown(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """An exercise, an alternative or a swap that the catalogue does not know by name or alias.

    Looks up every name; offers the nearest ones.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: seated leg crul, sets: 3, reps: 10}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: Seated leg-curls, sets: 3, reps: 10}
    """
    for term, where in _exercises_named(ledger):
        if ledger.known.exercise(term.words) is None:
            near = ledger.known.nearest(term.words)
            yield found(
                term.place,
                f"`{term.words}` is not in the catalogue, so its sets count for no muscle.",
                change=did_you_mean(near) or "Write the exercise's usual name.",
                where=where,
                edits=_writing(term, near),
            )


def _exercises_named(ledger: Ledger) -> Iterator[tuple[Term, str]]:
    """Every exercise that the programme names, with where: in lines, as alternatives, as swaps."""
    for line in ledger.programme.prescriptions():
        for term in (*line.names(), *line.alternates):
            yield term, line.session.name
    for adjustment in ledger.member.adjustments if ledger.member else ():
        if adjustment.swap is not None:
            yield adjustment.swap, f"adjust, {adjustment.exercise.words}"


def _writing(term: Term, near: Iterable[str]) -> tuple[Edit, ...]:
    return tuple(Edit(term.place, other, f"write {other}") for other in near)


@rule(
    "area-unknown",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="Focus and priority decide what other rules look at; a word that means nothing to them is lost.",
    sources=(),
)
def area_unknown(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A word in the focus or among the priorities that is no muscle, region or exercise.

    Looks up every word; offers the nearest ones.

    Flags:
        programme: Legs
        focus: [hamstrigns]  # <- here
        sessions:
          - session: Lower
            exercises: [{exercise: seated leg curl, sets: 3, reps: 10}]

    Passes:
        programme: Legs
        focus: [hams]
        sessions:
          - session: Lower
            exercises: [{exercise: seated leg curl, sets: 3, reps: 10}]
    """
    programme = ledger.programme
    terms = [("focus", term) for term in programme.focus]
    terms += [("priority", term) for term in programme.priority]
    terms += [("focus", term) for block in programme.blocks for term in block.focus]
    for where, term in terms:
        if catalogue.area(term.words) is not None or ledger.known.exercise(term.words):
            continue
        near = catalogue.nearest_areas(term.words)
        yield found(
            term.place,
            f"`{term.words}` is no muscle, region or exercise that is known.",
            change=did_you_mean(near) or "Name a muscle group, a region or a lift.",
            where=where,
            edits=_writing(term, near),
        )


# Names


@rule(
    "exercise-by-alias",
    family="upkeep",
    severity="note",
    confidence="convention",
    why="One name for one exercise makes programmes easier to search and compare.",
    sources=(),
    off=True,
)
def exercise_by_alias(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """An exercise called by another word than the catalogue's, or the team's, own name for it.

    Looks up every name; lets differences of case, hyphens, blanks and number pass. Off until a team asks.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: RDL, sets: 3, reps: 8}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: Romanian Deadlifts, sets: 3, reps: 8}
    """
    for term, where in _exercises_named(ledger):
        exercise = ledger.known.exercise(term.words)
        if exercise is not None and fold(term.words) != fold(exercise.name):
            yield found(
                term.place,
                f"`{term.words}` is another word for {exercise.name}.",
                wanted="one name throughout",
                change=f"Write {exercise.name}.",
                where=where,
                edits=_writing(term, [exercise.name]),
            )


@rule(
    "lift-unknown",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="A best lift that nobody can match to an exercise is used for no load.",
    sources=(),
)
def lift_unknown(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """A best lift on file of an exercise that the catalogue does not know by name or alias.

    Looks up every best lift; offers the nearest names.

    Flags:
        programme: Legs
        athlete:
          name: Ida
          best lifts:
            back sqat: 80 kg  # <- here
        sessions: [{session: Lower, exercises: [{exercise: back squat, sets: 3, reps: 8}]}]

    Passes:
        programme: Legs
        athlete:
          name: Ida
          best lifts:
            back squats: 80 kg
        sessions: [{session: Lower, exercises: [{exercise: back squat, sets: 3, reps: 8}]}]
    """
    known = lifter.resources.known
    for best in lifter.athlete.best_lifts:
        if known.exercise(best.exercise.words) is None:
            near = known.nearest(best.exercise.words)
            yield found(
                best.exercise.place,
                f"`{best.exercise.words}` is not in the catalogue, so this best lift is used for no load.",
                change=did_you_mean(near) or "Write the exercise's usual name.",
                where=f"{lifter.athlete.name}, best lifts",
                edits=_writing(best.exercise, near),
            )


@rule(
    "adjustment-unmatched",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="What is adjusted for an athlete by a name that the programme does not have changes nothing.",
    sources=(),
)
def adjustment_unmatched(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Something adjusted for an athlete that no line of the programme is called.

    Looks up the exercise of everything under `adjust`; wants a line with it, by whichever of its names.

    Flags:
        programme: Legs
        athletes:
          - athlete: {name: Ida}
            adjust:
              - {exercise: front squat, sets: 2}  # <- here
        sessions: [{session: Lower, exercises: [{exercise: back squat, sets: 3, reps: 8}]}]

    Passes:
        programme: Legs
        athletes:
          - athlete: {name: Ida}
            adjust:
              - {exercise: back squat, sets: 2}
        sessions: [{session: Lower, exercises: [{exercise: back squat, sets: 3, reps: 8}]}]
    """
    adjustments = ledger.member.adjustments if ledger.member else ()
    lines = ledger.programme.prescriptions() if adjustments else ()
    names = list(dict.fromkeys(term.words for line in lines for term in line.names()))
    there = {ledger.named(name) for name in names}
    for adjustment in adjustments:
        term = adjustment.exercise
        if term.words and ledger.named(term.words) not in there:
            near = _nearest(term.words, names)
            yield found(
                term.place,
                f"No line of this programme is called `{term.words}`, so nothing is adjusted.",
                wanted="an exercise that the programme has",
                change=did_you_mean(near) or f"Name one of its lines: {listed(names[:4])}.",
                where=f"adjust, {term.words}",
                edits=_writing(term, near),
            )


def _nearest(name: str, names: Iterable[str]) -> list[str]:
    from ..lint.body.nearest import nearest

    return nearest(name, ((one, one) for one in names), 3)
