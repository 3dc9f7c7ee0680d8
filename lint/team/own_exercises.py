"""Exercises of a team's own: a file of them -> exercises whose muscles, credit and lengths are derived."""

from __future__ import annotations

import os

from ..body import catalogue
from ..body.catalogue import Exercise
from ..body.exercise_fields import faults, fields
from ..body.names import fold
from ..findings.finding import Edit, Finding, Related
from ..model.check import checked
from ..syntax.tree import Mapping, Sequence
from ..text.letters import in_other_case

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..syntax.tree import Node, Reading
    from ..text.places import Place
    from ..text.repository import SourceFile


class ExercisesFile:
    """A file of a team's own exercises: those that can be used, and what is wrong with the others."""

    __slots__ = ("_names", "exercises", "file", "findings", "reading")

    def __init__(self, file: SourceFile, reading: Reading) -> None:
        self.file = file
        self.reading = reading
        self.findings = checked(self.reading, "exercises")
        self.exercises: list[Exercise] = []
        self._names: dict[str, Place] = {}
        wrong = {(finding.place.start, finding.place.end) for finding in self.findings}
        for item in _items(self.reading):
            broken = any(item.start <= start and end <= item.end for start, end in wrong)
            if not broken and self._sound(item):
                self.exercises.append(Exercise(fields(item.plain, catalogue.anatomy())))

    @property
    def broken(self) -> bool:
        """Whether an exercise of it cannot be used."""
        return any(finding.severity == "error" for finding in self.findings)

    def _sound(self, item: Mapping) -> bool:
        """Whether an exercise can be used; says what stands against it."""
        before = len(self.findings)
        for words, keys in faults(item.plain, catalogue.anatomy()):
            self._say("exercise-impossible", item, _at(item, keys), f"{words[0].upper()}{words[1:]}.")
        for name, node in _names(item):
            first = self._names.setdefault(fold(name), node.place)
            if first != node.place:
                self._say("name-twice", item, node, f"`{name}` stands in this file already.", first)
            elif (known := catalogue.exercise(name)) is not None:
                self._say("name-taken", item, node, f"`{name}` is {known.name} of the catalogue already.")
        return len(self.findings) == before

    def _say(self, rule: str, item: Mapping, at: Node, counted: str, first: Place | None = None) -> None:
        self.findings.append(
            Finding(
                rule,
                "error",
                at.place,
                counted,
                change="Until it is mended, this exercise is not known.",
                where=str(item.plain.get("name", "")),
                related=(Related(first, "here"),) if first else (),
            )
        )


def _items(reading: Reading) -> list[Mapping]:
    root = reading.root
    entry = root.entries.get("exercises") if isinstance(root, Mapping) else None
    if entry is None or not isinstance(entry.value, Sequence):
        return []
    return [item for item in entry.value.items if isinstance(item, Mapping)]


def _names(item: Mapping) -> list[tuple[str, Node]]:
    """The name and the aliases of an entry, with their places."""
    found = [(str(item.plain["name"]), item.entries["name"].value)]
    also = item.entries.get("also")
    if also is not None and isinstance(also.value, Sequence):
        found += [(str(node.plain), node) for node in also.value.items]
    return found


def _at(item: Mapping, keys: tuple[str | int, ...]) -> Node:
    """The node that keys lead to, as far as they lead."""
    node: Node = item
    for key in keys:
        if isinstance(node, Mapping) and isinstance(key, str) and key in node.entries:
            node = node.entries[key].value
        elif isinstance(node, Sequence) and isinstance(key, int) and key < len(node.items):
            node = node.items[key]
    return node


def written_in_other_case(folder: str, node: Node) -> Iterator[Finding]:
    """A finding where settings in a folder (a real path) name a file by other letters than it has.

    Such a file is found here, on a system that ignores case, and on no other.
    """
    words = str(node.plain)
    true = in_other_case(folder, os.path.normpath(os.path.join(folder, *words.split("/"))))
    if true:
        name = os.path.relpath(true, folder).replace(os.sep, "/")
        yield Finding(
            "exercises-in-other-letters",
            "warning",
            node.place,
            f"The file is called {name}: on Linux, where commits are checked, {words} is not there.",
            change=f"Write {name}.",
            where="team settings",
            edits=(Edit(node.place, name, f"write {name}", certain=True),),
        )
