"""YAML text -> tree: builds the tree from the parser's events, with a place for every key and value."""

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
from .bounds import DEEPEST, too_many_values, too_much_nesting, too_much_repetition
from .open_nodes import OpenMapping, OpenSequence
from .scalars import CORE_TAG, OutOfRangeError, core_value, tagged_value, taken_elsewhere
from .tree import Anchor, Mapping, Reading, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any, NoReturn

    from ..findings.finding import Finding
    from ..text.places import Place
    from ..text.repository import SourceFile
    from .tree import Node, ParserEvent

try:
    from yaml.cyaml import CParser as Parser  # type: ignore[attr-defined]
except ImportError:  # PyYAML was built without libyaml: the same events, but slower
    from yaml.loader import BaseLoader as Parser  # type: ignore[assignment]

MOST_REPEATED = 80_000
"""How many values all aliases and merge keys of a file may repeat together."""

MOST_VALUES = 100_000
"""How many keys and values are read of a file; a text of fewer letters cannot hold as many."""

MOST_ON_RECORD = 260_000
"""The same of a record, JSON that the command writes: a large team has thousands of findings on record."""

_TAG = r"(?<![^ \t\r\n])!(?:<[^>]*>|[^ \t\r\n]*)"
_PROPERTIES = rf"(?:&[^ \t\r\n,\[\]{{}}]*|{_TAG}|\#[^\r\n]*|[ \t\r\n]+)*"


def parse(name: str, content: str) -> Reading:
    """The tree of a text, with findings for all that is wrong in it; no text makes this raise.

    ``name`` is the path that the findings show. A byte order mark at the beginning is left out.
    """
    return _parsed(name, content.removeprefix("\ufeff"))


def _parsed(name: str, content: str) -> Reading:
    if len(content) > LONGEST_FILE:
        reading = Reading(Text(name, ""))
        reading.findings.append(faults.file_too_large(reading.text.place(0, 0), LONGEST_FILE))
        return reading
    # Few texts hold characters that do not print; one fast test finds them.
    prints = content.replace("\n", " ").replace("\t", " ").replace("\r", " ").isprintable()
    builder = _Builder(Text(name, content if prints else _without_surrogates(content)))
    if "<<<<<<<" in content or ">>>>>>>" in content:
        builder.reading.findings += faults.merge_conflicts(builder.text)
    if not builder.reading.findings:
        build = builder.build if prints else builder.build_odd
        build(content)
    builder.findings.finish()
    return builder.reading


def _without_surrogates(content: str) -> str:
    """The text with each lone surrogate, which no UTF-8 file can hold, replaced by U+FFFD."""
    return re.sub("[\ud800-\udfff]", "\ufffd", content)


def read(path: str) -> Reading:
    """The tree of the file at ``path``; where the file cannot be read, a finding says why."""
    return _read(path, lambda: files.content(path))


def read_file(file: SourceFile) -> Reading:
    """The tree of a file of a repository, as `read`; a link that leads out of it is not followed."""
    return _read(file.name, lambda: files.content_of(file))


def _read(path: str, content_at: Callable[[], str]) -> Reading:
    try:
        content = content_at()
    except files.UnreadableError as error:
        reading = Reading(error.place.text, opened=error.opened)
        reading.findings.append(faults.unreadable(error))
        return reading
    return _parsed(path, content)


class _StopError(Exception):
    """The rest of the text is not read; a finding says why."""


class _Builder:
    """Reads one text; the result is ``reading``.

    ``known`` remembers the values of plain words, because a programme repeats the same words. ``repeated``
    counts the values that aliases have repeated. ``odd`` and ``placeholders`` are only for texts with
    characters that do not print.
    """

    __slots__ = ("anchors", "findings", "known", "odd", "placeholders", "reading", "repeated", "text")

    def __init__(self, text: Text) -> None:
        self.text = text
        self.reading = Reading(text)
        self.findings = faults.TextFindings(self.reading.findings)
        self.anchors: dict[str, Anchor] = {}
        self.known: dict[str, Any] = {"<<": "<<"}
        self.repeated = 0
        self.odd = False
        self.placeholders: dict[int, int] = {}

    def build(self, content: str) -> None:
        """Fills the reading; ``content`` is the text that the parser gets."""
        documents = Sequence(self.text, 0, 0, [], [], 0)
        stack: list[OpenSequence | OpenMapping] = [OpenSequence(documents, None)]
        try:
            events = Parser(content).get_event
            self.walk(events if len(content) <= MOST_VALUES else self.bounded(events), stack)
            self.top(documents)
        except _StopError:
            pass
        except (YAMLError, ValueError) as error:  # the slower parser lets a ValueError through
            from .parser_errors import explain_stop

            for finding in explain_stop(self.text, error, [frame.node.start for frame in stack[1:]]):
                self.findings.add(finding)

    def build_odd(self, content: str) -> None:
        """Fills the reading from a text that holds characters which do not print."""
        from . import characters

        for make, at, chars in characters.unprintable(content):
            self.findings.report(make, self.text, at, chars)
        self.odd = True
        placeholders = characters.placeholders(self.text.content)
        self.placeholders = {placeholder: char for char, placeholder in placeholders.items()}
        self.build(self.text.content.translate(placeholders))

    def bounded(self, next_event: Callable[[], ParserEvent]) -> Callable[[], ParserEvent]:
        """Gives the events of a text, and stops reading where there are too many."""
        most = left = MOST_ON_RECORD if self.text.name.endswith(".json") else MOST_VALUES

        def event() -> ParserEvent:
            nonlocal left
            left -= 1
            found = next_event()
            if left < 0:
                self.stop(too_many_values, self.place_of(found), most)
            return found

        return event

    def walk(self, next_event: Callable[[], Any], stack: list[OpenSequence | OpenMapping]) -> None:
        """Makes nodes of the events, until the text ends or a second document starts."""
        text, known = self.text, self.known
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
                if len(stack) > DEEPEST:
                    self.stop(too_much_nesting, self.place_of(event))
                frame = self.open(event)
                stack.append(frame)
            elif kind is AliasEvent:
                frame.add(self.alias(event))
            elif kind is DocumentStartEvent:
                if begun:
                    self.findings.report(faults.second_document, self.place_of(event))
                    return
                begun = True
            elif kind is StreamEndEvent:
                return
            elif len(stack) > 1:
                node = self.close(stack.pop(), event)
                frame = stack[-1]
                frame.add(node)

    def scalar(self, event: ParserEvent) -> Scalar:
        """A scalar with quotes, an anchor or a tag, or with words that are not known yet."""
        words: str = event.value
        end: int = event.end_mark.index
        style: str = event.style or ""
        bare = event.anchor is None and event.tag is None
        start: int = event.start_mark.index if bare else self.past_properties(event)
        if self.placeholders:
            words = words.translate(self.placeholders)
        if style == '"':
            words = _without_surrogates(words)  # the slower parser turns escapes into them
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
        """Plain words, their start and end, without odd blanks around them; reports those blanks."""
        from .characters import odd_blank_edges, odd_blanks

        before, behind = odd_blank_edges(words)
        if before:
            self.findings.report(odd_blanks, self.text, start, start + before)
        if behind:
            self.findings.report(odd_blanks, self.text, end - behind, end)
        return words[before : len(words) - behind], start + before, end - behind

    def value(self, words: str, place: Place) -> Any:
        """The value of plain words; reports words that other programs read otherwise."""
        try:
            value = core_value(words)
        except OutOfRangeError:
            self.findings.report(faults.number_out_of_range, place)
            return words
        elsewhere = taken_elsewhere(words)
        if elsewhere:
            self.findings.report(faults.quote_this, place, elsewhere)
        elif not self.placeholders:
            self.known[words] = value
        return value

    def tagged(self, event: ParserEvent, words: str, place: Place) -> Any:
        """The value of a scalar with a tag; reports a tag that does not fit."""
        try:
            value, fits = tagged_value(words, str(event.tag))
        except OutOfRangeError:
            self.findings.report(faults.number_out_of_range, place)
            return words
        if fits:
            return value
        self.tag_unsupported(event, place.start)
        return words if event.style else value

    def open(self, event: ParserEvent) -> OpenSequence | OpenMapping:
        """The sequence or mapping that begins here, still empty."""
        start = event.start_mark.index
        anchor = None
        is_sequence = event.__class__ is SequenceStartEvent
        if event.tag is not None or event.anchor is not None:
            start = self.past_properties(event)
            anchor = self.anchor(event) if event.anchor is not None else None
            if event.tag not in (None, "!", CORE_TAG + ("seq" if is_sequence else "map")):
                self.tag_unsupported(event, start)
        if is_sequence:
            return OpenSequence(Sequence(self.text, start, start, [], [], 1), anchor)
        return OpenMapping(Mapping(self.text, start, start, {}, {}, 1), anchor, self.findings, self.repeat)

    def close(self, frame: OpenSequence | OpenMapping, event: ParserEvent) -> Node:
        """The finished sequence or mapping; its anchor, if it has one, now names it."""
        node = frame.close()
        end: int = event.end_mark.index
        # In brackets the event is the closing bracket; otherwise it has no width and stands too late.
        node.end = end if end > event.start_mark.index else frame.last.end
        if frame.anchor is not None:
            frame.anchor.node = node
        return node

    def alias(self, event: ParserEvent) -> Node:
        """The node that an alias repeats, at the place of the alias."""
        place = self.place_of(event)
        anchor = self.anchors.get(event.anchor)
        if anchor is None:
            self.findings.report(faults.alias_unknown, place, self.anchors)
            return self.unusable(place)
        anchor.used += 1
        node = anchor.node
        if node is None:
            self.findings.report(faults.alias_loop, place, anchor.place)
            return self.unusable(place)
        self.repeat(node.size, place)
        return node.used_at(place.start, place.end)

    def unusable(self, place: Place) -> Scalar:
        return Scalar(self.text, place.start, place.end, "", "*", None)

    def repeat(self, size: int, place: Place) -> None:
        """Counts the values that an alias repeats; stops reading when they are too many."""
        self.repeated += size
        if self.repeated > MOST_REPEATED:
            self.stop(too_much_repetition, place, MOST_REPEATED)

    def anchor(self, event: ParserEvent) -> Anchor:
        """Notes the ``&name`` before a value; where a name comes twice, the later one counts from here on."""
        word = f"&{event.anchor}"
        at = self.text.content.find(word, event.start_mark.index)
        anchor = Anchor(event.anchor, self.text.place(at, at + len(word)))
        self.anchors[event.anchor] = anchor
        self.reading.anchors.append(anchor)
        return anchor

    def tag_unsupported(self, event: ParserEvent, start: int) -> None:
        """Reports the tag between the start of an event and the ``start`` of its value."""
        found = re.compile(_TAG).search(self.text.content, event.start_mark.index, start)
        span = found.span() if found else (event.start_mark.index, start)
        self.findings.report(faults.tag_unsupported, self.text.place(*span))

    def place_of(self, event: ParserEvent) -> Place:
        return self.text.place(event.start_mark.index, event.end_mark.index)

    def stop(self, make: Callable[..., Finding], *about: Any) -> NoReturn:
        self.findings.report(make, *about)
        raise _StopError

    def past_properties(self, event: ParserEvent) -> int:
        """Where the value starts, behind its anchor and tag."""
        end: int = event.end_mark.index
        found = re.compile(_PROPERTIES).match(self.text.content, event.start_mark.index)
        return min(found.end(), end) if found else end

    def top(self, documents: Sequence) -> None:
        """Sets the root; reports an empty file, and a root that is no mapping."""
        root = documents.items[0] if documents.items else None
        if root is None or (isinstance(root, Scalar) and root.start == root.end):
            self.findings.report(faults.file_empty, self.text.place(0, 0))
            return
        if isinstance(root, Scalar) and root.style == "*":
            return
        self.reading.root = root
        if not isinstance(root, Mapping):
            self.findings.report(faults.top_not_a_list_of_keys, root.place, isinstance(root, Sequence))
