"""The exercises that a programme may name: the team's own, then those of the catalogue."""

from __future__ import annotations

from . import catalogue
from .names import fold

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from .catalogue import Exercise


class Known:
    """Finds exercises by name or alias. A team's own exercise comes before one of the catalogue."""

    __slots__ = ("_own", "own")

    def __init__(self, own: Iterable[Exercise] = ()) -> None:
        self.own = tuple(own)
        self._own = {fold(name): one for one in self.own for name in (one.name, *one.aliases)}

    def exercise(self, name: str) -> Exercise | None:
        """The exercise with this name or alias, or None."""
        return (self._own.get(fold(name)) if self._own else None) or catalogue.exercise(name)

    def exercises(self) -> list[Exercise]:
        """All exercises, the team's own first."""
        return [*self.own, *catalogue.exercises()]

    def by_rank(self) -> Iterator[Exercise]:
        """All exercises, the most common first; within a rank the team's own first. Each is read when asked for."""
        for rank in catalogue.RANKS:
            yield from (one for one in self.own if one.rank == rank)
            yield from catalogue.of_rank(rank)

    def nearest(self, name: str, most: int = 3) -> list[str]:
        """Names of the exercises nearest to a name that is none: the team's own, then the catalogue's, each
        the nearest first, of those as near the more common.
        """
        if not self.own:
            return catalogue.nearest_exercises(name, most)
        from .nearest import nearest

        own = nearest(name, ((word, one.name) for one in self.own for word in (one.name, *one.aliases)), most)
        return [*own, *(other for other in catalogue.nearest_exercises(name, most) if other not in own)][
            :most
        ]


CATALOGUE = Known()
"""The catalogue alone."""
