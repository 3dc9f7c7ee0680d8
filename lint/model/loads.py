"""Loads that say more than a number and its unit: "65 % of squat", "90 % of 5RM", "80 % (160 kg)".

They are rare, so that `quantities` imports this module only where one is written.
"""

from __future__ import annotations

import re

from .amounts import Load, Range, number_or_range, percentage, read_mass

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    Read = Callable[[str], Load | None]
    """Reads a load in its plain spelling."""

ROUGH = ("about", "from", "up to")
"""Words before a load that is counted as its number says, and shown with the word."""


def share(words: str, low: str, read: Read) -> Load | None:
    """A load with a percentage in it that says of what, or that stands beside another figure."""
    if low.endswith(")"):
        return _two_figures(words, read)
    figures, _, rest = words.partition("%")
    of = rest.strip()
    if of.lower().startswith("bodyweight"):
        return _of_body_mass(words, f"{figures}%", of[len("bodyweight") :].strip(), read)
    of = of.removeprefix("of ").strip()
    if of.lower() == "top set":
        return percentage("top set", words, f"{figures}%")
    if re.match(_OTHERWISE_SPELT, of, re.IGNORECASE):
        return None
    is_rm = re.fullmatch("[0-9]+(?:-[0-9]+)?RM", of)
    known = percentage("percent" if of == "1RM" else "rm share" if is_rm else "lift", words, f"{figures}%")
    if known is not None:
        known.whole = of
    return known if of else None


_OTHERWISE_SPELT = "(?:the|my|your|his|her|bw|body|max|1 |top|[0-9]+ )"
"""How what a share is of begins where it may be no lift, or has a plainer spelling."""


def _of_body_mass(words: str, figures: str, rest: str, read: Read) -> Load | None:
    """``20 % bodyweight``, and what is carried on top of that: ``20 % bodyweight + 5 kg``."""
    known = percentage("share", words, figures)
    if known is None or not rest:
        return known
    added = read(rest[1:].strip())
    if rest[0] not in "+-" or added is None or added.kind != "mass" or added.span is None:
        return None
    known.added = added.span.middle if rest[0] == "+" else -added.span.middle
    known.unit = added.unit
    return known


def _two_figures(words: str, read: Read) -> Load | None:
    """``80 % (160 kg)``, ``15RM (60 %)``: the same load twice; kilograms win, then the RM."""
    first, _, second = words.removesuffix(")").partition("(")
    pair = [read(first.strip()), read(second.strip())]
    main = next((one for one in pair if one is not None and one.kind in ("mass", "rm")), None)
    other = next((one for one in pair if one is not None and one.kind in ("percent", "lift")), None)
    if main is None or other is None:
        return None
    known = Load(main.kind, main.values, words, unit=main.unit, pieces=main.pieces)
    known.whole, known.beside = main.whole, other
    return known


def added_or_rough(words: str, low: str, read: Read) -> Load | None:
    """``+5 kg``, ``-12 %``, added to another load; or ``about 70 %``, ``from 85 %``, ``up to 60 kg``."""
    if low[0] not in "+-":
        return _roughly(words, read)
    added = percentage("change", words, low[1:]) if low.endswith("%") else read_mass(words, low[1:])
    if added is None:
        return None
    sign = 1.0 if low[0] == "+" else -1.0
    return Load("change", (_signed(added.values[0], sign),), words, unit=added.unit or "%")


def _roughly(words: str, read: Read) -> Load | None:
    rough = next(one for one in ROUGH if words.lower().startswith(f"{one} "))
    known = read(words[len(rough) :].strip())
    if known is None:
        return None
    found = Load(known.kind, known.values, words, unit=known.unit)
    found.whole, found.rough, found.added = known.whole, rough, known.added
    return found


def on_bodyweight(words: str, rest: str) -> Load | None:
    """``bodyweight + 10 kg``, ``bodyweight - 20 kg``."""
    sign = {"+": 1.0, "-": -1.0}.get(rest[0])
    added = read_mass(words, rest[1:].strip())
    if sign is None or added is None:
        return None
    return Load("bodyweight", tuple(_signed(one, sign) for one in added.values), words, unit=added.unit)


def _signed(one: Range, sign: float) -> Range:
    ends = (one.low * sign, one.high * sign)
    return Range(min(ends), max(ends))


def repetitions_of(load: Load) -> Range | None:
    """The repetitions of the maximum that a load is a share of: 5 for ``90 % of 5RM``."""
    return number_or_range(load.whole.removesuffix("RM"))
