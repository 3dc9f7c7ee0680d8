"""Plain text -> tree, without the YAML library, whose import takes longer than the review of a short file.

Most files hold nothing but comments, keys, dashes, and values that end in their line: plain words, words in
quotes, brackets. A text is read here if each of its lines is surely of these. Any doubt, and any fault,
leaves the whole text to the library. Tests hold trees, places and findings to what the library gives.

Source: YAML 1.2.2, chapters 7 and 8, of which a part is read here.
"""

from __future__ import annotations

import re

from . import tree_builder
from .open_nodes import OpenMapping, OpenSequence
from .tree import Mapping, Scalar, Sequence
from .tree_builder import TreeBuilder

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..text.places import Place, Text
    from .tree import Node

_NO_BEGINNING = frozenset(",[]{}#&*!|>'\"%@`?:<")
"""What plain words do not begin with; YAML allows some of these before a letter."""
_IN_NO_KEY = frozenset(',[]{}#&*!|>"%@`?\\')
"""What no key outside of brackets holds; YAML allows most of these inside words."""
_PARTS_WORDS = re.compile(r"[][{},:#?]")
"""What may end plain words in brackets."""
_LONGEST_KEY = 200
_LONGEST_BRACKETS = 1000
"""Letters; the library looks for the colon behind a key for 1024."""
_DEEPEST = 30
"""Open lists and groups of keys, and as many again in brackets; the library's reader takes 64 in all."""


class _NotPlainError(Exception):
    """The library has to read this text."""


def _sure(holds: object) -> None:
    if not holds:
        raise _NotPlainError


class PlainBuilder(TreeBuilder):
    """Reads one text of plain lines.

    ``frames`` are the lists and groups of keys that are open, outermost first, and ``columns`` where each
    begins in its lines. ``keys`` are words that may be keys. ``pairs`` are keys with their values, by the
    words of their line, because a programme repeats the same lines; none of which anything was reported.
    """

    __slots__ = ("columns", "frames", "keys", "pairs")

    def __init__(self, text: Text) -> None:
        super().__init__(text)
        self.columns: list[int] = []
        self.frames: list[OpenSequence | OpenMapping] = []
        self.keys: set[str] = set()
        self.pairs: dict[str, tuple[Scalar, Node]] = {}

    def build(self) -> bool:
        """Fills the reading; False where the text is not surely plain, and the reading is of no use."""
        content = self.text.content
        if len(content) > tree_builder.MOST_VALUES or "\t" in content or "\r" in content:
            return False
        documents = Sequence(self.text, 0, 0, [], [], 0)
        self.frames, self.columns = [OpenSequence(documents, None)], [-1]
        start = 0
        try:
            for line in content.split("\n"):
                words = line.strip(" ")
                if words and words[0] != "#":
                    column = line.index(words[0])
                    self.line(words, column, start + column)
                start += len(line) + 1
            self.close_down_to(-1)
        except _NotPlainError:
            return False
        self.top(documents)
        return bool(documents.items)

    def line(self, words: str, column: int, start: int) -> None:
        """Reads the words of a line, which begin at a column and, in the text, at ``start``."""
        known = self.pairs.get(words)
        if known is not None or words[0] != "-" or words[1:2] != " ":
            frame = self.frames[-1]
            if self.columns[-1] != column or frame.key is not None or frame.__class__ is not OpenMapping:
                frame = self.frame_at(column, start, dashed=False)  # most lines hold the next key
            self.entry(frame, words, start, known)
            return
        frame = self.frame_at(column, start, dashed=True)
        item = words[2:].lstrip(" ")
        ahead = len(words) - len(item)
        known = self.pairs.get(item)
        if known is not None or _is_entry(item):
            self.entry(self.open(column + ahead, start + ahead, dashed=False), item, start + ahead, known)
        else:
            frame.add(self.node(item, start + ahead))

    def frame_at(self, column: int, start: int, dashed: bool) -> OpenSequence | OpenMapping:
        """The list, or the group of keys, that a line goes on with or begins."""
        frame = self.frames[-1]
        if len(self.frames) == 1:
            _sure(not (column or dashed))
            return self.open(column, start, dashed)
        if frame.key is not None:
            _sure(column >= self.columns[-1] + (not dashed))  # dashes may stand below their key
            return self.open(column, start, dashed)
        self.close_down_to(column)
        if not dashed and self.columns[-2] == column:
            self.close()
        frame = self.frames[-1]
        _sure(self.columns[-1] == column and isinstance(frame, OpenSequence) is dashed)
        return frame

    def open(self, column: int, start: int, dashed: bool) -> OpenSequence | OpenMapping:
        """A list or a group of keys begins."""
        _sure(len(self.frames) < _DEEPEST)
        frame = self.begun(start, dashed)
        self.frames.append(frame)
        self.columns.append(column)
        return frame

    def begun(self, start: int, listed: bool) -> OpenSequence | OpenMapping:
        """An empty list or group of keys."""
        if listed:
            return OpenSequence(Sequence(self.text, start, start, [], [], 1), None)
        return OpenMapping(Mapping(self.text, start, start, {}, {}, 1), None, self.findings, self.repeat)

    def repeat(self, size: int, place: Place) -> None:
        """Nothing is repeated in a plain text."""
        raise _NotPlainError

    def close_down_to(self, column: int) -> None:
        """Closes all that begins to the right of a column."""
        while self.columns[-1] > column:
            self.close()

    def close(self) -> None:
        """Closes the innermost list or group of keys."""
        frame = self.frames.pop()
        _sure(frame.key is None)
        self.columns.pop()
        node = frame.close()
        node.end = frame.last.end
        self.frames[-1].add(node)

    def entry(
        self,
        frame: OpenSequence | OpenMapping,
        words: str,
        start: int,
        known: tuple[Scalar, Node] | None,
    ) -> None:
        """Reads a key, and its value if that stands in the same line; ``known`` is what its words gave."""
        assert isinstance(frame, OpenMapping)
        if known is not None:
            key, value = known
            by = start - key.start
            frame.put(key, value.moved(by), by)
            return
        name, colon, rest = words.partition(":")
        _sure(colon and rest[:1] in ("", " "))
        name = name.rstrip(" ")
        if name not in self.keys:
            _sure(name[:1].isalnum() and _IN_NO_KEY.isdisjoint(name) and len(name) <= _LONGEST_KEY)
            self.keys.add(name)
        reported = self.findings.reported
        key, rest = self.words(name, start), rest.lstrip(" ")
        if not rest or rest[0] == "#":
            frame.add(key)
            return
        value = self.node(rest, start + len(words) - len(rest))
        frame.put(key, value)
        if self.findings.reported == reported:
            self.pairs[words] = key, value

    def node(self, words: str, start: int) -> Node:
        """The value that fills a line to its end, or to a comment."""
        if words[0] in "[{'\"":
            _sure(len(words) <= _LONGEST_BRACKETS)
            node, end = self.part(words, 0, start, 1)
            rest = words[end:]
            _sure(not rest or (rest[0] == " " and rest.lstrip(" ")[0] == "#"))
            return node
        comment = words.find(" #")
        if comment >= 0:
            words = words[:comment].rstrip(" ")
        if words not in self.known:
            _sure(_may_begin(words) and ": " not in words and words[-1] != ":")
        return self.words(words, start)

    def words(self, words: str, start: int) -> Scalar:
        """Plain words."""
        known, end = self.known, start + len(words)
        value = known[words] if words in known else self.value(words, self.text.place(start, end))
        return Scalar(self.text, start, end, words, "", value)

    def part(self, words: str, at: int, start: int, depth: int) -> tuple[Node, int]:
        """What begins at an index of the words, and the index behind it."""
        sign = words[at : at + 1]
        if sign == "[" or sign == "{":
            return self.in_brackets(words, at, start, depth)
        if sign not in ("'", '"'):
            return self.word(words, at, start)
        end = words.find(sign, at + 1)
        inner = words[at + 1 : end]
        _sure(end > 0 and words[end + 1 : end + 2] != sign and "\\" not in inner)
        return Scalar(self.text, start + at, start + end + 1, inner, sign, inner), end + 1

    def in_brackets(self, words: str, at: int, start: int, depth: int) -> tuple[Node, int]:
        """The list or group of keys in brackets, and the index behind it."""
        _sure(depth <= _DEEPEST)
        listed = words[at] == "["
        frame, closing = self.begun(start + at, listed), "]" if listed else "}"
        at = _past_blanks(words, at + 1)
        closed = words[at : at + 1] == closing
        while not closed:
            node, at = self.part(words, at, start, depth + 1)
            at = _past_blanks(words, at)
            if words[at : at + 1] == ":":
                _sure(isinstance(node, Scalar) and words[at + 1 : at + 2] == " ")
                value, at = self.part(words, _past_blanks(words, at + 1), start, depth + 1)
                at = _past_blanks(words, at)
                self.pair(frame, node, value)
            else:
                _sure(listed)
                frame.add(node)
            closed = words[at : at + 1] == closing
            if not closed:
                _sure(words[at : at + 1] == ",")
                at = _past_blanks(words, at + 1)
        node = frame.close()
        node.end = start + at + 1
        return node, at + 1

    def pair(self, frame: OpenSequence | OpenMapping, key: Node, value: Node) -> None:
        """A key and its value in brackets; in a list they are a group of keys by themselves."""
        if isinstance(frame, OpenMapping):
            frame.put(key, value)
            return
        group = self.begun(key.start, listed=False)
        group.add(key)
        group.add(value)
        node = group.close()
        node.end = value.end
        frame.add(node)

    def word(self, words: str, at: int, start: int) -> tuple[Scalar, int]:
        """Plain words in brackets, and the index of the sign behind them."""
        for sign in _PARTS_WORDS.finditer(words, at):
            end = sign.start()
            if words[end] == ":" and words[end + 1 : end + 2].isalnum():
                continue  # as in 1:30
            inner = words[at:end].rstrip(" ")
            _sure(inner and _may_begin(inner))
            return self.words(inner, start + at), end
        raise _NotPlainError


def _is_entry(item: str) -> bool:
    """Whether the words behind a dash begin a group of keys."""
    bare = item.partition(" #")[0].rstrip(" ")
    return item[0] not in "[{'\"" and (bare[-1] == ":" or ": " in bare)


def _may_begin(words: str) -> bool:
    """Whether plain words may begin so."""
    return words[0] not in _NO_BEGINNING and (words[0] != "-" or words[1:2] not in ("", " "))


def _past_blanks(words: str, at: int) -> int:
    while words[at : at + 1] == " ":
        at += 1
    return at
