"""Upkeep: names that nobody knows, numbers that cannot be meant, things that do not go together."""

from __future__ import annotations

from datetime import timedelta
from math import ceil

from ..lint.body import catalogue, equipment
from ..lint.body.names import fold
from ..lint.finding import Edit, Related, found
from ..lint.ledger import Entry, Ledger, Lifter, Visit, Week
from ..lint.quantities import KG_PER_LB, plain
from ..lint.registry import Limits, Option, rule
from .words import line_name, listed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Iterator
    from datetime import date

    from ..lint.body.catalogue import Exercise
    from ..lint.finding import Finding
    from ..lint.places import Place
    from ..lint.programme import BestLift, Event, Pairing, Prescription, Term


@rule(
    "exercise-unknown",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="What nobody knows cannot be counted: until the name is known, rules about missing work keep silent.",
    sources=(),
)
def exercise_unknown(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """An exercise, an alternative or a swap that the catalogue does not know by name or alias.

    Looks up every name; offers the nearest ones.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: seated leg crul, sets: 3, reps: 10}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: Seated leg-curls, sets: 3, reps: 10}
    """
    for term, where in _exercises_named(ledger):
        if ledger.known.exercise(term.words) is None:
            near = ledger.known.nearest(term.words)
            yield found(
                term.place,
                f"`{term.words}` is not in the catalogue, so its sets count for no muscle.",
                change=_did_you_mean(near) or "Write the exercise's usual name.",
                where=where,
                edits=_writing(term, near),
            )


def _exercises_named(ledger: Ledger) -> Iterator[tuple[Term, str]]:
    """Every exercise that the programme names, with where: in lines, as alternatives, as swaps."""
    for line in ledger.programme.prescriptions():
        for term in (*line.names(), *line.alternates):
            yield term, line.session.name
    for adjustment in ledger.member.adjustments if ledger.member else ():
        if adjustment.swap is not None:
            yield adjustment.swap, f"adjust, {adjustment.exercise.words}"


def _did_you_mean(near: list[str]) -> str:
    """The question with the nearest names; empty where there are none."""
    if len(near) > 1:
        near = [" or ".join([", ".join(near[:-1]), near[-1]])]
    return f"Did you mean {near[0]}?" if near else ""


def _writing(term: Term, near: Iterable[str]) -> tuple[Edit, ...]:
    return tuple(Edit(term.place, other, f"write {other}") for other in near)


@rule(
    "area-unknown",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="Focus and priority decide what other rules look at; a word that means nothing to them is lost.",
    sources=(),
)
def area_unknown(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """A word in the focus or among the priorities that is no muscle, region or exercise.

    Looks up every word; offers the nearest ones.

    Flags:
        programme: Legs
        focus: [hamstrigns]  # <- here
        sessions:
          - session: Lower
            exercises: [{exercise: seated leg curl, sets: 3, reps: 10}]

    Passes:
        programme: Legs
        focus: [hams]
        sessions:
          - session: Lower
            exercises: [{exercise: seated leg curl, sets: 3, reps: 10}]
    """
    programme = ledger.programme
    terms = [("focus", term) for term in programme.focus]
    terms += [("priority", term) for term in programme.priority]
    terms += [("focus", term) for block in programme.blocks for term in block.focus]
    for where, term in terms:
        if catalogue.area(term.words) is not None or ledger.known.exercise(term.words):
            continue
        near = catalogue.nearest_areas(term.words)
        yield found(
            term.place,
            f"`{term.words}` is no muscle, region or exercise that is known.",
            change=_did_you_mean(near) or "Name a muscle group, a region or a lift.",
            where=where,
            edits=_writing(term, near),
        )


@rule(
    "number-implausible",
    family="upkeep",
    severity="warning",
    confidence="common practice",
    why="Numbers like these are nearly always slips of the pen.",
    sources=(),
    options=(
        Option("most sets", 12, "sets in one line", "common practice"),
        Option("most repetitions", 100, "repetitions in one set", "common practice"),
        Option("shortest rest", 10, "seconds", "common practice"),
        Option("longest rest", 900, "seconds", "common practice"),
        Option("heaviest", 105, "percent of the best lift", "common practice"),
    ),
)
def number_implausible(entry: Entry, limits: Limits) -> Iterator[Finding]:
    """Sets, repetitions, rest or load that can hardly be meant.

    Looks at one line at a time; wants at most 12 sets and 100 repetitions, between 10 seconds and 15
    minutes of rest, and no more than 105 % of the best lift, stated as a percentage or by the lift on file.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 30, reps: 5}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5}
    """
    work = entry.work
    timed = entry.prescription.every is not None
    if work.sets and work.sets.high > limits.number("most sets") and not timed:
        most = plain(limits.number("most sets"))
        yield _slip(entry, "sets", f"{work.sets} sets in one line.", f"at most {most} sets")
    reps = work.reps.a_set() if work.reps else None
    if reps and reps.high > limits.number("most repetitions"):
        most = plain(limits.number("most repetitions"))
        yield _slip(entry, "reps", f"{reps} repetitions in one set.", f"at most {most} repetitions")
    if work.rest and not _paired(entry):
        low, high = limits.number("shortest rest"), limits.number("longest rest")
        if work.rest.low < low or work.rest.high > high:
            words = work.places["rest"].excerpt
            yield _slip(entry, "rest", f"{words} of rest.", f"between {low:g} s and {high / 60:g} min")
    yield from _too_heavy(entry, limits.number("heaviest"))


def _paired(entry: Entry) -> bool:
    """Whether the line stands in a superset or circuit, where going on at once is usual."""
    return entry.prescription.paired is not None


def _too_heavy(entry: Entry, most: float) -> Iterator[Finding]:
    load = entry.work.load
    if load is None or load.span is None:
        return
    if load.kind == "percent" and load.span.high > most:
        yield _slip(entry, "load", f"{load.words} of the best lift.", f"at most {plain(most)} %")
    if load.kind != "mass":
        return
    for best in entry.best:
        if best.load.kind != "mass" or not _comparable(entry, best):
            continue
        if load.span.high <= best.kilograms * most / 100:
            continue
        finding = _slip(
            entry,
            "load",
            f"{load.words} where the best on file is {best.load.words}.",
            f"at most {plain(most)} % of it",
        )
        finding.related = (Related(best.exercise.place, f"best lift on file: {best.load.words}"),)
        yield finding


def _comparable(entry: Entry, best: BestLift) -> bool:
    """Whether a set is at least as long as the best one: a heavier load for fewer repetitions is no slip."""
    reps = entry.work.reps.a_set() if entry.work.reps else None
    return best.reps == 1 or (reps is not None and reps.low >= best.reps)


def _slip(entry: Entry, key: str, counted: str, wanted: str) -> Finding:
    return found(
        entry.work.places[key],
        counted,
        wanted=wanted,
        change="If it is a slip, correct it.",
        where=f"{line_name(entry.prescription)}, {key}",
    )


@rule(
    "units-mixed",
    family="upkeep",
    severity="warning",
    confidence="common practice",
    why="A load read in the wrong unit is off by more than half.",
    sources=(),
)
def units_mixed(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Kilograms and pounds in one programme.

    Looks at every load in kg or lb; wants one unit throughout, and points at the lines with the rarer one.

    Flags:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 60 kg}
              - {exercise: overhead press, sets: 3, reps: 5, load: 40 kg}
              - {exercise: dip, sets: 3, reps: 5, load: bodyweight + 25 lb}  # <- here

    Passes:
        programme: Press
        sessions:
          - session: Push
            exercises:
              - {exercise: bench press, sets: 3, reps: 5, load: 60 kg}
              - {exercise: overhead press, sets: 3, reps: 5, load: 40 kg}
              - {exercise: dip, sets: 3, reps: 5, load: bodyweight + 10 kg}
    """
    places: dict[str, dict[Place, Entry]] = {"kg": {}, "lb": {}}
    for _, entry in ledger.entries():
        load = entry.work.load
        if load is not None and load.unit:
            places[load.unit].setdefault(entry.work.places["load"], entry)
    rarer, other = sorted(places, key=lambda unit: len(places[unit]))
    if not places[rarer]:
        return
    first, *rest = sorted(places[rarer], key=lambda place: place.start)
    yield found(
        first,
        f"{listed([place.excerpt for place in (first, *rest)][:4])} in {rarer}, the other loads in {other}.",
        wanted="one unit throughout",
        change=f"Write it in {other} (1 lb is {plain(KG_PER_LB)} kg), or give just the right unit.",
        where=line_name(places[rarer][first].prescription),
        related=tuple(Related(place, f"in {rarer}") for place in rest),
    )


# Names


@rule(
    "exercise-by-alias",
    family="upkeep",
    severity="note",
    confidence="convention",
    why="One name for one exercise makes programmes easier to search and compare.",
    sources=(),
    off=True,
)
def exercise_by_alias(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """An exercise called by another word than the catalogue's, or the team's, own name for it.

    Looks up every name; lets differences of case, hyphens, blanks and number pass. Off until a team asks.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: RDL, sets: 3, reps: 8}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: Romanian Deadlifts, sets: 3, reps: 8}
    """
    for term, where in _exercises_named(ledger):
        exercise = ledger.known.exercise(term.words)
        if exercise is not None and fold(term.words) != fold(exercise.name):
            yield found(
                term.place,
                f"`{term.words}` is another word for {exercise.name}.",
                wanted="one name throughout",
                change=f"Write {exercise.name}.",
                where=where,
                edits=_writing(term, [exercise.name]),
            )


@rule(
    "lift-unknown",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="A best lift that nobody can match to an exercise is used for no load.",
    sources=(),
)
def lift_unknown(lifter: Lifter, limits: Limits) -> Iterator[Finding]:
    """A best lift on file of an exercise that the catalogue does not know by name or alias.

    Looks up every best lift; offers the nearest names.

    Flags:
        programme: Legs
        athlete:
          name: Ida
          best lifts:
            back sqat: 80 kg  # <- here
        sessions: [{session: Lower, exercises: [{exercise: back squat, sets: 3, reps: 8}]}]

    Passes:
        programme: Legs
        athlete:
          name: Ida
          best lifts:
            back squats: 80 kg
        sessions: [{session: Lower, exercises: [{exercise: back squat, sets: 3, reps: 8}]}]
    """
    known = lifter.around.known
    for best in lifter.athlete.best_lifts:
        if known.exercise(best.exercise.words) is None:
            near = known.nearest(best.exercise.words)
            yield found(
                best.exercise.place,
                f"`{best.exercise.words}` is not in the catalogue, so this best lift is used for no load.",
                change=_did_you_mean(near) or "Write the exercise's usual name.",
                where=f"{lifter.athlete.name}, best lifts",
                edits=_writing(best.exercise, near),
            )


@rule(
    "adjustment-unmatched",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="What is adjusted for an athlete by a name that the programme does not have changes nothing.",
    sources=(),
)
def adjustment_unmatched(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """Something adjusted for an athlete that no line of the programme is called.

    Looks up the exercise of everything under `adjust`; wants a line with it, by whichever of its names.

    Flags:
        programme: Legs
        athletes:
          - athlete: {name: Ida}
            adjust:
              - {exercise: front squat, sets: 2}  # <- here
        sessions: [{session: Lower, exercises: [{exercise: back squat, sets: 3, reps: 8}]}]

    Passes:
        programme: Legs
        athletes:
          - athlete: {name: Ida}
            adjust:
              - {exercise: back squat, sets: 2}
        sessions: [{session: Lower, exercises: [{exercise: back squat, sets: 3, reps: 8}]}]
    """
    adjustments = ledger.member.adjustments if ledger.member else ()
    lines = ledger.programme.prescriptions() if adjustments else ()
    names = list(dict.fromkeys(term.words for line in lines for term in line.names()))
    there = {ledger.named(name) for name in names}
    for adjustment in adjustments:
        term = adjustment.exercise
        if term.words and ledger.named(term.words) not in there:
            near = _nearest(term.words, names)
            yield found(
                term.place,
                f"No line of this programme is called `{term.words}`, so nothing is adjusted.",
                wanted="an exercise that the programme has",
                change=_did_you_mean(near) or f"Name one of its lines: {listed(names[:4])}.",
                where=f"adjust, {term.words}",
                edits=_writing(term, near),
            )


def _nearest(name: str, names: Iterable[str]) -> list[str]:
    from ..lint.body.nearest import nearest

    return nearest(name, ((one, one) for one in names), 3)


# Sessions


@rule(
    "exercise-twice",
    family="upkeep",
    severity="note",
    confidence="common practice",
    why="The same line twice is often a slip of copying; where it is meant, one line with all its sets"
    " says it better.",
    sources=(),
)
def exercise_twice(visit: Visit, limits: Limits) -> Iterator[Finding]:
    """The same exercise on two lines of one session that read alike.

    Compares lines outside supersets and circuits by exercise, side, heavy or light slot, load, effort, tempo
    and method; wants them to differ in one of these. Lines with several groups of sets are left alone.

    Flags:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg press, sets: 3, reps: 10}
              - {exercise: leg curl, sets: 3, reps: 10}
              - {exercise: leg press, sets: 3, reps: 12}  # <- here

    Passes:
        programme: Legs
        sessions:
          - session: Lower
            exercises:
              - {exercise: leg press, sets: 3, reps: 10}
              - {exercise: leg curl, sets: 3, reps: 10}
              - {exercise: leg press, sets: 3, reps: 6}
    """
    lines: dict[tuple[object, ...], dict[Prescription, Entry]] = {}
    for entry in visit.own:
        line = entry.prescription
        if line.paired is None and len(line.groups) == 1 and entry.sets.high:
            lines.setdefault(_reading(entry), {}).setdefault(line, entry)
    for alike in lines.values():
        first, *others = alike.values()
        if others:
            again = others[0]
            yield found(
                again.work.places["exercise"],
                f"{again.name} stands on {len(alike)} lines of this session that read alike.",
                wanted="one line for it, or lines that differ in load, repetitions or effort",
                change="Take the second out, draw them together with all their sets, or say what differs.",
                where=line_name(again.prescription),
                related=tuple(
                    Related(other.work.places["exercise"], line_name(other.prescription))
                    for other in (first, *others[1:])
                ),
            )


def _reading(entry: Entry) -> tuple[object, ...]:
    """What two lines have in common that read alike."""
    line, work = entry.prescription, entry.work
    load = work.load.words if work.load else ""
    what = entry.ledger.named(entry.name)
    return (
        what,
        work.side,
        entry.slot,
        load,
        entry.reserve,
        work.tempo,
        line.method,
        work.hold,
        work.distance,
    )


@rule(
    "session-empty",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="A session without a set is nearly always something that was cut too far or left unfinished.",
    sources=(),
)
def session_empty(week: Week, limits: Limits) -> Iterator[Finding]:
    """A session in which no set is left, or a week in which nothing at all is trained.

    Counts work sets of each session, week by week and as adjusted for the athlete; wants at least one. A
    session whose lines cannot be read is left alone.

    Flags:
        programme: Legs
        weeks: 2
        sessions:
          - session: Lower  # <- here
            exercises: [{exercise: leg press, sets: {1: 3, 2: 0}, reps: 10}]
          - session: Upper
            exercises: [{exercise: bench press, sets: 3, reps: 10}]

    Passes:
        programme: Legs
        weeks: 2
        sessions:
          - session: Lower
            exercises: [{exercise: leg press, sets: {1: 3, 2: 1}, reps: 10}]
          - session: Upper
            exercises: [{exercise: bench press, sets: 3, reps: 10}]
    """
    empty = [visit for visit in week.visits if _is_empty(visit)]
    if empty and len(empty) == len(week.visits) and not week.block.activities:
        yield found(
            empty[0].session.place,
            "Nothing at all is trained: no session has a work set.",
            wanted="at least one work set in the week",
            change="Add the work, or let the block end a week sooner.",
            where=empty[0].session.name,
            subject="week",
        )
        return
    for session in dict.fromkeys(visit.session for visit in empty):
        yield found(
            session.place,
            f"{session.name} has no work set left.",
            wanted="at least one work set",
            change="Add its work, or take the session out for these weeks.",
            where=session.name,
        )


def _is_empty(visit: Visit) -> bool:
    """Whether a session that has lines has no set on this visit; what cannot be read may hold some."""
    lines = visit.session.prescriptions
    return bool(lines) and not visit.all_sets() and not any(line.unread for line in lines)


# Equipment and room


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
            ("floor", "wall", "partner", "track", "hill", "stairs", "box"),
            "pieces that nobody needs to list",
            "common practice",
        ),
        Option("offered", 2, "exercises offered instead of one", "common practice"),
    ),
)
def equipment_missing(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """An exercise that takes equipment which the athlete's list lacks.

    Compares the implement and stations of every exercise with the list, the team's sets by name spelled out;
    wants each on it, in whatever usual word, or an alternative under `or` that needs no more than the list.
    Says nothing where the athlete lists no equipment. One finding for each set of missing pieces.

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
    listed_pieces = ledger.equipment
    if listed_pieces is None:
        return
    always = limits.names("always there")
    lacking: dict[tuple[str, ...], dict[Prescription, tuple[Entry, Exercise]]] = {}
    for _, entry in ledger.entries():
        exercise = entry.exercise
        if exercise is None or not entry.sets.high:
            continue
        pieces = equipment.missing(exercise, listed_pieces, always)
        if pieces and not _another_will_do(entry, listed_pieces, always):
            lacking.setdefault(pieces, {}).setdefault(entry.prescription, (entry, exercise))
    for pieces, lines in lacking.items():
        (first, _), *others = lines.values()
        exercises = dict.fromkeys(exercise for _, exercise in lines.values())
        offered = [
            (
                exercise.name,
                equipment.alternatives(exercise, listed_pieces, always, int(limits.number("offered"))),
            )
            for exercise in exercises
        ]
        words = listed([equipment.in_words(piece) for piece in pieces])
        yield found(
            first.work.places["exercise"],
            f"{listed([name for name, _ in offered])} {'takes' if len(offered) == 1 else 'take'} {words},"
            f" which {'is' if len(pieces) == 1 else 'are'} not among the athlete's equipment.",
            wanted="exercises for what there is to train with",
            change=f"{_swaps(offered)}, or add {words} to the athlete's equipment.",
            where=line_name(first.prescription),
            subject=words,
            related=tuple(
                Related(entry.work.places["exercise"], f"{line_name(entry.prescription)}: takes {words} too")
                for entry, _ in others
            ),
        )


def _another_will_do(entry: Entry, pieces: Collection[str], always: Collection[str]) -> bool:
    """Whether an alternative that the coach names needs nothing that is not there."""
    known = entry.ledger.known
    others = [known.exercise(term.words) for term in entry.prescription.alternates]
    return any(other is not None and not equipment.missing(other, pieces, always) for other in others)


def _swaps(offered: list[tuple[str, list[str]]]) -> str:
    """``Swap back squat for goblet squat or dumbbell squat; dip for diamond push-up``."""
    swaps = [f"{name} for {' or '.join(others)}" for name, others in offered if others]
    return f"Swap {'; '.join(swaps)}" if swaps else "Swap it for something else"


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
def room_too_small(visit: Visit, limits: Limits) -> Iterator[Finding]:
    """A station that more athletes need at once than can share it, in a room that the team has described.

    Compares how many train together with the stations that spotline.yaml counts; wants at most 3 athletes to
    a station in straight sets, 2 in a superset, which keeps its stations throughout, and 1 in a circuit,
    whose athletes are spread over its exercises. Says nothing where the team states neither.

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
    around = visit.ledger.around
    for item in _items(visit):
        paired = item[0].prescription.paired
        at_once = (
            ceil(around.together / len(item)) if paired and paired.kind == "circuit" else around.together
        )
        share = limits.number(paired.kind if paired else "straight sets")
        needed: dict[str, list[Entry]] = {}
        for entry in item:
            for piece in equipment.needs(entry.exercise) if entry.exercise else ():
                station = equipment.station_named(piece, around.stations)
                if station and entry not in needed.setdefault(station, []):
                    needed[station].append(entry)
        for station, entries in needed.items():
            there = around.stations[station]
            if at_once > there * share:
                yield _crowded(station, there, share, entries, at_once, paired)


def _items(visit: Visit) -> list[list[Entry]]:
    """What is done in turn: each line by itself, supersets and circuits whole, with one entry a line."""
    items: dict[Pairing | Prescription, dict[Prescription, Entry]] = {}
    for entry in visit.own:
        if entry.sets.high:
            line = entry.prescription
            items.setdefault(line.paired or line, {}).setdefault(line, entry)
    return [list(lines.values()) for lines in items.values()]


def _crowded(
    station: str, there: int, share: float, entries: list[Entry], at_once: int, paired: Pairing | None
) -> Finding:
    first, *others = entries
    kind = paired.kind if paired else "straight set"
    return found(
        first.work.places["exercise"],
        f"{at_once} at a time need the {station} for {listed([entry.name for entry in entries])}; the room"
        f" has {there}, enough for {plain(there * share)}.",
        wanted=f"no more than {plain(share)} to a station in {kind}s (common practice)",
        change="Start groups on different lines, let them come one after the other, or choose work that needs"
        f" no {station}.",
        where=line_name(first.prescription),
        subject=station,
        related=tuple(
            Related(other.work.places["exercise"], f"{line_name(other.prescription)} needs it too")
            for other in others
        ),
        excess=at_once - there * share,
    )


# Dates, goal and phase


@rule(
    "programmes-overlap",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="What one programme leaves for recovery the other fills; each is judged by itself, their sum by"
    " nobody.",
    sources=(),
)
def programmes_overlap(lifter: Lifter, limits: Limits) -> Iterator[Finding]:
    """Two programmes for one athlete on the same dates.

    Compares the days from start to end of all programmes that name the athlete; wants each to start after the
    one before has ended. Programmes without a start, and those of a stage of rehabilitation, are left alone.

    Flags:
        programme: Winter
        athlete: ida.athlete.yaml
        starts: 2026-02-02  # <- here
        weeks: 4
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]

    Passes:
        programme: Winter
        athlete: ida.athlete.yaml
        starts: 2026-02-09
        weeks: 4
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]

    Beside ida.athlete.yaml:
        name: Ida

    Beside autumn.programme.yaml:
        programme: Autumn
        athlete: ida.athlete.yaml
        starts: 2026-01-05
        weeks: 5
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]
    """
    dated = [plan for plan in lifter.plans if plan.programme.starts and not plan.programme.rehabilitation]
    for index, later in enumerate(dated):
        starts, _ = _dates(later)
        for earlier in dated[:index]:
            _, ends = _dates(earlier)
            if ends >= starts and earlier.programme is not later.programme:
                yield found(
                    later.programme.places["starts"],
                    f"{later.programme.name} starts on {starts}, while {earlier.programme.name} runs until"
                    f" {ends} for the same athlete.",
                    wanted="one programme at a time",
                    change=f"Start it on {ends + timedelta(days=1)} or later, end the other sooner, or"
                    " write the two into one.",
                    where="starts",
                    related=(
                        Related(earlier.programme.places["starts"], f"{earlier.programme.name} starts here"),
                    ),
                    excess=(ends - starts).days,
                )


def _dates(plan: Ledger) -> tuple[date, date]:
    """The first and the last day of a programme that says when it starts."""
    starts, ends = plan.programme.starts, plan.ends
    assert starts is not None
    assert ends is not None
    return starts, ends


@rule(
    "dates-at-odds",
    family="upkeep",
    severity="note",
    confidence="common practice",
    why="Dates, goal and phase decide what other rules look at; where they do not fit together, one is a"
    " slip.",
    sources=(),
    options=(
        Option(
            "days after",
            7,
            "days between the programme's last day and an event it leads to",
            "common practice",
        ),
        Option(
            "longest peak", 4, "weeks of taper and test, where a programme is nothing else", "common practice"
        ),
    ),
)
def dates_at_odds(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """An event outside the programme's dates, or a phase that does not go with its length or goal.

    Wants events between the first day and a week past the last; phases of taper or test that fill a whole
    programme to last 4 weeks at most; and neither of them where the goal is general health.

    Flags:
        programme: Spring
        starts: 2026-01-05
        weeks: 4
        events: [{date: 2026-03-14, event: regatta}]  # <- here
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]

    Passes:
        programme: Spring
        starts: 2026-01-05
        weeks: 9
        events: [{date: 2026-03-14, event: regatta}]
        sessions: [{session: Lower, exercises: [{exercise: leg press, sets: 3, reps: 8}]}]
    """
    for number, event in ledger.events():
        if number < 1 or number > 7 * len(ledger.weeks) + limits.number("days after"):
            yield _outside(ledger, event)
    programme = ledger.programme
    phases = dict.fromkeys(week.phase for week in ledger.weeks)
    peaks = [phase for phase in phases if phase in ("taper", "test")]
    longest = limits.number("longest peak")
    if peaks and programme.goal == "general health":
        yield found(
            programme.places["goal"],
            f"The goal is general health, and there is a phase of {listed(peaks)}.",
            wanted="a goal and phases that go together",
            change="Correct the goal, or leave the phase out.",
            where="goal",
        )
    elif len(peaks) == len(phases) and len(ledger.weeks) > longest:
        yield found(
            programme.places.get("phase", programme.place),
            f"All {len(ledger.weeks)} weeks are {listed(peaks)}.",
            wanted=f"at most {plain(longest)} weeks of it (common practice)",
            change="Give the weeks that build the phase build, or shorten the programme.",
            where="phase",
        )


def _outside(ledger: Ledger, event: Event) -> Finding:
    starts, ends = _dates(ledger)
    assert event.date is not None
    apart, which = (starts - event.date).days, f"before the programme starts ({starts})"
    if apart < 0:
        apart, which = (event.date - ends).days, f"after it ends ({ends})"
    return found(
        event.place,
        f"{event.name} on {event.date} is {apart} day{'' if apart == 1 else 's'} {which}.",
        wanted="events that the programme leads up to",
        change="Correct the date, the start or the weeks, or take the event out.",
        where=f"events, {event.name}",
    )
