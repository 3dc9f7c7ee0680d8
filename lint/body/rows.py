"""Reads exercises out of lines of text.

Lines make loading fast: built.py holds hundreds of exercises as one text, and only those that a programme
names are read. Tabs separate the fields of a line, "|" the items of a list, "~" the parts of an item, blanks
the angles. A text of lines has a line break before and after each line. build_rows.py writes the lines.
"""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from typing import Any

SHORT = 4000
"""Length of text, in characters, that is searched from start to end. Halving it further saved no time."""


def read_list(text: str) -> tuple[str, ...]:
    """Words: ``a|b``."""
    return tuple(text.split("|")) if text else ()


def read_path(text: str) -> dict[str, tuple[float, ...]]:
    """Angles by joint: ``hip~90 0|knee~15 15``."""
    return {joint: tuple(map(float, angles.split(" "))) for joint, angles in _parts(text)}


def read_stated(text: str) -> dict[str, tuple[str, str]]:
    """Credit and reason by muscle or group: ``soleus~direct~a reason``."""
    return {who: (credit, why) for who, credit, why in _parts(text)}


def read_positions(text: str) -> dict[str, float]:
    """Places in a muscle's own range by muscle: ``soleus~0.57``."""
    return {who: float(position) for who, position in _parts(text)}


def _parts(text: str) -> list[list[str]]:
    return [item.split("~") for item in text.split("|")] if text else []


FIELDS: dict[str, Callable[[str], Any]] = {
    "name": str,
    "aliases": read_list,
    "rank": str,
    "implement": str,
    "kind": str,
    "stance": str,
    "grip": str,
    "unilateral": bool,
    "pattern": str,
    "patterns": read_list,
    "actions": read_list,
    "assists": read_list,
    "path": read_path,
    "stated": read_stated,
    "direct": read_list,
    "indirect": read_list,
    "positions": read_positions,
    "axial": str,
    "level": str,
    "capacity": str,
    "station": read_list,
    "hands": bool,
    "easier": read_list,
    "harder": read_list,
    "because": str,
    "sources": read_list,
}
"""The fields of an exercise in the order in which a line holds them, each with what reads it.

First stands what is looked for without reading the rest.
"""

_PLACES = {name: place for place, name in enumerate(FIELDS)}


class WrittenFields:
    """What has these fields: given as they are, or in a line, each then read when it is first asked for.

    Raises ValueError for a line of fewer or more fields.
    """

    __slots__ = (*FIELDS, "_written")

    def __init__(self, fields: dict[str, Any], line: str = "") -> None:
        self._written = line.split("\t") if line else []
        if line and len(self._written) != len(FIELDS):
            raise ValueError(f"a line of {len(self._written)} fields, not {len(FIELDS)}")
        for name, value in fields.items():
            setattr(self, name, value)

    def __getattr__(self, name: str) -> Any:
        """A field that nobody has asked for before."""
        if name not in _PLACES or not self._written:
            raise AttributeError(name)
        value = FIELDS[name](self._written[_PLACES[name]])
        setattr(self, name, value)
        return value


def names(line: str) -> list[str]:
    """The name and the aliases of one exercise from its line."""
    name, aliases, _ = line.split("\t", 2)
    return [name, *aliases.split("|")] if aliases else [name]


def rank(line: str) -> str:
    """The rank of one exercise from its line."""
    return line.split("\t", 3)[2]


def lines_of(text: str) -> Iterator[str]:
    """The lines of a text, one by one, so that the whole text is not copied."""
    start = 1
    while start < len(text):
        end = text.index("\n", start)
        yield text[start:end]
        start = end + 1


def line_of(text: str, key: str) -> str:
    """The line that begins with ``key`` and a tab, or "".

    The lines must be sorted. The part of the text that can hold the line is halved until it is short, and
    then searched, so no table of lines is needed.
    """
    start = _start_of(text, f"\n{key}\t")
    return "" if start < 0 else text[start + 1 : text.find("\n", start + 1)]


def lines_with(text: str, key: str) -> list[str]:
    """All lines that begin with ``key`` and a tab. The lines must be sorted."""
    begins = f"\n{key}\t"
    start = _start_of(text, begins)
    found = []
    while start >= 0 and text.startswith(begins, start):
        end = text.find("\n", start + 1)
        found.append(text[start + 1 : end])
        start = end
    return found


def _start_of(text: str, begins: str) -> int:
    """Where the first line that begins so stands in a text of sorted lines, or -1."""
    size = len(begins)
    low, high, found = 0, len(text) - 1, -1  # the last line break begins no line
    while high - low > SHORT:
        middle = (low + high) // 2
        start = text.find("\n", middle, high)
        if start < 0:
            high = middle
        elif text[start : start + size] < begins:
            low = start
        else:
            high = start
            found = start if text.startswith(begins, start) else found
    first = text.find(begins, low, high + size - 1)
    return found if first < 0 else first
