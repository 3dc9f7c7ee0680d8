"""Equipment that the athlete's list lacks, and stations that too many need at once."""

from __future__ import annotations

from math import ceil

from ..lint.body import equipment
from ..lint.engine.limits import Length, Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Edit, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import did_you_mean, first_of, listed, shortened
from .offers import dropping
from .shared import MOST_SUGGESTED, capital, names_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger, Lifter
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Visit
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.pairings import Pairing
    from ..lint.model.sessions import Prescription
    from .offers import Offer

    Lacking = dict[Prescription, tuple[SetGroup, Exercise, tuple[str, ...]]]
    """Lines with what they take that is not there."""


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
    """A piece of equipment in the athlete's file that no exercise is known to take.

    Looks up every item in whatever usual word; lets the names of the team's sets of equipment pass. Offers
    the pieces that may be meant.

    Flags:
        programme: At home
        athlete:
          name: Ida
          equipment: [dumbbells, echo chamber]  # <- here
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
    for number, (term, where) in enumerate(unknown):
        near = equipment.like(term.words) if number < MOST_SUGGESTED else []
        yield found(
            term.place,
            equipment.unknown(term.words),
            change=did_you_mean(near) or equipment.REMEDY,
            where=f"{lifter.athlete.name}, {where}",
            edits=tuple(Edit(term.place, other, f"write {other}") for other in near) or dropping(term.place),
        )


@rule(
    "equipment-missing",
    family="upkeep",
    severity="warning",
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
    Says nothing where the athlete lists no equipment; takes a lunge without a load for one without weights,
    and what stands in at home where the list, the name or a note says so: a bed for a bench, a table to row
    under, a rucksack for a dumbbell. A note where an item of the list is not known, or a rucksack may be
    meant for a bar. One finding for each place, with all its lines; where a session takes place somewhere
    else (`where`), the list of that place counts.

    Flags:
        programme: At home
        athlete: {name: Ida, equipment: [dumbbells, flat bench]}
        sessions:
          - session: Home
            exercises:
              - {exercise: dumbbell bench press, sets: 3, reps: 10}
              - {exercise: back squat, sets: 3, reps: 10}  # <- here

    Passes:
        programme: At home
        athlete: {name: Ida, equipment: [dumbbells, flat bench]}
        sessions:
          - session: Home
            exercises:
              - {exercise: dumbbell bench press, sets: 3, reps: 10}
              - {exercise: goblet squat, sets: 3, reps: 10}
    """
    always = limits.names("always there")
    for at in dict.fromkeys(visit.at for visit in ledger.visits):
        listed_pieces = ledger.header.pieces(at)
        if listed_pieces is None:
            continue
        lacking: Lacking = {}
        for entry in (entry for visit, entry in ledger.entries() if visit.at == at):
            exercise = entry.exercise
            if exercise is None or not entry.is_done:
                continue
            implement = "bodyweight" if _is_unloaded(entry, exercise) else entry.implement
            pieces = tuple(
                piece
                for piece in equipment.missing(exercise, listed_pieces, always, implement)
                if not _is_improvised(piece, entry, exercise, listed_pieces)
            )
            if pieces and not _another_will_do(entry, listed_pieces, always):
                lacking.setdefault(entry.prescription, (entry, exercise, pieces))
        if lacking:
            yield _missing(ledger, limits, at, listed_pieces, lacking)


def _missing(
    ledger: Ledger, limits: Limits, at: str, listed_pieces: Collection[str], lacking: Lacking
) -> DraftFinding:
    from ..lint.counting.suggestions import substitutes

    always = limits.names("always there")
    (first, _, _), *others = lacking.values()
    taking: dict[tuple[str, ...], dict[str, Exercise]] = {}
    for entry, exercise, pieces in lacking.values():
        taking.setdefault(pieces, {})[_called(entry, exercise)] = exercise
    most = int(limits.number("offered"))
    offered = {
        name: " or ".join(substitutes(ledger.header, exercise, most, always, at))
        for exercises in taking.values()
        for name, exercise in exercises.items()
    }
    words = _in_words(piece for pieces in taking for piece in pieces)
    unread = [shortened(item) for item in listed_pieces if not equipment.is_known(item)]
    lacks = f"at {shortened(at)}: {_what_lacks(taking)}" if at else _what_lacks(taking)
    is_sure = not unread and not all(
        _may_be_meant(pieces, entry, listed_pieces) for entry, _, pieces in lacking.values()
    )
    return found(
        first.work.places["exercise"],
        f"{capital(lacks)}{_unless_unread(unread)}.",
        severity="warning" if is_sure else "note",
        wanted="exercises for what is there",
        change=f"{_swaps(offered)}, or write {words} under `{shortened(at) or 'equipment'}`.",
        where=line_name(first.prescription),
        subject=f"{words} at {at}" if at else words,
        weeks=tuple(week.number for week in ledger.weeks if any(visit.at == at for visit in week.visits))
        if at
        else (),
        edits=_swapped(lacking, ledger, most, always, at),
        related=tuple(
            Related(
                entry.work.places["exercise"],
                f"{line_name(entry.prescription)}: {_takes(pieces)} too"
                f"{_instead(offered[_called(entry, exercise)])}",
            )
            for entry, exercise, pieces in others
        ),
    )


def _is_improvised(piece: str, entry: SetGroup, exercise: Exercise, items: Collection[str]) -> bool:
    """Whether something stands in for a piece that the list, the name or a note says."""
    from ..lint.body.improvised import serves

    return serves(piece, exercise, _texts(entry, items))


def _may_be_meant(pieces: Iterable[str], entry: SetGroup, items: Collection[str]) -> bool:
    """Whether a rucksack or another weight that is there may be meant for a bar, or any seat for a bench."""
    from ..lint.body.improvised import is_a_seat, may_be_worn

    if entry.implement == "bodyweight" and all(map(is_a_seat, pieces)):
        return True
    return may_be_worn(pieces, _texts(entry, items))


def _texts(entry: SetGroup, items: Collection[str]) -> tuple[str, ...]:
    return (*items, entry.name, entry.prescription.note)


def _is_unloaded(entry: SetGroup, exercise: Exercise) -> bool:
    """Whether a lunge is written without the usual weights in the hands: no load but the body's, no word."""
    held, load = exercise.implement, entry.work.load
    if held not in ("dumbbell", "kettlebell") or entry.implement != held:
        return False
    if load is not None and (load.kind != "bodyweight" or any(one.high > 0 for one in load.values)):
        return False
    return exercise.pattern == "lunge" and not equipment.is_said(held, entry.name)


def _what_lacks(taking: dict[tuple[str, ...], dict[str, Exercise]]) -> str:
    """``no barbell or rack for back squat and overhead press; no barbell for curl``; three at most."""
    lacks = [
        f"no {listed([*map(equipment.as_thing, pieces)], 'or')} for {first_of(list(names))}"
        for pieces, names in taking.items()
    ]
    return "; ".join([*lacks[:3], *(["and more"] if len(lacks) > 3 else [])])


def _in_words(pieces: Iterable[str]) -> str:
    return listed([equipment.in_words(piece) for piece in dict.fromkeys(pieces)])


def _takes(pieces: Iterable[str]) -> str:
    return f"takes {_in_words(pieces)}"


def _unless_unread(items: list[str]) -> str:
    """What may be the missing piece, as nobody knows what it is."""
    return f", unless it is {listed([f'`{item}`' for item in items])}" if items else ""


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


def _swapped(lacking: Lacking, ledger: Ledger, most: int, always: Collection[str], at: str) -> Offer:
    """For each choice an edit that swaps all exercises for which there is one."""

    def work_out() -> Iterator[Edit]:
        from ..lint.counting.suggestions import substitutes
        from ..lint.remedies.values import swapped

        offered = [
            (entry.work.places["exercise"], substitutes(ledger.header, exercise, most, always, at))
            for entry, exercise, _ in lacking.values()
        ]
        return swapped(offered)

    return work_out


def _instead(others: str) -> str:
    """``; swap it for goblet squat``; empty where nothing suits."""
    return f"; swap it for {others}" if others else ""


@rule(
    "room-too-small",
    family="upkeep",
    severity="note",
    confidence="common practice",
    why="Whoever waits for a station rests longer than written, or does something else.",
    sources=(),
    options=(
        Option(
            "straight sets", 3, "athletes to a station: one lifts while the others rest", "common practice"
        ),
        Option(
            "superset",
            2,
            "athletes to a station in a superset, which holds its stations throughout",
            "common practice",
        ),
        Option(
            "circuit", 1, "athletes to a station in a circuit, spread over its exercises", "common practice"
        ),
    ),
)
def room_too_small(visit: Visit, limits: Limits) -> Iterator[DraftFinding]:
    """A station that more athletes need at once than can share it, in a room that the team has described.

    Compares how many train together with the stations that spotline.yaml counts, and how many share a piece
    with the pairs that its list of equipment says there are; wants at most 3 athletes to a station in
    straight sets, 2 in a superset, which keeps its stations throughout, and 1 in a circuit, whose athletes
    are spread over its exercises. Says nothing where none of these is stated.

    Flags:
        programme: Squad
        sessions:
          - session: Lower
            exercises:
              - {exercise: back squat, sets: 3, reps: 8}  # <- here
              - {exercise: walking lunge, sets: 3, reps: 8}

    Passes:
        programme: Squad
        sessions:
          - session: Lower
            exercises:
              - {exercise: goblet squat, sets: 3, reps: 8}
              - {exercise: walking lunge, sets: 3, reps: 8}

    Beside spotline.yaml:
        stations: {rack: 1, dumbbell: 12}
        training together: 4
    """
    around = visit.programme.resources
    for item in _items(visit):
        paired = item[0].prescription.paired
        spread = len(item) if paired and paired.kind == "circuit" else 1
        limit = paired.kind if paired and paired.kind != "complex" else "straight sets"
        needed: dict[tuple[str, int, int], list[SetGroup]] = {}
        for entry in item:
            for piece in equipment.needs(entry.exercise, entry.implement) if entry.exercise else ():
                stock = visit.programme.stock(piece, visit.at)
                station = equipment.station_named(piece, around.stations)
                if stock is not None and stock.shared:
                    key = (stock.term.words, max(stock.pairs or 1, 1), ceil(stock.shared / spread))
                elif station:
                    key = (station, around.stations[station], ceil(around.together / spread))
                else:
                    continue
                if entry not in needed.setdefault(key, []):
                    needed[key].append(entry)
        for (station, there, at_once), entries in needed.items():
            enough = there * limits.number(limit)
            if at_once > enough:
                wanted = limits.words(
                    f"at most {{}} to a station in {limit.removesuffix('s')}s",
                    limit,
                )
                yield _crowded(station, there, enough, entries, at_once, wanted)


def _items(visit: Visit) -> list[list[SetGroup]]:
    """What is done in turn: each line by itself, supersets and circuits whole, with one entry a line."""
    items: dict[Pairing | Prescription, dict[Prescription, SetGroup]] = {}
    for entry in visit.own:
        if entry.sets.high:
            line = entry.prescription
            items.setdefault(line.paired or line, {}).setdefault(line, entry)
    return [list(lines.values()) for lines in items.values()]


def _crowded(
    station: str, there: int, enough: float, entries: list[SetGroup], at_once: int, wanted: str
) -> DraftFinding:
    first, *others = entries
    return found(
        first.work.places["exercise"],
        f"{at_once} at a time need the {station} for {first_of(names_of(entries))}; the room has {there}.",
        wanted=wanted,
        change=f"Start groups on different lines, or choose work without a {station}.",
        where=line_name(first.prescription),
        subject=station,
        group=station,
        amount=Amount(at_once, enough, "athletes"),
        related=tuple(
            Related(other.work.places["exercise"], f"{line_name(other.prescription)} needs it too")
            for other in others
        ),
        excess=at_once - enough,
    )
