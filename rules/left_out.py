"""Main lifts that stand before and behind some weeks, and in none of them."""

from __future__ import annotations

import re

from ..lint.body.catalogue import LEVELS
from ..lint.counting.unknown import is_no_lift
from ..lint.engine.limits import Condition
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import says, shortened, week_list
from .files_words import of_programme
from .lift_sets import lifts_in_sight
from .shared import capital

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Visit
    from ..lint.counting.week import Week
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.sessions import Session


@rule(
    "lift-left-out",
    family="progression",
    severity="note",
    confidence="common practice",
    why="A lift that comes back heavier after weeks without it most often fell out when a block was written.",
    sources=(),
    options=(
        Condition("weeks", 2, "weeks with it before, without it, and with it again", "common practice"),
    ),
    stands_back=("rehabilitation",),
    asks=True,
)
def lift_left_out(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """A main lift stands in the weeks before and after some others, and nothing like it in these.

    Looks at lifts among the priorities, and at those that are loaded in percent of a best on file, or of
    another lift, over all typical weeks. Two weeks or more must hold the lift right before the gap and right
    after it, and more in all than lack it. Wants the lift, or another of its movement pattern, in the weeks
    between. Silent where a note of these weeks names the lift, or any says that it is left out, where the
    athlete is to spare it, and where there is nothing to do it with then. Another of its pattern counts for
    nothing where the sessions of the lift go on as they were, without it alone.

    Flags:
        programme: Twelve weeks
        goal: strength
        athlete: {name: Ida, best lifts: {bench press: 60 kg}}
        blocks:
          - block: Base
            weeks: 2
            sessions: &base
              - session: Upper
                exercises: [{exercise: bench press, sets: 4, reps: 6, load: 70 %}]
          - block: Middle
            weeks: 2
            sessions:
              - session: Upper  # <- here
                exercises: [{exercise: push press, sets: 4, reps: 5, rir: 2}]
          - {block: Top, weeks: 2, sessions: *base}

    Passes:
        programme: Twelve weeks
        goal: strength
        athlete: {name: Ida, best lifts: {bench press: 60 kg}}
        blocks:
          - block: Base
            weeks: 2
            sessions: &base
              - session: Upper
                exercises: [{exercise: bench press, sets: 4, reps: 6, load: 70 %}]
          - block: Middle
            weeks: 2
            sessions:
              - session: Upper
                exercises: [{exercise: incline bench press, sets: 4, reps: 5, rir: 2}]
          - {block: Top, weeks: 2, sessions: *base}
    """
    least = max(int(limits.number("weeks")), 1)
    if len(ledger.weeks) < 3 * least:
        return
    for lift, (name, _) in lifts_in_sight(ledger, by_others=True).items():
        for gap, fell_out in _gaps(ledger, lift, least):
            if _is_meant(ledger, lift, name, gap):
                continue
            entries = [(week, entry) for week in ledger.weeks if (entry := _first_of(week, lift))]
            line = entries[0][1].prescription
            session = _session_like(line.session, gap[0])
            lacking = "not" if fell_out else "nothing like it"
            as_before = f", with {session.name} as before but for it" if fell_out else ""
            yield found(
                session.place,
                f"{capital(shortened(name))} is in {week_list([week.number for week, _ in entries])},"
                f" {lacking} in {week_list([week.number for week in gap])}{as_before}.",
                wanted="it, or another of its kind",
                change=f"Put it back into {session.name}, or say in a note that it is left out.",
                where=session.name,
                subject=lift.name,
                amount=Amount(0, len(gap), "weeks"),
                weeks=tuple(week.number for week in gap),
                related=(Related(line.place, line_name(line)),),
            )


def _gaps(ledger: Ledger, lift: Exercise, least: int) -> Iterator[tuple[list[Week], bool]]:
    """The weeks without a lift between typical weeks with it, of which more hold it than do not; and whether
    its sessions go on without it alone.

    Before the gap and after it as many weeks in a row as the limit says hold the lift, typical ones or not.
    """
    weeks = ledger.typical_weeks()
    held = [_first_of(week, lift) is not None for week in weeks]
    for start in range(1, len(weeks)):
        end = [*held, True].index(True, start)
        last, back = weeks[start - 1].number, weeks[end].number if end < len(weeks) else 0
        if not held[start - 1] or not least <= end - start < sum(held) or not back:
            continue
        around = (*ledger.weeks[max(last - least, 0) : last], *ledger.weeks[back - 1 : back - 1 + least])
        if len(around) < 2 * least or any(_first_of(week, lift) is None for week in around):
            continue
        gap = [week for week in ledger.weeks[last : back - 1] if _first_of(week, lift) is None]
        fell_out = all(_fell_out(lift, ledger.weeks[last - 1], week) for week in gap)
        if fell_out or not any(_is_like(entry, lift) for week in gap for _, entry in week.entries()):
            yield gap, fell_out


def _first_of(week: Week, lift: Exercise) -> SetGroup | None:
    return next((entry for _, entry in week.entries() if entry.exercise is lift), None)


def _fell_out(lift: Exercise, before: Week, week: Week) -> bool:
    """Whether the sessions that held a lift hold the same without it, and nothing in its place."""
    now = {visit.session.name: _lifts_of(visit) for visit in week.visits}
    had = {visit.session.name: _lifts_of(visit) for visit in before.visits if lift in _lifts_of(visit)}
    return all(now.get(name) == lifts - {lift} for name, lifts in had.items())


def _lifts_of(visit: Visit) -> set[Exercise | None]:
    return {entry.exercise for _, entry in visit.entries()}


def _is_like(entry: SetGroup, lift: Exercise) -> bool:
    """Whether a group of sets is of a lift's movement pattern, or as fast by the same actions, or may be."""
    exercise = entry.exercise
    if exercise is None:
        return bool(entry.prescription.kind) or not is_no_lift(entry)
    if not set(lift.patterns).isdisjoint(exercise.patterns):
        return True
    return (exercise.kind, exercise.actions) == (lift.kind, lift.actions)


def _is_meant(ledger: Ledger, lift: Exercise, name: str, gap: Sequence[Week]) -> bool:
    """Whether the lift is to be spared, cannot be done in the weeks without it, or a note speaks of it."""
    from ..lint.counting.suggestions import Suits

    places = {visit.at for week in gap for visit in week.visits}
    if all(Suits(ledger.header, steps=len(LEVELS), at=at).obstacle(lift) for at in places):
        return True
    called = (name, lift.name)
    beside = {text for week in gap for text in (week.block.note, *(one.session.note for one in week.visits))}
    clauses = [clause for text in of_programme(ledger.programme) for clause in re.split(r"[.;,\n]", text)]
    return says(called, *beside) or any(says(called, one) and says(LEFT_OUT, one) for one in clauses)


LEFT_OUT = (
    "no", "not", "without", "out", "off", "drop", "dropped", "drops", "rest", "rests", "pause", "paused",
    "instead", "only", "back", "returns", "leave", "left", "skip", "break",
)  # fmt: skip
"""Words by which a note says of a lift that it is left out for a while."""


def _session_like(session: Session, week: Week) -> Session:
    """The session of a week that is called like another one, else its first."""
    there = [visit.session for visit in week.visits]
    return next((one for one in there if one.name == session.name), there[0])
