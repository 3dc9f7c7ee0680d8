"""Exercises for words still being typed: by the beginnings of words in their names, or of what they train."""

from __future__ import annotations

from bisect import bisect_left
from functools import cache, lru_cache

from ...body import catalogue
from ...body.derive import INDIRECT
from ...body.known import CATALOGUE
from ...body.names import fold, words
from ...body.search import works
from ...body.search_words import ACTION, AREA, LENGTH, ONE_SIDE, PATTERN, SIDES, phrases

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from ...body.catalogue import Exercise
    from ...body.known import Known
    from ...body.search_words import Meaning

    Phrase = tuple[list[str], tuple[Meaning, ...]]
    """The folded words of a phrase, and what it means."""

    Ranks = dict[int, int]
    """Rows of exercises, and how well each matches: one of the ranks below."""

EXACT, BEGINS, WORDS, ALIAS_BEGINS, ALIAS_WORDS, MAINLY, BESIDES = range(7)
"""How an exercise matches, the best first.

By its whole name, the beginning of its name, the words of its name; by the beginning or the words of an
alias; by what it trains or is mainly, or besides.
"""

MOST_WORDS = 12
"""Words that are looked at; no name has more."""

FEWEST_LETTERS = 2
"""Letters that the beginning of a word needs before it is taken for a muscle or a movement."""


class ExerciseMatch:
    """An exercise, and the rank (EXACT to BESIDES) of its match."""

    __slots__ = ("exercise", "rank")

    def __init__(self, exercise: Exercise, rank: int) -> None:
        self.exercise = exercise
        self.rank = rank


def matching_exercises(typed: str, known: Known) -> list[ExerciseMatch]:
    """The exercises that match some words, the last of which may be a beginning; best first.

    Of those as good the more common come first, then by name. Without a word, all exercises, a team's own
    first, then the more common. Where none fits, the one that a review would read in the words, else those
    that they may be meant for.
    """
    typed_words = words(typed)[:MOST_WORDS]
    indexes = [_own_index(known), _catalogue_index()] if known.own else [_catalogue_index()]
    if not typed_words:
        every = (one for index in indexes for one in sorted(index.exercises, key=catalogue.rarity))
        return [ExerciseMatch(one, WORDS) for one in every]
    matches = [
        ExerciseMatch(index.exercises[row], rank)
        for index in indexes
        for row, rank in index.ranks(typed_words).items()
    ]
    return sorted(matches, key=_sort_key) if matches else _meant(typed, known)


def _meant(typed: str, known: Known) -> list[ExerciseMatch]:
    """What a review makes of the words so far, or of those before the one that is being typed."""
    reading = known.reading(typed) or known.reading(typed.rstrip().rpartition(" ")[0])
    if reading is not None:
        return [ExerciseMatch(reading.exercise, BESIDES)]
    found = map(known.exercise, known.nearest(typed))
    return [ExerciseMatch(exercise, BESIDES) for exercise in found if exercise is not None]


def _sort_key(match: ExerciseMatch) -> tuple[object, ...]:
    """Best first, then the more common; of matches by what is trained, lifts that train little else."""
    one = match.exercise
    special = (one.kind != "dynamic", len(one.direct)) if match.rank >= MAINLY else ()
    return (match.rank, catalogue.rarity(one), *special, len(one.name), one.name)


_fold = cache(fold)


def _folded_words(name: str) -> list[str]:
    """The words of a name in the form in which they are compared."""
    return [_fold(word) for word in words(name)]


@lru_cache(maxsize=1)
def _catalogue_index() -> _PrefixIndex:
    meanings = [(_folded_words(phrase), meant) for phrase, meant in phrases(CATALOGUE)]
    return _PrefixIndex(catalogue.exercises(), meanings)


@lru_cache(maxsize=4)
def _own_index(known: Known) -> _PrefixIndex:
    """The index of a team's own exercises; words mean the same for them as for the catalogue's."""
    return _PrefixIndex(known.own, _catalogue_index().phrases)


class _PrefixIndex:
    """Exercises by the words of their names, and the phrases that say what an exercise trains or is.

    A row is the number of an exercise among ``exercises``. ``rows_by_word`` leads from each word of a name to
    rows, ``names`` from a row to its folded names (run together, and word by word), ``trained`` from a muscle
    to the rows that train it.
    """

    def __init__(self, exercises: Sequence[Exercise], meanings: list[Phrase]) -> None:
        self.exercises = exercises
        self.phrases = meanings
        self.words_of_phrases = {word for phrase, _ in meanings for word in phrase}
        self.rows_by_word: dict[str, set[int]] = {}
        self.names: list[list[tuple[str, list[str]]]] = []
        self.trained: dict[str, Ranks] = {}
        for row, exercise in enumerate(exercises):
            names = [_folded_words(name) for name in (exercise.name, *exercise.aliases)]
            self.names.append([("".join(name), name) for name in names])
            for word in {word for name in names for word in name}:
                self.rows_by_word.setdefault(word, set()).add(row)
            for rank, muscles in ((BESIDES, exercise.indirect), (MAINLY, exercise.direct)):
                for muscle in muscles:
                    self.trained.setdefault(muscle, {})[row] = rank
        self.words = sorted(self.rows_by_word)

    def ranks(self, typed: Sequence[str]) -> Ranks:
        """The rows that match all words: by name as a whole, or word by word by whatever each may mean."""
        parts = [self.singular(word) for word in typed]
        found = self.ranks_by_meaning(parts)
        run_together = "".join(parts)
        with_every_word = set.intersection(*(self.rows_with_word(part) for part in parts))
        for row in with_every_word.union(self.rows_with_name(run_together, "".join(typed))):
            rank = self.rank_by_name(row, parts, run_together, "".join(typed))
            if rank is not None:
                found[row] = min(rank, found.get(row, rank))
        return found

    def singular(self, word: str) -> str:
        """A word in the singular if that is a known word, else as it is."""
        folded = fold(word)
        return folded if folded in self.rows_by_word or folded in self.words_of_phrases else word

    # By name

    def rows_with_word(self, beginning: str) -> set[int]:
        """The rows with a word in a name or alias that begins so."""
        at = bisect_left(self.words, beginning)
        found: set[int] = set()
        for index in range(at, len(self.words)):
            if not self.words[index].startswith(beginning):
                break
            found |= self.rows_by_word[self.words[index]]
        return found

    def rows_with_name(self, *beginnings: str) -> Iterator[int]:
        """The rows with a name or alias that begins so, spaces left out."""
        for row, names in enumerate(self.names):
            if any(run_together.startswith(beginnings) for run_together, _ in names):
                yield row

    def rank_by_name(self, row: int, parts: list[str], run_together: str, typed: str) -> int | None:
        """The best rank at which the name or an alias of a row matches."""
        best = None
        for number, (name, name_words) in enumerate(self.names[row]):
            is_alias = number > 0
            if name == run_together:
                return EXACT
            if name.startswith((run_together, typed)):
                rank = ALIAS_BEGINS if is_alias else BEGINS
            elif all(any(word.startswith(part) for word in name_words) for part in parts):
                rank = ALIAS_WORDS if is_alias else WORDS
            else:
                continue
            best = rank if best is None else min(best, rank)
        return best

    # By what it trains or is

    def ranks_by_meaning(self, parts: list[str]) -> Ranks:
        """The rows that match every word by a meaning, or by a word of a name; each at its worst rank."""
        lengths: set[str] = set()
        areas: list[str] = []
        demands: list[Ranks] = []
        for run in self.runs(parts):
            meanings = self.meanings(run)
            lengths.update(name for kind, name in meanings if kind == LENGTH)
            ranks: Ranks = {} if len(run) > 1 else dict.fromkeys(self.rows_with_word(run[0]), BESIDES)
            for meaning in meanings:
                if meaning[0] == AREA:
                    areas.append(meaning[1])
                for row, rank in self.ranks_of(meaning).items():
                    ranks[row] = min(rank, ranks.get(row, rank))
            if not any(kind == LENGTH for kind, _ in meanings):
                demands.append(ranks)
        if not demands:
            return {}
        common = set(demands[0]).intersection(*demands[1:])
        found = {row: max(ranks[row] for ranks in demands) for row in common}
        return self.at_length(found, areas, lengths) if lengths else found

    def runs(self, parts: list[str]) -> Iterator[list[str]]:
        """The words in runs: the longest that means something, with the runs before and after it."""
        for size in range(len(parts), 1, -1):
            for start in range(len(parts) - size + 1):
                if self.meanings(parts[start : start + size]):
                    yield from self.runs(parts[:start])
                    yield parts[start : start + size]
                    yield from self.runs(parts[start + size :])
                    return
        yield from ([part] for part in parts)

    def meanings(self, run: Sequence[str]) -> list[Meaning]:
        """What a run of words means: that of an equal phrase, else of phrases whose words begin so."""
        exact: list[Meaning] = []
        begun: list[Meaning] = []
        size = len(run)
        is_long_enough = size > 1 or len(run[0]) >= FEWEST_LETTERS
        for phrase, meant in self.phrases:
            if phrase == run:
                exact += meant
            elif is_long_enough and not exact and size <= len(phrase) and _begins_within(phrase, run):
                begun += (one for one in meant if one[0] != LENGTH)
        return exact or begun

    def ranks_of(self, meaning: Meaning) -> Ranks:
        """The rows that match a meaning, mainly or besides."""
        kind, name = meaning
        if kind == AREA:
            ranks: Ranks = {}
            for muscle in catalogue.area(name) or ():
                for row, rank in self.trained.get(muscle, {}).items():
                    ranks[row] = min(rank, ranks.get(row, rank))
            return ranks
        if kind == LENGTH:
            return {}
        by_row = ((row, _rank_of(exercise, kind, name)) for row, exercise in enumerate(self.exercises))
        return {row: rank for row, rank in by_row if rank is not None}

    def at_length(self, rows: Ranks, areas: Iterable[str], lengths: set[str]) -> Ranks:
        """Those of some rows that work one of the areas at one of the lengths."""
        found: Ranks = {}
        for row in rows:
            for area in areas:
                work = works(self.exercises[row], area, lengths)
                if work is not None:
                    rank = BESIDES if work[0] == INDIRECT else MAINLY
                    found[row] = min(rank, found.get(row, rank))
        return found


def _begins_within(phrase: Sequence[str], run: Sequence[str]) -> bool:
    """Whether words of a phrase, one after the other, begin as those of a run."""
    return any(
        all(word.startswith(part) for word, part in zip(phrase[start:], run, strict=False))
        for start in range(len(phrase) - len(run) + 1)
    )


def _rank_of(exercise: Exercise, kind: str, name: str) -> int | None:
    """How an exercise matches an action, a pattern, an implement or the like; None where it does not."""
    if kind == ACTION:
        return MAINLY if name in exercise.actions else BESIDES if name in exercise.assists else None
    if kind == PATTERN:
        return MAINLY if name in exercise.patterns else None
    if kind == SIDES:
        return MAINLY if exercise.unilateral == (name == ONE_SIDE) else None
    return MAINLY if getattr(exercise, kind) == name else None
