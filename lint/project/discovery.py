"""Which files a review takes in: those asked for, those in folders, programmes by their athletes."""

from __future__ import annotations

import os

from ..text import repository

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..team.settings import Team
    from .workspace import Workspace

ENDINGS = {
    ".programme.yaml": "programme",
    ".programme.yml": "programme",
    ".athlete.yaml": "athlete",
    ".athlete.yml": "athlete",
    ".exercises.yaml": "exercises",
    ".exercises.yml": "exercises",
}

ENVIRONMENT = "pyvenv.cfg"
"""What lies in a folder of Python packages."""


def kind_of(path: str) -> str:
    """``programme``, ``athlete``, ``exercises``, ``team``, or empty for any other file."""
    name = os.path.basename(path)
    if name == repository.SETTINGS:
        return "team"
    return next((kind for ending, kind in ENDINGS.items() if name.endswith(ending)), "")


def discovered(workspace: Workspace, paths: Iterable[str]) -> list[str]:
    """Every file to review, each once, in the order asked for; folders in the order of their names.

    Programmes that name an athlete file among them come along.
    """
    found: dict[str, str] = {}
    for path in paths:
        is_folder = os.path.isdir(path) and not kind_of(path)
        for one in searched(workspace, path, asked=repository.real(path)) if is_folder else [path]:
            found.setdefault(repository.real(one), one)
    athletes = {real for real, one in found.items() if kind_of(one) == "athlete"}
    for naming in programmes_naming(workspace, athletes, found):
        found.setdefault(repository.real(naming), naming)
    return list(found.values())


def searched(workspace: Workspace, folder: str, asked: str, around: Team | None = None) -> Iterator[str]:
    """Files of ours below a folder, but for folders that hold none, and for what the team leaves out.

    What was ``asked`` for by name is searched even where it is left out. ``around`` are the settings that
    hold in the folder above, unless it is the first.
    """
    try:
        entries = sorted(os.scandir(folder), key=lambda entry: entry.name)
    except OSError:
        yield folder
        return
    names = {entry.name for entry in entries}
    if around is not None and ENVIRONMENT in names:
        return
    team = (
        workspace.team_of(os.path.join(folder, "."))
        if around is None or repository.SETTINGS in names
        else around
    )
    for entry in entries:
        path = entry.path.removeprefix("./")
        if team.left_out and team.leaves_out(repository.real(path)) and not team.leaves_out(asked):
            continue
        if kind_of(path) in ("programme", "athlete", "exercises"):
            yield path
        elif entry.is_dir(follow_symlinks=False) and not _holds_none(entry.name):
            yield from searched(workspace, path, asked, team)


def _holds_none(folder: str) -> bool:
    """Whether a folder is one that programs keep their own things in."""
    return folder.startswith(".") or folder in ("node_modules", "__pycache__")


def programmes_naming(workspace: Workspace, athletes: set[str], known: Iterable[str]) -> Iterator[str]:
    """Programme files of the repository that name one of these athlete files (real paths).

    Files ``known`` already (real paths) are not looked at again. A workspace searches the disk once for each
    such question; texts that are open are looked at every time.
    """
    seen = frozenset(known)
    opened = {path: text for path, text in workspace.overlay.opened().items() if kind_of(path) == "programme"}
    roots = [root for root in dict.fromkeys(map(workspace.root_of, athletes)) if repository.is_marked(root)]
    asked = (frozenset(athletes), seen.union(opened))
    if asked not in workspace.naming:
        workspace.naming[asked] = [path for root in roots for path in _naming(workspace, root, *asked)]
    yield from workspace.naming[asked]
    for path, text in opened.items():
        if (
            path not in seen
            and workspace.root_of(path) in roots
            and any(os.path.basename(one) in text for one in athletes)
        ):
            shown = os.path.relpath(path)
            if athletes & set(workspace.athletes_in(shown)):
                yield shown


def _naming(workspace: Workspace, root: str, athletes: frozenset[str], seen: frozenset[str]) -> Iterator[str]:
    """Programme files below a root that name one of these athletes, but for those seen."""
    names = {os.fsencode(os.path.basename(one)) for one in athletes}
    for path in searched(workspace, os.path.relpath(root), asked=root):
        if kind_of(path) != "programme" or not os.path.isfile(path) or repository.real(path) in seen:
            continue
        with open(path, "rb") as file:
            text = file.read()
        if any(name in text for name in names) and not athletes.isdisjoint(workspace.athletes_in(path)):
            yield path
