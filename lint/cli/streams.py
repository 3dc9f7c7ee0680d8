"""The standard streams at the edges: closed ones, full ones, terminals that do not know every letter."""

from __future__ import annotations

import os
import sys

from ..wording.words import safe

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import TextIO


def settle() -> bool:
    """Makes the streams fit to be written to; False where there is no output to print to.

    Letters that a terminal does not know are spelled out. What is closed reads as empty and swallows what is
    said to it: Python would else print to another stream in its place.
    """
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="backslashreplace")
    if sys.stdin is None:
        sys.stdin = os.fdopen(os.open(os.devnull, os.O_RDONLY), encoding="utf-8")
    if sys.stderr is None:
        sys.stderr = _nowhere()
    if sys.stdout is None:
        sys.stdout = _nowhere()
        return False
    return True


def complain(words: str) -> None:
    """Says on one line, beside the output, why something was not done."""
    try:
        print(f"spotline: {safe(words)}", file=sys.stderr, flush=True)
    except (OSError, ValueError):
        _give_up(sys.stderr)  # nobody is left to tell


def give_up_output() -> None:
    """Lets all that is not printed yet go nowhere, so that nothing fails on the way out."""
    try:
        sys.stdout.flush()
    except (OSError, ValueError):
        _give_up(sys.stdout)


def _nowhere() -> TextIO:
    return os.fdopen(os.open(os.devnull, os.O_WRONLY), "w", encoding="utf-8")


def _give_up(stream: TextIO) -> None:
    try:
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, stream.fileno())
        os.close(nowhere)
        stream.flush()
    except (OSError, ValueError):
        return  # no stream of the system stands behind it
