"""The words of a question about exercises, and what they can mean."""

from __future__ import annotations

from difflib import SequenceMatcher
from functools import lru_cache
from itertools import accumulate

from . import built, catalogue
from .mechanics import LENGTHS
from .names import fold, words
from .nearest import nearest

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from .known import Known

    Meaning = tuple[str, str]

AREA, ACTION, PATTERN, IMPLEMENT = "area", "joint action", "pattern", "implement"
KIND, STANCE, LEVEL, SIDES, LENGTH, NAME = "kind", "stance", "level", "sides", "length", "name"
MAIN, ASSISTING = "main", "assisting"
ONE_SIDE, BOTH_SIDES = "one side at a time", "both sides together"

FIELD_WORDS = {
    IMPLEMENT: catalogue.IMPLEMENTS,
    KIND: catalogue.KINDS,
    STANCE: catalogue.STANCES,
    LEVEL: catalogue.LEVELS,
}
"""The words of the fields of an exercise that hold one word each."""

_ALIKE, _ALIKE_IN_FOUR = 0.8, 0.75

_SHORT = 5
"""Letters up to which a misspelt word must begin like the word that it is read as."""

MOST_WORDS = 24
LONGEST_PHRASE = 7
MOST_OFFERED = 3

#: Other words that coaches use for the catalogue's; common practice, no source.
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
    "cardio": ((KIND, "endurance"),),
    "conditioning": ((KIND, "endurance"),),
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

FILLERS = frozenset(
    words(
        "a all an and any at exercise exercises for from in length lift lifts muscle muscles of on or that"
        " the to train trains using which with work works"
    )
)
BREAKS = str.maketrans({**dict.fromkeys(',;:/()[]"', " "), **dict.fromkeys("‐‑‒–—−", "-")})

#: Words of these kinds may also be part of an exercise's name: a "rope pushdown" is done on a cable.
_ALSO_IN_NAMES = (PATTERN, IMPLEMENT, KIND, STANCE)
#: Words of these kinds keep their own meaning, even if the phrase round them is part of a name.
_SAY_ENOUGH = (IMPLEMENT, KIND, STANCE, LEVEL, SIDES)


class QueryPart:
    """How some of the words were read.

    ``words`` are the words as asked, ``read_as`` the words after correction ("" if nothing was corrected).
    ``meanings`` are pairs of (kind, name); an exercise must meet any one of them.
    """

    __slots__ = ("meanings", "read_as", "words")

    def __init__(self, words: str, read_as: str, meanings: tuple[Meaning, ...]) -> None:
        self.words = words
        self.read_as = read_as
        self.meanings = meanings


class Token:
    """One word: as ``typed``, as ``taken`` after correction, and the ``key`` by which it is compared."""

    __slots__ = ("key", "taken", "typed")

    def __init__(self, typed: str, taken: str) -> None:
        self.typed = typed
        self.taken = taken
        self.key = fold(taken)


class Vocabulary:
    """Everything that words can mean.

    ``meanings`` is {folded phrase: its meanings}. ``words`` is {folded word: how it is written} for all words
    that occur anywhere. The names of all exercises can be searched for any run of words in them.
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
        self._names = [list(map(WordRun, (one.name, *one.aliases))) for one in known.exercises()]
        for runs in self._names:
            for run in runs:
                for key, word in zip(run.keys, run.words, strict=True):
                    self.words.setdefault(key, word)
        self._all = "\n".join(run.text for runs in self._names for run in runs)

    def knows(self, key: str) -> bool:
        """Whether a folded word occurs anywhere, also if it is two words run together."""
        return key in self.words or key in self.meanings or self.in_names(key)

    def in_names(self, key: str) -> bool:
        """Whether any name or alias holds this run of words."""
        return key in self._all and any(run.holds(key) for runs in self._names for run in runs)

    def rows_named(self, key: str) -> dict[int, bool]:
        """Rows of the exercises with this run of words in the name (True) or only in an alias (False)."""
        found = {}
        for row, runs in enumerate(self._names):
            if any(run.holds(key) for run in runs):
                found[row] = runs[0].holds(key)
        return found

    def spelling(self, word: str) -> str | None:
        """The known word that a misspelt one most likely is, or None.

        Of two that are equally alike, a word of a phrase with a meaning wins over a word of a name.
        """
        key = fold(word)
        least = _ALIKE_IN_FOUR if len(key) == 4 else _ALIKE
        if len(key) < 4:
            return None
        best, found = (0.0, False), None
        for other, written in self.words.items():
            if abs(len(other) - len(key)) > 3 or (len(key) <= _SHORT and other[0] != key[0]):
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
        every = self.known.exercises()
        exercises = [(name, one.name) for one in every for name in (one.name, *one.aliases)]
        ranks = {one.name: catalogue.rarity(one) for one in every}
        return nearest(word, [*self._labels, *exercises], MOST_OFFERED, ranks)


class WordRun:
    """A name as folded words joined without spaces, and where words begin and end in it."""

    __slots__ = ("_ends", "keys", "text", "words")

    def __init__(self, name: str) -> None:
        self.words = words(name)
        self.keys = [fold(word) for word in self.words]
        self.text = "".join(self.keys)
        self._ends = (0, *accumulate(map(len, self.keys)))

    def holds(self, key: str) -> bool:
        """Whether the name holds this run of whole words, folded and joined."""
        start = self.text.find(key)
        while start >= 0:
            if start in self._ends and start + len(key) in self._ends:
                return True
            start = self.text.find(key, start + 1)
        return False


@lru_cache(maxsize=4)
def vocabulary_of(known: Known) -> Vocabulary:
    """The vocabulary of the exercises that may be named. It is built once."""
    return Vocabulary(known)


def phrases(known: Known) -> Iterator[tuple[str, tuple[Meaning, ...]]]:
    """Every phrase with a meaning of its own, and its meanings."""
    first = {muscles: name for name in reversed(catalogue.area_names()) if (muscles := catalogue.area(name))}
    for name in catalogue.area_names():
        yield name, ((AREA, name),)
    named = {fold(name) for name in catalogue.area_names()}
    for key, muscles in built.AREAS.items():
        if key not in named:
            yield key, ((AREA, first[muscles]),)
    for action in catalogue.actions():
        yield action, ((ACTION, action),)
    for pattern in dict.fromkeys(pattern for one in known.exercises() for pattern in one.patterns):
        yield pattern, ((PATTERN, pattern),)
    for field, values in FIELD_WORDS.items():
        for value in values:
            if value != "none":
                yield value, ((field, value),)
    for length in LENGTHS:
        yield length, ((LENGTH, length),)
    yield from OTHER_WORDS.items()


def spelled(typed: list[str], vocabulary: Vocabulary) -> tuple[list[Token], list[str]]:
    """The words after correction, and the words that mean nothing."""
    in_phrase = {
        index
        for size in range(2, LONGEST_PHRASE + 1)
        for start in range(len(typed) - size + 1)
        if fold(" ".join(typed[start : start + size])) in vocabulary.meanings
        for index in range(start, start + size)
    }
    tokens: list[Token] = []
    unknown: list[str] = []
    for index, word in enumerate(typed):
        if index in in_phrase or word in FILLERS or vocabulary.knows(fold(word)):
            tokens.append(Token(word, word))
        elif (known := vocabulary.spelling(word)) is not None:
            tokens.append(Token(word, known))
        else:
            unknown.append(word)
    return tokens, unknown


def whole_name(tokens: Sequence[Token], vocabulary: Vocabulary) -> QueryPart | None:
    """All words as the name of one exercise; None if they are no name, or a term of their own."""
    said = " ".join(token.taken for token in tokens)
    if fold(said) in vocabulary.meanings or vocabulary.known.listed(said) is None:
        return None
    return QueryPart(*_wording(tokens), ((NAME, said),))


def read_words(tokens: Sequence[Token], vocabulary: Vocabulary) -> tuple[list[QueryPart], list[Token]]:
    """The words as phrases, and the words that are left over.

    The longest phrase is read first, then the words before and after it.
    """
    for size in range(min(len(tokens), LONGEST_PHRASE), 0, -1):
        for start in range(len(tokens) - size + 1):
            phrase = tokens[start : start + size]
            if meanings := _meanings(phrase, vocabulary):
                before, left = read_words(tokens[:start], vocabulary)
                after, right = read_words(tokens[start + size :], vocabulary)
                return [*before, QueryPart(*_wording(phrase), meanings), *after], left + right
    return [], [token for token in tokens if token.taken not in FILLERS]


def _meanings(phrase: Sequence[Token], vocabulary: Vocabulary) -> tuple[Meaning, ...]:
    """What a phrase means: a term of its own, or a part of names; () if nothing.

    A part of names such as "leg curl" is read as a whole. In "cable row" each word is read by itself, because
    "cable" has a meaning of its own.
    """
    key = "".join(token.key for token in phrase)
    said = " ".join(token.taken for token in phrase)
    own = vocabulary.meanings.get(key, ())
    if own:
        in_names = own[0][0] in _ALSO_IN_NAMES and any(vocabulary.rows_named(key).values())
        return (*own, (NAME, said)) if in_names else own
    if phrase[0].taken in FILLERS or phrase[-1].taken in FILLERS or not vocabulary.in_names(key):
        return ()
    kinds = [vocabulary.meanings.get(token.key, ((NAME, ""),))[0][0] for token in phrase]
    whole = NAME in kinds or vocabulary.known.listed(said) is not None
    return ((NAME, said),) if whole and not any(kind in _SAY_ENOUGH for kind in kinds) else ()


def _wording(phrase: Sequence[Token]) -> tuple[str, str]:
    """A phrase as typed, and the phrase after correction ("" if nothing was corrected)."""
    typed = " ".join(token.typed for token in phrase)
    taken = " ".join(token.taken for token in phrase)
    return typed, "" if typed == taken else taken
