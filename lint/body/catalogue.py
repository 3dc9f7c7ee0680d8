"""The catalogue at run time: exercises by name or alias, muscles, areas of the body, sources.

All data comes from built.py, which build.py writes from data/. There an exercise is one line of text, which
is decoded when it is first asked for. Comparing names ignores case, hyphens, spaces and a plural s.
"""

from __future__ import annotations

from functools import cache, lru_cache

from . import built
from .names import fold, unaccented, without_side
from .rows import WrittenFields, line_of, lines_of
from .rows import rank as rank_in

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
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

KINDS = ("dynamic", "isometric", "plyometric", "ballistic", "carry", "endurance")
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

RANKS = ("staple", "usual", "special")
"""How common an exercise is, the most common first: for the order of what is offered, nothing else."""

#: Muscle groups that coaches speak of, and regions of the body, each with its muscles.
groups: dict[str, tuple[str, ...]] = built.GROUPS
regions: dict[str, tuple[str, ...]] = built.REGIONS
#: The names of all muscles and muscle groups: what a set of an exercise can count for.
credited: frozenset[str] = frozenset(
    (*groups, *(muscle for members in regions.values() for muscle in members))
)
#: The regions that the guideline wants trained (us-pag-2018): all except the neck.
major_regions: tuple[str, ...] = tuple(region for region in regions if region != "neck")


class Exercise(WrittenFields):
    """One exercise, made from the fields of rows.FIELDS.

    - ``kind``: dynamic, isometric, plyometric, ballistic or carry.
    - ``pattern``: the stated movement pattern, "" if none; ``patterns`` also holds what the joint path shows.
    - ``actions``, ``assists``: its main and its assisting joint actions; ``serves``: main ones and patterns.
    - ``path``: {joint: angles in degrees}.
    - ``direct``, ``indirect``: the muscles that it trains directly and indirectly.
    - ``stated``: {muscle or group: (credit, reason)}, where the credit is stated by hand.
    - ``positions``: {muscle: mean place in its own range, 0 to 1}, for trained muscles with a length curve.
    - ``rank``: one of RANKS; ``station``: the equipment that it occupies; ``hands``: whether the grip carries
      the load.
    """

    __slots__ = ("serves",)

    name: str
    aliases: tuple[str, ...]
    rank: str
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
    serves: frozenset[str]

    def __getattr__(self, name: str) -> Any:
        """What nobody has asked for before."""
        if name == "serves":
            self.serves = frozenset((*self.actions, *self.patterns))
            return self.serves
        return super().__getattr__(name)

    @property
    def lengths(self) -> dict[str, str]:
        """The mean length of each muscle with a length curve: "long", "middle" or "short"."""
        from .mechanics import length_class

        return {muscle: length_class(position)[0] for muscle, position in self.positions.items()}

    def weight(self, muscle: str, indirect: float = INDIRECT_SET) -> float:
        """How much one set counts for a muscle: 1 direct, ``indirect`` (0.5: pelland-2026-frac) or 0."""
        if muscle in self.direct:
            return 1.0
        return indirect if muscle in self.indirect else 0.0

    def is_close_to(self, other: Exercise) -> bool:
        """Whether two exercises are the same lift or close variants of it.

        They are if one is the next easier or harder form of the other, or if they are the same movement with
        the same implement.
        """
        if other.name in (*self.easier, *self.harder) or self.name in (*other.easier, *other.harder):
            return True
        alike = self.pattern == other.pattern if self.pattern else self.actions == other.actions
        return alike and self.implement == other.implement

    def length_is_sure(self, muscle: str) -> bool:
        """Whether the length class is sure: not so near a limit that another model may give another class."""
        from .mechanics import length_class

        return length_class(self.positions[muscle], anatomy().band(muscle))[1]

    def profile(self) -> Profile:
        """How ``direct`` and ``indirect`` are derived, with the reason for each muscle."""
        from .derive import derive

        return derive(anatomy(), self.actions, self.assists, self.path, self.kind, self.pattern, self.stated)

    def __repr__(self) -> str:
        return f"<{self.name}>"


def rarity(exercise: Exercise) -> int:
    """0 for a staple, 1 for a usual exercise, 2 for a special one: sorts the more common first."""
    return RANKS.index(exercise.rank)


def rarity_of(name: str) -> int:
    """The rarity of the catalogue's exercise of this name, read off its line; 1 for any other name."""
    line = line_of(built.EXERCISES, name)
    return RANKS.index(rank_in(line)) if line else 1


class NameReading:
    """What the name of a lift was read as.

    ``implement`` is what is lifted; the name may state another one than the exercise has. ``qualifiers`` are
    words of the name that change no credit, as they were written. ``tempo`` is the tempo in the name, as in
    "3-1-X-0", or "". ``lowering``, ``pause`` and ``hold`` are seconds in the name, 0 if there are none: of
    lowering and of pausing in each repetition, and of holding a position.
    """

    __slots__ = ("exercise", "hold", "implement", "lowering", "pause", "qualifiers", "tempo")

    def __init__(self, exercise: Exercise, implement: str = "") -> None:
        self.exercise = exercise
        self.implement = implement or exercise.implement
        self.qualifiers: tuple[str, ...] = ()
        self.tempo = ""
        self.lowering = self.pause = self.hold = 0.0

    @property
    def says_seconds(self) -> bool:
        """Whether it says how long a repetition or a hold takes."""
        return bool(self.tempo or self.lowering or self.pause or self.hold)

    @property
    def words(self) -> str:
        """The exercise with the other implement and the qualifiers: "back squat, paused"."""
        other = (self.implement,) if self.implement != self.exercise.implement else ()
        return ", ".join((self.exercise.name, *other, *self.qualifiers))

    def __repr__(self) -> str:
        return f"<{self.words}>"


class Side:
    """One side of a pair.

    ``words`` are its name in messages and ``area`` is what it trains. ``trained_by`` are the joint actions
    and movement patterns that count for it.
    """

    __slots__ = ("area", "trained_by", "words")

    def __init__(self, words: str, area: str, actions: tuple[str, ...], patterns: tuple[str, ...]) -> None:
        self.words = words
        self.area = area
        self.trained_by = (*actions, *patterns)


class Pair:
    """Two opposing kinds of work. ``serious`` says whether its sources carry more than a note."""

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

    - ``short``: the reference for messages; ``reference``: the full one.
    - ``kind``: what it is, growth trial, guideline or anatomy; schema/body-sources.json explains each.
    - ``grade``: how sure it is. V read, V2 read second-hand, C computed, M from memory.
    - ``read``: which part of it was read.
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
    found = named(name)
    return None if found is None else found.exercise


@lru_cache(maxsize=5000)
def named(name: str) -> NameReading | None:
    """The exercise with this name or alias and the implement that the name states, or None.

    A name of another language is found too, with its accents or without them.
    """
    folded = fold(name)
    line = line_of(built.NAMES, folded)
    if not line and not folded.isascii():
        line = line_of(built.NAMES, unaccented(folded))
    if not line:
        return None
    own, _, implement = line.partition("\t")[2].partition("\t")
    return NameReading(_exercises.get(own) or _read(own, line_of(built.EXERCISES, own)), implement)


def _read(name: str, line: str) -> Exercise:
    """The exercise of a line, read once: a name always leads to the same object."""
    found = _exercises.get(name)
    if found is None:
        found = _exercises[name] = Exercise({}, line)
    return found


def exercises() -> list[Exercise]:
    """All exercises, in the order of the data."""
    return list(_all())


def of_rank(rank: str) -> Iterator[Exercise]:
    """The exercises of a rank, in the order of the data, each read when it is asked for."""
    for name, line in _by_rank().get(rank, ()):
        yield _read(name, line)


@cache
def _by_rank() -> dict[str, list[tuple[str, str]]]:
    """The name and the line of each exercise, by rank, in the order of the data."""
    lines = {line.partition("\t")[0]: line for line in lines_of(built.EXERCISES)}
    ranked: dict[str, list[tuple[str, str]]] = {}
    for name in lines_of(built.ORDER):
        ranked.setdefault(rank_in(lines[name]), []).append((name, lines[name]))
    return ranked


@cache
def _all() -> tuple[Exercise, ...]:
    for line in lines_of(built.EXERCISES):
        _read(line.partition("\t")[0], line)
    return tuple(_exercises[name] for name in lines_of(built.ORDER))


def anatomy() -> Anatomy:
    """Muscles, actions and length curves together, in the form that `derive` takes."""
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
    """The muscles of an area, on whichever side, by any word that coaches use for it; None if unknown."""
    return built.AREAS.get(fold(name)) or built.AREAS.get(fold(without_side(name)))


def is_group(name: str) -> bool:
    """Whether an area is a muscle group or a part of one. False for regions and unknown words."""
    muscles = set(area(name) or ())
    return bool(muscles) and any(muscles <= set(members) for members in groups.values())


def area_names() -> tuple[str, ...]:
    """The names of all areas, as they are written in the data."""
    return built.AREA_NAMES


def source(id: str) -> Source:
    """The source of this id; KeyError if there is none."""
    return Source(id, *built.SOURCES[id])


def source_ids() -> tuple[str, ...]:
    """All source ids."""
    return tuple(built.SOURCES)
