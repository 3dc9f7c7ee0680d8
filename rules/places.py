"""Where sessions take place, and what there is of the equipment."""

from __future__ import annotations

from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Edit, Related, found
from ..lint.model.naming import line_name
from ..lint.model.quantities import KG_PER_LB
from ..lint.wording.words import did_you_mean, listed, near_names, plain, shortened
from .shared import capital

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.tally import Visit
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.kits import Stock
    from ..lint.model.quantities import Load
    from ..lint.text.places import Term


@rule(
    "place-unknown",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="What there is at a place that no list has is not known: nothing done there is checked against it.",
    sources=(),
)
def place_unknown(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A place whose equipment neither the athlete's file nor the settings list.

    Looks up every word under `where`; wants it among the athlete's `places`, or among the `places` or sets of
    equipment of spotline.yaml. A note where no place is listed at all. Silent where no athlete is named: then
    no equipment is checked.

    Flags:
        programme: Travel
        athlete: {name: Ida, equipment: [barbell, rack], places: {hotel: [dumbbells]}}
        sessions:
          - session: Full body
            where: hostel  # <- here
            exercises: [{exercise: goblet squat, sets: 3, reps: 10}]

    Passes:
        programme: Travel
        athlete: {name: Ida, equipment: [barbell, rack], places: {hotel: [dumbbells]}}
        sessions:
          - session: Full body
            where: hotel
            exercises: [{exercise: goblet squat, sets: 3, reps: 10}]
    """
    if ledger.athlete is None:
        return
    known = [kit.name.words for kit in (*ledger.athlete.kits, *ledger.resources.kits)]
    unknown: dict[str, list[Term]] = {}
    for where in ledger.programme.wheres():
        for _, _, _, term in where.parts:
            if ledger.header.kit(term.words) is None:
                unknown.setdefault(term.words, []).append(term)
    for words, (first, *others) in unknown.items():
        near = near_names(words, known, 2)
        shown = shortened(words)
        yield found(
            first.place,
            f"No list says what there is at `{shown}`, so nothing there is checked.",
            severity="warning" if known else "note",
            change=f"{did_you_mean(near)} Else list it under `places`."
            if near
            else f"Write `places: {{{shown}: [dumbbells, bench]}}` in the athlete file or spotline.yaml.",
            where="where",
            subject=words,
            related=tuple(Related(one.place, f"`{shown}` again") for one in others),
            edits=tuple(Edit(first.place, name, f"write {name}", certain=False) for name in near),
        )


@rule(
    "weight-not-there",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="The list of equipment says which weights there are, and this is none of them.",
    sources=(),
)
def weight_not_there(visit: Visit, limits: Limits) -> Iterator[DraftFinding]:
    """A load that the equipment of the place does not have.

    Takes each load in kg or lb, one of a pair at a time, and what the list says there is of its implement:
    weights, or a range with a step. Wants one of these weights, within 1 in 100, and pairs where two are
    held. Says nothing of a piece that is listed in words only.

    Flags:
        programme: At home
        athlete: {name: Ida, equipment: [{kettlebells: [8, 12, 16 kg]}]}
        sessions:
          - session: Home
            exercises: [{exercise: kettlebell swing, sets: 3, reps: 15, load: 20 kg}]  # <- here

    Passes:
        programme: At home
        athlete: {name: Ida, equipment: [{kettlebells: [8, 12, 16 kg]}]}
        sessions:
          - session: Home
            exercises: [{exercise: kettlebell swing, sets: 3, reps: 15, load: 16 kg}]
    """
    for entry in visit.own:
        load = entry.work.load
        if load is None or load.kind != "mass" or entry.exercise is None or not entry.is_done:
            continue
        stock = visit.programme.stock(entry.implement, visit.at)
        if stock is not None and (said := _not_there(load, stock)):
            counted, wanted, change, amount = said
            at = f" at {shortened(visit.at)}" if visit.at else ""
            yield found(
                entry.work.places["load"],
                f"{capital(entry.name)}: no {counted}{at}.",
                wanted=wanted,
                change=change,
                where=line_name(entry.prescription),
                subject=f"{entry.name}{at}",
                group=f"{entry.name}{at}",
                amount=amount,
                related=(Related(stock.term.place, "what there is"),),
            )


def _not_there(load: Load, stock: Stock) -> tuple[str, str, str, Amount | None] | None:
    """What of a load is not there, what is wanted, what to write, by how much it misses; None if it is."""
    if load.pieces > 1 and stock.pairs == 0:
        return (f"pair of {stock.term.words}", "single ones", "Write a lift that holds one of them.", None)
    for each in dict.fromkeys(end for value in load.values for end in (value.low, value.high)):
        near = stock.nearest(each)
        if near:
            ways = listed([_weight(one, load.unit) for one in near], "or")
            amount = Amount(each, near[0], "kg")
            counted = f"{stock.term.words} of {_weight(each, load.unit)}"
            return (counted, _all(stock, load.unit), f"Write {ways}.", amount)
    return None


def _weight(kilograms: float, unit: str) -> str:
    """A weight in the unit of the line."""
    if unit == "lb":
        return f"{plain(round(kilograms / KG_PER_LB, 1))} lb"
    return f"{plain(round(kilograms, 2))} kg"


def _all(stock: Stock, unit: str) -> str:
    """``8, 12 or 16 kg``, ``up to 24 kg in steps of 2 kg``: what there is."""
    if stock.weights:
        return listed([_weight(one, unit) for one in stock.weights], "or")
    said = (("from", stock.least), ("up to", stock.most), ("in steps of", stock.step))
    return " ".join(f"{word} {_weight(one, unit)}" for word, one in said if one is not None)
