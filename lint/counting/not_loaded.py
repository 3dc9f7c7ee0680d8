"""What an athlete spares, asked of exercises."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..body.catalogue import Exercise
    from ..body.known import Known
    from ..body.restrictions import Spared
    from ..model.athlete import Restriction


class NotLoaded:
    """What an athlete spares in any week of a programme; asked once of each exercise."""

    __slots__ = ("_known", "_spared")

    def __init__(self, restrictions: Iterable[Restriction], known: Known) -> None:
        spared = dict.fromkeys((one.subject.words, tuple(one.may_stay)) for one in restrictions)
        self._spared: list[tuple[str, Spared]] = []
        if spared:
            from ..body.restrictions import read

            self._spared = [(words, read(words, known, may_stay)) for words, may_stay in spared]
        self._known: dict[Exercise, str] = {}

    def loaded_by(self, exercise: Exercise) -> str:
        """The words for what an exercise loads of it; empty where it loads nothing."""
        known = self._known.get(exercise)
        if known is None:
            loaded = (words for words, spared in self._spared if not spared.suits(exercise))
            known = self._known[exercise] = next(loaded, "")
        return known
