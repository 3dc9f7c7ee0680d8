"""Values that can be read in two ways on the lift that they stand on."""

from __future__ import annotations

import re

from ..lint.counting.effort import FAST_KINDS
from ..lint.counting.load_shares import kilograms_of
from ..lint.engine.registry import rule
from ..lint.findings.finding import Edit, found
from ..lint.model.naming import line_name
from ..lint.wording.words import plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.quantities import Load, Range
    from ..lint.text.places import Place

_PRESSES = ("horizontal push", "vertical push")
"""Patterns that two dumbbells are pressed in, one in each hand."""


@rule(
    "read-two-ways",
    family="upkeep",
    severity="warning",
    confidence="common practice",
    why="What two people read in two ways is done in two ways.",
    sources=(),
    asks=True,
)
def read_two_ways(entry: SetGroup, limits: Limits) -> Iterator[DraftFinding]:
    """A value that can be read in two ways on this lift.

    Five kinds: 8/8 in two sets of a lift for one side at a time (a number for each set, or for each side);
    +10 kg on what is not lifted with the body (more than last time, or added to body weight); a hold
    on a jump or throw without repetitions (held, or gone on with by the clock); a load in two figures that
    are more than one plate apart, as 80 % (150 kg) where the best on file is 200 kg; and, as a note, one
    weight for two dumbbells (each, or both together), unless there is none of half the weight. Wants what is
    meant, and offers each as an edit.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: split squat, sets: 2, reps: 8/8}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: split squat, sets: 2, reps: 8 each}
    """
    exercise, work = entry.exercise, entry.work
    in_pairs = work.reps is not None and len(work.reps.sets) == 2
    if exercise is None or not (work.load or work.hold or in_pairs):
        return
    for ask in (_each_side, _added_weight, _held_jump, _two_figures, _pair_of_dumbbells):
        draft = ask(entry, exercise)
        if draft is not None:
            yield draft


def _each_side(entry: SetGroup, exercise: Exercise) -> DraftFinding | None:
    """``8/8`` in two sets on a lift for one side at a time."""
    reps = entry.work.reps
    if reps is None or not exercise.unilateral or entry.work.side:
        return None
    if len(reps.sets) != 2 or reps.sets[0] != reps.sets[1] or str(entry.work.sets) != "2":
        return None
    one = str(reps.sets[0])
    meanings = {f"{one} each": f"{one} for each side", one: f"{one} in each of the two sets, as it was read"}
    return _asked(entry, entry.work.places["reps"], meanings)


def _added_weight(entry: SetGroup, exercise: Exercise) -> DraftFinding | None:
    """``+10 kg`` on what is not lifted with the body."""
    load = entry.work.load
    if load is None or load.kind != "bodyweight" or entry.implement in ("", "bodyweight"):
        return None
    place = entry.work.places["load"]
    signed = re.match(r"['\"]?([+\u2010-\u2015\u2212-])", place.excerpt)
    if signed is None:
        return None
    weight = load.words.removeprefix("bodyweight").lstrip(" +-")
    more = "more" if signed[1] == "+" else "less"
    return found(
        place,
        f"`{place.excerpt}` on {entry.name} has two readings: {weight} {more} than last time, or"
        f" {load.words}.",
        change=f"Write the whole load in kg, or `{load.words}`.",
        where=line_name(entry.prescription),
        edits=(
            *_as_a_note(entry, place, f"{weight} {more} than last time"),
            Edit(place, load.words, f"write {load.words}"),
        ),
    )


def _as_a_note(entry: SetGroup, place: Place, words: str) -> tuple[Edit, ...]:
    """What is no load said in a note instead of it, where the line has none."""
    key = re.search(r"load:[ \t]*$", re.split("[\r\n]", place.text.content[: place.start])[-1])
    if key is None or entry.prescription.note:
        return ()
    return (Edit(place.from_before(len(key[0])), f"note: {words}", f"write note: {words}"),)


def _held_jump(entry: SetGroup, exercise: Exercise) -> DraftFinding | None:
    """A hold on a jump or throw that has no repetitions."""
    if entry.work.reps is not None or exercise.kind not in FAST_KINDS:
        return None
    place = entry.work.places.get("hold")
    if place is None:
        return None
    held = f"hold: {place.excerpt}"
    return found(
        place,
        f"`{held}` on {entry.name} has two readings: as many as come in that time, or a position held at the"
        " end.",
        change=f"Write `reps: {place.excerpt}`, or `reps` beside the hold.",
        where=line_name(entry.prescription),
        edits=_held_jump_edits(place, held),
    )


def _held_jump_edits(place: Place, held: str) -> tuple[Edit, ...]:
    """Both readings, where the key stands right before its value."""
    line = re.split("[\r\n]", place.text.content[: place.start])[-1]
    key = re.search(r"hold:[ \t]*$", line)
    if key is None:
        return ()
    whole = place.from_before(len(key[0]))
    indent = line.removesuffix(key[0])
    between = ", " if indent.strip(" -") else "\n" + " " * len(indent)
    timed = f"reps: {place.excerpt}"
    return (
        Edit(whole, timed, f"write {timed}: by the clock"),
        Edit(whole, f"reps: 1{between}{held}", f"write reps: 1 and {held}: held at the end"),
    )


ONE_PLATE = 2.5
"""kg by which a load may be rounded: the smallest pair of plates that most gyms have (common practice)."""


def _two_figures(entry: SetGroup, exercise: Exercise) -> DraftFinding | None:
    """``80 % (150 kg)`` where 80 % of the best on file is 160 kg."""
    load = entry.work.load
    if load is None or load.beside is None or load.kind != "mass" or load.span is None:
        return None
    shares = _in_kilograms(entry, load.beside)
    if shares is None or shares.low - ONE_PLATE <= load.span.middle <= shares.high + ONE_PLATE:
        return None
    share = load.beside.words
    kilograms = load.words.replace(share, "").strip(" ()")
    meant = f"{share}, which is {plain(round(shares.middle, 1))} kg of the best on file"
    return _asked(entry, entry.work.places["load"], {kilograms: f"{kilograms}, as it was read", share: meant})


def _in_kilograms(entry: SetGroup, share: Load) -> Range | None:
    """What a share of a best lift comes to; None where it is not known."""
    if share.span is None:
        return None
    if share.kind == "lift":
        return kilograms_of(entry.programme, entry.prescription, share, share.span)
    return entry.kilograms_at(share.span * (1 if share.whole == "1RM" else entry.counted_from / 100))


def _pair_of_dumbbells(entry: SetGroup, exercise: Exercise) -> DraftFinding | None:
    """One weight where two dumbbells are pressed."""
    load = entry.work.load
    if load is None or load.kind != "mass" or load.pieces > 1 or len(load.values) != 1:
        return None
    if (
        entry.implement != "dumbbell"
        or exercise.unilateral
        or exercise.pattern not in _PRESSES
        or entry.work.side
    ):
        return None
    if load.span is not None and _is_none_of(load.span.low / 2, entry):
        return None  # so it is the weight of each
    words = load.words
    half = re.sub("[0-9]+(?:[.][0-9]+)?", lambda one: plain(float(one[0]) / 2), words)
    meanings = {f"2 x {words}": f"{words} in each hand", f"2 x {half}": f"{words} in both hands together"}
    return _asked(entry, entry.work.places["load"], meanings, note=True)


def _is_none_of(kilograms: float, entry: SetGroup) -> bool:
    """Whether the list of equipment says which dumbbells there are, and none has this weight."""
    if entry.prescription.session.held_at is not None:
        return False
    stock = entry.programme.stock("dumbbell", entry.programme.usual_place)
    return stock is not None and bool(stock.nearest(kilograms))


def _asked(entry: SetGroup, place: Place, meanings: dict[str, str], *, note: bool = False) -> DraftFinding:
    """The finding that names both readings, each with what to write for it."""
    return found(
        place,
        f"`{place.excerpt}` on {entry.name} has two readings: {', or '.join(meanings.values())}.",
        change=f"Write {' or '.join(f'`{words}`' for words in meanings)}.",
        where=line_name(entry.prescription),
        edits=tuple(Edit(place, words, f"write {words}") for words in meanings),
        severity="note" if note else "warning",
    )
