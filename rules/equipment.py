"""Equipment that the athlete's list lacks, and stations that too many need at once."""

from __future__ import annotations

from ..lint.body import catalogue, equipment
from ..lint.engine.limits import Length, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Edit, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import did_you_mean, first_of, listed, shortened
from .kit_words import is_written, not_noted, not_small, said_absent
from .offers import listing_pieces, offering, swapping_each
from .shared import MOST_SUGGESTED, capital, is_added

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger, Lifter
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.sessions import Prescription

    Lacking = dict[Prescription, tuple[SetGroup, Exercise, tuple[str, ...]]]
    """Lines with what they take that is not there."""


ANCHOR = "rack"
"""The piece that a band is tied to, where it takes one."""


# Equipment and room


@rule(
    "equipment-unknown",
    family="upkeep",
    severity="note",
    confidence="fact",
    why="Equipment by a name that nobody knows is as good as none: what exercises take is called missing.",
    sources=(),
)
def equipment_unknown(lifter: Lifter, limits: Limits) -> Iterator[DraftFinding]:
    """A piece of equipment in the athlete's file that is spelt nearly like a known one.

    Looks up every item in whatever usual word; lets the names of the team's sets of equipment pass, and words
    that are like none. Offers the pieces that may be meant.

    Flags:
        programme: At home
        athlete:
          name: Ida
          equipment: [dumbels, calf raise machine]  # <- here
        sessions: [{session: Home, exercises: [{exercise: goblet squat, sets: 3, reps: 8}]}]

    Passes:
        programme: At home
        athlete:
          name: Ida
          equipment: [dumbbells, calf raise machine]
        sessions: [{session: Home, exercises: [{exercise: goblet squat, sets: 3, reps: 8}]}]
    """
    listed_here = [(term, "equipment") for term in lifter.athlete.equipment]
    listed_here += [(term, kit.name.words) for kit in lifter.athlete.kits for term in kit.terms]
    unknown = [
        (term, where)
        for term, where in listed_here
        if term.words not in lifter.resources.equipment and not equipment.is_known(term.words)
    ]
    for term, where in unknown[:MOST_SUGGESTED]:
        near = equipment.like(term.words)
        if near:
            yield found(
                term.place,
                equipment.unknown(term.words),
                change=did_you_mean(near),
                where=f"{lifter.athlete.name}, {where}",
                edits=tuple(Edit(term.place, other, f"write {other}") for other in near),
            )


@rule(
    "equipment-missing",
    family="upkeep",
    severity="note",
    confidence="fact",
    why="The athlete's file lists what there is to train with, and this is not on the list.",
    sources=(),
    options=(
        Option(
            "always there",
            equipment.ALWAYS_THERE,
            "pieces that nobody needs to list",
            "common practice",
        ),
        Length("offered", 2, "exercises offered instead of one", "common practice"),
    ),
)
def equipment_missing(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """An exercise that takes equipment which the athlete's list lacks.

    Compares the implement and stations of every exercise with the list, the team's sets by name spelled out;
    wants each on it, in whatever usual word, or an alternative under `or` that needs no more than the list.
    Says nothing where the athlete lists no equipment, nor of what another athlete of the programme lists, nor
    where another form of the lift, which its name allows and its load too, takes what there is: a lunge with
    a band, a dumbbell press standing up. Only a piece whose own word stands in the line is missed, in the
    name, the load or a note: a barbell in `barbell curl`, the machine in `leg press`; a squat may be done
    with whatever there is. So is one that a note says is not there: `nothing to hang off`. Silent too where
    an item of the list is not known, where a note of the athlete, the programme or the session names the
    piece, or says that the room has everything; of small pieces such as a bench or a band where the list
    names a rack, as lists of a weight room leave them out; and where something stands in: a bed for a bench,
    a table to row under, a rucksack, handles or jugs for what is carried. One finding for each place, with
    all its lines; where a session takes place somewhere else (`where`), the list of that place counts.

    Flags:
        programme: At home
        athlete: {name: Ida, equipment: [dumbbells, flat bench]}
        sessions:
          - session: Home
            exercises:
              - {exercise: dumbbell bench press, sets: 3, reps: 10}
              - {exercise: barbell back squat, sets: 3, reps: 10}  # <- here

    Passes:
        programme: At home
        athlete: {name: Ida, equipment: [dumbbells, flat bench]}
        sessions:
          - session: Home
            exercises:
              - {exercise: dumbbell bench press, sets: 3, reps: 10}
              - {exercise: goblet squat, sets: 3, reps: 10}
    """
    for at, lacking in lacking_at(ledger, limits):
        if lacking:
            yield _missing(ledger, limits, at, lacking)


def lacking_at(ledger: Ledger, limits: Limits) -> Iterator[tuple[str, Lacking]]:
    """Each place whose equipment is listed, and the lines that take what it lacks."""
    always = limits.names("always there")
    for at in dict.fromkeys(visit.at for visit in ledger.visits):
        own = ledger.header.pieces(at)
        if own is None or not all(map(equipment.is_known, own)):
            continue
        listed_pieces = own if at else own | _of_the_others(ledger)
        lacking: Lacking = {}
        for visit, entry in ((visit, entry) for visit, entry in ledger.entries() if visit.at == at):
            exercise = entry.exercise
            if exercise is None or not entry.is_done:
                continue
            implement = _lifted(entry, exercise)
            pieces = equipment.missing(exercise, listed_pieces, always, implement)
            if not pieces:
                continue
            pieces = _not_improvised(pieces, entry, exercise, implement, listed_pieces)
            absent = said_absent(pieces, ledger, visit)
            pieces = tuple(piece for piece in pieces if is_written(piece, entry))
            pieces = absent or not_noted(not_small(pieces, listed_pieces), ledger, visit)
            if pieces and not (
                _can_be_had(entry, exercise, listed_pieces, always)
                or _may_be_meant(pieces, entry, listed_pieces)
                or _has_another_form(pieces, entry, exercise, listed_pieces, always)
            ):
                lacking.setdefault(entry.prescription, (entry, exercise, pieces))
        yield at, lacking


def _of_the_others(ledger: Ledger) -> frozenset[str]:
    """What those hold who train by the same sessions: they share a room."""
    sets = ledger.header.resources.equipment
    terms = [term for one in ledger.programme.members for term in one.athlete.equipment]
    return frozenset(piece.casefold() for term in terms for piece in sets.get(term.words, (term.words,)))


def _missing(ledger: Ledger, limits: Limits, at: str, lacking: Lacking) -> DraftFinding:
    from ..lint.counting.suggestions import substitutes

    always = limits.names("always there")
    (first, _, _), *others = lacking.values()
    taking: dict[tuple[str, ...], dict[str, Exercise]] = {}
    for entry, exercise, pieces in lacking.values():
        taking.setdefault(pieces, {})[_called(entry, exercise)] = exercise
    most = int(limits.number("offered"))
    instead = {
        exercise: substitutes(ledger.header, exercise, most, always, at)
        for exercise in dict.fromkeys(exercise for _, exercise, _ in lacking.values())
    }
    offered = {
        name: " or ".join(instead[exercise])
        for exercises in taking.values()
        for name, exercise in exercises.items()
    }
    wanted = _in_words(piece for pieces in taking for piece in pieces)
    lacks = f"at {shortened(at)}: {_what_lacks(taking)}" if at else _what_lacks(taking)
    return found(
        first.work.places["exercise"],
        f"{capital(lacks)}.",
        wanted="exercises for what is there",
        change=f"{_swaps(offered)}, or write {wanted} under `{shortened(at) or 'equipment'}`.",
        where=line_name(first.prescription),
        subject=f"{wanted} at {at}" if at else wanted,
        weeks=tuple(week.number for week in ledger.weeks if any(visit.at == at for visit in week.visits))
        if at
        else (),
        edits=offering(
            swapping_each(
                [(one.work.places["exercise"], instead[other]) for one, other, _ in lacking.values()]
            ),
            listing_pieces(ledger.header, taking, at),
        ),
        related=tuple(
            Related(
                entry.work.places["exercise"],
                f"{line_name(entry.prescription)}: takes {_in_words(pieces)} too"
                f"{_instead(offered[_called(entry, exercise)])}",
            )
            for entry, exercise, pieces in others
        ),
    )


def _not_improvised(
    pieces: tuple[str, ...], entry: SetGroup, exercise: Exercise, implement: str, items: Collection[str]
) -> tuple[str, ...]:
    """The pieces for which nothing stands in that the list, the name or a note says.

    A seat for the body alone or against a band, and something that a band is tied to, are there nearly
    everywhere; and where there is a guided bar, a barbell may mean that one.
    """
    from ..lint.body.improvised import is_a_seat, serves

    texts = _texts(entry, items)
    if implement in ("bodyweight", "band"):
        pieces = tuple(piece for piece in pieces if not is_a_seat(piece))
    is_any_bar = not equipment.is_said("barbell", entry.name)
    if is_any_bar and any(equipment.is_said("guided bar", item) for item in items):
        pieces = tuple(piece for piece in pieces if piece not in ("barbell", "rack"))
    if implement == "band":
        pieces = tuple(piece for piece in pieces if piece != ANCHOR)
    return tuple(piece for piece in pieces if not serves(piece, exercise, texts))


def _can_be_had(entry: SetGroup, exercise: Exercise, items: Collection[str], always: Collection[str]) -> bool:
    """Whether an alternative that is named, what a note says instead, or an ankle weight is there."""
    from ..lint.body.other_forms import is_noted, with_ankle_weights

    return (
        _another_will_do(entry, items, always)
        or is_noted(exercise, entry.name, entry.prescription.note, items, always)
        or with_ankle_weights(exercise, _most(entry), items)
    )


def _has_another_form(
    pieces: tuple[str, ...],
    entry: SetGroup,
    exercise: Exercise,
    items: Collection[str],
    always: Collection[str],
) -> bool:
    from ..lint.body.other_forms import is_done_otherwise

    return is_done_otherwise(exercise, entry.name, pieces, items, always, _carried_by(entry, items))


def _carried_by(entry: SetGroup, items: Collection[str]) -> tuple[str, ...]:
    """The implements that the load of an entry may be had with; all of them where none is written."""
    from ..lint.body.other_forms import ANY, LOADS, SET_UP, carriers

    load = entry.work.load
    if load is None:
        return ANY
    if load.kind == "bodyweight":
        return LOADS if is_added(load) else ANY
    if load.kind == "label":
        with_a_band = "band" in load.words.lower() and any(equipment.is_said("band", one) for one in items)
        return ("band", "bodyweight", "none") if with_a_band else LOADS
    return carriers(_most(entry), load.pieces) if load.kind == "mass" else SET_UP


def _may_be_meant(pieces: Iterable[str], entry: SetGroup, items: Collection[str]) -> bool:
    """Whether a rucksack or another weight that is there may be meant for a bar."""
    from ..lint.body.improvised import may_be_worn

    return may_be_worn(pieces, _texts(entry, items))


def _texts(entry: SetGroup, items: Collection[str]) -> tuple[str, ...]:
    return (*items, entry.name, entry.prescription.note)


LIGHTEST_BAR = 10
"""kg below which nothing is on a barbell (common practice, no source: bars to learn on weigh 5 to 10)."""

BARS = ("barbell", "trap bar", "guided bar")


def _lifted(entry: SetGroup, exercise: Exercise) -> str:
    """What is lifted, as far as the line says: a load of the body alone, or of 6 kg, is on no bar.

    A calf raise on a machine that nobody named is one on a step.
    """
    held, load = entry.implement, entry.work.load
    if equipment.is_said(held, entry.name) or held in entry.name.lower():
        return held
    of_body = load is not None and load.kind == "bodyweight" and not is_added(load)
    is_light = load is not None and load.kind == "mass" and _most(entry) < LIGHTEST_BAR
    if held in BARS and (of_body or is_light):
        return "bodyweight"
    with_body = load is None or load.kind == "bodyweight"
    if held == "machine" and with_body and exercise.stance == "standing" and _is_done_without(exercise):
        return "bodyweight"
    return held


def _most(entry: SetGroup) -> float:
    """The heaviest load of its sets, in kg."""
    return max((one.high for one in entry.kilograms), default=0)


def _is_done_without(exercise: Exercise) -> bool:
    """Whether the same movement is usual with the body alone."""
    return any(
        other.implement == "bodyweight" and other.stance == exercise.stance
        for other in catalogue.exercises()
        if set(other.actions) == set(exercise.actions)
    )


def _what_lacks(taking: dict[tuple[str, ...], dict[str, Exercise]]) -> str:
    """``no barbell or rack for back squat and overhead press; no barbell for curl``; three at most."""
    lacks = [
        f"no {listed([*map(equipment.as_thing, pieces)], 'or')} for {first_of(list(names))}"
        for pieces, names in taking.items()
    ]
    return "; ".join([*lacks[:3], *(["and more"] if len(lacks) > 3 else [])])


def _in_words(pieces: Iterable[str]) -> str:
    return listed([equipment.as_thing(piece) for piece in dict.fromkeys(pieces)])


def _called(entry: SetGroup, exercise: Exercise) -> str:
    """The exercise's name, or the coach's if that states another implement."""
    return exercise.name if entry.implement == exercise.implement else entry.name


def _another_will_do(entry: SetGroup, pieces: Collection[str], always: Collection[str]) -> bool:
    """Whether an alternative that the coach names needs nothing that is not there."""
    known = entry.programme.known
    others = [known.reading(term.words) for term in entry.prescription.alternates]
    return any(
        other is not None and not equipment.missing(other.exercise, pieces, always, other.implement)
        for other in others
    )


def _swaps(offered: dict[str, str]) -> str:
    """``Swap back squat for goblet squat or dumbbell squat``; of several the first, ``and swap 2 more``."""
    swaps = [f"{name} for {others}" for name, others in offered.items() if others]
    more = f" and swap {len(swaps) - 1} more" if len(swaps) > 1 else ""
    return f"Swap {swaps[0]}{more}" if swaps else "Nothing else does the same work here: leave it out"


def _instead(others: str) -> str:
    """``; swap it for goblet squat``; empty where nothing suits."""
    return f"; swap it for {others}" if others else ""
