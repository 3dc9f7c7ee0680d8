"""Makes text safe to print: nothing in it can control a terminal or fake a line."""

from __future__ import annotations

_HIDDEN = {0x2028, 0x2029, 0xFEFF, 0x061C, 0x200E, 0x200F, *range(0x202A, 0x202F), *range(0x2066, 0x206A)}
"""Line separators, byte order mark and direction marks: they can change what a reader sees."""


def safe(words: str) -> str:
    """The text with unsafe characters spelled out as code points, such as ``\\u202e``."""
    if words.isascii() and words.isprintable():
        return words
    return "".join(
        char if char.isprintable() and ord(char) not in _HIDDEN else f"\\u{ord(char):04x}" for char in words
    )
