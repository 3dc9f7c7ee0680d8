"""The files as a review sees them: texts that are open in an editor first, then what is on the disk."""

from __future__ import annotations

import os

from ..syntax import builder
from ..text.repository import real

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping

    from ..syntax.tree import Reading
    from ..text.repository import SourceFile

    FileVersion = tuple[int, ...]
    """Differs between two states of a file; empty where there is none."""


class Overlay:
    """Open texts, each in front of the file at its path. Links are followed: a file has one text at most.

    ``texts`` are those that are open from the first, by path.
    """

    __slots__ = ("_opened", "_texts")

    def __init__(self, texts: Mapping[str, str] | None = None) -> None:
        self._texts: dict[str, tuple[str, FileVersion]] = {}
        self._opened = 0
        for path, content in (texts or {}).items():
            self.open(path, content)

    def open(self, path: str, content: str) -> None:
        """Puts a text in front of the file at ``path``, in place of the last one."""
        self._opened += 1
        self._texts[real(path)] = (content, (self._opened,))

    def close(self, path: str) -> None:
        """Removes the text in front of a file, if there is one."""
        self._texts.pop(real(path), None)

    def opened(self) -> dict[str, str]:
        """The texts that are open, by the real paths of their files."""
        return {path: text for path, (text, _) in self._texts.items()}

    def exists(self, file: SourceFile) -> bool:
        """Whether there is a text or a file."""
        return file.real in self._texts or os.path.exists(file.name)

    def is_file(self, file: SourceFile) -> bool:
        """Whether there is a text, or a file that is no folder."""
        return file.real in self._texts or os.path.isfile(file.name)

    def read(self, file: SourceFile) -> Reading:
        """The tree of the open text, else of the file; see `builder.read`."""
        opened = self._texts.get(file.real)
        return builder.read_file(file) if opened is None else builder.parse(file.name, opened[0])

    def version(self, file: SourceFile) -> FileVersion:
        """What changes whenever the text or the file does, or a link on the way leads elsewhere."""
        opened = self._texts.get(file.real)
        if opened is not None:
            return opened[1]
        try:
            found = os.stat(file.name)
        except (OSError, ValueError):
            return ()
        return (found.st_mtime_ns, found.st_size, found.st_ino)
