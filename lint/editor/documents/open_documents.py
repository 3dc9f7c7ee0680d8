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
from ..protocol.document import Document
from ..protocol.uris import name_in, path_of
from .view import View, carried, whole

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from ..protocol.document import Encoding, TextChange
    from .view import Unchanged

_PROGRAMME = re.compile(r"^programme[ \t]*:(?:[ \t\r\n]|$)", re.MULTILINE)

_SHARE = 0.01
"""The most of its time that is spent looking for files that have changed on the disk."""


class OpenDocument:
    """An open document with what is known of it.

    ``path`` is that of its file, "" where it has none; ``name`` is what the engine knows it by, "" while it
    is none of ours. ``view`` is its latest review. ``asked`` is True while a review of its present state is
    still to be made, ``told`` once the client has heard of that review; ``moved`` says that the review was
    asked for by something other than the document's own text.
    """

    __slots__ = ("asked", "document", "kept", "moved", "name", "path", "told", "view")

    def __init__(self, document: Document, path: str) -> None:
        self.document = document
        self.path = path
        self.name = ""
        self.view: View | None = None
        self.kept: list[Unchanged] = []
        self.asked = True
        self.told = False
        self.moved = False

    def ask(self, *, moved: bool) -> None:
        """Asks for a review."""
        self.moved = moved if not self.asked else self.moved and moved
        self.asked = True
        self.told = False

    def company(self) -> set[str]:
        """Real paths of the athlete files whose programmes are judged together with this document."""
        if kind_of(self.name) == "athlete":
            return {real(self.name)}
        ledgers = self.view.review.ledgers if self.view is not None else []
        names = {one.athlete.place.text.name for one in ledgers if one.athlete is not None}
        return {real(name) for name in names if kind_of(name) == "athlete"}


class OpenDocuments:
    """All that is open.

    Documents of ours are files with such a name and, wherever else the client keeps them, texts with such a
    name or with a ``programme:`` key at the top. ``home`` is the folder that texts without a file belong to.
    """

    def __init__(self, log: Callable[[str], None], today: Callable[[], date] = date.today) -> None:
        self.documents: dict[str, OpenDocument] = {}
        self.encoding: Encoding = "utf-16"
        self.home = os.curdir
        self._log = log
        self._today = today
        self._overlay = Overlay()
        self._workspace: Workspace | None = None
        self._look_again = 0.0

    # What the client tells

    def open(self, uri: str, version: int, content: str) -> None:
        """Takes in a document; one that is open already is replaced."""
        self.close(uri)
        opened = OpenDocument(Document(uri, version, content, self.encoding), path_of(uri))
        named = self._named_on_disk(opened.path)
        self.documents[uri] = opened
        self._lay(opened)
        self._ask_company(opened, named)

    def change(self, uri: str, version: int, changes: Iterable[TextChange]) -> None:
        """Applies changes; those to a document that is not open are left alone."""
        opened = self.documents.get(uri)
        if opened is None:
            self._log(f"a change to a document that is not open: {uri}")
            return
        opened.document.change(version, changes)
        opened.ask(moved=False)
        self._lay(opened)

    def close(self, uri: str) -> bool:
        """Lets go of a document; says whether it was open and one of ours."""
        opened = self.documents.pop(uri, None)
        if opened is None or not opened.name:
            return False
        self._overlay.close(opened.name)
        self.look()
        self._ask_company(opened, opened.company() | self._named_on_disk(opened.name))
        other = self.document_of(opened.name)
        if other is not None:  # the same file under another address
            self._lay(other)
            other.ask(moved=True)
        return True

    def look(self) -> None:
        """Looks now whether something has changed on the disk."""
        self._look_again = 0.0
        self._ready()

    def renew(self) -> None:
        """Takes a new workspace for all that comes, and asks for a review of all that is open."""
        self._workspace = None
        for opened in self.documents.values():
            opened.ask(moved=True)

    # What the client asks

    def view(self, uri: str) -> View | None:
        """The present state of a document, reviewed; None where it is not open or none of ours."""
        opened = self.documents.get(uri)
        return None if opened is None else self.reviewed(opened)

    def waiting(self) -> list[OpenDocument]:
        """Documents that the client has not heard the latest of, those it has changed itself first.

        One that is no longer one of ours is among them until it has been ``reviewed``, to None.
        """
        left = [
            opened for opened in self.documents.values() if (opened.name or opened.view) and not opened.told
        ]
        return sorted(left, key=lambda opened: opened.moved)

    def reviewed(self, opened: OpenDocument) -> View | None:
        """The view of a document, reviewed anew where that has been asked for."""
        if not opened.name:
            opened.view = None
            return None
        workspace = self._ready()
        if opened.view is None or opened.asked:
            accompanied = len(self.documents) > 1 and not opened.moved
            before = opened.company() if accompanied else set()
            opened.view = self._review(workspace, opened)
            opened.asked = False
            if accompanied:
                self._ask_company(opened, before | opened.company())
        return opened.view

    def document_of(self, path: str) -> OpenDocument | None:
        """The open document of a file, whatever way leads to it."""
        wanted = real(path)
        return next((one for one in self.documents.values() if one.name and real(one.name) == wanted), None)

    # How it is done

    def _ready(self) -> Workspace:
        """The workspace; a new one where a file that the old one has read has changed."""
        now = perf_counter()
        workspace = self._workspace
        if workspace is not None and workspace.today == self._today():
            if now < self._look_again:
                return workspace
            stale = workspace.stale()
            self._look_again = perf_counter() + (perf_counter() - now) / _SHARE
            if not stale:
                return workspace
        if workspace is not None:
            self.renew()
        self._workspace = Workspace(self._today(), overlay=self._overlay, incremental=True)
        return self._workspace

    def _lay(self, opened: OpenDocument) -> None:
        """Lays a document's text over its file, once it is known to be one of ours."""
        text = opened.document.text
        if not opened.path:
            ours = kind_of(name_in(opened.document.uri)) or _PROGRAMME.search(text)
            if not ours and opened.name:
                self._overlay.close(opened.name)
                opened.name = ""
            elif ours and not opened.name:
                opened.name = self._free_name(opened.document.uri)
        elif kind_of(opened.path):
            opened.name = opened.path
        if opened.name:
            self._overlay.open(opened.name, opened.document.content)
        if kind_of(opened.name) not in ("", "programme"):
            self._look_again = 0.0

    def _free_name(self, uri: str) -> str:
        """A name in the home folder, that no file has, for a text without a file."""
        name = name_in(uri)
        if not kind_of(name):
            name = f"{name or 'untitled'}.programme.yaml"
        taken = {opened.name for opened in self.documents.values()}
        path = os.path.join(self.home, name)
        while path in taken or os.path.exists(path):
            name = f"untitled {name}"
            path = os.path.join(self.home, name)
        return path

    def _review(self, workspace: Workspace, opened: OpenDocument) -> View:
        text, old = opened.document.text, opened.view
        one = self._file_review(workspace, opened.name)
        for fault in one.faults:
            self._log(f"{fault.rule} failed on {opened.name}: {fault.words}")
        good = one if _is_good(one) else None
        if good is not None:
            opened.kept = whole(text)
        elif old is not None:
            good = old.good
            opened.kept = carried(opened.kept, old.text.content, text)
        read = one.reading.text if one.reading is not None else None
        same = read is not None and len(read.content) == len(text)
        return View(
            read if read and same else Text(opened.name, text), opened.path, one, good, workspace, opened.kept
        )

    def _file_review(self, workspace: Workspace, name: str) -> FileReview:
        """What the review says of one file; a failure of ours is told to the log alone."""
        try:
            return next(one for one in review_on(workspace, [name]).files if one.name == name)
        except Exception as fault:
            self._log(f"the review of {name} failed ({type(fault).__name__}: {fault})")
            return FileReview(workspace.files.file(name), Team())

    def _named_on_disk(self, path: str) -> set[str]:
        """Real paths of the athlete files that a programme names on the disk, this document aside."""
        if self._workspace is None or kind_of(path) != "programme":
            return set()
        return set(self._workspace.athletes_in(self._workspace.files.file(path)))

    def _ask_company(self, opened: OpenDocument, athletes: set[str]) -> None:
        """Asks for a review of what is open and judged together with a document that has changed."""
        for other in self.documents.values():
            if other is not opened and not athletes.isdisjoint(other.company()):
                other.ask(moved=True)


def _is_good(one: FileReview) -> bool:
    """Whether a review rests on a file that could be taken in: a programme counted, another file read."""
    if one.kind == "programme":
        return bool(one.ledgers)
    return one.reading is not None and one.reading.root is not None
