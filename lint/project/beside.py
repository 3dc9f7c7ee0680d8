"""What stands beside the files of a review: programmes that are not reviewed, but count for an athlete."""

from __future__ import annotations

import os

from .mentions import mentions

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from ..text.repository import FileResolver, SourceFile


class Beside:
    """Programmes of a repository that are not reviewed, by the ends of the athlete files that they mention.

    They count for an athlete whose other files are reviewed. The mention is a shortcut: what it leads to is
    read.
    """

    __slots__ = ("_by_end", "_links")

    def __init__(self) -> None:
        self._by_end: dict[str, list[SourceFile]] = {}
        self._links: dict[str, set[str]] = {}

    def plain(self) -> tuple[dict[str, list[str]], dict[str, list[str]]]:
        """The same as plain data: names of files by ends, and ends by real paths."""
        by_end = {end: [file.name for file in several] for end, several in self._by_end.items()}
        return by_end, {real: sorted(ends) for real, ends in self._links.items()}

    @classmethod
    def of(cls, plain: tuple[dict[str, list[str]], dict[str, list[str]]], resolver: FileResolver) -> Beside:
        """What stands behind plain data."""
        beside = cls()
        by_end, links = plain
        beside._by_end = {end: [resolver.file(name) for name in names] for end, names in by_end.items()}
        beside._links = {real: set(ends) for real, ends in links.items()}
        return beside

    def add(self, file: SourceFile, ends: Iterable[str]) -> None:
        """Takes in a programme."""
        for end in ends:
            self._by_end.setdefault(end, []).append(file)

    def link(self, file: SourceFile) -> None:
        """Takes in an athlete file that is shown by another name than its own."""
        self._links.setdefault(file.real, set()).update(ends_of_name(file.name))

    def mentioning(self, athletes: Iterable[str]) -> list[SourceFile]:
        """The programmes that may name one of these athlete files (real paths)."""
        ends = {end for real in athletes for end in (*ends_of_name(real), *self._links.get(real, ()))}
        return list(dict.fromkeys(file for end in sorted(ends) for file in self._by_end.get(end, ())))


def ends_of_name(path: str) -> list[str]:
    """The ends by which texts mention the athlete file at a path."""
    name = os.path.basename(path)
    return mentions(os.fsencode(name.replace("\\", ""))) or [name]
