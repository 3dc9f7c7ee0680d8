"""Where a name is defined and where it is used: athlete files, a team's own exercises, anchors, lines."""

from __future__ import annotations

import os
import re
from itertools import islice

from ...body.names import words as words_of
from ...project.discovery import programmes_naming, searched
from ...syntax.tree import Mapping, Scalar, Sequence
from ...text import files, repository
from ...text.places import Text
from ..caret.context_finder import context_at
from ..caret.node_path import BY_WEEK
from ..caret.readable_review import ReadableReview
from ..documents.answers import Location

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ...body.catalogue import Exercise
    from ...syntax.tree import Node, Reading
    from ...text.repository import SourceFile
    from ..caret.node_path import NodePath
    from ..documents.offset_map import Span
    from ..documents.snapshot import Snapshot

MOST_FILES = 2000
"""Files that are searched for the uses of an exercise."""

EXERCISE_KEYS = ("exercise", "swap", "or")
"""Keys whose values name exercises: one, several, or one by week."""


def definition(snapshot: Snapshot, offset: int) -> list[Location]:
    """Where the name at an offset is defined; empty where it is not, or not in a file."""
    anchors = Anchors(snapshot.text)
    found = anchors.at(offset)
    if found is not None:
        name, start, _ = found
        place = anchors.definition(name, start)
        return [] if place is None else [Location(snapshot.path, *place, snapshot.text)]
    path = ReadableReview(snapshot).path_at(offset)
    if path is None:
        return []
    file = _named_file(snapshot, path)
    if file is not None:
        return _start_of_file(snapshot, file)
    exercise = _own_exercise(snapshot, path)
    return [] if exercise is None else _declaration_of(snapshot, exercise)


def references(snapshot: Snapshot, offset: int, with_declaration: bool) -> list[Location]:
    """Where the name at an offset is used, ``with_declaration`` also where it is defined."""
    anchors = Anchors(snapshot.text)
    found = anchors.at(offset)
    if found is not None:
        name, start, _ = found
        places = anchors.uses(name, start, with_declaration)
        return [Location(snapshot.path, *place, snapshot.text) for place in places]
    readable = ReadableReview(snapshot)
    path = readable.path_at(offset)
    if path is None:
        return []
    return _ReferenceSearch(snapshot, readable, with_declaration).references_of(path)


# Anchors


_ANCHOR = re.compile(r"(?<![^\s,\[\]{}])[&*]([^\s,\[\]{}]+)")


class Anchors:
    """The anchors and aliases of a text, which need not be readable, in the order of the text."""

    def __init__(self, text: Text) -> None:
        self._content = text.content

    def at(self, offset: int) -> tuple[str, int, int] | None:
        """Name, start and end of the anchor or alias at an offset; its sign is part of it."""
        line = max(self._content.rfind("\n", 0, offset), self._content.rfind("\r", 0, offset)) + 1
        for found in _ANCHOR.finditer(self._content, line):
            if found.end() >= offset:
                is_there = found.start() <= offset and self._is_anchor(found)
                return (found[1], found.start(), found.end()) if is_there else None
        return None

    def definition(self, name: str, offset: int) -> Span | None:
        """Where the anchor stands that a name means at an offset: the last one up to there."""
        last = None
        for found in self._all(name, "&"):
            if found.start() > offset:
                break
            last = found
        return None if last is None else last.span()

    def uses(self, name: str, offset: int, with_declaration: bool) -> Iterator[Span]:
        """The aliases of the anchor that a name means at an offset: those up to the next such anchor."""
        defined = self.definition(name, offset)
        if defined is None:
            return
        if with_declaration:
            yield defined
        end = next(
            (one.start() for one in self._all(name, "&") if one.start() > defined[0]), len(self._content)
        )
        for found in self._all(name, "*"):
            if defined[0] < found.start() < end:
                yield found.span()

    def _all(self, name: str, sign: str) -> Iterator[re.Match[str]]:
        for found in _ANCHOR.finditer(self._content):
            if found[1] == name and found[0][0] == sign and self._is_anchor(found):
                yield found

    def _is_anchor(self, found: re.Match[str]) -> bool:
        """Whether a match is an anchor or alias, not part of a value or a comment."""
        return context_at(self._content, found.end()).anchor_sign == found[0][0]


# Files


def _named_file(snapshot: Snapshot, path: NodePath) -> SourceFile | None:
    """The file that a value names; None where it names none, or one that is not there."""
    if path.part != "value" or not path.text:
        return None
    kind, key = snapshot.review.kind, path.key
    names_athlete = (
        kind == "programme" and key in ("athlete", "athletes") and path.key_path[0] == path.keys[0]
    )
    names_exercises = kind == "team" and path.keys == ("exercises",)
    if not (names_athlete or names_exercises):
        return None
    workspace = snapshot.workspace
    file = workspace.files.named(os.path.dirname(snapshot.path), path.text)
    is_inside = repository.is_inside(workspace.files.file(snapshot.path).root, file.real)
    is_of_kind = file.kind == ("athlete" if names_athlete else "exercises")
    return file if is_inside and is_of_kind and workspace.overlay.exists(file) else None


def _start_of_file(snapshot: Snapshot, file: SourceFile) -> list[Location]:
    """The start of a file; in an athlete file, the athlete's name."""
    if file.kind != "athlete":
        return [Location(file.name, 0, 0, snapshot.workspace.overlay.read(file).text)]
    read = snapshot.workspace.athlete_at(file)
    if read.athlete is None:
        return [Location(file.name, 0, 0, read.reading.text)]
    place = read.athlete.place
    return [Location(file.name, place.start, place.end, read.reading.text)]


# Exercises


def _named_exercise(snapshot: Snapshot, path: NodePath) -> Exercise | None:
    """The exercise that the text at a path names."""
    known = snapshot.review.exercises
    if path.part == "key":
        return known.exercise(path.key) if path.parent_key in ("best lifts", "our names") else None
    if path.part != "value" or not path.text:
        return None
    is_own_file = snapshot.review.kind == "exercises"
    keys = ("name", "also", "easier", "harder") if is_own_file else EXERCISE_KEYS
    return known.exercise(path.text) if path.key in keys else None


def _own_exercise(snapshot: Snapshot, path: NodePath) -> Exercise | None:
    """The team's own exercise that the text at a path names."""
    exercise = _named_exercise(snapshot, path)
    return exercise if exercise in snapshot.review.team.resources.known.own else None


def _declaration_of(snapshot: Snapshot, exercise: Exercise) -> list[Location]:
    """The name of a team's own exercise in the file that declares it."""
    for file in snapshot.review.team.exercises.values():
        if exercise not in file.exercises:
            continue
        root = file.reading.root
        entry = root.entries.get("exercises") if isinstance(root, Mapping) else None
        for item in entry.value.items if entry is not None and isinstance(entry.value, Sequence) else ():
            name = item.entries.get("name") if isinstance(item, Mapping) else None
            if name is not None and name.value.plain == exercise.name:
                text = file.reading.text
                return [Location(text.name, name.value.start, name.value.end, text)]
    return []


def exercise_nodes(root: Node | None) -> Iterator[Scalar]:
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
                    is_by_week = key in EXERCISE_KEYS and key in BY_WEEK
                    waiting.append((key if is_by_week else name, entry.value))


# References


class _ReferenceSearch:
    """Finds the uses of what stands at one path, each once, those in this file first."""

    def __init__(self, snapshot: Snapshot, readable: ReadableReview, with_declaration: bool) -> None:
        self.snapshot = snapshot
        self.readable = readable
        self.workspace = snapshot.workspace
        self.file = snapshot.workspace.files.file(snapshot.path)
        self.known = snapshot.review.team.resources.known
        self.with_declaration = with_declaration
        self.found: dict[tuple[str, int], Location] = {}

    def references_of(self, path: NodePath) -> list[Location]:
        """All uses of what stands at the path."""
        if self.snapshot.review.kind == "athlete" and path.keys == ("name",):
            self.find_athlete(self.file)
        elif (file := _named_file(self.snapshot, path)) is not None:
            if file.kind == "athlete":
                self.find_athlete(file)
        elif (exercise := _named_exercise(self.snapshot, path)) is not None:
            self.find_exercise(exercise)
        return list(self.found.values())

    def find_athlete(self, file: SourceFile) -> None:
        """Finds where the programmes of the repository name an athlete file."""
        if self.with_declaration:
            for location in _start_of_file(self.snapshot, file):
                self.add(location.text, location.start, location.end)
        naming = programmes_naming(self.workspace, {file.real}, ())
        for programme in dict.fromkeys((*self.this_programme(), *naming)):
            text = self.text_of(programme)
            for start, end in _athlete_values(text.content, os.path.basename(file.name)):
                folder, words = os.path.dirname(programme.name), text.content[start:end]
                if self.workspace.files.named(folder, words).real == file.real:
                    self.add(text, start, end)

    def find_exercise(self, exercise: Exercise) -> None:
        """Finds every line with an exercise, by whichever name.

        A team's own exercise is looked for in all programmes of the repository. Any other is looked for in
        this file and in the other programmes of its athletes.
        """
        is_own = exercise in self.known.own
        if is_own and self.with_declaration:
            for location in _declaration_of(self.snapshot, exercise):
                self.add(location.text, location.start, location.end)
        others = self.programmes_of_repository() if is_own else self.programmes_of_athletes()
        names = [tuple(words_of(name)) for name in (exercise.name, *exercise.aliases)]
        for programme in dict.fromkeys((*self.this_programme(), *others)):
            if programme is not self.file and not self.may_name(programme, names):
                continue
            reading = self.reading_of(programme)
            for node in exercise_nodes(reading.root):
                if self.known.exercise(node.text) is exercise:
                    self.add(reading.text, node.start, node.end)

    def this_programme(self) -> tuple[SourceFile, ...]:
        """This file, if it is a programme."""
        return (self.file,) if self.snapshot.review.kind == "programme" else ()

    def programmes_of_repository(self) -> Iterator[SourceFile]:
        """Programme files of the repository, those open in the editor first."""
        root = self.file.root
        for path in self.workspace.overlay.opened():
            if repository.kind_of(path) == "programme" and repository.is_inside(root, path):
                is_this_file = path == self.file.real
                yield self.file if is_this_file else self.workspace.files.file(repository.shown(path))
        if repository.is_marked(root):
            found = searched(self.workspace, os.path.relpath(root))
            yield from (file for file in islice(found, MOST_FILES) if file.kind == "programme")

    def programmes_of_athletes(self) -> list[SourceFile]:
        """The other programmes of the athletes on this one."""
        ledgers = self.readable.review.ledgers
        names = {one.athlete.place.text.name for one in ledgers if one.athlete is not None}
        written_in = [self.workspace.files.file(name) for name in names]
        athletes = {file.real for file in written_in if file.kind == "athlete"}
        return list(programmes_naming(self.workspace, athletes, (self.file.real,)))

    def may_name(self, file: SourceFile, names: Iterable[tuple[str, ...]]) -> bool:
        """Whether a file has all words of one of some names: a quick test before it is parsed."""
        content = self.text_of(file).content.lower()
        return any(all(_stem(word) in content for word in name_words) for name_words in names)

    def text_of(self, file: SourceFile) -> Text:
        """The text of a file as it stands, which need not be readable; empty where it cannot be opened."""
        if file is self.file:
            return self.snapshot.text
        content = self.workspace.overlay.opened().get(file.real)
        if content is None:
            try:
                content = files.content(file.name)
            except files.UnreadableError:
                content = ""
        return Text(file.name, content.removeprefix("\ufeff"))

    def reading_of(self, file: SourceFile) -> Reading:
        """The tree of a file; for this one, the tree as it could last be read."""
        is_this_file = file is self.file
        return self.readable.reading if is_this_file else self.workspace.overlay.read(file)

    def add(self, text: Text, start: int, end: int) -> None:
        """Adds a use; one in this file only where it still stands in the present text."""
        span: Span | None = (start, end)
        if text is self.readable.reading.text and not self.readable.is_current:
            span, text = self.readable.span_in_document(start, end), self.snapshot.text
        if span is not None:
            real = self.workspace.files.file(text.name).real
            self.found.setdefault((real, span[0]), Location(text.name, *span, text))


def _stem(word: str) -> str:
    """What the singular and the plural of a word share."""
    return word.removesuffix("s").removesuffix("ie").removesuffix("y")


def _athlete_values(content: str, file_name: str) -> Iterator[Span]:
    """Start and end of the values of a programme that may name an athlete file of that name."""
    at = content.find(file_name)
    while at >= 0:
        context = context_at(content, at)
        keys = [step for step in context.key_path if isinstance(step, str)]
        if context.takes_value and keys in (["athlete"], ["athletes"], ["athletes", "athlete"]):
            yield context.start, context.end
        at = content.find(file_name, at + len(file_name))
