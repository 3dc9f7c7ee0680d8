"""Where a file belongs: the root of its repository, and the settings files above it."""

from __future__ import annotations

import os

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

SETTINGS = "spotline.yaml"


def root_of(folder: str) -> str:
    """The root of the repository that holds a folder: the first of these that exists.

    - the nearest folder, itself or above it, that holds ``.git``;
    - the nearest that holds the team's settings;
    - the working folder, if the folder lies in it;
    - the folder's parent.
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
    """The absolute path with links resolved; only made absolute if it holds a zero byte, as no file can."""
    try:
        return os.path.realpath(path)
    except ValueError:
        return os.path.join(os.path.realpath(os.curdir), path)


def is_marked(root: str) -> bool:
    """Whether a folder holds ``.git`` or the team's settings, the marks of a repository's root."""
    return os.path.exists(os.path.join(root, ".git")) or os.path.isfile(os.path.join(root, SETTINGS))


def is_inside(root: str, path: str) -> bool:
    """Whether a path lies in the folder ``root`` or is that folder. Both have links resolved (see `real`)."""
    return path == root or path.startswith(root.rstrip(os.sep) + os.sep)


def settings_above(folder: str, root: str) -> Iterator[str]:
    """Paths where settings for a folder may be: in the folder first, then in each above, up to the root."""
    above = os.path.realpath(folder)
    while True:
        yield os.path.join(above, SETTINGS)
        if above == root or os.path.dirname(above) == above:
            return
        above = os.path.dirname(above)
