"""What ``set-up`` does with its words."""

from __future__ import annotations

import os
import sys
from shutil import which

from ..starting.answers import answered
from ..starting.first_files import first_files, write
from ..text.repository import folders_up, real
from ..text.safe_writer import NotWrittenError
from ..wording.words import safe
from .streams import complain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date


def set_up(folder: str, given: dict[str, str], today: date) -> int:
    """Writes a team's first files into a folder, asking for what is not given; the exit code.

    Raises ValueError for an answer that cannot be.
    """
    try:
        answers = answered(given, input if sys.stdin.isatty() and not given else None, print)
        files = first_files(folder, answers, today)
    except (EOFError, KeyboardInterrupt) as end:
        print()
        complain("nothing was written")
        if isinstance(end, KeyboardInterrupt):
            raise
        return 2
    try:
        write(folder, files)
    except KeyboardInterrupt:
        print()
        complain("call set-up again, and it writes what is not there yet")
        raise
    except NotWrittenError as fault:
        complain(str(fault))
        return 2
    for file in files:
        print(f"{'kept as it is' if file.kept else 'written':14}{safe(file.path)}")
    print("Now: spotline review" + (f" {safe(folder)}" if folder != "." else ""))
    print(f"So that no commit breaks it: {safe(', '.join(_to_the_hook(folder)))}")
    return 0


def _to_the_hook(folder: str) -> Iterator[str]:
    """What is left to do until the hook runs, command by command."""
    if folder != ".":
        yield f"cd {folder}"
    if not any(os.path.exists(os.path.join(up, ".git")) for up in folders_up(real(folder), os.sep)):
        yield "git init"
    if which("pre-commit") is None:
        yield "pip install pre-commit"
    yield "pre-commit install"
