"""Files as values: each is resolved once, to its real path, its kind and the repository that holds it."""

from __future__ import annotations

import os

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

SETTINGS = "spotline.yaml"

ENDINGS = {
    ".programme.yaml": "programme",
    ".programme.yml": "programme",
    ".athlete.yaml": "athlete",
    ".athlete.yml": "athlete",
    ".exercises.yaml": "exercises",
    ".exercises.yml": "exercises",
}


def kind_of(path: str) -> str:
    """``programme``, ``athlete``, ``exercises``, ``team``, or empty for any other file."""
    name = os.path.basename(path)
    if name == SETTINGS:
        return "team"
    return next((kind for ending, kind in ENDINGS.items() if name.endswith(ending)), "")


class SourceFile:
    """A file, whether it is there or not; a `FileResolver` makes it.

    ``name`` is its path as shown, ``real`` the path without links: two names of one file share it. ``folder``
    is the real path of the folder in which it is shown, ``kind`` what `kind_of` its name says.
    """

    __slots__ = ("_resolver", "folder", "kind", "name", "real")

    def __init__(self, name: str, real: str, folder: str, resolver: FileResolver) -> None:
        self.name = name
        self.real = real
        self.folder = folder
        self.kind = kind_of(name)
        self._resolver = resolver

    @property
    def root(self) -> str:
        """The real path of the root of its repository; see `FileResolver.root_of`."""
        return self._resolver.root_of(self.folder)

    def shown_as(self, path: str) -> SourceFile:
        """The file at another path, resolved as this one was."""
        return self._resolver.file(path)

    @property
    def path_from_root(self) -> str:
        """Its path from the root of its repository, with / between folders."""
        return os.path.relpath(self.real, self.root).replace(os.sep, "/")


class FileResolver:
    """Resolves paths to files. Each file and each folder is resolved once, under the name it is shown by."""

    __slots__ = ("_files", "_folders", "_roots")

    def __init__(self) -> None:
        self._files: dict[str, SourceFile] = {}
        self._folders: dict[str, str] = {}
        self._roots: dict[str, str] = {}

    def file(self, path: str) -> SourceFile:
        """The file at a path, which is also the name that it is shown by."""
        known = self._files.get(path)
        if known is None:
            known = self._files[path] = SourceFile(path, real(path), self.folder(os.path.dirname(path)), self)
        return known

    def entry(self, entry: os.DirEntry[str], folder: str) -> SourceFile:
        """The file of an entry of a folder, whose real path is given; only a link is looked up."""
        path = entry.path.removeprefix("./")
        known = self._files.get(path)
        if known is None:
            found = real(path) if entry.is_symlink() else os.path.join(folder, entry.name)
            known = self._files[path] = SourceFile(path, found, folder, self)
        return known

    def named(self, folder: str, path: str) -> SourceFile:
        """The file that a path with / leads to from a folder; shown from the working folder."""
        return self.file(shown(os.path.join(folder, *path.split("/"))))

    def folder(self, path: str) -> str:
        """The real path of a folder; empty stands for the working folder."""
        path = path or os.curdir
        known = self._folders.get(path)
        if known is None:
            known = self._folders[path] = real(path)
        return known

    def root_of(self, folder: str) -> str:
        """The root of the repository that holds a folder, both as real paths.

        The nearest folder above that git or the team's settings mark; without either the working folder where
        it lies above, else the folder's parent.
        """
        known = self._roots.get(folder)
        if known is None:
            known = self._roots[folder] = _marked_above(folder) or self._unmarked_root(folder)
        return known

    def _unmarked_root(self, folder: str) -> str:
        here = self.folder("")
        return here if is_inside(here, folder) else os.path.dirname(folder)


def _marked_above(folder: str) -> str:
    """The nearest folder above that git marks, else the nearest with settings; empty without either."""
    settings = ""
    above = folder
    while True:
        if os.path.exists(os.path.join(above, ".git")):
            return above
        if not settings and os.path.isfile(os.path.join(above, SETTINGS)):
            settings = above
        parent = os.path.dirname(above)
        if parent == above:
            return settings
        above = parent


def real(path: str) -> str:
    """The absolute path with links resolved; only made absolute if it holds a zero byte, as no file can."""
    try:
        return os.path.realpath(path)
    except ValueError:
        return os.path.join(os.path.realpath(os.curdir), path)


def shown(path: str) -> str:
    """The path from the working folder; as it stands where none leads there (a zero byte, another drive)."""
    if "\0" in path:
        return path
    try:
        return os.path.relpath(path or os.curdir)
    except ValueError:
        return path


def is_marked(root: str) -> bool:
    """Whether a folder holds ``.git`` or the team's settings, the marks of a repository's root."""
    return os.path.exists(os.path.join(root, ".git")) or os.path.isfile(os.path.join(root, SETTINGS))


def is_inside(root: str, path: str) -> bool:
    """Whether a path lies in the folder ``root`` or is that folder. Both have links resolved (see `real`).

    Where the system takes names for the same that differ in case, or in the slash, so does this.
    """
    path, root = os.path.normcase(path), os.path.normcase(root)
    return path == root or path.startswith(root.rstrip(os.sep) + os.sep)


def folders_up(folder: str, root: str) -> Iterator[str]:
    """A folder and those above it up to the root of the repository, all by their real paths."""
    above = folder
    while True:
        yield above
        if above == root or os.path.dirname(above) == above:
            return
        above = os.path.dirname(above)
