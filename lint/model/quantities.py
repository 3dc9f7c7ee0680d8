"""Quantities as coaches write them -> typed values: "4-8", "80 %", "3 min", "10RM".

Every function that reads takes a plain value from the file, text or number. It returns a typed value, or
None where the value cannot be read; the schema reports that to the coach. The plain spelling is read here;
any other of the same meaning (`spellings`) is looked at only where that fails.
"""

from __future__ import annotations

from functools import lru_cache

from .amounts import KG_PER_LB as KG_PER_LB
from .amounts import NOTHING as NOTHING
from .amounts import Load as Load
from .amounts import Range as Range
from .amounts import each_part, in_order, number, percentage, read_mass
from .amounts import number_or_range as number_or_range
from .bounds import BOUNDED, NONE, beyond

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any, TypeVar

    Read = TypeVar("Read")


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
        if len(self.sets) > 1:
            return sum(self.sets, NOTHING)
        return sets.by(self.sets[0])


Tempo = tuple["float | None", "float | None", "float | None", "float | None"]
"""Lowering, bottom, lifting, top in seconds; None is as fast as possible (X)."""


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


def _effort(value: object, failure: float, lowest: float) -> Range | None:
    from .efforts import effort

    return number_or_range(value) or effort(value, failure, lowest)


rir = _reader("rir", lambda value: _effort(value, 0, 0))
"""Repetitions in reserve: ``2``, ``1-2``, ``3+``, ``1/1/0`` (one for each set), ``to failure``."""

rpe = _reader("rpe", lambda value: _effort(value, 10, 1))
"""Rating of effort: ``8``, ``7-8``, ``up to 8.5``, ``RPE 8``."""


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
        pieces = each_part(words.replace("+", "/"), number_or_range)
        if pieces is None:
            return None
        return Reps((sum(pieces, NOTHING),), parts=tuple(int(piece.low) for piece in pieces))
    sets = each_part(words, number_or_range)
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
        sets = each_part(words.removesuffix("+"), number_or_range)
        return None if sets is None else Reps(sets, open_last=True)
    timed = _with_unit(words, _SECONDS) if words.endswith((" s", " min")) else None
    return None if timed is None else Reps((), timed=timed)


def load(value: object) -> Load | None:
    """Any form of load; see `Load`."""
    if not isinstance(value, str):
        return None
    known, low = plain_load(value), value.lower()
    is_plain = value.replace("RM", "rm") == low and " / " not in low and not value.endswith("rm")
    if known is None or not is_plain or (known.is_word and low not in ("light", "moderate", "heavy")):
        return spelt("load", value, plain_load) or known
    return known


def plain_load(value: str) -> Load | None:
    """A load in its plain spelling."""
    words = " ".join(value.split())
    low = words.lower()
    if not low[:1].isdigit():
        return _worded_load(words, low)
    if low.endswith("%"):
        return percentage("percent", words, low)
    if "%" in low:
        from .loads import share

        return share(words, low, plain_load)
    if low.endswith(("kg", "lb")):
        return read_mass(words, low)
    if low.endswith("rm"):
        reps = number_or_range(low.removesuffix("rm"))
        return None if reps is None else Load("rm", (reps,), words)
    return None if low.endswith(("bodyweight", "top set")) else Load("label", (), words)


def _worded_load(words: str, low: str) -> Load | None:
    if low.startswith(("band ", "pin ")) or low.endswith(" band"):
        return Load("label", (), words)
    if low[:1] in ("+", "-") or low.startswith(("about ", "from ", "up to ")):
        from .loads import added_or_rough

        return added_or_rough(words, low, plain_load)
    if low.startswith("bodyweight"):
        from .loads import on_bodyweight

        rest = low.removeprefix("bodyweight").strip()
        return on_bodyweight(words, rest) if rest else Load("bodyweight", (NOTHING,), words)
    is_unit = low.endswith(("%", "kg", "lb", "rm", "bodyweight", "of top set"))
    return None if is_unit else Load("label", (), words)


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
        known = None if part == "x" else number(part)
        if known is None and part != "x":
            return None
        parts.append(known)
    if len(parts) != 4:
        return None
    return (parts[0], parts[1], parts[2], parts[3])


tempo = _reader("tempo", _plain_tempo)
"""``3-1-X-0``: lowering, bottom, lifting, top in seconds, X as fast as possible."""


# The keys of a line

_SIDES = ("left", "right", "each")

READ: dict[str, Callable[[object], object]] = {
    "exercise": lambda value: value if isinstance(value, str) else None,
    "sets": number_or_range,
    "rounds": number_or_range,
    "reps": reps,
    "load": load,
    "rir": number_or_range,
    "rpe": number_or_range,
    "rest": duration,
    "tempo": tempo,
    "hold": duration,
    "distance": distance,
    "velocity": velocity,
    "side": lambda value: value if value in _SIDES else spelt("side", value, str),
}
"""What reads the value of each key, most of all its plain spelling; None where it cannot be read."""

OTHERWISE: dict[str, Callable[[object], object]] = {
    "sets": sets,
    "rounds": lambda value: spelt("roundCount", value, number_or_range),
    "rir": rir,
    "rpe": rpe,
}
"""What reads the other spellings of keys that nearly always hold a number."""

RANGES = frozenset({"sets", "rounds", "reps", "load", "rir", "rpe", "rest", "hold", "distance", "velocity"})
"""Keys whose values may be ranges."""

MOST_KEPT = 2000
"""Values that are kept once they are read; a file says the same few again and again."""


@lru_cache(maxsize=MOST_KEPT, typed=True)
def sound(key: str, plain: object, words: str) -> object:
    """The value of ``words`` that have one plain meaning, of which there is nothing to say; else None."""
    value = READ[key](plain)
    is_ordered = key not in RANGES or "-" not in words or in_order(words) == words
    is_signed = words[:1] in ("+", "-") and key != "load"
    is_odd = getattr(value, "kind", "") == "change" or (key == "tempo" and words[:1] in ("X", "x"))
    if not is_ordered or is_signed or is_odd or (plain == "none" and key in NONE):
        return None
    return None if key in BOUNDED and beyond(key, value) else value
