"""The day of a session, moved."""

from __future__ import annotations

from ..findings.finding import Edit
from ..model.weeks import weekday
from ..syntax.enclosing import way_to
from ..syntax.tree import Mapping, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..model.sessions import Session
    from ..syntax.tree import Node


def moved(session: Session, day: str, to: str) -> Iterator[Edit]:
    """Writes another weekday in the place of one, both as words: ``Monday``."""
    for item in _items(_days_of(session)):
        if isinstance(item, Scalar) and weekday(item.text) == day.lower():
            label = f"move {session.name} to {to}"
            yield Edit(item.place, to.lower(), label, certain=False)
            return


def _days_of(session: Session) -> Node | None:
    """What stands under the days of a session; None where that is used elsewhere, too."""
    for step in way_to(session.place):
        group = step.group
        if isinstance(group, Mapping) and "session" in group.entries:
            entry = group.entries.get("day") or group.entries.get("days")
            is_own = entry is not None and not entry.merged and entry.value.defined is None
            return entry.value if entry is not None and is_own else None
    return None


def _items(node: Node | None) -> list[Node]:
    return node.items if isinstance(node, Sequence) else [node] if node is not None else []
