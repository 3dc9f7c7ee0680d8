"""Rest of heavy lifts that are done in turn with others."""

from __future__ import annotations

from math import ceil

from ..lint.counting.session_time import until_next
from ..lint.engine.limits import Option
from ..lint.engine.registry import rule
from ..lint.findings.finding import Amount, found
from ..lint.model.naming import line_name
from ..lint.wording.words import listed, plain
from .offers import writing
from .rest import HEAVY, as_rest, made_heavy, several_whole_sets
from .shared import capital

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..lint.counting.set_group import SetGroup
    from ..lint.counting.tally import Visit
    from ..lint.engine.limits import Limits
    from ..lint.findings.finding import DraftFinding
    from ..lint.model.pairings import Pairing
    from ..lint.model.quantities import Range

A_STEP = 15
"""Seconds to which a longer rest is rounded up."""


@rule(
    "rest-too-short-in-pairs",
    family="rest",
    severity="note",
    confidence="guideline",
    why="A handbook gives heavy sets of big lifts 2 to 5 minutes. In a review pairs of opposing muscles kept"
    " their repetitions, so the set of the other lift counts as rest here.",
    sources=("nsca-zones", "zhang-2025"),
    options=(
        Option("shortest", 120, "seconds from a heavy set to the next of its lift", "nsca-zones"),
        *HEAVY,
    ),
    stands_back=("rehabilitation",),
    needs=("rest",),
)
def rest_too_short_in_pairs(visit: Visit, limits: Limits) -> Iterator[DraftFinding]:
    """Heavy sets of a big lift that come around in a superset in less than two minutes.

    Adds up the rest that is written in a superset and a set of each other lift of it, by the long ends of
    ranges; wants 2 min from a heavy set to the next one of its lift. Heavy is what `rest-too-short-heavy`
    calls so. Silent where no rest is written, for contrast, and for sets broken up.

    Flags:
        programme: Pairs
        goal: strength
        sessions:
          - session: Gym
            exercises:
              - superset:
                  - {exercise: bench press, sets: 4, reps: 3, rir: 1}
                  - {exercise: bent-over row, sets: 4, reps: 6, rir: 3, rest: 45 s}  # <- here

    Passes:
        programme: Pairs
        goal: strength
        sessions:
          - session: Gym
            exercises:
              - superset:
                  - {exercise: bench press, sets: 4, reps: 3, rir: 1, rest: 60 s}
                  - {exercise: bent-over row, sets: 4, reps: 6, rir: 3, rest: 60 s}
    """
    supersets: dict[Pairing, list[SetGroup]] = {}
    for entry in visit.own:
        paired = entry.prescription.paired
        if paired is not None and paired.kind == "superset" and entry.sets.high:
            members = supersets.setdefault(paired, [])
            if all(one.prescription is not entry.prescription for one in members):
                members.append(entry)
    for paired, members in supersets.items():
        rested = [(one, rest) for one in members if (rest := one.work.rest) is not None]
        if len(members) > 1 and rested:
            yield from _too_soon(paired, members, *rested[-1], limits)


def _too_soon(
    paired: Pairing, members: list[SetGroup], rested: SetGroup, rest: Range, limits: Limits
) -> Iterator[DraftFinding]:
    """What is said of the heavy lifts of a superset, at the last rest that is written in it."""
    shortest = limits.number("shortest")
    works = {one: (one.work, one.slot, one.seconds_said) for one in members}
    heavy = [one for one in members if several_whole_sets(one) and made_heavy(one, limits)]
    soon = {one: until_next(paired, list(works.values()), works[one]).high for one in heavy}
    short = {one: seconds for one, seconds in soon.items() if seconds < shortest}
    if not short:
        return
    place, soonest = rested.work.places["rest"], min(short.values())
    longer = A_STEP * ceil((rest.high + shortest - soonest) / A_STEP)
    names = listed([one.name for one in short])
    yield found(
        place,
        f"{capital(names)} {'come' if len(short) > 1 else 'comes'} around after"
        f" {plain(round(soonest))} s in the superset.",
        wanted=limits.words("at least {:duration} from set to set", "shortest"),
        change=f"Rest {as_rest(longer)} there, or do it by itself.",
        where=line_name(rested.prescription),
        edits=writing(place, as_rest(longer)),
        subject=names,
        amount=Amount(soonest, shortest, "s"),
    )
