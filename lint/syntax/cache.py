"""What one reading of a file leaves to the next.

A part whose text is unchanged is reused as the same object, its places moved along; so whatever was worked
out from it still holds. A fingerprint tells what a part says, whatever it looks like.
"""

from __future__ import annotations

from .tree import Mapping, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Hashable
    from typing import Any

    from ..text.places import Passage, Text
    from .tree import Node

    Held = tuple[Passage, Any]

MOST_COMPARED = 20_000
"""Values of a part, aliases followed, up to which what it says is compared."""


class Fingerprint:
    """What a part says, whatever it looks like: equal for two that differ in comments, blanks or quotes."""

    __slots__ = ("_hash", "_says")

    def __init__(self, node: Node) -> None:
        self._says = _says(node) if node.size <= MOST_COMPARED else (object(),)
        self._hash = hash(self._says)

    def __eq__(self, other: object) -> bool:
        return self is other or (
            isinstance(other, Fingerprint) and self._hash == other._hash and self._says == other._says
        )

    def __hash__(self) -> int:
        return self._hash


def _says(node: Node) -> tuple[object, ...]:
    """A node's words and what they stand for, aliases and merged keys followed."""
    if isinstance(node, Sequence):
        return tuple(map(_says, node.items))
    if isinstance(node, Mapping):
        return ("", *((key, _says(entry.value)) for key, entry in node.entries.items()))
    return (node.text, type(node.plain)) if isinstance(node, Scalar) else ()


_ELSEWHERE = ("&", "*", "<<")
"""What words hold that also mean something elsewhere, or are written elsewhere."""


class PartCache:
    """Parts of a file by their words, from one reading to the next."""

    __slots__ = ("_before", "_grown", "_length", "_now")

    def __init__(self) -> None:
        self._before: dict[Hashable, dict[int, Held]] = {}
        self._now: dict[Hashable, dict[int, Held]] = {}
        self._length = 0
        self._grown = 0

    def turn(self, text: Text) -> None:
        """Begins a new reading; parts that the last one did not have are forgotten."""
        self._before, self._now = self._now, {}
        self._grown = len(text.content) - self._length
        self._length = len(text.content)

    def key(self, node: Node, depends_on: Hashable) -> Hashable | None:
        """By what a part is known: its words, their column and all else that decides what is made of them.

        None where the words mean something elsewhere, too.
        """
        content = node.source.content
        words = content[node.start : node.end]
        if any(sign in words for sign in _ELSEWHERE):
            return None
        return words, node.start - content.rfind("\n", 0, node.start), depends_on

    def taken(self, key: Hashable, node: Node) -> Any:
        """The part held by this key last time, moved to where its words stand now; None if there was none."""
        waiting = self._before.get(key)
        if not waiting:
            return None
        # Of several in the same words the one that stood here, before or after what was edited.
        ways = (at for at in (node.start, node.start - self._grown) if at in waiting)
        held = waiting.pop(next(ways, next(iter(waiting))))
        passage, part = held
        passage.text, passage.start = node.source, node.start
        self._now.setdefault(key, {})[node.start] = held
        return part

    def hold(self, key: Hashable, passage: Passage, part: object) -> None:
        """Keeps a part for the next reading; its places lie in the passage."""
        self._now.setdefault(key, {})[passage.start] = (passage, part)


class GenerationCache:
    """Things once made, by what they were made of, as long as each turn asks for them again."""

    __slots__ = ("_before", "_now")

    def __init__(self) -> None:
        self._before: dict[Any, Any] = {}
        self._now: dict[Any, Any] = {}

    def turn(self) -> None:
        """From now on forgets what nobody asks for."""
        self._before, self._now = self._now, {}

    def get(self, key: Any, make: Callable[[], Any]) -> Any:
        """What was made for a key, else what is made now."""
        known = self._now.get(key)
        if known is None:
            known = self._before.get(key)
            self._now[key] = known = make() if known is None else known
        return known
