"""Finds exercises by words: area, joint action, implement, length, kind, stance, level, pattern, name.

A pure function from words to an answer. The longest phrase is read first, so "triceps long head" is a muscle,
"triceps long" is triceps at long length and "leg press" is an exercise. Words are compared without regard to
case, hyphens, blanks and a plural s; a misspelt one is read as the nearest word that is known.
"""

from __future__ import annotations

from difflib import SequenceMatcher
from itertools import accumulate

from . import built, catalogue
from .mechanics import length_class
from .names import fold, words
from .nearest import nearest

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from .catalogue import Exercise

    Meaning = tuple[str, str]

AREA, ACTION, PATTERN, IMPLEMENT = "area", "joint action", "pattern", "implement"
KIND, STANCE, LEVEL, SIDES, LENGTH, NAME = "kind", "stance", "level", "sides", "length", "name"
DIRECT, INDIRECT, MAIN, ASSISTING = "direct", "indirect", "main", "assisting"
ONE_SIDE, BOTH_SIDES = "one side at a time", "both sides together"

MOST_WORDS = 24
LONGEST_PHRASE = 6
MOST_OFFERED = 3

#: What coaches write for a word of the catalogue; common practice, no source.
OTHER_WORDS: dict[str, tuple[Meaning, ...]] = {
    "at long length": ((LENGTH, "long"),),
    "long length": ((LENGTH, "long"),),
    "lengthened": ((LENGTH, "long"),),
    "stretched": ((LENGTH, "long"),),
    "at middle length": ((LENGTH, "middle"),),
    "middle length": ((LENGTH, "middle"),),
    "mid length": ((LENGTH, "middle"),),
    "at short length": ((LENGTH, "short"),),
    "short length": ((LENGTH, "short"),),
    "shortened": ((LENGTH, "short"),),
    "BB": ((IMPLEMENT, "barbell"),),
    "DB": ((IMPLEMENT, "dumbbell"),),
    "KB": ((IMPLEMENT, "kettlebell"),),
    "BW": ((IMPLEMENT, "bodyweight"),),
    "med ball": ((IMPLEMENT, "medicine ball"),),
    "hex bar": ((IMPLEMENT, "trap bar"),),
    "resistance band": ((IMPLEMENT, "band"),),
    "free weights": tuple((IMPLEMENT, name) for name in ("barbell", "dumbbell", "kettlebell", "plate")),
    "no equipment": ((IMPLEMENT, "bodyweight"), (IMPLEMENT, "none")),
    "static": ((KIND, "isometric"),),
    "plyo": ((KIND, "plyometric"),),
    "explosive": ((KIND, "ballistic"), (KIND, "plyometric")),
    "beginner": ((LEVEL, "novice"),),
    "expert": ((LEVEL, "advanced"),),
    "sitting": ((STANCE, "seated"),),
    "supine": ((STANCE, "lying"),),
    "face down": ((STANCE, "prone"),),
    "one leg": ((STANCE, "single leg"),),
    "all fours": ((STANCE, "quadruped"),),
    "unilateral": ((SIDES, ONE_SIDE),),
    "one side": ((SIDES, ONE_SIDE),),
    "bilateral": ((SIDES, BOTH_SIDES),),
    "both sides": ((SIDES, BOTH_SIDES),),
    "hinge": ((PATTERN, "hip hinge"),),
    "ankle plantarflexion": ((ACTION, "plantarflexion"),),
    "ankle dorsiflexion": ((ACTION, "dorsiflexion"),),
    "external rotation": ((ACTION, "shoulder external rotation"), (ACTION, "hip external rotation")),
    "internal rotation": ((ACTION, "shoulder internal rotation"), (ACTION, "hip internal rotation")),
    "retraction": ((ACTION, "scapular retraction"),),
    "protraction": ((ACTION, "scapular protraction"),),
}

_FILLERS = frozenset(
    "a all an and any at exercise exercises for from in length lift lifts muscle muscles of on or that the to"
    " train trains using which with work works".split()
)
_BREAKS = str.maketrans({**dict.fromkeys(',;:/()[]"', " "), **dict.fromkeys("‐‑‒–—−", "-")})

#: A word of these may also stand in an exercise's name: "rope pushdown" is done on a cable.
_ALSO_IN_NAMES = (PATTERN, IMPLEMENT, KIND, STANCE)
#: An exercise has one of each of these, so two words of a kind mean either.
_EITHER = (PATTERN, IMPLEMENT, KIND, STANCE, LEVEL, SIDES, LENGTH)
#: Within a phrase that is only part of a name, these words keep a meaning of their own.
_NEVER_GLUED = (IMPLEMENT, KIND, STANCE, LEVEL, SIDES)

_ALIKE, _ALIKE_IN_FOUR = 0.8, 0.75


class Reading:
    """How some of the words were read: ``words`` as asked, ``read_as`` as taken ("" if just so), and the
    ``meanings``, (kind, name) each, any of which will do.
    """

    __slots__ = ("meanings", "read_as", "words")

    def __init__(self, words: str, read_as: str, meanings: tuple[Meaning, ...]) -> None:
        self.words = words
        self.read_as = read_as
        self.meanings = meanings


class Worked:
    """How a muscle works in an exercise: ``credit`` direct or indirect, ``place`` its mean place in its own
    range (0 shortest, 1 longest), ``length`` the class of that and whether it is ``sure``, ``net`` its length
    change over the lift in cm (negative where it shortens), None where it is held.
    """

    __slots__ = ("credit", "length", "muscle", "net", "place", "sure")

    def __init__(self, muscle: str, credit: str, place: float, net: float | None) -> None:
        self.muscle = muscle
        self.credit = credit
        self.place = place
        self.length, self.sure = length_class(place)
        self.net = net


class Match:
    """An exercise that fits. ``exact`` where it was asked for by name or alias; ``role`` what it gives to the
    area (direct, indirect) or how it loads the joint action (main, assisting), "" if neither was asked;
    ``worked`` the muscles of the area whose length counts; ``sure`` whether the length asked for is.
    """

    __slots__ = ("exact", "exercise", "role", "sure", "worked")

    def __init__(
        self, exercise: Exercise, exact: bool, role: str, worked: tuple[Worked, ...], sure: bool
    ) -> None:
        self.exercise = exercise
        self.exact = exact
        self.role = role
        self.worked = worked
        self.sure = sure


class Answer:
    """What was understood and what was found.

    ``unknown`` holds (word, nearest names) for words that mean nothing here. ``found`` are the exercises that
    fit, best first; if they were asked for by one exercise's name, it alone, and ``others`` names those that
    the words might also mean. Where nothing fits, ``without`` says how many would (words left out, count),
    and ``unmeasured`` names areas of whose muscles no length is known.
    """

    __slots__ = ("asked", "found", "others", "readings", "unknown", "unmeasured", "without")

    def __init__(self, asked: str) -> None:
        self.asked = asked
        self.readings: tuple[Reading, ...] = ()
        self.unknown: tuple[tuple[str, tuple[str, ...]], ...] = ()
        self.found: tuple[Match, ...] = ()
        self.others: tuple[str, ...] = ()
        self.without: tuple[tuple[str, int], ...] = ()
        self.unmeasured: tuple[str, ...] = ()

    def meant(self, kind: str) -> tuple[str, ...]:
        """Names of everything of a kind that the words mean, in their order."""
        found = [name for one in self.readings for what, name in one.meanings if what == kind]
        return tuple(dict.fromkeys(found))


def search(asked: str) -> Answer:
    """The answer to some words; without a word, the whole catalogue in its order.

    Raises ValueError, in plain words, for more than ``MOST_WORDS`` words.
    """
    answer = Answer(asked.strip())
    typed = words(asked.translate(_BREAKS))
    if len(typed) > MOST_WORDS:
        raise ValueError(f"{len(typed)} words are more than can be searched for at once, {MOST_WORDS}")
    if not typed:
        answer.found = tuple(Match(one, False, "", (), True) for one in catalogue.exercises())
        return answer
    vocabulary = _vocabulary()
    tokens, unknown = _spelled(typed, vocabulary)
    answer.unknown = tuple((word, tuple(vocabulary.near(word))) for word in unknown)
    answer.readings = tuple(_readings(tokens, vocabulary))
    if not answer.readings:
        return answer
    exact = None if unknown else catalogue.exercise("".join(token.key for token in tokens))
    found = _matches(answer.readings, exact, vocabulary)
    if exact and (_is_name(exact, tokens) or not vocabulary.meanings.get(fold(_said(tokens)))):
        answer.others = tuple(one.exercise.name for one in found if not one.exact)
        found = [one for one in found if one.exact]
    answer.found = tuple(found)
    if not found:
        answer.without = tuple(_without(answer.readings, vocabulary))
        answer.unmeasured = tuple(_unmeasured(answer))
    return answer


class _Token:
    """One word: as ``typed``, as it is ``taken``, and the ``key`` by which it is compared."""

    __slots__ = ("key", "taken", "typed")

    def __init__(self, typed: str, taken: str) -> None:
        self.typed = typed
        self.taken = taken
        self.key = fold(taken)


class _Vocabulary:
    """All that words can mean: ``meanings`` by key, ``words`` {folded word: how it is written} that occur
    anywhere, and the names of all exercises, searchable by any run of words in them.
    """

    def __init__(self) -> None:
        self.meanings: dict[str, tuple[Meaning, ...]] = {}
        self.words: dict[str, str] = {}
        self._own: set[str] = set()
        self._labels: list[tuple[str, str]] = []
        for phrase, meanings in _phrases():
            key = fold(phrase)
            self.meanings[key] = tuple(dict.fromkeys((*self.meanings.get(key, ()), *meanings)))
            self._labels.append((phrase, meanings[0][1]))
            for word in words(phrase):
                self.words.setdefault(fold(word), word)
        self._own.update(self.words)
        self._names = [list(map(_Run, (one.name, *one.aliases))) for one in catalogue.exercises()]
        for runs in self._names:
            for run in runs:
                for key, word in zip(run.keys, run.words, strict=True):
                    self.words.setdefault(key, word)
        self._all = "\n".join(run.text for runs in self._names for run in runs)

    def in_names(self, key: str) -> bool:
        """Whether some name or alias holds this run of words."""
        return key in self._all and any(run.holds(key) for runs in self._names for run in runs)

    def rows_named(self, key: str) -> dict[int, bool]:
        """Rows of the exercises with this run of words in a name or alias: whether it is in the name."""
        found = {}
        for row, runs in enumerate(self._names):
            if any(run.holds(key) for run in runs):
                found[row] = runs[0].holds(key)
        return found

    def spelling(self, word: str) -> str | None:
        """The known word that a misspelt one most likely is, or None; own terms before words of names."""
        key = fold(word)
        least = _ALIKE_IN_FOUR if len(key) == 4 else _ALIKE
        if len(key) < 4:
            return None
        best, found = (0.0, False), None
        for other, written in self.words.items():
            if abs(len(other) - len(key)) > 3 or (least == _ALIKE_IN_FOUR and other[0] != key[0]):
                continue
            matcher = SequenceMatcher(None, other, key)
            if matcher.quick_ratio() < least:
                continue
            score = (matcher.ratio(), other in self._own)
            if score[0] >= least and score > best:
                best, found = score, written
        return found

    def near(self, word: str) -> list[str]:
        """Names of areas, actions, implements and exercises nearest to a word that is none."""
        exercises = [(name, one.name) for one in catalogue.exercises() for name in (one.name, *one.aliases)]
        return nearest(word, [*self._labels, *exercises], MOST_OFFERED)


class _Run:
    """A name as folded words without blanks, and where words begin and end in it."""

    __slots__ = ("_ends", "keys", "text", "words")

    def __init__(self, name: str) -> None:
        self.words = words(name)
        self.keys = [fold(word) for word in self.words]
        self.text = "".join(self.keys)
        self._ends = (0, *accumulate(map(len, self.keys)))

    def holds(self, key: str) -> bool:
        start = self.text.find(key)
        while start >= 0:
            if start in self._ends and start + len(key) in self._ends:
                return True
            start = self.text.find(key, start + 1)
        return False


_made: list[_Vocabulary] = []


def _vocabulary() -> _Vocabulary:
    if not _made:
        _made.append(_Vocabulary())
    return _made[0]


def _phrases() -> Iterator[tuple[str, tuple[Meaning, ...]]]:
    """Every phrase with a meaning of its own."""
    first = {muscles: name for name in reversed(catalogue.area_names()) if (muscles := catalogue.area(name))}
    for name in catalogue.area_names():
        yield name, ((AREA, name),)
    named = {fold(name) for name in catalogue.area_names()}
    for key, muscles in built.AREAS.items():
        if key not in named:
            yield key, ((AREA, first[muscles]),)
    for action in catalogue.actions():
        yield action, ((ACTION, action),)
    every = catalogue.exercises()
    for pattern in dict.fromkeys(pattern for one in every for pattern in one.patterns):
        yield pattern, ((PATTERN, pattern),)
    for field in (IMPLEMENT, KIND, STANCE, LEVEL):
        for value in dict.fromkeys(getattr(one, field) for one in every):
            if value != "none":
                yield value, ((field, value),)
    for length in ("long", "middle", "short"):
        yield length, ((LENGTH, length),)
    yield from OTHER_WORDS.items()


def _spelled(typed: list[str], vocabulary: _Vocabulary) -> tuple[list[_Token], list[str]]:
    """The words as they are taken, and those that mean nothing."""
    in_phrase = {
        index
        for size in range(2, LONGEST_PHRASE + 1)
        for start in range(len(typed) - size + 1)
        if fold(" ".join(typed[start : start + size])) in vocabulary.meanings
        for index in range(start, start + size)
    }
    tokens: list[_Token] = []
    unknown: list[str] = []
    for index, word in enumerate(typed):
        if index in in_phrase or word in _FILLERS or vocabulary.knows(fold(word)):
            tokens.append(_Token(word, word))
        elif (known := vocabulary.spelling(word)) is not None:
            tokens.append(_Token(word, known))
        else:
            unknown.append(word)
    return tokens, unknown


def _readings(tokens: Sequence[_Token], vocabulary: _Vocabulary) -> Iterator[Reading]:
    """The words in phrases, the longest phrase first, then what stands before and after it."""
    for size in range(min(len(tokens), LONGEST_PHRASE), 0, -1):
        for start in range(len(tokens) - size + 1):
            phrase = tokens[start : start + size]
            meanings = _meanings(phrase, vocabulary)
            if meanings:
                yield from _readings(tokens[:start], vocabulary)
                yield Reading(*_wording(phrase), meanings)
                yield from _readings(tokens[start + size :], vocabulary)
                return


def _meanings(phrase: Sequence[_Token], vocabulary: _Vocabulary) -> tuple[Meaning, ...]:
    """What a phrase means: a term of its own, an exercise's name, or a part of names; () if nothing."""
    key = _key(phrase)
    own = vocabulary.meanings.get(key, ())
    said = " ".join(token.taken for token in phrase)
    if own:
        in_names = own[0][0] in _ALSO_IN_NAMES and vocabulary.in_names(key)
        return (*own, (NAME, said)) if in_names else own
    if all(token.taken in _FILLERS for token in phrase):
        return ()
    if catalogue.exercise(said) or (vocabulary.in_names(key) and _is_glued(phrase, vocabulary)):
        return ((NAME, said),)
    return ()


def _is_glued(phrase: Sequence[_Token], vocabulary: _Vocabulary) -> bool:
    """Whether a part of a name stays whole: "leg curl" does; in "cable row" each word says enough."""
    kinds = [vocabulary.meanings.get(token.key, ((NAME, ""),))[0][0] for token in phrase]
    return NAME in kinds and not any(kind in _NEVER_GLUED for kind in kinds)


def _key(phrase: Sequence[_Token]) -> str:
    return "".join(token.key for token in phrase)


def _wording(phrase: Sequence[_Token]) -> tuple[str, str]:
    """A phrase as typed, and as taken where that differs."""
    typed, taken = (" ".join(getattr(token, name) for token in phrase) for name in ("typed", "taken"))
    return typed, "" if typed == taken else taken


def _names_first(exact: Exercise, key: str, vocabulary: _Vocabulary) -> bool:
    """Whether words mean one exercise before all: they are its name, or an alias that means nothing else."""
    return fold(exact.name) == key or key not in vocabulary.meanings


def _matches(
    readings: Sequence[Reading], vocabulary: _Vocabulary, exact: Exercise | None = None
) -> list[Match]:
    """The exercises that fit all readings, best first: the one asked for by name, then direct before
    indirect, a sure length before one that may be another, a name before an alias, then by name.
    """
    every = catalogue.exercises()
    named = {
        name: vocabulary.rows_named(fold(name))
        for one in readings
        for kind, name in one.meanings
        if kind == NAME
    }
    lengths = {name for one in readings for kind, name in one.meanings if kind == LENGTH}
    demands = _demands(readings)
    found = []
    for row, exercise in enumerate(every):
        in_name = [rows[row] for rows in named.values() if row in rows]
        roles: list[str] = []
        worked: list[Worked] = []
        here = {(NAME, name) for name, rows in named.items() if row in rows}
        if all(_meets(exercise, demand, here, lengths, roles, worked) for demand in demands):
            ...
    return found
