"""The mark by which a sheet is known as one of ours that nobody has written in since."""

from __future__ import annotations

import re
from hashlib import sha256

OPEN = f"spotline-sheet-{'0' * 16}"
"""What a form writes where the seal belongs: once, before any word of a file."""

_SEAL = re.compile(r"spotline-sheet-[0-9a-f]{16}")


def sealed(text: str) -> str:
    """The text with its seal: a digest of all else in it."""
    return text.replace(OPEN, f"spotline-sheet-{_digest(text)}", 1)


def is_untouched(text: str) -> bool:
    """Whether a text is a sheet as it was written: another's file, or one that was filled in, is not."""
    found = _SEAL.search(text)
    if found is None:
        return False
    return sealed(text[: found.start()] + OPEN + text[found.end() :]) == text


def _digest(text: str) -> str:
    return sha256(text.encode(errors="surrogatepass")).hexdigest()[:16]
