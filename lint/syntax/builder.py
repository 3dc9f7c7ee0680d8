"""YAML text -> tree: the events of the parser built up, each key and value at its place."""

from __future__ import annotations

import re

from yaml.error import YAMLError
from yaml.events import (
    AliasEvent,
    DocumentStartEvent,
    MappingStartEvent,
    ScalarEvent,
    SequenceStartEvent,
    StreamEndEvent,
)

from ..text import files
from ..text.files import LONGEST_FILE
from ..text.places import Text
from . import faults
from .scalars import OutOfRangeError, core_value, taken_elsewhere
from .tree import Anchor, KeyValue, Mapping, Reading, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any, NoReturn

    from ..findings.finding import Finding
    from ..text.places import Place
    from .tree import Event, Node

try:
    from yaml.cyaml import CParser as Parser  # type: ignore[attr-defined]
except ImportError:  # PyYAML built without libyaml: the same events, more slowly
    from yaml.loader import BaseLoader as Parser  # type: ignore[assignment]

MOST_REPEATED = 200_000
"""Values that all aliases and merge keys of a file may bring in together."""

_CORE = "tag:yaml.org,2002:"
_UNUSUAL_KEYS = frozenset({"<<", ""})
_KINDS = {"int": int, "float": float, "bool": bool, "null": type(None)}
_TAG = r"(?<![^ \t\r\n])!(?:<[^>]*>|[^ \t\r\n]*)"
_PROPERTIES = rf"(?:&[^ \t\r\n,\[\]{{}}]*|{_TAG}|\#[^\r\n]*|[ \t\r\n]+)*"


def parse(name: str, content: str) -> Reading:
    """The tree of a text, with findings for whatever is wrong in it; never raises on any text.

    A byte order mark at its beginning is no part of it; a second one is.
    """
    return _parsed(name, content.removeprefix("\ufeff"))


def _parsed(name: str, content: str) -> Reading:
    if len(content) > LONGEST_FILE:
        reading = Reading(Text(name, ""))
        reading.findings.append(faults.file_too_large(reading.text.place(0, 0), LONGEST_FILE))
        return reading
    # One fast look tells texts with nothing but letters, signs, blanks and line ends from the few others.
    plain = content.replace("\n", " ").replace("\t", " ").replace("\r", " ").isprintable()
    builder = _Builder(Text(name, content if plain else _without_halves(content)))
    if "<<<<<<<" in content or ">>>>>>>" in content:
        builder.reading.findings = faults.merge_conflicts(builder.text)
    if not builder.reading.findings:
        read_it = builder.read if plain else builder.read_odd
        read_it(content)
    builder.finish()
    return builder.reading


def _without_halves(content: str) -> str:
    """The text with halves of characters, which no file can hold, replaced by U+FFFD."""
    return re.sub("[\ud800-\udfff]", "\ufffd", content)


def read(path: str) -> Reading:
    """The tree of the file at ``path``; whatever keeps it from being read becomes a finding."""
    try:
        content = files.content(path)
    except files.UnreadableError as error:
        reading = Reading(error.place.text, opened=error.opened)
        reading.findings.append(faults.unreadable(error))
        return reading
    return _parsed(path, content)


class _StopError(Exception):
    """The rest of the text is not read; a finding tells why."""


class _OpenList:
    """A list that is still being read."""

    __slots__ = ("anchor", "last", "node")

    def __init__(self, node: Sequence, anchor: Anchor | None) -> None:
        self.node = node
        self.anchor = anchor
        self.last: Node = node

    def add(self, item: Node) -> None:
        node = self.node
        node.items.append(item)
        node.plain.append(item.plain)
        node.size += item.size
        self.last = item

    def close(self) -> Sequence:
        return self.node


class _OpenKeys:
    """A group of keys that is still being read."""

    __slots__ = ("anchor", "builder", "entries", "key", "last", "merges", "node", "plain")

    def __init__(self, node: Mapping, anchor: Anchor | None, builder: _Builder) -> None:
        self.node = node
        self.anchor = anchor
        self.builder = builder
        self.entries = node.entries
        self.plain = node.plain
        self.key: Node | None = None
        self.last: Node = node
        self.merges: list[Node] = []

    def add(self, node: Node) -> None:
        """Takes a key and its value in turn."""
        self.last = node
        key = self.key
        if key is None:
            self.key = node
            return
        self.key = None
        if key.__class__ is not Scalar:
            self.builder.add(faults.key_not_text, key.place)
            return
        text, entries = key.text, self.entries
        if text in entries:
            self.builder.add(faults.duplicate_key, entries[text].key.place, key.place, text)
        elif text in _UNUSUAL_KEYS:
            self.add_unusual(key, node)
        else:
            entries[text] = KeyValue(key, node)
            self.plain[text] = node.plain
            self.node.size += node.size + 1

    def put(self, entry: KeyValue) -> None:
        text = entry.key.text
        self.entries[text] = entry
        self.plain[text] = entry.value.plain
        self.node.size += entry.value.size + 1

    def add_unusual(self, key: Scalar, value: Node) -> None:
        if key.style not in ("", "*"):  # in quotes it is a key like any other
            self.put(KeyValue(key, value))
        elif key.text == "<<":
            self.merges.append(value)
        elif key.style == "":
            self.builder.add(faults.key_missing, key.place)

    def close(self) -> Mapping | Scalar:
        """What the group comes to, merged keys last."""
        node = self.node
        if not self.entries and node.source.content.startswith("{{", node.start):
            return Scalar(node.source, node.start, node.end, "", "*", None)
        for value in self.merges:
            for source in value.items if isinstance(value, Sequence) else (value,):
                self.merge(source)
        return node

    def merge(self, source: Node) -> None:
        """Takes over the keys that this group does not have yet."""
        if isinstance(source, Scalar) and source.style == "*":
            return
        if not isinstance(source, Mapping):
            self.builder.add(faults.merge_of_no_keys, source.place)
            return
        place = source.place
        for text, entry in source.entries.items():
            if text not in self.entries:
                self.builder.repeat(len(entry.merged), place)
                self.put(KeyValue(entry.key, entry.value, (place, *entry.merged)))


class _Builder:
    """Reads one text; the outcome is ``reading``."""

    __slots__ = ("anchors", "counts", "known", "lasts", "odd", "reading", "repeated", "stand_ins", "text")

    def __init__(self, text: Text) -> None:
        self.text = text
        self.reading = Reading(text)
        self.anchors: dict[str, Anchor] = {}
        self.counts: dict[Callable[..., Finding], int] = {}
        self.lasts: dict[Callable[..., Finding], Finding] = {}
        self.known: dict[str, Any] = {"<<": "<<"}
        self.repeated = 0
        self.odd = False
        self.stand_ins: dict[int, int] = {}

    def read(self, content: str) -> None:
        """Fills the reading; ``content`` is the text as the parser is to see it."""
        documents = Sequence(self.text, 0, 0, [], [], 0)
        stack: list[_OpenList | _OpenKeys] = [_OpenList(documents, None)]
        try:
            self.walk(Parser(content), stack)
            self.top(documents)
        except _StopError:
            pass
        except (YAMLError, ValueError) as error:  # the slower parser lets a ValueError through
            from .parser_errors import explain

            for finding in explain(self.text, error, [frame.node.start for frame in stack[1:]]):
                self.keep(finding)

    def read_odd(self, content: str) -> None:
        """Reads a text that holds characters which do not print."""
        from . import characters

        for make, at, chars in characters.strange(content):
            self.add(make, self.text, at, chars)
        self.odd = True
        there = characters.stand_ins(self.text.content)
        self.stand_ins = {stand_in: char for char, stand_in in there.items()}
        self.read(self.text.content.translate(there))

    def walk(self, parser: Any, stack: list[_OpenList | _OpenKeys]) -> None:
        """Turns events into nodes, until the text ends or a second document starts."""
        text, known = self.text, self.known
        next_event = parser.get_event
        frame = stack[0]
        begun = False
        while True:
            event = next_event()
            kind = event.__class__
            if kind is ScalarEvent:
                words = event.value
                if words in known and not event.style and event.anchor is None and event.tag is None:
                    start, end = event.start_mark.index, event.end_mark.index
                    frame.add(Scalar(text, start, end, words, "", known[words]))
                else:
                    frame.add(self.scalar(event))
            elif kind is MappingStartEvent or kind is SequenceStartEvent:
                if len(stack) > faults.DEEPEST:
                    self.stop(faults.too_much_nesting, self.spot(event))
                frame = self.open(event)
                stack.append(frame)
            elif kind is AliasEvent:
                frame.add(self.alias(event))
            elif kind is DocumentStartEvent:
                if begun:
                    self.add(faults.second_document, self.spot(event))
                    return
                begun = True
            elif kind is StreamEndEvent:
                return
            elif len(stack) > 1:
                node = self.close(stack.pop(), event)
                frame = stack[-1]
                frame.add(node)

    def scalar(self, event: Event) -> Scalar:
        """A scalar in quotes, with an anchor or a tag, or met for the first time."""
        words: str = event.value
        end: int = event.end_mark.index
        style: str = event.style or ""
        bare = event.anchor is None and event.tag is None
        start: int = event.start_mark.index if bare else self.past_properties(event)
        if self.stand_ins:
            words = words.translate(self.stand_ins)
        if style == '"':
            words = _without_halves(words)  # the slower parser makes them of escapes
        if style in ("|", ">"):
            end = start + len(self.text.content[start:end].rstrip(" \t\r\n"))
        if self.odd and style == "":
            words, start, end = self.without_odd_blanks(words, start, end)
        place = self.text.place(start, end)
        value: Any = words
        if event.tag is not None:
            value = self.tagged(event, words, place)
        elif style == "":
            value = self.value(words, place)
        node = Scalar(self.text, start, end, words, style, value)
        if event.anchor is not None:
            self.anchor(event).node = node
        return node

    def without_odd_blanks(self, words: str, start: int, end: int) -> tuple[str, int, int]:
        """Plain words without the blanks around them that YAML takes for letters; reports those."""
        from .characters import SPACES, odd_blanks

        left = len(words) - len(words.lstrip(SPACES))
        right = len(words) - max(left, len(words.rstrip(SPACES)))
        if left:
            self.add(odd_blanks, self.text, start, start + left)
        if right:
            self.add(odd_blanks, self.text, end - right, end)
        return words[left : len(words) - right], start + left, end - right

    def value(self, words: str, place: Place) -> Any:
        """The value of plain words; reports what other programs would make of them."""
        try:
            value = core_value(words)
        except OutOfRangeError:
            self.add(faults.number_out_of_range, place)
            return words
        elsewhere = taken_elsewhere(words)
        if elsewhere:
            self.add(faults.quote_this, place, elsewhere)
        elif not self.stand_ins:
            self.known[words] = value
        return value

    def tagged(self, event: Event, words: str, place: Place) -> Any:
        """The value of a scalar with a tag, if that is one of the core tags and fits."""
        tag = str(event.tag)
        if tag in ("!", _CORE + "str"):
            return words
        try:
            value = core_value(words)
        except OutOfRangeError:
            self.add(faults.number_out_of_range, place)
            return words
        kind = tag.removeprefix(_CORE)
        if kind == "float" and type(value) is int:
            return float(value)
        if tag != kind and kind in _KINDS and type(value) is _KINDS[kind]:
            return value
        self.tag_unsupported(event, place.start)
        return words if event.style else value

    def open(self, event: Event) -> _OpenList | _OpenKeys:
        """The list or group of keys that begins here, still without what it holds."""
        start = event.start_mark.index
        anchor = None
        is_list = event.__class__ is SequenceStartEvent
        if event.tag is not None or event.anchor is not None:
            start = self.past_properties(event)
            anchor = self.anchor(event) if event.anchor is not None else None
            if event.tag not in (None, "!", _CORE + ("seq" if is_list else "map")):
                self.tag_unsupported(event, start)
        if is_list:
            return _OpenList(Sequence(self.text, start, start, [], [], 1), anchor)
        return _OpenKeys(Mapping(self.text, start, start, {}, {}, 1), anchor, self)

    def close(self, frame: _OpenList | _OpenKeys, event: Event) -> Node:
        """The finished list or group of keys, with its end and under its name."""
        node = frame.close()
        end: int = event.end_mark.index
        # Only a closing bracket has a width; otherwise the event stands at whatever comes next.
        node.end = end if end > event.start_mark.index else frame.last.end
        if frame.anchor is not None:
            frame.anchor.node = node
        return node

    def alias(self, event: Event) -> Node:
        place = self.spot(event)
        anchor = self.anchors.get(event.anchor)
        if anchor is None:
            self.add(faults.alias_unknown, place, self.anchors)
            return self.nowhere(place)
        anchor.used += 1
        node = anchor.node
        if node is None:
            self.add(faults.alias_loop, place, anchor.place)
            return self.nowhere(place)
        self.repeat(node.size, place)
        return node.used_at(place.start, place.end)

    def nowhere(self, place: Place) -> Scalar:
        return Scalar(self.text, place.start, place.end, "", "*", None)

    def repeat(self, size: int, place: Place) -> None:
        """Counts what an alias brings in; stops when that is too much."""
        self.repeated += size
        if self.repeated > MOST_REPEATED:
            self.stop(faults.too_much_repetition, place, MOST_REPEATED)

    def anchor(self, event: Event) -> Anchor:
        """Remembers the ``&name`` before a value; a name given twice means the later one from here on."""
        word = f"&{event.anchor}"
        at = self.text.content.find(word, event.start_mark.index)
        anchor = Anchor(event.anchor, self.text.place(at, at + len(word)))
        self.anchors[event.anchor] = anchor
        self.reading.anchors.append(anchor)
        return anchor

    def tag_unsupported(self, event: Event, start: int) -> None:
        """Reports the tag that stands between an event's start and its value's."""
        found = re.compile(_TAG).search(self.text.content, event.start_mark.index, start)
        span = found.span() if found else (event.start_mark.index, start)
        self.add(faults.tag_unsupported, self.text.place(*span))

    def spot(self, event: Event) -> Place:
        return self.text.place(event.start_mark.index, event.end_mark.index)

    def stop(self, make: Callable[..., Finding], *about: Any) -> NoReturn:
        self.add(make, *about)
        raise _StopError

    def past_properties(self, event: Event) -> int:
        """Where the value itself starts, behind its anchor and tag."""
        end: int = event.end_mark.index
        found = re.compile(_PROPERTIES).match(self.text.content, event.start_mark.index)
        return min(found.end(), end) if found else end

    def top(self, documents: Sequence) -> None:
        """Sets the root, and says so if it is not what a file should hold."""
        root = documents.items[0] if documents.items else None
        if root is None or (isinstance(root, Scalar) and root.start == root.end):
            self.add(faults.file_empty, self.text.place(0, 0))
            return
        if isinstance(root, Scalar) and root.style == "*":
            return
        self.reading.root = root
        if not isinstance(root, Mapping):
            self.add(faults.top_not_a_list_of_keys, root.place, isinstance(root, Sequence))

    def add(self, make: Callable[..., Finding], *about: Any) -> None:
        """Keeps the finding that ``make`` makes; one of many alike is only counted."""
        count = self.counts.get(make, 0) + 1
        self.counts[make] = count
        if count <= faults.MOST_ALIKE:
            self.lasts[make] = make(*about)
            self.keep(self.lasts[make])

    def keep(self, finding: Finding) -> None:
        findings = self.reading.findings
        last = findings[-1] if findings else None
        if last is None or (last.place, last.counted) != (finding.place, finding.counted):
            findings.append(finding)

    def finish(self) -> None:
        """Counts what was left out, and puts the findings in the order of the text."""
        findings = self.reading.findings
        for make, count in self.counts.items():
            if count > faults.MOST_ALIKE:
                findings.append(faults.and_more(self.lasts[make], count - faults.MOST_ALIKE))
        findings.sort(key=lambda finding: finding.place.start)
