"""Where sessions take place, and what there is of the equipment."""

from __future__ import annotations

from math import isclose

from ..lint.body.equipment import is_everything, weighs_as
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Edit, Related, found
from ..lint.model.naming import line_name
from ..lint.model.quantities import KG_PER_LB
from ..lint.wording.words import did_you_mean, listed, near_names, plain, says, shortened
from .implements import WITH_PLATES
from .offers import writing_number
from .shared import capital

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Visit
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.kits import Stock
    from ..lint.model.quantities import Load
    from ..lint.text.places import Term
    from .offers import Offer


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
    equipment of spotline.yaml. A note where none of these is nearly called so. Silent on a gym, which has
    everything, and where no athlete is named: then no equipment is checked.

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
            if ledger.header.kit(term.words) is None and not is_everything(term.words):
                unknown.setdefault(term.words, []).append(term)
    for words, (first, *others) in unknown.items():
        near = near_names(words, known, 2)
        shown = shortened(words)
        yield found(
            first.place,
            f"No list says what there is at `{shown}`, so nothing there is checked.",
            severity="warning" if near else "note",
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
    held; plates add up, and the weights of bars are no loads. Silent on what is reckoned, such as 0.9 times
    16 kg, for which people take the nearest; where the name leaves open what is
    lifted, and another piece of the list, a vest too, may have that weight. A note where only a step speaks
    against it, which racks seldom keep to, or half of it is there: below 10 kg nothing is said of a step of
    hand weights. Says nothing of a piece that is listed in words only.

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
        if _is_reckoned(load):
            continue
        stock = visit.programme.stock(entry.implement, visit.at) or _of_the_other(entry, visit)
        if stock is None:
            continue
        said = _not_there(load, stock, entry)
        if said and not _may_be_another(entry, entry.exercise, load, visit.at):
            counted, wanted, change, amount, is_sure = said
            at = f" at {shortened(visit.at)}" if visit.at else ""
            yield found(
                entry.work.places["load"],
                f"{capital(entry.name)}: no {counted}{at}.",
                severity="warning" if is_sure else "note",
                wanted=wanted,
                change=change,
                where=line_name(entry.prescription),
                subject=f"{entry.name}{at}",
                group=f"{entry.name}{at}",
                amount=amount,
                edits=_with_what_there_is(entry, load, stock, amount.counted) if amount else (),
                related=(Related(stock.term.place, "what there is"),),
            )


def _of_the_other(entry: SetGroup, visit: Visit) -> Stock | None:
    """What there is of the other hand weight, where the list has that one alone: kettlebells, no dumbbell."""
    pieces = visit.programme.pieces(visit.at) or ()
    if entry.implement not in HAND_WEIGHTS or any(weighs_as(entry.implement, item) for item in pieces):
        return None
    (other,) = (one for one in HAND_WEIGHTS if one != entry.implement)
    return visit.programme.stock(other, visit.at)


def _is_reckoned(load: Load) -> bool:
    """Whether a load comes of a factor, ``x 0.9``: people take the nearest weight that there is."""
    return load.unit != "lb" and any(not (one.low * 4).is_integer() for one in load.values)


LIGHT = 10.0
"""kg up to which racks of hand weights go up by less than their step (common practice, no source)."""

HAND_WEIGHTS = ("dumbbell", "kettlebell")

NEAR = 0.01
"""The share of the lightest plate by which a load may miss a sum of plates."""

OF_A_KIND = ("fixed", "preset", "preloaded", "pre-loaded")
"""Words for bars whose weight is their load."""


def _not_there(load: Load, stock: Stock, entry: SetGroup) -> tuple[str, str, str, Amount | None, bool] | None:
    """What of a load is not there, what is wanted, what to write, by how much it misses, and whether that is
    sure; None if it is there.
    """
    if load.pieces > 1 and stock.pairs == 0:
        change = "Write a lift that holds one of them."
        return (f"pair of {stock.term.words}", "single ones", change, None, True)
    if stock.weights and (_adds_up(load, stock, entry) or _is_the_bar(stock, entry)):
        return None
    for each in dict.fromkeys(end for value in load.values for end in (value.low, value.high)):
        near = stock.nearest(each)
        by_step = not stock.weights and len(near) > 1
        if not near or (by_step and entry.implement in HAND_WEIGHTS and each < LIGHT):
            continue
        ways = listed([_weight(one, load.unit) for one in near], "or")
        amount = Amount(each, near[0], "kg")
        counted = f"{stock.term.words} of {_weight(each, load.unit)}"
        other = "correct the step" if by_step else "correct the list"
        is_total = load.pieces == 1 and entry.implement in HAND_WEIGHTS and not stock.nearest(each / 2)
        change = f"Write {ways}, or {other} under `equipment`."
        return (counted, _all(stock, load.unit), change, amount, not by_step and not is_total)
    return None


def _adds_up(load: Load, stock: Stock, entry: SetGroup) -> bool:
    """Whether plates of what is listed may come to a load together."""
    lightest = min(stock.weights)
    steps = [end / lightest for value in load.values for end in (value.low, value.high)]
    return entry.implement == "plate" and all(isclose(one, round(one), abs_tol=NEAR) for one in steps)


def _is_the_bar(stock: Stock, entry: SetGroup) -> bool:
    """Whether the weights are those of bars, on which plates go."""
    return entry.implement in WITH_PLATES and not says(OF_A_KIND, stock.term.words)


def _may_be_another(entry: SetGroup, exercise: Exercise, load: Load, at: str) -> bool:
    """Whether a load may be meant of another piece that is there, as the name says none."""
    from ..lint.body import equipment
    from ..lint.body.other_forms import HELD, implements_of, is_worn

    if equipment.is_said(entry.implement, entry.name):
        return False
    known = {one.term.words: one for one in entry.programme.stocks(at)}
    forms = {*implements_of(exercise, entry.name), *(HELD if entry.implement in HELD else ())}
    forms.discard(entry.implement)
    pieces = forms & {*HELD, *WITH_PLATES} if load.pieces == 1 else forms & set(HAND_WEIGHTS)
    for term in entry.programme.listed(at):
        other = known.get(term.words)
        serves = any(equipment.weighs_as(piece, term.words) for piece in pieces)
        if (serves or is_worn(term.words)) and (other is None or _has(other, load)):
            return True
    return False


def _has(stock: Stock, load: Load) -> bool:
    """Whether there is all of a load, as far as is said."""
    if load.pieces > 1 and stock.pairs == 0:
        return False
    return not any(stock.nearest(end) for value in load.values for end in (value.low, value.high))


def _with_what_there_is(entry: SetGroup, load: Load, stock: Stock, each: float) -> Offer:
    """The nearest weights, in the unit of the line; not what would make a range of one weight twice."""
    held = {end for value in load.values for end in (value.low, value.high)}
    factor = 1 / KG_PER_LB if load.unit == "lb" else 1.0
    numbers = [_in_unit(one, load.unit) for one in stock.nearest(each) if one not in held]
    return writing_number(entry.work.places["load"], round(each * factor, 3), numbers)


def _in_unit(kilograms: float, unit: str) -> float:
    """A weight in the unit of the line, in lb as they are told."""
    return round(kilograms / KG_PER_LB, 1) if unit == "lb" else kilograms


def _weight(kilograms: float, unit: str) -> str:
    return f"{plain(_in_unit(kilograms, unit))} {unit}"


def _all(stock: Stock, unit: str) -> str:
    """``8, 12 or 16 kg``, ``up to 24 kg in steps of 2 kg``: what there is."""
    if stock.weights:
        return listed([_weight(one, unit) for one in stock.weights], "or")
    said = (("from", stock.least), ("up to", stock.most), ("in steps of", stock.step))
    return " ".join(f"{word} {_weight(one, unit)}" for word, one in said if one is not None)
