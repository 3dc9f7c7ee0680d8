"""Candidates for the places where the schema only asks for words: what each place names."""

from __future__ import annotations

import os
from itertools import islice

from ...model.weeks import weeks
from ...project.discovery import searched
from ...text import repository
from . import catalogue_candidates, rule_candidates
from .candidates import Candidate
from .node_path import BY_WEEK

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ...model.sessions import Block
    from ..documents.answers import CompletionKind
    from .candidates import CandidateScope
    from .context import KeyPath

    CandidateSource = Callable[[CandidateScope], Iterator[Candidate]]

    PathPattern = tuple[str, ...]
    """How a path ends: "#" is any place in a list, "*" any key; "^" at its start is the top of the file."""

    SourceTable = dict[str, tuple[tuple[PathPattern, CandidateSource], ...]]
    """For each kind of file: patterns of paths, and what is named there."""

MOST_FILES = 2000
"""Files and folders that are looked at for a path, and weeks for a key."""


def value_candidates(scope: CandidateScope) -> Iterator[Candidate] | None:
    """What may be named by the value at the path; None where the schema knows better."""
    return _candidates(VALUES, scope)


def key_candidates(scope: CandidateScope) -> Iterator[Candidate] | None:
    """What may be named by a key of the group at the path; None where the schema knows better."""
    return _candidates(KEYS, scope)


def _candidates(table: SourceTable, scope: CandidateScope) -> Iterator[Candidate] | None:
    for pattern, source in table.get(scope.snapshot.review.kind, ()):
        if _matches(pattern, scope.key_path):
            return source(scope)
    return None


def _matches(pattern: PathPattern, path: KeyPath) -> bool:
    if pattern[0] == "^":
        return len(path) == len(pattern) - 1 and _matches(pattern[1:], path)
    if len(path) < len(pattern):
        return False
    return all(
        (wanted == "#" if isinstance(step, int) else wanted in ("*", step))
        for step, wanted in zip(path[len(path) - len(pattern) :], pattern, strict=True)
    )


# Files


def athlete_files(scope: CandidateScope) -> Iterator[Candidate]:
    """Athlete files of the repository."""
    yield from _files(scope, "athlete", "athlete")


def exercise_files(scope: CandidateScope) -> Iterator[Candidate]:
    """Files of a team's own exercises, below its settings."""
    yield from _files(scope, "exercises", "value")


def _files(scope: CandidateScope, kind: str, shown_as: CompletionKind) -> Iterator[Candidate]:
    """Files of a kind, by the paths that lead to them from this one, the nearest first."""
    path = scope.snapshot.path
    if not path:
        return
    folder = os.path.dirname(path) or os.curdir
    root = scope.workspace.files.file(path).root if kind == "athlete" else folder
    if kind == "athlete" and not repository.is_marked(root):
        root = folder
    files = islice(searched(scope.workspace, os.path.relpath(root)), MOST_FILES)
    paths = [_relative(one.name, folder) for one in files if one.kind == kind]
    for one in sorted(paths, key=lambda one: (one.count("../"), one.count("/"), one)):
        name = one.rpartition("/")[2]
        yield Candidate(one, shown_as, filter_text=one if one == name else f"{one} {name}")


def folders(scope: CandidateScope) -> Iterator[Candidate]:
    """Folders below the settings."""
    base = os.path.dirname(scope.snapshot.path) or os.curdir
    seen = 0
    for folder, inner, _ in os.walk(base):
        inner[:] = sorted(name for name in inner if not name.startswith((".", "_")))
        for name in inner:
            seen += 1
            if seen > MOST_FILES:
                return
            yield Candidate(_relative(os.path.join(folder, name), base), "value", "folder")


def _relative(path: str, folder: str) -> str:
    return os.path.relpath(path, folder).replace(os.sep, "/")


# Parts of the programme


def replaceable_sessions(scope: CandidateScope) -> Iterator[Candidate]:
    """Sessions of the caret's block that another may replace: not its own, nor those that replace one."""
    block = _block(scope)
    if scope.ledger is None or block is None:
        return
    data = scope.last_data(scope.key_path[:-1])
    own = data.get("session") if isinstance(data, dict) else None
    found = (one.name for one in scope.ledger.programme.sessions_of(block) if one.instead_of is None)
    for name in dict.fromkeys(found):
        if name != str(own):
            yield Candidate(name, "value", "session")


def sessions(scope: CandidateScope) -> Iterator[Candidate]:
    """Sessions of the programme."""
    held = scope.ledger.programme.sessions() if scope.ledger is not None else ()
    for name in dict.fromkeys(session.name for session in held):
        yield Candidate(name, "value", "session")


def sessions_and_lines(scope: CandidateScope) -> Iterator[Candidate]:
    """Sessions of the programme, and their lines."""
    yield from sessions(scope)
    for session in scope.ledger.programme.sessions() if scope.ledger is not None else ():
        for name in dict.fromkeys(catalogue_candidates.exercise_names(session.prescriptions)):
            yield Candidate(f"{session.name}, {name}", "value", "line")


def places(scope: CandidateScope) -> Iterator[Candidate]:
    """Places whose equipment the athletes or the team list."""
    kits = {
        kit.name.words: ", ".join(term.words for term in kit.terms)
        for ledger in scope.ledgers
        for kit in (*(ledger.athlete.kits if ledger.athlete else ()), *ledger.resources.kits)
    }
    for name, pieces in kits.items():
        yield Candidate(name, "value", pieces)


def weeks_left_out(scope: CandidateScope) -> Iterator[Candidate]:
    """The first run of weeks that the keys beside the caret leave out, if there is one."""
    taken: set[int] = set()
    if {"other", "again"}.intersection(scope.context.sibling_keys[-1]):
        return
    for key in scope.context.sibling_keys[-1]:
        for first, last in weeks(key):
            taken.update(range(first, min(last, MOST_FILES) + 1))
    left = [week for week in range(1, _weeks_to_cover(scope) + 1) if week not in taken]
    if not taken or not left:
        return
    first = left[0]
    last = next((week for week in left if week + 1 not in left), first)
    run = f"{first}-{last}" if last > first else f"{last}"
    yield Candidate(run, "key", "weeks left out so far", written=run)


def weeks_not_named(scope: CandidateScope) -> Iterator[Candidate]:
    """The weeks of the programme or block that no key beside the caret names, one by one."""
    present = scope.context.sibling_keys[-1]
    taken = [run for key in present for run in weeks(key)]
    if "other" in present:
        return
    for week in range(1, min(_weeks_to_cover(scope), MOST_FILES) + 1):
        if not any(first <= week <= last for first, last in taken):
            yield Candidate(f"{week}", "key", "week", written=f"{week}")


def _weeks_to_cover(scope: CandidateScope) -> int:
    """How many weeks the values by week at the path have to cover."""
    if scope.ledger is not None and scope.key_path[0] != "blocks":
        return scope.ledger.programme.weeks
    block = _block(scope)
    return block.weeks if block is not None else 0


def _block(scope: CandidateScope) -> Block | None:
    """The block in which the path leads; the first one of a programme whose weeks are all alike."""
    blocks = scope.ledger.programme.blocks if scope.ledger is not None else ()
    path = scope.key_path
    at = 0 if path[0] != "blocks" else path[1] if len(path) > 1 else None
    return blocks[at] if isinstance(at, int) and at < len(blocks) else None


# What is named where

_ATHLETE_VALUES: tuple[tuple[PathPattern, CandidateSource], ...] = (
    (("equipment", "#"), catalogue_candidates.pieces),
    (("places", "*", "#"), catalogue_candidates.pieces),
    (("protect", "#", "area"), catalogue_candidates.body_parts),
    (("protect", "#", "movement"), catalogue_candidates.movements),
)
_ATHLETE_KEYS: tuple[tuple[PathPattern, CandidateSource], ...] = (
    (("best lifts",), catalogue_candidates.exercises),
)

VALUES: SourceTable = {
    "programme": (
        (("adjust", "#", "exercise"), catalogue_candidates.exercises_of_programme),
        (("adjust", "#", "session"), sessions),
        (("exercise",), catalogue_candidates.exercises),
        (("exercise", "*"), catalogue_candidates.exercises),
        (("instead of",), replaceable_sessions),
        (("where",), places),
        (("where", "*"), places),
        (("swap",), catalogue_candidates.exercises),
        (("or",), catalogue_candidates.exercises),
        (("or", "#"), catalogue_candidates.exercises),
        (("^", "athlete"), athlete_files),
        (("^", "athletes", "#"), athlete_files),
        (("^", "athletes", "#", "athlete"), athlete_files),
        (("focus", "#"), catalogue_candidates.areas_and_exercises),
        (("^", "priority", "#"), catalogue_candidates.areas_and_exercises),
        (("^", "not trained", "#"), catalogue_candidates.areas_and_exercises),
        (("^", "maintain", "#"), catalogue_candidates.areas_and_exercises),
        (("^", "must hold", "#", "weekly sets of"), catalogue_candidates.countable),
        (("^", "must hold", "#", "at least as many as"), catalogue_candidates.countable),
        (("^", "must hold", "#", "days of"), catalogue_candidates.countable),
        (("^", "must hold", "#", "never two days running"), catalogue_candidates.countable),
        (("^", "must hold", "#", "hours between"), catalogue_candidates.countable),
        (("^", "must hold", "#", "hours between", "#"), catalogue_candidates.countable),
        (("^", "waivers", "#", "rule"), rule_candidates.waivable_rules),
        (("^", "waivers", "#", "place"), sessions_and_lines),
        *_ATHLETE_VALUES,
    ),
    "athlete": _ATHLETE_VALUES,
    "team": (
        (("rules", "*", "*"), rule_candidates.limit_values),
        (("^", "team rules", "#", "weekly sets of"), catalogue_candidates.countable),
        (("^", "team rules", "#", "in"), catalogue_candidates.actions_and_patterns),
        (("^", "equipment", "*", "#"), catalogue_candidates.pieces),
        (("^", "places", "*", "#"), catalogue_candidates.pieces),
        (("^", "exercises", "#"), exercise_files),
        (("^", "leave out", "#"), folders),
    ),
    "exercises": (
        (("actions", "#"), catalogue_candidates.actions),
        (("assists", "#"), catalogue_candidates.actions),
        (("easier", "#"), catalogue_candidates.exercises),
        (("harder", "#"), catalogue_candidates.exercises),
        (("station", "#"), catalogue_candidates.stations),
    ),
}
"""What values name."""

KEYS: SourceTable = {
    "programme": (
        (("loads",), catalogue_candidates.areas),
        *(((key,), weeks_left_out) for key in sorted(BY_WEEK)),
        (("^", "everything"), weeks_not_named),
        (("^", "blocks", "#", "everything"), weeks_not_named),
        *_ATHLETE_KEYS,
    ),
    "athlete": _ATHLETE_KEYS,
    "team": (
        (("weekly limits",), catalogue_candidates.areas),
        (("rules",), rule_candidates.rules),
        (("rules", "*"), rule_candidates.limit_names),
        (("rules", "*", "*"), rule_candidates.names_within_limit),
        (("^", "folders"), folders),
        (("^", "stations"), catalogue_candidates.pieces),
    ),
    "exercises": (),
}
"""What keys name."""
