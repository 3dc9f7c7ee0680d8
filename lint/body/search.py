"""Finds exercises by words: area, joint action, implement, length, kind, stance, level, pattern, name.

A pure function from words to an answer. The longest phrase is read first, so "triceps long head" is a muscle,
"triceps long" is triceps at long length and "leg press" is an exercise. Comparing words ignores case,
hyphens, spaces and a plural s. A misspelt word is read as the nearest known one.
"""

from __future__ import annotations

from . import catalogue
from .derive import DIRECT, INDIRECT
from .known import CATALOGUE
from .mechanics import length_class
from .name_asides import is_bare
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
    QueryPart,
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
    from .search_words import Meaning, Vocabulary


EVERYWHERE = "whole body"
#: An exercise has only one of each of these, so two words of the same kind mean "either".
_EITHER = (PATTERN, IMPLEMENT, KIND, STANCE, LEVEL, SIDES, LENGTH)

_LESS = (INDIRECT, ASSISTING)


class Worked:
    """How a muscle works in an exercise.

    - ``credit``: direct or indirect.
    - ``place``: its mean place in its own range (0 shortest, 1 longest).
    - ``length``: the length class of that place; ``sure`` says whether the class is sure.
    - ``net``: its length change over the lift in cm, negative if it shortens; None if not worked out.
    """

    __slots__ = ("credit", "length", "muscle", "net", "place", "sure")

    def __init__(self, muscle: str, credit: str, place: float, net: float | None) -> None:
        self.muscle = muscle
        self.credit = credit
        self.place = place
        self.length, self.sure = length_class(place, catalogue.anatomy().band(muscle))
        self.net = net


class Match:
    """An exercise that fits.

    - ``exact``: whether it was asked for by name or alias.
    - ``role``: what it gives to the area (direct, indirect) or how it loads the joint action (main,
      assisting); "" if neither was asked for.
    - ``muscles``: the muscles of the area whose length counts.
    - ``sure``: whether it surely works at the length that was asked for.
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
        """The numbers behind the length of each of ``muscles``."""
        credits = self.exercise.profile().credits
        places = self.exercise.positions
        return [Worked(m, credits[m].credit, places[m], credits[m].net) for m in self.muscles]


class Answer:
    """What was understood and what was found.

    - ``asked``: the words as asked; ``readings``: how they were read.
    - ``unknown``: (word, nearest names) for words that mean nothing here.
    - ``found``: the exercises that fit, best first. If the words name one exercise, it is found alone, and
      ``others`` holds the names of exercises that the words might also mean.
    - ``without``: if nothing fits, (words left out, number of exercises that fit without them).
    - ``as_name``: the exercise that the words name as they stand on a line, where others are found as well.
    - ``unmeasured``: if nothing fits, the names of areas of which no muscle has a known length.
    """

    __slots__ = ("as_name", "asked", "found", "others", "readings", "unknown", "unmeasured", "without")

    def __init__(self, asked: str) -> None:
        self.asked = asked
        self.as_name = ""
        self.readings: tuple[QueryPart, ...] = ()
        self.unknown: tuple[tuple[str, tuple[str, ...]], ...] = ()
        self.found: tuple[Match, ...] = ()
        self.others: tuple[str, ...] = ()
        self.without: tuple[tuple[str, int], ...] = ()
        self.unmeasured: tuple[str, ...] = ()

    @property
    def everything(self) -> bool:
        """Whether no word asks for anything, so that the answer is the whole catalogue."""
        return not self.readings and not self.unknown

    def meant(self, kind: str) -> tuple[str, ...]:
        """The names of one kind that the words mean, in the order of the words."""
        found = [name for one in self.readings for what, name in one.meanings if what == kind]
        return tuple(dict.fromkeys(found))


def search(asked: str, known: Known = CATALOGUE) -> Answer:
    """The answer to some words. Without a word, it is all known exercises in their order.

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
        _as_one_name(answer, known)
        return answer
    said = readings[0].read_as or readings[0].words
    whole = len(readings) == 1 and not unknown and not is_bare(said)
    listed = known.reading(said) if whole else known.listed(answer.asked)
    exact = listed.exercise if listed else None
    found = _Wanted(readings, vocabulary).matches(exact)
    if exact is not None and (fold(exact.name) == fold(said) or fold(said) not in vocabulary.meanings):
        answer.others = tuple(one.exercise.name for one in found if not one.exact)
        found = [one for one in found if one.exact]
    answer.found = tuple(found)
    if len(found) > 1 and (meant := known.exercise(answer.asked)) is not None:
        answer.as_name = meant.name
    if (not found or unknown) and _as_one_name(answer, known):
        return answer
    if not found:
        answer.without = tuple(_without(readings, vocabulary))
        answer.unmeasured = tuple(_unmeasured(answer))
    return answer


def _as_one_name(answer: Answer, known: Known) -> bool:
    """Answers with one exercise if a programme could name it in these words, as reviews read them."""
    reading = known.reading(answer.asked)
    if reading is None:
        return False
    meanings = ((NAME, reading.exercise.name),)
    answer.readings = (QueryPart(answer.asked, reading.words, meanings),)
    answer.found = (Match(reading.exercise, exact=True),)
    answer.unknown = ()
    return True


class _Wanted:
    """What an exercise must meet: every demand in one of its meanings, and a length if any is asked for."""

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
        """The exercises that fit, best first.

        First comes the one asked for by name. Then direct comes before indirect, a sure length before an
        unsure one, words found in the name before words found in an alias, then the more common
        before the rarer, and last the alphabet decides.
        """
        found: list[tuple[tuple[bool, bool, bool, bool, int, str], Match]] = []
        for row, exercise in enumerate(self.known.exercises()):
            fit = self._fit(row, exercise)
            if fit is not None:
                role, muscles = fit
                sure = not self.lengths or any(map(exercise.length_is_sure, muscles))
                by_alias = any(rows.get(row) is False for rows in self.named.values())
                less = (exercise is not exact, role in _LESS, not sure, by_alias)
                order = (*less, catalogue.rarity(exercise), exercise.name.lower())
                found.append((order, Match(exercise, exercise is exact, role, muscles, sure)))
        return [match for _, match in sorted(found, key=lambda one: one[0])]

    def _fit(self, row: int, exercise: Exercise) -> tuple[str, tuple[str, ...]] | None:
        """The weakest role of the exercise in all demands, and the muscles that count; None if one fails."""
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
    """What an exercise gives to an area: direct or indirect, and the muscles whose length counts.

    With ``lengths``, only muscles that work at one of them count. None if it gives nothing.
    """
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
    """The muscles whose length tells at what length an area works.

    These are the muscles with a known place in their own range. If a two-joint muscle is among them, the
    one-joint muscles of its group are left out: the short head of biceps femoris has the same length in a
    seated curl as in a lying one, the long head does not (maeo-2021).
    """
    known = catalogue.muscles()
    placed = [muscle for muscle in muscles if muscle in exercise.positions]
    leading = {group for muscle in placed if _joints(muscle) > 1 for group in known[muscle].groups}
    return [one for one in placed if _joints(one) > 1 or leading.isdisjoint(known[one].groups)]


def _joints(muscle: str) -> int:
    """The number of joints in the length curve of a muscle."""
    anatomy = catalogue.anatomy()
    return len(anatomy.curves[anatomy.muscles[muscle].mechanics].angles)


def by_hand(exercise: Exercise, muscle: str) -> bool:
    """Whether the credit of a muscle is stated by hand, for the muscle or for a group that it belongs to."""
    return any(muscle in catalogue.groups.get(who, (who,)) for who in exercise.stated)


def grounds(exercise: Exercise) -> tuple[str, ...]:
    """Ids of the sources of an exercise: its own, then those of single credits."""
    credits = exercise.profile().credits.values()
    return tuple(dict.fromkeys((*exercise.sources, *(one for given in credits for one in given.sources))))


def _without(readings: Sequence[QueryPart], vocabulary: Vocabulary) -> Iterator[tuple[str, int]]:
    """For each phrase without which exercises would fit: its words, and how many would."""
    for index, one in enumerate(readings):
        rest = [other for place, other in enumerate(readings) if place != index]
        if rest and (count := len(_Wanted(rest, vocabulary).matches())):
            yield one.words, count


def _unmeasured(answer: Answer) -> Iterator[str]:
    """Areas that are asked for at a length, although none of their muscles has a length curve."""
    known = catalogue.muscles()
    curves = catalogue.anatomy().curves
    if answer.meant(LENGTH):
        for name in answer.meant(AREA):
            if not any(known[muscle].mechanics in curves for muscle in catalogue.area(name) or ()):
                yield name
