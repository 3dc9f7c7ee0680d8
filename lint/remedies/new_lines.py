"""New lines of a session: written like their neighbours, where a coach would put them.

What a new line asks for is a beginning to write on (common practice, no source): sets as its neighbours have,
three at most; repetitions that suit the kind of lift; effort and rest as its neighbours have.
"""

from __future__ import annotations

from bisect import bisect_left

from ..body.catalogue import COMPOUND
from ..counting.effort import FAST_KINDS
from ..findings.edits import in_one
from ..model import quantities
from ..syntax.additions import items_added
from ..syntax.enclosing import way_to
from ..syntax.tree import Mapping, Scalar, Sequence

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from ..body.catalogue import Exercise
    from ..body.known import Known
    from ..findings.finding import Edit
    from ..model.sessions import Session
    from ..syntax.tree import Node

MOST_SETS = 3
LARGE_REPS, SMALL_REPS, FAST_REPS, HOLD = "8-10", "10-15", "3", "20-30 s"
RESERVE = "2"
"""Repetitions in reserve where no neighbour says any, or says that none is left."""

FAST, LARGE, SMALL, LAST = range(4)
"""The order of lifts in a session: jumps and throws, large lifts, lifts for one joint; to end with calves,
trunk, and what is done for time or distance."""

LAST_ACTIONS = ("plantarflexion", "spine flexion", "spine extension", "lateral flexion", "rotation")
LAST_KINDS, LAST_IMPLEMENTS = ("isometric", "carry", "endurance"), ("rope", "sled")


def again_in(session: Session, known: Known, name: str, words: dict[str, str]) -> Edit | None:
    """An edit that writes a line of ``words`` by key in a session, where a coach would put its exercise."""
    exercise = known.exercise(name)
    edits = [] if exercise is None else list(_added(session, [exercise], known, "", words))
    return in_one(f"add {name} to {session.name}", edits)


def choice_of(session: Session, known: Known, names: Iterable[str], weeks: str = "") -> Iterator[Edit]:
    """For each of some exercises an edit that adds a line of it to a session, in some ``weeks`` or in all."""
    for name in names:
        edit = all_of([(session, name)], known, weeks)
        if edit is not None:
            yield edit


def all_of(wanted: Iterable[tuple[Session, str]], known: Known, weeks: str = "") -> Edit | None:
    """One edit that adds lines to sessions; None where there is none that they could be written like.

    ``weeks`` says in which they are done, ``5-8``; empty for all.
    """
    wanted = list(dict.fromkeys(wanted))
    edits: list[Edit] = []
    for session in dict.fromkeys(session for session, _ in wanted):
        exercises = [known.exercise(name) for at, name in wanted if at is session]
        edits += _added(session, [one for one in exercises if one is not None], known, weeks)
    names = " and ".join(dict.fromkeys(name for _, name in wanted))
    sessions = " and ".join(dict.fromkeys(session.name for session, _ in wanted))
    return in_one(f"add {names} to {sessions}{f' in weeks {weeks}' if weeks else ''}", edits)


def _added(
    session: Session, exercises: list[Exercise], known: Known, weeks: str, words: dict[str, str] | None = None
) -> Iterator[Edit]:
    """Edits that add lines to one session, one for each place; with ``words`` a line that says just that."""
    items = _items_of(session)
    like = None if items is None else next((one for one in items.items if _is_line(one)), None)
    if items is None or not isinstance(like, Mapping):
        return
    ranks = _ranks(session, items, known)
    places: dict[int, list[Exercise]] = {}
    for exercise in sorted(exercises, key=place_of):
        before = [at for at, rank in enumerate(ranks) if rank <= place_of(exercise)]
        places.setdefault(max(before, default=-1), []).append(exercise)
    for number, several in places.items():
        near = next((one for one in items.items[max(number, 0) :: -1] if _is_line(one)), like)
        pairs = list(zip(items.items, ranks, strict=True))
        others = [pair for pair in pairs if _is_line(pair[0])]
        lines = [words or _line(one, near, others, weeks) for one in several]
        if not words and {"rir", "rpe"} & session.block.given.keys():
            lines = [_without_effort(one, near) for one in lines]
        edit = items_added(items, number, lines, "add", near)
        if edit is not None:
            yield edit


def _items_of(session: Session) -> Sequence | None:
    """The list of a session's lines, as it stands in the text."""
    for line in session.prescriptions:
        for step in way_to(line.place):
            if step.key == "exercises":
                return step.node if isinstance(step.node, Sequence) else None
    return None


def _is_line(item: Node) -> bool:
    return isinstance(item, Mapping) and "exercise" in item.entries and item.defined is None


def _ranks(session: Session, items: Sequence, known: Known) -> list[int]:
    """The rank of each item of a session: of a superset or circuit, that of its first known line."""
    lines = {line.place.start: line.names() for line in session.prescriptions}
    starts = sorted(lines)
    ranks: list[int] = []
    for item in items.items:
        held = starts[bisect_left(starts, item.start) : bisect_left(starts, item.end)]
        names = [lines[start][0].words for start in held if lines[start]]
        found = [exercise for name in names if (exercise := known.exercise(name)) is not None]
        ranks.append(min(map(place_of, found), default=ranks[-1] if ranks else LARGE))
    return ranks


def place_of(exercise: Exercise) -> int:
    """Its place in the order of lifts in a session."""
    if exercise.kind in FAST_KINDS:
        return FAST
    if exercise.pattern in COMPOUND:
        return LARGE
    by_the_clock = exercise.kind in LAST_KINDS or exercise.implement in LAST_IMPLEMENTS
    return LAST if by_the_clock or any(one in LAST_ACTIONS for one in exercise.actions) else SMALL


def _line(exercise: Exercise, near: Node, others: list[tuple[Node, int]], weeks: str) -> dict[str, str]:
    """The keys of a new line with their words, like those of the line ``near`` it and of the others.

    ``others`` are the lines of the session, each with its rank.
    """
    fast, held = exercise.kind in FAST_KINDS, exercise.kind == "isometric"
    keys = {"exercise": exercise.name, **({"in weeks": weeks} if weeks else {}), "sets": _sets(near)}
    if held:
        keys["hold"] = HOLD
    elif fast:
        keys["reps"] = FAST_REPS
    else:
        keys["reps"] = LARGE_REPS if exercise.pattern in COMPOUND else SMALL_REPS
    if exercise.unilateral:
        keys["side"] = "each"
    if not fast and not held:
        keys.update(_effort([near, *(one for one, _ in others)]))
    rest = _rest(place_of(exercise), others)
    return {**keys, **({"rest": rest} if rest else {})}


def _without_effort(keys: dict[str, str], near: Node) -> dict[str, str]:
    """The keys of a line without effort, where that is given to all lines and its neighbour says none."""
    says = any(_words(near, key) for key in ("rir", "rpe"))
    return keys if says else {key: words for key, words in keys.items() if key not in ("rir", "rpe")}


def _rest(rank: int, others: list[tuple[Node, int]]) -> str:
    """The rest of lines of the same rank; else of lifts as small or as large; else of all; or empty.

    What cannot be read is not written once more.
    """
    small = rank >= SMALL
    rests = [(words, other) for one, other in others if quantities.duration(words := _words(one, "rest"))]
    alike = [words for words, other in rests if other == rank]
    alike = alike or [words for words, other in rests if (other >= SMALL) == small]
    return _most_common(alike or [words for words, _ in rests])


def _most_common(words: list[str]) -> str:
    """The words that stand most often, of several the first: one odd value is not copied."""
    return max(words, key=words.count, default="")


def _sets(near: Node) -> str:
    words = _words(near, "sets")
    return words if words.isdecimal() and 0 < int(words) <= MOST_SETS else str(MOST_SETS)


def _effort(lines: list[Node]) -> dict[str, str]:
    """RIR or RPE as the nearest line has it that leaves something; else repetitions in reserve."""
    for line in lines:
        for key, most in (("rir", 1.0), ("rpe", -9.0)):
            words = _words(line, key)
            try:
                leaves = float(words) * (1 if key == "rir" else -1) >= most
            except ValueError:
                continue
            if leaves:
                return {key: words}
    return {"rir": RESERVE}


def _words(line: Node, key: str) -> str:
    """The words of a plain value of a line; empty where there is none."""
    entry = line.entries.get(key) if isinstance(line, Mapping) else None
    value = entry.value if entry is not None else None
    return value.text if isinstance(value, Scalar) and value.style == "" else ""
