"""Quantities as coaches write them -> typed values: "4-8", "80 %", "3 min", "10RM".

Every function that reads takes a plain value from the file, text or number. It returns a typed value, or
None where the value cannot be read; the schema reports that to the coach. The plain spelling is read here;
any other of the same meaning (`spellings`) is looked at only where that fails.
"""

from __future__ import annotations

from ..wording.words import plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any, TypeVar

    Read = TypeVar("Read")

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


class Reps:
    """Repetitions of the sets of a line.

    ``sets``: one range for each set where the coach wrote one number a set (``12/10/8``), else a single range
    for every set; empty for ``amrap``. ``open_last``: the last set takes as many repetitions as possible
    (``5+``). ``parts``: the parts of a cluster set (``2+2+2``); their sum is the repetitions of one set.
    ``to_failure``: as many as can be done, in those words. ``each_side``: each side does them. ``timed``: the
    seconds of a set that goes by the clock (``30 s``). ``says_more``: one of these four is said.
    """

    __slots__ = ("each_side", "open_last", "parts", "says_more", "sets", "timed", "to_failure")

    def __init__(
        self,
        sets: tuple[Range, ...],
        *,
        open_last: bool = False,
        parts: tuple[int, ...] = (),
        to_failure: bool = False,
        timed: Range | None = None,
    ) -> None:
        self.sets = sets
        self.open_last = open_last
        self.parts = parts
        self.to_failure = to_failure
        self.timed = timed
        self.each_side = False
        self.says_more = bool(parts or to_failure or timed)

    @property
    def each_set(self) -> bool:
        """Whether every set has its own number."""
        return len(self.sets) > 1

    def a_set(self) -> Range | None:
        """From the fewest to the most repetitions of a set; None where the number is left open."""
        if len(self.sets) < 2:
            return self.sets[0] if self.sets else None
        return Range(min(one.low for one in self.sets), max(one.high for one in self.sets))

    def total(self, sets: Range) -> Range | None:
        """The repetitions of all ``sets`` together; None where the number is left open."""
        if not self.sets:
            return None
        if self.each_set:
            return sum(self.sets, NOTHING)
        return sets.by(self.sets[0])


class Load:
    """The load of a line; where there are several ``values``, each is that of one set.

    ``kind`` says what they are: ``percent`` of 1RM; ``mass`` in kg; ``bodyweight``: kg added to the athlete's
    own mass (below zero: taken off it); ``share``: percent of body mass; ``rm``: repetitions of a repetition
    maximum; ``top set``: percent of the line's top set; ``label``: a band or a pin, without ``values``;
    ``change``: what is added to another load (``+5 kg``, ``-12 %``), until the line says to which.
    ``pieces`` is the number of equal implements: ``2 x 24 kg`` has the value 24 and 2 pieces. ``unit`` is the
    unit as written, kg or lb; ``words`` is the load as written.
    """

    __slots__ = ("kind", "pieces", "unit", "values", "words")

    def __init__(
        self, kind: str, values: tuple[Range, ...], words: str, *, unit: str = "", pieces: int = 1
    ) -> None:
        self.kind = kind
        self.values = values
        self.words = words
        self.unit = unit
        self.pieces = pieces

    @property
    def span(self) -> Range | None:
        """From the lightest to the heaviest set, in the unit of ``kind``, all pieces together."""
        if len(self.values) == self.pieces == 1:
            return self.values[0]
        if not self.values:
            return None
        low = min(one.low for one in self.values) * self.pieces
        return Range(low, max(one.high for one in self.values) * self.pieces)


Tempo = tuple["float | None", "float | None", "float | None", "float | None"]
"""Lowering, bottom, lifting, top in seconds; None is as fast as possible (X)."""


def _number(words: str) -> float | None:
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
    one = _number(first)
    other = _number(last) if dash else one
    if one is None or other is None:
        return None
    return Range(min(one, other), max(one, other))


def _each(words: str, read: Callable[[object], Range | None]) -> tuple[Range, ...] | None:
    """``70/75/80``: a range for each part; None where one of them cannot be read."""
    parts = [read(part) for part in words.split("/")]
    known = tuple(part for part in parts if part is not None)
    return known if len(known) == len(parts) else None


def spelt(kind: str, value: object, read: Callable[[Any], Read | None]) -> Read | None:
    """What ``read`` makes of a value's plain spelling; None where the value has no one meaning."""
    from ..schemas.spellings import plain_spelling

    words = plain_spelling(kind, value)
    return None if words is None else read(words)


def _reader(kind: str, read: Callable[[Any], Read | None]) -> Callable[[object], Read | None]:
    """A function that reads the plain spelling of a kind with ``read``, or else any other."""

    def reading(value: object) -> Read | None:
        known = read(value)
        return spelt(kind, value, read) if known is None else known

    return reading


sets = _reader("sets", number_or_range)
"""``3``, ``3-4``, ``3 sets``; `sets_of_reps` reads ``3x12``."""

rir = _reader("rir", lambda value: NOTHING if value == "to failure" else number_or_range(value))
"""Repetitions in reserve: ``2``, ``1-2``, ``to failure``."""

rpe = _reader("rpe", lambda value: Range(10, 10) if value == "to failure" else number_or_range(value))
"""Rating of effort: ``8``, ``7-8``, ``RPE 8``."""


def reps(value: object) -> Reps | None:
    """``5``, ``5-8``, ``12/10/8``, ``2+2+2``, ``amrap``, ``5+``, ``5/5/5+``, ``8 each``, ``30 s``."""
    if isinstance(value, str):
        return plain_reps(value) or spelt("reps", value, plain_reps)
    return None if (one := number_or_range(value)) is None else Reps((one,))


def plain_reps(value: str) -> Reps | None:
    """Repetitions in their plain spelling."""
    words = value.strip().lower()
    if not words[-1:].isdigit():
        return _worded_reps(words)
    if "+" in words:
        pieces = _each(words.replace("+", "/"), number_or_range)
        if pieces is None:
            return None
        return Reps((sum(pieces, NOTHING),), parts=tuple(int(piece.low) for piece in pieces))
    sets = _each(words, number_or_range)
    return None if sets is None else Reps(sets)


def _worded_reps(words: str) -> Reps | None:
    if words.endswith(" each"):
        each = plain_reps(words.removesuffix(" each"))
        if each is not None:
            each.each_side = each.says_more = True
        return each
    if words in ("amrap", "to failure"):
        return Reps((), open_last=True, to_failure=words != "amrap")
    if words.endswith("+"):
        sets = _each(words.removesuffix("+"), number_or_range)
        return None if sets is None else Reps(sets, open_last=True)
    timed = _with_unit(words, _SECONDS) if words.endswith((" s", " min")) else None
    return None if timed is None else Reps((), timed=timed)


def load(value: object) -> Load | None:
    """Any form of load; see `Load`."""
    if not isinstance(value, str):
        return None
    known, low = _plain_load(value), value.lower()
    is_plain = value.replace("RM", "rm") == low and " / " not in low and not value.endswith("rm")
    if known is None or not is_plain or (known.kind == "label" and "band" not in low and "pin" not in low):
        return spelt("load", value, _plain_load) or known
    return known


def _plain_load(value: str) -> Load | None:
    words = " ".join(value.split())
    low = words.lower()
    if not low[:1].isdigit():
        return _worded_load(words, low)
    if low.endswith("%"):
        return _percent("percent", words, low)
    if low.endswith(("kg", "lb")):
        return _mass(words, low)
    if low.endswith("rm"):
        reps = number_or_range(low.removesuffix("rm"))
        return None if reps is None else Load("rm", (reps,), words)
    if low.endswith("bodyweight"):
        return _percent("share", words, low.removesuffix("bodyweight"))
    if low.endswith("of top set"):
        return _percent("top set", words, low.removesuffix("of top set"))
    return Load("label", (), words)


def _worded_load(words: str, low: str) -> Load | None:
    if low.startswith(("band ", "pin ")) or low.endswith(" band"):
        return Load("label", (), words)
    for roughly in ("about ", "from ", "up to "):  # counted as the number says, shown with the word
        if low.startswith(roughly):
            known = _plain_load(low.removeprefix(roughly))
            return known and Load(known.kind, known.values, words, unit=known.unit)
    if low[:1] in ("+", "-"):
        return _change(words, low)
    if low.startswith("bodyweight"):
        return _bodyweight(words, low.removeprefix("bodyweight").strip())
    is_unit = low.endswith(("%", "kg", "lb", "rm", "bodyweight", "of top set"))
    return None if is_unit else Load("label", (), words)


def _change(words: str, low: str) -> Load | None:
    """``+5 kg`` or ``-12 %``: what is added to another load, below zero where it is taken off."""
    added = _percent("change", words, low[1:]) if low.endswith("%") else _mass(words, low[1:])
    if added is None:
        return None
    sign = 1.0 if low[0] == "+" else -1.0
    return Load("change", (_signed(added.values[0], sign),), words, unit=added.unit or "%")


def _bodyweight(words: str, rest: str) -> Load | None:
    if not rest:
        return Load("bodyweight", (NOTHING,), words)
    sign = {"+": 1.0, "-": -1.0}.get(rest[0])
    added = _mass(words, rest[1:].strip())
    if sign is None or added is None:
        return None
    return Load("bodyweight", tuple(_signed(one, sign) for one in added.values), words, unit=added.unit)


def _signed(one: Range, sign: float) -> Range:
    ends = (one.low * sign, one.high * sign)
    return Range(min(ends), max(ends))


def _percent(kind: str, words: str, figures: str) -> Load | None:
    figures = figures.strip()
    if not figures.endswith("%"):
        return None
    values = _each(figures[:-1], number_or_range)
    return None if values is None else Load(kind, values, words)


def _mass(words: str, figures: str) -> Load | None:
    unit = figures[-2:]
    figures = figures[:-2].strip()
    pieces = 1
    count, times, one = figures.partition("x")
    if times:
        if not count.strip().isdecimal():
            return None
        pieces, figures = int(count), one.strip()
    values = _each(figures, number_or_range)
    if values is None or unit not in ("kg", "lb"):
        return None
    factor = 1.0 if unit == "kg" else KG_PER_LB
    return Load("mass", tuple(each * factor for each in values), words, unit=unit, pieces=pieces)


def mass(value: object) -> float | None:
    """``72 kg`` or ``160 lb`` in kilograms."""
    known = load(value)
    if known is None or known.kind != "mass" or known.span is None:
        return None
    return known.span.middle


_SECONDS = {"s": 1.0, "min": 60.0, "h": 3600.0}


_METRES = {"km": 1000.0, "m": 1.0, "ft": 0.3048, "yd": 0.9144}
"""Units of length in metres; foot and yard are exact by definition (1959)."""


def _with_unit(value: object, units: dict[str, float]) -> Range | None:
    if not isinstance(value, str):
        return None
    words = value.strip().lower()
    for unit, factor in units.items():
        if words.endswith(unit):
            known = number_or_range(words.removesuffix(unit).strip())
            if known is not None:
                return known * factor
    return None


duration = _reader("rest", lambda value: _with_unit(value, _SECONDS))
"""``90 s``, ``3 min``, ``2-3 min``, ``1:30``, and a bare ``90``, in seconds."""

length = _reader("length", lambda value: _with_unit(value, _SECONDS))
"""The same for work that goes on: a bare number has no one meaning there."""

distance = _reader("distance", lambda value: _with_unit(value, _METRES))
"""``20 m``, ``20-30 m``, ``1 km``, ``60 ft`` in metres."""

velocity = _reader("velocity", lambda value: _with_unit(value, {"m/s": 1.0}))
"""``0.5 m/s``, ``0.5-0.7 m/s`` in metres per second."""

percent = _reader("percent", lambda value: _with_unit(value, {"%": 1.0}))
"""``20 %`` as a range of percent."""


def _plain_tempo(value: object) -> Tempo | None:
    if not isinstance(value, str):
        return None
    parts: list[float | None] = []
    for part in value.strip().lower().split("-"):
        known = None if part == "x" else _number(part)
        if known is None and part != "x":
            return None
        parts.append(known)
    if len(parts) != 4:
        return None
    return (parts[0], parts[1], parts[2], parts[3])


tempo = _reader("tempo", _plain_tempo)
"""``3-1-X-0``: lowering, bottom, lifting, top in seconds, X as fast as possible."""
