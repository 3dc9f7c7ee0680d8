"""Says of a name that stands for no exercise whether it surely is no lift: a stretch, a run, a game.

Its sets count for no muscle, and who wrote it knows that. A name that may be a lift is none of these.
"""

from __future__ import annotations

from functools import lru_cache

from . import built_names, catalogue
from .name_asides import ties
from .name_bags import FREE, HELD, IMPLEMENT, MOVEMENT, SHORT, THING, kind_of, one_letter_off
from .name_reading import MOST_LETTERS
from .name_tokens import MEASURE, WORD, tokens_of
from .names import fold
from .no_lift_words import LIKELY, NEUTRAL, SPORT, STAYS, SURE, VAGUE, WORDS, is_word, kinds_of_phrases
from .rows import lines_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from .name_tokens import NameToken

UNLOADED = frozenset(["band", "bodyweight", "slider", "suspension", "ring"])
"""Implements with which a stretch, a run or a drill stays one."""

CLAIMS = (SURE, LIKELY, NEUTRAL)
"""Kinds of phrases whose words name no lift, though each for itself may: the run of a "run-through"."""


class _Phrase:
    """A phrase of a name: its kind, and where it begins and ends."""

    __slots__ = ("end", "kind", "start")

    def __init__(self, kind: str, start: int, end: int) -> None:
        self.kind = kind
        self.start = start
        self.end = end

    def claims(self, token: NameToken) -> bool:
        """Whether a word of the name stands in it, and so names no lift."""
        return self.kind in CLAIMS and self.start <= token.start and token.end <= self.end


@lru_cache(maxsize=2000)
def is_no_lift(name: str) -> bool:
    """Whether the words of a name that stands for no exercise say that it is surely no lift."""
    phrases = list(_phrases(name)) if len(name) <= MOST_LETTERS else []
    kinds = {one.kind for one in phrases}
    vague = len([one for one in phrases if one.kind in (VAGUE, SPORT)])
    if kinds.isdisjoint((SURE, LIKELY)) and not (SPORT in kinds and vague > 1):
        return False
    tokens = tokens_of(name, built_names.SPELLINGS)
    free = [one for one in tokens if not any(by.claims(one) for by in phrases)]
    if any(map(_is_load, free)):
        return False
    tied = dict(ties(tokens))
    lifts = [one for one in free if _may_name_a_lift(one, name) and not _is_place(one, tied)]
    return not lifts or any(one.kind == SURE and _ends(one, tokens, lifts) for one in phrases)


def _ends(sure: _Phrase, tokens: Sequence[NameToken], lifts: Sequence[NameToken]) -> bool:
    """Whether a phrase comes behind all lifts of a name, in one part with them: "lunge stretch"."""
    part = next((one.part for one in tokens if one.end >= sure.end), -1)
    return all(one.end <= sure.start and one.part == part for one in lifts)


def _is_load(token: NameToken) -> bool:
    """Whether a word says that something is lifted, or held or pulled against."""
    if token.kind == MEASURE:
        return token.word.endswith("kg")
    held = kind_of(token.word) in (IMPLEMENT, HELD)
    return token.word == "weighted" or (held and token.word not in UNLOADED)


def _is_place(token: NameToken, tied: Mapping[NameToken, str]) -> bool:
    """Whether a word says where something is done, or with what, as the box of "over a low box"."""
    return kind_of(token.word) in (THING, FREE) and token in tied


def _may_name_a_lift(token: NameToken, name: str) -> bool:
    """Whether names of lifts end with a word, be it misspelt; a muscle may be called after its movement."""
    if token.kind != WORD:
        return False
    if kind_of(token.word) or is_word(token.word):
        written = name[token.start : token.end]
        return _names_a_lift(token.word) and (fold(written) == token.word or catalogue.area(written) is None)
    return len(token.word) > SHORT and any(
        one_letter_off(token.word, other) for other in lines_of(built_names.HEADS)
    )


def _names_a_lift(word: str) -> bool:
    return kind_of(word) == MOVEMENT or f"\n{word}\n" in built_names.HEADS


def _phrases(name: str) -> Iterator[_Phrase]:
    """The phrases of a name, the longest first; none within another."""
    found = list(WORDS.finditer(name))
    folded = [fold(one.group()) for one in found]
    kinds, at = kinds_of_phrases(), 0
    longest = max(map(len, kinds))
    while at < len(folded):
        for size in range(min(longest, len(folded) - at), 0, -1):
            kind = kinds.get(tuple(folded[at : at + size]))
            if kind is not None:
                behind = {one.group().lower() for one in found[at + size : at + size + 1]}
                if kind != SURE or behind.isdisjoint(STAYS):
                    yield _Phrase(kind, found[at].start(), found[at + size - 1].end())
                at += size
                break
        else:
            at += 1
