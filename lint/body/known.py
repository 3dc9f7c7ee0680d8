"""The exercises that a programme may name: the team's own, then those of the catalogue."""

from __future__ import annotations

from . import catalogue
from .catalogue import NameReading
from .names import fold

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping

    from .catalogue import Exercise
    from .name_bags import Bag
    from .name_suggestions import Suggestions

MOST_KEPT = 5000
"""Names that are kept once they are read."""

MOST_SUGGESTED = 1000
"""Unknown names whose suggestions are kept: many more than any sound file has."""


class Known:
    """Finds exercises by name: by a name that a team gives, its own exercises, then those of the catalogue.

    ``own`` are the team's exercises; ``names`` {name: what it means} are names that it gives to exercises. A
    name that stands in none of these lists is read word by word.
    """

    __slots__ = ("_bags", "_listed", "_meant", "_read", "_suggested", "names", "own")

    def __init__(self, own: Iterable[Exercise] = (), names: Mapping[str, str] | None = None) -> None:
        self.own = tuple(own)
        self.names = dict(names or {})
        self._listed = {fold(name): NameReading(one) for one in self.own for name in (one.name, *one.aliases)}
        self._read: dict[str, NameReading | None] = {}
        self._bags: list[Bag] | None = None
        self._suggested: dict[tuple[str, int, str], Suggestions] = {}
        self._meant: dict[str, list[Exercise] | None] = {}
        if self.names:
            # What a given name means must not be a given name itself, so all are looked up before any counts.
            meant = [(fold(name), self.reading(words)) for name, words in self.names.items()]
            self._listed.update((name, reading) for name, reading in meant if reading is not None)
            self._read.clear()
            self._bags = None

    def with_names(self, names: Mapping[str, str]) -> Known:
        """The same exercises with more names, which come before those that are there."""
        return Known(self.own, {**self.names, **names}) if names else self

    def exercise(self, name: str) -> Exercise | None:
        """The exercise that a name means, or None."""
        if self._listed:
            listed = self._listed.get(fold(name))
            if listed is not None:
                return listed.exercise
        found = catalogue.exercise(name)
        if found is None:
            reading = self._word_by_word(name)
            return None if reading is None else reading.exercise
        return found

    def listed(self, name: str) -> NameReading | None:
        """What a name means as it stands in one of the lists, or None."""
        return (self._listed.get(fold(name)) if self._listed else None) or catalogue.named(name)

    def reading(self, name: str) -> NameReading | None:
        """What a name means with all that it says, or None."""
        return self.listed(name) or self._word_by_word(name)

    def _word_by_word(self, name: str) -> NameReading | None:
        if name in self._read:
            return self._read[name]
        from .name_reading import read

        if len(self._read) >= MOST_KEPT:
            self._read.clear()
        reading = self._read[name] = read(name, self.own_bags(), self._listed_exercise)
        return reading

    def own_bags(self) -> list[Bag]:
        """The words of the team's own names."""
        if self._bags is None:
            from .name_bags import bag_for

            named = [(name, one.name) for one in self.own for name in (one.name, *one.aliases)]
            self._bags = [bag_for(name, meant) for name, meant in named]
            self._bags += [bag_for(name, name) for name in self.names if fold(name) in self._listed]
        return self._bags

    def _listed_exercise(self, name: str) -> Exercise | None:
        listed = self.listed(name)
        return None if listed is None else listed.exercise

    def exercises(self) -> list[Exercise]:
        """All exercises, the team's own first."""
        return [*self.own, *catalogue.exercises()]

    def by_rank(self) -> Iterator[Exercise]:
        """All exercises, the most common first; within a rank the team's own first."""
        for rank in catalogue.RANKS:
            yield from (one for one in self.own if one.rank == rank)
            yield from catalogue.of_rank(rank)

    def suggestions(self, name: str, most: int = 3, level: str = "") -> Suggestions:
        """Up to ``most`` exercises that an unknown name may mean, none above an athlete's ``level``."""
        from .name_suggestions import suggestions

        asked = (name, most, level)
        if asked not in self._suggested:
            if len(self._suggested) >= MOST_SUGGESTED:
                self._suggested.clear()
            self._suggested[asked] = suggestions(name, self.exercise, self.own_bags(), most, level)
        return self._suggested[asked]

    def slip_of(self, name: str) -> Exercise | None:
        """The exercise that an unknown name surely is a misspelt name of, or None."""
        suggested = self.suggestions(name)
        return self.exercise(suggested.names[0]) if suggested.slip else None

    def is_no_lift(self, name: str) -> bool:
        """Whether the words of an unknown name say that it is surely no lift, as a stretch or a run."""
        from .no_lifts import is_no_lift

        return is_no_lift(name)

    def may_mean(self, name: str) -> list[Exercise] | None:
        """The exercises that an unknown name may mean by its words. None if it may be anything."""
        if name not in self._meant:
            from .name_suggestions import may_mean

            if len(self._meant) >= MOST_SUGGESTED:
                self._meant.clear()
            self._meant[name] = may_mean(self._taught(name), self.exercise, self.own_bags())
        return self._meant[name]

    def _taught(self, name: str) -> str:
        """The words that a given name stands for, which say more than the name; any other name itself."""
        same = (words for given, words in self.names.items() if fold(given) == fold(name))
        return next(same, name)

    def nearest(self, name: str, most: int = 3, level: str = "") -> list[str]:
        """The names of these suggestions."""
        return list(self.suggestions(name, most, level).names)


CATALOGUE = Known()
"""The catalogue alone."""
