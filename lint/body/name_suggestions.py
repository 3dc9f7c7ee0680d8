"""Finds the exercises that an unknown name may mean. None is better than a wild one.

First comes the name with its misspelt words put right, then the exercises whose words all stand in it, then
those that share most of its words.
"""

from __future__ import annotations

from difflib import SequenceMatcher
from functools import lru_cache
from itertools import pairwise, product

from . import built_names, catalogue
from .name_asides import ties
from .name_bags import (
    DIRECTION,
    FREE,
    LIFT,
    MOVEMENT,
    SHORT,
    THING,
    VARIANT,
    Bag,
    bag_of,
    kind_of,
    names_of,
    one_letter_off,
)
from .name_reading import MOST_LETTERS, MOST_WORDS
from .name_tokens import FILLER, JOINING, WORD, tokens_of
from .no_lift_words import is_word
from .rows import lines_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

    from .catalogue import Exercise
    from .name_tokens import NameToken

    Lookup = Callable[[str], Exercise | None]

LIKE = 0.8
"""Likeness from which a word counts as another one misspelt, 0 to 1."""

VOWELS = frozenset("aeiouy")
MOST_REPAIRS, MOST_WRONG = 3, 3
"""Spellings that are tried for a word, and misspelt words that a name may have."""

OPPOSED = (
    ("flexion", "extension"),
    ("curl", "extension"),
    ("abduction", "adduction"),
    ("internal", "external"),
    ("pronation", "supination"),
    ("inversion", "eversion"),
    ("dorsiflexion", "plantarflexion"),
    ("push", "pull"),
    ("press", "row"),
    ("push-up", "pull-up"),
    ("pushdown", "pulldown"),
)
"""Words for opposite movements: one is never offered for the other."""


ALIKE = {"toss": ("throw", "pass"), "fling": ("throw",), "hurl": ("throw",), "lob": ("throw",)}
"""Other words for a movement, for names of which nothing else is known."""

GEAR = {
    "bar": ("barbell",),
    "weight": ("dumbbell", "plate"),
    "ball": ("medicine ball", "stability ball"),
}
"""Loose words for gear, and what they may stand for (common practice, no source)."""


class Suggestions:
    """Names of exercises that an unknown name may mean, the likeliest first.

    ``slip`` is whether the first of them is surely meant, because only the spelling is wrong. ``lifts`` is
    whether the name holds several lifts, which are then the names.
    """

    __slots__ = ("lifts", "names", "slip")

    def __init__(self, names: tuple[str, ...], *, slip: bool = False, lifts: bool = False) -> None:
        self.names = names
        self.slip = slip
        self.lifts = lifts


def suggestions(name: str, find: Lookup, own: Sequence[Bag], most: int = 3, level: str = "") -> Suggestions:
    """Up to ``most`` exercises for an unknown name, none above an athlete's ``level``.

    ``find`` gives the exercise that a name means, ``own`` are names that a team adds.
    """
    tokens = tokens_of(name, built_names.SPELLINGS)[:MOST_WORDS] if len(name) <= MOST_LETTERS else []
    if not tokens:
        return Suggestions(())
    right = list(dict.fromkeys(_spelled_right(name, tokens, find)))
    if not right:
        right = [
            one
            for whole in _joined(name, tokens)
            for one in _spelled_right(whole, tokens_of(whole, built_names.SPELLINGS), find)
        ]
    if right:
        return Suggestions(tuple(right[:most]), slip=len(right) == 1)
    lifts = _several(tokens)
    if lifts:
        return Suggestions(tuple(lifts), lifts=True)
    named = _areas_named(tokens)
    allowed: list[str] = []
    for one in _sharing(tokens, own):
        exercise = find(one) if len(allowed) < most else None
        if exercise is not None and _is_within(level, exercise) and _trains(exercise, named):
            allowed.append(one)
    allowed += _otherwise(name, tokens, find, own, level)
    return Suggestions(tuple(dict.fromkeys(allowed))[:most])


def _otherwise(
    name: str, tokens: list[NameToken], find: Lookup, own: Sequence[Bag], level: str
) -> Iterator[str]:
    """What a name may mean with another word for its movement, else for its gear: a toss may be a throw."""
    alike = GEAR if ALIKE.keys().isdisjoint(token.word for token in tokens) else ALIKE
    for token in tokens:
        for word in alike.get(token.word, ()):
            other = f"{name[: token.start]}{word}{name[token.end :]}"
            exercise = find(other)
            if exercise is not None and _is_within(level, exercise):
                yield exercise.name
            elif exercise is None:
                again = tokens_of(other, built_names.SPELLINGS)
                yield from (one for one in list(_sharing(again, own))[:1] if find(one) is not None)


def _spelled_right(name: str, tokens: list[NameToken], find: Lookup) -> Iterator[str]:
    """The exercises that the name means with its unknown words spelled like known ones."""
    wrong = [token for token in tokens if token.kind == WORD and not kind_of(token.word)]
    if not 0 < len(wrong) <= MOST_WRONG:
        return
    repairs = [known_spellings(token.word) for token in wrong]
    for words in product(*repairs):
        text, end = "", 0
        for token, word in zip(wrong, words, strict=True):
            text += name[end : token.start] + word
            end = token.end
        exercise = find(text + name[end:])
        if exercise is not None and _is_called(exercise, words):
            yield exercise.name


def _joined(name: str, tokens: list[NameToken]) -> Iterator[str]:
    """The name with an unknown word written in one with the word before it: "lat pulldonw"."""
    for before, token in pairwise(tokens):
        wrong = token.kind == before.kind == WORD and not kind_of(token.word) and len(token.word) >= SHORT - 1
        if wrong and before.part == token.part and before.end < token.start:
            yield name[: before.end] + name[token.start :]


def _is_called(exercise: Exercise, words: Sequence[str]) -> bool:
    """Whether one of the words is a word of a name of an exercise."""
    called = {part for one in names_of(exercise) for word in one for part in (word, *word.split("-"))}
    meant = {one for word in words for one in built_names.SPELLINGS.get(word, (word,))}
    return not called.isdisjoint(meant)


def may_mean(name: str, find: Lookup, own: Sequence[Bag]) -> list[Exercise] | None:
    """The exercises that share the telling words of an unknown name, or None if it has none: then it may be
    anything.

    A slip means what it is a slip of, and several lifts mean each of them. Else these are the exercises that
    share the most of its movements, parts of the body and other words of the catalogue.
    """
    suggested = suggestions(name, find, own)
    if suggested.slip or suggested.lifts:
        return [one for one in map(find, suggested.names) if one is not None]
    tokens = tokens_of(name[:MOST_LETTERS], built_names.SPELLINGS)
    words = {_likeliest(token.word) for token in tokens if token.kind == WORD}
    telling = {word for word in words if kind_of(word) in (MOVEMENT, LIFT, THING, VARIANT)}
    if not telling:
        return None
    bags = [*_with_most(telling), *own]
    most = max((len(bag.words & telling) for bag in bags), default=0)
    named = {bag.exercise for bag in bags if len(bag.words & telling) == most}
    return [one for one in map(find, sorted(named)) if one is not None]


@lru_cache(maxsize=500)
def known_spellings(word: str) -> tuple[str, ...]:
    """Known words that a word may be a misspelling of, the likeliest first. None for a word of a sport."""
    if len(word) < SHORT - 1:
        return ()
    found = []
    letters = frozenset(word)
    lengths = range(len(word) - 2, len(word) + 3)
    for other, others in [pair for length in lengths for pair in _words_of_length().get(length, ())]:
        if VOWELS.isdisjoint(others):  # an abbreviation, which nobody misspells
            continue
        if len(letters ^ others) > max(2, (1 - LIKE) * (len(word) + len(other))):  # too few letters in common
            continue
        if len(word) <= SHORT and kind_of(other) in (JOINING, FILLER, DIRECTION):
            continue
        near = one_letter_off(word, other) and (len(word) > SHORT or word[0] == other[0])
        likeness = SequenceMatcher(None, word, other)
        if near or (len(word) > SHORT and likeness.quick_ratio() >= LIKE and likeness.ratio() >= LIKE):
            turned = sorted(other) == sorted(word)  # the same letters in another order
            found.append((not turned, not near, other[0] != word[0], -likeness.ratio(), other))
    return () if found and is_word(word) else tuple(other for *_, other in sorted(found)[:MOST_REPAIRS])


@lru_cache(maxsize=1)
def _words_of_length() -> dict[int, list[tuple[str, frozenset[str]]]]:
    """The known words by their number of letters, each with its letters."""
    found: dict[int, list[tuple[str, frozenset[str]]]] = {}
    for word in sorted({*built_names.KINDS, *built_names.SPELLINGS}):
        if word.isalpha():
            found.setdefault(len(word), []).append((word, frozenset(word)))
    return found


def _several(tokens: list[NameToken]) -> list[str]:
    """The lifts of a name that names several, in its order; none where it names one or none.

    Each has a movement of its own, and the next begins where the last one ends.
    """
    found: list[str] = []
    start = 0
    while start < len(tokens):
        for end in range(len(tokens), start, -1):
            bag = bag_of(frozenset(token.word for token in tokens[start:end]))
            if bag is not None and any(kind_of(word) in (MOVEMENT, THING) for word in bag.words):
                found.append(bag.exercise)
                start = end
                break
        else:
            start += 1
    return list(dict.fromkeys(found)) if len(found) > 1 else []


def _sharing(tokens: list[NameToken], own: Sequence[Bag]) -> list[str]:
    """The exercises whose names share the first movement of the name and more than half of what it says.

    Names whose words all stand in it come first, then those that share most of it; of those as near the more
    common. A name is passed over for a longer one that stands in it whole: "leg curl" names no arm curl.
    """
    likeliest = [_likeliest(token.word) for token in tokens if token.kind == WORD]
    movement = next((word for word in likeliest if kind_of(word) == MOVEMENT), "")
    asked = set(likeliest)
    told = {word for word in asked if kind_of(word) not in (JOINING, FILLER)}
    leading = {movement} if movement else {word for word in told if kind_of(word) == LIFT}
    unled = not leading
    if unled and ALIKE.keys().isdisjoint(token.word for token in tokens):
        # no lift is named: "GHD hold", "4-way band neck"
        told = {word for word in told if kind_of(word) != FREE and not word.isdigit()}
        leading = {word for word in likeliest if kind_of(word) == THING}
    opposite = _opposites(asked)
    best: dict[str, tuple[float, ...]] = {}
    bags = [bag for bag in own if not leading.isdisjoint(bag.words)]
    bags += _sharing_two(leading, told)
    held = {bag.words for bag in bags if bag.words <= asked}
    for bag in bags:
        shared = bag.words & told
        whole = bag.words in held
        if not (whole or 2 * len(shared) > len(told)) or not opposite.isdisjoint(bag.words):
            continue
        if unled and len(shared) < 2:
            continue
        if whole and any(bag.words < longer for longer in held):
            continue
        score = (-whole, -len(shared), len(bag.words), -bag.size[2])
        best[bag.exercise] = min(score, best.get(bag.exercise, score))
    return sorted(best, key=lambda one: (*best[one], catalogue.rarity_of(one), len(one), one))


def _sharing_two(leading: set[str], told: set[str]) -> list[Bag]:
    """The names of the catalogue that have one of the leading words, and another of what is told if they and
    that have several.
    """
    bags, places = _every_bag(), _places()
    found: set[int] = set()
    for word in leading:
        there = places.get(word, frozenset())
        found |= there & places[""] if len(told) > 1 else there
        for other in told - {word}:
            found |= there & places.get(other, frozenset())
    return [bags[place] for place in sorted(found)]


def _with_most(words: set[str]) -> list[Bag]:
    """The names of the catalogue that have the most of some words. [] if none has any."""
    bags, places = _every_bag(), _places()
    shared: list[frozenset[int]] = []  # the places of names with at least one of the words, two, three ...
    for word in words:
        there = places.get(word, frozenset())
        more = [there, *(there & had for had in shared)]
        shared = [had | new for had, new in zip((*shared, frozenset()), more, strict=True)]
    most = next((had for had in reversed(shared) if had), frozenset())
    return [bags[place] for place in sorted(most)]


def _likeliest(word: str) -> str:
    """A word as it is known: an unknown one as the likeliest known one, if any."""
    if kind_of(word):
        return word
    meant = [words for one in known_spellings(word) for words in built_names.SPELLINGS.get(one, (one,))]
    return meant[0] if meant else word


@lru_cache(maxsize=1)
def _every_bag() -> tuple[Bag, ...]:
    return tuple(Bag(*line.split("\t")[1:]) for line in lines_of(built_names.NAMES))


@lru_cache(maxsize=1)
def _places() -> dict[str, frozenset[int]]:
    """Which of the names of the catalogue have a word, by their numbers. "" stands for those of one word."""
    found: dict[str, set[int]] = {"": set()}
    for place, bag in enumerate(_every_bag()):
        for word in bag.words:
            found.setdefault(word, set()).add(place)
        if len(bag.words) == 1:
            found[""].add(place)
    return {word: frozenset(places) for word, places in found.items()}


def _opposites(words: set[str]) -> set[str]:
    """The words for the opposite of what is asked for, without those that are asked for too."""
    pairs = (*OPPOSED, *((opposite, word) for word, opposite in OPPOSED))
    return {opposite for word, opposite in pairs if word in words} - words


def _areas_named(tokens: list[NameToken]) -> list[tuple[str, tuple[str, ...]]]:
    """The words of a name for parts of the body that are no mere place, each with the muscles there."""
    tied = dict(ties(tokens))
    named = [(token.word, catalogue.area(token.word)) for token in tokens if token not in tied]
    return [(word, muscles) for word, muscles in named if muscles]


def _trains(exercise: Exercise, named: list[tuple[str, tuple[str, ...]]]) -> bool:
    """Whether an exercise is called after, or trains, each of the parts of the body that are named."""
    called = frozenset[str]().union(*names_of(exercise)) if named else frozenset()
    return all(
        word in called or any(exercise.weight(muscle) for muscle in muscles) for word, muscles in named
    )


def _is_within(level: str, exercise: Exercise) -> bool:
    """Whether an exercise asks for no more than a level; any does where no known level is written."""
    levels = catalogue.LEVELS
    return level not in levels or levels.index(exercise.level) <= levels.index(level)
