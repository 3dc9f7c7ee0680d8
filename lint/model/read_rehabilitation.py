"""A stage of rehabilitation: tree -> what it is, who advises it, and until when it holds."""

from __future__ import annotations

from ..syntax.tree import Mapping
from .programme import Rehabilitation
from .values import places_of, text_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .values import LocatedNode, Reader


def read_rehabilitation(reader: Reader, at: LocatedNode) -> Rehabilitation | None:
    """The stage that a programme states; None where that cannot be read."""
    if not isinstance(at.node, Mapping):
        return None
    return Rehabilitation(
        at.place,
        text_of(at.get("stage")),
        text_of(at.get("advised by")),
        reader.day(at.get("until")),
        places_of(at, "stage", "until"),
    )
