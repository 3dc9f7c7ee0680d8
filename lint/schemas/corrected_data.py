"""The data of a file with misspelt keys corrected, and the way from there back to the file's words.

The schema is checked on a corrected copy of the data, so that one misspelt key never looks like several
faults. Findings must still point at the words that the coach wrote.
"""

from __future__ import annotations

from ..findings.finding import Finding
from ..syntax.scalars import OutOfRangeError, core_value
from ..syntax.tree import Mapping, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ..findings.finding import Edits
    from ..syntax.tree import Node
    from ..text.places import Place
    from .violation import DataPath


class CorrectedData:
    """A copy of a tree's data in which keys can be corrected; paths lead through the copy."""

    def __init__(self, root: Mapping) -> None:
        self.root = root
        self.plain: dict[str, Any] = copied(root.plain)
        self._as_written: dict[int, dict[str, str]] = {}
        """For the id of each corrected mapping: its corrected keys, and how they were written."""

    def correct_key(self, keys: dict[str, Any], key: str, meant: str) -> None:
        """Renames a key in one of the copy's mappings; the order of the keys stays the same."""
        entries = [(meant if one == key else one, value) for one, value in keys.items()]
        keys.clear()
        keys.update(entries)
        written = self._as_written.setdefault(id(keys), {})
        written[meant] = written.pop(key, key)

    def value(self, path: DataPath) -> Any:
        """The value at a path of the copy."""
        data: Any = self.plain
        for step in path:
            data = data[step]
        return data

    def node(self, path: DataPath) -> NodeAtPath:
        """The node of the tree at a path of the copy."""
        data: Any = self.plain
        found = NodeAtPath(self.root, self.root.place, ())
        for step in path:
            node = found.node
            if isinstance(step, int):
                assert isinstance(node, Sequence)
                found = NodeAtPath(node.items[step], found.entry_place, found.inner)
            else:
                assert isinstance(node, Mapping)
                entry = node.entries[self._as_written.get(id(data), {}).get(step, step)]
                through = found.inner + entry.merged
                found = NodeAtPath(entry.value, entry.key.place.reached(through), through)
            data = data[step]
        return found

    def as_written(self, path: DataPath, key: str) -> str:
        """How a key of the copy is written in the file."""
        return self._as_written.get(id(self.value(path)), {}).get(key, key)

    def finding(
        self,
        rule: str,
        path: DataPath,
        place: Place,
        counted: str,
        *,
        wanted: str = "",
        change: str = "",
        subject: str = "",
        edits: Edits = (),
    ) -> Finding:
        """An error at a place; it also names the path in the coach's words."""
        return Finding(
            rule,
            "error",
            place,
            counted,
            wanted=wanted,
            change=change,
            where=self._in_words(path),
            subject=subject,
            edits=edits,
        )

    def _in_words(self, path: DataPath) -> str:
        """A path in the coach's words: ``Lower A, stiff-leg deadlift, reps``."""
        data: Any = self.plain
        named: list[str] = []
        tail: list[str] = []
        for depth, step in enumerate(path):
            data = data[step]
            name = _name(data) if isinstance(data, dict) else ""
            if name:
                named.append(name)
                tail = []
            elif isinstance(step, str):
                tail.append(f"week {step}" if depth and step[:1].isdigit() else step)
            elif tail:
                tail[-1] += f" {step + 1}"
        return ", ".join(named + tail)


def copied(plain: Any) -> Any:
    """A copy of plain data, in which lists and groups of keys that are shared stay shared.

    As `copy.deepcopy` makes it, which would take a quarter of the time of a large file.
    """
    made: dict[int, Any] = {}

    def copy(one: Any) -> Any:
        if not isinstance(one, (dict, list)):
            return one
        known = made.get(id(one))
        if known is None:
            if isinstance(one, dict):
                known = made[id(one)] = {key: copy(value) for key, value in one.items()}
            else:
                known = made[id(one)] = [copy(value) for value in one]
        return known

    return copy(plain)


class NodeAtPath:
    """The node of the tree behind a value of the data.

    ``entry_place`` is the place of the key above it, ``through`` the aliases and merge keys that led to it.
    """

    __slots__ = ("entry_place", "node", "through")

    def __init__(self, node: Node, entry_place: Place, through: tuple[Place, ...]) -> None:
        self.node = node
        self.entry_place = entry_place
        self.through = through

    @property
    def place(self) -> Place:
        """Where the words stand; for an alias that is where they were defined."""
        return (self.node.defined or self.node.place).reached(self.inner)

    @property
    def inner(self) -> tuple[Place, ...]:
        """The aliases and merge keys that lead to what the node holds, the innermost last."""
        return self.through if self.node.defined is None else (*self.through, self.node.place)

    @property
    def words(self) -> str:
        """The text of a single value; empty for anything else."""
        return self.node.text if isinstance(self.node, Scalar) else ""

    @property
    def reported(self) -> bool:
        """Whether reading the text has already reported a fault in this value."""
        if not isinstance(self.node, Scalar):
            return False
        if self.node.style == "*":
            return True
        if self.node.style or not self.node.text:
            return False
        try:
            core_value(self.node.text)
        except OutOfRangeError:
            return True
        return False


def _name(keys: dict[str, Any]) -> str:
    """The name by which a coach knows a mapping; empty where it has none."""
    for key in ("session", "activity", "exercise", "block", "name", "event", "area", "movement"):
        name = keys.get(key)
        if isinstance(name, dict):
            name = next(iter(name.values()), None)
        if isinstance(name, str):
            return name
    return ""
