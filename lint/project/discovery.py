"""Which files a review takes in: those asked for, those in folders, programmes by their athletes."""

from __future__ import annotations

import os

from ..text import files, repository
from ..text.letters import twins
from ..text.repository import kind_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..team.settings import Team
    from ..text.repository import SourceFile
    from .workspace import Workspace

ENVIRONMENT = "pyvenv.cfg"
"""Lies in a folder of Python packages."""


def discovered(workspace: Workspace, paths: Iterable[str]) -> list[SourceFile]:
    """Every file to review, each once, in the order asked for; folders in the order of their names.

    Programmes that name an athlete file among them come along.
    """
    found: dict[str, SourceFile] = {}
    for path in paths:
        is_folder = os.path.isdir(path) and not kind_of(path)
        for one in searched(workspace, path) if is_folder else [workspace.files.file(path)]:
            found.setdefault(one.real, one)
    athletes = {real for real, one in found.items() if one.kind == "athlete"}
    for one in programmes_naming(workspace, athletes, found):
        found.setdefault(one.real, one)
    return list(found.values())


def searched(workspace: Workspace, folder: str) -> Iterator[SourceFile]:
    """Files of ours in a folder and those below, except what the team leaves out.

    A folder that is asked for by name is searched even where the team leaves it out.
    """
    real = workspace.files.folder(folder)
    return _files_below(workspace, folder, real, real)


def _files_below(
    workspace: Workspace, folder: str, real: str, asked: str, above: Team | None = None
) -> Iterator[SourceFile]:
    """Files in and below a folder; ``above`` are the settings around it, unless the search begins here."""
    try:
        entries = sorted(os.scandir(folder), key=lambda entry: entry.name)
    except OSError:
        yield workspace.files.file(folder)
        return
    names = {entry.name for entry in entries}
    workspace.twins.update((os.path.join(real, one), other) for one, other in twins(names).items())
    if above is not None and ENVIRONMENT in names:
        return
    team = workspace.team_in(real) if above is None or repository.SETTINGS in names else above
    for entry in entries:
        if kind_of(entry.name) in ("programme", "athlete", "exercises"):
            file = workspace.files.entry(entry, real)
            if not _left_out(team, file.real, asked):
                yield file
        elif entry.is_dir(follow_symlinks=False) and not _is_private(entry.name):
            inner = os.path.join(real, entry.name)
            if not _left_out(team, inner, asked):
                yield from _files_below(workspace, entry.path.removeprefix("./"), inner, asked, team)


def _left_out(team: Team, real: str, asked: str) -> bool:
    """Whether the team leaves a path out, but not the folder that was asked for by name."""
    return bool(team.left_out) and team.leaves_out(real) and not team.leaves_out(asked)


def is_passed_by(workspace: Workspace, root: str, path: str) -> bool:
    """Whether a search from a root would pass a path by: the team leaves it out, or a folder above."""
    *folders, name = path.split("/")
    above = root
    for folder in folders:
        inner = os.path.join(above, folder)
        if _is_private(folder) or os.path.exists(os.path.join(inner, ENVIRONMENT)):
            return True
        if workspace.team_in(above).leaves_out(inner):
            return True
        above = inner
    return workspace.team_in(above).leaves_out(os.path.join(above, name))


def _is_private(folder: str) -> bool:
    """Whether a folder is one in which programs keep things of their own."""
    return folder.startswith(".") or folder in ("node_modules", "__pycache__")


def programmes_naming(workspace: Workspace, athletes: set[str], known: Iterable[str]) -> Iterator[SourceFile]:
    """Programme files of the repository that name one of these athlete files (real paths).

    Files ``known`` already (real paths) are not looked at again. A workspace searches the disk once for each
    such question; texts that are open are looked at every time.
    """
    if not athletes:
        return
    seen = frozenset(known)
    opened = {path: text for path, text in workspace.overlay.opened().items() if kind_of(path) == "programme"}
    roots = [root for root in _roots(workspace, athletes) if repository.is_marked(root)]
    question = (frozenset(athletes), seen.union(opened))
    if question not in workspace.searches:
        workspace.searches[question] = [one for root in roots for one in _naming(workspace, root, *question)]
    yield from workspace.searches[question]
    for path, text in opened.items():
        if (
            path not in seen
            and workspace.files.root_of(os.path.dirname(path)) in roots
            and any(os.path.basename(one) in text for one in athletes)
        ):
            programme = workspace.files.file(repository.shown(path))
            if athletes.intersection(workspace.athletes_in(programme)):
                yield programme


def _roots(workspace: Workspace, athletes: Iterable[str]) -> Iterable[str]:
    """The roots of the repositories that hold files (real paths), each once."""
    return dict.fromkeys(workspace.files.root_of(os.path.dirname(one)) for one in sorted(athletes))


def _naming(
    workspace: Workspace, root: str, athletes: frozenset[str], seen: frozenset[str]
) -> Iterator[SourceFile]:
    """Programme files below a root that name one of these athletes, but for those seen.

    One that cannot be read may name them, so it comes along: the review says what is the matter with it.
    """
    for file in _mentioning(workspace, root, athletes):
        if file.real in seen or file.kind != "programme":
            continue
        if not athletes.isdisjoint(workspace.athletes_in(file)) or workspace.overlay.read(file).root is None:
            yield file


def _mentioning(workspace: Workspace, root: str, athletes: frozenset[str]) -> Iterator[SourceFile]:
    """Files below a root that may name one of these athletes: those in whose text the name occurs."""
    if root in workspace.beside:
        yield from workspace.beside[root].mentioning(athletes)
        return
    if workspace.listing is not None and workspace.listing.root == root:
        for path in workspace.listing.programmes_mentioning(athletes):
            file = workspace.listing.file(path)
            if os.path.lexists(file.name) and not is_passed_by(workspace, root, path):
                yield file
        return
    found = list(searched(workspace, repository.shown(root)))
    names = {os.path.basename(one) for one in athletes}
    names.update(os.path.basename(file.name) for file in found if file.real in athletes)
    asked = {os.fsencode(name) for name in names} | {b"\\"}
    for file in found:
        if file.kind == "programme":
            try:
                text = files.data_of(file)
            except files.UnreadableError:
                yield file
            else:
                if any(name in text for name in asked):
                    yield file
