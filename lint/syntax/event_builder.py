"""YAML text -> tree by the YAML library: builds the tree from the parser's events, each at its place."""

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

from . import faults, tree_builder
from .bounds import DEEPEST, too_many_values, too_much_nesting, too_much_repetition
from .open_nodes import OpenMapping, OpenSequence
from .scalars import CORE_TAG, OutOfRangeError, tagged_value
from .tree import Anchor, Mapping, Scalar, Sequence
from .tree_builder import TreeBuilder, without_surrogates

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any, NoReturn

    from ..findings.finding import Finding
    from ..text.places import Place, Text
    from .tree import Node, ParserEvent

try:
    from yaml.cyaml import CParser as Parser  # type: ignore[attr-defined]
except ImportError:  # PyYAML was built without libyaml: the same events, but slower
    from yaml.loader import BaseLoader as Parser  # type: ignore[assignment]

MOST_REPEATED = 80_000
"""How many values all aliases and merge keys of a file may repeat together."""

MOST_ON_RECORD = 260_000
"""The same of a record, JSON that the command writes: a large team has thousands of findings on record."""

_TAG = r"(?<![^ \t\r\n])!(?:<[^>]*>|[^ \t\r\n]*)"
_PROPERTIES = rf"(?:&[^ \t\r\n,\[\]{{}}]*|{_TAG}|\#[^\r\n]*|[ \t\r\n]+)*"


class _StopError(Exception):
    """The rest of the text is not read; a finding says why."""


class EventBuilder(TreeBuilder):
    """Reads one text by the library's events.

    ``repeated`` counts the values that aliases have repeated. ``placeholders`` stand for characters
    that do not print, in texts with such.
    """

    __slots__ = ("anchors", "placeholders", "repeated")

    def __init__(self, text: Text) -> None:
        super().__init__(text)
        self.anchors: dict[str, Anchor] = {}
        self.repeated = 0
        self.placeholders: dict[int, int] = {}

    def build(self, content: str) -> None:
        """Fills the reading; ``content`` is the text that the parser gets."""
        documents = Sequence(self.text, 0, 0, [], [], 0)
        stack: list[OpenSequence | OpenMapping] = [OpenSequence(documents, None)]
        try:
            events = Parser(content).get_event
            self.walk(events if len(content) <= tree_builder.MOST_VALUES else self.bounded(events), stack)
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
        most = left = MOST_ON_RECORD if self.text.name.endswith(".json") else tree_builder.MOST_VALUES

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
            words = without_surrogates(words)  # the slower parser turns escapes into them
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
        """What stands for an alias that repeats nothing."""
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
        """Where an event stands."""
        return self.text.place(event.start_mark.index, event.end_mark.index)

    def stop(self, make: Callable[..., Finding], *about: Any) -> NoReturn:
        """Reports why the rest is not read, and ends the reading."""
        self.findings.report(make, *about)
        raise _StopError

    def past_properties(self, event: ParserEvent) -> int:
        """Where the value starts, behind its anchor and tag."""
        end: int = event.end_mark.index
        found = re.compile(_PROPERTIES).match(self.text.content, event.start_mark.index)
        return min(found.end(), end) if found else end
