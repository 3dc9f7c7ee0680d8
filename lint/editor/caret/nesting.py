"""The groups and lists that hold the caret, found by indentation: first upwards, then in the lines below."""

from __future__ import annotations

from .lines import DOCUMENT_MARKS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from .context import KeyPath, SiblingKeys
    from .lines import TextLine, TextLines

MOST_SIBLINGS = 2_000
"""Keys of one group that are looked for: no group of a file of ours holds as many."""


class Level:
    """A group of keys or a list that holds the caret, and the ``column`` it stands at.

    ``index`` is the place in the list, -1 for a group. ``key`` is the key that leads on to the caret, None
    where the caret is on a key of this group. ``keys`` are the keys known so far.
    """

    __slots__ = ("column", "index", "key", "keys")

    def __init__(self, column: int, key: str | None = None, index: int = -1) -> None:
        self.column = column
        self.key = key
        self.index = index
        self.keys: set[str] = set() if key is None else {key}


def list_levels(dashes: Iterable[int]) -> list[Level]:
    """The lists of some dashes, each at its first item as far as is known."""
    return [Level(dash, index=0) for dash in dashes]


class Nesting:
    """The ``levels`` that hold the caret, outermost first.

    A value that began in a line above and may hold the caret starts at ``open_row``; ``open_line`` is that
    line, None where there is no such value.
    """

    __slots__ = ("_caret_row", "_lines", "levels", "open_line", "open_row")

    def __init__(self, lines: TextLines, caret_row: int) -> None:
        self._lines = lines
        self._caret_row = caret_row
        self.levels: list[Level] = []
        self.open_line: TextLine | None = None
        self.open_row = -1

    def climb(self, row: int, levels: list[Level]) -> None:
        """Puts the levels above a row in front of those that its own line shows.

        Where a line above holds a value already, the levels below it are dropped: they are part of the value.
        """
        self.levels = levels
        rows = self._lines.rows
        level = levels[0]
        for one in range(row - 1, -1, -1):
            text = rows[one]
            indent = len(text) - len(text.lstrip(" "))
            if indent > level.column:
                continue
            if text.startswith(DOCUMENT_MARKS):
                break
            if level.index >= 0 and indent == level.column and text.startswith("- ", indent):
                level.index += 1  # most lines of a long list: there is no need to take them apart
                continue
            if level.column == 0 and len(level.keys) > MOST_SIBLINGS:
                break
            line = self._lines.line(one)
            if line is None:
                continue
            if level.index >= 0 and level.column in line.dashes:
                level.index += 1
                self.levels[:0] = list_levels(line.dashes[: line.dashes.index(level.column)])
            elif level.index < 0 and line.key is not None and line.column == level.column:
                level.keys.add(line.key)
                self.levels[:0] = list_levels(line.dashes)
            elif indent < level.column or (level.index >= 0 and line.key is not None):
                self.enter(one, line, level.column + (level.index >= 0))
            level = self.levels[0]

    def enter(self, row: int, line: TextLine, column: int) -> bool:
        """Puts the levels of a line that stand before a column in front.

        Returns True where the line's own value begins at that column or behind it. Then what stands at the
        column is indented wrongly.
        """
        front = list_levels(dash for dash in line.dashes if dash < column)
        misindented = len(front) < len(line.dashes)
        if line.key is not None and line.column < column:
            front.append(Level(line.column, line.key))
        elif line.key is not None:
            misindented = True
        if line.style and not misindented:
            self.levels = []
            self.open_row, self.open_line = row, line
        self.levels[:0] = front or [Level(line.indent)]
        return misindented

    def path_and_siblings(self) -> tuple[KeyPath, SiblingKeys]:
        """The path to the caret, and the keys beside each of its steps."""
        self._gather_keys_below()
        path: list[str | int] = []
        siblings: list[frozenset[str]] = []
        for level in self.levels:
            if level.index >= 0:
                path.append(level.index)
                siblings.append(frozenset())
            elif level.key is not None:
                path.append(level.key)
                siblings.append(frozenset(level.keys))
        last = self.levels[-1] if self.levels else None
        is_on_key = last is not None and last.index < 0 and last.key is None
        siblings.append(frozenset(last.keys) if last is not None and is_on_key else frozenset())
        return tuple(path), tuple(siblings)

    def _gather_keys_below(self) -> None:
        """Adds the keys of every level that stand below the caret's row."""
        levels = list(self.levels)
        rows = self._lines.rows
        for row in range(self._caret_row + 1, len(rows)):
            indent = len(rows[row]) - len(rows[row].lstrip(" "))
            if levels and indent > levels[-1].column:
                continue
            line = self._lines.line(row)
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
                if len(levels[-1].keys) > MOST_SIBLINGS:
                    return
