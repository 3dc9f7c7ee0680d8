"""Where a file belongs: its repository, the team's settings above it, and the paths that it may name."""

from __future__ import annotations

import os

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

SETTINGS = "spotline.yaml"


def root_of(folder: str) -> str:
    """The root of the repository that holds a folder.

    The nearest folder above that git or the team's settings mark; without either the working folder where
    it lies above, else the folder's parent.
    """
    folder = os.path.realpath(folder)
    settings = ""
    above = folder
    while True:
        if os.path.exists(os.path.join(above, ".git")):
            return above
        if not settings and os.path.isfile(os.path.join(above, SETTINGS)):
            settings = above
        parent = os.path.dirname(above)
        if parent == above:
            break
        above = parent
    if settings:
        return settings
    here = os.path.realpath(os.curdir)
    return here if is_inside(here, folder) else os.path.dirname(folder)


def real(path: str) -> str:
    """The path without links; as it stands where no file can be called so (a zero byte in its name)."""
    try:
        return os.path.realpath(path)
    except ValueError:
        return os.path.join(os.path.realpath(os.curdir), path)


def is_marked(root: str) -> bool:
    """Whether git or the team's settings mark a folder as the root of a repository."""
    return os.path.exists(os.path.join(root, ".git")) or os.path.isfile(os.path.join(root, SETTINGS))


def is_inside(root: str, path: str) -> bool:
    """Whether a real path lies in a folder, or is the folder itself."""
    return path == root or path.startswith(root.rstrip(os.sep) + os.sep)


def settings_above(folder: str, root: str) -> Iterator[str]:
    """Where settings for a folder may stand, the nearest first, up to the root of the repository."""
    above = os.path.realpath(folder)
    while True:
        yield os.path.join(above, SETTINGS)
        if above == root or os.path.dirname(above) == above:
            return
        above = os.path.dirname(above)
