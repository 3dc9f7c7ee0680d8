"""Nordic curls: how often."""

from __future__ import annotations

from math import ceil

from ..lint.counting.counts import counted_lines
from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.wording.words import counted_noun
from .shared import where_named, where_to_add

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.ledger import Ledger
    from ..lint.counting.set_group import SetGroup
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding


@rule(
    "nordics-too-rare",
    family="coverage",
    severity="note",
    confidence="meta-analysis",
    why="In a review athletes benefited where they kept to more than half of the programme and did Nordic"
    " curls more often than once in three weeks; a re-analysis of such trials was inconclusive. This"
    " speaks of a dose and forecasts no injury.",
    sources=("ripley-2021", "impellizzeri-2021"),
    options=(
        Option("weeks", 3, "weeks for each session with Nordic curls", "ripley-2021"),
        Option(
            "exercises",
            ("Nordic curl", "assisted Nordic curl", "weighted Nordic curl"),
            "exercises that count",
            "the Nordic curl: Ripley and others 2021; that its easier and heavier forms count is common"
            " practice, no source",
        ),
    ),
    stands_back=("rehabilitation",),
)
def nordics_too_rare(ledger: Ledger, limits: Limits) -> Iterator[DraftFinding]:
    """Nordic curls less often than once in three weeks.

    Counts the sessions of the whole programme that hold a set of Nordic curls; wants one in 3 weeks on
    average, or none. Silent where a session names them in its preparation.

    Flags:
        programme: Season
        weeks: 7
        sessions:
          - session: Gym
            exercises:
              - {exercise: Nordic curl, sets: {1: 2, 2-4: 0, 5: 2, 6-7: 0}, reps: 5}  # <- here

    Passes:
        programme: Season
        weeks: 6
        sessions:
          - session: Gym
            exercises:
              - {exercise: Nordic curl, sets: {1: 2, 2-4: 0, 5: 2, 6: 0}, reps: 5}
    """
    names = limits.names("exercises")
    if not any(is_one_of(entries[0], names) for entries in ledger.lifts().values()):
        return
    sessions = ledger.how_often(lambda entry: is_one_of(entry, names))
    weeks = len(ledger.weeks)
    if are_prepared(ledger, names) or ledger.could_hold(actions=("knee flexion",)):
        return
    counted = ledger.sets_where(lambda entry: is_one_of(entry, names))
    apart = weeks / sessions
    if apart > limits.number("weeks"):
        yield found(
            where_to_add(counted),
            f"{counted_noun(sessions, 'session')} with Nordic curls in {weeks} weeks.",
            wanted=limits.words("at least one in {:week}", "weeks"),
            change="Do them every week or two, or put another leg curl in their place.",
            where=where_named(counted),
            group="Nordic curl",
            amount=Amount(sessions, ceil(weeks / limits.number("weeks")), "sessions"),
            related=counted_lines(counted, of=f"{counted} sets of Nordic curls"),
        )


def are_prepared(ledger: Ledger, names: tuple[str, ...]) -> bool:
    """Whether a session names one of some exercises in its preparation."""
    return any(
        name.casefold() in term.words.casefold()
        for session in ledger.programme.sessions()
        for term in session.preparation
        for name in names
    )


def is_one_of(entry: SetGroup, names: tuple[str, ...]) -> bool:
    """Whether a group of sets is of one of some exercises."""
    return entry.exercise is not None and entry.exercise.name in names
