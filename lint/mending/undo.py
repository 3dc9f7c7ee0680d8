"""What the last run of mending changed in a repository, kept outside it, so that the run can be taken back.

One file of JSON a repository, in the folder in which programs of this account keep their state: the path, the
bytes before, and a fingerprint of the bytes after.
"""

from __future__ import annotations

import os

from ..text import files as door
from ..text.safe_writer import NotWrittenError, replace
from ..text.state import fingerprint, read_state, state_file, write_state

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

FORM = 1
WHAT = "mended"


def remember(root: str, written: Iterable[tuple[str, bytes, bytes]]) -> None:
    """Keeps what a run has written under ``root``: real path, bytes before and bytes after of each file.

    It takes the place of what the run before has left. Raises OSError.
    """
    from base64 import b64encode

    files = [
        {"path": path, "before": b64encode(before).decode(), "after": fingerprint(after)}
        for path, before, after in written
    ]
    write_state(state_file(WHAT, root), {"form": FORM, "root": os.path.realpath(root), "files": files})


def take_back(root: str) -> tuple[list[str], list[NotWrittenError]]:
    """Puts the files of the last run under ``root`` back: those that are, and why others are not.

    A file that has changed since then stays as it is. Raises LookupError where no run is known.
    """
    from base64 import b64decode

    path = state_file(WHAT, root)
    known = read_state(path)
    try:
        files = known["files"] if known["form"] == FORM else None
    except (KeyError, TypeError):
        files = None
    if files is None:
        raise LookupError(root)
    back: list[str] = []
    refused: list[NotWrittenError] = []
    for one in files:
        try:
            now = _bytes_at(one["path"])
            if now is None or fingerprint(now) != one["after"]:
                raise NotWrittenError(one["path"], "it has changed since it was mended")
            replace(one["path"], now, b64decode(one["before"]), root)
            back.append(one["path"])
        except NotWrittenError as fault:
            refused.append(fault)
    if not refused:
        os.unlink(path)
    return back, refused


def _bytes_at(path: str) -> bytes | None:
    """The bytes of a file; None where it cannot be read any more."""
    try:
        return door.data(path)
    except door.UnreadableError:
        return None
