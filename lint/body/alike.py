"""Which exercises do the same work, whatever they are done with."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .catalogue import Exercise


def do_the_same_work(one: Exercise, other: Exercise) -> bool:
    """Whether two exercises have the same kind, sides, patterns and main joint actions."""
    return (
        one.kind == other.kind
        and one.unilateral == other.unilateral
        and one.patterns == other.patterns
        and set(one.actions) == set(other.actions)
    )
