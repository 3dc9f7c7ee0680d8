"""Reads files as text: regular files only, up to a size limit, in UTF-8."""

from __future__ import annotations

import os
import stat

from .places import Text
from .repository import is_inside

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .places import Place
    from .repository import SourceFile

LONGEST_FILE = 4_000_000
"""The size limit: bytes of a file, or characters of a text that is already decoded."""

_MARKS = (
    (b"\xff\xfe\x00\x00", "UTF-32"),  # before UTF-16: its mark begins with the mark of UTF-16
    (b"\x00\x00\xfe\xff", "UTF-32"),
    (b"\xff\xfe", "UTF-16"),
    (b"\xfe\xff", "UTF-16"),
)


class UnreadableError(Exception):
    """Raised for a file that cannot be read as text.

    ``place`` is where it stops being readable. ``opened`` is False if the file could not be opened at all.
    """

    opened = True

    def __init__(self, place: Place, words: str) -> None:
        super().__init__(words)
        self.place = place


class NotOpenedError(UnreadableError):
    """The file could not be opened. The message is the reason, such as ``it is a folder``."""

    opened = False

    def __init__(self, path: str, reason: str) -> None:
        super().__init__(Text(path, "").place(0, 0), reason)


class TooLargeError(UnreadableError):
    """The file has more bytes than are read of one."""


class OtherEncodingError(UnreadableError):
    """The file is in UTF-16 or UTF-32; ``encoding`` names it."""

    def __init__(self, place: Place, encoding: str) -> None:
        super().__init__(place, encoding)
        self.encoding = encoding


class NotUtf8Error(UnreadableError):
    """The file has a ``byte`` that is not valid UTF-8 at this place.

    ``whole`` is False if the fault reaches the end of the file, so that a character may have been cut off.
    """

    def __init__(self, place: Place, byte: int, *, whole: bool) -> None:
        super().__init__(place, f"{byte:02X}")
        self.byte = byte
        self.whole = whole


def content(path: str) -> str:
    """The text of the file at ``path``, without a byte order mark. Raises UnreadableError."""
    return decoded(path, data(path))


def content_of(file: SourceFile) -> str:
    """The text of a file of a repository, as `content`; a link that leads out of it is not followed."""
    return decoded(file.name, data_of(file))


def data_of(file: SourceFile) -> bytes:
    """The bytes of a file of a repository, as `data`; a link that leads out of it is not followed."""
    if not is_inside(file.root, file.real):
        raise NotOpenedError(file.name, "it is a link that leads out of the repository")
    return data(file.name)


def data(path: str, most: int = LONGEST_FILE) -> bytes:
    """The bytes of the regular file at ``path``. Raises UnreadableError, also where there are over ``most``.

    The one place at which bytes come from the disk.
    """
    try:
        found = _bytes_of(path, most)
    except OSError as error:
        raise NotOpenedError(path, _reason(path, error)) from error
    except ValueError as error:  # a zero byte in the name
        raise NotOpenedError(path, "no file can have this name") from error
    if len(found) > most:
        raise TooLargeError(Text(path, "").place(0, 0), f"more than {most} bytes")
    return found


def decoded(name: str, data: bytes) -> str:
    """The text in ``data``, the bytes of the file ``name``. Raises UnreadableError."""
    nowhere = Text(name, "").place(0, 0)
    if len(data) > LONGEST_FILE:
        raise TooLargeError(nowhere, f"more than {LONGEST_FILE} bytes")
    encoding = _other_encoding(data)
    if encoding:
        raise OtherEncodingError(nowhere, encoding)
    data = data.removeprefix(b"\xef\xbb\xbf")
    try:
        return data.decode()
    except UnicodeDecodeError as error:
        before = data[: error.start].decode()
        at = len(before)
        text = Text(name, before + data[error.start :].decode(errors="replace"))
        raise NotUtf8Error(text.place(at, at + 1), data[error.start], whole=error.end < len(data)) from error


def _bytes_of(path: str, most: int) -> bytes:
    """The bytes of a regular file. Never waits for a pipe.

    Reads at most one byte more than the limit: enough to show that a file is too large.
    """
    flags = os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0)
    handle = os.open(path, flags)
    try:
        mode = os.fstat(handle).st_mode
        if not stat.S_ISREG(mode):
            kind = "it is a folder" if stat.S_ISDIR(mode) else "it is a pipe or a device, not a file"
            raise NotOpenedError(path, kind)
        with open(handle, "rb", closefd=False) as file:
            return file.read(most + 1)
    finally:
        os.close(handle)


def _reason(path: str, error: OSError) -> str:
    if os.path.isdir(path):
        allowed = os.access(path, os.R_OK | os.X_OK)
        return "it is a folder" if allowed else "it is a folder, and this account may not look into it"
    if isinstance(error, FileNotFoundError):
        return "it is a link to a file that is not there" if os.path.islink(path) else "it is not there"
    if isinstance(error, PermissionError):
        return "this account may not read it"
    return (error.strerror or "the system gives no reason").lower()


def _other_encoding(data: bytes) -> str:
    """UTF-16 or UTF-32 if a byte order mark, or zero bytes between the letters, show it; else ""."""
    for mark, name in _MARKS:
        if data.startswith(mark):
            return name
    zeros = [index % 2 for index, byte in enumerate(data[:64]) if byte == 0]
    if len(zeros) * 3 < len(data[:64]) or not zeros:
        return ""
    return "UTF-16" if len(set(zeros)) == 1 else "UTF-32"
