"""What every way of reading a text shares: the reading it fills, and what plain words in it mean."""

from __future__ import annotations

import re

from . import faults
from .scalars import OutOfRangeError, core_value, taken_elsewhere
from .tree import Mapping, Reading, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ..text.places import Place, Text


MOST_VALUES = 100_000
"""How many keys and values are read of a file; a text of fewer letters cannot hold as many."""


class TreeBuilder:
    """Reads one text; the result is ``reading``.

    ``known`` remembers the values of plain words, because a programme repeats the same words. ``odd`` is set
    for texts with characters that do not print; of these nothing is remembered.
    """

    __slots__ = ("findings", "known", "odd", "reading", "text")

    def __init__(self, text: Text) -> None:
        self.text = text
        self.reading = Reading(text)
        self.findings = faults.TextFindings(self.reading.findings)
        self.known: dict[str, Any] = {"<<": "<<"}
        self.odd = False

    def value(self, words: str, place: Place) -> Any:
        """The value of plain words; reports words that other programs read otherwise."""
        try:
            value = core_value(words)
        except OutOfRangeError:
            self.findings.report(faults.number_out_of_range, place)
            return words
        elsewhere = taken_elsewhere(words)
        if elsewhere:
            self.findings.report(faults.quote_this, place, elsewhere)
        elif not self.odd:
            self.known[words] = value
        return value

    def top(self, documents: Sequence) -> None:
        """Sets the root; reports an empty file, and a root that is no mapping."""
        root = documents.items[0] if documents.items else None
        if root is None or (isinstance(root, Scalar) and root.start == root.end):
            self.findings.report(faults.file_empty, self.text.place(0, 0))
            return
        if isinstance(root, Scalar) and root.style == "*":
            return
        self.reading.root = root
        if not isinstance(root, Mapping):
            self.findings.report(faults.top_not_a_list_of_keys, root.place, isinstance(root, Sequence))


def without_surrogates(content: str) -> str:
    """The text with each lone surrogate, which no UTF-8 file can hold, replaced by U+FFFD."""
    return re.sub("[\ud800-\udfff]", "\ufffd", content)
