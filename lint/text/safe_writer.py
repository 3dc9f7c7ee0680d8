"""Replaces a file whole or not at all, and only where nothing else has changed it.

The new bytes go into a new file of a random name beside the old one, which nobody else can have made. They
are read back, get the old file's mode, and take its place in one step. So a reader sees the old file or the
new one, never something between, and a stop at any moment loses nothing.
"""

from __future__ import annotations

import os
import stat
from time import sleep

from .repository import is_inside

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

PAUSES = (0.05, 0.2, 0.5)
"""Seconds to wait for a program that holds a file open, as virus scanners and editors do."""

MODE = 0o644
"""The mode of a file that is written for the first time."""


class NotWrittenError(Exception):
    """A file was not written and is as it was; the message says why."""

    def __init__(self, path: str, reason: str) -> None:
        super().__init__(f"{path} was not written: {reason}")
        self.path = path


def replace(path: str, before: bytes | None, after: bytes, root: str) -> None:
    """Puts ``after`` in the place of ``before``, what the file held when it was read; None for a new file.

    A link is followed, but never out of the folder ``root``. Raises NotWrittenError.
    """
    real = os.path.realpath(path)
    if not is_inside(os.path.realpath(root), real):
        raise NotWrittenError(path, "it is a link that leads out of the repository")
    try:
        mode = _mode_of(path, real, before)
        partial = _partial(real)
        try:
            _write(partial, after, mode)
            _check(path, real, before)
            _put_in_place(partial, real)
        except BaseException:
            os.unlink(partial)
            raise
    except OSError as error:
        raise NotWrittenError(path, _reason(error)) from error
    _settle(os.path.dirname(real))


def _mode_of(path: str, real: str, before: bytes | None) -> int:
    """The mode that the new file gets."""
    if before is None:
        return MODE
    found = os.stat(real)
    if not stat.S_ISREG(found.st_mode):
        raise NotWrittenError(path, "it is no file")
    if not os.access(real, os.W_OK):
        raise NotWrittenError(path, "this account may not write it")
    return stat.S_IMODE(found.st_mode)


def _partial(real: str) -> str:
    """A path beside a file that nobody can guess."""
    from secrets import token_hex

    return f"{real}.{token_hex(8)}.part"


def _write(partial: str, data: bytes, mode: int) -> None:
    """Writes a file that is not there yet, and makes sure that it holds what was written."""
    flags = os.O_RDWR | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0) | getattr(os, "O_NOFOLLOW", 0)
    handle = os.open(partial, flags, 0o600)
    with open(handle, "r+b") as file:
        file.write(data)
        file.flush()
        os.fsync(handle)
        file.seek(0)
        if file.read() != data:
            raise OSError("what was written does not read back")
    os.chmod(partial, mode)


def _check(path: str, real: str, before: bytes | None) -> None:
    """Makes sure, at the last moment, that the file still holds what it held."""
    try:
        with open(real, "rb") as file:
            now: bytes | None = file.read()
    except FileNotFoundError:
        now = None
    if now != before:
        raise NotWrittenError(path, "it has changed since it was read")


def _put_in_place(partial: str, real: str) -> None:
    """Moves the new file over the old one; tries again on Windows, where another program may read it."""
    for pause in PAUSES if os.name == "nt" else ():
        try:
            return os.replace(partial, real)
        except PermissionError:
            sleep(pause)
    return os.replace(partial, real)


def _settle(folder: str) -> None:
    """Has the folder itself put on the disk, on systems that can."""
    opened: Callable[..., int] = os.open
    try:
        handle = opened(folder, os.O_RDONLY)
    except OSError:  # Windows opens no folders, and needs none of this
        return
    try:
        os.fsync(handle)
    except OSError:
        pass
    finally:
        os.close(handle)


def _reason(error: OSError) -> str:
    if isinstance(error, PermissionError):
        return "this account may not write there, or another program holds it open"
    return (error.strerror or str(error) or "the system gives no reason").lower()
