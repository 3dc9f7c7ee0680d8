"""Names of files that differ in the case of their letters alone.

Windows and macOS take such names for one file, Linux and git for two. So what a coach writes on one system
may lead nowhere on another, and of two files a checkout may keep one.
"""

from __future__ import annotations

import os
import sys

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterable


def ignores_case() -> bool:
    """Whether this system takes names that differ in case alone for one file, as Windows and macOS do."""
    return os.name == "nt" or sys.platform == "darwin"


def in_other_case(root: str, path: str, opened: Collection[str] = ()) -> str:
    """The one path below a root that differs from a path there in case alone, by the names in the folders.

    Empty where there is none, where there are several, or where the path itself is there. ``opened`` are
    paths of texts that need not be on the disk. All are real paths.
    """
    found = [root]
    for part in os.path.relpath(path, root).split(os.sep):
        found = [
            os.path.join(above, name)
            for above in found
            for name in _names(above, opened)
            if name.casefold() == part.casefold()
        ]
    if len(found) != 1 or found[0] == path:
        return ""
    return found[0] if found[0] in opened or os.path.isfile(found[0]) else ""


def twins(names: Collection[str]) -> dict[str, str]:
    """Each name among those of a folder that differs from another in case alone, and that other."""
    if len({name.casefold() for name in names}) == len(names):
        return {}
    by_letters: dict[str, list[str]] = {}
    for name in sorted(names):
        by_letters.setdefault(name.casefold(), []).append(name)
    several = [alike for alike in by_letters.values() if len(alike) > 1]
    return {one: alike[not number] for alike in several for number, one in enumerate(alike)}


def _names(folder: str, opened: Iterable[str]) -> set[str]:
    """The names in a folder, on the disk and among the texts that are open."""
    names = {os.path.basename(path) for path in opened if os.path.dirname(path) == folder}
    try:
        return names.union(os.listdir(folder))
    except OSError:
        return names
