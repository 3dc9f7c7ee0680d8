"""Demands of the rules of care that name lifts: none of what is spared, or far above the level."""

from __future__ import annotations

from ...lint.body.catalogue import LEVELS
from ...lint.engine.demands import Quantity, demands_of, none_of, sets_where
from ..restrictions import loaded_in, spared_by

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ...lint.body.catalogue import Exercise
    from ...lint.body.restrictions import Spared
    from ...lint.counting.ledger import Ledger
    from ...lint.engine.demands import RuleDemand
    from ...lint.engine.limits import Limits


@demands_of("protected-area-loaded")
def protected_area_loaded(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """No set that loads what a restriction spares, in each week in which it holds."""
    for restriction in ledger.athlete.protect if ledger.athlete else ():
        spared = spared_by(restriction, ledger)

        def forbids(exercise: Exercise, spared: Spared = spared) -> float:
            return float(spared.strains or spared.forbids(exercise, None))

        for week in () if spared.unknown else ledger.weeks:
            held = {id(entry) for entry in loaded_in(week, ledger, restriction, spared)}
            loading = sets_where(week, lambda entry, held=held: id(entry) in held, forbids)  # type: ignore[misc]
            spares = none_of(loading, restriction.subject.words)
            spares.measured = False
            yield spares


@demands_of("lift-beyond-level", exact=False)
def lift_beyond_level(ledger: Ledger, limits: Limits) -> Iterator[RuleDemand]:
    """No lift that is far above the athlete's level, unless they have a best of it."""
    if ledger.level not in LEVELS:
        return
    beyond = LEVELS.index(ledger.level) + limits.number("steps")

    def is_beyond(exercise: Exercise | None) -> bool:
        return exercise is not None and LEVELS.index(exercise.level) >= beyond

    lines = {
        entry.prescription for _, entry in ledger.entries() if is_beyond(entry.exercise) and not entry.best
    }
    yield none_of(Quantity(len(lines), "lines"))
