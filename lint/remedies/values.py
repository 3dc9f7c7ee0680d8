"""Edits of any text, as rules offer them: words written, added, swapped, taken out; numbers corrected."""

from __future__ import annotations

from ..syntax.numbers import slips, with_number
from ..syntax.rewrites import added, dropped, item_dropped, listed_too, one_of, swapped, whole_key_out

__all__ = [
    "added",
    "dropped",
    "item_dropped",
    "listed_too",
    "one_of",
    "slips",
    "swapped",
    "whole_key_out",
    "with_number",
]
