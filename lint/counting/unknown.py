"""What unknown exercises may be. Of many in one place the first are looked up; the others may be anything."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ..body.catalogue import Exercise
    from .set_group import SetGroup

MOST_LOOKED_UP = 200
"""Unknown names that are looked up: many more than any sound file has."""


def slip_of(group: SetGroup, known: dict[str, Exercise | None]) -> Exercise | None:
    """The exercise that an unknown name surely is a slip of; ``known`` keeps what was looked up."""
    if group.name not in known and len(known) < MOST_LOOKED_UP:
        known[group.name] = group.programme.known.slip_of(group.name)
    return known.get(group.name)


def is_no_lift(group: SetGroup) -> bool:
    """Whether it surely is no lift: by its kind or, where no exercise is known, by the words of its name."""
    from .no_lifts import is_no_lift as by_its_line

    return group.exercise is None and by_its_line(group.prescription, group.work, group.programme.known)


def is_unknown(group: SetGroup, known: dict[str, Exercise | None]) -> bool:
    """Whether nobody knows its exercise, it may be a lift, and is no slip of a known name; see `slip_of`."""
    return group.exercise is None and not is_no_lift(group) and slip_of(group, known) is None


def meant_by(groups: list[SetGroup]) -> Iterator[Exercise]:
    """The exercises of groups of sets: the known ones, and those of which a name surely is a slip."""
    slips: dict[str, Exercise | None] = {}
    for group in groups:
        meant = group.exercise or slip_of(group, slips)
        if meant is not None:
            yield meant


def may_be(groups: list[SetGroup], test: Callable[[Exercise], bool]) -> list[str]:
    """Names of unknown exercises that may be one that passes a test, as far as their words tell.

    Slips are left out: it is known what they mean.
    """
    unknown = {group.name: group.programme.known for group in groups if group.exercise is None}
    found: list[str] = []
    for number, (name, known) in enumerate(unknown.items()):
        if number >= MOST_LOOKED_UP:
            found.append(name)
        elif known.slip_of(name) is None:
            meant = known.may_mean(name)
            if meant is None or any(map(test, meant)):
                found.append(name)
    return found


MOST_UNREAD = 5
"""Unknown exercises that may train something, up to which it is said to be missing unless one does (common
practice, no source).
"""


def are_many(names: list[str]) -> bool:
    """Whether so many unknown exercises may be something that nobody can say whether it is missing."""
    return len(names) > MOST_UNREAD
