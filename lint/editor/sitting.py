"""One sitting at the editor: the open documents, the desk they are reviewed on, and their reviews."""

from __future__ import annotations

import os
import re
from datetime import date
from time import perf_counter

from ..desk import Desk
from ..gathering import kind_of
from ..places import Text
from ..repository import real
from ..review import FileReview, review_on
from ..shelf import Shelf
from ..team import Team
from .documents import Document
from .paths import name_in, path_of
from .view import View, carried, whole

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from .documents import Change, Encoding
    from .view import Kept

_PROGRAMME = re.compile(r"^programme[ \t]*:(?:[ \t\r\n]|$)", re.MULTILINE)

_SHARE = 0.01
"""The most of its time that is spent looking for files that have changed on the disk."""


class Seat:
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
        self.kept: list[Kept] = []
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


class Sitting:
    """All that is open.

    Documents of ours are files with such a name and, wherever else the client keeps them, texts with such a
    name or with a ``programme:`` key at the top. ``home`` is the folder that texts without a file belong to.
    """

    def __init__(self, log: Callable[[str], None], today: Callable[[], date] = date.today) -> None:
        self.seats: dict[str, Seat] = {}
        self.encoding: Encoding = "utf-16"
        self.home = os.curdir
        self._log = log
        self._today = today
        self._shelf = Shelf()
        self._desk: Desk | None = None
        self._look_again = 0.0

    # What the client tells

    def open(self, uri: str, version: int, content: str) -> None:
        """Takes in a document; one that is open already is replaced."""
        self.close(uri)
        seat = Seat(Document(uri, version, content, self.encoding), path_of(uri))
        named = self._named_on_disk(seat.path)
        self.seats[uri] = seat
        self._lay(seat)
        self._ask_company(seat, named)

    def change(self, uri: str, version: int, changes: Iterable[Change]) -> None:
        """Applies changes; those to a document that is not open are left alone."""
        seat = self.seats.get(uri)
        if seat is None:
            self._log(f"a change to a document that is not open: {uri}")
            return
        seat.document.change(version, changes)
        seat.ask(moved=False)
        self._lay(seat)

    def close(self, uri: str) -> bool:
        """Lets go of a document; says whether it was open and one of ours."""
        seat = self.seats.pop(uri, None)
        if seat is None or not seat.name:
            return False
        self._shelf.close(seat.name)
        self.look()
        self._ask_company(seat, seat.company() | self._named_on_disk(seat.name))
        other = self.seat_of(seat.name)
        if other is not None:  # the same file under another address
            self._lay(other)
            other.ask(moved=True)
        return True

    def look(self) -> None:
        """Looks now whether something has changed on the disk."""
        self._look_again = 0.0
        self._ready()

    def renew(self) -> None:
        """Takes a new desk for all that comes, and asks for a review of all that is open."""
        self._desk = None
        for seat in self.seats.values():
            seat.ask(moved=True)

    # What the client asks

    def view(self, uri: str) -> View | None:
        """The present state of a document, reviewed; None where it is not open or none of ours."""
        seat = self.seats.get(uri)
        return None if seat is None else self.reviewed(seat)

    def waiting(self) -> list[Seat]:
        """Documents that the client has not heard the latest of, those it has changed itself first.

        One that is no longer one of ours is among them until it has been ``reviewed``, to None.
        """
        left = [seat for seat in self.seats.values() if (seat.name or seat.view) and not seat.told]
        return sorted(left, key=lambda seat: seat.moved)

    def reviewed(self, seat: Seat) -> View | None:
        """The view of a document, reviewed anew where that has been asked for."""
        if not seat.name:
            seat.view = None
            return None
        desk = self._ready()
        if seat.view is None or seat.asked:
            accompanied = len(self.seats) > 1 and not seat.moved
            before = seat.company() if accompanied else set()
            seat.view = self._review(desk, seat)
            seat.asked = False
            if accompanied:
                self._ask_company(seat, before | seat.company())
        return seat.view

    def seat_of(self, path: str) -> Seat | None:
        """The open document of a file, whatever way leads to it."""
        wanted = real(path)
        return next((one for one in self.seats.values() if one.name and real(one.name) == wanted), None)

    # How it is done

    def _ready(self) -> Desk:
        """The desk, a new one where something that the old one has read is no longer so."""
        now = perf_counter()
        desk = self._desk
        if desk is not None and desk.today == self._today():
            if now < self._look_again:
                return desk
            stale = desk.stale()
            self._look_again = perf_counter() + (perf_counter() - now) / _SHARE
            if not stale:
                return desk
        if desk is not None:
            self.renew()
        self._desk = Desk(self._today(), shelf=self._shelf, lasting=True)
        return self._desk

    def _lay(self, seat: Seat) -> None:
        """Lays a document's text over its file, once it is known to be one of ours."""
        text = seat.document.text
        if not seat.path:
            ours = kind_of(name_in(seat.document.uri)) or _PROGRAMME.search(text)
            if not ours and seat.name:
                self._shelf.close(seat.name)
                seat.name = ""
            elif ours and not seat.name:
                seat.name = self._free_name(seat.document.uri)
        elif kind_of(seat.path):
            seat.name = seat.path
        if seat.name:
            self._shelf.open(seat.name, seat.document.content)
        if kind_of(seat.name) not in ("", "programme"):
            self._look_again = 0.0

    def _free_name(self, uri: str) -> str:
        """A name in the home folder, that no file has, for a text without a file."""
        name = name_in(uri)
        if not kind_of(name):
            name = f"{name or 'untitled'}.programme.yaml"
        taken = {seat.name for seat in self.seats.values()}
        path = os.path.join(self.home, name)
        while path in taken or os.path.exists(path):
            name = f"untitled {name}"
            path = os.path.join(self.home, name)
        return path

    def _review(self, desk: Desk, seat: Seat) -> View:
        text, old = seat.document.text, seat.view
        one = self._file_review(desk, seat.name)
        for fault in one.faults:
            self._log(f"{fault.rule} failed on {seat.name}: {fault.words}")
        good = one if _is_good(one) else None
        if good is not None:
            seat.kept = whole(text)
        elif old is not None:
            good = old.good
            seat.kept = carried(seat.kept, old.text.content, text)
        read = one.reading.text if one.reading is not None else None
        same = read is not None and len(read.content) == len(text)
        return View(read if read and same else Text(seat.name, text), seat.path, one, good, desk, seat.kept)

    def _file_review(self, desk: Desk, name: str) -> FileReview:
        """What the review says of one file; a failure of ours is told to the log alone."""
        try:
            return next(one for one in review_on(desk, [name]).files if one.name == name)
        except Exception as fault:
            self._log(f"the review of {name} failed ({type(fault).__name__}: {fault})")
            return FileReview(name, kind_of(name), Team())

    def _named_on_disk(self, path: str) -> set[str]:
        """Real paths of the athlete files that a programme names as it was, or will be, without its seat."""
        if self._desk is None or kind_of(path) != "programme":
            return set()
        return set(self._desk.athletes_in(path))

    def _ask_company(self, seat: Seat, athletes: set[str]) -> None:
        """Asks for a review of what is open and judged together with a document that has changed."""
        for other in self.seats.values():
            if other is not seat and not athletes.isdisjoint(other.company()):
                other.ask(moved=True)


def _is_good(one: FileReview) -> bool:
    """Whether a review rests on a file that could be taken in: a programme counted, another file read."""
    if one.kind == "programme":
        return bool(one.ledgers)
    return one.reading is not None and one.reading.root is not None
