"""The open documents, the workspace in which they are reviewed, and their reviews."""

from __future__ import annotations

import os
import re
from datetime import date
from time import perf_counter

from ...project.overlay import Overlay
from ...project.results import FileReview
from ...project.review import review_on
from ...project.workspace import Workspace
from ...team.settings import Team
from ...text.places import Text
from ...text.repository import kind_of, real
from ..protocol.text_document import TextDocument
from ..protocol.uris import file_name_of, path_of
from .offset_map import OffsetMap
from .snapshot import Snapshot

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from ..protocol.text_document import Encoding, TextChange

_PROGRAMME_KEY = re.compile(r"^programme[ \t]*:(?:[ \t\r\n]|$)", re.MULTILINE)

_DISK_CHECK_SHARE = 0.01
"""The largest share of time that goes into looking for files that have changed on the disk."""


class OpenDocument:
    """An open document with the state of its review.

    ``path`` is that of its file, "" where it has none. ``reviewed_as`` is the path under which it is
    reviewed, "" while it is no file of ours. ``snapshot`` is its latest review.

    ``stale`` says that the latest review is out of date. ``edited`` says that it is so by an edit of this
    document, not only by a change of another file. ``published`` says that the client has the findings of the
    latest review.
    """

    __slots__ = (
        "edited",
        "offset_map",
        "path",
        "published",
        "reviewed_as",
        "snapshot",
        "stale",
        "text_document",
    )

    def __init__(self, text_document: TextDocument, path: str) -> None:
        self.text_document = text_document
        self.path = path
        self.reviewed_as = ""
        self.snapshot: Snapshot | None = None
        self.offset_map = OffsetMap(())
        self.stale = True
        self.edited = True
        self.published = False

    def mark_stale(self, *, edited: bool) -> None:
        """Notes that the document has to be reviewed again, and whether it was edited itself."""
        self.edited = edited or (self.stale and self.edited)
        self.stale = True
        self.published = False

    def athlete_files(self) -> set[str]:
        """Real paths of the athlete files whose programmes are judged together with this document."""
        if kind_of(self.reviewed_as) == "athlete":
            return {real(self.reviewed_as)}
        ledgers = self.snapshot.review.ledgers if self.snapshot is not None else []
        names = {one.athlete.place.text.name for one in ledgers if one.athlete is not None}
        return {real(name) for name in names if kind_of(name) == "athlete"}


class OpenDocuments:
    """All open documents, by URI.

    A document is one of ours if its file has such a name. A text without a file is one of ours if its URI has
    such a name, or if it has a ``programme:`` key at the top. ``folder`` is the folder that texts without a
    file belong to.
    """

    def __init__(self, log: Callable[[str], None], today: Callable[[], date] = date.today) -> None:
        self.by_uri: dict[str, OpenDocument] = {}
        self.encoding: Encoding = "utf-16"
        self.folder = os.curdir
        self._log = log
        self._today = today
        self._overlay = Overlay()
        self._workspace: Workspace | None = None
        self._next_disk_check = 0.0

    # What the client reports

    def open(self, uri: str, version: int, content: str) -> None:
        """Takes in a document; one that is open already is replaced."""
        self.close(uri)
        document = OpenDocument(TextDocument(uri, version, content, self.encoding), path_of(uri))
        athletes = self._athletes_on_disk(document.path)
        self.by_uri[uri] = document
        self._lay_over_file(document)
        self._mark_related_stale(document, athletes)

    def change(self, uri: str, version: int, changes: Iterable[TextChange]) -> None:
        """Applies changes; those to a document that is not open are ignored."""
        document = self.by_uri.get(uri)
        if document is None:
            self._log(f"a change to a document that is not open: {uri}")
            return
        document.text_document.change(version, changes)
        document.mark_stale(edited=True)
        self._lay_over_file(document)

    def close(self, uri: str) -> bool:
        """Forgets a document; returns whether it was open and one of ours."""
        document = self.by_uri.pop(uri, None)
        if document is None or not document.reviewed_as:
            return False
        self._overlay.close(document.reviewed_as)
        self.check_disk()
        athletes = document.athlete_files() | self._athletes_on_disk(document.reviewed_as)
        self._mark_related_stale(document, athletes)
        other = self.at_path(document.reviewed_as)
        if other is not None:  # the same file under another URI
            self._lay_over_file(other)
            other.mark_stale(edited=False)
        return True

    def check_disk(self) -> None:
        """Looks at once whether a file has changed on the disk."""
        self._next_disk_check = 0.0
        self._current_workspace()

    def refresh_all(self) -> None:
        """Forgets what was read from the disk, and marks every document as stale."""
        self._workspace = None
        for document in self.by_uri.values():
            document.mark_stale(edited=False)

    # What the client asks for

    def workspace(self) -> Workspace:
        """The workspace as it is now, with what is open laid over its files."""
        return self._current_workspace()

    def snapshot(self, uri: str) -> Snapshot | None:
        """The present state of a document, reviewed; None where it is not open or none of ours."""
        document = self.by_uri.get(uri)
        return None if document is None else self.refresh(document)

    def version(self, uri: str) -> int | None:
        """The version of a document; None where it is not open."""
        document = self.by_uri.get(uri)
        return None if document is None else document.text_document.version

    def unpublished(self) -> list[OpenDocument]:
        """The documents whose latest findings the client does not have, edited ones first.

        A document that has stopped being one of ours is among them until it is refreshed.
        """
        left = [
            document
            for document in self.by_uri.values()
            if (document.reviewed_as or document.snapshot) and not document.published
        ]
        return sorted(left, key=lambda document: not document.edited)

    def refresh(self, document: OpenDocument) -> Snapshot | None:
        """Reviews the document again if it is stale; returns None if it is none of ours."""
        if not document.reviewed_as:
            document.snapshot = None
            return None
        workspace = self._current_workspace()
        if document.snapshot is None or document.stale:
            touches_others = len(self.by_uri) > 1 and document.edited
            before = document.athlete_files() if touches_others else set()
            document.snapshot = self._reviewed(workspace, document)
            document.stale = False
            if touches_others:
                self._mark_related_stale(document, before | document.athlete_files())
        return document.snapshot

    def at_path(self, path: str) -> OpenDocument | None:
        """The open document of a file, whatever path leads to it."""
        wanted = real(path)
        return next(
            (one for one in self.by_uri.values() if one.reviewed_as and real(one.reviewed_as) == wanted), None
        )

    # How documents are reviewed

    def _current_workspace(self) -> Workspace:
        """The workspace; a new one where a file that the old one has read has changed."""
        now = perf_counter()
        workspace = self._workspace
        if workspace is not None and workspace.today == self._today():
            if now < self._next_disk_check:
                return workspace
            stale = workspace.stale()
            self._next_disk_check = perf_counter() + (perf_counter() - now) / _DISK_CHECK_SHARE
            if not stale:
                return workspace
        if workspace is not None:
            self.refresh_all()
        self._workspace = Workspace(self._today(), overlay=self._overlay, incremental=True)
        return self._workspace

    def _lay_over_file(self, document: OpenDocument) -> None:
        """Has reviews read a document's text in place of its file, if it is one of ours."""
        text_document = document.text_document
        if not document.path:
            is_ours = kind_of(file_name_of(text_document.uri)) or _PROGRAMME_KEY.search(text_document.text)
            if not is_ours and document.reviewed_as:
                self._overlay.close(document.reviewed_as)
                document.reviewed_as = ""
            elif is_ours and not document.reviewed_as:
                document.reviewed_as = self._unused_path(text_document.uri)
        elif kind_of(document.path):
            document.reviewed_as = document.path
        if document.reviewed_as:
            self._overlay.open(document.reviewed_as, text_document.content)
        if kind_of(document.reviewed_as) not in ("", "programme"):
            self._next_disk_check = 0.0

    def _unused_path(self, uri: str) -> str:
        """A path in the folder at which no file stands, for a text without a file."""
        name = file_name_of(uri)
        if not kind_of(name):
            name = f"{name or 'untitled'}.programme.yaml"
        taken = {document.reviewed_as for document in self.by_uri.values()}
        path = os.path.join(self.folder, name)
        while path in taken or os.path.exists(path):
            name = f"untitled {name}"
            path = os.path.join(self.folder, name)
        return path

    def _reviewed(self, workspace: Workspace, document: OpenDocument) -> Snapshot:
        text, old = document.text_document.text, document.snapshot
        review = self._file_review(workspace, document.reviewed_as)
        for fault in review.faults:
            self._log(f"{fault.rule} failed on {document.reviewed_as}: {fault.words}")
        last_good = review if _is_good(review) else None
        if last_good is not None:
            document.offset_map = OffsetMap.of_unedited(text)
        elif old is not None:
            last_good = old.last_good
            document.offset_map = document.offset_map.edited(old.text.content, text)
        read = review.reading.text if review.reading is not None else None
        if read is None or len(read.content) != len(text):
            read = Text(document.reviewed_as, text)
        return Snapshot(read, document.path, review, last_good, workspace, document.offset_map)

    def _file_review(self, workspace: Workspace, path: str) -> FileReview:
        """The review of one file; a failure of the review itself is logged and finds nothing."""
        try:
            return next(one for one in review_on(workspace, [path]).files if one.name == path)
        except Exception as error:
            self._log(f"the review of {path} failed ({type(error).__name__}: {error})")
            return FileReview(workspace.files.file(path), Team())

    def _athletes_on_disk(self, path: str) -> set[str]:
        """Real paths of the athlete files that a programme names, as its file stands on the disk."""
        if self._workspace is None or kind_of(path) != "programme":
            return set()
        return set(self._workspace.athletes_in(self._workspace.files.file(path)))

    def _mark_related_stale(self, document: OpenDocument, athletes: set[str]) -> None:
        """Marks the other documents as stale that are judged together with a changed document."""
        for other in self.by_uri.values():
            if other is not document and not athletes.isdisjoint(other.athlete_files()):
                other.mark_stale(edited=False)


def _is_good(review: FileReview) -> bool:
    """Whether the file could be taken in: a programme could be counted, another file could be read."""
    if review.kind == "programme":
        return bool(review.ledgers)
    return review.reading is not None and review.reading.root is not None
