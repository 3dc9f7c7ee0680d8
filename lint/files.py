"""Files to readings: only regular files, of a bearable size, in UTF-8."""

from __future__ import annotations

import os
import stat

from . import yaml_faults as faults
from .finding import Finding
from .places import Text
from .yaml_tree import LONGEST_FILE, Reading, parse

_MARKS = (
    (b"\xff\xfe\x00\x00", "UTF-32"),
    (b"\x00\x00\xfe\xff", "UTF-32"),
    (b"\xff\xfe", "UTF-16"),
    (b"\xfe\xff", "UTF-16"),
)


def read(path: str) -> Reading:
    """The tree of the file at ``path``; whatever keeps it from being read becomes a finding.

    ``Reading.opened`` is False where there was no regular file to read, or it could not be opened.
    """
    try:
        data = _bytes_of(path)
    except _NoFileError as error:
        return _unopened(path, str(error))
    except OSError as error:
        return _unopened(path, _reason(path, error))
    except ValueError:  # a zero byte in the name
        return _unopened(path, "no file can have this name")
    if len(data) > LONGEST_FILE:
        text = Text(path, "")
        return _reading(text, faults.file_too_large(text.place(0, 0), LONGEST_FILE))
    return decode(path, data)


def decode(name: str, data: bytes) -> Reading:
    """The tree of a file's bytes."""
    encoding = _other_encoding(data)
    if encoding:
        text = Text(name, "")
        return _reading(text, faults.other_encoding(text.place(0, 0), encoding))
    try:
        content = data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return _not_utf8(name, data.removeprefix(b"\xef\xbb\xbf"))
    return parse(name, content)


class _NoFileError(Exception):
    """There is something at the path, but no file that can be read to its end."""


def _bytes_of(path: str) -> bytes:
    """The bytes of a regular file, one more than is allowed at most. A pipe is not waited for."""
    flags = os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0)
    handle = os.open(path, flags)
    try:
        mode = os.fstat(handle).st_mode
        if stat.S_ISDIR(mode):
            raise _NoFileError("it is a folder")
        if not stat.S_ISREG(mode):
            raise _NoFileError("it is a pipe or a device, not a file")
        with open(handle, "rb", closefd=False) as file:
            return file.read(LONGEST_FILE + 1)
    finally:
        os.close(handle)


def _reason(path: str, error: OSError) -> str:
    if os.path.isdir(path):
        return "it is a folder"
    if isinstance(error, FileNotFoundError):
        return "it is a link to a file that is not there" if os.path.islink(path) else "it is not there"
    if isinstance(error, PermissionError):
        return "this account may not read it"
    return (error.strerror or "the system gives no reason").lower()


def _unopened(path: str, reason: str) -> Reading:
    text = Text(path, "")
    reading = _reading(text, faults.file_not_opened(text.place(0, 0), reason))
    reading.opened = False
    return reading


def _reading(text: Text, finding: Finding) -> Reading:
    reading = Reading(text)
    reading.findings.append(finding)
    return reading


def _other_encoding(data: bytes) -> str:
    """The encoding that a byte order mark, or zero bytes between the letters, tell of; "" for none."""
    for mark, name in _MARKS:
        if data.startswith(mark):
            return name
    zeros = [index % 2 for index, byte in enumerate(data[:64]) if byte == 0]
    if len(zeros) * 3 < len(data[:64]) or not zeros:
        return ""
    return "UTF-16" if len(set(zeros)) == 1 else "UTF-32"


def _not_utf8(name: str, data: bytes) -> Reading:
    """Points at the first byte that is not UTF-8; the text behind it keeps what can be read of it."""
    try:
        data.decode("utf-8")
    except UnicodeDecodeError as error:
        before = data[: error.start].decode("utf-8")
        text = Text(name, before + data[error.start :].decode("utf-8", "replace"))
        at = len(before)
        return _reading(text, faults.not_utf8(text.place(at, at + 1), data[error.start]))
    raise AssertionError("called for bytes that are UTF-8")
