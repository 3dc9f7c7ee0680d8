"""What stands at an offset of a text that could be parsed: the path of nodes that leads there in its tree."""

from __future__ import annotations

from ...model.sessions import WORK_KEYS
from ...model.weeks import weeks
from ...syntax.tree import Mapping, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Literal

    from ...syntax.tree import Node
    from ...text.places import Place
    from .context import KeyPath

    PathPart = Literal["key", "value", "merged", ""]

BY_WEEK = frozenset({*WORK_KEYS, "rounds"})
"""Keys whose value may be one value for each week or run of weeks."""


class NodePath:
    """What stands at an offset.

    ``key_path`` leads there from the top, and ``nodes`` are the nodes on the way: the top first, the value at
    the path last. ``part`` says where the offset lies:

    - "key": in the last key;
    - "value": in the last node, a single value or an alias (``*name``);
    - "merged": in an alias or group that ``<<`` merges into the last node;
    - "": between all these.

    The text that stands there goes from ``start`` to ``end``.
    """

    __slots__ = ("end", "key_path", "nodes", "part", "start")

    def __init__(
        self, key_path: KeyPath, nodes: tuple[Node, ...], part: PathPart, start: int, end: int
    ) -> None:
        self.key_path = key_path
        self.nodes = nodes
        self.part: PathPart = part
        self.start = start
        self.end = end

    @property
    def node(self) -> Node:
        """The value at the path."""
        return self.nodes[-1]

    @property
    def text(self) -> str:
        """The text of a single value, without quotes; "" for anything else."""
        return self.node.text if isinstance(self.node, Scalar) else ""

    @property
    def keys(self) -> tuple[str, ...]:
        """The keys of the path, without places in lists and without weeks."""
        keys = [key for key in self.key_path if isinstance(key, str)]
        if self.weeks:
            keys.pop()
        return tuple(keys)

    @property
    def key(self) -> str:
        """The last of the keys; "" at the top."""
        return self.keys[-1] if self.keys else ""

    @property
    def parent_key(self) -> str:
        """The key above that; "" where there is none."""
        return self.keys[-2] if len(self.keys) > 1 else ""

    @property
    def weeks(self) -> tuple[tuple[int, int], ...]:
        """The runs of weeks of a value by week, each as first and last; empty where the value is none."""
        path = self.key_path
        if len(path) < 2 or path[-2] not in BY_WEEK or not isinstance(path[-1], str):
            return ()
        return weeks(path[-1])

    def enclosing(self, key: str) -> Mapping | None:
        """The innermost group on the path that has a key."""
        for node in reversed(self.nodes):
            if isinstance(node, Mapping) and key in node.entries:
                return node
        return None


def node_path_at(root: Node, offset: int) -> NodePath:
    """What stands at an offset of a tree; just behind a word still counts as in it."""
    path: list[str | int] = []
    nodes = [root]
    while True:
        node = nodes[-1]
        if len(nodes) > 1 and node.defined is not None:
            return NodePath(tuple(path), tuple(nodes), "value", node.start, node.end)
        if isinstance(node, Sequence):
            index = next((at for at, item in enumerate(node.items) if _holds(item, offset)), None)
            if index is None:
                return NodePath(tuple(path), tuple(nodes), "", offset, offset)
            path.append(index)
            nodes.append(node.items[index])
        elif isinstance(node, Mapping):
            for key, entry in node.entries.items():
                merged = entry.merged[0] if entry.merged else None
                if merged is not None and not _holds(merged, entry.key.start):
                    if _holds(merged, offset):
                        return NodePath(tuple(path), tuple(nodes), "merged", merged.start, merged.end)
                elif _holds(entry.key, offset):
                    return NodePath(
                        (*path, key), (*nodes, entry.value), "key", entry.key.start, entry.key.end
                    )
                elif _holds(entry.value, offset):
                    path.append(key)
                    nodes.append(entry.value)
                    break
            else:
                return NodePath(tuple(path), tuple(nodes), "", offset, offset)
        else:
            return NodePath(tuple(path), tuple(nodes), "value", node.start, node.end)


def _holds(part: Node | Place, offset: int) -> bool:
    return part.start <= offset <= part.end
