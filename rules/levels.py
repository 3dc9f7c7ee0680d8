"""Lifts above the level of an athlete."""

from __future__ import annotations

from ..lint.body.catalogue import LEVELS, rarity
from ..lint.engine.limits import Condition
from ..lint.engine.registry import rule
from ..lint.findings.finding import found
from ..lint.model.naming import line_name
from ..lint.wording.words import listed, with_article
from .shared import capital, named_at

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding, Edit
    from .offers import Offer


@rule(
    "lift-beyond-level",
    family="care",
    severity="note",
    confidence="common practice",
    why="Hard lifts are usually reached by way of their easier forms; the levels are this catalogue's.",
    sources=(),
    options=(Condition("steps", 2, "levels above the athlete's own", "common practice"),),
)
def lift_beyond_level(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """An exercise two levels above the athlete's, none of whose easier forms comes before or beside it.

    Compares the catalogue's level with the athlete's; wants an easier form of the exercise in that week or
    an earlier one, or named as an alternative. A best lift on file shows that the athlete knows the lift.
    Silent on Nordic curls of up to 6 repetitions in a sport: players lower them from the first week on.

    Flags:
        programme: Legs
        athlete: {name: Ida, level: novice}
        sessions:
          - session: Lower
            exercises:
              - {exercise: seated leg curl, sets: 2, reps: 10}
              - {exercise: pistol squat, sets: 2, reps: 5}  # <- here

    Passes:
        programme: Legs
        athlete: {name: Ida, level: novice}
        sessions:
          - session: Lower
            exercises:
              - {exercise: single-leg box squat, sets: 2, reps: 10}
              - {exercise: pistol squat, sets: 2, reps: 5}
    """
    if ledger.level not in LEVELS:
        return
    beyond = LEVELS.index(ledger.level) + limits.number("steps")
    trained: set[Exercise | str | None] = set()
    for week in ledger.weeks:
        trained.update(entry.exercise for _, entry in week.entries() if entry.is_done)
        for _, entry in week.entries():
            if entry.exercise is None or LEVELS.index(entry.exercise.level) < beyond or entry.best:
                continue
            if _is_lowered(entry):
                continue
            offered = {ledger.named(term.words) for term in entry.prescription.alternates}
            if _easier(ledger, entry.exercise).isdisjoint(trained | offered):
                yield _beyond(ledger, entry, entry.exercise)


FEW_NORDICS = 6
"""Repetitions of a set up to which players do Nordic curls by lowering alone, whatever these are called: so
begin the programmes that were tried in teams (vandyk-2019; the number is common practice).
"""


def _is_lowered(entry: SetGroup) -> bool:
    """Whether it is a small dose of Nordic curls in an athlete's sport."""
    athlete, exercise = entry.programme.athlete, entry.exercise
    if exercise is None or exercise.name != "Nordic curl" or not (athlete and athlete.sport):
        return False
    return entry.a_set is not None and entry.a_set.high <= FEW_NORDICS


def _easier(ledger: Ledger, exercise: Exercise) -> set[Exercise]:
    """The forms by way of which an exercise is reached: on each way down to the first of a lower level.

    Of these only those of its kind, where there are any: a deadlift teaches nobody to snatch.
    """
    forms: set[Exercise] = set()
    seen, waiting = {exercise}, [exercise]
    while waiting:
        for name in waiting.pop().easier:
            form = ledger.known.exercise(name)
            if form is None or form in seen:
                continue
            seen.add(form)
            forms.add(form)
            if form.level == exercise.level:
                waiting.append(form)
    return {form for form in forms if form.kind == exercise.kind} or forms


def _beyond(ledger: Ledger, entry: SetGroup, exercise: Exercise) -> DraftFinding:
    from ..lint.counting.suggestions import substitutes

    first = listed([form.name for form in _suiting(ledger, exercise)], "or")
    instead = listed(substitutes(ledger.header, exercise, MOST_EASIER), "or")
    start = f"Start with {first}" if first else f"Swap it for {instead}" if instead else "Leave it out"
    return found(
        named_at(entry),
        f"{capital(entry.name)} ({exercise.level}) for {with_article(entry.programme.level)} with no easier"
        " form first.",
        wanted="an easier form first or under `or`",
        change=f"{start}, or correct the level.",
        where=line_name(entry.prescription),
        edits=_easier_lines(ledger, entry, exercise),
        subject=exercise.name,
    )


def _easier_lines(ledger: Ledger, entry: SetGroup, exercise: Exercise) -> Offer:
    """An easier form in its place, else another exercise that does the same."""

    def work_out() -> Iterator[Edit]:
        from ..lint.counting.suggestions import substitutes
        from ..lint.remedies.values import one_of

        names = [form.name for form in _suiting(ledger, exercise)]
        return one_of(named_at(entry), names or substitutes(ledger.header, exercise, MOST_EASIER))

    return work_out


MOST_EASIER = 2
"""How many easier forms, or other exercises, a finding names."""


def _suiting(ledger: Ledger, exercise: Exercise) -> list[Exercise]:
    """The easier forms that this athlete may do, the most common and the nearest to the level first."""
    from ..lint.counting.suggestions import Suits

    suits = Suits(ledger.header, steps=1)
    forms = sorted(_easier(ledger, exercise), key=lambda form: (rarity(form), form.name))
    return [form for form in forms if not suits.obstacle(form)][:MOST_EASIER]
