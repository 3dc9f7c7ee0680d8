"""What lines have from the superset, circuit or complex that they are a part of."""

from __future__ import annotations

from .pairings import Pairing
from .values import text_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import TypeVar

    from .values import LocatedNode, Reader

    T = TypeVar("T")


def pairing(kind: str, at: LocatedNode, reader: Reader) -> Pairing:
    """The superset, circuit or complex of this kind that a mapping holds."""
    return Pairing(kind, at.place, reader.duration(at.get("rest")), text_of(at.get("note")))


def with_shared(own: dict[str, T], shared: dict[str, T]) -> dict[str, T]:
    """A line's own values, and those that it shares; how long it goes on only where its own do not say."""
    says_how_much = own.keys() & {"reps", "hold", "distance", "timed"}
    return {**{key: one for key, one in shared.items() if key != "timed" or not says_how_much}, **own}
