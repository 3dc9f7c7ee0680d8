"""How much one set of an exercise counts for each muscle, muscle group or area."""

from __future__ import annotations

from ..body import catalogue
from ..wording.words import counted_noun, sets_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence

    from ..body.catalogue import Exercise
    from ..model.pairings import Pairing
    from ..model.quantities import Range
    from ..model.sessions import Prescription
    from .set_group import SetGroup

DIRECT, FRACTIONAL, TOTAL = "direct", "fractional", "total"
KINDS = (DIRECT, FRACTIONAL, TOTAL)
"""The kinds of count, from the one that gives least."""

INDIRECT_WEIGHT = {DIRECT: 0.0, FRACTIONAL: 0.5, TOTAL: 1.0}
"""How much an indirect set counts, by kind of count (pelland-2026-frac)."""

HELPING = {
    DIRECT: "indirect sets not counted",
    FRACTIONAL: "indirect sets counted half",
    TOTAL: "indirect sets counted in full",
}
"""The same in words: how an indirect set, one in which the muscle only helps, counts."""


def as_counted(sets: Range, counted: Range) -> str:
    """``3 sets``; ``6 indirect sets, counted as 3`` where they count in part."""
    if sets == counted:
        return sets_of(str(counted))
    half = sets * INDIRECT_WEIGHT[FRACTIONAL] == counted
    return f"{counted_noun(str(sets), 'indirect set' if half else 'set')}, counted as {counted}"


def is_in_complex(group: SetGroup) -> bool:
    """Whether it is a part of a set only: one lift of a complex."""
    paired = group.prescription.paired
    return paired is not None and paired.kind == "complex"


def once_a_set(pairs: list[tuple[SetGroup, float]]) -> list[tuple[SetGroup, float]]:
    """Groups of sets with the weight of a set, each set once: of a complex the lift that weighs most."""
    best: dict[Pairing | None, tuple[SetGroup, float]] = {}
    for group, weight in pairs:
        paired = group.prescription.paired
        if is_in_complex(group) and weight > best.get(paired, (group, 0.0))[1]:
            best[paired] = (group, weight)
    kept = {group for group, _ in best.values()}
    return [(group, weight) for group, weight in pairs if not is_in_complex(group) or group in kept]


def once_each(groups: Sequence[SetGroup]) -> Sequence[SetGroup]:
    """Groups of sets, each set once: of a complex the first lift."""
    if not any(map(is_in_complex, groups)):
        return groups
    return [group for group, _ in once_a_set([(group, 1.0) for group in groups])]


_CREDITS: dict[Exercise, dict[str, float]] = {}
_GROUP_CREDITS: dict[Exercise, dict[str, float]] = {}
_GROUPS_OF: dict[str, list[str]] = {}


def credits_of(exercise: Exercise) -> dict[str, float]:
    """How much one set counts for each muscle and each muscle group: 1 direct, 0.5 indirect.

    A group takes the highest value among its muscles, never the sum.
    """
    known = _CREDITS.get(exercise)
    if known is None:
        known = _CREDITS[exercise] = {}
        for muscles, weight in ((exercise.indirect, 0.5), (exercise.direct, 1.0)):
            for muscle in muscles:
                known[muscle] = weight
                known.update(dict.fromkeys(_groups_of(muscle), weight))
    return known


def group_credits_of(exercise: Exercise) -> dict[str, float]:
    """The same for muscle groups alone."""
    known = _GROUP_CREDITS.get(exercise)
    if known is None:
        areas = credits_of(exercise)
        known = {group: areas[group] for group in catalogue.groups if group in areas}
        _GROUP_CREDITS[exercise] = known
    return known


def _groups_of(muscle: str) -> list[str]:
    if not _GROUPS_OF:
        for group, members in catalogue.groups.items():
            for member in members:
                _GROUPS_OF.setdefault(member, []).append(group)
    return _GROUPS_OF.get(muscle, [])


def credit(exercise: Exercise, area: str) -> float:
    """How much one set counts for any area: the highest value among its muscles; 0 for an unknown area."""
    known = credits_of(exercise)
    if area in catalogue.credited:
        return known.get(area, 0.0)
    return max((known.get(muscle, 0.0) for muscle in catalogue.area(area) or ()), default=0.0)


def chosen_for(line: Prescription, actions: tuple[str, ...], areas: tuple[str, ...]) -> bool:
    """Whether an own choice trains one of some joint actions, patterns or areas: by what it says that it
    trains, else by its name.
    """
    if line.kind != "own choice":
        return False
    words = [term.words for term in line.trains] or [line.place.excerpt]
    muscles = {muscle for one in words for muscle in catalogue.area(one) or ()}
    wanted = {muscle for one in areas for muscle in catalogue.area(one) or (one,)}
    return bool(muscles & wanted) or any(one in actions for one in words)


def trains(exercise: Exercise, actions: tuple[str, ...], areas: tuple[str, ...]) -> bool:
    """Whether an exercise is for one of some joint actions or patterns, or is credited for an area."""
    return not exercise.serves.isdisjoint(actions) or any(credit(exercise, area) for area in areas)
