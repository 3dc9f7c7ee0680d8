"""Upkeep: names that nobody knows, numbers that cannot be meant."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.finding import Edit, Related, found
from ..lint.ledger import Entry, Ledger
from ..lint.quantities import KG_PER_LB, plain
from ..lint.registry import Limits, Option, rule
from .words import line_name, listed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.finding import Finding
    from ..lint.places import Place
    from ..lint.programme import BestLift


@rule(
    "exercise-unknown",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="What nobody knows cannot be counted: until the name is known, rules about missing work keep silent.",
    sources=(),
)
def exercise_unknown(ledger: Ledger, limits: Limits) -> Iterator[Finding]:
    """An exercise, or an alternative to it, that the catalogue does not know by name or alias.

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
    for line in ledger.programme.prescriptions():
        for term in (*line.names(), *line.alternates):
            if ledger.known.exercise(term.words) is not None:
                continue
            near = ledger.known.nearest(term.words)
            yield found(
                term.place,
                f"`{term.words}` is not in the catalogue, so its sets count for no muscle.",
                change=f"Did you mean {_either(near)}?" if near else "Write the exercise's usual name.",
                where=line.session.name,
                edits=tuple(Edit(term.place, other, f"write {other}") for other in near),
            )


def _either(names: list[str]) -> str:
    return " or ".join([", ".join(names[:-1]), names[-1]]) if len(names) > 1 else names[0]


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
            change=f"Did you mean {_either(near)}?" if near else "Name a muscle group, a region or a lift.",
            where=where,
            edits=tuple(Edit(term.place, other, f"write {other}") for other in near),
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
