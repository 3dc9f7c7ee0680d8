"""Numbers, ranges and loads: what quantities are made of."""

from __future__ import annotations

from functools import lru_cache

from ..wording.words import plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable


KG_PER_LB = 0.45359237
"""The international avoirdupois pound, exact by definition (1959)."""


class Range:
    """A number or a range of numbers, both ends included; ``low`` and ``high`` are equal for one number."""

    __slots__ = ("high", "low")

    def __init__(self, low: float, high: float) -> None:
        self.low = low
        self.high = high

    @property
    def middle(self) -> float:
        """Half-way between the ends."""
        return (self.low + self.high) / 2

    @property
    def ends(self) -> tuple[float, float]:
        """Both ends."""
        return self.low, self.high

    def __add__(self, other: Range) -> Range:
        return Range(self.low + other.low, self.high + other.high)

    def __mul__(self, factor: float) -> Range:
        return Range(self.low * factor, self.high * factor)

    def by(self, other: Range) -> Range:
        """The product with another range, both without numbers below zero."""
        return Range(self.low * other.low, self.high * other.high)

    def meets(self, other: Range) -> bool:
        """Whether the two ranges share a number."""
        return self.low <= other.high and other.low <= self.high

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Range) and (self.low, self.high) == (other.low, other.high)

    def __hash__(self) -> int:
        return hash((self.low, self.high))

    def __str__(self) -> str:
        return plain(self.low) if self.low == self.high else f"{plain(self.low)}-{plain(self.high)}"

    __repr__ = __str__


NOTHING = Range(0, 0)


class Load:
    """The load of a line; where there are several ``values``, each is that of one set.

    ``kind`` says what they are: ``percent`` of 1RM; ``mass`` in kg; ``bodyweight``: kg added to the athlete's
    own mass (below zero: taken off it); ``share``: percent of body mass, ``added`` kg on top; ``rm``:
    repetitions of a repetition maximum; ``rm share``: percent of one; ``lift``: percent of another lift;
    ``top set``: percent of the line's top set; ``label``: a band, a pin or a word, without ``values``;
    ``change``: what is added to another load (``+5 kg``, ``-12 %``), until the line says to which.
    ``whole`` is what a percentage is of, where that is said: ``1RM``, ``5RM``, a lift. ``pieces`` is how many
    equal implements there are: ``2 x 24 kg`` has the value 24 and 2 pieces. ``rough`` is about, from, up to,
    or empty. ``beside`` is the same load in other figures: ``80 % (160 kg)``. ``unit`` is the unit as
    written, kg or lb; ``words`` is the load as written.
    """

    __slots__ = ("added", "beside", "kind", "pieces", "rough", "unit", "values", "whole", "words")

    def __init__(
        self, kind: str, values: tuple[Range, ...], words: str, *, unit: str = "", pieces: int = 1
    ) -> None:
        self.kind = kind
        self.values = values
        self.words = words
        self.unit = unit
        self.pieces = pieces
        self.whole = self.rough = ""
        self.added = 0.0
        self.beside: Load | None = None

    @property
    def is_word(self) -> bool:
        """Whether it is a word such as heavy, and no band and no place on a machine."""
        low = self.words.lower()
        is_band = low.startswith("band ") or low.endswith(("band", "bands"))
        return self.kind == "label" and not (is_band or low[-1:].isdigit())

    @property
    def span(self) -> Range | None:
        """From the lightest to the heaviest set, in the unit of ``kind``, all pieces together."""
        if len(self.values) == self.pieces == 1:
            return self.values[0]
        if not self.values:
            return None
        low = min(one.low for one in self.values) * self.pieces
        return Range(low, max(one.high for one in self.values) * self.pieces)


def number(words: str) -> float | None:
    """A number without a sign; None for anything else."""
    words = words.strip()
    if not words.replace(".", "", 1).isdecimal() or not words.isascii() or len(words) > 12:
        return None
    return float(words)


def number_or_range(value: object) -> Range | None:
    """``3``, ``3-4``, ``7.5-8`` as a range; ``8-5`` is read as ``5-8``."""
    if isinstance(value, bool):
        return None
    if isinstance(value, (int, float)):
        return Range(float(value), float(value))
    if not isinstance(value, str):
        return None
    first, dash, last = value.partition("-")
    one = number(first)
    other = number(last) if dash else one
    if one is None or other is None:
        return None
    return Range(min(one, other), max(one, other))


@lru_cache(maxsize=500)
def in_order(words: str) -> str:
    """The words with the smaller number of every range first: ``8-5`` becomes ``5-8``."""
    first, dash, last = words.partition("-")
    if words.isascii() and (not dash or (first.isdecimal() and last.isdecimal())):
        return f"{last}-{first}" if dash and float(first) > float(last) else words
    import re

    def turned(found: re.Match[str]) -> str:
        first, last = found.groups()
        return f"{last}-{first}" if float(first) > float(last) else found[0]

    number = r"[0-9]+(?:\.[0-9]+)?"
    return re.sub(rf"(?<![-.0-9])({number})-({number})(?!-?[.0-9])", turned, words)


def each_part(words: str, read: Callable[[object], Range | None]) -> tuple[Range, ...] | None:
    """``70/75/80``: a range for each part; None where one of them cannot be read."""
    parts = [read(part) for part in words.split("/")]
    known = tuple(part for part in parts if part is not None)
    return known if len(known) == len(parts) else None


def percentage(kind: str, words: str, figures: str) -> Load | None:
    """A load of a kind in %, from figures such as ``70-75 %``."""
    figures = figures.strip()
    if not figures.endswith("%"):
        return None
    values = each_part(figures[:-1], number_or_range)
    return None if values is None else Load(kind, values, words)


def read_mass(words: str, figures: str) -> Load | None:
    """A mass from figures such as ``2 x 24 kg``, in lower case."""
    unit = figures[-2:]
    figures = figures[:-2].strip()
    pieces = 1
    count, times, one = figures.partition("x")
    if times:
        if not count.strip().isdecimal():
            return None
        pieces, figures = int(count), one.strip()
    values = each_part(figures, number_or_range)
    if values is None or unit not in ("kg", "lb"):
        return None
    factor = 1.0 if unit == "kg" else KG_PER_LB
    return Load("mass", tuple(each * factor for each in values), words, unit=unit, pieces=pieces)
