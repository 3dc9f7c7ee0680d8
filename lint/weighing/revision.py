"""An earlier version of a repository, as git holds it: read by git's own command, the checkout untouched."""

from __future__ import annotations

import os
from contextlib import suppress

from ..project.git import LINK
from ..team.known_findings import NAME as KNOWN_FINDINGS
from ..text.files import LONGEST_FILE
from ..text.repository import is_inside

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..project.git import Repository

ENDINGS = (".yaml", ".yml")
"""Ends of the names of files that a review may read."""


def changed_since(repository: Repository, commit: str) -> list[str]:
    """Paths from the root of files that differ from a commit, and of those that git does not know yet.

    Raises `GitError`.
    """
    changes = repository.changes(commit)
    paths = {*changes.there, *changes.gone, *changes.unknown}
    return sorted(one for one in paths if one.endswith(ENDINGS) or is_record(one))


def write_at(repository: Repository, commit: str, folder: str) -> None:
    """Writes the files of a commit that a review may read into an empty folder, as a root.

    Raises `GitError`.
    """
    os.mkdir(os.path.join(folder, ".git"))
    wanted = [
        (mode, identity, path)
        for mode, identity, size, path in repository.files_at(commit)
        if (path.endswith(ENDINGS) or is_record(path)) and size <= LONGEST_FILE and _is_plain(path)
    ]
    contents = repository.blobs([identity for _, identity, _ in wanted])
    links = []
    for (mode, _, path), content in zip(wanted, contents, strict=True):
        if mode == LINK:
            links.append((path, content))
        else:
            _write(folder, path, content)
    for path, content in links:  # once there are links, nothing is written through them
        _link(folder, path, os.fsdecode(content))


def is_record(path: str) -> bool:
    """Whether a path is that of the record of known findings."""
    return os.path.basename(path) == KNOWN_FINDINGS


def _is_plain(path: str) -> bool:
    """Whether a path stays in the folder that it starts from, by the rules of this system and of git."""
    parts = path.split("/")
    odd = any(os.path.isabs(part) or os.path.dirname(part) or os.path.splitdrive(part)[0] for part in parts)
    return not odd and not {"..", ".", ".git", ""}.intersection(parts)


def _write(folder: str, path: str, content: bytes) -> None:
    to = os.path.join(folder, *path.split("/"))
    os.makedirs(os.path.dirname(to), exist_ok=True)
    with (
        suppress(FileExistsError),
        open(to, "xb") as file,
    ):  # two names may be one file, where case is ignored
        file.write(content)


def _link(folder: str, path: str, target: str) -> None:
    to = os.path.join(folder, *path.split("/"))
    above = os.path.dirname(to)
    inside = os.path.normpath(os.path.join(os.path.dirname(path), target))
    with suppress(OSError):  # where an account may make no links, the file is as one that is not there
        os.makedirs(above, exist_ok=True)
        stays = is_inside(os.path.realpath(folder), os.path.realpath(above))
        if stays and not os.path.isabs(target) and _is_plain(inside.replace(os.sep, "/")):
            os.symlink(target, to)
