"""Reads the data files of the body, and keeps the line of every entry and key."""

from __future__ import annotations

import os
from typing import Any

import yaml

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping

HERE = os.path.dirname(os.path.abspath(__file__))
DATA = os.path.join(HERE, "data")
SCHEMAS = os.path.join(os.path.dirname(os.path.dirname(HERE)), "schema")
TABLES = ("actions", "mechanics", "muscles", "areas", "pairs", "sources", "name-words", "names-elsewhere")

Lines = dict[tuple[Any, ...], int]
Twice = list[tuple[str, int]]


class DataEntry(dict[str, Any]):
    """One entry of a data file, as a dict.

    ``line`` is where it begins. ``lines`` is {path: line} for every key and list item in it; a path is a
    tuple of keys and list positions. ``twice`` lists (key, line) for each key that is written a second time.
    """

    def __init__(self, data: Mapping[str, Any], file: str, line: int, lines: Lines, twice: Twice) -> None:
        super().__init__(data)
        self.file = file
        self.line = line
        self.lines = lines
        self.twice = twice

    @property
    def label(self) -> str:
        """The name of the entry in a message about a fault."""
        return str(self.get("name", self.get("id", self.get("language", "this entry"))))

    def line_of(self, *path: Any) -> int:
        """The line of a path. If the path does not exist, the line of the innermost part of it that does."""
        return next(
            (self.lines[path[:end]] for end in range(len(path), 0, -1) if path[:end] in self.lines), self.line
        )

    def fault(self, words: str, *path: Any) -> str:
        """The message for a fault: the file, the line of ``path``, and the words."""
        return f"{self.file}:{self.line_of(*path)}: {words}"


Data = dict[str, list[DataEntry]]


def read(folder: str = DATA) -> Data:
    """All tables by name. The table "exercises" holds the files below exercises/, in order of file name."""
    data = {name: entries(os.path.join(folder, f"{name}.yaml"), f"{name}.yaml") for name in TABLES}
    below = os.path.join(folder, "exercises")
    files = sorted(file for file in os.listdir(below) if file.endswith(".yaml"))
    data["exercises"] = [e for file in files for e in entries(os.path.join(below, file), f"exercises/{file}")]
    return data


def entries(path: str, name: str) -> list[DataEntry]:
    """The entries of one data file. ValueError if the file is not a list of entries with keys."""
    with open(path, encoding="utf-8") as file:
        root = yaml.compose(file, yaml.CSafeLoader)
    if not isinstance(root, yaml.SequenceNode):
        raise ValueError(f"{name}:1: a list of entries is wanted")
    found = []
    for node in root.value:
        line = node.start_mark.line + 1
        if not isinstance(node, yaml.MappingNode):
            raise ValueError(f"{name}:{line}: an entry with keys is wanted")
        lines: Lines = {}
        twice: Twice = []
        found.append(DataEntry(_plain(node, (), lines, twice), name, line, lines, twice))
    return found


def _plain(node: Any, path: tuple[Any, ...], lines: Lines, twice: Twice) -> Any:
    """The plain data of a node. Adds to ``lines`` and ``twice`` what it finds below ``path``."""
    if isinstance(node, yaml.SequenceNode):
        for index, item in enumerate(node.value):
            lines[(*path, index)] = item.start_mark.line + 1
        return [_plain(item, (*path, index), lines, twice) for index, item in enumerate(node.value)]
    if isinstance(node, yaml.MappingNode):
        plain: dict[Any, Any] = {}
        for key, value in node.value:
            line = key.start_mark.line + 1
            if key.value in plain:
                twice.append((key.value, line))
                continue
            lines[(*path, key.value)] = line
            plain[key.value] = _plain(value, (*path, key.value), lines, twice)
        return plain
    loader = yaml.SafeLoader("")
    return loader.construct_object(node)
