"""Stations that too many need at once."""

from __future__ import annotations

from math import ceil

from ..lint.body import equipment
from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import first_of
from .shared import names_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Visit
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.pairings import Pairing
    from ..lint.model.sessions import Prescription

    Lacking = dict[Prescription, tuple[SetGroup, Exercise, tuple[str, ...]]]
    """Lines with what they take that is not there."""


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
    if not around.stations and not visit.programme.stocks(visit.at):
        return
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
                    key = (stock.term.words, stock.pairs or 1, ceil(stock.shared / spread))
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
        change=f"Start groups on other lines, or choose work without the {station}.",
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
