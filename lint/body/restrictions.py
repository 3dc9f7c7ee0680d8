"""What an athlete spares, in a coach's words, and which exercises load it.

Words are read in clauses ("knee, and jumping" is two), each by whole phrases: a movement or an exercise, the
longest first, or else a part of the body. Where a clause names a movement, a part of the body only says how
it is done: "front plank on the toes" is a plank, no word on toes. Words are compared without regard to case,
number, order and the ending -ing. Which words mean what is common practice, no source; which joints an
exercise moves, and how far, is the catalogue's.
"""

from __future__ import annotations

import re
from functools import cache

from . import catalogue
from .known import CATALOGUE
from .names import fold, words
from .restriction_angles import DIFFER, taken_out, with_arc
from .restriction_traits import loads
from .restriction_words import (
    BESIDE,
    HARMLESS,
    HEAVY,
    LEFT_OUT,
    LOADED,
    MANNER,
    MANOEUVRES,
    MOVEMENTS,
    PARTS,
    SIDES_OF_A_PART,
    STRAIN,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator, Sequence

    from .catalogue import Exercise
    from .known import Known
    from .restriction_angles import Arc
    from .restriction_words import Trait

    Meaning = Callable[[Sequence[str]], tuple[Trait, ...]]

LONGEST_PHRASE = 6
JOINED = 3
"""Words on each side of an "and" that the name of an exercise may have."""
MOST_WORDS = 100
"""Words of a restriction that are read; no coach writes more."""

SIDES = ("left", "right")

BETWEEN = r"[,;:/()+&]|\.\s"
JOINERS = ("and", "or")
"""What stands between clauses."""


class Spared:
    """What the words of a restriction mean: ``traits`` to look for in an exercise, the ``side`` ("" where not
    just one is named), and the words that mean nothing here, ``unknown``. ``agreed`` are the traits of what
    may stay all the same. ``bounds`` are words by which less is to be spared than the traits say, such as
    ``heavy``, ``kettlebell`` or ``below``.
    """

    __slots__ = ("agreed", "bounds", "is_manner", "side", "traits", "unknown")

    def __init__(
        self,
        traits: tuple[Trait, ...],
        side: str,
        unknown: tuple[str, ...],
        agreed: tuple[Trait, ...] = (),
        bounds: tuple[str, ...] = (),
    ) -> None:
        self.bounds = bounds
        self.traits = traits
        self.side = side
        self.unknown = unknown
        self.agreed = agreed
        self.is_manner = False

    @property
    def strains(self) -> bool:
        """Whether it is breath held against a load: no exercise is that by itself, but hard work is."""
        return any(kind == STRAIN for kind, *_ in self.traits)

    @property
    def is_understood(self) -> bool:
        """Whether something can be looked for, or the words only say how things are done."""
        return MANNER.issuperset(map(fold, self.unknown)) and bool(self.traits or self.is_manner)

    @property
    def is_measured(self) -> bool:
        """Whether degrees are told beyond which it is."""
        return any(len(trait) > 2 or trait[0] in UP_TO for trait in self.traits)

    @property
    def spares_bending(self) -> bool:
        """Whether the trunk is not to bend."""
        return any(kind == "trunk curled" for kind, *_ in self.traits)

    def suits(self, exercise: Exercise) -> bool:
        """Whether an exercise may be offered: nothing held for long where the breath must go on, and no raise
        where the arm must stay below the height of the shoulder.
        """
        held = self.strains and exercise.kind == "isometric"
        return not (self.forbids(exercise) or held or self._raises(exercise))

    def _raises(self, exercise: Exercise) -> bool:
        """Whether it raises an arm that must stay low, and was not agreed."""
        low = any(
            one[0] == "arm raised past" and float(one[1]) - CLEAR < SHOULDER_HEIGHT for one in self.traits
        )
        return low and loads(exercise, ARM_RAISED) and not loads(exercise, self.agreed)

    def clears(self, exercise: Exercise) -> bool:
        """Whether an exercise is surely none of it, so that it may be offered in the place of one that is."""
        bounded = self.bounds or self.unknown or any(len(trait) > 2 for trait in self.traits)
        forbidden = loads(exercise, tuple(map(_widened, self.traits)))
        return not (bounded or forbidden or self._raises(exercise))

    def forbids(self, exercise: Exercise, said: Arc | None = None) -> bool:
        """Whether an exercise is what is to be spared, and none that was agreed.

        ``said`` are the degrees between which its line says that it moves.
        """
        return loads(exercise, self.traits, said) and not loads(exercise, self.agreed, said)

    def surely_forbids(self, exercise: Exercise, said: Arc | None = None) -> bool:
        """Whether it is so however much lifters and machines differ in their degrees."""
        return self.forbids(exercise, said) and loads(exercise, self.traits, said, DIFFER)


CLEAR = 20.0
"""Degrees by which what is offered stays clear of a limit: lifters differ by less."""
UP_TO = ("knee bent past", "pushed past", "arm raised past")
"""Kinds of traits that are a limit in degrees."""
ARM_RAISED: tuple[Trait, ...] = (("action", "shoulder flexion"), ("action", "shoulder abduction"))
"""What raises the arm: none to offer where it must stay below the height of the shoulder."""
SHOULDER_HEIGHT = 90.0


def _widened(trait: Trait) -> Trait:
    """A trait that holds more, for what must surely not be one: lower limits, one leg by whatever stance."""
    if trait[0] in UP_TO:
        return (trait[0], f"{float(trait[1]) - CLEAR:g}")
    return ("one leg at a time", "") if trait == ("stance", "single leg") else trait


def read(spared: str, known: Known = CATALOGUE, agreed: Iterable[str] = ()) -> Spared:
    """What is meant by words such as "left shoulder" or "deep knee bend under load".

    ``known`` are the exercises that may be named, ``agreed`` the words for what may stay all the same.
    Without traits nothing can be looked for.
    """
    may_stay = tuple(trait for one in agreed for trait in read(one, known).traits)
    typed = spared.lower().split()
    whole = " ".join(typed[:MOST_WORDS])
    traits: list[Trait] = []
    unknown: list[str] = []
    bounds: list[str] = []
    for part in [whole] if known.listed(whole) else filter(str.strip, re.split(BETWEEN, whole)):
        rest, arc, degrees = taken_out(part)
        for clause in _shared(_clauses([word.strip('.!?"') for word in words(rest)], known)):
            found, left, bounding = _clause(clause, known)
            bounds += bounding
            within = with_arc([fold(word) for word in clause], found, arc) if arc else found
            traits += within or found
            unknown += left + ([] if within else degrees)
    unknown += typed[MOST_WORDS:]
    sides = [side for side in SIDES if side in re.sub(BETWEEN, " ", " ".join(typed)).split()]
    side = sides[0] if len(sides) == 1 else ""
    meant = Spared(
        tuple(dict.fromkeys(traits)),
        side,
        tuple(dict.fromkeys(unknown)),
        may_stay,
        tuple(dict.fromkeys(bounds)),
    )
    meant.is_manner = len(_telling(words(whole))) == len(meant.unknown) and len(words(whole)) > 1
    return meant


def _clauses(said: list[str], known: Known) -> Iterator[list[str]]:
    """Words up to each joiner that is no part of the name of an exercise, as in "clean and jerk"."""
    start = 0
    for at, word in enumerate(said):
        if word in JOINERS and not any(
            known.listed(" ".join(said[first:last]))
            for first in range(max(start, at - JOINED), at)
            for last in range(at + 2, at + 2 + JOINED)
        ):
            yield said[start:at]
            start = at + 1
    yield said[start:]


def _shared(clauses: Iterable[list[str]]) -> Iterator[list[str]]:
    """Clauses, a single word with what a neighbour says of its own, where that is a movement, too.

    In "overhead pressing and pulling" and in "pressing and pulling behind the neck" both are done so.
    """
    several = list(clauses)
    told = [[], *([word for word in clause if word not in HARMLESS] for clause in several), []]
    for clause, before, own, after in zip(several, told, told[1:], told[2:], strict=False):
        shared = ([*before[:-1], *own], [*own, *after[1:]]) if len(own) == 1 else ()
        yield next((one for one in shared if len(one) > 1 and _compared(one) in _meanings()), clause)


def _clause(clause: Sequence[str], known: Known) -> tuple[list[Trait], list[str], list[str]]:
    """What a clause says to look for, its words that mean nothing, and those that bound it."""
    said = [word for word in clause if word and word not in SIDES]
    movements, left = _matched(said, lambda phrase: _movement(phrase, known))
    beside: list[str] = []
    if not movements:
        told = _telling(said)
        movements, left = _matched(told, lambda phrase: _movement(phrase, known))
        beside = [word for word in said if word not in told] if movements else []
    parts, left = _matched(said if not movements else left, _part)
    unknown = _telling(left)
    bounds = _bounds(said, [*beside, *left], movements or parts)
    measured = any(character.isdigit() for character in "".join(unknown))
    bounded = measured or bounds or not MANNER.isdisjoint(map(fold, unknown))
    as_written = known.exercise(" ".join(said)) if unknown and not bounded else None
    if as_written is not None:
        return [("name", as_written.name)], [], []
    return _gripped(movements) or parts, unknown, bounds


def _gripped(movements: list[Trait]) -> list[Trait]:
    """The movements of a clause, those that a grip is told of only with that: "close-grip pressing"."""
    grips = [name for kind, name, *_ in movements if kind == "grip"]
    patterns = [name for kind, name, *_ in movements if kind == "pattern"]
    named = (catalogue.exercise(name) for kind, name, *_ in movements if kind in ("called", "name"))
    patterns += [pattern for one in named if one is not None for pattern in one.patterns]
    together: list[Trait] = [("gripped", f"{grip} {pattern}") for grip in grips for pattern in patterns]
    return together or movements


def _bounds(said: Sequence[str], left: Sequence[str], found: list[Trait]) -> list[str]:
    """The words of a clause, ``left`` beside what is spared, by which less than that is meant."""
    bounds = ["loaded"] if not LOADED.isdisjoint(said) and all(kind != "axial" for kind, *_ in found) else []
    bounds += [word for word in said if word in HEAVY]
    under_load = any(f"under {word}" in " ".join(said) for word in LOADED)
    harmless = HARMLESS | LOADED | LEFT_OUT | ({"under"} if under_load else set())
    for word in left:
        forms = {word, fold(word), _stem(fold(word))}
        if harmless.isdisjoint(forms) and not BESIDE.isdisjoint(forms):
            bounds.append(fold(word))
    return bounds


def _telling(said: Sequence[str]) -> list[str]:
    """Words but for those that change nothing."""
    told = (word for word in said if word not in LEFT_OUT)
    return [word for word in told if BESIDE.isdisjoint((word, fold(word), _stem(fold(word))))]


def _matched(said: Sequence[str], meaning: Meaning) -> tuple[list[Trait], list[str]]:
    """What the phrases of a clause mean, the longest first from left to right, and the words left."""
    traits: list[Trait] = []
    left: list[str] = []
    at = 0
    while at < len(said):
        for length in range(min(LONGEST_PHRASE, len(said) - at), 0, -1):
            if found := meaning(said[at : at + length]):
                traits += found
                at += length
                break
        else:
            left.append(said[at])
            at += 1
    return traits, left


def _movement(phrase: Sequence[str], known: Known) -> tuple[Trait, ...]:
    """A movement of the tables, or an exercise: then also those of the same kind that are called so."""
    if list(phrase) == [STRAIN]:  # that of a muscle; the breath is held in straining
        return ()
    found = _meanings().get(_compared(phrase)) or _run_together().get("".join(_stems(phrase)))
    if found is not None:
        return found
    for name in (" ".join(phrase), " ".join(map(_stem, phrase))):
        listed = known.listed(name)
        if listed is not None:
            ours = listed.exercise is catalogue.exercise(name)
            return (("called", name) if ours else ("name", listed.exercise.name),)
    return ()


def _part(phrase: Sequence[str]) -> tuple[Trait, ...]:
    """A part of the body, or one side of it."""
    if list(phrase) == ["to"]:  # no toe
        return ()
    if len(phrase) > 2 and phrase[1] == "of" and phrase[0] in SIDES_OF_A_PART:
        whole = catalogue.area(" ".join(phrase))
        return (("trains", " ".join(phrase)),) if whole else _part(phrase[2:])
    name = " ".join(phrase)
    return _parts().get(_compared(phrase)) or ((("trains", name),) if catalogue.area(name) else ())


@cache
def _meanings() -> dict[tuple[str, ...], tuple[Trait, ...]]:
    named = {action: (("action", action),) for action in catalogue.actions()}
    return _keyed({**named, **MOVEMENTS, **MANOEUVRES})


@cache
def _run_together() -> dict[str, tuple[Trait, ...]]:
    """The movements by their letters, however they are cut into words: "dead-lifting", "pushups"."""
    return {"".join(_stems(words(phrase))): traits for phrase, traits in MOVEMENTS.items()}


@cache
def _parts() -> dict[tuple[str, ...], tuple[Trait, ...]]:
    return _keyed(PARTS)


def _keyed(table: dict[str, tuple[Trait, ...]]) -> dict[tuple[str, ...], tuple[Trait, ...]]:
    return {_compared(words(phrase)): traits for phrase, traits in table.items()}


def _compared(phrase: Sequence[str]) -> tuple[str, ...]:
    """A phrase as it is compared: "Deep knee bending", "deep knee bends" and "bend the knee deep" are one."""
    return tuple(sorted(_stems(phrase)))


def _stems(phrase: Sequence[str]) -> list[str]:
    return [_stem(fold(word)) for word in phrase if word not in LEFT_OUT]


def _stem(word: str) -> str:
    if word.endswith("ying") and len(word) == 5:
        return word[:1] + "i"
    if word.endswith("ing") and len(word) > 5:
        word = word[:-3]
        if len(word) > 2 and word[-1] == word[-2] and word[-1] in "bgmnpt":
            word = word[:-1]
    return word.rstrip("e")
