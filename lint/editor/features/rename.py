"""Renames exercises and anchors within a file, and marks where the one at the caret stands in it."""

from __future__ import annotations

import re

from ...body.names import fold
from ...findings.finding import Edit
from ...syntax.tree import Mapping
from ..caret.readable_review import ReadableReview
from ..caret.yaml_words import as_yaml
from .links import Anchors, exercise_nodes

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...body.known import Known
    from ...syntax.tree import KeyValue
    from ..documents.offset_map import Span
    from ..documents.snapshot import Snapshot

OUR_NAMES = "our names"

SAID_BESIDE = ("implement", "qualifiers", "tempo", "lowering", "pause", "hold")
"""What a name may say beside the exercise that it means."""

SAID_BESIDE = ("implement", "qualifiers", "tempo", "lowering", "pause", "hold")
"""What a name may say beside the exercise that it means."""

_ANCHOR_NAME = re.compile(r"[^\s,\[\]{}]+")


class CannotRenameError(ValueError):
    """Why something cannot be renamed, in a sentence."""


def highlights(snapshot: Snapshot, offset: int) -> list[Span]:
    """Where the exercise or anchor at an offset stands in this file, by whichever name; else empty."""
    return [(start, end) for start, end, _ in _NameHere.at(snapshot, offset).alike]


def renamable(snapshot: Snapshot, offset: int) -> tuple[int, int, str] | None:
    """Start and end of the name at an offset that can be renamed, and the name; None where there is none."""
    name = _NameHere.at(snapshot, offset)
    return (*name.here, name.words) if name.here is not None else None


def renamed(snapshot: Snapshot, offset: int, new: str) -> list[Edit]:
    """Edits that give the exercise or anchor at an offset another name wherever this file calls it so.

    A name that nobody knows is told in ``our names`` at the top of the programme, with what it means: all
    sets count as before. Raises CannotRenameError.
    """
    name = _NameHere.at(snapshot, offset)
    words = " ".join(new.split())
    if name.here is None:
        raise CannotRenameError("Put the caret on the name of an exercise or of an anchor.")
    if not words:
        raise CannotRenameError("A name cannot be empty.")
    if name.is_anchor:
        if not _ANCHOR_NAME.fullmatch(words):
            raise CannotRenameError(f"An anchor's name holds no blanks or brackets: {words}.")
        return [Edit(snapshot.text.place(start, end), words, "") for start, end, _ in name.alike]
    written = as_yaml(words, "", in_flow=True)
    edits = [Edit(snapshot.text.place(start, end), written, "") for start, end, same in name.alike if same]
    known = snapshot.review.exercises
    is_told = name.is_given or known.reading(words) is not None or known.reading(name.words) is None
    return edits if is_told else [*edits, _given(snapshot, written, name.words)]


class _NameHere:
    """The name at an offset.

    ``here`` is its place, None where nothing can be renamed; ``alike`` are the places of what means the same:
    start, end, and whether it is called the same way.
    """

    __slots__ = ("alike", "here", "is_anchor", "is_given", "words")

    def __init__(self) -> None:
        self.here: Span | None = None
        self.words = ""
        self.alike: list[tuple[int, int, bool]] = []
        self.is_anchor = False
        self.is_given = False

    @classmethod
    def at(cls, snapshot: Snapshot, offset: int) -> _NameHere:
        """What stands at an offset."""
        name = cls()
        anchors = Anchors(snapshot.text)
        found = anchors.at(offset)
        if found is not None:
            name._take_anchor(anchors, *found)
            return name
        readable = ReadableReview(snapshot)
        root = readable.reading.root
        if readable.is_current and snapshot.review.kind == "programme" and isinstance(root, Mapping):
            name._take_exercise(root, snapshot.review.exercises, offset)
        return name

    def _take_anchor(self, anchors: Anchors, words: str, start: int, end: int) -> None:
        self.is_anchor, self.words, self.here = True, words, (start + 1, end)
        if anchors.definition(words, start) is None:
            self.here = None
        self.alike = [(first + 1, last, True) for first, last in anchors.uses(words, start, True)]

    def _take_exercise(self, root: Mapping, known: Known, offset: int) -> None:
        given = _entries(root.entries.get(OUR_NAMES))
        nodes = [entry.key for entry in given.values()]
        nodes += exercise_nodes(root)
        here = next((node for node in nodes if node.start <= offset <= node.end and node.text), None)
        if here is None:
            return
        self.here, self.words = (here.start, here.end), here.text
        given_names = {fold(name) for name in given}
        self.is_given = fold(here.text) in given_names
        mine = known.reading(here.text)
        for node in nodes:
            other = known.reading(node.text)
            is_same_name = fold(node.text) == fold(here.text)
            if is_same_name or (mine and other and mine.exercise is other.exercise):
                is_read_alike = mine and other and _says(mine) == _says(other)
                is_given_name = self.is_given or fold(node.text) in given_names
                is_called_so = is_same_name or bool(is_read_alike and not is_given_name)
                self.alike.append((node.start, node.end, is_called_so))


def _says(reading: object) -> list[object]:
    """All that a name says beside the exercise that it means: no name stands in for one that says more."""
    return [getattr(reading, part) for part in SAID_BESIDE]


def _entries(entry: KeyValue | None) -> dict[str, KeyValue]:
    value = entry.value if entry is not None else None
    return value.entries if isinstance(value, Mapping) and value.defined is None else {}


def _given(snapshot: Snapshot, name: str, meaning: str) -> Edit:
    """The edit that tells in ``our names`` what a name means."""
    text, content = snapshot.text, snapshot.text.content
    assert snapshot.review.reading is not None
    root = snapshot.review.reading.root
    assert isinstance(root, Mapping)
    pair = f"{name}: {as_yaml(meaning, '', in_flow=True)}"
    line_end = "\r\n" if "\r\n" in content else "\n"
    entries = [*_entries(root.entries.get(OUR_NAMES)).values()]
    if entries:
        last = entries[-1]
        mapping = root.entries[OUR_NAMES].value
        if content[mapping.start : mapping.start + 1] == "{":
            return Edit(text.place(last.value.end, last.value.end), f", {pair}", "")
        indent = " " * (text.position(last.key.start)[1] - 1)
        return _new_line(snapshot, last.value.end, f"{indent}{pair}", line_end)
    if OUR_NAMES in root.entries or content[root.start : root.start + 1] == "{":
        raise CannotRenameError(f"Nobody knows {name}: say under `our names` what it means, then write it.")
    first = next(iter(root.entries.values()))
    return _new_line(snapshot, first.value.end, f"{OUR_NAMES}: {{{pair}}}", line_end)


def _new_line(snapshot: Snapshot, offset: int, words: str, line_end: str) -> Edit:
    """The edit that puts a line below the one that an offset lies on."""
    content = snapshot.text.content
    found = re.compile(r"[\r\n]").search(content, offset)
    end = found.start() if found else len(content)
    return Edit(snapshot.text.place(end, end), f"{line_end}{words}", "")
