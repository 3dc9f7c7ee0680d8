"""Sequences and mappings while the parser is still inside of them."""

from __future__ import annotations

from . import faults
from .tree import KeyValue, Mapping, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from ..text.places import Place
    from .faults import TextFindings
    from .tree import Anchor, Node

_SPECIAL_KEYS = frozenset({"<<", ""})
"""A merge key, and the text of a key that is missing."""


class OpenSequence:
    """A sequence that is still being read; ``last`` is its last item so far."""

    __slots__ = ("anchor", "last", "node")
    key = None

    def __init__(self, node: Sequence, anchor: Anchor | None) -> None:
        self.node = node
        self.anchor = anchor
        self.last: Node = node

    def add(self, item: Node) -> None:
        """Takes the next item."""
        node = self.node
        node.items.append(item)
        node.plain.append(item.plain)
        node.size += item.size
        self.last = item

    def close(self) -> Sequence:
        """The finished sequence."""
        return self.node


class OpenMapping:
    """A mapping that is still being read.

    ``key`` is a key whose value has not come yet, ``last`` the last key or value so far, ``merges`` are the
    values of ``<<``. ``repeat`` is called with how many values a merge repeats, and its place.
    """

    __slots__ = ("anchor", "entries", "findings", "key", "last", "merges", "node", "plain", "repeat")

    def __init__(
        self,
        node: Mapping,
        anchor: Anchor | None,
        findings: TextFindings,
        repeat: Callable[[int, Place], None],
    ) -> None:
        self.node = node
        self.anchor = anchor
        self.findings = findings
        self.repeat = repeat
        self.entries = node.entries
        self.plain = node.plain
        self.key: Node | None = None
        self.last: Node = node
        self.merges: list[Node] = []

    def add(self, node: Node) -> None:
        """Takes first a key, then its value."""
        key = self.key
        if key is None:
            self.key = self.last = node
            return
        self.key = None
        self.put(key, node)

    def put(self, key: Node, value: Node, by: int = 0) -> None:
        """Takes a key together with its value; the key stands ``by`` characters behind its node."""
        self.last = value
        if key.__class__ is not Scalar:
            self.findings.report(faults.key_not_text, key.place)
            return
        text, entries = key.text, self.entries
        if text in entries:
            self.findings.report(faults.duplicate_key, self.node, entries[text], KeyValue(key, value, by=by))
        elif text in _SPECIAL_KEYS:
            self._add_special(key, value)
        else:
            entries[text] = KeyValue(key, value, (), by)
            self.plain[text] = value.plain
            self.node.size += value.size + 1

    def _put(self, entry: KeyValue) -> None:
        text = entry.key.text
        self.entries[text] = entry
        self.plain[text] = entry.value.plain
        self.node.size += entry.value.size + 1

    def _add_special(self, key: Scalar, value: Node) -> None:
        if key.style not in ("", "*"):  # in quotes it is an ordinary key
            self._put(KeyValue(key, value))
        elif key.text == "<<":
            self.merges.append(value)
        elif key.style == "":
            self.findings.report(faults.key_missing, key.place)

    def close(self) -> Mapping | Scalar:
        """The finished mapping, its merged keys last."""
        node = self.node
        if not self.entries and node.source.content.startswith("{{", node.start):
            # A template that nobody has filled in; it is reported where its key is no text.
            return Scalar(node.source, node.start, node.end, "", "*", None)
        for value in self.merges:
            for source in value.items if isinstance(value, Sequence) else (value,):
                self._merge(source)
        return node

    def _merge(self, source: Node) -> None:
        """Takes the keys of another mapping that this one does not have yet."""
        if isinstance(source, Scalar) and source.style == "*":
            return
        if not isinstance(source, Mapping):
            self.findings.report(faults.merge_of_no_keys, source.place)
            return
        place = source.place
        for text, entry in source.entries.items():
            if text not in self.entries:
                self.repeat(len(entry.merged), place)
                self._put(KeyValue(entry.key, entry.value, (place, *entry.merged)))
