"""Candidates from the catalogue: exercises, parts of the body, movements and equipment."""

from __future__ import annotations

import re
from functools import lru_cache

from ...body import catalogue, equipment, restriction_words, restrictions
from ...reporters.exercises_text import gathered
from .candidates import Candidate
from .exercise_prefixes import ALIAS_BEGINS, ALIAS_WORDS, BEGINS, matching_exercises

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    from ...body.catalogue import Exercise
    from ...model.sessions import Prescription
    from .candidates import CandidateScope
    from .exercise_prefixes import ExerciseMatch

MOST_EXERCISES = 60
"""Exercises that are proposed at once."""

MOST_BELOW = 10
"""Of these, exercises that match by name although the athlete lacks the equipment."""

EQUIPMENT_RULE, ALWAYS_THERE = "equipment-missing", "always there"
"""The rule, and its limit, by which a team says which pieces nobody needs to list."""

EXERCISE_SEARCH_LENGTH = 600
"""Characters before the caret in which the exercise of its line is looked for."""

_EXERCISE_KEY = re.compile(r"exercise[\"']?[ \t]*:[ \t]+[\"']?([^,{}\[\]#\r\n\"']+)")


# Exercises


def exercises(scope: CandidateScope) -> Iterator[Candidate]:
    """Exercises that match the word so far, those first for which the athlete has the equipment."""
    missing_pieces, priority = _missing_pieces(scope), _priority(scope)
    matches = [
        (missing_pieces(match.exercise), match) for match in matching_exercises(scope.typed, scope.known)
    ]
    matches.sort(key=lambda pair: (bool(pair[0]), pair[1].rank, priority(pair[1].exercise)))
    is_typed = bool(scope.typed.strip())
    below = [pair for pair in matches[MOST_EXERCISES:] if is_typed and pair[1].rank <= BEGINS][:MOST_BELOW]
    for missing, match in [*matches[: MOST_EXERCISES - len(below)], *below]:
        yield _exercise(scope, match, missing)


def _exercise(scope: CandidateScope, match: ExerciseMatch, missing: tuple[str, ...]) -> Candidate:
    """One exercise: what it trains, and what of its equipment the athlete has not got."""
    one = match.exercise
    notes = []
    if missing:
        pieces = " and ".join(map(equipment.in_words, missing))
        notes.append(f"Takes {pieces}, not among the athlete's equipment.")
    if match.rank in (ALIAS_BEGINS, ALIAS_WORDS):
        notes.append(f"Also called {', '.join(one.aliases)}.")
    # The client compares all that is typed, of which a muscle may be a part, so it is put before the name.
    typed = f"{scope.typed} " if scope.typed.strip() else ""
    return Candidate(one.name, "exercise", trained_by(one), " ".join(notes), filter_text=f"{typed}{one.name}")


@lru_cache(maxsize=2000)
def trained_by(exercise: Exercise) -> str:
    """What an exercise trains directly, in short."""
    return gathered(exercise.direct)


def exercises_of_programme(scope: CandidateScope) -> Iterator[Candidate]:
    """Exercises that the programme has."""
    if scope.ledger is None:
        return
    for name in dict.fromkeys(exercise_names(scope.ledger.programme.prescriptions())):
        known = scope.known.exercise(name)
        yield Candidate(name, "exercise", trained_by(known) if known else "")


def exercise_names(lines: Iterable[Prescription]) -> Iterator[str]:
    """The exercises that some lines name."""
    for line in lines:
        for group in line.groups:
            for name in group.get("exercise", ()):
                yield str(name.value)


def _priority(scope: CandidateScope) -> Callable[[Exercise], int]:
    """A sort key for exercises that match equally well; lower comes first.

    Where an exercise is replaced, its close variants come first. Without a word typed, the exercises come
    first that the programme uses, then the team's own, then those that train the programme's priorities.
    """
    replaced = _replaced(scope)
    if replaced is not None:
        return lambda exercise: 2 if exercise is replaced else int(not replaced.is_close_to(exercise))
    if scope.typed.strip() or scope.ledger is None:
        return _no_priority
    programme = scope.ledger.programme
    used = set(exercise_names(programme.prescriptions()))
    wanted = [_muscles_of(programme.priority), _muscles_of(programme.focus)]
    own = set(scope.known.own)

    def priority(exercise: Exercise) -> int:
        if exercise.name in used:
            return 0
        if exercise in own:
            return 1
        trains = (at for at, muscles in enumerate(wanted) if not muscles.isdisjoint(exercise.direct))
        return 2 + 2 * next(trains, len(wanted)) + (exercise.kind != "dynamic")

    return priority


def _no_priority(exercise: Exercise) -> int:
    return 0


def _replaced(scope: CandidateScope) -> Exercise | None:
    """The exercise that an alternate or a swap at the caret stands in for."""
    if not any(key in ("or", "swap") for key in scope.key_path[-2:]):
        return None
    start = scope.context.start
    before = scope.snapshot.text.content[max(0, start - EXERCISE_SEARCH_LENGTH) : start]
    found = _EXERCISE_KEY.findall(before)
    return scope.known.exercise(found[-1].strip()) if found else None


def _muscles_of(terms: Iterable[object]) -> set[str]:
    return {muscle for term in terms for muscle in catalogue.area(getattr(term, "words", "")) or ()}


# Equipment


def _missing_pieces(scope: CandidateScope) -> Callable[[Exercise], tuple[str, ...]]:
    """Gives the pieces that an exercise takes and the programme's athletes have not got."""
    lists = [ledger.equipment for ledger in scope.ledgers if ledger.equipment is not None]
    if not lists:
        return lambda exercise: ()
    always = _always_there(scope)
    return lambda exercise: next(
        (missing for pieces in lists if (missing := _missing(exercise, pieces, always))), ()
    )


def _always_there(scope: CandidateScope) -> tuple[str, ...]:
    """Pieces of equipment that nobody needs to list."""
    rule = scope.rule(EQUIPMENT_RULE)
    return scope.team.choices.limits(rule).names(ALWAYS_THERE) if rule is not None else ()


_needs = lru_cache(maxsize=4000)(equipment.needs)


@lru_cache(maxsize=16)
def _missing_by_needs(
    pieces: frozenset[str], always: tuple[str, ...]
) -> dict[tuple[str, ...], tuple[str, ...]]:
    """For a list of equipment: what exercises need -> what of it is missing; filled as it is asked for."""
    return {}


def _missing(exercise: Exercise, pieces: frozenset[str], always: tuple[str, ...]) -> tuple[str, ...]:
    by_needs, needs = _missing_by_needs(pieces, always), _needs(exercise)
    if needs not in by_needs:
        by_needs[needs] = equipment.missing(exercise, pieces, always)
    return by_needs[needs]


def pieces(scope: CandidateScope) -> Iterator[Candidate]:
    """Pieces of equipment, the team's named sets of them first."""
    if scope.snapshot.review.kind != "team":
        for name, pieces_of in scope.team.resources.equipment.items():
            yield Candidate(name, "value", ", ".join(pieces_of))
    always = _always_there(scope)
    for piece in (piece for piece in _all_pieces() if piece not in always):
        detail = "machine" if piece.startswith("machine ") else ""
        yield Candidate(equipment.in_words(piece), "value", detail)


@lru_cache(maxsize=1)
def _all_pieces() -> tuple[str, ...]:
    """Pieces of equipment that exercises take, the most used first."""
    counts: dict[str, int] = {}
    for one in catalogue.exercises():
        for piece in equipment.needs(one):
            counts[piece] = counts.get(piece, 0) + 1
    return tuple(sorted(counts, key=lambda piece: (-counts[piece], piece)))


def stations(scope: CandidateScope) -> Iterator[Candidate]:
    """Stations as the catalogue calls them."""
    for station in _all_stations():
        yield Candidate(station, "value")


@lru_cache(maxsize=1)
def _all_stations() -> tuple[str, ...]:
    return tuple(sorted({station for one in catalogue.exercises() for station in one.station}))


# Parts of the body and movements


def areas(scope: CandidateScope) -> Iterator[Candidate]:
    """Muscle groups first, then regions, then muscles."""
    for name in _all_areas():
        detail = "muscle group" if name in catalogue.groups else ""
        yield Candidate(name, "muscle", detail or ("region" if name in catalogue.regions else ""))


@lru_cache(maxsize=1)
def _all_areas() -> tuple[str, ...]:
    """Names of areas: groups, regions, other words of coaches, muscles."""
    names = catalogue.area_names()
    muscles = catalogue.muscles()
    other_words = [name for name in names if name not in muscles]
    return tuple(dict.fromkeys([*catalogue.groups, *catalogue.regions, *other_words, *names]))


def areas_and_exercises(scope: CandidateScope) -> Iterator[Candidate]:
    """Areas, and exercises once two letters are typed."""
    yield from areas(scope)
    if len(scope.typed.strip()) > 1:
        yield from exercises(scope)


def body_parts(scope: CandidateScope) -> Iterator[Candidate]:
    """Parts of the body that can be looked for in exercises."""
    for name in dict.fromkeys((*restriction_words.PARTS, *_all_areas())):
        if restrictions.read(name).traits:
            yield Candidate(name, "muscle")


def movements(scope: CandidateScope) -> Iterator[Candidate]:
    """Movements that can be looked for in exercises."""
    for name in restriction_words.MOVEMENTS:
        yield Candidate(name, "value", "movement")


def actions(scope: CandidateScope) -> Iterator[Candidate]:
    """Joint actions."""
    for name in catalogue.actions():
        yield Candidate(name, "value", "joint action")


def actions_and_patterns(scope: CandidateScope) -> Iterator[Candidate]:
    """Joint actions and movement patterns, in which sets can be counted."""
    yield from actions(scope)
    for name in catalogue.PATTERNS:
        yield Candidate(name, "value", "movement pattern")


def countable(scope: CandidateScope) -> Iterator[Candidate]:
    """All of which weekly sets can be counted."""
    yield from areas(scope)
    yield from actions_and_patterns(scope)
