"""Names of lifts that loads are shares of, and that best lifts are of."""

from __future__ import annotations

from ..lint.body.names import fold
from ..lint.engine.registry import rule
from ..lint.findings.finding import Edit, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import did_you_mean, first_of, shortened
from .shared import MOST_SUGGESTED

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger, Lifter
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


@rule(
    "lift-of-load-unknown",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="A share of a lift that nobody knows cannot be worked out, by the lifter or by a review.",
    sources=(),
    follows=("sets-not-read", "exercise-unknown"),
    needs=("load",),
)
def lift_of_load_unknown(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A load in % of another lift that the catalogue does not know by name or alias.

    Looks up the lift of every load such as `65 % of back squat`; offers the nearest names. One finding for
    each lift, with all its loads.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: pause squat, sets: 3, reps: 4, load: 65 % of back sqat}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: pause squat, sets: 3, reps: 4, load: 65 % of back squat}
    """
    named: dict[str, dict[object, SetGroup]] = {}
    for _, entry in ledger.entries():
        load = entry.work.load
        if load is None or load.kind != "lift":
            continue
        if ledger.known.exercise(load.whole) is None:
            named.setdefault(fold(load.whole), {}).setdefault(entry.work.places["load"].key, entry)
    for entries in named.values():
        yield _of_no_known_lift(ledger, list(entries.values()))


def _of_no_known_lift(ledger: Ledger, entries: list[SetGroup]) -> DraftFinding:
    """One finding on all loads that are shares of one lift that nobody knows."""
    first, *others = entries
    load, place = first.work.load, first.work.places["load"]
    assert load is not None
    near = ledger.known.nearest(load.whole, level=ledger.level)
    return found(
        place,
        f"`{shortened(load.whole)}` is no lift that is known, so {load.words} comes to no load.",
        change=did_you_mean(near) or "Name a lift, or write the load in kg.",
        where=line_name(first.prescription),
        line=first.prescription.place,
        related=tuple(Related(one.work.places["load"], line_name(one.prescription)) for one in others),
        edits=tuple(edit for name in near if (edit := _of_lift(name, entries)) is not None),
    )


def _of_lift(name: str, entries: list[SetGroup]) -> Edit | None:
    """All loads that are shares of a lift, of another one."""
    from ..lint.findings.edits import in_one

    edits = []
    for entry in entries:
        load = entry.work.load
        assert load is not None
        words = f"{load.words.removesuffix(load.whole)}{name}"
        edits.append(Edit(entry.work.places["load"], words, f"write {words}"))
    return in_one(edits[0].label, edits, certain=edits[0].certain)


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

    Looks up every best lift; offers the nearest names. Those that are like none are one finding.

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
    known, where = lifter.resources.known, f"{lifter.athlete.name}, best lifts"
    strange = [
        one.exercise for one in lifter.athlete.best_lifts if known.exercise(one.exercise.words) is None
    ]
    like_none = []
    for number, term in enumerate(strange):
        near = known.nearest(term.words, level=lifter.athlete.level) if number < MOST_SUGGESTED else []
        if not near:
            like_none.append(term)
            continue
        yield found(
            term.place,
            f"`{shortened(term.words)}` is not in the catalogue, so this best lift is used for no load.",
            change=did_you_mean(near),
            where=where,
            edits=tuple(Edit(term.place, name, f"write {name}", certain=False) for name in near),
        )
    if like_none:
        first, *others = like_none
        names = first_of([f"`{shortened(one.words)}`" for one in like_none])
        are, these = ("are", "these best lifts are") if others else ("is", "this best lift is")
        yield found(
            first.place,
            f"{names} {are} not in the catalogue, so {these} used for no load.",
            change="Write the usual names." if others else "Write the exercise's usual name.",
            where=where,
            related=tuple(Related(one.place, "not known either") for one in others),
        )
