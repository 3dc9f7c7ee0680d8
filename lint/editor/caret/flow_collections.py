"""The caret inside YAML's flow collections: lists in square brackets and groups in braces."""

from __future__ import annotations

import re

from ...syntax.bounds import DEEPEST
from .lines import QUOTED, QUOTES, unquoted, within_quotes

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..documents.offset_map import Span
    from .context import CaretContext

_NEVER_FIRST_IN_WORDS = ("comment", "property", "alias")
"""Kinds of tokens that are no part of plain words where they come first."""

_TOKEN = re.compile(
    r"""
    (?P<blank>[ \t\n]+)
    | (?P<comment>(?<![^ \t\n])\#[^\n]*)
    | (?P<bracket>[\[\]{},])
    | (?P<colon>:(?=[ \t\n,\[\]{}]|\Z)|(?<=["']):)
    | (?P<property>[&!][^ \t\n,\[\]{}]*)
    | (?P<alias>\*[^ \t\n,\[\]{}]*)
    | (?P<word>(?:[^ \t\n,\[\]{}:]|:(?![ \t\n,\[\]{}]|\Z))+)
    """,
    re.VERBOSE,
)


class _Frame:
    """One open bracket: a list, at its item ``index``, or a group of ``keys``, whose ``index`` is -1.

    ``key`` is the key whose value is being read. A list has one too where its item is a pair without braces.
    ``span`` is where the words of the part that is being read start and end, None where there are none.
    ``has_other`` says that an alias or inner brackets stand in that part.
    """

    __slots__ = ("has_other", "index", "key", "keys", "span")

    def __init__(self, bracket: str) -> None:
        self.index = 0 if bracket == "[" else -1
        self.key: str | None = None
        self.keys: set[str] = set()
        self.span: Span | None = None
        self.has_other = False

    def start_part(self) -> None:
        """Makes ready for the next part."""
        self.span = None
        self.has_other = False


class FlowReader:
    """Reads the brackets that begin at the offset ``at``, up to ``end`` at most, for one caret.

    What it finds it writes into the caret's ``context``. Once it has read past the caret it goes on, to find
    the keys that stand behind it.
    """

    def __init__(self, text: str, at: int, end: int, context: CaretContext) -> None:
        self.text = text
        self.at = at
        self.end = end
        self.context = context
        self.frames: list[_Frame] = []
        self.steps: list[tuple[str | int, set[str]]] | None = None
        self.caret_frame: _Frame | None = None
        self.on_key = False
        self.caret_key: Span | None = None

    def read(self, offset: int) -> None:
        """Finds where in the brackets an offset lies; finds nothing where they close before it."""
        while self.at < self.end:
            kind, end = self.token()
            start, self.at = self.at, end
            is_before_caret = self.steps is None
            if (
                is_before_caret
                and kind in _NEVER_FIRST_IN_WORDS
                and start < offset <= end
                and not self.frames[-1].span
            ):
                if kind == "comment":
                    self.context.comment_start = start
                    return
                self.note_caret(offset, before_colon=False)
                self.note_anchor(start, end)
            elif is_before_caret and kind in ("bracket", "colon") and start >= offset:
                self.note_caret(offset, before_colon=kind == "colon")
            self.take(kind, start, end)
            if not self.frames:
                break
            if len(self.frames) > DEEPEST:
                return  # no file is read so deep, so nothing may be written here
        if self.frames and self.steps is None:
            self.note_caret(offset, before_colon=False)
        self.write_path()

    def token(self) -> tuple[str, int]:
        """The kind of the token at ``at``, and where it ends."""
        text, at = self.text, self.at
        if text[at] in QUOTES and self.frames and self.frames[-1].span is None:
            found = QUOTED.match(text, at, self.end)
            if found is not None:
                return "word", found.end()
            line_end = text.find("\n", at, self.end)
            return "word", self.end if line_end < 0 else line_end
        found = _TOKEN.match(text, at, self.end)
        assert found is not None
        return found.lastgroup or "", found.end()

    def take(self, kind: str, start: int, end: int) -> None:
        """Takes in a token."""
        bracket = self.text[start] if kind == "bracket" else ""
        if bracket and bracket in "[{":
            if self.frames:
                self.frames[-1].has_other = True
            self.frames.append(_Frame(bracket))
            return
        frame = self.frames[-1]
        if bracket and bracket in "]}":
            self.take_key(frame)
            self.frames.pop()
        elif bracket:
            self.take_key(frame)
            frame.key = None
            frame.index += frame.index >= 0
            frame.start_part()
        elif kind == "colon":
            if frame.key is None:
                frame.key = self.take_key(frame)
            frame.start_part()
        elif kind == "word" or (kind in ("property", "alias") and frame.span is not None):
            frame.span = (frame.span[0] if frame.span else start, end)
        elif kind == "alias":
            frame.has_other = True

    def take_key(self, frame: _Frame) -> str:
        """The words just read, as a key; adds it to the group's keys unless it is the one at the caret."""

        if frame.span is None:
            return ""
        key = unquoted(self.text[slice(*frame.span)])
        if frame.index < 0 and frame.key is None and frame.span != self.caret_key:
            frame.keys.add(key)
        return key

    def note_caret(self, offset: int, *, before_colon: bool) -> None:
        """Notes what is at the caret, and the path there."""
        context, frame = self.context, self.frames[-1]
        context.in_flow = True
        self.caret_frame = frame
        self.on_key = frame.key is None and (frame.index < 0 or before_colon)
        self.steps = []
        for one in self.frames:
            if one.index >= 0:
                self.steps.append((one.index, set()))
            if one.key is not None:
                self.steps.append((one.key, one.keys))
        context.has_colon = self.on_key and before_colon
        words = frame.span
        before = self.text[offset - 1]
        if words is None:
            context.needs_space = before in ",:"
        else:
            words = (min(words[0], offset), max(words[1], offset))
            self.caret_key = frame.span if self.on_key else None
        is_empty = words is None and not frame.has_other
        touches_colon = (
            before == ":" and frame.key is not None and self.text[offset - 2 : offset - 1] not in QUOTES
        )
        is_on_one_line = words is not None and not touches_colon and "\n" not in self.text[slice(*words)]
        if is_empty or is_on_one_line:
            context.takes_key, context.takes_value = self.on_key, not self.on_key
        if words is not None and is_on_one_line:
            context.start, context.end, context.quote = within_quotes(self.text, *words, offset)

    def note_anchor(self, start: int, end: int) -> None:
        """Notes that the caret is in an anchor, an alias or a tag."""
        context, sign = self.context, self.text[start]
        context.takes_key = context.takes_value = context.needs_space = False
        if sign in "*&":
            context.anchor_sign = sign
            context.start, context.end = start + 1, end

    def write_path(self) -> None:
        """Adds the path inside the brackets to the path that leads to them."""
        context, frame = self.context, self.caret_frame
        if self.steps is None or frame is None:
            return
        context.key_path = (*context.key_path, *(step for step, _ in self.steps))
        siblings = [*context.sibling_keys[:-1], *(frozenset(keys) for _, keys in self.steps)]
        last = frame.keys if self.on_key and frame.index < 0 else ()
        context.sibling_keys = (*siblings, frozenset(last))
