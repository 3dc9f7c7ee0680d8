"""Checks the names that a team or a programme gives to exercises: ``our names``."""

from __future__ import annotations

from .names import fold

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from .catalogue import Exercise
    from .known import Known


class NameFault:
    """What is unclear about one of the names: its ``index``, what is wrong and what to change.

    ``of_meaning`` is whether its meaning is at fault, and ``near`` are names that may be meant. ``first`` is
    the index of an equal name before it, or None.
    """

    __slots__ = ("change", "counted", "first", "index", "near", "of_meaning")

    def __init__(
        self,
        index: int,
        counted: str,
        change: str,
        *,
        of_meaning: bool = False,
        near: Sequence[str] = (),
        first: int | None = None,
    ) -> None:
        self.index = index
        self.counted = counted
        self.change = change
        self.of_meaning = of_meaning
        self.near = tuple(near)
        self.first = first


def name_faults(names: Sequence[tuple[str, str]], known: Known) -> Iterator[NameFault]:
    """What is unclear in pairs of (name, meaning). ``known`` is what is known without them.

    A meaning must be a known exercise, not a name that is given here too. A name must stand once, and must
    not be the catalogue's own name of another exercise, unless both are small and do the same
    work. A short word for one, as `squat` is for the back squat, is the team's to use: it is written down
    here what it means.
    """
    seen: dict[str, int] = {}
    given = {fold(name) for name, _ in names}
    for index, (name, meant) in enumerate(names):
        first = seen.setdefault(fold(name), index)
        exercise, hidden = known.exercise(meant), known.listed(name)
        if first != index:
            yield NameFault(
                index, f"`{name}` stands here already.", "Give each name one meaning.", first=first
            )
        elif exercise is None and fold(meant) in given:
            counted = f"`{name}` means `{meant}`, which is a name of yours itself."
            yield NameFault(index, counted, "Write the exercise that it means.", of_meaning=True)
        elif exercise is None:
            counted = f"`{name}` means `{meant}`, which is no exercise that is known."
            change = "Write an exercise of the catalogue or of your own."
            yield NameFault(index, counted, change, of_meaning=True, near=known.nearest(meant))
        elif (
            hidden is not None
            and hidden.exercise is not exercise
            and fold(name) == fold(hidden.exercise.name)
            and not _count_alike(hidden.exercise, exercise)
        ):
            counted = f"`{name}` means {exercise.name} here, but it is the name of another exercise."
            yield NameFault(index, counted, "Choose another name, or take it out.")


def _count_alike(one: Exercise, other: Exercise) -> bool:
    """Whether two small exercises do the same work by the same joint actions: no load leans on the name."""
    small = one.capacity == other.capacity == "light"
    return small and set(one.actions) == set(other.actions) and one.direct == other.direct
