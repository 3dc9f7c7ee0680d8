"""What is kept between runs outside the checkouts: in the folder for that, by the custom of each system."""

from __future__ import annotations

import os
import sys

from . import files
from .safe_writer import replace

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

MOST_BYTES = 64_000_000
"""Bytes of a state file that is read; a larger one is none of ours."""


def state_folder() -> str:
    """Where the state of this account's programs is kept, by the custom of its system."""
    home = os.path.expanduser("~")
    if os.name == "nt":
        return os.path.join(_absolute("LOCALAPPDATA") or home, "spotline")
    if sys.platform == "darwin":
        return os.path.join(home, "Library", "Application Support", "spotline")
    return os.path.join(_absolute("XDG_STATE_HOME") or os.path.join(home, ".local", "state"), "spotline")


def state_file(what: str, root: str) -> str:
    """The path of what is kept of a repository; ``what`` names it."""
    real = os.fsencode(os.path.realpath(root))
    return os.path.join(state_folder(), f"{what}-{fingerprint(real)[:24]}.json")


def fingerprint(data: bytes) -> str:
    """What tells bytes from others, in 64 letters."""
    from hashlib import sha256

    return sha256(data).hexdigest()


def read_state(path: str) -> Any:
    """What a state file holds; None where there is none, or where it cannot be read."""
    import json

    try:
        return json.loads(files.data(path, MOST_BYTES))
    except (files.UnreadableError, ValueError, RecursionError):
        return None


def write_state(path: str, content: Any) -> None:
    """Writes a state file, readable for this account alone. Raises OSError or NotWrittenError."""
    import json

    folder = os.path.dirname(path)
    os.makedirs(folder, mode=0o700, exist_ok=True)
    try:
        before: bytes | None = files.data(path, MOST_BYTES)
    except files.NotOpenedError:
        before = None
    replace(path, before, json.dumps(content).encode(), folder)


def _absolute(name: str) -> str:
    """A folder that the environment names; one that begins in the working folder counts for nothing."""
    folder = os.environ.get(name, "")
    return folder if os.path.isabs(folder) else ""
