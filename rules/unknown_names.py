"""Names that nobody knows, or that go by another word."""

from __future__ import annotations

from ..lint.body import catalogue
from ..lint.body.names import fold, words
from ..lint.engine.registry import rule
from ..lint.findings.finding import Edit, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import did_you_mean, listed, shortened
from .muscle_names import muscle_named, naming_or_leaving_free, what_to_write_for_a_muscle
from .offers import writing
from .shared import MOST_SUGGESTED
from .unknown_lifts import (
    REST_INSTEAD,
    are_no_lifts,
    are_throws,
    is_a_rest,
    is_clear,
    is_one_of,
    may_load,
    not_counted,
    spared_where_done,
    what_to_write,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.text.places import Term


@rule(
    "exercise-unknown",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="What nobody knows cannot be counted, and rules about missing work can only say what they would say"
    " if it did nothing.",
    sources=(),
    asks=True,
    follows=("sets-not-read", "our-name-unclear"),
)
def exercise_unknown(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """An exercise, an alternative or a swap that is not known.

    Reads every name as coaches write them: implement, position, lift and qualifiers in any order. Offers the
    exercises that it may mean. A warning where it is surely a slip of a known name, or where something is to
    be spared, unless all of its words are those of exercises that do not load it; else a note. For a muscle,
    as in `triceps`, it offers exercises, and to leave the choice free; for a rest, how a rest is written.
    Silent, where nothing is spared, on tests, on throws, whose sets count for no muscle, and on what is no
    lift, surely, by its words: stretches, breathing, runs, games, balance. One finding for each name, with
    all its lines.

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
              - {exercise: "Leg curl (seated), paused", sets: 3, reps: 10}
    """
    spared_at_all = ledger.header.spared()
    named: dict[str, list[tuple[Term, str]]] = {}
    for term, where in _exercises_named(ledger):
        if ledger.known.exercise(term.words) is None:
            named.setdefault(fold(term.words), []).append((term, where))
    for number, ((term, where), *others) in enumerate(named.values()):
        if is_a_rest(term.words):
            yield found(
                term.place,
                f"`{shortened(term.words)}` is a rest and no exercise, but stands as one with sets.",
                severity="note",
                change=REST_INSTEAD,
                where=where,
                related=tuple(Related(one.place, f"{there}: `{one.words}`") for one, there in others),
            )
            continue
        spared = spared_where_done(ledger, term.words, spared_at_all)
        if not spared and are_no_lifts(ledger, {term.words, *(one.words for one, _ in others)}):
            continue
        looked_up = term.words if number < MOST_SUGGESTED else ""
        muscle = muscle_named(term.words)
        suggested = ledger.known.suggestions("" if muscle else looked_up, level=ledger.level)
        meant = [exercise for name in suggested.names if (exercise := ledger.known.exercise(name))]
        may_be = may_load(ledger, meant, spared)
        if are_throws(meant) and not spared and not suggested.slip:
            continue
        clear = not may_be and is_one_of(term.words, meant) and is_clear(ledger, spared)
        yield found(
            term.place,
            not_counted(term.words, suggested, spared, may_be, muscle, clear=clear),
            severity="warning" if suggested.slip or (spared and not clear) else "note",
            change=what_to_write_for_a_muscle(ledger, term.words, muscle)
            if muscle
            else what_to_write(term.words, suggested),
            where=where,
            related=tuple(
                Related(other.place, f"{there}: `{shortened(other.words)}`") for other, there in others
            ),
            edits=naming_or_leaving_free(ledger, term, muscle)
            if muscle
            else _writing(term, () if suggested.lifts else suggested.names, certain=suggested.slip),
            once=True,
        )


def _exercises_named(ledger: Ledger) -> Iterator[tuple[Term, str]]:
    """Every exercise that the programme names, with where: in lines, as alternatives, as swaps."""
    for line in ledger.programme.prescriptions():
        if line.test and not ledger.header.spared():
            continue  # a test of something of its own is no lift
        for term in (*line.names(), *line.alternates):
            yield term, line.session.name
    for adjustment in ledger.member.adjustments if ledger.member else ():
        if adjustment.swap is not None:
            yield adjustment.swap, f"adjust, {adjustment.exercise.words}"


def _writing(term: Term, near: Iterable[str], *, certain: bool = False) -> tuple[Edit, ...]:
    return tuple(Edit(term.place, other, f"write {other}", certain=certain) for other in near)


@rule(
    "area-unknown",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="Focus and priority decide what other rules look at; a word that means nothing to them is lost.",
    sources=(),
)
def area_unknown(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A word that is no muscle, region or exercise: in the focus, the priorities, under `trains`, `loads`.

    Looks up every word, on whichever side it is meant; offers the nearest ones. A warning where it is surely
    a slip of a known word, else a note.

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
    terms += [("not trained", term) for term in programme.not_trained]
    terms += [("maintain", term) for term in programme.maintain]
    terms += [("focus", term) for block in programme.blocks for term in block.focus]
    terms += [(line_name(line), term) for line in programme.prescriptions() for term in line.trains]
    activities = [one for block in programme.blocks for one in block.activities]
    terms += [(one.name, term) for one in activities for term, _ in one.loads]
    for where, term in terms:
        if catalogue.area(term.words) is not None or ledger.known.exercise(term.words):
            continue
        from ..lint.body.near_areas import is_slip, nearest_areas

        near = nearest_areas(term.words)
        yield found(
            term.place,
            f"`{term.words}` is no muscle, region or exercise that is known.",
            severity="warning" if is_slip(term.words) else "note",
            change=did_you_mean(near) or "Name a muscle group, a region or a lift.",
            where=where,
            edits=_writing(term, near),
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
def exercise_by_alias(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
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
    given = set(map(fold, ledger.known.names))
    for term, where in _exercises_named(ledger):
        listed_as, name = ledger.known.listed(term.words), fold(term.words)
        if listed_as is not None and name not in given and name != fold(listed_as.exercise.name):
            exercise = listed_as.exercise
            yield found(
                term.place,
                f"`{term.words}` is another word for {exercise.name}.",
                wanted="one name throughout",
                change=f"Write {exercise.name}.",
                where=where,
                edits=_writing(term, [exercise.name], certain=True),
            )


@rule(
    "adjustment-unmatched",
    family="upkeep",
    severity="warning",
    confidence="fact",
    why="What is adjusted for an athlete by a name that the programme does not have changes nothing.",
    sources=(),
)
def adjustment_unmatched(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Something adjusted for an athlete that nothing in the programme is called.

    Looks up the exercise of everything under `adjust`; wants a line with it, by whichever of its names: an
    exercise, intervals, a circuit or complex or a part of one, an own choice, an activity, something in the
    preparation, or a session. Silent where all its words stand in such a name.

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
    asked = [one.exercise for one in adjustments if one.exercise.words]
    unknown = [term for term in asked if ledger.named(term.words) not in there]
    if unknown:
        called = [_words_of(name) for name in _other_names(ledger)]
        unknown = [term for term in unknown if not any(_words_of(term.words) <= one for one in called)]
    for number, term in enumerate(unknown):
        near = _nearest(term.words, names) if number < MOST_SUGGESTED else []
        yield found(
            term.place,
            f"No line of this programme is called `{term.words}`, so nothing is adjusted.",
            wanted="an exercise that the programme has",
            change=did_you_mean(near) or f"Name one of its lines: {listed(names[:4])}.",
            where=f"adjust, {term.words}",
            edits=_writing(term, near) if near else writing(term.place, *names[:4]),
        )


def _other_names(ledger: Ledger) -> Iterator[str]:
    """What lines that are no exercises are called, sessions, activities, and what comes before the work."""
    for line in ledger.programme.prescriptions():
        for group in line.groups if line.kind else ():
            yield from (str(one.value) for one in group.get("exercise", ()))
        yield line.note
    for block in ledger.programme.blocks:
        yield from (activity.name for activity in block.activities)
    for session in ledger.programme.sessions():
        yield session.name
        yield from (term.words for term in session.preparation)


def _words_of(name: str) -> frozenset[str]:
    return frozenset(map(fold, words(name)))


def _nearest(name: str, names: Iterable[str]) -> list[str]:
    from ..lint.body.nearest import nearest

    return nearest(name, ((one, one) for one in names), 3)
