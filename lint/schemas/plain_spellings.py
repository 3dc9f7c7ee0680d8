"""Edits that write the quantities of a file in their plain spelling, which means the same."""

from __future__ import annotations

from ... import schema as schemas
from ..findings.finding import Edit
from ..syntax.additions import before_next_key
from ..syntax.tree import Mapping, Scalar, Sequence
from . import spellings

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from ..syntax.tree import Node
    from .violation import Schema

    Parts = list[Any]

SPELT = ("programme", "athlete")
"""Kinds of files with quantities."""


def plain_spellings(root: Node, schema_name: str, within: tuple[int, int] | None = None) -> Iterator[Edit]:
    """An edit for each quantity that is read but not in its plain spelling, in the order of the text.

    Files of kinds without quantities have none. What stands in a group that is used again through an alias is
    written once, where it stands. ``within`` are the offsets of a part of the text: only what touches it is
    looked at.
    """
    if isinstance(root, Mapping) and schema_name in SPELT:
        start, end = within or (root.start, root.end)
        found = _Walk(schemas.load(schema_name), start, end).edits(root)
        yield from (one for one in found if one.place.start <= end and start <= one.place.end)


class _Walk:
    """Walks a tree and its schema side by side."""

    def __init__(self, schema: Schema, start: int, end: int) -> None:
        self.start = start
        self.end = end
        self.definitions: dict[str, Any] = schema.get("$defs", {})
        self.schema = schema
        self._branches: dict[tuple[int, ...], Parts] = {}

    def edits(self, root: Mapping) -> Iterator[Edit]:
        waiting: list[tuple[Node, Parts]] = [(root, self.branches([self.schema]))]
        while waiting:
            node, parts = waiting.pop()
            if node.defined is not None or node.end < self.start or node.start > self.end:
                continue
            if isinstance(node, Sequence):
                inner = self.branches([part["items"] for part in parts if "items" in part])
                waiting += [(item, inner) for item in reversed(node.items)]
            elif isinstance(node, Mapping):
                below = []
                for key, entry in node.entries.items():
                    if entry.merged or entry.key.start > self.end or entry.value.end < self.start:
                        continue
                    names = self.branches(
                        [part["propertyNames"] for part in parts if "propertyNames" in part]
                    )
                    yield from self.plain(entry.key, names)
                    pair = _sets_and_reps(node, key)
                    if pair is not None:
                        yield pair
                    else:
                        below.append((entry.value, self.branches([_below(part, key) for part in parts])))
                waiting += reversed(below)
            else:
                yield from self.plain(node, parts)

    def plain(self, node: Node, parts: Parts) -> Iterator[Edit]:
        """The edit for one value or key, if it is a quantity that is not plain."""
        if not isinstance(node, Scalar):
            return
        kind = next((kind for kind in spellings.KINDS if self.definitions.get(kind) in parts), None)
        plain = None if kind is None else spellings.plain_spelling(kind, node.plain)
        if plain not in (None, node.text, node.text.lower()):
            yield Edit(node.place, str(plain), f"write {plain}")

    def branches(self, parts: Parts) -> Parts:
        """Some parts, what they refer to, and the branches of their conditions.

        Few combinations come up in however long a file. Schemas are loaded once, so that `id` tells parts
        apart.
        """
        known = tuple(map(id, parts))
        if known not in self._branches:
            self._branches[known] = self._all_branches(parts)
        return self._branches[known]

    def _all_branches(self, parts: Parts) -> Parts:
        found: Parts = []
        waiting = [part for part in parts if isinstance(part, dict)]
        while waiting:
            part = waiting.pop()
            found.append(part)
            further = [part.get("then"), part.get("else")]
            if "$ref" in part:
                further.append(self.definitions[part["$ref"].removeprefix("#/$defs/")])
            waiting += [one for one in further if isinstance(one, dict)]
        return found


def _below(part: Schema, key: str) -> Any:
    properties = part.get("properties", {})
    return properties[key] if key in properties else part.get("additionalProperties")


def _sets_and_reps(group: Mapping, key: str) -> Edit | None:
    """``reps: 3x12`` as ``sets: 3`` and ``reps: 12``, where the other of the two has no line of its own."""
    value = group.entries[key].value
    if key not in ("sets", "reps") or {"sets", "reps"} <= group.entries.keys() or value.defined is not None:
        return None
    pair = spellings.sets_of_reps(value.plain)
    if pair is None:
        return None
    words = f"sets: {pair[0]}{before_next_key(group, key)}reps: {pair[1]}"
    place = group.source.place(group.entries[key].key.start, value.end)
    return Edit(place, words, f"write sets: {pair[0]} and reps: {pair[1]}")
