"""Exercises that suit an athlete: the one place that suggests any.

What is suggested passes the athlete's level, restrictions and equipment, and the room; the most common come
first. It is loaded only when a finding needs it.
"""

from __future__ import annotations

from ..body import equipment
from ..body.catalogue import LEVELS, RANKS, rarity
from .not_loaded import NotLoaded
from .unfit import unfit

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterable

    from ..body.catalogue import Exercise
    from .header import ProgrammeHeader

MOST = 2
"""How many exercises are suggested at most."""

SLOW_KINDS = ("dynamic", "isometric")
"""Kinds of exercise that are suggested unless others are asked for: nothing is thrown, nobody jumps."""

RARE = RANKS[-1]
"""The rank of exercises that are suggested only where nothing more common suits."""

LEVEL_UNKNOWN = LEVELS[0]
"""The level for which is suggested where the athlete's is not written: what suits everybody."""

RARE_IMPLEMENTS = ("sled",)
"""Implements that few rooms have: suggested only where the athlete's equipment lists them."""

TO_A_STATION = 3
"""Athletes who can share a station: one lifts while the others rest (common practice, no source)."""


SPARED = "loads a protected area"
"""How the words begin that say that an exercise loads what is to be spared."""


class Suggestion:
    """The ``names`` of exercises that suit, at most ``MOST``; where none does, what is in the way of some.

    ``is_spared`` says that some of the most common ones load what the athlete is to spare.
    """

    __slots__ = ("is_spared", "names", "obstacles")

    def __init__(
        self, names: tuple[str, ...], obstacles: tuple[str, ...], *, is_spared: bool = False
    ) -> None:
        self.names = names
        self.obstacles = obstacles
        self.is_spared = is_spared

    def with_first(self, name: str) -> Suggestion:
        """The same with a certain exercise before all others."""
        others = tuple(one for one in self.names if one != name)
        return Suggestion((name, *others)[:MOST], self.obstacles, is_spared=self.is_spared)


class Suits:
    """Whether exercises suit the athlete whom a programme is for.

    ``always`` are pieces of equipment that nobody needs to list; ``steps`` says how many levels an exercise
    may be above the athlete's own; ``at`` is the place whose equipment counts, if one is meant.
    """

    def __init__(
        self,
        header: ProgrammeHeader,
        always: Collection[str] = equipment.ALWAYS_THERE,
        steps: int = 0,
        at: str = "",
    ) -> None:
        self.header = header
        self.pieces = header.pieces(at) if at else header.equipment
        self.always = always
        self.hardest = LEVELS.index(header.level if header.level in LEVELS else LEVEL_UNKNOWN) + steps
        if header.not_loaded is None:
            header.not_loaded = NotLoaded(header.spared(), header.known)
        self.protected = header.not_loaded

    def obstacle(self, exercise: Exercise) -> str:
        """What speaks against an exercise, in words that follow its name; empty where nothing does."""
        protected = self.protected.loaded_by(exercise)
        if protected:
            return f"{SPARED} (`{protected}`)"
        if LEVELS.index(exercise.level) > self.hardest:
            return f"is for {exercise.level} lifters"
        if self.pieces is not None:
            pieces = equipment.missing(exercise, self.pieces, self.always)
            if pieces:
                return f"needs a {equipment.in_words(pieces[0])}"
        elif exercise.implement in RARE_IMPLEMENTS:
            return f"needs a {exercise.implement}"
        return unfit(self.header, exercise) or self._crowding(exercise)

    def _crowding(self, exercise: Exercise) -> str:
        around = self.header.resources
        for piece in equipment.needs(exercise):
            station = equipment.station_named(piece, around.stations)
            if station and around.together > around.stations[station] * TO_A_STATION:
                return f"needs a {station}: too few for {around.together} at a time"
        return ""


def suggest(
    header: ProgrammeHeader, does: Callable[[Exercise], bool], kinds: Collection[str] = SLOW_KINDS
) -> Suggestion:
    """The most common exercises that do what is wanted and suit the athlete.

    ``does`` says whether an exercise does it; ``kinds`` are the kinds of exercise that are looked at, by
    default none that is fast: jumps and throws are for whom a coach knows. The header keeps the answer.
    """
    asked = (does, tuple(kinds))
    known: Suggestion | None = header.suggested.get(asked)
    if known is None:
        known = header.suggested[asked] = _suggest(header, does, kinds)
    return known


def _suggest(header: ProgrammeHeader, does: Callable[[Exercise], bool], kinds: Collection[str]) -> Suggestion:
    suits = Suits(header)
    names: list[str] = []
    obstacles: dict[str, str] = {}
    for exercise in header.known.by_rank():
        if names and exercise.rank == RARE:
            break
        if exercise.kind in kinds and does(exercise):
            obstacle = suits.obstacle(exercise)
            if not obstacle:
                names.append(exercise.name)
                if len(names) == MOST:
                    break
            else:
                obstacles.setdefault(obstacle, f"{exercise.name} {obstacle}")
    spared = any(one.startswith(SPARED) for one in obstacles)
    return Suggestion(tuple(names), tuple(obstacles.values())[:2], is_spared=spared)


def substitutes(
    header: ProgrammeHeader,
    exercise: Exercise,
    most: int = MOST,
    always: Collection[str] | None = None,
    at: str = "",
) -> list[str]:
    """Names of exercises in place of one that does not suit, nearest first.

    They do the same work; where none of these suits, they share a main joint action with it and a muscle that
    both train directly, or else one of the two, or else train one that it helps; the most common first. They
    suit the equipment of the place ``at``, if given.
    """
    suits = Suits(header, equipment.ALWAYS_THERE if always is None else always, at=at)

    def fits(other: Exercise) -> bool:
        return not suits.obstacle(other)

    same = equipment.alternatives(exercise, fits, most)
    return same or _akin(exercise, header.known.by_rank(), fits, most)


def _akin(
    exercise: Exercise, others: Iterable[Exercise], fits: Callable[[Exercise], bool], most: int
) -> list[str]:
    actions, muscles = set(exercise.actions), set(exercise.direct)
    trained = muscles.union(exercise.indirect)
    near: list[list[Exercise]] = [[], [], []]  # the nearest first
    for other in others:
        if other is exercise or other.kind != exercise.kind:
            continue
        shared = [actions.intersection(other.actions), muscles.intersection(other.direct)]
        if (any(shared) or not trained.isdisjoint(other.direct)) and fits(other):
            near[shared.count(set())].append(other)
    alike = next(filter(None, near), [])
    alike.sort(key=lambda other: (rarity(other), equipment.unlike(exercise, other)))
    return [other.name for other in alike[:most]]
