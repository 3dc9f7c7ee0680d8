"""Finds exercises by words: area, joint action, implement, length, kind, stance, level, pattern, name.

The longest phrase is read first: "triceps long head" is a muscle, "triceps long" is triceps at long length,
and "leg press" is an exercise. Case, hyphens, blanks and a plural s make no difference. A misspelt word is
read as the most similar word that is known.
"""

from __future__ import annotations

from . import catalogue
from .derive import DIRECT, INDIRECT
from .known import CATALOGUE
from .mechanics import length_class
from .names import fold, words
from .search_words import (
    ACTION,
    AREA,
    ASSISTING,
    BREAKS,
    FILLERS,
    IMPLEMENT,
    KIND,
    LENGTH,
    LEVEL,
    MAIN,
    MOST_WORDS,
    NAME,
    ONE_SIDE,
    PATTERN,
    SIDES,
    STANCE,
    read_words,
    spelled,
    vocabulary_of,
    whole_name,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from .catalogue import Exercise
    from .known import Known
    from .search_words import Meaning, QueryPart, Vocabulary


EVERYWHERE = "whole body"
#: An exercise has one value of each of these kinds, so two words of one kind mean that either will do.
_EITHER = (PATTERN, IMPLEMENT, KIND, STANCE, LEVEL, SIDES, LENGTH)

_LESS = (INDIRECT, ASSISTING)


class Worked:
    """How a muscle works in an exercise.

    - ``credit``: direct or indirect.
    - ``place``: its mean place in its own range, 0 shortest to 1 longest.
    - ``length``, ``sure``: the class of that place, and whether the class is sure.
    - ``net``: its length change over the lift in cm, negative if it shortens; None if not known.
    """

    __slots__ = ("credit", "length", "muscle", "net", "place", "sure")

    def __init__(self, muscle: str, credit: str, place: float, net: float | None) -> None:
        self.muscle = muscle
        self.credit = credit
        self.place = place
        self.length, self.sure = length_class(place)
        self.net = net


class Match:
    """An exercise that fits what was asked.

    - ``exact``: whether it was asked for by name or alias.
    - ``role``: how it trains the area (direct, indirect) or loads the joint action (main, assisting); "" if
      neither was asked for.
    - ``muscles``: the muscles of the area whose length counts.
    - ``sure``: whether it surely works at the length asked for.
    """

    __slots__ = ("exact", "exercise", "muscles", "role", "sure")

    def __init__(
        self,
        exercise: Exercise,
        exact: bool = False,
        role: str = "",
        muscles: tuple[str, ...] = (),
        sure: bool = True,
    ) -> None:
        self.exercise = exercise
        self.exact = exact
        self.role = role
        self.muscles = muscles
        self.sure = sure

    def worked(self) -> list[Worked]:
        """How each of ``muscles`` works."""
        credits = self.exercise.profile().credits
        places = self.exercise.positions
        return [Worked(m, credits[m].credit, places[m], credits[m].net) for m in self.muscles]


class Answer:
    """What was understood and what was found.

    - ``readings``: how the words were read.
    - ``unknown``: (word, nearest names) for each word that means nothing here.
    - ``found``: the exercises that fit, the best first. If the words name one exercise, only that one.
    - ``others``: names of other exercises that these words might mean.
    - ``without``: if nothing fits, (words left out, how many exercises would then fit).
    - ``unmeasured``: if nothing fits, areas asked for at a length although no muscle of theirs has a curve.
    """

    __slots__ = ("asked", "found", "others", "readings", "unknown", "unmeasured", "without")

    def __init__(self, asked: str) -> None:
        self.asked = asked
        self.readings: tuple[QueryPart, ...] = ()
        self.unknown: tuple[tuple[str, tuple[str, ...]], ...] = ()
        self.found: tuple[Match, ...] = ()
        self.others: tuple[str, ...] = ()
        self.without: tuple[tuple[str, int], ...] = ()
        self.unmeasured: tuple[str, ...] = ()

    @property
    def everything(self) -> bool:
        """Whether nothing was asked for, so that the answer is the whole catalogue."""
        return not self.readings and not self.unknown

    def meant(self, kind: str) -> tuple[str, ...]:
        """What the words mean of one kind, in the order of the words."""
        found = [name for one in self.readings for what, name in one.meanings if what == kind]
        return tuple(dict.fromkeys(found))


def search(asked: str, known: Known = CATALOGUE) -> Answer:
    """The answer to some words. Without a word, it holds all known exercises in their order.

    Raises ValueError, in plain words, for more than ``MOST_WORDS`` words.
    """
    answer = Answer(asked.strip())
    typed = words(asked.translate(BREAKS))
    if len(typed) > MOST_WORDS:
        raise ValueError(f"{len(typed)} words are too many to search for: {MOST_WORDS} at most")
    if all(word in FILLERS for word in typed):
        answer.found = tuple(map(Match, known.exercises()))
        return answer
    vocabulary = vocabulary_of(known)
    tokens, unknown = spelled(typed, vocabulary)
    named = None if unknown else whole_name(tokens, vocabulary)
    readings, left = ([named], []) if named else read_words(tokens, vocabulary)
    unknown += [token.typed for token in left]
    answer.unknown = tuple((word, tuple(vocabulary.near(word))) for word in dict.fromkeys(unknown))
    answer.readings = tuple(readings)
    if not readings:
        return answer
    said = readings[0].read_as or readings[0].words
    exact = known.exercise(said) if len(readings) == 1 and not unknown else None
    found = _Wanted(readings, vocabulary).matches(exact)
    if exact is not None and (fold(exact.name) == fold(said) or fold(said) not in vocabulary.meanings):
        answer.others = tuple(one.exercise.name for one in found if not one.exact)
        found = [one for one in found if one.exact]
    answer.found = tuple(found)
    if not found:
        answer.without = tuple(_without(readings, vocabulary))
        answer.unmeasured = tuple(_unmeasured(answer))
    return answer


class _Wanted:
    """What an exercise must meet: one meaning of every demand, at one of ``lengths`` if there are any."""

    def __init__(self, readings: Iterable[QueryPart], vocabulary: Vocabulary) -> None:
        demands: dict[str, list[Meaning]] = {}
        for number, one in enumerate(readings):
            kind = one.meanings[0][0]
            demands.setdefault(kind if kind in _EITHER else str(number), []).extend(one.meanings)
        self.known = vocabulary.known
        self.lengths = {name for _, name in demands.pop(LENGTH, ())}
        if self.lengths and not any(kind == AREA for demand in demands.values() for kind, _ in demand):
            demands[AREA] = [(AREA, EVERYWHERE)]
        self.demands = list(demands.values())
        self.named: dict[str, dict[int, bool]] = {}
        for demand in self.demands:
            for kind, name in demand:
                if kind == NAME:
                    rows = vocabulary.rows_named(fold(name))
                    by_name_alone = demand[0][0] == NAME
                    self.named[name] = {row: own for row, own in rows.items() if own or by_name_alone}

    def matches(self, exact: Exercise | None = None) -> list[Match]:
        """The exercises that fit, the best first.

        The exact one comes first. Then: direct before indirect, a sure length before one that is not sure,
        words of the name before words of an alias. Equal ones are sorted by name.
        """
        found: list[tuple[tuple[bool, bool, bool, bool, str], Match]] = []
        for row, exercise in enumerate(self.known.exercises()):
            fit = self._fit(row, exercise)
            if fit is not None:
                role, muscles = fit
                sure = not self.lengths or any(map(exercise.length_is_sure, muscles))
                by_alias = any(rows.get(row) is False for rows in self.named.values())
                order = (exercise is not exact, role in _LESS, not sure, by_alias, exercise.name.lower())
                found.append((order, Match(exercise, exercise is exact, role, muscles, sure)))
        return [match for _, match in sorted(found, key=lambda one: one[0])]

    def _fit(self, row: int, exercise: Exercise) -> tuple[str, tuple[str, ...]] | None:
        """The weakest role of the exercise over all demands, and the muscles that count.

        None if it does not fit.
        """
        roles: list[str] = []
        counted: list[str] = []
        for demand in self.demands:
            fits = [fit for meaning in demand if (fit := self._meets(row, exercise, *meaning)) is not None]
            if not fits:
                return None
            roles.append(next((role for role, _ in fits if role not in _LESS), fits[0][0]))
            counted += [muscle for _, muscles in fits for muscle in muscles]
        told = [role for role in roles if role]
        weakest = next((role for role in told if role in _LESS), told[0] if told else "")
        return weakest, tuple(dict.fromkeys(counted))

    def _meets(
        self, row: int, exercise: Exercise, kind: str, name: str
    ) -> tuple[str, tuple[str, ...]] | None:
        if kind == AREA:
            return works(exercise, name, self.lengths)
        if kind == ACTION:
            role = MAIN if name in exercise.actions else ASSISTING if name in exercise.assists else None
            return None if role is None else (role, ())
        if kind == NAME:
            return ("", ()) if row in self.named[name] else None
        if kind == PATTERN:
            return ("", ()) if name in exercise.patterns else None
        if kind == SIDES:
            return ("", ()) if exercise.unilateral == (name == ONE_SIDE) else None
        return ("", ()) if getattr(exercise, kind) == name else None


def works(exercise: Exercise, area: str, lengths: set[str]) -> tuple[str, tuple[str, ...]] | None:
    """How an exercise trains an area (at one of ``lengths``, if there are any), and the muscles that tell."""
    members = catalogue.area(area) or ()
    credited = [muscle for muscle in members if exercise.weight(muscle)]
    counted = telling(exercise, credited)
    if lengths:
        classes = exercise.lengths
        credited = counted = [muscle for muscle in counted if classes[muscle] in lengths]
    if not credited:
        return None
    direct = any(muscle in exercise.direct for muscle in credited)
    return DIRECT if direct else INDIRECT, tuple(counted)


def telling(exercise: Exercise, muscles: Sequence[str]) -> list[str]:
    """The muscles that tell at what length an area works: those with a known place in their own range.

    If a group has a muscle over two joints, its one-joint muscles do not count. The short head of biceps
    femoris has the same length in a seated curl as in a lying one, but the long head has not (maeo-2021).
    """
    known = catalogue.muscles()
    placed = [muscle for muscle in muscles if muscle in exercise.positions]
    leading = {group for muscle in placed if _joints(muscle) > 1 for group in known[muscle].groups}
    return [one for one in placed if _joints(one) > 1 or leading.isdisjoint(known[one].groups)]


def _joints(muscle: str) -> int:
    """How many joints the length curve of a muscle covers."""
    anatomy = catalogue.anatomy()
    return len(anatomy.curves[anatomy.muscles[muscle].mechanics].angles)


def by_hand(exercise: Exercise, muscle: str) -> bool:
    """Whether the credit of a muscle is stated by hand, for itself or for one of its groups."""
    return any(muscle in catalogue.groups.get(who, (who,)) for who in exercise.stated)


def _without(readings: Sequence[QueryPart], vocabulary: Vocabulary) -> Iterator[tuple[str, int]]:
    """For each phrase: how many exercises would fit without it. Phrases for which none would are left out."""
    for index, one in enumerate(readings):
        rest = [other for place, other in enumerate(readings) if place != index]
        if rest and (count := len(_Wanted(rest, vocabulary).matches())):
            yield one.words, count


def _unmeasured(answer: Answer) -> Iterator[str]:
    """Areas that were asked for at a length although none of their muscles has a length curve."""
    known = catalogue.muscles()
    curves = catalogue.anatomy().curves
    if answer.meant(LENGTH):
        for name in answer.meant(AREA):
            if not any(known[muscle].mechanics in curves for muscle in catalogue.area(name) or ()):
                yield name
