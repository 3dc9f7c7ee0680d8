"""Finds exercises by words: area, joint action, implement, length, kind, stance, level, pattern, name.

A pure function from words to an answer. The longest phrase is read first, so "triceps long head" is a muscle,
"triceps long" is triceps at long length and "leg press" is an exercise. Words are compared without regard to
case, hyphens, blanks and a plural s; a misspelt one is read as the nearest word that is known.
"""

from __future__ import annotations

from difflib import SequenceMatcher
from functools import lru_cache
from itertools import accumulate

from . import built, catalogue
from .known import CATALOGUE
from .mechanics import length_class
from .names import fold, words
from .nearest import nearest

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from .catalogue import Exercise
    from .known import Known

    Meaning = tuple[str, str]

AREA, ACTION, PATTERN, IMPLEMENT = "area", "joint action", "pattern", "implement"
KIND, STANCE, LEVEL, SIDES, LENGTH, NAME = "kind", "stance", "level", "sides", "length", "name"
DIRECT, INDIRECT, MAIN, ASSISTING = "direct", "indirect", "main", "assisting"
ONE_SIDE, BOTH_SIDES = "one side at a time", "both sides together"

MOST_WORDS = 24
LONGEST_PHRASE = 7
MOST_OFFERED = 3
EVERYWHERE = "whole body"

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
    "biceps femoris": ((AREA, "biceps femoris long head"), (AREA, "biceps femoris short head")),
    "medial hamstrings": ((AREA, "semitendinosus"), (AREA, "semimembranosus")),
    "inner hamstrings": ((AREA, "semitendinosus"), (AREA, "semimembranosus")),
    "vasti": tuple((AREA, f"vastus {which}") for which in ("lateralis", "medialis", "intermedius")),
    "vastus": tuple((AREA, f"vastus {which}") for which in ("lateralis", "medialis", "intermedius")),
    "VMO": ((AREA, "vastus medialis"),),
    "gluteus": ((AREA, "gluteals"),),
    "TFL": ((AREA, "tensor fasciae latae"),),
    "QL": ((AREA, "quadratus lumborum"),),
    "psoas": ((AREA, "psoas major"),),
    "piriformis": ((AREA, "deep hip rotators"),),
    "hinge": ((PATTERN, "hip hinge"),),
    "ankle plantarflexion": ((ACTION, "plantarflexion"),),
    "ankle dorsiflexion": ((ACTION, "dorsiflexion"),),
    "external rotation": ((ACTION, "shoulder external rotation"), (ACTION, "hip external rotation")),
    "internal rotation": ((ACTION, "shoulder internal rotation"), (ACTION, "hip internal rotation")),
    "retraction": ((ACTION, "scapular retraction"),),
    "protraction": ((ACTION, "scapular protraction"),),
}

_FILLERS = frozenset(
    words(
        "a all an and any at exercise exercises for from in length lift lifts muscle muscles of on or that"
        " the to train trains using which with work works"
    )
)
_BREAKS = str.maketrans({**dict.fromkeys(',;:/()[]"', " "), **dict.fromkeys("‐‑‒–—−", "-")})

#: A word of these may also stand in an exercise's name: "rope pushdown" is done on a cable.
_ALSO_IN_NAMES = (PATTERN, IMPLEMENT, KIND, STANCE)
#: An exercise has one of each of these, so two words of a kind mean either.
_EITHER = (PATTERN, IMPLEMENT, KIND, STANCE, LEVEL, SIDES, LENGTH)
#: Words of these keep their meaning within a part of a name.
_SAY_ENOUGH = (IMPLEMENT, KIND, STANCE, LEVEL, SIDES)

_LESS = (INDIRECT, ASSISTING)

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
    change over the lift in cm (negative where it shortens), None where that is not reckoned.
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
    ``muscles`` those of the area whose length counts; ``sure`` whether the length asked for is.
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

    ``unknown`` holds (word, nearest names) for words that mean nothing here. ``found`` are the exercises that
    fit, best first; where the words name one exercise, it alone, and ``others`` are names of those that they
    might also mean. Where nothing fits, ``without`` says how many would (words left out, count), and
    ``unmeasured`` names areas of whose muscles no length is known.
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

    @property
    def everything(self) -> bool:
        """Whether no word asked for anything, so that the whole catalogue is the answer."""
        return not self.readings and not self.unknown

    def meant(self, kind: str) -> tuple[str, ...]:
        """Names of everything of a kind that the words mean, in their order."""
        found = [name for one in self.readings for what, name in one.meanings if what == kind]
        return tuple(dict.fromkeys(found))


def search(asked: str, known: Known = CATALOGUE) -> Answer:
    """The answer to some words; without a word, all exercises that are known, in their order.

    Raises ValueError, in plain words, for more than ``MOST_WORDS`` words.
    """
    answer = Answer(asked.strip())
    typed = words(asked.translate(_BREAKS))
    if len(typed) > MOST_WORDS:
        raise ValueError(f"{len(typed)} words are too many to search for: {MOST_WORDS} at most")
    if all(word in _FILLERS for word in typed):
        answer.found = tuple(map(Match, known.exercises()))
        return answer
    vocabulary = _vocabulary(known)
    tokens, unknown = _spelled(typed, vocabulary)
    named = None if unknown else _whole_name(tokens, vocabulary)
    readings, left = ([named], []) if named else _read(tokens, vocabulary)
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

    def __init__(self, known: Known) -> None:
        self.known = known
        self.meanings: dict[str, tuple[Meaning, ...]] = {}
        self.words: dict[str, str] = {}
        self._own: set[str] = set()
        self._labels: list[tuple[str, str]] = []
        for phrase, meanings in phrases(known):
            key = fold(phrase)
            self.meanings[key] = tuple(dict.fromkeys((*self.meanings.get(key, ()), *meanings)))
            self._labels.append((phrase, meanings[0][1]))
            for word in words(phrase):
                self.words.setdefault(fold(word), word)
        self._own.update(self.words)
        self._names = [list(map(_Run, (one.name, *one.aliases))) for one in known.exercises()]
        for runs in self._names:
            for run in runs:
                for key, word in zip(run.keys, run.words, strict=True):
                    self.words.setdefault(key, word)
        self._all = "\n".join(run.text for runs in self._names for run in runs)

    def knows(self, key: str) -> bool:
        """Whether a folded word stands anywhere, be it two words run together."""
        return key in self.words or key in self.meanings or self.in_names(key)

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
        exercises = [(name, one.name) for one in self.known.exercises() for name in (one.name, *one.aliases)]
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


@lru_cache(maxsize=4)
def _vocabulary(known: Known) -> _Vocabulary:
    return _Vocabulary(known)


def phrases(known: Known) -> Iterator[tuple[str, tuple[Meaning, ...]]]:
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
    every = known.exercises()
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


def _whole_name(tokens: Sequence[_Token], vocabulary: _Vocabulary) -> Reading | None:
    """All words as the name of one exercise, unless they are a term of their own."""
    said = " ".join(token.taken for token in tokens)
    if fold(said) in vocabulary.meanings or vocabulary.known.exercise(said) is None:
        return None
    return Reading(*_wording(tokens), ((NAME, said),))


def _read(tokens: Sequence[_Token], vocabulary: _Vocabulary) -> tuple[list[Reading], list[_Token]]:
    """The words in phrases, the longest phrase first, then what stands before and after it; words left."""
    for size in range(min(len(tokens), LONGEST_PHRASE), 0, -1):
        for start in range(len(tokens) - size + 1):
            phrase = tokens[start : start + size]
            if meanings := _meanings(phrase, vocabulary):
                before, left = _read(tokens[:start], vocabulary)
                after, right = _read(tokens[start + size :], vocabulary)
                return [*before, Reading(*_wording(phrase), meanings), *after], left + right
    return [], [token for token in tokens if token.taken not in _FILLERS]


def _meanings(phrase: Sequence[_Token], vocabulary: _Vocabulary) -> tuple[Meaning, ...]:
    """What a phrase means: a term of its own, or a part of names; () if nothing.

    A part of names stays whole as "leg curl" does; in "cable row" each word says enough by itself.
    """
    key = "".join(token.key for token in phrase)
    said = " ".join(token.taken for token in phrase)
    own = vocabulary.meanings.get(key, ())
    if own:
        in_names = own[0][0] in _ALSO_IN_NAMES and any(vocabulary.rows_named(key).values())
        return (*own, (NAME, said)) if in_names else own
    if phrase[0].taken in _FILLERS or phrase[-1].taken in _FILLERS or not vocabulary.in_names(key):
        return ()
    kinds = [vocabulary.meanings.get(token.key, ((NAME, ""),))[0][0] for token in phrase]
    whole = NAME in kinds or vocabulary.known.exercise(said) is not None
    return ((NAME, said),) if whole and not any(kind in _SAY_ENOUGH for kind in kinds) else ()


def _wording(phrase: Sequence[_Token]) -> tuple[str, str]:
    """A phrase as typed, and as taken where that differs."""
    typed = " ".join(token.typed for token in phrase)
    taken = " ".join(token.taken for token in phrase)
    return typed, "" if typed == taken else taken


class _Wanted:
    """What an exercise must meet: every demand, by any of its meanings, at one of the lengths if any."""

    def __init__(self, readings: Iterable[Reading], vocabulary: _Vocabulary) -> None:
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
        """The exercises that fit, best first: the one asked for by name, then direct before indirect, a sure
        length before one that may be another, words of the name before those of an alias, then by name.
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
        """The weakest role of the exercise in any demand, and the muscles that count; None if it fails."""
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
    """What an exercise gives to an area, at one of the lengths if any, and the muscles that tell it."""
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
    """The muscles whose length says at what length an area works.

    Those that have a place in their own range, but where a muscle over two joints is trained, the one-joint
    muscles of its group go by it: the short head of biceps femoris has the same length in a seated curl as in
    a lying one, the long head has not (maeo-2021).
    """
    known = catalogue.muscles()
    placed = [muscle for muscle in muscles if muscle in exercise.positions]
    leading = {group for muscle in placed if _joints(muscle) > 1 for group in known[muscle].groups}
    return [one for one in placed if _joints(one) > 1 or leading.isdisjoint(known[one].groups)]


def _joints(muscle: str) -> int:
    """Over how many joints the length curve of a muscle goes."""
    anatomy = catalogue.anatomy()
    return len(anatomy.curves[anatomy.muscles[muscle].mechanics].angles)


def by_hand(exercise: Exercise, muscle: str) -> bool:
    """Whether the credit of a muscle is stated by hand, for itself or for a group that it belongs to."""
    return any(muscle in catalogue.groups.get(who, (who,)) for who in exercise.stated)


def _without(readings: Sequence[Reading], vocabulary: _Vocabulary) -> Iterator[tuple[str, int]]:
    """How many exercises would fit if one of the phrases were left out."""
    for index, one in enumerate(readings):
        rest = [other for place, other in enumerate(readings) if place != index]
        if rest and (count := len(_Wanted(rest, vocabulary).matches())):
            yield one.words, count


def _unmeasured(answer: Answer) -> Iterator[str]:
    """Areas asked for at a length although no muscle of theirs has a length curve."""
    known = catalogue.muscles()
    curves = catalogue.anatomy().curves
    if answer.meant(LENGTH):
        for name in answer.meant(AREA):
            if not any(known[muscle].mechanics in curves for muscle in catalogue.area(name) or ()):
                yield name
