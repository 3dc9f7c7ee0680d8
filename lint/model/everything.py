"""What changes in some weeks for all lines at once: of a programme, of a block, of one session.

Nothing here is needed for a programme without it, so that other modules import it only when it is.
"""

from __future__ import annotations

import re

from ..findings.finding import Edit
from ..schemas.readings import RULE
from .bounds import NONE, beyond_change
from .changes import TwoWaysError, ValueChange, change_of, changed
from .quantities import Load, Range
from .sessions import Slice
from .values import LocatedNode, Reader, term_of
from .weeks import weeks as weeks_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from ..text.places import Place, Term
    from .sessions import Block, Prescription, Session, Weeks

    Values = dict[str, tuple[Slice, ...]]

KEYS = ("sets", "reps", "load", "rir", "rpe", "rest", "hold")
"""What may change for all lines."""

ADDED = ("rir", "rpe", "rest")
"""What a line gets that has none of its own."""

TAKEN_OUT = object()
"""What stands for ``none``: the lines have no value of that key."""

INSTEAD = {"rir": "rpe", "rpe": "rir"}
"""What is taken out where another value says the same thing otherwise."""


class EveryLine:
    """What changes for all lines in some weeks: ``spans``, runs of weeks of the programme or block.

    ``what`` holds, by key, the new value or the change of it, with its place. For one athlete it may be about
    one ``session`` or ``exercise`` alone, and then ``wins`` over what a line says for a week; with
    ``leaves_out`` they do nothing of it.
    """

    __slots__ = ("exercise", "leaves_out", "place", "session", "spans", "what", "wins")

    def __init__(self, place: Place, spans: Weeks, what: dict[str, tuple[object, Place]]) -> None:
        self.place = place
        self.spans = spans
        self.what = what
        self.session: Term | None = None
        self.exercise: Term | None = None
        self.wins = self.leaves_out = False

    def holds_in(self, week: int) -> bool:
        """Whether it holds in a week."""
        return any(first <= week <= last for first, last in self.spans)

    def applied(
        self, line: Prescription, values: dict[str, Slice], group: Values, before: int
    ) -> dict[str, Slice]:
        """The values of a group of sets with what changes; a line's own value for these weeks stays.

        ``group`` holds all its values by week; ``before`` are weeks before its block that ``spans`` count.
        """
        if self.leaves_out:
            return {}
        weeks = line.session.block.weeks
        found = dict(values)
        for key, (what, place) in self.what.items():
            held = values.get(key)
            if held is not None and self.is_own(held, group[key], before, weeks):
                continue
            if key == "sets" and line.every is not None:
                continue
            value = what
            if what is TAKEN_OUT:
                found.pop(key, None)
                continue
            if isinstance(what, ValueChange):
                value = None if held is None else _changed(key, held.value, what)
                place = held.place if held is not None else place
            elif held is None and key not in ADDED and key not in group:
                continue
            if value is None or (held is not None and isinstance(held.value, Range) and held.value.high == 0):
                continue
            found.pop(INSTEAD.get(key, ""), None)
            found[key] = Slice(1, weeks, value, place)
        return found

    def is_own(self, held: Slice, among: tuple[Slice, ...], before: int, weeks: int) -> bool:
        """Whether a value stands for these weeks alone, and not for others of the block as well."""
        if self.wins or held.by_visit or (held.first <= 1 and held.last >= weeks):
            return False
        return all(
            self.holds_in(week + before)
            for one in among
            if one.place.key == held.place.key
            for week in range(one.first, one.last + 1)
        )


def _changed(key: str, value: object, change: ValueChange) -> object:
    try:
        return changed(key, value, change)
    except TwoWaysError:
        return None


def given_weeks(
    block: Block, of_programme: LocatedNode | None, of_block: LocatedNode | None
) -> dict[str, frozenset[int]]:
    """The weeks of a block for which a value is given to all lines, by key: no change of what each has."""
    given: dict[str, set[int]] = {}
    for at, before in ((of_programme, block.first - 1), (of_block, 0)):
        named: set[int] = set()
        for key, _, values in _others_last(at) if at is not None else ():
            spans = weeks_of(key)
            numbers = [
                week
                for week in range(1, block.weeks + 1)
                if any(first <= week + before <= last for first, last in spans)
                or (key == "other" and week not in named)
            ]
            named.update(numbers)
            for what in KEYS:
                if (part := values.get(what)) is not None and not _is_change(part.words):
                    given.setdefault(what, set()).update(numbers)
    return {what: frozenset(weeks) for what, weeks in given.items()}


def _others_last(at: LocatedNode) -> list[tuple[str, Place, LocatedNode]]:
    """Keys, places and values; those of all other weeks come last, wherever they stand."""
    return sorted(at.pairs(), key=lambda one: one[0] == "other")


def _is_change(words: str) -> bool:
    """Whether words are a change of what a line has, and no value of their own."""
    return words[:1] in ("+", "-", "x", "X", "\u00d7", "\u2212", "h", "H") or bool(_FRACTION(words))


_FRACTION = re.compile("1/[2-9]|2/[3-9]|3/[4-9]|4/[5-9]|5/[6-9]|6/[7-9]|7/[89]|8/9").fullmatch
"""A part of a whole: ``2/3``, but no ``12/10``, which are repetitions of two sets."""


def read_everything(
    reader: Reader, at: LocatedNode, last: int, read: Callable[[str, LocatedNode], object]
) -> tuple[EveryLine, ...]:
    """What changes for all lines, by week; ``last`` is the last week there is, ``read`` reads a value."""
    found: list[EveryLine] = []
    taken: dict[int, str] = {}
    for key, place, value in _others_last(at):
        spans = [(first, min(end, last)) for first, end in weeks_of(key) if first <= last]
        beyond = [end for _, end in weeks_of(key) if end > last]
        twice = [week for first, end in spans for week in range(first, end + 1) if week in taken]
        if beyond:
            reader.report(
                "weeks-beyond",
                place,
                f"{key} goes past week {last}, the last one here.",
                change="Correct the weeks, or the length of the block or programme.",
            )
        if twice:
            reader.report(
                "weeks-overlap",
                place,
                f"Week {twice[0]} stands under {taken[twice[0]]} and under {key}.",
                change="Say what changes in a week once.",
            )
        if key == "other":
            spans = [(week, week) for week in range(1, last + 1) if week not in taken]
        taken.update((week, key) for first, end in spans for week in range(first, end + 1))
        found.append(EveryLine(place, tuple(spans), read_changes(reader, value, read)))
    return tuple(found)


def for_one(
    reader: Reader, at: LocatedNode, weeks: int, read: Callable[[str, LocatedNode], object]
) -> EveryLine:
    """What changes for one athlete: for all lines, or for those of a session or of an exercise."""
    spans = reader.in_weeks(at.get("in weeks"), weeks) or ((1, weeks),)
    entry = EveryLine(at.place, spans, read_changes(reader, at, read))
    session, exercise = at.get("session"), at.get("exercise")
    entry.session = None if session is None else term_of(session)
    entry.exercise = None if exercise is None else term_of(exercise)
    entry.wins = True
    leave_out = at.get("leave out")
    entry.leaves_out = leave_out is not None and leave_out.plain is True
    return entry


def read_changes(
    reader: Reader, at: LocatedNode, read: Callable[[str, LocatedNode], object]
) -> dict[str, tuple[object, Place]]:
    """By key, the new value of all lines or the change of it."""
    what: dict[str, tuple[object, Place]] = {}
    for key in KEYS:
        part = at.get(key)
        if part is None:
            continue
        if part.plain == "none" and key in NONE:
            what[key] = (TAKEN_OUT, part.place)
            continue
        change = change_of(key, part.words) if _is_change(part.words) else None
        if change is not None and (takes := beyond_change(change.kind, change.by)):
            reader.beyond(part, takes)
            continue
        if _FRACTION(part.words) and key in ("sets", "reps"):
            _ask_about_fraction(reader, key, part)
            continue
        value = change or read(key, part)
        if isinstance(value, Load) and value.kind == "percent" and value.span is not None:
            share = value.span.middle / 100
            reader.report(
                RULE,
                part.place,
                f"`{key}: {part.words}` for all lines has two readings: {value.words} of each best lift, or a"
                " factor on what each line has.",
                change=f"Write `x {share:g}` for the factor; give lines loads of their own for the other.",
            )
        elif key == "sets" and part.plain == 0:
            no_sets(reader, part)
        elif value is not None and reader.within(key, part, value):
            what[key] = (value, part.place)
    return what


def _ask_about_fraction(reader: Reader, key: str, at: LocatedNode) -> None:
    """``sets: 2/3`` for all lines: so much of what each line has, or numbers."""
    other, means = at.words.replace("/", "-"), f"{at.words.replace('/', ' to ')} sets"
    if key == "reps":
        other, means = "", "one number for each set"
    edits = [Edit(at.place, f"x {at.words}", f"write x {at.words}: of what each line has")]
    edits += [Edit(at.place, other, f"write {other}")] if other else []
    reader.report(
        RULE,
        at.place,
        f"`{key}: {at.words}` for all lines has two readings: {at.words} of what each line has, or {means}.",
        change=f"Write `x {at.words}` for the factor"
        + (f", `{other}` for the numbers." if other else "; give lines numbers of their own for the other."),
        edits=tuple(edits),
    )


def no_sets(reader: Reader, at: LocatedNode) -> None:
    """Reports 0 sets for all weeks, where less than what there is would do."""
    reader.report(
        "value-out-of-range",
        at.place,
        "0 sets in all of these weeks.",
        change="Write the sets that are left, or `leave out: true` with an exercise or a session.",
    )


def check_everything(
    reader: Reader, entries: tuple[EveryLine, ...], blocks: list[tuple[Block, int, tuple[Session, ...]]]
) -> None:
    """Says where a change has two readings for a line, or changes nothing at all.

    ``blocks`` are blocks with the weeks before them that the entries count, and their sessions.
    """
    for entry in entries:
        for key, (what, place) in entry.what.items():
            if isinstance(what, ValueChange):
                _check(reader, key, what, place, list(_held(entry, key, blocks)))


def _check(reader: Reader, key: str, change: ValueChange, place: Place, held: list[Slice]) -> None:
    changes = False
    for one in held:
        try:
            changes = changed(key, one.value, change) is not None or changes
        except TwoWaysError as two:
            points, factor = f"{change.words.removesuffix('%').strip()} points", f"x {1 + change.by / 100:g}"
            reader.report(
                RULE,
                place,
                f"{change.words} on {one.place.excerpt} has two readings: {' or '.join(two.ways)}.",
                change=f"Write `{points}` or `{factor}`.",
                edits=(
                    Edit(place, points, f"write {points}"),
                    Edit(place, factor, f"write {factor}: of what each line has"),
                ),
            )
            return
    if not changes:
        reader.report(
            "nothing-changes",
            place,
            f"`{key}: {change.words}` changes no line in these weeks.",
            severity="warning",
            change="Correct it, or take it out; what a line says for the week alone stays.",
        )


def _held(
    entry: EveryLine, key: str, blocks: list[tuple[Block, int, tuple[Session, ...]]]
) -> Iterator[Slice]:
    """The values of a key that an entry may change."""
    for block, before, sessions in blocks:
        lines = [line for session in sessions for line in session.prescriptions]
        for line in lines:
            if key == "sets" and line.every is not None:
                continue
            for group in line.groups:
                for held in group.get(key, ()):
                    meets = held.by_visit or any(
                        entry.holds_in(week + before)
                        for week in range(held.first, min(held.last, block.weeks) + 1)
                    )
                    if meets and not entry.is_own(held, group[key], before, block.weeks):
                        yield held
