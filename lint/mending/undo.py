"""What the last run of mending changed in a repository, kept outside it, so that the run can be taken back.

One file of JSON a repository, in the folder in which programs of this account keep their state: the path, the
bytes before, and a fingerprint of the bytes after.
"""

from __future__ import annotations

import os

from .safe_writer import NotWrittenError, replace

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable

FORM = 1


def state_folder() -> str:
    """Where the state of this account's programs is kept, by the custom of its system."""
    home = os.path.expanduser("~")
    if os.name == "nt":
        return os.path.join(os.environ.get("LOCALAPPDATA") or home, "spotline")
    return os.path.join(os.environ.get("XDG_STATE_HOME") or os.path.join(home, ".local", "state"), "spotline")


def _state_file(root: str) -> str:
    return os.path.join(state_folder(), f"mended-{_fingerprint(os.path.realpath(root).encode())[:24]}.json")


def _fingerprint(data: bytes) -> str:
    from hashlib import sha256

    return sha256(data).hexdigest()


def remember(root: str, written: Iterable[tuple[str, bytes, bytes]]) -> None:
    """Keeps what a run has written under ``root``: real path, bytes before and bytes after of each file.

    It takes the place of what the run before has left. Raises OSError.
    """
    import json
    from base64 import b64encode

    files = [
        {"path": path, "before": b64encode(before).decode(), "after": _fingerprint(after)}
        for path, before, after in written
    ]
    path = _state_file(root)
    os.makedirs(os.path.dirname(path), mode=0o700, exist_ok=True)
    text = json.dumps({"form": FORM, "root": os.path.realpath(root), "files": files}).encode()
    replace(path, _bytes_at(path), text, os.path.dirname(path))


def take_back(root: str) -> tuple[list[str], list[NotWrittenError]]:
    """Puts the files of the last run under ``root`` back: those that are, and why others are not.

    A file that has changed since then stays as it is. Raises LookupError where no run is known.
    """
    import json
    from base64 import b64decode

    path = _state_file(root)
    try:
        data = _bytes_at(path)
        known = json.loads(data) if data else None
        files = known["files"] if known and known["form"] == FORM else None
    except (OSError, ValueError, KeyError, TypeError):
        files = None
    if files is None:
        raise LookupError(root)
    back: list[str] = []
    refused: list[NotWrittenError] = []
    for one in files:
        try:
            now = _bytes_at(one["path"])
            if now is None or _fingerprint(now) != one["after"]:
                raise NotWrittenError(one["path"], "it has changed since it was mended")
            replace(one["path"], now, b64decode(one["before"]), root)
            back.append(one["path"])
        except NotWrittenError as fault:
            refused.append(fault)
    if not refused:
        os.unlink(path)
    return back, refused


def _bytes_at(path: str) -> bytes | None:
    try:
        with open(path, "rb") as file:
            return file.read()
    except FileNotFoundError:
        return None
