"""Where the caret stands in a text that may be half typed: which keys lead there, and what may come next.

No parser reads a text that is being typed, so this one goes by what a coach goes by: how far lines are set
in, dashes, and brackets. From the caret's line it climbs to the lines that hold it, looks through brackets
that are open there, and gathers the keys that stand beside. Where a text can be read, it agrees with the
tree.
"""

from __future__ import annotations

import re

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    Chain = tuple[str | int, ...]

    _Step = tuple[str | int, set[str]]
    """A step of the chain, and the keys beside it."""

_BLANKS = " \t"
_MARKS = ("---", "...", "%")
"""What begins a line that parts documents."""

_QUOTES = ('"', "'")
_NAMED = ("comment", "property", "alias")
_PROPERTIES = r"(?:[&!][^ \t\n,\[\]{}]*(?:[ \t]+|$))*"
_QUOTED = r'"(?:[^"\\]|\\.)*"|\'(?:[^\']|\'\')*\''
_KEY = re.compile(
    rf"{_PROPERTIES}(?P<key>{_QUOTED}"
    r"|(?![\[\]{}\"'#|>@`%,*&!]|[-?:](?:[ \t]|$))(?:(?!:(?:[ \t]|$)|[ \t]\#).)+?)"
    r"[ \t]*(?P<colon>:)(?=[ \t]|$)"
)
_PROPERTY = re.compile(r"(?P<sign>[&!])(?P<name>[^ \t\n,\[\]{}]*)")
_QUOTE = re.compile(_QUOTED, re.DOTALL)
_ALIAS = re.compile(r"\*[^ \t\n,\[\]{}]*")
_COMMENT = re.compile(r"(?:^|[ \t])(?P<mark>\#)")
_IN_BRACKETS = re.compile(
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


class Context:
    """Where the caret stands.

    ``chain`` leads there from the top: keys as text, places in lists as numbers from 0. ``key`` says that a
    key of the group there may stand here, ``value`` that a value there may; ``item`` is the chain of the list
    item that a dash may begin here, None where none may.

    The word at the caret runs from ``start`` to ``end``, within its quotes, which ``quote`` tells ("" where
    there are none); ``colon`` tells whether a colon follows it, ``glued`` that a blank must come before it.
    ``sign`` is "*" or "&" where the name of an anchor is typed, ``brackets`` that brackets are open here.
    ``groups`` holds the keys that stand beside each step of the chain, and last those of the group itself,
    the word at the caret left out. ``comment`` is where the comment begins that holds the caret, else -1.
    """

    __slots__ = (
        "brackets",
        "chain",
        "colon",
        "comment",
        "end",
        "glued",
        "groups",
        "item",
        "key",
        "quote",
        "sign",
        "start",
        "value",
    )

    def __init__(self, offset: int) -> None:
        self.chain: Chain = ()
        self.groups: tuple[frozenset[str], ...] = (frozenset(),)
        self.key = False
        self.value = False
        self.item: Chain | None = None
        self.start = offset
        self.end = offset
        self.quote = ""
        self.colon = False
        self.glued = False
        self.sign = ""
        self.brackets = False
        self.comment = -1


def context(content: str, offset: int) -> Context:
    """Where the caret at a code-point offset stands; never raises on any text."""
    return _Finder(content, min(max(offset, 0), len(content))).found()


class _Line:
    """A line taken apart; columns count from its start.

    ``dashes`` are the columns of the dashes that begin it, ``column`` is where the rest begins, ``key`` the
    key that stands there from ``key_start`` to ``key_end`` with its ``colon``, None where there is none.
    ``value`` is where what remains begins, behind anchors and tags, and ``kind`` what that is: "" nothing,
    "brackets", "quoted", "block" (text on the lines below), "alias" or "plain".
    """

    __slots__ = (
        "colon",
        "column",
        "dashes",
        "indent",
        "key",
        "key_end",
        "key_start",
        "kind",
        "value",
        "words",
    )

    def __init__(self, words: str, indent: int) -> None:
        self.words = words
        self.indent = indent
        self.dashes: list[int] = []
        at = indent
        while words.startswith("-", at) and words[at + 1 : at + 2] in ("", " ", "\t"):
            self.dashes.append(at)
            at = _past_blanks(words, at + 1)
        self.column = at
        self.key: str | None = None
        self.key_start = self.key_end = self.colon = -1
        found = _KEY.match(words, at)
        if found is not None:
            self.key = _unquoted(found["key"])
            self.key_start, self.key_end = found.span("key")
            self.colon = found.start("colon")
            at = _past_blanks(words, found.end())
        while (part := _PROPERTY.match(words, at)) is not None:
            at = _past_blanks(words, part.end())
        self.value = at
        self.kind = _kind(words, at)

    @property
    def hangs(self) -> int:
        """The column on which the value hangs: lines that are set in deeper belong to it."""
        if self.key is not None:
            return self.column
        return self.dashes[-1] if self.dashes else self.indent - 1


def _kind(words: str, at: int) -> str:
    first = words[at : at + 1]
    if first == "#" and (at == 0 or words[at - 1] in _BLANKS):
        return ""
    kinds = {"": "", "{": "brackets", "[": "brackets", "*": "alias", "|": "block", ">": "block"}
    return kinds.get(first, "quoted" if first in "\"'" else "plain")


def _past_blanks(words: str, at: int) -> int:
    while words[at : at + 1] in (" ", "\t"):
        at += 1
    return at


def _unquoted(word: str) -> str:
    if word.startswith("'"):
        return word[1:].removesuffix("'").replace("''", "'")
    if word.startswith('"'):
        return re.sub(r"\\(.)", r"\1", word[1:].removesuffix('"'))
    return word


class _Level:
    """A group of keys (``index`` is -1) or a list on the way to the caret, and the ``column`` it stands at.

    ``key`` is the one that leads on, None where the caret itself is on a key.
    """

    __slots__ = ("column", "index", "key", "keys")

    def __init__(self, column: int, key: str | None = None, index: int = -1) -> None:
        self.column = column
        self.key = key
        self.index = index
        self.keys: set[str] = set() if key is None else {key}


class _Opened:
    """A line whose value has begun and may hold lines below it."""

    __slots__ = ("line", "row")

    def __init__(self, row: int, line: _Line) -> None:
        self.row = row
        self.line = line


class _Finder:
    """Looks around one caret."""

    def __init__(self, content: str, offset: int) -> None:
        # Line ends become one character each way, and offsets stay what they are.
        self.text = content.replace("\r\n", " \n").replace("\r", "\n") if "\r" in content else content
        self.lines = self.text.split("\n")
        self.offset = offset
        self.row = self.text.count("\n", 0, offset)
        self.start = self.text.rfind("\n", 0, offset) + 1
        self.column = offset - self.start
        self.context = Context(offset)
        self.levels: list[_Level] = []
        self.opened: _Opened | None = None

    def found(self) -> Context:
        """All that can be told."""
        line = self.line(self.row)
        if line is None:
            self.on_empty_line()
        elif self.column >= line.indent:
            self.in_line(line)
        return self.context

    # Lines

    def line(self, row: int) -> _Line | None:
        """A line taken apart; None where it holds nothing but blanks or a comment, or parts documents."""
        words = self.lines[row]
        indent = len(words) - len(words.lstrip(" "))
        if words[indent : indent + 1] in ("", "#", "\t") or words.startswith(_MARKS):
            return None
        return _Line(words, indent)

    def above(self, row: int, deepest: int) -> Iterator[tuple[int, _Line | None]]:
        """The lines above one that hold something, the nearest first, up to where the document begins.

        Of one that is set in deeper than ``deepest`` only that it is there, which is all there is to know.
        """
        for one in range(row - 1, -1, -1):
            words = self.lines[one]
            if words.startswith(_MARKS):
                return
            indent = len(words) - len(words.lstrip(" "))
            if indent > deepest:
                if words[indent : indent + 1] not in ("", "#", "\t"):
                    yield one, None
            elif (line := self.line(one)) is not None:
                yield one, line

    def below(self) -> _Line | None:
        """The next line that holds something."""
        for row in range(self.row + 1, len(self.lines)):
            if (line := self.line(row)) is not None:
                return line
        return None

    # The caret's line

    def in_line(self, line: _Line) -> None:
        """On a line that holds something."""
        column = self.column
        if line.key is not None and line.key_start <= column <= line.key_end:
            self.on_key(line)
        elif column < line.column or (column == line.column == len(line.words)):
            self.behind_dash(line)
        elif line.key is None:
            self.on_words(line)
        elif column > line.colon:
            self.stand(self.row, [*_lists(line.dashes), _Level(line.column, line.key)])
            self.in_value(line, line.colon + 1)

    def on_key(self, line: _Line) -> None:
        """On a key that has its colon."""
        self.stand(self.row, [*_lists(line.dashes), _Level(line.column)])
        if not self.held():
            self.context.key = self.context.colon = True
            self.word(line.key_start, line.key_end)

    def behind_dash(self, line: _Line) -> None:
        """Among the dashes: what the last one begins, where nothing stands there yet."""
        last = line.dashes[-1] if line.dashes else self.column
        if last < self.column and line.value >= len(line.words.rstrip()):
            self.stand(self.row, _lists(line.dashes))
            if not self.held():
                self.begin(self.column, crooked=False)
                self.context.item = None
                self.context.glued = self.column == last + 1

    def on_words(self, line: _Line) -> None:
        """On words that are no key, or not yet: behind dashes, or alone on their line."""
        context = self.context
        if line.dashes:
            self.stand(self.row, _lists(line.dashes))
            context.key = True
        else:
            self.find_place(line.indent)
        context.value = context.value or bool(line.dashes)
        able = (context.key, context.value, context.item)
        context.key = context.value = False
        context.item = None
        self.in_value(line, line.column)
        if context.value and not context.brackets:
            context.key, context.value, context.item = able
            context.key = context.key and not context.quote

    def in_value(self, line: _Line, begin: int) -> None:
        """In what follows a key or a dash, which may be nothing yet; it may begin at the column ``begin``."""
        if self.held():
            return
        column, at = self.column, _past_blanks(line.words, begin)
        while (part := _PROPERTY.match(line.words, at)) is not None and part.start() < column:
            if column <= part.end():
                self.name(part, "&")
                return
            at = _past_blanks(line.words, part.end())
        if line.kind == "brackets" and column > line.value:
            self.in_brackets(self.start + line.value, line.hangs)
        elif line.kind == "quoted":
            self.in_quotes(line)
        elif line.kind == "alias" and column > line.value:
            self.name(_ALIAS.match(line.words, line.value), "*")
            self.in_comment(line.words, line.value)
        elif line.kind == "block":
            self.in_comment(line.words, line.value)
        elif line.kind in ("", "plain"):
            self.in_plain(line, begin)

    def name(self, found: re.Match[str] | None, sign: str) -> None:
        """On the name of an anchor or alias."""
        if found is not None and self.column <= found.end() and found[0].startswith(sign):
            self.context.sign = sign
            self.word(found.start() + 1, found.end())

    def in_quotes(self, line: _Line) -> None:
        found = _QUOTE.match(line.words, line.value)
        end = found.end() if found else len(line.words.rstrip())
        if self.column <= end:
            self.context.value = True
            self.word(min(line.value, self.column), end)
        else:
            self.in_comment(line.words, end)

    def in_plain(self, line: _Line, begin: int) -> None:
        context, column = self.context, self.column
        found = self.in_comment(line.words, max(line.value - 1, 0))
        if context.comment >= 0:
            return
        touching = column == begin != line.column
        if line.kind == "":
            context.value = True
            context.glued = touching
        elif not touching:
            end = len(line.words[:found].rstrip())
            context.value = True
            self.word(min(line.value, column), max(end, column))

    def in_comment(self, words: str, after: int) -> int | None:
        """The column of the comment behind a column, if there is one; notes it where it holds the caret."""
        found = _COMMENT.search(words, after)
        if found is None:
            return None
        mark = found.start("mark")
        if mark < self.column:
            self.context.comment = self.start + mark
        return mark

    def word(self, start: int, end: int) -> None:
        """Notes the word at the caret, by its columns."""
        context = self.context
        context.start, context.end, context.quote = _within_quotes(
            self.text, self.start + start, self.start + end, self.offset
        )

    # A line without words

    def on_empty_line(self) -> None:
        """On a line with nothing but blanks, or a comment."""
        words = self.lines[self.row]
        comment = words.find("#")
        in_comment = 0 <= comment < self.column
        column = comment if in_comment else self.column
        if words.startswith(_MARKS) or self.in_brackets_left_open(column):
            return
        self.find_place(column)
        if self.held() or not in_comment:
            return
        self.context = Context(self.offset)
        self.context.comment = self.start + comment

    def in_brackets_left_open(self, column: int) -> bool:
        """Whether the lines above have left brackets open that hold this one; then all is told.

        A line that is not set in deeper is only held where the brackets close below.
        """
        row, line = next(self.above(self.row, len(self.text)), (0, None))
        if line is None:
            return False
        self.step_into(row, line, len(line.words) + 1)
        self.stand(row, self.levels)
        if self.opened is not None and self.opened.line.kind == "brackets":
            below = self.below()
            closes = below is not None and below.words.lstrip().startswith(("]", "}"))
            if (column > self.opened.line.hangs or closes) and self.held() and self.context.brackets:
                return True
        self.levels, self.opened, self.context = [], None, Context(self.offset)
        return False

    def find_place(self, column: int) -> None:
        """What may begin alone on a line at a column: a key, an item of a list, a value."""
        deeper = False
        for row, line in self.above(self.row, column):
            if line is None:
                deeper = True
            elif line.key is not None and line.column == column:
                level = _Level(column)
                level.keys.add(line.key)
                self.stand(row, [*_lists(line.dashes), level])
                self.context.key = True
                return
            elif column in line.dashes:
                self.at_dashes(row, line.dashes[: line.dashes.index(column) + 1])
                return
            elif line.indent < column:
                crooked = self.step_into(row, line, column)
                self.stand(row, self.levels)
                self.begin(column, crooked or deeper)
                return
        self.levels = [_Level(column)]
        self.context.key = not deeper
        self.tell()

    def at_dashes(self, row: int, dashes: list[int]) -> None:
        """At the column of a list's dashes: its next item, or a key where the list hangs on that column."""
        levels = _lists(dashes)
        levels[-1].index = 1
        self.stand(row, levels)
        self.context.item = self.context.chain
        holder = self.levels[-2] if len(self.levels) > 1 else levels[-1]
        if holder.key is not None and holder.column == levels[-1].column:
            del self.levels[-1]
            holder.key = None
            self.context.key = True
            self.tell()

    def begin(self, column: int, crooked: bool) -> None:
        """What may begin in a value that has none yet, unless lines below are part of it already."""
        context = self.context
        below = self.below()
        hangs = self.levels[-1].column if self.levels else -1
        free = below is None or below.indent <= hangs
        if below is not None and not free and (crooked or below.indent != column):
            return
        if below is not None and not free and below.dashes:
            context.item = (*context.chain, 0)
        elif below is not None and not free and below.key is not None:
            self.levels.append(_Level(column))
            context.key = True
            self.tell()
        elif free and not crooked:
            context.key = context.value = True

    # Upwards

    def stand(self, row: int, levels: list[_Level]) -> None:
        """From the levels that a line itself shows, line by line to the top; then tells what is known.

        A line that holds a value already starts over: what is set in deeper is part of that value.
        """
        self.levels = levels
        lines = self.lines
        level = levels[0]
        for one in range(row - 1, -1, -1):
            words = lines[one]
            indent = len(words) - len(words.lstrip(" "))
            if indent > level.column:
                continue
            if words.startswith(_MARKS):
                break
            if level.index >= 0 and indent == level.column and words.startswith("- ", indent):
                level.index += 1  # most of the lines of a long list, which need not be looked at closely
                continue
            line = self.line(one)
            if line is None:
                continue
            if level.index >= 0 and level.column in line.dashes:
                level.index += 1
                self.levels[:0] = _lists(line.dashes[: line.dashes.index(level.column)])
            elif level.index < 0 and line.key is not None and line.column == level.column:
                level.keys.add(line.key)
                self.levels[:0] = _lists(line.dashes)
            elif indent < level.column or (level.index >= 0 and line.key is not None):
                self.step_into(one, line, level.column + (level.index >= 0))
            level = self.levels[0]
        self.tell()

    def step_into(self, row: int, line: _Line, column: int) -> bool:
        """Puts the levels of a line in front that stand before a column.

        True where the line's own value begins at or behind that column: what stands there is set in crooked.
        """
        front = _lists(dash for dash in line.dashes if dash < column)
        crooked = len(front) < len(line.dashes)
        if line.key is not None and line.column < column:
            front.append(_Level(line.column, line.key))
        elif line.key is not None:
            crooked = True
        if line.kind and not crooked:
            self.levels = []
            self.opened = _Opened(row, line)
        self.levels[:0] = front or [_Level(line.indent)]
        return crooked

    # What is told

    def tell(self) -> None:
        """Tells the chain, and the keys beside it."""
        chain: list[str | int] = []
        groups: list[frozenset[str]] = []
        self.gather_below()
        for level in self.levels:
            if level.index >= 0:
                chain.append(level.index)
                groups.append(frozenset())
            elif level.key is not None:
                chain.append(level.key)
                groups.append(frozenset(level.keys))
        last = self.levels[-1] if self.levels else None
        open_group = last is not None and last.index < 0 and last.key is None
        groups.append(frozenset(last.keys) if last is not None and open_group else frozenset())
        self.context.chain, self.context.groups = tuple(chain), tuple(groups)

    def gather_below(self) -> None:
        """Adds the keys of every level that stand below the caret's line."""
        levels = list(self.levels)
        for row in range(self.row + 1, len(self.lines)):
            words = self.lines[row]
            indent = len(words) - len(words.lstrip(" "))
            if levels and indent > levels[-1].column:
                continue
            line = self.line(row)
            if line is None:
                continue
            while levels and (
                indent < levels[-1].column
                or (indent == levels[-1].column and levels[-1].index >= 0 and not line.dashes)
            ):
                levels.pop()
            if not levels:
                return
            if levels[-1].index < 0 and line.key is not None and line.column == levels[-1].column:
                levels[-1].keys.add(line.key)

    def held(self) -> bool:
        """Whether a value that began in a line above holds the caret; then what there is to tell is told."""
        opened = self.opened
        if opened is None:
            return False
        context = self.context
        context.key = context.value = False
        context.item = None
        if opened.line.kind == "brackets":
            start = sum(map(len, self.lines[: opened.row])) + opened.row
            self.in_brackets(start + opened.line.value, opened.line.hangs)
        return True

    # Brackets

    def in_brackets(self, start: int, hangs: int) -> None:
        """In brackets that begin at an offset; ``hangs`` is the column that their lines are set in behind."""
        brackets = _Brackets(self.text, start, self.brackets_end(hangs), self.context)
        brackets.look(self.offset)
        if self.start <= brackets.at < self.offset and not self.context.brackets:
            self.in_comment(self.lines[self.row], brackets.at - self.start)

    def brackets_end(self, hangs: int) -> int:
        """Where brackets that hold the caret end at the latest: before a line that cannot be part of them."""
        at = self.text.find("\n", self.offset)
        for row in range(self.row + 1, len(self.lines)):
            words = self.lines[row]
            inner = words.lstrip(" ")
            if inner and len(words) - len(inner) <= hangs and not inner.startswith(("]", "}", "#")):
                return at
            at += len(words) + 1
        return len(self.text)


def _lists(dashes: Iterable[int]) -> list[_Level]:
    """The lists that some dashes belong to, each at its first item so far."""
    return [_Level(dash, index=0) for dash in dashes]


def _within_quotes(text: str, start: int, end: int, offset: int) -> tuple[int, int, str]:
    """Start and end of a word within its quotes, and the quote; the quotes are in where the caret is not.

    Where the quote is not closed yet, nobody knows what it will hold: the word ends at the caret.
    """
    quote = text[start : start + 1]
    if quote not in _QUOTES or offset <= start:
        return start, end, ""
    closed = end - start > 1 and text[end - 1] == quote
    if not closed:
        return start + 1, offset, quote
    return (start, end, "") if offset >= end else (start + 1, end - 1, quote)


class _Frame:
    """Brackets that are open: ``keys`` of a group, ``index`` in a list (-1 for a group).

    ``key`` leads on from here, in a list too where an item is a pair without braces of its own. Of the part
    that is being read, ``word`` is where its words begin and end, None where there are none, and ``done``
    says that something stands there which is no word.
    """

    __slots__ = ("done", "index", "key", "keys", "word")

    def __init__(self, bracket: str) -> None:
        self.index = 0 if bracket == "[" else -1
        self.key: str | None = None
        self.keys: set[str] = set()
        self.word: tuple[int, int] | None = None
        self.done = False

    def clear(self) -> None:
        """Ready for the next part."""
        self.word = None
        self.done = False


class _Brackets:
    """Reads brackets from ``at`` to ``end`` at the latest."""

    def __init__(self, text: str, at: int, end: int, context: Context) -> None:
        self.text = text
        self.at = at
        self.end = end
        self.context = context
        self.frames: list[_Frame] = []
        self.steps: list[_Step] | None = None
        self.on_key = False
        self.own: tuple[int, int] | None = None

    def look(self, offset: int) -> None:
        """Tells where in the brackets an offset lies; nothing where they have closed before it."""
        while self.at < self.end:
            kind, end = self.part()
            start, self.at = self.at, end
            if self.steps is None and kind in _NAMED and start < offset <= end and not self.frames[-1].word:
                if kind == "comment":
                    self.context.comment = start
                    return
                self.stop(offset, colon=False)
                self.name(start, end)
            elif self.steps is None and kind in ("bracket", "colon") and start >= offset:
                self.stop(offset, colon=kind == "colon")
            self.take(kind, start, end)
            if not self.frames:
                break
        if self.frames and self.steps is None:
            self.stop(offset, colon=False)
        if self.steps is not None:
            self.tell(self.steps)

    def part(self) -> tuple[str, int]:
        """What stands at ``at``, and where it ends."""
        text, at = self.text, self.at
        if text[at] in _QUOTES and self.frames and self.frames[-1].word is None:
            found = _QUOTE.match(text, at, self.end)
            if found is not None:
                return "word", found.end()
            line_end = text.find("\n", at, self.end)
            return "word", self.end if line_end < 0 else line_end
        found = _IN_BRACKETS.match(text, at, self.end)
        assert found is not None
        return found.lastgroup or "", found.end()

    def take(self, kind: str, start: int, end: int) -> None:
        """Goes on past a part."""
        bracket = self.text[start] if kind == "bracket" else ""
        if bracket and bracket in "[{":
            if self.frames:
                self.frames[-1].done = True
            self.frames.append(_Frame(bracket))
            return
        frame = self.frames[-1]
        if bracket and bracket in "]}":
            self.keep_key(frame)
            self.frames.pop()
        elif bracket:
            self.keep_key(frame)
            frame.key = None
            frame.index += frame.index >= 0
            frame.clear()
        elif kind == "colon":
            if frame.key is None:
                frame.key = self.keep_key(frame)
            frame.clear()
        elif kind == "word" or (kind in _NAMED and frame.word is not None and kind != "comment"):
            frame.word = (frame.word[0] if frame.word else start, end)
        elif kind in ("alias", "property"):
            frame.done = frame.done or kind == "alias"

    def keep_key(self, frame: _Frame) -> str:
        """The word just read as a key, which is kept where it is one and not the caret's own."""
        if frame.word is None:
            return ""
        key = _unquoted(self.text[slice(*frame.word)])
        if frame.index < 0 and frame.key is None and frame.word != self.own:
            frame.keys.add(key)
        return key

    def stop(self, offset: int, *, colon: bool) -> None:
        """Notes what is at the caret."""
        context, frame = self.context, self.frames[-1]
        context.brackets = True
        self.innermost = frame
        self.on_key = frame.key is None and (frame.index < 0 or colon)
        self.steps = []
        for one in self.frames:
            if one.index >= 0:
                self.steps.append((one.index, set()))
            if one.key is not None:
                self.steps.append((one.key, one.keys))
        context.colon = self.on_key and colon
        word = frame.word
        before = self.text[offset - 1]
        if word is None:
            context.glued = before in ",:"
        else:
            word = (min(word[0], offset), max(word[1], offset))
            self.own = frame.word if self.on_key else None
        free = word is None and not frame.done
        touching = (
            before == ":" and frame.key is not None and self.text[offset - 2 : offset - 1] not in _QUOTES
        )
        whole = word is not None and not touching and "\n" not in self.text[slice(*word)]
        if free or whole:
            context.key, context.value = self.on_key, not self.on_key
        if word is not None and whole:
            context.start, context.end, context.quote = _within_quotes(self.text, *word, offset)

    def name(self, start: int, end: int) -> None:
        """On an anchor, alias or tag."""
        context, sign = self.context, self.text[start]
        context.key = context.value = context.glued = False
        if sign in "*&":
            context.sign = sign
            context.start, context.end = start + 1, end

    def tell(self, steps: list[_Step]) -> None:
        """Adds what the brackets hold to the chain."""
        context = self.context
        context.chain = (*context.chain, *(step for step, _ in steps))
        groups = [*context.groups[:-1], *(frozenset(keys) for _, keys in steps)]
        last = self.innermost.keys if self.on_key and self.innermost.index < 0 else ()
        context.groups = (*groups, frozenset(last))
