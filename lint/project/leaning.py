"""What leans on what has changed: the files whose findings may be others now, whoever changed them."""

from __future__ import annotations

import os

from ..syntax import builder
from ..team import known_findings
from ..text import files, repository
from ..text.letters import twins
from ..text.repository import kind_of
from .discovery import is_passed_by, programmes_naming
from .git import Repository
from .listing import Listing
from .workspace import athletes_named

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..text.repository import SourceFile
    from .git import Changes
    from .workspace import Workspace


def leaning_on_changes(workspace: Workspace, root: str, revision: str, *, unknown: bool) -> list[SourceFile]:
    """The files of ours to review for what differs between a revision and the work tree below a root.

    ``unknown`` says whether files count that git was never told of; else a commit would lack them. Raises
    GitError.
    """
    asked = Repository(root)
    commit = asked.commit(revision)
    changes = asked.changes(commit)
    if not unknown:
        workspace.not_in_git = {repository.real(os.path.join(root, path)) for path in changes.unknown}
        changes.unknown = []
    if not (changes.there or changes.gone or changes.unknown):
        return []
    listing = workspace.listing = Listing(workspace.files, asked, changes)
    workspace.renamed = {listing.real(old): listing.real(new) for old, new in changes.renamed.items()}
    return _Leaning(workspace, listing, changes, commit, asked).due()


class _Leaning:
    """Works out what is due; ``touched`` are paths that changed, came or went, and links to such."""

    def __init__(
        self, workspace: Workspace, listing: Listing, changes: Changes, commit: str, asked: Repository
    ) -> None:
        self.workspace = workspace
        self.listing = listing
        self.commit = commit
        self.asked = asked
        touched = [*changes.there, *changes.unknown, *changes.gone]
        reals = {listing.real(path) for path in touched} if listing.links else set()
        touched += sorted(path for path in listing.links if listing.real(path) in reals)
        self.touched = {path: kind_of(path) for path in touched}
        self.before = dict(asked.contents(commit, filter(self._is_read, self.touched), files.LONGEST_FILE))

    def _is_read(self, path: str) -> bool:
        """Whether it matters what a touched file said before."""
        return self.touched[path] == "programme" or path == known_findings.NAME

    def due(self) -> list[SourceFile]:
        """The files to review, each once: what changed itself, then what leans on it."""
        found: dict[str, SourceFile] = {}
        listing = self.listing
        there = set(listing.paths)
        paths = {path for path, kind in self.touched.items() if kind and path in there}
        paths |= set(self._of_settings())
        if known_findings.NAME in self.touched:
            paths |= set(self._of_record()) & there
        self._note_twins()
        athletes = set(self._athletes())
        for path in sorted(paths):
            if not is_passed_by(self.workspace, listing.root, path):
                found.setdefault(listing.file(path).real, listing.file(path))
        for real in sorted(athletes):
            file = self.workspace.files.file(repository.shown(real))
            is_there = os.path.lexists(file.name) and not os.path.isdir(file.name)
            if is_there and repository.is_inside(listing.root, real):
                found.setdefault(real, file)
        for file in programmes_naming(self.workspace, athletes, list(found)):
            found.setdefault(file.real, file)
        return list(found.values())

    def _note_twins(self) -> None:
        """Notes which files of ours differ from another in the case of their paths alone."""
        for path, other in twins(self.listing.paths).items():
            self.workspace.twins[self.listing.real(path)] = other

    def _of_settings(self) -> Iterator[str]:
        """Files that stand under settings which are touched, or which name exercises that are."""
        paths = self.listing.paths
        touched = {_folder(path) for path, kind in self.touched.items() if kind == "team"}
        every = touched | {_folder(path) for path in paths if kind_of(path) == "team"}
        exercises = {self.listing.real(path) for path, kind in self.touched.items() if kind == "exercises"}
        if exercises:
            touched |= {folder for folder in every if self._name_exercises(folder, exercises)}
        if not touched:
            return
        nearest: dict[str, str | None] = {}
        for path in paths:
            folder = _folder(path)
            if folder not in nearest:
                nearest[folder] = next((above for above in _upwards(folder) if above in every), None)
            if nearest[folder] in touched:
                yield path

    def _name_exercises(self, folder: str, exercises: set[str]) -> bool:
        """Whether the settings of a folder name one of these files (real paths), be they there or not."""
        settings = self.listing.file(f"{folder}{repository.SETTINGS}")
        if not self.workspace.overlay.is_file(settings):
            return False
        root = self.workspace.read(settings).root
        plain = root.plain if root is not None else None
        named = plain.get("exercises") if isinstance(plain, dict) else None
        words = [one for one in named if isinstance(one, str)] if isinstance(named, list) else []
        return any(self.workspace.files.named(settings.folder, one).real in exercises for one in words)

    def _of_record(self) -> Iterator[str]:
        """Files of which the record says something else than before; all where that cannot be told."""
        was = known_findings.files_on_record(self.before.get(known_findings.NAME, b""))
        try:
            now = known_findings.files_on_record(files.data_of(self.listing.file(known_findings.NAME)))
        except files.NotOpenedError:
            now = {}
        except files.UnreadableError:
            now = None
        if was is None or now is None:
            yield from self.listing.paths
        else:
            yield from (path for path in {*was, *now} if was.get(path) != now.get(path))

    def _athletes(self) -> Iterator[str]:
        """Athlete files that are touched, and those that touched programmes name or named (real paths).

        What an athlete's other programmes hold counts for both, so these lean on a programme, too.
        """
        for path, kind in self.touched.items():
            if kind == "athlete":
                yield self.listing.real(path)
            elif kind == "programme":
                file = self.listing.file(path)
                if self.workspace.overlay.is_file(file):
                    yield from self.workspace.athletes_in(file)
                yield from self._named_before(file, self.before.get(path, b""))

    def _named_before(self, programme: SourceFile, text: bytes) -> Iterator[str]:
        try:
            reading = builder.parse(programme.name, files.decoded(programme.name, text))
        except files.UnreadableError:
            return
        for words in athletes_named(reading.root):
            yield self.workspace.named_in(programme, words).real


def _folder(path: str) -> str:
    """The folder of a path from the root, with / at its end; empty for the root."""
    return path[: path.rfind("/") + 1]


def _upwards(folder: str) -> Iterator[str]:
    """A folder and those above it, the root last."""
    yield folder
    while folder:
        folder = _folder(folder[:-1])
        yield folder
