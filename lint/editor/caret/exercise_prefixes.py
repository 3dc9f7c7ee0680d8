"""Exercises for words still being typed: by the beginnings of words of a name, or of what it trains."""

from __future__ import annotations

from bisect import bisect_left
from functools import cache, lru_cache

from ...body import catalogue
from ...body.known import CATALOGUE
from ...body.names import fold, words
from ...body.search import works
from ...body.search_words import ACTION, AREA, INDIRECT, LENGTH, ONE_SIDE, PATTERN, SIDES, phrases

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from ...body.catalogue import Exercise
    from ...body.known import Known

    Meaning = tuple[str, str]

    Phrase = tuple[list[str], tuple[Meaning, ...]]
    """The words of a phrase as they are compared, and what it means."""

    Roles = dict[int, int]
    """Rows of exercises, and how well each fits: one of the steps below."""

EXACT, BEGINS, WORDS, ALIAS_BEGINS, ALIAS_WORDS, MAINLY, BESIDES = range(7)
"""How an exercise fits, the best first: by its name, an alias, what it trains or is mainly or besides."""

MOST_WORDS = 12
"""Words that are looked at; no name has more."""

LEAST_LETTERS = 2
"""Letters from which on the beginning of a word tells a muscle or a movement."""


class Fit:
    """An exercise, and the step (EXACT to BESIDES) on which it fits."""

    __slots__ = ("exercise", "step")

    def __init__(self, exercise: Exercise, step: int) -> None:
        self.exercise = exercise
        self.step = step


def fitting(typed: str, known: Known) -> list[Fit]:
    """The exercises that fit some words, the last of which may be a beginning; best first, then the more
    common, then by name. Without a word, all of them, a team's own first, then the more common.
    """
    asked = words(typed)[:MOST_WORDS]
    indexes = [_own(known), _catalogue()] if known.own else [_catalogue()]
    if not asked:
        every = (one for index in indexes for one in sorted(index.exercises, key=catalogue.rarity))
        return [Fit(one, WORDS) for one in every]
    fits = [Fit(index.exercises[row], step) for index in indexes for row, step in index.rows(asked).items()]
    return sorted(fits, key=_order)


def _order(fit: Fit) -> tuple[object, ...]:
    """Best first, then the more common; of those that fit by what they train, plain lifts that train little
    else.
    """
    one = fit.exercise
    special = (one.kind != "dynamic", len(one.direct)) if fit.step >= MAINLY else ()
    return (fit.step, catalogue.rarity(one), *special, len(one.name), one.name)


_fold = cache(fold)


def _folded(name: str) -> list[str]:
    """The words of a name as they are compared."""
    return [_fold(word) for word in words(name)]


@lru_cache(maxsize=1)
def _catalogue() -> _Index:
    return _Index(catalogue.exercises(), [(_folded(phrase), meant) for phrase, meant in phrases(CATALOGUE)])


@lru_cache(maxsize=4)
def _own(known: Known) -> _Index:
    """A team's own exercises; what words mean is the same for them as for the catalogue's."""
    return _Index(known.own, _catalogue().phrases)


class _Index:
    """Exercises by the words of their names, and every phrase that says what one trains or is."""

    def __init__(self, exercises: Sequence[Exercise], meant: list[Phrase]) -> None:
        self.exercises = exercises
        self.phrases = meant
        self.said = {part for parts, _ in meant for part in parts}
        self.named: dict[str, set[int]] = {}
        self.names: list[list[tuple[str, list[str]]]] = []
        self.trained: dict[str, Roles] = {}
        for row, exercise in enumerate(exercises):
            names = [_folded(name) for name in (exercise.name, *exercise.aliases)]
            self.names.append([("".join(parts), parts) for parts in names])
            for part in {part for parts in names for part in parts}:
                self.named.setdefault(part, set()).add(row)
            for step, muscles in ((BESIDES, exercise.indirect), (MAINLY, exercise.direct)):
                for muscle in muscles:
                    self.trained.setdefault(muscle, {})[row] = step
        self.words = sorted(self.named)

    def rows(self, asked: Sequence[str]) -> Roles:
        """The rows that fit all words, by name as a whole or word by word by whatever each may mean."""
        parts = [self.taken(word) for word in asked]
        found = self.by_meaning(parts)
        whole = "".join(parts)
        every = set.intersection(*(self.named_so(part) for part in parts))
        for row in every.union(self.rows_beginning(whole, "".join(asked))):
            step = self.by_name(row, parts, whole, "".join(asked))
            if step is not None:
                found[row] = min(step, found.get(row, step))
        return found

    def taken(self, word: str) -> str:
        """A word as it is compared: in the singular, if that makes it a word that is known."""
        single = fold(word)
        return single if single in self.named or single in self.said else word

    # By name

    def named_so(self, begin: str) -> set[int]:
        """The rows with a word in a name or alias that begins so."""
        at = bisect_left(self.words, begin)
        found: set[int] = set()
        for index in range(at, len(self.words)):
            if not self.words[index].startswith(begin):
                break
            found |= self.named[self.words[index]]
        return found

    def rows_beginning(self, *begins: str) -> Iterator[int]:
        """The rows with a name or alias that begins so, blanks left out."""
        for row, names in enumerate(self.names):
            if any(key.startswith(begins) for key, _ in names):
                yield row

    def by_name(self, row: int, parts: list[str], whole: str, typed: str) -> int | None:
        """The best step on which the name or an alias of a row fits."""
        best = None
        for number, (key, has) in enumerate(self.names[row]):
            if key == whole:
                return EXACT
            if key.startswith((whole, typed)):
                step = ALIAS_BEGINS if number else BEGINS
            elif all(any(word.startswith(part) for word in has) for part in parts):
                step = ALIAS_WORDS if number else WORDS
            else:
                continue
            best = step if best is None else min(best, step)
        return best

    # By what it trains or is

    def by_meaning(self, parts: list[str]) -> Roles:
        """The rows that fit every word by some meaning, or by a word of a name; the weakest step of each."""
        lengths: set[str] = set()
        areas: list[str] = []
        demands: list[Roles] = []
        for segment in self.segments(parts):
            meanings = self.meanings(segment)
            lengths.update(name for kind, name in meanings if kind == LENGTH)
            rows: Roles = {} if len(segment) > 1 else dict.fromkeys(self.named_so(segment[0]), BESIDES)
            for meaning in meanings:
                if meaning[0] == AREA:
                    areas.append(meaning[1])
                for row, step in self.meant(meaning).items():
                    rows[row] = min(step, rows.get(row, step))
            if not any(kind == LENGTH for kind, _ in meanings):
                demands.append(rows)
        if not demands:
            return {}
        common = set(demands[0]).intersection(*demands[1:])
        found = {row: max(rows[row] for rows in demands) for row in common}
        return self.at_length(found, areas, lengths) if lengths else found

    def segments(self, parts: list[str]) -> Iterator[list[str]]:
        """The words in runs: the longest that means something first, then what stands before and after."""
        for size in range(len(parts), 1, -1):
            for start in range(len(parts) - size + 1):
                if self.meanings(parts[start : start + size]):
                    yield from self.segments(parts[:start])
                    yield parts[start : start + size]
                    yield from self.segments(parts[start + size :])
                    return
        yield from ([part] for part in parts)

    def meanings(self, segment: Sequence[str]) -> list[Meaning]:
        """What a run of words means: the phrases that are just so, else those in which words begin so."""
        just_so: list[Meaning] = []
        begun: list[Meaning] = []
        size = len(segment)
        tell = size > 1 or len(segment[0]) >= LEAST_LETTERS
        for has, meant in self.phrases:
            if has == segment:
                just_so += meant
            elif tell and not just_so and size <= len(has) and _holds(has, segment):
                begun += (one for one in meant if one[0] != LENGTH)
        return just_so or begun

    def meant(self, meaning: Meaning) -> Roles:
        """The rows that a meaning fits, each mainly or besides."""
        kind, name = meaning
        if kind == AREA:
            rows: Roles = {}
            for muscle in catalogue.area(name) or ():
                for row, step in self.trained.get(muscle, {}).items():
                    rows[row] = min(step, rows.get(row, step))
            return rows
        if kind == LENGTH:
            return {}
        return {row: step for row, step in self.roles(kind, name) if step is not None}

    def roles(self, kind: str, name: str) -> Iterator[tuple[int, int | None]]:
        """For every row, how an action, pattern, implement or the like fits it, None where it does not."""
        return ((row, _role(exercise, kind, name)) for row, exercise in enumerate(self.exercises))

    def at_length(self, rows: Roles, areas: Iterable[str], lengths: set[str]) -> Roles:
        """Those of some rows that work one of the areas at one of the lengths."""
        found: Roles = {}
        for row in rows:
            for area in areas:
                fit = works(self.exercises[row], area, lengths)
                if fit is not None:
                    step = BESIDES if fit[0] == INDIRECT else MAINLY
                    found[row] = min(step, found.get(row, step))
        return found


def _holds(has: Sequence[str], segment: Sequence[str]) -> bool:
    """Whether words of a phrase, one after the other, begin as those of a segment."""
    return any(
        all(word.startswith(part) for word, part in zip(has[start:], segment, strict=False))
        for start in range(len(has) - len(segment) + 1)
    )


def _role(exercise: Exercise, kind: str, name: str) -> int | None:
    if kind == ACTION:
        return MAINLY if name in exercise.actions else BESIDES if name in exercise.assists else None
    if kind == PATTERN:
        return MAINLY if name in exercise.patterns else None
    if kind == SIDES:
        return MAINLY if exercise.unilateral == (name == ONE_SIDE) else None
    return MAINLY if getattr(exercise, kind) == name else None
