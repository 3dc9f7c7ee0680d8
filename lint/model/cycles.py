"""Values that repeat to the end of a block, and values by visit: the first, second, third time of a session.

Nothing here is needed for values by week, so that `read_line` imports it only when it is.
"""

from __future__ import annotations

from ..findings.finding import Edit
from ..schemas.readings import RULE
from ..wording.words import week_list
from .bounds import beyond_change
from .changes import TwoWaysError, ValueChange, change_of, changed, is_change
from .sessions import Slice, VisitSlice
from .weeks import sessions_in
from .weeks import weeks as weeks_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence
    from typing import Protocol

    from ..findings.finding import Finding
    from ..text.places import Place
    from .sessions import Block, Session, Weeks
    from .values import LocatedNode, Reader

    class CycleReader(Protocol):
        """What is needed here of the reader of a line."""

        findings: list[Finding]
        line: LocatedNode | None
        weeks: int
        spans: Weeks
        by_visit: bool
        pairs: dict[str, tuple[Slice, ...]]

        def beyond(self, at: LocatedNode, takes: str) -> bool:
            """Reports a value beyond what is taken."""

        def by_week(self, at: LocatedNode, key: str = "") -> list[tuple[int, int, LocatedNode]]:
            """First week, last week and value."""

        def read_parts(self, key: str, parts: list[tuple[int, int, LocatedNode]]) -> tuple[Slice, ...]:
            """The values of a key that can be read."""

        def report(
            self,
            rule: str,
            place: Place,
            counted: str,
            *,
            change: str,
            edits: tuple[Edit, ...] = ...,
            line: Place | None = ...,
        ) -> None:
            """Adds a finding."""


AGAIN, OTHER, VISIT = "again", "other", "visit"

MOST_VISITS = 7
"""Visits of one session in a week: one a day."""


def cycled(reader: CycleReader, key: str, at: LocatedNode) -> tuple[Slice, ...]:
    """The values of a key by week or by visit, repeated where `again` says so."""
    by_visit = any(word[:5] == VISIT for word, _, _ in at.pairs())
    again = at.get(AGAIN)
    if again is not None and OTHER in at:
        reader.report(
            "weeks-overlap",
            again.place,
            "`other` and `again` both say what holds in the weeks that are left.",
            change="Take one of them out.",
        )
        again = None
    if by_visit and reader.line is None:
        reader.report(
            "keys-at-odds",
            at.place,
            "What is different for one athlete goes by week, not by visit.",
            change="Write its weeks.",
        )
        return ()
    before = len(reader.findings)
    if by_visit:
        parts = _by_visit(reader, at, repeats=again is not None)
        wanted = list(range(1, MOST_VISITS * reader.weeks + 1))
    else:
        parts = reader.by_week(at, key)
        wanted = [week for first, last in reader.spans for week in range(first, last + 1)]
    slices = reader.read_parts(key, parts)
    if by_visit:
        reader.by_visit = True
        slices = tuple(VisitSlice(one.first, one.last, one.value, one.place) for one in slices)
    if again is None or not slices:
        return slices
    if max(one.last for one in slices) < wanted[0]:
        reader.report(
            "weeks-left-out",
            at.place,
            f"No value for {week_list(wanted)}: all that are here end before.",
            change="Write the weeks in which the line is done.",
            line=at.place,
        )
        return ()
    beyond = any(one.rule == "weeks-beyond" for one in reader.findings[before:])
    repeated = _repeated(reader, key, slices, again, wanted, quiet=beyond)
    other = "reps" if key == "sets" else "sets"
    if key in ("sets", "reps") and other in reader.pairs:
        same = ValueChange("same", 0.0, "same")
        reader.pairs[other] = tuple(_turns(reader, other, reader.pairs[other], again, same, wanted))
    return repeated


def _by_visit(reader: CycleReader, at: LocatedNode, *, repeats: bool) -> list[tuple[int, int, LocatedNode]]:
    """First visit, last visit and value."""
    parts: list[tuple[int, int, LocatedNode]] = []
    taken: dict[int, str] = {}
    for word, place, value in at.pairs():
        if word == AGAIN:
            continue
        spans = weeks_of(word.removeprefix("visits").removeprefix(VISIT).strip()) if word[:5] == VISIT else ()
        if not spans:
            reader.report(
                "weeks-overlap",
                place,
                f"`{word}` stands beside visits: a value goes by visit or by week.",
                change="Write all of its keys as visits, or none.",
                line=at.written,
            )
            continue
        twice = [visit for first, last in spans for visit in range(first, last + 1) if visit in taken]
        if twice:
            reader.report(
                "weeks-overlap",
                place,
                f"Visit {twice[0]} stands under {taken[twice[0]]} and under {word}.",
                change="Give each visit one value.",
            )
        for first, last in spans:
            taken.update(dict.fromkeys(range(first, last + 1), word))
            parts.append((first, last, value))
    left_out = [visit for visit in range(1, max(taken, default=0)) if visit not in taken]
    if left_out:
        reader.report(
            "weeks-left-out",
            at.written,
            f"No value for {week_list(left_out).replace('week', VISIT)}.",
            change="Add the missing visits.",
            line=at.written,
        )
    return parts


def _repeated(
    reader: CycleReader,
    key: str,
    slices: tuple[Slice, ...],
    again: LocatedNode,
    wanted: list[int],
    *,
    quiet: bool,
) -> tuple[Slice, ...]:
    change = change_of(key, again.plain)
    if change is None and not is_change(again.plain):
        return slices  # which the schema says
    if change is None:
        example = {"load": "+2.5 kg", "rest": "+15 s", "hold": "+5 s", "distance": "+5 m"}.get(key, "+1")
        if key in ("tempo", "exercise", "velocity", "side"):
            example = "same"
        reader.report(
            "value-unreadable",
            again.place,
            f"`{again.words}` is no step for `{key}`.",
            change=f"Write `again: {example}`{' or `again: same`' if example != 'same' else ''}.",
        )
        change = ValueChange("same", 0.0, "same")
    if takes := beyond_change(change.kind, change.by):
        reader.beyond(again, takes)
        return slices
    last = max(one.last for one in slices)
    if last >= wanted[-1]:
        if not quiet:
            reader.report(
                "nothing-repeats",
                again.place,
                f"The values run to week {last}, the last one here: `again` repeats nothing.",
                change="Take `again` out, or correct the weeks.",
            )
        return slices
    return tuple(_turns(reader, key, slices, again, change, wanted))


def _turns(
    reader: CycleReader,
    key: str,
    slices: Sequence[Slice],
    again: LocatedNode,
    change: ValueChange,
    wanted: list[int],
) -> list[Slice]:
    """The slices, and those of all further turns up to the last week or visit that is wanted."""
    found = list(slices)
    last = max(one.last for one in slices)
    cycle = [number for number in wanted if number <= last]
    held = {number: one for one in slices for number in range(one.first, one.last + 1)}
    values: dict[tuple[int, int], object] = {}
    for index in range(len(cycle), len(wanted)):
        turn, at = divmod(index, len(cycle))
        base, number = held.get(cycle[at]), wanted[index]
        if base is None:
            continue
        made = (id(base), turn)
        if made not in values:
            try:
                values[made] = changed(key, base.value, change, turn)
            except TwoWaysError as two:
                points = f"{change.words.removesuffix('%').strip()} points"
                reader.report(
                    RULE,
                    again.place,
                    f"{again.words} on {base.place.excerpt} has two readings: {' or '.join(two.ways)}.",
                    change=f"Write `{points}`, or the values.",
                    edits=(Edit(again.place, points, f"write {points}", certain=False),),
                )
                return found
        value = values[made]
        if value is None:
            _report_end(reader, again, base, number)
            return found
        before = found[-1]
        if before.value is value and before.last == number - 1:
            found[-1] = type(base)(before.first, number, value, base.place)
        else:
            found.append(type(base)(number, number, value, base.place))
    return found


def _report_end(reader: CycleReader, again: LocatedNode, base: Slice, number: int) -> None:
    unit = VISIT if base.by_visit else "week"
    reader.report(
        "step-runs-out",
        again.place,
        f"From {unit} {number} on, {base.place.excerpt} cannot change by {again.words} any more.",
        change=f"Give the {unit}s from {number} on values of their own, or `again: same`.",
    )


def changed_from_before(reader: CycleReader, key: str, at: LocatedNode, before: Sequence[Slice]) -> object:
    """``half``, ``x 2/3``, ``-1``: what a value by week comes to, from the last weeks before it that state
    one of their own; None where there are none, or where it comes to nothing.
    """
    change = change_of(key, at.words)
    stated = [one for one in before if change_of(key, one.place.excerpt) is None]
    if stated and change is not None:
        found = changed(key, max(stated, key=lambda one: one.last).value, change)
        if found is not None:
            return found
    why = "comes to none" if stated else "has no weeks before it to be a part of"
    reader.report(
        "value-unreadable",
        at.place,
        f"`{key}: {at.words}` {why}.",
        change=f"Write the number{' of sets' if key == 'sets' else ''}.",
    )
    return None


# Visits of a block


def check_visits(reader: Reader, block: Block, sessions: tuple[Session, ...]) -> None:
    """Says where values by visit end before the visits of a block do, or run past them."""
    times = _visits(block, sessions)
    wrong = [one.line for one in reader.findings if one.rule in ("weeks-left-out", "weeks-overlap")]
    for session in sessions:
        there = times.get(session, 0)
        for line in session.prescriptions if there else ():
            for group in line.groups:
                for slices in (held for held in group.values() if held and held[0].by_visit):
                    last, place = max(one.last for one in slices), slices[-1].place
                    if any(one.start <= place.start < one.end for one in wrong):
                        continue
                    if last < there:
                        reader.report(
                            "weeks-left-out",
                            place,
                            f"The session takes place {there} times; its values end with visit {last}.",
                            change="Add the missing visits, or `again:` with a step.",
                        )
                    elif last > there and last < MOST_VISITS * block.weeks:
                        reader.report(
                            "weeks-beyond",
                            place,
                            f"Visit {last} is past the last one: the session takes place {there} times.",
                            change="Correct the visits, or the length of the block or programme.",
                        )


def _visits(block: Block, sessions: tuple[Session, ...]) -> dict[Session, int]:
    """How often each session takes place in its block."""
    times: dict[Session, int] = {}
    turn = 0
    for week in range(1, block.weeks + 1):
        held = sessions_in(sessions, week)
        turning = [session for session in held if not session.days] if block.rotation else []
        for session in held:
            if session not in turning:
                times[session] = times.get(session, 0) + max(len(session.days_in(week)), 1)
        for _ in block.rotation if turning else ():
            session = turning[turn % len(turning)]
            times[session] = times.get(session, 0) + 1
            turn += 1
    return times
