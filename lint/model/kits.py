"""Equipment with what there is of it, the places that have it, and where sessions take place.

Nothing here is needed for a plain list of equipment, so that other modules import it only when it is.
"""

from __future__ import annotations

from ..findings.finding import Edit
from ..schemas.readings import RULE
from ..syntax.tree import Mapping, Sequence
from ..text.places import Term
from . import quantities
from .quantities import KG_PER_LB, Range
from .sessions import WEEKDAYS
from .values import LocatedNode, Reader, equipment_of, items_of, term_of
from .weeks import weekday, weeks
from .where import Where

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..text.places import Place

NEAR = 0.01
"""The share by which a load may miss a weight and still mean it: bells in kg and lb differ by as much."""


class Stock:
    """What there is of a piece of equipment (``term``).

    Either ``weights``, in kg and in order, or a range from ``least`` to ``most`` by ``step``, in kg; None
    where it is not said. ``pairs`` says how many pairs there are of each, 0 for single ones; ``shared`` how
    many people share it.
    """

    __slots__ = ("least", "most", "pairs", "shared", "step", "term", "weights")

    def __init__(self, term: Term) -> None:
        self.term = term
        self.weights: tuple[float, ...] = ()
        self.least: float | None = None
        self.most: float | None = None
        self.step: float | None = None
        self.pairs: int | None = None
        self.shared: int | None = None

    def nearest(self, kilograms: float) -> tuple[float, ...]:
        """The next weights below and above one that is not there, in kg; empty where it is there."""
        known = self.weights or tuple(self._in_range(kilograms))
        if not known or any(abs(one - kilograms) <= NEAR * kilograms for one in known):
            return ()
        below = max((one for one in known if one < kilograms), default=None)
        above = min((one for one in known if one > kilograms), default=None)
        return tuple(one for one in (below, above) if one is not None)

    def _in_range(self, kilograms: float) -> Iterator[float]:
        """The weights of the range around one; that one itself where the range has no step there."""
        least, most = self.least or 0.0, self.most
        if self.least is not None and kilograms < least:
            yield least
        elif most is not None and kilograms > most:
            yield most
        elif self.step:
            start = least if self.least is not None else self.step
            below = start + (kilograms - start) // self.step * self.step
            yield from (one for one in (below, below + self.step) if one > 0 and one <= (most or one))

    def after(self, kilograms: float) -> float | None:
        """The next heavier weight there is, in kg; None where it is not said, or there is none."""
        if self.weights:
            return min((one for one in self.weights if one > kilograms * (1 + NEAR)), default=None)
        return kilograms + self.step if self.step else None


class Kit:
    """A list of equipment: the words of its pieces, and what there is of those that say it."""

    __slots__ = ("name", "stocks", "terms")

    def __init__(self, name: Term, terms: tuple[Term, ...], stocks: tuple[Stock, ...]) -> None:
        self.name = name
        self.terms = terms
        self.stocks = stocks


def read_kits(reader: Reader, at: LocatedNode | None) -> tuple[Kit, ...]:
    """Lists of equipment by the names of their places."""
    pairs = () if at is None else at.pairs()
    return tuple(read_kit(reader, Term(name, place), value) for name, place, value in pairs)


def read_kit(reader: Reader, name: Term, at: LocatedNode) -> Kit:
    """A list of equipment: words, or a piece with what there is of it."""
    terms: list[Term] = []
    stocks: list[Stock] = []
    for item in items_of(at):
        if isinstance(item.node, Mapping):
            for words, place, value in item.pairs():
                term = Term(words, place)
                terms.append(term)
                stocks.append(_stock(reader, term, value))
        elif item.words and isinstance(at.node, Sequence):
            terms.append(term_of(item))
    return Kit(name, tuple(terms) or equipment_of(at), tuple(stocks))


def _stock(reader: Reader, term: Term, at: LocatedNode) -> Stock:
    stock = Stock(term)
    listed = at if isinstance(at.node, Sequence) else at.get("weights")
    if listed is not None:
        stock.weights = _weights(reader, term, listed)
    stock.least, stock.most, stock.step = (_mass(reader, at.get(key)) for key in ("from", "up to", "step"))
    stock.pairs, stock.shared = (_whole(at.get(key)) for key in ("pairs", "shared by"))
    if stock.step == 0:
        reader.beyond(at.get("step") or at, "more than 0 kg")
        stock.step = None
    if stock.least is not None and stock.most is not None and stock.most < stock.least:
        most = at.get("up to") or at
        reader.report(
            "range-backwards",
            most.place,
            f"`{term.words}` end at {most.words}, before they begin; neither end was read.",
            change="Correct one of the two.",
        )
        stock.least = stock.most = None
    return stock


def _mass(reader: Reader, at: LocatedNode | None) -> float | None:
    known = None if at is None else quantities.mass(at.plain)
    if at is None or known is None or not reader.within("implement", at, Range(known, known)):
        return None
    return known


def _whole(at: LocatedNode | None) -> int | None:
    value = None if at is None else at.plain
    return value if isinstance(value, int) and not isinstance(value, bool) else None


def _weights(reader: Reader, term: Term, at: LocatedNode) -> tuple[float, ...]:
    """``8, 12, 16 kg`` in kg: a number takes the unit of the next weight that has one."""
    unit = 0.0
    weights: list[float] = []
    bare: LocatedNode | None = None
    for item in reversed(at.items()):
        mass = _mass(reader, item)
        if mass is not None:
            unit = KG_PER_LB if "lb" in item.words.lower() or "pound" in item.words.lower() else 1.0
            weights.append(mass)
        elif isinstance(item.plain, (int, float)) and not isinstance(item.plain, bool):
            if unit:
                weights.append(float(item.plain) * unit)
            else:
                bare = bare or item
    if bare is not None:
        ways = [f"{bare.words} {one}" for one in ("kg", "lb")]
        reader.report(
            RULE,
            bare.place,
            f"{bare.words} of `{term.words}` is without kg or lb.",
            change=f"Write `{ways[0]}` or `{ways[1]}`.",
            edits=tuple(Edit(bare.place, way, f"write {way}") for way in ways),
        )
    return tuple(sorted(weights))


def read_where(reader: Reader, at: LocatedNode, last: int, start_weekday: int) -> Where:
    """A place, or places by week or by weekday; weeks that no key names are left to what is written above.

    ``last`` is the last week that there is, ``start_weekday`` the weekday of day 1, 0 for Monday.
    """
    if not isinstance(at.node, Mapping):
        return Where(((1, last, 0, term_of(at)),) if at.words else ())
    parts: list[tuple[int, int, int, Term]] = []
    taken: dict[tuple[str, int], str] = {}
    others: list[tuple[int, int, int, Term]] = []
    for key, place, value in at.pairs():
        if key == "other":
            others.append((1, last, 0, term_of(value)))
            continue
        spans, name = weeks(key), weekday(key)
        for first, end in spans:
            if end > last:
                reader.report(
                    "weeks-beyond",
                    place,
                    f"{key} goes past week {last}, the last one here.",
                    change="Correct the weeks, or the length of the block or programme.",
                )
            parts.append((first, min(end, last), 0, term_of(value)))
        if name is not None:
            parts.append((1, last, (WEEKDAYS.index(name) - start_weekday) % 7 + 1, term_of(value)))
        _claim(reader, place, key, spans, name, last, taken)
    return Where((*parts, *others))


def _claim(
    reader: Reader,
    place: Place,
    key: str,
    spans: tuple[tuple[int, int], ...],
    name: str | None,
    last: int,
    taken: dict[tuple[str, int], str],
) -> None:
    """Notes which weeks or which weekday a key takes; says where two keys take the same."""
    wanted = [("week", week) for first, end in spans for week in range(first, min(end, last) + 1)]
    if name is not None:
        wanted.append(("day", WEEKDAYS.index(name)))
    twice = next((one for one in wanted if one in taken), None)
    kind = wanted[0][0] if wanted else ""
    if twice is not None:
        reader.report(
            "weeks-overlap",
            place,
            f"{'Week ' + str(twice[1]) if kind == 'week' else WEEKDAYS[twice[1]].capitalize()} stands under"
            f" {taken[twice]} and under {key}.",
            change="Give each one place.",
        )
    elif kind and any(other != kind for other, _ in taken):
        reader.report(
            "weeks-overlap",
            place,
            f"Weeks and weekdays stand side by side: {next(iter(taken.values()))} and {key} meet.",
            change="Write `where` by week or by weekday, or on the sessions.",
        )
    taken.update(dict.fromkeys(wanted, key))
