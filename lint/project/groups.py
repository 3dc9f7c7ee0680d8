"""Which files are reviewed together: an athlete's file and the programmes that name it."""

from __future__ import annotations

import os

from ..text import files, repository
from .beside import Beside, ends_of_name
from .discovery import is_passed_by, searched
from .mentions import ANY, mentions

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..text.repository import SourceFile
    from .workspace import Workspace


class Group:
    """Files of which none leans on a file of another group, in the order of the review; ``size`` in bytes."""

    __slots__ = ("files", "size")

    def __init__(self) -> None:
        self.files: list[SourceFile] = []
        self.size = 0

    def add(self, file: SourceFile, size: int) -> None:
        """Takes in one more file of so many bytes."""
        self.files.append(file)
        self.size += size


def grouped(workspace: Workspace, found: list[SourceFile]) -> list[Group]:
    """The groups that files make up, in the order of their first files.

    What stands beside them in their repositories is left to the workspace (`Workspace.beside`).
    """
    told = [(file, *_ends(workspace, file)) for file in found]
    sets = _Sets()
    for _, ends, _ in told:
        sets.tie(ends)
    if any(ends for _, ends, _ in told):
        asked = {file.real for file in found}
        wanted = {end for _, ends, _ in told for end in ends}
        for root in dict.fromkeys(file.root for file in found):
            if repository.is_marked(root):
                workspace.beside[root] = _beside(workspace, root, asked, wanted, sets)
    groups: dict[object, Group] = {}
    for file, ends, size in told:
        groups.setdefault(sets.of(ends[0]) if ends else file, Group()).add(file, size)
    return list(groups.values())


def _ends(workspace: Workspace, file: SourceFile) -> tuple[list[str], int]:
    """The ends of athlete files that a file is, or mentions; and its bytes."""
    if file.kind in ("team", "exercises"):
        return [], 0
    ends = [*ends_of_name(file.real), *ends_of_name(file.name)] if file.kind == "athlete" else []
    try:
        data = files.data_of(file)
    except files.UnreadableError:
        return ends, 0
    return (ends or _named_in(workspace, file, mentions(data))), len(data)


def _named_in(workspace: Workspace, file: SourceFile, ends: list[str]) -> list[str]:
    """The ends that a programme mentions; it is read where its letters may be spelt by numbers."""
    if ANY not in ends:
        return ends
    return [end for real in workspace.athletes_in(file) for end in ends_of_name(real)]


def _beside(workspace: Workspace, root: str, asked: set[str], wanted: set[str], sets: _Sets) -> Beside:
    """The programmes below a root that are not asked for; two names of one athlete file are tied.

    ``wanted`` are the ends of the athlete files that count: what mentions none of them may be left out.
    """
    beside = Beside()
    for file, ends in _below(workspace, root, wanted):
        if file.kind == "athlete":
            if os.path.basename(file.name) != os.path.basename(file.real):
                sets.tie([*ends_of_name(file.name), *ends_of_name(file.real)])
                beside.link(file)
        elif file.kind == "programme" and file.real not in asked:
            beside.add(file, _named_in(workspace, file, _mentions(file) if ends is None else ends))
    return beside


def _below(
    workspace: Workspace, root: str, wanted: set[str]
) -> Iterator[tuple[SourceFile, list[str] | None]]:
    """The files of ours below a root, each with what it mentions, None where nobody has looked yet.

    Where git has listed them, only links and what mentions the ``wanted``: no other file is looked for.
    """
    listing = workspace.listing
    if listing is None or listing.root != root:
        for file in searched(workspace, repository.shown(root)):
            yield file, None
        return
    linked = [listing.file(path) for path in listing.links if repository.kind_of(path) == "athlete"]
    wanted = {
        ANY,
        *wanted,
        *(end for one in linked for name in (one.name, one.real) for end in ends_of_name(name)),
    }
    for path, ends in listing.mentioned():
        if path not in listing.links and wanted.isdisjoint(ends):
            continue
        file = listing.file(path)
        if os.path.lexists(file.name) and not is_passed_by(workspace, root, path):
            yield file, ends


def _mentions(file: SourceFile) -> list[str]:
    try:
        return mentions(files.data_of(file))
    except files.UnreadableError:
        return []


class _Sets:
    """Sets of names; those that are tied are in one."""

    __slots__ = ("_above",)

    def __init__(self) -> None:
        self._above: dict[str, str] = {}

    def of(self, name: str) -> str:
        """The name that stands for the set of a name."""
        above = self._above
        above.setdefault(name, name)
        while above[name] != name:
            above[name] = above[above[name]]
            name = above[name]
        return name

    def tie(self, names: Iterable[str]) -> None:
        """Puts names into one set."""
        first = ""
        for name in names:
            own = self.of(name)
            if first:
                self._above[own] = first
            else:
                first = own
