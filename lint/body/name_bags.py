"""The names of the catalogue as bags of words, and what kind of word each is: see data/name-words.yaml."""

from __future__ import annotations

from functools import cache, lru_cache

from . import built, built_names
from .name_tokens import FILLER, JOINING, handle_of, words_of
from .rows import lines_with

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection

    from .catalogue import Exercise

IMPLEMENT, HELD, POSITION, GRIP = "implement", "held", "position", "grip"
ONE_SIDE, BOTH_SIDES, MOVEMENT, THING = "one side", "both sides", "movement", "thing"
VARIANT, DIRECTION, FREE, LIFT = "variant", "direction", "free", "lift"
ALONE = "alone"

KINDS = (
    "spelling",
    IMPLEMENT,
    HELD,
    POSITION,
    GRIP,
    ONE_SIDE,
    BOTH_SIDES,
    MOVEMENT,
    THING,
    VARIANT,
    DIRECTION,
    FREE,
    JOINING,
    FILLER,
    ALONE,
)
"""The kinds of words that the data has."""

DECIDING = (LIFT, MOVEMENT, VARIANT, POSITION, GRIP, IMPLEMENT)
"""Kinds of words of which a misspelt one could make another lift."""


ATTACHED = ("rope", "handle", "bar", "strap", "cuff")
"""What is put on a cable."""

UPPER = {"shoulder", "shoulder blade", "elbow", "forearm", "wrist", "neck"}
"""The joints of lifts that do not depend on how the legs stand."""

UPRIGHT = {"standing", "seated", "kneeling", "split"}
"""Stances between which such a lift can change without becoming another one."""

STEADY = {"seated", "lying", "prone", "supported", "incline", "side-lying", "hanging", "kneeling"}
"""Stances in which one leg alone has no balance to keep."""

TELLING = (THING, DIRECTION, POSITION, GRIP, LIFT)
"""Kinds of words of which two in one part say where or how: "mid shin", "feet forward"."""

MUSCLES = ("biceps", "triceps", "pec", "chest", "quad", "hamstring", "glute", "delt", "calf")
"""Words for muscles that coaches put before a lift that trains them."""

SHORT = 4
"""Letters up to which a misspelt word must begin like the word that is meant."""


class Bag:
    """The words of one name of an exercise, in any order.

    ``exercise`` is the exercise's own name, and ``implement`` the implement that the name states, or "".
    ``size`` is how much of a name it explains: words that decide which lift it is, all words, and whether it
    is the exercise's own name.
    """

    __slots__ = ("exercise", "implement", "size", "words", "written")

    def __init__(self, words: str, exercise: str, own: str = "", implement: str = "") -> None:
        self.written = tuple(words.split(" "))
        self.words = frozenset(self.written)
        self.exercise = exercise
        self.implement = implement
        deciding = sum(kind_of(word) not in (FREE, THING) for word in self.words)
        self.size = (deciding, len(self.written), bool(own))


@lru_cache(maxsize=2000)
def bags_with(handle: str) -> tuple[Bag, ...]:
    """The names of the catalogue that are found by a word; see handle_of."""
    return tuple(Bag(*line.split("\t")[1:]) for line in lines_with(built_names.NAMES, handle))


def bag_of(words: Collection[str]) -> Bag | None:
    """A name of the catalogue with just these words, or None."""
    found = bags_with(handle_of(words)) if words else ()
    return next((bag for bag in found if bag.words == words), None)


def bag_for(name: str, exercise: str) -> Bag:
    """The words of a name that a team gives to an exercise."""
    words = words_of(name, built_names.SPELLINGS, built_names.KINDS)
    return Bag(" ".join(words) or name, exercise)


@lru_cache(maxsize=500)
def names_with(word: str) -> tuple[frozenset[str], ...]:
    """The words of every name of the catalogue that has a word."""
    text, found, end = built_names.NAMES, [], 0
    while (at := text.find(word, end)) >= 0:
        start, end = text.rfind("\n", 0, at), text.find("\n", at)
        words = frozenset(text[start:end].split("\t")[1].split(" "))
        if word in words:
            found.append(words)
    return tuple(found)


def kind_of(word: str) -> str:
    """The kind of a word, or "" if it is unknown. "lift" is any other word of a name of the catalogue."""
    return built_names.KINDS.get(word, ("",))[0]


def meanings(word: str, kind: str) -> tuple[str, ...]:
    """What a word of some kind stands for. () if it is of another kind."""
    own, *meant = built_names.KINDS.get(word, ("",))
    return tuple(meant) if own == kind else ()


@cache
def names_of(exercise: Exercise) -> tuple[frozenset[str], ...]:
    """The words of each name of an exercise."""
    called = (exercise.name, *exercise.aliases)
    return tuple(frozenset(words_of(name, built_names.SPELLINGS, built_names.KINDS)) for name in called)


@cache
def own_words(exercise: Exercise) -> frozenset[str]:
    """The words of all names of an exercise that only repeat how it is done: positions, things, grips."""
    words = frozenset[str]().union(*names_of(exercise))
    return frozenset(word for word in words if kind_of(word) not in (IMPLEMENT, MOVEMENT, LIFT))


def is_own_word(word: str, exercise: Exercise) -> bool:
    """Whether a word stands in a name of an exercise."""
    return any(word in words for words in names_of(exercise))


_JOINTS = {action: joint for action, joint, *_ in built.ACTIONS}


def joints(exercise: Exercise) -> set[str]:
    """The joints that an exercise loads."""
    return {_JOINTS[action] for action in (*exercise.actions, *exercise.assists)}


def is_two_armed(exercise: Exercise) -> bool:
    """Whether an exercise may be done with both sides together."""
    one_legged = exercise.stance in ("single leg", "split")
    return not exercise.unilateral or (exercise.kind == "ballistic" and not one_legged)


def says_less(bag: Bag, other: Bag) -> bool:
    """Whether another name of the same exercise, or of how else it is stood, says more than this one."""
    more = other.words - bag.words
    stood = bag.exercise == other.exercise or any(kind_of(word) == POSITION for word in more)
    return bag.words < other.words and stood


def is_variant(bag: Bag, word: str, *, whole: bool = False) -> bool:
    """Whether the catalogue tells a lift from the same one with one word more.

    The other one has all words of the lift, or, unless ``whole``, only its movement.
    """
    telling = (MOVEMENT, LIFT, THING, VARIANT)
    lift = {one for one in bag.words if kind_of(one) in telling}
    moved = {one for one in lift if kind_of(one) == MOVEMENT}
    for words in names_with(word):
        more = {one for one in words if kind_of(one) in telling} - lift - {word}
        if lift <= words or (moved and moved <= words and not more and not whole):
            return True
    return False


def is_spelling(word: str, bag: Bag) -> bool:
    """Whether a word is, with one of a lift's behind it, written for another lift: "hamstring curl"."""
    return any(f"{word}{one}" in built_names.SPELLINGS for one in bag.words)


@lru_cache(maxsize=2000)
def may_decide(word: str) -> bool:
    """Whether an unknown word may be a form or a misspelling of a word that decides which lift it is."""
    stems = {word.removesuffix(end).rstrip("e") for end in ("ed", "ing", "er")} - {word}
    deciding = [one for one, kind in built_names.KINDS.items() if kind[0] in DECIDING]
    if any(one.rstrip("e") in stems for one in deciding):
        return True
    near = [one for one in deciding if one_letter_off(word, one)]
    if not any(len(word) > SHORT or (len(word) == SHORT and one[0] == word[0]) for one in near):
        return False
    from .no_lift_words import is_word

    return not is_word(word)


def one_letter_off(word: str, other: str) -> bool:
    """Whether two words differ by one letter more or less, another letter, or two neighbours swapped."""
    if abs(len(word) - len(other)) > 1:
        return False
    start = 0
    while start < min(len(word), len(other)) and word[start] == other[start]:
        start += 1
    rest, others = word[start:], other[start:]
    swapped = rest[:2] == others[1::-1] and rest[2:] == others[2:]
    return swapped or rest[1:] == others[1:] or rest[1:] == others or rest == others[1:]
