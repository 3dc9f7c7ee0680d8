"""The catalogue: exercises by name or alias, muscles, areas of the body, sources.

All of it comes from built.py, which build.py writes from data/. An exercise stays a line of text until
somebody asks for it. Names are compared without regard to case, hyphens, blanks and a plural s.
"""

from __future__ import annotations

from functools import cache, lru_cache

from . import built
from .names import fold
from .rows import FIELDS, decode, line_of, lines_of
from .rows import names as names_in

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .anatomy import Action, Anatomy, Muscle
    from .derive import Profile

INDIRECT_SET = 0.5

# The words that an exercise's fields may hold. A test holds the schemas to the same words.

LEVELS = ("novice", "intermediate", "advanced")
"""Levels of athletes and of exercises, from the first to the last."""

COMPOUND = (
    "squat",
    "lunge",
    "hip hinge",
    "hip thrust",
    "horizontal push",
    "vertical push",
    "horizontal pull",
    "vertical pull",
)
"""Movement patterns in which several joints share the work."""

PATTERNS = (*COMPOUND, "carry", "rotation", "jump", "throw")
"""All movement patterns."""

KINDS = ("dynamic", "isometric", "plyometric", "ballistic", "carry")
"""How an exercise is done."""

IMPLEMENTS = (
    "barbell",
    "trap bar",
    "dumbbell",
    "kettlebell",
    "machine",
    "cable",
    "band",
    "bodyweight",
    "sled",
    "medicine ball",
    "plate",
    "suspension",
    "sliders",
    "guided bar",
    "ab wheel",
    "box",
    "rope",
    "sandbag",
    "none",
)
"""What is lifted, pushed or pulled."""

STANCES = (
    "standing",
    "split",
    "single leg",
    "seated",
    "lying",
    "prone",
    "kneeling",
    "hanging",
    "supported",
    "incline",
    "quadruped",
    "side-lying",
)
"""How the body stands, sits, lies or hangs."""

#: Muscle groups that coaches speak of, and regions of the body: {name: muscles}.
groups: dict[str, tuple[str, ...]] = built.GROUPS
regions: dict[str, tuple[str, ...]] = built.REGIONS
#: The names of all muscles and groups: what an exercise can have credit for.
credited: frozenset[str] = frozenset(
    (*groups, *(muscle for members in regions.values() for muscle in members))
)
#: The regions that guidelines ask to train (us-pag-2018): all but the neck.
major_regions: tuple[str, ...] = tuple(region for region in regions if region != "neck")


class Exercise:
    """One exercise, made from the fields of rows.FIELDS.

    - ``pattern``: the movement pattern as stated, or "". ``patterns`` adds what the joint path shows.
    - ``actions``, ``assists``: main and assisting joint actions.
    - ``path``: {joint: angles in degrees}, one angle for each way-point of the lifting phase.
    - ``direct``, ``indirect``: the muscles that it trains directly, and by half.
    - ``positions``: {muscle: its mean length as a place in its own range, 0 shortest to 1 longest}, for
      muscles with a length curve.
    - ``stated``: {muscle or group: (credit, reason)} where the data states a credit by hand.
    - ``axial``: load along the spine. ``hands``: whether the grip carries the load.
    - ``station``: what it occupies in the gym.
    """

    __slots__ = tuple(FIELDS)

    name: str
    aliases: tuple[str, ...]
    implement: str
    kind: str
    stance: str
    grip: str
    unilateral: bool
    pattern: str
    patterns: tuple[str, ...]
    actions: tuple[str, ...]
    assists: tuple[str, ...]
    path: dict[str, tuple[float, ...]]
    stated: dict[str, tuple[str, str]]
    direct: tuple[str, ...]
    indirect: tuple[str, ...]
    positions: dict[str, float]
    axial: str
    level: str
    capacity: str
    station: tuple[str, ...]
    hands: bool
    easier: tuple[str, ...]
    harder: tuple[str, ...]
    because: str
    sources: tuple[str, ...]

    def __init__(self, fields: dict[str, Any]) -> None:
        for name, value in fields.items():
            setattr(self, name, value)

    @property
    def lengths(self) -> dict[str, str]:
        """At what length each muscle with a length curve works on average: "long", "middle" or "short"."""
        from .mechanics import length_class

        return {muscle: length_class(position)[0] for muscle, position in self.positions.items()}

    def weight(self, muscle: str, indirect: float = INDIRECT_SET) -> float:
        """What one set counts for a muscle: 1 direct, ``indirect`` (0.5: pelland-2026-frac), or 0."""
        if muscle in self.direct:
            return 1.0
        return indirect if muscle in self.indirect else 0.0

    def is_close_to(self, other: Exercise) -> bool:
        """Whether two exercises are the same lift or close variants.

        That is: the same movement with the same implement, or one is the next easier or harder form.
        """
        if other.name in (*self.easier, *self.harder) or self.name in (*other.easier, *other.harder):
            return True
        alike = self.pattern == other.pattern if self.pattern else self.actions == other.actions
        return alike and self.implement == other.implement

    def length_is_sure(self, muscle: str) -> bool:
        """Whether the length class of a muscle is sure; see mechanics.length_class."""
        from .mechanics import length_class

        return length_class(self.positions[muscle])[1]

    def profile(self) -> Profile:
        """The credit of each muscle with its reason: where ``direct`` and ``indirect`` come from."""
        from .derive import derive

        return derive(anatomy(), self.actions, self.assists, self.path, self.kind, self.stated)

    def __repr__(self) -> str:
        return f"<{self.name}>"


class Side:
    """One side of a pair.

    ``words`` is its name in messages, ``area`` what it trains, ``trained_by`` the joint actions and movement
    patterns that count for it.
    """

    __slots__ = ("area", "trained_by", "words")

    def __init__(self, words: str, area: str, actions: tuple[str, ...], patterns: tuple[str, ...]) -> None:
        self.words = words
        self.area = area
        self.trained_by = (*actions, *patterns)


class Pair:
    """Two opposing kinds of work. ``serious`` if the sources support more than a note."""

    __slots__ = ("name", "serious", "sides", "sources")

    def __init__(
        self,
        name: str,
        sides: tuple[tuple[str, str, tuple[str, ...], tuple[str, ...]], ...],
        serious: bool,
        sources: tuple[str, ...],
    ) -> None:
        self.name = name
        self.sides = tuple(Side(*side) for side in sides)
        self.serious = serious
        self.sources = sources


class Source:
    """A source.

    - ``short``: its name in messages. ``reference``: in full.
    - ``kind``: trial, guideline, anatomy, model, convention or common practice.
    - ``grade``: how sure its numbers are. V: read; V2: read second-hand; C: computed; M: from memory.
    - ``read``: what of it was read.
    """

    __slots__ = ("grade", "id", "kind", "read", "reference", "short")

    def __init__(self, id: str, short: str, reference: str, kind: str, grade: str, read: str) -> None:
        self.id = id
        self.short = short
        self.reference = reference
        self.kind = kind
        self.grade = grade
        self.read = read


pairs: tuple[Pair, ...] = tuple(Pair(*row) for row in built.PAIRS)

_exercises: dict[str, Exercise] = {}
_anatomy: list[Anatomy] = []


@lru_cache(maxsize=5000)
def exercise(name: str) -> Exercise | None:
    """The exercise with this name or alias, or None."""
    line = line_of(built.NAMES, fold(name))
    if not line:
        return None
    own = line.partition("\t")[2]
    return _exercises.get(own) or _read(own, line_of(built.EXERCISES, own))


def _read(name: str, line: str) -> Exercise:
    """The exercise that a line holds. It is made once, so a name always gives the same object."""
    found = _exercises.get(name)
    if found is None:
        found = _exercises[name] = Exercise(decode(line))
    return found


def exercises() -> list[Exercise]:
    """All exercises, in the order of the data."""
    return list(_all())


@cache
def _all() -> tuple[Exercise, ...]:
    for line in lines_of(built.EXERCISES):
        _read(line.partition("\t")[0], line)
    return tuple(_exercises[name] for name in lines_of(built.ORDER))


def nearest_exercises(name: str, most: int = 3) -> list[str]:
    """Up to ``most`` exercises whose names are most like one that is unknown, the nearest first."""
    return list(_nearest_exercises(name, most))


@lru_cache(maxsize=100)  # an unknown name stays in a file for as long as it takes to type another one
def _nearest_exercises(name: str, most: int) -> tuple[str, ...]:
    from .nearest import nearest

    rows = map(names_in, lines_of(built.EXERCISES))
    return tuple(nearest(name, ((word, row[0]) for row in rows for word in row), most))


def nearest_areas(name: str, most: int = 3) -> list[str]:
    """Up to ``most`` areas whose names are most like one that is unknown, the nearest first."""
    from .nearest import nearest

    first = {built.AREAS[fold(area)]: area for area in reversed(built.AREA_NAMES)}
    return nearest(name, ((word, first[muscles]) for word, muscles in built.AREAS.items()), most)


def anatomy() -> Anatomy:
    """Muscles, joint actions and length curves together. They are made when first asked for."""
    if not _anatomy:
        from .anatomy import anatomy_of

        _anatomy.append(anatomy_of(built.ACTIONS, built.MUSCLES, built.CURVES))
    return _anatomy[0]


def actions() -> dict[str, Action]:
    """All joint actions by name."""
    return anatomy().actions


def muscles() -> dict[str, Muscle]:
    """All muscles and heads by name."""
    return anatomy().muscles


@lru_cache(maxsize=1000)
def area(name: str) -> tuple[str, ...] | None:
    """The muscles of an area, by its name or another word that coaches use for it, or None."""
    return built.AREAS.get(fold(name))


def is_group(name: str) -> bool:
    """Whether an area is a muscle group or a part of one. A region is not, nor is an unknown word."""
    muscles = set(area(name) or ())
    return bool(muscles) and any(muscles <= set(members) for members in groups.values())


def area_names() -> tuple[str, ...]:
    """The names of all areas, as they are written."""
    return built.AREA_NAMES


def source(id: str) -> Source:
    """The source with this id. KeyError if there is none."""
    return Source(id, *built.SOURCES[id])


def source_ids() -> tuple[str, ...]:
    """All source ids."""
    return tuple(built.SOURCES)
