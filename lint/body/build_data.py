"""The data of the body as they are written, each entry with its line."""

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
TABLES = ("actions", "mechanics", "muscles", "areas", "pairs", "sources")
Lines = dict[tuple[Any, ...], int]


class DataEntry(dict[str, Any]):
    """One entry of a data file that knows its file and the line of each of its keys."""

    def __init__(
        self, data: Mapping[str, Any], file: str, line: int, lines: Mapping[tuple[Any, ...], int]
    ) -> None:
        super().__init__(data)
        self.file = file
        self.line = line
        self.lines = lines

    def fault(self, words: str, *path: Any) -> str:
        """A located fault: the line of the innermost key of ``path`` that has one."""
        for end in range(len(path), 0, -1):
            if path[:end] in self.lines:
                return f"{self.file}:{self.lines[path[:end]]}: {words}"
        return f"{self.file}:{self.line}: {words}"


Data = dict[str, list[DataEntry]]


def read(folder: str = DATA) -> Data:
    """All tables by name, and the entries of every file below exercises/ in order of file name."""
    data = {name: entries(os.path.join(folder, f"{name}.yaml"), f"{name}.yaml") for name in TABLES}
    below = os.path.join(folder, "exercises")
    files = sorted(file for file in os.listdir(below) if file.endswith(".yaml"))
    data["exercises"] = [e for file in files for e in entries(os.path.join(below, file), f"exercises/{file}")]
    return data


def entries(path: str, name: str) -> list[DataEntry]:
    """The entries of one data file: a list, each entry with keys."""
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
        found.append(DataEntry(_plain(node, (), lines, name), name, line, lines))
    return found


def _plain(node: Any, path: tuple[Any, ...], lines: Lines, name: str) -> Any:
    if isinstance(node, yaml.SequenceNode):
        for index, item in enumerate(node.value):
            lines[(*path, index)] = item.start_mark.line + 1
        return [_plain(item, (*path, index), lines, name) for index, item in enumerate(node.value)]
    if isinstance(node, yaml.MappingNode):
        plain: dict[Any, Any] = {}
        for key, value in node.value:
            line = key.start_mark.line + 1
            if key.value in plain:
                raise ValueError(f"{name}:{line}: {key.value} stands twice in one entry")
            lines[(*path, key.value)] = line
            plain[key.value] = _plain(value, (*path, key.value), lines, name)
        return plain
    loader = yaml.SafeLoader("")
    return loader.construct_object(node)
