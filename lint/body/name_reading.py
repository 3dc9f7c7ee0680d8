"""Reads names of lifts as coaches write them: an implement, a position, a lift, qualifiers, in any order.

Only the first three decide what is trained. A name is read as the exercise that explains most of its words,
if the words left over change neither what is trained nor how much a set counts. If a word left over may make
it another lift, the name is not read: nothing is guessed.
"""

from __future__ import annotations

from itertools import pairwise

from . import built_names, catalogue
from .catalogue import NameReading
from .name_asides import (
    LOWERED,
    LOWERING_ONLY,
    PAUSED,
    ROWED,
    SPLITTING,
    WORN_IN,
    alone,
    bare_reading,
    is_called,
    is_contrary,
    is_of_a_thing,
    is_rowed,
    may_lead,
    reworded,
    senses,
    stands_in_brackets,
    take_times,
    ties,
    unmeant,
    worn,
    written,
)
from .name_bags import (
    ATTACHED,
    BOTH_SIDES,
    DIRECTION,
    FREE,
    GRIP,
    HELD,
    IMPLEMENT,
    LIFT,
    MOVEMENT,
    MUSCLES,
    ONE_SIDE,
    POSITION,
    STEADY,
    TELLING,
    THING,
    UPPER,
    UPRIGHT,
    VARIANT,
    bag_of,
    bags_with,
    is_own_word,
    is_spelling,
    is_two_armed,
    is_variant,
    joints,
    kind_of,
    may_decide,
    meanings,
    names_of,
    own_words,
    says_less,
)
from .name_implements import ADDED, REPLACES, carries
from .name_tokens import FILLER, JOINING, MEASURE, WORD, seconds_of, tokens_of
from .names import fold

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterator, Sequence

    from .catalogue import Exercise
    from .name_bags import Bag
    from .name_tokens import NameToken

    Lookup = Callable[[str], "Exercise | None"]

MOST_LETTERS, MOST_WORDS = 160, 24
"""A text with more letters or words is no name."""


def read(name: str, own: Sequence[Bag] = (), find: Lookup = catalogue.exercise) -> NameReading | None:
    """What a name that stands in no list means, or None if it is not surely one exercise.

    ``own`` are names that a team adds; ``find`` gives the exercise with a name.
    """
    if len(name) > MOST_LETTERS:
        return None
    tokens = tokens_of(name, built_names.SPELLINGS)
    if not 0 < len(tokens) <= MOST_WORDS:
        return None
    bare = (ROWED, []) if is_rowed(tokens) else alone(tokens)
    if bare is not None and (bare[0] == ROWED or not is_called(tokens, bare[1])):
        return bare_reading(name, tokens, find(bare[0]), bare[1])
    found = [(sense, _meant(name, tokens, own, find)) for sense in senses(tokens, own)]
    sure = [one for sense, one in found if one and (not sense or is_own_word(sense, one.exercise))]
    return sure[0] if len(sure) == 1 else None


def _meant(name: str, tokens: list[NameToken], own: Sequence[Bag], find: Lookup) -> NameReading | None:
    """What is meant by the words of a name, with what is worn left aside where that tells no lift."""
    beside = set(worn(tokens))
    if beside:
        reading = _Name(name, tokens, find, beside).read(own)
        banded = any(token.word == ADDED for token in beside)
        if reading is not None and (not banded or reading.exercise.pattern in WORN_IN):
            return reading
    return _Name(name, tokens, find).read(own)


class _Fit:
    """A name read as one exercise.

    ``left`` are the words that the exercise does not explain; ``implied`` is how many words of the bag are
    only implied by others. ``head`` is the part that names the lift, and ``last`` where the lift ends in it.
    """

    def __init__(self, reading: NameReading, bag: Bag, had: list[NameToken]) -> None:
        self.reading = reading
        self.bag = bag
        self.implied = len(bag.words.difference(token.word for token in had))
        self.parts = {token.part for token in had}
        moving = [token.part for token in had if kind_of(token.word) == MOVEMENT]
        self.head = min(moving or self.parts)
        self.last = max((token.start for token in had if token.part == self.head), default=0)
        self.left: list[NameToken] = []

    @property
    def rank(self) -> tuple[int, ...]:
        """How well it explains the name: the more the better."""
        other = self.reading.implement != self.reading.exercise.implement
        unexplained = sum(token.kind == WORD for token in self.left)
        deciding, words, own = self.bag.size
        return (-unexplained - other, deciding - self.implied, words - self.implied, -len(self.parts), own)


class _Name:
    """The words of a name.

    ``ties`` gives the joining word in front of a word, or right behind it. ``told`` are parts of the name
    that hold more than bare words of the catalogue, so that a part of the body in them is a place. ``timed``
    are words right behind seconds, ``denied`` those of what is not done, only thought of or a contrast.
    ``beside`` are words of what is worn, by which no exercise is found.
    """

    def __init__(
        self, name: str, tokens: list[NameToken], find: Lookup, beside: Collection[NameToken] = ()
    ) -> None:
        self.name = name
        self.tokens = tokens
        for token, word in list(reworded(name, tokens)):
            token.word = word
        self.find = find
        self.timed = {
            after
            for before, after in pairwise(tokens)
            if seconds_of(before) and before.part == after.part and after.word in LOWERED | PAUSED
        }
        self.denied = set(unmeant(name, tokens))
        words = {token.word for token in tokens if token not in (self.timed | self.denied).union(beside)}
        self.implements = {one for word in words for one in meanings(word, IMPLEMENT)}
        held = {one for word in words for one in meanings(word, HELD)}
        self.words = words if self.implements else words | held
        self.implements = self.implements or held
        self.ties = dict(ties(tokens))
        said = [token.part for token in tokens if kind_of(token.word) in TELLING]
        self.told = {part for part in said if said.count(part) > 1}
        self.told |= {token.part for token in tokens if kind_of(token.word) in (JOINING, FREE, "")}

    def read(self, own: Sequence[Bag]) -> NameReading | None:
        """The reading that explains most, or None if there is none or if two explain as much."""
        best: list[_Fit] = []
        refused: list[Bag] = []
        for bag in sorted(self.bags(own), key=lambda bag: -len(bag.words)):
            fit = self.fit(bag)
            if fit is None:
                refused.append(bag)
            elif any(says_less(bag, one) for one in refused):
                continue
            elif not best or fit.rank >= best[0].rank:
                best = [*best, fit] if best and fit.rank == best[0].rank else [fit]
        for tells in (self.has_the_implement, self.has_the_order, self.has_the_ties):
            if len({fit.reading.exercise for fit in best}) > 1:
                best = [fit for fit in best if tells(fit)] or best
        if len({fit.reading.exercise for fit in best}) != 1:
            return None
        fit = self.sibling(best[0])
        if fit is None:
            return None
        fit.reading.qualifiers = tuple(written(self.name, self.tokens, fit.left))
        take_times(fit.reading, self.tokens)
        return fit.reading

    def has_the_implement(self, fit: _Fit) -> bool:
        """Whether the exercise's own implement stands in the name."""
        return fit.reading.exercise.implement in self.implements

    def has_the_ties(self, fit: _Fit) -> bool:
        """Whether a name of the exercise ties its words as this one does: "off box"."""
        exercise, said = fit.reading.exercise, {token.word for token in self.tokens}
        for name, words in zip((exercise.name, *exercise.aliases), names_of(exercise), strict=True):
            ties = {token.word for token in tokens_of(name, built_names.SPELLINGS)} - words
            if words == fit.bag.words and not ties.isdisjoint(said):
                return True
        return False

    def has_the_order(self, fit: _Fit) -> bool:
        """Whether the exercise is called so with the words in this order."""
        exercise, whole = fit.reading.exercise, fold(self.name)
        return any(fold(name) in whole for name in (exercise.name, *exercise.aliases))

    def bags(self, own: Sequence[Bag]) -> Iterator[Bag]:
        """Names of exercises whose words all stand in this name."""
        yield from (bag for bag in own if bag.words <= self.words)
        for word in self.words:
            for bag in bags_with(word):
                if bag.words <= self.words:
                    yield bag

    def sibling(self, fit: _Fit) -> _Fit | None:
        """The exercise that is called like this one with the implement, grip or side that was left over, else
        this one. None if the implement's own exercise is not what the name says.
        """
        exercise, known = fit.reading.exercise, frozenset[str]().union(*names_of(fit.reading.exercise))
        said = {token.word for token in fit.left if kind_of(token.word) in (GRIP, ONE_SIDE, POSITION)}
        held = {word for word in self.words if fit.reading.implement in meanings(word, IMPLEMENT)}
        told = fit.bag.implement or fit.reading.implement == exercise.implement
        lifted = set[str]() if told else held
        for more in (said | lifted, lifted, said):
            for words in names_of(exercise) if more else ():
                kept = {word for word in words if not (more & lifted and kind_of(word) == IMPLEMENT)}
                bag = bag_of(more | kept) if more.isdisjoint(words) else None
                if bag is not None and bag.exercise != exercise.name:
                    other = self.fit(bag, known)
                    if other is not None and self.has_the_implement(fit) > self.has_the_implement(other):
                        continue
                    if other is None or len(other.left) <= len(fit.left):
                        both = any(kind_of(word) == BOTH_SIDES for word in self.words)
                        return other or (None if more & lifted and not both else fit)
        return fit

    def fit(self, bag: Bag, known: Collection[str] = ()) -> _Fit | None:
        """The name read as an exercise, or None if a word left over, but for ``known`` ones, may make it
        another.
        """
        exercise = self.find(bag.exercise)
        left = self.left_by(bag)
        had = [token for token in self.tokens if token not in left]
        if exercise is None or not had or self.is_split(had, bag):
            return None
        fit = _Fit(NameReading(exercise, bag.implement), bag, had)
        if not bag.size[0] and any(may_lead(token) for token in left if token.part < fit.head):
            return None
        for token in left:
            answer = False if token.word in known else self.allows(token, fit)
            if answer is None:
                return None
            if answer:
                fit.left.append(token)
        return fit

    def is_split(self, had: list[NameToken], bag: Bag) -> bool:
        """Whether an "and" or "or" that the exercise's name lacks stands between the words of that name."""
        at = [token.start for token in self.tokens if token.word in SPLITTING and token.word not in bag.words]
        lifts = [token.start for token in had if kind_of(token.word) in (MOVEMENT, LIFT, POSITION, THING)]
        return bool(lifts) and any(min(lifts) < place < max(lifts) for place in at)

    def left_by(self, bag: Bag) -> list[NameToken]:
        """The words that a name leaves over. A movement that stands twice is left over once."""
        had = list(bag.written)
        left = []
        for token in self.tokens:
            if kind_of(token.word) != MOVEMENT:
                if token.word not in bag.words:
                    left.append(token)
            elif token.word in had:
                had.remove(token.word)
            elif not (token.word in bag.words and self.is_spelled_out(token)):
                left.append(token)
        return left

    def is_spelled_out(self, token: NameToken) -> bool:
        """Whether a word of a longer one stands in the name written out too: "curl, Nordic"."""
        same = [one for one in self.tokens if one.word == token.word]
        return any(one.start == other.start and one is not other for one in same for other in self.tokens)

    # What a word that is left over does to the lift: True if it is a qualifier, False if it only repeats what
    # the exercise is, None if it may make it another lift.

    def allows(self, token: NameToken, fit: _Fit) -> bool | None:
        exercise, kind = fit.reading.exercise, kind_of(token.word)
        if kind in (JOINING, FILLER):
            return False
        if kind == IMPLEMENT:
            tie, several = self.ties.get(token, ""), len(self.implements) > 1
            return carries(fit.reading, token.word, tie, several=several, behind=self.is_behind_a_tie(token))
        if kind == HELD:
            return self.holds(token, fit.reading)
        if is_contrary(token, self.tokens, exercise, fit.bag):
            return None
        if token.word.replace("-", " ") in exercise.station and not is_variant(fit.bag, token.word):
            return False
        if (
            token.word == LOWERING_ONLY
            or kind == FREE
            or token.kind != WORD
            or token.word.isdigit()
            or token in self.timed | self.denied
        ):
            return True
        if token.word in own_words(exercise) or token.word == exercise.kind:
            return False
        if kind == POSITION:
            return self.stands(token, exercise)
        if kind == GRIP:
            return self.grips(token, exercise)
        if kind == ONE_SIDE:
            return self.is_one_sided(token, fit.reading)
        if kind == BOTH_SIDES:
            return is_two_armed(exercise) or None
        if kind == DIRECTION or self.repeats(token, fit):
            return kind == DIRECTION
        tied, beside = token in self.ties, token.part != fit.head
        held = is_of_a_thing(token, self.tokens, fit.bag) and not is_variant(fit.bag, token.word, whole=True)
        if kind == VARIANT:
            return held or kind_of(self.ties.get(token, "")) == JOINING or None
        if kind == THING:
            if token.word in MUSCLES and not tied and is_spelling(token.word, fit.bag):
                return None  # "curl, hamstring" is the hamstring curl
            told = (beside and token.part in self.told) or tied
            attached = token.word in ATTACHED and fit.reading.implement == "cable"
            behind = beside or token.start > fit.last
            return told or attached or (behind and not is_variant(fit.bag, token.word)) or None
        if kind == LIFT:
            return ((beside or tied) and (held or not is_variant(fit.bag, token.word))) or None
        beside = beside and not stands_in_brackets(self.name, self.tokens, fit.head, behind=token)
        return (not kind and (beside or self.is_behind_a_tie(token)) and not self.may_decide(token)) or None

    def is_behind_a_tie(self, token: NameToken) -> bool:
        """Whether a joining word or a measure stands in front of a word in its part."""
        before = [one for one in self.tokens if one.part == token.part and one.start < token.start]
        return any(one.kind == MEASURE or kind_of(one.word) == JOINING for one in before)

    def repeats(self, token: NameToken, fit: _Fit) -> bool:
        """Whether a word is of another name of the exercise that stands here too, or of what it trains."""
        exercise = fit.reading.exercise
        others = [words for words in names_of(exercise) if token.word in words and words <= self.words]
        if others and token.word not in fit.bag.words:
            return True
        trained = catalogue.area(token.word) or () if token.word in MUSCLES else ()
        return any(muscle in exercise.direct for muscle in trained)

    def may_decide(self, token: NameToken) -> bool:
        """Whether an unknown word may decide which lift it is: a slip, or an abbreviation in capitals."""
        written = self.name[token.start : token.end]
        return may_decide(token.word) or (len(written) > 1 and written.isupper() and not self.name.isupper())

    def holds(self, token: NameToken, reading: NameReading) -> bool | None:
        (held,) = meanings(token.word, HELD)
        if reading.exercise.implement not in REPLACES[held]:
            return None
        if held in self.implements:
            reading.implement = held
        return True

    def stands(self, token: NameToken, exercise: Exercise) -> bool | None:
        stances = set(meanings(token.word, POSITION))
        if exercise.stance in stances:
            return False
        upright = exercise.stance in (*UPRIGHT, "supported") and not stances.isdisjoint(UPRIGHT)
        return (upright and joints(exercise) <= UPPER) or None

    def grips(self, token: NameToken, exercise: Exercise) -> bool | None:
        grips = meanings(token.word, GRIP)
        if exercise.grip in grips:
            return False
        return "close" in grips or "wide" in grips or "elbow flexion" not in exercise.actions or None

    def is_one_sided(self, token: NameToken, reading: NameReading) -> bool | None:
        exercise, limbs = reading.exercise, meanings(token.word, ONE_SIDE)
        if exercise.unilateral:
            return False
        if token.word == "alternating" and "split" in self.words:  # the foot in front changes
            return True
        steady = exercise.stance in STEADY
        if "leg" in limbs and not steady:
            return None
        if "arm" in limbs and joints(exercise).isdisjoint(UPPER):
            return None
        if "side" in limbs and not (steady or joints(exercise) <= UPPER):
            return None
        return True
