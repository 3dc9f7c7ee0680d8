"""Where a run finds its files: texts open in an editor first, then those on the disk."""

from __future__ import annotations

import os

from ..syntax import builder
from ..text.repository import real

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..syntax.tree import Reading

    FileVersion = tuple[int, ...]
    """What tells two states of a file apart; empty where there is none."""


class Overlay:
    """Texts laid over the files of their paths; files are told apart really, links followed."""

    __slots__ = ("_opened", "_texts")

    def __init__(self) -> None:
        self._texts: dict[str, tuple[str, FileVersion]] = {}
        self._opened = 0

    def open(self, path: str, content: str) -> None:
        """Lays a text over the file at ``path``, in place of the text that lay there."""
        self._opened += 1
        self._texts[real(path)] = (content, (self._opened,))

    def close(self, path: str) -> None:
        """Takes away the text over a file, if there is one."""
        self._texts.pop(real(path), None)

    def opened(self) -> dict[str, str]:
        """The texts that are open, by the real paths of their files."""
        return {path: text for path, (text, _) in self._texts.items()}

    def exists(self, path: str) -> bool:
        """Whether there is a text or a file."""
        return (bool(self._texts) and real(path) in self._texts) or os.path.exists(path)

    def is_file(self, path: str) -> bool:
        """Whether there is a text, or a file that is no folder."""
        return (bool(self._texts) and real(path) in self._texts) or os.path.isfile(path)

    def read(self, path: str) -> Reading:
        """The tree of the text over ``path``, else of the file; see `yaml_tree.read`."""
        held = self._texts.get(real(path)) if self._texts else None
        return builder.read(path) if held is None else builder.parse(path, held[0])

    def mark(self, path: str) -> FileVersion:
        """What changes whenever the text or the file at a real path does."""
        held = self._texts.get(path)
        if held is not None:
            return held[1]
        try:
            found = os.stat(path)
        except (OSError, ValueError):
            return ()
        return (found.st_mtime_ns, found.st_size, found.st_ino)
