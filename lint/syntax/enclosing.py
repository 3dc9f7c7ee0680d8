"""The groups that an offset of a text lies in: for edits that are worked out long after the text was read."""

from __future__ import annotations

from functools import lru_cache

from .tree import Mapping, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Place, Text
    from .tree import Node


class WayStep:
    """A value on the way to an offset: the ``group`` or list that holds it, and its key or number there."""

    __slots__ = ("group", "key", "node")

    def __init__(self, group: Mapping | Sequence, key: str | int, node: Node) -> None:
        self.group = group
        self.key = key
        self.node = node


@lru_cache(maxsize=2)
def _root(text: Text) -> Node | None:
    from .builder import parse

    return parse(text.name, text.content).root


def way_to(place: Place) -> list[WayStep]:
    """The values that hold the start of a place, the outermost first; none where it is used by an alias."""
    root = None if place.through else _root(place.text)
    steps: list[WayStep] = []
    node, offset = root, place.start
    while node is not None and node.defined is None:
        step = _below(node, offset)
        if step is None:
            break
        steps.append(step)
        node = step.node
    return steps


def _below(node: Node, offset: int) -> WayStep | None:
    if isinstance(node, Sequence):
        for number, item in enumerate(node.items):
            if item.start <= offset < item.end:
                return WayStep(node, number, item)
    elif isinstance(node, Mapping):
        for key, entry in node.entries.items():
            if not entry.merged and entry.key.start <= offset < max(entry.value.end, entry.key.end):
                return WayStep(node, key, entry.value)
    return None
