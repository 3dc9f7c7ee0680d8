"""Caches that make the next review of the same file faster.

`PartCache` keeps parts of a file that were read, such as sessions. A part whose text is unchanged is reused
as the same object, so results that were made from it hold, too. `GenerationCache` keeps such results.
A generation is one reading, or one review; both caches forget what the last generation did not use.
"""

from __future__ import annotations

from .tree import Mapping, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Hashable
    from typing import Any

    from ..text.places import Passage, Text
    from .tree import Node

    Stored = tuple[Passage, Any]

MOST_COMPARED = 20_000
"""The most values, aliases followed, that a part may have for its content to be compared."""


class Fingerprint:
    """What a part says; equal for two parts that differ only in comments, blanks or quotes.

    A part of more than `MOST_COMPARED` values equals only itself. What it says is looked at when it is first
    compared: a review that no other follows compares nothing.
    """

    __slots__ = ("_content", "_hash", "_node")

    def __init__(self, node: Node) -> None:
        self._node: Node | None = node
        self._content: tuple[object, ...] = ()
        self._hash = 0

    def _read(self) -> None:
        if self._node is not None:
            self._content = _content(self._node) if self._node.size <= MOST_COMPARED else (object(),)
            self._hash = hash(self._content)
            self._node = None

    def __eq__(self, other: object) -> bool:
        if self is other or not isinstance(other, Fingerprint):
            return self is other
        return hash(self) == hash(other) and self._content == other._content

    def __hash__(self) -> int:
        self._read()
        return self._hash


def _content(node: Node) -> tuple[object, ...]:
    """The words of a node and their types, aliases and merged keys followed."""
    if isinstance(node, Sequence):
        return tuple(map(_content, node.items))
    if isinstance(node, Mapping):
        return ("", *((key, _content(entry.value)) for key, entry in node.entries.items()))
    return (node.text, type(node.plain)) if isinstance(node, Scalar) else ()


_ELSEWHERE = ("&", "*", "<<")
"""Signs that may tie a part to another place in the file: anchors, aliases and merge keys."""


class PartCache:
    """Parts of one file by their text, from one reading of the file to the next."""

    __slots__ = ("_grown", "_last", "_length", "_now")

    def __init__(self) -> None:
        self._last: dict[Hashable, dict[int, Stored]] = {}
        self._now: dict[Hashable, dict[int, Stored]] = {}
        self._length = 0
        self._grown = 0  # characters that the text has gained since the last reading

    def start_generation(self, text: Text) -> None:
        """Begins a new reading of the file; parts that the last reading did not have are forgotten."""
        self._last, self._now = self._now, {}
        self._grown = len(text.content) - self._length
        self._length = len(text.content)

    def key(self, node: Node, depends_on: Hashable) -> Hashable | None:
        """The key of a part: its text, its column, and all else that its reading depends on.

        None where the part may be tied to another place in the file; such a part is not cached.
        """
        content = node.source.content
        words = content[node.start : node.end]
        if any(sign in words for sign in _ELSEWHERE):
            return None
        return words, node.start - content.rfind("\n", 0, node.start), depends_on

    def reuse(self, key: Hashable, node: Node) -> Any:
        """The part with this key from the last reading, moved to the node's place; None if there is none."""
        waiting = self._last.get(key)
        if not waiting:
            return None
        # Several parts may have the same text. The one that stood here is taken, before or after the edit.
        starts = (at for at in (node.start, node.start - self._grown) if at in waiting)
        stored = waiting.pop(next(starts, next(iter(waiting))))
        passage, part = stored
        passage.text, passage.start = node.source, node.start
        self._now.setdefault(key, {})[node.start] = stored
        return part

    def store(self, key: Hashable, passage: Passage, part: object) -> None:
        """Keeps a part for the next reading; its places lie in the passage."""
        self._now.setdefault(key, {})[passage.start] = (passage, part)


class GenerationCache:
    """Results by what they were made of, as long as every generation asks for them again."""

    __slots__ = ("_last", "_now")

    def __init__(self) -> None:
        self._last: dict[Any, Any] = {}
        self._now: dict[Any, Any] = {}

    def start_generation(self) -> None:
        """Begins a new generation; results that the last one did not ask for are forgotten."""
        self._last, self._now = self._now, {}

    def get(self, key: Any, make: Callable[[], Any]) -> Any:
        """The result for a key; made now if neither this generation nor the last one has it."""
        known = self._now.get(key)
        if known is None:
            known = self._last.get(key)
            self._now[key] = known = make() if known is None else known
        return known
