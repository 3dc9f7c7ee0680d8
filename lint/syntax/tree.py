"""The tree of a YAML text: every key and every value knows its place."""

from __future__ import annotations

from abc import abstractmethod

from ..text.places import Place

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ..findings.finding import Finding
    from ..text.places import Text

    ParserEvent = Any  # the type stubs call the marks optional, but the parsers always set them


class Node:
    """A scalar, a sequence or a mapping, and where it stands.

    ``plain`` is the same as plain Python data. ``size`` counts the node and all that it holds, aliases
    followed. For an alias the place is that of ``*name``, and ``defined`` is the place of the words that it
    repeats; for any other node ``defined`` is None.
    """

    __slots__ = ("defined", "end", "plain", "source", "start")
    size: int

    def __init__(self, source: Text, start: int, end: int, plain: Any, defined: Place | None = None) -> None:
        self.source = source
        self.start = start
        self.end = end
        self.plain = plain
        self.defined = defined

    @property
    def place(self) -> Place:
        """Where it is used; for an alias that is the place of ``*name``."""
        return Place(self.source, self.start, self.end)

    @abstractmethod
    def moved(self, by: int) -> Node:
        """The same words so many characters further on in the text."""


class Scalar(Node):
    """A single value. ``text`` is what is written, without quotes; ``style`` is "", "'", '"', "|" or ">".

    The style "*" marks what cannot be used, such as an alias without an anchor. It has neither text nor
    value, and a finding has already reported it.
    """

    __slots__ = ("style", "text")
    size = 1

    def __init__(
        self,
        source: Text,
        start: int,
        end: int,
        text: str,
        style: str,
        plain: Any,
        defined: Place | None = None,
    ) -> None:
        self.source = source
        self.start = start
        self.end = end
        self.text = text
        self.style = style
        self.plain = plain
        self.defined = defined

    def used_at(self, start: int, end: int) -> Scalar:
        """The same value, used by an alias at this place."""
        return Scalar(self.source, start, end, self.text, self.style, self.plain, self.place)

    def moved(self, by: int) -> Scalar:
        """The same words so many characters further on in the text."""
        return Scalar(self.source, self.start + by, self.end + by, self.text, self.style, self.plain)


class Sequence(Node):
    """A list of values."""

    __slots__ = ("items", "size")

    def __init__(
        self,
        source: Text,
        start: int,
        end: int,
        items: list[Node],
        plain: Any,
        size: int,
        defined: Place | None = None,
    ) -> None:
        self.source, self.start, self.end = source, start, end
        self.plain, self.defined = plain, defined
        self.items = items
        self.size = size

    def used_at(self, start: int, end: int) -> Sequence:
        """The same list, used by an alias at this place."""
        return Sequence(self.source, start, end, self.items, self.plain, self.size, self.place)

    def moved(self, by: int) -> Sequence:
        """The same words so many characters further on in the text."""
        items = [item.moved(by) for item in self.items]
        return Sequence(self.source, self.start + by, self.end + by, items, self.plain, self.size)


class Mapping(Node):
    """Keys with their values, in the order of the file; merged keys come after the mapping's own."""

    __slots__ = ("entries", "size")

    def __init__(
        self,
        source: Text,
        start: int,
        end: int,
        entries: dict[str, KeyValue],
        plain: Any,
        size: int,
        defined: Place | None = None,
    ) -> None:
        self.source, self.start, self.end = source, start, end
        self.plain, self.defined = plain, defined
        self.entries = entries
        self.size = size

    def used_at(self, start: int, end: int) -> Mapping:
        """The same keys, used by an alias at this place."""
        return Mapping(self.source, start, end, self.entries, self.plain, self.size, self.place)

    def moved(self, by: int) -> Mapping:
        """The same words so many characters further on in the text."""
        entries = {text: KeyValue(one.key, one.value.moved(by), by=by) for text, one in self.entries.items()}
        return Mapping(self.source, self.start + by, self.end + by, entries, self.plain, self.size)


class KeyValue:
    """A key and its value. ``merged`` are the places of the ``<<`` values it came by, outermost first.

    ``by`` is how many characters the key stands behind the node that it is given by; few keys are asked for.
    """

    __slots__ = ("_by", "_key", "merged", "value")

    def __init__(self, key: Scalar, value: Node, merged: tuple[Place, ...] = (), by: int = 0) -> None:
        self._key = key
        self._by = by
        self.value = value
        self.merged = merged

    @property
    def key(self) -> Scalar:
        """The node of the key."""
        if self._by:
            self._key, self._by = self._key.moved(self._by), 0
        return self._key


class Anchor:
    """A ``&name`` in the file: its place, and the number of aliases that use it."""

    __slots__ = ("name", "node", "place", "used")

    def __init__(self, name: str, place: Place) -> None:
        self.name = name
        self.place = place
        self.used = 0
        self.node: Scalar | Sequence | Mapping | None = None  # None while the node is still being read


class Reading:
    """The result of reading one file.

    ``root`` is the node at the top, or None where nothing could be read; where it is no Mapping, a finding
    reports that. ``opened`` is False if the file could not be opened. ``anchors`` are in the order of the
    file; a name may come twice.
    """

    __slots__ = ("anchors", "findings", "opened", "root", "text")

    def __init__(self, text: Text, *, opened: bool = True) -> None:
        self.text = text
        self.root: Node | None = None
        self.findings: list[Finding] = []
        self.anchors: list[Anchor] = []
        self.opened = opened
