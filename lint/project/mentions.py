"""Which athlete files a text mentions, seen without reading it as YAML."""

from __future__ import annotations

import re

ANY = "*"
"""Stands for any name of an athlete file."""

_ENDING = rb"\.athlete\.ya?ml"
_BETWEEN = rb"[\x00-\x20\x7f-\xff/\\\"',\[\]{}]"
LONGEST_NAME = 255
"""Bytes that systems take as the name of a file; looking back no further keeps the time in bounds."""

_NAMED = (
    rb"\bathletes?+[\"']?+\s*+:\s*+(?![\[-]?+\s*+(?:\{|[\w ]++:\s))"  # possessive: nothing is tried twice
)
"""A key that may name the file of an athlete, as no group of keys follows that describes one."""


def mentions(text: bytes) -> list[str]:
    """The ends of names of athlete files in a text, without regard to case; empty where none is plain to see.

    Only letters of ASCII count, as the others are spelt in several ways. `ANY` is among them where the text
    spells letters by their numbers, or names a file of no such name.
    """
    text = text.lower()
    found = set()
    for ending in re.finditer(_ENDING, text):
        before = text[max(0, ending.start() - LONGEST_NAME) : ending.start()]
        found.add((re.split(_BETWEEN, before)[-1] + ending[0]).decode())
    if b"\\" in text or (not found and re.search(_NAMED, text)):
        found.add(ANY)
    return sorted(found)
