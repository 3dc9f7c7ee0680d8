"""Main lifts that stand before and behind some weeks, and in none of them."""

from __future__ import annotations

from ..lint.engine.limits import Condition
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, Related, found
from ..lint.model.naming import line_name
from ..lint.wording.words import says, shortened, week_list
from .files_words import of_programme
from .lift_sets import main_lifts
from .shared import capital

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from ..lint.body.catalogue import Exercise
    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
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

    Looks at lifts among the priorities, and at those that are loaded in percent of a best on file, over all
    typical weeks. Two weeks or more must hold the lift right before the gap and right after it, and more in
    all than lack it. Wants the lift, or another of its movement pattern, in the weeks between. Silent where a
    note names the lift, where the athlete is to spare it, and where there is nothing to do it with then.

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
    for lift, (name, _) in main_lifts(ledger).items():
        for gap in _gaps(ledger, lift, least):
            if _is_meant(ledger, lift, name, gap):
                continue
            entries = [(week, entry) for week in ledger.weeks if (entry := _first_of(week, lift))]
            line = entries[0][1].prescription
            session = _session_like(line.session, gap[0])
            yield found(
                session.place,
                f"{capital(shortened(name))} is in {week_list([week.number for week, _ in entries])},"
                f" nothing like it in {week_list([week.number for week in gap])}.",
                wanted="it, or another of its kind",
                change=f"Put it back into {session.name}, or say in a note that it is left out.",
                where=session.name,
                subject=lift.name,
                amount=Amount(0, len(gap), "weeks"),
                weeks=tuple(week.number for week in gap),
                related=(Related(line.place, line_name(line)),),
            )


def _gaps(ledger: Ledger, lift: Exercise, least: int) -> Iterator[list[Week]]:
    """The weeks without a lift between typical weeks with it, of which more hold it than do not."""
    weeks = ledger.typical_weeks()
    held = [_first_of(week, lift) is not None for week in weeks]
    with_it = [True] * least
    for start in range(least, len(weeks)):
        end = [*held, True].index(True, start)
        without = [False] * (end - start)
        if held[start - least : end + least] != with_it + without + with_it:
            continue
        between = ledger.weeks[weeks[start - 1].number : weeks[end].number - 1]
        gap = [week for week in between if _first_of(week, lift) is None]
        alike = any(_is_like(entry, lift) for week in gap for _, entry in week.entries())
        if least <= len(without) < sum(held) and not alike:
            yield gap


def _first_of(week: Week, lift: Exercise) -> SetGroup | None:
    return next((entry for _, entry in week.entries() if entry.exercise is lift), None)


def _is_like(entry: SetGroup, lift: Exercise) -> bool:
    """Whether a group of sets is of a lift's movement pattern, or may be."""
    exercise = entry.exercise
    return exercise is None or not set(lift.patterns).isdisjoint(exercise.patterns)


def _is_meant(ledger: Ledger, lift: Exercise, name: str, gap: Sequence[Week]) -> bool:
    """Whether the lift is to be spared, cannot be done in the weeks without it, or a note speaks of it."""
    from ..lint.counting.suggestions import Suits

    places = {visit.at for week in gap for visit in week.visits}
    return all(Suits(ledger.header, at=at).obstacle(lift) for at in places) or says(
        (name, lift.name), *of_programme(ledger.programme)
    )


def _session_like(session: Session, week: Week) -> Session:
    """The session of a week that is called like another one, else its first."""
    there = [visit.session for visit in week.visits]
    return next((one for one in there if one.name == session.name), there[0])
