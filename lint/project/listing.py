"""The files of ours in a git work tree as git lists them: none is opened that git knows to be as it was."""

from __future__ import annotations

import os

from ..text import files, repository
from ..text.repository import kind_of
from ..text.state import read_state, state_file, write_state
from .git import LINK
from .mentions import ANY, mentions

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..text.repository import FileResolver, SourceFile
    from .git import Changes, Repository

FORM = 2
WHAT = "mentions"


class Listing:
    """The files of ours that git holds or sees below a root, by their paths from there.

    What a file mentions is kept from run to run by the fingerprint that git gives to what it holds. So what
    is kept can only be of the very same text; it is a shortcut and decides nothing: whatever it leads to is
    read.
    """

    __slots__ = ("_fingerprints", "_is_new", "_known", "_resolver", "links", "paths", "root")

    def __init__(self, resolver: FileResolver, repository: Repository, changes: Changes) -> None:
        self.root = repository.root
        self._resolver = resolver
        held = repository.held()
        self._fingerprints = {
            path: print_ for path, (_, print_) in held.items() if path not in changes.not_staged
        }
        gone = set(changes.gone)
        self.paths = [path for path in (*held, *changes.unknown) if kind_of(path) and path not in gone]
        self.links = {path for path, (mode, _) in held.items() if mode == LINK}
        self.links.update(path for path in changes.unknown if os.path.islink(self._at(path)))
        self._known = _read(state_file(WHAT, self.root))
        self._is_new = False

    def _at(self, path: str) -> str:
        return os.path.join(self.root, *path.split("/"))

    def file(self, path: str) -> SourceFile:
        """The file at a path from the root."""
        return self._resolver.file(repository.shown(self._at(path)))

    def real(self, path: str) -> str:
        """The real path of a path from the root, be a file there or not."""
        return repository.real(self._at(path))

    def programmes_mentioning(self, athletes: Iterable[str]) -> Iterator[str]:
        """Paths of programmes that may name one of these athlete files (real paths)."""
        reals = set(athletes)
        names = {os.path.basename(one) for one in reals}
        names.update(path.rpartition("/")[2] for path in self.links if self.real(path) in reals)
        asked = {end for name in names for end in mentions(os.fsencode(name))} | {ANY}
        for path in self.paths:
            if kind_of(path) == "programme" and not asked.isdisjoint(self._mentions(path)):
                yield path
        self._keep()

    def mentioned(self) -> Iterator[tuple[str, list[str]]]:
        """The paths of athlete files, and of programmes, each of these with what it mentions."""
        for path in self.paths:
            if (kind := kind_of(path)) in ("athlete", "programme"):
                yield path, self._mentions(path) if kind == "programme" else []
        self._keep()

    def _mentions(self, path: str) -> list[str]:
        print_ = "" if path in self.links else self._fingerprints.get(path, "")
        known = self._known.get(print_)
        if known is not None:
            return known
        try:
            found = mentions(files.data_of(self.file(path)))
        except files.UnreadableError:
            return [ANY]
        if print_:
            self._known[print_] = found
            self._is_new = True
        return found

    def _keep(self) -> None:
        """Keeps what is known of the files that there are, where something was learnt and it can be kept."""
        if not self._is_new:
            return
        from ..text.safe_writer import NotWrittenError

        self._is_new = False
        held = {
            print_: self._known[print_] for print_ in self._fingerprints.values() if print_ in self._known
        }
        try:
            write_state(state_file(WHAT, self.root), {"form": FORM, "mentions": held})
        except (OSError, NotWrittenError):
            return  # a shortcut that cannot be kept is none; the next run reads the files again


def _read(path: str) -> dict[str, list[str]]:
    """What an earlier run has kept; nothing where that is not whole."""
    kept = read_state(path)
    if not isinstance(kept, dict) or kept.get("form") != FORM or not isinstance(kept.get("mentions"), dict):
        return {}
    found = kept["mentions"]
    sound = all(
        isinstance(one, list) and all(isinstance(name, str) for name in one) for one in found.values()
    )
    return found if sound else {}
