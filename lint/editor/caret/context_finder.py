"""Finds where the caret stands in a text that may be half typed, and what may stand there.

No parser reads a text that is being typed. So this module goes by what a coach goes by: indentation, dashes
and brackets. It takes the caret's line apart, climbs to the lines that hold it, reads the brackets that are
open there, and gathers the keys that stand beside. Where the text can be parsed, it agrees with the tree.
"""

from __future__ import annotations

from .context import CaretContext
from .flow_collections import FlowReader
from .lines import ALIAS, COMMENT, DOCUMENT_MARKS, PROPERTY, QUOTED, TextLines, past_blanks, within_quotes
from .nesting import Level, Nesting, list_levels

TYPE_CHECKING = False
if TYPE_CHECKING:
    import re

    from .lines import TextLine


def context_at(content: str, offset: int) -> CaretContext:
    """Where a caret at a code-point offset stands; never raises, whatever the text."""
    return _ContextFinder(content, min(max(offset, 0), len(content))).find()


class _ContextFinder:
    """Looks around one caret."""

    def __init__(self, content: str, offset: int) -> None:
        self.lines = TextLines(content)
        text = self.lines.text
        self.offset = offset
        self.row = text.count("\n", 0, offset)
        self.line_start = text.rfind("\n", 0, offset) + 1
        self.column = offset - self.line_start
        self.context = CaretContext(offset)
        self.nesting = Nesting(self.lines, self.row)

    def find(self) -> CaretContext:
        """All that is known of the caret's place."""
        line = self.lines.line(self.row)
        if line is None:
            self.on_empty_line()
        elif self.column >= line.indent:
            self.in_line(line)
        return self.context

    def climb(self, row: int, levels: list[Level]) -> None:
        """Finds what holds the levels that a row shows, and notes the path there."""
        self.nesting.climb(row, levels)
        self.note_path()

    def note_path(self) -> None:
        """Notes the path to the caret and the keys beside it."""
        self.context.key_path, self.context.sibling_keys = self.nesting.path_and_siblings()

    # The caret's line

    def in_line(self, line: TextLine) -> None:
        """On a line that holds something."""
        column = self.column
        if line.key is not None and line.key_start <= column <= line.key_end:
            self.on_key(line)
        elif column < line.column or (column == line.column == len(line.text)):
            self.behind_dash(line)
        elif line.key is None:
            self.on_words(line)
        elif column > line.colon:
            self.climb(self.row, [*list_levels(line.dashes), Level(line.column, line.key)])
            self.in_value(line, line.colon + 1)

    def on_key(self, line: TextLine) -> None:
        """On a key that has its colon."""
        self.climb(self.row, [*list_levels(line.dashes), Level(line.column)])
        if not self.is_in_value_above():
            self.context.takes_key = self.context.has_colon = True
            self.note_word(line.key_start, line.key_end)

    def behind_dash(self, line: TextLine) -> None:
        """Among the dashes: the last one may begin an item, if nothing stands behind it yet."""
        last = line.dashes[-1] if line.dashes else self.column
        if last < self.column and line.value >= len(line.text.rstrip()):
            self.climb(self.row, list_levels(line.dashes))
            if not self.is_in_value_above():
                self.begin_value(self.column, misindented=False)
                self.context.item_path = None
                self.context.needs_space = self.column == last + 1

    def on_words(self, line: TextLine) -> None:
        """On words without a colon, behind dashes or alone on their line: a value, or a key to be."""
        context = self.context
        if line.dashes:
            self.climb(self.row, list_levels(line.dashes))
            context.takes_key = context.takes_value = True
        else:
            self.find_place(line.indent)
        allowed = (context.takes_key, context.takes_value, context.item_path)
        context.takes_key = context.takes_value = False
        context.item_path = None
        self.in_value(line, line.column)
        if context.takes_value and not context.in_flow:
            context.takes_key, context.takes_value, context.item_path = allowed
            context.takes_key = context.takes_key and not context.quote

    def in_value(self, line: TextLine, start: int) -> None:
        """In what follows a key or a dash, which may be nothing yet; it may start at the column ``start``."""
        if self.is_in_value_above():
            return
        column, at = self.column, past_blanks(line.text, start)
        while (found := PROPERTY.match(line.text, at)) is not None and found.start() < column:
            if column <= found.end():
                self.note_anchor(found, "&")
                return
            at = past_blanks(line.text, found.end())
        if line.style == "flow" and column > line.value:
            self.in_flow(self.line_start + line.value, line.parent_column)
        elif line.style == "quoted":
            self.in_quotes(line)
        elif line.style == "alias" and column > line.value:
            self.note_anchor(ALIAS.match(line.text, line.value), "*")
            self.note_comment(line.text, line.value)
        elif line.style == "block":
            self.note_comment(line.text, line.value)
        elif line.style in ("", "plain"):
            self.in_plain_words(line, start)

    def in_quotes(self, line: TextLine) -> None:
        found = QUOTED.match(line.text, line.value)
        end = found.end() if found else len(line.text.rstrip())
        if self.column <= end:
            self.context.takes_value = True
            self.note_word(min(line.value, self.column), end)
        else:
            self.note_comment(line.text, end)

    def in_plain_words(self, line: TextLine, start: int) -> None:
        context, column = self.context, self.column
        comment = self.note_comment(line.text, max(line.value - 1, 0))
        if context.comment_start >= 0:
            return
        touches_colon = column == start != line.column
        if line.style == "":
            context.takes_value = True
            context.needs_space = touches_colon
        elif not touches_colon:
            end = len(line.text[:comment].rstrip())
            context.takes_value = True
            self.note_word(min(line.value, column), max(end, column))

    # A line without words

    def on_empty_line(self) -> None:
        """On a line with nothing but blanks or a comment."""
        text = self.lines.rows[self.row]
        mark = text.find("#")
        is_in_comment = 0 <= mark < self.column
        column = mark if is_in_comment else self.column
        if text.startswith(DOCUMENT_MARKS) or self.is_in_flow_above(column):
            return
        self.find_place(column)
        if self.is_in_value_above() or not is_in_comment:
            return
        self.context = CaretContext(self.offset)
        self.context.comment_start = self.line_start + mark

    def find_place(self, column: int) -> None:
        """Finds what may begin on a line of its own at a column: a key, a list item, a value."""
        is_deeper_above = False
        for row, line in self.lines.above(self.row, column):
            if line is None:
                is_deeper_above = True
            elif line.key is not None and line.column == column:
                level = Level(column)
                level.keys.add(line.key)
                self.climb(row, [*list_levels(line.dashes), level])
                self.context.takes_key = True
                return
            elif column in line.dashes:
                self.at_dashes(row, line.dashes[: line.dashes.index(column) + 1])
                return
            elif line.indent < column:
                misindented = self.nesting.enter(row, line, column)
                self.climb(row, self.nesting.levels)
                self.begin_value(column, misindented or is_deeper_above)
                return
        self.nesting.levels = [Level(column)]
        self.context.takes_key = not is_deeper_above
        self.note_path()

    def at_dashes(self, row: int, dashes: list[int]) -> None:
        """At the column of a list's dashes: its next item may begin there.

        A key may too, where the dashes stand at the column of the key that holds the list.
        """
        list_above = list_levels(dashes)
        list_above[-1].index = 1
        self.climb(row, list_above)
        self.context.item_path = self.context.key_path
        levels = self.nesting.levels
        holder = levels[-2] if len(levels) > 1 else list_above[-1]
        if holder.key is not None and holder.column == levels[-1].column:
            del levels[-1]
            holder.key = None
            self.context.takes_key = True
            self.note_path()

    def begin_value(self, column: int, misindented: bool) -> None:
        """Notes what may begin in a value that has none yet, unless it already has lines below."""
        context, levels = self.context, self.nesting.levels
        below = self.lines.next_below(self.row)
        parent_column = levels[-1].column if levels else -1
        has_no_lines = below is None or below.indent <= parent_column
        if below is not None and not has_no_lines and (misindented or below.indent != column):
            return
        if below is not None and not has_no_lines and below.dashes:
            context.item_path = (*context.key_path, 0)
        elif below is not None and not has_no_lines and below.key is not None:
            levels.append(Level(column))
            context.takes_key = True
            self.note_path()
        elif has_no_lines and not misindented:
            context.takes_key = context.takes_value = True

    # Values that began in a line above

    def is_in_value_above(self) -> bool:
        """Whether a value that began in a line above holds the caret.

        If it is in brackets, also finds the place in them.
        """

        line = self.nesting.open_line
        if line is None:
            return False
        context = self.context
        context.takes_key = context.takes_value = False
        context.item_path = None
        if line.style == "flow":
            self.in_flow(self.lines.offset_of(self.nesting.open_row) + line.value, line.parent_column)
        return True

    def is_in_flow_above(self, column: int) -> bool:
        """Whether brackets that are open in the lines above hold an empty line; if so, finds the place there.

        An empty line that is not indented deeper is only inside them where they close below.
        """
        row, line = next(self.lines.above(self.row, len(self.lines.text)), (0, None))
        if line is None:
            return False
        self.nesting.enter(row, line, len(line.text) + 1)
        self.climb(row, self.nesting.levels)
        opened = self.nesting.open_line
        if opened is not None and opened.style == "flow":
            below = self.lines.next_below(self.row)
            closes_below = below is not None and below.text.lstrip().startswith(("]", "}"))
            is_held = column > opened.parent_column or closes_below
            if is_held and self.is_in_value_above() and self.context.in_flow:
                return True
        self.nesting, self.context = Nesting(self.lines, self.row), CaretContext(self.offset)
        return False

    def in_flow(self, start: int, parent_column: int) -> None:
        """In brackets that start at an offset; their lines are indented deeper than ``parent_column``."""
        brackets = FlowReader(self.lines.text, start, self.flow_end(parent_column), self.context)
        brackets.read(self.offset)
        if self.line_start <= brackets.at < self.offset and not self.context.in_flow:
            self.note_comment(self.lines.rows[self.row], brackets.at - self.line_start)

    def flow_end(self, parent_column: int) -> int:
        """Where brackets that hold the caret end at the latest: before a line that cannot be part of them."""
        text, rows = self.lines.text, self.lines.rows
        at = text.find("\n", self.offset)
        for row in range(self.row + 1, len(rows)):
            inner = rows[row].lstrip(" ")
            indent = len(rows[row]) - len(inner)
            if inner and indent <= parent_column and not inner.startswith(("]", "}", "#")):
                return at
            at += len(rows[row]) + 1
        return len(text)

    # What is noted

    def note_word(self, start: int, end: int) -> None:
        """Notes the word at the caret, by its columns."""
        context = self.context
        context.start, context.end, context.quote = within_quotes(
            self.lines.text, self.line_start + start, self.line_start + end, self.offset
        )

    def note_anchor(self, found: re.Match[str] | None, sign: str) -> None:
        """Notes the name of an anchor or alias, if the caret is on it."""
        if found is not None and self.column <= found.end() and found[0].startswith(sign):
            self.context.anchor_sign = sign
            self.note_word(found.start() + 1, found.end())

    def note_comment(self, text: str, column: int) -> int | None:
        """The column of the comment behind a column, if there is one; notes it if it holds the caret."""
        found = COMMENT.search(text, column)
        if found is None:
            return None
        mark = found.start("mark")
        if mark < self.column:
            self.context.comment_start = self.line_start + mark
        return mark
