"""A run of mending: what the command does, from the paths to the files on the disk."""

from __future__ import annotations

import os

from ..text import files as door
from ..text.safe_writer import NotWrittenError, replace
from ..wording.words import safe

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

    from .rounds import MendedFile, Rounds

_MARK = b"\xef\xbb\xbf"
"""The byte order mark that a file may begin with; it stays."""


def write(rounds: Rounds) -> tuple[list[MendedFile], list[NotWrittenError]]:
    """Writes every file that was mended: those that are written, and why others are not."""
    return write_files(rounds.files.values())


def write_files(files: Iterable[MendedFile]) -> tuple[list[MendedFile], list[NotWrittenError]]:
    """Writes mended files: those that are written, and why others are not.

    A file that was changed meanwhile is left as it is. What was written is kept, so that the run can be taken
    back.
    """
    from .undo import remember

    written: list[MendedFile] = []
    refused: list[NotWrittenError] = []
    kept: dict[str, list[tuple[str, bytes, bytes]]] = {}
    for one in files:
        try:
            before = _bytes_of(one)
            after = _mark_of(before) + one.after.encode()
            replace(one.file.real, before, after, one.file.root)
        except NotWrittenError as fault:
            refused.append(fault)
        else:
            written.append(one)
            kept.setdefault(one.file.root, []).append((one.file.real, before, after))
    for root, several in kept.items():
        try:
            remember(root, several)
        except (OSError, NotWrittenError) as fault:
            refused.append(NotWrittenError("what --undo would need", str(fault)))
    return written, refused


def _mark_of(data: bytes) -> bytes:
    return _MARK if data.startswith(_MARK) else b""


def _bytes_of(one: MendedFile) -> bytes:
    """The bytes of a file, if they are still the text that was mended. Raises NotWrittenError."""
    try:
        data = door.data_of(one.file)
        same = door.decoded(one.file.name, data) == one.before
    except door.UnreadableError as fault:
        raise NotWrittenError(one.file.name, "it can no longer be read") from fault
    if not same:
        raise NotWrittenError(one.file.name, "it has changed since it was read")
    return data


def difference(one: MendedFile) -> str:
    """The lines that a mended file loses and gains, as a unified difference."""
    from difflib import unified_diff

    name = safe(one.file.name.replace(os.sep, "/"))
    lines = unified_diff(
        one.before.splitlines(keepends=True), one.after.splitlines(keepends=True), f"{name} as it is", name
    )
    return "".join(line if line.endswith("\n") else f"{line}\n" for line in lines)
