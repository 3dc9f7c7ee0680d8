"""Where a name leads, and where it is used: athletes' files, a team's own exercises, anchors, lines."""

from __future__ import annotations

import os
import re
from itertools import islice

from ...body.names import words as words_of
from ...project.discovery import programmes_naming, searched
from ...syntax.tree import Mapping, Scalar, Sequence
from ...text import files, repository
from ...text.places import Text
from ..caret.context import context
from ..caret.tree_path import BY_WEEK, MappedReading
from ..documents.answers import Target

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ...body.catalogue import Exercise
    from ...syntax.tree import Node, Reading
    from ...text.repository import SourceFile
    from ..caret.tree_path import TreePath
    from ..documents.view import View

MOST_FILES = 2000
"""Files that are looked through for the uses of an exercise."""

EXERCISE_KEYS = ("exercise", "swap", "or")
"""Keys whose values name exercises, one, several or by week."""


def definition(view: View, offset: int) -> list[Target]:
    """Where the words at an offset are defined; empty where they are not, or not in a file."""
    anchors = _Anchors(view.text)
    found = anchors.at(offset)
    if found is not None:
        name, start, _ = found
        place = anchors.defined(name, start)
        return [] if place is None else [Target(view.path, *place, view.text)]
    at_path = MappedReading(view).at(offset)
    if at_path is None:
        return []
    file = _file_named(view, at_path)
    if file is not None:
        return _top_of(view, file)
    exercise = _own_exercise(view, at_path)
    return [] if exercise is None else _entry_of(view, exercise)


def references(view: View, offset: int, declaration: bool) -> list[Target]:
    """Where the words at an offset are used, with ``declaration`` also where they are defined."""
    anchors = _Anchors(view.text)
    found = anchors.at(offset)
    if found is not None:
        name, start, _ = found
        return [Target(view.path, *place, view.text) for place in anchors.uses(name, start, declaration)]
    mapped = MappedReading(view)
    at_path = mapped.at(offset)
    if at_path is None:
        return []
    return _Uses(view, mapped, declaration).of(at_path)


# Anchors


_ANCHOR = re.compile(r"(?<![^\s,\[\]{}])[&*]([^\s,\[\]{}]+)")


class _Anchors:
    """Anchors and aliases of a text, which need not be readable: place by place, in order."""

    def __init__(self, text: Text) -> None:
        self._content = text.content

    def at(self, offset: int) -> tuple[str, int, int] | None:
        """Name, start and end of the anchor or alias at an offset; the sign before the name is part of it."""
        line = max(self._content.rfind("\n", 0, offset), self._content.rfind("\r", 0, offset)) + 1
        for found in _ANCHOR.finditer(self._content, line):
            if found.end() >= offset:
                holds = found.start() <= offset and self._is_one(found)
                return (found[1], found.start(), found.end()) if holds else None
        return None

    def defined(self, name: str, at: int) -> tuple[int, int] | None:
        """Where the anchor stands that a name means at an offset: the last one up to there."""
        last = None
        for found in self._all(name, "&"):
            if found.start() > at:
                break
            last = found
        return None if last is None else last.span()

    def uses(self, name: str, at: int, declaration: bool) -> Iterator[tuple[int, int]]:
        """The aliases of the anchor that a name means at an offset: those up to the next of that name."""
        there = self.defined(name, at)
        if there is None:
            return
        if declaration:
            yield there
        after = next(
            (one.start() for one in self._all(name, "&") if one.start() > there[0]), len(self._content)
        )
        for found in self._all(name, "*"):
            if there[0] < found.start() < after:
                yield found.span()

    def _all(self, name: str, sign: str) -> Iterator[re.Match[str]]:
        for found in _ANCHOR.finditer(self._content):
            if found[1] == name and found[0][0] == sign and self._is_one(found):
                yield found

    def _is_one(self, found: re.Match[str]) -> bool:
        """Whether it is no part of a text or comment."""
        return context(self._content, found.end()).sign == found[0][0]


# Files


def _file_named(view: View, at_path: TreePath) -> SourceFile | None:
    """The file that a value names, None where it names none that is there."""
    if at_path.part != "value" or not at_path.words:
        return None
    kind, name = view.review.kind, at_path.name
    athlete = kind == "programme" and name in ("athlete", "athletes") and at_path.keys[0] == at_path.path[0]
    exercises = kind == "team" and at_path.path == ("exercises",)
    if not (athlete or exercises):
        return None
    files = view.workspace.files
    file = files.named(os.path.dirname(view.path), at_path.words)
    inside = repository.is_inside(files.file(view.path).root, file.real)
    known = file.kind == ("athlete" if athlete else "exercises")
    return file if inside and known and view.workspace.overlay.exists(file) else None


def _top_of(view: View, file: SourceFile) -> list[Target]:
    """A file, at the name of its athlete where it is one's."""
    if file.kind != "athlete":
        return [Target(file.name, 0, 0, view.workspace.overlay.read(file).text)]
    read = view.workspace.athlete_at(file)
    if read.athlete is None:
        return [Target(file.name, 0, 0, read.reading.text)]
    place = read.athlete.place
    return [Target(file.name, place.start, place.end, read.reading.text)]


# Exercises


def _exercise_named(view: View, at_path: TreePath) -> Exercise | None:
    """The exercise that the words at a spot name."""
    known = view.review.team.resources.known
    if at_path.part == "key":
        return known.exercise(at_path.name) if at_path.owner == "best lifts" else None
    if at_path.part != "value" or not at_path.words:
        return None
    names = ("name", "also", "easier", "harder") if view.review.kind == "exercises" else EXERCISE_KEYS
    return known.exercise(at_path.words) if at_path.name in names else None


def _own_exercise(view: View, at_path: TreePath) -> Exercise | None:
    exercise = _exercise_named(view, at_path)
    return exercise if exercise in view.review.team.resources.known.own else None


def _entry_of(view: View, exercise: Exercise) -> list[Target]:
    """The name of a team's own exercise in the file that declares it."""
    for file in view.review.team.exercises.values():
        if exercise not in file.exercises:
            continue
        root = file.reading.root
        entry = root.entries.get("exercises") if isinstance(root, Mapping) else None
        for item in entry.value.items if entry is not None and isinstance(entry.value, Sequence) else ():
            name = item.entries.get("name") if isinstance(item, Mapping) else None
            if name is not None and name.value.plain == exercise.name:
                text = file.reading.text
                return [Target(text.name, name.value.start, name.value.end, text)]
    return []


def exercises_in(root: Node | None) -> Iterator[Scalar]:
    """Every place of a programme that names an exercise, in order; aliases are not followed."""
    waiting: list[tuple[str, Node]] = [("", root)] if root is not None else []
    while waiting:
        key, node = waiting.pop()
        if node.defined is not None:
            continue
        if isinstance(node, Scalar):
            if key in EXERCISE_KEYS and node.text:
                yield node
        elif isinstance(node, Sequence):
            waiting.extend((key, item) for item in reversed(node.items))
        elif isinstance(node, Mapping):
            for name, entry in reversed(node.entries.items()):
                if not entry.merged:
                    by_week = key in EXERCISE_KEYS and key in BY_WEEK
                    waiting.append((key if by_week else name, entry.value))


# Uses


class _Uses:
    """Gathers the uses of what stands at one spot, each once, this file's first."""

    def __init__(self, view: View, mapped: MappedReading, declaration: bool) -> None:
        self.view = view
        self.mapped = mapped
        self.workspace = view.workspace
        self.file = view.workspace.files.file(view.path)
        self.declaration = declaration
        self.found: dict[tuple[str, int], Target] = {}

    def of(self, at_path: TreePath) -> list[Target]:
        """All that uses it."""
        if self.view.review.kind == "athlete" and at_path.path == ("name",):
            self.of_athlete(self.file)
        elif (file := _file_named(self.view, at_path)) is not None:
            if file.kind == "athlete":
                self.of_athlete(file)
        elif (exercise := _exercise_named(self.view, at_path)) is not None:
            self.of_exercise(exercise)
        return list(self.found.values())

    def of_athlete(self, file: SourceFile) -> None:
        """Every programme of the repository that names an athlete's file, at the place where it does."""
        if self.declaration:
            for target in _top_of(self.view, file):
                self.take(target.text, target.start, target.end)
        naming = programmes_naming(self.workspace, {file.real}, ())
        for programme in dict.fromkeys((*self.this("programme"), *naming)):
            text = self.text(programme)
            for start, end in _athletes_named(text.content, os.path.basename(file.name)):
                folder, words = os.path.dirname(programme.name), text.content[start:end]
                if self.workspace.files.named(folder, words).real == file.real:
                    self.take(text, start, end)

    def of_exercise(self, exercise: Exercise) -> None:
        """Every line with an exercise, whatever it is called there.

        A team's own is looked for in all programmes of the repository, another in this file and in the other
        programmes of its athletes.
        """
        own = exercise in self.view.review.team.resources.known.own
        if own and self.declaration:
            for target in _entry_of(self.view, exercise):
                self.take(target.text, target.start, target.end)
        others = self.programmes() if own else self.other_programmes()
        names = [tuple(words_of(name)) for name in (exercise.name, *exercise.aliases)]
        for programme in dict.fromkeys((*self.this("programme"), *others)):
            if programme is not self.file and not self.may_name(programme, names):
                continue
            reading = self.read(programme)
            for node in exercises_in(reading.root):
                if self.view.review.team.resources.known.exercise(node.text) is exercise:
                    self.take(reading.text, node.start, node.end)

    def this(self, kind: str) -> tuple[SourceFile, ...]:
        """This file, if it is of a kind."""
        return (self.file,) if self.view.review.kind == kind else ()

    def programmes(self) -> Iterator[SourceFile]:
        """Programme files of the repository, those open in the editor first."""
        root = self.file.root
        for path in self.workspace.overlay.opened():
            if repository.kind_of(path) == "programme" and repository.is_inside(root, path):
                yield self.shown(path)
        if repository.is_marked(root):
            found = searched(self.workspace, os.path.relpath(root))
            yield from (file for file in islice(found, MOST_FILES) if file.kind == "programme")

    def other_programmes(self) -> list[SourceFile]:
        """The other programmes of the athletes on this one."""
        names = {one.athlete.place.text.name for one in self.mapped.review.ledgers if one.athlete is not None}
        written_in = [self.workspace.files.file(name) for name in names]
        own = {file.real for file in written_in if file.kind == "athlete"}
        return list(programmes_naming(self.workspace, own, (self.file.real,)))

    def shown(self, path: str) -> SourceFile:
        """The file at a real path as this document's is shown."""
        return self.file if path == self.file.real else self.workspace.files.file(repository.shown(path))

    def may_name(self, file: SourceFile, names: Iterable[tuple[str, ...]]) -> bool:
        """Whether all words of one of some names stand in a file: a quick look before it is read."""
        text = self.text(file).content.lower()
        return any(all(_stem(word) in text for word in words) for words in names)

    def text(self, file: SourceFile) -> Text:
        """The text of a file as it stands, which need not be readable; empty where it cannot be opened."""
        if file is self.file:
            return self.view.text
        content = self.workspace.overlay.opened().get(file.real)
        if content is None:
            try:
                content = files.content(file.name)
            except files.UnreadableError:
                content = ""
        return Text(file.name, content.removeprefix("\ufeff"))

    def read(self, file: SourceFile) -> Reading:
        """The tree of a file, of this one as it could last be read."""
        return self.mapped.reading if file is self.file else self.workspace.overlay.read(file)

    def take(self, text: Text, start: int, end: int) -> None:
        """Takes in a place; one of this file where it stands in its present text."""
        stretch: tuple[int, int] | None = (start, end)
        if text is self.mapped.reading.text and not self.mapped.current:
            stretch, text = self.mapped.stretch(start, end), self.view.text
        if stretch is not None:
            real = self.workspace.files.file(text.name).real
            self.found.setdefault((real, stretch[0]), Target(text.name, *stretch, text))


def _stem(word: str) -> str:
    """What the singular and the plural of a word share."""
    return word.removesuffix("s").removesuffix("ie").removesuffix("y")


def _athletes_named(content: str, name: str) -> Iterator[tuple[int, int]]:
    """Start and end of the values of a programme that name athletes' files called so."""
    at = content.find(name)
    while at >= 0:
        here = context(content, at)
        steps = [step for step in here.chain if isinstance(step, str)]
        if here.value and steps in (["athlete"], ["athletes"], ["athletes", "athlete"]):
            yield here.start, here.end
        at = content.find(name, at + len(name))
