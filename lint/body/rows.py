"""Writes an exercise as one line of text, and reads it back.

Lines make loading fast: built.py holds hundreds of exercises as one text, and only those that a programme
names are read. Tabs separate the fields of a line, "|" the items of a list, "~" the parts of an item, blanks
the angles. A text of lines has a line break before and after each line.
"""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator
    from typing import Any

    Form = tuple[Callable[[Any], str], Callable[[str], Any]]

SHORT = 4000
"""Length of text, in characters, that is searched from start to end. Halving it further saved no time."""


# The forms of fields: how each is written, and how it is read


def _clean(text: str) -> str:
    for mark in "\t\n|~":
        if mark in text:
            raise ValueError(f"{text!r} holds a mark that the built form needs")
    return text


def _write_flag(value: bool) -> str:
    return "1" if value else ""


def _write_list(items: Iterable[str]) -> str:
    return "|".join(map(_clean, items))


def _read_list(text: str) -> tuple[str, ...]:
    return tuple(text.split("|")) if text else ()


def _write_path(path: dict[str, tuple[float, ...]]) -> str:
    return "|".join(f"{joint}~{' '.join(f'{angle:g}' for angle in angles)}" for joint, angles in path.items())


def _read_path(text: str) -> dict[str, tuple[float, ...]]:
    return {joint: tuple(map(float, angles.split(" "))) for joint, angles in _parts(text)}


def _write_stated(stated: dict[str, tuple[str, str]]) -> str:
    return "|".join(f"{_clean(who)}~{credit}~{_clean(why)}" for who, (credit, why) in stated.items())


def _read_stated(text: str) -> dict[str, tuple[str, str]]:
    return {who: (credit, why) for who, credit, why in _parts(text)}


def _write_positions(positions: dict[str, float]) -> str:
    return "|".join(f"{_clean(who)}~{position}" for who, position in positions.items())


def _read_positions(text: str) -> dict[str, float]:
    return {who: float(position) for who, position in _parts(text)}


def _parts(text: str) -> list[list[str]]:
    return [item.split("~") for item in text.split("|")] if text else []


_TEXT: Form = (_clean, str)
_FLAG: Form = (_write_flag, bool)
_LIST: Form = (_write_list, _read_list)
_PATH: Form = (_write_path, _read_path)
_STATED: Form = (_write_stated, _read_stated)
_POSITIONS: Form = (_write_positions, _read_positions)

FIELDS: dict[str, Form] = {
    "name": _TEXT,
    "aliases": _LIST,
    "implement": _TEXT,
    "kind": _TEXT,
    "stance": _TEXT,
    "grip": _TEXT,
    "unilateral": _FLAG,
    "pattern": _TEXT,
    "patterns": _LIST,
    "actions": _LIST,
    "assists": _LIST,
    "path": _PATH,
    "stated": _STATED,
    "direct": _LIST,
    "indirect": _LIST,
    "positions": _POSITIONS,
    "axial": _TEXT,
    "level": _TEXT,
    "capacity": _TEXT,
    "station": _LIST,
    "hands": _FLAG,
    "easier": _LIST,
    "harder": _LIST,
    "because": _TEXT,
    "sources": _LIST,
}
"""The fields of an exercise and their forms, in the order in which a line holds them."""

_READ = [(name, read) for name, (_, read) in FIELDS.items() if read is not str]


def encode(fields: dict[str, Any]) -> str:
    """The line of one exercise. ValueError if a text holds a tab, a line break, "|" or "~"."""
    return "\t".join(write(fields[name]) for name, (write, _) in FIELDS.items())


def decode(line: str) -> dict[str, Any]:
    """The fields of one exercise from its line."""
    fields: dict[str, Any] = dict(zip(FIELDS, line.split("\t"), strict=True))
    for name, read in _READ:
        fields[name] = read(fields[name])
    return fields


def names(line: str) -> list[str]:
    """The name and the aliases of one exercise from its line."""
    name, aliases, _ = line.split("\t", 2)
    return [name, *aliases.split("|")] if aliases else [name]


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
    begins = f"\n{key}\t"
    size = len(begins)
    low, high = 0, len(text) - 1  # no line begins at the last line break
    while high - low > SHORT:
        middle = (low + high) // 2
        start = text.find("\n", middle, high)
        if start < 0 or text[start : start + size] > begins:
            high = middle
        else:
            low = start
    start = text.find(begins, low, high + size)
    return "" if start < 0 else text[start + 1 : text.find("\n", start + 1)]
