"""Text that is safe to print: nothing that could steer a terminal or forge a line."""

from __future__ import annotations

_HIDDEN = {0x2028, 0x2029, 0xFEFF, 0x061C, 0x200E, 0x200F, *range(0x202A, 0x202F), *range(0x2066, 0x206A)}
"""Line separators, byte order mark and direction marks: characters that forge what a reader sees."""


def safe(words: str) -> str:
    """Text without what could steer a terminal, forge a line or turn its direction: those are spelled out."""
    if words.isascii() and words.isprintable():
        return words
    return "".join(
        char if char.isprintable() and ord(char) not in _HIDDEN else f"\\u{ord(char):04x}" for char in words
    )
